//! Notes, the harpist's octaves, temperaments, and the frequencies that follow.
//!
//! Scientific pitch names: C4 is middle C, A4 is 440 Hz unless the tuning says otherwise
//! (ISO 16:1975). An octave number changes between B and C.

use std::fmt;
use std::str::FromStr;

use thiserror::Error;

use super::units::Frequency;

/// The lowest and the highest reference pitch of A4 that a tuning may have.
pub const A4_HZ: (f64, f64) = (380.0, 480.0);
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
    #[error("a note is missing (write a letter and an octave, such as A4 or Eb3)")]
    Empty,
    /// The first character is no letter from A to G.
    #[error("a note begins with a letter from A to G, got \"{got}\" (write A4 or Eb3)")]
    Letter { got: String },
    /// The octave is missing or not a whole number.
    #[error("\"{got}\" lacks the octave number (middle C is C4)")]
    Octave { got: String },
    /// The octave is out of reach.
    #[error("the octave must be from {least} to {most}, got {octave}")]
    Range { octave: i32, least: i8, most: i8 },
    /// More than two sharps or flats, or a mix of them.
    #[error("\"{got}\" has accidentals that cannot be read (use #, b, x or bb)")]
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

    /// The name with the signs of print: `E♭3`.
    pub fn printed(self) -> String {
        let sign = match self.alter {
            -2 => "𝄫",
            -1 => "♭",
            1 => "♯",
            2 => "𝄪",
            _ => "",
        };
        format!("{}{sign}{}", self.letter.name(), self.octave)
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

/// How the octave is divided.
///
/// In the regular temperaments (Pythagorean, meantone) a note takes its place on the line of
/// fifths from its spelling, so that A♭ and G♯ differ, as strings of a harp tuned in flats need. The
/// others have twelve pitches to the octave, whatever the spelling.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum Temperament {
    /// Twelve equal semitones.
    #[default]
    Equal,
    /// Pure fifths.
    Pythagorean,
    /// Fifths a quarter of the syntonic comma narrow, so that major thirds are pure.
    QuarterCommaMeantone,
    /// Werckmeister's third: C–G, G–D, D–A and B–F♯ a quarter of the Pythagorean comma narrow.
    WerckmeisterThree,
    /// Vallotti: F–C–G–D–A–E–B each a sixth of the Pythagorean comma narrow.
    Vallotti,
    /// Young's second: C–G–D–A–E–B–F♯ each a sixth of the Pythagorean comma narrow.
    YoungTwo,
    /// Just intonation of limit five on C.
    JustOnC,
}

/// Cents of a frequency ratio.
pub fn cents(ratio: f64) -> f64 {
    1200.0 * ratio.log2()
}

/// The ratio of an interval in cents.
pub fn ratio(cents: f64) -> f64 {
    // By `pow`, which the page has anyway; `exp2` would bring a table of 4 kB. The 2 is hidden from the
    // compiler, which makes `exp2` of a power of 2.
    std::hint::black_box(2.0_f64).powf(cents / 1200.0)
}

impl Temperament {
    /// Every temperament, in the order in which a list shows them.
    pub const ALL: [Self; 7] = [
        Self::Equal,
        Self::Pythagorean,
        Self::QuarterCommaMeantone,
        Self::WerckmeisterThree,
        Self::Vallotti,
        Self::YoungTwo,
        Self::JustOnC,
    ];

    /// Cents of a note above the C below it, from 0 to 1200 but for the spelling of the regular
    /// temperaments (B♯ is a little past 1200).
    ///
    /// # Source
    ///
    /// The definitions of the temperaments, as [`Temperament`] states them.
    pub fn cents_above_c(self, letter: Letter, alter: i8) -> f64 {
        let semitones = letter.semitones() + i32::from(alter);
        let line = letter.fifths() + 7 * i32::from(alter);
        match self {
            Self::Equal => 100.0 * f64::from(semitones),
            Self::Pythagorean => on_the_line(line, semitones, cents(1.5)),
            Self::QuarterCommaMeantone => on_the_line(line, semitones, cents(5.0) / 4.0),
            Self::WerckmeisterThree => round_the_circle(semitones, &[0, 1, 2, 5], 4.0),
            Self::Vallotti => round_the_circle(semitones, &[-1, 0, 1, 2, 3, 4], 6.0),
            Self::YoungTwo => round_the_circle(semitones, &[0, 1, 2, 3, 4, 5], 6.0),
            Self::JustOnC => {
                const RATIOS: [f64; 12] = [
                    1.0,
                    16.0 / 15.0,
                    9.0 / 8.0,
                    6.0 / 5.0,
                    5.0 / 4.0,
                    4.0 / 3.0,
                    45.0 / 32.0,
                    3.0 / 2.0,
                    8.0 / 5.0,
                    5.0 / 3.0,
                    9.0 / 5.0,
                    15.0 / 8.0,
                ];
                let place = usize::try_from(semitones.rem_euclid(12)).unwrap_or(0);
                cents(RATIOS[place]) + 1200.0 * f64::from(semitones.div_euclid(12))
            }
        }
    }
}

/// Cents above C of a note `line` fifths up from C, brought into its octave: a fifth is 7 semitones.
fn on_the_line(line: i32, semitones: i32, fifth: f64) -> f64 {
    let octaves = (7 * line - semitones) / 12;
    f64::from(line) * fifth - 1200.0 * f64::from(octaves)
}

/// Cents above C where the circle of twelve fifths is closed: those that start `narrow` fifths from
/// C are narrow by the Pythagorean comma over `parts`, the others pure.
fn round_the_circle(semitones: i32, narrow: &[i32], parts: f64) -> f64 {
    let pure = cents(1.5);
    let comma = 12.0 * pure - 8400.0;
    let start = |fifth: i32| if narrow.contains(&fifth) { pure - comma / parts } else { pure };
    // From −1 (F) up to 10 (A♯); the twelfth fifth closes the circle.
    let place = (7 * semitones).rem_euclid(12);
    let up: f64 = if place == 11 { -start(-1) } else { (0..place).map(start).sum() };
    up.rem_euclid(1200.0) + 1200.0 * f64::from(semitones.div_euclid(12))
}

/// A reference pitch and a temperament.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Tuning {
    a4: Frequency,
    temperament: Temperament,
}

/// Why a tuning cannot be used.
#[derive(Clone, Debug, PartialEq, Error)]
#[non_exhaustive]
pub enum TuningError {
    /// A4 out of reach.
    #[error("the pitch of A4 must be from {} to {} Hz, got {got_hz} Hz", A4_HZ.0, A4_HZ.1)]
    Reference { got_hz: f64 },
}

impl Tuning {
    /// A tuning whose A4 sounds `a4`.
    ///
    /// # Errors
    ///
    /// When `a4` is outside [`A4_HZ`].
    pub fn new(a4: Frequency, temperament: Temperament) -> Result<Self, TuningError> {
        let got_hz = a4.to_hz();
        if (A4_HZ.0..=A4_HZ.1).contains(&got_hz) {
            Ok(Self { a4, temperament })
        } else {
            Err(TuningError::Reference { got_hz })
        }
    }

    /// The pitch of a note.
    pub fn frequency(self, note: Note) -> Frequency {
        let above_c = |letter, alter| self.temperament.cents_above_c(letter, alter);
        let octaves = 1200.0 * (f64::from(note.octave) - 4.0);
        let from_a4 = above_c(note.letter, note.alter) - above_c(Letter::A, 0) + octaves;
        Frequency::from_hz(self.a4.to_hz() * ratio(from_a4))
    }
}

impl Default for Tuning {
    /// A4 = 440 Hz (ISO 16:1975), equal temperament.
    fn default() -> Self {
        Self { a4: Frequency::from_hz(440.0), temperament: Temperament::Equal }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::testing::assert_close;

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
    fn the_same_key_has_one_frequency_in_equal_temperament() {
        let tuning = Tuning::default();
        for (one, other) in [("C#4", "Db4"), ("B#3", "C4"), ("Cb4", "B3"), ("F##4", "G4")] {
            let hz = |name| tuning.frequency(note(name)).to_hz();
            assert_close(hz(one), hz(other), 1e-12, one);
        }
    }

    #[test]
    fn an_octave_doubles_in_every_temperament() {
        for temperament in Temperament::ALL {
            let tuning = Tuning::new(Frequency::from_hz(415.0), temperament).unwrap();
            for letter in Letter::ALL {
                for alter in -2..=2 {
                    let hz = |o| tuning.frequency(Note::new(letter, alter, o).unwrap()).to_hz();
                    assert_close(hz(5), 2.0 * hz(4), 1e-12, format_args!("{temperament:?}"));
                }
            }
            assert_close(tuning.frequency(note("A4")).to_hz(), 415.0, 1e-12, "A4");
        }
    }

    #[test]
    fn every_temperament_rises_with_the_keys() {
        for temperament in Temperament::ALL {
            let keys =
                ["C4", "C#4", "D4", "Eb4", "E4", "F4", "F#4", "G4", "G#4", "A4", "Bb4", "B4", "C5"];
            let tuning = Tuning::new(Frequency::from_hz(440.0), temperament).unwrap();
            let steps: Vec<f64> = keys.map(|name| tuning.frequency(note(name)).to_hz()).to_vec();
            assert!(steps.windows(2).all(|pair| pair[0] < pair[1]), "{temperament:?}: {steps:?}");
        }
    }

    #[test]
    fn a_reference_out_of_reach_is_refused() {
        for hz in [379.9, 480.1, f64::NAN, f64::INFINITY, -440.0] {
            assert!(Tuning::new(Frequency::from_hz(hz), Temperament::Equal).is_err(), "{hz}");
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
