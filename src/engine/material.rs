//! Materials of strings: density, moduli, strength, expansion, damping, and how far they may be off;
//! each figure with its source and how well it is known.

mod built_in;
mod falling;
mod said;

pub use self::built_in::{MUSIC_WIRE_INCH_KSI, MUSIC_WIRE_TOLERANCE_INCH, built_in, key_of};
pub use self::falling::flat_strength;
pub use self::said::{key_said, name_of_key, said, source_before};
use super::units::{Density, Length, Stress};

/// How well a figure is known.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Standing {
    /// Read in the source that is named.
    Seen,
    /// As another text quotes the source that is named.
    SecondHand,
    /// Worked out from figures that were read.
    Computed,
    /// From memory; verify before relying on it.
    FromMemory,
    /// Entered by the user.
    Own,
}

/// A figure with its source.
#[derive(Clone, Debug, PartialEq)]
pub struct Sourced<T> {
    /// The figure.
    pub value: T,
    /// Where it comes from.
    pub source: String,
    /// How well it is known.
    pub standing: Standing,
}

/// Modulus of elasticity: `E = base + per_stress_ratio · σ`.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Modulus {
    /// The modulus of the slack string.
    pub base: Stress,
    /// Rise of the modulus with the stress, a pure number.
    pub per_stress_ratio: f64,
}

impl Modulus {
    /// One modulus, whatever the stress.
    pub const fn constant(base: Stress) -> Self {
        Self { base, per_stress_ratio: 0.0 }
    }

    /// The modulus under a stress.
    pub fn at(self, stress: Stress) -> Stress {
        Stress::from_pa(self.base.to_pa() + self.per_stress_ratio * stress.to_pa())
    }
}

/// Least tensile strength.
#[derive(Clone, Debug, PartialEq)]
pub enum Strength {
    /// The same for every diameter.
    Constant(Stress),
    /// Diameters with their strength, thinnest first; straight lines between them, and no figure
    /// outside.
    Table(Vec<(Length, Stress)>),
    /// The greatest diameter of each step with its strength, thinnest first; no figure beyond the
    /// last.
    Steps(Vec<(Length, Stress)>),
}

impl Strength {
    /// The strength at a diameter; `None` where the source gives none.
    pub fn at(&self, diameter: Length) -> Option<Stress> {
        let d = diameter.to_m();
        match self {
            Self::Constant(stress) => Some(*stress),
            Self::Steps(steps) => {
                steps.iter().find(|(most, _)| within(d, most.to_m())).map(|(_, stress)| *stress)
            }
            Self::Table(rows) => {
                let (first, last) = (rows.first()?, rows.last()?);
                if !within(first.0.to_m(), d) || !within(d, last.0.to_m()) {
                    return None;
                }
                let above = rows.partition_point(|(at, _)| at.to_m() < d);
                let (Some(low), Some(high)) = (rows.get(above.saturating_sub(1)), rows.get(above))
                else {
                    return Some(if above == 0 { first.1 } else { last.1 });
                };
                let (x0, x1) = (low.0.to_m(), high.0.to_m());
                let share = if x1 > x0 { ((d - x0) / (x1 - x0)).clamp(0.0, 1.0) } else { 0.0 };
                let (y0, y1) = (low.1.to_pa(), high.1.to_pa());
                Some(Stress::from_pa(y0 + share * (y1 - y0)))
            }
        }
    }
}

/// Whether `value` is at most `most`, with room for the last digits of a unit's conversion.
fn within(value: f64, most: f64) -> bool {
    value <= most * (1.0 + 1e-9)
}

/// How far the diameter may be off what is printed on the packet, to either side.
#[derive(Clone, Debug, PartialEq)]
pub enum Tolerance {
    /// The same for every diameter.
    Constant(Length),
    /// The greatest diameter of each step with its deviation, thinnest first; beyond the last, the
    /// last.
    Steps(Vec<(Length, Length)>),
    /// A share of the diameter.
    Ratio(f64),
}

impl Tolerance {
    /// The deviation at a diameter.
    pub fn at(&self, diameter: Length) -> Length {
        match self {
            Self::Constant(off) => *off,
            Self::Ratio(ratio) => Length::from_m(ratio * diameter.to_m()),
            Self::Steps(steps) => {
                let step = steps.iter().find(|(most, _)| within(diameter.to_m(), most.to_m()));
                step.or(steps.last()).map(|(_, off)| *off).unwrap_or_default()
            }
        }
    }
}

/// What kind of material it is, which decides how its figures may be used.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Class {
    /// One modulus at every speed, and a drift with temperature that follows from expansion.
    Metal,
    /// Three moduli; the drift with temperature does not follow from expansion.
    Polymer,
    /// Gut or silk: as a polymer, and moved by the damp of the air besides.
    Natural,
}

/// How fast a string is strained, which decides the modulus.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Pace {
    /// Milliseconds: vibration, the finger.
    Fast,
    /// Minutes: a lever, a turn of the pin.
    Intermediate,
    /// Weeks, creep included: the whole stretch from slack.
    Slow,
}

/// What a string or a layer is made of.
#[derive(Clone, Debug, PartialEq)]
pub struct Material {
    /// Short and unique: what a chart's cell shows.
    pub key: String,
    /// The full name.
    pub name: String,
    /// What kind it is.
    pub class: Class,
    /// Mass over volume.
    pub density: Sourced<Density>,
    /// Modulus in vibration, where one is known.
    pub modulus: Option<Sourced<Modulus>>,
    /// Modulus over minutes, where one is known.
    pub intermediate_modulus: Option<Sourced<Modulus>>,
    /// Tangent modulus over weeks, creep included, where one is known.
    pub slow_modulus: Option<Sourced<Modulus>>,
    /// Least strength, where one is known.
    pub strength: Option<Sourced<Strength>>,
    /// Share by which it lengthens for each kelvin, where it is known.
    pub expansion_per_k: Option<Sourced<f64>>,
    /// Loss factor in bending, where it is known.
    pub loss_factor: Option<Sourced<f64>>,
    /// How far the diameter may be off, where it is known.
    pub diameter_tolerance: Option<Sourced<Tolerance>>,
    /// Share by which the density may be off, where it is known.
    pub density_tolerance_ratio: Option<Sourced<f64>>,
}

impl Material {
    /// The modulus for a pace. A metal has one for all; of the others each must be known by itself.
    pub fn modulus_at(&self, pace: Pace) -> Option<Modulus> {
        let own = match pace {
            Pace::Fast => &self.modulus,
            Pace::Intermediate => &self.intermediate_modulus,
            Pace::Slow => &self.slow_modulus,
        };
        let fast = if self.class == Class::Metal { self.modulus.as_ref() } else { None };
        own.as_ref().or(fast).map(|sourced| sourced.value)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::testing::assert_close;

    #[test]
    fn a_table_gives_its_own_rows_and_straight_lines_between() {
        let at = |mm: f64, mpa: f64| (Length::from_mm(mm), Stress::from_mpa(mpa));
        let table = Strength::Table(vec![at(0.2, 2000.0), at(0.4, 1800.0), at(0.8, 1500.0)]);
        let strength = |mm: f64| table.at(Length::from_mm(mm)).map(Stress::to_mpa);
        for (mm, mpa) in [(0.2, 2000.0), (0.3, 1900.0), (0.4, 1800.0), (0.6, 1650.0), (0.8, 1500.0)]
        {
            assert_close(strength(mm).unwrap(), mpa, 1e-12, format_args!("{mm} mm"));
        }
        assert_eq!(strength(0.19), None);
        assert_eq!(strength(0.81), None);
        assert_eq!(strength(f64::NAN), None);
        assert_eq!(Strength::Table(vec![]).at(Length::from_mm(0.3)), None);
        assert_eq!(
            Strength::Table(vec![at(0.2, 7.0)]).at(Length::from_mm(0.2)),
            Some(Stress::from_mpa(7.0))
        );
    }
}
