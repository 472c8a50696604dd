//! The best set of a chain: a pass without a price on the pull; if the total is too great, the best price, and labels.

use super::chain::Chain;
use super::labels::{EQUAL, Labels, ROUNDING};
use super::pass::Pass;

/// More multipliers than this are not tried; each is the crossing of two lines, so that few are needed.
const MOST_PASSES: usize = 80;

/// What was found.
#[derive(Clone, Debug)]
pub(super) enum Solved {
    /// A best set, by the candidate of each layer.
    Set(SolvedSet),
    /// No set meets the rules of strings and neighbours.
    NoSet,
    /// None meets the limit of the total.
    TooMuch,
}

/// A best set.
#[derive(Clone, Debug)]
pub(super) struct SolvedSet {
    pub set: Vec<usize>,
    /// No set costs less.
    pub bound: f64,
    /// The bound that the best multiplier gave.
    pub dual_bound: f64,
    /// The first layer in which an equally good set differs.
    pub tie: Option<usize>,
    /// Whether it is proven that none is better.
    pub proven: bool,
    pub passes: usize,
    pub labels: usize,
}

/// A point of the trade between cost and pull.
#[derive(Clone, Debug, Default)]
struct Trade {
    cost: f64,
    pull: f64,
    set: Vec<usize>,
}

#[derive(Clone, Debug)]
enum Phase {
    /// Without a price.
    Free,
    /// The least pull.
    Lightest,
    /// At a price.
    Priced,
    Labels(Labels),
    Done,
}

/// The search for the best set of a chain.
#[derive(Clone, Debug)]
pub(super) struct Solve {
    pub chain: Chain,
    phase: Phase,
    pass: Pass,
    lightest: Pass,
    /// Too heavy, but cheaper; light enough.
    heavy: Trade,
    light: Trade,
    bound: f64,
    passes: usize,
    /// The price is given, and there is no limit.
    fixed: bool,
    solved: Option<Solved>,
}

impl Solve {
    /// Of a chain, whose limit of the total holds if it has one.
    pub fn new(chain: Chain) -> Self {
        Self::at_price(chain, 0.0, false)
    }

    /// Of a chain with so high a price on the pull that the least pull comes first.
    pub fn lightest(chain: Chain) -> Self {
        Self::at_price(chain, super::evaluate::PENALTY, true)
    }

    fn at_price(chain: Chain, multiplier: f64, fixed: bool) -> Self {
        let pass = Pass::priced(&chain, multiplier);
        Self {
            chain,
            phase: Phase::Free,
            pass,
            lightest: Pass::default(),
            heavy: Trade::default(),
            light: Trade::default(),
            bound: f64::NEG_INFINITY,
            passes: 0,
            fixed,
            solved: None,
        }
    }

    /// What was found, once all is done.
    pub const fn solved(&self) -> Option<&Solved> {
        self.solved.as_ref()
    }

    /// Does one layer of what is to be done; gives the work that it took.
    pub fn advance(&mut self) -> usize {
        let pass = match &mut self.phase {
            Phase::Done => return 0,
            Phase::Labels(labels) => {
                let (work, done) = labels.advance(&self.chain, &self.pass, &self.lightest);
                if done {
                    self.close();
                }
                return work;
            }
            Phase::Lightest => &mut self.lightest,
            Phase::Free | Phase::Priced => &mut self.pass,
        };
        let work = pass.advance(&self.chain);
        if pass.is_done() {
            self.passes += 1;
            match self.phase {
                Phase::Free => self.after_free(),
                Phase::Lightest => self.after_lightest(),
                _ => self.after_priced(),
            }
        }
        work
    }

    fn after_free(&mut self) {
        let start = self.chain.start();
        let (least, from) = self.pass.best(start);
        if least == f64::INFINITY && !self.chain.layers.is_empty() {
            self.finish(Solved::NoSet);
            return;
        }
        let (set, tie) = first_of_equals(&self.chain, &self.pass, start);
        let (cost, pull) = self.chain.sums(&set);
        if self.fixed || self.chain.most_total_n.is_none() || pull <= 1.0 + ROUNDING {
            self.finish(Solved::Set(SolvedSet {
                set,
                bound: cost,
                dual_bound: cost,
                tie,
                proven: true,
                passes: self.passes,
                labels: 0,
            }));
            return;
        }
        self.bound = least;
        // Of equal sets another may be light enough.
        let set = self.pass.set(&self.chain, 0, from, start);
        let (cost, pull) = self.chain.sums(&set);
        self.heavy = Trade { cost, pull, set };
        self.lightest = Pass::of_pull(&self.chain);
        self.phase = Phase::Lightest;
    }

    fn after_lightest(&mut self) {
        let start = self.chain.start();
        let (least_ratio, from) = self.lightest.best(start);
        if least_ratio > 1.0 + ROUNDING {
            self.finish(Solved::TooMuch);
            return;
        }
        let set = self.lightest.set(&self.chain, 0, from, start);
        let (cost, pull) = self.chain.sums(&set);
        self.light = Trade { cost, pull, set };
        if self.heavy.pull <= 1.0 + ROUNDING {
            self.light = std::mem::take(&mut self.heavy);
            self.label();
        } else {
            self.price();
        }
    }

    /// Tries the price at which the two points cost the same.
    fn price(&mut self) {
        let gain = self.light.cost - self.heavy.cost;
        if gain <= EQUAL * 1e-3 || self.passes >= MOST_PASSES {
            self.label();
            return;
        }
        let multiplier = gain / (self.heavy.pull - self.light.pull);
        self.pass = Pass::priced(&self.chain, multiplier);
        self.phase = Phase::Priced;
    }

    fn after_priced(&mut self) {
        let start = self.chain.start();
        let (least, from) = self.pass.best(start);
        let multiplier = self.pass.multiplier;
        self.bound = self.bound.max(least - multiplier);
        let line = self.heavy.cost + multiplier * self.heavy.pull;
        let set = self.pass.set(&self.chain, 0, from, start);
        let (cost, pull) = self.chain.sums(&set);
        if least >= line - 1e-12 * (1.0 + line.abs()) {
            self.label();
            return;
        }
        let point = Trade { cost, pull, set };
        if pull > 1.0 + ROUNDING {
            self.heavy = point;
        } else {
            self.light = point;
        }
        self.price();
    }

    /// Closes what is left between the bound and the best set known.
    fn label(&mut self) {
        let light = std::mem::take(&mut self.light);
        self.phase = Phase::Labels(Labels::new(light.cost, light.set));
    }

    fn close(&mut self) {
        let Phase::Labels(labels) = &self.phase else { return };
        let (cost, set) = labels.best.clone();
        let proven = labels.complete || cost <= self.bound + EQUAL;
        let dual_bound = self.bound.min(cost);
        let bound = if labels.complete { cost } else { dual_bound };
        let (passes, tie, labels) = (self.passes, labels.tie, labels.count);
        let set = SolvedSet { set, bound, dual_bound, tie, proven, passes, labels };
        self.finish(Solved::Set(set));
    }

    fn finish(&mut self, solved: Solved) {
        self.solved = Some(solved);
        self.phase = Phase::Done;
        self.pass = Pass::default();
        self.lightest = Pass::default();
    }
}

/// Of all sets whose sum is as low as the least, the one whose items come first, from the highest string down; and
/// the first layer in which another would do as well.
pub(super) fn first_of_equals(
    chain: &Chain,
    pass: &Pass,
    start: usize,
) -> (Vec<usize>, Option<usize>) {
    let most = pass.best(start).0 + EQUAL;
    let own =
        |candidate: &super::candidate::Candidate| candidate.own + pass.multiplier * candidate.pull;
    let mut set = Vec::with_capacity(chain.layers.len());
    let (mut sum, mut state, mut tie) = (0.0, start, None);
    for (at, layer) in chain.layers.iter().enumerate() {
        let before = at.checked_sub(1).map(|above| &chain.layers[above].candidates[set[above]]);
        let mut chosen = None;
        for (index, candidate) in layer.candidates.iter().enumerate() {
            let (cost, next) = match before {
                None => (0.0, start),
                Some(upper) => match chain.way(at - 1, upper, candidate, state) {
                    Some(way) => (way.cost, way.state),
                    None => continue,
                },
            };
            if sum + cost + pass.least(at, next, index) > most {
                continue;
            }
            if chosen.is_none() {
                chosen = Some((index, next, cost + own(candidate)));
            } else {
                tie = tie.or(Some(at));
                break;
            }
        }
        let Some((index, next, cost)) = chosen else { break };
        set.push(index);
        (sum, state) = (sum + cost, next);
    }
    (set, tie)
}
