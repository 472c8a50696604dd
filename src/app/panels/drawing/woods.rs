//! What neck, pillar and soundboard are made of, and how thick they are.

use std::iter;

use leptos::prelude::*;

use super::making::{bars_form, joints_form, soundbox_form};
use super::shape::Form;
use super::timber::{layers, metal, own_woods, wood_choice};
use crate::app::forms::{self, Entry};
use crate::app::panels::form::{entries, fieldset, group};
use crate::app::store::Store;
use crate::app::widgets::button::button;
use crate::app::widgets::fields::Choice;
use crate::app::widgets::list::{list, part, while_so, words};
use crate::app::widgets::number_table::NumberTable;
use crate::design::document::{GeometrySpec, MOST_SECTIONS, NeckSpec, PLYWOOD, SectionSpec};
use crate::design::settings::{NumberRow, SECTION_AT, SECTION_DEPTH, SECTION_THICKNESS};
use crate::design::wood_facts::{PLIES, plies_name, wood_facts};
use crate::words::{Words, drawing as say};

static SECTION: [NumberRow; 3] = [SECTION_AT, SECTION_THICKNESS, SECTION_DEPTH];

/// A part of the harp, its wood and, where it may be plywood, its plies.
#[derive(Clone, Copy)]
struct Part {
    label: Words,
    wood: fn(&mut GeometrySpec) -> &mut String,
    plies: Option<fn(&mut GeometrySpec) -> &mut u32>,
}

const NECK: Part =
    Part { label: say::WOOD_NECK, wood: |g| &mut g.neck.wood, plies: Some(|g| &mut g.neck.plies) };
const PILLAR: Part = Part { label: say::WOOD_PILLAR, wood: |g| &mut g.pillar.wood, plies: None };
const BOARD: Part = Part {
    label: say::WOOD_BOARD,
    wood: |g| &mut g.board.wood,
    plies: Some(|g| &mut g.board.plies),
};
const RIB: Part = Part { label: say::WOOD_RIB, wood: |g| &mut g.board.rib_wood, plies: None };

impl Part {
    /// The wood and the plies of a shape.
    fn of(self, geometry: &GeometrySpec) -> (String, u32) {
        let mut geometry = geometry.clone();
        let wood = (self.wood)(&mut geometry).clone();
        (wood, self.plies.map_or(0, |plies| *plies(&mut geometry)))
    }

    /// Its choices, and the figures of what is chosen.
    fn view(self, form: Form) -> AnyView {
        let chosen = Memo::new(move |_| form.store.design.with(|design| self.of(&design.geometry)));
        let is_plywood = move || self.plies.is_some() && chosen.with(|(wood, _)| wood == PLYWOOD);
        view! {
            {wood_choice(form, self.label, self.plies.is_some(), self.wood)}
            {while_so(is_plywood, move || self.plies(form, chosen))}
            {figures(form, chosen)}
        }
        .into_any()
    }

    fn plies(self, form: Form, chosen: Memo<(String, u32)>) -> AnyView {
        // A number of plies that is not in the list stays choosable.
        let now = chosen.get_untracked().1;
        let other = (!PLIES.contains(&now)).then_some(now);
        let entry = |plies: u32| (plies.to_string(), plies_name(plies));
        let choices = PLIES.into_iter().chain(other).map(entry).collect();
        let set = move |key: String| {
            if let (Some(of), Ok(plies)) = (self.plies, key.parse()) {
                form.step(|geometry| *of(geometry) = plies);
            }
        };
        let value = Signal::derive(move || chosen.get().1.to_string());
        view! { <Choice label=say::PLIES.said() choices=choices value=value on_change=set/> }
            .into_any()
    }
}

/// The figures of a wood, with their sources.
fn figures(form: Form, chosen: Memo<(String, u32)>) -> AnyView {
    let own = form.of(|geometry| geometry.woods.clone());
    let facts = Memo::new(move |_| {
        own.with(|own| chosen.with(|(wood, plies)| wood_facts(wood, *plies, own)))
    });
    let rows = move || {
        let row = |fact: crate::design::wood_facts::WoodFact| {
            part(&fact.clone(), move || {
                let source = (!fact.source.is_empty())
                    .then(|| view! { <span class="hint">{fact.source}</span> }.into_any());
                view! { <tr><th scope="row">{fact.what.said()}{source}</th><td>{fact.figure}</td></tr> }
                    .into_any()
            })
        };
        facts.get().facts.into_iter().map(row).collect()
    };
    view! {
        <details class="wood-figures">
            <summary>{say::WOOD_FIGURES.said()}</summary>
            <p class="hint">{words(move || facts.get().about)}</p>
            <table class="sources"><tbody>{list(rows)}</tbody></table>
            <p class="hint">{words(move || facts.get().sources())}</p>
        </details>
    }
    .into_any()
}

/// The woods and the sizes that count for the loads.
#[component]
pub fn Woods(store: Store) -> impl IntoView {
    let form = Form { store };
    // The wood comes first, then how thick it is.
    let part = |legend: Words, wood: Part, sizes: &'static [Entry], more: Option<AnyView>| {
        let fields = iter::once(wood.view(form)).chain(entries(store, sizes)).chain(more);
        fieldset(legend.said(), fields.collect())
    };
    view! {
        <div class="form-stack woods" on:focusout=move |_| store.close_step()>
            {part(say::NECK, NECK, &forms::NECK, Some(neck_made(form)))}
            {part(say::PILLAR, PILLAR, &forms::PILLAR, None)}
            {part(say::SOUNDBOARD, BOARD, &forms::BOARD, None)}
            {part(say::STRING_RIB, RIB, &forms::RIB, None)}
            {metal(form)}
            {bars_form(form)}
            {joints_form(form)}
            {soundbox_form(form)}
            {own_woods(form)}
            {group(store, &forms::STANDS)}
            {group(store, &forms::SIZES)}
        </div>
    }
}

/// Its measured sections and its layers.
fn neck_made(form: Form) -> AnyView {
    vec![sections(form), layers(form)].into_any()
}

/// Measured sections along the neck.
fn sections(form: Form) -> AnyView {
    let row = |s: &SectionSpec| vec![s.at_percent, s.thickness_mm, s.depth_mm];
    let rows = form.of(move |geometry| geometry.neck.sections.iter().map(row).collect());
    let names = Signal::derive(move || {
        rows.with(|rows: &Vec<Vec<f64>>| {
            (1..=rows.len()).map(|section| section.to_string()).collect()
        })
    });
    let set = move |rows: Vec<Vec<f64>>| {
        let section = |row: &Vec<f64>| match row.as_slice() {
            [at_percent, thickness_mm, depth_mm] => Some(SectionSpec {
                at_percent: *at_percent,
                thickness_mm: *thickness_mm,
                depth_mm: *depth_mm,
            }),
            _ => None,
        };
        form.change(|geometry| {
            geometry.neck.sections = rows.iter().filter_map(section).collect();
        });
    };
    let add = move || {
        if form.now().neck.sections.len() < MOST_SECTIONS {
            form.step(|geometry| geometry.neck.sections.push(next_section(&geometry.neck)));
        } else {
            form.store.hint(&say::most_sections(&MOST_SECTIONS));
        }
    };
    let table = NumberTable {
        id: "section",
        title: say::SECTIONS.said(),
        of: say::NUMBER.said(),
        columns: &SECTION,
        rows,
        names,
        set: Callback::new(set),
        count: Some((0, MOST_SECTIONS)),
        here: RwSignal::new(None),
    };
    let has_some = move || rows.with(|rows| !rows.is_empty());
    view! {
        {while_so(has_some, move || table.view())}
        <div class="window-actions">{button("tool", "add-section", "", say::ADD_SECTION.said(), add)}</div>
        <p class="hint">
            {say::SECTIONS_HINT.said()}
        </p>
    }
    .into_any()
}

/// A section for the neck that has none at its place yet: at the shoulder, at the pillar, then between.
fn next_section(neck: &NeckSpec) -> SectionSpec {
    let taken = |at: f64| neck.sections.iter().any(|section| section.at_percent == at);
    let places = [0.0, 100.0, 50.0, 25.0, 75.0];
    let at_percent = places.into_iter().find(|at| !taken(*at)).unwrap_or(50.0);
    let last = neck.sections.last();
    SectionSpec {
        at_percent,
        thickness_mm: last.map_or(neck.thickness_mm, |section| section.thickness_mm),
        depth_mm: last.map_or(SectionSpec::default().depth_mm, |section| section.depth_mm),
    }
}
