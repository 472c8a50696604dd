//! Stringloft designs the strings of a harp.
pub mod charts;
pub mod design;
pub mod engine;

#[cfg(test)]
mod testing;
