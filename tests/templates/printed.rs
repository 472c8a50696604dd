//! What comes out of the printer, measured in pictures of the pages. They are made by poppler; without it
//! these tests say so and pass, but not where everything is checked (the variable `CI`).

use std::path::Path;
use std::process::Command;

use image::GrayImage;
use stringloft::papers::template::model::{Layer, LayerKind, PointMm, Shape, Template};
use stringloft::papers::template::pdf;
use stringloft::papers::template::tiling::{
    FOOT_MM, MARGIN_MM, MOST_SHEETS, Plan, SIDE_MM, SheetPlace, Tiling,
};

use crate::{audited, sample};

const DPI: f64 = 300.0;
/// A pixel and a half: a line falls between pixels at either end.
const NEAR_MM: f64 = 1.5 * 25.4 / DPI;

fn has_poppler() -> bool {
    let found = Command::new("pdftoppm").arg("-v").output().is_ok();
    if !found {
        assert!(std::env::var_os("CI").is_none(), "poppler must be installed (scripts/test does)");
        eprintln!("skipped: pdftoppm is not installed");
    }
    found
}

fn run(command: &mut Command) -> String {
    let output = command.output().unwrap_or_else(|e| panic!("{command:?}: {e}"));
    assert!(output.status.success(), "{command:?}");
    String::from_utf8_lossy(&output.stdout).into_owned()
}

/// The picture of a page, the first being 0, in shades of grey.
fn page(path: &Path, number: usize) -> GrayImage {
    let number = (number + 1).to_string();
    let dpi = DPI.to_string();
    let mut command = Command::new("pdftoppm");
    command.args(["-gray", "-r", &dpi, "-f", &number, "-l", &number]).arg(path);
    let output = command.output().unwrap_or_else(|e| panic!("{command:?}: {e}"));
    // `P5`, width, height and the lightest shade, each followed by a blank; then a byte for each pixel.
    let mut head = output.stdout.splitn(4, |byte| byte.is_ascii_whitespace());
    assert_eq!(head.next(), Some(&b"P5"[..]), "{command:?}");
    let mut number = || {
        let text = std::str::from_utf8(head.next().expect("a number")).expect("ASCII");
        text.parse::<u32>().expect("a number")
    };
    let (wide, high) = (number(), number());
    let pixels = head.next().expect("pixels").strip_prefix(b"255\n").expect("256 shades");
    GrayImage::from_raw(wide, high, pixels.to_vec()).expect("a byte for each pixel")
}

fn count_pages(path: &Path) -> usize {
    let output = run(Command::new("pdfinfo").arg(path));
    let line = output.lines().find_map(|line| line.strip_prefix("Pages:")).expect("a count");
    line.trim().parse().expect("a number")
}

/// Places of dark ink along a line of the page, in millimetres from the left or from the bottom; the
/// middle of each stretch. The line lies `across_mm` from the bottom or from the left.
fn ink(page: &GrayImage, level: bool, across_mm: f64, range_mm: (f64, f64)) -> Vec<f64> {
    let px = |mm: f64| mm * DPI / 25.4;
    let high = f64::from(page.height());
    let is_dark = |along_mm: f64| {
        let (x, y) = if level { (along_mm, across_mm) } else { (across_mm, along_mm) };
        let (x, y) = (px(x).floor(), (high - px(y)).floor());
        // The casts are of pixels inside a page.
        #[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "on the page")]
        let (x, y) = (x as u32, y as u32);
        page.get_pixel_checked(x, y).is_some_and(|shade| shade.0[0] < 160)
    };
    let step_mm = 0.25 * 25.4 / DPI;
    let mut found = Vec::new();
    let mut began = None;
    let mut at_mm = range_mm.0;
    while at_mm < range_mm.1 {
        match (is_dark(at_mm), began) {
            (true, None) => began = Some(at_mm),
            (false, Some(from_mm)) => {
                found.push(0.5 * (from_mm + at_mm - step_mm));
                began = None;
            }
            _ => {}
        }
        at_mm += step_mm;
    }
    found
}

#[test]
fn both_bars_of_a_page_are_a_hundred_millimetres() {
    if !has_poppler() {
        return;
    }
    for name in ["a4.pdf", "letter.pdf"] {
        let path = audited::file(name);
        // All sheets are written by the same lines; every page has its words checked below.
        for number in [0, 1, count_pages(&path) - 1] {
            let page = &page(&path, number);
            let wide_mm = f64::from(page.width()) * 25.4 / DPI;
            // Only the end ticks reach 3.2 mm above the level bar, and 2 mm to the left of the upright one.
            let strip = (wide_mm - MARGIN_MM - 103.0, wide_mm - MARGIN_MM - 0.2);
            let level = ink(page, true, MARGIN_MM + 4.8 + 3.2, strip);
            let ends = (MARGIN_MM + FOOT_MM + 1.0, MARGIN_MM + FOOT_MM + 110.0);
            let upright = ink(page, false, MARGIN_MM + 2.5 - 2.0, ends);
            for bar in [level, upright] {
                let [from_mm, to_mm] = bar[..] else { panic!("{name} {number}: {bar:?}") };
                let long_mm = to_mm - from_mm;
                assert!((long_mm - 100.0).abs() < 0.2, "{name} {number}: {long_mm} mm");
            }
        }
    }
}

/// Two lines that stand in the strips which sheets share must lie on both sheets where the drawing has
/// them.
#[test]
fn neighbours_print_the_same_point_at_its_place() {
    if !has_poppler() {
        return;
    }
    let corner = |x: f64, y: f64| PointMm::new(x, y);
    let frame = vec![Shape::Polyline {
        points: vec![
            corner(0.0, 0.0),
            corner(300.0, 0.0),
            corner(300.0, 400.0),
            corner(0.0, 400.0),
        ],
        closed: true,
    }];
    let mut template = Template {
        layers: vec![Layer { kind: LayerKind::Outline, shapes: frame }],
        ..Template::default()
    };
    let plan = Plan::of(&template, Tiling::default()).expect("a plan");
    assert_eq!((plan.rows, plan.columns), (2, 2));
    let place = |row, column| SheetPlace { row, column };
    let x_mm = plan.frame(place(0, 1)).left_mm + 6.0;
    let y_mm = plan.frame(place(0, 0)).bottom_mm + 6.0;
    template.layers.push(Layer {
        kind: LayerKind::Marks,
        shapes: vec![
            Shape::Line(corner(x_mm, 1.0), corner(x_mm, 399.0)),
            Shape::Line(corner(1.0, y_mm), corner(299.0, y_mm)),
        ],
    });
    let path = audited::file("a4.pdf").with_extension("joined.pdf");
    std::fs::write(&path, pdf::tiled(&template, Tiling::default()).expect("a PDF"))
        .expect("a file can be written");
    let plan = Plan::of(&template, Tiling::default()).expect("a plan");
    let sheets: Vec<SheetPlace> = plan.sheets().collect();
    for (index, place) in sheets.iter().enumerate() {
        let page = &page(&path, index + 1);
        let shown = plan.frame(*place);
        let (left_mm, bottom_mm) = (MARGIN_MM + SIDE_MM, MARGIN_MM + FOOT_MM);
        let on_page =
            |x: f64, y: f64| (x - shown.left_mm + left_mm, y - shown.bottom_mm + bottom_mm);
        let (x_page, y_page) = on_page(x_mm, y_mm);
        // Away from marks and words: at a third of the frame.
        let along_y = bottom_mm + 0.36 * plan.frame_mm.1;
        let along_x = left_mm + 0.36 * plan.frame_mm.0;
        let level = ink(page, true, along_y, (x_page - 2.0, x_page + 2.0));
        let upright = ink(page, false, along_x, (y_page - 2.0, y_page + 2.0));
        for (found, mm_said) in [(level, x_page), (upright, y_page)] {
            let near = found.iter().any(|mm| (mm - mm_said).abs() < NEAR_MM);
            assert!(near, "{}: {found:?}, the drawing says {mm_said}", place.label());
        }
    }
}

#[test]
fn the_first_page_names_every_sheet_and_the_cautions() {
    if !has_poppler() {
        return;
    }
    let path = audited::file("a4.pdf");
    let words =
        run(Command::new("pdftotext").args(["-layout", "-enc", "UTF-8"]).arg(&path).arg("-"));
    let pages: Vec<&str> = words.split('\u{c}').collect();
    let plan = Plan::of(&sample::template(), Tiling::default()).expect("a plan");
    assert!(pages[0].contains("Hárfa “Übung” of 36 strings & <neck>"), "{}", pages[0]);
    assert!(pages[0].contains("Before you cut") && pages[0].contains("eye protection"));
    for (index, place) in plan.sheets().enumerate() {
        assert!(pages[0].contains(&format!("{} ", place.label())), "{}", place.label());
        let page = pages[index + 1];
        for words in ["100 %", "100 mm", &place.label(), &format!("sheet {} of", index + 1)] {
            assert!(page.contains(words), "{words} on {}: {page}", place.label());
        }
    }
}

#[test]
fn every_sheet_of_a_very_large_drawing_is_on_the_list() {
    if !has_poppler() {
        return;
    }
    let line = |step: i32| {
        let y_mm = 250.0 * f64::from(step);
        Shape::Line(PointMm::new(0.0, y_mm), PointMm::new(2_300.0, y_mm))
    };
    let layers = vec![Layer { kind: LayerKind::Board, shapes: (0..12).map(line).collect() }];
    let template = Template { layers, ..Template::default() };
    let plan = Plan::of(&template, Tiling::default()).expect("a plan");
    assert!(plan.count() > 100 && plan.count() <= MOST_SHEETS, "{}", plan.count());
    let path = audited::file("a4.pdf").with_extension("large.pdf");
    std::fs::write(&path, pdf::tiled(&template, Tiling::default()).expect("a PDF"))
        .expect("a file can be written");
    let before = count_pages(&path) - plan.count();
    let output = run(Command::new("pdftotext")
        .args(["-layout", "-l", &before.to_string()])
        .arg(&path)
        .arg("-"));
    for place in plan.sheets() {
        let name = format!("{} ", place.label());
        let listed = output.lines().filter(|line| line.contains("board") && line.contains(&name));
        assert_eq!(listed.count(), 1, "{name}");
    }
}

#[test]
fn pages_have_the_size_of_the_paper_and_ask_for_no_scaling() {
    let template = sample::template();
    let single = Plan::single(&template).expect("a plan").page_mm;
    let sizes =
        [("a4.pdf", (210.0, 297.0)), ("letter.pdf", (215.9, 279.4)), ("single.pdf", single)];
    for (name, (wide_mm, high_mm)) in sizes {
        let path = audited::file(name);
        let bytes = std::fs::read(&path).expect("it is written");
        let asks = b"/PrintScaling /None";
        assert!(bytes.windows(asks.len()).any(|window| window == asks), "{name}");
        if !has_poppler() {
            continue;
        }
        let output = run(Command::new("pdfinfo").args(["-l", "9999"]).arg(&path));
        let lines: Vec<&str> = output
            .lines()
            .filter(|line| line.starts_with("Page ") && line.contains(" size:"))
            .collect();
        assert_eq!(lines.len(), count_pages(&path));
        for line in lines {
            let numbers = line.split_whitespace().filter_map(|word| word.parse::<f64>().ok());
            // The first number is the page's own. poppler prints six digits.
            let mm: Vec<f64> = numbers.skip(1).map(|points| points * 25.4 / 72.0).collect();
            let is = |a: f64, b: f64| (mm[0] - a).abs() < 0.005 && (mm[1] - b).abs() < 0.005;
            assert!(is(wide_mm, high_mm) || is(high_mm, wide_mm), "{name}: {line}");
        }
    }
}
