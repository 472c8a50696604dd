//! The measures of the harp's shape.

mod drives;
mod spacing;

use leptos::prelude::*;

use self::drives::Drives;
use self::spacing::Spacing;
use crate::app::store::{Outcome, Store};
use crate::app::widgets::fields::{Choice, NumberField};
use crate::app::widgets::list::{list, part};
use crate::design::document::GeometrySpec;
use crate::design::edit::Edit;
use crate::design::resolve::{MEASURE_MM, SIDEWAYS_MM, START_MM};
use crate::engine::geometry::{BOARD_ANGLE_DEG, LEAN_DEG};

/// The fields that change the shape of the harp.
#[derive(Clone, Copy)]
pub(super) struct Form {
    pub(super) store: Store,
}

impl Form {
    /// Something of the shape, as it changes.
    pub(super) fn of<T: Send + Sync + Clone + 'static>(
        self,
        take: impl Fn(&GeometrySpec) -> T + Send + Sync + 'static,
    ) -> Signal<T> {
        Signal::derive(move || self.store.design.with(|design| take(&design.geometry)))
    }

    /// The shape now, for what does not follow it.
    pub(super) fn now(self) -> GeometrySpec {
        self.store.design.with_untracked(|design| design.geometry.clone())
    }

    /// Changes the shape; a run of changes in one field is one step.
    pub(super) fn change(self, change: impl FnOnce(&mut GeometrySpec)) {
        let mut geometry = self.now();
        change(&mut geometry);
        self.store.send(&Edit::Geometry(Box::new(geometry)));
    }

    /// Changes the shape in a step of its own.
    pub(super) fn step(self, change: impl FnOnce(&mut GeometrySpec)) {
        let outcome = self.try_step(change);
        self.store.tell(outcome, "");
    }

    /// Changes the shape in a step of its own.
    ///
    /// # Errors
    ///
    /// When the design cannot have that shape.
    pub(super) fn try_step(self, change: impl FnOnce(&mut GeometrySpec)) -> Outcome {
        let mut geometry = self.now();
        change(&mut geometry);
        self.store.close_step();
        let outcome = self.store.change(&Edit::Geometry(Box::new(geometry)));
        self.store.close_step();
        outcome
    }

    /// A field of a number.
    pub(super) fn number(
        self,
        label: &'static str,
        unit: &'static str,
        range: (f64, f64),
        of: fn(&GeometrySpec) -> f64,
        put: fn(&mut GeometrySpec, f64),
    ) -> AnyView {
        let on_change = move |number| self.change(|geometry| put(geometry, number));
        view! {
            <NumberField label=label unit=unit value=self.of(of) least=range.0 most=range.1 on_change=on_change/>
        }
        .into_any()
    }

    /// A choice among some values, each with its key and its words.
    pub(super) fn choice<T: PartialEq + Copy + Send + Sync + 'static>(
        self,
        label: &'static str,
        rows: &'static [(T, &'static str, &'static str)],
        of: fn(&GeometrySpec) -> T,
        put: impl Fn(T) + Send + Sync + 'static,
    ) -> AnyView {
        let key = move |geometry: &GeometrySpec| {
            let now = of(geometry);
            let row = rows.iter().find(|row| row.0 == now);
            row.map_or(String::new(), |row| row.1.to_owned())
        };
        let on_change = move |key: String| {
            if let Some(row) = rows.iter().find(|row| row.1 == key) {
                put(row.0);
            }
        };
        let choices = rows.iter().map(|row| (row.1.to_owned(), row.2.to_owned())).collect();
        view! { <Choice label=label choices=choices value=self.of(key) on_change=on_change/> }
            .into_any()
    }
}

/// The shape: how the strings stand, their spacing, what drives, and the measures around them.
#[component]
pub fn Shape(store: Store) -> impl IntoView {
    let form = Form { store };
    let errors = move || {
        let error = |error: String| {
            part(&error.clone(), move || view! { <p class="wrong">{error}</p> }.into_any())
        };
        store.resolved.with(|resolved| resolved.errors.iter().cloned().map(error).collect())
    };
    view! {
        <div class="form-stack shape" on:focusout=move |_| store.close_step()>
            <div role="status">{list(errors)}</div>
            <fieldset>
                <legend>"Strings"</legend>
                {form.number("Between strings and board", "degrees", BOARD_ANGLE_DEG, |g| g.board_angle_deg, |g, x| g.board_angle_deg = x)}
                {form.number("Lean from upright", "degrees", LEAN_DEG, |g| g.lean_deg, |g, x| g.lean_deg = x)}
                {form.number("Bar above the board", "mm", START_MM, |g| g.start_mm, |g, x| g.start_mm = x)}
                {form.number("Tuning pin beside its string", "mm", SIDEWAYS_MM, |g| g.pin_sideways_mm, |g, x| g.pin_sideways_mm = x)}
                {form.number("Strings from the middle of the neck", "mm", MEASURE_MM, |g| g.strings_from_neck_mm, |g, x| g.strings_from_neck_mm = x)}
            </fieldset>
            <Spacing form=form/>
            <Drives form=form/>
            <fieldset>
                <legend>"Neck, pillar and board"</legend>
                {form.number("Neck below pins or levers", "mm", MEASURE_MM, |g| g.neck.below_pins_mm, |g, x| g.neck.below_pins_mm = x)}
                {form.number("Neck above tuning pins", "mm", MEASURE_MM, |g| g.neck.above_pins_mm, |g, x| g.neck.above_pins_mm = x)}
                {form.number("Lowest string to pillar", "mm", MEASURE_MM, |g| g.pillar.gap_mm, |g, x| g.pillar.gap_mm = x)}
                {form.number("Board below the lowest string", "mm", MEASURE_MM, |g| g.board.below_mm, |g, x| g.board.below_mm = x)}
                {form.number("Board above the highest string", "mm", MEASURE_MM, |g| g.board.above_mm, |g, x| g.board.above_mm = x)}
                <p class="hint">"Common practice, from memory. Measure your own. How thick and wide each part is stands under Woods."</p>
            </fieldset>
        </div>
    }
}
