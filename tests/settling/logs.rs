//! Drawn logs against `SciPy`.

use serde::Deserialize;
use stringloft::engine::settling::creep::{Entry, Holds, fit, students_t};

#[derive(Deserialize)]
struct Values {
    scipy: String,
    logs: Vec<Drawn>,
    students_t: Vec<(usize, f64)>,
}

#[derive(Deserialize)]
struct Drawn {
    lines: Vec<(f64, f64, bool)>,
    per_decade_cents: f64,
    error_cents: f64,
    scatter_cents: f64,
    level_cents: f64,
    cents_per_day: f64,
    holds_min: [Option<f64>; 2],
}

fn values() -> Values {
    serde_json::from_str(include_str!("fitted.json")).expect("the script writes this form")
}

fn near(got: f64, wanted: f64, ratio: f64, what: &str) {
    let off = (got - wanted).abs();
    assert!(off <= ratio * wanted.abs().max(1e-3), "{what}: {got}, the library has {wanted}");
}

/// Source: `SciPy`, `lstsq` and `t.ppf`. The bounds are as near as Student's t is: 0.13 %.
#[test]
fn drawn_logs_are_fitted_as_a_library_fits_them() {
    let values = values();
    assert!(!values.scipy.is_empty() && values.logs.len() == 40);
    for (at, drawn) in values.logs.iter().enumerate() {
        let entry = |line: &(f64, f64, bool)| Entry {
            minutes: line.0,
            cents: line.1,
            is_tuning: line.2,
            celsius: None,
        };
        let log: Vec<Entry> = drawn.lines.iter().map(entry).collect();
        let fit = fit(&log, None).unwrap();
        let what = |what: &str| format!("log {at}, {what}");
        near(fit.per_decade_cents, drawn.per_decade_cents, 1e-9, &what("decade"));
        near(fit.scatter_cents.unwrap(), drawn.scatter_cents, 1e-9, &what("scatter"));
        near(fit.level_cents, drawn.level_cents, 1e-7, &what("level"));
        near(fit.error_cents.unwrap(), drawn.error_cents, 1.3e-3, &what("error"));
        let last = log.iter().map(|entry| entry.minutes).fold(0.0, f64::max);
        // The library takes the slope by a difference over a minute.
        near(fit.cents_per_day(last).0, drawn.cents_per_day, 1e-3, &what("a day"));
        for (got, wanted) in fit.holds(5.0, 7.0, last).into_iter().zip(drawn.holds_min) {
            match (got, wanted) {
                (Holds::NotForetold, None) => {}
                (Holds::Already, Some(minutes)) => near(last, minutes, 1e-9, &what("holds")),
                (Holds::From(got), Some(minutes)) => near(got, minutes, 3e-3, &what("from")),
                _ => panic!("{}: {got:?}, the library has {wanted:?}", what("holds")),
            }
        }
    }
    let likely = values.logs.iter().map(|drawn| drawn.holds_min[0]);
    let foretold = likely.filter(Option::is_some).count();
    // Both kinds are drawn.
    assert!(foretold > 20 && foretold < values.logs.len(), "{foretold}");
}

/// Source: `SciPy`, `t.ppf(0.975, n)`.
#[test]
fn students_t_is_that_of_a_library() {
    for (free, t) in values().students_t {
        near(students_t(free), t, 1.3e-3, &format!("{free} degrees of freedom"));
    }
}
