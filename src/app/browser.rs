//! The browser: storage, files, clipboard, address, printing, theme. Nothing else asks it for these.

use js_sys::{Array, Date, Math, Uint8Array};
use leptos::ev;
use leptos::prelude::*;
use wasm_bindgen::JsCast;
use wasm_bindgen::JsValue;
use wasm_bindgen::closure::Closure;
use wasm_bindgen_futures::JsFuture;
use web_sys::{
    Blob, BlobPropertyBag, File, HtmlAnchorElement, HtmlElement, HtmlTextAreaElement, Storage, Url,
};

/// The largest file that is read.
pub const LARGEST_FILE_BYTES: f64 = 5.0e6;

fn storage() -> Option<Storage> {
    window().local_storage().ok().flatten()
}

/// What is kept under a key.
pub fn kept(key: &str) -> Option<String> {
    storage()?.get_item(key).ok().flatten()
}

/// What is kept under a key for as long as this tab is open.
pub fn kept_in_tab(key: &str) -> Option<String> {
    window().session_storage().ok().flatten()?.get_item(key).ok().flatten()
}

/// Keeps a text for as long as this tab is open.
pub fn keep_in_tab(key: &str, text: &str) {
    if let Ok(Some(storage)) = window().session_storage() {
        let _ = storage.set_item(key, text);
    }
}

/// Whether the user answers a question with yes.
pub fn confirmed(question: &str) -> bool {
    window().confirm_with_message(question).unwrap_or(false)
}

/// Every key that begins with `prefix`.
pub fn kept_keys(prefix: &str) -> Vec<String> {
    let Some(storage) = storage() else { return Vec::new() };
    let count = storage.length().unwrap_or(0);
    let keys = (0..count).filter_map(|index| storage.key(index).ok().flatten());
    keys.filter(|key| key.starts_with(prefix)).collect()
}

/// Keeps a text; whether the browser took it.
pub fn keep(key: &str, text: &str) -> bool {
    storage().is_some_and(|storage| storage.set_item(key, text).is_ok())
}

/// Forgets what is kept under a key.
pub fn forget(key: &str) {
    if let Some(storage) = storage() {
        let _ = storage.remove_item(key);
    }
}

/// Calls `told` with the key and the new text when another tab keeps or forgets something.
pub fn on_kept_elsewhere(told: impl Fn(String, Option<String>) + 'static) {
    let _ = window_event_listener(ev::storage, move |event| {
        if let Some(key) = event.key() {
            told(key, event.new_value());
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

/// Day, month from 1 and year, here and now.
pub fn today() -> (u32, usize, u32) {
    let now = Date::new_0();
    (now.get_date(), now.get_month() as usize + 1, now.get_full_year())
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
        let _ = history.replace_state_with_url(&JsValue::NULL, "", Some(&address()));
    }
}

/// Calls `told` when the fragment changes.
pub fn on_fragment(told: impl Fn() + 'static) {
    let _ = window_event_listener(ev::hashchange, move |_| told());
}

/// Puts a text on the clipboard; whether that worked.
pub async fn copy(text: String) -> bool {
    let clipboard = window().navigator().clipboard();
    if !clipboard.is_undefined() && JsFuture::from(clipboard.write_text(&text)).await.is_ok() {
        return true;
    }
    copy_by_command(&text).unwrap_or(false)
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

/// Offers a text as a file.
pub fn offer_file(name: &str, media_type: &str, text: &str) {
    let _ = try_offer_file(name, media_type, &text.into());
}

/// Offers bytes as a file.
pub fn offer_bytes(name: &str, media_type: &str, bytes: &[u8]) {
    let _ = try_offer_file(name, media_type, &Uint8Array::from(bytes).into());
}

fn try_offer_file(name: &str, media_type: &str, content: &JsValue) -> Result<(), JsValue> {
    let options = BlobPropertyBag::new();
    options.set_type(media_type);
    let blob = Blob::new_with_str_sequence_and_options(&Array::of1(content), &options)?;
    let url = Url::create_object_url_with_blob(&blob)?;
    let link: HtmlAnchorElement = document().create_element("a")?.dyn_into()?;
    link.set_href(&url);
    link.set_download(name);
    link.click();
    Url::revoke_object_url(&url)
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
        return Err(format!(
            "{name} has {mb:.1} MB; a design or a table has at most 5 MB. Choose another file."
        ));
    }
    let text = JsFuture::from(file.text()).await.ok().and_then(|text| text.as_string());
    text.ok_or_else(|| format!("{name} could not be read. Choose it again, or another file."))
}

/// Opens the browser's print dialog.
pub fn print() {
    let _ = window().print();
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
        let _ = query.add_event_listener_with_callback("change", changed.as_ref().unchecked_ref());
        changed.forget(); // as long as the page
    }
}

/// Names the theme on the root element, where the style sheet looks for it.
pub fn set_theme(name: Option<&str>) {
    if let Some(root) = document().document_element() {
        let _ = match name {
            Some(name) => root.set_attribute("data-theme", name),
            None => root.remove_attribute("data-theme"),
        };
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

/// Brings an element into sight, by as little scrolling as it takes.
pub fn show(id: &str) {
    if let Some(element) = document().get_element_by_id(id) {
        let options = web_sys::ScrollIntoViewOptions::new();
        options.set_block(web_sys::ScrollLogicalPosition::Nearest);
        options.set_inline(web_sys::ScrollLogicalPosition::Nearest);
        element.scroll_into_view_with_scroll_into_view_options(&options);
    }
}

/// Scrolls an element back to its top, and not the page around it.
pub fn to_top(id: &str) {
    if let Some(element) = document().get_element_by_id(id) {
        element.set_scroll_top(0);
    }
}

/// Gives the keyboard to an element, when the page has been drawn anew, if no other element has it.
pub fn focus_if_lost(id: &'static str) {
    request_animation_frame(move || {
        let body = document().body().map(web_sys::Element::from);
        let active = document().active_element();
        if active.is_none() || active == body {
            focus(id);
        }
    });
}

/// Gives the keyboard to an element.
pub fn focus(id: &str) {
    let element = document().get_element_by_id(id);
    if let Some(element) = element.and_then(|e| e.dyn_into::<HtmlElement>().ok()) {
        let _ = element.focus();
    }
}
