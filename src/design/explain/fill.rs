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

/// The numbers by the names that stand for them.
pub(super) struct Values(Vec<(&'static str, String)>);

impl Values {
    pub(super) fn new() -> Self {
        let usual = Conditions::default();
        let off = usual.tolerances;
        let allowances = Allowances::default();
        let limits = LimitsSpec::default();
        let design = Design::default();
        // The law is a straight line between logarithms: its height at 1 Hz and its slope.
        let at = |hz: f64| audible_inharmonicity(Frequency::from_hz(hz)).ln();
        let numbers = [
            ("pluck", usual.pluck.to_mm()),
            ("most_pluck", 100.0 * MOST_PLUCK_RATIO),
            ("off_push", off.push.to_mm()),
            ("at", design.pluck_percent),
            ("partial", f64::from(usual.damping_partial)),
            ("most_partial", Setting::DampingPartial.row().sensible.1),
            ("push", usual.push.to_mm()),
            ("frame", 1e6 * usual.frame_expansion_per_k),
            ("off_length", off.length.to_mm()),
            ("off_pitch", off.pitch_cents),
            ("off_kelvins", off.temperature_k),
            ("off_diameter", off.diameter.to_mm()),
            ("off_density", 100.0 * off.density_ratio),
            ("after", allowances.after_length_mm),
            ("turns", allowances.turns),
            ("pin", allowances.pin_mm),
            ("knot", allowances.knot_mm),
            ("tail", allowances.tail_mm),
            ("working", limits.working_share_percent),
            ("creeping", limits.soft_share_percent),
            ("slack", limits.slack_share_percent),
            ("least", limits.least_tension_n),
            ("soft", limits.least_stiffness_n_per_mm),
            ("hard", limits.most_stiffness_n_per_mm),
            ("sharp", limits.partial_8_cents),
            ("jump", limits.jump_percent),
            ("least_raise", limits.least_raise_mm),
            ("slope", at(std::f64::consts::E) - at(1.0)),
            ("offset", -at(1.0)),
            ("times", AUDIBLE_TIMES),
            ("thin", THIN_CORE_RATIO),
            ("angle", usual.board_angle_rad.to_degrees()),
            ("a4", design.pitch.a4_hz),
        ];
        let ranges = [
            ("lengths", LENGTH_M, 1e3, "mm"),
            ("pitches", FREQUENCY_HZ, 1.0, "Hz"),
            ("diameters", DIAMETER_MM, 1.0, "mm"),
            ("packings", PACKING, 100.0, "%"),
            ("masses", WEIGHED_G_PER_M, 1.0, "g/m"),
            ("loads", BREAKING_LOAD_N, 1.0, "N"),
            ("plucks", Setting::PluckBy.row().sensible, 1.0, "mm"),
            ("places", Setting::Pluck.row().sensible, 1.0, "%"),
            ("pushes", Setting::Push.row().sensible, 1.0, "mm"),
            ("a4s", Setting::A4.row().sensible, 1.0, "Hz"),
        ];
        let numbers = numbers.map(|(name, value)| (name, number(value)));
        let ranges = ranges.map(|(name, (least, most), times, unit)| {
            (name, format!("{} to {} {unit}", number(least * times), number(most * times)))
        });
        Self(numbers.into_iter().chain(ranges).collect())
    }

    /// The text with every name in braces replaced by its number.
    pub(super) fn fill(&self, text: &str) -> String {
        let mut filled = text.to_owned();
        if text.contains('{') {
            for (name, value) in &self.0 {
                filled = filled.replace(&format!("{{{name}}}"), value);
            }
        }
        filled
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
    if text.contains('.') {
        text.trim_end_matches('0').trim_end_matches('.').to_owned()
    } else {
        text
    }
}

fn power(value: f64) -> String {
    let text = format!("{value:.3e}");
    let (digits, power) = text.split_once('e').unwrap_or((&text, "0"));
    let digits = digits.trim_end_matches('0').trim_end_matches('.').replace('-', "−");
    let raised: String = power.chars().map(raised).collect();
    if digits == "1" { format!("10{raised}") } else { format!("{digits}·10{raised}") }
}

fn raised(sign: char) -> char {
    const RAISED: [char; 10] = ['⁰', '¹', '²', '³', '⁴', '⁵', '⁶', '⁷', '⁸', '⁹'];
    let digit = sign.to_digit(10).and_then(|digit| RAISED.get(digit as usize));
    digit.copied().unwrap_or('⁻')
}

/// A number with its unit.
pub(super) fn with(value: f64, unit: &str) -> String {
    let number = number(value);
    if unit.is_empty() { number } else { format!("{number} {unit}") }
}
