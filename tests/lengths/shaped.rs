//! Lengths scaled, stretched and faired.

use stringloft::design::presets::SAMPLES;
use stringloft::design::resolve::resolve;
use stringloft::engine::analysis::{Known, Unknown};
use stringloft::engine::lengths::{Strength, fair, scale, stretch, to_longest, unevenness};
use stringloft::engine::units::Length;

use super::draws::Draws;
use super::{assert_lengths, figures, flexible, metres, mm};

#[test]
fn twice_the_length_is_four_times_the_pull_of_a_flexible_string() {
    let harp = flexible([400.0, 350.0, 300.0]);
    let lengths: Vec<Known<Length>> = harp.strings.iter().map(|string| string.length).collect();
    for ratio in [0.5, 1.1, 2.0] {
        let scaled = figures(&harp, &scale(&lengths, ratio));
        for (before, after) in figures(&harp, &lengths).iter().zip(&scaled) {
            let grows =
                after.tension.expect("a pull").to_n() / before.tension.expect("a pull").to_n();
            assert!((grows / (ratio * ratio) - 1.0).abs() < 1e-12);
        }
    }
    let longest = metres(&to_longest(&lengths, mm(450.0)));
    assert!(longest.iter().all(|length| (length - 0.45).abs() < 1e-12));
    assert_eq!(scale(&lengths, f64::NAN), [Err(Unknown::OutOfReach); 3]);
    assert_eq!(to_longest(&[Err(Unknown::Length)], mm(450.0)), [Err(Unknown::Length)]);
}

#[test]
fn a_stretched_range_goes_from_one_ratio_to_the_other() {
    let lengths = [Ok(mm(100.0)); 6];
    let got = metres(&stretch(&lengths, 1..4, (1.0, 1.44)));
    for (got, mm) in got.iter().zip([100.0, 100.0, 120.0, 144.0, 100.0, 100.0]) {
        assert!((got * 1e3 - mm).abs() < 1e-9, "{got} for {mm}");
    }
    assert_eq!(stretch(&lengths, 0..6, (1.0, 1.0)), lengths);
    assert_eq!(stretch(&lengths, 9..40, (2.0, 2.0)), lengths);
}

fn uneven(draws: &mut Draws, count: i32) -> Vec<Known<Length>> {
    let usual = |index: i32| 90.0 * (1500.0_f64 / 90.0).powf((f64::from(index) / 46.0).powf(0.85));
    (0..count).map(|index| Ok(mm(usual(index) * draws.between(0.97, 1.03)))).collect()
}

#[test]
fn a_line_and_a_parabola_are_fair() {
    for bend in [0.0, -0.001] {
        let lengths: Vec<Known<Length>> = (0..40)
            .map(|index| {
                Ok(mm(80.0 * (0.08 * f64::from(index) + bend * f64::from(index * index)).exp()))
            })
            .collect();
        for strength in [Strength::ALittle, Strength::Well, Strength::Fully] {
            let faired = fair(&lengths, 0..40, strength, &[]);
            assert_eq!((faired.greatest_change, faired.lengths), (None, lengths.clone()));
        }
    }
}

#[test]
fn faired_in_full_twice_is_as_once() {
    let mut draws = Draws::new(7);
    for range in [0..47, 10..30, 0..9, 40..47] {
        let lengths = uneven(&mut draws, 47);
        let once = fair(&lengths, range.clone(), Strength::Fully, &[]);
        let twice = fair(&once.lengths, range.clone(), Strength::Fully, &[]);
        assert_lengths(&twice.lengths, &metres(&once.lengths), 1e-6);
        let (_, change) = once.greatest_change.expect("uneven lengths change");
        assert!(change.to_mm().abs() > 0.5, "{range:?}");
        for index in (0..=range.start).chain(range.end - 1..47) {
            assert_eq!(once.lengths[index], lengths[index], "{range:?}");
        }
    }
}

#[test]
fn more_fairing_leaves_less_uneven() {
    let lengths = uneven(&mut Draws::new(8), 47);
    let roughness = |lengths: &[Known<Length>]| -> f64 {
        let logs: Vec<f64> = metres(lengths).iter().map(|m| m.ln()).collect();
        logs.windows(4).map(|x| (x[3] - 3.0 * x[2] + 3.0 * x[1] - x[0]).powi(2)).sum()
    };
    let mut last = roughness(&lengths);
    for strength in [Strength::ALittle, Strength::Well, Strength::Fully] {
        let faired = fair(&lengths, 0..47, strength, &[]);
        let now = roughness(&faired.lengths);
        assert!(now < last, "{strength:?}");
        last = now;
        assert_eq!(faired.uneven_before, unevenness(&lengths));
        assert_eq!(faired.uneven_after, unevenness(&faired.lengths));
    }
}

#[test]
fn locked_and_unknown_lengths_are_left_when_faired() {
    let mut lengths = uneven(&mut Draws::new(9), 20);
    lengths[7] = Err(Unknown::Length);
    let mut locked = [false; 12];
    locked[10] = true;
    let faired = fair(&lengths, 2..18, Strength::Well, &locked);
    assert_eq!(faired.lengths[7], Err(Unknown::Length));
    assert_eq!(faired.lengths[10], lengths[10]);
    assert_ne!(faired.lengths[11], lengths[11]);
}

/// Lengths of common practice, in whole millimetres: what they have in waves is longer than what is smoothed away.
#[test]
fn the_lengths_of_the_samples_pass() {
    for sample in SAMPLES {
        let harp = resolve(&sample.design()).harp;
        let lengths: Vec<Known<Length>> = harp.strings.iter().map(|string| string.length).collect();
        let faired = fair(&lengths, 0..lengths.len(), Strength::Well, &[]);
        for (index, (old, new)) in metres(&lengths).iter().zip(metres(&faired.lengths)).enumerate()
        {
            // Half of the last millimetre, or 0.8 % of the length.
            let room = (0.008 * old).max(0.5e-3);
            assert!((new - old).abs() < room, "{}: string {index}, {old} to {new}", sample.key);
        }
    }
}
