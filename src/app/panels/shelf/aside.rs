//! Beside the list of designs: the bin, a backup of everything, and how much room is taken.

use leptos::html;
use leptos::prelude::*;
use leptos::task::spawn_local;

use super::Desk;
use crate::app::browser;
use crate::app::shelf::{self, BIN_DAYS, Shelved};
use crate::app::widgets::button::button;
use crate::app::widgets::list::{Part, list, part, while_so, words};

/// The share of what the browser allows from which on it is said that room runs out.
const NEARLY_FULL: f64 = 0.8;

/// What was taken off the shelf, for as long as it can be put back.
pub fn bin(desk: Desk) -> AnyView {
    let lines = move || desk.binned.get().into_iter().map(|one| line(desk, one)).collect();
    let any = move || !desk.binned.read().is_empty();
    while_so(any, move || {
        view! {
            <h3>"Bin"</h3>
            <p class="hint">{format!("A design stays here for {BIN_DAYS} days.")}</p>
            <ul class="shelf" id="bin">{list(lines)}</ul>
        }
        .into_any()
    })
}

fn line(desk: Desk, one: Shelved) -> Part {
    part(&(one.id.clone(), "bin"), move || {
        let Shelved { id, title, strings, changed, picture } = one;
        let (back, away) = (id.clone(), id);
        let put_back = move || desk.told(&shelf::put_back(&back).map(drop));
        let throw_away = move || {
            if browser::confirmed("Delete this design for good?") {
                desk.told(&shelf::throw_away(&away).map(drop));
            }
        };
        view! {
            <li>
                <span class="shelf-picture" inner_html=picture></span>
                <span class="shelf-words">
                    <span>{title}</span>
                    <span class="unit">{strings}", put here on "{changed}</span>
                </span>
                <span class="shelf-acts">
                    {button("quiet", "", "", "Put back", put_back)}
                    {button("quiet", "", "", "Delete for good", throw_away)}
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
                Err(why) => desk.wrong.set(format!("No backup was made: {why}.")),
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
                Ok((new, known)) => told.set(format!(
                    "Taken in from the backup: {new} designs. {known} were here already."
                )),
                Err(why) => desk.wrong.set(format!("The backup was not taken in: {why}.")),
            }
            desk.look_again();
        });
    };
    view! {
        <h3>"Backup"</h3>
        <p>"One file with all designs and their earlier states, the bin and the stock lists. Taking one in changes nothing that is here: what differs is put beside it."</p>
        <p class="shelf-acts">
            {button("tool", "backup", "", "Save a backup", save)}
            {button("tool", "take-in", "", "Take in a backup", choose)}
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
            let mb = |bytes: f64| {
                if bytes < 1e7 {
                    format!("{:.1}", bytes / 1e6)
                } else {
                    format!("{:.0}", bytes / 1e6)
                }
            };
            let warning = if used > NEARLY_FULL * most {
                " Little is left: save a backup, and empty the bin."
            } else {
                ""
            };
            text.set(format!(
                "Stringloft and what it keeps take {} MB of the {} MB that this browser allows.{warning}",
                mb(used),
                mb(most)
            ));
        }
    });
    words(move || text.get())
}
