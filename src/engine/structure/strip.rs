//! What the strings pull a soundboard with, for each length of it.

use crate::engine::units::{Force, Length};

/// The pull of strings on a metre of the board's middle line.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct BoardLoad {
    /// Square to the board, in N/m: what lifts it.
    pub lift_n_per_m: f64,
    /// Along the board, in N/m.
    pub along_n_per_m: f64,
    /// From string to string, along the board.
    pub pitch: Length,
}

/// How the distance from string to string was measured.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Spacing {
    /// Square to the strings.
    Square,
    /// Along the board.
    AlongBoard,
}

/// What parallel strings do to a metre of the board that they meet at an angle.
///
/// Strings `p` apart along the board give `T sin θ/p` square to it and `T cos θ/p` along it; a distance `s` square
/// to the strings is `p = s/sin θ`, so that the lift is `T sin² θ/s`. `None` where the distance is not above 0 or
/// the angle not between 0 and a straight line.
///
/// # Source
///
/// Worked out: the parts of a force.
///
/// # Example
///
/// 100 N every 10 mm at a right angle.
///
/// ```
/// use std::f64::consts::FRAC_PI_2;
/// use stringloft::engine::structure::strip::{board_load, Spacing};
/// use stringloft::engine::units::{Force, Length};
///
/// let (pull, apart) = (Force::from_n(100.0), Length::from_mm(10.0));
/// let load = board_load(pull, FRAC_PI_2, apart, Spacing::Square).expect("an angle");
/// assert!((load.lift_n_per_m - 10_000.0).abs() < 1e-9);
/// ```
pub fn board_load(
    tension: Force,
    angle_rad: f64,
    spacing: Length,
    measured: Spacing,
) -> Option<BoardLoad> {
    let usable = spacing.to_m() > 0.0
        && spacing.to_m().is_finite()
        && angle_rad > 0.0
        && angle_rad < std::f64::consts::PI
        && tension.to_n().is_finite();
    if !usable {
        return None;
    }
    let (sine, cosine) = angle_rad.sin_cos();
    let pitch_m = match measured {
        Spacing::Square => spacing.to_m() / sine,
        Spacing::AlongBoard => spacing.to_m(),
    };
    Some(BoardLoad {
        lift_n_per_m: tension.to_n() * sine / pitch_m,
        along_n_per_m: tension.to_n() * cosine / pitch_m,
        pitch: Length::from_m(pitch_m),
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::testing::assert_close;

    #[test]
    fn the_parts_of_the_pull_are_the_pull() {
        for angle in [0.3, 0.56, 1.2, 2.0] {
            let (pull, apart) = (Force::from_n(111.0), Length::from_mm(15.9));
            let load = board_load(pull, angle, apart, Spacing::Square).unwrap();
            let one = load.lift_n_per_m.hypot(load.along_n_per_m) * load.pitch.to_m();
            assert_close(one, 111.0, 1e-12, angle);
            let again = board_load(pull, angle, load.pitch, Spacing::AlongBoard).unwrap();
            assert_close(again.lift_n_per_m, load.lift_n_per_m, 1e-12, angle);
        }
    }

    #[test]
    fn what_is_no_distance_and_no_angle_is_refused() {
        for bad in [0.0, -1.0, f64::NAN, f64::INFINITY] {
            let apart = Length::from_mm(bad);
            assert_eq!(board_load(Force::from_n(1.0), 0.5, apart, Spacing::Square), None);
        }
        for bad in [0.0, -0.5, 3.2, f64::NAN] {
            let apart = Length::from_mm(15.0);
            assert_eq!(board_load(Force::from_n(1.0), bad, apart, Spacing::Square), None);
        }
    }
}
