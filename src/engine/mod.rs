//! The physics: pure functions and plain data. No input or output, no clock, no global, no web.
//!
//! In order, each using those before it: `units`, `pitch`, `material`, `construction`,
//! `mechanics`, `cut`, then `findings` and `analysis`, which know each other.

pub mod analysis;
pub mod construction;
pub mod cut;
pub mod findings;
pub mod material;
pub mod mechanics;
pub mod pitch;
pub mod units;
