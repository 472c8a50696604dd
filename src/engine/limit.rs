//! Whether a value is beyond a limit: findings and the search for a set judge alike.

/// A value this near to its limit, as a share of it, stands at the limit: the last digits of a
/// calculation put nothing beyond. A length that was worked out for a limit would else be found at fault.
const AT_LIMIT: f64 = 1e-9;

/// Whether a value is above a limit of 0 or more.
pub fn is_above(value: f64, limit: f64) -> bool {
    value > limit * (1.0 + AT_LIMIT)
}

/// Whether a value is below a limit of 0 or more.
pub fn is_below(value: f64, limit: f64) -> bool {
    value < limit * (1.0 - AT_LIMIT)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_stands_at_a_limit_is_not_beyond_it() {
        for limit in [0.0, 0.7, 12.0, 75.0, 1.9e3] {
            for value in [limit, limit * (1.0 + 1e-10), limit * (1.0 - 1e-10)] {
                assert!(!is_above(value, limit) && !is_below(value, limit), "{value}, {limit}");
            }
        }
        assert!(is_above(75.000_001, 75.0) && is_below(74.999_999, 75.0));
        assert!(is_below(74.0, f64::INFINITY) && !is_above(f64::NAN, 1.0));
    }
}
