//! The curves across the compass and the strings to scale: data worked out first, then drawn on any
//! plotters backend, a canvas or SVG alike.
//!
//! Knows the engine and the document's units, not the page. In order, each using those before it:
//! `palette`, `axis`, `quantity`, `marks`, `compass`, `pen`, `series`, `layout`, `draw`, `band`;
//! `lofting`, `overlay` and `load_diagram` are the drawing of the harp and what lies over it; `wanted` is the curve that
//! strings are chosen for; `recorded` is a drawing as a list, of which a canvas paints what changed; `picture` makes
//! pictures that stand alone of curves and drawing; `whole` is the harp with all its parts, from three sides, and `space`
//! the same from anywhere.
//!
//! Nothing here lets plotters measure a text: in a browser that would put a styled element on the
//! page, which costs a layout and which the page's content security policy forbids. Widths are
//! guessed from the number of characters instead.

pub mod axis;
pub mod band;
pub mod compass;
pub mod draw;
pub mod layout;
pub mod load_diagram;
pub mod lofting;
pub mod marks;
pub mod overlay;
pub mod palette;
pub mod pen;
pub mod picture;
pub mod planks;
pub mod quantity;
pub mod recorded;
pub mod series;
pub mod space;
pub mod wanted;
pub mod whole;

#[cfg(test)]
pub(crate) mod samples;
