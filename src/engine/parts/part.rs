//! A part: its plane with outline and holes, and its solid.

use kurbo::BezPath;

use super::bent::Sheet;
use super::name::Name;
use super::outline::{area, closed, flat, hull, within};
use super::solid::{Cell, Spot, cross, dot, minus, plus, size, times, turn, unit};
use crate::engine::units::{Density, Length};

/// A wood or a plywood.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Stuff {
    /// Its key.
    pub key: String,
    /// Mass over volume, where it is known.
    pub density: Option<Density>,
    /// Whether it comes in sheets.
    pub is_sheet: bool,
}

/// The plane of a part: its near face, as it is seen from outside, with the grain along the first axis unless the part says
/// otherwise.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Face {
    /// Where the axes begin.
    pub origin: Spot,
    /// To the right.
    pub u: Spot,
    /// Upward.
    pub v: Spot,
    /// Into the wood.
    pub w: Spot,
}

impl Face {
    /// Into the wood along `into`, with the first axis as near to `along` as it can be.
    pub(super) fn new(origin: Spot, into: Spot, along: Spot) -> Self {
        let w = unit(into);
        let u = unit(minus(along, times(dot(along, w), w)));
        Self { origin, u, v: cross(u, w), w }
    }

    /// A place in its axes.
    pub fn own(&self, at: Spot) -> Spot {
        let from = minus(at, self.origin);
        [dot(from, self.u), dot(from, self.v), dot(from, self.w)]
    }

    /// The place that has such distances along its axes.
    pub fn place(&self, own: Spot) -> Spot {
        let sum = plus(times(own[0], self.u), times(own[1], self.v));
        plus(self.origin, plus(sum, times(own[2], self.w)))
    }
}

/// What a hole is for.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum HoleKind {
    /// A tuning pin.
    TuningPin,
    /// A bridge pin.
    BridgePin,
    /// The screw of a lever or the axle of a disc.
    Mechanism,
    /// A string.
    String,
    /// What holds the joint of neck and soundbox.
    Fastener,
}

/// A round hole.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Hole {
    /// What it is for.
    pub kind: HoleKind,
    /// The number of its string, from the top; 0 where it has none.
    pub string: usize,
    /// Where it begins.
    pub at: Spot,
    /// The way of the drill, as long as 1.
    pub way: Spot,
    /// How wide.
    pub diameter: Length,
    /// How far it goes through wood.
    pub deep: Length,
    /// Whether it comes out again.
    pub through: bool,
}

impl Hole {
    /// What it takes away.
    pub fn volume_m3(&self) -> f64 {
        0.25 * std::f64::consts::PI * self.diameter.to_m().powi(2) * self.deep.to_m()
    }

    /// Its middle.
    pub(super) fn middle(&self) -> Spot {
        plus(self.at, times(0.5 * self.deep.to_m(), self.way))
    }
}

/// A part of the harp.
#[derive(Clone, Debug, PartialEq)]
pub struct Part {
    /// Which it is.
    pub name: Name,
    /// What it is of.
    pub stuff: Stuff,
    /// Its plane.
    pub face: Face,
    /// The outline of its near face, in metres.
    pub outline: BezPath,
    /// That of its far face seen through the wood, where it is another one.
    pub far: Option<BezPath>,
    /// From the first axis to the grain, in its plane.
    pub grain_rad: f64,
    /// Whether its grain lies across the harp, which is about square to its plane, and not along the first axis.
    pub grain_across: bool,
    /// Its wood, without what is taken away: first the part itself, then its tenons.
    pub cells: Vec<Cell>,
    /// How many of these are the part itself.
    pub body: usize,
    /// The flat sheet of a part that is bent; outline and openings are then those of the sheet.
    pub sheet: Option<Sheet>,
    /// Mortises.
    pub cuts: Vec<Cell>,
    /// What is planed off its near face, towards its edges; the outline stays.
    pub planed: Vec<Cell>,
    /// Round holes.
    pub holes: Vec<Hole>,
    /// Sound holes, in its plane; the corners of their curves lie on the box round them.
    pub openings: Vec<BezPath>,
}

impl Part {
    /// What lies between two faces, with the first axis of its plane along a way.
    pub(super) fn of(name: Name, stuff: &Stuff, cell: Cell, along: Spot) -> Self {
        let square = turn(&cell.near);
        let far = minus(cell.far[0], cell.near[0]);
        let into = if dot(square, far) > 0.0 { square } else { times(-1.0, square) };
        let face = Face::new(cell.near[0], into, along);
        let round = |corners: &[Spot]| {
            let own: Vec<(f64, f64)> =
                corners.iter().map(|at| face.own(*at)).map(|at| (at[0], at[1])).collect();
            own
        };
        let (near, behind) = (round(&cell.near), round(&cell.far));
        let differs = |(one, other): (&(f64, f64), &(f64, f64))| {
            (one.0 - other.0).hypot(one.1 - other.1) > 1e-7
        };
        let far = near.iter().zip(&behind).any(differs).then(|| closed(&behind));
        Self::new(name, stuff, face, (closed(&near), far), cell)
    }

    /// A plank of one thickness within an outline in a plane.
    pub(super) fn plank(
        name: Name,
        stuff: &Stuff,
        face: Face,
        outline: BezPath,
        thickness: Length,
    ) -> Option<Self> {
        let near = flat(&outline).into_iter().map(|(u, v)| face.place([u, v, 0.0])).collect();
        let cell = Cell::raised(near, times(thickness.to_m(), face.w))?;
        Some(Self::new(name, stuff, face, (outline, None), cell))
    }

    fn new(
        name: Name,
        stuff: &Stuff,
        face: Face,
        (outline, far): (BezPath, Option<BezPath>),
        cell: Cell,
    ) -> Self {
        Self {
            name,
            stuff: stuff.clone(),
            face,
            outline,
            far,
            grain_rad: 0.0,
            grain_across: false,
            cells: vec![cell],
            body: 1,
            sheet: None,
            cuts: Vec::new(),
            planed: Vec::new(),
            holes: Vec::new(),
            openings: Vec::new(),
        }
    }

    /// Volume without holes, mortises, openings and what is planed off, and the middle of it.
    ///
    /// What an opening takes away is as thick as the part is behind its middle; in one that is bent it gets narrower inward.
    pub fn volume(&self) -> (f64, Spot) {
        let (mut volume, mut middle) = (0.0, [0.0; 3]);
        let mut add = |share: f64, (part, at): (f64, Spot)| {
            volume += share * part;
            middle = plus(middle, times(share, at));
        };
        self.cells.iter().for_each(|cell| add(1.0, cell.moments()));
        self.cuts.iter().chain(&self.planed).for_each(|cell| add(-1.0, cell.moments()));
        for hole in &self.holes {
            add(-hole.volume_m3(), (1.0, hole.middle()));
        }
        for opening in &self.openings {
            let at = opening.control_box().center();
            let thick = self.thick_m();
            let middle = self.place((at.x, at.y), 0.5 * thick);
            let narrows = self.sheet.as_ref().map_or(1.0, |sheet| sheet.narrows(at.x));
            add(-narrows * area(opening) * thick, (1.0, middle));
        }
        (volume, times(1.0 / volume, middle))
    }

    /// The part itself, without its tenons.
    pub fn body(&self) -> &[Cell] {
        self.cells.get(..self.body).unwrap_or_default()
    }

    /// Its tenons.
    pub fn tenons(&self) -> &[Cell] {
        self.cells.get(self.body..).unwrap_or_default()
    }

    /// Where a place of its outline lies in space, so deep in the wood.
    pub fn place(&self, (u, v): (f64, f64), deep_m: f64) -> Spot {
        match &self.sheet {
            Some(sheet) => sheet.place((u, v), deep_m),
            None => self.face.place([u, v, deep_m]),
        }
    }

    /// The place of its outline that lies square over a place in space.
    pub fn flat_of(&self, at: Spot) -> (f64, f64) {
        match &self.sheet {
            Some(sheet) => sheet.flat_of(at),
            None => {
                let own = self.face.own(at);
                (own[0], own[1])
            }
        }
    }

    /// Adds a piece over one of its faces.
    pub(super) fn crown(&mut self, above: Cell) {
        self.cells.insert(self.body, above);
        self.body += 1;
        let own = self.body().iter().flat_map(Cell::corners).map(|at| self.flat_of(at));
        self.outline = closed(&hull(own.collect()));
    }

    /// Bends a part: its strips, and the sheet that they are cut from.
    pub(super) fn bend(&mut self, cells: Vec<Cell>, sheet: Sheet) {
        self.outline = sheet.outline();
        (self.far, self.body, self.cells, self.sheet) = (None, cells.len(), cells, Some(sheet));
    }

    /// How thick it is where it is thickest, without tenons.
    pub fn thick_m(&self) -> f64 {
        if let Some(sheet) = &self.sheet {
            return sheet.thick_m;
        }
        let cell = self.cells.first();
        let deep = cell.iter().flat_map(|cell| cell.corners()).map(|at| self.face.own(at)[2]);
        deep.fold(0.0, f64::max)
    }

    /// How thick it is where it is thinnest.
    pub fn thin_m(&self) -> f64 {
        if let Some(sheet) = &self.sheet {
            return sheet.thick_m;
        }
        let cell = self.cells.first();
        let deep = cell.iter().flat_map(|cell| &cell.far).map(|at| self.face.own(*at)[2]);
        deep.fold(f64::INFINITY, f64::min)
    }

    /// The least box that holds it, tenons too: along the grain, across it in its plane, and square to both. Of a part that is
    /// bent the box round its sheet.
    pub fn sizes_m(&self) -> [f64; 3] {
        if let Some(sheet) = &self.sheet {
            let around = self.outline.control_box();
            return [around.width(), around.height(), sheet.thick_m];
        }
        let mut low = [f64::INFINITY; 3];
        let mut high = [f64::NEG_INFINITY; 3];
        for at in self.cells.iter().flat_map(Cell::corners) {
            let across = [at[2], at[1], at[0]];
            let own = if self.grain_across { across } else { self.along_grain(at) };
            for (axis, part) in own.into_iter().enumerate() {
                low[axis] = low[axis].min(part);
                high[axis] = high[axis].max(part);
            }
        }
        [0, 1, 2].map(|axis| high[axis] - low[axis])
    }

    /// A place by its grain: along it, across it in its plane, and square to both.
    fn along_grain(&self, at: Spot) -> Spot {
        let (own, (sin, cos)) = (self.face.own(at), self.grain_rad.sin_cos());
        [cos * own[0] + sin * own[1], cos * own[1] - sin * own[0], own[2]]
    }

    /// Whether a place of its near face lies within the outline.
    pub(super) fn holds(&self, at: Spot) -> bool {
        let own = self.face.own(at);
        within(&self.outline, (own[0], own[1]).into())
    }

    /// Drills a hole from a place on the near face as far as the plane of the far face, if it lies within the outline.
    pub(super) fn drill(
        &mut self,
        (kind, string): (HoleKind, usize),
        (at, way): (Spot, Spot),
        diameter: Option<Length>,
        deep_m: f64,
    ) {
        let Some(diameter) = diameter else { return };
        if self.holds(at) && deep_m > 0.0 && size(way) > 0.0 {
            let deep = Length::from_m(deep_m);
            let way = unit(way);
            self.holes.push(Hole { kind, string, at, way, diameter, deep, through: true });
        }
    }
}
