//! A headless Chromium with an empty profile, driven through chromedriver.

use fantoccini::elements::Element;
use fantoccini::error::CmdError;
use fantoccini::key::Key;
use fantoccini::wd::WebDriverCompatibleCommand;
use fantoccini::{Client, ClientBuilder, Locator};
use hyper_util::client::legacy::connect::HttpConnector;
use serde_json::{Value, json};
use std::io::{Read, Write};
use std::net::TcpStream;
use std::path::{Path, PathBuf};
use std::time::{Duration, Instant};

use crate::driver::Driver;
use crate::paper::Pdf;

/// How long the page may take for anything that is waited for.
const PATIENCE: Duration = Duration::from_secs(30);
/// And for all parts of the app, which another engine on a busy machine takes seconds each to compile.
const PATIENCE_WITH_PARTS: Duration = Duration::from_secs(120);

const LEFT: &str = "Response body loading was aborted"; // of a fetch whose page was left
/// Pages of the browser's own address bar, which it loads ahead at each start: a third of the work of opening the app.
const POPUPS: &str = "WebUIOmniboxPopup,WebUIOmniboxAimPopup";

/// What the page is looked at with.
#[derive(Clone, Copy, Debug)]
pub struct Screen {
    /// In CSS pixels.
    pub width: u32,
    pub height: u32,
    /// Device pixels to one CSS pixel.
    pub scale: f64,
    /// Fingers instead of a mouse.
    pub touch: bool,
    pub dark: bool,
}

impl Screen {
    pub const LAPTOP: Self =
        Self { width: 1366, height: 768, scale: 1.0, touch: false, dark: false };
    pub const DESKTOP: Self = Self { width: 1920, height: 1080, ..Self::LAPTOP };
    pub const PHONE: Self = Self { width: 390, height: 844, scale: 3.0, touch: true, dark: false };

    /// The same screen for someone who asked the system for dark colours.
    pub const fn in_the_dark(self) -> Self {
        Self { dark: true, ..self }
    }
}

/// One browser with one page. Dropping it ends the browser, after a failed assertion too.
/// What is not here is to be had from `client`, fantoccini's own handle.
pub struct Browser {
    pub client: Client,
    driver: Driver,
    session: String,
    /// Whether it is a Chromium, which has logs and `DevTools`.
    pub is_chromium: bool,
}

/// Whether the module of every part was fetched.
pub const PARTS_HAVE_COME: &str = include_str!("come.js");

/// What a page that does not come to what is waited for tells of itself.
const SITUATION: &str = include_str!("situation.js");

impl Browser {
    /// A new browser that has never been anywhere.
    pub async fn open(screen: Screen) -> Self {
        Self::open_with(screen, None).await
    }

    /// A browser that goes on where the one before left this folder.
    pub async fn open_at(screen: Screen, profile: &Path) -> Self {
        Self::open_with(screen, Some(format!("--user-data-dir={}", profile.display()))).await
    }

    /// A browser that is told more when it starts.
    pub async fn open_with(screen: Screen, more: impl IntoIterator<Item = String>) -> Self {
        let driver = Driver::start();
        let mut capabilities = json!({
            "goog:loggingPrefs": { "browser": "ALL", "performance": "ALL" },
            "goog:chromeOptions": { "args": [
                "--headless", "--no-sandbox", "--disable-gpu", "--disable-dev-shm-usage", "--disable-quic",
                "--disable-background-networking", "--disable-component-update", "--disable-sync",
                "--no-first-run", format!("--disable-features={POPUPS}"),
                format!("--window-size={},{}", screen.width, screen.height),
            ]}
        });
        if let Some(args) = capabilities["goog:chromeOptions"]["args"].as_array_mut() {
            args.extend(more.into_iter().map(Value::from));
        }
        let mut browser = Self::connect(driver, &capabilities).await;
        browser.is_chromium = true;
        browser.look_with(screen).await;
        browser
    }

    /// A browser of any engine that a driver starts. It knows neither logs nor `DevTools`.
    pub async fn connect(driver: Driver, capabilities: &Value) -> Self {
        let mut http = HttpConnector::new();
        http.set_nodelay(true);
        let client = ClientBuilder::new(http)
            .capabilities(capabilities.as_object().expect("fields").clone())
            .connect(&format!("http://127.0.0.1:{}", driver.port))
            .await
            .unwrap_or_else(|e| panic!("the driver could not start its browser: {e}"));
        let session = client.session_id().await.expect("the session").expect("a session's name");
        Self { client, driver, session, is_chromium: false }
    }

    /// Ends the browser as a power cut would: every process of it at once, without a word.
    pub fn kill(self) {
        self.driver.kill_all();
    }

    /// Changes the screen of the open page.
    pub async fn look_with(&self, screen: Screen) {
        let Screen { width, height, scale, touch, dark } = screen;
        let size = json!({ "width": width, "height": height, "deviceScaleFactor": scale, "mobile": touch });
        self.devtools("Emulation.setDeviceMetricsOverride", size).await;
        self.devtools("Emulation.setTouchEmulationEnabled", json!({ "enabled": touch })).await;
        let scheme = if dark { "dark" } else { "light" };
        let features = json!([{ "name": "prefers-color-scheme", "value": scheme }]);
        self.devtools("Emulation.setEmulatedMedia", json!({ "features": features })).await;
    }

    /// Opens the app and waits until its parts have come too, so that no test meets one on its way.
    /// Whoever comes with a link sees the harp as its client first, and goes on from there.
    pub async fn open_app(&self, url: &str) {
        let stopped = self.open_or_stop(url).await;
        assert!(stopped.is_none(), "the program stopped: {}", stopped.unwrap_or_default());
    }

    /// The same; the report of the program, if it stopped instead.
    pub async fn open_or_stop(&self, url: &str) -> Option<String> {
        self.open_first_screen(url).await;
        let on = "document.querySelector('#client-open')?.click();";
        let stopped = "const fault = document.getElementById('fault'); if (fault) return true;";
        let come = format!("{on}{stopped}{PARTS_HAVE_COME}");
        self.until_within(PATIENCE_WITH_PARTS, &come, "the parts of the app").await;
        let report = self.ask("return document.getElementById('fault')?.report ?? null").await;
        report.as_str().map(str::to_owned)
    }

    /// Opens an address and waits until the app has taken the place of the shell.
    pub async fn open_first_screen(&self, url: &str) {
        self.goto(url).await;
        self.until(
            "return document.readyState === 'complete' && !document.querySelector('#shell')",
            "the app",
        )
        .await;
    }

    /// Waits for the load event too.
    pub async fn goto(&self, url: &str) {
        self.client.goto(url).await.unwrap_or_else(|e| panic!("{url}: {e}"));
    }

    /// The first element that a CSS selector names, once it is there.
    #[must_use]
    pub async fn find(&self, css: &str) -> Element {
        self.client
            .wait()
            .at_most(PATIENCE)
            .for_element(Locator::Css(css))
            .await
            .unwrap_or_else(|e| panic!("waited for {css}: {e}"))
    }

    /// How many elements a selector names now.
    pub async fn count(&self, css: &str) -> usize {
        self.client.find_all(Locator::Css(css)).await.unwrap_or_else(|e| panic!("{css}: {e}")).len()
    }

    /// The visible text of an element.
    pub async fn text(&self, css: &str) -> String {
        self.find(css).await.text().await.unwrap_or_else(|e| panic!("{css}: {e}"))
    }

    /// Gives a field a file, as the browser's dialog would.
    pub async fn give_file(&self, css: &str, name: &str, text: &str) {
        let script = format!(
            "const data = new DataTransfer();
             data.items.add(new File([{}], {}));
             const input = document.querySelector({});
             input.files = data.files;
             input.dispatchEvent(new Event('change', {{ bubbles: true }}));
             return true;",
            serde_json::json!(text),
            serde_json::json!(name),
            serde_json::json!(css)
        );
        self.ask(&script).await;
    }

    /// Clicks on an element. One that stands in a closed menu has the menu opened first, as a person does.
    pub async fn click(&self, css: &str) {
        let _ = self.find(css).await;
        let closed = format!(
            "document.querySelectorAll('[data-asked]').forEach((menu) => delete menu.dataset.asked);
             const menu = document.querySelector({})?.closest('details.menu:not([open])');
             if (menu) menu.dataset.asked = '';
             return Boolean(menu);",
            json!(css)
        );
        if self.ask(&closed).await == true {
            self.find("[data-asked] > summary").await.click().await.expect("a menu opens");
        }
        self.find(css).await.click().await.unwrap_or_else(|e| panic!("click on {css}: {e}"));
    }

    /// Puts `text` in place of what a field holds and leaves the field, as a person does with the keys.
    pub async fn fill(&self, css: &str, text: &str) {
        let all = Key::Control + "a";
        let keys = format!("{all}{}{text}{}", char::from(Key::Null), char::from(Key::Tab));
        self.find(css)
            .await
            .send_keys(&keys)
            .await
            .unwrap_or_else(|e| panic!("typing into {css}: {e}"));
    }

    /// Presses keys where the focus is: text, or [`Key`]s such as `Key::Control + "z"`.
    pub async fn press(&self, keys: &str) {
        // Other drivers press several keys so fast that the page has no turn after the first.
        let alone = !self.is_chromium && keys.chars().all(char::is_alphanumeric);
        let (first, rest) = keys.split_at(if alone { 1 } else { keys.len() });
        for keys in [first, rest].into_iter().filter(|keys| !keys.is_empty()) {
            let focused = self.client.active_element().await.expect("the page has a focus");
            let pressed = focused.send_keys(keys).await;
            pressed.unwrap_or_else(|e| panic!("pressing {keys:?}: {e}"));
        }
    }

    /// The answer of a script that ends with a `return`; a promise is waited for.
    pub async fn ask(&self, script: &str) -> Value {
        self.client
            .execute(script, Vec::new())
            .await
            .unwrap_or_else(|e| panic!("{script:.300}: {e}"))
    }

    /// Waits until a script that ends with a `return` says true. `what` is for the message if it never does.
    pub async fn until(&self, script: &str, what: &str) {
        self.until_within(PATIENCE, script, what).await;
    }

    async fn until_within(&self, patience: Duration, script: &str, what: &str) {
        let begun = Instant::now();
        loop {
            // A page that is just being left has no answer.
            if matches!(self.client.execute(script, Vec::new()).await, Ok(Value::Bool(true))) {
                return;
            }
            if begun.elapsed() > patience {
                let body = self.ask(SITUATION).await;
                panic!(
                    "waited in vain for {what}; the page says {body:#}; console: {:#?}",
                    self.log("browser").await
                );
            }
            tokio::time::sleep(Duration::from_millis(50)).await;
        }
    }

    /// Waits until the service worker has everything and answers for this page.
    pub async fn until_kept_offline(&self) {
        self.until("return Boolean(navigator.serviceWorker.controller)", "the service worker")
            .await;
        self.ask("return navigator.serviceWorker.ready.then(() => true)").await;
    }

    /// Fails if the console got anything above a note since it was last asked, but that a page was left amid a fetch.
    pub async fn check_console(&self) {
        let log = self.log("browser").await;
        let is_left = |line: &Value| line["message"].as_str().is_some_and(|m| m.ends_with(LEFT));
        let is_note = |line: &Value| line["level"] == "INFO" || line["level"] == "DEBUG";
        let bad: Vec<_> = log.iter().filter(|line| !is_note(line) && !is_left(line)).collect();
        assert!(bad.is_empty(), "in the console: {bad:#?}");
    }

    /// Fails if the page asked any other server than `origin` since it was last asked, or nobody at all.
    pub async fn check_requests(&self, origin: &str) {
        let mut seen = 0;
        for entry in self.log("performance").await {
            let message = entry["message"].as_str().unwrap_or_default();
            let message: Value = serde_json::from_str(message).expect("the log is JSON");
            let event = &message["message"];
            if event["method"] != "Network.requestWillBeSent" {
                continue;
            }
            let url = event["params"]["request"]["url"].as_str().unwrap_or_default();
            let own = ["data:", "blob:"].iter().any(|start| url.starts_with(start))
                || url
                    .strip_prefix(origin)
                    .is_some_and(|rest| rest.is_empty() || rest.starts_with('/'));
            assert!(own, "the page asked for {url}");
            seen += 1;
        }
        assert!(seen > 0, "the page asked for nothing, so the log is not working");
    }

    /// Keeps a picture of what the screen shows as target/e2e/NAME.png.
    pub async fn screenshot(&self, name: &str) -> PathBuf {
        let picture =
            self.client.screenshot().await.unwrap_or_else(|e| panic!("screenshot {name}: {e}"));
        keep(&format!("e2e/{name}.png"), &picture)
    }

    /// Prints the page as target/e2e/NAME.pdf, on the paper that its `@page` rule asks for.
    pub async fn print(&self, name: &str) -> Pdf {
        let options = json!({ "preferCSSPageSize": true, "printBackground": true });
        self.print_with(name, options).await
    }

    /// Prints the page with the options of `DevTools`' `Page.printToPDF`; lengths in them are in inches.
    pub async fn print_with(&self, name: &str, options: Value) -> Pdf {
        let answer = self.devtools("Page.printToPDF", options).await;
        let text = answer["data"].as_str().expect("a document");
        let bytes = base64::Engine::decode(&base64::engine::general_purpose::STANDARD, text);
        Pdf::at(keep(&format!("e2e/{name}.pdf"), &bytes.expect("base64")))
    }

    /// Lets the page read and write the clipboard, as a person would when asked.
    pub async fn allow_clipboard(&self, origin: &str) {
        let permissions = json!(["clipboardReadWrite", "clipboardSanitizedWrite"]);
        self.devtools(
            "Browser.grantPermissions",
            json!({ "origin": origin, "permissions": permissions }),
        )
        .await;
        self.devtools("Emulation.setFocusEmulationEnabled", json!({ "enabled": true })).await;
    }

    /// What the clipboard holds, after [`allow_clipboard`](Self::allow_clipboard).
    pub async fn clipboard(&self) -> String {
        self.ask("return navigator.clipboard.readText()")
            .await
            .as_str()
            .unwrap_or_default()
            .to_owned()
    }

    /// Lets downloads land in an empty folder, target/e2e/NAME.
    pub async fn allow_downloads(&self, name: &str) -> PathBuf {
        let folder = target().join("e2e").join(name);
        let _ = std::fs::remove_dir_all(&folder);
        std::fs::create_dir_all(&folder).unwrap_or_else(|e| panic!("{}: {e}", folder.display()));
        self.devtools(
            "Browser.setDownloadBehavior",
            json!({ "behavior": "allow", "downloadPath": folder }),
        )
        .await;
        folder
    }

    /// Waits for a downloaded file and gives its bytes.
    pub async fn downloaded(&self, file: &Path) -> Vec<u8> {
        let begun = Instant::now();
        loop {
            // Chromium may keep the name free with an empty file, and puts the whole one in its place.
            match std::fs::read(file) {
                Ok(bytes) if !bytes.is_empty() => return bytes,
                other if begun.elapsed() > PATIENCE => {
                    panic!("waited for {}: {other:?}", file.display())
                }
                _ => tokio::time::sleep(Duration::from_millis(50)).await,
            }
        }
    }

    /// The lines of a log, "browser" or "performance", since it was last asked.
    pub async fn log(&self, kind: &'static str) -> Vec<Value> {
        if !self.is_chromium {
            return Vec::new();
        }
        let log = self
            .client
            .issue_cmd(Extension { path: "se/log", body: json!({ "type": kind }) })
            .await;
        log.unwrap_or_else(|e| panic!("the {kind} log: {e}"))
            .as_array()
            .cloned()
            .unwrap_or_default()
    }

    /// A command of Chromium's `DevTools` protocol.
    pub async fn devtools(&self, command: &str, params: Value) -> Value {
        self.try_devtools(command, params).await.unwrap_or_else(|e| panic!("{command}: {e}"))
    }

    async fn try_devtools(&self, command: &str, params: Value) -> Result<Value, CmdError> {
        let body = json!({ "cmd": command, "params": params });
        self.client.issue_cmd(Extension { path: "goog/cdp/execute", body }).await
    }
}

impl Drop for Browser {
    /// Ends the session without the async client, whose runtime may be gone: else Chromium would live on.
    fn drop(&mut self) {
        let Ok(mut stream) = TcpStream::connect(("127.0.0.1", self.driver.port)) else { return };
        let _ = stream.set_read_timeout(Some(Duration::from_secs(10)));
        let _ = write!(
            stream,
            "DELETE /session/{} HTTP/1.1\r\nHost: 127.0.0.1:{}\r\nConnection: close\r\n\r\n",
            self.session, self.driver.port
        );
        // It answers once the browser has ended, and keeps the connection.
        let _ = stream.read(&mut [0; 512]);
    }
}

/// A command that chromedriver knows beside the standard ones.
#[derive(Debug)]
struct Extension {
    path: &'static str,
    body: Value,
}

impl WebDriverCompatibleCommand for Extension {
    fn endpoint(
        &self,
        base: &url::Url,
        session: Option<&str>,
    ) -> Result<url::Url, url::ParseError> {
        base.join(&format!("session/{}/{}", session.unwrap_or_default(), self.path))
    }

    fn method_and_body(&self, _: &url::Url) -> (http::Method, Option<String>) {
        (http::Method::POST, Some(self.body.to_string()))
    }
}

/// Where pictures and papers are put.
pub fn target() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("target")
}

/// Writes a file below target/ and gives its path.
pub fn keep(name: &str, bytes: &[u8]) -> PathBuf {
    let path = target().join(name);
    let written = std::fs::create_dir_all(path.parent().expect("below target/"))
        .and_then(|()| std::fs::write(&path, bytes));
    written.unwrap_or_else(|e| panic!("{}: {e}", path.display()));
    path
}
