//! Kinds of string: the materials of a string from its core outward, and the order in which kinds come from the
//! treble to the bass.

use crate::design::document::MaterialSpec;
use crate::design::library::find;
use crate::design::make_up_said;
use crate::engine::construction::MakeUp;
use crate::engine::material::{Class, Material};
use crate::words::choose as say;
use crate::words::typed;

/// Between the materials of a kind.
const AND: &str = " + ";
/// The usual order of materials that strings are made of, from the treble to the bass: thin steel, then what is
/// plucked in the middle, then ever denser wires. Common practice, no source.
const USUAL: [&str; 12] = [
    "steel",
    "iron",
    "fluorocarbon",
    "nylon",
    "polyester",
    "silk",
    "gut",
    "bronze",
    "yellow brass",
    "red brass",
    "copper",
    "silver",
];

/// A kind of string, with what its place in the usual order depends on.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct StringKind {
    /// Its materials: `steel + silk + bronze`; `weighed` where the core of a weighed string is not known.
    pub name: String,
    /// Whether something is wound on a core.
    pub is_wound: bool,
    rank: (u8, usize, usize),
}

/// The kind of strings whose making is not known.
const WEIGHED: &str = "weighed";

impl StringKind {
    /// Of a make-up.
    pub fn of(make_up: &MakeUp) -> Self {
        let layers = make_up.layers();
        let Some((core, _)) = make_up.core() else {
            return Self { name: WEIGHED.to_owned(), is_wound: true, rank: (3, 0, 0) };
        };
        let keys = [core.key.as_str()].into_iter();
        let keys = keys.chain(layers.iter().map(|layer| layer.material.key.as_str()));
        let name = keys.collect::<Vec<_>>().join(AND);
        // Wound strings come below plain ones, and those on metal below those on gut and nylon.
        let wound = match (layers.last(), core.class) {
            (None, _) => 0,
            (Some(_), Class::Polymer | Class::Natural) => 1,
            (Some(_), Class::Metal) => 2,
        };
        let outer = layers.last().map_or(0, |layer| usual(&layer.material));
        Self { name, is_wound: wound > 0, rank: (wound, usual(core), outer) }
    }

    /// Whether this kind usually comes nearer to the bass.
    pub fn is_below(&self, other: &Self) -> bool {
        self.rank > other.rank || self.rank == other.rank && self.name > other.name
    }
}

/// The place of a material in the usual order; one of the maker's own stands behind its like.
fn usual(material: &Material) -> usize {
    let known = USUAL.iter().position(|key| *key == material.key);
    let place = known.map(|place| 2 * place);
    place.unwrap_or(if material.class == Class::Metal { 2 * USUAL.len() } else { 13 })
}

/// The name of a kind as it is compared, of what was typed: every material by its key.
pub fn kind_name(materials: &[MaterialSpec], typed: &str) -> String {
    let part = |text: &str| {
        let text = text.trim();
        find(materials, text).map_or_else(|| text.to_owned(), |material| material.key.clone())
    };
    typed.split('+').map(part).collect::<Vec<_>>().join(AND)
}

/// A kind in words: `nylon`, `nylon wound on nylon`, `bronze wound over silk on steel`.
pub fn kind_in_words(name: &str) -> String {
    let said = |part: &str| match part {
        WEIGHED => typed::WORD_WEIGHED.into(),
        part => make_up_said::material(part),
    };
    let mut parts: Vec<String> = name.split(AND).map(said).collect();
    let core = parts.remove(0);
    match parts.as_slice() {
        [] => core,
        [layer] => say::kind_wound(&core, layer),
        [under @ .., layer] => {
            let mut all = under.iter().rev().cloned();
            let first = all.next().unwrap_or_default();
            let under = all.fold(first, |over, under| say::kind_over(&over, &under));
            say::kind_wound_over(&core, layer, &under)
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::engine::material::built_in;
    use std::sync::Arc;

    #[test]
    fn gut_lies_between_nylon_and_wire() {
        let kinds = ["nylon", "gut", "own gut", "yellow brass", "red brass"].map(|key| {
            let mut material = built_in().into_iter().find(|m| key.ends_with(&m.key)).unwrap();
            material.key = key.to_owned();
            let diameter = crate::engine::units::Length::from_mm(0.8);
            StringKind::of(&MakeUp::plain(Arc::new(material), diameter).unwrap())
        });
        for pair in kinds.windows(2) {
            assert!(pair[1].is_below(&pair[0]), "{pair:?}");
            assert!(!pair[0].is_below(&pair[1]), "{pair:?}");
        }
    }

    #[test]
    fn a_kind_is_named_by_its_materials() {
        assert_eq!(kind_name(&[], " Steel+silk +  bronze"), "steel + silk + bronze");
        assert_eq!(kind_in_words("steel + silk + bronze"), "bronze wound over silk on steel");
        assert_eq!(kind_in_words("nylon + nylon"), "nylon wound on nylon");
        assert_eq!(kind_in_words("gut"), "gut");
    }
}
