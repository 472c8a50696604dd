//! Lengths scaled, stretched and faired, and how uneven they are.

use std::ops::Range;

use super::bounds::known_m;
use super::least::Problem;
use super::stiff;
use crate::engine::analysis::{Known, LENGTH_M, Unknown};
use crate::engine::units::Length;

/// How smooth a curve is to be, in words.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum Strength {
    /// Only what is rougher than an octave of a diatonic harp goes.
    ALittle,
    /// Waves of an octave go too.
    #[default]
    Well,
    /// As smooth as what is held allows.
    Fully,
}

impl Strength {
    /// The wave in the curve of so many strings of which half is left: 7 strings, the octave of a diatonic harp; 14;
    /// or 16 times the strings there are, which leaves less than a hundred-thousandth of any wave that is no longer
    /// than twice the harp.
    pub fn waves(self, strings: usize) -> f64 {
        match self {
            Self::ALittle => 7.0,
            Self::Well => 14.0,
            Self::Fully => (0..strings.max(1)).map(|_| 16.0).sum(),
        }
    }
}

/// How uneven lengths are: the strings that stand out most, by their index.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Unevenness {
    /// The greatest second difference of the logarithm of the length, `ln(L₊ L₋/L²)`, by its size.
    pub second_difference: Option<(usize, f64)>,
    /// The greatest kink: how far a bridge pin would have to move along its string to lie on the cubic through the
    /// two neighbours on either side, `(−L₋₋ + 4 L₋ + 4 L₊ − L₊₊)/6 − L`. For strings that stand evenly; above 0 if
    /// the string must be longer.
    pub kink: Option<(usize, Length)>,
}

/// How uneven lengths are; places where a neighbour lacks its length are left out.
pub fn unevenness(lengths: &[Known<Length>]) -> Unevenness {
    let known = |index: usize| lengths.get(index).and_then(|length| known_m(*length));
    let log = |index: usize| known(index).map(f64::ln);
    let mut uneven = Unevenness::default();
    for index in 1..lengths.len() {
        let second = || Some(log(index - 1)? - 2.0 * log(index)? + log(index + 1)?);
        if let Some(second) = second()
            && uneven.second_difference.is_none_or(|(_, most)| second.abs() > most.abs())
        {
            uneven.second_difference = Some((index, second));
        }
        let kink = || {
            let near = known(index - 1)? + known(index + 1)?;
            let far = known(index.checked_sub(2)?)? + known(index + 2)?;
            Some((4.0 * near - far) / 6.0 - known(index)?)
        };
        if let Some(kink) = kink()
            && uneven.kink.is_none_or(|(_, most)| kink.abs() > most.to_m().abs())
        {
            uneven.kink = Some((index, Length::from_m(kink)));
        }
    }
    uneven
}

/// Every length times a ratio. One that would be no length any more says [`Unknown::OutOfReach`].
///
/// # Example
///
/// A tenth longer.
///
/// ```
/// use stringloft::engine::{lengths::scale, units::Length};
///
/// let longer = scale(&[Ok(Length::from_mm(500.0))], 1.1);
/// assert!((longer[0].expect("a length").to_mm() - 550.0).abs() < 1e-9);
/// ```
pub fn scale(lengths: &[Known<Length>], ratio: f64) -> Vec<Known<Length>> {
    lengths.iter().map(|length| times(*length, ratio)).collect()
}

/// Every length times one ratio, so that the longest becomes `longest`; as they are where none is known.
pub fn to_longest(lengths: &[Known<Length>], longest: Length) -> Vec<Known<Length>> {
    let known = lengths.iter().filter_map(|length| known_m(*length));
    match known.reduce(f64::max) {
        Some(most) => scale(lengths, longest.to_m() / most),
        None => lengths.to_vec(),
    }
}

/// The lengths of a range times a ratio that goes evenly, in the logarithm, from the first string's to the last
/// one's. With a ratio of 1 at an end, the range joins its neighbours there. A range of one string takes the first
/// ratio.
///
/// # Example
///
/// Three strings, of which the first stays and the last is 21 % longer: the middle one is 10 % longer.
///
/// ```
/// use stringloft::engine::{lengths::stretch, units::Length};
///
/// let longer = stretch(&[Ok(Length::from_mm(100.0)); 3], 0..3, (1.0, 1.21));
/// assert!((longer[1].expect("a length").to_mm() - 110.0).abs() < 1e-9);
/// ```
pub fn stretch(
    lengths: &[Known<Length>],
    range: Range<usize>,
    ratios: (f64, f64),
) -> Vec<Known<Length>> {
    let (mut stretched, range) = (lengths.to_vec(), within(range, lengths.len()));
    let mut gone = 0.0;
    let all: f64 = range.clone().skip(1).map(|_| 1.0).sum();
    for length in &mut stretched[range] {
        let share = if all > 0.0 { gone / all } else { 0.0 };
        let ratio = ratios.0 * (ratios.1 / ratios.0).powf(share);
        *length = times(*length, ratio);
        gone += 1.0;
    }
    stretched
}

/// A range that was faired.
#[derive(Clone, Debug, PartialEq)]
pub struct Faired {
    /// All lengths; only those within the range changed.
    pub lengths: Vec<Known<Length>>,
    /// The string that changed most, by its index, and by how much; `None` where none did.
    pub greatest_change: Option<(usize, Length)>,
    /// How uneven all the lengths were.
    pub uneven_before: Unevenness,
    /// How uneven all the lengths are.
    pub uneven_after: Unevenness,
}

/// Smooths the lengths of a range: the sum of [`propose`](super::propose) with the lengths themselves as targets.
///
/// The first and the last string of the range keep their lengths, and so does every string for which `locked` is
/// true; it may be shorter than the harp. Up to three strings beyond the range take part with the lengths they have,
/// so that the range joins them smoothly. A length that is not known stays so, and the curve runs through its place.
/// A curve whose logarithm is a line or a parabola stays as it is.
///
/// [`Strength::Fully`] leaves as little of the lengths before as the strings that are held allow: done twice it is as
/// done once. The others take something more each time.
pub fn fair(
    lengths: &[Known<Length>],
    range: Range<usize>,
    strength: Strength,
    locked: &[bool],
) -> Faired {
    let range = within(range, lengths.len());
    let strings = range.start.saturating_sub(3)..(range.end + 3).min(lengths.len());
    let logs: Vec<Option<f64>> =
        lengths[strings.clone()].iter().map(|length| known_m(*length).map(f64::ln)).collect();
    let known_in = || range.clone().filter(|index| known_m(lengths[*index]).is_some());
    let ends = (known_in().next(), known_in().next_back());
    let is_held = |place: usize| {
        let index = strings.start + place;
        let is_end = Some(index) == ends.0 || Some(index) == ends.1;
        is_end || !range.contains(&index) || locked.get(index).is_some_and(|is_locked| *is_locked)
    };
    let pull = |place: usize, log: f64| Some((log - logs.get(place).copied().flatten()?, 1.0));
    let order = logs.iter().flatten().count().min(3);
    let (reach_least, reach_most) = (LENGTH_M.0.ln(), LENGTH_M.1.ln());
    let bound = |reach: f64| {
        let at = |(place, log): (usize, &Option<f64>)| log.filter(|_| is_held(place));
        logs.iter().enumerate().map(|entry| at(entry).unwrap_or(reach)).collect()
    };
    let problem = Problem {
        least: bound(reach_least),
        most: bound(reach_most),
        order,
        stiff: stiff(strength.waves(strings.len()), order),
        pull: &pull,
    };
    let start: Vec<f64> = logs.iter().map(|log| log.unwrap_or(0.0)).collect();
    let mut faired = lengths.to_vec();
    let mut greatest_change: Option<(usize, Length)> = None;
    if order > 0 {
        let found = problem.minimise(&start);
        for (place, (log, before)) in found.logs.iter().zip(&logs).enumerate() {
            let index = strings.start + place;
            let (Some(before), false) = (before, is_held(place)) else { continue };
            let (Ok(old), grows) = (lengths[index], log - before) else { continue };
            // Rounding is no change.
            if grows.abs() < 1e-9 {
                continue;
            }
            let new = Length::from_m(log.exp());
            let change = Length::from_m(new.to_m() - old.to_m());
            faired[index] = Ok(new);
            if greatest_change.is_none_or(|(_, most)| change.to_m().abs() > most.to_m().abs()) {
                greatest_change = Some((index, change));
            }
        }
    }
    let (uneven_before, uneven_after) = (unevenness(lengths), unevenness(&faired));
    Faired { lengths: faired, greatest_change, uneven_before, uneven_after }
}

fn times(length: Known<Length>, ratio: f64) -> Known<Length> {
    length.and_then(|length| {
        known_m(Ok(Length::from_m(length.to_m() * ratio)))
            .map(Length::from_m)
            .ok_or(Unknown::OutOfReach)
    })
}

/// A range that lies within so many entries.
fn within(range: Range<usize>, count: usize) -> Range<usize> {
    let end = range.end.min(count);
    range.start.min(end)..end
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::engine::lengths::least::difference;
    use crate::testing::assert_close;

    /// Source: the sum of a sine wave's own difference, taken by its definition.
    #[test]
    fn half_of_the_wave_named_is_left() {
        use std::f64::consts::TAU;
        for order in 1..=3 {
            for waves in [7.0, 14.0, 20.0] {
                let wave: Vec<f64> =
                    (0..280_u32).map(|index| (TAU * f64::from(index) / waves).sin()).collect();
                let differences = (0..280).filter_map(|first| difference(&wave, order, first));
                let (mut bends, mut count) = (0.0, 0.0);
                for bend in differences {
                    bends += bend * bend;
                    count += 1.0;
                }
                let stiff = stiff(waves, order);
                let size = wave.iter().map(|x| x * x).sum::<f64>() / 280.0;
                let off = stiff * stiff * bends / count;
                // The wave costs as much as to give it up: half of it is best.
                assert_close(off, size, 0.02, format_args!("order {order}, {waves}"));
            }
        }
    }
}
