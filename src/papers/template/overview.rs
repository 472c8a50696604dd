//! All templates of a harp on one page, small: what there is to print, and how large each is.

use super::model::{
    Anchor, Extent, Layer, LayerKind, PointMm, Shape, Template, TemplateError, type_pt,
};
use super::part::{named, template, worth};
use crate::design::display::decimals;
use crate::engine::order::sort;
use crate::engine::parts::Part;
use crate::papers::measure::wrap;
use crate::words::building as say;

/// How many times smaller the parts may be drawn; the first at which all find room.
const SCALES: [f64; 8] = [2.0, 3.0, 4.0, 5.0, 8.0, 10.0, 15.0, 20.0];
/// The page between its margins: no wider and no higher than a sheet of A4 or Letter shows.
const PAGE_MM: (f64, f64) = (180.0, 230.0);
/// Between two parts, and the height of the letters.
const APART_MM: f64 = 6.0;
const LETTER_MM: f64 = 1.8;
/// A part takes at least so much, for its name.
const LEAST_MM: f64 = 26.0;
/// Arms of the cross at a hole.
const ARM_MM: f64 = 0.6;

/// A part, small, with its words.
struct Small {
    layers: Vec<Layer>,
    words: Vec<String>,
    wide_mm: f64,
    high_mm: f64,
}

/// All parts that are worth a template, side by side; `harp` is the title of the design.
///
/// # Errors
///
/// When a part cannot be drawn.
pub fn overview(parts: &[Part], harp: &str) -> Result<Template, TemplateError> {
    let mut out = None;
    for scale in SCALES {
        let all = worth(parts).map(|part| small(part, harp, scale));
        let mut all = all.collect::<Result<Vec<Small>, TemplateError>>()?;
        // The highest first, as books stand on shelves.
        sort(&mut all, |one, other| one.high_mm < other.high_mm);
        let (layers, high_mm) = laid(&all);
        let title = say::overview(&harp, &decimals(scale, 0));
        let notes = vec![say::OVERVIEW_NOTE.into()];
        let origin = crate::words::parts::CORNER.into();
        out = Some(Template { title, notes, origin, layers });
        if high_mm <= PAGE_MM.1 {
            break;
        }
    }
    out.ok_or(TemplateError::Empty)
}

/// Row by row from the top; gives how high all rows are.
fn laid(all: &[Small]) -> (Vec<Layer>, f64) {
    let mut layers = Vec::new();
    let (mut x_mm, mut y_mm, mut row_mm) = (0.0, 0.0, 0.0_f64);
    for small in all {
        if x_mm > 0.0 && x_mm + small.wide_mm > PAGE_MM.0 {
            (x_mm, y_mm, row_mm) = (0.0, y_mm - row_mm - APART_MM, 0.0);
        }
        let words_mm = 2.0 * LETTER_MM * small.words.len() as f64;
        for layer in &small.layers {
            let move_to =
                |at: &PointMm| PointMm::new(at.x_mm + x_mm, at.y_mm + y_mm - small.high_mm);
            let shapes = layer.shapes.iter().map(|shape| moved(shape, &move_to, 1.0)).collect();
            layers.push(Layer { kind: layer.kind, shapes });
        }
        let text = small.words.iter().enumerate().map(|(line, words)| Shape::Text {
            at: PointMm::new(x_mm, y_mm - small.high_mm - 2.0 * LETTER_MM * (line as f64 + 1.0)),
            height_mm: LETTER_MM,
            text: words.clone(),
            angle_deg: 0.0,
            anchor: Anchor::Start,
        });
        layers.push(Layer { kind: LayerKind::Text, shapes: text.collect() });
        row_mm = row_mm.max(small.high_mm + words_mm);
        x_mm += small.wide_mm + APART_MM;
    }
    (layers, row_mm - y_mm)
}

/// A part without its words, as its long side lies, with its name and its sizes.
fn small(part: &Part, harp: &str, scale: f64) -> Result<Small, TemplateError> {
    let full = template(part, harp);
    let drawn = |layer: &&Layer| !matches!(layer.kind, LayerKind::Text);
    let layers: Vec<Layer> = full.layers.iter().filter(drawn).cloned().collect();
    let bare = Template { layers, ..full };
    let Extent { left_mm, bottom_mm, .. } = bare.extent()?;
    let (long, high) = (bare.extent()?.width_mm(), bare.extent()?.height_mm());
    // A part that stands is laid down.
    let stands = high > long;
    let place = |at: &PointMm| {
        let (x, y) = ((at.x_mm - left_mm) / scale, (at.y_mm - bottom_mm) / scale);
        if stands { PointMm::new(y, long / scale - x) } else { PointMm::new(x, y) }
    };
    let shrunk = |layer: &Layer| Layer {
        kind: layer.kind,
        shapes: layer.shapes.iter().map(|shape| moved(shape, &place, 1.0 / scale)).collect(),
    };
    let (long, high) = if stands { (high, long) } else { (long, high) };
    let wide_mm = (long / scale).max(LEAST_MM);
    let sizes = part.sizes_m().map(|m| decimals(1e3 * m, 1)).join(" × ");
    let words = [named(part.name), sizes];
    let words = words.iter().flat_map(|text| wrap(text, wide_mm, type_pt(LETTER_MM), 3)).collect();
    let layers = bare.layers.iter().map(shrunk).collect();
    Ok(Small { layers, words, wide_mm, high_mm: high / scale })
}

/// A shape at other places.
fn moved(shape: &Shape, to: &dyn Fn(&PointMm) -> PointMm, scale: f64) -> Shape {
    match shape {
        Shape::Line(from, end) => Shape::Line(to(from), to(end)),
        Shape::Polyline { points, closed } => {
            Shape::Polyline { points: points.iter().map(to).collect(), closed: *closed }
        }
        Shape::Bezier { start, curves } => Shape::Bezier {
            start: to(start),
            curves: curves
                .iter()
                .map(|curve| [to(&curve[0]), to(&curve[1]), to(&curve[2])])
                .collect(),
        },
        Shape::Circle { centre, radius_mm } => {
            Shape::Circle { centre: to(centre), radius_mm: radius_mm * scale }
        }
        Shape::Cross { centre, arm_mm } => {
            let arm_mm = (arm_mm * scale).min(arm_mm.min(ARM_MM));
            Shape::Cross { centre: to(centre), arm_mm }
        }
        Shape::Text { at, height_mm, text, angle_deg, anchor } => Shape::Text {
            at: to(at),
            height_mm: height_mm * scale,
            text: text.clone(),
            angle_deg: *angle_deg,
            anchor: *anchor,
        },
    }
}
