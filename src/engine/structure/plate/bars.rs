//! What is glued onto a board: string rib and strip along its middle, bars across it and along it.

use super::patch::Grid;
use super::{Banded, Plate, changes};
use crate::engine::units::{Length, Stress};

/// String rib inside and strip outside, both along the middle of the board, glued to it.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Rib {
    /// Breadth and height of the string rib.
    pub inside: (Length, Length),
    /// Breadth and height of the strip outside.
    pub outside: (Length, Length),
    /// Modulus along both.
    pub modulus: Stress,
}

/// What a rib is at a place: stiffness in bending, and how far its outermost fibre lies from the middle of the bending.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct RibSection {
    /// `Σ E (I + A z²)`, in N·m².
    pub rigidity_n_m2: f64,
    /// From the common axis to the outermost fibre of the rib or the strip.
    pub outermost: Length,
    /// Shear in the glue for each newton of shear force: `E A z/(EI b)` of what is glued on, the greater of both sides, in
    /// 1/m².
    pub glue_per_m2: f64,
}

impl Rib {
    /// Rib, strip and the board between them, which bend as one about their common axis. Of the board only what lies
    /// under the rib counts, and its own bending is left out, as the plate has it.
    ///
    /// # Source
    ///
    /// Bending of a section of several materials, as in any textbook of strength of materials; worked out.
    pub fn section(&self, thickness: Length, board: Stress) -> RibSection {
        let t = thickness.to_m();
        let ((b, h), (cap_b, cap_h)) = (
            (self.inside.0.to_m(), self.inside.1.to_m()),
            (self.outside.0.to_m(), self.outside.1.to_m()),
        );
        let modulus = self.modulus.to_pa();
        // Stretching stiffness and place of each, from the middle of the board.
        let layers = [
            (modulus * b * h, -0.5 * (t + h), h),
            (modulus * cap_b * cap_h, 0.5 * (t + cap_h), cap_h),
            (board.to_pa() * b.max(cap_b) * t, 0.0, 0.0),
        ];
        let (mut stiff, mut about) = (0.0, 0.0);
        for (ea, z, _) in layers {
            stiff += ea;
            about += ea * z;
        }
        let axis = if stiff > 0.0 { about / stiff } else { 0.0 };
        let (mut rigidity_n_m2, mut outermost) = (0.0, 0.0_f64);
        let mut flow = 0.0_f64;
        for ((ea, z, own), wide) in layers.into_iter().zip([b, cap_b, 0.0]) {
            let off = z - axis;
            rigidity_n_m2 += ea * (off * off + own * own / 12.0);
            if ea > 0.0 && own > 0.0 {
                outermost = outermost.max(off.abs() + 0.5 * own);
                flow = flow.max(ea * off.abs() / wide);
            }
        }
        let glue_per_m2 = if rigidity_n_m2 > 0.0 { flow / rigidity_n_m2 } else { 0.0 };
        RibSection { rigidity_n_m2, outermost: Length::from_m(outermost), glue_per_m2 }
    }
}

/// What holes leave at least, so that every stress stays a number.
const LEAST_LEFT: f64 = 0.01;

/// The share that a hole leaves of something so wide.
pub fn left(hole_m: f64, wide_m: f64) -> f64 {
    (1.0 - hole_m / wide_m).max(LEAST_LEFT)
}

/// Bars on the inside of the board, besides the string rib. Bars across it go from side to side, square to the middle;
/// those along it come in pairs, each at the same share of the way from the middle to the side wherever it is. With nothing
/// of either, there are none.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Bars {
    /// How many go across.
    pub cross: usize,
    /// The place of the first from the lower end, and of each other from the one before.
    pub cross_at: (Length, Length),
    /// Breadth and height of each.
    pub cross_size: (Length, Length),
    /// How many pairs go along.
    pub pairs: usize,
    /// The shares of the way from the middle to the side at which the innermost and the outermost pair lie; the others lie
    /// evenly between.
    pub pair_shares: (f64, f64),
    /// Breadth and height of each.
    pub pair_size: (Length, Length),
    /// Modulus along all of them.
    pub modulus: Stress,
}

/// The most bars that are counted each way.
pub const MOST_BARS: usize = 40;

/// What a bar across the board feels.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CrossFeels {
    /// Its place, from the lower end.
    pub at: Length,
    /// Its greatest stress.
    pub stress: Stress,
    /// The greatest shear in its glue.
    pub glue: Stress,
    /// Its greatest shear force, in N.
    pub shear_n: f64,
    /// How far the board twists it at most, in rad/m.
    pub twist_rad_per_m: f64,
    /// Its moment at its ends, by its size, in N·m.
    pub end_n_m: f64,
    /// What it is there.
    pub end: RibSection,
}

impl Bars {
    /// A bar as a rib without a strip.
    pub(super) const fn rib(&self, size: (Length, Length)) -> Rib {
        Rib {
            inside: size,
            outside: (Length::from_m(0.0), Length::from_m(0.0)),
            modulus: self.modulus,
        }
    }

    /// Places of the bars across that lie on a board so long.
    fn crosses(&self, length_m: f64) -> impl Iterator<Item = f64> {
        let (first, apart) = (self.cross_at.0.to_m(), self.cross_at.1.to_m());
        (0..self.cross.min(MOST_BARS))
            .map(move |of| first + of as f64 * apart)
            .filter(move |at| *at > 0.0 && *at < length_m)
    }

    /// Shares at which a bar along lies in each half.
    fn shares(&self) -> impl Iterator<Item = f64> {
        let (pairs, (inner, outer)) = (self.pairs.min(MOST_BARS), self.pair_shares);
        let each = move |of: usize| {
            let way = if pairs > 1 { of as f64 / (pairs - 1) as f64 } else { 0.0 };
            inner + way * (outer - inner)
        };
        (0..pairs).map(each).filter(|share| *share > 0.0 && *share < 1.0)
    }
}

impl Plate {
    /// String rib and strip with the board between them, at a place where a hole so wide goes through them.
    pub fn rib_beside(&self, at: Length, hole_m: f64) -> RibSection {
        let net = |(breadth, height): (Length, Length)| {
            let wide = breadth.to_m();
            let share = if wide > 0.0 { left(hole_m, wide) } else { 1.0 };
            (Length::from_m(share * wide), height)
        };
        let (inside, outside) = (net(self.rib.inside), net(self.rib.outside));
        let rib = Rib { inside, outside, ..self.rib };
        rib.section(self.thickness_at(at), self.sheet.along)
    }

    /// A bar across at a place `(ξ, y)`, which bends with the board over it.
    fn cross_section(&self, place: (f64, f64)) -> RibSection {
        let thickness = Length::from_m(self.thickness_of(place));
        self.bars.rib(self.bars.cross_size).section(thickness, self.sheet.across)
    }

    /// A bar along.
    pub(super) fn pair_section(&self, place: (f64, f64)) -> RibSection {
        let thickness = Length::from_m(self.thickness_of(place));
        self.bars.rib(self.bars.pair_size).section(thickness, self.sheet.along)
    }

    /// A bar along the board beside the middle, with the board as it is in the middle there.
    pub fn pair_section_at(&self, at: Length) -> RibSection {
        self.pair_section((0.0, at.to_m()))
    }

    /// Adds what the bars on half of the board hold. What they hold against twist is left out, which is the
    /// careful way.
    pub(super) fn bend_bars(&self, grid: &Grid, matrix: &mut Banded) {
        for y in self.bars.crosses(grid.length_m) {
            let half = grid.half_at(y);
            for (x, weight) in grid.across() {
                let stiff = self.cross_section((x, y)).rigidity_n_m2;
                let patch = grid.beside(y, x);
                let bends = grid.parts(patch, (x, y), (2, 0));
                add_square(matrix, patch, &bends, weight * stiff / (half * half * half));
            }
        }
        for x in self.bars.shares() {
            for (y, weight) in grid.along() {
                let patch = grid.beside(y, x);
                let bends = grid.parts(patch, (x, y), (0, 2));
                let stiff = self.pair_section((x, y)).rigidity_n_m2;
                add_square(matrix, patch, &bends, weight * stiff);
            }
        }
    }

    /// Adds what the bars along lose of their stiffness for a push of 1 N in each for each N/m² of its stiffness: `∫ w′²`,
    /// times what `push` gives at a place along the board.
    pub(super) fn push_bars(&self, grid: &Grid, matrix: &mut Banded, push: impl Fn(f64) -> f64) {
        let (breadth, height) = self.bars.pair_size;
        let stiff = self.bars.modulus.to_pa() * breadth.to_m() * height.to_m();
        for x in self.bars.shares() {
            for (y, weight) in grid.along() {
                let patch = grid.beside(y, x);
                let slopes = grid.parts(patch, (x, y), (0, 1));
                add_square(matrix, patch, &slopes, weight * stiff * push(y));
            }
        }
    }

    /// The greatest moment and the greatest shear force of the bars along at a place, and how far the board twists them
    /// there, by their size.
    pub(super) fn pairs_feel(&self, grid: &Grid, rises: &[f64], at: f64) -> [f64; 3] {
        let mut most = [0.0_f64; 3];
        for x in self.bars.shares() {
            let moment = |y: f64| {
                let parts = grid.parts(grid.beside(y, x), (x, y), (0, 2));
                let bent = summed(grid, (x, y), &parts, rises);
                -self.pair_section((x, y)).rigidity_n_m2 * bent
            };
            let shear = changes(grid.best(), at, moment);
            for (most, one) in most.iter_mut().zip([moment(at), shear, twist(grid, (x, at), rises)])
            {
                *most = most.max(one.abs());
            }
        }
        most
    }

    /// What each bar across feels.
    pub(super) fn crosses_feel(&self, grid: &Grid, rises: &[f64]) -> Vec<CrossFeels> {
        let feels = |y: f64| {
            let half = grid.half_at(y);
            let mut most = CrossFeels {
                at: Length::from_m(y),
                stress: Stress::from_pa(0.0),
                glue: Stress::from_pa(0.0),
                shear_n: 0.0,
                twist_rad_per_m: 0.0,
                end_n_m: 0.0,
                end: self.cross_section((1.0, y)),
            };
            let bent = |x: f64| {
                let parts = grid.parts(grid.beside(y, x), (x, y), (2, 0));
                summed(grid, (x, y), &parts, rises) / (half * half)
            };
            let moment = |x: f64| self.cross_section((x, y)).rigidity_n_m2 * bent(x);
            most.end_n_m = moment(1.0).abs();
            let larger = |one: Stress, other: f64| Stress::from_pa(one.to_pa().max(other));
            for x in grid.best_across().chain([0.0, 1.0]) {
                let section = self.cross_section((x, y));
                let fibre = self.bars.modulus.to_pa() * section.outermost.to_m();
                most.stress = larger(most.stress, fibre * bent(x).abs());
                let shear = changes(grid.best_across(), x, moment).abs() / half;
                most.glue = larger(most.glue, shear * section.glue_per_m2);
                most.shear_n = most.shear_n.max(shear);
                most.twist_rad_per_m = most.twist_rad_per_m.max(twist(grid, (x, y), rises).abs());
            }
            most
        };
        self.bars.crosses(grid.length_m).map(feels).collect()
    }
}

/// How far the board twists at a place, `w_xy` in rad/m: a bar that is glued on turns with it.
fn twist(grid: &Grid, (x, y): (f64, f64), of: &[f64]) -> f64 {
    let patch = grid.beside(y, x);
    let parts = grid.bends(patch, (x, y));
    let freedoms = Grid::freedoms(patch);
    freedoms.iter().zip(parts).map(|(freedom, bends)| bends[2] * of[*freedom]).sum()
}

fn summed(grid: &Grid, (x, y): (f64, f64), parts: &[f64; 16], of: &[f64]) -> f64 {
    let freedoms = Grid::freedoms(grid.beside(y, x));
    freedoms.iter().zip(parts).map(|(freedom, part)| part * of[*freedom]).sum()
}

/// Adds the square of a sum of the unknowns of a patch, so many times.
fn add_square(matrix: &mut Banded, patch: (usize, usize), parts: &[f64; 16], times: f64) {
    let freedoms = Grid::freedoms(patch);
    for (one, part) in freedoms.iter().zip(parts) {
        for (other, counted) in freedoms.iter().zip(parts) {
            matrix.add(*one, *other, times * part * counted);
        }
    }
}
