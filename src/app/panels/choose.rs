//! Choosing strings: what is wanted along the compass, the best set from the stock, and better lengths. What is
//! proposed is drawn as a ghost over the curves until it is taken or left.

mod alternatives;
mod desk;
mod fields;
mod limits;
mod plot;
mod points;
mod preview;
mod reshape;
mod search;
mod weights;

use leptos::prelude::*;

use self::desk::Desk;
use crate::app::store::Store;
use crate::app::widgets::list::while_so;
use crate::words::{Words, choose_page as say};

/// A key, the words of a head, and what stands under it.
type Group = (&'static str, Words, fn(Desk) -> AnyView);

/// The groups beside the search.
const GROUPS: [Group; 7] = [
    ("family", say::GROUP_FAMILY, limits::family),
    ("points", say::GROUP_POINTS, points::points),
    ("weights", say::GROUP_WEIGHTS, weights::weights),
    ("limits", say::GROUP_LIMITS, limits::limits),
    ("zones", say::GROUP_ZONES, limits::zones),
    ("kinds", say::GROUP_KINDS, limits::kinds),
    ("reshape", say::GROUP_RESHAPE, reshape::reshape),
];

/// Choose strings.
#[component]
pub fn Choose(store: Store) -> impl IntoView {
    let desk = Desk::new(store);
    let open = RwSignal::new("family");
    on_cleanup(move || {
        store.close_step();
        desk.leave();
    });
    let groups: Vec<AnyView> = GROUPS.iter().map(|group| part_of(desk, open, *group)).collect();
    view! {
        <section class="choose-panel" aria-label=say::PANEL.said()>
            <div class="choose-main" id="choose" tabindex="-1">
                {plot::plot(desk)}
                {search::search(desk)}
                {alternatives::alternatives(desk)}
                {preview::preview(desk)}
            </div>
            <div class="drawing-side" id="choose-side" role="group" aria-label=say::SIDE.said() on:focusout=move |_| store.close_step()>
                {groups}
            </div>
        </section>
    }
}

/// The head of a group, and what stands under it while it is open.
fn part_of(desk: Desk, open: RwSignal<&'static str>, (key, words, make): Group) -> AnyView {
    let is_open = move || open.get() == key;
    let turn = move |_| {
        let next = if open.get_untracked() == key { "" } else { key };
        open.set(next);
    };
    view! {
        <div class="drawing-group" class:open=is_open>
            <h2>
                <button type="button" id=format!("choose-{key}") aria-expanded=move || if is_open() { "true" } else { "false" } on:click=turn>
                    {words.said()}
                </button>
            </h2>
            {while_so(is_open, move || make(desk))}
        </div>
    }
    .into_any()
}
