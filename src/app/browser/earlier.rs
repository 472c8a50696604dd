//! The earlier states of designs: the program's side of what `src/shell/keep-more.js` notes of them.

use js_sys::{Function, Promise, Reflect};
use leptos::prelude::window;
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::JsFuture;

/// Notes a kept design as it is now; `why` is a word that [`states`] gives back.
pub async fn note_state(id: &str, why: &str) {
    // What the browser does not take is told nowhere: nothing that anyone typed hangs on it.
    let _ = ask("note", id, why).await;
}

/// The states of a design, or of all where it has no name, in the form of a backup; `None` where the browser keeps none.
pub async fn states(id: &str) -> Option<String> {
    ask("list", id, "").await
}

/// Takes in the states of a backup beside those that are here; `None` where the browser did not.
pub async fn take_states(backup: &str) -> Option<()> {
    ask("take", backup, "").await.map(drop)
}

/// Forgets the states of a design.
pub async fn forget_states(id: &str) {
    // They would go in time.
    let _ = ask("forget", id, "").await;
}

/// What the script answers. It may not be here, as the page stands without it.
async fn ask(act: &str, one: &str, other: &str) -> Option<String> {
    let earlier = Reflect::get(&window(), &"earlier".into()).ok()?;
    let earlier: &Function = earlier.unchecked_ref();
    let answer = earlier.call3(&JsValue::NULL, &act.into(), &one.into(), &other.into()).ok()?;
    JsFuture::from(answer.unchecked_into::<Promise>()).await.ok()?.as_string()
}
