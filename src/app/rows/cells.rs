//! What goes into a cell: what was typed, pasted, filled or nudged.

use crate::app::grid::{Selection, Shown};
use crate::design::document::{Design, GaugeUnit, LengthUnit, StringSpec, Units};
use crate::design::edit::{Column, cell_text};
use crate::design::{make_up_said, make_up_text, typed};
use crate::engine::pitch::{Letter, Note, naming};
use crate::words::{self, Language, Naming};

/// What a cell stores of what was typed on a page in these units: a bare number in inches or
/// thousandths gets its unit, since a bare number in the document is in millimetres. A note gets its English name.
pub fn as_stored(text: &str, column: Column, units: &Units) -> String {
    match column {
        Column::Note => naming::kept(text, words::naming()),
        _ => with_units(text, column, units),
    }
}

/// As [`as_stored`], for what needs no looking up in other languages ([`says_itself`]).
pub fn with_units(text: &str, column: Column, units: &Units) -> String {
    match (column, units.length, units.gauge) {
        (Column::Length, LengthUnit::Inch, _) => typed::with_unit(text, "in"),
        (Column::Gauge, _, unit) => typed::gauge_kept(text, unit),
        (Column::MakeUp, _, GaugeUnit::Thou) => {
            with_sizes(text, |size| typed::gauge_kept(size, GaugeUnit::Thou))
        }
        _ => text.trim().to_owned(),
    }
}

/// Whether what was typed means the same to a document as to who typed it, whatever the language.
pub fn says_itself(text: &str, column: Column) -> bool {
    match column {
        Column::Note => words::naming() == Naming::English && text.parse::<Note>().is_ok(),
        Column::MakeUp => words::language() == Language::English,
        _ => true,
    }
}

/// As [`as_stored`], with what a make-up is called in the language of the page as a document has it.
pub fn as_kept(text: &str, column: Column, design: &Design) -> String {
    match column {
        Column::MakeUp => {
            as_stored(&make_up_said::kept(text, &design.materials), column, &design.units)
        }
        _ => as_stored(text, column, &design.units),
    }
}

/// What a cell holds, as it is typed on a page in these units: a bare number in millimetres has its unit where the page
/// has another one, and notes and materials their names.
pub fn as_typed(string: &StringSpec, column: Column, units: &Units) -> String {
    match column {
        Column::MakeUp => make_up_said::line_said(&in_units(string, column, units)),
        _ => in_units(string, column, units),
    }
}

fn in_units(string: &StringSpec, column: Column, units: &Units) -> String {
    let text = cell_text(string, column);
    match (column, units.length, units.gauge) {
        (Column::Length, LengthUnit::Inch, _) | (Column::Gauge, _, GaugeUnit::Thou) => {
            typed::with_unit(&text, "mm")
        }
        (Column::MakeUp, _, GaugeUnit::Thou) => {
            with_sizes(&text, |size| typed::with_unit(size, "mm"))
        }
        (Column::Note, ..) if words::naming() != Naming::English => naming::shown(&text),
        _ => text,
    }
}

/// As [`as_typed`], with a decimal point throughout, as the figures beside it have one, and English names of notes; but
/// where a B alone would be read as B flat, B is an H.
pub fn as_copied(string: &StringSpec, column: Column, units: &Units) -> String {
    let text = in_units(string, column, units);
    match column {
        Column::Note => match string.note.parse::<Note>() {
            Ok(note) if (note.letter(), note.alter()) == (Letter::B, 0) && is_german() => {
                note.printed()
            }
            _ => string.note.clone(),
        },
        Column::Length | Column::Gauge => typed::with_point(&text),
        Column::MakeUp => with_sizes(&text, typed::with_point),
        _ => text,
    }
}

fn is_german() -> bool {
    words::naming() == Naming::German
}

/// The text of a make-up with each of its diameters changed; a text that is none as it is.
fn with_sizes(text: &str, change: impl Fn(&str) -> String) -> String {
    let Ok(mut make_up) = make_up_text::read(text) else { return text.trim().to_owned() };
    for size in make_up.sizes_mut().into_iter().filter(|size| !size.is_empty()) {
        *size = change(size);
    }
    make_up_text::write(&make_up)
}

/// Where each text of a pasted block goes, from the first of the columns from the one at which it is
/// pasted, and the texts as they are stored. Computed columns take nothing.
pub fn pasted(
    mut texts: Vec<Vec<String>>,
    at: &[Shown],
    design: &Design,
) -> (Vec<Option<Column>>, Vec<Vec<String>>) {
    let width = texts.iter().map(Vec::len).max().unwrap_or(0);
    let columns: Vec<Option<Column>> =
        (0..width).map(|place| at.get(place).and_then(|shown| shown.typed())).collect();
    let english = is_german() && has_english_notes(&columns, &texts);
    for line in &mut texts {
        for (column, text) in columns.iter().zip(line) {
            match column {
                Some(Column::Note) if english => *text = naming::kept(text, Naming::English),
                Some(column) => *text = as_kept(text, *column, design),
                None => {}
            }
        }
    }
    (columns, texts)
}

/// Whether the notes of a block are English for certain: some have a sign as in `Eb` and none is an H.
fn has_english_notes(columns: &[Option<Column>], texts: &[Vec<String>]) -> bool {
    let (mut signed, mut german) = (false, false);
    for line in texts {
        for (column, text) in columns.iter().zip(line) {
            if *column == Some(Column::Note) {
                signed |= text.parse::<Note>().is_ok_and(|note| note.alter() != 0);
                german |= matches!(text.trim_start().as_bytes(), [b'H' | b'h', ..]);
            }
        }
    }
    signed && !german
}

/// A single line that is pasted onto several selected rows goes into each, and a single cell into
/// every selected cell; any other block stays as it is.
pub fn spread(texts: Vec<Vec<String>>, selection: &Selection) -> Vec<Vec<String>> {
    let [line] = texts.as_slice() else { return texts };
    let line = match line.as_slice() {
        [cell] => selection.columns().map(|_| cell.clone()).collect(),
        _ => line.clone(),
    };
    selection.rows().map(|_| line.clone()).collect()
}

/// A length or gauge one step greater (`up`) or less, as it would be typed; `None` for other cells
/// and for what does not read as a size. A step is 1 mm of length or 0.01 mm of gauge (a
/// sixteenth of an inch, a thousandth); a `fine` one a tenth of it, in the units of the page.
pub fn nudged(
    string: &StringSpec,
    column: Column,
    up: bool,
    fine: bool,
    units: &Units,
) -> Option<String> {
    let text = cell_text(string, column);
    let size = match column {
        Column::Length => typed::length(&text).ok()?,
        Column::Gauge => typed::gauge(&text).ok()?,
        _ => return None,
    };
    let (now, step, digits, unit) = match (column, units.length, units.gauge) {
        (Column::Length, LengthUnit::Mm, _) => (size.to_mm(), 1.0, 1, ""),
        (Column::Length, LengthUnit::Inch, _) => (size.to_inch(), 0.0625, 4, " in"),
        (_, _, GaugeUnit::Mm) => (size.to_mm(), 0.01, 3, ""),
        (_, _, GaugeUnit::Thou) => (size.to_thou(), 1.0, 1, " thou"),
    };
    let step = if fine { step / 10.0 } else { step };
    // To the next multiple of the step, so that a run of nudges lands on round numbers.
    let places = now / step;
    let next = if up { (places + 1e-6).floor() + 1.0 } else { (places - 1e-6).ceil() - 1.0 };
    let number = format!("{:.digits$}", next * step);
    let number = number.trim_end_matches('0').trim_end_matches('.');
    let text = format!("{number}{unit}");
    let valid = match column {
        Column::Length => typed::length(&text).is_ok(),
        _ => typed::gauge(&text).is_ok(),
    };
    valid.then_some(text)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::app::grid::{Cell, SHOWN};
    use crate::design::document::MakeUpSpec;
    use crate::design::presets::SAMPLES;
    use crate::words::{Language, in_language, in_naming};

    fn string(length: &str, diameter: &str) -> StringSpec {
        let make_up = MakeUpSpec {
            material: "nylon".to_owned(),
            diameter: diameter.to_owned(),
            ..MakeUpSpec::default()
        };
        StringSpec { length: length.to_owned(), make_up, ..StringSpec::default() }
    }

    fn inches() -> Units {
        Units { length: LengthUnit::Inch, gauge: GaugeUnit::Thou, ..Units::default() }
    }

    #[test]
    fn a_bare_number_gets_the_unit_of_the_page() {
        let mm = Units::default();
        assert_eq!(as_stored(" 612 ", Column::Length, &mm), "612");
        assert_eq!(as_stored("24.125", Column::Length, &inches()), "24.125 in");
        assert_eq!(as_stored("61.2cm", Column::Length, &inches()), "61.2cm");
        assert_eq!(as_stored("32", Column::Gauge, &inches()), "32 thou");
        assert_eq!(as_stored(".032", Column::Gauge, &inches()), ".032 in");
        assert_eq!(as_stored("A4", Column::Note, &inches()), "A4");
        let make_up = |text: &str, units: &Units| as_stored(text, Column::MakeUp, units);
        assert_eq!(make_up("nylon 25", &inches()), "nylon 25 thou");
        assert_eq!(
            make_up("steel .018 + bronze 0.25 mm", &inches()),
            "steel .018 in + bronze 0.25 mm"
        );
        assert_eq!(make_up("nylon 0,64", &mm), "nylon 0,64");
        assert_eq!(make_up("nylon 1 + 2 + 3 + 4 + 5", &inches()), "nylon 1 + 2 + 3 + 4 + 5");
    }

    /// Looking into a cell and leaving it changes nothing, whatever the units of the page.
    #[test]
    fn what_a_cell_begins_with_means_what_it_holds() {
        let wound = make_up_text::read("steel 0,40 + bronze .010 in").unwrap();
        let wound = StringSpec { make_up: wound, ..string("86,5", "") };
        for units in [Units::default(), inches()] {
            for string in [&wound, &string("612", "0,81"), &string("24 1/8 in", "32 thou")] {
                for column in [Column::Length, Column::Gauge, Column::MakeUp] {
                    for text in
                        [as_typed(string, column, &units), as_copied(string, column, &units)]
                    {
                        let stored = as_stored(&text, column, &units);
                        let sizes = |text: &str| -> Vec<f64> {
                            let mut make_up = make_up_text::read(text).unwrap();
                            let sizes = make_up.sizes_mut();
                            sizes
                                .iter()
                                .filter_map(|size| Some(typed::gauge(size).ok()?.to_mm()))
                                .collect()
                        };
                        let held = cell_text(string, column);
                        match column {
                            Column::Length => {
                                assert_eq!(typed::length(&stored), typed::length(&held));
                            }
                            Column::Gauge if held.is_empty() => assert_eq!(stored, ""),
                            Column::Gauge => assert_eq!(typed::gauge(&stored), typed::gauge(&held)),
                            _ => assert_eq!(sizes(&stored), sizes(&held), "{stored}"),
                        }
                    }
                }
            }
        }
        assert_eq!(
            as_copied(&wound, Column::MakeUp, &Units::default()),
            "steel 0.40 + bronze .010 in"
        );
        assert_eq!(as_copied(&wound, Column::Length, &Units::default()), "86.5");
    }

    /// In every language, for notes and make-ups as they are shown in it.
    #[test]
    fn a_cell_that_is_left_as_it_was_keeps_what_it_holds() {
        for sample in SAMPLES {
            let design = sample.design();
            for language in Language::ALL {
                in_language(language, || {
                    for string in &design.strings {
                        for column in [Column::Note, Column::MakeUp] {
                            let typed = as_typed(string, column, &design.units);
                            let kept = as_kept(&typed, column, &design);
                            assert_eq!(kept, cell_text(string, column), "{typed} {language:?}");
                            let copied = as_copied(string, column, &design.units);
                            let kept = as_kept(&copied, column, &design);
                            assert_eq!(kept, cell_text(string, column), "{copied} {language:?}");
                        }
                    }
                });
            }
        }
    }

    #[test]
    fn notes_are_kept_with_their_english_names() {
        let stored = |text: &str, naming| {
            in_naming(naming, || as_stored(text, Column::Note, &Units::default()))
        };
        assert_eq!(stored("B4", Naming::German), "Bb4");
        assert_eq!(stored("H4", Naming::German), "B4");
        assert_eq!(stored("mi♭ 2", Naming::Syllables), "Eb3");
        assert_eq!(stored("Es3", Naming::English), "Eb3");
        assert_eq!(stored("eb3", Naming::German), "eb3");
        let of = |note: &str| StringSpec { note: note.to_owned(), ..StringSpec::default() };
        let copied = |note| as_copied(&of(note), Column::Note, &Units::default());
        assert_eq!(in_naming(Naming::German, || [copied("B4"), copied("Bb4")]), ["H4", "Bb4"]);
        assert_eq!(in_naming(Naming::Syllables, || copied("B4")), "B4");
        let typed = |note| as_typed(&of(note), Column::Note, &Units::default());
        assert_eq!(in_naming(Naming::Syllables, || typed("Bb4")), "si♭3");
        assert_eq!(in_naming(Naming::Syllables, || typed("443,2 Hz")), "443,2 Hz");
    }

    /// A block that is English for certain is read so while names are German.
    #[test]
    fn a_pasted_block_says_itself_what_its_b_is() {
        let block = |notes: &[&str]| {
            let lines = notes.iter().map(|note| vec![(*note).to_owned()]).collect();
            let read = || pasted(lines, &SHOWN, &Design::default()).1;
            in_naming(Naming::German, read).concat()
        };
        assert_eq!(block(&["C5", "B4", "A4"]), ["C5", "Bb4", "A4"]);
        assert_eq!(block(&["C5", "B4", "Ab4"]), ["C5", "B4", "Ab4"]);
        assert_eq!(block(&["H4", "B4", "A4"]), ["B4", "Bb4", "A4"]);
    }

    #[test]
    fn a_nudge_goes_to_the_next_round_step() {
        let mm = Units::default();
        let next =
            |length: &str, up| nudged(&string(length, "0.81"), Column::Length, up, false, &mm);
        assert_eq!(next("612", true).unwrap(), "613");
        assert_eq!(next("612.4", true).unwrap(), "613");
        assert_eq!(next("612.4", false).unwrap(), "612");
        assert_eq!(next("24 in", true).unwrap(), "610", "in the units of the page");
        assert_eq!(next("long", true), None);
        assert_eq!(next("20", false), None, "never out of reach");
        let gauge = |diameter: &str, fine| {
            nudged(&string("612", diameter), Column::Gauge, true, fine, &mm).unwrap()
        };
        assert_eq!(gauge("0.81", false), "0.82");
        assert_eq!(gauge("0.81", true), "0.811");
        let thou = nudged(&string("612", "32 thou"), Column::Gauge, false, false, &inches());
        assert_eq!(thou.unwrap(), "31 thou");
    }

    #[test]
    fn one_cell_goes_into_every_selected_one() {
        let cell = |text: &str| vec![vec![text.to_owned()]];
        let block =
            Selection { anchor: Cell { row: 2, column: 1 }, cursor: Cell { row: 4, column: 3 } };
        assert_eq!(spread(cell("gut"), &block), vec![vec!["gut".to_owned(); 3]; 3]);
        assert_eq!(spread(cell("gut"), &Selection::at(2, 1)), cell("gut"));
        let two = vec![vec!["a".to_owned()], vec!["b".to_owned()]];
        assert_eq!(spread(two.clone(), &block), two);
    }

    #[test]
    fn a_pasted_block_leaves_computed_columns_alone() {
        let line = vec![
            "A4".to_owned(),
            "24".to_owned(),
            "gut".to_owned(),
            "32".to_owned(),
            "99".to_owned(),
        ];
        let (columns, texts) =
            pasted(vec![line], &SHOWN, &Design { units: inches(), ..Design::default() });
        assert_eq!(columns[3..], [Some(Column::Gauge), None]);
        assert_eq!(texts[0][..4], ["A4", "24 in", "gut", "32 thou"]);
    }
}
