//! Materials as a document keeps them: every figure with where it comes from.

use serde::Serialize;
use serde_json::Value;

use crate::design::reading::{Json, Wrong, fields, held, tagged, take_fields, words};
use crate::design::writing::{give_fields, give_tagged};

/// A material with every figure and where it comes from.
#[derive(Clone, Debug, Default, PartialEq, Serialize)]
pub struct MaterialSpec {
    /// Short and unique in a design; strings refer to it.
    pub key: String,
    /// As shown.
    pub name: String,
    /// What kind of material.
    pub class: ClassSpec,
    /// Mass over volume.
    pub density_kg_per_m3: Fact<f64>,
    /// Share by which the density may be off, in per cent.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub density_tolerance_percent: Option<Fact<f64>>,
    /// How far the diameter may be off.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub diameter_tolerance: Option<Fact<ToleranceSpec>>,
    /// Modulus of elasticity in vibration.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub modulus: Option<Fact<ModulusSpec>>,
    /// Modulus over minutes: levers, tuning.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub intermediate_modulus: Option<Fact<ModulusSpec>>,
    /// Modulus over weeks: the stretch.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub slow_modulus: Option<Fact<ModulusSpec>>,
    /// Least tensile strength.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub strength: Option<Fact<StrengthSpec>>,
    /// Expansion in millionths per kelvin.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub expansion_e6_per_k: Option<Fact<f64>>,
    /// Loss factor in bending.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub loss_factor: Option<Fact<f64>>,
}

fields!(MaterialSpec {
    key: NEEDED,
    name: NEEDED,
    class,
    density_kg_per_m3: NEEDED,
    density_tolerance_percent unless density_tolerance_percent.is_none(),
    diameter_tolerance unless diameter_tolerance.is_none(),
    modulus unless modulus.is_none(),
    intermediate_modulus unless intermediate_modulus.is_none(),
    slow_modulus unless slow_modulus.is_none(),
    strength unless strength.is_none(),
    expansion_e6_per_k unless expansion_e6_per_k.is_none(),
    loss_factor unless loss_factor.is_none(),
});

/// What kind of material it is, which decides how its figures may be used.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize)]
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

words!(ClassSpec { "metal" => Metal, "polymer" => Polymer, "natural" => Natural });

/// How far a diameter may be off, to either side.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum ToleranceSpec {
    /// The same for every diameter.
    Mm(f64),
    /// A share of the diameter.
    Percent(f64),
    /// Pairs of the greatest diameter (mm) of a step and its deviation (mm), thinnest first.
    StepsMm(Vec<(f64, f64)>),
}

impl Default for ToleranceSpec {
    /// Until one is read.
    fn default() -> Self {
        Self::Mm(0.0)
    }
}

impl Json for ToleranceSpec {
    fn take(&mut self, json: &mut Value) -> Result<(), Wrong> {
        let (kind, mut deviation) = tagged(json, &["mm", "percent", "steps_mm"])?;
        *self = match kind {
            "mm" => Self::Mm(held(kind, &mut deviation)?),
            "percent" => Self::Percent(held(kind, &mut deviation)?),
            _ => Self::StepsMm(held(kind, &mut deviation)?),
        };
        Ok(())
    }

    fn give(&self, out: &mut String) {
        match self {
            Self::Mm(held) => give_tagged("mm", held, out),
            Self::Percent(held) => give_tagged("percent", held, out),
            Self::StepsMm(held) => give_tagged("steps_mm", held, out),
        }
    }
}

/// A figure, its source, and how well it is known.
#[derive(Clone, Debug, Default, PartialEq, Serialize)]
pub struct Fact<T> {
    pub value: T,
    pub source: String,
    pub standing: StandingSpec,
}

/// The names of the fields of a [`Fact`].
const FACT: [&str; 3] = ["value", "source", "standing"];

impl<T: Json> Json for Fact<T> {
    fn take(&mut self, json: &mut Value) -> Result<(), Wrong> {
        let Self { value, source, standing } = self;
        take_fields(json, &[true; 3], &FACT, &mut [value, source, standing])
    }

    fn give(&self, out: &mut String) {
        let Self { value, source, standing } = self;
        give_fields(&[false; 3], &FACT, &[value, source, standing], out);
    }
}

/// How well a figure is known.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize)]
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

words!(StandingSpec {
    "seen" => Seen,
    "second_hand" => SecondHand,
    "computed" => Computed,
    "from_memory" => FromMemory,
    "own" => Own,
});

/// `E = base + per_stress · σ`.
#[derive(Clone, Copy, Debug, Default, PartialEq, Serialize)]
pub struct ModulusSpec {
    pub base_gpa: f64,
    /// Rise of the modulus with the stress, a pure number.
    #[serde(skip_serializing_if = "is_zero")]
    pub per_stress: f64,
}

fields!(ModulusSpec { base_gpa: NEEDED, per_stress unless is_zero(per_stress) });

/// Least tensile strength, by diameter where it depends on it.
#[derive(Clone, Debug, PartialEq, Serialize)]
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

impl Default for StrengthSpec {
    /// Until one is read.
    fn default() -> Self {
        Self::Mpa(0.0)
    }
}

impl Json for StrengthSpec {
    fn take(&mut self, json: &mut Value) -> Result<(), Wrong> {
        let (kind, mut strength) = tagged(json, &["mpa", "table_mm_mpa", "steps_mm_mpa"])?;
        *self = match kind {
            "mpa" => Self::Mpa(held(kind, &mut strength)?),
            "table_mm_mpa" => Self::TableMmMpa(held(kind, &mut strength)?),
            _ => Self::StepsMmMpa(held(kind, &mut strength)?),
        };
        Ok(())
    }

    fn give(&self, out: &mut String) {
        match self {
            Self::Mpa(held) => give_tagged("mpa", held, out),
            Self::TableMmMpa(held) => give_tagged("table_mm_mpa", held, out),
            Self::StepsMmMpa(held) => give_tagged("steps_mm_mpa", held, out),
        }
    }
}

fn is_zero(number: &f64) -> bool {
    *number == 0.0
}
