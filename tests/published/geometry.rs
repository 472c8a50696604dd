//! Where strings and pins stand, and what the strings do to the board.

use stringloft::engine::analysis::{Conditions, Harp, HarpString, Limits, Mechanism, analyse};
use stringloft::engine::construction::MakeUp;
use stringloft::engine::geometry::{Gaps, Geometry, PinCurve, lay_out};
use stringloft::engine::structure::strip::Spacing;
use stringloft::engine::units::{Force, Frequency, Length, LinearDensity, Stiffness};

use crate::record::{assert_near, assert_prints};

/// Half a metre at 100 Hz: a string without stiffness pulls 10 N for each gram and metre.
fn harp(count: usize, tension_n: f64, angle_deg: f64) -> Harp {
    let density = LinearDensity::from_g_per_m(tension_n / 10.0);
    let make_up = MakeUp::weighed(density, None, None, None).expect("it can be made");
    let string = HarpString {
        note: None,
        frequency: Ok(Frequency::from_hz(100.0)),
        length: Ok(Length::from_mm(500.0)),
        make_up: Ok(make_up),
        mechanism: Mechanism::None,
    };
    let conditions =
        Conditions { board_angle_rad: angle_deg.to_radians(), ..Conditions::default() };
    Harp {
        strings: vec![string; count],
        pluck_ratio: 0.4,
        conditions,
        limits: Limits {
            working_share_percent: 75.0,
            slack_share_percent: 12.0,
            least_tension: Force::from_n(20.0),
            stiffness_band: (Stiffness::from_n_per_mm(0.7), Stiffness::from_n_per_mm(1.9)),
            partial_8_cents: 25.0,
            jump_percent: 30.0,
        },
    }
}

/// Two rows worked out by hand: pull, spacing square to the strings, angle; lift for each string and pitch along
/// the board.
pub fn strings_lift_the_board_and_stand_on_it_as_worked_out() {
    for (tension, square, angle, lift, pitch) in
        [(111.0, 15.9, 32.0, 58.8, 30.0), (255.0, 14.5, 35.0, 146.3, 25.3)]
    {
        let harp = harp(2, tension, angle);
        let analysis = analyse(&harp);
        let figures = &analysis.strings[0];
        let got = figures.lift.expect("a lift").to_n();
        assert_prints(got, lift, 0.1, "lift in N");
        let along = figures.along_board.expect("a pull").to_n();
        assert_near(got.hypot(along), tension, 1e-12, "both parts together");
        let geometry = Geometry {
            board_angle_rad: angle.to_radians(),
            gaps: Gaps::Uniform(Length::from_mm(square)),
            measured: Spacing::Square,
            ..Geometry::default()
        };
        let gap = lay_out(&harp, &analysis, &geometry).holes[1].gap.expect("a neighbour");
        assert_prints(gap.along_board.to_mm(), pitch, 0.1, "pitch in mm");
    }
}

/// The natural spline through (1, 2), (2, 3) and (3, 5) is `2 + ¾ s + ¼ s³` with `s = x − 1`, and then
/// `3 + 3/2 s + ¾ s² − ¼ s³` with `s = x − 2`.
///
/// Source: R. L. Burden and J. D. Faires, *Numerical Analysis*, section 3.5, example (from memory).
pub fn a_curve_through_three_nodes_is_the_textbooks() {
    let mm = Length::from_mm;
    let nodes = [(1.0, 2.0), (2.0, 3.0), (3.0, 5.0)].map(|(x, y)| (mm(x), mm(y)));
    let curve = PinCurve::new(&nodes).expect("it can be drawn");
    for step in 0..=20_u32 {
        let x = 1.0 + 0.1 * f64::from(step);
        let s = if x < 2.0 { x - 1.0 } else { x - 2.0 };
        let expected = if x < 2.0 {
            2.0 + 0.75 * s + 0.25 * s.powi(3)
        } else {
            3.0 + 1.5 * s + 0.75 * s * s - 0.25 * s.powi(3)
        };
        assert_near(curve.along_at(mm(x)).to_mm(), expected, 1e-12, "along the strings");
    }
}
