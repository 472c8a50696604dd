//! Harps for the tests of this layer, invented for them.

use std::f64::consts::PI;
use std::sync::Arc;

use crate::engine::analysis::{Conditions, Harp, HarpString, Limits, Mechanism, Unknown};
use crate::engine::construction::{Layer, MakeUp, Section};
use crate::engine::material::{Material, built_in};
use crate::engine::pitch::{Note, Tuning};
use crate::engine::units::{Force, Frequency, Length, Stiffness};

/// Pitch and length of a smooth harp, made up for these tests.
const LENGTHS_HZ_MM: [(f64, f64); 9] = [
    (20.0, 1560.0),
    (32.7, 1490.0),
    (65.4, 1270.0),
    (130.8, 960.0),
    (261.6, 610.0),
    (523.3, 350.0),
    (1046.5, 195.0),
    (2093.0, 104.0),
    (4000.0, 56.0),
];

/// A diatonic harp of 22 to 47 strings, roughly, that ends in the middle of the staff or lower:
/// nylon above, then gut, then wound nylon and wound steel.
pub fn harp(count: usize) -> Harp {
    let top: Note = if count > 40 { "G7" } else { "A6" }.parse().expect("a note");
    let strings = (0..count).map(|index| {
        let note = top.moved(-i32::try_from(index % 47).expect("small"), |_| 0);
        let frequency = note.map(|note| Tuning::default().frequency(note));
        let hz = frequency.map_or(0.0, Frequency::to_hz);
        HarpString {
            note,
            frequency: frequency.ok_or(Unknown::Pitch),
            length: Ok(Length::from_mm(length_mm(hz))),
            make_up: make_up(hz, length_mm(hz)).ok_or(Unknown::MakeUp),
            mechanism: Mechanism::Lever,
        }
    });
    Harp {
        strings: strings.collect(),
        pluck_ratio: 0.4,
        conditions: Conditions::default(),
        limits: limits(),
    }
}

fn length_mm(hz: f64) -> f64 {
    let above = LENGTHS_HZ_MM.partition_point(|(at, _)| *at < hz).clamp(1, 8);
    let ((f0, l0), (f1, l1)) = (LENGTHS_HZ_MM[above - 1], LENGTHS_HZ_MM[above]);
    let share = (hz / f0).ln() / (f1 / f0).ln();
    l0 * (l1 / l0).powf(share)
}

/// A make-up of about an even stiffness, in steps of 0.05 mm as gauges are sold.
fn make_up(hz: f64, length_mm: f64) -> Option<MakeUp> {
    let pull_n = 0.24 * length_mm * (1.15 + 0.1 * (hz / 262.0).log2());
    let kg_per_m = pull_n / (2.0 * hz * length_mm / 1000.0).powi(2);
    let steps = |m: f64, step: f64| Length::from_mm((1000.0 * m / step).round() * step);
    let plain = |key: &str| {
        let material = material(key);
        let d = (4.0 * kg_per_m / (PI * material.density.value.to_kg_per_m3())).sqrt();
        MakeUp::plain(material, steps(d, 0.05)).ok()
    };
    let wound = |key: &str, mpa: f64| {
        let (core, wrap) = (material(key), material("bronze"));
        let d = (4.0 * pull_n / (0.4 * mpa * 1e6 * PI)).sqrt();
        let rest = kg_per_m - core.density.value.to_kg_per_m3() * PI / 4.0 * d * d;
        let area = 4.0 * rest / (PI * PI * wrap.density.value.to_kg_per_m3());
        let wire = (((d * d + 4.0 * area).sqrt() - d) / 2.0).max(0.08e-3);
        let section = Section::Round { diameter: steps(wire, 0.01) };
        let layer = Layer { material: wrap, section, packing_ratio: 1.0 };
        let none = (Length::default(), Length::default());
        MakeUp::wound(core, steps(d, 0.05), vec![layer], none).ok()
    };
    match hz {
        740.0.. => plain("nylon"),
        150.0..740.0 => plain("gut"),
        100.0..150.0 => wound("nylon", 310.0),
        _ => wound("steel", 2100.0),
    }
}

/// A harp of which nothing was typed.
pub fn unknown(count: usize) -> Harp {
    let string = HarpString {
        note: None,
        frequency: Err(Unknown::Pitch),
        length: Err(Unknown::Length),
        make_up: Err(Unknown::MakeUp),
        mechanism: Mechanism::None,
    };
    Harp {
        strings: vec![string; count],
        pluck_ratio: 0.4,
        conditions: Conditions::default(),
        limits: limits(),
    }
}

/// A built-in material.
pub fn material(key: &str) -> Arc<Material> {
    Arc::new(built_in().into_iter().find(|m| m.key == key).expect("a built-in material"))
}

fn limits() -> Limits {
    Limits {
        working_share_percent: 75.0,
        soft_share_percent: 75.0,
        slack_share_percent: 12.0,
        least_tension: Force::from_n(20.0),
        stiffness_band: (Stiffness::from_n_per_mm(0.7), Stiffness::from_n_per_mm(1.9)),
        partial_8_cents: 25.0,
        jump_percent: 30.0,
        least_raise: Length::from_mm(0.0),
    }
}
