//! A bent back: its sheet is as large as the surface it becomes and its solid as heavy as the shell that
//! `scripts/bent.py` worked out in space, with many more strips, from the faces of the flat harp; and it fits.

use std::fmt::Write as _;
use std::fs;
use std::path::Path;

use serde_json::Value;
use stringloft::design::document::Design;
use stringloft::design::parts::building::steps;
use stringloft::design::parts::{Parts, parts, words};
use stringloft::design::presets::SAMPLES;
use stringloft::engine::parts::findings::Finding;
use stringloft::engine::parts::{Cell, Hand, Kind, Part, Plane, area};
use stringloft::papers::building::building;
use stringloft::papers::html::html;
use stringloft::papers::sheet::Paper;
use stringloft::papers::template::bent::template_of;
use stringloft::papers::template::model::LayerKind;
use stringloft::papers::template::{dxf, pdf, svg};

use crate::assert_fits;
use crate::made::bent;

fn part(made: &Parts, kind: Kind) -> &Part {
    let mut own = made.whole.of(kind).filter(|part| part.name.hand != Some(Hand::Other));
    own.next().expect("a part")
}

/// Planes of the flat harp: what the bent back is worked out from again.
fn planes(made: &Parts) -> String {
    let plane = |name: &str, Plane { square, at }: Plane| {
        format!("\"{name}\":[{:.9},{:.9},{:.9},{at:.9}]", square[0], square[1], square[2])
    };
    let of = |kind: Kind, face: usize| Plane::of(&part(made, kind).cells[0].faces()[face]);
    let back = of(Kind::Back, 1);
    let inside = Plane { square: back.square.map(|way| -way), at: -back.at };
    let all = [
        plane("inside", inside),
        plane("low", of(Kind::Back, 5)),
        plane("high", of(Kind::Back, 3)),
        plane("side", of(Kind::Side, 0)),
        plane("rests", of(Kind::BackLiner, 1)),
    ];
    all.join(",")
}

#[test]
fn a_finer_shell_is_as_heavy_as_the_back_and_as_large_as_its_sheet() {
    let folder = Path::new(env!("CARGO_TARGET_TMPDIR")).join("parts-bent");
    fs::create_dir_all(&folder).expect("a folder for what is written");
    let kept = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/parts/bent.json");
    let kept: Value = fs::read_to_string(&kept)
        .ok()
        .and_then(|text| serde_json::from_str(&text).ok())
        .unwrap_or_default();
    let mut told = String::new();
    for sample in &SAMPLES {
        let flat = parts(&sample.design()).expect("parts");
        for rise in [12.0, 40.0] {
            let made = parts(&bent(&sample.design(), rise)).expect("parts");
            let back = part(&made, Kind::Back);
            let sheet = back.sheet.as_ref().expect("a sheet");
            let flat_strips: Vec<String> = sheet
                .strips()
                .map(|strip| {
                    let all = strip.map(|(x, y)| format!("[{x:.9},{y:.9}]"));
                    format!("[{}]", all.join(","))
                })
                .collect();
            let whole: f64 = back.cells.iter().map(|cell| cell.moments().0).sum();
            let middle = back.cells.iter().map(|cell| cell.moments().1);
            let middle = middle.fold([0.0; 3], |sum, at| [0, 1, 2].map(|i| sum[i] + at[i]));
            let middle = middle.map(|at| format!("{:.9}", at / whole)).join(",");
            let text = format!(
                "{{{},\"rise\":{:?},\"thick\":{:?},\"volume\":{whole:.9e},\"middle\":[{middle}],\"strips\":[{}]}}",
                planes(&flat),
                1e-3 * rise,
                sheet.thick_m,
                flat_strips.join(",")
            );
            let name = format!("{}-{rise:.0}", sample.key);
            fs::write(folder.join(format!("{name}.json")), &text).expect("a file can be written");
            let sum = format!("{:08x}", crc32fast::hash(text.as_bytes()));
            let found = &kept[&name];
            if found["sum"].as_str() != Some(&sum) {
                let _ = writeln!(told, "{name}");
            }
            let number = |what: &str| found[what].as_f64().unwrap_or(f64::NAN);
            // Strips are shorter than their arcs by a 24th of the square of their angle.
            for what in ["volume_off", "area_off", "low_end_off", "high_end_off"] {
                assert!(
                    number(what) < 1e-4 || !told.is_empty(),
                    "{name}, {what}: {}",
                    number(what)
                );
            }
            assert!(number("middle_off_m") < 5e-5 || !told.is_empty(), "{name}");
            let radius = number("radius_m") / sheet.radius_m.0 - 1.0;
            assert!(radius.abs() < 1e-6 || !told.is_empty(), "{name}: {radius}");
        }
    }
    assert!(told.is_empty(), "run tests/parts/scripts/bent.py on {}:\n{told}", folder.display());
}

/// Other makes too: no liners, no braces, an open back.
#[test]
fn a_bent_back_meets_sides_liners_braces_block_and_base_and_clashes_with_nothing() {
    type Change = fn(&mut Design);
    let changes: [(&str, Change); 4] = [
        ("as it is", |_| ()),
        ("no liners", |design| design.geometry.soundbox.liner_width_mm = 0.0),
        ("no braces", |design| design.geometry.soundbox.brace_gap_mm = 0.0),
        ("open back", |design| design.geometry.soundbox.slotted = true),
    ];
    for sample in &SAMPLES {
        for (key, change) in changes {
            let mut flat = sample.design();
            change(&mut flat);
            let key = format!("{key} of {}", sample.key);
            let (flat, made) = (parts(&flat).expect("parts"), parts(&bent(&flat, 20.0)));
            let made = made.unwrap_or_else(|why| panic!("{key}: {why}"));
            let faces = assert_fits(&key, &made);
            let of = |made: &Parts, kind| made.whole.of(kind).count();
            // Lower down there may be room for one brace less, on each side and on the back, with its nine faces.
            let less = of(&flat, Kind::BackBrace) - of(&made, Kind::BackBrace);
            assert!(less < 2, "{key}: {less}");
            if flat.whole.of(Kind::FrontLiner).next().is_some() {
                assert_eq!(faces + 9 * less, assert_fits(&key, &flat), "{key}");
            }
            let holes = |made: &Parts| part(made, Kind::Back).openings.len();
            assert_eq!(holes(&made), holes(&flat), "{key}");
        }
    }
}

#[test]
fn list_and_weight_have_the_sheet_and_the_order_of_building_the_bend() {
    for sample in &SAMPLES {
        let flat = parts(&sample.design()).expect("parts");
        let design = bent(&sample.design(), 25.0);
        let made = parts(&design).expect("parts");
        let blank = |made: &Parts| {
            let own = made.blanks.iter().find(|blank| blank.name.kind == Kind::Back);
            own.expect("a back in the list").clone()
        };
        let (one, two) = (blank(&flat), blank(&made));
        assert!(two.finished[1] > one.finished[1], "{two:?}");
        assert!((two.finished[2].to_m() - one.finished[2].to_m()).abs() < 1e-12);
        assert!(made.weight.mass > flat.weight.mass, "{}", sample.key);
        // The back is what is left of the sheet, as thick as it is, but for what its inside and its slanting ends differ.
        let back = part(&made, Kind::Back);
        let cut: f64 = back.openings.iter().map(area).sum();
        let of_sheet = (area(&back.outline) - cut) * back.thick_m();
        let off = two.volume_m3 / of_sheet - 1.0;
        assert!(off.abs() < 0.03, "{}: {off}", sample.key);
        let told = words::told(&made);
        assert!(told.iter().any(|line| line.contains("bent so far")), "{told:?}");
        assert!(words::told(&flat).iter().all(|line| !line.contains("bent so far")));
        let rise = |made: &Parts, design: &Design| {
            let all = steps(design, made);
            let mut own = all.iter().flat_map(|step| &step.checks);
            own.find(|check| check.what.starts_with("Rise of the back"))
                .map(|check| check.size.to_mm())
        };
        assert!((rise(&made, &design).expect("a check") - 25.0).abs() < 1e-6, "{}", sample.key);
        assert_eq!(rise(&flat, &sample.design()), None);
        assert!(html(&building(&design, &made, Paper::A4)).contains("let it dry clamped there"));
    }
}

#[test]
fn a_back_that_cannot_rise_so_far_says_so_and_what_does_not_bend_at_all_is_refused() {
    let design = bent(&SAMPLES[1].design(), 290.0);
    let made = parts(&design).expect("parts");
    let lower = made.findings.iter().find(|finding| matches!(finding, Finding::BackLower { .. }));
    let Some(Finding::BackLower { from, to }) = lower else { panic!("{:?}", made.findings) };
    assert!(from.to_mm() > 289.0 && to.to_mm() < 120.0, "{from:?} {to:?}");
    assert_fits("as far as it can", &made);
    let mut narrow = design;
    narrow.geometry.soundbox.liner_width_mm = 36.0;
    let why = parts(&narrow).err().map(|why| why.to_string());
    assert!(why.as_ref().is_some_and(|why| why.contains("cross")), "{why:?}");
}

#[test]
fn the_template_of_a_bent_back_is_its_sheet_with_its_sound_holes() {
    for sample in &SAMPLES {
        let design = bent(&sample.design(), 30.0);
        let made = parts(&design).expect("parts");
        let back = part(&made, Kind::Back);
        let sheet = template_of(&design, &made, back);
        let of = |kind| sheet.layers.iter().filter(move |layer| layer.kind == kind);
        let count = |kind| of(kind).map(|layer| layer.shapes.len()).sum::<usize>();
        assert_eq!(count(LayerKind::Openings), back.openings.len(), "{}", sample.key);
        assert_eq!(count(LayerKind::Outline), 1, "{}", sample.key);
        let extent = sheet.extent().expect("an extent");
        let [long, wide, _] = back.sizes_m();
        assert!(extent.width_mm() >= 1e3 * long - 1e-6 && extent.height_mm() > 1e3 * wide - 1e-6);
        assert!(sheet.title.ends_with("unrolled"), "{}", sheet.title);
        assert!(sheet.notes.iter().any(|note| note.contains("notches")), "{:?}", sheet.notes);
        assert!(dxf::write(&sheet).is_ok() && svg::write(&sheet).is_ok());
        assert!(pdf::single(&sheet).is_ok(), "{}", sample.key);
        // The brace has the arch on its edge: many corners, and no template of it is flat on both.
        let brace = part(&made, Kind::BackBrace);
        assert!(brace.cells.iter().flat_map(Cell::corners).count() > 20, "{}", sample.key);
    }
}
