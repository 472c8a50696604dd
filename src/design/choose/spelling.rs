//! How a design writes the materials that a search gives it.

use crate::design::document::{Design, MakeUpSpec, MaterialSpec};
use crate::design::library::find;

/// How a design writes its materials: a set is written in the same way.
pub(super) struct Spelling(Vec<(String, String)>);

impl Spelling {
    pub(super) fn of(design: &Design, materials: &[MaterialSpec]) -> Self {
        let mut known: Vec<(String, String)> = Vec::new();
        for make_up in design.strings.iter().map(|string| &string.make_up) {
            let layers = make_up.layers.iter().map(|layer| &layer.material);
            for text in [&make_up.material].into_iter().chain(layers) {
                if known.iter().all(|(_, written)| written != text)
                    && let Some(material) = find(materials, text)
                {
                    known.push((material.key.clone(), text.clone()));
                }
            }
        }
        Self(known)
    }

    /// A make-up in this writing; of a material that the design does not have yet, by its key.
    pub(super) fn spell(&self, materials: &[MaterialSpec], make_up: &MakeUpSpec) -> MakeUpSpec {
        let mut next = make_up.clone();
        let layers = next.layers.iter_mut().map(|layer| &mut layer.material);
        for text in [&mut next.material].into_iter().chain(layers) {
            if let Some(material) = find(materials, text) {
                let known = self.0.iter().find(|(key, _)| *key == material.key);
                text.clone_from(known.map_or(&material.key, |(_, written)| written));
            }
        }
        next
    }
}
