//! A board that is pushed along: how many times that push makes it bow.

use super::patch::{BAND, FREEDOMS, Grid, POINTS};
use super::{Banded, Edges, Stiffness, add, add_patch};
use crate::engine::units::Length;

/// How far a board and what is glued on are shortened along the board, place by place: as a share of the length, at shares
/// of the way from the lower end, in their order. Where it is stretched nothing counts, which is the careful way.
#[derive(Clone, Copy, Debug)]
pub struct Push<'a>(pub &'a [(f64, f64)]);

impl Push<'_> {
    fn at(&self, share: f64) -> f64 {
        let mut before: Option<(f64, f64)> = None;
        for (at, shortened) in self.0.iter().copied() {
            let shortened = shortened.max(0.0);
            if share <= at {
                let Some((from, was)) = before else { return shortened };
                let way = if at > from { (share - from) / (at - from) } else { 1.0 };
                return was + way * (shortened - was);
            }
            before = Some((at, shortened));
        }
        before.map_or(0.0, |(_, last)| last)
    }

    /// How far it is stretched or shortened at a share of the way, by its size.
    pub fn most_at(&self, share: f64) -> f64 {
        let (mut before, mut off) = (0.0_f64, f64::INFINITY);
        for (at, shortened) in self.0 {
            if (at - share).abs() < off {
                (before, off) = (shortened.abs(), (at - share).abs());
            }
        }
        before
    }

    /// How far it is stretched at a share of the way; 0 where it is shortened.
    pub fn stretched_at(&self, share: f64) -> f64 {
        let (mut stretched, mut off) = (0.0_f64, f64::INFINITY);
        for (at, shortened) in self.0 {
            if (at - share).abs() < off {
                (stretched, off) = ((-shortened).max(0.0), (at - share).abs());
            }
        }
        stretched
    }

    /// Whether it pushes anywhere.
    pub fn pushes(&self) -> bool {
        self.0.iter().any(|(_, shortened)| *shortened > 0.0)
    }
}

/// Beyond so many times the push nobody asks how a board bows.
pub const MOST_PUSHED: f64 = 100.0;
/// How near the number is, and how often it is looked at.
const NEAR: f64 = 0.01;
const ROUNDS: usize = 12;
const STEPS: usize = 8;

impl Stiffness {
    /// What a push takes from the stiffness of half of the board: `∫ N w_y²`.
    pub fn pushed(&self, push: &Push<'_>) -> Banded {
        let (plate, grid) = (&self.plate, &self.grid);
        let of = |y: f64| push.at(y / grid.length_m);
        let mut matrix = Banded::new(FREEDOMS, BAND);
        for (patch, spots) in grid.patches().zip(self.spots.chunks(POINTS.len() * POINTS.len())) {
            let mut sums = [0.0; 256];
            for spot in spots {
                let stiff = plate.sheet.along.to_pa() * plate.thickness_of(spot.place);
                let weight = spot.weight * stiff * of(spot.place.1);
                for (one, (_, slopes)) in spot.shape.iter().enumerate() {
                    let counted = weight * slopes[1];
                    for (sum, (_, others)) in sums[16 * one..=17 * one].iter_mut().zip(&spot.shape)
                    {
                        *sum += counted * others[1];
                    }
                }
            }
            add_patch(&mut matrix, patch, &sums);
        }
        let area = |(breadth, height): (Length, Length)| breadth.to_m() * height.to_m();
        let rib = plate.rib.modulus.to_pa() * (area(plate.rib.inside) + area(plate.rib.outside));
        for (at, weight) in grid.along() {
            add(&mut matrix, &grid.on_middle(at, 1), 0.5 * weight * rib * of(at));
        }
        plate.push_bars(grid, &mut matrix, of);
        matrix
    }

    /// How many times a push makes the board bow, between edges that hold so against turning: the least of both shapes,
    /// with halves that go the same way and with halves that go opposite ways. At most [`MOST_PUSHED`]; it comes out up to 1 %
    /// too small. `None` where the board holds nothing.
    ///
    /// # Source
    ///
    /// The criterion of the energy, S. Timoshenko and J. M. Gere, *Theory of Elastic Stability*, chapters 8 and 9 (from
    /// memory); that a matrix is positive says that the board still stands.
    pub fn bows_at(&self, edges: Edges, push: &Push<'_>) -> Option<f64> {
        self.bows_by(edges, &self.pushed(push))
    }

    /// The same under a push of which is known what it takes.
    pub fn bows_by(&self, edges: Edges, pushed: &Banded) -> Option<f64> {
        let edged = self.edged(edges);
        let bent = &edged.between;
        let mut least = MOST_PUSHED;
        for odd in [false, true] {
            let held: Vec<usize> =
                if odd { Grid::held_odd().collect() } else { Grid::held().collect() };
            let stands = |times: f64| {
                let mut matrix = bent.clone();
                matrix.add_all(pushed, -times);
                held.iter().for_each(|freedom| matrix.hold(*freedom));
                matrix.split()
            };
            let split = if odd { edged.odd() } else { edged.even() }?;
            if stands(least).is_some() {
                continue;
            }
            // Shapes of the load, again and again: a bound from above that sinks.
            let mut shape: Vec<f64> = (0..FREEDOMS).map(|of| (1.0 + of as f64).sin()).collect();
            held.iter().for_each(|freedom| shape[*freedom] = 0.0);
            let mut above = least;
            for _ in 0..ROUNDS {
                for _ in 0..STEPS {
                    let mut next = pushed.times(&shape);
                    held.iter().for_each(|freedom| next[*freedom] = 0.0);
                    let work: f64 = next.iter().zip(&shape).map(|(f, w)| f * w).sum();
                    split.solve(&mut next);
                    let size = next.iter().fold(0.0_f64, |most, of| most.max(of.abs()));
                    if !(size > 0.0 && size.is_finite() && work > 0.0) {
                        return Some(least);
                    }
                    shape = next.iter().map(|of| of / size).collect();
                }
                let mut held_by = bent.times(&shape);
                held.iter().for_each(|freedom| held_by[*freedom] = 0.0);
                let taken = pushed.times(&shape);
                let dot = |one: &[f64]| one.iter().zip(&shape).map(|(f, w)| f * w).sum::<f64>();
                above = above.min(dot(&held_by) / dot(&taken));
                if stands((1.0 - NEAR) * above).is_some() {
                    break;
                }
            }
            // Where the shapes did not come near, halving does.
            let (mut low, mut high) = (0.0, (1.0 - NEAR) * above);
            if stands(high).is_some() {
                low = high;
            } else {
                while high - low > NEAR * high {
                    let middle = 0.5 * (low + high);
                    if stands(middle).is_some() { low = middle } else { high = middle }
                }
            }
            least = least.min(low);
        }
        Some(least)
    }
}
