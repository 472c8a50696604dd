//! The harp in one line: strings, compass, pull, the tightest string, the frame.

use std::time::Duration;

use leptos::leptos_dom::helpers::TimeoutHandle;
use leptos::prelude::*;

use super::chart_acts::go_to;
use crate::app::store::{Act, Part, Store};
use crate::app::widgets::list::{while_so, words};
use crate::app::{browser, frame, rows};
use crate::design::bearing_words;

/// How long the frame waits after a change: it takes longer than the figures of the strings.
const PAUSE: Duration = Duration::from_millis(300);

/// The summary, always in sight.
#[component]
pub fn Summary(store: Store) -> impl IntoView {
    let told = Memo::new(move |_| rows::summary(&store.design.read(), &store.analysis.read()));
    let tightest = move || {
        told.with(|w| w.tightest.clone()).map(|(row, text)| {
            view! {
                <button type="button" class="link" on:click=move |_| go_to(store, row)>{text}</button>
            }
        })
    };
    let frame = store.frame;
    let timer = StoredValue::new(None::<TimeoutHandle>);
    Effect::new(move |_| {
        store.design.track();
        if let Some(timer) = timer.get_value() {
            timer.clear();
        }
        // The part that works it out tells it by itself when it comes.
        let tell = move || {
            browser::when_idle(move || {
                if store.has(Part::Drawing) {
                    store.act(Act::TellFrame);
                }
            });
        };
        timer.set_value(set_timeout_with_handle(tell, PAUSE).ok());
    });
    let frame_item = move || {
        view! {
            <div class="frame">
                <dt>"Frame"</dt>
                <dd id="sum-frame">
                    <button type="button" class="link" title=move || format!("{} Opens the loads.", frame.get().full) on:click=move |_| store.show_loads()>
                        {words(move || frame.get().short)}
                    </button>
                </dd>
            </div>
        }
        .into_any()
    };
    view! {
        <section class="summary" aria-label="Summary">
            <dl>
            <div><dt>"Strings"</dt><dd id="sum-strings">{words(move || told.with(|w| w.strings.clone()))}</dd></div>
            <div><dt>"Compass"</dt><dd id="sum-compass">{words(move || told.with(|w| w.compass.clone()))}</dd></div>
            <div class="total">
                <dt>"Total tension"</dt>
                <dd id="sum-total">
                    <strong>{words(move || told.with(|w| w.newtons.clone()))}</strong>
                    <span>{words(move || told.with(|w| w.other_units.clone()))}</span>
                </dd>
            </div>
            <div><dt>"Tightest"</dt><dd id="sum-tightest">{tightest}</dd></div>
            {while_so(move || !frame.read().short.is_empty(), frame_item)}
            </dl>
            <p class="missing">{words(move || told.with(|w| w.missing.clone()))}</p>
        </section>
    }
}

/// Says what the frame bears: in a few words, and in full.
pub fn tell_frame(store: Store) {
    let borne = untrack(|| frame::now(store));
    store.frame.set(bearing_words::verdict(&borne.bearing));
}
