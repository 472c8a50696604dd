//! The harps that are measured: the sample of 47 strings, and one with as many strings as a design may have.

use stringloft::design::document::{Design, StringSpec};
use stringloft::design::presets::SAMPLES;

/// The sample with 47 strings.
pub fn pedal() -> Design {
    let sample = SAMPLES.iter().find(|sample| sample.key == "pedal-47");
    sample.expect("there is such a sample").design()
}

/// So many strings on the curve of the sample, each made as its neighbour there, by pitch.
pub fn stretched(count: u32) -> Design {
    let mut design = pedal();
    let sample = std::mem::take(&mut design.strings);
    let length = |string: &StringSpec| string.length.parse::<f64>().expect("a number");
    design.strings = (0..count)
        .map(|index| {
            let share = f64::from(index) / f64::from(count - 1);
            let place = (1..sample.len() - 1).rev().find(|place| {
                u32::try_from(*place).is_ok_and(|place| f64::from(place) <= share * 46.0)
            });
            let place = place.unwrap_or(0);
            let rest = share * 46.0 - f64::from(u32::try_from(place).expect("few strings"));
            let (above, below) = (length(&sample[place]), length(&sample[place + 1]));
            StringSpec {
                note: format!("{:.2} Hz", 2960.0 * (31.0_f64 / 2960.0).powf(share)),
                length: format!("{:.1}", above * (below / above).powf(rest)),
                ..sample[if rest < 0.5 { place } else { place + 1 }].clone()
            }
        })
        .collect();
    design
}
