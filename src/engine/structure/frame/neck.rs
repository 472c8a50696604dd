//! The forces within the neck, cut by cut from the shoulder to the pillar.

use super::{FrameError, Point, Pull, Reactions, Supports, cross, dot, reactions};
use crate::engine::order::sort;
use crate::engine::structure::section::Rectangle;
use crate::engine::structure::space::Cut;
use crate::engine::units::Stress;

/// A point of the middle line of the neck, with the section there.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct AxisPoint {
    /// Where it is.
    pub at: Point,
    /// Breadth through the neck, depth in the plane of the strings; between two points it goes evenly.
    pub section: Rectangle,
}

/// Which joints keep the neck from turning over to the strings' side.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum HeldAgainstTwist {
    /// The shoulder alone; the pillar only pushes.
    Shoulder,
    /// Shoulder and pillar, both without giving.
    BothEnds,
}

/// A neck: its middle line from the shoulder to the pillar, and what holds it.
#[derive(Clone, Debug, PartialEq)]
pub struct Neck {
    axis: Vec<AxisPoint>,
    supports: Supports,
    twist: HeldAgainstTwist,
}

/// A cut through the neck, and what the part beyond it, towards the pillar, gives to the part before it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Station {
    /// Where the cut meets the middle line.
    pub at: Point,
    /// How far from the shoulder along the middle line.
    pub s_m: f64,
    /// The section there.
    pub section: Rectangle,
    /// Along the neck; a pull is above 0.
    pub axial_n: f64,
    /// Across the neck, to the left of the way from shoulder to pillar.
    pub shear_n: f64,
    /// Across the plane of the harp, to the side of the strings; nothing where the neck stands on pins.
    pub aside_n: f64,
    /// Bending in the plane of the harp, from `x` to `y` above 0.
    pub moment_n_m: f64,
    /// Twist about the middle line, by the strings that hang beside it.
    pub torque_n_m: f64,
    /// Bending out of the plane of the harp, about the direction of `shear_n`.
    pub sideways_n_m: f64,
}

impl Station {
    /// The forces, as a bar of a frame in space has them.
    pub const fn forces(&self) -> Cut {
        [
            self.axial_n,
            self.shear_n,
            self.aside_n,
            self.torque_n_m,
            self.sideways_n_m,
            self.moment_n_m,
        ]
    }

    /// Takes the forces that a bar of a frame in space has there.
    pub const fn take(&mut self, cut: Cut) {
        [
            self.axial_n,
            self.shear_n,
            self.aside_n,
            self.torque_n_m,
            self.sideways_n_m,
            self.moment_n_m,
        ] = cut;
    }
}

/// The forces within the neck.
#[derive(Clone, Debug, PartialEq)]
pub struct NeckLoads {
    /// What pillar and shoulder give.
    pub reactions: Reactions,
    /// Cuts in order: at both ends of each straight piece of the middle line, and before and after each string.
    pub stations: Vec<Station>,
}

/// A straight piece of the middle line.
struct Piece {
    from: AxisPoint,
    to: AxisPoint,
    start_m: f64,
    end_m: f64,
    along: (f64, f64),
}

impl Piece {
    const fn length_m(&self) -> f64 {
        self.end_m - self.start_m
    }

    /// Share of the piece at which a place lies beside it, and how far off.
    fn beside(&self, place: Point) -> (f64, f64) {
        let way = place.since_m(self.from.at);
        let share = (dot(way, self.along) / self.length_m()).clamp(0.0, 1.0);
        let reached = share * self.length_m();
        let (dx, dy) = (way.0 - reached * self.along.0, way.1 - reached * self.along.1);
        (share, dx.hypot(dy))
    }

    fn s_at(&self, share: f64) -> f64 {
        if share >= 1.0 { self.end_m } else { self.start_m + share * self.length_m() }
    }

    fn point_at(&self, s_m: f64) -> AxisPoint {
        if s_m >= self.end_m {
            return self.to;
        }
        let share = (s_m - self.start_m) / self.length_m();
        let (from, way) = (self.from.at, self.to.at.since_m(self.from.at));
        let between = |from: f64, way: f64| 1e3 * (from + share * way);
        let (x, y) = (between(from.x.to_m(), way.0), between(from.y.to_m(), way.1));
        AxisPoint {
            at: Point::from_mm(x, y),
            section: self.from.section.towards(self.to.section, share),
        }
    }
}

impl Neck {
    /// A neck along a line of points from the shoulder to the pillar. Points that repeat the one before are
    /// left out.
    ///
    /// # Errors
    ///
    /// When a point is no number, or the line has no length from end to end.
    pub fn new(
        axis: Vec<AxisPoint>,
        supports: Supports,
        twist: HeldAgainstTwist,
    ) -> Result<Self, FrameError> {
        if !axis.iter().all(|point| point.at.is_finite()) {
            return Err(FrameError::NotANumber { what: crate::words::structure::IN_LINE });
        }
        let mut axis = axis;
        axis.dedup_by(|next, last| next.at == last.at);
        let ends = axis.first().zip(axis.last());
        let reach = ends.map_or(0.0, |(first, last)| {
            let chord = last.at.since_m(first.at);
            chord.0.hypot(chord.1)
        });
        if !(reach > 0.0 && reach.is_finite()) {
            return Err(FrameError::Axis { got: axis.len() });
        }
        Ok(Self { axis, supports, twist })
    }

    fn pieces(&self) -> Vec<Piece> {
        let mut start_m = 0.0;
        let pairs = self.axis.windows(2).map(|pair| {
            let (from, to) = (pair[0], pair[1]);
            let way = to.at.since_m(from.at);
            let length = way.0.hypot(way.1);
            let piece = Piece {
                from,
                to,
                start_m,
                end_m: start_m + length,
                along: (way.0 / length, way.1 / length),
            };
            start_m += length;
            piece
        });
        pairs.collect()
    }

    /// How far along the middle line each pull acts.
    pub fn feet(&self, pulls: &[Pull]) -> Vec<(f64, Pull)> {
        let pieces = self.pieces();
        pulls.iter().map(|pull| (foot_m(&pieces, pull.at), *pull)).collect()
    }

    /// The forces within the neck under the pulls of the strings.
    ///
    /// Each pull acts on the middle line where that is nearest, with its moment about it; the pillar on its last
    /// point, the shoulder on its first. At a cut, axial force, shear and bending are the sums of what lies beyond.
    ///
    /// A pull at an offset `e` adds the moment `e (−F_y, F_x)`; its part along the neck is torque, its part across
    /// it bends the neck sideways. Held at the shoulder alone, both are sums again. Held at both ends, the pillar
    /// adds a moment along the line from end to end, so great that the twist `∫ T/(c₂ h b³ G) ds` along that line
    /// comes to nothing; what the sideways bending of a curved neck adds to the twist is left out.
    ///
    /// # Errors
    ///
    /// As [`reactions`](super::reactions).
    ///
    /// # Source
    ///
    /// Statics, and Saint-Venant's torsion; worked out.
    pub fn loads(&self, pulls: &[Pull]) -> Result<NeckLoads, FrameError> {
        let reactions = reactions(self.supports, pulls)?;
        let pieces = self.pieces();
        let total_m = pieces.last().map_or(0.0, |piece| piece.end_m);
        let mut hung: Vec<(f64, Pull)> =
            pulls.iter().map(|pull| (foot_m(&pieces, pull.at), *pull)).collect();
        hung.push((total_m, reactions.pillar_pull));
        sort(&mut hung, |one, other| one.0 > other.0);
        let mut stations = Vec::new();
        for piece in &pieces {
            stations.push(station(piece, piece.start_m, &hung, false));
            let within = |s_m: f64| piece.start_m < s_m && s_m < piece.end_m;
            let mut last = f64::NAN;
            for (s_m, _) in hung.iter().filter(|(s_m, _)| within(*s_m)) {
                if *s_m != last {
                    stations.push(station(piece, *s_m, &hung, true));
                    stations.push(station(piece, *s_m, &hung, false));
                }
                last = *s_m;
            }
            stations.push(station(piece, piece.end_m, &hung, true));
        }
        if self.twist == HeldAgainstTwist::BothEnds {
            self.hold_the_end(&pieces, &mut stations);
        }
        Ok(NeckLoads { reactions, stations })
    }

    /// Adds the moment with which the pillar keeps its end from turning about the line from end to end.
    fn hold_the_end(&self, pieces: &[Piece], stations: &mut [Station]) {
        let (Some(first), Some(last)) = (self.axis.first(), self.axis.last()) else { return };
        let way = last.at.since_m(first.at);
        let length = way.0.hypot(way.1);
        let chord = (way.0 / length, way.1 / length);
        let along_at = |s_m: f64| {
            let piece = pieces.iter().find(|piece| s_m < piece.end_m).or(pieces.last());
            piece.map_or(chord, |piece| piece.along)
        };
        let (mut turned, mut per_moment) = (0.0, 0.0);
        for pair in stations.windows(2) {
            let share = dot(chord, along_at(0.5 * (pair[0].s_m + pair[1].s_m)));
            let softness = softness_per_m3(&pair[0], &pair[1]);
            turned += softness * share * pair[0].torque_n_m;
            per_moment += softness * share * share;
        }
        let held = -turned / per_moment;
        if !held.is_finite() {
            return;
        }
        let mut at = 0;
        for piece in pieces {
            while let Some(station) = stations.get_mut(at) {
                station.torque_n_m += held * dot(chord, piece.along);
                station.sideways_n_m += held * cross(piece.along, chord);
                at += 1;
                // The last cut of a piece is at its end.
                if station.s_m >= piece.end_m {
                    break;
                }
            }
        }
    }
}

/// Where along the middle line a place lies beside it; of equals the one nearer to the shoulder.
fn foot_m(pieces: &[Piece], place: Point) -> f64 {
    let (mut best, mut s_m) = (f64::INFINITY, 0.0);
    for piece in pieces {
        let (share, off) = piece.beside(place);
        if off < best {
            (best, s_m) = (off, piece.s_at(share));
        }
    }
    s_m
}

/// The cut at `s_m`; what hangs just there lies beyond if the cut is made before it.
fn station(piece: &Piece, s_m: f64, hung: &[(f64, Pull)], before: bool) -> Station {
    let AxisPoint { at, section } = piece.point_at(s_m);
    let (mut force, mut moment, mut aside) = ((0.0, 0.0), 0.0, (0.0, 0.0));
    let beyond =
        hung.partition_point(|(hangs, _)| if before { *hangs < s_m } else { *hangs <= s_m });
    for (_, pull) in hung.iter().skip(beyond) {
        let (x, y) = pull.n();
        force = (force.0 + x, force.1 + y);
        moment += cross(pull.at.since_m(at), (x, y));
        let offset = pull.offset.to_m();
        aside = (aside.0 - offset * y, aside.1 + offset * x);
    }
    Station {
        at,
        s_m,
        section,
        axial_n: dot(force, piece.along),
        shear_n: cross(piece.along, force),
        aside_n: 0.0,
        moment_n_m: moment,
        torque_n_m: dot(aside, piece.along),
        sideways_n_m: cross(piece.along, aside),
    }
}

/// `∫ ds/(c₂ h b³)` between two cuts of one piece, by Simpson's rule.
fn softness_per_m3(from: &Station, to: &Station) -> f64 {
    let softness = |section: Rectangle| 1.0 / section.torsion_m4();
    let middle = softness(from.section.towards(to.section, 0.5));
    (to.s_m - from.s_m) / 6.0 * (softness(from.section) + 4.0 * middle + softness(to.section))
}

/// The greatest turn of the neck about its middle line against the shoulder, in radians: `∫ T/(c₂ h b³ G) ds` from the
/// shoulder. `None` where the modulus is not above 0.
///
/// On a curved neck it adds up turns about directions that differ, which is good for small bends.
pub fn greatest_twist_rad(stations: &[Station], shear_modulus: Stress) -> Option<f64> {
    let modulus = shear_modulus.to_pa();
    if !(modulus > 0.0 && modulus.is_finite()) {
        return None;
    }
    let (mut turned, mut greatest) = (0.0_f64, 0.0_f64);
    for pair in stations.windows(2) {
        turned += pair[0].torque_n_m * softness_per_m3(&pair[0], &pair[1]) / modulus;
        if turned.abs() > greatest.abs() {
            greatest = turned;
        }
    }
    Some(greatest)
}

impl NeckLoads {
    /// [`greatest_twist_rad`] of its cuts.
    pub fn greatest_twist_rad(&self, shear_modulus: Stress) -> Option<f64> {
        greatest_twist_rad(&self.stations, shear_modulus)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::engine::units::{Force, Length};
    use crate::testing::assert_close;

    fn section(breadth_mm: f64, depth_mm: f64) -> Rectangle {
        Rectangle::new(Length::from_mm(breadth_mm), Length::from_mm(depth_mm)).unwrap()
    }

    fn axis(points: &[(f64, f64)]) -> Vec<AxisPoint> {
        let point = |(x, y)| AxisPoint { at: Point::from_mm(x, y), section: section(40.0, 75.0) };
        points.iter().copied().map(point).collect()
    }

    fn curved(twist: HeldAgainstTwist) -> Neck {
        let supports = Supports {
            shoulder: Point::from_mm(0.0, 0.0),
            pillar_top: Point::from_mm(700.0, 250.0),
            pillar_foot: Point::from_mm(760.0, -1100.0),
        };
        let line = [(0.0, 0.0), (200.0, -30.0), (420.0, 40.0), (700.0, 250.0)];
        Neck::new(axis(&line), supports, twist).unwrap()
    }

    fn level(twist: HeldAgainstTwist, line: Vec<AxisPoint>) -> Neck {
        let supports = Supports {
            shoulder: Point::from_mm(0.0, 0.0),
            pillar_top: Point::from_mm(1000.0, 0.0),
            pillar_foot: Point::from_mm(1000.0, -1500.0),
        };
        Neck::new(line, supports, twist).unwrap()
    }

    fn pull(x_mm: f64, y_mm: f64, x_n: f64, y_n: f64) -> Pull {
        Pull {
            at: Point::from_mm(x_mm, y_mm),
            x: Force::from_n(x_n),
            y: Force::from_n(y_n),
            offset: Length::from_mm(32.0),
        }
    }

    fn strings() -> Vec<Pull> {
        let at = |i: u32| {
            let x = 40.0 + 18.0 * f64::from(i);
            pull(x, 0.2 * x - 20.0, -30.0, -60.0 - 2.0 * f64::from(i))
        };
        (0..32).map(at).collect()
    }

    /// At the shoulder the forces beyond are those that the shoulder gives, turned over.
    #[test]
    fn the_first_cut_gives_what_the_shoulder_takes() {
        let neck = curved(HeldAgainstTwist::Shoulder);
        let loads = neck.loads(&strings()).unwrap();
        let first = loads.stations[0];
        let shoulder = loads.reactions.shoulder_pull;
        let size = shoulder.x.to_n().hypot(shoulder.y.to_n());
        assert_close(first.axial_n.hypot(first.shear_n), size, 1e-12, "force");
        assert!(first.moment_n_m.abs() < 1e-12 * size, "{}", first.moment_n_m);
        let last = loads.stations.last().unwrap();
        assert!(last.moment_n_m.abs() < 1e-12 * size, "{}", last.moment_n_m);
        assert_eq!(last.torque_n_m, 0.0);
    }

    /// Between two cuts without a string between them, the moment falls by the shear times the way.
    #[test]
    fn shear_is_the_slope_of_the_moment() {
        let loads = curved(HeldAgainstTwist::BothEnds).loads(&strings()).unwrap();
        for pair in loads.stations.windows(2).filter(|pair| pair[1].s_m > pair[0].s_m) {
            let slope = (pair[1].moment_n_m - pair[0].moment_n_m)
                + pair[0].shear_n * (pair[1].s_m - pair[0].s_m);
            assert!(slope.abs() < 1e-10, "{slope} at {}", pair[0].s_m);
            for (one, other) in
                [(pair[0].axial_n, pair[1].axial_n), (pair[0].torque_n_m, pair[1].torque_n_m)]
            {
                assert!((one - other).abs() < 1e-9, "at {}", pair[0].s_m);
            }
        }
    }

    #[test]
    fn the_middle_of_a_level_neck_bears_a_quarter_of_load_times_span() {
        let neck = level(HeldAgainstTwist::BothEnds, axis(&[(0.0, 0.0), (1000.0, 0.0)]));
        let loads = neck.loads(&[pull(500.0, 20.0, 0.0, -100.0)]).unwrap();
        let greatest = loads.stations.iter().map(|cut| cut.moment_n_m).fold(0.0, f64::max);
        assert_close(greatest, 25.0, 1e-12, "moment");
        let torques: Vec<f64> = loads.stations.iter().map(|cut| cut.torque_n_m).collect();
        for (torque, expected) in torques.iter().zip([1.6, 1.6, -1.6, -1.6]) {
            assert_close(*torque, expected, 1e-12, "torque");
        }
        let twist = loads.greatest_twist_rad(Stress::from_mpa(1000.0)).unwrap();
        let alone = section(40.0, 75.0).twist_rad(
            crate::engine::units::Moment::from_n_m(1.6),
            Length::from_mm(500.0),
            Stress::from_mpa(1000.0),
        );
        assert_close(twist, alone, 1e-12, "twist");
    }

    #[test]
    fn a_neck_held_at_both_ends_does_not_turn_there() {
        let mut line = axis(&[(0.0, 0.0), (1000.0, 0.0)]);
        line[1].section = section(60.0, 90.0);
        let loads = level(HeldAgainstTwist::BothEnds, line).loads(&strings()).unwrap();
        let turned: f64 = (loads.stations.windows(2))
            .map(|pair| pair[0].torque_n_m * softness_per_m3(&pair[0], &pair[1]))
            .sum();
        let whole = loads.greatest_twist_rad(Stress::from_pa(1.0)).unwrap();
        assert!(turned.abs() < 1e-12 * whole.abs(), "{turned} of {whole}");
        assert_eq!(loads.greatest_twist_rad(Stress::from_pa(0.0)), None);
    }

    #[test]
    fn strings_in_the_middle_plane_do_not_twist() {
        let flat: Vec<Pull> = strings()
            .into_iter()
            .map(|pull| Pull { offset: Length::from_m(0.0), ..pull })
            .collect();
        for twist in [HeldAgainstTwist::Shoulder, HeldAgainstTwist::BothEnds] {
            let loads = curved(twist).loads(&flat).unwrap();
            assert!(
                loads.stations.iter().all(|cut| cut.torque_n_m == 0.0 && cut.sideways_n_m == 0.0)
            );
        }
    }

    #[test]
    fn necks_without_length_are_refused_in_words() {
        let supports = curved(HeldAgainstTwist::Shoulder).supports;
        let neck =
            |points: &[(f64, f64)]| Neck::new(axis(points), supports, HeldAgainstTwist::Shoulder);
        assert_eq!(neck(&[]), Err(FrameError::Axis { got: 0 }));
        assert_eq!(neck(&[(1.0, 1.0), (1.0, 1.0)]), Err(FrameError::Axis { got: 1 }));
        assert!(neck(&[(0.0, 0.0), (9.0, 0.0), (0.0, 0.0)]).is_err());
        assert!(neck(&[(0.0, 0.0), (f64::INFINITY, 0.0)]).is_err());
        let error = curved(HeldAgainstTwist::Shoulder).loads(&[]).unwrap_err();
        assert_eq!(error, FrameError::NoPulls);
    }
}
