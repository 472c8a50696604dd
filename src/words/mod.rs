//! What is said: every sentence of the page and the papers, from the catalogues in `src/words/*/*.ftl`.
//!
//! English is compiled in; a message that is filled with nothing is a constant, any other one a function:
//!
//! ```
//! use stringloft::words::{Language, in_language, order};
//!
//! assert_eq!(order::HEAD_PIECES.said(), "Pieces");
//! assert_eq!(order::codes_kept(&1), "The design now holds codes and prices of 1 item.");
//! assert_eq!(in_language(Language::German, || order::HEAD_PIECES.said()), "Stück");
//! ```
//!
//! Any other language is a pack of texts by the number of their message. On this machine all are at hand; the page
//! fetches the one it shows ([`bring`]). Where a pack lacks a message, English stands.

mod fill;
mod naming;

use std::cell::{Cell, RefCell};
use std::fmt;

use self::fill::fill;
pub use self::naming::{Naming, chosen_naming, in_naming, name_notes, naming};

include!(concat!(env!("OUT_DIR"), "/messages.rs"));

/// A message that is filled with nothing: its number as a letter of the private use area, then what it says in English.
/// So it takes no more room in tables and in the program than a text.
#[derive(Clone, Copy, PartialEq, Eq, Hash)]
pub struct Words(&'static str);

/// The letter of the first message, and the bytes of each.
const FIRST: u32 = 0xE000;
const NUMBER_BYTES: usize = 3;

impl Words {
    /// Nothing at all.
    pub const NONE: Self = Self::plain("");

    /// What is the same in every language, such as a unit.
    pub const fn plain(text: &'static str) -> Self {
        Self(text)
    }

    /// Whether it begins with its number: no other text begins with a letter for private use.
    const fn is_numbered(self) -> bool {
        matches!(self.0.as_bytes(), [0xEE | 0xEF, ..])
    }

    /// What it says in the language of now.
    pub fn said(self) -> &'static str {
        let language = LANGUAGE.get();
        if language == Language::English || !self.is_numbered() {
            return self.english();
        }
        let number = self.0.chars().next().map_or(0, u32::from).wrapping_sub(FIRST);
        let number = usize::try_from(number).unwrap_or(usize::MAX);
        text_of(language, number).unwrap_or(self.english())
    }

    /// What it says in English, whatever the language: as documents keep it.
    pub const fn english(self) -> &'static str {
        if self.is_numbered() { self.0.split_at(NUMBER_BYTES).1 } else { self.0 }
    }

    /// Whether it says nothing.
    pub const fn is_empty(self) -> bool {
        self.0.is_empty()
    }
}

impl fmt::Display for Words {
    fn fmt(&self, to: &mut fmt::Formatter<'_>) -> fmt::Result {
        to.pad(self.said())
    }
}

impl fmt::Debug for Words {
    fn fmt(&self, to: &mut fmt::Formatter<'_>) -> fmt::Result {
        fmt::Debug::fmt(self.english(), to)
    }
}

impl From<Words> for String {
    fn from(words: Words) -> Self {
        words.said().to_owned()
    }
}

/// What page or paper can speak.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Default)]
pub enum Language {
    #[default]
    English,
    German,
    French,
}

impl Language {
    /// All of them.
    pub const ALL: [Self; 3] = [Self::English, Self::German, Self::French];

    /// Its code after ISO 639-1, as it stands in `lang` of a page.
    pub const fn code(self) -> &'static str {
        match self {
            Self::English => "en",
            Self::German => "de",
            Self::French => "fr",
        }
    }

    /// The one of that code, with a region or without: `de`, `de-AT`.
    pub fn of_code(code: &str) -> Option<Self> {
        let main = code.split(['-', '_']).next().unwrap_or_default();
        Self::ALL.into_iter().find(|language| main.eq_ignore_ascii_case(language.code()))
    }

    /// What it calls itself.
    pub const fn own_name(self) -> &'static str {
        match self {
            Self::English => "English",
            Self::German => "Deutsch",
            Self::French => "Français",
        }
    }

    /// What stands between whole numbers and their fraction.
    pub const fn decimal_sign(self) -> char {
        match self {
            Self::English => '.',
            Self::German | Self::French => ',',
        }
    }

    /// Whether a count, as printed, takes the word for one (CLDR, plural rules, category `one`).
    fn is_one(self, count: &str) -> bool {
        match self {
            Self::English | Self::German => count == "1",
            Self::French => {
                count.split([',', '.']).next().is_some_and(|whole| matches!(whole, "0" | "1"))
            }
        }
    }
}

thread_local! {
    static LANGUAGE: Cell<Language> = const { Cell::new(Language::English) };
    static PACKS: RefCell<[Option<Pack>; 2]> = const { RefCell::new([None, None]) };
}

/// The texts of a language. They stay for good, so that a text can be shown without being copied.
type Pack = &'static [&'static str];

/// The language of now.
pub fn language() -> Language {
    LANGUAGE.get()
}

/// Speaks this language from now on.
pub fn speak(language: Language) {
    LANGUAGE.set(language);
}

/// Does something in a language, then goes back to the one of before.
pub fn in_language<T>(language: Language, what: impl FnOnce() -> T) -> T {
    let before = LANGUAGE.replace(language);
    let done = what();
    LANGUAGE.set(before);
    done
}

/// What stands between whole numbers and their fraction in the language of now.
pub fn decimal_sign() -> char {
    LANGUAGE.get().decimal_sign()
}

/// What stands between the parts of a list that have commas in them: in French with a blank before it.
pub fn semicolon() -> &'static str {
    if LANGUAGE.get() == Language::French { "\u{a0}; " } else { "; " }
}

/// A number as printed with a point, with the sign of decimals of the language of now.
pub fn signed(number: &str) -> String {
    number.replace('.', decimal_sign().encode_utf8(&mut [0; 4]))
}

/// A number in full, with the decimal sign of the language of now.
pub fn numeral(number: f64) -> String {
    let text = number.to_string();
    match decimal_sign() {
        '.' => text,
        sign => text.replace('.', sign.encode_utf8(&mut [0; 4])),
    }
}

/// Takes the pack of a language, as the build wrote it; not one of another build.
pub fn bring(language: Language, text: String) -> bool {
    let Some(place) = place(language) else { return true };
    let Some(lines) = lines(text) else { return false };
    PACKS.with_borrow_mut(|packs| packs[place] = Some(lines));
    true
}

/// Whether a language can be spoken at once.
pub fn has(language: Language) -> bool {
    place(language).is_none_or(|place| pack(place).is_some())
}

fn lines(text: String) -> Option<Pack> {
    let text: &'static str = Box::leak(text.into_boxed_str());
    let mut lines = text.split('\n');
    let known = lines.next() == Some(MARK);
    let all: Vec<&'static str> = lines.collect();
    (known && all.len() == usize::from(COUNT)).then(|| &*Box::leak(all.into_boxed_slice()))
}

const fn place(language: Language) -> Option<usize> {
    match language {
        Language::English => None,
        Language::German => Some(0),
        Language::French => Some(1),
    }
}

fn pack(place: usize) -> Option<Pack> {
    let kept = PACKS.with_borrow(|packs| packs[place]);
    #[cfg(not(target_arch = "wasm32"))]
    let kept = kept.or_else(|| {
        const TEXTS: [&str; 2] = [
            include_str!(concat!(env!("OUT_DIR"), "/de.txt")),
            include_str!(concat!(env!("OUT_DIR"), "/fr.txt")),
        ];
        let made = lines(TEXTS[place].to_owned());
        PACKS.with_borrow_mut(|packs| packs[place] = made);
        made
    });
    kept
}

fn text_of(language: Language, number: usize) -> Option<&'static str> {
    let text = *pack(place(language)?)?.get(number)?;
    (!text.is_empty()).then_some(text)
}

#[cfg(test)]
mod tests;
