//! Outlines of curves: where they meet a line, their corners at full size, and their area.

use crate::engine::order::sort;
use kurbo::{
    BezPath, ParamCurve, ParamCurveDeriv, PathEl, PathSeg, Point as Node, Shape as _, Vec2,
};

/// No flattened outline is farther from its curve.
pub const FLATNESS_M: f64 = 5e-6;
/// Half-way steps to where a curve meets a line.
const HALVINGS: u32 = 60;

/// A path of straight lines through places, closed.
pub(super) fn closed(places: &[(f64, f64)]) -> BezPath {
    let mut path = BezPath::new();
    for (at, place) in places.iter().enumerate() {
        if at == 0 {
            path.move_to(*place);
        } else {
            path.line_to(*place);
        }
    }
    path.close_path();
    path
}

/// A path from its begin to where it first leaves the side of a line on which `off` is above 0; straight on in its last
/// direction where it ends before that.
pub(super) fn until(path: &BezPath, off: impl Fn(Node) -> f64) -> Option<BezPath> {
    let mut out = BezPath::new();
    let mut last: Option<PathSeg> = None;
    for piece in path.segments() {
        if last.is_none() {
            out.move_to(piece.start());
        }
        if off(piece.start()) >= 0.0 && off(piece.end()) < 0.0 {
            let (mut low, mut high) = (0.0, 1.0);
            for _ in 0..HALVINGS {
                let middle = 0.5 * (low + high);
                if off(piece.eval(middle)) >= 0.0 { low = middle } else { high = middle }
            }
            out.push(piece.subsegment(0.0..low).as_path_el());
            return Some(out);
        }
        out.push(piece.as_path_el());
        last = Some(piece);
    }
    let end = last?.to_cubic();
    let slope = end.deriv().eval(1.0).to_vec2();
    let way = if slope.hypot() > 0.0 { slope } else { end.p3 - end.p0 };
    let way: Vec2 = way / way.hypot();
    let (here, next) = (off(end.p3), off(end.p3 + way));
    let far = here / (here - next);
    let to = end.p3 + far * way;
    (far >= 0.0 && to.is_finite()).then(|| {
        out.line_to(to);
        out
    })
}

/// The last place of a path.
pub(super) fn end(path: &BezPath) -> Option<Node> {
    path.segments().last().map(|piece| piece.end())
}

/// Adds the pieces of another path, which begins where this one ends.
pub(super) fn join(path: &mut BezPath, other: &BezPath) {
    path.extend(other.elements().iter().filter(|next| !matches!(next, PathEl::MoveTo(_))).copied());
}

/// The corners of a path that hardly differ from it, the first not repeated at the end.
pub fn flat(path: &BezPath) -> Vec<(f64, f64)> {
    let mut out: Vec<(f64, f64)> = Vec::new();
    kurbo::flatten(path.elements().iter().copied(), FLATNESS_M, |next| match next {
        PathEl::MoveTo(at) | PathEl::LineTo(at) => out.push((at.x, at.y)),
        _ => {}
    });
    out.dedup_by(|one, other| (one.0 - other.0).hypot(one.1 - other.1) < 1e-9);
    if let (Some(first), Some(last)) = (out.first(), out.last())
        && out.len() > 1
        && (first.0 - last.0).hypot(first.1 - last.1) < 1e-9
    {
        out.pop();
    }
    out
}

/// Whether a place lies within a closed path, by how often a line from it to the right crosses that.
pub(super) fn within(path: &BezPath, at: Node) -> bool {
    let corners = flat(path);
    let mut before = corners.last().copied().unwrap_or_default();
    let mut is_within = false;
    for next in corners {
        if (before.1 > at.y) != (next.1 > at.y) {
            let share = (at.y - before.1) / (next.1 - before.1);
            is_within ^= at.x < before.0 + share * (next.0 - before.0);
        }
        before = next;
    }
    is_within
}

/// What a closed path holds, in m².
pub fn area(path: &BezPath) -> f64 {
    path.area().abs()
}

/// A slot with round ends round a place, so long along the first axis of its plane and so wide.
pub(super) fn slot((u, v): (f64, f64), length_m: f64, width_m: f64) -> BezPath {
    let (long, wide) = (length_m.max(width_m), length_m.min(width_m));
    let radius = 0.5 * wide;
    let half = 0.5 * (long - wide);
    // The handles of a quarter of a circle, as in any textbook of computer graphics (from memory).
    let arm = radius * 4.0 / 3.0 * (std::f64::consts::FRAC_PI_8).tan();
    let lies = length_m >= width_m;
    let at = |along: f64, across: f64| {
        if lies { Node::new(u + along, v + across) } else { Node::new(u + across, v + along) }
    };
    let mut path = BezPath::new();
    path.move_to(at(-half, -radius));
    path.line_to(at(half, -radius));
    path.curve_to(at(half + arm, -radius), at(half + radius, -arm), at(half + radius, 0.0));
    path.curve_to(at(half + radius, arm), at(half + arm, radius), at(half, radius));
    path.line_to(at(-half, radius));
    path.curve_to(at(-half - arm, radius), at(-half - radius, arm), at(-half - radius, 0.0));
    path.curve_to(at(-half - radius, -arm), at(-half - arm, -radius), at(-half, -radius));
    path.close_path();
    path
}

/// The least line round points, without inward corners.
///
/// Points are told apart to 1e-9 of their unit: two that are one but for the last digits of a sum would else hide a
/// corner.
///
/// # Source
///
/// A. M. Andrew, *Another efficient algorithm for convex hulls in two dimensions*, 1979 (from memory).
pub fn hull(mut points: Vec<(f64, f64)>) -> Vec<(f64, f64)> {
    for point in &mut points {
        *point = ((point.0 * 1e9).round() / 1e9, (point.1 * 1e9).round() / 1e9);
    }
    sort(&mut points, |one, other| one > other);
    points.dedup();
    let left = |a: (f64, f64), b: (f64, f64), c: (f64, f64)| {
        (b.0 - a.0) * (c.1 - a.1) - (b.1 - a.1) * (c.0 - a.0) > 1e-9
    };
    let half = |points: &mut dyn Iterator<Item = (f64, f64)>| {
        let mut out: Vec<(f64, f64)> = Vec::new();
        for next in points {
            while out.len() > 1 && !left(out[out.len() - 2], out[out.len() - 1], next) {
                out.pop();
            }
            out.push(next);
        }
        out.pop();
        out
    };
    let mut out = half(&mut points.iter().copied());
    out.extend(half(&mut points.iter().rev().copied()));
    out
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::testing::assert_close;

    #[test]
    fn a_slot_is_a_square_between_two_halves_of_a_circle() {
        for (long, wide) in [(0.11, 0.06), (0.06, 0.11)] {
            let path = slot((0.3, 0.4), long, wide);
            let by_hand = 0.05 * 0.06 + std::f64::consts::PI * 0.03 * 0.03;
            assert_close(area(&path), by_hand, 1e-3, "area");
            let box_ = path.bounding_box();
            assert_close(box_.width(), long, 1e-9, "length");
            assert_close(box_.height(), wide, 1e-9, "width");
        }
    }

    #[test]
    fn a_path_ends_on_the_line_or_goes_on_to_it() {
        let mut path = BezPath::new();
        path.move_to((0.0, 0.0));
        path.curve_to((1.0, 0.0), (2.0, 1.0), (3.0, 1.0));
        let to = |x: f64| until(&path, move |at: Node| x - at.x).and_then(|path| end(&path));
        let on = to(1.5).expect("on it");
        assert_close(on.x, 1.5, 1e-12, "on the line");
        assert_close(on.y, 0.5, 1e-12, "half-way");
        let beyond = to(4.0).expect("beyond");
        assert!((beyond.x - 4.0).abs() < 1e-12 && (beyond.y - 1.0).abs() < 1e-12, "{beyond:?}");
        let other = until(&path, |at: Node| 2.0 - at.y);
        assert!(other.is_none(), "level at its end: {other:?}");
    }

    #[test]
    fn a_flat_outline_has_the_area_of_its_curve() {
        let path = slot((0.0, 0.0), 0.1, 0.05);
        let corners = flat(&path);
        let flat_area: f64 = (0..corners.len())
            .map(|at| {
                let (one, next) = (corners[at], corners[(at + 1) % corners.len()]);
                0.5 * (one.0 * next.1 - next.0 * one.1)
            })
            .sum();
        assert_close(flat_area.abs(), area(&path), 3e-4, "area");
    }

    #[test]
    fn a_place_lies_within_a_slot_or_beside_it() {
        let path = slot((0.3, 0.4), 0.11, 0.06);
        for (at, inside) in [
            ((0.3, 0.4), true),
            ((0.3545, 0.4), true),
            ((0.3555, 0.4), false),
            ((0.35, 0.425), false),
            ((0.27, 0.4295), true),
            ((0.27, 0.4305), false),
        ] {
            assert_eq!(within(&path, at.into()), inside, "{at:?}");
            assert_eq!(path.contains(at.into()), inside, "{at:?} by the library");
        }
    }

    #[test]
    fn points_that_are_one_but_for_a_last_digit_hide_no_corner() {
        let points =
            vec![(0.1 + 0.2, 0.0), (0.3, 1.0), (2.0, 1.0), (2.0, 0.0), (1.0, 0.5), (0.3, 0.5)];
        assert_eq!(hull(points), [(0.3, 0.0), (2.0, 0.0), (2.0, 1.0), (0.3, 1.0)]);
    }
}
