//! One row for each number of the document, and everyone who reads the rows agrees.

use serde_json::Value;

use super::*;
use crate::design::choose::{Shop, Task};
use crate::design::document::{PLYWOOD, WantsSpec};
use crate::design::order::order_list;
use crate::design::persist::check;
use crate::design::presets::SAMPLES;
use crate::design::resolve::resolve;
use crate::design::stock::starting_list;
use crate::design::{display, letters};
use crate::engine::analysis::analyse;

fn with(setting: Setting, number: f64) -> Design {
    let mut design = Design::default();
    setting.put(&mut design, Some(number));
    design
}

/// Numbers around the ends of a range: the ends, a little beyond them, and far beyond.
fn probes((least, most): (f64, f64)) -> [f64; 6] {
    [least, most, least - 0.5, most + 0.5, least - 1e6, most + 1e6]
}

#[test]
fn what_is_usual_makes_sense_and_what_makes_sense_may_be_held() {
    for setting in Setting::ALL {
        let row = setting.row();
        assert!(setting.usual().is_none_or(|usual| row.takes(usual)), "{setting:?}");
        let ((least, most), held) = (row.sensible, row.held);
        assert!(held.0 <= least && least < most && most <= held.1, "{setting:?}");
        assert!(!row.name.is_empty() && !row.label.is_empty(), "{setting:?}");
        assert!(row.name.said().starts_with(|c: char| c.is_lowercase()), "{setting:?}");
    }
}

#[test]
fn door_meaning_and_field_agree_on_every_number() {
    for setting in Setting::ALL {
        let row = setting.row();
        let odd = [f64::NAN, f64::INFINITY, f64::NEG_INFINITY, 8e-127, -5e-324];
        for got in probes(row.sensible).into_iter().chain(probes(row.held)).chain(odd) {
            let design = with(setting, got);
            // A counted number is held as one, so that it may not be the one that was put.
            let Some(got) = setting.of(&design) else { panic!("{setting:?} is put and not held") };
            let (least, most) = row.held;
            let refused = check(&design).err().map(|error| error.to_string());
            assert_eq!(refused.is_none(), (least..=most).contains(&got), "{setting:?} {got}");
            let begins = format!("the {} must be from ", row.name);
            assert!(refused.is_none_or(|told| told.starts_with(&begins)), "{setting:?} {got}");

            let errors = resolve(&design).errors;
            let told: Vec<&String> =
                errors.iter().filter(|error| error.starts_with(&begins)).collect();
            if row.takes(got) {
                assert!(told.is_empty(), "{setting:?} {got}: {told:?}");
                assert_eq!(setting.meant(&design), Some(got), "{setting:?}");
            } else {
                let range = row.asked().replace("a number ", "").replace("a whole number ", "");
                let expected = format!("the {} must be {range}, got {}", row.name, short(got));
                assert_eq!(told.len(), 1, "{setting:?} {got}: {errors:?}");
                assert!(told[0].starts_with(&expected), "{} is not of {expected}", told[0]);
                assert_eq!(setting.meant(&design), setting.usual(), "{setting:?}");
            }
        }
    }
}

/// The numbers of a document by their paths; what is left out counts, as a number may stand there.
fn leaves(path: &str, value: &Value, found: &mut Vec<(String, Value)>) {
    match value {
        Value::Object(fields) => {
            for (name, value) in fields {
                leaves(&format!("{path}.{name}"), value, found);
            }
        }
        Value::Number(_) | Value::Null => found.push((path.to_owned(), value.clone())),
        _ => {}
    }
}

/// A new number of the document fails here until it has a row.
#[test]
fn every_number_of_the_document_has_one_row() {
    let mut usual = Design::default();
    // What is usual is not written, so that something else is.
    usual.order.spares = SparesSpec::Percent(10.0);
    usual.targets.wants = WantsSpec::Tension;
    let drills = &mut usual.geometry.drills;
    (drills.tuning_depth_mm, drills.bridge_depth_mm) = (30.0, 20.0);
    let numbers = |design: &Design| {
        let mut found = Vec::new();
        leaves("", &serde_json::to_value(design).expect("a design can be written"), &mut found);
        found
    };
    let before = numbers(&usual);
    let mut changed: Vec<String> = Vec::new();
    for setting in Setting::ALL {
        let (least, most) = setting.row().sensible;
        let number = if setting.of(&usual) == Some(most) { least } else { most };
        let mut next = usual.clone();
        setting.put(&mut next, Some(number));
        let after = numbers(&next);
        let differ = before.iter().zip(&after).filter(|(before, after)| before != after);
        let paths: Vec<String> = differ.map(|(before, _)| before.0.clone()).collect();
        assert_eq!(paths.len(), 1, "{setting:?} changes {paths:?}");
        changed.extend(paths);
    }
    let mut all: Vec<String> = before.into_iter().map(|(path, _)| path).collect();
    all.sort();
    changed.sort();
    assert_eq!(changed, all);
}

/// All that follows from the settings of a design.
fn follows(design: &Design) -> String {
    let resolved = resolve(design);
    let stock = starting_list();
    let shop = Shop { items: &stock.items, materials: &stock.materials, own: true };
    let rows = vec![true; design.strings.len()];
    let task = Task::new(design, &resolved, &shop, &rows);
    let order = order_list(design, &analyse(&resolved.harp));
    format!("{resolved:?}{:?}{order:?}", task.search)
}

#[test]
fn every_setting_is_read() {
    let mut solid = SAMPLES[0].design();
    solid.strings.truncate(6);
    solid.stock = starting_list().items;
    solid.geometry.spacing.gaps = GapsSpec::UniformMm(14.0);
    solid.geometry.neck.sections.clear();
    solid.order.spares = SparesSpec::Percent(50.0);
    let mut plywood = solid.clone();
    (plywood.geometry.neck.wood, plywood.geometry.board.wood) = (PLYWOOD.into(), PLYWOOD.into());
    plywood.geometry.neck.plies = 15;
    plywood.geometry.board.plies = 5;
    let bases = [&solid, &plywood].map(|design| (design, follows(design)));
    for setting in Setting::ALL {
        let (least, most) = setting.row().sensible;
        let numbers = [least, most, (least + most) / 2.0, 3.0, 9.0];
        let is_read = bases.iter().any(|(base, before)| {
            numbers.into_iter().filter(|number| setting.row().takes(*number)).any(|number| {
                let mut next = (*base).clone();
                setting.put(&mut next, Some(number));
                follows(&next) != *before
            })
        });
        assert!(is_read, "nothing follows from {setting:?}");
    }
}

#[test]
fn every_choice_holds_what_was_chosen() {
    for choice in OneOf::ALL {
        for (place, words) in choice.options().iter().enumerate() {
            let mut design = Design::default();
            choice.put(&mut design, place);
            assert_eq!((choice.of(&design), choice.place(&design)), (*words, place), "{choice:?}");
        }
    }
}

#[test]
fn papers_and_page_have_the_same_words_for_a_choice() {
    for (place, words) in OneOf::Temperament.options().iter().enumerate() {
        let mut design = Design::default();
        OneOf::Temperament.put(&mut design, place);
        let paper = letters::capital(display::temperament(design.pitch.temperament));
        assert_eq!(paper, words.said());
    }
    for (place, words) in OneOf::Mechanism.options().iter().enumerate() {
        let mut design = Design::default();
        OneOf::Mechanism.put(&mut design, place);
        assert_eq!(display::mechanism(design.mechanism.kind), words.said());
    }
}
