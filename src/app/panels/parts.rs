//! The parts of the harp in place of the chart: the whole harp in space or from three sides, the template of a part, how the
//! pieces lie on planks; and beside it groups with the list of the parts, what is worth a look, and the files.

mod files;
mod list;
mod sides;
mod sizes;
mod space;

use std::sync::Arc;

use leptos::prelude::*;

use self::sides::Sides;
use self::space::InSpace;
use super::card::{PRINT_ROOT, chosen_language, usual_paper};
use crate::app::browser;
use crate::app::store::{Store, View};
use crate::app::widgets::button::button;
use crate::app::widgets::list::{either, while_so, words};
use crate::charts::{planks, whole};
use crate::design::edit::Edit;
use crate::design::letters::capital;
use crate::design::parts::{Parts as Made, parts};
use crate::design::presets::filled_soundbox;
use crate::engine::parts::{Part, PartsError};
use crate::engine::pitch::Letter;
use crate::engine::units::Length;
use crate::papers::building::building;
use crate::papers::cutting::cutting;
use crate::papers::html::html;
use crate::papers::template::bent::template_of;
use crate::papers::template::{part as template, svg};
use crate::words::papers::titled;
use crate::words::{Words, in_language, page, parts as said, parts_page as say};

/// What stands at the left.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Shown {
    Space,
    Sides,
    Template,
    Planks,
}

/// Its button, and what is said below it.
const ALL: [(Shown, &str, Words, Words); 4] = [
    (Shown::Space, "parts-space", say::IN_SPACE, say::SPACE_HINT),
    (Shown::Sides, "parts-sides", say::THREE_SIDES, say::SIDES_HINT),
    (Shown::Template, "parts-template", say::TEMPLATE, say::TEMPLATE_HINT),
    (Shown::Planks, "parts-planks", say::PLANKS, say::PLANKS_HINT),
];

/// The parts of the open design, and what of them is looked at.
#[derive(Clone, Copy)]
struct Bench {
    store: Store,
    made: Memo<Kept>,
    /// Whether a size is being pulled: then the parts stay as they were until it is let go.
    held: RwSignal<bool>,
    shown: RwSignal<Shown>,
    /// The place of the part in the list of parts.
    chosen: RwSignal<Option<usize>>,
}

/// The parts, or why there are none. The same only where they were not made again.
#[derive(Clone)]
struct Kept(Arc<Result<Made, PartsError>>);

impl PartialEq for Kept {
    fn eq(&self, other: &Self) -> bool {
        Arc::ptr_eq(&self.0, &other.0)
    }
}

impl Bench {
    /// What follows from the parts that there are; nothing where there are none.
    fn with<T: Default>(self, make: impl FnOnce(&Made) -> T) -> T {
        self.made.with(|made| made.0.as_ref().as_ref().map(make).unwrap_or_default())
    }

    /// What follows from the part that is chosen.
    fn with_chosen<T: Default>(self, make: impl FnOnce(&Part) -> T) -> T {
        let Some(at) = self.chosen.get() else { return T::default() };
        self.with(|made| made.whole.parts.get(at).map(make).unwrap_or_default())
    }

    /// Chooses a part, and shows its template unless the harp in space shows where it is.
    fn choose(self, at: usize) {
        self.chosen.set(Some(at));
        if self.shown.get_untracked() != Shown::Space {
            self.shown.set(Shown::Template);
        }
    }

    /// The notes of the strings.
    fn letters(self) -> Vec<Option<Letter>> {
        let resolved = self.store.resolved.get();
        resolved.harp.strings.iter().map(|string| string.note.map(|note| note.letter())).collect()
    }
}

/// A key, the words of a head, and what stands under it.
type Group = (&'static str, fn(Bench) -> String, fn(Bench) -> AnyView);

/// The groups beside the picture.
const GROUPS: [Group; 4] = [
    ("parts-list", |_| say::LIST.into(), list::table),
    ("parts-worth", list::worth_head, list::worth),
    ("parts-sizes", |_| say::SIZES.into(), sizes::form),
    ("parts-files", |_| say::FILES.into(), files::files),
];

/// The parts of the harp, drawn and listed.
#[component]
pub fn Parts(store: Store) -> impl IntoView {
    let held = RwSignal::new(false);
    let made = Memo::new(move |before: Option<&Kept>| match before {
        Some(before) if held.get() => before.clone(),
        _ => Kept(Arc::new(store.design.with(|design| parts(design)))),
    });
    let bench = Bench {
        store,
        made,
        held,
        shown: RwSignal::new(Shown::Space),
        chosen: RwSignal::new(None),
    };
    let is_there = move || made.with(|made| made.0.is_ok());
    let open = RwSignal::new(GROUPS[0].0);
    view! {
        <section class="drawing-panel" id="parts" tabindex="-1" aria-label=page::PARTS.said()>
            {either(
                is_there,
                move || picture(bench),
                move || nothing(bench),
            )}
            <div class="drawing-side" role="group" aria-label=say::LIST.said()>
                {while_so(is_there, move || {
                    GROUPS.iter().map(|group| group_of(bench, open, *group)).collect_view().into_any()
                })}
            </div>
        </section>
    }
}

/// Why there are no parts, and the ways to what is missing.
fn nothing(bench: Bench) -> AnyView {
    let Bench { store, made, .. } = bench;
    let why = move || match made.get().0.as_ref() {
        Err(why) => say::nothing(why),
        Ok(_) => String::new(),
    };
    let is = move |wanted: PartsError| {
        made.with(|made| made.0.as_ref().as_ref().is_err_and(|why| *why == wanted))
    };
    let to_sizes = move |_| match (is(PartsError::NoNeck), is(PartsError::TooFlat)) {
        (true, _) => store.view.set(View::Chart),
        (_, flat) => store.show_group(if flat { "shape" } else { "woods" }),
    };
    let sizes = move || {
        let words = if is(PartsError::NoNeck) { page::CHART } else { say::GIVE_SIZES };
        words.said().to_owned()
    };
    let take_usual = move || {
        let longest = store.analysis.with_untracked(|analysis| {
            let lengths = analysis.strings.iter().filter_map(|string| string.length.ok());
            lengths.map(Length::to_mm).fold(0.0, f64::max)
        });
        let mut geometry = store.design.with_untracked(|design| design.geometry.clone());
        geometry.soundbox = filled_soundbox(&geometry, longest);
        store.close_step();
        let outcome = store.change(&Edit::Geometry(Box::new(geometry)));
        store.close_step();
        store.tell(outcome, say::USUAL_TAKEN.said());
        browser::focus("parts");
    };
    view! {
        <div class="chart-empty parts-none">
            <p id="parts-none">{words(why)}</p>
            <p class="window-actions">
                <button type="button" class="tool main" id="parts-to-sizes" on:click=to_sizes>{words(sizes)}</button>
                {while_so(move || is(PartsError::NoBox), move || button("tool", "parts-usual", say::USUAL_HINT.said(), say::TAKE_USUAL.said(), take_usual).into_any())}
            </p>
        </div>
    }
    .into_any()
}

/// The head of a group, and what stands under it while it is open.
fn group_of(bench: Bench, open: RwSignal<&'static str>, (key, head, make): Group) -> AnyView {
    let is_open = move || open.get() == key;
    let turn = move |_| open.set(if is_open() { "" } else { key });
    view! {
        <div class="drawing-group" class:open=is_open>
            <h2>
                <button type="button" id=key aria-expanded=move || if is_open() { "true" } else { "false" } on:click=turn>
                    {words(move || head(bench))}
                </button>
            </h2>
            {while_so(is_open, move || make(bench))}
        </div>
    }
    .into_any()
}

/// The picture with the choice of it above and a hint below.
fn picture(bench: Bench) -> AnyView {
    let shown = bench.shown;
    let buttons = ALL.map(|(one, id, label, _)| {
        let is_on = move || if shown.get() == one { "true" } else { "false" };
        view! {
            <button type="button" class="tool" id=id aria-pressed=is_on on:click=move |_| shown.set(one)>
                {label.said()}
            </button>
        }
    });
    let hint = move || {
        ALL.iter()
            .find(|row| row.0 == shown.get())
            .map(|row| row.3.said().into())
            .unwrap_or_default()
    };
    let readout = move || {
        let own = bench.store.design.with(|design| design.geometry.woods.clone());
        let part =
            |part: &Part| titled(&capital(&template::named(part.name)), &list::sizes(part, &own));
        bench.with_chosen(part)
    };
    view! {
        <div class="loft">
            <div class="tools" role="toolbar" aria-label=say::SHOWN.said()>
                <span class="tool-group">{Vec::from(buttons)}</span>
            </div>
            {either(
                move || shown.get() == Shown::Space,
                move || view! { <InSpace bench=bench/> }.into_any(),
                move || {
                    either(
                        move || shown.get() == Shown::Sides,
                        move || view! { <Sides bench=bench/> }.into_any(),
                        move || on_paper(bench),
                    )
                    .into_any()
                },
            )}
            <p class="readout" id="parts-readout"><span>{words(readout)}</span></p>
            <p class="hint" id="parts-hint">{words(hint)}</p>
        </div>
    }
    .into_any()
}

/// A picture that is drawn as on white paper.
fn on_paper(bench: Bench) -> AnyView {
    let text = move || match bench.shown.get() {
        Shown::Planks => bench.with(|made| {
            planks::svg(&made.blanks, &made.nests, |blank| template::named(blank.name))
        }),
        Shown::Template => {
            bench.with_chosen(|part| svg::write(&of_part(bench, part)).unwrap_or_default())
        }
        Shown::Space | Shown::Sides => String::new(),
    };
    let is_empty = move || bench.shown.get() == Shown::Template && bench.chosen.get().is_none();
    let is_long = move || bench.shown.get() == Shown::Planks;
    // What scrolls is scrolled by keys too.
    let stop = move || is_long().then_some("0");
    view! {
        <div class="parts-paper" class:long=is_long tabindex=stop id="parts-paper" role="img" aria-label=move || bench_title(bench) inner_html=text></div>
        {while_so(is_empty, || view! { <p class="chart-empty">{say::NOTHING_CHOSEN.said()}</p> }.into_any())}
    }
    .into_any()
}

/// What the picture shows, for whoever does not see it.
fn bench_title(bench: Bench) -> String {
    let shown = bench.shown.get();
    let words = ALL.iter().find(|row| row.0 == shown).map(|row| row.2.said()).unwrap_or_default();
    let part = bench.with_chosen(|part| template::named(part.name));
    if shown == Shown::Template && !part.is_empty() {
        return said::title(&words, &part);
    }
    words.into()
}

/// The three sides of the harp as a picture.
fn sides(bench: Bench) -> String {
    let title = bench.store.design.with(|design| design.title.clone());
    bench.with(|made| whole::svg(&made.whole, &made.band, &bench.letters(), &title))
}

/// The template of a part of the open design.
fn of_part(bench: Bench, part: &Part) -> crate::papers::template::model::Template {
    let of = |made: &Made| bench.store.design.with(|design| Some(template_of(design, made, part)));
    bench.with(of).unwrap_or_else(|| template::template(part, ""))
}

/// Puts the cutting list and the order of building on paper, for the browser to print, in the language that was chosen last
/// for papers; where there are no parts, what is laid stays.
pub fn lay_parts(store: Store) {
    let design = store.design.get_untracked();
    if let Ok(made) = parts(&design) {
        let paper = usual_paper();
        let sheets = in_language(chosen_language(), || {
            [cutting(&design, &made, paper), building(&design, &made, paper)]
                .map(|sheet| html(&sheet))
        });
        browser::fill(PRINT_ROOT, &sheets.concat(), "");
    }
}
