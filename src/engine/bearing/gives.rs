//! How a design gives: what each string moves at the ends of the others.

use super::{Build, Case, Kept, board, neck};
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

/// How much nearer the ends of each string come to each other under the tensions of all, in metres.
#[derive(Clone, Debug, PartialEq)]
pub struct Nearer {
    /// The places in the harp of the strings, as [`Gives::places`].
    pub places: Vec<usize>,
    frames: Vec<Vec<f64>>,
    boards: [Vec<f64>; 2],
}

impl Nearer {
    /// By the frame and by the board, in the order of [`Gives::states`].
    pub fn states(&self) -> impl Iterator<Item = (&[f64], &[f64])> {
        let [firm, loose] = &self.boards;
        let least = self.frames.first().map(|frame| (&**frame, &**firm));
        least.into_iter().chain(self.frames.iter().map(move |frame| (&**frame, &**loose)))
    }

    /// Of a harp of which it is known how it gives; the tensions are those of all its strings, and 0 where one is not
    /// known.
    pub fn of(gives: &Gives, tensions_n: &[f64]) -> Self {
        let tensions_n = at_places(tensions_n, &gives.places);
        let row = |row: &Vec<f64>| row.iter().zip(&tensions_n).map(|(c, t)| c * t).sum();
        let all = |matrix: &Matrix| -> Vec<f64> { matrix.iter().map(row).collect() };
        Self {
            places: gives.places.clone(),
            frames: gives.frames.iter().map(|(_, frame)| all(frame)).collect(),
            boards: gives.boards.each_ref().map(all),
        }
    }
}

fn at_places(tensions_n: &[f64], places: &[usize]) -> Vec<f64> {
    places.iter().map(|place| tensions_n.get(*place).copied().unwrap_or(0.0)).collect()
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
    let (places, hung) = hung(band, analysis, geometry);
    let frames = neck::Prepared::new(band, build).ok()?.gives(&hung, build)?;
    let of_board = (&build.board, build.soundbox.as_ref());
    let mut kept = Kept::default();
    let boards = board::gives(&mut kept.board, band, loads, of_board, geometry, &places)?;
    Some(Gives { places, frames, boards })
}

/// As [`Nearer::of`], without what each string does by itself, which is most of the work. The tensions are those of all
/// strings, and 0 where one is not known.
pub fn nearer(
    kept: &mut Kept,
    band: &Band,
    loads: &Loads,
    (analysis, tensions_n): (&Analysis, &[f64]),
    geometry: &Geometry,
    build: &Build,
) -> Option<Nearer> {
    let (places, hung) = hung(band, analysis, geometry);
    let tensions_n = at_places(tensions_n, &places);
    let frames = neck::Prepared::new(band, build).ok()?.nearer((&hung, &tensions_n), build)?;
    let of_board = (&build.board, build.soundbox.as_ref());
    let strings = (&*places, &*tensions_n);
    let boards = board::nearer(&mut kept.board, band, loads, of_board, geometry, strings)?;
    Some(Nearer { places, frames, boards })
}

/// The strings whose pull and place are known, with pulls of 1 N.
fn hung(band: &Band, analysis: &Analysis, geometry: &Geometry) -> (Vec<usize>, Vec<Pull>) {
    let hung = pulls(band, analysis, geometry).into_iter().enumerate();
    hung.filter_map(|(place, pull)| {
        let pull = pull?;
        let size = pull.x.to_n().hypot(pull.y.to_n());
        let one = |part: Force| Force::from_n(part.to_n() / size);
        (size > 0.0).then_some((place, Pull { x: one(pull.x), y: one(pull.y), ..pull }))
    })
    .unzip()
}
