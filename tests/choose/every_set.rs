//! Small tasks against every set that there is.

use stringloft::engine::choose::{
    Answer, LIMITS, LimitKind, Task, Weights, alternatives_by_items, alternatives_by_price, choose,
};

use crate::drawn::{Draws, Size, task};
use crate::model::{Choice, Model, Row, chosen};

/// Sums within this of each other, as a share of the greatest weight, are equal.
const EQUAL: f64 = 1e-9;
/// What breaking a rule by 1 costs in a nearest set, as documented.
const PENALTY: f64 = 1e4;

/// How sets are counted.
#[derive(Clone, Copy)]
pub enum How<'a> {
    /// Under these rules, on these rows.
    Hard { kinds: &'a [LimitKind], rows: (usize, usize) },
    /// Every rule at a cost, but the total.
    Soft,
}

/// A set with its sum (over the greatest weight where rules have a cost), its pull and what it breaks.
#[derive(Clone, Debug)]
pub struct Found {
    pub chosen: Vec<usize>,
    pub sum: f64,
    pub pull_n: f64,
    pub amount: f64,
    pub runs: usize,
    pub units: f64,
}

struct Walk<'a> {
    model: &'a Model<'a>,
    how: How<'a>,
    changes: usize,
    sets: Vec<Found>,
}

/// Every set in the order of its items from string 1 down; the total is not asked about.
pub fn every_set(model: &Model<'_>, how: How<'_>) -> Vec<Found> {
    let mut walk = Walk { model, how, changes: 0, sets: Vec::new() };
    let first = match how {
        How::Hard { rows, .. } => rows.0,
        How::Soft => 0,
    };
    let none =
        Found { chosen: Vec::new(), sum: 0.0, pull_n: 0.0, amount: 0.0, runs: 0, units: 0.0 };
    walk.go(first, None, &none);
    walk.sets
}

impl<'a> Walk<'a> {
    fn go(&mut self, at: usize, above: Option<(&'a Row, &'a Choice)>, so_far: &Found) {
        let rows = &self.model.rows;
        let last = match self.how {
            How::Hard { rows, .. } => rows.1 + 1,
            How::Soft => rows.len(),
        };
        if at >= last {
            self.sets.push(so_far.clone());
            return;
        }
        let row = &rows[at];
        let usable = |choice: &&Choice| match self.how {
            How::Soft => !choice.broken.iter().any(|(kind, _)| never(*kind)),
            How::Hard { kinds, .. } => {
                !choice.broken.iter().any(|(kind, _)| kinds.contains(kind) || never(*kind))
            }
        };
        let usable: Vec<&'a Choice> = row.options.iter().filter(usable).collect();
        let penalty = if matches!(self.how, How::Soft) { PENALTY } else { 0.0 };
        let usable = self.model.without_doubles(row, usable, penalty);
        if usable.is_empty() && matches!(self.how, How::Soft) {
            self.go(at + 1, above, so_far);
            return;
        }
        for choice in usable {
            let mut next = so_far.clone();
            next.chosen.push(choice.item);
            next.sum += self.model.own(row, choice);
            next.pull_n += choice.pull_n;
            next.units += choice.units;
            next.amount += choice.broken.iter().map(|(_, amount)| amount).sum::<f64>();
            let (mut changed, mut further) = (false, true);
            if let Some(above) = above {
                let (cost, change, item) = self.model.pair(above, (row, choice));
                let ruled = self.model.ruled(above, (row, choice));
                next.sum += cost;
                (changed, further) = (change && ruled, item);
                let mut barred = false;
                for breach in self.model.breaches(above.1, choice).into_iter().flatten() {
                    match self.how {
                        _ if !ruled => {}
                        How::Hard { kinds, .. } => barred |= kinds.contains(&breach),
                        How::Soft if breach == LimitKind::Order => next.amount += 1.0,
                        How::Soft => next.amount += 0.1,
                    }
                }
                if barred {
                    continue;
                }
            }
            next.runs += usize::from(further);
            let rules = &self.model.task.rules;
            let over_changes =
                changed && rules.most_changes.is_some_and(|most| self.changes + 1 > most);
            let over_items = next.runs > 1
                && further
                && rules.most_items.is_some_and(|most| next.runs > most.max(1));
            match self.how {
                How::Hard { kinds, .. } => {
                    if over_changes && kinds.contains(&LimitKind::Changes)
                        || over_items && kinds.contains(&LimitKind::Items)
                    {
                        continue;
                    }
                }
                How::Soft => {
                    next.amount += 0.1 * f64::from(u8::from(over_changes) + u8::from(over_items));
                }
            }
            self.changes += usize::from(changed);
            self.go(at + 1, Some((row, choice)), &next);
            self.changes -= usize::from(changed);
        }
    }
}

fn never(kind: LimitKind) -> bool {
    matches!(kind, LimitKind::Breaks | LimitKind::NoPull)
}

pub fn light(task: &Task, found: &Found) -> bool {
    task.rules.most_total.is_none_or(|most| found.pull_n <= most.to_n() * (1.0 + 1e-12))
}

/// The best of every set, and on which string another equally good one differs first.
pub fn best_of(model: &Model<'_>) -> Option<(Found, Option<usize>)> {
    let rows = (0, model.rows.len().wrapping_sub(1));
    if model.rows.is_empty() {
        return None;
    }
    let all = every_set(model, How::Hard { kinds: &LIMITS, rows });
    let light: Vec<Found> = all.into_iter().filter(|found| light(model.task, found)).collect();
    let least = light.iter().map(|found| found.sum).fold(f64::INFINITY, f64::min);
    let mut equal = light.into_iter().filter(|found| found.sum <= least + EQUAL * model.scale);
    let first = equal.next()?;
    let parts = |other: Found| {
        first.chosen.iter().zip(&other.chosen).position(|(a, b)| a != b).expect("they differ")
    };
    let tie = equal.map(parts).min().map(|row| model.rows[row].string);
    Some((first, tie))
}

pub fn small(seed: u64, ruled: f64) -> Task {
    let mut draws = Draws::new(seed);
    let strings = 2 + draws.below(5);
    let items = 1 + draws.below(6);
    task(&mut draws, Size { strings, items, kept: 0.1, ruled })
}

#[test]
fn the_best_set_is_the_best_of_every_set() {
    let (mut bests, mut ties, mut limited) = (0, 0, 0);
    for seed in 0..1_200 {
        let mut task = small(seed, if seed % 3 == 0 { 0.2 } else { 0.6 });
        if seed % 4 == 1 {
            // Nothing is wanted, so that many sets are equally good. Whether another one that is equally good keeps the
            // total is not asked about.
            task.rules.most_total = None;
            task.strings.iter_mut().for_each(|place| place.target = None);
            task.weights = Weights { feel: 0.0, tension: 0.0, at_change: 0.0, ..task.weights };
        }
        let model = Model::new(&task);
        let answer = choose(&task);
        if model.rows.is_empty() {
            continue;
        }
        let Some((expected, tie)) = best_of(&model) else {
            assert!(answer.best().is_none(), "{seed}: there is no set");
            continue;
        };
        let Answer::Best(best) = answer else { panic!("{seed}: there is a set") };
        let sum = best.set.parts.sum();
        let room = 2.0 * EQUAL * model.scale;
        assert!((sum - expected.sum).abs() <= room, "{seed}: {sum}, not {}", expected.sum);
        assert_eq!(chosen(&model, &best.set.picks), expected.chosen, "{seed}");
        assert_eq!(best.tie, tie, "{seed}: the tie");
        assert!(best.proven && best.gap() <= room, "{seed}: it is proven");
        assert!(best.dual_bound <= sum, "{seed}: the bound");
        assert_eq!(best.set.runs, expected.runs, "{seed}");
        assert!((best.set.total.to_n() - expected.pull_n).abs() < 1e-9, "{seed}: the total");
        bests += 1;
        ties += usize::from(tie.is_some());
        limited += usize::from(best.labels > 0);
    }
    assert!(bests > 400 && ties > 50 && limited > 5, "{bests}, {ties}, {limited}");
}

/// Every rule at a cost: the sum of what is broken and of the deviations is the least there is.
#[test]
fn the_nearest_set_breaks_least() {
    let (mut compared, mut heavy) = (0, 0);
    for seed in 0..1_200 {
        let task = small(seed, 0.9);
        let model = Model::new(&task);
        let Answer::None(refusal) = choose(&task) else { continue };
        let nearest = refusal.nearest.expect("there is a nearest set");
        let sets = every_set(&model, How::Soft);
        let any_light = sets.iter().any(|found| light(&task, found));
        let cost = |found: &Found| {
            let over = task.rules.most_total.filter(|_| !any_light);
            let excess = over.map_or(0.0, |most| found.pull_n / most.to_n() - 1.0);
            PENALTY * (found.amount + excess) + found.sum / model.scale
        };
        let allowed = sets.iter().filter(|found| !any_light || light(&task, found));
        let least = allowed.map(cost).fold(f64::INFINITY, f64::min);
        let amount: f64 = nearest.broken.iter().map(|broken| broken.limit.amount).sum();
        let own = PENALTY * amount + nearest.set.parts.sum() / model.scale;
        assert!((own - least).abs() <= 1e-9 * least.max(1.0), "{seed}: {own}, not {least}");
        compared += 1;
        heavy += usize::from(!any_light);
    }
    assert!(compared > 200 && heavy > 3, "{compared}, {heavy}");
}

/// For each number of items, the front holds the best set with no more.
#[test]
fn the_front_of_items_is_that_of_every_set() {
    let mut longest = 0;
    for seed in 0..300 {
        let mut task = small(seed, 0.2);
        task.weights.item = 0.0;
        let front = alternatives_by_items(&task);
        let model = Model::new(&task);
        if model.rows.is_empty() {
            continue;
        }
        let rows = (0, model.rows.len() - 1);
        let all = every_set(&model, How::Hard { kinds: &LIMITS, rows });
        let room = 3.0 * EQUAL * model.scale;
        let mut last = f64::INFINITY;
        let mut expected = Vec::new();
        for runs in 1..=model.rows.len() {
            let fit = all.iter().filter(|found| found.runs <= runs && light(&task, found));
            let least = fit.map(|found| found.sum).fold(f64::INFINITY, f64::min);
            if least < last - room {
                expected.push((runs, least));
                last = least;
            }
        }
        let got: Vec<usize> = front.iter().map(|best| best.set.runs).collect();
        let wanted: Vec<usize> = expected.iter().map(|(runs, _)| *runs).collect();
        assert_eq!(got, wanted, "{seed}");
        for (best, (_, sum)) in front.iter().zip(&expected) {
            assert!((best.set.parts.sum() - sum).abs() <= room, "{seed}");
        }
        longest = longest.max(front.len());
    }
    assert!(longest >= 4, "{longest}");
}

/// The corners of the front of prices are those of every set, by a hull of its own.
#[test]
fn the_front_of_prices_is_the_hull_of_every_set() {
    let mut longest = 0;
    for seed in 0..300 {
        let mut task = small(seed, 0.2);
        task.weights.price = 0.0;
        let front = alternatives_by_price(&task);
        let model = Model::new(&task);
        if model.rows.is_empty() {
            continue;
        }
        let rows = (0, model.rows.len() - 1);
        let all = every_set(&model, How::Hard { kinds: &LIMITS, rows });
        let light: Vec<&Found> = all.iter().filter(|found| light(&task, found)).collect();
        for weight in [0.0, 0.003, 0.01, 0.03, 0.1, 0.3, 1.0] {
            let cost = |found: &&Found| found.sum + weight * found.units;
            let least = light.iter().map(cost).fold(f64::INFINITY, f64::min);
            let unit = task.weights.price_unit;
            let own = front.iter().map(|best| {
                let without = f64::from(u32::try_from(best.set.without_price).expect("few"));
                best.set.parts.sum() - best.set.parts.price
                    + weight * (best.set.price / unit + without)
            });
            let own = own.fold(f64::INFINITY, f64::min);
            let equal = own == least || (own - least).abs() <= 1e-8 * model.scale.max(least);
            assert!(equal, "{seed}: {own}, not {least}");
        }
        longest = longest.max(front.len());
    }
    assert!(longest >= 4, "{longest}");
}
