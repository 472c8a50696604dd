//! What a panel can show of a figure: the title with its unit, the value of a string, and its limits.

use crate::design::display;
use crate::design::document::Units;
use crate::design::figures::{Allowed, Curve, Scale, Ticks, row};
use crate::engine::analysis::{Limits, StringFigures};
use crate::engine::figure::Figure;

use super::axis::is_usable;
use crate::words::signed;

/// What the maker allows, in the unit of the panel; an open side is `None`.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct TargetRange {
    /// The lowest that is allowed.
    pub low: Option<f64>,
    /// The highest that is allowed.
    pub high: Option<f64>,
}

/// How the curve of a figure is drawn; around the values for one that has none of its own.
fn curve(figure: Figure) -> Curve {
    let plain = Curve { scale: Scale::Free, ticks: Ticks::Three, limits: None };
    row(figure).curve.unwrap_or(plain)
}

/// The name with the unit: `Tension (N)`.
pub fn title(figure: Figure, units: &Units) -> String {
    let name = row(figure).name().said();
    match unit(figure, units) {
        "" => name.to_owned(),
        unit => format!("{name} ({unit})"),
    }
}

/// The unit of the page; empty for a pure number and where the name begins with it: `Turns of the pin`.
pub fn unit(figure: Figure, units: &Units) -> &'static str {
    let (name, unit) = (row(figure).name().english(), row(figure).unit.of_heading());
    let says_it = name.get(..unit.len()).is_some_and(|start| start.eq_ignore_ascii_case(unit));
    if says_it { "" } else { display::figure_unit(figure, units) }
}

/// The value of one string in the unit of the page; `None` where it is not known.
pub fn value(figure: Figure, figures: &StringFigures, units: &Units) -> Option<f64> {
    let value = display::on_the_page(figure, figure.value(figures).ok()?, units);
    is_usable(value).then_some(value)
}

/// The axis that suits.
pub fn scale(figure: Figure) -> Scale {
    curve(figure).scale
}

/// A value for an axis, plainly rounded: to three digits, and no finer than can be measured.
pub fn format(figure: Figure, value: f64, units: &Units) -> String {
    let decimals = match curve(figure).ticks {
        Ticks::Places(places) => row(figure).unit.places(places, units),
        Ticks::AsShown => return display::rounded(figure, value, units),
        Ticks::WholeFrom20 if value.abs() >= 20.0 => 0,
        Ticks::WholeFrom20 | Ticks::Three => match value.abs() {
            100.0.. => 0,
            10.0..100.0 => 1,
            1.0..10.0 => 2,
            _ => 3,
        },
    };
    let text = signed(&format!("{value:.decimals$}"));
    let is_zero = text.chars().all(|c| matches!(c, '-' | '0' | '.' | ','));
    if is_zero { text.replace('-', "") } else { text.replace('-', "−") }
}

/// What the limits allow.
pub fn band(figure: Figure, limits: &Limits, units: &Units) -> TargetRange {
    let Some(Allowed { of, .. }) = curve(figure).limits else { return TargetRange::default() };
    let on_page = |value: Option<f64>| {
        value.map(|value| display::on_the_page(figure, value, units)).filter(|v| is_usable(*v))
    };
    let [low, high] = of(limits).map(on_page);
    TargetRange { low, high }
}

/// The value at which a string breaks.
pub fn breaks_at(figure: Figure) -> Option<f64> {
    curve(figure).limits?.breaks_at
}

/// What the band means, in a few words; empty where there is none.
pub fn band_words(figure: Figure, limits: &Limits, units: &Units) -> String {
    let Some(Allowed { of, words, .. }) = curve(figure).limits else { return String::new() };
    let say = |value: Option<f64>| value.map(|value| display::limit(figure, value, units));
    let [low, high] = of(limits).map(say);
    words(&low.unwrap_or_default(), &high.unwrap_or_default())
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::charts::samples;
    use crate::design::document::{ForceUnit, GaugeUnit, LengthUnit};
    use crate::design::figures::WITH_CURVE;
    use crate::engine::analysis::analyse;
    use crate::testing::assert_close;

    fn imperial() -> Units {
        Units { length: LengthUnit::Inch, gauge: GaugeUnit::Thou, force: ForceUnit::Lbf }
    }

    #[test]
    fn titles_name_the_unit_of_the_document() {
        assert_eq!(title(Figure::Tension, &Units::default()), "Tension (N)");
        assert_eq!(title(Figure::Tension, &imperial()), "Tension (lbf)");
        assert_eq!(title(Figure::PluckStiffness, &imperial()), "Pluck stiffness (lbf/in)");
        assert_eq!(title(Figure::SemitonesToBreak, &imperial()), "Margin to breaking (semit.)");
    }

    #[test]
    fn values_follow_the_unit() {
        let figures = &analyse(&samples::harp(22)).strings[4];
        let metric = |of| value(of, figures, &Units::default()).unwrap();
        let inches = |of| value(of, figures, &imperial()).unwrap();
        assert_close(metric(Figure::Length), 25.4 * inches(Figure::Length), 1e-12, "length");
        assert_close(metric(Figure::Gauge), 25.4 * inches(Figure::Gauge), 1e-12, "gauge");
        // 1 lbf/in is 0.175 126 8 N/mm: the quotient of the exact pound-force and inch.
        let ratio = metric(Figure::PluckStiffness) / inches(Figure::PluckStiffness);
        assert_close(ratio, 0.175_126_8, 1e-6, "stiffness");
    }

    #[test]
    fn what_is_not_known_has_no_value() {
        let figures = &analyse(&samples::unknown(3)).strings[0];
        for figure in WITH_CURVE {
            assert_eq!(value(figure, figures, &Units::default()), None, "{figure:?}");
        }
    }

    #[test]
    fn limits_in_load_share_and_in_semitones_agree() {
        let limits = samples::harp(1).limits;
        let share = band(Figure::LoadShare, &limits, &Units::default());
        let steps = band(Figure::SemitonesToBreak, &limits, &Units::default());
        assert_eq!(share, TargetRange { low: Some(12.0), high: Some(75.0) });
        // Half of the breaking load is six semitones below it; three quarters are fewer.
        let low = steps.low.unwrap();
        assert!(low > 2.0 && low < 3.0, "{low}");
        assert!(steps.high.unwrap() > 12.0);
    }

    #[test]
    fn a_limit_beside_a_curve_is_the_one_that_was_set() {
        let limits = Limits { slack_share_percent: 12.5, ..samples::harp(1).limits };
        let words = band_words(Figure::LoadShare, &limits, &Units::default());
        assert_eq!(words, "slack under 12.5, working to 75");
    }

    #[test]
    fn values_are_rounded_plainly() {
        let say = |figure, value| format(figure, value, &Units::default());
        assert_eq!(say(Figure::Tension, 83.46), "83");
        assert_eq!(say(Figure::Tension, 7.345), "7.34");
        assert_eq!(say(Figure::PluckStiffness, 1.234), "1.23");
        assert_eq!(say(Figure::SemitonesToBreak, -2.04), "−2.0");
        assert_eq!(say(Figure::SemitonesToBreak, -0.04), "0.0");
        assert_eq!(say(Figure::Damping, 3.14e-4), "3.1·10⁻⁴");
        assert_eq!(say(Figure::CentsPerKelvin, -6.04), "−6.0");
        let limits = samples::harp(1).limits;
        let words = |figure| band_words(figure, &limits, &Units::default());
        assert_eq!(words(Figure::PluckStiffness), "target 0.70 to 1.90");
        assert_eq!(words(Figure::LoadShare), "slack under 12, working to 75");
        assert_eq!(words(Figure::Gauge), "");
    }
}
