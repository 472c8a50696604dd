//! The list of the parts, and what is worth a look.

use leptos::prelude::*;

use super::Bench;
use crate::app::widgets::list::{list, part, while_so, words};
use crate::design::advice::caution;
use crate::design::display::decimals;
use crate::design::document::OwnWoodSpec;
use crate::design::letters::capital;
use crate::design::parts::words::{found, told, unjudged};
use crate::design::wood_facts::wood_name;
use crate::engine::parts::Part;
use crate::papers::template::part::named;
use crate::words::{parts as said, parts_page as say};

/// A row of the list: the name of the part, its finished sizes with its wood, and its weight.
type Row = [String; 3];

fn row(part: &Part, own: &[OwnWoodSpec]) -> Row {
    let (volume, _) = part.volume();
    let mass = part.stuff.density.map(|density| 1e3 * volume * density.to_kg_per_m3());
    let mass = mass.map_or_else(|| say::NO_MASS.into(), |mass| say::grams(&decimals(mass, 0)));
    [capital(&named(part.name)), sizes(part, own), mass]
}

/// The finished sizes of a part, and its wood.
pub fn sizes(part: &Part, own: &[OwnWoodSpec]) -> String {
    let [long, wide, thick] = part.sizes_m().map(|m| decimals(1e3 * m, 1));
    say::sizes_of(&long, &thick, &wide, &wood_name(&part.stuff.key, own))
}

/// The list of all parts.
pub fn table(bench: Bench) -> AnyView {
    let rows = Memo::new(move |_| {
        let own = bench.store.design.with(|design| design.geometry.woods.clone());
        bench.with(|made| made.whole.parts.iter().map(|part| row(part, &own)).collect::<Vec<Row>>())
    });
    let all = move || {
        let line =
            |(at, row): (usize, Row)| part(&(at, &row.clone()), move || line(bench, at, row));
        rows.get().into_iter().enumerate().map(line).collect()
    };
    view! {
        <div>
            <p class="hint">{say::LIST_HINT.said()}</p>
            <table class="parts-table">
                <thead>
                    <tr>
                        <th scope="col">{say::HEAD_PART.said()}</th>
                        <th scope="col">{say::HEAD_MASS.said()}</th>
                    </tr>
                </thead>
                <tbody>{list(all)}</tbody>
            </table>
        </div>
    }
    .into_any()
}

fn line(bench: Bench, at: usize, [name, sizes, mass]: Row) -> AnyView {
    let is_chosen = move || bench.chosen.get() == Some(at);
    view! {
        <tr class:chosen=is_chosen>
            <th scope="row">
                <button type="button" class="link" aria-pressed=move || if is_chosen() { "true" } else { "false" } on:click=move |_| bench.choose(at)>
                    {name}
                </button>
                <span class="unit">{sizes}</span>
            </th>
            <td>{mass}</td>
        </tr>
    }
    .into_any()
}

/// What is worth a look, with how many there are.
pub fn worth_head(bench: Bench) -> String {
    bench.with(|made| match unjudged(made) {
        0 => say::worth(&found(made)),
        unjudged => say::worth_and_unjudged(&found(made), &unjudged),
    })
}

/// What is worth a look, in sentences; what was not looked at stands last.
pub fn worth(bench: Bench) -> AnyView {
    let lines = move || {
        let lines = bench.with(told);
        lines
            .into_iter()
            .map(|line| part(&line.clone(), move || view! { <li>{line}</li> }.into_any()))
            .collect()
    };
    let is_sound = move || bench.with(|made| found(made) == 0);
    let stands = move || bench.with(stands);
    view! {
        <div>
            {while_so(is_sound, || view! { <p>{say::NOTHING_FOUND.said()}</p> }.into_any())}
            <ul class="parts-worth">{list(lines)}</ul>
            <h3>{said::STANDS.said()}</h3>
            <p>{words(stands)}</p>
            <p class="caution">{caution()}</p>
        </div>
    }
    .into_any()
}

/// What the wood weighs and how far the harp may be tilted, in a sentence.
fn stands(made: &crate::design::parts::Parts) -> String {
    let degrees = |tip: f64| decimals(tip.to_degrees(), 1);
    if made.weight.left_out > 0 {
        return say::stands_unknown(&made.weight.left_out);
    }
    let [front, back, aside] = made.balance.tips_rad;
    say::stands(
        &degrees(aside),
        &degrees(front),
        &decimals(made.weight.mass.to_kg(), 1),
        &degrees(back),
        &decimals(1e3 * made.balance.shoulder_m, 0),
    )
}
