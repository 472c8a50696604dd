//! Tests of the comparison of two designs.

use super::*;
use crate::design::document::{LengthUnit, NeckLayerSpec, OrderSpec, OwnWoodSpec};
use crate::design::edit::{Column, Edit};
use crate::design::presets::SAMPLES;

fn cell(row: usize, column: Column, text: &str) -> Edit {
    Edit::Cell { row, column, text: text.to_owned() }
}

fn told(pairs: &[Pair]) -> Vec<String> {
    let differs = pairs.iter().filter(|pair| pair.differs());
    differs.map(|pair| format!("{}: {} / {}", pair.name, pair.before, pair.after)).collect()
}

#[test]
fn a_design_does_not_differ_from_itself() {
    for sample in SAMPLES {
        let design = sample.design();
        let same = compare(&design, &design);
        assert!(same.strings.iter().all(|string| !string.differs()), "{}", sample.key);
        assert_eq!(same.strings.len(), design.strings.len());
        assert_eq!((told(&same.totals), same.settings), (vec![], vec![]));
        assert_eq!(same.ghost, analyse(&resolve(&design).harp));
    }
}

#[test]
fn a_changed_string_and_a_changed_setting_are_told() {
    let before = SAMPLES[1].design();
    let mut after = cell(0, Column::Length, "70").apply(&before);
    after.limits.partial_8_cents = 30.0;
    after.title = "Other".to_owned();
    let comparison = compare(&before, &after);
    let changed: Vec<_> = comparison.strings.iter().filter(|string| string.differs()).collect();
    assert_eq!(changed.len(), 1);
    let length = format!("length, mm: {} / 70", before.strings[0].length);
    let cells = told(&changed[0].cells);
    assert!(cells.contains(&length), "{cells:?}");
    assert!(cells.iter().any(|cell| cell.starts_with("tension, N: ")), "{cells:?}");
    assert_eq!(
        told(&comparison.settings),
        [
            format!("title: {} / Other", before.title),
            format!("limit for partial 8, cents: {} / 30", before.limits.partial_8_cents),
        ]
    );
    assert!(told(&comparison.totals).iter().any(|t| t.starts_with("total tension: ")));
}

#[test]
fn strings_are_paired_by_their_notes() {
    let string = |note: &str| StringSpec { note: note.to_owned(), ..StringSpec::default() };
    let of = |notes: &[&str]| Design {
        strings: notes.iter().map(|note| string(note)).collect(),
        ..Design::default()
    };
    let pairs = |before: &[&str], after: &[&str]| -> Vec<(Option<usize>, Option<usize>)> {
        let comparison = compare(&of(before), &of(after));
        comparison.strings.iter().map(|string| (string.before, string.after)).collect()
    };
    assert_eq!(
        pairs(&["D5", "C5", "B4"], &["E5", "D5", "Cb5"]),
        [(None, Some(0)), (Some(0), Some(1)), (Some(1), Some(2)), (Some(2), None)]
    );
    assert_eq!(pairs(&["D5", "C5"], &["C5"]), [(Some(0), None), (Some(1), Some(0))]);
    assert_eq!(
        pairs(&["", "C5"], &["", "B4"]),
        [(Some(0), Some(0)), (None, Some(1)), (Some(1), None)]
    );
    assert_eq!(pairs(&[], &[]), []);
    assert_eq!(pairs(&["C5", "C5"], &["C5"]).len(), 2);
}

#[test]
fn figures_stand_in_the_units_of_the_page() {
    let mut design = SAMPLES[0].design();
    design.units.length = LengthUnit::Inch;
    assert_eq!(columns(&design.units)[2], "length, in");
    assert_eq!(columns(&Units::default())[6], "load share, %");
}

#[test]
fn a_change_of_any_number_is_told_once() {
    let mut before = Design::default();
    before.order.spares = SparesSpec::Percent(10.0);
    for setting in Setting::ALL {
        let (least, most) = setting.row().sensible;
        let number = if setting.of(&before) == Some(most) { least } else { most };
        let mut after = before.clone();
        setting.put(&mut after, Some(number));
        let told = told(&compare(&before, &after).settings);
        assert_eq!(told.len(), 1, "{setting:?}: {told:?}");
        assert!(told[0].contains(&number.to_string()), "{told:?}");
    }
}

/// Every other setting of the document stands in the list.
#[test]
fn no_words_are_left_out() {
    let before = Design::default();
    let text = || "x".to_owned();
    let mut all = Design {
        title: text(),
        maker: text(),
        client: text(),
        serial: text(),
        date: text(),
        open_tuning: text(),
        remarks: text(),
        order: OrderSpec { spares: SparesSpec::OneOfEachItem, ..OrderSpec::default() },
        ..Design::default()
    };
    for choice in OneOf::ALL {
        choice.put(&mut all, 1);
    }
    let shape = &mut all.geometry;
    shape.spacing.gaps = GapsSpec::EachMm(vec![14.0]);
    shape.drives = DrivesSpec::NeckCurve;
    shape.nodes_mm = vec![(1.0, 2.0)];
    shape.neck.sections = vec![SectionSpec::default()];
    (shape.neck.wood, shape.pillar.wood, shape.board.wood) = (text(), text(), text());
    shape.board.rib_wood = text();
    shape.joints.head.count = 2;
    shape.soundbox.slotted = true;
    shape.neck.layers = vec![NeckLayerSpec::default()];
    shape.neck.plates.thickness_mm = 1.0;
    shape.woods = vec![OwnWoodSpec::default()];
    shape.bars.side_percent = 80.0;
    shape.parts = "kerf=2.8".to_owned();
    all.targets.wound_from = text();
    all.targets.points_n = vec![(60.0, 90.0)];
    all.targets.zones = vec![ZoneSpec { thinnest: text(), ..ZoneSpec::default() }];
    all.targets.kinds = vec![KindSpec { kind: text(), ..KindSpec::default() }];
    let names: Vec<String> =
        compare(&before, &all).settings.iter().map(|pair| pair.name.clone()).collect();
    let missing: Vec<&str> = WORDS
        .iter()
        .map(|words| words.0.said())
        .filter(|n| !names.iter().any(|m| m == n))
        .collect();
    // These are about strings and materials, of which there are none.
    assert_eq!(
        missing,
        ["levers or discs of single strings", "figures of materials", "order codes"]
    );
}

#[test]
fn of_long_lists_only_what_differs_is_told() {
    let mut before = SAMPLES[0].design();
    for (place, string) in before.strings.iter_mut().enumerate() {
        string.order_code = format!("ZW-{place}");
    }
    let mut after = before.clone();
    after.strings[3].order_code = "ZW-99".to_owned();
    after.strings[7].order_code.clear();
    let note = |place: usize| shown(&before.strings[place].note);
    assert_eq!(
        told(&compare(&before, &after).settings),
        [format!("order codes: {} ZW-3; {} ZW-7 / {} ZW-99", note(3), note(7), note(3))]
    );
    let mut first = before.clone();
    first.strings[7].order_code.clear();
    assert_eq!(
        told(&compare(&before, &first).settings),
        [format!("order codes: {} ZW-7 / {}", note(7), display::NONE)]
    );
    after = before.clone();
    after.materials[1].density_kg_per_m3.value += 1.0;
    let told = told(&compare(&before, &after).settings);
    assert_eq!(told.len(), 1);
    assert_eq!(told[0].matches("GPa").count(), 2, "{told:?}");
}
