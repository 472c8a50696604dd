//! What a choice answers, as plain data; and how a set that was found becomes an answer.

use super::Task;
use super::chain::{Chain, units};
use super::evaluate::{LARGE, LIMITS, Limit, LimitKind, Row, SMALL, Table, count};
use super::solve::SolvedSet;
use crate::engine::units::Force;

/// What stands on a string.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Pick {
    /// The item of the stock with this index.
    Item(usize),
    /// What was kept.
    Kept,
    /// It takes no part: it has no pitch, no length, or a kept make-up without a pull; or, in a nearest set, there
    /// is no item that would hold on it.
    LeftOut,
}

/// The parts of the sum.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Parts {
    /// Deviations from the target.
    pub target: f64,
    /// Steps of the pluck stiffness, with what counts more at a change of family.
    pub feel: f64,
    /// Steps of the tension.
    pub tension: f64,
    /// Changes of family.
    pub changes: f64,
    /// Runs of another item.
    pub items: f64,
    /// Prices.
    pub price: f64,
}

impl Parts {
    /// The sum that a best set has least.
    pub fn sum(&self) -> f64 {
        self.target + self.feel + self.tension + self.changes + self.items + self.price
    }
}

/// A set of strings.
#[derive(Clone, Debug, PartialEq)]
pub struct Set {
    /// One for each string of the task.
    pub picks: Vec<Pick>,
    /// The pull of each, where it takes part.
    pub pulls: Vec<Option<Force>>,
    /// The parts of the sum.
    pub parts: Parts,
    /// Of the strings that take part.
    pub total: Force,
    /// Of the items that are not kept and have a price, in the caller's currency.
    pub price: f64,
    /// How many strings that are not kept have no price.
    pub without_price: usize,
    /// How many different items, those kept among them.
    pub different: usize,
    /// How many runs of one item; what [`super::Rules::most_items`] limits.
    pub runs: usize,
    /// How many changes of family.
    pub changes: usize,
}

/// A best set, and how far that is proven.
#[derive(Clone, Debug, PartialEq)]
pub struct Best {
    /// The set.
    pub set: Set,
    /// No set has a lower sum than this. It is the sum of the set itself where that is proven best.
    pub bound: f64,
    /// The bound that the price on the pull gave by itself, before labels closed the gap; the same where the total
    /// pull is not limited or does not matter.
    pub dual_bound: f64,
    /// Whether it is proven that no set is better, to 10⁻⁹ of the greatest weight.
    pub proven: bool,
    /// Index of the first string on which an equally good set has another item.
    pub tie: Option<usize>,
    /// How many passes over all strings it took.
    pub passes: usize,
    /// How many labels it took.
    pub labels: usize,
}

impl Best {
    /// How far the set may be from the best.
    pub fn gap(&self) -> f64 {
        (self.set.parts.sum() - self.bound).max(0.0)
    }
}

/// A string for which no item meets the rules.
#[derive(Clone, Debug, PartialEq)]
pub struct NoItem {
    /// Index of the string.
    pub string: usize,
    /// How many items break each rule there, and how many break that alone, by [`LimitKind`] as a number.
    pub broken: [(usize, usize); LIMITS.len()],
}

/// Rules that cannot hold together.
#[derive(Clone, Debug, PartialEq)]
pub struct Conflict {
    /// What they are about. Without any one of them, these strings could be served.
    pub limits: Vec<LimitKind>,
    /// First and last index of the strings for which they cannot hold.
    pub strings: (usize, usize),
    /// The least total pull of any set, where the total conflicts.
    pub least_total: Option<Force>,
}

/// A rule that the nearest set breaks.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Broken {
    /// First and last index of the strings; all for the counts and the total.
    pub strings: (usize, usize),
    /// The rule, and by how much it is broken.
    pub limit: Limit,
}

/// The set that breaks the rules least.
#[derive(Clone, Debug, PartialEq)]
pub struct Nearest {
    /// The set. It has no item where every one would break or has no pull.
    pub set: Set,
    /// What it breaks.
    pub broken: Vec<Broken>,
}

/// Why there is no set.
#[derive(Clone, Debug, PartialEq)]
pub struct Refusal {
    /// Strings for which there is no item at all.
    pub without_item: Vec<NoItem>,
    /// For each of those, the rules that exclude every item; if there are none, one set of rules that conflict.
    pub conflicts: Vec<Conflict>,
    /// The set of the least sum of [`Limit::amount`]s, each counted far more than any deviation from the target
    /// (10⁴ times the greatest weight for each unit). The limit of the total is broken only if no set keeps it
    /// even so; then its excess, as a share of the limit, counts as the others do. No string breaks.
    pub nearest: Option<Nearest>,
}

/// What a choice comes to.
#[derive(Clone, Debug, PartialEq)]
pub enum Answer {
    /// The best set.
    Best(Best),
    /// No set meets the rules.
    None(Refusal),
}

impl Answer {
    /// The best set, if there is one.
    pub const fn best(&self) -> Option<&Best> {
        match self {
            Self::Best(best) => Some(best),
            Self::None(_) => None,
        }
    }
}

/// The best set of a chain, with the bound that its pass gave.
pub(super) fn best(task: &Task, table: &Table, chain: &Chain, solved: &SolvedSet) -> Best {
    let set = set(task, table, chain, &solved.set);
    let sum = set.parts.sum();
    let string = |layer: usize| table.rows[chain.layers[layer].row].string;
    let scaled = |bound: f64| (bound * table.scale).min(sum);
    Best {
        bound: if solved.proven { sum } else { scaled(solved.bound) },
        dual_bound: scaled(solved.dual_bound),
        proven: solved.proven,
        tie: solved.tie.map(string),
        passes: solved.passes,
        labels: solved.labels,
        set,
    }
}

/// A set from the candidate of each layer. The parts are worked out again, string by string.
pub(super) fn set(task: &Task, table: &Table, chain: &Chain, chosen: &[usize]) -> Set {
    let strings = task.strings.len();
    let mut set = Set {
        picks: vec![Pick::LeftOut; strings],
        pulls: vec![None; strings],
        parts: Parts::default(),
        total: Force::from_n(0.0),
        price: 0.0,
        without_price: 0,
        different: 0,
        runs: 0,
        changes: 0,
    };
    let (weights, mut total_n) = (&table.weights, 0.0);
    let mut seen = vec![false; table.items.len()];
    let mut above: Option<(&Row, usize, f64)> = None;
    for (layer, chosen) in chain.layers.iter().zip(chosen) {
        let row = &table.rows[layer.row];
        let candidate = &layer.candidates[*chosen];
        let (item, log_pull) = (candidate.item, candidate.log_pull);
        let cell = &row.cells[candidate.cell];
        set.picks[row.string] = if row.kept { Pick::Kept } else { Pick::Item(cell.item) };
        set.pulls[row.string] = Some(Force::from_n(cell.pull_n));
        total_n += cell.pull_n;
        if !std::mem::replace(&mut seen[item], true) {
            set.different += 1;
        }
        if !row.kept {
            set.price += cell.price.unwrap_or(0.0);
            set.without_price += usize::from(cell.price.is_none());
            set.parts.price += weights.price * units(table, cell);
        }
        let off = row.target.map_or(0.0, |target| log_pull - target);
        set.parts.target += row.weight * off * off;
        set.runs += usize::from(above.is_none_or(|(_, upper, _)| upper != item));
        if let Some((upper, upper_item, upper_pull)) = above {
            let step = log_pull - upper_pull;
            let (feel, tension) = match (upper.target, row.target) {
                (Some(one), Some(other)) => (step - (other - one), step - (other - one)),
                _ => (step + row.feel - upper.feel, step),
            };
            let families = (table.items[upper_item].family, table.items[item].family);
            let change = matches!(families, (Some(one), Some(other)) if one != other);
            let at_change = if change { weights.at_change } else { 0.0 };
            set.parts.feel += (weights.feel + at_change) * feel * feel;
            set.parts.tension += weights.tension * tension * tension;
            set.parts.changes += if change { weights.change } else { 0.0 };
            set.parts.items += if upper_item == item { 0.0 } else { weights.item };
            set.changes += usize::from(change);
        }
        above = Some((row, item, log_pull));
    }
    set.total = Force::from_n(total_n);
    let parts = &mut set.parts;
    for part in [
        &mut parts.target,
        &mut parts.feel,
        &mut parts.tension,
        &mut parts.changes,
        &mut parts.items,
        &mut parts.price,
    ] {
        *part *= table.scale;
    }
    set
}

/// What a set breaks, which was chosen with every rule at a cost.
pub(super) fn nearest(task: &Task, table: &Table, chain: &Chain, chosen: &[usize]) -> Nearest {
    let set = set(task, table, chain, chosen);
    let mut broken = Vec::new();
    let mut say = |strings, kind, amount| {
        broken.push(Broken { strings, limit: Limit { kind, amount } });
    };
    let (rules, mut counted) = (&task.rules, 0);
    for (at, (layer, own)) in chain.layers.iter().zip(chosen).enumerate() {
        let row = &table.rows[layer.row];
        let candidate = &layer.candidates[*own];
        if !row.kept {
            for limit in table.limits(task, row, &row.cells[candidate.cell]) {
                say((row.string, row.string), limit.kind, limit.amount);
            }
        }
        let Some(upper) = at.checked_sub(1) else { continue };
        let above = &chain.layers[upper].candidates[chosen[upper]];
        if chain.free_of_rules(upper) {
            continue;
        }
        let strings = (table.rows[chain.layers[upper].row].string, row.string);
        let change = above.rank() != candidate.rank();
        counted += usize::from(change);
        if rules.in_order && above.rank() > candidate.rank() {
            say(strings, LimitKind::Order, LARGE);
        } else if rules.no_shrinking && !change && above.shrinks_to(candidate) {
            say(strings, LimitKind::Shrinking, SMALL);
        }
        if chain.jumps(upper, above, candidate) {
            say(strings, LimitKind::Jump, SMALL);
        }
    }
    let all = (0, task.strings.len().saturating_sub(1));
    let over = |got: usize, most: Option<usize>| got.saturating_sub(most.unwrap_or(got));
    let changes = over(counted, rules.most_changes);
    if changes > 0 {
        say(all, LimitKind::Changes, SMALL * count(changes));
    }
    let items = over(set.runs, rules.most_items);
    if items > 0 {
        say(all, LimitKind::Items, SMALL * count(items));
    }
    if let Some(most) = rules.most_total {
        let excess = set.total.to_n() / most.to_n().max(1e-9) - 1.0;
        if excess > super::labels::ROUNDING {
            say(all, LimitKind::Total, excess);
        }
    }
    Nearest { set, broken }
}
