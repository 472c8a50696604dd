//! How far strings fall while the others come up, against a frame program.
//!
//! `scripts/space_giving.py` wrote `space_giving.json` from the measures and the kept designs of `space_joints.rs`; where these are
//! made anew, that script is to be run again too. Board and strings' own figures take no part: each string is taken to be 5 mm
//! longer at pitch than slack.

use serde::Deserialize;
use stringloft::design::checks::CHECKS;
use stringloft::design::link;
use stringloft::design::resolve::resolve;
use stringloft::engine::analysis::analyse;
use stringloft::engine::bearing::{Case, gives};
use stringloft::engine::geometry::{lay_out, loads};
use stringloft::engine::giving::{Strung, first_round};

use super::{assert_near, assert_same, assert_within};

#[derive(Deserialize)]
struct Values {
    opensees: String,
    harps: Vec<Solved>,
}

#[derive(Deserialize)]
struct Solved {
    name: String,
    own: Vec<f64>,
    next: Vec<f64>,
    of_the_first: Vec<f64>,
    left_n: Vec<f64>,
}

const STRETCH_M: f64 = 5e-3;

/// Source: `OpenSees`, two samples and two frames drawn otherwise. Movements to the digits that its arms leave, falls to a
/// fiftieth of the greatest.
pub fn strings_fall_as_unit_loads_in_a_frame_program_say() {
    let values: Values = serde_json::from_str(include_str!("space_giving.json"))
        .expect("the script writes this form");
    let check = CHECKS.iter().find(|check| check.id == "giving-frames").expect("it is listed");
    let version = format!("OpenSees {}", values.opensees);
    assert!(check.source.english().contains(&version), "{}", check.source);
    assert_same(values.harps.len(), 4, "harps");
    for solved in &values.harps {
        let name = &solved.name;
        let mut kept = include_str!("space_joints_designs.txt").lines();
        let start = format!("{name}: ");
        let text = kept.find_map(|line| line.strip_prefix(&*start)).expect("a kept design");
        let resolved = resolve(&link::read(text).expect("a design"));
        let analysis = analyse(&resolved.harp);
        let shape = &resolved.geometry;
        let band = lay_out(&resolved.harp, &analysis, shape);
        let loads = loads(&band, &resolved.harp, &analysis, shape);
        let gives = gives(&band, &loads, &analysis, shape, &resolved.build()).expect("a frame");
        let frame = gives.frames.iter().find(|(case, _)| *case == Case::JointsGive);
        let matrix = &frame.expect("joints with their sizes").1;
        assert_same(matrix.len(), solved.own.len(), name);
        for (at, own) in solved.own.iter().enumerate() {
            assert_near(matrix[at][at], *own, 1e-4, format_args!("{name}: {at} on itself"));
            let size = (matrix[0][0] * matrix[at][at]).sqrt();
            let off = (matrix[0][at] - solved.of_the_first[at]) / size;
            assert_within(off, -1e-4..=1e-4, format_args!("{name}: {at} on the first"));
        }
        for (at, next) in solved.next.iter().enumerate() {
            let size = (matrix[at][at] * matrix[at + 1][at + 1]).sqrt();
            let off = (matrix[at][at + 1] - next) / size;
            assert_within(off, -1e-4..=1e-4, format_args!("{name}: {at} on its neighbour"));
        }
        let strung = |place: &usize| {
            let tension = analysis.strings[*place].tension.expect("a tension");
            Strung { tension, stiffness_n_per_m: tension.to_n() / STRETCH_M }
        };
        let strung: Vec<Strung> = gives.places.iter().map(strung).collect();
        let order: Vec<usize> = (0..strung.len()).rev().collect();
        let left = first_round(matrix, &strung, &order).expect("a frame that stands");
        let fall = |at: usize, left: f64| strung[at].tension.to_n() - left;
        let falls = || left.iter().enumerate().map(|(at, left)| fall(at, *left));
        let most = falls().fold(0.0, f64::max);
        assert_within(most, 0.5..=1e3, format_args!("{name}: the greatest fall, in N"));
        for (at, (ours, theirs)) in falls().zip(&solved.left_n).enumerate() {
            let off = (ours - fall(at, *theirs)) / most;
            assert_within(off, -0.02..=0.02, format_args!("{name}: fall of {at}"));
        }
    }
}
