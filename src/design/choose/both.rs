//! Strings and lengths together: the best set for the lengths, then lengths for that set, and so on until nothing
//! improves.
//!
//! One sum is watched: that of the search for the set, and how rough the lengths are, by the third differences of
//! their logarithms. A half round that does not lessen it is not taken, and ends the work; so each state is better
//! than the one before, and no round comes again. The end is a place where neither half alone helps, which need not
//! be the best of all.

use std::mem;

use super::lengths::{Room, Strength, Way, lengths};
use super::outcome::Change;
use super::ranges::ranges;
use super::task::wound_from;
use super::words::{self, Line};
use super::{Outcome, Shop, Task, usual};
use crate::design::document::{Design, MaterialSpec, StockItem, StringSpec};
use crate::design::edit::{ChosenBy, Edit, Made, Taken};
use crate::design::resolve::{Resolved, resolve};
use crate::design::targets::curve;
use crate::engine::analysis::{Analysis, analyse};
use crate::engine::choose::{Answer, Search};

/// The most rounds.
pub const MOST_ROUNDS: usize = 12;
/// A round that lessens the sum by less than this share is the last.
const WORTH: f64 = 1e-3;

/// A design with what follows from it.
#[derive(Clone, Debug)]
struct State {
    design: Design,
    resolved: Resolved,
    analysis: Analysis,
}

impl State {
    fn of(design: Design) -> Self {
        let resolved = resolve(&design);
        let analysis = analyse(&resolved.harp);
        Self { design, resolved, analysis }
    }
}

/// How far the work is.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Progress {
    /// Whether it is at its end.
    pub done: bool,
    /// The round, from 1.
    pub round: usize,
    /// The sum that is lessened, as far as it is known.
    pub sum: Option<f64>,
}

/// What is done next.
#[derive(Clone, Debug)]
enum Phase {
    Set(Box<(Task, Search)>),
    Lengths,
    Done,
}

/// The work, in slices. To cancel it is to drop it.
#[derive(Clone, Debug)]
pub struct Both {
    before: State,
    now: State,
    items: Vec<StockItem>,
    materials: Vec<MaterialSpec>,
    own: bool,
    rows: Vec<bool>,
    room: Room,
    strength: Strength,
    stock: Vec<StockItem>,
    phase: Phase,
    round: usize,
    /// The sum, and what of it the price is.
    sum: Option<f64>,
    price: f64,
    conflicts: Vec<String>,
}

impl Both {
    /// Work that has not begun, on the strings that `rows` chooses.
    pub fn new(
        design: &Design,
        shop: &Shop<'_>,
        rows: &[bool],
        strength: Strength,
        room: Room,
    ) -> Self {
        let before = State::of(design.clone());
        // The curve to begin with is that of the harp as it is, and stays while the strings change.
        let mut now = before.clone();
        let points = curve(design, &before.resolved);
        now.design.targets = design.targets.with_points(points);
        now.design.targets.wound_from = wound_from(design, &before.resolved);
        let mut both = Self {
            now,
            before,
            items: shop.items.to_vec(),
            materials: shop.materials.to_vec(),
            own: shop.own,
            rows: rows.to_vec(),
            room,
            strength,
            stock: Vec::new(),
            phase: Phase::Done,
            round: 1,
            sum: None,
            price: 0.0,
            conflicts: Vec::new(),
        };
        both.begin_set();
        both
    }

    /// Works until the budget is used up, in the units of [`Search::step`], or to the end of a half round.
    pub fn step(&mut self, budget: usize) -> Progress {
        match mem::replace(&mut self.phase, Phase::Done) {
            Phase::Set(work) => self.set(work, budget),
            Phase::Lengths => self.lengths(),
            Phase::Done => {}
        }
        self.progress()
    }

    /// Works to the end.
    #[must_use]
    pub fn finish(mut self) -> Self {
        while !self.step(usize::MAX / 2).done {}
        self
    }

    /// How far the work is.
    pub const fn progress(&self) -> Progress {
        let done = matches!(self.phase, Phase::Done);
        Progress { done, round: self.round, sum: self.sum }
    }

    /// Why there is no set within the limits, in sentences: then nothing was changed after that.
    pub fn conflicts(&self) -> &[String] {
        &self.conflicts
    }

    fn begin_set(&mut self) {
        let shop = Shop { items: &self.items, materials: &self.materials, own: self.own };
        let State { design, resolved, .. } = &self.now;
        let task = Task::new(design, resolved, &shop, &self.rows);
        let search = task.search();
        self.phase = Phase::Set(Box::new((task, search)));
    }

    fn set(&mut self, mut work: Box<(Task, Search)>, budget: usize) {
        let (task, search) = &mut *work;
        if !search.step(budget).done {
            self.phase = Phase::Set(work);
            return;
        }
        let Some(answer) = search.answer() else { return };
        let State { design, resolved, analysis } = &self.now;
        let best = match answer {
            Answer::Best(best) => best,
            Answer::None(_) => {
                self.conflicts = task.conflicts(analysis, answer);
                return;
            }
        };
        let Some(outcome) = task.outcome(design, resolved, analysis, answer) else { return };
        let price = best.set.parts.price;
        let sum = best.set.parts.sum() + self.rough(&self.now);
        // The first set is taken in any case: what is there may be of another stock.
        if self.sum.is_some_and(|before| sum >= before * (1.0 - WORTH)) {
            return;
        }
        self.take(&outcome);
        (self.sum, self.price) = (Some(sum), price);
        self.phase = Phase::Lengths;
    }

    fn take(&mut self, outcome: &Outcome) {
        self.stock.extend(outcome.stock().iter().cloned());
        self.now = State::of(outcome.preview.clone());
        // What a round leaves behind of the one before goes, as the edit knows only what was and what is.
        self.now.design.stock = self.edit(None).apply(&self.before.design).stock;
    }

    fn lengths(&mut self) {
        let State { design, resolved, analysis } = &self.now;
        let way = Way::Wanted(self.strength);
        let usual = usual(design);
        let share_percent = Some((usual.least_share_percent, usual.most_share_percent));
        let room = Room { share_percent, ..self.room };
        let Ok(found) = lengths(design, resolved, analysis, way, &self.rows, &room) else {
            return;
        };
        let next = State::of(found.preview);
        let shop = Shop { items: &self.items, materials: &self.materials, own: self.own };
        let task = Task::new(&next.design, &next.resolved, &shop, &self.rows);
        let parts = task.present(&next.resolved).parts;
        let sum = parts.sum() + self.price + self.rough(&next);
        let more = next.analysis.findings.len() > self.now.analysis.findings.len();
        if more || self.sum.is_some_and(|before| sum >= before * (1.0 - WORTH)) {
            return;
        }
        (self.now, self.sum) = (next, Some(sum));
        if self.round < MOST_ROUNDS {
            self.round += 1;
            self.begin_set();
        }
    }

    /// How rough the lengths are, as it counts in the sum: as in the proposal of lengths.
    fn rough(&self, state: &State) -> f64 {
        let strings = &state.resolved.harp.strings;
        let waves = self.strength.waves(strings.len());
        let passed = 2.0 * (std::f64::consts::PI / waves).sin();
        let logs: Vec<f64> =
            strings.iter().filter_map(|string| Some(string.length.ok()?.to_m().ln())).collect();
        let third = |l: &[f64]| (l[3] - 3.0 * l[2] + 3.0 * l[1] - l[0]).powi(2);
        logs.windows(4).map(third).sum::<f64>() / passed.powi(6)
    }

    /// The whole design as far as it was brought.
    pub fn preview(&self) -> &Design {
        &self.now.design
    }

    /// Its figures.
    pub fn analysis(&self) -> &Analysis {
        &self.now.analysis
    }

    /// The strings that would change, from the highest down.
    pub fn changes(&self) -> Vec<Change> {
        let change = |taken: Taken| {
            let row = taken.row;
            let (before, after) = (&self.before.design.strings[row], &self.now.design.strings[row]);
            let figures = (&self.before.analysis.strings[row], &self.now.analysis.strings[row]);
            let mut change = Change::new(row, figures.0, figures.1);
            if before.make_up != after.make_up {
                change = change.made(&before.make_up, &after.make_up);
            }
            if before.length != after.length {
                change.length = (before.length.clone(), after.length.clone());
            }
            change
        };
        self.taken(None).into_iter().map(change).collect()
    }

    /// How good strings and lengths are, before and after.
    pub fn lines(&self) -> Vec<Line> {
        let figures = (&self.before.analysis, &self.now.analysis);
        let mut lines = ranges(&self.before.design, figures);
        lines.extend(words::off_lines(&self.before.design, &self.before.resolved, figures));
        lines
    }

    /// Whether it gains what is worth moving pins for, or moves none.
    pub fn is_worth(&self) -> bool {
        let lengths = |state: &State| {
            state.design.strings.iter().map(|s| s.length.clone()).collect::<Vec<_>>()
        };
        let figures = (&self.before.analysis, &self.now.analysis);
        lengths(&self.before) == lengths(&self.now)
            || words::is_worth(&self.before.design, &self.before.resolved, figures)
    }

    fn taken(&self, rows: Option<&[bool]>) -> Vec<Taken> {
        let strings = self.before.design.strings.iter().zip(&self.now.design.strings);
        let taken = |(row, (before, after)): (usize, (&StringSpec, &StringSpec))| {
            let chosen = rows.is_none_or(|rows| rows.get(row).copied().unwrap_or(false));
            let made = Some(Made::of(after)).filter(|made| *made != Made::of(before));
            let length = (before.length != after.length).then(|| after.length.clone());
            let changed = made.is_some() || length.is_some();
            (chosen && changed).then_some(Taken { row, made, length })
        };
        strings.enumerate().filter_map(taken).collect()
    }

    /// The edit that takes all of it, or the strings of which `rows` says so, in one step.
    pub fn edit(&self, rows: Option<&[bool]>) -> Edit {
        Edit::Take {
            strings: self.taken(rows),
            stock: self.stock.clone(),
            materials: self.materials.clone(),
            chosen_by: ChosenBy {
                curve: self.now.design.targets.points().to_vec(),
                wound_from: self.now.design.targets.wound_from.clone(),
            },
        }
    }
}
