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

/// The ways to begin: what each is known by, and its words.
const WAYS: [(&str, &str); 3] = [
    ("own", "A new harp"),
    ("measured", "From measurements, to restring a harp"),
    ("sample", "From a sample"),
];

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
                    {words}
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
        <Window title="New harp" wide=true on_close=move || store.window.set(None)>
            <fieldset class="kind" id="ways">
                <legend>"How to begin"</legend>
                {choices}
            </fieldset>
            {list(shown)}
            <p class="caution">{advice::caution()}</p>
            <p class="window-actions">
                {button("tool", "", "", "Begin with an empty chart", empty)}
                <span class="hint">"What is open now stays under Designs, if you changed it."</span>
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
                    <button type="button" class="link" on:click=move |_| open(sample)>{sample.title}</button>
                    <p>{sample.blurb}</p>
                </li>
            }
        })
        .collect_view();
    view! {
        <fieldset>
            <legend>"From a sample"</legend>
            <ul class="samples">{samples}</ul>
        </fieldset>
    }
}

/// Opens another design and tells if that did not work.
pub(super) fn replace(store: Store, open: &dyn Fn() -> Outcome) -> bool {
    store.tell(store.in_its_place(open), "")
}
