//! What the neck is glued up of, the metal beside it, and woods of one's own, as typed. A size of 0 was not given.

use serde::Serialize;

use super::making::{MetalSpec, is_none, is_steel};
use crate::design::reading::fields;

/// The most layers that a neck may have, and the most woods of its own that a design may have.
pub use crate::engine::structure::laminate::MOST_LAYERS as MOST_NECK_LAYERS;
pub const MOST_WOODS: usize = 8;
/// The most sections of its own that a neck may have.
pub const MOST_SECTIONS: usize = 40;

const fn is_not(what: &bool) -> bool {
    !*what
}

/// A layer of the neck.
#[derive(Clone, Debug, Default, PartialEq, Serialize)]
pub struct LayerSpec {
    /// Through the neck.
    pub thickness_mm: f64,
    /// From the line of the neck to its grain, in the plane of the strings; 90 where it is crossed.
    #[serde(skip_serializing_if = "is_none")]
    pub angle_deg: f64,
    /// Key of its wood; empty where it is that of the neck.
    #[serde(skip_serializing_if = "String::is_empty")]
    pub wood: String,
}

fields!(LayerSpec {
    thickness_mm,
    angle_deg unless is_none(angle_deg),
    wood unless wood.is_empty(),
});

/// Plates on the faces of the neck; none where they have no thickness.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct NeckMetalSpec {
    /// Of each.
    pub thickness_mm: f64,
    /// In the plane of the strings, square to the line of the neck.
    pub height_mm: f64,
    /// Whether there is one on one face alone.
    #[serde(skip_serializing_if = "is_not")]
    pub one_side: bool,
    /// What they are made of.
    #[serde(skip_serializing_if = "is_steel")]
    pub metal: MetalSpec,
    /// Where they begin, in per cent of the way from the shoulder to the pillar.
    pub from_percent: f64,
    /// Where they end.
    pub to_percent: f64,
    /// Diameter of their screws; 0 where they are glued on.
    #[serde(skip_serializing_if = "is_none")]
    pub screw_mm: f64,
    /// From screw to screw along the neck.
    pub screw_gap_mm: f64,
    /// How deep they go into the wood; 0 where that is not known.
    #[serde(skip_serializing_if = "is_none")]
    pub screw_depth_mm: f64,
}

fields!(NeckMetalSpec {
    thickness_mm,
    height_mm,
    one_side unless is_not(one_side),
    metal unless is_steel(metal),
    from_percent,
    to_percent,
    screw_mm unless is_none(screw_mm),
    screw_gap_mm,
    screw_depth_mm unless is_none(screw_depth_mm),
});

impl Default for NeckMetalSpec {
    fn default() -> Self {
        Self {
            thickness_mm: 0.0,
            height_mm: 0.0,
            one_side: false,
            metal: MetalSpec::default(),
            from_percent: 0.0,
            to_percent: 100.0,
            screw_mm: 0.0,
            screw_gap_mm: 60.0,
            screw_depth_mm: 0.0,
        }
    }
}

impl NeckMetalSpec {
    /// Whether nothing of it was given.
    pub fn is_none(&self) -> bool {
        *self == Self::default()
    }

    /// Its numbers, in their order.
    pub const fn numbers(&self) -> [f64; 7] {
        [
            self.thickness_mm,
            self.height_mm,
            self.from_percent,
            self.to_percent,
            self.screw_mm,
            self.screw_gap_mm,
            self.screw_depth_mm,
        ]
    }
}

/// A wood of one's own, by a bar of it with its grain along it.
#[derive(Clone, Debug, Default, PartialEq, Serialize)]
pub struct OwnWoodSpec {
    /// By which the parts name it.
    pub key: String,
    /// What it is called.
    pub name: String,
    /// Whether it is a conifer.
    #[serde(skip_serializing_if = "is_not")]
    pub softwood: bool,
    /// Whether it takes the strengths of the class that it reaches; else none is known.
    #[serde(skip_serializing_if = "is_not")]
    pub by_class: bool,
    /// Length of the bar.
    pub length_mm: f64,
    /// Across the way it is bent.
    pub width_mm: f64,
    /// The way it is bent.
    pub height_mm: f64,
    /// What it weighs.
    pub weight_g: f64,
    /// From support to support.
    #[serde(skip_serializing_if = "is_none")]
    pub span_mm: f64,
    /// Weight in the middle, in kilograms.
    #[serde(skip_serializing_if = "is_none")]
    pub load_kg: f64,
    /// How far the middle falls under it.
    #[serde(skip_serializing_if = "is_none")]
    pub falls_mm: f64,
    /// The tone of the free bar that is tapped.
    #[serde(skip_serializing_if = "is_none")]
    pub tone_hz: f64,
}

fields!(OwnWoodSpec {
    key,
    name,
    softwood unless is_not(softwood),
    by_class unless is_not(by_class),
    length_mm,
    width_mm,
    height_mm,
    weight_g,
    span_mm unless is_none(span_mm),
    load_kg unless is_none(load_kg),
    falls_mm unless is_none(falls_mm),
    tone_hz unless is_none(tone_hz),
});

impl OwnWoodSpec {
    /// Its numbers, in their order.
    pub const fn numbers(&self) -> [f64; 8] {
        [
            self.length_mm,
            self.width_mm,
            self.height_mm,
            self.weight_g,
            self.span_mm,
            self.load_kg,
            self.falls_mm,
            self.tone_hz,
        ]
    }
}
