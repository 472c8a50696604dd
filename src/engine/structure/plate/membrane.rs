//! A board that rises so far that it also hangs between its edges like a cloth: bending and pull in its plane together, after
//! von Kármán.
//!
//! The pull in the plane comes from a stress function on the same patches, `N_x = F_yy`, `N_y = F_xx`, `N_xy = −F_xy`, so that
//! every pull that is looked at is in balance; what the edges do to it is a matter of which of its unknowns are held. The rise
//! is sought among a few shapes: the first is that of the board without pull, each other is what bending alone makes of the
//! forces that are still out of balance. Energies of a few shapes are polynomials, of which the least is found by Newton's way.

use std::rc::Rc;

use super::edged::{Edged, Flat};
use super::few::{Few, dot};
use super::patch::{BAND, FREEDOMS, Grid, POINTS, Pulled};
use super::{Banded, CrossFeels, Edges, Lift, PlateState, Stiffness, add, add_patch, told};
use crate::engine::structure::banded::Split;
use crate::engine::units::Length;

/// How the edges of a board hold it, against turning and in its plane.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Support {
    /// Against turning.
    pub edges: Edges,
    /// How the sides hold it in its plane.
    pub sides: Pulled,
    /// Where they hold it any way: how much a metre of side holds for each metre that it is drawn in, in N/m².
    pub sides_pa: f64,
    /// How the ends hold it in its plane.
    pub ends: Pulled,
}

impl Support {
    /// Edges that turn freely and do not pull.
    pub const LOOSE: Self =
        Self { edges: Edges::HINGED, sides: Pulled::No, sides_pa: 0.0, ends: Pulled::No };
    /// Edges that neither turn nor move.
    pub const FIRM: Self = Self {
        edges: Edges::CLAMPED,
        sides: Pulled::AnyWay,
        sides_pa: f64::INFINITY,
        ends: Pulled::AnyWay,
    };
}

/// The most shapes among which the rise is sought.
const MOST_SHAPES: usize = 6;
/// How far the energy of what is out of balance may be from that of the whole, as a root.
const NEAR: f64 = 2e-3;

/// One of the shapes of the rise: its unknowns, its slopes at each place that is summed up, and what board and push do to
/// it.
struct Shape {
    rises: Vec<f64>,
    slopes: Vec<[f64; 2]>,
    held_by: Vec<f64>,
    pushed_by: Option<Vec<f64>>,
}

/// Two shapes together: how they stretch the board, the stress function of that, and what they stretch it against that of
/// each pair.
struct Pair {
    of: (usize, usize),
    stretch: Vec<f64>,
    stress: Vec<f64>,
    against: Vec<f64>,
}

/// A board under lifts, to be asked at several multiples of them.
pub struct Hanging<'a> {
    stiffness: &'a Stiffness,
    load: Vec<f64>,
    edged: Rc<Edged>,
    flat: Rc<Flat>,
    pushed: Option<&'a Banded>,
    /// The board with its push, split; without a push it is as `edged` has it.
    split: Option<Split>,
    shapes: Vec<Shape>,
    pairs: Vec<Pair>,
}

impl Stiffness {
    /// The board under lifts on its middle line, with a push along it that grows as they do and of which is known what it
    /// takes. `None` where it does not stand under that push without hanging.
    pub fn hanging<'a>(
        &'a self,
        lifts: &[Lift],
        support: Support,
        pushed: Option<&'a Banded>,
    ) -> Option<Hanging<'a>> {
        self.hanging_by(self.loads(lifts), support, pushed)
    }

    /// The same under forces on the unknowns of half of the board.
    pub(super) fn hanging_by<'a>(
        &'a self,
        load: Vec<f64>,
        support: Support,
        pushed: Option<&'a Banded>,
    ) -> Option<Hanging<'a>> {
        let edged = self.edged(support.edges);
        let split = match pushed {
            None => None,
            Some(pushed) => {
                let mut both = edged.between.clone();
                both.add_all(pushed, -1.0);
                Grid::held().for_each(|freedom| both.hold(freedom));
                Some(both.split()?)
            }
        };
        let mut hanging = Hanging {
            stiffness: self,
            load,
            edged,
            flat: self.flat(support),
            pushed,
            split,
            shapes: Vec::new(),
            pairs: Vec::new(),
        };
        let mut first = hanging.load.clone();
        hanging.split()?.solve(&mut first);
        hanging.take(first).then_some(hanging)
    }

    /// What a stress function costs: `½ ∫ N S N`, and the draw of sides that give.
    pub(super) fn stretched(&self, support: Support, unpulled: &[usize]) -> Option<Split> {
        let (sheet, grid) = (&self.plate.sheet, &self.grid);
        let [across, along, shear] = [sheet.across, sheet.along, sheet.shear].map(|of| of.to_pa());
        if !(across > 0.0 && along > 0.0 && shear > 0.0) {
            return None;
        }
        let both = -sheet.poisson / across;
        let mut matrix = Banded::new(FREEDOMS, BAND);
        for (patch, spots) in grid.patches().zip(self.spots.chunks(POINTS.len() * POINTS.len())) {
            let mut sums = [0.0; 256];
            for spot in spots {
                let weight = spot.weight / self.plate.thickness_of(spot.place);
                for (of, (one, _)) in spot.shape.iter().enumerate() {
                    let parts = [
                        weight * (one[0] / along + both * one[1]),
                        weight * (one[1] / across + both * one[0]),
                        weight * one[2] / shear,
                    ];
                    for (sum, (two, _)) in sums[16 * of..=17 * of].iter_mut().zip(&spot.shape) {
                        *sum += parts[0] * two[0] + parts[1] * two[1] + parts[2] * two[2];
                    }
                }
            }
            add_patch(&mut matrix, patch, &sums);
        }
        if support.sides == Pulled::AnyWay && support.sides_pa.is_finite() {
            // The pull square to a side is what bends along it; a side is longer than its share of the middle.
            let longer = (1.0 + grid.slant() * grid.slant()).sqrt().powi(3);
            for (at, weight) in grid.along() {
                add(&mut matrix, &grid.side_bends(at), weight / (longer * support.sides_pa));
            }
        }
        unpulled.iter().for_each(|freedom| matrix.hold(*freedom));
        matrix.split()
    }
}

impl Hanging<'_> {
    fn split(&self) -> Option<&Split> {
        self.split.as_ref().or_else(|| self.edged.even())
    }

    /// Takes one more shape, scaled to what it holds; whether it is one.
    fn take(&mut self, mut rises: Vec<f64>) -> bool {
        Grid::held().for_each(|freedom| rises[freedom] = 0.0);
        let holds = dot(&rises, &self.edged.held.times(&rises)).sqrt();
        if !(holds > 0.0 && holds.is_finite()) {
            // No load at all is a shape as well, and the only one.
            return self.shapes.is_empty() && rises.iter().all(|rise| rise.abs() < f64::EPSILON);
        }
        rises.iter_mut().for_each(|rise| *rise /= holds);
        let grid = &self.stiffness.grid;
        let mut slopes = Vec::with_capacity(self.stiffness.spots.len());
        let spots = self.stiffness.spots.chunks(POINTS.len() * POINTS.len());
        for (patch, spots) in grid.patches().zip(spots) {
            let own = Grid::freedoms(patch).map(|freedom| rises[freedom]);
            for spot in spots {
                let mut slope = [0.0; 2];
                for (rise, (_, parts)) in own.iter().zip(&spot.shape) {
                    slope[0] += parts[0] * rise;
                    slope[1] += parts[1] * rise;
                }
                slopes.push(slope);
            }
        }
        let held_by = self.edged.held.times(&rises);
        let pushed_by = self.pushed.map(|pushed| pushed.times(&rises));
        self.shapes.push(Shape { rises, slopes, held_by, pushed_by });
        let last = self.shapes.len() - 1;
        let flat = Rc::clone(&self.flat);
        if let Some(stretched) = &flat.stretched {
            for other in 0..=last {
                let stretch = self.stretch(other, last);
                let mut stress = stretch.clone();
                stretched.solve(&mut stress);
                self.pairs.push(Pair { of: (other, last), stretch, stress, against: Vec::new() });
            }
            let pairs = std::mem::take(&mut self.pairs);
            let against = |one: &Pair| -> Vec<f64> {
                let new = pairs[one.against.len()..].iter();
                new.map(|other| dot(&one.stretch, &other.stress)).collect()
            };
            let new: Vec<Vec<f64>> = pairs.iter().map(against).collect();
            self.pairs = pairs;
            for (pair, new) in self.pairs.iter_mut().zip(new) {
                pair.against.extend(new);
            }
        }
        true
    }

    /// How two shapes stretch the board: `½ ∫ (δF_yy w_x w_x + δF_xx w_y w_y − 2 δF_xy w_x w_y)`.
    fn stretch(&self, one: usize, other: usize) -> Vec<f64> {
        let (one, other) = (&self.shapes[one].slopes, &self.shapes[other].slopes);
        let mut all = vec![0.0; FREEDOMS];
        let size = POINTS.len() * POINTS.len();
        let places = one.chunks(size).zip(other.chunks(size));
        let spots = self.stiffness.spots.chunks(size);
        for ((patch, spots), (one, other)) in self.stiffness.grid.patches().zip(spots).zip(places) {
            let mut sums = [0.0; 16];
            for ((spot, one), other) in spots.iter().zip(one).zip(other) {
                let weight = 0.5 * spot.weight;
                let parts = [
                    weight * one[1] * other[1],
                    weight * one[0] * other[0],
                    -weight * (one[0] * other[1] + one[1] * other[0]),
                ];
                for (sum, (bends, _)) in sums.iter_mut().zip(&spot.shape) {
                    *sum += parts[0] * bends[0] + parts[1] * bends[1] + parts[2] * bends[2];
                }
            }
            for (freedom, sum) in Grid::freedoms(patch).iter().zip(sums) {
                all[*freedom] += sum;
            }
        }
        self.flat.unpulled.iter().for_each(|freedom| all[*freedom] = 0.0);
        all
    }

    /// What the pull of a stress function does against a rise: `∫ N ∇w ∇δw`.
    fn pulls_back(&self, stress: &[f64], slopes: &[[f64; 2]]) -> Vec<f64> {
        let mut all = vec![0.0; FREEDOMS];
        let size = POINTS.len() * POINTS.len();
        let spots = self.stiffness.spots.chunks(size).zip(slopes.chunks(size));
        for (patch, (spots, slopes)) in self.stiffness.grid.patches().zip(spots) {
            let freedoms = Grid::freedoms(patch);
            let own = freedoms.map(|freedom| stress[freedom]);
            let mut sums = [0.0; 16];
            for (spot, slope) in spots.iter().zip(slopes) {
                let mut bent = [0.0; 3];
                for (stress, (bends, _)) in own.iter().zip(&spot.shape) {
                    bent[0] += bends[0] * stress;
                    bent[1] += bends[1] * stress;
                    bent[2] += bends[2] * stress;
                }
                let pull = [
                    spot.weight * (bent[1] * slope[0] - bent[2] * slope[1]),
                    spot.weight * (bent[0] * slope[1] - bent[2] * slope[0]),
                ];
                for (sum, (_, slopes)) in sums.iter_mut().zip(&spot.shape) {
                    *sum += pull[0] * slopes[0] + pull[1] * slopes[1];
                }
            }
            for (freedom, sum) in freedoms.iter().zip(sums) {
                all[*freedom] += sum;
            }
        }
        all
    }

    fn few(&self) -> Few {
        let count = self.shapes.len();
        let mut few = Few {
            count,
            bent: vec![0.0; count * count],
            pushed: vec![0.0; count * count],
            load: self.shapes.iter().map(|shape| dot(&shape.rises, &self.load)).collect(),
            pairs: self.pairs.iter().map(|pair| pair.of).collect(),
            stretched: self.pairs.iter().flat_map(|pair| pair.against.iter().copied()).collect(),
        };
        for (place, (row, column)) in self
            .shapes
            .iter()
            .flat_map(|row| self.shapes.iter().map(move |column| (row, column)))
            .enumerate()
        {
            few.bent[place] = dot(&row.rises, &column.held_by);
            few.pushed[place] = column.pushed_by.as_ref().map_or(0.0, |by| dot(&row.rises, by));
        }
        few
    }

    /// Where the board rests under so many times its lifts and its push: how much of each shape. `None` where it does not.
    fn rests(&mut self, times: f64, pushed_times: f64) -> Option<Vec<f64>> {
        let mut shares = vec![0.0; self.shapes.len()];
        loop {
            shares.resize(self.shapes.len(), 0.0);
            shares = self.few().rests((times, pushed_times), shares)?;
            let (rises, stress) = self.sums(&shares);
            if self.flat.stretched.is_none() || self.shapes.len() == MOST_SHAPES {
                return Some(shares);
            }
            let slopes = self.slopes(&shares);
            let mut left = self.pulls_back(&stress, &slopes);
            let held = self.edged.held.times(&rises);
            let pushed = self.pushed.map(|pushed| pushed.times(&rises));
            for (of, left) in left.iter_mut().enumerate() {
                let pushed = pushed.as_ref().map_or(0.0, |pushed| pushed_times * pushed[of]);
                *left = times * self.load[of] - held[of] + pushed - *left;
            }
            Grid::held().for_each(|freedom| left[freedom] = 0.0);
            let mut more = left.clone();
            self.split()?.solve(&mut more);
            let off = dot(&left, &more) / (times * dot(&self.load, &rises)).abs();
            if off.is_nan() || off <= NEAR * NEAR || !self.take(more) {
                return Some(shares);
            }
        }
    }

    fn slopes(&self, shares: &[f64]) -> Vec<[f64; 2]> {
        let mut all = vec![[0.0; 2]; self.stiffness.spots.len()];
        for (shape, share) in self.shapes.iter().zip(shares) {
            for (sum, slope) in all.iter_mut().zip(&shape.slopes) {
                sum[0] += share * slope[0];
                sum[1] += share * slope[1];
            }
        }
        all
    }

    /// Rise and stress function of so much of each shape.
    fn sums(&self, shares: &[f64]) -> (Vec<f64>, Vec<f64>) {
        let (mut rises, mut stress) = (vec![0.0; FREEDOMS], vec![0.0; FREEDOMS]);
        for (shape, share) in self.shapes.iter().zip(shares) {
            for (sum, part) in rises.iter_mut().zip(&shape.rises) {
                *sum += share * part;
            }
        }
        for Pair { of, stress: parts, .. } in &self.pairs {
            let twice = if of.0 == of.1 { 1.0 } else { 2.0 };
            let share = twice * shares[of.0] * shares[of.1];
            for (sum, part) in stress.iter_mut().zip(parts) {
                *sum += share * part;
            }
        }
        (rises, stress)
    }

    /// What it feels at places of its middle line, and its bars across, under so many times its lifts and so many times its
    /// push. `None` where it gives way.
    pub fn under(
        &mut self,
        times: f64,
        pushed_times: f64,
        places: &[Length],
    ) -> Option<(Vec<PlateState>, Vec<CrossFeels>)> {
        let (rises, stress) = self.rested(times, pushed_times)?;
        let Stiffness { plate, grid, .. } = self.stiffness;
        let edges = self.edged.edges;
        let state =
            |place: &Length| plate.state(grid, (&rises, Some(&stress)), edges, place.to_m());
        Some((places.iter().map(state).collect(), plate.crosses_feel(grid, &rises)))
    }

    /// How far these places rise, as [`under`](Self::under) has it.
    pub fn rises(
        &mut self,
        times: f64,
        pushed_times: f64,
        places: &[Length],
    ) -> Option<Vec<Length>> {
        let (rises, _) = self.rested(times, pushed_times)?;
        let grid = &self.stiffness.grid;
        let rise = |place: &Length| {
            let at = place.to_m().clamp(0.0, grid.length_m);
            Length::from_m(told(&grid.on_middle(at, 0), &rises))
        };
        Some(places.iter().map(rise).collect())
    }

    fn rested(&mut self, times: f64, pushed_times: f64) -> Option<(Vec<f64>, Vec<f64>)> {
        let shares = self.rests(times, pushed_times)?;
        let (rises, stress) = self.sums(&shares);
        rises.iter().all(|rise| rise.is_finite()).then_some((rises, stress))
    }
}
