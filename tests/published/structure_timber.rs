//! Laminates, metal beside wood, holes and woods of one's own: against libraries for numbers and a textbook.
//!
//! `scripts/timber_values.py` wrote `timber_values.json`; it says the versions that it used.

use serde::Deserialize;
use stringloft::engine::structure::frame::{Point, Station};
use stringloft::engine::structure::holes::{Hole, left};
use stringloft::engine::structure::laminate::{Laminate, Layer};
use stringloft::engine::structure::plated::{Plated, Plates, Slip};
use stringloft::engine::structure::wood::own::{Bar, shape};
use stringloft::engine::structure::wood::{Allowable, WoodKind, own};
use stringloft::engine::units::{Density, Frequency, Length, Mass, Stress};

use super::structure_sections::rectangle;
use super::{assert_near, assert_prints, assert_same};

#[derive(Deserialize)]
struct Values {
    laminates: Vec<SolvedLaminate>,
    plated: Vec<SolvedPlated>,
    slips: Vec<SolvedSlip>,
    holed: Vec<SolvedHoles>,
    bars: Vec<SolvedBar>,
}

#[derive(Deserialize)]
struct SolvedLaminate {
    name: String,
    layers: Vec<[f64; 6]>,
    along: f64,
    across: f64,
    shear: f64,
    sideways: f64,
}

#[derive(Deserialize)]
struct SolvedPlated {
    given: (f64, f64, f64, f64, bool, f64, f64),
    wood_mpa: [f64; 3],
    metal_mpa: [f64; 3],
}

#[derive(Deserialize)]
struct SolvedSlip {
    given: [f64; 8],
    gamma: f64,
}

#[derive(Deserialize)]
struct SolvedHoles {
    given: (f64, f64, Vec<[f64; 3]>),
    axial: f64,
    bending: f64,
    shift_mm: f64,
}

#[derive(Deserialize)]
struct SolvedBar {
    given: [f64; 6],
    hz: f64,
}

fn values() -> Values {
    serde_json::from_str(include_str!("timber_values.json")).expect("the script writes this form")
}

fn layer(thickness: Length, deg: f64, [e1, e2, g, poisson]: [f64; 4]) -> Layer {
    Layer {
        thickness,
        angle_rad: deg.to_radians(),
        along: Stress::from_gpa(e1),
        across: Stress::from_gpa(e2),
        shear: Stress::from_gpa(g),
        poisson,
        allowable: Allowable::default(),
    }
}

/// Source: A. K. Kaw, *Mechanics of Composite Materials*, 2nd ed., example 4.2, [0/30/−45] of graphite and epoxy, 5 mm each,
/// 181, 10.3 and 7.17 GPa, 0.28; from memory. Printed to four digits; what it prints below the diagonal is the same.
pub fn a_laminate_of_three_has_the_stiffness_of_the_textbook() {
    let plies =
        [0.0, 30.0, -45.0].map(|deg| layer(Length::from_mm(5.0), deg, [181.0, 10.3, 7.17, 0.28]));
    let abd = Laminate::new(plies.into()).expect("three plies").abd();
    let printed = [
        (abd.a[0][0], 1.739e9, 1e6),
        (abd.a[0][1], 3.884e8, 1e5),
        (abd.a[0][2], 5.663e7, 1e4),
        (abd.a[1][1], 4.533e8, 1e5),
        (abd.a[1][2], -1.141e8, 1e5),
        (abd.a[2][2], 4.525e8, 1e5),
        (abd.b[0][0], -3.129e6, 1e3),
        (abd.b[0][1], 9.855e5, 1e2),
        (abd.b[0][2], -1.072e6, 1e3),
        (abd.b[1][1], 1.158e6, 1e3),
        (abd.b[1][2], -1.072e6, 1e3),
        (abd.b[2][2], 9.855e5, 1e2),
        (abd.d[0][0], 3.343e4, 1e1),
        (abd.d[0][1], 6.461e3, 1.0),
        (abd.d[0][2], -5.240e3, 1.0),
        (abd.d[1][1], 9.320e3, 1.0),
        (abd.d[1][2], -5.596e3, 1.0),
        (abd.d[2][2], 7.663e3, 1.0),
    ];
    for (place, (ours, theirs, digit)) in printed.into_iter().enumerate() {
        assert_prints(ours, theirs, digit, place);
    }
}

pub fn laminates_are_as_stiff_as_by_turned_tensors() {
    for solved in values().laminates {
        let layers = solved
            .layers
            .iter()
            .map(|[mm, deg, rest @ ..]| layer(Length::from_mm(*mm), *deg, *rest));
        let moduli = Laminate::new(layers.collect()).expect("layers").moduli();
        for (ours, theirs) in [
            (moduli.along, solved.along),
            (moduli.across, solved.across),
            (moduli.shear, solved.shear),
            (moduli.sideways, solved.sideways),
        ] {
            assert_near(ours.to_gpa(), theirs, 1e-9, &solved.name);
        }
    }
}

fn cut(forces: [f64; 6]) -> Station {
    let none = Length::from_m(0.0);
    let mut cut = Station {
        at: Point { x: none, y: none },
        s_m: 0.0,
        section: rectangle(40.0, 80.0),
        axial_n: 0.0,
        shear_n: 0.0,
        aside_n: 0.0,
        moment_n_m: 0.0,
        torque_n_m: 0.0,
        sideways_n_m: 0.0,
    };
    cut.take(forces);
    cut
}

fn plates((t, high): (f64, f64), both: bool, gpa: f64, screws: Option<Slip>) -> Plates {
    Plates {
        thickness: Length::from_mm(t),
        height: Length::from_mm(high),
        both,
        modulus: Stress::from_gpa(gpa),
        shear: Stress::from_gpa(0.4 * gpa),
        allowable: Stress::from_mpa(100.0),
        screws,
    }
}

/// Stresses under a newton along, and under a newton millimetre of each bending. A plate alone also turns a force along the
/// middle into bending sideways, which the grid leaves out of the first.
pub fn wood_and_metal_bear_as_by_adding_up_a_grid() {
    for solved in values().plated {
        let (b, h, t, high, both, wood, metal) = solved.given;
        let section = rectangle(b, h);
        let modulus = Stress::from_gpa(wood);
        let plated: Plated = plates((t, high), both, metal, None).on(
            section,
            Length::from_mm(900.0),
            (modulus, modulus),
        );
        let factors = plated.wood();
        let side = section.on_its_side();
        let ours = [
            1e-6 * factors.axial / section.area_m2(),
            1e-9 * factors.bending / section.modulus_m3(),
            1e-9 * factors.sideways / side.modulus_m3(),
        ];
        for (ours, theirs) in ours.into_iter().zip(solved.wood_mpa) {
            assert_near(ours, theirs, 2e-4, format_args!("wood of {:?}", solved.given));
        }
        let under = |at: usize, size: f64| {
            let mut forces = [0.0; 6];
            forces[at] = size;
            plated.metal(&cut(forces), 1.0).to_mpa()
        };
        let bent = [under(5, 1e-3), under(4, 1e-3)];
        for (ours, theirs) in bent.into_iter().zip([solved.metal_mpa[1], solved.metal_mpa[2]]) {
            assert_near(ours, theirs, 2e-4, format_args!("metal of {:?}", solved.given));
        }
        if both {
            assert_near(under(0, 1.0), solved.metal_mpa[0], 2e-4, "metal along");
        }
    }
}

pub fn plates_slip_on_their_screws_as_by_finite_differences() {
    for solved in values().slips {
        let [_, t, _, metal, width, spacing, slip, length] = solved.given;
        let screws = Slip { spacing: Length::from_mm(spacing), stiffness_n_per_m: 1e3 * slip };
        let plates = plates((t, width), true, metal, Some(screws));
        let gamma = plates.gamma(Length::from_mm(width), Length::from_mm(length));
        assert_near(gamma, solved.gamma, 2e-4, format_args!("{:?}", solved.given));
    }
}

pub fn holes_leave_of_a_section_what_a_grid_leaves() {
    for solved in values().holed {
        let (b, h, holes) = &solved.given;
        let hole = |[off, wide, deep]: &[f64; 3]| Hole {
            along: Length::from_m(0.0),
            off: Length::from_mm(*off),
            diameter: Length::from_mm(*wide),
            deep_ratio: *deep,
            pitch: None,
        };
        let holes: Vec<Hole> = holes.iter().map(hole).collect();
        let stress = left(rectangle(*b, *h), &holes, Length::from_m(0.0));
        assert_near(stress.axial, solved.axial, 1e-4, "along");
        assert_near(stress.bending, solved.bending, 1e-4, "bending");
        assert_near(stress.shift.to_mm(), solved.shift_mm, 2e-3, "middle");
    }
}

/// The modulus by the tone of a bar whose tone finite elements of Timoshenko's beam found: wood, whose shear is soft, and steel.
/// The correction is one of the first order; of the wooden bars it is off by less than a hundredth.
pub fn a_tapped_bar_tells_the_modulus_that_it_was_made_with() {
    for solved in values().bars {
        let [length, width, height, density, gpa, over] = solved.given;
        let mm = Length::from_mm;
        let mass = Mass::from_kg(density * length * width * height * 1e-9);
        let bar = Bar { length: mm(length), width: mm(width), height: mm(height), mass };
        let tone = Frequency::from_hz(solved.hz);
        let ours = bar.modulus_by_tone(tone).expect("a bar").to_gpa();
        let ratio = height / length;
        // The function takes the shear of wood; for steel the correction is put right here.
        let ours = ours * shape(ratio, over) / shape(ratio, 16.0);
        assert_near(ours, gpa, 1e-2, format_args!("{:?}", solved.given));
    }
}

/// Source: ASTM E1876, the correction of slender bars, `1 + 6.585 (t/L)²`; from memory. It holds for `E/G` = 2.
pub fn a_bar_of_no_grain_has_the_standards_correction() {
    for ratio in [0.01, 0.02, 0.04, 0.05] {
        let printed = 6.585 * ratio * ratio;
        assert_near(shape(ratio, 2.0) - 1.0, printed, 5e-4, ratio);
    }
}

/// Source: EN 338:2016: what C24, D30 and D40 ask for and bear (from memory).
pub fn woods_reach_the_classes_of_the_standard() {
    for (kind, kg, gpa, name, figures) in [
        (WoodKind::Softwood, 420.0, 11.0, "C24", [24.0, 0.4, 21.0, 2.5, 4.0]),
        (WoodKind::Hardwood, 640.0, 11.0, "D30", [30.0, 0.6, 24.0, 5.3, 3.9]),
        (WoodKind::Hardwood, 660.0, 13.0, "D40", [40.0, 0.6, 27.0, 5.5, 4.2]),
    ] {
        let (density, modulus) = (Density::from_kg_per_m3(kg), Stress::from_gpa(gpa));
        assert_same(own::class_name(kind, density, modulus), Some(name), name);
        let wood = own::wood(kind, density, modulus, true);
        let ours = [
            wood.bending,
            wood.tension_across,
            wood.compression_along,
            wood.compression_across,
            wood.shear,
        ];
        for (ours, printed) in ours.into_iter().zip(figures) {
            assert_prints(ours.expect("a strength").value.to_mpa(), printed, 0.1, name);
        }
    }
}
