//! The harp to scale on paper that can be looked at from near, with what lies over it.

use std::sync::Arc;

use leptos::{html, prelude::*, svg};
use web_sys::{Element, KeyboardEvent, WheelEvent};

use super::hand::{CURVE_DRIVES, Hand, ZOOM};
use super::nodes::Nodes;
use crate::app::frame::Frame;
use crate::app::panels::curves::watch_size;
use crate::app::rows;
use crate::app::store::{Store, Window};
use crate::app::widgets::button::button;
use crate::app::widgets::list::{while_so, words};
use crate::charts::lofting::changes::{Change, changes};
use crate::charts::lofting::look::{Extent, Look};
use crate::charts::lofting::{self, over, svg as drawn};

/// What a wheel of one notch, about 100 pixels, makes larger or smaller.
const WHEEL: f64 = 0.0016;
const HINT: &str =
    "Drag a bridge pin and its string grows. The wheel zooms; dragging moves the paper.";

/// The paper with its tools above and its words below.
#[component]
pub fn Picture(store: Store) -> impl IntoView {
    let Frame { band, borne } = Frame::here();
    let scene = Memo::new(move |_| {
        let (design, resolved) = (store.design.read(), store.resolved.read());
        Arc::new(lofting::scene(&design, &resolved, &store.analysis.read(), &band.read()))
    });
    let cursor = Memo::new(move |_| store.selection.get().cursor.row);
    let overlay = Memo::new(move |_| {
        let (design, resolved) = (store.design.read(), store.resolved.read());
        let (analysis, band, scene) = (store.analysis.read(), band.read(), scene.read());
        let (design, resolved, analysis) = (&**design, &**resolved, &**analysis);
        let (band, scene, marked) = (&**band, &**scene, cursor.get());
        let kind = over::kind(store.paper.over.get());
        let borne = over::is_load(kind.0).then(|| borne.get());
        let bearing = borne.as_ref().map(|borne| &borne.bearing);
        let given = over::Given { design, resolved, analysis, band, scene, bearing, marked };
        Arc::new(kind.2(&given))
    });
    let extent = Memo::new(move |_| {
        let scene = scene.with(|scene| scene.extent)?;
        Some(overlay.with(|overlay| over::extent(overlay)).map_or(scene, |over| over.with(scene)))
    });
    let look = Memo::new(move |_| {
        store.paper.look.get().unwrap_or_else(|| {
            let nothing = Extent { left: 0.0, right: 100.0, bottom: 0.0, top: 100.0 };
            Look::fit(extent.get().unwrap_or(nothing), store.paper.size.get())
        })
    });
    let scale = Memo::new(move |_| look.get().px_per_mm);
    let hand = Hand::new(store, scene, look);
    let layers = [NodeRef::<svg::G>::new(), NodeRef::new(), NodeRef::new(), NodeRef::new()];
    layer(layers[0], move || drawn::scene_text(&scene.read(), scale.get()));
    layer(layers[3], move || drawn::letters_text(&scene.read(), scale.get()));
    layer(layers[1], move || drawn::overlay_text(&overlay.read(), scale.get()));
    // Drawn apart, so that the pointer on its way draws no harp again.
    layer(layers[2], move || {
        let (marked, pointed) = (cursor.get(), store.hover.get());
        let analysis = store.analysis.read();
        let index = pointed.unwrap_or(marked);
        let unit = store.design.with(|design| design.units.length);
        // What lies over the drawing has words of its own.
        let word = if pointed.is_some() || store.paper.over.get() == "none" {
            rows::number_and_length(&analysis, unit, index)
        } else {
            String::new()
        };
        drawn::marks_text(&scene.read(), scale.get(), Some(marked), pointed, &word)
    });
    let paper = NodeRef::<html::Div>::new();
    paper.on_load(move |element| {
        let measured = element.clone();
        watch_size(&element, move || {
            let size = (f64::from(measured.client_width()), f64::from(measured.client_height()));
            if size.0 > 0.0 && store.paper.size.get_untracked() != size {
                store.paper.size.set(size);
            }
        });
    });
    let on_wheel = move |event: WheelEvent| {
        event.prevent_default();
        let Some(element) = paper.get_untracked() else { return };
        let corner = Element::get_bounding_client_rect(&element);
        let at = (
            f64::from(event.client_x()) - corner.left(),
            f64::from(event.client_y()) - corner.top(),
        );
        let lines = if event.delta_mode() == WheelEvent::DOM_DELTA_LINE { 16.0 } else { 1.0 };
        let by = (event.delta_y() * lines).clamp(-400.0, 400.0);
        hand.zoom((-by * WHEEL).exp(), Some(at));
    };
    let on_keys = move |event: KeyboardEvent| {
        if hand.key(&event) {
            event.prevent_default();
        }
    };
    let readout = move || {
        let index = store.hover.get().unwrap_or_else(|| cursor.get());
        let units = store.design.with(|design| design.units);
        rows::in_short(&store.analysis.read(), &units, index)
    };
    let empty = move || scene.with(|scene| scene.strings.is_empty());
    let hint = move || {
        if empty() {
            return String::new();
        }
        let caption = overlay.with(|overlay| overlay.caption.clone());
        let hint = if hand.curve_drives() { CURVE_DRIVES } else { HINT };
        let missing = scene.with(|scene| scene.holes.len() - scene.strings.len());
        let missing = match missing {
            0 => String::new(),
            1 => " One string is left out, as it has no length that can be used.".to_owned(),
            count => {
                format!(" {count} strings are left out, as they have no lengths that can be used.")
            }
        };
        format!("{}{missing}", if caption.is_empty() { hint } else { &caption })
    };
    let grip = Memo::new(move |_| {
        let scene = scene.read();
        let marked = scene.strings.iter().find(|string| string.index == cursor.get())?;
        (!hand.curve_drives()).then(|| look.get().pixel(marked.bridge))
    });
    view! {
        <div class="loft">
            <div class="tools" role="toolbar" aria-label="Drawing">
                <span class="tool-group">
                    {button("tool", "loft-larger", "Zoom in (+)", "Larger", move || hand.zoom(ZOOM, None))}
                    {button("tool", "loft-smaller", "Zoom out (-)", "Smaller", move || hand.zoom(1.0 / ZOOM, None))}
                    {button("tool", "loft-fit", "The whole harp (0)", "Fit", move || hand.fit())}
                </span>
                <Over store=store/>
                {button("tool", "loft-details", "Every figure of the marked string (Enter)", "Details", move || if store.count_now() > 0 { store.window.set(Some(Window::Details)) })}
            </div>
            <div
                node_ref=paper
                class="loft-paper"
                class:near=move || store.paper.look.with(Option::is_some)
                class:over-pin=move || hand.over_pin.get()
                on:wheel=on_wheel
                on:pointerdown=move |event| hand.down(&event)
                on:pointermove=move |event| hand.moved(&event)
                on:pointerup=move |_| hand.up()
                on:pointercancel=move |_| { hand.give_up(); }
                on:pointerleave=move |_| store.hover.set(None)
                on:dblclick=move |_| if store.hover.with_untracked(Option::is_some) { store.window.set(Some(Window::Details)) }
            >
                <div
                    id="loft"
                    tabindex="0"
                    role="application"
                    aria-label="Drawing of the harp from the side"
                    aria-describedby="loft-help"
                    on:keydown=on_keys
                >
                    <svg aria-hidden="true" viewBox=move || look.get().view_box(store.paper.size.get())>
                        <g node_ref=layers[0]></g>
                        <g node_ref=layers[3]></g>
                        <g class="over" node_ref=layers[1]></g>
                        <g class="marks" node_ref=layers[2]></g>
                    </svg>
                </div>
                // A finger scrolls the page, but not from here.
                <div
                    class="pin-grip"
                    class:off=move || grip.get().is_none()
                    style:left=move || format!("{:.1}px", grip.get().unwrap_or_default().0)
                    style:top=move || format!("{:.1}px", grip.get().unwrap_or_default().1)
                ></div>
                <Nodes hand=hand/>
                {while_so(empty, || view! {
                    <p class="chart-empty">"There is nothing to draw yet. Give the strings their lengths first."</p>
                }.into_any())}
            </div>
            <p class="readout" id="loft-readout">{words(readout)}</p>
            <p class="hint" id="loft-hint">{words(hint)}</p>
            <p class="out-of-sight" role="status">{words(move || hand.said.get())}</p>
            <p class="out-of-sight" id="loft-help">
                "Page up and down choose a string, Alt with the arrow up or down makes it longer or shorter. Plus, minus and 0 zoom in, zoom out and show the whole, the arrow keys move the paper, Enter opens the details."
            </p>
        </div>
    }
}

/// Puts a text into a group of the picture whenever it changes: only what differs, where the elements are the same.
fn layer(group: NodeRef<svg::G>, text: impl Fn() -> String + 'static) {
    let text: Box<dyn Fn() -> String> = Box::new(text);
    Effect::new(move |before: Option<String>| {
        let Some(group) = group.get() else { return String::new() };
        let now = text();
        match before.and_then(|before| changes(&before, &now)) {
            Some(changes) => mend(&group, &changes),
            None => Element::set_inner_html(&group, &now),
        }
        now
    });
}

/// Makes the changes in the elements of a group.
fn mend(group: &Element, changes: &[Change<'_>]) {
    let elements = group.get_elements_by_tag_name("*");
    for Change { element, attribute, now } in changes {
        let element = u32::try_from(*element).ok().and_then(|place| elements.item(place));
        let Some(element) = element else { continue };
        match attribute {
            // The names are those that were read before, and so names of attributes.
            Some(name) => drop(element.set_attribute(name, now)),
            None => element.set_inner_html(now),
        }
    }
}

/// What is shown over the drawing.
#[component]
fn Over(store: Store) -> impl IntoView {
    let options = over::OVER
        .iter()
        .map(|(key, words, _)| {
            view! { <option value=*key selected=move || store.paper.over.get() == *key>{*words}</option> }
        })
        .collect_view();
    view! {
        <label class="loft-over">
            "Overlay "
            <select id="over" on:change=move |event| store.paper.over.set(over::kind(&event_target_value(&event)).0)>
                {options}
            </select>
        </label>
    }
}
