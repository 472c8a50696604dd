//! The browser: storage, files, clipboard, address, printing, theme. Nothing else asks it for these.

use crate::words::page as say;
use js_sys::{Array, Date, Function, Math, Uint8Array};
use leptos::ev;
use leptos::prelude::*;
use thiserror::Error;
use wasm_bindgen::JsCast;
use wasm_bindgen::JsValue;
use wasm_bindgen::closure::Closure;
use wasm_bindgen_futures::JsFuture;
use web_sys::{
    Blob, BlobPropertyBag, File, HtmlAnchorElement, HtmlElement, HtmlInputElement,
    HtmlTextAreaElement, IdleRequestOptions, Url,
};

mod ear;
mod earlier;
mod hand;
mod kept;
mod sound;
mod tongue;

pub use self::ear::{Unheard, hear, hear_file, hear_no_more, listen_for, sound_tone, take_heard};
pub use self::earlier::{forget_states, note_state, states, take_states};
pub use self::hand::{may_sleep, on_fingers, points_with_fingers, show_on_small, stay_awake};
pub use self::kept::{
    StorageError, failing, forget, keep, keep_design, kept, kept_keys, last_open, leave_what_waits,
    next_state, note_open, on_keeping, opens_with_nothing, read_backup, room, steps, waits,
};
pub use self::sound::{bring_sound, play_sound, render_ahead, rest_sound, sound_file, stop_sound};

#[allow(unused_imports, reason = "as it says there")]
pub use self::tongue::fetch_language;
pub use self::tongue::{
    build, fetch_text, languages, name_notes_always, speak_always, speak_first,
};

/// The largest file that is read.
pub const LARGEST_FILE_BYTES: f64 = 5.0e6;

/// How long something may wait for the browser to be idle, in milliseconds.
const IDLE_WITHIN_MS: u32 = 1_000;

/// That the browser did what it was asked to. Only this file makes one.
#[derive(Debug)]
pub struct Worked(());

/// That the browser took a file for its downloads. Whether it was saved there no page is told.
#[derive(Debug)]
pub struct Handed {
    name: String,
}

impl Handed {
    /// What can be said of it.
    pub fn words(&self) -> String {
        say::handed(&self.name)
    }
}

/// That the browser did not take a file.
#[derive(Clone, Debug, PartialEq, Eq, Error)]
#[error("{}", say::not_handed(.name))]
pub struct NotHanded {
    name: String,
}

/// For what is done for comfort alone, and where the page goes on as well if the browser cannot.
fn if_it_can<T>(_: Result<T, JsValue>) {}

/// Whether the user answers a question with yes.
pub fn confirmed(question: &str) -> bool {
    window().confirm_with_message(question).unwrap_or(false)
}

/// Calls `told` when a newer version of the program is kept, and opens next time.
pub fn on_newer(told: impl Fn() + 'static) {
    let _ = window_event_listener_untyped("stringloft-newer", move |_| told());
}

/// Calls `act` when the browser has nothing else to do, within a second; at once where it cannot say when.
pub fn when_idle(act: impl FnOnce() + 'static) {
    let act = Closure::once_into_js(act);
    let act: &Function = act.unchecked_ref();
    let options = IdleRequestOptions::new();
    options.set_timeout(IDLE_WITHIN_MS);
    if window().request_idle_callback_with_options(act, &options).is_err() {
        if_it_can(act.call0(&JsValue::NULL));
    }
}

/// Waits until the browser has nothing else to do, a second at most.
pub async fn idle() {
    let waiting = js_sys::Promise::new(&mut |resolve, _| {
        when_idle(move || if_it_can(resolve.call0(&JsValue::NULL)));
    });
    if_it_can(JsFuture::from(waiting).await);
}

/// Calls `told` when the first screen stands and what it takes to work offline is kept: what can wait may come now.
/// Where the user pays for each byte it never does. `src/shell/offline.js` says when.
pub fn on_leisure(told: impl Fn() + 'static) {
    let _ = window_event_listener_untyped("stringloft-idle", move |_| told());
}

/// Calls `told` with true when the page is left or goes out of sight, as it may not come back, and with false when it is
/// seen again.
pub fn on_leaving(told: impl Fn(bool) + Clone + 'static) {
    let seen = told.clone();
    let _ = window_event_listener(ev::pagehide, move |_| told(true));
    let _ = window_event_listener(ev::visibilitychange, move |_| seen(document().hidden()));
}

/// What stands in the field of the cell that is being typed into.
pub fn typed() -> Option<String> {
    let field = document().query_selector(".cell-field").ok()??;
    Some(field.unchecked_into::<HtmlInputElement>().value())
}

/// Has the browser ask the user before the page is left while `lost` says that something would be lost.
pub fn ask_before_leaving(lost: impl Fn() -> bool + 'static) {
    let _ = window_event_listener(ev::beforeunload, move |event| {
        if lost() {
            event.prevent_default();
            event.set_return_value("lost"); // for browsers that ask only then; none shows it
        }
    });
}

/// A name that no other design has: the time and a random part.
pub fn fresh_name() -> String {
    #[expect(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "milliseconds and a number below 1e6, both positive and small"
    )]
    let (time, chance) = (Date::now() as u64, (Math::random() * 1e6) as u64);
    format!("{time:x}{chance:05x}")
}

/// The fragment of the address, without `#`.
pub fn fragment() -> String {
    window().location().hash().unwrap_or_default().trim_start_matches('#').to_owned()
}

/// The address of this page without its fragment.
pub fn address() -> String {
    let href = window().location().href().unwrap_or_default();
    href.split('#').next().unwrap_or_default().to_owned()
}

/// Whether the page is served by this very computer, so that its address means nothing elsewhere.
pub fn is_local() -> bool {
    let host = window().location().hostname().unwrap_or_default();
    matches!(host.as_str(), "localhost" | "127.0.0.1" | "[::1]" | "")
}

/// Takes the fragment off the address, with no step in the browser's history.
pub fn drop_fragment() {
    if let Ok(history) = window().history() {
        if_it_can(history.replace_state_with_url(&JsValue::NULL, "", Some(&address())));
    }
}

/// Calls `told` when the fragment changes.
pub fn on_fragment(told: impl Fn() + 'static) {
    let _ = window_event_listener(ev::hashchange, move |_| told());
}

/// Puts a text on the clipboard; `None` where the browser does not let the page.
pub async fn copy(text: String) -> Option<Worked> {
    let clipboard = window().navigator().clipboard();
    if !clipboard.is_undefined() && JsFuture::from(clipboard.write_text(&text)).await.is_ok() {
        return Some(Worked(()));
    }
    copy_by_command(&text).filter(|done| *done).map(|_| Worked(()))
}

/// The older way to the clipboard, for pages that are not served securely.
fn copy_by_command(text: &str) -> Option<bool> {
    let page = document();
    let area: HtmlTextAreaElement = page.create_element("textarea").ok()?.dyn_into().ok()?;
    area.set_value(text);
    let body = page.body()?;
    body.append_child(&area).ok()?;
    area.select();
    let done = page.unchecked_ref::<CommandDocument>().exec_command("copy").unwrap_or(false);
    area.remove();
    Some(done)
}

#[wasm_bindgen::prelude::wasm_bindgen]
extern "C" {
    type CommandDocument;
    #[wasm_bindgen(method, catch, js_name = execCommand)]
    fn exec_command(this: &CommandDocument, name: &str) -> Result<bool, JsValue>;
}

/// Hands a text to the browser as a file.
///
/// # Errors
///
/// When the browser does not take it.
pub fn offer_file(name: &str, media_type: &str, text: &str) -> Result<Handed, NotHanded> {
    offer(name, media_type, &text.into())
}

/// Hands bytes to the browser as a file.
///
/// # Errors
///
/// When the browser does not take them.
pub fn offer_bytes(name: &str, media_type: &str, bytes: &[u8]) -> Result<Handed, NotHanded> {
    offer(name, media_type, &Uint8Array::from(bytes).into())
}

/// Hands what the browser itself made to it as a file.
///
/// # Errors
///
/// When the browser does not take it.
pub fn offer_blob(name: &str, blob: &Blob) -> Result<Handed, NotHanded> {
    offer(name, &blob.type_(), blob)
}

fn offer(name: &str, media_type: &str, content: &JsValue) -> Result<Handed, NotHanded> {
    let name = name.to_owned();
    match try_offer(&name, media_type, content) {
        Ok(()) => Ok(Handed { name }),
        Err(_) => Err(NotHanded { name }),
    }
}

fn try_offer(name: &str, media_type: &str, content: &JsValue) -> Result<(), JsValue> {
    let options = BlobPropertyBag::new();
    options.set_type(media_type);
    let blob = Blob::new_with_str_sequence_and_options(&Array::of1(content), &options)?;
    let url = Url::create_object_url_with_blob(&blob)?;
    let link: HtmlAnchorElement = document().create_element("a")?.dyn_into()?;
    link.set_href(&url);
    link.set_download(name);
    link.click();
    // The file is with the browser by now.
    if_it_can(Url::revoke_object_url(&url));
    Ok(())
}

/// The text of a file.
///
/// # Errors
///
/// A sentence, when the file is too large or cannot be read as text.
pub async fn read_file(file: File) -> Result<String, String> {
    let name = file.name();
    if file.size() > LARGEST_FILE_BYTES {
        let mb = file.size() / 1e6;
        return Err(say::file_too_large(&format!("{mb:.1}"), &name));
    }
    let text = JsFuture::from(file.text()).await.ok().and_then(|text| text.as_string());
    text.ok_or_else(|| say::file_unread(&name))
}

/// Opens the browser's print dialog; `None` where it does not. Whether anything is printed no page is told.
pub fn print() -> Option<Worked> {
    window().print().ok().map(|()| Worked(()))
}

/// Milliseconds since the page was opened; 0 where the browser has no such clock.
pub fn now_ms() -> f64 {
    window().performance().map_or(0.0, |clock| clock.now())
}

/// Device pixels for each pixel of the page.
pub fn pixel_ratio() -> f64 {
    window().device_pixel_ratio().clamp(0.5, 8.0)
}

/// Whether the system asks for dark colours.
pub fn prefers_dark() -> bool {
    matches!(window().match_media("(prefers-color-scheme: dark)"), Ok(Some(query)) if query.matches())
}

/// Calls `told` whenever the system changes between light and dark.
pub fn on_scheme(told: impl Fn(bool) + 'static) {
    if let Ok(Some(query)) = window().match_media("(prefers-color-scheme: dark)") {
        let changed = Closure::<dyn Fn()>::new(move || told(prefers_dark()));
        if_it_can(
            query.add_event_listener_with_callback("change", changed.as_ref().unchecked_ref()),
        );
        changed.forget(); // as long as the page
    }
}

/// Names the theme on the root element, where the style sheet looks for it.
pub fn set_theme(name: Option<&str>) {
    if let Some(root) = document().document_element() {
        if_it_can(match name {
            Some(name) => root.set_attribute("data-theme", name),
            None => root.remove_attribute("data-theme"),
        });
    }
}

/// The title of the window.
pub fn set_title(title: &str) {
    document().set_title(title);
}

/// Takes the shell away that was painted before the app came.
pub fn remove_shell() {
    if let Some(shell) = document().get_element_by_id("shell") {
        shell.remove();
    }
}

/// Puts HTML into an element of the page. The HTML is our own; what users typed in it is escaped.
pub fn fill(id: &str, html: &str, class: &str) {
    if let Some(element) = document().get_element_by_id(id) {
        element.set_inner_html(html);
        element.set_class_name(class);
    }
}

/// Makes the pages of a paper the main part of the page, with a name, which the keyboard can scroll: the app lies still
/// below it. Without a name it is that no more.
pub fn name_paper(id: &str, name: Option<&str>) {
    let Some(element) = document().get_element_by_id(id) else { return };
    let role = name.map(|_| "main");
    let stop = name.map(|_| "0");
    for (attribute, value) in [("role", role), ("aria-label", name), ("tabindex", stop)] {
        if_it_can(match value {
            Some(value) => element.set_attribute(attribute, value),
            None => element.remove_attribute(attribute),
        });
    }
}

/// Lets an element that lies over the page begin so many pixels below its top.
pub fn stand_below(id: &str, pixels: i32) {
    let element =
        document().get_element_by_id(id).and_then(|one| one.dyn_into::<HtmlElement>().ok());
    if let Some(element) = element {
        if_it_can(element.style().set_property("top", &format!("{pixels}px")));
    }
}

/// Brings an element into sight, by as little scrolling as it takes.
pub fn show(id: &str) {
    if let Some(element) = document().get_element_by_id(id) {
        let options = web_sys::ScrollIntoViewOptions::new();
        options.set_block(web_sys::ScrollLogicalPosition::Nearest);
        options.set_inline(web_sys::ScrollLogicalPosition::Nearest);
        element.scroll_into_view_with_scroll_into_view_options(&options);
    }
}

/// Scrolls an element back to its upper left corner, and not the page around it.
pub fn to_top(id: &str) {
    if let Some(element) = document().get_element_by_id(id) {
        element.set_scroll_top(0);
        element.set_scroll_left(0);
    }
}

/// Gives the keyboard to an element, when the page has been drawn again, if no other element has it.
pub fn focus_if_lost(id: &'static str) {
    request_animation_frame(move || {
        let body = document().body().map(web_sys::Element::from);
        let active = document().active_element();
        if active.is_none() || active == body {
            focus(id);
        }
    });
}

/// Takes the keyboard from the field of a window that has it, so that what was typed there is taken in.
pub fn leave_window_field() {
    if let Some(field) = document().active_element()
        && matches!(field.closest("dialog.window"), Ok(Some(_)))
        && let Ok(field) = field.dyn_into::<HtmlElement>()
    {
        if_it_can(field.blur());
    }
}

/// Gives the keyboard to an element.
pub fn focus(id: &str) {
    let element = document().get_element_by_id(id);
    if let Some(element) = element.and_then(|e| e.dyn_into::<HtmlElement>().ok()) {
        if_it_can(element.focus());
    }
}
