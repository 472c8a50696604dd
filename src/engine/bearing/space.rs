//! The harp as one frame in space, with joints that do not give or give as their sizes say: neck, pillar and soundbox under the strings.
//!
//! The neck goes along its middle line, the strings hang beside it, the pillar is one bar from the neck to the foot. The
//! soundbox is a tube from the foot to the shoulder, on which the strings pull as they do on the neck. Where its sizes are
//! not known, it does not give at all at one end of the estimate, and has usual proportions at the other.

mod gives;

pub(super) use self::gives::{gives, nearer};
use super::{Build, neck::NeckParts};
use crate::engine::geometry::Band;
use crate::engine::structure::frame::{NeckLoads, Point, Pull, Station};
use crate::engine::structure::section::Rectangle;
use crate::engine::structure::soundbox::Section;
use crate::engine::structure::space::{
    Cut, Frame, Held, Piece, Six, Stiffness, Vector, all_of, at_arm, cross, dot, way,
};
use crate::engine::units::{Length, Stress};

/// Across the plane of the harp, to the side of the strings.
const ASIDE: Vector = [0.0, 0.0, 1.0];
/// Bars of the soundbox.
const BOX_BARS: usize = 12;
/// Depth of a soundbox and thickness of its walls over the width of the board, and the moduli of its walls, which are
/// of wood along and across the grain. Common practice, no source.
const BOX_DEPTH: f64 = 0.6;
const BOX_WALL: f64 = 0.02;
const BOX_MODULUS_PA: f64 = 6e9;
const BOX_SHEAR_PA: f64 = 0.6e9;
/// Shear modulus over modulus along the grain where no figure of the wood is known. Source: EN 338 (from memory).
const SHEAR_OVER_MODULUS: f64 = 1.0 / 16.0;
/// Modulus where none is known; only how the parts compare counts. Common practice, no source.
const USUAL_MODULUS: Stress = Stress::from_gpa(12.0);

/// How stiff joints are at the one end of the estimate, over what their sizes say; at the other they do not give. A choice
/// of this program: EN 1995-1-1 takes two thirds where a joint is loaded hard, 2.2.2, and lets it creep twice as far as the
/// wood beside it, 2.3.2.2, which in dry rooms leaves 1.6/2.2 against that (from memory); both together are 0.48.
const SOFTER: f64 = 0.5;

/// A joint that hardly gives, in N/m and N·m.
const FAST: f64 = 1e11;

/// What a frame bears whose joints do not give.
#[derive(Clone, Debug, PartialEq)]
pub struct Stiff {
    /// The cuts of the neck, those of a neck on pins: two for each bar.
    pub neck: Vec<Station>,
    /// The pillar at its top and at its foot, in its own axes from top to foot.
    pub pillar: [Cut; 2],
    /// The soundbox from the foot to the shoulder, two cuts for each bar with their places; none where it does not
    /// give.
    pub soundbox: Vec<(Point, Cut)>,
    /// How far the top of the pillar moves, in metres, and turns: to the right, upward, and to the strings' side.
    pub top: [f64; 6],
}

/// Where the soundbox stands.
pub(super) struct Base {
    /// Its lower and its upper end, on the line of the board.
    ends: [Vector; 2],
    /// From the lower end to the lowest string, and on to the highest.
    strings_m: (f64, f64),
    /// Width of the board at both.
    width_m: (f64, f64),
    /// The sections of its bars, where its sizes are known.
    sections: [Option<Section>; BOX_BARS],
}

fn vector(at: Point) -> Vector {
    [at.x.to_m(), at.y.to_m(), 0.0]
}

fn distance(from: Vector, to: Vector) -> f64 {
    (to[0] - from[0]).hypot(to[1] - from[1])
}

impl Base {
    pub(super) fn new(band: &Band, build: &Build) -> Self {
        let ends = [vector(band.board.0), vector(band.board.1)];
        let hole = |at: Option<&crate::engine::geometry::Hole>| {
            at.map_or(0.0, |hole| distance(ends[0], vector(hole.board)))
        };
        let (low, high) = (hole(band.holes.last()), hole(band.holes.first()));
        let board = &build.board;
        let width_m = (board.width.0.to_m(), board.width.1.to_m());
        let mut base = Self {
            ends,
            strings_m: (low, high - low),
            width_m,
            sections: [const { None }; BOX_BARS],
        };
        if let Some(parts) = &build.soundbox {
            let thickness_m = (board.thickness.0.to_m(), board.thickness.1.to_m());
            let length_m = distance(ends[0], ends[1]);
            base.sections = std::array::from_fn(|at| {
                let up = base.up((at as f64 + 0.5) / BOX_BARS as f64);
                let even = |(low, high): (f64, f64)| low + up * (high - low);
                let share = (at as f64 + 0.5) / BOX_BARS as f64;
                let mapped = board.thick.map(|thick| thick.mean(share).to_m());
                let thick = mapped.unwrap_or(even(thickness_m));
                Some(parts.section(up, (even(width_m), thick), length_m))
            });
        }
        base
    }

    /// The sections in the middle of its bars, where its sizes are known.
    pub(super) fn sections(&self) -> Vec<Section> {
        self.sections.iter().flatten().copied().collect()
    }

    fn at(&self, share: f64) -> Vector {
        let whole = way(self.ends[0], self.ends[1]);
        [0, 1, 2].map(|i| self.ends[0][i] + share * whole[i])
    }

    /// How far up the strings a share of the way is: 0 at the lowest, 1 at the highest.
    fn up(&self, share: f64) -> f64 {
        let from_low = share * distance(self.ends[0], self.ends[1]) - self.strings_m.0;
        let up = if self.strings_m.1 > 0.0 { from_low / self.strings_m.1 } else { 0.0 };
        up.clamp(0.0, 1.0)
    }

    /// Where the axis of a bar of the box lies behind the board, and how stiff it is.
    fn tube(&self, bar: usize) -> (f64, Stiffness) {
        if let Some(section) = &self.sections[bar] {
            return (section.axis().to_m(), section.stiffness());
        }
        let up = self.up((bar as f64 + 0.5) / BOX_BARS as f64);
        let b = self.width_m.0 + up * (self.width_m.1 - self.width_m.0);
        let (h, t) = (BOX_DEPTH * b, BOX_WALL * b);
        let bends = |b: f64, h: f64| 0.5 * b * t * h * h + t * h * h * h / 6.0;
        let stiff = Stiffness {
            axial: BOX_MODULUS_PA * 2.0 * t * (b + h),
            // A closed tube after Bredt: 4 A² over the sum of sides by thickness.
            torsion: BOX_SHEAR_PA * 2.0 * t * b * b * h * h / (b + h),
            bending: [BOX_MODULUS_PA * bends(b, h), BOX_MODULUS_PA * bends(h, b)],
            shear: [BOX_SHEAR_PA * 2.0 * h * t, BOX_SHEAR_PA * 2.0 * b * t],
        };
        (0.5 * h, stiff)
    }
}

/// Of a bar of wood; with the usual moduli where its own are not known.
pub(super) fn stiffness(
    section: Rectangle,
    modulus: Option<Stress>,
    shear: Option<Stress>,
) -> Stiffness {
    let modulus = modulus.unwrap_or(USUAL_MODULUS);
    let usual = Stress::from_pa(SHEAR_OVER_MODULUS * modulus.to_pa());
    Stiffness::of(section, modulus, shear.unwrap_or(usual))
}

fn between(one: Rectangle, other: Rectangle) -> Option<Rectangle> {
    let middle = |one: Length, other: Length| Length::from_m(0.5 * (one.to_m() + other.to_m()));
    Rectangle::new(middle(one.breadth(), other.breadth()), middle(one.depth(), other.depth())).ok()
}

/// Adds a force with its moment to those on a node.
fn put(forces: &mut [f64], node: usize, force: [f64; 6]) {
    for (number, part) in all_of(node).zip(force) {
        forces[number] += part;
    }
}

/// Pulls with how far along the neck they meet it, in metres.
pub(super) type Feet = [(f64, Pull)];

/// What frames in space bear.
pub(super) struct Frames {
    /// With joints that do not give: with a soundbox that does not give either, and with one of its sizes or a usual one.
    pub(super) stiff: [Stiff; 2],
    /// With joints that give.
    pub(super) sprung: Option<Stiff>,
    /// Whether the board lies to the left of the soundbox's axis on the way up.
    pub(super) board_left: bool,
}

/// What the joints do.
#[derive(Clone, Copy)]
enum Joined<'a> {
    /// They do not give.
    Firmly,
    /// They give: shoulder, head and foot.
    Springs(&'a [Six; 3]),
    /// The pillar only pushes.
    Pushed,
}

/// Where its parts are: a joint that gives lies between two nodes, one that does not is one.
struct Nodes {
    /// First of the neck.
    neck: usize,
    /// Last of the neck.
    top: usize,
    /// At the top of the pillar, at its foot, and what that stands on.
    pillar: [usize; 2],
    ground: usize,
}

impl Nodes {
    const fn new(neck_bars: usize, gives: bool) -> Self {
        let gap = if gives { 1 } else { 0 };
        let neck = BOX_BARS + gap;
        let top = neck + neck_bars;
        Self { neck, top, pillar: [top + gap, top + gap + 1], ground: top + 2 * gap + 1 }
    }
}

/// The harp as bars, before it is held.
///
/// The nodes go round the frame: from the foot up the soundbox, along the neck, and down the pillar to the foot, which
/// is held.
struct Ring<'a> {
    base: &'a Base,
    /// The cuts of a neck on pins, two for each bar.
    cuts: &'a [Station],
    nodes: Nodes,
    /// Of the soundbox, of the neck, of the pillar, then joints that give.
    pieces: Vec<Piece>,
    frame: Frame,
}

impl<'a> Ring<'a> {
    /// `None` where a number is none.
    fn new(
        base: &'a Base,
        cuts: &'a [Station],
        (foot, offset): (Point, Length),
        build: &Build,
        joined: Joined<'_>,
    ) -> Option<Self> {
        let (first, last) = (cuts.first()?, cuts.last()?);
        let nodes = Nodes::new(cuts.len() / 2, matches!(joined, Joined::Springs(_)));
        let behind = base.behind(vector(last.at));
        let mut pieces = soundbox(base, vector(first.at), offset.to_m(), behind)?;
        pieces.extend(neck(cuts, nodes.neck, &build.neck)?);
        let ends = [vector(last.at), vector(foot)];
        let section = Rectangle::new(build.pillar.depth, build.pillar.width).ok()?;
        let wood = &build.pillar;
        let mut bar = stiffness(section, wood.allowable.modulus, wood.torsion_modulus);
        if matches!(joined, Joined::Pushed) {
            bar = Stiffness { bending: [0.0; 2], torsion: 0.0, ..bar };
        }
        let pillar = Piece::bar(nodes.pillar, ends, [[0.0; 3]; 2], ASIDE, bar)?;
        let (along, down) = (pieces.get(BOX_BARS)?.axes(), pillar.axes());
        pieces.push(pillar);
        if let Joined::Springs(springs) = joined {
            let places = [(BOX_BARS, along), (nodes.top, down), (nodes.pillar[1], down)];
            for ((from, axes), stiff) in places.into_iter().zip(springs) {
                pieces.push(Piece::joint([from, from + 1], [[0.0; 3]; 2], axes, *stiff));
            }
        }
        let mut frame = Frame::new(nodes.ground + 1, 1);
        pieces.iter().for_each(|piece| frame.add(piece));
        Some(Self { base, cuts, nodes, pieces, frame })
    }

    /// Adds the pull of a string to the forces: on the neck, and on the soundbox.
    fn hang(&self, forces: &mut [f64], s_m: f64, pull: &Pull) {
        let (cuts, base) = (self.cuts, self.base);
        let (at, force) = (vector(pull.at), [pull.x.to_n(), pull.y.to_n(), 0.0]);
        let offset = pull.offset.to_m();
        // The first cut of a bar that begins so far along, or the end.
        let bars = cuts.len() / 2;
        let bar = cuts.chunks_exact(2).position(|bar| bar[0].s_m >= s_m).unwrap_or(bars);
        let place = cuts.get(2 * bar).or(cuts.last()).map_or(at, |cut| vector(cut.at));
        let arm = way(place, at);
        put(forces, self.nodes.neck + bar, at_arm(force, [arm[0], arm[1], offset]));
        // And on the soundbox, where the string meets the line of the board, at the nearest node.
        let whole = way(base.ends[0], base.ends[1]);
        let share = cross(way(base.ends[0], at), force)[2] / cross(whole, force)[2];
        let beyond = |node: &usize| share * BOX_BARS as f64 >= *node as f64 - 0.5;
        let node = (1..BOX_BARS).take_while(beyond).count();
        let arm = way(base.at(node as f64 / BOX_BARS as f64), base.at(share));
        let back = [-force[0], -force[1], 0.0];
        put(forces, node, at_arm(back, [arm[0], arm[1], offset]));
    }

    /// Held at the foot, and along the whole soundbox unless that gives too.
    fn held(&self, box_gives: bool) -> Option<Held> {
        let low = if box_gives { all_of(0) } else { 0..6 * (BOX_BARS + 1) };
        self.frame.clone().hold(low.chain(all_of(self.nodes.ground)).collect())
    }

    /// Held by a soundbox that does not give and on which the neck turns freely in the plane of the strings.
    fn on_pins(&self) -> Option<Held> {
        let turn = 6 * (BOX_BARS + 1) - 1;
        self.frame.clone().hold((0..turn).chain(all_of(self.nodes.ground)).collect())
    }

    /// How the nodes move under pulls.
    fn under(&self, pulls: &Feet, box_gives: bool) -> Option<Vec<f64>> {
        let mut moved = vec![0.0; self.frame.numbers()];
        pulls.iter().for_each(|(s_m, pull)| self.hang(&mut moved, *s_m, pull));
        self.held(box_gives)?.solve(&mut moved);
        moved.iter().all(|number| number.is_finite()).then_some(moved)
    }

    fn borne(&self, moved: &[f64], with_box: bool) -> Stiff {
        let (base, mut stations) = (self.base, self.cuts.to_vec());
        let neck_bars = stations.len() / 2;
        for (pair, piece) in stations.chunks_exact_mut(2).zip(&self.pieces[BOX_BARS..]) {
            for (station, cut) in pair.iter_mut().zip(piece.cuts(moved)) {
                station.take(cut);
            }
        }
        let of_box = |(at, piece): (usize, &Piece)| {
            let [low, high] = piece.cuts(moved);
            let place = |node: usize| {
                let at = base.at(node as f64 / BOX_BARS as f64);
                Point { x: Length::from_m(at[0]), y: Length::from_m(at[1]) }
            };
            [(place(at), low), (place(at + 1), high)]
        };
        let given = if with_box { BOX_BARS } else { 0 };
        let mut at_top = [0.0; 6];
        at_top.copy_from_slice(&moved[all_of(self.nodes.top)]);
        let pillar = self.pieces.get(BOX_BARS + neck_bars);
        Stiff {
            neck: stations,
            pillar: pillar.map_or([[0.0; 6]; 2], |piece| piece.cuts(moved)),
            soundbox: self.pieces[..given].iter().enumerate().flat_map(of_box).collect(),
            top: at_top,
        }
    }
}

/// The frame under pulls that meet the neck so far along. `None` where a number is none.
pub(super) fn stiff(
    base: &Base,
    alone: &NeckLoads,
    pulls: &Feet,
    (foot, springs): (Point, Option<[Six; 3]>),
    build: &Build,
) -> Option<Frames> {
    let cuts = &alone.stations;
    let at = (foot, pulls.first()?.1.offset);
    let ring = |joined: Joined<'_>| Ring::new(base, cuts, at, build, joined);
    let firm = ring(Joined::Firmly)?;
    let borne = |box_gives| Some(firm.borne(&firm.under(pulls, box_gives)?, box_gives));
    let sprung = match springs {
        Some(springs) => {
            let springs = softer(springs);
            let given = ring(Joined::Springs(&springs))?;
            Some(given.borne(&given.under(pulls, true)?, true))
        }
        None => None,
    };
    let square = firm.pieces.first()?.axes()[1];
    let board_left = dot(base.behind(vector(cuts.last()?.at)), square) < 0.0;
    Some(Frames { stiff: [borne(false)?, borne(true)?], sprung, board_left })
}

/// Joints at the softer end of the estimate.
fn softer(springs: [Six; 3]) -> [Six; 3] {
    springs.map(|joint| joint.map(|stiff| SOFTER * stiff))
}

impl Base {
    /// Square to the board, away from the strings, of which the top of the neck tells the side.
    fn behind(&self, top: Vector) -> Vector {
        let whole = way(self.ends[0], self.ends[1]);
        let length = distance(self.ends[0], self.ends[1]);
        let behind = [-whole[1] / length, whole[0] / length, 0.0];
        let strings = dot(behind, way(self.ends[0], top)) > 0.0;
        if strings { behind.map(|part| -part) } else { behind }
    }
}

/// The soundbox, whose axis lies behind the board and in the plane of the strings.
fn soundbox(base: &Base, shoulder: Vector, offset: f64, behind: Vector) -> Option<Vec<Piece>> {
    let bar = |at: usize| {
        let share = |node: usize| node as f64 / BOX_BARS as f64;
        let (axis, stiff) = base.tube(at);
        let off = [axis * behind[0], axis * behind[1], offset];
        let mut places = [base.at(share(at)), base.at(share(at + 1))];
        let mut arms = [off, off];
        if at + 1 == BOX_BARS {
            // The last node is the neck's first, from which an arm leads to the end of the board.
            let gap = way(shoulder, places[1]);
            arms[1] = [0, 1, 2].map(|i| off[i] + gap[i]);
            places[1] = shoulder;
        }
        Piece::bar([at, at + 1], places, arms, ASIDE, stiff)
    };
    (0..BOX_BARS).map(bar).collect()
}

/// The bars of the neck, of the sections in their middle.
fn neck(cuts: &[Station], first: usize, parts: &NeckParts) -> Option<Vec<Piece>> {
    let mut all: Vec<Piece> = Vec::new();
    for (at, pair) in cuts.chunks_exact(2).enumerate() {
        let section = between(pair[0].section, pair[1].section)?;
        let end_m = cuts.last()?.s_m;
        let stiff = parts.stiffness((0.5 * (pair[0].s_m + pair[1].s_m), end_m), section);
        let nodes = [first + at, first + at + 1];
        let places = [vector(pair[0].at), vector(pair[1].at)];
        let bar = Piece::bar(nodes, places, [[0.0; 3]; 2], ASIDE, stiff);
        // Two strings may hang so near to each other that nothing is left between them.
        let joint = || Some(Piece::joint(nodes, [[0.0; 3]; 2], all.last()?.axes(), [FAST; 6]));
        let piece = bar.or_else(joint)?;
        all.push(piece);
    }
    Some(all)
}
