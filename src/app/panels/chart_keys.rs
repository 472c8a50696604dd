//! What the keys of the string chart do.

use web_sys::KeyboardEvent;

use crate::app::grid::Step;

/// What a key asks for.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Ask {
    /// Move the cursor; with `extend` the selection grows.
    Move { step: Step, extend: bool },
    /// Next (or previous) cell that can be typed into.
    Tab { forward: bool },
    /// Begin to type, with what is there.
    Type,
    /// Begin a new text, with this character.
    TypeAnew(String),
    /// Empty the selected cells.
    Clear,
    /// Fill the selection from its first row.
    FillDown,
    /// Select all.
    All,
    /// Drop the selection down to one cell.
    Drop,
    /// One step thicker, longer (up) or thinner, shorter (down).
    Nudge { up: bool, fine: bool },
    /// Move the selected strings by one place.
    Shift { up: bool },
    /// Put in a string above the cursor.
    Insert,
    /// Put in the selected strings once more, below them.
    Duplicate,
    /// Put in a string beyond the highest (up) or the lowest.
    Extend { up: bool },
    /// Take the selected strings out.
    Delete,
    /// Open the make-up of the string.
    MakeUp,
    /// Open the string in full.
    Details,
    /// Say how the figure of this column is worked out.
    Explain,
}

/// What a key pressed in the chart (while no cell is typed into) asks for.
pub fn ask(event: &KeyboardEvent) -> Option<Ask> {
    let key = event.key();
    let command = event.ctrl_key() || event.meta_key();
    let (shift, alt) = (event.shift_key(), event.alt_key());
    let step = |step| Some(Ask::Move { step, extend: shift });
    match (key.as_str(), command, alt) {
        ("ArrowUp" | "ArrowDown", true, _) if shift => Some(Ask::Shift { up: key == "ArrowUp" }),
        ("ArrowUp" | "ArrowDown", false, true) => {
            Some(Ask::Nudge { up: key == "ArrowUp", fine: shift })
        }
        ("ArrowUp", false, false) => step(Step::Up),
        ("ArrowDown", false, false) => step(Step::Down),
        ("ArrowLeft", false, false) => step(Step::Left),
        ("ArrowRight", false, false) => step(Step::Right),
        ("PageUp", false, _) => step(Step::PageUp),
        ("PageDown", false, _) => step(Step::PageDown),
        ("Home", false, _) => step(Step::RowStart),
        ("End", false, _) => step(Step::RowEnd),
        ("Home", true, _) => step(Step::ChartStart),
        ("End", true, _) => step(Step::ChartEnd),
        ("Tab", false, false) => Some(Ask::Tab { forward: !shift }),
        ("Enter", true, _) => Some(Ask::MakeUp),
        ("Enter", false, true) => Some(Ask::Details),
        ("F1", false, _) => Some(Ask::Explain),
        ("Enter" | "F2", false, _) => Some(Ask::Type),
        ("Delete", true, _) => Some(Ask::Delete),
        ("Delete" | "Backspace", false, _) => Some(Ask::Clear),
        ("Insert", false, _) => Some(Ask::Insert),
        ("Escape", _, _) => Some(Ask::Drop),
        ("d" | "D", true, false) => Some(Ask::FillDown),
        ("a" | "A", true, false) => Some(Ask::All),
        (text, false, false) if text.chars().count() == 1 => Some(Ask::TypeAnew(key.clone())),
        _ => None,
    }
}
