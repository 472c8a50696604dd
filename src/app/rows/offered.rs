//! What a string could be, while its cell is typed into: the materials and the items of the stock that match, each
//! with what it would give this string.

use crate::design::display::{percent, tension_with_unit};
use crate::design::document::{Design, MakeUpSpec, MaterialSpec, StringSpec};
use crate::design::edit::{ChosenBy, Column, Edit, Made, Taken};
use crate::design::letters::small;
use crate::design::library::{built_in, find};
use crate::design::make_up_said;
use crate::design::make_up_text;
use crate::design::resolve::{Resolved, resolve};
use crate::design::stock::{StockList, is_sold_for};
use crate::design::typed;
use crate::engine::analysis::{Harp, HarpString, analyse};
use crate::engine::material::said;
use crate::engine::order::sort;
use crate::words::details as say;

/// The most materials, and the most items of the stock, that are offered at a time.
const MOST: usize = 12;

/// Something that a string could be.
#[derive(Clone, Debug, PartialEq)]
pub struct Offer {
    /// What it is, as a cell has it.
    pub words: String,
    /// What tells it from others: the name of a material, the order code of an item.
    pub more: String,
    /// What it would give the string.
    pub gives: String,
    /// Whether it is of the stock.
    pub is_stock: bool,
    /// Takes it.
    pub edit: Edit,
}

/// What matches the text typed into the cell of a string; everything, where nothing is typed. Figures are worked out
/// for these alone.
pub fn offers(
    design: &Design,
    resolved: &Resolved,
    shop: &StockList,
    row: usize,
    typed: &str,
) -> Vec<Offer> {
    let Some(string) = design.strings.get(row) else { return Vec::new() };
    let asked = small(typed.trim()).replace(',', ".");
    let mut offers = materials(design, string, row, &asked);
    let mut make_ups: Vec<MakeUpSpec> =
        offers.iter().map(|offer| made_of(string, &offer.words)).collect();
    for index in items(string, shop, &asked) {
        let Some(item) = shop.items.get(index) else { continue };
        let Ok(make_up) = item.make_up.read() else { continue };
        let made =
            Made { make_up: make_up.clone(), order_code: item.code.clone(), stock_key: item.key };
        make_ups.push(make_up.clone());
        offers.push(Offer {
            words: make_up_said::line_shown(&item.make_up),
            more: item.code.clone(),
            gives: String::new(),
            is_stock: true,
            edit: Edit::Take {
                strings: vec![Taken { row, made: Some(made), length: None }],
                stock: vec![item.clone()],
                materials: shop.materials.clone(),
                chosen_by: ChosenBy::default(),
            },
        });
    }
    // One that is typed in full already has nothing to offer.
    if let [only] = offers.as_slice()
        && small(&only.words) == asked
    {
        return Vec::new();
    }
    tell(&mut offers, make_ups, design, resolved, shop, row);
    offers
}

/// The materials that match: those of the design, then those that come with the program.
fn materials(design: &Design, string: &StringSpec, row: usize, asked: &str) -> Vec<Offer> {
    let others = built_in().iter().filter(|material| {
        !design.materials.iter().any(|own| small(&own.key) == small(&material.key))
    });
    // What the text is another name of counts as well.
    let meant = find(&design.materials, asked).map(|material| material.key.clone());
    let matching = design.materials.iter().chain(others).filter(|material| {
        // What stands in brackets or after a comma tells no name.
        let name = said(&material.name).split([',', '(']).next().unwrap_or_default();
        matches(
            asked,
            &format!("{} {} {}", material.key, make_up_said::material(&material.key), name),
        ) || meant.as_ref() == Some(&material.key)
    });
    let offer = |material: &MaterialSpec| Offer {
        words: make_up_said::material(&material.key),
        more: match said(&material.name) {
            name if small(name) == small(&make_up_said::material(&material.key)) => String::new(),
            name => name.to_owned(),
        },
        gives: if string.make_up.is_plain() { String::new() } else { say::THEN_GAUGE.into() },
        is_stock: false,
        edit: Edit::Cell { row, column: Column::MakeUp, text: material.key.clone() },
    };
    matching.take(MOST).map(offer).collect()
}

/// The items of the stock that match, in the order of the list: of many, those that can be had for the note of the
/// string, and of these the ones nearest to its gauge.
fn items(string: &StringSpec, shop: &StockList, asked: &str) -> Vec<usize> {
    let note = string.note.parse().ok();
    let now = across(&string.make_up);
    let mut found: Vec<(bool, f64, usize)> = Vec::new();
    for (index, item) in shop.items.iter().enumerate() {
        if let Ok(make_up) = item.make_up.read()
            && matches(
                asked,
                &[
                    &*item.make_up,
                    &*make_up_said::line_said(&item.make_up),
                    &*item.code,
                    &*item.supplier,
                ]
                .join(" "),
            )
        {
            let away = match (across(make_up), now) {
                (Some(item), Some(now)) => (item - now).abs(),
                _ => 0.0,
            };
            found.push((item.sold_out || !is_sold_for(item, note), away, index));
        }
    }
    sort(&mut found, |one, other| one > other);
    found.truncate(MOST);
    let mut found: Vec<usize> = found.into_iter().map(|(.., index)| index).collect();
    sort(&mut found, |one, other| one > other);
    found
}

/// Whether every word of what is asked for begins a word of a text.
fn matches(asked: &str, text: &str) -> bool {
    let text = small(text).replace(',', ".");
    asked.split_whitespace().all(|word| {
        text.split(|c: char| c.is_whitespace() || c == '(').any(|part| part.starts_with(word))
    })
}

/// How thick a string is over all, in millimetres.
fn across(make_up: &MakeUpSpec) -> Option<f64> {
    let mm = |text: &str| typed::gauge(text).ok().map(crate::engine::units::Length::to_mm);
    let layers = make_up.layers.iter().map(|layer| mm(&layer.size));
    layers.fold(mm(&make_up.diameter), |all, layer| Some(all? + 2.0 * layer?))
}

/// What a string is made of once the name of a material is typed into its cell.
fn made_of(string: &StringSpec, material: &str) -> MakeUpSpec {
    let diameter =
        if string.make_up.is_plain() { string.make_up.diameter.clone() } else { String::new() };
    let read = make_up_text::read(material);
    MakeUpSpec { diameter, ..read.unwrap_or_default() }
}

/// Works out what each would give the string, in one go.
fn tell(
    offers: &mut [Offer],
    make_ups: Vec<MakeUpSpec>,
    design: &Design,
    resolved: &Resolved,
    shop: &StockList,
    row: usize,
) {
    let strings = make_ups.into_iter().map(|make_up| StringSpec { make_up, ..Default::default() });
    let mut trial = Design { strings: strings.collect(), ..design.clone() };
    for material in &shop.materials {
        if find(&trial.materials, &material.key).is_none() {
            trial.materials.push(material.clone());
        }
    }
    let Some(here) = resolved.harp.strings.get(row) else { return };
    let made = resolve(&trial).harp.strings.into_iter();
    let strings = made.map(|made| HarpString { make_up: made.make_up, ..here.clone() }).collect();
    let Harp { pluck_ratio, conditions, limits, .. } = resolved.harp.clone();
    let analysis = analyse(&Harp { strings, pluck_ratio, conditions, limits });
    for (offer, figures) in offers.iter_mut().zip(&analysis.strings) {
        let Ok(tension) = figures.tension else { continue };
        let mut gives = tension_with_unit(tension, design.units.force);
        if let Ok(share) = figures.load_share_percent {
            let says = if share >= 100.0 { say::offer_breaks } else { say::offer_load };
            gives = says(&percent(share), &gives);
        }
        offer.gives = gives;
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::design::presets::SAMPLES;
    use crate::design::stock::starting_list;

    fn offered(design: &Design, row: usize, typed: &str) -> Vec<Offer> {
        offers(design, &resolve(design), &starting_list(), row, typed)
    }

    /// What is told beside an offer is what the chart tells once it is taken.
    #[test]
    fn what_is_offered_is_what_the_string_then_has() {
        let design = SAMPLES[0].design();
        let mut told = 0;
        for row in [0, 11, design.strings.len() - 1] {
            for offer in offered(&design, row, "") {
                let after = offer.edit.apply(&design);
                let figures = &analyse(&resolve(&after).harp).strings[row];
                let Ok(tension) = figures.tension else {
                    assert!(!offer.gives.contains("load"), "{offer:?}");
                    continue;
                };
                let tension = tension_with_unit(tension, after.units.force);
                assert!(offer.gives.starts_with(&tension), "{tension}: {offer:?}");
                let share = figures.load_share_percent.map(percent);
                if let Ok(share) = share {
                    assert!(offer.gives.contains(&format!("load share {share} %")), "{offer:?}");
                }
                told += 1;
            }
        }
        assert!(told > 40, "{told}");
    }

    #[test]
    fn words_are_begun_and_every_one_counts() {
        let design = SAMPLES[0].design();
        let words = |typed: &str| -> Vec<String> {
            offered(&design, 3, typed).into_iter().map(|offer| offer.words).collect()
        };
        assert_eq!(words("fluo")[0], "fluorocarbon");
        assert!(words("brass").contains(&"yellow brass".to_owned()));
        let thick = words("nylon 0,8");
        assert!(!thick.is_empty() && thick.iter().all(|text| text.starts_with("nylon 0.8")));
        assert!(words("quartz").is_empty());
        assert!(words("nylon 9.99").is_empty());
    }

    #[test]
    fn of_many_items_the_nearest_gauges_are_offered_in_the_order_of_the_list() {
        let design = SAMPLES[0].design();
        let row = 11;
        let now = across(&design.strings[row].make_up).unwrap();
        let found = items(&design.strings[row], &starting_list(), "");
        assert_eq!(found.len(), MOST);
        assert!(found.windows(2).all(|pair| pair[0] < pair[1]));
        let list = starting_list();
        let near = |index: &usize| {
            let item = across(list.items[*index].make_up.read().unwrap()).unwrap();
            (item - now).abs() < 0.6
        };
        assert!(found.iter().all(near));
    }
}
