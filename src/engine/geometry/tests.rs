//! Identities of the geometry, and places found by brute force.

use kurbo::{ParamCurve, Point as Node};

mod neck;

use super::*;
use crate::engine::analysis::{Conditions, HarpString, Limits, Mechanism, analyse};
use crate::engine::construction::MakeUp;
use crate::engine::lever::ContactPlace;
use crate::engine::structure::strip::board_load;
use crate::engine::units::{Force, Frequency, LinearDensity, Stiffness};
use crate::testing::assert_close;

fn mm(value: f64) -> Length {
    Length::from_mm(value)
}

/// Strings of these lengths, the highest first; each pulls as a string of 5 g/m at 100 Hz.
fn harp(lengths_mm: &[f64]) -> Harp {
    let string = |length: &f64| HarpString {
        note: None,
        frequency: Ok(Frequency::from_hz(100.0)),
        length: Ok(mm(*length)),
        make_up: Ok(
            MakeUp::weighed(LinearDensity::from_g_per_m(5.0), None, Some(mm(1.0)), None).unwrap()
        ),
        mechanism: Mechanism::None,
    };
    Harp {
        strings: lengths_mm.iter().map(string).collect(),
        pluck_ratio: 0.4,
        conditions: Conditions::default(),
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

/// Lengths that grow towards the bass by ratios that fall by the same: the second difference of their logarithms
/// is −0.001.
fn even(count: u32) -> Vec<f64> {
    let length = |number: f64| 90.0 * (0.085 * number - 0.0005 * number * number).exp();
    (0..count).map(f64::from).map(length).collect()
}

fn band_of(lengths_mm: &[f64], geometry: &Geometry) -> Band {
    let harp = harp(lengths_mm);
    lay_out(&harp, &analyse(&harp), geometry)
}

fn gap_mm(one: Point, other: Point) -> f64 {
    (one.x.to_mm() - other.x.to_mm()).hypot(one.y.to_mm() - other.y.to_mm())
}

#[test]
fn a_string_is_as_long_as_it_is_and_its_pins_stand_where_they_should() {
    let lengths = even(30);
    let geometry = Geometry { start: mm(4.0), lean_rad: 0.1, ..Geometry::default() };
    let band = band_of(&lengths, &geometry);
    assert_eq!(band.strings.len(), 30);
    for (string, length) in band.strings.iter().zip(&lengths) {
        let placed = string.as_ref().unwrap();
        assert_close(gap_mm(placed.hole.start, placed.bridge), *length, 1e-12, "vibrating length");
        assert_close(gap_mm(placed.hole.board, placed.hole.start), 4.0, 1e-9, "bar");
        assert_close(gap_mm(placed.bridge, placed.tuning), 45.0, 1e-12, "after-length");
        let (bridge, tuning) = (band.across_along(placed.bridge), band.across_along(placed.tuning));
        assert_close(tuning.0.to_mm() - bridge.0.to_mm(), 8.0, 1e-9, "offset");
        assert!(tuning.1.to_mm() > bridge.1.to_mm());
        let back = band.point(bridge.0, bridge.1);
        assert!(gap_mm(back, placed.bridge) < 1e-9);
    }
    let lowest = band.holes.last().unwrap();
    assert!(gap_mm(lowest.board, Point::default()) < 1e-12);
    assert_eq!(band.holes[0].gap, None);
}

/// The part of the gap square to the strings is the gap along the board times the sine of the angle.
#[test]
fn spacing_square_and_along_the_board_are_one_thing() {
    for angle in [20.0_f64, 34.0, 60.0, 85.0] {
        let sine = angle.to_radians().sin();
        let square = Geometry { board_angle_rad: angle.to_radians(), ..Geometry::default() };
        let along = Geometry {
            measured: Spacing::AlongBoard,
            gaps: Gaps::Uniform(mm(14.5 / sine)),
            ..square.clone()
        };
        let (one, other) = (band_of(&even(12), &square), band_of(&even(12), &along));
        for (one, other) in one.holes.iter().zip(&other.holes) {
            assert!(gap_mm(one.board, other.board) < 1e-9, "{angle}");
        }
        for hole in &one.holes[1..] {
            let gap = hole.gap.unwrap();
            assert_close(gap.square.to_mm(), 14.5, 1e-12, angle);
            assert_close(gap.along_board.to_mm() * sine, 14.5, 1e-12, angle);
        }
        // What is reported is what is there.
        for pair in one.holes.windows(2) {
            let gap = pair[1].gap.unwrap();
            assert_close(
                gap_mm(pair[0].board, pair[1].board),
                gap.along_board.to_mm(),
                1e-9,
                angle,
            );
            let across = pair[0].across.to_mm() - pair[1].across.to_mm();
            assert_close(across, gap.square.to_mm(), 1e-9, angle);
        }
    }
}

#[test]
fn zones_go_evenly_and_each_gap_can_be_its_own() {
    let zones = Gaps::Zones(vec![(3, mm(18.0)), (7, mm(14.0))]);
    let widths: Vec<f64> = (1..=9).map(|number| zones.gap(number).to_mm()).collect();
    for (got, want) in widths.iter().zip([18.0, 18.0, 18.0, 17.0, 16.0, 15.0, 14.0, 14.0, 14.0]) {
        assert_close(*got, want, 1e-12, want);
    }
    let each = Gaps::Each(vec![mm(16.0), mm(0.0), mm(13.0)]);
    let widths: Vec<f64> = (1..=4).map(|number| each.gap(number).to_mm()).collect();
    assert_eq!(widths, [16.0, 0.0, 13.0, 13.0]);
    // A gap of 0: two strings in one hole, which is no error here.
    let band = band_of(&even(6), &Geometry { gaps: each, ..Geometry::default() });
    assert!(band.strings.iter().all(Result::is_ok));
    assert_close(band.holes[0].across.to_mm(), 16.0 + 3.0 * 13.0, 1e-9, "sum");
}

/// However the strings lean, no distance changes.
#[test]
fn leaning_turns_the_whole_harp() {
    let upright = band_of(&even(24), &Geometry::default());
    let leaning = band_of(&even(24), &Geometry { lean_rad: 0.2, ..Geometry::default() });
    let turned = |at: Point| {
        let (sine, cosine) = 0.2_f64.sin_cos();
        let (x, y) = (at.x.to_mm(), at.y.to_mm());
        Point::from_mm(x * cosine + y * sine, y * cosine - x * sine)
    };
    for (one, other) in upright.strings.iter().zip(&leaning.strings) {
        let (one, other) = (one.as_ref().unwrap(), other.as_ref().unwrap());
        assert!(gap_mm(turned(one.bridge), other.bridge) < 1e-9);
        assert!(gap_mm(turned(one.tuning), other.tuning) < 1e-9);
    }
    let (one, other) = (upright.neck.as_ref().unwrap(), leaning.neck.as_ref().unwrap());
    for (one, other) in one.centre.iter().zip(&other.centre) {
        assert!(gap_mm(turned(one.at), other.at) < 1e-6);
        assert_close(one.depth.to_mm(), other.depth.to_mm(), 1e-9, "depth");
    }
    assert!(gap_mm(turned(upright.shoulder), leaning.shoulder) < 1e-6);
    let curvature = |band: &Band| band.smoothness.curvature_per_m[12].unwrap();
    assert_close(curvature(&upright), curvature(&leaning), 1e-9, "curvature");
}

/// Strings stand by `lean` from upright, the board by `90° − θ − lean` from level.
#[test]
fn board_and_strings_have_their_angles() {
    let (angle, lean) = (33.0_f64.to_radians(), 5.0_f64.to_radians());
    let geometry = Geometry { board_angle_rad: angle, lean_rad: lean, ..Geometry::default() };
    let band = band_of(&even(8), &geometry);
    let way = |from: Point, to: Point| (to.x.to_m() - from.x.to_m(), to.y.to_m() - from.y.to_m());
    let board = way(band.board.0, band.board.1);
    assert_close(board.1.atan2(board.0).to_degrees(), 90.0 - 33.0 - 5.0, 1e-9, "board");
    let string = band.strings[3].as_ref().unwrap();
    let string = way(string.hole.board, string.bridge);
    assert_close(string.0.atan2(string.1).to_degrees(), 5.0, 1e-9, "lean");
    let cosine = (board.0 * string.0 + board.1 * string.1)
        / (board.0.hypot(board.1) * string.0.hypot(string.1));
    assert_close(cosine.acos(), angle, 1e-9, "between them");
}

#[test]
fn lengths_make_a_curve_that_makes_the_lengths() {
    let mut lengths = even(32);
    lengths[10] += 3.0;
    let zones = Gaps::Zones(vec![(1, mm(17.0)), (31, mm(12.0))]);
    let geometry = Geometry { gaps: zones, start: mm(2.0), lean_rad: -0.1, ..Geometry::default() };
    let band = band_of(&lengths, &geometry);
    let all = PinCurve::through(&band.pins(), 40).unwrap();
    assert!(all.miss.to_mm() < 1e-9, "{}", all.miss.to_mm());
    for (back, length) in all.curve.lengths(32, &geometry).iter().zip(&lengths) {
        assert_close(back.unwrap().to_mm(), *length, 1e-9, "all nodes");
    }
    // With few nodes the curve is smooth; no pin moves by more than it says.
    let few = PinCurve::through(&band.pins(), 6).unwrap();
    assert_eq!(few.curve.nodes().len(), 6);
    let off: Vec<f64> = few
        .curve
        .lengths(32, &geometry)
        .iter()
        .zip(&lengths)
        .map(|(back, length)| (back.unwrap().to_mm() - length).abs())
        .collect();
    let most = off.iter().copied().fold(0.0, f64::max);
    assert_close(most, few.miss.to_mm(), 1e-6, "miss");
    assert!(most < 4.0, "{most}");
    // And what comes of it makes the same curve again.
    let again: Vec<f64> =
        few.curve.lengths(32, &geometry).iter().map(|l| l.unwrap().to_mm()).collect();
    let again = PinCurve::through(&band_of(&again, &geometry).pins(), 6).unwrap();
    assert!(again.miss.to_mm() < 1e-6, "{}", again.miss.to_mm());
}

/// Least squares: no small move of a node brings the curve nearer.
#[test]
fn a_fitted_curve_is_the_nearest_one() {
    let mut lengths = even(20);
    lengths[4] += 5.0;
    lengths[13] -= 4.0;
    let pins = band_of(&lengths, &Geometry::default()).pins();
    let fitted = PinCurve::through(&pins, 5).unwrap().curve;
    let squares = |curve: &PinCurve| {
        let off = pins.iter().map(|(at, along)| curve.along_at(*at).to_mm() - along.to_mm());
        off.map(|off| off * off).sum::<f64>()
    };
    for place in 0..5 {
        for by in [-0.1, 0.1] {
            let mut nodes = fitted.nodes();
            nodes[place].1 = mm(nodes[place].1.to_mm() + by);
            assert!(squares(&PinCurve::new(&nodes).unwrap()) > squares(&fitted), "node {place}");
        }
    }
}

/// Where a string meets the drawn curve, by walking along the curve in small steps.
#[test]
fn the_closest_curve_is_at_least_as_near_as_nodes_spread_evenly() {
    // Long strings in the bass, and a bend at the tenth.
    let along = |at: f64| 900.0 - 12.0 * at + if at < 10.0 { 3.0 * (10.0 - at) } else { 0.0 };
    let pins: Vec<_> = (0..36).map(f64::from).map(|at| (mm(14.5 * at), mm(along(at)))).collect();
    let closest = PinCurve::closest(&pins, 7).unwrap();
    assert!((2..=7).contains(&closest.curve.nodes().len()));
    for count in 2..=7 {
        let even = PinCurve::through(&pins, count).unwrap();
        assert!(closest.miss.to_mm() <= even.miss.to_mm() + 0.05, "{count}");
    }
    assert!(closest.miss.to_mm() < 0.8 * PinCurve::through(&pins, 7).unwrap().miss.to_mm());
    let two = PinCurve::closest(&pins[..2], 7).unwrap();
    assert_eq!((two.curve.nodes(), two.miss), (pins[..2].to_vec(), mm(0.0)));
    assert_eq!(PinCurve::closest(&pins[..1], 7), Err(CurveError::Count { got: 1 }));
}

#[test]
fn strings_meet_the_drawn_curve_where_they_cross_it() {
    let nodes = [(0.0, 900.0), (120.0, 760.0), (260.0, 700.0), (330.0, 640.0)];
    let curve = PinCurve::new(&nodes.map(|(across, along)| (mm(across), mm(along)))).unwrap();
    let geometry = Geometry { gaps: Gaps::Uniform(mm(14.0)), ..Geometry::default() };
    let lengths = curve.lengths(24, &geometry);
    let points: Vec<Node> = curve
        .path()
        .segments()
        .flat_map(|piece| (0..=2000_u32).map(move |step| piece.eval(f64::from(step) / 2000.0)))
        .collect();
    for (place, length) in lengths.iter().enumerate() {
        let across = 0.014 * f64::from(23 - u32::try_from(place).unwrap());
        let pair = points.windows(2).find(|pair| pair[0].x <= across && across <= pair[1].x);
        let pair = pair.unwrap();
        let share = (across - pair[0].x) / (pair[1].x - pair[0].x).max(1e-12);
        let along = pair[0].y + share * (pair[1].y - pair[0].y);
        let board = across / 34.0_f64.to_radians().tan();
        assert_close(length.unwrap().to_m(), along - board, 1e-6, across);
    }
}

#[test]
fn a_curve_under_the_board_leaves_no_length() {
    let level = PinCurve::new(&[(mm(0.0), mm(200.0)), (mm(100.0), mm(200.0))]).unwrap();
    let geometry = Geometry {
        board_angle_rad: 45.0_f64.to_radians(),
        gaps: Gaps::Uniform(mm(50.0)),
        ..Geometry::default()
    };
    let lengths = level.lengths(6, &geometry);
    assert_eq!(lengths[0], Err(Unknown::OffCurve));
    assert_close(lengths[5].unwrap().to_mm(), 200.0, 1e-12, "the lowest");
    for (nodes, text) in [
        (vec![(0.0, 1.0)], "a harmonic curve must have from 2 to 40 nodes, got 1"),
        (vec![(0.0, 1.0), (0.0, 2.0)], "node 2 must lie at least 0.1 mm further"),
        (vec![(0.0, 1.0), (9.0, 2.0), (3.0, 2.0)], "node 3 must lie"),
        (vec![(0.0, f64::NAN), (9.0, 2.0)], "node 1 of the harmonic curve must be a number"),
    ] {
        let nodes: Vec<_> = nodes.into_iter().map(|(a, b)| (mm(a), mm(b))).collect();
        let error = PinCurve::new(&nodes).unwrap_err().to_string();
        assert!(error.starts_with(text), "{error}");
    }
    assert!(PinCurve::through(&[], 5).is_err());
    assert!(PinCurve::through(&[(mm(0.0), mm(1.0))], 5).is_err());
}

/// Pins on a circle of 400 mm: the curvature is 2.5 to the metre, but near the ends, where the spline bends not at
/// all.
#[test]
fn pins_on_a_circle_have_its_curvature() {
    let lengths: Vec<f64> = (0..31)
        .map(|number| (160_000.0 - (14.5 * f64::from(number - 15)).powi(2)).sqrt())
        .collect();
    let geometry = Geometry { board_angle_rad: std::f64::consts::FRAC_PI_2, ..Geometry::default() };
    let smoothness = band_of(&lengths, &geometry).smoothness;
    for place in 6..25 {
        let curvature = smoothness.curvature_per_m[place].unwrap();
        assert!((curvature - 2.5).abs() < 0.01, "{curvature} at {place}");
    }
    assert!(smoothness.curvature_per_m[0].unwrap().abs() < 1e-9);
}

#[test]
fn a_string_that_stands_out_is_found_with_the_way_back() {
    let smooth = band_of(&even(30), &Geometry::default()).smoothness;
    assert_eq!(smooth.kinks, []);
    assert_eq!(smooth.second_difference[0], None);
    assert!((smooth.second_difference[5].unwrap() + 0.001).abs() < 1e-12);
    for (place, by) in [(12, 9.0), (3, -4.0), (25, 30.0)] {
        let mut lengths: Vec<f64> = even(30).iter().map(|length| length.round()).collect();
        lengths[place] += by;
        let kinks = band_of(&lengths, &Geometry::default()).smoothness.kinks;
        assert_eq!(kinks.iter().map(|kink| kink.index).collect::<Vec<_>>(), [place]);
        assert!((kinks[0].move_by.to_mm() + by).abs() < 1.0, "{}", kinks[0].move_by.to_mm());
        assert!(kinks[0].z_score * by < 0.0);
    }
}

#[test]
fn what_the_strings_do_adds_up() {
    let harp = harp(&even(25));
    let analysis = analyse(&harp);
    let geometry = Geometry { lean_rad: 0.1, ..Geometry::default() };
    let band = lay_out(&harp, &analysis, &geometry);
    let loads = loads(&band, &harp, &analysis, &geometry);
    let total = analysis.total_tension.to_n();
    assert_close(loads.lift.to_n().hypot(loads.along.to_n()), total, 1e-12, "parts of the pull");
    assert_close(loads.all.size().to_n(), total, 1e-12, "parallel strings");
    assert_eq!((loads.pulls.len(), loads.left_out), (25, 0));
    let inner = loads.board[12].unwrap();
    let tension = analysis.strings[12].tension.unwrap();
    let worked = board_load(tension, geometry.board_angle_rad, mm(14.5), Spacing::Square).unwrap();
    let per_length = inner.per_length.unwrap();
    assert_close(per_length.lift_n_per_m, worked.lift_n_per_m, 1e-9, "lift for each length");
    // The end strings bear on half a gap to either side too.
    assert!(loads.board[0].unwrap().per_length.is_some());
    assert_eq!(loads.rooms.len(), 24);
    let room = loads.rooms[3].unwrap();
    assert_close(room.at_rest.to_mm(), 13.5, 1e-9, "14.5 mm less two halves of 1 mm");
    // Short strings are plucked by a share of their length.
    let aside = |index: usize| {
        let length = analysis.strings[index].length.unwrap().to_mm();
        4.0_f64.min(0.02 * length)
    };
    assert_close(room.plucked.to_mm(), 13.5 - aside(3) - aside(4), 1e-9, "less both plucks");
    // The frame takes it.
    let held = crate::engine::structure::frame::reactions(band.supports().unwrap(), &loads.pulls);
    assert!(held.unwrap().pillar.to_n() > 0.0);
}

#[test]
fn levers_and_discs_touch_at_their_distance_from_the_bridge_pin() {
    let harp = harp(&even(10));
    let mut analysis = analyse(&harp);
    let place = |distance| ContactPlace {
        semitones: 1,
        natural: None,
        distance: mm(distance),
        nominal: mm(distance),
        nominal_error_cents: 0.0,
        cents_per_mm: 1.0,
    };
    analysis.strings[4].disc_sharp = Ok(place(21.0));
    analysis.strings[4].disc_natural = Ok(place(11.0));
    let band = lay_out(&harp, &analysis, &Geometry::default());
    let string = band.strings[4].as_ref().unwrap();
    let contacts: Vec<Contact> = string.contacts.iter().map(|(contact, _)| *contact).collect();
    assert_eq!(contacts, [Contact::DiscNatural, Contact::DiscSharp]);
    for ((_, at), distance) in string.contacts.iter().zip([11.0, 21.0]) {
        assert_close(gap_mm(*at, string.bridge), distance, 1e-9, "from the bridge pin");
        let whole = gap_mm(*at, string.bridge) + gap_mm(*at, string.hole.start);
        assert_close(whole, string.length.to_mm(), 1e-9, "on the string");
    }
}

#[test]
fn strings_of_unknown_length_are_left_out_and_few_make_no_neck() {
    let mut harp = harp(&even(12));
    harp.strings[3].length = Err(Unknown::Length);
    harp.strings[11].length = Err(Unknown::Length);
    let band = lay_out(&harp, &analyse(&harp), &Geometry::default());
    assert_eq!(band.strings[3], Err(Unknown::Length));
    assert_eq!(band.smoothness.curvature_per_m[3], None);
    assert_eq!(band.smoothness.second_difference[4], None);
    assert!(band.neck.is_some());
    assert_eq!(band.pins().len(), 10);
    for known in 0..3 {
        let band = band_of(&even(known), &Geometry::default());
        assert!(band.neck.is_none() && band.supports().is_none());
        assert!(gap_mm(band.shoulder, band.board.1) < 1e-12);
    }
}

#[test]
fn no_number_is_too_odd() {
    let odd = [f64::NAN, f64::INFINITY, f64::NEG_INFINITY, 0.0, -50.0, 1e-300, 1e300, 1e9];
    type Set = fn(&mut Geometry, f64);
    let sets: [Set; 14] = [
        |g, x| g.board_angle_rad = x,
        |g, x| g.lean_rad = x,
        |g, x| g.gaps = Gaps::Uniform(mm(x)),
        |g, x| g.gaps = Gaps::Zones(vec![(1, mm(x)), (1, mm(1.0)), (0, mm(x))]),
        |g, x| g.gaps = Gaps::Each(vec![mm(x)]),
        |g, x| g.start = mm(x),
        |g, x| g.pin_sideways = mm(x),
        |g, x| g.strings_from_neck = mm(x),
        |g, x| g.below_pins = mm(x),
        |g, x| g.above_pins = mm(x),
        |g, x| g.pillar_gap = mm(x),
        |g, x| g.pillar_width = mm(x),
        |g, x| g.board_below = mm(x),
        |g, x| g.board_above = mm(x),
    ];
    for set in sets {
        for value in odd {
            let mut geometry = Geometry::default();
            set(&mut geometry, value);
            for lengths in [vec![], vec![f64::NAN], even(7), vec![1e5, 1e-1, 1e6, 1e-1, 5.0]] {
                let harp = harp(&lengths);
                let analysis = analyse(&harp);
                let band = lay_out(&harp, &analysis, &geometry);
                loads(&band, &harp, &analysis, &geometry);
                let pins = band.pins();
                if let Ok(fitted) = PinCurve::through(&pins, 4) {
                    fitted.curve.lengths(lengths.len(), &geometry);
                }
            }
        }
    }
}
