//! Proposed lengths against the bounded least squares of a library.
//!
//! `tests/lengths/scripts/solve.py` drew the harps and wrote their best lengths to `solved.json`, which says the
//! versions that it used. It has the formulas of the pull and of the sum once more, apart from this code.

use serde::Deserialize;
use stringloft::design::checks::CHECKS;
use stringloft::engine::analysis::{Conditions, Harp, HarpString, Limits, Mechanism, Unknown};
use stringloft::engine::construction::MakeUp;
use stringloft::engine::lengths::{Aim, Asked, Held, Smoothing, propose};
use stringloft::engine::material::{Material, Modulus, Sourced, Standing, Strength};
use stringloft::engine::units::{Force, Frequency, Length, Stiffness, Stress};

use super::{assert_near, assert_same, assert_within, material_of, plain};

#[derive(Deserialize)]
struct Solved {
    versions: Versions,
    pluck_ratio: f64,
    harps: Vec<Drawn>,
}

#[derive(Deserialize)]
struct Versions {
    scipy: String,
}

#[derive(Deserialize)]
struct Drawn {
    waves: f64,
    strings: Vec<Row>,
    lengths_m: Vec<f64>,
    sum: f64,
    at_bound: usize,
}

#[derive(Deserialize)]
struct Row {
    hz: Option<f64>,
    kg_per_m: f64,
    diameter_m: f64,
    modulus_pa: f64,
    per_stress: f64,
    breaking_n: f64,
    present_m: f64,
    aim: Option<String>,
    target: Option<f64>,
    weight: f64,
    locked: bool,
    least_m: Option<f64>,
    most_m: Option<f64>,
    least_share: Option<f64>,
    most_share: Option<f64>,
}

/// The same stiff string: its material has the density that gives the mass per metre.
fn make_up(row: &Row) -> MakeUp {
    let area_m2 = std::f64::consts::PI / 4.0 * row.diameter_m * row.diameter_m;
    let mut material = Material::clone(&material_of(row.kg_per_m / area_m2, 1.0, 1.0));
    let source = material.density.source.clone();
    material.modulus = (row.modulus_pa > 0.0).then(|| Sourced {
        value: Modulus { base: Stress::from_pa(row.modulus_pa), per_stress_ratio: row.per_stress },
        source,
        standing: Standing::Own,
    });
    if let Some(strength) = &mut material.strength {
        strength.value = Strength::Constant(Stress::from_pa(row.breaking_n / area_m2));
    }
    plain(&std::sync::Arc::new(material), Length::from_m(row.diameter_m))
}

fn harp(rows: &[Row], pluck_ratio: f64) -> Harp {
    let strings = rows.iter().map(|row| HarpString {
        note: None,
        frequency: row.hz.map(Frequency::from_hz).ok_or(Unknown::Pitch),
        length: Ok(Length::from_m(row.present_m)),
        make_up: Ok(make_up(row)),
        mechanism: Mechanism::None,
    });
    let limits = Limits {
        working_share_percent: 75.0,
        soft_share_percent: 75.0,
        slack_share_percent: 20.0,
        least_tension: Force::from_n(1.0),
        stiffness_band: (Stiffness::from_n_per_m(1.0), Stiffness::from_n_per_m(1e4)),
        partial_8_cents: 10.0,
        jump_percent: 50.0,
        least_raise: Length::from_mm(0.0),
    };
    Harp { strings: strings.collect(), pluck_ratio, conditions: Conditions::default(), limits }
}

fn asked(row: &Row) -> Asked {
    let aim = row.aim.as_deref().zip(row.target).map(|(aim, target)| match aim {
        "tension" => Aim::Tension(Force::from_n(target)),
        _ => Aim::Stiffness(Stiffness::from_n_per_m(target)),
    });
    Asked {
        aim,
        weight: row.weight,
        is_locked: row.locked,
        least: row.least_m.map(Length::from_m),
        most: row.most_m.map(Length::from_m),
        least_share_percent: row.least_share,
        most_share_percent: row.most_share,
    }
}

/// Source: `SciPy`, by the script. Both are the exact least but for rounding; the room is 10⁻⁸.
pub fn proposed_lengths_are_those_of_a_library() {
    let solved: Solved = serde_json::from_str(include_str!("../lengths/solved.json"))
        .expect("the script writes this form");
    assert!(solved.harps.len() >= 40);
    let named = CHECKS.iter().filter(|check| check.source.english().contains("solve.py"));
    for check in named {
        assert!(
            check.source.english().contains(&format!("SciPy {}", solved.versions.scipy)),
            "{}",
            check.id
        );
    }
    for (number, drawn) in solved.harps.iter().enumerate() {
        let harp = harp(&drawn.strings, solved.pluck_ratio);
        let asked: Vec<Asked> = drawn.strings.iter().map(asked).collect();
        let smoothing = Smoothing { waves: drawn.waves, greatest_kink: None, least_rise: None };
        let proposal = propose(&harp, &asked, smoothing).expect("the drawn bounds leave room");
        assert_within(proposal.off_best, 0.0..=1e-9, format_args!("harp {number} is not best"));
        assert_near(proposal.sum_after, drawn.sum, 1e-8, format_args!("sum of harp {number}"));
        for (index, (length, expected)) in proposal.lengths.iter().zip(&drawn.lengths_m).enumerate()
        {
            let length = length.expect("every string has a length").to_m();
            assert_near(length, *expected, 1e-8, format_args!("harp {number}, string {index}"));
        }
        let is_at_bound =
            |held: &&Option<Held>| matches!(held, Some(Held::Least(_) | Held::Most(_)));
        let held = proposal.held.iter().filter(is_at_bound).count();
        assert_same(held, drawn.at_bound, format_args!("bounds that hold in harp {number}"));
    }
}
