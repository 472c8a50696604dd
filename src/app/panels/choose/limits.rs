//! Which strings are chosen from, and limits that no set may break: load, tension and counts; gauges by zone; where each kind of string may be used.

use leptos::prelude::*;

use super::desk::Desk;
use super::fields::{note_field, text_field};
use crate::app::browser;
use crate::app::forms::{FAMILY, LIMITS};
use crate::app::panels::form::entries;
use crate::app::widgets::button::button;
use crate::app::widgets::fields::Choice;
use crate::app::widgets::list::{either, list, part, while_so};
use crate::design::choose::{Shop, Task, kind_in_words};
use crate::design::document::{KindSpec, MOST_KINDS, MOST_ZONES, TargetsSpec, ZoneSpec};
use crate::design::edit::TargetsPart;
use crate::design::letters::capital;
use crate::design::typed;
use crate::words::{Words, choose_page as say};

/// The family, from where strings are wound, and what is usual.
pub fn family(desk: Desk) -> AnyView {
    let note = text(
        desk,
        say::WOUND_FROM.into(),
        TargetsPart::Curve,
        |targets| Some(&targets.wound_from),
        |targets, text| targets.wound_from = text,
        true,
    );
    let mut fields = entries(desk.store, &FAMILY);
    let note = view! {
        <label class="field"><span>{say::WOUND_FROM.said()}</span>{note}</label>
        <p class="hint">{say::WOUND_FROM_HINT.said()}</p>
    };
    fields.insert(1, note.into_any());
    view! { <div class="form-stack">{fields}</div> }.into_any()
}

/// The limits of the whole set.
pub fn limits(desk: Desk) -> AnyView {
    view! { <div class="form-stack">{entries(desk.store, &LIMITS)}</div> }.into_any()
}

/// A text of a row that can be typed into.
fn text(
    desk: Desk,
    label: String,
    part: TargetsPart,
    of: impl Fn(&TargetsSpec) -> Option<&String> + Copy + Send + Sync + 'static,
    put: impl Fn(&mut TargetsSpec, String) + Copy + Send + Sync + 'static,
    is_note: bool,
) -> AnyView {
    let value = desk.wish(move |targets| of(targets).cloned().unwrap_or_default());
    let set = Callback::new(move |text: String| {
        desk.store.close_step();
        desk.change(part, |targets| put(targets, text));
    });
    if is_note {
        return note_field(label, value, set, true);
    }
    let valid = |text: &str| text.trim().is_empty() || typed::gauge(text).is_ok();
    text_field(label, value, set, valid, say::GAUGE_WRONG)
}

/// The heads and fields of a zone.
type ZoneField = (Words, fn(&ZoneSpec) -> &String, fn(&mut ZoneSpec, String), bool);

const ZONE: [ZoneField; 4] = [
    (say::ZONE_FROM, |z| &z.lowest, |z, x| z.lowest = x, true),
    (say::ZONE_TO, |z| &z.highest, |z, x| z.highest = x, true),
    (say::ZONE_THINNEST, |z| &z.thinnest, |z, x| z.thinnest = x, false),
    (say::ZONE_THICKEST, |z| &z.thickest, |z, x| z.thickest = x, false),
];

/// The thinnest and the thickest gauge from note to note.
pub fn zones(desk: Desk) -> AnyView {
    let count = desk.wish(|targets| targets.zones.len());
    let row = move |index: usize, count: usize| {
        part(&(index, count), move || {
            let number = index + 1;
            let cell = |(head, of, put, is_note): &'static ZoneField| {
                let cell = text(
                    desk,
                    say::zone_cell(head, &number),
                    TargetsPart::Zone(index),
                    move |targets| targets.zones.get(index).map(of),
                    move |targets, text| {
                        if let Some(zone) = targets.zones.get_mut(index) {
                            put(zone, text);
                        }
                    },
                    *is_note,
                );
                view! { <td>{cell}</td> }.into_any()
            };
            let cells: Vec<AnyView> = ZONE.iter().map(cell).collect();
            let remove = move |_| {
                desk.store.close_step();
                desk.change(TargetsPart::Curve, |targets| {
                    if index < targets.zones.len() {
                        targets.zones.remove(index);
                    }
                });
                browser::focus("add-zone");
            };
            view! {
                <tr>{cells}</tr>
                <tr class="kind-row"><td colspan="4"><button type="button" class="quiet" aria-label=say::zone_remove(&number) on:click=remove>{say::REMOVE.said()}</button></td></tr>
            }
            .into_any()
        })
    };
    let rows = move || {
        let count = count.get();
        (0..count).map(|index| row(index, count)).collect()
    };
    let add = move || {
        desk.store.close_step();
        desk.change(TargetsPart::Curve, |targets| {
            if targets.zones.len() < MOST_ZONES {
                targets.zones.push(ZoneSpec::default());
            }
        });
    };
    let table = move || {
        let heads: Vec<AnyView> = ZONE
            .iter()
            .map(|row| view! { <th scope="col">{row.0.said()}</th> }.into_any())
            .collect();
        view! {
            <table class="number-table" aria-label=say::ZONES_TABLE.said()>
                <thead><tr>{heads}</tr></thead>
                <tbody>{list(rows)}</tbody>
            </table>
        }
        .into_any()
    };
    view! {
        <div class="form-stack">
            {while_so(move || count.get() > 0, table)}
            {button("tool", "add-zone", "", say::ZONE_ADD.said(), add)}
            <p class="hint">{say::ZONES_HINT.said()}</p>
        </div>
    }
    .into_any()
}

/// The kinds of string that the stock has and the design uses, in their usual order.
fn at_hand(desk: Desk) -> Vec<String> {
    let store = desk.store;
    let (design, stock) = (store.design.get(), store.shop.get());
    let shop = Shop { items: &stock.items, materials: &stock.materials, own: false };
    Task::kinds_at_hand(&design, &store.resolved.get(), &shop)
}

/// The kinds that may be used, in their order from the treble to the bass, each with its notes.
pub fn kinds(desk: Desk) -> AnyView {
    let count = desk.wish(|targets| targets.kinds.len());
    let at_hand = Memo::new(move |_| at_hand(desk));
    let step = move |change: &dyn Fn(&mut Vec<KindSpec>)| {
        desk.store.close_step();
        desk.change(TargetsPart::Curve, |targets| change(&mut targets.kinds));
    };
    let own = move || {
        step(&|kinds| {
            let spec = |kind: &String| KindSpec { kind: kind.clone(), ..KindSpec::default() };
            kinds.extend(at_hand.get_untracked().iter().take(MOST_KINDS).map(spec));
        });
        browser::focus("choose-kinds");
    };
    let all = move || {
        step(&|kinds| kinds.clear());
        browser::focus("choose-kinds");
    };
    let row = move |index: usize, count: usize, kind: String| {
        part(&(index, count, kind.clone()), move || {
            let words = kind_in_words(&kind);
            let end = |head: Words, lowest: bool| {
                let label = say::kind_cell(&head, &capital(&words));
                let of = move |targets: &TargetsSpec| {
                    let kind = targets.kinds.get(index);
                    kind.map(|kind| if lowest { kind.lowest.clone() } else { kind.highest.clone() })
                };
                let value = desk.wish(move |targets| of(targets).unwrap_or_default());
                let set = Callback::new(move |text: String| {
                    desk.store.close_step();
                    desk.change(TargetsPart::Kind(index), |targets| {
                        if let Some(kind) = targets.kinds.get_mut(index) {
                            *(if lowest { &mut kind.lowest } else { &mut kind.highest }) = text;
                        }
                    });
                });
                note_field(label, value, set, true)
            };
            let up = move |_| {
                step(&|kinds| {
                    if index > 0 && index < kinds.len() {
                        kinds.swap(index - 1, index);
                    }
                });
                browser::focus("choose-kinds");
            };
            let remove = move |_| {
                step(&|kinds| {
                    if kinds.len() > 1 && index < kinds.len() {
                        kinds.remove(index);
                    }
                });
                browser::focus("choose-kinds");
            };
            let (lowest, highest) = (end(say::KIND_LOWEST, true), end(say::KIND_HIGHEST, false));
            let (up_words, out_words) = (say::kind_up_hint(&words), say::kind_out_hint(&words));
            view! {
                <tr><th scope="row" colspan="3">{capital(&words)}</th></tr>
                <tr class="kind-row">
                    <td>{lowest}</td>
                    <td>{highest}</td>
                    <td>
                        <button type="button" class="quiet" aria-label=up_words disabled=index == 0 on:click=up>{say::KIND_UP.said()}</button>
                        " "
                        <button type="button" class="quiet" aria-label=out_words disabled=count < 2 on:click=remove>{say::REMOVE.said()}</button>
                    </td>
                </tr>
            }
            .into_any()
        })
    };
    let rows = move || {
        let names = desk.store.design.with(|design| {
            design.targets.kinds.iter().map(|kind| kind.kind.clone()).collect::<Vec<_>>()
        });
        let count = names.len();
        names.into_iter().enumerate().map(|(index, kind)| row(index, count, kind)).collect()
    };
    let listed = move || {
        view! {
            <table class="number-table" aria-label=say::KINDS_TABLE.said()>
                <thead><tr><th scope="col">{say::HEAD_LOWEST.said()}</th><th scope="col">{say::HEAD_HIGHEST.said()}</th><td></td></tr></thead>
                <tbody>{list(rows)}</tbody>
            </table>
            {list(move || vec![missing(desk, at_hand)])}
            {button("tool", "all-kinds", "", say::KINDS_ALL.said(), all)}
        }
        .into_any()
    };
    let free = move || {
        view! {
            <p>{say::KINDS_FREE.said()}</p>
            {button("tool", "own-kinds", "", say::KINDS_OWN.said(), own)}
        }
        .into_any()
    };
    view! {
        <div class="form-stack">
            {either(move || count.get() > 0, listed, free)}
            <p class="hint">{say::KINDS_HINT.said()}</p>
        </div>
    }
    .into_any()
}

/// A choice of the kinds that are not listed.
fn missing(desk: Desk, at_hand: Memo<Vec<String>>) -> crate::app::widgets::list::Part {
    let listed = desk.store.design.with(|design| design.targets.kinds.clone());
    let free = |name: &&String| listed.iter().all(|kind| kind.kind != **name);
    let names: Vec<String> = at_hand.with(|names| names.iter().filter(free).cloned().collect());
    part(&names.clone(), move || {
        let mut choices = vec![(String::new(), say::KIND_CHOOSE.into())];
        choices.extend(names.into_iter().map(|name| (name.clone(), kind_in_words(&name))));
        let add = move |kind: String| {
            desk.store.close_step();
            desk.change(TargetsPart::Curve, |targets| {
                if targets.kinds.len() < MOST_KINDS && !kind.is_empty() {
                    targets.kinds.push(KindSpec { kind, ..KindSpec::default() });
                }
            });
        };
        let none = Signal::derive(String::new);
        view! { <Choice label=say::KIND_ADD.said() choices=choices value=none on_change=add/> }
            .into_any()
    })
}
