//! The tuner leads through a round of the plan: which string is next, what it is tuned to for now, and when it is there.

use crate::engine::settling::plan::Pass;

/// Within so many cents of its target a string is there in a round that ends below pitch. Common practice, no source.
const ROUGHLY_CENTS: f64 = 10.0;
/// A string is there when so many readings after another are: for half a second.
const READINGS: usize = 10;

/// The row that comes before or after another one in a round; the first of the round where that one is not in it.
pub fn beside(pass: &Pass, row: usize, forward: bool) -> Option<usize> {
    let place = |at: usize| pass.steps.get(at).map(|step| step.place);
    match pass.steps.iter().position(|step| step.place == row) {
        None => place(0),
        Some(at) if forward => place(at + 1),
        Some(at) => at.checked_sub(1).and_then(place),
    }
}

/// How far from its pitch each of so many strings is tuned for now, in cents.
pub fn off_cents(pass: &Pass, count: usize) -> Vec<f64> {
    let mut off = vec![0.0; count];
    for step in &pass.steps {
        if let Some(off) = off.get_mut(step.place) {
            *off = step.sharp_cents - pass.below_cents;
        }
    }
    off
}

/// How near its target a string must come in a round, where `in_tune_cents` is in tune.
pub fn room_cents(pass: &Pass, in_tune_cents: f64) -> f64 {
    if pass.below_cents > 0.0 { in_tune_cents.max(ROUGHLY_CENTS) } else { in_tune_cents }
}

/// Counts how long a string has been there.
#[derive(Clone, Copy, Debug, Default)]
pub struct Stay(usize);

impl Stay {
    /// Takes a reading: how far off the string is, or nothing where it is not heard. Whether it has just been there for
    /// a moment.
    pub fn take(&mut self, cents: Option<f64>, room_cents: f64) -> bool {
        let is_there = cents.is_some_and(|cents| cents.abs() <= room_cents);
        self.0 = if is_there { self.0 + 1 } else { 0 };
        self.0 == READINGS
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::engine::settling::plan::{Reach, Step};
    use crate::engine::units::Frequency;

    fn pass(below_cents: f64) -> Pass {
        let step = |(place, sharp_cents)| Step {
            place,
            tune_to: Frequency::from_hz(440.0),
            sharp_cents,
            reach: Reach::Whole,
            pin_turns: Ok(0.1),
            left_cents: None,
        };
        Pass { below_cents, steps: [(4, 12.0), (0, 3.5), (3, 0.0)].map(step).to_vec() }
    }

    #[test]
    fn the_next_string_is_that_of_the_round() {
        let pass = pass(0.0);
        assert_eq!([4, 0, 3].map(|row| beside(&pass, row, true)), [Some(0), Some(3), None]);
        assert_eq!([4, 0, 3].map(|row| beside(&pass, row, false)), [None, Some(4), Some(0)]);
        // One that the plan leaves out.
        assert_eq!([true, false].map(|forward| beside(&pass, 1, forward)), [Some(4), Some(4)]);
        let empty = Pass { below_cents: 0.0, steps: Vec::new() };
        assert_eq!(beside(&empty, 0, true), None);
    }

    #[test]
    fn a_string_is_tuned_to_what_the_round_asks_for() {
        assert_eq!(off_cents(&pass(100.0), 5), [-96.5, 0.0, 0.0, -100.0, -88.0]);
        assert_eq!(off_cents(&pass(0.0), 3), [3.5, 0.0, 0.0]);
        assert_eq!([0.0, 100.0].map(|below| room_cents(&pass(below), 2.0)), [2.0, 10.0]);
    }

    #[test]
    fn a_string_is_there_when_it_stays_and_that_is_told_once() {
        let mut stay = Stay::default();
        let mut told = |cents: Option<f64>, count: usize| -> usize {
            (0..count).filter(|_| stay.take(cents, 2.0)).count()
        };
        assert_eq!(told(Some(1.9), 9), 0);
        assert_eq!(told(Some(-2.1), 1), 0);
        assert_eq!(told(Some(-1.9), 9), 0);
        assert_eq!(told(None, 1), 0);
        assert_eq!(told(Some(0.0), 30), 1);
    }
}
