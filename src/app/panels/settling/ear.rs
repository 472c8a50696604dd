//! A string weighed by ear, and its partials beside the chart's inharmonicity.

use leptos::prelude::*;

use crate::app::rows::sentence;
use crate::app::store::Store;
use crate::app::widgets::fields::TextField;
use crate::app::widgets::list::{list, part, words};
use crate::design::display;
use crate::design::settling::{BY_EAR, by_ear, chart_b, partials_told};
use crate::words::settling as say;

/// Readings go in, and what they say comes out below.
#[component]
pub fn Ear(store: Store) -> impl IntoView {
    let readings = RwSignal::new(vec![String::new(); BY_EAR.len()]);
    let fields = BY_EAR.iter().enumerate().map(|(place, (label, example))| {
        let value = Signal::derive(move || readings.with(|texts| texts[place].clone()));
        let on_input = move |text| readings.update(|texts| texts[place] = text);
        view! { <TextField label=label.said() value=value on_input=on_input hint=*example/> }
    });
    let fields = fields.collect_view();
    let weighed = move || {
        let units = store.design.with(|design| design.units);
        readings.with(|texts| by_ear(texts, &units))
    };
    let is_wrong = move || weighed().is_err();
    let weighed = move || match weighed() {
        Ok(said) => said.unwrap_or_default(),
        Err(why) => sentence(&why.to_string()),
    };
    let (row, partials) = (RwSignal::new(0_usize), RwSignal::new(String::new()));
    let compared = move || {
        let chart = chart_b(&store.resolved.read().harp, &store.analysis.read(), row.get());
        partials.with(|text| partials_told(text, chart)).unwrap_or_default()
    };
    let strings = move || {
        let option = |at: usize, name: String| {
            part(&(at, name.clone()), move || {
                view! { <option value=at.to_string()>{name}</option> }.into_any()
            })
        };
        let analysis = store.analysis.read();
        let all = analysis.strings.iter().enumerate();
        all.map(|(at, figures)| option(at, display::string_number(figures))).collect()
    };
    view! {
        <details id="settling-ear">
            <summary>{say::EAR.said()}</summary>
            <p class="hint">{say::EAR_HINT.said()}</p>
            <div class="trial-fields">{fields}</div>
            <p role="status" id="settling-weighed" class:wrong=is_wrong>{words(weighed)}</p>
            <p class="caution">{say::EAR_ERRORS.said()}</p>
            <div class="trial-fields">
                <label class="field">
                    <span>{say::PARTIALS_OF.said()}</span>
                    <select on:change=move |event| row.set(event_target_value(&event).parse().unwrap_or(0))>
                        {list(strings)}
                    </select>
                </label>
                <TextField label=say::PARTIALS.said() value=partials on_input=move |text| partials.set(text) hint="220.4; 441.0; 662.1"/>
            </div>
            <p role="status" id="settling-partials">{words(compared)}</p>
        </details>
    }
}
