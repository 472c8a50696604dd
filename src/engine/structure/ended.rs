//! Where a bar that is glued to a board ends: how much of its moment comes to that end, and what its glue gives up there for
//! each piece of it that opens.

use crate::engine::units::{Density, Length, Stress};

/// The board under a bar, as it bends along that bar.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Leaf {
    /// How thick it is.
    pub thickness: Length,
    /// Modulus along the bar.
    pub along: Stress,
    /// Modulus through its thickness.
    pub through: Stress,
    /// Shear modulus between both.
    pub shear: Stress,
}

/// The end of a bar.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct BarEnd {
    /// How wide it is glued on.
    pub breadth: Length,
    /// What it is glued to.
    pub leaf: Leaf,
    /// Stiffness in bending of the bar with the board under it, without the board's own, in N·m².
    pub rigidity_n_m2: f64,
}

/// How many thicknesses of itself a leaf bends on into what it is glued to, as a share of its thickness:
/// `χ² = E/(11 G) (3 − 2 (Γ/(1 + Γ))²)`, `Γ = 1.18 √(E E_z)/G`.
///
/// # Source
///
/// S. Hashemi, A. J. Kinloch and J. G. Williams, 1990, for the arm of a split beam (from memory).
///
/// # Example
///
/// Of a material that is alike every way, with Poisson's number 0.3, it is 0.66.
///
/// ```
/// use stringloft::engine::structure::ended::root;
/// use stringloft::engine::units::Stress;
///
/// let gpa = Stress::from_gpa;
/// assert!((root(gpa(10.0), gpa(10.0), gpa(10.0 / 2.6)) - 0.6635).abs() < 5e-4);
/// ```
pub fn root(along: Stress, through: Stress, shear: Stress) -> f64 {
    let (e, z, g) = (along.to_pa(), through.to_pa(), shear.to_pa());
    let gamma = 1.18 * (e * z).sqrt() / g;
    let share = gamma / (1.0 + gamma);
    (e / (11.0 * g) * (3.0 - 2.0 * share * share)).sqrt()
}

/// Mean energy that it takes to part wood along its grain by pulling it open, in J/m²: `1.04 ρ − 146` with `ρ` in kg/m³.
/// `None` for wood so light that nothing is left.
///
/// # Source
///
/// H. J. Larsen and P. J. Gustafsson, 1990, fitted to European conifers (from memory); other woods are taken as if they were
/// conifers of the same weight, which no source says.
pub fn energy_j_per_m2(density: Density) -> Option<f64> {
    let energy = 1.04 * density.to_kg_per_m3() - 146.0;
    (energy > 0.0 && energy.is_finite()).then_some(energy)
}

/// How much more is freed over the first half of the board's thickness than beams say: up to 1.14 times as much by plane finite
/// elements, where the board's wood rolls readily. Source: worked out, `ended_values.json` among the checks.
const AT_THE_START: f64 = 1.2;
impl BarEnd {
    /// What its glue gives up for each square metre that opens at the end, in J/m²; endless where the board does not bend.
    ///
    /// `moment_n_m` is the bar's at its end as if it were let into what holds the edge of the board, by its size, and
    /// `held_n_m` against how much of a turn it comes about, in N·m for each radian: of bar and edge in turn. But the bar ends
    /// there, and only the board goes on to what it is glued to. A piece of it `χ t` long bends, so that of the moment
    /// comes `M/(1 + K χ t/(E I))`. That leaves the bar at once and lies on the board alone: `G = M²/2b (1/EI − 1/EI′)`, with
    /// `EI′` of bar and board together, whatever the glue line is like, which is thin and stiff beside the wood.
    ///
    /// Nothing counts that presses the bar against the board there; a bar cut square at its full height is meant.
    ///
    /// # Source
    ///
    /// A. A. Griffith's balance of energy with beams, as by Z. Suo and J. W. Hutchinson, 1990 (from memory); the piece that
    /// bends on: [`root`]. Worked out.
    pub fn released_j_per_m2(&self, moment_n_m: f64, held_n_m: f64) -> f64 {
        let (breadth, leaf) = (self.breadth.to_m(), &self.leaf);
        let own = leaf.along.to_pa() * breadth * leaf.thickness.to_m().powi(3) / 12.0;
        let reach = leaf.thickness.to_m() * root(leaf.along, leaf.through, leaf.shear);
        // The board's own share of the bend as well.
        let whole = moment_n_m.abs() * (1.0 + own / self.rigidity_n_m2);
        let comes = whole / (1.0 + held_n_m * reach / own);
        let gains = 1.0 / own - 1.0 / (self.rigidity_n_m2 + own);
        AT_THE_START * 0.5 * comes * comes / breadth * gains.max(0.0)
    }
}

/// Against how much of a turn the end of a long bar comes that lies on a bed, in N·m for each radian: `2 λ EI`,
/// `λ⁴ = k/(4 EI)`, with `k` in N for each metre of it and metre that it rises.
///
/// # Source
///
/// M. Hetényi, *Beams on Elastic Foundation* (from memory).
pub fn on_bed(rigidity_n_m2: f64, bed_pa: f64) -> f64 {
    2.0 * (0.25 * bed_pa / rigidity_n_m2).powf(0.25) * rigidity_n_m2
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::testing::assert_close;

    fn end() -> BarEnd {
        let leaf = Leaf {
            thickness: Length::from_mm(10.0),
            along: Stress::from_gpa(0.96),
            through: Stress::from_gpa(0.5),
            shear: Stress::from_gpa(0.04),
        };
        BarEnd { breadth: Length::from_mm(30.0), leaf, rigidity_n_m2: 117.6 }
    }

    /// `E I` of the board is 2.4, together 120; of 1 N·m comes `120/117.6`: `1.2 · 1.0204²/0.06 (1/2.4 − 1/120)` is 8.5034.
    #[test]
    fn what_comes_lies_on_the_board_alone() {
        assert_close(end().released_j_per_m2(-1.0, 0.0), 8.5034, 1e-4, "all of it");
        let reach = 0.01 * root(end().leaf.along, end().leaf.through, end().leaf.shear);
        let half = 2.4 / reach;
        assert_close(end().released_j_per_m2(1.0, half), 0.25 * 8.5034, 1e-4, "half of it");
        assert_close(end().released_j_per_m2(0.0, half), 0.0, 1e-12, "no moment");
    }

    /// 448 kg/m³ are 320 J/m².
    #[test]
    fn heavier_wood_is_tougher() {
        let energy = |kg| energy_j_per_m2(Density::from_kg_per_m3(kg));
        assert_close(energy(448.0).unwrap(), 319.92, 1e-12, "spruce");
        assert_eq!(energy(140.0), None);
    }

    /// `k` 40,000 and `EI` 100 are `λ` 3.1623 and 632.46 N·m.
    #[test]
    fn a_bed_holds_the_end_of_a_bar() {
        assert_close(on_bed(100.0, 40_000.0), 632.456, 1e-5, "on its bed");
    }
}
