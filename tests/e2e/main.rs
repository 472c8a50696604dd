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

mod beginning;
mod builds;
mod choose;
mod deploys;
mod earlier;
mod engines;
mod everyday;
mod figures;
mod finding;
mod keeping;
mod lofting;
mod maker;
mod opening;
mod parts;
mod printing;
mod shape;
mod shots;
mod soak;
mod stock;
mod versions;
