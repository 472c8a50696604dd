//! Sections, struts and the soundboard's strip against textbooks.

use stringloft::engine::structure::column::{Ends, Strut};
use stringloft::engine::structure::plate::{Bars, Edges, Lift, Plate, Rib, Sheet};
use stringloft::engine::structure::section::{
    Rectangle, curved_stress, torsion_c2_by_handbook, torsion_numbers,
};
use stringloft::engine::structure::strip::{Spacing, board_load};
use stringloft::engine::units::{Force, Length, Moment, Stress};

use super::{assert_near, assert_prints};

/// A section in millimetres.
pub fn rectangle(breadth_mm: f64, depth_mm: f64) -> Rectangle {
    Rectangle::new(Length::from_mm(breadth_mm), Length::from_mm(depth_mm))
        .expect("the source's section")
}

/// Sides, `c₁` and `c₂`. Source: S. Timoshenko and J. N. Goodier, *Theory of Elasticity*, table of the torsion of
/// rectangles; summed from the series apart from this code, and the same as the book's as far as its digits go.
const TORSION: [(f64, f64, f64); 14] = [
    (1.0, 0.2082, 0.1406),
    (1.2, 0.2189, 0.1661),
    (1.25, 0.2212, 0.1717),
    (1.5, 0.2310, 0.1958),
    (1.75, 0.2390, 0.2143),
    (2.0, 0.2459, 0.2287),
    (2.5, 0.2576, 0.2494),
    (3.0, 0.2672, 0.2633),
    (4.0, 0.2817, 0.2808),
    (5.0, 0.2915, 0.2913),
    (6.0, 0.2984, 0.2983),
    (8.0, 0.3071, 0.3071),
    (10.0, 0.3123, 0.3123),
    (1e9, 0.3333, 0.3333),
];

pub fn rectangles_twist_as_the_table_says() {
    for (ratio, c1, c2) in TORSION {
        let ours = torsion_numbers(ratio).expect("a ratio above 0");
        assert_prints(ours.c1, c1, 1e-4, format_args!("c1 of {ratio}"));
        assert_prints(ours.c2, c2, 1e-4, format_args!("c2 of {ratio}"));
    }
}

/// Source: R. J. Roark, *Formulas for Stress and Strain*; from memory. The closed formula is good to half a percent.
pub fn the_handbooks_short_formula_for_twist_is_near() {
    for ratio in [1.0, 1.25, 1.5, 2.0, 3.0, 4.0, 6.0, 10.0] {
        let ours = torsion_numbers(ratio).expect("a ratio above 0").c2;
        assert_near(torsion_c2_by_handbook(ratio), ours, 5e-3, format_args!("{ratio}"));
    }
}

/// Source: F. P. Beer and E. R. Johnston, *Mechanics of Materials*, a sample problem of torsion; from memory. At
/// 40 MPa a brass bar of 40 × 40 mm bears 532 N·m and one of 64 × 25 mm bears 414 N·m, with coefficients of three
/// digits: the room is what these leave.
pub fn two_brass_bars_bear_their_torque() {
    for (breadth, depth, torque, c1) in [(40.0, 40.0, 532.0, 0.208), (64.0, 25.0, 414.0, 0.259)] {
        let bar = rectangle(breadth, depth);
        let per_torque = bar.torsion_stress(Moment::from_n_m(1.0)).to_mpa();
        assert_near(40.0 / per_torque, torque, 0.5e-3 / c1 + 0.5 / torque, "torque");
        assert_prints(bar.torsion_numbers().c1, c1, 1e-3, "coefficient");
    }
}

/// Source: F. P. Beer and E. R. Johnston, *Mechanics of Materials*, examples of curved bars; from memory. 2.5 in
/// broad, 1.5 in deep, mean radius 6 in, 8 kip·in that close the curve. The book rounds `e` to 0.0314 in, so that its
/// stresses are off by as much as that leaves.
pub fn a_curved_bar_has_its_stresses() {
    let inch = Length::from_inch;
    let bar = Rectangle::new(inch(2.5), inch(1.5)).expect("the book's section");
    let moment = Moment::from_lbf_inch(-8000.0);
    let stress = curved_stress(bar, inch(6.0), moment).expect("the book's curve");
    assert_prints(stress.neutral_radius.to_inch(), 5.969, 1e-3, "neutral radius");
    assert_prints(6.0 - stress.neutral_radius.to_inch(), 0.0314, 1e-4, "eccentricity");
    let room = 0.00005 / 0.0314 + 0.005 / 7.86;
    assert_near(stress.outer.to_ksi(), 7.86, room, "outer face");
    assert_near(stress.inner.to_ksi(), -9.30, room, "inner face");
}

/// A strut whose length is between points without bending.
fn strut(section: Rectangle, free_mm: f64, modulus: Stress) -> Strut {
    let length = Length::from_mm(free_mm);
    Strut::rectangle(section, length, Ends::Pinned, modulus).expect("the source's strut")
}

/// Sources: two design examples to BS 5268 (read). Columns of 200 × 200 mm and 150 × 150 mm: radius of gyration,
/// slenderness and stress. The modulus does not enter.
pub fn two_timber_columns_are_as_slender_and_stressed_as_printed() {
    let any = Stress::from_gpa(10.0);
    let column = strut(rectangle(200.0, 200.0), 2800.0, any);
    assert_prints(column.gyration().to_mm(), 57.7, 0.1, "radius");
    assert_prints(column.slenderness_ratio(), 48.5, 0.1, "slenderness");
    let stress = column.mean_stress(Force::from_n(210e3));
    assert_prints(stress.to_mpa(), 5.25, 0.01, "stress");
    let column = strut(rectangle(150.0, 150.0), 6000.0, any);
    assert_prints(column.gyration().to_mm(), 43.3, 0.1, "radius");
    assert_prints(column.slenderness_ratio(), 138.6, 0.1, "slenderness");
}

/// Sources: a worked example on a strength-of-materials site (read; sides and modulus worked back from what is
/// printed), a rectangle of 210 × 280 mm, 4.4 m between points without bending; and R. C. Hibbeler, *Mechanics of
/// Materials*, first example of columns (from memory): a steel tube of radii 3 and 2.75 in, 24 ft long.
pub fn two_columns_give_way_at_eulers_load() {
    let column = strut(rectangle(210.0, 280.0), 4400.0, Stress::from_gpa(70.0));
    assert_prints(column.euler().to_n() / 1e3, 7711.0, 1.0, "rectangle");
    let fixed_free = Strut::rectangle(
        rectangle(280.0, 210.0),
        Length::from_m(2.2),
        Ends::FixedFree,
        Stress::from_gpa(70.0),
    )
    .expect("the source's strut");
    assert_prints(fixed_free.euler().to_n() / 1e3, 7711.0, 1.0, "by the way its ends are held");
    let (outer, inner) = (Length::from_inch(3.0).to_m(), Length::from_inch(2.75).to_m());
    let pi = std::f64::consts::PI;
    let area = pi * (outer.powi(2) - inner.powi(2));
    let inertia = 0.25 * pi * (outer.powi(4) - inner.powi(4));
    let (edge, length) = (Length::from_m(outer), Length::from_foot(24.0));
    let tube = Strut::new(area, inertia, edge, length, Stress::from_ksi(29_000.0));
    let load = tube.expect("the book's tube").euler();
    assert_prints(load.to_lbf() / 1e3, 64.5, 0.1, "tube");
}

/// Source: F. P. Beer and E. R. Johnston, *Mechanics of Materials*, a sample problem of chapter 10; from memory. A
/// square steel tube of 8.00 in⁴ and 3.54 in², 16 ft between points without bending: Euler's load 62.1 kip, and half
/// of it, 0.75 in beside the middle, bends the head by 0.939 in and gives 22.0 ksi. The book
/// goes on with a radius of gyration of 1.50 in, which leaves some room.
pub fn a_tube_loaded_beside_its_middle_has_its_stress() {
    let inch = Length::from_inch(1.0).to_m();
    let (area, inertia) = (3.54 * inch.powi(2), 8.00 * inch.powi(4));
    let (edge, length) = (Length::from_inch(2.0), Length::from_foot(16.0));
    let tube = Strut::new(area, inertia, edge, length, Stress::from_ksi(29_000.0));
    let tube = tube.expect("the book's tube");
    assert_prints(tube.euler().to_lbf() / 1e3, 62.1, 0.1, "Euler");
    let half = Force::from_n(0.5 * tube.euler().to_n());
    let grown = tube.amplification_ratio(half).expect("below Euler");
    assert_prints(0.75 * (grown - 1.0), 0.939, 1e-3, "deflection");
    let beside = Length::from_inch(0.75);
    let stress = tube.eccentric_stress(half, beside).expect("below Euler");
    let room = 2.0 * 0.005 / 1.50 + 0.05 / 22.0;
    assert_near(stress.to_ksi(), 22.0, room, "stress");
}

/// Worked out by hand from the formulas; it only holds that nothing changes.
pub fn a_strip_of_the_board_stays_as_worked_out() {
    let none = Stress::from_pa(0.0);
    let even = |mm: f64| (Length::from_mm(mm), Length::from_mm(mm));
    let strip = Plate {
        length: Length::from_mm(1000.0),
        width: even(330.0),
        thickness: even(4.5),
        sheet: Sheet { across: Stress::from_mpa(10_800.0), along: none, shear: none, poisson: 0.0 },
        rib: Rib::default(),
        side_ratio: 1.0,
        thick: None,
        bars: Bars::default(),
    };
    let middle = Length::from_mm(500.0);
    let lifts: Vec<Lift> = (0..100)
        .map(|of| Lift {
            at: Length::from_mm(5.0 + 10.0 * f64::from(of)),
            over: Length::from_mm(10.0),
            force: Force::from_n(20.0),
        })
        .collect();
    for (sides_n, mpa, mm) in [(f64::INFINITY, 24.4, 4.56), (0.0, 48.9, 18.26)] {
        let edges = Edges { sides_n: (sides_n, sides_n), ends_n: 0.0 };
        let state = strip.under(&lifts, edges, &[middle]).expect("the row's strip")[0];
        let stress = 6.0 * state.middle_n_m_per_m / 0.0045_f64.powi(2);
        assert_prints(Stress::from_pa(stress).to_mpa(), mpa, 0.1, "stress");
        assert_prints(state.rise.to_mm(), mm, 0.01, "rise");
    }
    // Pull, distance square to the strings, degrees; lift of a string, pitch, lift and pull along for a millimetre.
    let rows = [
        (111.0, 15.9, 32.0_f64, 58.8, 30.0, 1.960, 3.137),
        (255.0, 14.5, 35.0, 146.3, 25.3, 5.786, 8.263),
    ];
    for (pull, apart, degrees, each, pitch, lift, along) in rows {
        let (pull, apart) = (Force::from_n(pull), Length::from_mm(apart));
        let load = board_load(pull, degrees.to_radians(), apart, Spacing::Square);
        let load = load.expect("the row's angle");
        assert_prints(load.pitch.to_mm(), pitch, 0.1, "pitch");
        assert_prints(load.lift_n_per_m / 1e3, lift, 1e-3, "lift");
        assert_prints(load.lift_n_per_m * load.pitch.to_m(), each, 0.1, "lift of a string");
        assert_prints(load.along_n_per_m / 1e3, along, 1e-3, "along");
    }
}
