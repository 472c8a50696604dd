//! Which string it is that sounds, and what its pin must do.

use super::CENTS_PER_RATIO;
use super::fit::Known;
use crate::engine::interval::cents;
use crate::engine::units::Frequency;

/// A string that is to be tuned.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Sought {
    /// Its number from the top.
    pub number: usize,
    /// What its first partial should sound, with its lever as it stands.
    pub target: Frequency,
    /// Its inharmonicity by the design.
    pub inharmonicity_b: Option<f64>,
    /// How far a degree of its pin moves it, in cents.
    pub cents_per_degree: Option<f64>,
    /// It needs no more tuning: another string that lies near is meant sooner.
    pub is_in_tune: bool,
}

/// Further off than this, no string is meant, in cents.
const REACH_CENTS: f64 = 350.0;
/// How much nearer a string in tune must lie than one that is not to be meant.
const IN_TUNE_CENTS: f64 = 80.0;
/// How far below and above its target a string may be that the tuner is told to listen for: one that goes up to pitch
/// for the first time, in cents.
const LED_CENTS: (f64, f64) = (-2500.0, 500.0);
/// How likely it is that what sounds lies outside the compass.
const OUTSIDE: f64 = 0.6;

/// The strings of a harp, and the one that is listened for if the maker is led.
#[derive(Clone, Debug, Default)]
pub(super) struct Strings {
    pub all: Vec<Sought>,
    pub led: Option<usize>,
}

impl Strings {
    /// How far a pitch lies above the target of a string, in cents.
    pub fn cents_of(&self, place: usize, hz: f64) -> Option<f64> {
        let target = self.all.get(place)?.target.to_hz();
        Some(cents(hz / target)).filter(|cents| cents.is_finite())
    }

    /// The place in the list of the string that a pitch is meant for.
    pub fn meant(&self, hz: f64) -> Option<usize> {
        if let Some(led) = self.led {
            let is_near = |cents: &f64| *cents >= LED_CENTS.0 && *cents <= LED_CENTS.1;
            return self.cents_of(led, hz).filter(is_near).map(|_| led);
        }
        self.nearest(hz).filter(|(_, off)| *off <= REACH_CENTS).map(|(place, _)| place)
    }

    /// The nearest string and how far off it is; those in tune count as further off.
    fn nearest(&self, hz: f64) -> Option<(usize, f64)> {
        let off = |place: usize| {
            let string = self.all.get(place)?;
            let handicap = if string.is_in_tune { IN_TUNE_CENTS } else { 0.0 };
            Some((place, self.cents_of(place, hz)?.abs() + handicap))
        };
        (0..self.all.len()).filter_map(off).min_by(|one, other| one.1.total_cmp(&other.1))
    }

    /// What is known of the inharmonicity of what sounds at a pitch.
    pub fn known(&self, hz: f64) -> Known {
        let place = self.led.or_else(|| Some(self.nearest(hz)?.0));
        let string = place.and_then(|place| self.all.get(place));
        string.and_then(|string| string.inharmonicity_b).map_or(Known::NOTHING, Known::designed)
    }

    /// How likely a pitch is, up to 1.
    pub fn share(&self, hz: f64) -> f64 {
        if let Some(led) = self.led {
            return if self.meant(hz) == Some(led) { 1.0 } else { 0.0 };
        }
        if self.all.is_empty() {
            return 1.0;
        }
        let is_near = |string: &Sought| {
            CENTS_PER_RATIO * (hz / string.target.to_hz()).ln().abs() <= REACH_CENTS
        };
        if self.all.iter().any(is_near) { 1.0 } else { OUTSIDE }
    }

    /// How far to turn the pin of a string that is so many cents off, in degrees: above 0 tightens.
    pub fn pin_degrees(&self, place: usize, off_cents: f64) -> Option<f64> {
        let per_degree = self.all.get(place)?.cents_per_degree?;
        Some(-off_cents / per_degree).filter(|degrees| degrees.is_finite())
    }
}
