//! A drawing at full size, before it is written as any file: layers of shapes in millimetres, x to the
//! right and y up.

use crate::papers::measure::{POINT_MM, width_mm};

pub use super::limits::{
    MOST_LETTER_MM, MOST_LETTERS, MOST_MM, MOST_POINTS, MOST_SHAPES, TemplateError,
};

/// How far a line that stands for a curve may be from it.
pub const FLATNESS_MM: f64 = 0.005;
/// Height of a capital letter over the size of the type. Helvetica, from memory.
const CAPITAL: f64 = 0.718;
/// Arms of the cross at the origin.
const ORIGIN_ARM_MM: f64 = 6.0;

/// A place in millimetres from the origin, x to the right and y up.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Point {
    pub x_mm: f64,
    pub y_mm: f64,
}

impl Point {
    pub const fn new(x_mm: f64, y_mm: f64) -> Self {
        Self { x_mm, y_mm }
    }

    pub(super) fn is_lawful(self) -> bool {
        // Not a number is in no range.
        [self.x_mm, self.y_mm].iter().all(|mm| mm.abs() <= MOST_MM)
    }
}

/// What is drawn at full size, for the bench, a cutter or a plotter.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Template {
    pub title: String,
    pub notes: Vec<String>,
    /// What the point (0, 0) is on the harp: `lower bass end of the soundboard`.
    pub origin: String,
    pub layers: Vec<Layer>,
}

/// Shapes that belong together; two layers of a kind are written as one.
#[derive(Clone, Debug, PartialEq)]
pub struct Layer {
    pub kind: LayerKind,
    pub shapes: Vec<Shape>,
}

/// What the shapes of a layer are.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum LayerKind {
    Outline,
    Board,
    Pillar,
    Strings,
    Pins,
    Holes,
    Levers,
    /// Discs of the first semitone.
    DiscsNatural,
    /// Discs of the second.
    DiscsSharp,
    Marks,
    Dimensions,
    Text,
}

impl LayerKind {
    /// All kinds, as they are drawn one over the other.
    pub const ALL: [Self; 12] = [
        Self::Outline,
        Self::Board,
        Self::Pillar,
        Self::Strings,
        Self::Pins,
        Self::Holes,
        Self::Levers,
        Self::DiscsNatural,
        Self::DiscsSharp,
        Self::Marks,
        Self::Dimensions,
        Self::Text,
    ];

    /// The name in files and on sheets: small ASCII letters, and hyphens between them.
    pub const fn name(self) -> &'static str {
        match self {
            Self::Outline => "outline",
            Self::Board => "board",
            Self::Pillar => "pillar",
            Self::Strings => "strings",
            Self::Pins => "pins",
            Self::Holes => "holes",
            Self::Levers => "levers",
            Self::DiscsNatural => "discs-natural",
            Self::DiscsSharp => "discs-sharp",
            Self::Marks => "marks",
            Self::Dimensions => "dimensions",
            Self::Text => "text",
        }
    }

    /// Width of the lines on paper. Thin where a centre is read off, thick where one cuts.
    pub const fn line_mm(self) -> f64 {
        match self {
            Self::Outline | Self::Board | Self::Pillar => 0.35,
            Self::Pins
            | Self::Holes
            | Self::Levers
            | Self::DiscsNatural
            | Self::DiscsSharp
            | Self::Text => 0.18,
            Self::Strings | Self::Marks | Self::Dimensions => 0.13,
        }
    }

    pub const fn stroke(self) -> Stroke {
        match self {
            Self::Pillar => Stroke::Dashed,
            Self::Strings => Stroke::Chain,
            _ => Stroke::Full,
        }
    }
}

/// How a line is broken.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Stroke {
    Full,
    Dashed,
    /// Long and short in turn, as for centre lines.
    Chain,
}

impl Stroke {
    /// Lengths of pen down and pen up in turn.
    pub const fn dashes_mm(self) -> &'static [f64] {
        match self {
            Self::Full => &[],
            Self::Dashed => &[4.0, 2.0],
            Self::Chain => &[12.0, 2.0, 2.0, 2.0],
        }
    }
}

/// Which part of a text lies at its place.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Anchor {
    #[default]
    Start,
    Middle,
    End,
}

/// One thing to draw.
#[derive(Clone, Debug, PartialEq)]
pub enum Shape {
    Line(Point, Point),
    Polyline {
        points: Vec<Point>,
        closed: bool,
    },
    /// Cubic curves, each beginning where the one before ends: two handles and an end.
    Bezier {
        start: Point,
        curves: Vec<[Point; 3]>,
    },
    Circle {
        centre: Point,
        radius_mm: f64,
    },
    /// Two lines that cross at `centre`, each going `arm_mm` to both sides.
    Cross {
        centre: Point,
        arm_mm: f64,
    },
    /// `height_mm` is that of a capital letter; the base line goes up by `angle_deg` from the right.
    Text {
        at: Point,
        height_mm: f64,
        text: String,
        angle_deg: f64,
        anchor: Anchor,
    },
}

/// A rectangle with its sides along the axes.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Extent {
    pub left_mm: f64,
    pub bottom_mm: f64,
    pub right_mm: f64,
    pub top_mm: f64,
}

impl Extent {
    pub const fn new(left_mm: f64, bottom_mm: f64, right_mm: f64, top_mm: f64) -> Self {
        Self { left_mm, bottom_mm, right_mm, top_mm }
    }

    pub const fn width_mm(&self) -> f64 {
        self.right_mm - self.left_mm
    }

    pub const fn height_mm(&self) -> f64 {
        self.top_mm - self.bottom_mm
    }

    /// Larger by `mm` on each side.
    pub const fn padded(self, mm: f64) -> Self {
        Self::new(self.left_mm - mm, self.bottom_mm - mm, self.right_mm + mm, self.top_mm + mm)
    }

    pub const fn meets(&self, other: &Self) -> bool {
        self.left_mm <= other.right_mm
            && other.left_mm <= self.right_mm
            && self.bottom_mm <= other.top_mm
            && other.bottom_mm <= self.top_mm
    }

    /// The least that holds all points; `None` for none.
    pub fn of(points: impl IntoIterator<Item = Point>) -> Option<Self> {
        points.into_iter().fold(None, |extent: Option<Self>, at| {
            let old = extent.unwrap_or(Self::new(at.x_mm, at.y_mm, at.x_mm, at.y_mm));
            Some(Self::new(
                old.left_mm.min(at.x_mm),
                old.bottom_mm.min(at.y_mm),
                old.right_mm.max(at.x_mm),
                old.top_mm.max(at.y_mm),
            ))
        })
    }
}

/// Size of type, in points, whose capitals are as high as asked.
pub fn type_pt(height_mm: f64) -> f64 {
    height_mm / CAPITAL / POINT_MM
}

impl Shape {
    /// Points that lie round the shape or on it: all of it is within their extent. Of a text about.
    pub fn corners(&self) -> Vec<Point> {
        let around = |centre: &Point, mm: f64| {
            let at = |x: f64, y: f64| Point::new(centre.x_mm + x, centre.y_mm + y);
            vec![at(-mm, 0.0), at(mm, 0.0), at(0.0, -mm), at(0.0, mm)]
        };
        match self {
            Self::Line(from, to) => vec![*from, *to],
            Self::Polyline { points, .. } => points.clone(),
            Self::Bezier { start, curves } => flattened(*start, curves),
            Self::Circle { centre, radius_mm } => around(centre, *radius_mm),
            Self::Cross { centre, arm_mm } => around(centre, *arm_mm),
            Self::Text { at, height_mm, text, angle_deg, anchor } => {
                let long_mm = width_mm(text, type_pt(*height_mm));
                let from_mm = match anchor {
                    Anchor::Start => 0.0,
                    Anchor::Middle => -0.5 * long_mm,
                    Anchor::End => -long_mm,
                };
                let (sin, cos) = angle_deg.to_radians().sin_cos();
                let corner = |along: f64, up: f64| {
                    Point::new(at.x_mm + along * cos - up * sin, at.y_mm + along * sin + up * cos)
                };
                let (low, high) = (-0.3 * height_mm, 1.1 * height_mm);
                let to_mm = from_mm + long_mm;
                let ends = [(from_mm, low), (to_mm, low), (to_mm, high), (from_mm, high)];
                ends.map(|(along, up)| corner(along, up)).to_vec()
            }
        }
    }

    /// The shape as lines, at most [`FLATNESS_MM`] off; a text as the box round it.
    pub fn lines(&self) -> Vec<Vec<Point>> {
        let closed = |mut points: Vec<Point>| {
            points.extend(points.first().copied());
            vec![points]
        };
        match self {
            Self::Line(..) => vec![self.corners()],
            Self::Polyline { points, closed: false } => vec![points.clone()],
            Self::Polyline { points, closed: true } => closed(points.clone()),
            Self::Bezier { .. } => vec![self.corners()],
            Self::Circle { centre, radius_mm } => closed(round(*centre, *radius_mm)),
            Self::Cross { .. } => self.corners().chunks(2).map(<[Point]>::to_vec).collect(),
            Self::Text { .. } => closed(self.corners()),
        }
    }
}

/// The curves as one line of many points, at most [`FLATNESS_MM`] off.
///
/// A cubic of `n` even steps is off by at most `max|B''| / (8 n²)`, and
/// `max|B''| = 6 max(|P0 - 2 P1 + P2|, |P1 - 2 P2 + P3|)`.
///
/// # Source
///
/// The error of linear interpolation, any textbook of numerical analysis; from memory.
pub fn flattened(start: Point, curves: &[[Point; 3]]) -> Vec<Point> {
    let mut points = vec![start];
    let mut from = start;
    for curve in curves {
        let [first, second, end] = curve;
        let steps = steps(from, curve);
        for step in 1..steps {
            let t = step as f64 / steps as f64;
            let u = 1.0 - t;
            let mix = |p: f64, q: f64, r: f64, s: f64| {
                u * u * u * p + 3.0 * u * u * t * q + 3.0 * u * t * t * r + t * t * t * s
            };
            points.push(Point::new(
                mix(from.x_mm, first.x_mm, second.x_mm, end.x_mm),
                mix(from.y_mm, first.y_mm, second.y_mm, end.y_mm),
            ));
        }
        points.push(*end);
        from = *end;
    }
    points
}

/// How many even steps of a curve keep within [`FLATNESS_MM`]; see [`flattened`].
#[expect(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "the cast saturates, and NaN becomes 0"
)]
pub(super) fn steps(from: Point, [first, second, end]: &[Point; 3]) -> usize {
    let bend = |a: Point, b: Point, c: Point| {
        (a.x_mm - 2.0 * b.x_mm + c.x_mm).hypot(a.y_mm - 2.0 * b.y_mm + c.y_mm)
    };
    let bend_mm = bend(from, *first, *second).max(bend(*first, *second, *end));
    // Wide of any curve that is allowed, and small enough to be added up.
    let steps = (0.75 * bend_mm / FLATNESS_MM).sqrt().ceil().clamp(1.0, 1e9);
    steps as usize
}

/// Whether curves end where they began, so that they go round an area.
pub(super) fn is_closed(start: Point, curves: &[[Point; 3]]) -> bool {
    curves.last().is_some_and(|curve| curve[2] == start)
}

/// Points on a circle, whose sides are at most a tenth of a millimetre inside it. Only to find the sheets
/// that it touches.
#[expect(clippy::cast_possible_truncation, reason = "at most a thousand, by the greatest radius")]
fn round(centre: Point, radius_mm: f64) -> Vec<Point> {
    let half_turn = (1.0 - 0.1 / radius_mm).clamp(-1.0, 1.0).acos();
    let steps = (std::f64::consts::PI / half_turn).ceil().clamp(8.0, 1_000.0);
    let at = |step: i32| {
        let (sin, cos) = (std::f64::consts::TAU * f64::from(step) / steps).sin_cos();
        Point::new(centre.x_mm + radius_mm * cos, centre.y_mm + radius_mm * sin)
    };
    (0..steps as i32).map(at).collect()
}

impl Template {
    /// The layers as they are written: one of each kind that has shapes, in the order of
    /// [`LayerKind::ALL`], with a mark at the origin.
    pub fn drawn(&self) -> Vec<Layer> {
        let zero = Point::default();
        let origin = [
            Shape::Cross { centre: zero, arm_mm: ORIGIN_ARM_MM },
            Shape::Circle { centre: zero, radius_mm: 0.5 * ORIGIN_ARM_MM },
            Shape::Text {
                at: Point::new(0.6 * ORIGIN_ARM_MM, 0.35 * ORIGIN_ARM_MM),
                height_mm: 2.0,
                text: "0, 0".to_owned(),
                angle_deg: 0.0,
                anchor: Anchor::Start,
            },
        ];
        let of_kind = |kind: LayerKind| {
            let own = self.layers.iter().filter(|layer| layer.kind == kind);
            let mut shapes: Vec<Shape> = own.flat_map(|layer| layer.shapes.clone()).collect();
            if kind == LayerKind::Marks {
                shapes.extend(origin.clone());
            }
            Layer { kind, shapes }
        };
        LayerKind::ALL.map(of_kind).into_iter().filter(|layer| !layer.shapes.is_empty()).collect()
    }

    /// How far the drawing reaches, with the mark at the origin.
    ///
    /// # Errors
    ///
    /// When there is nothing to draw, or a number that cannot be drawn.
    pub fn extent(&self) -> Result<Extent, TemplateError> {
        super::check::check(self)?;
        let layers = self.drawn();
        let points = layers.iter().flat_map(|layer| &layer.shapes).flat_map(Shape::corners);
        let extent = Extent::of(points).ok_or(TemplateError::Empty)?;
        let (width_mm, height_mm) = (extent.width_mm(), extent.height_mm());
        if width_mm > MOST_MM || height_mm > MOST_MM {
            return Err(TemplateError::Size { width_mm, height_mm });
        }
        Ok(extent)
    }
}
