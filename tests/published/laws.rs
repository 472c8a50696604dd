//! M. Mersenne's laws, on strings over the compass of a harp: what length, pitch and gauge do to the pull.

use std::sync::Arc;

use stringloft::engine::construction::MakeUp;
use stringloft::engine::material::Material;
use stringloft::engine::mechanics::{pitch, stress, tension};
use stringloft::engine::units::{Force, Frequency, Length};

use super::{assert_near, built_in_material, plain};

/// Digits are lost only in the last places of the numbers.
const ROOM: f64 = 1e-12;

/// Material, length in mm and pitch in Hz.
fn strings() -> impl Iterator<Item = (Arc<Material>, Length, Frequency)> {
    let materials =
        ["nylon", "gut", "steel", "phosphor bronze"].map(|name| Arc::new(built_in_material(name)));
    let places =
        [(70.0, 3135.963), (200.0, 1046.502), (450.0, 440.0), (900.0, 130.813), (1500.0, 32.703)];
    materials.into_iter().flat_map(move |material| {
        places.map(|(mm, hz)| (Arc::clone(&material), Length::from_mm(mm), Frequency::from_hz(hz)))
    })
}

fn times(length: Length, factor: f64) -> Length {
    Length::from_m(length.to_m() * factor)
}

fn gauge(mm: f64) -> impl Fn(&Arc<Material>) -> MakeUp {
    move |material| plain(material, Length::from_mm(mm))
}

/// Source: M. Mersenne, Harmonie universelle (1636); from memory. The pitch of a flexible string goes
/// inversely with its length and with the root of the pull.
pub fn twice_the_length_sounds_an_octave_lower() {
    for (material, length, asked) in strings() {
        let density = gauge(0.8)(&material).linear_density();
        let pull = tension(density, length, asked, None);
        let hz = |factor, pull| pitch(density, times(length, factor), pull, None).to_hz();
        assert_near(hz(1.0, pull), asked.to_hz(), ROOM, &material.key);
        assert_near(2.0 * hz(2.0, pull), asked.to_hz(), ROOM, &material.key);
        let fourfold = Force::from_n(4.0 * pull.to_n());
        assert_near(hz(1.0, fourfold), 2.0 * asked.to_hz(), ROOM, &material.key);
    }
}

/// Source: as above. The pull goes with the squares of length, pitch and diameter.
pub fn the_pull_goes_with_the_square_of_length_pitch_and_gauge() {
    for (material, length, asked) in strings() {
        let pull = |mm: f64, length, factor: f64| {
            let asked = Frequency::from_hz(asked.to_hz() * factor);
            tension(gauge(mm)(&material).linear_density(), length, asked, None).to_n()
        };
        let one = pull(0.6, length, 1.0);
        assert_near(pull(0.6, times(length, 3.0), 1.0), 9.0 * one, ROOM, &material.key);
        assert_near(pull(0.6, length, 2.0), 4.0 * one, ROOM, &material.key);
        assert_near(pull(1.2, length, 1.0), 4.0 * one, ROOM, &material.key);
    }
}

/// Source: N. Lynch-Aird and J. Woodhouse, Materials 10 (2017) 497, equation 1: `σ = ρ (2 L f)²`, whatever the
/// gauge; read.
pub fn the_stress_of_a_flexible_string_is_the_same_for_every_gauge() {
    for (material, length, asked) in strings() {
        let wave_speed = 2.0 * length.to_m() * asked.to_hz();
        let by_the_equation = material.density.value.to_kg_per_m3() * wave_speed * wave_speed;
        for mm in [0.3, 0.6, 1.8] {
            let pull = tension(gauge(mm)(&material).linear_density(), length, asked, None);
            let pascals = stress(pull, Length::from_mm(mm)).to_pa();
            assert_near(pascals, by_the_equation, ROOM, &material.key);
        }
    }
}
