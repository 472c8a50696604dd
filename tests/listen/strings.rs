//! Strings that sound one after another, the tuner being led or not; and what is no string.

use std::f64::consts::TAU;

use stringloft::engine::listen::{Heard, Listener, Reading, Sought};
use stringloft::engine::pitch::{cents, ratio};
use stringloft::engine::units::Frequency;

use super::tones::add_hum;
use super::{heard, sought};

const RATE_HZ: f64 = 22_050.0;

/// A plucked stiff string of 12 partials, a tenth of a second of silence before it.
pub fn pluck(rate_hz: f64, first_hz: f64, b: f64, seconds: f64) -> Vec<f32> {
    let start = 0.1;
    let sample = |i: usize| {
        let t = i as f64 / rate_hz - start;
        if t < 0.0 {
            return 0.0;
        }
        let partial = |n: u32| {
            let order = f64::from(n);
            let hz = order * first_hz * ((1.0 + b * order * order) / (1.0 + b)).sqrt();
            let size = if hz < 0.4 * rate_hz { 0.2 * (0.9 * order).sin() / order } else { 0.0 };
            size * (-(1.2 + 0.02 * order * order) * t).exp() * (TAU * hz * t).sin()
        };
        (1.0 - (-t / 0.002).exp()) * (1..=12).map(partial).sum::<f64>()
    };
    (0..(seconds * rate_hz) as usize).map(|i| sample(i) as f32).collect()
}

/// Lays one sound over another, from a time on.
fn lay(over: &mut Vec<f32>, sound: &[f32], from_s: f64) {
    let from = (from_s * RATE_HZ) as usize;
    over.resize(over.len().max(from + sound.len()), 0.0);
    over[from..].iter_mut().zip(sound).for_each(|(x, more)| *x += more);
}

fn target_hz(place: usize) -> f64 {
    sought(0.0)[place].target.to_hz()
}

fn all_heard(readings: &[Reading]) -> Vec<Heard> {
    readings.iter().filter_map(|reading| reading.heard).collect()
}

/// From A5 down an octave, each a few cents off, and each ringing on while the next is plucked.
#[test]
fn a_scale_that_rings_on_is_told_string_by_string() {
    let mut sound = Vec::new();
    let off_cents = |place: usize| 3.0 * (place % 5) as f64 - 6.0;
    for (turn, place) in (13..21).enumerate() {
        let one = pluck(RATE_HZ, target_hz(place) * ratio(off_cents(place)), 1e-5, 3.0);
        lay(&mut sound, &one, 0.8 * turn as f64);
    }
    let (_, notes) = heard(RATE_HZ, sought(1e-5), &sound, 2_048);
    let places: Vec<usize> = notes.iter().map(|note| note.string.expect("a string")).collect();
    assert_eq!(places, (13..21).collect::<Vec<_>>());
    for (note, place) in notes.iter().zip(13..21) {
        let told = note.cents.unwrap();
        assert!((told - off_cents(place)).abs() < 0.5, "string {place}: {told} cents");
        let degrees = note.pin_degrees.unwrap();
        assert!((degrees + told / 4.0).abs() < 1e-9, "a degree moves it by 4 cents: {degrees}");
    }
}

#[test]
fn the_same_string_plucked_again_is_a_new_note() {
    let mut sound = Vec::new();
    for turn in 0..3 {
        lay(&mut sound, &pluck(RATE_HZ, 220.5, 3e-5, 2.0), 1.2 * f64::from(turn));
    }
    let (_, notes) = heard(RATE_HZ, sought(3e-5), &sound, 2_048);
    assert_eq!(notes.len(), 3);
    assert!(notes.iter().all(|note| cents(note.fit.to_hz() / 220.5).abs() < 0.2), "{notes:?}");
    assert!((notes[1].struck_s - 1.3).abs() < 0.04, "{}", notes[1].struck_s);
}

/// Between two strings, 120 cents below the upper one: the one that needs tuning is meant.
#[test]
fn strings_in_tune_are_meant_less() {
    let mut strings = sought(1e-5);
    let sound = pluck(RATE_HZ, target_hz(14) * ratio(-120.0), 1e-5, 1.0);
    let string = |strings: &[Sought]| heard(RATE_HZ, strings.to_vec(), &sound, 999).1[0].string;
    // The list begins at G7, so that G5 is 14 and F5, 200 cents lower, 15.
    assert_eq!(string(&strings), Some(15));
    strings[15].is_in_tune = true;
    assert_eq!(string(&strings), Some(14));
    strings[14].is_in_tune = true;
    assert_eq!(string(&strings), Some(15), "both in tune: the nearer");
}

#[test]
fn a_string_that_is_led_may_be_far_below_its_pitch() {
    let sound = pluck(RATE_HZ, target_hz(20) * ratio(-1_450.0), 1e-5, 1.2);
    let mut listener = Listener::new(RATE_HZ, sought(1e-5)).unwrap();
    listener.listen_for(sought(1e-5), Some(20));
    let readings = listener.feed(&sound);
    let last = all_heard(&readings).pop().expect("heard");
    assert_eq!(last.string, Some(20));
    assert!((last.cents.unwrap() + 1_450.0).abs() < 0.2, "{:?}", last.cents);
    assert!((last.pin_degrees.unwrap() - 362.5).abs() < 0.1, "to be tightened");
    // A string three octaves away is not meant.
    let other = pluck(RATE_HZ, 8.0 * target_hz(20), 1e-5, 1.2);
    let mut listener = Listener::new(RATE_HZ, Vec::new()).unwrap();
    listener.listen_for(sought(1e-5), Some(20));
    assert_eq!(
        all_heard(&listener.feed(&other)).iter().filter(|heard| heard.string.is_some()).count(),
        0
    );
}

/// The maker is led on while the last string still rings: that is a note of its own, and no reading of the next string.
#[test]
fn what_rings_on_is_not_taken_for_the_next_string_that_is_led() {
    let mut listener = Listener::new(RATE_HZ, sought(1e-5)).unwrap();
    listener.listen_for(sought(1e-5), Some(20));
    let sound = pluck(RATE_HZ, target_hz(20), 1e-5, 3.0);
    let (heard, ringing) = sound.split_at(RATE_HZ as usize);
    assert!(!all_heard(&listener.feed(heard)).is_empty());
    listener.listen_for(sought(1e-5), Some(19));
    assert_eq!(all_heard(&listener.feed(ringing)), vec![]);
    let notes = listener.notes_found();
    assert_eq!((notes.len(), notes[0].string), (1, Some(20)));
    assert!(notes[0].cents.unwrap().abs() < 0.2, "{:?}", notes[0].cents);
    let next = all_heard(&listener.feed(&pluck(RATE_HZ, target_hz(19), 1e-5, 1.0)));
    assert!(next.iter().all(|heard| heard.string == Some(19)) && next.len() > 5, "{next:?}");
}

#[test]
fn the_needle_goes_to_the_pitch_and_stands() {
    let sound = pluck(RATE_HZ, 440.0 * ratio(7.0), 1e-5, 2.0);
    let (readings, _) = heard(RATE_HZ, sought(1e-5), &sound, 512);
    let first = readings.iter().find(|reading| reading.heard.is_some()).unwrap();
    assert!((0.3..0.5).contains(&first.time_s), "0.25 s after it was struck: {}", first.time_s);
    let all = all_heard(&readings);
    assert!(!all[0].is_steady && all[all.len() - 1].is_steady);
    let needle = all[all.len() - 1].needle_cents.unwrap();
    assert!((needle - 7.0).abs() < 0.1, "{needle}");
    let first = all[all.len() - 1].first.expect("the first partial is heard").to_hz();
    assert!(cents(first / 440.0 / ratio(7.0)).abs() < 0.1, "{first}");
}

/// The pin is turned while the string sounds: 60 cents in a second.
#[test]
fn the_needle_follows_a_pin_that_is_turned() {
    let mut turned = 0.0;
    let samples: Vec<f32> = (0..(2.0 * RATE_HZ) as usize)
        .map(|i| {
            let t = i as f64 / RATE_HZ;
            turned += TAU * 330.0 * ratio(-60.0 + 60.0 * (t - 0.8).clamp(0.0, 1.0)) / RATE_HZ;
            let sound = if t < 0.1 {
                0.0
            } else {
                (turned.sin() + 0.5 * (2.0 * turned).sin()) * (-t).exp()
            };
            (0.2 * sound) as f32
        })
        .collect();
    let (readings, notes) = heard(RATE_HZ, sought(1e-7), &samples, 512);
    assert!(notes.len() == 1, "{notes:?}");
    let e4 = target_hz(23);
    for reading in readings.iter().filter(|reading| reading.heard.is_some()) {
        // The stretch that is looked at lies 0.2 s back in its middle, and up to as much in doubt.
        let lies = cents(330.0 / e4) - 60.0 + 60.0 * (reading.time_s - 1.0).clamp(0.0, 1.0);
        let told = reading.heard.unwrap().cents.unwrap();
        assert!((told - lies).abs() < 6.0, "{}: {told}, {lies}", reading.time_s);
    }
}

#[test]
fn silence_and_noise_are_no_strings() {
    let mut seed = 11_u64;
    let mut noise = || {
        seed = seed.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        (seed >> 11) as f64 / (1_u64 << 53) as f64 - 0.5
    };
    let count = (6.0 * RATE_HZ) as usize;
    let silent = vec![0.0; count];
    let noisy: Vec<f32> = (0..count).map(|_| (0.1 * noise()) as f32).collect();
    for samples in [silent, noisy] {
        let (readings, notes) = heard(RATE_HZ, sought(1e-5), &samples, 4_096);
        assert_eq!((all_heard(&readings), notes), (vec![], vec![]));
    }
}

/// The hum of the tones of `scripts/tones.py`, from the first sample on, so that it begins as a string would: it does not
/// fall, and is no string from beginning to end. Mains are off by up to 0.2 Hz.
#[test]
fn hum_of_the_mains_is_no_string_from_the_first_sample() {
    let count = (4.0 * RATE_HZ) as usize;
    for (hz, hum_db) in
        [(50.0, 0.0), (60.0, 0.0), (49.8, -20.0), (50.15, -6.0), (59.9, -14.0), (60.2, -30.0)]
    {
        for b in [1e-6, 1e-4] {
            let mut hum = vec![0.0; count];
            add_hum(&mut hum, RATE_HZ, hz, hum_db);
            let hum: Vec<f32> = hum.into_iter().map(|x| x as f32).collect();
            let (readings, notes) = heard(RATE_HZ, sought(b), &hum, 4_096);
            assert_eq!(
                (all_heard(&readings), notes),
                (vec![], vec![]),
                "{hz} Hz, {hum_db} dB, {b}"
            );
        }
    }
}

/// Strings that sound just where the mains do are heard all the same, as they fall.
#[test]
fn a_string_at_the_pitch_of_the_mains_is_heard() {
    for hz in [50.0, 60.0, 100.0, 120.0, 150.0, 200.0, 240.0, 250.0, 300.0] {
        let sound = pluck(RATE_HZ, hz, 3e-5, 2.5);
        let (readings, notes) = heard(RATE_HZ, sought(3e-5), &sound, 2_048);
        let first = readings.iter().find(|reading| reading.heard.is_some()).expect("heard");
        assert!(first.time_s < 0.7, "{hz}: {}", first.time_s);
        assert_eq!(notes.len(), 1, "{hz}");
        assert!(cents(notes[0].fit.to_hz() / hz).abs() < 0.2, "{hz}: {}", notes[0].fit.to_hz());
    }
}

#[test]
fn a_string_beside_the_mains_is_heard_through_their_hum() {
    let mut hum = vec![0.0; (6.0 * RATE_HZ) as usize];
    add_hum(&mut hum, RATE_HZ, 50.0, -14.0);
    let mut samples: Vec<f32> = hum.into_iter().map(|x| x as f32).collect();
    // The G1 beside it, 35 cents lower, is heard through it.
    lay(&mut samples, &pluck(RATE_HZ, target_hz(42), 1e-4, 2.0), 4.0);
    let (_, notes) = heard(RATE_HZ, sought(1e-4), &samples, 4_096);
    assert_eq!((notes.len(), notes[0].string), (1, Some(42)));
    assert!(notes[0].cents.unwrap().abs() < 0.5, "{:?}", notes[0].cents);
}

#[test]
fn samples_of_any_kind_give_finite_readings() {
    let wild = [f32::NAN, f32::INFINITY, f32::MAX, -f32::MAX, f32::MIN_POSITIVE, 0.0, 1.0, -1.0];
    let mut strings = sought(1e-5);
    for (string, b) in strings.iter_mut().zip([f64::NAN, f64::INFINITY, -1.0, 1e9, 0.0]) {
        (string.inharmonicity_b, string.cents_per_degree) = (Some(b), Some(b));
    }
    for hz in [0.0, -1.0, f64::NAN, f64::INFINITY, 1e-300] {
        strings.push(Sought { target: Frequency::from_hz(hz), ..strings[0] });
    }
    for from in 0..wild.len() {
        let mut samples = pluck(RATE_HZ, 2_000.0, 1e-5, 0.6);
        for (i, x) in samples.iter_mut().enumerate().skip(3_000) {
            if i % (7 + from) == 0 {
                *x = wild[(i / 7 + from) % wild.len()];
            }
        }
        let (readings, notes) = heard(RATE_HZ, strings.clone(), &samples, 700);
        for heard in all_heard(&readings) {
            assert!(heard.fit.to_hz().is_finite() && heard.off_cents.is_finite(), "{heard:?}");
        }
        assert!(readings.iter().all(|reading| reading.level_db.is_finite()));
        assert!(notes.iter().all(|note| note.fit.to_hz().is_finite()));
    }
}
