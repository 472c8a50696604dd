//! What lies between the bound of the best multiplier and the best set known: sets are built from string 1 down as
//! labels of (cost, pull), and a label goes when no set from it can be better than the best known, can keep the
//! limit of the total, or when another label of the same item is no worse in both.

use super::chain::Chain;
use super::pass::Pass;

/// So much may a pull pass its limit of 1: the rounding of a sum.
pub(super) const ROUNDING: f64 = 1e-12;
/// Costs as near as this are equal, where the greatest weight is 1.
pub(super) const EQUAL: f64 = 1e-9;
/// More ways than this are not looked at.
const MOST_WORK: usize = 60_000_000;
/// No label.
const NONE: u32 = u32::MAX;
/// No other set is as good.
const NO_TIE: u32 = u32::MAX;

#[derive(Clone, Copy, Debug)]
struct Label {
    cost: f64,
    pull: f64,
    candidate: u16,
    state: u32,
    from: u32,
    /// The first layer in which an equally good set differs.
    tie: u32,
    alive: bool,
}

/// The search; `layers` grows by one with each step.
#[derive(Clone, Debug)]
pub(super) struct Labels {
    layers: Vec<Vec<Label>>,
    /// Cost of the best set known, and the set.
    pub best: (f64, Vec<usize>),
    /// The first layer in which an equally good set differs.
    pub tie: Option<usize>,
    /// How many labels there were.
    pub count: usize,
    work: usize,
    /// Whether all was looked at.
    pub complete: bool,
}

impl Labels {
    /// With the best set known and its cost.
    pub const fn new(cost: f64, set: Vec<usize>) -> Self {
        Self { layers: Vec::new(), best: (cost, set), tie: None, count: 0, work: 0, complete: true }
    }

    /// Does one layer; gives the work that it took, and whether all is done.
    ///
    /// `priced` has the best multiplier, `lightest` the least pulls.
    pub fn advance(&mut self, chain: &Chain, priced: &Pass, lightest: &Pass) -> (usize, bool) {
        let at = self.layers.len();
        if at == chain.layers.len() || self.work > MOST_WORK {
            self.complete = at == chain.layers.len();
            if self.complete {
                self.close();
            }
            return (1, true);
        }
        let before = self.work;
        let layer = &chain.layers[at];
        let mut next = Next {
            at,
            labels: Vec::new(),
            of: vec![Vec::new(); layer.candidates.len() * chain.states()],
        };
        if at == 0 {
            for (index, candidate) in (0_u16..).zip(&layer.candidates) {
                let label = Label {
                    cost: candidate.own,
                    pull: candidate.pull,
                    candidate: index,
                    state: u32::try_from(chain.start()).unwrap_or(0),
                    from: NONE,
                    tie: NO_TIE,
                    alive: true,
                };
                self.take(chain, priced, lightest, label, &mut next);
            }
            self.work += layer.candidates.len();
        } else {
            self.extend(chain, priced, lightest, &mut next);
        }
        self.count += next.labels.len();
        self.layers.push(next.labels);
        (1 + self.work - before, false)
    }

    fn extend(&mut self, chain: &Chain, priced: &Pass, lightest: &Pass, next: &mut Next) {
        let at = next.at;
        let candidates = &chain.layers[at].candidates;
        for number in 0..self.layers[at - 1].len() {
            let from = self.layers[at - 1][number];
            if !from.alive {
                continue;
            }
            let upper = &chain.layers[at - 1].candidates[usize::from(from.candidate)];
            let state = usize::try_from(from.state).unwrap_or(0);
            let so_far = from.cost + priced.multiplier * (from.pull - 1.0);
            for (index, lower) in candidates.iter().enumerate() {
                // No state has more left than this one, and so none a lower sum.
                if so_far + priced.least(at, state, index) > self.best.0 + EQUAL {
                    continue;
                }
                let Some(way) = chain.way(at - 1, upper, lower, state) else { continue };
                let label = Label {
                    cost: from.cost + way.cost + lower.own,
                    pull: from.pull + lower.pull,
                    candidate: u16::try_from(index).unwrap_or(0),
                    state: u32::try_from(way.state).unwrap_or(0),
                    from: u32::try_from(number).unwrap_or(NONE),
                    tie: from.tie,
                    alive: true,
                };
                self.take(chain, priced, lightest, label, next);
            }
            self.work += candidates.len();
            if self.work > MOST_WORK {
                return;
            }
        }
    }

    /// Keeps a label if a set that is better than the best known may come of it.
    fn take(
        &mut self,
        chain: &Chain,
        priced: &Pass,
        lightest: &Pass,
        label: Label,
        next: &mut Next,
    ) {
        let (at, index) = (next.at, usize::from(label.candidate));
        let candidate = &chain.layers[at].candidates[index];
        let state = usize::try_from(label.state).unwrap_or(0);
        let multiplier = priced.multiplier;
        // From the next string down, at the price of the multiplier.
        let rest = priced.least(at, state, index) - candidate.own - multiplier * candidate.pull;
        if label.cost + multiplier * (label.pull - 1.0) + rest > self.best.0 + EQUAL {
            return;
        }
        let lightest = lightest.least(at, state, index) - candidate.pull;
        if label.pull + lightest > 1.0 + ROUNDING {
            return;
        }
        let pull = priced.pull(at, state, index) - candidate.pull;
        let cost = label.cost + rest - multiplier * pull;
        if label.pull + pull <= 1.0 + ROUNDING && cost < self.best.0 - 0.5 * EQUAL {
            let mut set = self.path(at, &label);
            set.pop();
            set.extend(priced.set(chain, at, index, state));
            let (cost, pull) = chain.sums(&set);
            if pull <= 1.0 + ROUNDING && cost < self.best.0 {
                self.best = (cost, set);
            }
        }
        let mut label = label;
        let slot = state * chain.layers[at].candidates.len() + index;
        for number in &next.of[slot] {
            // The labels are made in the order of the items from string 1 down, so this one comes first in a tie.
            let first = &mut next.labels[*number];
            if !first.alive {
                continue;
            }
            let equal = (first.cost - label.cost).abs() <= EQUAL
                && (first.pull - label.pull).abs() <= ROUNDING;
            if equal {
                let mut other = *first;
                other.tie = self.parting(at, first, &label).min(first.tie);
                *first = other;
                return;
            }
            if first.cost < label.cost - EQUAL && first.pull <= label.pull {
                return;
            }
            if label.cost < first.cost - EQUAL && label.pull <= first.pull {
                first.alive = false;
            }
        }
        label.alive = true;
        next.of[slot].push(next.labels.len());
        next.labels.push(label);
    }

    /// The candidates from string 1 to a label that continues those of the layers so far.
    fn path(&self, at: usize, label: &Label) -> Vec<usize> {
        let mut path = vec![usize::from(label.candidate)];
        let mut from = label.from;
        for layer in (0..at).rev() {
            let Some(own) = usize::try_from(from).ok().and_then(|n| self.layers[layer].get(n))
            else {
                break;
            };
            path.push(own.candidate.into());
            from = own.from;
        }
        path.reverse();
        path
    }

    /// The first layer in which the ways to two labels differ.
    fn parting(&self, at: usize, one: &Label, other: &Label) -> u32 {
        let (one, other) = (self.path(at, one), self.path(at, other));
        let same = one.iter().zip(&other).take_while(|(a, b)| a == b).count();
        u32::try_from(same).unwrap_or(NO_TIE)
    }

    /// Takes the best of the labels that came to the lowest string.
    fn close(&mut self) {
        let Some(last) = self.layers.len().checked_sub(1) else { return };
        let alive = || self.layers[last].iter().filter(|label| label.alive);
        let least = alive().map(|label| label.cost).fold(f64::INFINITY, f64::min);
        let mut equal = alive().filter(|label| label.cost <= least + EQUAL);
        let Some(first) = equal.next() else { return };
        let mut tie = first.tie;
        for other in equal {
            tie = tie.min(self.parting(last, first, other)).min(other.tie);
        }
        self.tie = usize::try_from(tie).ok().filter(|_| tie != NO_TIE);
        self.best = (first.cost, self.path(last, first));
    }
}

/// The layer that is being made.
struct Next {
    at: usize,
    labels: Vec<Label>,
    /// The labels of each state and candidate.
    of: Vec<Vec<usize>>,
}
