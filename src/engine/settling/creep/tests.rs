//! The law of a log against closed forms; drawn logs are held to `SciPy` in `tests/settling.rs`.

use super::*;
use crate::testing::assert_close;

fn heard(minutes: f64, cents: f64) -> Entry {
    Entry { minutes, cents, is_tuning: false, celsius: None }
}

fn tuned(minutes: f64, cents: f64) -> Entry {
    Entry { is_tuning: true, ..heard(minutes, cents) }
}

#[test]
fn nothing_is_said_without_a_tuning_and_a_reading_after_it() {
    assert_eq!(fit(&[], None), Err(NoFit::NoTuning));
    assert_eq!(fit(&[heard(1.0, 2.0), heard(5.0, 1.0)], None), Err(NoFit::NoTuning));
    assert_eq!(fit(&[heard(1.0, 2.0), tuned(5.0, 0.0)], None), Err(NoFit::NoReading));
    assert_eq!(fit(&[tuned(5.0, 0.0), heard(5.0, -1.0)], None), Err(NoFit::NoReading));
    assert_eq!(fit(&[tuned(0.0, 0.0), heard(f64::NAN, -1.0)], None), Err(NoFit::NoReading));
}

#[test]
fn one_reading_gives_a_law_without_bounds() {
    let fit = fit(&[tuned(0.0, 0.0), heard(99.0, -8.0)], None).unwrap();
    assert_close(fit.per_decade_cents, -4.0, 1e-12, "two decades");
    assert_eq!((fit.error_cents, fit.scatter_cents), (None, None));
    let [_, surely] = fit.holds(5.0, 7.0, 99.0);
    assert_eq!(surely, Holds::NotForetold);
}

/// Tuned up by 600 cents, half of the tension is new: the law of the second stretch is the first one going on and half a
/// fresh one.
#[test]
fn a_retuning_begins_anew_with_the_share_it_put_on() {
    let law = |minutes: f64| -6.0 * (1.0 + minutes).log10();
    let half = |minutes: f64| law(minutes) + 0.5 * law(minutes - 50.0) - law(50.0);
    let mut log = vec![tuned(0.0, 0.0)];
    log.extend([2.0, 10.0, 30.0].map(|at| heard(at, law(at))));
    log.push(heard(50.0, -600.0));
    // The reading before the tuning says by how much it was tuned; it is left out of what is fitted by hand below.
    let tunings = tunings(&in_order(&[log.clone(), vec![tuned(50.0, 0.0)]].concat(), None));
    assert_close(tunings[1].1, 0.5, 1e-12, "half of the tension");
    log.pop();
    log.push(heard(50.0, law(50.0)));
    log.push(tuned(50.0, law(50.0) + 600.0));
    log.extend([55.0, 80.0, 300.0].map(|at| heard(at, law(50.0) + 600.0 + half(at))));
    let fit = fit(&log, None).unwrap();
    assert_close(fit.per_decade_cents, -6.0, 1e-12, "one law for both");
    assert!(fit.error_cents.unwrap() < 1e-9);
    assert_close(fit.at(1_000.0), law(50.0) + 600.0 + half(1_000.0), 1e-9, "and on");
}

#[test]
fn the_rate_is_the_slope_of_the_law() {
    let log = [tuned(0.0, 0.0), heard(20.0, -5.0), heard(400.0, -11.0), heard(2_000.0, -14.0)];
    let fit = fit(&log, None).unwrap();
    let (rate, error) = fit.cents_per_day(700.0);
    let slope = (fit.at(700.5) - fit.at(699.5)) * DAY_MIN;
    assert_close(rate, slope, 1e-6, "by differences");
    assert!(error.unwrap() > 0.0);
}

/// `b lg((1 + t + 7 d)/(1 + t)) = 5` gives `t = 7 d/(10^(5/b) − 1) − 1`.
#[test]
fn it_holds_from_when_the_law_says() {
    let law = |minutes: f64| -20.0 * (1.0 + minutes).log10();
    let mut log = vec![tuned(0.0, 0.0)];
    log.extend([10.0, 100.0, 1_000.0, 5_000.0].map(|at| heard(at, law(at))));
    let fit = fit(&log, None).unwrap();
    let [likely, surely] = fit.holds(5.0, 7.0, 5_000.0);
    let by_hand = 7.0 * DAY_MIN / (10.0_f64.powf(0.25) - 1.0) - 1.0;
    let Holds::From(minutes) = likely else { panic!("{likely:?}") };
    assert!((minutes - by_hand).abs() < 1.0, "{minutes} of {by_hand}");
    assert!(matches!(surely, Holds::From(later) if later >= minutes - 1.0), "{surely:?}");
    assert_eq!(fit.holds(100.0, 7.0, 5_000.0)[0], Holds::Already);
    // The log is 5,000 minutes long, so that nothing is said beyond 50,000.
    assert_close(fit.horizon_min(), 50_000.0, 1e-12, "ten times");
    assert_eq!(fit.holds(1.0, 7.0, 5_000.0)[0], Holds::NotForetold);
    assert_eq!(fit.holds(5.0, 7.0, 49_000.0)[0], Holds::NotForetold);
}

#[test]
fn readings_are_brought_to_one_temperature_where_the_drift_is_known() {
    let law = |minutes: f64| -4.0 * (1.0 + minutes).log10();
    let at = |minutes: f64, celsius: f64| Entry {
        celsius: Some(celsius),
        ..heard(minutes, law(minutes) - 2.5 * (celsius - 20.0))
    };
    let first = Entry { celsius: Some(20.0), ..tuned(0.0, 0.0) };
    let log = [first, at(9.0, 24.0), at(99.0, 15.0), at(999.0, 22.0)];
    let brought = fit(&log, Some(-2.5)).unwrap();
    assert_close(brought.per_decade_cents, -4.0, 1e-12, "brought to 20 degrees");
    assert!(fit(&log, None).unwrap().error_cents.unwrap() > 1.0);
}
