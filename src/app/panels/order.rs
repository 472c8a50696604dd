//! What is to be ordered for the harp, from whom, and what it costs.

use leptos::prelude::*;

use super::asked::asked_in_words;
use super::form::{entries, number};
use super::header::file_name;
use crate::app::asked::Question;
use crate::app::forms;
use crate::app::rows::{
    OrderGroup, OrderRow, drawn_from, fresh as fresh_items, order_words, part_of,
};
use crate::app::store::{Store, Window};
use crate::app::widgets::button::button;
use crate::app::widgets::fields::Choice;
use crate::app::widgets::list::{either, list, part, while_so, words};
use crate::app::{browser, earlier};
use crate::design::document::{OrderSpec, SparesSpec};
use crate::design::edit::Edit;
use crate::design::order::{OrderList, csv, order_list};
use crate::design::settings::Setting;
use crate::papers::order::order;
use crate::papers::sheet::{Paper, Sheet};
use crate::words::{Words, order as say};

/// The heads of the order list.
const HEADS: [Words; 8] = [
    say::HEAD_MAKE_UP,
    say::HEAD_CODE,
    say::HEAD_STRINGS,
    say::HEAD_SOLD_AS,
    say::HEAD_PIECES,
    say::HEAD_METRES,
    say::HEAD_PACKS,
    say::HEAD_PRICE,
];
/// The choices of spares: key and words.
const SPARES: [(&str, Words); 4] = [
    ("none", say::SPARES_NONE),
    ("item", say::SPARES_ITEM),
    ("string", say::SPARES_STRING),
    ("percent", say::SPARES_PERCENT),
];
/// The share that is proposed first.
const USUAL_PERCENT: f64 = 20.0;

/// The sheet to print.
pub fn sheet(store: Store, paper: Paper) -> Sheet {
    let design = drawn_from(&store.design.read(), &store.shop.read());
    order(&design, &order_list(&design, &store.analysis.read()), paper)
}

/// Order.
#[component]
pub fn Order(store: Store) -> impl IntoView {
    let made = Memo::new(move |_| {
        let design = drawn_from(&store.design.read(), &store.shop.read());
        order_words(&design, &store.analysis.read())
    });
    let is_empty = move || made.with(|(_, words)| words.groups.is_empty());
    let is_outside =
        move || made.with(|(list, _)| list.lines.iter().any(|line| line.outside.is_some()));
    // What the stock list says of its own items, as far as it says it.
    let is_unsaid = move || {
        let lacks = |group: &OrderGroup| {
            !group.of_all.is_empty() || group.rows.iter().any(|row| !row.remarks.is_empty())
        };
        !is_outside() && made.with(|(_, words)| words.groups.iter().any(lacks))
    };
    let to_stock = move || store.window.set(Some(Window::Stock));
    let groups = move || {
        let group = |group: &OrderGroup| {
            let group = group.clone();
            part(&group.clone(), move || view_of(store, &group, made))
        };
        made.with(|(_, words)| words.groups.iter().map(group).collect())
    };
    let totals = move || made.with(|(_, words)| words.sum.clone());
    let save = move || {
        let text = made.with_untracked(|(list, _)| csv(list));
        offer(store, "order", &text);
    };
    let print = move || store.window.set(Some(Window::OrderSheet));
    view! {
        <section class="view-panel order" aria-label=say::PANEL.said() id="order" tabindex="-1">
            {either(
                is_empty,
                move || view! {
                    <p>{say::NOTHING.said()}</p>
                }.into_any(),
                move || view! {
                    <p class="window-actions">
                        {button("tool main", "order-print", say::PRINT_HINT.said(), say::PRINT.said(), print)}
                        {button("tool", "order-csv", say::CSV_HINT.said(), say::CSV.said(), save)}
                        <strong id="order-totals">{words(totals)}</strong>
                    </p>
                }.into_any(),
            )}
            {fresh(store)}
            {while_so(is_outside, move || view! {
                <p class="hint">
                    {say::OUTSIDE_HINT.said()} " "
                    {button("tool", "order-stock", "", say::OPEN_STOCK.said(), to_stock)}
                </p>
            }.into_any())}
            {while_so(is_unsaid, move || view! {
                <p class="hint">
                    {say::FILL_IN.said()} " "
                    {button("tool", "order-fill-in", "", say::OPEN_STOCK.said(), to_stock)}
                </p>
            }.into_any())}
            {list(groups)}
            {unknown(made)}
            {settings(store)}
        </section>
    }
}

/// Where codes and prices come from, when the design does not hold those of the stock list.
fn fresh(store: Store) -> AnyView {
    let new = Memo::new(move |_| {
        let design = store.design.read();
        fresh_items(&design, &store.shop.read())
    });
    let put = move || {
        if let Some(items) = new.get_untracked() {
            let count = items.len();
            let changed = store.change(&Edit::Stock(items));
            store.close_step();
            store.tell(changed, &say::codes_kept(&count));
            browser::focus("order");
        }
    };
    let name = move || {
        let name = store.shop.with(|shop| shop.name.clone());
        say::new_codes(&name)
    };
    while_so(
        move || new.with(Option::is_some),
        move || {
            view! {
                <p class="hint">
                    {words(name)} " "
                    {button("tool", "order-embed", "", say::PUT_CODES.said(), put)}
                </p>
            }
            .into_any()
        },
    )
}

type Made = Memo<(OrderList, crate::app::rows::OrderWords)>;

/// What one supplier gets.
fn view_of(store: Store, group: &OrderGroup, made: Made) -> AnyView {
    let supplier = group.supplier.clone();
    let title = match supplier.as_deref() {
        None => say::SUPPLIER_OUTSIDE.into(),
        Some("") => say::SUPPLIER_NONE.into(),
        Some(name) => name.to_owned(),
    };
    let label = say::csv_of(&title);
    let totals = group.sum.clone();
    let save = move |_| {
        let text = made.with_untracked(|(list, _)| csv(&part_of(list, supplier.as_deref())));
        let name = match supplier.as_deref() {
            None | Some("") => "order".to_owned(),
            Some(name) => format!("order {name}"),
        };
        offer(store, &name, &text);
    };
    let heads: Vec<AnyView> =
        HEADS.iter().map(|head| view! { <th scope="col">{head.said()}</th> }.into_any()).collect();
    let rows: Vec<AnyView> = group.rows.iter().map(row).collect();
    let of_all = (!group.of_all.is_empty())
        .then(|| view! { <p class="hint">{group.of_all.clone()}</p> }.into_any());
    view! {
        <div class="order-group">
            <div class="order-head">
                <h2>{title.clone()}</h2>
                <span>{totals}</span>
                <button type="button" class="tool" aria-label=label on:click=save>{say::CSV.said()}</button>
            </div>
            {of_all}
            <div class="order-table" tabindex="0" role="region" aria-label=say::table_of(&title)>
                <table class="sources">
                    <thead><tr>{heads}</tr></thead>
                    <tbody>{rows}</tbody>
                </table>
            </div>
        </div>
    }
    .into_any()
}

fn row(row: &OrderRow) -> AnyView {
    let cells: Vec<AnyView> =
        row.cells.iter().map(|cell| view! { <td>{cell.clone()}</td> }.into_any()).collect();
    let remarks = (!row.remarks.is_empty()).then(|| {
        view! { <tr class="order-remark"><td colspan="8">{row.remarks.join(" ")}</td></tr> }
            .into_any()
    });
    let class = if remarks.is_some() { "with-remark" } else { "" };
    view! { <tr class=class>{cells}</tr> {remarks} }.into_any()
}

/// The strings that cannot be ordered, as it is not said what they are.
fn unknown(made: Made) -> AnyView {
    while_so(
        move || made.with(|(_, words)| !words.unknown.is_empty()),
        move || {
            view! { <p class="hint" id="order-unknown">{words(move || made.with(|(_, words)| words.unknown.clone()))}</p> }.into_any()
        },
    )
}

/// Spares and remarks.
fn settings(store: Store) -> AnyView {
    let spec = Memo::new(move |_| store.design.with(|design| design.order.clone()));
    let change = move |change: Box<dyn FnOnce(&mut OrderSpec)>| {
        let mut next = spec.get_untracked();
        change(&mut next);
        store.send(&Edit::Order(next));
    };
    let key = move || {
        match spec.with(|spec| spec.spares) {
            SparesSpec::None => "none",
            SparesSpec::OneOfEachItem => "item",
            SparesSpec::OneOfEachString => "string",
            SparesSpec::Percent(_) => "percent",
        }
        .to_owned()
    };
    let set_kind = move |key: String| {
        let spares = match key.as_str() {
            "item" => SparesSpec::OneOfEachItem,
            "string" => SparesSpec::OneOfEachString,
            "percent" => SparesSpec::Percent(USUAL_PERCENT),
            _ => SparesSpec::None,
        };
        change(Box::new(move |spec| spec.spares = spares));
        store.close_step();
    };
    let choices = SPARES.iter().map(|(key, words)| ((*key).to_owned(), (*words).into())).collect();
    let share = move || number(store, Setting::Spares);
    let range = move || entries(store, &forms::SPARES).into_any();
    view! {
        <fieldset class="order-settings">
            <legend>{say::SETTINGS.said()}</legend>
            <Choice label=say::SPARES.said() choices=choices value=Signal::derive(key) on_change=set_kind/>
            {while_so(move || key() == "percent", share)}
            {while_so(move || key() != "none", range)}
            {asked_in_words(Question::Spares)}
            <label class="field">
                <span>{say::REMARKS.said()}</span>
                <textarea
                    id="order-remarks"
                    rows="2"
                    prop:value=move || spec.with(|spec| spec.remarks.clone())
                    on:input=move |event| {
                        let text = event_target_value(&event);
                        change(Box::new(move |spec| spec.remarks = text));
                    }
                    on:blur=move |_| store.close_step()
                ></textarea>
            </label>
        </fieldset>
    }
    .into_any()
}

fn offer(store: Store, what: &str, text: &str) {
    let title = store.design.with_untracked(|design| design.title.clone());
    earlier::note(store, "order");
    let name = file_name(&format!("{title} {what}"), "csv");
    store.tell_handed(browser::offer_file(&name, "text/csv", text));
}
