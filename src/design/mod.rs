//! The document: what was typed, the edits that change it, its versions, and the words for numbers.
//!
//! Knows the engine, not the screen. In order, each using those before it: `reading` with `writing`, `document`,
//! `settings`, `number`, `typed`, `measure`, `pieces`, `make_up_text`, `library`, `material_facts`, `trial`, `migrate`,
//! `persist`, `backup`, `link`, `cells`, `heading`, `stock`, `material_edit`, `gaps`, `edit`, `history`, `resolve`, `keys`,
//! `display` and `figures`, `shape`, `advice`, `order`, `table`, `presets`, `restring`, `compare`,
//! `wood_facts`, `targets`, `choose`, then `bearing_words` and `explain`, which know each other,
//! `giving`, `settling`, `years`, `parts`, `listening` and `sound`; and `checks`, which uses none of them. `figures` names for each figure its unit of `display` and its page
//! of `explain`, and both read it there.

pub mod advice;
pub mod backup;
pub mod bearing_words;
pub(crate) mod cells;
pub mod checks;
pub mod choose;
pub mod compare;
pub mod decimal;
pub mod display;
pub mod document;
pub mod edit;
pub mod explain;
pub mod figures;
pub mod gaps;
pub mod giving;
pub mod heading;
pub mod history;
pub mod keys;
pub mod letters;
pub mod library;
pub mod link;
pub mod listening;
pub mod make_up_said;
pub mod make_up_text;
pub mod material_edit;
pub mod material_facts;
mod measure;
pub mod migrate;
mod number;
pub mod order;
pub mod parts;
pub mod persist;
mod pieces;
pub mod presets;
mod reading;
pub mod resolve;
pub mod restring;
pub mod settings;
pub mod settling;
pub mod shape;
pub mod sound;
pub mod stock;
pub mod sum;
pub mod table;
pub mod targets;
pub mod thickness_map;
pub mod trial;
pub mod typed;
mod unusable;
mod usual_gauges;
pub mod wood_facts;
mod writing;
pub mod years;
