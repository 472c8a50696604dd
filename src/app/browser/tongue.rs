//! The language that the page speaks: the program's side of what `src/shell/boot.js` fetched.

use js_sys::{Array, Function, Promise, Reflect, global};
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::JsFuture;

use leptos::prelude::{document, window};

use super::{StorageError, Worked, forget, if_it_can, keep, kept};
use crate::words::{Language, Naming, bring, has, name_notes, naming, speak};

/// Where the chosen language is kept; `boot.js` reads it too.
const KEY: &str = "stringloft/language";
/// Where it is kept how notes are named, if somebody chose.
const NOTES: &str = "stringloft/notes";

fn of_boot(name: &str) -> Option<JsValue> {
    let tongues = Reflect::get(&global(), &"tongues".into()).ok()?;
    Reflect::get(&tongues, &name.into()).ok().filter(|value| !value.is_undefined())
}

/// Speaks the language that was fetched before the program ran.
pub fn speak_first() {
    let text = |name| of_boot(name).and_then(|value| value.as_string());
    let language = text("code").and_then(|code| Language::of_code(&code));
    if let (Some(language), Some(text)) = (language, text("text"))
        && language != Language::English
        && bring(language, text)
    {
        speak(language);
    }
    name_notes(kept(NOTES).and_then(|key| Naming::of_key(&key)));
    // For the marks of C and F strings, which the style sheet writes.
    if naming() == Naming::Syllables
        && let Some(root) = document().document_element()
    {
        if_it_can(root.set_attribute("data-notes", "syllables"));
    }
}

/// Keeps how notes are named, or with `None` that it is as usual, and loads the page again.
///
/// # Errors
///
/// When the browser keeps nothing: then the page stays as it is.
pub fn name_notes_always(chosen: Option<Naming>) -> Result<Worked, StorageError> {
    let kept = match chosen {
        Some(naming) => keep(NOTES, naming.key()),
        None => forget(NOTES),
    }?;
    if_it_can(window().location().reload());
    Ok(kept)
}

/// The languages that this build has whole, English first.
pub fn languages() -> Vec<Language> {
    let codes = of_boot("codes").map(|codes| Array::from(&codes)).unwrap_or_default();
    let others = codes.iter().filter_map(|code| Language::of_code(&code.as_string()?));
    [Language::English].into_iter().chain(others).collect()
}

/// Keeps a language as the page's, and loads the page again in it; what is being worked on is kept.
///
/// # Errors
///
/// When the browser keeps nothing: then the page stays as it is.
pub fn speak_always(language: Language) -> Result<Worked, StorageError> {
    let kept = keep(KEY, language.code())?;
    if_it_can(window().location().reload());
    Ok(kept)
}

/// Fetches the sentences of a language, if they are not here yet, so that a paper can be laid in it.
/// Whether it can be spoken now.
#[allow(dead_code, reason = "for papers in a language of their own")]
pub async fn fetch_language(language: Language) -> bool {
    has(language) || fetch_text(language.code()).await.is_some_and(|text| bring(language, text))
}

/// Fetches a text of the build by its name: the sentences of a language, or the licences.
pub async fn fetch_text(name: &str) -> Option<String> {
    let fetch = of_boot("fetch").and_then(|value| value.dyn_into::<Function>().ok())?;
    let promise = fetch.call1(&JsValue::UNDEFINED, &name.into()).ok()?;
    let fetched = JsFuture::from(Promise::from(promise)).await;
    fetched.ok().and_then(|text| text.as_string())
}

/// The mark of this build; empty where there is none.
pub fn build() -> String {
    let script = document().query_selector("script[data-build]").ok().flatten();
    script.and_then(|script| script.get_attribute("data-build")).unwrap_or_default()
}
