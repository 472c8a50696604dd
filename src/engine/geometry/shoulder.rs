//! The treble end of the neck: how its edges run from the highest pins to the face on the soundbox.

use kurbo::{BezPath, Point as Node, Vec2};

/// Into how many curves an arc is cut.
const CURVES: u32 = 4;

/// The way into an edge: straight from the face, then round on a circle, which it leaves where the edge begins, in
/// the edge's direction.
#[derive(Clone, Copy)]
pub(super) struct WayIn {
    face: Node,
    touched: Node,
    begin: Node,
    centre: Node,
    /// From the place where the straight piece touches the circle; above 0 to the left.
    sweep_rad: f64,
}

impl WayIn {
    /// With `e` from the begin of the edge to the face, at an angle `φ` to the edge gone backwards, the circle can be
    /// reached if its radius is at most `|e|/(2 sin φ)`; a greater one is made so small. The straight piece touches
    /// the circle. Where there is no such circle, the way is straight.
    ///
    /// # Source
    ///
    /// Geometry, worked out.
    pub(super) fn new(face: Node, begin: Node, edge: Vec2, radius_m: f64) -> Self {
        let (back, to) = (-edge / edge.hypot(), face - begin);
        let beside = back.cross(to);
        // To the left, gone backwards, where the face lies there.
        let turn = if beside < 0.0 { -1.0 } else { 1.0 };
        let radius = radius_m.min(to.hypot2() / (2.0 * beside.abs()));
        let centre = begin + turn * radius * Vec2::new(-back.y, back.x);
        let out = face - centre;
        let opening = (radius / out.hypot()).min(1.0).acos();
        let touched = centre + radius * Vec2::from_angle(out.angle() - turn * opening);
        let turned = out.angle() - turn * opening - (begin - centre).angle();
        let sweep_rad = -turn * (turn * turned).rem_euclid(std::f64::consts::TAU);
        if radius > 0.0 && sweep_rad.is_finite() {
            Self { face, touched, begin, centre, sweep_rad }
        } else {
            Self { face, touched: begin, begin, centre: begin, sweep_rad: 0.0 }
        }
    }

    /// The place at a share of the way.
    pub(super) fn at(&self, share: f64) -> Node {
        let (straight, arc) = (self.face.distance(self.touched), self.arc_m());
        let gone = share * (straight + arc);
        if gone < straight || arc <= 0.0 {
            self.face.lerp(self.touched, (gone / straight.max(1e-12)).min(1.0))
        } else {
            self.round((gone - straight) / arc)
        }
    }

    fn arc_m(&self) -> f64 {
        self.centre.distance(self.touched) * self.sweep_rad.abs()
    }

    /// The place at a share of the arc.
    fn round(&self, share: f64) -> Node {
        let (sin, cos) = (share * self.sweep_rad).sin_cos();
        let from = self.touched - self.centre;
        self.centre + Vec2::new(from.x * cos - from.y * sin, from.x * sin + from.y * cos)
    }

    /// From the face to the edge. The handles of a piece of an arc are `4/3 tan(φ/4)` of its radius long: any
    /// textbook of computer graphics, from memory.
    pub(super) fn path(&self) -> BezPath {
        let mut path = BezPath::new();
        path.move_to(self.face);
        path.line_to(self.touched);
        if self.sweep_rad == 0.0 {
            return path;
        }
        let long = 4.0 / 3.0 * (0.25 * self.sweep_rad / f64::from(CURVES)).tan();
        let ahead = |at: Node| {
            let from = at - self.centre;
            long * Vec2::new(-from.y, from.x)
        };
        let mut from = self.touched;
        for curve in 1..=CURVES {
            let share = f64::from(curve) / f64::from(CURVES);
            let to = if curve == CURVES { self.begin } else { self.round(share) };
            path.curve_to(from + ahead(from), to - ahead(to), to);
            from = to;
        }
        path
    }
}

#[cfg(test)]
mod tests {
    use kurbo::ParamCurve;

    use super::*;
    use crate::testing::assert_close;

    /// From 1, 1 to the left on a circle of 1 round 1, 0, and from 0, 0 straight down; to the right alike.
    #[test]
    fn a_quarter_turn_and_a_straight_piece_are_what_they_look_like() {
        for side in [1.0, -1.0] {
            let face = Node::new(0.0, -3.0 * side);
            let way = WayIn::new(face, Node::new(1.0, side), Vec2::new(1.0, 0.0), 1.0);
            assert!(way.touched.distance(Node::ORIGIN) < 1e-12, "{:?}", way.touched);
            assert_close(way.arc_m(), std::f64::consts::FRAC_PI_2, 1e-12, side);
            assert!(way.at(0.0).distance(face) < 1e-12);
            assert!(way.at(1.0).distance(way.begin) < 1e-12);
            let path = way.path();
            for piece in path.segments().skip(1) {
                for share in [0.0, 0.3, 0.5, 1.0] {
                    let off = piece.eval(share).distance(Node::new(1.0, 0.0)) - 1.0;
                    assert!(off.abs() < 1e-5, "{off}");
                }
            }
            let last = path.segments().last().unwrap().to_cubic();
            let ends = last.p3 - last.p2;
            assert!(ends.y.abs() < 1e-12 && ends.x > 0.0, "into the edge: {ends:?}");
        }
    }

    #[test]
    fn a_circle_too_large_to_reach_the_face_is_made_smaller() {
        // Square to the way and 2 off: at most a half-circle of 1.
        let way = WayIn::new(Node::new(0.0, -2.0), Node::ORIGIN, Vec2::new(-1.0, 0.0), 5.0);
        assert_close(way.centre.distance(way.begin), 1.0, 1e-12, "radius");
        assert!(way.touched.distance(way.face) < 1e-7);
        assert_close(way.arc_m(), std::f64::consts::PI, 1e-7, "arc");
        let straight = WayIn::new(Node::new(3.0, 0.0), Node::ORIGIN, Vec2::new(-1.0, 0.0), 1.0);
        assert!(straight.arc_m() < 1e-12);
        assert!(straight.at(0.5).distance(Node::new(1.5, 0.0)) < 1e-12);
        let none = WayIn::new(Node::ORIGIN, Node::ORIGIN, Vec2::ZERO, f64::NAN);
        assert_eq!(none.at(0.5), Node::ORIGIN);
    }
}
