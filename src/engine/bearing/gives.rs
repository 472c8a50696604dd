//! How a design gives: what each string moves at the ends of the others.

use super::{Build, Case, board, neck};
use crate::engine::analysis::Analysis;
use crate::engine::geometry::{Band, Geometry, Loads, pulls};
use crate::engine::structure::frame::Pull;
use crate::engine::units::Force;

/// How a harp gives: how much nearer the ends of each string come to each other for each newton on another, in m/N.
#[derive(Clone, Debug, PartialEq)]
pub struct Gives {
    /// The places in the harp of the strings whose pull and place are known, in the order of rows and columns.
    pub places: Vec<usize>,
    /// What the frame does of it in each case that its verdicts count, the stiffest first.
    pub frames: Vec<(Case, Matrix)>,
    /// What the board does of it: with edges as firm and as soft as liners and sides may be; where these are not known, with
    /// edges that cannot turn and with edges that turn freely.
    pub boards: [Matrix; 2],
}

/// Row by row.
pub type Matrix = Vec<Vec<f64>>;

impl Gives {
    /// Frame and board, from what gives least: the stiffest frame with edges that cannot turn, then every frame with
    /// edges that turn freely.
    pub fn states(&self) -> impl Iterator<Item = (&Matrix, &Matrix)> {
        let [firm, loose] = &self.boards;
        let least = self.frames.first().map(|(_, frame)| (frame, firm));
        least.into_iter().chain(self.frames.iter().map(move |(_, frame)| (frame, loose)))
    }

    /// Frame and board together, in the order of [`states`](Self::states).
    pub fn ends(&self) -> Vec<Matrix> {
        self.states().map(|(frame, board)| sum(frame, board)).collect()
    }

    /// Whether the joints give as their sizes say.
    pub fn by_joints(&self) -> bool {
        self.frames.iter().any(|(case, _)| *case == Case::JointsGive)
    }

    /// Whether the soundbox gives as its sizes say.
    pub fn by_soundbox(&self) -> bool {
        self.frames.iter().all(|(case, _)| *case != Case::NothingGives)
    }
}

fn sum(one: &Matrix, other: &Matrix) -> Matrix {
    let row = |(one, other): (&Vec<f64>, &Vec<f64>)| {
        one.iter().zip(other).map(|(one, other)| one + other).collect()
    };
    one.iter().zip(other).map(row).collect()
}

/// How a harp that is laid out gives: its neck, pillar, joints and soundbox as the frame in space of its verdicts, and its
/// board as a plate. `None` where there is no frame, or the board's stiffness is not known.
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
    let boards =
        board::gives(band, loads, (&build.board, build.soundbox.as_ref()), geometry, &places)?;
    Some(Gives { places, frames, boards })
}
