//! Pitch, temperaments, and whole harps.

use super::Check;
use crate::engine::material::Standing::{Computed, FromMemory, SecondHand, Seen};

const DEFINITIONS: &str = "worked out from the definitions of the temperaments; three of them agree with the tables of an organ program";

pub(super) const CHECKS: &[Check] = &[
    Check {
        id: "equal-compass",
        what: "pitch of every key from C1 to G7",
        source: "equal temperament, worked out apart from the program",
        standing: Computed,
        figures: &["frequency_hz"],
    },
    Check {
        id: "key-numbers",
        what: "numbers of the keys",
        source: "the MIDI standard",
        standing: FromMemory,
        figures: &["frequency_hz"],
    },
    Check {
        id: "standard-pitch",
        what: "pitch of A4",
        source: "ISO 16:1975, as quoted on a piano technicians' list",
        standing: SecondHand,
        figures: &["frequency_hz"],
    },
    Check {
        id: "other-pitches",
        what: "other pitches of A4 that are in use, in cents from 440 Hz",
        source: "encyclopaedia articles; cents worked out",
        standing: Computed,
        figures: &["frequency_hz"],
    },
    Check {
        id: "temperaments-above-c",
        what: "cents above C of every key in six temperaments",
        source: DEFINITIONS,
        standing: Computed,
        figures: &["frequency_hz"],
    },
    Check {
        id: "temperaments-from-equal",
        what: "cents from equal temperament of every key in six temperaments",
        source: DEFINITIONS,
        standing: Computed,
        figures: &["frequency_hz"],
    },
    Check {
        id: "wolf-and-commas",
        what: "size of the wolf and of the commas",
        source: "an encyclopaedia's article on quarter-comma meantone; commas worked out",
        standing: Seen,
        figures: &["frequency_hz"],
    },
    Check {
        id: "harp-octaves",
        what: "octaves as harpists count them",
        source: "an article on how harp strings are numbered, 2024",
        standing: Seen,
        figures: &["harp_octave"],
    },
    Check {
        id: "lever-keys",
        what: "keys of a harp with full levers, tuned in C and in E flat",
        source: "the signs of the keys, counted apart from the program; open tunings from a maker's page on tuning",
        standing: Computed,
        figures: &["keys"],
    },
    Check {
        id: "pedal-keys",
        what: "flats, naturals and sharps of a harp with double discs, tuned in C flat",
        source: "an encyclopaedia's article on the pedal harp",
        standing: Seen,
        figures: &["keys"],
    },
    Check {
        id: "lever-harp-total",
        what: "total and mean tension of a lever harp of 36 strings",
        source: "R. Kemper, Structural Analysis of Folk Harps, 2005",
        standing: Seen,
        figures: &["tension_n"],
    },
    Check {
        id: "pedal-harp-total",
        what: "total tension of a pedal harp",
        source: "C. Waltham, Acoustics Today, Fall 2005, p. 45, and an encyclopaedia's article",
        standing: Seen,
        figures: &["tension_n"],
    },
];
