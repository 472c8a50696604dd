//! The string table as CSV: every figure out ([`write`]), strings in ([`read`]), and blocks of cells
//! to and from a spreadsheet's clipboard.
//!
//! Numbers are written in full (the shortest text that reads back as the same number) with a decimal
//! point, whatever the language of the browser. A figure that is not known is an empty cell. A text
//! that a spreadsheet would run as a formula gets an apostrophe before it, which is taken off again
//! when it is read; plain numbers, also negative ones, never do.

mod asked;
mod guess;
pub mod hand;
mod headings;
mod line;
mod measured_cell;
mod notes;
mod read;
pub mod report;
mod sheet;
mod tuned;

use thiserror::Error;

pub use self::headings::Field;
pub use self::read::{INPUT_COLUMNS, MOST_BYTES, TableRead, is_ours, open, read};
pub(crate) use super::cells;
pub use super::cells::TableError;
use super::decimal::decimal;
use super::document::{Design, MOST_STRINGS, StringSpec};
use super::make_up_text;
use super::stock::{NoPrice, prices};
use crate::engine::analysis::{Analysis, Known, StringFigures};
use crate::engine::figure::Figure;
use crate::engine::units::Length;
use crate::words::tables as say;

/// What stands in a column of the table.
#[derive(Clone, Copy)]
enum Cell {
    Number,
    Note,
    HarpOctave,
    MakeUp,
    OrderCode,
    Price,
    Figure(Figure),
}

/// How many columns there are: those of the figures, and six others.
const COUNT: usize = Figure::ALL.len() + 6;

/// The columns in order, as they are promised: the figures in the order of their list, the others before and
/// among them. So the column of a new figure is the last.
const CELLS: [Cell; COUNT] = {
    let mut cells = [Cell::Number; COUNT];
    (cells[1], cells[2]) = (Cell::Note, Cell::HarpOctave);
    let (mut at, mut place) = (3, 0);
    while place < Figure::ALL.len() {
        let figure = Figure::ALL[place];
        cells[at] = Cell::Figure(figure);
        (at, place) = (at + 1, place + 1);
        if matches!(figure, Figure::Length) {
            cells[at] = Cell::MakeUp;
            at += 1;
        }
        if matches!(figure, Figure::CutLength) {
            (cells[at], cells[at + 1]) = (Cell::OrderCode, Cell::Price);
            at += 2;
        }
    }
    cells
};

/// The headings of the table, in order.
pub const COLUMNS: [&str; COUNT] = {
    let mut columns = [""; COUNT];
    let mut at = 0;
    while at < COUNT {
        columns[at] = match CELLS[at] {
            Cell::Number => "string",
            Cell::Note => "note",
            Cell::HarpOctave => "harp_octave",
            Cell::MakeUp => "make_up",
            Cell::OrderCode => "order_code",
            Cell::Price => "price",
            Cell::Figure(figure) => super::figures::row(figure).heading,
        };
        at += 1;
    }
    columns
};

/// How many of a list are named.
const NAMED: usize = 12;

/// The first of a list, and how many more there are: it may come from outside, and be of any length.
pub fn some_of(all: &[String]) -> String {
    let first = all.iter().take(NAMED).map(String::as_str).collect::<Vec<_>>().join(", ");
    match all.len().saturating_sub(NAMED) {
        0 => first,
        more => say::and_more(&more, &first),
    }
}

/// The table of a design with its figures: [`COLUMNS`] and a line for each string.
pub fn write(design: &Design, analysis: &Analysis) -> String {
    let mut out = COLUMNS.join(",");
    out.push('\n');
    let prices = price_cells(design, analysis);
    for ((spec, figures), price) in design.strings.iter().zip(&analysis.strings).zip(prices) {
        for (index, cell) in row(spec, figures, price).iter().enumerate() {
            if index > 0 {
                out.push(',');
            }
            cells::push(&mut out, cell, ',');
        }
        out.push('\n');
    }
    out
}

/// The price of each string: a number, with its currency only where the strings have several.
fn price_cells(design: &Design, analysis: &Analysis) -> Vec<String> {
    let prices = prices(design, analysis);
    let known = || prices.iter().filter_map(|price| price.as_ref().ok());
    let mixed = known().any(|(_, currency)| known().any(|(_, other)| other != currency));
    let cell = |price: &Result<(f64, String), NoPrice>| match price {
        Ok((price, currency)) if mixed => cells::guarded(&format!("{price} {currency}")),
        Ok((price, _)) => number(Ok(*price)),
        Err(_) => String::new(),
    };
    prices.iter().map(cell).collect()
}

fn row(spec: &StringSpec, figures: &StringFigures, price: String) -> Vec<String> {
    let note = match (figures.note, figures.frequency) {
        (Some(note), _) => note.to_string(),
        // A string that is given by its frequency alone.
        (None, Ok(_)) => String::new(),
        (None, Err(_)) => cells::guarded(&spec.note),
    };
    let cell = |cell: &Cell| match *cell {
        Cell::Number => figures.number.to_string(),
        Cell::Note => note.clone(),
        Cell::HarpOctave => figures.note.map(|n| n.harp_octave().to_string()).unwrap_or_default(),
        Cell::MakeUp => cells::guarded(&make_up_text::write(&spec.make_up)),
        Cell::OrderCode => cells::guarded(&spec.order_code),
        Cell::Price => price.clone(),
        Cell::Figure(Figure::Length) => figures.length.map(exact_mm).unwrap_or_default(),
        Cell::Figure(Figure::Gauge) => number(figures.gauge.map(rounded_mm)),
        Cell::Figure(Figure::Core) => number(figures.core.map(rounded_mm)),
        Cell::Figure(figure) => number(figure.value(figures)),
    };
    CELLS.iter().map(cell).collect()
}

fn number(value: Known<f64>) -> String {
    value.ok().filter(|value| value.is_finite()).map(|value| value.to_string()).unwrap_or_default()
}

/// The shortest decimal number of millimetres that is exactly this length when it is read again; so
/// 0.81 mm stays `0.81`, though metres and back may move the last digit.
fn exact_mm(length: Length) -> String {
    let mm = length.to_mm();
    let shortest = (0..17).find_map(|digits| {
        let near = decimal(&format!("{mm:.digits$e}"))?;
        (Length::from_mm(near) == length).then_some(near)
    });
    shortest.unwrap_or(mm).to_string()
}

/// Millimetres to a billionth: the sum of core and layers carries no digits of its own beyond them.
fn rounded_mm(length: Length) -> f64 {
    (length.to_mm() * 1e9).round() / 1e9
}

/// Why a text is no block of cells that can be pasted.
#[derive(Clone, Debug, PartialEq, Eq, Error)]
#[non_exhaustive]
pub enum BlockError {
    /// Longer than [`MOST_BYTES`].
    #[error("{}", say::block_large(&(MOST_BYTES >> 20)))]
    TooLarge,
    /// More rows than a design may have strings.
    #[error("{}", say::block_rows(.got, &MOST_STRINGS))]
    TooManyRows { got: usize },
}

/// A block of cells as a spreadsheet's clipboard holds it: tabs between cells, a line for each row,
/// quotes round a cell with a tab, a line end or a quote.
pub fn block_to_tsv(block: &[Vec<String>]) -> String {
    let mut out = String::new();
    for row in block {
        for (index, cell) in row.iter().enumerate() {
            if index > 0 {
                out.push('\t');
            }
            cells::push(&mut out, &cells::guarded(cell), '\t');
        }
        out.push('\n');
    }
    out
}

/// The block of cells that a clipboard's text holds. A text whose quotes do not close is taken
/// without quoting: then they are inch marks.
///
/// # Errors
///
/// When the text is too large or has too many rows.
pub fn block_from_tsv(text: &str) -> Result<Vec<Vec<String>>, BlockError> {
    if text.len() > MOST_BYTES {
        return Err(BlockError::TooLarge);
    }
    let plain = |text: &str| -> Vec<Vec<String>> {
        text.lines().map(|line| line.split('\t').map(str::to_owned).collect()).collect()
    };
    let block: Vec<Vec<String>> = match cells::rows(text, '\t') {
        Ok(rows) => rows.into_iter().map(|row| row.cells).collect(),
        Err(_) => plain(text),
    };
    if block.len() > MOST_STRINGS {
        return Err(BlockError::TooManyRows { got: block.len() });
    }
    let unguarded = |cell: String| cells::unguarded(&cell).to_owned();
    Ok(block.into_iter().map(|row| row.into_iter().map(unguarded).collect()).collect())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_length_is_written_short_and_reads_back_exactly() {
        for text in ["0.81", "612", "1275", "0.1", "2.54", "33.3", "1500.5"] {
            let mm: f64 = text.parse().unwrap();
            assert_eq!(exact_mm(Length::from_mm(mm)), text);
        }
        for inch in [24.125, 3.0, 0.032, 41.7] {
            let typed = Length::from_mm(Length::from_inch(inch).to_mm());
            let back: f64 = exact_mm(typed).parse().unwrap();
            assert_eq!(Length::from_mm(back), typed, "{inch} in");
        }
    }

    #[test]
    fn a_block_of_cells_comes_back() {
        let block = [["C4", "24\"", ""], ["a\tb", "\"q\"\nr", "=x"]];
        let block: Vec<Vec<String>> =
            block.iter().map(|row| row.iter().map(|cell| (*cell).to_owned()).collect()).collect();
        assert_eq!(block_from_tsv(&block_to_tsv(&block)), Ok(block));
        assert_eq!(block_from_tsv("\"a\tb\n").unwrap(), [["\"a", "b"]]);
        assert_eq!(block_from_tsv("a\n\nb").unwrap(), [["a"], [""], ["b"]]);
        assert_eq!(block_from_tsv(&"a\n".repeat(151)), Err(BlockError::TooManyRows { got: 151 }));
        assert_eq!(block_from_tsv(&"a".repeat(MOST_BYTES + 1)), Err(BlockError::TooLarge));
    }
}
