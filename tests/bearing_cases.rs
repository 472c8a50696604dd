//! Which cases of joints count for the frames of the samples, and that all that is shown of them is of these.

use stringloft::charts::load_diagram::{LoadKind, overlay};
use stringloft::design::bearing_words::csv;
use stringloft::design::document::{Design, JointSpec, JointsSpec};
use stringloft::design::presets::SAMPLES;
use stringloft::design::resolve::resolve;
use stringloft::engine::analysis::analyse;
use stringloft::engine::bearing::{Bearing, Case, Part, bear};
use stringloft::engine::geometry::{Band, lay_out, loads};

const TIGHT: f64 = 1e-9;

fn borne(design: &Design) -> (Band, Bearing) {
    let resolved = resolve(design);
    let analysis = analyse(&resolved.harp);
    let band = lay_out(&resolved.harp, &analysis, &resolved.geometry);
    let loads = loads(&band, &resolved.harp, &analysis, &resolved.geometry);
    let bearing = bear(&band, &loads, &analysis, &resolved.geometry, &resolved.build());
    (band, bearing)
}

/// What is drawn and printed of the neck is what is judged: no cut of a case that counts lies above the verdict, the greatest
/// is the verdict, and a case that does not count is marked.
#[test]
fn the_verdict_of_the_neck_is_that_of_its_cuts() {
    for sample in SAMPLES {
        let (band, bearing) = borne(&sample.design());
        let frame = bearing.frame.as_ref().expect("a sample has a frame");
        assert_eq!(frame.neck.softest(), Case::JointsGive, "{}", sample.key);
        assert!(!frame.neck.counts(Case::PillarPushes), "{}", sample.key);
        let (_, most) = frame.used(Part::Neck).expect("a limit");
        let csv = csv::frame(&sample.design()).expect("a frame");
        let cuts = csv.split("\n\n").next().expect("a table").lines();
        let (mut printed, mut uncounted) = (0.0_f64, 0);
        for row in cuts.filter(|row| row.starts_with("neck,")) {
            let mut cells = row.rsplit(',');
            let (counts, share) = (cells.next(), cells.next().expect("a share"));
            match counts {
                Some("yes") => printed = printed.max(share.parse().expect("a number")),
                counts => {
                    assert_eq!(counts, Some("no"), "{row}");
                    uncounted += 1;
                }
            }
        }
        assert!((printed - 100.0 * most).abs() < 0.006, "{}: {printed} {most}", sample.key);
        assert_eq!(uncounted, frame.neck.cuts.len() + frame.neck.solid.len());
        let shown = overlay(LoadKind::Use, &band, &bearing, sample.design().units);
        let label: f64 = shown.labels[0].text.trim_end_matches(" %").parse().expect("a share");
        assert!(label <= (100.0 * most).round(), "{}: {label} {most}", sample.key);
    }
}

/// The frame in space and the statics of pins are worked out apart from each other: as tenons come to hold next to nothing,
/// the first comes to the second in the plane of the strings.
#[test]
fn joints_that_hold_next_to_nothing_come_to_pins() {
    for sample in SAMPLES {
        let off = |depth_mm: f64| {
            let mut design = sample.design();
            let tenon =
                JointSpec { tenon_mm: 10.0, tenon_depth_mm: depth_mm, ..JointSpec::default() };
            design.geometry.joints = JointsSpec { shoulder: tenon, head: tenon, foot: tenon };
            let frame = borne(&design).1.frame.expect("a sample has a frame");
            let sprung = frame.sprung.as_ref().expect("tenons have sizes");
            let pins = frame.neck.cuts.iter().map(|cut| cut.station.moment_n_m);
            let most = pins.clone().fold(0.0_f64, |most, next| most.max(next.abs()));
            let apart = sprung.neck.iter().zip(pins).map(|(one, pins)| one.moment_n_m - pins);
            apart.fold(0.0_f64, |most, next| most.max(next.abs())) / most
        };
        let (firm, loose) = (off(50.0), off(0.01));
        assert!(firm > 0.1 && loose < 0.02, "{}: {firm} {loose}", sample.key);
    }
}

/// Forces at the shoulder, of the pillar and of all strings come to nothing where the joints give, too.
#[test]
fn what_holds_a_frame_whose_joints_give_balances() {
    for sample in SAMPLES {
        let mut free = sample.design();
        free.geometry.joints = JointsSpec::default();
        for (design, gives) in [(sample.design(), true), (free, false)] {
            let frame = borne(&design).1.frame.expect("a sample has a frame");
            let (held, pins, all) = (frame.holds, frame.reactions, frame.all);
            assert_eq!(held != pins, gives, "{}", sample.key);
            let size = all.size().to_n();
            let x = held.pillar_pull.x.to_n() + held.shoulder_pull.x.to_n() + all.x.to_n();
            let y = held.pillar_pull.y.to_n() + held.shoulder_pull.y.to_n() + all.y.to_n();
            assert!(x.abs() + y.abs() < TIGHT * size, "{}: {x} {y}", sample.key);
            // What the pillar gives is its push along it and some shear: the push alone is a little less.
            let pull = held.pillar_pull.x.to_n().hypot(held.pillar_pull.y.to_n());
            let push = held.pillar.to_n();
            let pushed = push <= pull * (1.0 + TIGHT) && push > 0.95 * pull;
            assert!(pushed, "{}: {push} {pull}", sample.key);
        }
    }
}
