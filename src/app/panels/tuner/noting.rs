//! What the tuner hears goes into the log of settling, where that is wished.

use std::cell::RefCell;

use leptos::prelude::*;

use super::bench::Bench;
use crate::app::panels::settling::log::{
    HEARD, Reading, TUNED, celsius_of, kinds, note_reading, take_back,
};
use crate::app::store::Store;
use crate::app::widgets::button::button;
use crate::app::widgets::fields::{Choice, TextField};
use crate::app::widgets::list::words;
use crate::design::display;
use crate::engine::settling::creep::Entry;
use crate::words::{settling, tuner as say};

/// What is wished for, as long as the page is open.
#[derive(Clone, Debug)]
struct Wish {
    is_on: bool,
    is_tuning: bool,
    celsius: String,
}

thread_local! {
    static WISH: RefCell<Wish> =
        const { RefCell::new(Wish { is_on: false, is_tuning: true, celsius: String::new() }) };
}

/// Whether what is heard is noted, and as what.
#[derive(Clone, Copy)]
pub(super) struct Noting {
    store: Store,
    wish: RwSignal<Wish>,
    /// The string that was noted last, and its line.
    last: RwSignal<Option<(usize, Entry)>>,
    outcome: RwSignal<Result<String, String>>,
}

impl Noting {
    /// As it was wished for last.
    pub fn new(store: Store) -> Self {
        let wish = RwSignal::new(WISH.with_borrow(Clone::clone));
        Self { store, wish, last: RwSignal::new(None), outcome: RwSignal::new(Ok(String::new())) }
    }

    fn wish(self, change: impl FnOnce(&mut Wish)) {
        self.wish.update(change);
        WISH.set(self.wish.get_untracked());
    }

    /// Notes how far a string is off its pitch, if that is wished for.
    pub fn note(self, row: usize, cents: f64) {
        let Wish { is_on, is_tuning, celsius } = self.wish.get_untracked();
        if !is_on {
            return;
        }
        let outcome = celsius_of(&celsius).and_then(|celsius| {
            let reading = Reading { row, cents, is_tuning, celsius };
            let again = |(of, entry): (usize, Entry)| {
                (of == row && entry.is_tuning == is_tuning).then_some(entry)
            };
            let before = self.last.get_untracked().and_then(again);
            let entry = note_reading(self.store, reading, before)?;
            self.last.set(entry.map(|entry| (row, entry)));
            let name = untrack(|| {
                let analysis = self.store.analysis.read();
                analysis.strings.get(row).map(display::string_number).unwrap_or_default()
            });
            let said = || settling::noted(&display::cents(cents), &name);
            entry.map(|_| said()).ok_or_else(|| settling::LOG_FULL.into())
        });
        self.outcome.set(outcome);
    }

    fn take_back(self) {
        self.last.set(None);
        let words = |back| if back { settling::TAKEN_BACK } else { settling::NOTHING_TAKEN };
        self.outcome.set(take_back(self.store).map(|back| words(back).into()));
    }
}

/// Whether what is heard is noted, and how.
pub(super) fn noting(bench: Bench) -> AnyView {
    let noting = bench.noting;
    let wish = noting.wish;
    let kind = move || if wish.with(|wish| wish.is_tuning) { TUNED } else { HEARD }.to_owned();
    let celsius = move || wish.with(|wish| wish.celsius.clone());
    let said = move || noting.outcome.get().unwrap_or_else(|wrong| wrong);
    view! {
        <fieldset class="tuner-noting">
            <legend class="out-of-sight">{settling::LOG.said()}</legend>
            <label>
                <input
                    type="checkbox"
                    id="tuner-note"
                    prop:checked=move || wish.with(|wish| wish.is_on)
                    on:change=move |event| noting.wish(|wish| wish.is_on = event_target_checked(&event))
                />
                {say::NOTE_EACH.said()}
            </label>
            <Choice
                label=settling::KIND.said()
                choices=kinds()
                value=Signal::derive(kind)
                on_change=move |key: String| noting.wish(|wish| wish.is_tuning = key == TUNED)
            />
            <TextField
                label=settling::CELSIUS.said()
                value=Signal::derive(celsius)
                on_input=move |text| noting.wish(|wish| wish.celsius = text)
            />
            {button("tool", "tuner-unnote", "", settling::TAKE_BACK.said(), move || noting.take_back())}
            <p role="status" id="tuner-noted" class:wrong=move || noting.outcome.with(Result::is_err)>
                {words(said)}
            </p>
            <p class="hint">{say::NOTE_HINT.said()}</p>
        </fieldset>
    }
    .into_any()
}
