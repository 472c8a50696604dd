//! Temperaments, and the frequencies of notes in them.

use thiserror::Error;

use super::{Letter, Note, cents, ratio};
use crate::engine::units::Frequency;
use crate::words::{engine as say, numeral};

/// The lowest and the highest reference pitch of A4 that a tuning may have.
pub const A4_HZ: (f64, f64) = (380.0, 480.0);
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
    // Not by `rem_euclid`, whose remainder of any two numbers would be 1 kB of the page.
    up - 1200.0 * (up / 1200.0).floor() + 1200.0 * f64::from(semitones.div_euclid(12))
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
    #[error("{}", say::reference(&numeral(*.got_hz), &numeral(A4_HZ.0), &numeral(A4_HZ.1)))]
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
}
