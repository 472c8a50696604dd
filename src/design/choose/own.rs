//! What is on the strings now, as something to choose beside the stock: each for the notes on which it is.

use super::Shop;
use super::family::{families, family_named};
use super::kind::{StringKind, kind_name};
use super::offer::Candidate;
use crate::design::document::{Design, FamilySpec, MaterialSpec};
use crate::design::resolve::Resolved;
use crate::design::settings::Setting;
use crate::design::stock::is_same;
use crate::engine::choose::Item;
use crate::engine::construction::MakeUp;
use crate::engine::limit::is_above;
use crate::engine::pitch::Note;
use crate::engine::units::Length;

/// A make-up that is on the harp and that the stock does not offer there.
pub(super) struct Own {
    pub make_up: MakeUp,
    pub kind: StringKind,
    /// The lowest and the highest note on which it is.
    notes: (Note, Note),
}

impl Own {
    /// As the engine takes it.
    pub fn item(self, family: usize) -> Item {
        let (lowest, highest) = (Some(self.notes.0), Some(self.notes.1));
        Item { make_up: self.make_up, family, price: None, in_stock: true, lowest, highest }
    }
}

/// What of the strings that are sought counts beside the candidates: of the kinds that are asked for, no thicker than
/// the maker allows, and not sold out.
pub(super) fn own(
    design: &Design,
    resolved: &Resolved,
    (materials, shop): (&[MaterialSpec], &Shop<'_>),
    candidates: &[Candidate],
    is_sought: impl Fn(usize) -> bool,
) -> Vec<Own> {
    let targets = &design.targets;
    let listed: Vec<String> =
        targets.kinds.iter().map(|spec| kind_name(materials, &spec.kind)).collect();
    let wanted = families(design);
    let typed = Some(Setting::ThickestPlain).filter(|setting| setting.wrong(design).is_none());
    let thickest_mm = typed.and_then(|setting| setting.of(design)).unwrap_or(f64::INFINITY);
    let is_asked = |kind: &StringKind| {
        if !listed.is_empty() {
            return listed.contains(&kind.name);
        }
        let family = family_named(materials, &kind.name).filter(|_| !kind.is_wound);
        targets.family == FamilySpec::Present || family.is_none_or(|own| wanted.contains(&own))
    };
    let sold_out = |row: usize| {
        let gone = shop.items.iter().filter(|item| item.sold_out);
        let make_up = &design.strings[row].make_up;
        gone.filter_map(|item| item.make_up.read().ok())
            .any(|spec| is_same(materials, make_up, spec))
    };
    let mut all: Vec<Own> = Vec::new();
    for (row, string) in resolved.harp.strings.iter().enumerate() {
        let (Some(note), Ok(make_up)) = (string.note, &string.make_up) else { continue };
        let kind = StringKind::of(make_up);
        let gauge_mm = make_up.gauge().map_or(0.0, Length::to_mm);
        let is_thick = !kind.is_wound && is_above(gauge_mm, thickest_mm);
        let offers = |one: &Candidate| one.is_for(note) && one.make_up.is_alike(make_up);
        if !is_sought(row)
            || !is_asked(&kind)
            || is_thick
            || candidates.iter().any(offers)
            || sold_out(row)
        {
            continue;
        }
        match all.iter_mut().find(|own| own.make_up.is_alike(make_up)) {
            Some(own) => {
                let key = note.key_number();
                if key < own.notes.0.key_number() {
                    own.notes.0 = note;
                }
                if key > own.notes.1.key_number() {
                    own.notes.1 = note;
                }
            }
            None => all.push(Own { make_up: make_up.clone(), kind, notes: (note, note) }),
        }
    }
    all
}
