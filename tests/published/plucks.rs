//! A string drawn aside: the force, and how sharp it begins.

use serde::Deserialize;
use stringloft::engine::construction::pull_of;
use stringloft::engine::mechanics::pluck_stiffness;
use stringloft::engine::pluck::{pluck_force, pluck_glide_cents, release_tension_ratio};
use stringloft::engine::units::{Force, Length, Stress};

use super::reference::rows;
use super::{assert_near, assert_prints};

#[derive(Deserialize)]
struct Row {
    material: String,
    length_mm: f64,
    pull_n: f64,
    rigidity_n: f64,
    share: f64,
    h_mm: f64,
    force_n: f64,
    mean_pull_n: f64,
}

/// The library has the true lengths of the two sides; the engine the first term of their growth. The next term is
/// less by the square of the steeper slope.
pub fn the_force_of_a_pluck_is_that_of_least_energy() {
    for row in rows::<Row>("plucks") {
        let (pull, length) = (Force::from_n(row.pull_n), Length::from_mm(row.length_mm));
        let drawn = Length::from_mm(row.h_mm);
        let slope = row.h_mm / (row.share * row.length_mm);
        let what = format!("{} of {} mm, {} mm", row.material, row.length_mm, row.h_mm);
        let force = pluck_force(pull, length, row.share, row.rigidity_n, drawn);
        assert_near(force.to_n(), row.force_n, slope * slope, &what);
        let ratio = release_tension_ratio(pull, length, row.share, row.rigidity_n, drawn);
        assert_near(ratio * row.pull_n, row.mean_pull_n, slope * slope, what);
    }
}

/// Worked out: nylon of 11.41 `GPa`, 1.000 mm, 0.448 m under 139.161 N, drawn aside by 4 mm in the middle: 4.970 N
/// and 0.051 N from the stretch, 1.03 % more pull at release, about 4.4 cents sharp by the mean pull.
pub fn a_nylon_string_drawn_aside_is_as_worked_out() {
    let (pull, length) = (Force::from_n(139.161), Length::from_mm(448.0));
    let rigidity = pull_of(Stress::from_gpa(11.41), Length::from_mm(1.0)).to_n();
    let drawn = Length::from_mm(4.0);
    let simple = pluck_stiffness(pull, length, 0.5).to_n_per_m() * drawn.to_m();
    assert_prints(simple, 4.970, 1e-3, "N, without the stretch");
    let force = pluck_force(pull, length, 0.5, rigidity, drawn).to_n();
    assert_prints(force - simple, 0.051, 1e-3, "N, of the stretch");
    let ratio = release_tension_ratio(pull, length, 0.5, rigidity, drawn);
    assert_prints(100.0 * (ratio - 1.0), 1.03, 0.01, "% at release");
    let cents = pluck_glide_cents(pull, length, 0.5, rigidity, drawn);
    let in_step = 1.0 + 4.0 / std::f64::consts::PI.powi(2);
    assert_prints(cents / in_step, 4.4, 0.1, "cents");
}

#[derive(Deserialize)]
struct Swing {
    material: String,
    length_mm: f64,
    pull_n: f64,
    rigidity_n: f64,
    share: f64,
    h_mm: f64,
    cents: f64,
}

/// Thirty partials in one plane, stepped through time by the library. The engine averages over a period, which holds
/// for small swings.
pub fn the_glide_is_that_of_a_string_that_swings_in_one_plane() {
    for row in rows::<Swing>("swings") {
        let (pull, length) = (Force::from_n(row.pull_n), Length::from_mm(row.length_mm));
        let drawn = Length::from_mm(row.h_mm);
        let ours = pluck_glide_cents(pull, length, row.share, row.rigidity_n, drawn);
        let what = format!("{} of {} mm at {}", row.material, row.length_mm, row.share);
        assert_near(ours, row.cents, 0.03, what);
    }
}
