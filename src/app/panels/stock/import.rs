//! A table of a spreadsheet on its way into a stock list: which column is what, and what is wrong.

use leptos::prelude::*;

use super::desk::Desk;
use crate::app::widgets::button::button;
use crate::app::widgets::fields::TextField;
use crate::app::widgets::list::{either, list, part, words};
use crate::design::cells::TableError;
use crate::design::letters::capital;
use crate::design::make_up_said::line_shown;
use crate::design::order::{money_words, pack_words};
use crate::design::stock::table::{Column, Columns, Field, Import, Size, import, propose};
use crate::design::stock::{StockList, merge};
use crate::design::table::some_of;
use crate::engine::pitch::naming::shown;
use crate::words::stock_page as say;

/// How many of the good lines are shown.
const PREVIEW: usize = 5;

/// First the table, then its columns.
pub fn view(desk: Desk) -> AnyView {
    let columns = RwSignal::new(Columns::new());
    let read = move || match desk.text.with_untracked(|text| propose(text)) {
        Ok(proposed) => {
            desk.wrong.set(String::new());
            columns.set(proposed);
        }
        Err(error) => desk.complain(format!("{}.", capital(&error.to_string()))),
    };
    if desk.text.with_untracked(|text| !text.trim().is_empty()) {
        read();
    }
    either(
        move || columns.with(Vec::is_empty),
        move || paste(desk, Callback::new(move |()| read())),
        move || matching(desk, columns),
    )
}

fn paste(desk: Desk, read: Callback<()>) -> AnyView {
    view! {
        <label class="field">
            <span>{say::PASTE.said()}</span>
            <textarea
                id="stock-table-text"
                rows="10"
                spellcheck="false"
                placeholder="material,gauge,order code,price\nnylon,0.81,NY-81,12.50"
                prop:value=move || desk.text.get()
                on:input=move |event| desk.text.set(event_target_value(&event))
            ></textarea>
        </label>
        <p class="window-actions">
            {button("tool main", "stock-read", "", say::READ.said(), move || read.run(()))}
            {button("tool", "", "", say::BACK.said(), move || desk.importing.set(false))}
        </p>
    }
    .into_any()
}

fn matching(desk: Desk, columns: RwSignal<Columns>) -> AnyView {
    let material = RwSignal::new(String::new());
    let result = Memo::new(move |_| {
        let materials = desk.materials();
        columns.with(|columns| {
            desk.text.with(|text| import(text, columns, &material.read(), &materials))
        })
    });
    let count = columns.with_untracked(Vec::len);
    let rows: Vec<AnyView> = (0..count).map(|at| column(at, columns)).collect();
    let preview = move || {
        result.with(|result| {
            let items = result.items.iter().take(PREVIEW);
            let row = |item: &crate::design::document::StockItem| {
                let price = item.price.map(|price| money_words(price, &item.currency));
                let notes = match (&*item.lowest, &*item.highest) {
                    ("", "") => String::new(),
                    (low, high) => say::range(&shown(high), &shown(low)),
                };
                let had = if item.sold_out { say::NO.said() } else { say::YES.said() }.to_owned();
                let cells = [
                    line_shown(&item.make_up),
                    item.code.clone(),
                    item.supplier.clone(),
                    pack_words(item),
                    price.unwrap_or_default(),
                    had,
                    notes,
                ];
                part(&cells.clone(), move || {
                    let cells: Vec<AnyView> = cells
                        .into_iter()
                        .map(|cell| view! { <td>{cell}</td> }.into_any())
                        .collect();
                    view! { <tr>{cells}</tr> }.into_any()
                })
            };
            items.map(row).collect()
        })
    };
    let more = move || {
        let more = result.with(|result| result.items.len().saturating_sub(PREVIEW));
        if more == 0 { String::new() } else { say::and_more(&more) }
    };
    let summary = move || format!("{}{}", result.with(summary), columns.with(left_out));
    let told = |errors: fn(&Import) -> &Vec<TableError>| {
        list(move || {
            result.with(|result| {
                let line = |error: &TableError| {
                    let sentence = sentence(error);
                    part(&sentence.clone(), move || view! { <li>{sentence}</li> }.into_any())
                };
                errors(result).iter().map(line).collect()
            })
        })
    };
    let take = move |as_new: bool| {
        let import = result.get_untracked();
        if import.items.is_empty() {
            desk.complain(say::NO_GOOD_LINE.into());
            return;
        }
        let odd = odd_lines(&import).len();
        let Import { items, bad, .. } = import;
        let given = StockList { items, ..StockList::default() };
        let (changed, mut text) = if as_new {
            let count = given.items.len();
            let Some(changed) = desk.begin_read(given) else { return };
            (changed, say::new_list_from(&count))
        } else {
            let (merged, added, updated) = desk.list.with_untracked(|list| merge(list, &given));
            let Some(changed) = desk.change(merged) else { return };
            desk.turn.update(|turn| *turn += 1);
            (changed, say::added(&added, &updated))
        };
        if odd > 0 {
            text = format!("{text} {}", say::odd_taken(&odd));
        }
        if !bad.is_empty() {
            text = format!("{text} {}", say::LEFT_OUT_TOLD);
        }
        desk.left_out.set(bad.iter().map(sentence).collect());
        desk.importing.set(false);
        desk.tell(changed, text);
    };
    let (name, is_empty) =
        desk.list.with_untracked(|list| (list.name.clone(), list.items.is_empty()));
    let ways: Vec<AnyView> = if is_empty {
        vec![
            button("tool main", "stock-take", "", say::TAKE_GOOD.said(), move || take(false))
                .into_any(),
        ]
    } else {
        let add = say::add_to(&name);
        let new = say::TAKE_NEW_HINT.said();
        vec![
            button("tool main", "stock-take", new, say::TAKE_NEW.said(), move || take(true))
                .into_any(),
            view! {
                <button type="button" class="tool" id="stock-add" on:click=move |_| take(false)>{add}</button>
            }
            .into_any(),
        ]
    };
    view! {
        <h3>{say::WHICH_COLUMN.said()}</h3>
        <div class="stock-table" tabindex="0" role="region" aria-label=say::COLUMNS_TABLE.said()>
            <table class="number-table">
                <thead>
                    <tr>
                        <th scope="col">{say::HEAD_HEADING.said()}</th>
                        <th scope="col">{say::HEAD_FIRST.said()}</th>
                        <th scope="col">{say::HEAD_IS.said()}</th>
                        <th scope="col">{say::HEAD_BARE.said()}</th>
                    </tr>
                </thead>
                <tbody>{rows}</tbody>
            </table>
        </div>
        <TextField label=say::ELSE_MATERIAL.said() value=material on_input=move |text| material.set(text) hint="nylon"/>
        <h3>{say::WHAT_READ.said()}</h3>
        <p role="status" id="stock-summary">{words(summary)}</p>
        <div class="stock-table" tabindex="0" role="region" aria-label=say::FIRST_LINES.said()>
            <table class="sources">
                <thead>
                    <tr>
                        <th scope="col">{say::MAKE_UP.said()}</th>
                        <th scope="col">{say::CODE.said()}</th>
                        <th scope="col">{say::SUPPLIER.said()}</th>
                        <th scope="col">{say::SOLD_AS.said()}</th>
                        <th scope="col">{say::PRICE.said()}</th>
                        <th scope="col">{say::IN_STOCK.said()}</th>
                        <th scope="col">{say::NOTES.said()}</th>
                    </tr>
                </thead>
                <tbody>{list(preview)}</tbody>
            </table>
        </div>
        <p class="hint">{words(more)}</p>
        <ul class="stock-bad wrong" id="stock-bad" aria-label=say::BAD_LINES.said()>{told(|import| &import.bad)}</ul>
        <ul class="stock-bad" aria-label=say::ODD_LINES.said()>{told(|import| &import.doubts)}</ul>
        <p class="window-actions">
            {ways}
            {button("tool", "", "", say::BACK.said(), move || desk.importing.set(false))}
        </p>
    }
    .into_any()
}

fn sentence(error: &TableError) -> String {
    format!("{}.", capital(&error.to_string()))
}

/// The lines that are taken although nothing can be worked out for them.
fn odd_lines(result: &Import) -> Vec<usize> {
    let is_bad = |line: usize| result.bad.iter().any(|error| error.line == line);
    let lines = result.doubts.iter().map(|doubt| doubt.line);
    let mut odd: Vec<usize> = lines.filter(|line| !is_bad(*line)).collect();
    odd.dedup();
    odd
}

fn summary(result: &Import) -> String {
    let mut bad: Vec<usize> = result.bad.iter().map(|error| error.line).collect();
    bad.dedup();
    let odd = odd_lines(result).len();
    let mut parts = vec![say::good(&result.items.len().saturating_sub(odd))];
    if odd > 0 {
        parts.push(say::odd(&odd));
    }
    if !bad.is_empty() {
        parts.push(say::bad(&bad.len()));
    }
    format!("{}.", parts.join(", "))
}

/// The columns that hold something and are taken for nothing, as a sentence.
fn left_out(columns: &Columns) -> String {
    let is_left = |column: &&Column| column.field.is_none() && !column.example.is_empty();
    let names: Vec<String> =
        columns.iter().filter(is_left).map(|column| column.heading.clone()).collect();
    if names.is_empty() {
        String::new()
    } else {
        format!(" {}", say::columns_left_out(&some_of(&names)))
    }
}

/// One column: what it is taken for can be changed. What another column was taken for goes there.
fn column(at: usize, columns: RwSignal<Columns>) -> AnyView {
    let (heading, example) = columns.with_untracked(|columns| {
        columns.get(at).map(|c| (c.heading.clone(), c.example.clone())).unwrap_or_default()
    });
    let field = move || columns.with(|columns| columns.get(at).and_then(|column| column.field));
    let unit = move || columns.with(|columns| columns.get(at).map(|column| column.unit));
    let set_field = move |event| {
        let key = event_target_value(&event);
        let field = Field::ALL.into_iter().find(|field| field.name() == key);
        columns.update(|columns| {
            for (place, column) in columns.iter_mut().enumerate() {
                if place == at {
                    column.field = field;
                } else if column.field == field {
                    column.field = None;
                }
            }
        });
    };
    let set_unit = move |event| {
        let key = event_target_value(&event);
        if let Some(unit) = Size::ALL.into_iter().find(|unit| unit.name() == key) {
            columns.update(|columns| {
                if let Some(column) = columns.get_mut(at) {
                    column.unit = unit;
                }
            });
        }
    };
    let fields: Vec<AnyView> = Field::ALL
        .iter()
        .map(|this| {
            let is_it = move || field() == Some(*this);
            view! { <option value=this.name() prop:selected=is_it>{this.name()}</option> }
                .into_any()
        })
        .collect();
    let units = move || {
        let units: Vec<AnyView> = Size::ALL
            .iter()
            .map(|this| {
                let is_it = move || unit() == Some(*this);
                view! { <option value=this.name() prop:selected=is_it>{this.name()}</option> }
                    .into_any()
            })
            .collect();
        let heading = columns.with_untracked(|columns| columns[at].heading.clone());
        view! {
            <select aria-label=say::unit_of(&heading) on:change=set_unit>{units}</select>
        }
        .into_any()
    };
    let label = say::column_is(&heading);
    view! {
        <tr>
            <th scope="row">{heading}</th>
            <td>{example}</td>
            <td>
                <select id=format!("stock-column-{at}") aria-label=label on:change=set_field>
                    <option value="" prop:selected=move || field().is_none()>{say::COLUMN_LEFT_OUT.said()}</option>
                    {fields}
                </select>
            </td>
            <td>{either(move || field().is_some_and(Field::is_size), units, || ().into_any())}</td>
        </tr>
    }
    .into_any()
}
