//! The harp drawn to scale from the side: a scene in millimetres, which part of it is in sight, and both as the text
//! of an SVG picture.
//!
//! The scene is worked out again whenever the design changes, and written again at each frame of a drag, so that both
//! are kept short.

pub mod changes;
pub mod fingers;
pub mod look;
pub mod over;
pub mod svg;

use kurbo::{BezPath, PathEl};

use self::look::Extent;
use super::axis::is_usable;
use super::band::is_wound;
use super::overlay::PlaceMm;
use crate::design::document::Design;
use crate::design::resolve::Resolved;
use crate::design::thickness_map;
use crate::engine::analysis::Analysis;
use crate::engine::geometry::{Band, Contact};
use crate::engine::pitch::{Letter, Note};
use crate::engine::structure::frame;
use crate::engine::units::Length;

/// One string of known length.
#[derive(Clone, Debug, PartialEq)]
pub struct Strung {
    /// Index of the string in the harp.
    pub index: usize,
    /// Where it leaves the board.
    pub hole: PlaceMm,
    /// Where its vibrating length begins.
    pub start: PlaceMm,
    pub bridge: PlaceMm,
    pub tuning: PlaceMm,
    /// Diameter, where it is known.
    pub gauge_mm: Option<f64>,
    /// Whether something is wound on it, as far as is known.
    pub wound: bool,
    /// `C` or `F`, if it is one.
    pub letter: Option<char>,
    /// Levers and discs.
    pub contacts: Vec<(Contact, PlaceMm)>,
}

/// The harp from the side, in millimetres with `y` up.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Scene {
    /// The strings whose place is known, from string 1 down.
    pub strings: Vec<Strung>,
    /// The holes of all strings.
    pub holes: Vec<PlaceMm>,
    /// Upward along the strings, of length 1.
    pub up: PlaceMm,
    /// The outline of the neck: curves that end in the third of their places.
    pub neck: Vec<Piece>,
    /// The corners of the pillar.
    pub pillar: Vec<PlaceMm>,
    /// The corners of the board, cut along its middle.
    pub board: Vec<PlaceMm>,
    /// Diameter of the tuning pins, if it is given.
    pub pin_mm: Option<f64>,
    /// From string to string in the middle of the harp, square to them.
    pub gap_mm: f64,
    /// What the drawing covers.
    pub extent: Option<Extent>,
}

/// A piece of an outline.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Piece {
    Move(PlaceMm),
    Line(PlaceMm),
    Curve(PlaceMm, PlaceMm, PlaceMm),
}

impl Piece {
    /// Where it ends.
    pub const fn end(self) -> PlaceMm {
        match self {
            Self::Move(at) | Self::Line(at) | Self::Curve(_, _, at) => at,
        }
    }
}

/// A place of the engine in millimetres.
pub fn mm(at: frame::Point) -> PlaceMm {
    (at.x.to_mm(), at.y.to_mm())
}

/// From one place on, a way in a direction.
pub fn along(from: PlaceMm, way: PlaceMm, by: f64) -> PlaceMm {
    (from.0 + by * way.0, from.1 + by * way.1)
}

/// The distance of two places.
pub fn apart(one: PlaceMm, other: PlaceMm) -> f64 {
    (one.0 - other.0).hypot(one.1 - other.1)
}

/// Half the way.
pub fn between(one: PlaceMm, other: PlaceMm) -> PlaceMm {
    ((one.0 + other.0) / 2.0, (one.1 + other.1) / 2.0)
}

/// The way from one place to another, of length 1; nothing where they are one.
pub fn way(from: PlaceMm, to: PlaceMm) -> Option<PlaceMm> {
    let long = apart(from, to);
    (long > 1e-9 && long.is_finite()).then(|| ((to.0 - from.0) / long, (to.1 - from.1) / long))
}

/// Works out what stands where.
pub fn scene(design: &Design, resolved: &Resolved, analysis: &Analysis, band: &Band) -> Scene {
    let of = |(index, placed): (usize, &_)| {
        let placed: &crate::engine::geometry::Placed = Result::as_ref(placed).ok()?;
        let figures = analysis.strings.get(index)?;
        let string = resolved.harp.strings.get(index)?;
        let gauge_mm = figures.gauge.ok().map(Length::to_mm).filter(|mm| is_usable(*mm));
        Some(Strung {
            index,
            hole: mm(placed.hole.board),
            start: mm(placed.hole.start),
            bridge: mm(placed.bridge),
            tuning: mm(placed.tuning),
            gauge_mm,
            wound: string.make_up.as_ref().is_ok_and(is_wound),
            letter: match figures.note.map(Note::letter) {
                Some(Letter::C) => Some('C'),
                Some(Letter::F) => Some('F'),
                _ => None,
            },
            contacts: placed.contacts.iter().map(|(contact, at)| (*contact, mm(*at))).collect(),
        })
    };
    let strings: Vec<Strung> = band.strings.iter().enumerate().filter_map(of).collect();
    if strings.is_empty() {
        return Scene::default();
    }
    let metre = Length::from_m(1.0);
    let (zero, up) = (Length::default(), band.point(Length::default(), metre));
    let origin = band.point(zero, zero);
    let up = (up.x.to_m() - origin.x.to_m(), up.y.to_m() - origin.y.to_m());
    let gap = band.holes.get(band.holes.len() / 2).and_then(|hole| hole.gap);
    let mut scene = Scene {
        holes: band.holes.iter().map(|hole| mm(hole.board)).collect(),
        up,
        neck: band.neck.as_ref().map(|neck| outline(&neck.lower, &neck.upper)).unwrap_or_default(),
        pillar: pillar(band, resolved.geometry.pillar_width.to_mm()),
        board: board(band, design),
        pin_mm: Some(design.allowances.pin_mm).filter(|mm| *mm > 0.0),
        gap_mm: gap.map_or(12.0, |gap| gap.square.to_mm()),
        extent: None,
        strings,
    };
    let ends = |s: &Strung| [s.hole, s.bridge, s.tuning];
    let places = scene.strings.iter().flat_map(ends).chain(scene.pillar.iter().copied());
    let places = places.chain(scene.board.iter().copied());
    scene.extent = Extent::of(places.chain(scene.neck.iter().map(|piece| piece.end())));
    scene
}

/// Both edges of the neck as one outline: along the lower one and back along the upper one.
fn outline(lower: &BezPath, upper: &BezPath) -> Vec<Piece> {
    let mm = |at: kurbo::Point| (1e3 * at.x, 1e3 * at.y);
    let mut all: Vec<Piece> = Vec::new();
    let back = upper.reverse_subpaths();
    // The pieces of a path that was cut are in the order of the way out; for the way back they are turned round.
    let mut subpaths: Vec<&[PathEl]> = Vec::new();
    let elements = back.elements();
    let starts = |place: &usize| matches!(elements[*place], PathEl::MoveTo(_));
    let cuts: Vec<usize> = (0..elements.len()).filter(starts).chain([elements.len()]).collect();
    for pair in cuts.windows(2).rev() {
        subpaths.push(&elements[pair[0]..pair[1]]);
    }
    let both = lower.elements().iter().chain(subpaths.into_iter().flatten());
    for element in both {
        match element {
            PathEl::MoveTo(at) if all.is_empty() => all.push(Piece::Move(mm(*at))),
            PathEl::MoveTo(at) | PathEl::LineTo(at) => all.push(Piece::Line(mm(*at))),
            PathEl::CurveTo(one, two, at) => all.push(Piece::Curve(mm(*one), mm(*two), mm(*at))),
            PathEl::QuadTo(one, at) => all.push(Piece::Curve(mm(*one), mm(*one), mm(*at))),
            PathEl::ClosePath => {}
        }
    }
    all
}

/// The four corners of the pillar; none without a neck.
fn pillar(band: &Band, width_mm: f64) -> Vec<PlaceMm> {
    let Ok(top) = band.pillar.1 else { return Vec::new() };
    let (foot, top) = (mm(band.pillar.0), mm(top));
    let Some(way) = way(foot, top) else { return Vec::new() };
    let (left, right) = ((-way.1, way.0), (way.1, -way.0));
    let half = width_mm / 2.0;
    vec![
        along(foot, left, half),
        along(top, left, half),
        along(top, right, half),
        along(foot, right, half),
    ]
}

/// The board from its lower end to its upper one, with its thickness behind the line that the strings meet.
fn board(band: &Band, design: &Design) -> Vec<PlaceMm> {
    let (low, high) = (mm(band.board.0), mm(band.board.1));
    let Some(way) = way(low, high) else { return vec![low, high] };
    let behind = (way.1, -way.0);
    let spec = &design.geometry.board;
    let thick = |mm: f64| if mm.is_finite() { mm.clamp(0.0, 100.0) } else { 0.0 };
    if let Some(map) = thickness_map::thick(&design.geometry) {
        // Its middle, from row to row.
        let rows = map.rows().iter().map(|row| row.0).filter(|share| *share > 0.0 && *share < 1.0);
        let shares = std::iter::once(0.0).chain(rows).chain([1.0]);
        let inside = shares.map(|share| {
            let at = (low.0 + share * (high.0 - low.0), low.1 + share * (high.1 - low.1));
            along(at, behind, map.at(share, 0.0).to_mm())
        });
        return [low, high].into_iter().chain(inside.rev()).collect();
    }
    vec![
        low,
        high,
        along(high, behind, thick(spec.treble_thickness_mm)),
        along(low, behind, thick(spec.bass_thickness_mm)),
    ]
}

/// How far a place lies from a string, between its hole and its tuning pin.
pub fn distance_mm(string: &Strung, at: PlaceMm) -> f64 {
    let (from, to) = (string.hole, string.bridge);
    let (x, y) = (to.0 - from.0, to.1 - from.1);
    let square = x * x + y * y;
    let share =
        if square > 0.0 { ((at.0 - from.0) * x + (at.1 - from.1) * y) / square } else { 0.0 };
    apart(at, along(from, (x, y), share.clamp(0.0, 1.0)))
}

/// The string nearest to a place, if there is one as near as that.
pub fn string_at(scene: &Scene, at: PlaceMm, within_mm: f64) -> Option<usize> {
    nearest(scene, within_mm, |string| distance_mm(string, at))
}

/// The string whose bridge pin is nearest to a place, if there is one as near as that.
pub fn pin_at(scene: &Scene, at: PlaceMm, within_mm: f64) -> Option<usize> {
    nearest(scene, within_mm, |string| apart(string.bridge, at))
}

fn nearest(scene: &Scene, within_mm: f64, far: impl Fn(&Strung) -> f64) -> Option<usize> {
    let mut best = (within_mm, None);
    for string in &scene.strings {
        let here = far(string);
        if here <= best.0 {
            best = (here, Some(string.index));
        }
    }
    best.1
}

#[cfg(test)]
mod tests;
