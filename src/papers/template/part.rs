//! A part of a harp as a template: its outline as it is seen from outside, its far edge where that is another one, tenons,
//! mortises, sound holes, holes with the numbers of their strings, grain, sizes and name.
//!
//! The lower left corner of the least box round the part is the origin.

use kurbo::{Affine, BezPath, PathEl};

use super::model::{Anchor, Layer, LayerKind, PointMm, Shape, Template, type_pt};
use crate::design::advice::caution;
use crate::design::display::decimals;
use crate::design::wood_facts::wood_name;
use crate::engine::parts::{Cell, Hand, Hole, HoleKind, Kind, Name, Part, hull};
use crate::papers::measure::wrap;
use crate::words::{Words, building, parts as say};

/// Arms of the cross at a hole.
const ARM_MM: f64 = 2.5;
/// Height of the numbers at holes and of the words below.
const LETTER_MM: f64 = 3.0;
/// From a hole to its number.
const BESIDE_MM: f64 = 4.0;
/// The arrow of the grain: its length as a share of the shorter side, its most, and its head.
const ARROW: (f64, f64, f64) = (0.5, 80.0, 4.0);
/// Words below are at least so wide.
const LEAST_WORDS_MM: f64 = 110.0;
/// A drill that goes in within so little of square to the face is said to be square, as the cosine.
const SQUARE: f64 = 1.0 - 1e-6;
/// The most letters of the title.
const MOST_TITLE: usize = 200;

/// Where the drawing of a part begins, and its axes in millimetres.
struct Paper<'a> {
    part: &'a Part,
    turn: Affine,
}

impl<'a> Paper<'a> {
    fn new(part: &'a Part) -> Self {
        let low = if part.sheet.is_some() {
            let around = part.outline.control_box();
            (around.x0, around.y0)
        } else {
            let all = part.cells.iter().flat_map(Cell::corners).map(|at| part.face.own(at));
            all.fold((f64::INFINITY, f64::INFINITY), |low, at| (low.0.min(at[0]), low.1.min(at[1])))
        };
        Self { part, turn: Affine::scale(1e3) * Affine::translate((-low.0, -low.1)) }
    }

    fn at(&self, place: [f64; 3]) -> PointMm {
        let own = self.part.face.own(place);
        let at = self.turn * kurbo::Point::new(own[0], own[1]);
        PointMm::new(at.x, at.y)
    }

    /// An outline as one curve that ends where it begins.
    fn curve(&self, path: &BezPath) -> Option<Shape> {
        let path = self.turn * path.clone();
        let point = |at: kurbo::Point| PointMm::new(at.x, at.y);
        let mut start: Option<kurbo::Point> = None;
        let mut here = kurbo::Point::ZERO;
        let mut curves = Vec::new();
        for next in path.elements() {
            let (one, two, to) = match *next {
                PathEl::MoveTo(at) => {
                    start.get_or_insert(at);
                    here = at;
                    continue;
                }
                PathEl::LineTo(to) => (here.lerp(to, 1.0 / 3.0), here.lerp(to, 2.0 / 3.0), to),
                PathEl::CurveTo(one, two, to) => (one, two, to),
                PathEl::QuadTo(one, to) => (here.lerp(one, 2.0 / 3.0), to.lerp(one, 2.0 / 3.0), to),
                PathEl::ClosePath => {
                    let to = start?;
                    if here.distance(to) < 1e-9 {
                        continue;
                    }
                    (here.lerp(to, 1.0 / 3.0), here.lerp(to, 2.0 / 3.0), to)
                }
            };
            curves.push([point(one), point(two), point(to)]);
            here = to;
        }
        let start = point(start?);
        // The last place is the first to the digit, so that every program takes the outline as closed.
        if let Some(last) = curves.last_mut() {
            last[2] = start;
        }
        (!curves.is_empty()).then_some(Shape::Bezier { start, curves })
    }

    /// An outline of straight lines is told by its corners.
    fn outline(&self, path: &BezPath) -> Option<Shape> {
        let is_straight = path.elements().iter().all(|next| !matches!(next, PathEl::CurveTo(..)));
        if !is_straight {
            return self.curve(path);
        }
        let corners = crate::engine::parts::flat(path);
        let points = corners.into_iter().map(|(u, v)| self.turn * kurbo::Point::new(u, v));
        let points: Vec<PointMm> = points.map(|at| PointMm::new(at.x, at.y)).collect();
        (points.len() > 2).then_some(Shape::Polyline { points, closed: true })
    }

    /// What a cell covers as it is seen: the least line round its corners.
    fn shadow(&self, cell: &Cell) -> Option<Shape> {
        let corners = cell.corners().map(|at| self.at(at));
        let around = hull(corners.map(|at| (at.x_mm, at.y_mm)).collect());
        let points: Vec<PointMm> =
            around.into_iter().map(|(x_mm, y_mm)| PointMm { x_mm, y_mm }).collect();
        (points.len() > 2).then_some(Shape::Polyline { points, closed: true })
    }
}

/// The template of a part; `harp` is the title of the design.
pub fn template(part: &Part, harp: &str) -> Template {
    template_with(part, harp, &[])
}

/// The same with the note of each string beside its number, from the highest down.
pub fn template_with(part: &Part, harp: &str, notes_of: &[String]) -> Template {
    noted(part, harp, notes_of, None)
}

/// The same with a note more.
pub(super) fn noted(
    part: &Part,
    harp: &str,
    notes_of: &[String],
    more: Option<String>,
) -> Template {
    let paper = Paper::new(part);
    let tenons = part.tenons().iter().filter_map(|cell| paper.shadow(cell));
    let outline: Vec<Shape> = paper.outline(&part.outline).into_iter().chain(tenons).collect();
    let sizes = part.sizes_m().map(|m| decimals(1e3 * m, 1));
    let harp =
        if harp.trim().is_empty() { crate::words::templates::HARP.said() } else { harp.trim() };
    let name = named(part.name);
    let mut notes: Vec<String> = vec![
        say::sizes(&sizes[0], &sizes[2], &sizes[1]),
        (if part.grain_across { say::wood_across } else { say::wood_is })(&wood_name(
            &part.stuff.key,
            &[],
        )),
        (if part.name.kind == Kind::Base { say::SEEN_FROM_ABOVE } else { say::SEEN_FROM_OUTSIDE })
            .into(),
    ];
    if part.name.hand.is_some() {
        notes.push(say::PAIR_MIRRORED.into());
    }
    if part.far.is_some() {
        notes.push(say::FAR_EDGE_IS.into());
    }
    if !part.grain_across && part.thick_m() - part.thin_m() > 1e-4 {
        let of = |m: f64| decimals(1e3 * m, 1);
        notes.push(say::tapers(&of(part.thick_m()), &of(part.thin_m())));
    }
    let deep = |cell: &Cell| {
        let pairs = cell.near.iter().zip(&cell.far);
        pairs
            .map(|(near, far)| part.face.own(*far)[2] - part.face.own(*near)[2])
            .fold(0.0, f64::max)
    };
    let deep = part.planed.iter().map(deep).fold(0.0, f64::max);
    if deep > 0.0 {
        notes.push(say::planed(&decimals(1e3 * deep, 1)));
    }
    if let Some(sheet) = &part.sheet {
        let of = |m: f64| decimals(1e3 * m, 1);
        let (low, high) = sheet.radius_m;
        notes.push(building::bent_radius(&of(high), &of(low), &of(sheet.rise_m)));
        notes.push(building::BENT_SHEET.into());
    }
    notes.extend(more);
    notes.extend(drills(part));
    let round = |hole: &Hole| {
        let (centre, radius_mm) = (paper.at(hole.at), 0.5 * hole.diameter.to_mm());
        [Shape::Cross { centre, arm_mm: ARM_MM }, Shape::Circle { centre, radius_mm }]
    };
    let of_kind = |wanted: fn(HoleKind) -> bool| {
        let own = part.holes.iter().filter(move |hole| wanted(hole.kind) && enters(part, hole));
        own.flat_map(round).collect()
    };
    let title =
        if part.sheet.is_some() { building::bent(&harp, &name) } else { say::title(&harp, &name) };
    let mut template = Template {
        title: title.chars().take(MOST_TITLE).collect(),
        notes,
        origin: say::CORNER.into(),
        layers: vec![
            Layer { kind: LayerKind::Outline, shapes: outline },
            Layer {
                kind: LayerKind::FarEdge,
                shapes: part.far.iter().filter_map(|far| paper.outline(far)).collect(),
            },
            Layer {
                kind: LayerKind::Openings,
                shapes: part.openings.iter().filter_map(|path| paper.curve(path)).collect(),
            },
            Layer {
                kind: LayerKind::Mortises,
                shapes: part.cuts.iter().filter_map(|cell| paper.shadow(cell)).collect(),
            },
            Layer {
                kind: LayerKind::Pins,
                shapes: of_kind(|kind| matches!(kind, HoleKind::TuningPin | HoleKind::BridgePin)),
            },
            Layer {
                kind: LayerKind::Holes,
                shapes: of_kind(|kind| matches!(kind, HoleKind::String | HoleKind::Fastener)),
            },
            Layer { kind: LayerKind::Levers, shapes: of_kind(|kind| kind == HoleKind::Mechanism) },
            Layer { kind: LayerKind::Grain, shapes: grain(&paper) },
            Layer { kind: LayerKind::Text, shapes: numbers(&paper, notes_of) },
        ],
    };
    let words =
        template.extent().map(|extent| below(&template, &name, &extent)).unwrap_or_default();
    if let Some(text) = template.layers.last_mut() {
        text.shapes.extend(words);
    }
    template
}

/// Its name, with its side and its number where it has any.
pub fn named(name: Name) -> String {
    let kind = name.kind.said();
    let side: Option<Words> = name.hand.map(|hand| match hand {
        Hand::Strings => say::STRINGS_SIDE,
        Hand::Other => say::OTHER_SIDE,
    });
    match (side, name.number) {
        (None, 0) => kind.said().to_owned(),
        (None, number) => say::numbered(&number, &kind),
        (Some(side), 0) => say::of_side(&kind, &side),
        (Some(side), number) => say::of_side_numbered(&number, &kind, &side),
    }
}

/// Whether a hole begins on the near face.
fn enters(part: &Part, hole: &Hole) -> bool {
    part.face.own(hole.at)[2].abs() < 1e-6
}

/// What is drilled: each diameter once, with depth and angle of the drill.
fn drills(part: &Part) -> Vec<String> {
    let mut all: Vec<String> = Vec::new();
    for hole in part.holes.iter().filter(|hole| hole.kind != HoleKind::String && enters(part, hole))
    {
        let what = match hole.kind {
            HoleKind::TuningPin => say::TUNING_PIN,
            HoleKind::BridgePin => say::BRIDGE_PIN,
            HoleKind::Mechanism => say::MECHANISM,
            HoleKind::Fastener | HoleKind::String => say::FASTENER,
        };
        let wide = decimals(hole.diameter.to_mm(), 1);
        let text = if hole.through {
            say::drill_through(&what, &wide)
        } else {
            say::drill_deep(&decimals(hole.deep.to_mm(), 1), &what, &wide)
        };
        if !all.contains(&text) {
            all.push(text);
        }
    }
    if let Some(hole) = part.holes.iter().find(|hole| hole.kind == HoleKind::String) {
        let (way, w) = (hole.way, part.face.w);
        let cos = way[0] * w[0] + way[1] * w[1] + way[2] * w[2];
        if cos.abs() < SQUARE {
            let angle = 90.0 - cos.abs().min(1.0).acos().to_degrees();
            all.push(say::drill_slanting(&decimals(angle, 1)));
        }
    }
    all
}

/// An arrow along the grain, in the middle of the part; where it runs square to it, a ring with a dot.
fn grain(paper: &Paper<'_>) -> Vec<Shape> {
    let around = paper.turn.transform_rect_bbox(paper.part.outline.control_box());
    let half = 0.5 * (ARROW.0 * around.width().min(around.height())).min(ARROW.1);
    let middle = around.center();
    let at = |along: f64, across: f64| PointMm::new(middle.x + along, middle.y + across);
    let head = ARROW.2.min(half);
    if paper.part.grain_across {
        let corners = paper.part.cells.first().map_or(&[][..], |cell| &cell.near);
        let mean =
            |axis: usize| corners.iter().map(|at| at[axis]).sum::<f64>() / corners.len() as f64;
        let centre = paper.at([mean(0), mean(1), mean(2)]);
        let ring = |radius_mm: f64| Shape::Circle { centre, radius_mm };
        return vec![ring(0.5 * head), ring(0.1 * head)];
    }
    let line = |from, to| Shape::Line(from, to);
    let mut all = vec![line(at(-half, 0.0), at(half, 0.0))];
    for end in [-1.0, 1.0] {
        let back = end * (half - head);
        all.push(line(at(end * half, 0.0), at(back, 0.4 * head)));
        all.push(line(at(end * half, 0.0), at(back, -0.4 * head)));
    }
    all
}

/// The number of its string at each hole, and its note where that is known.
fn numbers(paper: &Paper<'_>, notes_of: &[String]) -> Vec<Shape> {
    let own = paper.part.holes.iter().filter(|hole| {
        hole.string > 0 && hole.kind != HoleKind::Mechanism && enters(paper.part, hole)
    });
    let text = |hole: &Hole| {
        let at = paper.at(hole.at);
        Shape::Text {
            at: PointMm::new(at.x_mm + BESIDE_MM, at.y_mm - 0.5 * LETTER_MM),
            height_mm: LETTER_MM,
            text: match notes_of.get(hole.string - 1) {
                Some(note) if !note.is_empty() => format!("{} {note}", hole.string),
                _ => hole.string.to_string(),
            },
            angle_deg: 0.0,
            anchor: Anchor::Start,
        }
    };
    own.map(text).collect()
}

/// Name, notes and caution below the part, so that they go with every file of it.
fn below(template: &Template, name: &str, drawn: &super::model::Extent) -> Vec<Shape> {
    let width_mm = drawn.width_mm().max(LEAST_WORDS_MM);
    let words = std::iter::once(name).chain(template.notes.iter().map(String::as_str));
    let words = words.chain([caution()]);
    let lines = words.flat_map(|text| wrap(text, width_mm, type_pt(LETTER_MM), usize::MAX));
    let mut y_mm = drawn.bottom_mm - BESIDE_MM;
    let line = |text: String| {
        y_mm -= 2.0 * LETTER_MM;
        let at = PointMm::new(drawn.left_mm, y_mm);
        Shape::Text { at, height_mm: LETTER_MM, text, angle_deg: 0.0, anchor: Anchor::Start }
    };
    lines.map(line).collect()
}

/// The parts that are worth a template: one of each pair that mirror each other.
pub fn worth(parts: &[Part]) -> impl Iterator<Item = &Part> {
    parts.iter().filter(|part| part.name.hand != Some(Hand::Other))
}
