//! A whole design in the fragment of an address, which no server sees.
//!
//! The form is `2.` and, in base64 for addresses, four bytes of check sum (CRC-32 of what follows)
//! and the packed text (`packing`) of the document with its strings by columns (`compact`). In form `1.`, which is
//! still read, the text is deflated by itself. A material that is
//! equal to a built-in one is only named, with the revision of the built-in list, and opens with
//! the figures of that revision; any other is written in full.

mod compact;
mod packing;

use std::sync::Arc;

use base64::Engine as _;
use base64::engine::general_purpose::URL_SAFE_NO_PAD;
use miniz_oxide::inflate::{TINFLStatus, decompress_to_vec_with_limit};
use thiserror::Error;

use self::packing::Broken;
use super::document::{Design, MaterialSpec};
use super::library;
use super::persist::{self, CheckError, MOST_MATERIALS, ReadError, check};
use super::reading::parse;
use super::sum::crc_32;
use super::writing::json_text;
use crate::words::files as say;

/// The longest fragment that is written or read, in characters.
pub const MOST_CHARACTERS: usize = 60_000;
/// The longest document that a link may hold, in bytes.
const MOST_BYTES: usize = 1 << 20;
/// The form of the link, before the point.
const FORM: u32 = 2;
/// The form before, whose text was deflated by itself.
const DEFLATED: u32 = 1;

/// The revision of the built-in list whose figures a new link names.
///
/// A figure that changes needs a new revision; the list as it was must then stay readable in
/// [`built_in_at`], so that old links open with the numbers they were made with.
pub const LIBRARY_REVISION: u64 = 4;
/// The last revision in which three sources were named by where they were quoted.
const QUOTED_REVISION: u64 = 3;
/// The last revision in which a strength of gut or plastics was the same for every diameter.
const FLAT_REVISION: u64 = 2;

/// The built-in materials as they were at a revision; `None` for one that is not known here.
pub fn built_in_at(revision: u64) -> Option<&'static [MaterialSpec]> {
    match revision {
        // Revision 2 added figures to those of revision 1 and changed none.
        1 | FLAT_REVISION => Some(library::with_flat_strengths()),
        QUOTED_REVISION => Some(library::with_sources_before()),
        LIBRARY_REVISION => Some(library::built_in()),
        _ => None,
    }
}

/// Why a design and a link cannot be had from each other.
#[derive(Clone, Debug, PartialEq, Error)]
#[non_exhaustive]
pub enum LinkError {
    /// Something else than a link.
    #[error("{}", say::no_link(&FORM))]
    NotALink,
    /// Made by a newer program.
    #[error("{}", say::LINK_TOO_NEW)]
    TooNew,
    /// The check sum does not agree.
    #[error("{}", say::LINK_ALTERED)]
    Altered,
    /// Longer than [`MOST_CHARACTERS`], or what it holds is too long.
    #[error("{}", say::link_too_large(&MOST_CHARACTERS))]
    TooLarge,
    /// As [`LinkError::TooLarge`], with a version beside the design.
    #[error("{}", say::link_two_too_large(&MOST_CHARACTERS))]
    TwoTooLarge,
    /// What the link holds is not a valid design.
    #[error("{}", say::link_unusable(.0))]
    Design(#[from] ReadError),
}

/// The fragment for a design, without the `#`. It holds the design as it is now and none of its versions.
///
/// # Errors
///
/// When the design does not fit [`MOST_CHARACTERS`].
pub fn write(design: &Design) -> Result<String, LinkError> {
    pack(&Design { versions: Vec::new(), ..design.clone() })
}

/// The fragment for a design with one of its versions, to be compared; without the `#`.
///
/// # Errors
///
/// When the two do not fit [`MOST_CHARACTERS`]. A version that is not there is left out.
pub fn write_with_version(design: &Design, version: usize) -> Result<String, LinkError> {
    let versions = design.versions.get(version).cloned().into_iter().collect();
    pack(&Design { versions, ..design.clone() }).map_err(|error| match error {
        LinkError::TooLarge => LinkError::TwoTooLarge,
        other => other,
    })
}

/// The check sum (CRC-32) of a design as it is now, without its versions: of the text that a link packs, be it
/// too large for a link or not. Fields with their usual value are not in it, so that a field that is new to the
/// document does not change the sum of a design that does not use it.
pub fn check_sum(design: &Design) -> u32 {
    crc_32(short_text(&Design { versions: Vec::new(), ..design.clone() }).as_bytes())
}

/// The text of a design as a link packs it.
fn short_text(design: &Design) -> String {
    // The text is this program's own; were it no JSON, there would be nothing to send.
    let document = parse(&persist::plain(design)).unwrap_or_default();
    json_text(&compact::squeeze(document))
}

fn pack(design: &Design) -> Result<String, LinkError> {
    let text = short_text(design);
    if text.len() > MOST_BYTES {
        return Err(LinkError::TooLarge);
    }
    let packed = packing::packed(&text);
    let mut bytes = crc_32(&packed).to_be_bytes().to_vec();
    bytes.extend(packed);
    let fragment = format!("{FORM}.{}", URL_SAFE_NO_PAD.encode(bytes));
    if fragment.len() > MOST_CHARACTERS { Err(LinkError::TooLarge) } else { Ok(fragment) }
}

/// The design that a fragment holds, with or without the `#` or the address before it.
///
/// # Errors
///
/// When the text is no link, was made by a newer program, cut off or altered, is too large, or
/// holds what is not a valid design.
pub fn read(text: &str) -> Result<Design, LinkError> {
    let fragment = text.rsplit_once('#').map_or(text, |(_, fragment)| fragment).trim();
    if fragment.len() > MOST_CHARACTERS {
        return Err(LinkError::TooLarge);
    }
    let (form, rest) = fragment.split_once('.').ok_or(LinkError::NotALink)?;
    let form_is = form.parse::<u32>();
    match form_is {
        Ok(FORM | DEFLATED) if form.len() == 1 => {}
        Ok(newer) if newer > FORM && form.len() < 4 => return Err(LinkError::TooNew),
        _ => return Err(LinkError::NotALink),
    }
    let bytes = URL_SAFE_NO_PAD.decode(rest).map_err(|_| LinkError::Altered)?;
    let (sum, packed) = bytes.split_first_chunk::<4>().ok_or(LinkError::Altered)?;
    if crc_32(packed) != u32::from_be_bytes(*sum) {
        return Err(LinkError::Altered);
    }
    let text = match form_is {
        Ok(DEFLATED) => decompress_to_vec_with_limit(packed, MOST_BYTES).map_err(|error| {
            let large = error.status == TINFLStatus::HasMoreOutput;
            if large { LinkError::TooLarge } else { LinkError::Altered }
        })?,
        _ => packing::unpacked(packed, MOST_BYTES).map_err(|broken| match broken {
            Broken::TooLarge => LinkError::TooLarge,
            Broken::Altered => LinkError::Altered,
        })?,
    };
    let text = String::from_utf8(text).map_err(|_| LinkError::Altered)?;
    let document = parse(&text).map_err(|_| LinkError::Altered)?;
    let (document, named, named_in_versions) = compact::expand(document);
    let mut design = persist::read(&json_text(&document))?;
    materials(&mut design, &named)?;
    for (version, named) in design.versions.iter_mut().zip(&named_in_versions) {
        materials(Arc::make_mut(&mut version.design), named)?;
    }
    check(&design).map_err(ReadError::from)?;
    Ok(design)
}

/// Puts the materials in the order of the link, those that it only names as they were at its
/// revision of the built-in list.
fn materials(design: &mut Design, named: &compact::Named) -> Result<(), LinkError> {
    let built_in = built_in_at(named.revision).ok_or(LinkError::TooNew)?;
    let (got, most) = (named.keys.len(), MOST_MATERIALS);
    if got > most {
        return Err(ReadError::from(CheckError::Many { what: say::MATERIALS, most, got }).into());
    }
    let mut read = std::mem::take(&mut design.materials);
    for (key, is_built_in) in &named.keys {
        let own = read.iter().position(|spec| spec.key == *key).map(|at| read.remove(at));
        let spec =
            if *is_built_in { built_in.iter().find(|spec| spec.key == *key).cloned() } else { own };
        design.materials.push(spec.ok_or(LinkError::TooNew)?);
    }
    design.materials.append(&mut read);
    Ok(())
}
