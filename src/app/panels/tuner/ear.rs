//! What is listened for, and what the worker made of what was heard.

use std::cell::RefCell;

use leptos::prelude::Read;
use leptos::task::spawn_local;

use super::bench::Bench;
use crate::app::browser;
use crate::app::rows::led::Stay;
use crate::app::store::Store;
use crate::design::display;
use crate::design::settling::{chart_b, compared};
use crate::engine::listen::wire::{Told, Wanted};
use crate::engine::listen::{Heard, NoteFound, Reading, Sought};
use crate::engine::measured::Reading as Measured;
use crate::engine::units::Frequency;
use crate::words::tuner as say;

/// What is listened for, and what was heard. It does not go through signals, as it changes twenty times a second.
#[derive(Default)]
pub(super) struct Ear {
    pub bench: Option<Bench>,
    pub strings: Vec<Sought>,
    /// The row of each of them.
    pub rows: Vec<usize>,
    /// How far from its pitch each row is tuned for now, in cents.
    pub off_cents: Vec<f64>,
    /// The round that is gone through.
    pub round: Option<usize>,
    pub stay: Stay,
    /// How far off each row was when it was heard last, in cents.
    pub found: Vec<Option<f64>>,
    pub notes: usize,
    /// The last note: its row, and its partials by their numbers.
    pub partials: Option<(usize, Vec<(u32, Frequency)>)>,
    pub heard: Option<Heard>,
    pub is_past: bool,
}

thread_local! {
    pub(super) static EAR: RefCell<Ear> = RefCell::default();
}

impl Ear {
    /// How far from its pitch a row is tuned for now, in cents.
    pub fn off_of(&self, row: Option<usize>) -> f64 {
        row.and_then(|row| self.off_cents.get(row).copied()).unwrap_or(0.0)
    }

    pub fn mark_those_in_tune(&mut self, room_cents: f64) {
        for (string, row) in self.strings.iter_mut().zip(&self.rows) {
            let found = self.found.get(*row).copied().flatten();
            string.is_in_tune = found.is_some_and(|cents| cents.abs() <= room_cents);
        }
    }

    /// Keeps what was found: each row, and how far off it was.
    pub fn take_notes(&mut self, notes: &[NoteFound], room_cents: f64) -> Vec<(usize, f64)> {
        let mut all = Vec::new();
        self.notes += notes.len();
        for note in notes {
            let row = note.string.and_then(|place| self.rows.get(place).copied());
            if let (Some(row), Some(cents)) = (row, note.cents)
                && let Some(found) = self.found.get_mut(row)
            {
                *found = Some(cents);
                let partials = (1..).zip(note.partials_hz).filter(|(_, hz)| *hz > 0.0);
                let partials = partials.map(|(n, hz)| (n, Frequency::from_hz(hz)));
                self.partials = Some((row, partials.collect()));
                all.push((row, cents));
            }
        }
        self.mark_those_in_tune(room_cents);
        all
    }

    /// Has the worker listen for the strings, or for one that is led.
    pub fn listen_for(&self, led: Option<usize>) {
        let wanted = Wanted { strings: self.strings.clone(), led };
        browser::listen_for(wanted.numbers());
    }

    /// Takes some readings: whether there is anything new to show, and whether the string has just stayed within so many
    /// cents for a moment.
    pub fn take_readings(&mut self, readings: &[Reading], room_cents: f64) -> (bool, bool) {
        let mut is_there = false;
        for reading in readings {
            let cents = reading.heard.and_then(|heard| heard.needle_cents);
            is_there |= self.stay.take(cents, room_cents);
        }
        let Some(last) = readings.last() else { return (false, is_there) };
        let is_new = last.heard.is_some() || !self.is_past;
        self.is_past = last.heard.is_none();
        self.heard = last.heard.or(self.heard);
        (is_new, is_there)
    }
}

/// Takes what was heard.
pub(super) fn took() {
    while let Some(numbers) = browser::take_heard() {
        // The window may be closed by now.
        let Some(bench) = EAR.with_borrow(|ear| ear.bench) else { continue };
        let Told { readings, notes } = Told::of_numbers(&numbers);
        bench.heard(&readings, &notes);
    }
}

/// Begins with nothing heard.
pub(super) fn begin(bench: Bench) {
    EAR.set(Ear { is_past: true, bench: Some(bench), ..Ear::default() });
}

/// Lets microphone and tone go, and forgets what was heard.
pub(super) fn end() {
    EAR.take();
    spawn_local(async {
        browser::sound_tone(0.0).await;
        browser::hear_no_more().await;
    });
}

/// How far off each row was when it was heard last, in cents.
pub(super) fn found() -> Vec<Option<f64>> {
    EAR.with_borrow(|ear| ear.found.clone())
}

/// What the partials of the string that was heard last say of its stiffness, beside the chart.
pub(super) fn compared_with_chart(store: Store) -> String {
    let last = EAR.with_borrow(|ear| {
        let (row, partials) = ear.partials.clone()?;
        let place = ear.rows.iter().position(|own| *own == row)?;
        Some((row, partials, ear.strings.get(place)?.inharmonicity_b))
    });
    let Some((row, partials, b)) = last else { return String::new() };
    let (resolved, analysis) = (store.resolved.read(), store.analysis.read());
    // A lever makes a string stiffer, and its tolerances with it.
    let chart = chart_b(&resolved.harp, &analysis, row).zip(b).map(|(chart, b)| {
        let stiffer = b / chart.value;
        Measured { value: b, error: stiffer * chart.error }
    });
    let name = analysis.strings.get(row).map(display::string_number).unwrap_or_default();
    let told = compared(&partials, chart);
    told.map(|told| say::of_string(&told, &name)).unwrap_or_default()
}
