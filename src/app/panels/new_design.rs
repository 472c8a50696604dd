//! How a harp begins: a new one, one from measurements, or a sample. One way is shown at a time.

mod measured;
mod own;
mod preview;

use leptos::prelude::*;

use self::measured::FromMeasurements;
pub use self::measured::MissingWindow;
use self::own::OwnHarp;
use crate::app::store::{Origin, Outcome, Store};
use crate::app::widgets::button::button;
use crate::app::widgets::list::{list, part};
use crate::app::widgets::window::Window;
use crate::design::advice;
use crate::design::document::Design;
use crate::design::presets::{SAMPLES, Sample};
use crate::words::{Words, new_harp as say};

/// The ways to begin: what each is known by, and its words.
const WAYS: [(&str, Words); 3] =
    [("own", say::OWN), ("measured", say::MEASURED), ("sample", say::SAMPLE)];

/// The panel.
#[component]
pub fn NewWindow(store: Store) -> impl IntoView {
    let way = store.new_harp.way;
    let empty = move || {
        if replace(store, &|| store.begin(Design::default())) {
            store.note_begun();
            store.window.set(None);
        }
    };
    let choices = WAYS
        .map(|(key, words)| {
            view! {
                <label>
                    <input
                        type="radio"
                        name="way"
                        value=key
                        prop:checked=move || way.get() == key
                        on:change=move |_| way.set(key)
                    />
                    {words.said()}
                </label>
            }
        })
        .collect_view();
    let shown = move || {
        let way = way.get();
        let make = move || match way {
            "measured" => view! { <FromMeasurements store=store/> }.into_any(),
            "sample" => view! { <FromSample store=store/> }.into_any(),
            _ => view! { <OwnHarp store=store/> }.into_any(),
        };
        vec![part(&way, make)]
    };
    view! {
        <Window title=say::TITLE.said() wide=true on_close=move || store.window.set(None)>
            <fieldset class="kind" id="ways">
                <legend>{say::HOW.said()}</legend>
                {choices}
            </fieldset>
            {list(shown)}
            <p class="caution">{advice::caution()}</p>
            <p class="window-actions">
                {button("tool", "", "", say::EMPTY.said(), empty)}
                <span class="hint">{say::STAYS.said()}</span>
            </p>
        </Window>
    }
}

#[component]
fn FromSample(store: Store) -> impl IntoView {
    let open = move |sample: &Sample| {
        if replace(store, &|| store.open(sample.design(), Origin::Sample)) {
            store.window.set(None);
        }
    };
    let samples = SAMPLES
        .iter()
        .map(|sample| {
            view! {
                <li>
                    <button type="button" class="link" on:click=move |_| open(sample)>{sample.title.said()}</button>
                    <p>{sample.blurb.said()}</p>
                </li>
            }
        })
        .collect_view();
    view! {
        <fieldset>
            <legend>{say::SAMPLE.said()}</legend>
            <ul class="samples">{samples}</ul>
        </fieldset>
    }
}

/// Opens another design and tells if that did not work.
pub(super) fn replace(store: Store, open: &dyn Fn() -> Outcome) -> bool {
    store.tell(store.in_its_place(open), "")
}
