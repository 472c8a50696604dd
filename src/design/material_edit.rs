//! Keys and names of the materials of a design: which are free, who uses one, and what follows when
//! one changes.

use thiserror::Error;

use super::document::{Design, MakeUpSpec, MaterialSpec, StringSpec};
use super::letters::small;
use super::library::{LONGEST_KEY, built_in, find};
use super::make_up_text;
use super::typed::cut;
use crate::engine::material::{key_of, said};
use crate::words::{Words, materials as say};

/// Why a key or a name cannot be given to a material.
#[derive(Clone, Debug, PartialEq, Eq, Error)]
#[non_exhaustive]
pub enum NamingError {
    /// No letters.
    #[error("{}", say::naming_empty(.what))]
    Empty { what: Words },
    /// Too many letters.
    #[error("{}", say::naming_long(.got, .most, .what))]
    Long { what: Words, most: usize, got: usize },
    /// Would read as something else in a cell.
    #[error("{}", say::naming_cell(.got))]
    Cell { got: String },
    /// Means another material already.
    #[error("{}", say::naming_taken(.got, .other, .what))]
    Taken { what: Words, got: String, other: String },
}

/// Every text of a string that means a material.
fn texts(string: &StringSpec) -> impl Iterator<Item = &String> {
    let layers = string.make_up.layers.iter().map(|layer| &layer.material);
    [&string.make_up.material].into_iter().chain(layers)
}

/// How many strings use the material with a key, as string, core or layer.
pub fn uses(design: &Design, key: &str) -> usize {
    let means = |text: &String| find(&design.materials, text).is_some_and(|found| found.key == key);
    design.strings.iter().filter(|string| texts(string).any(means)).count()
}

/// Whether a key is one of a built-in material.
pub fn is_built_in(key: &str) -> bool {
    built_in().iter().any(|material| material.key == key)
}

/// A key for a new material or a new key for one, without superfluous blanks.
///
/// # Errors
///
/// When it is empty, too long, would not read as a material in a cell, or means another material.
pub fn free_key(design: &Design, text: &str) -> Result<String, NamingError> {
    let what = say::A_SHORT_NAME;
    let key = text.split_whitespace().collect::<Vec<_>>().join(" ");
    let got = key.chars().count();
    if got > LONGEST_KEY {
        return Err(NamingError::Long { what, most: LONGEST_KEY, got });
    }
    free(design, &key, what, None)?;
    let reads = |text: &str, diameter: &str| {
        make_up_text::read(text)
            .is_ok_and(|m| m.is_plain() && m.material == key && m.diameter == diameter)
    };
    if !reads(&key, "") || !reads(&format!("{key} 0.50"), "0.50") {
        return Err(NamingError::Cell { got: cut(&key) });
    }
    Ok(key)
}

/// Whether a name can be given to the material with a key.
///
/// # Errors
///
/// When it is empty, too long, or means another material.
pub fn free_name(design: &Design, key: &str, name: &str) -> Result<(), NamingError> {
    let (what, most, got) = (say::A_NAME, super::document::LONGEST_CELL, name.chars().count());
    if got > most {
        return Err(NamingError::Long { what, most, got });
    }
    free(design, name, what, Some(key))
}

/// Whether a text means no material but perhaps `mine`.
fn free(design: &Design, text: &str, what: Words, mine: Option<&str>) -> Result<(), NamingError> {
    let wanted = small(text.trim());
    if wanted.is_empty() {
        return Err(NamingError::Empty { what });
    }
    let same = |text: &str| small(text.trim()) == wanted;
    let own = design.materials.iter().find(|material| {
        Some(material.key.as_str()) != mine && (same(&material.key) || same(&material.name))
    });
    let other = key_of(&wanted).filter(|key| Some(*key) != mine);
    let name = |key| built_in().iter().find(|m| m.key == key).map_or(key, |m| m.name.as_str());
    match own.map(|material| material.name.as_str()).or(other.map(name)) {
        None => Ok(()),
        Some(other) => Err(NamingError::Taken { what, got: cut(text), other: cut(said(other)) }),
    }
}

/// A copy of a material under another key, named so that the two can be told apart.
pub fn copy(design: &Design, of: &MaterialSpec, key: &str) -> MaterialSpec {
    let mut name = format!("{}, {key}", of.name);
    if free_name(design, key, &name).is_err() {
        name = key.to_owned();
    }
    MaterialSpec { key: key.to_owned(), name, ..of.clone() }
}

/// Gives a material another key. A string that would no longer find it gets the new key.
pub(super) fn rename(design: &mut Design, from: &str, to: &str) {
    let Ok(to) = free_key(design, to) else { return };
    let Some(place) = design.materials.iter().position(|material| material.key == from) else {
        return;
    };
    let before = design.materials.clone();
    to.clone_into(&mut design.materials[place].key);
    let after = &design.materials;
    let meant = |materials: &[MaterialSpec], text: &str, key: &str| {
        find(materials, text).is_some_and(|found| found.key == key)
    };
    let follow = |make_up: &mut MakeUpSpec| {
        let layers = make_up.layers.iter_mut().map(|layer| &mut layer.material);
        for text in [&mut make_up.material].into_iter().chain(layers) {
            if meant(&before, text, from) && !meant(after, text, &to) {
                text.clone_from(&to);
            }
        }
    };
    design.strings.iter_mut().for_each(|string| follow(&mut string.make_up));
    for item in &mut design.stock {
        let Ok(was) = item.make_up.read() else { continue };
        let mut make_up = was.clone();
        follow(&mut make_up);
        if make_up != *was {
            item.make_up = make_up.into();
        }
    }
    for spec in &mut design.targets.kinds {
        let part =
            |text: &str| if text.trim() == from { to.clone() } else { text.trim().to_owned() };
        if spec.kind.contains(from) {
            spec.kind = spec.kind.split('+').map(part).collect::<Vec<_>>().join(" + ");
        }
    }
}

/// Takes a material out, unless a string uses it.
pub(super) fn remove(design: &mut Design, key: &str) {
    if uses(design, key) == 0 {
        design.materials.retain(|material| material.key != key);
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::design::document::LayerSpec;
    use crate::design::edit::Edit;
    use crate::design::history::History;
    use crate::design::material_facts::Property;
    use crate::design::{link, persist};

    fn string(material: &str, layer: &str) -> StringSpec {
        let mut make_up = MakeUpSpec { material: material.to_owned(), ..MakeUpSpec::default() };
        if !layer.is_empty() {
            let (material, size) = (layer.to_owned(), "0.2".to_owned());
            make_up.layers =
                vec![LayerSpec { material, size, width: String::new(), packing_percent: 100.0 }];
        }
        StringSpec { make_up, ..StringSpec::default() }
    }

    fn fact(design: &Design, key: &str, property: Property, text: &str) -> Edit {
        let spec = find(&design.materials, key).or_else(|| find(built_in(), key)).unwrap();
        let material = property.typed(spec, [text, ""], None).unwrap();
        Edit::Fact { material, property: Some(property) }
    }

    /// Two strings of an own material, one of it as a layer by name, one of built-in gut.
    fn design() -> Design {
        let gut = built_in().iter().find(|material| material.key == "gut").unwrap();
        let own = copy(&Design::default(), gut, "my gut");
        let strings = vec![
            string("my gut", ""),
            string("MY GUT", ""),
            string("steel", &own.name),
            string("catgut", ""),
        ];
        let design = Design { strings, ..Design::default() };
        Edit::Material(own).apply(&design)
    }

    fn keys(design: &Design) -> Vec<&str> {
        design.materials.iter().map(|material| material.key.as_str()).collect()
    }

    #[test]
    fn a_copy_stays_though_no_figure_of_it_was_changed() {
        let mut design = design();
        assert_eq!(keys(&design), ["my gut", "gut", "steel"]);
        assert_eq!((uses(&design, "my gut"), uses(&design, "gut")), (3, 1));
        design.strings.clear();
        let design = Edit::ExtendDown { count: 1 }.apply(&design);
        assert_eq!(keys(&design), ["my gut"]);
    }

    #[test]
    fn a_new_key_takes_strings_and_layers_with_it() {
        let (from, to) = ("my gut".to_owned(), "lamb".to_owned());
        let next = Edit::RenameMaterial { from, to }.apply(&design());
        assert_eq!(next.strings[0].make_up.material, "lamb");
        assert_eq!(next.strings[1].make_up.material, "lamb");
        assert_eq!(next.strings[2].make_up.layers[0].material, design().materials[0].name);
        assert_eq!(next.strings[3].make_up.material, "catgut");
        assert_eq!((uses(&next, "lamb"), keys(&next)), (3, vec!["lamb", "gut", "steel"]));
        assert_eq!(persist::check(&next), Ok(()));
    }

    #[test]
    fn a_key_must_be_free_and_read_as_a_material() {
        let design = design();
        for (key, expected) in [
            ("", "the short name is missing"),
            ("nylon", "already means Nylon monofilament"),
            ("Catgut", "already means"),
            ("MY  gut", "already means"),
            ("a + b", "one word of a make-up"),
            ("x 0.5", "one word of a make-up"),
            ("weighed 3", "one word of a make-up"),
            (&"k".repeat(41), "at most 40 letters"),
        ] {
            let error = free_key(&design, key).unwrap_err().to_string();
            assert!(error.contains(expected), "{key}: {error}");
            let (from, to) = ("my gut".to_owned(), key.to_owned());
            assert_eq!(Edit::RenameMaterial { from, to }.apply(&design), design, "{key}");
        }
        assert_eq!(free_key(&design, "  old   silk ").as_deref(), Ok("old silk"));
        assert!(free_name(&design, "my gut", "Brass").is_err(), "strings of brass would move");
        assert_eq!(free_name(&design, "my gut", "Lamb of the valley"), Ok(()));
    }

    #[test]
    fn a_material_that_is_used_does_not_go() {
        let mut design = design();
        let remove = Edit::RemoveMaterial { key: "my gut".to_owned() };
        assert_eq!(remove.apply(&design), design);
        design.strings.truncate(0);
        assert!(keys(&remove.apply(&design)).is_empty());
    }

    #[test]
    fn a_changed_built_in_material_is_the_designs_own_and_goes_back() {
        let design = design();
        let changed = fact(&design, "silk", Property::Density, "1300").apply(&design);
        assert!(keys(&changed).contains(&"silk"), "kept though no string uses it");
        let first = built_in().iter().find(|m| m.key == "silk").unwrap().clone();
        let back = Edit::Material(first).apply(&changed);
        assert_eq!(back, design);
    }

    #[test]
    fn a_run_of_typing_is_one_step_and_another_field_another() {
        let design = design();
        let mut history = History::new(design.clone());
        for (property, text) in [
            (Property::Density, "114"),
            (Property::Density, "1145"),
            (Property::Strength, "300"),
            (Property::Strength, ""),
        ] {
            let edit = fact(history.present(), "my gut", property, text);
            history.record(edit.apply(history.present()), edit.key());
        }
        assert!(history.present().materials[0].strength.is_none());
        assert!(history.undo());
        assert_eq!(history.present().materials[0].density_kg_per_m3.value, 1145.0);
        assert!(history.undo() && !history.undo());
        assert_eq!(*history.present(), design);
    }

    #[test]
    fn an_own_material_comes_back_from_file_and_link() {
        let mut design = design();
        for (property, text) in [
            (Property::Density, "1.31 g/cm³"),
            (Property::Strength, "0.5 310; 1 300"),
            (Property::DiameterSpread, "2 %"),
            (Property::SlowModulus, ""),
            (Property::Expansion, "80"),
        ] {
            design = fact(&design, "my gut", property, text).apply(&design);
            assert_eq!(persist::check(&design), Ok(()));
        }
        assert_eq!(persist::read(&persist::write(&design)).unwrap(), design);
        assert_eq!(link::read(&link::write(&design).unwrap()).unwrap(), design);
    }

    #[test]
    fn more_materials_than_a_design_may_hold_are_refused() {
        let mut design = design();
        let own = design.materials[0].clone();
        for number in 0..persist::MOST_MATERIALS {
            let key = format!("own {number}");
            design.materials.push(MaterialSpec { key, ..own.clone() });
        }
        assert!(persist::check(&design).is_err());
    }
}
