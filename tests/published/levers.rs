//! Levers and discs: where they stand, and what the push to the side does.

use std::f64::consts::LN_2;

use serde::Deserialize;
use stringloft::engine::construction::pull_of;
use stringloft::engine::lever::{ContactPlace, Stopped};
use stringloft::engine::material::Modulus;
use stringloft::engine::mechanics::Core;
use stringloft::engine::units::{Force, Length, Stress};

use super::reference::rows;
use super::{assert_cents, assert_near, assert_prints, assert_same};

/// A place is found to a millionth of a cent, and a cent is about a three-thousandth of it or more.
const FOUND: f64 = 1e-8;

#[derive(Deserialize)]
struct Row {
    material: String,
    gpa: f64,
    rise: f64,
    d_mm: f64,
    length_mm: f64,
    pull_n: f64,
    rigidity_n: f64,
    between_mm: f64,
    push_mm: f64,
    one_mm: Option<f64>,
    two_mm: Option<f64>,
    sharp_mm: Option<f64>,
    at_one: Option<AtOne>,
}

#[derive(Deserialize)]
struct AtOne {
    cents_per_mm: f64,
    pull_n: f64,
    nominal_error_cents: f64,
    room_mm: f64,
}

impl Row {
    fn string(&self) -> Stopped {
        let modulus = Modulus { base: Stress::from_gpa(self.gpa), per_stress_ratio: self.rise };
        Stopped {
            length: Length::from_mm(self.length_mm),
            tension: Force::from_n(self.pull_n),
            core: Some(Core { diameter: Length::from_mm(self.d_mm), modulus }),
            stretch_rigidity_n: self.rigidity_n,
            between_fixings: Length::from_mm(self.between_mm),
            push: Length::from_mm(self.push_mm),
        }
    }

    fn what(&self) -> String {
        format!("{} of {} mm, push {} mm", self.material, self.length_mm, self.push_mm)
    }
}

/// Where the library finds no place, the engine must say that there is none.
fn assert_place(found: Option<&ContactPlace>, expected_mm: Option<f64>, what: &str) {
    match (found, expected_mm) {
        (Some(place), Some(mm)) => assert_near(place.distance.to_mm(), mm, FOUND, what),
        (found, expected) => assert_same(found.is_some(), expected.is_some(), what),
    }
}

pub fn levers_stand_where_a_root_finder_puts_them() {
    for row in rows::<Row>("levers") {
        for (semitones, mm) in [(1, row.one_mm), (2, row.two_mm)] {
            let place = row.string().place(semitones).ok();
            assert_place(place.as_ref(), mm, &format!("{}, {semitones}", row.what()));
        }
    }
}

pub fn sharp_discs_stand_where_a_root_finder_puts_them() {
    for row in rows::<Row>("levers") {
        if let Some(one) = row.one_mm {
            let place = row.string().sharp_place(Length::from_mm(one)).ok();
            assert_place(place.as_ref(), row.sharp_mm, &row.what());
        }
    }
}

/// The slope of the library's side is a difference of fourth order.
pub fn what_a_lever_does_at_its_place_is_the_same() {
    for row in rows::<Row>("levers") {
        let Some(at) = row.at_one.as_ref() else { continue };
        let string = row.string();
        let place = string.place(1).expect("the library found one");
        let what = row.what();
        assert_near(place.cents_per_mm, at.cents_per_mm, 1e-6, &what);
        assert_near(string.pull(&place).to_n(), at.pull_n, FOUND, &what);
        assert_cents(place.nominal_error_cents - at.nominal_error_cents, 1e-6, &what);
        let room = string.room(&place, 2.0).expect("two cents are reached");
        assert_near(room.to_mm(), at.room_mm, 1e-6, what);
    }
}

/// Source: places of frets from the far end, `1 − 2^(−k/12)` of the length, standard; digits worked out.
pub fn without_a_push_levers_stand_as_frets_do() {
    let string = Stopped {
        length: Length::from_m(1.0),
        tension: Force::from_n(100.0),
        core: None,
        stretch_rigidity_n: 5_000.0,
        between_fixings: Length::from_m(1.2),
        push: Length::from_m(0.0),
    };
    for (semitones, printed) in (1..).zip([
        0.056_126, 0.109_101, 0.159_104, 0.206_299, 0.250_846, 0.292_893, 0.332_580, 0.370_039,
        0.405_396, 0.438_769, 0.470_268, 0.5,
    ]) {
        let place = string.place(semitones).expect("nothing stands in its way");
        assert_prints(place.distance.to_m(), printed, 1e-6, format_args!("{semitones}"));
    }
}

/// Worked out apart from this code: on 500 mm a semitone is 28.063 mm. Pushed aside there by 1 mm the string is
/// 18.871 µm longer, shared by 560 mm; then nylon (9 `GPa`, 100 `MPa`) sounds 2.63 cents too sharp, gut (6, 120) 1.46,
/// and steel (207, 800) 7.55, from the stretch alone and to the first order.
pub fn a_push_of_a_millimetre_sharpens_as_worked_out() {
    let diameter = Length::from_mm(1.0);
    for (what, gpa, mpa, cents) in
        [("nylon", 9.0, 100.0, 2.63), ("gut", 6.0, 120.0, 1.46), ("steel", 207.0, 800.0, 7.55)]
    {
        let rigidity = pull_of(Stress::from_gpa(gpa), diameter).to_n();
        let string = |push_mm: f64| Stopped {
            length: Length::from_mm(500.0),
            tension: pull_of(Stress::from_mpa(mpa), diameter),
            core: None,
            stretch_rigidity_n: rigidity,
            between_fixings: Length::from_mm(560.0),
            push: Length::from_mm(push_mm),
        };
        let place = string(0.0).place(1).expect("nothing stands in its way");
        assert_prints(place.distance.to_mm(), 28.063, 1e-3, what);
        let pushed = string(1.0);
        let rise = pushed.pull(&place).to_n() - pushed.tension.to_n();
        assert_prints(rise / rigidity * 560e3, 18.871, 1e-3, format_args!("{what}, µm"));
        let first_order = 600.0 / LN_2 * rise / pushed.tension.to_n();
        assert_prints(first_order, cents, 0.01, format_args!("{what}, cents"));
        // Left out: the second order, and the detour in the part that sounds.
        let sharp = pushed.raised_cents(place.distance).expect("on the string") - 100.0;
        assert_cents(sharp - cents, 0.05, what);
    }
}
