//! One string as typed: its note, its length, and what it is made of.

use serde::de::IntoDeserializer;
use serde::{Deserialize, Deserializer, Serialize};

use super::MechanismKind;
use super::order::is_zero;

/// One string as typed.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(from = "FlatString")]
pub struct StringSpec {
    /// A note name (`A4`, `Eb3`) or a frequency (`443.2 Hz`).
    pub note: String,
    /// Vibrating length: `612`, `61.2cm`, `24 1/8 in`.
    pub length: String,
    /// What it is made of.
    #[serde(flatten)]
    pub make_up: MakeUpSpec,
    /// The supplier's code.
    #[serde(skip_serializing_if = "String::is_empty")]
    pub order_code: String,
    /// The key of the stock item that it was taken from; 0 for none.
    #[serde(skip_serializing_if = "is_zero")]
    pub stock_key: u16,
    /// What raises it, where it differs from the rule of the harp.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub mechanism: Option<MechanismKind>,
    /// Whether it keeps its make-up when strings are chosen.
    #[serde(skip_serializing_if = "is_free")]
    pub locked: bool,
}

/// A string as it is read: the fields of its make-up beside its own.
#[derive(Default, Deserialize)]
#[serde(default)]
struct FlatString {
    note: String,
    length: String,
    material: String,
    diameter: String,
    layers: Vec<LayerSpec>,
    bare: Bare,
    weighed: Option<WeighedSpec>,
    order_code: String,
    stock_key: u16,
    #[serde(deserialize_with = "or_empty")]
    mechanism: Option<MechanismKind>,
    locked: bool,
}

impl From<FlatString> for StringSpec {
    fn from(flat: FlatString) -> Self {
        let FlatString { note, length, material, diameter, layers, bare, weighed, .. } = flat;
        let FlatString { order_code, stock_key, mechanism, locked, .. } = flat;
        let make_up = MakeUpSpec { material, diameter, layers, bare, weighed };
        Self { note, length, make_up, order_code, stock_key, mechanism, locked }
    }
}

/// The make-up of a string as typed. Without layers and weighing it is a plain string.
#[derive(Clone, Debug, Default, PartialEq, Serialize)]
pub struct MakeUpSpec {
    /// Material of a plain string or of the core, by key, name or a usual other name.
    pub material: String,
    /// Diameter of a plain string or of the core.
    pub diameter: String,
    /// What is wound on the core, from the inside out.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub layers: Vec<LayerSpec>,
    /// Bare core at the board end and at the pin end; empty for none.
    #[serde(skip_serializing_if = "Bare::is_empty")]
    pub bare: Bare,
    /// For a bought string that was weighed: then the layers are not needed.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub weighed: Option<WeighedSpec>,
}

/// Bare core at the two ends of a wound string.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(default)]
pub struct Bare {
    /// At the soundboard.
    pub board: String,
    /// At the bridge pin.
    pub pin: String,
}

impl Bare {
    /// Whether neither end is given.
    pub fn is_empty(&self) -> bool {
        self.board.is_empty() && self.pin.is_empty()
    }
}

/// One layer of a wound string.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct LayerSpec {
    /// Material, by key, name or a usual other name.
    pub material: String,
    /// Diameter of round wire, or thickness of ribbon.
    pub size: String,
    /// Width of ribbon; empty for round wire.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub width: String,
    /// How closely the turns lie, in per cent: 100 where they touch.
    #[serde(default = "close", skip_serializing_if = "is_close")]
    pub packing_percent: f64,
}

/// What was measured of a bought string.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(default)]
pub struct WeighedSpec {
    /// Mass per metre in grams, as typed.
    pub g_per_m: String,
    /// Overall diameter; empty where not measured.
    pub gauge: String,
    /// Breaking load in newtons, as typed; empty where not known.
    pub breaks_n: String,
}

/// A mechanism, or none for an empty text, as a link has it in a column of texts.
fn or_empty<'de, D: Deserializer<'de>>(from: D) -> Result<Option<MechanismKind>, D::Error> {
    match Option::<String>::deserialize(from)?.as_deref() {
        None | Some("") => Ok(None),
        Some(kind) => MechanismKind::deserialize(kind.into_deserializer()).map(Some),
    }
}

fn is_free(locked: &bool) -> bool {
    !*locked
}

fn close() -> f64 {
    100.0
}

fn is_close(percent: &f64) -> bool {
    *percent == close()
}

impl LayerSpec {
    /// Whether the layer is ribbon.
    pub fn is_ribbon(&self) -> bool {
        !self.width.is_empty()
    }
}

impl MakeUpSpec {
    /// Whether layers are wound on a core.
    pub fn is_wound(&self) -> bool {
        !self.layers.is_empty()
    }

    /// Whether it is one filament or wire, as far as was typed.
    pub fn is_plain(&self) -> bool {
        self.layers.is_empty() && self.weighed.is_none()
    }

    /// Whether nothing was typed.
    pub fn is_empty(&self) -> bool {
        *self == Self::default()
    }
}
