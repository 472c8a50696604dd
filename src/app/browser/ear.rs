//! What is heard: the program's side of `src/shell/ear.js`, which is fetched when it is first used, and of the worker
//! that listens (`src/shell/hearing.js`).

use std::cell::RefCell;

use js_sys::{Promise, Reflect, Uint8Array};
use leptos::prelude::window;
use wasm_bindgen::closure::Closure;
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::JsFuture;
use web_sys::File;

use super::hand::call;
use super::sound::{bring_sound, bytes, file_named, hearing};

/// How the script is called among the files of the build.
const FILE: &str = "ear=";
/// Bytes of a number.
const WIDTH: usize = 8;

thread_local! {
    static EAR: RefCell<Option<JsValue>> = const { RefCell::new(None) };
    /// What is listened for.
    static SOUGHT: RefCell<Vec<f64>> = const { RefCell::new(Vec::new()) };
}

/// Why nothing is heard.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Unheard {
    /// The microphone was not allowed.
    Refused,
    /// There is none, or the recording cannot be read.
    Nothing,
    /// What listens did not come.
    NotHere,
}

/// The script, fetched if need be.
async fn ear() -> Option<JsValue> {
    if let Some(ear) = EAR.with_borrow(Clone::clone) {
        return Some(ear);
    }
    let asked = call(&window(), "bring", &file_named(FILE)?.into())?;
    let ear = JsFuture::from(asked.unchecked_into::<Promise>()).await.ok()?;
    EAR.set(Some(ear.clone()));
    Some(ear)
}

/// The script, and the worker that knows what to listen for; it calls `told` whenever there is something to take.
async fn listening(told: impl Fn() + 'static) -> Option<JsValue> {
    let ear = ear().await?;
    if !bring_sound().await {
        return None;
    }
    let told = Closure::<dyn Fn()>::new(told).into_js_value();
    Reflect::set(&hearing()?, &"told".into(), &told).ok()?;
    SOUGHT.with_borrow(|sought| tell_sought(sought));
    Some(ear)
}

fn tell_sought(sought: &[f64]) {
    if let Some(hearing) = hearing() {
        call(&hearing, "seek", &bytes(sought));
    }
}

/// Does something that takes its time.
async fn done(ear: &JsValue, name: &str, with: &JsValue) -> Result<JsValue, Unheard> {
    let asked = call(ear, name, with).ok_or(Unheard::Nothing)?;
    JsFuture::from(asked.unchecked_into::<Promise>()).await.map_err(|error| {
        let name = Reflect::get(&error, &"name".into()).ok().and_then(|name| name.as_string());
        if name.as_deref() == Some("NotAllowedError") { Unheard::Refused } else { Unheard::Nothing }
    })
}

/// What is listened for from now on, in numbers.
pub fn listen_for(sought: Vec<f64>) {
    tell_sought(&sought);
    SOUGHT.set(sought);
}

/// Asks for the microphone and hears it until [`hear_no_more`]. `told` is called whenever something was heard.
///
/// # Errors
///
/// Why it is not heard.
pub async fn hear(told: impl Fn() + 'static) -> Result<(), Unheard> {
    let ear = listening(told).await.ok_or(Unheard::NotHere)?;
    done(&ear, "hear", &JsValue::UNDEFINED).await.map(|_| ())
}

/// Hears a recording; whether it came to its end.
///
/// # Errors
///
/// Why it is not heard.
pub async fn hear_file(file: File, told: impl Fn() + 'static) -> Result<bool, Unheard> {
    let ear = listening(told).await.ok_or(Unheard::NotHere)?;
    done(&ear, "read", &file).await.map(|ended| ended.is_truthy())
}

/// Gives the microphone back, and ends a recording; at its end all that was heard has been told.
pub async fn hear_no_more() {
    if let Some(ear) = EAR.with_borrow(Clone::clone) {
        call(&ear, "stop", &JsValue::UNDEFINED);
    }
    if let Some(hearing) = hearing() {
        let _ = done(&hearing, "hush", &JsValue::UNDEFINED).await;
    }
}

/// Sounds a tone of so many hertz; of 0, none.
pub async fn sound_tone(hz: f64) {
    // What was never fetched sounds no tone.
    if hz <= 0.0 && EAR.with_borrow(Option::is_none) {
        return;
    }
    if let Some(ear) = ear().await {
        call(&ear, "tone", &hz.into());
    }
}

/// The oldest of what was heard, in numbers.
pub fn take_heard() -> Option<Vec<f64>> {
    let bytes = call(&hearing()?, "take", &JsValue::UNDEFINED).filter(|it| !it.is_undefined())?;
    let bytes = bytes.unchecked_into::<Uint8Array>().to_vec();
    let number = |eight: &[u8]| eight.try_into().map_or(f64::NAN, f64::from_le_bytes);
    Some(bytes.chunks_exact(WIDTH).map(number).collect())
}
