//! A harp as a template: its pins, holes, levers and outlines at full size, and the schedule of its points.
//!
//! The drawing is what one sees from the side, in the plane of the strings. The soundboard is a line there; a circle on
//! it is as wide as the hole. A lever is a bar across its string, a disc of the first semitone a circle, one of the
//! second a circle in a circle.

use kurbo::{BezPath, PathEl};

use super::model::{Anchor, Extent, Layer, LayerKind, PointMm, Shape, Template, type_pt};
use super::schedule::{Feature, Schedule, ScheduleRow};
use crate::design::advice::caution;
use crate::design::document::Design;
use crate::design::resolve::{Drills, Resolved};
use crate::engine::analysis::Analysis;
use crate::engine::geometry::{Band, Contact, Placed, lay_out};
use crate::engine::parts::capital_m;
use crate::engine::pitch::{Letter, Note};
use crate::engine::structure::frame;
use crate::engine::units::Length;
use crate::papers::measure::wrap;
use crate::words::{Words, templates as say};

/// Arms of the cross at a pin, a hole or a lever.
const ARM_MM: f64 = 2.5;
/// How far the bar of a lever goes to either side of its string.
const BAR_MM: f64 = 5.0;
/// Radius of the circle of a disc, and of the one within.
const DISC_MM: (f64, f64) = (2.2, 1.2);
/// What stands for levers and discs, said where there are any.
const LEGEND: [(Contact, Words); 3] = [
    (Contact::Lever, say::SIGN_LEVER),
    (Contact::DiscNatural, say::SIGN_DISC_NATURAL),
    (Contact::DiscSharp, say::SIGN_DISC_SHARP),
];
/// Height of the numbers of the strings.
const LETTER_MM: f64 = 3.0;
/// The caution is at least so wide.
const LEAST_CAUTION_MM: f64 = 120.0;
/// From a place to the number beside it, along the string.
const BESIDE_MM: f64 = 6.0;
/// The most letters of the title; a template takes no endless ones.
const MOST_TITLE: usize = 200;
/// The most strings that a note names.
const MOST_NAMED: usize = 20;

/// The drawing of a harp. Strings whose length or place is unknown are left out, with a note; a design without any
/// string that can be drawn has no layers.
pub fn template(design: &Design, resolved: &Resolved, analysis: &Analysis) -> Template {
    let band = lay_out(&resolved.harp, analysis, &resolved.geometry);
    let placed: Vec<&Placed> = band.strings.iter().flatten().collect();
    let title = design.title.trim();
    let title = if title.is_empty() { say::HARP.said() } else { title };
    let mut notes: Vec<String> = vec![say::FROM_SIDE.into(), say::DRILL.into()];
    let has =
        |kind| placed.iter().any(|placed| placed.contacts.iter().any(|(own, _)| *own == kind));
    notes.extend(LEGEND.iter().filter(|row| has(row.0)).map(|row| row.1.into()));
    notes.extend(left_out(&band));
    let layers = if placed.is_empty() {
        Vec::new()
    } else {
        let drills = &resolved.drills;
        let touched = |kind: Contact| {
            placed.iter().flat_map(|placed| contacts(&band, placed, kind, drills)).collect()
        };
        let angle_deg = 90.0 - resolved.geometry.lean_rad.to_degrees();
        let numbers = |placed: &&Placed| {
            let note = note_of(analysis, placed.number);
            numbers(&band, placed, note, angle_deg)
        };
        vec![
            layer(LayerKind::Outline, outline(&band, over_capital_mm(resolved))),
            layer(LayerKind::Board, vec![line(band.board.0, band.board.1)]),
            layer(LayerKind::Pillar, pillar(&band, resolved.geometry.pillar_width)),
            layer(LayerKind::Strings, placed.iter().map(|placed| string(placed)).collect()),
            layer(LayerKind::Pins, placed.iter().flat_map(|placed| pins(placed, drills)).collect()),
            layer(
                LayerKind::Holes,
                placed.iter().flat_map(|placed| hole(placed, drills, analysis)).collect(),
            ),
            layer(LayerKind::Levers, touched(Contact::Lever)),
            layer(LayerKind::DiscsNatural, touched(Contact::DiscNatural)),
            layer(LayerKind::DiscsSharp, touched(Contact::DiscSharp)),
            layer(LayerKind::Text, placed.iter().flat_map(numbers).collect()),
        ]
    };
    let mut template = Template {
        title: title.chars().take(MOST_TITLE).collect(),
        notes,
        origin: say::ORIGIN.into(),
        layers,
    };
    let words = template.extent().map(|extent| warned(&extent)).unwrap_or_default();
    if let Some(text) = template.layers.iter_mut().find(|layer| layer.kind == LayerKind::Text) {
        text.shapes.extend(words);
    }
    template
}

/// The caution below the drawing, so that it goes with every file of it.
fn warned(drawn: &Extent) -> Vec<Shape> {
    let width_mm = drawn.width_mm().max(LEAST_CAUTION_MM);
    let lines = wrap(caution(), width_mm, type_pt(LETTER_MM), usize::MAX);
    let mut y_mm = drawn.bottom_mm - BESIDE_MM;
    let line = |text: String| {
        y_mm -= 2.0 * LETTER_MM;
        let at = PointMm::new(drawn.left_mm, y_mm);
        Shape::Text { at, height_mm: LETTER_MM, text, angle_deg: 0.0, anchor: Anchor::Start }
    };
    lines.into_iter().map(line).collect()
}

/// The points of the drawing as a list, string by string from the highest, each with its drill.
pub fn schedule(design: &Design, resolved: &Resolved, analysis: &Analysis) -> Schedule {
    let (drills, pin_mm) = (&resolved.drills, design.allowances.pin_mm);
    let band = lay_out(&resolved.harp, analysis, &resolved.geometry);
    let mut rows = Vec::new();
    for placed in band.strings.iter().flatten() {
        let note = note_of(analysis, placed.number);
        let pin = say::pin_remark(&pin_mm);
        let points = [
            (Feature::BridgePin, placed.bridge, drills.bridge_pin, String::new()),
            (Feature::TuningPin, placed.tuning, drills.tuning_pin, pin),
            (
                Feature::BoardHole,
                placed.hole.board,
                hole_drill(placed, drills, analysis),
                hole_words(placed, drills, analysis),
            ),
        ];
        let touched = placed.contacts.iter().map(|(contact, at)| {
            let feature = match contact {
                Contact::Lever => Feature::Lever,
                Contact::DiscNatural => Feature::DiscNatural,
                Contact::DiscSharp => Feature::DiscSharp,
            };
            (feature, *at, drills.mechanism, String::new())
        });
        rows.extend(points.into_iter().chain(touched).map(|(feature, at, drill, remark)| {
            let at = mm(at);
            ScheduleRow {
                string: placed.number,
                note: note.map(|note| note.to_string()).unwrap_or_default(),
                feature,
                x_mm: at.x_mm,
                y_mm: at.y_mm,
                drill_mm: drill.map(Length::to_mm),
                remark,
            }
        }));
    }
    // The table has no other place for words about the whole.
    Schedule { origin: say::origin_caution(&caution(), &say::ORIGIN), rows }
}

/// The strings that are not drawn, in a sentence.
fn left_out(band: &Band) -> Option<String> {
    let missing: Vec<String> = (1_usize..)
        .zip(&band.strings)
        .filter(|(_, string)| string.is_err())
        .map(|(number, _)| number.to_string())
        .collect();
    if missing.is_empty() {
        return None;
    }
    let named = missing[..missing.len().min(MOST_NAMED)].join(", ");
    Some(match missing.len().checked_sub(MOST_NAMED) {
        None | Some(0) => say::left_out(&named),
        Some(more) => say::left_out_more(&more, &named),
    })
}

fn note_of(analysis: &Analysis, number: usize) -> Option<Note> {
    analysis.strings.get(number.checked_sub(1)?)?.note
}

const fn layer(kind: LayerKind, shapes: Vec<Shape>) -> Layer {
    Layer { kind, shapes }
}

fn mm(at: frame::Point) -> PointMm {
    PointMm::new(at.x.to_mm(), at.y.to_mm())
}

fn line(from: frame::Point, to: frame::Point) -> Shape {
    Shape::Line(mm(from), mm(to))
}

fn cross(at: frame::Point) -> Shape {
    Shape::Cross { centre: mm(at), arm_mm: ARM_MM }
}

/// From the board over the bridge pin to the tuning pin.
fn string(placed: &Placed) -> Shape {
    let points = [placed.hole.board, placed.bridge, placed.tuning].map(mm).to_vec();
    Shape::Polyline { points, closed: false }
}

/// A cross, and a circle as wide as what is drilled there.
fn drilled(at: frame::Point, drill: Option<Length>) -> impl Iterator<Item = Shape> {
    let round = |drill: Length| circle(at, 0.5 * drill.to_mm());
    std::iter::once(cross(at)).chain(drill.map(round))
}

fn circle(at: frame::Point, radius_mm: f64) -> Shape {
    Shape::Circle { centre: mm(at), radius_mm }
}

fn pins(placed: &Placed, drills: &Drills) -> Vec<Shape> {
    let bridge = drilled(placed.bridge, drills.bridge_pin);
    bridge.chain(drilled(placed.tuning, drills.tuning_pin)).collect()
}

fn hole(placed: &Placed, drills: &Drills, analysis: &Analysis) -> Vec<Shape> {
    drilled(placed.hole.board, hole_drill(placed, drills, analysis)).collect()
}

fn gauge(placed: &Placed, analysis: &Analysis) -> Option<Length> {
    analysis.strings.get(placed.number.checked_sub(1)?)?.gauge.ok()
}

fn hole_drill(placed: &Placed, drills: &Drills, analysis: &Analysis) -> Option<Length> {
    drills.hole(gauge(placed, analysis)).filter(|drill| drill.to_m() > 0.0)
}

/// Where the hole of a string lies on the board, and what it is as wide as. Numbers with a point, as in all of the table.
fn hole_words(placed: &Placed, drills: &Drills, analysis: &Analysis) -> String {
    let along = format!("{:.2}", placed.hole.along_board.to_mm());
    match (drills.eyelet, gauge(placed, analysis)) {
        (Some(_), _) => say::hole_eyelet(&along),
        (None, Some(gauge)) => say::hole_string(&along, &format!("{:.2}", gauge.to_mm())),
        (None, None) => say::hole_unknown(&along),
    }
}

/// A cross where one of a kind touches the string, with the sign of its kind.
fn contacts(band: &Band, placed: &Placed, kind: Contact, drills: &Drills) -> Vec<Shape> {
    let own = placed.contacts.iter().filter(|(own, _)| *own == kind);
    own.flat_map(|(_, at)| {
        let sign = match kind {
            Contact::Lever => {
                let (across, along) = band.across_along(*at);
                let end = |mm: f64| band.point(Length::from_mm(across.to_mm() + mm), along);
                vec![line(end(-BAR_MM), end(BAR_MM))]
            }
            Contact::DiscNatural => vec![circle(*at, DISC_MM.0)],
            Contact::DiscSharp => vec![circle(*at, DISC_MM.0), circle(*at, DISC_MM.1)],
        };
        drilled(*at, drills.mechanism).chain(sign)
    })
    .collect()
}

/// The number of a string at its hole and at its tuning pin; at the hole of a C or an F its letter too.
fn numbers(band: &Band, placed: &Placed, note: Option<Note>, angle_deg: f64) -> Vec<Shape> {
    let moved = |at: frame::Point, up_mm: f64| {
        let (across, along) = band.across_along(at);
        mm(band.point(across, Length::from_mm(along.to_mm() + up_mm)))
    };
    let text = |at: PointMm, text: String, anchor: Anchor| Shape::Text {
        at,
        height_mm: LETTER_MM,
        text,
        angle_deg,
        anchor,
    };
    let number = placed.number;
    let at_hole = match note.map(Note::letter) {
        Some(letter @ (Letter::C | Letter::F)) => format!("{} {number}", letter.printed()),
        _ => number.to_string(),
    };
    vec![
        text(moved(placed.hole.board, -BESIDE_MM), at_hole, Anchor::End),
        text(moved(placed.tuning, BESIDE_MM), number.to_string(), Anchor::Start),
    ]
}

/// How far from the middle of the pillar the neck ends where it goes over a capital, in mm; else 0.
fn over_capital_mm(resolved: &Resolved) -> f64 {
    let build = resolved.build();
    let beyond = 1e3 * capital_m(&build);
    if beyond > 0.0 { 0.5 * build.pillar.width.to_mm() + beyond } else { 0.0 }
}

/// Both edges of the neck, joined at its ends: as far away from the middle of the pillar as is said, where that is above 0.
fn outline(band: &Band, off_mm: f64) -> Vec<Shape> {
    let Some(neck) = &band.neck else { return Vec::new() };
    let (lower, upper) = (curves(&neck.lower), curves(&neck.upper));
    let ends = |shapes: &[Shape]| match (shapes.first()?, shapes.last()?) {
        (Shape::Bezier { start, .. }, Shape::Bezier { curves, .. }) => {
            Some((*start, curves.last()?[2]))
        }
        _ => None,
    };
    let joined = match (ends(&lower), ends(&upper)) {
        (Some(low), Some(high)) => {
            let far = [(&lower, low.1), (&upper, high.1)]
                .map(|(edge, end)| onward(band, edge, end, off_mm).unwrap_or(end));
            let mut all = vec![Shape::Line(low.0, high.0), Shape::Line(far[0], far[1])];
            if off_mm > 0.0 {
                all.extend([Shape::Line(low.1, far[0]), Shape::Line(high.1, far[1])]);
            }
            all
        }
        _ => Vec::new(),
    };
    lower.into_iter().chain(upper).chain(joined).collect()
}

/// The place to which an edge goes on straight, so far away from the middle of the pillar.
fn onward(band: &Band, edge: &[Shape], end: PointMm, off_mm: f64) -> Option<PointMm> {
    let Some(Shape::Bezier { curves, .. }) = edge.last() else { return None };
    let before = curves.last()?[1];
    let (foot, top) = (mm(band.pillar.0), mm(band.pillar.1.ok()?));
    let along = (top.x_mm - foot.x_mm, top.y_mm - foot.y_mm);
    let long_mm = along.0.hypot(along.1);
    let off = |at: PointMm| {
        ((at.x_mm - foot.x_mm) * along.1 - (at.y_mm - foot.y_mm) * along.0).abs() / long_mm
    };
    let share = (off_mm - off(end)) / (off(end) - off(before));
    let on = |end: f64, before: f64| end + share * (end - before);
    let to = PointMm::new(on(end.x_mm, before.x_mm), on(end.y_mm, before.y_mm));
    (off_mm > 0.0 && to.x_mm.is_finite() && to.y_mm.is_finite()).then_some(to)
}

/// A path in metres as curves in millimetres, one for each piece without a jump.
fn curves(path: &BezPath) -> Vec<Shape> {
    let mm = |at: kurbo::Point| PointMm::new(1e3 * at.x, 1e3 * at.y);
    let between = |from: PointMm, to: PointMm, share: f64| {
        PointMm::new(
            from.x_mm + share * (to.x_mm - from.x_mm),
            from.y_mm + share * (to.y_mm - from.y_mm),
        )
    };
    let mut shapes: Vec<(PointMm, Vec<[PointMm; 3]>)> = Vec::new();
    for element in path.elements() {
        if let PathEl::MoveTo(at) = element {
            shapes.push((mm(*at), Vec::new()));
            continue;
        }
        let Some((start, curves)) = shapes.last_mut() else { continue };
        let from = curves.last().map_or(*start, |curve| curve[2]);
        let straight =
            |to: PointMm| [between(from, to, 1.0 / 3.0), between(from, to, 2.0 / 3.0), to];
        curves.push(match element {
            PathEl::CurveTo(first, second, to) => [mm(*first), mm(*second), mm(*to)],
            PathEl::QuadTo(handle, to) => {
                let (handle, to) = (mm(*handle), mm(*to));
                [between(from, handle, 2.0 / 3.0), between(to, handle, 2.0 / 3.0), to]
            }
            PathEl::LineTo(to) => straight(mm(*to)),
            PathEl::ClosePath | PathEl::MoveTo(_) => straight(*start),
        });
    }
    let drawn = shapes.into_iter().filter(|(_, curves)| !curves.is_empty());
    drawn.map(|(start, curves)| Shape::Bezier { start, curves }).collect()
}

/// The middle line of the pillar and both of its faces. Its ends are left to the joints.
fn pillar(band: &Band, width: Length) -> Vec<Shape> {
    let Ok(top) = band.pillar.1 else { return Vec::new() };
    let (foot, top) = (mm(band.pillar.0), mm(top));
    let (x_mm, y_mm) = (top.x_mm - foot.x_mm, top.y_mm - foot.y_mm);
    let long_mm = x_mm.hypot(y_mm);
    if long_mm <= 0.0 {
        return Vec::new();
    }
    let beside = |share: f64| {
        let by = share * width.to_mm() / long_mm;
        let at = |p: PointMm| PointMm::new(p.x_mm - by * y_mm, p.y_mm + by * x_mm);
        Shape::Line(at(foot), at(top))
    };
    vec![Shape::Line(foot, top), beside(0.5), beside(-0.5)]
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::design::presets::SAMPLES;
    use crate::design::resolve::resolve;
    use crate::engine::analysis::analyse;
    use crate::papers::template::model::TemplateError;
    use crate::papers::template::{dxf, svg};

    struct Drawn {
        key: &'static str,
        band: Band,
        template: Template,
        schedule: Schedule,
    }

    fn drawn(key: &'static str, design: &Design) -> Drawn {
        let resolved = resolve(design);
        let analysis = analyse(&resolved.harp);
        Drawn {
            key,
            band: lay_out(&resolved.harp, &analysis, &resolved.geometry),
            template: template(design, &resolved, &analysis),
            schedule: schedule(design, &resolved, &analysis),
        }
    }

    fn samples() -> impl Iterator<Item = Drawn> {
        SAMPLES.iter().map(|sample| drawn(sample.key, &sample.design()))
    }

    fn shapes(drawn: &Drawn, kind: LayerKind) -> &[Shape] {
        let layer = drawn.template.layers.iter().find(|layer| layer.kind == kind);
        &layer.expect("the layer is there").shapes
    }

    fn is_at(at: PointMm, place: frame::Point) -> bool {
        (at.x_mm - 1e3 * place.x.to_m()).hypot(at.y_mm - 1e3 * place.y.to_m()) < 1e-9
    }

    #[test]
    fn every_string_of_the_samples_is_drawn_where_it_stands() {
        for drawn in samples() {
            let key = drawn.key;
            let placed: Vec<&Placed> = drawn.band.strings.iter().flatten().collect();
            let count = drawn.band.strings.len();
            assert_eq!(placed.len(), count, "{key}");
            assert_eq!(shapes(&drawn, LayerKind::Strings).len(), count, "{key}");
            assert_eq!(shapes(&drawn, LayerKind::Holes).len(), 2 * count, "{key}");
            assert_eq!(shapes(&drawn, LayerKind::Pins).len(), 4 * count, "{key}");
            // The numbers stand along the strings, the caution is level.
            let words = shapes(&drawn, LayerKind::Text).iter().filter_map(|shape| match shape {
                Shape::Text { text, angle_deg, .. } => Some((text.as_str(), *angle_deg)),
                _ => None,
            });
            let (level, along): (Vec<_>, Vec<_>) = words.partition(|(_, angle)| *angle == 0.0);
            assert_eq!(along.len(), 2 * count, "{key}");
            let level: Vec<&str> = level.into_iter().map(|(text, _)| text).collect();
            assert_eq!(level.join(" "), caution(), "{key}");
            let touched: usize = placed.iter().map(|placed| placed.contacts.len()).sum();
            // A cross and a bar, a cross and a circle, a cross and two circles.
            for (layer, kind, each) in [
                (LayerKind::Levers, Contact::Lever, 2),
                (LayerKind::DiscsNatural, Contact::DiscNatural, 2),
                (LayerKind::DiscsSharp, Contact::DiscSharp, 3),
            ] {
                let of_kind = placed.iter().flat_map(|placed| &placed.contacts);
                let count = of_kind.filter(|(own, _)| *own == kind).count();
                assert_eq!(shapes(&drawn, layer).len(), each * count, "{key}");
                let note = LEGEND.iter().find(|row| row.0 == kind).expect("a note").1.said();
                let is_there = drawn.template.notes.iter().any(|other| other == note);
                assert_eq!(is_there, count > 0, "{key}: {note}");
            }
            assert_eq!(drawn.schedule.rows.len(), 3 * count + touched, "{key}");
            for (shape, placed) in shapes(&drawn, LayerKind::Strings).iter().zip(&placed) {
                let Shape::Polyline { points, .. } = shape else { panic!("{key}: {shape:?}") };
                let places = [placed.hole.board, placed.bridge, placed.tuning];
                assert!(points.iter().zip(places).all(|(at, place)| is_at(*at, place)), "{key}");
            }
            for row in &drawn.schedule.rows {
                let placed = placed[row.string - 1];
                let place = match row.feature {
                    Feature::BridgePin => placed.bridge,
                    Feature::TuningPin => placed.tuning,
                    Feature::BoardHole => placed.hole.board,
                    Feature::Lever | Feature::DiscNatural => placed.contacts[0].1,
                    Feature::DiscSharp => placed.contacts[1].1,
                };
                assert!(is_at(PointMm::new(row.x_mm, row.y_mm), place), "{key}: {row:?}");
            }
            let lowest = drawn.schedule.rows.iter().rev().find(|r| r.feature == Feature::BoardHole);
            let lowest = lowest.expect("a hole");
            assert!(lowest.x_mm.hypot(lowest.y_mm) < 1e-9, "{key}: the origin is the lowest hole");
        }
    }

    #[test]
    fn the_samples_can_be_written_and_hold_only_numbers() {
        for drawn in samples() {
            let written = svg::write(&drawn.template).expect("an SVG");
            assert!(!written.contains("NaN") && !written.contains("inf"), "{}", drawn.key);
            assert!(dxf::write(&drawn.template).is_ok(), "{}", drawn.key);
            let corners = drawn.template.layers.iter().flat_map(|layer| &layer.shapes);
            let finite = |at: PointMm| at.x_mm.is_finite() && at.y_mm.is_finite();
            assert!(corners.flat_map(Shape::corners).all(finite), "{}", drawn.key);
        }
    }

    #[test]
    fn every_c_and_f_of_the_samples_is_named_at_its_hole() {
        for drawn in samples() {
            let named = shapes(&drawn, LayerKind::Text).iter().filter(
                |shape| matches!(shape, Shape::Text { text, .. } if text.starts_with(['C', 'F'])),
            );
            let notes = drawn.schedule.rows.iter().filter(|row| row.feature == Feature::BoardHole);
            let expected = notes.filter(|row| row.note.starts_with(['C', 'F'])).count();
            assert!(expected > 4, "{}", drawn.key);
            assert_eq!(named.count(), expected, "{}", drawn.key);
        }
    }

    #[test]
    fn the_neck_and_the_pillar_are_those_of_the_band() {
        for drawn in samples() {
            let neck = drawn.band.neck.as_ref().expect("a neck");
            let outline = shapes(&drawn, LayerKind::Outline);
            let Shape::Bezier { start, curves } = &outline[0] else { panic!("{:?}", outline[0]) };
            let pieces = neck.lower.segments().count();
            assert_eq!(curves.len(), pieces, "{}", drawn.key);
            for (segment, curve) in neck.lower.segments().zip(curves) {
                let end = segment.to_cubic().p3;
                assert!((1e3 * end.x - curve[2].x_mm).abs() < 1e-9, "{}", drawn.key);
                assert!((1e3 * end.y - curve[2].y_mm).abs() < 1e-9, "{}", drawn.key);
            }
            let first = neck.lower.segments().next().expect("a piece").to_cubic().p0;
            assert!((1e3 * first.x - start.x_mm).abs() < 1e-9, "{}", drawn.key);
            let Shape::Line(foot, top) = shapes(&drawn, LayerKind::Pillar)[0] else { panic!() };
            assert!(is_at(foot, drawn.band.pillar.0), "{}", drawn.key);
            assert!(is_at(top, drawn.band.pillar.1.expect("a top")), "{}", drawn.key);
        }
    }

    /// The neck of a part and that of the whole harp are sawn alike.
    #[test]
    fn the_neck_goes_as_far_over_a_capital_as_its_part() {
        for drawn in samples() {
            let sample = SAMPLES.iter().find(|sample| sample.key == drawn.key).expect("a sample");
            let made = crate::design::parts::parts(&sample.design()).expect("parts");
            let part = made.whole.of(crate::engine::parts::Kind::Neck).next().expect("a neck");
            let least = |all: &mut dyn Iterator<Item = f64>| all.fold(f64::INFINITY, f64::min);
            let own = 1e3 * least(&mut part.cells[0].near.iter().map(|at| at[0]));
            let outline = shapes(&drawn, LayerKind::Outline).iter();
            let ends = outline.filter_map(|shape| match shape {
                Shape::Line(one, other) => Some(one.x_mm.min(other.x_mm)),
                _ => None,
            });
            let drawn_to = least(&mut ends.into_iter());
            // Its seat is square to the pillar, which may lean a little.
            assert!((own - drawn_to).abs() < 0.3, "{}: {own} {drawn_to}", drawn.key);
        }
    }

    #[test]
    fn a_string_without_length_is_left_out_with_a_note() {
        let mut design = SAMPLES[0].design();
        let count = design.strings.len();
        design.strings[1].length = String::new();
        design.strings[4].length = "long".to_owned();
        let drawn = drawn("changed", &design);
        assert_eq!(shapes(&drawn, LayerKind::Strings).len(), count - 2);
        assert!(drawn.schedule.rows.iter().all(|row| row.string != 2 && row.string != 5));
        let note = drawn.template.notes.last().expect("a note");
        assert!(note.ends_with("unknown: strings 2, 5."), "{note}");
        for string in &mut design.strings {
            string.length = String::new();
        }
        let all = self::drawn("none", &design);
        assert_eq!(svg::write(&all.template), Err(TemplateError::Empty));
        assert!(all.template.notes.last().expect("a note").chars().count() < 400);
    }

    #[test]
    fn an_empty_design_has_nothing_to_draw() {
        let design = Design { title: "x".repeat(4_000), ..Design::default() };
        let drawn = drawn("empty", &design);
        assert_eq!(drawn.template.layers, []);
        assert_eq!(drawn.schedule.rows, []);
        assert_eq!(svg::write(&drawn.template), Err(TemplateError::Empty));
    }

    /// Straight pieces and quadratics are the same curves as cubics: any textbook of computer graphics, from memory.
    #[test]
    fn a_path_of_any_kind_becomes_cubics() {
        let mut path = BezPath::new();
        path.move_to((0.0, 0.0));
        path.line_to((0.3, 0.0));
        path.quad_to((0.6, 0.0), (0.6, 0.3));
        path.close_path();
        let shapes = curves(&path);
        let [Shape::Bezier { start, curves }] = &shapes[..] else { panic!("{shapes:?}") };
        assert_eq!((*start, curves.len()), (PointMm::new(0.0, 0.0), 3));
        let near = |at: PointMm, x: f64, y: f64| (at.x_mm - x).hypot(at.y_mm - y) < 1e-9;
        assert!(near(curves[0][0], 100.0, 0.0) && near(curves[0][1], 200.0, 0.0));
        assert!(near(curves[1][0], 500.0, 0.0) && near(curves[1][1], 600.0, 100.0));
        assert!(near(curves[2][2], 0.0, 0.0));
    }
}
