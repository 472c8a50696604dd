//! What the tuner listens with, and what was chosen.

use std::cell::RefCell;

use leptos::prelude::*;
use leptos::task::spawn_local;
use wasm_bindgen::JsCast;
use web_sys::{Element, KeyboardEvent};

use super::noting::Noting;
use crate::app::browser::{self, Unheard};
use crate::app::rows::heard::Sounds;
use crate::app::store::Store;
use crate::design::listening::{Aim, sought};
use crate::engine::listen::{Heard, Listener, NoteFound, Sought};
use crate::words::{Words, tuner as say};

/// Whether the tuner listens, by places: [`Bench::state`].
pub(super) const STATES: [Words; 4] = [say::OFF, say::ASKING, say::LISTENING, say::READING];
pub(super) const OFF: usize = 0;
const ASKING: usize = 1;
const LISTENING: usize = 2;
const READING: usize = 3;

/// What is listened with. It does not go through signals, as it changes twenty times a second.
#[derive(Default)]
struct Ear {
    bench: Option<Bench>,
    listener: Option<(f64, Listener)>,
    strings: Vec<Sought>,
    /// The row of each of them.
    rows: Vec<usize>,
    /// How far off each row was when it was heard last, in cents.
    found: Vec<Option<f64>>,
    notes: usize,
    heard: Option<Heard>,
    is_past: bool,
}

thread_local! {
    static EAR: RefCell<Ear> = RefCell::default();
}

/// What was chosen and what is shown. Few kinds of signals, as each takes a kilobyte.
#[derive(Clone, Copy)]
pub(super) struct Bench {
    pub store: Store,
    /// 1 where the strings are gone through one by one.
    pub one_by_one: RwSignal<usize>,
    /// By how many semitones the strings are raised.
    pub raised: RwSignal<usize>,
    pub row: RwSignal<usize>,
    pub state: RwSignal<usize>,
    /// 1 while the reference tone sounds.
    pub tone: RwSignal<usize>,
    /// Counts whenever a string was heard.
    pub count: RwSignal<usize>,
    /// The large letters, as markup.
    pub shown: RwSignal<String>,
    /// What a reader of the screen is told.
    pub steady: RwSignal<String>,
    /// What went wrong, or that a recording is over.
    pub said: RwSignal<String>,
    /// 1 where that is what went wrong.
    pub failed: RwSignal<usize>,
    /// Whether what is heard goes into the log.
    pub noting: Noting,
}

impl Bench {
    /// Nothing was heard yet.
    pub fn new(store: Store) -> Self {
        let number = || RwSignal::new(0);
        let text = || RwSignal::new(String::new());
        let (one_by_one, raised, row, state, tone, count) =
            (number(), number(), number(), number(), number(), number());
        let (shown, steady, said, failed) = (text(), text(), text(), number());
        let noting = Noting::new(store);
        Self {
            store,
            one_by_one,
            raised,
            row,
            state,
            tone,
            count,
            shown,
            steady,
            said,
            failed,
            noting,
        }
    }

    /// Within so many cents a string is in tune, as the design allows.
    pub fn room_cents(self) -> f64 {
        self.store.resolved.read_untracked().harp.conditions.tolerances.pitch_cents
    }

    /// What the strings should sound, after the design or what was chosen changed.
    pub fn listen_for(self) {
        let is_led = self.one_by_one.get() == 1;
        // Else the row follows what is heard.
        let row = if is_led { self.row.get() } else { self.row.get_untracked() };
        let count = self.store.count();
        let raised = u8::try_from(self.raised.get()).unwrap_or(0);
        let aim = Aim { raised: vec![raised; count], ..Aim::default() };
        let strings = {
            let (design, resolved) = (self.store.design.read(), self.store.resolved.read());
            sought(&design, &resolved, &self.store.analysis.read(), &aim)
        };
        EAR.with_borrow_mut(|ear| {
            ear.rows = strings.iter().map(|string| string.number.saturating_sub(1)).collect();
            ear.strings = strings;
            ear.found.resize(count, None);
            ear.mark_those_in_tune(self.room_cents());
            ear.heard = None;
            let led = is_led.then(|| ear.rows.iter().position(|own| *own == row)).flatten();
            let strings = ear.strings.clone();
            if let Some((_, listener)) = &mut ear.listener {
                listener.listen_for(strings, led);
            }
        });
        self.show();
    }

    /// Shows what was heard last.
    fn show(self) {
        let analysis = self.store.analysis.read_untracked();
        let led = (self.one_by_one.get_untracked() == 1).then(|| self.row.get_untracked());
        let room_cents = self.room_cents();
        let (markup, steady) = EAR.with_borrow(|ear| {
            let sounds = Sounds {
                strings: &ear.strings,
                analysis: &analysis,
                heard: ear.heard.as_ref(),
                is_past: ear.is_past,
                led,
                room_cents,
            };
            (sounds.markup(), sounds.steady())
        });
        self.shown.set(markup);
        if self.steady.get_untracked() != steady {
            self.steady.set(steady);
        }
    }

    fn complain(self, why: Unheard, name: &str) {
        self.state.set(OFF);
        self.failed.set(1);
        self.said.set(match why {
            Unheard::Refused => say::REFUSED.into(),
            Unheard::Nothing if name.is_empty() => say::NO_MICROPHONE.into(),
            Unheard::Nothing => say::unread(&name),
        });
    }

    /// Begins to listen to the microphone, or ends whatever is heard.
    pub fn turn(self) {
        if self.state.get_untracked() != OFF {
            return self.stop();
        }
        self.start(ASKING);
        spawn_local(async move {
            match browser::hear(took).await {
                Err(why) => self.complain(why, ""),
                Ok(()) => {
                    // It may have been told to stop meanwhile.
                    if self.state.get_untracked() == ASKING {
                        self.state.set(LISTENING);
                    }
                }
            }
        });
    }

    /// Hears a recording.
    pub fn hear_file(self, file: web_sys::File) {
        self.start(READING);
        spawn_local(async move {
            let name = file.name();
            match browser::hear_file(file, took).await {
                Err(why) => self.complain(why, &name),
                Ok(false) => {}
                Ok(true) => {
                    took();
                    self.stop();
                    let count = EAR.with_borrow(|ear| ear.notes);
                    self.said.set(say::heard_all(&count));
                }
            }
        });
    }

    fn start(self, state: usize) {
        self.said.set(String::new());
        self.failed.set(0);
        self.sound(0);
        EAR.with_borrow_mut(|ear| (ear.listener, ear.notes, ear.heard) = (None, 0, None));
        self.state.set(state);
        self.show();
    }

    fn stop(self) {
        browser::hear_no_more();
        self.state.set(OFF);
        let notes = EAR.with_borrow_mut(|ear| {
            ear.is_past = true;
            let (_, mut listener) = ear.listener.take()?;
            listener.end();
            Some(listener.notes_found())
        });
        self.take_notes(&notes.unwrap_or_default());
        self.show();
    }

    fn take_notes(self, notes: &[NoteFound]) {
        if notes.is_empty() {
            return;
        }
        let room_cents = self.room_cents();
        let found = EAR.with_borrow_mut(|ear| ear.take_notes(notes, room_cents));
        self.count.update(|count| *count += 1);
        for (row, cents) in &found {
            self.noting.note(*row, *cents);
        }
        let row = found.last().map(|(row, _)| *row);
        if let Some(row) = row.filter(|_| self.one_by_one.get_untracked() == 0) {
            self.row.set(row);
        }
    }

    /// To the next string or back.
    pub fn go(self, forward: bool) {
        let count = self.store.design.read_untracked().strings.len().max(1);
        let step = if forward { 1 } else { count - 1 };
        self.row.update(|row| *row = (*row + step) % count);
        if self.tone.get_untracked() == 1 {
            self.sound(1);
        }
    }

    /// Sounds the reference tone of the string, or ends it.
    pub fn sound(self, on: usize) {
        if on == 0 && self.tone.get_untracked() == 0 {
            return;
        }
        self.tone.set(on);
        let row = self.row.get_untracked();
        let target = EAR.with_borrow(|ear| {
            let place = ear.rows.iter().position(|own| *own == row)?;
            Some(ear.strings.get(place)?.target.to_hz())
        });
        let hz = if on == 1 { target.unwrap_or(0.0) } else { 0.0 };
        spawn_local(browser::sound_tone(hz, took));
    }

    /// What the keys do wherever the focus is, but in a list.
    pub fn on_keys(self, event: &KeyboardEvent) {
        let target = event.target().and_then(|target| target.dyn_into::<Element>().ok());
        let is_in =
            |css| target.as_ref().is_some_and(|target| matches!(target.closest(css), Ok(Some(_))));
        if event.ctrl_key() || event.meta_key() || event.alt_key() || is_in("select") {
            return;
        }
        match event.key().as_str() {
            "ArrowRight" | "PageDown" => self.go(true),
            "ArrowLeft" | "PageUp" => self.go(false),
            _ => return,
        }
        event.prevent_default();
    }
}

impl Ear {
    fn mark_those_in_tune(&mut self, room_cents: f64) {
        for (string, row) in self.strings.iter_mut().zip(&self.rows) {
            let found = self.found.get(*row).copied().flatten();
            string.is_in_tune = found.is_some_and(|cents| cents.abs() <= room_cents);
        }
    }

    /// Keeps what was found: each row, and how far off it was.
    fn take_notes(&mut self, notes: &[NoteFound], room_cents: f64) -> Vec<(usize, f64)> {
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
}

/// Takes every piece that was heard.
pub(super) fn took() {
    let Some(bench) = EAR.with_borrow(|ear| ear.bench) else { return };
    let mut is_new = false;
    let mut notes = Vec::new();
    while let Some((rate_hz, samples)) = browser::take_heard() {
        let row = bench.row.get_untracked();
        let is_led = bench.one_by_one.get_untracked() == 1;
        EAR.with_borrow_mut(|ear| {
            if ear.listener.as_ref().is_none_or(|(rate, _)| (rate - rate_hz).abs() > 0.5) {
                let made = Listener::new(rate_hz, ear.strings.clone()).ok();
                ear.listener = made.map(|made| (rate_hz, made));
                let led = is_led.then(|| ear.rows.iter().position(|own| *own == row)).flatten();
                let strings = ear.strings.clone();
                if let Some((_, listener)) = &mut ear.listener {
                    listener.listen_for(strings, led);
                }
            }
            let Some((_, listener)) = &mut ear.listener else { return };
            let readings = listener.feed(&samples);
            notes.extend(listener.notes_found());
            if let Some(last) = readings.last() {
                is_new |= last.heard.is_some() || !ear.is_past;
                ear.is_past = last.heard.is_none();
                ear.heard = last.heard.or(ear.heard);
            }
        });
    }
    if is_new {
        bench.show();
    }
    bench.take_notes(&notes);
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
