//! A first guess: of which string most of the peaks are partials.
//!
//! Each strong peak is taken for each of the first partials in turn. From there the others are followed upwards, the
//! line through those that were found saying where to look for the next. A guess gains by the peaks that it explains
//! and loses by the partials that should lie between those and do not: so half the pitch, which explains as much,
//! loses by every second one, and twice the pitch does not explain the others.

use super::CENTS_PER_RATIO;
use super::fit::{Known, Line, Partial, Series};
use super::spectrum::{Peak, least_of_strongest};

/// How many of the strongest peaks are taken for partials of what sounds.
const STRONGEST: usize = 10;
/// The highest partial that a strong peak is taken for.
const HIGHEST_START: u32 = 12;
/// The highest partial that is followed.
pub(super) const HIGHEST: u32 = 24;
/// A partial is looked for so far from where it should lie, in cents, and within this share of the way to the next.
const REACH_CENTS: f64 = 35.0;
const REACH_SHARE: f64 = 0.3;
/// How much a partial that is missing weighs against one that is found.
const MISSING: f64 = 0.75;
/// Doubt about a peak while partials are followed, in cents.
const FOLLOWED_OFF_CENTS: f64 = 3.0;

/// What is asked of a pitch: what is known of its inharmonicity, and how likely it is, up to 1.
pub(super) struct Likely<'a> {
    pub known: &'a dyn Fn(f64) -> Known,
    pub share: &'a dyn Fn(f64) -> f64,
}

/// The string that explains most, with its partials from the lowest up.
pub(super) fn guess(peaks: &[Peak], likely: &Likely<'_>) -> Option<(Series, Vec<Partial>)> {
    let strongest = peaks.iter().map(|peak| peak.power).fold(0.0, f64::max);
    let least = least_of_strongest(peaks, STRONGEST);
    let whole: f64 = peaks.iter().map(|peak| peak.power).sum();
    let mut best: Option<(f64, Series, Vec<Partial>)> = None;
    for start in peaks.iter().filter(|peak| peak.power >= least) {
        for n in 1..=HIGHEST_START {
            let near_hz = start.hz / f64::from(n);
            let share = (likely.share)(near_hz);
            if share <= 0.0 {
                continue;
            }
            let known = (likely.known)(near_hz);
            let as_first = Series { first_hz: 1.0, b: known.b, off_cents: 0.0 };
            let first_hz = start.hz / as_first.partial_hz(n);
            let Some((series, found)) = follow(peaks, Series { first_hz, ..as_first }, known)
            else {
                continue;
            };
            let explained: f64 = found.iter().map(|partial| partial.power).sum();
            let score = share * explained / whole * score(&found, strongest);
            if best.as_ref().is_none_or(|(most, ..)| score > *most) {
                best = Some((score, series, found));
            }
        }
    }
    best.filter(|(score, ..)| *score > 0.0).map(|(_, series, found)| (series, found))
}

/// Follows the partials of a string upwards.
pub(super) fn follow(
    peaks: &[Peak],
    start: Series,
    known: Known,
) -> Option<(Series, Vec<Partial>)> {
    let mut line = Line::known(known);
    // The guess itself counts a little, so that the line has a place to begin.
    line.add(1, 1.0, 2.0 * REACH_CENTS / CENTS_PER_RATIO);
    let mut series = start;
    let mut found = Vec::new();
    for n in 1..=HIGHEST {
        let at = series.partial_hz(n);
        if peaks.last().is_none_or(|last| at > 1.03 * last.hz) {
            break;
        }
        let share = REACH_SHARE * CENTS_PER_RATIO / f64::from(n);
        let Some(peak) = strongest_near(peaks, at, REACH_CENTS.min(share)) else { continue };
        line.add(n, peak.hz / start.first_hz, FOLLOWED_OFF_CENTS / CENTS_PER_RATIO);
        series = line.series(start.first_hz, known)?;
        found.push(Partial { n, hz: peak.hz, off_hz: peak.off_hz, power: peak.power });
    }
    (!found.is_empty()).then_some((series, found))
}

/// The peak within reach that is strongest, those further off counting less.
fn strongest_near(peaks: &[Peak], hz: f64, reach_cents: f64) -> Option<&Peak> {
    let ratio = 1.0 + reach_cents / CENTS_PER_RATIO;
    let from = peaks.partition_point(|peak| peak.hz < hz / ratio);
    let near = peaks[from..].iter().take_while(|peak| peak.hz <= hz * ratio);
    let worth = |peak: &Peak| {
        let off = CENTS_PER_RATIO * (peak.hz / hz - 1.0) / reach_cents;
        peak.power * (-4.0 * off * off).exp()
    };
    near.max_by(|one, other| worth(one).total_cmp(&worth(other)))
}

/// What is explained less what is missing. A partial should be about as strong as the two beside it.
fn score(found: &[Partial], strongest: f64) -> f64 {
    let Some(last) = found.last() else { return 0.0 };
    let mut weights = vec![0.0; last.n as usize + 2];
    for partial in found {
        weights[partial.n as usize] = (partial.power / strongest).powf(0.25);
    }
    let mut score = 0.0;
    for n in 1..=last.n as usize {
        let own = weights[n];
        let below = weights[..n].iter().rev().find(|weight| **weight > 0.0);
        let above = weights[n + 1..].iter().find(|weight| **weight > 0.0);
        let usual = match (below, above) {
            (Some(below), Some(above)) => 0.5 * (below + above),
            (None, Some(above)) => 0.5 * above,
            _ => 0.0,
        };
        score += own - MISSING * (usual - own).max(0.0);
    }
    score
}

#[cfg(test)]
mod tests {
    use super::*;

    const ANY: Likely<'static> =
        Likely { known: &|_| Known { b: 1e-4, off: 3e-5 }, share: &|_| 1.0 };

    /// Peaks of a stiff string of `B` = 1e-4, each with its amplitude.
    fn peaks(first_hz: f64, amplitudes: &[(u32, f64)]) -> Vec<Peak> {
        let own = Series { first_hz, b: 1e-4, off_cents: 0.0 };
        let peak = |(n, amplitude): &(u32, f64)| Peak {
            hz: own.partial_hz(*n),
            power: amplitude * amplitude,
            off_hz: 0.01,
        };
        amplitudes.iter().map(peak).collect()
    }

    #[track_caller]
    fn assert_guessed(peaks: &[Peak], hz: f64) {
        let (got, _) = guess(peaks, &ANY).expect("a string");
        assert!((got.first_hz / hz - 1.0).abs() < 1e-3, "{} for {hz}", got.first_hz);
    }

    #[test]
    fn a_string_is_guessed_whichever_of_its_partials_are_there() {
        let all = |count: u32| (1..=count).map(|n| (n, 1.0 / f64::from(n))).collect::<Vec<_>>();
        assert_guessed(&peaks(440.0, &all(1)), 440.0);
        assert_guessed(&peaks(440.0, &all(2)), 440.0);
        assert_guessed(&peaks(110.0, &all(16)), 110.0);
        // The first three hardly sound in the bass.
        assert_guessed(&peaks(40.0, &all(14)[3..]), 40.0);
        // Plucked in the middle, and at a third: every second or third one is missing.
        let but = |of: u32| all(15).into_iter().filter(|(n, _)| n % of != 0).collect::<Vec<_>>();
        assert_guessed(&peaks(110.0, &but(2)), 110.0);
        assert_guessed(&peaks(110.0, &but(3)), 110.0);
    }

    #[test]
    fn of_two_strings_the_louder_is_guessed() {
        let louder: Vec<(u32, f64)> = (1..=8).map(|n| (n, 1.0 / f64::from(n))).collect();
        let quieter: Vec<(u32, f64)> = louder.iter().map(|(n, a)| (*n, 0.3 * a)).collect();
        for interval in [1.122, 1.26, 1.335, 1.498, 2.003, 0.749] {
            let mut both = peaks(200.0, &louder);
            both.extend(peaks(200.0 * interval, &quieter));
            both.sort_by(|one, other| one.hz.total_cmp(&other.hz));
            assert_guessed(&both, 200.0);
        }
    }

    #[test]
    fn without_peaks_or_likely_pitches_there_is_no_guess() {
        assert!(guess(&[], &ANY).is_none());
        let unlikely = Likely { share: &|_| 0.0, ..ANY };
        assert!(guess(&peaks(440.0, &[(1, 1.0), (2, 0.5)]), &unlikely).is_none());
    }
}
