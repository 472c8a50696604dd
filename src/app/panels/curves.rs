//! The curves across the compass and the strings to scale, with the cross-hair that they share
//! with the string chart.

use std::sync::Arc;

use leptos::html;
use leptos::prelude::*;
use plotters::drawing::IntoDrawingArea;
use wasm_bindgen::JsCast;
use wasm_bindgen::closure::Closure;
use web_sys::{HtmlCanvasElement, HtmlElement, MouseEvent, ResizeObserver};

use super::awaited::lazy_menu;
use super::chart_acts::go_to;
use crate::app::canvas::paint;
use crate::app::rows;
use crate::app::store::{Part, Progress, Store};
use crate::app::widgets::list::words;
use crate::app::{browser, grid::Selection};
use crate::charts::compass::Compass;
use crate::charts::palette::Palette;
use crate::charts::pen::{Medium, Style};
use crate::charts::recorded::{Recorded, Recorder};
use crate::charts::series::Curves;
use crate::charts::{band, draw};
use crate::engine::findings::Weight;
use crate::words::curves as say;

/// Curves and band, one above the other.
#[component]
pub fn CurvesPanel(store: Store) -> impl IntoView {
    let frame = NodeRef::<html::Div>::new();
    let (upper, lower) = (NodeRef::<html::Canvas>::new(), NodeRef::<html::Canvas>::new());
    let sizes = RwSignal::new(Sizes::default());
    frame.on_load(move |element| {
        watch_size(&element, move || {
            let now =
                Sizes::measured(upper.get_untracked().as_ref(), lower.get_untracked().as_ref());
            if sizes.get_untracked() != now {
                sizes.set(now);
            }
        });
    });
    let tolerances = RwSignal::new(false);
    // Ten times the work of the figures themselves, so only where it is looked at, by a part that comes later.
    let spreads = Memo::new(move |_| match store.parts.progress(Part::Windows) {
        Progress::Here(brought) if tolerances.get() => {
            brought.spreads.map(|of_all| Arc::new(of_all(&store.resolved.read().harp)))
        }
        _ => None,
    });
    let curves = Memo::new(move |_| {
        let (resolved, design) = (store.resolved.read(), store.design.read());
        let (analysis, spreads) = (store.analysis.read(), spreads.read());
        let spreads = spreads.as_ref().map(|spreads| spreads.as_slice());
        Arc::new(store.curves.with(|shown| {
            let ghost = store.ghost.read();
            let ghost = ghost.as_ref().map(|ghost| &*ghost.analysis);
            Curves::build(&analysis, &resolved.harp, &design.units, shown, ghost, spreads)
        }))
    });
    let strings = Memo::new(move |_| {
        let (resolved, design) = (store.resolved.read(), store.design.read());
        Arc::new(band::build(&store.analysis.read(), &resolved.harp, &design.units))
    });
    let warned = Memo::new(move |_| {
        let of = |weight: Weight| {
            let analysis = store.analysis.read();
            let found = analysis.findings.iter().filter(|f| f.kind.weight() == weight);
            found.map(|f| f.index).collect::<Vec<usize>>()
        };
        (of(Weight::Grave), of(Weight::Warning))
    });
    let palette = move || if store.dark.get() { Palette::dark() } else { Palette::light() };
    let selected = Memo::new(move |_| {
        let selection: Selection = store.selection.get();
        *selection.rows().start()..*selection.rows().end() + 1
    });
    // A canvas keeps its picture, so each effect holds what it painted last and paints what differs.
    Effect::new(move |before: Option<Recorded>| {
        let Some(canvas) = upper.get() else { return Recorded::default() };
        let Sizes { width, upper, scale, .. } = sizes.get();
        let mut drawing = Recorded::new((width, upper));
        let warned = warned.read();
        let style = Style {
            grave: &warned.0,
            warned: &warned.1,
            ..Style::new(palette(), scale, Medium::Canvas)
        };
        let area = Recorder(&mut drawing).into_drawing_area();
        // A recorder never fails.
        let _ = draw::draw(&area, &curves.read(), &style);
        drop(area);
        paint(&canvas, &drawing, before.as_ref());
        drawing
    });
    Effect::new(move |before: Option<Recorded>| {
        let Some(canvas) = lower.get() else { return Recorded::default() };
        let Sizes { width, lower, scale, .. } = sizes.get();
        let mut drawing = Recorded::new((width, lower));
        let style = Style::new(palette(), scale, Medium::Canvas);
        let area = Recorder(&mut drawing).into_drawing_area();
        let _ = band::draw(&area, &strings.read(), &style);
        drop(area);
        paint(&canvas, &drawing, before.as_ref());
        drawing
    });
    let count = Memo::new(move |_| store.design.with(|design| design.strings.len()));
    let compass = move || Compass::across(sizes.get().css_width, 1.0, count.get());
    let pointed = move |event: &MouseEvent| {
        let frame: HtmlElement = frame.get_untracked()?.unchecked_into();
        let x = f64::from(event.client_x()) - frame.get_bounding_client_rect().left();
        untrack(compass).index_at(x)
    };
    let cross = move || {
        let index = store.hover.get().unwrap_or_else(|| store.selection.get().cursor.row);
        (index < count.get()).then_some(index)
    };
    let cross_left = move || cross().map(|index| format!("{:.1}px", compass().x_of(index)));
    // Drawn over the canvas, so that a step of the cursor draws no curve again.
    let picked = Memo::new(move |_| {
        let compass = compass();
        let last = selected.read().end.min(count.get()).saturating_sub(1);
        let (left, right) = (compass.x_of(last), compass.x_of(selected.read().start.min(last)));
        (left - compass.slot() / 2.0, right - left + compass.slot())
    });
    let readout = move || {
        let words = cross().map(|index| {
            let design = store.design.read();
            rows::readout(&store.analysis.read(), &design.units, &curves.read(), index)
        });
        words.unwrap_or_default()
    };
    view! {
        <div class="curves-head">
            <p class="readout" id="readout">{words(readout)}</p>
            <p class="hint" id="ghost">{words(move || store.ghost.with(|ghost| ghost.as_ref().map(|ghost| ghost.words.clone()).unwrap_or_default()))}</p>
            <label class="tolerances">
                <input
                    type="checkbox"
                    id="tolerances"
                    prop:checked=tolerances
                    aria-describedby="tolerances-hint"
                    on:change=move |event| {
                        tolerances.set(event_target_checked(&event));
                        store.need(Part::Windows);
                    }
                />
                {say::TOLERANCES.said()}
            </label>
            <div class="choose">{lazy_menu(store, "which-curves", say::CURVES)}</div>
        </div>
        <p class="hint" id="tolerances-hint" hidden=move || !tolerances.get()>
            {words(move || rows::tolerance_words(spreads.read().as_ref().map_or(&[], |all| all.as_slice())))}
        </p>
        <div
            node_ref=frame
            class="curves-frame"
            on:mousemove=move |event| store.hover.set(pointed(&event))
            on:mouseleave=move |_| store.hover.set(None)
            on:click=move |event| {
                if let Some(index) = pointed(&event) {
                    go_to(store, index);
                }
            }
        >
            <canvas
                node_ref=upper
                id="curves"
                role="img"
                aria-label=say::CURVES_LABEL.said()
            ></canvas>
            <canvas
                node_ref=lower
                id="band"
                role="img"
                aria-label=say::BAND_LABEL.said()
            ></canvas>
            <div
                class="picked"
                class:off=move || count.get() == 0
                style:left=move || format!("{:.1}px", picked.get().0)
                style:width=move || format!("{:.1}px", picked.get().1)
            ></div>
            <div
                class="cross"
                class:off=move || cross().is_none()
                style:left=move || cross_left().unwrap_or_default()
            ></div>
        </div>
    }
}

/// How large the canvases are. Asked of the page only when it changes, as asking costs a layout.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
struct Sizes {
    /// Of both canvases, in the pixels of the page.
    css_width: f64,
    /// Device pixels for each pixel of the page.
    scale: f64,
    /// Of both canvases, in device pixels.
    width: u32,
    /// Height of the curves, in device pixels.
    upper: u32,
    /// Height of the strings to scale, in device pixels.
    lower: u32,
}

impl Sizes {
    fn measured(upper: Option<&HtmlCanvasElement>, lower: Option<&HtmlCanvasElement>) -> Self {
        let (Some(upper), Some(lower)) = (upper, lower) else { return Self::default() };
        let scale = browser::pixel_ratio();
        let pixels = |css: i32| {
            #[expect(
                clippy::cast_possible_truncation,
                clippy::cast_sign_loss,
                reason = "a size on the screen, clamped to what a canvas may have"
            )]
            let pixels = (f64::from(css) * scale).round().clamp(0.0, 8_000.0) as u32;
            pixels
        };
        Self {
            css_width: f64::from(upper.client_width()),
            scale,
            width: pixels(upper.client_width()),
            upper: pixels(upper.client_height()),
            lower: pixels(lower.client_height()),
        }
    }
}

/// Calls `measure` now and whenever the size of the element changes, for as long as the part of the page lives
/// that asks for it. An observer that goes on would keep the element for ever.
pub(super) fn watch_size(element: &HtmlElement, measure: impl Fn() + 'static) {
    let changed = Closure::<dyn Fn()>::new(measure);
    let Ok(observer) = ResizeObserver::new(changed.as_ref().unchecked_ref()) else { return };
    // It tells the first size, too, once the element is on the page.
    observer.observe(element);
    let watch = StoredValue::new_local(Some((observer, changed)));
    on_cleanup(move || {
        if let Some((observer, _)) = watch.try_update_value(Option::take).flatten() {
            observer.disconnect();
        }
    });
}
