//! Neck and pillar: the neck from the shoulder to the front of the pillar, and the pillar from the base to a seat that is
//! square to it, on which the neck stands with a heel. Where the neck is glued on a face larger than the pillar, cheeks
//! make a capital of its top.

use kurbo::{BezPath, Point as Node};

use super::name::{Kind, Name};
use super::outline::{end, join, until, within};
use super::part::{Face, Hole, HoleKind, Part};
use super::solid::{Cell, Plane, SAME_M, Spot, dot, minus, plus, times, unit};
use super::walls::{ASIDE, Walls, spot};
use super::{Making, NoRoom, PartsError};
use crate::engine::bearing::Build;
use crate::engine::geometry::NeckShape;
use crate::engine::structure::frame::Point;
use crate::engine::units::Length;

/// A tenon narrower than this in the plane of the strings holds nothing. A choice of this program.
const LEAST_TENON_M: f64 = 0.012;
/// Wood left between the end of a tenon and the edge of the part that takes it. Common practice, no source.
pub(super) const BEYOND_TENON_M: f64 = 0.010;
/// A cheek of a capital thinner than this is none. A choice of this program.
const LEAST_CHEEK_M: f64 = 0.001;
/// How far a cheek goes down the pillar: at least so far, and so many times its thickness, so that its glue bears a quarter
/// of the stress on the face at most. A choice of this program.
const CHEEK_DOWN: (f64, f64) = (0.060, 4.0);

/// Where the pillar stands, and its planes.
pub(super) struct Stands {
    /// Its faces towards the strings and away from them, pointing outward.
    pub(super) rear: Plane,
    pub(super) front: Plane,
    /// How far a capital stands out before each of them; 0 without one.
    pub(super) capital_m: f64,
    /// The face across the neck; points up.
    pub(super) seat: Plane,
    /// Its faces on the strings' side and on the other, pointing outward.
    pub(super) sides: (Plane, Plane),
    /// From foot to top.
    pub(super) axis: Spot,
    /// The tenon of its foot, from the base downward, and how deep it goes.
    pub(super) foot: Option<(Vec<Plane>, f64)>,
    /// The outline of the neck in the plane of the strings.
    neck: BezPath,
    /// Both ends of the seat, at the front and at the rear.
    seat_ends: (Spot, Spot),
    /// How far the neck reaches down beside its own lower edge, to the seat.
    pub(super) heel_m: f64,
    /// From the plane of the strings to the middle of neck and pillar, below 0.
    pub(super) middle_m: f64,
}

fn node(at: Spot) -> Node {
    Node::new(at[0], at[1])
}

fn place(at: Node) -> Spot {
    [at.x, at.y, 0.0]
}

impl Stands {
    pub(super) fn new(
        making: &Making<'_>,
        shape: &NeckShape,
        walls: &Walls<'_>,
    ) -> Result<Self, PartsError> {
        let band = making.band;
        let top = spot(band.pillar.1.map_err(|_| PartsError::NoNeck)?);
        let foot = spot(band.pillar.0);
        let axis = unit(minus(top, foot));
        let right = [axis[1], -axis[0], 0.0];
        let pillar = &making.build.pillar;
        let half = 0.5 * pillar.width.to_m();
        let rear = Plane::through(foot, right).moved(half);
        let front = Plane::through(foot, times(-1.0, right)).moved(half);
        let capital_m = capital_m(making.build);
        let (head_rear, head_front) = (rear.moved(capital_m), front.moved(capital_m));
        let crossed = PartsError::Crossed(Kind::Neck);
        let off = |plane: Plane, side: f64| move |at: Node| side * plane.off(place(at));
        let lower = until(&shape.lower, off(head_rear, 1.0)).ok_or(crossed)?;
        let to_front = until(&shape.lower, off(head_front, -1.0)).ok_or(crossed)?;
        let upper = until(&shape.upper, off(head_front, -1.0)).ok_or(crossed)?;
        let edges = [&to_front, &lower].map(|path| end(path).map(place));
        let [Some(at_front), Some(at_rear)] = edges else { return Err(crossed) };
        // Square to the pillar, so that nothing slides on it, at the lower of both ends of the neck's edge; above it the
        // neck has a heel.
        let high = |at: Spot| dot(minus(at, foot), axis);
        let level = high(at_front).min(high(at_rear));
        let heel_m = high(at_front).max(high(at_rear)) - level;
        let seat = Plane::through(plus(foot, times(level, axis)), axis);
        let corner = |face| Walls::corner(seat, face).ok_or(crossed);
        let seat_ends = (corner(head_front)?, corner(head_rear)?);
        let mut neck = lower;
        for at in [seat_ends.1, seat_ends.0] {
            let here = end(&neck).ok_or(crossed)?;
            if here.distance(node(at)) > SAME_M {
                neck.line_to(node(at));
            }
        }
        neck.line_to(end(&upper).ok_or(crossed)?);
        join(&mut neck, &upper.reverse_subpaths());
        neck.close_path();
        let middle_m = -making.geometry.strings_from_neck.to_m();
        let deep = 0.5 * pillar.depth.to_m();
        let sides =
            (Plane::new(ASIDE, middle_m + deep), Plane::new(times(-1.0, ASIDE), deep - middle_m));
        let mut stands = Self {
            rear,
            front,
            capital_m,
            seat,
            sides,
            axis,
            foot: None,
            neck,
            seat_ends,
            heel_m,
            middle_m,
        };
        stands.foot = stands.foot_tenon(making, walls);
        Ok(stands)
    }

    /// Whether the pillar's rear half stands on the board and not on the base.
    fn notch(&self, walls: &Walls<'_>) -> bool {
        let corner = Walls::corner(walls.low, walls.board.0);
        corner.is_some_and(|corner| self.rear.off(corner) < 0.0)
    }

    /// The planes round the foot's tenon, the front one first, and its depth.
    fn foot_tenon(&self, making: &Making<'_>, walls: &Walls<'_>) -> Option<(Vec<Plane>, f64)> {
        let (thick, deep) = making.build.joints[2].tenon?;
        let shoulder = making.proportions.tenon_shoulder.to_m();
        let corner = Walls::corner(walls.low, walls.board.0)?;
        let rear =
            if self.notch(walls) { Plane::through(corner, self.rear.square) } else { self.rear };
        let (front, rear) = (self.front.moved(-shoulder), rear.moved(-shoulder));
        let wide = -front.off(Walls::corner(walls.low, rear)?);
        let half = 0.5 * thick.to_m();
        let sides = [self.middle_m - half, self.middle_m + half].map(|at| Plane::new(ASIDE, at));
        (wide > LEAST_TENON_M).then(|| (vec![front, sides[0], rear, sides[1]], deep.to_m()))
    }

    /// The pillar without its tenons.
    fn pillar(&self, walls: &Walls<'_>) -> Option<Cell> {
        let mut ring = vec![self.front, walls.low];
        if self.notch(walls) {
            ring.push(walls.board.0);
        }
        ring.extend([self.rear, self.seat]);
        Cell::between(self.sides.0, self.sides.1, &ring)
    }

    /// A cheek of the capital on a face of the pillar: as deep as that, and bevelled towards its lower end.
    fn cheek(&self, face: Plane) -> Option<Cell> {
        let thick_m = self.capital_m;
        let long_m = CHEEK_DOWN.0.max(CHEEK_DOWN.1 * thick_m);
        let end = Walls::corner(self.seat.moved(-long_m), face)?;
        let bevel = minus(times(0.5 * long_m, face.square), times(thick_m, self.axis));
        let ring = [self.seat, self.sides.0, Plane::through(end, unit(bevel)), self.sides.1];
        Cell::between(face.moved(thick_m), face, &ring)
    }

    /// The tenon at the top of the pillar, from the seat into the neck.
    fn head_tenon(&self, making: &Making<'_>) -> Option<Cell> {
        let (thick, deep) = making.build.joints[1].tenon?;
        let shoulder = making.proportions.tenon_shoulder.to_m();
        let middle = times(0.5, plus(self.seat_ends.0, self.seat_ends.1));
        let tip = Plane::through(plus(middle, times(deep.to_m(), self.axis)), self.axis);
        let half = 0.5 * thick.to_m();
        let sides = [self.middle_m - half, self.middle_m + half].map(|at| Plane::new(ASIDE, at));
        let ring = [self.front.moved(-shoulder), self.seat, self.rear.moved(-shoulder), tip];
        Cell::between(sides[0], sides[1], &ring)
    }

    /// Whether the tenon keeps some wood round it within the neck.
    fn within_neck(&self, tenon: &Cell, shoulder: Length) -> bool {
        use kurbo::ParamCurveNearest as _;
        let room = BEYOND_TENON_M.min(shoulder.to_m() - 1e-6);
        tenon.near.iter().all(|at| {
            let at = node(*at);
            let on_seat = self.seat.off(place(at)).abs() < 1e-9;
            let off = || {
                let all = self.neck.segments().map(|piece| piece.nearest(at, 1e-6).distance_sq);
                all.fold(f64::INFINITY, f64::min).sqrt()
            };
            on_seat || (within(&self.neck, at) && off() >= room)
        })
    }
}

/// How far the face on which the neck is glued reaches beyond the pillar on each side, in the plane of the strings, in
/// metres; 0 where no capital is made.
pub fn capital_m(build: &Build) -> f64 {
    let face = build.joints[1].face.map_or(0.0, |face| face.depth().to_m());
    let beyond = 0.5 * (face - build.pillar.width.to_m());
    if beyond < LEAST_CHEEK_M { 0.0 } else { beyond }
}

const fn alone(kind: Kind) -> Name {
    Name { kind, hand: None, number: 0 }
}

/// Both parts, and what found no room.
pub(super) fn neck_and_pillar(
    making: &Making<'_>,
    shape: &NeckShape,
    walls: &Walls<'_>,
    stands: &Stands,
) -> Result<(Vec<Part>, Vec<NoRoom>), PartsError> {
    let mut left_out = Vec::new();
    let joints = &making.build.joints;
    let mut pillar = Part::of(
        alone(Kind::Pillar),
        &making.woods.pillar,
        stands.pillar(walls).ok_or(PartsError::Crossed(Kind::Pillar))?,
        stands.axis,
    );
    let mut neck = neck(making, shape, stands).ok_or(PartsError::Crossed(Kind::Neck))?;
    drill_pins(making, &mut neck);
    if joints[1].tenon.is_some() {
        match stands
            .head_tenon(making)
            .filter(|tenon| stands.within_neck(tenon, making.proportions.tenon_shoulder))
        {
            Some(tenon) => {
                pillar.cells.push(tenon.clone());
                neck.cuts.push(tenon);
            }
            None => left_out.push(NoRoom::HeadTenon),
        }
    }
    if joints[2].tenon.is_some() {
        let tenon = stands
            .foot
            .as_ref()
            .and_then(|(ring, deep)| Cell::between(walls.low, walls.low.moved(*deep), ring));
        match tenon {
            Some(tenon) => pillar.cells.push(tenon),
            None => left_out.push(NoRoom::FootTenon),
        }
    }
    let mut parts = vec![neck, pillar];
    if stands.capital_m > 0.0 {
        for (at, face) in [stands.front, stands.rear].into_iter().enumerate() {
            let name = Name { number: at + 1, ..alone(Kind::Capital) };
            let cell = stands.cheek(face).ok_or(PartsError::Crossed(Kind::Capital))?;
            parts.push(Part::of(name, &making.woods.pillar, cell, stands.axis));
        }
    }
    Ok((parts, left_out))
}

/// The neck, seen from the strings' side, with the first axis from its pillar's end to the shoulder.
fn neck(making: &Making<'_>, shape: &NeckShape, stands: &Stands) -> Option<Part> {
    let thickness = making.build.neck.thickness;
    let joint = shape.centre.first()?.at;
    let top = shape.centre.last()?.at;
    let near = stands.middle_m + 0.5 * thickness.to_m();
    let origin = [0.0, 0.0, near];
    let face = Face::new(origin, times(-1.0, ASIDE), minus(spot(joint), spot(top)));
    // The outline stands in the drawing's axes; the plane of the part is turned within these.
    let turned = kurbo::Affine::new([face.u[0], face.v[0], face.u[1], face.v[1], 0.0, 0.0]);
    let outline = turned * stands.neck.clone();
    Part::plank(alone(Kind::Neck), &making.woods.neck, face, outline, thickness)
}

/// The holes of the pins, and where levers or discs stand.
fn drill_pins(making: &Making<'_>, neck: &mut Part) {
    let drilled = &making.build.neck.drilled;
    let thick = neck.thick_m();
    let near = neck.face.origin[2];
    let into = neck.face.w;
    let mut drill = |kind, string, at: Point, wide: Length, deep: Option<Length>| {
        let deep_m = deep.map_or(thick, |deep| deep.to_m().min(thick));
        let at = [at.x.to_m(), at.y.to_m(), near];
        neck.drill((kind, string), (at, into), Some(wide), deep_m);
        if let Some(hole) = neck.holes.last_mut().filter(|hole| hole.at == at) {
            hole.through = deep_m >= thick;
        }
    };
    for placed in making.band.strings.iter().flatten() {
        if let Some((wide, deep)) = drilled.tuning {
            drill(HoleKind::TuningPin, placed.number, placed.tuning, wide, deep);
        }
        if let Some((wide, deep)) = drilled.bridge {
            drill(HoleKind::BridgePin, placed.number, placed.bridge, wide, deep);
        }
        for (_, at) in &placed.contacts {
            if let Some(wide) = drilled.mechanism {
                drill(HoleKind::Mechanism, placed.number, *at, wide, None);
            }
        }
    }
}

/// The tenon of the neck, and its holes for what holds it on the knee block: those that stay within the neck. The others go
/// from the block too.
pub(super) fn on_shoulder(making: &Making<'_>, parts: &mut [Part], left_out: &mut Vec<NoRoom>) {
    let Some(at) = parts.iter().position(|part| part.name.kind == Kind::KneeBlock) else {
        return;
    };
    let Some(neck) = parts.iter().position(|part| part.name.kind == Kind::Neck) else { return };
    let all = parts[at].holes.clone();
    let met: Vec<(Hole, Hole)> =
        all.iter().filter_map(|hole| Some((*hole, in_neck(making, &parts[neck], hole)?))).collect();
    if met.len() < all.len() {
        left_out.push(NoRoom::NeckFastener);
    }
    let tenons = parts[at].cuts.clone();
    parts[neck].cells.extend(tenons);
    parts[neck].holes.extend(met.iter().map(|(_, above)| above));
    parts[at].holes = met.into_iter().map(|(below, _)| below).collect();
}

/// The hole of a fastener in the neck, over that in the block; `None` where it does not stay within the neck.
pub(super) fn in_neck(making: &Making<'_>, neck: &Part, hole: &Hole) -> Option<Hole> {
    let deep = making.build.joints[0].fasteners.map(|fasteners| fasteners.depth);
    let way = times(-1.0, hole.way);
    let above = Hole { way, deep: deep.unwrap_or(hole.deep), through: false, ..*hole };
    stays_within(neck, &above).then_some(above)
}

/// Whether a hole from the shoulder's face keeps as much wood round it as it is thick, at its middle and at its end.
fn stays_within(neck: &Part, hole: &Hole) -> bool {
    use kurbo::ParamCurveNearest as _;
    [0.5, 1.0].into_iter().all(|share| {
        let own = neck.face.own(plus(hole.at, times(share * hole.deep.to_m(), hole.way)));
        let at = Node::new(own[0], own[1]);
        let off = neck.outline.segments().map(|piece| piece.nearest(at, 1e-6).distance_sq);
        let off = off.fold(f64::INFINITY, f64::min).sqrt();
        within(&neck.outline, at) && off >= hole.diameter.to_m()
    })
}

/// The layers of a neck that is glued up, as parts of their own, from the strings' side; none where it is of one piece.
pub fn layers(neck: &Part, woods: &super::Woods) -> Vec<Part> {
    let all: f64 = woods.layers.iter().map(|(thick, _, _)| thick.to_m()).sum();
    let whole = neck.thick_m();
    let mut deep = 0.0;
    let layer = |(at, (thick, turned, stuff)): (usize, &(Length, f64, super::Stuff))| {
        let thick = Length::from_m(whole * thick.to_m() / all);
        let origin = plus(neck.face.origin, times(deep, neck.face.w));
        deep += thick.to_m();
        let face = Face { origin, ..neck.face };
        let name = Name { number: at + 1, ..neck.name };
        let mut part = Part::plank(name, stuff, face, neck.outline.clone(), thick)?;
        part.grain_rad = *turned;
        Some(part)
    };
    woods.layers.iter().enumerate().filter_map(layer).collect()
}
