//! What is open on the page as a paper: the design report in its window, and a paper of the present view when the
//! browser is asked to print.

use leptos::prelude::*;

use super::card::{PRINT_ROOT, usual_paper};
use super::order;
use crate::app::store::{Act, Store, View};
use crate::app::{browser, clock, earlier, frame, rows};
use crate::design::compare::compare;
use crate::design::document::{Design, VersionSpec};
use crate::design::resolve::resolve;
use crate::engine::analysis::analyse;
use crate::papers::html::html;
use crate::papers::report::{self, Compared, Given};
use crate::papers::sheet::{Paper, Sheet};
use crate::papers::tuning;
use crate::words::papers as say;

fn today() -> String {
    let (day, month, year) = clock::today();
    rows::day_words(day, month, year)
}

/// The design report of the design that is open. Follows it. `anew` where it speaks another language than the page,
/// whose words stand in what the page keeps.
pub fn report_sheet(store: Store, paper: Paper, anew: bool) -> Sheet {
    if !anew {
        return with_given(store, true, |given| report::report(given, paper));
    }
    let design = store.design.get();
    let resolved = resolve(&design);
    let analysis = analyse(&resolved.harp);
    let given = Given {
        design: &design,
        resolved: &resolved,
        analysis: &analysis,
        borne: None,
        today: &today(),
    };
    report::report(&given, paper)
}

/// The tuning sheet of the design that is open. Follows it.
pub fn tuning_sheet(store: Store, paper: Paper, _: bool) -> Sheet {
    tuning::tuning(&store.design.get(), paper)
}

/// Puts the present view on paper, for the browser to print.
pub fn lay(store: Store) {
    earlier::note(store, "print");
    let sheet = untrack(|| of_view(store, usual_paper()));
    browser::fill(PRINT_ROOT, &html(&sheet), "");
    if store.view.get_untracked() == View::Parts {
        store.act(Act::LayParts);
    }
}

/// Prints the present view.
pub fn print(store: Store) {
    if browser::print().is_none() {
        store.complain(say::NOT_PRINTED);
    }
}

/// Makes a paper of the open design, with what the page knows of its frame where the paper tells it.
fn with_given(store: Store, of_frame: bool, make: impl FnOnce(&Given<'_>) -> Sheet) -> Sheet {
    let (design, resolved) = (store.design.get(), store.resolved.get());
    let (analysis, today) = (store.analysis.get(), today());
    let borne = of_frame.then(|| frame::now(store));
    make(&Given {
        design: &design,
        resolved: &resolved,
        analysis: &analysis,
        borne: borne.as_deref(),
        today: &today,
    })
}

fn of_view(store: Store, paper: Paper) -> Sheet {
    let view = store.view.get();
    if view == View::Order {
        return order::sheet(store, paper);
    }
    let curves = store.curves.get();
    with_given(store, view != View::Versions, |given| match view {
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
        None => (say::AS_IT_IS_NOW.into(), design),
    }
}
