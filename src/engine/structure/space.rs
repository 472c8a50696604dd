//! A frame of straight bars in space, linear and elastic: how its nodes move under forces, and what every bar bears.
//!
//! Each bar has six ways to give: along itself, in twist, and in each plane in bending alike at both ends and in bending
//! with shear. Each way is one number of the movements of its two nodes, so that the stiffness of the whole is a sum of
//! products. A joint is a piece without length whose six ways are three pushes and three turns.

#[cfg(test)]
mod tests;

use super::banded::{Banded, Split};
use super::section::Rectangle;
use crate::engine::units::Stress;

/// A place or a direction.
pub type Vector = [f64; 3];
/// Three movements and three turns of a node, or three forces and three moments on it.
pub type Six = [f64; 6];

/// Numbers of a node.
const OF_NODE: usize = 6;

/// Shear area over area of a rectangle in bending. Source: the usual value; S. Timoshenko, *Strength of Materials* has
/// 2/3 and later books 5/6 (from memory).
const SHEAR_SHARE: f64 = 5.0 / 6.0;

/// `a × b`.
pub fn cross(a: Vector, b: Vector) -> Vector {
    [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]]
}

/// `a · b`.
pub fn dot(a: Vector, b: Vector) -> f64 {
    a[0] * b[0] + a[1] * b[1] + a[2] * b[2]
}

/// `b − a`.
pub fn way(a: Vector, b: Vector) -> Vector {
    [b[0] - a[0], b[1] - a[1], b[2] - a[2]]
}

fn size(a: Vector) -> f64 {
    dot(a, a).sqrt()
}

fn over(a: Vector, length: f64) -> Vector {
    [a[0] / length, a[1] / length, a[2] / length]
}

/// A force with its moment about a place that lies `arm` before where it acts.
pub fn at_arm(force: Vector, arm: Vector) -> Six {
    let moment = cross(arm, force);
    [force[0], force[1], force[2], moment[0], moment[1], moment[2]]
}

/// How stiff a bar is, in SI units.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Stiffness {
    /// `E A`.
    pub axial: f64,
    /// `G J`.
    pub torsion: f64,
    /// `E I` for bending in the plane of the depth, and sideways.
    pub bending: [f64; 2],
    /// `G` times shear area in both directions.
    pub shear: [f64; 2],
}

impl Stiffness {
    /// Of a rectangle of a material with modulus and shear modulus.
    pub fn of(section: Rectangle, modulus: Stress, shear_modulus: Stress) -> Self {
        let (e, g, area) = (modulus.to_pa(), shear_modulus.to_pa(), section.area_m2());
        let shear = SHEAR_SHARE * g * area;
        Self {
            axial: e * area,
            torsion: g * section.torsion_m4(),
            bending: [e * section.inertia_m4(), e * section.on_its_side().inertia_m4()],
            shear: [shear, shear],
        }
    }
}

/// A bar or a joint between two nodes.
#[derive(Clone, Debug)]
pub struct Piece {
    /// The nodes, the one with the lower number first.
    nodes: [usize; 2],
    /// Along it, in the plane of its depth, and across that.
    axes: [Vector; 3],
    length: f64,
    /// What each way is of the movements of both nodes.
    ways: [[f64; 12]; 6],
    /// How stiff it is in each.
    stiff: Six,
}

/// What the part of a bar beyond a cut gives to the part before it, in the bar's axes: the pull along it, the shear in
/// the plane of the depth and across; the torque, the bending about the direction of the first shear, and that in the
/// plane of the depth.
pub type Cut = Six;

impl Piece {
    /// A bar between two nodes at their places, with arms that do not give from the nodes to its ends. Its breadth lies
    /// as nearly in the direction given as a direction square to it can.
    ///
    /// `None` where it has no length or lies in that direction. The first node has the lower number.
    ///
    /// # Source
    ///
    /// Beams with shear deformation after Timoshenko, as in J. S. Przemieniecki, *Theory of Matrix Structural Analysis*,
    /// chapter 5 (from memory), split into ways of bending that do not take part in each other.
    pub fn bar(
        nodes: [usize; 2],
        places: [Vector; 2],
        arms: [Vector; 2],
        breadth: Vector,
        stiff: Stiffness,
    ) -> Option<Self> {
        let whole = way(places[0], places[1]);
        let along = [0, 1, 2].map(|i| whole[i] + arms[1][i] - arms[0][i]);
        let length = size(along);
        let x = over(along, length);
        let square = cross(breadth, x);
        let y = over(square, size(square));
        let axes = [x, y, cross(x, y)];
        if !(axes.iter().flatten().all(|number| number.is_finite()) && length > 0.0) {
            return None;
        }
        let mut ways = [[0.0; 12]; 6];
        ways[0] = difference(x, arms);
        ways[1] = turned(x, -1.0, 1.0);
        let mut stiffs = [stiff.axial / length, stiff.torsion / length, 0.0, 0.0, 0.0, 0.0];
        // In the plane of the depth the turn about z is the slope; across it that about y is the slope turned over.
        for (at, about, to, sign) in [(2, axes[2], y, -1.0), (4, y, axes[2], 1.0)] {
            let (bending, shear) = (stiff.bending[at / 2 - 1], stiff.shear[at / 2 - 1]);
            let softer = 1.0 + 12.0 * bending / (shear * length * length);
            ways[at] = turned(about, 1.0, -1.0);
            ways[at + 1] = turned(about, 1.0, 1.0);
            let moved = difference(to, arms);
            for (number, moved) in ways[at + 1].iter_mut().zip(moved) {
                *number += sign * 2.0 / length * moved;
            }
            stiffs[at] = bending / length;
            stiffs[at + 1] = 3.0 * bending / (length * softer);
        }
        Some(Self { nodes, axes, length, ways, stiff: stiffs })
    }

    /// A joint of two nodes at one place, `arms` away from the nodes, with its six stiffnesses along and about its axes.
    pub fn joint(nodes: [usize; 2], arms: [Vector; 2], axes: [Vector; 3], stiff: Six) -> Self {
        let [x, y, z] = axes;
        let pushes = [x, y, z].map(|axis| difference(axis, arms));
        let turns = [x, y, z].map(|axis| turned(axis, -1.0, 1.0));
        let ways = [pushes[0], pushes[1], pushes[2], turns[0], turns[1], turns[2]];
        Self { nodes, axes, length: 0.0, ways, stiff }
    }

    /// Along it, in the plane of its depth, and across that.
    pub const fn axes(&self) -> [Vector; 3] {
        self.axes
    }

    /// What each way is of how the nodes moved.
    fn given(&self, moved: &[f64], way: usize) -> f64 {
        let mut sum = 0.0;
        for (number, part) in self.ways[way].iter().enumerate() {
            let node = self.nodes[number / OF_NODE];
            sum += part * moved[OF_NODE * node + number % OF_NODE];
        }
        sum
    }

    /// What it bears at its first and at its last end.
    pub fn cuts(&self, moved: &[f64]) -> [Cut; 2] {
        let mut s = [0.0; 6];
        for (way, force) in s.iter_mut().enumerate() {
            *force = self.stiff[way] * self.given(moved, way);
        }
        if self.length == 0.0 {
            return [s, s];
        }
        // The bar is turned at its ends by s₃ + s₂ and s₃ − s₂ in the plane, by s₅ + s₄ and s₅ − s₄ across it; shear
        // keeps these in balance.
        let (down, aside) = (-2.0 * s[3] / self.length, 2.0 * s[5] / self.length);
        [
            [s[0], down, aside, s[1], -(s[5] + s[4]), -(s[3] + s[2])],
            [s[0], down, aside, s[1], s[5] - s[4], s[3] - s[2]],
        ]
    }

    /// Adds its stiffness to that of the whole.
    fn add(&self, whole: &mut Banded) {
        let at = |number: usize| OF_NODE * self.nodes[number / OF_NODE] + number % OF_NODE;
        for (way, stiff) in self.ways.iter().zip(self.stiff) {
            if stiff == 0.0 {
                continue;
            }
            for (row, part) in way.iter().enumerate().filter(|(_, part)| **part != 0.0) {
                for (column, other) in way.iter().enumerate().take(row + 1) {
                    whole.add(at(row), at(column), stiff * part * other);
                }
            }
        }
    }
}

/// How much farther the second end moves in a direction than the first.
fn difference(to: Vector, arms: [Vector; 2]) -> [f64; 12] {
    let mut all = [0.0; 12];
    for (end, arm) in arms.into_iter().enumerate() {
        let sign = if end == 0 { -1.0 } else { 1.0 };
        let turn = cross(arm, to);
        for i in 0..3 {
            all[OF_NODE * end + i] = sign * to[i];
            all[OF_NODE * end + 3 + i] = sign * turn[i];
        }
    }
    all
}

/// The turns of both ends about a direction, so much of each.
fn turned(about: Vector, first: f64, last: f64) -> [f64; 12] {
    let mut all = [0.0; 12];
    for i in 0..3 {
        all[3 + i] = first * about[i];
        all[9 + i] = last * about[i];
    }
    all
}

/// The stiffness of pieces put together; nodes stand in such an order that those of a piece are near to each other.
#[derive(Clone, Debug)]
pub struct Frame {
    nodes: usize,
    whole: Banded,
}

/// A frame that is held and ready for forces.
#[derive(Clone, Debug)]
pub struct Held {
    split: Split,
    /// The numbers that cannot move.
    fast: Vec<usize>,
}

impl Frame {
    /// So many nodes without anything between them; the nodes of a piece are at most `apart` from each other.
    pub fn new(nodes: usize, apart: usize) -> Self {
        Self { nodes, whole: Banded::new(OF_NODE * nodes, OF_NODE * (apart + 1) - 1) }
    }

    /// Puts a piece in.
    pub fn add(&mut self, piece: &Piece) {
        piece.add(&mut self.whole);
    }

    /// How many numbers say how it moves.
    pub const fn numbers(&self) -> usize {
        OF_NODE * self.nodes
    }

    /// Holds numbers of nodes: 6 times the node, and 0 to 5. `None` where what is left can move freely.
    pub fn hold(mut self, fast: Vec<usize>) -> Option<Held> {
        for number in &fast {
            self.whole.hold(*number);
        }
        Some(Held { split: self.whole.split()?, fast })
    }
}

impl Held {
    /// How the nodes move: in place of the forces on them.
    pub fn solve(&self, forces: &mut [f64]) {
        for number in &self.fast {
            forces[*number] = 0.0;
        }
        self.split.solve(forces);
    }
}

/// All six numbers of a node.
pub fn all_of(node: usize) -> std::ops::Range<usize> {
    OF_NODE * node..OF_NODE * (node + 1)
}
