//! The engine against values from general-purpose libraries for numbers: mpmath with 50 digits, and `SciPy`.
//!
//! `scripts/reference_values.py` works them out from the physics and wrote `reference_values.json`, which says the
//! versions that it used.

use std::sync::{Arc, LazyLock};

use serde::Deserialize;
use serde::de::DeserializeOwned;
use serde_json::Value;
use stringloft::design::checks::CHECKS;
use stringloft::engine::construction::{Layer, MakeUp, Section};
use stringloft::engine::cut::{Allowance, cut_length};
use stringloft::engine::material::{Material, Modulus};
use stringloft::engine::mechanics::{
    Core, bending_loss, impedance, inharmonicity, partial_cents, pitch, pluck_stiffness,
    semitones_to_break, stress, tension,
};
use stringloft::engine::units::{Force, Frequency, Length, Stress};

use super::{assert_cents, assert_near, material_of, plain};

/// What both sides compute with all their digits differs by rounding alone.
pub const ROOM: f64 = 1e-11;

static VALUES: LazyLock<Value> = LazyLock::new(|| {
    serde_json::from_str(include_str!("reference_values.json")).expect("the script writes JSON")
});

/// The rows of a group.
pub fn rows<T: DeserializeOwned>(group: &str) -> Vec<T> {
    serde_json::from_value(VALUES[group].clone()).expect("the script writes rows of this form")
}

#[test]
fn the_register_names_the_versions_that_the_values_come_from() {
    let version = |library: &str| VALUES["versions"][library].as_str().expect("a version");
    let scipy = format!("SciPy {}", version("scipy"));
    let mpmath = format!("mpmath {}", version("mpmath"));
    let named =
        CHECKS.iter().filter(|check| check.source.english().contains("reference_values.py"));
    for check in named {
        assert!(
            check.source.english().contains(&scipy) || check.source.english().contains(&mpmath),
            "{}",
            check.id
        );
    }
}

#[derive(Deserialize)]
struct Stiff {
    material: String,
    kg_per_m3: f64,
    gpa: f64,
    rise: f64,
    mpa: f64,
    d_mm: f64,
    length_mm: f64,
    hz: f64,
    g_per_m: f64,
    pull_n: f64,
    stress_mpa: f64,
    b: f64,
    partial_cents: Vec<f64>,
    load_n: f64,
    semitones: f64,
    kg_per_s: f64,
    feel_n_per_m: f64,
}

impl Stiff {
    fn material(&self) -> Arc<Material> {
        let mut material = (*material_of(self.kg_per_m3, self.gpa, self.mpa)).clone();
        material.modulus = material.modulus.map(|mut modulus| {
            modulus.value.per_stress_ratio = self.rise;
            modulus
        });
        Arc::new(material)
    }

    fn core(&self) -> Core {
        let modulus = Modulus { base: Stress::from_gpa(self.gpa), per_stress_ratio: self.rise };
        Core { diameter: Length::from_mm(self.d_mm), modulus }
    }

    fn what(&self) -> String {
        format!("{} of {} mm", self.material, self.length_mm)
    }
}

pub fn stiff_strings_pull_and_feel_as_with_fifty_digits() {
    for row in rows::<Stiff>("stiff") {
        let string = plain(&row.material(), Length::from_mm(row.d_mm));
        let (density, length) = (string.linear_density(), Length::from_mm(row.length_mm));
        let what = row.what();
        assert_near(density.to_g_per_m(), row.g_per_m, ROOM, &what);
        let pull = tension(density, length, Frequency::from_hz(row.hz), Some(row.core()));
        assert_near(pull.to_n(), row.pull_n, ROOM, &what);
        assert_near(stress(pull, row.core().diameter).to_mpa(), row.stress_mpa, ROOM, &what);
        let given = Force::from_n(row.pull_n);
        let sounding = pitch(density, length, given, Some(row.core()));
        assert_near(sounding.to_hz(), row.hz, ROOM, &what);
        assert_near(impedance(given, density).to_kg_per_s(), row.kg_per_s, ROOM, &what);
        let feel = pluck_stiffness(given, length, 0.4).to_n_per_m();
        assert_near(feel, row.feel_n_per_m, ROOM, &what);
    }
}

pub fn stiff_strings_are_inharmonic_as_with_fifty_digits() {
    for row in rows::<Stiff>("stiff") {
        let length = Length::from_mm(row.length_mm);
        let b = inharmonicity(row.core(), length, Force::from_n(row.pull_n));
        assert_near(b, row.b, ROOM, row.what());
        for (n, cents) in (1..).zip(&row.partial_cents) {
            let off = partial_cents(row.b, n) - cents;
            assert_cents(off, 1e-9, format_args!("{}, partial {n}", row.what()));
        }
    }
}

pub fn strings_break_as_with_fifty_digits() {
    for row in rows::<Stiff>("stiff") {
        let string = plain(&row.material(), Length::from_mm(row.d_mm));
        let load = string.breaking_load().expect("a strength is given");
        assert_near(load.to_n(), row.load_n, ROOM, row.what());
        let left = semitones_to_break(Force::from_n(row.pull_n), load);
        assert_near(left, row.semitones, ROOM, row.what());
    }
}

#[derive(Deserialize)]
struct Helix {
    kg_per_m3: f64,
    core_mm: f64,
    thick_mm: f64,
    width_mm: f64,
    packing: f64,
    round: bool,
    g_per_m: f64,
}

pub fn windings_weigh_as_the_helix_integrated() {
    let steel = material_of(7850.0, 206.0, 2000.0);
    let mm = Length::from_mm;
    for row in rows::<Helix>("helices") {
        let (thickness, width) = (mm(row.thick_mm), mm(row.width_mm));
        let section = if row.round {
            Section::Round { diameter: thickness }
        } else {
            Section::Ribbon { thickness, width }
        };
        let material = material_of(row.kg_per_m3, 110.0, 900.0);
        let layer = Layer { material, section, packing_ratio: row.packing };
        let bare = (mm(0.0), mm(0.0));
        let string = MakeUp::wound(Arc::clone(&steel), mm(row.core_mm), vec![layer], bare)
            .expect("the test's string");
        let core = string.core_linear_density().expect("wound").to_g_per_m();
        let ours = string.linear_density().to_g_per_m() - core;
        assert_near(ours, row.g_per_m, ROOM, format_args!("{} mm", row.thick_mm));
    }
}

#[derive(Deserialize)]
struct Turns {
    turns: f64,
    pin_mm: f64,
    gauge_mm: f64,
    wound_mm: f64,
}

/// The engine leaves out that the string climbs along the pin: at most half of the square of gauge over
/// circumference.
pub fn turns_on_a_pin_take_the_string_that_a_helix_takes() {
    let mm = Length::from_mm;
    for row in rows::<Turns>("turns") {
        let with = |turns| {
            let parts = Allowance::new(mm(40.0), turns, mm(row.pin_mm), mm(90.0), mm(120.0));
            cut_length(mm(600.0), mm(row.gauge_mm), &parts.expect("the test's allowance")).to_mm()
        };
        let circumference = std::f64::consts::PI * (row.pin_mm + row.gauge_mm);
        let room = 0.5 * (row.gauge_mm / circumference).powi(2);
        let ours = with(row.turns) - with(0.0);
        assert_near(ours, row.wound_mm, room, format_args!("{} mm", row.gauge_mm));
    }
}

#[derive(Deserialize)]
struct Loss {
    b: f64,
    eta: f64,
    partial: u32,
    loss: f64,
}

pub fn partials_lose_what_a_complex_modulus_says() {
    for row in rows::<Loss>("losses") {
        let ours = bending_loss(row.b, row.partial, row.eta);
        assert_near(ours, row.loss, ROOM, format_args!("{}, partial {}", row.b, row.partial));
    }
}
