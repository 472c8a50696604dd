//! The drawing of the harp in place of the chart: the harp to scale on paper, and beside it groups of its shape, its
//! woods, its loads and its files, of which one is open at a time.

mod drills;
mod files;
mod giving;
mod hand;
mod key_table;
mod loads;
mod making;
mod nodes;
mod picture;
mod shape;
mod stringing;
mod thicknesses;
mod timber;
mod woods;
mod years;

use leptos::prelude::*;
use web_sys::KeyboardEvent;

use self::drills::Drills;
use self::files::Files;
use self::key_table::Keys;
use self::loads::LoadsTable;
use self::picture::Picture;
use self::shape::Shape;
use self::stringing::Stringing;
use self::woods::Woods;
use self::years::YearsTable;
use crate::app::browser;
use crate::app::frame::Frame;
use crate::app::store::Store;
use crate::app::widgets::list::while_so;
use crate::papers::template::model::TemplateError;
use crate::words::{Words, charts, drawing as say, papers};

/// A key, the words of a head, and what stands under it.
type Group = (&'static str, Words, fn(Store) -> AnyView);

/// The groups beside the drawing.
const GROUPS: &[Group] = &[
    ("shape", say::SHAPE, |store| view! { <Shape store=store/> }.into_any()),
    ("woods", say::WOODS, |store| view! { <Woods store=store/> }.into_any()),
    ("loads", say::LOADS, |store| {
        view! { <LoadsTable store=store/><YearsTable store=store/> }.into_any()
    }),
    ("stringing", say::STRINGING, |store| view! { <Stringing store=store/> }.into_any()),
    ("keys", say::KEYS, |store| view! { <Keys store=store/> }.into_any()),
    ("drills", say::DRILLS, |store| view! { <Drills store=store/> }.into_any()),
    ("files", say::FILES, |store| view! { <Files store=store/> }.into_any()),
];

/// The drawing and the groups beside it.
#[component]
pub fn Drawing(store: Store) -> impl IntoView {
    Frame::provide(store);
    on_cleanup(move || store.close_step());
    // Escape gives the keyboard back to the drawing.
    let on_keys = move |event: KeyboardEvent| {
        if event.key() == "Escape" {
            browser::focus("loft");
        }
    };
    // On a small screen the groups lie below the drawing.
    Effect::new(move |_| {
        if store.paper.seeks.get() {
            store.paper.seeks.set(false);
            show_head(store.paper.group.get_untracked());
        }
    });
    let groups = GROUPS.iter().map(|group| part_of(store, *group)).collect_view();
    view! {
        <section class="drawing-panel" aria-label=papers::DRAWING.said()>
            <Picture store=store/>
            <div class="drawing-side" id="drawing-side" tabindex="-1" role="group" aria-label=say::BESIDE.said() on:keydown=on_keys>
                {groups}
            </div>
        </section>
    }
}

/// Brings the head of a group to the upper edge of a small screen, when the page has been laid out.
fn show_head(key: &'static str) {
    request_animation_frame(move || browser::show_on_small(&format!("group-{key}")));
}

/// The head of a group, and what stands under it while it is open.
fn part_of(store: Store, (key, words, make): Group) -> AnyView {
    let open = move || store.paper.group.get() == key;
    let turn = move |_| {
        store.close_step();
        store.paper.group.set(if open() { "" } else { key });
        show_head(key);
        // What stood above is closed now.
        browser::to_top("drawing-side");
    };
    view! {
        <div class="drawing-group" class:open=open>
            <h2>
                <button type="button" id=format!("group-{key}") aria-expanded=move || if open() { "true" } else { "false" } on:click=turn>
                    {words.said()}
                </button>
            </h2>
            {while_so(open, move || make(store))}
        </div>
    }
    .into_any()
}

/// Why there is no drawing, for a maker.
pub(super) fn why(error: &TemplateError) -> String {
    match error {
        TemplateError::Empty => charts::NOTHING_TO_DRAW.into(),
        error => say::not_drawn(error),
    }
}
