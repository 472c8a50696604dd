//! The order list on paper: a table for each supplier, what is not in the stock, and remarks.
//!
//! Its pages break here, by the measures of [`layout`](super::layout), and not in the browser.

use crate::design::document::Design;
use crate::design::order::{
    OrderLine, OrderList, Unmatched, money_words, numbers_words, pack_words, remarks,
};
use crate::design::stock::NoItem;

use super::layout::{
    CELL_PAD_MM, FACT_GAP_MM, FOOT_MM, GAP_MM, LAST_PAD_MM, LINE_MM, ORDER_MAKE_UP, RESERVE_MM,
    RUNNING_MM, TABLE_HEAD_MM, TITLE_MM, TITLES_PT_MM, TYPE_PT, fact_widths, heading_mm, lines_mm,
    order_widths, paragraph_mm, row_mm,
};
use super::measure::{clean, wrap};
use super::sheet::{Block, Column, Fact, Heading, Page, Paper, Row, Sheet, Table};
use super::words::{DASH, title};

/// Lines that a cell may have; only a hostile text needs more.
const MOST_CELL_LINES: usize = 12;
/// The spacing of the rows: index into the layout's list.
const SPACING: usize = 2;
/// Said where no supplier is named.
const NO_SUPPLIER: &str = "No supplier named";
/// Over the strings that are no stock item.
const UNMATCHED: &str = "Not in the stock";

/// The order list of a design.
pub fn order(design: &Design, list: &OrderList, paper: Paper) -> Sheet {
    let title = title(design);
    let heading = heading(design, list, &title, paper);
    let running = wrap(&format!("{title} — order list"), paper.inside_mm().0, TYPE_PT, 1).concat();
    let mut pager = Pager::new(paper, heading, running);
    let widths = order_widths(paper);
    let mut done = 0;
    while let Some(first) = list.lines.get(done) {
        let supplier = first.item.supplier.trim();
        let same = |line: &&OrderLine| line.item.supplier.trim() == supplier;
        let lines: Vec<&OrderLine> = list.lines[done..].iter().take_while(same).collect();
        done += lines.len();
        let name = clean(supplier);
        let name = if name.is_empty() { NO_SUPPLIER.to_owned() } else { name };
        let name = wrap(&name, 0.8 * paper.inside_mm().0, TYPE_PT, 1).concat();
        pager.table(&name, lines.iter().map(|line| row(line, &widths)).collect());
        pager.lines(&totals(list, supplier, lines.len(), paper), Block::Legend);
    }
    if !list.unmatched.is_empty() {
        let words = unmatched(&list.unmatched);
        let width = paper.inside_mm().0;
        let lines: Vec<String> =
            words.iter().flat_map(|words| wrap(words, width, TYPE_PT, MOST_CELL_LINES)).collect();
        pager.title(UNMATCHED, LINE_MM);
        pager.lines(&lines, Block::Legend);
    }
    if list.lines.is_empty() && list.unmatched.is_empty() {
        pager.lines(&["There is nothing to order.".to_owned()], Block::Legend);
    }
    if !clean(&design.order.remarks).is_empty() {
        let text = format!("Remarks: {}", design.order.remarks);
        pager.lines(&wrap(&text, paper.inside_mm().0, TYPE_PT, usize::MAX), Block::Remarks);
    }
    Sheet { paper, title: format!("Order list: {title}"), pages: pager.finish() }
}

fn heading(design: &Design, list: &OrderList, title: &str, paper: Paper) -> Heading {
    let given = |text: &str| {
        let text = clean(text);
        if text.is_empty() { DASH.to_owned() } else { text }
    };
    let pieces = list.lines.iter().map(OrderLine::count).sum::<usize>();
    let facts = [
        ("maker", given(&design.maker)),
        ("date", given(&design.date)),
        ("serial number", given(&design.serial)),
        ("strings and spares", pieces.to_string()),
    ];
    let widths = fact_widths(paper);
    let fact = |((label, words), width): ((_, String), &f64)| {
        // Bold type is a little wider.
        Fact { label, lines: wrap(&words, (width - FACT_GAP_MM) * 0.94, TYPE_PT, 3) }
    };
    let room = paper.inside_mm().0 - 35.0;
    let set = |(size, _): (f64, f64)| wrap(title, room, size, 2);
    let long_title = set(TITLES_PT_MM[0]).len() > 1;
    Heading {
        kind: "Order list",
        title: set(TITLES_PT_MM[usize::from(long_title)]),
        long_title,
        facts: facts.into_iter().zip(widths.iter().cycle()).map(fact).collect(),
        in_a_row: widths.len(),
    }
}

fn columns() -> Vec<Column> {
    let figures = |top, bottom| Column { head: [top, bottom], figures: true };
    let words = |top, bottom| Column { head: [top, bottom], figures: false };
    vec![
        words("order", "code"),
        words("make-up", "core first, mm"),
        words("for strings", "no."),
        words("sold as", ""),
        figures("pieces", ""),
        figures("in all", "m"),
        figures("packs", ""),
        figures("price", ""),
    ]
}

fn row(line: &OrderLine, widths: &[f64]) -> Row {
    let item = &line.item;
    let or_dash = |text: String| if text.is_empty() { DASH.to_owned() } else { text };
    let metres = if line.without_length == 0 {
        // Millimetres rounded up to hundredths of a metre.
        let cm = line.length_mm.div_ceil(10);
        format!("{}.{:02}", cm / 100, cm % 100)
    } else {
        DASH.to_owned()
    };
    let packs = line.packs.as_ref().map_or(DASH.to_owned(), |packs| packs.count.to_string());
    let price = line.price.map_or(DASH.to_owned(), |price| money_words(price, &item.currency));
    let cells = [
        or_dash(clean(&item.code)),
        or_dash(clean(&item.make_up)),
        numbers_words(&line.strings),
        pack_words(item),
        line.count().to_string(),
        metres,
        packs,
        price,
    ];
    let last = widths.len() - 1;
    let room = |index: usize| {
        let before = if index == last { LAST_PAD_MM } else { CELL_PAD_MM };
        widths[index] - before - CELL_PAD_MM
    };
    let mut cells: Vec<Vec<String>> = cells
        .iter()
        .enumerate()
        .map(|(index, words)| wrap(words, room(index), TYPE_PT, MOST_CELL_LINES))
        .collect();
    let mut notes = Vec::new();
    if line.spares > 0 {
        notes.push(format!("{} of the pieces spare", line.spares));
    }
    notes.extend(remarks(line));
    notes.extend(Some(clean(&item.remark)).filter(|remark| !remark.is_empty()));
    if !notes.is_empty() {
        let words = format!("({})", notes.join("; "));
        cells[ORDER_MAKE_UP].extend(wrap(&words, room(ORDER_MAKE_UP), TYPE_PT, MOST_CELL_LINES));
    }
    Row { mark: None, opens_octave: false, cells }
}

/// What is not in the stock, strings of one make-up together: `Strings 7, 8: gut 0.72, cut to 522, 537 mm.`
fn unmatched(strings: &[Unmatched]) -> Vec<String> {
    let mut groups: Vec<Vec<&Unmatched>> = Vec::new();
    for string in strings {
        let same = |group: &&mut Vec<&Unmatched>| {
            group.first().is_some_and(|of| of.make_up == string.make_up && of.why == string.why)
        };
        match groups.iter_mut().find(same) {
            Some(group) => group.push(string),
            None => groups.push(vec![string]),
        }
    }
    let words = groups.iter().filter_map(|group| {
        let first = group.first()?;
        let numbers: Vec<usize> = group.iter().map(|string| string.number).collect();
        let plural = if numbers.len() == 1 { "" } else { "s" };
        let cuts = group.iter().filter_map(|string| string.cut_mm).map(|mm| mm.to_string());
        let cuts = cuts.collect::<Vec<_>>().join(", ");
        let cut = if cuts.is_empty() { String::new() } else { format!(", cut to {cuts} mm") };
        // The heading says as much.
        let why = match &first.why {
            NoItem::NotListed { .. } => String::new(),
            why => format!(": {why}"),
        };
        let made = clean(&first.make_up);
        Some(format!("String{plural} {}: {made}{cut}{why}.", numbers_words(&numbers)))
    });
    words.collect()
}

/// What a supplier's lines cost together, a line for each currency.
fn totals(list: &OrderList, supplier: &str, count: usize, paper: Paper) -> Vec<String> {
    let of_supplier = list.totals.iter().filter(|total| total.supplier == supplier);
    let words = of_supplier.map(|total| {
        let lacks = match total.without_price {
            0 => String::new(),
            1 => ", without 1 item whose price or packs are not known".to_owned(),
            lacks => format!(", without {lacks} items whose price or packs are not known"),
        };
        format!("Total: {}{lacks}.", money_words(total.price, &clean(&total.currency)))
    });
    let mut words: Vec<String> = words.collect();
    if words.is_empty() {
        let items = if count == 1 { "this item" } else { "these items" };
        words.push(format!("The price of {items} is not known."));
    }
    let width = paper.inside_mm().0;
    words.iter().flat_map(|words| wrap(words, width, TYPE_PT, 3)).collect()
}

/// Lays blocks on pages.
struct Pager {
    running: String,
    /// The height of a page.
    whole: f64,
    /// What is left of the last page.
    room: f64,
    /// Whether the last page holds anything besides its heading.
    begun: bool,
    pages: Vec<Page>,
}

impl Pager {
    fn new(paper: Paper, heading: Heading, running: String) -> Self {
        let whole = paper.inside_mm().1 - RESERVE_MM - FOOT_MM;
        let room = whole - heading_mm(&heading);
        let page = Page { blocks: vec![Block::Heading(heading)], ..Page::default() };
        Self { running, whole, room, begun: false, pages: vec![page] }
    }

    fn turn(&mut self) {
        let blocks = vec![Block::Running(self.running.clone())];
        self.pages.push(Page { blocks, ..Page::default() });
        self.room = self.whole - RUNNING_MM;
        self.begun = false;
    }

    fn put(&mut self, block: Block, height: f64) {
        self.room -= height;
        self.begun = true;
        if let Some(page) = self.pages.last_mut() {
            page.blocks.push(block);
        }
    }

    /// A heading, on a page where what follows it has room too.
    fn title(&mut self, words: &str, next: f64) {
        if self.room < TITLE_MM + next && self.begun {
            self.turn();
        }
        self.put(Block::Title(words.to_owned()), TITLE_MM);
    }

    fn table(&mut self, name: &str, rows: Vec<Row>) {
        let mut rows = rows.into_iter().peekable();
        let mut words = name.to_owned();
        let frame = TABLE_HEAD_MM + GAP_MM;
        while let Some(first) = rows.peek() {
            self.title(&words, frame + row_mm(first, SPACING));
            let mut taken = Vec::new();
            let mut height = frame;
            // A page takes at least one row, so that this comes to an end.
            while let Some(row) =
                rows.next_if(|row| taken.is_empty() || height + row_mm(row, SPACING) <= self.room)
            {
                height += row_mm(&row, SPACING);
                taken.push(row);
            }
            let table = Table {
                columns: columns(),
                rows: taken,
                marks: false,
                spacing: SPACING,
                last_width: 0,
            };
            self.put(Block::Table(table), height);
            words = format!("{name}, continued");
        }
    }

    /// Lines of text, over several pages where they need them.
    fn lines(&mut self, lines: &[String], block: impl Fn(Vec<String>) -> Block) {
        let mut rest = lines;
        while !rest.is_empty() {
            if self.room < paragraph_mm(1) && self.begun {
                self.turn();
            }
            let fits = |count: &usize| lines_mm(*count) + GAP_MM <= self.room;
            let count = (1..=rest.len()).take_while(fits).last().unwrap_or(1);
            let (here, later) = rest.split_at(count);
            self.put(block(here.to_vec()), paragraph_mm(count));
            rest = later;
        }
    }

    fn finish(mut self) -> Vec<Page> {
        let count = self.pages.len();
        if count > 1 {
            for (index, page) in self.pages.iter_mut().enumerate() {
                page.page_number = format!("page {} of {count}", index + 1);
            }
        }
        self.pages
    }
}
