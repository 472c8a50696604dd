//! Numbers of the engine's, put into the words of a page.

use crate::design::display;
use crate::design::document::{Allowances, Design, LimitsSpec};
use crate::design::settings::Setting;
use crate::engine::analysis::{
    BREAKING_LOAD_N, Conditions, FREQUENCY_HZ, LENGTH_M, MOST_PLUCK_RATIO,
};
use crate::engine::construction::{DIAMETER_MM, PACKING, WEIGHED_G_PER_M};
use crate::engine::findings::{AUDIBLE_TIMES, THIN_CORE_RATIO};
use crate::engine::mechanics::audible_inharmonicity;
use crate::engine::units::Frequency;
use crate::words::{decimal_sign, numbers as say};

/// The numbers, as they are printed.
pub(super) struct Values {
    pub(super) pluck: String,
    pub(super) most_pluck: String,
    pub(super) off_push: String,
    pub(super) at: String,
    pub(super) partial: String,
    pub(super) most_partial: String,
    pub(super) push: String,
    pub(super) frame: String,
    pub(super) off_length: String,
    pub(super) off_pitch: String,
    pub(super) off_kelvins: String,
    pub(super) off_diameter: String,
    pub(super) off_density: String,
    pub(super) after: String,
    pub(super) turns: String,
    pub(super) pin: String,
    pub(super) knot: String,
    pub(super) tail: String,
    pub(super) working: String,
    pub(super) creeping: String,
    pub(super) slack: String,
    pub(super) least: String,
    pub(super) soft: String,
    pub(super) hard: String,
    pub(super) sharp: String,
    pub(super) jump: String,
    pub(super) least_raise: String,
    pub(super) slope: String,
    pub(super) offset: String,
    pub(super) times: String,
    pub(super) thin: String,
    pub(super) angle: String,
    pub(super) a4: String,
    pub(super) lengths: String,
    pub(super) pitches: String,
    pub(super) diameters: String,
    pub(super) packings: String,
    pub(super) masses: String,
    pub(super) loads: String,
    pub(super) plucks: String,
    pub(super) places: String,
    pub(super) pushes: String,
    pub(super) a4s: String,
}

impl Values {
    pub(super) fn new() -> Self {
        let usual = Conditions::default();
        let off = usual.tolerances;
        let allowances = Allowances::default();
        let limits = LimitsSpec::default();
        let design = Design::default();
        // The law is a straight line between logarithms: its height at 1 Hz and its slope.
        let at = |hz: f64| audible_inharmonicity(Frequency::from_hz(hz)).ln();
        let range = |(least, most): (f64, f64), times: f64, unit: &str| {
            say::span(&number(least * times), &number(most * times), &unit)
        };
        Self {
            pluck: number(usual.pluck.to_mm()),
            most_pluck: number(100.0 * MOST_PLUCK_RATIO),
            off_push: number(off.push.to_mm()),
            at: number(design.pluck_percent),
            partial: number(f64::from(usual.damping_partial)),
            most_partial: number(Setting::DampingPartial.row().sensible.1),
            push: number(usual.push.to_mm()),
            frame: number(1e6 * usual.frame_expansion_per_k),
            off_length: number(off.length.to_mm()),
            off_pitch: number(off.pitch_cents),
            off_kelvins: number(off.temperature_k),
            off_diameter: number(off.diameter.to_mm()),
            off_density: number(100.0 * off.density_ratio),
            after: number(allowances.after_length_mm),
            turns: number(allowances.turns),
            pin: number(allowances.pin_mm),
            knot: number(allowances.knot_mm),
            tail: number(allowances.tail_mm),
            working: number(limits.working_share_percent),
            creeping: number(limits.soft_share_percent),
            slack: number(limits.slack_share_percent),
            least: number(limits.least_tension_n),
            soft: number(limits.least_stiffness_n_per_mm),
            hard: number(limits.most_stiffness_n_per_mm),
            sharp: number(limits.partial_8_cents),
            jump: number(limits.jump_percent),
            least_raise: number(limits.least_raise_mm),
            slope: number(at(std::f64::consts::E) - at(1.0)),
            offset: number(-at(1.0)),
            times: number(AUDIBLE_TIMES),
            thin: number(THIN_CORE_RATIO),
            angle: number(usual.board_angle_rad.to_degrees()),
            a4: number(design.pitch.a4_hz),
            lengths: range(LENGTH_M, 1e3, "mm"),
            pitches: range(FREQUENCY_HZ, 1.0, "Hz"),
            diameters: range(DIAMETER_MM, 1.0, "mm"),
            packings: range(PACKING, 100.0, "%"),
            masses: range(WEIGHED_G_PER_M, 1.0, "g/m"),
            loads: range(BREAKING_LOAD_N, 1.0, "N"),
            plucks: range(Setting::PluckBy.row().sensible, 1.0, "mm"),
            places: range(Setting::Pluck.row().sensible, 1.0, "%"),
            pushes: range(Setting::Push.row().sensible, 1.0, "mm"),
            a4s: range(Setting::A4.row().sensible, 1.0, "Hz"),
        }
    }
}

/// A number in four digits that count, without zeros at the end: `0.81`, `−2.06`, `3.474·10⁻⁴`.
pub(super) fn number(value: f64) -> String {
    let size = value.abs();
    if size != 0.0 && !(1e-3..1e6).contains(&size) {
        return power(value);
    }
    let whole = if size == 0.0 { 0.0 } else { size.log10().floor() };
    let places = (0..=6_u8).rev().find(|places| f64::from(*places) + whole <= 3.5).unwrap_or(0);
    let text = display::decimals(value, usize::from(places));
    if text.contains(decimal_sign()) {
        text.trim_end_matches('0').trim_end_matches(decimal_sign()).to_owned()
    } else {
        text
    }
}

fn power(value: f64) -> String {
    let text = format!("{value:.3e}");
    let (digits, power) = text.split_once('e').unwrap_or((&text, "0"));
    let digits = digits.trim_end_matches('0').trim_end_matches('.').replace('-', "−");
    let digits = digits.replace('.', decimal_sign().encode_utf8(&mut [0; 4]));
    let raised: String = power.chars().map(raised).collect();
    if digits == "1" { format!("10{raised}") } else { format!("{digits}·10{raised}") }
}

fn raised(sign: char) -> char {
    const RAISED: [char; 10] = ['⁰', '¹', '²', '³', '⁴', '⁵', '⁶', '⁷', '⁸', '⁹'];
    let digit = sign.to_digit(10).and_then(|digit| RAISED.get(digit as usize));
    digit.copied().unwrap_or('⁻')
}

/// A unit in the language of now, where it is a word.
pub(super) fn unit(unit: &'static str) -> &'static str {
    let words = match unit {
        "cents" => say::UNIT_CENTS,
        "cents per degree" => say::UNIT_CENTS_PER_DEGREE,
        "cents per kelvin" => say::UNIT_CENTS_PER_KELVIN,
        "degrees" => say::UNIT_DEGREES,
        "10⁻⁶/K" => say::UNIT_MILLIONTHS_PER_KELVIN,
        "semitones" => say::UNIT_SEMITONES,
        "turns" => say::UNIT_TURNS,
        "years" => say::UNIT_YEARS,
        unit => return unit,
    };
    words.said()
}

/// A number with its unit.
pub(super) fn with(value: f64, unit: &'static str) -> String {
    let number = number(value);
    if unit.is_empty() { number } else { format!("{number} {}", self::unit(unit)) }
}
