//! How a design gives: what each string moves at the ends of the others.

use super::{Build, board, neck};
use crate::engine::analysis::Analysis;
use crate::engine::geometry::{Band, Geometry, Loads, pulls};
use crate::engine::structure::frame::Pull;
use crate::engine::units::Force;

/// How a harp gives: how much nearer the ends of each string come to each other for each newton on another, in m/N.
#[derive(Clone, Debug, PartialEq)]
pub struct Gives {
    /// The places in the harp of the strings whose pull and place are known, in the order of rows and columns.
    pub places: Vec<usize>,
    /// If neither joints nor soundbox give and the board's edges cannot turn; if a usual soundbox gives and the board's
    /// edges turn freely; and if the pillar only pushes, the neck turns on the shoulder and the board's edges turn.
    pub ends: [Vec<Vec<f64>>; 3],
}

/// How a harp that is laid out gives: its neck, pillar and soundbox as a frame in space, and its board as a plate. `None`
/// where there is no frame, or the board's stiffness is not known.
///
/// By Maxwell and Betti rows and columns are alike. Bending, twist, shear and push along the grain count; that wood and
/// glue also give under the pins does not.
pub fn gives(
    band: &Band,
    loads: &Loads,
    analysis: &Analysis,
    geometry: &Geometry,
    build: &Build,
) -> Option<Gives> {
    let hung = pulls(band, analysis, geometry).into_iter().enumerate();
    let (places, hung): (Vec<usize>, Vec<Pull>) = hung
        .filter_map(|(place, pull)| {
            let pull = pull?;
            let size = pull.x.to_n().hypot(pull.y.to_n());
            let one = |part: Force| Force::from_n(part.to_n() / size);
            (size > 0.0).then_some((place, Pull { x: one(pull.x), y: one(pull.y), ..pull }))
        })
        .unzip();
    let [mut firm, mut held, mut loose] =
        neck::Prepared::new(band, build).ok()?.gives(&hung, build)?;
    let [clamped, hinged] = board::gives(band, loads, &build.board, geometry, &places)?;
    for (frame, board) in [(&mut firm, &clamped), (&mut held, &hinged), (&mut loose, &hinged)] {
        for (row, added) in frame.iter_mut().zip(board) {
            row.iter_mut().zip(added).for_each(|(sum, part)| *sum += part);
        }
    }
    Some(Gives { places, ends: [firm, held, loose] })
}
