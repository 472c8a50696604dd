//! The page in German and French: chosen once, kept, and nothing wider than the screen; what is told before the
//! program runs and after it has stopped; names of notes and materials.

use std::fs;

use fantoccini::key::Key;
use serde_json::json;

use crate::browser::{Browser, Screen, keep};
use crate::builds::{BREAK, MEND_WHEN_STOPPED, file_of};
use crate::opening::copy_of_build;
use crate::server::Site;

/// A language, and what the chart's view is called in it.
const SPOKEN: [(&str, &str); 2] = [("de", "Saitentabelle"), ("fr", "Tableau des cordes")];
const VIEWS: [&str; 5] =
    ["#drawing", "#choose-view", "#order-view", "#versions-view", "#chart-view"];

#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn the_page_speaks_german_and_french_and_stays_within_its_width() {
    let site = Site::of_build("/");
    for screen in [Screen::LAPTOP, Screen::PHONE] {
        let browser = Browser::open(screen).await;
        browser.open_app(&site.url()).await;
        assert_eq!(browser.ask("return document.documentElement.lang").await, "en");
        for (code, chart) in SPOKEN {
            browser
                .ask(&format!(
                    "document.querySelector('.menu-item[lang={code}]').click(); return 1"
                ))
                .await;
            let spoken = format!(
                "return document.documentElement.lang === '{code}' \
                 && document.querySelector('#chart-view')?.textContent.trim() === '{chart}'"
            );
            browser.until(&spoken, "the page in its language").await;
            browser.open_app(&site.url()).await;
            browser.until(&spoken, "the language is kept").await;
            for view in VIEWS {
                browser.click(view).await;
                browser.until("return !document.querySelector('.coming')", "the view").await;
                let over = "return document.documentElement.scrollWidth - document.documentElement.clientWidth";
                assert!(
                    browser.ask(over).await.as_i64() <= Some(0),
                    "{view} in {code} is too wide"
                );
            }
            let picture = browser.client.screenshot().await.unwrap();
            keep(&format!("e2e/page-{code}-{}.png", screen.width), &picture);
        }
        browser.check_console().await;
        browser.check_requests(&site.origin()).await;
    }
}

/// A browser whose user speaks this language.
async fn speaking(code: &str) -> Browser {
    let browser = Browser::open(Screen::LAPTOP).await;
    let agent = browser.ask("return navigator.userAgent").await;
    browser
        .devtools(
            "Emulation.setUserAgentOverride",
            json!({ "userAgent": agent, "acceptLanguage": code }),
        )
        .await;
    browser.devtools("Emulation.setLocaleOverride", json!({ "locale": code })).await;
    browser
}

#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn what_cannot_open_says_so_in_the_users_language() {
    let damaged = copy_of_build("damaged-in-language");
    let wasm = file_of(&damaged, "stringloft", "wasm");
    let bytes = fs::read(&wasm).expect("it is there");
    fs::write(&wasm, &bytes[..bytes.len() / 2]).expect("a copy may be spoilt");
    let missing = copy_of_build("missing-in-language");
    fs::remove_file(file_of(&missing, "stringloft", "wasm")).expect("a copy may be spoilt");
    let too_old = "Object.defineProperty(globalThis, 'WebAssembly', { value: undefined });";
    for (code, lead, words) in [
        ("de", "Die Saiten einer Harfe", ["beschädigt angekommen", "nicht angekommen", "zu alt"]),
        ("fr", "Concevez les cordes", ["arrivée abîmée", "n’est pas arrivée", "trop ancien"]),
    ] {
        let whole = copy_of_build("old-in-language");
        for (place, folder) in [&damaged, &missing, &whole].into_iter().enumerate() {
            let site = Site::of(folder.clone(), "/");
            let browser = speaking(code).await;
            if place == 2 {
                let script = json!({ "source": too_old });
                browser.devtools("Page.addScriptToEvaluateOnNewDocument", script).await;
            }
            browser.goto(&site.url()).await;
            let told = "return document.querySelector('#shell-state').role === 'alert'";
            browser.until(told, "a word").await;
            let said = browser.text("#shell").await;
            assert!(said.contains(lead) && said.contains(words[place]), "it says: {said}");
            assert_eq!(browser.ask("return document.documentElement.lang").await, code);
            let picture = browser.client.screenshot().await.unwrap();
            keep(&format!("e2e/unopened-{code}-{place}.png"), &picture);
            site.stop();
        }
    }
}

#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn a_program_that_stops_says_so_in_the_users_language() {
    let site = Site::of_build("/");
    for (code, words) in [
        ("de", ["Stringloft ist stehen geblieben", "zuletzt um ", "Mit leerer Tabelle öffnen"]),
        ("fr", ["Stringloft s’est arrêté", "dernière fois", "Ouvrir avec un tableau vide"]),
    ] {
        let browser = speaking(code).await;
        browser.open_app(&site.url()).await;
        browser.click("#cell-0-1").await;
        browser.press("87").await;
        browser.press(&Key::Enter.to_string()).await;
        browser.until("return !!document.documentElement.dataset.kept", "the design kept").await;
        browser.ask(MEND_WHEN_STOPPED).await;
        browser.ask(BREAK).await;
        for button in ["#versions-view", "#undo"] {
            let click = format!("document.querySelector('{button}').click(); return true");
            browser.ask(&click).await;
        }
        browser.until("return !!document.querySelector('#fault[open]')", "the word").await;
        let said = browser.text("#fault").await;
        for part in words {
            assert!(said.contains(part), "it says: {said}");
        }
        let picture = browser.client.screenshot().await.unwrap();
        keep(&format!("e2e/stopped-{code}.png"), &picture);
    }
}

/// Notes and materials are called as the page's language has them, whatever the design holds.
#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn notes_and_materials_have_the_names_of_the_language() {
    let site = Site::of_build("/");
    // The second string of the sample is B flat 6, the seventh D6; the last is wound on steel.
    let plain = "[...document.querySelectorAll('#cell-1-0, #cell-6-0, #cell-35-2')].map((c) => c.textContent.trim())";
    for (code, names, steel, typed, shown) in [
        ("en", ["B♭6", "D6"], "steel", "B5", "B5"),
        ("de", ["B6", "D6"], "Stahl", "H5", "H5"),
        ("fr", ["si♭5", "ré5"], "acier", "si4", "si4"),
    ] {
        let browser = speaking(code).await;
        browser.open_app(&site.url()).await;
        let cells = browser.ask(&format!("return {plain}")).await;
        let text = |place: usize| cells[place].as_str().unwrap_or_default().to_owned();
        assert_eq!([text(0), text(1)], names, "{cells}");
        assert!(text(2).contains(steel), "{cells}");
        let picture = browser.client.screenshot().await.unwrap();
        keep(&format!("e2e/notes-{code}.png"), &picture);
        // What is typed in the page's names is read so, and looking into a cell changes nothing.
        browser.click("#cell-1-0").await;
        browser.press(&Key::F2.to_string()).await;
        browser.press(&Key::Enter.to_string()).await;
        assert!(browser.ask("return document.querySelector('#undo').disabled").await == true);
        browser.click("#cell-8-0").await;
        browser.press(typed).await;
        browser.press(&Key::Enter.to_string()).await;
        assert_eq!(browser.text("#cell-8-0").await, shown, "in {code}");
        browser.check_console().await;
        // Another choice is the page's, and stays.
        browser.click("#instrument").await;
        let choose =
            "const field = document.querySelector('#note-names'); field.value = 'syllables';
            field.dispatchEvent(new Event('change', { bubbles: true })); return true";
        browser.until("return !!document.querySelector('#note-names')", "the choice").await;
        browser.ask(choose).await;
        let now = "return document.querySelector('#cell-1-0')?.textContent.trim() === 'si♭5'";
        browser.until(now, "syllables").await;
        browser.open_app(&site.url()).await;
        browser.until(now, "syllables still").await;
    }
}
