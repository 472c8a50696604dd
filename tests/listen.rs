//! The tuner: 400 tones made elsewhere, and what must hold for strings that sound one after another, for silence, hum
//! and samples of any kind.
#![allow(
    clippy::cast_possible_truncation,
    reason = "places and samples of sounds are cut off on purpose"
)]

use std::sync::Mutex;

use serde_json::Value;
use stringloft::engine::listen::{Listener, NoteFound, Reading, Sought};
use stringloft::engine::pitch::{Note, Tuning, cents};

#[path = "listen/doors.rs"]
mod doors;
#[path = "listen/strings.rs"]
mod strings;
#[path = "listen/tones.rs"]
mod tones;

use tones::Tone;

/// The most that a pitch may be off, in cents: of a tone so many decibels above the noise.
const ROOM_CENTS: [(f64, f64); 3] = [(40.0, 0.5), (20.0, 1.0), (10.0, 2.0)];

fn recorded() -> Vec<Value> {
    let path = concat!(env!("CARGO_MANIFEST_DIR"), "/tests/listen/tones.json");
    let text = std::fs::read_to_string(path).expect("the tones are kept");
    let mut kept: Value = serde_json::from_str(&text).expect("JSON");
    match kept["tones"].take() {
        Value::Array(tones) => tones,
        other => panic!("no tones: {other}"),
    }
}

/// The white keys from G7 down to C1, all with the same inharmonicity by the design.
fn sought(b: f64) -> Vec<Sought> {
    let top: Note = "G7".parse().expect("a note");
    let string = |place: i32| Sought {
        number: usize::try_from(place).expect("few") + 1,
        target: Tuning::default().frequency(top.moved(-place, |_| 0).expect("a note")),
        inharmonicity_b: Some(b),
        cents_per_degree: Some(4.0),
        is_in_tune: false,
    };
    (0..47).map(string).collect()
}

/// What is heard in some samples, given in pieces of so many.
fn heard(
    rate_hz: f64,
    strings: Vec<Sought>,
    samples: &[f32],
    piece: usize,
) -> (Vec<Reading>, Vec<NoteFound>) {
    let mut listener = Listener::new(rate_hz, strings).expect("a rate within reach");
    let readings = samples.chunks(piece).flat_map(|piece| listener.feed(piece)).collect();
    listener.end();
    (readings, listener.notes_found())
}

/// Source: the tones of `scripts/tones.py`, made with `NumPy`; what the tuner heard in its files through the door for
/// scripts, and what the pitch estimator of Praat made of them, is kept in `tones.json`.
#[test]
fn four_hundred_tones_are_heard_to_a_fraction_of_a_cent() {
    let tones = recorded();
    assert_eq!(tones.len(), 400);
    for tone in &tones {
        let tone = Tone(tone);
        let room = ROOM_CENTS.iter().find(|(noise_db, _)| *noise_db == tone.number("noise_db"));
        let off = tone.number("heard_cents").abs();
        assert!(off <= room.expect("a room").1, "{off} cents off: {}", tone.0);
        assert_eq!(tone.word("heard_note"), tone.word("string"), "{}", tone.0);
        assert!((tone.number("notes") - 1.0).abs() < 1e-9, "{}", tone.0);
    }
    // The tuner is no better than the tones ask for, if anything else manages them too.
    let lost = |name: &str| {
        let off = |tone: &&Value| tone[name].as_f64().is_none_or(|cents| cents.abs() > 50.0);
        tones.iter().filter(off).count()
    };
    assert_eq!(lost("heard_cents"), 0);
    assert!(lost("praat_cents") > 0);
}

/// Every fifth tone, made again from its numbers; all of them with `TONES=all`.
#[test]
fn the_tones_made_again_are_heard_as_the_files_were() {
    let tones = recorded();
    let step = if std::env::var_os("TONES").is_some_and(|tones| tones == "all") { 1 } else { 5 };
    let next = Mutex::new(tones.iter().step_by(step));
    let threads = std::thread::available_parallelism().map_or(1, usize::from);
    std::thread::scope(|scope| {
        for _ in 0..threads {
            scope.spawn(|| {
                loop {
                    let Some(tone) = next.lock().unwrap().next() else { return };
                    hear_again(&Tone(tone));
                }
            });
        }
    });
}

fn hear_again(tone: &Tone<'_>) {
    // No string of the tables that the files were heard with is less stiff.
    let strings = sought(tone.number("b_design").max(1e-7));
    let (_, notes) = heard(tone.number("rate"), strings, &tone.made(), 4_096);
    assert_eq!(notes.len(), 1, "{}", tone.0);
    let off = cents(notes[0].fit.to_hz() / tone.number("first_hz"));
    let gap = (off - tone.number("heard_cents")).abs();
    // At the mains what is heard counts from a level on, which wavers with the noise: a reading more or less.
    let of_mains = |mains_hz: f64| {
        let nth = (tone.number("first_hz") / mains_hz).round().max(1.0);
        cents(tone.number("first_hz") / (nth * mains_hz)).abs() < 16.0
    };
    let room = if of_mains(50.0) || of_mains(60.0) { 0.02 } else { 0.005 };
    assert!(gap < room, "{off} cents, in the file {}: {}", tone.number("heard_cents"), tone.0);
    let target: Note = tone.word("string").parse().expect("a note");
    let expected = cents(notes[0].fit.to_hz() / Tuning::default().frequency(target).to_hz());
    let told = notes[0].cents.expect("a string of the harp");
    assert!((told - expected).abs() < 1e-9, "{told} cents above {target}: {}", tone.0);
}

/// Each reading tells how far off it may be: at 20 and 10 dB no more than a few in a hundred are three times as far off.
#[test]
fn readings_tell_how_sure_they_are() {
    let (mut count, mut beyond) = (0, 0);
    for tone in recorded().iter().filter(|tone| tone["noise_db"] != 40).step_by(14) {
        let tone = Tone(tone);
        let (readings, _) =
            heard(tone.number("rate"), sought(tone.number("b_design")), &tone.made(), 4_096);
        for heard in readings.iter().filter_map(|reading| reading.heard) {
            count += 1;
            let off = cents(heard.fit.to_hz() / tone.number("first_hz")).abs();
            beyond += i32::from(off > 3.0 * heard.off_cents);
        }
    }
    assert!(count > 300 && beyond * 30 < count, "{beyond} of {count}");
}

#[test]
fn it_does_not_matter_in_which_pieces_samples_come() {
    let tones = recorded();
    let tone = Tone(&tones[0]);
    let (rate_hz, samples) = (tone.number("rate"), tone.made());
    let whole = heard(rate_hz, sought(1e-5), &samples, samples.len());
    // One for every 50 ms of 1.75 s, but for the last, which waits for what follows.
    assert_eq!(whole.0.len(), 34);
    for piece in [1, 128, 1_000, 4_801] {
        assert_eq!(heard(rate_hz, sought(1e-5), &samples, piece), whole, "pieces of {piece}");
    }
}

#[test]
fn rates_from_a_telephone_to_a_studio_give_the_same_pitch() {
    for rate_hz in [16_000.0, 22_050.0, 32_000.0, 44_100.0, 48_000.0, 88_200.0, 96_000.0, 192_000.0]
    {
        let samples = strings::pluck(rate_hz, 261.0, 2e-5, 1.2);
        let (readings, notes) = heard(rate_hz, sought(2e-5), &samples, 1_024);
        assert!(readings.len() >= 23, "{}", readings.len());
        let hz = notes[0].fit.to_hz();
        assert!(cents(hz / 261.0).abs() < 0.02, "{rate_hz}: {hz}");
        assert!((notes[0].inharmonicity_b - 2e-5).abs() < 1e-6, "{}", notes[0].inharmonicity_b);
    }
    for rate_hz in [7_999.0, 0.0, -44_100.0, f64::NAN, f64::INFINITY] {
        assert!(Listener::new(rate_hz, Vec::new()).is_none(), "{rate_hz}");
    }
}

#[test]
fn a_target_without_a_harp_is_none_and_the_pitch_is_heard_all_the_same() {
    let samples = strings::pluck(44_100.0, 97.0, 4e-5, 1.5);
    let (_, notes) = heard(44_100.0, Vec::new(), &samples, 512);
    assert_eq!((notes.len(), notes[0].string, notes[0].cents), (1, None, None));
    assert!(cents(notes[0].fit.to_hz() / 97.0).abs() < 0.05);
}
