//! What is heard: the program's side of `src/shell/ear.js`, which is fetched when it is first used.

use std::cell::RefCell;

use js_sys::{Promise, Reflect, Uint8Array};
use leptos::prelude::window;
use wasm_bindgen::closure::Closure;
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::JsFuture;
use web_sys::File;

use super::hand::call;

/// The script, as the build puts it beside the page.
const SCRIPT: &str = "./ear.js";
/// Bytes of a sample.
const WIDTH: usize = 4;

thread_local! {
    static EAR: RefCell<Option<JsValue>> = const { RefCell::new(None) };
}

/// Why nothing is heard.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Unheard {
    /// The microphone was not allowed.
    Refused,
    /// There is none, or the recording cannot be read.
    Nothing,
}

/// The script, fetched if need be; it calls `told` whenever there is a piece to take.
async fn ear(told: impl Fn() + 'static) -> Option<JsValue> {
    if let Some(ear) = EAR.with_borrow(Clone::clone) {
        return Some(ear);
    }
    let asked = call(&window(), "bring", &SCRIPT.into())?;
    let ear = JsFuture::from(asked.unchecked_into::<Promise>()).await.ok()?;
    let told = Closure::<dyn Fn()>::new(told);
    call(&ear, "tell", told.as_ref());
    told.forget(); // as long as the page
    EAR.set(Some(ear.clone()));
    Some(ear)
}

/// Does something that takes its time.
async fn done(ear: &JsValue, name: &str, with: &JsValue) -> Result<JsValue, Unheard> {
    let asked = call(ear, name, with).ok_or(Unheard::Nothing)?;
    JsFuture::from(asked.unchecked_into::<Promise>()).await.map_err(|error| {
        let name = Reflect::get(&error, &"name".into()).ok().and_then(|name| name.as_string());
        if name.as_deref() == Some("NotAllowedError") { Unheard::Refused } else { Unheard::Nothing }
    })
}

/// Asks for the microphone and hears it until [`hear_no_more`]. The first caller's `told` is called for every piece.
///
/// # Errors
///
/// Why it is not heard.
pub async fn hear(told: impl Fn() + 'static) -> Result<(), Unheard> {
    let ear = ear(told).await.ok_or(Unheard::Nothing)?;
    done(&ear, "hear", &JsValue::UNDEFINED).await.map(|_| ())
}

/// Hears a recording; whether it came to its end.
///
/// # Errors
///
/// Why it is not heard.
pub async fn hear_file(file: File, told: impl Fn() + 'static) -> Result<bool, Unheard> {
    let ear = ear(told).await.ok_or(Unheard::Nothing)?;
    done(&ear, "read", &file).await.map(|ended| ended.is_truthy())
}

/// Gives the microphone back, and ends a recording.
pub fn hear_no_more() {
    if let Some(ear) = EAR.with_borrow(Clone::clone) {
        call(&ear, "stop", &JsValue::UNDEFINED);
    }
}

/// Sounds a tone of so many hertz; of 0, none.
pub async fn sound_tone(hz: f64, told: impl Fn() + 'static) {
    // What was never fetched sounds no tone.
    if hz <= 0.0 && EAR.with_borrow(Option::is_none) {
        return;
    }
    if let Some(ear) = ear(told).await {
        call(&ear, "tone", &hz.into());
    }
}

/// The oldest piece that was heard: samples in a second, and the samples.
pub fn take_heard() -> Option<(f64, Vec<f32>)> {
    let ear = EAR.with_borrow(Clone::clone)?;
    let rate_hz = call(&ear, "rate", &JsValue::UNDEFINED)?.as_f64()?;
    let bytes = call(&ear, "take", &JsValue::UNDEFINED).filter(|bytes| !bytes.is_undefined())?;
    let bytes = bytes.unchecked_into::<Uint8Array>().to_vec();
    let sample = |four: &[u8]| four.try_into().map_or(0.0, f32::from_le_bytes);
    Some((rate_hz, bytes.chunks_exact(WIDTH).map(sample).collect()))
}
