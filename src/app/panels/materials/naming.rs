//! Key, name and kind of a material, and a material that is added.

use leptos::ev::KeyboardEvent;
use leptos::prelude::*;

use super::desk::Desk;
use super::tests_of::{Use, trial_form};
use crate::app::rows::sentence;
use crate::app::widgets::button::button;
use crate::app::widgets::fields::{Choice, TextField};
use crate::app::widgets::list::{while_so, words};
use crate::design::document::{ClassSpec, MaterialSpec};
use crate::design::edit::Edit;
use crate::design::material_edit::{copy, free_key, free_name, is_built_in};
use crate::design::material_facts::{CLASSES, Property};
use crate::design::trial::{Outcome, Trial};
use crate::engine::material::said;
use crate::words::materials as say;

fn classes() -> Vec<(String, String)> {
    CLASSES.map(|(_, key, words)| (key.to_owned(), words.into())).to_vec()
}

fn class_key(class: ClassSpec) -> String {
    CLASSES.iter().find(|row| row.0 == class).map_or("", |row| row.1).to_owned()
}

fn class_of(key: &str) -> ClassSpec {
    CLASSES.iter().find(|row| row.1 == key).map(|row| row.0).unwrap_or_default()
}

/// A field whose texts are no edits has the undo of the browser.
pub(super) fn own_undo(event: KeyboardEvent) {
    let command = event.ctrl_key() || event.meta_key();
    if command && matches!(event.key().to_ascii_lowercase().as_str(), "z" | "y") {
        event.stop_propagation();
    }
}

/// Key, name and kind. Those of a built-in material stay; a copy has its own.
#[component]
pub(super) fn Naming(desk: Desk) -> impl IntoView {
    let store = desk.store;
    let own = Memo::new(move |_| desk.current.with(|spec| !is_built_in(&spec.key)));
    let name_error = Memo::new(move |_| {
        let text = desk.naming(0)?;
        let key = desk.current.with(|spec| spec.key.clone());
        store.design.with(|design| free_name(design, &key, &text).err())
    });
    let name = Signal::derive(move || {
        let own = desk.current.with(|spec| spec.name.clone());
        match desk.naming(0) {
            // As typed, until it is another thing in the design, as after an undo.
            Some(text) if name_error.with(Option::is_some) || text.trim() == own => text,
            _ => own,
        }
    });
    let set_name = move |text: String| {
        desk.set_naming(0, Some(text.clone()));
        let spec = desk.current.get_untracked();
        let free = store.design.with_untracked(|design| free_name(design, &spec.key, &text));
        if free.is_ok() {
            let material = MaterialSpec { name: text.trim().to_owned(), ..spec };
            store.send(&Edit::Fact { material, property: None });
        }
    };
    let leave_name = move |_| {
        store.close_step();
        // A field that goes with the keyboard in it is left when it is gone.
        if name_error.try_with_untracked(Option::is_none) == Some(true) {
            desk.set_naming(0, None);
        }
    };
    let class = Signal::derive(move || desk.current.with(|spec| class_key(spec.class)));
    let set_class = move |key: String| {
        let material = MaterialSpec { class: class_of(&key), ..desk.current.get_untracked() };
        store.close_step();
        store.send(&Edit::Fact { material, property: None });
        store.close_step();
    };
    let wrong = RwSignal::new(String::new());
    let key = Signal::derive(move || {
        desk.naming(1).unwrap_or_else(|| desk.current.with(|spec| spec.key.clone()))
    });
    let set_key = move |text| {
        wrong.set(String::new());
        desk.set_naming(1, Some(text));
    };
    // What is done with the key that was typed, if it is free.
    let with_key = move |act: &dyn Fn(MaterialSpec, String)| {
        let spec = desk.current.get_untracked();
        let free = store.design.with_untracked(|d| free_key(d, &key.get_untracked()));
        match free {
            Ok(to) => {
                wrong.set(String::new());
                act(spec, to);
            }
            Err(error) => wrong.set(sentence(&error.to_string())),
        }
    };
    let rename = move || {
        with_key(&|spec, to| {
            let edit = Edit::RenameMaterial { from: spec.key.clone(), to: to.clone() };
            let renamed = store.change(&edit);
            if renamed.is_ok() {
                desk.carry(&spec.key, &to);
                desk.choose(to.clone());
            }
            desk.tell(renamed, &say::renamed(&to, &said(&spec.name)));
        });
    };
    let copy_it = move || {
        with_key(&|spec, to| {
            let copied = store.design.with_untracked(|design| copy(design, &spec, &to));
            let added = store.change(&Edit::Material(copied));
            if added.is_ok() {
                desk.set_naming(1, None);
                desk.choose(to);
            }
            desk.tell(added, &say::copied(&said(&spec.name)));
        });
    };
    Effect::new(move |_| {
        desk.current.with(|_| ());
        wrong.set(String::new());
    });
    view! {
        <div class="naming">
            {while_so(
                move || own.get(),
                move || view! {
                    <div on:focusout=leave_name>
                        <TextField label=say::NAME.said() value=name on_input=set_name/>
                    </div>
                    <Choice label=say::KIND.said() choices=classes() value=class on_change=set_class/>
                }.into_any(),
            )}
            <div on:keydown=own_undo>
                <TextField label=say::SHORT_NAME.said() value=key on_input=set_key/>
            </div>
            <p class="window-actions">
                {while_so(
                    move || own.get(),
                    move || button("tool", "", "", say::RENAME.said(), rename),
                )}
                {button("tool", "", "", say::COPY.said(), copy_it)}
            </p>
            <p class="wrong" role="alert">
                {words(move || name_error.get().map(|error| sentence(&error.to_string())).unwrap_or_default())}
                {words(move || wrong.get())}
            </p>
        </div>
        {while_so(
            move || !own.get(),
            || view! { <p class="hint">{say::NAMES_STAY.said()}</p> }.into_any(),
        )}
    }
}

/// A material of the user's from its first figure.
#[component]
pub(super) fn NewMaterial(desk: Desk) -> impl IntoView {
    let store = desk.store;
    let class = RwSignal::new(class_key(ClassSpec::default()));
    let wrong = RwSignal::new(String::new());
    let weighed = RwSignal::new(None::<Outcome>);
    let field = move |place: usize, label: &'static str, hint: &'static str| {
        let value = Signal::derive(move || desk.new.with(|new| new[place].clone()));
        let on_input = move |text| {
            wrong.set(String::new());
            desk.new.update(|new| new[place] = text);
        };
        view! { <TextField label=label value=value on_input=on_input hint=hint/> }
    };
    let made = move || -> Result<MaterialSpec, String> {
        let [key, name, density] = desk.new.get_untracked();
        store.design.with_untracked(|design| {
            let key = free_key(design, &key).map_err(|error| error.to_string())?;
            let name = if name.trim().is_empty() { key.clone() } else { name.trim().to_owned() };
            free_name(design, &key, &name).map_err(|error| error.to_string())?;
            let class = class_of(&class.get_untracked());
            let blank = MaterialSpec { key, name, class, ..MaterialSpec::default() };
            // A figure from weighing says so, as long as nobody typed another one over it.
            let weighed = weighed.get_untracked().filter(|outcome| outcome.text == density);
            let source = weighed.as_ref().map_or("", |outcome| &outcome.source);
            let off = weighed.as_ref().and_then(|outcome| outcome.off_percent.as_deref());
            let with = Property::Density.typed(&blank, [&density, ""], Some(source));
            let with = match (with, off) {
                (Ok(spec), Some(off)) => {
                    Property::DensitySpread.typed(&spec, [off, ""], Some(source))
                }
                (with, _) => with,
            };
            with.map_err(|error| error.to_string())
        })
    };
    let add = move || match made() {
        Ok(material) => {
            let (key, name) = (material.key.clone(), material.name.clone());
            let added = store.change(&Edit::Material(material));
            if added.is_ok() {
                desk.new.set(Default::default());
                weighed.set(None);
                desk.choose(key);
            }
            desk.tell(added, &say::added(&name));
        }
        Err(error) => wrong.set(sentence(&error)),
    };
    let weigh = Use {
        words: say::USE_AS_DENSITY.into(),
        take: Callback::new(move |outcome: Outcome| {
            desk.new.update(|new| new[2].clone_from(&outcome.text));
            weighed.set(Some(outcome));
        }),
    };
    view! {
        <details class="new-material">
            <summary>{say::NEW.said()}</summary>
            <fieldset aria-label=say::NEW.said() on:keydown=own_undo>
                {field(0, say::NEW_SHORT.said(), say::NEW_SHORT_EXAMPLE.said())}
                {field(1, say::NEW_FULL.said(), "")}
                <Choice label=say::KIND.said() choices=classes() value=class on_change=move |key| class.set(key)/>
                {field(2, say::NEW_DENSITY.said(), "1320")}
                {trial_form(store, Trial::Weighing, vec![weigh])}
                <p class="wrong" role="alert">{words(move || wrong.get())}</p>
                {button("tool", "", "", say::ADD.said(), add)}
            </fieldset>
        </details>
    }
}
