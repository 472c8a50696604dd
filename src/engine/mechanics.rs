//! One string under tension: pull, stress, stiffness under the finger, inharmonicity, impedance.
//!
//! The string is taken as stiff and pinned at both ends. Its partials are
//! `f_n = n f₀ √(1 + B n²)` with `f₀ = √(T/μ)/(2L)` and `B = π² E I/(T L²)`, and the first of them is
//! what is tuned: `f₁ = f₀ √(1 + B)`.

use std::f64::consts::{LN_2, PI};

use super::construction::{MakeUp, area_m2};
use super::material::Modulus;
use super::units::{Force, Frequency, Impedance, Length, LinearDensity, Stiffness, Stress};

/// Cents for each unit of the natural logarithm of a tension, as the pitch goes with its root.
pub(super) const CENTS_PER_LOG: f64 = 600.0 / LN_2;

/// The part of a string that resists bending: a round core and its modulus in vibration. The
/// layers of a wound string are taken to add no stiffness.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Core {
    /// Diameter of the core, or of the whole plain string.
    pub diameter: Length,
    /// Modulus in vibration, which may rise with the stress.
    pub modulus: Modulus,
}

impl Core {
    /// The core of a make-up, where its modulus is known.
    pub(super) fn of(make_up: &MakeUp) -> Option<Self> {
        let (material, diameter) = make_up.core()?;
        Some(Self { diameter, modulus: material.modulus.as_ref()?.value })
    }

    /// Second moment of area, `π d⁴/64`, in m⁴.
    pub(super) fn inertia_m4(self) -> f64 {
        PI / 64.0 * self.diameter.to_m().powi(4)
    }

    /// Stress of the core under a pull.
    pub fn stress(self, tension: Force) -> Stress {
        stress(tension, self.diameter)
    }

    /// Bending stiffness `E I` under a pull, in N·m².
    fn rigidity_n_m2(self, tension: Force) -> f64 {
        self.modulus.at(self.stress(tension)).to_pa() * self.inertia_m4()
    }
}

/// The tension at which the first partial is at pitch: `T = 4 L² f² μ − π² E I/L²`.
///
/// With a modulus that rises with the stress, `E = E₀ + k T/A`, the equation stays linear in `T`:
/// `T = (4 L² f² μ − π² E₀ I/L²)/(1 + π² k I/(A L²))`. Without a core the string is flexible. The
/// result is not positive where the bar alone would sound at or above the pitch.
///
/// # Source
///
/// M. Mersenne's law with the stiffness of H. Fletcher, Normal vibration frequencies of a stiff piano
/// string, J. Acoust. Soc. Am. 36 (1964) 203; as in N. H. Fletcher and T. D. Rossing, *The Physics of
/// Musical Instruments*, 2nd ed., section 2.18 (from memory).
///
/// # Example
///
/// Waves run at 200 m/s on half a metre that sounds 200 Hz, so 1 g/m needs 40 N.
///
/// ```
/// use stringloft::engine::{mechanics::tension, units::{Frequency, Length, LinearDensity}};
///
/// let (density, length) = (LinearDensity::from_g_per_m(1.0), Length::from_mm(500.0));
/// let pull = tension(density, length, Frequency::from_hz(200.0), None);
/// assert!((pull.to_n() - 40.0).abs() < 1e-9);
/// ```
pub fn tension(
    density: LinearDensity,
    length: Length,
    pitch: Frequency,
    core: Option<Core>,
) -> Force {
    let wave_speed = 2.0 * length.to_m() * pitch.to_hz();
    let flexible = density.to_kg_per_m() * wave_speed * wave_speed;
    let Some(core) = core else { return Force::from_n(flexible) };
    let bend = PI * PI * core.inertia_m4() / (length.to_m() * length.to_m());
    let grows = core.modulus.per_stress_ratio * bend / area_m2(core.diameter);
    Force::from_n((flexible - core.modulus.base.to_pa() * bend) / (1.0 + grows))
}

/// The first partial of a string under a tension: the inverse of [`tension`].
pub fn pitch(
    density: LinearDensity,
    length: Length,
    tension: Force,
    core: Option<Core>,
) -> Frequency {
    let bend = core.map_or(0.0, |c| PI * PI * c.rigidity_n_m2(tension) / length.to_m().powi(2));
    Frequency::from_hz(
        ((tension.to_n() + bend) / density.to_kg_per_m()).sqrt() / (2.0 * length.to_m()),
    )
}

/// The vibrating length at which a string reaches a tension at a pitch.
///
/// `4 f² μ L⁴ − T L² − π² E I = 0`, a quadratic in `L²` with one positive root.
pub fn length_for_tension(
    density: LinearDensity,
    pitch: Frequency,
    tension: Force,
    core: Option<Core>,
) -> Length {
    let a = 4.0 * density.to_kg_per_m() * pitch.to_hz() * pitch.to_hz();
    let bend = core.map_or(0.0, |c| PI * PI * c.rigidity_n_m2(tension));
    let t = tension.to_n();
    Length::from_m(((t + (t * t + 4.0 * a * bend).sqrt()) / (2.0 * a)).sqrt())
}

/// Stress of a round section under a pull, `4 T/(π d²)`.
pub fn stress(tension: Force, diameter: Length) -> Stress {
    Stress::from_pa(tension.to_n() / area_m2(diameter))
}

/// Inharmonicity coefficient of a uniform stiff string, `B = π² E I/(T L²)`.
///
/// # Source
///
/// As [`tension`].
pub fn inharmonicity(core: Core, length: Length, tension: Force) -> f64 {
    PI * PI * core.rigidity_n_m2(tension) / (tension.to_n() * length.to_m() * length.to_m())
}

/// What a short bare end of the core adds to the inharmonicity coefficient of a wound string:
/// `(2π²/3)(1 − r)(a/L)³`, with `r` the mass per metre of the core over that of the wound part.
///
/// The small-end approximation of [`bare_end_cents`](super::stepped::bare_end_cents), which is exact
/// for a flexible string: Rayleigh's perturbation for `n a ≪ L`. It gives a coefficient that adds to
/// that of the core; above a tenth of a wavelength it gives too much (by a quarter for partial 12 at
/// `a/L` = 0.02).
///
/// # Source
///
/// Perturbation of a stepped ideal string, derived for this project; checked against the exact
/// stepped string in `tests/`.
///
/// # Example
///
/// A tenth of the string bare, its mass half of the wound part's, adds `π²/3000`.
///
/// ```
/// use stringloft::engine::{mechanics::bare_end_inharmonicity, units::Length};
///
/// let added = bare_end_inharmonicity(Length::from_mm(100.0), Length::from_mm(1000.0), 0.5);
/// assert!((added - 3.29e-3).abs() < 1e-5);
/// ```
pub fn bare_end_inharmonicity(bare: Length, length: Length, core_mass_ratio: f64) -> f64 {
    let share = bare.to_m() / length.to_m();
    2.0 * PI * PI / 3.0 * (1.0 - core_mass_ratio) * share.powi(3)
}

/// How sharp partial `n` is against `n` times the first partial, in cents:
/// `600 log₂((1 + B n²)/(1 + B))`.
pub fn partial_cents(inharmonicity: f64, partial: u32) -> f64 {
    let n = f64::from(partial);
    600.0 * ((1.0 + inharmonicity * n * n) / (1.0 + inharmonicity)).log2()
}

/// Loss factor of partial `n` from the bending of the core: `η_E B n²/(1 + B n²)`.
///
/// It is the share of the stiffness that bending has in the partial, times the loss factor `η_E` of the
/// core's material; `inharmonicity_of_core` is the `B` of [`inharmonicity`], without bare ends. Where
/// `B n²` is small it goes over into `(E I/T)(n π/L)² η_E`. The other losses are left out: to the air,
/// into the ends, and by friction within a winding; so it is the least that a partial can lose.
///
/// # Source
///
/// J. Woodhouse, Plucked guitar transients, Acta Acustica united with Acustica 90 (2004) 945, equation
/// 8, quoted second-hand; the form for small `B n²` in J. Woodhouse, *Euphonics*,
/// section 7.2.2, equation 1 (seen).
///
/// # Example
///
/// `B` = 0.01 gives partial 10 half of its stiffness by bending, and so half of the material's loss.
///
/// ```
/// use stringloft::engine::mechanics::bending_loss;
///
/// assert!((bending_loss(0.01, 10, 0.05) - 0.025).abs() < 1e-15);
/// ```
pub fn bending_loss(inharmonicity_of_core: f64, partial: u32, material_loss_factor: f64) -> f64 {
    let n = f64::from(partial);
    let bending = inharmonicity_of_core * n * n;
    material_loss_factor * bending / (1.0 + bending)
}

/// Inharmonicity at which listeners begin to hear a difference at a pitch:
/// `ln B = 2.57 ln f − 26.5`.
///
/// # Source
///
/// H. Järveläinen, V. Välimäki and M. Karjalainen, Audibility of the timbral effects of inharmonicity
/// in stringed instrument tones, Acoustics Research Letters Online 2 (2001) 79. From memory.
pub fn audible_inharmonicity(pitch: Frequency) -> f64 {
    (2.57 * pitch.to_hz().ln() - 26.5).exp()
}

/// Semitones from a tension up to the breaking load, the mass per metre taken as constant:
/// `6 log₂(breaking load/T)`. Negative past it.
pub fn semitones_to_break(tension: Force, breaking_load: Force) -> f64 {
    6.0 * (breaking_load.to_n() / tension.to_n()).log2()
}

/// Force per displacement that a finger meets at the share `pluck_ratio` of the length:
/// `T/(L β (1 − β))`, for small displacements.
///
/// # Source
///
/// Statics of a string pulled aside at one point.
pub fn pluck_stiffness(tension: Force, length: Length, pluck_ratio: f64) -> Stiffness {
    Stiffness::from_n_per_m(tension.to_n() / (length.to_m() * pluck_ratio * (1.0 - pluck_ratio)))
}

/// Characteristic impedance `√(T μ)`.
///
/// # Source
///
/// N. H. Fletcher and T. D. Rossing, *The Physics of Musical Instruments*, 2nd ed., chapter 2 (from
/// memory).
pub fn impedance(tension: Force, density: LinearDensity) -> Impedance {
    Impedance::from_kg_per_s((tension.to_n() * density.to_kg_per_m()).sqrt())
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::testing::assert_close;

    fn core(mm: f64, gpa: f64, per_stress_ratio: f64) -> Core {
        let modulus = Modulus { base: Stress::from_gpa(gpa), per_stress_ratio };
        Core { diameter: Length::from_mm(mm), modulus }
    }

    #[test]
    fn tension_and_pitch_undo_each_other() {
        let density = LinearDensity::from_g_per_m(2.5);
        for core in [None, Some(core(0.4, 206.0, 0.0)), Some(core(1.0, 4.5, 39.0))] {
            for mm in [150.0, 420.0, 1_000.0, 1_550.0] {
                for hz in [110.0, 440.0, 3_135.963] {
                    let (length, asked) = (Length::from_mm(mm), Frequency::from_hz(hz));
                    let pull = tension(density, length, asked, core);
                    let back = pitch(density, length, pull, core);
                    assert_close(back.to_hz(), hz, 1e-12, format_args!("{mm} mm at {hz} Hz"));
                }
            }
        }
    }

    #[test]
    fn length_and_tension_undo_each_other() {
        let density = LinearDensity::from_g_per_m(0.9);
        for core in [None, Some(core(1.0, 4.5, 39.0)), Some(core(0.6, 206.0, 0.0))] {
            for mm in [120.0, 448.0, 1_200.0] {
                let (length, hz) = (Length::from_mm(mm), Frequency::from_hz(440.0));
                let pull = tension(density, length, hz, core);
                let back = length_for_tension(density, hz, pull, core);
                assert_close(back.to_mm(), mm, 1e-12, format_args!("{mm} mm"));
            }
        }
    }

    #[test]
    fn an_octave_up_takes_four_times_the_pull_of_a_flexible_string() {
        let (density, length) = (LinearDensity::from_g_per_m(1.3), Length::from_mm(480.0));
        let pull = |hz| tension(density, length, Frequency::from_hz(hz), None).to_n();
        assert_close(pull(440.0), 4.0 * pull(220.0), 1e-12, "octave");
    }

    #[test]
    fn stiffness_lowers_the_pull_by_one_plus_b() {
        let density = LinearDensity::from_g_per_m(0.573);
        let (length, hz) = (Length::from_mm(200.0), Frequency::from_hz(1_046.502));
        let wire = core(0.3048, 207.0, 0.0);
        let flexible = tension(density, length, hz, None).to_n();
        let stiff = tension(density, length, hz, Some(wire));
        let b = inharmonicity(wire, length, stiff);
        assert_close(stiff.to_n(), flexible / (1.0 + b), 1e-12, "T (1 + B)");
    }

    /// The second form of the source: `(n d/L)² π² E η_E/(64 ρ γ²)`, with `γ = L f` of the flexible string.
    #[test]
    fn bending_loss_is_the_same_from_gauge_and_pitch() {
        let (d, length, rho, e, hz) = (1e-3, 0.448, 1140.0, 11.41e9, 440.0);
        let density = LinearDensity::from_kg_per_m(PI / 4.0 * d * d * rho);
        let pull = tension(density, Length::from_m(length), Frequency::from_hz(hz), None);
        let b = inharmonicity(core(1.0, 11.41, 0.0), Length::from_m(length), pull);
        for partial in [1_u32, 5, 12] {
            let share = f64::from(partial) * d / length;
            let speed = length * hz;
            let expected = share * share * PI * PI * e * 0.02 / (64.0 * rho * speed * speed);
            // As good as the share of bending is small.
            let bending = b * f64::from(partial * partial);
            let exact = expected / (1.0 + bending);
            assert_close(bending_loss(b, partial, 0.02), exact, 1e-12, partial);
        }
    }

    #[test]
    fn a_bar_that_sounds_above_the_pitch_has_no_tension() {
        let thick = core(5.0, 206.0, 0.0);
        let density = LinearDensity::from_g_per_m(154.0);
        let pull = tension(density, Length::from_mm(60.0), Frequency::from_hz(100.0), Some(thick));
        assert!(pull.to_n() < 0.0);
    }

    #[test]
    fn a_semitone_below_breaking_is_a_share_of_two_to_the_minus_a_sixth() {
        let at =
            |share: f64| semitones_to_break(Force::from_n(share * 100.0), Force::from_n(100.0));
        assert_close(at((-1.0_f64 / 6.0).exp2()), 1.0, 1e-12, "one semitone");
        assert_close(at(0.25), 12.0, 1e-12, "an octave");
        assert!(at(1.1) < 0.0);
    }

    #[test]
    fn a_pluck_in_the_middle_meets_four_times_pull_over_length() {
        let k = pluck_stiffness(Force::from_n(100.0), Length::from_mm(500.0), 0.5);
        assert_close(k.to_n_per_m(), 800.0, 1e-12, "middle");
        let near = pluck_stiffness(Force::from_n(100.0), Length::from_mm(500.0), 0.2);
        let far = pluck_stiffness(Force::from_n(100.0), Length::from_mm(500.0), 0.8);
        assert_close(near.to_n_per_m(), far.to_n_per_m(), 1e-12, "the two sides");
    }
}
