//! How the samples give while they are strung.

use stringloft::design::presets::SAMPLES;
use stringloft::design::resolve::{Resolved, resolve};
use stringloft::engine::analysis::{Analysis, analyse};
use stringloft::engine::bearing::{Build, Case, Gives, Order, Stiff, bear, gives};
use stringloft::engine::geometry::{Band, Loads, lay_out, loads};
use stringloft::engine::giving::{Fall, falls};
use stringloft::engine::structure::joint::Joint;
use stringloft::engine::structure::section::Rectangle;
use stringloft::engine::structure::space::Stiffness;
use stringloft::engine::structure::wood::Allowable;
use stringloft::engine::units::{Length, Stress};

struct Harp {
    key: &'static str,
    resolved: Resolved,
    analysis: Analysis,
    band: Band,
    loads: Loads,
}

impl Harp {
    fn gives(&self, build: &Build) -> Gives {
        let Self { resolved, analysis, band, loads, .. } = self;
        gives(band, loads, analysis, &resolved.geometry, build).expect("a sample has a frame")
    }
}

fn samples() -> impl Iterator<Item = Harp> {
    SAMPLES.iter().map(|sample| {
        let resolved = resolve(&sample.design());
        let analysis = analyse(&resolved.harp);
        let band = lay_out(&resolved.harp, &analysis, &resolved.geometry);
        let loads = loads(&band, &resolved.harp, &analysis, &resolved.geometry);
        Harp { key: sample.key, resolved, analysis, band, loads }
    })
}

/// Maxwell and Betti: a newton on one string moves the ends of another as much as the other way round. And nothing that
/// gives pushes back against its own load.
#[test]
fn each_string_moves_the_other_as_much_as_it_is_moved() {
    for harp in samples() {
        let gives = harp.gives(&harp.resolved.build());
        assert_eq!(gives.places.len(), harp.analysis.strings.len(), "{}", harp.key);
        for end in &gives.ends() {
            for (row, ones) in end.iter().enumerate() {
                assert!(ones[row] > 0.0, "{}: string {row}", harp.key);
                for (column, one) in ones.iter().enumerate() {
                    let size = (end[row][row] * end[column][column]).sqrt();
                    assert!((one - end[column][row]).abs() < 1e-8 * size, "{}", harp.key);
                    assert!(one.abs() < size * (1.0 + 1e-9), "{}: {row}, {column}", harp.key);
                }
            }
        }
    }
}

/// Of a bar; its shear modulus is a sixteenth of the modulus where no figure is known, as in the frame.
fn stiffness(section: Rectangle, wood: &Allowable, torsion: Option<Stress>) -> Stiffness {
    let modulus = wood.modulus.expect("a sample's wood has a modulus");
    let shear = torsion.unwrap_or(Stress::from_pa(modulus.to_pa() / 16.0));
    Stiffness::of(section, modulus, shear)
}

/// What a bar stores twice over: forces along, across and in torque are the same all along, bending goes evenly from end
/// to end. Source: strain energy of a beam, as in any textbook of strength of materials.
fn twice_stored(ends: [[f64; 6]; 2], length_m: f64, stiff: &Stiffness) -> f64 {
    let [one, other] = ends;
    let even = |a: f64, b: f64, rigidity: f64| (a * a + a * b + b * b) / (3.0 * rigidity);
    let straight = one[0] * one[0] / stiff.axial
        + one[1] * one[1] / stiff.shear[0]
        + one[2] * one[2] / stiff.shear[1]
        + one[3] * one[3] / stiff.torsion;
    let bent = even(one[5], other[5], stiff.bending[0]) + even(one[4], other[4], stiff.bending[1]);
    length_m * (straight + bent)
}

/// What the parts of a frame store twice over whose soundbox does not give: neck, pillar, and joints where they are springs.
fn twice_stored_by(frame: &Stiff, springs: Option<&[[f64; 6]; 3]>, build: &Build, m: f64) -> f64 {
    let mut stored = 0.0;
    for pair in frame.neck.chunks_exact(2) {
        let middle =
            |of: fn(&Rectangle) -> f64| 0.5 * (of(&pair[0].section) + of(&pair[1].section));
        let sides = (middle(|s| s.breadth().to_m()), middle(|s| s.depth().to_m()));
        let section =
            Rectangle::new(Length::from_m(sides.0), Length::from_m(sides.1)).expect("a section");
        let stiff = stiffness(section, &build.neck.allowable, build.neck.torsion_modulus);
        let ends = [pair[0].forces(), pair[1].forces()];
        // From place to place: a bar is straight.
        let (from, to) = (pair[0].at, pair[1].at);
        let way = (to.x.to_m() - from.x.to_m()).hypot(to.y.to_m() - from.y.to_m());
        stored += twice_stored(ends, way, &stiff);
    }
    let section = Rectangle::new(build.pillar.depth, build.pillar.width).expect("a section");
    let bar = stiffness(section, &build.pillar.allowable, build.pillar.torsion_modulus);
    stored += twice_stored(frame.pillar, m, &bar);
    let cuts = [frame.neck[0].forces(), frame.pillar[0], frame.pillar[1]];
    for (cut, joint) in cuts.iter().zip(springs.into_iter().flatten()) {
        stored += cut.iter().zip(joint).map(|(force, stiff)| force * force / stiff).sum::<f64>();
    }
    stored
}

/// The stiffness of the joints by the sizes of a design, each of the section that it has in the frame, halved as the
/// frame halves it.
fn halved(build: &Build, neck: (Rectangle, Rectangle)) -> [[f64; 6]; 3] {
    let pillar = &build.pillar;
    let through = Length::from_m(pillar.depth.to_m().min(neck.1.breadth().to_m()));
    let sections = [
        (neck.0, false),
        (Rectangle::new(through, pillar.width).expect("a section"), true),
        (Rectangle::new(pillar.depth, pillar.width).expect("a section"), false),
    ];
    let woods = [&build.neck_wood, &build.neck_wood, &build.pillar_wood];
    std::array::from_fn(|at| {
        let (parts, (section, across_the_grain)) = (&build.joints[at], sections[at]);
        let joint = Joint {
            section: parts.face.unwrap_or(section),
            is_glued: parts.face.is_some(),
            across_the_grain,
            tenon: parts.tenon,
            fasteners: parts.fasteners,
            plates: parts.plates,
            wood: woods[at].clone(),
        };
        joint.stiffness().expect("a sample's joints have sizes").map(|stiff| 0.5 * stiff)
    })
}

/// The frame solved again by [`bear`] with all strings at pitch stores as much as the matrix says: `Tᵀ C T` is twice the
/// energy in neck, pillar and joints, where board and soundbox do not give (Clapeyron).
#[test]
fn the_matrix_stores_what_the_frame_stores() {
    for harp in samples() {
        let mut build = harp.resolved.build();
        let endless = Stress::from_gpa(1e8);
        build.board.modulus = Some(endless);
        build.board.along = None;
        build.board.rib.modulus = Stress::from_pa(0.0);
        let soundbox = build.soundbox.as_mut().expect("a sample has a soundbox");
        for wall in [&mut soundbox.board, &mut soundbox.side.1, &mut soundbox.back.1] {
            (wall.along, wall.across, wall.shear) = (endless, endless, endless);
        }
        let gives = harp.gives(&build);
        let cases: Vec<Case> = gives.frames.iter().map(|(case, _)| *case).collect();
        assert_eq!(cases, [Case::NoJointGives, Case::JointsGive], "{}", harp.key);
        let tension = |place: &usize| {
            harp.analysis.strings[*place].tension.expect("a sample's string has its tension").to_n()
        };
        let tensions: Vec<f64> = gives.places.iter().map(tension).collect();
        let work = |end: &Vec<Vec<f64>>| -> f64 {
            let row = |(row, t): (&Vec<f64>, &f64)| -> f64 {
                t * row.iter().zip(&tensions).map(|(c, t)| c * t).sum::<f64>()
            };
            end.iter().zip(&tensions).map(row).sum()
        };
        let (shape, loads) = (&harp.resolved.geometry, &harp.loads);
        let frame = bear(&harp.band, loads, &harp.analysis, shape, &build).frame.expect("a frame");
        let ends = frame.neck.cuts.first().zip(frame.neck.cuts.last()).expect("cuts");
        let springs = halved(&build, (ends.0.station.section, ends.1.station.section));
        let sprung = frame.sprung.as_ref().expect("a sample's joints have sizes");
        let length_m = frame.pillar.length.to_m();
        let both = [
            (twice_stored_by(&frame.stiff[1], None, &build, length_m), &gives.frames[0].1),
            (twice_stored_by(sprung, Some(&springs), &build, length_m), &gives.frames[1].1),
        ];
        for (stored, matrix) in both {
            let work = work(matrix);
            assert!((work / stored - 1.0).abs() < 1e-5, "{}: {work} J for {stored} J", harp.key);
        }
    }
}

/// Joints and soundbox without sizes: a soundbox that does not give and a usual one, and a pillar that only pushes. Where
/// sizes are given, a harp gives more than with neither, and its joints add to that.
#[test]
fn what_is_known_of_joints_and_soundbox_counts() {
    for harp in samples() {
        let known = harp.gives(&harp.resolved.build());
        let mut build = harp.resolved.build();
        build.joints = Default::default();
        build.soundbox = None;
        let unknown = harp.gives(&build);
        let cases: Vec<Case> = unknown.frames.iter().map(|(case, _)| *case).collect();
        assert_eq!(cases, [Case::NothingGives, Case::NoJointGives, Case::PillarPushes]);
        assert!(known.by_joints() && known.by_soundbox(), "{}", harp.key);
        assert!(!unknown.by_joints() && !unknown.by_soundbox(), "{}", harp.key);
        let least = &unknown.frames[0].1;
        for (row, place) in known.places.iter().enumerate() {
            let [firm, sprung] = [0, 1].map(|case: usize| known.frames[case].1[row][row]);
            assert!(least[row][row] < firm, "{}: {place}", harp.key);
            assert!(firm < sprung, "{}: {place}: {firm} {sprung}", harp.key);
        }
    }
}

/// Strings fall while others come up after them, the last one not at all, and every round leaves less.
#[test]
fn the_samples_fall_and_settle() {
    for harp in samples() {
        let gives = harp.gives(&harp.resolved.build());
        for order in Order::ALL {
            let places = order.places(harp.analysis.strings.len());
            let all = falls(&gives, &harp.resolved.harp, &harp.analysis, &places);
            assert_eq!(all.len(), places.len(), "{}", harp.key);
            let last = all.last().expect("strings");
            assert!(last.first_cents.1.abs() < 1e-9, "{}: {:?}", harp.key, last.first_cents);
            let most = |of: fn(&Fall) -> f64| all.iter().map(of).fold(0.0, f64::max);
            let rounds = [
                most(|fall| fall.first_cents.1),
                most(|fall| fall.later_cents[0].1),
                most(|fall| fall.later_cents[1].1),
            ];
            assert!(rounds[0] > rounds[1] && rounds[1] > rounds[2], "{}: {rounds:?}", harp.key);
        }
    }
}
