//! What a check compared while it ran: how many values, and how far the worst of them lay.

use std::cell::RefCell;
use std::fmt::{Debug, Display};
use std::ops::RangeInclusive;

/// What the checks of this thread compared since the last [`taken`].
#[derive(Clone, Debug, Default)]
pub struct Record {
    values: usize,
    /// In units of the last digit that the source prints.
    digits: Option<f64>,
    /// Share of the value.
    relative: Option<f64>,
    /// Cents of pitch.
    cents: Option<f64>,
    bounds: bool,
    same: bool,
}

thread_local! {
    static RECORD: RefCell<Record> = RefCell::default();
}

/// What was compared so far; the next comparison begins a new count.
pub fn taken() -> Record {
    RECORD.take()
}

fn note(change: impl FnOnce(&mut Record)) {
    RECORD.with_borrow_mut(|record| {
        record.values += 1;
        change(record);
    });
}

fn at_least(worst: &mut Option<f64>, off: f64) {
    *worst = Some(worst.map_or(off, |worst| worst.max(off)));
}

impl Record {
    pub const fn values(&self) -> usize {
        self.values
    }

    /// The largest deviation in words; two digits of it, so that every machine says the same.
    pub fn deviation(&self) -> String {
        let digits = self.digits.map(|off| match off {
            off if off < 0.01 => "below 0.01 of the last printed digit".to_owned(),
            off => format!("{off:.2} of the last printed digit"),
        });
        let relative = self.relative.map(|off| match off {
            off if off < 1e-10 => "below 1e-10 of the value".to_owned(),
            // What solvers and rounding leave differs between machines: a power of ten with room.
            off if off < 2e-7 => format!("below {:.0e} of the value", power_above(2.0 * off)),
            off => format!("{off:.1e} of the value"),
        });
        let cents = self.cents.map(|off| match off {
            off if off < 1e-6 => "below 1e-6 cent".to_owned(),
            off if off < 0.095 => format!("{off:.1e} cent"),
            off if off < 0.95 => format!("{off:.2} cent"),
            off if off < 9.5 => format!("{off:.1} cents"),
            off => format!("{off:.0} cents"),
        });
        let bounds = self.bounds.then(|| "within the bounds stated".to_owned());
        let same = self.same.then(|| "the same".to_owned());
        let all: Vec<String> =
            [digits, relative, cents, bounds, same].into_iter().flatten().collect();
        all.join("; ")
    }
}

/// Fails unless `actual` rounds to what a source prints; `digit` is the worth of the last digit.
#[track_caller]
pub fn assert_prints(actual: f64, printed: f64, digit: f64, what: impl Display) {
    let gap = (actual - printed).abs();
    note(|record| at_least(&mut record.digits, gap / digit));
    assert!(gap <= 0.500_001 * digit, "{what}: got {actual}, the source prints {printed}");
}

/// Fails unless `actual` is `expected` within the relative `room`.
#[track_caller]
pub fn assert_near(actual: f64, expected: f64, room: f64, what: impl Display) {
    let off = (actual / expected - 1.0).abs();
    note(|record| at_least(&mut record.relative, off));
    assert!(off <= room, "{what}: {actual} for {expected}, off by {off:e} of it");
}

/// Fails unless two pitches lie within `room` cents.
#[track_caller]
pub fn assert_cents(off: f64, room: f64, what: impl Display) {
    note(|record| at_least(&mut record.cents, off.abs()));
    assert!(off.abs() <= room, "{what}: off by {off} cents, the room is {room}");
}

/// Fails unless a value lies within bounds that a source states, or that its digits leave.
#[track_caller]
pub fn assert_within(value: f64, bounds: RangeInclusive<f64>, what: impl Display) {
    note(|record| record.bounds = true);
    assert!(bounds.contains(&value), "{what}: {value} lies outside {bounds:?}");
}

/// Fails unless two things that have no digits are the same.
#[track_caller]
pub fn assert_same<T: PartialEq + Debug>(actual: T, expected: T, what: impl Display) {
    note(|record| record.same = true);
    assert_eq!(actual, expected, "{what}");
}

/// The least power of ten that is not below a number.
fn power_above(number: f64) -> f64 {
    10_f64.powf(number.log10().ceil())
}
