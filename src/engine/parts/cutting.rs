//! The list of what is sawn: each part rough and finished, and how the pieces lie on boards and sheets.

use super::name::{Kind, Name};
use super::neck::layers;
use super::part::Part;
use super::{Whole, Woods};
use crate::engine::order::sort;
use crate::engine::units::{Length, Mass};

/// What is left on when a part is sawn roughly, and what it is sawn from. Common practice, no source.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Stock {
    /// At both ends together.
    pub on_length: Length,
    /// At both edges together.
    pub on_width: Length,
    /// At both faces together, for planing; sheets have none.
    pub on_thickness: Length,
    /// What the saw takes away.
    pub kerf: Length,
    /// Length and width of a board.
    pub board: (Length, Length),
    /// How thick boards come at most.
    pub thickest: Length,
    /// Length and width of a sheet.
    pub sheet: (Length, Length),
}

impl Default for Stock {
    fn default() -> Self {
        let mm = Length::from_mm;
        Self {
            on_length: mm(20.0),
            on_width: mm(6.0),
            on_thickness: mm(4.0),
            kerf: mm(3.2),
            board: (mm(2400.0), mm(200.0)),
            thickest: mm(60.0),
            sheet: (mm(1525.0), mm(1525.0)),
        }
    }
}

/// A part as it is sawn.
#[derive(Clone, Debug, PartialEq)]
pub struct Blank {
    /// Which part.
    pub name: Name,
    /// Key of its wood.
    pub wood: String,
    /// Whether it comes from a sheet.
    pub is_sheet: bool,
    /// Along the grain, across it, and how thick.
    pub finished: [Length; 3],
    /// The same roughly sawn; of the whole part where it is glued up.
    pub rough: [Length; 3],
    /// Of how many strips side by side it is glued up, as no board is so wide; 1 where it is of one piece.
    pub strips: usize,
    /// Of how many layers it is glued up, as no board is so thick; 1 where it is of one piece.
    pub layers: usize,
    /// How thick each layer is, roughly sawn.
    pub layer: Length,
    /// Volume of the finished part.
    pub volume_m3: f64,
    /// What that weighs, where the density is known.
    pub mass: Option<Mass>,
    /// How many round holes it has.
    pub holes: usize,
}

/// A piece on a board.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Lies {
    /// The place of its part in the list.
    pub blank: usize,
    /// Which of its pieces, from 1: the strips of a layer, then those of the next.
    pub strip: usize,
    /// From the end of the board and from its edge.
    pub at: (Length, Length),
    /// Along the board and across it.
    pub size: (Length, Length),
}

impl Blank {
    /// Of how many pieces it is sawn.
    pub const fn pieces(&self) -> usize {
        self.strips * self.layers
    }
}

/// Boards or sheets of one wood and one thickness.
#[derive(Clone, Debug, PartialEq)]
pub struct Nest {
    /// Key of the wood.
    pub wood: String,
    /// Whether these are sheets.
    pub is_sheet: bool,
    /// How thick.
    pub thickness: Length,
    /// Length and width of each.
    pub size: (Length, Length),
    /// What lies on each.
    pub boards: Vec<Vec<Lies>>,
    /// Fewer cannot hold the pieces, however they lie.
    pub at_least: usize,
    /// Pieces longer than a board, which lie on none.
    pub too_long: Vec<usize>,
}

impl Nest {
    /// How much of the boards is not used.
    pub fn waste_ratio(&self) -> f64 {
        let area = |(long, wide): (Length, Length)| long.to_m() * wide.to_m();
        let used: f64 = self.boards.iter().flatten().map(|lies| area(lies.size)).sum();
        1.0 - used / (area(self.size) * self.boards.len().max(1) as f64)
    }
}

/// What is counted besides the wood.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Counts {
    /// Strings.
    pub strings: usize,
    /// Tuning pins.
    pub tuning_pins: usize,
    /// Bridge pins.
    pub bridge_pins: usize,
    /// Levers.
    pub levers: usize,
    /// Discs of both semitones.
    pub discs: usize,
    /// Holes of the strings through the board.
    pub string_holes: usize,
    /// Dowels, bolts or screws of the shoulder.
    pub fasteners: usize,
}

/// Every part as it is sawn: a neck that is glued up as its layers, the rest in the order of the parts.
pub fn blanks(whole: &Whole, woods: &Woods, stock: &Stock) -> Vec<Blank> {
    let mut all = Vec::new();
    for part in &whole.parts {
        let own = if part.name.kind == Kind::Neck { layers(part, woods) } else { Vec::new() };
        if own.is_empty() {
            all.push(blank(part, stock));
        }
        all.extend(own.iter().map(|layer| blank(layer, stock)));
    }
    all
}

fn blank(part: &Part, stock: &Stock) -> Blank {
    let mut finished = part.sizes_m();
    let is_sheet = part.stuff.is_sheet;
    // A block is sawn with its least side as the thickness, whichever way it stands in the harp.
    if !is_sheet && finished[2] > finished[1] {
        finished.swap(1, 2);
    }
    let on = [
        stock.on_length.to_m(),
        stock.on_width.to_m(),
        if is_sheet { 0.0 } else { stock.on_thickness.to_m() },
    ];
    let mut rough = [0, 1, 2].map(|axis| finished[axis] + on[axis]);
    if !is_sheet {
        // Boards come in whole millimetres.
        rough[2] = (1e3 * rough[2] - 1e-6).ceil() / 1e3;
    }
    // Each layer is planed on both faces.
    let layer_m = |layers: usize| {
        let own = finished[2] / layers as f64 + on[2];
        if is_sheet { own } else { (1e3 * own - 1e-6).ceil() / 1e3 }
    };
    let mut layers = 1;
    while !is_sheet && layer_m(layers) > stock.thickest.to_m() && layers < MOST_STRIPS {
        layers += 1;
    }
    let wide = if is_sheet { f64::INFINITY } else { stock.board.1.to_m() };
    let mut strips = 1;
    while strip_m(rough[1], strips, stock) > wide && strips < MOST_STRIPS {
        strips += 1;
    }
    Blank {
        name: part.name,
        wood: part.stuff.key.clone(),
        is_sheet,
        finished: finished.map(Length::from_m),
        rough: rough.map(Length::from_m),
        strips,
        layers,
        layer: Length::from_m(layer_m(layers)),
        volume_m3: part.volume().0,
        mass: part.mass(),
        holes: part.holes.len(),
    }
}

/// A piece lies on a board that is thicker by so much at most, so that not every thickness wants a board of its own. Common
/// practice, no source.
const PLANED_M: f64 = 0.004;
/// No part is glued up of more strips, or of more layers.
const MOST_STRIPS: usize = 100;

/// How wide each strip is: its share, and as much again as an edge for the joints.
fn strip_m(rough_m: f64, strips: usize, stock: &Stock) -> f64 {
    let joints = if strips > 1 { 0.5 * stock.on_width.to_m() } else { 0.0 };
    rough_m / strips as f64 + joints
}

/// Lays the pieces on boards: the widest first, each on the first board where it finds room, in a strip that runs all along
/// the board. So every cut goes from edge to edge: first along the board, then across its strips. Better ways to lay them
/// may exist; [`Nest::at_least`] says how many boards any way needs.
///
/// # Source
///
/// First fit by decreasing width on shelves; any textbook of packing, from memory.
pub fn nests(blanks: &[Blank], stock: &Stock) -> Vec<Nest> {
    let mut all: Vec<Nest> = Vec::new();
    let boards_m = boards_m(blanks);
    for (at, blank) in blanks.iter().enumerate() {
        let thick_m = boards_m[at];
        let is_same = |other: f64, wood: &str, is_sheet: bool| {
            wood == blank.wood && (other - thick_m).abs() < 1e-6 && is_sheet == blank.is_sheet
        };
        if all.iter().all(|nest| !is_same(nest.thickness.to_m(), &nest.wood, nest.is_sheet)) {
            let size = if blank.is_sheet { stock.sheet } else { stock.board };
            let all_pieces = blanks.iter().enumerate().skip(at);
            let pieces =
                all_pieces.filter(|(at, next)| is_same(boards_m[*at], &next.wood, next.is_sheet));
            let mut nest = Nest {
                wood: blank.wood.clone(),
                is_sheet: blank.is_sheet,
                thickness: Length::from_m(thick_m),
                size,
                boards: Vec::new(),
                at_least: 0,
                too_long: Vec::new(),
            };
            nest.lay(pieces, stock);
            all.push(nest);
        }
    }
    all
}

/// How thick the board is from which each part is sawn: as thick as its thickest piece, and thinner ones with it.
fn boards_m(blanks: &[Blank]) -> Vec<f64> {
    let mut order: Vec<usize> = (0..blanks.len()).collect();
    let thick = |at: usize| blanks[at].layer.to_m();
    sort(&mut order, |one, other| thick(*one) < thick(*other));
    let mut groups: Vec<(usize, f64)> = Vec::new();
    let mut out = vec![0.0; blanks.len()];
    for at in order {
        let (own, thick_m) = (&blanks[at], thick(at));
        let planed_m = if own.is_sheet { 1e-6 } else { PLANED_M + 1e-6 };
        let joins = groups.iter().find(|(first, of)| {
            let other = &blanks[*first];
            other.wood == own.wood && other.is_sheet == own.is_sheet && of - thick_m < planed_m
        });
        out[at] = joins.map_or(thick_m, |(_, of)| *of);
        if joins.is_none() {
            groups.push((at, thick_m));
        }
    }
    out
}

/// A strip of a board that runs all along it.
struct Shelf {
    board: usize,
    from_edge: f64,
    wide: f64,
    used: f64,
}

impl Nest {
    fn lay<'a>(&mut self, blanks: impl Iterator<Item = (usize, &'a Blank)>, stock: &Stock) {
        let (long, wide) = (self.size.0.to_m(), self.size.1.to_m());
        let mut pieces: Vec<(usize, usize, f64, f64)> = Vec::new();
        for (at, blank) in blanks {
            let strip = strip_m(blank.rough[1].to_m(), blank.strips, stock);
            if blank.rough[0].to_m() > long || strip > wide {
                self.too_long.push(at);
                continue;
            }
            let all = (1..=blank.pieces()).map(|number| (at, number, blank.rough[0].to_m(), strip));
            pieces.extend(all);
        }
        sort(&mut pieces, |one, other| (one.3, one.2) < (other.3, other.2));
        let kerf = stock.kerf.to_m();
        let mut shelves: Vec<Shelf> = Vec::new();
        let mut used_width: Vec<f64> = Vec::new();
        for (blank, strip, length, width) in &pieces {
            let fits =
                |shelf: &Shelf| shelf.wide >= width - 1e-9 && shelf.used + length <= long + 1e-9;
            let place = shelves.iter().position(fits).unwrap_or_else(|| {
                let room = used_width.iter().position(|used| used + width <= wide + 1e-9);
                let board = room.unwrap_or_else(|| {
                    used_width.push(0.0);
                    self.boards.push(Vec::new());
                    used_width.len() - 1
                });
                let from_edge = used_width[board];
                used_width[board] += width + kerf;
                shelves.push(Shelf { board, from_edge, wide: *width, used: 0.0 });
                shelves.len() - 1
            });
            let shelf = &mut shelves[place];
            let mm = Length::from_m;
            self.boards[shelf.board].push(Lies {
                blank: *blank,
                strip: *strip,
                at: (mm(shelf.used), mm(shelf.from_edge)),
                size: (mm(*length), mm(*width)),
            });
            shelf.used += length + kerf;
        }
        // By area; and of pieces wider than half a board no two lie side by side.
        let area: f64 = pieces.iter().map(|piece| piece.2 * piece.3).sum();
        let wide_ones = pieces.iter().filter(|piece| piece.3 > 0.5 * wide);
        let in_line: f64 = wide_ones.map(|piece| piece.2).sum();
        let whole = (area / (long * wide)).max(in_line / long);
        while (self.at_least as f64) < whole - 1e-9 {
            self.at_least += 1;
        }
    }
}

/// What is bought besides the wood.
pub fn counts(making: &super::Making<'_>, whole: &Whole) -> Counts {
    use crate::engine::geometry::Contact;
    use crate::engine::parts::HoleKind;
    let holes = |kind: Kind, hole: HoleKind| {
        whole.of(kind).flat_map(|part| &part.holes).filter(|own| own.kind == hole).count()
    };
    let touched = |lever: bool| {
        let strings = making.band.strings.iter().flatten();
        let all = strings.flat_map(|placed| &placed.contacts);
        all.filter(|(kind, _)| (*kind == Contact::Lever) == lever).count()
    };
    Counts {
        strings: making.band.strings.len(),
        tuning_pins: holes(Kind::Neck, HoleKind::TuningPin),
        bridge_pins: holes(Kind::Neck, HoleKind::BridgePin),
        levers: touched(true),
        discs: touched(false),
        string_holes: holes(Kind::Board, HoleKind::String),
        fasteners: holes(Kind::Neck, HoleKind::Fastener),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::testing::assert_close;

    fn piece(long: f64, wide: f64, wood: &str) -> Blank {
        let mm = [long, wide, 20.0].map(Length::from_mm);
        Blank {
            name: Name { kind: Kind::Side, hand: None, number: 0 },
            wood: wood.to_owned(),
            is_sheet: false,
            finished: mm,
            rough: mm,
            strips: 1,
            layers: 1,
            layer: mm[2],
            volume_m3: 1e-9 * long * wide * 20.0,
            mass: None,
            holes: 0,
        }
    }

    fn stock() -> Stock {
        let mm = Length::from_mm;
        Stock { board: (mm(1000.0), mm(200.0)), kerf: mm(0.0), ..Stock::default() }
    }

    /// Four pieces of 500 by 100 fill a board of 1000 by 200; a fifth takes another one.
    #[test]
    fn pieces_that_fill_a_board_leave_nothing_over() {
        let four = vec![piece(500.0, 100.0, "a"); 4];
        let nests = nests(&four, &stock());
        assert_eq!((nests.len(), nests[0].boards.len(), nests[0].at_least), (1, 1, 1));
        assert!(nests[0].waste_ratio().abs() < 1e-12);
        let five = super::nests(&vec![piece(500.0, 100.0, "a"); 5], &stock());
        assert_eq!((five[0].boards.len(), five[0].at_least), (2, 2));
        assert_close(five[0].waste_ratio(), 0.375, 1e-12, "three of eight");
    }

    #[test]
    fn pieces_wider_than_half_a_board_lie_in_line_and_what_is_too_long_lies_nowhere() {
        let all = [piece(600.0, 120.0, "a"), piece(600.0, 120.0, "a"), piece(1200.0, 50.0, "a")];
        let nests = nests(&all, &stock());
        assert_eq!((nests[0].boards.len(), nests[0].at_least), (2, 2));
        assert_eq!(nests[0].too_long, [2]);
        let other = [piece(100.0, 50.0, "a"), piece(100.0, 50.0, "b")];
        assert_eq!(super::nests(&other, &stock()).len(), 2, "two woods");
    }
}
