//! What the page tells of what was done, and of what was not: a browser that refuses, a user who declines.
//!
//! The page is asked and answered in the words of its own script, as a user's browser would.

use stringloft::design::document::Design;
use stringloft::design::persist::MOST_VERSIONS;
use stringloft::design::presets::SAMPLES;
use stringloft::design::{link, persist};
use wasm_bindgen::JsCast;
use wasm_bindgen_futures::JsFuture;
use wasm_bindgen_test::wasm_bindgen_test;

/// Steps of 50 ms that something is waited for.
const STEPS: usize = 200;

/// What the page's script gives for an expression, as a text.
fn ask(script: &str) -> String {
    let answer = js_sys::eval(&format!("String({script})"));
    answer.unwrap_or_else(|error| panic!("{script}: {error:?}")).as_string().unwrap_or_default()
}

fn run(script: &str) {
    ask(&format!("(() => {{ {script} }})()"));
}

async fn rest_ms(ms: usize) {
    let promise = js_sys::eval(&format!("new Promise((done) => setTimeout(done, {ms}))"));
    let promise: js_sys::Promise = promise.expect("a promise").dyn_into().expect("a promise");
    JsFuture::from(promise).await.expect("time passes");
}

/// Waits until an expression is true.
async fn until(script: &str) {
    for _ in 0..STEPS {
        if ask(script) == "true" {
            return;
        }
        rest_ms(50).await;
    }
    panic!("never so: {script}; the page says: {} {}", told(), ask("document.body.innerText"));
}

/// The line that tells what was done.
fn told() -> String {
    ask("document.querySelector('.notice')?.innerText ?? ''")
}

async fn until_told(part: &str) {
    until(&format!("(document.querySelector('.notice')?.innerText ?? '').includes({part:?})"))
        .await;
}

fn is_problem() -> bool {
    ask("document.querySelector('.notice.problem') !== null") == "true"
}

/// A page as on a first visit, but for what `before` puts into the browser. The pages of earlier tests are gone, and
/// have nothing left to keep.
fn page(before: &str) {
    run("
        // What is not the page's own shows how the tests go.
        document.querySelectorAll('body > :not(pre, script)').forEach((part) => part.remove());
        window.puts ??= Storage.prototype.setItem;
        window.idles ??= window.requestIdleCallback;
        window.makes ??= URL.createObjectURL;
        Storage.prototype.setItem = window.puts;
        window.requestIdleCallback = window.idles;
        URL.createObjectURL = window.makes;
        window.asked = [];
        window.confirm = (question) => { window.asked.push(question); return window.answer ?? false; };
        window.answer = false;
        window.dispatchEvent(new PageTransitionEvent('pagehide'));
        localStorage.clear();
        localStorage.setItem('stringloft/columns', 'all');
        sessionStorage.clear();
        history.replaceState(null, '', location.pathname + location.search);
    ");
    run(before);
    stringloft::app::start();
}

/// From now on the browser's storage is full.
const FULL: &str =
    "Storage.prototype.setItem = () => { throw new DOMException('no', 'QuotaExceededError'); };";

/// Types a text into a field, as a paste would.
fn type_into(field: &str, text: &str) {
    run(&format!(
        "const field = document.querySelector({field:?});
         field.value = {text:?};
         field.dispatchEvent(new InputEvent('input', {{ bubbles: true }}));"
    ));
}

fn click(button: &str) {
    run(&format!("document.querySelector({button:?}).click();"));
}

/// Gives a file to the page's field for files.
fn give_file(field: &str, name: &str, text: &str) {
    run(&format!(
        "const given = new DataTransfer();
         given.items.add(new File([{text:?}], {name:?}));
         const field = document.querySelector({field:?});
         field.files = given.files;
         field.dispatchEvent(new Event('change', {{ bubbles: true }}));"
    ));
}

/// A design on the shelf with a title, as the page keeps it.
fn kept_titles() -> String {
    ask("Object.keys(localStorage).filter((key) => key.startsWith('stringloft/design/'))
        .map((key) => JSON.parse(localStorage[key]).title).join('|')")
}

fn sample(title: &str) -> Design {
    Design { title: title.to_owned(), ..SAMPLES[0].design() }
}

#[wasm_bindgen_test]
async fn an_edit_that_is_refused_is_not_told_as_done() {
    page("");
    click("#versions-view");
    until("document.querySelector('#keep-version') !== null").await;
    let keep = |name: &str| {
        type_into(".keep-line input", name);
        click("#keep-version");
    };
    for version in 1..=MOST_VERSIONS {
        let name = format!("try {version}");
        keep(&name);
        until_told(&format!("Kept as \"{name}\"")).await;
        assert!(!is_problem());
    }
    keep("one more");
    until_told("That was not taken").await;
    assert!(is_problem() && !told().contains("Kept"), "{}", told());
    // What was typed is there to be used when there is room.
    assert_eq!(ask("document.querySelector('.keep-line input').value"), "one more");
    until("Object.values(localStorage).some((text) => text.includes('try 12'))").await;
    assert_eq!(
        ask("Object.values(localStorage).some((text) => text.includes('one more'))"),
        "false"
    );
}

#[wasm_bindgen_test]
async fn a_declined_opening_is_not_told_as_opened() {
    page(FULL);
    type_into("#title", "Only here");
    let file = persist::write(&sample("From a file"));
    give_file("#file", "willow.json", &file);
    until_told("Nothing else was opened").await;
    assert_eq!(ask("window.asked.length"), "1");
    assert!(!told().contains("Opened"), "{}", told());
    assert_eq!(ask("document.querySelector('#title').value"), "Only here");
    // A sample that is declined leaves its window open too.
    click("#new");
    until("document.querySelector('#ways input[value=sample]') !== null").await;
    click("#ways input[value=sample]");
    until("document.querySelector('.samples button') !== null").await;
    click(".samples button");
    until("window.asked.length === 2").await;
    assert_eq!(ask("document.querySelector('.samples') !== null"), "true");
    assert_eq!(ask("document.querySelector('#title').value"), "Only here");
    click(".window-head button");
    // With a yes it is opened, and that the browser does not keep it is said in the same breath.
    run("window.answer = true;");
    give_file("#file", "willow.json", &file);
    until_told("Opened willow.json.").await;
    assert!(is_problem() && told().contains("its storage is full"), "{}", told());
    assert_eq!(ask("document.querySelector('#title').value"), "From a file");
}

#[wasm_bindgen_test]
async fn a_copy_of_a_link_is_kept_only_when_the_browser_took_it() {
    let fragment = link::write(&sample("By link")).expect("a sample fits a link");
    page(&format!("{FULL} history.replaceState(null, '', {:?});", format!("#{fragment}")));
    until("(document.querySelector('.origin:not(#not-kept)')?.innerText ?? '').includes('not yet saved here')")
        .await;
    click(".origin:not(#not-kept) button");
    until_told("did not keep").await;
    assert!(is_problem());
    assert!(
        ask("document.querySelector('.origin:not(#not-kept)')?.innerText")
            .contains("not yet saved here")
    );
    run("Storage.prototype.setItem = window.puts;");
    click(".origin:not(#not-kept) button");
    until_told("Kept in this browser.").await;
    assert!(!is_problem());
    assert_eq!(kept_titles(), "By link");
    assert_eq!(ask("document.querySelector('.origin:not(#not-kept)')"), "null");
}

#[wasm_bindgen_test]
async fn a_last_design_that_cannot_be_read_is_told_and_stays() {
    let whole = persist::write(&sample("Harp of the mill"));
    let spoilt = &whole[..whole.len() / 2];
    page(&format!(
        "localStorage['stringloft/design/spoilt'] = {spoilt:?};
         localStorage['stringloft/open'] = 'spoilt';"
    ));
    until_told("\"Harp of the mill\" cannot be read").await;
    assert!(is_problem() && told().contains("its text ends in the middle"), "{}", told());
    let still = "localStorage['stringloft/design/spoilt']";
    assert_eq!(ask("localStorage['stringloft/open']"), "spoilt");
    assert_eq!(ask(still), spoilt);
    // The list names it, and does not open it.
    click("#shelf");
    until("document.querySelector('ul.shelf button') !== null").await;
    assert!(ask("document.querySelector('ul.shelf').innerText").contains("Harp of the mill"));
    click("ul.shelf button");
    until("document.querySelector('.window .wrong').innerText.includes('was not opened')").await;
    click(".window-head button");
    // The sample becomes the last design only when it is changed.
    type_into("#title", "A new one");
    until("localStorage['stringloft/open'] !== 'spoilt'").await;
    assert_eq!(ask(still), spoilt);
}

#[wasm_bindgen_test]
async fn a_file_is_told_as_handed_over_only_when_the_browser_took_it() {
    page("");
    click("#save");
    until_told("Handed to this browser's downloads as").await;
    assert!(!told().contains("Saved") && !is_problem(), "{}", told());
    run("URL.createObjectURL = () => { throw new Error('no'); };");
    click("#table");
    until_told("did not take").await;
    assert!(is_problem());
}

/// The question before a list is let go stays until the list is really out of the page.
#[wasm_bindgen_test]
async fn a_stock_list_that_was_not_handed_over_is_asked_about() {
    page("");
    click("#stock");
    until("document.querySelector('.stock-head input') !== null").await;
    run(FULL);
    run("URL.createObjectURL = () => { throw new Error('no'); };");
    type_into(".stock-head input", "Spring list");
    until("document.querySelector('.stock .wrong').innerText.includes('its storage is full')")
        .await;
    click("#stock-json");
    until("document.querySelector('.stock .wrong').innerText.includes('did not take')").await;
    click("#stock-new");
    until("window.asked.length === 1").await;
    run("URL.createObjectURL = window.makes;");
    click("#stock-json");
    until("document.querySelector('.stock').innerText.includes('Handed to this browser')").await;
    click("#stock-new");
    rest_ms(100).await;
    assert_eq!(ask("window.asked.length"), "1");
}

#[wasm_bindgen_test]
async fn a_change_is_kept_when_the_browser_is_idle_or_the_page_is_left() {
    page(
        "window.waiting = []; window.requestIdleCallback = (act, options) => window.waiting.push([act, options.timeout]);",
    );
    type_into("#title", "Idle");
    rest_ms(600).await; // twice as long as a change waits
    assert_eq!(kept_titles(), "", "kept before the browser was idle");
    assert_eq!(ask("window.waiting.every(([_, within]) => within === 1000)"), "true");
    until(
        "window.waiting.splice(0).forEach(([act]) => act()) ?? Object.values(localStorage).some((text) => text.includes('Idle'))",
    )
    .await;
    assert_eq!(kept_titles(), "Idle");
    type_into("#title", "Left");
    run("window.dispatchEvent(new PageTransitionEvent('pagehide'));");
    assert_eq!(kept_titles(), "Left");
    // A browser without idle times keeps after the timer alone.
    page("window.requestIdleCallback = undefined;");
    type_into("#title", "Timer alone");
    until("Object.values(localStorage).some((text) => text.includes('Timer alone'))").await;
}
