//! What is printed: sheets of words and figures, laid out in millimetres, and their writing as HTML.
//!
//! Knows the design and the engine, not the screen. In order, each using those before it: `sheet`,
//! `measure`, `code`, `words`, `rows`, `layout`, `card`, `order`, `report`, `cutting`, `building`, `tuning`, `html`. `template`
//! draws at full size and stands apart.

pub mod building;
pub mod card;
pub mod code;
pub mod cutting;
pub mod html;
pub mod layout;
pub mod measure;
pub mod order;
mod pager;
pub mod report;
mod report_words;
pub mod rows;
pub mod sheet;
pub mod template;
pub mod tuning;
pub mod words;
