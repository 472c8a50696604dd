//! Pictures of the page on demand: `SHOTS=1 scripts/test e2e` puts them into target/shots/.

use crate::browser::{Browser, Screen, keep};
use crate::server::Site;

#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn shots() {
    if std::env::var_os("SHOTS").is_none() {
        return;
    }
    let site = Site::of_build("/");
    for screen in [Screen::LAPTOP, Screen::DESKTOP, Screen::PHONE] {
        for screen in [screen, screen.in_the_dark()] {
            let browser = Browser::open(screen).await;
            browser.open_app(&site.url()).await;
            browser
                .until(
                    "return !document.querySelector('#sum-frame').textContent.includes('not worked')",
                    "the frame's line",
                )
                .await;
            let picture = browser.client.screenshot().await.unwrap();
            let light = if screen.dark { "dark" } else { "light" };
            keep(&format!("shots/{}x{}-{light}.png", screen.width, screen.height), &picture);
        }
    }
}
