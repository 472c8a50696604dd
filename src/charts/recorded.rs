//! A drawing as the list of its marks, and where two drawings differ: so that a canvas is painted again only
//! where something changed, which costs a browser far less than painting all of it.

use std::convert::Infallible;

use plotters_backend::text_anchor::{HPos, VPos};
use plotters_backend::{
    BackendColor, BackendCoord, BackendStyle, BackendTextStyle, DrawingBackend, DrawingErrorKind,
};

/// How far two lists are looked along for where they agree again.
const LOOK_AHEAD: usize = 32;
/// Places nearer to each other than this, in pixels, are painted as one.
const NEAR: i32 = 16;

/// A colour that can be compared: red, green, blue, and the bits of its opacity.
pub type Ink = (u8, u8, u8, u64);

/// One thing that is drawn.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Stroke {
    pub ink: Ink,
    pub shape: Shape,
}

/// What it is, in pixels. Widths are of the line.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Shape {
    /// A filled rectangle from one corner to the other.
    Block(BackendCoord, BackendCoord),
    Path(Vec<BackendCoord>, u32),
    /// A circle that is filled.
    Disc(BackendCoord, u32),
    /// A circle that is not.
    Ring(BackendCoord, u32, u32),
    Polygon(Vec<BackendCoord>),
    Word(Word),
}

/// A text with the names that a canvas has for its looks.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Word {
    pub text: String,
    pub at: BackendCoord,
    pub font: String,
    /// Height of the type, rounded up.
    pub high: i32,
    pub baseline: &'static str,
    pub align: &'static str,
}

/// A rectangle: left, top, right and bottom, the last two not included.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Area {
    pub left: i32,
    pub top: i32,
    pub right: i32,
    pub bottom: i32,
}

impl Area {
    /// What holds all of some points, and `room` around them.
    fn around(points: &[BackendCoord], room: i32) -> Option<Self> {
        let first = points.first()?;
        let mut area = Self { left: first.0, top: first.1, right: first.0, bottom: first.1 };
        for (x, y) in points {
            area = area.with(Self { left: *x, top: *y, right: *x, bottom: *y });
        }
        Some(Self {
            left: area.left - room,
            top: area.top - room,
            right: area.right + room + 1,
            bottom: area.bottom + room + 1,
        })
    }

    fn with(self, other: Self) -> Self {
        Self {
            left: self.left.min(other.left),
            top: self.top.min(other.top),
            right: self.right.max(other.right),
            bottom: self.bottom.max(other.bottom),
        }
    }

    /// Whether the two have a pixel in common, or lie no farther apart than so many.
    pub fn meets(&self, other: &Self, apart: i32) -> bool {
        self.left < other.right + apart
            && other.left < self.right + apart
            && self.top < other.bottom + apart
            && other.top < self.bottom + apart
    }
}

/// Room around a path of a width: its corners may be as sharp as a canvas lets them be.
fn path_room(width: u32) -> i32 {
    5 * i32::try_from(width).unwrap_or(0) + 1
}

impl Stroke {
    /// What it may cover; more rather than less, as no text is measured.
    pub fn area(&self) -> Option<Area> {
        let whole = |number: u32| i32::try_from(number).unwrap_or(0);
        match &self.shape {
            Shape::Block(from, to) => Area::around(&[*from, *to], 1),
            Shape::Path(points, width) => Area::around(points, path_room(*width)),
            Shape::Disc(at, radius) => Area::around(&[*at], whole(*radius) + 1),
            Shape::Ring(at, radius, width) => {
                Area::around(&[*at], whole(*radius) + whole(*width) + 1)
            }
            Shape::Polygon(points) => Area::around(points, 1),
            Shape::Word(word) => {
                // No sign is wider than its type is high, and a line is less than twice as high.
                let count = i32::try_from(word.text.chars().count()).unwrap_or(0);
                let ((x, y), high) = (word.at, word.high);
                let wide = high * (count + 1);
                let (left, right) = match word.align {
                    "start" => (high, wide),
                    "end" => (wide, high),
                    _ => (wide, wide),
                };
                let (up, down) = match word.baseline {
                    "top" => (high / 2, 2 * high),
                    "bottom" => (2 * high, high / 2),
                    _ => (high, high),
                };
                Area::around(&[(x - left, y - up), (x + right, y + down)], 0)
            }
        }
    }
}

/// A drawing as the list of its marks, in the order in which they are painted.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Recorded {
    pub size: (u32, u32),
    pub strokes: Vec<Stroke>,
}

impl Recorded {
    /// An empty drawing of a size.
    pub const fn new(size: (u32, u32)) -> Self {
        Self { size, strokes: Vec::new() }
    }

    /// Where this drawing looks otherwise than `before`; `None` where all of it may.
    pub fn differs(&self, before: &Self) -> Option<Vec<Area>> {
        if self.size != before.size || before.strokes.is_empty() {
            return None;
        }
        let (old, new) = (&before.strokes[..], &self.strokes[..]);
        let mut areas = Vec::new();
        let (mut i, mut j) = (0, 0);
        while i < old.len() || j < new.len() {
            if i < old.len() && j < new.len() && old[i] == new[j] {
                (i, j) = (i + 1, j + 1);
                continue;
            }
            let (gone, come) = agree_again(&old[i..], &new[j..]);
            match (&old[i..i + gone], &new[j..j + come]) {
                ([was], [is]) => change(&mut areas, was, is),
                (gone, come) => {
                    gone.iter()
                        .chain(come)
                        .filter_map(Stroke::area)
                        .for_each(|a| add(&mut areas, a));
                }
            }
            (i, j) = (i + gone, j + come);
        }
        Some(areas)
    }
}

/// How many strokes have gone and how many have come until two lists, which begin differently, agree again.
fn agree_again(old: &[Stroke], new: &[Stroke]) -> (usize, usize) {
    for steps in 1..=LOOK_AHEAD {
        // As many of both first: most often a stroke has another place, and none is gone.
        let aside =
            (0..=steps).flat_map(|aside| [steps / 2 + aside, (steps / 2).wrapping_sub(aside)]);
        for gone in aside.filter(|gone| *gone <= steps) {
            let come = steps - gone;
            match (old.get(gone), new.get(come)) {
                (Some(was), Some(is)) if was == is => return (gone, come),
                (None, None) if gone == old.len() && come == new.len() => return (gone, come),
                _ => {}
            }
        }
    }
    (old.len(), new.len())
}

/// One stroke in place of another: of a path only the pieces between points that moved.
fn change(areas: &mut Vec<Area>, was: &Stroke, is: &Stroke) {
    if let (Shape::Path(old, width), Shape::Path(new, new_width)) = (&was.shape, &is.shape)
        && was.ink == is.ink
        && width == new_width
        && old.len() == new.len()
    {
        let moved = |place: &usize| old[*place] != new[*place];
        for place in (0..old.len()).filter(moved) {
            let piece = place.saturating_sub(1)..(place + 2).min(old.len());
            let both = [old[piece.clone()].to_vec(), new[piece].to_vec()].concat();
            if let Some(area) = Area::around(&both, path_room(*width)) {
                add(areas, area);
            }
        }
        return;
    }
    [was, is].into_iter().filter_map(Stroke::area).for_each(|area| add(areas, area));
}

/// Adds an area, joined with those that it comes near.
fn add(areas: &mut Vec<Area>, mut area: Area) {
    while let Some(place) = areas.iter().position(|other| other.meets(&area, NEAR)) {
        area = area.with(areas.swap_remove(place));
    }
    areas.push(area);
}

/// The backend that records. It never fails.
pub struct Recorder<'a>(pub &'a mut Recorded);

type Done = Result<(), DrawingErrorKind<Infallible>>;

impl Recorder<'_> {
    fn record(&mut self, color: BackendColor, shape: Shape) -> Done {
        let (r, g, b) = color.rgb;
        self.0.strokes.push(Stroke { ink: (r, g, b, color.alpha.to_bits()), shape });
        Ok(())
    }
}

impl DrawingBackend for Recorder<'_> {
    type ErrorType = Infallible;

    fn get_size(&self) -> (u32, u32) {
        self.0.size
    }

    fn ensure_prepared(&mut self) -> Done {
        Ok(())
    }

    fn present(&mut self) -> Done {
        Ok(())
    }

    fn draw_pixel(&mut self, point: BackendCoord, color: BackendColor) -> Done {
        self.record(color, Shape::Block(point, (point.0 + 1, point.1 + 1)))
    }

    fn draw_line<S: BackendStyle>(
        &mut self,
        from: BackendCoord,
        to: BackendCoord,
        style: &S,
    ) -> Done {
        self.draw_path([from, to], style)
    }

    fn draw_rect<S: BackendStyle>(
        &mut self,
        upper_left: BackendCoord,
        bottom_right: BackendCoord,
        style: &S,
        fill: bool,
    ) -> Done {
        if fill {
            return self.record(style.color(), Shape::Block(upper_left, bottom_right));
        }
        let ((left, top), (right, bottom)) = (upper_left, bottom_right);
        let round = [(left, top), (right, top), (right, bottom), (left, bottom), (left, top)];
        self.draw_path(round, style)
    }

    fn draw_path<S: BackendStyle, I: IntoIterator<Item = BackendCoord>>(
        &mut self,
        path: I,
        style: &S,
    ) -> Done {
        let points = path.into_iter().collect();
        self.record(style.color(), Shape::Path(points, style.stroke_width()))
    }

    fn draw_circle<S: BackendStyle>(
        &mut self,
        center: BackendCoord,
        radius: u32,
        style: &S,
        fill: bool,
    ) -> Done {
        let shape = if fill {
            Shape::Disc(center, radius)
        } else {
            Shape::Ring(center, radius, style.stroke_width())
        };
        self.record(style.color(), shape)
    }

    fn fill_polygon<S: BackendStyle, I: IntoIterator<Item = BackendCoord>>(
        &mut self,
        corners: I,
        style: &S,
    ) -> Done {
        self.record(style.color(), Shape::Polygon(corners.into_iter().collect()))
    }

    /// A text as it lies: no drawing of ours turns one.
    fn draw_text<S: BackendTextStyle>(&mut self, text: &str, style: &S, at: BackendCoord) -> Done {
        let (family, size) = (style.family(), style.size());
        #[expect(clippy::cast_possible_truncation, reason = "the size of a text on the screen")]
        let high = size.ceil() as i32;
        let word = Word {
            text: text.to_owned(),
            at,
            font: format!("{} {size}px {}", style.style().as_str(), family.as_str()),
            high,
            baseline: match style.anchor().v_pos {
                VPos::Top => "top",
                VPos::Center => "middle",
                VPos::Bottom => "bottom",
            },
            align: match style.anchor().h_pos {
                HPos::Left => "start",
                HPos::Right => "end",
                HPos::Center => "center",
            },
        };
        self.record(style.color(), Shape::Word(word))
    }
}

#[cfg(test)]
mod tests {
    use plotters::prelude::IntoDrawingArea;

    use super::*;
    use crate::charts::palette::Palette;
    use crate::charts::pen::{Medium, Style};
    use crate::charts::series::Curves;
    use crate::charts::{draw, samples};
    use crate::design::document::Units;
    use crate::engine::analysis::{Harp, analyse};
    use crate::engine::figure::Figure;
    use crate::engine::units::Length;

    const SIZE: (u32, u32) = (640, 480);

    fn drawn(harp: &Harp, grave: &[usize]) -> Recorded {
        let shown = [Figure::Tension, Figure::PluckStiffness, Figure::LoadShare];
        let analysis = analyse(harp);
        let curves = Curves::build(&analysis, harp, &Units::default(), &shown, None, None);
        let mut recorded = Recorded::new(SIZE);
        let style = Style { grave, ..Style::new(Palette::light(), 1.0, Medium::Canvas) };
        let area = Recorder(&mut recorded).into_drawing_area();
        draw::draw(&area, &curves, &style).unwrap();
        drop(area);
        recorded
    }

    /// Every stroke with what it may cover, a path piece by piece.
    fn pieces(recorded: &Recorded) -> Vec<(Area, Stroke)> {
        let cut = |stroke: &Stroke| match &stroke.shape {
            Shape::Path(points, width) => {
                let piece = |two: &[BackendCoord]| Shape::Path(two.to_vec(), *width);
                let shapes = points.windows(2).map(piece);
                shapes.map(|shape| Stroke { ink: stroke.ink, shape }).collect()
            }
            _ => vec![stroke.clone()],
        };
        let all = recorded.strokes.iter().flat_map(cut);
        all.map(|stroke| (stroke.area().expect("it covers something"), stroke)).collect()
    }

    /// That the two look alike wherever they are not said to differ, and how many pixels are said to.
    #[track_caller]
    fn assert_only_there(before: &Recorded, now: &Recorded) -> i32 {
        let areas = now.differs(before).expect("one size");
        let (old, new) = (pieces(before), pieces(now));
        for y in (0..480).step_by(5) {
            for x in (0..640).step_by(5) {
                let pixel = Area { left: x, top: y, right: x + 1, bottom: y + 1 };
                if areas.iter().any(|area| area.meets(&pixel, 0)) {
                    continue;
                }
                let seen = |(area, stroke)| pixel.meets(area, 0).then_some(stroke);
                let was = old.iter().map(|(a, s)| (a, s)).filter_map(seen);
                let is = new.iter().map(|(a, s)| (a, s)).filter_map(seen);
                assert!(was.eq(is), "({x}, {y}) is left as it was");
            }
        }
        areas.iter().map(|a| (a.right - a.left) * (a.bottom - a.top)).sum()
    }

    #[test]
    fn what_lies_outside_looks_as_before_whichever_string_changes() {
        let harp = samples::harp(47);
        let before = drawn(&harp, &[]);
        for index in [0, 1, 20, 33, 46] {
            let mut other = harp.clone();
            let length = other.strings[index].length.unwrap();
            other.strings[index].length = Ok(Length::from_mm(length.to_mm() * 1.02));
            let now = drawn(&other, &[]);
            assert_ne!(now, before, "string {index}");
            assert_only_there(&before, &now);
        }
    }

    #[test]
    fn one_string_in_the_midst_changes_little() {
        let harp = samples::harp(47);
        let mut other = harp.clone();
        let length = other.strings[20].length.unwrap();
        other.strings[20].length = Ok(Length::from_mm(length.to_mm() * 1.02));
        let changed = assert_only_there(&drawn(&harp, &[]), &drawn(&other, &[]));
        assert!(changed > 0 && changed < 640 * 480 / 8, "{changed} pixels");
    }

    #[test]
    fn a_finding_that_comes_or_goes_is_seen() {
        let harp = samples::harp(47);
        let (without, with) = (drawn(&harp, &[]), drawn(&harp, &[12]));
        assert!(assert_only_there(&without, &with) > 0);
        assert!(assert_only_there(&with, &without) > 0);
    }

    #[test]
    fn what_did_not_change_is_not_painted() {
        let one = drawn(&samples::harp(30), &[3]);
        assert_eq!(one.differs(&one.clone()), Some(Vec::new()));
    }

    #[test]
    fn another_size_or_nothing_before_is_painted_whole() {
        let one = drawn(&samples::harp(30), &[]);
        assert_eq!(one.differs(&Recorded::default()), None);
        let other = Recorded { size: (641, 480), ..one.clone() };
        assert_eq!(other.differs(&one), None);
    }
}
