//! Strength of materials, mass per metre and breaking loads.

use super::Check;
use crate::engine::material::Standing::{Computed, Seen};

const A228: &str = "ASTM A228/A228M, inch table, as reproduced by a wire merchant";
const GEOMETRY: &str = "geometry of the helix, worked out apart from the program";

pub(super) const CHECKS: &[Check] = &[
    Check {
        id: "music-wire-strength",
        what: "least strength of music wire at every diameter of the table",
        source: A228,
        standing: Seen,
        figures: &["materials", "breaking_load_n"],
    },
    Check {
        id: "music-wire-load",
        what: "breaking load of music wire, and how far length times pitch can go",
        source: "ASTM A228/A228M, inch table, as reproduced by a wire merchant; loads worked out from it",
        standing: Computed,
        figures: &["breaking_load_n", "load_share_percent", "semitones_to_break"],
    },
    Check {
        id: "music-wire-laws",
        what: "how two handbook laws for the strength of music wire lie to the table",
        source: "Shigley's Mechanical Engineering Design, solutions 10-1 and 10-3, and an engineering examination site, problem 141",
        standing: Seen,
        figures: &["materials", "breaking_load_n"],
    },
    Check {
        id: "spring-wire-below",
        what: "music wire against ordinary spring wire, which must be weaker",
        source: "EN 10270-1, grade SM, as reproduced by a spring maker",
        standing: Seen,
        figures: &["materials", "breaking_load_n"],
    },
    Check {
        id: "bronze-strength",
        what: "least strength of phosphor bronze wire by diameter",
        source: "ASTM B159, spring wire, as reproduced by a wire merchant",
        standing: Seen,
        figures: &["materials", "breaking_load_n"],
    },
    Check {
        id: "gut-strength",
        what: "length times pitch at which gut breaks",
        source: "a gut string maker's note on breaking pitches",
        standing: Seen,
        figures: &["materials", "breaking_load_n", "semitones_to_break"],
    },
    Check {
        id: "nylon-window",
        what: "shortest and longest string of nylon for one note",
        source: "an essay on harp strings and design, 2020",
        standing: Seen,
        figures: &["materials", "length_mm", "load_share_percent"],
    },
    Check {
        id: "specific-strength",
        what: "breaking load over mass per metre of four materials",
        source: "an encyclopaedia's table of specific strength",
        standing: Seen,
        figures: &["breaking_load_n", "linear_density_g_per_m"],
    },
    Check {
        id: "steel-highest-note",
        what: "highest note of a given mass of steel under a given load",
        source: "a university physics problem; answers worked out",
        standing: Computed,
        figures: &["breaking_load_n", "semitones_to_break", "frequency_hz"],
    },
    Check {
        id: "winding-mass",
        what: "mass per metre of copper wound on steel",
        source: GEOMETRY,
        standing: Computed,
        figures: &["linear_density_g_per_m"],
    },
    Check {
        id: "winding-parts",
        what: "mass of the core and of the winding, each for itself",
        source: GEOMETRY,
        standing: Computed,
        figures: &["linear_density_g_per_m"],
    },
    Check {
        id: "second-layer-mass",
        what: "mass and thickness of two layers, one over the other",
        source: GEOMETRY,
        standing: Computed,
        figures: &["linear_density_g_per_m", "gauge_mm"],
    },
    Check {
        id: "ribbon-mass",
        what: "mass of a flat winding against that of a tube",
        source: GEOMETRY,
        standing: Computed,
        figures: &["linear_density_g_per_m"],
    },
    Check {
        id: "helix-walked",
        what: "length of wire in a winding against a helix measured in small steps",
        source: "chords along the helix, added up apart from the program",
        standing: Computed,
        figures: &["linear_density_g_per_m"],
    },
];
