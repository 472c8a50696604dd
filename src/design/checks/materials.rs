//! Strength of materials, mass per metre and breaking loads.

use super::Check;
use crate::engine::material::Standing::{Computed, FromMemory, Seen};
use crate::words::{Words, checks as say};

const A228: Words = say::FROM_A228;
const GEOMETRY: Words = say::FROM_HELIX;
const SCIPY: Words = say::FROM_SCIPY;

pub(super) const CHECKS: &[Check] = &[
    Check {
        id: "music-wire-strength",
        what: say::MUSIC_WIRE_STRENGTH,
        source: A228,
        standing: Seen,
        figures: &["materials", "breaking_load_n"],
    },
    Check {
        id: "music-wire-load",
        what: say::MUSIC_WIRE_LOAD,
        source: say::FROM_A228_LOADS,
        standing: Computed,
        figures: &["breaking_load_n", "load_share_percent", "semitones_to_break"],
    },
    Check {
        id: "music-wire-laws",
        what: say::MUSIC_WIRE_LAWS,
        source: say::FROM_SHIGLEY,
        standing: Seen,
        figures: &["materials", "breaking_load_n"],
    },
    Check {
        id: "music-wire-refit",
        what: say::MUSIC_WIRE_REFIT,
        source: say::FROM_FIT,
        standing: Computed,
        figures: &["materials", "breaking_load_n"],
    },
    Check {
        id: "gauge-tolerance",
        what: say::GAUGE_TOLERANCE,
        source: say::FROM_A228_TENSIONS,
        standing: Seen,
        figures: &["tolerance", "tension_n", "gauge_mm"],
    },
    Check {
        id: "spring-wire-below",
        what: say::SPRING_WIRE_BELOW,
        source: say::FROM_EN_SM,
        standing: Seen,
        figures: &["materials", "breaking_load_n"],
    },
    Check {
        id: "bronze-strength",
        what: say::BRONZE_STRENGTH,
        source: say::FROM_B159,
        standing: Seen,
        figures: &["materials", "breaking_load_n"],
    },
    Check {
        id: "material-data",
        what: say::MATERIAL_DATA,
        source: say::FROM_DATA,
        standing: Seen,
        figures: &[
            "materials",
            "linear_density_g_per_m",
            "inharmonicity_b",
            "cents_per_kelvin",
            "damping_eta",
        ],
    },
    Check {
        id: "material-strengths",
        what: say::MATERIAL_STRENGTHS,
        source: say::FROM_SHEETS,
        standing: Seen,
        figures: &["materials", "breaking_load_n"],
    },
    Check {
        id: "nylon-modulus",
        what: say::NYLON_MODULUS,
        source: say::FROM_WOODHOUSE,
        standing: FromMemory,
        figures: &["materials", "inharmonicity_b"],
    },
    Check {
        id: "specific-strength",
        what: say::SPECIFIC_STRENGTH,
        source: say::FROM_SPECIFIC,
        standing: Seen,
        figures: &["breaking_load_n", "linear_density_g_per_m"],
    },
    Check {
        id: "steel-highest-note",
        what: say::STEEL_HIGHEST_NOTE,
        source: say::FROM_UNIVERSITY,
        standing: Computed,
        figures: &["breaking_load_n", "semitones_to_break", "frequency_hz"],
    },
    Check {
        id: "winding-mass",
        what: say::WINDING_MASS,
        source: GEOMETRY,
        standing: Computed,
        figures: &["linear_density_g_per_m"],
    },
    Check {
        id: "winding-parts",
        what: say::WINDING_PARTS,
        source: GEOMETRY,
        standing: Computed,
        figures: &["linear_density_g_per_m"],
    },
    Check {
        id: "second-layer-mass",
        what: say::SECOND_LAYER_MASS,
        source: GEOMETRY,
        standing: Computed,
        figures: &["linear_density_g_per_m", "gauge_mm"],
    },
    Check {
        id: "ribbon-mass",
        what: say::RIBBON_MASS,
        source: GEOMETRY,
        standing: Computed,
        figures: &["linear_density_g_per_m"],
    },
    Check {
        id: "helix-walked",
        what: say::HELIX_WALKED,
        source: say::FROM_CHORDS,
        standing: Computed,
        figures: &["linear_density_g_per_m"],
    },
    Check {
        id: "helix-integrated",
        what: say::HELIX_INTEGRATED,
        source: SCIPY,
        standing: Computed,
        figures: &["linear_density_g_per_m"],
    },
    Check {
        id: "turns-integrated",
        what: say::TURNS_INTEGRATED,
        source: SCIPY,
        standing: Computed,
        figures: &["cut_length_mm"],
    },
];
