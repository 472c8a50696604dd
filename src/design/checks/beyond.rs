//! Levers, discs, stretching, temperature and the harder pluck.

use super::{Check, cited};
use crate::engine::material::Standing::{Computed, Seen};
use crate::words::{Words, checks as say};

const MPMATH: Words = say::FROM_MPMATH;
const SCIPY: Words = say::FROM_SCIPY;
const SETS: Words = say::FROM_SETS;
const LENGTHS: Words = say::FROM_LENGTHS;
const WORKED: Words = say::FROM_CHECK_NUMBERS;
const ROSSING: Words = cited::ROSSING;

pub(super) const CHECKS: &[Check] = &[
    Check {
        id: "bare-ends-exact",
        what: say::BARE_ENDS_EXACT,
        source: MPMATH,
        standing: Computed,
        figures: &["inharmonicity_b", "partials", "partial_8_cents"],
    },
    Check {
        id: "bare-ends-exact-worked",
        what: say::BARE_ENDS_EXACT_WORKED,
        source: WORKED,
        standing: Computed,
        figures: &["partials", "partial_8_cents"],
    },
    Check {
        id: "bare-ends-added",
        what: say::BARE_ENDS_ADDED,
        source: SCIPY,
        standing: Computed,
        figures: &["inharmonicity_b", "partials", "partial_8_cents"],
    },
    Check {
        id: "bending-loss",
        what: say::BENDING_LOSS,
        source: MPMATH,
        standing: Computed,
        figures: &["damping_eta"],
    },
    Check {
        id: "levers-found",
        what: say::LEVERS_FOUND,
        source: SCIPY,
        standing: Computed,
        figures: &["lever_mm", "disc_natural_mm"],
    },
    Check {
        id: "sharp-discs-found",
        what: say::SHARP_DISCS_FOUND,
        source: SCIPY,
        standing: Computed,
        figures: &["disc_sharp_mm"],
    },
    Check {
        id: "lever-slopes",
        what: say::LEVER_SLOPES,
        source: SCIPY,
        standing: Computed,
        figures: &["lever_mm", "disc_natural_mm", "nominal_error_cents", "tension_n"],
    },
    Check {
        id: "lever-frets",
        what: say::LEVER_FRETS,
        source: say::FROM_FRETS,
        standing: Computed,
        figures: &["lever_mm", "disc_natural_mm"],
    },
    Check {
        id: "lever-push",
        what: say::LEVER_PUSH,
        source: WORKED,
        standing: Computed,
        figures: &["lever_mm", "disc_natural_mm"],
    },
    Check {
        id: "pluck-energy",
        what: say::PLUCK_ENERGY,
        source: SCIPY,
        standing: Computed,
        figures: &["pluck_force_n", "glide_cents"],
    },
    Check {
        id: "pluck-nylon",
        what: say::PLUCK_NYLON,
        source: WORKED,
        standing: Computed,
        figures: &["pluck_force_n", "glide_cents"],
    },
    Check {
        id: "glide-swing",
        what: say::GLIDE_SWING,
        source: SCIPY,
        standing: Computed,
        figures: &["glide_cents"],
    },
    Check {
        id: "strain-integrated",
        what: say::STRAIN_INTEGRATED,
        source: SCIPY,
        standing: Computed,
        figures: &["stretch_mm", "pin_turns"],
    },
    Check {
        id: "slopes-of-pitch",
        what: say::SLOPES_OF_PITCH,
        source: MPMATH,
        standing: Computed,
        figures: &["cents_per_pin_degree", "cents_per_kelvin"],
    },
    Check {
        id: "take-up-worked",
        what: say::TAKE_UP_WORKED,
        source: WORKED,
        standing: Computed,
        figures: &["stretch_mm", "pin_turns", "cents_per_pin_degree"],
    },
    Check {
        id: "dulcimer-warmth",
        what: say::DULCIMER_WARMTH,
        source: ROSSING,
        standing: Seen,
        figures: &["cents_per_kelvin"],
    },
    Check {
        id: "warmth-worked",
        what: say::WARMTH_WORKED,
        source: WORKED,
        standing: Computed,
        figures: &["cents_per_kelvin"],
    },
    Check {
        id: "best-set-solved",
        what: say::BEST_SET_SOLVED,
        source: SETS,
        standing: Computed,
        figures: &["choosing"],
    },
    Check {
        id: "lengths-proposed",
        what: say::LENGTHS_PROPOSED,
        source: LENGTHS,
        standing: Computed,
        figures: &["length_mm", "better-lengths"],
    },
];
