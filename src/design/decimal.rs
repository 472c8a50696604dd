//! Reading a decimal number. The standard library's reader brings a table of 10 KB into the page, which no
//! packing makes smaller; this one needs none.

/// The most digits that are looked at: they fit 64 bits.
const MOST_DIGITS: u32 = 19;

/// The number that a text is: digits with at most one point, perhaps a sign and a power of ten, and nothing
/// else. The nearest `f64` where at most 19 digits stand behind leading zeros, however small or large: so what is
/// written in the shortest way is read as it was. Of more digits the rest only decides between two that are as near.
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
    let mut more = false;
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
                    more |= sign != b'0';
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
    let value = nearest(digits, more, power);
    any.then_some(if negative { -value } else { value })
}

/// Bits that a number keeps, the power of two of the last bit of the smallest one, and of the first of the largest.
const KEPT: i32 = 53;
const SMALLEST: i32 = -1074;
const LARGEST: i32 = 1023;

/// The number nearest to some digits times a power of ten; `more` says that something small was cut off.
///
/// It is worked out as 128 bits times a power of two. Each step by ten loses at most 2⁻¹²⁰ of it, far less than 19 digits can
/// lie from the middle between two numbers; where they lie right in it, nothing is lost.
#[expect(clippy::cast_precision_loss, reason = "so many bits as a number keeps are left")]
fn nearest(digits: u64, more: bool, power: i32) -> f64 {
    if digits == 0 {
        return 0.0;
    }
    let (mut bits, mut two) = (u128::from(digits), 0_i32);
    let mut fill = |bits: u128| {
        let free = bits.leading_zeros();
        two -= i32::try_from(free).unwrap_or(0);
        bits << free
    };
    bits = fill(bits) | u128::from(more);
    // Beyond these powers it is infinity or nothing.
    for _ in 0..power.unsigned_abs().min(400) {
        bits = if power > 0 { fill((bits >> 4) * 10) } else { fill(bits / 10) };
    }
    if power > 0 {
        two += 4 * power.min(400);
    }
    let first = two + 127;
    if first > LARGEST {
        return f64::INFINITY;
    }
    let cut = 128 - (first - SMALLEST + 1).clamp(0, KEPT);
    let (kept, rest) = match u32::try_from(cut) {
        Ok(cut @ 1..128) => (bits >> cut, bits << (128 - cut)),
        _ => (0, if first < SMALLEST - 1 { 0 } else { bits }),
    };
    let half = 1_u128 << 127;
    let up = rest > half || (rest == half && kept % 2 == 1);
    let (value, two) = ((kept + u128::from(up)) as f64, two + cut);
    let step = if two > 0 { 2.0 } else { 0.5 };
    (0..two.unsigned_abs()).fold(value, |value, _| value * step)
}

/// A large or a small number with its power of ten and at most three decimals: `1.5e300`. The standard library's writer of such
/// numbers is 3 kB of the page.
pub fn with_power(number: f64) -> String {
    if !number.is_finite() {
        return number.to_string();
    }
    let power = number.abs().log10().floor();
    // In two steps, as ten to the power of the smallest numbers is none.
    let half = 10_f64.powf(0.5 * power);
    let first = (number / half / half * 1e3).round() / 1e3;
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
        for (number, text) in [(8e-127, "8e-127"), (-2.5e-7, "-2.5e-7"), (5e-324, "4.941e-324")] {
            assert_eq!(with_power(number), text);
        }
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

    /// What is written in the shortest way comes back, over the whole range; the standard library's reader is the judge.
    #[test]
    fn a_number_of_any_size_is_read_as_it_was_written() {
        let mut seed = 7_u64;
        for _ in 0..20_000 {
            seed = seed.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1);
            let number = f64::from_bits(seed);
            if number.is_finite() {
                assert_eq!(decimal(&number.to_string()), Some(number), "{number}");
                assert_eq!(decimal(&format!("{number:e}")), Some(number), "{number:e}");
            }
        }
        for text in [
            "1e23",
            "8e-127",
            "9007199254740993e5",
            "12345678901234567890123",
            "9007199254740992.50000000000000000001",
            "9007199254740993.00000000000000000000",
            "1.7976931348623157e308",
            "1.7976931348623159e308",
            "2.2250738585072014e-308",
            "2.2250738585072011e-308",
            "4.9e-324",
            "2.4703282292062327e-324",
            "2.4703282292062328e-324",
            "2e-324",
            "1e999",
            "1e-99999999999",
        ] {
            assert_eq!(decimal(text), text.parse().ok(), "{text}");
        }
    }
}
