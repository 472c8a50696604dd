//! What the maker wants along the compass when strings are chosen: a curve, limits, and what matters how much.
//!
//! A place on the compass is a pitch, in keys of the MIDI standard (A4 is 69, a semitone is 1), so that a string
//! put in or taken out moves nothing. Usual values are common practice, no source.

use serde::Serialize;

use crate::design::reading::{fields, words};

/// The most points of a curve.
pub const MOST_POINTS: usize = 12;
/// The most zones of gauges.
pub const MOST_ZONES: usize = 24;
/// The most kinds of string that can be listed.
pub const MOST_KINDS: usize = 40;

/// What is wanted of the strings.
#[derive(Clone, Debug, Default, PartialEq, Serialize)]
pub struct TargetsSpec {
    /// Which curve is wanted.
    pub wants: WantsSpec,
    /// The wanted pluck stiffness: pairs of a place and N/mm, from the bass; between two points it runs straight
    /// in its logarithm, outside them it stays. None: the usual one.
    pub points_n_per_mm: Vec<(f64, f64)>,
    /// The wanted tension: pairs of a place and newtons, in the same way.
    pub points_n: Vec<(f64, f64)>,
    /// What matters how much.
    pub weights: WeightsSpec,
    /// The lowest load share; none for what is usual in the family.
    pub least_share_percent: Option<f64>,
    /// The highest load share; none for what is usual in the family.
    pub most_share_percent: Option<f64>,
    /// The thinnest and the thickest string from note to note.
    pub zones: Vec<ZoneSpec>,
    /// The kinds of string that may be used, from the treble to the bass. None: all, in the usual order.
    pub kinds: Vec<KindSpec>,
    /// How often the kind may change along the compass; none for any number.
    pub most_changes: Option<u32>,
    /// The greatest pull of all strings together; none for any.
    pub most_total_n: Option<f64>,
    /// The most different strings and wires; none for any number.
    pub most_items: Option<u32>,
    /// The family of strings that are chosen from, where no kinds are listed.
    pub family: FamilySpec,
    /// The note from which strings are wound at the latest. Empty: the search decides.
    pub wound_from: String,
    /// The thickest plain string; none for what is usual in the family.
    pub thickest_plain_mm: Option<f64>,
    /// By how much the feel may step from a string to the next; none for what is usual in the family.
    pub most_jump_percent: Option<f64>,
}

fields!(TargetsSpec {
    wants,
    points_n_per_mm,
    points_n,
    weights,
    least_share_percent,
    most_share_percent,
    zones,
    kinds,
    most_changes,
    most_total_n,
    most_items,
    family,
    wound_from,
    thickest_plain_mm,
    most_jump_percent,
});

/// Which curve is wanted.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum WantsSpec {
    /// Pluck stiffness: how the string meets the finger.
    #[default]
    Stiffness,
    /// Tension.
    Tension,
}

words!(WantsSpec { "stiffness" => Stiffness, "tension" => Tension });

/// Which strings are chosen from: plain ones of one material, and wound ones below.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum FamilySpec {
    /// The kinds that are on the harp.
    #[default]
    Present,
    /// Nylon and wound strings.
    Nylon,
    /// Gut and wound strings.
    Gut,
    /// Fluorocarbon and wound strings.
    Fluorocarbon,
    /// Wire.
    Wire,
}

words!(FamilySpec {
    "present" => Present,
    "nylon" => Nylon,
    "gut" => Gut,
    "fluorocarbon" => Fluorocarbon,
    "wire" => Wire,
});

/// What matters how much, from 0 (not at all) to 10.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct WeightsSpec {
    /// To be near the curve.
    pub target: f64,
    /// That the pluck stiffness runs on evenly from string to string.
    pub even_stiffness: f64,
    /// That the tension runs on evenly.
    pub even_tension: f64,
    /// That the kind of string changes seldom.
    pub changes: f64,
    /// That there are few different strings and wires.
    pub items: f64,
    /// That the set is cheap.
    pub price: f64,
}

fields!(WeightsSpec { target, even_stiffness, even_tension, changes, items, price });

/// The thinnest and the thickest string of a part of the compass. An empty text is no limit.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize)]
pub struct ZoneSpec {
    /// The lowest note of the zone.
    #[serde(skip_serializing_if = "String::is_empty")]
    pub lowest: String,
    /// The highest note of the zone.
    #[serde(skip_serializing_if = "String::is_empty")]
    pub highest: String,
    /// The thinnest gauge.
    #[serde(skip_serializing_if = "String::is_empty")]
    pub thinnest: String,
    /// The thickest gauge.
    #[serde(skip_serializing_if = "String::is_empty")]
    pub thickest: String,
}

fields!(ZoneSpec {
    lowest unless lowest.is_empty(),
    highest unless highest.is_empty(),
    thinnest unless thinnest.is_empty(),
    thickest unless thickest.is_empty(),
});

/// A kind of string and where it may be used. An empty note is no limit.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize)]
pub struct KindSpec {
    /// Its materials from the core outward, by key: `gut`, `steel + silk + bronze`.
    pub kind: String,
    /// The lowest note.
    #[serde(skip_serializing_if = "String::is_empty")]
    pub lowest: String,
    /// The highest note.
    #[serde(skip_serializing_if = "String::is_empty")]
    pub highest: String,
}

fields!(KindSpec { kind, lowest unless lowest.is_empty(), highest unless highest.is_empty() });

impl WeightsSpec {
    /// How much matters what matters somewhat.
    pub const SOME: f64 = 3.0;
    /// How much matters what matters much.
    pub const MUCH: f64 = 10.0;
}

impl Default for WeightsSpec {
    fn default() -> Self {
        Self {
            target: Self::SOME,
            even_stiffness: Self::SOME,
            even_tension: 0.0,
            changes: Self::SOME,
            items: 0.0,
            price: 0.0,
        }
    }
}

impl TargetsSpec {
    /// Whether nothing was changed.
    pub fn is_usual(&self) -> bool {
        *self == Self::default()
    }

    /// The points of the curve that is wanted.
    pub fn points(&self) -> &[(f64, f64)] {
        match self.wants {
            WantsSpec::Stiffness => &self.points_n_per_mm,
            WantsSpec::Tension => &self.points_n,
        }
    }

    /// The same with other points of the curve that is wanted.
    #[must_use]
    pub fn with_points(&self, points: Vec<(f64, f64)>) -> Self {
        let mut next = self.clone();
        match self.wants {
            WantsSpec::Stiffness => next.points_n_per_mm = points,
            WantsSpec::Tension => next.points_n = points,
        }
        next
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// A text leaves out what is usual, so that the usual must never change.
    #[test]
    fn the_usual_targets_stay_as_they_are() {
        let usual = "{\"wants\":\"stiffness\",\"points_n_per_mm\":[],\"points_n\":[],\"weights\":{\"target\":3.0,\
            \"even_stiffness\":3.0,\"even_tension\":0.0,\"changes\":3.0,\"items\":0.0,\"price\":0.0},\
            \"least_share_percent\":null,\"most_share_percent\":null,\"zones\":[],\"kinds\":[],\
            \"most_changes\":null,\"most_total_n\":null,\"most_items\":null,\"family\":\"present\",\
            \"wound_from\":\"\",\"thickest_plain_mm\":null,\"most_jump_percent\":null}";
        assert_eq!(serde_json::to_string(&TargetsSpec::default()).unwrap(), usual);
    }
}
