//! What the browser keeps: the program's side of `src/shell/keep.js`.
//!
//! Texts are read from memory, where all of them stand. What is kept stands there at once, and is on the disk only when
//! [`Heard::Kept`] says so; until then it waits.

use js_sys::{Array, Promise, Reflect};
use thiserror::Error;
use wasm_bindgen::closure::Closure;
use wasm_bindgen::prelude::wasm_bindgen;
use wasm_bindgen_futures::JsFuture;
use web_sys::File;

use super::super::tab::Heard;
use super::Worked;
use crate::words::page as say;

#[wasm_bindgen]
extern "C" {
    #[wasm_bindgen(js_namespace = keeping)]
    fn get(key: &str) -> Option<String>;
    #[wasm_bindgen(js_namespace = keeping)]
    fn keys(prefix: &str) -> Array;
    #[wasm_bindgen(js_namespace = keeping)]
    fn put(key: &str, text: Option<&str>);
    #[wasm_bindgen(js_namespace = keeping, js_name = putDesign)]
    fn put_design(name: &str, text: &str, at: usize, steady: usize, before: Option<String>);
    #[wasm_bindgen(js_namespace = keeping)]
    fn open(name: &str);
    #[wasm_bindgen(js_namespace = keeping)]
    fn opened() -> Option<String>;
    #[wasm_bindgen(js_namespace = keeping)]
    fn blank() -> bool;
    #[wasm_bindgen(js_namespace = keeping, js_name = steps)]
    fn kept_steps(forward: bool) -> usize;
    #[wasm_bindgen(js_namespace = keeping)]
    fn next(forward: bool) -> Option<String>;
    #[wasm_bindgen(js_namespace = keeping)]
    fn listen(told: &Closure<dyn Fn(String, String)>);
    #[wasm_bindgen(js_namespace = keeping)]
    fn failed() -> String;
    #[wasm_bindgen(js_namespace = keeping, js_name = waits)]
    fn is_waiting(key: &str) -> bool;
    #[wasm_bindgen(js_namespace = keeping)]
    fn leave() -> bool;
    #[wasm_bindgen(js_namespace = keeping)]
    fn space() -> Option<Promise>;
}

/// The largest backup that is read, as `design::backup` reads it.
const MOST_BACKUP_BYTES: f64 = 64.0 * 1024.0 * 1024.0;

/// Why the browser did not keep or forget something.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Error)]
pub enum StorageError {
    /// There is no room.
    #[error("{}", say::STORAGE_FULL)]
    Full,
    /// There is no storage, or it throws.
    #[error("{}", say::STORAGE_SHUT)]
    Shut,
}

/// What is kept under a key.
pub fn kept(key: &str) -> Option<String> {
    get(key)
}

/// Every key that begins with `prefix`.
pub fn kept_keys(prefix: &str) -> Vec<String> {
    keys(prefix).iter().filter_map(|key| key.as_string()).collect()
}

/// Keeps a text: at once for whoever reads it, and on the disk as soon as the browser has written it.
///
/// # Errors
///
/// When the browser is known to take nothing. The text waits for it all the same.
pub fn keep(key: &str, text: &str) -> Result<Worked, StorageError> {
    put(key, Some(text));
    failing().map_or(Ok(Worked(())), Err)
}

/// Forgets what is kept under a key.
///
/// # Errors
///
/// When the browser is known to take nothing.
pub fn forget(key: &str) -> Result<Worked, StorageError> {
    put(key, None);
    failing().map_or(Ok(Worked(())), Err)
}

/// Keeps a design with its undo steps: it stands at step `at`, nothing up to step `steady` has changed since it was kept
/// last, and `before` is the state before this one.
///
/// # Errors
///
/// When the browser is known to take nothing. The design waits for it all the same.
pub fn keep_design(
    name: &str,
    text: &str,
    (at, steady): (usize, usize),
    before: Option<String>,
) -> Result<Worked, StorageError> {
    put_design(name, text, at, steady, before);
    failing().map_or(Ok(Worked(())), Err)
}

/// Why the browser takes nothing, while that is so.
pub fn failing() -> Option<StorageError> {
    match failed().as_str() {
        "" => None,
        "QuotaExceededError" => Some(StorageError::Full),
        _ => Some(StorageError::Shut),
    }
}

/// Whether what was put under a key is not on the disk yet.
pub fn waits(key: &str) -> bool {
    is_waiting(key)
}

/// Leaves what is not on the disk yet where the next page finds it; whether all is safe then.
pub fn leave_what_waits() -> bool {
    leave()
}

/// Notes which design is open, for this tab and for the next one. Its undo steps are read: [`Heard::Steps`] says when they
/// are here.
pub fn note_open(name: &str) {
    open(name);
}

/// Whether the page is to open with nothing, once: so asked for where the program has stopped.
pub fn opens_with_nothing() -> bool {
    blank()
}

/// The name of the design that was open last, in this tab or else in any.
pub fn last_open() -> Option<String> {
    opened()
}

/// How many steps back from the open design are kept, or forward again.
pub fn steps(forward: bool) -> usize {
    kept_steps(forward)
}

/// The state one step back from the open design as it was kept last, or one forward again.
pub fn next_state(forward: bool) -> Option<String> {
    next(forward)
}

/// Calls `told` with whatever there is to hear of what is kept.
pub fn on_keeping(told: impl Fn(Heard) + 'static) {
    let told = Closure::<dyn Fn(String, String)>::new(move |what: String, key| {
        told(Heard::of(&what, key));
    });
    listen(&told);
    told.forget(); // as long as the page
}

/// How many bytes this browser keeps for the page, and how many it allows; `None` where it does not say.
pub async fn room() -> Option<(f64, f64)> {
    let said = JsFuture::from(space()?).await.ok()?;
    let number = |name: &str| Reflect::get(&said, &name.into()).ok()?.as_f64();
    Some((number("usage")?, number("quota")?))
}

/// The text of a backup.
///
/// # Errors
///
/// Why not, as the end of a sentence.
pub async fn read_backup(file: File) -> Result<String, String> {
    if file.size() > MOST_BACKUP_BYTES {
        return Err(say::BACKUP_TOO_LARGE.into());
    }
    let text = JsFuture::from(file.text()).await.ok().and_then(|text| text.as_string());
    text.ok_or_else(|| say::BACKUP_UNREAD.into())
}
