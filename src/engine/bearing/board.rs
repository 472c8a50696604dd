//! The soundboard under all its strings, as a plate with its string rib.

use crate::engine::analysis::{Known, Unknown};
use crate::engine::geometry::{Band, BoardPull, Geometry, Hole, Loads};
use crate::engine::structure::plate::{Edges, Lift, Plate, PlateState, Rib, Sheet};
use crate::engine::structure::strip::BoardLoad;
use crate::engine::structure::wood::Margin;
use crate::engine::units::{Force, Length, Stress};

/// What a board is made of. Width and thickness go evenly from the lowest string to the highest, and on to the ends.
#[derive(Clone, Debug, PartialEq)]
pub struct BoardParts {
    /// What it may bear for good in bending from edge to edge, where that is known.
    pub bending: Option<Stress>,
    /// How far breaking lies above that, where it is known.
    pub margin: Option<Margin>,
    /// Modulus of that bending, where it is known.
    pub modulus: Option<Stress>,
    /// Modulus of bending along the board, shear modulus and Poisson's number, where they are known; else each strip
    /// from edge to edge bends for itself.
    pub along: Option<(Stress, Stress, f64)>,
    /// What it gives over the years in addition to its first rise, over that rise, where it is known.
    pub creep_ratio: Option<f64>,
    /// At the lowest and at the highest string.
    pub width: (Length, Length),
    /// At the lowest and at the highest string.
    pub thickness: (Length, Length),
    /// String rib and strip outside; without any, both are nothing.
    pub rib: Rib,
    /// What they may bear for good in bending, where that is known.
    pub rib_bending: Option<Stress>,
}

impl BoardParts {
    /// Whether something is glued on along the middle.
    pub fn has_rib(&self) -> bool {
        let area = |(breadth, height): (Length, Length)| breadth.to_m() * height.to_m();
        self.rib.modulus.to_pa() > 0.0 && area(self.rib.inside) + area(self.rib.outside) > 0.0
    }
}

/// What board and rib feel at a string.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct BoardState {
    /// Bending moment from edge to edge, the greater of middle and edge, for each metre of the board's length.
    pub moment_n_m_per_m: f64,
    /// Its stress.
    pub stress: Stress,
    /// Stress in the string rib or the strip outside, whichever is greater; 0 without any.
    pub rib_stress: Stress,
    /// Rise of the middle at once.
    pub rise: Length,
    /// Rise of the middle over the years, where the creep is known; else as at once.
    pub rise_crept: Length,
}

/// The board at a string. It rises the less the more its edges hold; the truth lies between.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct BoardCut {
    /// What strings do to a metre of it.
    pub load: BoardLoad,
    /// From edge to edge.
    pub width: Length,
    /// How thick it is.
    pub thickness: Length,
    /// With edges that cannot turn.
    pub fixed: BoardState,
    /// With edges that turn freely.
    pub hinged: BoardState,
    /// Whether the creep is known.
    pub creeps: bool,
    /// What the board may bear, where that is known.
    pub limit: Option<Stress>,
    /// What its rib may bear, where there is one and that is known.
    pub rib_limit: Option<Stress>,
    /// Whether there is a string rib, or a strip outside.
    pub has_rib: bool,
}

impl BoardCut {
    /// Whether the rise with hinged edges passes the thickness, beyond which the board rises less than this says.
    pub fn hangs(&self) -> bool {
        self.hinged.rise > self.thickness
    }

    /// How far board and rib are used up, least and most: the one that is used up farther. `None` where no limit of the
    /// board is known.
    pub fn used(&self) -> Option<(f64, f64)> {
        let (fixed, hinged) = (self.share(&self.fixed)?, self.share(&self.hinged)?);
        Some((fixed.min(hinged), fixed.max(hinged)))
    }

    fn share(&self, state: &BoardState) -> Option<f64> {
        let board = state.stress.to_pa() / self.limit?.to_pa();
        let rib = self.rib_limit.map_or(0.0, |limit| state.rib_stress.to_pa() / limit.to_pa());
        Some(board.max(rib))
    }

    /// Whether the rib is used up farther than the board, at most.
    pub fn rib_leads(&self) -> bool {
        let share = |stress: Stress, limit: Option<Stress>| {
            limit.map_or(0.0, |limit| stress.to_pa() / limit.to_pa())
        };
        share(self.hinged.rib_stress, self.rib_limit) > share(self.hinged.stress, self.limit)
    }
}

/// How far a width or a thickness may shrink on the way to an end of the board, over that at the string next to it.
const LEAST_LEFT: f64 = 0.25;

/// How far the board goes on beyond a string, so that it does not end in a point: `shrinks` is how much of a measure is
/// lost with each metre.
fn reach(to_end: Length, measures: [(Length, f64); 2]) -> f64 {
    let mut far = to_end.to_m();
    for (measure, shrinks) in measures {
        if shrinks > 0.0 {
            far = far.min((1.0 - LEAST_LEFT) * measure.to_m() / shrinks);
        }
    }
    far.max(0.0)
}

/// The board from end to end, and how far below the lowest string it begins, in metres.
fn plate(band: &Band, parts: &BoardParts, geometry: &Geometry) -> (Plate, f64) {
    let whole_m = band.holes.first().map_or(0.0, |hole| hole.along_board.to_m());
    let slope = |(low, high): (Length, Length)| {
        if whole_m > 0.0 { (high.to_m() - low.to_m()) / whole_m } else { 0.0 }
    };
    let (wide, thick) = (slope(parts.width), slope(parts.thickness));
    let below = reach(geometry.board_below, [(parts.width.0, wide), (parts.thickness.0, thick)]);
    let above = reach(geometry.board_above, [(parts.width.1, -wide), (parts.thickness.1, -thick)]);
    let ends = |(low, high): (Length, Length), slope: f64| {
        (Length::from_m(low.to_m() - slope * below), Length::from_m(high.to_m() + slope * above))
    };
    let none = Stress::from_pa(0.0);
    let (along, shear, poisson) = parts.along.unwrap_or((none, none, 0.0));
    let across = parts.modulus.unwrap_or(none);
    let plate = Plate {
        length: Length::from_m(below + whole_m + above),
        width: ends(parts.width, wide),
        thickness: ends(parts.thickness, thick),
        sheet: Sheet { across, along, shear, poisson },
        rib: parts.rib,
    };
    (plate, below)
}

/// How much nearer the board brings the ends of each string for each newton on another, in m/N, row by row, for the
/// strings at these places: with edges that cannot turn, and with edges that turn freely. `None` where the board's
/// stiffness or the place of a string is not known.
pub(super) fn gives(
    band: &Band,
    loads: &Loads,
    parts: &BoardParts,
    geometry: &Geometry,
    places: &[usize],
) -> Option<[Vec<Vec<f64>>; 2]> {
    let (plate, below) = plate(band, parts, geometry);
    // What a newton along the string does square to the board.
    let lift = Force::from_n(geometry.board_angle_rad.sin());
    let spot = |place: &usize| {
        let over = loads.board.get(*place)?.as_ref().ok()?.per_length?.pitch;
        let along = band.holes.get(*place)?.along_board.to_m();
        Some(Lift { at: Length::from_m(below + along), over, force: lift })
    };
    let spots = places.iter().map(spot).collect::<Option<Vec<Lift>>>()?;
    let stiffness = plate.stiffness()?;
    let gives = |edges| stiffness.gives(&spots, edges);
    Some([gives(Edges::CLAMPED)?, gives(Edges::HINGED)?])
}

/// The board at each string, in the harp's order.
pub(super) fn cuts(
    band: &Band,
    loads: &Loads,
    parts: &BoardParts,
    geometry: &Geometry,
) -> Vec<Known<BoardCut>> {
    let (plate, below) = plate(band, parts, geometry);
    let at = |hole: &Hole| Length::from_m(below + hole.along_board.to_m());
    let ends = [plate.length, Length::from_m(0.0)];
    let places: Vec<Length> = band.holes.iter().map(at).chain(ends).collect();
    let lift = |(place, pull): (&Length, &Known<BoardPull>)| {
        let load = pull.as_ref().ok()?.per_length?;
        let force = Force::from_n(load.lift_n_per_m * load.pitch.to_m());
        Some(Lift { at: *place, over: load.pitch, force })
    };
    let lifts: Vec<Lift> = places.iter().zip(&loads.board).filter_map(lift).collect();
    let stiffness = plate.stiffness();
    let under = |edges| stiffness.as_ref()?.under(&lifts, edges, &places);
    let (fixed, hinged) = (under(Edges::CLAMPED), under(Edges::HINGED));
    let last = band.holes.len().saturating_sub(1);
    let cut = |(place, pull): (usize, &Known<BoardPull>)| {
        let load = (*pull)?.per_length.ok_or(Unknown::OutOfReach)?;
        parts.modulus.filter(|modulus| modulus.to_pa() > 0.0).ok_or(Unknown::Modulus)?;
        let state = |states: &Option<Vec<PlateState>>| {
            let (states, at) = (states.as_ref()?, *places.get(place)?);
            let mut state = told(&plate, at, states.get(place)?, parts);
            // The rib may bend most at the end of the board beside the lowest or the highest string.
            for (beside, end) in [(0, last + 1), (last, last + 2)] {
                if place == beside {
                    let (at, end) = (*places.get(end)?, states.get(end)?);
                    let stress = told(&plate, at, end, parts).rib_stress;
                    let greater = stress > state.rib_stress;
                    state.rib_stress = if greater { stress } else { state.rib_stress };
                }
            }
            Some(state)
        };
        let (fixed, hinged) = state(&fixed).zip(state(&hinged)).ok_or(Unknown::OutOfReach)?;
        let at = *places.get(place).ok_or(Unknown::OutOfReach)?;
        let known = |limit: Option<Stress>| limit.filter(|limit| limit.to_pa() > 0.0);
        Ok(BoardCut {
            load,
            width: plate.width_at(at),
            thickness: plate.thickness_at(at),
            fixed,
            hinged,
            creeps: parts.creep_ratio.is_some(),
            limit: known(parts.bending),
            rib_limit: known(parts.rib_bending).filter(|_| parts.has_rib()),
            has_rib: parts.has_rib(),
        })
    };
    loads.board.iter().enumerate().map(cut).collect()
}

/// What a place of the board feels.
fn told(plate: &Plate, at: Length, state: &PlateState, parts: &BoardParts) -> BoardState {
    let (t, section) = (plate.thickness_at(at).to_m(), plate.section(at));
    let moment_n_m_per_m = state.middle_n_m_per_m.abs().max(state.edge_n_m_per_m.abs());
    let rib_pa = if section.rigidity_n_m2 > 0.0 {
        let bend = state.rib_n_m.abs() / section.rigidity_n_m2;
        plate.rib.modulus.to_pa() * section.outermost.to_m() * bend
    } else {
        0.0
    };
    let crept = 1.0 + parts.creep_ratio.unwrap_or(0.0);
    BoardState {
        moment_n_m_per_m,
        stress: Stress::from_pa(6.0 * moment_n_m_per_m / (t * t)),
        rib_stress: Stress::from_pa(rib_pa),
        rise: state.rise,
        rise_crept: Length::from_m(crept * state.rise.to_m()),
    }
}
