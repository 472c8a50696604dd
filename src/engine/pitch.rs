//! Notes, the harpist's octaves, and intervals in cents; how notes are tuned is in `temperament`.
//!
//! Scientific pitch names: C4 is middle C, A4 is 440 Hz unless the tuning says otherwise
//! (ISO 16:1975). An octave number changes between B and C.

pub mod naming;
mod temperament;

use std::fmt;
use std::str::FromStr;

use thiserror::Error;

pub use self::temperament::{A4_HZ, Temperament, Tuning, TuningError};
pub use super::interval::{cents, ratio};
use crate::words::engine as say;

/// The lowest and highest octave number a note may have.
pub const OCTAVES: (i8, i8) = (-1, 10);

/// A letter of the scale.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Letter {
    C,
    D,
    E,
    F,
    G,
    A,
    B,
}

impl Letter {
    /// The seven, from C.
    pub const ALL: [Self; 7] = [Self::C, Self::D, Self::E, Self::F, Self::G, Self::A, Self::B];

    /// Semitones above C.
    const fn semitones(self) -> i32 {
        match self {
            Self::C => 0,
            Self::D => 2,
            Self::E => 4,
            Self::F => 5,
            Self::G => 7,
            Self::A => 9,
            Self::B => 11,
        }
    }

    /// Steps along the line of fifths from C: F is −1, G is 1, D is 2.
    const fn fifths(self) -> i32 {
        match self {
            Self::C => 0,
            Self::D => 2,
            Self::E => 4,
            Self::F => -1,
            Self::G => 1,
            Self::A => 3,
            Self::B => 5,
        }
    }

    /// `C`.
    pub const fn name(self) -> char {
        match self {
            Self::C => 'C',
            Self::D => 'D',
            Self::E => 'E',
            Self::F => 'F',
            Self::G => 'G',
            Self::A => 'A',
            Self::B => 'B',
        }
    }
}

/// A note by its scientific name.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct Note {
    letter: Letter,
    alter: i8,
    octave: i8,
}

/// Why a text is no note.
#[derive(Clone, Debug, PartialEq, Eq, Error)]
#[non_exhaustive]
pub enum NoteError {
    /// Nothing there.
    #[error("{}", say::NOTE_EMPTY)]
    Empty,
    /// The first character is no letter from A to G.
    #[error("{}", say::note_letter(.got))]
    Letter { got: String },
    /// The octave is missing or not a whole number.
    #[error("{}", say::note_octave(.got))]
    Octave { got: String },
    /// The octave is out of reach.
    #[error("{}", say::note_range(.octave, .least, .most))]
    Range { octave: i32, least: i8, most: i8 },
    /// More than two sharps or flats, or a mix of them.
    #[error("{}", say::note_accidental(.got))]
    Accidental { got: String },
}

impl Note {
    /// A note of `letter`, raised by `alter` semitones (−2 to 2), in a scientific `octave`.
    ///
    /// # Errors
    ///
    /// When the alteration is over two semitones or the octave outside [`OCTAVES`].
    pub fn new(letter: Letter, alter: i8, octave: i8) -> Result<Self, NoteError> {
        if !(-2..=2).contains(&alter) {
            return Err(NoteError::Accidental { got: format!("{}{alter:+}", letter.name()) });
        }
        let (least, most) = OCTAVES;
        if !(least..=most).contains(&octave) {
            return Err(NoteError::Range { octave: octave.into(), least, most });
        }
        Ok(Self { letter, alter, octave })
    }

    /// The letter.
    pub const fn letter(self) -> Letter {
        self.letter
    }

    /// Semitones above the letter: −1 for a flat, 2 for a double sharp.
    pub const fn alter(self) -> i8 {
        self.alter
    }

    /// The octave of the scientific name.
    pub const fn octave(self) -> i8 {
        self.octave
    }

    /// Semitones above C−1, so that A4 is 69 (the key number of the MIDI standard).
    pub fn key_number(self) -> i32 {
        12 * (i32::from(self.octave) + 1) + self.letter.semitones() + i32::from(self.alter)
    }

    /// The harpist's octave: counted from the top, each running from E down to F, so that middle C
    /// is in the fourth. Strings above E7 are in octave 0.
    ///
    /// # Source
    ///
    /// The count as harp teachers explain it (an article on how harp strings are numbered, 2024);
    /// the formula follows from it.
    pub fn harp_octave(self) -> i8 {
        match self.letter {
            Letter::C | Letter::D | Letter::E => 8 - self.octave,
            Letter::F | Letter::G | Letter::A | Letter::B => 7 - self.octave,
        }
    }

    /// Number of the step in the scale of letters, C0 being 0.
    pub fn step(self) -> i32 {
        7 * i32::from(self.octave) + self.letter as i32
    }

    /// The note `steps` letters higher (lower when negative), with the alteration that `signs`
    /// gives its letter; `None` past the octaves that notes may have.
    pub fn moved(self, steps: i32, signs: impl Fn(Letter) -> i8) -> Option<Self> {
        let step = self.step() + steps;
        let letter = Letter::ALL[usize::try_from(step.rem_euclid(7)).ok()?];
        Self::new(letter, signs(letter), i8::try_from(step.div_euclid(7)).ok()?).ok()
    }
}

impl fmt::Display for Note {
    /// The name in plain characters: `Eb3`, `F##4`.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let sign = match self.alter {
            -2 => "bb",
            -1 => "b",
            1 => "#",
            2 => "##",
            _ => "",
        };
        write!(f, "{}{sign}{}", self.letter.name(), self.octave)
    }
}

impl FromStr for Note {
    type Err = NoteError;

    /// Reads `A4`, `eb3`, `F#5`, `C♯4`, `Dbb2`, `Gx3`, blanks allowed.
    fn from_str(text: &str) -> Result<Self, NoteError> {
        let got = || text.trim().chars().take(40).collect::<String>();
        let packed: String = text.chars().filter(|c| !c.is_whitespace()).collect();
        let mut rest = packed.chars();
        let first = rest.next().ok_or(NoteError::Empty)?;
        let letter = Letter::ALL
            .into_iter()
            .find(|letter| letter.name() == first.to_ascii_uppercase())
            .ok_or_else(|| NoteError::Letter { got: got() })?;
        let rest = rest.as_str();
        let digits = rest
            .find(|c: char| c.is_ascii_digit() || c == '-' || c == '−')
            .ok_or_else(|| NoteError::Octave { got: got() })?;
        let alter = match &rest[..digits] {
            "" => 0,
            "#" | "♯" => 1,
            "b" | "♭" => -1,
            "##" | "x" | "X" | "♯♯" | "𝄪" => 2,
            "bb" | "♭♭" | "𝄫" => -2,
            _ => return Err(NoteError::Accidental { got: got() }),
        };
        let octave: i32 = rest[digits..]
            .replace('−', "-")
            .parse()
            .map_err(|_| NoteError::Octave { got: got() })?;
        let (least, most) = OCTAVES;
        let small = i8::try_from(octave).map_err(|_| NoteError::Range { octave, least, most })?;
        Self::new(letter, alter, small)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn note(text: &str) -> Note {
        text.parse().expect("a note of the test")
    }

    #[test]
    fn a_note_comes_back_as_it_was_written() {
        for text in ["A4", "Eb3", "F#5", "Cb1", "B#6", "Dbb2", "G##7", "C-1"] {
            assert_eq!(note(text).to_string(), text);
            assert_eq!(note(&note(text).printed()), note(text), "{text} in print");
        }
        assert_eq!(note(" e ♭ 3 "), note("Eb3"));
        assert_eq!(note("bb3").to_string(), "Bb3");
        assert_eq!(note("b3").to_string(), "B3");
        assert_eq!(note("fx4"), note("F##4"));
    }

    #[test]
    fn what_is_no_note_says_why() {
        let wrong = |text: &str| text.parse::<Note>().unwrap_err().to_string();
        assert_eq!(
            wrong("  "),
            "a note is missing (write a letter and an octave, such as A4 or Eb3)"
        );
        assert!(wrong("H4").starts_with("a note begins with a letter from A to G, got \"H4\""));
        assert_eq!(wrong("A"), "\"A\" lacks the octave number (middle C is C4)");
        assert_eq!(wrong("A99"), "the octave must be from -1 to 10, got 99");
        assert_eq!(wrong("A4b"), "\"A4b\" lacks the octave number (middle C is C4)");
        assert!(wrong("A###4").contains("accidentals"));
        assert!(wrong("A#b4").contains("accidentals"));
    }

    #[test]
    fn the_harpists_octave_runs_from_e_down_to_f() {
        for (name, octave) in
            [("E7", 1), ("F6", 1), ("E6", 2), ("C4", 4), ("F3", 4), ("C1", 7), ("G7", 0), ("F7", 0)]
        {
            assert_eq!(note(name).harp_octave(), octave, "{name}");
        }
    }

    #[test]
    fn moving_along_the_letters_keeps_the_signs() {
        let flats =
            |letter| if matches!(letter, Letter::B | Letter::E | Letter::A) { -1 } else { 0 };
        assert_eq!(note("C4").moved(-1, flats), Some(note("Bb3")));
        assert_eq!(note("Bb3").moved(1, flats), Some(note("C4")));
        assert_eq!(note("G7").moved(-46, |_| 0), Some(note("C1")));
        assert_eq!(note("C-1").moved(-1, |_| 0), None);
    }
}
