//! Small and capital letters. The standard library's tables for all scripts weigh 24 KB in the page; here
//! are the letters of Latin, Greek and Cyrillic script, by rule.

use crate::words::{Language, language};

/// A text in small letters, so that two can be compared whatever their case. Letters of other scripts than
/// Latin, Greek and Cyrillic stay as they are.
pub fn small(text: &str) -> String {
    text.chars().map(small_letter).collect()
}

/// A name as it stands within a sentence: small, but in German, where names are written large.
pub fn within(name: &str) -> String {
    if language() == Language::German { name.to_owned() } else { small(name) }
}

/// A text with a capital at its beginning, if it begins with one of the letters `a` to `z`.
pub fn capital(text: &str) -> String {
    let mut letters = text.chars();
    let Some(first) = letters.next() else { return String::new() };
    let large = match first {
        'à'..='ö' | 'ø'..='þ' => char::from_u32(u32::from(first) - 0x20).unwrap_or(first),
        'œ' => 'Œ',
        _ => first.to_ascii_uppercase(),
    };
    let mut text = String::from(large);
    text.push_str(letters.as_str());
    text
}

/// The text with the signs replaced that mean something in markup, in an element or in quotes.
pub fn escape(text: &str) -> String {
    let mut out = String::with_capacity(text.len());
    for sign in text.chars() {
        match sign {
            '&' => out.push_str("&amp;"),
            '<' => out.push_str("&lt;"),
            '>' => out.push_str("&gt;"),
            '"' => out.push_str("&quot;"),
            '\'' => out.push_str("&#39;"),
            _ => out.push(sign),
        }
    }
    out
}

fn small_letter(letter: char) -> char {
    let code = u32::from(letter);
    let small = match code {
        0x41..=0x5a => code + 32,
        ..0xc0 | 0xd7 => code,
        0xc0..=0xde => code + 32,
        // Capitals stand before their small letters, at even places or at odd ones.
        0x100..=0x12f
        | 0x132..=0x137
        | 0x14a..=0x177
        | 0x460..=0x481
        | 0x48a..=0x4bf
        | 0x4d0..=0x52f
        | 0x1e00..=0x1e95
        | 0x1ea0..=0x1eff => code | 1,
        0x139..=0x148 | 0x179..=0x17e | 0x4c1..=0x4ce => code + code % 2,
        0x178 => 0xff,
        0x386 => 0x3ac,
        0x388..=0x38a => code + 37,
        0x38c => 0x3cc,
        0x38e | 0x38f => code + 63,
        0x391..=0x3a1 | 0x3a3..=0x3ab | 0x410..=0x42f => code + 32,
        0x400..=0x40f => code + 80,
        _ => code,
    };
    char::from_u32(small).unwrap_or(letter)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_first_letter_is_made_large_with_its_accent_as_the_standard_library_does() {
        for first in ('a'..='z').chain('à'..='þ').chain(['œ', 'Z', 'É', '÷', '3', 'μ']) {
            let large = if first == 'μ' { first } else { first.to_uppercase().next().unwrap() };
            assert_eq!(capital(&format!("{first}clisse")), format!("{large}clisse"));
        }
        assert_eq!(capital(""), "");
    }

    #[test]
    fn letters_of_european_scripts_are_made_small_as_the_standard_library_does() {
        let ranges = [
            0..0x130,
            0x131..0x180,
            0x386..0x3cf,
            0x400..0x4c0,
            0x4c1..0x530,
            0x1e00..0x1e9e,
            0x1ea0..0x1f00,
        ];
        for letter in ranges.into_iter().flatten().filter_map(char::from_u32) {
            assert_eq!(small(&letter.to_string()), letter.to_lowercase().to_string(), "{letter}");
        }
        assert_eq!(small("Ängsö Ø, ČESKÁ Ž, Ωδή, Ёлка 7"), "ängsö ø, česká ž, ωδή, ёлка 7");
    }

    #[test]
    fn a_capital_begins_a_text() {
        assert_eq!(capital("gut, 1.2 mm"), "Gut, 1.2 mm");
        assert_eq!(capital("Gut"), "Gut");
        assert_eq!(capital("É"), "É");
        assert_eq!(capital(""), "");
    }
}
