//! What matters how much, in a few words.

use leptos::prelude::*;

use super::desk::Desk;
use crate::app::asked::Question;
use crate::app::forms::WEIGHTS;
use crate::app::panels::asked::asked_in_words;
use crate::app::widgets::fields::Choice;
use crate::design::document::WeightsSpec;
use crate::design::edit::Edit;
use crate::design::settings::Setting;
use crate::words::{Words, choose_page as say};

/// Below which weight a word stands for it, the word, and the weight that it gives.
const WORDS: [(f64, &str, Words, f64); 4] = [
    (0.3, "none", say::WEIGHT_NONE, 0.0),
    (1.8, "little", say::WEIGHT_LITTLE, 1.0),
    (6.0, "some", say::WEIGHT_SOME, WeightsSpec::SOME),
    (f64::INFINITY, "much", say::WEIGHT_MUCH, WeightsSpec::MUCH),
];

/// The weights.
pub fn weights(desk: Desk) -> AnyView {
    let choices: Vec<(String, String)> =
        WORDS.iter().map(|row| (row.1.to_owned(), row.2.into())).collect();
    let store = desk.store;
    let field = |setting: &'static Setting| {
        let value = Signal::derive(move || {
            let weight = store.design.with(|design| setting.number(design));
            let row = WORDS.iter().find(|row| weight < row.0).unwrap_or(&WORDS[3]);
            row.1.to_owned()
        });
        let set = move |key: String| {
            if let Some(row) = WORDS.iter().find(|row| row.1 == key) {
                store.close_step();
                store.send(&Edit::Setting { setting: *setting, number: Some(row.3) });
            }
        };
        let label = setting.row().label.said();
        view! { <Choice label=label choices=choices.clone() value=value on_change=set/> }.into_any()
    };
    let fields: Vec<AnyView> = WEIGHTS.iter().map(field).collect();
    view! { <div class="form-stack">{asked_in_words(Question::Weights)}{fields}</div> }.into_any()
}
