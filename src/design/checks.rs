//! How the figures were checked: what was compared, with what source, and which figures it covers.
//!
//! Each entry has a test of its name in `tests/published/`, and `tests/published/README.md` says what
//! the tests found. The page shows the entries beside the figures they cover.

use crate::engine::material::Standing;
use crate::words::Words;

mod beyond;
mod cited;
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
    pub what: Words,
    /// What it was compared with.
    pub source: Words,
    /// How well the source is known.
    pub standing: Standing,
    /// The figures it covers: headings of the table, or some of [`TOPICS`].
    pub figures: &'static [&'static str],
}

/// What a check may cover besides the headings of the figures.
pub const TOPICS: &[&str] = &[
    "better-lengths",
    "choosing",
    "giving",
    "harp_octave",
    "keys",
    "loads",
    "materials",
    "partials",
    "tolerance",
    "woods",
    "years",
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
