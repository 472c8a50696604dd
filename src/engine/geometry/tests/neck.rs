//! The edges and the middle line of the neck, by brute force.

use kurbo::{BezPath, ParamCurve, Point as Node};

use super::*;

fn node(at: Point) -> Node {
    Node::new(at.x.to_m(), at.y.to_m())
}

/// The least distance of a place from a path, in millimetres, by many points of it.
fn nearest_mm(path: &BezPath, place: Node) -> f64 {
    let points = path
        .segments()
        .flat_map(|piece| (0..=200_u32).map(move |step| piece.eval(f64::from(step) / 200.0)));
    points.map(|point| 1e3 * (point - place).hypot()).fold(f64::INFINITY, f64::min)
}

/// Each edge comes as near to its pins as asked and no nearer, found by brute force along the edge.
#[test]
fn the_edges_of_the_neck_keep_their_clearance() {
    for lean_rad in [0.0, 0.15] {
        let geometry = Geometry { lean_rad, ..Geometry::default() };
        let band = band_of(&even(33), &geometry);
        let neck = band.neck.as_ref().unwrap();
        for placed in band.strings.iter().flatten() {
            let (bridge, tuning) = (node(placed.bridge), node(placed.tuning));
            assert!(nearest_mm(&neck.pins, bridge) < 1e-6, "the curve goes through the pins");
            assert_close(nearest_mm(&neck.lower, bridge), 15.0, 1e-3, placed.number);
            assert_close(nearest_mm(&neck.upper, tuning), 18.0, 1e-3, placed.number);
            assert!(nearest_mm(&neck.lower, tuning) > 15.0);
            assert!(nearest_mm(&neck.upper, bridge) > 18.0);
        }
        // The middle line lies about in the middle, and the neck is as deep as the edges are away.
        for station in &neck.centre[1..neck.centre.len() - 1] {
            let half = 0.5 * station.depth.to_mm();
            let (below, above) = (
                nearest_mm(&neck.lower, node(station.at)),
                nearest_mm(&neck.upper, node(station.at)),
            );
            assert_close(below + above, 2.0 * half, 1e-3, "depth");
            assert!((0.85..1.15).contains(&(below / half)), "{below} of {half}");
        }
    }
}

/// A bend tighter than the clearance swallows part of the edge, which then keeps away all the same.
#[test]
fn an_edge_in_a_tight_bend_keeps_its_distance() {
    let mut lengths = vec![300.0; 15];
    lengths[7] = 330.0;
    let geometry = Geometry {
        board_angle_rad: std::f64::consts::FRAC_PI_2,
        below_pins: mm(25.0),
        ..Geometry::default()
    };
    let band = band_of(&lengths, &geometry);
    let neck = band.neck.as_ref().unwrap();
    for placed in band.strings.iter().flatten() {
        assert!(nearest_mm(&neck.lower, node(placed.bridge)) > 0.99 * 25.0, "{}", placed.number);
    }
}

/// With the board square to the strings, lengths that are the same from both ends make a neck that is.
#[test]
fn a_symmetric_band_has_a_symmetric_curve() {
    let lengths: Vec<f64> =
        (0..21).map(|number| 500.0 - 0.8 * f64::from(number - 10).powi(2)).collect();
    let geometry = Geometry {
        board_angle_rad: std::f64::consts::FRAC_PI_2,
        pin_sideways: mm(0.0),
        ..Geometry::default()
    };
    let band = band_of(&lengths, &geometry);
    let curvature = &band.smoothness.curvature_per_m;
    let neck = band.neck.as_ref().unwrap();
    let middle_mm = 10.0 * 14.5;
    let mirrored = |at: Point| Point::from_mm(2.0 * middle_mm - at.x.to_mm(), at.y.to_mm());
    for place in 0..=10 {
        let (one, other) = (curvature[place].unwrap(), curvature[20 - place].unwrap());
        assert!((one - other).abs() < 1e-9, "{one} and {other}");
        // Before the first pin stand the cuts of the shoulder.
        let first = neck.centre.len() - 22;
        let (one, other) = (neck.centre[first + place], neck.centre[first + 20 - place]);
        // The ends differ, as the neck goes on to pillar and shoulder.
        if place > 2 {
            assert!(gap_mm(mirrored(one.at), other.at) < 1e-6);
            assert_close(one.depth.to_mm(), other.depth.to_mm(), 1e-9, "depth");
        }
    }
    // Longest in the middle: hollow toward the board.
    assert!(curvature[10].unwrap() > 0.0);
}
