//! What is proposed: how sure it is, what it comes to, string by string, and the buttons that take it.

use std::sync::Arc;

use leptos::prelude::*;

use super::desk::Desk;
use crate::app::browser;
use crate::app::rows::{Proposal, ProposedRow};
use crate::app::widgets::button::button;
use crate::app::widgets::list::{Part, list, part, while_so, words};
use crate::design::advice;
use crate::design::choose::Line;
use crate::design::document::ForceUnit;
use crate::design::edit::Edit;
use crate::words::{Words, choose_page as say};

/// What is proposed, while something is.
pub fn preview(desk: Desk) -> AnyView {
    let there = move || desk.proposal.with(Option::is_some);
    let said = move || desk.proposal.with(|p| p.as_ref().map(|p| told(p)).unwrap_or_default());
    view! {
        <p class="out-of-sight" role="status" id="choose-said">{words(said)}</p>
        {while_so(there, move || shown(desk))}
    }
    .into_any()
}

/// What is read aloud.
fn told(proposal: &Proposal) -> String {
    let says = proposal.conflicts.iter().chain(&proposal.says).take(2);
    let says: Vec<&str> = says.map(String::as_str).collect();
    let change = match proposal.rows.len() {
        0 => String::new(),
        count => format!(" {}", say::would_change(&count)),
    };
    format!("{}:{change} {}", proposal.title, says.join(" "))
}

/// Something of the proposal, as it changes.
fn of<T: Default>(desk: Desk, take: impl Fn(&Proposal) -> T) -> T {
    desk.proposal.with(|proposal| proposal.as_ref().map(|p| take(p)).unwrap_or_default())
}

fn sentence(class: &'static str, text: &str) -> Part {
    let text = text.to_owned();
    part(&(class, text.clone()), move || view! { <li class=class>{text}</li> }.into_any())
}

fn shown(desk: Desk) -> AnyView {
    let sentences = move || {
        of(desk, |proposal| {
            let conflicts = proposal.conflicts.iter().map(|text| sentence("wrong", text));
            let says = proposal.says.iter().map(|text| sentence("", text));
            conflicts.chain(says).collect()
        })
    };
    let broken = move || {
        of(desk, |proposal| proposal.broken.iter().map(|text| sentence("breaks", text)).collect())
    };
    let breaks = move || of(desk, |proposal| !proposal.broken.is_empty());
    let breaking = move || {
        view! {
            <p class="breaks"><strong>{say::BREAKS_LIMITS.said()}</strong></p>
            <ul class="choose-says" id="choose-broken">{list(broken)}</ul>
        }
        .into_any()
    };
    let left_out = move || {
        of(desk, |proposal| proposal.left_out.iter().map(|text| sentence("hint", text)).collect())
    };
    let lines = move || of(desk, |proposal| proposal.lines.iter().map(line).collect());
    let rows = move || of(desk, |proposal| proposal.rows.iter().map(|r| row(desk, r)).collect());
    let any_line = move || of(desk, |proposal| !proposal.lines.is_empty());
    let any_row = move || of(desk, |proposal| !proposal.rows.is_empty());
    let totals = move || {
        view! {
            <table class="sources choose-totals" aria-label=say::BEFORE_AFTER.said()>
                <thead><tr><td></td><th scope="col">{say::HEAD_NOW.said()}</th><th scope="col">{say::HEAD_PROPOSED.said()}</th></tr></thead>
                <tbody>{list(lines)}</tbody>
            </table>
        }
        .into_any()
    };
    view! {
        <section class="choose-answer" aria-labelledby="choose-title" id="choose-answer">
            <h2 id="choose-title" tabindex="-1">{words(move || of(desk, |proposal| proposal.title.clone()))}</h2>
            <ul class="choose-says">{list(sentences)}</ul>
            {while_so(breaks, breaking)}
            {while_so(any_line, totals)}
            {while_so(any_row, move || changes(desk))}
            <div class="choose-table">{while_so(any_row, move || table(desk, rows))}</div>
            <div class="window-actions">{while_so(move || !any_row(), move || button("tool", "leave-none", "", say::CLOSE.said(), move || desk.cancel()))}</div>
            <ul class="choose-says">{list(left_out)}</ul>
            <p class="caution">{advice::caution()}</p>
        </section>
    }
    .into_any()
}

/// The buttons that take or leave it.
fn changes(desk: Desk) -> AnyView {
    let none = move || {
        let without = desk.without.get();
        of(desk, |proposal| proposal.rows.iter().all(|row| without.contains(&row.row)))
    };
    let worth = move || of(desk, |proposal| proposal.is_worth);
    let take_all = move |class, words: Words| {
        let hint = say::TAKE_ALL_HINT.said();
        button(class, "take-all", hint, words.said(), move || desk.take(true))
    };
    view! {
        <div class="window-actions">
            {while_so(worth, move || take_all("tool main", say::TAKE_ALL))}
            {while_so(move || !worth(), move || take_all("tool", say::TAKE_ANYWAY))}
            <button type="button" class="tool" id="take-some" disabled=none on:click=move |_| desk.take(false)>
                {say::TAKE_SOME.said()}
            </button>
            {button("tool", "leave-it", say::LEAVE_IT_HINT.said(), say::LEAVE_IT.said(), move || desk.cancel())}
        </div>
    }
    .into_any()
}

fn table(desk: Desk, rows: impl Fn() -> Vec<Part> + Copy + Send + Sync + 'static) -> AnyView {
    let force = move || desk.store.design.with(|design| design.units.force);
    let pull = move || match force() {
        ForceUnit::Newton => "N",
        ForceUnit::Kgf => "kgf",
        ForceUnit::Lbf => "lbf",
    };
    let feel = move || match force() {
        ForceUnit::Newton => "N/mm",
        ForceUnit::Kgf => "kgf/mm",
        ForceUnit::Lbf => "lbf/in",
    };
    view! {
        <table class="sources" id="choose-rows" aria-label=say::ROWS_TABLE.said()>
            <thead>
                <tr>
                    <th scope="col">{say::HEAD_TAKE.said()}</th>
                    <th scope="col">{say::HEAD_STRING.said()}</th>
                    <th scope="col">{say::HEAD_NOW.said()}</th>
                    <th scope="col">{say::HEAD_PROPOSED.said()}</th>
                    <th scope="col">{words(move || say::head_tension(&pull()))}</th>
                    <th scope="col">{words(move || say::head_feel(&feel()))}</th>
                    <th scope="col">{say::HEAD_SHARE.said()}</th>
                    <td></td>
                </tr>
            </thead>
            <tbody>{list(rows)}</tbody>
        </table>
    }
    .into_any()
}

fn line(line: &Line) -> Part {
    let Line { what, before, after } = line.clone();
    part(&(what.clone(), before.clone(), after.clone()), move || {
        let what = crate::design::letters::capital(&what);
        view! { <tr><th scope="row">{what}</th><td>{before}</td><td>{after}</td></tr> }.into_any()
    })
}

fn row(desk: Desk, proposed: &ProposedRow) -> Part {
    let proposed = Arc::new(proposed.clone());
    part(&*proposed.clone(), move || {
        let row = proposed.row;
        let ticked = move || !desk.without.with(|without| without.contains(&row));
        let turn = move |_| {
            desk.without.update(|without| match without.iter().position(|other| *other == row) {
                Some(place) => drop(without.remove(place)),
                None => without.push(row),
            });
        };
        let keep = move |_| {
            desk.store.close_step();
            desk.store.send(&Edit::Lock { rows: row..row + 1, locked: true });
            // The row goes, and with it this button.
            request_animation_frame(|| browser::focus("choose-title"));
        };
        let ProposedRow { name, from, to, tension, stiffness, share, .. } = (*proposed).clone();
        let take = say::take_string(&name);
        let stay = say::keep_string(&name);
        view! {
            <tr on:pointerenter=move |_| desk.store.hover.set(Some(row)) on:pointerleave=move |_| desk.store.hover.set(None)>
                <td><input type="checkbox" aria-label=take prop:checked=ticked on:change=turn/></td>
                <th scope="row">{name}</th>
                <td class="words">{from}</td>
                <td class="words">{to}</td>
                <td>{tension}</td>
                <td>{stiffness}</td>
                <td>{share}</td>
                <td><button type="button" class="quiet" aria-label=stay on:click=keep>{say::KEEP_ONE.said()}</button></td>
            </tr>
        }
        .into_any()
    })
}
