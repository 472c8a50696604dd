//! The upright axis of a panel: its range, and ticks at 1, 2 and 5 times a power of ten.

use crate::design::decimal::with_power;
use crate::design::figures::Scale;
use crate::engine::order::sort;
use crate::words::signed;

/// A value over this many times the 90th percentile is drawn at the edge, so that one slip of the
/// pen does not flatten the curve of all the others.
const OFF_SCALE: f64 = 8.0;
/// Numbers past this are taken as unknown; no quantity of a string comes near.
const ABSURD: f64 = 1e12;

/// From the bottom to the top of a panel.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Axis {
    low: f64,
    high: f64,
    log: bool,
}

/// Whether a value lies beyond an axis.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Reach {
    /// Below the bottom.
    Below,
    /// On the axis.
    Within,
    /// Above the top.
    Above,
}

impl Axis {
    /// An axis on which all `values` have room, but for those far beyond the rest. Each of
    /// `wanted` (limits) gets room too where it makes the axis at most half as long again, or
    /// little longer than the greatest value is high.
    pub fn around(values: &[f64], wanted: &[f64], scale: Scale) -> Self {
        let mut sorted: Vec<f64> = values.iter().copied().filter(|v| is_usable(*v)).collect();
        sort(&mut sorted, |one, other| one > other);
        let (Some(first), Some(last)) = (sorted.first(), sorted.last()) else {
            return Self { low: 0.0, high: 1.0, log: false };
        };
        if scale == Scale::Log && *first > 0.0 {
            let room = if last / first > 1.5 { 1.12 } else { 1.3 };
            return Self { low: first / room, high: last * room, log: true };
        }
        let (mut low, mut high) = (*first, robust_top(&sorted, OFF_SCALE));
        if low > 0.0 && (low < 0.3 * high || scale == Scale::FromZero) {
            low = 0.0;
        }
        let reach = 1.5 * (high - low).max(0.6 * high.abs());
        for limit in wanted.iter().copied().filter(|v| is_usable(*v)) {
            let with = (low.min(limit), high.max(limit));
            if with.1 - with.0 <= reach {
                (low, high) = with;
            }
        }
        let span = (high - low).max(0.02 * high.abs()).max(1e-9);
        let bottom = if low == 0.0 { 0.0 } else { low - 0.08 * span };
        Self { low: bottom, high: high + 0.08 * span, log: false }
    }

    /// The bottom and the top.
    pub const fn range(&self) -> (f64, f64) {
        (self.low, self.high)
    }

    /// Whether equal steps are equal ratios.
    pub const fn is_log(&self) -> bool {
        self.log
    }

    /// Where a value lies, 0 at the bottom and 1 at the top; what is beyond lies on the edge.
    pub fn fraction(&self, value: f64) -> f64 {
        let share = if self.log {
            (value.max(f64::MIN_POSITIVE) / self.low).ln() / (self.high / self.low).ln()
        } else {
            (value - self.low) / (self.high - self.low)
        };
        if share.is_finite() { share.clamp(0.0, 1.0) } else { 0.0 }
    }

    /// Whether a value lies beyond the axis.
    pub fn reach(&self, value: f64) -> Reach {
        if value > self.high {
            Reach::Above
        } else if value < self.low {
            Reach::Below
        } else {
            Reach::Within
        }
    }

    /// At most about `most` ticks from the bottom up, each with its label.
    pub fn ticks(&self, most: usize) -> Vec<(f64, String)> {
        let most = most.max(1);
        if self.log {
            for steps in [&[1.0, 2.0, 5.0][..], &[1.0, 5.0], &[1.0]] {
                let ticks = self.of_decades(steps);
                if (2..=most.max(2)).contains(&ticks.len()) {
                    return ticks.into_iter().map(|tick| (tick, label(tick, tick))).collect();
                }
            }
        }
        let step = nice_step((self.high - self.low) / (as_f64(most) + 0.9));
        let first = (self.low / step - 1e-9).ceil();
        (0..=2 * most)
            .map(|n| (first + as_f64(n)) * step)
            .take_while(|tick| *tick <= self.high + 1e-9 * step)
            // Adding nothing turns −0 into 0.
            .map(|tick| (tick + 0.0, label(tick + 0.0, step)))
            .collect()
    }

    fn of_decades(&self, steps: &[f64]) -> Vec<f64> {
        let mut ticks = Vec::new();
        let mut decade = 10f64.powf(self.low.log10().floor());
        while decade <= self.high && ticks.len() < 40 {
            let within = |tick: &f64| (self.low..=self.high).contains(tick);
            ticks.extend(steps.iter().map(|step| step * decade).filter(within));
            decade *= 10.0;
        }
        ticks
    }
}

/// Whether a number can be drawn.
pub(super) fn is_usable(value: f64) -> bool {
    value.is_finite() && value.abs() < ABSURD
}

/// The greatest of `sorted`, leaving out what is over `times` the 90th percentile. Of fewer than
/// five numbers none is left out.
pub(super) fn robust_top(sorted: &[f64], times: f64) -> f64 {
    let Some(last) = sorted.last() else { return 0.0 };
    let percentile = sorted[(sorted.len() - 1) * 9 / 10];
    if sorted.len() < 5 || percentile <= 0.0 {
        return *last;
    }
    let kept = sorted.partition_point(|value| *value <= times * percentile);
    sorted[kept.saturating_sub(1)]
}

/// The least of 1, 2, 5, 10 ... (and of 0.5, 0.2 ...) that is at least `least`.
pub fn nice_step(least: f64) -> f64 {
    if !(least > 0.0 && least.is_finite()) {
        return 1.0;
    }
    let decade = 10f64.powf(least.log10().floor());
    let room = 1.0 - 1e-9;
    let times = [1.0, 2.0, 5.0].into_iter().find(|times| times * decade >= least * room);
    times.unwrap_or(10.0) * decade
}

/// A number with the decimals that ticks `step` apart need.
fn label(value: f64, step: f64) -> String {
    if value.abs() >= 1e6 {
        return with_power(value).replace('-', "−");
    }
    let decimals = (0..6).find(|n| step >= 10f64.powi(-n) * (1.0 - 1e-9)).unwrap_or(6);
    signed(&format!("{value:.*}", usize::try_from(decimals).unwrap_or(0))).replace('-', "−")
}

fn as_f64(count: usize) -> f64 {
    f64::from(u32::try_from(count).unwrap_or(u32::MAX))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::testing::assert_close;

    fn labels(axis: &Axis, most: usize) -> Vec<String> {
        axis.ticks(most).into_iter().map(|(_, label)| label).collect()
    }

    #[test]
    fn steps_are_one_two_or_five() {
        for (least, step) in [
            (0.9, 1.0),
            (1.0, 1.0),
            (1.1, 2.0),
            (2.1, 5.0),
            (6.0, 10.0),
            (0.03, 0.05),
            (41.0, 50.0),
        ] {
            assert_close(nice_step(least), step, 1e-12, least);
        }
        assert_close(nice_step(f64::NAN), 1.0, 1e-12, "no number");
    }

    #[test]
    fn ticks_lie_on_the_axis_and_are_few() {
        for (low, high) in [(0.0, 250.0), (12.0, 13.0), (-3.0, 19.0), (0.001, 0.0013), (4e5, 9e5)] {
            for most in 1..8 {
                let axis = Axis::around(&[low, high], &[], Scale::Free);
                let ticks = axis.ticks(most);
                assert!(ticks.len() <= most + 1, "{low} to {high}: {ticks:?}");
                assert!(ticks.iter().all(|(tick, _)| axis.reach(*tick) == Reach::Within));
            }
        }
    }

    #[test]
    fn labels_have_the_decimals_of_their_step() {
        assert_eq!(
            labels(&Axis::around(&[0.4, 1.6], &[], Scale::Free), 4),
            ["0.0", "0.5", "1.0", "1.5"]
        );
        assert_eq!(
            labels(&Axis::around(&[10.0, 180.0], &[], Scale::Free), 4),
            ["0", "50", "100", "150"]
        );
        assert_eq!(
            labels(&Axis::around(&[-4.0, 9.0], &[], Scale::Free), 3),
            ["−5", "0", "5", "10"]
        );
    }

    #[test]
    fn a_log_axis_has_equal_ratios() {
        let axis = Axis::around(&[80.0, 1500.0], &[], Scale::Log);
        let (a, b, c) = (axis.fraction(100.0), axis.fraction(200.0), axis.fraction(400.0));
        assert_close(b - a, c - b, 1e-12, "an octave");
        assert_eq!(labels(&axis, 6), ["100", "200", "500", "1000"]);
        assert_eq!(labels(&axis, 2), ["100", "1000"]);
        assert!(!Axis::around(&[0.0, 10.0], &[], Scale::Log).is_log(), "0 has no logarithm");
    }

    #[test]
    fn a_limit_gets_room_only_within_reason() {
        let at =
            |values: &[f64], limit: f64, rule| Axis::around(values, &[limit], rule).reach(limit);
        assert_eq!(at(&[20.0, 80.0], 100.0, Scale::Free), Reach::Within);
        assert_eq!(at(&[20.0, 50.0], 100.0, Scale::Free), Reach::Above);
        assert_eq!(at(&[60.0, 72.0], 100.0, Scale::FromZero), Reach::Within);
        assert_eq!(at(&[1.1, 1.3], 0.7, Scale::Free), Reach::Within, "an even harp");
    }

    #[test]
    fn one_slip_does_not_flatten_the_others() {
        let mut values: Vec<f64> = (0..36).map(|n| 80.0 + f64::from(n)).collect();
        values.push(115_000.0);
        let axis = Axis::around(&values, &[], Scale::Free);
        assert!(axis.range().1 < 150.0, "{axis:?}");
        assert_eq!(axis.reach(115_000.0), Reach::Above);
        assert_close(axis.fraction(115_000.0), 1.0, 1e-12, "on the edge");
    }

    #[test]
    fn nothing_to_show_is_still_an_axis() {
        for values in [&[][..], &[f64::NAN], &[f64::INFINITY], &[0.0], &[7.0], &[-7.0], &[1e300]] {
            for scale in [Scale::Free, Scale::FromZero, Scale::Log] {
                let (low, high) = Axis::around(values, &[f64::NAN], scale).range();
                assert!(low.is_finite() && high.is_finite() && low < high, "{values:?}");
                let fraction = Axis::around(values, &[], scale).fraction(f64::NAN);
                assert!((0.0..=1.0).contains(&fraction));
            }
        }
    }
}
