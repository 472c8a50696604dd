//! Levers, discs, stretching, temperature and the harder pluck.

use super::Check;
use crate::engine::material::Standing::{Computed, Seen};

const MPMATH: &str = "mpmath 1.4.1 with 50 digits, by tests/published/scripts/reference_values.py";
const SCIPY: &str = "SciPy 1.17.1, by tests/published/scripts/reference_values.py";
const SETS: &str =
    "SciPy 1.17.1, mixed-integer linear programming by HiGHS, by tests/choose/scripts/solve.py";
const LENGTHS: &str = "SciPy 1.17.1, by tests/lengths/scripts/solve.py";
const WORKED: &str = "check numbers worked out by hand from the formulas";
const ROSSING: &str =
    "T. D. Rossing (ed.), The Science of String Instruments (2010), chapter 21, equation 21.1";

pub(super) const CHECKS: &[Check] = &[
    Check {
        id: "bare-ends-exact",
        what: "twelve partials of strings with unequal bare ends",
        source: MPMATH,
        standing: Computed,
        figures: &["inharmonicity_b", "partials", "partial_8_cents"],
    },
    Check {
        id: "bare-ends-exact-worked",
        what: "three partials of a string with equal bare ends",
        source: WORKED,
        standing: Computed,
        figures: &["partials", "partial_8_cents"],
    },
    Check {
        id: "bare-ends-added",
        what: "stiffness and bare ends added up, against a beam that has both",
        source: SCIPY,
        standing: Computed,
        figures: &["inharmonicity_b", "partials", "partial_8_cents"],
    },
    Check {
        id: "bending-loss",
        what: "damping of the partials by the bending of the string",
        source: MPMATH,
        standing: Computed,
        figures: &["damping_eta"],
    },
    Check {
        id: "levers-found",
        what: "places of levers for one and two semitones on strings of four materials",
        source: SCIPY,
        standing: Computed,
        figures: &["lever_mm", "disc_natural_mm"],
    },
    Check {
        id: "sharp-discs-found",
        what: "places of sharp discs with the natural disc pressing too",
        source: SCIPY,
        standing: Computed,
        figures: &["disc_sharp_mm"],
    },
    Check {
        id: "lever-slopes",
        what: "tension under a lever, how far it may stand off its place, and its error at the nominal place",
        source: SCIPY,
        standing: Computed,
        figures: &["lever_mm", "disc_natural_mm", "nominal_error_cents", "tension_n"],
    },
    Check {
        id: "lever-frets",
        what: "places of levers that do not push, against the places of frets",
        source: "standard places of frets, digits worked out",
        standing: Computed,
        figures: &["lever_mm", "disc_natural_mm"],
    },
    Check {
        id: "lever-push",
        what: "how much a push of a millimetre sharpens nylon, gut and steel",
        source: WORKED,
        standing: Computed,
        figures: &["lever_mm", "disc_natural_mm"],
    },
    Check {
        id: "pluck-energy",
        what: "force of a pluck, and the tension at release, with the true lengths of both sides",
        source: SCIPY,
        standing: Computed,
        figures: &["pluck_force_n", "glide_cents"],
    },
    Check {
        id: "pluck-nylon",
        what: "force, tension and rise of pitch of a plucked nylon string",
        source: WORKED,
        standing: Computed,
        figures: &["pluck_force_n", "glide_cents"],
    },
    Check {
        id: "glide-swing",
        what: "how sharp a pluck begins, against a string of thirty partials that swings in one plane",
        source: SCIPY,
        standing: Computed,
        figures: &["glide_cents"],
    },
    Check {
        id: "strain-integrated",
        what: "stretch of strings whose modulus changes with the stress",
        source: SCIPY,
        standing: Computed,
        figures: &["stretch_mm", "pin_turns"],
    },
    Check {
        id: "slopes-of-pitch",
        what: "cents for a degree of the pin and for a kelvin",
        source: MPMATH,
        standing: Computed,
        figures: &["cents_per_pin_degree", "cents_per_kelvin"],
    },
    Check {
        id: "take-up-worked",
        what: "stretch, turns of the pin and cents for a degree of it, for steel, gut and nylon",
        source: WORKED,
        standing: Computed,
        figures: &["stretch_mm", "pin_turns", "cents_per_pin_degree"],
    },
    Check {
        id: "dulcimer-warmth",
        what: "how far the slackest string of a hammered dulcimer falls with warmth",
        source: ROSSING,
        standing: Seen,
        figures: &["cents_per_kelvin"],
    },
    Check {
        id: "warmth-worked",
        what: "how far strings of steel, bronze and brass fall with warmth",
        source: WORKED,
        standing: Computed,
        figures: &["cents_per_kelvin"],
    },
    Check {
        id: "best-set-solved",
        what: "the best set for sixteen harps of 20 to 47 strings from 40 to 400 items, with limits of tension and of items",
        source: SETS,
        standing: Computed,
        figures: &["choosing"],
    },
    Check {
        id: "lengths-proposed",
        what: "best lengths of forty harps for targets of tension and feel, with bounds and locked strings",
        source: LENGTHS,
        standing: Computed,
        figures: &["length_mm", "better-lengths"],
    },
];
