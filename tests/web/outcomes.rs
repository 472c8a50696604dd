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
    wait_for(&format!("new Promise((done) => setTimeout(done, {ms}))")).await;
}

/// What the browser keeps is opened anew, as `boot.js` has it opened before the page.
pub async fn open_keeping() {
    run(&format!(
        "document.querySelector('[data-more]')?.remove();
         const more = new Blob([{:?}], {{ type: 'text/javascript' }});
         document.head.append(Object.assign(document.createElement('meta'), {{ name: 'more' }}));
         document.head.lastChild.dataset.more = URL.createObjectURL(more);",
        include_str!("../../src/shell/keep-more.js")
    ));
    js_sys::eval(include_str!("../../src/shell/keep.js")).expect("it runs");
    wait_for("keeping.ready").await;
}

/// Waits for a promise.
pub async fn wait_for(promise: &str) {
    let made: js_sys::Promise =
        js_sys::eval(promise).expect("it runs").dyn_into().expect("a promise");
    JsFuture::from(made).await.unwrap_or_else(|error| panic!("{promise}: {error:?}"));
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
async fn page(before: &str) {
    run("
        // What is not the page's own shows how the tests go.
        document.querySelectorAll('body > :not(pre, script)').forEach((part) => part.remove());
        window.puts ??= IDBObjectStore.prototype.put;
        window.makes ??= URL.createObjectURL;
        window.paints ??= window.requestAnimationFrame;
        window.requestAnimationFrame = window.paints;
        IDBObjectStore.prototype.put = window.puts;
        URL.createObjectURL = window.makes;
        window.asked = [];
        window.confirm = (question) => { window.asked.push(question); return window.answer ?? false; };
        window.answer = false;
        window.dispatchEvent(new PageTransitionEvent('pagehide'));
        globalThis.keeping?.put('stringloft/tried', '');
    ");
    // What a full storage made wait is written too, and not amid the next test.
    until("!globalThis.keeping?.failed()").await;
    wait_for("globalThis.keeping?.stop() ?? Promise.resolve()").await;
    wait_for(CLEARED).await;
    run("
        localStorage.clear();
        localStorage.setItem('stringloft/columns', 'all');
        sessionStorage.clear();
        history.replaceState(null, '', location.pathname + location.search);
    ");
    run(before);
    open_keeping().await;
    stringloft::app::start();
    // What the menus hold comes with a part.
    until("document.querySelector('#designs') !== null").await;
    run("document.querySelector('#designs').parentElement.open = true;");
    until("document.querySelector('#save') !== null").await;
    run("document.querySelector('#designs').parentElement.open = false;");
}

/// Nothing is kept any more. Pages of earlier tests let it go when it is to be deleted.
const CLEARED: &str = "new Promise((done, wrong) => {
    const gone = indexedDB.deleteDatabase('stringloft');
    gone.onsuccess = done;
    gone.onerror = wrong;
})";

/// From now on the browser's storage is full.
const FULL: &str =
    "IDBObjectStore.prototype.put = () => { throw new DOMException('no', 'QuotaExceededError'); };";

/// Lets the browser's storage take something again.
const ROOM: &str = "IDBObjectStore.prototype.put = window.puts;";

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
    ask("keeping.keys('stringloft/design/').filter((key) => !keeping.waits(key))
        .map((key) => JSON.parse(keeping.get(key)).title).join('|')")
}

fn sample(title: &str) -> Design {
    Design { title: title.to_owned(), ..SAMPLES[0].design() }
}

#[wasm_bindgen_test]
async fn an_edit_that_is_refused_is_not_told_as_done() {
    page("").await;
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
    until_told("That was not accepted").await;
    assert!(is_problem() && !told().contains("Kept"), "{}", told());
    // What was typed is there to be used when there is room.
    assert_eq!(ask("document.querySelector('.keep-line input').value"), "one more");
    let kept = |words: &str| {
        format!(
            "keeping.keys('stringloft/design/').some((key) => keeping.get(key).includes({words:?}))"
        )
    };
    until(&kept("try 12")).await;
    assert_eq!(ask(&kept("one more")), "false");
}

#[wasm_bindgen_test]
async fn a_declined_opening_is_not_told_as_opened() {
    page(FULL).await;
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
    page(&format!("{FULL} history.replaceState(null, '', {:?});", format!("#{fragment}"))).await;
    until("(document.querySelector('.origin:not(#not-kept)')?.innerText ?? '').includes('not yet saved here')")
        .await;
    click(".origin:not(#not-kept) button");
    until_told("did not keep").await;
    assert!(is_problem());
    assert!(
        ask("document.querySelector('.origin:not(#not-kept)')?.innerText")
            .contains("not yet saved here")
    );
    run(ROOM);
    until("!keeping.failed()").await;
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
    ))
    .await;
    until_told("\"Harp of the mill\" cannot be read").await;
    assert!(is_problem() && told().contains("its text ends in the middle"), "{}", told());
    let still = "keeping.get('stringloft/design/spoilt')";
    assert_eq!(ask("keeping.get('stringloft/open')"), "spoilt");
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
    until("keeping.get('stringloft/open') !== 'spoilt'").await;
    assert_eq!(ask(still), spoilt);
}

#[wasm_bindgen_test]
async fn a_file_is_told_as_handed_over_only_when_the_browser_took_it() {
    page("").await;
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
    page("").await;
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
async fn a_change_is_kept_right_after_it_is_seen_or_when_the_page_is_left() {
    page("").await;
    type_into("#title", "Seen");
    assert_eq!(kept_titles(), "", "kept before anyone saw it");
    until("document.querySelector('#kept').innerText.startsWith('Kept ')").await;
    assert_eq!(kept_titles(), "Seen");
    // A page that is left is not drawn again, and what it could not write is found by the next one.
    run("window.requestAnimationFrame = () => 0;");
    type_into("#title", "Left");
    until("document.querySelector('#kept').innerText === 'keeping…'").await;
    run("window.dispatchEvent(new PageTransitionEvent('pagehide'));");
    assert_eq!(
        ask(
            "Object.entries(localStorage).some(([key, text]) => key.startsWith('stringloft/last/') && text.includes('Left'))"
        ),
        "true"
    );
    until("document.querySelector('#kept').innerText.startsWith('Kept ')").await;
    assert_eq!(kept_titles(), "Left");
    assert_eq!(
        ask("Object.keys(localStorage).some((key) => key.startsWith('stringloft/last/'))"),
        "false",
        "left behind for good"
    );
}
