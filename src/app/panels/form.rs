//! The fields of a design's settings, from their lists.

use leptos::prelude::*;

use super::asked::asked_in_words;
use crate::app::forms::{Entry, Group, when_empty};
use crate::app::store::Store;
use crate::app::widgets::fields::{Choice, TextField, number_field};
use crate::design::document::MechanismKind;
use crate::design::edit::{Edit, Field};
use crate::design::settings::{OneOf, Setting};
use crate::words::Words;

/// In the order of their list.
const MECHANISMS: [MechanismKind; 4] = [
    MechanismKind::None,
    MechanismKind::Lever,
    MechanismKind::SingleDisc,
    MechanismKind::DoubleDisc,
];

/// A group under its head.
pub fn group(store: Store, group: &'static Group) -> AnyView {
    fieldset(group.legend.said(), entries(store, group.entries))
}

/// Fields under a head.
pub fn fieldset(legend: &'static str, fields: Vec<AnyView>) -> AnyView {
    view! {
        <fieldset>
            <legend>{legend}</legend>
            {fields}
        </fieldset>
    }
    .into_any()
}

/// The fields of a list.
pub fn entries(store: Store, entries: &'static [Entry]) -> Vec<AnyView> {
    let field = |entry: &'static Entry| match *entry {
        Entry::Number(setting) => number(store, setting),
        Entry::Choice(choice) => self::choice(store, choice),
        Entry::Text(field, label, hint) => text(store, field, label.said(), hint.said()),
        Entry::Hint(hint) => view! { <p class="hint">{hint.said()}</p> }.into_any(),
        Entry::Asked(question) => asked_in_words(question),
    };
    entries.iter().map(field).collect()
}

/// The field of a setting.
pub fn number(store: Store, setting: Setting) -> AnyView {
    let value = Signal::derive(move || store.design.with(|design| setting.of(design)));
    let empty = setting
        .row()
        .optional
        .then(|| Signal::derive(move || store.design.with(|design| when_empty(setting, design))));
    let put = move |number| store.send(&Edit::Setting { setting, number });
    number_field(*setting.row(), value, empty, Callback::new(put))
}

fn choice(store: Store, choice: OneOf) -> AnyView {
    let value =
        Signal::derive(move || store.design.with(|design| choice.place(design).to_string()));
    let put = move |key: String| {
        if let Ok(place) = key.parse() {
            store.send(&Edit::Choice { choice, place });
        }
    };
    view! { <Choice label=choice.label().said() choices=options(choice) value=value on_change=put/> }
        .into_any()
}

/// What there is to choose from, each known by its place.
pub fn options(choice: OneOf) -> Vec<(String, String)> {
    let option = |(place, words): (usize, &Words)| (place.to_string(), (*words).into());
    choice.options().iter().enumerate().map(option).collect()
}

/// The mechanism at a place of a list, as a text.
pub fn mechanism_of(key: &str) -> Option<MechanismKind> {
    MECHANISMS.into_iter().find(|kind| mechanism_key(*kind) == key)
}

/// The place of a mechanism in a list, as a text.
pub fn mechanism_key(kind: MechanismKind) -> String {
    MECHANISMS.iter().position(|one| *one == kind).unwrap_or_default().to_string()
}

fn text(store: Store, field: Field, label: &'static str, hint: &'static str) -> AnyView {
    let value = Signal::derive(move || store.design.with(|design| field.of(design).clone()));
    let put = move |text| store.send(&Edit::Text { field, text });
    view! { <TextField label=label value=value on_input=put hint=hint/> }.into_any()
}
