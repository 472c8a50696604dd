//! Bare ends of wound strings: exact partials, and how well they add to those of a stiff core.

use serde::Deserialize;
use stringloft::engine::material::Modulus;
use stringloft::engine::mechanics::{Core, inharmonicity, partial_cents};
use stringloft::engine::stepped::{bare_end_cents, stepped_partial};
use stringloft::engine::units::{Force, Length, Stress};

use super::reference::{ROOM, rows};
use super::{assert_cents, assert_near, assert_prints};

#[derive(Deserialize)]
struct Stepped {
    near: f64,
    far: f64,
    ratio: f64,
    over_uniform: Vec<f64>,
}

pub fn partials_of_a_string_in_three_pieces_are_the_roots_with_fifty_digits() {
    for row in rows::<Stepped>("stepped") {
        let ends = (Length::from_m(row.near), Length::from_m(row.far));
        let length = Length::from_m(1.0);
        let first = row.over_uniform[0];
        for (n, over) in (1..).zip(&row.over_uniform) {
            let what = format!("{} and {}, partial {n}", row.near, row.far);
            let ours =
                stepped_partial(ends, length, row.ratio, n).expect("a string that can be computed");
            assert_near(ours, *over, ROOM, &what);
            let cents =
                bare_end_cents(ends, length, row.ratio, n).expect("a string that can be computed");
            assert_cents(cents - 1200.0 * (over / first).log2(), 1e-9, what);
        }
    }
}

/// Worked out apart from this code: bare ends of a fiftieth of the length at both ends, core of 0.3 of the
/// mass; shares by which partials 1, 6 and 12 lie above those of the string wound throughout.
pub fn exact_bare_ends_raise_the_partials_as_worked_out() {
    let ends = (Length::from_mm(20.0), Length::from_mm(20.0));
    for (n, printed, digit) in [(1, 3.678e-5, 1e-8), (6, 1.2471e-3, 1e-7), (12, 4.2509e-3, 1e-7)] {
        let ours = stepped_partial(ends, Length::from_mm(1000.0), 0.3, n)
            .expect("a string that can be computed");
        assert_prints(ours - 1.0, printed, digit, format_args!("partial {n}"));
    }
}

#[derive(Deserialize)]
struct Stiff {
    gpa: f64,
    core_mm: f64,
    ratio: f64,
    length_mm: f64,
    near_mm: f64,
    far_mm: f64,
    pull_n: f64,
    cents: Vec<f64>,
}

/// The cents of the core's stiffness and of the bare ends, each for itself, against a beam that has both. A
/// twentieth of a cent is far below what an ear hears.
pub fn cents_of_stiffness_and_of_bare_ends_add_up() {
    for row in rows::<Stiff>("stepped_stiff") {
        let mm = Length::from_mm;
        let modulus = Modulus::constant(Stress::from_gpa(row.gpa));
        let core = Core { diameter: mm(row.core_mm), modulus };
        let b = inharmonicity(core, mm(row.length_mm), Force::from_n(row.pull_n));
        let ends = (mm(row.near_mm), mm(row.far_mm));
        for (n, both) in (1..).zip(&row.cents) {
            let bare = bare_end_cents(ends, mm(row.length_mm), row.ratio, n)
                .expect("a string that can be computed");
            let off = partial_cents(b, n) + bare - both;
            let what = format!("{} mm, partial {n}, {both} cents", row.length_mm);
            assert_cents(off, 0.05, what);
        }
    }
}
