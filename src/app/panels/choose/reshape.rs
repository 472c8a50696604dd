//! Other lengths: for the wanted curve, scaled, stretched or faired; and strings and lengths in turn.

use leptos::prelude::*;

use super::desk::{Ask, Desk};
use crate::app::widgets::button::button;
use crate::app::widgets::fields::{Choice, number_field};
use crate::app::widgets::list::while_so;
use crate::design::choose::lengths::{RATIO, Room, Strength, Way};
use crate::design::settings::NumberRow;
use crate::engine::units::Length;

/// The ways, with the words of a list.
const WAYS: [(&str, &str); 6] = [
    ("wanted", "Near the curve, same gauges"),
    ("both", "Near the curve, other gauges too"),
    ("scale", "All by one factor"),
    ("longest", "All, to a longest string"),
    ("stretch", "By a factor at each end"),
    ("fair", "Made smooth, the ends kept"),
];

const STRENGTHS: [(Strength, &str, &str); 3] = [
    (Strength::ALittle, "little", "A little"),
    (Strength::Well, "well", "Well"),
    (Strength::Fully, "fully", "As smooth as can be"),
];

/// The fields of the room: what each holds back.
const ROOM: [(NumberRow, &str); 4] = [
    (mm("A pin moves by at most"), "8 % of its length"),
    (mm("Shortest string"), "as the neck allows"),
    (mm("Longest string"), "any"),
    (mm("Pin off the curve of its neighbours"), "any"),
];

const fn mm(label: &'static str) -> NumberRow {
    NumberRow { optional: true, ..NumberRow::new(label, "mm", (0.1, 5_000.0)) }
}

/// The fields, which are no part of the design.
#[derive(Clone, Copy)]
struct Fields {
    way: RwSignal<String>,
    strength: RwSignal<Strength>,
    room: [RwSignal<Option<f64>>; 4],
    factor: RwSignal<f64>,
    ends: [RwSignal<f64>; 2],
    longest: RwSignal<f64>,
}

/// The fields and the button.
pub fn reshape(desk: Desk) -> AnyView {
    let longest = desk.store.analysis.with_untracked(|analysis| {
        let lengths = analysis.strings.iter().filter_map(|figures| figures.length.ok());
        lengths.map(Length::to_mm).fold(0.0, f64::max)
    });
    let fields = Fields {
        way: RwSignal::new("wanted".to_owned()),
        strength: RwSignal::new(Strength::Well),
        room: [(); 4].map(|()| RwSignal::new(None)),
        factor: RwSignal::new(1.0),
        ends: [RwSignal::new(1.0), RwSignal::new(1.0)],
        longest: RwSignal::new(if longest > 0.0 { longest.round() } else { 1_000.0 }),
    };
    let is = move |ways: &'static [&'static str]| {
        move || fields.way.with(|way| ways.contains(&way.as_str()))
    };
    let ways = WAYS.map(|(key, words)| (key.to_owned(), words.to_owned())).to_vec();
    let strength = move || {
        let key = move || {
            let now = fields.strength.get();
            let row = STRENGTHS.iter().find(|row| row.0 == now);
            row.map_or(String::new(), |row| row.1.to_owned())
        };
        let choices = STRENGTHS.iter().map(|row| (row.1.to_owned(), row.2.to_owned())).collect();
        let set = move |key: String| {
            if let Some(row) = STRENGTHS.iter().find(|row| row.1 == key) {
                fields.strength.set(row.0);
            }
        };
        view! { <Choice label="Smooth" choices=choices value=Signal::derive(key) on_change=set/> }
            .into_any()
    };
    let room = move || {
        let row = |((row, usual), signal): (&(NumberRow, &'static str), RwSignal<Option<f64>>)| {
            let usual = *usual;
            let put = Callback::new(move |number| signal.set(number));
            let empty = Some(Signal::derive(move || usual.to_owned()));
            number_field(*row, signal.into(), empty, put)
        };
        let rows: Vec<AnyView> = ROOM.iter().zip(fields.room).map(row).collect();
        view! { <div class="form-stack">{rows}</div> }.into_any()
    };
    let ask = move || {
        let length = |number: RwSignal<Option<f64>>| number.get_untracked().map(Length::from_mm);
        let [move_pins, shortest, longest, kink] = fields.room;
        let room = Room {
            move_pins: length(move_pins),
            shortest: length(shortest),
            longest: length(longest),
            kink: length(kink),
            share_percent: None,
        };
        let strength = fields.strength.get_untracked();
        let [top, bottom] = fields.ends;
        let way = match fields.way.get_untracked().as_str() {
            "both" => return desk.ask(Ask::Both(strength, room)),
            "scale" => Way::Scale(fields.factor.get_untracked()),
            "longest" => Way::Longest(Length::from_mm(fields.longest.get_untracked())),
            "stretch" => Way::Stretch(top.get_untracked(), bottom.get_untracked()),
            "fair" => Way::Fair(strength),
            _ => Way::Wanted(strength),
        };
        desk.ask(Ask::Lengths(way, room));
    };
    let number = move |label: &'static str, unit: &'static str, range, of: RwSignal<f64>| {
        let put = Callback::new(move |number: Option<f64>| of.set(number.unwrap_or_default()));
        let value = Signal::derive(move || Some(of.get()));
        number_field(NumberRow::new(label, unit, range), value, None, put)
    };
    view! {
        <div class="form-stack">
            <Choice label="Other lengths" choices=ways value=fields.way on_change=move |key| fields.way.set(key)/>
            {while_so(is(&["wanted", "both", "fair"]), strength)}
            {while_so(is(&["wanted", "both"]), room)}
            {while_so(is(&["scale"]), move || number("Factor", "", RATIO, fields.factor))}
            {while_so(is(&["longest"]), move || number("Longest string", "mm", (10.0, 5_000.0), fields.longest))}
            {while_so(is(&["stretch"]), move || number("Factor at the highest string", "", RATIO, fields.ends[0]))}
            {while_so(is(&["stretch"]), move || number("Factor at the lowest string", "", RATIO, fields.ends[1]))}
            {button("tool main", "find-lengths", "Shown over the curves before anything changes", "Propose lengths", ask)}
            <p class="hint">"For the strings that may change, beside the search. Lengths come in steps of half a millimetre or of a 64th of an inch."</p>
        </div>
    }
    .into_any()
}
