//! What an answer of the search means for the design.

use super::kind::StringKind;
use super::spelling::Spelling;
use super::task::wound_from;
use super::words::{self, Line, Says};
use super::{Task, Totals};
use crate::design::display::string_number;
use crate::design::document::{Design, MakeUpSpec, MaterialSpec, StockItem};
use crate::design::edit::{ChosenBy, Edit, Made, Taken};
use crate::design::resolve::{Resolved, resolve};
use crate::design::stock::is_same;
use crate::design::targets::curve;
use crate::design::{make_up_text, stock};
use crate::engine::analysis::{Analysis, StringFigures, analyse};
use crate::engine::choose::{
    Answer, Best, Broken, Item, Kept, Parts, Pick, Rules, Set, Target, choose,
};
use crate::engine::units::{Force, Stiffness};

/// By what share of its sum a set must be worse than the one that is there to be called farther off.
const FARTHER: f64 = 1e-6;

/// A string that would change.
#[derive(Clone, Debug, PartialEq)]
pub struct Change {
    /// Its index.
    pub row: usize,
    /// Its number and note.
    pub name: String,
    /// What is on it now, as it would be typed; empty for nothing.
    pub from: String,
    /// What would be on it.
    pub to: String,
    /// The pull before and after.
    pub tension: (Option<Force>, Option<Force>),
    /// The pluck stiffness before and after.
    pub stiffness: (Option<Stiffness>, Option<Stiffness>),
    /// The load share before and after, in per cent.
    pub share_percent: (Option<f64>, Option<f64>),
    /// The vibrating length before and after, as typed; empty where it stays.
    pub length: (String, String),
}

impl Change {
    /// Of a string, from its figures before and after.
    pub(super) fn new(row: usize, before: &StringFigures, after: &StringFigures) -> Self {
        Self {
            row,
            name: string_number(before),
            from: String::new(),
            to: String::new(),
            tension: (before.tension.ok(), after.tension.ok()),
            stiffness: (before.pluck_stiffness.ok(), after.pluck_stiffness.ok()),
            share_percent: (before.load_share_percent.ok(), after.load_share_percent.ok()),
            length: (String::new(), String::new()),
        }
    }

    /// With the make-ups before and after.
    pub(super) fn made(mut self, before: &MakeUpSpec, after: &MakeUpSpec) -> Self {
        (self.from, self.to) = (written(before), written(after));
        self
    }
}

/// What an answer comes to.
#[derive(Clone, Debug, PartialEq)]
pub struct Outcome {
    /// The whole design with the set on it.
    pub preview: Design,
    /// Its figures.
    pub analysis: Analysis,
    /// The strings that would change, from the highest down.
    pub changes: Vec<Change>,
    /// The set that is there now.
    pub before: Totals,
    /// The set that was found.
    pub after: Totals,
    /// How good the two are.
    pub lines: Vec<Line>,
    /// How sure it is, in sentences.
    pub proof: Vec<String>,
    /// Why there is no set within the limits, in sentences; empty where there is one.
    pub conflicts: Vec<String>,
    /// What this set breaks, in sentences; empty where it is within the limits.
    pub broken: Vec<String>,
    /// Whether the strings that are there now are nearer to what is wanted.
    pub is_farther: bool,
    /// Whether it is nearer by what is worth changing strings for, or has something else for it: fewer different strings, a
    /// lower price, rules that are kept.
    pub is_worth: bool,
    taken: Vec<Taken>,
    stock: Vec<StockItem>,
    materials: Vec<MaterialSpec>,
    chosen_by: ChosenBy,
}

impl Outcome {
    /// The items that the set is made of.
    pub(super) fn stock(&self) -> &[StockItem] {
        &self.stock
    }

    /// The edit that takes the set: of all strings, or of those of which `rows` says so.
    pub fn edit(&self, rows: Option<&[bool]>) -> Edit {
        let chosen =
            |taken: &&Taken| rows.is_none_or(|rows| rows.get(taken.row).copied().unwrap_or(false));
        Edit::Take {
            strings: self.taken.iter().filter(chosen).cloned().collect(),
            stock: self.stock.clone(),
            materials: self.materials.clone(),
            chosen_by: self.chosen_by.clone(),
        }
    }
}

/// A set to click through: fewer different strings, or a lower price, for less evenness.
#[derive(Clone, Debug, PartialEq)]
pub struct Alternative {
    /// How many different strings and wires.
    pub different: usize,
    /// What it costs, as far as prices are known.
    pub price: f64,
    /// How far off what is wanted its strings are on average, in per cent, as [`Outcome::lines`] tells it.
    pub off_percent: f64,
    /// In words.
    pub text: String,
    /// The answer, for [`Task::outcome`].
    pub answer: Answer,
}

impl Task {
    /// What an answer means for the design for which the task was made. `None` where not even a nearest set was
    /// found; [`Task::conflicts`] says why.
    pub fn outcome(
        &self,
        design: &Design,
        resolved: &Resolved,
        analysis: &Analysis,
        answer: &Answer,
    ) -> Option<Outcome> {
        let (set, best, broken) = match answer {
            Answer::Best(best) => (&best.set, Some(best), &[][..]),
            Answer::None(refusal) => {
                let nearest = refusal.nearest.as_ref()?;
                (&nearest.set, None, nearest.broken.as_slice())
            }
        };
        let taken = self.taken(design, set);
        let stock = self.picked(set).map(|(_, item)| self.items[item].clone()).collect();
        let mut outcome = Outcome {
            preview: Design::default(),
            analysis: analysis.clone(),
            changes: Vec::new(),
            before: self.totals(design, resolved, &self.present(resolved), true),
            after: self.totals(design, resolved, set, false),
            lines: Vec::new(),
            proof: Vec::new(),
            conflicts: self.conflicts(analysis, answer),
            broken: words::broken(broken, analysis),
            is_farther: false,
            is_worth: true,
            taken,
            stock,
            materials: self.materials.clone(),
            chosen_by: ChosenBy {
                curve: curve(design, resolved),
                wound_from: wound_from(design, resolved),
            },
        };
        outcome.preview = outcome.edit(None).apply(design);
        let meant = resolve(&outcome.preview);
        outcome.analysis = analyse(&meant.harp);
        outcome.before.changes = changes(resolved);
        outcome.after.changes = changes(&meant);
        for row in outcome.taken.iter().filter(|taken| taken.made.is_some()).map(|t| t.row) {
            let (before, after) = (&design.strings[row], &outcome.preview.strings[row]);
            if before.make_up != after.make_up {
                let change =
                    Change::new(row, &analysis.strings[row], &outcome.analysis.strings[row]);
                outcome.changes.push(change.made(&before.make_up, &after.make_up));
            }
        }
        outcome.after.tension = outcome.analysis.total_tension;
        outcome.before.tension = analysis.total_tension;
        let (totals, analyses) = ((&outcome.before, &outcome.after), (analysis, &outcome.analysis));
        outcome.lines = words::lines(self, design, resolved, totals, analyses);
        // Prices are no part of how near a set is.
        let far = |parts: &Parts| parts.sum() - parts.price;
        let (was, is) = (far(&outcome.before.parts), far(&outcome.after.parts));
        let is_strung = |row: &usize| resolved.harp.strings[*row].make_up.is_ok();
        outcome.is_farther =
            best.is_some() && self.sought.iter().all(is_strung) && is - was > FARTHER * is;
        let (was, is) = (&outcome.before, &outcome.after);
        outcome.is_worth = best.is_none()
            || outcome.is_farther
            || outcome.changes.is_empty()
            || !self.sought.iter().all(is_strung)
            || is.different < was.different
            || is.changes < was.changes
            || is.price < was.price
            || is.without_price != was.without_price
            || words::is_worth_restringing(design, resolved, analyses)
            || !self.present_breaks(resolved).is_empty();
        let says = Says {
            is_there: outcome.changes.is_empty(),
            unlisted: self.unlisted(set),
            nearer: outcome
                .is_farther
                .then(|| words::broken(&self.present_breaks(resolved), analysis)),
        };
        outcome.proof = words::proof(self, best, &says, analysis);
        Some(outcome)
    }

    /// How many of the sought strings stay as they are although this stock does not have them.
    fn unlisted(&self, set: &Set) -> usize {
        let is_own = |row: &&usize| match set.picks.get(**row) {
            Some(Pick::Item(item)) => *item >= self.items.len(),
            _ => false,
        };
        self.sought.iter().filter(is_own).count()
    }

    /// Which rules the set that is there now breaks.
    fn present_breaks(&self, resolved: &Resolved) -> Vec<Broken> {
        let mut task = self.search.clone();
        task.stock.clear();
        for row in &self.sought {
            let string = &resolved.harp.strings[*row];
            let Ok(make_up) = &string.make_up else { continue };
            let name = StringKind::of(make_up).name;
            let family = self.kinds.iter().position(|kind| *kind == name).unwrap_or(0);
            let (make_up, price) = (make_up.clone(), None);
            let (lowest, highest) = (string.note, string.note);
            task.stock.push(Item { make_up, family, price, in_stock: true, lowest, highest });
        }
        match choose(&task) {
            Answer::Best(_) => Vec::new(),
            Answer::None(refusal) => refusal.nearest.map_or_else(Vec::new, |near| near.broken),
        }
    }

    /// Why there is no set within the limits, in sentences; none where there is one.
    pub fn conflicts(&self, analysis: &Analysis, answer: &Answer) -> Vec<String> {
        match answer {
            Answer::Best(_) => Vec::new(),
            Answer::None(refusal) => words::conflicts(self, refusal, analysis),
        }
    }

    /// Sets as [`Task::by_items`] and [`Task::by_price`] find them, to click through. The sum that they have least
    /// counts more than how far off they are on average, so that one may be farther off than another that has no more
    /// strings and costs no more; such a one is left out, but for the best of all, the last.
    pub fn alternatives(&self, found: &[Best]) -> Vec<Alternative> {
        let alternative = |best: &Best| {
            let off_percent = self.off_percent(&best.set);
            Alternative {
                different: best.set.different,
                price: best.set.price,
                off_percent,
                text: words::alternative(self, &best.set, off_percent),
                answer: Answer::Best(best.clone()),
            }
        };
        let all: Vec<Alternative> = found.iter().map(alternative).collect();
        let is_behind = |one: &Alternative, other: &Alternative| {
            other.off_percent < one.off_percent
                && other.different <= one.different
                && other.price <= one.price
        };
        let is_last = |place: usize| place + 1 == all.len();
        let kept = all.iter().enumerate().filter(|(place, one)| {
            is_last(*place) || !all.iter().any(|other| is_behind(one, other))
        });
        kept.map(|(_, one)| one.clone()).collect()
    }

    /// How far off their targets the strings of a set are on average, in per cent.
    fn off_percent(&self, set: &Set) -> f64 {
        let ratio = self.search.pluck_ratio;
        let (mut sum, mut count) = (0.0, 0.0_f64);
        for (place, pull) in self.search.strings.iter().zip(&set.pulls) {
            let (Some(pull), Some(target), Ok(length)) = (pull, place.target, place.length) else {
                continue;
            };
            let wanted_n = match target {
                Target::Tension(force) => force.to_n(),
                Target::Stiffness(feel) => {
                    feel.to_n_per_m() * length.to_m() * ratio * (1.0 - ratio)
                }
            };
            sum += words::off_percent(pull.to_n() / wanted_n);
            count += 1.0;
        }
        sum / count.max(1.0)
    }

    /// The strings that get an item of the stock, and which.
    fn picked<'a>(&'a self, set: &'a Set) -> impl Iterator<Item = (usize, usize)> + 'a {
        set.picks.iter().enumerate().filter_map(|(row, pick)| match pick {
            Pick::Item(item) if *item < self.items.len() => Some((row, *item)),
            _ => None,
        })
    }

    /// What changes on the strings: make-up, order code and key. A string that is the same to buy stays as it was
    /// typed, and becomes the item only where it has no code of another.
    fn taken(&self, design: &Design, set: &Set) -> Vec<Taken> {
        let mut materials = design.materials.clone();
        materials.extend(self.materials.iter().cloned());
        let spelling = Spelling::of(design, &materials);
        let taken = |(row, item): (usize, usize)| {
            let item = &self.items[item];
            let string = design.strings.get(row)?;
            let (spec, own) = (item.make_up.read().ok()?, string.order_code.trim());
            let is_same = is_same(&materials, &string.make_up, spec);
            let made = Made {
                make_up: if is_same {
                    string.make_up.clone()
                } else {
                    spelling.spell(&materials, spec)
                },
                order_code: item.code.trim().to_owned(),
                stock_key: item.key,
            };
            let is_its = !is_same || own.is_empty() || own == made.order_code;
            (is_its && made != Made::of(string)).then_some(Taken {
                row,
                made: Some(made),
                length: None,
            })
        };
        self.picked(set).filter_map(taken).collect()
    }

    /// The set that is there now, as the search weighs it.
    pub(super) fn present(&self, resolved: &Resolved) -> Set {
        let mut task = self.search.clone();
        task.rules = Rules {
            most_share_percent: None,
            most_soft_share_percent: None,
            in_order: false,
            no_shrinking: false,
            unknown_share: true,
            only_sold_for: false,
            ..Rules::default()
        };
        task.stock.clear();
        for row in &self.sought {
            let (Some(place), Some(string)) =
                (task.strings.get_mut(*row), resolved.harp.strings.get(*row))
            else {
                continue;
            };
            match &string.make_up {
                Ok(make_up) => {
                    let name = StringKind::of(make_up).name;
                    let family = self.kinds.iter().position(|kind| *kind == name);
                    place.kept = Some(Kept { make_up: make_up.clone(), family });
                }
                Err(why) => place.frequency = Err(*why),
            }
        }
        match choose(&task) {
            Answer::Best(best) => best.set,
            Answer::None(refusal) => refusal.nearest.map_or_else(
                || Set {
                    picks: Vec::new(),
                    pulls: Vec::new(),
                    parts: Parts::default(),
                    total: Force::from_n(0.0),
                    price: 0.0,
                    without_price: 0,
                    different: 0,
                    runs: 0,
                    changes: 0,
                },
                |nearest| nearest.set,
            ),
        }
    }

    fn totals(&self, design: &Design, resolved: &Resolved, set: &Set, is_present: bool) -> Totals {
        let mut totals = Totals {
            tension: set.total,
            different: set.different,
            changes: set.changes,
            price: set.price,
            without_price: set.without_price,
            parts: set.parts,
        };
        if is_present {
            (totals.price, totals.without_price) = self.price_now(design, resolved);
        }
        totals
    }

    /// What the sought strings cost now, of items of this stock, and how many have no price.
    fn price_now(&self, design: &Design, resolved: &Resolved) -> (f64, usize) {
        let mut materials = design.materials.clone();
        materials.extend(self.materials.iter().cloned());
        let shelf = stock::Shelf::new(&materials, &self.items);
        let (mut sum, mut without) = (0.0, 0);
        for row in &self.sought {
            let (string, meant) = (&design.strings[*row], &resolved.harp.strings[*row]);
            let price = shelf.find(string).ok().and_then(|found| {
                let cut = meant.length.ok().zip(meant.make_up.as_ref().ok()?.gauge());
                let cut = cut.map(|(length, gauge)| {
                    crate::engine::cut::cut_length(length, gauge, &self.search.allowance)
                });
                let item = &self.items[found.index];
                let other = !stock::is_same_currency(&item.currency, &self.currency);
                if other { None } else { stock::share(item, cut).ok() }
            });
            match price {
                Some(price) => sum += price,
                None => without += 1,
            }
        }
        (sum, without)
    }
}

/// How often the kind changes from a string to the next that has one.
fn changes(resolved: &Resolved) -> usize {
    let strings = resolved.harp.strings.iter();
    let kinds = strings.filter_map(|string| string.make_up.as_ref().ok().map(StringKind::of));
    let kinds: Vec<StringKind> = kinds.collect();
    kinds.windows(2).filter(|pair| pair[0].name != pair[1].name).count()
}

/// A make-up as it would be typed; empty for none.
fn written(make_up: &MakeUpSpec) -> String {
    if make_up.is_empty() { String::new() } else { make_up_text::write(make_up) }
}
