//! The search in slices, so that a page can draw between them and stop.

use super::Task;
use super::answer::{self, Answer, Refusal};
use super::chain::Chain;
use super::conflict::Conflicting;
use super::evaluate::{LimitKind, Table};
use super::narrow::Narrow;
use super::solve::{Solve, Solved};

/// Every rule.
pub(super) const ALL: u32 = u32::MAX;

/// How far a search is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Progress {
    /// Whether the answer is there.
    pub done: bool,
    /// The work so far, in the units of the budget. It is not known beforehand how much there will be.
    pub work: usize,
}

#[derive(Clone, Debug)]
enum Phase {
    /// The pulls of the string of this index are next.
    Evaluate(usize),
    Narrow(Box<Narrow>),
    Solve(Box<Solve>),
    /// What conflicts, then the nearest set.
    Conflict(Box<Conflicting>),
    Nearest(Box<Solve>, Box<Refusal>),
    Done,
}

/// A search for the best set.
#[derive(Clone, Debug)]
pub struct Search {
    task: Task,
    table: Table,
    phase: Phase,
    work: usize,
    reasons: bool,
    answer: Option<Answer>,
}

/// The best set of a task, or why there is none. The same as a [`Search`] run to its end.
///
/// # Example
///
/// A string of half a metre at 200 Hz that should pull 40 N needs 1 g/m; of 0.9, 1.0 and 1.2 g/m the middle one.
///
/// ```
/// use stringloft::engine::choose::{Family, Item, Pick, TaskString, Rules, Target, Task, Weights, choose};
/// use stringloft::engine::construction::MakeUp;
/// use stringloft::engine::cut::Allowance;
/// use stringloft::engine::units::{Force, Frequency, Length, LinearDensity};
///
/// let item = |g_per_m| Item {
///     make_up: MakeUp::weighed(LinearDensity::from_g_per_m(g_per_m), None, None, None).unwrap(),
///     family: 0,
///     price: None,
///     in_stock: true,
///     lowest: None,
///     highest: None,
/// };
/// let string = TaskString {
///     note: None,
///     frequency: Ok(Frequency::from_hz(200.0)),
///     length: Ok(Length::from_mm(500.0)),
///     target: Some(Target::Tension(Force::from_n(40.0))),
///     weight: 1.0,
///     kept: None,
/// };
/// let answer = choose(&Task {
///     strings: vec![string],
///     stock: vec![item(0.9), item(1.0), item(1.2)],
///     families: vec![Family::default()],
///     rules: Rules { unknown_share: true, ..Rules::default() },
///     weights: Weights::default(),
///     pluck_ratio: 0.4,
///     allowance: Allowance::default(),
/// });
/// assert_eq!(answer.best().unwrap().set.picks, [Pick::Item(1)]);
/// ```
pub fn choose(task: &Task) -> Answer {
    Search::new(task.clone()).finish()
}

impl Search {
    /// A search that has not begun.
    pub fn new(task: Task) -> Self {
        let table = Table::new(&task);
        let phase = Phase::Evaluate(0);
        Self { task, table, phase, work: 0, reasons: true, answer: None }
    }

    /// A search that knows the pulls already, for a task that differs in counts and weights only; it gives no reasons
    /// where there is no set.
    pub(super) fn again(task: Task, mut table: Table) -> Self {
        table.weigh(&task);
        let chain = Chain::new(&task, &table, everything(&table), ALL, false);
        let phase = Phase::Narrow(Box::new(Narrow::new(chain)));
        Self { task, table, phase, work: 0, reasons: false, answer: None }
    }

    /// What is known of every item on every string.
    pub(super) const fn table(&self) -> &Table {
        &self.table
    }

    /// Works until the budget is used up or the answer is there. A unit is about one pair of items looked at, some ten
    /// nanoseconds; one layer is always finished.
    pub fn step(&mut self, budget: usize) -> Progress {
        let most = self.work.saturating_add(budget.max(1));
        while self.answer.is_none() && self.work < most {
            self.work += self.advance() + 1;
        }
        Progress { done: self.answer.is_some(), work: self.work }
    }

    /// One slice of work, the least there is.
    pub(super) fn slice(&mut self) -> usize {
        self.advance() + 1
    }

    /// Works to the end.
    pub fn finish(mut self) -> Answer {
        loop {
            self.step(usize::MAX / 2);
            if let Some(answer) = self.answer.take() {
                return answer;
            }
        }
    }

    /// The answer, once it is there.
    pub const fn answer(&self) -> Option<&Answer> {
        self.answer.as_ref()
    }

    fn advance(&mut self) -> usize {
        match &mut self.phase {
            Phase::Done => 0,
            Phase::Evaluate(string) => {
                let string = *string;
                if string < self.task.strings.len() {
                    self.table.add(&self.task, string);
                    self.phase = Phase::Evaluate(string + 1);
                    return 8 * self.task.stock.len();
                }
                let chain =
                    Chain::new(&self.task, &self.table, everything(&self.table), ALL, false);
                self.phase = Phase::Narrow(Box::new(Narrow::new(chain)));
                8 * self.table.items.len() * self.table.rows.len()
            }
            Phase::Narrow(narrow) => {
                let work = narrow.advance();
                if work == 0 {
                    let narrow = std::mem::replace(&mut self.phase, Phase::Done);
                    if let Phase::Narrow(narrow) = narrow {
                        let solve = Solve::new(narrow.into_chain());
                        self.phase = Phase::Solve(Box::new(solve));
                    }
                }
                work
            }
            Phase::Solve(solve) => {
                let work = solve.advance();
                match solve.solved() {
                    None => {}
                    Some(Solved::Set(set)) => {
                        let best = answer::best(&self.task, &self.table, &solve.chain, set);
                        self.close(Answer::Best(best));
                    }
                    Some(_) if self.reasons => {
                        self.phase = Phase::Conflict(Box::new(Conflicting::new(&self.table)));
                    }
                    Some(_) => self.refuse(),
                }
                work
            }
            Phase::Conflict(conflict) => {
                let work = conflict.advance(&self.task, &self.table);
                if work == 0 {
                    let refusal = Refusal {
                        without_item: std::mem::take(&mut conflict.without_item),
                        conflicts: std::mem::take(&mut conflict.conflicts),
                        nearest: None,
                    };
                    let solve = Solve::new(self.softened());
                    self.phase = Phase::Nearest(Box::new(solve), Box::new(refusal));
                }
                work
            }
            Phase::Nearest(solve, refusal) => {
                let work = solve.advance();
                match solve.solved() {
                    None => {}
                    Some(Solved::TooMuch) => **solve = Solve::lightest(solve.chain.clone()),
                    Some(Solved::NoSet) => {
                        let refusal = (**refusal).clone();
                        self.close(Answer::None(refusal));
                    }
                    Some(Solved::Set(set)) => {
                        let (task, table) = (&self.task, &self.table);
                        let nearest = answer::nearest(task, table, &solve.chain, &set.set);
                        let refusal = Refusal { nearest: Some(nearest), ..(**refusal).clone() };
                        self.close(Answer::None(refusal));
                    }
                }
                work
            }
        }
    }

    /// The strings with every rule at a cost, but the limit of the total.
    fn softened(&self) -> Chain {
        let rows = everything(&self.table);
        Chain::new(&self.task, &self.table, rows, LimitKind::Total.bit(), true)
    }

    fn refuse(&mut self) {
        let (without_item, conflicts) = (Vec::new(), Vec::new());
        self.close(Answer::None(Refusal { without_item, conflicts, nearest: None }));
    }

    fn close(&mut self, answer: Answer) {
        self.answer = Some(answer);
        self.phase = Phase::Done;
    }
}

/// All rows of a table.
pub(super) fn everything(table: &Table) -> (usize, usize) {
    (0, table.rows.len().saturating_sub(1))
}
