//! Alternatives: the best sets of ever fewer items, or of ever lower price, against what they lose in evenness.

use super::Task;
use super::answer::{self, Best};
use super::chain::Chain;
use super::evaluate::{Table, count, unit};
use super::labels::{EQUAL, ROUNDING};
use super::pass::Pass;
use super::search::{ALL, Progress, Search, everything};
use super::solve::{SolvedSet, first_of_equals};

/// How much more than anything else the price counts in the cheapest set.
const DEAR: f64 = 1e3;
/// The most sets of a front by price.
pub const MOST_BY_PRICE: usize = 24;

#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum By {
    Items,
    Price,
}

#[derive(Clone, Debug)]
enum Phase {
    /// The best set without regard to what is traded.
    First(Box<Search>),
    /// One pass for every number of items.
    Pass(Box<(Chain, Pass)>),
    /// The number of items for which the total pull matters.
    Fewer(Box<Search>),
    /// The cheapest set.
    Cheapest(Box<Search>),
    /// Between two sets that were found.
    Between(usize, usize, Box<Search>),
    Done,
}

/// A search for alternatives, in slices.
#[derive(Clone, Debug)]
pub struct Front {
    task: Task,
    table: Option<Table>,
    by: By,
    phase: Phase,
    found: Vec<Best>,
    /// Numbers of items, or pairs of sets, that are still to be looked at.
    waiting: Vec<(usize, usize)>,
    work: usize,
}

/// The best sets of ever fewer items, that of fewest first; see [`Front::by_items`].
pub fn alternatives_by_items(task: &Task) -> Vec<Best> {
    Front::by_items(task.clone()).finish()
}

/// The best sets of ever lower price, the cheapest first; see [`Front::by_price`].
pub fn alternatives_by_price(task: &Task) -> Vec<Best> {
    Front::by_price(task.clone()).finish()
}

impl Front {
    /// For each number of items at which it makes a difference, the best set with no more of them: the whole front.
    /// The weight of items is left out, as their number is what is traded.
    pub fn by_items(mut task: Task) -> Self {
        task.weights.item = 0.0;
        Self::new(task, By::Items)
    }

    /// The best sets for every weight of the price from none to all: those on the outer corner of the front, which
    /// no mix of two others beats, up to [`MOST_BY_PRICE`].
    pub fn by_price(mut task: Task) -> Self {
        task.weights.price = 0.0;
        Self::new(task, By::Price)
    }

    fn new(task: Task, by: By) -> Self {
        let phase = Phase::First(Box::new(Search::new(task.clone())));
        let (found, waiting) = (Vec::new(), Vec::new());
        Self { task, table: None, by, phase, found, waiting, work: 0 }
    }

    /// Works until the budget is used up or all is found; see [`Search::step`].
    pub fn step(&mut self, budget: usize) -> Progress {
        let most = self.work.saturating_add(budget.max(1));
        while self.work < most && !matches!(self.phase, Phase::Done) {
            self.advance();
            self.work += 1;
        }
        Progress { done: matches!(self.phase, Phase::Done), work: self.work }
    }

    /// What was found so far; in order once all is done, the fewest items or the lowest price first.
    pub fn found(&self) -> &[Best] {
        &self.found
    }

    /// Works to the end.
    pub fn finish(mut self) -> Vec<Best> {
        while !self.step(usize::MAX / 2).done {}
        self.found
    }

    fn advance(&mut self) {
        match &mut self.phase {
            Phase::Done => {}
            Phase::Pass(pass) => {
                let (chain, pass) = &mut **pass;
                self.work += pass.advance(chain);
                if pass.is_done() {
                    self.read();
                    self.next();
                }
            }
            Phase::First(search)
            | Phase::Fewer(search)
            | Phase::Cheapest(search)
            | Phase::Between(_, _, search) => {
                self.work = self.work.saturating_add(search.slice());
                if let Some(answer) = search.answer() {
                    let best = answer.best().cloned();
                    self.take(best);
                }
            }
        }
    }

    /// Takes the outcome of a search.
    fn take(&mut self, best: Option<Best>) {
        match (&self.phase, best) {
            (Phase::First(search), Some(best)) => {
                self.table = Some(search.table().clone());
                let runs = best.set.runs;
                self.found.push(best);
                match self.by {
                    By::Items if runs > 1 => {
                        let mut task = self.task.clone();
                        task.rules.most_items = Some(runs - 1);
                        let table = search.table();
                        let chain = Chain::new(&task, table, everything(table), ALL, false);
                        let pass = Pass::priced(&chain, 0.0);
                        self.phase = Phase::Pass(Box::new((chain, pass)));
                    }
                    By::Items => self.close(),
                    By::Price => {
                        let search = self.priced(DEAR * search.table().scale);
                        self.phase = search.map_or(Phase::Done, Phase::Cheapest);
                    }
                }
            }
            (Phase::First(_), None) => self.phase = Phase::Done,
            (Phase::Cheapest(_), Some(best)) => {
                self.found.push(best);
                self.waiting.push((0, 1));
                self.next();
            }
            (Phase::Between(cheap, dear, _), Some(best)) => {
                let (one, other) = (*cheap, *dear);
                let weight = self.weight(one, other);
                let sum = |best: &Best| even(best) + weight * units(best, &self.task);
                if sum(&best) < sum(&self.found[one]) - EQUAL * self.scale().max(weight) {
                    let new = self.found.len();
                    self.found.push(best);
                    self.waiting.extend([(new, other), (one, new)]);
                }
                self.next();
            }
            (Phase::Fewer(_), Some(best)) => {
                self.found.push(best);
                self.next();
            }
            _ => self.next(),
        }
    }

    /// Reads the sets of each number of items out of one pass.
    fn read(&mut self) {
        let Phase::Pass(done) = &self.phase else { return };
        let (chain, pass) = &**done;
        let Some(table) = &self.table else { return };
        for items in 1..=chain.most_items() {
            let start = chain.start_with(items);
            if pass.best(start).0 == f64::INFINITY {
                continue;
            }
            let (set, tie) = first_of_equals(chain, pass, start);
            let (cost, pull) = chain.sums(&set);
            if chain.most_total_n.is_some() && pull > 1.0 + ROUNDING {
                self.waiting.push((items, 0));
                continue;
            }
            let solved = SolvedSet {
                set,
                bound: cost,
                dual_bound: cost,
                tie,
                proven: true,
                passes: 1,
                labels: 0,
            };
            self.found.push(answer::best(&self.task, table, chain, &solved));
        }
    }

    /// Begins what waits next.
    fn next(&mut self) {
        let Some((one, other)) = self.waiting.pop() else {
            self.close();
            return;
        };
        self.phase = match self.by {
            By::Items => {
                let mut task = self.task.clone();
                task.rules.most_items = Some(one);
                let table = self.table.clone().unwrap_or_else(|| Table::new(&task));
                Phase::Fewer(Box::new(Search::again(task, table)))
            }
            By::Price => {
                let weight = self.weight(one, other);
                let worth = weight > 0.0 && weight.is_finite() && self.found.len() < MOST_BY_PRICE;
                match self.priced(weight).filter(|_| worth) {
                    Some(search) => Phase::Between(one, other, search),
                    None => {
                        self.phase = Phase::Done;
                        return self.next();
                    }
                }
            }
        };
    }

    /// The weight of the price at which two sets come to the same.
    fn weight(&self, one: usize, other: usize) -> f64 {
        let (one, other) = (&self.found[one], &self.found[other]);
        let saved = units(one, &self.task) - units(other, &self.task);
        (even(other) - even(one)) / saved
    }

    fn scale(&self) -> f64 {
        self.table.as_ref().map_or(1.0, |table| table.scale)
    }

    fn priced(&self, weight: f64) -> Option<Box<Search>> {
        let mut task = self.task.clone();
        task.weights.price = weight;
        Some(Box::new(Search::again(task, self.table.clone()?)))
    }

    /// Puts what was found in order, and leaves out what another beats in both.
    fn close(&mut self) {
        self.phase = Phase::Done;
        let (by, task) = (self.by, self.task.clone());
        let room = EQUAL * self.scale();
        let traded = |best: &Best| match by {
            By::Items => count(best.set.runs),
            By::Price => units(best, &task),
        };
        let worth = |best: &Best| match by {
            By::Items => best.set.parts.sum(),
            By::Price => even(best),
        };
        let mut found = std::mem::take(&mut self.found);
        crate::engine::order::sort(&mut found, |one, other| {
            let (a, b) = (traded(one), traded(other));
            a > b || (a == b && worth(one) > worth(other))
        });
        for best in found {
            if self.found.last().is_none_or(|last| worth(&best) < worth(last) - room) {
                self.found.push(best);
            }
        }
    }
}

/// The sum without the price.
fn even(best: &Best) -> f64 {
    best.set.parts.sum() - best.set.parts.price
}

/// The price as the sum counts it.
fn units(best: &Best, task: &Task) -> f64 {
    best.set.price / unit(task.weights.price_unit) + count(best.set.without_price)
}
