//! Partials of stiff and of stepped strings against two solutions that share nothing with the engine: finite
//! elements, and the roots of the characteristic equation of an ideal string in three pieces.

use std::sync::Arc;

use stringloft::engine::construction::MakeUp;
use stringloft::engine::material::{Material, Modulus, built_in};
use stringloft::engine::mechanics::{
    Core, bare_end_inharmonicity, inharmonicity, partial_cents, pitch, tension,
};
use stringloft::engine::units::{Force, Frequency, Length, LinearDensity, Stress};

#[path = "beams/beam.rs"]
mod beam;
#[path = "beams/stepped.rs"]
mod stepped;

use super::{assert_cents, assert_near, assert_prints, assert_within};
use beam::Beam;
pub use beam::a_beam_without_pull_sounds_as_euler_and_bernoulli_have_it;
use stepped::exact_shift;

/// A string of one gauge with the numbers that the beam needs.
struct Sample {
    what: &'static str,
    core: Core,
    density: LinearDensity,
    length: Length,
    pitch: Frequency,
}

impl Sample {
    fn pull(&self) -> Force {
        tension(self.density, self.length, self.pitch, Some(self.core))
    }

    /// The same string as a beam under a pull, its bending stiffness worked out here.
    fn beam(&self, pull_n: f64, elements: usize) -> Beam {
        let d = self.core.diameter.to_m();
        let area = std::f64::consts::PI / 4.0 * d * d;
        let modulus =
            self.core.modulus.base.to_pa() + self.core.modulus.per_stress_ratio * pull_n / area;
        let rigidity = modulus * area * d * d / 16.0;
        let mass = self.density.to_kg_per_m();
        Beam::uniform(self.length.to_m(), elements, mass, rigidity, pull_n)
    }
}

/// Plain strings over the compass of a harp, from lightly to very stiff; dimensions chosen for the test.
fn samples() -> Vec<Sample> {
    [
        ("nylon", 0.64, 110.0, 1396.913),
        ("nylon", 1.00, 448.0, 440.0),
        ("gut", 1.50, 700.0, 220.0),
        ("gut", 2.50, 1000.0, 110.0),
        ("fluorocarbon", 0.60, 300.0, 523.251),
        ("steel", 0.3048, 200.0, 1046.502),
        ("steel", 0.30, 70.0, 3135.963),
        ("steel", 0.80, 150.0, 880.0),
        ("bronze", 0.70, 900.0, 130.813),
        ("yellow brass", 0.50, 400.0, 329.628),
    ]
    .map(|(key, d_mm, l_mm, hz)| {
        let material = material(key);
        let diameter = Length::from_mm(d_mm);
        let modulus: Modulus = material.modulus.as_ref().expect("built in").value;
        let string = MakeUp::plain(material, diameter).expect("the sample can be made");
        Sample {
            what: key,
            core: Core { diameter, modulus },
            density: string.linear_density(),
            length: Length::from_mm(l_mm),
            pitch: Frequency::from_hz(hz),
        }
    })
    .into()
}

fn material(key: &str) -> Arc<Material> {
    Arc::new(built_in().into_iter().find(|m| m.key == key).expect("the sample is built in"))
}

pub fn finer_elements_close_in_on_the_partials_of_a_stiff_string() {
    let sample = &samples()[5];
    let pull = sample.pull();
    let (b, f0) = law(sample, pull);
    for partial in [1_u32, 6, 12] {
        let n = f64::from(partial);
        let exact = n * f0 * (1.0 + b * n * n).sqrt();
        let miss = |elements| {
            let got = sample.beam(pull.to_n(), elements).partial(partial as usize);
            (got / exact - 1.0).abs()
        };
        let misses: Vec<f64> = [24, 48, 96].map(miss).into();
        // Cubic elements: half the size, a sixteenth of the error at most, until digits run out.
        for pair in misses.windows(2) {
            assert!(pair[1] < pair[0] / 15.0 || pair[1] < 1e-9, "partial {partial}: {misses:?}");
        }
        let finest = sample.beam(pull.to_n(), 192).partial(partial as usize);
        assert_near(exact, finest, 1e-7, format_args!("partial {partial}"));
    }
}

/// B and the pitch of the flexible string, as the engine has them.
fn law(sample: &Sample, pull: Force) -> (f64, f64) {
    let b = inharmonicity(sample.core, sample.length, pull);
    (b, pitch(sample.density, sample.length, pull, None).to_hz())
}

pub fn twelve_partials_of_every_plain_string_are_those_of_the_beam() {
    for sample in samples() {
        let pull = sample.pull();
        let beam = sample.beam(pull.to_n(), 288);
        let (b, f0) = law(&sample, pull);
        let first = beam.partial(1);
        for partial in 1..=12_u32 {
            let n = f64::from(partial);
            let got = beam.partial(partial as usize);
            let what = format!("{} {:?}, partial {partial}", sample.what, sample.core.diameter);
            assert_near(n * f0 * (1.0 + b * n * n).sqrt(), got, 1e-6, &what);
            let sharp = 1200.0 * (got / (n * first)).log2();
            assert_cents(partial_cents(b, partial) - sharp, 2e-3, &what);
        }
    }
}

pub fn the_tension_brings_the_beam_to_pitch() {
    for sample in samples() {
        let first = sample.beam(sample.pull().to_n(), 64).partial(1);
        assert_near(first, sample.pitch.to_hz(), 1e-6, sample.what);
        // A flexible string's tension would not do for the stiff ones.
        let flexible = tension(sample.density, sample.length, sample.pitch, None);
        let (b, _) = law(&sample, sample.pull());
        let sharp = sample.beam(flexible.to_n(), 64).partial(1);
        let over = sharp / sample.pitch.to_hz() - 1.0;
        assert_within(over, 0.2 * b..=b, format_args!("{}, flexible", sample.what));
    }
}

/// Worked out apart from this code: bare ends of a fiftieth of the length at both ends, core of 0.3 of the
/// mass. Exact shift of the pitch of partials 1, 6 and 12.
const STEPPED: [(u32, f64, f64); 3] =
    [(1, 3.678e-5, 1e-8), (6, 1.2471e-3, 1e-7), (12, 4.2509e-3, 1e-7)];

pub fn the_roots_of_a_stepped_string_are_the_ones_worked_out() {
    for (partial, printed, digit) in STEPPED {
        let shift = exact_shift(partial, 0.02, 0.3);
        assert_prints(shift, printed, digit, format_args!("partial {partial}"));
    }
}

pub fn elements_find_the_same_roots() {
    for (share, ratio) in [(0.02, 0.3), (0.01, 0.1), (0.05, 0.5)] {
        let beam = Beam::stepped(1.0, share, (0.002, 0.002 * ratio), 0.0, 80.0);
        let f0 = (80.0_f64 / 0.002).sqrt() / 2.0;
        for partial in 1..=12_u32 {
            let exact = f64::from(partial) * f0 * (1.0 + exact_shift(partial, share, ratio));
            let what = format!("{share}, {ratio}, partial {partial}");
            assert_near(beam.partial(partial as usize), exact, 1e-7, what);
        }
    }
}

/// The share by which the engine's law for bare ends raises a partial of a string without bending stiffness,
/// over that of the exact root.
fn law_over_exact(partial: u32, share: f64, ratio: f64) -> f64 {
    let length = Length::from_m(1.0);
    let end = bare_end_inharmonicity(Length::from_m(share), length, ratio);
    let b = 2.0 * end;
    let n = f64::from(partial);
    ((1.0 + b * n * n).sqrt() - 1.0) / exact_shift(partial, share, ratio)
}

/// The law is the first term for short ends. It gives too much, the more so the higher the partial: 0.2 % for
/// the first, 6 % for the sixth and 24 % for the twelfth at a fiftieth of the length and 0.3 of the mass.
pub fn the_law_of_bare_ends_is_true_for_low_partials_and_errs_upward() {
    for (partial, least, most) in
        [(1, 0.001, 0.003), (6, 0.05, 0.07), (8, 0.09, 0.12), (12, 0.23, 0.26)]
    {
        let over = law_over_exact(partial, 0.02, 0.3) - 1.0;
        assert_within(over, least..=most, format_args!("partial {partial}"));
    }
}

pub fn half_the_bare_end_has_a_quarter_of_the_error() {
    for ratio in [0.1, 0.3, 0.6] {
        for partial in [2, 4, 8] {
            let over = |share| law_over_exact(partial, share, ratio) - 1.0;
            let (long, short) = (over(0.01), over(0.005));
            let what = format!("partial {partial}, {ratio}");
            assert_within(short, 0.0..=0.05, &what);
            assert_within(long / short, 3.5..=4.6, what);
        }
    }
}

/// A stiff core with bare ends: the engine adds the two effects. Within a twentieth of the sharpness, the
/// beam that has both says the same of partial 8.
pub fn stiffness_and_bare_ends_add_up() {
    let core = Core {
        diameter: Length::from_mm(0.6),
        modulus: Modulus::constant(Stress::from_gpa(206.0)),
    };
    let (length, wound, ratio) = (Length::from_m(1.2), LinearDensity::from_g_per_m(6.9), 0.32);
    let pull = tension(wound, length, Frequency::from_hz(65.406), Some(core));
    let rigidity = 206e9 * std::f64::consts::PI / 64.0 * 0.6e-3_f64.powi(4);
    for bare_mm in [0.0, 10.0, 20.0] {
        let end = bare_end_inharmonicity(Length::from_mm(bare_mm), length, ratio);
        let b = inharmonicity(core, length, pull) + 2.0 * end;
        let mass = wound.to_kg_per_m();
        let share = bare_mm * 1e-3 / length.to_m();
        let beam = if share > 0.0 {
            Beam::stepped(length.to_m(), share, (mass, mass * ratio), rigidity, pull.to_n())
        } else {
            Beam::uniform(length.to_m(), 96, mass, rigidity, pull.to_n())
        };
        let sharp = 1200.0 * (beam.partial(8) / (8.0 * beam.partial(1))).log2();
        let what = format!("bare ends of {bare_mm} mm");
        assert_cents(partial_cents(b, 8) - sharp, 0.05 * sharp, &what);
        // Two cents are a tolerance of tuning; the first partial stays far within it.
        let flat = 1200.0 * (beam.partial(1) / 65.406).log2();
        assert_cents(flat, 0.1, what);
    }
}
