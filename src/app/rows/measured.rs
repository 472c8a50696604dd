//! Measurements that somebody pasted: a table with headings, or plain lines of note and length.

use super::cells::as_stored;
use crate::design::document::{Design, MOST_STRINGS, StringSpec, Units};
use crate::design::edit::{Column, Edit};
use crate::design::letters::small;
use crate::design::table;

/// The columns of a line without headings, in their order.
const ORDER: [Column; 5] =
    [Column::Note, Column::Length, Column::MakeUp, Column::Gauge, Column::OrderCode];

/// Reads measurements into a design like `base`. With headings in the first line they are a table;
/// without, each line holds a note and a length, then perhaps the string and its gauge.
///
/// # Errors
///
/// A sentence that says what is wrong and what to do.
pub fn measured(text: &str, base: &Design) -> Result<Design, String> {
    let first = text.lines().find(|line| !line.trim().is_empty());
    let Some(first) = first else {
        return Err(
            "Nothing was pasted yet. Paste a line for each string, such as: C4 612".to_owned()
        );
    };
    let heads = small(first);
    if heads.contains("note") || heads.contains("length") || heads.contains("frequency") {
        return match table::read(text) {
            Ok(read) => Ok(read.into_design(base)),
            Err(errors) => {
                let words: Vec<String> = errors.iter().take(3).map(|e| format!("{e}.")).collect();
                Err(words.join(" "))
            }
        };
    }
    let lines: Vec<&str> = text.lines().filter(|line| !line.trim().is_empty()).collect();
    if lines.len() > MOST_STRINGS {
        let got = lines.len();
        return Err(format!(
            "{got} lines were pasted; a design has at most {MOST_STRINGS} strings."
        ));
    }
    let texts = lines.iter().map(|line| split(line, text, &base.units)).collect();
    let strings = vec![StringSpec::default(); lines.len()];
    let columns = ORDER.map(Some).to_vec();
    let block = Edit::Block { row: 0, columns, texts };
    Ok(block.apply(&Design { strings, ..base.clone() }))
}

/// The cells of a line: between tabs, semicolons or commas, whichever the text uses; else the note
/// ends at the first blank.
fn split(line: &str, all: &str, units: &Units) -> Vec<String> {
    let between = ['\t', ';', ','].into_iter().find(|sign| all.contains(*sign));
    let cells: Vec<&str> = match between {
        Some(sign) => line.split(sign).collect(),
        None => line.trim().splitn(2, char::is_whitespace).collect(),
    };
    cells.into_iter().zip(ORDER).map(|(cell, column)| as_stored(cell, column, units)).collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::design::document::LengthUnit;

    #[test]
    fn plain_lines_are_notes_and_lengths() {
        for text in ["C5 300\n\nB4 24 1/8 in", "C5\t300\nB4\t24 1/8 in", "C5; 300\nB4; 24 1/8 in\n"]
        {
            let design = measured(text, &Design::default()).unwrap();
            let pairs: Vec<(&str, &str)> =
                design.strings.iter().map(|s| (s.note.as_str(), s.length.as_str())).collect();
            assert_eq!(pairs, [("C5", "300"), ("B4", "24 1/8 in")], "{text:?}");
        }
    }

    #[test]
    fn the_string_and_its_gauge_may_follow() {
        let design =
            measured("C5, 300, nylon, 0.64\nB4, 320, steel 0.3 + bronze 0.2", &Design::default())
                .unwrap();
        assert_eq!(design.strings[0].make_up.diameter, "0.64");
        assert!(design.strings[1].make_up.is_wound());
    }

    #[test]
    fn bare_numbers_are_in_the_units_of_the_page() {
        let mut base = Design::default();
        base.units.length = LengthUnit::Inch;
        assert_eq!(measured("C5 12", &base).unwrap().strings[0].length, "12 in");
    }

    #[test]
    fn headings_make_it_a_table() {
        let design = measured("length_mm,note\n300,C5\n", &Design::default()).unwrap();
        assert_eq!(design.strings[0].note, "C5");
        let error = measured("length_mm,note\nlong,C5\n", &Design::default()).unwrap_err();
        assert!(error.contains("line 2"), "{error}");
    }

    #[test]
    fn nothing_or_too_much_is_told() {
        assert!(measured(" \n", &Design::default()).unwrap_err().contains("Paste a line"));
        let many = "C4 300\n".repeat(400);
        assert!(measured(&many, &Design::default()).unwrap_err().contains("400 lines"));
    }
}
