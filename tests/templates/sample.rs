//! An invented harp of 36 strings, from sums and products alone, so that every machine draws the same.

use stringloft::papers::template::model::{Anchor, Layer, LayerKind, PointMm, Shape, Template};
use stringloft::papers::template::schedule::{Feature, Schedule, ScheduleRow};

pub const STRINGS: usize = 36;
const NOTES: [&str; 7] = ["C", "D", "E", "F", "G", "A", "B"];

/// Where one string is held and turned.
pub struct At {
    pub string: usize,
    pub note: String,
    pub hole: PointMm,
    pub bridge: PointMm,
    pub tuning: PointMm,
    pub lever: PointMm,
    /// The discs of the first and the second semitone.
    pub discs: (PointMm, PointMm),
}

/// The strings, string 1 being the shortest. They stand 17.5 mm apart in the bass and 12.25 in the treble;
/// the board rises by 0.7, each string has 0.925 of the length of the one below it.
pub fn strings() -> Vec<At> {
    let (mut x_mm, mut spacing_mm, mut length_mm) = (100.0, 17.5, 1_250.0);
    let mut all = Vec::new();
    for index in 0..STRINGS {
        let hole = PointMm::new(x_mm, 0.7 * x_mm);
        let bridge = PointMm::new(x_mm, hole.y_mm + length_mm);
        let side = if index % 2 == 0 { 0.0 } else { 12.0 };
        all.push(At {
            string: STRINGS - index,
            note: format!("{}{}", NOTES[index % 7], 2 + index / 7),
            hole,
            bridge,
            tuning: PointMm::new(x_mm + 9.0, bridge.y_mm + 34.0 + side),
            lever: PointMm::new(x_mm, bridge.y_mm - 0.056 * length_mm),
            discs: (
                PointMm::new(x_mm, bridge.y_mm - 0.05 * length_mm),
                PointMm::new(x_mm, bridge.y_mm - 0.1 * length_mm),
            ),
        });
        x_mm += spacing_mm;
        spacing_mm -= 0.15;
        length_mm *= 0.925;
    }
    all
}

const fn text(at: PointMm, height_mm: f64, text: String, angle_deg: f64, anchor: Anchor) -> Shape {
    Shape::Text { at, height_mm, text, angle_deg, anchor }
}

fn moved(at: PointMm, x_mm: f64, y_mm: f64) -> PointMm {
    PointMm::new(at.x_mm + x_mm, at.y_mm + y_mm)
}

/// A smooth line round the pins: over every seventh tuning pin from bass to treble, and back under the
/// bridge pins.
fn neck(strings: &[At]) -> Shape {
    let every: Vec<&At> = strings.iter().step_by(7).collect();
    let mut through: Vec<PointMm> = every.iter().map(|at| moved(at.tuning, 15.0, 22.0)).collect();
    through.push(moved(strings[STRINGS - 1].bridge, 48.0, 14.0));
    through.extend(every.iter().rev().map(|at| moved(at.bridge, -12.0, -26.0)));
    through.push(moved(strings[0].bridge, -75.0, 20.0));
    through.push(moved(strings[0].tuning, -60.0, 40.0));
    let count = through.len();
    let at = |index: usize| through[index % count];
    // The curve passes each point in the direction from the one before it to the one after it.
    let handle = |index: usize, share: f64| {
        let (before, after) = (at(index + count - 1), at(index + 1));
        let along = (share * (after.x_mm - before.x_mm), share * (after.y_mm - before.y_mm));
        moved(at(index), along.0, along.1)
    };
    let curve =
        |index: usize| [handle(index, 1.0 / 6.0), handle(index + 1, -1.0 / 6.0), at(index + 1)];
    Shape::Bezier { start: at(0), curves: (0..count).map(curve).collect() }
}

/// Neck, board, pillar, and all points.
pub fn template() -> Template {
    let strings = strings();
    let first = &strings[0];
    let layer = |kind, shapes| Layer { kind, shapes };
    let mut pins = Vec::new();
    let mut holes = Vec::new();
    let mut levers = Vec::new();
    let (mut naturals, mut sharps) = (Vec::new(), Vec::new());
    let mut lines = Vec::new();
    let mut words = Vec::new();
    for at in &strings {
        for (centre, radius_mm) in [(at.bridge, 2.5), (at.tuning, 3.0)] {
            pins.push(Shape::Circle { centre, radius_mm });
            pins.push(Shape::Cross { centre, arm_mm: 4.0 });
        }
        holes.push(Shape::Circle { centre: at.hole, radius_mm: 1.5 });
        holes.push(Shape::Cross { centre: at.hole, arm_mm: 3.0 });
        levers.push(Shape::Line(moved(at.lever, -4.0, 0.0), moved(at.lever, 4.0, 0.0)));
        let circle = |centre, radius_mm| Shape::Circle { centre, radius_mm };
        naturals.push(circle(at.discs.0, 2.25));
        naturals.push(Shape::Cross { centre: at.discs.0, arm_mm: 2.5 });
        sharps.extend([circle(at.discs.1, 2.25), circle(at.discs.1, 1.25)]);
        sharps.push(Shape::Cross { centre: at.discs.1, arm_mm: 2.5 });
        lines.push(Shape::Line(at.hole, at.bridge));
        let label =
            text(moved(at.tuning, 0.0, 5.0), 2.5, at.string.to_string(), 0.0, Anchor::Middle);
        words.push(label);
        words.push(text(moved(at.hole, 2.0, -7.0), 2.0, at.note.clone(), -35.0, Anchor::Start));
    }
    let neck = neck(&strings);
    let pillar = Shape::Polyline {
        points: vec![
            PointMm::new(-20.0, 30.0),
            PointMm::new(30.0, 30.0),
            moved(first.bridge, -70.0, -40.0),
            moved(first.bridge, -120.0, -40.0),
        ],
        closed: true,
    };
    let board = Shape::Polyline {
        points: vec![PointMm::default(), PointMm::new(700.0, 490.0), PointMm::new(706.0, 482.0)],
        closed: false,
    };
    let reach = [first.bridge, moved(first.bridge, -160.0, 0.0)];
    let dimensions = vec![
        Shape::Line(reach[0], reach[1]),
        Shape::Line(first.hole, moved(first.hole, -180.0, 0.0)),
        text(moved(reach[1], 0.0, 1.5), 3.0, "1250 mm ⌀ 5.0 ±0.1".to_owned(), 0.0, Anchor::Start),
        text(
            moved(reach[1], 2.0, -400.0),
            3.0,
            "100 %%d of ^A \\U+0041".to_owned(),
            90.0,
            Anchor::End,
        ),
    ];
    Template {
        title: "Hárfa “Übung” of 36 strings & <neck>".to_owned(),
        notes: vec![
            "Bridge pins 5.0 mm, tuning pins 6.0 mm at the bridge side.".to_owned(),
            "An invented harp for trying the printer.".to_owned(),
        ],
        origin: "lower bass end of the soundboard".to_owned(),
        layers: vec![
            layer(LayerKind::Outline, vec![neck]),
            layer(LayerKind::Pins, pins),
            layer(LayerKind::Holes, holes),
            layer(LayerKind::Levers, levers),
            layer(LayerKind::DiscsNatural, naturals),
            layer(LayerKind::DiscsSharp, sharps),
            layer(LayerKind::Strings, lines),
            layer(LayerKind::Board, vec![board]),
            layer(LayerKind::Pillar, vec![pillar]),
            layer(LayerKind::Dimensions, dimensions),
            layer(LayerKind::Text, words),
        ],
    }
}

/// The points of [`template`], string by string.
pub fn schedule() -> Schedule {
    let mut rows = Vec::new();
    for at in strings().iter().rev() {
        for (feature, place, drill_mm) in [
            (Feature::BridgePin, at.bridge, Some(5.0)),
            (Feature::TuningPin, at.tuning, Some(6.0)),
            (Feature::BoardHole, at.hole, Some(3.0)),
            (Feature::Lever, at.lever, None),
            (Feature::DiscNatural, at.discs.0, Some(4.5)),
            (Feature::DiscSharp, at.discs.1, Some(2.5)),
        ] {
            rows.push(ScheduleRow {
                string: at.string,
                note: at.note.clone(),
                feature,
                x_mm: place.x_mm,
                y_mm: place.y_mm,
                drill_mm,
                remark: String::new(),
            });
        }
    }
    Schedule { origin: template().origin, rows }
}
