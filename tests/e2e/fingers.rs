//! The page under fingers: large enough to touch, nothing wider than the screen, cells typed in a sheet, and the drawing
//! pinched and dragged.

use serde_json::{Value, json};

use crate::browser::{Browser, Screen, keep};
use crate::server::Site;
use crate::touch::{Place, TABLET, drag, middle, tap, touch};

const VIEWS: [&str; 5] =
    ["#chart-view", "#drawing", "#choose-view", "#order-view", "#versions-view"];
/// What opens a window.
const OPENERS: [&str; 15] = [
    "#new",
    "#restring",
    "#shelf",
    "#instrument",
    "#materials",
    "#stock",
    "#as-client",
    "#help-open",
    "#numbers",
    "#keys",
    "#string-harp",
    "#make-up",
    "#exchange",
    "#card",
    "#report",
];
const MENUS: [&str; 5] = ["#designs", "#harp", "#share", "#help", "#curves-menu"];

/// What can be touched on the page as it is and is smaller than a finger. A box to tick counts with its label.
const SMALL: &str = "
    const kinds = 'button, select, summary, input, textarea, a[href], [role=gridcell], [role=option]';
    const seen = (one) => one.checkVisibility({ visibilityProperty: true }) && !one.closest('.out-of-sight, [inert], .skip');
    const top = document.querySelector('dialog[open]') ?? document;
    const small = [...top.querySelectorAll(kinds)].filter(seen).map((one) => {
        const label = one.matches('[type=checkbox], [type=radio]') && one.closest('label');
        const { width, height } = (label || one).getBoundingClientRect();
        return width + 0.5 < 44 || height + 0.5 < 44
            ? `${one.tagName} #${one.id} .${one.className} ${(one.innerText ?? '').slice(0, 30)} ${width.toFixed(0)}x${height.toFixed(0)}` : '';
    });
    return [...new Set(small.filter((one) => one))].slice(0, 12);
";
/// What reaches beyond the right edge and makes the page or a window scroll sideways.
const SIDEWAYS: &str = "
    const over = [document.documentElement, ...document.querySelectorAll('dialog, .view-panel, .drawing-side, #print-root')]
        .filter((one) => one.scrollWidth > one.clientWidth + 1).map((one) => one.id || one.className || one.tagName);
    return over;
";

async fn check(browser: &Browser, what: &str, wrong: &mut Vec<String>) {
    for script in [SMALL, SIDEWAYS] {
        let found = browser.ask(script).await;
        if found != json!([]) {
            wrong.push(format!("{what}: {found:#}"));
        }
    }
}

#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn whatever_a_finger_touches_is_as_large_as_one() {
    let site = Site::of_build("/");
    let mut wrong = Vec::new();
    for screen in [Screen::PHONE, TABLET] {
        let browser = Browser::open(screen).await;
        browser.open_app(&site.url()).await;
        let wide = screen.width;
        for view in VIEWS {
            browser.ask(&format!("document.querySelector('{view}').click()")).await;
            browser.until("return !document.querySelector('.coming')", view).await;
            check(&browser, &format!("{view} at {wide}"), &mut wrong).await;
            let picture = browser.client.screenshot().await.unwrap();
            keep(&format!("e2e/fingers{}-{wide}.png", view.replace('#', "-")), &picture);
        }
        // Every group beside the drawing.
        browser.ask("document.querySelector('#drawing').click()").await;
        let _ = browser.find("#group-shape").await;
        for group in ["woods", "loads", "stringing", "keys", "drills", "files", "shape"] {
            browser.ask(&format!("const head = document.querySelector('#group-{group}'); if (head.ariaExpanded !== 'true') head.click()")).await;
            check(&browser, &format!("{group} at {wide}"), &mut wrong).await;
        }
        browser.ask("document.querySelector('#chart-view').click()").await;
        let _ = browser.find("#chart td.typed").await;
        for menu in MENUS {
            let open = format!(
                "const word = document.querySelector('{menu}'); word?.click(); return Boolean(word)"
            );
            browser.ask(&open).await;
            check(&browser, &format!("menu {menu} at {wide}"), &mut wrong).await;
            browser.ask("document.body.click()").await;
        }
        for opener in OPENERS {
            browser.ask(&format!("document.querySelector('{opener}').click()")).await;
            let here = "return Boolean(document.querySelector('dialog[open], .card-bar'))";
            browser.until(here, opener).await;
            check(&browser, &format!("window {opener} at {wide}"), &mut wrong).await;
            let picture = browser.client.screenshot().await.unwrap();
            keep(&format!("e2e/fingers{}-{wide}.png", opener.replace('#', "-")), &picture);
            browser.ask("(document.querySelector('#close-card') ?? document.querySelector('.window-head button')).click()").await;
            browser.until("return !document.querySelector('dialog, .card-bar')", "closed").await;
        }
        browser.check_console().await;
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

/// What the sheet for a cell says and holds.
async fn sheet(browser: &Browser) -> Value {
    browser
        .ask(
            "const sheet = document.querySelector('#cell-sheet');
             if (!sheet?.checkVisibility()) return null;
             const field = sheet.querySelector('.cell-field');
             const { bottom, height } = sheet.getBoundingClientRect();
             return { head: sheet.querySelector('.sheet-head').textContent, text: field.value,
                 keys: field.inputMode, typing: document.activeElement === field,
                 low: Math.round(innerHeight - bottom), large: field.getBoundingClientRect().height >= 44, height }",
        )
        .await
}

#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn a_cell_is_typed_in_a_sheet_above_the_keys_of_the_screen() {
    let site = Site::of_build("/");
    let browser = Browser::open(Screen::PHONE).await;
    browser.open_app(&site.url()).await;
    let _ = browser.find("#cell-sheet").await;
    let show = |row: usize| {
        format!("document.querySelector('#cell-{row}-1').scrollIntoView({{ block: 'center' }})")
    };
    browser.ask(&show(9)).await;
    assert_eq!(sheet(&browser).await, Value::Null);
    let was = browser.text("#cell-9-1").await;
    tap(&browser, middle(&browser, "#cell-9-1").await).await;
    browser
        .until("return document.querySelector('#cell-sheet').checkVisibility()", "a sheet")
        .await;
    let now = sheet(&browser).await;
    assert!(now["head"].as_str().unwrap().starts_with("String 10, "), "{now}");
    assert!(now["head"].as_str().unwrap().ends_with("(mm)"), "{now}");
    assert_eq!(now["text"], json!(was));
    assert_eq!((&now["keys"], &now["typing"]), (&json!("decimal"), &json!(true)));
    assert_eq!((&now["low"], &now["large"]), (&json!(0), &json!(true)), "{now}");
    // The cell itself stays in sight above it.
    let above = "const cell = document.querySelector('#cell-9-1').getBoundingClientRect();
        return cell.top >= 0 && cell.bottom <= document.querySelector('#cell-sheet').getBoundingClientRect().top";
    browser.until(above, "the cell above the sheet").await;
    let picture = browser.client.screenshot().await.unwrap();
    keep("e2e/cell-sheet.png", &picture);
    check_sheet(&browser).await;

    // Kept with a step to the next string, kept alone, and left as it was.
    let own = browser.text("#cell-10-1").await;
    browser.press("401.5").await;
    tap(&browser, middle(&browser, "#sheet-below").await).await;
    let next =
        "return document.querySelector('.sheet-head')?.textContent.startsWith('String 11, ')";
    browser.until(next, "the next string").await;
    assert_eq!(browser.text("#cell-9-1").await, "401.5");
    assert_eq!(sheet(&browser).await["text"], json!(own));
    assert_eq!(sheet(&browser).await["typing"], true);
    browser.press("432.5").await;
    tap(&browser, middle(&browser, "#sheet-keep").await).await;
    let gone = "return !document.querySelector('#cell-sheet').checkVisibility()";
    browser.until(gone, "the sheet goes").await;
    assert_eq!(browser.text("#cell-10-1").await, "432.5");
    tap(&browser, middle(&browser, "#cell-10-1").await).await;
    browser
        .until("return document.querySelector('#cell-sheet').checkVisibility()", "a sheet")
        .await;
    browser.press("9").await;
    tap(&browser, middle(&browser, "#sheet-leave").await).await;
    browser.until(gone, "the sheet goes").await;
    assert_eq!(browser.text("#cell-10-1").await, "432.5");

    // What is typed is kept when another cell is touched, and what is wrong there is told.
    tap(&browser, middle(&browser, "#cell-10-1").await).await;
    browser
        .until("return document.querySelector('#cell-sheet').checkVisibility()", "a sheet")
        .await;
    browser.press("far").await;
    tap(&browser, middle(&browser, "#cell-9-1").await).await;
    browser
        .until(
            "return document.querySelector('.sheet-head').textContent.startsWith('String 10')",
            "the other",
        )
        .await;
    assert_eq!(browser.text("#cell-10-1").await, "far");
    tap(&browser, middle(&browser, "#sheet-below").await).await;
    browser.until(next, "the next string").await;
    let wrong = browser.text("#cell-sheet .wrong").await;
    assert!(wrong.contains("String 11") && wrong.contains("far"), "{wrong}");
    let picture = browser.client.screenshot().await.unwrap();
    keep("e2e/cell-sheet-wrong.png", &picture);
    tap(&browser, middle(&browser, "#sheet-keep").await).await;
    browser.until(gone, "the sheet goes").await;

    // A material is offered above the sheet.
    tap(&browser, middle(&browser, "#cell-9-2").await).await;
    browser
        .until("return document.querySelector('#cell-sheet').checkVisibility()", "a sheet")
        .await;
    assert_eq!(sheet(&browser).await["keys"], json!(""));
    browser.press("gut").await;
    let offers = "const list = document.querySelector('#offers:not([hidden])')?.getBoundingClientRect();
        return Boolean(list) && list.top >= 0 && list.bottom <= document.querySelector('#sheet-field').getBoundingClientRect().top + 4";
    browser.until(offers, "offers above the field").await;
    let picture = browser.client.screenshot().await.unwrap();
    keep("e2e/cell-sheet-offers.png", &picture);
    browser.check_barriers().await;
    browser.check_console().await;
}

async fn check_sheet(browser: &Browser) {
    let mut wrong = Vec::new();
    check(browser, "the sheet", &mut wrong).await;
    assert!(wrong.is_empty(), "{wrong:?}");
}

/// Left, top, width and height of what is in sight of the drawing.
async fn look(browser: &Browser) -> [f64; 4] {
    let view = "return document.querySelector('#loft svg').getAttribute('viewBox').trim().split(/\\s+/).map(Number)";
    serde_json::from_value(browser.ask(view).await).expect("four numbers")
}

#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn the_drawing_is_pinched_dragged_and_fitted_by_fingers() {
    let site = Site::of_build("/");
    for screen in [Screen::PHONE, TABLET] {
        let browser = Browser::open(screen).await;
        browser.open_app(&site.url()).await;
        browser.click("#drawing").await;
        let _ = browser.find("#loft .string").await;
        browser
            .ask("document.querySelector('.loft-paper').scrollIntoView({ block: 'start' })")
            .await;
        let corner: Place = serde_json::from_value(
            browser.ask("const r = document.querySelector('.loft-paper').getBoundingClientRect(); return [r.x, r.y]").await,
        )
        .expect("a corner");
        let on = |x: f64, y: f64| (corner.0 + x, corner.1 + y);
        let whole = look(&browser).await;

        // Two fingers part: what lay between them lies there still, and is three times as large.
        drag(&browser, &[on(150.0, 200.0), on(210.0, 200.0)], &[on(90.0, 220.0), on(270.0, 220.0)])
            .await;
        browser.until("return document.querySelector('.loft-paper.near') !== null", "near").await;
        let near = look(&browser).await;
        assert!((whole[2] / near[2] - 3.0).abs() < 0.05, "{whole:?} {near:?}");
        let (mm, mm_near) = (whole[2] / paper(&browser).await.0, near[2] / paper(&browser).await.0);
        let (before, after) = (
            (whole[0] + 180.0 * mm, whole[1] + 200.0 * mm),
            (near[0] + 180.0 * mm_near, near[1] + 220.0 * mm_near),
        );
        assert!(
            (before.0 - after.0).abs() < mm && (before.1 - after.1).abs() < mm,
            "{before:?} {after:?}"
        );
        assert_eq!(
            browser.ask("return visualViewport.scale").await.as_f64(),
            Some(1.0),
            "the page stays"
        );
        let picture = browser.client.screenshot().await.unwrap();
        keep(&format!("e2e/pinched-{}.png", screen.width), &picture);

        // One finger takes the paper along, both ways, and pulls no pin on its way.
        let undo = "return document.querySelector('#undo').disabled";
        drag(&browser, &[on(200.0, 150.0)], &[on(140.0, 250.0)]).await;
        let moved = look(&browser).await;
        assert!((moved[0] - near[0] - 60.0 * mm_near).abs() < mm, "{near:?} {moved:?}");
        assert!((moved[1] - near[1] + 100.0 * mm_near).abs() < mm, "{near:?} {moved:?}");
        assert_eq!(browser.ask(undo).await, true, "no string was changed");

        // Two quick taps show all.
        tap(&browser, on(30.0, 30.0)).await;
        tap(&browser, on(32.0, 31.0)).await;
        browser.until("return document.querySelector('.loft-paper.near') === null", "all").await;
        assert_eq!(look(&browser).await, whole);
        assert_eq!(browser.count("dialog").await, 0);

        // The marked pin is gripped; a second finger puts it back.
        let ring = "const ring = document.querySelector('#loft .ring').getBoundingClientRect(); return [ring.x + ring.width / 2, ring.y + ring.height / 2]";
        let pin: Place = serde_json::from_value(browser.ask(ring).await).expect("a pin");
        let readout = browser.text("#loft-readout").await;
        drag(&browser, &[(pin.0 + 6.0, pin.1 + 5.0)], &[(pin.0 + 6.0, pin.1 + 25.0)]).await;
        let pulled = format!(
            "return document.querySelector('#loft-readout').textContent !== {}",
            json!(readout)
        );
        browser.until(&pulled, "the string to follow").await;
        assert_eq!(browser.ask(undo).await, false);
        browser.click("#undo").await;
        let back = format!(
            "return document.querySelector('#loft-readout').textContent === {}",
            json!(readout)
        );
        browser.until(&back, "as before").await;
        browser.until("return document.querySelector('#undo').disabled", "undone").await;
        tokio::time::sleep(std::time::Duration::from_millis(500)).await;
        let pin: Place = serde_json::from_value(browser.ask(ring).await).expect("a pin");
        touch(&browser, "touchStart", &[pin]).await;
        touch(&browser, "touchMove", &[(pin.0, pin.1 + 12.0)]).await;
        touch(&browser, "touchMove", &[(pin.0, pin.1 + 24.0)]).await;
        browser.until(&pulled, "the string to follow").await;
        touch(&browser, "touchStart", &[(pin.0, pin.1 + 24.0), (pin.0 + 90.0, pin.1 + 24.0)]).await;
        browser.until(&back, "as before").await;
        touch(&browser, "touchEnd", &[]).await;
        browser.check_console().await;
    }
}

/// Width and height of the paper in pixels.
async fn paper(browser: &Browser) -> (f64, f64) {
    let size = "const paper = document.querySelector('.loft-paper'); return [paper.clientWidth, paper.clientHeight]";
    serde_json::from_value(browser.ask(size).await).expect("a size")
}

#[tokio::test]
#[ignore = "needs a release build and Chromium: scripts/test"]
async fn what_was_tapped_is_in_sight_and_papers_fit_and_grow() {
    let site = Site::of_build("/");
    for screen in [Screen::PHONE, TABLET] {
        let browser = Browser::open(screen).await;
        browser.open_app(&site.url()).await;
        let in_sight = |css: &str| {
            format!(
                "const box = document.querySelector('{css}')?.getBoundingClientRect();
                 return Boolean(box) && box.top > -2 && box.top < innerHeight * 0.6 && box.left >= -2 && box.right <= innerWidth + 2"
            )
        };
        for (view, shown) in [
            ("#versions-view", "#versions"),
            ("#order-view", "#order"),
            ("#choose-view", "#choose"),
            ("#drawing", ".loft-paper"),
            ("#chart-view", "#chart-scroll"),
        ] {
            browser.ask(&format!("document.querySelector('{view}').click()")).await;
            browser.until(&in_sight(shown), shown).await;
            let button = format!(
                "const box = document.querySelector('{view}').getBoundingClientRect(); return box.left > -2 && box.right < innerWidth + 2"
            );
            browser.until(&button, "the button of the view").await;
        }
        // What a menu asks for beside the drawing, and a group that is opened there.
        browser.ask("document.querySelector('#templates').click()").await;
        browser.until(&in_sight("#group-files"), "the templates").await;
        browser.ask("document.querySelector('#group-shape').click()").await;
        browser.until(&in_sight("#group-shape"), "the shape").await;
        // A sheet of paper has the width of the screen, and two fingers bring it nearer.
        for paper in ["#card", "#report"] {
            browser.ask(&format!("document.querySelector('{paper}').click()")).await;
            let fits = "const sheet = document.querySelector('.paper')?.getBoundingClientRect();
                return Boolean(sheet) && sheet.left >= 0 && sheet.right <= innerWidth && sheet.width > innerWidth * 0.8
                    && document.querySelector('#print-root').scrollWidth <= innerWidth";
            browser.until(fits, "a sheet as wide as the screen").await;
            let y = 400.0;
            drag(&browser, &[(160.0, y), (220.0, y)], &[(90.0, y), (290.0, y)]).await;
            browser.until("return visualViewport.scale > 2", "nearer").await;
            let picture = browser.client.screenshot().await.unwrap();
            keep(
                &format!("e2e/fingers-near{}-{}.png", paper.replace('#', "-"), screen.width),
                &picture,
            );
            browser.devtools("Emulation.resetPageScaleFactor", json!({})).await;
            browser.ask("document.querySelector('#close-card').click()").await;
        }
        browser.check_console().await;
    }
}
