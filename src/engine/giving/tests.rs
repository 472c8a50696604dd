//! The giving of frames against closed forms.

use super::*;
use crate::testing::assert_close;

fn string(tension_n: f64, stiffness_n_per_m: f64) -> Strung {
    Strung { tension: Force::from_n(tension_n), stiffness_n_per_m }
}

/// Two strings in closed form: the first loses `C₁₂ T₂/(1/K₁ + C₁₁)`, and once it is brought back the second loses
/// `C₁₂ w/((1/K₁ + C₁₁)(1/K₂ + C₂₂) − C₁₂²)` for the `w` that the pin of the first takes up.
#[test]
fn two_strings_fall_as_worked_out_by_hand() {
    let gives = vec![vec![2e-6, 5e-7], vec![5e-7, 3e-6]];
    let strings = [string(80.0, 2e4), string(120.0, 5e4)];
    let (one, two, both) = (1.0 / 2e4 + 2e-6, 1.0 / 5e4 + 3e-6, 5e-7);
    let mut left = first_round(&gives, &strings, &[0, 1]).unwrap();
    let fall = both * 120.0 / one;
    assert_close(left[0], 80.0 - fall, 1e-12, "the first");
    assert_close(left[1], 120.0, 1e-12, "the second, just brought up");
    let back = first_round(&gives, &strings, &[1, 0]).unwrap();
    assert_close(back[1], 120.0 - both * 80.0 / two, 1e-12, "in the other order");
    let answers = answers(&gives, &strings).unwrap();
    let whole = one * two - both * both;
    assert_close(answers[0][0], two / whole, 1e-12, "of itself");
    assert_close(answers[0][1], -both / whole, 1e-12, "of the other");
    next_round(&answers, &strings, &[0, 1], &mut left);
    // Bringing the first back by its fall lowers the second, which then lowers the first again by what it regains.
    let lost = both / two * fall;
    let again = both / one * lost;
    assert_close(left[1], 120.0, 1e-12, "the second is last again");
    assert_close(80.0 - left[0], again, 1e-9, "what is left of the fall");
}

#[test]
fn a_frame_that_does_not_give_takes_nothing() {
    let strings = [string(80.0, 2e4), string(120.0, 5e4), string(50.0, 1e4)];
    let left = first_round(&vec![vec![0.0; 3]; 3], &strings, &[2, 0, 1]).unwrap();
    assert_eq!(left, [80.0, 120.0, 50.0]);
}

/// Every string that is up satisfies `t = T + K (C t when it came up − C t now)`, whatever the order: worked out step by
/// step from the whole matrix, without solving for anything.
#[test]
fn what_a_string_lost_is_what_its_ends_came_nearer() {
    let gives: Vec<Vec<f64>> = (0..4)
        .map(|row: i32| (0..4).map(|column| 4e-6 / f64::from(1 + (row - column).abs())).collect())
        .collect();
    let strings = [string(80.0, 2e4), string(120.0, 5e4), string(50.0, 1e4), string(99.0, 3e4)];
    let order = [3, 0, 2, 1];
    let nearer = |tensions: &[f64], one: usize| -> f64 {
        gives[one].iter().zip(tensions).map(|(c, t)| c * t).sum()
    };
    let now = first_round(&gives, &strings, &order).unwrap();
    for (up, one) in order.iter().enumerate() {
        let then = first_round(&gives, &strings, &order[..=up]).unwrap();
        let lost = nearer(&now, *one) - nearer(&then, *one);
        let string = strings[*one];
        let left = string.tension.to_n() - string.stiffness_n_per_m * lost;
        assert_close(now[*one], left, 1e-12, one);
    }
}

#[test]
fn each_round_leaves_less_to_do() {
    let gives = vec![vec![4e-6, 2e-6, 1e-6], vec![2e-6, 5e-6, 2e-6], vec![1e-6, 2e-6, 4e-6]];
    let strings = [string(80.0, 2e4), string(120.0, 5e4), string(50.0, 1e4)];
    let order = [0, 1, 2];
    let answers = answers(&gives, &strings).unwrap();
    let mut left = first_round(&gives, &strings, &order).unwrap();
    let off = |left: &[f64]| -> f64 {
        left.iter().zip(&strings).map(|(t, s)| (s.tension.to_n() - t).abs()).sum()
    };
    for _ in 0..4 {
        let before = off(&left);
        next_round(&answers, &strings, &order, &mut left);
        assert!(off(&left) < 0.5 * before, "{} after {before}", off(&left));
    }
}
