//! The plate against textbooks, closed forms and a series.

mod beyond;

use std::f64::consts::PI;

use super::*;
use crate::testing::assert_close;

const STEEL: Sheet = Sheet {
    across: Stress::from_gpa(200.0),
    along: Stress::from_gpa(200.0),
    shear: Stress::from_gpa(200.0 / 2.6),
    poisson: 0.3,
};
/// Sitka spruce with its grain across and upright rings, from the table of moduli.
const SPRUCE: Sheet = Sheet {
    across: Stress::from_gpa(11.9),
    along: Stress::from_gpa(0.078 * 11.9),
    shear: Stress::from_gpa(0.064 * 11.9),
    poisson: 0.372,
};

fn even(width_mm: f64, length_mm: f64, sheet: Sheet) -> Plate {
    Plate {
        length: Length::from_mm(length_mm),
        width: (Length::from_mm(width_mm), Length::from_mm(width_mm)),
        thickness: (Length::from_mm(4.0), Length::from_mm(4.0)),
        side_ratio: 1.0,
        thick: None,
        sheet,
        rib: Rib::default(),
        bars: Bars::default(),
    }
}

fn middle(plate: &Plate, lifts: &[Lift], edges: Edges) -> PlateState {
    let place = Length::from_m(0.5 * plate.length.to_m());
    plate.under(lifts, edges, &[place]).unwrap()[0]
}

/// The same pressure everywhere, as forces on the unknowns.
fn pressure(stiffness: &Stiffness, pressure_pa: f64) -> Vec<f64> {
    let grid = &stiffness.grid;
    let mut forces = vec![0.0; FREEDOMS];
    for patch in grid.patches() {
        for ((x, y), weight) in grid.points(patch) {
            let force = pressure_pa * weight * grid.half_at(y);
            for (freedom, part) in Grid::freedoms(patch).iter().zip(grid.rises(patch, (x, y))) {
                forces[*freedom] += force * part;
            }
        }
    }
    Grid::held().for_each(|freedom| forces[freedom] = 0.0);
    forces
}

/// What the middle does under the same pressure everywhere.
fn pressed(plate: &Plate, pressure_pa: f64, edges: Edges) -> PlateState {
    let stiffness = plate.stiffness().unwrap();
    let mut rises = pressure(&stiffness, pressure_pa);
    stiffness.edged(edges).even().unwrap().solve(&mut rises);
    plate.state(&stiffness.grid, (&rises, None), edges, 0.5 * plate.length.to_m())
}

/// S. Timoshenko and S. Woinowsky-Krieger, *Theory of Plates and Shells*, 2nd ed., 1959, tables 8 and 35 (from memory);
/// the printed digits of the clamped plate are off by up to one of the last,
/// and moments between patches come within 1 %. Rise over `q a⁴/D`, moment over `q a²`: at
/// the middle of the hinged plate, at the middle of the long edge of the clamped one.
#[test]
fn an_even_pressure_bends_a_plate_as_the_tables_say() {
    let hinged = [
        (1.0, 0.00406, 0.0479),
        (1.5, 0.00772, 0.0812),
        (2.0, 0.01013, 0.1017),
        (3.0, 0.01223, 0.1189),
    ];
    let clamped = [(1.0, 0.00126, -0.0513), (1.5, 0.00220, -0.0757), (2.0, 0.00254, -0.0829)];
    let (a, pressure) = (0.3_f64, 1000.0);
    let over_d = pressure * a.powi(4) / STEEL.rigidity(0.004).across;
    for (longer, rise, moment) in hinged {
        let state = pressed(&even(300.0, 300.0 * longer, STEEL), pressure, Edges::HINGED);
        let (ours, bent) =
            (state.rise.to_m() / over_d, state.middle_n_m_per_m / (pressure * a * a));
        assert!((ours - rise).abs() < 0.6e-5, "hinged, {longer}: rise {ours}");
        assert!((bent - moment).abs() < 0.01 * moment, "hinged, {longer}: moment {bent}");
    }
    for (longer, rise, moment) in clamped {
        let state = pressed(&even(300.0, 300.0 * longer, STEEL), pressure, Edges::CLAMPED);
        let (ours, bent) = (state.rise.to_m() / over_d, state.edge_n_m_per_m / (pressure * a * a));
        assert!((ours - rise).abs() < 1.1e-5, "clamped, {longer}: rise {ours}");
        assert!((bent - moment).abs() < -0.01 * moment, "clamped, {longer}: moment {bent}");
    }
}

/// The same book, table 8: the corner of a hinged plate is held down by `R = 2 (1 − ν) D w_xy`, for a square `0.065 q a²`. A
/// bar of no stiffness near it is twisted as far, and one along the middle line not at all.
#[test]
fn a_bar_turns_as_far_as_the_board_twists() {
    let (a, pressure_pa) = (0.3_f64, 1000.0);
    let twisted = |share: f64, at_mm: f64| {
        let bars = Bars {
            pairs: 1,
            pair_shares: (share, share),
            pair_size: (Length::from_mm(8.0), Length::from_mm(10.0)),
            ..Bars::default()
        };
        let stiffness = Plate { bars, ..even(300.0, 300.0, STEEL) }.stiffness().unwrap();
        let mut rises = pressure(&stiffness, pressure_pa);
        stiffness.edged(Edges::HINGED).even().unwrap().solve(&mut rises);
        let state =
            stiffness.plate.state(&stiffness.grid, (&rises, None), Edges::HINGED, 1e-3 * at_mm);
        state.bar_twist_rad_per_m
    };
    let held = 2.0 * (1.0 - 0.3) * STEEL.rigidity(0.004).across;
    for end in [0.0, 300.0] {
        assert_close(held * twisted(0.999, end), 0.065 * pressure_pa * a * a, 0.02, end);
    }
    assert!(held * twisted(0.5, 150.0) < 1e-6 * pressure_pa * a * a);
}

/// The same book, tables 23 and 37 (from memory): rise over `P a²/D` under a force at the middle.
#[test]
fn a_force_at_the_middle_raises_a_plate_as_the_tables_say() {
    let hinged = [
        (1.0, 0.01160),
        (1.2, 0.01353),
        (1.4, 0.01484),
        (1.6, 0.01570),
        (1.8, 0.01620),
        (2.0, 0.01651),
    ];
    let clamped = [
        (1.0, 0.00560),
        (1.2, 0.00647),
        (1.4, 0.00691),
        (1.6, 0.00712),
        (1.8, 0.00720),
        (2.0, 0.00722),
    ];
    for (edges, table) in [(Edges::HINGED, hinged), (Edges::CLAMPED, clamped)] {
        for (longer, rise) in table {
            let plate = even(300.0, 300.0 * longer, STEEL);
            let at = Length::from_mm(150.0 * longer);
            let lift = Lift { at, over: Length::from_m(0.0), force: Force::from_n(100.0) };
            let state = middle(&plate, &[lift], edges);
            let ours = state.rise.to_m() * STEEL.rigidity(0.004).across / (100.0 * 0.09);
            // The patches are a little stiffer than the plate right under a force at a point.
            assert!((ours - rise).abs() < 0.006 * rise, "{longer}: {ours} for {rise}");
        }
    }
}

/// Navier's series for a hinged plate that is stiffer one way, under an even load along part of its middle line:
/// `w = Σ q_mn sin(mπx/a) sin(nπy/b)/[π⁴ (D_x m⁴/a⁴ + 2 H m² n²/a² b² + D_y n⁴/b⁴)]`, summed up here.
#[test]
fn a_hinged_board_of_spruce_does_what_the_series_says() {
    let (a, b, from, to, load) = (0.3_f64, 1.2, 0.3, 0.8, 2000.0);
    let stiff = SPRUCE.rigidity(0.004);
    let (mut rise, mut bent, mut along) = (0.0, 0.0, 0.0);
    for m in (1..4001).step_by(2) {
        for n in 1..121 {
            let (m, n) = (f64::from(m), f64::from(n));
            let spread = load * 4.0 / (a * b) * (0.5 * m * PI).sin() * b / (n * PI)
                * ((n * PI * from / b).cos() - (n * PI * to / b).cos());
            let (x, y) = (m * PI / a, n * PI / b);
            let both = stiff.both + 2.0 * stiff.twist;
            let held =
                stiff.across * x.powi(4) + 2.0 * both * x * x * y * y + stiff.along * y.powi(4);
            let part = spread / held * (0.5 * m * PI).sin() * (n * PI * 0.5).sin();
            rise += part;
            bent += part * (stiff.across * x * x + stiff.both * y * y);
            along += part * (stiff.along * y * y + stiff.both * x * x);
        }
    }
    let lift = |of: i32| Lift {
        at: Length::from_m(from + (f64::from(of) + 0.5) / 50.0 * (to - from)),
        over: Length::from_m((to - from) / 50.0),
        force: Force::from_n(load * (to - from) / 50.0),
    };
    let lifts: Vec<Lift> = (0..50).map(lift).collect();
    let state = middle(&even(300.0, 1200.0, SPRUCE), &lifts, Edges::HINGED);
    assert_close(state.rise.to_m(), rise, 1e-3, "rise");
    assert_close(state.middle_n_m_per_m, bent, 5e-3, "moment across");
    assert_close(state.along_n_m_per_m, along, 0.02, "moment along");
}

const STRIPS: Sheet =
    Sheet { along: Stress::from_pa(0.0), shear: Stress::from_pa(0.0), poisson: 0.0, ..SPRUCE };

fn along_all(load_n_per_m: f64, plate: &Plate) -> Vec<Lift> {
    let length = plate.length.to_m();
    (0..96)
        .map(|of| Lift {
            at: Length::from_m((f64::from(of) + 0.5) / 96.0 * length),
            over: Length::from_m(length / 96.0),
            force: Force::from_n(load_n_per_m * length / 96.0),
        })
        .collect()
}

/// Without stiffness along it a board is strips: `M_e = (q w/8)/(1 + 2 D/κ w)` at edges that hold with `κ`,
/// `q w/4 − M_e` at the middle, and a rise of `q w³/48 D − M_e w²/8 D`: a beam with springs at its ends, worked out.
#[test]
fn a_board_of_strips_is_the_beam_between_springs() {
    let (q, w) = (3000.0, 0.3_f64);
    for held in [0.0, 200.0, 1000.0, 20_000.0, f64::INFINITY] {
        let plate = even(300.0, 1200.0, STRIPS);
        let edges = Edges { sides_n: (held, held), ends_n: 0.0 };
        let d = STRIPS.rigidity(0.004).across;
        let edge = q * w / 8.0 / (1.0 + 2.0 * d / (held * w));
        let state = middle(&plate, &along_all(q, &plate), edges);
        let rise = q * w.powi(3) / (48.0 * d) - edge * w * w / (8.0 * d);
        assert_close(state.rise.to_m(), rise, 1e-4, format_args!("{held}: rise"));
        assert_close(state.middle_n_m_per_m, q * w / 4.0 - edge, 1e-3, format_args!("{held}"));
        assert!((-state.edge_n_m_per_m - edge).abs() < 1e-3 * q * w, "{held}: edge");
    }
}

/// The rib on strips is a beam on an elastic bed of `k = 192 D/w³` for clamped sides, `48 D/w³` for hinged ones: under a
/// force `P` it goes up by `P β/2 k` and bends by `P/4 β`, with `β⁴ = k/4 EI`. Source: M. Hetényi, *Beams on Elastic
/// Foundation*, 1946 (from memory); worked out by hand for the moduli here.
#[test]
fn a_rib_on_strips_is_a_beam_on_an_elastic_bed() {
    for (edges, bed) in [(Edges::CLAMPED, 192.0), (Edges::HINGED, 48.0)] {
        let side = Length::from_mm(20.0);
        let modulus = Stress::from_pa(300.0 * 12.0 / 0.02_f64.powi(4));
        let rib = Rib { inside: (side, side), modulus, ..Rib::default() };
        let plate = Plate { rib, ..even(300.0, 2400.0, STRIPS) };
        // The board does not count along the rib.
        assert_close(plate.section(Length::from_m(1.0)).rigidity_n_m2, 300.0, 1e-12, "EI");
        let at = Length::from_mm(1200.0);
        let lift = Lift { at, over: Length::from_m(0.0), force: Force::from_n(300.0) };
        let state = middle(&plate, &[lift], edges);
        let k = bed * STRIPS.rigidity(0.004).across / 0.027;
        let beta = (k / 1200.0).powf(0.25);
        assert_close(state.rise.to_m(), 300.0 * beta / (2.0 * k), 0.01, "rise");
        // The peak under a force at a point is cut by the patches.
        assert_close(state.rib_n_m, 300.0 / (4.0 * beta), 0.04, "moment");
    }
}

/// Every cubic in `x` and `y` has its own bends on a taper, whatever patch it is looked at in.
#[test]
fn bends_are_those_of_the_shape_also_on_a_taper() {
    let grid = Grid { length_m: 1.1, half_m: (0.18, 0.05) };
    // Powers of x and y; the rise is x^p y^q.
    for (p, q) in [(0, 2), (1, 1), (2, 0), (2, 1), (1, 2), (0, 3), (3, 0)] {
        let power = |base: f64, times: i32| if times < 0 { 0.0 } else { base.powi(times) };
        let (fp, fq) = (f64::from(p), f64::from(q));
        for patch in [(0, 0), (2, 7), (1, 23)] {
            for (place, _) in grid.points(patch) {
                let mut bent = [0.0; 3];
                let bends = grid.bends(patch, place);
                for (of, freedom) in bends.iter().enumerate() {
                    let (i, j) = ((patch.0 + of / 4 % 2) as f64, (patch.1 + of / 8) as f64);
                    let (xi, y) = (i / 4.0, j * 1.1 / 24.0);
                    let (h, slant) = (grid.half_at(y), grid.slant());
                    let (x, in_xi) = (power(xi, p), fp * power(xi, p - 1));
                    let up = power(h, p) * power(y, q);
                    let up_y = fp * power(h, p - 1) * slant * power(y, q)
                        + power(h, p) * fq * power(y, q - 1);
                    let value = [x * up, in_xi * up, x * up_y, in_xi * up_y][of % 4];
                    for (sum, part) in bent.iter_mut().zip(freedom) {
                        *sum += part * value;
                    }
                }
                let (x, y) = (place.0 * grid.half_at(place.1), place.1);
                let wanted = [
                    fp * (fp - 1.0) * power(x, p - 2) * power(y, q),
                    fq * (fq - 1.0) * power(x, p) * power(y, q - 2),
                    fp * fq * power(x, p - 1) * power(y, q - 1),
                ];
                for (ours, wanted) in bent.iter().zip(wanted) {
                    assert!((ours - wanted).abs() < 1e-9, "x^{p} y^{q}: {ours} for {wanted}");
                }
            }
        }
    }
}

#[test]
fn a_board_turned_end_for_end_does_the_same() {
    let plate = Plate {
        width: (Length::from_mm(360.0), Length::from_mm(100.0)),
        thickness: (Length::from_mm(9.0), Length::from_mm(3.0)),
        rib: Rib {
            inside: (Length::from_mm(30.0), Length::from_mm(12.0)),
            outside: (Length::from_mm(20.0), Length::from_mm(4.0)),
            modulus: Stress::from_gpa(12.6),
        },
        ..even(300.0, 1300.0, SPRUCE)
    };
    let turned = Plate {
        width: (plate.width.1, plate.width.0),
        thickness: (plate.thickness.1, plate.thickness.0),
        ..plate
    };
    let lift = |mm| Lift {
        at: Length::from_mm(mm),
        over: Length::from_mm(30.0),
        force: Force::from_n(200.0),
    };
    for edges in [Edges::HINGED, Edges::CLAMPED, Edges { sides_n: (500.0, 500.0), ends_n: 200.0 }] {
        let one = plate.under(&[lift(400.0)], edges, &[Length::from_mm(500.0)]).unwrap()[0];
        let other = turned.under(&[lift(900.0)], edges, &[Length::from_mm(800.0)]).unwrap()[0];
        assert_close(one.rise.to_m(), other.rise.to_m(), 1e-9, "rise");
        assert_close(one.middle_n_m_per_m, other.middle_n_m_per_m, 1e-7, "moment");
        assert_close(one.rib_n_m, other.rib_n_m, 1e-7, "rib");
    }
}

/// A rib of 30 × 12 mm under a board of 4 mm that does not count, with a strip of the same as a mirror: the two are a beam
/// of 28 mm less one of 4 mm.
#[test]
fn a_rib_with_its_like_outside_is_a_beam_with_a_slot() {
    let side = (Length::from_mm(30.0), Length::from_mm(12.0));
    let rib = Rib { inside: side, outside: side, modulus: Stress::from_gpa(12.0) };
    let section = rib.section(Length::from_mm(4.0), Stress::from_pa(0.0));
    let wanted = 12e9 * 0.03 * (0.028_f64.powi(3) - 0.004_f64.powi(3)) / 12.0;
    assert_close(section.rigidity_n_m2, wanted, 1e-12, "EI");
    assert_close(section.outermost.to_mm(), 14.0, 1e-12, "outermost");
    let none = Rib::default().section(Length::from_mm(4.0), Stress::from_gpa(0.9));
    assert_eq!((none.rigidity_n_m2, none.outermost.to_m()), (0.0, 0.0));
}

#[test]
fn a_board_that_is_none_holds_nothing() {
    let good = even(300.0, 1200.0, SPRUCE);
    for bad in [0.0, -1.0, f64::NAN, f64::INFINITY].map(Length::from_mm) {
        for plate in [
            Plate { length: bad, ..good },
            Plate { width: (bad, good.width.1), ..good },
            Plate { thickness: (good.width.0, bad), ..good },
        ] {
            assert_eq!(plate.under(&[], Edges::HINGED, &[]), None);
        }
    }
    let soft = Sheet { across: Stress::from_pa(0.0), ..STRIPS };
    assert_eq!(even(300.0, 1200.0, soft).under(&[], Edges::HINGED, &[]), None);
}

/// What the matrix says is the rise of the board under the other lift, taken over the length of the one; and it is the
/// same the other way round.
#[test]
fn what_one_lift_does_where_another_is_is_the_rise_there() {
    let plate = Plate {
        length: Length::from_mm(1_200.0),
        width: (Length::from_mm(400.0), Length::from_mm(150.0)),
        thickness: (Length::from_mm(6.0), Length::from_mm(3.0)),
        side_ratio: 1.0,
        thick: None,
        sheet: SPRUCE,
        rib: Rib::default(),
        bars: Bars::default(),
    };
    let lift = |at: f64, n: f64| Lift {
        at: Length::from_mm(at),
        over: Length::from_mm(40.0),
        force: Force::from_n(n),
    };
    let lifts = [lift(300.0, 2.0), lift(500.0, 3.0), lift(540.0, 1.0)];
    for edges in [Edges::CLAMPED, Edges::HINGED] {
        let all = plate.stiffness().unwrap().gives(&lifts, edges).unwrap();
        for (row, one) in lifts.iter().enumerate() {
            for (column, other) in lifts.iter().enumerate() {
                let at = |(point, _): &(f64, f64)| {
                    Length::from_m(one.at.to_m() + (point - 0.5) * one.over.to_m())
                };
                let places: Vec<Length> = POINTS.iter().map(at).collect();
                let states = plate.under(&[*other], edges, &places).unwrap();
                let rise = states.iter().zip(POINTS).map(|(state, (_, w))| w * state.rise.to_m());
                let work = one.force.to_n() * rise.sum::<f64>();
                assert_close(all[row][column], work, 1e-9, format_args!("{row}, {column}"));
                assert_close(
                    all[row][column],
                    all[column][row],
                    1e-9,
                    format_args!("{row}, {column}"),
                );
            }
        }
    }
}
