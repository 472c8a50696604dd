//! What lies on the desk: the chosen material, and what was typed and is not in the design.

use leptos::prelude::*;

use crate::app::rows::sentence;
use crate::app::store::{Outcome, Store};
use crate::design::document::MaterialSpec;
use crate::design::edit::Edit;
use crate::design::library::{built_in, find, is_own};
use crate::design::material_edit::{free_name, is_built_in, uses};
use crate::design::material_facts::{BY_HAND, FactError, Property, inside};
use crate::engine::material::said;
use crate::words::materials as say;

/// A field: key of the material, property, and place in its row. Without a property: the name in
/// place 0, the key in place 1.
type Field = (String, Option<Property>, usize);
/// The place of the source in a row.
pub(super) const SOURCE: usize = 2;

/// What was typed into fields, in the order of the fields. There are few, so they are looked through.
#[derive(Clone, Debug, Default)]
struct Drafts(Vec<(Field, String)>);

impl Drafts {
    fn get(&self, field: &Field) -> Option<&String> {
        self.0.iter().find(|draft| draft.0 == *field).map(|draft| &draft.1)
    }

    fn insert(&mut self, field: Field, text: String) {
        self.retain(|other| *other != field);
        let place = self.0.iter().take_while(|draft| draft.0 < field).count();
        self.0.insert(place, (field, text));
    }

    fn retain(&mut self, keep: impl Fn(&Field) -> bool) {
        self.0.retain(|draft| keep(&draft.0));
    }

    fn keys(&self) -> impl Iterator<Item = &Field> {
        self.0.iter().map(|draft| &draft.0)
    }
}

/// A line of the list.
#[derive(Clone, Debug, PartialEq, Eq, Hash)]
pub(super) struct ListedMaterial {
    pub(super) key: String,
    pub(super) name: String,
    pub(super) words: String,
}

/// The signals of the panel.
#[derive(Clone, Copy)]
pub(super) struct Desk {
    pub(super) store: Store,
    chosen: RwSignal<String>,
    drafts: RwSignal<Drafts>,
    /// The material that the form shows.
    pub(super) current: Memo<MaterialSpec>,
    pub(super) lines: Memo<Vec<ListedMaterial>>,
    /// What was done; only [`Desk::tell`] says that something was.
    told: RwSignal<String>,
    /// Key, name and density of a material to be added.
    pub(super) new: RwSignal<[String; 3]>,
}

impl Desk {
    /// A desk with the material of the string under the cursor.
    pub(super) fn new(store: Store) -> Self {
        let row = *store.selection.get_untracked().rows().start();
        let chosen = store.design.with_untracked(|design| {
            let string = design.strings.get(row);
            let found = string.and_then(|s| find(&design.materials, &s.make_up.material));
            found.or(design.materials.first()).map(|material| material.key.clone())
        });
        let chosen = RwSignal::new(chosen.unwrap_or_default());
        let current = Memo::new(move |_| {
            let key = chosen.get();
            store.design.with(|design| {
                let all = || design.materials.iter().chain(built_in());
                all().find(|spec| spec.key == key).or(all().next()).cloned().unwrap_or_default()
            })
        });
        let lines = Memo::new(move |_| {
            store.design.with(|design| {
                let own = design.materials.iter().map(|spec| {
                    let used = match uses(design, &spec.key) {
                        0 => say::UNUSED.into(),
                        count => say::used(&count),
                    };
                    let words = match (is_built_in(&spec.key), is_own(spec)) {
                        (true, false) => used,
                        (true, true) => say::listed_changed(&used),
                        (false, _) => say::listed_own(&used),
                    };
                    (spec, words)
                });
                let others = built_in().iter().filter(|spec| {
                    design.materials.iter().all(|own| !own.key.eq_ignore_ascii_case(&spec.key))
                });
                let others = others.map(|spec| (spec, say::LISTED_BUILT_IN.into()));
                let line = |(spec, words): (&MaterialSpec, String)| ListedMaterial {
                    key: spec.key.clone(),
                    name: said(&spec.name).to_owned(),
                    words,
                };
                own.chain(others).map(line).collect()
            })
        });
        Self {
            store,
            chosen,
            drafts: RwSignal::default(),
            current,
            lines,
            told: RwSignal::default(),
            new: RwSignal::default(),
        }
    }

    /// The key of the material in the form.
    pub(super) fn key(self) -> String {
        self.current.with_untracked(|spec| spec.key.clone())
    }

    /// Shows another material. What was typed and not used stays in its fields.
    pub(super) fn choose(self, key: String) {
        self.store.close_step();
        self.told.set(String::new());
        self.chosen.set(key);
    }

    /// What the fields of a row say, and its source where it was typed.
    fn row(self, spec: &MaterialSpec, property: Property) -> ([String; 2], Option<String>) {
        self.drafts.with(|drafts| {
            let draft = |place| drafts.get(&(spec.key.clone(), Some(property), place)).cloned();
            let [first, second] = property.texts(spec);
            let texts = [draft(0).unwrap_or(first), draft(1).unwrap_or(second)];
            (texts, draft(SOURCE))
        })
    }

    /// The material as a row's fields have it.
    fn typed(self, spec: &MaterialSpec, property: Property) -> Result<MaterialSpec, FactError> {
        let (texts, source) = self.row(spec, property);
        property.typed(spec, [&texts[0], &texts[1]], source.as_deref())
    }

    /// What stands in a field: what was typed, until it is another thing in the design, as after an
    /// undo.
    pub(super) fn shown(self, property: Property, place: usize) -> String {
        self.current.with(|spec| {
            let field = (spec.key.clone(), Some(property), place);
            let draft = self.drafts.with(|drafts| drafts.get(&field).cloned());
            if let Some(draft) = draft
                && self.typed(spec, property).as_ref().map_or(true, |typed| typed == spec)
            {
                return draft;
            }
            match place {
                SOURCE => {
                    property.source(spec).map(|known| said(known.0).to_owned()).unwrap_or_default()
                }
                place => property.texts(spec).into_iter().nth(place).unwrap_or_default(),
            }
        })
    }

    /// What is wrong with a row, in a sentence.
    pub(super) fn wrong(self, property: Property) -> Option<String> {
        let wrong = self.current.with(|spec| self.typed(spec, property).err());
        wrong.map(|error| sentence(&error.to_string()))
    }

    /// Takes what is typed into a field, and into the design where it can be used.
    pub(super) fn input(self, property: Property, place: usize, text: String) {
        let spec = self.current.get_untracked();
        self.told.set(String::new());
        self.drafts.update(|drafts| drafts.insert((spec.key.clone(), Some(property), place), text));
        if let Ok(material) = untrack(|| self.typed(&spec, property))
            && material != spec
        {
            self.store.send(&Edit::Fact { material, property: Some(property) });
        }
    }

    /// A row is left: what is in the design is shown as the design has it.
    pub(super) fn leave(self, property: Property) {
        self.store.close_step();
        // A field that goes with the keyboard in it is left when it is gone.
        let Some(spec) = self.current.try_get_untracked() else { return };
        if untrack(|| self.typed(&spec, property)).is_err() {
            return;
        }
        let known = property.source(&spec).is_some();
        self.drafts.update(|drafts| {
            drafts.retain(|(key, of, place)| {
                *key != spec.key || *of != Some(property) || (*place == SOURCE && !known)
            });
        });
    }

    /// Puts a measured figure into the design.
    pub(super) fn take(self, property: Property, text: &str, source: &str) {
        let spec = self.current.get_untracked();
        self.store.close_step();
        match property.typed(&spec, [text, ""], Some(source)) {
            Ok(material) => {
                self.drafts.update(|drafts| {
                    drafts.retain(|(key, of, _)| *key != spec.key || *of != Some(property));
                });
                let taken = self.store.change(&Edit::Fact { material, property: Some(property) });
                self.store.close_step();
                let label = inside(property.label());
                self.tell(taken, &say::taken(&label, &said(&spec.name), &text, &property.unit()));
            }
            Err(error) => self.told.set(sentence(&error.to_string())),
        }
    }

    /// Tells an outcome: what was done in `words`, here; what was not where every refusal is told.
    pub(super) fn tell(self, outcome: Outcome, words: &str) {
        let done = self.store.tell(outcome, "");
        self.told.set(if done { words.to_owned() } else { String::new() });
    }

    /// What was done last.
    pub(super) fn told(self) -> String {
        self.told.get()
    }

    /// What was typed for name (0) or key (1) of the material in the form.
    pub(super) fn naming(self, place: usize) -> Option<String> {
        let field = (self.current.with(|spec| spec.key.clone()), None, place);
        self.drafts.with(|drafts| drafts.get(&field).cloned())
    }

    /// Keeps what is typed for name or key, or forgets it.
    pub(super) fn set_naming(self, place: usize, text: Option<String>) {
        let field = (self.key(), None, place);
        self.drafts.update(|drafts| match text {
            Some(text) => drafts.insert(field, text),
            None => drafts.retain(|other| *other != field),
        });
    }

    /// What was typed for a material goes with it under its new key.
    pub(super) fn carry(self, from: &str, to: &str) {
        self.set_naming(1, None);
        self.drafts.update(|drafts| {
            let all = std::mem::take(drafts);
            for ((key, property, place), text) in all.0 {
                let key = if key == from { to.to_owned() } else { key };
                drafts.insert((key, property, place), text);
            }
        });
    }

    /// Forgets what was typed for a material.
    pub(super) fn forget(self, key: &str) {
        self.store.close_step();
        self.drafts.update(|drafts| drafts.retain(|field| field.0 != key));
    }

    /// Whether a field of a material holds something that is not in the design.
    pub(super) fn is_unfinished(self, key: &str) -> bool {
        let fields = self.drafts.with(|drafts| drafts.keys().cloned().collect::<Vec<_>>());
        fields.iter().any(|field| field.0 == key && self.open(field).is_some())
    }

    /// What was typed and is not in the design, in words.
    pub(super) fn unfinished(self) -> Vec<String> {
        untrack(|| {
            let fields = self.drafts.with(|drafts| drafts.keys().cloned().collect::<Vec<_>>());
            let mut left: Vec<String> =
                fields.iter().filter_map(|field| self.open(field)).collect();
            if self.new.with(|new| new.iter().any(|text| !text.trim().is_empty())) {
                left.push(say::LEFT_NEW.into());
            }
            left.dedup();
            left
        })
    }

    /// The words for a field that holds something that is not in the design.
    fn open(self, field: &Field) -> Option<String> {
        let (key, property, place) = field;
        let text = self.drafts.with(|drafts| drafts.get(field).cloned())?;
        self.store.design.with(|design| {
            let spec = design.materials.iter().chain(built_in()).find(|spec| spec.key == *key)?;
            let name = said(&spec.name);
            match property {
                Some(property) => {
                    let unusable = self.typed(spec, *property).is_err();
                    let idle = *place == SOURCE
                        && property.source(spec).is_none()
                        && !text.trim().is_empty()
                        && text.trim() != BY_HAND.english();
                    let left = || say::left_figure(&inside(property.label()), &name);
                    (unusable || idle).then(left)
                }
                None if *place == 0 => {
                    free_name(design, key, &text).is_err().then(|| say::left_name(&name))
                }
                None => (text.trim() != key).then(|| say::left_key(&name)),
            }
        })
    }
}
