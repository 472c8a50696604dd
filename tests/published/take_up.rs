//! Bringing a string to pitch: stretch, turns of the pin, and what a degree of the pin or of warmth does.

use serde::Deserialize;
use stringloft::engine::material::Modulus;
use stringloft::engine::take_up::{
    cents_per_kelvin, cents_per_pin_degree, pin_turns, strain, stretch,
};
use stringloft::engine::units::{Length, Stress};

use super::reference::{ROOM, rows};
use super::{assert_near, assert_prints};

fn gpa(value: f64) -> Stress {
    Stress::from_gpa(value)
}

fn mpa(value: f64) -> Stress {
    Stress::from_mpa(value)
}

#[derive(Deserialize)]
struct Strain {
    gpa: f64,
    rise: f64,
    mpa: f64,
    strain: f64,
}

pub fn strings_stretch_as_their_modulus_integrated() {
    for row in rows::<Strain>("strains") {
        let modulus = Modulus { base: gpa(row.gpa), per_stress_ratio: row.rise };
        let ours = strain(modulus, mpa(row.mpa)).expect("the modulus is above 0");
        assert_near(ours, row.strain, ROOM, format_args!("{} GPa", row.gpa));
    }
}

#[derive(Deserialize)]
struct Pin {
    gpa: f64,
    mpa: f64,
    pin_mm: f64,
    gauge_mm: f64,
    between_mm: f64,
    cents: f64,
}

#[derive(Deserialize)]
struct Warmth {
    gpa: f64,
    mpa: f64,
    per_k: f64,
    frame_per_k: f64,
    cents: f64,
}

pub fn pin_and_warmth_move_the_pitch_by_its_slope() {
    let mm = Length::from_mm;
    for row in rows::<Pin>("pins") {
        let (pin, gauge, between) = (mm(row.pin_mm), mm(row.gauge_mm), mm(row.between_mm));
        let ours = cents_per_pin_degree(gpa(row.gpa), mpa(row.mpa), pin, gauge, between);
        assert_near(ours, row.cents, ROOM, format_args!("pin, {} GPa", row.gpa));
    }
    for row in rows::<Warmth>("warmth") {
        let ours = cents_per_kelvin(gpa(row.gpa), mpa(row.mpa), row.per_k, row.frame_per_k);
        assert_near(ours, row.cents, ROOM, format_args!("warmth, {} GPa", row.gpa));
    }
}

/// Worked out apart from this code: 700 mm between the fixings, 5 mm across pin and string. Modulus and stress; then
/// stretch in mm, turns, and cents for a degree of the pin, each with the worth of its last digit.
type TakenUp = (&'static str, [f64; 2], [(f64, f64); 3]);

const TAKEN_UP: [TakenUp; 3] = [
    ("steel", [207.0, 800.0], [(2.705, 1e-3), (0.172, 1e-3), (13.96, 0.01)]),
    ("gut", [6.0, 120.0], [(14.0, 0.1), (0.891, 1e-3), (2.70, 0.01)]),
    ("nylon", [2.0, 100.0], [(35.0, 1.0), (2.23, 0.01), (1.08, 0.01)]),
];

pub fn strings_are_taken_up_as_worked_out() {
    let (pin, gauge, between) =
        (Length::from_mm(4.2), Length::from_mm(0.8), Length::from_mm(700.0));
    for (what, [e, s], [long, turns, cents]) in TAKEN_UP {
        let strain = strain(Modulus::constant(gpa(e)), mpa(s)).expect("the modulus is above 0");
        let longer = stretch(strain, between);
        assert_prints(longer.to_mm(), long.0, long.1, format_args!("{what}, mm"));
        assert_prints(pin_turns(longer, pin, gauge), turns.0, turns.1, what);
        let ours = cents_per_pin_degree(gpa(e), mpa(s), pin, gauge, between);
        assert_prints(ours, cents.0, cents.1, format_args!("{what}, cents"));
    }
}

/// Source: T. D. Rossing (ed.), *The Science of String Instruments* (2010), chapter 21, equation 21.1, page 379: the
/// slackest string of a hammered dulcimer falls by at most 0.24 % a degree, with 1.2e-5 per kelvin; read. That is a
/// stress of 500 `MPa` at 200 `GPa`, and 4.15 cents; worked out.
pub fn the_slackest_string_of_a_dulcimer_falls_as_printed() {
    let cents = cents_per_kelvin(gpa(200.0), mpa(500.0), 1.2e-5, 0.0);
    assert_prints(cents, -4.15, 0.01, "cents");
    assert_prints(100.0 * (1.0 - (cents / 1200.0).exp2()), 0.24, 0.01, "%");
}

/// Worked out apart from this code by the formula of the same source, for a frame that does not move.
pub fn metal_strings_fall_with_warmth_as_worked_out() {
    for (what, e, s, per_k, printed) in [
        ("tight steel", 207.0, 1000.0, 11.5e-6, -2.06),
        ("slack steel", 207.0, 500.0, 11.5e-6, -4.12),
        ("phosphor bronze", 110.0, 500.0, 17.8e-6, -3.39),
        ("brass", 110.0, 400.0, 19.9e-6, -4.74),
    ] {
        assert_prints(cents_per_kelvin(gpa(e), mpa(s), per_k, 0.0), printed, 0.01, what);
    }
}
