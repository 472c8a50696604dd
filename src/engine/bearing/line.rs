//! The middle line of a neck: sections along it, how it bends, and where the holes of the pins lie beside it.

use super::{BearingError, Drilled, NeckParts};
use crate::engine::geometry::Band;
use crate::engine::order;
use crate::engine::structure::frame::{AxisPoint, Point};
use crate::engine::structure::holes::Hole;
use crate::engine::structure::section::Rectangle;
use crate::engine::units::Length;

/// The middle line with its drawn depth.
pub(super) struct MiddleLine {
    /// How far along, where, and how deep in metres.
    places: Vec<(f64, (f64, f64), f64)>,
}

impl MiddleLine {
    pub(super) fn new(stations: impl Iterator<Item = (Point, Length)>) -> Self {
        let mut places: Vec<(f64, (f64, f64), f64)> = Vec::new();
        for (at, depth) in stations {
            let at = (at.x.to_m(), at.y.to_m());
            let s_m = match places.last() {
                Some((s_m, before, _)) => s_m + (at.0 - before.0).hypot(at.1 - before.1),
                None => 0.0,
            };
            // Places that repeat the one before are left out, as the neck does.
            if places.last().is_none_or(|(last, _, _)| s_m > *last) {
                places.push((s_m, at, depth.to_m()));
            }
        }
        Self { places }
    }

    fn end_m(&self) -> f64 {
        self.places.last().map_or(0.0, |(s_m, _, _)| *s_m)
    }

    /// The place and the drawn depth so far along.
    fn at(&self, s_m: f64) -> ((f64, f64), f64) {
        let next = self.places.partition_point(|(at, _, _)| *at <= s_m);
        let last = self.places.len().saturating_sub(1);
        let (Some(from), Some(to)) =
            (self.places.get(next.saturating_sub(1)), self.places.get(next.min(last)))
        else {
            return ((0.0, 0.0), 0.0);
        };
        let share =
            if to.0 > from.0 { ((s_m - from.0) / (to.0 - from.0)).clamp(0.0, 1.0) } else { 0.0 };
        let between = |from: f64, to: f64| from + share * (to - from);
        ((between(from.1.0, to.1.0), between(from.1.1, to.1.1)), between(from.2, to.2))
    }

    /// The points of the neck with how far along they are: those of the drawing, and those of the sections.
    pub(super) fn axis(&self, parts: &NeckParts) -> Result<Vec<(f64, AxisPoint)>, BearingError> {
        let mut sections = parts.sections.clone();
        order::sort(&mut sections, |one, next| one.0 > next.0);
        let end_m = self.end_m();
        let mut along: Vec<f64> = self.places.iter().map(|(s_m, _, _)| *s_m).collect();
        along.extend(sections.iter().map(|(share, _, _)| (share * end_m).clamp(0.0, end_m)));
        order::sort(&mut along, |one, next| one > next);
        along.dedup_by(|next, last| *next - *last <= 1e-9);
        let point = |s_m: f64| {
            let (at, drawn_m) = self.at(s_m);
            let (thickness, depth) = if sections.is_empty() {
                (parts.thickness, Length::from_m(drawn_m))
            } else {
                measured(&sections, s_m / end_m)
            };
            let at = Point { x: Length::from_m(at.0), y: Length::from_m(at.1) };
            Ok((s_m, AxisPoint { at, section: Rectangle::new(thickness, depth)? }))
        };
        along.into_iter().map(point).collect()
    }

    /// Where a place lies beside the line, and how far to its left.
    fn beside(&self, place: Point) -> (f64, f64) {
        let place = (place.x.to_m(), place.y.to_m());
        let (mut best, mut found) = (f64::INFINITY, (0.0, 0.0));
        for pair in self.places.windows(2) {
            let ((start_m, from, _), (end_m, to, _)) = (pair[0], pair[1]);
            let way = (to.0 - from.0, to.1 - from.1);
            let arm = (place.0 - from.0, place.1 - from.1);
            let length = end_m - start_m;
            let share = ((way.0 * arm.0 + way.1 * arm.1) / (length * length)).clamp(0.0, 1.0);
            let off = (arm.0 - share * way.0).hypot(arm.1 - share * way.1);
            if off < best {
                let left = way.0 * arm.1 - way.1 * arm.0;
                (best, found) = (off, (start_m + share * length, off.copysign(left)));
            }
        }
        found
    }

    /// The holes of the pins along the line, row by row.
    pub(super) fn holes(
        &self,
        band: &Band,
        axis: &[(f64, AxisPoint)],
        drilled: &Drilled,
    ) -> Vec<Hole> {
        let placed = || band.strings.iter().flatten();
        let tuning = placed().map(|string| string.tuning).collect();
        let bridge = placed().map(|string| string.bridge).collect();
        let contact = |nth: usize| {
            let contacts = placed().filter_map(|string| string.contacts.get(nth));
            contacts.map(|(_, at)| *at).collect::<Vec<Point>>()
        };
        let mechanism = drilled.mechanism.map(|diameter| (diameter, None));
        let rows: [(Vec<Point>, _); 4] = [
            (tuning, drilled.tuning),
            (bridge, drilled.bridge),
            (contact(0), mechanism),
            (contact(1), mechanism),
        ];
        let breadth_m = |s_m: f64| {
            let next = axis.partition_point(|(at, _)| *at <= s_m).min(axis.len() - 1);
            axis[next].1.section.breadth().to_m()
        };
        let mut all = Vec::new();
        for (places, drill) in rows {
            let Some((diameter, depth)) = drill else { continue };
            let gap = |one: usize| {
                let (one, next) = places.get(one).zip(places.get(one + 1))?;
                let way = (next.x.to_m() - one.x.to_m(), next.y.to_m() - one.y.to_m());
                Some(Length::from_m(way.0.hypot(way.1)))
            };
            for (at, place) in places.iter().enumerate() {
                let (s_m, off) = self.beside(*place);
                let gaps = [at.checked_sub(1).and_then(gap), gap(at)];
                all.push(Hole {
                    along: Length::from_m(s_m),
                    off: Length::from_m(off),
                    diameter,
                    deep_ratio: depth.map_or(1.0, |depth| depth.to_m() / breadth_m(s_m)),
                    pitch: gaps
                        .into_iter()
                        .flatten()
                        .reduce(|one, next| if next < one { next } else { one }),
                });
            }
        }
        all
    }

    /// How far it turns at most from the straight way between its ends, up to a right angle.
    pub(super) fn turns_rad(&self) -> f64 {
        let way = |from: (f64, f64), to: (f64, f64)| (to.0 - from.0, to.1 - from.1);
        let ends = self.places.first().zip(self.places.last());
        let whole = ends.map_or((0.0, 0.0), |(first, last)| way(first.1, last.1));
        let pairs = self.places.windows(2).map(|pair| way(pair[0].1, pair[1].1));
        let turns = pairs.map(|(x, y)| {
            let (along, across) = (x * whole.0 + y * whole.1, x * whole.1 - y * whole.0);
            across.abs().atan2(along.abs())
        });
        turns.fold(0.0, f64::max)
    }

    /// How much the line bends about a place, in 1/m: of the circle through it and two places half of the depth to
    /// either side, as a bend that is short beside the depth is none for the wood.
    pub(super) fn curvature(&self, s_m: f64, reach_m: f64) -> f64 {
        let reach_m = reach_m.min(0.5 * self.end_m());
        let middle = s_m.clamp(reach_m, self.end_m() - reach_m);
        let [a, b, c] = [middle - reach_m, middle, middle + reach_m].map(|s_m| self.at(s_m).0);
        let (one, two, whole) =
            ((b.0 - a.0, b.1 - a.1), (c.0 - b.0, c.1 - b.1), (c.0 - a.0, c.1 - a.1));
        let sides = one.0.hypot(one.1) * two.0.hypot(two.1) * whole.0.hypot(whole.1);
        let bend = 2.0 * (one.0 * two.1 - one.1 * two.0) / sides;
        if bend.is_finite() { bend } else { 0.0 }
    }
}

/// Thickness and depth at a share of the way, with even steps between sections that rise.
fn measured(sections: &[(f64, Length, Length)], share: f64) -> (Length, Length) {
    let next = sections.partition_point(|section| section.0 <= share);
    let last = sections.len() - 1;
    let (from, to) = (sections[next.saturating_sub(1)], sections[next.min(last)]);
    let part =
        if to.0 > from.0 { ((share - from.0) / (to.0 - from.0)).clamp(0.0, 1.0) } else { 0.0 };
    let between =
        |from: Length, to: Length| Length::from_m(from.to_m() + part * (to.to_m() - from.to_m()));
    (between(from.1, to.1), between(from.2, to.2))
}
