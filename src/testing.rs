//! The one helper of the unit tests.

use std::fmt::Display;

/// Fails unless `actual` is `expected` within the relative room `relative`.
///
/// # Panics
///
/// When the two are farther apart, or either is not a number.
#[track_caller]
pub fn assert_close(actual: f64, expected: f64, relative: f64, what: impl Display) {
    let gap = (actual - expected).abs();
    assert!(
        gap <= relative * expected.abs().max(f64::MIN_POSITIVE),
        "{what}: got {actual}, expected {expected}, off by {:e} of it",
        gap / expected.abs()
    );
}
