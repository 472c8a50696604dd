//! Weighing, breaking, stretching: readings go in, and a figure with its source goes to its row.

use leptos::prelude::*;

use super::desk::Desk;
use super::naming::own_undo;
use crate::app::rows::sentence;
use crate::app::store::Store;
use crate::app::widgets::fields::TextField;
use crate::design::material_facts::{Property, inside};
use crate::design::trial::{Outcome, Trial};
use crate::words::{Words, materials as say};

/// What may be done with the outcome of a test.
pub(super) struct Use {
    /// The words of its button.
    pub(super) words: String,
    /// Takes the outcome.
    pub(super) take: Callback<Outcome>,
}

/// What may be done with the outcome of a test for the material in the form.
pub(super) fn uses(desk: Desk, trial: Trial) -> Vec<Use> {
    let take = move |property: Property| {
        Callback::new(move |outcome: Outcome| {
            desk.take(property, &outcome.text, &outcome.source);
            // How far it may be off belongs to it.
            if let (Property::Density, Some(percent)) = (property, &outcome.off_percent) {
                desk.take(Property::DensitySpread, percent, &outcome.source);
            }
        })
    };
    let of = |property: &Property| Use {
        words: say::use_as(&inside(property.label())),
        take: take(*property),
    };
    trial.gives().iter().map(of).collect()
}

/// The form of a test.
pub(super) fn trial_form(store: Store, trial: Trial, uses: Vec<Use>) -> AnyView {
    let asked = trial.asked();
    let usual = |(label, example): &(Words, &str)| {
        if label.said().starts_with('±') { (*example).to_owned() } else { String::new() }
    };
    let readings = RwSignal::new(asked.iter().map(usual).collect::<Vec<_>>());
    let outcome = Memo::new(move |_| {
        let units = store.design.with(|design| design.units);
        readings.with(|texts| {
            let given =
                asked.iter().zip(texts).filter(|(asked, _)| !asked.0.said().starts_with('±'));
            let begun = given.into_iter().any(|(_, text)| !text.trim().is_empty());
            begun.then(|| trial.outcome(texts, &units))
        })
    });
    let units = store.design.with_untracked(|design| design.units);
    let fields = asked.iter().enumerate().map(|(place, (_, example))| {
        let value = Signal::derive(move || readings.with(|texts| texts[place].clone()));
        let on_input = move |text| readings.update(|texts| texts[place] = text);
        let label = trial.label(place, &units);
        view! { <TextField label=label value=value on_input=on_input hint=*example/> }
    });
    let fields = fields.collect_view();
    let uses = uses.into_iter().map(|Use { words, take }| {
        let take = move |_| {
            if let Some(Ok(outcome)) = outcome.get_untracked() {
                take.run(outcome);
            }
        };
        let off = move || outcome.with(|outcome| !matches!(outcome, Some(Ok(_))));
        view! { <button type="button" class="tool" disabled=off on:click=take>{words}</button> }
    });
    let uses = uses.collect_view();
    let words = move || match outcome.get() {
        None => String::new(),
        Some(Ok(outcome)) => sentence(&outcome.words),
        Some(Err(error)) => sentence(&error.to_string()),
    };
    view! {
        <details class="trial">
            <summary>{trial.title().said()}</summary>
            <fieldset aria-label=trial.title().said() on:keydown=own_undo>
                <p class="caution">{trial.advice().said()}</p>
                <div class="trial-fields">{fields}</div>
                <p role="status" class:wrong=move || outcome.with(|o| matches!(o, Some(Err(_))))>{words}</p>
                <p class="window-actions">{uses}</p>
            </fieldset>
        </details>
    }
    .into_any()
}
