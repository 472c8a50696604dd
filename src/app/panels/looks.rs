//! How the page is looked at: the columns of the chart, and what share of the width the curves have.

use leptos::prelude::*;
use web_sys::{Element, HtmlSelectElement, KeyboardEvent, PointerEvent};

use wasm_bindgen::JsCast;

use crate::app::browser;
use crate::app::columns::{SETS, read, set_of};
use crate::app::store::{Store, View, Window};
use crate::words::{Language, chart_page as say, language};

/// The share of the width that the chart has, and the one that any other view has, in per cent. At 0 the view
/// is folded, at 100 the curves are.
#[derive(Clone, Copy)]
pub struct Split {
    store: Store,
    shares: RwSignal<[i32; 2]>,
}

/// At the width of a laptop the usual columns fit, with the longer words of other languages too.
fn usual() -> [i32; 2] {
    [if language() == Language::English { 60 } else { 68 }, 64]
}

/// What is left of a side before it folds.
const LEAST: i32 = 22;

const KEPT: &str = "stringloft/split";

impl Split {
    /// As it was left in this browser.
    pub fn new(store: Store) -> Self {
        let text = browser::kept(KEPT).unwrap_or_default();
        let kept = text.split_once(',').and_then(|(a, b)| Some([a.parse().ok()?, b.parse().ok()?]));
        Self {
            store,
            shares: RwSignal::new(kept.unwrap_or_else(usual).map(|share: i32| share.clamp(0, 100))),
        }
    }

    fn side(self) -> usize {
        usize::from(self.store.view.get() != View::Chart)
    }

    /// The share of what stands at the left.
    pub fn share(self) -> i32 {
        self.shares.read()[self.side()]
    }

    fn set(self, share: i32) {
        let share = match share {
            ..LEAST => 0,
            LEAST..=85 => share,
            _ => 100,
        };
        let side = untrack(|| self.side());
        self.shares.update(|shares| shares[side] = share);
    }

    fn usual(self) {
        self.set(usual()[untrack(|| self.side())]);
        self.keep();
    }

    fn keep(self) {
        let [chart, other] = self.shares.get_untracked();
        // A width that is not remembered is no loss worth a word.
        let _ = browser::keep(KEPT, &format!("{chart},{other}"));
    }
}

/// The border between the view and the curves, moved by pointer and keys.
#[component]
pub fn Divider(split: Split) -> impl IntoView {
    let pulled = move |event: PointerEvent| {
        let divider: Option<Element> =
            event.current_target().and_then(|target| target.dyn_into().ok());
        let bench =
            divider.filter(|_| event.buttons() == 1).and_then(|divider| divider.parent_element());
        if let Some(bench) = bench {
            let place = bench.get_bounding_client_rect();
            #[expect(
                clippy::cast_possible_truncation,
                reason = "a share of the width, near 0 to 100"
            )]
            let share =
                ((f64::from(event.client_x()) - place.left()) / place.width() * 100.0) as i32;
            split.set(share);
        }
    };
    let pressed = move |event: PointerEvent| {
        let divider: Option<Element> =
            event.current_target().and_then(|target| target.dyn_into().ok());
        if let Some(divider) = divider {
            // Without it the pointer is lost where it is quicker than the border.
            let _ = divider.set_pointer_capture(event.pointer_id());
        }
    };
    let keys = move |event: KeyboardEvent| {
        let share = untrack(|| split.share());
        match event.key().as_str() {
            // Out of a fold it comes back at once.
            "ArrowLeft" => split.set(if share == 100 { 85 } else { share - 2 }),
            "ArrowRight" => split.set(if share == 0 { LEAST } else { share + 2 }),
            "Home" => split.set(0),
            "End" => split.set(100),
            "Enter" => split.usual(),
            _ => return,
        }
        event.prevent_default();
        split.keep();
    };
    view! {
        <div
            id="divider"
            role="separator"
            tabindex="0"
            aria-orientation="vertical"
            aria-label=say::BORDER.said()
            aria-valuemin="0"
            aria-valuemax="100"
            aria-valuenow=move || split.share()
            title=say::BORDER_HINT.said()
            on:pointerdown=pressed
            on:pointermove=pulled
            on:pointerup=move |_| split.keep()
            on:dblclick=move |_| split.usual()
            on:keydown=keys
        ></div>
    }
}

/// The choices beside the names of the views.
#[component]
pub fn Looks(store: Store, split: Split) -> impl IntoView {
    let columns = move || set_of(&store.chosen.read()).unwrap_or("own");
    let sets = SETS.map(|(key, name, _)| (key, name.said())).into_iter();
    let sets = sets
        .chain([("own", say::MY_COLUMNS.said()), ("choose", say::CHOOSE_COLUMNS.said())])
        .collect();
    let take_columns = move |key: String| match key.as_str() {
        "choose" => store.window.set(Some(Window::Columns)),
        "own" => match store.own_columns() {
            Some(own) => store.show_columns(own),
            None => store.window.set(Some(Window::Columns)),
        },
        set => store.show_columns(read(set)),
    };
    let sides = move || match split.share() {
        0 => "curves",
        100 => "view",
        _ => "both",
    };
    let take_sides = move |key: String| {
        match key.as_str() {
            "curves" => split.set(0),
            "view" => split.set(100),
            _ => split.usual(),
        }
        split.keep();
    };
    let beside = vec![
        ("both", say::WITH_CURVES.said()),
        ("view", say::WITHOUT_CURVES.said()),
        ("curves", say::CURVES_ALONE.said()),
    ];
    view! {
        <div class="looks">
            {chosen("columns", say::COLUMNS_WINDOW.said(), sets, Signal::derive(columns), Box::new(take_columns))}
            {chosen("sides", say::BESIDE.said(), beside, Signal::derive(sides), Box::new(take_sides))}
        </div>
    }
}

/// A choice among words.
pub(super) fn chosen(
    id: &'static str,
    label: &'static str,
    choices: Vec<(&'static str, &'static str)>,
    now: Signal<&'static str>,
    take: Box<dyn Fn(String)>,
) -> AnyView {
    let option = |(key, words): (&'static str, &'static str)| {
        view! { <option value=key selected=move || now.get() == key>{words}</option> }.into_any()
    };
    let options: Vec<AnyView> = choices.into_iter().map(option).collect();
    let change = move |event| {
        let field: HtmlSelectElement = event_target(&event);
        take(field.value());
        // What opens a window is no choice that stays.
        field.set_value(now.get_untracked());
    };
    view! { <select id=id aria-label=label title=label on:change=change>{options}</select> }
        .into_any()
}
