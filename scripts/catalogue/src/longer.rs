//! A language that nobody speaks, made of the English one for tests: each text is 40 % longer and stands between
//! brackets, so that a layout without room to spare is seen before a translation breaks it.

use std::iter;

use crate::pattern::{ARGUMENT, CHOICE, CHOICE_ENDS, KEY_ENDS, VARIANT_ENDS};
use crate::{Area, Catalogue, Message};

/// Around each text: where one of them is not seen, the text is cut off.
pub const BRACKETS: (char, char) = ('⟦', '⟧');
/// How much longer a text becomes, in per cent of its letters.
const LONGER: usize = 40;

/// The English catalogue in letters with accents, drawn out. What is filled in and chosen by stays as it is.
pub fn longer(english: &[Area]) -> Catalogue {
    let message = |message: &Message| {
        let mut message = message.clone();
        message.text.text = drawn_out(&message.text.text);
        message
    };
    let area = |area: &Area| Area {
        name: area.name.clone(),
        messages: area.messages.iter().map(message).collect(),
    };
    english.iter().map(area).collect()
}

/// A compiled text drawn out. Vowels stand several times, as words become longer in most languages, and not more.
fn drawn_out(text: &str) -> String {
    let mut out = String::from(BRACKETS.0);
    // In hundredths of a letter: what is still to be added.
    let mut owed = 0;
    let mut signs = text.chars();
    while let Some(sign) = signs.next() {
        match sign {
            ARGUMENT => out.extend(iter::once(sign).chain(signs.next())),
            CHOICE => {
                out.extend(iter::once(sign).chain(signs.next()));
                key(&mut signs, &mut out);
            }
            VARIANT_ENDS => {
                out.push(sign);
                key(&mut signs, &mut out);
            }
            CHOICE_ENDS => out.push(sign),
            _ => {
                owed += LONGER;
                let accented = accented(sign);
                out.push(accented.unwrap_or(sign));
                if let Some(accented) = accented {
                    let more = owed / 100;
                    owed %= 100;
                    out.extend(iter::repeat_n(accented, more));
                }
            }
        }
    }
    out.push(BRACKETS.1);
    out
}

/// The key of a variant up to its sign, or the end of the choice.
fn key(signs: &mut impl Iterator<Item = char>, out: &mut String) {
    for sign in signs {
        out.push(sign);
        if matches!(sign, KEY_ENDS | CHOICE_ENDS) {
            return;
        }
    }
}

const fn accented(sign: char) -> Option<char> {
    Some(match sign {
        'a' => 'å',
        'e' => 'é',
        'i' => 'ï',
        'o' => 'ö',
        'u' => 'ü',
        'A' => 'Å',
        'E' => 'É',
        'I' => 'Ï',
        'O' => 'Ö',
        'U' => 'Ü',
        _ => return None,
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_text_is_40_per_cent_longer_between_its_brackets() {
        let english = "Every string that can be bought and every gauge that stands in the stock.";
        let long = drawn_out(english);
        let (before, after) = (english.chars().count(), long.chars().count() - 2);
        assert!(
            (1.35..=1.4).contains(&(after as f64 / before as f64)),
            "{before}, {after}: {long}"
        );
        assert!(long.starts_with("⟦Évé") && long.ends_with(".⟧"), "{long}");
    }

    #[test]
    fn what_is_filled_in_and_chosen_by_stays() {
        let text = "\u{1}a of \u{2}bone\u{3}one \u{1}c\u{4}*\u{3}many\u{4}\u{5} here";
        let long = drawn_out(text);
        let kept: String = long.chars().filter(|sign| sign.is_control()).collect();
        assert_eq!(kept, "\u{1}\u{2}\u{3}\u{1}\u{4}\u{3}\u{4}\u{5}");
        assert!(long.contains("\u{1}a ") && long.contains("\u{2}bone\u{3}"), "{long}");
        assert!(long.contains("\u{1}c\u{4}*\u{3}") && long.contains("\u{4}\u{5} h"), "{long}");
    }
}
