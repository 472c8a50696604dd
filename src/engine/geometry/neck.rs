//! The neck: a smooth curve through the bridge pins, the two edges at their clearances, and the middle line.

use kurbo::{Affine, BezPath, CubicBez, ParamCurve, ParamCurveNearest, Point as Node, Vec2};

use super::curve::Spline;
use super::{Axes, Geometry};
use crate::engine::structure::frame::{AxisPoint, Point};
use crate::engine::structure::section::{Rectangle, SectionError};
use crate::engine::units::Length;

/// Into how many pieces an edge is cut between two pins.
const PIECES: u32 = 3;
/// Pins that lie nearer to each other are one.
const LEAST_STEP_M: f64 = 1e-6;
/// At how many places the middle line is given between the shoulder and the first pin.
const BEND_PIECES: u32 = 4;
/// How steeply the neck may leave the lowest pin: along the strings over square to them.
const STEEPEST: f64 = 4.0;
/// The share of its clearance that a place of an edge must keep from the whole curve; what an inner bend swallows
/// is left out. A little below 1, as the curve is measured by its chords.
const KEPT: f64 = 0.998;

/// The neck in the plane of the strings; paths in metres, in the coordinates of the drawing, from the treble to the
/// bass.
#[derive(Clone, Debug, PartialEq)]
pub struct NeckShape {
    /// Through the bridge pins: the smooth curve that bends least, by the lengths of the chords.
    pub pins: BezPath,
    /// The edge below the bridge pins, from the upper end of the board to the far face of the pillar.
    pub lower: BezPath,
    /// The edge beyond the tuning pins.
    pub upper: BezPath,
    /// The middle line from the shoulder to the pillar, with cuts on the way to the first string and at each string.
    pub centre: Vec<NeckStation>,
}

/// A cut through the neck.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct NeckStation {
    /// Its middle.
    pub at: Point,
    /// From edge to edge: the ways to the nearest places of both.
    pub depth: Length,
}

impl NeckShape {
    /// The middle line with its sections, as the frame's forces want it, for a neck of one thickness.
    ///
    /// # Errors
    ///
    /// When the thickness or a depth is not above 0.
    pub fn axis(&self, thickness: Length) -> Result<Vec<AxisPoint>, SectionError> {
        let point = |station: &NeckStation| {
            let section = Rectangle::new(thickness, station.depth)?;
            Ok(AxisPoint { at: station.at, section })
        };
        self.centre.iter().map(point).collect()
    }
}

/// The pins of a string in the strings' own axes, in metres.
#[derive(Clone, Copy)]
pub(super) struct Pins {
    pub(super) bridge: (f64, f64),
    pub(super) tuning: (f64, f64),
    /// The lowest thing that the neck bears: the bridge pin, or the lever or disc farthest below it.
    pub(super) lowest: (f64, f64),
}

/// A smooth curve through places, by the lengths of its chords.
pub(super) struct Smooth {
    across: Spline,
    along: Spline,
}

impl Smooth {
    /// `None` below two places that differ. Places that repeat the one before are left out.
    pub(super) fn through(places: &[(f64, f64)]) -> Option<Self> {
        let (mut knots, mut across, mut along): (Vec<f64>, Vec<f64>, Vec<f64>) = Default::default();
        for (a, b) in places {
            let knot = match (knots.last(), across.last(), along.last()) {
                (Some(knot), Some(from_a), Some(from_b)) => {
                    let chord = (a - from_a).hypot(b - from_b);
                    if chord < LEAST_STEP_M {
                        continue;
                    }
                    knot + chord
                }
                _ => 0.0,
            };
            knots.push(knot);
            across.push(*a);
            along.push(*b);
        }
        Some(Self {
            across: Spline::new(knots.clone(), across)?,
            along: Spline::new(knots, along)?,
        })
    }

    pub(super) fn knots(&self) -> &[f64] {
        self.across.knots()
    }

    fn at(&self, t: f64) -> Node {
        Node::new(self.across.at(t), self.along.at(t))
    }

    fn slope(&self, t: f64) -> Vec2 {
        Vec2::new(self.across.slope(t), self.along.slope(t))
    }

    /// Curvature in 1/m; above 0 where the curve turns to the left.
    pub(super) fn curvature(&self, t: f64) -> f64 {
        let slope = self.slope(t);
        let second = Vec2::new(self.across.second(t), self.along.second(t));
        slope.cross(second) / slope.hypot().powi(3)
    }

    fn end(&self) -> Option<f64> {
        self.knots().last().copied()
    }

    /// The direction of the way.
    fn way(&self, t: f64) -> Vec2 {
        let slope = self.slope(t);
        slope / slope.hypot()
    }

    /// To the left of the way.
    fn left(&self, t: f64) -> Vec2 {
        let way = self.way(t);
        Vec2::new(-way.y, way.x)
    }

    /// The curve shifted, and from there an edge at a distance to the left that keeps it from the whole curve.
    /// `None` where hardly anything of it does.
    fn edge(&self, shift: Vec2, left_m: f64) -> Option<BezPath> {
        let places = self.kept(left_m);
        (places.len() >= 2).then(|| self.beside(shift, left_m, &places))
    }

    /// Knots, and places between them.
    fn fine(&self) -> Vec<f64> {
        let pieces = self.knots().windows(2).flat_map(|pair| {
            (0..PIECES)
                .map(|piece| pair[0] + f64::from(piece) / f64::from(PIECES) * (pair[1] - pair[0]))
        });
        pieces.chain(self.knots().last().copied()).collect()
    }

    /// The curve itself, shifted.
    fn path(&self, shift: Vec2, places: &[f64]) -> BezPath {
        self.beside(shift, 0.0, places)
    }

    /// A curve at a distance to the left of the shifted curve. The ends and the slopes of its pieces are exact.
    /// Where places are left out, it goes straight.
    fn beside(&self, shift: Vec2, left_m: f64, places: &[f64]) -> BezPath {
        let fine = self.fine();
        let mut path = BezPath::new();
        let mut last: Option<f64> = None;
        for to in places {
            let t = to;
            let node = self.at(*t) + shift + left_m * self.left(*t);
            let is_next = |from: f64| {
                let place = fine.partition_point(|knot| *knot <= from);
                fine.get(place).is_some_and(|next| next == t)
            };
            match last {
                None => path.move_to(node),
                Some(from) if is_next(from) => {
                    // The slope of the curve beside is that of the curve, less by what it bends.
                    let third = |t: f64| {
                        ((*to - from) / 3.0) * (1.0 - left_m * self.curvature(t)) * self.slope(t)
                    };
                    let before = self.at(from) + shift + left_m * self.left(from);
                    path.curve_to(before + third(from), node - third(*t), node);
                }
                Some(_) => path.line_to(node),
            }
            last = Some(*t);
        }
        path
    }

    /// The places at which a curve at a distance to the left keeps that distance from the whole curve.
    fn kept(&self, left_m: f64) -> Vec<f64> {
        let fine = self.fine();
        let chords: Vec<(Node, Node)> =
            fine.windows(2).map(|pair| (self.at(pair[0]), self.at(pair[1]))).collect();
        let far = KEPT * left_m.abs();
        let keeps = |t: &f64| {
            let node = self.at(*t) + left_m * self.left(*t);
            chords.iter().all(|(from, to)| distance(node, *from, *to) >= far)
        };
        fine.iter().copied().filter(keeps).collect()
    }
}

/// Distance of a place from a straight piece.
fn distance(place: Node, from: Node, to: Node) -> f64 {
    let way = to - from;
    let share = ((place - from).dot(way) / way.hypot2()).clamp(0.0, 1.0);
    (place - (from + share * way)).hypot()
}

/// The neck around the pins, which go from the treble to the bass, with its joint at the upper end of the board.
pub(super) fn shape(
    pins: &[Pins],
    joint: (f64, f64),
    geometry: &Geometry,
    axes: &Axes,
) -> Option<NeckShape> {
    let bridges: Vec<(f64, f64)> = pins.iter().map(|pins| pins.bridge).collect();
    let curve = Smooth::through(&bridges)?;
    let (first, last) = (pins.first()?, pins.last()?);
    if curve.knots().len() < 3 {
        return None;
    }
    // After-length and offset are the same for every string, so that the tuning pins stand on a shifted curve.
    let shift = Node::from(first.tuning) - Node::from(first.bridge);
    // From treble to bass, the board lies to the left.
    let below = geometry.below_pins.to_m();
    let above = geometry.above_pins.to_m();
    let under = Smooth::through(&pins.iter().map(|pins| pins.lowest).collect::<Vec<_>>())?;
    let lower = under.edge(Vec2::ZERO, below)?;
    let upper = curve.edge(shift, -above)?;
    let joint = Node::from(joint);
    let far_face = last.bridge.0 - geometry.pillar_gap.to_m() - geometry.pillar_width.to_m();
    let pillar = far_face + 0.5 * geometry.pillar_width.to_m();

    // The places of each string on both edges, and the smooth line half-way between them.
    let mut sides: Vec<(Node, Node)> = Vec::new();
    let mut chords = (0.0, 0.0);
    let mut before: Option<&Pins> = None;
    for pins in pins {
        if let Some(last) = before {
            chords.0 += Node::from(pins.lowest).distance(last.lowest.into());
            chords.1 += Node::from(pins.bridge).distance(last.bridge.into());
        }
        before = Some(pins);
        let on_lower = under.at(chords.0) + below * under.left(chords.0);
        sides.push((on_lower, curve.at(chords.1) + shift - above * curve.left(chords.1)));
    }
    let halfway = |(lower, upper): &(Node, Node)| lower.midpoint(*upper).into();
    let between = Smooth::through(&sides.iter().map(halfway).collect::<Vec<(f64, f64)>>())?;
    // The neck sits with a face as deep as at the first string on the end of the soundbox, square to the board.
    let (on_lower, on_upper) = *sides.first()?;
    let depth = between.way(0.0).cross(on_upper - on_lower).abs();
    let (up, behind) = axes.board_ways();
    let bends = [
        bend(joint, up, first_node(&lower)?, under.way(0.0)),
        bend(joint + depth * behind, up, first_node(&upper)?, curve.way(0.0)),
    ];
    let lower = extended(bends[0], &lower, under.way(under.end()?), far_face);
    let upper = extended(bends[1], &upper, curve.way(curve.end()?), far_face);

    let mut middle = vec![(joint + 0.5 * depth * behind, depth)];
    let bent = (1..BEND_PIECES).map(|piece| {
        let share = f64::from(piece) / f64::from(BEND_PIECES);
        bends[0].eval(share).midpoint(bends[1].eval(share))
    });
    let strung = sides.iter().map(|(lower, upper)| lower.midpoint(*upper));
    middle.extend(bent.chain(strung).map(|node| (node, off_m(&lower, node) + off_m(&upper, node))));
    let (node, depth) = *middle.last()?;
    let steep = steepness(between.way(between.end()?));
    middle.push((Node::new(pillar, levelled(node, far_face, steep, pillar)), depth));
    let turn = axes.turn();
    let turned = |path: BezPath| turn * path;
    let centre: Vec<NeckStation> = middle
        .into_iter()
        .map(|(node, depth)| NeckStation {
            at: axes.point((node.x, node.y)),
            depth: Length::from_m(depth),
        })
        .collect();
    let is_number = |station: &NeckStation| {
        let (x, y) = (station.at.x.to_m(), station.at.y.to_m());
        x.is_finite() && y.is_finite() && station.depth.to_m().is_finite()
    };
    centre.iter().all(is_number).then(|| NeckShape {
        pins: turned(curve.path(Vec2::ZERO, &curve.fine())),
        lower: turned(lower),
        upper: turned(upper),
        centre,
    })
}

/// How far a path lies from a place.
fn off_m(path: &BezPath, place: Node) -> f64 {
    let mut best = f64::INFINITY;
    for piece in path.segments() {
        let cubic = piece.to_cubic();
        let nodes = [cubic.p0, cubic.p1, cubic.p2, cubic.p3];
        let reach: f64 = nodes.windows(2).map(|pair| pair[0].distance(pair[1])).sum();
        if place.distance(cubic.p0) - reach < best {
            best = best.min(piece.nearest(place, LEAST_STEP_M).distance_sq.sqrt());
        }
    }
    best
}

fn first_node(path: &BezPath) -> Option<Node> {
    path.segments().next().map(|piece| piece.to_cubic().p0)
}

fn last_node(path: &BezPath) -> Option<Node> {
    path.segments().last().map(|piece| piece.to_cubic().p3)
}

/// From a place that is left in one direction to another that is reached in a second.
fn bend(from: Node, leaving: Vec2, to: Node, reaching: Vec2) -> CubicBez {
    let third = (to - from).hypot() / 3.0;
    CubicBez::new(from, from + third * leaving, to - third * reaching, to)
}

/// How far along the strings a line is that leaves a place steeply and is level, square to the strings, at the far
/// face of the pillar: a parabola.
fn levelled(from: Node, far_face: f64, steep: f64, across: f64) -> f64 {
    let whole = from.x - far_face;
    if whole <= 0.0 {
        return from.y;
    }
    let share = ((from.x - across) / whole).clamp(0.0, 1.0);
    from.y - steep * whole * (share - 0.5 * share * share)
}

/// How steeply a line that goes to the bass rises: along the strings over square to them.
fn steepness(way: Vec2) -> f64 {
    if way.x < 0.0 { (way.y / way.x).clamp(-STEEPEST, STEEPEST) } else { 0.0 }
}

/// An edge with the bend from the shoulder before it, and one to the far face of the pillar behind it.
fn extended(shoulder: CubicBez, edge: &BezPath, way: Vec2, far_face: f64) -> BezPath {
    let mut path = BezPath::new();
    path.move_to(shoulder.p0);
    path.curve_to(shoulder.p1, shoulder.p2, shoulder.p3);
    path.extend(edge.elements().iter().skip(1).copied());
    if let Some(last) = last_node(edge).filter(|last| last.x > far_face) {
        let face = Node::new(far_face, levelled(last, far_face, steepness(way), far_face));
        let end = bend(last, way, face, Vec2::new(-1.0, 0.0));
        path.curve_to(end.p1, end.p2, end.p3);
    }
    path
}

impl Axes {
    /// Up along the board, and square to it away from the strings, in the strings' own axes.
    fn board_ways(&self) -> (Vec2, Vec2) {
        let up = self.on_board(1.0);
        (Vec2::new(up.0, up.1), Vec2::new(up.1, -up.0))
    }

    /// From the strings' own axes to those of the drawing.
    fn turn(&self) -> Affine {
        let at = |own| {
            let point = self.point(own);
            (point.x.to_m(), point.y.to_m())
        };
        let (across, along) = (at((1.0, 0.0)), at((0.0, 1.0)));
        Affine::new([across.0, across.1, along.0, along.1, 0.0, 0.0])
    }
}
