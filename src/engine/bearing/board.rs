//! The soundboard at each string, as a strip across the grain.

use crate::engine::analysis::{Known, Unknown};
use crate::engine::geometry::{Band, BoardPull, Loads};
use crate::engine::structure::strip::{BoardLoad, Strip, StripRange};
use crate::engine::units::{Length, Stress};

/// What a board is made of. Width and thickness go evenly from the lowest string to the highest.
#[derive(Clone, Debug, PartialEq)]
pub struct BoardParts {
    /// What it may bear for good in bending from edge to edge, where that is known.
    pub bending: Option<Stress>,
    /// Modulus of that bending, where it is known.
    pub modulus: Option<Stress>,
    /// What it gives over the years in addition to its first rise, over that rise, where it is known.
    pub creep_ratio: Option<f64>,
    /// At the lowest and at the highest string.
    pub width: (Length, Length),
    /// At the lowest and at the highest string.
    pub thickness: (Length, Length),
}

/// The board at a string. Its rise is the lesser the more the edges hold; the truth lies between.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct BoardCut {
    /// What strings do to a metre of it.
    pub load: BoardLoad,
    /// From edge to edge.
    pub width: Length,
    /// How thick it is.
    pub thickness: Length,
    /// With clamped and with hinged edges. Over the years only where the creep is known, else as at once.
    pub range: StripRange,
    /// Whether the creep is known.
    pub creeps: bool,
    /// Stress over what may be allowed with clamped edges, where that is known.
    pub fixed_ratio: Option<f64>,
    /// The same with hinged edges.
    pub hinged_ratio: Option<f64>,
}

impl BoardCut {
    /// Whether the rise with hinged edges passes the thickness, beyond which the board rises less than the formula
    /// says.
    pub fn hangs(&self) -> bool {
        self.range.hinged.rise > self.thickness
    }
}

/// The board at each string, in the harp's order.
pub(super) fn cuts(band: &Band, loads: &Loads, parts: &BoardParts) -> Vec<Known<BoardCut>> {
    let whole_m = band.holes.first().map_or(0.0, |hole| hole.along_board.to_m());
    let pairs = band.holes.iter().zip(&loads.board);
    let cut = |(hole, pull): (&crate::engine::geometry::Hole, &Known<BoardPull>)| {
        let share = if whole_m > 0.0 { hole.along_board.to_m() / whole_m } else { 0.0 };
        at(share, (*pull)?.per_length.ok_or(Unknown::OutOfReach)?, parts)
    };
    pairs.map(cut).collect()
}

fn at(share: f64, load: BoardLoad, parts: &BoardParts) -> Known<BoardCut> {
    let between = |(low, high): (Length, Length)| {
        Length::from_m(low.to_m() + share * (high.to_m() - low.to_m()))
    };
    let (width, thickness) = (between(parts.width), between(parts.thickness));
    let modulus = parts.modulus.filter(|modulus| modulus.to_pa() > 0.0).ok_or(Unknown::Modulus)?;
    let strip = Strip::new(width, thickness).map_err(|_| Unknown::OutOfReach)?;
    let range = strip.under(load.lift_n_per_m, modulus, parts.creep_ratio.unwrap_or(0.0));
    let limit = parts.bending.filter(|limit| limit.to_pa() > 0.0);
    let ratio = |stress: Stress| limit.map(|limit| stress.to_pa().abs() / limit.to_pa());
    let numbers = [range.hinged.stress.to_pa(), range.hinged.rise_crept.to_m()];
    if !numbers.iter().all(|number| number.is_finite()) {
        return Err(Unknown::OutOfReach);
    }
    Ok(BoardCut {
        load,
        width,
        thickness,
        range,
        creeps: parts.creep_ratio.is_some(),
        fixed_ratio: ratio(range.fixed.stress),
        hinged_ratio: ratio(range.hinged.stress),
    })
}
