//! What a string loses to the air that it swings through.

use std::f64::consts::{PI, SQRT_2};

use crate::engine::construction::area_m2;
use crate::engine::units::{Density, Frequency, Length, LinearDensity};

/// Density of dry air at 20 degrees Celsius and 1013 hPa. Source: the gas law with 287 J/(kg K); worked out here.
pub const AIR: Density = Density::from_kg_per_m3(1.204);
/// Kinematic viscosity of that air, in m²/s: 18.1 µPa s over its density. From memory.
pub const AIR_VISCOSITY_M2_PER_S: f64 = 1.51e-5;

/// Stokes' number of a cylinder that swings: `M = (r/2) √(2π f/ν)`, its radius against the layer of air that sticks
/// to it.
///
/// # Source
///
/// As [`air_loss`].
///
/// # Example
///
/// A steel wire of 0.40 mm at 440 Hz:
///
/// ```
/// use stringloft::engine::{sound::air::stokes_number, units::{Frequency, Length}};
///
/// let number = stokes_number(Length::from_mm(0.40), Frequency::from_hz(440.0));
/// assert!((number - 1.353).abs() < 5e-4);
/// ```
pub fn stokes_number(diameter: Length, frequency: Frequency) -> f64 {
    0.25 * diameter.to_m() * (2.0 * PI * frequency.to_hz() / AIR_VISCOSITY_M2_PER_S).sqrt()
}

/// The drag that is in step with the velocity, over that of the air's own mass:
/// `k' = √2/M + 1/(2 M²) − √2/(32 M³)`.
///
/// The series of the exact drag for large `M`; its next term goes with the fifth power. At `M` = 1 it gives 0.3 %
/// too little, above 1.4 it is right to one in a thousand, and strings of harps lie above 1. Below 0.5 the third term is
/// held where it is, so that the drag stays above that of the larger `M`.
///
/// # Source
///
/// G. G. Stokes, On the Effect of the Internal Friction of Fluids on the Motion of Pendulums, Transactions of the
/// Cambridge Philosophical Society 9 (1850) 8, section III; its table as in *Mathematical and Physical Papers* 3,
/// 1901, page 52 (seen). The third term follows from the exact drag by Bessel functions, worked out for this project;
/// all three are held against that table here and against the Bessel functions in `tests/sound`.
pub fn drag_ratio(stokes_number: f64) -> f64 {
    let over = 1.0 / stokes_number;
    SQRT_2 * over + 0.5 * over * over - SQRT_2 / 32.0 * over.min(2.0).powi(3)
}

/// Loss factor of a partial by the drag of the air: `η = (ρ_air π d²/4μ) k'`.
///
/// With it the amplitude falls as `exp(−π f η t)`, and the energy twice as fast. Holds for a round string whose swing
/// is small against its thickness or slow enough that the air does not break away; a string that is plucked hard loses
/// more at first. A wound string is taken as a smooth cylinder of its overall diameter.
///
/// # Source
///
/// The drag of [`drag_ratio`] on a mass per metre; N. H. Fletcher and T. D. Rossing, *The Physics of Musical
/// Instruments*, 2nd ed., section 2.12, have the same drag (from memory).
///
/// # Example
///
/// The swing of a steel wire of 0.40 mm at 440 Hz falls to a third in 3.6 s, if the air takes it all; its energy in
/// half of that.
///
/// ```
/// use std::f64::consts::PI;
/// use stringloft::engine::{sound::air::air_loss, units::{Frequency, Length, LinearDensity}};
///
/// let density = LinearDensity::from_kg_per_m(7850.0 * PI / 4.0 * 0.4e-3 * 0.4e-3);
/// let eta = air_loss(Length::from_mm(0.40), density, Frequency::from_hz(440.0));
/// let decay_s = 1.0 / (PI * 440.0 * eta);
/// assert!((decay_s - 3.63).abs() < 0.01);
/// ```
pub fn air_loss(diameter: Length, density: LinearDensity, frequency: Frequency) -> f64 {
    let carried = AIR.to_kg_per_m3() * area_m2(diameter) / density.to_kg_per_m();
    carried * drag_ratio(stokes_number(diameter, frequency))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::testing::assert_close;

    /// Source: G. G. Stokes, *Mathematical and Physical Papers* 3, 1901, page 52: his table of `k'` (seen), printed to
    /// four digits. The series leaves out what goes with the fifth power.
    #[test]
    fn the_drag_is_that_of_the_table_of_stokes() {
        for (number, printed, digit) in [
            (1.0, 1.876, 1e-3),
            (1.2, 1.503, 1e-3),
            (1.4, 1.250, 1e-3),
            (1.6, 1.069, 1e-3),
            (2.1, 0.7822, 1e-4),
            (2.5, 0.6430, 1e-4),
            (3.0, 0.5253, 1e-4),
            (3.7, 0.4179, 1e-4),
        ] {
            let room = 0.5 * digit + 0.01 * f64::powi(number, -5);
            let got = drag_ratio(number);
            assert!((got - printed).abs() <= room, "M = {number}: {got} against {printed}");
        }
    }

    #[test]
    fn a_lighter_string_loses_more_in_the_same_measure() {
        let of = |g: f64| {
            air_loss(
                Length::from_mm(0.8),
                LinearDensity::from_g_per_m(g),
                Frequency::from_hz(300.0),
            )
        };
        assert_close(of(0.5), 2.0 * of(1.0), 1e-14, "half the mass");
    }
}
