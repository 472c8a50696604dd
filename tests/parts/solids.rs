//! Volumes and middles against trimesh, a general library of solids: `scripts/solids.py` cut every part of the samples with
//! its booleans from the corners, holes and openings that are written here, and noted what it found.

use std::fmt::Write as _;
use std::fs;
use std::path::Path;

use serde_json::Value;
use stringloft::engine::parts::{Cell, Part, Spot, flat};

use stringloft::design::parts::{Parts, parts};
use stringloft::design::presets::SAMPLES;

use crate::made::{bent, samples};

/// A solid in a program that cuts circles as polygons of many corners is smaller by what these lack.
const ROOM: f64 = 2e-4;
/// Holes in a bent back are narrower inside, here by one radius for each.
const BENT_ROOM: f64 = 4e-4;

fn spot(at: Spot) -> String {
    format!("[{:?},{:?},{:?}]", at[0], at[1], at[2])
}

fn list<T>(all: impl IntoIterator<Item = T>, one: impl Fn(T) -> String) -> String {
    let all: Vec<String> = all.into_iter().map(one).collect();
    format!("[{}]", all.join(","))
}

fn cell(cell: &Cell) -> String {
    let face = |face: &[Spot]| list(face, |at| spot(*at));
    format!("{{\"near\":{},\"far\":{}}}", face(&cell.near), face(&cell.far))
}

/// Corners, holes and openings of a part; openings as corners on its near face.
fn written(part: &Part) -> String {
    let holes = list(&part.holes, |hole| {
        format!(
            "{{\"at\":{},\"way\":{},\"radius\":{:?},\"deep\":{:?},\"through\":{}}}",
            spot(hole.at),
            spot(hole.way),
            0.5 * hole.diameter.to_m(),
            hole.deep.to_m(),
            hole.through
        )
    });
    let openings = list(&part.openings, |path| {
        let deep = |deep_m: f64| list(flat(path), |at| spot(part.place(at, deep_m)));
        match &part.sheet {
            // Square to the sheet, so that its walls fan out.
            Some(sheet) => {
                format!("{{\"near\":{},\"far\":{}}}", deep(-0.02), deep(sheet.thick_m + 0.02))
            }
            None => deep(0.0),
        }
    });
    format!(
        "{{\"name\":\"{}\",\"into\":{},\"cells\":{},\"cuts\":{},\"holes\":{holes},\"openings\":{openings}}}",
        part.name,
        spot(part.face.w),
        list(&part.cells, cell),
        list(&part.cuts, cell),
    )
}

#[test]
fn volumes_and_middles_are_those_that_a_library_of_solids_finds() {
    let folder = Path::new(env!("CARGO_TARGET_TMPDIR")).join("parts");
    fs::create_dir_all(&folder).expect("a folder for what is written");
    let kept = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/parts/solids.json");
    let kept: Value = fs::read_to_string(&kept)
        .ok()
        .and_then(|text| serde_json::from_str(&text).ok())
        .unwrap_or_default();
    let (mut worst, mut count) = (0.0_f64, 0);
    let mut told = String::new();
    // As they are, and with a back that is bent.
    let mut all: Vec<(String, Parts)> =
        samples().map(|(key, made)| (key.to_owned(), made)).collect();
    all.extend(SAMPLES.iter().map(|sample| {
        let made = parts(&bent(&sample.design(), 30.0)).expect("parts");
        (format!("{}-bent", sample.key), made)
    }));
    for (key, made) in &all {
        let text = list(&made.whole.parts, written);
        fs::write(folder.join(format!("{key}.json")), text).expect("a file can be written");
    }
    for (key, made) in &all {
        for part in &made.whole.parts {
            let name = part.name.to_string();
            let found = &kept[key][&name];
            let number = |at: &Value| at.as_f64().unwrap_or(f64::NAN);
            let (volume, middle) = part.volume();
            let off = (volume / number(&found["volume_m3"]) - 1.0).abs();
            let away = (0..3).map(|axis| (middle[axis] - number(&found["middle_m"][axis])).abs());
            let away = away.fold(0.0, f64::max);
            worst = worst.max(off);
            count += 1;
            let room = if part.sheet.is_some() { BENT_ROOM } else { ROOM };
            if !(off < room && away < 1e-4) {
                let _ = writeln!(told, "{key} {name}: volume off by {off:e}, middle by {away} m");
            }
        }
        if kept[key]["clashes"] != 0 {
            let _ = writeln!(told, "{key}: {} pairs lie in each other", kept[key]["clashes"]);
        }
    }
    assert!(told.is_empty(), "run tests/parts/scripts/solids.py on {}:\n{told}", folder.display());
    assert!(count == 227 && worst > 0.0, "{count} parts, {worst}");
}
