//! What the hand at the device asks: whether it points with fingers, and a screen that stays lit.

use std::cell::RefCell;

use js_sys::{Function, Promise, Reflect};
use leptos::prelude::{document, window};
use wasm_bindgen::closure::Closure;
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::JsFuture;
use web_sys::{ScrollIntoViewOptions, ScrollLogicalPosition};

/// What the main pointer is, in the words of a style sheet.
const FINGERS: &str = "(pointer:coarse)";

/// Whether the main pointer is a finger.
pub fn points_with_fingers() -> bool {
    matches!(window().match_media(FINGERS), Ok(Some(query)) if query.matches())
}

/// Calls `told` whenever the main pointer becomes a finger, or is none any more.
pub fn on_fingers(told: impl Fn(bool) + 'static) {
    if let Ok(Some(query)) = window().match_media(FINGERS) {
        let changed = Closure::<dyn Fn()>::new(move || told(points_with_fingers()));
        let _ = query.add_event_listener_with_callback("change", changed.as_ref().unchecked_ref());
        changed.forget(); // as long as the page
    }
}

/// Brings an element to the upper edge where the page is laid out for a small screen, which shows one thing at a time.
pub fn show_on_small(id: &str) {
    let small = window().match_media("(max-width: 820px)");
    if let (Ok(Some(query)), Some(element)) = (small, document().get_element_by_id(id))
        && query.matches()
    {
        let options = ScrollIntoViewOptions::new();
        options.set_block(ScrollLogicalPosition::Start);
        element.scroll_into_view_with_scroll_into_view_options(&options);
    }
}

thread_local! {
    /// What keeps the screen lit, and whether that is wanted.
    static LIT: RefCell<(Option<JsValue>, bool)> = const { RefCell::new((None, false)) };
}

/// Keeps the screen lit until [`may_sleep`] is called. Not every browser can do it, and nothing is told where one does
/// not.
pub async fn stay_awake() {
    LIT.with_borrow_mut(|lit| lit.1 = true);
    let lock = Reflect::get(&window().navigator(), &"wakeLock".into());
    let asked = lock.ok().and_then(|lock| call(&lock, "request", &"screen".into()));
    let Some(asked) = asked else { return };
    let Ok(came) = JsFuture::from(asked.unchecked_into::<Promise>()).await else { return };
    // It may be wanted no more by now, or come twice.
    let left = LIT.with_borrow_mut(|lit| if lit.1 { lit.0.replace(came) } else { Some(came) });
    left.inspect(let_go);
}

/// Lets the screen go dark again.
pub fn may_sleep() {
    let left = LIT.with_borrow_mut(|lit| {
        lit.1 = false;
        lit.0.take()
    });
    left.inspect(let_go);
}

fn let_go(lit: &JsValue) {
    let _ = call(lit, "release", &JsValue::UNDEFINED);
}

/// Calls a function of something by its name; `None` where it has none or it fails.
pub(super) fn call(of: &JsValue, name: &str, with: &JsValue) -> Option<JsValue> {
    if of.is_undefined() {
        return None;
    }
    let act = Reflect::get(of, &name.into()).ok().filter(|act| !act.is_undefined())?;
    act.unchecked_into::<Function>().call1(of, with).ok()
}
