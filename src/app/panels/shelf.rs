//! The designs that this browser keeps.

use leptos::prelude::*;

use crate::app::shelf::{self, Shelved};
use crate::app::store::{Origin, Store};
use crate::app::widgets::list::{either, list, part, while_so, words};
use crate::app::widgets::window::Window;

/// The list of kept designs: open one, or take one away.
#[component]
pub fn ShelfWindow(store: Store) -> impl IntoView {
    store.keep_and_tell();
    let designs = RwSignal::new(shelf::all());
    let asked = RwSignal::new(None::<String>);
    // Told here, as the window lies over the line of the page.
    let wrong = RwSignal::new(String::new());
    let open = move |id: String| match shelf::take(&id) {
        Ok(design) => {
            if store.tell(store.open(design, Origin::Kept(id)), "") {
                store.window.set(None);
            }
        }
        Err(why) => wrong.set(format!("That design was not opened: {why}.")),
    };
    let remove = move |id: String| match shelf::remove(&id) {
        Ok(_) => designs.update(|designs| designs.retain(|design| design.id != id)),
        Err(why) => wrong.set(format!("This browser did not delete that design: {why}.")),
    };
    let is_open = move |id: &str| store.origin.get() == Origin::Kept(id.to_owned());
    let line = move |Shelved { id, title, strings }: Shelved| {
        let (to_open, to_remove, to_ask, this, here) =
            (id.clone(), id.clone(), id.clone(), id.clone(), id.clone());
        view! {
            <li>
                <button type="button" class="link" on:click=move |_| open(to_open.clone())>{title}</button>
                <span class="unit">{strings}</span>
                {either(
                    move || is_open(&here),
                    || view! { <span class="unit">"open now"</span> }.into_any(),
                    move || {
                        let (this, to_ask, to_remove) = (this.clone(), to_ask.clone(), to_remove.clone());
                        (move || if asked.get().as_deref() == Some(this.as_str()) {
                            let to_remove = to_remove.clone();
                            view! { <button type="button" class="cure" on:click=move |_| remove(to_remove.clone())>"Delete for good"</button> }.into_any()
                        } else {
                            let to_ask = to_ask.clone();
                            view! { <button type="button" class="quiet" on:click=move |_| asked.set(Some(to_ask.clone()))>"Delete"</button> }.into_any()
                        })
                        .into_any()
                    },
                )}
            </li>
        }
    };
    view! {
        <Window title="Designs kept in this browser" on_close=move || store.window.set(None)>
            <p>"They stay on this device. Save a design as a file to keep it for good or to move it."</p>
            <p class="wrong" role="alert">{words(move || wrong.get())}</p>
            <ul class="shelf">
                {list(move || {
                    let line = |design: Shelved| part(&design.id.clone(), move || line(design).into_any());
                    designs.get().into_iter().map(line).collect()
                })}
            </ul>
            {while_so(
                move || designs.with(Vec::is_empty),
                || view! { <p>"None yet. A design is kept here as soon as you change it."</p> }.into_any(),
            )}
        </Window>
    }
}
