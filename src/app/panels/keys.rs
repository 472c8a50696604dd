//! The shortcuts of the keyboard, for those who use no mouse.

use leptos::prelude::*;

use crate::app::store::Store;
use crate::app::widgets::window::Window;

const KEYS: [(&str, &str); 25] = [
    ("Arrow keys, Page up and down", "move; with Shift they select a block"),
    ("Home, End", "first and last column; with Ctrl first and last cell"),
    ("Any letter or digit", "type a new text into the cell"),
    ("Enter or F2", "change what is in the cell"),
    ("Enter, Tab while typing", "take it and go down, or to the next cell to be typed"),
    ("Ctrl+Enter while typing", "take it for every selected string"),
    ("Escape", "give up what is being typed; then Tab leaves the chart"),
    ("Delete", "empty the selected cells"),
    (
        "Alt+Up, Alt+Down",
        "length 1 mm or 1/16 in longer or shorter, gauge one step; with Shift finer",
    ),
    ("Ctrl+C, Ctrl+X, Ctrl+V", "copy, cut, paste blocks, also to and from a spreadsheet"),
    ("Ctrl+D", "fill the selection from its first row; a single row from the one above"),
    ("Ctrl+A", "select the whole chart"),
    ("Ctrl+Z, Ctrl+Y", "undo, redo"),
    ("Insert, Ctrl+Delete", "put in a string, take the selected strings out"),
    ("Ctrl+Shift+Up, Ctrl+Shift+Down", "move the selected strings"),
    ("Ctrl+Enter", "make-up of the selected strings"),
    ("Alt+Enter", "the string in full; there Ctrl+Up and Ctrl+Down go to its neighbours"),
    ("F1 or ?", "how the figure of this column is worked out"),
    ("Page up and down in the drawing", "choose a string; Home and End the highest and the lowest"),
    (
        "Alt+Up, Alt+Down in the drawing",
        "its string 0.5 mm or 1/64 in longer or shorter, with Shift ten times as much",
    ),
    ("+, -, 0, arrow keys in the drawing", "larger, smaller, the whole harp; move the paper"),
    ("Ctrl+S", "save the design as a file"),
    ("F6", "go on to the next part of the page"),
    ("Left, Right in a row of buttons", "the next button; Tab leaves the row"),
    (
        "Arrow keys at the border of the curves",
        "move it; Home and End fold a side, Enter brings both back",
    ),
];

/// The list of keys.
#[component]
pub fn KeysWindow(store: Store) -> impl IntoView {
    let lines = KEYS.map(|(keys, what)| view! { <dt>{keys}</dt><dd>{what}</dd> }).collect_view();
    view! {
        <Window title="Shortcuts" on_close=move || store.window.set(None)>
            <dl class="keys">{lines}</dl>
            <p>
                "Lengths and gauges may carry a unit: 612, 61.2cm, 24 1/8 in, .032\", 32 thou. A string may be typed whole: nylon 0.81, or steel 0.45 + silk 0.10 + bronze 0.25 for a wound one, the core first."
            </p>
        </Window>
    }
}
