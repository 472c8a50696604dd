//! Many values along the compass made a curve of few points.

use super::{Point, rounded};

/// How far a string may be off, as a logarithm, before it pulls the curve less than its distance: jumps where the
/// material changes, and single strings, are not followed. Chosen for this project, no source.
const USUAL_OFF: f64 = 0.05;
/// The least distance of two points of a thinned curve, in keys: a jump is no slope.
const APART: f64 = 5.0;
/// By how much a further point must lessen what is off, as a share, and below which mean square of the
/// logarithm (1 %) no further point is sought.
const WORTH: f64 = 0.85;
const GOOD: f64 = 1e-4;
/// Rounds of weighing again.
const ROUNDS: usize = 12;

/// A curve of at most `most` points near the given values, which come in order of their places.
///
/// The points lie at the given places, the first and the last among them; one by one, that place is taken which
/// lessens most what is off. Their values are those of least squares in the logarithm, where a value that is more
/// than 5 % off counts by its distance and not by its square (P. J. Huber, Robust estimation of a location
/// parameter, 1964, from memory), found by weighing again.
pub fn thin(values: &[Point], most: usize) -> Vec<Point> {
    let (Some(first), Some(last)) = (values.first(), values.last()) else { return Vec::new() };
    if most < 2 || last.0 <= first.0 {
        return vec![(first.0, rounded(first.1))];
    }
    let logs: Vec<Point> = values.iter().map(|(place, value)| (*place, value.ln())).collect();
    let mut knots = vec![first.0, last.0];
    let (mut fitted, mut loss) = fit(&logs, &knots);
    let count: f64 = logs.iter().map(|_| 1.0).sum();
    while knots.len() < most && loss > GOOD * count {
        let mut best: Option<(Vec<f64>, Vec<f64>, f64)> = None;
        for (place, _) in &logs {
            if knots.iter().any(|knot| (knot - place).abs() < APART) {
                continue;
            }
            let mut tried = knots.clone();
            tried.insert(knots.iter().filter(|knot| *knot < place).count(), *place);
            let (its_fit, its_loss) = fit(&logs, &tried);
            if best.as_ref().is_none_or(|best| its_loss < best.2) {
                best = Some((tried, its_fit, its_loss));
            }
        }
        match best {
            Some(better) if better.2 < WORTH * loss => (knots, fitted, loss) = better,
            _ => break,
        }
    }
    knots.into_iter().zip(fitted).map(|(place, log)| (place, rounded(log.exp()))).collect()
}

/// The logarithms at the knots, and what remains off.
fn fit(logs: &[Point], knots: &[f64]) -> (Vec<f64>, f64) {
    let mut weights = vec![1.0; logs.len()];
    let mut at = vec![0.0; knots.len()];
    for _ in 0..ROUNDS {
        at = weighed(logs, knots, &weights);
        for (weight, (place, log)) in weights.iter_mut().zip(logs) {
            let off = (log - on(knots, &at, *place)).abs();
            *weight = if off > USUAL_OFF { USUAL_OFF / off } else { 1.0 };
        }
    }
    let lost = logs.iter().map(|(place, log)| {
        let off = (log - on(knots, &at, *place)).abs();
        if off > USUAL_OFF { USUAL_OFF * (2.0 * off - USUAL_OFF) } else { off * off }
    });
    let lost = lost.sum();
    (at, lost)
}

/// The knot left of a place and how far the place lies on the way to the next one.
fn between(knots: &[f64], place: f64) -> (usize, f64) {
    let right = knots.iter().position(|knot| *knot >= place).unwrap_or(knots.len() - 1).max(1);
    let (from, to) = (knots[right - 1], knots[right]);
    (right - 1, ((place - from) / (to - from)).clamp(0.0, 1.0))
}

fn on(knots: &[f64], at: &[f64], place: f64) -> f64 {
    let (left, share) = between(knots, place);
    (1.0 - share) * at[left] + share * at[left + 1]
}

/// Weighed least squares of a polyline: its normal equations have three diagonals.
fn weighed(logs: &[Point], knots: &[f64], weights: &[f64]) -> Vec<f64> {
    let count = knots.len();
    let (mut middle, mut beside, mut right) =
        (vec![0.0; count], vec![0.0; count], vec![0.0; count]);
    for ((place, log), weight) in logs.iter().zip(weights) {
        let (left, share) = between(knots, *place);
        let (a, b) = (1.0 - share, share);
        middle[left] += weight * a * a;
        middle[left + 1] += weight * b * b;
        beside[left] += weight * a * b;
        right[left] += weight * a * log;
        right[left + 1] += weight * b * log;
    }
    for place in 1..count {
        let share = beside[place - 1] / middle[place - 1];
        middle[place] -= share * beside[place - 1];
        right[place] -= share * right[place - 1];
    }
    for place in (0..count).rev() {
        let next = if place + 1 < count { beside[place] * right[place + 1] } else { 0.0 };
        right[place] = (right[place] - next) / middle[place];
    }
    right
}

#[cfg(test)]
mod tests {
    use super::super::value_at;
    use super::*;
    use crate::testing::assert_close;

    /// One value for each key from 30 to 99.
    fn along(value: impl Fn(f64) -> f64) -> Vec<Point> {
        (30..100).map(|key| (f64::from(key), value(f64::from(key)))).collect()
    }

    #[test]
    fn a_curve_of_few_points_comes_back() {
        let points = [(30.0, 0.6), (52.0, 1.2), (75.0, 0.9), (99.0, 0.7)];
        let thinned = thin(&along(|key| value_at(&points, key).unwrap()), 7);
        for key in 30..100 {
            let (is, was) = (value_at(&thinned, f64::from(key)), value_at(&points, f64::from(key)));
            assert_close(is.unwrap(), was.unwrap(), 0.02, format_args!("{key}"));
        }
        assert_eq!(thin(&along(|_| 0.84), 7), [(30.0, 0.84), (99.0, 0.84)]);
    }

    #[test]
    fn single_strings_do_not_bend_the_curve() {
        let values = along(|key| if [41.0, 60.0, 61.0, 88.0].contains(&key) { 3.0 } else { 1.0 });
        for (place, value) in thin(&values, 7) {
            assert_close(value, 1.0, 0.02, format_args!("{place}"));
        }
    }

    #[test]
    fn no_more_points_than_asked_for_and_none_from_nothing() {
        let wild = along(|key| 1.0 + 0.5 * (key * 0.5).sin());
        assert!(thin(&wild, 5).len() <= 5);
        assert_eq!(thin(&[], 7), []);
        assert_eq!(thin(&[(60.0, 0.8)], 7), [(60.0, 0.8)]);
        assert_eq!(thin(&[(60.0, 0.8), (61.0, 1.6)], 7), [(60.0, 0.8), (61.0, 1.6)]);
    }
}
