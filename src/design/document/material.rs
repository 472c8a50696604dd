//! Materials as a document keeps them: every figure with where it comes from.

use serde::{Deserialize, Serialize};

/// A material with every figure and where it comes from.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
pub struct MaterialSpec {
    /// Short and unique in a design; strings refer to it.
    pub key: String,
    /// As shown.
    pub name: String,
    /// What kind of material.
    #[serde(default)]
    pub class: ClassSpec,
    /// Mass over volume.
    pub density_kg_per_m3: Fact<f64>,
    /// Share by which the density may be off, in per cent.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub density_tolerance_percent: Option<Fact<f64>>,
    /// How far the diameter may be off.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub diameter_tolerance: Option<Fact<ToleranceSpec>>,
    /// Modulus of elasticity in vibration.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub modulus: Option<Fact<ModulusSpec>>,
    /// Modulus over minutes: levers, tuning.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub intermediate_modulus: Option<Fact<ModulusSpec>>,
    /// Modulus over weeks: the take-up.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub slow_modulus: Option<Fact<ModulusSpec>>,
    /// Least tensile strength.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub strength: Option<Fact<StrengthSpec>>,
    /// Expansion in millionths per kelvin.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub expansion_e6_per_k: Option<Fact<f64>>,
    /// Loss factor in bending.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub loss_factor: Option<Fact<f64>>,
}

/// What kind of material it is, which decides how its figures may be used.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum ClassSpec {
    /// One modulus at every speed; drifts with temperature by its expansion.
    Metal,
    /// Three moduli, and no drift that follows from expansion.
    #[default]
    Polymer,
    /// Gut or silk.
    Natural,
}

/// How far a diameter may be off, to either side.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum ToleranceSpec {
    /// The same for every diameter.
    Mm(f64),
    /// A share of the diameter.
    Percent(f64),
    /// Pairs of the greatest diameter (mm) of a step and its deviation (mm), thinnest first.
    StepsMm(Vec<(f64, f64)>),
}

/// A figure, its source, and how well it is known.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
pub struct Fact<T> {
    pub value: T,
    pub source: String,
    pub standing: StandingSpec,
}

/// How well a figure is known.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum StandingSpec {
    /// Read in the source that is named.
    Seen,
    /// As another text quotes the source that is named.
    SecondHand,
    /// Worked out from figures that were read.
    Computed,
    /// From memory; verify before relying on it.
    FromMemory,
    /// Entered by the user.
    #[default]
    Own,
}

/// `E = base + per_stress · σ`.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
pub struct ModulusSpec {
    pub base_gpa: f64,
    /// Rise of the modulus with the stress, a pure number.
    #[serde(default, skip_serializing_if = "is_zero")]
    pub per_stress: f64,
}

/// Least tensile strength, by diameter where it depends on it.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum StrengthSpec {
    /// The same for every diameter.
    Mpa(f64),
    /// Pairs of diameter (mm) and strength (MPa), thinnest first, with straight lines between
    /// them; no strength is known outside.
    TableMmMpa(Vec<(f64, f64)>),
    /// Pairs of the greatest diameter (mm) of a step and its strength (MPa), thinnest first.
    StepsMmMpa(Vec<(f64, f64)>),
}

fn is_zero(number: &f64) -> bool {
    *number == 0.0
}
