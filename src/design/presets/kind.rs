//! Kinds of harp that can be begun, each with what is usual for it: compass, lengths, strings, feel and mechanism.
//!
//! Compasses, gauges, feel and mechanism are common practice, no source, but for what is said beside them.

use crate::design::document::MechanismKind;
use crate::design::usual_gauges::{HEAVY_WIRES, LIGHT_WIRES, NYLON_ON_NYLON, Winding};
use crate::engine::pitch::Note;
use crate::words::{Words, kinds as say};

/// A kind of harp, by what it is and what most of its strings are made of.
#[derive(Debug, PartialEq)]
pub struct Kind {
    /// Short and unique.
    pub key: &'static str,
    /// What instrument it is, as a title has it.
    pub instrument: Words,
    /// What most of its plain strings are made of.
    pub material: Words,
    /// The lowest note, by the number of strings beyond [`FEWEST`].
    lowest: &'static [&'static str],
    /// The fewest strings of this kind.
    pub fewest: usize,
    /// What raises its strings.
    pub mechanism: MechanismKind,
    /// The place of its tuning in `OPEN_TUNINGS`.
    pub tuning: usize,
    /// How its lengths go.
    pub(super) lengths: Lengths,
    /// The pluck stiffness that is aimed at: octaves below C7 and N/mm, straight between.
    pub(super) feel: &'static [(f64, f64)],
    /// The pluck stiffness that a design of this kind allows, in N/mm.
    pub(super) feel_limits: (f64, f64),
    /// How sharp partial 8 may be, in cents: brass and bronze are stiff, so that of wire-strung harps is wider.
    pub(super) partial_8_cents: f64,
    /// The least load share, in per cent.
    pub(super) least_share: f64,
    /// What its strings are made of, from the treble; no string is of a family above that of the string before it.
    pub(super) families: &'static [Family],
    /// From string to string at the bass and at the treble, in mm.
    pub(super) spacing_mm: (f64, f64),
}

/// How lengths follow from notes; see [`super::strings`].
#[derive(Debug, PartialEq)]
pub(super) struct Lengths {
    pub share: f64,
    pub fall: f64,
    pub growth: f64,
    pub small: f64,
}

/// Strings of one make, in the usual gauges.
#[derive(Debug, PartialEq)]
pub(super) enum Family {
    /// Plain ones from the thinnest to the thickest gauge that is used, in mm.
    Plain {
        material: &'static str,
        gauges_mm: (f64, f64),
    },
    Wound(Winding),
}

impl Family {
    /// Whether its strings are wound.
    pub(super) const fn is_wound(&self) -> bool {
        matches!(self, Self::Wound(_))
    }
}

/// The fewest strings of any kind.
pub const FEWEST: usize = 19;

impl Kind {
    /// The most strings of this kind.
    pub const fn most(&self) -> usize {
        self.fewest + self.lowest.len() - 1
    }

    /// Whether part of its strings may be wound.
    pub fn has_wound(&self) -> bool {
        self.families.iter().any(Family::is_wound)
    }

    /// The usual lowest and highest note of so many strings, if the kind has so many.
    pub fn compass(&self, strings: usize) -> Option<(Note, Note)> {
        let lowest: Note = self.lowest.get(strings.checked_sub(self.fewest)?)?.parse().ok()?;
        let steps = i32::try_from(strings).ok()? - 1;
        Some((lowest, lowest.moved(steps, |_| 0)?))
    }
}

/// Compasses of lever harps from 19 to 47 strings. C3 to C6, C3 to G6, C3 to A6, A2 to A6, F2 to A6, C2 to G6, C2 to A6,
/// C2 to C7, A1 to C7 and G1 to D7 are usual; those between lie between them.
const LEVER: [&str; 29] = [
    "F3", "E3", "D3", "C3", "C3", "C3", "C3", "C3", "C3", "B2", "A2", "G2", "F2", "E2", "C2", "C2",
    "C2", "C2", "B1", "A1", "G1", "G1", "G1", "F1", "F1", "F1", "E1", "D1", "C1",
];
/// Of pedal harps from 40 strings: C1 to G7 for 47 strings, D1 to G7 for 46 (an encyclopaedia's article).
const PEDAL: [&str; 8] = ["G1", "G1", "F1", "F1", "F1", "E1", "D1", "C1"];
/// Of wire-strung harps from 19 to 34 strings, down from G6.
const WIRE: [&str; 16] = [
    "C4", "B3", "A3", "G3", "F3", "E3", "D3", "C3", "B2", "A2", "G2", "F2", "E2", "D2", "C2", "C2",
];

const NYLON: Family = Family::Plain { material: "nylon", gauges_mm: (0.41, 1.40) };
const LEVER_GUT: Family = Family::Plain { material: "gut", gauges_mm: (0.40, 2.00) };
const PEDAL_GUT: Family = Family::Plain { material: "gut", gauges_mm: (0.50, 2.70) };
const FLUOROCARBON: Family = Family::Plain { material: "fluorocarbon", gauges_mm: (0.33, 1.50) };
const BRASS: Family = Family::Plain { material: "yellow brass", gauges_mm: (0.30, 1.50) };
const BRONZE: Family = Family::Plain { material: "bronze", gauges_mm: (0.30, 1.50) };

const LEVER_LENGTHS: Lengths = Lengths { share: 0.75, fall: 0.056, growth: 1.5, small: 0.15 };
const WIRE_LENGTHS: Lengths = Lengths { share: 0.50, fall: 0.022, growth: 1.5, small: 0.0 };
const LEVER_SPACING_MM: (f64, f64) = (16.0, 13.0);

const LEVER_NYLON: Kind = Kind {
    key: "lever-nylon",
    instrument: say::LEVER_HARP,
    material: say::NYLON,
    lowest: &LEVER,
    fewest: FEWEST,
    mechanism: MechanismKind::Lever,
    tuning: 0,
    lengths: LEVER_LENGTHS,
    feel: &[(0.0, 1.3), (2.0, 0.92), (4.0, 0.82), (6.0, 0.80)],
    feel_limits: (0.7, 1.9),
    partial_8_cents: 25.0,
    least_share: 25.0,
    families: &[NYLON, Family::Wound(NYLON_ON_NYLON), Family::Wound(LIGHT_WIRES)],
    spacing_mm: LEVER_SPACING_MM,
};

/// The kinds, the lever harp of nylon first.
pub static KINDS: [Kind; 6] = [
    LEVER_NYLON,
    Kind {
        key: "lever-gut",
        material: say::GUT,
        feel: &[(0.0, 1.4), (2.0, 1.1), (4.0, 1.0), (6.0, 0.90)],
        families: &[LEVER_GUT, Family::Wound(LIGHT_WIRES)],
        ..LEVER_NYLON
    },
    Kind {
        key: "lever-fluorocarbon",
        material: say::FLUOROCARBON,
        lengths: Lengths { share: 0.736, fall: 0.052, ..LEVER_LENGTHS },
        feel: &[(0.0, 1.35), (2.0, 1.02), (4.0, 0.9), (6.0, 0.85)],
        families: &[FLUOROCARBON, Family::Wound(LIGHT_WIRES)],
        ..LEVER_NYLON
    },
    Kind {
        key: "wire-brass",
        instrument: say::WIRE_STRUNG_HARP,
        material: say::YELLOW_BRASS,
        lowest: &WIRE,
        mechanism: MechanismKind::None,
        tuning: 1,
        lengths: WIRE_LENGTHS,
        feel: &[(0.0, 2.4), (2.0, 1.9), (5.0, 1.25)],
        feel_limits: (1.0, 2.7),
        partial_8_cents: 35.0,
        families: &[BRASS],
        spacing_mm: (13.5, 13.5),
        ..LEVER_NYLON
    },
    Kind {
        key: "wire-bronze",
        instrument: say::WIRE_STRUNG_HARP,
        material: say::PHOSPHOR_BRONZE,
        lowest: &WIRE,
        mechanism: MechanismKind::None,
        tuning: 1,
        lengths: WIRE_LENGTHS,
        feel: &[(0.0, 2.4), (2.0, 1.9), (5.0, 1.25)],
        feel_limits: (1.0, 2.7),
        partial_8_cents: 35.0,
        families: &[BRONZE],
        spacing_mm: (13.5, 13.5),
        ..LEVER_NYLON
    },
    Kind {
        key: "pedal-gut",
        instrument: say::PEDAL_HARP,
        material: say::GUT,
        lowest: &PEDAL,
        fewest: 40,
        mechanism: MechanismKind::DoubleDisc,
        tuning: 7,
        lengths: Lengths { share: 0.765, fall: 0.030, growth: 1.7, small: 0.0 },
        feel: &[(0.0, 1.7), (2.0, 1.7), (4.0, 1.6), (5.0, 1.45), (6.0, 0.95)],
        feel_limits: (0.8, 2.3),
        partial_8_cents: 25.0,
        least_share: 20.0,
        families: &[NYLON, PEDAL_GUT, Family::Wound(HEAVY_WIRES)],
        spacing_mm: (16.5, 12.5),
    },
];
