//! The neck: a smooth curve through the bridge pins, the two edges at their clearances, and the middle line.

use kurbo::{Affine, BezPath, CubicBez, PathSeg, Point as Node, Rect, Vec2};

use super::near::{GROUP, boxed, distance_squared, groups, nearest, to_box};
use super::shoulder::WayIn;
use super::spline::Spline;
use super::{Axes, Geometry};
use crate::engine::structure::frame::{AxisPoint, Point};
use crate::engine::structure::section::{Rectangle, SectionError};
use crate::engine::units::Length;

/// Into how many pieces an edge is cut between two pins.
const PIECES: u32 = 3;
/// Pins that lie nearer to each other are one.
const LEAST_STEP_M: f64 = 1e-6;
/// Into how many pieces the middle line is cut between the shoulder and the first pin.
const SHOULDER_PIECES: u32 = 4;
/// Radius at the shoulder of the lower edge, over the way from the highest pin's place to the face.
const INNER: f64 = 0.25;
/// Radius there of the upper edge, over the depth of the neck: hardly narrower than the neck, and no swelling.
const OUTER: f64 = 0.75;
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

    /// Knots, and places between them.
    fn fine(&self) -> Vec<Spot> {
        let pieces = self.knots().windows(2).flat_map(|pair| {
            (0..PIECES)
                .map(|piece| pair[0] + f64::from(piece) / f64::from(PIECES) * (pair[1] - pair[0]))
        });
        pieces.chain(self.knots().last().copied()).map(|t| self.spot(t)).collect()
    }

    fn spot(&self, t: f64) -> Spot {
        let slope = self.slope(t);
        let length = slope.hypot();
        let second = Vec2::new(self.across.second(t), self.along.second(t));
        Spot {
            t,
            node: self.at(t),
            slope,
            left: Vec2::new(-slope.y, slope.x) / length,
            curvature: slope.cross(second) / length.powi(3),
        }
    }
}

/// A place of a curve, with what is asked of it again and again.
#[derive(Clone, Copy)]
struct Spot {
    t: f64,
    node: Node,
    slope: Vec2,
    /// To the left of the way, of length 1.
    left: Vec2,
    /// In 1/m; above 0 where the curve turns to the left.
    curvature: f64,
}

/// The shifted curve, and from there an edge at a distance to the left that keeps it from the whole curve. `None` where
/// hardly anything of it does.
fn edge(fine: &[Spot], shift: Vec2, left_m: f64) -> Option<BezPath> {
    let kept = kept(fine, left_m);
    (kept.iter().filter(|keeps| **keeps).count() >= 2).then(|| beside(fine, shift, left_m, &kept))
}

/// A curve at a distance to the left of the shifted curve. The ends and the slopes of its pieces are exact. Where places
/// are left out, it goes straight.
fn beside(fine: &[Spot], shift: Vec2, left_m: f64, kept: &[bool]) -> BezPath {
    let mut path = BezPath::new();
    let mut last: Option<(usize, Node)> = None;
    for (place, to) in fine.iter().enumerate().filter(|(place, _)| kept[*place]) {
        let node = to.node + shift + left_m * to.left;
        match last {
            None => path.move_to(node),
            Some((before, from)) if before + 1 == place => {
                // The slope of the curve beside is that of the curve, less by what it bends.
                let third_of = (to.t - fine[before].t) / 3.0;
                let third = |spot: &Spot| third_of * (1.0 - left_m * spot.curvature) * spot.slope;
                path.curve_to(from + third(&fine[before]), node - third(to), node);
            }
            Some(_) => path.line_to(node),
        }
        last = Some((place, node));
    }
    path
}

/// At which places a curve at a distance to the left keeps that distance from the whole curve.
fn kept(fine: &[Spot], left_m: f64) -> Vec<bool> {
    if !fine.iter().all(|spot| spot.node.is_finite() && spot.left.is_finite()) {
        return vec![false; fine.len()];
    }
    let chords: Vec<(Node, Node)> =
        fine.windows(2).map(|pair| (pair[0].node, pair[1].node)).collect();
    let boxes: Vec<Rect> = chords.iter().map(|(from, to)| Rect::from_points(*from, *to)).collect();
    let around = groups(&boxes);
    // Squares are compared, as there are thousands of them and a root takes longer than all else.
    let far = (KEPT * left_m).powi(2);
    let keeps = |spot: &Spot| {
        let node = spot.node + left_m * spot.left;
        let near =
            chords.chunks(GROUP).zip(&around).filter(|(_, around)| to_box(around, node) < far);
        near.flat_map(|(chords, _)| chords)
            .all(|(from, to)| distance_squared(node, *from, *to) >= far)
    };
    fine.iter().map(keeps).collect()
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
    let fine = curve.fine();
    let lower = edge(&under.fine(), Vec2::ZERO, below)?;
    let upper = edge(&fine, shift, -above)?;
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
    // The neck stands on the end of the soundbox with a face as deep as it is at the first string.
    let (on_lower, on_upper) = *sides.first()?;
    let depth = between.way(0.0).cross(on_upper - on_lower).abs();
    let far = joint + depth * axes.face_way();
    let inner_m = INNER * joint.distance(first_node(&lower)?);
    let ways = [
        rounded(joint, &lower, inner_m, (1.0, below))?,
        rounded(far, &upper, OUTER * depth, (-1.0, above))?,
    ];
    let lower = extended(&ways[0], &lower, under.way(under.end()?), far_face);
    let upper = extended(&ways[1], &upper, curve.way(curve.end()?), far_face);

    let (on_lower, on_upper) = (boxed(&lower), boxed(&upper));
    let strung = sides.iter().map(|(lower, upper)| lower.midpoint(*upper));
    let before = (1..SHOULDER_PIECES).map(|piece| {
        let share = f64::from(piece) / f64::from(SHOULDER_PIECES);
        let node = ways[0].at(share).midpoint(ways[1].at(share));
        nearest(&on_lower, node).midpoint(nearest(&on_upper, node))
    });
    let cut = |node: Node| {
        let (lower, upper) = (nearest(&on_lower, node), nearest(&on_upper, node));
        (node, node.distance(lower) + node.distance(upper))
    };
    let mut middle: Vec<(Node, f64)> =
        std::iter::once(joint.midpoint(far)).chain(before).chain(strung).map(cut).collect();
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
        pins: turned(beside(&fine, Vec2::ZERO, 0.0, &vec![true; fine.len()])),
        lower: turned(lower),
        upper: turned(upper),
        centre,
    })
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

/// The way from the shoulder's face to an edge, which goes on from there as it would have come. `pins` has the side
/// on which they lie for one who goes back, 1 for the left, and their clearance: a turn to them keeps it.
fn rounded(face: Node, edge: &BezPath, radius_m: f64, pins: (f64, f64)) -> Option<WayIn> {
    let piece = edge.segments().next()?;
    let first = piece.to_cubic();
    // The handles of a straight piece lie on its ends.
    let way = if matches!(piece, PathSeg::Line(_)) { first.p3 } else { first.p1 } - first.p0;
    let is_to_pins = pins.0 * (face - first.p0).cross(way) > 0.0;
    let radius_m = if is_to_pins { radius_m.max(pins.1) } else { radius_m };
    Some(WayIn::new(face, first.p0, way, radius_m))
}

/// An edge with the way from the shoulder before it, and a bend to the far face of the pillar behind it.
fn extended(shoulder: &WayIn, edge: &BezPath, way: Vec2, far_face: f64) -> BezPath {
    let mut path = shoulder.path();
    path.extend(edge.elements().iter().skip(1).copied());
    if let Some(last) = last_node(edge).filter(|last| last.x > far_face) {
        let face = Node::new(far_face, levelled(last, far_face, steepness(way), far_face));
        let end = bend(last, way, face, Vec2::new(-1.0, 0.0));
        path.curve_to(end.p1, end.p2, end.p3);
    }
    path
}

impl Axes {
    /// Along the face on which the neck stands, from the board outward, in the strings' own axes. Square to the
    /// strings, so that their pull presses the joint and does not make it slide; where the board is flatter than
    /// half-way, it turns down until it is square to a board that is square to the strings.
    fn face_way(&self) -> Vec2 {
        let (board, quarter) = (self.sine().atan2(self.cosine()), std::f64::consts::FRAC_PI_2);
        Vec2::from_angle(-(2.0 * board - quarter).max(0.0))
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
