//! What the keys, the tools and the clipboard do to the string chart.

use leptos::prelude::*;
use web_sys::ClipboardEvent;

use super::chart_keys::Ask;
use super::numbers::topic_here;
use crate::app::browser;
use crate::app::grid::{Cell, Selection, Shown, Step};
use crate::app::rows::{self, CellWords, ChartWords};
use crate::app::store::{Store, Typing, Window};
use crate::design::document::MOST_STRINGS;
use crate::design::edit::{Column, Edit, cell_text};
use crate::design::table::{block_from_tsv, block_to_tsv};

/// The longest text that is taken from the clipboard.
const LONGEST_PASTE: usize = 1_000_000;

/// What is typed into a column of the chart, if it is no figure.
fn typed_at(store: Store, column: usize) -> Option<Column> {
    store.column_at(column).and_then(Shown::typed)
}

/// Takes what was typed into the cell under the cursor.
pub fn finish(store: Store, column: usize, typed: &str) {
    store.typing.set(None);
    let Some(column) = typed_at(store, column) else { return };
    let row = store.selection.get_untracked().cursor.row;
    let design = store.design.get_untracked();
    let Some(string) = design.strings.get(row) else { return };
    let text = rows::as_stored(typed, column, &design.units);
    // Left as it was, it is what it was.
    let is_same = typed == rows::as_typed(string, column, &design.units);
    if !is_same && text != cell_text(string, column) {
        store.send(&Edit::Cell { row, column, text });
        store.close_step();
    }
}

/// Takes what was typed into the cell under the cursor, for every selected row.
pub fn finish_rows(store: Store, column: usize, typed: &str) {
    store.typing.set(None);
    let Some(column) = typed_at(store, column) else { return };
    let text = rows::as_stored(typed, column, &store.design.get_untracked().units);
    let selected = store.selection.get_untracked().rows();
    let row = *selected.start();
    let texts = selected.map(|_| vec![text.clone()]).take(store.count_now()).collect();
    store.send(&Edit::Block { row, columns: vec![Some(column)], texts });
}

/// Does what a key asked for; whether there was anything to do.
pub fn act(store: Store, asked: &Ask) -> bool {
    let selection = store.selection.get_untracked();
    let (count, shown) = (store.count_now(), store.columns.get_untracked());
    let columns = shown.len();
    let rows = *selection.rows().start()..(*selection.rows().end() + 1).min(count);
    match asked {
        Ask::Move { step, extend } => {
            place(store, selection.moved(*step, count, columns, *extend));
        }
        Ask::Tab { forward } => match selection.next_typed(count, &shown, *forward) {
            Some(next) => place(store, next),
            None => return false,
        },
        Ask::Drop => place(store, Selection { anchor: selection.cursor, ..selection }),
        Ask::All => {
            let end = Selection::default().moved(Step::ChartEnd, count, columns, true);
            store.selection.set(end);
        }
        Ask::Type => begin(store, None),
        // In a column that no page is about, the question mark is typed as any other sign.
        Ask::TypeAnew(text)
            if text == "?" && topic_here(store, selection.cursor.column).is_some() =>
        {
            return act(store, &Ask::Explain);
        }
        Ask::TypeAnew(text) => begin(store, Some(text)),
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
            if free {
                if !store.tell(store.change(&Edit::Move { rows, up: *up }), "") {
                    return true;
                }
                let moved = |cell: Cell| Cell {
                    row: if *up { cell.row - 1 } else { cell.row + 1 },
                    ..cell
                };
                let Selection { cursor, anchor } = selection;
                place(store, Selection { cursor: moved(cursor), anchor: moved(anchor) });
            }
        }
        Ask::Insert => {
            if room(store, 1) {
                let strings = vec![Default::default()];
                store.send(&Edit::Insert { row: rows.start, strings });
            }
        }
        Ask::Delete => store.send(&Edit::Delete { rows }),
        Ask::Explain => match topic_here(store, selection.cursor.column) {
            Some(topic) => store.explain(topic),
            None => return false,
        },
        Ask::MakeUp => store.window.set(Some(Window::MakeUp)),
        Ask::Details if store.count() > 0 => store.window.set(Some(Window::Details)),
        Ask::Details => return false,
    }
    true
}

/// Whether `more` strings fit; tells when they do not.
pub fn room(store: Store, more: usize) -> bool {
    let fits = store.design.with_untracked(|design| design.strings.len()) + more <= MOST_STRINGS;
    if !fits {
        store.complain(format!("A design has at most {MOST_STRINGS} strings. Delete some first."));
    }
    fits
}

fn place(store: Store, selection: Selection) {
    store.selection.set(selection);
    store.close_step();
    let Cell { row, column } = selection.cursor;
    browser::show(&format!("cell-{row}-{column}"));
}

/// Puts the cursor on a string, as a finding or a curve asks for.
pub fn go_to(store: Store, row: usize) {
    let column = store.selection.get_untracked().cursor.column;
    place(store, Selection::at(row, column));
}

/// Puts the cursor on a cell; with `extend` the anchor stays where it is.
pub fn select(store: Store, cell: Cell, extend: bool) {
    let before = store.selection.get_untracked();
    let anchor = if extend { before.anchor } else { cell };
    if before != (Selection { cursor: cell, anchor }) {
        store.selection.set(Selection { cursor: cell, anchor });
        store.close_step();
    }
}

fn begin(store: Store, text: Option<&String>) {
    let Cell { row, column } = store.selection.get_untracked().cursor;
    let design = store.design.get_untracked();
    let Some(string) = design.strings.get(row) else { return };
    match typed_at(store, column) {
        None => store
            .hint("This column is computed. Change the note, the length, the string or the gauge."),
        Some(Column::Gauge) if string.make_up.is_wound() => store.window.set(Some(Window::MakeUp)),
        Some(column) => {
            let quick = text.is_some();
            let text =
                text.cloned().unwrap_or_else(|| rows::as_typed(string, column, &design.units));
            store.typing.set(Some(Typing { text, quick }));
        }
    }
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

/// Puts the selected block on the clipboard.
pub fn put_on_clipboard(store: Store, event: &ClipboardEvent) {
    if store.typing.with_untracked(Option::is_some) {
        return;
    }
    let selection = store.selection.get_untracked();
    let design = store.design.get_untracked();
    let words = ChartWords::after(
        None,
        store.design.get_untracked(),
        store.resolved.get_untracked(),
        store.analysis.get_untracked(),
        store.columns.get_untracked(),
    );
    let line = |row: usize| -> Vec<String> {
        let text = |column: usize| match (typed_at(store, column), design.strings.get(row)) {
            (Some(column), Some(string)) => rows::as_copied(string, column, &design.units),
            _ => words
                .rows
                .get(row)
                .and_then(|w| w.cells.get(column))
                .map(CellWords::plain)
                .unwrap_or_default(),
        };
        selection.columns().map(text).collect()
    };
    let block: Vec<Vec<String>> =
        selection.rows().take_while(|row| *row < design.strings.len()).map(line).collect();
    if let Some(data) = event.clipboard_data() {
        event.prevent_default();
        if data.set_data("text/plain", &block_to_tsv(&block)).is_err() {
            store
                .complain("The browser did not put these cells on the clipboard. Copy them again.");
        }
    }
}

/// Pastes a block at the upper left corner of the selection.
pub fn paste(store: Store, event: &ClipboardEvent) {
    if store.typing.with_untracked(Option::is_some) {
        return;
    }
    event.prevent_default();
    let text = event.clipboard_data().and_then(|data| data.get_data("text/plain").ok());
    let text = text.unwrap_or_default();
    if text.len() > LONGEST_PASTE {
        let mb = text.len() / 1_000_000;
        store.complain(format!(
            "The clipboard holds {mb} MB of text, far more than a string chart. Copy only the cells you need."
        ));
        return;
    }
    let texts = match block_from_tsv(&text) {
        Ok(texts) if !texts.is_empty() => texts,
        Ok(_) => return store.complain("There is no text on the clipboard to paste."),
        Err(error) => return store.complain(format!("Nothing was pasted: {error}.")),
    };
    let selection = store.selection.get_untracked();
    let texts = rows::spread(texts, &selection);
    let Selection { cursor, anchor } = selection;
    let at = Cell { row: cursor.row.min(anchor.row), column: cursor.column.min(anchor.column) };
    let design = store.design.get_untracked();
    let shown = store.columns.get_untracked();
    let from = shown.get(at.column..).unwrap_or_default();
    let (columns, texts) = rows::pasted(texts, from, &design.units);
    let count = texts.len();
    if at.row + count > MOST_STRINGS {
        return store.complain(format!(
            "Nothing was pasted: the block has {count} rows, and a design has at most {MOST_STRINGS} strings."
        ));
    }
    let width = columns.len();
    if columns.iter().all(Option::is_none) {
        return store.hint("These columns are computed: there is nothing to paste into.");
    }
    let gauges = columns.contains(&Some(Column::Gauge));
    let wound = store.design.with_untracked(|design| {
        let rows = design.strings.iter().skip(at.row).take(count);
        rows.filter(|string| string.make_up.is_wound()).count()
    });
    let own_make_up = columns.contains(&Some(Column::MakeUp));
    let words = if gauges && !own_make_up && wound > 0 {
        "The gauge of a wound string follows from its windings, so those were left as they are."
    } else {
        ""
    };
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
