//! The cells of a stock list as they are typed, and what is wrong with them.

use crate::design::document::{MakeUpSpec, MaterialSpec, StockItem, TypedMakeUp};
use crate::design::letters::{capital, small};
use crate::design::library::find;
use crate::design::make_up_said;
use crate::design::persist::check_item;
use crate::design::stock::{money, table::pack_mm};
use crate::design::typed::cut;
use crate::engine::pitch::{Note, naming};
use crate::words::{self, Words, stock_page as say};

/// A cell of an item that is typed into.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum StockCell {
    MakeUp,
    Code,
    Supplier,
    PackLength,
    Price,
    Currency,
    Lowest,
    Highest,
    Remark,
}

/// The cells of an item from left to right, with the heads of their columns.
pub const STOCK_CELLS: [(StockCell, Words); 9] = [
    (StockCell::MakeUp, say::MAKE_UP),
    (StockCell::Code, say::CODE),
    (StockCell::Supplier, say::SUPPLIER),
    (StockCell::PackLength, say::PACK),
    (StockCell::Price, say::PRICE),
    (StockCell::Currency, say::CURRENCY),
    (StockCell::Lowest, say::FROM_NOTE),
    (StockCell::Highest, say::TO_NOTE),
    (StockCell::Remark, say::REMARK),
];

/// What a cell of an item holds.
pub fn stock_text(item: &StockItem, cell: StockCell) -> String {
    let number = |number: Option<f64>| number.map(|number| number.to_string()).unwrap_or_default();
    match cell {
        StockCell::MakeUp => make_up_said::line_said(&item.make_up),
        StockCell::Code => item.code.clone(),
        StockCell::Supplier => item.supplier.clone(),
        StockCell::PackLength => number(item.pack_mm),
        StockCell::Price => number(item.price),
        StockCell::Currency => item.currency.clone(),
        StockCell::Lowest => naming::shown(&item.lowest),
        StockCell::Highest => naming::shown(&item.highest),
        StockCell::Remark => item.remark.clone(),
    }
}

/// Puts what was typed into a cell of an item. A price may bring its currency along.
///
/// # Errors
///
/// A sentence, when the item cannot hold that; it is then as it was.
pub fn put(item: &mut StockItem, cell: StockCell, typed: &str) -> Result<(), String> {
    let mut next = item.clone();
    let text = typed.trim().to_owned();
    match cell {
        StockCell::MakeUp => {
            let is_new = next.make_up.is_empty();
            next.make_up = text.into();
            // A wound string is sold by the piece, as no other length can be cut from it.
            next.single |= is_new && next.make_up.read().is_ok_and(MakeUpSpec::is_wound);
        }
        StockCell::Code => next.code = text,
        StockCell::Supplier => next.supplier = text,
        StockCell::Currency => next.currency = text,
        StockCell::Lowest => next.lowest = naming::kept(&text, words::naming()),
        StockCell::Highest => next.highest = naming::kept(&text, words::naming()),
        StockCell::Remark => next.remark = text,
        StockCell::PackLength if text.is_empty() => next.pack_mm = None,
        StockCell::PackLength => {
            let length = pack_mm(&text).map_err(|error| not_kept(&error.to_string()))?;
            next.pack_mm = Some(length);
        }
        StockCell::Price if text.is_empty() => next.price = None,
        StockCell::Price => {
            let Some((price, currency)) = money(&text) else {
                return Err(not_kept(&say::bad_price(&cut(&text))));
            };
            next.price = Some(price);
            if !currency.is_empty() {
                next.currency = currency;
            }
        }
    }
    check_item(&next, None).map_err(|error| not_kept(&error.to_string()))?;
    *item = next;
    Ok(())
}

fn not_kept(why: &str) -> String {
    say::not_kept_yet(&why)
}

/// What is wrong with what a cell holds; empty when nothing is. `materials` are those of the list and
/// of the design.
pub fn stock_problem(item: &StockItem, cell: StockCell, materials: &[MaterialSpec]) -> String {
    let note = |text: &str| match text.parse::<Note>() {
        Err(error) if !text.is_empty() => Some(error.to_string()),
        _ => None,
    };
    let ends = (item.lowest.parse::<Note>(), item.highest.parse::<Note>());
    let problem = match cell {
        StockCell::MakeUp => make_up_problem(&item.make_up, materials),
        StockCell::Lowest => note(&item.lowest),
        StockCell::Highest => note(&item.highest).or_else(|| match ends {
            (Ok(low), Ok(high)) if low.key_number() > high.key_number() => {
                Some(say::ENDS_CROSSED.into())
            }
            _ => None,
        }),
        _ => None,
    };
    problem.map(|problem| format!("{}.", capital(&problem))).unwrap_or_default()
}

fn make_up_problem(typed: &TypedMakeUp, materials: &[MaterialSpec]) -> Option<String> {
    if typed.is_empty() {
        return Some(say::MAKE_UP_MISSING.into());
    }
    let make_up = match typed.read() {
        Ok(make_up) => make_up,
        Err(error) => return Some(error.to_string()),
    };
    let layers = make_up.layers.iter().map(|layer| &layer.material);
    let mut used = [&make_up.material].into_iter().chain(layers);
    let strange = used.find(|text| !text.trim().is_empty() && find(materials, text).is_none())?;
    Some(say::material_unknown(&cut(strange)))
}

/// Whether an item is among those that a text looks for: every word of it stands in one of the cells.
pub fn is_wanted(item: &StockItem, words: &str) -> bool {
    let all = small(
        &[
            &*item.make_up,
            &*make_up_said::line_said(&item.make_up),
            &item.code,
            &item.supplier,
            &item.remark,
        ]
        .join(" "),
    );
    small(words).split_whitespace().all(|word| all.contains(word))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn typed(cell: StockCell, text: &str) -> (StockItem, Result<(), String>) {
        let mut item = StockItem { price: Some(1.0), ..StockItem::default() };
        let result = put(&mut item, cell, text);
        (item, result)
    }

    #[test]
    fn a_price_brings_its_currency_and_a_pack_its_unit() {
        let (item, _) = typed(StockCell::Price, "€ 12,50");
        assert_eq!((item.price, &*item.currency), (Some(12.5), "€"));
        assert_eq!(typed(StockCell::PackLength, "5 m").0.pack_mm, Some(5_000.0));
        assert_eq!(typed(StockCell::PackLength, " ").0.pack_mm, None);
        assert_eq!(typed(StockCell::Price, "").0.price, None);
        assert_eq!(stock_text(&item, StockCell::Price), "12.5");
    }

    #[test]
    fn a_wound_string_is_single_when_it_comes() {
        assert!(typed(StockCell::MakeUp, "steel 0.40 + bronze 0.25").0.single);
        let (mut item, _) = typed(StockCell::MakeUp, "nylon 0.81");
        assert!(!item.single);
        put(&mut item, StockCell::MakeUp, "nylon 0.81 + nylon 0.25").unwrap();
        assert!(!item.single, "what was chosen for an item stays");
    }

    #[test]
    fn what_cannot_be_held_leaves_the_item_as_it_was() {
        let long = "x".repeat(201);
        for (cell, text, says) in [
            (StockCell::Price, "1,234", "Not kept yet: a price must be a number"),
            (StockCell::Price, "99999999999", "Not kept yet: the price must be from 0"),
            (StockCell::PackLength, "soon", "Not kept yet: the length of a pack"),
            (StockCell::Code, &long, "Not kept yet: the order code"),
        ] {
            let (item, result) = typed(cell, text);
            let told = result.unwrap_err();
            assert!(told.starts_with(says), "{told}");
            assert_eq!(item, StockItem { price: Some(1.0), ..StockItem::default() });
        }
    }

    #[test]
    fn what_is_wrong_with_a_cell_is_told() {
        let item = StockItem {
            make_up: "mithril 0.5".into(),
            lowest: "C5".to_owned(),
            highest: "C4".to_owned(),
            ..StockItem::default()
        };
        let says = |cell| stock_problem(&item, cell, &[]);
        assert!(says(StockCell::MakeUp).starts_with("The material \"mithril\" is not known"));
        assert!(says(StockCell::Highest).starts_with("The lowest note must not lie above"));
        assert_eq!(says(StockCell::Lowest), "");
        assert!(!stock_problem(&StockItem::default(), StockCell::MakeUp, &[]).is_empty());
        let fine = StockItem { make_up: "nylon 0.81".into(), ..StockItem::default() };
        assert!(STOCK_CELLS.iter().all(|(cell, _)| stock_problem(&fine, *cell, &[]).is_empty()));
    }

    #[test]
    fn every_word_looked_for_must_stand_there() {
        let item = StockItem {
            make_up: "nylon 0.81".into(),
            supplier: "Reedmarsh Strings".to_owned(),
            ..StockItem::default()
        };
        assert!(is_wanted(&item, "") && is_wanted(&item, "reed NYLON"));
        assert!(!is_wanted(&item, "nylon gut"));
    }
}
