//! Names of notes as they are written in several languages: what is shown, and what is read.

use super::{Letter, Note, NoteError};
use crate::words::{Naming, naming};

/// The syllables of the scale; the first of two for a letter is the one that is shown.
const SYLLABLES: [(&str, Letter); 10] = [
    ("do", Letter::C),
    ("ré", Letter::D),
    ("mi", Letter::E),
    ("fa", Letter::F),
    ("sol", Letter::G),
    ("la", Letter::A),
    ("si", Letter::B),
    ("ut", Letter::C),
    ("re", Letter::D),
    ("ti", Letter::B),
];

/// What raises or lowers a note, longer ones first, and by how much.
const SIGNS: [(&str, i8); 22] = [
    ("sharp", 1),
    ("flat", -1),
    ("natural", 0),
    ("dièse", 1),
    ("bémol", -1),
    ("bécarre", 0),
    ("##", 2),
    ("♯♯", 2),
    ("𝄪", 2),
    ("#", 1),
    ("♯", 1),
    ("♮", 0),
    ("♭♭", -2),
    ("𝄫", -2),
    ("♭", -1),
    ("bb", -2),
    ("b", -1),
    ("x", 2),
    ("isis", 2),
    ("eses", -2),
    ("is", 1),
    ("es", -1),
];

/// A sign behind a letter.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Sign {
    /// Semitones above the letter.
    pub alter: i8,
    /// Whether it is an ending as in `fis` and `es`.
    pub is_ending: bool,
    /// Its bytes.
    pub length: usize,
}

/// The letter of the syllable at the beginning of a text in small letters, and the bytes of the syllable.
pub fn syllable(small: &str) -> Option<(Letter, usize)> {
    let found = SYLLABLES.iter().find(|(syllable, _)| small.starts_with(syllable));
    found.map(|(syllable, letter)| (*letter, syllable.len()))
}

/// The sign at the beginning of a text in small letters that follows a letter, if there is one.
pub fn sign(letter: Letter, small: &str) -> Option<Sign> {
    if let Some((written, alter)) = SIGNS.iter().find(|(written, _)| small.starts_with(written)) {
        let is_ending = written.ends_with("is") || written.ends_with("es");
        return Some(Sign { alter: *alter, is_ending, length: written.len() });
    }
    // `As`, `Es`, `Ases` and `Eses`; `Asas` too.
    let is_short = matches!(letter, Letter::A | Letter::E) && small.starts_with('s');
    let double = ["ses", "sas"].into_iter().find(|double| small.starts_with(double));
    match (is_short, double) {
        (false, _) => None,
        (true, Some(double)) => Some(Sign { alter: -2, is_ending: true, length: double.len() }),
        (true, None) => Some(Sign { alter: -1, is_ending: true, length: 1 }),
    }
}

/// The name of a letter without a sign.
pub fn letter_name(letter: Letter, naming: Naming) -> &'static str {
    const LETTERS: [&str; 7] = ["C", "D", "E", "F", "G", "A", "B"];
    match (naming, letter) {
        (Naming::Syllables, _) => SYLLABLES[letter as usize].0,
        (Naming::German, Letter::B) => "H",
        _ => LETTERS[letter as usize],
    }
}

/// The name of a letter raised by `alter` semitones, without an octave.
pub fn name(letter: Letter, alter: i8, naming: Naming) -> String {
    let mark = match alter {
        -2 => "𝄫",
        -1 => "♭",
        1 => "♯",
        2 => "𝄪",
        _ => "",
    };
    match naming {
        Naming::English => format!("{}{mark}", letter.name()),
        Naming::Syllables => format!("{}{mark}", SYLLABLES[letter as usize].0),
        Naming::German => german(letter, alter),
    }
}

fn german(letter: Letter, alter: i8) -> String {
    if letter == Letter::B && alter == -1 {
        return "B".to_owned();
    }
    let ending = match (alter, letter) {
        (-1, Letter::A | Letter::E) => "s",
        (-2, Letter::A | Letter::E) => "ses",
        (-1, _) => "es",
        (-2, _) => "eses",
        (1, _) => "is",
        (2, _) => "isis",
        _ => "",
    };
    format!("{}{ending}", if letter == Letter::B { 'H' } else { letter.name() })
}

/// The number of an octave among syllables: there is no 0.
const fn syllable_octave(octave: i8) -> i8 {
    if octave > 1 { octave - 1 } else { octave - 2 }
}

/// The octave of a number among syllables. A 0 is taken as the one below 1, as some count.
pub const fn octave_of_syllable(number: i8) -> i8 {
    if number < 0 { number.saturating_add(2) } else { number.saturating_add(1) }
}

impl Letter {
    /// The letter or syllable as notes are named now.
    pub fn printed(self) -> String {
        name(self, 0, naming())
    }
}

impl Note {
    /// The name as notes are named now: `E♭3`, `Es3`, `mi♭2`.
    pub fn printed(self) -> String {
        let naming = naming();
        let name = name(self.letter, self.alter, naming);
        match naming {
            Naming::English | Naming::German => format!("{name}{}", self.octave),
            Naming::Syllables => {
                let octave = syllable_octave(self.octave);
                let minus = if octave < 0 { "−" } else { "" };
                format!("{name}{minus}{}", octave.unsigned_abs())
            }
        }
    }

    /// Reads a name that somebody typed: English, German or syllables, whatever is shown. Only a B without a sign
    /// goes by the naming: in German it is B flat.
    ///
    /// # Errors
    ///
    /// As for [`str::parse`], which knows the English names alone.
    ///
    /// # Example
    ///
    /// ```
    /// use stringloft::engine::pitch::Note;
    /// use stringloft::words::Naming;
    ///
    /// let read = |text| Note::read(text, Naming::German).unwrap().to_string();
    /// assert_eq!([read("B3"), read("H3"), read("Es4"), read("la3")], ["Bb3", "B3", "Eb4", "A4"]);
    /// ```
    pub fn read(text: &str, naming: Naming) -> Result<Self, NoteError> {
        let got = || text.trim().chars().take(40).collect::<String>();
        let packed: String = text.chars().filter(|c| !c.is_whitespace()).collect();
        let small = packed.to_ascii_lowercase().replace('É', "é");
        let first = small.chars().next().ok_or(NoteError::Empty)?;
        let found = syllable(&small);
        let letter = |letter: &Letter| letter.name().eq_ignore_ascii_case(&first);
        let (letter, rest) = match found {
            Some((letter, length)) => (letter, &small[length..]),
            None if first == 'h' => (Letter::B, &small[1..]),
            None => match Letter::ALL.into_iter().find(letter) {
                Some(letter) => (letter, &small[1..]),
                None => return Err(NoteError::Letter { got: got() }),
            },
        };
        let is_stroke = |c: char| matches!(c, '\'' | '’' | '′' | '´');
        let digits =
            rest.find(|c: char| c.is_ascii_digit() || c == '-' || c == '−' || is_stroke(c));
        let (mark, number) = rest.split_at(digits.ok_or_else(|| NoteError::Octave { got: got() })?);
        let alter = match sign(letter, mark) {
            None if mark.is_empty() && first == 'b' && naming == Naming::German => -1,
            None if mark.is_empty() => 0,
            Some(sign) if sign.length == mark.len() => sign.alter,
            _ => return Err(NoteError::Accidental { got: got() }),
        };
        // `c′` and above; below it a name without a stroke could be anything.
        let strokes = number.chars().filter(|c| is_stroke(*c)).count();
        let octave: i32 = if strokes > 0 {
            let is_small = packed.starts_with(|c: char| c.is_ascii_lowercase());
            let is_name = found.is_none() && is_small && strokes == number.chars().count();
            let octave = i32::try_from(strokes).ok().filter(|_| is_name);
            octave.map(|strokes| strokes + 3).ok_or_else(|| NoteError::Octave { got: got() })?
        } else {
            let octave = number.replace('−', "-").parse();
            octave.map_err(|_| NoteError::Octave { got: got() })?
        };
        let (least, most) = super::OCTAVES;
        let small = i8::try_from(octave).map_err(|_| NoteError::Range { octave, least, most })?;
        Self::new(letter, alter, if found.is_some() { octave_of_syllable(small) } else { small })
    }
}

/// A note of a document as it is shown; what is no note stays as it was typed.
pub fn shown(text: &str) -> String {
    text.parse::<Note>().map_or_else(|_| text.to_owned(), Note::printed)
}

/// What was typed for a note as a document keeps it: with its English name where it would be read otherwise, else as
/// it was typed.
pub fn kept(text: &str, naming: Naming) -> String {
    match Note::read(text, naming) {
        Ok(note) if text.parse() != Ok(note) => note.to_string(),
        _ => text.trim().to_owned(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::words::in_naming;

    fn every_note() -> impl Iterator<Item = Note> {
        let octaves = || super::super::OCTAVES.0..=super::super::OCTAVES.1;
        Letter::ALL.into_iter().flat_map(move |letter| {
            (-2..=2).flat_map(move |alter| {
                octaves().filter_map(move |octave| Note::new(letter, alter, octave).ok())
            })
        })
    }

    #[test]
    fn every_note_is_read_back_as_it_is_shown() {
        assert_eq!(every_note().count(), 7 * 5 * 12);
        for naming in Naming::ALL {
            for note in every_note() {
                assert_eq!(letter_name(note.letter(), naming), name(note.letter(), 0, naming));
                let text = in_naming(naming, || note.printed());
                assert_eq!(Note::read(&text, naming), Ok(note), "{text} {naming:?}");
                let small = text.to_lowercase();
                assert_eq!(Note::read(&small, naming), Ok(note), "{small} {naming:?}");
                assert_eq!(kept(&text, naming).parse(), Ok(note), "{text} {naming:?}");
            }
        }
    }

    /// All but the German B without a sign.
    #[test]
    fn a_name_means_the_same_whatever_is_shown() {
        for of in Naming::ALL {
            for note in every_note() {
                let text = in_naming(of, || note.printed());
                let is_plain_b = text.starts_with('B') && !text.contains(['♭', '♯', '𝄫', '𝄪']);
                for naming in Naming::ALL {
                    if !is_plain_b {
                        assert_eq!(Note::read(&text, naming), Ok(note), "{text} {naming:?}");
                    }
                }
            }
        }
        let read = |text: &str, naming| Note::read(text, naming).unwrap().to_string();
        assert_eq!(read("B4", Naming::German), "Bb4");
        assert_eq!(read("B4", Naming::English), "B4");
        assert_eq!(read("B4", Naming::Syllables), "B4");
    }

    #[test]
    fn notes_have_the_names_of_each_language() {
        let names = |naming: Naming| -> Vec<String> {
            let notes = ["C4", "Eb3", "Bb3", "B3", "F#4", "Ab5", "Cb1", "Bbb2", "Ebb2", "G##6"];
            let note = |text: &str| text.parse::<Note>().unwrap().printed();
            in_naming(naming, || notes.map(note).to_vec())
        };
        assert_eq!(
            names(Naming::English),
            ["C4", "E♭3", "B♭3", "B3", "F♯4", "A♭5", "C♭1", "B𝄫2", "E𝄫2", "G𝄪6"]
        );
        assert_eq!(
            names(Naming::German),
            ["C4", "Es3", "B3", "H3", "Fis4", "As5", "Ces1", "Heses2", "Eses2", "Gisis6"]
        );
        assert_eq!(
            names(Naming::Syllables),
            ["do3", "mi♭2", "si♭2", "si2", "fa♯3", "la♭4", "do♭−1", "si𝄫1", "mi𝄫1", "sol𝄪5"]
        );
    }

    #[test]
    fn other_spellings_are_read_too() {
        for (text, note) in [
            ("la3", "A4"),
            ("Sol 3", "G4"),
            ("RÉ3", "D4"),
            ("ut 3", "C4"),
            ("si b 2", "Bb3"),
            ("mi bémol 2", "Eb3"),
            ("fa dièse 3", "F#4"),
            ("do-1", "C1"),
            ("do 0", "C1"),
            ("h3", "B3"),
            ("cis4", "C#4"),
            ("Asas3", "Abb3"),
            ("a'", "A4"),
            ("es''", "Eb5"),
            ("h’", "B4"),
            ("B♮3", "B3"),
        ] {
            for naming in Naming::ALL {
                let read = Note::read(text, naming).unwrap().to_string();
                assert_eq!(read, note, "{text} {naming:?}");
            }
        }
        assert_eq!(Note::read("b'", Naming::German).unwrap().to_string(), "Bb4");
        for wrong in ["", "do", "A", "A'", "612", "J4", "mi♭♭♭2", "la99", "la127", "la-128", "é"]
        {
            assert!(Note::read(wrong, Naming::Syllables).is_err(), "{wrong}");
        }
        let why = Note::read("sol", Naming::English).unwrap_err();
        assert_eq!(why, NoteError::Octave { got: "sol".to_owned() });
    }

    #[test]
    fn a_document_keeps_english_names() {
        assert_eq!(kept(" bb3 ", Naming::English), "bb3");
        assert_eq!(kept("bb3", Naming::Syllables), "bb3");
        assert_eq!(kept("B3", Naming::German), "Bb3");
        assert_eq!(kept("si♭2", Naming::Syllables), "Bb3");
        assert_eq!(kept("443,2 Hz", Naming::German), "443,2 Hz");
        assert_eq!(kept("gut", Naming::German), "gut");
    }
}
