//! The harp from three sides, with grips at which its sizes are pulled by mouse, finger and keys. While one is held only this
//! drawing follows; all else is worked out when it is let go.

use std::sync::Arc;
use std::time::Duration;

use leptos::{html, prelude::*};
use wasm_bindgen::JsCast;
use web_sys::{Element, KeyboardEvent, PointerEvent};

use super::{Bench, bench_title};
use crate::app::panels::curves::watch_size;
use crate::app::widgets::list::{list, part, words};
use crate::charts::whole::{self, Sheet, view_of};
use crate::design::display::decimals;
use crate::design::parts::{Sketch, pulls, sketch};
use crate::engine::parts::grips::{Grip, Pull};
use crate::words::parts_pulls as say;

/// How near a pointer and a finger must come to a grip, in pixels.
const POINTER_PX: f64 = 12.0;
const FINGER_PX: f64 = 22.0;
/// In what steps a size goes, in mm; and the fine ones.
const STEPS_MM: (f64, f64) = (0.5, 0.1);
/// So much of a drag is kept at once.
const KEPT_WITHIN: Duration = Duration::from_secs(3);

/// What is drawn.
#[derive(Clone)]
struct Drawn(Arc<Option<(String, Sheet, Vec<Grip>)>>);

impl PartialEq for Drawn {
    fn eq(&self, other: &Self) -> bool {
        Arc::ptr_eq(&self.0, &other.0)
    }
}

/// A grip that is held.
#[derive(Clone, Copy)]
struct Press {
    grip: Grip,
    /// The number in the design before.
    before_mm: f64,
    /// Where it began on the page, and where the pointer is, until it was followed there; and whether in fine steps.
    from: (f64, f64),
    last: Option<((f64, f64), bool)>,
    /// How a size grows with each pixel to the right and down.
    grows: (f64, f64),
}

/// The drawing with its grips.
#[component]
pub(super) fn Sides(bench: Bench) -> impl IntoView {
    let pulling = Pulling {
        bench,
        sketch: RwSignal::new(None),
        size: RwSignal::new((0.0, 0.0)),
        press: StoredValue::new(None),
    };
    let drawn = Memo::new(move |_| Drawn(Arc::new(pulling.drawn())));
    let paper = NodeRef::<html::Div>::new();
    paper.on_load(move |element| {
        let measured = element.clone();
        watch_size(&element, move || {
            let now = (f64::from(measured.client_width()), f64::from(measured.client_height()));
            if pulling.size.get_untracked() != now {
                pulling.size.set(now);
            }
        });
    });
    on_cleanup(move || bench.held.set(false));
    let picture = move || drawn.get().0.as_ref().as_ref().map(|drawn| drawn.0.clone());
    let all = move || {
        let there: Vec<Pull> = drawn.with(|drawn| {
            let grips = drawn.0.as_ref().as_ref().map(|drawn| drawn.2.as_slice());
            grips.unwrap_or_default().iter().map(|grip| grip.pull).collect()
        });
        there
            .into_iter()
            .map(|pull| part(&(pull as u8), move || knob(pulling, drawn, pull)))
            .collect()
    };
    let down = move |event: PointerEvent| pulling.down(&event, drawn);
    let told = move || pulling.told();
    view! {
        <div class="parts-paper sides" id="parts-paper">
            <div
                class="sides-paper"
                node_ref=paper
                on:pointerdown=down
                on:pointermove=move |event| pulling.moved(&event)
                on:pointerup=move |_| pulling.up()
                on:pointercancel=move |_| pulling.give_up()
            >
                <div role="img" aria-label=move || bench_title(bench) inner_html=picture></div>
                {list(all)}
            </div>
            <p class="sides-told" aria-hidden="true">{words(told)}</p>
        </div>
    }
}

/// A grip.
fn knob(pulling: Pulling, drawn: Memo<Drawn>, pull: Pull) -> AnyView {
    let grip = move || {
        drawn.with(|drawn| {
            let (_, _, grips) = drawn.0.as_ref().as_ref()?;
            grips.iter().find(|grip| grip.pull == pull).copied()
        })
    };
    let at = move || {
        let place = drawn.with(|drawn| {
            let (_, sheet, _) = drawn.0.as_ref().as_ref()?;
            Some(pulling.pixel(sheet, &grip()?))
        });
        place.unwrap_or_default()
    };
    let size = move || grip().map(|grip| decimals(grip.size.to_mm(), 1)).unwrap_or_default();
    let named = pulls::named(pull);
    let (least, most) = pulls::range_mm(pull);
    view! {
        <span
            class="node"
            role="slider"
            tabindex="0"
            data-pull=format!("{pull:?}")
            aria-label=named.said()
            aria-valuemin=least
            aria-valuemax=most
            aria-valuenow=move || grip().map(|grip| (10.0 * grip.size.to_mm()).round() / 10.0)
            aria-valuetext=move || say::size(&size(), &named)
            title=move || say::size(&size(), &named)
            style:left=move || format!("{:.1}px", at().0)
            style:top=move || format!("{:.1}px", at().1)
            on:keydown=move |event: KeyboardEvent| pulling.key(&event, untrack(grip), drawn)
            on:keyup=move |_| pulling.rest()
            on:blur=move |_| pulling.rest()
        ></span>
    }
    .into_any()
}

/// A hand at the grips.
#[derive(Clone, Copy)]
struct Pulling {
    bench: Bench,
    /// What is drawn while something is held.
    sketch: RwSignal<Option<Arc<Sketch>>>,
    /// The paper, in pixels.
    size: RwSignal<(f64, f64)>,
    press: StoredValue<Option<Press>>,
}

impl Pulling {
    /// The picture, where its views lie, and the grips.
    fn drawn(self) -> Option<(String, Sheet, Vec<Grip>)> {
        let bench = self.bench;
        let title = bench.store.design.with_untracked(|design| design.title.clone());
        let letters = bench.letters();
        if let Some(sketch) = self.sketch.get() {
            let text = whole::svg(&sketch.whole, &sketch.band, &letters, &title);
            return Some((text, Sheet::of(&sketch.whole), sketch.grips.clone()));
        }
        bench.with(|made| {
            let text = whole::svg(&made.whole, &made.band, &letters, &title);
            Some((text, Sheet::of(&made.whole), made.grips.clone()))
        })
    }

    /// Pixels for a millimetre of the sheet, and where it begins: it is shown whole, in the middle.
    fn scale(self, sheet: &Sheet) -> (f64, (f64, f64)) {
        let (wide, high) = self.size.get();
        let scale = (wide / sheet.size_mm.0).min(high / sheet.size_mm.1);
        let off = (0.5 * (wide - scale * sheet.size_mm.0), 0.5 * (high - scale * sheet.size_mm.1));
        (scale, off)
    }

    fn pixel(self, sheet: &Sheet, grip: &Grip) -> (f64, f64) {
        let (scale, off) = self.scale(sheet);
        let at = sheet.place(view_of(grip.pull), grip.at);
        (off.0 + scale * at.0, off.1 + scale * at.1)
    }

    /// By how many mm a size grows with each pixel to the right and down.
    fn grows(self, sheet: &Sheet, grip: &Grip) -> (f64, f64) {
        let (scale, _) = self.scale(sheet);
        let view = view_of(grip.pull);
        let to = [0, 1, 2].map(|axis| grip.at[axis] + 1e-3 * grip.way[axis]);
        let (from, to) = (sheet.place(view, grip.at), sheet.place(view, to));
        // So many pixels when it is pulled by 1 mm.
        let way = (scale * (to.0 - from.0), scale * (to.1 - from.1));
        let square = way.0 * way.0 + way.1 * way.1;
        (grip.rate * way.0 / square, grip.rate * way.1 / square)
    }

    /// What is held, in words.
    fn told(self) -> String {
        let Some(sketch) = self.sketch.get() else { return say::HINT.into() };
        let held = self.press.with_value(|press| press.map(|press| press.grip.pull));
        let own = sketch.grips.iter().find(|grip| Some(grip.pull) == held);
        own.map_or_else(
            || say::HINT.into(),
            |grip| say::size(&decimals(grip.size.to_mm(), 1), &pulls::named(grip.pull)),
        )
    }

    fn down(self, event: &PointerEvent, drawn: Memo<Drawn>) {
        let target = event.current_target().and_then(|target| target.dyn_into::<Element>().ok());
        let Some(paper) = target.filter(|_| event.button() == 0 && event.is_primary()) else {
            return;
        };
        let corner = paper.get_bounding_client_rect();
        let from = (f64::from(event.client_x()), f64::from(event.client_y()));
        let at = (from.0 - corner.left(), from.1 - corner.top());
        let reach = if event.pointer_type() == "touch" { FINGER_PX } else { POINTER_PX };
        let found = untrack(|| {
            drawn.with(|drawn| {
                let (_, sheet, grips) = drawn.0.as_ref().as_ref()?;
                let far = |grip: &Grip| {
                    let own = self.pixel(sheet, grip);
                    (own.0 - at.0).hypot(own.1 - at.1)
                };
                let near = grips.iter().filter(|grip| far(grip) <= reach);
                let grip = near.min_by(|one, other| far(one).total_cmp(&far(other)))?;
                let rate = self.bench.store.design.with(|design| pulls::rate(grip, design));
                let grip = Grip { rate, ..*grip };
                Some((grip, self.grows(sheet, &grip)))
            })
        });
        let Some((grip, grows)) = found else { return };
        event.prevent_default();
        // Without it the drag ends at the edge of the paper.
        let _ = paper.set_pointer_capture(event.pointer_id());
        let own = format!("[data-pull={:?}]", grip.pull);
        if let Ok(Some(knob)) = paper.query_selector(&own)
            && let Ok(knob) = knob.dyn_into::<web_sys::HtmlElement>()
        {
            let _ = knob.focus();
        }
        self.hold(grip, from, grows);
    }

    fn hold(self, grip: Grip, from: (f64, f64), grows: (f64, f64)) {
        let store = self.bench.store;
        store.close_step();
        let before_mm = store.design.with_untracked(|design| pulls::number_mm(grip.pull, design));
        self.press.set_value(Some(Press { grip, before_mm, from, last: None, grows }));
    }

    /// The pointer moves: followed at the next frame, so that each is worked out once.
    fn moved(self, event: &PointerEvent) {
        let now = (f64::from(event.client_x()), f64::from(event.client_y()));
        let waits = self.press.try_update_value(|press| {
            let press = press.as_mut()?;
            Some(press.last.replace((now, event.alt_key())).is_some())
        });
        if waits.flatten() == Some(false) {
            request_animation_frame(move || self.follow());
        }
    }

    fn follow(self) {
        let press = self.press.try_update_value(|press| {
            let press = press.as_mut()?;
            let last = press.last.take()?;
            Some((*press, last))
        });
        let Some((press, (now, fine))) = press.flatten() else { return };
        let (right, down) = (now.0 - press.from.0, now.1 - press.from.1);
        let step = if fine { STEPS_MM.1 } else { STEPS_MM.0 };
        let size = press.grip.size.to_mm() + right * press.grows.0 + down * press.grows.1;
        self.pull(press.grip.pull, (size / step).round() * step);
    }

    /// Gives a size another number, unless there would be no harp with it.
    fn pull(self, pull: Pull, to_mm: f64) {
        let store = self.bench.store;
        let to_mm = (10.0 * to_mm).round() / 10.0;
        let edit = store.design.with_untracked(|design| pulls::edit(pull, design, to_mm));
        let next = store.design.with_untracked(|design| edit.apply(design));
        match sketch(&next) {
            Ok(sketch) => {
                self.bench.held.set(true);
                store.keep_within(KEPT_WITHIN);
                store.send(&edit);
                self.sketch.set(Some(Arc::new(sketch)));
            }
            Err(why) => store.hint(&say::stops(&why)),
        }
    }

    fn up(self) {
        self.follow();
        self.press.set_value(None);
        self.rest();
    }

    /// What was pulled stays, and the next change is a step of its own.
    fn rest(self) {
        // A grip that goes with the keyboard on it is left when it is gone.
        let is_let_go = self.press.try_with_value(Option::is_none) == Some(true);
        if !is_let_go || self.sketch.try_with_untracked(Option::is_some) != Some(true) {
            return;
        }
        let store = self.bench.store;
        store.close_step();
        self.bench.held.set(false);
        self.sketch.set(None);
        // When it is seen.
        request_animation_frame(move || {
            set_timeout(move || store.keep_and_tell(), Duration::ZERO);
        });
    }

    /// What is held goes back to where it was.
    fn give_up(self) {
        if let Some(press) = self.press.try_update_value(Option::take).flatten() {
            if self.sketch.with_untracked(Option::is_some) {
                self.pull(press.grip.pull, press.before_mm);
            }
            self.rest();
        }
    }

    /// Arrows along the way of a grip make its size larger, those against it smaller; those across it go as on any scale.
    fn key(self, event: &KeyboardEvent, grip: Option<Grip>, drawn: Memo<Drawn>) {
        let Some(grip) = grip else { return };
        let (right, down, more) = match event.key().as_str() {
            "ArrowLeft" => (-1.0, 0.0, -1.0),
            "ArrowRight" => (1.0, 0.0, 1.0),
            "ArrowUp" => (0.0, -1.0, 1.0),
            "ArrowDown" => (0.0, 1.0, -1.0),
            "Escape" => return self.give_up(),
            _ => return,
        };
        if event.ctrl_key() || event.meta_key() {
            return;
        }
        event.prevent_default();
        let grows =
            untrack(|| drawn.with(|drawn| Some(self.grows(&drawn.0.as_ref().as_ref()?.1, &grip))));
        let Some(grows) = grows else { return };
        let long = grows.0.hypot(grows.1).max(1e-12);
        let along = (right * grows.0 + down * grows.1) / long;
        let sign = if along.abs() > 0.3 { along.signum() } else { more };
        let by = match (event.shift_key(), event.alt_key()) {
            (true, _) => 10.0,
            (false, true) => 0.1,
            (false, false) => 1.0,
        };
        self.pull(grip.pull, grip.size.to_mm() + sign * by);
    }
}
