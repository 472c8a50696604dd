//! Temperaments: where each key lies above C, and how far a tuner sets it from equal temperament.

use stringloft::engine::pitch::{Note, Temperament, Tuning, cents};
use stringloft::engine::units::Frequency;

use super::assert_prints;
use Temperament::{
    JustOnC, Pythagorean, QuarterCommaMeantone, Vallotti, WerckmeisterThree, YoungTwo,
};

/// The chain of fifths from E♭ to G♯, in the order of the keys.
const KEYS: [&str; 12] = ["C", "C#", "D", "Eb", "E", "F", "F#", "G", "G#", "A", "Bb", "B"];

/// Cents above C, printed to 0.01.
///
/// Source: worked out from the definition of each temperament, apart from this code. The first three
/// rows agree within 0.02 cent with the tables of an open-source organ program, which were read. (Its
/// Vallotti is tempered a little otherwise, by up to 0.35 cent; here each of six fifths is narrow by a
/// sixth of the Pythagorean comma, as the name is usually taken.)
const ABOVE_C: [(Temperament, [f64; 12]); 6] = [
    (
        Pythagorean,
        [
            0.0, 113.69, 203.91, 294.13, 407.82, 498.04, 611.73, 701.96, 815.64, 905.87, 996.09,
            1109.78,
        ],
    ),
    (
        QuarterCommaMeantone,
        [
            0.0, 76.05, 193.16, 310.26, 386.31, 503.42, 579.47, 696.58, 772.63, 889.74, 1006.84,
            1082.89,
        ],
    ),
    (
        WerckmeisterThree,
        [
            0.0, 90.22, 192.18, 294.13, 390.22, 498.04, 588.27, 696.09, 792.18, 888.27, 996.09,
            1092.18,
        ],
    ),
    (
        Vallotti,
        [
            0.0, 94.13, 196.09, 298.04, 392.18, 501.96, 592.18, 698.04, 796.09, 894.13, 1000.00,
            1090.22,
        ],
    ),
    (
        YoungTwo,
        [
            0.0, 90.22, 196.09, 294.13, 392.18, 498.04, 588.27, 698.04, 792.18, 894.13, 996.09,
            1090.22,
        ],
    ),
    (
        JustOnC,
        [
            0.0, 111.73, 203.91, 315.64, 386.31, 498.04, 590.22, 701.96, 813.69, 884.36, 1017.60,
            1088.27,
        ],
    ),
];

/// Cents from equal temperament with A in place, printed to 0.01. Source: as [`ABOVE_C`].
const FROM_EQUAL: [(Temperament, [f64; 12]); 6] = [
    (Pythagorean, [-5.87, 7.82, -1.96, -11.73, 1.96, -7.82, 5.87, -3.91, 9.78, 0.0, -9.78, 3.91]),
    (
        QuarterCommaMeantone,
        [10.26, -13.69, 3.42, 20.53, -3.42, 13.69, -10.26, 6.84, -17.11, 0.0, 17.11, -6.84],
    ),
    (WerckmeisterThree, [11.73, 1.96, 3.91, 5.87, 1.96, 9.78, 0.0, 7.82, 3.91, 0.0, 7.82, 3.91]),
    (Vallotti, [5.87, 0.0, 1.96, 3.91, -1.96, 7.82, -1.96, 3.91, 1.96, 0.0, 5.87, -3.91]),
    (YoungTwo, [5.87, -3.91, 1.96, 0.0, -1.96, 3.91, -5.87, 3.91, -1.96, 0.0, 1.96, -3.91]),
    (JustOnC, [15.64, 27.37, 19.55, 31.28, 1.96, 13.69, 5.87, 17.60, 29.33, 0.0, 33.24, 3.91]),
];

fn note(key: &str, octave: i8) -> Note {
    format!("{key}{octave}").parse().expect("the test names a note")
}

pub fn every_key_lies_where_its_temperament_puts_it() {
    for (temperament, printed) in ABOVE_C {
        for (key, printed) in KEYS.iter().zip(printed) {
            let note = note(key, 4);
            let above = temperament.cents_above_c(note.letter(), note.alter());
            assert_prints(above, printed, 0.01, format_args!("{temperament:?} {key}"));
        }
    }
}

pub fn a_tuner_sets_every_key_as_far_from_equal_as_the_table_says() {
    let a4 = Frequency::from_hz(440.0);
    for (temperament, printed) in FROM_EQUAL {
        let tuning = Tuning::new(a4, temperament).expect("440 Hz is in reach");
        for octave in [1, 4, 7] {
            for (key, printed) in KEYS.iter().zip(printed) {
                let note = note(key, octave);
                let equal = Tuning::default().frequency(note).to_hz();
                let offset = cents(tuning.frequency(note).to_hz() / equal);
                assert_prints(offset, printed, 0.01, format_args!("{temperament:?} {note}"));
            }
        }
    }
}

/// Source: an encyclopaedia's article on quarter-comma meantone (read): its fifth is 696.578 cents, and
/// twelve of them fall 41.059 cents short of seven octaves. The commas (23.460 and 21.506 cents) and the
/// pure fifth (701.955) are worked out from their ratios.
pub fn the_wolf_and_the_commas_have_their_printed_size() {
    let fifth = |temperament: Temperament| {
        let g = note("G", 4);
        temperament.cents_above_c(g.letter(), g.alter())
    };
    let (pure, narrow) = (fifth(Pythagorean), fifth(QuarterCommaMeantone));
    assert_prints(pure, 701.955, 1e-3, "pure fifth");
    assert_prints(12.0 * pure - 8400.0, 23.460, 1e-3, "Pythagorean comma");
    assert_prints(narrow, 696.578, 1e-3, "meantone fifth");
    assert_prints(8400.0 - 12.0 * narrow, 41.059, 1e-3, "twelve meantone fifths");
    assert_prints(4.0 * (pure - narrow), 21.506, 1e-3, "syntonic comma");
    // The same gap shows between the two spellings of a key, which the harp's strings need.
    let spelled = |key| {
        let note = note(key, 4);
        QuarterCommaMeantone.cents_above_c(note.letter(), note.alter())
    };
    assert_prints(spelled("Ab") - spelled("G#"), 41.059, 1e-3, "G# to Ab");
}
