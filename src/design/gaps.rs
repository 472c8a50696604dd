//! The spacing of the strings: how it follows strings that come and go, and how it is told in another way without
//! the harp changing.
//!
//! Gaps count from the bass: gap 1 lies between the lowest string and the next one. Strings are counted from the
//! bass here too.

use std::ops::Range;

use super::document::{GapsSpec, GeometrySpec, MeasuredSpec, SpacingSpec};
use crate::engine::geometry::{BOARD_ANGLE_DEG, Gaps};
use crate::engine::order::sort;
use crate::engine::units::Length;

/// The kinds of spacing.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum GapsKind {
    /// All alike.
    Uniform,
    /// Some given, even steps between them.
    Zones,
    /// Each by itself.
    Each,
}

impl GapsKind {
    /// The kind of a spacing.
    pub const fn of(spec: &GapsSpec) -> Self {
        match spec {
            GapsSpec::UniformMm(_) => Self::Uniform,
            GapsSpec::ZonesMm(_) => Self::Zones,
            GapsSpec::EachMm(_) => Self::Each,
        }
    }
}

/// How wide the gaps of a harp are as they are measured, in mm: one fewer than its strings.
pub fn widths_mm(spec: &GapsSpec, strings: usize) -> Vec<f64> {
    let gaps = gaps(spec);
    (1..strings).map(|number| gaps.gap(number).to_mm()).collect()
}

/// The spacing told in another kind. From zones to each gap the steps are kept, from each to zones every gap where
/// the steps change becomes a zone, and to uniform spacing all get their mean, so that the band stays as wide.
#[must_use]
pub fn told_as(spec: &GapsSpec, kind: GapsKind, strings: usize) -> GapsSpec {
    if GapsKind::of(spec) == kind {
        return spec.clone();
    }
    let mut widths = widths_mm(spec, strings);
    if widths.is_empty() {
        widths.push(gaps(spec).gap(1).to_mm());
    }
    match kind {
        GapsKind::Uniform => {
            let count: f64 = widths.iter().map(|_| 1.0).sum();
            GapsSpec::UniformMm(thousandths(widths.iter().sum::<f64>() / count))
        }
        GapsKind::Zones => GapsSpec::ZonesMm(zones(&widths)),
        GapsKind::Each => GapsSpec::EachMm(in_hundredths(&widths)),
    }
}

/// How far the farthest string would move between two spacings that are measured alike, in mm as measured.
pub fn moved_mm(before: &GapsSpec, after: &GapsSpec, strings: usize) -> f64 {
    let pairs = widths_mm(before, strings).into_iter().zip(widths_mm(after, strings));
    let (mut off, mut most) = (0.0_f64, 0.0_f64);
    for (before, after) in pairs {
        off += after - before;
        most = most.max(off.abs());
    }
    most
}

/// The spacing measured in another way, with other numbers, so that the strings stay where they are.
///
/// A distance along the board is the one square to the strings over `sin θ`.
#[must_use]
pub fn measured_as(
    spacing: &SpacingSpec,
    measured: MeasuredSpec,
    board_angle_deg: f64,
) -> SpacingSpec {
    let sine = board_angle_deg.to_radians().sin();
    let factor = match (spacing.measured, measured) {
        (MeasuredSpec::Square, MeasuredSpec::AlongBoard) => 1.0 / sine,
        (MeasuredSpec::AlongBoard, MeasuredSpec::Square) => sine,
        _ => return spacing.clone(),
    };
    let turned = |width: &f64| width * factor;
    let gaps = match &spacing.gaps {
        GapsSpec::UniformMm(width) => GapsSpec::UniformMm(thousandths(turned(width))),
        GapsSpec::ZonesMm(zones) => GapsSpec::ZonesMm(
            zones.iter().map(|(at, width)| (*at, thousandths(turned(width)))).collect(),
        ),
        GapsSpec::EachMm(widths) => {
            GapsSpec::EachMm(in_hundredths(&widths.iter().map(turned).collect::<Vec<f64>>()))
        }
    };
    SpacingSpec { measured, gaps }
}

/// Makes room for new strings above the lowest `below` ones of `count`. Each new string brings a gap as wide as the
/// one below it; the lowest ones as wide as the one above them. Zones keep their strings. What is drawn above the
/// place moves along with its strings.
pub(super) fn put_in(spec: &mut GeometrySpec, count: usize, below: usize, new: usize) {
    let last = count.saturating_sub(1);
    // A single string has no gaps yet.
    if last == 0 || new == 0 {
        return;
    }
    let at = below;
    let like = gaps(&spec.spacing.gaps).gap(below.clamp(1, last));
    let before = widths_mm(&spec.spacing.gaps, count);
    match &mut spec.spacing.gaps {
        GapsSpec::UniformMm(_) => {}
        GapsSpec::ZonesMm(zones) if below < count => {
            for (number, _) in zones.iter_mut().filter(|zone| to_usize(zone.0) > at) {
                *number = number.saturating_add(to_u32(new));
            }
        }
        GapsSpec::ZonesMm(_) => {}
        // Further widths at the top already stand for strings to come.
        GapsSpec::EachMm(widths) => {
            fill(widths, last);
            if below < count && !widths.is_empty() {
                let at = at.min(widths.len());
                widths.splice(at..at, std::iter::repeat_n(like.to_mm(), new));
            }
        }
    }
    let after = widths_mm(&spec.spacing.gaps, count + new);
    let kept = |place| Some(if place < below { place } else { place + new });
    carry_nodes(spec, &before, &after, kept);
}

/// Closes the gaps of strings that go, given by their places from the bass, from 0. Each takes the gap above it along,
/// the highest string the one below it. A zone whose gap goes stays for the gap that takes its place; at the ends of
/// the band the widths that are left stay as they were.
pub(super) fn take_out(spec: &mut GeometrySpec, count: usize, strings: &Range<usize>) {
    let end = strings.end.min(count);
    let last = count.saturating_sub(1);
    if strings.start >= end || last == 0 {
        return;
    }
    // The numbers of the gaps that go.
    let gone = if end == count { strings.start.max(1)..count } else { strings.start + 1..end + 1 };
    if gone.is_empty() {
        return;
    }
    let before = gaps(&spec.spacing.gaps);
    let widths_before = widths_mm(&spec.spacing.gaps, count);
    let few = gone.len();
    match &mut spec.spacing.gaps {
        GapsSpec::UniformMm(_) => {}
        GapsSpec::EachMm(widths) => {
            fill(widths, last);
            let first = widths.first().copied();
            widths.drain(gone.start - 1..(gone.end - 1).min(widths.len()));
            if widths.is_empty() {
                widths.extend(first);
            }
        }
        GapsSpec::ZonesMm(zones) => {
            let hit = zones.iter().find(|zone| gone.contains(&to_usize(zone.0))).copied();
            let only = zones.first().copied();
            zones.retain(|zone| !gone.contains(&to_usize(zone.0)));
            // Zones beyond the top stand for strings to come.
            let shifts = |number: u32| end < count && to_usize(number) >= gone.end;
            for (number, _) in zones.iter_mut().filter(|zone| shifts(zone.0)) {
                *number = number.saturating_sub(to_u32(few));
            }
            let left = last - few;
            let stand_in = match hit {
                None => None,
                Some(_) if left == 0 => None,
                Some(_) if gone.start > left => Some((left, before.gap(left).to_mm())),
                Some(_) if gone.start == 1 => Some((1, before.gap(gone.end).to_mm())),
                Some((_, width)) => Some((gone.start, width)),
            };
            if let Some((at, width)) = stand_in
                && !zones.iter().any(|zone| to_usize(zone.0) == at)
            {
                zones.push((to_u32(at), width));
                sort(zones, |one, other| one.0 > other.0);
            }
            if zones.is_empty() {
                zones.extend(only.map(|(_, width)| (1, width)));
            }
        }
    }
    let gone = strings.start..end;
    let after = widths_mm(&spec.spacing.gaps, count - gone.len());
    let kept = |place: usize| match place {
        place if place < gone.start => Some(place),
        place if place >= gone.end => Some(place - gone.len()),
        _ => None,
    };
    carry_nodes(spec, &widths_before, &after, kept);
}

/// Moves the nodes of the drawn curve along, each with the string that it stands nearest to. `kept` gives the new
/// place of a string. A node over a string that goes is left out, where two others stay and the string was not at
/// the bass end.
fn carry_nodes(
    spec: &mut GeometrySpec,
    before: &[f64],
    after: &[f64],
    kept: impl Fn(usize) -> Option<usize>,
) {
    let angle = spec.board_angle_deg;
    if !(BOARD_ANGLE_DEG.0..=BOARD_ANGLE_DEG.1).contains(&angle) {
        return;
    }
    let (sine, cosine) = angle.to_radians().sin_cos();
    let square = match spec.spacing.measured {
        MeasuredSpec::Square => 1.0,
        MeasuredSpec::AlongBoard => sine,
    };
    let (from, to) = (places(before, square), places(after, square));
    let first = (0..from.len()).find(|place| kept(*place).is_some()).unwrap_or(0);
    let carried = |(across, along): &(f64, f64)| {
        let off = |place: usize| (from[place] - across).abs();
        let nearest =
            (1..from.len()).fold(0, |best, next| if off(next) < off(best) { next } else { best });
        let own = nearest.max(first);
        let shift = to.get(kept(own)?)? - from[own];
        Some((thousandths(across + shift), thousandths(along + shift * cosine / sine)))
    };
    let nodes: Vec<(f64, f64)> = spec.nodes_mm.iter().filter_map(carried).collect();
    if nodes.len() >= 2 {
        spec.nodes_mm = nodes;
    }
}

/// How far the strings are from the lowest one, for gaps that are taken times a factor.
fn places(widths: &[f64], factor: f64) -> Vec<f64> {
    let mut at = 0.0;
    let beyond = widths.iter().map(|width| {
        at += width * factor;
        at
    });
    std::iter::once(0.0).chain(beyond).collect()
}

/// Every gap where the steps change, so that even steps between them give all widths again.
fn zones(widths: &[f64]) -> Vec<(u32, f64)> {
    let Some((first, last)) = widths.first().zip(widths.last()) else { return Vec::new() };
    let mut zones = vec![(1, thousandths(*first))];
    let mut start = 0;
    for end in 1..widths.len() {
        let Some(next) = widths.get(end + 1) else { break };
        // A line from the last zone to the next gap that misses one between them must bend before it.
        let steps = to_f64(end + 1 - start);
        let on_line = |place: usize| {
            let share = to_f64(place - start) / steps;
            widths[start] + share * (next - widths[start])
        };
        if (start + 1..=end).any(|place| (on_line(place) - widths[place]).abs() > ROUNDED_MM) {
            zones.push((to_u32(end + 1), thousandths(widths[end])));
            start = end;
        }
    }
    if widths.len() > 1 {
        zones.push((to_u32(widths.len()), thousandths(*last)));
    }
    zones
}

/// How far a width typed in hundredths may lie beside even steps.
const ROUNDED_MM: f64 = 0.015;

/// Widths in hundredths of a millimetre, rounded so that the strings, and not the gaps, stay within half of one.
fn in_hundredths(widths: &[f64]) -> Vec<f64> {
    let round = |mm: f64| (mm * 100.0).round();
    let mut at = 0.0;
    let ends = widths.iter().map(|width| {
        let from = round(at);
        at += width;
        (round(at) - from) / 100.0
    });
    ends.collect()
}

fn thousandths(mm: f64) -> f64 {
    (mm * 1_000.0).round() / 1_000.0
}

/// Lengthens a list of widths with its last one, which goes on.
fn fill(widths: &mut Vec<f64>, count: usize) {
    if let Some(last) = widths.last().copied()
        && widths.len() < count
    {
        widths.resize(count, last);
    }
}

/// The gaps as the engine takes them, whatever their widths.
fn gaps(spec: &GapsSpec) -> Gaps {
    let mm = Length::from_mm;
    match spec {
        GapsSpec::UniformMm(width) => Gaps::Uniform(mm(*width)),
        GapsSpec::EachMm(widths) => Gaps::Each(widths.iter().copied().map(mm).collect()),
        GapsSpec::ZonesMm(zones) => {
            let mut zones: Vec<(usize, Length)> =
                zones.iter().map(|(at, width)| (to_usize(*at), mm(*width))).collect();
            sort(&mut zones, |one, other| one.0 > other.0);
            zones.dedup_by_key(|(at, _)| *at);
            Gaps::Zones(zones)
        }
    }
}

fn to_usize(number: u32) -> usize {
    usize::try_from(number).unwrap_or(usize::MAX)
}

fn to_u32(number: usize) -> u32 {
    u32::try_from(number).unwrap_or(u32::MAX)
}

fn to_f64(count: usize) -> f64 {
    f64::from(to_u32(count))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::testing::assert_close;

    fn shape(gaps: GapsSpec) -> GeometrySpec {
        let spacing = SpacingSpec { measured: MeasuredSpec::Square, gaps };
        GeometrySpec { spacing, ..GeometrySpec::default() }
    }

    fn each(widths: &[f64]) -> GeometrySpec {
        shape(GapsSpec::EachMm(widths.to_vec()))
    }

    fn put(spec: &GeometrySpec, count: usize, below: usize, new: usize) -> GapsSpec {
        let mut spec = spec.clone();
        put_in(&mut spec, count, below, new);
        spec.spacing.gaps
    }

    fn out(spec: &GeometrySpec, count: usize, strings: Range<usize>) -> GapsSpec {
        let mut spec = spec.clone();
        take_out(&mut spec, count, &strings);
        spec.spacing.gaps
    }

    #[test]
    fn a_new_string_brings_a_gap_like_the_one_below_it() {
        let four = each(&[18.0, 16.0, 14.0]);
        assert_eq!(put(&four, 4, 0, 1), GapsSpec::EachMm(vec![18.0, 18.0, 16.0, 14.0]));
        assert_eq!(put(&four, 4, 2, 2), GapsSpec::EachMm(vec![18.0, 16.0, 16.0, 16.0, 14.0]));
        assert_eq!(
            put(&four, 4, 4, 2),
            GapsSpec::EachMm(vec![18.0, 16.0, 14.0]),
            "the last goes on"
        );
        let more = each(&[18.0, 16.0, 14.0, 13.0]);
        assert_eq!(put(&more, 4, 4, 1), more.spacing.gaps, "a width that waited is taken");
        assert_eq!(put(&each(&[18.0]), 4, 1, 1), GapsSpec::EachMm(vec![18.0; 4]));
        assert_eq!(put(&four, 1, 0, 1), four.spacing.gaps, "one string has no gaps");
    }

    #[test]
    fn a_string_that_goes_takes_its_gap_along() {
        let five = each(&[18.0, 17.0, 16.0, 15.0]);
        assert_eq!(out(&five, 5, 0..1), GapsSpec::EachMm(vec![17.0, 16.0, 15.0]));
        assert_eq!(out(&five, 5, 1..3), GapsSpec::EachMm(vec![18.0, 15.0]));
        assert_eq!(out(&five, 5, 4..5), GapsSpec::EachMm(vec![18.0, 17.0, 16.0]));
        assert_eq!(out(&five, 5, 3..5), GapsSpec::EachMm(vec![18.0, 17.0]));
        assert_eq!(out(&five, 5, 0..5), GapsSpec::EachMm(vec![18.0]), "one is kept");
        let short = each(&[18.0, 16.0]);
        assert_eq!(out(&short, 5, 1..2), GapsSpec::EachMm(vec![18.0, 16.0, 16.0]));
    }

    #[test]
    fn what_is_put_in_and_taken_out_again_leaves_no_trace() {
        let zones = shape(GapsSpec::ZonesMm(vec![(1, 18.0), (6, 15.0), (9, 12.0)]));
        for start in [each(&[18.0, 17.0, 16.0, 15.0, 14.5, 14.0, 13.0, 12.5, 12.0]), zones] {
            for below in 0..=10 {
                let mut spec = start.clone();
                spec.nodes_mm = vec![(0.0, 900.0), (60.0, 700.0), (140.0, 400.0)];
                let before = spec.clone();
                put_in(&mut spec, 10, below, 2);
                take_out(&mut spec, 12, &(below..below + 2));
                let after = widths_mm(&spec.spacing.gaps, 10);
                for (one, other) in widths_mm(&before.spacing.gaps, 10).iter().zip(after) {
                    assert_close(other, *one, 1e-12, "width");
                }
                for (one, other) in before.nodes_mm.iter().zip(&spec.nodes_mm) {
                    assert!((one.0 - other.0).abs() < 3e-3 && (one.1 - other.1).abs() < 3e-3);
                }
            }
        }
    }

    #[test]
    fn zones_keep_their_strings_and_the_ends_their_widths() {
        let zones = shape(GapsSpec::ZonesMm(vec![(1, 18.0), (5, 14.0), (9, 12.0)]));
        assert_eq!(
            put(&zones, 10, 0, 2),
            GapsSpec::ZonesMm(vec![(3, 18.0), (7, 14.0), (11, 12.0)])
        );
        assert_eq!(put(&zones, 10, 10, 2), zones.spacing.gaps);
        assert_eq!(out(&zones, 10, 0..1), GapsSpec::ZonesMm(vec![(1, 17.0), (4, 14.0), (8, 12.0)]));
        assert_eq!(
            out(&zones, 10, 9..10),
            GapsSpec::ZonesMm(vec![(1, 18.0), (5, 14.0), (8, 12.5)])
        );
        assert_eq!(out(&zones, 10, 4..5), GapsSpec::ZonesMm(vec![(1, 18.0), (5, 14.0), (8, 12.0)]));
        assert_eq!(out(&zones, 10, 0..10), GapsSpec::ZonesMm(vec![(1, 18.0)]), "one is kept");
    }

    #[test]
    fn the_drawn_curve_moves_with_the_strings_above() {
        // At 45 degrees the board rises as far as it goes across.
        let mut spec = each(&[20.0, 10.0, 10.0]);
        spec.board_angle_deg = 45.0;
        spec.nodes_mm = vec![(0.0, 500.0), (20.0, 450.0), (40.0, 400.0)];
        let mut bass = spec.clone();
        put_in(&mut bass, 4, 0, 1);
        assert_eq!(bass.nodes_mm, [(20.0, 520.0), (40.0, 470.0), (60.0, 420.0)]);
        let mut middle = spec.clone();
        put_in(&mut middle, 4, 1, 1);
        assert_eq!(middle.nodes_mm, [(0.0, 500.0), (40.0, 470.0), (60.0, 420.0)]);
        let mut fewer = spec;
        take_out(&mut fewer, 4, &(1..2));
        assert_eq!(fewer.nodes_mm, [(0.0, 500.0), (30.0, 390.0)]);
    }

    #[test]
    fn another_kind_of_spacing_leaves_the_strings_where_they_are() {
        let graded = GapsSpec::ZonesMm(vec![(1, 18.0), (20, 14.5), (35, 12.0)]);
        let each = told_as(&graded, GapsKind::Each, 36);
        assert!(moved_mm(&graded, &each, 36) <= 0.005 + 1e-9);
        let back = told_as(&each, GapsKind::Zones, 36);
        assert!(moved_mm(&graded, &back, 36) < 0.2, "{back:?}");
        assert!(matches!(&back, GapsSpec::ZonesMm(zones) if zones.len() <= 6), "{back:?}");
        let mean = told_as(&graded, GapsKind::Uniform, 36);
        let width = |spec: &GapsSpec| widths_mm(spec, 36).iter().sum::<f64>();
        assert_close(width(&mean), width(&graded), 5e-5, "the band stays as wide");
        let even = GapsSpec::UniformMm(14.5);
        assert_eq!(
            told_as(&even, GapsKind::Zones, 36),
            GapsSpec::ZonesMm(vec![(1, 14.5), (35, 14.5)])
        );
        assert_eq!(told_as(&even, GapsKind::Each, 3), GapsSpec::EachMm(vec![14.5, 14.5]));
        assert_eq!(told_as(&even, GapsKind::Each, 0), GapsSpec::EachMm(vec![14.5]));
    }

    #[test]
    fn a_gap_along_the_board_is_the_square_one_over_the_sine() {
        // sin 30 degrees is a half.
        let square =
            SpacingSpec { measured: MeasuredSpec::Square, gaps: GapsSpec::UniformMm(14.5) };
        let along = measured_as(&square, MeasuredSpec::AlongBoard, 30.0);
        assert_eq!(along.measured, MeasuredSpec::AlongBoard);
        assert_eq!(along.gaps, GapsSpec::UniformMm(29.0));
        assert_eq!(measured_as(&along, MeasuredSpec::Square, 30.0), square);
        assert_eq!(measured_as(&along, MeasuredSpec::AlongBoard, 30.0), along);
        let zones = SpacingSpec { gaps: GapsSpec::ZonesMm(vec![(3, 10.0)]), ..square };
        let turned = measured_as(&zones, MeasuredSpec::AlongBoard, 30.0);
        assert_eq!(turned.gaps, GapsSpec::ZonesMm(vec![(3, 20.0)]));
    }
}
