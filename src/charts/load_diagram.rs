//! The forces in the neck as diagrams over the drawing: an area that stands off the neck's middle line, its greatest
//! value as a word, and the forces that hold the frame as arrows.

use super::lofting::along;
use super::overlay::{Label, Overlay, PlaceMm, Side};
use crate::design::bearing_words::{moment_with_unit, percents};
use crate::design::display;
use crate::design::document::Units;
use crate::design::letters::capital;
use crate::engine::bearing::{Bearing, Case, Cut, FrameBearing};
use crate::engine::geometry::Band;
use crate::engine::structure::frame::{Point, Pull};
use crate::engine::units::{Force, Length, Moment};
use crate::words::{Words, charts as say};

/// The greatest ordinate over the height of the harp.
const TALLEST: f64 = 0.12;
/// The longest arrow over the height of the harp.
const LONGEST: f64 = 0.20;
/// A head of an arrow over the height of the harp.
const HEAD: f64 = 0.015;

/// What is shown.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum LoadKind {
    /// What holds the frame: pillar, shoulder, and all pulls as one.
    Forces,
    /// Bending in the plane of the strings.
    Moment,
    /// Force across the neck.
    Shear,
    /// Force along the neck.
    Axial,
    /// Twist about the middle line.
    Twist,
    /// How far each cut is loaded.
    Use,
}

impl LoadKind {
    /// All of them, in the order of a list.
    pub const ALL: [Self; 6] =
        [Self::Forces, Self::Moment, Self::Shear, Self::Axial, Self::Twist, Self::Use];

    /// As a list shows it.
    pub const fn title(self) -> Words {
        match self {
            Self::Forces => say::LOADS_FORCES,
            Self::Moment => say::LOADS_MOMENT,
            Self::Shear => say::LOADS_SHEAR,
            Self::Axial => say::LOADS_AXIAL,
            Self::Twist => say::LOADS_TWIST,
            Self::Use => say::LOADS_USE,
        }
    }

    /// Says what the picture shows and on which side.
    const fn caption(self) -> Words {
        match self {
            Self::Forces => say::ABOUT_FORCES,
            Self::Moment => say::ABOUT_MOMENT,
            Self::Shear => say::ABOUT_SHEAR,
            Self::Axial => say::ABOUT_AXIAL,
            Self::Twist => say::ABOUT_TWIST,
            Self::Use => say::ABOUT_USE,
        }
    }

    /// The value of a cut; above 0 it is drawn above the middle line, away from the strings.
    fn value(self, cut: &Cut) -> f64 {
        let station = &cut.station;
        match self {
            Self::Forces => 0.0,
            // From shoulder to pillar the strings hang to the left. A moment above 0 bends the neck to the left, so
            // that its right side is stretched.
            Self::Moment => station.moment_n_m,
            Self::Shear => -station.shear_n,
            Self::Axial => station.axial_n,
            Self::Twist => station.torque_n_m,
            Self::Use => cut.verdict.governing().and_then(|used| used.ratio).unwrap_or(0.0),
        }
    }

    fn words(self, value: f64, units: Units) -> String {
        match self {
            Self::Forces | Self::Shear | Self::Axial => {
                display::total_with_unit(Force::from_n(value.abs()), units.force)
            }
            Self::Moment | Self::Twist => {
                moment_with_unit(Moment::from_n_m(value.abs()), units.force)
            }
            Self::Use => percents((value, value)),
        }
    }
}

/// The picture of the loads of a kind over a harp that is laid out. Where there is no frame, only its reason.
pub fn overlay(kind: LoadKind, band: &Band, bearing: &Bearing, units: Units) -> Overlay {
    let frame = match &bearing.frame {
        Ok(frame) => frame,
        Err(error) => {
            return Overlay { caption: capital(&format!("{error}.")), ..Overlay::default() };
        }
    };
    match kind {
        LoadKind::Forces => Overlay {
            caption: format!("{} {}", kind.caption().said(), forces_in(frame).said()),
            ..forces(frame, height_mm(band, frame), units)
        },
        _ => diagram(kind, band, frame, units),
    }
}

fn place(at: Point) -> PlaceMm {
    (at.x.to_mm(), at.y.to_mm())
}

/// From the lowest place of the frame to the highest.
fn height_mm(band: &Band, frame: &FrameBearing) -> f64 {
    let ends = [band.board.0, band.board.1, band.pillar.0, band.shoulder];
    let all = ends.into_iter().chain(frame.neck.cuts.iter().map(|cut| cut.station.at));
    let span = all.fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), at| {
        (low.min(at.y.to_mm()), high.max(at.y.to_mm()))
    });
    span.1 - span.0
}

/// Upward along the strings. Values stand in this direction and not square to the neck: there its curves would fold the
/// picture over itself.
fn upward(band: &Band) -> PlaceMm {
    let (zero, metre) = (Length::default(), Length::from_m(1.0));
    let (from, to) = (band.point(zero, zero), band.point(zero, metre));
    (to.x.to_m() - from.x.to_m(), to.y.to_m() - from.y.to_m())
}

fn diagram(kind: LoadKind, band: &Band, frame: &FrameBearing, units: Units) -> Overlay {
    let height = height_mm(band, frame);
    let of = |cuts: &[Cut]| cuts.iter().map(|cut| kind.value(cut)).collect::<Vec<f64>>();
    let neck = &frame.neck;
    let line: Vec<PlaceMm> = neck.cuts.iter().map(|cut| place(cut.station.at)).collect();
    let (values, held) = (of(neck.of(neck.softest())), of(&neck.held));
    let size = |values: &[f64]| values.iter().map(|value| value.abs()).fold(0.0, f64::max);
    let greatest = size(&values).max(size(&held));
    let caption = format!("{} {}", kind.caption().said(), which(frame).said());
    if !(greatest > 0.0 && greatest.is_finite()) {
        return Overlay { caption, lines: vec![line], ..Overlay::default() };
    }
    let (scale, up) = (TALLEST * height / greatest, upward(band));
    let stands = |values: &[f64]| -> Vec<PlaceMm> {
        let tip = |(at, value): (&PlaceMm, &f64)| along(*at, up, scale * value);
        line.iter().zip(values).map(tip).collect()
    };
    // In the caption, as both peaks may be at one place.
    let caption = say::then_at_most(&caption, &kind.words(size(&held), units));
    let mut over = Overlay { caption, ..Overlay::default() };
    let tips = stands(&values);
    let mut area = line.clone();
    area.extend(tips.iter().rev());
    over.areas.push(area);
    if let Some(peak) = values.iter().position(|value| value.abs() >= size(&values)) {
        // Beyond the tip, off the area.
        let beyond = along(tips[peak], up, 0.025 * height * values[peak].signum());
        over.labels.push(Label::new(beyond, kind.words(values[peak], units)));
    }
    over.dashed.push(stands(&held));
    over.lines = vec![line.clone(), tips];
    if kind == LoadKind::Use && greatest >= 0.5 {
        let all = stands(&vec![1.0; line.len()]);
        let text = say::LIMIT.into();
        over.labels.extend(all.last().map(|at| Label { at: *at, text, side: Side::Left }));
        over.limits.push(all);
    }
    over
}

/// Which case is the area, which the dashed line.
fn which(frame: &FrameBearing) -> Words {
    match frame.neck.softest() {
        Case::PillarPushes => say::AREA_PUSHES,
        _ => say::AREA_JOINTS,
    }
}

/// In which case the arrows stand.
fn forces_in(frame: &FrameBearing) -> Words {
    match frame.neck.softest() {
        Case::PillarPushes => say::FORCES_PUSHES,
        _ => say::FORCES_JOINTS,
    }
}

fn forces(frame: &FrameBearing, height: f64, units: Units) -> Overlay {
    let held = frame.holds;
    let size = |pull: &Pull| pull.x.to_n().hypot(pull.y.to_n());
    let all = frame.all.size().to_n();
    let greatest = [size(&held.pillar_pull), size(&held.shoulder_pull), all];
    let greatest = greatest.into_iter().fold(0.0, f64::max);
    let mut over = Overlay::default();
    if !(greatest > 0.0 && greatest.is_finite()) {
        return over;
    }
    let scale = LONGEST * height / greatest;
    let words = |n: f64| display::total_with_unit(Force::from_n(n), units.force);
    for (name, pull, side) in [
        (say::ARROW_PILLAR, held.pillar_pull, Side::Left),
        (say::ARROW_SHOULDER, held.shoulder_pull, Side::Right),
    ] {
        let to = place(pull.at);
        // The arrow ends where the force acts.
        let from = (to.0 - scale * pull.x.to_n(), to.1 - scale * pull.y.to_n());
        arrow(&mut over, from, to, height);
        // Outside of the frame, where no string is.
        let off = if side == Side::Left { -0.035 } else { 0.02 } * height;
        let (at, text) = ((from.0 + off, from.1), format!("{name}\n{}", words(size(&pull))));
        over.labels.push(Label { at, text, side });
    }
    if let Some(at) = frame.all.nearest_to_origin() {
        let (at, way) = (place(at), (frame.all.x.to_n() / all, frame.all.y.to_n() / all));
        let along = |place: PlaceMm| (place.0 - at.0) * way.0 + (place.1 - at.1) * way.1;
        // Across the whole neck and down to the shoulder's height and beyond, by half of the harp's height.
        let reach = frame.neck.cuts.iter().map(|cut| along(place(cut.station.at)));
        let start = reach.fold(f64::INFINITY, f64::min) - 0.5 * LONGEST * height;
        let point = |far: f64| (at.0 + far * way.0, at.1 + far * way.1);
        let (from, to) = (point(start), point(start + 0.7 * height));
        arrow(&mut over, from, to, height);
        over.labels.push(Label::new(from, say::arrow_all(&words(all))));
    }
    over
}

fn arrow(over: &mut Overlay, from: PlaceMm, to: PlaceMm, height: f64) {
    let way = (to.0 - from.0, to.1 - from.1);
    let length = way.0.hypot(way.1);
    if length <= 0.0 {
        return;
    }
    let way = (HEAD * height * way.0 / length, HEAD * height * way.1 / length);
    let side = |turn: f64| (to.0 - way.0 - 0.4 * turn * way.1, to.1 - way.1 + 0.4 * turn * way.0);
    over.lines.push(vec![from, to]);
    over.lines.push(vec![side(1.0), to, side(-1.0)]);
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::design::document::Design;
    use crate::design::presets::SAMPLES;
    use crate::design::resolve::resolve;
    use crate::engine::analysis::analyse;
    use crate::engine::bearing::bear;
    use crate::engine::geometry::{lay_out, loads};

    fn of(design: &Design) -> (Band, Bearing) {
        let resolved = resolve(design);
        let analysis = analyse(&resolved.harp);
        let band = lay_out(&resolved.harp, &analysis, &resolved.geometry);
        let loads = loads(&band, &resolved.harp, &analysis, &resolved.geometry);
        let bearing = bear(&band, &loads, &analysis, &resolved.geometry, &resolved.build());
        (band, bearing)
    }

    #[test]
    fn a_diagram_stands_where_its_value_does_and_is_as_tall_as_asked() {
        for sample in SAMPLES {
            let (band, bearing) = of(&sample.design());
            let frame = bearing.frame.as_ref().unwrap();
            let height = height_mm(&band, frame);
            for kind in LoadKind::ALL.into_iter().filter(|kind| *kind != LoadKind::Forces) {
                let over = overlay(kind, &band, &bearing, Units::default());
                let (line, tips) = (&over.lines[0], &over.lines[1]);
                assert_eq!(over.areas[0].len(), 2 * line.len(), "{kind:?}");
                let mut tallest = 0.0_f64;
                let held = over.dashed.first().map_or(&[][..], Vec::as_slice);
                let soft = frame.neck.of(frame.neck.softest());
                let both = line.iter().zip(tips).zip(soft);
                let both = both.chain(line.iter().zip(held).zip(&frame.neck.held));
                for ((at, tip), cut) in both {
                    let off = tip.1 - at.1;
                    tallest = tallest.max(off.abs());
                    let value = kind.value(cut);
                    assert!(value != 0.0 || off == 0.0, "{kind:?}: zero where the value is");
                    if off.abs() > 1.0 {
                        assert_eq!(value > 0.0, off > 0.0, "{kind:?} at {}", cut.station.s_m);
                    }
                }
                assert!((tallest / (TALLEST * height) - 1.0).abs() < 1e-9, "{kind:?}: {tallest}");
                assert!(!over.labels[0].text.is_empty() && over.caption.ends_with('.'));
            }
        }
    }

    #[test]
    fn a_neck_under_strings_is_stretched_below_and_ends_without_moment() {
        let mut design = SAMPLES[2].design();
        design.geometry.joints = Design::default().geometry.joints;
        let (band, bearing) = of(&design);
        let over = overlay(LoadKind::Moment, &band, &bearing, Units::default());
        let (line, tips) = (&over.lines[0], &over.lines[1]);
        let middle = line.len() / 2;
        assert!(tips[middle].1 < line[middle].1);
        for end in [0, line.len() - 1] {
            let off = (tips[end].0 - line[end].0).hypot(tips[end].1 - line[end].1);
            assert!(off < 1e-6, "{off}");
        }
        assert!(over.labels[0].text.ends_with(" N·m"), "{}", over.labels[0].text);
    }

    #[test]
    fn the_forces_are_three_arrows() {
        for sample in SAMPLES {
            let (band, bearing) = of(&sample.design());
            let over = overlay(LoadKind::Forces, &band, &bearing, Units::default());
            assert_eq!((over.lines.len(), over.areas.len(), over.labels.len()), (6, 0, 3));
            let numbers = over.lines.iter().chain(&over.areas).flatten();
            assert!(numbers.into_iter().all(|(x, y)| x.is_finite() && y.is_finite()));
        }
    }

    #[test]
    fn without_a_frame_the_reason_stands_there() {
        let (band, bearing) = of(&Design::default());
        for kind in LoadKind::ALL {
            let over = overlay(kind, &band, &bearing, Units::default());
            assert!(over.caption.starts_with("A neck needs three strings"), "{}", over.caption);
            assert!(over.areas.is_empty() && over.lines.is_empty() && over.labels.is_empty());
        }
    }
}
