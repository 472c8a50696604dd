//! Where the strings end in the soundbox: under the string rib, or below the knee block, through which the highest may go.

use super::name::Kind;
use super::part::Part;
use super::solid::{Cell, Plane, Spot, dot, plus, times};
use super::walls::{Walls, spot};
use super::{Making, Whole};

/// From the middle of a knot to the nearest face of a block. Common practice, no source.
const KNOT_ROOM_M: f64 = 0.005;
/// How far a hole for a string is drilled through the knee block at most. Common practice, no source.
const THROUGH_M: f64 = 0.060;

/// Where the knot of a string lies.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Knot {
    /// Under the string rib, or under the board where there is none.
    UnderRib(Spot),
    /// The same, or under the knee block, behind so much wood of that.
    UnderBlock(Spot, f64),
    /// A block leaves it no room.
    Blocked(Kind),
}

impl Knot {
    /// Its place, where it has one.
    pub(super) const fn at(self) -> Option<Spot> {
        match self {
            Self::UnderRib(at) | Self::UnderBlock(at, _) => Some(at),
            Self::Blocked(_) => None,
        }
    }
}

/// The knots of all strings, from the top.
pub(super) fn knots(making: &Making<'_>, walls: &Walls<'_>, whole: &Whole) -> Vec<Knot> {
    let (sin, cos) = making.geometry.lean_rad.sin_cos();
    let way = [-sin, -cos, 0.0];
    let inner = walls.board.1;
    let under = inner.moved(making.build.board.rib.inside.1.to_m());
    let off = |plane: &Plane, from: Spot| -plane.off(from) / dot(plane.square, way);
    let knot = |from: Spot| {
        let (enters, leaves) = (off(&inner, from), off(&under, from));
        let at = |far: f64| plus(from, times(far, way));
        for kind in [Kind::FootBlock, Kind::KneeBlock] {
            let all: Vec<&Cell> = whole.of(kind).flat_map(Part::body).collect();
            // From where to where it lies in the block or so near to it, before its knot.
            let inside = |room: f64| {
                let each = all.iter().filter_map(|cell| within(cell, (from, way), room));
                let met = each.filter(|(low, high)| *low <= leaves && *high >= enters);
                met.reduce(|one, other| (one.0.min(other.0), one.1.max(other.1)))
            };
            let Some(near) = inside(KNOT_ROOM_M) else { continue };
            let drilled = inside(0.0).map(|(low, high)| (high, high - low.max(enters)));
            return match drilled.filter(|_| kind == Kind::KneeBlock) {
                Some((ends, deep_m)) if deep_m <= THROUGH_M => {
                    Knot::UnderBlock(at(ends.max(leaves)), deep_m)
                }
                None if near.1 < leaves => Knot::UnderRib(at(leaves)),
                _ => Knot::Blocked(kind),
            };
        }
        Knot::UnderRib(at(leaves))
    };
    making.band.holes.iter().map(|hole| knot(spot(hole.board))).collect()
}

/// From where to where a line lies in a cell that is larger by some room all round.
fn within(cell: &Cell, (from, way): (Spot, Spot), room: f64) -> Option<(f64, f64)> {
    let (mut low, mut high) = (f64::NEG_INFINITY, f64::INFINITY);
    for face in cell.planes() {
        let (off, nears) = (face.off(from) - room, dot(face.square, way));
        if nears.abs() < 1e-12 {
            if off > 0.0 {
                return None;
            }
        } else if nears > 0.0 {
            high = high.min(-off / nears);
        } else {
            low = low.max(-off / nears);
        }
    }
    (low < high).then_some((low, high))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::testing::assert_close;

    #[test]
    fn a_line_lies_in_a_box_from_face_to_face() {
        let near = vec![[0.0, 0.0, 0.0], [2.0, 0.0, 0.0], [2.0, 1.0, 0.0], [0.0, 1.0, 0.0]];
        let cell = Cell::raised(near, [0.0, 0.0, 4.0]).expect("a box");
        let (low, high) = within(&cell, ([-1.0, 0.5, 2.0], [1.0, 0.0, 0.0]), 0.0).expect("in it");
        assert_close(low, 1.0, 1e-12, "enters");
        assert_close(high, 3.0, 1e-12, "leaves");
        let beside = ([-1.0, 1.2, 2.0], [1.0, 0.0, 0.0]);
        assert_eq!(within(&cell, beside, 0.1), None);
        let (low, high) = within(&cell, beside, 0.3).expect("near it");
        assert_close(low, 0.7, 1e-12, "comes near");
        assert_close(high, 3.3, 1e-12, "is gone");
    }
}
