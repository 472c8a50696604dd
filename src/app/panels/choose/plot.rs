//! The target curve as a picture whose points can be pulled by the pointer and by keys.

use std::sync::Arc;

use leptos::html;
use leptos::prelude::*;
use leptos::svg;
use wasm_bindgen::JsCast;
use web_sys::{Element, KeyboardEvent, PointerEvent};

use super::desk::Desk;
use super::points::{curve_of, put, put_whole};
use crate::app::panels::curves::watch_size;
use crate::app::rows::{place_name, wanted_words};
use crate::app::widgets::list::{list, part, words};
use crate::charts::wanted::{Given, Plot};
use crate::design::choose::{Shop, Task};
use crate::design::document::TargetsSpec;
use crate::design::edit::TargetsPart;
use crate::design::targets::{Point, moved, places, present, removed, rounded, value_of};
use crate::engine::pitch::Note;
use crate::words::choose_page as say;

/// A press of the pointer on a point.
#[derive(Clone)]
struct Press {
    index: usize,
    from: Point,
    points: Vec<Point>,
    /// Where the pointer was last; `None` once it was followed.
    last: Option<Point>,
}

/// The picture with its handles.
#[derive(Clone, Copy)]
struct Hand {
    desk: Desk,
    curve: Memo<Vec<Point>>,
    plot: Memo<Plot>,
    /// The picture rests while a point is pulled.
    rests: RwSignal<Option<Plot>>,
    press: StoredValue<Option<Press>>,
}

/// The picture.
pub fn plot(desk: Desk) -> AnyView {
    let store = desk.store;
    let curve = curve_of(desk);
    // What the stock can give depends on everything but the curve.
    let frame = Memo::new(move |_| {
        let design = store.design.read();
        let mut frame = (**design).clone();
        frame.title.clear();
        frame.targets =
            TargetsSpec { points_n: Vec::new(), points_n_per_mm: Vec::new(), ..frame.targets };
        Arc::new(frame)
    });
    let reach = Memo::new(move |_| {
        let frame = frame.get();
        let (stock, resolved) = (store.shop.read(), store.resolved.read_untracked());
        let shop = Shop { items: &stock.items, materials: &stock.materials, own: false };
        let task = Task::new(&frame, &resolved, &shop, &vec![true; frame.strings.len()]);
        let places = places(&frame, &resolved).into_iter().zip(task.reach(frame.targets.wants));
        let mut reach: Vec<(f64, Point)> = places.filter_map(|(at, is)| Some((at?, is?))).collect();
        reach.reverse();
        reach
    });
    let given = Memo::new(move |_| {
        let (design, resolved) = (store.design.read(), store.resolved.read());
        let wants = design.targets.wants;
        let at = places(&design, &resolved);
        let pairs = |values: Vec<Option<f64>>| -> Vec<Point> {
            at.iter().zip(values).filter_map(|(at, value)| Some(((*at)?, value?))).collect()
        };
        let proposed = desk.proposal.with(|proposal| {
            let analysis = proposal.as_ref().and_then(|proposal| proposal.analysis.clone())?;
            Some(analysis.strings.iter().map(|figures| value_of(wants, figures)).collect())
        });
        Given {
            points: curve.get(),
            present: pairs(present(wants, &store.analysis.read())),
            reach: reach.get(),
            proposed: proposed.map(pairs).unwrap_or_default(),
        }
    });
    let size = RwSignal::new((0.0, 0.0));
    let rests = RwSignal::new(None::<Plot>);
    let plot = Memo::new(move |_| {
        rests.get().unwrap_or_else(|| given.with(|given| Plot::new(given, size.get())))
    });
    let hand = Hand { desk, curve, plot, rests, press: StoredValue::new(None) };
    let paper = NodeRef::<html::Div>::new();
    paper.on_load(move |element| {
        let measured = element.clone();
        watch_size(&element, move || {
            let now = (f64::from(measured.client_width()), f64::from(measured.client_height()));
            if now.0 > 0.0 && size.try_get_untracked().is_some_and(|size| size != now) {
                size.set(now);
            }
        });
    });
    let picture = NodeRef::<svg::G>::new();
    Effect::new(move |_| {
        if let Some(group) = picture.get() {
            Element::set_inner_html(&group, &plot.get().svg(&given.read()));
        }
    });
    let box_of = move || {
        let (wide, high) = size.get();
        format!("0 0 {} {}", wide.max(1.0), high.max(1.0))
    };
    let count = Memo::new(move |_| curve.with(Vec::len));
    let handles = move || (0..count.get()).map(|at| part(&at, move || hand.handle(at))).collect();
    let title = move || {
        let wants = store.design.with(|design| design.targets.wants);
        let (what, unit) = wanted_words(wants);
        say::wish_title(&unit, &what)
    };
    view! {
        <figure class="wish-figure">
            <figcaption id="wish-title">{words(title)}</figcaption>
            <div class="wish" node_ref=paper role="group" aria-labelledby="wish-title">
                <svg viewBox=box_of aria-hidden="true" focusable="false"><g node_ref=picture></g></svg>
                {list(handles)}
            </div>
            <p class="wish-legend hint">
                <span><span class="key-line"></span>{say::LEGEND_WANTED.said()}</span> " "
                <span><span class="key-now"></span>{say::LEGEND_NOW.said()}</span> " "
                <span><span class="key-next"></span>{say::LEGEND_PROPOSED.said()}</span> " "
                <span><span class="key-reach"></span>{say::LEGEND_REACH.said()}</span>
            </p>
        </figure>
    }
    .into_any()
}

impl Hand {
    fn handle(self, index: usize) -> AnyView {
        let store = self.desk.store;
        let point =
            move || self.curve.with(|points| points.get(index).copied()).unwrap_or_default();
        let name = move || {
            let (place, value) = point();
            let wants = store.design.with(|design| design.targets.wants);
            let (_, unit) = wanted_words(wants);
            let value = crate::design::display::significant(value, 3);
            let note = store.resolved.with(|resolved| place_name(&resolved.harp.strings, place));
            let note = note.parse().map_or(note, Note::printed);
            let count = self.curve.with(Vec::len);
            say::point_at(&count, &note, &(index + 1), &unit, &value)
        };
        let at = move || {
            let (place, value) = point();
            self.plot.with(|plot| (plot.x(place), plot.y(value)))
        };
        view! {
            <button
                type="button"
                class="node"
                id=format!("wish-{index}")
                aria-label=name
                title=say::POINT_HINT.said()
                style:left=move || format!("{:.1}px", at().0)
                style:top=move || format!("{:.1}px", at().1)
                on:keydown=move |event| self.key(index, &event)
                on:pointerdown=move |event| self.down(index, &event)
                on:pointermove=move |event| self.moved(&event)
                on:pointerup=move |_| self.up()
                on:pointercancel=move |_| self.give_up()
                on:blur=move |_| store.close_step()
            ></button>
        }
        .into_any()
    }

    fn key(self, index: usize, event: &KeyboardEvent) {
        let points = self.curve.get_untracked();
        let Some((place, value)) = points.get(index).copied() else { return };
        let (keys, times) = if event.shift_key() { (12.0, 1.1) } else { (1.0, 1.01) };
        let to = match event.key().as_str() {
            "ArrowLeft" => (place - keys, value),
            "ArrowRight" => (place + keys, value),
            "ArrowUp" => (place, value * times),
            "ArrowDown" => (place, value / times),
            "Escape" if self.press.with_value(Option::is_some) => {
                event.prevent_default();
                return self.give_up();
            }
            "Delete" => {
                event.prevent_default();
                if let Some(points) = removed(&points, index) {
                    put_whole(self.desk, points);
                    let next = index.saturating_sub(1);
                    request_animation_frame(move || {
                        crate::app::browser::focus(&format!("wish-{next}"));
                    });
                }
                return;
            }
            _ => return,
        };
        event.prevent_default();
        self.pull(&points, index, to);
    }

    /// Moves a point, to three digits.
    fn pull(self, points: &[Point], index: usize, (place, value): Point) {
        let wants = self.desk.store.design.with_untracked(|design| design.targets.wants);
        let to = (place.round(), rounded(value));
        put(self.desk, TargetsPart::Point(index), moved(wants, points, index, to));
    }

    fn down(self, index: usize, event: &PointerEvent) {
        if event.button() != 0 || !event.is_primary() {
            return;
        }
        if let Some(handle) = event.current_target().and_then(|t| t.dyn_into::<Element>().ok()) {
            let _ = handle.set_pointer_capture(event.pointer_id());
        }
        self.desk.store.close_step();
        self.rests.set(Some(self.plot.get_untracked()));
        let from = (f64::from(event.client_x()), f64::from(event.client_y()));
        let points = self.curve.get_untracked();
        self.press.set_value(Some(Press { index, from, points, last: None }));
    }

    /// The pointer moves: what it holds follows at the next frame.
    fn moved(self, event: &PointerEvent) {
        let at = (f64::from(event.client_x()), f64::from(event.client_y()));
        let waits = self
            .press
            .try_update_value(|press| press.as_mut().map(|press| press.last.replace(at).is_some()));
        if waits.flatten() == Some(false) {
            request_animation_frame(move || self.follow());
        }
    }

    fn follow(self) {
        let press = self.press.try_update_value(|press| {
            let press = press.as_mut()?;
            let at = press.last.take()?;
            Some((press.index, press.from, at, press.points.clone()))
        });
        let Some((index, from, at, points)) = press.flatten() else { return };
        let Some((place, value)) = points.get(index).copied() else { return };
        let plot = self.plot.get_untracked();
        let (keys, times) = plot.moved((at.0 - from.0, at.1 - from.1));
        self.pull(&points, index, (place + keys, value * times));
    }

    fn up(self) {
        self.follow();
        self.press.set_value(None);
        self.rests.set(None);
        self.desk.store.close_step();
    }

    /// Puts everything back.
    fn give_up(self) {
        let press = self.press.try_update_value(Option::take).flatten();
        if let Some(press) = press {
            put(self.desk, TargetsPart::Point(press.index), press.points);
        }
        self.rests.set(None);
        self.desk.store.close_step();
    }
}
