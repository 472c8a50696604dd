//! What matters how much, in a few words.

use leptos::prelude::*;

use super::desk::Desk;
use crate::app::widgets::fields::Choice;
use crate::design::document::WeightsSpec;
use crate::design::edit::TargetsPart;

/// A weight: its words, what it is, and how it is changed.
type WeightRow = (&'static str, fn(&WeightsSpec) -> f64, fn(&mut WeightsSpec, f64));

const WEIGHTS: [WeightRow; 6] = [
    ("Near the wanted curve", |w| w.target, |w, x| w.target = x),
    ("Even feel from string to string", |w| w.even_stiffness, |w, x| w.even_stiffness = x),
    ("Even tension from string to string", |w| w.even_tension, |w, x| w.even_tension = x),
    ("Few changes of material", |w| w.changes, |w, x| w.changes = x),
    ("Few different gauges", |w| w.items, |w, x| w.items = x),
    ("A low price", |w| w.price, |w, x| w.price = x),
];

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
    let field = |(label, of, put): &'static WeightRow| {
        let value = desk.wish(move |targets| {
            let weight = of(&targets.weights);
            let row = WORDS.iter().find(|row| weight < row.0).unwrap_or(&WORDS[3]);
            row.1.to_owned()
        });
        let set = move |key: String| {
            if let Some(row) = WORDS.iter().find(|row| row.1 == key) {
                desk.store.close_step();
                desk.change(TargetsPart::Weights, |targets| put(&mut targets.weights, row.3));
            }
        };
        view! { <Choice label=*label choices=choices.clone() value=value on_change=set/> }
            .into_any()
    };
    let fields: Vec<AnyView> = WEIGHTS.iter().map(field).collect();
    view! { <div class="form-stack">{fields}</div> }.into_any()
}
