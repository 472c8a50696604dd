//! Leaves out items that cannot be in a best set, before the counts and the total pull are dealt with exactly.
//!
//! With prices on the pull and on each further item instead of their limits, one pass up and one pass down tell the
//! least that any set with a certain item on a certain string comes to. Where that is more than a set that is known
//! to keep the rules, the item goes. No best set, and none that is equally good, is lost.

use super::chain::Chain;
use super::evaluate::count;
use super::labels::{EQUAL, ROUNDING};
use super::pass::Pass;

/// More prices than this are not tried.
const MOST_TRIES: usize = 9;
/// Near enough: the share of its cost that a set may lie above the bound.
const NEAR: f64 = 0.002;
/// The first price of a further item, where the greatest weight is 1.
const FIRST_ITEM: f64 = 0.02;

/// A price between one that is too low and one that is high enough, each with the excess over the limit.
#[derive(Clone, Copy, Debug, Default)]
struct Price {
    at: f64,
    low: Option<(f64, f64)>,
    high: Option<(f64, f64)>,
}

impl Price {
    /// Goes on from the excess at this price.
    fn learn(&mut self, excess: f64, first: f64) {
        if excess > 0.0 {
            self.low = Some((self.at, excess));
        } else if self.at > 0.0 {
            self.high = Some((self.at, excess));
        }
        self.at = match (self.low, self.high) {
            (None, _) => return,
            (Some((low, _)), None) if low > 0.0 => 2.5 * low,
            (Some(_), None) => first,
            (Some((low, over)), Some((high, under))) => {
                let share = (over / (over - under)).clamp(0.1, 0.9);
                low + share * (high - low)
            }
        };
    }
}

#[derive(Clone, Debug)]
struct Tried {
    bound: f64,
    items_price: f64,
    pass: Pass,
}

/// The search for what can be left out.
#[derive(Clone, Debug)]
pub(super) struct Narrow {
    full: Chain,
    relaxed: Chain,
    pass: Pass,
    best: Option<Tried>,
    /// Cost of the best set found that keeps the rules.
    known: f64,
    pull: Price,
    items: Price,
    tries: usize,
    /// The chain from the bass to the treble, with its pass.
    mirrored: Option<(Chain, Pass)>,
    done: bool,
}

impl Narrow {
    /// Of a chain.
    pub fn new(full: Chain) -> Self {
        let relaxed = full.without_counts(0.0);
        let pass = Pass::priced(&relaxed, 0.0);
        // Without a limit a pass is all that is needed.
        let done = full.most_total_n.is_none() && full.states() == 1 || full.layers.is_empty();
        Self {
            full,
            relaxed,
            pass,
            best: None,
            known: f64::INFINITY,
            pull: Price::default(),
            items: Price::default(),
            tries: 0,
            mirrored: None,
            done,
        }
    }

    /// Does one layer; gives the work that it took, 0 when all is done.
    pub fn advance(&mut self) -> usize {
        if self.done {
            return 0;
        }
        if let Some((chain, pass)) = &mut self.mirrored {
            let work = pass.advance(chain);
            if pass.is_done() {
                self.prune();
            }
            return work;
        }
        let work = self.pass.advance(&self.relaxed);
        if self.pass.is_done() {
            self.look();
        }
        work
    }

    /// The chain that is left.
    pub fn into_chain(self) -> Chain {
        self.full
    }

    /// Looks at the set of one try, and sets out for the next.
    fn look(&mut self) {
        self.tries += 1;
        let (least, from) = self.pass.best(0);
        if least == f64::INFINITY {
            self.done = true;
            return;
        }
        let set = self.pass.set(&self.relaxed, 0, from, 0);
        let (cost, pull) = self.full.sums(&set);
        let limited = self.full.most_total_n.is_some();
        if cost < self.known && (!limited || pull <= 1.0 + ROUNDING) {
            self.known = cost;
        }
        let (pull_price, items_price) = (self.pass.multiplier, self.items.at);
        let further = self.full.most_items().saturating_sub(1);
        let bound = least - if limited { pull_price } else { 0.0 } - items_price * count(further);
        if self.best.as_ref().is_none_or(|best| bound > best.bound) {
            let pass = std::mem::take(&mut self.pass);
            self.best = Some(Tried { bound, items_price, pass });
        }
        let bound = self.best.as_ref().map_or(bound, |best| best.bound);
        let near = self.known < f64::INFINITY && self.known - bound <= NEAR * self.known;
        if near || self.tries >= MOST_TRIES {
            self.turn();
            return;
        }
        if limited {
            self.pull.learn(pull - 1.0, self.first_pull_price(&set, pull));
        }
        if self.full.most_items() > 0 {
            let used = self.full.further_items(&set);
            // A set that is exactly at the limit is what is sought.
            self.items.learn(count(used) - count(further) - 0.5, FIRST_ITEM);
        }
        if self.pull.at == pull_price && self.items.at == items_price {
            self.turn();
            return;
        }
        self.relaxed = self.full.without_counts(self.items.at);
        self.pass = Pass::priced(&self.relaxed, self.pull.at);
    }

    /// The price at which the pull would be at its limit if each string followed it alone: the sum of `w e² + λ t`
    /// is least at `e = −λ t/2w`, which takes `λ t²/2w` off the pull.
    fn first_pull_price(&self, set: &[usize], pull: f64) -> f64 {
        let mut gives = 0.0;
        for (layer, chosen) in self.full.layers.iter().zip(set) {
            if !layer.kept && layer.weight > 0.0 {
                let share = layer.candidates[*chosen].pull;
                gives += share * share / (2.0 * layer.weight);
            }
        }
        let price = (pull - 1.0) / gives;
        if price > 0.0 && price.is_finite() { 1.05 * price } else { 1.0 }
    }

    /// Begins the pass the other way, at the prices with the best bound; without such a set nothing can be left out.
    fn turn(&mut self) {
        match &self.best {
            Some(best) if self.known < f64::INFINITY => {
                let chain = self.full.without_counts(best.items_price).mirrored();
                let pass = Pass::priced(&chain, best.pass.multiplier);
                self.mirrored = Some((chain, pass));
            }
            _ => self.done = true,
        }
    }

    fn prune(&mut self) {
        self.done = true;
        let (Some(best), Some((_, mirrored))) = (&self.best, &self.mirrored) else { return };
        let last = self.full.layers.len() - 1;
        let price = best.pass.multiplier;
        // What the least sums are above the bound is what any set with the item loses.
        let (least, _) = best.pass.best(0);
        let most = self.known - best.bound + least + 2.0 * EQUAL;
        for (at, layer) in self.full.layers.iter_mut().enumerate() {
            let keep: Vec<bool> = layer
                .candidates
                .iter()
                .enumerate()
                .map(|(index, candidate)| {
                    let own = candidate.own + price * candidate.pull;
                    let through =
                        best.pass.least(at, 0, index) + mirrored.least(last - at, 0, index) - own;
                    through <= most
                })
                .collect();
            layer.retain(&keep);
        }
    }
}
