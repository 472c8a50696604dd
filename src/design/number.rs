//! Taking a number and a unit from the beginning of a typed text.
//!
//! A number is a decimal, a fraction or a whole number with a fraction. Powers of ten (`1e3`),
//! infinities and the like are not numbers here.

use super::decimal::decimal;

use std::borrow::Cow;

/// A text with the signs of print made plain: one kind of blank, of quote and of dash, the decimal
/// comma a point, no blanks between thousands, nothing invisible.
pub(super) fn plain(text: &str) -> Cow<'_, str> {
    // Most texts are plain already.
    let is_plain = |letter: u8| matches!(letter, b' '..=b'~') && !matches!(letter, b',' | b'\'');
    if text.bytes().all(is_plain) {
        return Cow::Borrowed(text.trim());
    }
    let letters: Vec<char> = text.chars().filter(|c| !is_invisible(*c)).collect();
    let mut out = String::with_capacity(text.len());
    for (place, &letter) in letters.iter().enumerate() {
        let digits = letters[place + 1..].iter().take(5).take_while(|c| c.is_ascii_digit()).count();
        let after_digit = out.ends_with(|c: char| c.is_ascii_digit());
        match letter {
            '\u{2009}' | '\u{202f}' | '\u{a0}'
                if after_digit && digits == 3 && letters.get(place + 4) != Some(&'/') => {}
            ',' if digits > 0 && (after_digit || out.trim().is_empty()) => out.push('.'),
            '″' | '“' | '”' => out.push('"'),
            // Two single quotes are one double.
            '\'' | '′' | '’' | '‘' if out.ends_with('\'') => {
                out.pop();
                out.push('"');
            }
            '′' | '’' | '‘' => out.push('\''),
            '−' | '–' | '‐' | '‑' => out.push('-'),
            '⁄' | '∕' => out.push('/'),
            c if c.is_whitespace() => out.push(' '),
            c => out.push(c),
        }
    }
    Cow::Owned(out.trim().to_owned())
}

/// Whether a character takes no room: joiners, marks of direction, the byte order mark.
fn is_invisible(c: char) -> bool {
    matches!(c, '\u{200b}'..='\u{200f}' | '\u{2060}' | '\u{feff}' | '\u{ad}')
}

/// Whether a plain text is a number without a unit.
pub(super) fn is_bare(typed: &str) -> bool {
    take_number(typed).is_some_and(|(_, rest)| rest.is_empty())
}

/// A number at the beginning: a decimal, a fraction, or a whole number with a fraction; and what
/// follows it.
pub(super) fn take_number(text: &str) -> Option<(f64, &str)> {
    let (sign, text) = match text.strip_prefix('-') {
        Some(rest) => (-1.0, rest.trim_start()),
        None => (1.0, text),
    };
    if let Some((value, rest)) = take_fraction(text) {
        return Some((sign * value, rest.trim_start()));
    }
    let end = text.find(|c: char| !c.is_ascii_digit() && c != '.').unwrap_or(text.len());
    let (digits, rest) = text.split_at(end);
    let value = decimal(digits)?;
    let rest = rest.trim_start();
    if !digits.contains('.')
        && let Some((part, after)) =
            take_fraction(rest.strip_prefix('-').unwrap_or(rest).trim_start())
        && part < 1.0
    {
        return Some((sign * (value + part), after.trim_start()));
    }
    Some((sign * value, rest))
}

/// A fraction at the beginning: `1/8` or `⅛`; and what follows it.
fn take_fraction(text: &str) -> Option<(f64, &str)> {
    let first = text.chars().next()?;
    if let Some((_, value)) = FRACTIONS.iter().find(|(sign, _)| *sign == first) {
        return Some((*value, &text[first.len_utf8()..]));
    }
    let (above, rest) = text.split_at(text.find(|c: char| !c.is_ascii_digit())?);
    let rest = rest.strip_prefix('/')?;
    let (below, rest) =
        rest.split_at(rest.find(|c: char| !c.is_ascii_digit()).unwrap_or(rest.len()));
    let (above, below) = (decimal(above)?, decimal(below)?);
    (below > 0.0).then(|| (above / below, rest))
}

/// The fractions that have a sign of their own.
const FRACTIONS: [(char, f64); 15] = [
    ('½', 1.0 / 2.0),
    ('⅓', 1.0 / 3.0),
    ('⅔', 2.0 / 3.0),
    ('¼', 1.0 / 4.0),
    ('¾', 3.0 / 4.0),
    ('⅕', 1.0 / 5.0),
    ('⅖', 2.0 / 5.0),
    ('⅗', 3.0 / 5.0),
    ('⅘', 4.0 / 5.0),
    ('⅙', 1.0 / 6.0),
    ('⅚', 5.0 / 6.0),
    ('⅛', 1.0 / 8.0),
    ('⅜', 3.0 / 8.0),
    ('⅝', 5.0 / 8.0),
    ('⅞', 7.0 / 8.0),
];

/// A unit at the beginning, without the dot of an abbreviation, empty for none; and what follows it.
pub(super) fn take_unit(text: &str) -> (&str, &str) {
    let of_unit = |c: char| c.is_alphabetic() || matches!(c, '"' | '\'' | '/');
    let (unit, rest) = text.split_at(text.find(|c: char| !of_unit(c)).unwrap_or(text.len()));
    let rest = match rest.strip_prefix('.') {
        Some(after) if !unit.is_empty() && !after.starts_with(|c: char| c.is_ascii_digit()) => {
            after
        }
        _ => rest,
    };
    (unit, rest.trim_start())
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::testing::assert_close;

    #[test]
    fn a_number_is_a_decimal_or_a_fraction_or_both() {
        for (text, value, rest) in [
            ("612", 612.0, ""),
            (".032\"", 0.032, "\""),
            ("24. mm", 24.0, "mm"),
            ("24 1/8 in", 24.125, "in"),
            ("24-1/8", 24.125, ""),
            ("24 - 1/8", 24.125, ""),
            ("24⅛in", 24.125, "in"),
            ("24 ⅛", 24.125, ""),
            ("3/4 in", 0.75, "in"),
            ("¾", 0.75, ""),
            ("-5 mm", -5.0, "mm"),
            ("- 1 1/2", -1.5, ""),
            ("24 9/8", 24.0, "9/8"),
            ("1.5 1/2", 1.5, "1/2"),
            ("1e999", 1.0, "e999"),
        ] {
            let (got, left) = take_number(text).unwrap();
            assert_close(got, value, 1e-15, text);
            assert_eq!(left, rest, "{text}");
        }
        for text in ["", "-", ".", "1.2.3", "mm", "NaN", "inf", "1/0", "/8", "٣"] {
            assert!(take_number(text).is_none_or(|(_, rest)| !rest.is_empty()), "{text}");
        }
    }

    #[test]
    fn every_fraction_sign_is_what_its_digits_say() {
        let below = [2, 3, 3, 4, 4, 5, 5, 5, 5, 6, 6, 8, 8, 8, 8];
        let above = [1, 1, 2, 1, 3, 1, 2, 3, 4, 1, 5, 1, 3, 5, 7];
        for (place, (sign, value)) in FRACTIONS.into_iter().enumerate() {
            let digits = format!("{}/{}", above[place], below[place]);
            assert_close(take_number(&digits).unwrap().0, value, 1e-15, sign);
        }
    }

    #[test]
    fn the_signs_of_print_become_plain() {
        for (printed, typed) in [
            ("61,2", "61.2"),
            (" ,5 ", ".5"),
            ("nylon, 5", "nylon, 5"),
            ("2′ 3″", "2' 3\""),
            ("3''", "3\""),
            ("3’’", "3\""),
            ("−5", "-5"),
            ("24\u{2011}1⁄8", "24-1/8"),
            ("12\u{2009}345.6", "12345.6"),
            ("1\u{a0}234\u{202f}567", "1234567"),
            ("24\u{2009}1/8", "24 1/8"),
            ("1\u{2009}125/1000", "1 125/1000"),
            ("612\u{2009}mm", "612 mm"),
            ("\u{feff}612\u{200b}", "612"),
        ] {
            assert_eq!(plain(printed), typed, "{printed:?}");
        }
    }

    #[test]
    fn a_unit_ends_at_a_digit_or_a_blank() {
        for (text, unit, rest) in [
            ("in. x", "in", "x"),
            ("IN", "IN", ""),
            ("'3\"", "'", "3\""),
            ("ft3", "ft", "3"),
            ("g/m", "g/m", ""),
            ("in.5", "in", ".5"),
            (".é", "", ".é"),
            ("%", "", "%"),
            ("", "", ""),
        ] {
            assert_eq!(take_unit(text), (unit, rest), "{text}");
        }
    }
}
