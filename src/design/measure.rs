//! The one reader of numbers with or without a unit: cells of strings (`typed`), figures of materials, readings of
//! balances and testers, packs.

use super::decimal::decimal;
use super::display::decimals;
use super::letters::small;
use super::number::{plain, take_number, take_unit};
use super::unusable::{TypedError, cut};
use crate::engine::units::{Length, LinearDensity, Mass, Stress};
use crate::words::{Words, typed as say};

/// The names of a unit, and what a number of it is in the unit of the limits.
pub(super) type Unit = (&'static [&'static str], fn(f64) -> f64);

/// A kind of figure.
pub(super) struct Measure {
    pub(super) what: Words,
    pub(super) example: Words,
    pub(super) limits: (f64, f64),
    /// The unit of the limits and of a bare number.
    pub(super) unit: &'static str,
    pub(super) units: &'static [Unit],
    /// The units that a hint may propose, the likeliest first.
    pub(super) proposed: &'static [&'static str],
}

/// Names of the foot, after which inches may follow, and of the inch.
const FOOT: &[&str] = &["ft", "foot", "feet", "'"];
const INCH: &[&str] = &["in", "inch", "inches", "\""];

pub(super) const STRESSES_GPA: &[Unit] = &[
    (&["gpa"], |n| n),
    (&["mpa", "n/mm2"], |n| Stress::from_mpa(n).to_gpa()),
    (&["ksi"], |n| Stress::from_ksi(n).to_gpa()),
    (&["psi"], |n| Stress::from_ksi(n / 1000.0).to_gpa()),
];
pub(super) const STRESSES_MPA: &[Unit] = &[
    (&["mpa", "n/mm2"], |n| n),
    (&["gpa"], |n| Stress::from_gpa(n).to_mpa()),
    (&["ksi"], |n| Stress::from_ksi(n).to_mpa()),
    (&["psi"], |n| Stress::from_ksi(n / 1000.0).to_mpa()),
];
pub(super) const DENSITIES: &[Unit] =
    &[(&["kg/m3"], |n| n), (&["g/cm3", "g/cc", "kg/l", "kg/dm3"], |n| 1000.0 * n)];
const MM: Unit = (&["mm"], |n| n);
const CM: Unit = (&["cm"], |n| Length::from_cm(n).to_mm());
const M: Unit = (&["m"], |n| Length::from_m(n).to_mm());
const INCHES: Unit = (INCH, |n| Length::from_inch(n).to_mm());
const FEET: Unit = (FOOT, |n| Length::from_foot(n).to_mm());
const THOU: Unit = (&["thou", "mil", "mils"], |n| Length::from_thou(n).to_mm());
/// Of strings, of their diameters, and of both and what else is measured.
pub(super) const LENGTHS: &[Unit] = &[MM, CM, M, INCHES, FEET];
pub(super) const GAUGES: &[Unit] = &[MM, INCHES, THOU];
pub(super) const LENGTHS_MM: &[Unit] = &[MM, CM, M, INCHES, FEET, THOU];
pub(super) const MASSES_G: &[Unit] =
    &[(&["g"], |n| n), (&["kg"], |n| Mass::from_kg(n).to_g()), (&["mg"], |n| n / 1000.0)];
pub(super) const MASSES_G_PER_M: &[Unit] =
    &[(&["g/m", "mg/mm"], |n| n), (&["kg/m"], |n| LinearDensity::from_kg_per_m(n).to_g_per_m())];
pub(super) const PER_KELVIN: &[Unit] =
    &[(&["e-6/k", "ppm/k", "millionths per kelvin", "µm/(m k)", "µm/m/k"], |n| n)];
pub(super) const NO_UNITS: &[Unit] = &[];
pub(super) const PERCENT: &[Unit] = &[(&["%", "percent", "per cent"], |n| n)];

impl Measure {
    /// The number in the unit of the limits.
    pub(super) fn read(&self, text: &str) -> Result<f64, TypedError> {
        let &Self { what, example, limits: (least, most), unit, .. } = self;
        let typed = plain(text);
        if typed.is_empty() {
            return Err(TypedError::Empty { what, example });
        }
        let Some(value) = self.value(&typed) else {
            return Err(TypedError::Unreadable { what, example, got: cut(text) });
        };
        // A unit's conversion may move the last digit.
        if value >= least * (1.0 - 1e-9) && value <= most * (1.0 + 1e-9) {
            return Ok(value.clamp(least, most));
        }
        let hint = self.hint(&typed);
        // The limits in the unit that was typed.
        let named = take_number(&typed).map_or("", |(_, rest)| take_unit(rest).0);
        let (least, most, unit) = if unit == "mm" && is_one_of(named, INCH) {
            let inch = |mm: f64| Length::from_mm(mm).to_inch() * 1_000.0;
            (inch(least).ceil() / 1_000.0, inch(most).floor() / 1_000.0, "in")
        } else {
            (least, most, unit)
        };
        Err(TypedError::Range { what, least, most, unit, got: cut(text), hint })
    }

    /// The same, without the last digits of a conversion: for figures that are kept as numbers.
    pub(super) fn figure(&self, text: &str) -> Result<f64, TypedError> {
        self.read(text).map(without_tail)
    }

    /// The number in the unit of the limits, in or out of them; `None` when it cannot be read.
    pub(super) fn value(&self, typed: &str) -> Option<f64> {
        let (number, rest) = take_number(typed)?;
        self.in_unit(number, rest).or_else(|| {
            let (unit, rest) = take_unit(rest);
            let feet = self.in_unit(number, unit).filter(|_| is_one_of(unit, FOOT))?;
            let (inches, rest) = take_number(rest.strip_prefix('-').unwrap_or(rest).trim_start())?;
            let (unit, rest) = take_unit(rest);
            let read = inches >= 0.0 && (unit.is_empty() || is_one_of(unit, INCH));
            (read && rest.is_empty()).then(|| feet + Length::from_inch(inches).to_mm())
        })
    }

    /// Whether a text is a number in one of the units, be it within reach or not.
    pub(super) fn is_unit_of(&self, text: &str) -> bool {
        let typed = plain(text);
        take_number(&typed)
            .is_some_and(|(n, rest)| !rest.is_empty() && self.in_unit(n, rest).is_some())
    }

    /// A number of a unit in the unit of the limits; powers may be written in any way.
    pub(super) fn in_unit(&self, number: f64, unit: &str) -> Option<f64> {
        let unit = unit.trim();
        if unit.is_empty() {
            return Some(number);
        }
        let unit = small(unit.strip_suffix('.').unwrap_or(unit));
        let unit = unit.replace('³', "3").replace('²', "2").replace('^', "");
        let named = self.units.iter().find(|(names, _)| names.contains(&unit.as_str()));
        named.map(|(_, worth)| worth(number))
    }

    /// The same number in the units that bring it within reach; empty for none.
    fn hint(&self, typed: &str) -> String {
        let Some((number, rest)) = take_number(typed) else { return String::new() };
        // Nobody who typed inches meant as many metres.
        let inches = is_one_of(take_unit(rest).0, INCH);
        let digits = cut(&typed[..typed.len() - rest.len()]);
        let fits = |value: f64| (self.limits.0..=self.limits.1).contains(&value);
        let mut meant = Vec::new();
        // Makers speak of hundredths of a millimetre too.
        let mm = number / 100.0;
        let may_be = rest.is_empty() && number > 10.0 && number <= 200.0 && fits(mm);
        if may_be && self.proposed.contains(&"thou") {
            meant.push(format!("{} mm", decimals(mm, 2)));
        }
        for unit in self.proposed {
            let likely = !(inches && *unit == "m");
            if likely && self.in_unit(number, unit).is_some_and(fits) {
                meant.push(format!("{digits}{}{unit}", if *unit == "\"" { "" } else { " " }));
            }
        }
        match &meant[..] {
            [] => String::new(),
            [one] => one.clone(),
            [one, other, ..] => say::either(one, other),
        }
    }
}

fn is_one_of(unit: &str, names: &[&str]) -> bool {
    names.iter().any(|name| name.eq_ignore_ascii_case(unit))
}

/// A number without the last digits of a conversion: twelve digits are kept.
pub(super) fn without_tail(number: f64) -> f64 {
    let size = number.abs();
    if !(1e-6..1e12).contains(&size) {
        return number;
    }
    let mut decimals = 11;
    let mut limit = 10.0;
    while size >= limit {
        (decimals, limit) = (decimals - 1, limit * 10.0);
    }
    limit = 1.0;
    while size < limit {
        (decimals, limit) = (decimals + 1, limit / 10.0);
    }
    decimal(&format!("{number:.decimals$}")).unwrap_or(number)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::testing::assert_close;

    const ANY: Measure = Measure {
        what: Words::plain("length"),
        example: Words::plain("5 m"),
        limits: (1.0, 1e6),
        unit: "mm",
        units: LENGTHS_MM,
        proposed: &["m", "cm"],
    };

    #[test]
    fn every_length_is_read_in_feet_and_inches_too() {
        for (text, mm) in [
            ("5 m", 5_000.0),
            ("16 ft 5 in", 197.0 * 25.4),
            ("16' 5\"", 197.0 * 25.4),
            ("2 FT", 24.0 * 25.4),
            ("1 1/2 in.", 38.1),
            ("500 thou", 12.7),
        ] {
            assert_close(ANY.read(text).unwrap(), mm, 1e-12, text);
        }
        for text in ["5 m 3 in", "5 in 3 ft", "5 mm.mm", "5 kg", "16 ft 5 in 2"] {
            assert!(matches!(ANY.read(text), Err(TypedError::Unreadable { .. })), "{text}");
        }
    }

    #[test]
    fn a_unit_may_hold_a_power() {
        let density = Measure { units: DENSITIES, unit: "kg/m³", proposed: &["g/cm³"], ..ANY };
        for text in ["1140", "1140 kg/m³", "1140 kg/m3", "1140 KG/M^3", "1,14 g/cm³", "1.14 g/cc"]
        {
            assert_close(density.figure(text).unwrap(), 1_140.0, 1e-12, text);
        }
        let error = density.read("0.5").unwrap_err().to_string();
        assert!(error.ends_with("(did you mean 0.5 g/cm³?)"), "{error}");
    }

    #[test]
    fn a_hint_names_what_brings_the_number_within_reach() {
        let says = |text: &str| ANY.read(text).unwrap_err().to_string();
        assert!(says("0.5").ends_with("(did you mean 0.5 m or 0.5 cm?)"), "{}", says("0.5"));
        assert!(says("0.05").ends_with("(did you mean 0.05 m?)"), "{}", says("0.05"));
        assert!(says("2000000").ends_with("got \"2000000\""), "{}", says("2000000"));
    }

    #[test]
    fn a_kept_figure_has_no_tail_of_a_conversion() {
        assert_eq!(ANY.figure("0.3 in").unwrap(), 7.62);
        assert_eq!(ANY.figure("7 in").unwrap(), 177.8);
    }
}
