//! The harp in one line: strings, compass, pull, the tightest string, the frame.

use std::time::Duration;

use leptos::leptos_dom::helpers::TimeoutHandle;
use leptos::prelude::*;

use super::chart_acts::go_to;
use crate::app::store::{Act, Part, Store};
use crate::app::widgets::list::{while_so, words};
use crate::app::{browser, frame, rows};
use crate::design::bearing_words;
use crate::words::chart_page as say;

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
    // Between a change and its answer what stands there is of before, and looks so.
    let of_before = RwSignal::new(false);
    Effect::new(move |_| {
        frame.track();
        of_before.set(false);
    });
    Effect::new(move |_| {
        store.design.track();
        of_before.set(true);
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
            <div class="frame" class:of-before=move || of_before.get()>
                <dt>{say::FRAME.said()}</dt>
                <dd id="sum-frame">
                    <button type="button" class="link" title=move || say::opens_loads(&frame.get().full) on:click=move |_| store.show_group("loads")>
                        {words(move || frame.get().short)}
                    </button>
                </dd>
            </div>
        }
        .into_any()
    };
    view! {
        <section class="summary" tabindex="0" aria-label=say::SUMMARY.said()>
            <dl>
            <div><dt>{say::STRINGS.said()}</dt><dd id="sum-strings">{words(move || told.with(|w| w.strings.clone()))}</dd></div>
            <div><dt>{say::COMPASS.said()}</dt><dd id="sum-compass">{words(move || told.with(|w| w.compass.clone()))}</dd></div>
            <div class="total">
                <dt>{say::TOTAL.said()}</dt>
                <dd id="sum-total">
                    <strong>{words(move || told.with(|w| w.newtons.clone()))}</strong>
                    <span>{words(move || told.with(|w| w.other_units.clone()))}</span>
                </dd>
            </div>
            <div><dt>{say::TIGHTEST.said()}</dt><dd id="sum-tightest">{tightest}</dd></div>
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
