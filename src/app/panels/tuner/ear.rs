//! What the tuner listens with, and what it made of what was heard.

use std::cell::RefCell;

use leptos::task::spawn_local;

use super::bench::Bench;
use crate::app::browser;
use crate::app::rows::led::Stay;
use crate::engine::listen::{Heard, Listener, NoteFound, Reading, Sought};

/// What is listened with. It does not go through signals, as it changes twenty times a second.
#[derive(Default)]
pub(super) struct Ear {
    bench: Option<Bench>,
    pub listener: Option<(f64, Listener)>,
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
                all.push((row, cents));
            }
        }
        self.mark_those_in_tune(room_cents);
        all
    }

    /// Hears a piece, with the string that is led.
    fn feed(
        &mut self,
        rate_hz: f64,
        samples: &[f32],
        led: Option<usize>,
    ) -> (Vec<Reading>, Vec<NoteFound>) {
        if self.listener.as_ref().is_none_or(|(rate, _)| (rate - rate_hz).abs() > 0.5) {
            let made = Listener::new(rate_hz, self.strings.clone()).ok();
            self.listener = made.map(|made| (rate_hz, made));
            if let Some((_, listener)) = &mut self.listener {
                listener.listen_for(self.strings.clone(), led);
            }
        }
        let Some((_, listener)) = &mut self.listener else { return Default::default() };
        let readings = listener.feed(samples);
        (readings, listener.notes_found())
    }

    /// Ends what sounds, and gives the notes of it.
    pub fn end(&mut self) -> Vec<NoteFound> {
        let Some((_, listener)) = &mut self.listener else { return Vec::new() };
        listener.end();
        listener.notes_found()
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

/// Takes every piece that was heard.
pub(super) fn took() {
    let Some(bench) = EAR.with_borrow(|ear| ear.bench) else { return };
    while let Some((rate_hz, samples)) = browser::take_heard() {
        let (readings, notes) = EAR.with_borrow_mut(|ear| {
            let led = bench.led(&ear.rows);
            ear.feed(rate_hz, &samples, led)
        });
        bench.heard(&readings, &notes);
    }
}

/// Begins with nothing heard.
pub(super) fn begin(bench: Bench) {
    EAR.set(Ear { bench: Some(bench), ..Ear::default() });
}

/// Lets microphone and tone go, and forgets what was heard.
pub(super) fn end() {
    browser::hear_no_more();
    spawn_local(browser::sound_tone(0.0, took));
    EAR.take();
}

/// How far off each row was when it was heard last, in cents.
pub(super) fn found() -> Vec<Option<f64>> {
    EAR.with_borrow(|ear| ear.found.clone())
}
