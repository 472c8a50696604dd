//! Designs as their parts.

use stringloft::design::document::Design;
use stringloft::design::parts::sizes::PartSize;
use stringloft::design::parts::{Parts, parts};
use stringloft::design::presets::SAMPLES;

/// A sample whose back rises so far.
pub fn bent(design: &Design, rise_mm: f64) -> Design {
    PartSize::BackRise.edit(design, Some(rise_mm)).apply(design)
}

pub fn samples() -> impl Iterator<Item = (&'static str, Parts)> {
    SAMPLES.iter().map(|sample| {
        let made = parts(&sample.design());
        (sample.key, made.unwrap_or_else(|why| panic!("{}: {why}", sample.key)))
    })
}
