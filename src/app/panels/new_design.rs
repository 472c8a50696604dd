//! How a harp of one's own begins: from a compass, from measurements, or from a sample.

mod measured;

use leptos::prelude::*;

use self::measured::FromMeasurements;
pub use self::measured::MissingWindow;
use super::form::{mechanism_of, options};
use crate::app::store::{Origin, Store};
use crate::app::widgets::button::button;
use crate::app::widgets::fields::{Choice, TextField};
use crate::app::widgets::list::words;
use crate::app::widgets::window::Window;
use crate::design::display;
use crate::design::document::{Design, MechanismKind, MechanismSpec};
use crate::design::presets::{
    OPEN_TUNINGS, OpenTuning, SAMPLES, Sample, by_compass, suggest, usual_mechanism, without_discs,
};
use crate::design::settings::OneOf;
use crate::engine::pitch::Note;

/// The panel.
#[component]
pub fn NewWindow(store: Store) -> impl IntoView {
    let begin = Callback::new(move |design: Design| {
        if store.tell(store.begin(design), "") {
            store.window.set(None);
        }
    });
    let empty = move || begin.run(Design::default());
    view! {
        <Window title="New harp" wide=true on_close=move || store.window.set(None)>
            <div class="form-columns">
                <FromCompass begin=begin/>
                <FromMeasurements store=store/>
                <FromSample store=store/>
            </div>
            <p class="window-actions">
                {button("tool", "", "", "Begin with an empty chart", empty)}
                <span class="hint">"What is open now stays under Designs, if you changed it."</span>
            </p>
        </Window>
    }
}

#[component]
fn FromCompass(begin: Callback<Design>) -> impl IntoView {
    let low = RwSignal::new("C2".to_owned());
    let high = RwSignal::new("C7".to_owned());
    let tuning = RwSignal::new("0".to_owned());
    let with_strings = RwSignal::new(true);
    let wrong = RwSignal::new(None::<String>);
    let note = |text: &str| text.parse::<Note>().map_err(|error| error.to_string());
    let open = move || -> &'static OpenTuning {
        let place: usize = tuning.with(|key| key.parse().unwrap_or(0));
        OPEN_TUNINGS.get(place).unwrap_or(&OPEN_TUNINGS[0])
    };
    // What is usual for the compass, until another one is chosen.
    let chosen = RwSignal::new(None::<MechanismKind>);
    let kind = Memo::new(move |_| {
        let ends = low.with(|t| note(t)).ok().zip(high.with(|t| note(t)).ok());
        let usual = ends.map(|(low, high)| usual_mechanism(low, high, open()));
        chosen.get().or(usual).unwrap_or(MechanismKind::Lever)
    });
    let make = move || -> Result<Design, String> {
        let open = untrack(open);
        let (low, high) = (low.with_untracked(|t| note(t))?, high.with_untracked(|t| note(t))?);
        let strings =
            by_compass(low, high, |letter| open.sign(letter)).map_err(|e| e.to_string())?;
        let kind = kind.get_untracked();
        let mechanism = MechanismSpec { kind, ..MechanismSpec::default() };
        let bare = without_discs(strings.len(), kind);
        let mut design =
            Design { strings, mechanism, open_tuning: open.name.to_owned(), ..Design::default() };
        for string in design.strings.iter_mut().rev().take(bare) {
            string.mechanism = Some(MechanismKind::None);
        }
        Ok(if with_strings.get_untracked() {
            Design { strings: suggest(&design), ..design }
        } else {
            design
        })
    };
    let start = move || match make() {
        Ok(design) => begin.run(design),
        Err(why) => wrong.set(Some(format!("Not started: {why}."))),
    };
    let tunings = OPEN_TUNINGS
        .iter()
        .enumerate()
        .map(|(place, open)| (place.to_string(), open.name.to_owned()))
        .collect();
    view! {
        <fieldset>
            <legend>"From a compass"</legend>
            <TextField label="Lowest string" value=low on_input=move |text| low.set(text) hint="C2"/>
            <TextField label="Highest string" value=high on_input=move |text| high.set(text) hint="C7"/>
            <Choice label="Open strings tuned to" choices=tunings value=tuning on_change=move |key| tuning.set(key)/>
            <Choice
                label="Each string has"
                choices=options(OneOf::Mechanism)
                value=Signal::derive(move || display::mechanism(kind.get()).to_owned())
                on_change=move |words: String| chosen.set(mechanism_of(&words))
            />
            <p class="hint">"Lever harps have levers, pedal harps two discs but for the two lowest strings, wire-strung harps none. Common practice, no source."</p>
            <label>
                <input
                    type="checkbox"
                    prop:checked=move || with_strings.get()
                    on:change=move |_| with_strings.update(|on| *on = !*on)
                />
                " Suggest lengths and strings to start from"
            </label>
            <p class="wrong" role="alert">{words(move || wrong.get().unwrap_or_default())}</p>
            <p>{button("tool main", "start-compass", "", "Start", start)}</p>
        </fieldset>
    }
}

#[component]
fn FromSample(store: Store) -> impl IntoView {
    let open = move |sample: &Sample| {
        if store.tell(store.open(sample.design(), Origin::Sample), "") {
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
