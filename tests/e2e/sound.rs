//! The sound of the strings: silent until a key, soon heard, two versions by one key, and a file.

use fantoccini::key::Key;
use serde_json::Value;

use crate::browser::{Browser, Screen};
use crate::server::Site;

const HERE: &str = "globalThis.hearing !== undefined";
/// How far the player has come, and its samples.
const HEARD: &str = "return [hearing.took, hearing.heard.length,
    hearing.heard.reduce((most, one) => Math.max(most, Math.abs(one)), 0),
    hearing.heard[0], hearing.heard.at(-1),
    hearing.heard.slice(0, 44100).reduce((sum, one) => sum + one * one, 0), hearing.whole]";
/// From the first piece to its sound, in milliseconds: `LEAD_S` of `hearing.js`.
const LEAD_MS: f64 = 15.0;
const ASIDE: &str = "return Math.max(document.documentElement.scrollWidth - innerWidth,
    ...[...document.querySelectorAll('dialog')].map((one) => one.scrollWidth - one.clientWidth))";

/// Opens the largest sample, with all that its sound needs.
async fn open(browser: &Browser) {
    browser.click("#sound").await;
    let _ = browser.find("#sound-strings button").await;
    browser.until(&format!("return {HERE}"), "the player").await;
}

/// Forgets what was heard, acts, and waits for what is heard then.
async fn heard(browser: &Browser, act: &str) -> Vec<f64> {
    browser.ask("hearing.took = hearing.heard = undefined").await;
    browser.ask(act).await;
    browser.until("return hearing.heard !== undefined", "a sound").await;
    let told: Value = browser.ask(HEARD).await;
    told.as_array().expect("a list").iter().map(|one| one.as_f64().expect("a number")).collect()
}

fn assert_is_fit(what: &str, told: &[f64]) {
    let [took_ms, samples, peak, first, last, _, whole_ms] = told else {
        panic!("{what}: {told:?}")
    };
    assert!(*samples > 4_000.0, "{what}: {samples} samples");
    // 6 dB below full, and nothing that clicks.
    assert!((0.01..=0.5012).contains(peak), "{what}: a peak of {peak}");
    assert_eq!((*first, *last), (0.0, 0.0), "{what}");
    eprintln!(
        "{what}: {took_ms:.1} ms to the first sound, {whole_ms:.1} ms to its end, {samples} samples, peak {peak:.4}"
    );
}

#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn a_string_sounds_soon_after_its_key_and_not_before() {
    let site = Site::of_build("/");
    let browser = Browser::open(Screen::LAPTOP).await;
    browser.open_app(&site.url()).await;
    browser.click("#new").await;
    browser.click("#ways input[value=sample]").await;
    browser.click(".samples li:nth-child(4) button").await;
    let asked = browser.ask("return performance.getEntriesByType('resource').filter((one) => /hearing/.test(one.name)).length").await;
    assert_eq!(asked, 0, "nothing of the sound is fetched before it is used");
    open(&browser).await;
    assert_eq!(browser.count("#sound-strings button").await, 47);
    // Until the worker has its module; then nothing has been played.
    browser.ask("return hearing.warm()").await;
    assert_eq!(browser.ask("return hearing.heard === undefined").await, true);

    let mut slowest = 0.0_f64;
    for place in [1, 13, 24, 36, 47] {
        let press =
            format!("document.querySelector('#sound-strings button:nth-child({place})').click()");
        let told = heard(&browser, &press).await;
        assert_is_fit(&format!("string {place}"), &told);
        slowest = slowest.max(told[0]);
    }
    eprintln!("slowest of five strings: {slowest:.1} ms");
    assert!(slowest < 400.0, "{slowest} ms on a busy machine; 50 on a quiet one");

    // By the keyboard: the arrow keys go on, Enter plays.
    browser.ask("document.querySelector('#sound-strings [tabindex=\"0\"]').focus()").await;
    browser.press(&Key::Left.to_string()).await;
    browser.ask("hearing.heard = undefined").await;
    browser.press(&Key::Enter.to_string()).await;
    browser.until("return hearing.heard !== undefined", "a sound by the keyboard").await;

    // Plucked as nothing was yet, so that nothing of it is rendered: what is heard first comes in a part of the time that
    // the whole takes, whatever else the machine does.
    for (place, what) in [(0, "string"), (1, "scale"), (2, "chord"), (3, "glide")] {
        let choose = format!(
            "const field = document.querySelectorAll('#sound-window fieldset input')[2];
             field.value = '13.{place}'; field.dispatchEvent(new Event('input', {{ bubbles: true }}));
             const list = document.querySelector('#sound-window fieldset select'); list.value = '{place}';
             list.dispatchEvent(new Event('change', {{ bubbles: true }}));
             const before = performance.now();
             document.querySelector('#sound-play').click();
             globalThis.pressed = performance.now() - before"
        );
        let told = heard(&browser, &choose).await;
        assert_is_fit(what, &told);
        let pressed = browser.ask("return pressed").await;
        eprintln!("{what}: {pressed} ms of them on the page's thread");
        let (took_ms, whole_ms) = (told[0] - LEAD_MS, told[6]);
        let share = if what == "string" || what == "chord" { 0.6 } else { 0.35 };
        assert!(took_ms < 25.0 || took_ms < share * whole_ms, "{what}: {took_ms} of {whole_ms}");
    }
    browser.click("#sound-stop").await;
    browser.check_console().await;
    browser.check_requests(&site.origin()).await;
}

#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn one_key_goes_over_to_the_other_sound_which_is_as_loud() {
    let site = Site::of_build("/");
    let browser = Browser::open(Screen::LAPTOP).await;
    browser.open_app(&site.url()).await;
    open(&browser).await;
    browser.ask("return hearing.warm()").await;
    assert_eq!(browser.count("#sound-b").await, 0);
    let compare = "const list = document.querySelectorAll('#sound-window fieldset select')[2]; list.value = 'thickest';
        list.dispatchEvent(new Event('change', { bubbles: true }))";
    browser.ask(compare).await;
    let _ = browser.find("#sound-b").await;
    let one = heard(&browser, "document.querySelector('#sound-play').click()").await;
    browser.ask("document.querySelector('#sound-play').focus(); hearing.heard = undefined").await;
    browser.press("x").await;
    browser.until("return hearing.heard !== undefined", "the other sound").await;
    assert_eq!(browser.ask("return document.querySelector('#sound-b').ariaPressed").await, "true");
    let told = browser.ask(HEARD).await;
    let other: Vec<f64> =
        told.as_array().expect("a list").iter().filter_map(Value::as_f64).collect();
    assert!((other[5] / one[5] - 1.0).abs() < 0.02, "energy {} and {}", one[5], other[5]);
    assert!(one[2] <= 0.5012 && other[2] <= 0.5012, "peaks {} and {}", one[2], other[2]);

    // The file.
    let folder = browser.allow_downloads("sound").await;
    browser.click("#sound-save").await;
    browser
        .until("return document.querySelector('.notice') !== null", "the word of the file")
        .await;
    let said = browser.text(".notice").await;
    let name = said
        .split_whitespace()
        .map(|word| word.trim_end_matches('.'))
        .find(|word| word.ends_with(".wav"))
        .map(str::to_owned);
    let name = name.unwrap_or_else(|| panic!("{said}"));
    let file = browser.downloaded(&folder.join(name.trim_matches(['"', '“', '”']))).await;
    assert_eq!((&file[..4], &file[8..16]), (&b"RIFF"[..], &b"WAVEfmt "[..]));
    browser.check_console().await;
}

#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn what_is_proposed_is_heard_beside_the_design_and_single_levers_raise() {
    let site = Site::of_build("/");
    let browser = Browser::open(Screen::LAPTOP).await;
    browser.open_app(&site.url()).await;
    let choices = "return [...document.querySelectorAll('#sound-window fieldset select')].at(2).options.length";
    open(&browser).await;
    let few = browser.ask(choices).await.as_i64().expect("a number");
    browser.click(".window-head button").await;
    browser.click("#choose-view").await;
    browser.click("#find-set").await;
    let proposed =
        "return /^The best set/.test(document.querySelector('#choose-title')?.textContent)";
    browser.until(proposed, "a proposal").await;
    open(&browser).await;
    assert_eq!(browser.ask(choices).await.as_i64(), Some(few + 1), "the proposal can be chosen");
    let compare = "const list = document.querySelectorAll('#sound-window fieldset select')[2]; list.value = 'proposed';
        list.dispatchEvent(new Event('change', { bubbles: true }))";
    browser.ask(compare).await;
    assert_eq!(browser.text("#sound-b").await, "B: The proposal of Choose strings");
    let here = heard(&browser, "document.querySelector('#sound-a').click()").await;
    let there = heard(&browser, "document.querySelector('#sound-b').click()").await;
    assert!((there[5] / here[5] - 1.0).abs() < 0.05, "energy {} and {}", here[5], there[5]);

    // One lever alone: its string sounds another pitch, the one beside it the same.
    let string = |place: usize| {
        format!("document.querySelectorAll('#sound-strings button')[{place}].click()")
    };
    let samples = "return Array.from(hearing.heard.slice(2000, 2400))";
    let mut before = Vec::new();
    for place in [19, 20] {
        heard(&browser, &string(place)).await;
        before.push(browser.ask(samples).await);
    }
    browser.ask("document.querySelector('#sound-each').open = true").await;
    let lever = "return document.querySelectorAll('#sound-each button')[19].textContent";
    assert!(browser.ask(lever).await.as_str().unwrap().ends_with(": Open"));
    browser.ask("document.querySelectorAll('#sound-each button')[19].click()").await;
    browser.until(&format!("{lever}.endsWith(': Raised')"), "the lever").await;
    heard(&browser, &string(19)).await;
    assert_ne!(browser.ask(samples).await, before[0]);
    heard(&browser, &string(20)).await;
    assert_eq!(browser.ask(samples).await, before[1]);
    browser.screenshot("sound-levers-1366").await;
    browser.check_barriers().await;
    browser.check_console().await;
}

#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn the_window_of_sound_fits_every_screen() {
    let browser = Browser::open(Screen::PHONE).await;
    let mut sites = Vec::new(); // a new address is a page that knows nothing yet
    for screen in [Screen::PHONE, Screen::LAPTOP] {
        for screen in [screen, screen.in_the_dark()] {
            let site = Site::of_build("/");
            browser.look_with(screen).await;
            browser.open_app(&site.url()).await;
            sites.push(site);
            open(&browser).await;
            assert!(browser.ask(ASIDE).await.as_i64() <= Some(0), "{screen:?}");
            browser.check_barriers().await;
            let light = if screen.dark { "dark" } else { "light" };
            let _ = browser.screenshot(&format!("sound-{}-{light}", screen.width)).await;
        }
    }
}
