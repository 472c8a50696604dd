//! Solids of wood in space: planes, cells between two faces, their volume and the middle of it.
//!
//! Places are in metres, in the coordinates of the drawing with a third across the harp, towards the strings' side of the
//! neck.

/// A place or a way in space.
pub type Spot = [f64; 3];

/// Faces of cells whose ring turns by less than this share are taken as pressed flat.
const FLAT: f64 = 1e-12;
/// What lies so near to a plane lies in it.
pub(super) const SAME_M: f64 = 1e-9;

pub(super) fn plus(one: Spot, other: Spot) -> Spot {
    [0, 1, 2].map(|i| one[i] + other[i])
}

pub(super) fn minus(one: Spot, other: Spot) -> Spot {
    [0, 1, 2].map(|i| one[i] - other[i])
}

pub(super) fn times(ratio: f64, way: Spot) -> Spot {
    way.map(|part| ratio * part)
}

pub(super) fn dot(one: Spot, other: Spot) -> f64 {
    one[0] * other[0] + one[1] * other[1] + one[2] * other[2]
}

pub(super) fn cross(one: Spot, other: Spot) -> Spot {
    [
        one[1] * other[2] - one[2] * other[1],
        one[2] * other[0] - one[0] * other[2],
        one[0] * other[1] - one[1] * other[0],
    ]
}

pub(super) fn size(way: Spot) -> f64 {
    dot(way, way).sqrt()
}

/// So long as 1; what has no length stays as it is.
pub(super) fn unit(way: Spot) -> Spot {
    let long = size(way);
    if long > 0.0 { times(1.0 / long, way) } else { way }
}

/// All places with `square · place = at`; the way square to it is as long as 1.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Plane {
    /// Square to it.
    pub square: Spot,
    /// From the origin, along that way.
    pub at: f64,
}

impl Plane {
    /// Of any way square to it.
    pub(super) fn new(square: Spot, at: f64) -> Self {
        let long = size(square);
        Self { square: unit(square), at: if long > 0.0 { at / long } else { at } }
    }

    /// Of a flat face, square outward where its corners go round to the left as seen from outside.
    pub fn of(face: &[Spot]) -> Self {
        Self::through(face.first().copied().unwrap_or_default(), turn(face))
    }

    /// Square to a way, through a place.
    pub(super) fn through(place: Spot, square: Spot) -> Self {
        Self::new(square, dot(place, square))
    }

    /// As far away on the side to which it is square.
    #[must_use]
    #[inline(never)]
    pub(super) fn moved(self, by_m: f64) -> Self {
        Self { at: self.at + by_m, ..self }
    }

    /// How far a place lies off, above 0 on the side to which it is square.
    pub fn off(&self, place: Spot) -> f64 {
        dot(self.square, place) - self.at
    }

    /// Where a line through a place meets it.
    pub fn met(&self, from: Spot, way: Spot) -> Option<Spot> {
        let share = -self.off(from) / dot(self.square, way);
        share.is_finite().then(|| plus(from, times(share, way)))
    }
}

/// Where three planes meet; `None` where they do not in one place.
pub(super) fn meet(one: Plane, two: Plane, three: Plane) -> Option<Spot> {
    let (a, b, c) = (one.square, two.square, three.square);
    let whole = dot(a, cross(b, c));
    let sum = plus(
        plus(times(one.at, cross(b, c)), times(two.at, cross(c, a))),
        times(three.at, cross(a, b)),
    );
    let place = times(1.0 / whole, sum);
    (whole.abs() > FLAT && place.iter().all(|part| part.is_finite())).then_some(place)
}

/// What lies between two faces of as many corners, each joined to that of the other.
#[derive(Clone, Debug, PartialEq)]
pub struct Cell {
    /// The corners of the one face, in order round it.
    pub near: Vec<Spot>,
    /// Those of the other.
    pub far: Vec<Spot>,
}

impl Cell {
    /// Between two planes, and round by others in their order. `None` where a corner is no place, or the cell has no inside.
    #[inline(never)]
    pub(super) fn between(near: Plane, far: Plane, ring: &[Plane]) -> Option<Self> {
        let next = |at: usize| ring[(at + 1) % ring.len()];
        let face = |plane: Plane| {
            (0..ring.len()).map(|at| meet(plane, ring[at], next(at))).collect::<Option<Vec<Spot>>>()
        };
        let cell = Self { near: face(near)?, far: face(far)? };
        cell.is_sound().then_some(cell)
    }

    /// A face, and the same so far away.
    pub(super) fn raised(near: Vec<Spot>, by: Spot) -> Option<Self> {
        let far = near.iter().map(|place| plus(*place, by)).collect();
        let cell = Self { near, far };
        cell.is_sound().then_some(cell)
    }

    /// The same with every face so far outward, but for those that lie in one of some planes.
    pub(super) fn loosened(&self, by_m: f64, open: &[Plane]) -> Option<Self> {
        let moved = |face: &Vec<Spot>| {
            let plane = Plane::through(face[0], turn(face));
            let lies_in = |own: &Plane| face.iter().all(|at| own.off(*at).abs() < SAME_M);
            if open.iter().any(lies_in) { plane } else { plane.moved(by_m) }
        };
        let planes: Vec<Plane> = self.faces().iter().map(moved).collect();
        let [near, far, ring @ ..] = &planes[..] else { return None };
        Self::between(*near, *far, ring)
    }

    /// The planes of its faces, pointing outward.
    pub(super) fn planes(&self) -> Vec<Plane> {
        self.faces().iter().map(|face| Plane::through(face[0], turn(face))).collect()
    }

    /// Whether both faces turn the same way and the far one lies beyond the near one everywhere, so that nothing crosses.
    fn is_sound(&self) -> bool {
        let square = turn(&self.near);
        let beyond = |side: f64| {
            self.near.iter().zip(&self.far).all(|(near, far)| {
                side * dot(square, minus(*far, *near)) > FLAT.sqrt() * size(square) * 1e-3
            })
        };
        let is_long =
            size(square) > FLAT && self.near.len() > 2 && self.near.len() == self.far.len();
        is_long && dot(square, turn(&self.far)) > 0.0 && (beyond(1.0) || beyond(-1.0))
    }

    /// The faces: near, far, and round. Each goes round so that its way square points outward.
    pub fn faces(&self) -> Vec<Vec<Spot>> {
        let count = self.near.len();
        let side = |at: usize| {
            let next = (at + 1) % count;
            vec![self.near[at], self.near[next], self.far[next], self.far[at]]
        };
        let near: Vec<Spot> = self.near.iter().rev().copied().collect();
        let mut faces = vec![near, self.far.clone()];
        faces.extend((0..count).map(side));
        let outward = dot(turn(&self.near), minus(self.far[0], self.near[0])) > 0.0;
        if !outward {
            faces.iter_mut().for_each(|face| face.reverse());
        }
        faces
    }

    /// Volume, and the middle of it times that: sums over the pyramids from the origin to the triangles of each face.
    ///
    /// # Source
    ///
    /// The theorem of Gauss; any textbook of vector analysis, from memory.
    pub fn moments(&self) -> (f64, Spot) {
        let from = self.near[0];
        let (mut volume, mut middle) = (0.0, [0.0; 3]);
        for face in self.faces() {
            for pair in face[1..].windows(2) {
                let corners = [face[0], pair[0], pair[1]].map(|place| minus(place, from));
                let part = dot(corners[0], cross(corners[1], corners[2])) / 6.0;
                let sum = plus(corners[0], plus(corners[1], corners[2]));
                volume += part;
                middle = plus(middle, times(0.25 * part, sum));
            }
        }
        (volume, plus(middle, times(volume, from)))
    }

    /// All corners.
    pub fn corners(&self) -> impl Iterator<Item = Spot> {
        self.near.iter().chain(&self.far).copied()
    }
}

/// Twice the area of a face, as a way square to it.
pub(super) fn turn(face: &[Spot]) -> Spot {
    let from = face.first().copied().unwrap_or_default();
    let round = face.windows(2).map(|pair| cross(minus(pair[0], from), minus(pair[1], from)));
    round.fold([0.0; 3], plus)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::testing::assert_close;

    fn boxed(from: Spot, to: Spot) -> Cell {
        let plane = |axis: usize, at: f64| {
            let mut square = [0.0; 3];
            square[axis] = 1.0;
            Plane::new(square, at)
        };
        let ring = [plane(0, from[0]), plane(1, from[1]), plane(0, to[0]), plane(1, to[1])];
        Cell::between(plane(2, from[2]), plane(2, to[2]), &ring).expect("a box")
    }

    #[test]
    fn a_box_has_the_volume_of_its_sides_and_its_middle_in_the_middle() {
        let (volume, middle) = boxed([1.0, 2.0, 3.0], [3.0, 5.0, 8.0]).moments();
        assert_close(volume, 30.0, 1e-12, "volume");
        for (at, expected) in [2.0, 3.5, 5.5].into_iter().enumerate() {
            assert_close(middle[at] / volume, expected, 1e-12, at);
        }
    }

    /// A frustum of a pyramid of 4 by 4 and 2 by 2, 3 high: `h/3 (A + a + √(A a))` = 28.
    #[test]
    fn what_tapers_has_the_volume_of_a_frustum() {
        let face = |half: f64, z: f64| {
            vec![[-half, -half, z], [half, -half, z], [half, half, z], [-half, half, z]]
        };
        let cell = Cell { near: face(2.0, 0.0), far: face(1.0, 3.0) };
        assert!(cell.is_sound());
        assert_close(cell.moments().0, 28.0, 1e-12, "volume");
        for face in cell.faces() {
            let out = minus(face[0], [0.0, 0.0, 1.5]);
            assert!(dot(turn(&face), out) > 0.0, "{face:?}");
        }
        let turned = Cell { near: face(1.0, 3.0), far: face(2.0, 0.0) };
        assert_close(turned.moments().0, 28.0, 1e-12, "the other way");
    }

    /// A mortise of 4 by 3, 5 deep, open above: loosened by a half it is 5 by 4, 5.5 deep.
    #[test]
    fn what_is_loosened_grows_on_every_face_but_those_that_are_open() {
        let cell = boxed([0.0, 0.0, 0.0], [4.0, 3.0, 5.0]);
        let top = Plane::new([0.0, 0.0, 1.0], 5.0);
        let (volume, middle) = cell.loosened(0.5, &[top]).expect("a mortise").moments();
        assert_close(volume, 5.0 * 4.0 * 5.5, 1e-12, "volume");
        assert_close(middle[2] / volume, 2.25, 1e-12, "middle");
        assert_eq!(cell.loosened(0.0, &[]).map(|own| own.moments().0), Some(60.0));
    }

    #[test]
    fn planes_that_do_not_meet_and_cells_without_an_inside_are_none() {
        let up = Plane::new([0.0, 0.0, 2.0], 4.0);
        assert_close(up.off([0.0, 0.0, 5.0]), 3.0, 1e-12, "off");
        assert_eq!(meet(up, up.moved(1.0), Plane::new([1.0, 0.0, 0.0], 0.0)), None);
        let ring = [
            Plane::new([1.0, 0.0, 0.0], 0.0),
            Plane::new([0.0, 1.0, 0.0], 0.0),
            Plane::new([1.0, 0.0, 0.0], 1.0),
            Plane::new([0.0, 1.0, 0.0], 1.0),
        ];
        assert!(Cell::between(up, up.moved(1.0), &ring).is_some());
        assert_eq!(Cell::between(up, up, &ring), None);
        // A wedge whose far face has turned over.
        let mut crossed = ring;
        crossed[2] = Plane::new([1.0, 0.0, 1.0], 2.5);
        assert_eq!(Cell::between(up, up.moved(1.0), &crossed), None);
    }
}
