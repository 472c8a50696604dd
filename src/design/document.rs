//! A design as it was typed: texts and plain numbers, with the unit in the field's name.
//!
//! A cell keeps the text that was typed, readable or not, so that nothing is lost;
//! [`resolve`](super::resolve) says what it means. A bare number is in millimetres, whatever unit
//! the page shows: the page adds the unit to what is typed in inches.

mod geometry;
mod material;

use serde::de::IntoDeserializer;
use serde::{Deserialize, Deserializer, Serialize};

pub use self::geometry::{
    BoardSpec, DrillsSpec, DrivesSpec, GapsSpec, GeometrySpec, MOST_NODES, MOST_SECTIONS,
    MeasuredSpec, NeckSpec, PLYWOOD, PillarSpec, SectionSpec, ServiceSpec, SpacingSpec,
};
pub use self::material::{
    ClassSpec, Fact, MaterialSpec, ModulusSpec, StandingSpec, StrengthSpec, ToleranceSpec,
};

/// The most strings a design may have. Far above any harp; it keeps a hostile file harmless.
pub const MOST_STRINGS: usize = 150;
/// The longest text of one cell, in characters.
pub const LONGEST_CELL: usize = 200;
/// The longest free text (the remarks), in characters.
pub const LONGEST_TEXT: usize = 4_000;
/// The most layers wound on one core.
pub const MOST_LAYERS: usize = 3;

/// One harp, as its maker typed it.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(default)]
pub struct Design {
    /// What the instrument is called.
    pub title: String,
    /// Who makes it.
    pub maker: String,
    /// Whom it is for.
    pub client: String,
    /// Serial number.
    pub serial: String,
    /// A date, as typed.
    pub date: String,
    /// How the open strings are tuned, in words: `E flat major, levers down`.
    pub open_tuning: String,
    /// Remarks, for the card.
    pub remarks: String,
    /// Reference pitch and temperament.
    pub pitch: PitchSpec,
    /// The units in which the page shows things. No number is stored in them.
    pub units: Units,
    /// Where the finger plucks, in per cent of the vibrating length from the nearer end.
    pub pluck_percent: f64,
    /// How far the finger pulls a string aside.
    pub pluck_mm: f64,
    /// The partial at which the loss factor is given.
    pub damping_partial: u32,
    /// Levers or discs: the rule of the harp, from which a string may differ.
    pub mechanism: MechanismSpec,
    /// Expansion of the frame along the strings in millionths per kelvin; 0 while it has not yet
    /// followed the air.
    pub frame_expansion_e6_per_k: f64,
    /// The shape of the harp.
    pub geometry: GeometrySpec,
    /// How far things may be off.
    pub tolerances: TolerancesSpec,
    /// What counts as a finding.
    pub limits: LimitsSpec,
    /// What a string needs beyond its vibrating length.
    pub allowances: Allowances,
    /// The materials that the strings use, with all their figures.
    pub materials: Vec<MaterialSpec>,
    /// From the highest string down.
    pub strings: Vec<StringSpec>,
}

/// Reference pitch and temperament.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(default)]
pub struct PitchSpec {
    /// The pitch of A4 in hertz.
    pub a4_hz: f64,
    /// How the octave is divided.
    pub temperament: TemperamentSpec,
}

/// How the octave is divided.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum TemperamentSpec {
    #[default]
    Equal,
    Pythagorean,
    QuarterCommaMeantone,
    WerckmeisterThree,
    Vallotti,
    YoungTwo,
    JustOnC,
}

/// The units in which the page shows things.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(default)]
pub struct Units {
    pub length: LengthUnit,
    pub gauge: GaugeUnit,
    pub force: ForceUnit,
}

/// Unit of vibrating lengths.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum LengthUnit {
    #[default]
    Mm,
    Inch,
}

/// Unit of gauges.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum GaugeUnit {
    #[default]
    Mm,
    /// Thousandths of an inch.
    Thou,
}

/// Unit of pulls.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum ForceUnit {
    #[default]
    Newton,
    Kgf,
    Lbf,
}

/// Levers or discs.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(default)]
pub struct MechanismSpec {
    /// What every string has, unless it says otherwise.
    pub kind: MechanismKind,
    /// How far a lever or a disc pushes the string aside.
    pub push_mm: f64,
}

/// What raises a string by semitones.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum MechanismKind {
    /// Nothing.
    #[default]
    None,
    /// A lever: one semitone.
    Lever,
    /// One disc: one semitone.
    SingleDisc,
    /// Two discs: flat, natural, sharp.
    DoubleDisc,
}

/// How far things may be off, to either side.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(default)]
pub struct TolerancesSpec {
    /// Of the vibrating length.
    pub length_mm: f64,
    /// Of the pitch.
    pub pitch_cents: f64,
    /// Of the temperature since the string was tuned.
    pub temperature_k: f64,
    /// Of the push of a lever or a disc.
    pub push_mm: f64,
    /// Of a diameter whose material states none.
    pub diameter_mm: f64,
    /// Of a density whose material states none.
    pub density_percent: f64,
}

/// What counts as a finding, and the bands that the curves show.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(default)]
pub struct LimitsSpec {
    pub working_share_percent: f64,
    pub slack_share_percent: f64,
    pub least_tension_n: f64,
    pub least_stiffness_n_per_mm: f64,
    pub most_stiffness_n_per_mm: f64,
    pub partial_8_cents: f64,
    pub jump_percent: f64,
}

/// What a string needs beyond its vibrating length; together the cut length.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(default)]
pub struct Allowances {
    /// Bridge pin to tuning pin.
    pub after_length_mm: f64,
    /// Turns round the tuning pin at pitch.
    pub turns: f64,
    /// Diameter of the tuning pin.
    pub pin_mm: f64,
    /// Soundboard with rib, and the knot or anchor behind it.
    pub knot_mm: f64,
    /// What is left beyond the pin to pull by, and cut off.
    pub tail_mm: f64,
}

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
    /// What raises it, where it differs from the rule of the harp.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub mechanism: Option<MechanismKind>,
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
    #[serde(deserialize_with = "or_empty")]
    mechanism: Option<MechanismKind>,
}

impl From<FlatString> for StringSpec {
    fn from(flat: FlatString) -> Self {
        let FlatString { note, length, material, diameter, layers, bare, weighed, .. } = flat;
        let make_up = MakeUpSpec { material, diameter, layers, bare, weighed };
        Self { note, length, make_up, order_code: flat.order_code, mechanism: flat.mechanism }
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

fn close() -> f64 {
    100.0
}

fn is_close(percent: &f64) -> bool {
    *percent == close()
}

impl Default for Design {
    /// An empty design. Plucked at 40 % of the length, by 4 mm: common practice, no source.
    fn default() -> Self {
        Self {
            title: String::new(),
            maker: String::new(),
            client: String::new(),
            serial: String::new(),
            date: String::new(),
            open_tuning: String::new(),
            remarks: String::new(),
            pitch: PitchSpec::default(),
            units: Units::default(),
            pluck_percent: 40.0,
            pluck_mm: 4.0,
            damping_partial: 8,
            mechanism: MechanismSpec::default(),
            frame_expansion_e6_per_k: 0.0,
            geometry: GeometrySpec::default(),
            tolerances: TolerancesSpec::default(),
            limits: LimitsSpec::default(),
            allowances: Allowances::default(),
            materials: Vec::new(),
            strings: Vec::new(),
        }
    }
}

impl Default for PitchSpec {
    fn default() -> Self {
        Self { a4_hz: 440.0, temperament: TemperamentSpec::Equal }
    }
}

impl Default for LimitsSpec {
    /// Common practice, no source, but for the stiffness band, which is the builders' rule of 1 to
    /// 2.5 lbf/in for tension over length (a harp makers' mailing list, 2005), taken to a pluck at
    /// 40 % of the length and rounded.
    fn default() -> Self {
        Self {
            working_share_percent: 75.0,
            slack_share_percent: 12.0,
            least_tension_n: 20.0,
            least_stiffness_n_per_mm: 0.7,
            most_stiffness_n_per_mm: 1.9,
            partial_8_cents: 25.0,
            jump_percent: 30.0,
        }
    }
}

impl Default for MechanismSpec {
    /// No mechanism. A push of 0.5 mm: common practice, no source.
    fn default() -> Self {
        Self { kind: MechanismKind::None, push_mm: 0.5 }
    }
}

impl Default for TolerancesSpec {
    /// Common practice, no source, but for the pitch: 0.5 Hz in 440 Hz, as ISO 16 allows a tuning
    /// device, are 2 cents.
    fn default() -> Self {
        Self {
            length_mm: 1.0,
            pitch_cents: 2.0,
            temperature_k: 5.0,
            push_mm: 0.1,
            diameter_mm: 0.01,
            density_percent: 1.0,
        }
    }
}

impl Default for Allowances {
    /// Common practice, no source.
    fn default() -> Self {
        Self { after_length_mm: 45.0, turns: 3.0, pin_mm: 5.5, knot_mm: 90.0, tail_mm: 120.0 }
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

    /// Whether it is one filament or wire, as far as was typed.
    pub fn is_plain(&self) -> bool {
        self.layers.is_empty() && self.weighed.is_none()
    }

    /// Whether nothing was typed.
    pub fn is_empty(&self) -> bool {
        *self == Self::default()
    }
}
