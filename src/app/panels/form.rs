//! The fields of a design's settings, from their lists.

use leptos::prelude::*;

use crate::app::forms::{Entry, Group, when_empty};
use crate::app::store::Store;
use crate::app::widgets::fields::{Choice, TextField, number_field};
use crate::design::display;
use crate::design::document::MechanismKind;
use crate::design::edit::{Edit, Field};
use crate::design::settings::{OneOf, Setting};

/// A group under its head.
pub fn group(store: Store, group: &'static Group) -> AnyView {
    fieldset(group.legend, entries(store, group.entries))
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
        Entry::Text(field, label, hint) => text(store, field, label, hint),
        Entry::Hint(hint) => view! { <p class="hint">{hint}</p> }.into_any(),
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
    let value = Signal::derive(move || store.design.with(|design| choice.of(design).to_owned()));
    let put = move |words| store.send(&Edit::Choice { choice, words });
    view! { <Choice label=choice.label() choices=options(choice) value=value on_change=put/> }
        .into_any()
}

/// What there is to choose from, each known by its words.
pub fn options(choice: OneOf) -> Vec<(String, String)> {
    choice.options().iter().map(|words| ((*words).to_owned(), (*words).to_owned())).collect()
}

/// The mechanism that words of a list mean.
pub fn mechanism_of(words: &str) -> Option<MechanismKind> {
    let all = [
        MechanismKind::None,
        MechanismKind::Lever,
        MechanismKind::SingleDisc,
        MechanismKind::DoubleDisc,
    ];
    all.into_iter().find(|kind| display::mechanism(*kind) == words)
}

fn text(store: Store, field: Field, label: &'static str, hint: &'static str) -> AnyView {
    let value = Signal::derive(move || store.design.with(|design| field.of(design).clone()));
    let put = move |text| store.send(&Edit::Text { field, text });
    view! { <TextField label=label value=value on_input=put hint=hint/> }.into_any()
}
