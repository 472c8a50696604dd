//! How much nearer the ends of strings come as the frame in space gives.

use super::super::gives::Matrix;
use super::super::{Build, Case};
use super::{Base, Feet, Joined, Ring, softer};
use crate::engine::structure::banded::Sparse;
use crate::engine::structure::frame::{Point, Pull, Station};
use crate::engine::structure::space::{Held, Six};

impl Ring<'_> {
    /// What each string does to the nodes with a newton.
    fn forces(&self, pulls: &Feet) -> Vec<Vec<f64>> {
        let force = |(s_m, pull): &(f64, Pull)| {
            let mut forces = vec![0.0; self.frame.numbers()];
            self.hang(&mut forces, *s_m, pull);
            forces
        };
        pulls.iter().map(force).collect()
    }

    /// How much nearer the ends of each string come for a newton on each, held in some way.
    fn gives(&self, pulls: &Feet, held: &Held) -> Matrix {
        let forces = self.forces(pulls);
        let hung: Vec<Sparse> = forces.iter().map(|force| Sparse::of(force)).collect();
        let under = |force: &Vec<f64>| {
            let mut moved = force.clone();
            held.solve(&mut moved);
            hung.iter().map(|other| other.times(&moved)).collect()
        };
        forces.iter().map(under).collect()
    }

    /// How much nearer they come with so many newtons on each.
    fn nearer(&self, pulls: &Feet, tensions_n: &[f64], held: &Held) -> Vec<f64> {
        let forces = self.forces(pulls);
        let mut moved = vec![0.0; self.frame.numbers()];
        for (force, tension_n) in forces.iter().zip(tensions_n) {
            for (sum, part) in moved.iter_mut().zip(force) {
                *sum += tension_n * part;
            }
        }
        held.solve(&mut moved);
        forces.iter().map(|force| Sparse::of(force).times(&moved)).collect()
    }
}

/// How much nearer the ends of each string come to each other for each newton on another, in m/N, row by row, in each case
/// that counts, the stiffest first. The pulls are of 1 N. `None` where a number is none.
pub(in crate::engine::bearing) fn gives(
    base: &Base,
    cuts: &[Station],
    pulls: &Feet,
    joined: (Point, Option<[Six; 3]>),
    build: &Build,
) -> Option<Vec<(Case, Matrix)>> {
    let mut all = Vec::new();
    each_case(base, cuts, pulls, joined, build, |case, ring, held| {
        all.push((case, ring.gives(pulls, held)));
    })?;
    let mut numbers = all.iter().flat_map(|(_, matrix)| matrix).flatten();
    numbers.all(|number| number.is_finite()).then_some(all)
}

/// How much nearer they come under the tensions of all, in metres.
pub(in crate::engine::bearing) fn nearer(
    base: &Base,
    cuts: &[Station],
    (pulls, tensions_n): (&Feet, &[f64]),
    joined: (Point, Option<[Six; 3]>),
    build: &Build,
) -> Option<Vec<Vec<f64>>> {
    let mut all = Vec::new();
    each_case(base, cuts, pulls, joined, build, |_, ring, held| {
        all.push(ring.nearer(pulls, tensions_n, held));
    })?;
    let mut numbers = all.iter().flatten();
    numbers.all(|number| number.is_finite()).then_some(all)
}

/// The frame in each case that counts, the stiffest first. `None` where it is none.
fn each_case(
    base: &Base,
    cuts: &[Station],
    pulls: &Feet,
    (foot, springs): (Point, Option<[Six; 3]>),
    build: &Build,
    mut take: impl FnMut(Case, &Ring<'_>, &Held),
) -> Option<()> {
    let at = (foot, pulls.first()?.1.offset);
    let ring = |joined: Joined<'_>| Ring::new(base, cuts, at, build, joined);
    let firm = ring(Joined::Firmly)?;
    if build.soundbox.is_none() {
        take(Case::NothingGives, &firm, &firm.held(false)?);
    }
    take(Case::NoJointGives, &firm, &firm.held(true)?);
    if let Some(springs) = springs.map(softer) {
        let given = ring(Joined::Springs(&springs))?;
        take(Case::JointsGive, &given, &given.held(true)?);
    } else {
        let pushed = ring(Joined::Pushed)?;
        take(Case::PillarPushes, &pushed, &pushed.on_pins()?);
    }
    Some(())
}
