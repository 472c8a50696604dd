//! The faces of parts as flat pieces: with the edges that are drawn, sound holes and their walls.

use super::Of;
use super::tree::Flat;
use crate::engine::order::sort;
use crate::engine::parts::{Part, Plane, Sheet, Spot, flat};

/// Two faces whose squares differ by less than this have no edge between them, as the cosine: some 20°.
const SMOOTH: f64 = 0.94;

/// The faces of a part, with its sound holes and their walls.
pub(super) fn part_flats(at: usize, part: &Part, flats: &mut Vec<Flat>) {
    let of = Of::Part(at, part.name.kind);
    if let Some(sheet) = &part.sheet {
        return bent_flats(of, part, sheet, flats);
    }
    for (place, cell) in part.cells.iter().enumerate() {
        let faces = cell.faces();
        let planes: Vec<Plane> = faces.iter().map(|face| Plane::of(face)).collect();
        let first = flats.len();
        for (face, plane) in faces.iter().zip(&planes) {
            flats.push(Flat {
                of,
                plane: *plane,
                rings: vec![face.clone()],
                edges: Vec::new(),
                seams: Vec::new(),
            });
        }
        let count = cell.near.len();
        for side in 0..count {
            let (next, before) = ((side + 1) % count, (side + count - 1) % count);
            let (one, two) = (2 + side, 2 + before);
            for (face, ends, other) in [
                (0, [cell.near[side], cell.near[next]], one),
                (1, [cell.far[side], cell.far[next]], one),
                (one, [cell.near[side], cell.far[side]], two),
            ] {
                if is_edge(planes[face], planes[other]) {
                    flats[first + face].edges.push(ends);
                    flats[first + other].edges.push(ends);
                }
            }
        }
        if place > 0 {
            continue;
        }
        for opening in &part.openings {
            let near: Vec<Spot> =
                flat(opening).iter().map(|(u, v)| part.face.place([*u, *v, 0.0])).collect();
            let onto = |face: usize| -> Option<Vec<Spot>> {
                near.iter().map(|at| planes[face].met(*at, part.face.w)).collect()
            };
            let (Some(near), Some(far)) = (onto(0), onto(1)) else { continue };
            for (face, ring) in [(0, &near), (1, &far)] {
                let round = ring.iter().zip(ring.iter().cycle().skip(1));
                flats[first + face].edges.extend(round.map(|(one, other)| [*one, *other]));
                flats[first + face].rings.push(ring.clone());
            }
            flats.extend(walls(of, &near, &far));
        }
    }
}

/// The walls of a hole between two faces, seen from within it.
fn walls(of: Of, near: &[Spot], far: &[Spot]) -> Vec<Flat> {
    let count = near.len();
    let all = near
        .iter()
        .chain(far)
        .fold([0.0; 4], |sum, at| [sum[0] + at[0], sum[1] + at[1], sum[2] + at[2], sum[3] + 1.0]);
    let middle = [0, 1, 2].map(|axis| all[axis] / all[3]);
    let wall = |at: usize| {
        let next = (at + 1) % count;
        let mut ring = vec![near[at], near[next], far[next], far[at]];
        let mut plane = Plane::of(&ring);
        if plane.off(middle) < 0.0 {
            ring.reverse();
            plane = Plane::of(&ring);
        }
        Flat { of, plane, rings: vec![ring], edges: Vec::new(), seams: Vec::new() }
    };
    (0..count).map(wall).collect()
}

fn is_edge(one: Plane, other: Plane) -> bool {
    let cos: f64 = (0..3).map(|axis| one.square[axis] * other.square[axis]).sum();
    cos < SMOOTH
}

/// A place on a sheet.
type Place = (f64, f64);

/// How far a place lies to the left of the way from one to another.
fn left_of(at: Place, (from, to): (Place, Place)) -> f64 {
    let way = (to.0 - from.0, to.1 - from.1);
    ((at.1 - from.1) * way.0 - (at.0 - from.0) * way.1) / way.0.hypot(way.1)
}

/// The faces of a bent part: its strips, with the share of each in the sound holes, and no wall between two strips.
fn bent_flats(of: Of, part: &Part, sheet: &Sheet, flats: &mut Vec<Flat>) {
    let holes: Vec<Vec<Place>> = part.openings.iter().map(flat).collect();
    let count = part.body().len();
    let one = |plane, ring| Flat { of, plane, rings: vec![ring], edges: vec![], seams: vec![] };
    for (strip, (cell, flat)) in part.body().iter().zip(sheet.strips()).enumerate() {
        let faces = cell.faces();
        let inner = [strip + 1 < count, false, strip > 0, false];
        let first = flats.len();
        flats.extend(faces[..2].iter().map(|face| one(Plane::of(face), face.clone())));
        for side in (0..4).filter(|side| !inner[*side]) {
            let next = (side + 1) % 4;
            let (near, far) =
                ([cell.near[side], cell.near[next]], [cell.far[side], cell.far[next]]);
            flats[first].edges.push(near);
            flats[first + 1].edges.push(far);
            let mut wall = one(Plane::of(&faces[2 + side]), faces[2 + side].clone());
            wall.edges.extend([near, far]);
            flats.push(wall);
        }
        let sides = [(flat[0], flat[1]), (flat[2], flat[3])];
        for hole in &holes {
            // To the right of both sides, as these go round.
            let ring = sides.iter().fold(hole.clone(), |ring, side| clipped(&ring, *side));
            if ring.len() < 3 {
                continue;
            }
            let [near, far] = [0.0, sheet.thick_m].map(|deep_m| {
                ring.iter().map(|at| sheet.place_in(strip, *at, deep_m)).collect::<Vec<Spot>>()
            });
            let on = |at: usize, side| left_of(ring[at], side).abs() < 1e-9;
            let round = (0..ring.len()).map(|at| (at, (at + 1) % ring.len()));
            let cut =
                round.filter(|(at, next)| !sides.iter().any(|s| on(*at, *s) && on(*next, *s)));
            let walls = walls(of, &near, &far);
            for (at, next) in cut {
                flats[first].edges.push([near[at], near[next]]);
                flats[first + 1].edges.push([far[at], far[next]]);
                flats.push(walls[at].clone());
            }
            flats[first].rings.push(near);
            flats[first + 1].rings.push(far);
        }
        for (side, _) in sides.into_iter().zip([inner[0], inner[2]]).filter(|one| one.1) {
            for (from, to) in uncut(side, &holes) {
                for (face, deep_m) in [(first, 0.0), (first + 1, sheet.thick_m)] {
                    let ends = [from, to].map(|at| sheet.place_in(strip, at, deep_m));
                    flats[face].seams.push(ends);
                }
            }
        }
    }
}

/// What of an outline without inward corners lies to the right of a line.
fn clipped(ring: &[Place], line: (Place, Place)) -> Vec<Place> {
    let mut out = Vec::new();
    for (at, here) in ring.iter().enumerate() {
        let next = ring[(at + 1) % ring.len()];
        let (a, b) = (left_of(*here, line), left_of(next, line));
        if a <= 0.0 {
            out.push(*here);
        }
        if a * b < 0.0 {
            let share = a / (a - b);
            out.push((here.0 + share * (next.0 - here.0), here.1 + share * (next.1 - here.1)));
        }
    }
    out
}

/// The pieces of a line that lie in no hole.
fn uncut((from, to): (Place, Place), holes: &[Vec<Place>]) -> Vec<(Place, Place)> {
    let mut cuts = vec![0.0, 1.0];
    for hole in holes {
        for (at, here) in hole.iter().enumerate() {
            let next = hole[(at + 1) % hole.len()];
            let (a, b) = (left_of(*here, (from, to)), left_of(next, (from, to)));
            if (a > 0.0) != (b > 0.0) {
                let share = a / (a - b);
                let at = (here.0 + share * (next.0 - here.0), here.1 + share * (next.1 - here.1));
                cuts.push(
                    (at.0 - from.0).hypot(at.1 - from.1) / (to.0 - from.0).hypot(to.1 - from.1),
                );
            }
        }
    }
    sort(&mut cuts, |one, other| one > other);
    let at = |share: f64| (from.0 + share * (to.0 - from.0), from.1 + share * (to.1 - from.1));
    cuts.chunks_exact(2).map(|pair| (at(pair[0]), at(pair[1]))).collect()
}
