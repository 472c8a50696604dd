//! What measurements say of a material: its density from weighing, its strength from breaking, its
//! modulus from stretching.

use std::f64::consts::PI;

use super::units::{Density, Force, Length, LinearDensity, Mass, Stress};

/// A reading and how far it may be off, to either side.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Reading<T> {
    /// What was read.
    pub value: T,
    /// How far it may be off.
    pub error: T,
}

/// The density of a round filament from the mass of a measured length.
///
/// `ρ = m / (L · π d² / 4)`: for one filament, or wire without a winding, of the same diameter all
/// along. Take the diameter at several places and use the mean.
///
/// # Source
///
/// The definition of density and the volume of a cylinder; worked out here.
///
/// # Example
///
/// Half a square millimetre of 2 m is 1 cm³; at 1.3 g that is 1300 kg/m³. A filament of that section
/// is √(2/π) mm thick.
///
/// ```
/// use stringloft::engine::measured::density_of_length;
/// use stringloft::engine::units::{Length, Mass};
///
/// let diameter = Length::from_mm((2.0 / std::f64::consts::PI).sqrt());
/// let density = density_of_length(Mass::from_g(1.3), Length::from_m(2.0), diameter);
/// assert!((density.to_kg_per_m3() - 1300.0).abs() < 1e-9);
/// ```
pub fn density_of_length(mass: Mass, length: Length, diameter: Length) -> Density {
    let per_metre = LinearDensity::from_kg_per_m(mass.to_kg() / length.to_m());
    density_of_mass_per_metre(per_metre, diameter)
}

/// The density of a round filament whose mass per metre is known.
///
/// `ρ = μ / (π d² / 4)`: as [`density_of_length`].
///
/// # Source
///
/// As [`density_of_length`].
///
/// # Example
///
/// A section of 1 mm² holds 1 cm³ in a metre: 8.8 g/m are 8800 kg/m³. It is 2/√π mm thick.
///
/// ```
/// use stringloft::engine::measured::density_of_mass_per_metre;
/// use stringloft::engine::units::{Length, LinearDensity};
///
/// let diameter = Length::from_mm(2.0 / std::f64::consts::PI.sqrt());
/// let density = density_of_mass_per_metre(LinearDensity::from_g_per_m(8.8), diameter);
/// assert!((density.to_kg_per_m3() - 8800.0).abs() < 1e-9);
/// ```
pub fn density_of_mass_per_metre(mass_per_metre: LinearDensity, diameter: Length) -> Density {
    Density::from_kg_per_m3(mass_per_metre.to_kg_per_m() / area_m2(diameter))
}

/// How far a weighed density may be off, from the errors of the three readings.
///
/// `Δρ = ρ · √((Δm/m)² + (ΔL/L)² + (2 Δd/d)²)`: to the first order, for errors that know nothing of
/// each other. The diameter counts twice, so that it is nearly always the one that decides.
///
/// # Source
///
/// The law of propagation of uncertainty, JCGM 100:2008, section 5.1: from memory.
///
/// # Example
///
/// Errors of 2 % of the mass, 1 % of the length and 1 % of the diameter: √(2² + 1² + 2²) = 3 %.
///
/// ```
/// use stringloft::engine::measured::{Reading, density_error, density_of_length};
/// use stringloft::engine::units::{Length, Mass};
///
/// let mass = Reading { value: Mass::from_g(10.0), error: Mass::from_g(0.2) };
/// let length = Reading { value: Length::from_m(5.0), error: Length::from_cm(5.0) };
/// let diameter = Reading { value: Length::from_mm(1.0), error: Length::from_mm(0.01) };
/// let density = density_of_length(mass.value, length.value, diameter.value);
/// let error = density_error(mass, length, diameter);
/// assert!((error.to_kg_per_m3() / density.to_kg_per_m3() - 0.03).abs() < 1e-12);
/// ```
pub fn density_error(
    mass: Reading<Mass>,
    length: Reading<Length>,
    diameter: Reading<Length>,
) -> Density {
    let density = density_of_length(mass.value, length.value, diameter.value);
    let of_mass = mass.error.to_kg() / mass.value.to_kg();
    let of_length = length.error.to_m() / length.value.to_m();
    let of_diameter = 2.0 * diameter.error.to_m() / diameter.value.to_m();
    let ratio = of_mass.hypot(of_length).hypot(of_diameter);
    Density::from_kg_per_m3(density.to_kg_per_m3() * ratio)
}

/// What several breaks of one kind of string say.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Breaks {
    /// The strength of the weakest: the one to count on.
    pub least: Stress,
    /// The mean of all.
    pub mean: Stress,
    /// How far they scatter about the mean; `None` for a single break.
    pub deviation: Option<Stress>,
}

/// The strength of a material from the loads at which strings of one diameter broke; `None` without
/// a load.
///
/// `σ = F / (π d² / 4)` with the diameter of the slack string, as a strength is printed; the scatter
/// is the standard deviation of a sample, `√(Σ(σ − σ̄)² / (n − 1))`. A string that broke at a clamp or
/// a knot broke too early: what it gives is too low, and safe.
///
/// # Source
///
/// Force over first area: the definition of tensile strength in ISO 6892-1, from memory. Of the
/// standard deviation: JCGM 100:2008, section 4.2.2, from memory.
///
/// # Example
///
/// Half a square millimetre breaks at 100, 104 and 108 N: 200, 208 and 216 MPa, so 200 MPa at least,
/// 208 MPa in the mean, and √((8² + 0 + 8²) / 2) = 8 MPa of scatter.
///
/// ```
/// use stringloft::engine::measured::strength_of_breaks;
/// use stringloft::engine::units::{Force, Length};
///
/// let diameter = Length::from_mm((2.0 / std::f64::consts::PI).sqrt());
/// let breaks = strength_of_breaks(&[104.0, 100.0, 108.0].map(Force::from_n), diameter).unwrap();
/// assert!((breaks.least.to_mpa() - 200.0).abs() < 1e-9);
/// assert!((breaks.mean.to_mpa() - 208.0).abs() < 1e-9);
/// assert!((breaks.deviation.unwrap().to_mpa() - 8.0).abs() < 1e-9);
/// ```
pub fn strength_of_breaks(loads: &[Force], diameter: Length) -> Option<Breaks> {
    let stresses: Vec<f64> = loads.iter().map(|load| load.to_n() / area_m2(diameter)).collect();
    let least = stresses.iter().copied().min_by(f64::total_cmp)?;
    let mut count = 0.0;
    let mut sum = 0.0;
    for stress in &stresses {
        count += 1.0;
        sum += stress;
    }
    let mean = sum / count;
    let squares: f64 = stresses.iter().map(|stress| (stress - mean).powi(2)).sum();
    let deviation = (stresses.len() > 1).then(|| Stress::from_pa((squares / (count - 1.0)).sqrt()));
    Some(Breaks { least: Stress::from_pa(least), mean: Stress::from_pa(mean), deviation })
}

/// The modulus of elasticity from a stretch test: how much longer a length grows by a step of load.
///
/// `E = ΔF · L / (ΔL · π d² / 4)`: the modulus at the pace at which the step was made and read.
/// Straight after the step it is the one over minutes; after weeks, creep included, the slow one. The
/// lengthening must be read on the string itself, away from knots and pins, which give way too.
///
/// # Source
///
/// Hooke's law: stress over strain; worked out here.
///
/// # Example
///
/// 1 mm² that carries 10 N more has 10 MPa more; 2 m that grow by 5 mm strain by 1/400; so 4 GPa.
///
/// ```
/// use stringloft::engine::measured::modulus_of_stretch;
/// use stringloft::engine::units::{Force, Length};
///
/// let diameter = Length::from_mm(2.0 / std::f64::consts::PI.sqrt());
/// let (step, stretch, length) = (Force::from_n(10.0), Length::from_mm(5.0), Length::from_m(2.0));
/// let modulus = modulus_of_stretch(step, stretch, length, diameter);
/// assert!((modulus.to_gpa() - 4.0).abs() < 1e-12);
/// ```
pub fn modulus_of_stretch(
    load_step: Force,
    elongation: Length,
    length: Length,
    diameter: Length,
) -> Stress {
    let strain = elongation.to_m() / length.to_m();
    Stress::from_pa(load_step.to_n() / area_m2(diameter) / strain)
}

fn area_m2(diameter: Length) -> f64 {
    PI / 4.0 * diameter.to_m().powi(2)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::engine::material::built_in;
    use crate::testing::assert_close;

    /// The diameter of a section of 1 mm².
    fn square_millimetre() -> Length {
        Length::from_mm(2.0 / PI.sqrt())
    }

    #[test]
    fn weighing_a_plain_string_gives_back_the_density_it_was_made_with() {
        for material in built_in() {
            let density = material.density.value;
            for mm in [0.3, 0.81, 2.5] {
                let diameter = Length::from_mm(mm);
                let per_metre = density.to_kg_per_m3() * PI / 4.0 * diameter.to_m().powi(2);
                let mass = Mass::from_kg(per_metre * 7.5);
                let back = density_of_length(mass, Length::from_m(7.5), diameter);
                assert_close(back.to_kg_per_m3(), density.to_kg_per_m3(), 1e-12, &material.key);
            }
        }
    }

    /// Source: `OpenStax` University Physics, volume 1, section 16.3: 2.00 m of a string of 0.06 kg,
    /// as the reference file describes it (seen): 0.03 kg/m.
    #[test]
    fn a_length_and_its_mass_per_metre_are_one_thing() {
        let diameter = square_millimetre();
        let weighed = density_of_length(Mass::from_kg(0.06), Length::from_m(2.0), diameter);
        let known = density_of_mass_per_metre(LinearDensity::from_kg_per_m(0.03), diameter);
        assert_close(weighed.to_kg_per_m3(), known.to_kg_per_m3(), 1e-15, "density");
        assert_close(known.to_kg_per_m3(), 30_000.0, 1e-12, "30 g in a cubic centimetre");
    }

    #[test]
    fn a_diameter_counts_twice_in_the_error() {
        let exact = Reading { value: Length::from_m(1.0), error: Length::default() };
        let mass = Reading { value: Mass::from_g(1.0), error: Mass::default() };
        let one_percent = Reading { value: Length::from_mm(1.0), error: Length::from_mm(0.01) };
        let density = density_of_length(mass.value, exact.value, one_percent.value);
        let error = density_error(mass, exact, one_percent);
        assert_close(error.to_kg_per_m3(), 0.02 * density.to_kg_per_m3(), 1e-12, "2 %");
        // The first order agrees with the density of the string that is 1 % thicker, to the second.
        let thicker = Length::from_mm(1.01);
        let other = density_of_length(mass.value, exact.value, thicker).to_kg_per_m3();
        assert!((density.to_kg_per_m3() - other - error.to_kg_per_m3()).abs() < 0.6);
    }

    #[test]
    fn the_weakest_string_counts() {
        let break_at = |loads: &[f64]| {
            let loads: Vec<Force> = loads.iter().map(|n| Force::from_n(*n)).collect();
            strength_of_breaks(&loads, square_millimetre())
        };
        assert_eq!(break_at(&[]), None);
        let one = break_at(&[300.0]).unwrap();
        assert_close(one.least.to_mpa(), 300.0, 1e-12, "one break");
        assert_eq!((one.mean, one.deviation), (one.least, None));
        let five = break_at(&[310.0, 290.0, 300.0, 310.0, 290.0]).unwrap();
        assert_close(five.least.to_mpa(), 290.0, 1e-12, "least");
        assert_close(five.mean.to_mpa(), 300.0, 1e-12, "mean");
        assert_close(five.deviation.unwrap().to_mpa(), 10.0, 1e-9, "four squares of 10 over four");
    }

    #[test]
    fn a_stretched_string_breaks_where_its_test_says() {
        let load = Force::from_n(120.0);
        let diameter = Length::from_mm(0.7);
        let strength = strength_of_breaks(&[load], diameter).unwrap().least;
        assert_close(strength.to_pa() * area_m2(diameter), 120.0, 1e-12, "back to the load");
        let modulus =
            modulus_of_stretch(load, Length::from_mm(10.0), Length::from_mm(500.0), diameter);
        assert_close(modulus.to_pa(), 50.0 * strength.to_pa(), 1e-12, "2 % of strain");
    }
}
