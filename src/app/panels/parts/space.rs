//! The harp in space: turned with a pointer or the arrow keys, made larger and smaller, and painted on a canvas in the frame
//! after anything changed.

use std::sync::Arc;

use leptos::{html, prelude::*};
use plotters::style::RGBColor;
use wasm_bindgen::JsCast;
use web_sys::{
    CanvasRenderingContext2d, CanvasWindingRule, Element, HtmlCanvasElement, KeyboardEvent,
    PointerEvent, WheelEvent,
};

use super::Bench;
use crate::app::browser;
use crate::app::panels::curves::watch_size;
use crate::app::widgets::button::button;
use crate::charts::palette::Palette;
use crate::charts::space::{Eye, Mark, Of, Space, colour, lit, part_at};
use crate::words::{drawing, parts_page as say};

/// How far a key turns the harp, and how far a drag by a pixel.
const KEY_RAD: f64 = 0.12;
const DRAG_RAD: f64 = 0.009;
/// How much larger a press of a button makes it, and a wheel by a pixel.
const ZOOM: f64 = 1.25;
const WHEEL: f64 = 0.0016;

/// The harp with the pieces in their order; equal only where it was not made again.
#[derive(Clone)]
struct Made(Arc<Option<Space>>);

impl PartialEq for Made {
    fn eq(&self, other: &Self) -> bool {
        Arc::ptr_eq(&self.0, &other.0)
    }
}

/// Where the pointers are that hold the picture, by their numbers.
type Held = Vec<(i32, (f64, f64))>;

/// A pointer that has moved less than this has pressed a part and turned nothing.
const PRESS_PX: f64 = 4.0;

/// The canvas with its buttons.
#[component]
pub(super) fn InSpace(bench: Bench) -> impl IntoView {
    let space = Memo::new(move |_| {
        let letters = bench.letters();
        Made(Arc::new(bench.with(|made| Some(Space::new(&made.whole, &made.band, &letters)))))
    });
    let eye = RwSignal::new(Eye::default());
    let size = RwSignal::new((0.0, 0.0));
    let held = StoredValue::new(Held::new());
    let gone = StoredValue::new(0.0);
    let canvas = NodeRef::<html::Canvas>::new();
    canvas.on_load(move |element| {
        let measured = element.clone();
        watch_size(&element, move || {
            let now = (f64::from(measured.client_width()), f64::from(measured.client_height()));
            if now.0 > 0.0 && size.get_untracked() != now {
                size.set(now);
            }
        });
    });
    // However often anything changes within a frame, it is painted once.
    let waits = StoredValue::new(false);
    Effect::new(move |_| {
        space.track();
        eye.track();
        size.track();
        bench.chosen.track();
        bench.store.dark.track();
        if waits.get_value() {
            return;
        }
        waits.set_value(true);
        request_animation_frame(move || {
            if waits.try_set_value(false).is_some() {
                return;
            }
            untrack(|| {
                let Some(element) = canvas.get() else { return };
                let (space, size) = (space.get(), size.get());
                if let Some(space) = space.0.as_ref() {
                    let palette =
                        if bench.store.dark.get() { Palette::dark() } else { Palette::light() };
                    let marks = space.seen(eye.get(), size);
                    paint(&element, &marks, size, &palette, bench.chosen.get());
                }
            });
        });
    });
    let place = move |x: i32, y: i32| {
        let Some(element) = canvas.get_untracked() else { return (0.0, 0.0) };
        let corner = Element::get_bounding_client_rect(&element);
        let (wide, high) = size.get_untracked();
        (f64::from(x) - corner.left() - 0.5 * wide, f64::from(y) - corner.top() - 0.5 * high)
    };
    let down = move |event: PointerEvent| {
        if let Some(element) = canvas.get_untracked() {
            // Without it the drag ends at the edge of the picture.
            let _ = element.set_pointer_capture(event.pointer_id());
        }
        let at = place(event.client_x(), event.client_y());
        held.update_value(|held| held.push((event.pointer_id(), at)));
        gone.set_value(if held.with_value(Vec::len) == 1 { 0.0 } else { PRESS_PX });
    };
    let moved = move |event: PointerEvent| {
        let now = place(event.client_x(), event.client_y());
        let id = event.pointer_id();
        let before = held.with_value(Clone::clone);
        let Some((_, was)) = before.iter().find(|one| one.0 == id).copied() else { return };
        held.update_value(|held| {
            held.iter_mut().filter(|one| one.0 == id).for_each(|one| one.1 = now);
        });
        let (x, y) = (now.0 - was.0, now.1 - was.1);
        gone.update_value(|gone| *gone += x.hypot(y));
        if gone.get_value() < PRESS_PX {
            return;
        }
        let other = before.iter().find(|one| one.0 != id);
        eye.update(|eye| {
            *eye = match other {
                None => eye.turned(-DRAG_RAD * x, DRAG_RAD * y),
                // Two fingers make it larger and move it.
                Some((_, other)) => {
                    let apart = |at: (f64, f64)| (at.0 - other.0).hypot(at.1 - other.1).max(1.0);
                    let middle = (f64::midpoint(now.0, other.0), f64::midpoint(now.1, other.1));
                    let near = eye.zoomed(apart(now) / apart(was), middle);
                    let moved_px = (near.moved_px.0 + 0.5 * x, near.moved_px.1 + 0.5 * y);
                    Eye { moved_px, ..near }
                }
            };
        });
    };
    let leave = move |id: i32| held.update_value(|held| held.retain(|one| one.0 != id));
    let up = move |event: PointerEvent| {
        leave(event.pointer_id());
        if gone.get_value() < PRESS_PX {
            let ((x, y), size) = (place(event.client_x(), event.client_y()), size.get_untracked());
            let (eye, at) = (eye.get_untracked(), (x + 0.5 * size.0, y + 0.5 * size.1));
            let marks = space.with_untracked(|space| {
                space.0.as_ref().as_ref().map(|space| space.seen(eye, size)).unwrap_or_default()
            });
            bench.chosen.set(part_at(&marks, at));
        }
    };
    let wheel = move |event: WheelEvent| {
        event.prevent_default();
        let lines = if event.delta_mode() == WheelEvent::DOM_DELTA_LINE { 16.0 } else { 1.0 };
        let by = (event.delta_y() * lines).clamp(-400.0, 400.0);
        let at = place(event.client_x(), event.client_y());
        eye.update(|eye| *eye = eye.zoomed((-by * WHEEL).exp(), at));
    };
    let larger = move |by: f64| eye.update(|eye| *eye = eye.zoomed(by, (0.0, 0.0)));
    let turn = move |round: f64, up: f64| eye.update(|eye| *eye = eye.turned(round, up));
    let fit = move || {
        eye.update(|eye| *eye = Eye { zoom: 1.0, moved_px: (0.0, 0.0), ..*eye });
    };
    let keys = move |event: KeyboardEvent| {
        if event.ctrl_key() || event.meta_key() || event.alt_key() {
            return;
        }
        match event.key().as_str() {
            "ArrowLeft" => turn(KEY_RAD, 0.0),
            "ArrowRight" => turn(-KEY_RAD, 0.0),
            "ArrowUp" => turn(0.0, KEY_RAD),
            "ArrowDown" => turn(0.0, -KEY_RAD),
            "+" | "=" => larger(ZOOM),
            "-" => larger(1.0 / ZOOM),
            "0" => fit(),
            _ => return,
        }
        event.prevent_default();
    };
    view! {
        <div class="loft-paper parts-space">
            <canvas
                node_ref=canvas
                id="space"
                tabindex="0"
                role="application"
                aria-label=say::SPACE_OF.said()
                aria-describedby="space-help"
                on:pointerdown=down
                on:pointermove=moved
                on:pointerup=up
                on:pointercancel=move |event| leave(event.pointer_id())
                on:wheel=wheel
                on:keydown=keys
            ></canvas>
            <span class="tool-group space-tools">
                {button("tool", "space-larger", drawing::LARGER_HINT.said(), drawing::LARGER.said(), move || larger(ZOOM))}
                {button("tool", "space-smaller", drawing::SMALLER_HINT.said(), drawing::SMALLER.said(), move || larger(1.0 / ZOOM))}
                {button("tool", "space-fit", "", drawing::FIT.said(), fit)}
            </span>
        </div>
        <p class="out-of-sight" id="space-help">{say::SPACE_HELP.said()}</p>
    }
}

fn hex(RGBColor(red, green, blue): RGBColor) -> String {
    format!("#{red:02x}{green:02x}{blue:02x}")
}

/// Paints the pieces; the part that is chosen in the colour of what is chosen.
fn paint(
    element: &HtmlCanvasElement,
    marks: &[Mark],
    (wide, high): (f64, f64),
    palette: &Palette,
    chosen: Option<usize>,
) {
    let ratio = browser::pixel_ratio();
    #[expect(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "the size of a canvas in pixels"
    )]
    let pixels = |length: f64| (ratio * length).round().max(0.0) as u32;
    let now = (pixels(wide), pixels(high));
    if (element.width(), element.height()) != now {
        element.set_width(now.0);
        element.set_height(now.1);
    }
    let context = element.get_context("2d").ok().flatten();
    let Some(context) = context.and_then(|one| one.dyn_into::<CanvasRenderingContext2d>().ok())
    else {
        return;
    };
    // Whatever a browser refuses here leaves a picture that is not drawn, and the list beside it.
    let _ = context.set_transform(ratio, 0.0, 0.0, ratio, 0.0, 0.0);
    context.clear_rect(0.0, 0.0, wide, high);
    context.set_line_join("round");
    context.set_line_cap("round");
    let trace = |ring: &[(f64, f64)]| {
        for (at, (x, y)) in ring.iter().enumerate() {
            if at == 0 { context.move_to(*x, *y) } else { context.line_to(*x, *y) }
        }
    };
    // A browser reads the name of a colour again each time it is set.
    let (mut filled, mut stroked) = (None, None);
    for mark in marks {
        context.begin_path();
        match mark {
            Mark::Face { of, rings, light, seams } => {
                for ring in rings {
                    trace(ring);
                    context.close_path();
                }
                let is_chosen = matches!(of, Of::Part(at, _) if chosen == Some(*at));
                let ink = if is_chosen {
                    lit(palette.accent, *light)
                } else {
                    colour(*of, *light, palette)
                };
                if filled.replace(ink) != Some(ink) {
                    context.set_fill_style_str(&hex(ink));
                }
                context.fill_with_canvas_winding_rule(CanvasWindingRule::Evenodd);
                if seams.is_empty() {
                    continue;
                }
                // Pieces of a face that was cut meet without a seam.
                context.begin_path();
                seams.iter().for_each(|ends| trace(ends));
                if stroked.replace(ink) != Some(ink) {
                    context.set_stroke_style_str(&hex(ink));
                }
                context.set_line_width(0.8);
            }
            Mark::Lines { of, ends, wide } => {
                ends.iter().for_each(|ends| trace(ends));
                let ink = colour(*of, 1.0, palette);
                if stroked.replace(ink) != Some(ink) {
                    context.set_stroke_style_str(&hex(ink));
                }
                context.set_line_width(*wide);
            }
        }
        context.stroke();
    }
}
