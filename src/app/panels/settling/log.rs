//! The log of the strings: readings noted by hand, or by whoever hears them, and what they say.

use leptos::prelude::*;

use crate::app::settled::{CELSIUS, CENTS, Come, Settled};
use crate::app::store::{Origin, Store};
use crate::app::widgets::button::button;
use crate::app::widgets::fields::{Choice, TextField};
use crate::app::widgets::list::{list, part, while_so, words};
use crate::app::{browser, clock, shelf};
use crate::design::decimal::decimal;
use crate::design::display;
use crate::design::settling::{Logged, logged, odd, rate};
use crate::engine::settling::creep::{Entry, Holds};
use crate::engine::settling::plan::WITHIN_CENTS;
use crate::words::{Words, settling as say};

/// For so many days a string is to hold.
const DAYS: f64 = 7.0;
const MS_OF_A_MINUTE: f64 = 60_000.0;

/// The heads of the table.
const HEADS: [Words; 5] = [say::STRING, say::READINGS, say::LAST, say::RATE, say::HOLDS];

/// A reading of a string: how far off it was in cents, whether it was tuned and left so, and how warm it was.
#[derive(Clone, Copy, Debug)]
pub struct Reading {
    /// The row of the string.
    pub row: usize,
    /// How far off it was, in cents.
    pub cents: f64,
    /// Whether it was tuned, and left there.
    pub is_tuning: bool,
    /// How warm it was, in degrees Celsius, where that is known.
    pub celsius: Option<f64>,
}

/// Where the log of the open design is kept; nowhere while it is not kept itself.
fn key(store: Store) -> Option<String> {
    match &*store.origin.read_untracked() {
        Origin::Kept(id) => Some(shelf::settled_key(id)),
        _ => None,
    }
}

/// The log of the open design as it is kept.
fn kept(store: Store) -> Settled {
    let text = key(store).and_then(|key| browser::kept(&key)).unwrap_or_default();
    Settled::read(&text)
}

/// Minutes since the year 1970.
fn now_min() -> f64 {
    decimal(&clock::now()).unwrap_or(0.0) / MS_OF_A_MINUTE
}

/// Changes the log of the open design and keeps it. A design that the browser does not keep yet is kept first.
///
/// # Errors
///
/// Why the browser does not, as a sentence.
fn change(store: Store, change: impl FnOnce(&mut Settled) -> bool) -> Result<bool, String> {
    if !matches!(store.origin.get_untracked(), Origin::Kept(_)) {
        store.keep_copy();
    }
    // Another tab may have noted something meanwhile.
    let mut log = kept(store);
    if !change(&mut log) {
        return Ok(false);
    }
    if let Some(key) = key(store) {
        browser::keep(&key, &log.write()).map_err(|why| say::not_kept(&why))?;
    }
    Ok(true)
}

/// Notes a reading of a string of the open design, now; in place of the one before it, where that is given and nothing
/// was noted since. What was noted, if there was room for it.
///
/// # Errors
///
/// Why the browser does not keep it, as a sentence.
pub fn note_reading(
    store: Store,
    reading: Reading,
    before: Option<Entry>,
) -> Result<Option<Entry>, String> {
    let Reading { row, cents, is_tuning, celsius } = reading;
    let entry = Entry { minutes: now_min(), cents, is_tuning, celsius };
    let design = store.design.get_untracked();
    let is_noted = change(store, |log| match &before {
        Some(before) => log.note_again(&design, row, before, entry),
        None => log.note(&design, row, entry),
    })?;
    Ok(is_noted.then_some(entry))
}

/// How far the open design was brought up, where it is kept.
pub fn come(store: Store) -> Option<Come> {
    key(store).map(|_| kept(store).come.unwrap_or_default())
}

/// Keeps how far the open design was brought up, if it is kept itself. It is no reading, so that nothing is lost where the
/// browser does not keep it.
pub fn keep_come(store: Store, come: Come) {
    if key(store).is_some() {
        let _ = change(store, |log| log.come.replace(come) != Some(come));
    }
}

/// Takes the last line of the log back. Whether there was one.
///
/// # Errors
///
/// Why the browser does not keep the rest, as a sentence.
pub fn take_back(store: Store) -> Result<bool, String> {
    change(store, Settled::take_back)
}

/// The temperature that a text is, if one was written.
///
/// # Errors
///
/// What to write instead.
pub fn celsius_of(text: &str) -> Result<Option<f64>, String> {
    if text.trim().is_empty() {
        return Ok(None);
    }
    let known = number(text).filter(|celsius| CELSIUS.contains(celsius));
    Ok(Some(known.ok_or_else(|| String::from(say::BAD_CELSIUS))?))
}

fn number(text: &str) -> Option<f64> {
    decimal(&text.trim().replace(',', ".").replace('−', "-"))
}

/// What was done with a string whose reading is noted: it was heard, or tuned.
pub fn kinds() -> Vec<(String, String)> {
    let kinds = [(TUNED, say::TUNED), (HEARD, say::HEARD)];
    kinds.map(|(key, words)| (key.to_owned(), words.said().to_owned())).to_vec()
}

/// The keys of [`kinds`].
pub const TUNED: &str = "tuned";
pub const HEARD: &str = "heard";

/// The day of a moment.
fn day(minutes: f64) -> String {
    let ms = (minutes * MS_OF_A_MINUTE).clamp(0.0, 8e15);
    #[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "between bounds")]
    let ms = ms as u64;
    clock::day_at(ms)
}

/// From when on a string will hold, in words.
fn holds(logged: &Logged, minutes: f64) -> String {
    let Ok(fit) = &logged.fit else { return String::new() };
    match fit.holds(WITHIN_CENTS, DAYS, minutes) {
        [_, Holds::Already] => say::HOLDS_ALREADY.into(),
        [Holds::Already, Holds::From(latest)] => say::holds_surely(&day(minutes), &day(latest)),
        [Holds::From(likely), Holds::From(latest)] => {
            let (likely, latest) = (day(likely), day(latest));
            if likely == latest {
                say::holds_from(&likely)
            } else {
                say::holds_surely(&likely, &latest)
            }
        }
        [Holds::Already, Holds::NotForetold] => say::holds_open(&day(minutes)),
        [Holds::From(likely), Holds::NotForetold] => say::holds_open(&day(likely)),
        [Holds::NotForetold, _] => say::HOLDS_NOT.into(),
    }
}

/// The log.
#[component]
pub fn Log(store: Store) -> impl IntoView {
    // Counts what was noted, so that the log is read again.
    let noted = RwSignal::new(0_u32);
    let all = Memo::new(move |_| {
        noted.track();
        let log = kept(store).of(&store.design.read());
        Logs(logged(&log, &store.analysis.read()), now_min())
    });
    let rows = move || {
        let row = |one: &Logged, now: f64| {
            let name = one.name.clone();
            let cells = [one.count.to_string(), one.last.clone(), rate(one, now), holds(one, now)];
            part(&(name.clone(), cells.clone()), move || {
                let cells = cells.map(|text| view! { <td>{text}</td> });
                view! { <tr><th scope="row">{name}</th>{cells.collect_view()}</tr> }.into_any()
            })
        };
        all.with(|Logs(all, now)| all.iter().map(|one| row(one, *now)).collect())
    };
    let unlike = move || {
        let (resolved, analysis) = (store.resolved.read(), store.analysis.read());
        let line = |text: String| part(&text.clone(), move || view! { <li>{text}</li> }.into_any());
        all.with(|Logs(all, _)| {
            odd(all, &analysis, &resolved.harp, day).into_iter().map(line).collect()
        })
    };
    let is_empty = move || all.with(|Logs(all, _)| all.is_empty());
    let heads =
        move || HEADS.map(|head| view! { <th scope="col">{head.said()}</th> }).collect_view();
    view! {
        <details id="settling-log">
            <summary>{say::LOG.said()}</summary>
            <p class="hint">{say::LOG_HINT.said()}</p>
            {entry(store, noted)}
            {while_so(is_empty, || view! { <p>{say::LOG_EMPTY.said()}</p> }.into_any())}
            {while_so(move || !is_empty(), move || view! {
                <ul class="granted wrong" id="settling-odd">{list(unlike)}</ul>
                <div class="sheet" role="region" tabindex="0" aria-label=say::LOG_TABLE.said()>
                    <table class="sources stages">
                        <thead><tr>{heads()}</tr></thead>
                        <tbody id="settling-lines">{list(rows)}</tbody>
                    </table>
                </div>
                <p class="hint">{say::LAW.said()}</p>
            }.into_any())}
        </details>
    }
}

/// What the log says, and when it was asked.
#[derive(Clone, Debug, PartialEq)]
struct Logs(Vec<Logged>, f64);

/// The fields in which a reading is noted by hand.
fn entry(store: Store, noted: RwSignal<u32>) -> AnyView {
    let row = RwSignal::new(0_usize);
    let is_tuning = RwSignal::new(true);
    let cents = RwSignal::new("0".to_owned());
    let celsius = RwSignal::new(String::new());
    let outcome = RwSignal::new(Ok::<String, String>(String::new()));
    let name = move |row: usize| {
        store.analysis.with_untracked(|analysis| {
            analysis.strings.get(row).map(display::string_number).unwrap_or_default()
        })
    };
    let read = move || -> Result<Reading, String> {
        let cents = cents.with_untracked(|text| number(text)).filter(|cents| CENTS.contains(cents));
        let cents = cents.ok_or_else(|| String::from(say::BAD_CENTS))?;
        let celsius = celsius.with_untracked(|text| celsius_of(text))?;
        let (row, is_tuning) = (row.get_untracked(), is_tuning.get_untracked());
        Ok(Reading { row, cents, is_tuning, celsius })
    };
    let note = move || {
        let done = read().and_then(|reading| {
            if note_reading(store, reading, None)?.is_some() {
                Ok(say::noted(&display::cents(reading.cents), &name(reading.row)))
            } else {
                Err(say::LOG_FULL.into())
            }
        });
        noted.update(|count| *count += 1);
        outcome.set(done);
    };
    let back = move || {
        let done = take_back(store);
        noted.update(|count| *count += 1);
        let words = |back| if back { say::TAKEN_BACK } else { say::NOTHING_TAKEN };
        outcome.set(done.map(|back| words(back).into()));
    };
    let strings = move || {
        let option = |at: usize, name: String| {
            part(&(at, name.clone()), move || {
                view! { <option value=at.to_string()>{name}</option> }.into_any()
            })
        };
        let analysis = store.analysis.read();
        let all = analysis.strings.iter().enumerate();
        all.map(|(at, figures)| option(at, display::string_number(figures))).collect()
    };
    let kind = move || if is_tuning.get() { TUNED } else { HEARD }.to_owned();
    let said = move || outcome.get().unwrap_or_else(|wrong| wrong);
    view! {
        <fieldset class="trial-fields" aria-label=say::LOG.said()>
            <label class="field">
                <span>{say::STRING.said()}</span>
                <select
                    id="settling-string"
                    on:change=move |event| row.set(event_target_value(&event).parse().unwrap_or(0))
                >
                    {list(strings)}
                </select>
            </label>
            <Choice
                label=say::KIND.said()
                choices=kinds()
                value=Signal::derive(kind)
                on_change=move |key: String| is_tuning.set(key == TUNED)
            />
            <TextField label=say::CENTS.said() value=cents on_input=move |text| cents.set(text)/>
            <TextField label=say::CELSIUS.said() value=celsius on_input=move |text| celsius.set(text)/>
            <p class="window-actions">
                {button("tool main", "settling-note", "", say::NOTE.said(), note)}
                {button("tool", "settling-back", "", say::TAKE_BACK.said(), back)}
            </p>
            <p role="status" id="settling-noted" class:wrong=move || outcome.with(Result::is_err)>
                {words(said)}
            </p>
        </fieldset>
    }
    .into_any()
}
