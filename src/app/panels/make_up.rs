//! The make-up of the selected strings: plain, wound or weighed, with its section drawn to scale.

use std::ops::Range;

use leptos::prelude::*;

use crate::app::browser;
use crate::app::rows;
use crate::app::section::{self, SectionDrawing, SectionShape};
use crate::app::store::{Store, Window as Which};
use crate::app::widgets::button::button;
use crate::app::widgets::fields::TextField;
use crate::app::widgets::list::{self, list, part, while_so};
use crate::app::widgets::window::Window;
use crate::design::decimal::decimal;
use crate::design::document::{Bare, Design, LayerSpec, MOST_LAYERS, MakeUpSpec, WeighedSpec};
use crate::design::edit::{Column, Edit};
use crate::design::library;
use crate::design::resolve::resolve;
use crate::engine::material::{key_of, said};
use crate::words::{Words, details as say, numeral};

/// Asked when the window is closed with a make-up that was changed and not used.
const UNUSED: Words = say::UNUSED;

/// The editor of a make-up. Nothing changes in the chart before it is taken.
#[component]
pub fn MakeUpWindow(store: Store) -> impl IntoView {
    let rows = store.selection.get_untracked().rows();
    let (first, last) = (*rows.start(), *rows.end());
    let design = store.design.get_untracked();
    let Some(string) = design.strings.get(first).cloned() else {
        return view! {
            <Window title=say::MAKE_UP.said() on_close=move || store.window.set(None)>
                <p>{say::NO_STRING.said()}</p>
            </Window>
        }
        .into_any();
    };
    let choices = StoredValue::new(materials(&design));
    let before = string.make_up.clone();
    let draft = RwSignal::new(before.clone());
    // The first of the selected strings, with the make-up as drafted, computed as in the chart.
    let tried = Memo::new(move |_| {
        let mut string = string.clone();
        string.make_up = draft.get();
        Design { strings: vec![string], ..(*design).clone() }
    });
    let title = if first == last {
        say::make_up_of(&(first + 1))
    } else {
        say::make_up_of_several(&(first + 1), &(last + 1))
    };
    let before = StoredValue::new(before);
    let take = move || {
        let after = draft.get_untracked();
        // What was not changed is left alone; a single string that is as it was too.
        let done = match before.with_value(|before| taken(first..last + 1, before, after)) {
            Some(edit) => store.tell(store.change(&edit), ""),
            None => true,
        };
        if done {
            store.window.set(None);
        }
    };
    // However it is closed, what was changed is not lost unasked.
    let close = move || {
        if store.window.get_untracked() == Some(Which::MakeUp) {
            let changed = draft.with_untracked(|draft| before.with_value(|before| draft != before));
            if changed && browser::confirmed(UNUSED.said()) {
                take();
            } else {
                store.window.set(None);
            }
        }
    };
    view! {
        <Window title=title wide=true on_close=close>
            <div class="make-up">
                <div class="make-up-form">
                    <Kind draft=draft/>
                    <Core draft=draft choices=choices/>
                    <Layers draft=draft choices=choices/>
                    <Weighed draft=draft/>
                </div>
                <Tried tried=tried/>
            </div>
            {(first != last).then(|| view! { <p class="hint">{say::SEVERAL_HINT.said()}</p> })}
            <p class="window-actions at-hand">
                <button type="button" class="tool main" id="take-make-up" on:click=move |_| take()>
                    {if first == last { say::USE_ONE.said() } else { say::USE_SEVERAL.said() }}
                </button>
            </p>
        </Window>
    }
    .into_any()
}

/// What the draft changes, if anything. Of several plain strings, what is left as it was stays as
/// each of them has it: so a material can be set and every gauge kept, or the other way round.
fn taken(rows: Range<usize>, before: &MakeUpSpec, after: MakeUpSpec) -> Option<Edit> {
    let plain = before.is_plain() && after.is_plain();
    let (material, gauge) = (before.material != after.material, before.diameter != after.diameter);
    if rows.len() < 2 || !plain || material == gauge {
        let same = plain && !material && !gauge;
        return (!same).then_some(Edit::MakeUp { rows, make_up: after });
    }
    let (column, text) =
        if material { (Column::MakeUp, after.material) } else { (Column::Gauge, after.diameter) };
    let texts = rows.clone().map(|_| vec![text.clone()]).collect();
    Some(Edit::Block { row: rows.start, columns: vec![Some(column)], texts })
}

/// The materials that a string can be made of, each a key and its name: the design's, then the
/// built-in ones.
pub(super) fn materials(design: &Design) -> Vec<(String, String)> {
    let own = design.materials.iter();
    let others = library::built_in()
        .iter()
        .filter(|material| design.materials.iter().all(|own| own.key != material.key));
    own.chain(others)
        .map(|material| (material.key.clone(), said(&material.name).to_owned()))
        .collect()
}

/// The choice of a material. A text that means none of them is kept and shown as it is.
#[component]
fn MaterialChoice(
    choices: StoredValue<Vec<(String, String)>>,
    #[prop(into)] value: Signal<String>,
    #[prop(into)] on_change: Callback<String>,
) -> impl IntoView {
    let key = move || {
        let text = value.get();
        let own = choices.with_value(|all| all.iter().any(|(key, _)| *key == text));
        if own { text } else { key_of(&text).map_or(text, str::to_owned) }
    };
    let options = move || {
        let now = key();
        let mut all = choices.get_value();
        if all.iter().all(|(key, _)| *key != now) {
            let words = if now.is_empty() { say::CHOOSE_ONE.into() } else { format!("{now}?") };
            all.insert(0, (now.clone(), words));
        }
        all.into_iter()
            .map(|(key, name)| view! { <option value=key.clone() selected=key == now>{name}</option> })
            .collect_view()
    };
    view! {
        <label class="field">
            <span>{say::MATERIAL.said()}</span>
            <select prop:value=key on:change=move |event| on_change.run(event_target_value(&event))>
                {options}
            </select>
        </label>
    }
}

#[component]
fn Kind(draft: RwSignal<MakeUpSpec>) -> impl IntoView {
    let kind =
        move || draft.with(|d| if d.weighed.is_some() { 2 } else { usize::from(d.is_wound()) });
    let set = move |kind: usize| {
        draft.update(|d| {
            d.weighed = (kind == 2).then(WeighedSpec::default);
            match kind {
                1 if d.layers.is_empty() => d.layers.push(new_layer()),
                1 => {}
                _ => {
                    d.layers.clear();
                    d.bare = Bare::default();
                }
            }
        });
    };
    let choice = move |index: usize, words: &'static str| {
        view! {
            <label>
                <input type="radio" name="kind" prop:checked=move || kind() == index on:change=move |_| set(index)/>
                {words}
            </label>
        }
    };
    view! {
        <fieldset class="kind">
            <legend>{say::KIND.said()}</legend>
            {choice(0, say::PLAIN.said())}
            {choice(1, say::WOUND.said())}
            {choice(2, say::WEIGHED.said())}
        </fieldset>
    }
}

fn new_layer() -> LayerSpec {
    LayerSpec {
        material: "bronze".to_owned(),
        size: String::new(),
        width: String::new(),
        packing_percent: 100.0,
    }
}

/// A text field of the draft.
#[component]
fn Part(
    draft: RwSignal<MakeUpSpec>,
    #[prop(into)] label: String,
    of: fn(&mut MakeUpSpec) -> Option<&mut String>,
    #[prop(optional)] list: &'static str,
    #[prop(optional)] hint: &'static str,
) -> impl IntoView {
    let value = move || draft.with(|d| of(&mut d.clone()).cloned().unwrap_or_default());
    let on_input = move |event| {
        let text = event_target_value(&event);
        draft.update(|d| {
            if let Some(place) = of(d) {
                *place = text;
            }
        });
    };
    view! {
        <label class="field">
            <span>{label}</span>
            <input type="text" autocomplete="off" list=list placeholder=hint prop:value=value on:input=on_input/>
        </label>
    }
}

#[component]
fn Core(draft: RwSignal<MakeUpSpec>, choices: StoredValue<Vec<(String, String)>>) -> impl IntoView {
    let material = Signal::derive(move || draft.with(|d| d.material.clone()));
    let set_material = move |key| draft.update(|d| d.material = key);
    let legend =
        move || draft.with(|d| if d.is_plain() { say::STRING.said() } else { say::CORE.said() });
    view! {
        <fieldset>
            <legend>{legend}</legend>
            <MaterialChoice choices=choices value=material on_change=set_material/>
            <Part draft=draft label=say::DIAMETER.said() of=|d| Some(&mut d.diameter) hint="0.81 or .032\""/>
            {while_so(
                move || draft.with(MakeUpSpec::is_wound),
                move || view! {
                    <Part draft=draft label=say::BARE_BOARD.said() of=|d| Some(&mut d.bare.board) hint="0"/>
                    <Part draft=draft label=say::BARE_PIN.said() of=|d| Some(&mut d.bare.pin) hint="0"/>
                }.into_any(),
            )}
        </fieldset>
    }
}

#[component]
fn Layers(
    draft: RwSignal<MakeUpSpec>,
    choices: StoredValue<Vec<(String, String)>>,
) -> impl IntoView {
    let count = Memo::new(move |_| draft.with(|d| d.layers.len()));
    let add = move || draft.update(|d| d.layers.push(new_layer()));
    view! {
        {list(move || {
            let layer = |index| part(&index, move || OneLayer(OneLayerProps { draft, index, choices }).into_any());
            (0..count.get()).map(layer).collect()
        })}
        {while_so(
            move || (1..MOST_LAYERS).contains(&count.get()),
            move || button("tool", "", "", say::ADD_LAYER.said(), add),
        )}
    }
}

#[component]
fn OneLayer(
    draft: RwSignal<MakeUpSpec>,
    index: usize,
    choices: StoredValue<Vec<(String, String)>>,
) -> impl IntoView {
    let material = Signal::derive(move || {
        draft.with(|d| d.layers.get(index).map(|layer| layer.material.clone())).unwrap_or_default()
    });
    let set_material = move |key: String| {
        draft.update(|d| {
            if let Some(layer) = d.layers.get_mut(index) {
                layer.material = key;
            }
        });
    };
    let text = move |label: &'static str,
                     of: fn(&mut LayerSpec) -> &mut String,
                     list: &'static str| {
        let value = Signal::derive(move || {
            draft
                .with(|d| d.layers.get(index).map(|layer| of(&mut layer.clone()).clone()))
                .unwrap_or_default()
        });
        let on_input = move |event| {
            let text = event_target_value(&event);
            draft.update(|d| {
                if let Some(layer) = d.layers.get_mut(index) {
                    *of(layer) = text;
                }
            });
        };
        view! {
            <label class="field">
                <span>{label}</span>
                <input type="text" autocomplete="off" list=list prop:value=move || value.get() on:input=on_input/>
            </label>
        }
    };
    let packing = Signal::derive(move || {
        draft.with(|d| d.layers.get(index).map_or(100.0, |layer| layer.packing_percent)).to_string()
    });
    let set_packing = move |text: String| {
        let percent = decimal(&text.trim().replace(',', "."));
        if let Some(percent) = percent.filter(|percent| percent.is_finite()) {
            draft.update(|d| {
                if let Some(layer) = d.layers.get_mut(index) {
                    layer.packing_percent = percent;
                }
            });
        }
    };
    let remove = move || {
        draft.update(|d| {
            if index < d.layers.len() {
                d.layers.remove(index);
            }
        });
    };
    view! {
        <fieldset class="layer">
            <legend><span class=format!("swatch layer-{}", index + 1)></span>{say::layer(&(index + 1))}</legend>
            <MaterialChoice choices=choices value=material on_change=set_material/>
            {text(say::WIRE.said(), |l| &mut l.size, "")}
            {text(say::RIBBON.said(), |l| &mut l.width, "")}
            <TextField label=say::COVER.said() value=packing on_input=set_packing/>
            <p class="hint">
                {say::LAYER_HINT.said()} " "
                {button("quiet", "", "", say::REMOVE_LAYER.said(), remove)}
            </p>
        </fieldset>
    }
}

#[component]
fn Weighed(draft: RwSignal<MakeUpSpec>) -> impl IntoView {
    view! {
        {while_so(
            move || draft.with(|d| d.weighed.is_some()),
            move || view! { <fieldset>
                <legend>{say::MEASURED.said()}</legend>
                <Part draft=draft label=say::MASS.said() of=|d| d.weighed.as_mut().map(|w| &mut w.g_per_m)/>
                <Part draft=draft label=say::OVERALL.said() of=|d| d.weighed.as_mut().map(|w| &mut w.gauge)/>
                <Part draft=draft label=say::BREAKING.said() of=|d| d.weighed.as_mut().map(|w| &mut w.breaks_n)/>
            </fieldset> }.into_any(),
        )}
    }
}

/// What the draft comes to: its section, its figures, what is wrong with it.
#[component]
fn Tried(tried: Memo<Design>) -> impl IntoView {
    let resolved = Memo::new(move |_| resolve(&tried.read()));
    let drawing = move || {
        let resolved = resolved.read();
        let make_up = resolved.harp.strings.first()?.make_up.as_ref().ok()?;
        section::draw(make_up)
    };
    let words = move || rows::tried(&tried.read(), &resolved.read());
    let lines = move || {
        words()
            .figures
            .into_iter()
            .map(|(name, text)| view! { <dt>{name}</dt><dd>{text}</dd> })
            .collect_view()
    };
    view! {
        <div class="tried">
            {move || drawing().map(|drawing| view! { <SectionView drawing=drawing/> })}
            <p class="wrong" role="alert">{list::words(move || words().wrong.unwrap_or_default())}</p>
            <dl class="figures">{lines}</dl>
            <p class="hint">{say::WINDINGS_HINT.said()}</p>
        </div>
    }
}

#[component]
fn SectionView(drawing: SectionDrawing) -> impl IntoView {
    let SectionDrawing { shapes, width_mm, height_mm, bar_mm } = drawing;
    let shapes = shapes
        .into_iter()
        .map(|shape| match shape {
            SectionShape::Circle { x, y, radius, layer } => {
                view! { <circle cx=x cy=y r=radius class=format!("layer-{layer}")></circle> }.into_any()
            }
            SectionShape::Rect { x, y, width, height, layer } => {
                view! { <rect x=x y=y width=width height=height class=format!("layer-{layer}")></rect> }.into_any()
            }
        })
        .collect_view();
    let margin = height_mm * 0.08;
    let bar_y = height_mm + 3.0 * margin;
    let all =
        format!("{} {} {} {}", -margin, -margin, width_mm + 2.0 * margin, height_mm + 7.0 * margin);
    view! {
        <figure class="section">
            <svg viewBox=all role="img" aria-label=say::SECTION.said()>
                {shapes}
                <line x1="0" x2=bar_mm y1=bar_y y2=bar_y class="bar"></line>
            </svg>
            <figcaption>{say::to_scale(&numeral(bar_mm))}</figcaption>
        </figure>
    }
}
