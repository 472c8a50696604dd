//! Guides for the drill: side views of blocks through which the holes of a part are drilled, at the angle of each and with the
//! place of the stop.

use super::model::{Anchor, Layer, LayerKind, PointMm, Shape, Template};
use super::part::named;
use crate::design::display::decimals;
use crate::engine::parts::{Hole, HoleKind, Part};
use crate::words::{Words, building as say, parts as say_parts};

/// How high a block is, how far it reaches beside its hole, and the room between two. Common practice, no source.
pub const BLOCK_MM: f64 = 30.0;
const BESIDE_MM: f64 = 20.0;
const APART_MM: f64 = 30.0;
/// Height of the letters.
const LETTER_MM: f64 = 2.5;
/// Holes whose angles differ by less, in degrees, or whose sizes differ by less, in mm, have one guide.
const SAME: f64 = 0.05;
/// The most letters of the title.
const MOST_TITLE: usize = 200;

/// A block for holes that are alike.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Guide {
    /// What the holes are for.
    pub kind: HoleKind,
    /// Between drill and face.
    pub angle_deg: f64,
    /// How wide; of string holes the widest.
    pub wide_mm: f64,
    /// From the tip of the drill to its stop, where a hole does not go through.
    pub stop_mm: Option<f64>,
}

/// One block for each kind of hole, angle, diameter and depth that a part is drilled with from its face. String holes have
/// one block for all diameters: it is drilled once with each drill, beside the last.
pub fn guides(part: &Part) -> Vec<Guide> {
    let mut all: Vec<Guide> = Vec::new();
    for hole in part.holes.iter().filter(|hole| part.face.own(hole.at)[2].abs() < 1e-6) {
        let next = guide(part, hole);
        let near = |one: f64, other: f64| (one - other).abs() < SAME;
        let is_string = next.kind == HoleKind::String;
        let same = |own: &&mut Guide| {
            let stops = match (own.stop_mm, next.stop_mm) {
                (Some(one), Some(other)) => near(one, other),
                (one, other) => one.is_none() && other.is_none(),
            };
            let wide = is_string || near(own.wide_mm, next.wide_mm);
            own.kind == next.kind && near(own.angle_deg, next.angle_deg) && wide && stops
        };
        match all.iter_mut().find(same) {
            Some(own) => own.wide_mm = own.wide_mm.max(next.wide_mm),
            None => all.push(next),
        }
    }
    all
}

fn guide(part: &Part, hole: &Hole) -> Guide {
    let (way, into) = (hole.way, part.face.w);
    let sin = way[0] * into[0] + way[1] * into[1] + way[2] * into[2];
    let sin = sin.abs().clamp(f64::EPSILON, 1.0);
    Guide {
        kind: hole.kind,
        angle_deg: sin.asin().to_degrees(),
        wide_mm: hole.diameter.to_mm(),
        stop_mm: (!hole.through).then(|| BLOCK_MM / sin + hole.deep.to_mm()),
    }
}

/// The blocks of a part side by side; `None` where nothing is drilled from its face. `harp` is the title of the design.
pub fn jig(part: &Part, harp: &str) -> Option<Template> {
    let guides = guides(part);
    if guides.is_empty() {
        return None;
    }
    let (mut outlines, mut bores, mut texts) = (Vec::new(), Vec::new(), Vec::new());
    let mut left = 0.0;
    for guide in &guides {
        // How far the drill goes aside on its way through the block.
        let aside = BLOCK_MM / guide.angle_deg.to_radians().tan();
        let right = left + 2.0 * BESIDE_MM + aside;
        let at = |x: f64, y: f64| PointMm::new(x, y);
        outlines.push(Shape::Polyline {
            points: vec![at(left, 0.0), at(right, 0.0), at(right, BLOCK_MM), at(left, BLOCK_MM)],
            closed: true,
        });
        let half = 0.5 * guide.wide_mm / guide.angle_deg.to_radians().sin();
        let below = left + BESIDE_MM;
        for off in [-half, 0.0, half] {
            bores.push(Shape::Line(at(below + off, 0.0), at(below + off + aside, BLOCK_MM)));
        }
        for (line, words) in told(guide).into_iter().enumerate() {
            texts.push(Shape::Text {
                at: at(left, -2.0 * LETTER_MM * (line as f64 + 1.0)),
                height_mm: LETTER_MM,
                text: words,
                angle_deg: 0.0,
                anchor: Anchor::Start,
            });
        }
        left = right + APART_MM;
    }
    let harp =
        if harp.trim().is_empty() { crate::words::templates::HARP.said() } else { harp.trim() };
    Some(Template {
        title: say::jig(&harp, &named(part.name)).chars().take(MOST_TITLE).collect(),
        notes: vec![say::jig_note(&decimals(BLOCK_MM, 0)), say::DRILLS.into()],
        origin: say::JIG_ORIGIN.into(),
        layers: vec![
            Layer { kind: LayerKind::Outline, shapes: outlines },
            Layer { kind: LayerKind::Holes, shapes: bores },
            Layer { kind: LayerKind::Text, shapes: texts },
        ],
    })
}

/// What stands below a block.
fn told(guide: &Guide) -> [String; 2] {
    let what: Words = match guide.kind {
        HoleKind::TuningPin => say_parts::TUNING_PIN,
        HoleKind::BridgePin => say_parts::BRIDGE_PIN,
        HoleKind::Mechanism => say_parts::MECHANISM,
        HoleKind::Fastener => say_parts::FASTENER,
        HoleKind::String => say::STRING_HOLE,
    };
    let is_square = (guide.angle_deg - 90.0).abs() < SAME;
    let how = if is_square {
        say::jig_square(&what, &decimals(guide.wide_mm, 1))
    } else {
        say::jig_slanting(&decimals(guide.angle_deg, 1), &what)
    };
    let stop = match guide.stop_mm {
        Some(stop) => say::jig_stop(&decimals(stop, 1)),
        None => say::JIG_THROUGH.into(),
    };
    [how, stop]
}
