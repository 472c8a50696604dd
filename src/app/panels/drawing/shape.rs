//! The measures of the harp's shape.

mod drives;
mod spacing;

use leptos::prelude::*;

use self::drives::Drives;
use self::spacing::Spacing;
use crate::app::forms::{AROUND, STRINGS};
use crate::app::panels::form::group;
use crate::app::store::{Outcome, Store};
use crate::app::widgets::fields::Choice;
use crate::app::widgets::list::{list, part};
use crate::design::document::GeometrySpec;
use crate::design::edit::Edit;
use crate::words::Words;

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

    /// A choice among some values, each with its key and its words.
    pub(super) fn choice<T: PartialEq + Copy + Send + Sync + 'static>(
        self,
        label: Words,
        rows: &'static [(T, &'static str, Words)],
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
        let choices = rows.iter().map(|row| (row.1.to_owned(), row.2.into())).collect();
        view! { <Choice label=label.said() choices=choices value=self.of(key) on_change=on_change/> }
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
            {group(store, &STRINGS)}
            <Spacing form=form/>
            <Drives form=form/>
            {group(store, &AROUND)}
        </div>
    }
}
