//! The keys that the harp plays from its open tuning.

use leptos::prelude::*;

use crate::app::store::Store;
use crate::app::widgets::list::{list, part, while_so};
use crate::design::keys::{KeyLine, key_lines};
use crate::words::drawing as say;

/// A table: each key with what is raised for it, or why it cannot be played. Nothing where no string has a note.
#[component]
pub fn Keys(store: Store) -> impl IntoView {
    let lines = Memo::new(move |_| key_lines(&store.resolved.read().harp.strings));
    let row = |line: KeyLine| {
        part(&line.clone(), move || {
            let KeyLine { name, is_played, words } = line;
            let no = (!is_played).then(|| view! { <b>{say::KEY_NO.said()} " "</b> }.into_any());
            view! { <tr class:hint=!is_played><th scope="row">{name}</th><td>{no}{words}</td></tr> }
                .into_any()
        })
    };
    let table = move || {
        view! {
            <div class="drawing-keys">
                <h3 id="keys-title">{say::KEYS_TITLE.said()}</h3>
                <table class="sources" aria-labelledby="keys-title">
                    <thead><tr><th scope="col">{say::KEY.said()}</th><th scope="col">{say::LEVERS_OR_PEDALS.said()}</th></tr></thead>
                    <tbody>{list(move || lines.get().into_iter().map(row).collect())}</tbody>
                </table>
                <p class="hint">{say::KEYS_HINT.said()}</p>
            </div>
        }
        .into_any()
    };
    while_so(move || lines.with(|lines| !lines.is_empty()), table)
}
