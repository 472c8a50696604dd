//! What a panel can show: the title with its unit, the value of a string, and its limits.

use crate::design::display;
use crate::design::document::{ForceUnit, GaugeUnit, LengthUnit, Units};
use crate::engine::analysis::{Limits, StringFigures};
use crate::engine::figure::Figure;
use crate::engine::mechanics::semitones_to_break;
use crate::engine::units::{Force, Length, Stiffness};

use super::axis::{Rule, is_usable};

/// A quantity that has a curve.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Quantity {
    Tension,
    PluckStiffness,
    LoadShare,
    SemitonesToBreak,
    Length,
    Gauge,
    LinearDensity,
    Stress,
    Partial8,
    Impedance,
    Damping,
    PluckForce,
    Glide,
    Stretch,
    PinTurns,
    CentsPerPinDegree,
    CentsPerKelvin,
    /// Where the lever or the disc of the first semitone touches.
    SemitonePlace,
    /// How sharp that semitone is with the contact at its nominal place.
    NominalError,
}

/// What the maker allows, in the unit of the panel; an open side is `None`.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Band {
    /// The least that is allowed.
    pub low: Option<f64>,
    /// The most that is allowed.
    pub high: Option<f64>,
}

impl Quantity {
    /// Every quantity, in the order in which a list shows them.
    pub const ALL: [Self; 19] = [
        Self::Tension,
        Self::PluckStiffness,
        Self::LoadShare,
        Self::SemitonesToBreak,
        Self::Length,
        Self::Gauge,
        Self::LinearDensity,
        Self::Stress,
        Self::Partial8,
        Self::Impedance,
        Self::Damping,
        Self::PluckForce,
        Self::Glide,
        Self::Stretch,
        Self::PinTurns,
        Self::CentsPerPinDegree,
        Self::CentsPerKelvin,
        Self::SemitonePlace,
        Self::NominalError,
    ];

    /// The name without the unit.
    pub const fn name(self) -> &'static str {
        match self {
            Self::Tension => "Tension",
            Self::PluckStiffness => "Pluck stiffness",
            Self::LoadShare => "Load share",
            Self::SemitonesToBreak => "Semitones to break",
            Self::Length => "Vibrating length",
            Self::Gauge => "Gauge",
            Self::LinearDensity => "Mass per metre",
            Self::Stress => "Stress",
            Self::Partial8 => "Partial 8",
            Self::Impedance => "Impedance",
            Self::Damping => "Damping",
            Self::PluckForce => "Force of a pluck",
            Self::Glide => "Glide of a pluck",
            Self::Stretch => "Stretch",
            Self::PinTurns => "Turns of the pin",
            Self::CentsPerPinDegree => "Cents per degree of the pin",
            Self::CentsPerKelvin => "Cents per °C of warmth",
            Self::SemitonePlace => "Lever or first disc",
            Self::NominalError => "Error at the nominal place",
        }
    }

    /// Whether it may be below nothing.
    pub const fn is_signed(self) -> bool {
        matches!(
            self,
            Self::SemitonesToBreak | Self::Partial8 | Self::CentsPerKelvin | Self::NominalError
        )
    }

    /// The figure that it shows of a string; `None` for what is read off the place of a contact.
    pub const fn figure(self) -> Option<Figure> {
        Some(match self {
            Self::Tension => Figure::Tension,
            Self::PluckStiffness => Figure::PluckStiffness,
            Self::LoadShare => Figure::LoadShare,
            Self::SemitonesToBreak => Figure::SemitonesToBreak,
            Self::Length => Figure::Length,
            Self::Gauge => Figure::Gauge,
            Self::LinearDensity => Figure::LinearDensity,
            Self::Stress => Figure::Stress,
            Self::Partial8 => Figure::Partial8,
            Self::Impedance => Figure::Impedance,
            Self::Damping => Figure::Damping,
            Self::PluckForce => Figure::PluckForce,
            Self::Glide => Figure::Glide,
            Self::Stretch => Figure::Stretch,
            Self::PinTurns => Figure::PinTurns,
            Self::CentsPerPinDegree => Figure::CentsPerPinDegree,
            Self::CentsPerKelvin => Figure::CentsPerKelvin,
            Self::SemitonePlace | Self::NominalError => return None,
        })
    }

    /// The unit in which it is shown; empty where the name says it.
    pub const fn unit(self, units: &Units) -> &'static str {
        match self {
            Self::SemitonesToBreak => "",
            Self::SemitonePlace => display::length_unit(units.length),
            Self::NominalError => "cents",
            _ => match self.figure() {
                Some(figure) => display::figure_unit(figure, units),
                None => "",
            },
        }
    }

    /// The name with the unit: `Tension (N)`.
    pub fn title(self, units: &Units) -> String {
        match self.unit(units) {
            "" => self.name().to_owned(),
            unit => format!("{} ({unit})", self.name()),
        }
    }

    /// The value of one string in the unit of [`unit`](Self::unit); `None` where it is not known.
    pub fn value(self, figures: &StringFigures, units: &Units) -> Option<f64> {
        let value = match (self, self.figure()) {
            (_, Some(figure)) => display::on_the_page(figure, figure.value(figures).ok()?, units),
            (Self::NominalError, _) => {
                figures.lever.or(figures.disc_natural).ok()?.nominal_error_cents
            }
            _ => length(figures.lever.or(figures.disc_natural).ok()?.distance, units),
        };
        is_usable(value).then_some(value)
    }

    /// The figure of one string in the words of the string chart; `None` where it is not known.
    pub fn words(self, figures: &StringFigures, units: &Units) -> Option<String> {
        let of = |figure| display::figure(figure, figures, units).ok();
        match (self, self.figure()) {
            (_, Some(figure)) => of(figure),
            (Self::NominalError, _) => self.value(figures, units).map(display::cents),
            _ => of(Figure::Lever).or_else(|| of(Figure::DiscNatural)),
        }
    }

    /// The axis that suits: of equal ratios where a harp spans a decade or more and an octave is a
    /// ratio; from zero where the value is a share.
    pub const fn rule(self) -> Rule {
        match self {
            Self::Length | Self::LinearDensity | Self::Impedance | Self::Damping => Rule::Log,
            Self::LoadShare => Rule::FromZero,
            _ => Rule::Free,
        }
    }

    /// A value for an axis, plainly rounded: to three figures, and no finer than can be measured.
    pub fn format(self, value: f64, units: &Units) -> String {
        if self == Self::Damping {
            return display::rounded(Figure::Damping, value, units);
        }
        let decimals = match self {
            Self::LoadShare => 0,
            Self::SemitonesToBreak
            | Self::CentsPerPinDegree
            | Self::CentsPerKelvin
            | Self::NominalError => 1,
            Self::Length | Self::SemitonePlace | Self::Stretch => match units.length {
                LengthUnit::Mm => 0,
                LengthUnit::Inch => 2,
            },
            Self::Gauge => match units.gauge {
                GaugeUnit::Mm => 2,
                GaugeUnit::Thou => 0,
            },
            Self::Stress => 0,
            Self::Tension if value.abs() >= 20.0 => 0,
            _ => match value.abs() {
                100.0.. => 0,
                10.0..100.0 => 1,
                1.0..10.0 => 2,
                _ => 3,
            },
        };
        let text = format!("{value:.decimals$}");
        let is_zero = text.chars().all(|c| matches!(c, '-' | '0' | '.'));
        if is_zero { text.replace('-', "") } else { text.replace('-', "−") }
    }

    /// What the limits allow.
    pub fn band(self, limits: &Limits, units: &Units) -> Band {
        let (low, high) = match self {
            Self::Tension => (Some(force(limits.least_tension, units)), None),
            Self::PluckStiffness => {
                let (low, high) = limits.stiffness_band;
                (Some(stiffness(low, units)), Some(stiffness(high, units)))
            }
            Self::LoadShare => {
                (Some(limits.slack_share_percent), Some(limits.working_share_percent))
            }
            Self::SemitonesToBreak => {
                let at = |percent| semitones_to_break(Force::from_n(percent), Force::from_n(100.0));
                (Some(at(limits.working_share_percent)), Some(at(limits.slack_share_percent)))
            }
            Self::Partial8 => (None, Some(limits.partial_8_cents)),
            _ => (None, None),
        };
        Band { low: low.filter(|v| is_usable(*v)), high: high.filter(|v| is_usable(*v)) }
    }

    /// The value at which a string breaks.
    pub const fn breaks_at(self) -> Option<f64> {
        match self {
            Self::LoadShare => Some(100.0),
            Self::SemitonesToBreak => Some(0.0),
            _ => None,
        }
    }

    /// What the band means, in a few words; empty where there is none.
    pub fn band_words(self, band: &Band, units: &Units) -> String {
        let say = |value: Option<f64>| value.map(|v| trimmed(&self.format(v, units)));
        match (self, say(band.low), say(band.high)) {
            (Self::LoadShare, Some(low), Some(high)) => {
                format!("slack under {low}, working to {high}")
            }
            (Self::SemitonesToBreak, Some(low), _) => format!("working from {low} up"),
            (_, Some(low), Some(high)) => format!("target {low} to {high}"),
            (_, Some(low), None) => format!("least {low}"),
            (_, None, Some(high)) => format!("limit {high}"),
            (_, None, None) => String::new(),
        }
    }
}

/// Without the zeros after the point that say nothing.
fn trimmed(text: &str) -> String {
    if text.contains('.') {
        text.trim_end_matches('0').trim_end_matches('.').to_owned()
    } else {
        text.to_owned()
    }
}

fn force(force: Force, units: &Units) -> f64 {
    match units.force {
        ForceUnit::Newton => force.to_n(),
        ForceUnit::Kgf => force.to_kgf(),
        ForceUnit::Lbf => force.to_lbf(),
    }
}

fn stiffness(stiffness: Stiffness, units: &Units) -> f64 {
    match units.force {
        ForceUnit::Newton => stiffness.to_n_per_mm(),
        ForceUnit::Kgf => stiffness.to_kgf_per_mm(),
        ForceUnit::Lbf => stiffness.to_lbf_per_inch(),
    }
}

/// A vibrating length in the unit of the page.
pub(super) fn length(length: Length, units: &Units) -> f64 {
    match units.length {
        LengthUnit::Mm => length.to_mm(),
        LengthUnit::Inch => length.to_inch(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::charts::samples;
    use crate::engine::analysis::analyse;
    use crate::testing::assert_close;

    fn imperial() -> Units {
        Units { length: LengthUnit::Inch, gauge: GaugeUnit::Thou, force: ForceUnit::Lbf }
    }

    #[test]
    fn titles_name_the_unit_of_the_document() {
        assert_eq!(Quantity::Tension.title(&Units::default()), "Tension (N)");
        assert_eq!(Quantity::Tension.title(&imperial()), "Tension (lbf)");
        assert_eq!(Quantity::PluckStiffness.title(&imperial()), "Pluck stiffness (lbf/in)");
        assert_eq!(Quantity::SemitonesToBreak.title(&imperial()), "Semitones to break");
    }

    #[test]
    fn values_follow_the_unit() {
        let figures = &analyse(&samples::harp(22)).strings[4];
        let metric = |q: Quantity| q.value(figures, &Units::default()).unwrap();
        let inches = |q: Quantity| q.value(figures, &imperial()).unwrap();
        assert_close(metric(Quantity::Length), 25.4 * inches(Quantity::Length), 1e-12, "length");
        assert_close(metric(Quantity::Gauge), 0.0254 * inches(Quantity::Gauge), 1e-12, "gauge");
        // 1 lbf/in is 0.175 126 8 N/mm: the quotient of the exact pound-force and inch.
        let ratio = metric(Quantity::PluckStiffness) / inches(Quantity::PluckStiffness);
        assert_close(ratio, 0.175_126_8, 1e-6, "stiffness");
    }

    #[test]
    fn what_is_not_known_has_no_value() {
        let figures = &analyse(&samples::unknown(3)).strings[0];
        for quantity in Quantity::ALL {
            assert_eq!(quantity.value(figures, &Units::default()), None, "{quantity:?}");
        }
    }

    #[test]
    fn limits_in_load_share_and_in_semitones_agree() {
        let limits = samples::harp(1).limits;
        let share = Quantity::LoadShare.band(&limits, &Units::default());
        let steps = Quantity::SemitonesToBreak.band(&limits, &Units::default());
        assert_eq!(share, Band { low: Some(12.0), high: Some(75.0) });
        // Half of the breaking load is six semitones below it; three quarters are fewer.
        let low = steps.low.unwrap();
        assert!(low > 2.0 && low < 3.0, "{low}");
        assert!(steps.high.unwrap() > 12.0);
    }

    #[test]
    fn values_are_rounded_plainly() {
        let say = |quantity: Quantity, value| quantity.format(value, &Units::default());
        assert_eq!(say(Quantity::Tension, 83.46), "83");
        assert_eq!(say(Quantity::Tension, 7.345), "7.34");
        assert_eq!(say(Quantity::PluckStiffness, 1.234), "1.23");
        assert_eq!(say(Quantity::SemitonesToBreak, -2.04), "−2.0");
        assert_eq!(say(Quantity::SemitonesToBreak, -0.04), "0.0");
        assert_eq!(say(Quantity::Damping, 3.14e-4), "3.1·10⁻⁴");
        assert_eq!(say(Quantity::CentsPerKelvin, -6.04), "−6.0");
        let band = Quantity::PluckStiffness.band(&samples::harp(1).limits, &Units::default());
        let words = Quantity::PluckStiffness.band_words(&band, &Units::default());
        assert_eq!(words, "target 0.7 to 1.9");
    }
}
