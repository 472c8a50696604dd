//! Strings weighed by ear against those of the engine.

use super::*;
use crate::engine::material::Modulus;
use crate::engine::mechanics::{self, Core};
use crate::testing::assert_close;

fn exact<T: Default>(value: T) -> Reading<T> {
    Reading { value, error: T::default() }
}

/// The other way round: the pitches are those that the engine gives a stiff string.
#[test]
fn two_loads_give_back_mass_and_modulus_of_a_stiff_string() {
    for (mm, gpa, g_per_m) in [(0.5, 200.0, 1.54), (1.2, 5.0, 1.3), (2.0, 3.0, 3.5)] {
        let length = Length::from_mm(400.0);
        let density = LinearDensity::from_g_per_m(g_per_m);
        let core = Core {
            diameter: Length::from_mm(mm),
            modulus: Modulus::constant(Stress::from_gpa(gpa)),
        };
        let at = |newtons: f64| {
            let pull = Force::from_n(newtons);
            let pitch = mechanics::pitch(density, length, pull, Some(core));
            (exact(pull), exact(pitch))
        };
        let said = two_loads(exact(length), at(60.0), at(95.0)).unwrap();
        assert_close(said.mass.value.to_g_per_m(), g_per_m, 1e-10, mm);
        let modulus = modulus(said.rigidity_n_m2, exact(Length::from_mm(mm))).unwrap();
        assert_close(modulus.value.to_gpa(), gpa, 1e-6, mm);
        let b = mechanics::inharmonicity(core, length, Force::from_n(60.0));
        let again = rigidity_n_m2(exact(b), exact(Force::from_n(60.0)), exact(length)).unwrap();
        assert_close(again.value, said.rigidity_n_m2.value, 1e-6, "by its inharmonicity");
    }
}

#[test]
fn the_same_load_twice_says_nothing() {
    let at = (exact(Force::from_n(50.0)), exact(Frequency::from_hz(200.0)));
    assert_eq!(two_loads(exact(Length::from_m(0.5)), at, at), None);
    let none = exact(Frequency::from_hz(0.0));
    assert_eq!(mass_per_metre(exact(Length::from_m(0.5)), exact(Force::from_n(5.0)), none), None);
}

#[test]
fn partials_that_scatter_widen_the_error_and_few_say_nothing() {
    let sound = |n: u32, off: f64| {
        let n2 = f64::from(n * n);
        (n, Frequency::from_hz(f64::from(n) * 220.0 * (1.0 + 3e-4 * n2).sqrt() * (1.0 + off)))
    };
    let even: Vec<_> = (1..=10).map(|n| sound(n, 0.0)).collect();
    let off: Vec<_> = (1..=10).map(|n| sound(n, if n % 2 == 0 { 1e-3 } else { -1e-3 })).collect();
    let (even_heard, off_heard) = (inharmonicity(&even).unwrap(), inharmonicity(&off).unwrap());
    assert!(even_heard.inharmonicity_b.error < 1e-12);
    assert_close(even_heard.first.to_hz(), 220.0 * 1.0003_f64.sqrt(), 1e-12, "first");
    let Reading { value, error } = off_heard.inharmonicity_b;
    assert!(error > 1e-5 && (value - 3e-4).abs() < error, "{value} ± {error}");
    assert_eq!(inharmonicity(&even[..2]), None);
    let one = (3, Frequency::from_hz(660.0));
    assert_eq!(inharmonicity(&[one, one, one]), None);
}
