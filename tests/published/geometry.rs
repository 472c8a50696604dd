//! Where strings and pins stand, and what the strings do to the board.

use stringloft::engine::analysis::{Conditions, Harp, HarpString, Limits, Mechanism, analyse};
use stringloft::engine::construction::MakeUp;
use stringloft::engine::geometry::{Gaps, Geometry, PinCurve, lay_out};
use stringloft::engine::structure::strip::Spacing;
use stringloft::engine::units::{Force, Frequency, Length, LinearDensity, Stiffness};

use crate::record::assert_near;

/// Half a metre at 100 Hz: a string without stiffness pulls 10 N for each gram and metre.
fn harp(count: usize, tension_n: f64, board_angle_rad: f64) -> Harp {
    let density = LinearDensity::from_g_per_m(tension_n / 10.0);
    let make_up = MakeUp::weighed(density, None, None, None).expect("it can be made");
    let string = HarpString {
        note: None,
        frequency: Ok(Frequency::from_hz(100.0)),
        length: Ok(Length::from_mm(500.0)),
        make_up: Ok(make_up),
        mechanism: Mechanism::None,
    };
    let conditions = Conditions { board_angle_rad, ..Conditions::default() };
    Harp {
        strings: vec![string; count],
        pluck_ratio: 0.4,
        conditions,
        limits: Limits {
            working_share_percent: 75.0,
            soft_share_percent: 75.0,
            slack_share_percent: 12.0,
            least_tension: Force::from_n(20.0),
            stiffness_band: (Stiffness::from_n_per_mm(0.7), Stiffness::from_n_per_mm(1.9)),
            partial_8_cents: 25.0,
            jump_percent: 30.0,
            least_raise: Length::from_mm(0.0),
        },
    }
}

/// Rise, run and slope of right triangles with whole sides. A string that rises so has those shares of its pull as
/// lift and along the board, and strings that stand so far apart square to each other leave the board farther apart
/// by the slope over the rise.
///
/// Source: Euclid, *Elements*, book X: such triangles have sides of whole numbers, so nothing is rounded.
const TRIANGLES: [(f64, f64, f64); 4] =
    [(3.0, 4.0, 5.0), (5.0, 12.0, 13.0), (8.0, 15.0, 17.0), (20.0, 21.0, 29.0)];

pub fn strings_lift_the_board_and_stand_on_it_as_triangles_say() {
    for (rise, run, slope) in TRIANGLES {
        let what = format_args!("{rise}, {run}, {slope}");
        let angle_rad = f64::atan2(rise, run);
        let harp = harp(2, 10.0 * slope, angle_rad);
        let analysis = analyse(&harp);
        let figures = &analysis.strings[0];
        assert_near(figures.lift.expect("a lift").to_n(), 10.0 * rise, 1e-12, what);
        assert_near(figures.along_board.expect("a pull").to_n(), 10.0 * run, 1e-12, what);
        let geometry = Geometry {
            board_angle_rad: angle_rad,
            gaps: Gaps::Uniform(Length::from_mm(rise)),
            measured: Spacing::Square,
            ..Geometry::default()
        };
        let gap = lay_out(&harp, &analysis, &geometry).holes[1].gap.expect("a neighbour");
        assert_near(gap.along_board.to_mm(), slope, 1e-12, what);
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
