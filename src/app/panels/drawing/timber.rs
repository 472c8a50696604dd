//! What the neck is glued up of, the metal beside it, and woods of one's own.

use leptos::prelude::*;

use super::making::{Get as Read, METALS, Put, Sizes, hint, mm, percent, table};
use super::shape::Form;
use crate::app::panels::form::fieldset;
use crate::app::widgets::button::button;
use crate::app::widgets::fields::{Choice, TextField};
use crate::app::widgets::list::{list, part, while_so, words};
use crate::app::widgets::number_table::NumberTable;
use crate::design::document::{
    GeometrySpec, MOST_NECK_LAYERS, MOST_WOODS, NeckLayerSpec, OwnWoodSpec,
};
use crate::design::settings::NumberRow;
use crate::design::wood_facts::{choices, own_words};
use crate::words::{Words, drawing as say};

/// The choice of a wood, with those of one's own.
pub(super) fn wood_choice(
    form: Form,
    label: Words,
    plywood: bool,
    of: fn(&mut GeometrySpec) -> &mut String,
) -> AnyView {
    let put = move |key: String| form.step(|geometry| *of(geometry) = key);
    let value = form.of(move |geometry| of(&mut geometry.clone()).clone());
    choice(form, label.into(), (plywood, None), value, Callback::new(put))
}

/// A choice among the woods, made again when the woods of one's own change. `first` stands before them.
fn choice(
    form: Form,
    label: String,
    (plywood, first): (bool, Option<Words>),
    value: Signal<String>,
    put: Callback<String>,
) -> AnyView {
    let all = form.of(move |geometry| {
        let first = first.map(|words| (String::new(), words.into()));
        first.into_iter().chain(choices(plywood, &geometry.woods)).collect::<Vec<_>>()
    });
    let made = move || {
        let (all, label) = (all.get(), label.clone());
        let view = part(&all.clone(), move || {
            view! { <Choice label=label choices=all value=value on_change=put/> }.into_any()
        });
        vec![view]
    };
    list(made)
}

const ANGLE: NumberRow = NumberRow::new(say::TURNED, Words::plain("°"), (-90.0, 90.0));
static LAYER: [NumberRow; 2] = [mm(say::THICK), ANGLE];

/// The layers of the neck.
pub(super) fn layers(form: Form) -> AnyView {
    let row = |layer: &NeckLayerSpec| vec![layer.thickness_mm, layer.angle_deg];
    let rows = form.of(move |geometry| geometry.neck.layers.iter().map(row).collect());
    let count = form.of(|geometry| geometry.neck.layers.len());
    let names = Signal::derive(move || (1..=count.get()).map(|layer| layer.to_string()).collect());
    let set = move |rows: Vec<Vec<f64>>| {
        form.change(|geometry| {
            let layers = &mut geometry.neck.layers;
            layers.resize(rows.len(), NeckLayerSpec::default());
            for (layer, row) in layers.iter_mut().zip(&rows) {
                if let [thickness_mm, angle_deg] = row.as_slice() {
                    (layer.thickness_mm, layer.angle_deg) = (*thickness_mm, *angle_deg);
                }
            }
        });
    };
    let sizes = NumberTable {
        id: "layer",
        title: say::LAYERS.said(),
        of: say::LAYER.said(),
        columns: &LAYER,
        rows,
        names,
        set: Callback::new(set),
        count: Some((0, MOST_NECK_LAYERS)),
        here: RwSignal::new(None),
    };
    let wood = move |at: usize| {
        part(&at, move || {
            let value = form.of(move |geometry| {
                geometry.neck.layers.get(at).map_or(String::new(), |layer| layer.wood.clone())
            });
            let put = move |key: String| {
                form.step(|geometry| {
                    if let Some(layer) = geometry.neck.layers.get_mut(at) {
                        layer.wood = key;
                    }
                });
            };
            let label = say::wood_of_layer(&(at + 1));
            let first = (false, Some(say::THAT_OF_NECK));
            choice(form, label, first, value, Callback::new(put))
        })
    };
    let woods = move || (0..count.get()).map(wood).collect();
    let add = move || {
        if form.now().neck.layers.len() < MOST_NECK_LAYERS {
            form.step(|geometry| {
                let layers = &mut geometry.neck.layers;
                let thickness_mm = layers.last().map_or(8.0, |layer| layer.thickness_mm);
                layers.push(NeckLayerSpec { thickness_mm, ..NeckLayerSpec::default() });
            });
        } else {
            form.store.hint(&say::most_layers(&MOST_NECK_LAYERS));
        }
    };
    let any = move || count.get() > 0;
    view! {
        {while_so(any, move || sizes.view())}
        {list(woods)}
        <div class="window-actions">{button("tool", "add-layer", "", say::ADD_LAYER.said(), add)}</div>
        {hint(say::LAYERS_HINT)}
    }
    .into_any()
}

/// Reads and writes numbers of the metal.
macro_rules! of_metal {
    ($($field:ident),+) => {
        (
            |geometry: &GeometrySpec| vec![vec![$(geometry.neck.plates.$field),+]],
            |geometry: &mut GeometrySpec, rows: &[Vec<f64>]| {
                let mut numbers = rows.iter().flatten();
                $(if let Some(number) = numbers.next() {
                    geometry.neck.plates.$field = *number;
                })+
            },
        )
    };
}

const PLATE: (Read, Put) = of_metal!(thickness_mm, height_mm, from_percent, to_percent);
const SCREWS: (Read, Put) = of_metal!(screw_mm, screw_gap_mm, screw_depth_mm);
const PERCENT: (f64, f64) = (0.0, 100.0);

static METAL: [Sizes; 2] = [
    Sizes {
        id: "neck-metal",
        title: say::NECK_PLATES,
        of: say::PART,
        columns: &[
            mm(say::THICK),
            mm(say::HIGH),
            percent(say::FROM, PERCENT),
            percent(say::TO, PERCENT),
        ],
        names: &[say::PLATES],
        get: PLATE.0,
        put: PLATE.1,
    },
    Sizes {
        id: "neck-screws",
        title: say::NECK_SCREWS,
        of: say::PART,
        columns: &[mm(say::THICK), mm(say::ONE_EVERY), mm(say::DEEP_IN_WOOD)],
        names: &[say::SCREWS],
        get: SCREWS.0,
        put: SCREWS.1,
    },
];
static SIDES: [(bool, &str, Words); 2] =
    [(false, "both", say::BOTH_SIDES), (true, "one", say::ONE_SIDE)];

/// The metal beside the neck.
pub(super) fn metal(form: Form) -> AnyView {
    fieldset(
        say::METAL.said(),
        vec![
            table(form, &METAL[0]),
            table(form, &METAL[1]),
            form.choice(
                say::PLATES_ON,
                &SIDES,
                |g| g.neck.plates.one_side,
                move |one| {
                    form.step(|g| g.neck.plates.one_side = one);
                },
            ),
            form.choice(
                say::OF,
                &METALS,
                |g| g.neck.plates.metal,
                move |metal| {
                    form.step(|g| g.neck.plates.metal = metal);
                },
            ),
            hint(say::METAL_HINT),
        ],
    )
}

static BAR: [NumberRow; 4] = [
    mm(say::LONG),
    mm(say::WIDE),
    mm(say::HIGH),
    NumberRow::new(say::WEIGHS, Words::plain("g"), (0.0, 10_000.0)),
];
static TEST: [NumberRow; 4] = [
    mm(say::SPAN),
    NumberRow::new(say::LOAD, Words::plain("kg"), (0.0, 100.0)),
    mm(say::FALLS),
    NumberRow::new(say::TONE, Words::plain("Hz"), (0.0, 10_000.0)),
];

/// Four numbers of a bar.
type Four = fn(&mut OwnWoodSpec) -> [&mut f64; 4];

const SIZES: Four =
    |wood| [&mut wood.length_mm, &mut wood.width_mm, &mut wood.height_mm, &mut wood.weight_g];
const TESTED: Four =
    |wood| [&mut wood.span_mm, &mut wood.load_kg, &mut wood.falls_mm, &mut wood.tone_hz];

/// Four numbers of the bar of every wood.
fn bars(
    form: Form,
    (id, title): (&'static str, Words),
    columns: &'static [NumberRow],
    four: Four,
) -> NumberTable {
    let row = move |wood: &OwnWoodSpec| four(&mut wood.clone()).map(|number| *number).to_vec();
    let set = move |rows: Vec<Vec<f64>>| {
        form.change(|geometry| {
            for (wood, row) in geometry.woods.iter_mut().zip(&rows) {
                four(wood).into_iter().zip(row).for_each(|(field, number)| *field = *number);
            }
        });
    };
    NumberTable {
        id,
        title: title.said(),
        of: say::WOOD.said(),
        columns,
        rows: form.of(move |geometry| geometry.woods.iter().map(row).collect()),
        names: form
            .of(|geometry| (1..=geometry.woods.len()).map(|wood| wood.to_string()).collect()),
        set: Callback::new(set),
        count: None,
        here: RwSignal::new(None),
    }
}

static KINDS: [(&str, Words); 2] = [("hard", say::HARDWOOD), ("soft", say::SOFTWOOD)];
static STRENGTHS: [(&str, Words); 2] =
    [("none", say::STRENGTHS_UNKNOWN), ("class", say::STRENGTHS_BY_CLASS)];

fn pairs(all: &[(&str, Words)]) -> Vec<(String, String)> {
    all.iter().map(|(key, words)| ((*key).to_owned(), (*words).into())).collect()
}

/// Woods of one's own.
pub(super) fn own_woods(form: Form) -> AnyView {
    let count = form.of(|geometry| geometry.woods.len());
    let sizes = bars(form, ("own-wood", say::OWN_BARS), &BAR, SIZES);
    let tests = bars(form, ("own-test", say::OWN_TESTS), &TEST, TESTED);
    let add = move || {
        if form.now().woods.len() >= MOST_WOODS {
            form.store.hint(&say::most_woods(&MOST_WOODS));
            return;
        }
        form.step(|geometry| {
            let key = |number: usize| format!("own-{number}");
            let free = |number: &usize| !geometry.woods.iter().any(|own| own.key == key(*number));
            let number = (1..).find(free).unwrap_or_default();
            geometry.woods.push(OwnWoodSpec { key: key(number), ..OwnWoodSpec::default() });
        });
    };
    let each = move || (0..count.get()).map(|at| part(&at, move || own_wood(form, at))).collect();
    let any = move || count.get() > 0;
    fieldset(say::OWN_WOODS.said(),
        vec![
            while_so(any, move || vec![sizes.view(), tests.view()].into_any()),
            list(each),
            view! { <div class="window-actions">{button("tool", "add-wood", "", say::ADD_WOOD.said(), add)}</div> }
                .into_any(),
            hint(say::OWN_HINT),
        ],
    )
}

/// Name, kind and strengths of a wood, and what its bar tells.
fn own_wood(form: Form, at: usize) -> AnyView {
    fn of<T: Default>(geometry: &GeometrySpec, at: usize, take: fn(&OwnWoodSpec) -> T) -> T {
        geometry.woods.get(at).map(take).unwrap_or_default()
    }
    let change = move |change: &dyn Fn(&mut OwnWoodSpec)| {
        form.change(|geometry| {
            geometry.woods.get_mut(at).into_iter().for_each(change);
        });
    };
    let name = form.of(move |geometry| of(geometry, at, |wood| wood.name.clone()));
    let rename = move |name: String| change(&|wood| wood.name.clone_from(&name));
    let key = |yes: bool, all: &'static [(&str, Words); 2]| all[usize::from(yes)].0.to_owned();
    let kind = form.of(move |geometry| key(of(geometry, at, |wood| wood.softwood), &KINDS));
    let strengths =
        form.of(move |geometry| key(of(geometry, at, |wood| wood.by_class), &STRENGTHS));
    let told = form.of(move |geometry| of(geometry, at, own_words));
    let remove = move || {
        form.step(|geometry| {
            if at < geometry.woods.len() {
                geometry.woods.remove(at);
            }
        });
    };
    view! {
        <TextField label=say::name_of_wood(&(at + 1)) value=name on_input=rename/>
        <Choice label=say::IT_IS.said() choices=pairs(&KINDS) value=kind
            on_change=move |key: String| change(&|wood| wood.softwood = key == "soft")/>
        <Choice label=say::ITS_STRENGTHS.said() choices=pairs(&STRENGTHS) value=strengths
            on_change=move |key: String| change(&|wood| wood.by_class = key == "class")/>
        <p role="status">{words(move || told.get())}</p>
        <div class="window-actions">{button("tool", "", "", say::REMOVE_WOOD.said(), remove)}</div>
    }
    .into_any()
}
