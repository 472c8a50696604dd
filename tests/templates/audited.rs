//! The files that general-purpose programs have read: `scripts/audit.py` wrote `audited.json` with what it
//! found in them and the check sums of those that are text. A file that changes must be read by it again.

use std::fmt::Write as _;
use std::fs;
use std::path::{Path, PathBuf};

use serde_json::Value;
use stringloft::papers::template::model::{Shape, Template};
use stringloft::papers::template::tiling::{TilePaper, Tiling};
use stringloft::papers::template::{dxf, pdf, schedule, svg};

use crate::sample;

fn out_dir() -> PathBuf {
    let dir = Path::new(env!("CARGO_TARGET_TMPDIR")).join("templates");
    fs::create_dir_all(&dir).expect("a folder for what is written");
    dir
}

/// Writes the sample in every form, for the script and for looking at.
pub fn written() -> Vec<(&'static str, Vec<u8>)> {
    let template = sample::template();
    let letter = Tiling { paper: TilePaper::Letter, ..Tiling::default() };
    let tiled = |tiling| pdf::tiled(&template, tiling).expect("a PDF");
    vec![
        ("sample.dxf", dxf::write(&template).expect("a DXF").into_bytes()),
        ("sample.svg", svg::write(&template).expect("an SVG").into_bytes()),
        ("sample.csv", schedule::write(&sample::schedule()).into_bytes()),
        ("sample.txt", listed(&template).into_bytes()),
        ("a4.pdf", tiled(Tiling::default())),
        ("letter.pdf", tiled(letter)),
        ("single.pdf", pdf::single(&template).expect("a PDF")),
    ]
}

/// The file of a name, as a path.
pub fn file(name: &str) -> PathBuf {
    let (_, bytes) = written().into_iter().find(|(own, _)| *own == name).expect("it is written");
    // Tests run side by side, so each has its own.
    let unique = format!("{}-{name}", std::thread::current().name().unwrap_or("main"));
    let path = out_dir().join(unique.replace("::", "-"));
    fs::write(&path, bytes).expect("a file can be written");
    path
}

/// The drawing as a plain list: layer, kind, numbers.
fn listed(template: &Template) -> String {
    let mut out = String::new();
    for layer in template.drawn() {
        for shape in &layer.shapes {
            let (kind, numbers) = match shape {
                Shape::Line(..) => ("line", Vec::new()),
                Shape::Polyline { closed: true, .. } => ("polygon", Vec::new()),
                Shape::Polyline { closed: false, .. } => ("polyline", Vec::new()),
                Shape::Bezier { start, curves } => {
                    let points = std::iter::once(start).chain(curves.as_flattened());
                    ("bezier", points.flat_map(|at| [at.x_mm, at.y_mm]).collect())
                }
                Shape::Circle { centre, radius_mm } => {
                    ("circle", vec![centre.x_mm, centre.y_mm, *radius_mm])
                }
                Shape::Cross { centre, arm_mm } => {
                    ("cross", vec![centre.x_mm, centre.y_mm, *arm_mm])
                }
                Shape::Text { at, height_mm, angle_deg, .. } => {
                    ("text", vec![at.x_mm, at.y_mm, *height_mm, *angle_deg])
                }
            };
            let numbers = if numbers.is_empty() {
                shape.corners().iter().flat_map(|at| [at.x_mm, at.y_mm]).collect()
            } else {
                numbers
            };
            let _ = write!(out, "{} {kind}", layer.kind.name());
            numbers.iter().for_each(|number| {
                let _ = write!(out, " {number}");
            });
            out.push('\n');
        }
    }
    out
}

#[test]
fn the_files_are_those_that_were_read_by_other_programs() {
    for (name, bytes) in written() {
        fs::write(out_dir().join(name), bytes).expect("a file can be written");
    }
    let kept = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/templates/audited.json");
    let kept = fs::read_to_string(&kept).expect("the report is kept");
    let kept: Value = serde_json::from_str(&kept).expect("the report is JSON");
    assert_eq!(kept["faults"], 0);
    for (name, bytes) in written().into_iter().filter(|(name, _)| !name.ends_with(".pdf")) {
        let sum = format!("{:08x}", crc32fast::hash(&bytes));
        let written = kept["files"][name].as_str();
        assert_eq!(
            written,
            Some(sum.as_str()),
            "{name} has changed: run tests/templates/scripts/audit.py on {}",
            out_dir().display()
        );
    }
}
