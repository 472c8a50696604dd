//! The curves across the compass and the strings to scale, with the cross-hair that they share
//! with the string chart.

use std::cell::RefCell;
use std::rc::Rc;
use std::sync::Arc;

use leptos::html;
use leptos::prelude::*;
use plotters::coord::Shift;
use plotters::drawing::{DrawingArea, IntoDrawingArea};
use plotters_canvas::CanvasBackend;
use wasm_bindgen::JsCast;
use wasm_bindgen::closure::Closure;
use web_sys::{HtmlCanvasElement, HtmlElement, MouseEvent, ResizeObserver};

use super::chart_acts::go_to;
use crate::app::rows;
use crate::app::store::Store;
use crate::app::{browser, grid::Selection};
use crate::charts::compass::Compass;
use crate::charts::palette::Palette;
use crate::charts::pen::{Medium, Style};
use crate::charts::quantity::Quantity;
use crate::charts::series::Curves;
use crate::charts::{band, draw};
use crate::engine::findings::Weight;

/// The most curves at once: more would be too low to read.
const MOST_CURVES: usize = 5;

/// Curves and band, one above the other.
#[component]
pub fn CurvesPanel(store: Store) -> impl IntoView {
    let frame = NodeRef::<html::Div>::new();
    // Changes whenever the size of the panel or the pixels of the screen do.
    let size = RwSignal::new((0.0_f64, 0.0_f64));
    frame.on_load(move |element| watch_size(element.unchecked_into(), size));
    let curves = Memo::new(move |_| {
        let (resolved, design) = (store.resolved.read(), store.design.read());
        let analysis = store.analysis.read();
        Arc::new(
            store
                .curves
                .with(|shown| Curves::build(&analysis, &resolved.harp, &design.units, shown, None)),
        )
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
    let (upper, lower) = (NodeRef::<html::Canvas>::new(), NodeRef::<html::Canvas>::new());
    let palette = move || if store.dark.get() { Palette::dark() } else { Palette::light() };
    let selected = Memo::new(move |_| {
        let selection: Selection = store.selection.get();
        *selection.rows().start()..*selection.rows().end() + 1
    });
    Effect::new(move |_| {
        size.track();
        let Some(canvas) = upper.get() else { return };
        let (grave, warned) = warned.get();
        let palette = palette();
        paint(&canvas, |area, scale| {
            let style = Style {
                selected: Some(selected.get()),
                grave: &grave,
                warned: &warned,
                ..Style::new(palette, scale, Medium::Canvas)
            };
            // A canvas that fails leaves its last picture; the figures stand in the chart too.
            let _ = draw::draw(area, &curves.read(), &style);
        });
    });
    Effect::new(move |_| {
        size.track();
        let Some(canvas) = lower.get() else { return };
        let palette = palette();
        paint(&canvas, |area, scale| {
            let selected = Some(selected.get());
            let style = Style { selected, ..Style::new(palette, scale, Medium::Canvas) };
            let _ = band::draw(area, &strings.read(), &style);
        });
    });
    let count = Memo::new(move |_| store.design.with(|design| design.strings.len()));
    let compass = move || Compass::across(size.get().0, 1.0, count.get());
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
    let readout = move || {
        cross().map(|index| {
            let design = store.design.read();
            store
                .curves
                .with(|shown| rows::readout(&store.analysis.read(), &design.units, shown, index))
        })
    };
    view! {
        <div class="curves-head">
            <p class="readout" id="readout">{readout}</p>
            <Choose store=store/>
        </div>
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
                aria-label="Curves across the compass, bass at the left. The string chart holds the same figures."
            ></canvas>
            <canvas
                node_ref=lower
                id="band"
                role="img"
                aria-label="The strings side by side, lengths to scale. The string chart holds the same lengths."
            ></canvas>
            <div
                class="cross"
                class:off=move || cross().is_none()
                style:left=move || cross_left().unwrap_or_default()
            ></div>
        </div>
    }
}

/// Which curves are shown.
#[component]
fn Choose(store: Store) -> impl IntoView {
    let boxes = Quantity::ALL
        .map(|quantity| {
            let shown = move || store.curves.with(|shown| shown.contains(&quantity));
            let full = move || !shown() && store.curves.with(|shown| shown.len() >= MOST_CURVES);
            let turn = move |_| {
                store.curves.update(|curves| {
                    if let Some(place) = curves.iter().position(|one| *one == quantity) {
                        curves.remove(place);
                    } else {
                        curves.push(quantity);
                    }
                });
            };
            view! {
                <label>
                    <input type="checkbox" prop:checked=shown disabled=full on:change=turn/>
                    {quantity.name()}
                </label>
            }
        })
        .collect_view();
    view! {
        <details class="choose">
            <summary>"Curves"</summary>
            <div class="choose-list">{boxes}</div>
        </details>
    }
}

/// Sizes the canvas to the pixels of the screen, and draws on it.
fn paint(canvas: &HtmlCanvasElement, draw: impl FnOnce(&DrawingArea<CanvasBackend, Shift>, f64)) {
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
    let (width, height) = (pixels(canvas.client_width()), pixels(canvas.client_height()));
    if width == 0 || height == 0 {
        return;
    }
    if (canvas.width(), canvas.height()) != (width, height) {
        canvas.set_width(width);
        canvas.set_height(height);
    }
    if let Some(backend) = CanvasBackend::with_canvas_object(canvas.clone()) {
        draw(&backend.into_drawing_area(), scale);
    }
}

/// Sets `size` to the element's whenever it changes, for as long as the element is there.
fn watch_size(element: HtmlElement, size: RwSignal<(f64, f64)>) {
    let measured = element.clone();
    let measure = move || {
        let rect = measured.get_bounding_client_rect();
        let now = (rect.width(), rect.height());
        if size.get_untracked() != now {
            size.set(now);
        }
    };
    measure();
    let changed = Closure::<dyn Fn()>::new(measure);
    let observer = ResizeObserver::new(changed.as_ref().unchecked_ref()).ok();
    if let Some(observer) = &observer {
        observer.observe(&element);
    }
    // Held by the element itself, which lives as long as the page.
    let kept = Rc::new(RefCell::new((changed, observer)));
    std::mem::forget(kept);
}
