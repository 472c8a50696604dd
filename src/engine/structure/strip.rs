//! The soundboard as a strip across the grain: what the strings pull it with, and how far it rises.

use super::section::SectionError;
use crate::engine::units::{Force, Length, Stress};

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

/// A strip of the board from edge to edge.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Strip {
    width: Length,
    thickness: Length,
}

/// What a strip feels.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct StripState {
    /// Greatest bending moment for each metre of the board's length, in N·m/m.
    pub moment_n_m_per_m: f64,
    /// Greatest bending stress.
    pub stress: Stress,
    /// Rise of the middle at once.
    pub rise: Length,
    /// Rise of the middle over the years.
    pub rise_crept: Length,
}

/// The two ends between which the truth lies, as the edges of a board are neither clamped nor free to turn.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct StripRange {
    /// With edges that cannot turn.
    pub fixed: StripState,
    /// With edges that turn freely.
    pub hinged: StripState,
}

impl Strip {
    /// A strip of some width from edge to edge.
    ///
    /// # Errors
    ///
    /// When width or thickness is not a length above 0.
    pub fn new(width: Length, thickness: Length) -> Result<Self, SectionError> {
        for (side, length) in [("width", width), ("thickness", thickness)] {
            if !(length.to_m() > 0.0 && length.to_m().is_finite()) {
                return Err(SectionError::Side { side, got_mm: length.to_mm() });
            }
        }
        Ok(Self { width, thickness })
    }

    /// Stress and rise under a line load `q` along the middle: with fixed edges `M = q w/8` and
    /// `δ = q w³/(192 E I)`, hinged `M = q w/4` and `δ = q w³/(48 E I)`, `I = t³/12`; `δ` times `1 + k_def` over
    /// the years.
    ///
    /// The modulus is that across the board, along the grain of a board whose grain runs across. Holds while the
    /// rise is less than the thickness: beyond that the board also hangs between its edges like a cloth, and
    /// rises less than this says. The string rib and the bars are left out.
    ///
    /// # Source
    ///
    /// Beam tables: a load in the middle of a beam, fixed and simply supported.
    pub fn under(&self, load_n_per_m: f64, modulus: Stress, creep_ratio: f64) -> StripRange {
        let (w, t) = (self.width.to_m(), self.thickness.to_m());
        let rigidity = modulus.to_pa() * t.powi(3) / 12.0;
        let state = |moment_part: f64, rise_part: f64| {
            let moment_n_m_per_m = load_n_per_m * w / moment_part;
            let rise = load_n_per_m * w.powi(3) / (rise_part * rigidity);
            StripState {
                moment_n_m_per_m,
                stress: Stress::from_pa(6.0 * moment_n_m_per_m / (t * t)),
                rise: Length::from_m(rise),
                rise_crept: Length::from_m(rise * (1.0 + creep_ratio)),
            }
        };
        StripRange { fixed: state(8.0, 192.0), hinged: state(4.0, 48.0) }
    }
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
    fn hinged_edges_double_the_stress_and_quadruple_the_rise() {
        let strip = Strip::new(Length::from_mm(300.0), Length::from_mm(4.0)).unwrap();
        let range = strip.under(2000.0, Stress::from_gpa(10.0), 0.6);
        let (fixed, hinged) = (range.fixed, range.hinged);
        assert_close(hinged.stress.to_pa(), 2.0 * fixed.stress.to_pa(), 1e-12, "stress");
        assert_close(hinged.rise.to_m(), 4.0 * fixed.rise.to_m(), 1e-12, "rise");
        assert_close(fixed.rise_crept.to_m(), 1.6 * fixed.rise.to_m(), 1e-12, "creep");
    }

    #[test]
    fn a_board_that_is_none_is_refused() {
        for bad in [0.0, -1.0, f64::NAN, f64::INFINITY] {
            assert!(Strip::new(Length::from_mm(bad), Length::from_mm(4.0)).is_err());
            assert!(Strip::new(Length::from_mm(300.0), Length::from_mm(bad)).is_err());
            let apart = Length::from_mm(bad);
            assert_eq!(board_load(Force::from_n(1.0), 0.5, apart, Spacing::Square), None);
        }
        for bad in [0.0, -0.5, 3.2, f64::NAN] {
            let apart = Length::from_mm(15.0);
            assert_eq!(board_load(Force::from_n(1.0), bad, apart, Spacing::Square), None);
        }
    }
}
