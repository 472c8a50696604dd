//! Crossed layers that roll, what holds metal beside wood, and rims of holes: against finite elements and a frame program.
//!
//! `scripts/held_values.py` wrote `held_values.json`; it says the versions that it used. Where the program is on the safe side
//! by intention, what it gives may be no less than what was found, and no more than the factor beside it.

use serde::Deserialize;
use stringloft::engine::structure::frame::{Point, Station};
use stringloft::engine::structure::holes::rim;
use stringloft::engine::structure::laminate::{Laminate, Layer};
use stringloft::engine::structure::plated::{Held, Plated, Plates, Slip, Where};
use stringloft::engine::structure::section::Rectangle;
use stringloft::engine::structure::wood::Allowable;
use stringloft::engine::units::{Force, Length, Moment, Stress};

use super::structure_sections::rectangle;
use super::{assert_near, assert_within};

#[derive(Deserialize)]
struct Values {
    layered: Vec<SolvedLayers>,
    rims: Vec<SolvedRim>,
    laps: Vec<SolvedLap>,
    rows: Vec<SolvedRow>,
}

#[derive(Deserialize)]
struct SolvedLayers {
    given: (f64, f64, Vec<(f64, u8)>, f64, f64),
    sheared: f64,
    twisted: f64,
    of_one_piece: f64,
}

#[derive(Deserialize)]
struct SolvedRim {
    given: [f64; 4],
    along: f64,
    across: f64,
}

#[derive(Deserialize)]
struct SolvedLap {
    given: [f64; 6],
    shear: f64,
    whole: f64,
}

#[derive(Deserialize)]
struct SolvedRow {
    given: (f64, f64, f64, f64, f64, f64, f64, f64, u32),
    along: f64,
    shear: f64,
    moment: f64,
    aside: f64,
}

fn values() -> Values {
    serde_json::from_str(include_str!("held_values.json")).expect("the script writes this form")
}

/// What a crossed layer bears of shear that rolls, in MPa.
fn rolls(solved: &SolvedLayers, aside: f64, torque: f64) -> (Rectangle, f64) {
    let (b, h, layers, along, across) = &solved.given;
    let limits = Allowable {
        shear: Some(Stress::from_mpa(2.0)),
        tension_across: Some(Stress::from_mpa(0.5)),
        ..Allowable::default()
    };
    let layer = |(mm, crossed): &(f64, u8)| Layer {
        thickness: Length::from_mm(*mm),
        angle_rad: f64::from(*crossed) * std::f64::consts::FRAC_PI_2,
        along: Stress::from_gpa(*along),
        across: Stress::from_gpa(*across),
        shear: Stress::from_gpa(0.9),
        // The grid has layers that do not narrow.
        poisson: 0.0,
        allowable: limits,
    };
    let all = Laminate::new(layers.iter().map(layer).collect()).expect("layers");
    let (section, rolling) = (rectangle(*b, *h), all.rolling().expect("a crossed layer"));
    let forces = (Force::from_n(aside), Moment::from_n_m(torque));
    (section, rolling.used(section, forces, 1.0).expect("a use").stress.to_mpa())
}

pub fn crossed_layers_roll_as_by_adding_up_a_grid() {
    for solved in values().layered {
        let (section, ours) = rolls(&solved, 1_000.0, 0.0);
        let mean = 1e-3 / section.area_m2();
        assert_near(ours, mean * solved.sheared, 1e-3, format_args!("{:?}", solved.given.2));
    }
}

/// By the script a wood whose crossed layers give a tenth to a third as much: the outermost bear a third of what is reckoned.
pub fn crossed_layers_bear_no_more_of_a_twist_than_is_reckoned() {
    for solved in values().layered {
        // N·m over N·mm: the script has a torque of 1 and lengths in mm.
        let (section, ours) = rolls(&solved, 0.0, 1e-3);
        let whole = section.torsion_stress_over(Moment::from_n_m(1e-3)).to_mpa();
        assert_near(whole, solved.of_one_piece, 1e-3, "of one piece");
        let outermost = solved.given.2[0].1 == 1;
        let most = if outermost { 3.1 } else { 1.5 };
        assert_within(ours / solved.twisted, 1.0..=most, format_args!("{:?}", solved.given.2));
    }
}

pub fn the_rim_of_a_hole_bears_what_finite_elements_find() {
    for solved in values().rims {
        let [along, across, shear] = [0, 1, 2].map(|at| Stress::from_gpa(solved.given[at]));
        let rim = rim((along, across), shear, solved.given[3]).expect("moduli");
        assert_near(rim.along, solved.along, 1e-2, format_args!("{:?}", solved.given));
        assert_near(rim.across, solved.across, 1e-2, format_args!("{:?}", solved.given));
    }
}

fn cut(section: Rectangle, forces: [f64; 6]) -> Station {
    let none = Length::from_m(0.0);
    let mut cut = Station {
        at: Point { x: none, y: none },
        s_m: 0.0,
        section,
        axial_n: 0.0,
        shear_n: 0.0,
        aside_n: 0.0,
        moment_n_m: 0.0,
        torque_n_m: 0.0,
        sideways_n_m: 0.0,
    };
    cut.take(forces);
    cut
}

/// Plates on both faces, and where they end.
fn plated(
    section: Rectangle,
    (t, high): (f64, f64),
    (wood, metal): (f64, f64),
    (screws, length): (Option<Slip>, f64),
) -> (Plated, Where) {
    let plates = Plates {
        thickness: Length::from_mm(t),
        height: Length::from_mm(high),
        both: true,
        modulus: Stress::from_gpa(metal),
        shear: Stress::from_gpa(0.4 * metal),
        allowable: Stress::from_mpa(100.0),
        screws,
    };
    let (wood, length) = (Stress::from_gpa(wood), Length::from_mm(length));
    let none = Force::from_n(0.0);
    let at =
        Where { length, ends: true, step: (none, none), curved: 1.0, shear: Stress::from_gpa(0.9) };
    (plates.on(section, length, (wood, wood)), at)
}

/// A bar of 1 mm depth, of which every mm of breadth is pulled by 1 kN. What the plate bears in its middle is the same.
pub fn glue_at_the_end_of_a_plate_bears_no_more_than_is_reckoned() {
    for solved in values().laps {
        let [b, t, wood, _, shear, metal] = solved.given;
        let section = rectangle(b, 1.0);
        let (plated, at) = plated(section, (t, 1.0), (wood, metal), (None, 450.0));
        let at = Where { shear: Stress::from_gpa(shear), ..at };
        let pulled = cut(section, [1e3 * b, 0.0, 0.0, 0.0, 0.0, 0.0]);
        let glue = plated.held(&Held::Glued(None), &pulled, &at).stress.to_gpa();
        assert_within(glue / solved.shear, 1.0..=1.7, format_args!("{:?}", solved.given));
        assert_near(plated.metal(&pulled, 1.0).to_gpa() * t, solved.whole, 2e-3, "its whole share");
    }
}

/// Each force and moment by itself. Spacing and slip from soft screws to some that hardly give.
pub fn the_last_screw_of_a_plate_bears_no_more_than_is_reckoned() {
    for solved in values().rows {
        let (b, h, t, high, wood, metal, spacing, slip, count) = solved.given;
        let section = rectangle(b, h);
        let screws = Slip { spacing: Length::from_mm(spacing), stiffness_n_per_m: 1e3 * slip };
        let length = spacing * f64::from(count);
        let (plated, at) = plated(section, (t, high), (wood, metal), (Some(screws), length));
        let held = Held::Screwed { each: Some(Force::from_n(1.0)), diameter: Length::from_mm(4.0) };
        for (forces, theirs) in [
            ([1e3, 0.0, 0.0, 0.0, 0.0, 0.0], solved.along),
            ([0.0, 1e3, 0.0, 0.0, 0.0, 0.0], solved.shear),
            ([0.0, 0.0, 0.0, 0.0, 0.0, 1e2], solved.moment),
            ([0.0, 0.0, 0.0, 0.0, 1e2, 0.0], solved.aside),
        ] {
            let ours = plated.held(&held, &cut(section, forces), &at).ratio.expect("a limit");
            assert_within(ours / theirs, 1.0..=1.9, format_args!("{:?}: {forces:?}", solved.given));
        }
    }
}
