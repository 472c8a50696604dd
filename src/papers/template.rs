//! Templates at full size: a drawing of pins, holes, levers and outlines in millimetres, written as DXF
//! for a cutter, as SVG for a drawing program and as PDF for a printer, and a schedule of the points.
//!
//! All but `harp`, `part`, `bent`, `jig` and `overview` take a neutral [`Template`](model::Template) and know no harp. In order, each using
//! those before it: `limits`, `plane`, `model`, `check`, `letters`, `dxf`, `svg`, `schedule`, `tiling`, `canvas`, `sheet`,
//! `map`, `pdf`, `harp`, `part`, `bent`, `jig`, `overview`.

pub mod bent;
mod canvas;
mod check;
pub mod dxf;
pub mod harp;
pub mod jig;
pub mod letters;
mod limits;
mod map;
pub mod model;
pub mod overview;
pub mod part;
pub mod pdf;
mod plane;
pub mod schedule;
mod sheet;
pub mod svg;
pub mod tiling;
