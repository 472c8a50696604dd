//! Plans against two strings in closed form; the samples are brought up in `tests/settling.rs`.

use super::*;
use crate::testing::assert_close;

fn two() -> Elastic {
    let string = |tension_n, stiffness_n_per_m| Strung {
        tension: Force::from_n(tension_n),
        stiffness_n_per_m,
    };
    let gives = vec![vec![2e-6, 5e-7], vec![5e-7, 3e-6]];
    Elastic { gives, strings: vec![string(80.0, 2e4), string(120.0, 5e4)] }
}

/// The first of two strings must be tuned above its pitch by what the second takes from it, `C₁₂ T₂/(1/K₁ + C₁₁)`.
#[test]
fn a_string_tuned_sharp_by_its_fall_lands_at_its_pitch() {
    let harp = two();
    let wound = harp.wound_m(&[80.0, 120.0]);
    let mut standing = Standing::slack(&harp);
    let (first, _) = standing.wind(0, wound[0], f64::INFINITY).unwrap();
    let fall = 5e-7 * 120.0 / (1.0 / 2e4 + 2e-6);
    assert_close(first, 80.0 + fall, 1e-12, "sharp by its fall");
    let (second, _) = standing.wind(1, wound[1], f64::INFINITY).unwrap();
    assert_close(second, 120.0, 1e-12, "the last one at its pitch");
    assert_close(standing.tensions_n()[0], 80.0, 1e-12, "landed");
}

#[test]
fn a_string_is_wound_no_further_than_it_may() {
    let harp = two();
    let wound = harp.wound_m(&[80.0, 120.0]);
    let mut standing = Standing::slack(&harp);
    assert_eq!(standing.wind(0, wound[0], 80.5), Some((80.5, true)));
    assert_close(standing.tensions_n()[0], 80.5, 1e-12, "at the highest");
    standing.wind(1, wound[1], f64::INFINITY).unwrap();
    assert!(standing.tensions_n()[0] < 80.0);
}

#[test]
fn the_highest_tension_is_the_lowest_of_three() {
    let (share, _) = most_tension_n(100.0, Some((200.0, 51.0)));
    assert_close(share, 102.0, 1e-12, "what its maker allows");
    let (half, _) = most_tension_n(100.0, Some((104.04, 200.0)));
    assert_close(half, 102.0, 1e-12, "half way to breaking");
    let (sharp, reach) = most_tension_n(100.0, Some((400.0, 80.0)));
    assert_close(cents(sharp, 100.0), MOST_SHARP_CENTS, 1e-9, "and no more than that");
    assert_eq!(reach, Reach::Limited);
}

/// Four strings brought up, wound and let go by the formula alone: every string has `K (w − C t)`, found by going round
/// until nothing changes, and no equation is solved.
#[test]
fn tensions_are_those_of_going_round_until_nothing_changes() {
    let gives: Vec<Vec<f64>> = (0..4)
        .map(|row: i32| (0..4).map(|column| 4e-6 / f64::from(1 + (row - column).abs())).collect())
        .collect();
    let string = |tension_n, stiffness_n_per_m| Strung {
        tension: Force::from_n(tension_n),
        stiffness_n_per_m,
    };
    let strings = vec![string(80.0, 2e4), string(120.0, 5e4), string(50.0, 1e4), string(99.0, 3e4)];
    let harp = Elastic { gives, strings };
    let mut standing = Standing::slack(&harp);
    for (one, tension) in [(2, 30.0), (0, 85.0), (3, 99.0), (1, 118.0), (2, 51.0), (0, 80.0)] {
        standing.bring(one, tension).unwrap();
        let mut t = vec![0.0; 4];
        for _ in 0..200 {
            for up in &standing.up {
                let others: f64 =
                    (0..4).filter(|o| o != up).map(|o| harp.gives[*up][o] * t[o]).sum();
                let wound = standing.wound_m[*up] - others;
                t[*up] = wound / (1.0 / harp.strings[*up].stiffness_n_per_m + harp.gives[*up][*up]);
            }
        }
        assert_close(t[one], tension, 1e-9, "the one that was brought");
        for (got, wanted) in standing.tensions_n().iter().zip(&t) {
            assert!((got - wanted).abs() < 1e-9, "{got} for {wanted}");
        }
    }
}
