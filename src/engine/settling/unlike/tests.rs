//! Odd strings among even ones, drawn by hand.

use super::*;
use crate::engine::settling::creep::{Entry, fit};

const TIMES: [f64; 7] = [3.0, 20.0, 60.0, 240.0, 800.0, 1_600.0, 4_000.0];
/// A scatter of a third of a cent, always the same one.
const NOISE: [f64; 7] = [0.3, -0.2, 0.4, -0.4, 0.1, 0.2, -0.3];

fn watched(place: usize, material: usize, of: impl Fn(usize, f64) -> f64) -> Watched {
    let mut log = vec![Entry { minutes: 0.0, cents: 0.0, is_tuning: true, celsius: None }];
    log.extend(TIMES.iter().enumerate().map(|(at, minutes)| Entry {
        minutes: *minutes,
        cents: of(at, *minutes) + NOISE[(at + place) % NOISE.len()],
        is_tuning: false,
        celsius: None,
    }));
    Watched { place, material, fit: fit(&log, None).unwrap() }
}

fn usual(place: usize, material: usize) -> Watched {
    let slope = -8.0 - 0.1 * f64::from(u32::try_from(place).unwrap());
    watched(place, material, |_, minutes| slope * (1.0 + minutes).log10())
}

fn harp() -> Vec<Watched> {
    (0..14).map(|place| usual(place, usize::from(place >= 8))).collect()
}

#[test]
fn an_even_harp_has_no_odd_string() {
    assert_eq!(unlike(&harp()), []);
}

#[test]
fn a_string_that_falls_twice_as_fast_is_named() {
    let mut all = harp();
    all[5] = watched(5, 0, |_, minutes| -17.0 * (1.0 + minutes).log10());
    let found = unlike(&all);
    assert_eq!(found.len(), 1);
    assert!(
        matches!(found[0], (5, Unlike::FallsFaster { cents, .. }) if cents > 15.0),
        "{found:?}"
    );
}

#[test]
fn a_string_that_slipped_once_is_named_with_the_moment() {
    let mut all = harp();
    let slip = |at: usize| if at >= 4 { -25.0 } else { 0.0 };
    all[3] = watched(3, 0, |at, minutes| -8.3 * (1.0 + minutes).log10() + slip(at));
    let found = unlike(&all);
    assert!(
        matches!(&found[..], [(3, Unlike::Slipped { minutes, .. })] if *minutes == TIMES[4]),
        "{found:?}"
    );
}

#[test]
fn strings_that_scatter_or_rise_are_named() {
    let mut all = harp();
    // Sharp and flat by turns.
    let false_by = |at: usize| [0.0, 6.0, -2.0, 5.0, -3.0, 4.0, -2.0][at];
    all[2] = watched(2, 0, |at, minutes| -8.2 * (1.0 + minutes).log10() + false_by(at));
    all[10] = watched(10, 1, |_, minutes| 6.0 * (1.0 + minutes).log10());
    let found = unlike(&all);
    assert!(matches!(found[0], (2, Unlike::Scatters { cents, .. }) if cents > 1.0), "{found:?}");
    assert!(matches!(found[1], (10, Unlike::Rises { cents }) if cents > 5.0), "{found:?}");
    assert_eq!(found.len(), 2);
}

#[test]
fn strings_are_held_to_their_own_material_and_to_enough_of_it() {
    let mut all = harp();
    // Another material may fall otherwise; with two neighbours of it nothing is judged.
    for (at, one) in all.iter_mut().enumerate().take(14).skip(11) {
        *one = watched(at, 2, |_, minutes| -30.0 * (1.0 + minutes).log10());
    }
    assert_eq!(unlike(&all), []);
}

#[test]
fn the_middle_of_numbers_is_the_middle_one() {
    assert_eq!(middle(&[]), None);
    assert_eq!(middle(&[3.0, 1.0, 2.0]), Some(2.0));
    assert_eq!(middle(&[4.0, 1.0, 2.0, 3.0]), Some(2.5));
}
