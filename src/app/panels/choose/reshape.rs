//! Other lengths: for the target curve, scaled, stretched or faired; and strings and lengths in turn.

use leptos::prelude::*;

use super::desk::{Ask, Desk};
use crate::app::widgets::button::button;
use crate::app::widgets::fields::{Choice, number_field};
use crate::app::widgets::list::while_so;
use crate::design::choose::lengths::{RATIO, Room, Strength, Way};
use crate::design::settings::NumberRow;
use crate::engine::units::Length;
use crate::words::{Words, choose_page as say};

/// The ways, with the words of a list.
const WAYS: [(&str, Words); 6] = [
    ("wanted", say::WAY_WANTED),
    ("both", say::WAY_BOTH),
    ("scale", say::WAY_SCALE),
    ("longest", say::WAY_LONGEST),
    ("stretch", say::WAY_STRETCH),
    ("fair", say::WAY_FAIR),
];

const STRENGTHS: [(Strength, &str, Words); 3] = [
    (Strength::ALittle, "little", say::SMOOTH_LITTLE),
    (Strength::Well, "well", say::SMOOTH_WELL),
    (Strength::Fully, "fully", say::SMOOTH_FULLY),
];

/// The fields of the room: what each holds back.
const ROOM: [(NumberRow, Words); 4] = [
    (mm(say::ROOM_MOVE), say::ROOM_MOVE_USUAL),
    (mm(say::ROOM_SHORTEST), say::ROOM_SHORTEST_USUAL),
    (mm(say::ROOM_LONGEST), say::ROOM_ANY),
    (mm(say::ROOM_KINK), say::ROOM_ANY),
];

const fn mm(label: Words) -> NumberRow {
    NumberRow { optional: true, ..NumberRow::new(label, Words::plain("mm"), (0.1, 5_000.0)) }
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
    let ways = WAYS.map(|(key, words)| (key.to_owned(), words.into())).to_vec();
    let strength = move || {
        let key = move || {
            let now = fields.strength.get();
            let row = STRENGTHS.iter().find(|row| row.0 == now);
            row.map_or(String::new(), |row| row.1.to_owned())
        };
        let choices = STRENGTHS.iter().map(|row| (row.1.to_owned(), row.2.into())).collect();
        let set = move |key: String| {
            if let Some(row) = STRENGTHS.iter().find(|row| row.1 == key) {
                fields.strength.set(row.0);
            }
        };
        view! { <Choice label=say::SMOOTH.said() choices=choices value=Signal::derive(key) on_change=set/> }
            .into_any()
    };
    let room = move || {
        let row = |((row, usual), signal): (&(NumberRow, Words), RwSignal<Option<f64>>)| {
            let usual = *usual;
            let put = Callback::new(move |number| signal.set(number));
            let empty = Some(Signal::derive(move || usual.into()));
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
    let number = move |label: Words, unit: &'static str, range, of: RwSignal<f64>| {
        let put = Callback::new(move |number: Option<f64>| of.set(number.unwrap_or_default()));
        let value = Signal::derive(move || Some(of.get()));
        number_field(NumberRow::new(label, Words::plain(unit), range), value, None, put)
    };
    view! {
        <div class="form-stack">
            <Choice label=say::OTHER_LENGTHS.said() choices=ways value=fields.way on_change=move |key| fields.way.set(key)/>
            {while_so(is(&["wanted", "both", "fair"]), strength)}
            {while_so(is(&["wanted", "both"]), room)}
            {while_so(is(&["scale"]), move || number(say::FACTOR, "", RATIO, fields.factor))}
            {while_so(is(&["longest"]), move || number(say::ROOM_LONGEST, "mm", (10.0, 5_000.0), fields.longest))}
            {while_so(is(&["stretch"]), move || number(say::FACTOR_TOP, "", RATIO, fields.ends[0]))}
            {while_so(is(&["stretch"]), move || number(say::FACTOR_BOTTOM, "", RATIO, fields.ends[1]))}
            {button("tool main", "find-lengths", say::FIND_LENGTHS_HINT.said(), say::FIND_LENGTHS.said(), ask)}
            <p class="hint">{say::LENGTHS_HINT.said()}</p>
        </div>
    }
    .into_any()
}
