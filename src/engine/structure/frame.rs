//! The frame of a harp in its plane: where the pull of all strings acts, what the pillar and the shoulder bear,
//! and the forces within the neck.
//!
//! Coordinates are those of a drawing with `x` to the right and `y` up. A moment that turns from `x` to `y` is
//! above 0. The strings hang on one side of the neck; `z` points to that side when it points to the reader.

mod neck;

use thiserror::Error;

pub use self::neck::{AxisPoint, HeldAgainstTwist, Neck, NeckLoads, Station, greatest_twist_rad};
use crate::engine::units::{Force, Length, Moment};
use crate::words::{Words, structure as say};

/// A place in the plane of the harp.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Point {
    /// To the right.
    pub x: Length,
    /// Upward.
    pub y: Length,
}

impl Point {
    /// From two numbers in millimetres.
    pub const fn from_mm(x: f64, y: f64) -> Self {
        Self { x: Length::from_mm(x), y: Length::from_mm(y) }
    }

    const fn m(self) -> (f64, f64) {
        (self.x.to_m(), self.y.to_m())
    }

    const fn is_finite(self) -> bool {
        self.x.to_m().is_finite() && self.y.to_m().is_finite()
    }

    /// The way from `from` to here, in metres.
    const fn since_m(self, from: Self) -> (f64, f64) {
        (self.x.to_m() - from.x.to_m(), self.y.to_m() - from.y.to_m())
    }
}

const fn cross(a: (f64, f64), b: (f64, f64)) -> f64 {
    a.0 * b.1 - a.1 * b.0
}

const fn dot(a: (f64, f64), b: (f64, f64)) -> f64 {
    a.0 * b.0 + a.1 * b.1
}

/// A force at a place.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Pull {
    /// Where it acts.
    pub at: Point,
    /// Its part to the right.
    pub x: Force,
    /// Its part upward.
    pub y: Force,
    /// How far it acts from the middle plane of the neck, on the strings' side.
    pub offset: Length,
}

impl Pull {
    /// The pull of a string from `at` towards `to`. `None` where the two are one place.
    pub fn of_string(at: Point, to: Point, tension: Force, offset: Length) -> Option<Self> {
        let way = to.since_m(at);
        let length = way.0.hypot(way.1);
        let part = |way: f64| Force::from_n(tension.to_n() * way / length);
        (length > 0.0 && length.is_finite()).then(|| Self {
            at,
            x: part(way.0),
            y: part(way.1),
            offset,
        })
    }

    const fn n(self) -> (f64, f64) {
        (self.x.to_n(), self.y.to_n())
    }

    const fn is_finite(self) -> bool {
        self.at.is_finite()
            && self.x.to_n().is_finite()
            && self.y.to_n().is_finite()
            && self.offset.to_m().is_finite()
    }
}

/// All pulls as one.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Resultant {
    /// Part to the right.
    pub x: Force,
    /// Part upward.
    pub y: Force,
    /// Moment about the origin.
    pub moment: Moment,
}

/// The force that does what many do: `R = Σ F`, `M = Σ (x F_y − y F_x)` about the origin.
///
/// # Source
///
/// Statics.
///
/// # Example
///
/// Two pulls of 1 N, one metre apart, are one of 2 N in their middle.
///
/// ```
/// use stringloft::engine::structure::frame::{resultant, Point, Pull};
/// use stringloft::engine::units::Force;
///
/// let pull = |x_mm| Pull { at: Point::from_mm(x_mm, 0.0), y: Force::from_n(-1.0), ..Pull::default() };
/// let all = resultant(&[pull(0.0), pull(1000.0)]);
/// let place = all.nearest_to_origin().expect("there is a force");
/// assert_eq!((all.size().to_n(), place.x.to_mm()), (2.0, 500.0));
/// ```
pub fn resultant(pulls: &[Pull]) -> Resultant {
    let sum = |of: &dyn Fn(&Pull) -> f64| pulls.iter().map(of).sum::<f64>();
    Resultant {
        x: Force::from_n(sum(&|pull| pull.x.to_n())),
        y: Force::from_n(sum(&|pull| pull.y.to_n())),
        moment: Moment::from_n_m(sum(&|pull| cross(pull.at.m(), pull.n()))),
    }
}

impl Resultant {
    /// How strong it is.
    pub fn size(self) -> Force {
        Force::from_n(self.x.to_n().hypot(self.y.to_n()))
    }

    /// The place of its line of action that is nearest to the origin. `None` where there is no force: then a
    /// moment alone is left, which acts nowhere and everywhere.
    pub fn nearest_to_origin(self) -> Option<Point> {
        let (x, y) = (self.x.to_n(), self.y.to_n());
        let square = x * x + y * y;
        // r = R⊥ M/R²: r × R = M, and r is square to R.
        let along = self.moment.to_n_m() / square;
        let place = Point { x: Length::from_m(along * y), y: Length::from_m(-along * x) };
        (square > 0.0 && place.is_finite()).then_some(place)
    }

    /// Where its line of action crosses the level `y`. `None` where it runs level.
    pub fn crosses_level(self, level: Length) -> Option<Point> {
        let x = (self.moment.to_n_m() + level.to_m() * self.x.to_n()) / self.y.to_n();
        x.is_finite().then_some(Point { x: Length::from_m(x), y: level })
    }
}

/// Why a frame cannot be worked out.
#[derive(Clone, Debug, PartialEq, Error)]
#[non_exhaustive]
pub enum FrameError {
    /// A number that is none.
    #[error("{}", say::frame_number(.what))]
    NotANumber {
        /// Where.
        what: Words,
    },
    /// No strings.
    #[error("{}", say::FRAME_NO_PULLS)]
    NoPulls,
    /// The neck has no length.
    #[error("{}", say::frame_axis(.got))]
    Axis {
        /// How many points there are that differ from the one before.
        got: usize,
    },
    /// The pillar has no length.
    #[error("{}", say::frame_pillar(.gap_mm))]
    Pillar {
        /// How far they lie apart.
        gap_mm: f64,
    },
    /// The pillar points at the shoulder, so that it cannot hold the neck up.
    #[error("{}", say::frame_aligned(.gap_mm))]
    Collinear {
        /// How far the line of the pillar passes by.
        gap_mm: f64,
    },
}

/// The three places that hold a neck.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Supports {
    /// The joint of neck and soundbox, taken as a pin.
    pub shoulder: Point,
    /// Where the pillar meets the neck.
    pub pillar_top: Point,
    /// Where the pillar stands.
    pub pillar_foot: Point,
}

/// What pillar and shoulder give to the neck.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Reactions {
    /// Push of the pillar along itself; below 0 it is pulled.
    pub pillar: Force,
    /// What the pillar gives to the neck, as a force at its top.
    pub pillar_pull: Pull,
    /// What the shoulder gives to the neck.
    pub shoulder_pull: Pull,
}

/// The least distance between the pillar's line and the shoulder, over the distance from shoulder to pillar.
const LEAST_ARM: f64 = 1e-6;

/// What holds a neck, with a pillar that is only pushed along itself and a shoulder that turns freely:
/// `N = −[M about the shoulder]/[(A − B) × u]`, `u` from foot to top, and the shoulder gives `−R − N u`.
///
/// In a real harp the joints also bear moments, which this leaves to the neck.
///
/// # Errors
///
/// When a place is no number, the pillar has no length, or its line passes through the shoulder.
///
/// # Source
///
/// Statics of a body on a pin and a two-force member; worked out.
///
/// # Example
///
/// A level neck of a metre with an upright pillar, and 100 N in the middle: each end bears half.
///
/// ```
/// use stringloft::engine::structure::frame::{reactions, Point, Pull, Supports};
/// use stringloft::engine::units::Force;
///
/// let supports = Supports {
///     shoulder: Point::from_mm(0.0, 0.0),
///     pillar_top: Point::from_mm(1000.0, 0.0),
///     pillar_foot: Point::from_mm(1000.0, -1500.0),
/// };
/// let down = Pull { at: Point::from_mm(500.0, 0.0), y: Force::from_n(-100.0), ..Pull::default() };
/// let held = reactions(supports, &[down])?;
/// assert!((held.pillar.to_n() - 50.0).abs() < 1e-12);
/// assert!((held.shoulder_pull.y.to_n() - 50.0).abs() < 1e-12);
/// # Ok::<(), stringloft::engine::structure::frame::FrameError>(())
/// ```
pub fn reactions(supports: Supports, pulls: &[Pull]) -> Result<Reactions, FrameError> {
    let Supports { shoulder, pillar_top, pillar_foot } = supports;
    if ![shoulder, pillar_top, pillar_foot].iter().all(|place| place.is_finite()) {
        return Err(FrameError::NotANumber { what: say::IN_SUPPORTS });
    }
    if !pulls.iter().all(|pull| pull.is_finite()) {
        return Err(FrameError::NotANumber { what: say::IN_STRINGS });
    }
    if pulls.is_empty() {
        return Err(FrameError::NoPulls);
    }
    let pillar = pillar_top.since_m(pillar_foot);
    let height = pillar.0.hypot(pillar.1);
    if height <= 0.0 || height.is_infinite() {
        return Err(FrameError::Pillar { gap_mm: 1e3 * height });
    }
    let up = (pillar.0 / height, pillar.1 / height);
    let span = pillar_top.since_m(shoulder);
    let arm = cross(span, up);
    if arm.abs() <= LEAST_ARM * span.0.hypot(span.1) {
        return Err(FrameError::Collinear { gap_mm: 1e3 * arm.abs() });
    }
    let moment: f64 = pulls.iter().map(|pull| cross(pull.at.since_m(shoulder), pull.n())).sum();
    let push = -moment / arm;
    let all = resultant(pulls);
    let (x, y) = (push * up.0, push * up.1);
    let at = |at: Point, x: f64, y: f64| Pull {
        at,
        x: Force::from_n(x),
        y: Force::from_n(y),
        offset: Length::from_m(0.0),
    };
    Ok(Reactions {
        pillar: Force::from_n(push),
        pillar_pull: at(pillar_top, x, y),
        shoulder_pull: at(shoulder, -all.x.to_n() - x, -all.y.to_n() - y),
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::testing::assert_close;

    fn pull(x_mm: f64, y_mm: f64, x_n: f64, y_n: f64) -> Pull {
        Pull {
            at: Point::from_mm(x_mm, y_mm),
            x: Force::from_n(x_n),
            y: Force::from_n(y_n),
            offset: Length::from_mm(30.0),
        }
    }

    fn supports() -> Supports {
        Supports {
            shoulder: Point::from_mm(0.0, 0.0),
            pillar_top: Point::from_mm(700.0, 250.0),
            pillar_foot: Point::from_mm(760.0, -1100.0),
        }
    }

    #[test]
    fn everything_on_the_neck_balances() {
        let pulls = [pull(100.0, 40.0, -20.0, -300.0), pull(420.0, 80.0, -5.0, -900.0)];
        let held = reactions(supports(), &pulls).unwrap();
        let all = [&pulls[..], &[held.pillar_pull, held.shoulder_pull]].concat();
        let left = resultant(&all);
        for rest in [left.x.to_n(), left.y.to_n(), left.moment.to_n_m()] {
            assert!(rest.abs() < 1e-12 * 1200.0, "{rest}");
        }
    }

    #[test]
    fn one_force_stands_for_all() {
        let pulls = [pull(100.0, 40.0, -20.0, -300.0), pull(420.0, 80.0, -5.0, -900.0)];
        let all = resultant(&pulls);
        let place = all.nearest_to_origin().unwrap();
        let one = Pull { at: place, x: all.x, y: all.y, offset: Length::from_m(0.0) };
        let (many, one) = (reactions(supports(), &pulls), reactions(supports(), &[one]));
        assert_close(one.unwrap().pillar.to_n(), many.unwrap().pillar.to_n(), 1e-12, "pillar");
        let crossing = all.crosses_level(Length::from_mm(60.0)).unwrap();
        let gap = cross(crossing.since_m(place), (all.x.to_n(), all.y.to_n()));
        assert!(gap.abs() < 1e-12, "{gap}");
        let couple = [pull(0.0, 0.0, 0.0, 1.0), pull(9.0, 0.0, 0.0, -1.0)];
        assert_eq!(resultant(&couple).nearest_to_origin(), None);
        assert_eq!(resultant(&[]).nearest_to_origin(), None);
    }

    #[test]
    fn frames_that_cannot_stand_are_refused_in_words() {
        let pulls = [pull(100.0, 40.0, 0.0, -300.0)];
        let with = |change: &dyn Fn(&mut Supports)| {
            let mut supports = supports();
            change(&mut supports);
            reactions(supports, &pulls)
        };
        let error = with(&|s| s.pillar_foot = Point::from_mm(-700.0, -250.0)).unwrap_err();
        assert!(error.to_string().starts_with("the pillar must not point at the shoulder"));
        let error = with(&|s| s.pillar_foot = s.pillar_top).unwrap_err();
        assert_eq!(error, FrameError::Pillar { gap_mm: 0.0 });
        let error = with(&|s| s.pillar_top = s.shoulder).unwrap_err();
        assert_eq!(error, FrameError::Collinear { gap_mm: 0.0 });
        let error = with(&|s| s.shoulder = Point::from_mm(f64::NAN, 0.0)).unwrap_err();
        assert_eq!(error, FrameError::NotANumber { what: say::IN_SUPPORTS });
        assert_eq!(reactions(supports(), &[]), Err(FrameError::NoPulls));
        let endless = [pull(100.0, 40.0, f64::INFINITY, 0.0)];
        assert_eq!(
            reactions(supports(), &endless),
            Err(FrameError::NotANumber { what: say::IN_STRINGS })
        );
    }

    #[test]
    fn a_string_pulls_along_itself() {
        let (from, to) = (Point::from_mm(10.0, 100.0), Point::from_mm(40.0, 60.0));
        let (tension, offset) = (Force::from_n(50.0), Length::from_mm(30.0));
        let pull = Pull::of_string(from, to, tension, offset).unwrap();
        assert_close(pull.x.to_n(), 30.0, 1e-12, "x");
        assert_close(pull.y.to_n(), -40.0, 1e-12, "y");
        assert_eq!(Pull::of_string(from, from, tension, offset), None);
    }
}
