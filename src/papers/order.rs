//! The order list on paper: a table for each supplier, what is not in the stock, and remarks. It is for the supplier
//! to read, so that nothing stands on it that the maker tells himself.
//!
//! Its pages are laid by [`pager`].

use crate::design::document::Design;
use crate::design::make_up_said;
use crate::design::order::{OrderLine, OrderList, cut_words, money_words, sold_as, sum_words};
use crate::design::stock::USUAL_REMARK;

use super::layout::{FOOT_MM, ORDER_MAKE_UP, RESERVE_MM, TYPE_PT, order_widths};
use super::measure::{clean, wrap};
use super::pager::{self, Pager, cell};
use super::sheet::{Block, Column, Heading, Paper, Sheet, Table, TableKind, TableRow};
use super::words::{DASH, title};
use crate::words::{Words, language, papers as say, signed};

/// The spacing of the rows: index into the layout's list.
const SPACING: usize = 2;

/// The order list of a design.
pub fn order(design: &Design, list: &OrderList, paper: Paper) -> Sheet {
    let title = title(design);
    let heading = heading(design, list, &title, paper);
    let running = wrap(&say::running_order(&title), paper.inside_mm().0, TYPE_PT, 1).concat();
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
            Some(name) if name.is_empty() => say::NO_SUPPLIER.into(),
            Some(name) => name,
            None if begins => say::ALL_OUTSIDE.into(),
            None => say::OUTSIDE.into(),
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
            let sum = say::sum(&clean(&sum_words(&lines)));
            pager.lines(&wrap(&sum, paper.inside_mm().0, TYPE_PT, 3), Block::Legend);
        }
    }
    if list.lines.is_empty() {
        pager.lines(&[say::NOTHING_TO_ORDER.into()], Block::Legend);
    }
    if !clean(&design.order.remarks).is_empty() {
        let text = say::remarks(&design.order.remarks);
        pager.lines(&wrap(&text, paper.inside_mm().0, TYPE_PT, usize::MAX), Block::Remarks);
    }
    Sheet {
        paper,
        language: language(),
        title: say::titled(&say::ORDER_LIST, &title),
        pages: pager.finish(),
    }
}

fn heading(design: &Design, list: &OrderList, title: &str, paper: Paper) -> Heading {
    let given = |text: &str| {
        let text = clean(text);
        if text.is_empty() { DASH.to_owned() } else { text }
    };
    let pieces = list.lines.iter().map(OrderLine::count).sum::<usize>();
    let facts = [
        (say::MAKER.said(), given(&design.maker)),
        (say::DATE.said(), given(&design.date)),
        (say::SERIAL.said(), given(&design.serial)),
        (say::STRINGS_AND_SPARES.said(), pieces.to_string()),
    ];
    pager::heading(say::ORDER_LIST.said(), title, facts, paper)
}

fn columns() -> Vec<Column> {
    let figures = |top: Words, bottom| Column { head: [top.said(), bottom], figures: true };
    let words =
        |top: Words, bottom: Words| Column { head: [top.said(), bottom.said()], figures: false };
    vec![
        words(say::HEAD_ORDER, say::HEAD_CODE),
        words(say::HEAD_MAKE_UP, say::HEAD_CORE_FIRST),
        words(say::HEAD_STRINGS, say::HEAD_CUT_LENGTHS),
        words(say::HEAD_SOLD, Words::NONE),
        figures(say::HEAD_PIECES, ""),
        figures(say::HEAD_METRES, "m"),
        figures(say::HEAD_PACKS, ""),
        figures(say::HEAD_PRICE, ""),
    ]
}

fn row(line: &OrderLine, widths: &[f64]) -> TableRow {
    let item = &line.item;
    let or_dash = |text: String| if text.is_empty() { DASH.to_owned() } else { text };
    let metres = if line.without_length == 0 {
        // Millimetres rounded up to hundredths of a metre.
        let cm = line.length_mm.div_ceil(10);
        signed(&format!("{}.{:02}", cm / 100, cm % 100))
    } else {
        DASH.to_owned()
    };
    let packs = line.packs.as_ref().map_or(DASH.to_owned(), |packs| packs.count.to_string());
    let price = line.price.map_or(DASH.to_owned(), |price| money_words(price, &item.currency));
    let cells = [
        or_dash(clean(&item.code)),
        or_dash(clean(&make_up_said::line_shown(&item.make_up))),
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
