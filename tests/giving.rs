//! How the samples give while they are strung.

use stringloft::design::presets::SAMPLES;
use stringloft::design::resolve::{Resolved, resolve};
use stringloft::engine::analysis::{Analysis, analyse};
use stringloft::engine::bearing::{Build, Gives, Order, bear, gives};
use stringloft::engine::geometry::{Band, Loads, lay_out, loads};
use stringloft::engine::giving::{Fall, falls};
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

/// The frame solved again by [`bear`] with all strings at pitch stores as much as the matrix says: `Tᵀ C T` is twice the
/// energy in neck and pillar, where board and soundbox do not give (Clapeyron).
#[test]
fn the_matrix_stores_what_the_frame_stores() {
    for harp in samples() {
        let mut build = harp.resolved.build();
        let endless = Stress::from_gpa(1e9);
        build.board.modulus = Some(endless);
        build.board.along = None;
        build.board.rib.modulus = Stress::from_pa(0.0);
        let gives = harp.gives(&build);
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
        let stiff = &frame.stiff[0];
        let mut stored = 0.0;
        for pair in stiff.neck.chunks_exact(2) {
            let middle =
                |of: fn(&Rectangle) -> f64| 0.5 * (of(&pair[0].section) + of(&pair[1].section));
            let sides = (middle(|s| s.breadth().to_m()), middle(|s| s.depth().to_m()));
            let section = Rectangle::new(Length::from_m(sides.0), Length::from_m(sides.1))
                .expect("a section");
            let stiff = stiffness(section, &build.neck.allowable, build.neck.torsion_modulus);
            let ends = [pair[0].forces(), pair[1].forces()];
            // From place to place: a bar is straight.
            let (from, to) = (pair[0].at, pair[1].at);
            let way = (to.x.to_m() - from.x.to_m()).hypot(to.y.to_m() - from.y.to_m());
            stored += twice_stored(ends, way, &stiff);
        }
        let section = Rectangle::new(build.pillar.depth, build.pillar.width).expect("a section");
        let bar = stiffness(section, &build.pillar.allowable, build.pillar.torsion_modulus);
        stored += twice_stored(stiff.pillar, frame.pillar.length.to_m(), &bar);
        let work = work(&gives.ends()[0]);
        assert!((work / stored - 1.0).abs() < 1e-6, "{}: {work} J for {stored} J", harp.key);
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
