//! What is planed off the outside of the board where its thickness is given from place to place: so its inside stays flat
//! for all that is glued to it.

use super::solid::{Cell, Spot, meet, plus, times};
use super::walls::{ASIDE, Walls};
use crate::engine::structure::plate::Thick;

/// Least depth that is planed off, in m.
const LEAST_M: f64 = 1e-9;

/// What is planed off one half of the board; `sign` is that of its hand. Between rows, and between middle, halfway and side,
/// in triangles.
pub(super) fn to(walls: &Walls<'_>, thick: &Thick, length_m: f64, sign: f64) -> Vec<Cell> {
    let (out, inner) = walls.board;
    let end = |plane| Some(walls.along_m(meet(out, plane, walls.side(sign))?));
    let Some((low, high)) = end(walls.low).zip(end(walls.high)) else { return Vec::new() };
    let rows = thick.rows().iter().map(|row| row.0 * length_m);
    let rows = rows.filter(|at| *at > low && *at < high);
    let all: Vec<f64> = std::iter::once(low).chain(rows).chain([high]).collect();
    // A corner, and how deep it is planed.
    let corner = |along: f64, aside: f64| {
        let half = walls.half.start + along * walls.half.grows;
        let on_middle = plus(walls.start, times(along, walls.along));
        let at = plus(on_middle, times(sign * aside * half, ASIDE));
        let left = thick.at(along / length_m, aside).to_m();
        (at, (-inner.off(at) - left).max(0.0))
    };
    let mut cells = Vec::new();
    for pair in all.windows(2) {
        for (from, to) in [(0.0, 0.5), (0.5, 1.0)] {
            let [one, two, three, four] =
                [(pair[0], from), (pair[0], to), (pair[1], to), (pair[1], from)]
                    .map(|(along, aside)| corner(along, aside));
            // About its middle, so that no diagonal counts more than the other.
            let middle = corner(0.5 * (pair[0] + pair[1]), 0.5 * (from + to));
            for (from, to) in [(one, two), (two, three), (three, four), (four, one)] {
                cells.extend(prism([middle, from, to], inner.square));
            }
        }
    }
    cells
}

/// A triangle with what lies below it, its deepest corner first.
fn prism(mut corners: [(Spot, f64); 3], down: Spot) -> Option<Cell> {
    let depth = |at: usize| corners[at].1;
    let deepest = (0..3).fold(0, |most, at| if depth(at) > depth(most) { at } else { most });
    if depth(deepest) < LEAST_M {
        return None;
    }
    corners.rotate_left(deepest);
    let near = corners.iter().map(|corner| corner.0).collect();
    let far = corners.iter().map(|(at, deep)| plus(*at, times(*deep, down))).collect();
    Some(Cell { near, far })
}
