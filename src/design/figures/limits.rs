//! What the maker allows of a figure: the band behind its curve, and the words beside it.

use std::fmt::Display;

use crate::engine::analysis::Limits;
use crate::engine::mechanics::semitones_to_break;
use crate::engine::units::Force;
use crate::words::figures as say;

/// What the maker allows of a figure.
#[derive(Clone, Copy, Debug)]
pub struct Allowed {
    /// The lowest and the highest value in the unit of the heading; an open side is `None`.
    pub of: fn(&Limits) -> [Option<f64>; 2],
    /// The words beside the curve, from the two as texts.
    pub words: fn(low: &dyn Display, high: &dyn Display) -> String,
    /// The value at which a string breaks.
    pub breaks_at: Option<f64>,
}

pub(super) const LEAST_TENSION: Allowed = Allowed {
    of: |limits| [Some(limits.least_tension.to_n()), None],
    words: |low, _| say::least_tension(low),
    breaks_at: None,
};

pub(super) const WORKING_SHARE: Allowed = Allowed {
    of: |limits| [Some(limits.slack_share_percent), Some(limits.working_share_percent)],
    words: |low, high| say::working_share(high, low),
    breaks_at: Some(100.0),
};

pub(super) const WORKING_SEMITONES: Allowed = Allowed {
    of: |limits| {
        let at = |percent| semitones_to_break(Force::from_n(percent), Force::from_n(100.0));
        [Some(at(limits.working_share_percent)), Some(at(limits.slack_share_percent))]
    },
    words: |low, _| say::working_semitones(low),
    breaks_at: Some(0.0),
};

pub(super) const FEEL: Allowed = Allowed {
    of: |limits| {
        let (low, high) = limits.stiffness_band;
        [Some(low.to_n_per_mm()), Some(high.to_n_per_mm())]
    },
    words: |low, high| say::feel(high, low),
    breaks_at: None,
};

pub(super) const SHARPEST_PARTIAL: Allowed = Allowed {
    of: |limits| [None, Some(limits.partial_8_cents)],
    words: |_, high| say::sharpest_partial(high),
    breaks_at: None,
};
