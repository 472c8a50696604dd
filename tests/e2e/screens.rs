//! Every screen of the page, and how each is come to: views, windows, papers, the client's page, open menus. The checks
//! of `eyes.rs` go through them all.

use std::time::{Duration, Instant};

use serde_json::json;
use stringloft::design::presets::SAMPLES;

use crate::browser::Browser;

/// Something done to come to a screen. By script, so that what is folded or out of sight is reached at every size.
#[derive(Clone, Copy, Debug)]
pub enum Step {
    /// Presses a button.
    Press(&'static str),
    /// Ticks a box, or takes its tick away.
    Tick(&'static str, bool),
    /// Opens a menu, or what a button unfolds, if it is not open.
    Open(&'static str),
    /// Chooses from a list: its selector, and a part of the value.
    Choose(&'static str, &'static str),
    /// Puts a text into a field.
    Write(&'static str, &'static str),
    /// Goes to a row and a column of the chart, counted from 0.
    Cell(usize, usize),
    /// Presses keys where the focus is.
    Keys(&'static str),
    /// Waits until something is there.
    Await(&'static str),
    /// Opens a table of notes and lengths alone, if it is not open.
    Bare,
}

use Step::{Await, Bare, Cell, Choose, Keys, Open, Press, Tick, Write};

/// A screen: its name, and the way to it from the string chart.
#[derive(Clone, Copy, Debug)]
pub struct Place {
    pub name: &'static str,
    pub steps: &'static [Step],
}

const fn place(name: &'static str, steps: &'static [Step]) -> Place {
    Place { name, steps }
}

const DRAWING: Step = Press("#drawing");
const DRAWN: Step = Await("#loft .string");
const PARTS: Step = Press("#parts-view");
const SIDES: Step = Await("#parts-paper svg");
const WINDOW: Step = Await("dialog[open] .window-body > *");
const PAPER: Step = Await("#print-root .paper");
const DETAILS: &str = "#tools .tool-group:nth-of-type(3) button:nth-of-type(4)";
const ENTER: &str = "\u{e007}";

/// All of them, in the order in which they are walked: what one of them leaves, those after it see.
pub const PLACES: &[Place] = &[
    place("chart", &[]),
    place("chart with all columns", &[Choose("#columns", "all"), Cell(2, 6)]),
    place("chart with the columns of a set", &[Choose("#columns", "working")]),
    place("tolerances", &[Tick("#tolerances", true), Await("#tolerances-hint:not([hidden])")]),
    place("menu of the designs", &[Tick("#tolerances", false), Open("#designs")]),
    place("menu of the instrument", &[Open("#harp")]),
    place("menu of what is shared", &[Open("#share")]),
    place("menu of the help", &[Open("#help")]),
    place("menu of the curves", &[Open("#which-curves")]),
    place("a cell typed into", &[Cell(3, 1), Keys("41")]),
    place(
        "what a cell could hold",
        &[Cell(3, 2), Keys("nylon"), Await("#offers:not([hidden]) .offer")],
    ),
    place("a notice", &[Cell(1, 4), Keys("5"), Await(".notice")]),
    place("drawing, shape", &[DRAWING, DRAWN, Open("#group-shape")]),
    place("drawing, woods", &[DRAWING, DRAWN, Choose("#over", "measures"), Open("#group-woods")]),
    place(
        "drawing, loads",
        &[DRAWING, DRAWN, Choose("#over", "load-forces"), Open("#group-loads")],
    ),
    place(
        "drawing, stringing",
        &[DRAWING, DRAWN, Choose("#over", "load-moment"), Open("#group-stringing")],
    ),
    place("drawing, keys", &[DRAWING, DRAWN, Choose("#over", "load-use"), Open("#group-keys")]),
    place("drawing, drills", &[DRAWING, DRAWN, Choose("#over", "bend"), Open("#group-drills")]),
    place("drawing, files", &[DRAWING, DRAWN, Choose("#over", "none"), Open("#group-files")]),
    place("parts in space", &[PARTS, Await("#space"), Open("#parts-list")]),
    place("parts, three sides", &[PARTS, Press("#parts-sides"), SIDES, Open("#parts-sizes")]),
    place("parts, worth a look", &[PARTS, Press("#parts-sides"), SIDES, Open("#parts-worth")]),
    place(
        "parts, a template",
        &[
            PARTS,
            Open("#parts-list"),
            Press(".parts-table tbody tr:nth-child(2) button"),
            Press("#parts-template"),
            SIDES,
        ],
    ),
    place("parts, planks", &[PARTS, Press("#parts-planks"), SIDES, Open("#parts-list")]),
    place("parts, files", &[PARTS, Press("#parts-space"), Await("#space"), Open("#parts-files")]),
    place("choosing, family", &[Press("#choose-view"), Open("#choose-family")]),
    place("choosing, points", &[Press("#choose-view"), Open("#choose-points")]),
    place("choosing, weights", &[Press("#choose-view"), Open("#choose-weights")]),
    place("choosing, limits", &[Press("#choose-view"), Open("#choose-limits")]),
    place("choosing, zones", &[Press("#choose-view"), Open("#choose-zones")]),
    place("choosing, kinds", &[Press("#choose-view"), Open("#choose-kinds")]),
    place("choosing, lengths", &[Press("#choose-view"), Open("#choose-reshape")]),
    place("order", &[Press("#order-view"), Await("#order")]),
    place("versions", &[Press("#versions-view"), Press("#keep-version"), Await("#totals")]),
    place(
        "versions, compared",
        &[
            Press("#versions-view"),
            Press("#keep-version"),
            Press("#chart-view"),
            Cell(2, 3),
            Keys("0.99"),
            Keys(ENTER),
            Press("#versions-view"),
            Await("#totals"),
        ],
    ),
    place("a new harp", &[Press("#new"), WINDOW]),
    place(
        "a harp from measurements",
        &[
            Press("#new"),
            WINDOW,
            Press("#ways input[value=measured]"),
            Write("#measurements", "C4\t700\tnylon 1.2\nD4\t640\tgut 1.1\nE4\t590\todd"),
            Await("#measured-preview"),
        ],
    ),
    place(
        "samples",
        &[Press("#new"), WINDOW, Press("#ways input[value=sample]"), Await(".samples li")],
    ),
    place("designs", &[Press("#shelf"), WINDOW]),
    place("pitch, units, limits", &[Press("#instrument"), WINDOW]),
    place("materials", &[Press("#materials"), WINDOW]),
    place("sound of the strings", &[Press("#sound"), WINDOW]),
    place("stock", &[Press("#stock"), WINDOW]),
    place(
        "stock, pasted",
        &[Press("#stock"), WINDOW, Press("#stock-paste"), Await("#stock-table-text")],
    ),
    place("make-up", &[Cell(3, 2), Press("#make-up"), WINDOW]),
    place("make-up, wound", &[Cell(33, 2), Press("#make-up"), WINDOW]),
    place("another material", &[Press("#exchange"), WINDOW]),
    place("a string in full", &[Press(DETAILS), WINDOW]),
    place("columns", &[Choose("#columns", "choose"), WINDOW]),
    place("link", &[Press("#link"), WINDOW]),
    place("a page of the numbers", &[Press("#numbers"), WINDOW]),
    place("numbers, materials", &[Press("#numbers"), WINDOW, Choose("#topics", "@30")]),
    place("numbers, loads", &[Press("#numbers"), WINDOW, Choose("#topics", "@34")]),
    place("numbers, checks", &[Press("#numbers"), WINDOW, Choose("#topics", "@38")]),
    place("curves in words", &[Press("#curves-told"), WINDOW]),
    place("about", &[Press("#about"), WINDOW, Press(".licence"), Await(".licences pre")]),
    place("settling, the plan", &[Press("#settling"), Await("#settling-steps tr")]),
    place(
        "settling, the log",
        &[
            Press("#settling"),
            Await("#settling-steps tr"),
            Open("#settling-log summary"),
            Press("#settling-note"),
            Await("#settling-lines tr"),
        ],
    ),
    place(
        "settling, by ear",
        &[Press("#settling"), Await("#settling-steps tr"), Open("#settling-ear summary")],
    ),
    place("shortcuts", &[Press("#keys"), WINDOW]),
    place("help", &[Press("#help-open"), WINDOW]),
    place("client's page", &[Press("#as-client"), WINDOW]),
    place("tuner", &[Press("#tuner"), WINDOW]),
    place("tuner, single levers", &[Press("#tuner"), WINDOW, Open("#tuner-each summary")]),
    place("stringing card", &[Press("#card"), PAPER]),
    place("tuning sheet", &[Press("#tuning-sheet"), PAPER]),
    place("design report", &[Press("#report"), PAPER]),
    place("order list", &[Press("#order-view"), Press("#order-print"), PAPER]),
    place("findings", &[Cell(4, 1), Keys("900"), Keys(ENTER), Await(".finding.weight-0")]),
    place(
        "findings, explained",
        &[Cell(4, 1), Keys("900"), Keys(ENTER), Open(".finding .ask"), Await(".finding .answer")],
    ),
    place(
        "a figure, explained",
        &[Choose("#columns", "feel"), Cell(2, 5), Open(".cell-line .ask"), Await(".answer")],
    ),
    place(
        "a cell that is wrong",
        &[Cell(5, 1), Keys("odd"), Keys(ENTER), Await("td.wrong"), Cell(5, 1)],
    ),
    place("what is missing", &[Cell(6, 1), Press(".tools button"), Press("#missing"), WINDOW]),
    place("choosing for a bare frame", &[Bare, Press("#choose-view")]),
    place(
        "choosing, what is proposed",
        &[Bare, Press("#choose-view"), Press("#find-set"), Await("#choose-title")],
    ),
    place(
        "choosing, sets of fewer gauges",
        &[Bare, Press("#choose-view"), Press("#find-fronts"), Await("#front .front-point")],
    ),
];

/// Leaves whatever is open: back at the string chart.
const BACK: &str = "
    document.activeElement?.blur();
    document.querySelector('#close-card')?.click();
    for (const open of document.querySelectorAll('dialog[open]')) open.close();
    for (const menu of document.querySelectorAll('details.menu[open]')) menu.open = false;
    for (const notice of document.querySelectorAll('.notice button')) notice.click();
    document.querySelector('#chart-view')?.click();
    scrollTo(0, 0);
    return true;
";
const IS_BACK: &str = "return !document.querySelector('dialog, #close-card, .notice') \
    && !document.querySelector('#app').inert && Boolean(document.querySelector('#chart'))";

/// Goes to a screen, from wherever it was; or says what was waited for in vain.
pub async fn go(browser: &Browser, place: &Place) -> Result<(), String> {
    browser.ask(BACK).await;
    until(browser, IS_BACK, "the chart").await?;
    for step in place.steps {
        take(browser, *step).await?;
    }
    // A part that is on its way comes a little later.
    until(browser, "return !document.querySelector('.coming')", "a part").await?;
    browser.ask("return new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(() => done(1))))").await;
    Ok(())
}

async fn until(browser: &Browser, script: &str, what: &str) -> Result<(), String> {
    let begun = Instant::now();
    while browser.ask(script).await != true {
        if begun.elapsed() > Duration::from_secs(15) {
            return Err(format!("not reached: waited in vain for {what}"));
        }
        tokio::time::sleep(Duration::from_millis(25)).await;
    }
    Ok(())
}

/// Notes and lengths of a sample as a table, and nothing on its strings.
fn bare() -> String {
    let strings = SAMPLES[1].design().strings;
    let lines = strings.iter().map(|string| format!("{},{}\n", string.note, string.length));
    format!("note,length_mm\n{}", lines.collect::<String>())
}

/// Does a step.
pub async fn take(browser: &Browser, step: Step) -> Result<(), String> {
    let there = |css: &str, then: &str| {
        format!(
            "const it = document.querySelector({}); if (!it) return false; {then} return true;",
            json!(css)
        )
    };
    let script = match step {
        Press(css) => there(css, "it.click();"),
        Tick(css, on) => there(css, &format!("if (it.checked !== {on}) it.click();")),
        Open(css) => there(
            css,
            "if (it.tagName === 'SUMMARY') it.parentElement.open = true; else if (it.ariaExpanded !== 'true') it.click();",
        ),
        Choose(css, value) => there(
            css,
            &format!(
                "const sought = {}; const place = Number(sought.slice(1));
                 const option = sought[0] === '@' ? it.options[Math.min(place, it.options.length - 1)] : [...it.options].find((one) => one.value === sought);
                 if (!option) return false;
                 it.value = option.value; it.dispatchEvent(new Event('change', {{ bubbles: true }}));",
                json!(value)
            ),
        ),
        Write(css, text) => there(
            css,
            &format!("it.value = {}; it.dispatchEvent(new Event('input', {{ bubbles: true }}));", json!(text)),
        ),
        Cell(row, column) => there(
            &format!("#cell-{row}-{column}"),
            "for (const kind of ['mousedown', 'mouseup', 'click']) it.dispatchEvent(new MouseEvent(kind, { bubbles: true, cancelable: true, button: 0 }));
             document.querySelector('#chart').focus();",
        ),
        Keys(keys) => {
            browser.press(keys).await;
            return Ok(());
        }
        Await(css) => there(css, ""),
        Bare => {
            const OPEN: &str = "return document.querySelectorAll('#chart tbody tr').length === 26";
            if browser.ask(OPEN).await == true {
                return Ok(());
            }
            browser.give_file("#file", "QX 26.csv", &bare()).await;
            OPEN.to_owned()
        }
    };
    until(browser, &script, &format!("{step:?}")).await
}
