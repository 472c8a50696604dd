//! What this program is, what it rests on, and the licences of all that is in it.

use leptos::prelude::*;
use leptos::task::spawn_local;

use crate::app::browser;
use crate::app::rows::{Licensed, licences};
use crate::app::store::Store;
use crate::app::widgets::button::button;
use crate::app::widgets::list::{list, part, while_so, words};
use crate::app::widgets::window::Window;
use crate::design::letters::small;
use crate::words::{help as say, page};

/// The file that the build made of all licences, among those that `boot.js` fetches.
const FILE: &str = "licences";
/// How far the licences have come.
#[derive(Clone, Debug, PartialEq, Eq)]
enum Fetched {
    Coming,
    Missed,
    Here(Vec<Licensed>),
}

/// The window.
#[component]
pub fn AboutWindow(store: Store) -> impl IntoView {
    let fetched = RwSignal::new(Fetched::Coming);
    let fetch = move || {
        fetched.set(Fetched::Coming);
        spawn_local(async move {
            let all = browser::fetch_text(FILE).await.map(licences);
            let state = all.filter(|all| !all.is_empty()).map_or(Fetched::Missed, Fetched::Here);
            // The window may be closed by now.
            let _ = fetched.try_set(state);
        });
    };
    fetch();
    let sought = RwSignal::new(String::new());
    let told = move || match &*fetched.read() {
        Fetched::Coming => say::LICENCES_COMING.into(),
        Fetched::Missed => say::LICENCES_MISSED.into(),
        Fetched::Here(all) => say::licences_count(&all.len()),
    };
    let packages = move || {
        let key = small(sought.get().trim());
        let Fetched::Here(all) = fetched.get() else { return Vec::new() };
        let has =
            |one: &Licensed| small(one.name).contains(&key) || small(one.licence).contains(&key);
        let line = |one: Licensed| part(&(one.name, one.version), move || package(one));
        all.into_iter().filter(has).map(line).collect()
    };
    let missed = move || matches!(*fetched.read(), Fetched::Missed);
    let build = browser::build();
    view! {
        <Window title=say::ABOUT.said().to_owned() wide=true on_close=move || store.window.set(None)>
            <div class="about">
                <p>{say::about_version(&build, &env!("CARGO_PKG_VERSION"))}</p>
                <p>{say::ABOUT_IS.said()}</p>
                <p>{say::ABOUT_RESTS.said()}</p>
                <h3 id="licences-title">{say::LICENCES.said()}</h3>
                <p>{say::LICENCES_ARE.said()}</p>
                <p role="status" class="hint" id="licences-told">{words(told)}</p>
                {while_so(missed, move || button("tool", "licences-again", "", page::TRY_AGAIN.said(), fetch))}
                <label class="field">
                    <span>{say::LICENCES_FIND.said()}</span>
                    <input type="search" id="licences-find" on:input=move |event| sought.set(event_target_value(&event))/>
                </label>
                <ul class="licences" aria-labelledby="licences-title">{list(packages)}</ul>
            </div>
        </Window>
    }
}

/// A line of the list; its texts are made when it is opened.
fn package(one: Licensed) -> AnyView {
    let Licensed { name, version, licence, texts } = one;
    let open = RwSignal::new(false);
    let shown = move || {
        let texts = texts.iter().map(|text| view! { <pre tabindex="0">{*text}</pre> }.into_any());
        texts.collect::<Vec<AnyView>>().into_any()
    };
    let turn = move |_| open.update(|open| *open = !*open);
    view! {
        <li>
            <button type="button" class="licence" aria-expanded=move || if open.get() { "true" } else { "false" } on:click=turn>
                <strong>{name}</strong> " " {version} " " <span class="unit">{licence}</span>
            </button>
            {while_so(move || open.get(), shown)}
        </li>
    }
    .into_any()
}
