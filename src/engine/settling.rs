//! The days in which a new harp settles: the [`plan`] by which it is brought up to pitch, what a log of its strings says
//! ([`creep`]) and which of them behave unlike the others ([`unlike`]), and what a string weighs by its sound
//! ([`by_ear`]).

pub mod by_ear;
pub mod creep;
pub mod plan;
pub mod unlike;
