//! One string as typed: its note, its length, and what it is made of.

use serde::Serialize;
use serde_json::Value;

use super::MechanismKind;
use super::order::is_zero;
use crate::design::reading::{Json, Wrong, fields, take_fields};
use crate::design::writing::give_fields;

/// How closely the turns of a layer lie unless it says otherwise, in per cent.
const CLOSE: f64 = 100.0;

/// One string as typed.
#[derive(Clone, Debug, Default, PartialEq, Serialize)]
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

/// The names of the fields of a [`StringSpec`] in a document, where those of its make-up stand among them.
const STRING: [&str; 11] = [
    "note",
    "length",
    "material",
    "diameter",
    "layers",
    "bare",
    "weighed",
    "order_code",
    "stock_key",
    "mechanism",
    "locked",
];

impl Json for StringSpec {
    fn take(&mut self, json: &mut Value) -> Result<(), Wrong> {
        // A link has mechanisms in a column of texts, where an empty one is none.
        if let Some(mechanism) = json.get_mut("mechanism").filter(|word| word.as_str() == Some(""))
        {
            *mechanism = Value::Null;
        }
        let Self { note, length, make_up, order_code, stock_key, mechanism, locked } = self;
        let MakeUpSpec { material, diameter, layers, bare, weighed } = make_up;
        let fields: &mut [&mut dyn Json] = &mut [
            note, length, material, diameter, layers, bare, weighed, order_code, stock_key,
            mechanism, locked,
        ];
        take_fields(json, &[false; 11], &STRING, fields)
    }

    fn give(&self, out: &mut String) {
        let Self { note, length, make_up, order_code, stock_key, mechanism, locked } = self;
        let MakeUpSpec { material, diameter, layers, bare, weighed } = make_up;
        let left_out = [
            false,
            false,
            false,
            false,
            layers.is_empty(),
            bare.is_empty(),
            weighed.is_none(),
            order_code.is_empty(),
            is_zero(stock_key),
            mechanism.is_none(),
            is_free(locked),
        ];
        let fields: &[&dyn Json] = &[
            note, length, material, diameter, layers, bare, weighed, order_code, stock_key,
            mechanism, locked,
        ];
        give_fields(&left_out, &STRING, fields, out);
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
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize)]
pub struct Bare {
    /// At the soundboard.
    pub board: String,
    /// At the bridge pin.
    pub pin: String,
}

fields!(Bare { board, pin });

impl Bare {
    /// Whether neither end is given.
    pub fn is_empty(&self) -> bool {
        self.board.is_empty() && self.pin.is_empty()
    }
}

/// One layer of a wound string.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct LayerSpec {
    /// Material, by key, name or a usual other name.
    pub material: String,
    /// Diameter of round wire, or thickness of ribbon.
    pub size: String,
    /// Width of ribbon; empty for round wire.
    #[serde(skip_serializing_if = "String::is_empty")]
    pub width: String,
    /// How closely the turns lie, in per cent: 100 where they touch.
    #[serde(skip_serializing_if = "is_close")]
    pub packing_percent: f64,
}

fields!(LayerSpec {
    material: NEEDED,
    size: NEEDED,
    width unless width.is_empty(),
    packing_percent unless is_close(packing_percent),
});

/// What was measured of a bought string.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize)]
pub struct WeighedSpec {
    /// Mass per metre in grams, as typed.
    pub g_per_m: String,
    /// Overall diameter; empty where not measured.
    pub gauge: String,
    /// Breaking load in newtons, as typed; empty where not known.
    pub breaks_n: String,
}

fields!(WeighedSpec { g_per_m, gauge, breaks_n });

fn is_free(locked: &bool) -> bool {
    !*locked
}

fn is_close(percent: &f64) -> bool {
    *percent == CLOSE
}

impl Default for LayerSpec {
    fn default() -> Self {
        let (material, size, width) = (String::new(), String::new(), String::new());
        Self { material, size, width, packing_percent: CLOSE }
    }
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

    /// Its diameters, as typed: of the core and the layers, the widths of ribbons, the gauge of a weighed string.
    /// Bare ends are lengths.
    pub fn sizes_mut(&mut self) -> Vec<&mut String> {
        let mut sizes = vec![&mut self.diameter];
        for layer in &mut self.layers {
            sizes.extend([&mut layer.size, &mut layer.width]);
        }
        sizes.extend(self.weighed.as_mut().map(|weighed| &mut weighed.gauge));
        sizes
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
