//! What the strings do to board, neck and pillar.

use leptos::prelude::*;

use crate::app::store::Store;
use crate::app::widgets::list::{list, part, while_so};
use crate::design::document::Design;
use crate::design::resolve::Resolved;
use crate::design::{advice, display};
use crate::engine::analysis::Analysis;
use crate::engine::geometry::{lay_out, loads};
use crate::engine::structure::frame::reactions;

/// The loads, with the caution that they are estimates.
#[component]
pub fn LoadsTable(store: Store) -> impl IntoView {
    let lines = Memo::new(move |_| {
        load_lines(&store.design.read(), &store.resolved.read(), &store.analysis.read())
    });
    let row = |(what, how_much): (String, String)| {
        part(&(what.clone(), how_much.clone()), move || {
            view! { <tr><th scope="row">{what}</th><td>{how_much}</td></tr> }.into_any()
        })
    };
    let table = move || {
        view! {
            <div class="drawing-loads">
                <h3 id="loads-title">"Loads, estimated"</h3>
                <table class="sources" aria-labelledby="loads-title">
                    <tbody>{list(move || lines.get().into_iter().map(row).collect())}</tbody>
                </table>
                <p class="hint">"The push in the pillar is reckoned as if its ends and the shoulder turned freely. Real joints also bend."</p>
                <p class="caution">{advice::caution()}</p>
            </div>
        }
        .into_any()
    };
    while_so(move || lines.with(|lines| !lines.is_empty()), table)
}

/// What the strings do to board, neck and pillar; nothing where no string has a pull and a place.
fn load_lines(design: &Design, resolved: &Resolved, analysis: &Analysis) -> Vec<(String, String)> {
    let geometry = &resolved.geometry;
    let band = lay_out(&resolved.harp, analysis, geometry);
    let loads = loads(&band, &resolved.harp, analysis, geometry);
    if loads.pulls.is_empty() {
        return Vec::new();
    }
    let force = |force| display::total_with_unit(force, design.units.force);
    let pillar = band.supports().and_then(|supports| reactions(supports, &loads.pulls).ok());
    let mut lines = vec![
        ("Pull of all strings", force(analysis.total_tension)),
        ("Lift on the board, square to it", force(loads.lift)),
        ("Pull along the board", force(loads.along)),
        ("All pulls on the neck as one", force(loads.all.size())),
        ("Push in the pillar", pillar.map_or(display::NONE.to_owned(), |held| force(held.pillar))),
    ];
    let rooms = loads.rooms.iter().zip(&analysis.strings);
    let least = rooms
        .filter_map(|(room, figures)| Some((room.as_ref().ok()?.plucked, figures)))
        .min_by(|one, other| one.0.to_m().total_cmp(&other.0.to_m()));
    if let Some((room, upper)) = least {
        let room = display::length_with_unit(room, design.units.length);
        let text = format!("{room}, strings {} and {}", upper.number, upper.number + 1);
        lines.push(("Least room of two neighbours, both plucked", text));
    }
    if loads.left_out > 0 {
        lines.push(("Strings left out, as something is unknown", loads.left_out.to_string()));
    }
    lines.into_iter().map(|(what, how_much)| (what.to_owned(), how_much)).collect()
}
