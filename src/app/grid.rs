//! Where the cursor stands in the string chart and what is selected. Plain data, no page.

use std::ops::RangeInclusive;

use crate::design::document::Design;
use crate::design::edit::Column;
use crate::design::figures::{BY_PLACE, Column as Of, ROWS, row};
use crate::engine::figure::Figure;

/// A column of the chart on the page, from left to right.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Shown {
    /// One that is typed into.
    Typed(Column),
    /// One that is computed.
    Figure(Figure),
}

/// The columns that are typed into, each before the figures of this place and those that follow.
const TYPED: [(u8, Column); 5] = [
    (0, Column::Note),
    (0, Column::Length),
    (0, Column::MakeUp),
    (0, Column::Gauge),
    (50, Column::OrderCode),
];

/// How many columns there are.
const COUNT: usize = {
    let (mut count, mut at) = (TYPED.len(), 0);
    while at < ROWS.len() {
        count += !matches!(ROWS[at].column, Of::Never) as usize;
        at += 1;
    }
    count
};

/// Every column of the chart, from left to right. Those that are typed into stand before those that
/// only some harps have, so that the place of a typed column is the same on every harp.
pub const SHOWN: [Shown; COUNT] = {
    let mut all = [Shown::Typed(Column::Note); COUNT];
    let (mut count, mut typed, mut at) = (0, 0, 0);
    while at < BY_PLACE.len() {
        let row = row(BY_PLACE[at]);
        while typed < TYPED.len() && TYPED[typed].0 <= row.place {
            all[count] = Shown::Typed(TYPED[typed].1);
            (count, typed) = (count + 1, typed + 1);
        }
        if !matches!(row.column, Of::Never) {
            let always = matches!(row.column, Of::Always);
            assert!(always || typed == TYPED.len(), "only some harps have this column");
            all[count] = Shown::Figure(row.figure);
            count += 1;
        }
        at += 1;
    }
    all
};

/// The columns of a design: all of [`SHOWN`] but the places of levers and discs that no string has.
pub fn shown(design: &Design) -> Vec<Shown> {
    SHOWN.into_iter().filter(|shown| is_there(design, *shown)).collect()
}

/// Whether a design has a column: those of levers and discs only where some string has one.
pub fn is_there(design: &Design, shown: Shown) -> bool {
    let usual = design.mechanism.kind;
    match shown {
        Shown::Figure(figure) => match row(figure).column {
            Of::Fitted(kinds) => {
                let mut all = design.strings.iter().map(|string| string.mechanism.unwrap_or(usual));
                all.any(|kind| kinds.contains(&kind))
            }
            Of::Always => true,
            Of::Never => false,
        },
        Shown::Typed(_) => true,
    }
}

impl Shown {
    /// The column of the document that is typed here.
    pub const fn typed(self) -> Option<Column> {
        match self {
            Self::Typed(column) => Some(column),
            Self::Figure(_) => None,
        }
    }
}

/// A cell: row and index into the columns that the chart shows, both from 0.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Cell {
    pub row: usize,
    pub column: usize,
}

/// The cursor, and the other corner of the selected block.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Selection {
    /// Where the cursor stands.
    pub cursor: Cell,
    /// The corner where the selection began; the cursor itself when one cell is selected.
    pub anchor: Cell,
}

/// A movement of the cursor.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Step {
    Up,
    Down,
    Left,
    Right,
    PageUp,
    PageDown,
    RowStart,
    RowEnd,
    ChartStart,
    ChartEnd,
}

/// Rows that a page up or down moves.
const PAGE: usize = 12;

impl Selection {
    /// One cell.
    pub const fn at(row: usize, column: usize) -> Self {
        let cell = Cell { row, column };
        Self { cursor: cell, anchor: cell }
    }

    /// The selected rows.
    pub fn rows(self) -> RangeInclusive<usize> {
        self.cursor.row.min(self.anchor.row)..=self.cursor.row.max(self.anchor.row)
    }

    /// The selected columns.
    pub fn columns(self) -> RangeInclusive<usize> {
        self.cursor.column.min(self.anchor.column)..=self.cursor.column.max(self.anchor.column)
    }

    /// The selection after a movement in a chart of `rows` rows and `columns` columns; with `extend`
    /// the anchor stays.
    pub fn moved(self, step: Step, rows: usize, columns: usize, extend: bool) -> Self {
        let last = Cell { row: rows.saturating_sub(1), column: columns.saturating_sub(1) };
        let Cell { row, column } = self.cursor;
        let cursor = match step {
            Step::Up => Cell { row: row.saturating_sub(1), column },
            Step::Down => Cell { row: row + 1, column },
            Step::PageUp => Cell { row: row.saturating_sub(PAGE), column },
            Step::PageDown => Cell { row: row + PAGE, column },
            Step::Left => Cell { row, column: column.saturating_sub(1) },
            Step::Right => Cell { row, column: column + 1 },
            Step::RowStart => Cell { row, column: 0 },
            Step::RowEnd => Cell { row, column: last.column },
            Step::ChartStart => Cell::default(),
            Step::ChartEnd => last,
        };
        let cursor = Cell { row: cursor.row.min(last.row), column: cursor.column.min(last.column) };
        Self { cursor, anchor: if extend { self.anchor } else { cursor } }
    }

    /// The next cell that can be typed into, to the right or the left, going on in the next or the
    /// previous row; `None` at the end of the chart, so that the tab key can leave it.
    pub fn next_typed(self, rows: usize, columns: &[Shown], forward: bool) -> Option<Self> {
        let count = columns.len();
        let here = self.cursor.row * count + self.cursor.column;
        let typed = |place: &usize| columns[place % count].typed().is_some();
        let place = if forward {
            (here + 1..rows * count).find(typed)?
        } else {
            (0..here).rev().find(typed)?
        };
        Some(Self::at(place / count, place % count))
    }

    /// The selection inside a chart of `rows` rows and `columns` columns.
    pub fn within(self, rows: usize, columns: usize) -> Self {
        let inside = |cell: Cell| Cell {
            row: cell.row.min(rows.saturating_sub(1)),
            column: cell.column.min(columns.saturating_sub(1)),
        };
        Self { cursor: inside(self.cursor), anchor: inside(self.anchor) }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::design::document::{MechanismKind, StringSpec};

    const COLUMNS: usize = SHOWN.len();

    #[test]
    fn the_cursor_stays_inside_the_chart() {
        for step in [Step::Up, Step::Left, Step::PageUp, Step::RowStart, Step::ChartStart] {
            assert_eq!(
                Selection::default().moved(step, 5, COLUMNS, false),
                Selection::default(),
                "{step:?}"
            );
        }
        let end = Selection::at(4, SHOWN.len() - 1);
        for step in [Step::Down, Step::Right, Step::PageDown, Step::RowEnd, Step::ChartEnd] {
            assert_eq!(end.moved(step, 5, COLUMNS, false), end, "{step:?}");
        }
        assert_eq!(Selection::default().moved(Step::Down, 0, COLUMNS, false), Selection::default());
    }

    #[test]
    fn a_block_grows_from_its_anchor_and_any_other_step_drops_it() {
        let block = Selection::at(2, 3).moved(Step::Down, 9, COLUMNS, true).moved(
            Step::Right,
            9,
            COLUMNS,
            true,
        );
        assert_eq!((block.rows(), block.columns()), (2..=3, 3..=4));
        let back = Selection::at(2, 3).moved(Step::Up, 9, COLUMNS, true);
        assert_eq!(back.rows(), 1..=2);
        let alone = block.moved(Step::Up, 9, COLUMNS, false);
        assert_ne!(block.cursor, block.anchor);
        assert_eq!(alone.cursor, alone.anchor);
    }

    #[test]
    fn the_tab_key_visits_what_can_be_typed_and_then_leaves() {
        let mut place = Selection::default();
        let mut visited = vec![place.cursor.column];
        while let Some(next) = place.next_typed(1, &SHOWN, true) {
            place = next;
            visited.push(place.cursor.column);
        }
        let typed: Vec<usize> =
            (0..SHOWN.len()).filter(|index| SHOWN[*index].typed().is_some()).collect();
        assert_eq!(visited, typed);
        assert_eq!(place.next_typed(2, &SHOWN, true), Some(Selection::at(1, 0)));
        assert_eq!(Selection::at(1, 0).next_typed(2, &SHOWN, false).unwrap().cursor.row, 0);
        assert_eq!(Selection::default().next_typed(2, &SHOWN, false), None);
    }

    #[test]
    fn a_selection_follows_a_chart_that_shrinks() {
        assert_eq!(Selection::at(40, 2).within(10, 25), Selection::at(9, 2));
        assert_eq!(Selection::at(4, 24).within(10, 23), Selection::at(4, 22));
        assert_eq!(Selection::at(40, 2).within(0, 25), Selection::at(0, 2));
    }

    #[test]
    fn only_what_some_string_has_is_a_column() {
        let columns = |harp, own: &[Option<MechanismKind>]| {
            let mut design = Design::default();
            design.mechanism.kind = harp;
            let string =
                |mechanism: &_| StringSpec { mechanism: *mechanism, ..StringSpec::default() };
            design.strings = own.iter().map(string).collect();
            let all = shown(&design);
            let has = |figure| all.contains(&Shown::Figure(figure));
            [has(Figure::Lever), has(Figure::DiscNatural), has(Figure::DiscSharp)]
        };
        use MechanismKind::{DoubleDisc, Lever, None as Bare, SingleDisc};
        assert_eq!(columns(Bare, &[None, None]), [false, false, false]);
        assert_eq!(columns(Lever, &[None, Some(Bare)]), [true, false, false]);
        assert_eq!(columns(Lever, &[Some(Bare), Some(SingleDisc)]), [false, true, false]);
        assert_eq!(columns(Bare, &[Some(Lever), Some(DoubleDisc)]), [true, true, true]);
        assert_eq!(columns(DoubleDisc, &[]), [false, false, false]);
    }

    #[test]
    fn what_is_typed_has_its_place_on_every_harp() {
        let all = shown(&Design::default());
        for (place, shown) in SHOWN.iter().enumerate().filter(|(_, shown)| shown.typed().is_some())
        {
            assert_eq!(all[place], *shown);
        }
    }
}
