//! What is ordered and what was kept: stock items, the settings of the order list, versions.

use std::ops::Deref;
use std::sync::Arc;

use serde::{Serialize, Serializer};
use serde_json::Value;

use super::{Design, MakeUpSpec};
use crate::design::make_up_text::{self, MakeUpTextError};
use crate::design::reading::{Json, Wrong, fields, held, tagged, taken};
use crate::design::writing::{give_tagged, give_text};

/// A make-up as it was typed, with what it reads as. It is read once, when it comes in; in a file it is the text.
#[derive(Clone, Debug, PartialEq)]
pub struct TypedMakeUp(Arc<(String, Result<MakeUpSpec, MakeUpTextError>)>);

impl TypedMakeUp {
    /// What was typed.
    pub fn text(&self) -> &str {
        &self.0.0
    }

    /// What it reads as.
    ///
    /// # Errors
    ///
    /// Why it is no make-up.
    pub fn read(&self) -> Result<&MakeUpSpec, &MakeUpTextError> {
        self.0.1.as_ref()
    }
}

impl Default for TypedMakeUp {
    fn default() -> Self {
        String::new().into()
    }
}

impl From<String> for TypedMakeUp {
    fn from(text: String) -> Self {
        let read = make_up_text::read(&text);
        Self(Arc::new((text, read)))
    }
}

impl From<&str> for TypedMakeUp {
    fn from(text: &str) -> Self {
        text.to_owned().into()
    }
}

impl From<MakeUpSpec> for TypedMakeUp {
    fn from(make_up: MakeUpSpec) -> Self {
        Self(Arc::new((make_up_text::write(&make_up), Ok(make_up))))
    }
}

impl Deref for TypedMakeUp {
    type Target = str;

    fn deref(&self) -> &str {
        self.text()
    }
}

impl Serialize for TypedMakeUp {
    fn serialize<S: Serializer>(&self, to: S) -> Result<S::Ok, S::Error> {
        self.text().serialize(to)
    }
}

impl Json for TypedMakeUp {
    fn take(&mut self, json: &mut Value) -> Result<(), Wrong> {
        *self = taken::<String>(json)?.into();
        Ok(())
    }

    fn give(&self, out: &mut String) {
        give_text(self, out);
    }
}

/// A string or a wire that can be bought.
#[derive(Clone, Debug, Default, PartialEq, Serialize)]
pub struct StockItem {
    /// What tells it from others of its list, whatever else of it changes; strings that were taken from the stock name
    /// it. 0 where it has none yet: see [`give_keys`](crate::design::stock::give_keys).
    #[serde(skip_serializing_if = "is_zero")]
    pub key: u16,
    /// What it is, in the one-line notation of a make-up: `nylon 0.81`.
    pub make_up: TypedMakeUp,
    /// The supplier's code.
    #[serde(skip_serializing_if = "String::is_empty")]
    pub code: String,
    /// Who sells it.
    #[serde(skip_serializing_if = "String::is_empty")]
    pub supplier: String,
    /// Whether a pack holds one string, and not wire to cut strings from.
    #[serde(skip_serializing_if = "is_false")]
    pub single: bool,
    /// How many strings a pack of single strings holds, where it is a bundle; 0 and 1 stand for one.
    #[serde(skip_serializing_if = "is_nought")]
    pub bundle: u32,
    /// How much string is in a pack, or how long each single string is; none where it is not known.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub pack_mm: Option<f64>,
    /// Price of a pack; none where it is not known.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub price: Option<f64>,
    /// In which currency, as typed; in a list, empty for the currency of the list.
    #[serde(skip_serializing_if = "String::is_empty")]
    pub currency: String,
    /// Whether it cannot be had now.
    #[serde(skip_serializing_if = "is_false")]
    pub sold_out: bool,
    /// The lowest note that it is sold for; empty for any.
    #[serde(skip_serializing_if = "String::is_empty")]
    pub lowest: String,
    /// The highest note that it is sold for; empty for any.
    #[serde(skip_serializing_if = "String::is_empty")]
    pub highest: String,
    /// A remark.
    #[serde(skip_serializing_if = "String::is_empty")]
    pub remark: String,
}

fields!(StockItem {
    key unless is_zero(key),
    make_up,
    code unless code.is_empty(),
    supplier unless supplier.is_empty(),
    single unless is_false(single),
    bundle unless is_nought(bundle),
    pack_mm unless pack_mm.is_none(),
    price unless price.is_none(),
    currency unless currency.is_empty(),
    sold_out unless is_false(sold_out),
    lowest unless lowest.is_empty(),
    highest unless highest.is_empty(),
    remark unless remark.is_empty(),
});

/// How the order list is made.
#[derive(Clone, Debug, Default, PartialEq, Serialize)]
pub struct OrderSpec {
    /// What is ordered beyond what the harp takes.
    pub spares: SparesSpec,
    /// The first string that spares are ordered for; 0 for string 1.
    pub from_string: u32,
    /// The last string that spares are ordered for; 0 for the lowest.
    pub to_string: u32,
    /// Remarks, for the supplier.
    pub remarks: String,
}

fields!(OrderSpec { spares, from_string, to_string, remarks });

/// What is ordered beyond what the harp takes.
#[derive(Clone, Copy, Debug, Default, PartialEq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum SparesSpec {
    /// Nothing.
    #[default]
    None,
    /// One of each stock item, as long as the longest string of it.
    OneOfEachItem,
    /// One for each string.
    OneOfEachString,
    /// A share of the strings of each stock item, rounded up, as long as the longest of them.
    Percent(f64),
}

impl Json for SparesSpec {
    fn take(&mut self, json: &mut Value) -> Result<(), Wrong> {
        let words = ["none", "one_of_each_item", "one_of_each_string", "percent"];
        let (kind, mut share) = tagged(json, &words)?;
        *self = match kind {
            "none" => Self::None,
            "one_of_each_item" => Self::OneOfEachItem,
            "one_of_each_string" => Self::OneOfEachString,
            _ => Self::Percent(held(kind, &mut share)?),
        };
        Ok(())
    }

    fn give(&self, out: &mut String) {
        match self {
            Self::None => give_text("none", out),
            Self::OneOfEachItem => give_text("one_of_each_item", out),
            Self::OneOfEachString => give_text("one_of_each_string", out),
            Self::Percent(share) => give_tagged("percent", share, out),
        }
    }
}

/// A design as it was when it was kept.
#[derive(Clone, Debug, Default, PartialEq, Serialize)]
pub struct VersionSpec {
    /// What its maker calls it.
    pub name: String,
    /// A date, as typed.
    pub date: String,
    /// Its strings and settings; it holds no versions itself. Shared, as every step of undo has it.
    #[serde(serialize_with = "shared")]
    pub design: Arc<Design>,
}

fields!(VersionSpec { name, date, design });

impl OrderSpec {
    /// Whether nothing was set.
    pub fn is_usual(&self) -> bool {
        *self == Self::default()
    }
}

pub(super) fn is_zero(key: &u16) -> bool {
    *key == 0
}

#[expect(clippy::trivially_copy_pass_by_ref, reason = "the macro of serde asks for a reference")]
fn is_nought(count: &u32) -> bool {
    *count == 0
}

fn is_false(flag: &bool) -> bool {
    !*flag
}

fn shared<S: Serializer>(design: &Arc<Design>, to: S) -> Result<S::Ok, S::Error> {
    design.as_ref().serialize(to)
}
