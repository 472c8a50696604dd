//! The strings as layers of items, what an item costs by itself, and what one costs below another.

use super::candidate::Candidate;
use super::evaluate::{Cell, LARGE, LimitKind, PENALTY, SMALL, Table};
use super::{Task, Weights};
use crate::engine::order::sort;
use crate::engine::units::Force;

/// Families with higher indices are one.
const MOST_FAMILIES: usize = 1 << 20;

/// The square of the step between neighbours: `weight (Δ − shift)² + rest`, with `Δ` the step of the logarithm of
/// the pull.
#[derive(Clone, Copy, Debug, Default)]
pub(super) struct Step {
    pub weight: f64,
    pub shift: f64,
    pub rest: f64,
}

impl Step {
    fn new(feel: f64, feel_shift: f64, tension: f64, tension_shift: f64) -> Self {
        let weight = feel + tension;
        if weight <= 0.0 {
            return Self::default();
        }
        let shift = (feel * feel_shift + tension * tension_shift) / weight;
        // What is left is the spread of the two shifts about their mean.
        let apart = feel_shift - tension_shift;
        Self { weight, shift, rest: feel * tension / weight * apart * apart }
    }

    pub fn of(&self, upper: f64, lower: f64) -> f64 {
        let off = lower - upper - self.shift;
        self.weight * off * off + self.rest
    }
}

/// One string.
#[derive(Clone, Debug)]
pub(super) struct Layer {
    /// Index in the rows of the table.
    pub row: usize,
    pub kept: bool,
    /// Of the deviation from the target, where there is one.
    pub weight: f64,
    /// In the order of their items.
    pub candidates: Vec<Candidate>,
    /// Logarithms of the pulls in rising order, and the place of each candidate among them.
    pub sorted: Vec<f64>,
    pub place: Vec<u16>,
    /// Candidates by family and gauge, for standing above and for standing below.
    pub above: Vec<u16>,
    pub below: Vec<u16>,
    /// To the layer below, in a family and at a change.
    pub within: Step,
    pub across: Step,
    /// How far the logarithm of the pull may fall and rise to the layer below, where a jump of the feel is limited.
    jump: (f64, f64),
}

/// Where nothing limits a step; and how far beyond a limited one the last digits may lie.
const ANY_STEP: (f64, f64) = (f64::NEG_INFINITY, f64::INFINITY);
const SAME_STEP: f64 = 1e-9;

/// What breaking a rule of neighbours or a count costs: infinite where the rule is hard, 0 where there is none.
#[derive(Clone, Copy, Debug)]
pub(super) struct Soft {
    pub order: f64,
    pub shrinking: f64,
    pub jump: f64,
    changes: f64,
    items: f64,
}

impl Layer {
    /// Keeps some of the candidates.
    pub fn retain(&mut self, keep: &[bool]) {
        let mut left = 0_u16;
        let renamed: Vec<u16> = keep
            .iter()
            .map(|keep| {
                left += u16::from(*keep);
                if *keep { left - 1 } else { u16::MAX }
            })
            .collect();
        let name = |index: &u16| renamed[usize::from(*index)];
        for list in [&mut self.above, &mut self.below] {
            *list = list.iter().map(name).filter(|index| *index != u16::MAX).collect();
        }
        let mut numbers = keep.iter();
        self.candidates.retain(|_| numbers.next().copied().unwrap_or(false));
        self.rank();
    }

    /// Puts the candidates in the order of their pulls.
    fn rank(&mut self) {
        let mut by_pull = self.above.clone();
        let candidates = &self.candidates;
        let pull = |index: &u16| candidates[usize::from(*index)].log_pull;
        sort(&mut by_pull, |one, other| {
            pull(one) > pull(other) || (pull(one) == pull(other) && one > other)
        });
        self.place = vec![0; candidates.len()];
        for (rank, index) in (0_u16..).zip(&by_pull) {
            self.place[usize::from(*index)] = rank;
        }
        self.sorted =
            by_pull.iter().map(|index| candidates[usize::from(*index)].log_pull).collect();
    }
}

/// A way from an item to one below it.
#[derive(Clone, Copy, Debug)]
pub(super) struct Way {
    pub cost: f64,
    /// The state of the counts below.
    pub state: usize,
}

/// All strings that take part.
#[derive(Clone, Debug)]
pub(super) struct Chain {
    pub layers: Vec<Layer>,
    pub weights: Weights,
    pub soft: Soft,
    /// Changes and further items that are allowed.
    changes: Option<usize>,
    items: Option<usize>,
    /// The limit of the total in newtons, where there is one.
    pub most_total_n: Option<f64>,
}

impl Chain {
    /// Of the rows from `first` to `last`, under the rules of the bits in `hard`; the others do not hold at all, or
    /// may be broken at a cost. Rows without a candidate are left out if so.
    pub fn new(
        task: &Task,
        table: &Table,
        (first, last): (usize, usize),
        hard: u32,
        at_a_cost: bool,
    ) -> Self {
        let is_hard = |kind: LimitKind| hard & kind.bit() != 0;
        let rules = &task.rules;
        let soft = |kind: LimitKind, asked: bool, cost: f64| match (asked, is_hard(kind)) {
            (true, true) => f64::INFINITY,
            (true, false) if at_a_cost => cost * PENALTY,
            _ => 0.0,
        };
        let counted =
            |kind: LimitKind, most: Option<usize>| most.filter(|_| is_hard(kind) || at_a_cost);
        let most_total_n = rules.most_total.map(Force::to_n).filter(|_| is_hard(LimitKind::Total));
        let unit_n = most_total_n.unwrap_or(1.0).max(1e-9);
        let mut chain = Self {
            layers: Vec::with_capacity(last + 1 - first),
            weights: table.weights,
            soft: Soft {
                order: soft(LimitKind::Order, rules.in_order, LARGE),
                shrinking: soft(LimitKind::Shrinking, rules.no_shrinking, SMALL),
                jump: soft(LimitKind::Jump, rules.most_jump_percent.is_some(), SMALL),
                changes: soft(LimitKind::Changes, true, SMALL),
                items: soft(LimitKind::Items, true, SMALL),
            },
            changes: counted(LimitKind::Changes, rules.most_changes),
            items: counted(LimitKind::Items, rules.most_items).map(|most| most.saturating_sub(1)),
            most_total_n,
        };
        let never = LimitKind::Breaks.bit() | LimitKind::NoPull.bit();
        let banned = never | hard;
        for (number, row) in table.rows.iter().enumerate().take(last + 1).skip(first) {
            let cells = row.cells.iter().enumerate();
            let usable = cells.filter(|(_, cell)| cell.broken & banned == 0);
            let mut candidates: Vec<Candidate> = usable
                .map(|(at, cell)| {
                    let mut own = own_cost(table, row.target, row.weight, cell);
                    if at_a_cost && cell.broken != 0 {
                        let limits = table.limits(task, row, cell);
                        own += PENALTY * limits.map(|limit| limit.amount).sum::<f64>();
                    }
                    let facts = &table.items[cell.item];
                    Candidate {
                        item: table.first_alike(cell.item),
                        cell: at,
                        log_pull: cell.log_pull,
                        own,
                        pull: cell.pull_n / unit_n,
                        family: facts.family,
                        gauge_nm: facts.gauge_nm,
                        core_nm: facts.core_nm,
                    }
                })
                .collect();
            // What is alike is one candidate: that of the least cost, then of the lowest price, then the first.
            sort(&mut candidates, |one, other| one.item > other.item);
            let worth = |one: &Candidate| (one.own, units(table, &row.cells[one.cell]));
            candidates.dedup_by(|next, held| {
                let same = next.item == held.item;
                if same && worth(next) < worth(held) {
                    *held = *next;
                }
                same
            });
            if candidates.is_empty() && at_a_cost {
                continue;
            }
            chain.layers.push(layer(table, number, row.kept, candidates));
        }
        for upper in 1..chain.layers.len() {
            let (one, other) =
                (&table.rows[chain.layers[upper - 1].row], &table.rows[chain.layers[upper].row]);
            let weights = &table.weights;
            let (feel_shift, tension_shift) = match (one.target, other.target) {
                (Some(above), Some(below)) => (below - above, below - above),
                _ => (one.feel - other.feel, 0.0),
            };
            let step = |feel| Step::new(feel, feel_shift, weights.tension, tension_shift);
            chain.layers[upper - 1].within = step(weights.feel);
            chain.layers[upper - 1].across = step(weights.feel + weights.at_change);
            if let Some(percent) = rules.most_jump_percent {
                // The step of the feel is that of the pull and of what the lengths make of it.
                let (level, ratio) = (one.feel - other.feel, percent / 100.0);
                let (least, most) = ((1.0 - ratio).max(0.0).ln(), (1.0 + ratio).ln());
                chain.layers[upper - 1].jump =
                    (least + level - SAME_STEP, most + level + SAME_STEP);
            }
        }
        chain
    }

    /// The same without counts, and with a price on each further item.
    pub fn without_counts(&self, item_price: f64) -> Self {
        let mut chain = self.clone();
        (chain.changes, chain.items) = (None, None);
        chain.weights.item += item_price;
        chain
    }

    /// The same from the bass to the treble: what comes before comes after, and what is thick is thin.
    pub fn mirrored(mut self) -> Self {
        let last = self.layers.len().saturating_sub(1);
        let turned = |step: Step| Step { shift: -step.shift, ..step };
        let turn = |l: &Layer| (turned(l.within), turned(l.across), (-l.jump.1, -l.jump.0));
        let steps: Vec<(Step, Step, (f64, f64))> = self.layers.iter().map(turn).collect();
        self.layers.reverse();
        for (at, layer) in self.layers.iter_mut().enumerate() {
            // The step to the next layer is that of the layer before in the old order.
            (layer.within, layer.across, layer.jump) = match at < last {
                true => steps[last - at - 1],
                false => (Step::default(), Step::default(), ANY_STEP),
            };
            for candidate in &mut layer.candidates {
                candidate.family =
                    candidate.family.map(|family| MOST_FAMILIES - family.min(MOST_FAMILIES));
                candidate.gauge_nm = candidate.gauge_nm.map(|gauge| -gauge);
                candidate.core_nm = candidate.core_nm.map(|core| -core);
            }
            std::mem::swap(&mut layer.above, &mut layer.below);
            layer.above.reverse();
            layer.below.reverse();
        }
        self
    }

    /// How often a set takes another item than the string above has.
    pub fn further_items(&self, set: &[usize]) -> usize {
        let items = self.layers.iter().zip(set).map(|(layer, at)| layer.candidates[*at].item);
        let items: Vec<usize> = items.collect();
        items.windows(2).filter(|pair| pair[0] != pair[1]).count()
    }

    /// How many states the counts have.
    pub fn states(&self) -> usize {
        (self.changes.unwrap_or(0) + 1) * (self.items.unwrap_or(0) + 1)
    }

    /// The state of the highest string: all is left.
    pub fn start(&self) -> usize {
        self.states() - 1
    }

    /// The most items that have a state of their own.
    pub fn most_items(&self) -> usize {
        self.items.map_or(0, |further| further + 1)
    }

    /// The state with fewer items left than the first.
    pub fn start_with(&self, items: usize) -> usize {
        let all = self.items.unwrap_or(0) + 1;
        self.start() + 1 - all + items.saturating_sub(1).min(all - 1)
    }

    /// The state after a change or another item, and what it costs to go beyond the counts.
    pub fn spend(&self, state: usize, change: bool, item: bool) -> Option<Way> {
        let all = self.items.unwrap_or(0) + 1;
        let (mut changes, mut items, mut cost) = (state / all, state % all, 0.0);
        if change && self.changes.is_some() {
            if changes > 0 {
                changes -= 1;
            } else {
                cost += self.soft.changes;
            }
        }
        if item && self.items.is_some() {
            if items > 0 {
                items -= 1;
            } else {
                cost += self.soft.items;
            }
        }
        (cost < f64::INFINITY).then_some(Way { cost, state: changes * all + items })
    }

    /// Whether the rules of neighbours do not hold between a string and the one below it.
    pub fn free_of_rules(&self, upper: usize) -> bool {
        let [one, other] = [&self.layers[upper], &self.layers[upper + 1]];
        let unlisted = |layer: &Layer| layer.kept && layer.candidates[0].family.is_none();
        one.kept && other.kept || unlisted(one) || unlisted(other)
    }

    /// Whether the feel jumps from `upper` to `lower`.
    pub fn jumps(&self, layer: usize, upper: &Candidate, lower: &Candidate) -> bool {
        let (least, most) = self.layers[layer].jump;
        !(least..=most).contains(&(lower.log_pull - upper.log_pull))
    }

    /// What it costs to follow `upper` by `lower`, without what they cost by themselves; `None` where a hard rule
    /// forbids it.
    pub fn way(
        &self,
        layer: usize,
        upper: &Candidate,
        lower: &Candidate,
        state: usize,
    ) -> Option<Way> {
        let free = self.free_of_rules(layer);
        let change = matches!((upper.family, lower.family), (Some(a), Some(b)) if a != b);
        let item = upper.item != lower.item;
        let mut way = self.spend(state, change && !free, item)?;
        if change {
            way.cost += self.layers[layer].across.of(upper.log_pull, lower.log_pull);
            way.cost += self.weights.change;
        } else {
            way.cost += self.layers[layer].within.of(upper.log_pull, lower.log_pull);
        }
        if item {
            way.cost += self.weights.item;
        }
        if !free {
            if change && lower.family < upper.family {
                way.cost += self.soft.order;
            } else if !change && upper.shrinks_to(lower) {
                way.cost += self.soft.shrinking;
            }
            if self.jumps(layer, upper, lower) {
                way.cost += self.soft.jump;
            }
        }
        (way.cost < f64::INFINITY).then_some(way)
    }

    /// Cost and pull of a whole set, given by the candidate of each layer.
    pub fn sums(&self, set: &[usize]) -> (f64, f64) {
        let (mut cost, mut pull, mut state) = (0.0, 0.0, self.start());
        for (layer, chosen) in set.iter().enumerate() {
            let candidate = &self.layers[layer].candidates[*chosen];
            cost += candidate.own;
            pull += candidate.pull;
            if let Some(below) = set.get(layer + 1) {
                let lower = &self.layers[layer + 1].candidates[*below];
                match self.way(layer, candidate, lower, state) {
                    Some(way) => {
                        cost += way.cost;
                        state = way.state;
                    }
                    None => cost = f64::INFINITY,
                }
            }
        }
        (cost, pull)
    }
}

fn own_cost(table: &Table, target: Option<f64>, weight: f64, cell: &Cell) -> f64 {
    let off = target.map_or(0.0, |target| cell.log_pull - target);
    weight * off * off + table.weights.price * units(table, cell)
}

/// The price as the sum counts it.
pub(super) fn units(table: &Table, cell: &Cell) -> f64 {
    cell.price.map_or(1.0, |price| price / table.weights.price_unit)
}

/// The candidates of a string in each of the orders that are needed.
fn layer(table: &Table, row: usize, kept: bool, candidates: Vec<Candidate>) -> Layer {
    let mut of_item = vec![u16::MAX; table.items.len()];
    for (index, candidate) in (0_u16..).zip(&candidates) {
        of_item[candidate.item] = index;
    }
    let listed = |order: &[u16]| -> Vec<u16> {
        let indices = order.iter().map(|item| of_item[usize::from(*item)]);
        indices.filter(|index| *index != u16::MAX).collect()
    };
    // Kept items stand alone, and are in no order.
    let alone = || if kept { vec![0] } else { Vec::new() };
    let (mut above, mut below) = (listed(&table.above), listed(&table.below));
    if above.len() != candidates.len() {
        (above, below) = (alone(), alone());
    }
    let (within, across, jump) = (Step::default(), Step::default(), ANY_STEP);
    let (sorted, place, weight) = (
        Vec::new(),
        Vec::new(),
        if table.rows[row].target.is_some() { table.rows[row].weight } else { 0.0 },
    );
    let mut layer =
        Layer { row, kept, weight, candidates, sorted, place, above, below, within, across, jump };
    layer.rank();
    layer
}
