//! Strings weighed by ear against draws, a root finder and a curve fit of `SciPy`.

use serde::Deserialize;
use stringloft::engine::measured::Reading;
use stringloft::engine::pitch::ratio;
use stringloft::engine::settling::by_ear::{inharmonicity, mass_per_metre, modulus, two_loads};
use stringloft::engine::units::{Force, Frequency, Length};

#[derive(Deserialize)]
struct Values {
    strings: Vec<Weighed>,
    partials: Vec<Partials>,
}

#[derive(Deserialize)]
struct Weighed {
    name: String,
    length_mm: f64,
    diameter_mm: f64,
    pulls_n: [f64; 2],
    pitches_hz: [f64; 2],
    errors: Errors,
    mass_g_per_m: f64,
    modulus_gpa: f64,
    mass_error_g_per_m: f64,
    modulus_error_gpa: f64,
    one_load_mass_g_per_m: f64,
    one_load_error_g_per_m: f64,
}

#[derive(Deserialize)]
struct Errors {
    length_mm: f64,
    pull_n: [f64; 2],
    cents: f64,
    diameter_mm: f64,
}

#[derive(Deserialize)]
struct Partials {
    hertz: Vec<f64>,
    b: f64,
    error: f64,
}

fn values() -> Values {
    serde_json::from_str(include_str!("fitted.json")).expect("the script writes this form")
}

fn near(got: f64, wanted: f64, ratio: f64, what: &str) {
    assert!(
        (got - wanted).abs() <= ratio * wanted.abs(),
        "{what}: {got}, the library has {wanted}"
    );
}

/// Source: `SciPy`, `fsolve`; the errors by 200,000 draws, whose own scatter is half a per cent, and which bend where errors
/// are large.
#[test]
fn two_loads_weigh_a_string_as_a_root_finder_does() {
    for string in values().strings {
        let at = |which: usize| {
            let pull = Reading {
                value: Force::from_n(string.pulls_n[which]),
                error: Force::from_n(string.errors.pull_n[which]),
            };
            let hertz = string.pitches_hz[which];
            let pitch = Reading {
                value: Frequency::from_hz(hertz),
                error: Frequency::from_hz(hertz * (ratio(string.errors.cents) - 1.0)),
            };
            (pull, pitch)
        };
        let length = Reading {
            value: Length::from_mm(string.length_mm),
            error: Length::from_mm(string.errors.length_mm),
        };
        let diameter = Reading {
            value: Length::from_mm(string.diameter_mm),
            error: Length::from_mm(string.errors.diameter_mm),
        };
        let name = &string.name;
        let said = two_loads(length, at(0), at(1)).unwrap();
        near(said.mass.value.to_g_per_m(), string.mass_g_per_m, 1e-8, name);
        near(said.mass.error.to_g_per_m(), string.mass_error_g_per_m, 0.02, name);
        let modulus = modulus(said.rigidity_n_m2, diameter).unwrap();
        near(modulus.value.to_gpa(), string.modulus_gpa, 1e-6, name);
        near(modulus.error.to_gpa(), string.modulus_error_gpa, 0.04, name);
        let (pull, pitch) = at(0);
        let one = mass_per_metre(length, pull, pitch).unwrap();
        near(one.value.to_g_per_m(), string.one_load_mass_g_per_m, 1e-12, name);
        near(one.error.to_g_per_m(), string.one_load_error_g_per_m, 0.02, name);
    }
}

/// Source: `SciPy`, `curve_fit` on the partials themselves, where here a line is laid through their squares: both within a
/// twentieth of the error.
#[test]
fn partials_give_the_inharmonicity_of_a_curve_fit() {
    for heard in values().partials {
        let partials: Vec<(u32, Frequency)> =
            (1..).zip(heard.hertz.iter().map(|hertz| Frequency::from_hz(*hertz))).collect();
        let said = inharmonicity(&partials).unwrap().inharmonicity_b;
        let off = (said.value - heard.b).abs();
        assert!(off <= 0.05 * heard.error, "{} for {}", said.value, heard.b);
        near(said.error, heard.error, 0.05, "error");
    }
}
