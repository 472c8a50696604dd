//! How the rows of the string chart look: as markup, and cell by cell for what changes later. A browser reads
//! the markup of a whole chart in a tenth of the time that it takes to be told of each element.

use std::sync::Arc;

use super::RowWords;
use crate::design::edit::Column;
use crate::design::letters::escape;

/// A row with what of cursor and selection touches it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct RowView {
    pub words: Arc<RowWords>,
    /// The first and the last selected column.
    pub selected: Option<(usize, usize)>,
    /// The column of the cursor.
    pub cursor: Option<usize>,
    /// Whether the cell under the cursor is being typed into; then it holds a field and no words.
    pub typing: bool,
    /// Whether a pointer is on the string, here or elsewhere on the page.
    pub hovered: bool,
}

/// How a cell looks.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct CellLook<'a> {
    pub class: String,
    /// What stands in it.
    pub text: &'a str,
    /// What a pointer that rests on it is told.
    pub title: Option<&'a str>,
    pub selected: bool,
    pub wrong: bool,
}

/// The name of a cell in the page.
pub fn cell_id(row: usize, column: usize) -> String {
    format!("cell-{row}-{column}")
}

/// The class of a row.
pub fn row_class(row: &RowView) -> String {
    let note = match row.words.mark {
        Some("C") => "is-c",
        Some(_) => "is-f",
        None => "",
    };
    let weight = match row.words.weight {
        Some(0) => "grave",
        Some(1) => "warned",
        _ => "",
    };
    let cursor = if row.cursor.is_some() { "has-cursor" } else { "" };
    let hovered = if row.hovered { "hovered" } else { "" };
    format!("{note} {weight} {cursor} {hovered}")
}

/// How the cell of a row in a column looks; `None` where the row has no such column.
pub fn cell_look(row: &RowView, column: usize) -> Option<CellLook<'_>> {
    let words = row.words.cells.get(column)?;
    let typed = words.typed;
    let selected = row.selected.is_some_and(|(first, last)| (first..=last).contains(&column));
    let cursor = row.cursor == Some(column);
    let wrong = words.error.is_some();
    let mut class = String::new();
    for (holds, name) in [
        (typed.is_some(), "typed "),
        (matches!(typed, Some(Column::MakeUp | Column::OrderCode | Column::Note)), "words "),
        (selected, "selected "),
        (cursor, "cursor "),
        (wrong, "wrong "),
        (words.unknown, "unknown "),
    ] {
        if holds {
            class.push_str(name);
        }
    }
    let text = if cursor && row.typing { "" } else { &words.text };
    let title = words.error.as_deref().or(words.reason.as_deref());
    Some(CellLook { class, text, title, selected, wrong })
}

/// A row as markup, `index` from 0 at the top.
pub fn row_markup(out: &mut String, index: usize, row: &RowView) {
    let number = (index + 1).to_string();
    for part in [
        "<tr role=\"row\" aria-rowindex=\"",
        &(index + 2).to_string(),
        "\" class=\"",
        &row_class(row),
        "\"><th scope=\"row\" role=\"rowheader\">",
        &number,
        "</th><td class=\"octave\" role=\"rowheader\">",
        &escape(&row.words.octave),
        "</td>",
    ] {
        out.push_str(part);
    }
    for column in 0..row.words.cells.len() {
        let Some(look) = cell_look(row, column) else { break };
        let read_only = if row.words.cells[column].typed.is_some() { "false" } else { "true" };
        for part in [
            "<td id=\"",
            &cell_id(index, column),
            "\" role=\"gridcell\" class=\"",
            &look.class,
            "\" aria-readonly=\"",
            read_only,
            "\" aria-selected=\"",
            if look.selected { "true" } else { "false" },
            if look.wrong { "\" aria-invalid=\"true" } else { "" },
        ] {
            out.push_str(part);
        }
        if let Some(title) = look.title {
            out.push_str("\" title=\"");
            out.push_str(&escape(title));
        }
        out.push_str("\">");
        out.push_str(&escape(look.text));
        out.push_str("</td>");
    }
    out.push_str("</tr>");
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::app::rows::CellWords;

    fn row(texts: &[&str]) -> RowView {
        let cell = |text: &&str| CellWords {
            text: (*text).to_owned(),
            typed: Some(Column::Length),
            ..CellWords::default()
        };
        let cells = texts.iter().map(cell).collect();
        let words = RowWords { octave: "3".to_owned(), mark: Some("C"), weight: Some(1), cells };
        let words = Arc::new(words);
        RowView { words, selected: None, cursor: None, typing: false, hovered: false }
    }

    fn markup(row: &RowView) -> String {
        let mut out = String::new();
        row_markup(&mut out, 6, row);
        out
    }

    #[test]
    fn what_was_typed_is_no_markup() {
        let mut row = row(&["<b>C4</b> & \"more\""]);
        let words = Arc::make_mut(&mut row.words);
        words.cells[0].error = Some("a note, not \"<i>\"".to_owned());
        let markup = markup(&row);
        assert!(markup.contains(">&lt;b&gt;C4&lt;/b&gt; &amp; &quot;more&quot;</td>"), "{markup}");
        assert!(markup.contains("title=\"a note, not &quot;&lt;i&gt;&quot;\""), "{markup}");
        assert!(markup.contains("aria-invalid=\"true\"") && !markup.contains("<b>"), "{markup}");
    }

    #[test]
    fn a_row_says_where_it_stands_and_what_touches_it() {
        let row = RowView {
            selected: Some((1, 2)),
            cursor: Some(1),
            ..row(&["C4", "300", "gut", "0.8"])
        };
        let markup = markup(&row);
        assert!(markup.starts_with(
            "<tr role=\"row\" aria-rowindex=\"8\" class=\"is-c warned has-cursor \">"
        ));
        assert!(
            markup.contains("id=\"cell-6-1\" role=\"gridcell\" class=\"typed selected cursor \"")
        );
        assert_eq!(markup.matches("aria-selected=\"true\"").count(), 2);
        assert_eq!(markup.matches("role=\"gridcell\"").count(), 4);
    }

    #[test]
    fn a_cell_that_is_typed_into_has_no_words() {
        let row = RowView { cursor: Some(0), typing: true, ..row(&["C4", "300"]) };
        assert_eq!(cell_look(&row, 0).unwrap().text, "");
        assert_eq!(cell_look(&row, 1).unwrap().text, "300");
        assert_eq!(cell_look(&row, 2), None);
    }
}
