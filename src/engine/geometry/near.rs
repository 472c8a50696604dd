//! What of a path is near to a place: pieces with boxes around them, of which most are never looked at.

use kurbo::{BezPath, ParamCurve, ParamCurveNearest, PathSeg, Point as Node, Rect};

/// To which a place on a piece is found.
const NEAR_M: f64 = 1e-6;
/// So many pieces of a path have one box: those of a box that is too far away are not looked at.
pub(super) const GROUP: usize = 8;

/// The boxes around so many pieces each.
pub(super) fn groups(boxes: &[Rect]) -> Vec<Rect> {
    let of_group = |group: &[Rect]| group.iter().copied().reduce(|one, other| one.union(other));
    boxes.chunks(GROUP).filter_map(of_group).collect()
}

/// How far a place is from a box, squared.
pub(super) fn to_box(around: &Rect, place: Node) -> f64 {
    let inside =
        Node::new(place.x.clamp(around.x0, around.x1), place.y.clamp(around.y0, around.y1));
    inside.distance_squared(place)
}

/// Distance of a place from a straight piece, squared.
pub(super) fn distance_squared(place: Node, from: Node, to: Node) -> f64 {
    let way = to - from;
    let share = ((place - from).dot(way) / way.hypot2()).clamp(0.0, 1.0);
    (place - (from + share * way)).hypot2()
}

/// The pieces of a path, each with the box around its control points: the piece lies within it; and a box around every
/// few of them.
pub(super) struct Boxed {
    pieces: Vec<PathSeg>,
    boxes: Vec<Rect>,
    groups: Vec<Rect>,
}

pub(super) fn boxed(path: &BezPath) -> Boxed {
    let around = |piece: &PathSeg| {
        let cubic = piece.to_cubic();
        Rect::from_points(cubic.p0, cubic.p3).union_pt(cubic.p1).union_pt(cubic.p2)
    };
    let pieces: Vec<PathSeg> = path.segments().collect();
    let boxes: Vec<Rect> = pieces.iter().map(around).collect();
    let groups = groups(&boxes);
    Boxed { pieces, boxes, groups }
}

/// The place of a path that is nearest to a given one: only the nearest box and those that begin nearer than what
/// it holds are searched.
pub(super) fn nearest(path: &Boxed, place: Node) -> Node {
    let mut best = (f64::INFINITY, place);
    let mut nearest = (f64::INFINITY, 0);
    for (group, around) in path.groups.iter().enumerate() {
        if to_box(around, place) < nearest.0 {
            for (index, around) in path.boxes.iter().enumerate().skip(GROUP * group).take(GROUP) {
                let off = to_box(around, place);
                if off < nearest.0 {
                    nearest = (off, index);
                }
            }
        }
    }
    let count = path.pieces.len();
    for turn in 0..count {
        let index = (nearest.1 + turn) % count;
        if to_box(&path.boxes[index], place) < best.0 {
            let found = path.pieces[index].nearest(place, NEAR_M);
            if found.distance_sq < best.0 {
                best = (found.distance_sq, path.pieces[index].eval(found.t));
            }
        }
    }
    best.1
}
