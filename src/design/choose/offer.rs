//! What a stock offers for a design: the items that can be read and had, of the family that is asked for.

use super::Shop;
use super::family::{families, family_named, thickest_mm};
use super::kind::StringKind;
use super::task::list;
use crate::design::document::{Design, FamilySpec, MaterialSpec, StockItem, StringSpec};
use crate::design::make_up_said::line_shown;
use crate::design::resolve::{Resolved, resolve};
use crate::design::stock::{bundle_of, is_same_currency};
use crate::engine::choose::Price;
use crate::engine::construction::MakeUp;
use crate::engine::limit::is_above;
use crate::engine::order::sort;
use crate::engine::pitch::Note;
use crate::engine::units::Length;
use crate::words::choose as say;

/// A stock item that was read.
pub(super) struct Candidate {
    pub item: StockItem,
    pub make_up: MakeUp,
    /// Whether one before it is the same string: as a thing to choose they are one.
    is_double: bool,
    pub kind: StringKind,
    pub price: Option<Price>,
    pub notes: (Option<Note>, Option<Note>),
}

impl Candidate {
    /// Whether it is sold for a note.
    pub fn is_for(&self, note: Note) -> bool {
        let key = note.key_number();
        self.notes.0.is_none_or(|lowest| key >= lowest.key_number())
            && self.notes.1.is_none_or(|highest| key <= highest.key_number())
    }
}

/// Takes out what a maker would not string: what is not of the family that is asked for, and plain strings that are
/// too thick.
pub(super) fn offer(
    design: &Design,
    resolved: &Resolved,
    materials: &[MaterialSpec],
    candidates: &mut Vec<Candidate>,
    left_out: &mut Vec<String>,
) {
    let plain = |candidate: &Candidate| {
        let family = family_named(materials, &candidate.kind.name);
        family.filter(|_| !candidate.kind.is_wound)
    };
    if design.targets.kinds.is_empty() {
        let wanted = families(design);
        let present: Vec<StringKind> = kinds_on(resolved);
        let as_now = design.targets.family == FamilySpec::Present;
        // Of what is on the harp and not in the stock, others of its sort take the place.
        let stocked = |kind: &StringKind| candidates.iter().any(|other| other.kind == *kind);
        let same = |is_wound: bool| {
            let mut kinds = present.iter().filter(|kind| kind.is_wound == is_wound).peekable();
            as_now && kinds.peek().is_some() && kinds.all(stocked)
        };
        let (same_plain, same_wound) = (same(false), same(true));
        let is_wire = wanted == [FamilySpec::Wire];
        let offered = |candidate: &Candidate| {
            let kind = &candidate.kind;
            match (plain(candidate), kind.is_wound) {
                (None, true) if same_wound => present.contains(kind),
                // A harp that is strung with wire alone gets no wound strings unasked.
                (None, true) => !(is_wire && as_now && same_plain),
                (_, _) if same_plain => present.contains(kind),
                (Some(family), _) => wanted.contains(&family),
                (None, false) => true,
            }
        };
        if candidates.iter().any(|candidate| !candidate.kind.is_wound && offered(candidate)) {
            let offered: Vec<bool> = candidates.iter().map(offered).collect();
            let mut offered = offered.into_iter();
            candidates.retain(|_| offered.next().unwrap_or(true));
        }
    }
    let before = candidates.len();
    candidates.retain(|candidate| {
        let gauge = candidate.make_up.gauge().map_or(0.0, Length::to_mm);
        plain(candidate).is_none_or(|family| !is_above(gauge, thickest_mm(design, family)))
    });
    let thick = before - candidates.len();
    if thick > 0 {
        left_out.push(say::left_thick(&thick));
    }
}

/// The kinds on the strings of a design, each once.
pub(super) fn kinds_on(resolved: &Resolved) -> Vec<StringKind> {
    let make_ups = resolved.harp.strings.iter().filter_map(|string| string.make_up.as_ref().ok());
    let mut kinds: Vec<StringKind> = Vec::new();
    for kind in make_ups.map(StringKind::of) {
        if !kinds.contains(&kind) {
            kinds.push(kind);
        }
    }
    kinds
}

/// See [`Task::kinds_at_hand`].
pub(super) fn kinds_at_hand(design: &Design, resolved: &Resolved, shop: &Shop<'_>) -> Vec<String> {
    let materials: Vec<MaterialSpec> =
        design.materials.iter().chain(shop.materials).cloned().collect();
    let mut kinds = kinds_on(resolved);
    for candidate in candidates(&materials, shop.items, "", &mut Vec::new()) {
        if !kinds.contains(&candidate.kind) {
            kinds.push(candidate.kind);
        }
    }
    sort(&mut kinds, |one, other| one.is_below(other));
    kinds.into_iter().map(|kind| kind.name).collect()
}

/// The items that can be used.
pub(super) fn candidates(
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
            unread.push(line_shown(&item.make_up));
            continue;
        };
        if item.sold_out {
            gone.push(line_shown(&item.make_up));
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
        left_out.push(say::left_unread(&unread.len(), &list(&unread)));
    }
    if !gone.is_empty() {
        left_out.push(say::left_sold_out(&gone.len(), &list(&gone)));
    }
    if other_currency > 0 {
        left_out.push(say::left_currency(&other_currency));
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
pub(super) fn commonest_currency(items: &[StockItem]) -> String {
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
pub(super) fn usual_price(candidates: &[Candidate]) -> f64 {
    let (mut sum, mut count) = (0.0, 0.0);
    for candidate in candidates.iter().filter(|candidate| !candidate.is_double) {
        if let Some(Price::Each(price) | Price::PerMetre(price)) = candidate.price {
            sum += price;
            count += 1.0;
        }
    }
    if sum > 0.0 { sum / count } else { 1.0 }
}
