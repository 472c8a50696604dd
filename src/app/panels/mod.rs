//! What stands on the page. A panel reads the store and sends edits.

mod card;
mod chart_acts;
mod chart_keys;
mod choose;
mod curves;
mod details;
mod drawing;
mod exchange;
mod findings;
mod header;
mod instrument;
mod keys;
mod link;
mod make_up;
mod materials;
mod new_design;
mod notice;
mod numbers;
mod order;
pub mod page;
mod shelf;
mod stock;
mod string_chart;
mod summary;
mod tools;
mod versions;
mod views;
