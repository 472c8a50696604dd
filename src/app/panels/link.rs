//! The design as a link: copied in one click; asked first, when there is a version to carry along; shown when the
//! clipboard is out of reach.

use leptos::prelude::*;
use leptos::task::spawn_local;

use crate::app::store::{Store, Window as Which};
use crate::app::widgets::button::button;
use crate::app::widgets::fields::Choice;
use crate::app::widgets::list::{while_so, words};
use crate::app::widgets::window::Window;
use crate::app::{browser, earlier, rows};
use crate::design::letters::capital;

/// Copies the link of the open design, or asks which version goes along, if it has any.
pub fn copy_link(store: Store) {
    if store.design.with_untracked(|design| !design.versions.is_empty()) {
        store.window.set(Some(Which::Link));
        return;
    }
    match untrack(|| store.address()) {
        Ok(address) => copy(store, address),
        Err(why) => store.complain(format!("This design has no link: {why}.")),
    }
}

fn copy(store: Store, address: String) {
    let length = address.chars().count();
    spawn_local(async move {
        if let Some(copied) = browser::copy(address).await {
            store.window.set(None);
            earlier::note(store, "link");
            let words = format!(
                "Link copied ({length} characters). Whoever opens it sees this very design; nothing is sent to a server."
            );
            store.tell(Ok(copied.into()), &words);
        } else if store.window.get_untracked().is_none() {
            store.window.set(Some(Which::Link));
        } else {
            store.complain(
                "The browser did not let the page reach the clipboard. Select the link and copy it.",
            );
        }
    });
}

/// The link, with a version or without, to be copied.
#[component]
pub fn LinkWindow(store: Store) -> impl IntoView {
    let versions = store.design.with_untracked(|design| design.versions.clone());
    let any = !versions.is_empty();
    let chosen = RwSignal::new(String::new());
    let mut choices = vec![(String::new(), "none".to_owned())];
    choices.extend(
        (0..versions.len())
            .map(|index| (index.to_string(), rows::side_words(&versions, Some(index)))),
    );
    let address = Memo::new(move |_| store.address_with(chosen.read().parse::<usize>().ok()));
    let told = move || match &*address.read() {
        Ok(address) => {
            format!("{} characters. Nothing is sent to a server.", address.chars().count())
        }
        Err(_) => String::new(),
    };
    let wrong = move || match &*address.read() {
        Ok(_) => String::new(),
        Err(why) => format!("{}.", capital(why)),
    };
    let text = move || address.get().unwrap_or_default();
    let take = move || {
        if let Ok(address) = address.get_untracked() {
            copy(store, address);
        }
    };
    let hint = if any {
        "Whoever opens the link sees this very design. One version can go along, to be compared."
    } else {
        "The browser did not let the page reach the clipboard. Select the link and copy it."
    };
    let choice = any.then(|| {
        view! {
            <Choice label="Version that goes along" choices=choices value=chosen on_change=move |key| chosen.set(key)/>
        }
        .into_any()
    });
    view! {
        <Window title="Link to this design" on_close=move || store.window.set(None)>
            <p>{hint}</p>
            {choice}
            <p class="wrong" role="alert">{words(wrong)}</p>
            <p class="hint" id="link-length" role="status">{words(told)}</p>
            <textarea class="link-text" readonly=true rows="6" aria-label="Link" prop:value=text></textarea>
            {while_so(move || any && address.read().is_ok(), move || {
                view! { <p class="window-actions">{button("tool main", "copy-link", "", "Copy the link", take)}</p> }.into_any()
            })}
        </Window>
    }
}
