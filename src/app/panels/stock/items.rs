//! The items of a stock list, as a table to type into.

use leptos::prelude::*;
use web_sys::{HtmlInputElement, KeyboardEvent};

use super::desk::Desk;
use crate::app::browser;
use crate::app::rows::{STOCK_CELLS, StockCell, is_wanted, stock_problem, stock_text};
use crate::app::widgets::button::button;
use crate::app::widgets::list::{list, part, while_so, words};
use crate::design::document::MaterialSpec;
use crate::design::make_up_said::line_said;
use crate::design::stock::bundle_of;
use crate::words::papers::titled;
use crate::words::{Words, stock_page as say};

/// How many items are shown at first, and how many more each time.
const SHOWN: usize = 60;
/// How many of those shown at first are built in one frame: all at once would hold the page up for a tenth of a second.
const SLICE: usize = 8;
/// How many strings a bundle is first taken to hold.
const USUAL_BUNDLE: u32 = 12;

/// The table with what is above and below it.
pub fn view(desk: Desk) -> AnyView {
    let room = RwSignal::new(SLICE);
    grow(room);
    let materials = Memo::new(move |_| desk.materials());
    let wanted = Memo::new(move |_| -> Vec<usize> {
        let words = desk.filter.get();
        desk.list.with(|list| {
            let items = list.items.iter().enumerate();
            items.filter(|(_, item)| is_wanted(item, &words)).map(|(row, _)| row).collect()
        })
    });
    let rows = Memo::new(move |_| (desk.turn.get(), wanted.get(), room.get()));
    let parts = move || {
        let (turn, wanted, room) = rows.get();
        let row = |row: usize| part(&(turn, row), move || line(desk, row, materials));
        wanted.into_iter().take(room).map(row).collect()
    };
    let count = move || {
        let (all, found) = (desk.list.with(|list| list.items.len()), wanted.with(Vec::len));
        match (all, found) {
            (0, _) => say::EMPTY.into(),
            (all, found) if all == found => say::items(&all),
            (all, found) => say::items_of(&all, &found),
        }
    };
    let add = move || {
        room.set(usize::MAX);
        if let Some(row) = desk.add() {
            request_animation_frame(move || browser::focus(&cell_id(row, 0)));
        }
    };
    let heads: Vec<AnyView> = STOCK_CELLS
        .iter()
        .map(|(cell, head)| {
            let (after, before) = extra_heads(*cell);
            view! { {before.map(th)} {th(*head)} {after.map(th)} }.into_any()
        })
        .collect();
    view! {
        <div class="stock-tools">
            <label class="field">
                <span>{say::SHOW_ONLY.said()}</span>
                <input
                    type="text"
                    id="stock-filter"
                    autocomplete="off"
                    placeholder=say::SHOW_ONLY_HINT.said()
                    prop:value=move || desk.filter.get()
                    on:input=move |event| desk.filter.set(event_target_value(&event))
                />
            </label>
            <span class="hint" role="status">{words(count)}</span>
            {button("tool", "stock-add", "", say::ADD_ITEM.said(), add)}
        </div>
        <div class="stock-table" tabindex="0" role="region" aria-label=say::ITEMS_TABLE.said()>
            <table class="number-table">
                <thead><tr>{heads}<th scope="col">{say::ITEM.said()}</th></tr></thead>
                <tbody>{list(parts)}</tbody>
            </table>
        </div>
        {while_so(
            move || rows.with(|(_, wanted, room)| wanted.len() > SHOWN.max(*room)),
            move || view! { <p>{button("tool", "stock-more", "", say::MORE_ITEMS.said(), move || room.update(|room| *room += SHOWN))}</p> }.into_any(),
        )}
    }
    .into_any()
}

/// Makes room for those that are shown at first, some in each frame.
fn grow(room: RwSignal<usize>) {
    request_animation_frame(move || {
        // The window may be closed again, or room for all may have been made.
        if room.try_get_untracked().is_some_and(|now| now < SHOWN) {
            room.update(|room| *room = SHOWN.min(*room + SLICE));
            grow(room);
        }
    });
}

fn th(head: Words) -> AnyView {
    view! { <th scope="col">{head.said()}</th> }.into_any()
}

/// Columns that are chosen and not typed: after which cell, and before which.
const fn extra_heads(cell: StockCell) -> (Option<Words>, Option<Words>) {
    match cell {
        StockCell::PackLength => (None, Some(say::SOLD_AS)),
        StockCell::Currency => (Some(say::IN_STOCK), None),
        _ => (None, None),
    }
}

fn cell_id(row: usize, at: usize) -> String {
    format!("stock-{row}-{at}")
}

/// What an item is called for those who do not see the table.
fn called(desk: Desk, row: usize) -> String {
    let make_up = desk.list.with(|list| list.items.get(row).map(|item| line_said(&item.make_up)));
    match make_up.unwrap_or_default() {
        make_up if make_up.is_empty() => say::item_called(&(row + 1)),
        make_up => make_up,
    }
}

fn line(desk: Desk, row: usize, materials: Memo<Vec<MaterialSpec>>) -> AnyView {
    let drafts: Vec<Draft> = STOCK_CELLS
        .iter()
        .map(|_| Draft { typed: RwSignal::new(None), why: RwSignal::new(String::new()) })
        .collect();
    let problem = move |at: usize, draft: Draft| {
        let why = draft.why.get();
        if !why.is_empty() {
            return why;
        }
        desk.list.with(|list| {
            let item = list.items.get(row);
            materials.with(|materials| {
                item.map(|item| stock_problem(item, STOCK_CELLS[at].0, materials))
                    .unwrap_or_default()
            })
        })
    };
    let mut cells: Vec<AnyView> = Vec::new();
    let mut said: Vec<AnyView> = Vec::new();
    for (at, draft) in drafts.into_iter().enumerate() {
        let problem = Memo::new(move |_| problem(at, draft));
        if STOCK_CELLS[at].0 == StockCell::PackLength {
            cells.push(sold_as(desk, row));
        }
        cells.push(cell(desk, (row, at), draft, problem));
        if STOCK_CELLS[at].0 == StockCell::Currency {
            cells.push(in_stock(desk, row));
        }
        let sentence = move || match problem.get() {
            text if text.is_empty() => text,
            text => titled(&STOCK_CELLS[at].1, &text),
        };
        said.push(view! { <span class="wrong">{words(sentence)}</span> }.into_any());
    }
    let label = move || say::remove_item(&called(desk, row));
    let width = STOCK_CELLS.len() + 3;
    let remove = move |_| {
        desk.remove(row);
        request_animation_frame(move || browser::focus("stock-add"));
    };
    view! {
        <tr>
            {cells}
            <td><button type="button" class="quiet" aria-label=label on:click=remove>{say::REMOVE.said()}</button></td>
        </tr>
        <tr class="said"><td colspan=width><span id=format!("stock-said-{row}")>{said}</span></td></tr>
    }
    .into_any()
}

/// What is being typed into a cell, and why it is not kept.
#[derive(Clone, Copy)]
struct Draft {
    typed: RwSignal<Option<String>>,
    why: RwSignal<String>,
}

fn cell(desk: Desk, (row, at): (usize, usize), draft: Draft, problem: Memo<String>) -> AnyView {
    let (kind, head) = STOCK_CELLS[at];
    let held = move || {
        desk.list
            .with(|list| list.items.get(row).map(|item| stock_text(item, kind)).unwrap_or_default())
    };
    let value = move || draft.typed.get().unwrap_or_else(held);
    let keep = move || {
        // A row that goes with the keyboard in it is left when it is gone.
        let Some(Some(typed)) = draft.typed.try_get_untracked() else { return };
        match desk.put(row, kind, &typed) {
            Ok(()) => {
                draft.why.set(String::new());
                draft.typed.set(None);
            }
            Err(why) => draft.why.set(why),
        }
    };
    let keys = move |event: KeyboardEvent| match event.key().as_str() {
        "Escape" if draft.typed.with_untracked(Option::is_some) => {
            event.prevent_default();
            event.stop_propagation();
            draft.typed.set(None);
            draft.why.set(String::new());
        }
        "Enter" => {
            event.prevent_default();
            event.stop_propagation();
            keep();
        }
        "ArrowUp" if row > 0 => {
            event.prevent_default();
            browser::focus(&cell_id(row - 1, at));
        }
        "ArrowDown" => {
            event.prevent_default();
            browser::focus(&cell_id(row + 1, at));
        }
        _ => {}
    };
    view! {
        <td class=if at == 0 { "wide" } else { "" }>
            <input
                type="text"
                autocomplete="off"
                id=cell_id(row, at)
                aria-label=move || say::cell_of(&head, &called(desk, row))
                aria-describedby=format!("stock-said-{row}")
                aria-invalid=move || problem.with(|text| !text.is_empty()).then_some("true")
                prop:value=value
                on:input=move |event| draft.typed.set(Some(event_target_value(&event)))
                on:blur=move |_| keep()
                on:keydown=keys
            />
        </td>
    }
    .into_any()
}

fn sold_as(desk: Desk, row: usize) -> AnyView {
    let kind = Memo::new(move |_| {
        desk.list.with(|list| match list.items.get(row) {
            Some(item) if item.single && bundle_of(item) > 1 => "bundle",
            Some(item) if item.single => "single",
            _ => "coil",
        })
    });
    let set = move |event| {
        let to = event_target_value(&event);
        desk.change_item(row, |item| {
            item.single = to != "coil";
            item.bundle = if to == "bundle" { USUAL_BUNDLE } else { 0 };
        });
    };
    let ways = [("coil", say::COIL), ("single", say::SINGLE), ("bundle", say::BUNDLE)];
    let options: Vec<AnyView> = ways
        .map(|(this, words)| {
            view! { <option value=this prop:selected=move || kind.get() == this>{words.said()}</option> }
                .into_any()
        })
        .into();
    let count = move || {
        let held = move || {
            desk.list.with(|list| list.items.get(row).map_or(0, |item| item.bundle).to_string())
        };
        let set = move |event| {
            // What is no number of strings gives way to the one that was there.
            let typed = event_target_value(&event).trim().parse::<u32>();
            if !typed
                .is_ok_and(|count| count > 1 && desk.change_item(row, |item| item.bundle = count))
            {
                event_target::<HtmlInputElement>(&event).set_value(&held());
            }
        };
        view! {
            <input
                type="text"
                inputmode="numeric"
                class="bundle"
                aria-label=move || say::bundle_of(&called(desk, row))
                prop:value=held
                on:change=set
            />
        }
        .into_any()
    };
    view! {
        <td class="sold">
            <select aria-label=move || say::item_sold_as(&called(desk, row)) on:change=set>{options}</select>
            {while_so(move || kind.get() == "bundle", count)}
        </td>
    }
    .into_any()
}

fn in_stock(desk: Desk, row: usize) -> AnyView {
    let has = move || desk.list.with(|list| list.items.get(row).is_some_and(|item| !item.sold_out));
    let turn = move |_| {
        desk.change_item(row, |item| item.sold_out = !item.sold_out);
    };
    view! {
        <td class="mid">
            <input
                type="checkbox"
                aria-label=move || say::item_had(&called(desk, row))
                prop:checked=has
                on:change=turn
            />
        </td>
    }
    .into_any()
}
