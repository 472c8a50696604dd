//! An ideal string in three pieces, light, heavy, light: the roots of its characteristic equation.
//!
//! On each piece the shape is a sine of wave number `k_i = ω √(μ_i/T)`; deflection and slope go on at the
//! joints. With equal ends of length `a` and the middle of length `b`, about the centre the shapes are even
//! or odd, and `k₁ cot k₁a = k₂ tan(k₂b/2)` for the odd partials, `k₁ cot k₁a = −k₂ cot(k₂b/2)` for the even.

use std::f64::consts::PI;

/// The share by which partial `n` lies above that of a string that is heavy throughout. `share` is the
/// length of each light end over the whole, `mass_ratio` its mass per metre over that of the middle.
pub fn exact_shift(n: u32, share: f64, mass_ratio: f64) -> f64 {
    // Multiplied out, so that there is no pole to step over. Length, tension and heavy mass are 1.
    let odd = n % 2 == 1;
    let miss = |omega: f64| {
        let light = omega * mass_ratio.sqrt();
        let (sine, cosine) = (light * share).sin_cos();
        let (half_sine, half_cosine) = (omega * (1.0 - 2.0 * share) / 2.0).sin_cos();
        if odd {
            light * cosine * half_cosine - omega * sine * half_sine
        } else {
            light * cosine * half_sine + omega * sine * half_cosine
        }
    };
    let uniform = f64::from(n) * PI;
    // Light ends raise every partial, by far less than half of the way to the next.
    let (mut low, mut high) = (uniform * (1.0 - 1e-9), uniform + 0.5 * PI);
    assert!(miss(low) * miss(high) < 0.0, "the root of partial {n} lies between");
    for _ in 0..100 {
        let middle = 0.5 * (low + high);
        if miss(low) * miss(middle) <= 0.0 { high = middle } else { low = middle }
    }
    0.5 * (low + high) / uniform - 1.0
}
