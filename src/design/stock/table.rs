//! A stock list out of a spreadsheet: which column is what is proposed from the headings, the caller may
//! say otherwise, bad lines are reported and the good ones taken. And a list into one.

mod columns;
mod line;

pub use self::columns::{Column, Columns, Field, Size, propose};
use self::line::Line;
pub use self::line::pack_mm;
use super::file::MOST_ITEMS;
use super::{bundle_of, money};
use crate::design::cells::{self, Row, TableError};
use crate::design::document::{MaterialSpec, StockItem};
use crate::words::{Language, in_language, stock, tables as say};

/// The longest table that is read, in bytes.
pub const MOST_BYTES: usize = 4 << 20;
/// The most lines that are reported.
const MOST_REPORTED: usize = 100;

/// The headings of an exported list.
pub const COLUMNS: [&str; 11] = [
    "make_up",
    "order_code",
    "supplier",
    "pack",
    "pack_length_mm",
    "price",
    "currency",
    "in_stock",
    "lowest_note",
    "highest_note",
    "remark",
];

/// What was read of a table.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Import {
    /// The items of the good lines.
    pub items: Vec<StockItem>,
    /// The lines that were left out, and why.
    pub bad: Vec<TableError>,
    /// What is odd about lines that were taken.
    pub doubts: Vec<TableError>,
}

/// The table of a list: [`COLUMNS`] and a line for each item. [`import`] with the columns that [`propose`]
/// gives reads it back.
pub fn export(items: &[StockItem]) -> String {
    let mut out = COLUMNS.join(",");
    out.push('\n');
    let text = |text: &str| cells::guarded(text);
    let number = |number: Option<f64>| number.map(|number| number.to_string()).unwrap_or_default();
    for item in items {
        let row = [
            text(&item.make_up),
            text(&item.code),
            text(&item.supplier),
            // What is read again stands in English.
            in_language(Language::English, || pack_kind(item)),
            number(item.pack_mm),
            number(item.price),
            text(&item.currency),
            if item.sold_out { "no" } else { "yes" }.to_owned(),
            text(&item.lowest),
            text(&item.highest),
            text(&item.remark),
        ];
        for (index, cell) in row.iter().enumerate() {
            if index > 0 {
                out.push(',');
            }
            cells::push(&mut out, cell, ',');
        }
        out.push('\n');
    }
    out
}

/// Reads a table with the columns as they are matched. `material` is what the strings of a table are of
/// that does not say so, and may be empty; `materials` are the user's own.
pub fn import(text: &str, columns: &Columns, material: &str, materials: &[MaterialSpec]) -> Import {
    let mut import = Import::default();
    let rows = match rows_of(text) {
        Ok(rows) => rows,
        Err(error) => {
            import.bad.push(error);
            return import;
        }
    };
    for row in rows.iter().skip(1) {
        if import.items.len() == MOST_ITEMS {
            let message = say::items_many(&MOST_ITEMS);
            import.bad.push(error_at(row.line, message));
            break;
        }
        if import.bad.len() >= MOST_REPORTED {
            let message = say::bad_many(&MOST_REPORTED);
            import.bad.push(error_at(row.line, message));
            break;
        }
        let mut line = Line::new(row, columns);
        match line.item(material, materials) {
            Some(item) if line.errors.is_empty() => import.items.push(item),
            _ => import.bad.append(&mut line.errors),
        }
        if import.doubts.len() < MOST_REPORTED {
            import.doubts.append(&mut line.doubts);
        }
    }
    import
}

/// What a pack is: `coil`, `single`, or `bundle of 12`.
pub fn pack_kind(item: &StockItem) -> String {
    match (item.single, bundle_of(item)) {
        (false, _) => stock::COIL.into(),
        (true, 1) => stock::SINGLE.into(),
        (true, count) => stock::bundle(&count),
    }
}

fn error_at(line: usize, message: String) -> TableError {
    TableError { line, column: String::new(), message }
}

/// The rows of a table that are not empty, the headings first.
fn rows_of(text: &str) -> Result<Vec<Row>, TableError> {
    if text.len() > MOST_BYTES {
        let message = say::too_large(&(MOST_BYTES >> 20));
        return Err(error_at(1, message));
    }
    let text = text.trim_start_matches('\u{feff}');
    let first = text.lines().find(|line| !line.trim().is_empty()).unwrap_or_default();
    let rows = cells::rows(text, cells::delimiter(first))
        .map_err(|line| error_at(line, say::OPEN_QUOTE.into()))?;
    let is_blank = |row: &Row| row.cells.iter().all(|cell| cell.trim().is_empty());
    let rows: Vec<Row> = rows.into_iter().filter(|row| !is_blank(row)).collect();
    if rows.is_empty() {
        return Err(error_at(1, say::EMPTY.into()));
    }
    Ok(rows)
}

#[cfg(test)]
mod tests;
