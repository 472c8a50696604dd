//! What parts must leave to each other: room for knots beside the blocks, a capital under a wide glued face, and planks that
//! are no thicker than they come.

use stringloft::design::document::Design;
use stringloft::design::parts::sizes::PartSize;
use stringloft::design::parts::words::told;
use stringloft::design::parts::{Parts, parts};
use stringloft::design::presets::SAMPLES;
use stringloft::design::resolve::resolve;
use stringloft::engine::analysis::analyse;
use stringloft::engine::bearing::borne;
use stringloft::engine::geometry::lay_out;
use stringloft::engine::parts::cutting::Blank;
use stringloft::engine::parts::{Cell, Hole, HoleKind, Kind, Knot, Part, Plane, Spot};
use stringloft::engine::structure::verdict::Aspect;

use super::made::samples;

fn inside(cell: &Cell, at: Spot) -> bool {
    cell.faces().iter().all(|face| Plane::of(face).off(at) < 0.0)
}

/// How far a string goes through a kind of block from the inside of the board to its knot, looked at in steps of 0.1 mm; and
/// whether the knot lies in it.
fn through_m(made: &Parts, kind: Kind, hole: &Hole, knot: Spot) -> (f64, bool) {
    let blocks: Vec<&Cell> = made.whole.of(kind).flat_map(Part::body).collect();
    let within = |at: Spot| blocks.iter().any(|cell| inside(cell, at));
    let from = [0, 1, 2].map(|axis| hole.at[axis] + hole.deep.to_m() * hole.way[axis]);
    let long = [0, 1, 2].map(|axis| (knot[axis] - from[axis]).powi(2)).iter().sum::<f64>().sqrt();
    let step = 1e-4;
    let at = |far: f64| [0, 1, 2].map(|axis| from[axis] + far * hole.way[axis]);
    let places = (0_u32..).map(|one| (f64::from(one) + 0.5) * step);
    let met = places.take_while(|far| *far < long).filter(|far| within(at(*far))).count();
    (met as f64 * step, within(at(long - 1e-6)) && within(at(long + 1e-6)))
}

#[test]
fn no_string_of_a_sample_ends_in_a_block() {
    let mut drilled = 0;
    for (key, made) in samples() {
        let board = made.whole.of(Kind::Board).next().expect("a board");
        assert_eq!(made.whole.knots.len(), board.holes.len(), "{key}");
        for hole in board.holes.iter().filter(|hole| hole.kind == HoleKind::String) {
            let (at, deep_m) = match made.whole.knots[hole.string - 1] {
                Knot::UnderRib(at) => (at, 0.0),
                Knot::UnderBlock(at, deep_m) => (at, deep_m),
                Knot::Blocked(kind) => panic!("{key} {}: {kind:?}", hole.string),
            };
            assert_eq!(through_m(&made, Kind::FootBlock, hole, at), (0.0, false), "{key}");
            let (knee_m, knotted) = through_m(&made, Kind::KneeBlock, hole, at);
            assert!(!knotted && (knee_m - deep_m).abs() < 3e-4, "{key}: {knee_m} {deep_m}");
            drilled += usize::from(deep_m > 0.0);
        }
    }
    assert!(drilled > 0, "one of them goes through its knee block");
}

#[test]
fn a_longer_foot_block_takes_one_string_after_another() {
    let design = SAMPLES[2].design();
    let blocked = |block_mm: f64| {
        let longer = PartSize::FootBlock.edit(&design, Some(block_mm)).apply(&design);
        let made = parts(&longer).expect("parts");
        let is = |knot: &&Knot| **knot == Knot::Blocked(Kind::FootBlock);
        made.whole.knots.iter().filter(is).count()
    };
    let counts = [25.0, 50.0, 70.0, 90.0].map(blocked);
    assert_eq!(counts[0], 0);
    assert!(counts.windows(2).all(|pair| pair[0] < pair[1]), "{counts:?}");
}

/// The neck stands on a face as high as the one by which its joint is judged.
#[test]
fn a_capital_is_as_wide_as_the_glued_face_that_is_judged() {
    let design = SAMPLES[3].design();
    let made = parts(&design).expect("parts");
    let (face, pillar) =
        (design.geometry.joints.head.face_height_mm, design.geometry.pillar.clone());
    assert!(face > pillar.width_mm, "{face} on {}", pillar.width_mm);
    let cheeks: Vec<&Part> = made.whole.of(Kind::Capital).collect();
    assert_eq!(cheeks.len(), 2);
    let axis = made.whole.of(Kind::Pillar).next().expect("a pillar").face.u;
    let across = |at: Spot| axis[1] * at[0] - axis[0] * at[1];
    let all = || cheeks.iter().flat_map(|cheek| cheek.cells[0].corners()).map(across);
    let wide = all().fold(f64::NEG_INFINITY, f64::max) - all().fold(f64::INFINITY, f64::min);
    assert!((1e3 * wide - face).abs() < 1e-6, "{wide}");
    // By hand: a cheek of 14 mm, 60 mm long where it meets the pillar and half of that outside.
    let thick = 0.5 * (face - pillar.width_mm);
    let by_hand = 1e-9 * thick * 0.5 * (60.0 + 30.0) * pillar.depth_mm;
    for cheek in cheeks {
        assert!((cheek.volume().0 / by_hand - 1.0).abs() < 1e-9, "{}", cheek.volume().0);
    }
    let mut plain = design.clone();
    plain.geometry.joints.head.face_height_mm = pillar.width_mm;
    assert_eq!(parts(&plain).expect("parts").whole.of(Kind::Capital).count(), 0);
}

#[test]
fn planks_are_no_thicker_than_they_come_and_few_of_them_differ() {
    for sample in &SAMPLES {
        let made = parts(&sample.design()).expect("parts");
        for blank in &made.blanks {
            let whole = blank.layer.to_mm() * blank.layers as f64;
            assert!(whole >= blank.finished[2].to_mm(), "{blank:?}");
            assert!(blank.is_sheet || blank.layer.to_mm() <= 60.0, "{blank:?}");
        }
        for nest in &made.nests {
            for lies in nest.boards.iter().flatten() {
                let own = made.blanks[lies.blank].layer.to_mm();
                let over = nest.thickness.to_mm() - own;
                assert!((-1e-6..4.0 + 1e-6).contains(&over), "{}: {over} mm off", sample.key);
            }
        }
        let mut own: Vec<String> = made.blanks.iter().map(key).collect();
        own.sort();
        own.dedup();
        assert!(made.nests.len() < own.len(), "{}: {} of {own:?}", sample.key, made.nests.len());
    }
    let thin = |design: &Design| PartSize::BoardThickness.edit(design, Some(30.0)).apply(design);
    let layers = |design: &Design| -> usize {
        parts(design).expect("parts").blanks.iter().map(|blank| blank.layers).sum()
    };
    let design = SAMPLES[3].design();
    assert!(layers(&thin(&design)) > layers(&design));
}

fn key(blank: &Blank) -> String {
    format!("{} {} {:.3}", blank.wood, blank.is_sheet, blank.layer.to_mm())
}

/// From the corners of the neck's own outline: the angle of its edge to the grain, at its steepest between the strings.
#[test]
fn a_neck_of_straight_planks_says_that_its_grain_runs_out() {
    let said = |design: &Design| -> Option<f64> {
        let all = told(&parts(design).expect("parts"));
        let line = all.iter().find(|line| line.starts_with("Not judged: grain"))?;
        let number = line.split("by up to ").nth(1)?.split('°').next()?;
        number.parse().ok()
    };
    for sample in &SAMPLES {
        let mut design = sample.design();
        let made = parts(&design).expect("parts");
        let neck = made.whole.of(Kind::Neck).next().expect("a neck");
        let pins: Vec<Spot> = made
            .band
            .strings
            .iter()
            .flatten()
            .map(|placed| neck.face.own([placed.bridge.x.to_m(), placed.bridge.y.to_m(), 0.0]))
            .collect();
        let steepest = pins
            .windows(2)
            .map(|pair| ((pair[1][1] - pair[0][1]) / (pair[1][0] - pair[0][0])).atan().abs())
            .fold(0.0, f64::max)
            .to_degrees();
        let angle = said(&design).expect("an angle");
        assert!(angle > 0.7 * steepest && angle <= 90.0, "{}: {angle} {steepest}", sample.key);
        design.geometry.neck.wood = "birch-plywood".to_owned();
        assert_eq!(said(&design), None, "{}", sample.key);
    }
}

#[test]
fn a_tuning_pin_is_drilled_as_it_is_set_for_parts_and_loads() {
    for sample in &SAMPLES {
        let mut design = sample.design();
        for pin_mm in [design.allowances.pin_mm, 7.25] {
            design.allowances.pin_mm = pin_mm;
            let of = resolve(&design).build().neck.drilled.tuning.expect("a hole");
            assert!((of.0.to_mm() - pin_mm).abs() < 1e-9, "{}: {of:?}", sample.key);
            let made = parts(&design).expect("parts");
            let neck = made.whole.of(Kind::Neck).next().expect("a neck");
            let holes = neck.holes.iter().filter(|hole| hole.kind == HoleKind::TuningPin);
            for hole in holes {
                assert!((hole.diameter.to_mm() - pin_mm).abs() < 1e-9, "{}: {hole:?}", sample.key);
            }
        }
    }
}

/// The foot is judged on the face that the drawn pillar has on the base, across the grain of that.
#[test]
fn the_foot_presses_on_what_of_the_pillar_stands_on_the_base() {
    for sample in &SAMPLES {
        let design = sample.design();
        let made = parts(&design).expect("parts");
        let pillar = made.whole.of(Kind::Pillar).next().expect("a pillar");
        let corners: Vec<Spot> = pillar.cells[0].near.clone();
        let low = corners.iter().map(|at| at[1]).fold(f64::INFINITY, f64::min);
        let on_base: Vec<f64> =
            corners.iter().filter(|at| at[1] - low < 1e-6).map(|at| at[0]).collect();
        let wide = on_base.iter().copied().fold(f64::NEG_INFINITY, f64::max)
            - on_base.iter().copied().fold(f64::INFINITY, f64::min);
        let resolved = resolve(&design);
        let analysis = analyse(&resolved.harp);
        let band = lay_out(&resolved.harp, &analysis, &resolved.geometry);
        let (shape, build) = (&resolved.geometry, &resolved.build());
        let frame = borne(&band, &resolved.harp, &analysis, shape, build).bearing.frame;
        let frame = frame.expect("a frame");
        assert!(wide < 1e-3 * design.geometry.pillar.width_mm, "{}: cut back", sample.key);
        let ends = frame
            .counted()
            .filter_map(|frame| pressed(frame.pillar[1], wide, design.geometry.pillar.depth_mm));
        let by_hand = ends.fold(0.0, f64::max);
        let uses = frame.foot.judged.ends.iter().flat_map(|end| &end.uses);
        let across = uses.filter(|used| used.aspect == Aspect::PressedAcross);
        let most = across.map(|used| used.stress.to_pa()).fold(0.0, f64::max);
        // The base cuts a pillar that leans a little.
        assert!(
            by_hand > 0.0 && (most / by_hand - 1.0).abs() < 1e-4,
            "{}: {most} {by_hand}",
            sample.key
        );
    }
}

/// What a push off the middle of a face makes of it, by hand: it presses on the part of the face about whose middle it acts,
/// at least half of it either way (after G. G. Meyerhof, from memory); what moment is left opens one edge and presses the
/// other, half of the face apart.
fn pressed(cut: [f64; 6], wide_m: f64, deep_mm: f64) -> Option<f64> {
    let (push, deep_m) = (-cut[0], 1e-3 * deep_mm);
    let one_way = |moment: f64, size: f64| {
        let off = (moment.abs() / push).min(0.25 * size);
        let left = (moment.abs() - 0.25 * size * push).max(0.0);
        (size - 2.0 * off, left / (0.5 * size))
    };
    let (along, more) = one_way(cut[5], wide_m);
    let (across, more_aside) = one_way(cut[4], deep_m);
    (push > 0.0).then(|| (push + more + more_aside) / (along * across))
}
