//! How far the figures of a string lie off its target, at any length.

use super::{Aim, Asked};
use crate::engine::analysis::{FREQUENCY_HZ, HarpString};
use crate::engine::mechanics::{Core, length_for_tension, pluck_stiffness, tension};
use crate::engine::units::{Force, Frequency, Length, LinearDensity};

/// A length is never proposed nearer than this share to the one at which the string would sound with no pull, or
/// at which the bare ends take all of it.
const FROM_NOTHING: f64 = 1.01;
/// By which share of the length the slope of a figure is found, to either side.
const SLOPE_STEP: f64 = 1e-5;

/// A string whose pull can be computed.
pub(super) struct Sounding {
    density: LinearDensity,
    pitch: Frequency,
    core: Option<Core>,
    bare_m: f64,
}

impl Sounding {
    pub(super) fn of(string: &HarpString) -> Option<Self> {
        let make_up = string.make_up.as_ref().ok()?;
        let pitch = string.frequency.ok()?;
        let (least, most) = FREQUENCY_HZ;
        let (board, pin) = make_up.bare_ends();
        (least..=most).contains(&pitch.to_hz()).then(|| Self {
            density: make_up.linear_density(),
            pitch,
            core: Core::of(make_up),
            bare_m: board.to_m() + pin.to_m(),
        })
    }

    pub(super) fn length_at(&self, tension: Force) -> Length {
        length_for_tension(self.density, self.pitch, tension, self.core)
    }

    /// The least length at which it can be tuned, with a little to spare.
    pub(super) fn shortest_m(&self) -> f64 {
        FROM_NOTHING * self.bare_m.max(self.length_at(Force::from_n(0.0)).to_m())
    }
}

/// A target with the string that has to meet it.
pub(super) struct Target {
    string: Sounding,
    aim: Aim,
    root: f64,
    pluck_ratio: f64,
}

impl Target {
    pub(super) fn of(string: &HarpString, asked: &Asked, pluck_ratio: f64) -> Option<Self> {
        let aim = asked.aim?;
        let value = match aim {
            Aim::Tension(aim) => aim.to_n(),
            Aim::Stiffness(aim) => aim.to_n_per_m(),
        };
        let is_usable = value.is_finite() && value > 0.0;
        let counts = asked.weight.is_finite() && asked.weight > 0.0;
        let plucked = pluck_ratio > 0.0 && pluck_ratio < 1.0 || matches!(aim, Aim::Tension(_));
        if !(is_usable && counts && plucked) {
            return None;
        }
        Some(Self { string: Sounding::of(string)?, aim, root: asked.weight.sqrt(), pluck_ratio })
    }

    /// `ln(F/F*)` at a length.
    pub(super) fn off(&self, length: Length) -> Option<f64> {
        let string = &self.string;
        if length.to_m() <= string.bare_m {
            return None;
        }
        let pull = tension(string.density, length, string.pitch, string.core);
        let ratio = match self.aim {
            Aim::Tension(aim) => pull.to_n() / aim.to_n(),
            Aim::Stiffness(aim) => {
                pluck_stiffness(pull, length, self.pluck_ratio).to_n_per_m() / aim.to_n_per_m()
            }
        };
        // Not of a pull that is not above 0.
        Some(ratio.ln()).filter(|off| off.is_finite())
    }

    /// How fast a flexible string's figure goes with its length.
    const fn power(&self) -> f64 {
        match self.aim {
            Aim::Tension(_) => 2.0,
            Aim::Stiffness(_) => 1.0,
        }
    }

    /// The weighted residual at the logarithm of a length, and its slope.
    pub(super) fn pull(&self, log: f64) -> Option<(f64, f64)> {
        let at = |log: f64| self.off(Length::from_m(log.exp()));
        let slope = (at(log + SLOPE_STEP)? - at(log - SLOPE_STEP)?) / (2.0 * SLOPE_STEP);
        let share = self.root / self.power();
        Some((share * at(log)?, share * slope))
    }

    /// Where a flexible string meets it.
    pub(super) fn near(&self) -> Length {
        match self.aim {
            Aim::Tension(aim) => self.string.length_at(aim),
            Aim::Stiffness(aim) => {
                let Sounding { density, pitch, .. } = &self.string;
                let one = Length::from_m(1.0);
                let pull = tension(*density, one, *pitch, None);
                let stiffness = pluck_stiffness(pull, one, self.pluck_ratio);
                Length::from_m(aim.to_n_per_m() / stiffness.to_n_per_m())
            }
        }
    }
}
