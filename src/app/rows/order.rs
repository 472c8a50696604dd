//! The order list in the words of the page.

use crate::design::document::{Design, StockItem};
use crate::design::letters::capital;
use crate::design::make_up_said;
use crate::design::order::{
    OrderLine, OrderList, cut_words, money_words, numbers_words, order_list, remarks, sold_as,
    sum_words,
};
use crate::design::stock::{NoItem, StockList, embedded, used};
use crate::engine::analysis::Analysis;
use crate::words::{decimal_sign, order as say};

/// The order list.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct OrderWords {
    /// By supplier.
    pub groups: Vec<OrderGroup>,
    /// What all costs.
    pub sum: String,
    /// The strings of which it is not said what they are made of; empty where there are none.
    pub unknown: String,
}

/// What one supplier gets.
#[derive(Clone, Debug, Default, PartialEq, Eq, Hash)]
pub struct OrderGroup {
    /// The supplier as the list has it, empty where none is named; none for what the stock does not have.
    pub supplier: Option<String>,
    pub rows: Vec<OrderRow>,
    /// What is to be said of every row alike; empty where there are no more than two.
    pub of_all: String,
    /// What it costs.
    pub sum: String,
}

/// One item: make-up, code, strings with their cut lengths, pack, pieces, metres, packs, price.
#[derive(Clone, Debug, Default, PartialEq, Eq, Hash)]
pub struct OrderRow {
    pub cells: [String; 8],
    /// What else is to be said, a sentence each.
    pub remarks: Vec<String>,
}

/// A design with what it takes of a stock list, its own prices first.
pub fn drawn_from(design: &Design, shop: &StockList) -> Design {
    Design { stock: embedded(design, &[shop]), ..design.clone() }
}

/// The stock that a design should hold with the codes and prices of a stock list before its own.
fn freshened(design: &Design, shop: &StockList) -> Vec<StockItem> {
    let mut items: Vec<StockItem> = shop.with_currency().collect();
    items.extend(design.stock.iter().cloned());
    used(design, &items)
}

/// The same, where the list has a code or a price that the design does not hold.
pub fn fresh(design: &Design, shop: &StockList) -> Option<Vec<StockItem>> {
    let items = freshened(design, shop);
    let is_new = |item: &StockItem| {
        (item.price.is_some() || !item.code.trim().is_empty()) && !design.stock.contains(item)
    };
    items.iter().any(is_new).then_some(items)
}

/// The supplier of a line; none for what the stock does not have.
fn supplier(line: &OrderLine) -> Option<&str> {
    line.outside.is_none().then(|| line.item.supplier.trim())
}

/// The part of an order list that one supplier gets, or what the stock does not have.
pub fn part_of(list: &OrderList, of: Option<&str>) -> OrderList {
    let is_his = |line: &&OrderLine| supplier(line) == of;
    OrderList { lines: list.lines.iter().filter(is_his).cloned().collect(), ..OrderList::default() }
}

/// The order list of a design in words.
pub fn order_words(design: &Design, analysis: &Analysis) -> (OrderList, OrderWords) {
    let list = order_list(design, analysis);
    let mut words = OrderWords::default();
    for line in &list.lines {
        let of = supplier(line);
        if words.groups.last().is_none_or(|group| group.supplier.as_deref() != of) {
            words.groups.push(OrderGroup {
                supplier: of.map(str::to_owned),
                sum: sum_of(&part_of(&list, of)),
                ..OrderGroup::default()
            });
        }
        if let Some(group) = words.groups.last_mut() {
            group.rows.push(row(line));
        }
    }
    words.groups.iter_mut().for_each(say_once);
    words.sum = sum_of(&list);
    words.unknown = match list.unknown.len() {
        0 => String::new(),
        count => say::unknown(&count, &numbers_words(&list.unknown), &NoItem::NoMakeUp),
    };
    (list, words)
}

fn row(line: &OrderLine) -> OrderRow {
    let item = &line.item;
    let metres = match line.without_length {
        // Millimetres rounded up to hundredths of a metre.
        0 => {
            let cm = line.length_mm.div_ceil(10);
            format!("{}{}{:02}", cm / 100, decimal_sign(), cm % 100)
        }
        _ => "–".to_owned(),
    };
    let pieces = match line.spares_mm.len() {
        0 => line.count().to_string(),
        spares => say::pieces_with_spares(&line.strings.len(), &spares),
    };
    let packs = line.packs.as_ref().map_or("–".to_owned(), |packs| packs.count.to_string());
    let price = line.price.map_or("–".to_owned(), |price| money_words(price, &item.currency));
    let mut said: Vec<String> =
        remarks(line).iter().map(|remark| format!("{}.", capital(remark))).collect();
    if !item.remark.trim().is_empty() {
        said.push(capital(item.remark.trim()));
    }
    OrderRow {
        cells: [
            make_up_said::line_shown(&item.make_up),
            item.code.clone(),
            cut_words(line),
            sold_as(line),
            pieces,
            metres,
            packs,
            price,
        ],
        remarks: said,
    }
}

/// Takes what is said of every row out of the rows.
fn say_once(group: &mut OrderGroup) {
    let [first, others @ ..] = &*group.rows else { return };
    if others.len() < 2 {
        return;
    }
    let everywhere =
        |said: &&String| others.iter().all(|row: &OrderRow| row.remarks.contains(said));
    let alike: Vec<String> = first.remarks.iter().filter(everywhere).cloned().collect();
    for row in &mut group.rows {
        row.remarks.retain(|said| !alike.contains(said));
    }
    if !alike.is_empty() {
        group.of_all = say::of_every_line(&alike.join(" "));
    }
}

/// What the lines of a list cost.
fn sum_of(list: &OrderList) -> String {
    let lines: Vec<&OrderLine> = list.lines.iter().collect();
    if lines.is_empty() { String::new() } else { format!("{}.", sum_words(&lines)) }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::design::document::StringSpec;
    use crate::design::make_up_text;
    use crate::design::resolve::resolve;
    use crate::engine::analysis::analyse;

    fn string(note: &str, make_up: &str) -> StringSpec {
        let make_up = make_up_text::read(make_up).unwrap();
        let (note, length) = (note.to_owned(), "400".to_owned());
        StringSpec { note, length, make_up, ..StringSpec::default() }
    }

    fn item(make_up: &str, supplier: &str, price: Option<f64>) -> StockItem {
        let (make_up, supplier) = (make_up.into(), supplier.to_owned());
        StockItem { make_up, supplier, price, single: true, ..StockItem::default() }
    }

    fn shop() -> StockList {
        StockList {
            currency: "EUR".to_owned(),
            items: vec![
                item("nylon 0.81", "Reedmarsh", Some(2.5)),
                item("gut 0.90", "Alder & Co", Some(7.0)),
                item("nylon 0.91", "Reedmarsh", None),
            ],
            ..StockList::default()
        }
    }

    fn design() -> Design {
        let strings = ["nylon 0.81", "nylon 0.81", "gut 0.90", "nylon 0.91", "steel 0.40"];
        let strings =
            strings.iter().zip(["C5", "B4", "A4", "G4", "F4"]).map(|(m, n)| string(n, m)).collect();
        Design { strings, ..Design::default() }
    }

    #[test]
    fn an_order_goes_by_supplier_with_totals_in_each_currency() {
        let design = drawn_from(&design(), &shop());
        let analysis = analyse(&resolve(&design).harp);
        let (list, words) = order_words(&design, &analysis);
        let suppliers: Vec<&str> =
            words.groups.iter().filter_map(|group| group.supplier.as_deref()).collect();
        assert_eq!(suppliers, ["Reedmarsh", "Alder & Co"]);
        let cells = &words.groups[0].rows[0].cells;
        assert_eq!(
            [&*cells[0], &cells[2], &cells[4], &cells[6]],
            ["nylon 0.81", "1: 715, 2: 715", "2", "2"]
        );
        assert_eq!(words.groups[0].rows[1].remarks, ["No price is given."]);
        // 2 · 2.50 and 7.00.
        assert_eq!(words.groups[0].sum, "2 lines, 1 without a price: at least 5.00 EUR.");
        assert_eq!(words.groups[1].sum, "1 line: 7.00 EUR.");
        assert_eq!(words.sum, "4 lines, 2 without a price: at least 12.00 EUR.");
        // What the stock does not have is ordered by what it is.
        let outside = words.groups.last().unwrap();
        assert_eq!(outside.supplier, None);
        let cells = ["steel 0.40", "", "5: 711", "", "1", "0.72", "–", "–"];
        assert_eq!(outside.rows[0].cells.each_ref().map(|cell| &**cell), cells);
        assert!(outside.rows[0].remarks.is_empty());
        assert_eq!(part_of(&list, Some("Alder & Co")).lines.len(), 1);
        assert_eq!(part_of(&list, None).lines.len(), 1);
    }

    #[test]
    fn what_is_said_of_every_line_is_said_once() {
        let items = ["nylon 0.81", "gut 0.90", "nylon 0.91"].map(|make_up| item(make_up, "", None));
        let mut shop = StockList { items: items.into(), ..StockList::default() };
        "Sent rolled".clone_into(&mut shop.items[1].remark);
        let design = drawn_from(&design(), &shop);
        let (_, words) = order_words(&design, &analyse(&resolve(&design).harp));
        assert_eq!(words.groups[0].of_all, "For every line: No price is given.");
        let remarks: Vec<&[String]> =
            words.groups[0].rows.iter().map(|row| &*row.remarks).collect();
        assert_eq!(remarks, [&[][..], &["Sent rolled".to_owned()][..], &[][..]]);
    }

    #[test]
    fn only_codes_and_prices_are_worth_putting_into_a_design() {
        let (design, mut shop) = (design(), shop());
        assert!(fresh(&design, &shop).is_some_and(|items| items.len() == 3));
        // A list of gauges alone has nothing to give.
        shop.items.iter_mut().for_each(|item| item.price = None);
        assert_eq!(fresh(&design, &shop), None);
        "R81".clone_into(&mut shop.items[0].code);
        assert!(fresh(&design, &shop).is_some());
    }

    #[test]
    fn the_prices_of_the_stock_list_take_the_place_of_old_ones_when_asked() {
        let mut design = drawn_from(&design(), &shop());
        assert_eq!(freshened(&design, &shop()), design.stock);
        let mut dearer = shop();
        dearer.items[0].price = Some(3.0);
        assert_eq!(drawn_from(&design, &dearer).stock, design.stock, "old prices stay");
        design.stock = freshened(&design, &dearer);
        assert_eq!(design.stock[0].price, Some(3.0));
        assert_eq!(freshened(&design, &dearer), design.stock, "there is nothing left to take");
        assert_eq!(drawn_from(&design, &dearer).stock, design.stock);
    }
}
