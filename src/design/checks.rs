//! How the figures were checked: what was compared, with what source, and which figures it covers.
//!
//! Each entry has a test of its name in `tests/published/`, and `tests/published/README.md` says what
//! the tests found. The page shows the entries beside the figures they cover.

use crate::engine::material::Standing;

mod beyond;
mod materials;
mod pitches;
mod strings;
mod structure;

/// A comparison of figures with something that does not come from the program.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Check {
    /// A short name in small letters and hyphens.
    pub id: &'static str,
    /// What was compared: part of a sentence.
    pub what: &'static str,
    /// What it was compared with.
    pub source: &'static str,
    /// How well the source is known.
    pub standing: Standing,
    /// The figures it covers: headings of the table, or topics of [`FIGURES`].
    pub figures: &'static [&'static str],
}

/// What a check may cover: headings of the CSV table, and topics.
pub const FIGURES: &[&str] = &[
    "along_board_n",
    "better-lengths",
    "breaking_load_n",
    "cents_per_kelvin",
    "cents_per_pin_degree",
    "choosing",
    "core_mm",
    "cut_length_mm",
    "damping_eta",
    "disc_natural_mm",
    "disc_sharp_mm",
    "frequency_hz",
    "gauge_mm",
    "glide_cents",
    "harp_octave",
    "impedance_kg_per_s",
    "inharmonicity_b",
    "keys",
    "length_mm",
    "lever_mm",
    "lift_n",
    "linear_density_g_per_m",
    "load_share_percent",
    "loads",
    "materials",
    "partial_8_cents",
    "partials",
    "pin_turns",
    "pluck_force_n",
    "pluck_stiffness_n_per_mm",
    "semitones_to_break",
    "stress_mpa",
    "stretch_mm",
    "tension_n",
    "tolerance",
    "woods",
];

const GROUPS: [&[Check]; 5] =
    [materials::CHECKS, strings::CHECKS, beyond::CHECKS, pitches::CHECKS, structure::CHECKS];

/// Every check, in the order in which a list shows them.
pub const CHECKS: &[Check] = &joined::<{ count() }>();

const fn count() -> usize {
    let (mut sum, mut group) = (0, 0);
    while group < GROUPS.len() {
        sum += GROUPS[group].len();
        group += 1;
    }
    sum
}

const fn joined<const COUNT: usize>() -> [Check; COUNT] {
    let mut all = [GROUPS[0][0]; COUNT];
    let (mut at, mut group) = (0, 0);
    while group < GROUPS.len() {
        let mut within = 0;
        while within < GROUPS[group].len() {
            all[at] = GROUPS[group][within];
            within += 1;
            at += 1;
        }
        group += 1;
    }
    all
}
