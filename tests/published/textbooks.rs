//! Worked examples of textbooks and courses: tension, pitch and mass per metre of flexible strings.
//!
//! Left out, as the engine has nothing that answers them: mass over length of a weighed piece (0.06 kg on
//! 2.00 m), which is only a division; power laws of strength at 7.25 mm and 0.105 in, thicker than the
//! table (see `wire.rs`); and the specific moduli of fibres.

use std::f64::consts::PI;

use stringloft::engine::mechanics::{pitch, pluck_stiffness, tension};
use stringloft::engine::units::{Force, Frequency, Length, LinearDensity};

use super::{assert_prints, assert_same, assert_within, material_of, plain};

fn pull_n(kg_per_m: f64, length_m: f64, pitch_hz: f64) -> f64 {
    let density = LinearDensity::from_kg_per_m(kg_per_m);
    tension(density, Length::from_m(length_m), Frequency::from_hz(pitch_hz), None).to_n()
}

fn pitch_hz(kg_per_m: f64, length_m: f64, pull_n: f64) -> f64 {
    let density = LinearDensity::from_kg_per_m(kg_per_m);
    pitch(density, Length::from_m(length_m), Force::from_n(pull_n), None).to_hz()
}

/// Speed of waves: half a metre sounds it in hertz.
fn wave_speed(kg_per_m: f64, pull_n: f64) -> f64 {
    pitch_hz(kg_per_m, 0.5, pull_n)
}

/// Mass per metre that a pull brings to a pitch; the pull goes with it, so one try is enough.
fn kg_per_m(length_m: f64, pitch_hz: f64, pull_n: f64) -> f64 {
    pull_n / self::pull_n(1.0, length_m, pitch_hz)
}

/// Source: `OpenStax`, *University Physics* 1, section 16.3, examples 16.3 and 16.4: inputs read, answers
/// from memory. The second answer is reached with the speed rounded to 427.23 m/s.
pub fn two_guitar_strings_of_one_wave_speed() {
    assert_prints(wave_speed(3.09e-4, 56.40), 427.0, 1.0, "m/s");
    assert_prints(wave_speed(3.09e-4, 56.40), 427.23, 0.01, "m/s, as used further");
    assert_prints(pull_n(5.78e-3, 0.5, 427.23), 1055.00, 0.01, "N");
}

/// Source: R. Knight, *Physics for Scientists and Engineers*, 3rd ed., solution of chapter 21, problem 17;
/// read. The tension has three significant digits.
pub fn the_lowest_string_of_a_piano() {
    assert_prints(wave_speed(0.200, 2184.05), 104.5, 0.1, "m/s");
    assert_prints(2.0 * 1.90 * 27.5, 104.5, 0.1, "twice length times pitch, m/s");
    assert_prints(pull_n(0.400 / 2.00, 1.90, 27.5), 2180.0, 10.0, "N");
}

/// Source: University of Minnesota, an exercise on strings; read.
pub fn a_violin_string_pulls_fifteen_pounds() {
    let pull = pull_n(1.25e-4 / 0.33, 0.33, 640.0);
    assert_prints(pull, 68.0, 1.0, "N");
    assert_prints(Force::from_n(pull).to_lbf(), 15.0, 1.0, "lbf");
}

/// Source: a physics textbook's problem, the same answer on two sites; read.
pub fn a_string_of_two_grams_pulls_a_thousand_newtons() {
    assert_prints(pull_n(2.0e-3 / 0.81, 0.81, 394.0), 1005.929, 1e-3, "N");
}

/// Source: a university physics problem and its answer on a homework site; read.
pub fn the_highest_harmonic_that_can_be_heard() {
    let first = pitch_hz(3.00e-3 / 0.400, 0.400, 765.0);
    assert_prints(first, 399.2, 0.1, "Hz");
    let harmonics = (1..).map(|n| f64::from(n) * first).take_while(|hz| *hz <= 9781.0).count();
    assert_same(harmonics, 24, "harmonics");
}

/// Source: a physics forum's thread on a harp string, C4 at 261.61 Hz; read. The accepted answer,
/// 0.0022 kg/m, is cut off after two digits, not rounded: it stands for 0.0022 up to 0.0023.
pub fn a_harp_string_of_middle_c() {
    let density = kg_per_m(0.56, 261.61, 193.5);
    assert_within(density, 0.0022..=0.0023, "kg/m");
    let (light, heavy) = (pull_n(0.0022, 0.56, 261.61), pull_n(0.0023, 0.56, 261.61));
    assert_within(193.5, light..=heavy, "N");
}

/// Source: a physics answer page; read.
pub fn a_light_string_with_slow_waves() {
    assert_prints(pull_n(2.0e-3 / 1.28, 0.5, 40.0), 2.5, 0.1, "N");
}

/// Source: a homework site's answer (number 1335940520); read. It takes g as 9.8 m/s², and so do the
/// pulls here; the speed for the second mass comes from the rounded and from the unrounded mass per metre
/// alike.
pub fn two_masses_hung_on_one_string() {
    let density = kg_per_m(0.5, 21.0, 3.0 * 9.8);
    assert_prints(density, 0.067, 1e-3, "kg/m");
    for density in [density, 0.067] {
        assert_prints(wave_speed(density, 1.6 * 9.8), 15.3, 0.1, "m/s");
    }
}

/// Source: a university physics problem, read without its answer: steel of 7850 kg/m³ and 700 `MPa`, 3.5 g,
/// to hold 900 N. The answers (radius 0.6397 mm, length 0.3468 m, at most 430.56 Hz) are worked out.
pub fn the_highest_note_of_so_much_steel() {
    let diameter = Length::from_m(2.0 * (900.0 / (PI * 7.0e8)).sqrt());
    assert_prints(diameter.to_mm() / 2.0, 0.6397, 1e-4, "radius, mm");
    let string = plain(&material_of(7850.0, 200.0, 700.0), diameter);
    let load = string.breaking_load().expect("a strength is given");
    assert_prints(load.to_n(), 900.0, 1e-6, "N");
    let length = Length::from_m(3.5e-3 / string.linear_density().to_kg_per_m());
    assert_prints(length.to_m(), 0.3468, 1e-4, "m");
    let highest = pitch(string.linear_density(), length, load, None);
    assert_prints(highest.to_hz(), 430.56, 0.01, "Hz");
}

/// Source: an essay on harp strings and design (2020): nylon at A4 may be at most 560 mm long for 90 % of
/// its breaking load and must be at least 350 mm for 35 %, whatever the gauge; read. 310 `MPa` at
/// 1150 kg/m³ was worked out from the first, so the second is the check.
pub fn nylon_at_a4_has_its_window_of_lengths() {
    let nylon = material_of(1150.0, 1.0, 310.0);
    for (share, printed) in [(0.90, 560.0), (0.35, 350.0)] {
        for diameter_mm in [0.5, 0.8, 1.2] {
            let string = plain(&nylon, Length::from_mm(diameter_mm));
            let load = string.breaking_load().expect("a strength is given").to_n();
            // At a given pull, length and pitch of a flexible string are in inverse proportion.
            let density = string.linear_density();
            let on_a_metre = pitch(density, Length::from_m(1.0), Force::from_n(share * load), None);
            assert_prints(on_a_metre.to_hz() / 440.0 * 1e3, printed, 10.0, "mm");
        }
    }
}

/// The string of [`a_harp_string_of_middle_c`], 193.5 N on 0.56 m, under the finger: in the middle, at 0.4, a third
/// and a quarter of its length, in N/m; then the force of a pull of 3 mm and of 5 mm, least and greatest.
///
/// Source: worked out from the statics of a string pulled aside, apart from this code.
pub fn a_harp_string_of_middle_c_meets_the_finger() {
    let feel = |share: f64| {
        pluck_stiffness(Force::from_n(193.5), Length::from_m(0.56), share).to_n_per_m()
    };
    for (share, printed) in [(0.5, 1382.0), (0.4, 1440.0), (1.0 / 3.0, 1555.0), (0.25, 1843.0)] {
        assert_prints(feel(share), printed, 1.0, format_args!("{share}, N/m"));
    }
    for (millimetres, least, most) in [(3.0, 4.1, 5.5), (5.0, 6.9, 9.2)] {
        let what = format!("{millimetres} mm, N");
        assert_prints(feel(0.5) * millimetres * 1e-3, least, 0.1, &what);
        assert_prints(feel(0.25) * millimetres * 1e-3, most, 0.1, what);
    }
}
