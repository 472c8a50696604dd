//! DXF, SVG and CSV hold the points of the drawing, and agree with one another.

use std::time::Instant;

use stringloft::papers::template::model::{
    FLATNESS_MM, Layer, LayerKind, PointMm, Shape, Template, flattened,
};
use stringloft::papers::template::tiling::Tiling;
use stringloft::papers::template::{dxf, pdf, schedule, svg};

use crate::readers::{attribute, csv, dxf_circles, svg_circles, tags};
use crate::sample;

/// Half of the last digit of a schedule, a thousandth of a millimetre.
const HALF_DIGIT_MM: f64 = 0.000_500_1;

#[test]
fn every_file_holds_the_same_points() {
    let template = sample::template();
    let dxf = dxf_circles(&dxf::write(&template).expect("a DXF"));
    let svg = svg_circles(&svg::write(&template).expect("an SVG"));
    // Two pins, a hole, one circle and two for discs for each string, and the origin.
    assert_eq!((dxf.len(), svg.len()), (6 * sample::STRINGS + 1, 6 * sample::STRINGS + 1));
    for (one, other) in dxf.iter().zip(&svg) {
        assert_eq!(one.layer, other.layer);
        for (a, b) in
            [(one.x_mm, other.x_mm), (one.y_mm, other.y_mm), (one.radius_mm, other.radius_mm)]
        {
            assert!((a - b).abs() < 0.001, "{one:?} and {other:?}");
        }
    }
    let table = schedule::write(&sample::schedule());
    let rows = csv(&table);
    assert_eq!(rows[0], schedule::COLUMNS);
    assert_eq!(rows.len(), 2 + 6 * sample::STRINGS);
    let number = |text: &str| text.parse::<f64>().expect("a number");
    let mut drilled = 0;
    for row in rows.iter().skip(2).filter(|row| row[2] != "lever") {
        let (x_mm, y_mm, drill_mm) = (number(row[3]), number(row[4]), number(row[7]));
        assert!((number(row[5]) * 25.4 - x_mm).abs() < 0.002, "{row:?}");
        assert!((number(row[6]) * 25.4 - y_mm).abs() < 0.002, "{row:?}");
        let found = dxf.iter().find(|circle| {
            (circle.x_mm - x_mm).abs() < HALF_DIGIT_MM
                && (circle.y_mm - y_mm).abs() < HALF_DIGIT_MM
                && (2.0 * circle.radius_mm - drill_mm).abs() < HALF_DIGIT_MM
        });
        assert!(found.is_some(), "{row:?} is not in the drawing");
        drilled += 1;
    }
    assert_eq!(drilled, 5 * sample::STRINGS);
}

#[test]
fn a_dxf_is_plain_ascii_in_pairs_of_lines() {
    let dxf = dxf::write(&sample::template()).expect("a DXF");
    assert!(dxf.is_ascii());
    assert_eq!(dxf.matches('\n').count(), dxf.matches("\r\n").count());
    let tags = tags(&dxf);
    assert_eq!(tags.last(), Some(&(0, "EOF")));
    let units = tags.iter().position(|tag| *tag == (9, "$INSUNITS")).expect("units are given");
    assert_eq!(tags[units + 1].1.trim(), "4");
    // Nothing typed is a command.
    let texts: Vec<&str> = tags.iter().filter(|tag| tag.0 == 1).map(|tag| tag.1).collect();
    assert!(texts.contains(&"100 % %d of 'A /U+0041"), "{texts:?}");
    assert!(texts.contains(&"1250 mm dia 5.0 +/-0.1"), "{texts:?}");
}

#[test]
fn an_svg_opens_at_full_size() {
    let svg = svg::write(&sample::template()).expect("an SVG");
    let root = svg.lines().nth(1).expect("a root");
    let sizes = [attribute(root, "width"), attribute(root, "height")];
    let view = attribute(root, "viewBox").expect("a view").split(' ').collect::<Vec<_>>();
    assert_eq!(sizes.map(|size| size.expect("a size").trim_end_matches("mm")), [view[2], view[3]]);
    assert!(svg.contains("&amp; &lt;neck&gt;"));
    for outside in ["href", "url(", "@import", "<script", "style="] {
        assert!(!svg.contains(outside), "{outside}");
    }
    // All layers but the four that only parts have.
    let drawn = sample::template().drawn();
    assert_eq!(drawn.len(), LayerKind::ALL.len() - 4);
    for layer in drawn {
        let group = format!("<g id=\"{}\"", layer.kind.name());
        assert_eq!(svg.matches(&group).count(), 1, "{group}");
    }
}

/// The tangent curve of a quarter circle, `4/3 (√2 - 1)`, is off the circle by at most 2.7 parts in
/// 10 000: any textbook of computer graphics, from memory.
#[test]
fn a_curve_of_lines_keeps_to_the_curve() {
    let radius_mm = 500.0;
    let handle_mm = radius_mm * 4.0 / 3.0 * (2.0_f64.sqrt() - 1.0);
    let start = PointMm::new(radius_mm, 0.0);
    let quarter = [
        PointMm::new(radius_mm, handle_mm),
        PointMm::new(handle_mm, radius_mm),
        PointMm::new(0.0, radius_mm),
    ];
    let points = flattened(start, &[quarter]);
    for ends in points.windows(2) {
        let middle =
            PointMm::new(0.5 * (ends[0].x_mm + ends[1].x_mm), 0.5 * (ends[0].y_mm + ends[1].y_mm));
        let off_mm = middle.x_mm.hypot(middle.y_mm) - radius_mm;
        assert!(off_mm > -FLATNESS_MM && off_mm < 0.000_28 * radius_mm, "{off_mm}");
    }
    assert_eq!(points.last(), Some(&quarter[2]));
}

/// What a hostile design might bring: every limit is met at once, and each answer is a file or a sentence.
#[test]
fn the_largest_drawings_are_written_or_refused_in_a_moment() {
    let line = |step: usize| {
        let y_mm = if step.is_multiple_of(2) { -9_990.0 } else { 9_990.0 };
        PointMm::new(0.1 * step as f64, y_mm)
    };
    let shape = |count| Shape::Polyline { points: (0..count).map(line).collect(), closed: false };
    let wide = PointMm::new(20_000.0, 20_000.0);
    let low = PointMm::new(-20_000.0, -20_000.0);
    let curve = |count| Shape::Bezier { start: low, curves: vec![[wide, low, wide]; count] };
    let begun = Instant::now();
    for shapes in [vec![shape(99_000)], vec![curve(10)], vec![curve(30_000)]] {
        let layers = vec![Layer { kind: LayerKind::Outline, shapes }];
        let template = Template { layers, ..sample::template() };
        for error in [pdf::tiled(&template, Tiling::default()).err(), pdf::single(&template).err()]
        {
            let words = error.expect("far too large for paper").to_string();
            assert!(words.contains("must"), "{words}");
        }
        let written = (dxf::write(&template), svg::write(&template));
        assert_eq!(written.0.is_ok(), written.1.is_ok());
    }
    // Without optimisation, on a slow machine; a freeze would be minutes.
    assert!(begun.elapsed().as_secs() < 30, "{:?}", begun.elapsed());
}
