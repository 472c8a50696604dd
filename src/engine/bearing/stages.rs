//! The loads while only part of the strings is up.

use super::{Build, Part, frame, neck};
use crate::engine::analysis::Analysis;
use crate::engine::geometry::{Band, Geometry, Loads, pulls};
use crate::engine::structure::frame::{Pull, Station};
use crate::engine::units::{Force, Moment};

/// In which order the strings are put on.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum Order {
    /// From the longest, which is the lowest, upward.
    #[default]
    LowestFirst,
    /// From the shortest downward.
    HighestFirst,
    /// From the middle to both ends in turn.
    MiddleFirst,
    /// From both ends to the middle: the lowest, the highest, the next lowest, and so on.
    InTurns,
}

impl Order {
    /// All of them, in the order of a list.
    pub const ALL: [Self; 4] =
        [Self::LowestFirst, Self::HighestFirst, Self::MiddleFirst, Self::InTurns];

    /// The places of so many strings, as they are put on; place 0 is the highest string.
    ///
    /// # Example
    ///
    /// ```
    /// use stringloft::engine::bearing::Order;
    ///
    /// assert_eq!(Order::LowestFirst.places(3), [2, 1, 0]);
    /// assert_eq!(Order::MiddleFirst.places(5), [2, 3, 1, 4, 0]);
    /// assert_eq!(Order::InTurns.places(5), [4, 0, 3, 1, 2]);
    /// ```
    pub fn places(self, count: usize) -> Vec<usize> {
        match self {
            Self::LowestFirst => (0..count).rev().collect(),
            Self::HighestFirst => (0..count).collect(),
            Self::InTurns => {
                let turns = (0..count).rev().zip(0..count).flat_map(|(low, high)| [low, high]);
                turns.take(count).collect()
            }
            Self::MiddleFirst => {
                let middle = count / 2;
                let below = (1..=count).map(|step| middle + step);
                let above = (1..=count).map(|step| middle.checked_sub(step));
                let turns = below.zip(above).flat_map(|(below, above)| [Some(below), above]);
                let all = std::iter::once(Some(middle)).chain(turns);
                all.flatten().filter(|place| *place < count).collect()
            }
        }
    }
}

/// The loads with so many strings up, all of these at pitch.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Stage {
    /// How many strings are up.
    pub up: usize,
    /// The place of the one that was put on last; `None` with none up.
    pub last: Option<usize>,
    /// Sum of the pulls.
    pub pull: Force,
    /// Sum of the lifts on the board.
    pub lift: Force,
    /// Push in the pillar where the joints give most; below 0 it is pulled.
    pub pillar: Force,
    /// Greatest bending moment in the neck, by size.
    pub moment: Moment,
    /// Greatest torque in the neck, by size.
    pub torque: Moment,
    /// How far the part of the frame is loaded that leads, least and most as in
    /// [`used`](super::FrameBearing::used), where a limit is known; the board is left out, as each place of it bears
    /// its own strings.
    pub used_ratio: Option<(f64, f64)>,
    /// That part.
    pub leads: Option<Part>,
}

/// The loads from no string to all, in an order. A string without pull or place adds nothing. Empty where there is no
/// frame that stands.
pub fn stages(
    band: &Band,
    loads: &Loads,
    analysis: &Analysis,
    geometry: &Geometry,
    build: &Build,
    order: Order,
) -> Vec<Stage> {
    let all: Vec<usize> = (0..=band.strings.len()).collect();
    some_stages(band, loads, analysis, geometry, build, (order, &all))
}

/// As [`stages`], with so many strings up only; the numbers rise.
pub fn some_stages(
    band: &Band,
    loads: &Loads,
    analysis: &Analysis,
    geometry: &Geometry,
    build: &Build,
    (order, counts): (Order, &[usize]),
) -> Vec<Stage> {
    let Ok(prepared) = neck::Prepared::new(band, build) else { return Vec::new() };
    let pulls = pulls(band, analysis, geometry);
    let mut stage = Stage {
        up: 0,
        last: None,
        pull: Force::from_n(0.0),
        lift: Force::from_n(0.0),
        pillar: Force::from_n(0.0),
        moment: Moment::from_n_m(0.0),
        torque: Moment::from_n_m(0.0),
        used_ratio: build.is_given.then_some((0.0, 0.0)),
        leads: None,
    };
    let mut places = order.places(pulls.len()).into_iter();
    let (mut all, mut hung) = (Vec::new(), Vec::<Pull>::new());
    for count in counts {
        while stage.up < *count {
            let Some(place) = places.next() else { break };
            stage = Stage { up: stage.up + 1, last: Some(place), ..stage };
            let Some(pull) = pulls.get(place).copied().flatten() else { continue };
            hung.push(pull);
            let size = pull.x.to_n().hypot(pull.y.to_n());
            stage.pull = Force::from_n(stage.pull.to_n() + size);
            let lift = loads.board.get(place).and_then(|pull| pull.as_ref().ok());
            let lift_n = lift.map_or(0.0, |pull| pull.lift.to_n());
            stage.lift = Force::from_n(stage.lift.to_n() + lift_n);
        }
        if !hung.is_empty() {
            let Ok(held) = frame(&prepared, &hung, build) else { return Vec::new() };
            stage.pillar = held.pillar.push;
            let greatest =
                |of: fn(&Station) -> f64| Moment::from_n_m(f64::abs(held.neck.greatest(of)));
            stage.moment = greatest(|cut| cut.moment_n_m);
            stage.torque = greatest(|cut| cut.torque_n_m);
            let used = held.most_used().filter(|_| build.is_given);
            (stage.leads, stage.used_ratio) = used.unzip();
        }
        all.push(stage);
    }
    all
}
