//! From string to string: uniform, by zones, or string by string.

use leptos::prelude::*;

use super::Form;
use crate::app::frame::Frame;
use crate::app::panels::form::number;
use crate::app::widgets::button::button;
use crate::app::widgets::list::{while_so, words};
use crate::app::widgets::number_table::NumberTable;
use crate::design::display;
use crate::design::document::{GapsSpec, MOST_STRINGS, MeasuredSpec, SpacingSpec};
use crate::design::gaps::{GapsKind, measured_as, moved_mm, told_as, widths_mm};
use crate::design::settings::{GAP, GAP_NUMBER, NumberRow, Setting};
use crate::engine::geometry::loads;
use crate::engine::order::sort;
use crate::engine::units::Length;
use crate::words::{Words, drawing as say, signed};

/// The kinds of spacing, with the words of a list.
const KINDS: [(GapsKind, &str, Words); 3] = [
    (GapsKind::Uniform, "uniform", say::SPACING_ALIKE),
    (GapsKind::Zones, "zones", say::SPACING_ZONES),
    (GapsKind::Each, "each", say::SPACING_EACH),
];

/// How the spacing may be measured.
const MEASURED: [(MeasuredSpec, &str, Words); 2] = [
    (MeasuredSpec::Square, "square", say::MEASURED_SQUARE),
    (MeasuredSpec::AlongBoard, "board", say::MEASURED_BOARD),
];

static ZONE: [NumberRow; 2] = [GAP_NUMBER, GAP];
static EACH: [NumberRow; 1] = [GAP];

/// The fields of the spacing.
#[component]
pub(super) fn Spacing(form: Form) -> impl IntoView {
    // The spacing before it was measured in another way, with numbers that were kept.
    let before = RwSignal::new(None::<SpacingSpec>);
    let here = RwSignal::new(None::<usize>);
    let set_kind = move |kind| {
        let spec = form.now().spacing.gaps;
        let strings = form.store.count_now();
        let next = told_as(&spec, kind, strings);
        let words = told(&spec, &next, strings);
        form.store.tell(form.try_step(|geometry| geometry.spacing.gaps = next), &words);
    };
    let set_measured = move |measured| {
        let spacing = form.now().spacing;
        form.step(|geometry| geometry.spacing.measured = measured);
        before.set((spacing.measured != measured).then_some(spacing));
    };
    let kept = move || {
        before.with(|before| {
            form.store.design.with(|design| {
                let now = &design.geometry.spacing;
                before.as_ref().is_some_and(|b| b.gaps == now.gaps && b.measured != now.measured)
            })
        })
    };
    let convert = move || {
        if let Some(spacing) = before.get_untracked() {
            let outcome = form.try_step(|geometry| {
                let measured = geometry.spacing.measured;
                geometry.spacing = measured_as(&spacing, measured, geometry.board_angle_deg);
            });
            form.store.tell(outcome, say::NUMBERS_CONVERTED.said());
        }
    };
    let offer = move || {
        view! {
            <p class="hint">{say::NUMBERS_STAYED.said()}</p>
            {button("tool", "convert-spacing", "", say::CONVERT.said(), convert)}
        }
        .into_any()
    };
    view! {
        <fieldset class="spacing">
            <legend>{say::SPACING.said()}</legend>
            {form.choice(say::FROM_STRING_TO_STRING, &KINDS, |g| GapsKind::of(&g.spacing.gaps), set_kind)}
            {form.choice(say::MEASURED, &MEASURED, |g| g.spacing.measured, set_measured)}
            {while_so(kept, offer)}
            {widths(form, here)}
            <p class="hint">{words(move || both(form, here.get()))}</p>
            <p class="hint">{words(move || least_room(form))}</p>
        </fieldset>
    }
}

/// What another kind of spacing does to the harp.
fn told(before: &GapsSpec, after: &GapsSpec, strings: usize) -> String {
    let moved = moved_mm(before, after, strings);
    let now = match after {
        GapsSpec::UniformMm(width) => say::now_alike(&signed(&width.to_string())),
        GapsSpec::ZonesMm(zones) => say::now_zones(&zones.len()),
        GapsSpec::EachMm(widths) => say::now_each(&widths.len()),
    };
    if moved < 0.05 {
        say::strings_stay(&now)
    } else {
        say::strings_move(&display::decimals(moved, 1), &now)
    }
}

/// The widths, in the way that suits the kind of spacing.
fn widths(form: Form, here: RwSignal<Option<usize>>) -> AnyView {
    let kind = Memo::new(move |_| {
        form.store.design.with(|design| match design.geometry.spacing.gaps {
            GapsSpec::UniformMm(_) => 0_u8,
            GapsSpec::ZonesMm(_) => 1,
            GapsSpec::EachMm(_) => 2,
        })
    });
    (move || match kind.get() {
        0 => number(form.store, Setting::Gap),
        1 => zones(form, here),
        _ => each(form, here),
    })
    .into_any()
}

fn zones(form: Form, here: RwSignal<Option<usize>>) -> AnyView {
    let rows = form.of(|geometry| match &geometry.spacing.gaps {
        GapsSpec::ZonesMm(zones) => {
            zones.iter().map(|(at, width)| vec![f64::from(*at), *width]).collect()
        }
        _ => Vec::new(),
    });
    let names = Signal::derive(move || {
        rows.get().iter().map(|row| between(form, counted(row.first().copied()))).collect()
    });
    let set = move |rows: Vec<Vec<f64>>| {
        form.change(|geometry| geometry.spacing.gaps = GapsSpec::ZonesMm(as_zones(&rows)));
    };
    let add = move || {
        let mut rows = rows.get_untracked();
        let widths = widths_mm(&form.now().spacing.gaps, form.store.count_now());
        if let Some(gap) = free_gap(&rows, widths.len())
            && let Some(width) = widths.get(gap - 1)
        {
            rows.push(vec![f64::from(u32::try_from(gap).unwrap_or(1)), *width]);
            sort(&mut rows, |one, other| one[0] > other[0]);
            form.step(|geometry| geometry.spacing.gaps = GapsSpec::ZonesMm(as_zones(&rows)));
        } else {
            form.store.hint(say::ALL_ZONED.said());
        }
    };
    let table = NumberTable {
        id: "zone",
        title: say::ZONES.said(),
        of: say::BETWEEN.said(),
        columns: &ZONE,
        rows,
        names,
        set: Callback::new(set),
        count: Some((1, MOST_STRINGS)),
        here,
    };
    view! {
        {table.view()}
        <div class="window-actions">{button("tool", "add-zone", "", say::ADD_ZONE.said(), add)}</div>
        <p class="hint">{say::ZONES_HINT.said()}</p>
    }
    .into_any()
}

fn each(form: Form, here: RwSignal<Option<usize>>) -> AnyView {
    let rows = Signal::derive(move || {
        let count = form.store.count();
        form.store.design.with(|design| {
            let widths = widths_mm(&design.geometry.spacing.gaps, count);
            widths.into_iter().map(|width| vec![width]).collect()
        })
    });
    let names = Signal::derive(move || {
        (1..form.store.count()).map(|gap| format!("{gap}: {}", between(form, gap))).collect()
    });
    let set = move |rows: Vec<Vec<f64>>| {
        let widths = rows.iter().filter_map(|row| row.first().copied()).collect();
        form.change(|geometry| geometry.spacing.gaps = GapsSpec::EachMm(widths));
    };
    let table = NumberTable {
        id: "gap",
        title: say::WIDTHS.said(),
        of: say::GAP.said(),
        columns: &EACH,
        rows,
        names,
        set: Callback::new(set),
        count: None,
        here,
    };
    view! {
        <div class="long-table" tabindex="-1">{table.view()}</div>
        <p class="hint">{say::WIDTHS_HINT.said()}</p>
    }
    .into_any()
}

fn as_zones(rows: &[Vec<f64>]) -> Vec<(u32, f64)> {
    let zone = |row: &Vec<f64>| {
        let at = u32::try_from(counted(row.first().copied())).unwrap_or(1);
        Some((at, row.get(1).copied()?))
    };
    rows.iter().filter_map(zone).collect()
}

/// A number of a gap that was typed as a whole number.
fn counted(number: Option<f64>) -> usize {
    let number = number.unwrap_or(1.0);
    (1..MOST_STRINGS).find(|gap| *gap as f64 >= number).unwrap_or(1)
}

/// The gap in the middle of the longest run without a zone.
fn free_gap(rows: &[Vec<f64>], gaps: usize) -> Option<usize> {
    let taken = |gap: usize| rows.iter().any(|row| counted(row.first().copied()) == gap);
    let mut best = (0, 0);
    let mut from = 1;
    for gap in 1..=gaps + 1 {
        if gap > gaps || taken(gap) {
            if gap - from > best.1 {
                best = (from, gap - from);
            }
            from = gap + 1;
        }
    }
    (best.1 > 0).then(|| best.0 + (best.1 - 1) / 2)
}

/// The notes of the two strings that a gap lies between.
fn between(form: Form, gap: usize) -> String {
    form.store.analysis.with(|analysis| {
        let count = analysis.strings.len();
        let note = |from_bass: usize| {
            let figures = analysis.strings.get(count.checked_sub(from_bass)?)?;
            Some(
                figures
                    .note
                    .map_or_else(|| say::string_number(&figures.number), |note| note.printed()),
            )
        };
        match (note(gap), note(gap + 1)) {
            (Some(low), Some(high)) => format!("{low}\u{2013}{high}"),
            _ => say::NO_STRINGS.into(),
        }
    })
}

/// Where two neighbours that are both plucked come closest.
fn least_room(form: Form) -> String {
    let store = form.store;
    let (analysis, resolved, band) =
        (store.analysis.read(), store.resolved.read(), Frame::here().band.read());
    let loads = loads(&band, &resolved.harp, &analysis, &resolved.geometry);
    let mut least: Option<(f64, usize)> = None;
    for (room, figures) in loads.rooms.iter().zip(&analysis.strings) {
        let Ok(room) = room else { continue };
        let mm = room.plucked.to_mm();
        if least.is_none_or(|(narrow, _)| mm < narrow) {
            least = Some((mm, figures.number));
        }
    }
    let Some((mm, upper)) = least else { return String::new() };
    say::least_room(&upper, &display::decimals(mm, 1), &(upper + 1))
}

/// The gap above a string in both measures: of the row with the keyboard, or of the string under the cursor.
fn both(form: Form, row: Option<usize>) -> String {
    let store = form.store;
    let (analysis, resolved) = (store.analysis.read(), store.resolved.read());
    let geometry = &resolved.geometry;
    let count = analysis.strings.len();
    let kind = store.design.with(|design| GapsKind::of(&design.geometry.spacing.gaps));
    let gap = row.and_then(|row| match (kind, &geometry.gaps) {
        (GapsKind::Each, _) => Some(row + 1),
        _ => store.design.with(|design| match &design.geometry.spacing.gaps {
            GapsSpec::ZonesMm(zones) => usize::try_from(zones.get(row)?.0).ok(),
            _ => None,
        }),
    });
    let row = match gap.and_then(|gap| count.checked_sub(gap)) {
        Some(row) => row,
        None => store.hover.get().unwrap_or_else(|| store.selection.get().cursor.row),
    };
    let band = Frame::here().band.read();
    let Some((hole, figures)) = band.holes.get(row).zip(analysis.strings.get(row)) else {
        return String::new();
    };
    let name = display::string_name(figures);
    let mm = |length: Length| display::decimals(length.to_mm(), 1);
    match hole.gap {
        Some(gap) => say::gap_above(&mm(gap.along_board), &mm(gap.square), &name),
        None => say::is_highest(&name),
    }
}
