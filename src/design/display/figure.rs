//! Every figure of a string in words: its unit on the page, and its rounding in the chart and in full.

use super::{
    cents, decimals, force_unit, frequency, gauge, gauge_unit, impedance, length, length_unit,
    linear_density, percent, power, semitones, significant, stiffness, stiffness_unit, stress,
    tension,
};
use crate::design::document::{ForceUnit, GaugeUnit, LengthUnit, Units};
use crate::engine::analysis::{Known, StringFigures};
use crate::engine::figure::Figure;
use crate::engine::units::{Force, Frequency, Impedance, Length, LinearDensity, Stiffness, Stress};

/// The unit in which the page shows a figure; empty where it has none or its name says it.
pub const fn figure_unit(figure: Figure, units: &Units) -> &'static str {
    match figure {
        Figure::Frequency => "Hz",
        Figure::Length
        | Figure::Stretch
        | Figure::Lever
        | Figure::DiscNatural
        | Figure::DiscSharp
        | Figure::CutLength => length_unit(units.length),
        Figure::Gauge | Figure::Core => gauge_unit(units.gauge),
        Figure::LinearDensity => "g/m",
        Figure::Tension
        | Figure::BreakingLoad
        | Figure::PluckForce
        | Figure::Lift
        | Figure::AlongBoard => force_unit(units.force),
        Figure::Stress => "MPa",
        Figure::LoadShare => "%",
        Figure::SemitonesToBreak => "semit.",
        Figure::PluckStiffness => stiffness_unit(units.force),
        Figure::Inharmonicity | Figure::Damping => "",
        Figure::Partial8 | Figure::Glide => "cents",
        Figure::Impedance => "kg/s",
        Figure::PinTurns => "turns",
        Figure::CentsPerPinDegree => "cents/°",
        Figure::CentsPerKelvin => "cents/°C",
    }
}

/// A figure, or how far it may be off, from the unit of its heading to that of the page.
pub const fn on_the_page(figure: Figure, value: f64, units: &Units) -> f64 {
    match figure {
        Figure::Length
        | Figure::Stretch
        | Figure::Lever
        | Figure::DiscNatural
        | Figure::DiscSharp
        | Figure::CutLength => match units.length {
            LengthUnit::Mm => value,
            LengthUnit::Inch => Length::from_mm(value).to_inch(),
        },
        Figure::Gauge | Figure::Core => match units.gauge {
            GaugeUnit::Mm => value,
            GaugeUnit::Thou => Length::from_mm(value).to_thou(),
        },
        Figure::Tension
        | Figure::BreakingLoad
        | Figure::PluckForce
        | Figure::Lift
        | Figure::AlongBoard => match units.force {
            ForceUnit::Newton => value,
            ForceUnit::Kgf => Force::from_n(value).to_kgf(),
            ForceUnit::Lbf => Force::from_n(value).to_lbf(),
        },
        Figure::PluckStiffness => match units.force {
            ForceUnit::Newton => value,
            ForceUnit::Kgf => Stiffness::from_n_per_mm(value).to_kgf_per_mm(),
            ForceUnit::Lbf => Stiffness::from_n_per_mm(value).to_lbf_per_inch(),
        },
        _ => value,
    }
}

/// A figure as the chart shows it, or why there is none.
pub fn figure(figure: Figure, of: &StringFigures, units: &Units) -> Known<String> {
    figure.value(of).map(|value| rounded(figure, value, units))
}

/// A figure in the unit of its heading, in the words of the chart. A stretch to a tenth of a
/// millimetre or a hundredth of an inch, the place of a lever or disc to a tenth of that; a cut length to a millimetre or a
/// tenth of an inch; turns to a hundredth; the force of a pluck to a tenth of a newton or pound-force;
/// damping to two digits.
pub fn rounded(figure: Figure, value: f64, units: &Units) -> String {
    let shown = on_the_page(figure, value, units);
    match figure {
        Figure::Frequency => frequency(Frequency::from_hz(value)),
        Figure::Length => length(Length::from_mm(value), units.length),
        Figure::Gauge | Figure::Core => gauge(Length::from_mm(value), units.gauge),
        Figure::LinearDensity => linear_density(LinearDensity::from_g_per_m(value)),
        Figure::Tension | Figure::BreakingLoad | Figure::Lift | Figure::AlongBoard => {
            tension(Force::from_n(value), units.force)
        }
        Figure::Stress => stress(Stress::from_mpa(value)),
        Figure::LoadShare => percent(value),
        Figure::SemitonesToBreak => semitones(value),
        Figure::PluckStiffness => stiffness(Stiffness::from_n_per_mm(value), units.force),
        Figure::Inharmonicity | Figure::Damping => power(value, 2),
        Figure::Impedance => impedance(Impedance::from_kg_per_s(value)),
        Figure::Partial8 | Figure::Glide | Figure::CentsPerPinDegree | Figure::CentsPerKelvin => {
            cents(value)
        }
        Figure::Stretch => decimals(shown, if units.length == LengthUnit::Mm { 1 } else { 2 }),
        Figure::Lever | Figure::DiscNatural | Figure::DiscSharp => {
            decimals(shown, if units.length == LengthUnit::Mm { 2 } else { 3 })
        }
        Figure::CutLength => decimals(shown, if units.length == LengthUnit::Mm { 0 } else { 1 }),
        Figure::PinTurns => decimals(value, 2),
        Figure::PluckForce => decimals(shown, if units.force == ForceUnit::Kgf { 2 } else { 1 }),
    }
}

/// A figure in the unit of its heading, with more digits than are sure: to compare, not to build by.
pub fn in_full(figure: Figure, value: f64, units: &Units) -> String {
    digits(figure, value, units, 5)
}

/// A figure in the unit of its heading, down to the last digit of how far it may be off.
pub fn beside(figure: Figure, value: f64, off: f64, units: &Units) -> String {
    let (shown, off) = (on_the_page(figure, value, units), on_the_page(figure, off, units));
    let power_of = |number: f64| number.abs().log10().floor();
    // Two digits of the one; of the other, as many as reach as far, at least two and at most six.
    let count = (power_of(shown) - power_of(off) + 2.0).clamp(2.0, 6.0);
    let count = (2_u8..=6).rev().find(|most| f64::from(*most) <= count).unwrap_or(2);
    digits(figure, value, units, usize::from(count))
}

/// How far a figure may be off, in the unit of its heading: two digits.
pub fn spread(figure: Figure, total: f64, units: &Units) -> String {
    digits(figure, total.abs(), units, 2)
}

fn digits(figure: Figure, value: f64, units: &Units, count: usize) -> String {
    match figure {
        Figure::Inharmonicity | Figure::Damping => power(value, count),
        _ => significant(on_the_page(figure, value, units), count),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn figures_are_rounded_to_what_can_be_made_of_them() {
        let metric = Units::default();
        for (figure, value, text) in [
            (Figure::Damping, 3.14e-4, "3.1·10⁻⁴"),
            (Figure::Stretch, 23.46, "23.5"),
            (Figure::PinTurns, 1.357, "1.36"),
            (Figure::CentsPerPinDegree, 4.36, "4.4"),
            (Figure::CentsPerKelvin, -6.78, "−6.8"),
            (Figure::Lever, 21.444, "21.44"),
            (Figure::CutLength, 924.6, "925"),
            (Figure::PluckForce, 4.44, "4.4"),
            (Figure::LoadShare, 41.7, "42"),
        ] {
            assert_eq!(rounded(figure, value, &metric), text, "{figure:?}");
        }
    }

    #[test]
    fn lengths_and_forces_follow_the_units_of_the_page() {
        let units =
            Units { length: LengthUnit::Inch, gauge: GaugeUnit::Thou, force: ForceUnit::Lbf };
        // The inch is 25.4 mm and the pound-force 4.448 N.
        assert_eq!(rounded(Figure::CutLength, 254.0, &units), "10.0");
        assert_eq!(rounded(Figure::Lever, 25.4, &units), "1.000");
        assert_eq!(rounded(Figure::PluckForce, 4.448, &units), "1.0");
        assert_eq!(figure_unit(Figure::Stretch, &units), "in");
        assert_eq!(spread(Figure::Gauge, 0.0254, &units), "1.0");
        assert_eq!(in_full(Figure::Tension, 44.482_216, &units), "10.000");
    }

    #[test]
    fn in_full_there_are_five_digits_and_two_for_what_is_off() {
        let metric = Units::default();
        assert_eq!(in_full(Figure::Tension, 83.456_7, &metric), "83.457");
        assert_eq!(in_full(Figure::Inharmonicity, 2.043_71e-4, &metric), "2.0437·10⁻⁴");
        assert_eq!(spread(Figure::Tension, -2.345, &metric), "2.3");
        assert_eq!(spread(Figure::Damping, 4.56e-6, &metric), "4.6·10⁻⁶");
        for (value, off, text) in [
            (1594.43, 104.2, "1594"),
            (0.827_9, 0.053, "0.828"),
            (3.005, 0.2, "3.00"),
            (25.0, 30.0, "25"),
        ] {
            assert_eq!(beside(Figure::Glide, value, off, &metric), text, "{value} ± {off}");
        }
        assert_eq!(beside(Figure::Inharmonicity, 2.0437e-4, 3e-6, &metric), "2.044·10⁻⁴");
    }
}
