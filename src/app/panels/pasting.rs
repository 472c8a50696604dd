//! What goes into the string chart from the clipboard, or was typed in the words of another language.

use leptos::prelude::*;

use super::chart_acts::put;
use crate::app::grid::{Cell, Selection};
use crate::app::rows;
use crate::app::store::{Store, Typed};
use crate::design::document::MOST_STRINGS;
use crate::design::edit::{Column, Edit};
use crate::design::table::block_from_tsv;
use crate::words::chart_page as say;

/// The longest text that is taken from the clipboard.
const LONGEST_PASTE: usize = 1_000_000;

/// Keeps what was typed, with its names as a document has them.
pub fn keep(store: Store, typed: &Typed) {
    let text = rows::as_kept(&typed.text, typed.column, &store.design.get_untracked());
    put(store, typed, text);
}

/// Puts a block at the upper left corner of the selection.
pub fn paste(store: Store, text: &str) {
    if text.len() > LONGEST_PASTE {
        let mb = text.len() / 1_000_000;
        store.complain(say::too_much(&mb));
        return;
    }
    let texts = match block_from_tsv(text) {
        Ok(texts) if !texts.is_empty() => texts,
        Ok(_) => return store.complain(say::NO_TEXT.said()),
        Err(error) => return store.complain(say::not_pasted(&error)),
    };
    let selection = store.selection.get_untracked();
    let texts = rows::spread(texts, &selection);
    let Selection { cursor, anchor } = selection;
    let at = Cell { row: cursor.row.min(anchor.row), column: cursor.column.min(anchor.column) };
    let design = store.design.get_untracked();
    let shown = store.columns.get_untracked();
    let from = shown.get(at.column..).unwrap_or_default();
    let (columns, texts) = rows::pasted(texts, from, &design);
    let count = texts.len();
    if at.row + count > MOST_STRINGS {
        return store.complain(say::too_many_rows(&count, &MOST_STRINGS));
    }
    let width = columns.len();
    if columns.iter().all(Option::is_none) {
        return store.hint(say::ALL_COMPUTED.said());
    }
    let gauges = columns.contains(&Some(Column::Gauge));
    let wound = store.design.with_untracked(|design| {
        let rows = design.strings.iter().skip(at.row).take(count);
        rows.filter(|string| string.make_up.is_wound()).count()
    });
    let own_make_up = columns.contains(&Some(Column::MakeUp));
    let words = if gauges && !own_make_up && wound > 0 { say::WOUND_KEPT.said() } else { "" };
    if !store.tell(store.change(&Edit::Block { row: at.row, columns, texts }), words) {
        return;
    }
    store.selection.set(Selection {
        anchor: at,
        cursor: Cell {
            row: at.row + count - 1,
            column: (at.column + width - 1).min(shown.len() - 1),
        },
    });
}
