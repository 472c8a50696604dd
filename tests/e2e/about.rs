//! The window About: the licences of everything in the page, fetched when they are asked for, and without a network too.

use std::collections::BTreeSet;
use std::process::Command;

use serde_json::Value;

use crate::browser::{Browser, Screen};
use crate::server::Site;

/// Names and versions of the packages in the list.
const LISTED: &str =
    "return [...document.querySelectorAll('.licence')].map((line) => line.innerText)";
const FETCHED: &str = "return performance.getEntriesByType('resource').some((entry) => entry.name.includes('/licences-'))";

/// Every package of others that cargo takes for the page, as `name version`.
fn packages() -> BTreeSet<String> {
    let told = Command::new(env!("CARGO"))
        .args([
            "tree",
            "--locked",
            "--edges",
            "normal,no-proc-macro",
            "--features",
            "parts",
            "--prefix",
            "none",
        ])
        .args(["--target", "wasm32-unknown-unknown", "--format", "{p}"])
        .output()
        .expect("cargo");
    assert!(told.status.success(), "{}", String::from_utf8_lossy(&told.stderr));
    let told = String::from_utf8(told.stdout).expect("a text");
    let line = |line: &str| {
        let mut words = line.split(' ');
        let name = format!("{} {}", words.next()?, words.next()?.strip_prefix('v')?);
        // What stands in this folder has its path behind its name.
        (!line.contains("(/")).then_some(name)
    };
    told.lines().filter_map(line).collect()
}

async fn open(browser: &Browser) -> BTreeSet<String> {
    browser.ask("document.querySelector('#about').click(); return 1").await;
    let _ = browser.find(".licence").await;
    let all = browser.ask(LISTED).await;
    let all = all.as_array().expect("a list").iter().filter_map(Value::as_str);
    all.map(|line| line.split_whitespace().take(2).collect::<Vec<_>>().join(" ")).collect()
}

#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn every_package_in_the_page_is_there_with_its_licence() {
    let site = Site::of_build("/");
    let url = site.url();
    let browser = Browser::open(Screen::LAPTOP).await;
    browser.open_app(&url).await;
    assert_eq!(browser.ask(FETCHED).await, false, "before they are asked for");
    let listed = open(&browser).await;
    let wanted = packages();
    assert!(wanted.len() > 100, "{}", wanted.len());
    let missing: Vec<_> = wanted.difference(&listed).collect();
    assert!(missing.is_empty(), "without a licence: {missing:?}");

    // Each has a text, and what is sought is found.
    let empty = "
        const lines = [...document.querySelectorAll('.licence')];
        for (const line of lines) line.click();
        await new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done)));
        return lines.filter((line) => !line.parentElement.querySelector('pre')?.innerText.trim()).map((line) => line.innerText);
    ";
    let empty = browser.ask(&format!("return (async () => {{ {empty} }})()")).await;
    assert_eq!(empty, serde_json::json!([]));
    browser.fill("#licences-find", "leptos_dom").await;
    browser.until("return document.querySelectorAll('.licence').length === 1", "the one").await;
    let text = browser.text(".licences pre").await;
    assert!(text.contains("Permission is hereby granted, free of charge"), "{text}");
    browser.check_console().await;
    browser.check_requests(&site.origin()).await;

    browser.until_kept_offline().await;
    site.stop();
    browser.goto("about:blank").await;
    browser.open_app(&url).await;
    assert_eq!(open(&browser).await, listed, "without a network");
}
