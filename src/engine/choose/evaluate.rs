//! Every item on every string: its pull, and which rules it would break there.

use super::{Item, Price, Rules, Target, Task, Weights};
use crate::engine::analysis::{Made, stiffness_of, usable_length, usable_pitch};
use crate::engine::cut::cut_length;
use crate::engine::limit::{is_above, is_below};
use crate::engine::order::sort;
use crate::engine::pitch::Note;
use crate::engine::units::{Force, Frequency, Length, Stiffness};

/// What a rule is about.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum LimitKind {
    /// The load share is over the greatest allowed.
    MostShare,
    /// The load share is below the least allowed.
    LeastShare,
    /// The load share is not known.
    UnknownShare,
    /// Thinner than its zone allows.
    Thin,
    /// Thicker than its zone allows.
    Thick,
    /// The gauge is not known, but its zone limits it.
    UnknownGauge,
    /// The family may not be used on this string.
    Place,
    /// The item is not sold for this note.
    Note,
    /// The item is not in stock.
    Stock,
    /// A family comes after one that it should come before.
    Order,
    /// A string, or its core, is thinner than the one above it.
    Shrinking,
    /// The pluck stiffness jumps from a string to the next.
    Jump,
    /// Too many changes of family.
    Changes,
    /// Too many different items.
    Items,
    /// The total pull is too great.
    Total,
    /// The string would break. Never allowed.
    Breaks,
    /// The pull cannot be computed. Never allowed.
    NoPull,
}

/// Every kind, in the order in which a search for what conflicts tries to do without it.
pub const LIMITS: [LimitKind; 17] = [
    LimitKind::Changes,
    LimitKind::Items,
    LimitKind::Shrinking,
    LimitKind::Jump,
    LimitKind::Order,
    LimitKind::Note,
    LimitKind::Place,
    LimitKind::Thin,
    LimitKind::Thick,
    LimitKind::UnknownGauge,
    LimitKind::UnknownShare,
    LimitKind::LeastShare,
    LimitKind::MostShare,
    LimitKind::Stock,
    LimitKind::Total,
    LimitKind::Breaks,
    LimitKind::NoPull,
];

impl LimitKind {
    pub(super) const fn bit(self) -> u32 {
        1 << self as u32
    }
}

/// Of a broken rule, by how much, as it counts in the nearest set: the logarithm of the ratio for shares and gauges,
/// the excess as a share of the limit for the total pull, octaves for notes, 0.1 for each string outside the place of
/// a family, 0.1 for what is not in stock, a thinner string below a thicker, a jump of the feel, a change or an item
/// too many, and 1 for an unknown share or gauge and a family out of order. Chosen for this project, no source.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Limit {
    /// What the rule is about.
    pub kind: LimitKind,
    /// By how much it is broken.
    pub amount: f64,
}

/// The most items of a stock that are looked at.
pub const MOST_ITEMS: usize = 20_000;

/// What an item that is not in stock, a thinner string below a thicker, a jump, a change or an item too many counts.
pub(super) const SMALL: f64 = 0.1;
/// What an unknown share or gauge and a family out of order count.
pub(super) const LARGE: f64 = 1.0;

/// What never changes of an item.
#[derive(Clone, Copy, Debug)]
pub(super) struct Facts {
    pub family: Option<usize>,
    /// Whole nanometres, so that two units give one number.
    pub gauge_nm: Option<f64>,
    /// Of the core of what is wound.
    pub core_nm: Option<f64>,
    made: Made,
}

/// An item on a string.
#[derive(Clone, Copy, Debug)]
pub(super) struct Cell {
    pub item: usize,
    pub pull_n: f64,
    /// Logarithm of the pull in newtons.
    pub log_pull: f64,
    pub share_percent: Option<f64>,
    /// Price, in the caller's currency.
    pub price: Option<f64>,
    /// Bits of the rules that it would break here.
    pub broken: u32,
}

/// A string that takes part, with every item on it.
#[derive(Clone, Debug)]
pub(super) struct Row {
    /// Index among all strings.
    pub string: usize,
    /// Logarithm of the target's pull in newtons.
    pub target: Option<f64>,
    pub weight: f64,
    /// Logarithm of the pluck stiffness of 1 N, in N/m.
    pub feel: f64,
    pub kept: bool,
    pub cells: Vec<Cell>,
    gauges_nm: (f64, f64),
    limits_gauge: bool,
}

/// The whole table. Items beyond the stock are those that are kept.
#[derive(Clone, Debug)]
pub(super) struct Table {
    pub rows: Vec<Row>,
    pub items: Vec<Facts>,
    /// Of each item of the stock the first that is alike: together they are one.
    alike: Vec<u16>,
    /// Weights with the greatest as 1.
    pub weights: Weights,
    /// The greatest weight.
    pub scale: f64,
    /// The stock by family and gauge, for standing above and for standing below.
    pub above: Vec<u16>,
    pub below: Vec<u16>,
    /// The string on which each kept item was first met.
    kept: Vec<usize>,
}

impl Table {
    pub fn new(task: &Task) -> Self {
        let mut items: Vec<Facts> = Vec::with_capacity(task.stock.len());
        for item in task.stock.iter().take(MOST_ITEMS) {
            items.push(facts(&item.make_up, Some(item.family)));
        }
        let by_gauge = |unknown: f64| {
            let mut order: Vec<u16> = (0_u16..).zip(&items).map(|(index, _)| index).collect();
            let place = |item: &u16| {
                let facts = &items[usize::from(*item)];
                (facts.family.unwrap_or(0), facts.gauge_nm.unwrap_or(unknown))
            };
            sort(&mut order, |one, other| place(one) > place(other));
            order
        };
        let (above, below) = (by_gauge(f64::NEG_INFINITY), by_gauge(f64::INFINITY));
        let alike = alike(task, &items, &above);
        // One pull for all that are alike, to the last digit.
        for (item, first) in alike.iter().enumerate() {
            items[item] = items[usize::from(*first)];
        }
        let (weights, rows, kept) = (task.weights, Vec::new(), Vec::new());
        let mut table = Self { rows, items, alike, weights, scale: 1.0, above, below, kept };
        table.weigh(task);
        table
    }

    /// Takes the weights of a task, the greatest as 1.
    pub fn weigh(&mut self, task: &Task) {
        let given = task.weights;
        let listed =
            [given.feel, given.tension, given.at_change, given.change, given.item, given.price];
        let of_strings = task.strings.iter().map(|place| place.weight);
        let greatest = listed.into_iter().chain(of_strings).map(usable).fold(0.0, f64::max);
        self.scale = if greatest > 0.0 { greatest } else { 1.0 };
        let share = |weight: f64| usable(weight) / self.scale;
        self.weights = Weights {
            feel: share(given.feel),
            tension: share(given.tension),
            at_change: share(given.at_change),
            change: share(given.change),
            item: share(given.item),
            price: share(given.price),
            price_unit: unit(given.price_unit),
        };
        for row in &mut self.rows {
            row.weight = share(task.strings[row.string].weight);
        }
    }

    /// Adds the row of a string, if it can take part.
    pub fn add(&mut self, task: &Task, string: usize) {
        let place = &task.strings[string];
        let (Ok(frequency), Ok(length)) =
            (usable_pitch(place.frequency), usable_length(place.length))
        else {
            return;
        };
        let Ok(unit) = stiffness_of(Force::from_n(1.0), length, task.pluck_ratio) else { return };
        let feel = unit.to_n_per_m().ln();
        let target = match place.target {
            Some(Target::Stiffness(k)) => Some(Stiffness::to_n_per_m(k).ln() - feel),
            Some(Target::Tension(pull)) => Some(pull.to_n().ln()),
            None => None,
        };
        let target = target.filter(|log| log.is_finite());
        let weight = usable(place.weight) / self.scale;
        let (mut least, mut greatest, mut limits_gauge) = (f64::NEG_INFINITY, f64::INFINITY, false);
        for zone in task.rules.zones.iter().filter(|zone| covers(zone.strings, string)) {
            limits_gauge |= zone.least.is_some() || zone.greatest.is_some();
            least = zone.least.map_or(least, |gauge| least.max(whole_nm(gauge)));
            greatest = zone.greatest.map_or(greatest, |gauge| greatest.min(whole_nm(gauge)));
        }
        let gauges_nm = (least, greatest);
        let kept = place.kept.is_some();
        let cells = Vec::new();
        let mut row = Row { string, target, weight, feel, kept, cells, gauges_nm, limits_gauge };
        if let Some(kept) = &place.kept {
            let same = |item: &Item| {
                Some(item.family) == kept.family && item.make_up.is_alike(&kept.make_up)
            };
            let stocked = task.stock.iter().take(MOST_ITEMS).position(same);
            let met = || {
                let same = |string: &usize| {
                    let other = task.strings[*string].kept.as_ref();
                    other.is_some_and(|other| {
                        other.family == kept.family && other.make_up.is_alike(&kept.make_up)
                    })
                };
                Some(self.items.len() - self.kept.len() + self.kept.iter().position(same)?)
            };
            let item = match stocked.or_else(met) {
                Some(item) => item,
                None => {
                    self.items.push(facts(&kept.make_up, kept.family));
                    self.kept.push(string);
                    self.items.len() - 1
                }
            };
            let cell = self.cell(task, &row, item, (frequency, length));
            // Without a pull there is nothing to compare its neighbours with.
            if cell.broken & LimitKind::NoPull.bit() != 0 {
                return;
            }
            row.cells.push(Cell { broken: 0, price: Some(0.0), ..cell });
        } else {
            let items = task.stock.len().min(MOST_ITEMS);
            row.cells.reserve_exact(items);
            for item in 0..items {
                row.cells.push(self.cell(task, &row, item, (frequency, length)));
            }
        }
        self.rows.push(row);
    }

    /// The first item that is alike, or the item itself where it is not of the stock.
    pub fn first_alike(&self, item: usize) -> usize {
        self.alike.get(item).map_or(item, |first| usize::from(*first))
    }

    fn cell(&self, task: &Task, row: &Row, item: usize, at: (Frequency, Length)) -> Cell {
        let facts = &self.items[item];
        let Ok(pull) = facts.made.tension(at.0, at.1) else {
            let broken = LimitKind::NoPull.bit();
            return Cell {
                item,
                pull_n: 0.0,
                log_pull: 0.0,
                share_percent: None,
                price: None,
                broken,
            };
        };
        let share_percent = facts.made.share_percent(pull).ok();
        let pull_n = pull.to_n();
        let mut cell =
            Cell { item, pull_n, log_pull: pull_n.ln(), share_percent, price: None, broken: 0 };
        if let Some(stocked) = task.stock.get(item) {
            cell.price = price(stocked, at.1, task);
        }
        for (kind, ..) in self.broken(task, row, &cell).into_iter().flatten() {
            cell.broken |= kind.bit();
        }
        cell
    }

    /// The rules that an item breaks on a string by itself, and by how much.
    pub fn limits(
        &self,
        task: &Task,
        row: &Row,
        cell: &Cell,
    ) -> impl Iterator<Item = Limit> + use<> {
        self.broken(task, row, cell).into_iter().flatten().map(|(kind, amount, is_ratio)| Limit {
            kind,
            amount: if is_ratio { amount.ln() } else { amount },
        })
    }

    /// The same, with amounts of which some are ratios still: most are never asked for, and a logarithm takes time.
    fn broken(&self, task: &Task, row: &Row, cell: &Cell) -> [Option<(LimitKind, f64, bool)>; 8] {
        let rules = &task.rules;
        let mut broken = [None; 8];
        let mut at = 0;
        let mut say = |kind, amount: f64, is_ratio: bool| {
            broken[at] = Some((kind, amount, is_ratio));
            at += 1;
        };
        match cell.share_percent {
            Some(share) => {
                if is_above(share, 100.0) {
                    say(LimitKind::Breaks, share / 100.0, true);
                }
                let soft =
                    rules.most_soft_share_percent.filter(|_| self.items[cell.item].made.is_soft);
                let most = [rules.most_share_percent, soft].into_iter().flatten().reduce(f64::min);
                if let Some(most) = most.filter(|most| is_above(share, *most)) {
                    say(LimitKind::MostShare, share / most.max(1e-9), true);
                }
                if let Some(least) =
                    rules.least_share_percent.filter(|least| is_below(share, *least))
                {
                    say(LimitKind::LeastShare, least / share, true);
                }
            }
            None if rules.unknown_share => {}
            None => say(LimitKind::UnknownShare, LARGE, false),
        }
        let facts = &self.items[cell.item];
        match facts.gauge_nm {
            Some(gauge) if gauge < row.gauges_nm.0 => {
                say(LimitKind::Thin, row.gauges_nm.0 / gauge, true);
            }
            Some(gauge) if gauge > row.gauges_nm.1 => {
                say(LimitKind::Thick, gauge / row.gauges_nm.1.max(1.0), true);
            }
            None if row.limits_gauge => say(LimitKind::UnknownGauge, LARGE, false),
            _ => {}
        }
        let family = facts.family.and_then(|family| task.families.get(family));
        if let Some((first, last)) = family.and_then(|family| family.strings) {
            let beyond = first.saturating_sub(row.string).max(row.string.saturating_sub(last));
            if beyond > 0 {
                say(LimitKind::Place, SMALL * count(beyond), false);
            }
        }
        if let Some(item) = task.stock.get(cell.item) {
            if let Some(beyond) = beyond_notes(item, task.strings[row.string].note, rules) {
                say(LimitKind::Note, beyond, false);
            }
            if rules.only_in_stock && !item.in_stock {
                say(LimitKind::Stock, SMALL, false);
            }
        }
        broken
    }
}

fn facts(make_up: &super::MakeUp, family: Option<usize>) -> Facts {
    let is_plain = matches!(make_up, super::MakeUp::Plain { .. });
    let core = make_up.core().filter(|_| !is_plain).map(|(_, diameter)| whole_nm(diameter));
    let gauge_nm = make_up.gauge().map(whole_nm);
    Facts { family, gauge_nm, core_nm: core, made: Made::of(make_up) }
}

/// Of each item the first of its family that is one string to buy with it. They have one gauge, so that they follow
/// each other in the order by family and gauge.
fn alike(task: &Task, items: &[Facts], by_gauge: &[u16]) -> Vec<u16> {
    let mut alike: Vec<u16> = (0_u16..).zip(items).map(|(index, _)| index).collect();
    let facts = |item: u16| (items[usize::from(item)].family, items[usize::from(item)].gauge_nm);
    let make_up = |item: u16| &task.stock[usize::from(item)].make_up;
    for (at, item) in by_gauge.iter().enumerate() {
        let before = by_gauge[..at].iter().rev().take_while(|other| facts(**other) == facts(*item));
        if let Some(other) =
            before.into_iter().find(|other| make_up(**other).is_alike(make_up(*item)))
        {
            alike[usize::from(*item)] = alike[usize::from(*other)];
        }
    }
    alike
}

/// Octaves between a note and those that an item is sold for.
fn beyond_notes(item: &Item, note: Option<Note>, rules: &Rules) -> Option<f64> {
    let key = note.filter(|_| rules.only_sold_for)?.key_number();
    let below = item.lowest.map_or(0, |lowest| lowest.key_number() - key);
    let above = item.highest.map_or(0, |highest| key - highest.key_number());
    let beyond = below.max(above);
    (beyond > 0).then(|| f64::from(beyond) / 12.0)
}

fn price(item: &Item, length: Length, task: &Task) -> Option<f64> {
    let price = match item.price? {
        Price::Each(price) => price,
        Price::PerMetre(price) => {
            let gauge = item.make_up.gauge().unwrap_or_default();
            price * cut_length(length, gauge, &task.allowance).to_m()
        }
    };
    price.is_finite().then_some(price)
}

fn covers((first, last): (usize, usize), string: usize) -> bool {
    (first..=last).contains(&string)
}

fn whole_nm(gauge: Length) -> f64 {
    (gauge.to_m() * 1e9).round()
}

fn usable(weight: f64) -> f64 {
    if weight > 0.0 && weight.is_finite() { weight } else { 0.0 }
}

/// The price that counts as one.
pub(super) fn unit(price: f64) -> f64 {
    if price > 0.0 && price.is_finite() { price } else { 1.0 }
}

/// A count as a number.
pub(super) fn count(number: usize) -> f64 {
    // Counts of strings and items are far below what u32 holds.
    u32::try_from(number).map_or(f64::INFINITY, f64::from)
}

/// What breaking a rule by 1 costs in the nearest set, where the greatest weight is 1: far more than any set
/// deviates.
pub(super) const PENALTY: f64 = 1e4;
