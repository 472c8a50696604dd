//! The measures of the harp's shape.

use leptos::prelude::*;

use crate::app::store::Store;
use crate::app::widgets::fields::{Choice, NumberField};
use crate::app::widgets::list::{either, list, part};
use crate::design::document::{GapsSpec, GeometrySpec, MeasuredSpec};
use crate::design::edit::Edit;
use crate::design::resolve::{GAP_MM, MEASURE_MM, SIDEWAYS_MM, SOLID_MM, START_MM};
use crate::engine::geometry::{BOARD_ANGLE_DEG, LEAN_DEG};

/// How the spacing may be measured, with the words of a list.
const MEASURED: [(MeasuredSpec, &str, &str); 2] = [
    (MeasuredSpec::Square, "square", "Square to the strings"),
    (MeasuredSpec::AlongBoard, "board", "Along the board"),
];

/// The measures that matter most. What is not shown stays as it is.
#[component]
pub fn Shape(store: Store) -> impl IntoView {
    let send = move |change: &dyn Fn(&mut GeometrySpec)| {
        let mut geometry = store.design.with_untracked(|design| design.geometry.clone());
        change(&mut geometry);
        store.send(&Edit::Geometry(Box::new(geometry)));
    };
    let field = move |label: &'static str,
                      unit: &'static str,
                      range: (f64, f64),
                      of: fn(&GeometrySpec) -> f64,
                      put: fn(&mut GeometrySpec, f64)| {
        let value = Signal::derive(move || store.design.with(|design| of(&design.geometry)));
        let on_change = move |number| send(&|geometry| put(geometry, number));
        view! { <NumberField label=label unit=unit value=value least=range.0 most=range.1 on_change=on_change/> }
            .into_any()
    };
    let is_uniform = move || {
        store.design.with(|design| matches!(design.geometry.spacing.gaps, GapsSpec::UniformMm(_)))
    };
    let spacing = move || {
        let of = |g: &GeometrySpec| match g.spacing.gaps {
            GapsSpec::UniformMm(mm) => mm,
            _ => 0.0,
        };
        let put = |g: &mut GeometrySpec, mm: f64| g.spacing.gaps = GapsSpec::UniformMm(mm);
        field("From string to string", "mm", GAP_MM, of, put)
    };
    let varied = || {
        view! { <p class="hint">"The spacing of this design differs from string to string, and stays so."</p> }
            .into_any()
    };
    let measured = Signal::derive(move || {
        let now = store.design.with(|design| design.geometry.spacing.measured);
        let row = MEASURED.iter().find(|row| row.0 == now);
        row.map_or("square", |row| row.1).to_owned()
    });
    let set_measured = move |key: String| {
        if let Some(row) = MEASURED.iter().find(|row| row.1 == key) {
            send(&|geometry| geometry.spacing.measured = row.0);
        }
    };
    let choices = MEASURED.map(|row| (row.1.to_owned(), row.2.to_owned())).to_vec();
    let errors = move || {
        let error = |error: String| {
            part(&error.clone(), move || view! { <p class="wrong">{error}</p> }.into_any())
        };
        store.resolved.with(|resolved| resolved.errors.iter().cloned().map(error).collect())
    };
    view! {
        <div class="form-stack">
            <div role="status">{list(errors)}</div>
            <fieldset>
                <legend>"Strings"</legend>
                {field("Between strings and board", "degrees", BOARD_ANGLE_DEG, |g| g.board_angle_deg, |g, x| g.board_angle_deg = x)}
                {field("Lean from upright", "degrees", LEAN_DEG, |g| g.lean_deg, |g, x| g.lean_deg = x)}
                {either(is_uniform, spacing, varied)}
                <Choice label="Measured" choices=choices value=measured on_change=set_measured/>
                {field("Bar above the board", "mm", START_MM, |g| g.start_mm, |g, x| g.start_mm = x)}
                {field("Tuning pin beside its string", "mm", SIDEWAYS_MM, |g| g.pin_sideways_mm, |g, x| g.pin_sideways_mm = x)}
            </fieldset>
            <fieldset>
                <legend>"Neck, pillar and board"</legend>
                {field("Neck below pins or levers", "mm", MEASURE_MM, |g| g.neck.below_pins_mm, |g, x| g.neck.below_pins_mm = x)}
                {field("Neck above tuning pins", "mm", MEASURE_MM, |g| g.neck.above_pins_mm, |g, x| g.neck.above_pins_mm = x)}
                {field("Lowest string to pillar", "mm", MEASURE_MM, |g| g.pillar.gap_mm, |g, x| g.pillar.gap_mm = x)}
                {field("Pillar, seen from the side", "mm", SOLID_MM, |g| g.pillar.width_mm, |g, x| g.pillar.width_mm = x)}
                {field("Board below the lowest string", "mm", MEASURE_MM, |g| g.board.below_mm, |g, x| g.board.below_mm = x)}
                {field("Board above the highest string", "mm", MEASURE_MM, |g| g.board.above_mm, |g, x| g.board.above_mm = x)}
                <p class="hint">"Common practice, from memory. Measure your own."</p>
            </fieldset>
        </div>
    }
}
