//! A harp that is there already: its measured lengths typed or pasted, what each column of them is, and what of the
//! harp is missing.

use leptos::prelude::*;

use super::replace;
use crate::app::browser;
use crate::app::grid::Shown;
use crate::app::panels::chart_acts::{go_to, select};
use crate::app::panels::form::{mechanism_of, options};
use crate::app::rows::{ASKS_B, gap_words, measured, preview, told, unit_question};
use crate::app::store::{Pasted, Store, View, Window as Open};
use crate::app::widgets::button::button;
use crate::app::widgets::fields::{Choice, TextField};
use crate::app::widgets::list::{Part, either, list, part, while_so, words};
use crate::app::widgets::window::Window;
use crate::design::advice;
use crate::design::display;
use crate::design::document::Design;
use crate::design::edit;
use crate::design::heading::Size;
use crate::design::library::built_in;
use crate::design::presets::OPEN_TUNINGS;
use crate::design::restring::{Measured, Reading, gaps};
use crate::design::settings::OneOf;
use crate::design::table::Field;
use crate::design::table::hand::{Column, PlainB, Question};
use crate::engine::pitch::Note;

/// What was read of the list, or why nothing was.
type Found = Memo<Result<Measured, String>>;

/// From measurements.
#[component]
pub fn FromMeasurements(store: Store) -> impl IntoView {
    let pasted = store.pasted;
    let wrong = RwSignal::new(String::new());
    let found: Found = Memo::new(move |_| pasted.with(read));
    let set = move |change: &dyn Fn(&mut Pasted)| {
        wrong.set(String::new());
        pasted.update(|pasted| change(pasted));
    };
    let start = move || match found.get_untracked() {
        Ok(read) if !read.hand.questions().is_empty() => {
            wrong.set("Not started: answer the question beside the list first.".to_owned());
        }
        Ok(read) => {
            let units = store.design.with_untracked(|design| design.units);
            let design = read.into_design(&Design { units, ..Design::default() });
            let whole = gaps(&design).is_empty();
            if replace(store, &|| store.begin(design.clone())) {
                pasted.set(Pasted::default());
                store.view.set(View::Chart);
                store.window.set((!whole).then_some(Open::Missing));
            }
        }
        Err(why) => wrong.set(format!("Not started: {why}")),
    };
    let tunings = OPEN_TUNINGS
        .iter()
        .enumerate()
        .map(|(place, open)| (place.to_string(), open.name.to_owned()))
        .collect();
    let mut materials = vec![(String::new(), "not known".to_owned())];
    materials
        .extend(built_in().iter().map(|material| (material.key.clone(), material.name.clone())));
    let kind = move || {
        let usual =
            || found.with(|found| found.as_ref().map(|read| read.mechanism).unwrap_or_default());
        pasted.with(|pasted| pasted.mechanism).unwrap_or_else(usual)
    };
    let is_empty = move || pasted.with(|pasted| pasted.text.trim().is_empty());
    view! {
        <fieldset>
            <legend>"From measurements, to restring a harp"</legend>
            <div class="measured">
                <div class="form-stack">
                    <label class="field">
                        <span>"A table from anywhere, or a line for each string: note, length and, if known, the old string. Its columns may stand in any order. A question mark is a length that was not measured."</span>
                        <textarea
                            id="measurements"
                            rows="7"
                            spellcheck="false"
                            placeholder="C6, 176, nylon, 0.64\nB5, 188, nylon, 0.64\nA5, ?"
                            prop:value=move || pasted.with(|pasted| pasted.text.clone())
                            on:input=move |event| {
                                let text = event_target_value(&event);
                                set(&|pasted| (pasted.text, pasted.columns) = (text.clone(), None));
                            }
                        ></textarea>
                    </label>
                    <Choice
                        label="Strings of which the list says nothing are of"
                        choices=materials
                        value=Signal::derive(move || pasted.with(|pasted| pasted.material.clone()))
                        on_change=move |key: String| set(&|pasted| pasted.material.clone_from(&key))
                    />
                    <Choice
                        label="Each string has"
                        choices=options(OneOf::Mechanism)
                        value=Signal::derive(move || display::mechanism(kind()).to_owned())
                        on_change=move |words: String| set(&|pasted| pasted.mechanism = mechanism_of(&words))
                    />
                    <p class="hint">"For a list without notes:"</p>
                    <div class="two-fields">
                        <TextField
                            label="Highest string of the list"
                            value=Signal::derive(move || pasted.with(|pasted| pasted.highest.clone()))
                            on_input=move |text: String| set(&|pasted| pasted.highest.clone_from(&text))
                            hint="C6"
                        />
                        <TextField
                            label="Lowest string of the list"
                            value=Signal::derive(move || pasted.with(|pasted| pasted.lowest.clone()))
                            on_input=move |text: String| set(&|pasted| pasted.lowest.clone_from(&text))
                            hint="C2"
                        />
                    </div>
                    <Choice
                        label="Open strings of the list"
                        choices=tunings
                        value=Signal::derive(move || pasted.with(|pasted| pasted.tuning.to_string()))
                        on_change=move |key: String| set(&|pasted| pasted.tuning = key.parse().unwrap_or(0))
                    />
                </div>
                <div class="form-stack">{either(is_empty, || ().into_any(), move || looked_at(store, found))}</div>
            </div>
            <p class="wrong" id="measurements-wrong" role="alert">{words(move || wrong.get())}</p>
            <p>
                {button("tool main", "start-measurements", "", "Start", start)}
                {button("tool", "drop-measurements", "", "Throw the text away", move || pasted.set(Pasted::default()))}
            </p>
        </fieldset>
    }
}

/// Reads what was pasted as it is said to be.
fn read(pasted: &Pasted) -> Result<Measured, String> {
    let end = |text: &str| -> Result<Option<Note>, String> {
        if text.trim().is_empty() {
            return Ok(None);
        }
        let note = text.trim().parse::<Note>();
        note.map(Some)
            .map_err(|error| format!("{}.", crate::design::letters::capital(&error.to_string())))
    };
    let reading = Reading {
        columns: pasted.columns.as_ref(),
        highest: end(&pasted.highest)?,
        lowest: end(&pasted.lowest)?,
        open: OPEN_TUNINGS.get(pasted.tuning).unwrap_or(&OPEN_TUNINGS[0]),
        material: &pasted.material,
        mechanism: pasted.mechanism,
    };
    measured(&pasted.text, &reading)
}

/// What was read: questions, columns, what there is to tell, and what each row becomes.
fn looked_at(store: Store, found: Found) -> AnyView {
    let hand = move |part: &dyn Fn(&Measured) -> Vec<Part>| {
        found.with(|found| found.as_ref().map(part).unwrap_or_default())
    };
    let questions = move || {
        hand(&|read: &Measured| {
            let open = read.hand.questions().into_iter();
            let heading = |place: usize| read.hand.columns[place].heading.clone();
            open.map(|question| asked(store, found, heading(question.place()), question)).collect()
        })
    };
    let columns = move || {
        hand(&|read: &Measured| {
            let all = read.hand.columns.iter().enumerate();
            all.filter(|(_, column)| !column.example.is_empty())
                .map(|(at, column)| {
                    let key = (
                        at,
                        column.heading.clone(),
                        column.example.clone(),
                        column.field,
                        column.unit,
                    );
                    let column = column.clone();
                    part(&key, move || column_row(store, found, at, column))
                })
                .collect()
        })
    };
    let rows = move || {
        hand(&|read: &Measured| {
            let row = |cells: [String; 6]| {
                part(&cells.clone(), move || {
                    let cells: Vec<AnyView> = cells
                        .into_iter()
                        .map(|cell| view! { <td>{cell}</td> }.into_any())
                        .collect();
                    view! { <tr>{cells}</tr> }.into_any()
                })
            };
            preview(read).into_iter().map(row).collect()
        })
    };
    let lines = move || {
        hand(&|read: &Measured| {
            let line =
                |text: String| part(&text.clone(), move || view! { <li>{text}</li> }.into_any());
            told(read).into_iter().map(line).collect()
        })
    };
    let summary = move || {
        found.with(|found| match found {
            Ok(read) => match read.table.strings.len() {
                1 => "1 string.".to_owned(),
                count => format!("{count} strings."),
            },
            Err(why) => why.clone(),
        })
    };
    let has_columns =
        move || found.with(|found| found.as_ref().is_ok_and(|read| !read.hand.columns.is_empty()));
    let heads = |names: &[&'static str]| -> Vec<AnyView> {
        names.iter().map(|name| view! { <th scope="col">{*name}</th> }.into_any()).collect()
    };
    view! {
        <ul class="stock-bad" id="measured-questions" aria-label="Questions">{list(questions)}</ul>
        {while_so(has_columns, move || {
            view! {
                <div class="stock-table" tabindex="0" role="region" aria-label="Which column is what">
                    <table class="number-table" id="measured-columns">
                        <thead><tr>{heads(&["Heading", "First cell", "Is", "Bare numbers are in"])}</tr></thead>
                        <tbody>{list(columns)}</tbody>
                    </table>
                </div>
            }.into_any()
        })}
        <p role="status" id="measured-summary">{words(summary)}</p>
        <div class="stock-table" tabindex="0" role="region" aria-label="What each row becomes">
            <table class="sources" id="measured-preview">
                <thead><tr>{heads(&["No.", "Note", "Length", "Gauge", "Material", "Remark"])}</tr></thead>
                <tbody>{list(rows)}</tbody>
            </table>
        </div>
        <ul class="stock-bad hint" id="measured-told" aria-label="What was taken for granted">{list(lines)}</ul>
    }
    .into_any()
}

/// Changes one column, and with it what the columns are from now on.
fn put(store: Store, found: Found, at: usize, change: impl Fn(&mut Column)) {
    let Ok(Ok(mut columns)) =
        found.try_get_untracked().map(|found| found.map(|read| read.hand.columns)).ok_or(())
    else {
        return;
    };
    let Some(column) = columns.get_mut(at) else { return };
    change(column);
    let field = column.field;
    let others = columns.iter_mut().enumerate().filter(|(place, _)| *place != at);
    others.filter(|(_, column)| column.field == field).for_each(|(_, column)| column.field = None);
    store.pasted.update(|pasted| pasted.columns = Some(columns));
}

/// Says what unit a column is in.
fn in_unit(column: &mut Column, unit: Size) {
    (column.unit, column.has_unit, column.looks_like) = (unit, true, None);
}

/// A question with its answers.
fn asked(store: Store, found: Found, heading: String, question: Question) -> Part {
    part(&(heading.clone(), format!("{question:?}")), move || {
        let answer = |words: &'static str, press: Box<dyn Fn()>| {
            view! {
                " "
                <button type="button" class="cure" on:click=move |_| press()>{words}</button>
            }
            .into_any()
        };
        let (words, answers): (String, Vec<AnyView>) = match question {
            Question::Unit { place, said, answers } => {
                let words = unit_question(&heading, said, answers.first().copied().unwrap_or(said));
                let of = |unit: Size| {
                    let press = move || put(store, found, place, |column| in_unit(column, unit));
                    answer(unit.words(), Box::new(press))
                };
                (words, answers.into_iter().map(of).collect())
            }
            Question::PlainB { place } => {
                let of = |(words, is): (&'static str, PlainB)| {
                    let press =
                        move || put(store, found, place, |column| column.plain_b = Some(is));
                    answer(words, Box::new(press))
                };
                let all = [("B flat", PlainB::Flat), ("B natural", PlainB::Natural)];
                (ASKS_B.to_owned(), all.into_iter().map(of).collect())
            }
        };
        view! { <li>{words}{answers}</li> }.into_any()
    })
}

/// One column: what it is taken for, and the unit of its numbers, can be changed.
fn column_row(store: Store, found: Found, at: usize, column: Column) -> AnyView {
    let option = |name: &'static str, is_it: bool| {
        view! { <option value=name selected=is_it>{name}</option> }.into_any()
    };
    let fields: Vec<AnyView> =
        Field::ALL.iter().map(|field| option(field.name(), column.field == Some(*field))).collect();
    let units: Vec<AnyView> =
        Size::ALL.iter().map(|unit| option(unit.name(), column.unit == *unit)).collect();
    let set_field = move |event| {
        let name = event_target_value(&event);
        let field = Field::ALL.into_iter().find(|field| field.name() == name);
        put(store, found, at, |column| column.field = field);
    };
    let set_unit = move |event| {
        let name = event_target_value(&event);
        if let Some(unit) = Size::ALL.into_iter().find(|unit| unit.name() == name) {
            put(store, found, at, |column| in_unit(column, unit));
        }
    };
    let heading = match column.heading.trim() {
        "" => format!("Column {}", at + 1),
        heading => heading.to_owned(),
    };
    let label = format!("{heading} is");
    let unit_label = format!("Unit of {heading}");
    let size = column.field.is_some_and(Field::is_size).then(|| {
        view! { <select id=format!("measured-unit-{at}") aria-label=unit_label on:change=set_unit>{units}</select> }
            .into_any()
    });
    view! {
        <tr>
            <th scope="row">{heading}</th>
            <td>{column.example}</td>
            <td>
                <select id=format!("measured-column-{at}") aria-label=label on:change=set_field>
                    <option value="" selected=column.field.is_none()>"left out"</option>
                    {fields}
                </select>
            </td>
            <td>{size}</td>
        </tr>
    }
    .into_any()
}

/// What is missing of the harp, each with the way to its cell.
#[component]
pub fn MissingWindow(store: Store) -> impl IntoView {
    let found = Memo::new(move |_| {
        let design = store.design.read();
        gap_words(&design, &gaps(&design))
    });
    let go = move |row: usize, column: edit::Column| {
        store.view.set(View::Chart);
        store.window.set(None);
        select(store, store.cell_in(row, Shown::Typed(column)), false);
        go_to(store, row);
        request_animation_frame(|| browser::focus("chart"));
    };
    let line = move |(text, row, column): (String, usize, edit::Column)| {
        part(&(text.clone(), row), move || {
            let label = format!("Go there: {text}");
            view! {
                <li>
                    <span>{text}</span>
                    " "
                    <button type="button" class="cure" aria-label=label on:click=move |_| go(row, column)>"Go there"</button>
                </li>
            }
            .into_any()
        })
    };
    view! {
        <Window title="First step: what is missing of this harp" wide=true on_close=move || store.window.set(None)>
            {either(
                move || found.with(Vec::is_empty),
                || view! { <p>"Nothing is missing: every string has its note, its length and what it is made of."</p> }.into_any(),
                || view! { <p>"Nothing was guessed. What was not measured, or cannot be read, is listed here; what can be worked out without it stands in the chart already. This list is kept under What is missing, beside the findings."</p> }.into_any(),
            )}
            <ol class="missing-list" id="missing-list">{list(move || found.get().into_iter().map(line).collect())}</ol>
            <p class="caution">{advice::caution()}</p>
        </Window>
    }
}
