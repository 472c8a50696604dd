//! The designs that this browser keeps.

mod aside;
mod earlier;

use leptos::prelude::*;

pub use self::aside::watch_room;
use super::new_design::replace;
use crate::app::browser::{self, StorageError};
use crate::app::earlier::Earlier;
use crate::app::shelf::{self, Shelved};
use crate::app::store::{Origin, Store};
use crate::app::widgets::button::button;
use crate::app::widgets::fields::{Choice, TextField};
use crate::app::widgets::list::{Part, list, part, while_so, words};
use crate::app::widgets::window::Window;
use crate::design::document::Design;
use crate::design::edit::{Edit, Field};
use crate::design::letters::small;
use crate::engine::order::sort;
use crate::words::designs as say;

/// What the window knows.
#[derive(Clone, Copy)]
struct Desk {
    store: Store,
    designs: RwSignal<Vec<Shelved>>,
    binned: RwSignal<Vec<Shelved>>,
    /// The design that is being renamed.
    renamed: RwSignal<Option<String>>,
    /// The name that is being typed.
    name: RwSignal<String>,
    /// The design whose earlier states are shown, and these.
    states: RwSignal<Option<(String, Vec<Earlier>)>>,
    /// Told here, as the window lies over the line of the page.
    wrong: RwSignal<String>,
}

impl Desk {
    fn open(self, id: String) {
        match shelf::take(&id) {
            Ok(design) => {
                let open = || self.store.open(design.clone(), Origin::Kept(id.clone()));
                if replace(self.store, &open) {
                    self.store.window.set(None);
                }
            }
            Err(why) => self.wrong.set(say::not_opened(&why)),
        }
    }

    fn is_open(self, id: &str) -> bool {
        matches!(&*self.store.origin.read(), Origin::Kept(open) if open == id)
    }

    /// Keeps a changed design under a name and shows the list again.
    fn put(self, from: &str, to: &str, change: impl FnOnce(&mut Design)) {
        let done = shelf::take(from).map_err(|why| why.to_string()).and_then(|mut design| {
            change(&mut design);
            shelf::put(to, &design).map_err(|why| why.to_string())
        });
        match done {
            Ok(_) => self.look_again(),
            Err(why) => self.wrong.set(say::not_done(&why)),
        }
    }

    fn duplicate(self, id: &str) {
        self.put(id, &browser::fresh_name(), |design| {
            design.title = say::copy_of(&design.title).trim().to_owned();
        });
    }

    fn rename(self, id: &str) {
        let name = self.name.get_untracked();
        self.renamed.set(None);
        if untrack(|| self.is_open(id)) {
            self.store.send(&Edit::Text { field: Field::Title, text: name });
            self.store.close_step();
            self.store.keep_and_tell();
            self.look_again();
        } else {
            self.put(id, id, |design| design.title = name);
        }
    }

    /// Shows what is kept now.
    fn look_again(self) {
        self.designs.set(shelf::all());
        self.binned.set(shelf::binned());
    }

    /// Shows what has become of it, or why nothing has.
    fn told(self, done: &Result<(), StorageError>) {
        match done {
            Ok(()) => self.look_again(),
            Err(why) => self.wrong.set(say::not_done(&why)),
        }
    }

    /// Hands over the text of a design that cannot be read, as it is.
    fn save_as_it_is(self, id: &str) {
        let text = shelf::text(id).unwrap_or_default();
        let name = format!("design-{id}.json");
        if let Err(why) = browser::offer_file(&name, "application/json", &text) {
            self.wrong.set(say::not_saved(&why));
        }
    }
}

/// The list of kept designs: open one, find it by its name, rename it, make a copy of it, or take it away.
#[component]
pub fn ShelfWindow(store: Store) -> impl IntoView {
    store.keep_and_tell();
    shelf::empty_bin();
    let desk = Desk {
        store,
        designs: RwSignal::new(shelf::all()),
        binned: RwSignal::new(shelf::binned()),
        renamed: RwSignal::new(None),
        name: RwSignal::new(String::new()),
        states: RwSignal::new(None),
        wrong: RwSignal::new(String::new()),
    };
    let sought = RwSignal::new(String::new());
    let order = RwSignal::new("date".to_owned());
    let found = move || {
        let sought = small(sought.get().trim());
        let mut all = desk.designs.get();
        all.retain(|one| small(&one.title).contains(&sought));
        if *order.read() == "name" {
            sort(&mut all, |one, other| small(&one.title) > small(&other.title));
        }
        all.into_iter().map(|one| line(desk, one)).collect()
    };
    let many = move || desk.designs.with(|designs| designs.len() > 4);
    view! {
        <Window title=say::TITLE.said() on_close=move || store.window.set(None)>
            <p>{say::ON_THIS_DEVICE.said()}</p>
            <p class="wrong" role="alert">{words(move || desk.wrong.get())}</p>
            {while_so(many, move || {
                let seek = move |text| sought.set(text);
                let orders = [("date", say::BY_DATE), ("name", say::BY_NAME)];
                let orders = orders.map(|(key, words)| (key.to_owned(), words.said().to_owned())).to_vec();
                view! {
                    <TextField label=say::FIND.said() value=Signal::derive(move || sought.get()) on_input=seek/>
                    <Choice label=say::SORT_BY.said() choices=orders value=Signal::derive(move || order.get()) on_change=move |key| order.set(key)/>
                }
                .into_any()
            })}
            <ul class="shelf">{list(found)}</ul>
            {while_so(
                move || desk.designs.with(Vec::is_empty),
                || view! { <p>{say::NONE_YET.said()}</p> }.into_any(),
            )}
            {aside::bin(desk)}
            {aside::backup(desk)}
        </Window>
    }
}

fn line(desk: Desk, one: Shelved) -> Part {
    let key = (one.id.clone(), one.title.clone(), one.changed.clone(), one.picture.clone());
    part(&key, move || {
        let Shelved { id, title, strings, changed, picture, is_spoilt } = one;
        let (to_open, states_of) = (id.clone(), id.clone());
        let told = if changed.is_empty() { strings } else { say::changed_on(&changed, &strings) };
        view! {
            <li>
                <span class="shelf-picture" inner_html=picture></span>
                <span class="shelf-words">
                    <button type="button" class="link" on:click=move |_| desk.open(to_open.clone())>{title}</button>
                    <span class="unit">{told}</span>
                </span>
                <span class="shelf-acts">{move || acts(desk, id.clone(), !is_spoilt)}</span>
            </li>
            {earlier::of(desk, states_of)}
        }
        .into_any()
    })
}

/// What can be done with a design, or the field for its new name.
fn acts(desk: Desk, id: String, readable: bool) -> AnyView {
    let is_open = desk.is_open(&id);
    let [first, second, third, fourth] = [(); 4].map(|()| id.clone());
    if desk.renamed.read().as_ref() == Some(&id) {
        return view! {
            <TextField label=say::NEW_NAME.said() value=Signal::derive(move || desk.name.get()) on_input=move |text| desk.name.set(text)/>
            {button("cure", "", "", say::RENAME.said(), move || desk.rename(&first))}
            {button("quiet", "", "", say::LEAVE_IT.said(), move || desk.renamed.set(None))}
        }
        .into_any();
    }
    let rename = move || {
        // The client's name is no part of it.
        let name = shelf::take(&first).map(|design| design.title).unwrap_or_default();
        desk.name.set(name);
        desk.renamed.set(Some(first.clone()));
    };
    let known = if readable {
        view! {
            {button("quiet", "", "", say::RENAME.said(), rename)}
            {button("quiet", "", "", say::DUPLICATE.said(), move || desk.duplicate(&second))}
        }
        .into_any()
    } else {
        button("quiet", "", "", say::SAVE_AS_IS.said(), move || desk.save_as_it_is(&second))
    };
    let delete = if is_open {
        view! { <span class="unit">{say::OPEN_NOW.said()}</span> }.into_any()
    } else {
        let delete = move || desk.told(&shelf::bin(&third).map(drop));
        button("quiet", "", say::DELETE_HINT.said(), say::DELETE.said(), delete)
    };
    let states = move || earlier::show(desk, &fourth);
    let states = button("quiet", "", say::STATES_HINT.said(), say::STATES.said(), states);
    view! { {known}{states}{delete} }.into_any()
}
