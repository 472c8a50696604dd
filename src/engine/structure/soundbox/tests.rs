//! Soundboxes by hand.

use super::*;
use crate::testing::assert_close;

fn mm(value: f64) -> Length {
    Length::from_mm(value)
}

/// Alike in all directions: 10 GPa and 4 GPa in shear.
fn wall() -> Wall {
    let limit = |mpa: f64| Some(Stress::from_mpa(mpa));
    Wall {
        allowable: Allowable {
            bending: limit(20.0),
            compression_along: limit(15.0),
            shear: limit(4.0),
            tension_across: limit(1.0),
            least_modulus: Some(Stress::from_gpa(5.0)),
            ..Allowable::default()
        },
        along: Stress::from_gpa(10.0),
        across: Stress::from_gpa(10.0),
        shear: Stress::from_gpa(4.0),
    }
}

fn tube() -> Section {
    Section {
        width: mm(200.0),
        depth: mm(100.0),
        board: (mm(5.0), wall()),
        side: (mm(5.0), wall()),
        back: (mm(5.0), wall()),
        liner: (mm(0.0), mm(0.0)),
        opening: Back::Closed,
        braces: Some(mm(150.0)),
    }
}

/// Bredt: 4 (200·100)² 5/600 mm⁴; open it is the sum of `s t³/3` over 600 mm less the slot.
#[test]
fn a_closed_tube_twists_by_bredt_and_an_open_one_by_its_strips() {
    let closed = tube().stiffness();
    assert_close(closed.torsion, 4e9 * 4.0 * 0.02_f64.powi(2) * 0.005 / 0.6, 1e-12, "closed");
    let open = Section { opening: Back::Slotted(mm(60.0)), ..tube() }.stiffness();
    assert_close(open.torsion, 4e9 * 0.54 * 0.005_f64.powi(3) / 3.0, 1e-12, "open");
    assert!(closed.torsion > 500.0 * open.torsion);
    let cut = [0.0, 0.0, 0.0, 100.0, 0.0, 0.0];
    let shear = |section: &Section| section.judge(cut, true).uses[3].stress.to_pa();
    // 100 N·m over twice 0.02 m² are 2500 N/m, on 5 mm; open: T t/J.
    assert_close(shear(&tube()), 2500.0 / 0.005, 1e-12, "flow");
    let slotted = Section { opening: Back::Slotted(mm(60.0)), ..tube() };
    let each = 100.0 * 0.005 / (0.54 * 0.005_f64.powi(3) / 3.0);
    assert_close(shear(&slotted), each, 1e-12, "each wall by itself");
}

/// Thin walls: `I = 2 b t (h/2)² + 2 t h³/12` in the plane, the walls' own thickness aside.
#[test]
fn a_tube_bends_as_a_beam_of_thin_walls() {
    let tube = tube();
    let inertia = 0.2 * 0.005 * 0.1_f64.powi(2) / 2.0 + 0.005 * 0.1_f64.powi(3) / 6.0;
    let own = 2.0 * 0.2 * 0.005_f64.powi(3) / 12.0;
    let stiff = tube.stiffness();
    assert_close(stiff.bending[0], 1e10 * (inertia + own), 1e-12, "plane");
    let aside = 2.0 * 0.1 * 0.005 * 0.1_f64.powi(2) + 2.0 * 0.005 * 0.2_f64.powi(3) / 12.0;
    assert_close(stiff.bending[1], 1e10 * aside, 1e-12, "aside");
    assert_close(stiff.axial, 1e10 * 0.6 * 0.005, 1e-12, "along");
    assert_close(tube.axis().to_mm(), 50.0, 1e-12, "axis");
    // 100 N·m at 50 mm; a moment to the left pushes what lies to the left.
    let bent = tube.judge([0.0, 0.0, 0.0, 0.0, 0.0, 100.0], true);
    let stress = 100.0 * 0.05 / (inertia + own);
    assert_close(bent.uses[0].stress.to_pa(), stress, 1e-12, "sides");
    assert_eq!(bent.uses[2].stress.to_pa(), 0.0, "the board is pushed");
    let bent = tube.judge([0.0, 0.0, 0.0, 0.0, 0.0, 100.0], false);
    assert_close(bent.uses[2].stress.to_pa(), stress, 1e-12, "the board is pulled");
    // Pulled with 3 kN over 3000 mm².
    let pulled = tube.judge([3000.0, 0.0, 0.0, 0.0, 0.0, 0.0], true);
    assert_close(pulled.uses[1].stress.to_mpa(), 1.0, 1e-12, "back");
}

/// An isotropic plate: `k = 4` when it is pushed and square, `5.35` sheared and long, times `π² D/(b² t)`.
#[test]
fn a_panel_bows_as_plates_do() {
    // H is D in a plate that is alike both ways.
    let alike = Wall { shear: Stress::from_gpa(5.0), ..wall() };
    let (t, b) = (0.005_f64, 0.1);
    let unit = PI * PI * 10e9 * t * t / (12.0 * b * b);
    for waves in [1.0, 2.0, 3.0] {
        let square = Panel::new(mm(5.0), mm(100.0), mm(100.0 * waves), alike);
        assert_close(square.pushed(), 4.0 * unit, 1e-12, "pushed");
        assert!((square.sheared() / unit - 5.35).abs() < 0.03, "{}", square.sheared() / unit);
    }
    // Half as long as wide: (2 + 1/2)².
    let short = Panel::new(mm(5.0), mm(100.0), mm(50.0), alike);
    assert_close(short.pushed(), 6.25 * unit, 1e-12, "short");
    let unknown = Section { braces: None, ..tube() };
    assert_eq!(unknown.judge([0.0; 6], true).uses[5].ratio, None);
}

/// As holes shrink the ladder becomes the wall, and the longer they are the softer it is.
#[test]
fn holes_soften_the_tube_between_the_closed_and_the_open_one() {
    let holes = |length: f64| {
        let holes = Holes { pitch: mm(250.0), length: mm(length), width: mm(80.0) };
        Section { opening: Back::Holes(holes), ..tube() }
    };
    let twist = |section: &Section| section.stiffness().torsion;
    let closed = twist(&tube());
    let open = twist(&Section { opening: Back::Slotted(mm(80.0)), ..tube() });
    let [small, large] = [60.0, 180.0].map(|length| twist(&holes(length)));
    assert!(closed > small && small > large && large > open, "{closed} {small} {large} {open}");
    // Strips of 60 mm, 140 mm apart, bridges of 70 mm: by hand for a shear of 1 N.
    let bends = |depth: f64| 10e9 * 0.005 * depth.powi(3) / 12.0;
    let given = 0.18_f64.powi(3) / (24.0 * bends(0.06)) / 0.25
        + 0.25 * 0.08 / (12.0 * bends(0.07))
        + 1.0 / (4e9 * 0.005 * 0.14);
    let wall = 1.0 / (given * 0.14 * 4e9);
    assert_close(holes(180.0).sheared_back().to_m(), wall, 1e-12, "ladder");
    // What bends the strips: a flow of 1 kN/m over 200 mm on strips bent over 90 mm.
    let bent = holes(180.0).bent_strip(1000.0);
    assert_close(bent, 6.0 * 100.0 * 0.09 / (0.005 * 0.06 * 0.06), 1e-12, "strip");
}
