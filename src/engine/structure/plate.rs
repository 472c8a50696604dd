//! The soundboard as a plate: a board that narrows, whose thickness changes along it and towards its sides, stiffer one way
//! than the other, with a string rib along its middle and bars across and along, between edges that hold it more or less.

mod bars;
mod edged;
mod few;
mod gives;
mod membrane;
mod patch;
mod pushed;
#[cfg(test)]
mod tests;
mod thick;

use std::cell::RefCell;
use std::rc::Rc;

pub use self::bars::{Bars, CrossFeels, MOST_BARS, Rib, RibSection, left};
use self::edged::{Edged, Flat};
pub use self::membrane::{Hanging, Support};
pub use self::patch::Pulled;
use self::patch::{BAND, FREEDOMS, Grid, POINTS, Sum};
pub use self::pushed::{MOST_PUSHED, Push};
pub use self::thick::{MOST_ROWS, Thick, Within};
use super::banded::Banded;
use crate::engine::units::{Force, Length, Stress};

/// The wood of a board, as it bends across the board and along it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Sheet {
    /// Modulus across the board, from edge to edge.
    pub across: Stress,
    /// Modulus along the board. With 0, and no shear, each strip from edge to edge bends for itself.
    pub along: Stress,
    /// Shear modulus in the plane of the board.
    pub shear: Stress,
    /// How much shorter it becomes along the board for each part that it is stretched across it.
    pub poisson: f64,
}

/// How edges hold, in newton metres for each radian that a metre of edge turns: 0 where they turn freely, endless where
/// they cannot turn.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Edges {
    /// The two long sides at their lower and upper end, and evenly between.
    pub sides_n: (f64, f64),
    /// Lower and upper end.
    pub ends_n: f64,
}

impl Edges {
    /// Edges that turn freely.
    pub const HINGED: Self = Self { sides_n: (0.0, 0.0), ends_n: 0.0 };
    /// Edges that cannot turn.
    pub const CLAMPED: Self =
        Self { sides_n: (f64::INFINITY, f64::INFINITY), ends_n: f64::INFINITY };
}

/// A force on the middle of the board, spread over a length of it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Lift {
    /// Its middle, from the lower end.
    pub at: Length,
    /// Over how much of the middle line; 0 for a force at a point.
    pub over: Length,
    /// Square to the board.
    pub force: Force,
}

/// A board. Width and thickness go evenly from the lower end to the upper.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Plate {
    /// From end to end.
    pub length: Length,
    /// At the lower and at the upper end.
    pub width: (Length, Length),
    /// At the lower and at the upper end, along the middle.
    pub thickness: (Length, Length),
    /// Thickness at the sides over that in the middle, with an even taper between.
    pub side_ratio: f64,
    /// How thick it is from place to place, where that is given; then no other thickness counts.
    pub thick: Option<Thick>,
    /// Its wood.
    pub sheet: Sheet,
    /// What is glued on along the middle.
    pub rib: Rib,
    /// What else is glued on.
    pub bars: Bars,
}

/// What a board feels at a place of its middle line, and at the edge beside it.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct PlateState {
    /// How far the middle rises.
    pub rise: Length,
    /// Bending moment across the board at the middle, for each metre along it, in N·m/m.
    pub middle_n_m_per_m: f64,
    /// The same at the edge, square to the middle line.
    pub edge_n_m_per_m: f64,
    /// Bending moment along the board at the middle, for each metre across it, in N·m/m: of the board without its rib.
    pub along_n_m_per_m: f64,
    /// Bending moment of the rib, in N·m.
    pub rib_n_m: f64,
    /// Shear force of the rib, in N.
    pub rib_shear_n: f64,
    /// Pull in the board across it at the middle, in N for each metre along it; above 0 where it is stretched.
    pub middle_pull_n_per_m: f64,
    /// The same at the edge.
    pub edge_pull_n_per_m: f64,
    /// The greatest bending moment of a bar along the board beside the middle, in N·m, by its size.
    pub bar_n_m: f64,
    /// The greatest shear force of one, in N.
    pub bar_shear_n: f64,
    /// How far the board twists one at most, in rad/m.
    pub bar_twist_rad_per_m: f64,
    /// Where the thickness is given from place to place: what is stressed most between middle and edge.
    pub within: Option<Within>,
}

/// Gauss' two places of the first patch and one of the next, in patches, and what the bend at each counts at the edge of
/// the first: a parabola through the three.
const INWARD: [(f64, f64); 3] = [
    (0.211_324_865, 1.654_700_538),
    (0.788_675_135, -1.049_038_106),
    (1.211_324_865, 0.394_337_567),
];

/// What an even taper gives at a share of the way.
fn between((low, high): (Length, Length), share: f64) -> f64 {
    low.to_m() + share * (high.to_m() - low.to_m())
}

/// What a sheet of some thickness has against bending across, both ways together, along and against twist, in N·m.
struct Rigidity {
    across: f64,
    both: f64,
    along: f64,
    twist: f64,
}

impl Sheet {
    fn rigidity(&self, thickness_m: f64) -> Rigidity {
        let (one, other) = (self.across.to_pa(), self.along.to_pa());
        let both_ways = if one > 0.0 { self.poisson * self.poisson * other / one } else { 0.0 };
        let cube = thickness_m * thickness_m * thickness_m / 12.0;
        let across = one * cube / (1.0 - both_ways);
        let along = other * cube / (1.0 - both_ways);
        Rigidity { across, both: self.poisson * along, along, twist: self.shear.to_pa() * cube }
    }
}

impl Plate {
    /// Rise and moments at places of the middle line, from the lower end, under lifts on that line. `None` where a
    /// measure is none or the board holds nothing.
    ///
    /// Half of the board is worked out, as both are alike. It is cut into patches on which the rise is a cubic in
    /// both ways, with slope and twist running on from one to the next: the finite element of Bogner, Fox and Schmit,
    /// on coordinates that follow the taper. What is stored in board and rib is least for the true shape, so that the
    /// rise comes out a little too small, and the closer the smaller the patches.
    ///
    /// Holds while the rise is small against the thickness; beyond that the board also hangs between its edges like
    /// a cloth, and rises less than this says.
    ///
    /// # Source
    ///
    /// S. Timoshenko and S. Woinowsky-Krieger, *Theory of Plates and Shells*, 2nd ed., 1959, chapter 11, for the
    /// bending of a sheet that is stiffer one way; F. K. Bogner, R. L. Fox and L. A. Schmit, 1965, for the element
    /// (both from memory). The mapping on the taper is worked out.
    pub fn under(
        &self,
        lifts: &[Lift],
        edges: Edges,
        places: &[Length],
    ) -> Option<Vec<PlateState>> {
        self.stiffness()?.under(lifts, edges, places)
    }

    /// The board before its edges are held, to be asked more than once.
    pub fn stiffness(&self) -> Option<Stiffness> {
        let grid = self.grid()?;
        let mut matrix = Banded::new(FREEDOMS, BAND);
        let spots = spots(&grid);
        self.bend(&grid, &spots, &mut matrix);
        let (edged, flat) = (RefCell::default(), RefCell::default());
        Some(Stiffness { plate: *self, grid, spots, matrix, edged, flat })
    }

    fn grid(&self) -> Option<Grid> {
        let sides = [self.width.0, self.width.1, self.thickness.0, self.thickness.1, self.length];
        let ratio = self.side_ratio > 0.0 && self.side_ratio.is_finite();
        let stands = ratio && sides.iter().all(|side| side.to_m() > 0.0 && side.to_m().is_finite());
        let half = (0.5 * self.width.0.to_m(), 0.5 * self.width.1.to_m());
        stands.then(|| Grid { length_m: self.length.to_m(), half_m: half })
    }

    /// Adds what half of the board holds, half of its rib, and the bars on that half.
    fn bend(&self, grid: &Grid, spots: &[Spot], matrix: &mut Banded) {
        for (patch, spots) in grid.patches().zip(spots.chunks(POINTS.len() * POINTS.len())) {
            let mut sums = [0.0; 256];
            for Spot { place, weight, shape } in spots {
                let stiff = self.rigidity_at(*place);
                for (of, (one, _)) in shape.iter().enumerate() {
                    let moments = [
                        weight * (stiff.across * one[0] + stiff.both * one[1]),
                        weight * (stiff.along * one[1] + stiff.both * one[0]),
                        weight * 4.0 * stiff.twist * one[2],
                    ];
                    for (sum, (two, _)) in sums[16 * of..=17 * of].iter_mut().zip(shape) {
                        *sum += moments[0] * two[0] + moments[1] * two[1] + moments[2] * two[2];
                    }
                }
            }
            add_patch(matrix, patch, &sums);
        }
        for (at, weight) in grid.along() {
            let rib = self.section_at(at).rigidity_n_m2;
            add(matrix, &grid.on_middle(at, 2), 0.5 * weight * rib);
        }
        self.bend_bars(grid, matrix);
    }

    /// Adds what the edges hold.
    fn brace(&self, grid: &Grid, matrix: &mut Banded, edges: Edges) {
        let on_slant = 1.0 + grid.slant() * grid.slant();
        for (at, weight) in grid.along() {
            // The slope square to the slanting edge, over the length of that edge.
            let half = grid.half_at(at);
            let held = self.side_held_at(grid, edges, at);
            let by = on_slant * on_slant.sqrt() / (half * half);
            add(matrix, &grid.on_side(at), weight * held * by);
        }
        for upper in [false, true] {
            let at = if upper { grid.length_m } else { 0.0 };
            let (stiff, half) = (self.rigidity_at((0.0, at)), grid.half_at(at));
            let held = firm(edges.ends_n, stiff.across.max(stiff.along), half);
            for (place, weight) in grid.across() {
                add(matrix, &grid.on_end(place, upper), weight * held * half);
            }
        }
    }

    /// Rib and strip at a place of the middle line, from the lower end.
    pub fn section(&self, at: Length) -> RibSection {
        self.section_at(at.to_m())
    }

    fn section_at(&self, y: f64) -> RibSection {
        self.rib.section(self.thickness_at(Length::from_m(y)), self.sheet.along)
    }

    /// What a side holds against turning at a place, for each metre of it.
    fn side_held_at(&self, grid: &Grid, edges: Edges, at: f64) -> f64 {
        let (low, high) = edges.sides_n;
        let even = low + at / grid.length_m * (high - low);
        let held = if low.is_infinite() { low } else { even };
        firm(held, self.rigidity_at((0.0, at)).across, grid.half_at(at))
    }

    fn state(
        &self,
        grid: &Grid,
        (rises, pulls): (&[f64], Option<&[f64]>),
        edges: Edges,
        at: f64,
    ) -> PlateState {
        let at = at.clamp(0.0, grid.length_m);
        // Bends are nearest to the truth inside a patch; from there they are carried on to its edge.
        let bend = |of: &[f64], at_side: bool| {
            let mut bent = [0.0; 2];
            for (from_edge, weight) in INWARD {
                let across =
                    if at_side { 1.0 - from_edge * grid.step() } else { from_edge * grid.step() };
                let patch = grid.beside(at, across);
                let bends = grid.bends(patch, (across, at));
                for (freedom, parts) in Grid::freedoms(patch).iter().zip(bends) {
                    bent[0] += weight * parts[0] * of[*freedom];
                    bent[1] += weight * parts[1] * of[*freedom];
                }
            }
            bent
        };
        let (middle, side) = (bend(rises, false), bend(rises, true));
        // The pull across is what the stress function bends along.
        let pull = |at_side| pulls.map_or(0.0, |of| bend(of, at_side)[1]);
        let (stiff, edge) = (self.rigidity_at((0.0, at)), self.rigidity_at((1.0, at)));
        let mut edge_n_m_per_m = -(edge.across * side[0] + edge.both * side[1]);
        if self.thick.is_some() || self.side_ratio < 1.0 {
            // A thin edge bends most close to it, so that what is carried on there falls short of what the edge holds.
            let on_slant = (1.0 + grid.slant() * grid.slant()).powf(1.5);
            let turned = told(&grid.on_side(at), rises) * on_slant / grid.half_at(at);
            let held = self.side_held_at(grid, edges, at) * turned;
            if held.abs() > edge_n_m_per_m.abs() {
                edge_n_m_per_m = held;
            }
        }
        let rise_m = told(&grid.on_middle(at, 0), rises);
        let [bar_n_m, bar_shear_n, bar_twist_rad_per_m] = self.pairs_feel(grid, rises, at);
        PlateState {
            rise: Length::from_m(rise_m),
            middle_n_m_per_m: -(stiff.across * middle[0] + stiff.both * middle[1]),
            edge_n_m_per_m,
            along_n_m_per_m: -(stiff.along * middle[1] + stiff.both * middle[0]),
            rib_n_m: -self.section_at(at).rigidity_n_m2 * middle[1],
            rib_shear_n: self.rib_shear(grid, rises, at),
            within: self.within(grid, (rises, pulls), at),
            middle_pull_n_per_m: pull(false),
            edge_pull_n_per_m: pull(true),
            bar_n_m,
            bar_shear_n,
            bar_twist_rad_per_m,
        }
    }

    /// How the moment of the rib changes beside a place.
    fn rib_shear(&self, grid: &Grid, rises: &[f64], at: f64) -> f64 {
        changes(grid.best(), at, |y| {
            -self.section_at(y).rigidity_n_m2 * told(&grid.on_middle(y, 2), rises)
        })
    }
}

/// What a sum of unknowns comes to.
fn told(sum: &Sum, of: &[f64]) -> f64 {
    sum.freedoms.iter().zip(sum.parts).map(|(freedom, part)| part * of[*freedom]).sum()
}

/// How fast something changes at a place, from the two places beside it where it is known best; before the middle of the
/// first two and beyond that of the last two the line through this and the change between the next two goes on to the end.
fn changes(best: impl Iterator<Item = f64>, at: f64, of: impl Fn(f64) -> f64) -> f64 {
    let places: Vec<f64> = best.collect();
    let change = |first: usize| -> Option<(f64, f64)> {
        let (one, other) = (*places.get(first)?, *places.get(first + 1)?);
        Some((0.5 * (one + other), (of(other) - of(one)) / (other - one)))
    };
    let last = places.len().saturating_sub(2);
    let before = places.iter().take_while(|place| **place < at).count();
    let beside = before.saturating_sub(1).min(last);
    let Some((middle, here)) = change(beside) else { return 0.0 };
    // The places come in pairs: where a pair lies within one patch, its change is known best.
    let next = if at < middle && beside == 0 {
        change(2)
    } else if at > middle && beside == last {
        last.checked_sub(2).and_then(change)
    } else {
        None
    };
    next.map_or(here, |(next, there)| here + (there - here) * (at - middle) / (next - middle))
}

/// A place at which the board is summed up: what each unknown of its patch counts there, and what it weighs.
struct Spot {
    place: (f64, f64),
    weight: f64,
    shape: [([f64; 3], [f64; 2]); 16],
}

/// All of them, patch by patch.
fn spots(grid: &Grid) -> Vec<Spot> {
    let mut all = Vec::with_capacity(16 * POINTS.len() * FREEDOMS / 16);
    for patch in grid.patches() {
        for (place, weight) in grid.points(patch) {
            let weight = weight * grid.half_at(place.1);
            all.push(Spot { place, weight, shape: grid.shape(patch, place) });
        }
    }
    all
}

/// Adds what a patch holds, of which the lower half counts.
fn add_patch(matrix: &mut Banded, patch: (usize, usize), sums: &[f64; 256]) {
    let freedoms = Grid::freedoms(patch);
    for (of, sum) in sums.iter().enumerate() {
        if of % 16 <= of / 16 {
            matrix.add(freedoms[of / 16], freedoms[of % 16], *sum);
        }
    }
}

/// A board before its edges are held. What it has worked out of edges that held it is kept for the next time.
pub struct Stiffness {
    plate: Plate,
    grid: Grid,
    spots: Vec<Spot>,
    matrix: Banded,
    edged: RefCell<Vec<Rc<Edged>>>,
    flat: RefCell<Vec<Rc<Flat>>>,
}

impl Stiffness {
    /// The board that it is of.
    pub const fn plate(&self) -> &Plate {
        &self.plate
    }

    /// As [`Plate::under`].
    pub fn under(
        &self,
        lifts: &[Lift],
        edges: Edges,
        places: &[Length],
    ) -> Option<Vec<PlateState>> {
        let grid = &self.grid;
        let mut rises = self.loads(lifts);
        self.edged(edges).even()?.solve(&mut rises);
        rises.iter().all(|rise| rise.is_finite()).then_some(())?;
        let state = |place: &Length| self.plate.state(grid, (&rises, None), edges, place.to_m());
        Some(places.iter().map(state).collect())
    }

    /// The loads on half of the board.
    fn loads(&self, lifts: &[Lift]) -> Vec<f64> {
        let grid = &self.grid;
        let mut loads = vec![0.0; FREEDOMS];
        for lift in lifts {
            for (point, weight) in POINTS {
                let at = lift.at.to_m() + (point - 0.5) * lift.over.to_m();
                let sum = grid.on_middle(at.clamp(0.0, grid.length_m), 0);
                for (freedom, part) in sum.freedoms.iter().zip(sum.parts) {
                    // Half of the board bears half of it.
                    loads[*freedom] += 0.5 * weight * lift.force.to_n() * part;
                }
            }
        }
        Grid::held().for_each(|freedom| loads[freedom] = 0.0);
        loads
    }

    /// The board with its edges, of which nothing is held yet.
    fn between(&self, edges: Edges) -> Banded {
        let mut matrix = self.matrix.clone();
        self.plate.brace(&self.grid, &mut matrix, edges);
        matrix
    }
}

/// What an edge holds as a number: one that cannot turn is ten million times as stiff as the board beside it.
fn firm(held_n: f64, rigidity: f64, half_m: f64) -> f64 {
    if held_n.is_infinite() { 1e7 * rigidity / half_m } else { held_n }
}

/// Adds the square of a sum of unknowns, so many times.
fn add(matrix: &mut Banded, sum: &Sum, times: f64) {
    for (one, part) in sum.freedoms.iter().zip(sum.parts) {
        for (other, counted) in sum.freedoms.iter().zip(sum.parts) {
            matrix.add(*one, *other, times * part * counted);
        }
    }
}
