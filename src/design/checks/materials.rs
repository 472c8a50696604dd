//! Strength of materials, mass per metre and breaking loads.

use super::Check;
use crate::engine::material::Standing::{Computed, FromMemory, Seen};

const A228: &str = "ASTM A228/A228M, inch table, as reproduced by a wire merchant";
const GEOMETRY: &str = "geometry of the helix, worked out apart from the program";
const SCIPY: &str = "SciPy 1.17.1, by tests/published/scripts/reference_values.py";

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
        id: "music-wire-refit",
        what: "one power law fitted to the table of music wire, in inches and millimetres",
        source: "a fit to ASTM A228/A228M, worked out apart from the program",
        standing: Computed,
        figures: &["materials", "breaking_load_n"],
    },
    Check {
        id: "gauge-tolerance",
        what: "tolerance of the gauge of music wire, and how much it moves the tension",
        source: "ASTM A228/A228M, as reproduced by a wire merchant; tensions worked out",
        standing: Seen,
        figures: &["tolerance", "tension_n", "gauge_mm"],
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
        id: "material-data",
        what: "density, modulus, expansion and damping of the built-in materials against what was printed",
        source: "standards, data sheets and handbooks named beside each material",
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
        what: "strength of the built-in materials against the ranges printed",
        source: "data sheets and handbooks named beside each material",
        standing: Seen,
        figures: &["materials", "breaking_load_n"],
    },
    Check {
        id: "nylon-modulus",
        what: "how the modulus of nylon rises with the stress, on three guitar strings",
        source: "J. Woodhouse, Acta Acustica united with Acustica 90 (2004) 928, as quoted, masses from memory; the law of J. Woodhouse and N. Lynch-Aird (2019), as quoted",
        standing: FromMemory,
        figures: &["materials", "inharmonicity_b"],
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
    Check {
        id: "helix-integrated",
        what: "mass of round and flat windings against the helix, integrated",
        source: SCIPY,
        standing: Computed,
        figures: &["linear_density_g_per_m"],
    },
    Check {
        id: "turns-integrated",
        what: "string taken by the turns on a tuning pin",
        source: SCIPY,
        standing: Computed,
        figures: &["cut_length_mm"],
    },
];
