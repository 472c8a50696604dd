//! Which rules cannot hold together, and on which strings.
//!
//! One kind of rule after another is dropped for good if there is still no set without it; what is left is a smallest
//! conflict: without any one of its kinds there would be a set. Then the strings are narrowed from the bass and from
//! the treble as long as there is none.

use super::Task;
use super::answer::{Conflict, NoItem};
use super::chain::Chain;
use super::evaluate::{LIMITS, LimitKind, Row, Table};
use super::labels::ROUNDING;
use super::pass::Pass;
use crate::engine::units::Force;

#[derive(Clone, Debug)]
enum Stage {
    /// Tries to do without the kind of this place in the list.
    Drop(usize),
    /// The last row lies between these two.
    Last(usize, usize),
    /// The first row lies between these two.
    First(usize, usize),
    Done,
}

/// The search for what conflicts.
#[derive(Clone, Debug)]
pub(super) struct Conflicting {
    stage: Stage,
    hard: u32,
    rows: (usize, usize),
    asked: Option<(Chain, Pass)>,
    least_total: Option<Force>,
    pub without_item: Vec<NoItem>,
    pub conflicts: Vec<Conflict>,
}

const ALL: u32 = u32::MAX;

impl Conflicting {
    /// Of a task for which there is no set.
    pub fn new(table: &Table) -> Self {
        let mut own = Self {
            stage: Stage::Drop(0),
            hard: ALL,
            rows: (0, table.rows.len().saturating_sub(1)),
            asked: None,
            least_total: None,
            without_item: Vec::new(),
            conflicts: Vec::new(),
        };
        for row in &table.rows {
            if row.cells.iter().all(|cell| cell.broken != 0) {
                own.without_item.push(no_item(row));
                let (limits, strings) = (excluding(row), (row.string, row.string));
                own.conflicts.push(Conflict { limits, strings, least_total: None });
            }
        }
        if !own.conflicts.is_empty() {
            own.stage = Stage::Done;
        }
        own
    }

    /// Does one layer; gives the work that it took, 0 when all is done.
    pub fn advance(&mut self, task: &Task, table: &Table) -> usize {
        let Some((chain, pass)) = &mut self.asked else { return self.ask(task, table) };
        let work = pass.advance(chain);
        if pass.is_done() {
            let least = pass.best(chain.start()).0;
            let most = if chain.most_total_n.is_some() { 1.0 + ROUNDING } else { f64::MAX };
            if let Some(most_n) = chain.most_total_n
                && least > most
                && least < f64::INFINITY
            {
                self.least_total = Some(Force::from_n(least * most_n));
            }
            self.asked = None;
            self.learn(least <= most);
        }
        work + 1
    }

    /// Puts the next question.
    fn ask(&mut self, task: &Task, table: &Table) -> usize {
        let (rows, hard) = match self.stage {
            Stage::Done => return 0,
            Stage::Drop(at) => {
                let Some(kind) = LIMITS.get(at) else {
                    self.stage = match self.hard & LimitKind::Total.bit() {
                        0 => Stage::Last(self.rows.0, self.rows.1),
                        _ => Stage::First(self.rows.0, self.rows.0),
                    };
                    return 1;
                };
                if !matters(*kind, task, table) {
                    self.hard &= !kind.bit();
                    self.stage = Stage::Drop(at + 1);
                    return 1;
                }
                (self.rows, self.hard & !kind.bit())
            }
            Stage::Last(low, high) if low < high => {
                ((self.rows.0, usize::midpoint(low, high)), self.hard)
            }
            Stage::Last(low, _) => {
                self.rows.1 = low;
                self.stage = Stage::First(self.rows.0, low);
                return 1;
            }
            Stage::First(low, high) if low < high => {
                ((usize::midpoint(low, high) + 1, self.rows.1), self.hard)
            }
            Stage::First(low, _) => {
                self.rows.0 = low;
                self.stage = Stage::Done;
                let limits: Vec<LimitKind> =
                    LIMITS.into_iter().filter(|kind| self.hard & kind.bit() != 0).collect();
                let total = limits.contains(&LimitKind::Total);
                let string = |row: usize| table.rows.get(row).map_or(0, |row| row.string);
                let strings = (string(self.rows.0), string(self.rows.1));
                let least_total = self.least_total.filter(|_| total);
                self.conflicts.push(Conflict { limits, strings, least_total });
                return 1;
            }
        };
        let chain = Chain::new(task, table, rows, hard, false);
        let pass = Pass::of_pull(&chain);
        self.asked = Some((chain, pass));
        table.items.len() + 1
    }

    /// Goes on by whether there is a set under the rules that were asked about.
    fn learn(&mut self, there_is: bool) {
        match &mut self.stage {
            Stage::Drop(at) => {
                if !there_is {
                    self.hard &= !LIMITS[*at].bit();
                }
                *at += 1;
            }
            Stage::Last(low, high) => {
                let middle = usize::midpoint(*low, *high);
                if there_is { *low = middle + 1 } else { *high = middle }
            }
            Stage::First(low, high) => {
                let middle = usize::midpoint(*low, *high);
                if there_is { *high = middle } else { *low = middle + 1 }
            }
            Stage::Done => {}
        }
    }
}

/// Whether a kind of rule is asked for and excludes anything at all. What is never allowed is not asked about.
fn matters(kind: LimitKind, task: &Task, table: &Table) -> bool {
    let rules = &task.rules;
    match kind {
        LimitKind::Breaks | LimitKind::NoPull => false,
        LimitKind::Order => rules.in_order,
        LimitKind::Shrinking => rules.no_shrinking,
        LimitKind::Jump => rules.most_jump_percent.is_some(),
        LimitKind::Changes => rules.most_changes.is_some(),
        LimitKind::Items => rules.most_items.is_some(),
        LimitKind::Total => rules.most_total.is_some(),
        _ => {
            let mut cells = table.rows.iter().flat_map(|row| &row.cells);
            cells.any(|cell| cell.broken & kind.bit() != 0)
        }
    }
}

fn no_item(row: &Row) -> NoItem {
    let mut broken = [(0, 0); LIMITS.len()];
    for cell in &row.cells {
        for kind in LIMITS.into_iter().filter(|kind| cell.broken & kind.bit() != 0) {
            let (all, alone) = &mut broken[kind as usize];
            *all += 1;
            *alone += usize::from(cell.broken == kind.bit());
        }
    }
    NoItem { string: row.string, broken }
}

/// A smallest set of kinds of which every item of a string breaks one.
fn excluding(row: &Row) -> Vec<LimitKind> {
    let mut kinds = ALL;
    for kind in LIMITS {
        let without = kinds & !kind.bit();
        if row.cells.iter().all(|cell| cell.broken & without != 0) {
            kinds = without;
        }
    }
    LIMITS.into_iter().filter(|kind| kinds & kind.bit() != 0).collect()
}
