//! What matters how much, in a few words.

use leptos::prelude::*;

use super::desk::Desk;
use crate::app::forms::WEIGHTS;
use crate::app::widgets::fields::Choice;
use crate::design::document::WeightsSpec;
use crate::design::edit::Edit;
use crate::design::settings::Setting;

/// Below which weight a word stands for it, the word, and the weight that it gives.
const WORDS: [(f64, &str, &str, f64); 4] = [
    (0.3, "none", "Does not matter", 0.0),
    (1.8, "little", "Matters a little", 1.0),
    (6.0, "some", "Matters", WeightsSpec::SOME),
    (f64::INFINITY, "much", "Matters much", WeightsSpec::MUCH),
];

/// The weights.
pub fn weights(desk: Desk) -> AnyView {
    let choices: Vec<(String, String)> =
        WORDS.iter().map(|row| (row.1.to_owned(), row.2.to_owned())).collect();
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
        let label = setting.row().label;
        view! { <Choice label=label choices=choices.clone() value=value on_change=set/> }.into_any()
    };
    let fields: Vec<AnyView> = WEIGHTS.iter().map(field).collect();
    view! { <div class="form-stack">{fields}</div> }.into_any()
}
