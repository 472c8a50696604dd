//! The best set of strings for a design from a stock: what the search is asked, and what its answer means.
//!
//! [`Task::new`] reads design and stock, [`Task::search`] gives a search that works in slices, and [`Task::outcome`]
//! makes of its answer a preview of the whole design, a list of changes, and words. [`Outcome::edit`] takes all of it
//! or some strings, in one step.

pub mod both;
mod family;
mod kind;
pub mod lengths;
mod limit_words;
mod offer;
mod outcome;
mod own;
mod ranges;
mod spelling;
mod task;
#[cfg(test)]
mod tests;
mod words;

pub use self::family::{Usual, usual};
pub use self::kind::{kind_in_words, kind_name};
pub use self::outcome::{Alternative, Change, Outcome};
pub use self::words::{Line, WORTH_PERCENT};
use super::document::{Design, MaterialSpec, StockItem, WantsSpec};
use super::resolve::Resolved;
use super::targets::Point;
pub use crate::engine::choose::{Answer, Best, Front, Progress, Search};
use crate::engine::choose::{Parts, TaskString, reach};
use crate::engine::units::Force;

/// What there is to choose from.
#[derive(Clone, Copy, Debug)]
pub struct Shop<'a> {
    /// The items of one or more lists, each with its currency.
    pub items: &'a [StockItem],
    /// The materials of the lists that do not come with the program; those of the design go before them.
    pub materials: &'a [MaterialSpec],
    /// Whether what is on the strings now counts as well, each for the notes on which it is: then no set that is found
    /// is farther from what is wanted than they are, where they keep the limits.
    pub own: bool,
}

/// What is said of a whole set.
#[derive(Clone, Debug, PartialEq)]
pub struct Totals {
    /// The pull of all strings whose pull is known.
    pub tension: Force,
    /// How many different strings and wires.
    pub different: usize,
    /// How often the kind changes along the compass.
    pub changes: usize,
    /// The price of those strings that are sought and have one.
    pub price: f64,
    /// How many of those have none.
    pub without_price: usize,
    /// The parts of what the search makes least. Prices count only in the set that was found.
    pub parts: Parts,
}

/// A search that has been set up. It holds all it needs, so that it can run while the page goes on.
#[derive(Clone, Debug)]
pub struct Task {
    /// As the engine takes it.
    pub search: crate::engine::choose::Task,
    /// The items that can be used, in the order of the engine's stock, each with its make-up.
    pub items: Vec<StockItem>,
    /// The materials of the lists.
    pub materials: Vec<MaterialSpec>,
    /// The names of the kinds, in the order of the engine's families.
    pub kinds: Vec<String>,
    /// The currency of the prices that are compared.
    pub currency: String,
    /// The strings that may change, by their index.
    pub sought: Vec<usize>,
    /// What could not be used, in sentences without a full stop.
    pub left_out: Vec<String>,
}

impl Task {
    /// Sets up the search for a design. `rows` says of each string whether it may change; a locked one stays, and
    /// so does one that is not mentioned.
    pub fn new(design: &Design, resolved: &Resolved, shop: &Shop<'_>, rows: &[bool]) -> Self {
        task::task(design, resolved, shop, rows)
    }

    /// The kinds of string that the stock has and the design uses, in their usual order, whatever is asked for.
    pub fn kinds_at_hand(design: &Design, resolved: &Resolved, shop: &Shop<'_>) -> Vec<String> {
        offer::kinds_at_hand(design, resolved, shop)
    }

    /// The least and the greatest value of what is wanted that the stock can give each string by itself, in N/mm or N.
    pub fn reach(&self, wants: WantsSpec) -> Vec<Option<Point>> {
        let ratio = self.search.pluck_ratio;
        let pulls = reach(&self.search).into_iter().zip(&self.search.strings);
        let value = |(pulls, place): (Option<(Force, Force)>, &TaskString)| {
            let (least, most) = pulls?;
            let per_n = match wants {
                WantsSpec::Tension => 1.0,
                WantsSpec::Stiffness => 1.0 / (place.length.ok()?.to_mm() * ratio * (1.0 - ratio)),
            };
            Some((least.to_n() * per_n, most.to_n() * per_n)).filter(|(least, _)| *least > 0.0)
        };
        pulls.map(value).collect()
    }

    /// A search that has not begun; it works in slices.
    pub fn search(&self) -> Search {
        Search::new(self.search.clone())
    }

    /// A search for the best sets of ever fewer different strings.
    pub fn by_items(&self) -> Front {
        Front::by_items(self.search.clone())
    }

    /// A search for the best sets of ever lower price.
    pub fn by_price(&self) -> Front {
        Front::by_price(self.search.clone())
    }
}
