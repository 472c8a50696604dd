//! Every part of the samples as a template: files that are written, with all corners, holes and numbers; `scripts/drawn.py`
//! reads the DXF files with ezdxf against the schedule that is written beside them.

use std::fmt::Write as _;
use std::fs;
use std::path::Path;

use serde_json::Value;
use stringloft::design::parts::{Parts, parts};
use stringloft::design::presets::SAMPLES;
use stringloft::engine::parts::{Kind, Part, area};
use stringloft::engine::pitch::Note;
use stringloft::papers::template::bent::template_of;
use stringloft::papers::template::model::{LayerKind, PointMm, Shape, Template};
use stringloft::papers::template::tiling::Tiling;
use stringloft::papers::template::{dxf, jig, overview, part, pdf, svg};
use stringloft::words::{Language, in_language};

use crate::made::{bent, samples};

fn of_kind(template: &Template, kind: LayerKind) -> Vec<&Shape> {
    let own = template.layers.iter().filter(|layer| layer.kind == kind);
    own.flat_map(|layer| &layer.shapes).collect()
}

/// What a reader must find: the area of the outline and of the far edge, openings, and circles with their radius.
fn schedule(part: &Part, template: &Template) -> String {
    let mut out = String::new();
    let _ = writeln!(out, "outline {:?}", 1e6 * area(&part.outline));
    if let Some(far) = &part.far {
        let _ = writeln!(out, "far-edge {:?}", 1e6 * area(far));
    }
    for opening in &part.openings {
        let _ = writeln!(out, "openings {:?}", 1e6 * area(opening));
    }
    for kind in [LayerKind::Pins, LayerKind::Holes, LayerKind::Levers] {
        for shape in of_kind(template, kind) {
            if let Shape::Circle { centre, radius_mm } = shape {
                let (name, x, y) = (kind.name(), centre.x_mm, centre.y_mm);
                let _ = writeln!(out, "{name} {x:?} {y:?} {radius_mm:?}");
            }
        }
    }
    out
}

/// What a reader must find where many outlines stand on one page: the area of each, circles, and the ends of the lines of
/// bores.
fn lines(template: &Template) -> String {
    let mut out = String::new();
    for shape in of_kind(template, LayerKind::Outline) {
        let points: Vec<(f64, f64)> = match shape {
            Shape::Polyline { points, .. } => points.iter().map(|at| (at.x_mm, at.y_mm)).collect(),
            Shape::Bezier { start, curves } => {
                let mut path = kurbo::BezPath::new();
                let point = |at: &PointMm| kurbo::Point::new(at.x_mm, at.y_mm);
                path.move_to(point(start));
                for [one, two, to] in curves {
                    path.curve_to(point(one), point(two), point(to));
                }
                let _ = writeln!(out, "outline {:?}", area(&path));
                continue;
            }
            _ => continue,
        };
        let pairs = points.iter().zip(points.iter().cycle().skip(1));
        let twice: f64 = pairs.map(|(one, two)| one.0 * two.1 - two.0 * one.1).sum();
        let _ = writeln!(out, "outline {:?}", 0.5 * twice.abs());
    }
    for kind in [LayerKind::Pins, LayerKind::Holes, LayerKind::Levers] {
        for shape in of_kind(template, kind) {
            match shape {
                Shape::Circle { centre: PointMm { x_mm, y_mm }, radius_mm } => {
                    let _ = writeln!(out, "{} {x_mm:?} {y_mm:?} {radius_mm:?}", kind.name());
                }
                Shape::Line(from, to) => {
                    let (a, b) = ((from.x_mm, from.y_mm), (to.x_mm, to.y_mm));
                    let _ =
                        writeln!(out, "{} {:?} {:?} {:?} {:?}", kind.name(), a.0, a.1, b.0, b.1);
                }
                _ => {}
            }
        }
    }
    out
}

#[test]
fn every_part_has_its_template_and_ezdxf_read_them_as_they_are() {
    let folder = Path::new(env!("CARGO_TARGET_TMPDIR")).join("parts-drawn");
    fs::create_dir_all(&folder).expect("a folder for what is written");
    let kept = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/parts/drawn.json");
    let kept: Value = fs::read_to_string(&kept)
        .ok()
        .and_then(|text| serde_json::from_str(&text).ok())
        .unwrap_or_default();
    let mut sums = String::new();
    let mut count = 0;
    for (key, made) in samples() {
        for part in part::worth(&made.whole.parts) {
            let template = part::template(part, key);
            let drawn =
                dxf::write(&template).unwrap_or_else(|why| panic!("{key} {}: {why}", part.name));
            let name = format!("{key}-{}", part.name);
            fs::write(folder.join(format!("{name}.dxf")), &drawn).expect("a file can be written");
            fs::write(folder.join(format!("{name}.txt")), schedule(part, &template))
                .expect("a file can be written");
            count += 1;
            let sum = format!("{:08x}", crc32fast::hash(drawn.as_bytes()));
            if kept["files"][&name].as_str() != Some(&sum) {
                let _ = writeln!(sums, "{name}");
            }
            assert!(svg::write(&template).is_ok(), "{name}");
        }
    }
    // The overview, the guides of board and neck, and a bent back with one of its braces.
    for sample in &SAMPLES {
        let (flat, round) = (sample.design(), bent(&sample.design(), 30.0));
        let (made, arched) = (parts(&flat).expect("parts"), parts(&round).expect("parts"));
        let part = |made: &Parts, kind| made.whole.of(kind).next().expect("a part").clone();
        let page = overview::overview(&made.whole.parts, sample.key).expect("an overview");
        let mut all = vec![("overview", page, None)];
        for (name, kind) in [("guides_board", Kind::Board), ("guides_neck", Kind::Neck)] {
            all.push((name, jig::jig(&part(&made, kind), sample.key).expect("a guide"), None));
        }
        for (name, kind) in [("bent_back", Kind::Back), ("bent_brace", Kind::BackBrace)] {
            let own = part(&arched, kind);
            all.push((name, template_of(&round, &arched, &own), Some(own)));
        }
        for (name, template, own) in all {
            let drawn = dxf::write(&template).expect("a file");
            let name = format!("{}-{name}", sample.key);
            let schedule = match own {
                Some(part) => schedule(&part, &template),
                None => lines(&template),
            };
            fs::write(folder.join(format!("{name}.dxf")), &drawn).expect("a file can be written");
            fs::write(folder.join(format!("{name}.txt")), schedule).expect("a file can be written");
            count += 1;
            let sum = format!("{:08x}", crc32fast::hash(drawn.as_bytes()));
            if kept["files"][&name].as_str() != Some(&sum) {
                let _ = writeln!(sums, "{name}");
            }
        }
    }
    let run = format!("run tests/parts/scripts/drawn.py on {}:\n{sums}", folder.display());
    assert!(sums.is_empty(), "{run}");
    assert_eq!((kept["faults"].as_u64(), kept["read"].as_u64()), (Some(0), Some(count)), "{run}");
}

#[test]
fn the_board_shows_every_string_hole_with_its_number_and_the_back_its_sound_holes() {
    for (key, made) in samples() {
        let template = |kind| {
            let part = made.whole.of(kind).next().expect("a part");
            part::template(part, key)
        };
        let strings = made.band.strings.len();
        let board = template(Kind::Board);
        let circles = |shape: &&&Shape| matches!(shape, Shape::Circle { .. });
        assert_eq!(of_kind(&board, LayerKind::Holes).iter().filter(circles).count(), strings);
        let numbers = of_kind(&board, LayerKind::Text).into_iter().filter(
            |shape| matches!(shape, Shape::Text { text, .. } if text.parse::<usize>().is_ok()),
        );
        assert_eq!(numbers.count(), strings, "{key}");
        let slanting = board.notes.iter().any(|note| note.contains("° to the face"));
        assert!(slanting, "{key}: {:?}", board.notes);
        let back = template(Kind::Back);
        let holes = made.whole.of(Kind::Back).map(|part| part.openings.len()).sum::<usize>();
        assert_eq!(of_kind(&back, LayerKind::Openings).len(), holes, "{key}");
        let neck = template(Kind::Neck);
        let pins = of_kind(&neck, LayerKind::Pins);
        assert_eq!(pins.iter().filter(circles).count(), 2 * strings, "{key}");
        assert!(
            neck.notes.iter().any(|note| note.contains("tuning pin: drill")),
            "{:?}",
            neck.notes
        );
    }
}

#[test]
fn a_template_prints_on_sheets_and_speaks_every_language() {
    let (key, made) = samples().nth(1).expect("the travel harp");
    let side = made.whole.of(Kind::Side).next().expect("a side");
    let printed = pdf::tiled(&part::template(side, key), Tiling::default()).expect("a PDF");
    assert!(printed.starts_with(b"%PDF") && printed.len() > 5_000);
    let says = |language| in_language(language, || part::template(side, key).title);
    assert_eq!(says(Language::English), "travel-26: side, strings’ side");
    assert_eq!(says(Language::German), "travel-26: Zarge, Saitenseite");
    assert_eq!(says(Language::French), "travel-26 : éclisse, côté cordes");
}

/// Every pin and every string hole has its number and its note beside it, where the design has them.
#[test]
fn pins_and_holes_have_number_and_note() {
    for sample in &SAMPLES {
        let design = sample.design();
        let made = parts(&design).expect("parts");
        for (kind, holes) in [(Kind::Board, 1), (Kind::Neck, 2)] {
            let own = made.whole.of(kind).next().expect("a part");
            let template = part::template_with(own, "", &made.notes);
            let texts = of_kind(&template, LayerKind::Text);
            for (at, string) in design.strings.iter().enumerate() {
                let note: Note = string.note.parse().expect("a note");
                let wanted = format!("{} {}", at + 1, note.printed());
                let is_it =
                    |shape: &&&Shape| matches!(shape, Shape::Text { text, .. } if *text == wanted);
                assert_eq!(texts.iter().filter(is_it).count(), holes, "{}: {wanted}", sample.key);
            }
        }
    }
}

/// The side of a bore rises over its run by the tangent of the angle between strings and soundboard; a stop lies behind the
/// block by the depth of the hole.
#[test]
fn drill_guides_have_the_angle_of_the_strings_and_the_depth_of_the_pins() {
    for sample in &SAMPLES {
        let design = sample.design();
        let made = parts(&design).expect("parts");
        let part = |kind| made.whole.of(kind).next().expect("a part");
        let board = jig::jig(part(Kind::Board), &design.title).expect("a guide");
        let lines = of_kind(&board, LayerKind::Holes);
        let Shape::Line(from, to) = lines[0] else { panic!("{:?}", lines[0]) };
        let angle = (to.y_mm - from.y_mm).atan2(to.x_mm - from.x_mm).to_degrees();
        assert!((angle - design.geometry.board_angle_deg).abs() < 1e-6, "{}: {angle}", sample.key);
        assert!((to.y_mm - from.y_mm - jig::BLOCK_MM).abs() < 1e-9);
        let neck = jig::guides(part(Kind::Neck));
        assert!(neck.iter().all(|guide| guide.wide_mm > 0.0), "{}", sample.key);
        let depth = design.geometry.drills.bridge_depth_mm;
        if depth > 0.0 {
            let stop = neck.iter().find_map(|guide| guide.stop_mm).expect("a stop");
            assert!((stop - jig::BLOCK_MM - depth).abs() < 1e-9, "{}: {stop}", sample.key);
        }
        for kind in [Kind::Board, Kind::Neck] {
            let template = jig::jig(part(kind), &design.title).expect("a guide");
            assert!(dxf::write(&template).is_ok() && svg::write(&template).is_ok());
        }
        assert_eq!(jig::jig(part(Kind::FootBlock), ""), None);
    }
}

/// Every part once, on one page that a sheet of A4 or Letter shows, with its name; and one file for the printer.
#[test]
fn all_parts_stand_small_on_one_page_before_their_templates() {
    for sample in &SAMPLES {
        let design = sample.design();
        for language in [Language::English, Language::German, Language::French] {
            in_language(language, || {
                let made = parts(&design).expect("parts");
                let all = &made.whole.parts;
                let page = overview::overview(all, &design.title).expect("an overview");
                let extent = page.extent().expect("a drawing");
                assert!(extent.width_mm() < 190.0, "{}: {extent:?}", sample.key);
                assert!(extent.height_mm() < 235.0, "{}: {extent:?}", sample.key);
                let outlines = of_kind(&page, LayerKind::Outline);
                let full = part::worth(all).map(|part| part::template(part, ""));
                let count: usize = full.map(|full| of_kind(&full, LayerKind::Outline).len()).sum();
                assert_eq!(outlines.len(), count, "{}", sample.key);
                assert!(pdf::single(&page).is_ok() && svg::write(&page).is_ok());
            });
        }
        let made = parts(&design).expect("parts");
        let page = overview::overview(&made.whole.parts, &design.title).expect("an overview");
        let some: Vec<Template> =
            part::worth(&made.whole.parts).take(2).map(|part| part::template(part, "")).collect();
        let file = pdf::together(&page, &some, Tiling::default()).expect("a file");
        let alone: usize = some
            .iter()
            .map(|template| pages(&pdf::tiled(template, Tiling::default()).expect("a file")))
            .sum();
        assert_eq!(pages(&file), alone + 1, "{}", sample.key);
        fs::write(
            Path::new(env!("CARGO_TARGET_TMPDIR")).join(format!("{}-all.pdf", sample.key)),
            file,
        )
        .expect("a file can be written");
    }
}

/// How many pages a file has.
fn pages(file: &[u8]) -> usize {
    let text = String::from_utf8_lossy(file);
    text.matches("/Type /Page").count() - text.matches("/Type /Pages").count()
}
