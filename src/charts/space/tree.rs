//! Flat pieces and straight lines in space, cut along planes so that from any place they can be painted the farthest first.
//!
//! # Source
//!
//! Binary space partitioning after Fuchs, Kedem and Naylor, "On visible surface generation by a priori tree structures",
//! SIGGRAPH 1980; from memory.

use super::Of;
use crate::engine::order::sort;
use crate::engine::parts::{Plane, Spot};

/// Within so much of a plane a place lies in it, in metres.
const IN_PLANE_M: f64 = 1e-6;
/// So many faces are tried as the plane of a node.
const TRIED: usize = 12;
/// A face that is cut counts as so many that lie on one side more than on the other.
const CUT: usize = 6;

/// A flat piece.
#[derive(Clone, Debug)]
pub struct Flat {
    /// What it is of.
    pub of: Of,
    /// Its plane, square to which it is seen.
    pub plane: Plane,
    /// Its outline, and those of its holes.
    pub rings: Vec<Vec<Spot>>,
    /// Its edges that are drawn.
    pub edges: Vec<[Spot; 2]>,
    /// Where it was cut off the rest of its face, so that no light comes through between both.
    pub seams: Vec<[Spot; 2]>,
}

/// A straight line.
#[derive(Clone, Copy, Debug)]
pub struct Stick {
    /// What it is of.
    pub of: Of,
    /// Its ends.
    pub ends: [Spot; 2],
    /// How wide it is, in metres.
    pub wide: f64,
}

#[derive(Clone, Debug, Default)]
struct Node {
    /// Without one nothing is cut any more.
    plane: Option<Plane>,
    flats: Vec<Flat>,
    sticks: Vec<Stick>,
    /// The nodes on the side to which the plane is square and on the other.
    before: Option<usize>,
    behind: Option<usize>,
}

/// The pieces, cut.
#[derive(Clone, Debug, Default)]
pub struct Tree {
    nodes: Vec<Node>,
}

/// What is still to be put into a node.
struct Rest {
    node: usize,
    flats: Vec<Flat>,
    sticks: Vec<Stick>,
}

impl Tree {
    /// Cuts all pieces.
    pub fn new(flats: Vec<Flat>, sticks: Vec<Stick>) -> Self {
        let mut tree = Self { nodes: vec![Node::default()] };
        let mut rests = vec![Rest { node: 0, flats, sticks }];
        while let Some(rest) = rests.pop() {
            tree.fill(rest, &mut rests);
        }
        tree
    }

    fn fill(&mut self, rest: Rest, rests: &mut Vec<Rest>) {
        let mut flats = rest.flats;
        let Some(own) = best(&flats) else {
            self.nodes[rest.node].sticks = rest.sticks;
            return;
        };
        // Whatever its corners say, a face lies in its own plane, so that each node takes one at least.
        let own = flats.swap_remove(own);
        let plane = own.plane;
        let (mut before, mut behind) = ((Vec::new(), Vec::new()), (Vec::new(), Vec::new()));
        let mut node = Node { plane: Some(plane), flats: vec![own], ..Node::default() };
        for face in flats {
            match side_of(&plane, face.rings.iter().flatten()) {
                (false, false) => node.flats.push(face),
                (true, false) => before.0.push(face),
                (false, true) => behind.0.push(face),
                (true, true) => {
                    let seams = seams(&face, &plane);
                    before.0.extend(cut(&face, &plane, 1.0, &seams));
                    behind.0.extend(cut(&face, &plane, -1.0, &seams));
                }
            }
        }
        for stick in rest.sticks {
            match side_of(&plane, &stick.ends) {
                (false, false) => node.sticks.push(stick),
                (true, false) => before.1.push(stick),
                (false, true) => behind.1.push(stick),
                (true, true) => {
                    let part =
                        |side| Some(Stick { ends: cut_line(stick.ends, &plane, side)?, ..stick });
                    before.1.extend(part(1.0));
                    behind.1.extend(part(-1.0));
                }
            }
        }
        let mut child = |(flats, sticks): (Vec<Flat>, Vec<Stick>)| {
            if flats.is_empty() && sticks.is_empty() {
                return None;
            }
            self.nodes.push(Node::default());
            rests.push(Rest { node: self.nodes.len() - 1, flats, sticks });
            Some(self.nodes.len() - 1)
        };
        node.before = child(before);
        node.behind = child(behind);
        self.nodes[rest.node] = node;
    }

    /// Shows what lies together, the farthest from the eye first.
    pub fn farthest_first(&self, eye: Spot, mut show: impl FnMut(&[Flat], &[Stick])) {
        // A node is come to twice: before what lies beyond its plane, and after it.
        let mut way = vec![(0, false)];
        while let Some((at, is_turn)) = way.pop() {
            let Some(node) = self.nodes.get(at) else { continue };
            let is_before = node.plane.is_none_or(|plane| plane.off(eye) > 0.0);
            let (near, far) =
                if is_before { (node.before, node.behind) } else { (node.behind, node.before) };
            if is_turn {
                show(&node.flats, &node.sticks);
                way.extend(near.map(|node| (node, false)));
            } else {
                way.push((at, true));
                way.extend(far.map(|node| (node, false)));
            }
        }
    }
}

/// The place of the face whose plane cuts the fewest others and leaves as many on either side, among some.
fn best(flats: &[Flat]) -> Option<usize> {
    let step = flats.len().div_ceil(TRIED).max(1);
    let cost = |plane: &Plane| {
        let (mut before, mut behind, mut cut) = (0_usize, 0_usize, 0_usize);
        for face in flats {
            match side_of(plane, face.rings.iter().flatten()) {
                (true, true) => cut += 1,
                (true, false) => before += 1,
                (false, true) => behind += 1,
                (false, false) => {}
            }
        }
        CUT * cut + before.abs_diff(behind)
    };
    (0..flats.len()).step_by(step).min_by_key(|at| cost(&flats[*at].plane))
}

/// Whether anything lies before a plane, and whether anything lies behind it.
fn side_of<'a>(plane: &Plane, places: impl IntoIterator<Item = &'a Spot>) -> (bool, bool) {
    places.into_iter().fold((false, false), |(before, behind), at| {
        let off = plane.off(*at);
        (before || off > IN_PLANE_M, behind || off < -IN_PLANE_M)
    })
}

/// Between two places, where a line meets a plane from which they lie so far off.
fn between(one: Spot, other: Spot, off: (f64, f64)) -> Spot {
    let share = off.0 / (off.0 - off.1);
    [0, 1, 2].map(|axis| one[axis] + share * (other[axis] - one[axis]))
}

/// Where a plane goes through a face, by the rule of odd and even: from where it enters to where it leaves.
fn seams(face: &Flat, plane: &Plane) -> Vec<[Spot; 2]> {
    let mut all = Vec::new();
    for ring in &face.rings {
        for (at, place) in ring.iter().enumerate() {
            let next = ring[(at + 1) % ring.len()];
            let off = (plane.off(*place), plane.off(next));
            if (off.0 >= 0.0) != (off.1 >= 0.0) {
                all.push(between(*place, next, off));
            }
        }
    }
    // In their order along the line in which both planes meet.
    let Some(from) = all.first().copied() else { return Vec::new() };
    let far = |at: &Spot| (0..3).map(|axis| (at[axis] - from[axis]).abs()).fold(0.0, f64::max);
    let Some(end) = all.iter().copied().max_by(|one, two| far(one).total_cmp(&far(two))) else {
        return Vec::new();
    };
    let along = |at: &Spot| {
        (0..3).map(|axis| (at[axis] - from[axis]) * (end[axis] - from[axis])).sum::<f64>()
    };
    sort(&mut all, |one, two| along(one) > along(two));
    all.chunks_exact(2).map(|pair| [pair[0], pair[1]]).collect()
}

/// What of a face lies on one side of a plane; each outline is cut by itself, as they are filled by odd and even.
fn cut(face: &Flat, plane: &Plane, side: f64, new_seams: &[[Spot; 2]]) -> Option<Flat> {
    let ring = |ring: &Vec<Spot>| -> Vec<Spot> {
        let mut kept = Vec::with_capacity(ring.len() + 2);
        for (at, place) in ring.iter().enumerate() {
            let next = ring[(at + 1) % ring.len()];
            let off = (side * plane.off(*place), side * plane.off(next));
            if off.0 >= 0.0 {
                kept.push(*place);
            }
            if (off.0 > 0.0 && off.1 < 0.0) || (off.0 < 0.0 && off.1 > 0.0) {
                kept.push(between(*place, next, off));
            }
        }
        kept
    };
    let rings: Vec<Vec<Spot>> = face.rings.iter().map(ring).filter(|ring| ring.len() > 2).collect();
    let kept = |lines: &[[Spot; 2]]| -> Vec<[Spot; 2]> {
        lines.iter().filter_map(|ends| cut_line(*ends, plane, side)).collect()
    };
    let mut seams = kept(&face.seams);
    seams.extend(new_seams);
    (!rings.is_empty()).then_some(Flat {
        of: face.of,
        plane: face.plane,
        rings,
        edges: kept(&face.edges),
        seams,
    })
}

/// What of a line lies on one side of a plane, or in it.
fn cut_line(ends: [Spot; 2], plane: &Plane, side: f64) -> Option<[Spot; 2]> {
    let off = ends.map(|at| side * plane.off(at));
    match (off[0] >= -IN_PLANE_M, off[1] >= -IN_PLANE_M) {
        (true, true) => Some(ends),
        (true, false) => Some([ends[0], between(ends[0], ends[1], (off[0].max(0.0), off[1]))]),
        (false, true) => Some([between(ends[0], ends[1], (off[0], off[1].max(0.0))), ends[1]]),
        (false, false) => None,
    }
}
