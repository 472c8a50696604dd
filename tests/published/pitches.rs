//! Pitch: ISO 16, equal temperament from C1 to G7, and the usual reference pitches.

use stringloft::engine::pitch::{Note, Temperament, Tuning, cents};
use stringloft::engine::units::Frequency;

use super::{assert_prints, assert_same};

/// The twelve keys of an octave.
const KEYS: [&str; 12] = ["C", "C#", "D", "D#", "E", "F", "F#", "G", "G#", "A", "A#", "B"];

/// Equal temperament on A4 = 440 Hz, one octave a row from C1; the last ends with G7.
///
/// Source: `440 · 2^((m − 69)/12)` for the key numbers 24 to 103, worked out apart from this code. The
/// rows agree with the table of notes that any acoustics text prints.
const EQUAL_HZ: [&[f64]; 7] = [
    &[
        32.703, 34.648, 36.708, 38.891, 41.203, 43.654, 46.249, 48.999, 51.913, 55.000, 58.270,
        61.735,
    ],
    &[
        65.406, 69.296, 73.416, 77.782, 82.407, 87.307, 92.499, 97.999, 103.826, 110.000, 116.541,
        123.471,
    ],
    &[
        130.813, 138.591, 146.832, 155.563, 164.814, 174.614, 184.997, 195.998, 207.652, 220.000,
        233.082, 246.942,
    ],
    &[
        261.626, 277.183, 293.665, 311.127, 329.628, 349.228, 369.994, 391.995, 415.305, 440.000,
        466.164, 493.883,
    ],
    &[
        523.251, 554.365, 587.330, 622.254, 659.255, 698.456, 739.989, 783.991, 830.609, 880.000,
        932.328, 987.767,
    ],
    &[
        1046.502, 1108.731, 1174.659, 1244.508, 1318.510, 1396.913, 1479.978, 1567.982, 1661.219,
        1760.000, 1864.655, 1975.533,
    ],
    &[2093.005, 2217.461, 2349.318, 2489.016, 2637.020, 2793.826, 2959.955, 3135.963],
];

fn hz(name: &str) -> f64 {
    let note: Note = name.parse().expect("the test names a note");
    Tuning::default().frequency(note).to_hz()
}

pub fn the_equal_tempered_compass_is_the_printed_one() {
    for (octave, row) in (1..).zip(EQUAL_HZ) {
        for (key, printed) in KEYS.iter().zip(row) {
            let name = format!("{key}{octave}");
            assert_prints(hz(&name), *printed, 1e-3, &name);
        }
    }
    // The lowest string of a pedal harp in its open tuning; worked out likewise.
    assert_prints(hz("Cb1"), 30.868, 1e-3, "Cb1");
}

/// Source: ISO 16:1975, as a piano technicians' list (2005) quotes its catalogue text: A of the treble
/// stave is 440 Hz, to be held within 0.5 Hz. Read. The 1.97 cents are worked out.
pub fn the_reference_pitch_is_that_of_the_standard() {
    assert_same(hz("A4").to_bits(), 440.0_f64.to_bits(), "A4");
    assert_prints(cents(440.5 / 440.0), 1.97, 0.01, "half a hertz above");
}

/// Source: pitches in use, from encyclopaedia articles (read), but 392 Hz (from memory); the offsets
/// from 440 Hz are worked out, printed to 0.01 cent.
pub fn other_reference_pitches_lie_where_they_should() {
    let offsets = [
        (392.0, -199.98),
        (415.0, -101.27),
        (430.0, -39.80),
        (432.0, -31.77),
        (435.0, -19.79),
        (442.0, 7.85),
        (443.0, 11.76),
        (466.0, 99.39),
    ];
    let note: Note = "A4".parse().expect("a note");
    for (a4_hz, printed) in offsets {
        let tuning = Tuning::new(Frequency::from_hz(a4_hz), Temperament::Equal)
            .expect("these pitches are in use");
        let offset = cents(tuning.frequency(note).to_hz() / hz("A4"));
        assert_prints(offset, printed, 0.01, format_args!("A4 = {a4_hz} Hz"));
    }
}

/// Source: an article on how harp strings are numbered (2024): octaves are counted from the top, each from E
/// down to F, with middle C in the fourth; what lies above E7 is octave 0. Read.
pub fn the_harpists_octaves_are_counted_from_the_top() {
    for (name, octave) in [
        ("G7", 0),
        ("F7", 0),
        ("E7", 1),
        ("F6", 1),
        ("E6", 2),
        ("F5", 2),
        ("E5", 3),
        ("F4", 3),
        ("E4", 4),
        ("C4", 4),
        ("F3", 4),
        ("E3", 5),
        ("E2", 6),
        ("E1", 7),
        ("C1", 7),
    ] {
        let note: Note = name.parse().expect("the test names a note");
        assert_same(note.harp_octave(), octave, name);
    }
}

/// Source: the key numbers of the MIDI standard, from memory: C4 is 60, A4 is 69. C1 is 24 and G7 is 103,
/// worked out. The octave of the name is the number over 12, less one.
pub fn keys_have_their_numbers() {
    for (name, number) in
        [("C4", 60), ("A4", 69), ("C1", 24), ("G7", 103), ("Cb4", 59), ("B#3", 60)]
    {
        let note: Note = name.parse().expect("the test names a note");
        assert_same(note.key_number(), number, name);
    }
}
