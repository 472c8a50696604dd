//! A design and a stock as the search takes them.

use std::ops::RangeInclusive;

use super::family;
use super::kind::{StringKind, kind_in_words, kind_name};
use super::offer::{Candidate, candidates, commonest_currency, kinds_on, offer, usual_price};
use super::own::own;
use super::{Shop, Task};
use crate::design::document::{Design, FamilySpec, MaterialSpec, WantsSpec, WeightsSpec};
use crate::design::library::find;
use crate::design::resolve::Resolved;
use crate::design::settings::Setting;
use crate::design::targets::{places, wanted};
use crate::design::typed;
use crate::engine::analysis::HarpString;
use crate::engine::choose::Task as Search;
use crate::engine::choose::{Family, Item, Kept, Rules, Target, TaskString, Weights, Zone};
use crate::engine::order::sort;
use crate::engine::pitch::{Note, NoteError};
use crate::engine::units::{Force, Length, Stiffness};
use crate::words::choose as say;

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
    offer(design, resolved, &materials, &mut candidates, &mut left_out);
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
    let place = |(index, string): (usize, &HarpString)| {
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
        left_out.push(say::left_without(&without.len(), &list(&without)));
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
    let mut stock: Vec<Item> = stock.collect();
    if shop.own {
        let all = own(design, resolved, (&materials, shop), &candidates, is_sought);
        stock.extend(all.into_iter().map(|one| {
            let place = family(&one.kind).unwrap_or(0);
            one.item(place)
        }));
    }
    let search = Search {
        strings,
        families: families.iter().map(|(_, strings)| Family { strings: *strings }).collect(),
        rules: rules(design, &places, &mut left_out),
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
    let mut families: Vec<(String, Option<(usize, usize)>)> = Vec::new();
    if design.targets.kinds.is_empty() {
        // What is on the strings has a kind too.
        let mut kinds = kinds_on(resolved);
        for kind in candidates.iter().map(|candidate| &candidate.kind) {
            if !kinds.contains(kind) {
                kinds.push(kind.clone());
            }
        }
        sort(&mut kinds, |one, other| one.is_below(other));
        families.extend(kinds.into_iter().map(|kind| {
            let strings = reach_now(design, resolved, &kind);
            (kind.name, strings)
        }));
    } else {
        for spec in &design.targets.kinds {
            let name = kind_name(materials, &spec.kind);
            if name.is_empty() || families.iter().any(|(other, _)| *other == name) {
                continue;
            }
            let what = |why: &NoteError| say::strings_of(&kind_in_words(&name), why);
            match range(what, (&spec.lowest, &spec.highest), places, left_out) {
                Some(range) => {
                    let all = range == (0, places.len().saturating_sub(1));
                    families.push((name, (!all).then_some(range)));
                }
                None => left_out.push(say::left_no_place(&kind_in_words(&name))),
            }
        }
        let before = candidates.len();
        candidates
            .retain(|candidate| families.iter().any(|(name, _)| *name == candidate.kind.name));
        let other = before - candidates.len();
        if other > 0 {
            left_out.push(say::left_kinds(&other));
        }
    }
    wound_below(design, materials, places, &mut families, left_out);
    families
}

/// By how many strings a kind that is on the harp may reach farther than it does now: what is chosen stays the harp
/// that it is. Chosen for this project, no source.
const NEAR: usize = 3;

/// The note from which strings are wound at the latest, as a search takes it: the one that is typed, or the first that
/// plain strings cannot reach from where they end now. It stays when a set is taken, so that the same search does not
/// move the winding on and on.
pub(super) fn wound_from(design: &Design, resolved: &Resolved) -> String {
    let targets = &design.targets;
    if !targets.wound_from.trim().is_empty()
        || !targets.kinds.is_empty()
        || targets.family != FamilySpec::Present
    {
        return targets.wound_from.clone();
    }
    let is_plain = |string: &HarpString| {
        string.make_up.as_ref().is_ok_and(|made| !StringKind::of(made).is_wound)
    };
    let end = resolved.harp.strings.iter().rposition(is_plain);
    let string = end.and_then(|end| design.strings.get(end + NEAR + 1));
    string.map_or_else(String::new, |string| string.note.clone())
}

/// The strings on which a kind may be used where the family is that of the harp as it is; `None` for all.
fn reach_now(design: &Design, resolved: &Resolved, kind: &StringKind) -> Option<(usize, usize)> {
    if design.targets.family != FamilySpec::Present {
        return None;
    }
    let strings = &resolved.harp.strings;
    let last = strings.len().checked_sub(1)?;
    let kinds: Vec<Option<StringKind>> =
        strings.iter().map(|s| s.make_up.as_ref().ok().map(StringKind::of)).collect();
    let is = |same: &dyn Fn(&StringKind) -> bool| {
        let on = |other: &Option<StringKind>| other.as_ref().is_some_and(same);
        Some((kinds.iter().position(on)?, kinds.iter().rposition(on)?))
    };
    // What is not on the harp stands where others of its sort do.
    let alike = |other: &StringKind| other.is_wound == kind.is_wound;
    let (first, end) = is(&|other| other == kind).or_else(|| is(&alike))?;
    let (first, end) = (first.saturating_sub(NEAR), (end + NEAR).min(last));
    (first > 0 || end < last).then_some((first, end))
}

/// Plain strings end above the note from which strings are wound at the latest.
fn wound_below(
    design: &Design,
    materials: &[MaterialSpec],
    places: &[Option<f64>],
    families: &mut Vec<(String, Option<(usize, usize)>)>,
    left_out: &mut Vec<String>,
) {
    let typed = &design.targets.wound_from;
    if typed.trim().is_empty() {
        return;
    }
    let what = |why: &NoteError| say::wound_from(why);
    let Some((first, _)) = range(what, ("", typed), places, left_out) else { return };
    let is_plain = |name: &str| find(materials, name).is_some();
    let last = places.len().saturating_sub(1);
    let as_now = design.targets.kinds.is_empty() && design.targets.family == FamilySpec::Present;
    families.retain_mut(|(name, strings)| {
        let (from, to) = strings.unwrap_or((0, last));
        if !is_plain(name) {
            // Wound strings may stand there, wherever they are now, but where a set was taken no farther up than for
            // that set.
            let taken = (from + NEAR).min(first.saturating_sub(2 * NEAR));
            let from = if as_now { from.max(taken) } else { from };
            *strings = strings.map(|_| (from.min(first), to));
            return true;
        }
        if to < first {
            return true;
        }
        *strings = first.checked_sub(1).map(|above| (from, above));
        from < first
    });
}

fn rules(design: &Design, places: &[Option<f64>], left_out: &mut Vec<String>) -> Rules {
    let targets = &design.targets;
    let usual = family::usual(design);
    let count = |number: u32| usize::try_from(number).unwrap_or(usize::MAX);
    let mut zones = Vec::new();
    for (number, zone) in targets.zones.iter().enumerate() {
        let number = number + 1;
        let what = |why: &NoteError| say::zone(&number, why);
        let mut gauge = |text: &str| {
            if text.trim().is_empty() {
                return None;
            }
            let read: Result<Length, _> = typed::gauge(text);
            read.map_err(|why| left_out.push(say::zone_gauges(&number, &why))).ok()
        };
        let (least, greatest) = (gauge(&zone.thinnest), gauge(&zone.thickest));
        let strings = range(what, (&zone.lowest, &zone.highest), places, left_out);
        if let Some(strings) = strings {
            zones.push(Zone { strings, least, greatest });
        }
    }
    Rules {
        most_share_percent: Some(targets.most_share_percent.unwrap_or(usual.most_share_percent)),
        most_soft_share_percent: Some(usual.most_soft_share_percent),
        least_share_percent: Some(targets.least_share_percent.unwrap_or(usual.least_share_percent)),
        unknown_share: false,
        zones,
        // What is sold out was left out already.
        only_in_stock: false,
        only_sold_for: true,
        in_order: true,
        no_shrinking: true,
        most_jump_percent: Some(targets.most_jump_percent.unwrap_or(usual.jump_percent)),
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
    what: impl Fn(&NoteError) -> String,
    (lowest, highest): (&str, &str),
    places: &[Option<f64>],
    left_out: &mut Vec<String>,
) -> Option<(usize, usize)> {
    let mut end = |text: &str, none: f64| match text.trim() {
        "" => none,
        text => match text.parse::<Note>() {
            Ok(note) => f64::from(note.key_number()),
            Err(why) => {
                left_out.push(what(&why));
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

/// The first few of a list.
pub(super) fn list(texts: &[String]) -> String {
    let first: Vec<String> = texts.iter().take(NAMED).map(|text| typed::cut(text)).collect();
    let more = texts.len().saturating_sub(NAMED);
    match more {
        0 => first.join(", "),
        more => say::more(&more, &first.join(", ")),
    }
}
