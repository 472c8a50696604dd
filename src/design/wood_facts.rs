//! The woods by name, and the figures of each in words with source and standing.

use super::display;
use super::document::{OwnWoodSpec, PLYWOOD};
use super::explain::standing;
use super::letters::capital;
use super::resolve::timber::{measured, own_wood};
use crate::engine::material::Sourced;
use crate::engine::structure::plywood::{Panel, Way};
use crate::engine::structure::wood::own::class_name;
use crate::engine::structure::wood::{Basis, WoodKind, woods};
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

/// The woods as their keys and names: those of one's own first, plywood last where it can be chosen.
pub fn choices(plywood: bool, own: &[OwnWoodSpec]) -> Vec<(String, String)> {
    let mut all: Vec<(String, String)> =
        own.iter().map(|wood| (wood.key.clone(), own_name(wood))).collect();
    all.extend(woods().iter().map(|wood| (wood.key.to_owned(), capital(wood.name))));
    if plywood {
        all.push((PLYWOOD.to_owned(), "Birch plywood".to_owned()));
    }
    all
}

/// What a wood of one's own is called.
pub fn own_name(wood: &OwnWoodSpec) -> String {
    let name = wood.name.trim();
    if name.is_empty() { format!("Wood of your own ({})", wood.key) } else { name.to_owned() }
}

/// What the bar of a wood of one's own tells.
pub fn own_words(wood: &OwnWoodSpec) -> String {
    let (density, modulus) = measured(wood);
    let Some(density) = density else {
        return "Give the bar its three sizes and its weight.".to_owned();
    };
    let heavy = format!("{} kg/m³", display::density(density));
    let Some(modulus) = modulus else {
        return format!(
            "Density {heavy}. Load the bar between two supports, or tap it and give its tone: that tells its modulus."
        );
    };
    let kind = if wood.softwood { WoodKind::Softwood } else { WoodKind::Hardwood };
    let strengths = match class_name(kind, density, modulus) {
        _ if !wood.by_class => {
            "Its strengths are not known, so that its parts are not judged.".to_owned()
        }
        Some(class) => format!(
            "Its strengths are those of class {class}, the highest that it reaches in density and modulus."
        ),
        None => "It reaches no class in density and modulus, so that its parts are not judged."
            .to_owned(),
    };
    format!("Density {heavy}, modulus in bending {}. {strengths}", gpa(modulus))
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
pub fn wood_facts(key: &str, plies: u32, own: &[OwnWoodSpec]) -> WoodFacts {
    if key == PLYWOOD {
        return panel(plies).map(|panel| plywood(&panel, plies)).unwrap_or_default();
    }
    let listed = woods().into_iter().find(|wood| wood.key == key);
    let spec = own.iter().find(|wood| wood.key == key).filter(|_| listed.is_none());
    let Some(wood) = listed.or_else(|| own_wood(spec?)) else {
        let about = spec.map(|spec| format!("{}. {}", own_name(spec), own_words(spec)));
        return WoodFacts { about: about.unwrap_or_default(), ..WoodFacts::default() };
    };
    let basis = match wood.basis {
        Basis::Clear => "Means of small pieces without a flaw, at 12 % moisture.",
        Basis::Characteristic => "What 95 of 100 pieces of graded timber bear.",
    };
    let about = match spec {
        Some(spec) => format!("{}. {}", own_name(spec), own_words(spec)),
        None => format!("{} ({}). {basis}", capital(wood.name), wood.botanical),
    };
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
        for (key, name) in choices(true, &[]) {
            let facts = wood_facts(&key, 27, &[]);
            assert!(facts.about.starts_with(&name), "{}", facts.about);
            let whats: Vec<_> = facts.facts.iter().map(|fact| fact.what).collect();
            assert!(whats.iter().any(|what| what.starts_with("Modulus")), "{key}: {whats:?}");
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
        assert_eq!((bending.what, &*bending.figure), ("Strength in bending", "109 MPa"));
        assert_eq!(bending.source, "read in the source (1)");
        assert!(maple.sources().starts_with("(1) Wood Handbook"), "{}", maple.sources());
        assert_eq!(maple.facts[1].figure, "12.6 GPa");
    }
}
