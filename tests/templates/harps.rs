//! The sample harps in every file: holes, pins, levers and discs lie at the same places, each with its own sign.

use stringloft::design::document::{Design, MechanismKind};
use stringloft::design::presets::SAMPLES;
use stringloft::design::resolve::resolve;
use stringloft::engine::analysis::analyse;
use stringloft::papers::template::{dxf, harp, schedule, svg};

use crate::readers::{Circle, csv, dxf_circles, dxf_lines, svg_circles, svg_lines};

/// As far as the files may be from one another.
const AGREE_MM: f64 = 0.01;

struct Files {
    circles: [Vec<Circle>; 2],
    lines: [Vec<crate::readers::Line>; 2],
    table: String,
}

fn files(design: &Design) -> Files {
    let resolved = resolve(design);
    assert_eq!(resolved.errors, [""; 0]);
    let analysis = analyse(&resolved.harp);
    let template = harp::template(design, &resolved, &analysis);
    let (dxf, svg) =
        (dxf::write(&template).expect("a DXF"), svg::write(&template).expect("an SVG"));
    Files {
        circles: [dxf_circles(&dxf), svg_circles(&svg)],
        lines: [dxf_lines(&dxf), svg_lines(&svg)],
        table: schedule::write(&harp::schedule(design, &resolved, &analysis)),
    }
}

/// The layer of a point in the schedule, and how many circles its sign has.
fn layer_of(feature: &str) -> (&'static str, usize) {
    match feature {
        "bridge pin" | "tuning pin" => ("pins", 0),
        "board hole" => ("holes", 0),
        "lever" => ("levers", 0),
        "disc natural" => ("discs-natural", 1),
        "disc sharp" => ("discs-sharp", 2),
        other => panic!("no such feature: {other}"),
    }
}

/// Compares every row of the schedule with DXF and SVG; gives how many there are of each feature.
fn compared(files: &Files) -> [usize; 6] {
    let mut counts = [0; 6];
    let rows = csv(&files.table);
    for row in rows.iter().skip(2) {
        let number = |cell: usize| row[cell].parse::<f64>().expect("a number");
        let (x_mm, y_mm) = (number(3), number(4));
        let (layer, signs) = layer_of(row[2]);
        let drill_mm = (!row[7].is_empty()).then(|| number(7));
        if let Some(drill_mm) = drill_mm {
            assert!((number(8) * 25.4 - drill_mm).abs() < 0.002, "{row:?}");
        }
        for circles in &files.circles {
            let here: Vec<f64> = circles
                .iter()
                .filter(|circle| circle.layer == layer)
                .filter(|circle| (circle.x_mm - x_mm).hypot(circle.y_mm - y_mm) < AGREE_MM)
                .map(|circle| 2.0 * circle.radius_mm)
                .collect();
            assert_eq!(here.len(), signs + usize::from(drill_mm.is_some()), "{row:?}");
            if let Some(drill_mm) = drill_mm {
                assert!(here.iter().any(|wide| (wide - drill_mm).abs() < AGREE_MM), "{row:?}");
            }
        }
        for lines in &files.lines {
            let here = lines.iter().filter(|line| line.layer == layer);
            let here: Vec<_> = here.filter(|line| line.is_round(x_mm, y_mm, AGREE_MM)).collect();
            // A cross, and the bar of a lever.
            assert_eq!(here.len(), if layer == "levers" { 3 } else { 2 }, "{row:?}");
        }
        let features =
            ["bridge pin", "tuning pin", "board hole", "lever", "disc natural", "disc sharp"];
        counts[features.iter().position(|own| *own == row[2]).expect("a feature")] += 1;
    }
    counts
}

#[test]
fn the_files_of_the_samples_agree_and_tell_levers_and_discs_apart() {
    for (sample, levers, discs) in SAMPLES.iter().map(|sample| match sample.key {
        "pedal-47" => (sample, 0, 44),
        "wire-22" => (sample, 0, 0),
        _ => (sample, sample.design().strings.len(), 0),
    }) {
        let mut design = sample.design();
        let strings = design.strings.len();
        let counts = compared(&files(&design));
        assert_eq!(counts, [strings, strings, strings, levers, discs, discs], "{}", sample.key);
        design.geometry.drills.eyelet_mm = 4.2;
        design.geometry.drills.mechanism_mm = 2.5;
        design.geometry.drills.bridge_pin_mm = 0.0;
        design.geometry.lean_deg = 3.0;
        assert_eq!(compared(&files(&design)), counts, "{}", sample.key);
    }
}

/// The bridge pin of 3 mm, the string with 0.4 mm of room, the tuning pin as it is, nothing for a lever.
#[test]
fn the_schedule_says_what_to_drill() {
    let design = SAMPLES.iter().find(|sample| sample.key == "floor-36").expect("a sample").design();
    let resolved = resolve(&design);
    let analysis = analyse(&resolved.harp);
    let table = files(&design).table;
    let rows = csv(&table);
    for (index, string) in analysis.strings.iter().enumerate() {
        let own: Vec<_> = rows.iter().filter(|row| row[0] == (index + 1).to_string()).collect();
        let drill = |feature: &str| own.iter().find(|row| row[2] == feature).expect("a row")[7];
        let gauge_mm = string.gauge.expect("a gauge").to_mm();
        assert_eq!(drill("bridge pin"), "3.000");
        assert_eq!(drill("tuning pin"), format!("{:.3}", design.allowances.pin_mm));
        assert_eq!(drill("board hole"), format!("{:.3}", gauge_mm + 0.4));
        assert_eq!(drill("lever"), "");
    }
}

/// What a string is given in the details reaches the files.
#[test]
fn every_string_may_have_its_own_levers_or_discs() {
    let mut design = SAMPLES.iter().find(|s| s.key == "floor-36").expect("a sample").design();
    let kinds = [
        MechanismKind::None,
        MechanismKind::Lever,
        MechanismKind::SingleDisc,
        MechanismKind::DoubleDisc,
    ];
    for (string, kind) in design.strings.iter_mut().skip(4).zip(kinds) {
        string.mechanism = Some(kind);
    }
    let files = files(&design);
    assert_eq!(compared(&files), [36, 36, 36, 33, 2, 1]);
    let rows = csv(&files.table);
    for (number, expected) in ["5", "6", "7", "8"].into_iter().zip([
        &[][..],
        &["lever"],
        &["disc natural"],
        &["disc natural", "disc sharp"],
    ]) {
        let own = rows.iter().filter(|row| row[0] == number).map(|row| row[2]);
        assert_eq!(own.skip(3).collect::<Vec<_>>(), expected, "string {number}");
    }
}
