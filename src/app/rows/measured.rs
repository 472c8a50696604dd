//! Measurements that somebody pasted: a table with headings, or plain lines of lengths, perhaps with notes and
//! strings.

use crate::design::document::Design;
use crate::design::edit::Column;
use crate::design::letters::capital;
use crate::design::restring::{Gap, MeasuredError, Reading, read_measured};
use crate::design::typed;
use crate::engine::order::sort;

/// The most errors of a table that are told at once.
const MOST_ERRORS: usize = 5;

/// Reads measurements into a design like `base`; whether the list was turned round comes with it.
///
/// # Errors
///
/// A sentence that says what is wrong and what to do, with the line of a table.
pub fn measured(
    text: &str,
    reading: &Reading<'_>,
    base: &Design,
) -> Result<(Design, bool), String> {
    match read_measured(&parted(text), reading) {
        Ok(read) => {
            let turned = read.turned;
            Ok((read.into_design(base), turned))
        }
        Err(MeasuredError::Table(errors)) => {
            let mut words: Vec<String> = errors
                .iter()
                .take(MOST_ERRORS)
                .map(|error| format!("{}.", capital(&error.to_string())))
                .collect();
            if errors.len() > MOST_ERRORS {
                words.push(format!("And {} more.", errors.len() - MOST_ERRORS));
            }
            Err(words.join(" "))
        }
        Err(error) => Err(format!("{}.", capital(&error.to_string()))),
    }
}

/// Lines such as `C5,300,nylon,0.64` with a blank behind each comma, as those of a plain list have.
fn parted(text: &str) -> String {
    let line = |line: &str| match line.split_once(',') {
        Some((note, _))
            if !line.contains(", ") && typed::pitch(note).is_ok_and(|_| !is_number(note)) =>
        {
            line.replace(',', ", ")
        }
        _ => line.to_owned(),
    };
    text.lines().map(line).collect::<Vec<_>>().join("\n")
}

fn is_number(text: &str) -> bool {
    text.trim().bytes().all(|byte| byte.is_ascii_digit())
}

/// Whether a cell of a string is empty that a finished harp has filled.
pub fn has_blanks(design: &Design) -> bool {
    design.strings.iter().any(|string| {
        let make_up = &string.make_up;
        string.note.trim().is_empty()
            || string.length.trim().is_empty()
            || (make_up.is_plain()
                && (make_up.material.trim().is_empty() || make_up.diameter.trim().is_empty()))
    })
}

/// What is missing, as the page lists it: what comes first, the sentence, and the cell. Notes come before
/// lengths, and what the strings are made of at last, as one measures a harp.
pub fn gap_words(design: &Design, gaps: &[Gap]) -> Vec<(String, usize, Column)> {
    let mut gaps: Vec<&Gap> = gaps.iter().collect();
    sort(&mut gaps, |one, other| one.column > other.column);
    let words = |gap: &&Gap| {
        let note = design.strings.get(gap.row).map(|string| string.note.trim()).unwrap_or_default();
        let note = if note.is_empty() { String::new() } else { format!(", {note}") };
        (format!("String {}{note}: {}.", gap.row + 1, gap.sentence), gap.row, gap.column)
    };
    gaps.iter().map(words).collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::design::document::LengthUnit;
    use crate::design::presets::OPEN_TUNINGS;
    use crate::design::restring::gaps;

    fn reading(highest: &str) -> Reading<'static> {
        Reading {
            highest: highest.parse().ok(),
            lowest: None,
            open: &OPEN_TUNINGS[0],
            unit: LengthUnit::Mm,
        }
    }

    fn read(text: &str, highest: &str) -> Result<(Design, bool), String> {
        measured(text, &reading(highest), &Design::default())
    }

    #[test]
    fn plain_lines_are_notes_and_lengths() {
        for text in [
            "C5 300\n\nB4 24 1/8 in",
            "C5\t300\nB4\t24 1/8 in",
            "C5; 300\nB4; 24 1/8 in\n",
            "C5,300\nB4,24 1/8 in\n",
        ] {
            let (design, _) = read(text, "").unwrap();
            let pairs: Vec<(&str, &str)> =
                design.strings.iter().map(|s| (s.note.as_str(), s.length.as_str())).collect();
            assert_eq!(pairs, [("C5", "300"), ("B4", "24 1/8 in")], "{text:?}");
        }
    }

    #[test]
    fn the_string_and_its_gauge_may_follow() {
        for text in [
            "C5, 300, nylon, 0.64\nB4, 320, steel 0.3 + bronze 0.2",
            "C5,300,nylon,0.64\nB4,320,steel 0.3 + bronze 0.2",
        ] {
            let (design, _) = read(text, "").unwrap();
            assert_eq!(design.strings[0].make_up.diameter, "0.64", "{text}");
            assert!(design.strings[1].make_up.is_wound());
        }
    }

    #[test]
    fn lengths_alone_get_the_notes_from_an_end_and_may_be_turned_round() {
        let (design, turned) = read("300\n330\n612,5", "E5").unwrap();
        assert_eq!((design.strings[2].note.as_str(), turned), ("C5", false));
        assert_eq!(design.strings[2].length, "612,5");
        assert!(read("900\n300", "E5").unwrap().1);
    }

    #[test]
    fn headings_make_it_a_table_whose_errors_name_their_lines() {
        assert_eq!(read("length_mm,note\n300,C5\n", "").unwrap().0.strings[0].note, "C5");
        let error = read("length_mm,note\nlong,C5\n", "").unwrap_err();
        assert!(error.starts_with("Line 2"), "{error}");
    }

    #[test]
    fn nothing_or_too_much_is_told() {
        assert!(read(" \n", "").unwrap_err().starts_with("The list is empty"));
        let many = "C4 300\n".repeat(400);
        assert!(read(&many, "").unwrap_err().contains("got 400"));
    }

    #[test]
    fn what_is_missing_comes_in_the_order_of_measuring() {
        let (design, _) = read("C5 302 nylon\nB4 ? gut 0.7", "").unwrap();
        assert!(has_blanks(&design));
        let words = gap_words(&design, &gaps(&design));
        let cells: Vec<_> = words.iter().map(|(_, row, column)| (*row, *column)).collect();
        assert_eq!(cells, [(1, Column::Length), (0, Column::Gauge)]);
        assert!(words[0].0.starts_with("String 2, B4: the vibrating length was not measured"));
        let sample = crate::design::presets::SAMPLES[0].design();
        assert!(!has_blanks(&sample));
    }
}
