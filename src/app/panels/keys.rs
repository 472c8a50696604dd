//! The shortcuts of the keyboard, for those who use no mouse.

use leptos::prelude::*;

use crate::app::store::Store;
use crate::app::widgets::window::Window;
use crate::words::{Words, shortcuts as say};

const KEYS: [(Words, Words); 25] = [
    (say::WALK, say::WALK_DOES),
    (say::ENDS, say::ENDS_DOES),
    (say::LETTER, say::LETTER_DOES),
    (say::ENTER, say::ENTER_DOES),
    (say::TAKE, say::TAKE_DOES),
    (say::TAKE_ALL, say::TAKE_ALL_DOES),
    (say::ESCAPE, say::ESCAPE_DOES),
    (say::DELETE, say::DELETE_DOES),
    (say::NUDGE, say::NUDGE_DOES),
    (say::CLIPBOARD, say::CLIPBOARD_DOES),
    (say::FILL, say::FILL_DOES),
    (say::ALL, say::ALL_DOES),
    (say::UNDO, say::UNDO_DOES),
    (say::INSERT, say::INSERT_DOES),
    (say::SHIFT, say::SHIFT_DOES),
    (say::MAKE_UP, say::MAKE_UP_DOES),
    (say::DETAILS, say::DETAILS_DOES),
    (say::EXPLAIN, say::EXPLAIN_DOES),
    (say::DRAWING_CHOOSE, say::DRAWING_CHOOSE_DOES),
    (say::DRAWING_NUDGE, say::DRAWING_NUDGE_DOES),
    (say::DRAWING_MOVE, say::DRAWING_MOVE_DOES),
    (say::SAVE, say::SAVE_DOES),
    (say::NEXT_PART, say::NEXT_PART_DOES),
    (say::ROW, say::ROW_DOES),
    (say::BORDER, say::BORDER_DOES),
];

/// The list of keys.
#[component]
pub fn KeysWindow(store: Store) -> impl IntoView {
    let lines = KEYS
        .map(|(keys, what)| view! { <dt>{keys.said()}</dt><dd>{what.said()}</dd> })
        .collect_view();
    view! {
        <Window title=say::TITLE.said() on_close=move || store.window.set(None)>
            <dl class="keys">{lines}</dl>
            <p>
                {say::UNITS.said()}
            </p>
        </Window>
    }
}
