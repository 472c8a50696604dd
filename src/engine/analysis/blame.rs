//! Which of two neighbours is to blame for a step between them: the one that was changed last; else the one without
//! which the values run on; else the one that lies farther from the line of the strings around.

use super::{Harp, StringFigures};
use crate::engine::construction::MakeUp;

/// How many strings on each side say where a string should lie. Common practice, no source.
const REACH: usize = 2;

/// A value of a string by its place; `None` where it is unknown or does not count.
pub type Values<'a> = &'a dyn Fn(usize) -> Option<f64>;

/// The strings of a harp, and the one that was changed last, where that is known.
pub(super) struct Blame<'a> {
    pub(super) harp: &'a Harp,
    pub(super) strings: &'a [StringFigures],
    pub(super) changed: Option<usize>,
}

impl Blame<'_> {
    /// Whether the upper of two strings is to blame for values that should rise toward the bass and fall from it to
    /// the next.
    pub(super) fn upper_breaks_order(&self, upper: usize, value: Values<'_>) -> bool {
        let lower = upper + 1;
        if let Some(upper_is_new) = self.upper_is_new(upper) {
            return upper_is_new;
        }
        let above = upper.checked_sub(1).and_then(value);
        let (long, short, below) = (value(upper), value(lower), value(lower + 1));
        let without_upper = above.is_none_or(|above| Some(above) <= short);
        let without_lower = below.is_none_or(|below| long <= Some(below));
        match (without_upper, without_lower) {
            (true, false) => true,
            (false, true) => false,
            _ => self.off(upper, (upper, lower), value) > self.off(lower, (upper, lower), value),
        }
    }

    /// Whether the upper of two strings is to blame for a jump of the feel where the make-up changes: the one that
    /// stands alone among strings of another make-up, else the one that departs farther from its own kind.
    pub(super) fn upper_jumps(&self, upper: usize) -> bool {
        let lower = upper + 1;
        if let Some(upper_is_new) = self.upper_is_new(upper) {
            return upper_is_new;
        }
        let is_alone = |index: usize, next: Option<usize>| {
            next.is_none_or(|next| !self.are_alike(index, next))
        };
        let upper_alone = is_alone(upper, upper.checked_sub(1));
        let lower_alone = is_alone(lower, Some(lower + 1));
        if upper_alone != lower_alone {
            return upper_alone;
        }
        // Two that stand alone have no kind of their own to depart from.
        let kin = |index: usize, other: usize| upper_alone || self.are_alike(index, other);
        let feel = |index: usize| Some(self.strings.get(index)?.pluck_stiffness.ok()?.to_n_per_m());
        let off = |index: usize| {
            self.off(index, (upper, lower), &|other| feel(other).filter(|_| kin(index, other)))
        };
        off(upper) > off(lower)
    }

    /// Whether the upper or the lower is the string that was changed last.
    fn upper_is_new(&self, upper: usize) -> Option<bool> {
        let changed = self.changed?;
        (changed == upper || changed == upper + 1).then_some(changed == upper)
    }

    /// Whether two strings are made of the same.
    pub(super) fn are_alike(&self, one: usize, other: usize) -> bool {
        let make_up = |index: usize| -> Option<&MakeUp> {
            self.harp.strings.get(index)?.make_up.as_ref().ok()
        };
        make_up(one).zip(make_up(other)).is_some_and(|(one, other)| one.has_materials_of(other))
    }

    /// How far a string lies, as a ratio, from the line of the strings around, the pair in question left out.
    fn off(&self, index: usize, pair: (usize, usize), value: Values<'_>) -> f64 {
        let others = |other: usize| value(other).filter(|_| other != pair.0 && other != pair.1);
        match (value(index), on_line(index, self.strings.len(), &others)) {
            (Some(is), Some(should)) => (is / should).ln().abs(),
            _ => 0.0,
        }
    }
}

/// Where a string should lie by the nearest strings on both sides: on the straight line that fits the logarithms of
/// their values best; `None` where there are none.
pub fn on_line(index: usize, count: usize, value: Values<'_>) -> Option<f64> {
    let above = (0..index).rev().filter_map(|at| Some((at, value(at)?))).take(REACH);
    let below = (index + 1..count).filter_map(|at| Some((at, value(at)?))).take(REACH);
    let (mut n, mut x, mut y, mut xx, mut xy) = (0.0, 0.0, 0.0, 0.0, 0.0);
    for (at, value) in above.chain(below) {
        #[expect(clippy::cast_precision_loss, reason = "a harp has few strings")]
        let (from, log) = (at as f64 - index as f64, value.ln());
        n += 1.0;
        x += from;
        y += log;
        xx += from * from;
        xy += from * log;
    }
    if n == 0.0 {
        return None;
    }
    let spread = n * xx - x * x;
    let slope = if spread > 0.0 { (n * xy - x * y) / spread } else { 0.0 };
    Some(((y - slope * x) / n).exp())
}
