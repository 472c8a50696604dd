//! The rows of the string chart. They are written as markup when they come, and told cell by cell what changes
//! later, by one effect for all of them. They stand in blocks, as the browser leaves a block out of its work that
//! is out of sight.

use leptos::html;
use leptos::mount::{UnmountHandle, mount_to};
use leptos::prelude::*;
use wasm_bindgen::JsCast;
use web_sys::{Element, HtmlElement};

use super::field::{CellField, CellFieldProps};
use crate::app::rows::{ChartWords, RowView, cell_id, cell_look, row_class, row_markup};
use crate::app::store::{Store, Typing};

/// Rows of a block, all but the last one; the style sheet knows it too.
const BLOCK: usize = 16;

/// The name of what holds the field where fingers type; the sheet comes with a part.
pub const SHEET: &str = "sheet-field";

/// What the field of a cell is taken away with.
type Field = UnmountHandle<<AnyView as Render>::State>;

/// What is on the page.
#[derive(Default)]
struct Drawn {
    rows: Vec<RowView>,
    /// Row and column of the cell that holds a field.
    field: Option<(usize, usize)>,
}

/// Keeps the rows of the string chart in its table, below the heads.
pub fn keep_rows(store: Store, words: Memo<ChartWords>, table: NodeRef<html::Table>) {
    let field = StoredValue::new_local(None::<Field>);
    // The field outlives the run of the effect that makes it.
    let owner = Owner::current().unwrap_or_default();
    Effect::new(move |before: Option<Drawn>| {
        let before = before.unwrap_or_default();
        let Some(table) = table.get() else { return before };
        let (rows, typing) = (views(store, words), store.typing.get());
        let place = typing.as_ref().and_then(|_| {
            let row = rows.iter().position(|row| row.typing)?;
            Some((row, rows[row].cursor?))
        });
        // Rows that come or go in the midst of others move those below them, so all from there on are new.
        let kept = if rows.len() == before.rows.len() {
            rows.len()
        } else {
            let pairs = rows.iter().zip(&before.rows);
            let same = pairs.take_while(|(now, before)| now.words == before.words).count();
            same / BLOCK * BLOCK
        };
        let stays = place == before.field && place.is_none_or(|(row, _)| row < kept);
        if !stays {
            // It is gone before its cell gets its words back.
            field.set_value(None);
        }
        for (index, (row, before)) in rows.iter().zip(&before.rows).take(kept).enumerate() {
            if row != before {
                change(index, before, row);
            }
        }
        if kept < rows.len().max(before.rows.len()) {
            write_from(&table, kept, &rows);
        }
        if let (Some((row, column)), Some(typing), false) = (place, typing, stays) {
            field.set_value(owner.with(|| put_field(store, row, column, typing)));
        }
        Drawn { rows, field: place }
    });
}

/// The rows as they are to look.
fn views(store: Store, words: Memo<ChartWords>) -> Vec<RowView> {
    let (selection, hover) = (store.selection.get(), store.hover.get());
    let typing = store.typing.read().is_some();
    let columns = selection.columns();
    let view = |(index, words): (usize, &std::sync::Arc<_>)| {
        let here = selection.cursor.row == index;
        RowView {
            words: std::sync::Arc::clone(words),
            selected: selection.rows().contains(&index).then(|| (*columns.start(), *columns.end())),
            cursor: here.then_some(selection.cursor.column),
            typing: here && typing,
            hovered: hover == Some(index),
        }
    };
    words.with(|words| words.rows.iter().enumerate().map(view).collect())
}

/// Writes the blocks from the row `first` on, in place of those that are there.
fn write_from(table: &Element, first: usize, rows: &[RowView]) {
    let blocks = table.get_elements_by_tag_name("tbody");
    while let Some(block) = blocks.item(u32::try_from(first / BLOCK).unwrap_or(0)) {
        block.remove();
    }
    let mut markup = String::new();
    for (place, block) in rows.chunks(BLOCK).enumerate().skip(first / BLOCK) {
        markup.push_str("<tbody role=\"rowgroup\">");
        for (index, row) in block.iter().enumerate() {
            row_markup(&mut markup, place * BLOCK + index, row);
        }
        markup.push_str("</tbody>");
    }
    // Only a place that does not exist is refused.
    let _ = table.insert_adjacent_html("beforeend", &markup);
    let last = table.last_element_child().and_then(|last| last.dyn_into::<HtmlElement>().ok());
    if let Some(last) = last
        && !rows.is_empty()
    {
        // The height of a block is said, as one that is out of sight is not measured.
        let count = rows.len() - (rows.len() - 1) / BLOCK * BLOCK;
        let _ = last.style().set_property("--rows", &count.to_string());
    }
}

/// Tells the page what of a row looks otherwise than before.
fn change(index: usize, before: &RowView, now: &RowView) {
    let columns = now.words.cells.len().max(before.words.cells.len());
    let row = cell(index, 0).and_then(|cell| cell.parent_element());
    let Some(row) = row else { return };
    if now.words.cells.len() != before.words.cells.len() {
        let mut markup = String::new();
        row_markup(&mut markup, index, now);
        row.set_outer_html(&markup);
        return;
    }
    let class = row_class(now);
    if row_class(before) != class {
        row.set_class_name(&class);
    }
    if now.words.octave != before.words.octave
        && let Some(octave) = row.first_element_child().and_then(|head| head.next_element_sibling())
    {
        octave.set_text_content(Some(&now.words.octave));
    }
    for column in 0..columns {
        let (was, is) = (cell_look(before, column), cell_look(now, column));
        let (Some(was), Some(is)) = (was, is) else { break };
        if was == is {
            continue;
        }
        let Some(cell) = cell(index, column) else { break };
        if was.text != is.text {
            cell.set_text_content(Some(is.text));
        }
        if was.class != is.class {
            cell.set_class_name(&is.class);
        }
        if was.selected != is.selected {
            set(&cell, "aria-selected", Some(if is.selected { "true" } else { "false" }));
        }
        if was.wrong != is.wrong {
            set(&cell, "aria-invalid", is.wrong.then_some("true"));
        }
        if was.title != is.title {
            set(&cell, "title", is.title);
        }
    }
}

fn cell(row: usize, column: usize) -> Option<Element> {
    document().get_element_by_id(&cell_id(row, column))
}

/// Sets an attribute or takes it away; these names are refused by no browser.
fn set(cell: &Element, name: &str, value: Option<&str>) {
    let _ = match value {
        Some(value) => cell.set_attribute(name, value),
        None => cell.remove_attribute(name),
    };
}

/// Puts a field into a cell, or into the sheet for fingers where there is one.
fn put_field(store: Store, row: usize, column: usize, typing: Typing) -> Option<Field> {
    let sheet = document().get_element_by_id(SHEET);
    let cell = sheet.or_else(|| cell(row, column))?.dyn_into().ok()?;
    let view = move || CellField(CellFieldProps { store, typing, column }).into_any();
    Some(mount_to(cell, view))
}
