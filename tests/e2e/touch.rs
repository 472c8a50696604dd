//! Fingers: what they tap, drag and pinch.

use std::time::Duration;

use serde_json::{Value, json};

use crate::browser::{Browser, Screen};

/// A tablet, upright.
pub const TABLET: Screen = Screen { width: 820, height: 1180, scale: 2.0, ..Screen::PHONE };

/// A place on the page in pixels.
pub type Place = (f64, f64);

/// Fingers that are put down, moved or lifted: `touchStart`, `touchMove`, `touchEnd`, with where those are that stay.
pub async fn touch(browser: &Browser, kind: &str, fingers: &[Place]) {
    let points: Vec<Value> = fingers
        .iter()
        .enumerate()
        .map(|(id, (x, y))| json!({ "x": x, "y": y, "id": id, "radiusX": 4, "radiusY": 4 }))
        .collect();
    browser
        .devtools("Input.dispatchTouchEvent", json!({ "type": kind, "touchPoints": points }))
        .await;
}

/// A tap of one finger.
pub async fn tap(browser: &Browser, at: Place) {
    touch(browser, "touchStart", &[at]).await;
    touch(browser, "touchEnd", &[]).await;
}

/// Fingers that go from some places to others in a few steps, and leave.
pub async fn drag(browser: &Browser, from: &[Place], to: &[Place]) {
    touch(browser, "touchStart", from).await;
    for step in 1..=6 {
        let share = f64::from(step) / 6.0;
        let between = |(from, to): (&Place, &Place)| {
            (from.0 + share * (to.0 - from.0), from.1 + share * (to.1 - from.1))
        };
        let fingers: Vec<Place> = from.iter().zip(to).map(between).collect();
        touch(browser, "touchMove", &fingers).await;
        tokio::time::sleep(Duration::from_millis(20)).await;
    }
    touch(browser, "touchEnd", &[]).await;
}

/// The middle of what a selector names.
pub async fn middle(browser: &Browser, css: &str) -> Place {
    let _ = browser.find(css).await;
    let script = format!(
        "const box = document.querySelector({}).getBoundingClientRect();
         return [box.x + box.width / 2, box.y + box.height / 2];",
        json!(css)
    );
    serde_json::from_value(browser.ask(&script).await).expect("a place")
}
