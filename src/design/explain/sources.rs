//! Where the formulas come from, each with how well it is known, and the reasons that go with a pull.

use super::Source;
use crate::engine::analysis::Unknown;
use crate::engine::material::Standing::{Computed, FromMemory, SecondHand, Seen};
use crate::words::numbers_sources as say;

pub(super) const GEOMETRY: Source = (say::GEOMETRY, Computed);
pub(super) const PARTS_OF_A_FORCE: Source = (say::PARTS_OF_A_FORCE, Computed);
pub(super) const STATICS: Source = (say::STATICS, Computed);
pub(super) const HOOKE: Source = (say::HOOKE, Computed);
pub(super) const WAVES: Source = (say::WAVES, Seen);
pub(super) const FLETCHER: Source = (say::FLETCHER, SecondHand);
pub(super) const YOUNG: Source = (say::YOUNG, Seen);
pub(super) const PHYSICS: Source = (say::PHYSICS, FromMemory);
pub(super) const STRESS_LAW: Source = (say::STRESS_LAW, Seen);
pub(super) const PACES: Source = (say::PACES, Seen);
pub(super) const BENDING: Source = (say::BENDING, Seen);
pub(super) const BENDING_LAW: Source = (say::BENDING_LAW, SecondHand);
pub(super) const HARDENING: Source = (say::HARDENING, FromMemory);
pub(super) const ENERGY: Source = (say::ENERGY, Seen);
pub(super) const STRETCHING: Source = (say::STRETCHING, Seen);
pub(super) const STEPPED: Source = (say::STEPPED, Computed);
pub(super) const KEMP: Source = (say::KEMP, Seen);
pub(super) const AUDIBLE: Source = (say::AUDIBLE, FromMemory);
pub(super) const GUITARS: Source = (say::GUITARS, Seen);
pub(super) const WARMTH: Source = (say::WARMTH, Seen);
pub(super) const PRACTICE: Source = (say::PRACTICE, FromMemory);
pub(super) const RULE_OF_FEEL: Source = (say::RULE_OF_FEEL, Seen);
pub(super) const MATERIALS: Source = (say::MATERIALS, Seen);
pub(super) const STANDARD_PITCH: Source = (say::STANDARD_PITCH, SecondHand);
pub(super) const TEMPERAMENTS: Source = (say::TEMPERAMENTS, Computed);
pub(super) const ORGAN: Source = (say::ORGAN, Seen);
pub(super) const HARP_OCTAVES: Source = (say::HARP_OCTAVES, Seen);
pub(super) const SIGNS: Source = (say::SIGNS, Computed);
pub(super) const STEPWISE: Source = (say::STEPWISE, FromMemory);
pub(super) const CONSTRAINED: Source = (say::CONSTRAINED, FromMemory);
pub(super) const GRADUATION: Source = (say::GRADUATION, FromMemory);
pub(super) const LEAST_SQUARES: Source = (say::LEAST_SQUARES, FromMemory);
pub(super) const PEDALS: Source = (say::PEDALS, Seen);
pub(super) const UNCERTAINTY: Source = (say::UNCERTAINTY, FromMemory);

pub(super) const FRAME_STATICS: Source = (say::FRAME_STATICS, Computed);
pub(super) const TORSION: Source = (say::TORSION, FromMemory);
pub(super) const COLUMNS: Source = (say::COLUMNS, FromMemory);
pub(super) const JOINTS: Source = (say::JOINTS, SecondHand);
pub(super) const TUBES: Source = (say::TUBES, FromMemory);
pub(super) const PLATES: Source = (say::PLATES, FromMemory);
pub(super) const CREEP: Source = (say::CREEP, SecondHand);
pub(super) const CREEP_POWER: Source = (say::CREEP_POWER, FromMemory);
pub(super) const SWELLING: Source = (say::SWELLING, FromMemory);
pub(super) const SPACE_FRAMES: Source = (say::SPACE_FRAMES, FromMemory);
pub(super) const LAMINATES: Source = (say::LAMINATES, FromMemory);
pub(super) const METALS: Source = (say::METALS, FromMemory);
pub(super) const HELD_METAL: Source = (say::HELD_METAL, FromMemory);
pub(super) const GLUED_ENDS: Source = (say::GLUED_ENDS, FromMemory);
pub(super) const RIMS: Source = (say::RIMS, FromMemory);
pub(super) const BRASS: Source = (say::BRASS, Seen);
pub(super) const OWN_WOOD: Source = (say::OWN_WOOD, FromMemory);
pub(super) const DAMP: Source = (say::DAMP, FromMemory);
pub(super) const WOOD_TABLE: Source = (say::WOOD_TABLE, FromMemory);
pub(super) const WOOD_LIMITS: Source = (say::WOOD_LIMITS, FromMemory);
pub(super) const TIME: Source = (say::TIME, SecondHand);
pub(super) const PLYWOOD: Source = (say::PLYWOOD, FromMemory);

/// Why there may be no pull.
pub(super) const NO_PULL: &[Unknown] = &[
    Unknown::Pitch,
    Unknown::Length,
    Unknown::OffCurve,
    Unknown::MakeUp,
    Unknown::BareEnds,
    Unknown::TooStiff,
    Unknown::OutOfReach,
];
