//! The harp to scale on paper that can be looked at from near, with what lies over it.

use std::sync::Arc;

use leptos::{html, prelude::*, svg};
use web_sys::{Element, Event, KeyboardEvent, WheelEvent};

use super::hand::{Hand, ZOOM};
use super::nodes::Nodes;
use crate::app::browser;
use crate::app::frame::Frame;
use crate::app::panels::curves::watch_size;
use crate::app::rows;
use crate::app::store::{Store, Window};
use crate::app::widgets::button::button;
use crate::app::widgets::list::{while_so, words};
use crate::charts::lofting::changes::{Change, changes};
use crate::charts::lofting::look::{Extent, Look};
use crate::charts::lofting::{self, over, svg as drawn};
use crate::words::{charts, drawing as say, papers, report};

/// What a wheel of one notch, about 100 pixels, makes larger or smaller.
const WHEEL: f64 = 0.0016;

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
    // Two fingers on the paper scroll nothing else and leave the page at its size.
    let two_fingers = move |event: Event| {
        if hand.is_pinch() {
            event.prevent_default();
        }
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
        let hint = match (hand.curve_drives(), browser::points_with_fingers()) {
            (true, _) => say::CURVE_DRIVES,
            (false, true) => say::FINGER_HINT,
            (false, false) => say::PIN_HINT,
        };
        let said = if caption.is_empty() { hint.into() } else { caption };
        let missing = scene.with(|scene| scene.holes.len() - scene.strings.len());
        if missing == 0 { said } else { say::missing(&said, &missing) }
    };
    let grip = Memo::new(move |_| {
        let scene = scene.read();
        let marked = scene.strings.iter().find(|string| string.index == cursor.get())?;
        (!hand.curve_drives()).then(|| look.get().pixel(marked.bridge))
    });
    view! {
        <div class="loft">
            <div class="tools" role="toolbar" aria-label=papers::DRAWING.said()>
                <span class="tool-group">
                    {button("tool", "loft-larger", say::LARGER_HINT.said(), say::LARGER.said(), move || hand.zoom(ZOOM, None))}
                    {button("tool", "loft-smaller", say::SMALLER_HINT.said(), say::SMALLER.said(), move || hand.zoom(1.0 / ZOOM, None))}
                    {button("tool", "loft-fit", say::FIT_HINT.said(), say::FIT.said(), move || hand.fit())}
                </span>
                <Over store=store/>
                {button("tool", "loft-details", say::DETAILS_HINT.said(), say::DETAILS.said(), move || if store.count_now() > 0 { store.window.set(Some(Window::Details)) })}
            </div>
            <div
                node_ref=paper
                class="loft-paper"
                class:near=move || store.paper.look.with(Option::is_some)
                class:over-pin=move || hand.over_pin.get()
                on:wheel=on_wheel
                on:pointerdown=move |event| hand.down(&event)
                on:pointermove=move |event| hand.moved(&event)
                on:pointerup=move |event| hand.up(&event)
                on:pointercancel=move |event| hand.cancel(&event)
                on:touchstart=move |event| two_fingers(event.into())
                on:touchmove=move |event| two_fingers(event.into())
                on:pointerleave=move |_| store.hover.set(None)
                on:dblclick=move |_| hand.twice()
            >
                <div
                    id="loft"
                    tabindex="0"
                    role="application"
                    aria-label=report::DRAWING_OF.said()
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
                    <p class="chart-empty">{charts::NOTHING_TO_DRAW.said()}</p>
                }.into_any())}
            </div>
            // Of a size of its own, so that its words lay out nothing else.
            <p class="readout" id="loft-readout"><span>{words(readout)}</span></p>
            <p class="hint" id="loft-hint">{words(hint)}</p>
            <p class="out-of-sight" role="status">{words(move || hand.said.get())}</p>
            <p class="out-of-sight" id="loft-help">
                {say::KEY_HELP.said()}
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
            view! { <option value=*key selected=move || store.paper.over.get() == *key>{words.said()}</option> }
        })
        .collect_view();
    view! {
        <label class="loft-over">
            {say::OVERLAY.said()} " "
            <select id="over" on:change=move |event| store.paper.over.set(over::kind(&event_target_value(&event)).0)>
                {options}
            </select>
        </label>
    }
}
