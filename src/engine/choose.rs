//! The best set of strings of a whole harp from a stock: the exact least of one sum over all strings together.
//!
//! # What is least
//!
//! Strings are taken from string 1 down; one without a pitch or a length is left out, and its neighbours are then
//! neighbours of each other. With the pull `T` of an item on a string, its pluck stiffness `k`, and the target
//! `T*` or `k*` (each gives the other, as `T = k L β (1 − β)`), the sum has these parts, all pure numbers:
//!
//! - `target`: for each string with a target, its weight times `ln²(T/T*)`, which is `ln²(k/k*)`;
//! - `feel` and `tension`: for each pair of neighbours, the weight times the square of the logarithm of the step of
//!   `k`, or of `T`, beyond the step of the targets. Where one of the two has no target, any step counts; where both
//!   have one, the two squares are the same number and the weights add. At a change of family
//!   [`Weights::at_change`] is added to the weight of `feel`;
//! - `changes`: the weight for each change of family between neighbours;
//! - `items`: the weight for each run but the first. A run is neighbouring strings of one item. While the order
//!   holds and gauges do not shrink there are as many runs as different items, save where a stock has two items of
//!   one family and one gauge; then a run may come again;
//! - `price`: the weight times the price over [`Weights::price_unit`]. An item without a price counts as one unit.
//!
//! Items of one family that are alike ([`MakeUp::is_alike`]) are one item, however often the stock lists them: a
//! string gets the one of them that keeps the rules at the least cost, then the cheapest, then the first.
//!
//! Hard rules ([`Rules`]) are never broken, and whatever they say no string breaks. Of a string that is kept nothing
//! is asked, and nothing of two kept neighbours; between a kept string and a free one the rules of neighbours hold.
//!
//! Of sets that are equal within 10⁻⁹ of the greatest weight, the one with the item of lowest index at string 1, then
//! at string 2, and so on; [`Best::tie`] tells of it.
//!
//! # How it is found
//!
//! By dynamic programming from the lowest string up. What an item may be followed by is the least of parabolas in
//! the logarithm of the pull, which `envelope` finds in `log m` steps instead of `m`. The counts of changes and of
//! items are added states where they are limited. The limit of the total pull is priced by a multiplier; the best
//! multiplier gives a bound, and labels of (sum, pull) that keep below the best set known close what is left between
//! the two. [`Best::bound`] and [`Best::proven`] tell how far that went. Before that, items that no best set can
//! have are left out.
//!
//! # Source
//!
//! R. Bellman's principle; the dual of the constrained shortest path and its closing by labels follow
//! G. Y. Handler and I. Zang, A dual algorithm for the constrained shortest path problem, Networks 10 (1980) 293
//! (from memory).

mod answer;
mod candidate;
mod chain;
mod conflict;
mod envelope;
mod evaluate;
mod front;
mod labels;
mod narrow;
mod pass;
mod reach;
mod search;
mod solve;

pub use self::answer::{
    Answer, Best, Broken, Conflict, Nearest, NoItem, Parts, Pick, Refusal, Set,
};
pub use self::evaluate::{LIMITS, Limit, LimitKind, MOST_ITEMS};
pub use self::front::{Front, alternatives_by_items, alternatives_by_price};
pub use self::reach::reach;
pub use self::search::{Progress, Search, choose};
use super::analysis::Known;
use super::construction::MakeUp;
use super::cut::Allowance;
use super::pitch::Note;
use super::units::{Force, Frequency, Length, Stiffness};

/// What a string is wanted to have.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Target {
    /// Pluck stiffness.
    Stiffness(Stiffness),
    /// Tension.
    Tension(Force),
}

/// A string for which an item is sought, or which is kept.
#[derive(Clone, Debug, PartialEq)]
pub struct TaskString {
    /// The note, which the notes that an item is sold for are compared with.
    pub note: Option<Note>,
    /// The pitch.
    pub frequency: Known<Frequency>,
    /// Soundboard to bridge pin.
    pub length: Known<Length>,
    /// What it should have.
    pub target: Option<Target>,
    /// How much a deviation from the target counts; 1 is usual.
    pub weight: f64,
    /// What stays on it.
    pub kept: Option<Kept>,
}

/// What stays on a string.
#[derive(Clone, Debug, PartialEq)]
pub struct Kept {
    /// The make-up. If the stock has one that is alike in the same family, it counts as that item. It costs nothing.
    pub make_up: MakeUp,
    /// The family; without one, anything may stand beside it, and that is no change.
    pub family: Option<usize>,
}

/// A price in a currency that is the caller's.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Price {
    /// Of one string.
    Each(f64),
    /// Of a metre of the length to cut. A string of unknown gauge is cut as one without thickness.
    PerMetre(f64),
}

/// An entry of a stock. Its index in the stock settles ties.
#[derive(Clone, Debug, PartialEq)]
pub struct Item {
    /// What the string is made of.
    pub make_up: MakeUp,
    /// Index of its family.
    pub family: usize,
    /// What it costs, where that is known.
    pub price: Option<Price>,
    /// Whether it is there.
    pub in_stock: bool,
    /// Lowest note that it is sold for.
    pub lowest: Option<Note>,
    /// Highest note that it is sold for.
    pub highest: Option<Note>,
}

/// Strings or wires that make one run on a harp, as all of one material. Families are listed in the order in which
/// they come from the treble to the bass.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Family {
    /// First and last index of the strings on which it may be used; without, on all.
    pub strings: Option<(usize, usize)>,
}

/// Gauges allowed on some strings.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Zone {
    /// First and last index of the strings.
    pub strings: (usize, usize),
    /// Least gauge.
    pub least: Option<Length>,
    /// Greatest gauge.
    pub greatest: Option<Length>,
}

/// Hard rules.
#[derive(Clone, Debug, PartialEq)]
pub struct Rules {
    /// Greatest load share in per cent; above 100 is never chosen.
    pub most_share_percent: Option<f64>,
    /// Greatest load share of a string whose core is gut or plastic, in per cent, on top of the other.
    pub most_soft_share_percent: Option<f64>,
    /// Least load share in per cent.
    pub least_share_percent: Option<f64>,
    /// Whether an item whose load share is not known may be chosen.
    pub unknown_share: bool,
    /// Gauges by zone; an item of unknown gauge may not be chosen where there is one.
    pub zones: Vec<Zone>,
    /// Whether only what is in stock may be chosen.
    pub only_in_stock: bool,
    /// Whether an item may be chosen only for the notes that it is sold for.
    pub only_sold_for: bool,
    /// Whether each family is one run, in the order of the families.
    pub in_order: bool,
    /// Whether within a family no string is thinner than the one above it, and no wound one has a thinner core. An item
    /// of unknown gauge may stand beside any, and a core beside an unknown or none.
    pub no_shrinking: bool,
    /// By how many per cent the pluck stiffness may rise or fall from a string to the next.
    pub most_jump_percent: Option<f64>,
    /// Most changes of family.
    pub most_changes: Option<usize>,
    /// Most runs of one item: most different items.
    pub most_items: Option<usize>,
    /// Greatest total pull of all strings that are not left out.
    pub most_total: Option<Force>,
}

impl Default for Rules {
    /// What is safe and orderly: 80 % of the breaking load at most (common practice, no source), the order and the
    /// gauges kept, items as they are sold, and an unknown share not taken for a low one.
    fn default() -> Self {
        Self {
            most_share_percent: Some(80.0),
            most_soft_share_percent: None,
            least_share_percent: None,
            unknown_share: false,
            zones: Vec::new(),
            only_in_stock: false,
            only_sold_for: true,
            in_order: true,
            no_shrinking: true,
            most_jump_percent: None,
            most_changes: None,
            most_items: None,
            most_total: None,
        }
    }
}

/// How much each part counts. A weight that is negative or no number counts as 0.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Weights {
    /// Steps of pluck stiffness between neighbours.
    pub feel: f64,
    /// Steps of tension between neighbours.
    pub tension: f64,
    /// Added to `feel` where the family changes.
    pub at_change: f64,
    /// A change of family.
    pub change: f64,
    /// A run of another item.
    pub item: f64,
    /// The price of one unit.
    pub price: f64,
    /// The price that counts as one; above 0.
    pub price_unit: f64,
}

impl Default for Weights {
    /// Chosen for this project, no source: a step of the feel counts half of a deviation from the target, and as
    /// much again three times where the family changes; a change of family costs as much as a string that is 10 %
    /// off; items and price cost nothing.
    fn default() -> Self {
        Self {
            feel: 0.5,
            tension: 0.0,
            at_change: 1.5,
            change: 0.01,
            item: 0.0,
            price: 0.0,
            price_unit: 1.0,
        }
    }
}

/// Everything that a choice depends on.
#[derive(Clone, Debug, PartialEq)]
pub struct Task {
    /// String 1 (the highest) first.
    pub strings: Vec<TaskString>,
    /// What there is to choose from.
    pub stock: Vec<Item>,
    /// From the treble to the bass.
    pub families: Vec<Family>,
    /// What is never broken.
    pub rules: Rules,
    /// How much each part counts.
    pub weights: Weights,
    /// Where the finger plucks, as a share of the vibrating length, above 0 and below 1.
    pub pluck_ratio: f64,
    /// What a string needs beyond its vibrating length, for prices by the metre.
    pub allowance: Allowance,
}
