//! How much string to cut: the vibrating length and all that lies beyond it.

use std::f64::consts::PI;

use thiserror::Error;

use super::units::Length;
use crate::words::{Words, engine as say, numeral};

/// The longest that one part of an allowance may be.
pub const LONGEST_PART_MM: f64 = 2_000.0;
/// The most turns round a tuning pin.
pub const MOST_TURNS: f64 = 30.0;

/// What a string needs beyond its vibrating length, besides its own thickness.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Allowance {
    after_length: Length,
    turns: f64,
    pin: Length,
    knot: Length,
    tail: Length,
}

/// Why an allowance cannot be used.
#[derive(Clone, Debug, PartialEq, Error)]
#[non_exhaustive]
pub enum AllowanceError {
    /// A part is negative, too long or no number.
    #[error("{}", say::allowance(&numeral(*.got_mm), &numeral(LONGEST_PART_MM), .part))]
    Part { part: Words, got_mm: f64 },
    /// The turns are negative, too many or no number.
    #[error("{}", say::allowance_turns(&numeral(*.got), &numeral(MOST_TURNS)))]
    Turns { got: f64 },
}

impl Allowance {
    /// From the length between bridge pin and tuning pin, the turns at pitch, the diameter of the
    /// tuning pin, what soundboard, string rib and knot take, and the tail to pull on.
    ///
    /// # Errors
    ///
    /// When a part is outside 0 to [`LONGEST_PART_MM`] or the turns outside 0 to [`MOST_TURNS`].
    pub fn new(
        after_length: Length,
        turns: f64,
        pin: Length,
        knot: Length,
        tail: Length,
    ) -> Result<Self, AllowanceError> {
        let parts = [
            (say::PART_AFTER, after_length),
            (say::PART_PIN, pin),
            (say::PART_KNOT, knot),
            (say::PART_TAIL, tail),
        ];
        for (part, length) in parts {
            let got_mm = length.to_mm();
            if !(0.0..=LONGEST_PART_MM).contains(&got_mm) {
                return Err(AllowanceError::Part { part, got_mm });
            }
        }
        if !(0.0..=MOST_TURNS).contains(&turns) {
            return Err(AllowanceError::Turns { got: turns });
        }
        Ok(Self { after_length, turns, pin, knot, tail })
    }

    /// All string that stretches: the vibrating length and what lies between bridge pin and tuning
    /// pin. The little between soundboard and knot is left out.
    pub fn between_fixings(&self, length: Length) -> Length {
        Length::from_m(length.to_m() + self.after_length.to_m())
    }

    /// Turns round the tuning pin at pitch.
    pub const fn turns(&self) -> f64 {
        self.turns
    }

    /// Diameter of the tuning pin.
    pub const fn pin(&self) -> Length {
        self.pin
    }
}

impl Default for Allowance {
    /// Common practice, no source.
    fn default() -> Self {
        Self {
            after_length: Length::from_mm(45.0),
            turns: 3.0,
            pin: Length::from_mm(5.5),
            knot: Length::from_mm(90.0),
            tail: Length::from_mm(120.0),
        }
    }
}

/// The length to cut a string to.
///
/// `L + a + n π (D + d) + k + t`: vibrating length, bridge pin to tuning pin, `n` turns on a pin of
/// diameter `D` with a string of gauge `d` lying on it, board and knot, tail. The turns lie side by
/// side in one layer; their climb along the pin is left out, being hundredths of a turn.
///
/// # Source
///
/// Geometry. What to allow for knot, turns and tail is common practice, no source.
///
/// # Example
///
/// Three turns on a pin of 9 mm with 1 mm of string take 30π mm, which is 94.2 mm.
///
/// ```
/// use stringloft::engine::{cut::{Allowance, cut_length}, units::Length};
///
/// let mm = Length::from_mm;
/// let allowance = Allowance::new(mm(40.0), 3.0, mm(9.0), mm(90.0), mm(100.0))?;
/// let cut = cut_length(mm(600.0), mm(1.0), &allowance);
/// assert!((cut.to_mm() - 924.25).abs() < 0.01);
/// # Ok::<(), stringloft::engine::cut::AllowanceError>(())
/// ```
pub fn cut_length(length: Length, gauge: Length, allowance: &Allowance) -> Length {
    let turns_m = allowance.turns * PI * (allowance.pin.to_m() + gauge.to_m());
    let ends_m = allowance.after_length.to_m() + allowance.knot.to_m() + allowance.tail.to_m();
    Length::from_m(length.to_m() + ends_m + turns_m)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::testing::assert_close;

    fn mm(value: f64) -> Length {
        Length::from_mm(value)
    }

    #[test]
    fn a_turn_takes_the_circumference_of_pin_and_string() {
        let with = |turns| {
            let allowance = Allowance::new(mm(45.0), turns, mm(5.5), mm(90.0), mm(120.0)).unwrap();
            cut_length(mm(612.0), mm(0.8), &allowance).to_mm()
        };
        assert_close(with(0.0), 612.0 + 45.0 + 90.0 + 120.0, 1e-12, "no turn");
        assert_close(with(4.0) - with(3.0), PI * 6.3, 1e-12, "one turn");
    }

    #[test]
    fn a_part_that_cannot_be_says_which() {
        for got in [-1.0, f64::NAN, f64::INFINITY, 2_001.0] {
            let error = Allowance::new(mm(45.0), 3.0, mm(5.5), mm(got), mm(120.0)).unwrap_err();
            assert!(error.to_string().starts_with("the allowance for soundboard and knot must be"));
            assert!(Allowance::new(mm(45.0), got, mm(5.5), mm(90.0), mm(120.0)).is_err());
        }
    }
}
