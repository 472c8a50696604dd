//! What a design must hold to, whether it comes from a file, from a link or out of an edit.

mod geometry;
mod order;
mod targets;

use std::sync::Arc;

use thiserror::Error;

pub use self::order::{
    MOST_STOCK, MOST_VERSION_BYTES, MOST_VERSIONS, item as check_item, tidy_item,
};
use crate::design::display::as_said;
use crate::design::document::{
    Design, LONGEST_CELL, LONGEST_TEXT, MOST_LAYERS, MOST_STRINGS, MakeUpSpec, MaterialSpec,
};
use crate::design::letters::small;
use crate::design::library::{MaterialError, material_of, sources_mut, sources_of};
use crate::design::make_up_text::PACKING_PERCENT;
use crate::design::settings::{NumberRow, Setting, short as in_short};
use crate::words::{Words, files as say, numeral};

/// The most materials that a design may hold.
pub const MOST_MATERIALS: usize = 300;

/// Which limit a design breaks.
#[derive(Clone, Debug, PartialEq, Error)]
#[non_exhaustive]
pub enum CheckError {
    /// A number out of range, or no number.
    #[error("{}", out_of_range(.what, *.least, *.most, .unit, *.got))]
    Number { what: String, least: f64, most: f64, unit: &'static str, got: f64 },
    /// A text that is too long.
    #[error("{}", say::long(.got, .most, .what))]
    Long { what: String, most: usize, got: usize },
    /// Too many of something.
    #[error("{}", say::many(.got, .most, .what))]
    Many { what: Words, most: usize, got: usize },
    /// Too many layers on one string.
    #[error("{}", say::layers(.got, &MOST_LAYERS, .number))]
    Layers { number: usize, got: usize },
    /// A material that cannot be used.
    #[error(transparent)]
    Material(#[from] MaterialError),
    /// Two materials that strings could not tell apart.
    #[error("{}", say::same_key(.key))]
    SameKey { key: String },
    /// A version that holds versions.
    #[error("{}", say::nested(.number))]
    Nested { number: usize },
    /// A version that is not a valid design.
    #[error("{}", say::version_unkept(.number, .why))]
    Version { number: usize, why: Box<CheckError> },
    /// Versions that would make the file too large.
    #[error("{}", say::versions_large(&got.div_ceil(1 << 10), &(MOST_VERSION_BYTES >> 10)))]
    VersionsLarge { got: usize },
}

fn out_of_range(what: &str, least: f64, most: f64, unit: &str, got: f64) -> String {
    let most = format!("{} {unit}", numeral(most));
    say::number(&as_said(&in_short(got)), &numeral(least), &most.trim_end(), &what)
}

/// Whether a design keeps within the limits of a document: counts, lengths of texts, ranges of
/// numbers. What its texts mean is not looked at.
///
/// An edit whose outcome fails here must be refused: what it made could be saved, but not opened.
///
/// # Errors
///
/// The first limit that is broken, with the name of the field.
pub fn check(design: &Design) -> Result<(), CheckError> {
    check_one(design)?;
    order::versions(design)
}

/// As [`check`], without the versions.
fn check_one(design: &Design) -> Result<(), CheckError> {
    many(say::STRINGS, design.strings.len(), MOST_STRINGS)?;
    many(say::MATERIALS, design.materials.len(), MOST_MATERIALS)?;
    texts(design)?;
    numbers(design)?;
    geometry::geometry(&design.geometry)?;
    order::order(design)?;
    targets::targets(&design.targets)?;
    for (index, string) in design.strings.iter().enumerate() {
        let number = index + 1;
        let of = |field: Words| say::of_string(&field, &number);
        short(&string.note, || of(say::NOTE))?;
        short(&string.length, || of(say::LENGTH))?;
        short(&string.order_code, || of(say::ORDER_CODE))?;
        make_up(&string.make_up, number)?;
    }
    let mut keys = Vec::new();
    for (index, spec) in design.materials.iter().enumerate() {
        material(spec, index + 1)?;
        let key = small(spec.key.trim());
        if keys.contains(&key) {
            return Err(CheckError::SameKey { key: spec.key.clone() });
        }
        keys.push(key);
    }
    Ok(())
}

fn many(what: Words, got: usize, most: usize) -> Result<(), CheckError> {
    if got <= most { Ok(()) } else { Err(CheckError::Many { what, most, got }) }
}

fn short(text: &str, what: impl Fn() -> String) -> Result<(), CheckError> {
    fits(text, LONGEST_CELL, what)
}

fn fits(text: &str, most: usize, what: impl Fn() -> String) -> Result<(), CheckError> {
    // A character has one byte or more.
    if text.len() <= most {
        return Ok(());
    }
    let got = text.chars().count();
    if got <= most { Ok(()) } else { Err(CheckError::Long { what: what(), most, got }) }
}

fn within(
    what: impl Fn() -> String,
    got: f64,
    (least, most): (f64, f64),
) -> Result<(), CheckError> {
    if (least..=most).contains(&got) {
        Ok(())
    } else {
        Err(CheckError::Number { what: what(), least, most, unit: "", got })
    }
}

fn texts(design: &Design) -> Result<(), CheckError> {
    let short_texts = [
        (say::TITLE, &design.title),
        (say::MAKER, &design.maker),
        (say::CLIENT, &design.client),
        (say::SERIAL, &design.serial),
        (say::DATE, &design.date),
        (say::OPEN_TUNING, &design.open_tuning),
    ];
    for (name, text) in short_texts {
        short(text, || say::of_design(&name))?;
    }
    fits(&design.remarks, LONGEST_TEXT, || say::of_design(&say::REMARKS))
}

/// Wide ranges, so that nothing that could be typed is lost: [`resolve`](crate::design::resolve) says
/// which settings make sense.
fn numbers(design: &Design) -> Result<(), CheckError> {
    for setting in Setting::ALL {
        if let Some(got) = setting.of(design) {
            held(setting.row(), got, None)?;
        }
    }
    Ok(())
}

/// Whether a document may hold a number of a row. Of a list, `place` counts from 0.
fn held(row: &NumberRow, got: f64, place: Option<usize>) -> Result<(), CheckError> {
    let (least, most) = row.held;
    if (least..=most).contains(&got) {
        return Ok(());
    }
    let what = match place {
        Some(place) => say::of_design_at(&row.name, &(place + 1)),
        None => say::of_design(&row.name),
    };
    let unit = row.unit.said();
    Err(CheckError::Number { what, least, most, unit, got })
}

fn make_up(spec: &MakeUpSpec, number: usize) -> Result<(), CheckError> {
    let of = |field: Words| say::of_string(&field, &number);
    if spec.layers.len() > MOST_LAYERS {
        return Err(CheckError::Layers { number, got: spec.layers.len() });
    }
    short(&spec.material, || of(say::MATERIAL))?;
    short(&spec.diameter, || of(say::DIAMETER))?;
    short(&spec.bare.board, || of(say::BARE_BOARD))?;
    short(&spec.bare.pin, || of(say::BARE_PIN))?;
    for layer in &spec.layers {
        short(&layer.material, || of(say::LAYER_MATERIAL))?;
        short(&layer.size, || of(say::LAYER_SIZE))?;
        short(&layer.width, || of(say::LAYER_WIDTH))?;
        within(|| of(say::LAYER_PACKING), layer.packing_percent, PACKING_PERCENT)?;
    }
    if let Some(weighed) = &spec.weighed {
        short(&weighed.g_per_m, || of(say::MASS_PER_METRE))?;
        short(&weighed.gauge, || of(say::WEIGHED_GAUGE))?;
        short(&weighed.breaks_n, || of(say::BREAKING_LOAD))?;
    }
    Ok(())
}

fn material(spec: &MaterialSpec, number: usize) -> Result<(), CheckError> {
    let of = |field: Words| say::of_material(&field, &number);
    short(&spec.name, || of(say::NAME))?;
    for source in sources_of(spec) {
        fits(source, LONGEST_TEXT, || of(say::SOURCE))?;
    }
    material_of(spec)?;
    Ok(())
}

/// Takes control characters out of every text (a tab or a line's end becomes a space; in the
/// remarks a line's end stays), and the marks that turn the direction of writing, with which a
/// text could be made to look like another one.
pub fn tidy(design: &mut Design) {
    for text in [
        &mut design.title,
        &mut design.maker,
        &mut design.client,
        &mut design.serial,
        &mut design.date,
        &mut design.open_tuning,
    ] {
        tidy_text(text, false);
    }
    tidy_text(&mut design.remarks, true);
    tidy_text(&mut design.order.remarks, true);
    design.stock.iter_mut().for_each(tidy_item);
    for version in &mut design.versions {
        tidy_text(&mut version.name, false);
        tidy_text(&mut version.date, false);
        // One that is shared came out of a design and is tidy.
        if let Some(design) = Arc::get_mut(&mut version.design) {
            tidy(design);
        }
    }
    targets::tidy_targets(&mut design.targets);
    let shape = &mut design.geometry;
    let board = &mut shape.board;
    let soundbox = &mut shape.soundbox;
    for wood in [
        &mut shape.neck.wood,
        &mut shape.pillar.wood,
        &mut board.wood,
        &mut board.rib_wood,
        &mut soundbox.side_wood,
        &mut soundbox.back_wood,
        &mut shape.bars.wood,
        &mut shape.parts,
    ] {
        tidy_text(wood, false);
    }
    let layers = shape.neck.layers.iter_mut().map(|layer| &mut layer.wood);
    let own = shape.woods.iter_mut().flat_map(|wood| [&mut wood.key, &mut wood.name]);
    layers.chain(own).for_each(|text| tidy_text(text, false));
    for string in &mut design.strings {
        let make_up = &mut string.make_up;
        let mut texts = vec![&mut string.note, &mut string.length, &mut string.order_code];
        texts.extend([&mut make_up.material, &mut make_up.diameter]);
        texts.extend([&mut make_up.bare.board, &mut make_up.bare.pin]);
        for layer in &mut make_up.layers {
            texts.extend([&mut layer.material, &mut layer.size, &mut layer.width]);
        }
        if let Some(weighed) = &mut make_up.weighed {
            texts.extend([&mut weighed.g_per_m, &mut weighed.gauge, &mut weighed.breaks_n]);
        }
        texts.into_iter().for_each(|text| tidy_text(text, false));
    }
    for spec in &mut design.materials {
        tidy_text(&mut spec.key, false);
        tidy_text(&mut spec.name, false);
        sources_mut(spec).into_iter().for_each(|text| tidy_text(text, false));
    }
}

pub(crate) fn tidy_text(text: &mut String, lines: bool) {
    let turns =
        |c: char| matches!(c, '\u{202a}'..='\u{202e}' | '\u{2066}'..='\u{2069}' | '\u{feff}');
    let kept = |c: char| lines && c == '\n' || !c.is_control() && !turns(c);
    if !text.chars().all(kept) {
        let spaced = text.replace("\r\n", "\n");
        let spaced = spaced.chars().map(|c| match c {
            '\n' if lines => '\n',
            '\t' | '\n' | '\r' => ' ',
            c => c,
        });
        *text = spaced.filter(|c| kept(*c)).collect();
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::design::document::{GapsSpec, SparesSpec, StockItem, StringSpec};

    fn refused(change: impl Fn(&mut Design)) -> String {
        let mut design = Design { strings: vec![StringSpec::default()], ..Design::default() };
        check(&design).expect("a design of one empty string is valid");
        change(&mut design);
        check(&design).expect_err("the change breaks a limit").to_string()
    }

    #[test]
    fn a_limit_that_is_broken_is_named() {
        assert_eq!(
            refused(|d| d.pitch.a4_hz = f64::NAN),
            "the pitch of A4 must be from 1 to 10000 Hz, got NaN"
        );
        assert_eq!(
            refused(|d| d.strings = vec![StringSpec::default(); 151]),
            "a design must have at most 150 strings, got 151"
        );
        assert_eq!(
            refused(|d| d.strings[0].note = "é".repeat(201)),
            "the note of string 1 must be at most 200 characters long, got 201 (shorten it)"
        );
        assert!(refused(|d| d.allowances.turns = f64::INFINITY).starts_with("the number of turns"));
        assert!(refused(|d| d.limits.jump_percent = -1.0).contains("jump in pluck stiffness"));
        assert_eq!(
            refused(|d| d.geometry.nodes_mm = vec![(0.0, 0.0), (0.0, f64::NAN)]),
            "the place of a node along the strings (number 2) must be from -10000 to 10000 mm, got NaN"
        );
        let gaps = GapsSpec::EachMm(vec![14.0; 151]);
        let text = refused(|d| d.geometry.spacing.gaps = gaps.clone());
        assert_eq!(text, "a design must have at most 150 gaps between strings, got 151");
        assert!(refused(|d| d.geometry.pillar.wood = "x".repeat(201)).contains("of the pillar"));
        assert!(refused(|d| d.remarks = "x".repeat(4_001)).starts_with("the remarks"));
    }

    #[test]
    fn stock_and_order_keep_their_limits() {
        let with = |change: &dyn Fn(&mut StockItem)| {
            refused(|design| {
                let mut item = StockItem::default();
                change(&mut item);
                design.stock = vec![StockItem::default(), item];
            })
        };
        assert_eq!(
            with(&|item| item.price = Some(-1.0)),
            "the price of stock item 2 must be from 0 to 10000000, got -1"
        );
        assert!(with(&|item| item.price = Some(f64::NAN)).ends_with("got NaN"));
        assert!(
            with(&|item| item.pack_mm = Some(0.0)).starts_with("the pack length in mm of stock")
        );
        assert!(
            with(&|item| item.code = "x".repeat(201)).starts_with("the order code of stock item 2")
        );
        assert!(
            with(&|item| item.make_up = "x".repeat(4_001).into())
                .starts_with("the make-up of stock")
        );
        assert_eq!(
            refused(|d| d.stock = vec![StockItem::default(); 401]),
            "a design must have at most 400 stock items, got 401"
        );
        assert!(
            refused(|d| d.order.spares = SparesSpec::Percent(-1.0))
                .starts_with("the share of spares")
        );
        assert!(
            refused(|d| d.order.to_string = 10_001).starts_with("the number of the last string")
        );
        assert!(refused(|d| d.order.remarks = "x".repeat(4_001)).starts_with("the remarks of the"));
    }

    #[test]
    fn two_hundred_wide_characters_fit_a_cell() {
        let string = StringSpec { note: "é".repeat(200), ..StringSpec::default() };
        assert_eq!(check(&Design { strings: vec![string], ..Design::default() }), Ok(()));
    }

    #[test]
    fn control_characters_go_and_line_ends_stay_in_the_remarks() {
        let mut design = Design {
            title: "A\u{0}B\tC\u{202e}D\u{7f}".to_owned(),
            remarks: "one\r\ntwo\u{1b}\n".to_owned(),
            ..Design::default()
        };
        tidy(&mut design);
        assert_eq!((&*design.title, &*design.remarks), ("AB CD", "one\ntwo\n"));
        let once = design.clone();
        tidy(&mut design);
        assert_eq!(design, once);
    }
}
