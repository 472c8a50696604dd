//! Whether the parts fit: faces that must meet do, and nothing lies where something else is.

use super::Whole;
use super::name::{Kind, Name};
use super::part::Part;
use super::solid::{Cell, SAME_M, Spot, cross, dot, minus, plus, size, times, turn, unit};

/// How far apart faces may lie that meet, and how deep parts may lie in each other. A choice of this program: what glue
/// fills.
pub const ROOM_M: f64 = 1e-4;
/// Faces that meet on less than this hardly touch.
const LEAST_AREA_M2: f64 = 1e-6;

/// Every part of the first kind meets one of the second, on its own side of the harp where both have one.
const MEET: [(Kind, Kind); 43] = [
    (Kind::Neck, Kind::Pillar),
    (Kind::Neck, Kind::Capital),
    (Kind::Capital, Kind::Neck),
    (Kind::Capital, Kind::Pillar),
    (Kind::Neck, Kind::KneeBlock),
    (Kind::Pillar, Kind::Base),
    (Kind::FrontFoot, Kind::Base),
    (Kind::RearFoot, Kind::Base),
    (Kind::Board, Kind::Base),
    (Kind::Board, Kind::Side),
    (Kind::Board, Kind::FootBlock),
    (Kind::Board, Kind::KneeBlock),
    (Kind::Strip, Kind::Board),
    (Kind::Rib, Kind::Board),
    (Kind::Rib, Kind::FootBlock),
    (Kind::Rib, Kind::KneeBlock),
    (Kind::CrossBar, Kind::Board),
    (Kind::LongBar, Kind::Board),
    (Kind::LongBar, Kind::FootBlock),
    (Kind::Side, Kind::Base),
    (Kind::Side, Kind::Board),
    (Kind::Side, Kind::Back),
    (Kind::Side, Kind::FootBlock),
    (Kind::Side, Kind::KneeBlock),
    (Kind::Back, Kind::Base),
    (Kind::Back, Kind::KneeBlock),
    (Kind::FrontLiner, Kind::Side),
    (Kind::FrontLiner, Kind::Board),
    (Kind::FrontLiner, Kind::FootBlock),
    (Kind::FrontLiner, Kind::KneeBlock),
    (Kind::BackLiner, Kind::Side),
    (Kind::BackLiner, Kind::Back),
    (Kind::BackLiner, Kind::Base),
    (Kind::BackLiner, Kind::KneeBlock),
    (Kind::SideBrace, Kind::Side),
    (Kind::SideBrace, Kind::FrontLiner),
    (Kind::SideBrace, Kind::BackLiner),
    (Kind::BackBrace, Kind::Back),
    (Kind::BackBrace, Kind::BackLiner),
    (Kind::FootBlock, Kind::Base),
    (Kind::FootBlock, Kind::Side),
    (Kind::FootBlock, Kind::Board),
    (Kind::KneeBlock, Kind::Side),
];

/// Two parts with faces that meet.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Fit {
    /// The one.
    pub one: Name,
    /// The other.
    pub other: Name,
    /// How far apart their faces lie at most; below 0 where they lie in each other.
    pub gap_m: f64,
    /// On how much they meet.
    pub area_m2: f64,
}

/// All faces that must meet, and the parts that meet nothing of a kind that is there.
pub fn fits(whole: &Whole) -> (Vec<Fit>, Vec<(Name, Kind)>) {
    let (mut all, mut missing) = (Vec::new(), Vec::new());
    for (one, other) in MEET {
        if whole.of(other).next().is_none() {
            continue;
        }
        for part in whole.of(one) {
            let own_side = |next: &&Part| {
                part.name.hand.is_none_or(|hand| next.name.hand.is_none_or(|own| own == hand))
            };
            let found: Vec<Fit> =
                whole.of(other).filter(own_side).filter_map(|next| met(part, next)).collect();
            if found.is_empty() {
                missing.push((part.name, other));
            }
            all.extend(found);
        }
    }
    (all, missing)
}

/// Where the faces of two parts meet most.
fn met(one: &Part, other: &Part) -> Option<Fit> {
    let faces =
        |part: &Part| -> Vec<Vec<Spot>> { part.body().iter().flat_map(Cell::faces).collect() };
    let (mut best, beside) = (None, faces(other));
    for face in faces(one) {
        let square = unit(turn(&face));
        for next in &beside {
            if dot(square, unit(turn(next))) > -1.0 + 1e-9 {
                continue;
            }
            let off = |at: &Spot| dot(square, minus(*at, face[0]));
            let gap_m = next
                .iter()
                .map(off)
                .fold(0.0, |most: f64, off| if off.abs() > most.abs() { off } else { most });
            let area_m2 = if gap_m.abs() <= ROOM_M { shared(&face, next) } else { 0.0 };
            if area_m2 > LEAST_AREA_M2 && best.is_none_or(|best: Fit| area_m2 > best.area_m2) {
                best = Some(Fit { one: one.name, other: other.name, gap_m, area_m2 });
            }
        }
    }
    best
}

/// What two faces in one plane have in common; of faces without inward corners.
fn shared(face: &[Spot], other: &[Spot]) -> f64 {
    let square = unit(turn(face));
    let mut left = other.to_vec();
    for at in 0..face.len() {
        let (from, to) = (face[at], face[(at + 1) % face.len()]);
        let inward = cross(square, minus(to, from));
        let off = |place: &Spot| dot(inward, minus(*place, from));
        let mut kept = Vec::new();
        for place in 0..left.len() {
            let (here, next) = (left[place], left[(place + 1) % left.len()]);
            let (a, b) = (off(&here), off(&next));
            if a >= 0.0 {
                kept.push(here);
            }
            if a * b < 0.0 {
                kept.push(plus(here, times(a / (a - b), minus(next, here))));
            }
        }
        left = kept;
    }
    0.5 * size(turn(&left))
}

/// Two parts that lie in each other, and how deep at least.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Clash {
    /// The one.
    pub one: Name,
    /// The other.
    pub other: Name,
    /// How far one must move to be free.
    pub deep_m: f64,
}

/// All parts that lie in each other. A tenon may lie where its mortise is.
pub fn clashes(whole: &Whole) -> Vec<Clash> {
    clashes_of(whole, |_| true)
}

/// Those of the parts that are asked for with any other.
pub fn clashes_of(whole: &Whole, asked: impl Fn(Kind) -> bool) -> Vec<Clash> {
    let pieces: Vec<Vec<Piece>> = whole.parts.iter().map(pieces).collect();
    let mut found = Vec::new();
    for (at, one) in whole.parts.iter().enumerate() {
        for (next, other) in whole.parts.iter().enumerate().skip(at + 1) {
            if !(asked(one.name.kind) || asked(other.name.kind)) {
                continue;
            }
            let mut deep_m = 0.0_f64;
            for piece in &pieces[at] {
                for beside in &pieces[next] {
                    let (cell, near) = (&piece.cell, &beside.cell);
                    if piece.is_apart(beside) || is_mortised(one, near) || is_mortised(other, cell)
                    {
                        continue;
                    }
                    deep_m = deep_m.max(depth(cell, near, &piece.squares, &beside.squares));
                }
            }
            if deep_m > ROOM_M {
                found.push(Clash { one: one.name, other: other.name, deep_m });
            }
        }
    }
    found
}

/// Whether a part has a mortise for a cell or for some of it.
fn is_mortised(part: &Part, cell: &Cell) -> bool {
    part.cuts.iter().any(|cut| {
        let planes = cut.planes();
        let within = |at: &Spot| planes.iter().all(|plane| plane.off(*at) < SAME_M);
        cell.corners().filter(within).count() >= 4
    })
}

/// A piece without inward corners.
struct Piece {
    cell: Cell,
    /// Square to its faces.
    squares: Vec<Spot>,
    /// The least box round it.
    low: Spot,
    high: Spot,
}

impl Piece {
    fn new(cell: Cell) -> Self {
        let squares = cell.faces().iter().map(|face| unit(turn(face))).collect();
        let none = ([f64::INFINITY; 3], [f64::NEG_INFINITY; 3]);
        let (low, high) = cell.corners().fold(none, |(low, high), at| {
            ([0, 1, 2].map(|i| low[i].min(at[i])), [0, 1, 2].map(|i| high[i].max(at[i])))
        });
        Self { cell, squares, low, high }
    }

    /// Whether their boxes do not lie in each other by more than the room.
    fn is_apart(&self, other: &Self) -> bool {
        (0..3).any(|i| self.low[i] > other.high[i] - ROOM_M || other.low[i] > self.high[i] - ROOM_M)
    }
}

fn pieces(part: &Part) -> Vec<Piece> {
    part.cells.iter().flat_map(convex).map(Piece::new).collect()
}

/// How deep two pieces without inward corners lie in each other: the least way that frees one, of those square to a face or
/// to an edge of both; 0 where they do not.
fn depth(one: &Cell, other: &Cell, squares: &[Spot], others: &[Spot]) -> f64 {
    let mut least = f64::INFINITY;
    let edges = |cell: &Cell| {
        let count = cell.near.len();
        let mut ways: Vec<Spot> = Vec::new();
        let all = (0..count).flat_map(|at| {
            let next = (at + 1) % count;
            [
                minus(cell.near[next], cell.near[at]),
                minus(cell.far[next], cell.far[at]),
                minus(cell.far[at], cell.near[at]),
            ]
        });
        for way in all.map(unit) {
            if !ways.iter().any(|own| dot(*own, way).abs() > 1.0 - 1e-9) {
                ways.push(way);
            }
        }
        ways
    };
    let (ways, beside) = (edges(one), edges(other));
    let crossed = ways.iter().flat_map(|way| beside.iter().map(|next| cross(*way, *next)));
    for way in squares.iter().chain(others).copied().chain(crossed) {
        if size(way) < 1e-6 {
            continue;
        }
        let way = unit(way);
        let reach = |cell: &Cell| {
            let along = cell.corners().map(|at| dot(at, way));
            along.fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), at| {
                (low.min(at), high.max(at))
            })
        };
        let (a, b) = (reach(one), reach(other));
        let deep = (a.1 - b.0).min(b.1 - a.0);
        if deep <= 0.0 {
            return 0.0;
        }
        least = least.min(deep);
    }
    if least.is_finite() { least } else { 0.0 }
}

/// A cell cut into pieces of three corners, by ears, where its face has an inward one.
fn convex(cell: &Cell) -> Vec<Cell> {
    let square = unit(turn(&cell.near));
    let mut left: Vec<usize> = (0..cell.near.len()).collect();
    let bends = |a: usize, b: usize, c: usize| {
        let (a, b, c) = (cell.near[a], cell.near[b], cell.near[c]);
        dot(square, cross(minus(b, a), minus(c, b)))
    };
    let count = left.len();
    let all_out = (0..count).all(|at| bends(at, (at + 1) % count, (at + 2) % count) >= -1e-12);
    if all_out {
        return vec![cell.clone()];
    }
    let mut out = Vec::new();
    while left.len() > 3 {
        let count = left.len();
        let ear = (0..count).find(|at| {
            let (a, b, c) = (left[(at + count - 1) % count], left[*at], left[(at + 1) % count]);
            let inside = |p: &&usize| {
                ![a, b, c].contains(*p)
                    && [(a, b), (b, c), (c, a)]
                        .iter()
                        .all(|(from, to)| bends(*from, *to, **p) >= 0.0)
            };
            bends(a, b, c) > 0.0 && !left.iter().any(|p| inside(&p))
        });
        // A face without an ear is none that any part has; its rest is left out.
        let Some(ear) = ear else { break };
        let three = [left[(ear + count - 1) % count], left[ear], left[(ear + 1) % count]];
        out.push(Cell {
            near: three.map(|at| cell.near[at]).to_vec(),
            far: three.map(|at| cell.far[at]).to_vec(),
        });
        left.remove(ear);
    }
    if left.len() == 3 {
        out.push(Cell {
            near: left.iter().map(|at| cell.near[*at]).collect(),
            far: left.iter().map(|at| cell.far[*at]).collect(),
        });
    }
    out
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::testing::assert_close;

    fn block(from: Spot, to: Spot) -> Cell {
        let near = vec![
            from,
            [to[0], from[1], from[2]],
            [to[0], to[1], from[2]],
            [from[0], to[1], from[2]],
        ];
        Cell::raised(near, [0.0, 0.0, to[2] - from[2]]).expect("a block")
    }

    fn deep(one: &Cell, other: &Cell) -> f64 {
        let squares = |cell: &Cell| -> Vec<Spot> {
            cell.faces().iter().map(|face| unit(turn(face))).collect()
        };
        depth(one, other, &squares(one), &squares(other))
    }

    #[test]
    fn blocks_lie_in_each_other_by_the_least_way_that_frees_them() {
        let one = block([0.0; 3], [1.0, 1.0, 1.0]);
        assert_close(deep(&one, &block([0.9, 0.2, 0.3], [2.0, 0.8, 0.7])), 0.1, 1e-12, "a tenth");
        assert_eq!(deep(&one, &block([1.0, 0.0, 0.0], [2.0, 1.0, 1.0])), 0.0);
        assert_eq!(deep(&one, &block([3.0, 3.0, 3.0], [4.0, 4.0, 4.0])), 0.0);
    }

    /// An L of three squares, cut into triangles that hold all of it.
    #[test]
    fn a_face_with_an_inward_corner_is_cut_into_pieces_that_hold_all_of_it() {
        let corners = [(0.0, 0.0), (2.0, 0.0), (2.0, 1.0), (1.0, 1.0), (1.0, 2.0), (0.0, 2.0)];
        let near = corners.iter().map(|(x, y)| [*x, *y, 0.0]).collect();
        let cell = Cell::raised(near, [0.0, 0.0, 0.5]).expect("an L");
        let cut = convex(&cell);
        assert_eq!(cut.len(), 4);
        let all: f64 = cut.iter().map(|piece| piece.moments().0.abs()).sum();
        assert_close(all, 1.5, 1e-12, "volume");
        // In the inner corner of the L nothing clashes.
        let other = block([1.1, 1.1, 0.0], [2.0, 2.0, 0.5]);
        assert!(cut.iter().all(|piece| deep(piece, &other) == 0.0));
    }

    #[test]
    fn faces_share_what_lies_on_both() {
        let square =
            |x: f64| vec![[x, 0.0, 0.0], [x + 2.0, 0.0, 0.0], [x + 2.0, 2.0, 0.0], [x, 2.0, 0.0]];
        assert_close(shared(&square(0.0), &square(0.5)), 3.0, 1e-12, "three of four");
        assert_close(shared(&square(0.0), &square(5.0)) + 1.0, 1.0, 1e-12, "nothing");
    }
}
