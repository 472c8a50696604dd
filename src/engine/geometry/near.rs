//! What of a path is near to a place: pieces with boxes around them, of which most are never looked at.

use kurbo::{BezPath, ParamCurve, ParamCurveNearest, PathSeg, Point as Node, Rect};

/// To which a place on a piece is found.
const NEAR_M: f64 = 1e-6;
/// So many pieces of a path have one box: those of a box that is too far away are not looked at.
pub(super) const GROUP: usize = 8;

/// The boxes around so many pieces each.
pub(super) fn groups<T>(pieces: &[T], around: impl Fn(&T) -> Rect) -> Vec<Rect> {
    let of_group = |group: &[T]| group.iter().map(&around).reduce(|one, other| one.union(other));
    pieces.chunks(GROUP).filter_map(of_group).collect()
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
    pieces: Vec<(PathSeg, Rect)>,
    groups: Vec<Rect>,
}

pub(super) fn boxed(path: &BezPath) -> Boxed {
    let around = |piece: PathSeg| {
        let cubic = piece.to_cubic();
        Rect::from_points(cubic.p0, cubic.p3).union_pt(cubic.p1).union_pt(cubic.p2)
    };
    let pieces: Vec<(PathSeg, Rect)> =
        path.segments().map(|piece| (piece, around(piece))).collect();
    let groups = groups(&pieces, |(_, around)| *around);
    Boxed { pieces, groups }
}

/// The place of a path that is nearest to a given one: only the nearest box and those that begin nearer than what
/// it holds are searched.
pub(super) fn nearest(path: &Boxed, place: Node) -> Node {
    let mut first = (f64::INFINITY, 0);
    let mut start = 0;
    for (group, around) in path.pieces.chunks(GROUP).zip(&path.groups) {
        if to_box(around, place) < first.0 {
            for (index, (_, around)) in group.iter().enumerate() {
                let off = to_box(around, place);
                if off < first.0 {
                    first = (off, start + index);
                }
            }
        }
        start += GROUP;
    }
    let mut best = (f64::INFINITY, place);
    let mut search = |(piece, around): &(PathSeg, Rect)| {
        if to_box(around, place) < best.0 {
            let found = piece.nearest(place, NEAR_M);
            if found.distance_sq < best.0 {
                best = (found.distance_sq, piece.eval(found.t));
            }
        }
        best.0
    };
    let mut least = path.pieces.get(first.1).map_or(f64::INFINITY, &mut search);
    start = 0;
    for (group, around) in path.pieces.chunks(GROUP).zip(&path.groups) {
        if to_box(around, place) < least {
            for (index, piece) in group.iter().enumerate() {
                if start + index != first.1 {
                    least = search(piece);
                }
            }
        }
        start += GROUP;
    }
    best.1
}
