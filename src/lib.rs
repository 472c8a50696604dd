//! Stringloft designs the strings of a harp.
pub mod design;
pub mod engine;

#[cfg(test)]
mod testing;
