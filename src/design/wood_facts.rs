//! The woods by name, and the figures of each in words with source and standing.

use super::display;
use super::document::{OwnWoodSpec, PLYWOOD};
use super::explain::standing;
use super::letters::capital;
use super::resolve::timber::{measured, own_wood};
use crate::engine::material::Sourced;
use crate::engine::structure::plywood::{Panel, Way};
use crate::engine::structure::wood::own::class_name;
use crate::engine::structure::wood::{Basis, WoodKind, said, woods};
use crate::engine::units::{Density, Stress};
use crate::words::{Words, woods as say};

/// The plies that birch plywood is sold with: common practice, from memory.
pub const PLIES: [u32; 17] = [3, 5, 7, 9, 11, 13, 15, 17, 19, 21, 23, 25, 27, 29, 31, 33, 35];

/// A figure of a wood.
#[derive(Clone, Debug, PartialEq, Eq, Hash)]
pub struct WoodFact {
    /// What it is.
    pub what: Words,
    /// With its unit.
    pub figure: String,
    /// How well it is known, with the number of its source; empty where that is said for all.
    pub source: String,
}

/// A wood in words.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct WoodFacts {
    /// What it is and what its figures are.
    pub about: String,
    /// Its figures.
    pub facts: Vec<WoodFact>,
    /// The sources, each once.
    from: Vec<String>,
}

impl WoodFacts {
    /// The sources with their numbers.
    pub fn sources(&self) -> String {
        let numbered = self.from.iter().enumerate();
        let line = |(place, source): (usize, &String)| format!("({}) {}.", place + 1, said(source));
        numbered.map(line).collect::<Vec<String>>().join(" ")
    }

    fn add<T>(&mut self, what: Words, figure: String, sourced: &Sourced<T>) {
        let known = self.from.iter().position(|source| *source == sourced.source);
        let place = known.unwrap_or_else(|| {
            self.from.push(sourced.source.clone());
            self.from.len() - 1
        });
        let source = format!("{} ({})", standing(sourced.standing), place + 1);
        self.facts.push(WoodFact { what, figure, source });
    }

    fn add_stress(&mut self, what: Words, sourced: &Option<Sourced<Stress>>) {
        if let Some(sourced) = sourced {
            self.add(what, mpa(sourced.value), sourced);
        }
    }

    fn add_density(&mut self, sourced: &Option<Sourced<Density>>) {
        if let Some(sourced) = sourced {
            self.add(say::DENSITY, format!("{} kg/m³", display::density(sourced.value)), sourced);
        }
    }
}

/// The woods as their keys and names: those of one's own first, plywood last where it can be chosen.
pub fn choices(plywood: bool, own: &[OwnWoodSpec]) -> Vec<(String, String)> {
    let mut all: Vec<(String, String)> =
        own.iter().map(|wood| (wood.key.clone(), own_name(wood))).collect();
    all.extend(woods().iter().map(|wood| (wood.key.to_owned(), capital(wood.name.said()))));
    if plywood {
        all.push((PLYWOOD.to_owned(), capital(say::BIRCH_PLYWOOD.said())));
    }
    all
}

/// What a wood is called, by its key; the key itself where no wood has it.
pub fn wood_name(key: &str, own: &[OwnWoodSpec]) -> String {
    let own = own.iter().find(|wood| wood.key == key).map(own_name);
    let known =
        || woods().into_iter().find(|wood| wood.key == key).map(|wood| wood.name.said().into());
    let named = own.or_else(known);
    let panel = || if key == PLYWOOD { say::BIRCH_PLYWOOD.into() } else { key.to_owned() };
    named.unwrap_or_else(panel)
}

/// What a wood of one's own is called.
pub fn own_name(wood: &OwnWoodSpec) -> String {
    let name = wood.name.trim();
    if name.is_empty() { say::own_named(&wood.key) } else { name.to_owned() }
}

/// What the bar of a wood of one's own tells.
pub fn own_words(wood: &OwnWoodSpec) -> String {
    let (density, modulus) = measured(wood);
    let Some(density) = density else {
        return say::GIVE_SIZES.into();
    };
    let heavy = format!("{} kg/m³", display::density(density));
    let Some(modulus) = modulus else {
        return say::give_test(&heavy);
    };
    let kind = if wood.softwood { WoodKind::Softwood } else { WoodKind::Hardwood };
    let stiff = gpa(modulus);
    match class_name(kind, density, modulus) {
        _ if !wood.by_class => say::own_not_known(&heavy, &stiff),
        Some(class) => say::own_class(&class, &heavy, &stiff),
        None => say::own_no_class(&heavy, &stiff),
    }
}

/// Birch plywood of so many plies, as an entry of a list: with its thickness.
pub fn plies_name(plies: u32) -> String {
    match panel(plies) {
        Some(panel) => {
            let mm = display::decimals(panel.thickness().to_mm(), 1);
            say::plies_thick(&mm, &plies)
        }
        None => say::plies(&plies),
    }
}

/// The figures of a wood that decide what it bears; nothing where it is not known.
pub fn wood_facts(key: &str, plies: u32, own: &[OwnWoodSpec]) -> WoodFacts {
    if key == PLYWOOD {
        return panel(plies).map(|panel| plywood(&panel, plies)).unwrap_or_default();
    }
    let listed = woods().into_iter().find(|wood| wood.key == key);
    let spec = own.iter().find(|wood| wood.key == key).filter(|_| listed.is_none());
    let Some(wood) = listed.or_else(|| own_wood(spec?)) else {
        let about = spec.map(|spec| say::about_own(&own_name(spec), &own_words(spec)));
        return WoodFacts { about: about.unwrap_or_default(), ..WoodFacts::default() };
    };
    let basis = match wood.basis {
        Basis::Clear => say::BASIS_CLEAR,
        Basis::Characteristic => say::BASIS_GRADED,
    };
    let about = match spec {
        Some(spec) => say::about_own(&own_name(spec), &own_words(spec)),
        None => say::about(&basis, &wood.botanical, &capital(wood.name.said())),
    };
    let mut all = WoodFacts { about, ..WoodFacts::default() };
    all.add_stress(say::BENDING, &wood.bending);
    if let Some(modulus) = &wood.modulus {
        all.add(say::MODULUS, gpa(modulus.value), modulus);
    }
    all.add_stress(say::COMPRESSION_ALONG, &wood.compression_along);
    all.add_stress(say::COMPRESSION_ACROSS, &wood.compression_across);
    all.add_stress(say::SHEAR, &wood.shear);
    all.add_stress(say::TENSION_ACROSS, &wood.tension_across);
    all.add_density(&wood.density);
    all
}

fn plywood(panel: &Panel, plies: u32) -> WoodFacts {
    let (flat, edge) = (panel.flatwise(Way::Along), panel.edgewise(Way::Along));
    let plain = |what, figure| WoodFact { what, figure, source: String::new() };
    let facts = vec![
        plain(say::BENDING_FLAT, mpa(flat.bending)),
        plain(say::BENDING_EDGE, mpa(edge.bending)),
        plain(say::MODULUS_FLAT, gpa(flat.modulus)),
        plain(say::MODULUS_EDGE, gpa(edge.modulus)),
        plain(say::COMPRESSION, mpa(edge.compression)),
    ];
    let about = say::about_plywood(&plies_name(plies));
    let mut all = WoodFacts { about, facts, from: Vec::new() };
    all.add_stress(say::SHEAR_THROUGH, &panel.shear);
    all.add_density(&panel.density);
    all
}

fn panel(plies: u32) -> Option<Panel> {
    Panel::birch(usize::try_from(plies).ok()?).ok()
}

/// Megapascals to three digits, so that a small strength is not rounded away.
fn mpa(stress: Stress) -> String {
    format!("{} MPa", display::significant(stress.to_mpa(), 3))
}

fn gpa(stress: Stress) -> String {
    format!("{} GPa", display::modulus(stress))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::design::document::Design;

    #[test]
    fn every_wood_that_can_be_chosen_has_figures_with_their_sources() {
        for (key, name) in choices(true, &[]) {
            let facts = wood_facts(&key, 27, &[]);
            assert!(facts.about.starts_with(&name), "{}", facts.about);
            let whats: Vec<_> = facts.facts.iter().map(|fact| fact.what).collect();
            assert!(
                whats.iter().any(|what| what.said().starts_with("Modulus")),
                "{key}: {whats:?}"
            );
            let said = |fact: &WoodFact| key == PLYWOOD || fact.source.ends_with(')');
            assert!(facts.facts.iter().all(said), "{key}");
        }
        assert_eq!(choices(true, &[]).len(), choices(false, &[]).len() + 1);
    }

    #[test]
    fn a_wood_that_is_not_known_has_no_figures() {
        assert_eq!(wood_facts("moonwood", 3, &[]), WoodFacts::default());
        assert_eq!(wood_facts(PLYWOOD, 4, &[]), WoodFacts::default());
    }

    /// A bar of 450 kg/m³ whose load makes it 12.3 GPa: class C27 asks for 450 kg/m³ and 11.5 GPa.
    #[test]
    fn a_wood_of_ones_own_tells_what_it_reaches() {
        let mut own = OwnWoodSpec {
            key: "own-1".to_owned(),
            name: "Old spruce".to_owned(),
            softwood: true,
            by_class: true,
            length_mm: 600.0,
            width_mm: 40.0,
            height_mm: 20.0,
            weight_g: 216.001,
            span_mm: 500.0,
            load_kg: 10.0,
            falls_mm: 0.778,
            ..OwnWoodSpec::default()
        };
        let words = own_words(&own);
        assert!(words.starts_with("Density 450 kg/m³, modulus in bending 12.3 GPa."), "{words}");
        assert!(words.contains("class C27"), "{words}");
        let facts = wood_facts("own-1", 0, std::slice::from_ref(&own));
        assert!(facts.about.starts_with("Old spruce. Density 450"), "{}", facts.about);
        assert!(facts.facts.iter().any(|fact| fact.figure == "27.0 MPa"), "{:?}", facts.facts);
        assert_eq!(choices(true, std::slice::from_ref(&own))[0].1, "Old spruce");
        own.by_class = false;
        assert!(own_words(&own).contains("not judged"));
        own.falls_mm = 0.0;
        assert!(own_words(&own).contains("tap it"));
        own.weight_g = 0.0;
        assert!(own_words(&own).contains("weight"));
    }

    #[test]
    fn the_usual_plies_are_in_the_list() {
        let shape = Design::default().geometry;
        assert!(PLIES.contains(&shape.neck.plies) && PLIES.contains(&shape.board.plies));
        assert!(PLIES.iter().all(|plies| panel(*plies).is_some()));
    }

    #[test]
    fn the_table_of_a_wood_reads_as_its_source() {
        let maple = wood_facts("sugar-maple", 3, &[]);
        let bending = &maple.facts[0];
        assert_eq!((bending.what, &*bending.figure), (say::BENDING, "109 MPa"));
        assert_eq!(bending.source, "read in the source (1)");
        assert!(maple.sources().starts_with("(1) Wood Handbook"), "{}", maple.sources());
        assert_eq!(maple.facts[1].figure, "12.6 GPa");
    }
}
