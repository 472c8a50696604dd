//! The numbered steps that lift an old document. A step is never edited again: files of its
//! version are out in the world.

use serde_json::{Map, Value};

/// The version of the document that this program writes.
pub const VERSION: usize = 2;

/// `STEPS[i]` lifts a document from version `i + 1` to `i + 2`. The length of this array holds us
/// to it: a new version does not compile without its step.
const STEPS: [fn(&mut Map<String, Value>); VERSION - 1] = [later_figures];

/// Version 2 brought levers, tolerances, and further figures of materials. Documents of version 1 have
/// none of them, so that the usual ones hold;
/// [`complete`](super::library::complete) adds the figures of built-in materials.
fn later_figures(_: &mut Map<String, Value>) {}

/// Lifts a document of version `found`, from 1 to [`VERSION`], to [`VERSION`].
pub(super) fn lift(document: &mut Map<String, Value>, found: usize) {
    for step in STEPS.iter().skip(found.saturating_sub(1)) {
        step(document);
        // Versions are as old as the file that holds them.
        if let Some(Value::Array(versions)) = document.get_mut("versions") {
            let designs = versions.iter_mut().filter_map(|kept| kept.get_mut("design"));
            designs.filter_map(Value::as_object_mut).for_each(step);
        }
    }
}
