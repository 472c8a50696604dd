//! What neck, pillar and soundboard are made of, and how thick they are.

use leptos::prelude::*;

use super::shape::Form;
use crate::app::store::Store;
use crate::app::widgets::button::button;
use crate::app::widgets::fields::{Choice, Limits};
use crate::app::widgets::list::{list, part, while_so, words};
use crate::app::widgets::number_table::{Column, NumberTable};
use crate::design::document::{
    GeometrySpec, MOST_SECTIONS, NeckSpec, PLYWOOD, SectionSpec, ServiceSpec,
};
use crate::design::resolve::{AT_PERCENT, BESIDE_MM, GRAIN_PERCENT, SOLID_MM};
use crate::design::wood_facts::{PLIES, choices, plies_name, wood_facts};

/// How damp the wood gets, with the words of a list.
const SERVICE: [(ServiceSpec, &str, &str); 3] = [
    (ServiceSpec::Heated, "heated", "In heated rooms"),
    (ServiceSpec::Covered, "covered", "Under a roof, not heated"),
    (ServiceSpec::Outdoors, "outdoors", "In the open"),
];

const SOLID: Limits = Limits { range: SOLID_MM, whole: false };

const SECTION: [Column; 3] = [
    Column { head: "At", unit: "%", limits: Limits { range: AT_PERCENT, whole: false } },
    Column { head: "Thick", unit: "mm", limits: SOLID },
    Column { head: "Deep", unit: "mm", limits: SOLID },
];

/// A part of the harp, its wood and, where it may be plywood, its plies.
#[derive(Clone, Copy)]
struct Part {
    label: &'static str,
    wood: fn(&mut GeometrySpec) -> &mut String,
    plies: Option<fn(&mut GeometrySpec) -> &mut u32>,
}

const NECK: Part = Part {
    label: "Wood of the neck",
    wood: |g| &mut g.neck.wood,
    plies: Some(|g| &mut g.neck.plies),
};
const PILLAR: Part =
    Part { label: "Wood of the pillar", wood: |g| &mut g.pillar.wood, plies: None };
const BOARD: Part = Part {
    label: "Wood of the soundboard",
    wood: |g| &mut g.board.wood,
    plies: Some(|g| &mut g.board.plies),
};

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
        let set = move |key: String| form.step(|geometry| *(self.wood)(geometry) = key);
        let value = Signal::derive(move || chosen.get().0);
        let is_plywood = move || self.plies.is_some() && chosen.with(|(wood, _)| wood == PLYWOOD);
        view! {
            <Choice label=self.label choices=choices(self.plies.is_some()) value=value on_change=set/>
            {while_so(is_plywood, move || self.plies(form, chosen))}
            {figures(chosen)}
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
        view! { <Choice label="Plies" choices=choices value=value on_change=set/> }.into_any()
    }
}

/// The figures of a wood, with their sources.
fn figures(chosen: Memo<(String, u32)>) -> AnyView {
    let facts = Memo::new(move |_| chosen.with(|(wood, plies)| wood_facts(wood, *plies)));
    let rows = move || {
        let row = |fact: crate::design::wood_facts::WoodFact| {
            part(&fact.clone(), move || {
                let source = (!fact.source.is_empty())
                    .then(|| view! { <span class="hint">{fact.source}</span> }.into_any());
                view! { <tr><th scope="row">{fact.what}{source}</th><td>{fact.figure}</td></tr> }
                    .into_any()
            })
        };
        facts.get().facts.into_iter().map(row).collect()
    };
    view! {
        <details class="wood-figures">
            <summary>"Its figures and their sources"</summary>
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
    let service = move |service| form.step(|geometry| geometry.service = service);
    view! {
        <div class="form-stack woods" on:focusout=move |_| store.close_step()>
            <fieldset>
                <legend>"Neck"</legend>
                {NECK.view(form)}
                {form.number("Thickness of the neck", "mm", SOLID_MM, |g| g.neck.thickness_mm, |g, x| g.neck.thickness_mm = x)}
                {form.number("Slope of the grain, rise over run", "%", GRAIN_PERCENT, |g| g.neck.grain_percent, |g, x| g.neck.grain_percent = x)}
                {sections(form)}
            </fieldset>
            <fieldset>
                <legend>"Pillar"</legend>
                {PILLAR.view(form)}
                {form.number("Seen from the side", "mm", SOLID_MM, |g| g.pillar.width_mm, |g, x| g.pillar.width_mm = x)}
                {form.number("Seen from the front", "mm", SOLID_MM, |g| g.pillar.depth_mm, |g, x| g.pillar.depth_mm = x)}
                {form.number("Push beside its middle", "mm", BESIDE_MM, |g| g.pillar.beside_mm, |g, x| g.pillar.beside_mm = x)}
            </fieldset>
            <fieldset>
                <legend>"Soundboard"</legend>
                {BOARD.view(form)}
                {form.number("Width at the lowest string", "mm", SOLID_MM, |g| g.board.bass_width_mm, |g, x| g.board.bass_width_mm = x)}
                {form.number("Width at the highest string", "mm", SOLID_MM, |g| g.board.treble_width_mm, |g, x| g.board.treble_width_mm = x)}
                {form.number("Thickness at the lowest string", "mm", SOLID_MM, |g| g.board.bass_thickness_mm, |g, x| g.board.bass_thickness_mm = x)}
                {form.number("Thickness at the highest string", "mm", SOLID_MM, |g| g.board.treble_thickness_mm, |g, x| g.board.treble_thickness_mm = x)}
            </fieldset>
            <fieldset>
                <legend>"Where it stands"</legend>
                {form.choice("The harp lives", &SERVICE, |g| g.service, service)}
                <p class="hint">"Damp wood creeps more under a load that stays."</p>
            </fieldset>
        </div>
    }
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
            form.store.hint(&format!("A neck has at most {MOST_SECTIONS} sections."));
        }
    };
    let table = NumberTable {
        id: "section",
        title: "Measured sections of the neck",
        of: "No.",
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
        <div class="window-actions">{button("tool", "add-section", "", "Add a section", add)}</div>
        <p class="hint">
            "Measured sections, from the shoulder at 0 % to the pillar at 100 %. Without any, the depth is that of the drawing and the thickness the one above."
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
