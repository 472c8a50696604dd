//! A drawing at full size, before it is written as any file: layers of shapes in millimetres, x to the
//! right and y up.

use crate::papers::measure::{POINT_MM, width_mm};
use crate::words::{Words, templates as say};

pub use super::limits::TemplateError;
use super::plane::round;
pub use super::plane::{Extent, FLATNESS_MM, PointMm, flattened};

/// Height of a capital letter over the size of the type. Helvetica, from memory.
const CAPITAL: f64 = 0.718;
/// Arms of the cross at the origin.
const ORIGIN_ARM_MM: f64 = 6.0;

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
    /// The far edge of a part whose edges are bevelled.
    FarEdge,
    /// Sound holes, cut from inside the line.
    Openings,
    Mortises,
    /// The way of the grain.
    Grain,
    Marks,
    Dimensions,
    Text,
}

impl LayerKind {
    /// All kinds, as they are drawn one over the other.
    pub const ALL: [Self; 16] = [
        Self::Outline,
        Self::Board,
        Self::Pillar,
        Self::Strings,
        Self::Pins,
        Self::Holes,
        Self::Levers,
        Self::DiscsNatural,
        Self::DiscsSharp,
        Self::FarEdge,
        Self::Openings,
        Self::Mortises,
        Self::Grain,
        Self::Marks,
        Self::Dimensions,
        Self::Text,
    ];

    /// The name in files: small ASCII letters, and hyphens between them.
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
            Self::FarEdge => "far-edge",
            Self::Openings => "openings",
            Self::Mortises => "mortises",
            Self::Grain => "grain",
            Self::Marks => "marks",
            Self::Dimensions => "dimensions",
            Self::Text => "text",
        }
    }

    /// What it is called on sheets and in messages.
    pub const fn said(self) -> Words {
        match self {
            Self::Outline => say::OUTLINE,
            Self::Board => say::BOARD,
            Self::Pillar => say::PILLAR,
            Self::Strings => say::STRINGS,
            Self::Pins => say::PINS,
            Self::Holes => say::HOLES,
            Self::Levers => say::LEVERS,
            Self::DiscsNatural => say::DISCS_NATURAL,
            Self::DiscsSharp => say::DISCS_SHARP,
            Self::FarEdge => say::FAR_EDGE,
            Self::Openings => say::OPENINGS,
            Self::Mortises => say::MORTISES,
            Self::Grain => say::GRAIN,
            Self::Marks => say::MARKS,
            Self::Dimensions => say::DIMENSIONS,
            Self::Text => say::TEXT,
        }
    }

    /// Width of the lines on paper. Thin where a centre is read off, thick where one cuts.
    pub const fn line_mm(self) -> f64 {
        match self {
            Self::Outline | Self::Board | Self::Pillar | Self::Openings | Self::Mortises => 0.35,
            Self::Pins
            | Self::Holes
            | Self::Levers
            | Self::DiscsNatural
            | Self::DiscsSharp
            | Self::Text => 0.18,
            Self::Strings | Self::FarEdge | Self::Grain | Self::Marks | Self::Dimensions => 0.13,
        }
    }

    pub const fn stroke(self) -> Stroke {
        match self {
            Self::Pillar | Self::FarEdge => Stroke::Dashed,
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
    Line(PointMm, PointMm),
    Polyline {
        points: Vec<PointMm>,
        closed: bool,
    },
    /// Cubic curves, each beginning where the one before ends: two handles and an end.
    Bezier {
        start: PointMm,
        curves: Vec<[PointMm; 3]>,
    },
    Circle {
        centre: PointMm,
        radius_mm: f64,
    },
    /// Two lines that cross at `centre`, each going `arm_mm` to both sides.
    Cross {
        centre: PointMm,
        arm_mm: f64,
    },
    /// `height_mm` is that of a capital letter; the base line goes up by `angle_deg` from the right.
    Text {
        at: PointMm,
        height_mm: f64,
        text: String,
        angle_deg: f64,
        anchor: Anchor,
    },
}

/// Size of type, in points, whose capitals are as high as asked.
pub fn type_pt(height_mm: f64) -> f64 {
    height_mm / CAPITAL / POINT_MM
}

impl Shape {
    /// Points that lie round the shape or on it: all of it is within their extent. Of a text about.
    pub fn corners(&self) -> Vec<PointMm> {
        let around = |centre: &PointMm, mm: f64| {
            let at = |x: f64, y: f64| PointMm::new(centre.x_mm + x, centre.y_mm + y);
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
                    PointMm::new(at.x_mm + along * cos - up * sin, at.y_mm + along * sin + up * cos)
                };
                let (low, high) = (-0.3 * height_mm, 1.1 * height_mm);
                let to_mm = from_mm + long_mm;
                let ends = [(from_mm, low), (to_mm, low), (to_mm, high), (from_mm, high)];
                ends.map(|(along, up)| corner(along, up)).to_vec()
            }
        }
    }

    /// The shape as lines, at most [`FLATNESS_MM`] off; a text as the box round it.
    pub fn lines(&self) -> Vec<Vec<PointMm>> {
        let closed = |mut points: Vec<PointMm>| {
            points.extend(points.first().copied());
            vec![points]
        };
        match self {
            Self::Line(..) => vec![self.corners()],
            Self::Polyline { points, closed: false } => vec![points.clone()],
            Self::Polyline { points, closed: true } => closed(points.clone()),
            Self::Bezier { .. } => vec![self.corners()],
            Self::Circle { centre, radius_mm } => closed(round(*centre, *radius_mm)),
            Self::Cross { .. } => self.corners().chunks(2).map(<[PointMm]>::to_vec).collect(),
            Self::Text { .. } => closed(self.corners()),
        }
    }
}

impl Template {
    /// The layers as they are written: one of each kind that has shapes, in the order of
    /// [`LayerKind::ALL`], with a mark at the origin.
    pub fn drawn(&self) -> Vec<Layer> {
        let zero = PointMm::default();
        let origin = [
            Shape::Cross { centre: zero, arm_mm: ORIGIN_ARM_MM },
            Shape::Circle { centre: zero, radius_mm: 0.5 * ORIGIN_ARM_MM },
            Shape::Text {
                at: PointMm::new(0.6 * ORIGIN_ARM_MM, 0.35 * ORIGIN_ARM_MM),
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
}
