//! A new harp: what is typed into its window, what it means, and what will be made.

use crate::charts::series::Curves;
use crate::design::display;
use crate::design::document::{Design, LengthUnit, MechanismKind, Units};
use crate::design::letters::capital;
use crate::design::presets::{KINDS, Kind, OPEN_TUNINGS, Wish, build_frame};
use crate::design::resolve::resolve;
use crate::engine::analysis::analyse;
use crate::engine::figure::Figure;
use crate::engine::pitch::Note;
use crate::engine::units::{Length, Stiffness};
use crate::words::{Language, Words, language, naming, new_harp as say};

/// What is typed into the window.
#[derive(Clone, Debug, PartialEq)]
pub struct Typed {
    /// What instrument, and what most of its strings are made of.
    pub instrument: String,
    pub material: String,
    pub count: String,
    pub low: String,
    pub high: String,
    /// The place of the tuning in the list.
    pub tuning: String,
    pub mechanism: MechanismKind,
    /// The highest wound string; empty where it is to be suggested.
    pub wound_from: String,
}

/// The kind of an instrument and a material; where there is none, the first of the instrument.
pub fn kind_of(instrument: &str, material: &str) -> &'static Kind {
    let of_instrument = || KINDS.iter().filter(|kind| kind.instrument.english() == instrument);
    of_instrument()
        .find(|kind| kind.material.english() == material)
        .or_else(|| of_instrument().next())
        .unwrap_or(&KINDS[0])
}

/// The ends of so many strings, as they are typed.
pub fn ends_of(kind: &Kind, count: &str) -> Option<(String, String)> {
    let (low, high) = kind.compass(count.trim().parse().ok()?)?;
    Some((low.printed(), high.printed()))
}

/// How many strings there are from one end to the other.
pub fn count_of(low: &str, high: &str) -> Option<String> {
    let read = |text: &str| Note::read(text, naming()).ok();
    let (low, high) = (read(low)?, read(high)?);
    let count = high.step() - low.step() + 1;
    (count > 0).then(|| count.to_string())
}

/// What is wished for.
///
/// # Errors
///
/// A sentence that says which field cannot be used.
pub fn wished(typed: &Typed, units: Units) -> Result<Wish, String> {
    let kind = kind_of(&typed.instrument, &typed.material);
    let note = |field: Words, text: &str| {
        Note::read(text, naming()).map_err(|error| say::wrong_end(&field, &error))
    };
    let (low, high) = (note(say::LOWEST, &typed.low)?, note(say::HIGHEST, &typed.high)?);
    // The ends follow a count that the kind has; any other count stays beside them.
    if count_of(&typed.low, &typed.high).is_some_and(|count| count != typed.count.trim()) {
        let instrument = small(kind.instrument.said());
        return Err(say::wrong_count(&kind.fewest, &instrument, &kind.most()));
    }
    let wound_from = match typed.wound_from.trim() {
        _ if !kind.has_wound() => None,
        "" => None,
        text => Some(note(say::WINDING, text)?),
    };
    let place: usize = typed.tuning.parse().unwrap_or(0);
    let tuning = OPEN_TUNINGS.get(place).unwrap_or(&OPEN_TUNINGS[0]);
    Ok(Wish { kind, low, high, tuning, mechanism: typed.mechanism, wound_from, units })
}

/// The first letter small, for the middle of a sentence; a German noun keeps its capital.
fn small(text: &str) -> String {
    if language() == Language::German {
        return text.to_owned();
    }
    let mut letters = text.chars();
    letters.next().map_or_else(String::new, |first| {
        format!("{}{}", first.to_ascii_lowercase(), letters.as_str())
    })
}

/// What will be made.
#[derive(Clone, Debug, PartialEq)]
pub struct Begun {
    pub design: Design,
    /// Each fact with its name.
    pub facts: Vec<(&'static str, String)>,
    /// Whether there is anything to find fault with, and what.
    pub findings: String,
    pub curves: Curves,
}

/// Makes the harp that is wished for.
///
/// # Errors
///
/// A sentence that says what is wrong with the compass.
pub fn begun(wish: &Wish) -> Result<Begun, String> {
    let mut design = wish.strung().map_err(|error| format!("{}.", capital(&error.to_string())))?;
    build_frame(&mut design, wish.kind);
    let resolved = resolve(&design);
    let analysis = analyse(&resolved.harp);
    let found = super::findings(&design, &resolved, &analysis, None);
    let findings = match found.first() {
        None => say::NO_FINDINGS.into(),
        Some(first) => say::findings(&found.len(), &first.sentence),
    };
    let units = &design.units;
    let lengths = analysis.strings.iter().filter_map(|string| string.length.ok());
    let length = |least: bool| {
        let far = lengths
            .clone()
            .map(Length::to_m)
            .reduce(|one, other| if least == (one < other) { one } else { other });
        far.map_or_else(String::new, |m| display::length(Length::from_m(m), units.length))
    };
    let feels = analysis.strings.iter().filter_map(|string| string.pluck_stiffness.ok());
    let (mut softest, mut stiffest) = (f64::INFINITY, 0.0_f64);
    for feel in feels.map(Stiffness::to_n_per_mm) {
        (softest, stiffest) = (softest.min(feel), stiffest.max(feel));
    }
    let feel = |n_per_mm: f64| display::stiffness(Stiffness::from_n_per_mm(n_per_mm), units.force);
    let facts = vec![
        (
            say::COMPASS.said(),
            say::compass_is(
                &design.strings.len(),
                &end(design.strings.first().map(|string| &*string.note)),
                &end(design.strings.last().map(|string| &*string.note)),
            ),
        ),
        (
            say::LENGTHS.said(),
            say::range(&length(true), &length(false), &display::length_unit(units.length)),
        ),
        (say::TOTAL.said(), display::total_with_unit(analysis.total_tension, units.force)),
        (say::WOUND.said(), wound_words(&design)),
        (
            say::FEEL.said(),
            say::range(&feel(softest), &feel(stiffest), &display::stiffness_unit(units.force)),
        ),
        (say::FRAME.said(), frame_words(&design)),
    ];
    let shown = [Figure::Tension, Figure::PluckStiffness];
    let curves = Curves::build(&analysis, &resolved.harp, units, &shown, None, None);
    Ok(Begun { facts, findings, curves, design })
}

fn end(note: Option<&str>) -> String {
    let note: Option<Note> = note.and_then(|note| note.parse().ok());
    note.map_or_else(|| "–".to_owned(), Note::printed)
}

fn wound_words(design: &Design) -> String {
    let wound = || design.strings.iter().filter(|string| !string.make_up.layers.is_empty());
    match wound().next() {
        None => say::NONE_WOUND.into(),
        Some(first) => say::wound_from(&wound().count(), &end(Some(&first.note))),
    }
}

fn frame_words(design: &Design) -> String {
    let geometry = &design.geometry;
    let unit = design.units.length;
    let bare = |mm: f64| display::length(Length::from_mm(mm), unit);
    let name = if unit == LengthUnit::Inch { "in" } else { "mm" };
    say::frame_is(
        &bare(geometry.board.bass_thickness_mm),
        &bare(geometry.pillar.depth_mm),
        &bare(geometry.neck.thickness_mm),
        &bare(geometry.board.treble_thickness_mm),
        &name,
        &bare(geometry.pillar.width_mm),
    )
}

/// A title that no design has yet: with a number from 2 where it is taken.
pub fn free_title(title: &str, taken: &[String]) -> String {
    let is_taken = |title: &str| taken.iter().any(|one| one == title);
    let mut free = title.to_owned();
    let mut number = 2;
    while is_taken(&free) {
        free = say::numbered(&number, &title);
        number += 1;
    }
    free
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::words::in_language;

    fn typed() -> Typed {
        Typed {
            instrument: "Lever harp".to_owned(),
            material: "Nylon".to_owned(),
            count: "30".to_owned(),
            low: "G2".to_owned(),
            high: "A6".to_owned(),
            tuning: "0".to_owned(),
            mechanism: MechanismKind::Lever,
            wound_from: String::new(),
        }
    }

    #[test]
    fn count_and_ends_follow_each_other() {
        let kind = kind_of("Lever harp", "Nylon");
        assert_eq!(ends_of(kind, " 30 "), Some(("G2".to_owned(), "A6".to_owned())));
        assert_eq!(count_of("G2", "A6"), Some("30".to_owned()));
        assert_eq!(ends_of(kind, "12"), None);
        assert_eq!(ends_of(kind, "many"), None);
        assert_eq!(count_of("A6", "G2"), None);
        assert_eq!(count_of("A6", ""), None);
    }

    #[test]
    fn what_cannot_be_used_is_said() {
        let why = |change: fn(&mut Typed)| {
            let mut typed = typed();
            change(&mut typed);
            wished(&typed, Units::default()).and_then(|wish| begun(&wish).map(|_| ())).unwrap_err()
        };
        assert_eq!(
            why(|typed| typed.count = "12".to_owned()),
            "Number of strings: write 19 to 47 for a lever harp, or give both ends."
        );
        assert!(
            why(|typed| typed.low = "J".to_owned()).starts_with("Lowest string: a note begins")
        );
        assert!(why(|typed| typed.wound_from = "?".to_owned()).starts_with("Winding starts at: "));
        assert!(why(|typed| typed.low = "C7".to_owned()).starts_with("The lowest string must not"));
    }

    #[test]
    fn what_will_be_made_is_told() {
        let begun = begun(&wished(&typed(), Units::default()).unwrap()).unwrap();
        assert_eq!(begun.design.title, "Lever harp, 30 strings");
        assert_eq!(begun.facts[0].1, "G2 to A6, 30 strings");
        assert_eq!(begun.facts[1].1, "104 to 956 mm");
        assert_eq!(begun.findings, "No findings on the strings.");
        assert_eq!(begun.curves.panels.len(), 2);
        let wire = Typed {
            instrument: "Wire-strung harp".to_owned(),
            wound_from: "C4".to_owned(),
            ..typed()
        };
        let wish = wished(&wire, Units::default()).unwrap();
        assert_eq!((wish.kind.key, wish.wound_from), ("wire-brass", None));
    }

    #[test]
    fn a_title_that_is_taken_gets_a_number() {
        let taken = ["Lever harp", "Lever harp, no. 2"].map(str::to_owned);
        assert_eq!(free_title("Lever harp", &taken), "Lever harp, no. 3");
        assert_eq!(free_title("Pedal harp", &taken), "Pedal harp");
    }

    #[test]
    fn a_german_noun_keeps_its_capital_within_a_sentence() {
        assert_eq!(small("Lever harp"), "lever harp");
        assert_eq!(in_language(Language::German, || small("Hakenharfe")), "Hakenharfe");
    }
}
