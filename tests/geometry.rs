//! The samples laid out: every pin has its place, the neck keeps its clearances, and the frame stands.

use kurbo::{BezPath, ParamCurve, PathSeg, Point as Node};
use stringloft::design::document::{DrivesSpec, GapsSpec};
use stringloft::design::presets::SAMPLES;
use stringloft::design::resolve::resolve;
use stringloft::engine::analysis::{Unknown, analyse};
use stringloft::engine::geometry::{Band, Loads, PinCurve, lay_out, loads};
use stringloft::engine::structure::frame::{HeldAgainstTwist, Neck, Point};
use stringloft::engine::units::Length;

fn node(at: Point) -> Node {
    Node::new(at.x.to_m(), at.y.to_m())
}

fn nearest_mm(path: &BezPath, place: Node) -> f64 {
    let points = path
        .segments()
        .flat_map(|piece| (0..=100_u32).map(move |step| piece.eval(f64::from(step) / 100.0)));
    points.map(|point| 1e3 * (point - place).hypot()).fold(f64::INFINITY, f64::min)
}

fn samples() -> impl Iterator<Item = (&'static str, Band, Loads)> {
    SAMPLES.iter().map(|sample| {
        let resolved = resolve(&sample.design());
        assert!(resolved.errors.is_empty(), "{}: {:?}", sample.key, resolved.errors);
        let analysis = analyse(&resolved.harp);
        let band = lay_out(&resolved.harp, &analysis, &resolved.geometry);
        let loads = loads(&band, &resolved.harp, &analysis, &resolved.geometry);
        (sample.key, band, loads)
    })
}

#[test]
fn every_pin_of_the_samples_is_as_far_from_the_edges_as_asked() {
    for (key, band, _) in samples() {
        let neck = band.neck.as_ref().expect("a sample has a neck");
        for placed in band.strings.iter().map(|string| string.as_ref().expect("a place")) {
            let (bridge, tuning) = (node(placed.bridge), node(placed.tuning));
            let lowest = placed.contacts.last().map_or(bridge, |(_, at)| node(*at));
            let (below, above) = (nearest_mm(&neck.lower, lowest), nearest_mm(&neck.upper, tuning));
            let (asked_below, asked_above) =
                if key == "pedal-47" { (18.0, 38.0) } else { (15.0, 18.0) };
            assert!(below > asked_below - 0.05, "{key}: string {} {below}", placed.number);
            // The two lowest strings of a pedal harp have no discs, but lie on the same neck.
            let alone = key == "pedal-47" && placed.contacts.is_empty();
            assert!(alone || below < asked_below + 0.05, "{key}: string {} {below}", placed.number);
            assert!((above - asked_above).abs() < 0.05, "{key}: string {} {above}", placed.number);
        }
    }
}

/// The neck goes on past the highest pins without a bend that is a corner, and neither swells nor thins much until
/// it stands on its face.
#[test]
fn the_necks_of_the_samples_end_in_a_plain_shoulder() {
    for (key, band, _) in samples() {
        let neck = band.neck.as_ref().expect("a sample has a neck");
        for edge in [&neck.lower, &neck.upper] {
            // After the straight piece from the face come the four curves of its round.
            let way = |piece: &PathSeg, from: f64, to: f64| piece.eval(to) - piece.eval(from);
            let pieces: Vec<_> = edge.segments().collect();
            for pair in pieces.windows(2).take(6) {
                let (into, out_of) = (way(&pair[0], 1.0 - 1e-6, 1.0), way(&pair[1], 0.0, 1e-6));
                let turn = into.cross(out_of) / (into.hypot() * out_of.hypot());
                assert!(turn.abs() < 1e-4 && into.dot(out_of) > 0.0, "{key}: {turn}");
            }
        }
        let first = |edge: &BezPath| edge.segments().next().expect("a piece").to_cubic().p0;
        let face = first(&neck.upper) - first(&neck.lower);
        assert!(first(&neck.lower).distance(node(band.board.1)) < 1e-9, "{key}");
        // The samples' strings are upright and so pull square to a level face.
        assert!(face.y.abs() < 1e-9 && face.x > 0.0, "{key}: {face:?}");
        let before = neck.centre.len() - 1 - band.strings.len();
        let of_strings = neck.centre[before].depth.to_mm();
        for station in &neck.centre[..before] {
            let share = station.depth.to_mm() / of_strings;
            assert!((0.75..1.25).contains(&share), "{key}: {share}");
        }
    }
}

/// The sum of the lifts and of what runs along the board is the pull of the strings, which the frame holds.
#[test]
fn the_frames_of_the_samples_stand() {
    for (key, band, loads) in samples() {
        let neck = band.neck.as_ref().expect("a sample has a neck");
        let supports = band.supports().expect("a sample has a neck");
        let axis = neck.axis(Length::from_mm(40.0)).expect("sides above 0");
        for point in &axis {
            let depth_mm = point.section.depth().to_mm();
            assert!((40.0..270.0).contains(&depth_mm), "{key}: {depth_mm} mm deep");
        }
        let neck = Neck::new(axis, supports, HeldAgainstTwist::Shoulder).expect("a line");
        let held = neck.loads(&loads.pulls).expect("a frame");
        assert!(held.reactions.pillar.to_n() > 0.0, "{key}: the pillar is pushed");
        let pull = loads.lift.to_n().hypot(loads.along.to_n());
        assert!((loads.all.size().to_n() / pull - 1.0).abs() < 1e-9, "{key}");
        assert!(loads.rooms.iter().flatten().all(|room| room.plucked.to_mm() > 0.0), "{key}");
        assert_eq!(loads.left_out, 0, "{key}");
    }
}

/// Lengths of the samples follow common practice and are rounded to whole millimetres.
#[test]
fn no_string_of_the_samples_stands_out() {
    for (key, band, _) in samples() {
        assert_eq!(band.smoothness.kinks, [], "{key}");
    }
}

#[test]
fn a_sample_can_be_drawn_by_its_curve_and_keeps_its_lengths() {
    for sample in SAMPLES {
        let mut design = sample.design();
        let resolved = resolve(&design);
        let analysis = analyse(&resolved.harp);
        let band = lay_out(&resolved.harp, &analysis, &resolved.geometry);
        let fitted = PinCurve::through(&band.pins(), 9).expect("pins");
        let miss_mm = fitted.miss.to_mm();
        eprintln!("{} {miss_mm}", sample.key);
        assert!(miss_mm < 6.0, "{}: {miss_mm} mm", sample.key);
        let nodes = fitted.curve.nodes();
        design.geometry.nodes_mm =
            nodes.iter().map(|(across, along)| (across.to_mm(), along.to_mm())).collect();
        design.geometry.drives = DrivesSpec::NeckCurve;
        let drawn = resolve(&design);
        assert!(drawn.errors.is_empty(), "{:?}", drawn.errors);
        for (one, other) in resolved.harp.strings.iter().zip(&drawn.harp.strings) {
            let (one, other) = (one.length.expect("typed"), other.length.expect("drawn"));
            assert!((one.to_mm() - other.to_mm()).abs() <= miss_mm + 1e-6, "{}", sample.key);
        }
    }
}

#[test]
fn settings_of_the_shape_out_of_reach_have_a_sentence_and_give_way() {
    let usual = resolve(&SAMPLES[0].design()).geometry;
    let mut design = SAMPLES[0].design();
    let shape = &mut design.geometry;
    shape.board_angle_deg = 0.0;
    shape.neck.below_pins_mm = -1.0;
    shape.neck.wood = "moon cheese".to_owned();
    shape.board.wood = "birch-plywood".to_owned();
    shape.board.plies = 4;
    shape.pin_sideways_mm = 60.0;
    shape.spacing.gaps = GapsSpec::EachMm(Vec::new());
    shape.drives = DrivesSpec::NeckCurve;
    let resolved = resolve(&design);
    let errors = resolved.errors.join("\n");
    for part in [
        "angle between strings and soundboard must be from 5 to 85 degrees, got 0 degrees (taken as 34 degrees)",
        "neck below the bridge pins must be from 0 to 1000 mm, got -1 mm",
        "wood of the neck must be one that is known here, got \"moon cheese\"",
        "plywood of the soundboard cannot be used: birch plywood must have an odd number",
        "offset of the tuning pins must be at most the 35 mm",
        "spacing must have at least one gap",
        "a harmonic curve must have from 2 to 40 nodes, got 0",
    ] {
        assert!(errors.contains(part), "{part}\nnot in\n{errors}");
    }
    assert_eq!(resolved.errors.len(), 7, "{errors}");
    assert_eq!(resolved.geometry.below_pins, usual.below_pins);
    // The typed lengths hold until the curve can be used.
    assert!(resolved.harp.strings.iter().all(|string| string.length.is_ok()));
}

#[test]
fn a_curve_below_the_board_leaves_strings_without_length() {
    let mut design = SAMPLES[0].design();
    design.geometry.drives = DrivesSpec::NeckCurve;
    design.geometry.nodes_mm = vec![(0.0, 300.0), (300.0, 300.0)];
    let resolved = resolve(&design);
    assert_eq!(resolved.harp.strings[0].length, Err(Unknown::OffCurve));
    let analysis = analyse(&resolved.harp);
    assert_eq!(analysis.strings[0].lift, Err(Unknown::OffCurve));
    assert!(resolved.harp.strings[21].length.is_ok());
}
