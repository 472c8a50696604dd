//! What the keys, the tools and the clipboard do to the string chart.

use leptos::prelude::*;
use web_sys::ClipboardEvent;

use super::chart_keys::Ask;
use super::numbers::topic_here;
use crate::app::browser;
use crate::app::grid::{Cell, Selection, Shown, Step};
use crate::app::rows::{self, CellWords, ChartWords};
use crate::app::store::{Act, Store, Typed, Typing, Window};
use crate::design::edit::{Column, Edit, cell_text};
use crate::design::table::block_to_tsv;
use crate::words::chart_page as say;

/// What is typed into a column of the chart, if it is no figure.
pub fn typed_at(store: Store, column: usize) -> Option<Column> {
    store.column_at(column).and_then(Shown::typed)
}

/// Takes what was typed into the cell under the cursor.
pub fn finish(store: Store, column: usize, typed: &str) {
    let row = store.selection.get_untracked().cursor.row;
    take(store, column, typed, row, None);
}

/// Takes what was typed into the cell under the cursor, for every selected row.
pub fn finish_rows(store: Store, column: usize, typed: &str) {
    let selected = store.selection.get_untracked().rows();
    let row = *selected.start();
    let count = selected.take(store.count_now()).count();
    take(store, column, typed, row, Some(count));
}

fn take(store: Store, column: usize, text: &str, row: usize, rows: Option<usize>) {
    store.typing.set(None);
    let Some(column) = typed_at(store, column) else { return };
    let typed = Typed { text: text.to_owned(), column, row, rows };
    if rows::says_itself(text, column) {
        let units = store.design.get_untracked().units;
        put(store, &typed, rows::with_units(text, column, &units));
    } else {
        // A part knows the names of other languages.
        store.act(Act::Keep(typed));
    }
}

/// Puts what was typed into its cells, as a document has it.
pub fn put(store: Store, typed: &Typed, text: String) {
    let Typed { column, row, .. } = *typed;
    if let Some(count) = typed.rows {
        let texts = vec![vec![text]; count];
        return store.send(&Edit::Block { row, columns: vec![Some(column)], texts });
    }
    let design = store.design.get_untracked();
    let Some(string) = design.strings.get(row) else { return };
    // Left as it was, it is what it was.
    let is_same = typed.text == rows::as_typed(string, column, &design.units);
    if !is_same && text != cell_text(string, column) {
        store.send(&Edit::Cell { row, column, text });
        store.close_step();
    }
}

/// Does what a key asked for; whether there was anything to do.
pub fn act(store: Store, asked: &Ask) -> bool {
    let selection = store.selection.get_untracked();
    let (count, shown) = (store.count_now(), store.columns.get_untracked());
    let columns = shown.len();
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
        Ask::Clear
        | Ask::FillDown
        | Ask::Nudge { .. }
        | Ask::Shift { .. }
        | Ask::Insert
        | Ask::Duplicate
        | Ask::Extend { .. }
        | Ask::Delete => store.act(Act::Chart(asked.clone())),
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

/// Puts cursor and selection, and shows where they are.
pub fn place(store: Store, selection: Selection) {
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
        None => store.hint(say::COMPUTED.said()),
        Some(Column::Gauge) if string.make_up.is_wound() => store.window.set(Some(Window::MakeUp)),
        Some(column) => {
            let quick = text.is_some();
            let text =
                text.cloned().unwrap_or_else(|| rows::as_typed(string, column, &design.units));
            store.typing.set(Some(Typing { text, quick }));
        }
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
            store.complain(say::NOT_COPIED.said());
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
    store.act(Act::Paste(text.unwrap_or_default()));
}
