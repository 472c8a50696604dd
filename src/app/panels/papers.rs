//! What is open on the page as a paper: the design report in its window, and a paper of the present view when the
//! browser is asked to print.

use leptos::prelude::*;

use super::card::{NOT_PRINTED, PRINT_ROOT, usual_paper};
use super::order;
use crate::app::store::{Store, View};
use crate::app::{browser, clock, earlier, rows};
use crate::design::compare::compare;
use crate::design::document::{Design, VersionSpec};
use crate::papers::html::html;
use crate::papers::report::{self, Compared, Given};
use crate::papers::sheet::{Paper, Sheet};

fn today() -> String {
    let (day, month, year) = clock::today();
    rows::day_words(day, month, year)
}

/// The design report of the design that is open. Follows it.
pub fn report_sheet(store: Store, paper: Paper) -> Sheet {
    with_given(store, |given| report::report(given, paper))
}

/// Puts the present view on paper, for the browser to print.
pub fn lay(store: Store) {
    earlier::note(store, "print");
    let sheet = untrack(|| of_view(store, usual_paper()));
    browser::fill(PRINT_ROOT, &html(&sheet), "");
}

/// Prints the present view.
pub fn print(store: Store) {
    if browser::print().is_none() {
        store.complain(NOT_PRINTED);
    }
}

fn with_given(store: Store, make: impl FnOnce(&Given<'_>) -> Sheet) -> Sheet {
    let (design, resolved) = (store.design.get(), store.resolved.get());
    let (analysis, today) = (store.analysis.get(), today());
    let given = Given { design: &design, resolved: &resolved, analysis: &analysis, today: &today };
    make(&given)
}

fn of_view(store: Store, paper: Paper) -> Sheet {
    let view = store.view.get();
    if view == View::Order {
        return order::sheet(store, paper);
    }
    let curves = store.curves.get();
    with_given(store, |given| match view {
        View::Drawing => report::drawing(given, store.paper.over.get(), paper),
        View::Versions if !given.design.versions.is_empty() => {
            let sides = store.compared.get();
            let [before, after] = [sides.0, sides.1].map(|side| version(given.design, side));
            let found = compare(before.1, after.1);
            // Curves are drawn of the design as it is now.
            let curves = sides.1.is_none().then_some(&*curves);
            let compared = Compared { names: [&before.0, &after.0], found: &found, curves };
            report::comparison(given, &compared, paper)
        }
        _ => report::chart(given, &curves, paper),
    })
}

/// A version with its name; the design as it is now where there is no such version.
fn version(design: &Design, side: Option<usize>) -> (String, &Design) {
    match side.and_then(|index| design.versions.get(index)) {
        Some(VersionSpec { name, design, .. }) => (name.clone(), design),
        None => ("the design as it is now".to_owned(), design),
    }
}
