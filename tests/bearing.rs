//! What the frames of the samples bear.

use stringloft::design::bearing_words::{verdict, verdicts};
use stringloft::design::document::{Design, NeckLayerSpec, SectionSpec};
use stringloft::design::edit::{Column, Edit};
use stringloft::design::presets::SAMPLES;
use stringloft::design::resolve::{Resolved, resolve};
use stringloft::engine::analysis::{Analysis, analyse};
use stringloft::engine::bearing::{
    Bearing, BearingError, FrameBearing, Kept, Order, Part, bear, borne, borne_again, stages,
};
use stringloft::engine::geometry::{Band, Loads, lay_out, loads};
use stringloft::engine::structure::frame::{FrameError, Point, reactions, resultant};
use stringloft::engine::structure::verdict::Aspect;

struct Harp {
    key: &'static str,
    resolved: Resolved,
    analysis: Analysis,
    band: Band,
    loads: Loads,
}

impl Harp {
    fn of(key: &'static str, design: &Design) -> Self {
        let resolved = resolve(design);
        assert!(resolved.errors.is_empty(), "{key}: {:?}", resolved.errors);
        let analysis = analyse(&resolved.harp);
        let band = lay_out(&resolved.harp, &analysis, &resolved.geometry);
        let loads = loads(&band, &resolved.harp, &analysis, &resolved.geometry);
        Self { key, resolved, analysis, band, loads }
    }

    fn bear(&self) -> Bearing {
        let Self { resolved, analysis, band, loads, .. } = self;
        bear(band, loads, analysis, &resolved.geometry, &resolved.build())
    }
}

fn samples() -> impl Iterator<Item = Harp> {
    SAMPLES.iter().map(|sample| Harp::of(sample.key, &sample.design()))
}

const TIGHT: f64 = 1e-9;

/// One design after the other, as they are edited: pins that are pulled, another board, other liners, and back.
#[test]
fn what_is_kept_of_the_design_before_changes_no_figure() {
    let mut kept = Kept::default();
    for sample in SAMPLES {
        let first = sample.design();
        let row = first.strings.len() / 2;
        let length = |design: &Design, mm: f64| {
            let text = format!("{mm}");
            Edit::Cell { row, column: Column::Length, text }.apply(design)
        };
        let now = analyse(&resolve(&first).harp).strings[row].length.expect("a length").to_mm();
        let pulled = length(&first, now + 6.0);
        let mut thicker = length(&pulled, now + 9.0);
        thicker.geometry.board.treble_thickness_mm += 0.7;
        let mut held = thicker.clone();
        if held.geometry.soundbox.liner_width_mm > 0.0 {
            held.geometry.soundbox.liner_width_mm += 3.0;
        }
        for design in [&first, &pulled, &thicker, &held, &thicker, &first] {
            let Harp { key, resolved, analysis, band, .. } = Harp::of(sample.key, design);
            let (harp, shape, build) = (&resolved.harp, &resolved.geometry, &resolved.build());
            let fresh = borne(&band, harp, &analysis, shape, build);
            assert!(fresh.bearing.board.iter().any(Result::is_ok), "{key}");
            assert!(borne_again(&mut kept, &band, harp, &analysis, shape, build) == fresh, "{key}");
        }
    }
}

/// Forces and moments of all strings, the pillar and the shoulder come to nothing; and at each cut what the part towards
/// the shoulder bears is what the part towards the pillar bears.
#[test]
fn everything_on_the_necks_of_the_samples_balances() {
    for harp in samples() {
        let bearing = harp.bear();
        let frame = bearing.frame.as_ref().expect("a sample has a frame");
        let held = frame.reactions;
        let all = [&harp.loads.pulls[..], &[held.pillar_pull, held.shoulder_pull]].concat();
        let rest = resultant(&all);
        let size = bearing.pull.to_n();
        assert!(rest.x.to_n().abs() < TIGHT * size, "{}", harp.key);
        assert!(rest.y.to_n().abs() < TIGHT * size, "{}", harp.key);
        assert!(rest.moment.to_n_m().abs() < TIGHT * size, "{}", harp.key);
        assert!((frame.all.size().to_n() - harp.loads.all.size().to_n()).abs() < TIGHT * size);
        for pair in frame.neck.cuts.windows(2) {
            let (one, next) = (&pair[0].station, &pair[1].station);
            let way = next.s_m - one.s_m;
            // Between two cuts without a string the moment falls by the shear times the way; at a string or a corner of
            // the middle line it does not jump by more than the pull times its arm.
            let arm_m = 0.05;
            let jump = (next.moment_n_m - one.moment_n_m + way * one.shear_n).abs();
            let bound = if way > 0.0 { TIGHT * size } else { arm_m * size };
            assert!(jump <= bound, "{} at {}: {jump}", harp.key, one.s_m);
        }
        let (first, last) =
            (&frame.neck.cuts[0].station, &frame.neck.cuts[frame.neck.cuts.len() - 1].station);
        let shoulder = held.shoulder_pull.x.to_n().hypot(held.shoulder_pull.y.to_n());
        assert!(
            (first.axial_n.hypot(first.shear_n) - shoulder).abs() < TIGHT * size,
            "{}",
            harp.key
        );
        assert!(
            (last.axial_n.hypot(last.shear_n) - held.pillar.to_n()).abs() < TIGHT * size,
            "{}",
            harp.key
        );
        for free in [first.moment_n_m, last.moment_n_m] {
            assert!(free.abs() < TIGHT * size, "{}: {free}", harp.key);
        }
    }
}

/// From the shoulder's side: the forces before a cut, turned over, are those beyond it.
#[test]
fn both_sides_of_a_cut_bear_the_same() {
    for harp in samples() {
        let bearing = harp.bear();
        let frame = bearing.frame.as_ref().expect("a sample has a frame");
        let shoulder = frame.reactions.shoulder_pull;
        // Just beyond the shoulder nothing but the shoulder lies before the cut; it grows string by string.
        for cut in frame.neck.cuts.iter().step_by(7) {
            let at = cut.station.at;
            let beyond = &frame.neck.cuts;
            let axis: Vec<Point> = beyond.iter().map(|cut| cut.station.at).collect();
            let foot = |place: Point| foot_m(&axis, place);
            let mut force = (shoulder.x.to_n(), shoulder.y.to_n());
            let mut moment = cross(since(shoulder.at, at), force);
            let mut unsure = false;
            for pull in &harp.loads.pulls {
                let hangs = foot(pull.at);
                unsure |= (hangs - cut.station.s_m).abs() < 1e-6;
                if hangs < cut.station.s_m {
                    let (x, y) = (pull.x.to_n(), pull.y.to_n());
                    force = (force.0 + x, force.1 + y);
                    moment += cross(since(pull.at, at), (x, y));
                }
            }
            if unsure {
                continue;
            }
            let size = bearing.pull.to_n();
            let ours = cut.station.axial_n.hypot(cut.station.shear_n);
            assert!((force.0.hypot(force.1) - ours).abs() < TIGHT * size, "{}", harp.key);
            assert!((moment + cut.station.moment_n_m).abs() < TIGHT * size, "{}", harp.key);
        }
    }
}

fn since(to: Point, from: Point) -> (f64, f64) {
    (to.x.to_m() - from.x.to_m(), to.y.to_m() - from.y.to_m())
}

fn cross(a: (f64, f64), b: (f64, f64)) -> f64 {
    a.0 * b.1 - a.1 * b.0
}

/// How far along a line a place lies beside it.
fn foot_m(axis: &[Point], place: Point) -> f64 {
    let (mut best, mut foot, mut start) = (f64::INFINITY, 0.0, 0.0);
    for pair in axis.windows(2) {
        let way = since(pair[1], pair[0]);
        let length = way.0.hypot(way.1);
        if length == 0.0 {
            continue;
        }
        let to = since(place, pair[0]);
        let share = ((to.0 * way.0 + to.1 * way.1) / (length * length)).clamp(0.0, 1.0);
        let off = (to.0 - share * way.0).hypot(to.1 - share * way.1);
        if off < best {
            (best, foot) = (off, start + share * length);
        }
        start += length;
    }
    foot
}

/// Loads are sums: what each string does alone adds up to what all do.
#[test]
fn all_strings_do_what_each_does_added_up() {
    for harp in samples() {
        let whole = harp.bear();
        let whole = whole.frame.as_ref().expect("a sample has a frame");
        let supports = harp.band.supports().expect("a sample has a neck");
        let pins: f64 = (harp.loads.pulls.iter())
            .map(|pull| reactions(supports, &[*pull]).expect("a frame").pillar.to_n())
            .sum();
        assert!((pins - whole.reactions.pillar.to_n()).abs() < TIGHT * pins, "{}", harp.key);
        let push = whole.pillar.push.to_n();
        // Half of the strings and the other half, each in its own order, make the stage with all.
        let last = |order| {
            let Harp { resolved, analysis, band, loads, .. } = &harp;
            *stages(band, loads, analysis, &resolved.geometry, &resolved.build(), order)
                .last()
                .expect("stages")
        };
        for order in Order::ALL {
            let stage = last(order);
            assert_eq!(stage.up, harp.resolved.harp.strings.len(), "{}", harp.key);
            let near = |one: f64, other: f64| (one - other).abs() <= TIGHT * other.abs();
            assert!(near(stage.pull.to_n(), harp.bear().pull.to_n()), "{}", harp.key);
            assert!(near(stage.lift.to_n(), harp.loads.lift.to_n()), "{}", harp.key);
            assert!(near(stage.pillar.to_n(), push), "{}", harp.key);
            let moment = whole.neck.greatest(|cut| cut.moment_n_m).abs();
            assert!(near(stage.moment.to_n_m(), moment), "{}", harp.key);
            let torque = whole.neck.greatest(|cut| cut.torque_n_m).abs();
            assert!(near(stage.torque.to_n_m(), torque), "{}", harp.key);
            let (used, most) =
                (stage.used_ratio.expect("limits"), whole.most_used().expect("limits").1);
            assert!(near(used.0, most.0) && near(used.1, most.1), "{}", harp.key);
        }
    }
}

#[test]
fn no_order_of_stringing_uses_the_frame_more_than_all_strings() {
    for harp in samples() {
        let Harp { resolved, analysis, band, loads, .. } = &harp;
        for order in Order::ALL {
            let all = stages(band, loads, analysis, &resolved.geometry, &resolved.build(), order);
            assert!(all.windows(2).all(|pair| pair[0].pull <= pair[1].pull), "{}", harp.key);
            let used: Vec<f64> =
                all.iter().map(|stage| stage.used_ratio.expect("limits").1).collect();
            let most = used.iter().copied().fold(0.0, f64::max);
            assert!(most <= used[used.len() - 1] * 1.0001, "{}: {used:?}", harp.key);
        }
    }
}

#[test]
fn more_wood_is_never_used_up_farther() {
    for sample in SAMPLES {
        let used = |thicker_mm: f64| {
            let mut design = sample.design();
            design.geometry.neck.thickness_mm += thicker_mm;
            design.geometry.pillar.width_mm += thicker_mm;
            design.geometry.pillar.depth_mm += thicker_mm;
            design.geometry.board.bass_thickness_mm += thicker_mm;
            design.geometry.board.treble_thickness_mm += thicker_mm;
            let harp = Harp::of(sample.key, &design);
            let bearing = harp.bear();
            let frame = bearing.frame.as_ref().expect("a sample has a frame");
            // Joints that bending would open may be judged with less wood and not with more.
            let parts = [Part::Neck, Part::Pillar].map(|part| frame.used(part).expect("limits"));
            let board = bearing.board_worst().expect("a board").1.used().expect("a limit").1;
            let twist = frame.neck.twist_rad.expect("a modulus");
            let mut all: Vec<f64> =
                parts.into_iter().flat_map(|(least, most)| [least, most]).collect();
            all.extend([board, twist.0.abs(), twist.1.abs()]);
            all
        };
        let steps = [0.0, 1.0, 3.0, 8.0].map(used);
        for pair in steps.windows(2) {
            for (thin, thick) in pair[0].iter().zip(&pair[1]) {
                // Where the pillar moves with its width, what it bears moves by a little.
                assert!(*thick <= thin * 1.005, "{}: {pair:?}", sample.key);
            }
        }
    }
}

/// Frames of the samples are sound, whatever their joints and the edges of their boards do within what their sizes say.
#[test]
fn the_frames_of_the_samples_bear_their_strings() {
    for harp in samples() {
        let bearing = harp.bear();
        let frame = bearing.frame.as_ref().expect("a sample has a frame");
        for part in Part::ALL {
            let used = frame.used(part).expect("a limit");
            assert!(used.1 <= 1.0, "{} {part:?}: {used:?}", harp.key);
        }
        let (_, board) = bearing.board_worst().expect("a board");
        let used = board.used().expect("a limit");
        assert!(used.1 <= 1.0, "{} board: {used:?}", harp.key);
        assert_eq!(bearing.left_out, 0);
    }
}

#[test]
fn a_neck_with_its_own_sections_is_reckoned_with_them() {
    let mut design = SAMPLES[2].design();
    let drawn = Harp::of("floor-36", &design).bear();
    let section = |at_percent, depth_mm| SectionSpec { at_percent, thickness_mm: 60.0, depth_mm };
    design.geometry.neck.sections = vec![section(100.0, 120.0), section(0.0, 90.0)];
    let own = Harp::of("floor-36", &design).bear();
    let (drawn, own) = (drawn.frame.expect("a frame"), own.frame.expect("a frame"));
    assert_eq!(drawn.reactions, own.reactions);
    let (first, last) =
        (&own.neck.cuts[0].station, &own.neck.cuts[own.neck.cuts.len() - 1].station);
    assert!((first.section.depth().to_mm() - 90.0).abs() < 1e-9);
    assert!((last.section.depth().to_mm() - 120.0).abs() < 1e-9);
    assert!((last.section.breadth().to_mm() - 60.0).abs() < 1e-9);
    assert!(own.used(Part::Neck) < drawn.used(Part::Neck));
    design.geometry.neck.grain_percent = 10.0;
    let slanting = Harp::of("floor-36", &design).bear().frame.expect("a frame");
    let bending = |bearing: &FrameBearing| bearing.neck.cuts[20].verdict.uses[0].ratio;
    assert!(bending(&slanting) > bending(&own));
}

#[test]
fn a_harp_without_neck_or_pull_says_why() {
    let mut design = SAMPLES[0].design();
    design.strings.truncate(2);
    let bearing = Harp::of("two", &design).bear();
    assert_eq!(bearing.frame, Err(BearingError::NoNeck));
    assert!(bearing.board.iter().all(Result::is_ok), "the board is known all the same");
    let mut design = SAMPLES[0].design();
    design.strings.iter_mut().for_each(|string| string.note.clear());
    let harp = Harp::of("silent", &design);
    let bearing = harp.bear();
    assert_eq!(bearing.frame, Err(BearingError::Frame(FrameError::NoPulls)));
    assert_eq!((bearing.pull.to_n(), bearing.left_out), (0.0, 22));
    assert!(bearing.board.iter().all(Result::is_err));
    let Harp { resolved, analysis, band, loads, .. } = &harp;
    let (shape, build) = (&resolved.geometry, &resolved.build());
    let all = stages(band, loads, analysis, shape, build, Order::MiddleFirst);
    assert_eq!(all.len(), 23);
    assert!(all.iter().all(|stage| stage.pull.to_n() == 0.0));
    let empty = Harp::of("empty", &Default::default());
    assert_eq!(empty.bear().frame, Err(BearingError::NoNeck));
}

/// Told with the neck of a design: its text, and what is not judged.
fn neck_told(design: &Design) -> (String, String) {
    let harp = Harp::of("floor-36", design);
    let (bearing, build) = (harp.bear(), harp.resolved.build());
    let parts = verdicts(&bearing, &harp.band, &harp.analysis, &build, design.units);
    let neck = parts.iter().find(|part| part.name == "Neck").expect("a neck");
    (neck.why.clone(), verdict(&bearing).full)
}

#[test]
fn crossed_layers_and_the_hold_of_metal_are_judged_or_said_not_to_be() {
    let mut design = SAMPLES[2].design();
    let (plain, all) = neck_told(&design);
    assert!(!plain.contains("olling shear") && !plain.contains("of the metal"), "{plain}");
    assert!(plain.contains("at the rim of a hole"), "{plain}");
    assert!(!all.contains("string holes"), "{all}");
    let layer = |angle_deg| NeckLayerSpec { thickness_mm: 10.0, angle_deg, wood: String::new() };
    design.geometry.neck.layers = [0.0, 90.0, 0.0, 90.0, 0.0].map(layer).into();
    let (crossed, _) = neck_told(&design);
    assert!(crossed.contains("olling shear in the crossed layers"), "{crossed}");
    design.geometry.neck.layers = Vec::new();
    let plates = &mut design.geometry.neck.plates;
    (plates.thickness_mm, plates.height_mm) = (2.0, 40.0);
    let (glued, _) = neck_told(&design);
    assert!(glued.contains("hear in the glue of the metal beside the neck"), "{glued}");
    design.geometry.neck.plates.screw_mm = 4.0;
    let (screwed, all) = neck_told(&design);
    assert!(screwed.contains("ush on the screws of the metal beside the neck"), "{screwed}");
    assert!(all.contains("Not judged: push on the screws of the metal"), "{all}");
    design.geometry.neck.plates.screw_depth_mm = 25.0;
    let (_, all) = neck_told(&design);
    assert!(!all.contains("push on the screws"), "{all}");
}

/// Wider holes leave less of a string rib, no less than they take of its narrower part, and of a board that has none.
#[test]
fn holes_of_strings_take_from_rib_and_board() {
    let sample = SAMPLES[2].design();
    let used = |eyelet_mm: f64, of: Aspect, rib: bool| {
        let mut design = sample.clone();
        design.geometry.drills.eyelet_mm = eyelet_mm;
        if !rib {
            let board = &mut design.geometry.board;
            (board.rib_width_mm, board.strip_width_mm) = (0.0, 0.0);
        }
        let bearing = Harp::of("floor-36", &design).bear();
        let cut = bearing.board[12].clone().expect("a board");
        let used = cut.soft.used(of).expect("it is looked at");
        (used.stress.to_mpa(), cut.load.pitch.to_mm())
    };
    let grows = |of: Aspect, rib: bool| used(6.0, of, rib).0 / used(0.001, of, rib).0;
    let strip = sample.geometry.board.strip_width_mm;
    let rib = grows(Aspect::RibBent, true);
    assert!(rib > 1.01 && rib < 1.0 / (1.0 - 6.0 / strip), "{rib}");
    let bare = grows(Aspect::BoardBent, false);
    let apart = used(6.0, Aspect::BoardBent, false).1;
    let by_hand = (1.0 - 0.001 / apart) / (1.0 - 6.0 / apart);
    assert!((bare - by_hand).abs() < 1e-9, "{bare} {by_hand}");
    assert!((grows(Aspect::BoardBent, true) - 1.0).abs() < 1e-12);
}
