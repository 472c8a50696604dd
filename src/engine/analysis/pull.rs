//! The pull of one make-up at many pitches and lengths: what is the same for every string is worked out once.

use super::{BREAKING_LOAD_N, FREQUENCY_HZ, Known, LENGTH_M, Unknown};
use crate::engine::construction::MakeUp;
use crate::engine::material::Class;
use crate::engine::mechanics::{Core, pluck_stiffness, tension};
use crate::engine::units::{Force, Frequency, Length, LinearDensity, Stiffness};

/// What the pull of a make-up depends on.
#[derive(Clone, Copy, Debug)]
pub(in crate::engine) struct Made {
    density: LinearDensity,
    core: Option<Core>,
    bare_m: f64,
    /// Whether what carries the pull is gut or plastic.
    pub is_soft: bool,
    /// Least load that breaks it.
    pub breaking_load: Known<Force>,
}

impl Made {
    /// Of a make-up.
    pub fn of(make_up: &MakeUp) -> Self {
        let (board, pin) = make_up.bare_ends();
        let load = make_up.breaking_load().ok_or(Unknown::Strength);
        Self {
            density: make_up.linear_density(),
            core: Core::of(make_up),
            bare_m: board.to_m() + pin.to_m(),
            is_soft: is_soft(make_up),
            breaking_load: within(load, Force::to_n, BREAKING_LOAD_N, Unknown::OutOfReach),
        }
    }

    /// The tension at which the first partial is at pitch.
    pub fn tension(&self, frequency: Frequency, length: Length) -> Known<Force> {
        if self.bare_m >= length.to_m() {
            return Err(Unknown::BareEnds);
        }
        let pull = tension(self.density, length, frequency, self.core);
        if pull.to_n() <= 0.0 { Err(Unknown::TooStiff) } else { finite(Ok(pull), Force::to_n) }
    }

    /// Tension over breaking load, in per cent.
    pub fn share_percent(&self, tension: Force) -> Known<f64> {
        finite(self.breaking_load.map(|most| 100.0 * tension.to_n() / most.to_n()), |x| x)
    }
}

/// Whether what carries the pull of a make-up is gut or plastic, which creeps. A core that is not known may be.
pub fn is_soft(make_up: &MakeUp) -> bool {
    make_up.core().is_none_or(|(material, _)| material.class != Class::Metal)
}

/// The pitch, if it can be computed with.
pub(in crate::engine) fn usable_pitch(frequency: Known<Frequency>) -> Known<Frequency> {
    within(frequency, Frequency::to_hz, FREQUENCY_HZ, Unknown::Pitch)
}

/// The length, if it can be computed with.
pub(in crate::engine) fn usable_length(length: Known<Length>) -> Known<Length> {
    within(length, Length::to_m, LENGTH_M, Unknown::Length)
}

/// Pluck stiffness at a share of the length that lies between the ends.
pub(in crate::engine) fn stiffness_of(
    tension: Force,
    length: Length,
    pluck_ratio: f64,
) -> Known<Stiffness> {
    if !(pluck_ratio > 0.0 && pluck_ratio < 1.0) {
        return Err(Unknown::OutOfReach);
    }
    finite(Ok(pluck_stiffness(tension, length, pluck_ratio)), Stiffness::to_n_per_m)
}

/// The value if its number is one that can be computed with; otherwise `why`.
pub(super) fn within<T: Copy>(
    value: Known<T>,
    number: impl Fn(T) -> f64,
    (least, most): (f64, f64),
    why: Unknown,
) -> Known<T> {
    value.and_then(|v| if (least..=most).contains(&number(v)) { Ok(v) } else { Err(why) })
}

/// The value if its number is finite.
pub(super) fn finite<T: Copy>(value: Known<T>, number: impl Fn(T) -> f64) -> Known<T> {
    value.and_then(|v| if number(v).is_finite() { Ok(v) } else { Err(Unknown::OutOfReach) })
}
