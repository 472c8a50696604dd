//! What pointer, fingers and keys do on the paper: look around, choose strings, pull pins and nodes.

mod keys;

use std::time::Duration;

use leptos::prelude::*;
use wasm_bindgen::JsCast;
use web_sys::{Element, PointerEvent};

use crate::app::browser;
use crate::app::frame::Frame;
use crate::app::grid::Selection;
use crate::app::panels::chart_acts::go_to;
use crate::app::rows;
use crate::app::store::{Store, Window};
use crate::charts::lofting::fingers::Fingers;
use crate::charts::lofting::look::Look;
use crate::charts::lofting::{Scene, along, apart, pin_at, string_at};
use crate::charts::overlay::PlaceMm;
use crate::design::document::DrivesSpec;
use crate::design::edit::{Column, Edit, cell_text};
use crate::engine::units::Length;

/// How near the pointer must come to a string, and to a pin, in pixels.
const STRING_PX: f64 = 14.0;
const PIN_PX: f64 = 9.0;
const FINGER_PX: f64 = 22.0;
/// From how many pixels on a press is a drag and no click.
const DRAG_PX: f64 = 3.0;
const FINGER_DRAG_PX: f64 = 8.0;
/// How far an arrow key moves the paper, in pixels.
const ARROW_PX: f64 = 60.0;
/// So much of a drag is kept at once, as writing a step takes half as long as all else that is done for it. What is let go
/// is kept then, and so is what is held while the page goes.
const KEPT_WITHIN: Duration = Duration::from_secs(3);
/// What a key or a button makes larger.
pub const ZOOM: f64 = 1.25;

/// What the pointer holds.
#[derive(Clone)]
enum Held {
    /// The paper, with the look it began with.
    Paper(Look),
    /// The bridge pin of a string: its row, its text and its length before.
    Pin { row: usize, text: String, length: Length },
    /// A node of the curve, and all nodes before.
    Node { place: usize, nodes: Vec<(f64, f64)> },
}

/// A press of the pointer.
#[derive(Clone)]
struct Press {
    held: Held,
    /// Where it began, in pixels of the paper.
    from: (f64, f64),
    /// Where the paper begins on the page.
    corner: (f64, f64),
    /// Whether it has become a drag.
    moving: bool,
    /// The last that was heard of it: where it is, and whether it goes in fine steps.
    last: Option<((f64, f64), bool)>,
    /// Whether the whole harp was in sight, and shall be again.
    whole: bool,
}

/// The hand on the paper.
#[derive(Clone, Copy)]
pub struct Hand {
    pub store: Store,
    pub frame: Frame,
    /// The drawing.
    pub scene: Memo<std::sync::Arc<Scene>>,
    /// What is in sight.
    pub look: Memo<Look>,
    /// What is said aloud.
    pub said: RwSignal<String>,
    /// Whether the pointer is over something that can be pulled.
    pub over_pin: RwSignal<bool>,
    press: StoredValue<Option<Press>>,
    fingers: StoredValue<Fingers>,
    /// Whether a finger came down last, and no mouse.
    touched: StoredValue<bool>,
}

impl Hand {
    /// A hand that holds nothing.
    pub fn new(store: Store, scene: Memo<std::sync::Arc<Scene>>, look: Memo<Look>) -> Self {
        Self {
            store,
            frame: Frame::here(),
            scene,
            look,
            said: RwSignal::new(String::new()),
            over_pin: RwSignal::new(false),
            press: StoredValue::new(None),
            fingers: StoredValue::new(Fingers::default()),
            touched: StoredValue::new(false),
        }
    }

    /// Whether the lengths follow the drawn curve.
    pub fn curve_drives(self) -> bool {
        self.store.design.with(|design| design.geometry.drives == DrivesSpec::NeckCurve)
    }

    /// Larger or smaller about a pixel of the paper, or about its middle.
    pub fn zoom(self, times: f64, at: Option<(f64, f64)>) {
        let (wide, high) = self.store.paper.size.get_untracked();
        let at = at.unwrap_or((wide / 2.0, high / 2.0));
        self.store.paper.look.set(Some(self.look.get_untracked().zoomed(times, at)));
    }

    /// The whole harp.
    pub fn fit(self) {
        self.store.paper.look.set(None);
    }

    /// The string at a pixel of the paper.
    fn string_at(self, at: (f64, f64)) -> Option<usize> {
        let look = self.look.get_untracked();
        self.scene.with_untracked(|s| string_at(s, look.place(at), STRING_PX / look.px_per_mm))
    }

    /// What can be pulled at a pixel of the paper.
    fn hold(self, at: (f64, f64), reach_px: f64) -> Option<Held> {
        let look = self.look.get_untracked();
        let (place, within) = (look.place(at), reach_px / look.px_per_mm);
        if untrack(|| self.curve_drives()) {
            let nodes = self.store.design.with_untracked(|design| design.geometry.nodes_mm.clone());
            let far = |node: &(f64, f64)| apart(self.node_place(*node), place);
            let near = (0..nodes.len()).filter(|n| far(&nodes[*n]) <= within);
            let nearest = near.min_by(|a, b| far(&nodes[*a]).total_cmp(&far(&nodes[*b])));
            return nearest.map(|place| Held::Node { place, nodes });
        }
        let row = self.scene.with_untracked(|scene| pin_at(scene, place, within))?;
        let text = self.store.design.with_untracked(|design| {
            design.strings.get(row).map(|string| cell_text(string, Column::Length))
        })?;
        let length = self.store.analysis.with_untracked(|a| a.strings.get(row)?.length.ok())?;
        Some(Held::Pin { row, text, length })
    }

    /// Where a node stands in the drawing.
    pub fn node_place(self, (across, along): (f64, f64)) -> PlaceMm {
        let mm = Length::from_mm;
        let at = self.frame.band.with_untracked(|band| band.point(mm(across), mm(along)));
        (at.x.to_mm(), at.y.to_mm())
    }

    /// The pointer is pressed.
    pub fn down(self, event: &PointerEvent) {
        let Some(corner) = corner_of(event) else { return };
        let touch = by_finger(event);
        self.touched.set_value(touch);
        if event.button() != 0 || !(touch || event.is_primary()) {
            return;
        }
        let from = on_paper(event, corner);
        let look = self.look.get_untracked();
        if touch && self.put_down(event, from, look) > 1 {
            return;
        }
        let held = self.hold(from, if touch { FINGER_PX } else { PIN_PX });
        // A finger is as wide as many pins: it pulls the marked one alone, and moves the paper beside it.
        let marked = self.store.selection.get_untracked().cursor.row;
        let held =
            held.filter(|held| !touch || !matches!(held, Held::Pin { row, .. } if *row != marked));
        let held = held.unwrap_or(Held::Paper(look));
        if let Held::Pin { row, .. } = held {
            choose(self.store, row);
        }
        self.store.close_step();
        if let Some(paper) = event.current_target().and_then(|t| t.dyn_into::<Element>().ok()) {
            let _ = paper.set_pointer_capture(event.pointer_id());
        }
        let whole = self.store.paper.look.with_untracked(Option::is_none);
        let press = Press { held, from, corner, moving: false, last: None, whole };
        self.press.set_value(Some(press));
    }

    /// Another finger comes down. How many are down then: with the second, what the first one held goes back.
    fn put_down(self, event: &PointerEvent, at: (f64, f64), look: Look) -> usize {
        let id = event.pointer_id();
        let count = self.fingers.try_update_value(|fingers| fingers.down(id, at, look));
        let count = count.unwrap_or(1);
        if count > 1 {
            let of_paper = |press: &Option<Press>| {
                press.as_ref().is_some_and(|press| matches!(press.held, Held::Paper(_)))
            };
            if self.press.with_value(of_paper) {
                self.press.set_value(None);
            }
            self.give_up();
            if let Some(paper) = event.current_target().and_then(|t| t.dyn_into::<Element>().ok()) {
                let _ = paper.set_pointer_capture(id);
            }
        }
        count
    }

    /// Whether two fingers are on the paper.
    pub fn is_pinch(self) -> bool {
        self.fingers.with_value(Fingers::is_pinch)
    }

    /// A finger leaves the paper. Whether it was one of two: then the other one goes on alone.
    fn lift(self, event: &PointerEvent) -> bool {
        let (was_pinch, stays) = self
            .fingers
            .try_update_value(|fingers| (fingers.is_pinch(), fingers.up(event.pointer_id())))
            .unwrap_or_default();
        if let (Some(from), Some(corner)) = (stays, corner_of(event)) {
            let held = Held::Paper(self.look.get_untracked());
            let press = Press { held, from, corner, moving: true, last: None, whole: false };
            self.press.set_value(Some(press));
        }
        was_pinch
    }

    /// Opens the string under a mouse in full. Two taps of a finger show the whole harp.
    pub fn twice(self) {
        if !self.touched.get_value() && self.store.hover.with_untracked(Option::is_some) {
            self.store.window.set(Some(Window::Details));
        }
    }

    /// The browser takes a finger for something else, such as scrolling the page.
    pub fn cancel(self, event: &PointerEvent) {
        self.lift(event);
        self.give_up();
    }

    /// The pointer moves: with something held at the next frame, so that each is worked out once.
    pub fn moved(self, event: &PointerEvent) {
        let now = event.alt_key();
        if by_finger(event)
            && let Some(corner) = corner_of(event)
        {
            let (id, at) = (event.pointer_id(), on_paper(event, corner));
            let pinched = self.fingers.try_update_value(|fingers| fingers.moved(id, at));
            if let Some(look) = pinched.flatten() {
                self.store.paper.look.set(Some(look));
                return;
            }
        }
        let waits = self.press.try_update_value(|press| {
            let press = press.as_mut()?;
            let at = on_paper(event, press.corner);
            let far = if by_finger(event) { FINGER_DRAG_PX } else { DRAG_PX };
            press.moving |= apart(at, press.from) >= far;
            Some(press.last.replace((at, now)).is_some())
        });
        match waits.flatten() {
            Some(false) => request_animation_frame(move || self.follow()),
            Some(true) => {}
            None => {
                let Some(corner) = corner_of(event) else { return };
                let at = on_paper(event, corner);
                let string = self.string_at(at);
                if self.store.hover.get_untracked() != string {
                    self.store.hover.set(string);
                }
                let over = self.hold(at, PIN_PX).is_some();
                if self.over_pin.get_untracked() != over {
                    self.over_pin.set(over);
                }
            }
        }
    }

    /// What is held goes where the pointer is.
    fn follow(self) {
        let press = self.press.try_update_value(|press| {
            let press = press.as_mut()?;
            let last = press.last.take().filter(|_| press.moving)?;
            Some((press.held.clone(), press.from, last))
        });
        let Some((held, from, (at, fine))) = press.flatten() else { return };
        let look = self.look.get_untracked();
        let by = (at.0 - from.0, at.1 - from.1);
        let by_mm = (by.0 / look.px_per_mm, -by.1 / look.px_per_mm);
        if !matches!(held, Held::Paper(_)) {
            self.store.keep_within(KEPT_WITHIN);
            // The paper rests while something is pulled on it.
            if self.store.paper.look.with_untracked(Option::is_none) {
                self.store.paper.look.set(Some(look));
            }
        }
        match held {
            Held::Paper(began) => self.store.paper.look.set(Some(began.moved(by))),
            Held::Pin { row, length, .. } => {
                let up = self.scene.with_untracked(|scene| scene.up);
                let longer = by_mm.0 * up.0 + by_mm.1 * up.1;
                let length = Length::from_mm(length.to_mm() + longer);
                let unit = self.store.design.with_untracked(|design| design.units.length);
                if let Some(text) = rows::pulled(length, fine, unit) {
                    self.pull(row, text);
                }
            }
            Held::Node { place, nodes } => {
                let began = self.node_place(nodes[place]);
                self.put_node(place, along(began, by_mm, 1.0), if fine { 0.1 } else { 0.5 });
            }
        }
    }

    fn pull(self, row: usize, text: String) {
        self.store.send(&Edit::Cell { row, column: Column::Length, text });
    }

    /// Puts a node at a place of the drawing, kept between its neighbours.
    fn put_node(self, place: usize, at: PlaceMm, step_mm: f64) {
        let point = |mm: f64| Length::from_mm(mm);
        let at = crate::engine::structure::frame::Point { x: point(at.0), y: point(at.1) };
        let own = self.frame.band.with_untracked(|band| band.across_along(at));
        let round = |length: Length| (length.to_mm() / step_mm).round() * step_mm;
        self.set_node(place, (round(own.0), round(own.1)));
    }

    /// Gives a node its two distances, kept between its neighbours.
    pub fn set_node(self, place: usize, (across, along): (f64, f64)) {
        let mut geometry = self.store.design.with_untracked(|design| design.geometry.clone());
        let nodes = &geometry.nodes_mm;
        let low = place.checked_sub(1).and_then(|before| nodes.get(before));
        let high = nodes.get(place + 1);
        let across = across.max(low.map_or(f64::MIN, |node| node.0 + 1.0));
        let across = across.min(high.map_or(f64::MAX, |node| node.0 - 1.0));
        if let Some(node) = geometry.nodes_mm.get_mut(place) {
            *node = (tenths(across), tenths(along));
            self.store.send(&Edit::Geometry(Box::new(geometry)));
        }
    }

    /// The pointer is let go.
    pub fn up(self, event: &PointerEvent) {
        if by_finger(event) && self.lift(event) {
            return;
        }
        self.follow();
        let Some(press) = self.press.try_update_value(Option::take).flatten() else { return };
        let tap = (press.from, browser::now_ms());
        let taps_twice = by_finger(event)
            && !press.moving
            && self.fingers.try_update_value(|f| f.taps(tap.0, tap.1)) == Some(true);
        if taps_twice {
            return self.fit();
        }
        match press.held {
            Held::Paper(_) if !press.moving => {
                if let Some(row) = self.string_at(press.from) {
                    choose(self.store, row);
                }
            }
            Held::Paper(_) => {}
            _ => self.rest(press.whole),
        }
    }

    /// What was held stays as it is now, and the next change is a step of its own.
    fn rest(self, whole: bool) {
        self.store.close_step();
        // When it is seen.
        request_animation_frame(move || {
            set_timeout(move || self.store.keep_and_tell(), Duration::ZERO);
        });
        if whole {
            self.fit();
        }
    }

    /// What is held goes back to where it was. Whether anything was held.
    pub fn give_up(self) -> bool {
        let Some(press) = self.press.try_update_value(Option::take).flatten() else { return false };
        if press.moving {
            match press.held {
                Held::Paper(look) => self.store.paper.look.set((!press.whole).then_some(look)),
                Held::Pin { row, text, .. } => {
                    self.pull(row, text);
                    self.rest(press.whole);
                }
                Held::Node { nodes, .. } => {
                    let mut geometry =
                        self.store.design.with_untracked(|design| design.geometry.clone());
                    geometry.nodes_mm = nodes;
                    self.store.send(&Edit::Geometry(Box::new(geometry)));
                    self.rest(press.whole);
                }
            }
        }
        true
    }
}

/// Puts the cursor of the chart on a string, if it is not there.
fn choose(store: Store, row: usize) {
    let before = store.selection.get_untracked();
    if before != Selection::at(row, before.cursor.column) {
        go_to(store, row);
    }
}

fn tenths(mm: f64) -> f64 {
    (mm * 10.0).round() / 10.0
}

/// Whether a finger does it.
fn by_finger(event: &PointerEvent) -> bool {
    event.pointer_type() == "touch"
}

/// Where the element that listens begins on the page.
fn corner_of(event: &PointerEvent) -> Option<(f64, f64)> {
    let paper: Element = event.current_target()?.dyn_into().ok()?;
    let place = paper.get_bounding_client_rect();
    Some((place.left(), place.top()))
}

fn on_paper(event: &PointerEvent, corner: (f64, f64)) -> (f64, f64) {
    (f64::from(event.client_x()) - corner.0, f64::from(event.client_y()) - corner.1)
}
