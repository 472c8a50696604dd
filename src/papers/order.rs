//! The order list on paper: a table for each supplier, what is not in the stock, and remarks. It is for the supplier
//! to read, so that nothing stands on it that the maker tells himself.
//!
//! Its pages are laid by [`pager`].

use crate::design::document::Design;
use crate::design::order::{OrderLine, OrderList, cut_words, money_words, sold_as, sum_words};
use crate::design::stock::USUAL_REMARK;

use super::layout::{FOOT_MM, ORDER_MAKE_UP, RESERVE_MM, TYPE_PT, order_widths};
use super::measure::{clean, wrap};
use super::pager::{self, Pager, cell};
use super::sheet::{Block, Column, Heading, Paper, Sheet, Table, TableKind, TableRow};
use super::words::{DASH, title};

/// The spacing of the rows: index into the layout's list.
const SPACING: usize = 2;
/// Said where no supplier is named.
const NO_SUPPLIER: &str = "No supplier named";
/// Over what the stock does not have.
const OUTSIDE: &str = "Also needed, not in the stock list";
/// The same where nothing is in it.
const ALL_OUTSIDE: &str = "Needed";

/// The order list of a design.
pub fn order(design: &Design, list: &OrderList, paper: Paper) -> Sheet {
    let title = title(design);
    let heading = heading(design, list, &title, paper);
    let running = wrap(&format!("{title} — order list"), paper.inside_mm().0, TYPE_PT, 1).concat();
    let mut pager = Pager::new(paper.inside_mm().1 - RESERVE_MM - FOOT_MM, heading, running);
    let widths = order_widths(paper);
    let mut done = 0;
    while let Some(first) = list.lines.get(done) {
        let of =
            |line: &OrderLine| line.outside.is_none().then(|| line.item.supplier.trim().to_owned());
        let supplier = of(first);
        let same = |line: &&OrderLine| of(line) == supplier;
        let lines: Vec<&OrderLine> = list.lines[done..].iter().take_while(same).collect();
        let begins = done == 0;
        done += lines.len();
        let name = supplier.as_deref().map(clean);
        let name = match name {
            Some(name) if name.is_empty() => NO_SUPPLIER.to_owned(),
            Some(name) => name,
            None if begins => ALL_OUTSIDE.to_owned(),
            None => OUTSIDE.to_owned(),
        };
        let name = wrap(&name, 0.8 * paper.inside_mm().0, TYPE_PT, 1).concat();
        let table = Table {
            kind: TableKind::Order,
            columns: columns(),
            rows: lines.iter().map(|line| row(line, &widths)).collect(),
            spacing: SPACING,
            last_width: 0,
        };
        pager.table(&name, &table, &[]);
        if supplier.is_some() {
            let sum = format!("Sum: {}.", clean(&sum_words(&lines)));
            pager.lines(&wrap(&sum, paper.inside_mm().0, TYPE_PT, 3), Block::Legend);
        }
    }
    if list.lines.is_empty() {
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
    pager::heading("Order list", title, facts, paper)
}

fn columns() -> Vec<Column> {
    let figures = |top, bottom| Column { head: [top, bottom], figures: true };
    let words = |top, bottom| Column { head: [top, bottom], figures: false };
    vec![
        words("order", "code"),
        words("make-up", "core first, mm"),
        words("strings", "no.: cut to, mm"),
        words("sold as", ""),
        figures("pieces", ""),
        figures("in all", "m"),
        figures("packs", ""),
        figures("price", ""),
    ]
}

fn row(line: &OrderLine, widths: &[f64]) -> TableRow {
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
        cut_words(line),
        or_dash(sold_as(line)),
        line.count().to_string(),
        metres,
        packs,
        price,
    ];
    let mut cells: Vec<Vec<String>> =
        cells.iter().enumerate().map(|(index, words)| cell(words, widths, index)).collect();
    let remark = clean(&item.remark);
    // Where a proposed gauge comes from is nothing to the supplier.
    if !remark.is_empty() && remark != USUAL_REMARK {
        cells[ORDER_MAKE_UP].extend(cell(&format!("({remark})"), widths, ORDER_MAKE_UP));
    }
    TableRow { mark: None, opens_octave: false, cells }
}
