//! Which curve is wanted, where it comes from, and its points as numbers.

use leptos::prelude::*;

use super::desk::Desk;
use super::fields::note_field;
use crate::app::asked::Question;
use crate::app::browser;
use crate::app::panels::asked::asked_in_words;
use crate::app::rows::{place_name, wanted_words};
use crate::app::widgets::button::button;
use crate::app::widgets::fields::{Choice, Draft};
use crate::app::widgets::list::{Part, list, part, words};
use crate::design::document::WantsSpec;
use crate::design::edit::TargetsPart;
use crate::design::presets::SAMPLES;
use crate::design::settings::NumberRow;
use crate::design::targets::{
    Point, added, constant, curve, like, moved, of_harp, reach, removed, slope, value_at,
};
use crate::engine::pitch::Note;
use crate::words::{Words, choose_page as say};

/// The curve that holds.
pub fn curve_of(desk: Desk) -> Memo<Vec<Point>> {
    let store = desk.store;
    Memo::new(move |_| curve(&store.design.read(), &store.resolved.read()))
}

/// Puts the points of the curve.
pub fn put(desk: Desk, part: TargetsPart, points: Vec<Point>) {
    desk.change(part, |targets| *targets = targets.with_points(points));
}

/// Puts them in a step of its own.
pub fn put_whole(desk: Desk, points: Vec<Point>) {
    desk.store.close_step();
    put(desk, TargetsPart::Curve, points);
}

/// The fields of the curve.
pub fn points(desk: Desk) -> AnyView {
    let store = desk.store;
    let curve = curve_of(desk);
    let wants = desk.wish(|targets| match targets.wants {
        WantsSpec::Stiffness => "stiffness".to_owned(),
        WantsSpec::Tension => "tension".to_owned(),
    });
    let kinds = [("stiffness", say::WANTS_STIFFNESS), ("tension", say::WANTS_TENSION)];
    let kinds = kinds.map(|(key, words)| (key.to_owned(), words.into())).to_vec();
    let set_wants = move |key: String| {
        let wants = if key == "tension" { WantsSpec::Tension } else { WantsSpec::Stiffness };
        store.close_step();
        desk.change(TargetsPart::Curve, |targets| targets.wants = wants);
    };
    let origins = move || {
        let mut origins = vec![
            ("".to_owned(), say::ORIGIN_CHOOSE.into()),
            ("now".to_owned(), say::ORIGIN_NOW.into()),
            ("usual".to_owned(), say::ORIGIN_USUAL.into()),
            ("constant".to_owned(), say::ORIGIN_CONSTANT.into()),
            ("straight".to_owned(), say::ORIGIN_STRAIGHT.into()),
        ];
        for (place, sample) in SAMPLES.iter().enumerate() {
            origins.push((format!("s{place}"), say::origin_sample(&sample.title)));
        }
        store.design.with(|design| {
            for (place, version) in design.versions.iter().enumerate() {
                origins.push((format!("v{place}"), say::origin_version(&version.name)));
            }
        });
        origins
    };
    let begin = move |key: String| from(desk, &key, &curve.get_untracked());
    let none = Signal::derive(String::new);
    let versions = Memo::new(move |_| origins());
    let origin = move || {
        let one = versions.get();
        vec![part(&one.clone(), move || {
            view! { <Choice label=say::ORIGIN.said() choices=one value=none on_change=begin/> }
                .into_any()
        })]
    };
    let count = Memo::new(move |_| curve.with(Vec::len));
    let rows = move || {
        let count = count.get();
        (0..count).map(|index| row(desk, curve, index, count)).collect()
    };
    let unit = move || store.design.with(|design| wanted_words(design.targets.wants).1.to_owned());
    let add = move || {
        let points = curve.get_untracked();
        let next = widest(&points).and_then(|place| added(&points, place));
        match next {
            Some(points) => put_whole(desk, points),
            None => store.complain(say::NO_ROOM),
        }
    };
    view! {
        <div class="form-stack">
            <Choice label=say::WANTS.said() choices=kinds value=wants on_change=set_wants/>
            {list(origin)}
            <table class="number-table" aria-label=say::POINTS_TABLE.said()>
                <thead><tr><th scope="col">{say::HEAD_POINT.said()}</th><th scope="col">{say::HEAD_NOTE.said()}</th><th scope="col">{words(unit)}</th><td></td></tr></thead>
                <tbody>{list(rows)}</tbody>
            </table>
            {button("tool", "add-point", say::ADD_POINT_HINT.said(), say::ADD_POINT.said(), add)}
            <p class="hint">{say::POINTS_HINT.said()}</p>
            {asked_in_words(Question::Target)}
        </div>
    }
    .into_any()
}

/// The middle of the widest gap, the ends of the compass of a harp included.
fn widest(points: &[Point]) -> Option<f64> {
    let mut places = vec![24.0];
    places.extend(points.iter().map(|point| point.0));
    places.push(103.0);
    let mut best: Option<(f64, f64)> = None;
    for pair in places.windows(2) {
        let width = pair[1] - pair[0];
        if best.is_none_or(|(widest, _)| width > widest) {
            best = Some((width, ((pair[0] + pair[1]) / 2.0).round()));
        }
    }
    best.map(|(_, place)| place)
}

/// Makes the curve from something.
fn from(desk: Desk, key: &str, points: &[Point]) {
    let store = desk.store;
    let (design, resolved) = (store.design.get_untracked(), store.resolved.get_untracked());
    let wants = design.targets.wants;
    let ends = [points.first(), points.last()].map(|point| point.copied().unwrap_or((60.0, 1.0)));
    let number = |from: usize| key.get(from..).and_then(|text| text.parse::<usize>().ok());
    let next = match key {
        "now" => of_harp(&design, &resolved, &store.analysis.get_untracked(), wants),
        "usual" => Vec::new(),
        "constant" => {
            let middle = (ends[0].0 + ends[1].0) / 2.0;
            constant(wants, value_at(points, middle).unwrap_or(1.0))
        }
        "straight" if ends[0].0 < ends[1].0 => slope(wants, ends),
        "straight" => slope(wants, [(36.0, ends[0].1), (96.0, ends[1].1)]),
        _ if key.starts_with('s') => {
            let sample = number(1).and_then(|place| SAMPLES.get(place));
            sample.map(|sample| like(&sample.design(), wants)).unwrap_or_default()
        }
        _ => {
            let version = number(1).and_then(|place| design.versions.get(place));
            version.map(|version| like(&version.design, wants)).unwrap_or_default()
        }
    };
    if next.is_empty() && key != "usual" {
        store.complain(say::NO_CURVE);
        return;
    }
    put_whole(desk, next);
}

/// A point as numbers.
fn row(desk: Desk, curve: Memo<Vec<Point>>, index: usize, count: usize) -> Part {
    let wants = desk.store.design.with(|design| design.targets.wants);
    let is_tension = wants == WantsSpec::Tension;
    part(&(index, count, is_tension), move || {
        let store = desk.store;
        let point = move || curve.with(|points| points.get(index).copied()).unwrap_or_default();
        let pull = move |change: fn(Point, f64) -> Point, number: f64| {
            let points = curve.get_untracked();
            let Some(now) = points.get(index).copied() else { return };
            let to = change(now, number);
            put(desk, TargetsPart::Point(index), moved(wants, &points, index, to));
        };
        let name = Signal::derive(move || {
            store.resolved.with(|resolved| place_name(&resolved.harp.strings, point().0))
        });
        let set_note = move |text: String| {
            if let Ok(note) = text.parse::<Note>() {
                pull(|(_, value), key| (key, value), f64::from(note.key_number()));
            }
        };
        let set_value = Callback::new(move |number: Option<f64>| {
            if let Some(number) = number {
                pull(|(place, _), value| (place, value), number);
            }
        });
        let (words, unit) = wanted_words(wants);
        let value = Signal::derive(move || Some(point().1));
        let draft = Draft::new(
            NumberRow::new(Words::plain(words), Words::plain(unit), reach(wants)),
            value,
            set_value,
        );
        let remove = move |_| {
            if let Some(points) = removed(&curve.get_untracked(), index) {
                put_whole(desk, points);
                browser::focus("add-point");
            }
        };
        let number = index + 1;
        let take_out = (count > 1).then(|| {
            view! {
                <button type="button" class="quiet" aria-label=say::remove_point(&number) on:click=remove>{say::REMOVE.said()}</button>
            }
            .into_any()
        });
        view! {
            <tr>
                <th scope="row">{number}</th>
                <td>{note_field(say::note_of_point(&number), name, Callback::new(set_note), false)}</td>
                <td>
                    <input
                        type="text"
                        inputmode="decimal"
                        autocomplete="off"
                        aria-label=say::value_of_point(&number)
                        prop:value=move || draft.shown()
                        aria-invalid=move || draft.is_wrong().then_some("true")
                        on:input=move |event| draft.take(event_target_value(&event))
                        on:blur=move |_| draft.leave()
                        on:keydown=move |event| draft.go_back(&event)
                    />
                </td>
                <td>{take_out}</td>
            </tr>
            <tr class="said"><td colspan="4">{draft.said()}</td></tr>
        }
        .into_any()
    })
}
