//! Reading figures of materials and readings of balances and testers, with or without a unit. As
//! `typed`, for units whose names hold a power: `g/cm³`, `N/mm²`.

use super::decimal::decimal;
use super::letters::small;
use super::number::{plain, take_number};
use super::typed::{TypedError, cut};
use crate::engine::units::{Length, LinearDensity, Mass, Stress};

/// The names of a unit, and what a number of it is in the unit of the limits.
pub(super) type Unit = (&'static [&'static str], fn(f64) -> f64);

/// A kind of figure.
pub(super) struct Measure {
    pub(super) what: &'static str,
    pub(super) example: &'static str,
    pub(super) limits: (f64, f64),
    /// The unit of the limits and of a bare number.
    pub(super) unit: &'static str,
    pub(super) units: &'static [Unit],
}

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
pub(super) const LENGTHS_MM: &[Unit] = &[
    (&["mm"], |n| n),
    (&["cm"], |n| Length::from_cm(n).to_mm()),
    (&["m"], |n| Length::from_m(n).to_mm()),
    (&["in", "inch", "inches", "\""], |n| Length::from_inch(n).to_mm()),
    (&["ft", "foot", "feet", "'"], |n| Length::from_foot(n).to_mm()),
    (&["thou", "mil", "mils"], |n| Length::from_thou(n).to_mm()),
];
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
        let number = take_number(&typed);
        let Some(value) = number.and_then(|(number, rest)| self.in_unit(number, rest)) else {
            return Err(TypedError::Unreadable { what, example, got: cut(text) });
        };
        if value >= least * (1.0 - 1e-9) && value <= most * (1.0 + 1e-9) {
            return Ok(without_tail(value.clamp(least, most)));
        }
        let hint = match number {
            Some((number, "")) => self.hint(number),
            _ => String::new(),
        };
        Err(TypedError::Range { what, least, most, unit, got: cut(text), hint })
    }

    /// Whether a text is a number in one of the units, be it within reach or not.
    pub(super) fn is_unit_of(&self, text: &str) -> bool {
        let typed = plain(text);
        take_number(&typed)
            .is_some_and(|(n, rest)| !rest.is_empty() && self.in_unit(n, rest).is_some())
    }

    pub(super) fn in_unit(&self, number: f64, unit: &str) -> Option<f64> {
        let unit = small(unit.trim().trim_end_matches('.'));
        if unit.is_empty() {
            return Some(number);
        }
        let unit = unit.replace('³', "3").replace('²', "2").replace('^', "");
        let named = self.units.iter().find(|(names, _)| names.contains(&unit.as_str()));
        named.map(|(_, worth)| worth(number))
    }

    /// The same number in the first unit that brings it within reach, in brackets.
    fn hint(&self, number: f64) -> String {
        let fits = |(_, worth): &&Unit| (self.limits.0..=self.limits.1).contains(&worth(number));
        match self.units.iter().find(fits).and_then(|(names, _)| names.first()) {
            Some(name) => {
                let name = name.replace("m3", "m³").replace("mpa", "MPa").replace("gpa", "GPa");
                format!(" (did you mean {number} {name}?)")
            }
            None => String::new(),
        }
    }
}

/// A number without the last digits of a conversion: twelve digits are kept.
pub(super) fn without_tail(number: f64) -> f64 {
    decimal(&format!("{number:.11e}")).unwrap_or(number)
}
