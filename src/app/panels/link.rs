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
use crate::words::link as say;

/// Copies the link of the open design, or asks which version goes along, if it has any.
pub fn copy_link(store: Store) {
    if store.design.with_untracked(|design| !design.versions.is_empty()) {
        store.window.set(Some(Which::Link));
        return;
    }
    match untrack(|| store.address()) {
        Ok(address) => copy(store, address),
        Err(why) => store.complain(say::none(&why)),
    }
}

fn copy(store: Store, address: String) {
    let length = address.chars().count();
    spawn_local(async move {
        if let Some(copied) = browser::copy(address).await {
            store.window.set(None);
            earlier::note(store, "link");
            store.tell(Ok(copied.into()), &say::copied(&length));
        } else if store.window.get_untracked().is_none() {
            store.window.set(Some(Which::Link));
        } else {
            store.complain(say::NO_CLIPBOARD);
        }
    });
}

/// The link, with a version or without, to be copied.
#[component]
pub fn LinkWindow(store: Store) -> impl IntoView {
    let versions = store.design.with_untracked(|design| design.versions.clone());
    let any = !versions.is_empty();
    let chosen = RwSignal::new(String::new());
    let mut choices = vec![(String::new(), say::WITHOUT.into())];
    choices.extend(
        (0..versions.len())
            .map(|index| (index.to_string(), rows::side_words(&versions, Some(index)))),
    );
    let address = Memo::new(move |_| store.address_with(chosen.read().parse::<usize>().ok()));
    let told = move || match &*address.read() {
        Ok(address) => say::length(&address.chars().count()),
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
    let hint = if any { say::ONE_VERSION } else { say::NO_CLIPBOARD };
    let choice = any.then(|| {
        view! {
            <Choice label=say::VERSION.said() choices=choices value=chosen on_change=move |key| chosen.set(key)/>
        }
        .into_any()
    });
    view! {
        <Window title=say::TITLE.said() on_close=move || store.window.set(None)>
            <p>{hint.said()}</p>
            {choice}
            <p class="wrong" role="alert">{words(wrong)}</p>
            <p class="hint" id="link-length" role="status">{words(told)}</p>
            <textarea class="link-text" readonly=true rows="6" aria-label=say::LINK.said() prop:value=text></textarea>
            {while_so(move || any && address.read().is_ok(), move || {
                view! { <p class="window-actions">{button("tool main", "copy-link", "", say::COPY.said(), take)}</p> }.into_any()
            })}
        </Window>
    }
}
