//! Where bars end on a board: how near their glue is to opening there. Where its string rib ends is not judged: how far
//! what presses it against the board keeps it shut is not known well enough.

use super::BoardState;
use super::whole::{Borne, Whole};
use crate::engine::structure::ended::{BarEnd, Leaf, on_bed};
use crate::engine::structure::plate::{CrossFeels, PlateState, Push};
use crate::engine::structure::verdict::{Aspect, Use};
use crate::engine::units::{Length, Stress};

/// What is known of a board where something ends that is glued to it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct BoardEnds {
    /// Modulus through its thickness.
    pub through: Stress,
    /// Shear modulus of its wood as it rolls.
    pub rolls: Stress,
    /// What energy of parting, in J/m², is allowed for good where its bars end: that of the lighter wood of both.
    pub parts_j_per_m2: Option<f64>,
}

impl BoardEnds {
    /// The same where only a share of every strength may be allowed: energy goes with the square of it.
    #[must_use]
    pub fn times(mut self, ratio: f64) -> Self {
        self.parts_j_per_m2 = self.parts_j_per_m2.map(|energy| energy * ratio * ratio);
        self
    }
}

impl BoardState {
    /// Takes of the end of the board beside it what counts more there: the rib bends most at an end, and bars along end.
    pub(super) fn end(&mut self, ended: &Self) {
        for other in &ended.verdict.uses {
            let mut known = self.verdict.uses.iter_mut();
            match (known.find(|used| used.aspect == other.aspect), other.aspect) {
                (Some(used), Aspect::RibBent | Aspect::RibGlue | Aspect::BarsEnds)
                    if other.stress > used.stress =>
                {
                    *used = *other;
                }
                (None, _) => self.verdict.uses.push(*other),
                _ => {}
            }
        }
    }
}

/// At so many places along the board it is asked how firm a bed it is.
const STATIONS: u32 = 8;

/// One after the other.
fn in_turn(one: f64, other: f64) -> f64 {
    if one.is_infinite() { other } else { one * other / (one + other).max(f64::MIN_POSITIVE) }
}

impl Whole<'_> {
    /// Whether string rib or bars end where that is not judged.
    pub(super) fn has_unjudged_ends(&self) -> bool {
        let (parts, bars) = (self.parts, &self.plate.bars);
        let energies = parts.ends.filter(|_| parts.along.is_some() && parts.peeled.is_some());
        let of_bars = energies.and_then(|of| of.parts_j_per_m2);
        let has_bars = bars.modulus.to_pa() > 0.0 && bars.cross + bars.pairs > 0;
        let on_unknown = bars.cross > 0 && self.liners.is_none();
        parts.has_rib() || (has_bars && (of_bars.is_none() || on_unknown))
    }

    /// The glue of the bars along a board, at an end of it.
    pub(super) fn ends_along(&self, at: Length, state: &PlateState, of: &Borne) -> Option<Use> {
        let (plate, ends) = (self.plate, self.parts.ends?);
        if plate.bars.pairs == 0 || plate.bars.modulus.to_pa() <= 0.0 {
            return None;
        }
        let leaf = Leaf {
            thickness: plate.thickness_at(at),
            along: plate.sheet.along,
            through: ends.through,
            shear: ends.rolls,
        };
        let (breadth, high) = plate.bars.pair_size;
        let rigidity_n_m2 = plate.pair_section_at(at).rigidity_n_m2;
        let end = BarEnd { breadth, leaf, rigidity_n_m2 };
        let bed = on_bed(rigidity_n_m2, self.bed_pa());
        let held = in_turn(of.edges.ends_n * breadth.to_m(), bed);
        // A bar that is stretched with the board lets go of that as well; one that is shortened stands against a block.
        let stretched = Push(self.push).stretched_at(at.to_m() / plate.length.to_m());
        let along = 0.5 * plate.bars.modulus.to_pa() * high.to_m() * stretched * stretched;
        let energy = (end.released_j_per_m2(state.bar_n_m, held).sqrt() + along.sqrt()).powi(2);
        self.opens(energy)
    }

    /// The glue at both ends of a bar across.
    pub(super) fn ends_across(&self, bar: &CrossFeels, of: &Borne) -> Option<Use> {
        let (plate, ends) = (self.plate, self.parts.ends?);
        self.liners.as_ref()?;
        let breadth = plate.bars.cross_size.0;
        let leaf = Leaf {
            thickness: plate.edge_thickness_at(bar.at),
            along: plate.sheet.across,
            through: ends.through,
            shear: plate.sheet.shear,
        };
        let end = BarEnd { breadth, leaf, rigidity_n_m2: bar.end.rigidity_n_m2 };
        let (low, high) = of.edges.sides_n;
        let edge = if low.is_infinite() {
            low
        } else {
            low + bar.at.to_m() / plate.length.to_m() * (high - low)
        };
        // A bar that is bent alike at both ends, without the board beside it.
        let own = 2.0 * end.rigidity_n_m2 / plate.width_at(bar.at).to_m();
        let held = in_turn(edge * breadth.to_m(), own);
        self.opens(end.released_j_per_m2(bar.end_n_m, held))
    }

    /// The board as a bed of what lies on its middle, at its softest, in N for each metre along it and metre that it rises:
    /// strips from edge to edge that turn freely there, `48 D/w³`. What lies beside the middle has a firmer one.
    fn bed_pa(&self) -> f64 {
        let plate = self.plate;
        let at = |of: u32| {
            let at = Length::from_m(f64::from(of) / f64::from(STATIONS) * plate.length.to_m());
            let thin = plate.thickness_at(at).to_m().min(plate.edge_thickness_at(at).to_m());
            let bends = plate.sheet.across.to_pa() * thin.powi(3) / 12.0;
            48.0 * bends / plate.width_at(at).to_m().powi(3)
        };
        (0..=STATIONS).map(at).fold(f64::INFINITY, f64::min)
    }

    /// As a stress that pulls the glue open, so that its share of what may be allowed across the grain is that of the load with
    /// which a piece opens, as that goes with the root of the energy.
    fn opens(&self, energy: f64) -> Option<Use> {
        let allowed = self.parts.ends?.parts_j_per_m2?;
        let limit = self.parts.peeled.filter(|limit| limit.to_pa() > 0.0)?;
        let ratio = (energy / allowed).sqrt();
        ratio.is_finite().then(|| {
            let stress = Stress::from_pa(ratio * limit.to_pa());
            Use { aspect: Aspect::BarsEnds, stress, limit: Some(limit), ratio: Some(ratio) }
        })
    }
}
