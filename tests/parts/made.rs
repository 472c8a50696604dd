//! Designs as their parts.

use stringloft::design::parts::{Parts, parts};
use stringloft::design::presets::SAMPLES;

pub fn samples() -> impl Iterator<Item = (&'static str, Parts)> {
    SAMPLES.iter().map(|sample| {
        let made = parts(&sample.design());
        (sample.key, made.unwrap_or_else(|why| panic!("{}: {why}", sample.key)))
    })
}
