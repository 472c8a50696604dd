//! The frame of a harp against textbooks and against a frame solver: what holds the neck, and the forces in it.
//!
//! `scripts/frame_values.py` wrote `frame_values.json`, which says the versions that it used.

use std::sync::LazyLock;

use serde::Deserialize;
use stringloft::design::checks::CHECKS;
use stringloft::design::presets::SAMPLES;
use stringloft::design::resolve::resolve;
use stringloft::engine::analysis::analyse;
use stringloft::engine::bearing::{Drilled, bear};
use stringloft::engine::geometry::{lay_out, loads};
use stringloft::engine::structure::column::{SAWN, Strut, stability_ratio};
use stringloft::engine::structure::frame::{
    AxisPoint, HeldAgainstTwist, Neck, Point, Pull, Station, Supports, reactions, resultant,
};
use stringloft::engine::structure::section::{Rectangle, torsion_numbers};
use stringloft::engine::structure::wood::woods;
use stringloft::engine::units::{Force, Length, Stress};

use super::structure_sections::rectangle;
use super::{assert_near, assert_prints, assert_same};

#[derive(Deserialize)]
struct Values {
    versions: Versions,
    necks: Vec<Solved>,
    torsion: Vec<[f64; 2]>,
    stability: Vec<[f64; 3]>,
    secant: Vec<[f64; 7]>,
}

#[derive(Deserialize)]
struct Versions {
    pynite: String,
    scipy: String,
}

#[derive(Deserialize)]
struct Solved {
    name: String,
    axis: Vec<[f64; 2]>,
    foot: [f64; 2],
    top: [f64; 2],
    held: String,
    offset_mm: f64,
    strings: Vec<[f64; 4]>,
    pillar_n: f64,
    shoulder_n: [f64; 2],
    cuts: Vec<[f64; 7]>,
}

static VALUES: LazyLock<Values> = LazyLock::new(|| {
    serde_json::from_str(include_str!("frame_values.json")).expect("the script writes this form")
});

#[test]
fn the_register_names_the_versions_of_the_frame_values() {
    let Versions { pynite, scipy } = &VALUES.versions;
    let named = CHECKS.iter().filter(|check| check.source.english().contains("frame_values.py"));
    for check in named {
        let (pynite, scipy) = (format!("PyNite {pynite}"), format!("SciPy {scipy}"));
        assert!(
            check.source.english().contains(&pynite) || check.source.english().contains(&scipy),
            "{}",
            check.id
        );
    }
}

fn pull(x_mm: f64, y_mm: f64, x_n: f64, y_n: f64) -> Pull {
    Pull {
        at: Point::from_mm(x_mm, y_mm),
        x: Force::from_n(x_n),
        y: Force::from_n(y_n),
        offset: Length::from_m(0.0),
    }
}

fn straight(points: &[(f64, f64)], section: Rectangle) -> Vec<AxisPoint> {
    points.iter().map(|(x, y)| AxisPoint { at: Point::from_mm(*x, *y), section }).collect()
}

fn supports(shoulder: (f64, f64), top: (f64, f64), foot: (f64, f64)) -> Supports {
    let [shoulder, pillar_top, pillar_foot] =
        [shoulder, top, foot].map(|(x, y)| Point::from_mm(x, y));
    Supports { shoulder, pillar_top, pillar_foot }
}

impl Solved {
    fn neck(&self) -> Neck {
        let points: Vec<_> = self.axis.iter().map(|[x, y]| (*x, *y)).collect();
        let twist = match self.held.as_str() {
            "both" => HeldAgainstTwist::BothEnds,
            _ => HeldAgainstTwist::Shoulder,
        };
        let pair = |[x, y]: [f64; 2]| (x, y);
        let held = supports(points[0], pair(self.top), pair(self.foot));
        Neck::new(straight(&points, rectangle(40.0, 75.0)), held, twist).expect("the script's neck")
    }

    fn pulls(&self) -> Vec<Pull> {
        let string = |[x_mm, y_mm, x_n, y_n]: &[f64; 4]| Pull {
            offset: Length::from_mm(self.offset_mm),
            ..pull(*x_mm, *y_mm, *x_n, *y_n)
        };
        self.strings.iter().map(string).collect()
    }
}

/// The solver loses some digits, as it goes by the stiffness of its beams.
const SOLVED: f64 = 1e-8;
/// More of them where short beams stand beside long ones, as in the neck of the sample.
const SOLVED_SAMPLE: f64 = 1e-5;

fn solved_to(solved: &Solved) -> f64 {
    if solved.name == "sample" { SOLVED_SAMPLE } else { SOLVED }
}

/// Source: `PyNite`. 36 strings on stiff arms; the pillar a bar with free ends.
pub fn pillar_and_shoulder_bear_what_a_frame_solver_finds() {
    for solved in &VALUES.necks {
        let held = solved.neck().loads(&solved.pulls()).expect("the script's neck").reactions;
        assert_near(held.pillar.to_n(), solved.pillar_n, solved_to(solved), &solved.name);
        let [x, y] = solved.shoulder_n;
        assert_near(held.shoulder_pull.x.to_n() + y, x + y, solved_to(solved), &solved.name);
        assert_near(held.shoulder_pull.y.to_n(), y, solved_to(solved), &solved.name);
    }
}

/// Source: as above. Each difference is a share of the greatest of its kind on that neck.
pub fn the_neck_bears_what_a_frame_solver_finds() {
    for solved in &VALUES.necks {
        let loads = solved.neck().loads(&solved.pulls()).expect("the script's neck");
        assert_same(loads.stations.len(), solved.cuts.len(), &solved.name);
        let kinds: [fn(&Station) -> f64; 7] = [
            |cut| cut.at.x.to_mm(),
            |cut| cut.at.y.to_mm(),
            |cut| cut.axial_n,
            |cut| cut.shear_n,
            |cut| cut.moment_n_m,
            |cut| cut.torque_n_m,
            |cut| cut.sideways_n_m,
        ];
        for (kind, of) in kinds.iter().enumerate() {
            let greatest = solved.cuts.iter().map(|cut| cut[kind].abs()).fold(0.0, f64::max);
            // Where the solver finds nothing but its own rounding there is nothing to share.
            let scale = greatest.max(1.0);
            for (at, (ours, cut)) in loads.stations.iter().zip(&solved.cuts).enumerate() {
                let off = of(ours) - cut[kind];
                let what = format_args!("{}, figure {kind} of cut {at}", solved.name);
                assert_near(scale + off, scale, solved_to(solved), what);
            }
        }
    }
}

/// Source: as above, with the middle line and the pulls of the sample of 36 strings. The script moved one string by 0.4
/// mm and rounded places, so that what the program shows of the sample itself may be off by a thousandth. Stresses from
/// the solver's forces by the rules of beams, of a neck without holes.
pub fn the_sample_bears_what_a_frame_solver_finds() {
    let solved = VALUES.necks.iter().find(|neck| neck.name == "sample").expect("the script's");
    let sample = SAMPLES.iter().find(|sample| sample.key == "floor-36").expect("a sample");
    let resolved = resolve(&sample.design());
    let analysis = analyse(&resolved.harp);
    let band = lay_out(&resolved.harp, &analysis, &resolved.geometry);
    let loads = loads(&band, &resolved.harp, &analysis, &resolved.geometry);
    let mut build = resolved.build();
    build.neck.drilled = Drilled::default();
    let bearing = bear(&band, &loads, &analysis, &resolved.geometry, &build);
    let frame = bearing.frame.expect("a sample has a frame");
    const NEAR: f64 = 1e-3;
    assert_near(frame.reactions.pillar.to_n(), solved.pillar_n, NEAR, "pillar");
    let shoulder = frame.reactions.shoulder_pull;
    let size = shoulder.x.to_n().hypot(shoulder.y.to_n());
    assert_near(size, solved.shoulder_n[0].hypot(solved.shoulder_n[1]), NEAR, "shoulder");
    // Offsets of the script and of the sample.
    assert_near(solved.offset_mm, resolved.geometry.strings_from_neck.to_mm(), 1e-12, "offset");
    type Kind = (usize, fn(&Station) -> f64, &'static str);
    let kinds: [Kind; 5] = [
        (2, |cut| cut.axial_n, "along"),
        (3, |cut| cut.shear_n, "shear"),
        (4, |cut| cut.moment_n_m, "bending"),
        (5, |cut| cut.torque_n_m, "torque"),
        (6, |cut| cut.sideways_n_m, "sideways"),
    ];
    for (kind, of, what) in kinds {
        let greatest = solved.cuts.iter().map(|cut| cut[kind].abs()).fold(0.0, f64::max);
        let ours = frame.neck.cuts.iter().map(|cut| of(&cut.station).abs()).fold(0.0, f64::max);
        assert_near(ours, greatest, NEAR, what);
    }
    // The greatest shear stress of shear and twist, cut by cut, with the sections of the program.
    let (ours, cuts) = (&frame.neck.cuts, &solved.cuts);
    let theirs = ours.iter().filter_map(|cut| {
        let at = (cut.station.at.x.to_mm(), cut.station.at.y.to_mm());
        let off = |row: &&[f64; 7]| (row[0] - at.0).hypot(row[1] - at.1);
        let row = cuts.iter().min_by(|one, other| off(one).total_cmp(&off(other)))?;
        let (b, h) = (cut.station.section.breadth().to_m(), cut.station.section.depth().to_m());
        let c1 = cut.station.section.torsion_numbers().c1;
        let twist = row[5].abs() / (c1 * b.max(h) * b.min(h).powi(2));
        // Of the cuts before and after a string the nearer in place is either.
        Some((cut.verdict.uses[1].stress.to_pa(), 1.5 * row[3].abs() / (b * h) + twist))
    });
    let worst =
        theirs.fold((0.0, 0.0), |most: (f64, f64), next| (most.0.max(next.0), most.1.max(next.1)));
    assert_near(worst.0, worst.1, 0.03, "shear stress");
}

/// Source: `SciPy`, Poisson's equation by finite differences, extrapolated to fine steps.
pub fn bars_twist_as_by_finite_differences() {
    for [ratio, c2] in &VALUES.torsion {
        let ours = torsion_numbers(*ratio).expect("a ratio above 0").c2;
        assert_near(ours, *c2, 1e-6, format_args!("sides of 1 to {ratio}"));
    }
}

/// Source: `SciPy`, roots by bisection and interpolation.
pub fn struts_bear_what_root_finding_gives() {
    for [alpha, c, ratio] in &VALUES.stability {
        let ours = stability_ratio(*alpha, *c).expect("a slenderness above 0");
        assert_near(ours, *ratio, 1e-12, format_args!("{alpha} with {c}"));
    }
    for [breadth, depth, length, modulus, beside, limit, load] in &VALUES.secant {
        let section = rectangle(*breadth, *depth);
        let mm = Length::from_mm;
        let modulus = Stress::from_mpa(*modulus);
        let (area, inertia) = (section.area_m2(), section.inertia_m4());
        let strut = Strut::new(area, inertia, mm(0.5 * depth), mm(*length), modulus);
        let strut = strut.expect("the script's strut");
        let ours = strut.load_at(Stress::from_mpa(*limit), mm(*beside)).expect("a limit");
        assert_near(ours.to_n(), *load, 1e-11, format_args!("{length} mm"));
    }
}

/// Source: R. C. Hibbeler, *Engineering Mechanics: Statics*, an example of parallel forces; from memory. Four forces
/// on a slab are one of 1400 N at x = 3.00 m and y = 2.50 m. Seen from two sides, each is a plane of its own.
pub fn parallel_forces_are_one_at_their_centre() {
    let forces = [(600.0, 8.0, 0.0), (-100.0, 6.0, 5.0), (400.0, 0.0, 10.0), (500.0, 0.0, 0.0)];
    let seen = |place: &dyn Fn(&(f64, f64, f64)) -> f64| {
        let pulls = forces.map(|force| pull(1e3 * place(&force), 0.0, 0.0, -force.0));
        resultant(&pulls)
    };
    let (front, side) = (seen(&|force| force.1), seen(&|force| force.2));
    assert_prints(front.size().to_n(), 1400.0, 1.0, "size");
    let place = |seen: stringloft::engine::structure::frame::Resultant| {
        seen.crosses_level(Length::from_m(0.0)).expect("it does not run level").x.to_m()
    };
    assert_prints(place(front), 3.00, 0.01, "x");
    assert_prints(place(side), 2.50, 0.01, "y");
}

/// Source: R. C. Hibbeler, *Engineering Mechanics: Statics*, first example of trusses; from memory. 500 N push level
/// on the top of an upright of 2 m that a diagonal props: the diagonal is pushed with 707.1 N, upright and base are
/// pulled with 500 N.
pub fn a_propped_upright_is_a_truss() {
    let held = supports((0.0, 0.0), (0.0, 2000.0), (2000.0, 0.0));
    let axis = straight(&[(0.0, 0.0), (0.0, 2000.0)], rectangle(40.0, 40.0));
    let neck = Neck::new(axis, held, HeldAgainstTwist::Shoulder).expect("the book's upright");
    let loads = neck.loads(&[pull(0.0, 2000.0, 500.0, 0.0)]).expect("the book's truss");
    let pillar = loads.reactions.pillar_pull;
    assert_prints(loads.reactions.pillar.to_n(), 707.1, 0.1, "diagonal");
    assert_prints(loads.stations[0].axial_n, 500.0, 1.0, "upright");
    assert_prints(-pillar.x.to_n(), 500.0, 1.0, "base");
}

/// A beam on two supports as a neck with an upright pillar, a load spread as many small ones.
fn beam(span_mm: f64, section: Rectangle, points: &[(f64, f64)], n_per_mm: f64) -> [f64; 4] {
    let pieces = 1000;
    let step = span_mm / f64::from(pieces);
    let spread = (0..pieces).map(|i| ((f64::from(i) + 0.5) * step, n_per_mm * step));
    let down = |(x_mm, load): (f64, f64)| pull(x_mm, 0.0, 0.0, -load);
    let pulls: Vec<Pull> = points.iter().copied().chain(spread).map(down).collect();
    let held = supports((0.0, 0.0), (span_mm, 0.0), (span_mm, -1000.0));
    let axis = straight(&[(0.0, 0.0), (span_mm, 0.0)], section);
    let neck = Neck::new(axis, held, HeldAgainstTwist::Shoulder).expect("a beam");
    let loads = neck.loads(&pulls).expect("a beam");
    let most = |of: &dyn Fn(&Station) -> f64| loads.stations.iter().map(of).fold(0.0, f64::max);
    let reactions = loads.reactions;
    [
        reactions.shoulder_pull.y.to_n(),
        reactions.pillar.to_n(),
        most(&|cut| cut.moment_n_m.abs()),
        most(&|cut| cut.shear_n.abs()),
    ]
}

/// Sources: an online sample problem on a timber beam of 100 × 200 mm over 3 m (read), and J. M. Gere, *Mechanics of
/// Materials*, an example of chapter 5 (from memory): 8.75 × 27 in over 22 ft. The load is spread as 1000 small ones.
pub fn two_timber_beams_bear_what_their_books_say() {
    let section = rectangle(100.0, 200.0);
    let points = [(500.0, 10e3), (1500.0, 5e3), (2500.0, 10e3)];
    let [left, right, moment, shear] = beam(3000.0, section, &points, 0.1177);
    assert_prints(left, 12_676.5, 0.1, "left");
    assert_prints(right, 12_676.5, 0.1, "right");
    assert_prints(moment, 8_882.4, 0.1, "moment");
    let moment = stringloft::engine::units::Moment::from_n_m(moment);
    assert_prints(section.bending_stress(moment).to_mpa(), 13.32, 0.01, "stress");
    let greatest = section.shear_stress(Force::from_n(shear));
    assert_prints(greatest.to_mpa(), 0.951, 0.001, "shear");

    let kip = Force::from_lbf(1000.0).to_n();
    let foot = Length::from_foot(1.0).to_mm();
    let inch = Length::from_inch;
    let section = Rectangle::new(inch(8.75), inch(27.0)).expect("the book's section");
    let [left, right, moment, _] =
        beam(22.0 * foot, section, &[(9.0 * foot, 12.0 * kip)], 1.5 * kip / foot);
    assert_prints(left / kip, 23.59, 0.01, "left");
    assert_prints(right / kip, 21.41, 0.01, "right");
    let moment = stringloft::engine::units::Moment::from_n_m(moment);
    assert_prints(moment.to_lbf_foot() / 1e3, 151.6, 0.1, "moment");
    assert_prints(section.bending_stress(moment).to_ksi(), 1.71, 0.01, "stress");
}

/// Worked out by hand from the formulas; it only holds that nothing changes.
pub fn a_frame_and_a_twisted_neck_stay_as_worked_out() {
    let held = supports((0.0, 0.0), (700.0, 250.0), (760.0, -1100.0));
    let found = reactions(held, &[pull(330.0, 60.0, 0.0, -4000.0)]).expect("the row's frame");
    let push = found.pillar.to_n();
    assert_prints(push, 1858.08, 0.01, "pillar");
    assert_prints(found.pillar_pull.x.to_n() / push, -0.04440, 1e-5, "direction");
    assert_prints(found.pillar_pull.y.to_n() / push, 0.99901, 1e-5, "direction");
    assert_prints(found.shoulder_pull.x.to_n(), 82.50, 0.01, "shoulder");
    assert_prints(found.shoulder_pull.y.to_n(), 2143.75, 0.01, "shoulder");

    let section = rectangle(45.0, 75.0);
    let held = supports((0.0, 0.0), (700.0, 0.0), (700.0, -1000.0));
    let axis = straight(&[(0.0, 0.0), (700.0, 0.0)], section);
    let neck = Neck::new(axis, held, HeldAgainstTwist::BothEnds).expect("the row's neck");
    let strings: Vec<Pull> = (0..700)
        .map(|i| Pull {
            offset: Length::from_mm(32.0),
            ..pull(f64::from(i) + 0.5, 0.0, 0.0, -4000.0 / 700.0)
        })
        .collect();
    let loads = neck.loads(&strings).expect("the row's neck");
    let torque = loads.stations[0].torque_n_m;
    assert_prints(torque, 64.0, 0.1, "torque");
    let torque = stringloft::engine::units::Moment::from_n_m(torque);
    assert_prints(section.torsion_stress(torque).to_mpa(), 1.782, 0.001, "stress");
    let numbers = section.torsion_numbers();
    assert_prints(numbers.c1, 0.23644, 1e-5, "c1");
    assert_prints(numbers.c2, 0.20861, 1e-5, "c2");
    let maple = woods().into_iter().find(|wood| wood.key == "sugar-maple").expect("a wood");
    let ratio = maple.ratios.as_ref().and_then(|ratios| ratios.value.torsion_ratio());
    let by_bending = Stress::from_mpa(ratio.expect("tabulated") * 12_600.0);
    assert_prints(by_bending.to_mpa(), 1053.7, 0.1, "shear modulus");
    let degrees = |modulus| loads.greatest_twist_rad(modulus).expect("a modulus").to_degrees();
    assert_prints(degrees(by_bending), 0.427, 0.001, "twist");
    let along = maple.torsion_modulus().expect("tabulated");
    assert_prints(degrees(along), 0.388, 0.001, "twist with the modulus along the grain");

    let section = rectangle(60.0, 45.0);
    let (length, modulus) = (Length::from_m(1.10), Stress::from_gpa(12.6));
    let ends = stringloft::engine::structure::column::Ends::Pinned;
    let pillar = Strut::rectangle(section, length, ends, modulus).expect("the row's pillar");
    assert_prints(pillar.slenderness_ratio(), 84.7, 0.1, "slenderness");
    assert_prints(pillar.euler().to_n() / 1e3, 46.83, 0.01, "Euler");
    assert_prints(pillar.mean_stress(pillar.euler()).to_mpa(), 17.3, 0.1, "Euler's stress");
    assert_same(SAWN, 0.8, "sawn timber");
}
