//! A new harp: its kind, its compass and its strings, and beside them what will be made.

use leptos::prelude::*;

use super::preview::Preview;
use super::replace;
use crate::app::panels::form::{mechanism_key, mechanism_of, options};
use crate::app::rows::{Typed, begun, count_of, ends_of, free_title, kind_of, wished};
use crate::app::shelf;
use crate::app::store::{NewHarp, Store, View};
use crate::app::widgets::button::button;
use crate::app::widgets::fields::{Choice, TextField};
use crate::app::widgets::list::{list, part, while_so};
use crate::design::document::Design;
use crate::design::presets::{KINDS, Kind, OPEN_TUNINGS};
use crate::design::settings::OneOf;
use crate::words::{Words, new_harp as say};

/// What the window begins with.
const USUAL_COUNT: &str = "34";

/// The fields and what will be made.
#[component]
pub fn OwnHarp(store: Store) -> impl IntoView {
    let new = store.new_harp;
    if new.instrument.with_untracked(String::is_empty) {
        afresh(new);
    }
    let typed = move || Typed {
        instrument: new.instrument.get(),
        material: new.material.get(),
        count: new.count.get(),
        low: new.low.get(),
        high: new.high.get(),
        tuning: new.tuning.get(),
        mechanism: mechanism_of(&new.mechanism.read()).unwrap_or_default(),
        wound_from: new.wound_from.get(),
    };
    let units = store.design.with_untracked(|design| design.units);
    let wish = Memo::new(move |_| wished(&typed(), units));
    let made = Memo::new(move |_| wish.get().and_then(|wish| begun(&wish)));
    let begin = move |mut design: Design| {
        let goes = store.untouched();
        let stay = shelf::all().into_iter().filter(|kept| goes.as_ref() != Some(&kept.id));
        let taken: Vec<String> = stay.map(|kept| kept.title).collect();
        design.title = free_title(&design.title, &taken);
        if replace(store, &|| store.begin(design.clone())) {
            store.note_begun();
            new.instrument.set(String::new());
            store.view.set(View::Chart);
            store.window.set(None);
        }
    };
    // What is wrong stands beside the fields already.
    let start = move || {
        if let Ok(made) = made.get_untracked() {
            begin(made.design);
        }
    };
    let notes_only = move || {
        if let Some(design) = wish.get_untracked().ok().and_then(|wish| wish.bare().ok()) {
            begin(design);
        }
    };
    let kind = move || kind_of(&new.instrument.read(), &new.material.read());
    let material = move || {
        let instrument = new.instrument.get();
        let of = KINDS.iter().filter(|kind| kind.instrument.english() == instrument);
        let choices: Vec<_> = of.map(|kind| choice(kind.material)).collect();
        let put = move |material: String| new.material.set(material);
        let make = move || {
            view! { <Choice label=say::MATERIAL.said() choices=choices value=new.material on_change=put/> }
                .into_any()
        };
        vec![part(&instrument, make)]
    };
    let winding = move || {
        let put = move |text: String| new.wound_from.set(text);
        view! {
            <TextField label=say::WINDING.said() value=new.wound_from on_input=put hint=say::WINDING_USUAL.said()/>
            <p class="hint">{say::WINDING_HINT.said()}</p>
        }
        .into_any()
    };
    let tunings = OPEN_TUNINGS
        .iter()
        .enumerate()
        .map(|(place, open)| (place.to_string(), open.name.into()))
        .collect();
    let end = move |text: String, low: bool| {
        if low { new.low } else { new.high }.set(text);
        if let Some(count) = count_of(&new.low.read_untracked(), &new.high.read_untracked()) {
            new.count.set(count);
        }
    };
    let count = move |text: String| {
        new.count.set(text);
        follow_count(new);
    };
    view! {
        <div class="new-harp">
            <fieldset>
                <legend>{say::WANTED.said()}</legend>
                <Choice label=say::KIND.said() choices=instruments() value=new.instrument on_change=move |words: String| take_kind(new, &words)/>
                {list(material)}
                <TextField label=say::COUNT.said() value=new.count on_input=count/>
                <div class="two-fields">
                    <TextField label=say::LOWEST.said() value=new.low on_input=move |text| end(text, true)/>
                    <TextField label=say::HIGHEST.said() value=new.high on_input=move |text| end(text, false)/>
                </div>
                <p class="hint">{say::ENDS_FOLLOW.said()}</p>
                {while_so(move || kind().has_wound(), winding)}
                <div class="two-fields">
                    <Choice label=say::EACH_HAS.said() choices=options(OneOf::Mechanism) value=new.mechanism on_change=move |key| new.mechanism.set(key)/>
                    <Choice label=say::OPEN_TO.said() choices=tunings value=new.tuning on_change=move |key| new.tuning.set(key)/>
                </div>
                <p class="window-actions">
                    {button("tool main", "start-harp", "", say::START.said(), start)}
                    {button("tool", "start-notes", say::START_NOTES_HINT.said(), say::START_NOTES.said(), notes_only)}
                    {button("quiet", "", "", say::CLEAR.said(), move || afresh(new))}
                </p>
            </fieldset>
            <Preview store=store made=made/>
        </div>
    }
}

/// A choice that goes by its English words in every language.
fn choice(words: Words) -> (String, String) {
    (words.english().to_owned(), words.into())
}

/// Each instrument once.
fn instruments() -> Vec<(String, String)> {
    let mut all: Vec<(String, String)> = KINDS.iter().map(|kind| choice(kind.instrument)).collect();
    all.dedup();
    all
}

/// The fields as they are at first.
fn afresh(new: NewHarp) {
    new.count.set(USUAL_COUNT.to_owned());
    new.wound_from.set(String::new());
    take_kind(new, KINDS[0].instrument.english());
}

/// Takes an instrument, with its first material and what is usual for it. As many strings as there were, or as near
/// to that as it has.
fn take_kind(new: NewHarp, instrument: &str) {
    let kind: &Kind = kind_of(instrument, "");
    let wanted: usize = new.count.read_untracked().trim().parse().unwrap_or(kind.fewest);
    new.instrument.set(kind.instrument.english().to_owned());
    new.material.set(kind.material.english().to_owned());
    new.tuning.set(kind.tuning.to_string());
    new.mechanism.set(mechanism_key(kind.mechanism));
    new.count.set(wanted.clamp(kind.fewest, kind.most()).to_string());
    follow_count(new);
}

/// The ends follow the number of strings, where the kind has so many.
fn follow_count(new: NewHarp) {
    let kind = kind_of(&new.instrument.read_untracked(), &new.material.read_untracked());
    if let Some((low, high)) = ends_of(kind, &new.count.read_untracked()) {
        new.low.set(low);
        new.high.set(high);
    }
}
