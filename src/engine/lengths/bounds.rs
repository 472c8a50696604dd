//! The least and the greatest length that a string may have, and where they come from.

use super::Asked;
use super::target::Sounding;
use crate::engine::analysis::{BREAKING_LOAD_N, HarpString, Known, LENGTH_M};
use crate::engine::units::{Force, Length};

/// Where a bound comes from.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Bound {
    /// [`Asked::least`] or [`Asked::most`].
    Asked,
    /// [`Asked::least_share_percent`] or [`Asked::most_share_percent`].
    LoadShare,
    /// Shorter, it would sound too high with no pull at all, or the bare ends would take all of it.
    Pull,
    /// Beyond what can be computed with, [`LENGTH_M`].
    Reach,
}

/// A string whose bounds leave no length.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Conflict {
    /// Index of the string in the harp.
    pub index: usize,
    /// The least length, and where it comes from.
    pub least: (Length, Bound),
    /// The greatest length, which is less, and where it comes from.
    pub most: (Length, Bound),
}

/// A length that can be computed with, in metres.
pub(super) fn known_m(length: Known<Length>) -> Option<f64> {
    let (least, most) = LENGTH_M;
    length.ok().map(Length::to_m).filter(|length| (least..=most).contains(length))
}

/// The bounds of a string, in metres.
#[derive(Clone, Copy)]
pub(super) struct Edges {
    pub least: (f64, Bound),
    pub most: (f64, Bound),
    /// A load share is asked for that cannot be worked out.
    pub lacks_share: bool,
}

impl Edges {
    fn at_least(&mut self, length: Option<f64>, bound: Bound) {
        if let Some(length) = length.filter(|length| length.is_finite() && *length > self.least.0) {
            self.least = (length, bound);
        }
    }

    fn at_most(&mut self, length: Option<f64>, bound: Bound) {
        if let Some(length) = length.filter(|length| length.is_finite() && *length < self.most.0) {
            self.most = (length, bound);
        }
    }

    /// The narrowest bounds of what is asked, what the string bears, and what can be computed with.
    pub(super) fn of(string: &HarpString, asked: &Asked) -> Self {
        let mut edges = Self {
            least: (LENGTH_M.0, Bound::Reach),
            most: (LENGTH_M.1, Bound::Reach),
            lacks_share: false,
        };
        let sounding = Sounding::of(string);
        edges.at_least(sounding.as_ref().map(Sounding::shortest_m), Bound::Pull);
        let load = string.make_up.as_ref().ok().and_then(|make_up| make_up.breaking_load());
        let (weakest, strongest) = BREAKING_LOAD_N;
        let load = load.filter(|load| (weakest..=strongest).contains(&load.to_n()));
        let mut at_share = |percent: Option<f64>| {
            let percent = percent.filter(|percent| percent.is_finite())?;
            let length = load.and_then(|load| {
                let tension = Force::from_n(percent.max(0.0) / 100.0 * load.to_n());
                Some(sounding.as_ref()?.length_at(tension).to_m())
            });
            edges.lacks_share |= length.is_none();
            length
        };
        let shares = [at_share(asked.least_share_percent), at_share(asked.most_share_percent)];
        edges.at_least(shares[0], Bound::LoadShare);
        edges.at_most(shares[1], Bound::LoadShare);
        edges.at_least(asked.least.map(Length::to_m), Bound::Asked);
        edges.at_most(asked.most.map(Length::to_m), Bound::Asked);
        edges
    }

    pub(super) fn conflict(&self, index: usize) -> Option<Conflict> {
        let [least, most] = [self.least, self.most].map(|(m, bound)| (Length::from_m(m), bound));
        (least.0 > most.0).then_some(Conflict { index, least, most })
    }
}
