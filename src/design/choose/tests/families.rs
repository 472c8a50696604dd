//! What is asked for: a family, where winding starts, how thick a plain string may be.

use super::*;
use crate::design::document::FamilySpec;

/// Asks for a set with the list to start from.
fn asked(change: impl FnOnce(&mut Design)) -> (Bench, Outcome) {
    let mut design = SAMPLES[1].design();
    change(&mut design);
    let bench = Bench::of(design, starting_list());
    let outcome = bench.outcome(&bench.all());
    (bench, outcome)
}

#[test]
fn a_family_is_asked_for_and_kept() {
    for (family, plain) in [(FamilySpec::Gut, "gut"), (FamilySpec::Fluorocarbon, "fluorocarbon")] {
        let (_, outcome) = asked(|design| design.targets.family = family);
        assert_eq!(outcome.conflicts, Vec::<String>::new(), "{family:?}");
        for string in &outcome.preview.strings {
            assert!(string.make_up.is_wound() || string.make_up.material == plain, "{string:?}");
        }
    }
}

#[test]
fn winding_starts_at_the_latest_where_it_is_asked_for() {
    let (_, outcome) = asked(|design| design.targets.wound_from = "F4".to_owned());
    let strings = &outcome.preview.strings;
    assert!(strings[15..].iter().all(|string| string.make_up.is_wound()), "{strings:?}");
    let (bench, free) = asked(|_| ());
    assert!(free.preview.strings[15].make_up.is_plain(), "else it would start lower");
    // Nothing is offered that is thicker than it may be.
    let thin = bench.with(|design| design.targets.thickest_plain_mm = Some(0.9));
    let outcome = thin.outcome(&thin.all());
    let plain = outcome.preview.strings.iter().filter(|string| string.make_up.is_plain());
    for string in plain {
        assert!(typed::gauge(&string.make_up.diameter).unwrap().to_mm() <= 0.9 + 1e-9);
    }
}

#[test]
fn a_set_writes_materials_as_the_chart_does() {
    let mut list = starting_list();
    for item in &mut list.items {
        item.make_up = item.make_up.replace("nylon", "Nylon").into();
    }
    let bench = Bench::of(SAMPLES[1].design(), list);
    for string in &bench.outcome(&bench.all()).preview.strings {
        assert_ne!(string.make_up.material, "Nylon", "{string:?}");
    }
}
