//! Pieces that show and report, and know no design.

pub mod button;
pub mod fields;
pub mod list;
pub mod menu;
pub mod number_table;
pub mod window;
