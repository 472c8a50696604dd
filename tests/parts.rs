//! The parts of harps: their faces meet, nothing lies in anything else, the holes are where the strings are, and the harp
//! stands. `parts/scripts/solids.py` has measured the samples with a general library.

#[path = "parts/bent.rs"]
mod bent;
#[path = "parts/building.rs"]
mod building;
#[path = "parts/grips.rs"]
mod grips;
#[path = "parts/held.rs"]
mod held;
#[path = "parts/joined.rs"]
mod joined;
#[path = "parts/list.rs"]
mod list;
#[path = "parts/made.rs"]
mod made;
#[path = "parts/nested.rs"]
mod nested;
#[path = "parts/sizes.rs"]
mod sizes;
#[path = "parts/solids.rs"]
mod solids;
#[path = "parts/space.rs"]
mod space;
#[path = "parts/templates.rs"]
mod templates;
#[path = "parts/views.rs"]
mod views;

use stringloft::design::document::{BarSpec, Design, GapsSpec, JointSpec, SoundboxSpec};
use stringloft::design::parts::{Parts, parts};
use stringloft::design::presets::{SAMPLES, filled_soundbox};
use stringloft::engine::bearing::Part as Joint;
use stringloft::engine::parts::findings::{Finding, LEAST_TIP_RAD};
use stringloft::engine::parts::fits::{ROOM_M, clashes, fits};
use stringloft::engine::parts::{HoleKind, Kind, PartsError, balance, weight};

use made::samples;

/// Faces meet and nothing clashes; gives how many faces do.
fn assert_fits(key: &str, made: &Parts) -> usize {
    let (found, missing) = fits(&made.whole);
    assert_eq!(missing, [], "{key}");
    for fit in &found {
        assert!(fit.gap_m.abs() < ROOM_M, "{key}: {fit:?}");
    }
    assert_eq!(clashes(&made.whole), [], "{key}");
    found.len()
}

#[test]
fn faces_of_the_samples_meet_within_a_tenth_of_a_millimetre_and_nothing_clashes() {
    let faces: Vec<usize> = samples().map(|(key, made)| assert_fits(key, &made)).collect();
    assert_eq!(faces, [66, 75, 84, 108]);
}

/// Changes a design.
type Change = fn(&mut Design);
/// Whether a finding is of a kind.
type Is = fn(&Finding) -> bool;

/// What samples do not have: bars, no liners, an open back, other leans and angles, thin and thick walls.
fn others() -> Vec<(&'static str, Design)> {
    let changes: [(&str, Change); 8] = [
        ("bars", |design| {
            let bars = &mut design.geometry.bars;
            bars.cross = BarSpec { count: 5, width_mm: 8.0, height_mm: 9.0, ..BarSpec::default() };
            bars.along = BarSpec {
                count: 2,
                width_mm: 7.0,
                height_mm: 8.0,
                at_percent: 48.0,
                to_percent: 70.0,
            };
        }),
        ("no liners", |design| design.geometry.soundbox.liner_width_mm = 0.0),
        ("open back", |design| design.geometry.soundbox.slotted = true),
        ("no braces", |design| design.geometry.soundbox.brace_gap_mm = 0.0),
        ("no rib", |design| {
            design.geometry.board.rib_width_mm = 0.0;
            design.geometry.board.strip_height_mm = 0.0;
        }),
        ("leaning", |design| design.geometry.lean_deg = 8.0),
        ("steeper", |design| design.geometry.board_angle_deg = 28.0),
        ("flatter", |design| design.geometry.board_angle_deg = 38.0),
    ];
    let changed = |(name, change): (&'static str, Change)| {
        SAMPLES.iter().map(move |sample| {
            let mut design = sample.design();
            change(&mut design);
            (name, design)
        })
    };
    changes.into_iter().flat_map(changed).collect()
}

#[test]
fn harps_of_other_makes_fit_as_well() {
    for (key, design) in others() {
        let made = parts(&design).unwrap_or_else(|why| panic!("{key} of {}: {why}", design.title));
        assert_fits(&format!("{key} of {}", design.title), &made);
        let of = |kind| made.whole.of(kind).count();
        match key {
            "bars" => {
                assert_eq!(of(Kind::LongBar), 4, "two pairs");
                assert!(of(Kind::CrossBar) >= 18, "{} pieces of bars", of(Kind::CrossBar));
            }
            "no liners" => assert_eq!(of(Kind::FrontLiner) + of(Kind::BackLiner), 0),
            "open back" => {
                let holes = made.whole.of(Kind::Back).map(|back| back.openings.len());
                assert_eq!(holes.sum::<usize>(), 1);
            }
            "no braces" => assert_eq!(of(Kind::SideBrace) + of(Kind::BackBrace), 0),
            "no rib" => assert_eq!(of(Kind::Rib) + of(Kind::Strip), 0),
            _ => assert!(of(Kind::Neck) == 1 && of(Kind::Side) == 2),
        }
    }
}

#[test]
fn what_cannot_be_made_is_said() {
    let mut design = SAMPLES[2].design();
    design.geometry.board_angle_deg = 80.0;
    assert_eq!(parts(&design).err(), Some(PartsError::TooFlat));
    design.geometry.board_angle_deg = 34.0;
    design.geometry.soundbox.back_mm = 0.0;
    assert_eq!(parts(&design).err(), Some(PartsError::NoBox));
    // With usual sizes where it has none it can be made; what was given stays.
    let longest_mm = 1_275.0;
    let given = design.geometry.soundbox.clone();
    let filled = filled_soundbox(&design.geometry, longest_mm);
    assert!(filled.back_mm > 0.0 && filled.side_mm == given.side_mm && filled.holes == given.holes);
    design.geometry.soundbox = SoundboxSpec::default();
    let usual = filled_soundbox(&design.geometry, longest_mm);
    for soundbox in [filled, usual] {
        design.geometry.soundbox = soundbox;
        assert_eq!(parts(&design).err(), None);
    }
    design.geometry.soundbox = given;
    design.geometry.soundbox.back_mm = 4.0;
    design.geometry.board.treble_width_mm = 40.0;
    assert!(matches!(parts(&design).err(), Some(PartsError::Crossed(_))));
    design.geometry.board.treble_width_mm = 110.0;
    design.strings.iter_mut().for_each(|string| string.length = String::new());
    assert_eq!(parts(&design).err(), Some(PartsError::NoNeck));
}

/// The parts are drawn from the strings; here the strings are found again in the parts.
#[test]
fn every_pin_and_every_string_hole_is_where_its_string_is() {
    for (key, made) in samples() {
        let near = |one: f64, other: f64| (one - other).abs() < 1e-9;
        let part = |kind| made.whole.of(kind).next().expect("a part");
        let (neck, board) = (part(Kind::Neck), part(Kind::Board));
        for placed in made.band.strings.iter().flatten() {
            let hole = |kind: HoleKind| {
                let mut own = neck.holes.iter().filter(|hole| hole.kind == kind);
                own.find(|hole| hole.string == placed.number).expect("a hole")
            };
            for (kind, at) in
                [(HoleKind::TuningPin, placed.tuning), (HoleKind::BridgePin, placed.bridge)]
            {
                let hole = hole(kind);
                assert!(near(hole.at[0], at.x.to_m()) && near(hole.at[1], at.y.to_m()), "{key}");
                assert!(hole.deep.to_m() <= neck.thick_m() + 1e-12, "{key}: {hole:?}");
            }
            let mut own = board.holes.iter().filter(|hole| hole.string == placed.number);
            let hole = own.next().expect("a hole in the board");
            assert!(own.next().is_none(), "{key}");
            // On the line from the hole of the drawing to the bridge pin, and in the middle.
            let from = (placed.bridge.x.to_m() - hole.at[0], placed.bridge.y.to_m() - hole.at[1]);
            let way = (
                placed.bridge.x.to_m() - placed.hole.board.x.to_m(),
                placed.bridge.y.to_m() - placed.hole.board.y.to_m(),
            );
            assert!((from.0 * way.1 - from.1 * way.0).abs() < 1e-9 * way.0.hypot(way.1), "{key}");
            assert!(near(hole.at[2], 0.0), "{key}");
            assert!(board.face.own(hole.at)[2].abs() < 1e-9, "{key}: on the face");
        }
    }
}

/// A whole concert harp of 47 strings weighs about 36 kg (encyclopedia article on the pedal harp), of which metal and
/// strings are some; a 36-string harp of wood alone is lighter than that.
#[test]
fn the_samples_stand_and_weigh_what_harps_weigh() {
    let kg = samples().map(|(key, made)| {
        let weight = weight(&made.whole);
        assert_eq!(weight.left_out, 0, "{key}");
        let stands = balance(&made.whole, &weight, [0.0; 3]);
        for tip_rad in stands.tips_rad {
            assert!(tip_rad > LEAST_TIP_RAD, "{key}: {:?}", stands.tips_rad);
        }
        weight.mass.to_kg()
    });
    let kg: Vec<f64> = kg.collect();
    assert!(kg[3] > 25.0 && kg[3] < 36.0, "a pedal harp: {kg:?}");
    assert!(kg[0] < 8.0 && kg[1] < 8.0 && kg[2] > 10.0 && kg[2] < 18.0, "{kg:?}");
}

#[test]
fn a_lighter_wood_and_a_longer_foot_change_weight_and_balance_as_they_must() {
    let design = SAMPLES[2].design();
    let plain = parts(&design).expect("parts");
    let mut other = design.clone();
    other.geometry.neck.wood = "yellow-poplar".to_owned();
    let lighter = parts(&other).expect("parts");
    let (one, two) = (weight(&plain.whole), weight(&lighter.whole));
    assert!(two.mass < one.mass && two.middle[1] < one.middle[1], "{one:?} {two:?}");
    let stands = |made: &Parts, weight| balance(&made.whole, weight, [0.0; 3]).tips_rad;
    assert!(stands(&lighter, &two)[2] > stands(&plain, &one)[2]);
    let mut unknown = design;
    unknown.geometry.pillar.wood = "willow-of-nowhere".to_owned();
    // With the pillar go the base, both feet and both blocks.
    assert_eq!(weight(&parts(&unknown).expect("parts").whole).left_out, 6);
}

#[test]
fn findings_say_what_is_wrong_and_only_then() {
    let found = |change: fn(&mut Design)| {
        let mut design = SAMPLES[2].design();
        change(&mut design);
        parts(&design).expect("parts").findings
    };
    let plain = found(|_| ());
    let has = |found: &[Finding], wanted: fn(&Finding) -> bool| found.iter().any(wanted);
    let pairs: [(Change, Is); 19] = [
        (
            |design| design.geometry.strings_from_neck_mm = 25.0,
            |finding| matches!(finding, Finding::StringsAtNeck { .. }),
        ),
        (
            |design| design.geometry.drills.bridge_pin_mm = 26.0,
            |finding| matches!(finding, Finding::StringAtPin { .. }),
        ),
        (
            |design| design.geometry.neck.above_pins_mm = 12.0,
            |finding| matches!(finding, Finding::PinAtEdge { .. }),
        ),
        (
            |design| design.geometry.soundbox.hole_length_mm = 190.0,
            |finding| matches!(finding, Finding::HoleOnBrace { .. }),
        ),
        (
            |design| design.geometry.soundbox.hole_width_mm = 30.0,
            |finding| matches!(finding, Finding::HandTooWide { .. }),
        ),
        (
            |design| design.geometry.soundbox.holes = 1,
            |finding| matches!(finding, Finding::OutOfReach { .. }),
        ),
        (
            |design| design.geometry.joints.head.tenon_depth_mm = 400.0,
            |finding| matches!(finding, Finding::LeftOut(_)),
        ),
        (
            |design| design.geometry.spacing.gaps = GapsSpec::UniformMm(11.5),
            |finding| matches!(finding, Finding::LeversClose { gap, .. } if gap.to_mm() < 1.0),
        ),
        (
            |design| design.geometry.soundbox.hole_width_mm = 150.0,
            |finding| matches!(finding, Finding::HoleNarrowed { .. }),
        ),
        (
            |design| design.geometry.strings_from_neck_mm = 60.0,
            |finding| matches!(finding, Finding::NeckBeside { .. }),
        ),
        (
            |design| design.geometry.board.rib_width_mm = 90.0,
            |finding| matches!(finding, Finding::RibNarrowed { .. }),
        ),
        (
            |design| {
                design.geometry.bars.along = BarSpec {
                    count: 1,
                    width_mm: 7.0,
                    height_mm: 8.0,
                    at_percent: 6.0,
                    to_percent: 6.0,
                };
            },
            |finding| matches!(finding, Finding::BarAtRib { pair: 1 }),
        ),
        (
            |design| {
                design.geometry.board.bass_width_mm = 140.0;
                design.geometry.parts = "base_beyond=0".to_owned();
            },
            |finding| matches!(finding, Finding::Tips { .. }),
        ),
        (
            |design| {
                let tenon =
                    JointSpec { tenon_mm: 60.0, tenon_depth_mm: 45.0, ..Default::default() };
                design.geometry.joints.shoulder = tenon;
            },
            |finding| matches!(finding, Finding::NeckInBox { kind: Kind::Side, .. }),
        ),
        (
            |design| design.geometry.parts = "foot_block=70".to_owned(),
            |finding| matches!(finding, Finding::InBlock { kind: Kind::FootBlock, last: 36, .. }),
        ),
        (
            |design| design.geometry.parts = "knee_block=140".to_owned(),
            |finding| matches!(finding, Finding::InBlock { kind: Kind::KneeBlock, first: 1, .. }),
        ),
        (
            |design| design.geometry.board.treble_thickness_mm = 1.6,
            |finding| matches!(finding, Finding::BoardThin { string: 1, .. }),
        ),
        (
            |design| {
                let face = &mut design.geometry.joints.head;
                (face.face_width_mm, face.face_height_mm) = (60.0, 70.0);
            },
            |finding| {
                matches!(finding, Finding::FaceTooLarge { at: Joint::Head, across: true, .. })
            },
        ),
        (
            |design| {
                let face = &mut design.geometry.joints.foot;
                (face.face_width_mm, face.face_height_mm) = (60.0, 70.0);
            },
            |finding| {
                matches!(finding, Finding::FaceTooLarge { at: Joint::Foot, across: true, .. })
            },
        ),
    ];
    for (at, (change, is)) in pairs.into_iter().enumerate() {
        assert!(!has(&plain, is), "{at}: {plain:?}");
        assert!(has(&found(change), is), "{at}");
    }
}

/// The samples are drawn so that all their parts fit: nothing is left out, nothing stands over, a hand goes in.
#[test]
fn there_is_nothing_to_say_of_the_parts_of_the_samples() {
    for (key, made) in samples() {
        assert_eq!(made.findings, [], "{key}");
        assert_eq!(made.whole.left_out, [], "{key}");
    }
}

/// Whatever way the neck goes there, it stands square on its pillar.
#[test]
fn the_neck_stands_square_on_the_pillar() {
    for (key, made) in samples() {
        let pillar = made.whole.of(Kind::Pillar).next().expect("a pillar");
        let neck = made.whole.of(Kind::Neck).next().expect("a neck");
        let axis = pillar.face.u;
        let along = |at: [f64; 3]| axis[0] * at[0] + axis[1] * at[1];
        let corners = pillar.cells[0].corners().map(along);
        let seat = corners.fold(f64::NEG_INFINITY, f64::max);
        let on_seat = |at: &&[f64; 3]| (along(**at) - seat).abs() < 1e-9;
        let pillar_has = pillar.cells[0].near.iter().filter(on_seat).count();
        let neck_has = neck.cells[0].near.iter().filter(on_seat).count();
        assert_eq!((pillar_has, neck_has), (2, 2), "{key}");
        assert!(made.whole.heel_m >= 0.0 && made.whole.heel_m < 0.08, "{key}");
    }
}

/// Numbers drawn at random, the same each time, into every size of the frame: there are parts, all of them numbers, or it is
/// said why there are none.
#[test]
fn no_size_makes_it_stumble() {
    let mut drawn = 7_u64;
    let mut draw = || {
        drawn =
            drawn.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        (drawn >> 33) as f64 / f64::from(1_u32 << 31)
    };
    let (mut made_up, mut refused) = (0, 0);
    for round in 0..120 {
        let mut design = SAMPLES[round % 2].design();
        let shape = &mut design.geometry;
        let wild = |share: f64, usual: f64| {
            let times = [0.0, 0.2, 0.6, 1.0, 1.5, 3.0, 12.0];
            let at = (1..times.len()).filter(|at| *at as f64 <= 7.0 * share).count();
            usual * times[at]
        };
        shape.board_angle_deg = 15.0 + 60.0 * draw();
        shape.lean_deg = 40.0 * (draw() - 0.5);
        for size in [
            &mut shape.neck.thickness_mm,
            &mut shape.pillar.width_mm,
            &mut shape.pillar.depth_mm,
            &mut shape.pillar.gap_mm,
            &mut shape.board.treble_width_mm,
            &mut shape.board.bass_thickness_mm,
            &mut shape.board.rib_width_mm,
            &mut shape.soundbox.treble_depth_mm,
            &mut shape.soundbox.side_mm,
            &mut shape.soundbox.liner_width_mm,
            &mut shape.soundbox.brace_gap_mm,
            &mut shape.soundbox.hole_length_mm,
            &mut shape.joints.head.tenon_depth_mm,
            &mut shape.joints.foot.tenon_mm,
        ] {
            if draw() < 0.3 {
                *size = wild(draw(), *size);
            }
        }
        match stringloft::design::parts::csv(&design) {
            Ok(csv) => {
                assert!(!csv.contains("NaN") && !csv.contains("inf"), "{round}: {csv}");
                made_up += 1;
            }
            Err(why) => {
                assert!(why.len() > 10);
                refused += 1;
            }
        }
    }
    assert!(made_up > 20 && refused > 5, "{made_up} made, {refused} refused");
}
