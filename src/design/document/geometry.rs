//! The shape of the harp as typed: how the strings stand on the board, where their pins go, and what neck, pillar
//! and soundboard are made of.
//!
//! Usual values are common practice, from memory, unless something else is said.

use serde::Serialize;
use serde_json::Value;

use super::making::{BarsSpec, JointsSpec, SoundboxSpec, is_none};
use super::timber::{LayerSpec, NeckMetalSpec, OwnWoodSpec};
use crate::design::reading::{Json, Wrong, fields, held, tagged, words};
use crate::design::{thickness_map::text as thickness, writing::give_tagged};
pub use crate::engine::geometry::MOST_NODES;

/// The shape of the harp.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct GeometrySpec {
    /// Angle between strings and soundboard.
    pub board_angle_deg: f64,
    /// How far the strings lean from upright, towards the treble; below 0 towards the pillar.
    pub lean_deg: f64,
    /// From string to string.
    pub spacing: SpacingSpec,
    /// How far above the board the vibrating length begins, along the string: a rib or a grommet.
    pub start_mm: f64,
    /// How far the tuning pin stands beside the line of its string, towards the treble; below 0 towards the
    /// pillar.
    pub pin_sideways_mm: f64,
    /// From the middle plane of the neck to the strings.
    pub strings_from_neck_mm: f64,
    /// Whether the lengths make the harmonic curve, or the curve the lengths.
    pub drives: DrivesSpec,
    /// The drawn curve of the bridge pins, from the bass: pairs of the distance square to the strings and of that
    /// along them, in mm, from where the lowest string meets the board.
    pub nodes_mm: Vec<(f64, f64)>,
    /// The neck.
    pub neck: NeckSpec,
    /// The pillar.
    pub pillar: PillarSpec,
    /// The soundboard.
    pub board: BoardSpec,
    /// What holes are drilled with.
    pub drills: DrillsSpec,
    /// How damp the wood gets, on which its creep depends.
    pub service: ServiceSpec,
    /// What holds the joints.
    #[serde(skip_serializing_if = "JointsSpec::is_none")]
    pub joints: JointsSpec,
    /// The soundbox.
    #[serde(skip_serializing_if = "SoundboxSpec::is_none")]
    pub soundbox: SoundboxSpec,
    /// Woods of one's own.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub woods: Vec<OwnWoodSpec>,
    /// The bars of the board.
    #[serde(skip_serializing_if = "BarsSpec::is_none")]
    pub bars: BarsSpec,
    /// Whose the sizes of its parts are.
    #[serde(skip_serializing_if = "SizesSpec::are_own")]
    pub sizes: SizesSpec,
    /// Sizes that parts and board have beyond the usual, and prices: `design/parts/sizes.rs`, `design/thickness_map.rs`.
    #[serde(skip_serializing_if = "String::is_empty")]
    pub parts: String,
}

fields!(GeometrySpec {
    board_angle_deg,
    lean_deg,
    spacing,
    start_mm,
    pin_sideways_mm,
    strings_from_neck_mm,
    drives,
    nodes_mm,
    neck,
    pillar,
    board,
    drills,
    service,
    joints unless joints.is_none(),
    soundbox unless soundbox.is_none(),
    woods unless woods.is_empty(),
    bars unless bars.is_none(),
    sizes unless sizes.are_own(),
    parts unless parts.is_empty(),
});

impl GeometrySpec {
    /// Whether the parts have the sizes and woods of another: wherever the strings stand.
    pub fn is_sized_as(&self, other: &Self) -> bool {
        let frame = |of: &Self| (of.neck.clone(), of.pillar.clone(), of.board.clone(), of.joints);
        let made = |of: &Self| (of.soundbox.clone(), of.bars.clone(), thickness(of).to_owned());
        frame(self) == frame(other) && made(self) == made(other)
    }
}

/// Whose the sizes of the parts are.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum SizesSpec {
    /// The maker's.
    #[default]
    Own,
    /// What the program proposed for a new harp, which nobody has changed or taken as his own.
    Proposed,
}

words!(SizesSpec { "own" => Own, "proposed" => Proposed });

impl SizesSpec {
    /// Whether they are the maker's.
    pub fn are_own(&self) -> bool {
        *self == Self::Own
    }
}

/// How damp the wood gets.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum ServiceSpec {
    /// In heated rooms.
    #[default]
    Heated,
    /// Under a roof.
    Covered,
    /// In the open.
    Outdoors,
}

words!(ServiceSpec { "heated" => Heated, "covered" => Covered, "outdoors" => Outdoors });

/// From string to string.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct SpacingSpec {
    /// How it is measured.
    pub measured: MeasuredSpec,
    /// How wide.
    pub gaps: GapsSpec,
}

fields!(SpacingSpec { measured, gaps });

/// How the distance of two strings is measured.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum MeasuredSpec {
    /// Square to the strings.
    #[default]
    Square,
    /// Along the board, from hole to hole.
    AlongBoard,
}

words!(MeasuredSpec { "square" => Square, "along_board" => AlongBoard });

/// The gaps, counted from the bass: gap 1 lies between the lowest string and the next one.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum GapsSpec {
    /// All alike.
    UniformMm(f64),
    /// Pairs of the number of a gap and its width, with even steps between them.
    ZonesMm(Vec<(u32, f64)>),
    /// Each by itself; where there are too few, the last goes on.
    EachMm(Vec<f64>),
}

impl Json for GapsSpec {
    fn take(&mut self, json: &mut Value) -> Result<(), Wrong> {
        let (kind, mut gaps) = tagged(json, &["uniform_mm", "zones_mm", "each_mm"])?;
        *self = match kind {
            "uniform_mm" => Self::UniformMm(held(kind, &mut gaps)?),
            "zones_mm" => Self::ZonesMm(held(kind, &mut gaps)?),
            _ => Self::EachMm(held(kind, &mut gaps)?),
        };
        Ok(())
    }

    fn give(&self, out: &mut String) {
        match self {
            Self::UniformMm(held) => give_tagged("uniform_mm", held, out),
            Self::ZonesMm(held) => give_tagged("zones_mm", held, out),
            Self::EachMm(held) => give_tagged("each_mm", held, out),
        }
    }
}

/// What is drawn and what follows.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum DrivesSpec {
    /// The lengths are typed, and the pins follow.
    #[default]
    Lengths,
    /// The harmonic curve is drawn, and the lengths follow.
    NeckCurve,
}

words!(DrivesSpec { "lengths" => Lengths, "neck_curve" => NeckCurve });

/// The neck.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct NeckSpec {
    /// From the bridge pins, or the levers and discs below them, to the lower edge.
    pub below_pins_mm: f64,
    /// From the tuning pins to the upper edge.
    pub above_pins_mm: f64,
    /// Through the neck, square to the plane of the strings.
    pub thickness_mm: f64,
    /// Key of a wood, or `birch-plywood`.
    pub wood: String,
    /// Plies, where it is plywood.
    pub plies: u32,
    /// How much the grain slants against the neck, in per cent: the rise over the run.
    pub grain_percent: f64,
    /// Measured sections in any order, with even steps between them. Where there are none, the depth is that of
    /// the drawing and the thickness the one given above.
    pub sections: Vec<SectionSpec>,
    /// What it is glued up of, from the strings' side to the other, in proportion to its thickness; none where it is of
    /// one piece.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub layers: Vec<LayerSpec>,
    /// Metal on its faces.
    #[serde(skip_serializing_if = "NeckMetalSpec::is_none")]
    pub plates: NeckMetalSpec,
}

fields!(NeckSpec {
    below_pins_mm,
    above_pins_mm,
    thickness_mm,
    wood,
    plies,
    grain_percent,
    sections,
    layers unless layers.is_empty(),
    plates unless plates.is_none(),
});

/// A section of the neck.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct SectionSpec {
    /// Where, in per cent of the way along the middle line from the shoulder to the pillar.
    pub at_percent: f64,
    /// Through the neck, square to the plane of the strings.
    pub thickness_mm: f64,
    /// In the plane of the strings, square to the middle line.
    pub depth_mm: f64,
}

fields!(SectionSpec { at_percent, thickness_mm, depth_mm });

/// The pillar.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct PillarSpec {
    /// From the lowest string to the face of the pillar, square to the string, at the neck.
    pub gap_mm: f64,
    /// In the plane of the strings.
    pub width_mm: f64,
    /// Square to that plane.
    pub depth_mm: f64,
    /// Key of a wood.
    pub wood: String,
    /// How far beside its middle the push acts.
    pub beside_mm: f64,
}

fields!(PillarSpec { gap_mm, width_mm, depth_mm, wood, beside_mm });

/// The soundboard.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct BoardSpec {
    /// From its lower end to the lowest string, along it.
    pub below_mm: f64,
    /// From the highest string to its upper end, along it.
    pub above_mm: f64,
    /// Width at the lowest string.
    pub bass_width_mm: f64,
    /// Width at the highest string.
    pub treble_width_mm: f64,
    /// Thickness at the lowest string.
    pub bass_thickness_mm: f64,
    /// Thickness at the highest string.
    pub treble_thickness_mm: f64,
    /// Key of a wood, or `birch-plywood`.
    pub wood: String,
    /// Plies, where it is plywood.
    pub plies: u32,
    /// Width of the string rib, across the board; 0 where there is none.
    pub rib_width_mm: f64,
    /// Height of the string rib, square to the board.
    pub rib_height_mm: f64,
    /// Width of the strip outside, over the rib; 0 where there is none.
    pub strip_width_mm: f64,
    /// Height of the strip outside.
    pub strip_height_mm: f64,
    /// Key of the wood of both.
    pub rib_wood: String,
}

fields!(BoardSpec {
    below_mm,
    above_mm,
    bass_width_mm,
    treble_width_mm,
    bass_thickness_mm,
    treble_thickness_mm,
    wood,
    plies,
    rib_width_mm,
    rib_height_mm,
    strip_width_mm,
    strip_height_mm,
    rib_wood,
});

/// What holes are drilled with; the tuning pins have their diameter among the allowances.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct DrillsSpec {
    /// Diameter of the bridge pins; 0 where nothing is drilled.
    pub bridge_pin_mm: f64,
    /// How much wider than its string a hole of the soundboard is.
    pub string_clearance_mm: f64,
    /// Outer diameter of the eyelets of the soundboard; 0 where there are none.
    pub eyelet_mm: f64,
    /// For the screw of a lever or the axle of a disc; 0 where the maker of these says it.
    pub mechanism_mm: f64,
    /// How deep the hole of a tuning pin goes into the neck; 0 where it goes through.
    #[serde(skip_serializing_if = "is_none")]
    pub tuning_depth_mm: f64,
    /// How deep the hole of a bridge pin goes into the neck; 0 where it goes through.
    #[serde(skip_serializing_if = "is_none")]
    pub bridge_depth_mm: f64,
}

fields!(DrillsSpec {
    bridge_pin_mm,
    string_clearance_mm,
    eyelet_mm,
    mechanism_mm,
    tuning_depth_mm unless is_none(tuning_depth_mm),
    bridge_depth_mm unless is_none(bridge_depth_mm),
});

/// What stands for plywood where a wood is named.
pub const PLYWOOD: &str = "birch-plywood";

impl Default for GeometrySpec {
    fn default() -> Self {
        Self {
            board_angle_deg: 34.0,
            lean_deg: 0.0,
            spacing: SpacingSpec::default(),
            start_mm: 0.0,
            pin_sideways_mm: 8.0,
            strings_from_neck_mm: 30.0,
            drives: DrivesSpec::default(),
            nodes_mm: Vec::new(),
            neck: NeckSpec::default(),
            pillar: PillarSpec::default(),
            board: BoardSpec::default(),
            drills: DrillsSpec::default(),
            service: ServiceSpec::default(),
            sizes: SizesSpec::default(),
            joints: JointsSpec::default(),
            soundbox: SoundboxSpec::default(),
            woods: Vec::new(),
            bars: BarsSpec::default(),
            parts: String::new(),
        }
    }
}

impl Default for DrillsSpec {
    /// A hole 0.3 to 0.5 mm wider than its string.
    fn default() -> Self {
        Self {
            bridge_pin_mm: 3.0,
            string_clearance_mm: 0.4,
            eyelet_mm: 0.0,
            mechanism_mm: 0.0,
            tuning_depth_mm: 0.0,
            bridge_depth_mm: 0.0,
        }
    }
}

impl Default for SpacingSpec {
    /// A lever harp's spacing in the middle: a maker's note on spacing has 14.5 to 16 mm at middle C.
    fn default() -> Self {
        Self { measured: MeasuredSpec::Square, gaps: GapsSpec::UniformMm(14.5) }
    }
}

impl Default for NeckSpec {
    fn default() -> Self {
        Self {
            below_pins_mm: 15.0,
            above_pins_mm: 18.0,
            thickness_mm: 40.0,
            wood: "sugar-maple".to_owned(),
            plies: 27,
            grain_percent: 0.0,
            sections: Vec::new(),
            layers: Vec::new(),
            plates: NeckMetalSpec::default(),
        }
    }
}

impl Default for SectionSpec {
    fn default() -> Self {
        Self { at_percent: 0.0, thickness_mm: 40.0, depth_mm: 80.0 }
    }
}

impl Default for PillarSpec {
    /// A push 5 mm beside the middle: common practice, no source.
    fn default() -> Self {
        Self {
            gap_mm: 30.0,
            width_mm: 50.0,
            depth_mm: 45.0,
            wood: "sugar-maple".to_owned(),
            beside_mm: 5.0,
        }
    }
}

impl Default for BoardSpec {
    /// The lowest string 100 mm from the lower end: a book on making harps. No rib, as designs had before there was a
    /// place for it.
    fn default() -> Self {
        Self {
            below_mm: 100.0,
            above_mm: 60.0,
            bass_width_mm: 330.0,
            treble_width_mm: 110.0,
            bass_thickness_mm: 5.5,
            treble_thickness_mm: 2.8,
            wood: "sitka-spruce".to_owned(),
            plies: 3,
            rib_width_mm: 0.0,
            rib_height_mm: 0.0,
            strip_width_mm: 0.0,
            strip_height_mm: 0.0,
            rib_wood: "sugar-maple".to_owned(),
        }
    }
}
