//! What can be shown over the drawing: its measures, and how the harmonic curve bends.

use super::super::load_diagram::{self, LoadKind};
use super::super::overlay::{Label, Overlay, PlaceMm};
use super::look::Extent;
use super::svg::measured;
use super::{Scene, Strung, along, apart, between, mm, way};
use crate::design::display;
use crate::design::document::Design;
use crate::design::resolve::Resolved;
use crate::engine::analysis::Analysis;
use crate::engine::bearing::Bearing;
use crate::engine::geometry::Band;
use crate::engine::units::Length;
use crate::words::{Words, charts as say, semicolon};

/// What an overlay is made from.
#[derive(Clone, Copy)]
pub struct Given<'a> {
    pub design: &'a Design,
    pub resolved: &'a Resolved,
    pub analysis: &'a Analysis,
    pub band: &'a Band,
    pub scene: &'a Scene,
    /// What the frame bears, where it is asked for.
    pub bearing: Option<&'a Bearing>,
    /// Index of the string that is marked.
    pub marked: usize,
}

/// A key, the words of a list, and how it is made.
pub type OverlayKind = (&'static str, Words, fn(&Given<'_>) -> Overlay);

/// Everything that can be shown over the drawing.
pub const OVER: &[OverlayKind] = &[
    ("none", say::OVER_NOTHING, nothing),
    ("measures", say::OVER_MEASURES, measures),
    ("bend", say::OVER_BEND, bend),
    ("load-forces", LoadKind::Forces.title(), |given| load(LoadKind::Forces, given)),
    ("load-moment", LoadKind::Moment.title(), |given| load(LoadKind::Moment, given)),
    ("load-shear", LoadKind::Shear.title(), |given| load(LoadKind::Shear, given)),
    ("load-axial", LoadKind::Axial.title(), |given| load(LoadKind::Axial, given)),
    ("load-twist", LoadKind::Twist.title(), |given| load(LoadKind::Twist, given)),
    ("load-use", LoadKind::Use.title(), |given| load(LoadKind::Use, given)),
];

/// Whether a kind shows what the frame bears.
pub fn is_load(key: &str) -> bool {
    key.starts_with("load-")
}

/// The kind with a key.
pub fn kind(key: &str) -> OverlayKind {
    OVER.iter().find(|kind| kind.0 == key).copied().unwrap_or(OVER[0])
}

/// What an overlay covers, its words too.
pub fn extent(overlay: &Overlay) -> Option<Extent> {
    let lines = [&overlay.lines, &overlay.areas, &overlay.dashed, &overlay.limits];
    let lines = lines.into_iter().flatten().flatten().copied();
    Extent::of(lines.chain(overlay.labels.iter().map(|label| label.at)))
}

fn load(kind: LoadKind, given: &Given<'_>) -> Overlay {
    let units = given.design.units;
    given
        .bearing
        .map(|bearing| load_diagram::overlay(kind, given.band, bearing, units))
        .unwrap_or_default()
}

fn nothing(_: &Given<'_>) -> Overlay {
    Overlay::default()
}

/// Height and depth of the whole, the longest and the shortest string, the board and its angle, the first and the
/// last gap, and the neck at the marked string.
fn measures(given: &Given<'_>) -> Overlay {
    let Given { design, scene, .. } = given;
    let (Some(whole), Some(lowest), Some(highest)) =
        (scene.extent, scene.strings.last(), scene.strings.first())
    else {
        return Overlay::default();
    };
    let mut lines = Vec::new();
    let mut labels = Vec::new();
    let said = |mm: f64| display::length_with_unit(Length::from_mm(mm), design.units.length);
    let tall = whole.top - whole.bottom;
    let (off, tick) = (0.05 * tall, 0.007 * tall);
    let mut put = |one: PlaceMm, other: PlaceMm, at: PlaceMm, text: String| {
        lines.extend(measured(one, other, tick));
        if !text.is_empty() {
            labels.push(Label::new(at, text));
        }
    };
    let left = whole.left - 1.5 * off;
    let height = ((left, whole.bottom), (left, whole.top));
    put(height.0, height.1, between(height.0, height.1), said(tall));
    let low = whole.bottom - 2.3 * off;
    let depth = ((whole.left, low), (whole.right, low));
    put(depth.0, depth.1, between(depth.0, depth.1), said(whole.right - whole.left));
    let (mut longest, mut shortest) = (lowest, highest);
    for string in &scene.strings {
        let long = |string: &Strung| apart(string.start, string.bridge);
        longest = if long(string) > long(longest) { string } else { longest };
        shortest = if long(string) < long(shortest) { string } else { shortest };
    }
    let right = (scene.up.1, -scene.up.0);
    let middle = between(shortest.start, shortest.bridge);
    // Beside the string, which is shorter than its words.
    let beside = (whole.right + 0.7 * off, middle.1 + 0.6 * off);
    put(
        longest.start,
        longest.bridge,
        along(longest.start, scene.up, 0.38 * tall),
        said(apart(longest.start, longest.bridge)),
    );
    put(shortest.start, shortest.bridge, beside, said(apart(shortest.start, shortest.bridge)));
    if let [foot, end, ..] = scene.board[..]
        && let Some(board) = way(foot, end)
    {
        let behind = (board.1, -board.0);
        // Behind the letters and the numbers of the strings.
        let (one, other) = (along(foot, behind, 2.2 * off), along(end, behind, 2.2 * off));
        put(one, other, along(between(one, other), behind, 1.8 * off), said(apart(foot, end)));
    }
    let mut gaps = Vec::new();
    for (string, gap, side) in [
        (lowest, given.band.holes.get(lowest.index).and_then(|hole| hole.gap), 1.0),
        (highest, given.band.holes.get(highest.index + 1).and_then(|hole| hole.gap), -1.0),
    ] {
        let Some(gap) = gap else { continue };
        let one = along(string.start, scene.up, 0.3 * apart(string.start, string.bridge));
        put(one, along(one, right, side * gap.square.to_mm()), one, String::new());
        gaps.push(said(gap.square.to_mm()));
    }
    neck_depth(given, &mut put, &said);
    angle(given, tall, &mut lines, &mut labels);
    let marked = given.marked + 1;
    let mut caption = say::measures(&marked);
    if !gaps.is_empty() {
        caption = say::measures_gaps(&gaps.join(", "), &caption);
    }
    Overlay { caption, lines, labels, ..Overlay::default() }
}

/// The depth of the neck at the place of its middle line that is nearest to the marked string's pin.
fn neck_depth(
    given: &Given<'_>,
    put: &mut impl FnMut(PlaceMm, PlaceMm, PlaceMm, String),
    said: &impl Fn(f64) -> String,
) {
    let string = given.scene.strings.iter().find(|string| string.index == given.marked);
    let (Some(neck), Some(string)) = (given.band.neck.as_ref(), string) else { return };
    let far = |place: &usize| apart(mm(neck.centre[*place].at), string.bridge);
    let mut best: Option<usize> = None;
    for place in 0..neck.centre.len() {
        let nearer = best.is_none_or(|best| far(&place) < far(&best));
        best = if nearer { Some(place) } else { best };
    }
    let Some(place) = best else { return };
    let station = &neck.centre[place];
    let (before, after) = (place.saturating_sub(1), (place + 1).min(neck.centre.len() - 1));
    let Some(on) = way(mm(neck.centre[before].at), mm(neck.centre[after].at)) else { return };
    let (square, half) = ((-on.1, on.0), station.depth.to_mm() / 2.0);
    let (one, other) = (along(mm(station.at), square, half), along(mm(station.at), square, -half));
    let (low, high) = if one.1 < other.1 { (one, other) } else { (other, one) };
    put(
        low,
        high,
        // Above the neck, as the strings stand below it.
        along(
            high,
            way(low, high).unwrap_or((0.0, 1.0)),
            0.055 * given.scene.extent.map_or(0.0, |e| e.top - e.bottom),
        ),
        said(2.0 * half),
    );
}

/// The angle between strings and board, as a bow at the lowest hole.
fn angle(given: &Given<'_>, tall: f64, lines: &mut Vec<Vec<PlaceMm>>, labels: &mut Vec<Label>) {
    let (Some(lowest), [foot, end, ..]) = (given.scene.strings.last(), &given.scene.board[..])
    else {
        return;
    };
    let Some(board) = way(*foot, *end) else { return };
    let (from, to) = (board.1.atan2(board.0), given.scene.up.1.atan2(given.scene.up.0));
    let at = |share: f64, far: f64| {
        let turn = from + share * (to - from);
        along(lowest.hole, (turn.cos(), turn.sin()), far * tall)
    };
    lines.push((0..=12_u32).map(|step| at(f64::from(step) / 12.0, 0.13)).collect());
    let degrees = given.resolved.geometry.board_angle_rad.to_degrees();
    let text = format!("{}°", display::trimmed(display::decimals(degrees, 1), 0));
    labels.push(Label::new(at(0.5, 0.16), text));
}

/// How sharply the harmonic curve turns at each of them, as a comb on its outer side, and the strings whose
/// lengths stand out.
fn bend(given: &Given<'_>) -> Overlay {
    let Given { design, band, scene, .. } = given;
    let Some(whole) = scene.extent else { return Overlay::default() };
    let tall = whole.top - whole.bottom;
    let own = |index: usize| band.smoothness.curvature_per_m.get(index).copied().flatten();
    // With the neighbours, as lengths in whole millimetres alone make single teeth jump.
    let curvature = |string: &Strung| {
        let here = own(string.index).unwrap_or(0.0);
        let beside = |index: Option<usize>| index.and_then(own).unwrap_or(here);
        0.5 * here + 0.25 * (beside(string.index.checked_sub(1)) + beside(Some(string.index + 1)))
    };
    let most = scene.strings.iter().map(|string| curvature(string).abs()).fold(0.0, f64::max);
    let mut overlay = Overlay::default();
    let mut tips: Vec<PlaceMm> = Vec::new();
    for (place, string) in scene.strings.iter().enumerate() {
        let near = |place: usize| scene.strings.get(place).map(|other| other.bridge);
        let before = place.checked_sub(1).and_then(near).unwrap_or(string.bridge);
        let after = near(place + 1).unwrap_or(string.bridge);
        let Some(way) = way(after, before) else { continue };
        // The outer side of a curve whose centre lies on the board's side is upward.
        let out = (-way.1, way.0);
        let share = if most > 0.0 { curvature(string) / most } else { 0.0 };
        let tip = along(string.bridge, out, 0.13 * tall * share);
        overlay.lines.push(vec![string.bridge, tip]);
        tips.push(tip);
    }
    overlay
        .areas
        .push(scene.strings.iter().map(|s| s.bridge).chain(tips.iter().rev().copied()).collect());
    overlay.lines.push(tips);
    let mut kinks = Vec::new();
    for kink in &band.smoothness.kinks {
        let by = display::length_with_unit(
            Length::from_m(kink.move_by.to_m().abs()),
            design.units.length,
        );
        let number = kink.index + 1;
        let looks = if kink.move_by.to_m() > 0.0 { say::looks_short } else { say::looks_long };
        kinks.push(looks(&by, &number));
        let Some(string) = scene.strings.iter().find(|string| string.index == kink.index) else {
            continue;
        };
        let at = along(string.bridge, scene.up, -0.05 * tall);
        overlay.lines.push(measured(string.bridge, at, 0.0).swap_remove(0));
        let below = along(at, scene.up, -0.02 * tall);
        overlay.labels.push(Label::new(below, number.to_string()));
    }
    overlay.caption = if kinks.is_empty() {
        say::BEND_EVEN.into()
    } else {
        say::bend_kinks(&kinks.join(semicolon()))
    };
    overlay
}
