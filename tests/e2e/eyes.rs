//! What eyes, keyboard and screen reader meet on every screen of `screens.rs`: barriers that axe finds, contrast, names
//! in the language of the page, room for longer words, zoom, forced colours, and nothing that moves unasked.
//!
//! Each test goes through all screens, in combinations of language, width and theme that are drawn so that each of
//! them comes to each screen. `EYES=all` goes through every combination, and `PLACE=order` to screens of that name alone.

mod names;

use std::collections::BTreeMap;

use serde_json::{Value, json};

use self::names::Tongue;
use crate::browser::{Browser, Screen, keep};
use crate::screens::{self, PLACES, Place, go};
use crate::server::Site;

const MEASURES: &str = include_str!("eyes/measures.js");
/// Width and height of a phone, a tablet and a laptop in CSS pixels.
const SIZES: [(u32, u32); 3] = [(390, 844), (820, 1180), (1366, 768)];
/// Rows of buttons and figures that go sideways under a finger.
const ROWS: &str = "'.summary, .views, .tools'";
const LANGUAGES: [&str; 3] = ["en", "de", "fr"];

/// Rules of axe that are off unless asked for, and asked for here. Three stay off: the contrast of 7 is level AAA, and
/// `measures.js` measures 4.5; the one for what the tab key comes to takes a separator that can be moved for no
/// widget, which it is by ARIA 1.2; and the one for paragraphs that look like headings takes figures in bold for some.
/// A size that is pulled in the drawing of the parts, where grips may lie close together, can be typed in the form beside it as
/// well, which is what WCAG 2.5.8 asks for then. What an open menu half covers is free again when it closes.
/// What a bar that stays in sight lies over can be scrolled from under it: `covered` below looks at that.
/// Of a window that is open it looks at that alone; what lies behind has screens of its own.
const AXE: &str = "
    const asked = ['target-size', 'css-orientation-lock', 'hidden-content', 'label-content-name-mismatch',
      'table-fake-caption', 'td-has-header', 'identical-links-same-purpose', 'meta-refresh-no-exceptions'];
    const menu = document.querySelector('.menu[open]');
    const isAside = ({ target }) => /data-pull/.test(target) || menu?.contains(document.querySelector(target[0])) === false;
    const rules = Object.fromEntries(asked.map((rule) => [rule, { enabled: true }]));
    return axe.run(document.querySelector('dialog[open]') ?? document, { rules, resultTypes: ['violations'] }).then((result) => result.violations.flatMap((found) =>
      found.nodes.filter((node) => !/partially obscured/.test(node.failureSummary) && !(found.id === 'target-size' && isAside(node))).map((node) => `axe ${found.id}: ${node.target} ${node.any.concat(node.all, node.none).map((check) => check.message).join(' ').slice(0, 200)}`)));
";

/// Waits until another theme is there and no colour is on its way any more.
const STILL: &str = "
    const frame = () => new Promise((then) => requestAnimationFrame(then));
    await frame();
    await frame();
    const ends = (one) => one.effect.getComputedTiming().endTime < Infinity;
    await Promise.allSettled(document.getAnimations().filter(ends).map((one) => one.finished));
    return true;
";

/// What was found: each complaint with where it was met first, and how often.
#[derive(Default)]
struct Found(BTreeMap<String, (String, usize)>);

impl Found {
    fn add(&mut self, at: &str, complaints: impl IntoIterator<Item = String>) {
        for complaint in complaints {
            self.0.entry(complaint).or_insert_with(|| (at.to_owned(), 0)).1 += 1;
        }
    }

    fn nothing(self) {
        let lines = self.0.iter().map(|(what, (at, count))| format!("{what}   [{at}, {count}×]"));
        let lines: Vec<String> = lines.collect();
        assert!(lines.is_empty(), "{} found:\n{}", lines.len(), lines.join("\n"));
    }
}

fn all() -> bool {
    std::env::var("EYES").is_ok_and(|what| what == "all")
}

/// The screens that are asked for, with their places in the list.
fn places() -> impl Iterator<Item = (usize, &'static Place)> {
    let named = std::env::var("PLACE").unwrap_or_default();
    PLACES.iter().enumerate().filter(move |(_, place)| place.name.contains(&named))
}

const fn screen((width, height): (u32, u32), dark: bool) -> Screen {
    Screen { width, height, scale: 1.0, touch: width < 1000, dark }
}

fn strings(answer: &Value) -> Vec<String> {
    answer.as_array().into_iter().flatten().filter_map(Value::as_str).map(str::to_owned).collect()
}

/// Opens the page in a language, with what the checks need in it.
async fn open(browser: &Browser, site: &Site, code: &str) {
    browser.open_app(&site.url()).await;
    if code != "en" {
        let speak = format!("document.querySelector('.menu-item[lang={code}]').click(); return 1");
        browser.ask(&speak).await;
        let spoken = format!("return document.documentElement.lang === '{code}'");
        browser.until(&spoken, "the language").await;
        browser.open_app(&site.url()).await;
    }
    browser.ask(MEASURES).await;
}

/// The complaints of a measure.
async fn measured(browser: &Browser, call: &str) -> Vec<String> {
    strings(&browser.ask(&format!("return measures.{call}")).await)
}

async fn axe(browser: &Browser) -> Vec<String> {
    browser.bring_axe().await;
    strings(&browser.ask(AXE).await)
}

/// Which sizes and themes a screen is looked at with: all of them, or one drawn by its place and the language.
fn drawn(place: usize, language: usize) -> Vec<((u32, u32), bool)> {
    if all() {
        return SIZES.iter().flat_map(|size| [false, true].map(|dark| (*size, dark))).collect();
    }
    vec![(SIZES[(place + language) % 3], (place / 3 + language) % 2 == 1)]
}

/// Whether axe looks at a screen in a language: each screen in one, drawn by its place. What it finds hangs on the
/// markup, which is the same in all of them; names and texts are measured in each.
fn axe_looks(place: usize, language: usize) -> bool {
    all() || place % LANGUAGES.len() == language
}

async fn no_barrier(language: usize) {
    let site = Site::of_build("/");
    let browser = Browser::open(Screen::LAPTOP).await;
    let code = LANGUAGES[language];
    open(&browser, &site, code).await;
    let tongue = Tongue::of(code);
    let mut found = Found::default();
    for (place, row) in places() {
        for (size, dark) in drawn(place, language) {
            browser.look_with(screen(size, dark)).await;
            found.add(row.name, go(&browser, row).await.err());
            browser.ask(STILL).await;
            let at =
                format!("{}, {code}, {} px{}", row.name, size.0, if dark { ", dark" } else { "" });
            picture(&browser, &at).await;
            if axe_looks(place, language) {
                found.add(&at, axe(&browser).await);
            }
            found.add(&at, measured(&browser, "contrast()").await);
            found.add(&at, measured(&browser, &format!("sideways({ROWS})")).await);
            found.add(&at, measured(&browser, "squeezed()").await);
            found.add(&at, tongue.complaints(&browser).await);
        }
    }
    browser.check_console().await;
    found.nothing();
}

#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn no_screen_has_a_barrier_in_english() {
    no_barrier(0).await;
}

#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn no_screen_has_a_barrier_in_german() {
    no_barrier(1).await;
}

#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn no_screen_has_a_barrier_in_french() {
    no_barrier(2).await;
}

/// In place of the German words: the English ones, drawn out.
fn longer_words() -> Vec<u8> {
    let english = catalogue::read(std::path::Path::new("src/words/en")).expect("the catalogue");
    let longer = catalogue::longer(&english);
    catalogue::pack(&english, &longer, true).expect("a pack").into_bytes()
}

#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn words_that_are_40_per_cent_longer_have_room() {
    let site = Site::of_build("/");
    site.answer_with("/words-de-", Some(longer_words()));
    site.answer_with("/sw.js", None);
    let browser = Browser::open(Screen::LAPTOP).await;
    open(&browser, &site, "de").await;
    let chart = browser.text("#chart-view").await;
    assert!(chart.starts_with('⟦') && chart.ends_with('⟧'), "{chart}");
    let mut found = Found::default();
    for (_, row) in places() {
        for (turn, size) in SIZES.into_iter().rev().enumerate() {
            browser.look_with(screen(size, false)).await;
            // Each screen is come to once, and stays while the window becomes narrower.
            if turn == 0 || row.steps.is_empty() {
                found.add(row.name, go(&browser, row).await.err());
            } else {
                browser.ask("return new Promise((done) => setTimeout(() => requestAnimationFrame(() => done(1)), 60))").await;
            }
            let at = format!("{}, {} px", row.name, size.0);
            found.add(&at, measured(&browser, &format!("layout({ROWS})")).await);
            picture(&browser, &format!("longer-{}-{}", row.name, size.0)).await;
        }
    }
    found.nothing();
}

#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn a_page_at_two_and_four_times_its_size_goes_down_and_not_sideways() {
    let site = Site::of_build("/");
    let mut found = Found::default();
    // What 1366 by 768 pixels become.
    for (times, width, height) in [(2.0, 683, 384), (4.0, 341, 192)] {
        let browser = Browser::open(Screen::LAPTOP).await;
        open(&browser, &site, "en").await;
        let zoomed = Screen { width, height, scale: times, touch: false, dark: false };
        browser.look_with(zoomed).await;
        for (place, row) in places() {
            if !all() && (place + usize::from(times > 3.0)) % 2 == 1 && row.steps.len() > 2 {
                continue;
            }
            found.add(row.name, go(&browser, row).await.err());
            let at = format!("{}, {times} times", row.name);
            picture(&browser, &format!("zoom-{times}-{}", row.name)).await;
            found.add(&at, measured(&browser, &format!("sideways({ROWS})")).await);
            found.add(&at, measured(&browser, "covered()").await);
        }
    }
    found.nothing();
}

async fn emulate(browser: &Browser, features: Value) {
    browser.devtools("Emulation.setEmulatedMedia", json!({ "features": features })).await;
}

#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn nothing_moves_where_less_motion_is_asked_for() {
    let site = Site::of_build("/");
    let browser = Browser::open(Screen::LAPTOP).await;
    emulate(&browser, json!([{ "name": "prefers-reduced-motion", "value": "reduce" }])).await;
    open(&browser, &site, "en").await;
    let mut found = Found::default();
    for (place, row) in places() {
        if !all() && place % 3 != 0 {
            continue;
        }
        found.add(row.name, go(&browser, row).await.err());
        found.add(row.name, measured(&browser, "moves()").await);
    }
    found.nothing();
}

/// Keeps a picture, where they are asked for.
async fn picture(browser: &Browser, name: &str) {
    if std::env::var_os("SHOTS").is_some() {
        let name = name.replace([' ', ','], "-");
        let bytes = browser.client.screenshot().await.expect("a picture");
        keep(&format!("shots/{name}.png"), &bytes);
    }
}

/// What is on, chosen or current, and its like that is not: where it is to be seen.
const TOLD_APART: &[(&str, &str, &str)] = &[
    ("chart", ".view-button[aria-pressed=true]", ".view-button[aria-pressed=false]"),
    ("chart with the columns of a set", "#chart td.selected", "#chart td.typed:not(.selected)"),
    ("drawing, shape", "#group-shape[aria-expanded=true]", "#group-woods[aria-expanded=false]"),
    (
        "choosing, sets of fewer gauges",
        ".front-point[aria-pressed=true]",
        ".front-point[aria-pressed=false]",
    ),
    ("columns", ".tool[aria-pressed=true]", ".tool[aria-pressed=false]"),
    ("materials", ".material-line[aria-current]", ".material-line:not([aria-current])"),
    ("findings", "#chart tr.grave th", "#chart tr:not(.grave, .warned) th"),
    ("findings", ".finding.weight-0 .sign", ".finding:not(.weight-0) .sign"),
];
/// How an element looks to whoever sees only the system's colours, which leave no shadow.
const LOOK: &str = "
    const look = (css) => {
      const it = document.querySelector(css);
      if (!it) return null;
      const style = getComputedStyle(it);
      const after = getComputedStyle(it, '::after');
      return [style.backgroundColor, style.color, style.borderTopColor, style.borderTopStyle, style.borderLeftWidth,
        style.borderBottomColor, style.outlineStyle, style.borderRadius, after.content].join(' ');
    };
";

#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn colours_of_the_system_leave_what_is_chosen_told_apart() {
    let site = Site::of_build("/");
    for scheme in ["light", "dark"] {
        let browser = Browser::open(Screen::LAPTOP).await;
        emulate(
            &browser,
            json!([{ "name": "forced-colors", "value": "active" }, { "name": "prefers-color-scheme", "value": scheme }]),
        )
        .await;
        open(&browser, &site, "en").await;
        let mut found = Found::default();
        for (_, row) in places() {
            let pairs = TOLD_APART.iter().filter(|(name, ..)| *name == row.name);
            let pairs: Vec<_> = pairs.collect();
            let pictured = std::env::var_os("SHOTS").is_some();
            if pairs.is_empty() && !pictured {
                continue;
            }
            found.add(row.name, go(&browser, row).await.err());
            picture(&browser, &format!("forced-{scheme}-{}", row.name)).await;
            if row.name.starts_with("choosing, sets") {
                browser.ask("document.querySelector('#set-0')?.click(); return 1").await;
            }
            for (_, on, off) in pairs {
                let looks = format!("{LOOK} return [look({}), look({})]", json!(on), json!(off));
                let looks = browser.ask(&looks).await;
                let [on_look, off_look] = [&looks[0], &looks[1]];
                if on_look.is_null() || off_look.is_null() {
                    found.add(row.name, [format!("not there: {on} or {off}: {looks}")]);
                } else if on_look == off_look {
                    found.add(row.name, [format!("{on} looks like {off}: {on_look}")]);
                }
            }
        }
        // Where the keyboard is has a rim.
        browser.press("\u{e004}").await;
        let rim = "const style = getComputedStyle(document.activeElement); return style.outlineStyle !== 'none' && parseFloat(style.outlineWidth) >= 1";
        assert_eq!(browser.ask(rim).await, true, "the focus is seen");
        found.nothing();
    }
}

#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn the_curves_are_told_to_whoever_does_not_see_them() {
    let site = Site::of_build("/");
    let browser = Browser::open(Screen::LAPTOP).await;
    for (code, begins) in
        [("en", "Tension: from "), ("de", "Zugkraft: von "), ("fr", "Tension : de ")]
    {
        open(&browser, &site, code).await;
        let told = "(document.getElementById(document.querySelector('#curves').getAttribute('aria-describedby'))?.textContent ?? '')";
        let begun = format!("return {told}.startsWith({})", json!(begins));
        browser.until(&begun, "the curves in words").await;
        let before = browser.ask(&format!("return {told}")).await;
        // Two strings of twice the length are heard of.
        browser.ask("document.querySelector('#chart').focus(); return 1").await;
        for step in [
            screens::Step::Cell(9, 1),
            screens::Step::Keys("3000"),
            screens::Step::Keys("\u{e007}"),
        ] {
            screens::take(&browser, step).await.expect("a length");
        }
        let changed = format!("return {told} !== {before}");
        browser.until(&changed, "the change in words").await;
        browser.click("#undo").await;
    }
    browser.ask("document.querySelector('#curves-told').click(); return 1").await;
    let _ = browser.find(".curves-table tbody tr").await;
    let strings = browser.count("#chart tbody tr").await;
    assert_eq!(browser.count(".curves-table tbody tr").await, strings);
    let curves = browser.count(".curves-told li").await;
    assert!(curves >= 3, "{curves} curves are told");
    assert_eq!(browser.count(".curves-table thead th").await, curves + 1);
    let untold = browser.count(".curves-table tbody th:not([scope=row])").await;
    assert_eq!(untold, 0, "each row has its head");
}
