//! The cutting lists against shapely: `scripts/nested.py` looked at every piece on every board.

use std::fmt::Write as _;
use std::fs;
use std::path::Path;

use serde_json::Value;
use stringloft::design::parts::csv;
use stringloft::design::parts::sizes::PartSize;
use stringloft::design::presets::SAMPLES;

#[test]
fn shapely_finds_no_pieces_that_overlap_or_lie_within_the_kerf() {
    let folder = Path::new(env!("CARGO_TARGET_TMPDIR")).join("parts-nested");
    fs::create_dir_all(&folder).expect("a folder for what is written");
    let kept = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/parts/nested.json");
    let kept: Value = fs::read_to_string(&kept)
        .ok()
        .and_then(|text| serde_json::from_str(&text).ok())
        .unwrap_or_default();
    let mut told = String::new();
    let mut count = 0;
    for sample in &SAMPLES {
        // As usual, and on narrow planks and small sheets with a wide kerf.
        let usual = sample.design();
        let mut narrow = usual.clone();
        for (size, number) in [
            (PartSize::Kerf, 4.5),
            (PartSize::BoardWidth, 140.0),
            (PartSize::BoardLength, 2_000.0),
            (PartSize::SheetWidth, 1_250.0),
        ] {
            narrow = size.edit(&narrow, Some(number)).apply(&narrow);
        }
        for (name, design) in [("usual", usual), ("narrow", narrow)] {
            let list = csv(&design).expect("a list");
            // As the script writes it again.
            let kerf = PartSize::Kerf.of(&design);
            let text = format!("{kerf:?}\n{list}");
            let name = format!("{}-{name}", sample.key);
            fs::write(folder.join(format!("{name}.csv")), &text).expect("a file can be written");
            let sum = format!("{:08x}", crc32fast::hash(text.as_bytes()));
            if kept["files"][&name]["sum"].as_str() != Some(&sum) {
                let _ = writeln!(told, "{name}");
            }
            count += list.split("\n\n").nth(2).map_or(0, |table| table.trim().lines().count() - 1);
        }
    }
    let run = format!("run tests/parts/scripts/nested.py on {}:\n{told}", folder.display());
    assert!(told.is_empty(), "{run}");
    assert_eq!(
        (kept["faults"].as_u64(), kept["pieces"].as_u64()),
        (Some(0), Some(count as u64)),
        "{run}"
    );
}
