//! What plays sound: the program's side of `src/shell/hearing.js`, which is fetched when it is first asked for.

use js_sys::{Function, Promise, Reflect, Uint8Array, global};
use leptos::prelude::document;
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::JsFuture;
use web_sys::Blob;

/// How the script is called among the files of the build.
const FILE: &str = "hearing=";

/// The script, once it is here.
pub(super) fn hearing() -> Option<JsValue> {
    Reflect::get(&global(), &"hearing".into()).ok().filter(|value| !value.is_undefined())
}

/// Fetches the script and has it start its worker; whether it came.
pub async fn bring_sound() -> bool {
    if hearing().is_none() && load().await.is_none() {
        return false;
    }
    answer("warm", &JsValue::UNDEFINED).await.is_some()
}

/// The address of a script, as the build named it beside the languages.
pub(super) fn file_named(name: &str) -> Option<String> {
    let files =
        document().query_selector("script[data-words]").ok()??.get_attribute("data-words")?;
    files.split(' ').find_map(|file| file.strip_prefix(name)).map(str::to_owned)
}

/// Puts the script into the page and waits until it has run.
async fn load() -> Option<()> {
    let page = document();
    let script = page.create_element("script").ok()?;
    script.set_attribute("src", &file_named(FILE)?).ok()?;
    let ran = Promise::new(&mut |done, failed| {
        let _ = script.add_event_listener_with_callback("load", &done);
        let _ = script.add_event_listener_with_callback("error", &failed);
    });
    page.head()?.append_child(&script).ok()?;
    JsFuture::from(ran).await.ok().map(drop)
}

fn call(name: &str, with: &JsValue) -> Option<JsValue> {
    let hearing = hearing()?;
    let act = Reflect::get(&hearing, &name.into()).ok()?;
    act.unchecked_into::<Function>().call1(&hearing, with).ok()
}

async fn answer(name: &str, with: &JsValue) -> Option<JsValue> {
    let promise = call(name, with)?.dyn_into::<Promise>().ok()?;
    JsFuture::from(promise).await.ok()
}

/// A request as the script takes it: the bytes of its numbers.
pub(super) fn bytes(request: &[f64]) -> JsValue {
    let bytes: Vec<u8> = request.iter().flat_map(|number| number.to_le_bytes()).collect();
    Uint8Array::from(bytes.as_slice()).into()
}

/// Plays what is asked for; the numbers are those that `hearing.js` describes. False if something else was asked for
/// meanwhile; `None` where it cannot be played.
pub async fn play_sound(request: &[f64]) -> Option<bool> {
    answer("play", &bytes(request)).await?.as_bool()
}

/// Has the beginning of a string rendered before it is asked for; false where nothing renders.
pub async fn render_ahead(voice: &[f64]) -> bool {
    answer("ahead", &bytes(voice)).await.is_some()
}

/// The file of a sound; `None` where it cannot be made.
pub async fn sound_file(request: &[f64]) -> Option<Blob> {
    answer("file", &bytes(request)).await?.dyn_into().ok()
}

/// Stops what is playing.
pub fn stop_sound() {
    let _ = call("stop", &JsValue::UNDEFINED);
}

/// Stops what is playing, as nothing will for a while.
pub fn rest_sound() {
    let _ = call("rest", &JsValue::UNDEFINED);
}
