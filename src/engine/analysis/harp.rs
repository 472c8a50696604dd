//! A harp as the engine takes it: its strings, how they are plucked, raised, cut and kept, and what its maker allows.

use super::Known;
use super::pull::is_soft;
use crate::engine::construction::MakeUp;
use crate::engine::cut::Allowance;
use crate::engine::pitch::Note;
use crate::engine::units::{Force, Frequency, Length, Stiffness};

/// One string as the engine takes it: what is not known says why.
#[derive(Clone, Debug, PartialEq)]
pub struct HarpString {
    /// The note, when there is one; a string may be given by frequency alone.
    pub note: Option<Note>,
    /// The pitch.
    pub frequency: Known<Frequency>,
    /// Soundboard (or string rib) to bridge pin.
    pub length: Known<Length>,
    /// What the string is made of.
    pub make_up: Known<MakeUp>,
    /// What raises it by semitones.
    pub mechanism: Mechanism,
}

/// What raises a string by semitones.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum Mechanism {
    /// Nothing.
    #[default]
    None,
    /// A lever: one semitone.
    Lever,
    /// One disc: one semitone.
    SingleDisc,
    /// Two discs: flat, natural and sharp.
    DoubleDisc,
}

/// The most that a finger pulls a string aside, as a share of its length, whatever is asked: short
/// strings are plucked by less. Common practice, no source.
pub const MOST_PLUCK_RATIO: f64 = 0.02;

/// How the strings are plucked, raised, cut and kept: what the figures beyond pull and feel depend on.
#[derive(Clone, Debug, PartialEq)]
pub struct Conditions {
    /// How far a finger pulls a string aside before it lets go, up to [`MOST_PLUCK_RATIO`] of its
    /// length.
    pub pluck: Length,
    /// The partial at which the loss factor is given.
    pub damping_partial: u32,
    /// What a string needs beyond its vibrating length.
    pub allowance: Allowance,
    /// How far a lever or a disc pushes the string aside.
    pub push: Length,
    /// Share by which the frame lengthens along the strings for each kelvin; 0 for a frame that has
    /// not yet followed the air.
    pub frame_expansion_per_k: f64,
    /// Angle between strings and soundboard, above 0 and below a straight line.
    pub board_angle_rad: f64,
    /// How far things may be off.
    pub tolerances: Tolerances,
}

impl Default for Conditions {
    /// A pull of 4 mm, partial 8, a push of 0.5 mm and an angle of 34 degrees are common practice, no source.
    fn default() -> Self {
        Self {
            pluck: Length::from_mm(4.0),
            damping_partial: 8,
            allowance: Allowance::default(),
            push: Length::from_mm(0.5),
            frame_expansion_per_k: 0.0,
            board_angle_rad: 34.0_f64.to_radians(),
            tolerances: Tolerances::default(),
        }
    }
}

impl Conditions {
    /// How far a finger pulls a string of this length aside.
    pub fn pluck_of(&self, length: Length) -> Length {
        Length::from_m(self.pluck.to_m().min(MOST_PLUCK_RATIO * length.to_m()))
    }
}

/// How far things may be off, to either side.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Tolerances {
    /// Of the vibrating length.
    pub length: Length,
    /// Of the pitch, in cents.
    pub pitch_cents: f64,
    /// Of the temperature since the string was tuned, in kelvins.
    pub temperature_k: f64,
    /// Of the push of a lever or a disc.
    pub push: Length,
    /// Of a diameter whose material states none.
    pub diameter: Length,
    /// Of a density whose material states none, as a share.
    pub density_ratio: f64,
}

impl Default for Tolerances {
    /// 1 mm of length, 0.01 mm of diameter, 1 % of density, 5 K and a push that is off by 0.1 mm are common
    /// practice, no source. 2
    /// cents are the 0.5 Hz in 440 Hz that ISO 16 allows a tuning device, rounded.
    fn default() -> Self {
        Self {
            length: Length::from_mm(1.0),
            pitch_cents: 2.0,
            temperature_k: 5.0,
            push: Length::from_mm(0.1),
            diameter: Length::from_mm(0.01),
            density_ratio: 0.01,
        }
    }
}

/// What the maker allows.
#[derive(Clone, Debug, PartialEq)]
pub struct Limits {
    /// Highest load share that a string should work at, in per cent.
    pub working_share_percent: f64,
    /// Highest load share of a string whose core is gut or plastic, in per cent, where it is below the other: what
    /// creeps bears less for good than a short test shows.
    pub soft_share_percent: f64,
    /// Lowest load share, below which a string is called slack, in per cent.
    pub slack_share_percent: f64,
    /// Lowest tension that still holds a string steady.
    pub least_tension: Force,
    /// Lowest and highest pluck stiffness: the band drawn behind the curve.
    pub stiffness_band: (Stiffness, Stiffness),
    /// How sharp partial 8 may be before it is a finding, in cents.
    pub partial_8_cents: f64,
    /// Greatest step of pluck stiffness to the neighbour where the make-up changes, in per cent.
    pub jump_percent: f64,
    /// Least distance from the bridge pin to the place of a lever or disc.
    pub least_raise: Length,
}

impl Limits {
    /// Highest load share of a make-up, in per cent, by what its core is of.
    pub fn most_share_percent(&self, is_soft: bool) -> f64 {
        let working = self.working_share_percent;
        if is_soft { working.min(self.soft_share_percent) } else { working }
    }
}

/// A harp as the engine takes it; string 1 (the highest) first.
#[derive(Clone, Debug, PartialEq)]
pub struct Harp {
    /// From the highest string down.
    pub strings: Vec<HarpString>,
    /// Where the finger plucks, as a share of the vibrating length, above 0 and below 1.
    pub pluck_ratio: f64,
    /// How the strings are plucked, raised, cut and kept.
    pub conditions: Conditions,
    /// What counts as a finding.
    pub limits: Limits,
}

impl Harp {
    /// The limits with the highest load share that is right for each of its strings: a band behind a curve has one
    /// edge for all.
    pub fn limits_for_all(&self) -> Limits {
        let known = self.strings.iter().filter_map(|string| string.make_up.as_ref().ok());
        let most = known.map(|make_up| self.limits.most_share_percent(is_soft(make_up)));
        let working_share_percent =
            most.reduce(f64::min).unwrap_or(self.limits.working_share_percent);
        Limits { working_share_percent, ..self.limits.clone() }
    }
}
