//! Texts in the few letters that a format has: plain ASCII for DXF, the Latin letters of the base fonts
//! for PDF. A letter that is missing is written without its accent, or in words, or as a question mark.

use crate::papers::measure::clean;
use crate::words::{Language, language};

/// The text in ASCII.
pub fn ascii(text: &str) -> String {
    let mut out = String::with_capacity(text.len());
    for sign in clean(text).chars() {
        match sign {
            // A word that stands for a sign brings its own blank.
            ' ' if out.ends_with("dia ") => {}
            sign if sign.is_ascii() => out.push(sign),
            sign => out.push_str(german(sign).unwrap_or(plain(sign))),
        }
    }
    out
}

/// The text in the code page Windows-1252, which PDF calls `WinAnsiEncoding`.
pub fn latin(text: &str) -> Vec<u8> {
    let mut out = Vec::with_capacity(text.len());
    for sign in clean(text).chars() {
        match latin_code(sign) {
            Some(code) => out.push(code),
            None => out.extend_from_slice(plain(sign).as_bytes()),
        }
    }
    out
}

/// The code of a letter in Windows-1252.
fn latin_code(sign: char) -> Option<u8> {
    match sign {
        ' '..='~' | '\u{a0}'..='\u{ff}' => u8::try_from(u32::from(sign)).ok(),
        '€' => Some(0x80),
        '⌀' => Some(0xd8),
        '„' => Some(0x84),
        'Š' => Some(0x8a),
        'Œ' => Some(0x8c),
        'Ž' => Some(0x8e),
        '‘' => Some(0x91),
        '’' => Some(0x92),
        '“' => Some(0x93),
        '”' => Some(0x94),
        '•' => Some(0x95),
        '–' => Some(0x96),
        '—' => Some(0x97),
        '™' => Some(0x99),
        'š' => Some(0x9a),
        'œ' => Some(0x9c),
        'ž' => Some(0x9e),
        'Ÿ' => Some(0x9f),
        '…' => Some(0x85),
        _ => None,
    }
}

/// What a German writes for an umlaut without having one, in a German text.
fn german(sign: char) -> Option<&'static str> {
    if language() != Language::German {
        return None;
    }
    Some(match sign {
        'ä' => "ae",
        'ö' => "oe",
        'ü' => "ue",
        'Ä' => "Ae",
        'Ö' => "Oe",
        'Ü' => "Ue",
        _ => return None,
    })
}

/// What stands for a sign outside ASCII.
const fn plain(sign: char) -> &'static str {
    match sign {
        'À'..='Å' | 'Ā' | 'Ă' | 'Ą' => "A",
        'à'..='å' | 'ā' | 'ă' | 'ą' => "a",
        'Æ' => "AE",
        'æ' => "ae",
        'Ç' | 'Ć' | 'Ĉ' | 'Ċ' | 'Č' => "C",
        'ç' | 'ć' | 'ĉ' | 'ċ' | 'č' => "c",
        'Ď' | 'Đ' | 'Ð' => "D",
        'ď' | 'đ' | 'ð' => "d",
        'È'..='Ë' | 'Ē' | 'Ĕ' | 'Ė' | 'Ę' | 'Ě' => "E",
        'è'..='ë' | 'ē' | 'ĕ' | 'ė' | 'ę' | 'ě' => "e",
        'Ĝ' | 'Ğ' | 'Ġ' | 'Ģ' => "G",
        'ĝ' | 'ğ' | 'ġ' | 'ģ' => "g",
        'Ĥ' | 'Ħ' => "H",
        'ĥ' | 'ħ' => "h",
        'Ì'..='Ï' | 'Ĩ' | 'Ī' | 'Ĭ' | 'Į' | 'İ' => "I",
        'ì'..='ï' | 'ĩ' | 'ī' | 'ĭ' | 'į' | 'ı' => "i",
        'Ķ' => "K",
        'ķ' => "k",
        'Ĺ' | 'Ļ' | 'Ľ' | 'Ł' => "L",
        'ĺ' | 'ļ' | 'ľ' | 'ł' => "l",
        'Ñ' | 'Ń' | 'Ņ' | 'Ň' => "N",
        'ñ' | 'ń' | 'ņ' | 'ň' => "n",
        'Ò'..='Ö' | 'Ø' | 'Ō' | 'Ŏ' | 'Ő' => "O",
        'ò'..='ö' | 'ø' | 'ō' | 'ŏ' | 'ő' => "o",
        'Œ' => "OE",
        'œ' => "oe",
        'Ŕ' | 'Ŗ' | 'Ř' => "R",
        'ŕ' | 'ŗ' | 'ř' => "r",
        'Ś' | 'Ŝ' | 'Ş' | 'Š' | 'Ș' => "S",
        'ś' | 'ŝ' | 'ş' | 'š' | 'ș' => "s",
        'ß' => "ss",
        'Ţ' | 'Ť' | 'Ț' => "T",
        'ţ' | 'ť' | 'ț' => "t",
        'Þ' => "Th",
        'þ' => "th",
        'Ù'..='Ü' | 'Ũ' | 'Ū' | 'Ŭ' | 'Ů' | 'Ű' | 'Ų' => "U",
        'ù'..='ü' | 'ũ' | 'ū' | 'ŭ' | 'ů' | 'ű' | 'ų' => "u",
        'Ŵ' => "W",
        'ŵ' => "w",
        'Ý' | 'Ŷ' | 'Ÿ' => "Y",
        'ý' | 'ŷ' | 'ÿ' => "y",
        'Ź' | 'Ż' | 'Ž' => "Z",
        'ź' | 'ż' | 'ž' => "z",
        '♯' => "#",
        '♭' => "b",
        '♮' => " natural",
        '‘' | '’' | '′' | '´' => "'",
        '“' | '”' | '″' | '«' | '»' | '„' => "\"",
        '‐'..='―' | '−' => "-",
        '…' => "...",
        '×' => "x",
        '°' => " deg",
        '±' => "+/-",
        '⌀' => "dia ",
        'µ' | 'μ' => "u",
        '½' => "1/2",
        '¼' => "1/4",
        '¾' => "3/4",
        '²' => "2",
        '³' => "3",
        '·' | '•' => "*",
        '→' => "->",
        '≈' => "about ",
        '≤' => "<=",
        '≥' => ">=",
        // Accents that stand after their letter.
        '\u{300}'..='\u{36f}' => "",
        '\u{a0}' | '\u{2009}' | '\u{202f}' => " ",
        _ => "?",
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn accents_go_and_letters_stay() {
        assert_eq!(ascii("Hárfa für Łucja, Ö½″ – C♯4"), "Harfa fur Lucja, O1/2\" - C#4");
        assert_eq!(ascii("e\u{301}"), "e");
        assert_eq!(ascii("⌀5 and ⌀ 6"), "dia 5 and dia 6");
        assert_eq!(ascii("琴"), "?");
        assert!(
            (0..=0x10ffff).filter_map(char::from_u32).all(|c| ascii(&c.to_string()).is_ascii())
        );
    }

    #[test]
    fn latin_letters_keep_their_accents() {
        assert_eq!(latin("é–€"), [0xe9, 0x96, 0x80]);
        assert_eq!(latin("Ł♭"), *b"Lb");
        assert_eq!(latin("琴"), *b"?");
    }
}
