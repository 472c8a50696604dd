//! Pitch, temperaments, and whole harps.

use super::{Check, cited};
use crate::engine::material::Standing::{Computed, FromMemory, SecondHand, Seen};
use crate::words::{Words, checks as say};

const DEFINITIONS: Words = say::FROM_DEFINITIONS;

pub(super) const CHECKS: &[Check] = &[
    Check {
        id: "equal-compass",
        what: say::EQUAL_COMPASS,
        source: say::FROM_EQUAL,
        standing: Computed,
        figures: &["frequency_hz"],
    },
    Check {
        id: "key-numbers",
        what: say::KEY_NUMBERS,
        source: say::FROM_MIDI,
        standing: FromMemory,
        figures: &["frequency_hz"],
    },
    Check {
        id: "standard-pitch",
        what: say::STANDARD_PITCH,
        source: say::FROM_ISO,
        standing: SecondHand,
        figures: &["frequency_hz"],
    },
    Check {
        id: "other-pitches",
        what: say::OTHER_PITCHES,
        source: say::FROM_ARTICLES,
        standing: Computed,
        figures: &["frequency_hz"],
    },
    Check {
        id: "temperaments-above-c",
        what: say::TEMPERAMENTS_ABOVE_C,
        source: DEFINITIONS,
        standing: Computed,
        figures: &["frequency_hz"],
    },
    Check {
        id: "temperaments-from-equal",
        what: say::TEMPERAMENTS_FROM_EQUAL,
        source: DEFINITIONS,
        standing: Computed,
        figures: &["frequency_hz"],
    },
    Check {
        id: "wolf-and-commas",
        what: say::WOLF_AND_COMMAS,
        source: say::FROM_MEANTONE,
        standing: Seen,
        figures: &["frequency_hz"],
    },
    Check {
        id: "harp-octaves",
        what: say::HARP_OCTAVES,
        source: say::FROM_NUMBERING,
        standing: Seen,
        figures: &["harp_octave"],
    },
    Check {
        id: "lever-keys",
        what: say::LEVER_KEYS,
        source: say::FROM_SIGNS,
        standing: Computed,
        figures: &["keys"],
    },
    Check {
        id: "pedal-keys",
        what: say::PEDAL_KEYS,
        source: say::FROM_PEDAL,
        standing: Seen,
        figures: &["keys"],
    },
    Check {
        id: "lever-harp-total",
        what: say::LEVER_HARP_TOTAL,
        source: cited::KEMPER,
        standing: Seen,
        figures: &["tension_n"],
    },
    Check {
        id: "pedal-harp-total",
        what: say::PEDAL_HARP_TOTAL,
        source: say::FROM_WALTHAM,
        standing: Seen,
        figures: &["tension_n"],
    },
];
