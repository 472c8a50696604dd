//! What keys and tools change in the string chart.

use leptos::prelude::*;

use super::chart_acts::{go_to, place, typed_at};
use super::chart_keys::Ask;
use crate::app::grid::{Cell, Selection};
use crate::app::rows;
use crate::app::store::Store;
use crate::design::document::MOST_STRINGS;
use crate::design::edit::{Column, Edit, cell_text};
use crate::words::chart_page as say;

/// Changes what was asked for.
pub fn change(store: Store, asked: &Ask) {
    let selection = store.selection.get_untracked();
    let count = store.count_now();
    let rows = *selection.rows().start()..(*selection.rows().end() + 1).min(count);
    match asked {
        Ask::Clear => fill(store, |_| String::new()),
        Ask::FillDown => {
            // A single row is filled from the one above it.
            let first = *selection.rows().start();
            let source =
                if selection.rows().count() == 1 { first.checked_sub(1) } else { Some(first) };
            let design = store.design.get_untracked();
            if let Some(string) = source.and_then(|row| design.strings.get(row)) {
                fill(store, |column| cell_text(string, column));
            }
        }
        Ask::Nudge { up, fine } => nudge(store, *up, *fine),
        Ask::Shift { up } => {
            let free = if *up { rows.start > 0 } else { rows.end < count };
            if free && store.tell(store.change(&Edit::Move { rows, up: *up }), "") {
                let moved = |cell: Cell| Cell {
                    row: if *up { cell.row - 1 } else { cell.row + 1 },
                    ..cell
                };
                let Selection { cursor, anchor } = selection;
                place(store, Selection { cursor: moved(cursor), anchor: moved(anchor) });
            }
        }
        Ask::Insert if room(store, 1) => {
            let strings = vec![Default::default()];
            store.send(&Edit::Insert { row: rows.start, strings });
        }
        Ask::Duplicate => {
            let row = rows.end;
            let strings = store
                .design
                .with_untracked(|design| design.strings.get(rows).unwrap_or_default().to_vec());
            if room(store, strings.len()) {
                store.send(&Edit::Insert { row, strings });
            }
        }
        Ask::Extend { up } => extend(store, *up),
        Ask::Delete => store.send(&Edit::Delete { rows }),
        _ => {}
    }
}

fn extend(store: Store, up: bool) {
    if !room(store, 1) {
        return;
    }
    let edit = if up { Edit::ExtendUp { count: 1 } } else { Edit::ExtendDown { count: 1 } };
    if store.tell(store.change(&edit), "") {
        let last = store.count().saturating_sub(1);
        go_to(store, if up { 0 } else { last });
    }
}

/// Whether `more` strings fit; tells when they do not.
fn room(store: Store, more: usize) -> bool {
    let fits = store.design.with_untracked(|design| design.strings.len()) + more <= MOST_STRINGS;
    if !fits {
        store.complain(say::at_most_strings(&MOST_STRINGS));
    }
    fits
}

/// Gives every selected cell that can be typed into the text that `text_for` makes for its column.
fn fill(store: Store, text_for: impl Fn(Column) -> String) {
    let selection = store.selection.get_untracked();
    let columns: Vec<Option<Column>> =
        selection.columns().map(|index| typed_at(store, index)).collect();
    let line: Vec<String> =
        columns.iter().map(|column| column.map(&text_for).unwrap_or_default()).collect();
    let texts = selection.rows().map(|_| line.clone()).take(store.count_now()).collect();
    store.send(&Edit::Block { row: *selection.rows().start(), columns, texts });
}

fn nudge(store: Store, up: bool, fine: bool) {
    let Cell { row, column } = store.selection.get_untracked().cursor;
    let design = store.design.get_untracked();
    let (Some(string), Some(column)) = (design.strings.get(row), typed_at(store, column)) else {
        return;
    };
    if let Some(text) = rows::nudged(string, column, up, fine, &design.units) {
        store.send(&Edit::Cell { row, column, text });
    }
}
