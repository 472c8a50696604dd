//! Reading a decimal number. The standard library's reader brings a table of 10 KB into the page, which no
//! packing makes smaller; this one needs none.

/// The most digits that are looked at: they fit 64 bits.
const MOST_DIGITS: u32 = 19;

/// The number that a text is: digits with at most one point, perhaps a sign and a power of ten, and nothing
/// else. The nearest `f64` where at most 19 digits stand and the last has a place from 1e-19 to 1e19; beyond
/// that, off by at most some units in the last place.
///
/// # Example
///
/// ```
/// use stringloft::design::decimal::decimal;
///
/// assert_eq!(decimal("0.81"), Some(0.81));
/// assert_eq!(decimal("-1.5e3"), Some(-1500.0));
/// assert_eq!(decimal("1.5 mm"), None);
/// ```
pub fn decimal(text: &str) -> Option<f64> {
    let (negative, rest) = match text.as_bytes() {
        [b'-', rest @ ..] => (true, rest),
        [b'+', rest @ ..] | rest => (false, rest),
    };
    let (mut digits, mut taken, mut power, mut any) = (0_u64, 0, 0_i32, false);
    let (mut after_point, mut at) = (false, 0);
    while let Some(&sign) = rest.get(at) {
        match sign {
            b'0'..=b'9' => {
                any = true;
                if taken < MOST_DIGITS {
                    digits = digits * 10 + u64::from(sign - b'0');
                    taken += u32::from(digits > 0);
                    power -= i32::from(after_point);
                } else {
                    power += i32::from(!after_point);
                }
            }
            b'.' if !after_point => after_point = true,
            _ => break,
        }
        at += 1;
    }
    let end = &rest[at..];
    if let [b'e' | b'E', exponent @ ..] = end {
        let (down, exponent) = match exponent {
            [b'-', exponent @ ..] => (true, exponent),
            [b'+', exponent @ ..] | exponent => (false, exponent),
        };
        if exponent.is_empty() || !exponent.iter().all(u8::is_ascii_digit) {
            return None;
        }
        // So large a power is infinity or nothing, whatever the digits are.
        let number = exponent
            .iter()
            .fold(0_i32, |number, digit| (number * 10 + i32::from(digit - b'0')).min(99_999));
        power = power.saturating_add(if down { -number } else { number });
    } else if !end.is_empty() {
        return None;
    }
    let value = nearest(digits, power);
    any.then_some(if negative { -value } else { value })
}

/// The number nearest to some digits times a power of ten.
#[expect(clippy::cast_precision_loss, reason = "rounds to the nearest, which is what is wanted")]
fn nearest(digits: u64, power: i32) -> f64 {
    if digits == 0 {
        return 0.0;
    }
    let ten = |power: u32| 10_u128.pow(power);
    match power {
        0..=19 => (u128::from(digits) * ten(power.unsigned_abs())) as f64,
        -19..0 => {
            // The quotient has at least 63 bits, more than a number keeps; a bit for the rest below them
            // decides between two that are as near.
            let places = digits.leading_zeros() + 63;
            let (above, below) = (u128::from(digits) << places, ten(power.unsigned_abs()));
            let quotient = (above / below) | u128::from(!above.is_multiple_of(below));
            (0..places).fold(quotient as f64, |value, _| value / 2.0)
        }
        _ => {
            let mut value = digits as f64;
            // Beyond these powers it is infinity or nothing.
            for _ in 0..power.unsigned_abs().min(400) {
                value = if power > 0 { value * 10.0 } else { value / 10.0 };
            }
            value
        }
    }
}

/// A large number with its power of ten and at most three decimals: `1.5e300`. The standard library's writer of such
/// numbers is 3 kB of the page.
pub fn with_power(number: f64) -> String {
    if !number.is_finite() {
        return number.to_string();
    }
    let power = number.abs().log10().floor();
    let first = (number / 10_f64.powf(power) * 1e3).round() / 1e3;
    format!("{first}e{power}")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn large_numbers_have_their_power_of_ten() {
        for (number, text) in [(1e9, "1e9"), (-2.5e6, "-2.5e6"), (1.23456e300, "1.235e300")] {
            assert_eq!(with_power(number), text);
        }
        assert_eq!(with_power(f64::MAX), "1.798e308");
    }

    #[test]
    fn a_number_is_the_one_that_the_standard_library_reads() {
        for text in [
            "0",
            "-0",
            "+5",
            "5.",
            ".5",
            "0.1",
            "0.30000000000000004",
            "612",
            "24.125",
            "0.0254",
            "1e3",
            "1E-3",
            "1.5e+2",
            "9007199254740993",
            "9007199254740992.5",
            "123456789012345678",
            "1e19",
            "1e-19",
            "0.000000000000000001",
            "2.718281828459045",
            "00000000000000000000012.5",
        ] {
            assert_eq!(decimal(text), text.parse().ok(), "{text}");
        }
        // Numbers of all kinds, each by the shortest text and by a text that is rounded.
        let mut seed = 1_u64;
        for _ in 0..20_000 {
            seed = seed.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1);
            #[expect(clippy::cast_precision_loss, reason = "any number will do")]
            let number = (seed >> 11) as f64 / 2_f64.powi(i32::try_from(seed % 60).unwrap());
            for text in [number.to_string(), format!("{number:.7}"), format!("{number:.11e}")] {
                if text.len() < 20 {
                    assert_eq!(decimal(&text), text.parse().ok(), "{text}");
                }
            }
        }
    }

    #[test]
    fn what_is_no_number_is_none() {
        for text in
            ["", ".", "-", "+", "e5", "1e", "1e+", "1.2.3", "1 2", " 1", "inf", "nan", "0x1", "1,5"]
        {
            assert_eq!(decimal(text), None, "{text}");
        }
    }

    #[test]
    fn numbers_beyond_all_use_are_near_enough() {
        for text in ["1e300", "1e-300", "12345678901234567890123", "1.7e-40"] {
            let (ours, theirs) = (decimal(text).unwrap(), text.parse::<f64>().unwrap());
            assert!((ours / theirs - 1.0).abs() < 1e-13, "{text}: {ours} and {theirs}");
        }
        assert_eq!(decimal("1e999"), Some(f64::INFINITY));
        assert_eq!(decimal("1e-99999999999"), Some(0.0));
    }
}
