//! One row of a table: its cells as a string.

use std::fmt;

use super::cells::{Row, TableError, unguarded};
use crate::design::document::{
    Fact, LONGEST_CELL, LayerSpec, MakeUpSpec, MaterialSpec, ModulusSpec, StandingSpec,
    StrengthSpec, StringSpec, WeighedSpec,
};
use crate::design::letters::small;
use crate::design::library::{DENSITY_KG_PER_M3, MODULUS_GPA, STRENGTH_MPA};
use crate::design::{make_up_text, typed};
use crate::engine::material::key_of;
use crate::words::{Words, tables, typed as typed_say};

/// The headings of the layers, from the inside out: material, wire diameter (or thickness of
/// ribbon), width of ribbon, packing in per cent.
pub(super) const LAYER_COLUMNS: [[&str; 4]; 3] = [
    ["wrap1_material", "wrap1_mm", "wrap1_width_mm", "wrap1_packing_percent"],
    ["wrap2_material", "wrap2_mm", "wrap2_width_mm", "wrap2_packing_percent"],
    ["wrap3_material", "wrap3_mm", "wrap3_width_mm", "wrap3_packing_percent"],
];

/// Where the diameter of a plain string may stand, the first that is filled; the last two are the
/// overall diameter of any other string.
const PLAIN_COLUMNS: [&str; 4] = ["diameter_mm", "core_mm", "gauge_mm", "gauge"];

/// Own figures for a material: what it is based on, then density, modulus and strength as typed.
pub(super) type Own = (String, [String; 3]);

/// A row while it is read.
pub(super) struct Line<'a> {
    pub(super) row: &'a Row,
    /// Where each known heading stands.
    pub(super) columns: &'a [(&'static str, usize)],
    pub(super) errors: &'a mut Vec<TableError>,
}

impl Line<'_> {
    /// The string, and the own figures of its material.
    pub(super) fn string(&mut self) -> (StringSpec, Option<Own>) {
        let note = self.note();
        let mut length = self.text("length_mm", typed::length);
        if length.is_empty() {
            length = self.text("length", typed::length);
        }
        let order_code = self.short("order_code");
        let make_up = self.make_up();
        let own = self.own(&make_up.material).filter(|_| self.cell("make_up").is_empty());
        (StringSpec { note, length, make_up, order_code, ..StringSpec::default() }, own)
    }

    fn note(&mut self) -> String {
        let (note, hz) = (self.cell("note"), self.cell("frequency_hz"));
        if !note.is_empty() {
            self.text("note", typed::pitch)
        } else if hz.is_empty() || small(hz).ends_with("hz") {
            self.text("frequency_hz", typed::pitch)
        } else {
            let with_unit = format!("{hz} Hz");
            self.checked("frequency_hz", with_unit, typed::pitch)
        }
    }

    fn cell(&self, column: &'static str) -> &str {
        let place = self.columns.iter().find(|known| known.0 == column).map(|known| &known.1);
        let cell = place.and_then(|place| self.row.cells.get(*place)).map_or("", String::as_str);
        unguarded(cell.trim()).trim()
    }

    fn wrong(&mut self, column: &str, message: String) {
        self.errors.push(TableError { line: self.row.line, column: column.to_owned(), message });
    }

    /// A cell as it stands, when it is empty or can be read.
    fn text<T, E: fmt::Display>(
        &mut self,
        column: &'static str,
        read: impl Fn(&str) -> Result<T, E>,
    ) -> String {
        let text = self.short(column);
        if text.is_empty() { text } else { self.checked(column, text, read) }
    }

    fn checked<T, E: fmt::Display>(
        &mut self,
        column: &'static str,
        text: String,
        read: impl Fn(&str) -> Result<T, E>,
    ) -> String {
        if let Err(error) = read(&text) {
            self.wrong(column, error.to_string());
        }
        text
    }

    /// A cell as it stands, when it is not too long.
    fn short(&mut self, column: &'static str) -> String {
        let text = self.cell(column).to_owned();
        let got = text.chars().count();
        if got > LONGEST_CELL {
            let message = tables::cell_long(&got, &LONGEST_CELL);
            self.wrong(column, message);
            return String::new();
        }
        text
    }

    fn make_up(&mut self) -> MakeUpSpec {
        let written = self.cell("make_up").to_owned();
        if !written.is_empty() {
            let mut make_up = make_up_text::read(&written).unwrap_or_else(|error| {
                self.wrong("make_up", error.to_string());
                MakeUpSpec::default()
            });
            if make_up.is_plain() && make_up.diameter.is_empty() {
                make_up.diameter = self.first_gauge(&PLAIN_COLUMNS);
            }
            return make_up;
        }
        let layers: Vec<LayerSpec> =
            LAYER_COLUMNS.into_iter().filter_map(|columns| self.layer(columns)).collect();
        let weighed = self.weighed();
        let is_plain = layers.is_empty() && weighed.is_none();
        let diameter =
            self.first_gauge(if is_plain { &PLAIN_COLUMNS } else { &PLAIN_COLUMNS[..2] });
        let material = self.short("material");
        MakeUpSpec { material, diameter, layers, weighed, ..MakeUpSpec::default() }
    }

    /// The first of these cells that is filled.
    fn first_gauge(&mut self, columns: &[&'static str]) -> String {
        let filled = columns.iter().find(|column| !self.cell(column).is_empty());
        filled.map(|column| self.text(column, typed::gauge)).unwrap_or_default()
    }

    /// The headings of the materials of the layers that the row has.
    pub(super) fn layer_headings(&self) -> Vec<&'static str> {
        LAYER_COLUMNS.iter().filter(|columns| self.has_layer(columns)).map(|c| c[0]).collect()
    }

    fn has_layer(&self, columns: &[&'static str; 4]) -> bool {
        columns.iter().any(|column| !self.cell(column).is_empty())
    }

    fn layer(&mut self, columns: [&'static str; 4]) -> Option<LayerSpec> {
        if !self.has_layer(&columns) {
            return None;
        }
        let [material, size, width, packing] = columns;
        for (column, needs) in [(material, tables::LAYER_MATERIAL), (size, tables::LAYER_DIAMETER)]
        {
            if self.cell(column).is_empty() {
                self.wrong(column, needs.into());
            }
        }
        let percent = |text: &str| typed::positive(text, typed_say::PACKING, 5.0, 100.0);
        let packed = self.text(packing, percent);
        Some(LayerSpec {
            material: self.short(material),
            size: self.text(size, typed::gauge),
            width: self.text(width, typed::gauge),
            packing_percent: percent(&packed).unwrap_or(100.0),
        })
    }

    fn weighed(&mut self) -> Option<WeighedSpec> {
        let g_per_m = self.text("linear_density_g_per_m", typed::mass_per_metre);
        if g_per_m.is_empty() {
            return None;
        }
        let gauge = self.first_gauge(&PLAIN_COLUMNS[2..]);
        let breaks_n = self.text("breaking_load_n", typed::load);
        Some(WeighedSpec { g_per_m, gauge, breaks_n })
    }

    /// The own figures of a row for its material; `None` when it has none.
    fn own(&mut self, material: &str) -> Option<Own> {
        let mut figure = |column, what, (least, most)| {
            self.text(column, |text| typed::positive(text, what, least, most))
        };
        let figures = [
            figure("density_kg_m3", typed_say::DENSITY, DENSITY_KG_PER_M3),
            figure("modulus_gpa", typed_say::MODULUS, MODULUS_GPA),
            figure("strength_mpa", typed_say::STRENGTH, STRENGTH_MPA),
        ];
        let any = figures.iter().any(|figure| !figure.is_empty());
        any.then(|| (key_of(material).unwrap_or(material).to_owned(), figures))
    }
}

/// A material with figures of its own; those that are not given are the base's.
pub(super) fn own_material(
    key: &str,
    base: Option<&MaterialSpec>,
    figures: &[String; 3],
) -> Result<MaterialSpec, (&'static str, String)> {
    fn own<T>(value: T) -> Fact<T> {
        Fact { value, source: tables::ENTERED_WITH_TABLE.into(), standing: StandingSpec::Own }
    }
    // What cannot be read was reported with its cell.
    let given = figures.each_ref().map(|text| typed::positive(text, Words::NONE, 0.0, 1e6).ok());
    let density = given[0].map(own).or_else(|| base.map(|base| base.density_kg_per_m3.clone()));
    let density = density.ok_or_else(|| ("density_kg_m3", tables::DENSITY_NEEDED.into()))?;
    let modulus = given[1].map(|base_gpa| own(ModulusSpec { base_gpa, per_stress: 0.0 }));
    let strength = given[2].map(|mpa| own(StrengthSpec::Mpa(mpa)));
    Ok(MaterialSpec {
        key: key.to_owned(),
        name: key.to_owned(),
        density_kg_per_m3: density,
        modulus: modulus.or_else(|| base.and_then(|base| base.modulus.clone())),
        strength: strength.or_else(|| base.and_then(|base| base.strength.clone())),
        ..base.cloned().unwrap_or_default()
    })
}
