//! What a whole board bears, and what each place of it feels.

use super::{BoardParts, BoardState};
use crate::engine::structure::banded::Banded;
use crate::engine::structure::duration::crept;
use crate::engine::structure::liner::{Holds, Liner};
use crate::engine::structure::plate::{
    CrossFeels, Edges, Lift, MOST_PUSHED, Plate, PlateState, Push, Stiffness, Support, left,
};
use crate::engine::structure::section::Rectangle;
use crate::engine::structure::verdict::{Aspect, Use, Verdict, simple};
use crate::engine::units::{Force, Length, Moment, Stress};

/// After so many years buckling is looked at, and the power of time with which creep grows at most until then.
const BOWS_AFTER_YEARS: f64 = 10.0;
const CREEP_POWER: f64 = 0.2;
/// Of the push that makes it bow, as much as counts for the rise of a board.
const MOST_OF_BOWING: f64 = 0.9;

/// By how much a board has crept when its buckling is looked at, over what it gives at once; `None` where its creep is not
/// known.
pub(in crate::engine::bearing) fn crept_when_it_bows(parts: &BoardParts) -> Option<f64> {
    Some(1.0 + crept(parts.creep_ratio?, BOWS_AFTER_YEARS, CREEP_POWER))
}

/// All that is the same for every string.
pub(super) struct Whole<'a> {
    pub(super) plate: &'a Plate,
    pub(super) parts: &'a BoardParts,
    /// How wide the hole of each string is, and from string to string, in m.
    pub(super) holes: Vec<Option<(f64, f64)>>,
    pub(super) liners: Option<[(Liner, Holds); 2]>,
    /// What the sides' wood may bear in tension across its grain.
    pub(super) side_peeled: Option<Stress>,
    pub(super) push: &'a [(f64, f64)],
    /// What that push takes from the board, where it pushes.
    pub(super) pushed: Option<&'a Banded>,
}

/// The board at one end of the estimate: at each place at once and at each with its creep, its bars, and how it bows.
pub(super) struct Borne {
    now: Vec<PlateState>,
    crept: Option<Vec<Length>>,
    crosses: Vec<CrossFeels>,
    bows: Option<Use>,
    /// How its edges hold.
    pub(super) edges: Edges,
}

impl Whole<'_> {
    /// The board at an end of the estimate; `None` where it holds nothing.
    pub(super) fn borne(
        &self,
        stiffness: &Stiffness,
        lifts: &[Lift],
        support: Support,
        places: &[Length],
    ) -> Option<Borne> {
        let times = match self.pushed {
            Some(pushed) => stiffness.bows_by(support.edges, pushed),
            None => (!self.push.is_empty()).then_some(f64::INFINITY),
        };
        // One that bows under its push alone has no rise.
        let counts = self.pushed.filter(|_| times.is_some_and(|times| times > 1.0));
        let most = MOST_OF_BOWING * times.unwrap_or(MOST_PUSHED);
        let mut hanging = stiffness.hanging(lifts, support, counts.filter(|_| most > 1.0))?;
        let (now, crosses) = hanging.under(1.0, 1.0, places)?;
        let creep = self.parts.creep_ratio.map(|creep| 1.0 + creep);
        let crept = creep.and_then(|times| hanging.rises(times, times.min(most), places));
        Some(Borne { now, crept, crosses, bows: self.bows(times), edges: support.edges })
    }

    /// The share of buckling, where a push makes the board buckle at so many times.
    fn bows(&self, times: Option<f64>) -> Option<Use> {
        let (times, (along, ..)) = times.zip(self.parts.along)?;
        let most = self.push.iter().map(|push| push.1).fold(0.0, f64::max);
        let stress = Stress::from_pa(along.to_pa() * most);
        let left = self.parts.least_ratio? / crept_when_it_bows(self.parts)?;
        let limit = Stress::from_pa(stress.to_pa() * times * left);
        Some(if times.is_finite() {
            simple(Aspect::BoardBows, stress, Some(limit))
        } else {
            Use { aspect: Aspect::BoardBows, stress, limit: None, ratio: Some(0.0) }
        })
    }

    /// What a place of the board feels, in the order in which it is told.
    pub(super) fn told(&self, at: Length, of: &Borne, place: usize) -> Option<BoardState> {
        let (plate, parts) = (self.plate, self.parts);
        let state = of.now.get(place)?;
        let share = at.to_m() / plate.length.to_m();
        let (t, edge_t) = (plate.thickness_at(at).to_m(), plate.edge_thickness_at(at).to_m());
        let surface = |moment: f64, pull: f64, t: f64| {
            let (moment, pull) = (moment.abs(), pull.max(0.0));
            (6.0 * moment / (t * t) + pull / t, moment, pull)
        };
        let hole = self.holes.get(place).copied().flatten();
        let mut middle = surface(state.middle_n_m_per_m, state.middle_pull_n_per_m, t);
        // The holes of the strings lie in the middle. What a string rib holds across its grain is more than they take.
        if let Some((hole, apart)) = hole.filter(|_| !parts.has_rib()) {
            middle.0 /= left(hole, apart);
        }
        let edge = surface(state.edge_n_m_per_m, state.edge_pull_n_per_m, edge_t);
        let mut most = if edge.0 > middle.0 { edge } else { middle };
        if let Some(within) = state.within.filter(|within| within.stress().to_pa() > most.0) {
            most = surface(within.moment_n_m_per_m, within.pull_n_per_m, within.thickness.to_m());
        }
        let (stress, moment_n_m_per_m, pull_n_per_m) = most;
        let stress = Stress::from_pa(stress);
        let mut uses = vec![simple(Aspect::BoardBent, stress, parts.bending)];
        // What is glued on along the board is stretched or shortened with it.
        let strain = Push(self.push).most_at(share);
        if parts.has_rib() {
            let section = plate.rib_beside(at, hole.map_or(0.0, |(hole, _)| hole));
            let bend = state.rib_n_m.abs() / section.rigidity_n_m2 * section.outermost.to_m();
            let stress = Stress::from_pa(plate.rib.modulus.to_pa() * (bend + strain));
            uses.push(simple(Aspect::RibBent, stress, parts.rib_bending));
            let glue = Stress::from_pa(state.rib_shear_n.abs() * section.glue_per_m2);
            uses.push(simple(Aspect::RibGlue, glue, parts.rolled));
        }
        self.bars(at, state, strain, of, &mut uses);
        uses.extend(if at.to_m() <= 0.0 || at >= plate.length {
            self.ends_along(at, state, of)
        } else {
            nearest(&of.crosses, at).and_then(|bar| self.ends_across(bar, of))
        });
        if let Some([(low, _), (high, _)]) = self.liners {
            let depth = low.depth.to_m() + share * (high.depth.to_m() - low.depth.to_m());
            let liner = Liner { depth: Length::from_m(depth), ..low };
            // A strip under a load at its middle bears half of it at either side.
            let lift = 2.0 * (state.middle_n_m_per_m - state.edge_n_m_per_m).max(0.0)
                / plate.width_at(at).to_m();
            let peel = liner.peels(lift, state.edge_n_m_per_m.min(0.0));
            let weaker = |one: Stress, other: Stress| if other < one { other } else { one };
            let limit = parts.peeled.map(|one| self.side_peeled.map_or(one, |of| weaker(one, of)));
            uses.push(simple(Aspect::EdgePeel, peel, limit));
        }
        uses.extend(of.bows);
        let crept = of.crept.as_ref().and_then(|of| of.get(place)).copied();
        Some(BoardState {
            moment_n_m_per_m,
            pull_n_per_m,
            stress,
            verdict: Verdict { uses },
            rise: state.rise,
            rise_crept: crept.unwrap_or(state.rise),
        })
    }

    /// What shear and twist together do in a bar: `1.5 V/A` of all the force, and Saint-Venant's stress of a rectangle that
    /// turns as far as the board under it. More than it feels, as the board bears a part and its own twist holds it back.
    fn sheared(&self, size: (Length, Length), force_n: f64, twist_rad_per_m: f64) -> f64 {
        let Ok(bar) = Rectangle::new(size.0, size.1) else { return 0.0 };
        let modulus = self.parts.bars_shear.map_or(0.0, |(_, modulus)| modulus.to_pa());
        let torque = Moment::from_n_m(modulus * bar.torsion_m4() * twist_rad_per_m);
        let shear = bar.shear_stress(Force::from_n(force_n));
        shear.to_pa() + bar.torsion_stress(torque).to_pa()
    }

    /// Bars along at a place, and the bars across that are nearest to it.
    fn bars(&self, at: Length, state: &PlateState, strain: f64, of: &Borne, uses: &mut Vec<Use>) {
        let (plate, parts) = (self.plate, self.parts);
        let modulus = plate.bars.modulus.to_pa();
        let (mut bent, mut rolled, mut sheared) = (0.0_f64, 0.0_f64, 0.0_f64);
        let mut through = 0.0_f64;
        if plate.bars.pairs > 0 {
            through =
                self.sheared(plate.bars.pair_size, state.bar_shear_n, state.bar_twist_rad_per_m);
            let section = plate.pair_section_at(at);
            if section.rigidity_n_m2 > 0.0 {
                let bend = state.bar_n_m / section.rigidity_n_m2 * section.outermost.to_m();
                bent = modulus * (bend + strain);
                rolled = state.bar_shear_n * section.glue_per_m2;
            }
        }
        if let Some(bar) = nearest(&of.crosses, at) {
            bent = bent.max(bar.stress.to_pa());
            sheared = bar.glue.to_pa();
            let own = self.sheared(plate.bars.cross_size, bar.shear_n, bar.twist_rad_per_m);
            through = through.max(own);
        }
        if plate.bars.pairs + plate.bars.cross == 0 || modulus <= 0.0 {
            return;
        }
        uses.push(simple(Aspect::BarsBent, Stress::from_pa(bent), parts.bars_bending));
        // Bars along roll the board's wood; those across shear it along its grain.
        let [along, across] = [(rolled, parts.rolled), (sheared, parts.sheared)]
            .map(|(stress, limit)| simple(Aspect::BarsGlue, Stress::from_pa(stress), limit));
        let along_leads = match (along.ratio, across.ratio) {
            (Some(one), Some(other)) => one >= other,
            _ => along.stress >= across.stress,
        };
        uses.push(if along_leads { along } else { across });
        let limit = parts.bars_shear.map(|(shear, _)| shear);
        uses.push(simple(Aspect::BarsSheared, Stress::from_pa(through), limit));
    }
}

/// The bar across that is nearest to a place.
fn nearest(crosses: &[CrossFeels], at: Length) -> Option<&CrossFeels> {
    let off = |bar: &CrossFeels| (bar.at.to_m() - at.to_m()).abs();
    crosses.iter().reduce(|one, next| if off(next) < off(one) { next } else { one })
}
