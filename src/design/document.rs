//! A design as it was typed: texts and plain numbers, with the unit in the field's name.
//!
//! A cell keeps the text that was typed, readable or not, so that nothing is lost;
//! [`resolve`](super::resolve) says what it means. A bare number is in millimetres, whatever unit
//! the page shows: the page adds the unit to what is typed in inches.

mod geometry;
mod making;
mod material;
mod order;
mod string;
mod targets;
mod timber;

use serde::Serialize;

pub use self::geometry::{
    BoardSpec, DrillsSpec, DrivesSpec, GapsSpec, GeometrySpec, MOST_NODES, MeasuredSpec, NeckSpec,
    PLYWOOD, PillarSpec, SectionSpec, ServiceSpec, SizesSpec, SpacingSpec,
};
pub use self::making::{
    BarSpec, BarsSpec, FastenerSpec, JointSpec, JointsSpec, MetalSpec, SoundboxSpec,
};
pub use self::material::{
    ClassSpec, Fact, MaterialSpec, ModulusSpec, StandingSpec, StrengthSpec, ToleranceSpec,
};
pub use self::order::{OrderSpec, SparesSpec, StockItem, TypedMakeUp, VersionSpec};
pub use self::string::{Bare, LayerSpec, MakeUpSpec, StringSpec, WeighedSpec};
pub use self::targets::{
    FamilySpec, KindSpec, MOST_KINDS, MOST_POINTS, MOST_ZONES, TargetsSpec, WantsSpec, WeightsSpec,
    ZoneSpec,
};
pub use self::timber::{
    LayerSpec as NeckLayerSpec, MOST_NECK_LAYERS, MOST_SECTIONS, MOST_WOODS, NeckMetalSpec,
    OwnWoodSpec,
};
use super::reading::{fields, words};

/// The most strings a design may have. Far above any harp; it keeps a hostile file harmless.
pub const MOST_STRINGS: usize = 150;
/// The longest text of one cell, in characters.
pub const LONGEST_CELL: usize = 200;
/// The longest free text (the remarks), in characters.
pub const LONGEST_TEXT: usize = 4_000;
/// The most layers wound on one core.
pub const MOST_LAYERS: usize = 3;

/// One harp, as its maker typed it.
#[derive(Clone, Debug, PartialEq, Serialize)]
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
    /// Spares and remarks of the order list.
    #[serde(skip_serializing_if = "OrderSpec::is_usual")]
    pub order: OrderSpec,
    /// What is wanted when strings are chosen; a text leaves it out where it is usual.
    #[serde(skip_serializing_if = "TargetsSpec::is_usual")]
    pub targets: TargetsSpec,
    /// The materials that the strings use, with all their figures.
    pub materials: Vec<MaterialSpec>,
    /// From the highest string down.
    pub strings: Vec<StringSpec>,
    /// The stock items that the strings are bought as.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub stock: Vec<StockItem>,
    /// States of this design that were kept, the oldest first.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub versions: Vec<VersionSpec>,
}

fields!(Design {
    title,
    maker,
    client,
    serial,
    date,
    open_tuning,
    remarks,
    pitch,
    units,
    pluck_percent,
    pluck_mm,
    damping_partial,
    mechanism,
    frame_expansion_e6_per_k,
    geometry,
    tolerances,
    limits,
    allowances,
    order unless order.is_usual(),
    targets unless targets.is_usual(),
    materials,
    strings,
    stock unless stock.is_empty(),
    versions unless versions.is_empty(),
});

/// Reference pitch and temperament.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct PitchSpec {
    /// The pitch of A4 in hertz.
    pub a4_hz: f64,
    /// How the octave is divided.
    pub temperament: TemperamentSpec,
}

fields!(PitchSpec { a4_hz, temperament });

/// How the octave is divided.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize)]
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

words!(TemperamentSpec {
    "equal" => Equal,
    "pythagorean" => Pythagorean,
    "quarter_comma_meantone" => QuarterCommaMeantone,
    "werckmeister_three" => WerckmeisterThree,
    "vallotti" => Vallotti,
    "young_two" => YoungTwo,
    "just_on_c" => JustOnC,
});

/// The units in which the page shows things.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize)]
pub struct Units {
    pub length: LengthUnit,
    pub gauge: GaugeUnit,
    pub force: ForceUnit,
}

fields!(Units { length, gauge, force });

/// Unit of vibrating lengths.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum LengthUnit {
    #[default]
    Mm,
    Inch,
}

words!(LengthUnit { "mm" => Mm, "inch" => Inch });

/// Unit of gauges.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum GaugeUnit {
    #[default]
    Mm,
    /// Thousandths of an inch.
    Thou,
}

words!(GaugeUnit { "mm" => Mm, "thou" => Thou });

/// Unit of pulls.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum ForceUnit {
    #[default]
    Newton,
    Kgf,
    Lbf,
}

words!(ForceUnit { "newton" => Newton, "kgf" => Kgf, "lbf" => Lbf });

/// Levers or discs.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct MechanismSpec {
    /// What every string has, unless it says otherwise.
    pub kind: MechanismKind,
    /// How far a lever or a disc pushes the string aside.
    pub push_mm: f64,
}

fields!(MechanismSpec { kind, push_mm });

/// What raises a string by semitones.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize)]
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

words!(MechanismKind {
    "none" => None,
    "lever" => Lever,
    "single_disc" => SingleDisc,
    "double_disc" => DoubleDisc,
});

/// How far things may be off, to either side.
#[derive(Clone, Debug, PartialEq, Serialize)]
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

fields!(TolerancesSpec {
    length_mm,
    pitch_cents,
    temperature_k,
    push_mm,
    diameter_mm,
    density_percent,
});

/// What counts as a finding, and the bands that the curves show.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct LimitsSpec {
    pub working_share_percent: f64,
    pub soft_share_percent: f64,
    pub slack_share_percent: f64,
    pub least_tension_n: f64,
    pub least_stiffness_n_per_mm: f64,
    pub most_stiffness_n_per_mm: f64,
    pub partial_8_cents: f64,
    pub jump_percent: f64,
    pub least_raise_mm: f64,
}

fields!(LimitsSpec {
    working_share_percent,
    soft_share_percent,
    slack_share_percent,
    least_tension_n,
    least_stiffness_n_per_mm,
    most_stiffness_n_per_mm,
    partial_8_cents,
    jump_percent,
    least_raise_mm,
});

/// What a string needs beyond its vibrating length; together the cut length.
#[derive(Clone, Debug, PartialEq, Serialize)]
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

fields!(Allowances { after_length_mm, turns, pin_mm, knot_mm, tail_mm });

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
            order: OrderSpec::default(),
            targets: TargetsSpec::default(),
            materials: Vec::new(),
            strings: Vec::new(),
            stock: Vec::new(),
            versions: Vec::new(),
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
    /// 40 % of the length and rounded. Nearer to its pin than half the bridge pin, half the pin of a fork and a
    /// little between them nothing that raises a string can sit.
    fn default() -> Self {
        Self {
            working_share_percent: 75.0,
            soft_share_percent: 65.0,
            slack_share_percent: 12.0,
            least_tension_n: 20.0,
            least_stiffness_n_per_mm: 0.7,
            most_stiffness_n_per_mm: 1.9,
            partial_8_cents: 25.0,
            jump_percent: 30.0,
            least_raise_mm: 3.3,
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

#[cfg(test)]
mod tests;
