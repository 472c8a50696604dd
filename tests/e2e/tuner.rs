//! The tuner hears strings: from a file in place of the microphone, and from a recording that is chosen.
#![allow(
    clippy::cast_possible_truncation,
    reason = "places and samples of sounds are cut off on purpose"
)]

use std::f64::consts::TAU;
use std::path::PathBuf;

use stringloft::design::document::Design;
use stringloft::design::giving::gives_of;
use stringloft::design::listening::{Aim, sought};
use stringloft::design::persist;
use stringloft::design::presets::SAMPLES;
use stringloft::design::resolve::resolve;
use stringloft::design::settling::{easiest, load_of, plan_of};
use stringloft::engine::analysis::analyse;
use stringloft::engine::bearing::Order;
use stringloft::engine::geometry::{lay_out, loads};

use crate::browser::{Browser, Screen};
use crate::server::Site;

const RATE: u32 = 44_100;
const SHOWN: &str = "return document.querySelector('#tuner-shown').textContent";
const SIDEWAYS: &str = "const [window] = document.querySelectorAll('dialog[open]'); return window.scrollWidth - window.clientWidth";
const SAID: &str = "return document.querySelector('#tuner-said').textContent";
const STATE: &str = "return document.querySelector('#tuner-state').textContent";
/// Whether a microphone is in use: the tracks that the page asked for, kept by the test.
const KEEP_TRACKS: &str = "
    const ask = navigator.mediaDevices.getUserMedia.bind(navigator.mediaDevices);
    globalThis.asked = [];
    navigator.mediaDevices.getUserMedia = async (what) => {
      const stream = await ask(what);
      globalThis.asked.push([what, ...stream.getTracks()]);
      return stream;
    };";

/// The sample with which the page begins.
fn begun() -> Design {
    let sample = SAMPLES.iter().find(|sample| sample.key == "floor-36").expect("a sample");
    persist::read(sample.json).expect("a design")
}

/// A round of its plan, as the page makes it: the number of each string, and how far from pitch it is tuned, in cents.
fn round(number: usize) -> Vec<(usize, f64)> {
    let resolved = resolve(&begun());
    let analysis = analyse(&resolved.harp);
    let band = lay_out(&resolved.harp, &analysis, &resolved.geometry);
    let loads = loads(&band, &resolved.harp, &analysis, &resolved.geometry);
    let gives = gives_of(&band, &loads, &analysis, &resolved);
    let of = |order| load_of((&band, &loads), &resolved, &analysis, order);
    let order = easiest(&Order::ALL.map(of));
    let plan = plan_of(gives.as_ref(), &resolved, &analysis, order, 0);
    let pass = &plan.passes[number - 1];
    pass.steps.iter().map(|step| (step.place + 1, step.sharp_cents - pass.below_cents)).collect()
}

/// Strings of that sample, plucked one after another, as a WAV file: which, and how far off.
fn recording(name: &str, plucked: &[(usize, f64)]) -> PathBuf {
    let design = begun();
    let resolved = resolve(&design);
    let strings = sought(&design, &resolved, &analyse(&resolved.harp), &Aim::default());
    let mut samples: Vec<f64> = vec![0.0; RATE as usize / 2];
    for (number, cents) in plucked {
        let string = strings.iter().find(|string| string.number == *number).expect("a string");
        let (hz, b) = (
            string.target.to_hz() * (cents / 1200.0).exp2(),
            string.inharmonicity_b.expect("a make-up"),
        );
        samples.extend((0..2 * RATE).map(|i| {
            let t = f64::from(i) / f64::from(RATE);
            let partial = |n: u32| {
                let order = f64::from(n);
                let own = order * hz * ((1.0 + b * order * order) / (1.0 + b)).sqrt();
                0.3 * (0.8 * order).sin() / order
                    * (-(1.5 + 0.02 * order * order) * t).exp()
                    * (TAU * own * t).sin()
            };
            (1.0 - (-t / 0.002).exp()) * (1..=12).map(partial).sum::<f64>()
        }));
    }
    let data: Vec<u8> =
        samples.iter().flat_map(|x| ((x * 32_767.0) as i16).to_le_bytes()).collect();
    let mut file = b"RIFF".to_vec();
    let size = |bytes: usize| u32::try_from(bytes).expect("short").to_le_bytes();
    file.extend(size(36 + data.len()));
    file.extend(b"WAVEfmt \x10\0\0\0\x01\0\x01\0");
    file.extend([RATE.to_le_bytes(), (2 * RATE).to_le_bytes()].concat());
    file.extend(b"\x02\0\x10\0data");
    file.extend(size(data.len()));
    file.extend(data);
    let path = std::env::temp_dir().join(format!("stringloft-{}-{name}.wav", std::process::id()));
    std::fs::write(&path, file).expect("a temporary file");
    path
}

/// Seconds that the page was at work: of its own thread, whatever else the machine does.
async fn busy_s(browser: &Browser) -> f64 {
    browser.devtools("Performance.enable", serde_json::json!({})).await;
    let metrics = browser.devtools("Performance.getMetrics", serde_json::json!({})).await;
    let all = metrics["metrics"].as_array().expect("metrics");
    let thread = all.iter().find(|metric| metric["name"] == "ThreadTime").expect("a time");
    thread["value"].as_f64().expect("seconds")
}

async fn open(browser: &Browser, site: &Site) {
    browser.open_app(&site.url()).await;
    browser.click("#tuner").await;
    let _ = browser.find("dialog #tuner-shown .needle").await;
}

#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn the_microphone_is_asked_for_on_use_heard_and_let_go() {
    // The browser plays the file over and over in place of a microphone.
    let file = recording("microphone", &[(20, -14.0)]);
    let args = [
        "--use-fake-ui-for-media-stream".to_owned(),
        "--use-fake-device-for-media-stream".to_owned(),
        format!("--use-file-for-fake-audio-capture={}", file.display()),
    ];
    let site = Site::of_build("/");
    let browser = Browser::open_with(Screen::PHONE.in_the_dark(), args).await;
    open(&browser, &site).await;
    browser.ask(KEEP_TRACKS).await;
    assert_eq!(browser.ask(STATE).await, "Not listening");
    assert_eq!(browser.ask("return asked.length").await, 0);
    browser.click("#tuner-listen").await;
    browser.until(&format!("{STATE} === 'Listening'"), "the microphone").await;
    browser.until(&format!("{SHOWN}.includes('Too low')"), "a string that is heard").await;
    browser.until(&format!("{SHOWN}.match(/−1[34]\\.\\d/) !== null"), "its cents").await;
    let shown = browser.ask(SHOWN).await.as_str().unwrap().to_owned();
    assert!(shown.starts_with("20, ") && shown.contains("turn the pin"), "{shown}");
    let asked = browser.ask("const { audio } = asked[0][0]; return [audio.echoCancellation, audio.noiseSuppression, audio.autoGainControl, asked[0][1].readyState]").await;
    assert_eq!(asked, serde_json::json!([false, false, false, "live"]));
    let busy = busy_s(&browser).await;
    tokio::time::sleep(std::time::Duration::from_secs(3)).await;
    let share = (busy_s(&browser).await - busy) / 3.0;
    eprintln!("tuning takes {:.0} % of the page's core", 100.0 * share);
    assert!(share < 0.6, "the page is hardly free: {share}");
    browser.screenshot("tuner-390-dark").await;
    assert_eq!(browser.ask(SIDEWAYS).await, 0, "everything has room");
    browser.check_barriers().await;
    browser.click("#tuner-listen").await;
    browser.until(&format!("{STATE} === 'Not listening'"), "it stopped").await;
    assert_eq!(browser.ask("return asked[0][1].readyState").await, "ended");
    // Again, and the window closed while it listens.
    browser.click("#tuner-listen").await;
    browser.until(&format!("{STATE} === 'Listening'"), "the microphone").await;
    browser.click(".window-head button").await;
    browser
        .until("return asked.length === 2 && asked[1][1].readyState === 'ended'", "let go")
        .await;
    browser.check_console().await;
    let _ = std::fs::remove_file(file);
}

#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn a_recording_is_heard_in_place_of_the_microphone() {
    let file = recording("chosen", &[(10, 6.0), (18, 0.5), (30, -22.0)]);
    let site = Site::of_build("/");
    let browser = Browser::open(Screen::LAPTOP).await;
    open(&browser, &site).await;
    let input = browser.client.find(fantoccini::Locator::Css("#tuner-input")).await.unwrap();
    input.send_keys(&file.display().to_string()).await.unwrap();
    browser.until(&format!("{SAID}.startsWith('The recording is over: 3 notes')"), "its end").await;
    browser.click("#tuner-strings summary").await;
    let list = browser.text("#tuner-strings .tuner-strings").await;
    for part in ["+6.0 cents", "in tune (+0.5 cents)", "−22.0 cents", "not heard yet"] {
        assert!(list.contains(part), "{part}: {list}");
    }
    let shown = browser.ask(SHOWN).await.as_str().unwrap().to_owned();
    assert!(
        shown.starts_with("30, ") && shown.contains("−22"),
        "what was heard last stays: {shown}"
    );
    browser.screenshot("tuner-1366").await;
    browser.check_barriers().await;
    // The string is gone to, and its tone sounds until it is pressed again.
    browser.press(&fantoccini::key::Key::Right.to_string()).await;
    browser.click("#tuner-tone").await;
    browser
        .until("return document.querySelector('#tuner-tone').ariaPressed === 'true'", "the tone")
        .await;
    browser.click("#tuner-tone").await;
    // What is no recording says so.
    browser.give_file("#tuner-input", "no.wav", "RIFF or not").await;
    browser.until(&format!("{SAID}.startsWith('no.wav cannot be heard')"), "the complaint").await;
    browser.check_console().await;
    let _ = std::fs::remove_file(file);
}

/// The cells of the readings in a log as it is kept, without the line that says how far the harp has come.
fn noted_lines(kept: &str) -> impl Iterator<Item = Vec<&str>> {
    let lines = kept.lines().filter(|line| !line.starts_with("come"));
    lines.map(|line| line.split('\t').collect())
}

#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn what_is_heard_goes_into_the_log_where_that_is_wished() {
    // The tenth is plucked twice, flat and then in tune: its last reading stays.
    let file = recording("noted", &[(10, -9.0), (10, 0.4), (30, -22.0)]);
    let site = Site::of_build("/");
    let browser = Browser::open(Screen::LAPTOP).await;
    open(&browser, &site).await;
    let input = browser.client.find(fantoccini::Locator::Css("#tuner-input")).await.unwrap();
    let over = format!("{SAID}.startsWith('The recording is over: 3 notes')");
    // Nothing is noted unasked.
    input.send_keys(&file.display().to_string()).await.unwrap();
    browser.until(&over, "its end").await;
    assert_eq!(browser.text("#tuner-noted").await, "");
    browser.click("#tuner-note").await;
    let warm = "const field = document.querySelector('.tuner-noting input[type=text]');
         field.value = '19,5'; field.dispatchEvent(new Event('input', { bubbles: true }))";
    browser.ask(warm).await;
    input.send_keys(&file.display().to_string()).await.unwrap();
    let noted = "return document.querySelector('#tuner-noted').textContent";
    browser.until(&format!("{noted}.startsWith('Noted: 30, ')"), "the last line").await;
    // Its partials stand beside the chart.
    let partials = browser.text("#tuner-partials").await;
    assert!(partials.starts_with("30, ") && partials.contains("They agree."), "{partials}");
    browser.screenshot("tuner-noted-1366").await;
    browser.check_barriers().await;
    // As it is kept: which string, that it was tuned, how far off, how warm.
    let lines = "return [...keeping.keys('')].filter((key) => key.endsWith('/log'))
        .map((key) => keeping.get(key)).join('')";
    let kept = browser.ask(lines).await.as_str().expect("a text").to_owned();
    let cells: Vec<Vec<&str>> = noted_lines(&kept).collect();
    assert_eq!(cells.len(), 2, "{kept}");
    for (line, cents) in cells.iter().zip([0.4, -22.0]) {
        assert_eq!((line[3], line[5]), ("t", "19.5"), "{kept}");
        let off: f64 = line[4].parse().expect("cents");
        assert!((off - cents).abs() < 0.3, "{kept}");
    }
    // The last one is taken back, here; the other stands in the log of settling.
    browser.click("#tuner-unnote").await;
    browser.until(&format!("{noted} === 'The last line is taken back.'"), "its word").await;
    browser.click(".window-head button").await;
    browser.click("#settling").await;
    let rows = "return document.querySelectorAll('#settling-lines tr').length === 1";
    browser.until(rows, "the line").await;
    browser.check_console().await;
    let _ = std::fs::remove_file(file);
}

#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn the_plan_leads_from_string_to_string() {
    for number in [1, 3] {
        let steps = round(number);
        // The second is plucked once too low; then it is where the round wants it.
        let (second, off) = steps[1];
        let plucked = [steps[0], (second, off - 30.0), (second, off)];
        let file = recording(&format!("led-{number}"), &plucked);
        let site = Site::of_build("/");
        let browser = Browser::open(Screen::LAPTOP).await;
        open(&browser, &site).await;
        let choose = |id: &str, value: usize| {
            format!(
                "const list = document.querySelector('#{id}'); list.value = '{value}';
                 list.dispatchEvent(new Event('change', {{ bubbles: true }}))"
            )
        };
        browser.ask(&choose("tuner-order", 2)).await;
        let _ = browser.find("#tuner-round").await;
        browser.ask(&choose("tuner-round", number - 1)).await;
        let name = "return document.querySelector('.heard-name').textContent";
        let is = |(number, _): (usize, f64)| format!("{name}.startsWith('Pluck string {number},')");
        browser.until(&is(steps[0]), "the first string of the round").await;
        let asked = if number == 1 { "below pitch" } else { "Target" };
        assert!(browser.ask(SHOWN).await.as_str().unwrap().contains(asked));
        browser.click("#tuner-note").await;
        let input = browser.client.find(fantoccini::Locator::Css("#tuner-input")).await.unwrap();
        input.send_keys(&file.display().to_string()).await.unwrap();
        let over = format!("{SAID}.startsWith('The recording is over: 3 notes')");
        browser.until(&over, "its end").await;
        let shown = browser.ask(name).await.as_str().unwrap().to_owned();
        browser.until(&is(steps[2]), &format!("the third string instead of {shown}")).await;
        // The log has how far each is off its pitch, and of the second its last reading.
        let lines = "return keeping.keys('').filter((key) => key.endsWith('/log'))
            .map((key) => keeping.get(key)).join('')";
        let kept = browser.ask(lines).await.as_str().expect("a text").to_owned();
        let cents: Vec<f64> =
            noted_lines(&kept).map(|cells| cells[4].parse().expect("a number")).collect();
        assert_eq!(cents.len(), 2, "{kept}");
        assert!((cents[0] - steps[0].1).abs() < 0.5 && (cents[1] - off).abs() < 0.5, "{kept}");
        if number == 1 {
            browser.screenshot("tuner-led-1366").await;
            browser.check_barriers().await;
        }
        // Back to the second, and on beyond the last string of the round.
        browser.press(&fantoccini::key::Key::Left.to_string()).await;
        browser.until(&is(steps[1]), "back").await;
        browser.check_console().await;
        let _ = std::fs::remove_file(file);
    }
}

#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn a_microphone_that_is_refused_is_told() {
    let site = Site::of_build("/");
    let browser =
        Browser::open_with(Screen::LAPTOP, ["--deny-permission-prompts".to_owned()]).await;
    open(&browser, &site).await;
    browser.click("#tuner-listen").await;
    browser
        .until(
            &format!("{SAID}.match(/^(The microphone was not allowed|No microphone)/) !== null"),
            "why not",
        )
        .await;
    assert_eq!(browser.ask(STATE).await, "Not listening");
}
