//! The physics: pure functions and plain data. No input or output, no clock, no global, no web.
//!
//! In order, each using those before it: `units`, `limit`, `interval`, `pitch`, `material`, `construction`,
//! `mechanics`, `stepped`, `lever`, `pluck`, `take_up`, `cut`, then `findings` and `analysis`, which
//! know each other, then `figure`, the list of what they give, and `tolerance`, how far off it may be.
//! `structure`, what the frame of a harp bears, uses only `units` and `material`; `measured`, what a
//! balance and a breaking test say of a material, only `units`. `geometry`, where everything stands,
//! uses `structure` and `analysis`; `keys`, which keys a harp plays, and `lengths`, which proposes and
//! shapes vibrating lengths, `analysis`, as does `choose`, the best set of strings from a stock; `bearing`,
//! what the frame of a design bears, uses most of these, and `giving`, what the strings lose of their pitch as it gives,
//! and `years`, what becomes of it, use `bearing`, as does `parts`, the wood of the harp for the saw; `settling`, the days in
//! which it is brought up and watched, uses `giving`. `listen`, which hears strings and says how far off they are, uses
//! only `interval` and `units`, as the worker of the page has no more; `sound`, what a plucked string sounds like, uses `analysis`.

pub mod analysis;
pub mod bearing;
pub mod choose;
pub mod construction;
pub mod cut;
pub mod figure;
pub mod findings;
pub mod geometry;
pub mod giving;
pub mod interval;
pub mod keys;
pub mod lengths;
pub mod lever;
pub mod limit;
pub mod listen;
pub mod material;
pub mod measured;
pub mod mechanics;
pub mod order;
pub mod parts;
pub mod pitch;
pub mod pluck;
pub mod settling;
pub mod sound;
pub mod stepped;
pub mod structure;
pub mod take_up;
pub mod tolerance;
pub mod units;
pub mod years;
