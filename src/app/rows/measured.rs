//! Measurements that somebody pasted: a table with headings, or plain lines of lengths, perhaps with notes and
//! strings.

use super::whole::numbered;
use crate::design::document::{Design, StringSpec};
use crate::design::edit::Column;
use crate::design::heading::Size;
use crate::design::letters::capital;
use crate::design::make_up_said;
use crate::design::restring::{Gap, Measured, MeasuredError, Reading, read_measured};
use crate::engine::order::sort;
use crate::engine::pitch::naming::shown;
use crate::words::{Words, new_harp as say};

/// The most errors of a table that are told at once.
const MOST_ERRORS: usize = 5;

/// Reads measurements.
///
/// # Errors
///
/// A sentence that says what is wrong and what to do, with the line of a table.
pub fn measured(text: &str, reading: &Reading<'_>) -> Result<Measured, String> {
    let sentence = |error: &dyn std::fmt::Display| format!("{}.", capital(&error.to_string()));
    read_measured(text, reading).map_err(|error| match error {
        MeasuredError::Table(errors) => {
            let mut words: Vec<String> =
                errors.iter().take(MOST_ERRORS).map(|error| sentence(error)).collect();
            if errors.len() > MOST_ERRORS {
                words.push(say::and_more(&(errors.len() - MOST_ERRORS)));
            }
            words.join(" ")
        }
        error => sentence(&error),
    })
}

/// What each string becomes: number, note, length, gauge, material and remark.
pub fn preview(measured: &Measured) -> Vec<[String; 6]> {
    let remarks = &measured.hand.remarks;
    let row = |(at, string): (usize, &StringSpec)| {
        let make_up = &string.make_up;
        let (gauge, material) = if make_up.is_plain() {
            (make_up.diameter.clone(), make_up_said::material(&make_up.material))
        } else {
            (String::new(), make_up_said::said(make_up))
        };
        let remark = remarks.get(at).cloned().unwrap_or_default();
        let note = shown(&string.note);
        [(at + 1).to_string(), note, string.length.clone(), gauge, material, remark]
    };
    measured.table.strings.iter().enumerate().map(row).collect()
}

/// What there is to say of a list beside its preview, a sentence each.
pub fn told(measured: &Measured) -> Vec<String> {
    let hand = &measured.hand;
    let all = measured.table.told.iter().chain(&hand.assumed).chain(&hand.left_out);
    all.map(|line| format!("{}.", capital(line.trim_end_matches('.')))).collect()
}

/// The question about a column whose numbers look like another unit than was said.
pub fn unit_question(heading: &str, said: Size, looks: Size) -> String {
    match heading.trim() {
        "" => say::asks_unit(&looks.words(), &said.words()),
        heading => say::asks_unit_under(&heading, &looks.words(), &said.words()),
    }
}

/// The question about a B without a sign.
pub const ASKS_B: Words = say::ASKS_B;

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

/// What is missing, as the page lists it: what comes first, the sentence, and the first cell it is missing in. Notes
/// come before lengths, and what the strings are made of at last, as one measures a harp; strings that lack the same
/// share a line.
pub fn gap_words(design: &Design, gaps: &[Gap]) -> Vec<(String, usize, Column)> {
    let mut gaps: Vec<&Gap> = gaps.iter().collect();
    sort(&mut gaps, |one, other| one.column > other.column);
    let words = |alike: &Vec<&Gap>| {
        let gap = alike[0];
        if alike.len() > 1 {
            let rows: Vec<usize> = alike.iter().map(|gap| gap.row).collect();
            return (say::gaps(&gap.sentence, &numbered(&rows)), gap.row, gap.column);
        }
        let note = design.strings.get(gap.row).map(|string| shown(string.note.trim()));
        let words = match &*note.unwrap_or_default() {
            "" => say::gap(&gap.sentence, &(gap.row + 1)),
            note => say::gap_noted(&gap.sentence, &note, &(gap.row + 1)),
        };
        (words, gap.row, gap.column)
    };
    let mut told: Vec<Vec<&Gap>> = Vec::new();
    for gap in gaps {
        let is_like =
            |all: &&mut Vec<&Gap>| all[0].column == gap.column && all[0].sentence == gap.sentence;
        match told.iter_mut().find(is_like) {
            Some(all) => all.push(gap),
            None => told.push(vec![gap]),
        }
    }
    told.iter().map(words).collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::design::presets::OPEN_TUNINGS;
    use crate::design::restring::gaps;
    use crate::design::table::hand::Question;

    fn reading(highest: &str) -> Reading<'static> {
        Reading {
            highest: highest.parse().ok(),
            lowest: None,
            open: &OPEN_TUNINGS[0],
            columns: None,
            material: "",
            mechanism: None,
        }
    }

    fn read(text: &str, highest: &str) -> Result<(Design, bool), String> {
        let read = measured(text, &reading(highest))?;
        let turned = read.hand.turned;
        Ok((read.into_design(&Design::default()), turned))
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
        assert!(read(&many, "").unwrap_err().contains("at most 150 strings"));
    }

    #[test]
    fn a_preview_has_what_each_row_becomes_and_a_question_is_a_sentence() {
        let list = "Nr;Ton;Länge;Saite;Notiz\n1;H4;24;Darm 0,9;alt\n2;A4;26;Stahl 0,4 + Bronze 0,2;\n3;G4;28;;\n";
        let read = measured(list, &reading("")).unwrap();
        let rows = preview(&read);
        assert_eq!(rows[0], ["1", "B4", "24", "0,9", "gut", "alt"]);
        assert_eq!(rows[1], ["2", "A4", "26", "", "steel 0,4 + Bronze 0,2", ""]);
        let Question::Unit { place, said, answers } = &read.hand.questions()[0] else { panic!() };
        assert_eq!(
            unit_question(&read.hand.columns[*place].heading, *said, answers[0]),
            "The numbers under \"Länge\" name no unit and look like centimetres rather than millimetres. Which are they?"
        );
        assert_eq!(answers[..], [Size::Cm, Size::Inch, Size::Mm]);
        assert!(told(&read).contains(&"H is the B of English names, and B is B flat.".to_owned()));
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
        let (design, _) =
            read("C5 302 nylon\nB4 330 nylon\nA4 360 nylon 0.8\nG4 390 nylon", "").unwrap();
        let words = gap_words(&design, &gaps(&design));
        assert_eq!(words.len(), 1, "{words:?}");
        assert!(words[0].0.starts_with("Strings 1, 2, 4: the gauge was not measured"), "{words:?}");
        assert_eq!((words[0].1, words[0].2), (0, Column::Gauge));
    }
}
