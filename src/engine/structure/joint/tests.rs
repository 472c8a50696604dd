//! Joints by hand.

use super::fasteners::johansen;
use super::*;
use crate::engine::structure::wood::Margins;
use crate::testing::assert_close;

fn mpa(value: f64) -> Option<Stress> {
    Some(Stress::from_mpa(value))
}

fn wood() -> JointWood {
    JointWood {
        allowable: Allowable {
            bending: mpa(30.0),
            compression_along: mpa(15.0),
            compression_across: mpa(5.0),
            shear: mpa(5.0),
            tension_across: mpa(1.0),
            modulus: Some(Stress::from_gpa(12.0)),
            least_modulus: Some(Stress::from_gpa(5.0)),
            margins: Margins::of_characteristic(0.5),
        },
        density: Some(Density::from_kg_per_m3(700.0)),
        is_softwood: false,
        rolling: mpa(2.0),
    }
}

fn joint() -> Joint {
    Joint {
        section: Rectangle::new(Length::from_mm(50.0), Length::from_mm(80.0)).unwrap(),
        is_glued: false,
        across_the_grain: false,
        tenon: None,
        fasteners: None,
        plates: None,
        wood: wood(),
    }
}

fn fasteners(kind: Fastener, count: usize) -> Fasteners {
    let mm = Length::from_mm;
    Fasteners { kind, count, diameter: mm(10.0), depth: mm(50.0), apart: mm(40.0), across: mm(0.0) }
}

fn of(verdict: &Verdict, aspect: Aspect) -> Use {
    *verdict.uses.iter().find(|used| used.aspect == aspect).expect("it is judged")
}

/// 4 kN on half of 80 mm carries 80 N·m; of 100 N·m the rest is 20.
#[test]
fn faces_bear_a_push_aside_of_their_middle_and_the_rest_is_held() {
    let held = Joint { fasteners: Some(fasteners(Fastener::Bolts, 2)), ..joint() };
    let closed = held.judge([-4000.0, 0.0, 0.0, 0.0, 0.0, 80.0]);
    assert!(closed.uses.iter().all(|used| !matches!(used.aspect, Aspect::OpeningOn(_))));
    // 4 kN on 50 by 40 mm.
    assert_close(closed.uses[0].stress.to_mpa(), 2.0, 1e-12, "pressed");
    let open = held.judge([-4000.0, 0.0, 0.0, 0.0, 0.0, 100.0]);
    let opening = of(&open, Aspect::OpeningOn(Carrier::Bolts));
    // Bolts 20 mm to either side of the middle, pressed about a line 20 mm from it: arms 0 and 40 mm.
    let force = 20.0 / 0.04;
    assert_close(opening.stress.to_mpa(), force / (25.0 * std::f64::consts::PI), 1e-12, "bolt");
    assert_close(open.uses[0].stress.to_mpa(), (4000.0 + 20.0 / 0.04) / 2000.0, 1e-12, "pressed");
    // Nothing holds it: told as gaping, without a limit.
    let bare = Joint { is_glued: true, wood: JointWood::default(), ..joint() };
    let bare = bare.judge([0.0, 0.0, 0.0, 0.0, 0.0, 16.0]);
    let opening = of(&bare, Aspect::Opening);
    assert_eq!(opening.ratio, None);
    assert_close(opening.stress.to_mpa(), 6.0 * 16e3 / (50.0 * 6400.0), 1e-12, "gapes");
}

/// Two forces of 1 kN at 40 mm make 40 N·m; with 1 kN across shared by both.
#[test]
fn a_twist_is_a_couple_of_fasteners() {
    let two = fasteners(Fastener::Bolts, 2);
    assert_close(two.pushed((0.0, 0.0), 40.0).unwrap(), 1000.0, 1e-12, "couple");
    assert_close(two.pushed((1000.0, 0.0), 40.0).unwrap(), 1500.0, 1e-12, "with a push");
    assert_eq!(fasteners(Fastener::Bolts, 1).pushed((0.0, 0.0), 40.0), None);
    let four = Fasteners { across: Length::from_mm(30.0), ..fasteners(Fastener::Bolts, 4) };
    // Each 25 mm from the middle.
    assert_close(four.pushed((0.0, 0.0), 40.0).unwrap(), 400.0, 1e-12, "four");
    assert_close(four.polar(), 4.0 * 0.025 * 0.025, 1e-12, "polar");
    // A row of three beside a plate: 40 mm apart, the outer ones bear a moment.
    let row = fasteners(Fastener::Screws, 3);
    assert_close(row.in_a_row(300.0, 0.0, 0.0).unwrap(), 100.0, 1e-12, "pulled");
    assert_close(row.in_a_row(0.0, 0.0, 8.0).unwrap(), 100.0, 1e-12, "turned");
}

/// The ways of the standard by hand, `f_h d t` being 1 kN: a stout fastener in equal parts turns at `(√8 − 2)/2` of it,
/// a slender one bends in both at `1.15 √(2 M f d)`.
#[test]
fn fasteners_give_in_the_ways_of_the_standard() {
    let stout = johansen(10.0, 1.0, (10.0, 10.0), 1e9);
    assert_close(stout, 1000.0 * (8.0_f64.sqrt() - 2.0) / 2.0, 1e-12, "turned");
    let slender = johansen(10.0, 1.0, (1000.0, 10.0), 500.0);
    assert_close(slender, 1.15 * (2.0 * 500.0 * 100.0_f64).sqrt(), 1e-12, "bent twice");
    // Bent once: 1.05/4 [√(12 + 32 M/(f d t²)) − 2] with M/(f d t²) = 1/8, and the other way round.
    for (pressed, ratio) in [(10.0, 2.0), (20.0, 0.5)] {
        let once = johansen(pressed, ratio, (10.0, 10.0), 10_000.0 / 8.0);
        assert_close(once, 525.0, 1e-12, "bent once");
    }
}

#[test]
fn what_is_thicker_or_deeper_bears_more() {
    for kind in [Fastener::Dowels, Fastener::Bolts, Fastener::Screws] {
        let thin = fasteners(kind, 2);
        let thick = Fasteners { diameter: Length::from_mm(12.0), ..thin };
        let deep = Fasteners { depth: Length::from_mm(70.0), ..thin };
        let (pull, push) = (thin.withdrawal(&wood()).unwrap(), thin.lateral(&wood()).unwrap());
        assert!(thick.withdrawal(&wood()).unwrap() > pull, "{kind:?}");
        assert!(thick.lateral(&wood()).unwrap() > push, "{kind:?}");
        assert!(deep.withdrawal(&wood()).unwrap() >= pull, "{kind:?}");
        assert!(pull > 100.0 && push > 100.0 && pull < 2e4 && push < 1e4, "{kind:?}");
        let unknown = JointWood { density: None, ..wood() };
        assert_eq!(thin.lateral(&unknown), None);
    }
}

/// 40 N·m on cheeks of 80 by 60 mm: polar 2 (80·60³ + 60·80³)/12 = 8 million mm⁴, 0.2 and 0.15 MPa at a corner.
#[test]
fn the_cheeks_of_a_tenon_are_sheared_by_bending_in_their_plane() {
    let tenon = Some((Length::from_mm(20.0), Length::from_mm(60.0)));
    let held = Joint { tenon, ..joint() };
    let verdict = held.judge([0.0, 0.0, 0.0, 0.0, 0.0, 40.0]);
    let opening = of(&verdict, Aspect::OpeningOn(Carrier::Tenon));
    assert_close(opening.stress.to_mpa(), 0.25, 1e-12, "corner");
    assert_close(opening.ratio.unwrap(), 0.125, 1e-12, "of twice the tension across");
    // Sideways the tenon bends: 16 N·m on 80 by 20 mm are 3 MPa, and press its cheeks with 6·16/(80·60²) = 0.333 MPa.
    let verdict = held.judge([0.0, 0.0, 0.0, 0.0, 16.0, 0.0]);
    let opening = of(&verdict, Aspect::OpeningOn(Carrier::Tenon));
    assert_close(opening.stress.to_mpa(), 3.0, 1e-12, "bends");
    let sliding = of(&verdict, Aspect::SlidingOn(Carrier::Tenon));
    assert_eq!(sliding.stress.to_mpa(), 0.0);
}

/// 53 N·m sideways between plates 53 mm apart are 1 kN in each of 2.5 by 40 mm: 10 MPa.
#[test]
fn plates_bear_bending_sideways_as_a_couple() {
    let plates = Plates {
        thickness: Length::from_mm(3.0),
        width: Length::from_mm(40.0),
        allowable: Stress::from_mpa(150.0),
    };
    let mut screws = fasteners(Fastener::Screws, 4);
    (screws.apart, screws.diameter) = (Length::from_mm(20.0), Length::from_mm(5.0));
    let held = Joint { fasteners: Some(screws), plates: Some(plates), ..joint() };
    let verdict = held.judge([0.0, 0.0, 0.0, 0.0, 53.0, 0.0]);
    let opening = of(&verdict, Aspect::OpeningOn(Carrier::Plates));
    let screw = 1000.0 / 4.0 / screws.beside_plate(&wood()).unwrap();
    assert_close(opening.ratio.unwrap(), screw.max(1000.0 / 120.0 / 150.0), 1e-12, "couple");
}

#[test]
fn a_joint_turns_about_no_axis_freely_or_its_stiffness_is_not_known() {
    assert_eq!(joint().stiffness(), None);
    let one = Joint { fasteners: Some(fasteners(Fastener::Screws, 1)), ..joint() };
    assert_eq!(one.stiffness(), None, "one screw lets it twist");
    let mut two = Joint { fasteners: Some(fasteners(Fastener::Screws, 2)), ..joint() };
    let [_, _, _, twist, sideways, plane] = two.stiffness().expect("two screws");
    // 700^1.5 10/23 N/mm at 20 mm from the middle, and 25·10·50 N/mm at 12.5 and at 0 and 40 mm.
    let slip = 1e3 * 700.0_f64.powf(1.5) * 10.0 / 23.0;
    assert_close(twist, slip * 2.0 * 0.02 * 0.02, 1e-12, "twist");
    assert_close(sideways, 12.5e6 * 2.0 * 0.0125 * 0.0125, 1e-12, "sideways");
    assert_close(plane, 12.5e6 * 0.04 * 0.04, 1e-12, "in the plane");
    two.tenon = Some((Length::from_mm(20.0), Length::from_mm(60.0)));
    let firmer = two.stiffness().expect("both");
    assert!(firmer[3] > twist && firmer[4] > sideways && firmer[5] > plane);
}

/// `14·50 √(40/(1 − 40/80))` = 6261 N, of which 0.6/1.3 counts.
#[test]
fn fasteners_split_the_part_that_they_press_across_its_grain() {
    let single = Fasteners { apart: Length::from_mm(0.0), ..fasteners(Fastener::Screws, 2) };
    let section = joint().section;
    let used = single.splitting((1000.0, 0.0), section).unwrap();
    let bears = 700.0 * 80.0_f64.sqrt() * 0.6 / 1.3;
    assert_close(used.ratio.unwrap(), 1000.0 / bears, 1e-12, "splitting");
}
