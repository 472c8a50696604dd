//! Stringloft designs the strings of a harp.
pub mod design;
pub mod engine;
pub mod papers;

#[cfg(test)]
mod testing;
