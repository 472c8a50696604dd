//! What the strings lose of their pitch while a harp gives: each string that is brought up bends neck and board a
//! little, so that the ends of the others come nearer to each other and those fall.
//!
//! All is linear and elastic: what the wood, the glue and the strings themselves creep comes on top.

use super::analysis::{Analysis, Harp, StringFigures, rigidity_n};
use super::bearing::Gives;
use super::construction::MakeUp;
use super::material::Pace;
use super::mechanics::CENTS_PER_LOG;
use super::structure::banded::Banded;
use super::units::{Force, Frequency};

/// What a string has at pitch, and how it answers.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Strung {
    /// Its tension at pitch.
    pub tension: Force,
    /// Tension for each metre that its ends come apart: modulus times area over the length between the fixings.
    pub stiffness_n_per_m: f64,
}

/// The matrix of `1/K + C` of some strings: what must be wound onto the pin of each for a newton more on each.
pub(super) fn wound(gives: &[Vec<f64>], strings: &[Strung], of: &[usize]) -> Banded {
    let mut matrix = Banded::new(of.len(), of.len().saturating_sub(1));
    for (row, one) in of.iter().enumerate() {
        for (column, other) in of.iter().enumerate().take(row + 1) {
            matrix.add(row, column, gives[*one][*other]);
        }
        matrix.add(row, row, 1.0 / strings[*one].stiffness_n_per_m);
    }
    matrix
}

/// The tensions when all strings have been brought to pitch once, each in its turn, in newtons.
///
/// While string `j` comes up, the strings `L` that are up already lose `(1/K + C)_LL⁻¹ C_Lj T_j`: they are as much longer
/// wound as before, and their ends lie nearer to each other. A string that is not up yet has nothing to lose.
///
/// `gives` is how much nearer the ends of each come for each newton on another, in m/N; `order` has each string once.
/// `None` where what gives does not hold itself up.
///
/// # Source
///
/// Hooke's law and the sum of small movements; worked out for this project.
///
/// # Example
///
/// Two strings of 100 N and 10 kN/m on a frame that gives 1/100 mm for each newton on either: bringing up the second
/// moves the first by 1 mm, of which it takes back a part as it falls.
///
/// ```
/// use stringloft::engine::giving::{Strung, first_round};
/// use stringloft::engine::units::Force;
///
/// let string = Strung { tension: Force::from_n(100.0), stiffness_n_per_m: 1e4 };
/// let gives = vec![vec![1e-5; 2]; 2];
/// let left = first_round(&gives, &[string; 2], &[0, 1]).expect("a frame that stands");
/// assert!((left[0] - (100.0 - 1e-3 / (1e-4 + 1e-5))).abs() < 1e-9);
/// assert!((left[1] - 100.0).abs() < 1e-9);
/// ```
pub fn first_round(gives: &[Vec<f64>], strings: &[Strung], order: &[usize]) -> Option<Vec<f64>> {
    let mut tensions = vec![0.0; strings.len()];
    for (up, next) in order.iter().enumerate() {
        let before = &order[..up];
        let tension = strings[*next].tension.to_n();
        if up > 0 {
            let mut falls: Vec<f64> =
                before.iter().map(|one| -gives[*one][*next] * tension).collect();
            wound(gives, strings, before).split()?.solve(&mut falls);
            before.iter().zip(falls).for_each(|(one, fall)| tensions[*one] += fall);
        }
        tensions[*next] = tension;
    }
    tensions.iter().all(|tension| tension.is_finite()).then_some(tensions)
}

/// What each string does to the others while all are up: the change of every tension for a metre wound onto the pin of
/// one, row by row, which is `(1/K + C)⁻¹`. `None` as in [`first_round`].
fn answers(gives: &[Vec<f64>], strings: &[Strung]) -> Option<Vec<Vec<f64>>> {
    let all: Vec<usize> = (0..strings.len()).collect();
    let split = wound(gives, strings, &all).split()?;
    let answer = |pin: &usize| {
        let mut side = vec![0.0; all.len()];
        side[*pin] = 1.0;
        split.solve(&mut side);
        side
    };
    Some(all.iter().map(answer).collect())
}

/// The tensions after one more round, in which each string is brought back to pitch in its turn.
fn next_round(answers: &[Vec<f64>], strings: &[Strung], order: &[usize], tensions: &mut [f64]) {
    for pin in order {
        let wound = (strings[*pin].tension.to_n() - tensions[*pin]) / answers[*pin][*pin];
        for (tension, answer) in tensions.iter_mut().zip(&answers[*pin]) {
            *tension += answer * wound;
        }
    }
}

/// By how many cents a string sounds lower with one tension than with another. Source: pitch goes with the root of the
/// tension.
pub(super) fn cents(tension_n: f64, than_n: f64) -> f64 {
    CENTS_PER_LOG * (tension_n / than_n).ln()
}

/// How far a string falls, and what it does to the others. Least and most are of frame and board, and of the strings'
/// own moduli over minutes and over weeks.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Fall {
    /// Place in the harp.
    pub place: usize,
    /// Its turn, from 1.
    pub turn: usize,
    /// Its tension at pitch.
    pub tension: Force,
    /// Its pitch.
    pub frequency: Frequency,
    /// How far it has fallen when the others have come up after it, in cents, least and most.
    pub first_cents: (f64, f64),
    /// The same after the second round and after the third.
    pub later_cents: [(f64, f64); 2],
    /// By how much the string rises that rises most, where this one is taken off while all are at pitch, in cents.
    pub off_cents: (f64, f64),
}

impl Fall {
    /// How far it has fallen in hertz after the first round, least and most.
    pub fn first_hz(&self) -> (f64, f64) {
        let lower = |cents: f64| {
            let ratio = crate::engine::pitch::ratio(-cents);
            self.frequency.to_hz() * (1.0 - ratio)
        };
        (lower(self.first_cents.0), lower(self.first_cents.1))
    }
}

/// A string with its place, its pitch and both of its stiffnesses: over weeks and over minutes.
pub(super) type Known = (usize, Frequency, [Strung; 2]);

pub(super) fn known(harp: &Harp, figures: &StringFigures, place: usize) -> Option<Known> {
    let make_up: &MakeUp = harp.strings.get(place)?.make_up.as_ref().ok()?;
    let (tension, length) = (figures.tension.ok()?, figures.length.ok()?);
    let between_m = harp.conditions.allowance.between_fixings(length).to_m();
    let at = |pace: Pace| {
        let rigidity = rigidity_n(make_up, tension, pace);
        rigidity.or_else(|_| rigidity_n(make_up, tension, Pace::Fast)).ok()
    };
    let strung = |pace: Pace| {
        let stiffness_n_per_m = at(pace)? / between_m;
        (stiffness_n_per_m > 0.0).then_some(Strung { tension, stiffness_n_per_m })
    };
    let both = [strung(Pace::Slow)?, strung(Pace::Intermediate)?];
    Some((place, figures.frequency.ok()?, both))
}

/// The tension of each string of a harp, in newtons; 0 where it cannot be worked out.
pub fn tensions_n(harp: &Harp, analysis: &Analysis) -> Vec<f64> {
    let all = analysis.strings.iter().enumerate();
    let known = all.map(|(place, figures)| known(harp, figures, place));
    known.map(|string| string.map_or(0.0, |of| of.2[0].tension.to_n())).collect()
}

/// How far each string falls while the harp is strung in an order of places, in that order. A string without tension,
/// place or modulus is left out, with what it would do. Empty where nothing can be said.
pub fn falls(gives: &Gives, harp: &Harp, analysis: &Analysis, order: &[usize]) -> Vec<Fall> {
    // The rows of the matrix that can be worked out, in the order of stringing.
    let row_of = |place: &usize| {
        let row = gives.places.iter().position(|known| known == place)?;
        Some((row, known(harp, analysis.strings.get(*place)?, *place)?))
    };
    let (rows, strings): (Vec<usize>, Vec<Known>) = order.iter().filter_map(row_of).unzip();
    let turns: Vec<usize> = (0..rows.len()).collect();
    let none = (f64::INFINITY, f64::NEG_INFINITY);
    let fall = |(turn, (place, frequency, strung)): (usize, &Known)| Fall {
        place: *place,
        turn: turn + 1,
        tension: strung[0].tension,
        frequency: *frequency,
        first_cents: none,
        later_cents: [none; 2],
        off_cents: none,
    };
    let mut falls: Vec<Fall> = strings.iter().enumerate().map(fall).collect();
    for end in gives.ends() {
        let picked = |row: &usize| rows.iter().map(|column| end[*row][*column]).collect();
        let end: Vec<Vec<f64>> = rows.iter().map(picked).collect();
        for pace in 0..2 {
            let strung: Vec<Strung> = strings.iter().map(|known| known.2[pace]).collect();
            if take(&mut falls, &end, &strung, &turns).is_none() {
                return Vec::new();
            }
        }
    }
    falls
}

/// Widens least and most by one state of frame and strings.
fn take(falls: &mut [Fall], gives: &[Vec<f64>], strings: &[Strung], order: &[usize]) -> Option<()> {
    let answers = answers(gives, strings)?;
    let mut tensions = first_round(gives, strings, order)?;
    let widen = |range: &mut (f64, f64), cents: f64| {
        *range = (range.0.min(cents), range.1.max(cents));
    };
    for round in 0..3 {
        if round > 0 {
            next_round(&answers, strings, order, &mut tensions);
        }
        for ((fall, tension), string) in falls.iter_mut().zip(&tensions).zip(strings) {
            // A string that has gone slack has fallen by more than can be said.
            let fell = -cents(tension.max(0.0), string.tension.to_n());
            match round {
                0 => widen(&mut fall.first_cents, fell),
                later => widen(&mut fall.later_cents[later - 1], fell),
            }
        }
    }
    for (off, fall) in falls.iter_mut().enumerate() {
        let loosened = strings[off].tension.to_n() / answers[off][off];
        let rises = answers[off].iter().zip(strings).enumerate();
        let rises = rises.filter(|(other, _)| *other != off).map(|(_, (answer, string))| {
            let tension = string.tension.to_n();
            cents(tension - answer * loosened, tension)
        });
        widen(&mut fall.off_cents, rises.fold(0.0, f64::max));
    }
    Some(())
}

#[cfg(test)]
mod tests;
