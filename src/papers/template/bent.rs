//! A bent back as the flat sheet it is cut from, with the notches of its liner.

use super::model::{Anchor, Layer, LayerKind, PointMm, Shape, Template, type_pt};
use super::part::named;
use crate::design::advice::caution;
use crate::design::display::decimals;
use crate::design::document::Design;
use crate::design::parts::Parts;
use crate::design::parts::sizes::PartSize;
use crate::engine::parts::bent::{notches, unrolled};
use crate::engine::parts::{Kind, Stuff};
use crate::papers::measure::wrap;
use crate::words::{building as say, parts as say_parts};

/// Left of a liner behind its notches. Common practice, no source.
const BEHIND_MM: f64 = 1.5;
/// Height of the letters, and the least width of the words below.
const LETTER_MM: f64 = 3.0;
const LEAST_WORDS_MM: f64 = 110.0;
/// The most letters of the title.
const MOST_TITLE: usize = 200;

/// The sheet of the back; `None` where the back is flat.
pub fn bent(design: &Design, parts: &Parts) -> Option<Template> {
    let rise_mm = PartSize::BackRise.number(&design.geometry);
    let back = parts.whole.of(Kind::Back).next()?;
    let sheet = unrolled(back, 1e-3 * rise_mm)?;
    let mm = |place: &(f64, f64)| PointMm::new(1e3 * place.0, 1e3 * place.1);
    let closed = |places: &Vec<(f64, f64)>| Shape::Polyline {
        points: places.iter().map(mm).collect(),
        closed: true,
    };
    let harp = design.title.trim();
    let harp = if harp.is_empty() { crate::words::templates::HARP.said() } else { harp };
    let one = |m: f64| decimals(1e3 * m, 1);
    let (low, high) = sheet.radius_m;
    let mut notes = vec![
        say::bent_radius(&one(high), &one(low), &decimals(rise_mm, 1)),
        say::BENT_SHEET.into(),
    ];
    let kerf_mm = PartSize::Kerf.number(&design.geometry);
    let deep_mm = design.geometry.soundbox.liner_width_mm - BEHIND_MM;
    let arc_m = 2.0 * low * sheet.half_rad;
    if deep_mm > 0.0
        && let Some((count, apart)) =
            notches(arc_m, 2.0 * sheet.half_rad, (1e-3 * kerf_mm, 1e-3 * deep_mm))
    {
        let [deep, wide] = [deep_mm, kerf_mm].map(|size| decimals(size, 1));
        notes.push(say::bent_notches(&one(apart), &count, &deep, &wide));
    }
    let Stuff { key, .. } = &back.stuff;
    notes.push(say_parts::wood_is(key));
    let mut template = Template {
        title: say::bent(&harp, &named(back.name)).chars().take(MOST_TITLE).collect(),
        notes,
        origin: say::BENT_ORIGIN.into(),
        layers: vec![
            Layer { kind: LayerKind::Outline, shapes: vec![closed(&sheet.outline)] },
            Layer {
                kind: LayerKind::Openings,
                shapes: sheet.openings.iter().map(closed).collect(),
            },
        ],
    };
    let extent = template.extent().ok()?;
    template.layers.push(Layer {
        kind: LayerKind::Grain,
        shapes: vec![Shape::Line(
            PointMm::new(extent.left_mm, 0.0),
            PointMm::new(extent.right_mm, 0.0),
        )],
    });
    let wide_mm = extent.width_mm().max(LEAST_WORDS_MM);
    let words = template.notes.iter().map(String::as_str).chain([caution()]);
    let lines = words.flat_map(|text| wrap(text, wide_mm, type_pt(LETTER_MM), usize::MAX));
    let text = |(line, text): (usize, String)| Shape::Text {
        at: PointMm::new(extent.left_mm, extent.bottom_mm - 2.0 * LETTER_MM * (line as f64 + 1.5)),
        height_mm: LETTER_MM,
        text,
        angle_deg: 0.0,
        anchor: Anchor::Start,
    };
    let shapes = lines.enumerate().map(text).collect();
    template.layers.push(Layer { kind: LayerKind::Text, shapes });
    Some(template)
}
