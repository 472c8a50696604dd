//! A harp that is there already: its measured lengths typed or pasted, what each column of them is, and what of the
//! harp is missing.

use leptos::prelude::*;

use super::replace;
use crate::app::browser;
use crate::app::grid::Shown;
use crate::app::panels::chart_acts::{go_to, select};
use crate::app::panels::form::{mechanism_key, mechanism_of, options};
use crate::app::rows::{ASKS_B, gap_words, measured, preview, told, unit_question};
use crate::app::store::{Pasted, Store, View, Window as Open};
use crate::app::widgets::button::button;
use crate::app::widgets::fields::{Choice, TextField};
use crate::app::widgets::list::{Part, either, list, part, while_so, words};
use crate::app::widgets::window::Window;
use crate::design::advice;
use crate::design::document::Design;
use crate::design::edit;
use crate::design::heading::Size;
use crate::design::library::built_in;
use crate::design::presets::OPEN_TUNINGS;
use crate::design::restring::{Measured, Reading, gaps};
use crate::design::settings::OneOf;
use crate::design::table::Field;
use crate::design::table::hand::{Column, PlainB, Question};
use crate::engine::material::said;
use crate::engine::pitch::Note;
use crate::words::{Words, naming, new_harp as say, page};

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
            wrong.set(say::NOT_STARTED_ASKED.into());
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
        Err(why) => wrong.set(say::not_started(&why)),
    };
    let tunings = OPEN_TUNINGS
        .iter()
        .enumerate()
        .map(|(place, open)| (place.to_string(), open.name.into()))
        .collect();
    let mut materials = vec![(String::new(), say::NOT_KNOWN.into())];
    materials.extend(
        built_in().iter().map(|material| (material.key.clone(), said(&material.name).to_owned())),
    );
    let kind = move || {
        let usual =
            || found.with(|found| found.as_ref().map(|read| read.mechanism).unwrap_or_default());
        pasted.with(|pasted| pasted.mechanism).unwrap_or_else(usual)
    };
    let is_empty = move || pasted.with(|pasted| pasted.text.trim().is_empty());
    view! {
        <fieldset>
            <legend>{say::MEASURED.said()}</legend>
            <div class="measured">
                <div class="form-stack">
                    <label class="field">
                        <span>{say::TABLE_OF_STRINGS.said()}</span>
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
                        label=say::ELSE_MATERIAL.said()
                        choices=materials
                        value=Signal::derive(move || pasted.with(|pasted| pasted.material.clone()))
                        on_change=move |key: String| set(&|pasted| pasted.material.clone_from(&key))
                    />
                    <Choice
                        label=say::EACH_HAS.said()
                        choices=options(OneOf::Mechanism)
                        value=Signal::derive(move || mechanism_key(kind()))
                        on_change=move |key: String| set(&|pasted| pasted.mechanism = mechanism_of(&key))
                    />
                    <p class="hint">{say::WITHOUT_NOTES.said()}</p>
                    <div class="two-fields">
                        <TextField
                            label=say::LIST_HIGHEST.said()
                            value=Signal::derive(move || pasted.with(|pasted| pasted.highest.clone()))
                            on_input=move |text: String| set(&|pasted| pasted.highest.clone_from(&text))
                            hint="C6"
                        />
                        <TextField
                            label=say::LIST_LOWEST.said()
                            value=Signal::derive(move || pasted.with(|pasted| pasted.lowest.clone()))
                            on_input=move |text: String| set(&|pasted| pasted.lowest.clone_from(&text))
                            hint="C2"
                        />
                    </div>
                    <Choice
                        label=say::LIST_OPEN.said()
                        choices=tunings
                        value=Signal::derive(move || pasted.with(|pasted| pasted.tuning.to_string()))
                        on_change=move |key: String| set(&|pasted| pasted.tuning = key.parse().unwrap_or(0))
                    />
                </div>
                <div class="form-stack">{either(is_empty, || ().into_any(), move || looked_at(store, found))}</div>
            </div>
            <p class="wrong" id="measurements-wrong" role="alert">{words(move || wrong.get())}</p>
            <p class="window-actions">
                {button("tool main", "start-measurements", "", say::START.said(), start)}
                {button("tool", "drop-measurements", "", say::THROW_AWAY.said(), move || pasted.set(Pasted::default()))}
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
        let note = Note::read(text, naming());
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
                .zip(1..)
                .map(|((at, column), number)| {
                    let key = (
                        at,
                        column.heading.clone(),
                        column.example.clone(),
                        column.field,
                        column.unit,
                    );
                    let column = column.clone();
                    part(&key, move || column_row(store, found, (at, number), column))
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
            Ok(read) => say::strings(&read.table.strings.len()),
            Err(why) => why.clone(),
        })
    };
    let has_columns =
        move || found.with(|found| found.as_ref().is_ok_and(|read| !read.hand.columns.is_empty()));
    let heads = |names: &[Words]| -> Vec<AnyView> {
        names.iter().map(|name| view! { <th scope="col">{name.said()}</th> }.into_any()).collect()
    };
    view! {
        <ul class="stock-bad" id="measured-questions" aria-label=say::QUESTIONS.said()>{list(questions)}</ul>
        {while_so(has_columns, move || {
            view! {
                <div class="stock-table" tabindex="0" role="region" aria-label=say::WHICH_COLUMN.said()>
                    <table class="number-table" id="measured-columns">
                        <thead><tr>{heads(&[say::HEAD_HEADING, say::HEAD_FIRST, say::HEAD_IS, say::HEAD_BARE])}</tr></thead>
                        <tbody>{list(columns)}</tbody>
                    </table>
                </div>
            }.into_any()
        })}
        <p role="status" id="measured-summary">{words(summary)}</p>
        <div class="stock-table" tabindex="0" role="region" aria-label=say::EACH_ROW.said()>
            <table class="sources" id="measured-preview">
                <thead><tr>{heads(&[say::HEAD_NUMBER, say::HEAD_NOTE, say::HEAD_LENGTH, say::HEAD_GAUGE, say::HEAD_MATERIAL, say::HEAD_REMARK])}</tr></thead>
                <tbody>{list(rows)}</tbody>
            </table>
        </div>
        <ul class="stock-bad hint" id="measured-told" aria-label=say::GRANTED.said()>{list(lines)}</ul>
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
                let all =
                    [(say::B_FLAT.said(), PlainB::Flat), (say::B_NATURAL.said(), PlainB::Natural)];
                (ASKS_B.into(), all.into_iter().map(of).collect())
            }
        };
        view! { <li>{words}{answers}</li> }.into_any()
    })
}

/// One column: what it is taken for, and the unit of its numbers, can be changed.
fn column_row(store: Store, found: Found, (at, number): (usize, usize), column: Column) -> AnyView {
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
        "" => say::column(&number),
        heading => heading.to_owned(),
    };
    let label = say::column_is(&heading);
    let unit_label = say::column_unit(&heading);
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
                    <option value="" selected=column.field.is_none()>{say::LEFT_OUT.said()}</option>
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
    let to_choose = move || {
        store.window.set(None);
        store.view.set(View::Choose);
    };
    let line = move |(text, row, column): (String, usize, edit::Column)| {
        part(&(text.clone(), row), move || {
            let label = say::go_there_to(&text);
            view! {
                <li>
                    <span>{text}</span>
                    " "
                    <button type="button" class="cure" aria-label=label on:click=move |_| go(row, column)>{say::GO_THERE.said()}</button>
                </li>
            }
            .into_any()
        })
    };
    view! {
        <Window title=say::MISSING_TITLE.said() wide=true on_close=move || store.window.set(None)>
            {either(
                move || found.with(Vec::is_empty),
                || view! { <p>{say::MISSING_NONE.said()}</p> }.into_any(),
                || view! { <p>{say::MISSING_SOME.said()}</p> }.into_any(),
            )}
            {while_so(
                move || found.with(|found| found.iter().any(|(.., column)| matches!(column, edit::Column::MakeUp | edit::Column::Gauge))),
                move || view! {
                    <p>
                        {say::CHOOSE_INSTEAD.said()} " "
                        {button("tool", "missing-choose", "", page::CHOOSE.said(), to_choose)}
                    </p>
                }.into_any(),
            )}
            <ol class="missing-list" id="missing-list">{list(move || found.get().into_iter().map(line).collect())}</ol>
            <p class="caution">{advice::caution()}</p>
        </Window>
    }
}
