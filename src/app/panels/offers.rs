//! The list below a String cell while it is typed into, after the ARIA pattern of a combobox. It comes with a part
//! and watches from outside, so that typing works before it is here.

use leptos::mount::mount_to;
use leptos::prelude::*;
use wasm_bindgen::JsCast;
use wasm_bindgen::closure::Closure;
use web_sys::{Event, HtmlElement, HtmlInputElement, KeyboardEvent, MouseEvent};

use super::chart_acts::act;
use super::chart_keys::Ask;
use crate::app::grid::{Shown, Step};
use crate::app::rows::{Offer, offers};
use crate::app::store::Store;
use crate::app::widgets::list::words;
use crate::app::{browser, stock_shelf};
use crate::design::edit::Column;
use crate::words::details as say;

/// The name of the list in the page.
const LIST: &str = "offers";
/// Room that the list wants below its cell, in pixels; else it stands above.
const ROOM: f64 = 240.0;
/// Room that it wants to the right of where its cell begins.
const NARROW: f64 = 480.0;

#[derive(Clone, Copy)]
struct Offers {
    store: Store,
    /// What is offered; nothing while the list is closed.
    found: RwSignal<Vec<Offer>>,
    /// The one that the keys came to.
    active: RwSignal<Option<usize>>,
}

/// Waits for a String cell to be typed into. Called once.
pub fn stand_by(store: Store) {
    stock_shelf::follow(store);
    let main = document().query_selector("main").ok().flatten();
    let Some(main) = main.and_then(|main| main.dyn_into().ok()) else { return };
    let make = move || {
        let offers =
            Offers { store, found: RwSignal::new(Vec::new()), active: RwSignal::new(None) };
        offers.listen();
        offers.view()
    };
    mount_to(main, make).forget();
}

impl Offers {
    fn listen(self) {
        Effect::new(move |_| {
            let typing = self.store.typing.get();
            self.close();
            // The field is there in the next frame.
            request_animation_frame(move || {
                if let (Some(typing), Some(field)) = (typing, self.field()) {
                    for (name, value) in [
                        ("role", "combobox"),
                        ("aria-autocomplete", "list"),
                        ("aria-expanded", "false"),
                        ("aria-label", say::STRING.said()),
                        ("aria-controls", LIST),
                    ] {
                        let _ = field.set_attribute(name, value);
                    }
                    if typing.quick {
                        self.open(&field.value());
                    }
                }
            });
        });
        Effect::new(move |_| {
            let (open, active) = (!self.found.read().is_empty(), self.active.get());
            if let Some(field) = self.field() {
                let _ = field.set_attribute("aria-expanded", if open { "true" } else { "false" });
                let _ = match active {
                    Some(place) => {
                        field.set_attribute("aria-activedescendant", &format!("offer-{place}"))
                    }
                    None => field.remove_attribute("aria-activedescendant"),
                };
            }
        });
        let heard = Closure::<dyn Fn(Event)>::new(move |event: Event| self.hear(&event));
        for kind in ["keydown", "input", "scroll"] {
            // Before the field hears it.
            let _ = document().add_event_listener_with_callback_and_bool(
                kind,
                heard.as_ref().unchecked_ref(),
                true,
            );
        }
        // It is heard for as long as the page lives.
        heard.forget();
    }

    fn hear(self, event: &Event) {
        let of_field = |field: &HtmlInputElement| {
            event.target().is_some_and(|target| &target == field.as_ref() as &web_sys::EventTarget)
        };
        match (event.dyn_ref::<KeyboardEvent>(), event.type_().as_str()) {
            (_, "scroll") => {
                let target =
                    event.target().and_then(|target| target.dyn_into::<HtmlElement>().ok());
                if target.is_none_or(|target| target.id() != LIST) {
                    self.close();
                }
            }
            (keys, _) => {
                let Some(field) = self.field().filter(of_field) else { return };
                match keys {
                    None => self.open(&field.value()),
                    Some(keys) if !keys.is_composing() && self.key(keys) => {
                        event.prevent_default();
                        event.stop_propagation();
                    }
                    Some(_) => {}
                }
            }
        }
    }

    /// What a key does to the list; whether it did anything.
    fn key(self, event: &KeyboardEvent) -> bool {
        let count = self.found.with_untracked(Vec::len);
        let active = self.active.get_untracked();
        let taken = if event.ctrl_key() || event.meta_key() { None } else { active };
        match (event.key().as_str(), taken) {
            ("ArrowDown", _) if count == 0 => {
                let quick = self.store.typing.read_untracked().as_ref().is_some_and(|t| t.quick);
                if !quick || event.alt_key() {
                    self.open("");
                }
                return !quick || event.alt_key();
            }
            _ if count == 0 => return false,
            ("ArrowDown", _) => self.go_to(Some(active.map_or(0, |place| (place + 1) % count))),
            ("ArrowUp", _) => {
                self.go_to(Some(active.unwrap_or(count).checked_sub(1).unwrap_or(count - 1)));
            }
            ("Escape", _) => self.close(),
            ("Enter", Some(place)) => {
                let step = if event.shift_key() { Step::Up } else { Step::Down };
                self.take(place, &Ask::Move { step, extend: false });
            }
            ("Tab", Some(place)) => self.take(place, &Ask::Tab { forward: !event.shift_key() }),
            _ => return false,
        }
        true
    }

    fn go_to(self, place: Option<usize>) {
        self.active.set(place);
        if let Some(place) = place {
            browser::show(&format!("offer-{place}"));
        }
    }

    /// Takes what is offered, leaves the field, and goes on in the chart.
    fn take(self, place: usize, on: &Ask) {
        let Some(offer) = self.found.with_untracked(|found| found.get(place).cloned()) else {
            return;
        };
        self.store.typing.set(None);
        self.store.send(&offer.edit);
        self.store.close_step();
        act(self.store, on);
        browser::focus("chart");
    }

    fn close(self) {
        if !self.found.with_untracked(Vec::is_empty) {
            self.active.set(None);
            self.found.set(Vec::new());
        }
    }

    /// Offers what matches a text, at the field.
    fn open(self, text: &str) {
        let store = self.store;
        let row = store.selection.get_untracked().cursor.row;
        let found = store.design.with_untracked(|design| {
            store.resolved.with_untracked(|resolved| {
                offers(design, resolved, &store.shop.read_untracked(), row, text)
            })
        });
        self.active.set(None);
        self.found.set(found);
        self.put_at_field();
    }

    /// The field of a String cell, while there is one.
    fn field(self) -> Option<HtmlInputElement> {
        let column = self.store.selection.get_untracked().cursor.column;
        let shown = self.store.column_at(column);
        let field = document().query_selector(".cell-field").ok()??;
        (shown == Some(Shown::Typed(Column::MakeUp))).then(|| field.dyn_into().ok())?
    }

    /// Below the field, or above it where there is more room.
    fn put_at_field(self) {
        let list = document().get_element_by_id(LIST);
        let list = list.and_then(|list| list.dyn_into::<HtmlElement>().ok());
        let (Some(field), Some(list)) = (self.field(), list) else { return };
        let place = field.get_bounding_client_rect();
        let size = document().document_element();
        let (width, height) =
            size.map_or((0, 0), |page| (page.client_width(), page.client_height()));
        let (width, height) = (f64::from(width), f64::from(height));
        let below = height - place.bottom();
        let (top, bottom, room) = if below < ROOM && place.top() > below {
            ("auto".to_owned(), format!("{:.0}px", height - place.top() + 2.0), place.top())
        } else {
            (format!("{:.0}px", place.bottom() + 2.0), "auto".to_owned(), below)
        };
        let left = place.left().min((width - NARROW).max(6.0));
        let style = list.style();
        for (name, value) in [
            ("top", top),
            ("bottom", bottom),
            ("left", format!("{left:.0}px")),
            ("max-width", format!("{:.0}px", width - left - 6.0)),
            ("max-height", format!("{:.0}px", (room - 10.0).min(320.0))),
        ] {
            let _ = style.set_property(name, &value);
        }
    }

    fn view(self) -> AnyView {
        let lines = move || {
            let line = |(place, offer): (usize, Offer)| {
                let Offer { words, more, gives, is_stock, .. } = offer;
                let on = move || self.active.get() == Some(place);
                view! {
                    <li
                        id=format!("offer-{place}")
                        role="option"
                        class="offer"
                        class:of-stock=is_stock
                        aria-selected=move || if on() { "true" } else { "false" }
                        on:click=move |_| self.take(place, &Ask::Move { step: Step::Down, extend: false })
                    >
                        <span>{words}" "<span class="hint">{more}</span></span>
                        <span>{gives}</span>
                    </li>
                }
                .into_any()
            };
            self.found.get().into_iter().enumerate().map(line).collect::<Vec<_>>()
        };
        let told = move || match self.found.read().len() {
            0 => String::new(),
            count => say::matches(&count),
        };
        view! {
            // The keyboard stays in the field.
            <ul
                id=LIST
                role="listbox"
                aria-label=say::OFFERS.said()
                hidden=move || self.found.read().is_empty()
                on:mousedown=|event: MouseEvent| event.prevent_default()
            >
                {lines}
            </ul>
            <p class="out-of-sight" role="status">{words(told)}</p>
        }
        .into_any()
    }
}
