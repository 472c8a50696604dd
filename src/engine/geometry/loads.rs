//! What the strings do to board and neck, and how close they are to each other.

use super::{Band, Geometry, Placed};
use crate::engine::analysis::{Analysis, Harp, Known, StringFigures};
use crate::engine::structure::frame::{Pull, Resultant, resultant};
use crate::engine::structure::strip::{BoardLoad, Spacing, board_load};
use crate::engine::units::{Force, Length};

/// What one string does to the board.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct BoardPull {
    /// Square to the board.
    pub lift: Force,
    /// Along it, towards the treble.
    pub along: Force,
    /// For each length of the board: the string bears on half of the gap to each neighbour. `None` for a string
    /// that has none.
    pub per_length: Option<BoardLoad>,
}

/// The room between a string and the next lower one.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Room {
    /// From surface to surface at rest.
    pub at_rest: Length,
    /// What is left where both are plucked towards each other as far as the design says; below 0 they strike.
    pub plucked: Length,
}

/// What all strings do.
#[derive(Clone, Debug, PartialEq)]
pub struct Loads {
    /// One for each string, in the harp's order.
    pub board: Vec<Known<BoardPull>>,
    /// Sum of the known lifts.
    pub lift: Force,
    /// Sum of the known pulls along the board.
    pub along: Force,
    /// The pulls of the strings on the neck, at their bridge pins; strings without pull or place are left out.
    pub pulls: Vec<Pull>,
    /// How many strings are left out.
    pub left_out: usize,
    /// All pulls on the neck as one.
    pub all: Resultant,
    /// Between each string and the next lower one, in the harp's order: one less than there are strings.
    pub rooms: Vec<Known<Room>>,
}

/// The pull of each string on the neck, at its bridge pin, in the harp's order; `None` for a string without pull or
/// place.
pub fn pulls(band: &Band, analysis: &Analysis, geometry: &Geometry) -> Vec<Option<Pull>> {
    let pull = |(string, figures): (&Known<Placed>, &StringFigures)| {
        let placed = string.as_ref().ok()?;
        let tension = figures.tension.ok()?;
        Pull::of_string(placed.bridge, placed.hole.board, tension, geometry.strings_from_neck)
    };
    band.strings.iter().zip(&analysis.strings).map(pull).collect()
}

/// What the strings of a band do to board and neck, and how close they are.
///
/// The room between two strings is their distance square to them, less half of each gauge; plucked, less their
/// displacements too. The widest places of two strings lie at different heights, so that there is rather more.
///
/// # Source
///
/// Statics and geometry, worked out.
pub fn loads(band: &Band, harp: &Harp, analysis: &Analysis, geometry: &Geometry) -> Loads {
    let figures = &analysis.strings;
    let gap_m = |place: Option<usize>| {
        let gap = band.holes.get(place?)?.gap?;
        Some(gap.along_board.to_m())
    };
    let board: Vec<Known<BoardPull>> = figures
        .iter()
        .enumerate()
        .map(|(place, figures)| {
            let (lift, along, tension) = (figures.lift?, figures.along_board?, figures.tension?);
            // The gap of a string leads to the next higher one; that of the next lower one leads here.
            let gaps = [gap_m(Some(place)), gap_m(place.checked_add(1))];
            let count = gaps.iter().flatten().count();
            let share_m = gaps.iter().flatten().sum::<f64>() / if count == 2 { 2.0 } else { 1.0 };
            let (angle, share) = (geometry.board_angle_rad, Length::from_m(share_m));
            let per_length = board_load(tension, angle, share, Spacing::AlongBoard);
            Ok(BoardPull { lift, along, per_length })
        })
        .collect();
    let sum = |of: &dyn Fn(&BoardPull) -> Force| {
        Force::from_n(board.iter().flatten().map(|pull| of(pull).to_n()).sum())
    };
    let (lift, along) = (sum(&|pull| pull.lift), sum(&|pull| pull.along));
    let pulls: Vec<Pull> = pulls(band, analysis, geometry).into_iter().flatten().collect();
    let left_out = band.strings.len().saturating_sub(pulls.len());
    let lower = band.holes.iter().skip(1);
    let rooms = figures.windows(2).zip(lower).map(|(pair, hole)| {
        let gauges_m = 0.5 * (pair[0].gauge?.to_m() + pair[1].gauge?.to_m());
        let aside_m = |figures: &StringFigures| {
            figures.length.map(|length| harp.conditions.pluck_of(length).to_m())
        };
        let swing_m = aside_m(&pair[0])? + aside_m(&pair[1])?;
        let square_m = hole.gap.map_or(0.0, |gap| gap.square.to_m());
        let at_rest = square_m - gauges_m;
        Ok(Room { at_rest: Length::from_m(at_rest), plucked: Length::from_m(at_rest - swing_m) })
    });
    let rooms = rooms.collect();
    Loads { all: resultant(&pulls), board, lift, along, pulls, left_out, rooms }
}
