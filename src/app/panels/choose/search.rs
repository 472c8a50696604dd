//! For which strings a set is sought, from which stock, and the buttons that begin.

use leptos::prelude::*;

use super::desk::{Ask, Desk};
use crate::app::rows::{kept, span};
use crate::app::widgets::button::button;
use crate::app::widgets::fields::Choice;
use crate::app::widgets::list::{list, part, while_so, words};
use crate::design::edit::Edit;
use crate::design::letters::capital;
use crate::words::choose_page as say;

/// The search.
pub fn search(desk: Desk) -> AnyView {
    let store = desk.store;
    let stock = move || {
        let list = desk.stock();
        let count = list.items.len();
        let name = if list.name.trim().is_empty() { say::STOCK_UNNAMED.said() } else { &list.name };
        say::stock_in_use(&count, &name)
    };
    let priced = move || desk.stock().items.iter().any(|item| item.price.is_some());
    let by_price = move || {
        button(
            "tool",
            "find-by-price",
            say::FIND_BY_PRICE_HINT.said(),
            say::FIND_BY_PRICE.said(),
            move || desk.ask(Ask::Front { by_price: true }),
        )
    };
    let which = Signal::derive(move || if desk.part.get() { "part" } else { "all" }.to_owned());
    let choices = [("all", say::ALL_STRINGS), ("part", say::SELECTED)];
    let choices = choices.map(|(key, words)| (key.to_owned(), words.into())).to_vec();
    let from = Signal::derive(move || if desk.own.get() { "both" } else { "stock" }.to_owned());
    let sources = [("both", say::FROM_BOTH), ("stock", say::FROM_STOCK)];
    let sources = sources.map(|(key, words)| (key.to_owned(), words.into())).to_vec();
    let selected = move || {
        let rows = store.selection.get().rows();
        let last = (*rows.end()).min(store.count().saturating_sub(1));
        let analysis = store.analysis.read();
        let keep = span(&analysis, ((*rows.start()).min(last), last));
        if desk.part.get() { say::may_change_now(&keep) } else { String::new() }
    };
    let keep = move || {
        let rows = store.selection.get_untracked().rows();
        store.close_step();
        store.send(&Edit::Lock { rows: *rows.start()..*rows.end() + 1, locked: true });
    };
    let keep_words = move || {
        let rows = store.selection.get().rows();
        let last = (*rows.end()).min(store.count().saturating_sub(1));
        say::keep(&span(&store.analysis.read(), ((*rows.start()).min(last), last)))
    };
    let runs = Memo::new(move |_| store.design.with(|design| kept(design)));
    let run = move |run: (usize, usize)| {
        part(&run, move || {
            let name = move || capital(&span(&store.analysis.read(), run));
            let free = move |_| {
                store.close_step();
                store.send(&Edit::Lock { rows: run.0..run.1 + 1, locked: false });
            };
            view! {
                <li>
                    {words(move || say::kept(&name()))} " "
                    <button type="button" class="quiet" aria-label=move || say::let_strings_change(&span(&store.analysis.read(), run)) on:click=free>
                        {say::LET_CHANGE.said()}
                    </button>
                </li>
            }
            .into_any()
        })
    };
    let busy = move || desk.busy.with(Option::is_some);
    let progress = move || {
        view! {
            <div class="choose-busy">
                <progress aria-label=say::BUSY.said()></progress>
                <span>{words(move || desk.busy.get().unwrap_or_default())}</span>
                {button("tool", "cancel-search", say::CANCEL_HINT.said(), say::CANCEL.said(), move || desk.cancel())}
            </div>
        }
        .into_any()
    };
    view! {
        <section class="choose-search" aria-label=say::SEARCH.said()>
            <p class="hint" id="choose-stock">{words(stock)}</p>
            <div class="choose-row">
                <Choice label=say::MAY_CHANGE.said() choices=choices value=which on_change=move |key: String| desk.part.set(key == "part")/>
                <Choice label=say::CHOOSE_FROM.said() choices=sources value=from on_change=move |key: String| desk.own.set(key == "both")/>
                {button("tool main", "find-set", say::FIND_SET_HINT.said(), say::FIND_SET.said(), move || desk.ask(Ask::Set))}
                {button("tool", "find-fronts", say::FIND_FRONTS_HINT.said(), say::FIND_FRONTS.said(), move || desk.ask(Ask::Front { by_price: false }))}
                {while_so(priced, by_price)}
                <button type="button" class="tool" id="keep-selected" title=say::KEEP_HINT.said() disabled=move || store.count() == 0 on:click=move |_| keep()>
                    {words(keep_words)}
                </button>
            </div>
            <p class="hint">{words(selected)}</p>
            <ul class="choose-kept" aria-label=say::KEPT_LIST.said()>{list(move || runs.get().into_iter().map(run).collect())}</ul>
            {while_so(busy, progress)}
        </section>
    }
    .into_any()
}
