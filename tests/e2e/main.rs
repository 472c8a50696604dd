//! The built page in a real browser: `scripts/test e2e` builds nothing, `scripts/test page e2e` builds first.
//!
//! Every test is ignored unless asked for, as it needs a release build and Chromium.
#![cfg(not(target_arch = "wasm32"))]

#[allow(dead_code, reason = "a helper may wait for its test")]
mod browser;
mod driver;
#[allow(dead_code, reason = "a helper may wait for its test")]
mod paper;
#[allow(dead_code, reason = "a helper may wait for its test")]
mod server;

mod about;
mod asking;
mod barriers;
mod beginning;
mod builds;
mod choose;
mod client;
mod deploys;
mod earlier;
mod engines;
mod everyday;
mod eyes;
mod figures;
mod finding;
mod fingers;
mod keeping;
mod languages;
mod lofting;
mod maker;
mod opening;
mod parts;
mod printing;
mod pulling;
mod screens;
mod settling;
mod shape;
mod shots;
mod soak;
mod sound;
mod stock;
mod stringing;
mod touch;
mod tuner;
mod versions;
mod wood;
