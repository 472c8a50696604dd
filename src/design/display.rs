//! Numbers to words. Figures of a string are rounded here: once, and to no more digits than the
//! tolerance of a diameter supports. Only the ticks of an axis and the columns of the card round on
//! their own; exports are not rounded.
//!
//! A minus is U+2212, and from 10 000 on a thin space parts the thousands; the decimal sign is that of the language. A
//! number that is none becomes a dash. What a program reads is written elsewhere, or by [`kept`].

mod figure;

pub use self::figure::{
    Rounding, Unit, against, apart, beside, figure, figure_unit, in_full, limit, on_the_page,
    rounded, spread,
};
use super::document::{
    ForceUnit, GaugeUnit, LengthUnit, MakeUpSpec, MechanismKind, TemperamentSpec,
};
use super::{make_up_said, typed};
use crate::engine::analysis::StringFigures;
use crate::engine::units::{
    Density, Force, Frequency, Impedance, Length, LinearDensity, Stiffness, Stress,
};
use crate::words::{Language, decimal_sign, in_language, shown as say};

/// What stands where there is no figure.
pub const NONE: &str = "–";

/// A tension or load in whole newtons, below 10 N to a tenth; in the other units to a tenth.
pub fn tension(force: Force, unit: ForceUnit) -> String {
    match unit {
        // What rounds to 10 is written as 10.
        ForceUnit::Newton if force.to_n().abs() < 9.95 => decimals(force.to_n(), 1),
        ForceUnit::Newton => decimals(force.to_n(), 0),
        ForceUnit::Kgf => decimals(force.to_kgf(), 1),
        ForceUnit::Lbf => decimals(force.to_lbf(), 1),
    }
}

/// A text for a narrow cell: no line ends between a figure and its unit.
pub fn unbroken(text: &str) -> String {
    let mut before = ' ';
    let mut kept = |sign: char| {
        let sign = if sign == ' ' && before.is_ascii_digit() { '\u{a0}' } else { sign };
        before = sign;
        sign
    };
    text.chars().map(&mut kept).collect()
}

/// As [`tension`], with the unit.
pub fn tension_with_unit(force: Force, unit: ForceUnit) -> String {
    format!("{} {}", tension(force, unit), force_unit(unit))
}

/// The pull of a whole harp with the unit: to a whole newton, kilogram-force or pound-force.
pub fn total_with_unit(force: Force, unit: ForceUnit) -> String {
    let number = match unit {
        ForceUnit::Newton => force.to_n(),
        ForceUnit::Kgf => force.to_kgf(),
        ForceUnit::Lbf => force.to_lbf(),
    };
    format!("{} {}", decimals(number, 0), force_unit(unit))
}

/// A string by its number and note: `String 9, F5`; by its number alone where it has no note.
pub fn string_name(figures: &StringFigures) -> String {
    match figures.note {
        Some(note) => say::string_with_note(&note.printed(), &figures.number),
        None => say::string(&figures.number),
    }
}

/// Its number and note without the word for a string: `9, F5`.
pub fn string_number(figures: &StringFigures) -> String {
    let number = figures.number;
    figures.note.map_or_else(|| number.to_string(), |note| format!("{number}, {}", note.printed()))
}

/// A vibrating length: millimetres to a tenth, without a tenth that is 0; inches to a hundredth.
pub fn length(length: Length, unit: LengthUnit) -> String {
    match unit {
        LengthUnit::Mm => trimmed(decimals(length.to_mm(), 1), 0),
        LengthUnit::Inch => decimals(length.to_inch(), 2),
    }
}

/// As [`length`], with the unit.
pub fn length_with_unit(length: Length, unit: LengthUnit) -> String {
    format!("{} {}", self::length(length, unit), length_unit(unit))
}

/// A gauge: millimetres to two decimals, three where the third is not 0; inches to a thousandth, as makers write
/// them: `.025`; a gauge of half a thousandth has its half.
pub fn gauge(gauge: Length, unit: GaugeUnit) -> String {
    match unit {
        GaugeUnit::Mm => trimmed(decimals(gauge.to_mm(), 3), 2),
        GaugeUnit::Thou => {
            let is_half = ((gauge.to_thou() - 0.5) % 1.0).abs() < 1e-6;
            let text = decimals(gauge.to_inch(), 3 + usize::from(is_half));
            // Where the sign is a comma, nobody leaves the zero out.
            if decimal_sign() == '.' { text.trim_start_matches('0').to_owned() } else { text }
        }
    }
}

/// As [`gauge`], with the unit.
pub fn gauge_with_unit(gauge: Length, unit: GaugeUnit) -> String {
    format!("{} {}", self::gauge(gauge, unit), gauge_unit(unit))
}

/// A make-up in one line, its diameters without their unit; those that cannot be read as they were typed.
pub fn make_up(make_up: &MakeUpSpec, unit: GaugeUnit) -> String {
    let mut shown = make_up.clone();
    for size in shown.sizes_mut() {
        if let Ok(diameter) = typed::gauge(size) {
            *size = gauge(diameter, unit);
        }
    }
    make_up_said::said(&shown)
}

/// A pitch in hertz: two decimals below 1000, one from there on.
pub fn frequency(frequency: Frequency) -> String {
    let hz = frequency.to_hz();
    decimals(hz, if hz.abs() < 999.995 { 2 } else { 1 })
}

/// A share or another percentage, whole.
pub fn percent(percent: f64) -> String {
    decimals(percent, 0)
}

/// A modulus of elasticity in gigapascals, three digits.
pub fn modulus(modulus: Stress) -> String {
    significant(modulus.to_gpa(), 3)
}

/// A density in whole kilograms per cubic metre.
pub fn density(density: Density) -> String {
    decimals(density.to_kg_per_m3(), 0)
}

/// Semitones to a tenth.
pub fn semitones(semitones: f64) -> String {
    decimals(semitones, 1)
}

/// Cents to a tenth.
pub fn cents(cents: f64) -> String {
    decimals(cents, 1)
}

/// Stiffness under the finger: newtons per millimetre to a hundredth, kilograms-force per millimetre
/// to a thousandth, pounds-force per inch to a tenth.
pub fn stiffness(stiffness: Stiffness, unit: ForceUnit) -> String {
    match unit {
        ForceUnit::Newton => decimals(stiffness.to_n_per_mm(), 2),
        ForceUnit::Kgf => decimals(stiffness.to_kgf_per_mm(), 3),
        ForceUnit::Lbf => decimals(stiffness.to_lbf_per_inch(), 1),
    }
}

/// Mass per metre in grams, three digits.
pub fn linear_density(density: LinearDensity) -> String {
    significant(density.to_g_per_m(), 3)
}

/// Impedance in kilograms per second, to a hundredth; two digits below a tenth.
pub fn impedance(impedance: Impedance) -> String {
    let kg_per_s = impedance.to_kg_per_s();
    if kg_per_s.abs() < 0.0995 { significant(kg_per_s, 2) } else { decimals(kg_per_s, 2) }
}

/// A number in so many digits and a power of ten: `2.0·10⁻⁴`.
fn power(number: f64, digits: usize) -> String {
    if number == 0.0 || !number.is_finite() {
        return decimals(number, 0);
    }
    let text = format!("{number:.*e}", digits.saturating_sub(1));
    let (digits, power) = text.split_once('e').unwrap_or((&text, "0"));
    let raised = |c: char| match c.to_digit(10) {
        Some(digit) => RAISED.get(digit as usize).copied().unwrap_or('⁰'),
        None => '⁻',
    };
    let raised: String = power.chars().map(raised).collect();
    format!("{}·10{raised}", as_said(&digits.replace('-', "−")))
}

const RAISED: [char; 10] = ['⁰', '¹', '²', '³', '⁴', '⁵', '⁶', '⁷', '⁸', '⁹'];

/// How a length unit is written.
pub const fn length_unit(unit: LengthUnit) -> &'static str {
    match unit {
        LengthUnit::Mm => "mm",
        LengthUnit::Inch => "in",
    }
}

/// How a gauge unit is written.
pub const fn gauge_unit(unit: GaugeUnit) -> &'static str {
    match unit {
        GaugeUnit::Mm => "mm",
        GaugeUnit::Thou => "in",
    }
}

/// How a force unit is written.
pub const fn force_unit(unit: ForceUnit) -> &'static str {
    match unit {
        ForceUnit::Newton => "N",
        ForceUnit::Kgf => "kgf",
        ForceUnit::Lbf => "lbf",
    }
}

/// How the unit of stiffness is written that goes with a force unit.
pub const fn stiffness_unit(unit: ForceUnit) -> &'static str {
    match unit {
        ForceUnit::Newton => "N/mm",
        ForceUnit::Kgf => "kgf/mm",
        ForceUnit::Lbf => "lbf/in",
    }
}

/// What a temperament is called.
pub fn temperament(temperament: TemperamentSpec) -> &'static str {
    let words = match temperament {
        TemperamentSpec::Equal => say::EQUAL,
        TemperamentSpec::Pythagorean => say::PYTHAGOREAN,
        TemperamentSpec::QuarterCommaMeantone => say::QUARTER_COMMA_MEANTONE,
        TemperamentSpec::WerckmeisterThree => say::WERCKMEISTER_THREE,
        TemperamentSpec::Vallotti => say::VALLOTTI,
        TemperamentSpec::YoungTwo => say::YOUNG_TWO,
        TemperamentSpec::JustOnC => say::JUST_ON_C,
    };
    words.said()
}

/// What raises a string by semitones.
pub fn mechanism(kind: MechanismKind) -> &'static str {
    let words = match kind {
        MechanismKind::None => say::NO_MECHANISM,
        MechanismKind::Lever => say::LEVER,
        MechanismKind::SingleDisc => say::SINGLE_DISC,
        MechanismKind::DoubleDisc => say::DOUBLE_DISC,
    };
    words.said()
}

/// What a cell keeps of a number: with a point, whatever the language of the page.
pub fn kept(text: impl FnOnce() -> String) -> String {
    in_language(Language::English, text)
}

/// A text that was typed or kept, with the decimal sign of the language: `0.81` as `0,81`.
pub fn as_said(text: &str) -> String {
    let sign = decimal_sign();
    let mut before = '\0';
    let mut letters = text.chars().peekable();
    let mut out = String::with_capacity(text.len());
    while let Some(letter) = letters.next() {
        let after = letters.peek().is_some_and(char::is_ascii_digit);
        let is_point =
            letter == '.' && after && (before.is_ascii_digit() || !before.is_alphanumeric());
        out.push(if is_point { sign } else { letter });
        before = letter;
    }
    out
}

/// A number with so many decimals.
pub fn decimals(number: f64, places: usize) -> String {
    if !number.is_finite() {
        return NONE.to_owned();
    }
    let text = format!("{:.places$}", number.abs());
    let (whole, part) = text.split_at(text.find('.').unwrap_or(text.len()));
    let is_zero = text.bytes().all(|digit| matches!(digit, b'0' | b'.'));
    let sign = if number < 0.0 && !is_zero { "−" } else { "" };
    let part = part.replace('.', decimal_sign().encode_utf8(&mut [0; 4]));
    format!("{sign}{}{part}", grouped(whole))
}

/// A number with so many digits that count, at most six decimals.
pub fn significant(number: f64, digits: usize) -> String {
    if number == 0.0 || !number.is_finite() {
        return decimals(number, 0);
    }
    // Written as a power of ten it is rounded as it will be: 9.996 in three digits is 10.0.
    let text = format!("{number:.*e}", digits.saturating_sub(1));
    let power: i32 = text.rsplit('e').next().and_then(|p| p.parse().ok()).unwrap_or(0);
    let wanted = i32::try_from(digits).unwrap_or(6) - 1 - power;
    decimals(number, usize::try_from(wanted.min(6)).unwrap_or(0))
}

/// Digits with a thin space between thousands, where there are five or more.
fn grouped(digits: &str) -> String {
    if digits.len() < 5 {
        return digits.to_owned();
    }
    let mut out = String::with_capacity(2 * digits.len());
    for (place, digit) in digits.chars().enumerate() {
        if place > 0 && (digits.len() - place).is_multiple_of(3) {
            out.push('\u{2009}');
        }
        out.push(digit);
    }
    out
}

/// A decimal text without the zeros at its end, keeping at least so many decimals.
pub fn trimmed(text: String, least: usize) -> String {
    let Some(point) = text.find(decimal_sign()) else { return text };
    let digits = text.trim_end_matches('0').len();
    let end = digits.max(point + 1 + least);
    text[..if end == point + 1 { point } else { end }].to_owned()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::design::typed;
    use crate::testing::assert_close;

    #[test]
    fn no_line_ends_between_a_figure_and_its_unit() {
        assert_eq!(unbroken("102 mm"), "102\u{a0}mm");
        assert_eq!(unbroken("30 to 34 %, pillar"), "30\u{a0}to 34\u{a0}%, pillar");
        assert_eq!(unbroken("At its limit: comes short"), "At its limit: comes short");
        assert_eq!(unbroken(""), "");
    }

    #[test]
    fn a_tension_has_a_tenth_below_ten_newtons_only() {
        for (newtons, text) in [
            (90.6, "91"),
            (9.96, "10"),
            (9.94, "9.9"),
            (0.04, "0.0"),
            (-12.4, "−12"),
            (-0.04, "0.0"),
            (9_999.4, "9999"),
            (12_345.6, "12\u{2009}346"),
            (f64::NAN, "–"),
            (f64::INFINITY, "–"),
        ] {
            assert_eq!(tension(Force::from_n(newtons), ForceUnit::Newton), text, "{newtons}");
        }
        let hundred = Force::from_n(100.0);
        assert_eq!(tension_with_unit(hundred, ForceUnit::Kgf), "10.2 kgf");
        assert_eq!(tension_with_unit(hundred, ForceUnit::Lbf), "22.5 lbf");
        assert_eq!(tension_with_unit(hundred, ForceUnit::Newton), "100 N");
    }

    #[test]
    fn a_comma_stands_where_the_language_has_one_but_never_in_what_is_kept() {
        for language in [Language::German, Language::French] {
            in_language(language, || {
                let force = Force::from_n(12_345.67);
                assert_eq!(tension(force, ForceUnit::Kgf), "1258,9");
                assert_eq!(tension(force, ForceUnit::Newton), "12\u{2009}346");
                assert_eq!(length(Length::from_mm(612.5), LengthUnit::Mm), "612,5");
                assert_eq!(length(Length::from_mm(612.0), LengthUnit::Mm), "612");
                assert_eq!(gauge(Length::from_mm(0.8), GaugeUnit::Mm), "0,80");
                assert_eq!(gauge(Length::from_mm(0.635), GaugeUnit::Thou), "0,025");
                assert_eq!(significant(9.996, 3), "10,0");
                assert_eq!(power(2.04e-4, 2), "2,0·10⁻⁴");
                let text = || length_with_unit(Length::from_mm(612.5), LengthUnit::Mm);
                assert_eq!(kept(text), "612.5 mm");
                assert_eq!(text(), "612,5 mm");
                for (typed, said) in [
                    ("0.81", "0,81"),
                    (".032 in", ",032 in"),
                    ("steel 0.40 + bronze 0.25", "steel 0,40 + bronze 0,25"),
                    ("a.b 3.", "a.b 3."),
                ] {
                    assert_eq!(as_said(typed), said);
                }
            });
        }
        assert_eq!(as_said("0.81"), "0.81");
    }

    #[test]
    fn a_length_shows_a_tenth_of_a_millimetre_where_there_is_one() {
        for (mm, text, inches) in [
            (612.0, "612", "24.09"),
            (612.5, "612.5", "24.11"),
            (612.04, "612", "24.10"),
            (100.0, "100", "3.94"),
            (1_550.25, "1550.2", "61.03"),
        ] {
            assert_eq!(length(Length::from_mm(mm), LengthUnit::Mm), text);
            assert_eq!(length(Length::from_mm(mm), LengthUnit::Inch), inches);
        }
        assert_eq!(length_with_unit(Length::from_mm(254.0), LengthUnit::Inch), "10.00 in");
        assert_eq!(length_with_unit(Length::from_mm(254.0), LengthUnit::Mm), "254 mm");
    }

    #[test]
    fn a_gauge_shows_two_or_three_decimals() {
        for (mm, text, thou) in [
            (0.81, "0.81", ".032"),
            (0.8128, "0.813", ".032"),
            (0.635, "0.635", ".025"),
            (0.8, "0.80", ".031"),
            (1.0, "1.00", ".039"),
            (10.0, "10.00", ".394"),
        ] {
            assert_eq!(gauge(Length::from_mm(mm), GaugeUnit::Mm), text);
            assert_eq!(gauge(Length::from_mm(mm), GaugeUnit::Thou), thou);
        }
        assert_eq!(gauge_with_unit(Length::from_thou(30.0), GaugeUnit::Thou), ".030 in");
    }

    #[test]
    fn a_pitch_has_two_decimals_below_a_thousand() {
        for (hz, text) in
            [(440.0, "440.00"), (999.996, "1000.0"), (3_135.963, "3136.0"), (32.703, "32.70")]
        {
            assert_eq!(frequency(Frequency::from_hz(hz)), text);
        }
    }

    #[test]
    fn three_digits_count_in_a_mass_per_metre() {
        for (g_per_m, text) in [
            (0.587_44, "0.587"),
            (6.75, "6.75"),
            (9.996, "10.0"),
            (12.345, "12.3"),
            (123.45, "123"),
            (1234.5, "1234"),
            (0.001_234, "0.00123"),
            (1.0, "1.00"),
            (0.1, "0.100"),
            (0.0, "0"),
        ] {
            assert_eq!(linear_density(LinearDensity::from_g_per_m(g_per_m)), text, "{g_per_m}");
        }
    }

    #[test]
    fn a_coefficient_has_its_digits_and_a_power() {
        for (b, text) in [
            (2.04e-4, "2.0·10⁻⁴"),
            (9.96e-5, "1.0·10⁻⁴"),
            (1.25e-12, "1.2·10⁻¹²"),
            (3.5, "3.5·10⁰"),
            (-4.6e-5, "−4.6·10⁻⁵"),
            (0.0, "0"),
            (f64::NAN, "–"),
        ] {
            assert_eq!(power(b, 2), text);
        }
    }

    #[test]
    fn the_other_figures_have_their_digits() {
        assert_eq!(percent(91.5), "92");
        assert_eq!(semitones(-1.26), "−1.3");
        assert_eq!(cents(12.34), "12.3");
        assert_eq!(stiffness(Stiffness::from_n_per_mm(0.846), ForceUnit::Newton), "0.85");
        assert_eq!(stiffness(Stiffness::from_lbf_per_inch(4.26), ForceUnit::Lbf), "4.3");
        assert_eq!(impedance(Impedance::from_kg_per_s(0.3246)), "0.32");
        assert_eq!(impedance(Impedance::from_kg_per_s(0.0996)), "0.10");
        assert_eq!(impedance(Impedance::from_kg_per_s(0.0326)), "0.033");
        assert_eq!(modulus(Stress::from_gpa(4.5)), "4.50");
        assert_eq!(density(Density::from_kg_per_m3(10_360.0)), "10\u{2009}360");
    }

    #[test]
    fn what_is_shown_can_be_typed_again() {
        for mm in [20.0, 85.3, 612.0, 1_550.5, 3_000.0] {
            let shown = length_with_unit(Length::from_mm(mm), LengthUnit::Mm);
            assert_close(typed::length(&shown).unwrap().to_mm(), mm, 1e-12, shown);
        }
        for thou in [20.0, 32.0, 65.5] {
            let shown = gauge_with_unit(Length::from_thou(thou), GaugeUnit::Thou);
            assert_close(typed::gauge(&shown).unwrap().to_thou(), thou, 1e-12, shown);
        }
        let shown = tension_with_unit(Force::from_n(12_345.0), ForceUnit::Newton);
        assert_close(typed::load(&shown).unwrap().to_n(), 12_345.0, 1e-12, shown);
    }

    #[test]
    fn a_huge_number_is_shown_all_the_same() {
        assert_eq!(decimals(1e300, 0).chars().filter(char::is_ascii_digit).count(), 301);
        assert!(!significant(1e-300, 3).is_empty());
        assert!(!significant(1e300, 3).is_empty());
    }
}
