//! Intervals: cents and ratios of frequencies.

/// Cents of a frequency ratio.
pub fn cents(ratio: f64) -> f64 {
    1200.0 * ratio.log2()
}

/// The ratio of an interval in cents.
pub fn ratio(cents: f64) -> f64 {
    // By `pow`, which the page has anyway; `exp2` would bring a table of 4 kB. The 2 is hidden from the
    // compiler, which makes `exp2` of a power of 2.
    std::hint::black_box(2.0_f64).powf(cents / 1200.0)
}
