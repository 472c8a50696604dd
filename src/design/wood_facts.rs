//! The woods by name, and the figures of each in words with source and standing.

use super::display;
use super::document::PLYWOOD;
use super::explain::standing;
use super::letters::capital;
use crate::engine::material::Sourced;
use crate::engine::structure::plywood::{Panel, Way};
use crate::engine::structure::wood::{Basis, woods};
use crate::engine::units::{Density, Stress};

/// The plies that birch plywood is sold with: common practice, from memory.
pub const PLIES: [u32; 17] = [3, 5, 7, 9, 11, 13, 15, 17, 19, 21, 23, 25, 27, 29, 31, 33, 35];

/// A figure of a wood.
#[derive(Clone, Debug, PartialEq, Eq, Hash)]
pub struct WoodFact {
    /// What it is.
    pub what: &'static str,
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
        let line = |(place, source): (usize, &String)| format!("({}) {source}.", place + 1);
        numbered.map(line).collect::<Vec<String>>().join(" ")
    }

    fn add<T>(&mut self, what: &'static str, figure: String, sourced: &Sourced<T>) {
        let known = self.from.iter().position(|source| *source == sourced.source);
        let place = known.unwrap_or_else(|| {
            self.from.push(sourced.source.clone());
            self.from.len() - 1
        });
        let source = format!("{} ({})", standing(sourced.standing), place + 1);
        self.facts.push(WoodFact { what, figure, source });
    }

    fn add_stress(&mut self, what: &'static str, sourced: &Option<Sourced<Stress>>) {
        if let Some(sourced) = sourced {
            self.add(what, mpa(sourced.value), sourced);
        }
    }

    fn add_density(&mut self, sourced: &Option<Sourced<Density>>) {
        if let Some(sourced) = sourced {
            self.add("Density", format!("{} kg/m³", display::density(sourced.value)), sourced);
        }
    }
}

/// The woods as their keys and names, plywood last where it can be chosen.
pub fn choices(plywood: bool) -> Vec<(String, String)> {
    let mut all: Vec<(String, String)> =
        woods().iter().map(|wood| (wood.key.to_owned(), capital(wood.name))).collect();
    if plywood {
        all.push((PLYWOOD.to_owned(), "Birch plywood".to_owned()));
    }
    all
}

/// Birch plywood of so many plies, as an entry of a list: with its thickness.
pub fn plies_name(plies: u32) -> String {
    match panel(plies) {
        Some(panel) => {
            let mm = display::decimals(panel.thickness().to_mm(), 1);
            format!("{plies} plies, {mm} mm")
        }
        None => format!("{plies} plies"),
    }
}

/// The figures of a wood that decide what it bears; nothing where it is not known.
pub fn wood_facts(key: &str, plies: u32) -> WoodFacts {
    if key == PLYWOOD {
        return panel(plies).map(|panel| plywood(&panel, plies)).unwrap_or_default();
    }
    let Some(wood) = woods().into_iter().find(|wood| wood.key == key) else {
        return WoodFacts::default();
    };
    let basis = match wood.basis {
        Basis::Clear => "Means of small pieces without a flaw, at 12 % moisture.",
        Basis::Characteristic => "What 95 of 100 pieces of graded timber bear.",
    };
    let about = format!("{} ({}). {basis}", capital(wood.name), wood.botanical);
    let mut all = WoodFacts { about, ..WoodFacts::default() };
    all.add_stress("Strength in bending", &wood.bending);
    if let Some(modulus) = &wood.modulus {
        all.add("Modulus in bending", gpa(modulus.value), modulus);
    }
    all.add_stress("Compression along the grain", &wood.compression_along);
    all.add_stress("Compression across the grain", &wood.compression_across);
    all.add_stress("Shear along the grain", &wood.shear);
    all.add_stress("Tension across the grain", &wood.tension_across);
    all.add_density(&wood.density);
    all
}

fn plywood(panel: &Panel, plies: u32) -> WoodFacts {
    let (flat, edge) = (panel.flatwise(Way::Along), panel.edgewise(Way::Along));
    let plain = |what, figure| WoodFact { what, figure, source: String::new() };
    let facts = vec![
        plain("Strength in bending, flat", mpa(flat.bending)),
        plain("Strength in bending, on edge", mpa(edge.bending)),
        plain("Modulus, flat", gpa(flat.modulus)),
        plain("Modulus, on edge", gpa(edge.modulus)),
        plain("Compression", mpa(edge.compression)),
    ];
    let about = format!(
        "Birch plywood, {}, face grain along the part. Worked out ply by ply from figures of one ply: Handbook of \
         Finnish Plywood, from memory.",
        plies_name(plies)
    );
    let mut all = WoodFacts { about, facts, from: Vec::new() };
    all.add_stress("Shear through the thickness", &panel.shear);
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
        for (key, name) in choices(true) {
            let facts = wood_facts(&key, 27);
            assert!(facts.about.starts_with(&name), "{}", facts.about);
            let whats: Vec<_> = facts.facts.iter().map(|fact| fact.what).collect();
            assert!(whats.iter().any(|what| what.starts_with("Modulus")), "{key}: {whats:?}");
            let said = |fact: &WoodFact| key == PLYWOOD || fact.source.ends_with(')');
            assert!(facts.facts.iter().all(said), "{key}");
        }
        assert_eq!(choices(true).len(), choices(false).len() + 1);
    }

    #[test]
    fn a_wood_that_is_not_known_has_no_figures() {
        assert_eq!(wood_facts("moonwood", 3), WoodFacts::default());
        assert_eq!(wood_facts(PLYWOOD, 4), WoodFacts::default());
    }

    #[test]
    fn the_usual_plies_are_in_the_list() {
        let shape = Design::default().geometry;
        assert!(PLIES.contains(&shape.neck.plies) && PLIES.contains(&shape.board.plies));
        assert!(PLIES.iter().all(|plies| panel(*plies).is_some()));
    }

    #[test]
    fn the_table_of_a_wood_reads_as_its_source() {
        let maple = wood_facts("sugar-maple", 3);
        let bending = &maple.facts[0];
        assert_eq!((bending.what, &*bending.figure), ("Strength in bending", "109 MPa"));
        assert_eq!(bending.source, "read in the source (1)");
        assert!(maple.sources().starts_with("(1) Wood Handbook"), "{}", maple.sources());
        assert_eq!(maple.facts[1].figure, "12.6 GPa");
    }
}
