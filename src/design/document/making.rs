//! Joints and soundbox as typed. A size of 0 was not given, and what needs it is not judged.

use serde::Serialize;

use crate::design::reading::{fields, words};

/// What holds a joint besides its faces.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum FastenerSpec {
    /// Nothing that is known.
    #[default]
    None,
    /// Wooden dowels, glued in.
    Dowels,
    /// Bolts with nuts.
    Bolts,
    /// Screws.
    Screws,
}

words!(FastenerSpec { "none" => None, "dowels" => Dowels, "bolts" => Bolts, "screws" => Screws });

/// What plates are made of.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum MetalSpec {
    /// Steel.
    #[default]
    Steel,
    /// Brass.
    Brass,
    /// Aluminium.
    Aluminium,
}

words!(MetalSpec { "steel" => Steel, "brass" => Brass, "aluminium" => Aluminium });

pub(super) fn is_none(size: &f64) -> bool {
    size.total_cmp(&0.0).is_eq()
}

const fn is_zero(count: &u32) -> bool {
    *count == 0
}

const fn is_closed(slotted: &bool) -> bool {
    !*slotted
}

const fn is_nothing(fasteners: &FastenerSpec) -> bool {
    matches!(fasteners, FastenerSpec::None)
}

pub(super) const fn is_steel(metal: &MetalSpec) -> bool {
    matches!(metal, MetalSpec::Steel)
}

/// A joint of the frame: one part ends on the other.
#[derive(Clone, Copy, Debug, Default, PartialEq, Serialize)]
pub struct JointSpec {
    /// The glued faces, across the harp; 0 where they are those of the part that ends there and no glue is counted on.
    #[serde(skip_serializing_if = "is_none")]
    pub face_width_mm: f64,
    /// The same in the plane of the strings.
    #[serde(skip_serializing_if = "is_none")]
    pub face_height_mm: f64,
    /// Thickness of a glued tenon across the harp.
    #[serde(skip_serializing_if = "is_none")]
    pub tenon_mm: f64,
    /// How deep it goes.
    #[serde(skip_serializing_if = "is_none")]
    pub tenon_depth_mm: f64,
    /// Dowels, bolts or screws: through the faces, or through plates where there are any.
    #[serde(skip_serializing_if = "is_nothing")]
    pub fasteners: FastenerSpec,
    /// How many; of plates, on each plate and part.
    #[serde(skip_serializing_if = "is_zero")]
    pub count: u32,
    /// How thick.
    #[serde(skip_serializing_if = "is_none")]
    pub diameter_mm: f64,
    /// How deep in the part that ends there.
    #[serde(skip_serializing_if = "is_none")]
    pub depth_mm: f64,
    /// From one to the next in the plane of the strings.
    #[serde(skip_serializing_if = "is_none")]
    pub apart_mm: f64,
    /// From row to row across the harp; 0 for one row.
    #[serde(skip_serializing_if = "is_none")]
    pub across_mm: f64,
    /// Thickness of a plate on each side.
    #[serde(skip_serializing_if = "is_none")]
    pub plate_mm: f64,
    /// Its width in the plane of the strings.
    #[serde(skip_serializing_if = "is_none")]
    pub plate_width_mm: f64,
    /// What the plates are made of.
    #[serde(skip_serializing_if = "is_steel")]
    pub metal: MetalSpec,
}

fields!(JointSpec {
    face_width_mm unless is_none(face_width_mm),
    face_height_mm unless is_none(face_height_mm),
    tenon_mm unless is_none(tenon_mm),
    tenon_depth_mm unless is_none(tenon_depth_mm),
    fasteners unless is_nothing(fasteners),
    count unless is_zero(count),
    diameter_mm unless is_none(diameter_mm),
    depth_mm unless is_none(depth_mm),
    apart_mm unless is_none(apart_mm),
    across_mm unless is_none(across_mm),
    plate_mm unless is_none(plate_mm),
    plate_width_mm unless is_none(plate_width_mm),
    metal unless is_steel(metal),
});

impl JointSpec {
    /// Whether nothing of it was given.
    pub fn is_none(&self) -> bool {
        *self == Self::default()
    }

    /// Its numbers, in their order.
    pub fn numbers(&self) -> [f64; 11] {
        [
            self.face_width_mm,
            self.face_height_mm,
            self.tenon_mm,
            self.tenon_depth_mm,
            f64::from(self.count),
            self.diameter_mm,
            self.depth_mm,
            self.apart_mm,
            self.across_mm,
            self.plate_mm,
            self.plate_width_mm,
        ]
    }
}

/// The joints of the frame.
#[derive(Clone, Copy, Debug, Default, PartialEq, Serialize)]
pub struct JointsSpec {
    /// The neck ends on the soundbox.
    #[serde(skip_serializing_if = "JointSpec::is_none")]
    pub shoulder: JointSpec,
    /// The pillar ends on the neck.
    #[serde(skip_serializing_if = "JointSpec::is_none")]
    pub head: JointSpec,
    /// The pillar ends on the base.
    #[serde(skip_serializing_if = "JointSpec::is_none")]
    pub foot: JointSpec,
}

fields!(JointsSpec {
    shoulder unless shoulder.is_none(),
    head unless head.is_none(),
    foot unless foot.is_none(),
});

impl JointsSpec {
    /// Whether nothing of them was given.
    pub fn is_none(&self) -> bool {
        *self == Self::default()
    }

    /// All of them, in their order.
    pub const fn all(&self) -> [&JointSpec; 3] {
        [&self.shoulder, &self.head, &self.foot]
    }
}

/// Bars of the board that are alike.
#[derive(Clone, Copy, Debug, Default, PartialEq, Serialize)]
pub struct BarSpec {
    /// How many; of bars along the board, how many pairs.
    #[serde(skip_serializing_if = "is_zero")]
    pub count: u32,
    /// How wide, where they are glued on.
    #[serde(skip_serializing_if = "is_none")]
    pub width_mm: f64,
    /// How high, square to the board.
    #[serde(skip_serializing_if = "is_none")]
    pub height_mm: f64,
    /// Where the first lies: in per cent of the length of the board from its lower end, or of the way from the middle to the
    /// side. With 0 for first and last they lie evenly.
    #[serde(skip_serializing_if = "is_none")]
    pub at_percent: f64,
    /// Where the last lies.
    #[serde(skip_serializing_if = "is_none")]
    pub to_percent: f64,
}

fields!(BarSpec {
    count unless is_zero(count),
    width_mm unless is_none(width_mm),
    height_mm unless is_none(height_mm),
    at_percent unless is_none(at_percent),
    to_percent unless is_none(to_percent),
});

impl BarSpec {
    /// Whether nothing of them was given.
    pub fn is_none(&self) -> bool {
        *self == Self::default()
    }
}

/// What the board has besides its string rib: bars, and sides that are thinner than its middle.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct BarsSpec {
    /// From side to side.
    #[serde(skip_serializing_if = "BarSpec::is_none")]
    pub cross: BarSpec,
    /// Along the board, in pairs.
    #[serde(skip_serializing_if = "BarSpec::is_none")]
    pub along: BarSpec,
    /// Thickness of the board at its sides, in per cent of that in the middle; 0 where it is the same.
    #[serde(skip_serializing_if = "is_none")]
    pub side_percent: f64,
    /// Key of the wood of the bars.
    pub wood: String,
}

fields!(BarsSpec {
    cross unless cross.is_none(),
    along unless along.is_none(),
    side_percent unless is_none(side_percent),
    wood,
});

impl Default for BarsSpec {
    fn default() -> Self {
        Self {
            cross: BarSpec::default(),
            along: BarSpec::default(),
            side_percent: 0.0,
            wood: "sitka-spruce".to_owned(),
        }
    }
}

impl BarsSpec {
    /// Whether nothing of it was given.
    pub fn is_none(&self) -> bool {
        *self == Self::default()
    }

    /// Its numbers, in their order.
    pub fn numbers(&self) -> [f64; 11] {
        let (cross, along) = (&self.cross, &self.along);
        [
            f64::from(cross.count),
            cross.width_mm,
            cross.height_mm,
            cross.at_percent,
            cross.to_percent,
            f64::from(along.count),
            along.width_mm,
            along.height_mm,
            along.at_percent,
            along.to_percent,
            self.side_percent,
        ]
    }
}

/// The soundbox behind the board.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct SoundboxSpec {
    /// From board to back at the lowest string.
    #[serde(skip_serializing_if = "is_none")]
    pub bass_depth_mm: f64,
    /// From board to back at the highest string.
    #[serde(skip_serializing_if = "is_none")]
    pub treble_depth_mm: f64,
    /// Thickness of the sides.
    #[serde(skip_serializing_if = "is_none")]
    pub side_mm: f64,
    /// Key of the wood of the sides, or `birch-plywood`.
    pub side_wood: String,
    /// Thickness of the back.
    #[serde(skip_serializing_if = "is_none")]
    pub back_mm: f64,
    /// Key of the wood of the back, or `birch-plywood`.
    pub back_wood: String,
    /// Width of each of the four liners, across the harp.
    #[serde(skip_serializing_if = "is_none")]
    pub liner_width_mm: f64,
    /// Their height.
    #[serde(skip_serializing_if = "is_none")]
    pub liner_height_mm: f64,
    /// From brace to brace, at most.
    #[serde(skip_serializing_if = "is_none")]
    pub brace_gap_mm: f64,
    /// Sound holes in the back.
    #[serde(skip_serializing_if = "is_zero")]
    pub holes: u32,
    /// How long each is, along the back.
    #[serde(skip_serializing_if = "is_none")]
    pub hole_length_mm: f64,
    /// How wide.
    #[serde(skip_serializing_if = "is_none")]
    pub hole_width_mm: f64,
    /// Whether the back is open all along, as wide as a hole.
    #[serde(skip_serializing_if = "is_closed")]
    pub slotted: bool,
}

fields!(SoundboxSpec {
    bass_depth_mm unless is_none(bass_depth_mm),
    treble_depth_mm unless is_none(treble_depth_mm),
    side_mm unless is_none(side_mm),
    side_wood,
    back_mm unless is_none(back_mm),
    back_wood,
    liner_width_mm unless is_none(liner_width_mm),
    liner_height_mm unless is_none(liner_height_mm),
    brace_gap_mm unless is_none(brace_gap_mm),
    holes unless is_zero(holes),
    hole_length_mm unless is_none(hole_length_mm),
    hole_width_mm unless is_none(hole_width_mm),
    slotted unless is_closed(slotted),
});

impl Default for SoundboxSpec {
    fn default() -> Self {
        Self {
            bass_depth_mm: 0.0,
            treble_depth_mm: 0.0,
            side_mm: 0.0,
            side_wood: "sugar-maple".to_owned(),
            back_mm: 0.0,
            back_wood: "birch-plywood".to_owned(),
            liner_width_mm: 0.0,
            liner_height_mm: 0.0,
            brace_gap_mm: 0.0,
            holes: 0,
            hole_length_mm: 0.0,
            hole_width_mm: 0.0,
            slotted: false,
        }
    }
}

impl SoundboxSpec {
    /// Whether nothing of it was given.
    pub fn is_none(&self) -> bool {
        *self == Self::default()
    }

    /// Its numbers, in their order.
    pub fn numbers(&self) -> [f64; 10] {
        [
            self.bass_depth_mm,
            self.treble_depth_mm,
            self.side_mm,
            self.back_mm,
            self.liner_width_mm,
            self.liner_height_mm,
            self.brace_gap_mm,
            f64::from(self.holes),
            self.hole_length_mm,
            self.hole_width_mm,
        ]
    }
}
