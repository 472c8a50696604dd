//! What the tuner listens with, and what was chosen.

use leptos::prelude::*;
use leptos::task::spawn_local;
use wasm_bindgen::JsCast;
use web_sys::{Element, KeyboardEvent};

use super::ear::{EAR, took};
use super::noting::Noting;
use crate::app::browser::{self, Unheard};
use crate::app::panels::levers::Levers;
use crate::app::panels::settling::way::Way;
use crate::app::rows::heard::Sounds;
use crate::app::rows::led::{self, Stay};
use crate::app::store::Store;
use crate::design::letters::capital;
use crate::design::listening::{Aim, sought};
use crate::engine::listen::{NoteFound, Reading};
use crate::engine::settling::plan::Pass;
use crate::words::{Words, tuner as say};

/// Whether the tuner listens, by places: [`Bench::state`].
pub(super) const STATES: [Words; 4] = [say::OFF, say::ASKING, say::LISTENING, say::READING];
pub(super) const OFF: usize = 0;
const ASKING: usize = 1;
const LISTENING: usize = 2;
const READING: usize = 3;

/// How the strings are gone through, by places: [`Bench::order`].
pub(super) const ORDERS: [Words; 3] = [say::ANY, say::ONE, say::AS_PLANNED];
const ANY: usize = 0;
pub(super) const ONE: usize = 1;
pub(super) const AS_PLANNED: usize = 2;

/// What was chosen and what is shown. Few kinds of signals, as each takes a kilobyte.
#[derive(Clone, Copy)]
pub(super) struct Bench {
    pub store: Store,
    /// How the strings are gone through: as they sound, one by one, or as the plan goes.
    pub order: RwSignal<usize>,
    /// By how many semitones the strings are raised.
    pub levers: Levers,
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
    /// The plan by which the harp is brought up.
    pub way: Way,
}

impl Bench {
    /// Nothing was heard yet.
    pub fn new(store: Store) -> Self {
        let number = || RwSignal::new(0);
        let text = || RwSignal::new(String::new());
        let (order, row, state, tone, count) = (number(), number(), number(), number(), number());
        let levers = Levers::new(store);
        let (shown, steady, said, failed) = (text(), text(), text(), number());
        let (noting, way) = (Noting::new(store), Way::new(store));
        Self {
            store,
            order,
            levers,
            row,
            state,
            tone,
            count,
            shown,
            steady,
            said,
            failed,
            noting,
            way,
        }
    }

    /// Within so many cents a string is in tune, as the design allows, or the round.
    pub fn room_cents(self) -> f64 {
        let cents = self.store.resolved.read_untracked().harp.conditions.tolerances.pitch_cents;
        untrack(|| self.of_round(|pass| led::room_cents(pass, cents))).unwrap_or(cents)
    }

    /// Something of the round that is gone through; nothing where none is.
    fn of_round<T>(self, read: impl FnOnce(&Pass) -> T) -> Option<T> {
        if self.order.get() != AS_PLANNED {
            return None;
        }
        let here = self.way.here();
        self.way.plan.with(|plan| plan.passes.get(here).map(read))
    }

    /// Begins a round with its first string.
    fn begin_round(self) {
        let round = (self.order.get() == AS_PLANNED).then(|| self.way.here());
        if EAR.with_borrow_mut(|ear| std::mem::replace(&mut ear.round, round)) == round {
            return;
        }
        // What was found was found beside other targets.
        EAR.with_borrow_mut(|ear| ear.found.fill(None));
        self.count.update(|count| *count += 1);
        let first = self.of_round(|pass| pass.steps.first().map(|step| step.place));
        self.said.set(match first {
            Some(None) => capital(say::NO_STRINGS.said()),
            _ => String::new(),
        });
        self.failed.set(0);
        if let Some(row) = first.flatten() {
            self.row.set(row);
        }
    }

    /// What the strings should sound, after the design or what was chosen changed.
    pub fn listen_for(self) {
        self.begin_round();
        let is_led = self.order.get() != ANY;
        // Else the row follows what is heard.
        if is_led {
            self.row.track();
        }
        let count = self.store.count();
        let raised = |row: usize| u8::try_from(self.levers.of(row)).unwrap_or(0);
        let off_cents = self.of_round(|pass| led::off_cents(pass, count)).unwrap_or_default();
        let aim = Aim {
            raised: (0..count).map(raised).collect(),
            off_cents: off_cents.clone(),
            ..Aim::default()
        };
        let strings = {
            let (design, resolved) = (self.store.design.read(), self.store.resolved.read());
            sought(&design, &resolved, &self.store.analysis.read(), &aim)
        };
        EAR.with_borrow_mut(|ear| {
            ear.rows = strings.iter().map(|string| string.number.saturating_sub(1)).collect();
            ear.strings = strings;
            ear.off_cents = off_cents;
            ear.stay = Stay::default();
            ear.found.resize(count, None);
            ear.mark_those_in_tune(self.room_cents());
            ear.heard = None;
            ear.listen_for(self.led(&ear.rows));
        });
        self.show();
    }

    /// Shows what was heard last.
    fn show(self) {
        let analysis = self.store.analysis.read_untracked();
        let led = (self.order.get_untracked() != ANY).then(|| self.row.get_untracked());
        let room_cents = self.room_cents();
        let (markup, steady) = EAR.with_borrow(|ear| {
            let sounds = Sounds {
                strings: &ear.strings,
                analysis: &analysis,
                heard: ear.heard.as_ref(),
                is_past: ear.is_past,
                led,
                off_cents: ear.off_of(led),
                room_cents,
            };
            (sounds.markup(), sounds.steady())
        });
        self.shown.set(markup);
        if self.steady.get_untracked() != steady {
            self.steady.set(steady);
        }
    }

    /// Whether its window is still open: what was asked for may take its time.
    fn is_open(self) -> bool {
        self.state.try_get_untracked().is_some()
    }

    fn complain(self, why: Unheard, name: &str) {
        if !self.is_open() {
            return;
        }
        self.state.set(OFF);
        self.failed.set(1);
        self.said.set(match why {
            Unheard::Refused => say::REFUSED.into(),
            Unheard::Nothing if name.is_empty() => say::NO_MICROPHONE.into(),
            Unheard::Nothing => say::unread(&name),
            Unheard::NotHere => say::NOT_HERE.into(),
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
                    if self.state.try_get_untracked() == Some(ASKING) {
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
                Ok(true) if self.is_open() => {
                    self.state.set(OFF);
                    browser::hear_no_more().await;
                    self.is_over();
                    let count = EAR.with_borrow(|ear| ear.notes);
                    self.said.try_set(say::heard_all(&count));
                }
                Ok(true) => {}
            }
        });
    }

    fn start(self, state: usize) {
        self.said.set(String::new());
        self.failed.set(0);
        self.sound(0);
        EAR.with_borrow_mut(|ear| (ear.notes, ear.heard) = (0, None));
        self.state.set(state);
        self.show();
    }

    fn stop(self) {
        self.state.set(OFF);
        spawn_local(async move {
            browser::hear_no_more().await;
            self.is_over();
        });
    }

    /// Nothing sounds any more, unless it is listened to again.
    fn is_over(self) {
        if self.is_open() {
            EAR.with_borrow_mut(|ear| ear.is_past = true);
            self.show();
        }
    }

    fn take_notes(self, notes: &[NoteFound]) {
        if notes.is_empty() {
            return;
        }
        let room_cents = self.room_cents();
        let found = EAR.with_borrow_mut(|ear| ear.take_notes(notes, room_cents));
        self.count.update(|count| *count += 1);
        for (row, cents) in &found {
            // The log knows of no rounds: how far off its pitch.
            let off = EAR.with_borrow(|ear| ear.off_of(Some(*row)));
            self.noting.note(*row, *cents + off);
        }
        let row = found.last().map(|(row, _)| *row);
        if let Some(row) = row.filter(|_| self.order.get_untracked() == ANY) {
            self.row.set(row);
        }
    }

    /// The place of the string that is led, among those that are listened for.
    pub fn led(self, rows: &[usize]) -> Option<usize> {
        let row = self.row.get_untracked();
        let is_led = self.order.get_untracked() != ANY;
        is_led.then(|| rows.iter().position(|own| *own == row)).flatten()
    }

    /// Takes what was made of a piece that was heard.
    pub fn heard(self, readings: &[Reading], notes: &[NoteFound]) {
        self.take_notes(notes);
        let room_cents = self.room_cents();
        let (is_new, is_there) = EAR.with_borrow_mut(|ear| ear.take_readings(readings, room_cents));
        if is_new {
            self.show();
        }
        if is_there && self.order.get_untracked() == AS_PLANNED {
            // Before another piece is heard. What sounds is of the string that is left now.
            self.go(true);
            untrack(|| self.listen_for());
        }
    }

    /// To the next string or back.
    pub fn go(self, forward: bool) {
        let row = self.row.get_untracked();
        let beside = untrack(|| self.of_round(|pass| led::beside(pass, row, forward)));
        let count = self.store.design.read_untracked().strings.len().max(1);
        let step = if forward { 1 } else { count - 1 };
        match beside {
            None => self.row.set((row + step) % count),
            Some(Some(row)) => self.row.set(row),
            // The round has an end.
            Some(None) if forward => self.said.set(say::ROUND_DONE.into()),
            Some(None) => {}
        }
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
        spawn_local(browser::sound_tone(hz));
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
