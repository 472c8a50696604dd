//! What the maker allows of a figure: the band behind its curve, and the words beside it.

use crate::engine::analysis::Limits;
use crate::engine::mechanics::semitones_to_break;
use crate::engine::units::Force;

/// What the maker allows of a figure.
#[derive(Clone, Copy, Debug)]
pub struct Allowed {
    /// The lowest and the highest value in the unit of the heading; an open side is `None`.
    pub of: fn(&Limits) -> [Option<f64>; 2],
    /// The words beside the curve, in which `{low}` and `{high}` stand for the two.
    pub words: &'static str,
    /// The value at which a string breaks.
    pub breaks_at: Option<f64>,
}

pub(super) const LEAST_TENSION: Allowed = Allowed {
    of: |limits| [Some(limits.least_tension.to_n()), None],
    words: "lowest {low}",
    breaks_at: None,
};

pub(super) const WORKING_SHARE: Allowed = Allowed {
    of: |limits| [Some(limits.slack_share_percent), Some(limits.working_share_percent)],
    words: "slack under {low}, working to {high}",
    breaks_at: Some(100.0),
};

pub(super) const WORKING_SEMITONES: Allowed = Allowed {
    of: |limits| {
        let at = |percent| semitones_to_break(Force::from_n(percent), Force::from_n(100.0));
        [Some(at(limits.working_share_percent)), Some(at(limits.slack_share_percent))]
    },
    words: "working from {low} up",
    breaks_at: Some(0.0),
};

pub(super) const FEEL: Allowed = Allowed {
    of: |limits| {
        let (low, high) = limits.stiffness_band;
        [Some(low.to_n_per_mm()), Some(high.to_n_per_mm())]
    },
    words: "target {low} to {high}",
    breaks_at: None,
};

pub(super) const SHARPEST_PARTIAL: Allowed = Allowed {
    of: |limits| [None, Some(limits.partial_8_cents)],
    words: "limit {high} where it is heard",
    breaks_at: None,
};
