//! The designs that this browser keeps.

mod aside;

use leptos::prelude::*;

use super::new_design::replace;
use crate::app::browser::{self, StorageError};
use crate::app::shelf::{self, Shelved};
use crate::app::store::{Origin, Store};
use crate::app::widgets::button::button;
use crate::app::widgets::fields::TextField;
use crate::app::widgets::list::{Part, list, part, while_so, words};
use crate::app::widgets::window::Window;
use crate::design::document::Design;
use crate::design::edit::{Edit, Field};
use crate::design::letters::small;

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
            Err(why) => self.wrong.set(format!("That design was not opened: {why}.")),
        }
    }

    fn is_open(self, id: &str) -> bool {
        matches!(&*self.store.origin.read(), Origin::Kept(open) if open == id)
    }

    /// Keeps a changed design under a name and shows the list anew.
    fn put(self, from: &str, to: &str, change: impl FnOnce(&mut Design)) {
        let done = shelf::take(from).map_err(|why| why.to_string()).and_then(|mut design| {
            change(&mut design);
            shelf::put(to, &design).map_err(|why| why.to_string())
        });
        match done {
            Ok(_) => self.look_again(),
            Err(why) => self.wrong.set(format!("That was not done: {why}.")),
        }
    }

    fn duplicate(self, id: &str) {
        self.put(id, &browser::fresh_name(), |design| {
            design.title = format!("{} (copy)", design.title).trim().to_owned();
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
            Err(why) => self.wrong.set(format!("That was not done: {why}.")),
        }
    }

    /// Hands over the text of a design that cannot be read, as it is.
    fn save_as_it_is(self, id: &str) {
        let text = shelf::text(id).unwrap_or_default();
        let name = format!("design-{id}.json");
        if let Err(why) = browser::offer_file(&name, "application/json", &text) {
            self.wrong.set(format!("It was not saved: {why}."));
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
        wrong: RwSignal::new(String::new()),
    };
    let sought = RwSignal::new(String::new());
    let found = move || {
        let sought = small(sought.get().trim());
        let all = desk.designs.get().into_iter();
        all.filter(|one| small(&one.title).contains(&sought)).map(|one| line(desk, one)).collect()
    };
    let many = move || desk.designs.with(|designs| designs.len() > 4);
    view! {
        <Window title="Designs kept in this browser" on_close=move || store.window.set(None)>
            <p>"They stay on this device. Save a design as a file, or all of them as a backup, to keep them for good or to move them."</p>
            <p class="wrong" role="alert">{words(move || desk.wrong.get())}</p>
            {while_so(many, move || {
                let seek = move |text| sought.set(text);
                view! { <TextField label="Find by name" value=Signal::derive(move || sought.get()) on_input=seek/> }.into_any()
            })}
            <ul class="shelf">{list(found)}</ul>
            {while_so(
                move || desk.designs.with(Vec::is_empty),
                || view! { <p>"None yet. A design is kept here as soon as you change it."</p> }.into_any(),
            )}
            {aside::bin(desk)}
            {aside::backup(desk)}
        </Window>
    }
}

fn line(desk: Desk, one: Shelved) -> Part {
    let key = (one.id.clone(), one.title.clone(), one.changed.clone(), one.picture.clone());
    part(&key, move || {
        let Shelved { id, title, strings, changed, picture } = one;
        let readable = !picture.is_empty() || !strings.starts_with("cannot");
        let to_open = id.clone();
        let day =
            if changed.is_empty() { String::new() } else { format!(", changed on {changed}") };
        view! {
            <li>
                <span class="shelf-picture" inner_html=picture></span>
                <span class="shelf-words">
                    <button type="button" class="link" on:click=move |_| desk.open(to_open.clone())>{title}</button>
                    <span class="unit">{strings}{day}</span>
                </span>
                <span class="shelf-acts">{move || acts(desk, id.clone(), readable)}</span>
            </li>
        }
        .into_any()
    })
}

/// What can be done with a design, or the field for its new name.
fn acts(desk: Desk, id: String, readable: bool) -> AnyView {
    let is_open = desk.is_open(&id);
    let (first, second, third) = (id.clone(), id.clone(), id.clone());
    if desk.renamed.read().as_ref() == Some(&id) {
        return view! {
            <TextField label="New name" value=Signal::derive(move || desk.name.get()) on_input=move |text| desk.name.set(text)/>
            {button("cure", "", "", "Rename", move || desk.rename(&first))}
            {button("quiet", "", "", "Leave it", move || desk.renamed.set(None))}
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
            {button("quiet", "", "", "Rename", rename)}
            {button("quiet", "", "", "Duplicate", move || desk.duplicate(&second))}
        }
        .into_any()
    } else {
        button("quiet", "", "", "Save as it is", move || desk.save_as_it_is(&second))
    };
    let delete = if is_open {
        view! { <span class="unit">"open now"</span> }.into_any()
    } else {
        let delete = move || desk.told(&shelf::bin(&third).map(drop));
        button("quiet", "", "Puts it into the bin below", "Delete", delete)
    };
    view! { {known}{delete} }.into_any()
}
