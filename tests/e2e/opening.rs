//! The page opens: at any address, without a network, after a new build, and with a clear word if it cannot.

use crate::browser::{Browser, Screen, target};
use crate::server::{Site, build};
use std::fs;
use std::path::PathBuf;

#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn opens_at_root_and_under_a_sub_path() {
    for prefix in ["/", "/some/sub/path/"] {
        let site = Site::of_build(prefix);
        let browser = Browser::open(Screen::LAPTOP).await;
        browser.open_app(&site.url()).await;
        assert!(browser.text("body").await.contains("Stringloft"), "no word mark at {prefix}");
        browser.until_kept_offline().await;
        browser.check_console().await;
        browser.check_requests(&site.origin()).await;
        browser
            .screenshot(&format!("opens{}", prefix.trim_end_matches('/').replace('/', "-")))
            .await;
        let strays: Vec<_> =
            site.asked().into_iter().filter(|path| !path.starts_with(prefix)).collect();
        assert!(strays.is_empty(), "asked outside {prefix}: {strays:?}");
    }
}

#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn works_offline_after_the_first_visit() {
    for prefix in ["/", "/some/sub/path/"] {
        let site = Site::of_build(prefix);
        let url = site.url();
        let browser = Browser::open(Screen::LAPTOP).await;
        browser.open_app(&url).await;
        browser.until_kept_offline().await;
        site.stop();
        browser.goto("about:blank").await;
        browser.open_app(&url).await;
        assert!(browser.text("body").await.contains("Stringloft"), "no word mark at {prefix}");
    }
}

/// The browser refuses markup that runs or loads anything, and scripts from any address but the page's own.
#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn no_markup_that_runs_or_loads_anything_comes_in() {
    let site = Site::of_build("/");
    let browser = Browser::open(Screen::LAPTOP).await;
    browser.open_app(&site.url()).await;
    let refused = "
        const tries = {
          script: () => (document.createElement('p').innerHTML = '<b>x</b><script>1</script>'),
          frame: () => document.body.insertAdjacentHTML('beforeend', '<IFRAME src=x></IFRAME>'),
          worker: () => new Worker('boot.js'),
          source: () => (document.createElement('script').src = 'boot.js'),
          policy: () => trustedTypes.createPolicy('another', {}),
        };
        return Object.keys(tries).filter((name) => {
          try { tries[name](); } catch { return true; }
        });
    ";
    let all = serde_json::json!(["script", "frame", "worker", "source", "policy"]);
    assert_eq!(browser.ask(refused).await, all);
    let plain =
        "const p = document.createElement('p'); p.innerHTML = '<b>x</b>'; return p.textContent";
    assert_eq!(browser.ask(plain).await, serde_json::json!("x"));
    browser.log("browser").await;
    // The program's own markup and its worker go through.
    for open in ["#drawing", "#choose-view", "#versions-view", "#chart-view"] {
        browser.click(open).await;
    }
    browser.click("#shelf").await;
    browser.until("return !!document.querySelector('dialog[open]')", "the window").await;
    browser.until_kept_offline().await;
    browser.check_console().await;
}

#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn says_so_when_a_part_is_missing() {
    let folder = copy_of_build("broken-build");
    for file in fs::read_dir(&folder).unwrap().map(|entry| entry.unwrap().path()) {
        if file.extension().is_some_and(|end| end == "wasm") {
            fs::remove_file(file).unwrap();
        }
    }
    let site = Site::of(folder, "/");
    let browser = Browser::open(Screen::LAPTOP).await;
    browser.goto(&site.url()).await;
    browser
        .until(
            "return document.querySelector('#shell-state').role === 'alert'",
            "a word of warning",
        )
        .await;
    let words = browser.text("#shell").await;
    assert!(words.contains("did not arrive") && words.contains("reload"), "it says: {words}");
    browser.check_barriers().await;
    browser.screenshot("part-missing").await;
}

/// A copy of the build that a test may spoil, at target/e2e/NAME.
pub fn copy_of_build(name: &str) -> PathBuf {
    let folder = target().join("e2e").join(name);
    let _ = fs::remove_dir_all(&folder);
    fs::create_dir_all(&folder).expect("below target/");
    for entry in fs::read_dir(build()).expect("it was just seen") {
        let file = entry.expect("a folder can be listed").path();
        if let Some(name) = file.file_name().filter(|_| file.is_file()) {
            fs::copy(&file, folder.join(name)).expect("a file can be copied");
        }
    }
    let worker = folder.join("sw.js");
    let text = fs::read_to_string(&worker).expect("the build holds it");
    fs::write(&worker, spelled_out(&text)).expect("a copy may be written");
    folder
}

/// The worker with the names of its files in full, so that they can be found in it. A sum has 44 letters, and a star in
/// the name after it stands for how the sum begins.
fn spelled_out(worker: &str) -> String {
    use base64::Engine;
    let mut out = String::new();
    for one in worker.split_inclusive(['"', ' ']) {
        let sum = one.split_at_checked(44).filter(|(_, name)| name.contains('*'));
        let bytes = sum.and_then(|(sum, _)| base64::prelude::BASE64_STANDARD.decode(sum).ok());
        match bytes {
            Some(bytes) => {
                let begin: String = bytes[..8].iter().map(|byte| format!("{byte:02x}")).collect();
                out.push_str(&one.replace('*', &begin));
            }
            None => out.push_str(one),
        }
    }
    out
}

pub fn change(file: &PathBuf, from: &str, to: &str) {
    let text = fs::read_to_string(file).expect("the build holds it");
    assert!(text.contains(from), "no {from} in {}", file.display());
    fs::write(file, text.replacen(from, to, 1)).expect("a copy may be written");
}
