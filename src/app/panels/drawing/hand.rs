//! What pointer and keys do on the paper: look around, choose strings, pull pins and nodes.

use std::time::Duration;

use leptos::prelude::*;
use wasm_bindgen::JsCast;
use web_sys::{Element, KeyboardEvent, PointerEvent};

use crate::app::frame::Frame;
use crate::app::grid::Selection;
use crate::app::panels::chart_acts::go_to;
use crate::app::rows;
use crate::app::store::{Store, Window};
use crate::charts::lofting::look::Look;
use crate::charts::lofting::{Scene, along, apart, pin_at, string_at};
use crate::charts::overlay::PlaceMm;
use crate::design::document::DrivesSpec;
use crate::design::edit::{Column, Edit, cell_text};
use crate::engine::units::Length;

/// How near the pointer must come to a string, and to a pin, in pixels.
const STRING_PX: f64 = 14.0;
const PIN_PX: f64 = 9.0;
const FINGER_PX: f64 = 20.0;
/// From how many pixels on a press is a drag and no click.
const DRAG_PX: f64 = 3.0;
/// How far an arrow key moves the paper, in pixels.
const ARROW_PX: f64 = 60.0;
/// A second of a drag is kept at once, as each step by itself would take as long as drawing it.
const KEPT_WITHIN: Duration = Duration::from_secs(1);
/// What a key or a button makes larger.
pub const ZOOM: f64 = 1.25;

/// What is said where a pin cannot be pulled.
pub const CURVE_DRIVES: &str =
    "The curve of the pins gives the lengths: move its nodes, and the pins follow.";

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
        if event.button() != 0 || !event.is_primary() {
            return;
        }
        let touch = event.pointer_type() == "touch";
        let from = on_paper(event, corner);
        let look = self.look.get_untracked();
        let held = self.hold(from, if touch { FINGER_PX } else { PIN_PX });
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

    /// The pointer moves: with something held at the next frame, so that each is worked out once.
    pub fn moved(self, event: &PointerEvent) {
        let now = event.alt_key();
        let waits = self.press.try_update_value(|press| {
            let press = press.as_mut()?;
            let at = on_paper(event, press.corner);
            press.moving |= apart(at, press.from) >= DRAG_PX;
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
    pub fn up(self) {
        self.follow();
        let Some(press) = self.press.try_update_value(Option::take).flatten() else { return };
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

    /// A key on the paper; whether it did anything.
    pub fn key(self, event: &KeyboardEvent) -> bool {
        let alt = event.alt_key();
        if event.ctrl_key() || event.meta_key() {
            return false;
        }
        let times = if event.shift_key() { 10.0 } else { 1.0 };
        let move_paper = |right: f64, down: f64| {
            let look = self.look.get_untracked().moved((right * ARROW_PX, down * ARROW_PX));
            self.store.paper.look.set(Some(look));
        };
        match (event.key().as_str(), alt) {
            ("ArrowUp", true) => self.step_length(times),
            ("ArrowDown", true) => self.step_length(-times),
            ("ArrowLeft", false) => move_paper(1.0, 0.0),
            ("ArrowRight", false) => move_paper(-1.0, 0.0),
            ("ArrowUp", false) => move_paper(0.0, 1.0),
            ("ArrowDown", false) => move_paper(0.0, -1.0),
            ("+" | "=", false) => self.zoom(ZOOM, None),
            ("-", false) => self.zoom(1.0 / ZOOM, None),
            ("0", false) => self.fit(),
            ("PageUp", false) => self.choose_beside(|row, _| row.saturating_sub(1)),
            ("PageDown", false) => self.choose_beside(|row, last| (row + 1).min(last)),
            ("Home", false) => self.choose_beside(|_, _| 0),
            ("End", false) => self.choose_beside(|_, last| last),
            ("Enter", _) if self.store.count_now() > 0 => {
                self.store.window.set(Some(Window::Details));
            }
            ("Escape", _) => return self.give_up(),
            _ => return false,
        }
        true
    }

    /// Chooses another string and says which.
    fn choose_beside(self, next: fn(usize, usize) -> usize) {
        let last = self.store.count_now().saturating_sub(1);
        let row = next(self.store.selection.get_untracked().cursor.row, last);
        choose(self.store, row);
        self.store.hover.set(None);
        self.say(row);
        let look = self.look.get_untracked();
        let (wide, high) = self.store.paper.size.get_untracked();
        let at = self.scene.with_untracked(|scene| {
            scene.strings.iter().find(|string| string.index == row).map(|string| string.bridge)
        });
        let Some((x, y)) = at.map(|at| look.pixel(at)) else { return };
        // Its pin comes to the middle if it was out of sight.
        if !(0.0..=wide).contains(&x) || !(0.0..=high).contains(&y) {
            self.store.paper.look.set(Some(look.moved((wide / 2.0 - x, high / 2.0 - y))));
        }
    }

    /// Makes the marked string so many steps longer.
    fn step_length(self, steps: f64) {
        if untrack(|| self.curve_drives()) {
            self.said.set(CURVE_DRIVES.to_owned());
            return;
        }
        let row = self.store.selection.get_untracked().cursor.row;
        let length = self.store.analysis.with_untracked(|a| a.strings.get(row)?.length.ok());
        let unit = self.store.design.with_untracked(|design| design.units.length);
        let text = length.and_then(|length| rows::stepped(length, steps, unit));
        if let Some(text) = text {
            self.pull(row, text);
            self.say(row);
        }
    }

    fn say(self, row: usize) {
        let units = self.store.design.with_untracked(|design| design.units);
        let words = self.store.analysis.with_untracked(|a| rows::in_short(a, &units, row));
        self.said.set(words);
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

/// Where the element that listens begins on the page.
fn corner_of(event: &PointerEvent) -> Option<(f64, f64)> {
    let paper: Element = event.current_target()?.dyn_into().ok()?;
    let place = paper.get_bounding_client_rect();
    Some((place.left(), place.top()))
}

fn on_paper(event: &PointerEvent, corner: (f64, f64)) -> (f64, f64) {
    (f64::from(event.client_x()) - corner.0, f64::from(event.client_y()) - corner.1)
}
