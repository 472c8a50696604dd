//! Limits of stock, order list and versions.

use super::{CheckError, check_one, fits, many, short, tidy_text, within};
use crate::design::document::{
    Design, LONGEST_TEXT, MaterialSpec, StockItem, StrengthSpec, StringSpec, ToleranceSpec,
};
use crate::design::library::sources_of;
use crate::words::{Words, files as say};

/// The most stock items that a design may hold: more than its strings can be of.
pub const MOST_STOCK: usize = 400;
/// The most versions that a design may keep.
pub const MOST_VERSIONS: usize = 12;
/// How much all versions together may hold, in bytes, as [`weight`] counts them: a file stays well below
/// what can be read.
pub const MOST_VERSION_BYTES: usize = 1 << 20;
/// The longest pack, in millimetres: ten kilometres.
const PACK_MM: (f64, f64) = (1.0, 10_000_000.0);
const BUNDLE: (f64, f64) = (0.0, 10_000.0);
const PRICE: (f64, f64) = (0.0, 10_000_000.0);

/// Whether stock and order settings keep within the limits of a document.
pub(super) fn order(design: &Design) -> Result<(), CheckError> {
    many(say::STOCK_ITEMS, design.stock.len(), MOST_STOCK)?;
    for (index, spec) in design.stock.iter().enumerate() {
        item(spec, Some(index + 1))?;
    }
    fits(&design.order.remarks, LONGEST_TEXT, || say::of_design(&say::ORDER_REMARKS))
}

/// Whether a stock item keeps within the limits; `number` says which it is, where there is more than one.
///
/// # Errors
///
/// The first limit that is broken.
pub fn item(spec: &StockItem, number: Option<usize>) -> Result<(), CheckError> {
    let of = |field: Words| match number {
        Some(number) => say::of_item(&field, &number),
        None => say::of_one_item(&field),
    };
    fits(&spec.make_up, LONGEST_TEXT, || of(say::MAKE_UP))?;
    for (name, text) in [
        (say::ORDER_CODE, &spec.code),
        (say::SUPPLIER, &spec.supplier),
        (say::CURRENCY, &spec.currency),
        (say::LOWEST_NOTE, &spec.lowest),
        (say::HIGHEST_NOTE, &spec.highest),
        (say::REMARK, &spec.remark),
    ] {
        short(text, || of(name))?;
    }
    let number_in = |name: Words, got: Option<f64>, range| match got {
        Some(got) => within(|| of(name), got, range),
        None => Ok(()),
    };
    number_in(say::PACK_LENGTH, spec.pack_mm, PACK_MM)?;
    number_in(say::BUNDLE, Some(f64::from(spec.bundle)), BUNDLE)?;
    number_in(say::PRICE, spec.price, PRICE)
}

/// Whether the versions keep within the limits, each as a design by itself.
pub(super) fn versions(design: &Design) -> Result<(), CheckError> {
    many(say::VERSIONS, design.versions.len(), MOST_VERSIONS)?;
    let mut got = 0_usize;
    for (index, version) in design.versions.iter().enumerate() {
        let number = index + 1;
        short(&version.name, || say::version_name(&number))?;
        short(&version.date, || say::version_date(&number))?;
        if !version.design.versions.is_empty() {
            return Err(CheckError::Nested { number });
        }
        check_one(&version.design)
            .map_err(|error| CheckError::Version { number, why: Box::new(error) })?;
        got = got.saturating_add(weight(&version.design));
    }
    if got <= MOST_VERSION_BYTES { Ok(()) } else { Err(CheckError::VersionsLarge { got }) }
}

/// About how many bytes a design takes in a file: its texts, and what stands round them.
pub fn weight(design: &Design) -> usize {
    let texts = |texts: &[&String]| texts.iter().map(|text| text.len() + 20).sum::<usize>();
    let string = |string: &StringSpec| {
        let make_up = &string.make_up;
        let layers = make_up.layers.iter();
        let layers = layers.map(|layer| texts(&[&layer.material, &layer.size, &layer.width]));
        let weighed = make_up.weighed.iter();
        let weighed = weighed.map(|w| texts(&[&w.g_per_m, &w.gauge, &w.breaks_n]));
        texts(&[&string.note, &string.length, &string.order_code])
            + texts(&[&make_up.material, &make_up.diameter])
            + texts(&[&make_up.bare.board, &make_up.bare.pin])
            + layers.chain(weighed).sum::<usize>()
    };
    let material = |material: &MaterialSpec| {
        texts(&sources_of(material)) + material.name.len() + 400 + 20 * rows_of(material)
    };
    let item = |item: &StockItem| {
        item.make_up.len()
            + 40
            + texts(&[&item.code, &item.supplier, &item.currency])
            + texts(&[&item.lowest, &item.highest, &item.remark])
    };
    2_500
        + texts(&[&design.title, &design.maker, &design.client, &design.serial, &design.date])
        + texts(&[&design.open_tuning, &design.remarks, &design.order.remarks])
        + 24 * (design.geometry.nodes_mm.len() + 150)
        + design.strings.iter().map(string).sum::<usize>()
        + design.materials.iter().map(material).sum::<usize>()
        + design.stock.iter().map(item).sum::<usize>()
}

/// How many rows the tables of a material have.
fn rows_of(material: &MaterialSpec) -> usize {
    let strength = match material.strength.as_ref().map(|fact| &fact.value) {
        Some(StrengthSpec::TableMmMpa(rows) | StrengthSpec::StepsMmMpa(rows)) => rows.len(),
        _ => 0,
    };
    let tolerance = match material.diameter_tolerance.as_ref().map(|fact| &fact.value) {
        Some(ToleranceSpec::StepsMm(rows)) => rows.len(),
        _ => 0,
    };
    strength + tolerance
}

/// Takes out of a stock item what nobody types.
pub fn tidy_item(item: &mut StockItem) {
    let mut make_up = item.make_up.to_string();
    tidy_text(&mut make_up, false);
    if make_up != *item.make_up {
        item.make_up = make_up.into();
    }
    for text in [
        &mut item.code,
        &mut item.supplier,
        &mut item.currency,
        &mut item.lowest,
        &mut item.highest,
        &mut item.remark,
    ] {
        tidy_text(text, false);
    }
}
