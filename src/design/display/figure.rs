//! Every figure of a string in words: its unit on the page, and its rounding in the chart, in full and
//! beside a limit.

use super::{
    decimals, force_unit, frequency, gauge, gauge_unit, impedance, length, length_unit, power,
    significant, stiffness_unit, tension, trimmed,
};
use crate::design::document::{ForceUnit, GaugeUnit, LengthUnit, Units};
use crate::design::figures::row;
use crate::engine::analysis::{Known, StringFigures};
use crate::engine::figure::Figure;
use crate::engine::units::{Force, Frequency, Impedance, Length, Stiffness};
use crate::words::Words;

/// The unit of a figure.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Unit {
    /// Millimetres in headings, on the page what lengths are shown in.
    Length,
    /// Millimetres in headings, on the page what gauges are shown in.
    Gauge,
    /// Newtons in headings, on the page what forces are shown in.
    Force,
    /// Newtons per millimetre in headings, on the page what goes with forces.
    Stiffness,
    /// The same everywhere: at the head of a column, and in a sentence.
    Same(Words, &'static str),
}

impl Unit {
    /// That of a pure number.
    pub const NONE: Self = Self::Same(Words::NONE, "");

    /// As a heading has it; empty for a pure number.
    pub const fn of_heading(self) -> &'static str {
        match self {
            Self::Length | Self::Gauge => "mm",
            Self::Force => "N",
            Self::Stiffness => "N/mm",
            Self::Same(_, unit) => unit,
        }
    }

    /// As the page has it; empty for a pure number.
    fn on_page(self, units: &Units) -> &'static str {
        match self {
            Self::Length => length_unit(units.length),
            Self::Gauge => gauge_unit(units.gauge),
            Self::Force => force_unit(units.force),
            Self::Stiffness => stiffness_unit(units.force),
            Self::Same(unit, _) => unit.said(),
        }
    }

    /// Which of the units that there are to choose from the page has, from 0.
    const fn choice(self, units: &Units) -> usize {
        match self {
            Self::Length => units.length as usize,
            Self::Gauge => units.gauge as usize,
            Self::Force | Self::Stiffness => units.force as usize,
            Self::Same(..) => 0,
        }
    }

    /// Of decimals for each of the units to choose from, those for the unit of the page.
    pub fn places(self, of: [u8; 3], units: &Units) -> usize {
        usize::from(of[self.choice(units)])
    }
}

/// How the chart rounds a figure.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Rounding {
    /// To so many decimals, in each of the units that there are to choose from.
    Places([u8; 3]),
    /// To so many digits that count.
    Digits(u8),
    /// To two digits and a power of ten.
    Power,
    /// As [`frequency`].
    Pitch,
    /// As [`length`].
    Length,
    /// As [`gauge`].
    Gauge,
    /// As [`tension`].
    Tension,
    /// As [`impedance`].
    Impedance,
}

/// The unit in which the page shows a figure; empty where it has none or its name says it.
pub fn figure_unit(figure: Figure, units: &Units) -> &'static str {
    row(figure).unit.on_page(units)
}

/// A figure, or how far it may be off, from the unit of its heading to that of the page.
pub fn on_the_page(figure: Figure, value: f64, units: &Units) -> f64 {
    match row(figure).unit {
        Unit::Length if units.length == LengthUnit::Inch => Length::from_mm(value).to_inch(),
        Unit::Gauge if units.gauge == GaugeUnit::Thou => Length::from_mm(value).to_inch(),
        Unit::Force => match units.force {
            ForceUnit::Newton => value,
            ForceUnit::Kgf => Force::from_n(value).to_kgf(),
            ForceUnit::Lbf => Force::from_n(value).to_lbf(),
        },
        Unit::Stiffness => match units.force {
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

/// A figure in the unit of its heading, in the words of the chart.
pub fn rounded(figure: Figure, value: f64, units: &Units) -> String {
    let row = row(figure);
    let shown = on_the_page(figure, value, units);
    match row.rounding {
        Rounding::Places(places) => decimals(shown, row.unit.places(places, units)),
        Rounding::Digits(count) => significant(shown, usize::from(count)),
        Rounding::Power => power(shown, 2),
        Rounding::Pitch => frequency(Frequency::from_hz(value)),
        Rounding::Length => length(Length::from_mm(value), units.length),
        Rounding::Gauge => gauge(Length::from_mm(value), units.gauge),
        Rounding::Tension => tension(Force::from_n(value), units.force),
        Rounding::Impedance => impedance(Impedance::from_kg_per_s(value)),
    }
}

/// A figure and the limit or the neighbour that it is beyond, both in the unit of its heading, with so
/// many decimals that the two can be told apart.
pub fn against(figure: Figure, value: f64, limit: f64, units: &Units) -> (String, String) {
    let (value, limit) = (on_the_page(figure, value, units), on_the_page(figure, limit, units));
    let (least, most) = places(figure, value, units);
    let (value, limit) = apart(value, limit, most);
    (trimmed(value, least), trimmed(limit, least))
}

/// A limit as the maker set it: to the decimals of its figure, or up to two more where it has them.
pub fn limit(figure: Figure, limit: f64, units: &Units) -> String {
    let limit = on_the_page(figure, limit, units);
    let (least, most) = places(figure, limit, units);
    trimmed(as_set(limit, most), least)
}

/// The least and the most decimals that the chart gives a figure in the unit of the page.
fn places(figure: Figure, shown: f64, units: &Units) -> (usize, usize) {
    let row = row(figure);
    let same = |places| (places, places);
    match row.rounding {
        Rounding::Places(places) => same(row.unit.places(places, units)),
        Rounding::Tension => same(usize::from(units.force != ForceUnit::Newton || shown < 9.95)),
        Rounding::Length if units.length == LengthUnit::Mm => (0, 1),
        Rounding::Gauge if units.gauge == GaugeUnit::Mm => (2, 3),
        Rounding::Gauge => (3, 3),
        Rounding::Pitch if shown >= 999.995 => same(1),
        _ => same(2),
    }
}

/// A number and the limit that it is beyond, to so many decimals, and to more where they would read the
/// same; the limit as [`as_set`].
pub fn apart(value: f64, limit: f64, places: usize) -> (String, String) {
    let same = |places: &usize| decimals(value, *places) == decimals(limit, *places);
    // The first past those that read the same; beyond nine more the two are the same.
    let places = (places..places + 9).take_while(same).last().map_or(places, |last| last + 1);
    (decimals(value, places), as_set(limit, places))
}

/// A limit to so many decimals, or up to two more where it then stands in full.
fn as_set(limit: f64, places: usize) -> String {
    let in_full = |places: &i32| {
        let whole = limit * 10_f64.powi(*places);
        (whole - whole.round()).abs() <= 1e-9 * whole.abs()
    };
    let least = i32::try_from(places).unwrap_or(0);
    let places = (least..=least + 2).find(in_full).unwrap_or(least);
    decimals(limit, usize::try_from(places).unwrap_or(0))
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
    match row(figure).rounding {
        Rounding::Power => power(value, count),
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
        assert_eq!(spread(Figure::Gauge, 0.0254, &units), "0.0010");
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

    /// A number of the page.
    fn read(text: &str) -> f64 {
        text.replace('\u{2009}', "").replace('−', "-").parse().unwrap()
    }

    /// Limits as they are typed and as they come out of a change of units, and values from far beyond
    /// them to as near as counts.
    #[test]
    fn what_is_beyond_a_limit_reads_as_beyond_it() {
        let pages = [
            Units::default(),
            Units { length: LengthUnit::Inch, gauge: GaugeUnit::Thou, force: ForceUnit::Lbf },
            Units { force: ForceUnit::Kgf, ..Units::default() },
        ];
        let figures = [
            (Figure::LoadShare, 75.0),
            (Figure::Tension, 40.0),
            (Figure::PluckStiffness, 1.9),
            (Figure::Partial8, 80.0),
            (Figure::Gauge, 1.2),
            (Figure::Length, 900.0),
            (Figure::Frequency, 1500.0),
        ];
        let mut seed = 1_u64;
        let mut drawn = || {
            seed = seed.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1);
            f64::from(u32::try_from(seed >> 33).unwrap()) / f64::from(1_u32 << 31)
        };
        for round in 0..4000 {
            for (figure, most) in figures {
                let limit = most * (0.02 + 0.98 * drawn());
                // Of typed limits few have more than two decimals.
                let limit = if round % 2 == 0 { (limit * 100.0).round() / 100.0 } else { limit };
                let way = if drawn() < 0.5 { -1.0 } else { 1.0 };
                let value = limit * (1.0 + way * 10_f64.powf(-0.5 - 7.5 * drawn()));
                for units in &pages {
                    let (shown, beside) = against(figure, value, limit, units);
                    let ordered = (read(&shown) - read(&beside)) * way > 0.0;
                    assert!(ordered, "{figure:?}: {value} and {limit} read {shown}, {beside}");
                }
            }
        }
    }

    #[test]
    fn a_limit_is_shown_as_it_was_set() {
        let metric = Units::default();
        for (figure, value, limit, shown, beside) in [
            (Figure::LoadShare, 11.7, 12.0, "11.7", "12"),
            (Figure::LoadShare, 9.3, 12.5, "9", "12.5"),
            (Figure::LoadShare, 93.0, 75.0, "93", "75"),
            (Figure::PluckStiffness, 0.698, 0.7, "0.698", "0.70"),
            (Figure::PluckStiffness, 0.5, 0.725, "0.50", "0.725"),
            (Figure::Tension, 19.96, 20.0, "19.96", "20"),
            (Figure::Gauge, 0.71, 0.762, "0.71", "0.762"),
            (Figure::Length, 380.0, 380.04, "380", "380.04"),
            (Figure::Length, 400.0, 400.0, "400", "400"),
        ] {
            let texts = against(figure, value, limit, &metric);
            assert_eq!((&*texts.0, &*texts.1), (shown, beside), "{figure:?}");
        }
        assert_eq!(limit(Figure::PluckStiffness, 0.7, &metric), "0.70");
        let pounds = Units { force: ForceUnit::Lbf, ..metric };
        assert_eq!(limit(Figure::PluckStiffness, 0.7, &pounds), "4.0");
    }
}
