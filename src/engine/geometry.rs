//! The shape of a harp: where strings, holes, pins, levers and discs stand, the lines of neck, pillar and board,
//! how smooth the harmonic curve is, and how close the strings are.
//!
//! Coordinates are those of a drawing with `x` towards the treble and `y` up; the lowest string meets the
//! soundboard's line at the origin. The strings are parallel. Within this module places are also given in the
//! strings' own axes: `across`, square to the strings and towards the treble, and `along` them, up from the
//! board. In these, the board's line rises by `cot θ`, and how far the strings lean from upright does not matter.

mod axes;
mod curve;
mod loads;
mod near;
mod neck;
mod shoulder;
mod smooth;
mod spacing;
mod spline;

use self::axes::Axes;
pub use self::curve::{CurveError, Fitted, MOST_NODES, PinCurve};
pub use self::loads::{BoardPull, Loads, Room, loads, pulls};
pub use self::neck::{NeckShape, NeckStation};
pub use self::smooth::{Kink, Smoothness};
pub use self::spacing::{Gap, Gaps};
use super::analysis::{Analysis, Harp, Known, Unknown};
use super::order::sort;
use super::structure::frame::{Point, Supports};
use super::structure::strip::Spacing;
use super::units::Length;

/// The least and the greatest angle between strings and board, in degrees.
pub const BOARD_ANGLE_DEG: (f64, f64) = (5.0, 85.0);
/// The least and the greatest lean of the strings, in degrees.
pub const LEAN_DEG: (f64, f64) = (-45.0, 45.0);

/// The shape of a harp as the engine takes it. Any number may be given; places that would be no numbers are
/// unknown.
#[derive(Clone, Debug, PartialEq)]
pub struct Geometry {
    /// Angle between strings and board.
    pub board_angle_rad: f64,
    /// How far the strings lean from upright, towards the treble.
    pub lean_rad: f64,
    /// From string to string.
    pub gaps: Gaps,
    /// How the gaps are measured.
    pub measured: Spacing,
    /// How far above the board the vibrating length begins, along the string.
    pub start: Length,
    /// How far the tuning pin stands beside the line of its string, towards the treble.
    pub pin_sideways: Length,
    /// From the middle plane of the neck to the strings.
    pub strings_from_neck: Length,
    /// From the bridge pins, or the levers and discs below them, to the lower edge of the neck.
    pub below_pins: Length,
    /// From the tuning pins to the upper edge of the neck.
    pub above_pins: Length,
    /// From the lowest string to the face of the pillar, square to the string, at the neck.
    pub pillar_gap: Length,
    /// Width of the pillar in the plane of the strings.
    pub pillar_width: Length,
    /// From the lower end of the board to the lowest string, along the board.
    pub board_below: Length,
    /// From the highest string to the upper end of the board, along the board.
    pub board_above: Length,
}

impl Default for Geometry {
    /// Common practice, from memory.
    fn default() -> Self {
        Self {
            board_angle_rad: 34.0_f64.to_radians(),
            lean_rad: 0.0,
            gaps: Gaps::Uniform(Length::from_mm(14.5)),
            measured: Spacing::Square,
            start: Length::from_mm(0.0),
            pin_sideways: Length::from_mm(8.0),
            strings_from_neck: Length::from_mm(30.0),
            below_pins: Length::from_mm(15.0),
            above_pins: Length::from_mm(18.0),
            pillar_gap: Length::from_mm(30.0),
            pillar_width: Length::from_mm(50.0),
            board_below: Length::from_mm(100.0),
            board_above: Length::from_mm(60.0),
        }
    }
}

/// Where a string leaves the board: known whether or not its length is.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Hole {
    /// On the line of the board.
    pub board: Point,
    /// Where the vibrating length begins.
    pub start: Point,
    /// From the hole of the lowest string, along the board.
    pub along_board: Length,
    /// From the lowest string, square to the strings.
    pub across: Length,
    /// To the next higher string; the highest has none.
    pub gap: Option<Gap>,
}

/// What touches a string.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Contact {
    /// A lever.
    Lever,
    /// The disc of the first semitone.
    DiscNatural,
    /// The disc of the second.
    DiscSharp,
}

/// Where everything of one string stands.
#[derive(Clone, Debug, PartialEq)]
pub struct Placed {
    /// The number from the top, beginning with 1.
    pub number: usize,
    /// Where it leaves the board.
    pub hole: Hole,
    /// The bridge pin: the upper end of the vibrating length.
    pub bridge: Point,
    /// The tuning pin.
    pub tuning: Point,
    /// Levers and discs, the nearest to the bridge pin first.
    pub contacts: Vec<(Contact, Point)>,
    /// Vibrating length.
    pub length: Length,
}

/// All strings and the frame around them, in the plane of the strings.
#[derive(Clone, Debug, PartialEq)]
pub struct Band {
    /// One for each string, in the harp's order.
    pub holes: Vec<Hole>,
    /// One for each string, in the harp's order.
    pub strings: Vec<Known<Placed>>,
    /// The board's line from its lower to its upper end.
    pub board: (Point, Point),
    /// The middle line of the pillar from foot to top. Without a neck it has no known top.
    pub pillar: (Point, Known<Point>),
    /// The joint of neck and soundbox: the end of the neck's middle line, or of the board where there is no neck.
    pub shoulder: Point,
    /// The neck; there is none below three strings of known length.
    pub neck: Option<NeckShape>,
    /// How smooth the harmonic curve is.
    pub smoothness: Smoothness,
    axes: Axes,
}

impl Band {
    /// The pillar's foot, its top and the shoulder, for the forces in the frame; `None` without a neck.
    pub fn supports(&self) -> Option<Supports> {
        let top = self.pillar.1.ok()?;
        Some(Supports { shoulder: self.shoulder, pillar_top: top, pillar_foot: self.pillar.0 })
    }

    /// A place as its distances from the lowest string's hole, square to the strings towards the treble and along
    /// them upward.
    pub fn across_along(&self, at: Point) -> (Length, Length) {
        let (across, along) = self.axes.own(at);
        (Length::from_m(across), Length::from_m(along))
    }

    /// The place at such distances.
    pub fn point(&self, across: Length, along: Length) -> Point {
        self.axes.point((across.to_m(), along.to_m()))
    }

    /// The bridge pins that are known, as [`across_along`](Self::across_along), from the bass up.
    pub fn pins(&self) -> Vec<(Length, Length)> {
        let known = self.strings.iter().rev().filter_map(|string| string.as_ref().ok());
        known.map(|placed| self.across_along(placed.bridge)).collect()
    }
}

/// Lays out a harp: bridge pins at the vibrating lengths, tuning pins beyond them, and the frame around.
///
/// With `u` along the board, `v` along the strings and `w` square to them, the hole of a string is `P = u d`, its
/// bridge pin `B = P + v (s + L)`, and its tuning pin, at the after-length `a` with an offset `o` to the side,
/// `B + v √(a² − o²) + w o`. Distances along the board are those square to the strings over `sin θ`.
///
/// A string without a length has a hole but no pins. Nothing fails.
///
/// # Source
///
/// Geometry, worked out.
pub fn lay_out(harp: &Harp, analysis: &Analysis, geometry: &Geometry) -> Band {
    let axes = Axes::new(geometry.board_angle_rad, geometry.lean_rad);
    let places = geometry.gaps.places(harp.strings.len(), geometry.measured, &axes);
    let at_end = |d_m: f64| axes.point(axes.on_board(d_m));
    let hole = |(along_board_m, gap): (f64, Option<Gap>)| {
        let own = axes.on_board(along_board_m);
        Hole {
            board: axes.point(own),
            start: axes.point((own.0, own.1 + geometry.start.to_m())),
            along_board: Length::from_m(along_board_m),
            across: Length::from_m(own.0),
            gap,
        }
    };
    let highest_m = places.first().map_or(0.0, |(d, _)| *d);
    let holes: Vec<Hole> = places.into_iter().map(hole).collect();
    let strings: Vec<Known<Placed>> = holes
        .iter()
        .zip(&analysis.strings)
        .map(|(hole, figures)| {
            let length = figures.length?;
            let contacts = [
                (Contact::Lever, figures.lever),
                (Contact::DiscNatural, figures.disc_natural),
                (Contact::DiscSharp, figures.disc_sharp),
            ];
            let known = contacts
                .iter()
                .filter_map(|(contact, place)| Some((*contact, place.ok()?.distance)));
            placed(figures.number, *hole, length, known.collect(), harp, geometry, &axes)
        })
        .collect();
    let ends =
        (at_end(-geometry.board_below.to_m()), at_end(highest_m + geometry.board_above.to_m()));
    let foot = axes.on_board(-geometry.board_below.to_m());
    let joint = axes.on_board(highest_m + geometry.board_above.to_m());
    let known: Vec<&Placed> = strings.iter().flatten().collect();
    let hangs_m = hanging_m(&known);
    let pins: Vec<neck::Pins> = known
        .iter()
        .zip(hangs_m)
        .map(|(placed, hangs_m)| {
            let (bridge, tuning) = (axes.own(placed.bridge), axes.own(placed.tuning));
            neck::Pins { bridge, tuning, lowest: (bridge.0, bridge.1 - hangs_m) }
        })
        .collect();
    let neck = neck::shape(&pins, joint, geometry, &axes);
    let smoothness = smooth::smoothness(&strings, &axes);
    let ends_of = |shape: &NeckShape| Some((shape.centre.first()?.at, shape.centre.last()?.at));
    let (shoulder, top) = match neck.as_ref().and_then(ends_of) {
        Some((shoulder, top)) => (shoulder, Ok(top)),
        None => (ends.1, Err(Unknown::Length)),
    };
    let pillar = (axes.point(foot), top);
    Band { holes, strings, board: ends, pillar, shoulder, neck, smoothness, axes }
}

/// How far below its bridge pin the neck must reach for levers and discs, for each string. A string without any takes
/// what the nearest one with some has, so that the edge runs smoothly.
fn hanging_m(strings: &[&Placed]) -> Vec<f64> {
    let hung = |placed: &Placed| {
        let (_, at) = placed.contacts.last()?;
        let (x, y) = (placed.bridge.x.to_m() - at.x.to_m(), placed.bridge.y.to_m() - at.y.to_m());
        Some(x.hypot(y))
    };
    let own: Vec<(usize, f64)> =
        strings.iter().enumerate().filter_map(|(place, s)| Some((place, hung(s)?))).collect();
    let nearest = |place: usize| own.iter().min_by_key(|(other, _)| other.abs_diff(place));
    (0..strings.len()).map(|place| nearest(place).map_or(0.0, |(_, hangs)| *hangs)).collect()
}

/// One string; unknown where a place would be no number.
fn placed(
    number: usize,
    hole: Hole,
    length: Length,
    contacts: Vec<(Contact, Length)>,
    harp: &Harp,
    geometry: &Geometry,
    axes: &Axes,
) -> Known<Placed> {
    let (across, on_board) = axes.own(hole.board);
    let bridge = on_board + geometry.start.to_m() + length.to_m();
    let after = harp.conditions.allowance.between_fixings(Length::from_m(0.0)).to_m();
    let beside = geometry.pin_sideways.to_m().clamp(-after, after);
    let up = (after * after - beside * beside).max(0.0).sqrt();
    let at = |across: f64, along: f64| axes.point((across, along));
    let mut contacts = contacts;
    sort(&mut contacts, |one, other| one.1 > other.1);
    let placed = Placed {
        number,
        hole,
        bridge: at(across, bridge),
        tuning: at(across + beside, bridge + up),
        contacts: contacts
            .into_iter()
            .map(|(contact, from_pin)| (contact, at(across, bridge - from_pin.to_m())))
            .collect(),
        length,
    };
    let places = [placed.hole.board, placed.hole.start, placed.bridge, placed.tuning];
    let all = places.iter().chain(placed.contacts.iter().map(|(_, at)| at));
    let is_number = |at: &Point| at.x.to_m().is_finite() && at.y.to_m().is_finite();
    if all.into_iter().all(is_number) { Ok(placed) } else { Err(Unknown::OutOfReach) }
}

#[cfg(test)]
mod tests;
