//! The whole harp in space, turned as one likes: its parts, pins and strings as flat pieces in the order in which they are
//! painted, the farthest first, so that what is nearer hides what lies behind it exactly.
//!
//! The order comes from a tree of planes (`tree`), which is made once and gone through anew from each place of the eye.

mod faces;
mod tree;

use std::f64::consts::PI;
use std::fmt::Write as _;

use plotters::style::RGBColor;

use self::faces::part_flats;
use self::tree::{Stick, Tree};
use super::palette::Palette;
use crate::design::letters::escape;
use crate::engine::geometry::Band;
use crate::engine::parts::{Cell, HoleKind, Kind, Part, Spot, Whole};
use crate::engine::pitch::Letter;

/// From the middle of the harp to the eye, as times of the harp's reach: near enough that what is near looks larger.
const EYE: f64 = 5.0;
/// The most that the eye goes up or down.
const MOST_UP_RAD: f64 = 0.49 * PI;
/// Room round the harp, as a share of the picture.
const ROOM: f64 = 0.015;
/// Places on each rim of the cylinder round the harp that are looked at for its size.
const RIM: u8 = 24;
/// How far a tuning or bridge pin stands out beyond the strings.
const PIN_OUT_M: f64 = 0.006;
/// Lines are at least so wide.
const LEAST_LINE_PX: f64 = 0.6;
/// How light a face is that turns away from the light, and how much lighter one that faces it.
const SHADE: (f64, f64) = (0.62, 0.38);
/// The light comes over the left shoulder of the eye: to the right, up, and towards the eye, as long as 1.
const LIGHT: Spot = [-0.41, 0.53, 0.742];

/// What a piece is of.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Of {
    /// The part of that number in the list of parts.
    Part(usize, Kind),
    /// The edge of a part.
    Edge,
    /// A string, by its note where that is known.
    String(Option<Letter>),
    /// A pin.
    Pin,
}

/// From where the harp is seen, and how large.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Eye {
    /// Round the harp from the strings' side, to the right.
    pub round_rad: f64,
    /// Above the floor.
    pub up_rad: f64,
    /// How many times larger than what fills the picture.
    pub zoom: f64,
    /// By how much the picture is moved, in pixels to the right and down.
    pub moved_px: (f64, f64),
}

impl Default for Eye {
    /// From the strings' side, somewhat from the pillar and from above.
    fn default() -> Self {
        Self { round_rad: -0.5, up_rad: 0.25, zoom: 1.0, moved_px: (0.0, 0.0) }
    }
}

impl Eye {
    /// Turned on; never over the top.
    #[must_use]
    pub fn turned(self, round_rad: f64, up_rad: f64) -> Self {
        let round_rad = (self.round_rad + round_rad).rem_euclid(2.0 * PI);
        let up_rad = (self.up_rad + up_rad).clamp(-MOST_UP_RAD, MOST_UP_RAD);
        Self { round_rad, up_rad, ..self }
    }

    /// Larger by a factor, with a place of the picture where it is; in pixels from the middle.
    #[must_use]
    pub fn zoomed(self, by: f64, (x, y): (f64, f64)) -> Self {
        let zoom = (self.zoom * by).clamp(0.5, 20.0);
        let by = zoom / self.zoom;
        let moved_px = (x + by * (self.moved_px.0 - x), y + by * (self.moved_px.1 - y));
        Self { zoom, moved_px, ..self }
    }

    /// To the right, up, and towards the eye, for ways in the harp.
    fn axes(self) -> [Spot; 3] {
        let ((sin, cos), (up, level)) = (self.round_rad.sin_cos(), self.up_rad.sin_cos());
        let right = [cos, 0.0, -sin];
        let back = [level * sin, up, level * cos];
        [right, [-up * sin, level, -up * cos], back]
    }
}

/// A piece of the picture, in pixels from its upper left corner.
#[derive(Clone, Debug, PartialEq)]
pub enum Mark {
    /// Outlines that are filled together by the rule of odd and even, how light, from 0 to 1, and where
    /// it was cut off the rest of its face.
    Face { of: Of, rings: Vec<Vec<(f64, f64)>>, light: f64, seams: Vec<[(f64, f64); 2]> },
    /// Lines of one width.
    Lines { of: Of, ends: Vec<[(f64, f64); 2]>, wide: f64 },
}

/// The harp in space.
#[derive(Clone, Debug)]
pub struct Space {
    tree: Tree,
    /// The middle of the least upright cylinder round the harp, its half height, and its radius, in metres.
    middle: Spot,
    half: f64,
    radius: f64,
}

impl Space {
    /// Of the parts, with pins and strings; `letters` are the notes of the strings, in the harp's order.
    pub fn new(whole: &Whole, band: &Band, letters: &[Option<Letter>]) -> Self {
        let mut flats = Vec::new();
        let mut sticks = Vec::new();
        for (at, part) in whole.parts.iter().enumerate() {
            part_flats(at, part, &mut flats);
            sticks.extend(pins(part));
        }
        for (string, letter) in band.strings.iter().zip(letters) {
            let Ok(placed) = string else { continue };
            let places = [placed.hole.board, placed.bridge, placed.tuning];
            let places = places.map(|at| [at.x.to_m(), at.y.to_m(), 0.0]);
            let stick = |from: Spot, to: Spot| {
                let wide = 0.0011;
                Stick { of: Of::String(*letter), ends: [from, to], wide }
            };
            sticks.push(stick(places[0], places[1]));
            sticks.push(stick(places[1], places[2]));
        }
        let corners = || whole.parts.iter().flat_map(|part| &part.cells).flat_map(Cell::corners);
        let (mut low, mut high) = ([f64::INFINITY; 3], [f64::NEG_INFINITY; 3]);
        for at in corners() {
            for axis in 0..3 {
                low[axis] = low[axis].min(at[axis]);
                high[axis] = high[axis].max(at[axis]);
            }
        }
        let middle = [0, 1, 2].map(|axis| f64::midpoint(low[axis], high[axis]));
        let radius = corners().map(|at| (at[0] - middle[0]).hypot(at[2] - middle[2]));
        let radius = radius.fold(0.0, f64::max);
        Self { tree: Tree::new(flats, sticks), middle, half: 0.5 * (high[1] - low[1]), radius }
    }

    /// What turns places of the harp into those of a picture so wide and high in pixels.
    pub fn camera(&self, eye: Eye, (wide, high): (f64, f64)) -> Camera {
        let axes = eye.axes();
        let far = EYE * self.half.hypot(self.radius);
        let centre = (0.5 * wide + eye.moved_px.0, 0.5 * high + eye.moved_px.1);
        let camera = Camera { axes, middle: self.middle, far, scale: 1.0, centre: (0.0, 0.0) };
        // The upright cylinder round the harp fits, so that nothing grows or shrinks while the harp turns round.
        let rims = (0..RIM).flat_map(|at| {
            let turn = 2.0 * PI * f64::from(at) / f64::from(RIM);
            let (sin, cos) = turn.sin_cos();
            [-self.half, self.half].map(|high| {
                let at = [self.radius * cos, high, self.radius * sin];
                camera.place(times_plus(1.0, at, self.middle))
            })
        });
        let (half_wide, half_high) = rims.fold((1e-9, 1e-9), |most: (f64, f64), at| {
            (most.0.max(at.0.abs()), most.1.max(at.1.abs()))
        });
        let fits = (0.5 * wide / half_wide).min(0.5 * high / half_high) * (1.0 - 2.0 * ROOM);
        Camera { scale: eye.zoom * fits, centre, ..camera }
    }

    /// The pieces in the order in which they are painted, for a picture so wide and high in pixels.
    pub fn seen(&self, eye: Eye, size: (f64, f64)) -> Vec<Mark> {
        let camera = self.camera(eye, size);
        let to_eye = camera.eye();
        let mut marks = Vec::new();
        let lines = |of: Of, all: &[[Spot; 2]], wide_m: f64| Mark::Lines {
            of,
            ends: all.iter().map(|ends| ends.map(|at| camera.place(at))).collect(),
            wide: (camera.scale * wide_m).max(LEAST_LINE_PX),
        };
        self.tree.farthest_first(to_eye, |flats, sticks| {
            for face in flats.iter().filter(|face| face.plane.off(to_eye) > 0.0) {
                let turned = camera.turned(face.plane.square);
                let lit = (0..3).map(|axis| LIGHT[axis] * turned[axis]).sum::<f64>();
                let light = SHADE.0 + SHADE.1 * lit.max(0.0);
                let ring = |ring: &Vec<Spot>| ring.iter().map(|at| camera.place(*at)).collect();
                let rings = face.rings.iter().map(ring).collect();
                let seams = face.seams.iter().map(|ends| ends.map(|at| camera.place(at))).collect();
                marks.push(Mark::Face { of: face.of, rings, light, seams });
                if !face.edges.is_empty() {
                    marks.push(lines(Of::Edge, &face.edges, 0.0));
                }
            }
            marks.extend(sticks.iter().map(|stick| lines(stick.of, &[stick.ends], stick.wide)));
        });
        marks
    }
}

/// What turns places of the harp into those of a picture.
#[derive(Clone, Copy, Debug)]
pub struct Camera {
    /// To the right, up, and towards the eye.
    axes: [Spot; 3],
    /// What the eye looks at.
    middle: Spot,
    /// How far the eye is from it.
    far: f64,
    /// Pixels for a metre there.
    scale: f64,
    /// Where it is in the picture.
    centre: (f64, f64),
}

impl Camera {
    /// A way to the right, up and towards the eye.
    fn turned(&self, way: Spot) -> Spot {
        self.axes.map(|axis| axis[0] * way[0] + axis[1] * way[1] + axis[2] * way[2])
    }

    /// Where the eye is.
    fn eye(&self) -> Spot {
        times_plus(self.far, self.axes[2], self.middle)
    }

    /// Where a place of the harp is in the picture.
    pub fn place(&self, at: Spot) -> (f64, f64) {
        let [right, up, near] = self.turned(times_plus(-1.0, self.middle, at));
        let size = self.scale * self.far / (self.far - near);
        (self.centre.0 + size * right, self.centre.1 - size * up)
    }

    /// The eye, and the way from it to what a place of the picture shows, as long as it is to the middle of the harp.
    pub fn ray(&self, (x, y): (f64, f64)) -> (Spot, Spot) {
        let (right, up) = ((x - self.centre.0) / self.scale, (self.centre.1 - y) / self.scale);
        let across = times_plus(right, self.axes[0], times_plus(up, self.axes[1], [0.0; 3]));
        (self.eye(), times_plus(-self.far, self.axes[2], across))
    }
}

fn times_plus(ratio: f64, way: Spot, from: Spot) -> Spot {
    [0, 1, 2].map(|axis| ratio * way[axis] + from[axis])
}

/// The pins of the neck, from its face outward.
fn pins(part: &Part) -> impl Iterator<Item = Stick> {
    let pins = part
        .holes
        .iter()
        .filter(|hole| matches!(hole.kind, HoleKind::TuningPin | HoleKind::BridgePin));
    pins.map(|hole| {
        let out = hole.at[2].abs() + PIN_OUT_M;
        let end = times_plus(-out, hole.way, hole.at);
        Stick { of: Of::Pin, ends: [hole.at, end], wide: hole.diameter.to_m() }
    })
}

/// The colour of a piece, for a palette.
pub fn colour(of: Of, light: f64, palette: &Palette) -> RGBColor {
    let RGBColor(red, green, blue) = match of {
        Of::Part(_, kind) => wood(kind),
        Of::Edge => RGBColor(0x4a, 0x38, 0x28),
        Of::Pin => RGBColor(0x8d, 0x90, 0x93),
        Of::String(Some(Letter::C)) => palette.c_mark,
        Of::String(Some(Letter::F)) => palette.f_mark,
        Of::String(_) => palette.ghost,
    };
    lit(RGBColor(red, green, blue), light)
}

/// A colour as light as that.
pub fn lit(RGBColor(red, green, blue): RGBColor, light: f64) -> RGBColor {
    #[expect(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "a share of a colour between 0 and 255"
    )]
    let part = |part: u8| (light.clamp(0.0, 1.0) * f64::from(part)).round() as u8;
    RGBColor(part(red), part(green), part(blue))
}

/// What the parts look like: those of the frame darker than those of the soundbox, the board the lightest.
const fn wood(kind: Kind) -> RGBColor {
    match kind {
        Kind::Neck | Kind::Pillar | Kind::Capital => RGBColor(0xd2, 0xa2, 0x74),
        Kind::Base | Kind::FrontFoot | Kind::RearFoot => RGBColor(0xc0, 0x91, 0x66),
        Kind::Board => RGBColor(0xf3, 0xe0, 0xb8),
        Kind::Strip => RGBColor(0xb0, 0x7e, 0x56),
        Kind::Side | Kind::Back => RGBColor(0xdd, 0xb4, 0x88),
        _ => RGBColor(0xe6, 0xca, 0xa0),
    }
}

/// The picture as SVG that stands alone, so wide and high in pixels.
pub fn svg(space: &Space, eye: Eye, (wide, high): (f64, f64), title: &str) -> String {
    let palette = Palette::white();
    let title = escape(title);
    let mut out = format!(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"{wide:.0}\" height=\"{high:.0}\" \
         viewBox=\"0 0 {wide:.0} {high:.0}\" stroke-linejoin=\"round\" stroke-linecap=\"round\">\n\
         <title>{title}</title>\n<rect width=\"100%\" height=\"100%\" fill=\"#ffffff\"/>\n"
    );
    let hex = |RGBColor(red, green, blue): RGBColor| format!("#{red:02x}{green:02x}{blue:02x}");
    for mark in space.seen(eye, (wide, high)) {
        match mark {
            Mark::Face { of, rings, light, seams } => {
                let fill = hex(colour(of, light, &palette));
                let mut path = String::new();
                for ring in rings {
                    trace(&mut path, &ring);
                    path.push('Z');
                }
                let _ = writeln!(out, "<path fill=\"{fill}\" fill-rule=\"evenodd\" d=\"{path}\"/>");
                // Pieces of a face that was cut meet without a seam.
                if !seams.is_empty() {
                    let mut path = String::new();
                    seams.iter().for_each(|ends| trace(&mut path, ends));
                    let _ = writeln!(
                        out,
                        "<path fill=\"none\" stroke=\"{fill}\" stroke-width=\"0.8\" d=\"{path}\"/>"
                    );
                }
            }
            Mark::Lines { of, ends, wide } => {
                let mut path = String::new();
                ends.iter().for_each(|ends| trace(&mut path, ends));
                let stroke = hex(colour(of, 1.0, &palette));
                let _ = writeln!(
                    out,
                    "<path fill=\"none\" stroke=\"{stroke}\" stroke-width=\"{wide:.2}\" d=\"{path}\"/>"
                );
            }
        }
    }
    out.push_str("</svg>\n");
    out
}

fn trace(path: &mut String, places: &[(f64, f64)]) {
    for (at, (x, y)) in places.iter().enumerate() {
        let step = if at == 0 { 'M' } else { 'L' };
        let _ = write!(path, "{step}{x:.1},{y:.1}");
    }
}

/// Whether a place lies within outlines, by the rule of odd and even.
pub fn is_within(rings: &[Vec<(f64, f64)>], (x, y): (f64, f64)) -> bool {
    let crosses = |one: (f64, f64), two: (f64, f64)| {
        (one.1 > y) != (two.1 > y) && x < (two.0 - one.0) * (y - one.1) / (two.1 - one.1) + one.0
    };
    let of_ring = |ring: &Vec<(f64, f64)>| {
        let next = ring.iter().cycle().skip(1);
        ring.iter().zip(next).filter(|(one, two)| crosses(**one, **two)).count()
    };
    rings.iter().map(of_ring).sum::<usize>() % 2 == 1
}

/// The part that is seen at a place of a picture, by its place in the list of parts.
pub fn part_at(marks: &[Mark], place: (f64, f64)) -> Option<usize> {
    marks.iter().rev().find_map(|mark| match mark {
        Mark::Face { of: Of::Part(at, _), rings, .. } => is_within(rings, place).then_some(*at),
        _ => None,
    })
}
