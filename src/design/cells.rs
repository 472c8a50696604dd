//! Text in rows and cells, as spreadsheets write it: cells in quotes may hold the delimiter, line
//! ends and doubled quotes.

use std::fmt;

use super::decimal::decimal;
use crate::words::tables as say;

/// Where in a table something is wrong, and what.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct TableError {
    /// The line of the text, counted from 1.
    pub line: usize,
    /// The heading of the column; empty when the whole line is meant.
    pub column: String,
    /// What must hold, what was given, what to do.
    pub message: String,
}

impl fmt::Display for TableError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let Self { line, column, message } = self;
        if column.is_empty() {
            f.write_str(&say::in_line(line, message))
        } else {
            f.write_str(&say::in_column(column, line, message))
        }
    }
}

/// What stands between the cells: of comma, semicolon and tab the one that a line has most of.
pub(crate) fn delimiter(line: &str) -> char {
    // Of equally many, the comma.
    [';', '\t', ',']
        .into_iter()
        .max_by_key(|delimiter| line.matches(*delimiter).count())
        .unwrap_or(',')
}

/// A row with the line on which it begins, counted from 1.
pub(crate) struct Row {
    pub(crate) line: usize,
    pub(crate) cells: Vec<String>,
}

/// Cuts a text into rows. `Err` holds the line of a quote that is never closed.
///
/// A quote opens a quoted cell only where the cell begins; elsewhere it is an inch mark. The end of
/// the last line begins no further row.
pub(crate) fn rows(text: &str, delimiter: char) -> Result<Vec<Row>, usize> {
    let mut rows = Vec::new();
    let mut letters = text.chars().peekable();
    let mut line = 1;
    while letters.peek().is_some() {
        let mut row = Row { line, cells: Vec::new() };
        loop {
            let mut cell = String::new();
            if letters.next_if_eq(&'"').is_some() {
                line += quoted(&mut letters, &mut cell).ok_or(line)?;
            }
            while let Some(c) = letters.next_if(|c| *c != delimiter && !matches!(c, '\n' | '\r')) {
                cell.push(c);
            }
            row.cells.push(cell);
            match letters.next() {
                Some(c) if c == delimiter => {}
                Some('\r') => {
                    letters.next_if_eq(&'\n');
                    break;
                }
                _ => break,
            }
        }
        line += 1;
        rows.push(row);
    }
    Ok(rows)
}

/// Reads up to the closing quote. Gives the line ends passed, or `None` when there is no such quote.
fn quoted(
    letters: &mut std::iter::Peekable<std::str::Chars<'_>>,
    cell: &mut String,
) -> Option<usize> {
    let mut line_ends = 0;
    loop {
        match letters.next()? {
            '"' if letters.next_if_eq(&'"').is_none() => return Some(line_ends),
            '\r' => {
                letters.next_if_eq(&'\n');
                line_ends += 1;
                cell.push('\n');
            }
            c => {
                line_ends += usize::from(c == '\n');
                cell.push(c);
            }
        }
    }
}

/// Adds a cell to a text, in quotes where it needs them.
pub(crate) fn push(out: &mut String, cell: &str, delimiter: char) {
    let special = |c: char| c == delimiter || matches!(c, '"' | '\n' | '\r');
    if cell.contains(special) {
        out.push('"');
        out.push_str(&cell.replace('"', "\"\""));
        out.push('"');
    } else {
        out.push_str(cell);
    }
}

/// A user's text made harmless for a spreadsheet, which would run it as a formula when it begins with
/// `=`, `+`, `-` or `@`: an apostrophe before it says that it is text. A number stays as it is.
pub(crate) fn guarded(text: &str) -> String {
    if is_formula(text) { format!("'{text}") } else { text.to_owned() }
}

/// The text that [`guarded`] was given.
pub(crate) fn unguarded(cell: &str) -> &str {
    match cell.strip_prefix('\'') {
        Some(text) if is_formula(text) => text,
        _ => cell,
    }
}

fn is_formula(text: &str) -> bool {
    // Some spreadsheets pass over blanks before it.
    let bare = text.trim_start_matches(|c: char| c == '\'' || c.is_whitespace());
    let is_control = text.trim_start_matches('\'').starts_with(['\t', '\r']);
    (is_control || bare.starts_with(['=', '+', '-', '@'])) && decimal(text.trim()).is_none()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn cells(text: &str, delimiter: char) -> Vec<Vec<String>> {
        rows(text, delimiter).ok().unwrap().into_iter().map(|row| row.cells).collect()
    }

    #[test]
    fn quoted_cells_hold_delimiters_line_ends_and_quotes() {
        let text = "a,\"b,\"\"c\"\"\r\nd\"\r\n24\",,\n";
        assert_eq!(cells(text, ','), [vec!["a", "b,\"c\"\nd"], vec!["24\"", "", ""]]);
        let lines: Vec<usize> = rows(text, ',').ok().unwrap().iter().map(|r| r.line).collect();
        assert_eq!(lines, [1, 3]);
    }

    #[test]
    fn every_kind_of_line_end_ends_a_row() {
        assert_eq!(cells("a\rb\r\nc\n\nd", '\t'), [["a"], ["b"], ["c"], [""], ["d"]]);
        assert!(cells("", ',').is_empty());
    }

    #[test]
    fn a_quote_that_stays_open_is_reported_with_its_line() {
        assert_eq!(rows("a\n\"b\nc", ',').err(), Some(2));
    }

    #[test]
    fn a_formula_is_made_text_and_comes_back() {
        for text in [
            "=1+1",
            "+a",
            "-a",
            "@a",
            "'=1",
            "''@",
            " =1",
            "\u{a0}'=1",
            "'a",
            "",
            "C4",
            "-12.5",
            "+3",
            "é",
        ] {
            let cell = guarded(text);
            assert!(!cell.trim_start().starts_with(['=', '@']), "{cell}");
            assert_eq!(unguarded(&cell), text);
        }
        assert_eq!(guarded("=1+1"), "'=1+1");
        assert_eq!(guarded("-12.5"), "-12.5");
    }
}
