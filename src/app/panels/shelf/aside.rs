//! Beside the list of designs: the bin, a backup of everything, and how much room is taken.

use std::cell::Cell;
use std::rc::Rc;

use leptos::html;
use leptos::prelude::*;
use leptos::task::spawn_local;

use super::Desk;
use crate::app::browser;
use crate::app::shelf::{self, BIN_DAYS, Shelved};
use crate::app::store::Store;
use crate::app::tab::Heard;
use crate::app::widgets::button::button;
use crate::app::widgets::list::{Part, list, part, while_so, words};
use crate::design::display;
use crate::words::designs as say;

/// The share of what the browser allows from which on it is said that room runs out.
const NEARLY_FULL: f64 = 0.8;

/// After so many writings it is asked again whether room runs out.
const ASK_AFTER: u32 = 20;

/// Tells once that this browser's room runs out: now, or while designs are kept. Called once.
pub fn watch_room(store: Store) {
    let told = Rc::new(Cell::new(false));
    let ask = move || {
        let told = Rc::clone(&told);
        spawn_local(async move {
            if browser::room().await.is_some_and(runs_out) && !told.replace(true) {
                store.complain(say::ROOM_RUNS_OUT.said());
            }
        });
    };
    ask();
    let written = Cell::new(0);
    browser::on_keeping(move |heard| {
        if heard == Heard::Kept {
            written.set((written.get() + 1) % ASK_AFTER);
            if written.get() == 0 {
                ask();
            }
        }
    });
}

/// Whether of so many bytes that a browser allows so many are taken that room runs out.
fn runs_out((used, most): (f64, f64)) -> bool {
    used > NEARLY_FULL * most
}

/// What was taken off the shelf, for as long as it can be put back.
pub fn bin(desk: Desk) -> AnyView {
    let lines = move || desk.binned.get().into_iter().map(|one| line(desk, one)).collect();
    let any = move || !desk.binned.read().is_empty();
    while_so(any, move || {
        view! {
            <h3>{say::BIN.said()}</h3>
            <p class="hint">{say::bin_days(&BIN_DAYS)}</p>
            <ul class="shelf" id="bin">{list(lines)}</ul>
        }
        .into_any()
    })
}

fn line(desk: Desk, one: Shelved) -> Part {
    part(&(one.id.clone(), "bin"), move || {
        let Shelved { id, title, strings, changed, picture, .. } = one;
        let (back, away) = (id.clone(), id);
        let put_back = move || desk.told(&shelf::put_back(&back).map(drop));
        let throw_away = move || {
            if browser::confirmed(say::DELETE_FOR_GOOD_ASKED.said()) {
                desk.told(&shelf::throw_away(&away).map(drop));
            }
        };
        view! {
            <li>
                <span class="shelf-picture" inner_html=picture></span>
                <span class="shelf-words">
                    <span>{title}</span>
                    <span class="unit">{say::put_here_on(&changed, &strings)}</span>
                </span>
                <span class="shelf-acts">
                    {button("quiet", "", "", say::PUT_BACK.said(), put_back)}
                    {button("quiet", "", "", say::DELETE_FOR_GOOD.said(), throw_away)}
                </span>
            </li>
        }
        .into_any()
    })
}

/// One file with everything, out and in.
pub fn backup(desk: Desk) -> AnyView {
    let file = NodeRef::<html::Input>::new();
    let told = RwSignal::new(String::new());
    let save = move || {
        let (day, month, year) = crate::app::clock::today();
        let name = format!("stringloft-backup-{year}-{month:02}-{day:02}.json");
        spawn_local(async move {
            match browser::offer_file(&name, "application/json", &shelf::backup().await) {
                Ok(handed) => told.set(handed.words()),
                Err(why) => desk.wrong.set(say::no_backup(&why)),
            }
        });
    };
    let choose = move || {
        if let Some(input) = file.get_untracked() {
            input.click();
        }
    };
    let chosen = move |_| {
        let Some(input) = file.get_untracked() else { return };
        let given = input.files().and_then(|files| files.get(0));
        input.set_value("");
        let Some(given) = given else { return };
        desk.wrong.set(String::new());
        told.set(String::new());
        spawn_local(async move {
            let read = browser::read_backup(given).await;
            let merged = match read {
                Ok(text) => shelf::merge(&text).await,
                Err(why) => Err(why),
            };
            match merged {
                Ok((new, known)) => told.set(say::taken_in(&known, &new)),
                Err(why) => desk.wrong.set(say::not_taken_in(&why)),
            }
            desk.look_again();
        });
    };
    view! {
        <h3>{say::BACKUP.said()}</h3>
        <p>{say::BACKUP_HINT.said()}</p>
        <p class="shelf-acts">
            {button("tool", "backup", "", say::SAVE_BACKUP.said(), save)}
            {button("tool", "take-in", "", say::TAKE_IN.said(), choose)}
            <input node_ref=file id="backup-file" class="out-of-sight" type="file" tabindex="-1" aria-hidden="true" accept=".json,application/json" on:change=chosen/>
        </p>
        <p role="status">{words(move || told.get())}</p>
        <p class="hint" id="room">{room()}</p>
    }
    .into_any()
}

/// How much room is taken in this browser, in words, when it has said so.
fn room() -> AnyView {
    let text = RwSignal::new(String::new());
    spawn_local(async move {
        if let Some((used, most)) = browser::room().await {
            let mb = |bytes: f64| display::decimals(bytes / 1e6, usize::from(bytes < 1e7));
            let mut said = say::room(&mb(most), &mb(used));
            if runs_out((used, most)) {
                said = format!("{said} {}", say::LITTLE_ROOM);
            }
            text.set(said);
        }
    });
    words(move || text.get())
}
