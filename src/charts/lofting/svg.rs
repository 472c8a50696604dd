//! A scene and what lies over it as the text of an SVG picture, with classes for its colours.
//!
//! `y` is turned round, as SVG counts downwards. Lines and letters keep their size on the paper, so that the text is
//! written for the size of a millimetre.

mod writer;

use std::fmt::Write as _;

pub use self::writer::number;
use self::writer::{LETTERS_PX, Writer};
use super::super::overlay::{Overlay, PlaceMm, Side};
use super::{Scene, Strung, along, between, way};
use crate::engine::geometry::Contact;
use crate::engine::pitch::Letter;

/// From which distance of two strings along the board, in pixels, each has its number.
const NUMBERED_PX: f64 = 17.0;
/// From a hole to the letter or the number below it, in pixels.
const BELOW_PX: f64 = 15.0;
/// The letters and numbers of the strings, for a paper on which a millimetre has so many pixels. They stand at the
/// holes, which rest while a pin is pulled, so that they need not be written again.
pub fn letters_text(scene: &Scene, px_per_mm: f64) -> String {
    let mut w = Writer::new(px_per_mm, 4 * 1024);
    if !scene.strings.is_empty() {
        letters(&mut w, scene);
    }
    w.out
}

/// The scene without its letters, for a paper on which a millimetre has so many pixels.
pub fn scene_text(scene: &Scene, px_per_mm: f64) -> String {
    let mut w = Writer::new(px_per_mm, 24 * 1024);
    let px = w.px;
    if scene.strings.is_empty() {
        return w.out;
    }
    for (class, corners) in [("wood", &scene.pillar), ("board", &scene.board)] {
        w.open(class, 1.2 * px);
        w.line(corners, true);
        w.close();
    }
    if !scene.neck.is_empty() {
        w.open("wood", 1.2 * px);
        w.pieces(&scene.neck);
        w.close();
    }
    for string in &scene.strings {
        draw_string(&mut w, string);
    }
    metal(&mut w, scene);
    w.out
}

/// The class of a string's colour.
const fn colour(letter: Option<char>) -> &'static str {
    match letter {
        Some('C') => "string c",
        Some('F') => "string f",
        _ => "string",
    }
}

/// How wide a string is drawn: by its gauge, and never thinner than can be seen; as thick as it is where it is seen
/// from near.
fn width_mm(string: &Strung, px: f64) -> f64 {
    let gauge = string.gauge_mm.unwrap_or(0.5).clamp(0.0, 6.0);
    let least = if string.wound { 2.4 } else { 0.55 };
    ((least + 0.6 * gauge.min(2.0)) * px).max(gauge)
}

/// A stroke; of a wound string two, with paper between.
fn draw_string(w: &mut Writer, string: &Strung) {
    let wide = width_mm(string, w.px);
    let places = [string.hole, string.bridge, string.tuning];
    w.open(colour(string.letter), wide);
    w.line(&places, false);
    w.close();
    if string.wound {
        w.open("core", (wide - 1.8 * w.px).max(0.45 * wide));
        w.line(&places, false);
        w.close();
    }
}

/// Tuning pins at their size, bridge pins, holes, levers and discs: one path for each kind.
fn metal(w: &mut Writer, scene: &Scene) {
    let px = w.px;
    // A dot is a line without a length, with round ends: a quarter of the text of a circle.
    w.open("hole", (2.6 * px).max(2.4));
    scene.holes.iter().for_each(|at| w.dot(*at));
    w.close();
    w.open("tuning", px);
    for string in &scene.strings {
        w.circle(string.tuning, (scene.pin_mm.unwrap_or(5.0) / 2.0).max(1.3 * px));
    }
    w.close();
    w.open("bridge", (3.0 * px).max(2.6));
    scene.strings.iter().for_each(|string| w.dot(string.bridge));
    w.close();
    contacts(w, scene, Contact::Lever, "lever", lever);
    contacts(w, scene, Contact::DiscNatural, "disc", disc);
    contacts(w, scene, Contact::DiscSharp, "disc", disc_with_bar);
}

/// Writes a shape about a place: the writer, the place, the way up along the strings, and how much room there is to
/// either side.
type ContactMark = fn(&mut Writer, PlaceMm, PlaceMm, f64);

fn contacts(w: &mut Writer, scene: &Scene, kind: Contact, class: &str, shape: ContactMark) {
    let of_kind = |string: &Strung| string.contacts.iter().any(|(contact, _)| *contact == kind);
    if !scene.strings.iter().any(of_kind) {
        return;
    }
    w.open(class, 1.1 * w.px);
    let room = 0.36 * scene.gap_mm;
    for (contact, at) in scene.strings.iter().flat_map(|string| &string.contacts) {
        if *contact == kind {
            shape(w, *at, scene.up, room);
        }
    }
    w.close();
}

/// A flag beside the string, its foot where it touches.
fn lever(w: &mut Writer, at: PlaceMm, up: PlaceMm, room: f64) {
    let right = (up.1, -up.0);
    let tip = along(along(at, right, room), up, 0.9 * room);
    w.line(&[along(at, right, -0.35 * room), along(at, right, room), tip], true);
}

fn disc(w: &mut Writer, at: PlaceMm, _: PlaceMm, room: f64) {
    w.circle(at, 0.85 * room);
}

fn disc_with_bar(w: &mut Writer, at: PlaceMm, up: PlaceMm, room: f64) {
    let right = (up.1, -up.0);
    disc(w, at, up, room);
    w.line(&[along(at, right, -0.85 * room), along(at, right, 0.85 * room)], false);
}

/// C and F at their holes, and the numbers of as many strings as there is room for.
fn letters(w: &mut Writer, scene: &Scene) {
    let px = w.px;
    let (first, last) = match (scene.board.first(), scene.board.get(1)) {
        (Some(first), Some(last)) => (*first, *last),
        _ => return,
    };
    let Some(way) = way(first, last) else { return };
    // Behind the board, where no string is.
    let behind = (way.1, -way.0);
    let steep = (way.0 * scene.up.1 - way.1 * scene.up.0).abs().max(0.05);
    let all = scene.gap_mm / steep / px >= NUMBERED_PX;
    for (class, letter) in [("c-mark", 'C'), ("f-mark", 'F')] {
        w.open(class, px);
        let of_letter = scene.strings.iter().filter(|string| string.letter == Some(letter));
        for string in of_letter {
            let at = along(string.hole, behind, BELOW_PX * px);
            if letter == 'C' {
                w.circle(at, 6.5 * px);
            } else {
                let (x, y) = (6.0 * px, 6.0 * px);
                let corners = [(-x, -y), (x, -y), (x, y), (-x, y)];
                let corners = corners.map(|(x, y)| (at.0 + x, at.1 + y));
                w.line(&corners, true);
            }
        }
        w.close();
    }
    w.words_open("words", LETTERS_PX);
    let mut text = String::new();
    // A number stands level with its letter where the board is steep, else below it.
    let beside = if behind.0 > 0.4 { (16.0 * px, 0.0) } else { (0.0, -15.0 * px) };
    for string in &scene.strings {
        let mut at = along(string.hole, behind, BELOW_PX * px);
        if let Some(letter) = string.letter {
            let letter = if letter == 'C' { Letter::C } else { Letter::F };
            w.word("mark", at, &letter.printed());
            at = (at.0 + beside.0, at.1 + beside.1);
        }
        if all || string.letter.is_some() {
            text.clear();
            let _ = write!(text, "{}", string.index + 1);
            w.word("", at, &text);
        }
    }
    w.out.push_str("</g>");
}

/// The strings that are marked and pointed at, lifted out of the others, and a word at one of them.
pub fn marks_text(
    scene: &Scene,
    px_per_mm: f64,
    marked: Option<usize>,
    pointed: Option<usize>,
    word: &str,
) -> String {
    let mut w = Writer::new(px_per_mm, 1024);
    let px = w.px;
    let of = |index: Option<usize>| scene.strings.iter().find(|string| Some(string.index) == index);
    let pointed = pointed.filter(|index| Some(*index) != marked);
    for (class, string) in [("marked", of(marked)), ("pointed", of(pointed))] {
        let Some(string) = string else { continue };
        w.open(class, width_mm(string, px) + 5.0 * px);
        w.line(&[string.hole, string.bridge, string.tuning], false);
        w.close();
        w.open("ring", 1.6 * px);
        w.circle(string.bridge, (5.0 * px).max(3.0));
        w.close();
    }
    if let Some(string) = of(pointed).or(of(marked))
        && !word.is_empty()
    {
        let from_edge = scene.neck.iter().filter(|piece| {
            let at = piece.end();
            let across =
                (at.0 - string.tuning.0) * scene.up.1 - (at.1 - string.tuning.1) * scene.up.0;
            across.abs() < 2.0 * scene.gap_mm
        });
        // Above the highest place of the neck near by.
        let up = |at: PlaceMm| at.0 * scene.up.0 + at.1 * scene.up.1;
        let most = from_edge.map(|piece| up(piece.end())).fold(up(string.tuning), f64::max);
        let at = along(string.tuning, scene.up, most - up(string.tuning) + 13.0 * px);
        w.words_open("words said", 12.0);
        w.word("", at, word);
        w.out.push_str("</g>");
    }
    w.out
}

/// What lies over the drawing.
pub fn overlay_text(overlay: &Overlay, px_per_mm: f64) -> String {
    let mut w = Writer::new(px_per_mm, 4 * 1024);
    let px = w.px;
    for (class, lines, closed, dash_px) in [
        ("area", &overlay.areas, true, 0.0),
        ("line", &overlay.lines, false, 0.0),
        ("line", &overlay.dashed, false, 5.0),
        ("limit", &overlay.limits, false, 2.5),
    ] {
        if lines.is_empty() {
            continue;
        }
        w.open_dashed(class, 1.2 * px, dash_px);
        for line in lines {
            w.line(line, closed);
        }
        w.close();
    }
    if !overlay.labels.is_empty() {
        w.words_open("words", LETTERS_PX);
        for label in &overlay.labels {
            let anchor = match label.side {
                Side::Middle => "",
                Side::Left => "end",
                Side::Right => "start",
            };
            for (place, line) in label.text.lines().enumerate() {
                let down = 1.25 * LETTERS_PX * px * f64::from(u8::try_from(place).unwrap_or(0));
                w.anchored("", anchor, (label.at.0, label.at.1 - down), line);
            }
        }
        w.out.push_str("</g>");
    }
    w.out
}

/// A line that measures, with a stroke across each end.
pub fn measured(one: PlaceMm, other: PlaceMm, tick_mm: f64) -> Vec<Vec<PlaceMm>> {
    let Some(way) = way(one, other) else { return Vec::new() };
    let across = ((way.0 + way.1) * 0.7, (way.1 - way.0) * 0.7);
    let tick = |at: PlaceMm| vec![along(at, across, -tick_mm), along(at, across, tick_mm)];
    vec![vec![one, between(one, other), other], tick(one), tick(other)]
}
