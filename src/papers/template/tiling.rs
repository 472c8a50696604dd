//! Which part of a large drawing goes on which sheet of paper.
//!
//! Rows have letters from the top, columns numbers from the left: `A1` is the upper left sheet. Each
//! sheet shows a frame of the drawing; frames overlap, so that a sheet can be glued over its neighbours
//! on the left and below.

use super::model::{Extent, Layer, PointMm, Shape, Template, TemplateError};

/// White that printers leave at the edge of the paper.
pub const MARGIN_MM: f64 = 8.0;
/// Strip at the left for the upright check bar.
pub const SIDE_MM: f64 = 8.0;
/// Strip at the foot for words and the level check bar.
pub const FOOT_MM: f64 = 14.0;
/// Least and greatest overlap.
pub const OVERLAPS_MM: (f64, f64) = (6.0, 40.0);
/// No template takes more sheets.
pub const MOST_SHEETS: usize = 200;
/// The largest single sheet: 14 400 points, which is all that many readers of PDF allow.
///
/// # Source
///
/// ISO 32000-1:2008, annex C, from memory.
pub const MOST_LARGE_MM: f64 = 5_080.0;
/// White kept round the drawing, for the width of its lines.
const EDGE_MM: f64 = 2.0;
/// Where the drawing is tried on the sheets, as a share of the room that is spare.
const SHIFTS: [f64; 5] = [0.5, 0.25, 0.75, 0.0, 1.0];
/// A drawing of more points is only tried in the middle.
const MOST_MOVED: usize = 20_000;
/// How near ink may come to a sheet that does not show it: more than half of the thickest line.
const INK_MM: f64 = 0.3;

/// The paper in the printer.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum TilePaper {
    #[default]
    A4,
    Letter,
}

impl TilePaper {
    /// Width and height, upright.
    pub const fn size_mm(self) -> (f64, f64) {
        match self {
            Self::A4 => (210.0, 297.0),
            Self::Letter => (215.9, 279.4),
        }
    }

    pub const fn name(self) -> &'static str {
        match self {
            Self::A4 => "A4",
            Self::Letter => "Letter",
        }
    }
}

/// How a template is spread over sheets.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Tiling {
    pub paper: TilePaper,
    /// How much of the drawing two neighbours both show.
    pub overlap_mm: f64,
}

impl Default for Tiling {
    fn default() -> Self {
        Self { paper: TilePaper::A4, overlap_mm: 10.0 }
    }
}

/// The place of a sheet, counted from the upper left one.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct SheetPlace {
    pub row: usize,
    pub column: usize,
}

impl SheetPlace {
    /// `A1`, `B12`, `AA3`.
    pub fn label(self) -> String {
        let mut letters = Vec::new();
        let mut left = self.row + 1;
        while left > 0 {
            left -= 1;
            letters.push(char::from(b'A' + u8::try_from(left % 26).unwrap_or(0)));
            left /= 26;
        }
        let row: String = letters.iter().rev().collect();
        format!("{row}{}", self.column + 1)
    }
}

/// A mark that two neighbours share: the upper sheet is cut through its middle and laid on the lower.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct JoinMark {
    pub number: usize,
    pub at: PointMm,
    /// The sheet that is cut and lies on top, then the one below it.
    pub sheets: (SheetPlace, SheetPlace),
    /// The seam stands upright, between two sheets of a row.
    pub upright: bool,
}

/// The sheets of a template.
#[derive(Clone, Debug, PartialEq)]
pub struct Plan {
    pub page_mm: (f64, f64),
    /// Size of the part of the drawing that a sheet shows.
    pub frame_mm: (f64, f64),
    pub overlap_mm: f64,
    pub rows: usize,
    pub columns: usize,
    /// Where the frame of the lower left sheet begins.
    pub corner: PointMm,
    /// Row by row from the top.
    printed: Vec<bool>,
}

impl Plan {
    /// The plan that takes the fewest sheets: upright or lying, upright if both take as many.
    ///
    /// # Errors
    ///
    /// When the template cannot be drawn, the overlap is too small or too great, or more than
    /// [`MOST_SHEETS`] are needed.
    pub fn of(template: &Template, tiling: Tiling) -> Result<Self, TemplateError> {
        let (least_mm, most_mm) = OVERLAPS_MM;
        let overlap_mm = tiling.overlap_mm;
        if !(overlap_mm >= least_mm && overlap_mm <= most_mm) {
            return Err(TemplateError::Overlap { least_mm, most_mm, got_mm: overlap_mm });
        }
        let extent = template.extent()?;
        let layers = template.drawn();
        let (short_mm, long_mm) = tiling.paper.size_mm();
        let upright = Self::on_page((short_mm, long_mm), overlap_mm, extent, &layers);
        let lying = Self::on_page((long_mm, short_mm), overlap_mm, extent, &layers);
        let best = [upright, lying].into_iter().flatten().min_by_key(Self::count);
        best.ok_or(TemplateError::Sheets { most: MOST_SHEETS })
    }

    /// One sheet as large as the drawing.
    ///
    /// # Errors
    ///
    /// When the template cannot be drawn, or the sheet would pass [`MOST_LARGE_MM`].
    pub fn single(template: &Template) -> Result<Self, TemplateError> {
        let extent = template.extent()?.padded(EDGE_MM);
        // Room for the words and bars of any sheet.
        let frame_mm = (extent.width_mm().max(180.0), extent.height_mm().max(110.0));
        let page_mm =
            (frame_mm.0 + 2.0 * MARGIN_MM + SIDE_MM, frame_mm.1 + 2.0 * MARGIN_MM + FOOT_MM);
        if page_mm.0 > MOST_LARGE_MM || page_mm.1 > MOST_LARGE_MM {
            return Err(TemplateError::LargeSheet {
                most_mm: MOST_LARGE_MM,
                width_mm: page_mm.0,
                height_mm: page_mm.1,
            });
        }
        let corner = PointMm::new(
            0.5 * (extent.left_mm + extent.right_mm - frame_mm.0),
            0.5 * (extent.bottom_mm + extent.top_mm - frame_mm.1),
        );
        let printed = vec![true];
        Ok(Self { page_mm, frame_mm, overlap_mm: 0.0, rows: 1, columns: 1, corner, printed })
    }

    /// `None` when more than [`MOST_SHEETS`] would be printed.
    fn on_page(
        page_mm: (f64, f64),
        overlap_mm: f64,
        extent: Extent,
        layers: &[Layer],
    ) -> Option<Self> {
        let frame_mm =
            (page_mm.0 - 2.0 * MARGIN_MM - SIDE_MM, page_mm.1 - 2.0 * MARGIN_MM - FOOT_MM);
        let extent = extent.padded(EDGE_MM);
        let columns = count(extent.width_mm(), frame_mm.0, overlap_mm);
        let rows = count(extent.height_mm(), frame_mm.1, overlap_mm);
        let whole = |count: usize, frame_mm: f64| {
            whole_number(count) * (frame_mm - overlap_mm) + overlap_mm
        };
        let spare_mm = (
            whole(columns, frame_mm.0) - extent.width_mm(),
            whole(rows, frame_mm.1) - extent.height_mm(),
        );
        let lines: Vec<Vec<PointMm>> =
            layers.iter().flat_map(|layer| &layer.shapes).flat_map(Shape::lines).collect();
        // Moved about on the sheets, the drawing may leave one more of them empty. In the middle first.
        let points: usize = lines.iter().map(Vec::len).sum();
        let shifts = if points > MOST_MOVED { &SHIFTS[..1] } else { &SHIFTS[..] };
        let moves = shifts.iter().flat_map(|x| shifts.iter().map(move |y| (*x, *y)));
        let plans = moves.filter_map(|(x, y)| {
            let corner =
                PointMm::new(extent.left_mm - x * spare_mm.0, extent.bottom_mm - y * spare_mm.1);
            let printed = vec![false; rows * columns];
            let plan = Self { page_mm, frame_mm, overlap_mm, rows, columns, corner, printed };
            plan.with_ink(&lines)
        });
        plans.min_by_key(Self::count)
    }

    /// The plan with the sheets marked that have ink; `None` when they are more than [`MOST_SHEETS`].
    fn with_ink(mut self, lines: &[Vec<PointMm>]) -> Option<Self> {
        let mut count = 0;
        for ends in lines.iter().flat_map(|line| line.windows(2)) {
            count += self.note_ink(ends[0], ends[1]);
            if count > MOST_SHEETS {
                return None;
            }
        }
        Some(self)
    }

    /// Marks the sheets that a line crosses; gives how many were not marked before.
    fn note_ink(&mut self, from: PointMm, to: PointMm) -> usize {
        let step = (self.frame_mm.0 - self.overlap_mm, self.frame_mm.1 - self.overlap_mm);
        let range = |a_mm: f64, b_mm: f64, corner_mm: f64, step_mm: f64, most: usize| {
            let low = index((a_mm.min(b_mm) - INK_MM - corner_mm) / step_mm, most);
            low..=index((a_mm.max(b_mm) + INK_MM - corner_mm) / step_mm, most)
        };
        let (along_x, along_y) = (to.x_mm - from.x_mm, to.y_mm - from.y_mm);
        let mut found = 0;
        for up in range(from.y_mm, to.y_mm, self.corner.y_mm, step.1, self.rows) {
            let row = self.rows - 1 - up;
            // The piece of the line that is as high as this row.
            let strip = self.own(SheetPlace { row, column: 0 }).padded(INK_MM);
            let x_at = |y_mm: f64, end_mm: f64| {
                let share = (y_mm - from.y_mm) / along_y;
                if share.is_finite() { from.x_mm + share.clamp(0.0, 1.0) * along_x } else { end_mm }
            };
            let (one, other) = (x_at(strip.bottom_mm, from.x_mm), x_at(strip.top_mm, to.x_mm));
            for column in range(one, other, self.corner.x_mm, step.0, self.columns) {
                let place = SheetPlace { row, column };
                let own = self.own(place).padded(INK_MM);
                let at = row * self.columns + column;
                if !self.printed[at] && crosses(from, to, &own) {
                    self.printed[at] = true;
                    found += 1;
                }
            }
        }
        found
    }

    /// The part of the drawing that a sheet shows.
    pub fn frame(&self, place: SheetPlace) -> Extent {
        let up = whole_number(self.rows - 1 - place.row.min(self.rows - 1));
        let left_mm =
            self.corner.x_mm + whole_number(place.column) * (self.frame_mm.0 - self.overlap_mm);
        let bottom_mm = self.corner.y_mm + up * (self.frame_mm.1 - self.overlap_mm);
        Extent::new(left_mm, bottom_mm, left_mm + self.frame_mm.0, bottom_mm + self.frame_mm.1)
    }

    /// The part that no sheet laid over this one shows.
    pub(super) fn own(&self, place: SheetPlace) -> Extent {
        let frame = self.frame(place);
        let right = if place.column + 1 < self.columns { self.overlap_mm } else { 0.0 };
        let top = if place.row > 0 { self.overlap_mm } else { 0.0 };
        Extent::new(frame.left_mm, frame.bottom_mm, frame.right_mm - right, frame.top_mm - top)
    }

    pub fn is_lying(&self) -> bool {
        self.page_mm.0 > self.page_mm.1
    }

    /// Whether there is ink on a sheet.
    pub fn is_printed(&self, place: SheetPlace) -> bool {
        let inside = place.row < self.rows && place.column < self.columns;
        inside && self.printed.get(place.row * self.columns + place.column) == Some(&true)
    }

    /// All places, row by row.
    pub fn places(&self) -> impl Iterator<Item = SheetPlace> + '_ {
        (0..self.rows)
            .flat_map(move |row| (0..self.columns).map(move |column| SheetPlace { row, column }))
    }

    /// The sheets that are printed, row by row.
    pub fn sheets(&self) -> impl Iterator<Item = SheetPlace> + '_ {
        self.places().filter(|place| self.is_printed(*place))
    }

    pub fn count(&self) -> usize {
        self.sheets().count()
    }

    /// The printed neighbour on the right.
    pub fn right_of(&self, place: SheetPlace) -> Option<SheetPlace> {
        Some(SheetPlace { column: place.column + 1, ..place }).filter(|at| self.is_printed(*at))
    }

    /// The printed neighbour on the left.
    pub fn left_of(&self, place: SheetPlace) -> Option<SheetPlace> {
        let column = place.column.checked_sub(1)?;
        Some(SheetPlace { column, ..place }).filter(|at| self.is_printed(*at))
    }

    /// The printed neighbour above.
    pub fn above(&self, place: SheetPlace) -> Option<SheetPlace> {
        let row = place.row.checked_sub(1)?;
        Some(SheetPlace { row, ..place }).filter(|at| self.is_printed(*at))
    }

    /// The printed neighbour below.
    pub fn below(&self, place: SheetPlace) -> Option<SheetPlace> {
        Some(SheetPlace { row: place.row + 1, ..place }).filter(|at| self.is_printed(*at))
    }

    /// The marks on all seams: two on each, numbered sheet by sheet.
    pub fn marks(&self) -> Vec<JoinMark> {
        let mut marks = Vec::new();
        for place in self.sheets() {
            let frame = self.frame(place);
            for (lower, upright) in [(self.left_of(place), true), (self.below(place), false)] {
                let Some(lower) = lower else { continue };
                for share in [0.25, 0.75] {
                    let at = if upright {
                        PointMm::new(frame.left_mm, frame.bottom_mm + share * self.frame_mm.1)
                    } else {
                        PointMm::new(frame.left_mm + share * self.frame_mm.0, frame.bottom_mm)
                    };
                    let number = marks.len() + 1;
                    marks.push(JoinMark { number, at, sheets: (place, lower), upright });
                }
            }
        }
        marks
    }
}

/// A count as a number: none here passes a few thousand.
fn whole_number(count: usize) -> f64 {
    f64::from(u32::try_from(count).unwrap_or(u32::MAX))
}

/// How many frames cover a length.
fn count(long_mm: f64, frame_mm: f64, overlap_mm: f64) -> usize {
    let mut frames = 1;
    while whole_number(frames) * (frame_mm - overlap_mm) + overlap_mm < long_mm {
        frames += 1;
    }
    frames
}

/// The cell in which a place lies, the last being `most - 1`.
#[expect(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "the cast saturates, and NaN becomes 0"
)]
fn index(place: f64, most: usize) -> usize {
    let at = place.floor().max(0.0) as usize;
    if at < most { at } else { most - 1 }
}

/// Whether a line goes through a rectangle or touches it.
pub(super) fn crosses(from: PointMm, to: PointMm, extent: &Extent) -> bool {
    // The share of the line that is inside all four sides.
    let (mut enters, mut leaves) = (0.0_f64, 1.0_f64);
    let (along_x, along_y) = (to.x_mm - from.x_mm, to.y_mm - from.y_mm);
    for (along, room) in [
        (-along_x, from.x_mm - extent.left_mm),
        (along_x, extent.right_mm - from.x_mm),
        (-along_y, from.y_mm - extent.bottom_mm),
        (along_y, extent.top_mm - from.y_mm),
    ] {
        if along == 0.0 {
            if room < 0.0 {
                return false;
            }
        } else if along < 0.0 {
            enters = enters.max(room / along);
        } else {
            leaves = leaves.min(room / along);
        }
    }
    enters <= leaves
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::papers::template::model::LayerKind;

    fn drawing(lines: &[(f64, f64, f64, f64)]) -> Template {
        let line = |(x, y, u, v): &(f64, f64, f64, f64)| {
            Shape::Line(PointMm::new(*x, *y), PointMm::new(*u, *v))
        };
        let shapes = lines.iter().map(line).collect();
        let layers = vec![Layer { kind: LayerKind::Outline, shapes }];
        Template { layers, ..Template::default() }
    }

    #[test]
    fn rows_have_letters_and_columns_numbers() {
        let label = |row, column| SheetPlace { row, column }.label();
        assert_eq!([label(0, 0), label(25, 11), label(26, 0)], ["A1", "Z12", "AA1"]);
    }

    /// By hand: a frame of A4 lying is 273 mm wide (297 - 24), one upright 186 (210 - 24). The drawing is
    /// 530 mm wide, with the mark at its origin and white at its ends. Two lying sheets reach
    /// 2 · 273 - 10 = 536; two upright ones 362, three 538.
    #[test]
    fn the_side_that_needs_fewer_sheets_is_chosen() {
        let plan = Plan::of(&drawing(&[(0.0, 0.0, 520.0, 0.0)]), Tiling::default());
        let plan = plan.expect("a plan");
        assert!(plan.is_lying(), "{plan:?}");
        assert_eq!((plan.rows, plan.columns, plan.count()), (1, 2, 2));
        let tall = Plan::of(&drawing(&[(0.0, 0.0, 0.0, 500.0)]), Tiling::default());
        let tall = tall.expect("a plan");
        assert!(!tall.is_lying());
        assert_eq!((tall.rows, tall.columns), (2, 1));
    }

    #[test]
    fn a_sheet_without_ink_is_left_out() {
        let frame = [(0.0, 0.0, 1_000.0, 0.0), (0.0, 0.0, 0.0, 1_000.0)];
        let plan = Plan::of(&drawing(&frame), Tiling::default()).expect("a plan");
        assert!(plan.count() < plan.rows * plan.columns, "{plan:?}");
        assert!(!plan.is_printed(SheetPlace { row: 0, column: plan.columns - 1 }));
        for place in plan.sheets() {
            let label = place.label();
            assert!(place.column == 0 || place.row == plan.rows - 1, "{label} has ink");
        }
    }

    #[test]
    fn neighbours_show_the_same_strip() {
        let plan = Plan::of(&drawing(&[(0.0, 0.0, 600.0, 600.0)]), Tiling::default());
        let plan = plan.expect("a plan");
        let frame = |row, column| plan.frame(SheetPlace { row, column });
        assert!((frame(0, 0).right_mm - frame(0, 1).left_mm - 10.0).abs() < 1e-9);
        assert!((frame(1, 0).top_mm - frame(0, 0).bottom_mm - 10.0).abs() < 1e-9);
        for mark in plan.marks() {
            for place in [mark.sheets.0, mark.sheets.1] {
                let inside = plan.frame(place).padded(1e-9);
                assert!(inside.meets(&Extent::new(
                    mark.at.x_mm,
                    mark.at.y_mm,
                    mark.at.x_mm,
                    mark.at.y_mm
                )));
            }
        }
    }

    #[test]
    fn a_line_marks_every_sheet_that_it_crosses_and_no_other() {
        let plan = Plan::of(&drawing(&[(0.0, 0.0, 900.0, 700.0)]), Tiling::default());
        let plan = plan.expect("a plan");
        for place in plan.places() {
            let own = plan.own(place);
            // A point in each tenth of a millimetre of the line, well inside a sheet or well outside.
            let on_line = |step: i32| f64::from(step) / 10_000.0;
            let inside = |extent: Extent| {
                (0..=10_000).any(|step| {
                    let (x_mm, y_mm) = (900.0 * on_line(step), 700.0 * on_line(step));
                    extent.meets(&Extent::new(x_mm, y_mm, x_mm, y_mm))
                })
            };
            let is_origin = own.padded(20.0).meets(&Extent::new(0.0, 0.0, 0.0, 0.0));
            assert!(!inside(own.padded(-0.5)) || plan.is_printed(place), "{}", place.label());
            assert!(
                inside(own.padded(0.5)) || is_origin || !plan.is_printed(place),
                "{}",
                place.label()
            );
        }
    }

    #[test]
    fn too_many_sheets_are_refused_quickly() {
        let far = drawing(&[(-9_000.0, -9_000.0, 9_000.0, 9_000.0), (-9_000.0, 0.0, 9_000.0, 0.0)]);
        let error = Plan::of(&far, Tiling::default()).expect_err("too many");
        assert_eq!(error, TemplateError::Sheets { most: MOST_SHEETS });
        let error = Plan::single(&far).expect_err("too large");
        assert!(matches!(error, TemplateError::LargeSheet { .. }));
        for overlap_mm in [0.0, 5.9, 41.0, f64::NAN] {
            let tiling = Tiling { overlap_mm, ..Tiling::default() };
            let error = Plan::of(&drawing(&[(0.0, 0.0, 9.0, 0.0)]), tiling).expect_err("overlap");
            assert!(matches!(error, TemplateError::Overlap { .. }), "{overlap_mm}");
        }
    }
}
