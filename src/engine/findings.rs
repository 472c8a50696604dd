//! What is worth saying about a string that can be computed, with the numbers of what would mend it.

use super::pitch::Note;
use super::units::{Force, Frequency, Length, Stiffness};

/// Inharmonicity over the audible threshold, above which it may be a finding. Real guitar strings
/// lie up to 58 times over the threshold and the difference is only just noticeable to average
/// listeners (H. Järveläinen and M. Karjalainen, Importance of inharmonicity in the acoustic guitar).
pub const AUDIBLE_TIMES: f64 = 60.0;
/// Overall diameter over core diameter from which a core is called thin. Common practice, no source.
pub const THIN_CORE_RATIO: f64 = 4.0;

/// How much a finding weighs; the weightiest first.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Weight {
    /// The string breaks, or cannot work.
    Grave,
    /// The string works badly.
    Warning,
    /// Worth a look.
    Remark,
}

/// A finding about one string of the harp.
#[derive(Clone, Debug, PartialEq)]
pub struct Finding {
    /// Index of the string in the harp (its number minus one).
    pub index: usize,
    /// What was found.
    pub kind: FindingKind,
}

/// What was found, with the numbers that a sentence about it needs.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub enum FindingKind {
    /// The pull is over the breaking load; at `longest` it would be at the working share, and with a thinner gauge where
    /// `thinner_helps`.
    Breaks { load_percent: f64, longest: Length, thinner_helps: bool },
    /// The pull is past the working share; at `longest` it would be at it, and with a thinner gauge where `thinner_helps`.
    Overworked { load_percent: f64, limit_percent: f64, longest: Length, thinner_helps: bool },
    /// The load share is so low that the string will be false and dull.
    Slack { load_percent: f64, limit_percent: f64, shortest: Length },
    /// The pull is too little to hold the string steady; `thinnest` would do for a plain string.
    LittlePull { pull: Force, least: Force, thinnest: Option<Length> },
    /// The partials are so sharp that the string sounds false.
    Inharmonic { partial_8_cents: f64, limit_cents: f64, times_audible: f64 },
    /// The core is thin for what is wound on it.
    ThinCore { gauge_ratio: f64, limit_ratio: f64 },
    /// Thinner than the string above it, or thicker than the one below, of the same material.
    GaugeOrder { gauge: Length, neighbour: Length },
    /// Wound on a thinner core than the string above it, of the same materials.
    CoreOrder { core: Length, neighbour: Length },
    /// Its length steps out of line: longer than the string below it, or shorter than the one above.
    /// `between` is the length midway (as a ratio) between its neighbours.
    OutOfLine { length: Length, neighbour: Length, between: Option<Length> },
    /// Its length leaves the line of the lengths around, where it would be `line`.
    LengthOff { length: Length, line: Length },
    /// A note that does not follow from the others; `meant` does. With the notes of the strings above and below.
    Note { note: Note, meant: Note, beside: [Option<Note>; 2], why: Misplaced },
    /// Outside the band of pluck stiffness that was asked for.
    Feel { stiffness: Stiffness, band: (Stiffness, Stiffness) },
    /// Sounds higher than the string above it, or lower than the one below.
    PitchOrder { pitch: Frequency, neighbour: Frequency },
    /// The feel jumps where the make-up changes, from the string above or to the one below. Positive when the lower of
    /// the two is the stiffer.
    Jump { step_percent: f64, limit_percent: f64, from_above: bool },
    /// A lever or disc would sit nearer to its bridge pin than one can.
    TightRaise { distance: Length, least: Length },
    /// Of all strings it takes most turns of its pin, and more than the cut lengths allow for.
    Turns { turns: f64, limit: f64 },
}

/// What a note does not follow from.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Misplaced {
    /// The row of its neighbours: they leave room for one letter, and it is another.
    Row,
    /// The other octaves: all strings of its letter are altered otherwise.
    Sign,
}

impl FindingKind {
    /// Whether it is a slip of the hand from which others may follow, up to those of the frame: it is told first.
    pub const fn leads(&self) -> bool {
        matches!(
            self,
            Self::Note { .. }
                | Self::LengthOff { .. }
                | Self::OutOfLine { .. }
                | Self::PitchOrder { .. }
        )
    }

    /// How much it weighs.
    pub const fn weight(&self) -> Weight {
        match self {
            Self::Breaks { .. } => Weight::Grave,
            Self::Overworked { .. }
            | Self::Slack { .. }
            | Self::LittlePull { .. }
            | Self::Inharmonic { .. }
            | Self::ThinCore { .. }
            | Self::OutOfLine { .. }
            | Self::PitchOrder { .. }
            | Self::LengthOff { .. }
            | Self::Note { why: Misplaced::Row, .. }
            | Self::TightRaise { .. } => Weight::Warning,
            Self::GaugeOrder { .. }
            | Self::CoreOrder { .. }
            | Self::Note { why: Misplaced::Sign, .. }
            | Self::Feel { .. }
            | Self::Jump { .. }
            | Self::Turns { .. } => Weight::Remark,
        }
    }
}
