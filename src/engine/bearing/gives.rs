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
    /// What the frame does of it: if neither joints nor soundbox give, if a usual soundbox gives, and if the pillar only
    /// pushes and the neck turns on the shoulder.
    pub frames: [Matrix; 3],
    /// What the board does of it: with edges that cannot turn, and with edges that turn freely.
    pub boards: [Matrix; 2],
}

/// Row by row.
pub type Matrix = Vec<Vec<f64>>;

impl Gives {
    /// Frame and board together, from what gives least: the firm frame with the firm board, both others with the board
    /// whose edges turn.
    pub fn ends(&self) -> [Matrix; 3] {
        let [firm, loose] = &self.boards;
        let [one, two, three] = &self.frames;
        [sum(one, firm), sum(two, loose), sum(three, loose)]
    }
}

fn sum(one: &Matrix, other: &Matrix) -> Matrix {
    let row = |(one, other): (&Vec<f64>, &Vec<f64>)| {
        one.iter().zip(other).map(|(one, other)| one + other).collect()
    };
    one.iter().zip(other).map(row).collect()
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
    let frames = neck::Prepared::new(band, build).ok()?.gives(&hung, build)?;
    let boards = board::gives(band, loads, &build.board, geometry, &places)?;
    Some(Gives { places, frames, boards })
}
