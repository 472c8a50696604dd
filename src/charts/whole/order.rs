//! Which of the parts that are seen lies before which, so that the nearer one covers the other.

use crate::engine::order::sort;

/// A place of a view: to the right, upward, and towards the eye.
pub(super) type Seen = (f64, f64, f64);

/// Depths that differ by less are the same, in the unit of the view.
const SAME: f64 = 1e-6;

/// What is seen of a solid.
pub(super) struct Body {
    /// What it covers, without inward corners.
    pub(super) around: Vec<(f64, f64)>,
    /// Its faces.
    pub(super) faces: Vec<Vec<Seen>>,
}

/// The places of the bodies in the order in which they are drawn: each before whatever lies before it.
pub(super) fn farthest_first(bodies: &[Body]) -> Vec<usize> {
    let far = |body: &Body| {
        let all = body.faces.iter().flatten().map(|at| at.2);
        all.fold(f64::INFINITY, f64::min)
    };
    let mut left: Vec<usize> = (0..bodies.len()).collect();
    sort(&mut left, |one, other| far(&bodies[*one]) > far(&bodies[*other]));
    let mut out = Vec::new();
    while !left.is_empty() {
        let covers_none = |at: &usize| {
            let others = left.iter().filter(|other| *other != at);
            !others.into_iter().any(|other| lies_before(&bodies[*at], &bodies[*other]))
        };
        // Bodies that cover each other in a ring have no order; then the farthest is drawn.
        let next = left.iter().position(covers_none).unwrap_or(0);
        out.push(left.remove(next));
    }
    out
}

/// Whether one lies before the other where both are seen. Solids that do not lie in each other do so everywhere or
/// nowhere.
fn lies_before(one: &Body, other: &Body) -> bool {
    let shared = common(&one.around, &other.around);
    let middle = middle(&shared);
    let between = |at: &(f64, f64)| (0.5 * (at.0 + middle.0), 0.5 * (at.1 + middle.1));
    let places = std::iter::once(middle).chain(shared.iter().map(between));
    let depths = places.filter_map(|at| Some(depth(one, at)? - depth(other, at)?));
    let most = depths.fold(0.0, |most: f64, off| if off.abs() > most.abs() { off } else { most });
    most > SAME
}

fn middle(points: &[(f64, f64)]) -> (f64, f64) {
    let sum = points.iter().fold((0.0, 0.0), |sum, at| (sum.0 + at.0, sum.1 + at.1));
    let count = points.len() as f64;
    (sum.0 / count, sum.1 / count)
}

/// How near to the eye a body is at a place of the view; `None` where it is not seen.
fn depth(body: &Body, at: (f64, f64)) -> Option<f64> {
    let depths = body.faces.iter().filter_map(|face| depth_of(face, at));
    depths.fold(None, |most: Option<f64>, next| Some(most.map_or(next, |most| most.max(next))))
}

fn depth_of(face: &[Seen], (u, v): (f64, f64)) -> Option<f64> {
    // Twice the area that is seen, with what it turns by in depth: the plane through its corners.
    let from = face.first()?;
    let mut square = (0.0, 0.0, 0.0);
    for pair in face.windows(2) {
        let (a, b) = (off(&pair[0], from), off(&pair[1], from));
        square.0 += a.1 * b.2 - a.2 * b.1;
        square.1 += a.2 * b.0 - a.0 * b.2;
        square.2 += a.0 * b.1 - a.1 * b.0;
    }
    let mut is_inside = false;
    for at in 0..face.len() {
        let (a, b) = (face[at], face[(at + 1) % face.len()]);
        if (a.1 > v) != (b.1 > v) && u < a.0 + (v - a.1) / (b.1 - a.1) * (b.0 - a.0) {
            is_inside = !is_inside;
        }
    }
    let whole = (square.0.hypot(square.1)).hypot(square.2);
    let is_seen = is_inside && square.2.abs() > 1e-9 * whole;
    is_seen.then(|| from.2 - (square.0 * (u - from.0) + square.1 * (v - from.1)) / square.2)
}

fn off(at: &Seen, from: &Seen) -> Seen {
    (at.0 - from.0, at.1 - from.1, at.2 - from.2)
}

/// What two outlines without inward corners have in common; both go round to the left.
fn common(one: &[(f64, f64)], other: &[(f64, f64)]) -> Vec<(f64, f64)> {
    let mut left = other.to_vec();
    for at in 0..one.len() {
        let (from, to) = (one[at], one[(at + 1) % one.len()]);
        let inward =
            |p: (f64, f64)| (to.0 - from.0) * (p.1 - from.1) - (to.1 - from.1) * (p.0 - from.0);
        let mut kept = Vec::new();
        for place in 0..left.len() {
            let (here, next) = (left[place], left[(place + 1) % left.len()]);
            let (a, b) = (inward(here), inward(next));
            if a >= 0.0 {
                kept.push(here);
            }
            if a * b < 0.0 {
                let share = a / (a - b);
                kept.push((here.0 + share * (next.0 - here.0), here.1 + share * (next.1 - here.1)));
            }
        }
        left = kept;
    }
    left
}

#[cfg(test)]
mod tests {
    use super::*;

    /// A flat square so far to the right and so near; tilted ones rise towards the eye by as much as they go right.
    fn square(from: f64, near: f64, tilt: f64) -> Body {
        let around = vec![(from, 0.0), (from + 4.0, 0.0), (from + 4.0, 4.0), (from, 4.0)];
        let face = around.iter().map(|at| (at.0, at.1, near + tilt * (at.0 - from))).collect();
        Body { around, faces: vec![face] }
    }

    #[test]
    fn what_is_nearer_where_both_are_seen_comes_later_whatever_is_nearer_at_its_middle() {
        // The second leans towards the eye far from the first: its middle is nearer, but it lies behind.
        let bodies = [square(0.0, 1.0, 0.0), square(3.0, 0.0, 1.0)];
        assert_eq!(farthest_first(&bodies), [1, 0]);
        let bodies = [square(3.0, 0.0, 1.0), square(0.0, 1.0, 0.0)];
        assert_eq!(farthest_first(&bodies), [0, 1]);
        let apart = [square(0.0, 5.0, 0.0), square(9.0, 1.0, 0.0), square(20.0, 3.0, 0.0)];
        assert_eq!(farthest_first(&apart), [1, 2, 0]);
    }
}
