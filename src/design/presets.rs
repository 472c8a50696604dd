//! Designs to start from: sample harps of an invented workshop, and new harps of several kinds.

mod begin;
mod frame;
mod kind;
mod soundbox;
mod strings;

use thiserror::Error;

pub use self::begin::{Wish, build_frame};
pub use self::kind::{FEWEST, KINDS, Kind};
pub use self::soundbox::filled_soundbox;
pub use self::strings::suggested_length;
use super::document::{Design, MOST_STRINGS, MechanismKind, StringSpec};
use super::persist;
use crate::engine::pitch::{Letter, Note};

/// The pluck stiffness that is usually aimed at on C7, in N/mm, and what it falls by with each octave down. Common
/// practice, no source.
pub const TARGET_N_PER_MM: (f64, f64) = (0.90, 0.03);

/// A harp to look at and to start from. Workshop, instruments and clients are invented; lengths and
/// gauges follow common practice, no source.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Sample {
    /// Short and unique.
    pub key: &'static str,
    /// As a list shows it.
    pub title: Words,
    /// What kind of harp it is, in a sentence.
    pub blurb: Words,
    /// The design file.
    pub json: &'static str,
}

/// The sample of a first visit.
pub const FLOOR_36: Sample = Sample {
    key: "floor-36",
    title: say::SAMPLE_FLOOR,
    blurb: say::SAMPLE_FLOOR_BLURB,
    json: include_str!("../../examples/harps/floor-36.json"),
};

/// The sample harps, from small to large.
pub const SAMPLES: [Sample; 4] = [
    Sample {
        key: "wire-22",
        title: say::SAMPLE_WIRE,
        blurb: say::SAMPLE_WIRE_BLURB,
        json: include_str!("../../examples/harps/wire-22.json"),
    },
    Sample {
        key: "travel-26",
        title: say::SAMPLE_TRAVEL,
        blurb: say::SAMPLE_TRAVEL_BLURB,
        json: include_str!("../../examples/harps/travel-26.json"),
    },
    FLOOR_36,
    Sample {
        key: "pedal-47",
        title: say::SAMPLE_PEDAL,
        blurb: say::SAMPLE_PEDAL_BLURB,
        json: include_str!("../../examples/harps/pedal-47.json"),
    },
];

impl Sample {
    /// The design of the sample.
    pub fn design(&self) -> Design {
        // Each file is compiled in and read by a test; were one broken, an empty design opens.
        persist::read(self.json).unwrap_or_default()
    }
}

/// A usual way to tune the open strings.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct OpenTuning {
    /// As the card says it.
    pub name: Words,
    /// The letters that are raised (+1) or lowered (−1).
    pub signs: &'static [(Letter, i8)],
}

use crate::words::{Words, kinds as say};
use Letter::{A, B, C, D, E, F, G};

/// The usual open tunings. Common practice, no source.
pub const OPEN_TUNINGS: [OpenTuning; 8] = [
    OpenTuning { name: say::TUNING_C, signs: &[] },
    OpenTuning { name: say::TUNING_G, signs: &[(F, 1)] },
    OpenTuning { name: say::TUNING_D, signs: &[(F, 1), (C, 1)] },
    OpenTuning { name: say::TUNING_F, signs: &[(B, -1)] },
    OpenTuning { name: say::TUNING_B_FLAT, signs: &[(B, -1), (E, -1)] },
    OpenTuning { name: say::TUNING_E_FLAT, signs: &[(B, -1), (E, -1), (A, -1)] },
    OpenTuning { name: say::TUNING_A_FLAT, signs: &[(B, -1), (E, -1), (A, -1), (D, -1)] },
    OpenTuning {
        name: say::TUNING_C_FLAT,
        signs: &[(B, -1), (E, -1), (A, -1), (D, -1), (G, -1), (C, -1), (F, -1)],
    },
];

impl OpenTuning {
    /// The sign of a letter: −1 for a flat, 0 for none.
    pub fn sign(&self, letter: Letter) -> i8 {
        self.signs.iter().find(|(signed, _)| *signed == letter).map_or(0, |(_, sign)| *sign)
    }

    /// The one in which all the notes are; `None` where there is none, or more than one.
    pub fn of(notes: impl Iterator<Item = Note>) -> Option<&'static Self> {
        let notes: Vec<Note> = notes.collect();
        let fits = |open: &&Self| notes.iter().all(|note| open.sign(note.letter()) == note.alter());
        let mut fitting = OPEN_TUNINGS.iter().filter(fits);
        let first = fitting.next()?;
        fitting.next().is_none().then_some(first)
    }
}

/// The mechanism that is usual for a compass: two discs for each string of a harp of 40 strings or
/// more that is tuned all in flats, else levers. Common practice, no source.
pub fn usual_mechanism(low: Note, high: Note, open: &OpenTuning) -> MechanismKind {
    let all_flat = open.signs.len() == 7 && open.signs.iter().all(|(_, sign)| *sign == -1);
    if all_flat && high.step() - low.step() + 1 >= 40 {
        MechanismKind::DoubleDisc
    } else {
        MechanismKind::Lever
    }
}

/// How many of the lowest strings of a harp have no discs: two on a pedal harp of 46 strings or more.
/// Common practice, no source.
pub const fn without_discs(strings: usize, kind: MechanismKind) -> usize {
    if matches!(kind, MechanismKind::DoubleDisc) && strings >= 46 { 2 } else { 0 }
}

/// Why there are no strings for a compass.
#[derive(Clone, Debug, PartialEq, Eq, Error)]
#[non_exhaustive]
pub enum CompassError {
    /// The lowest note lies above the highest.
    #[error("{}", say::compass_order(.high, .low))]
    Order { low: Note, high: Note },
    /// More strings than a design may have.
    #[error("{}", say::compass_long(.got, &MOST_STRINGS))]
    Long { got: usize },
    /// A sign of more than a double sharp or flat.
    #[error("{}", say::COMPASS_SIGN)]
    Sign,
}

/// A string for every letter from `high` down to `low`, each with the sign that `signs` gives its
/// letter; lengths and make-ups are empty. What signs `low` and `high` have themselves is not
/// looked at.
///
/// # Errors
///
/// When the compass is empty or too long, or a sign is out of reach.
pub fn by_compass(
    low: Note,
    high: Note,
    signs: impl Fn(Letter) -> i8,
) -> Result<Vec<StringSpec>, CompassError> {
    let steps = high.step() - low.step();
    let got = usize::try_from(steps).map_err(|_| CompassError::Order { low, high })? + 1;
    if got > MOST_STRINGS {
        return Err(CompassError::Long { got });
    }
    (0..=steps)
        .map(|down| {
            let note = high.moved(-down, &signs).ok_or(CompassError::Sign)?;
            Ok(StringSpec { note: note.to_string(), ..StringSpec::default() })
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn note(text: &str) -> Note {
        text.parse().unwrap()
    }

    #[test]
    fn a_large_harp_in_flats_has_discs_and_others_levers() {
        let usual = |low, high, open| usual_mechanism(note(low), note(high), &OPEN_TUNINGS[open]);
        assert_eq!(usual("C1", "G7", 7), MechanismKind::DoubleDisc);
        assert_eq!(usual("C1", "G7", 5), MechanismKind::Lever);
        assert_eq!(usual("C2", "C7", 7), MechanismKind::Lever);
    }

    #[test]
    fn every_sample_opens_as_it_was_saved() {
        for sample in SAMPLES {
            let design =
                persist::read(sample.json).unwrap_or_else(|e| panic!("{}: {e}", sample.key));
            let count = sample.key.rsplit('-').next().unwrap().parse::<usize>().unwrap();
            assert_eq!(design.strings.len(), count, "{}", sample.key);
            assert_eq!(persist::write(&design), sample.json, "{}", sample.key);
        }
    }

    #[test]
    fn a_compass_goes_by_letters_with_the_signs_of_the_tuning() {
        let flat = OPEN_TUNINGS[5];
        let strings = by_compass(note("C2"), note("C7"), |letter| flat.sign(letter)).unwrap();
        let notes: Vec<&str> = strings.iter().map(|string| &*string.note).collect();
        assert_eq!(notes.len(), 36);
        assert_eq!(notes[..6], ["C7", "Bb6", "Ab6", "G6", "F6", "Eb6"]);
        assert_eq!(notes[35], "C2");
        let pedal = OPEN_TUNINGS[7];
        let strings = by_compass(note("C1"), note("G7"), |letter| pedal.sign(letter)).unwrap();
        assert_eq!((strings.len(), &*strings[0].note, &*strings[46].note), (47, "Gb7", "Cb1"));
    }

    #[test]
    fn the_lowest_strings_of_a_large_pedal_harp_have_no_discs() {
        assert_eq!(without_discs(47, MechanismKind::DoubleDisc), 2);
        assert_eq!(without_discs(47, MechanismKind::Lever), 0);
        assert_eq!(without_discs(40, MechanismKind::DoubleDisc), 0);
    }

    #[test]
    fn a_compass_that_cannot_be_says_why() {
        let compass = |low, high| by_compass(note(low), note(high), |_| 0);
        assert!(matches!(compass("C4", "B3"), Err(CompassError::Order { .. })));
        assert_eq!(compass("C4", "C4").unwrap().len(), 1);
        assert!(compass("C-1", "B10").is_ok());
        assert_eq!(by_compass(note("C4"), note("C5"), |_| 3), Err(CompassError::Sign));
    }

    #[test]
    fn notes_tell_the_tuning_where_they_fit_one_alone() {
        let of =
            |list: &str| OpenTuning::of(list.split(' ').map(note)).map_or("", |o| o.name.said());
        assert_eq!(of("C5 B4 A4 G4 F4 E4 D4"), "C major");
        assert_eq!(of("Eb6 D6 C6 Bb5 Ab5 G5 F5"), "E flat major");
        assert_eq!(of("C5 B4 G4 F#4"), "G major");
        assert_eq!(of("B4 G4 F#4"), "", "D major has these too");
        assert_eq!(of("C5 A4 G4 D4"), "", "four tunings have these");
        assert_eq!(of("C5 B4 Bb4 A4"), "", "chromatic");
        assert_eq!(OpenTuning::of(std::iter::empty()), None);
    }

    #[test]
    fn the_tunings_are_what_their_names_say() {
        let counts = OPEN_TUNINGS.map(|tuning| tuning.signs.len());
        assert_eq!(counts, [0, 1, 2, 1, 2, 3, 4, 7]);
    }
}
