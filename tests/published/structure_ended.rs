//! Ends of bars that are glued to a board, against plane finite elements.
//!
//! `scripts/ended_values.py` wrote `ended_values.json`; it says the versions that it used. The program is on the safe side by
//! intention: what it gives may be no less than what was found, and no more than the factor beside it.

use serde::Deserialize;
use stringloft::engine::structure::ended::{BarEnd, Leaf, root};
use stringloft::engine::units::{Length, Stress};

use super::assert_within;

#[derive(Deserialize)]
struct Values {
    length_mm: f64,
    ends: Vec<Solved>,
}

/// Moduli along, through and in shear, in GPa.
type Moduli = (f64, f64, f64);

/// Thickness and height in mm; moment in N·mm for each mm of breadth, and what is freed in N/mm.
#[derive(Deserialize)]
struct Solved {
    given: (f64, f64, Moduli, Moduli),
    moment: f64,
    freed: f64,
}

fn solved() -> Values {
    serde_json::from_str(include_str!("ended_values.json")).expect("the script writes this form")
}

/// A bar 1 m wide, with what it and the board under it are together in bending, in N·m², and what the board is alone.
fn end(solved: &Solved) -> (BarEnd, f64, f64) {
    let (t, h, board, bar) = solved.given;
    let gpa = Stress::from_gpa;
    let leaf = Leaf {
        thickness: Length::from_mm(t),
        along: gpa(board.0),
        through: gpa(board.1),
        shear: gpa(board.2),
    };
    let (one, other) = (board.0 * t, bar.0 * h);
    let apart = 0.5 * (t + h);
    let rigidity = bar.0 * h.powi(3) / 12.0 + one * other / (one + other) * apart * apart;
    let own = board.0 * t.powi(3) / 12.0;
    (BarEnd { breadth: Length::from_m(1.0), leaf, rigidity_n_m2: rigidity }, rigidity + own, own)
}

pub fn as_much_of_a_moment_comes_to_the_end_of_a_bar_as_is_reckoned() {
    let values = solved();
    for solved in &values.ends {
        let (bar, whole, own) = end(solved);
        // Turned by 1 rad, a bar that is let in takes so much.
        let held = whole / (1e-3 * values.length_mm);
        let reach =
            bar.leaf.thickness.to_m() * root(bar.leaf.along, bar.leaf.through, bar.leaf.shear);
        let comes = held / (1.0 + held * reach / own);
        assert_within(comes / solved.moment, 1.0..=1.35, format_args!("{:?}", solved.given));
    }
}

/// On the average over half a thickness of the board.
pub fn the_glue_at_the_end_of_a_bar_gives_up_no_more_than_is_reckoned() {
    let values = solved();
    for solved in &values.ends {
        let (bar, whole, own) = end(solved);
        let held = whole / (1e-3 * values.length_mm);
        // The bar's own part of that moment; the board's is added again.
        let moment = held * (whole - own) / whole;
        let ours = bar.released_j_per_m2(moment, held);
        let theirs = 1e3 * solved.freed;
        assert_within(ours / theirs, 1.0..=2.3, format_args!("{:?}", solved.given));
    }
}
