//! The built-in materials at each revision of the list, as links and kept designs know them.

use stringloft::design::document::{Design, Fact, MakeUpSpec, MaterialSpec, StringSpec};
use stringloft::design::link;
use stringloft::design::persist::{read, write};

/// The numbers that a material had at a revision; revision 1 knew the first few.
fn numbers_of(material: &MaterialSpec, revision: u64) -> String {
    fn value<T: Clone>(fact: &Option<Fact<T>>) -> Option<T> {
        fact.as_ref().map(|fact| fact.value.clone())
    }
    let first = (
        &material.key,
        material.density_kg_per_m3.value,
        value(&material.modulus),
        value(&material.strength),
    );
    let later = (
        material.class,
        value(&material.density_tolerance_percent),
        value(&material.diameter_tolerance),
        value(&material.intermediate_modulus),
        value(&material.slow_modulus),
        value(&material.expansion_e6_per_k),
        value(&material.loss_factor),
    );
    let text = if revision == 1 {
        serde_json::to_string(&first)
    } else {
        serde_json::to_string(&(first, later))
    };
    text.expect("plain numbers and names")
}

/// The numbers of the built-in materials at each revision, as links name them. A figure that changes
/// needs a new revision in `design::link`; the list as it was must stay readable under the old one,
/// and its check sum must stay here.
#[test]
fn built_in_materials_are_as_links_remember_them() {
    // From 3 to 4 only the names of three sources changed.
    const CHECK_SUMS: [(u64, u32); 4] =
        [(1, 3_345_911_926), (2, 397_924_322), (3, 684_620_200), (4, 684_620_200)];
    for (revision, expected) in CHECK_SUMS {
        let materials = link::built_in_at(revision).expect("every revision stays readable");
        let numbers: Vec<String> =
            materials.iter().map(|material| numbers_of(material, revision)).collect();
        let text = format!("[{}]", numbers.join(","));
        assert_eq!(crc32fast::hash(text.as_bytes()), expected, "revision {revision}");
    }
    assert!(link::built_in_at(link::LIBRARY_REVISION).is_some());
    assert_eq!(CHECK_SUMS.last().map(|pair| pair.0), Some(link::LIBRARY_REVISION));
}

/// Up to revision 3 three sources were named by where they were quoted: designs that were kept and links that were sent
/// then have them so, and keep them.
#[test]
fn sources_stay_as_a_design_has_them() {
    let source = |revision, at: usize| {
        let list = link::built_in_at(revision).expect("a revision");
        list[at].modulus.as_ref().expect("a modulus").source.clone()
    };
    let quoted = "as quoted in a public source code";
    for revision in [1, 2, 3] {
        assert!(source(revision, 0).contains(&format!("516, {quoted}: 4.5 GPa")), "{revision}");
        assert!(source(revision, 1).ends_with(&format!("516, {quoted}")), "{revision}");
        assert!(!source(revision, 2).contains(quoted), "{revision}");
    }
    assert!(!source(link::LIBRARY_REVISION, 0).contains(quoted));
    let nylon = link::built_in_at(3).expect("a revision")[0].loss_factor.clone();
    assert!(nylon.expect("a loss factor").source.contains(&format!("table I, {quoted}: 0.020")));

    // A design keeps the materials that its strings use.
    let holding = |revision| {
        let materials = link::built_in_at(revision).expect("a revision").to_vec();
        let string = |material: &MaterialSpec| StringSpec {
            make_up: MakeUpSpec { material: material.key.clone(), ..MakeUpSpec::default() },
            ..StringSpec::default()
        };
        Design { strings: materials.iter().map(string).collect(), materials, ..Design::default() }
    };
    let lengths = [1, 2, 3, link::LIBRARY_REVISION].map(|revision| {
        let design = holding(revision);
        assert!(read(&write(&design)).as_ref() == Ok(&design), "{revision}: file");
        let text = link::write(&design).expect("a link");
        assert!(link::read(&text).as_ref() == Ok(&design), "{revision}: link");
        text.len()
    });
    // Each only names its materials.
    assert!(lengths.iter().max() < lengths.iter().min().map(|least| least + 8).as_ref());
    // One that took its materials at different times has some in full.
    let mut mixed = holding(3);
    mixed.materials[0] = holding(4).materials[0].clone();
    let text = link::write(&mixed).expect("a link");
    assert!(link::read(&text) == Ok(mixed), "mixed");
}
