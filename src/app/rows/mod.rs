//! From the design and its analysis to the words on the page. Pure, so that it is tested natively.

mod begun;
mod cells;
mod chart;
mod client;
mod details;
mod exchanged;
pub mod heard;
pub mod led;
mod licences;
mod markup;
mod measured;
mod offered;
mod order;
mod proposal;
mod pulled;
mod spoken;
mod stock;
mod stringing;
mod versions;
mod whole;

pub use begun::{Begun, Typed, begun, count_of, ends_of, free_title, kind_of, wished};
pub use cells::{as_copied, as_kept, as_typed, nudged, pasted, says_itself, spread, with_units};
pub use chart::{CellWords, ChartWords, Head, RowWords, explained, head, heads, rows, sentence};
pub use client::{ClientWords, client};
pub use details::{Block, MOST_PARTIALS, details, details_title};
pub use exchanged::{Exchanged, exchange_heads, exchanged};
pub use licences::{Licensed, licences};
pub use markup::{CellLook, RowView, cell_id, cell_look, row_class, row_markup};
pub use measured::{ASKS_B, gap_words, has_blanks, measured, preview, told, unit_question};
pub use offered::{Offer, offers};
pub use order::{OrderGroup, OrderRow, OrderWords, drawn_from, fresh, order_words, part_of};
pub use proposal::{
    Choosable, Marks, Proposal, ProposedRow, allowed, choosables, kept, place_name, span,
    wanted_words,
};
pub use pulled::{in_short, number_and_length, pulled, stepped};
pub use spoken::{curve_table, spoken};
pub use stock::{STOCK_CELLS, StockCell, is_wanted, put, stock_problem, stock_text};
pub use stringing::{StringingWords, stringing, stringing_markup};
pub use versions::{
    VersionWords, day_words, differing, ghost_words, noted_words, row_name, side_words, versions,
};
pub use whole::{
    FindingWords, SummaryWords, TriedWords, facts, findings, readout, runs, summary,
    tolerance_words, tried,
};
