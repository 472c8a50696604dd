//! A bent back, unrolled: the sheet is as long along its ends and as large as the surface it becomes. `scripts/bent.py` worked
//! both out in space with scipy, and the area of the sheet with shapely.

use std::fmt::Write as _;
use std::fs;
use std::path::Path;

use serde_json::Value;
use stringloft::design::parts::parts;
use stringloft::design::parts::sizes::PartSize;
use stringloft::design::presets::SAMPLES;
use stringloft::engine::parts::Kind;
use stringloft::engine::parts::bent::unrolled;
use stringloft::papers::template::bent::bent;
use stringloft::papers::template::model::{LayerKind, Shape};
use stringloft::papers::template::{dxf, pdf, svg};

#[test]
fn scipy_finds_the_ends_and_the_surface_as_large_as_the_sheet() {
    let folder = Path::new(env!("CARGO_TARGET_TMPDIR")).join("parts-bent");
    fs::create_dir_all(&folder).expect("a folder for what is written");
    let kept = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/parts/bent.json");
    let kept: Value = fs::read_to_string(&kept)
        .ok()
        .and_then(|text| serde_json::from_str(&text).ok())
        .unwrap_or_default();
    let mut told = String::new();
    for sample in &SAMPLES {
        let made = parts(&sample.design()).expect("parts");
        let back = made.whole.of(Kind::Back).next().expect("a back");
        let at: Vec<[f64; 3]> = back.cells[0].near.iter().map(|at| back.face.own(*at)).collect();
        let (low, high) = (0.5 * (at[0][1] - at[3][1]).abs(), 0.5 * (at[1][1] - at[2][1]).abs());
        let long = at[1][0] - at[0][0];
        for rise in [0.012, 0.040] {
            let sheet = unrolled(back, rise).expect("a sheet");
            let outline: Vec<String> =
                sheet.outline.iter().map(|(x, y)| format!("[{x:.9},{y:.9}]")).collect();
            let text = format!(
                "{{\"low\":{low:.9},\"high\":{high:.9},\"long\":{long:.9},\"rise\":{rise:?},\"outline\":[{}]}}",
                outline.join(",")
            );
            let name = format!("{}-{:.0}", sample.key, 1e3 * rise);
            fs::write(folder.join(format!("{name}.json")), &text).expect("a file can be written");
            let sum = format!("{:08x}", crc32fast::hash(text.as_bytes()));
            let found = &kept[&name];
            if found["sum"].as_str() != Some(&sum) {
                let _ = writeln!(told, "{name}");
            }
            for what in ["area_off", "low_end_off", "high_end_off"] {
                let off = found[what].as_f64().unwrap_or(f64::NAN);
                // The sheet has 48 straight steps along each end.
                assert!(off < 1e-5 || !told.is_empty(), "{name}, {what}: {off}");
            }
        }
    }
    assert!(told.is_empty(), "run tests/parts/scripts/bent.py on {}:\n{told}", folder.display());
}

#[test]
fn a_bent_back_has_its_sheet_with_its_sound_holes_and_a_flat_one_has_none() {
    for sample in &SAMPLES {
        let flat = sample.design();
        let design = PartSize::BackRise.edit(&flat, Some(30.0)).apply(&flat);
        let made = parts(&design).expect("parts");
        assert_eq!(bent(&flat, &made), None, "{}", sample.key);
        let sheet = bent(&design, &made).expect("a sheet");
        let of = |kind| sheet.layers.iter().filter(move |layer| layer.kind == kind);
        let count = |kind| of(kind).map(|layer| layer.shapes.len()).sum::<usize>();
        let back = made.whole.of(Kind::Back).next().expect("a back");
        assert_eq!(count(LayerKind::Openings), back.openings.len(), "{}", sample.key);
        // The sheet is wider than the chord it stands over, by less than a tenth.
        let Some(Shape::Polyline { points, closed: true }) =
            of(LayerKind::Outline).flat_map(|layer| &layer.shapes).next()
        else {
            panic!("{}: no outline", sample.key)
        };
        let wide = points.iter().map(|at| at.y_mm.abs()).fold(0.0, f64::max);
        let at: Vec<[f64; 3]> = back.cells[0].near.iter().map(|at| back.face.own(*at)).collect();
        let half = 500.0 * (at[0][1] - at[3][1]).abs();
        assert!(wide > half && wide < 1.1 * half, "{}: {wide} {half}", sample.key);
        assert!(dxf::write(&sheet).is_ok() && svg::write(&sheet).is_ok());
        assert!(pdf::single(&sheet).is_ok(), "{}", sample.key);
    }
}
