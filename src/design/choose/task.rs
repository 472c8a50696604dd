//! A design and a stock as the search takes them.

use std::ops::RangeInclusive;

use super::kind::{StringKind, kind_in_words, kind_name};
use super::{Shop, Task};
use crate::design::document::{
    Design, MaterialSpec, StockItem, StringSpec, WantsSpec, WeightsSpec,
};
use crate::design::resolve::{Resolved, resolve};
use crate::design::settings::Setting;
use crate::design::stock::{bundle_of, is_same_currency};
use crate::design::targets::{places, wanted};
use crate::design::typed;
use crate::engine::choose::Task as Search;
use crate::engine::choose::{Family, Item, Kept, Price, Rules, Target, TaskString, Weights, Zone};
use crate::engine::construction::MakeUp;
use crate::engine::order::sort;
use crate::engine::pitch::Note;
use crate::engine::units::{Force, Length, Stiffness};

/// The most things that a sentence names.
const NAMED: usize = 3;

/// What an engine's weight is where the maker's is [`WeightsSpec::SOME`]: see the engine's usual weights. Few items
/// and a low price weigh as a change of the kind does. Chosen for this project, no source.
const SOME: Weights = Weights {
    feel: 0.5,
    tension: 0.5,
    at_change: 1.5,
    change: 0.01,
    item: 0.01,
    price: 0.01,
    price_unit: 1.0,
};

/// A stock item that was read.
struct Candidate {
    item: StockItem,
    make_up: MakeUp,
    /// Whether one before it is the same string: as a thing to choose they are one.
    is_double: bool,
    kind: StringKind,
    price: Option<Price>,
    notes: (Option<Note>, Option<Note>),
}

/// Sets up the search: which strings are sought, which stay, and what there is to choose from.
///
/// `rows` are the strings that may change, by their index; a locked string among them stays.
pub(super) fn task(design: &Design, resolved: &Resolved, shop: &Shop<'_>, rows: &[bool]) -> Task {
    let mut left_out = Vec::new();
    let materials: Vec<MaterialSpec> =
        design.materials.iter().chain(shop.materials).cloned().collect();
    let currency = commonest_currency(shop.items);
    let mut candidates = candidates(&materials, shop.items, &currency, &mut left_out);
    let targets = &design.targets;
    let places = places(design, resolved);
    let is_sought =
        |index: usize| rows.get(index).copied().unwrap_or(false) && !design.strings[index].locked;
    let strings = &resolved.harp.strings;
    let families =
        families(design, resolved, (&materials, &places), &mut candidates, &mut left_out);
    let family = |kind: &StringKind| families.iter().position(|(name, _)| *name == kind.name);
    let wants = wanted(design, resolved);
    let weight = share(targets.weights.target);
    let mut sought = Vec::new();
    let mut without: Vec<String> = Vec::new();
    let place = |(index, string): (usize, &crate::engine::analysis::HarpString)| {
        let mut place = TaskString {
            note: string.note,
            frequency: string.frequency,
            length: string.length,
            target: wants[index].map(|value| target(targets.wants, value)),
            weight,
            kept: None,
        };
        if is_sought(index) {
            if string.frequency.is_err() || string.length.is_err() {
                without.push((index + 1).to_string());
            } else {
                sought.push(index);
            }
        } else {
            match &string.make_up {
                Ok(make_up) => {
                    let family = family(&StringKind::of(make_up));
                    place.kept = Some(Kept { make_up: make_up.clone(), family });
                }
                // Nothing is sought for it and nothing stands on it.
                Err(why) => place.frequency = Err(*why),
            }
        }
        place
    };
    let strings: Vec<TaskString> = strings.iter().enumerate().map(place).collect();
    if !without.is_empty() {
        let count = counted(without.len(), "string");
        let text = list(&without);
        left_out.push(format!("{count} without length or note cannot be given a make-up: {text}"));
    }
    let price_unit = usual_price(&candidates);
    let stock = candidates.iter().map(|candidate| Item {
        make_up: candidate.make_up.clone(),
        family: family(&candidate.kind).unwrap_or(0),
        price: candidate.price,
        in_stock: true,
        lowest: candidate.notes.0,
        highest: candidate.notes.1,
    });
    let stock: Vec<Item> = stock.collect();
    let search = Search {
        strings,
        families: families.iter().map(|(_, strings)| Family { strings: *strings }).collect(),
        rules: rules(design, resolved, &places, &mut left_out),
        weights: weights(&targets.weights, price_unit),
        pluck_ratio: resolved.harp.pluck_ratio,
        allowance: resolved.harp.conditions.allowance,
        stock,
    };
    Task {
        search,
        items: candidates.into_iter().map(|candidate| candidate.item).collect(),
        materials: shop.materials.to_vec(),
        kinds: families.into_iter().map(|(name, _)| name).collect(),
        currency,
        sought,
        left_out,
    }
}

/// The kinds that may be used, from the treble to the bass, each with the strings on which; what is of another kind
/// is taken out.
fn families(
    design: &Design,
    resolved: &Resolved,
    (materials, places): (&[MaterialSpec], &[Option<f64>]),
    candidates: &mut Vec<Candidate>,
    left_out: &mut Vec<String>,
) -> Vec<(String, Option<(usize, usize)>)> {
    // What is on the strings has a kind too.
    let present = resolved
        .harp
        .strings
        .iter()
        .filter_map(|string| string.make_up.as_ref().ok().map(StringKind::of));
    let mut families: Vec<(String, Option<(usize, usize)>)> = Vec::new();
    if design.targets.kinds.is_empty() {
        let mut kinds: Vec<StringKind> = Vec::new();
        for kind in candidates.iter().map(|candidate| candidate.kind.clone()).chain(present) {
            if !kinds.contains(&kind) {
                kinds.push(kind);
            }
        }
        sort(&mut kinds, |one, other| one.is_below(other));
        families.extend(kinds.into_iter().map(|kind| (kind.name, None)));
    } else {
        for spec in &design.targets.kinds {
            let name = kind_name(materials, &spec.kind);
            if name.is_empty() || families.iter().any(|(other, _)| *other == name) {
                continue;
            }
            let what = format!("the strings of {}", kind_in_words(&name));
            match range(&what, (&spec.lowest, &spec.highest), places, left_out) {
                Some(range) => {
                    let all = range == (0, places.len().saturating_sub(1));
                    families.push((name, (!all).then_some(range)));
                }
                None => left_out.push(format!(
                    "no string of the harp lies where {} may be used (widen its notes)",
                    kind_in_words(&name)
                )),
            }
        }
        let before = candidates.len();
        candidates
            .retain(|candidate| families.iter().any(|(name, _)| *name == candidate.kind.name));
        let other = before - candidates.len();
        if other > 0 {
            left_out.push(format!(
                "{} of kinds that are not listed {}",
                counted(other, "item"),
                if other == 1 { "is left out" } else { "are left out" }
            ));
        }
    }
    families
}

/// The items that can be used.
fn candidates(
    materials: &[MaterialSpec],
    items: &[StockItem],
    currency: &str,
    left_out: &mut Vec<String>,
) -> Vec<Candidate> {
    let mut unread: Vec<String> = Vec::new();
    let mut gone: Vec<String> = Vec::new();
    // All make-ups at once, as strings of a design of their own.
    let string = |item: &StockItem| StringSpec {
        make_up: item.make_up.read().cloned().unwrap_or_default(),
        ..StringSpec::default()
    };
    let strings = items.iter().map(string).collect();
    let shelf = Design { materials: materials.to_vec(), strings, ..Design::default() };
    let read = resolve(&shelf);
    let mut other_currency = 0_usize;
    let mut candidates: Vec<Candidate> = Vec::new();
    for (item, string) in items.iter().zip(read.harp.strings) {
        let Ok(make_up) = string.make_up else {
            unread.push(item.make_up.to_string());
            continue;
        };
        if item.sold_out {
            gone.push(item.make_up.to_string());
            continue;
        }
        let note = |text: &str| text.parse::<Note>().ok();
        let same_currency = is_same_currency(&item.currency, currency);
        let price = item.price.filter(|_| same_currency).and_then(|price| price_of(item, price));
        other_currency += usize::from(item.price.is_some() && !same_currency);
        let kind = StringKind::of(&make_up);
        let notes = (note(&item.lowest), note(&item.highest));
        let is_double = candidates.iter().any(|other| other.make_up.is_alike(&make_up));
        let item = item.clone();
        candidates.push(Candidate { item, make_up, is_double, kind, price, notes });
    }
    if !unread.is_empty() {
        let count = counted(unread.len(), "item");
        left_out.push(format!("{count} of the stock cannot be read: {}", list(&unread)));
    }
    if !gone.is_empty() {
        let is = if gone.len() == 1 { "is" } else { "are" };
        let count = counted(gone.len(), "item");
        left_out.push(format!("{count} of the stock {is} sold out: {}", list(&gone)));
    }
    if other_currency > 0 {
        left_out.push(format!(
            "prices are compared in one currency, so that {} in another {} taken as one of usual price",
            counted(other_currency, "item"),
            if other_currency == 1 { "is" } else { "are" }
        ));
    }
    candidates
}

fn price_of(item: &StockItem, price: f64) -> Option<Price> {
    if item.single {
        return Some(Price::Each(price / f64::from(bundle_of(item))));
    }
    let pack_mm = item.pack_mm.filter(|mm| *mm > 0.0)?;
    Some(Price::PerMetre(1_000.0 * price / pack_mm))
}

/// The currency that most priced items have; of two the first.
fn commonest_currency(items: &[StockItem]) -> String {
    let mut counts: Vec<(&str, usize)> = Vec::new();
    for item in items.iter().filter(|item| item.price.is_some()) {
        let currency = item.currency.trim();
        match counts.iter_mut().find(|(other, _)| is_same_currency(other, currency)) {
            Some((_, count)) => *count += 1,
            None => counts.push((currency, 1)),
        }
    }
    let mut best = ("", 0);
    for (currency, count) in counts {
        if count > best.1 {
            best = (currency, count);
        }
    }
    best.0.to_owned()
}

/// The mean price of a string, or of a metre: what counts as one. What is listed again does not count again.
fn usual_price(candidates: &[Candidate]) -> f64 {
    let (mut sum, mut count) = (0.0, 0.0);
    for candidate in candidates.iter().filter(|candidate| !candidate.is_double) {
        if let Some(Price::Each(price) | Price::PerMetre(price)) = candidate.price {
            sum += price;
            count += 1.0;
        }
    }
    if sum > 0.0 { sum / count } else { 1.0 }
}

fn rules(
    design: &Design,
    resolved: &Resolved,
    places: &[Option<f64>],
    left_out: &mut Vec<String>,
) -> Rules {
    let targets = &design.targets;
    let limits = &resolved.harp.limits;
    let count = |number: u32| usize::try_from(number).unwrap_or(usize::MAX);
    let mut zones = Vec::new();
    for (number, zone) in targets.zones.iter().enumerate() {
        let what = format!("zone {}", number + 1);
        let mut gauge = |text: &str| {
            if text.trim().is_empty() {
                return None;
            }
            let read: Result<Length, _> = typed::gauge(text);
            read.map_err(|why| left_out.push(format!("{what} of gauges: {why}"))).ok()
        };
        let (least, greatest) = (gauge(&zone.thinnest), gauge(&zone.thickest));
        let strings = range(&what, (&zone.lowest, &zone.highest), places, left_out);
        if let Some(strings) = strings {
            zones.push(Zone { strings, least, greatest });
        }
    }
    Rules {
        most_share_percent: Some(
            targets.most_share_percent.unwrap_or(limits.working_share_percent),
        ),
        least_share_percent: Some(
            targets.least_share_percent.unwrap_or(limits.slack_share_percent),
        ),
        unknown_share: false,
        zones,
        // What is sold out was left out already.
        only_in_stock: false,
        only_sold_for: true,
        in_order: true,
        no_shrinking: true,
        most_changes: targets.most_changes.map(count),
        most_items: targets
            .most_items
            .filter(|_| Setting::MostItems.wrong(design).is_none())
            .map(count),
        most_total: targets.most_total_n.map(Force::from_n),
    }
}

/// The first and the last string between two notes as typed; `None` where there is none.
fn range(
    what: &str,
    (lowest, highest): (&str, &str),
    places: &[Option<f64>],
    left_out: &mut Vec<String>,
) -> Option<(usize, usize)> {
    let mut end = |text: &str, none: f64| match text.trim() {
        "" => none,
        text => match text.parse::<Note>() {
            Ok(note) => f64::from(note.key_number()),
            Err(why) => {
                left_out.push(format!("{what}: {why}"));
                none
            }
        },
    };
    let (low, high) = (end(lowest, f64::NEG_INFINITY), end(highest, f64::INFINITY));
    if low == f64::NEG_INFINITY && high == f64::INFINITY {
        return places.len().checked_sub(1).map(|last| (0, last));
    }
    let range: RangeInclusive<f64> = low.min(high)..=low.max(high);
    let within = |place: &Option<f64>| place.is_some_and(|place| range.contains(&place));
    let first = places.iter().position(within)?;
    Some((first, places.iter().rposition(within)?))
}

fn target(wants: WantsSpec, value: f64) -> Target {
    match wants {
        WantsSpec::Stiffness => Target::Stiffness(Stiffness::from_n_per_mm(value)),
        WantsSpec::Tension => Target::Tension(Force::from_n(value)),
    }
}

/// A weight of the maker's, as a share of what matters somewhat.
fn share(weight: f64) -> f64 {
    weight.max(0.0) / WeightsSpec::SOME
}

fn weights(spec: &WeightsSpec, price_unit: f64) -> Weights {
    Weights {
        feel: SOME.feel * share(spec.even_stiffness),
        tension: SOME.tension * share(spec.even_tension),
        at_change: SOME.at_change * share(spec.even_stiffness),
        change: SOME.change * share(spec.changes),
        item: SOME.item * share(spec.items),
        price: SOME.price * share(spec.price),
        price_unit,
    }
}

/// `1 item`, `3 items`.
pub(super) fn counted(count: usize, what: &str) -> String {
    if count == 1 { format!("1 {what}") } else { format!("{count} {what}s") }
}

/// The first few of a list.
pub(super) fn list(texts: &[String]) -> String {
    let first: Vec<String> = texts.iter().take(NAMED).map(|text| typed::cut(text)).collect();
    let more = texts.len().saturating_sub(NAMED);
    match more {
        0 => first.join(", "),
        more => format!("{} and {more} more", first.join(", ")),
    }
}
