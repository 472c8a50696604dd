//! Strings of a log that behave unlike their neighbours of the same material: a knot or a pin that slips, a string that is
//! false, one that rises.
//!
//! A string is held to the middle one of its neighbours, so that one odd string does not hide another.

use super::creep::Fit;
use crate::engine::order::sort;

/// How many neighbours count, and how few are enough to compare with.
const NEIGHBOURS: (usize, usize) = (6, 3);
/// Beyond so many times the spread of its neighbours a string is unlike them. B. Iglewicz and D. C. Hoaglin, *How to Detect
/// and Handle Outliers*, 1993: from memory.
const ODD_TIMES: f64 = 3.5;
/// The spread of a bell curve over the middle one of the distances from its middle. As in any textbook of statistics.
const SPREAD_OF_MIDDLE: f64 = 1.482_6;
/// Neighbours are never taken to be nearer to each other than this, as a share of what they do and in cents for a decade.
/// Common practice, no source.
const LEAST_SPREAD: (f64, f64) = (0.1, 0.5);
/// A step between two readings below which no string is said to have slipped, in cents, and a scatter below which none is
/// called unsteady. Common practice, no source.
const LEAST_STEP_CENTS: f64 = 5.0;
const LEAST_SCATTER_CENTS: f64 = 2.0;

/// What is unlike its neighbours.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Unlike {
    /// It fell all at once between two readings: by so many cents, before that moment in minutes.
    Slipped {
        /// How far, in cents.
        cents: f64,
        /// When the second of the readings was taken.
        minutes: f64,
    },
    /// It goes on falling faster than they do.
    FallsFaster {
        /// What it falls by while time grows tenfold, in cents.
        cents: f64,
        /// What its neighbours fall by.
        beside_cents: f64,
    },
    /// It rises.
    Rises {
        /// What it rises by while time grows tenfold, in cents.
        cents: f64,
    },
    /// Its readings scatter.
    Scatters {
        /// How far, in cents.
        cents: f64,
        /// How far those of its neighbours do.
        beside_cents: f64,
    },
}

/// A string that is watched.
#[derive(Clone, Debug, PartialEq)]
pub struct Watched {
    /// Its place in the harp.
    pub place: usize,
    /// Strings of one material have one number.
    pub material: usize,
    /// What its log says.
    pub fit: Fit,
}

/// What is odd, string by string in the order given, the likeliest cause of each alone. A string with fewer than three
/// neighbours of its material is not judged.
pub fn unlike(all: &[Watched]) -> Vec<(usize, Unlike)> {
    let odd = all.iter().filter_map(|one| Some((one.place, judged(one, &beside(one, all))?)));
    odd.collect()
}

/// The nearest neighbours of the same material.
fn beside<'a>(one: &Watched, all: &'a [Watched]) -> Vec<&'a Fit> {
    let mut others: Vec<&Watched> = all
        .iter()
        .filter(|other| other.material == one.material && other.place != one.place)
        .collect();
    sort(&mut others, |near, far| near.place.abs_diff(one.place) > far.place.abs_diff(one.place));
    others.into_iter().take(NEIGHBOURS.0).map(|other| &other.fit).collect()
}

fn judged(one: &Watched, beside: &[&Fit]) -> Option<Unlike> {
    if beside.len() < NEIGHBOURS.1 {
        return None;
    }
    let scatters: Vec<f64> = beside.iter().filter_map(|fit| fit.scatter_cents).collect();
    let beside_scatter = middle(&scatters);
    let fit = &one.fit;
    if let (Some((cents, minutes)), Some(scatter)) = (deepest_step(fit), beside_scatter)
        && cents > LEAST_STEP_CENTS.max(ODD_TIMES * std::f64::consts::SQRT_2 * scatter)
    {
        return Some(Unlike::Slipped { cents, minutes });
    }
    let slopes: Vec<f64> = beside.iter().map(|fit| fit.per_decade_cents).collect();
    let usual = middle(&slopes)?;
    let distances: Vec<f64> = slopes.iter().map(|slope| (slope - usual).abs()).collect();
    let spread = (SPREAD_OF_MIDDLE * middle(&distances)?)
        .max(LEAST_SPREAD.0 * usual.abs())
        .max(LEAST_SPREAD.1);
    let cents = fit.per_decade_cents;
    // What may be its own scatter is not held against it.
    let sure = (cents - usual).abs() - fit.error_cents.unwrap_or(f64::INFINITY);
    if sure > 0.0 && (cents - usual).abs() > ODD_TIMES * spread {
        if cents < usual {
            return Some(Unlike::FallsFaster { cents: -cents, beside_cents: -usual });
        }
        if cents > LEAST_SPREAD.1 {
            return Some(Unlike::Rises { cents });
        }
    }
    let (own, beside_cents) = (fit.scatter_cents?, beside_scatter?);
    let is_unsteady = own > LEAST_SCATTER_CENTS && own > ODD_TIMES * beside_cents;
    is_unsteady.then_some(Unlike::Scatters { cents: own, beside_cents })
}

/// The deepest fall between two readings after one tuning beyond what the law gives, and when the second was taken. Nothing
/// where a rise is half as high: such readings scatter, and nothing slipped.
fn deepest_step(fit: &Fit) -> Option<(f64, f64)> {
    let pairs = fit.left.windows(2).filter(|pair| pair[0].tuning == pair[1].tuning);
    let falls = pairs.map(|pair| (pair[0].cents - pair[1].cents, pair[1].minutes));
    let rise = falls.clone().fold(0.0_f64, |most, (fall, _)| most.max(-fall));
    let deepest = falls.reduce(|most, next| if next.0 > most.0 { next } else { most })?;
    (deepest.0 > 2.0 * rise).then_some(deepest)
}

/// The middle one of some numbers, or midway between the two middle ones.
fn middle(numbers: &[f64]) -> Option<f64> {
    let mut sorted = numbers.to_vec();
    sort(&mut sorted, |one, next| one > next);
    let half = sorted.len() / 2;
    let upper = *sorted.get(half)?;
    Some(if sorted.len().is_multiple_of(2) { 0.5 * (sorted[half - 1] + upper) } else { upper })
}

#[cfg(test)]
mod tests;
