//! The thickness of the soundboard from place to place.

use leptos::prelude::*;

use super::making::percent;
use super::shape::Form;
use crate::app::widgets::button::button;
use crate::app::widgets::list::{while_so, words};
use crate::app::widgets::number_table::NumberTable;
use crate::design::document::GeometrySpec;
use crate::design::settings::NumberRow;
use crate::design::thickness_map::{self, MM, PERCENT, Row, put, read};
use crate::design::typed::cut;
use crate::engine::structure::plate::MOST_ROWS;
use crate::words::{Words, drawing as say};

const fn mm(label: Words) -> NumberRow {
    NumberRow::new(label, Words::plain("mm"), MM)
}

static COLUMNS: [NumberRow; 4] =
    [percent(say::MAP_AT, PERCENT), mm(say::MAP_MIDDLE), mm(say::MAP_HALF), mm(say::MAP_SIDE)];

fn rows_of(geometry: &GeometrySpec) -> Vec<Row> {
    read(thickness_map::text(geometry)).unwrap_or_default()
}

/// The rows, and what is typed that cannot be used.
pub(super) fn thicknesses(form: Form) -> AnyView {
    let text = form.of(|geometry| thickness_map::text(geometry).to_owned());
    let rows = Signal::derive(move || {
        let rows = text.with(|text: &String| read(text).unwrap_or_default());
        rows.iter().map(|row| row.to_vec()).collect::<Vec<_>>()
    });
    let names = Signal::derive(move || {
        rows.with(|rows| (1..=rows.len()).map(|row| row.to_string()).collect())
    });
    let set = move |rows: Vec<Vec<f64>>| {
        let rows: Vec<Row> = rows.iter().filter_map(|row| row.as_slice().try_into().ok()).collect();
        form.change(|geometry| put(geometry, &rows));
    };
    let add = move || {
        let mut rows = rows_of(&form.now());
        if rows.len() < MOST_ROWS {
            rows.push(next(&form.now(), &rows));
            form.step(|geometry| put(geometry, &rows));
        } else {
            form.store.hint(&say::most_map_rows(&MOST_ROWS));
        }
    };
    let table = NumberTable {
        id: "thickness",
        title: say::BOARD_MAP.said(),
        of: say::MAP_ROW.said(),
        columns: &COLUMNS,
        rows,
        names,
        set: Callback::new(set),
        count: Some((0, MOST_ROWS)),
        here: RwSignal::new(None),
    };
    let has_some = move || rows.with(|rows| !rows.is_empty());
    let unusable = move || text.with(|text: &String| read(text).is_none());
    let told = move || {
        let typed = text.with(|text: &String| cut(text));
        view! { <p class="hint">{words(move || say::map_unusable(&typed))}</p> }.into_any()
    };
    view! {
        {while_so(has_some, move || table.view())}
        {while_so(unusable, told)}
        <div class="window-actions">
            {button("tool", "add-thickness", "", say::ADD_MAP_ROW.said(), add)}
        </div>
        <p class="hint">{say::MAP_HINT.said()}</p>
    }
    .into_any()
}

/// A row where there is none yet, as thick as the board is: at its lower end, at its upper, then between.
fn next(geometry: &GeometrySpec, rows: &[Row]) -> Row {
    let taken = |at: f64| rows.iter().any(|row| row[0] == at);
    let at = [0.0, 100.0, 50.0, 25.0, 75.0].into_iter().find(|at| !taken(*at)).unwrap_or(50.0);
    let board = &geometry.board;
    let (low, high) = (board.bass_thickness_mm, board.treble_thickness_mm);
    let middle = (low + at / 100.0 * (high - low)).clamp(MM.0, MM.1);
    // To a tenth, as it is planed.
    let round = |mm: f64| (10.0 * mm.clamp(MM.0, MM.1)).round() / 10.0;
    let share = geometry.bars.side_percent;
    let side = middle * if share > 0.0 { share / 100.0 } else { 1.0 };
    [at, round(middle), round(0.5 * (middle + side)), round(side)]
}
