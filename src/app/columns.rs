//! Which columns of the string chart are shown, in what order and how wide. Plain data, no page.

use super::grid::{SHOWN, Shown, is_there};
use crate::design::display;
use crate::design::document::Design;
use crate::design::edit::{Column, cell_text};
use crate::design::figures::row;
use crate::design::make_up_said::line_said;
use crate::engine::figure::Figure;
use crate::words::{Naming, Words, chart_page as say, naming};

/// A named set of columns: its key, its name, and its columns after the note.
pub type Set = (&'static str, Words, &'static [Shown]);

const NOTE: Shown = Shown::Typed(Column::Note);
const LENGTH: Shown = Shown::Typed(Column::Length);
const STRING: Shown = Shown::Typed(Column::MakeUp);
const GAUGE: Shown = Shown::Typed(Column::Gauge);
const CODE: Shown = Shown::Typed(Column::OrderCode);
const TENSION: Shown = Shown::Figure(Figure::Tension);
const FEEL: Shown = Shown::Figure(Figure::PluckStiffness);
const SHARE: Shown = Shown::Figure(Figure::LoadShare);
const MARGIN: Shown = Shown::Figure(Figure::SemitonesToBreak);
const PITCH: Shown = Shown::Figure(Figure::Frequency);
const MASS: Shown = Shown::Figure(Figure::LinearDensity);
const IMPEDANCE: Shown = Shown::Figure(Figure::Impedance);
const STRETCH: Shown = Shown::Figure(Figure::Stretch);
const TURNS: Shown = Shown::Figure(Figure::PinTurns);
const LEVER: Shown = Shown::Figure(Figure::Lever);
const NATURAL: Shown = Shown::Figure(Figure::DiscNatural);
const SHARP: Shown = Shown::Figure(Figure::DiscSharp);

/// The sets, the usual one first.
pub const SETS: [Set; 6] = [
    ("working", say::SET_WORKING, &[LENGTH, STRING, GAUGE, TENSION, FEEL, SHARE, MARGIN, CODE]),
    ("feel", say::SET_FEEL, &[LENGTH, STRING, GAUGE, TENSION, FEEL, MASS, IMPEDANCE]),
    (
        "tone",
        say::SET_TONE,
        &[
            LENGTH,
            STRING,
            GAUGE,
            PITCH,
            Shown::Figure(Figure::Inharmonicity),
            Shown::Figure(Figure::Partial8),
            IMPEDANCE,
            Shown::Figure(Figure::Damping),
        ],
    ),
    (
        "tuning",
        say::SET_TUNING,
        &[
            LENGTH,
            PITCH,
            STRETCH,
            TURNS,
            Shown::Figure(Figure::CentsPerPinDegree),
            Shown::Figure(Figure::CentsPerKelvin),
            LEVER,
            NATURAL,
            SHARP,
        ],
    ),
    (
        "workshop",
        say::SET_WORKSHOP,
        &[
            LENGTH,
            STRING,
            GAUGE,
            Shown::Figure(Figure::CutLength),
            CODE,
            STRETCH,
            TURNS,
            LEVER,
            NATURAL,
            SHARP,
        ],
    ),
    ("all", say::SET_ALL, ALL),
];

/// All of them but the note.
pub const ALL: &[Shown] = SHOWN.split_at(1).1;

/// The name under which a column is remembered.
fn key(shown: Shown) -> &'static str {
    match shown {
        Shown::Typed(Column::Note) => "note",
        Shown::Typed(Column::Length) => "length",
        Shown::Typed(Column::MakeUp) => "make_up",
        Shown::Typed(Column::Gauge) => "gauge",
        Shown::Typed(Column::OrderCode) => "order_code",
        Shown::Figure(figure) => row(figure).heading,
    }
}

/// The columns that a remembered text names: a set, or columns one by one. What is not known is left out; if
/// nothing is left, the usual set.
pub fn read(text: &str) -> Vec<Shown> {
    let text = text.trim();
    if let Some((.., columns)) = SETS.iter().find(|set| set.0 == text) {
        return columns.to_vec();
    }
    let mut all: Vec<Shown> = Vec::new();
    for name in text.split(',') {
        if let Some(shown) = ALL.iter().find(|shown| key(**shown) == name)
            && !all.contains(shown)
        {
            all.push(*shown);
        }
    }
    if all.is_empty() { SETS[0].2.to_vec() } else { all }
}

/// The text under which columns are remembered.
pub fn write(columns: &[Shown]) -> String {
    match set_of(columns) {
        Some(set) => set.to_owned(),
        None => columns.iter().map(|shown| key(*shown)).collect::<Vec<_>>().join(","),
    }
}

/// The key of the set that these columns are, if they are one.
pub fn set_of(columns: &[Shown]) -> Option<&'static str> {
    SETS.iter().find(|set| set.2 == columns).map(|set| set.0)
}

/// The columns of a design, from left to right: its note always, then those that were chosen and that it has.
pub fn present(design: &Design, chosen: &[Shown]) -> Vec<Shown> {
    let chosen = chosen.iter().copied().filter(|shown| is_there(design, *shown));
    std::iter::once(NOTE).chain(chosen).collect()
}

/// How wide the columns are, for the style sheet: number, octave and then those that are shown; and the least
/// width of all together, in em. What a string is made of has room in full, and takes what is left over.
pub fn widths(design: &Design, columns: &[Shown]) -> (String, f64) {
    let (mut text, mut sum) = ("2.9em 2.9em".to_owned(), 5.8);
    for shown in columns {
        let em = width(design, *shown);
        text.push_str(&if *shown == STRING {
            format!(" minmax({em:.1}em,1fr)")
        } else {
            format!(" {em:.1}em")
        });
        sum += em;
    }
    (text, sum)
}

fn width(design: &Design, shown: Shown) -> f64 {
    let longest = |column: Column| {
        let text = |string| match column {
            Column::MakeUp => line_said(&cell_text(string, column)),
            _ => cell_text(string, column),
        };
        let letters = design.strings.iter().map(|string| text(string).chars().count());
        #[expect(clippy::cast_precision_loss, reason = "a count of letters, at most a hundred")]
        let letters = letters.max().unwrap_or(0).min(100) as f64;
        letters * 0.5 + 1.3
    };
    let head = |words: Words, unit: &str| {
        let words = words.said().split_inclusive([' ', '-']);
        let word = words.map(|word| word.trim_end().chars().count()).max().unwrap_or(0);
        #[expect(clippy::cast_precision_loss, reason = "a count of letters")]
        let (word, unit) = (word as f64 * 0.62 + 0.9, unit.chars().count() as f64 * 0.52 + 0.9);
        word.max(unit)
    };
    let under_head = |figure: Figure, least: f64| {
        head(row(figure).word, display::figure_unit(figure, &design.units)).max(least)
    };
    match shown {
        // A syllable with its sign is wider than a letter.
        Shown::Typed(Column::Note) if naming() == Naming::Syllables => 6.1,
        Shown::Typed(Column::Note) => 5.1,
        Shown::Typed(Column::Length) => under_head(Figure::Length, 4.7),
        Shown::Typed(Column::MakeUp) => longest(Column::MakeUp).clamp(9.0, 48.0),
        Shown::Typed(Column::Gauge) => under_head(Figure::Gauge, 4.2),
        Shown::Typed(Column::OrderCode) => {
            longest(Column::OrderCode).max(head(say::CODE, "")).clamp(4.7, 16.0)
        }
        Shown::Figure(Figure::Inharmonicity) => under_head(Figure::Inharmonicity, 5.7),
        Shown::Figure(figure) => under_head(figure, 4.3),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::design::document::{MakeUpSpec, MechanismKind, StringSpec};
    use crate::design::make_up_text::read as read_line;
    use crate::words::{Language, in_language};

    #[test]
    fn what_is_remembered_comes_back_in_its_order() {
        for (key, _, columns) in SETS {
            assert_eq!(write(columns), key);
            assert_eq!(read(key), columns);
        }
        let own = [TENSION, LENGTH, STRING];
        assert_eq!(write(&own), "tension_n,length,make_up");
        assert_eq!(read("tension_n,length,make_up"), own);
    }

    #[test]
    fn what_is_not_known_or_told_twice_is_left_out() {
        assert_eq!(read("length,colour,length,note"), [LENGTH]);
        assert_eq!(read(""), SETS[0].2);
        assert_eq!(read("colour"), SETS[0].2);
    }

    #[test]
    fn the_note_stays_and_levers_are_there_only_where_a_string_has_one() {
        let mut design = Design { strings: vec![StringSpec::default()], ..Design::default() };
        assert_eq!(present(&design, &[LEVER, LENGTH]), [NOTE, LENGTH]);
        design.mechanism.kind = MechanismKind::Lever;
        assert_eq!(present(&design, &[LEVER, LENGTH]), [NOTE, LEVER, LENGTH]);
    }

    #[test]
    fn a_longer_make_up_gets_more_room() {
        let design = |material: &str| {
            let make_up = MakeUpSpec { material: material.to_owned(), ..MakeUpSpec::default() };
            Design {
                strings: vec![StringSpec { make_up, ..StringSpec::default() }],
                ..Design::default()
            }
        };
        let wide = |material: &str| widths(&design(material), &[NOTE, STRING]).1;
        assert!(wide("phosphor bronze of a long name") > wide("nylon") + 5.0);
        assert!(wide(&"x".repeat(9_000)) < 70.0);
    }

    #[test]
    fn a_make_up_has_room_in_the_language_that_is_spoken() {
        let make_up = read_line("silk 0.5 + yellow brass 0.3 + yellow brass 0.25").unwrap();
        let strings = vec![StringSpec { make_up, ..StringSpec::default() }];
        let design = Design { strings, ..Design::default() };
        let of = |language| {
            in_language(language, || {
                let said = |string| line_said(&cell_text(string, Column::MakeUp)).chars().count();
                let letters = design.strings.iter().map(said).max().unwrap();
                (f64::from(u8::try_from(letters).unwrap()), width(&design, STRING))
            })
        };
        let all = [Language::English, Language::German, Language::French].map(of);
        assert!(all[0].0 > all[1].0 + 5.0, "German has a shorter word for brass: {all:?}");
        for (letters, em) in all {
            assert!((em - 0.5 * letters - 1.3).abs() < 1e-9, "{all:?}");
        }
    }

    #[test]
    fn all_columns_are_all_but_the_note() {
        assert_eq!(ALL.len() + 1, SHOWN.len());
        assert!(!ALL.contains(&NOTE));
    }
}
