//! What drives: the lengths, or the harmonic curve.

use leptos::prelude::*;

use super::Form;
use crate::app::widgets::button::button;
use crate::app::widgets::list::while_so;
use crate::app::widgets::number_table::NumberTable;
use crate::design::document::{DrivesSpec, GeometrySpec, MOST_NODES};
use crate::design::settings::{NODE_ACROSS, NODE_ALONG, NumberRow};
use crate::design::shape::{one_more_node, to_curve, to_lengths};
use crate::words::{Words, drawing as say};

/// What may drive, with the words of a list.
const DRIVES: [(DrivesSpec, &str, Words); 2] = [
    (DrivesSpec::Lengths, "lengths", say::LENGTHS_DRIVE),
    (DrivesSpec::NeckCurve, "curve", say::PINS_DRIVE),
];

static NODE: [NumberRow; 2] = [NODE_ACROSS, NODE_ALONG];

/// The choice of what drives, and the nodes of the curve.
#[component]
pub(super) fn Drives(form: Form) -> impl IntoView {
    let store = form.store;
    let set = move |drives| {
        let (design, resolved) = (store.design.get_untracked(), store.resolved.get_untracked());
        let turned = match drives {
            _ if design.geometry.drives == drives => return,
            DrivesSpec::NeckCurve => to_curve(&design, &resolved, &store.analysis.get_untracked()),
            DrivesSpec::Lengths => Ok(to_lengths(&design, &resolved)),
        };
        match turned {
            Ok(turned) => {
                store.close_step();
                store.tell(store.change(&turned.edit), &turned.told);
            }
            Err(_) => {
                store.complain(say::NO_CURVE);
            }
        }
    };
    let is_drawn =
        move || store.design.with(|design| design.geometry.drives == DrivesSpec::NeckCurve);
    view! {
        <fieldset class="drives">
            <legend>{say::START_FROM.said()}</legend>
            {form.choice(say::TYPED_OR_DRAWN, &DRIVES, |g| g.drives, set)}
            {while_so(is_drawn, move || nodes(form))}
        </fieldset>
    }
}

fn nodes(form: Form) -> AnyView {
    let rows = form.of(|geometry| {
        geometry.nodes_mm.iter().map(|(across, along)| vec![*across, *along]).collect()
    });
    let names = Signal::derive(move || {
        rows.with(|rows: &Vec<Vec<f64>>| (1..=rows.len()).map(|node| node.to_string()).collect())
    });
    let set = move |rows: Vec<Vec<f64>>| {
        let nodes = rows.iter().filter_map(|row| Some((*row.first()?, *row.get(1)?))).collect();
        form.change(|geometry: &mut GeometrySpec| geometry.nodes_mm = nodes);
    };
    let add = move || match one_more_node(&form.now()) {
        Some(nodes) => form.step(|geometry| geometry.nodes_mm = nodes),
        None => form.store.hint(&say::no_more_nodes(&MOST_NODES)),
    };
    let table = NumberTable {
        id: "node",
        title: say::NODES.said(),
        of: say::NODE_COLUMN.said(),
        columns: &NODE,
        rows,
        names,
        set: Callback::new(set),
        count: Some((2, MOST_NODES)),
        here: RwSignal::new(None),
    };
    view! {
        {table.view()}
        <div class="window-actions">{button("tool", "add-node", "", say::ADD_NODE.said(), add)}</div>
        <p class="hint">
            {say::NODES_HINT.said()}
        </p>
    }
    .into_any()
}
