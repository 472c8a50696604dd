//! Tests of the comparison of two designs.

use super::*;
use crate::design::document::{LengthUnit, StringSpec};
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
    assert!(told(&comparison.totals).iter().any(|t| t.starts_with("pull of the whole harp: ")));
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

/// Every setting of the document stands in the list: a change of any number or text is told.
#[test]
fn no_setting_is_left_out() {
    use crate::design::document::{
        Allowances, BoardSpec, DrillsSpec, GeometrySpec, LimitsSpec, MechanismKind, MechanismSpec,
        NeckSpec, PillarSpec, PitchSpec, SectionSpec, ServiceSpec, SpacingSpec, TargetsSpec,
        TemperamentSpec, TolerancesSpec,
    };
    let before = Design::default();
    let text = || "x".to_owned();
    let all = Design {
        title: text(),
        maker: text(),
        client: text(),
        serial: text(),
        date: text(),
        open_tuning: text(),
        remarks: text(),
        pitch: PitchSpec { a4_hz: 415.0, temperament: TemperamentSpec::Vallotti },
        pluck_percent: 30.0,
        pluck_mm: 3.0,
        damping_partial: 9,
        mechanism: MechanismSpec { kind: MechanismKind::Lever, push_mm: 1.0 },
        frame_expansion_e6_per_k: 4.0,
        geometry: GeometrySpec {
            board_angle_deg: 30.0,
            lean_deg: 1.0,
            spacing: SpacingSpec {
                measured: MeasuredSpec::AlongBoard,
                gaps: GapsSpec::EachMm(vec![14.0]),
            },
            start_mm: 1.0,
            pin_sideways_mm: 1.0,
            strings_from_neck_mm: 1.0,
            drives: DrivesSpec::NeckCurve,
            nodes_mm: vec![(1.0, 2.0)],
            neck: NeckSpec {
                below_pins_mm: 1.0,
                above_pins_mm: 1.0,
                thickness_mm: 1.0,
                wood: text(),
                plies: 1,
                sections: vec![SectionSpec::default()],
                grain_percent: 1.0,
            },
            pillar: PillarSpec {
                gap_mm: 1.0,
                width_mm: 1.0,
                depth_mm: 1.0,
                wood: text(),
                beside_mm: 1.0,
            },
            board: BoardSpec {
                below_mm: 1.0,
                above_mm: 1.0,
                bass_width_mm: 1.0,
                treble_width_mm: 1.0,
                bass_thickness_mm: 1.0,
                treble_thickness_mm: 1.0,
                wood: text(),
                plies: 1,
            },
            drills: DrillsSpec { bridge_pin_mm: 4.0, ..DrillsSpec::default() },
            service: ServiceSpec::Covered,
        },
        targets: TargetsSpec { most_items: Some(9), ..TargetsSpec::default() },
        tolerances: TolerancesSpec {
            length_mm: 0.5,
            pitch_cents: 3.0,
            temperature_k: 8.0,
            push_mm: 0.2,
            diameter_mm: 0.02,
            density_percent: 2.0,
        },
        limits: LimitsSpec {
            working_share_percent: 70.0,
            slack_share_percent: 15.0,
            least_tension_n: 25.0,
            least_stiffness_n_per_mm: 0.8,
            most_stiffness_n_per_mm: 1.7,
            partial_8_cents: 20.0,
            jump_percent: 25.0,
        },
        allowances: Allowances {
            after_length_mm: 50.0,
            turns: 3.5,
            pin_mm: 6.0,
            knot_mm: 100.0,
            tail_mm: 110.0,
        },
        order: crate::design::document::OrderSpec {
            spares: SparesSpec::OneOfEachItem,
            ..Default::default()
        },
        ..Design::default()
    };
    // The last three are about strings and materials, of which there are none.
    let names: Vec<String> =
        compare(&before, &all).settings.iter().map(|pair| pair.name.clone()).collect();
    let missing: Vec<&str> = SETTINGS
        .iter()
        .map(|setting| setting.0)
        .filter(|n| !names.iter().any(|m| m == n))
        .collect();
    assert_eq!(
        missing,
        ["strings with levers or discs of their own", "figures of materials", "order codes"]
    );
}
