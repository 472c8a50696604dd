//! The curves for whoever does not see them: said as the description of their picture, and in a window with a table.

use std::time::Duration;

use leptos::leptos_dom::helpers::TimeoutHandle;
use leptos::mount::mount_to;
use leptos::prelude::*;
use wasm_bindgen::JsCast;

use crate::app::rows;
use crate::app::store::Store;
use crate::app::widgets::list::words;
use crate::app::widgets::window::Window;
use crate::charts::series::Curves;
use crate::words::curves as say;

/// The element that describes the picture.
const SAID: &str = "curves-said";
/// How long it waits after a change: nobody hears it while typing.
const PAUSE: Duration = Duration::from_millis(700);

fn built(store: Store) -> Curves {
    let (resolved, design) = (store.resolved.read(), store.design.read());
    let shown = store.curves.get();
    Curves::build(&store.analysis.read(), &resolved.harp, &design.units, &shown, None, None)
}

fn sentences(store: Store) -> Vec<String> {
    rows::spoken(&built(store), &store.analysis.read(), &store.design.read().units)
}

/// Describes the picture of the curves from now on. Called once.
pub fn stand_by(store: Store) {
    let main = document().query_selector("main").ok().flatten();
    let Some(main) = main.and_then(|main| main.dyn_into().ok()) else { return };
    let make = move || {
        let said = RwSignal::new(String::new());
        let timer = StoredValue::new(None::<TimeoutHandle>);
        Effect::new(move |_| {
            store.design.track();
            store.curves.track();
            if let Some(timer) = timer.get_value() {
                timer.clear();
            }
            let tell = move || said.set(untrack(|| sentences(store)).join(" "));
            timer.set_value(set_timeout_with_handle(tell, PAUSE).ok());
        });
        view! { <p id=SAID hidden=true>{words(move || said.get())}</p> }
    };
    mount_to(main, make).forget();
    if let Some(picture) = document().get_element_by_id("curves") {
        let _ = picture.set_attribute("aria-describedby", SAID);
    }
}

/// The window of the curves in words and figures.
#[component]
pub fn CurvesWindow(store: Store) -> impl IntoView {
    let (curves, units) = untrack(|| (built(store), store.design.read().units));
    let table = untrack(|| rows::curve_table(&curves, &store.analysis.read(), &units));
    let said = untrack(|| rows::spoken(&curves, &store.analysis.read(), &units));
    let said: Vec<AnyView> =
        said.into_iter().map(|sentence| view! { <li>{sentence}</li> }.into_any()).collect();
    view! {
        <Window title=say::TOLD_WINDOW.said().to_owned() wide=true on_close=move || store.window.set(None)>
            <ul class="curves-told">{said}</ul>
            <div class="sheet" tabindex="0" role="region" aria-label=say::TOLD_TABLE.said()>
                <table class="sources curves-table" aria-label=say::TOLD_TABLE.said() inner_html=table></table>
            </div>
            <p class="hint">{say::TOLD_MORE.said()}</p>
        </Window>
    }
}
