//! What the frame of a harp bears: its woods, its sections, the neck and the pillar under the pull of the
//! strings, and the soundboard.
//!
//! In order, each using those before it: `section`, `duration`, `wood` with `plywood`, `column`, `strip`,
//! `banded`, `space`, `liner`, `ended`, `plate`, `frame`, `verdict`, which sets stresses against what may be allowed, and `joint` by its
//! sizes.
//!
//! These are the formulas of beams and columns on sound, dry, straight-grained wood. They see no knot,
//! no glue line and no shock, and so they compare designs; they do not prove that a frame is
//! safe. A frame is to be judged by someone who can answer for it.

pub mod banded;
mod cited;
pub mod column;
pub mod duration;
pub mod ended;
pub mod frame;
pub mod holes;
pub mod joint;
pub mod laminate;
pub mod liner;
pub mod plate;
pub mod plated;
pub mod plywood;
pub mod reserve;
pub mod section;
pub mod soundbox;
pub mod space;
pub mod strip;
pub mod verdict;
pub mod wood;

use super::material::{Sourced, Standing};

/// A figure with its source, from constants.
fn sourced<T>(value: T, source: &str, standing: Standing) -> Sourced<T> {
    Sourced { value, source: source.to_owned(), standing }
}
