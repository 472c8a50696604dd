//! From JSON into the types of the document.
//!
//! A text becomes a [`Value`] in [`parse`], the only parser in the program; then [`Json`] takes what a value holds
//! into what is there already, so that a field that is missing keeps its usual value. A type lists its fields in
//! `fields!` or its words in `words!`, and loops that all types share do the rest, here and in
//! [`writing`](super::writing): readers that serde derives for each type made the first screen 24 kB larger, packed.

use std::fmt;
use std::sync::Arc;

use serde::de::{Deserialize, Deserializer, Error, MapAccess, SeqAccess, Visitor};
use serde_json::{Map, Value};

use super::writing::{give_fields, give_list, give_number, give_text};
use crate::words::{Words, files as say, typed};

/// How many letters are shown of a word that is none of those that may stand there.
const WORD_SHOWN: usize = 40;

/// What stands in JSON.
pub(crate) trait Json {
    /// Takes the value into `self`. Texts are moved, not copied, so that the value is used up.
    fn take(&mut self, json: &mut Value) -> Result<(), Wrong>;

    /// Writes it at the end of a text, without any space.
    fn give(&self, out: &mut String);
}

/// Marks a field of `fields!` that must be there.
pub(crate) const NEEDED: bool = true;

/// What a field holds and should not, and where.
#[derive(Debug, Default)]
pub(crate) struct Wrong {
    /// The fields and numbers that lead to it, from the outermost: `strings, 4`.
    place: String,
    /// What must hold: `length must be text, got a number`.
    says: String,
    /// Whether the sentence begins with the name of a field, and not with what must hold.
    is_named: bool,
}

impl Wrong {
    fn new(must: impl fmt::Display, got: impl fmt::Display) -> Self {
        Self { says: say::must_be(&got, &must), ..Self::default() }
    }

    /// The same, in a field.
    fn in_field(mut self, name: &str) -> Self {
        if self.is_named || !self.place.is_empty() {
            return self.inside(name);
        }
        self.says = [name, " ", &self.says].concat();
        self.is_named = true;
        self
    }

    /// The same, in a part of a list.
    fn in_part(self, index: usize) -> Self {
        self.inside(&(index + 1).to_string())
    }

    fn inside(mut self, place: &str) -> Self {
        let between = if self.place.is_empty() { "" } else { ", " };
        self.place = [place, between, &self.place].concat();
        self
    }
}

impl fmt::Display for Wrong {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let between = match (self.place.is_empty(), self.is_named) {
            (true, _) => "",
            (false, true) => ": ",
            (false, false) => " ",
        };
        f.write_str(&self.place)?;
        f.write_str(between)?;
        f.write_str(&self.says)
    }
}

/// What a value is, in words.
const fn kind(json: &Value) -> Words {
    match json {
        Value::Null => say::KIND_NOTHING,
        Value::Bool(_) => say::KIND_TRUTH,
        Value::Number(_) => say::KIND_NUMBER,
        Value::String(_) => say::KIND_TEXT,
        Value::Array(_) => say::KIND_LIST,
        Value::Object(_) => say::KIND_FIELDS,
    }
}

/// Implements [`Json`] for a struct from the names of all its fields, in the order in which they are written. One that
/// is `NEEDED` must be there; any other keeps its usual value when it is missing. One is not written when what follows
/// its `unless` holds.
macro_rules! fields {
    ($type:ty { $($field:ident $(: $needed:ident)? $(unless $usual:expr)?),* $(,)? }) => {
        impl $crate::design::reading::Json for $type {
            fn take(&mut self, json: &mut serde_json::Value) -> Result<(), $crate::design::reading::Wrong> {
                let Self { $($field),* } = self;
                let needed = &[$(false $(|| $crate::design::reading::$needed)?),*];
                let names = &[$(stringify!($field)),*];
                $crate::design::reading::take_fields(json, needed, names, &mut [$($field),*])
            }

            fn give(&self, out: &mut String) {
                let Self { $($field),* } = self;
                let left_out = &[$(false $(|| $usual)?),*];
                let names = &[$(stringify!($field)),*];
                $crate::design::writing::give_fields(left_out, names, &[$($field),*], out);
            }
        }
    };
}

/// Implements [`Json`] for an enum without fields from the words that stand for its variants.
macro_rules! words {
    ($type:ident { $($word:literal => $variant:ident),* $(,)? }) => {
        impl $crate::design::reading::Json for $type {
            fn take(&mut self, json: &mut serde_json::Value) -> Result<(), $crate::design::reading::Wrong> {
                let at = $crate::design::reading::word(json, &[$($word),*])?;
                *self = [$(Self::$variant),*].get(at).copied().unwrap_or_default();
                Ok(())
            }

            fn give(&self, out: &mut String) {
                $crate::design::writing::give_text(match self { $(Self::$variant => $word),* }, out);
            }
        }
    };
}

pub(crate) use {fields, words};

/// Takes fields by their names, of which those that are `needed` must be there. Others are passed over.
pub(crate) fn take_fields(
    json: &mut Value,
    needed: &[bool],
    names: &[&str],
    fields: &mut [&mut dyn Json],
) -> Result<(), Wrong> {
    let Value::Object(given) = json else {
        return Err(Wrong::new(say::KIND_FIELDS, kind(json)));
    };
    for (index, (name, field)) in names.iter().zip(fields).enumerate() {
        match given.get_mut(*name) {
            Some(json) => field.take(json).map_err(|wrong| wrong.in_field(name))?,
            None if needed[index] => {
                let missing = Wrong { says: say::IS_MISSING.into(), ..Wrong::default() };
                return Err(missing.in_field(name));
            }
            None => {}
        }
    }
    Ok(())
}

/// Which of some words a value is.
pub(crate) fn word(json: &Value, words: &[&str]) -> Result<usize, Wrong> {
    let given = json.as_str();
    words.iter().position(|word| given == Some(*word)).ok_or_else(|| none_of(json, words))
}

/// Which of some words a value is, or the only field that it has, with what that field holds.
pub(crate) fn tagged(
    json: &mut Value,
    words: &[&'static str],
) -> Result<(&'static str, Value), Wrong> {
    let is_it = |word: &&&'static str| match json {
        Value::String(given) => given == **word,
        Value::Object(fields) => fields.len() == 1 && fields.contains_key(**word),
        _ => false,
    };
    let Some(word) = words.iter().find(is_it) else { return Err(none_of(json, words)) };
    Ok((word, json.get_mut(*word).map(Value::take).unwrap_or_default()))
}

fn none_of(json: &Value, words: &[&str]) -> Wrong {
    let got = match json {
        Value::String(word) => {
            let shown: String = word.chars().take(WORD_SHOWN).collect();
            ["\"", &shown, "\""].concat()
        }
        other => kind(other).into(),
    };
    let must = match words {
        [others @ .., last] if !others.is_empty() => typed::either(&others.join(", "), last),
        _ => words.concat(),
    };
    Wrong::new(must, got)
}

/// What a value holds, by itself.
pub(crate) fn taken<T: Json + Default>(json: &mut Value) -> Result<T, Wrong> {
    let mut one = T::default();
    one.take(json)?;
    Ok(one)
}

/// What the field of a [`tagged`] value holds.
pub(crate) fn held<T: Json + Default>(name: &str, json: &mut Value) -> Result<T, Wrong> {
    taken(json).map_err(|wrong| wrong.in_field(name))
}

impl Json for String {
    fn take(&mut self, json: &mut Value) -> Result<(), Wrong> {
        let Value::String(text) = json else { return Err(Wrong::new(say::KIND_TEXT, kind(json))) };
        *self = std::mem::take(text);
        Ok(())
    }

    fn give(&self, out: &mut String) {
        give_text(self, out);
    }
}

impl Json for f64 {
    fn take(&mut self, json: &mut Value) -> Result<(), Wrong> {
        *self = json.as_f64().ok_or_else(|| Wrong::new(say::KIND_NUMBER, kind(json)))?;
        Ok(())
    }

    fn give(&self, out: &mut String) {
        give_number(*self, out);
    }
}

impl Json for bool {
    fn take(&mut self, json: &mut Value) -> Result<(), Wrong> {
        *self = json.as_bool().ok_or_else(|| Wrong::new(say::KIND_TRUTH, kind(json)))?;
        Ok(())
    }

    fn give(&self, out: &mut String) {
        out.push_str(if *self { "true" } else { "false" });
    }
}

impl Json for u32 {
    fn take(&mut self, json: &mut Value) -> Result<(), Wrong> {
        *self = whole(json, Self::MAX)?;
        Ok(())
    }

    fn give(&self, out: &mut String) {
        out.push_str(&self.to_string());
    }
}

impl Json for u16 {
    fn take(&mut self, json: &mut Value) -> Result<(), Wrong> {
        *self = Self::try_from(whole(json, Self::MAX.into())?).unwrap_or_default();
        Ok(())
    }

    fn give(&self, out: &mut String) {
        out.push_str(&self.to_string());
    }
}

fn whole(json: &Value, most: u32) -> Result<u32, Wrong> {
    let number = json.as_u64().and_then(|number| u32::try_from(number).ok());
    number.filter(|number| *number <= most).ok_or_else(|| {
        let got = match json {
            Value::Number(number) => number.to_string(),
            other => kind(other).into(),
        };
        Wrong::new(say::kind_whole(&most), got)
    })
}

impl<T: Json + Default> Json for Option<T> {
    fn take(&mut self, json: &mut Value) -> Result<(), Wrong> {
        *self = if json.is_null() { None } else { Some(taken(json)?) };
        Ok(())
    }

    fn give(&self, out: &mut String) {
        match self {
            Some(held) => held.give(out),
            None => out.push_str("null"),
        }
    }
}

impl<T: Json + Default> Json for Arc<T> {
    fn take(&mut self, json: &mut Value) -> Result<(), Wrong> {
        *self = Self::new(taken(json)?);
        Ok(())
    }

    fn give(&self, out: &mut String) {
        self.as_ref().give(out);
    }
}

impl<T: Json + Default> Json for Vec<T> {
    fn take(&mut self, json: &mut Value) -> Result<(), Wrong> {
        self.clear();
        take_list(json, &mut |json| {
            self.push(taken(json)?);
            Ok(())
        })
    }

    fn give(&self, out: &mut String) {
        give_list(self.len(), &|index, out| self[index].give(out), out);
    }
}

impl Json for Value {
    fn take(&mut self, json: &mut Value) -> Result<(), Wrong> {
        *self = json.take();
        Ok(())
    }

    fn give(&self, out: &mut String) {
        match self {
            Self::Null => out.push_str("null"),
            Self::Bool(is_so) => is_so.give(out),
            Self::Number(number) => out.push_str(&number.to_string()),
            Self::String(text) => give_text(text, out),
            Self::Array(parts) => parts.give(out),
            Self::Object(fields) => {
                let (names, fields): (Vec<&str>, Vec<&dyn Json>) =
                    fields.iter().map(|(name, field)| (name.as_str(), field as &dyn Json)).unzip();
                give_fields(&vec![false; names.len()], &names, &fields, out);
            }
        }
    }
}

fn take_list(
    json: &mut Value,
    add: &mut dyn FnMut(&mut Value) -> Result<(), Wrong>,
) -> Result<(), Wrong> {
    let Value::Array(parts) = json else { return Err(Wrong::new(say::KIND_LIST, kind(json))) };
    let mut parts = parts.iter_mut().enumerate();
    parts.try_for_each(|(index, json)| add(json).map_err(|wrong| wrong.in_part(index)))
}

impl<A: Json, B: Json> Json for (A, B) {
    fn take(&mut self, json: &mut Value) -> Result<(), Wrong> {
        take_pair(json, &mut self.0, &mut self.1)
    }

    fn give(&self, out: &mut String) {
        give_list(
            2,
            &|index, out| if index == 0 { self.0.give(out) } else { self.1.give(out) },
            out,
        );
    }
}

fn take_pair(json: &mut Value, a: &mut dyn Json, b: &mut dyn Json) -> Result<(), Wrong> {
    match json.as_array_mut().map(Vec::as_mut_slice) {
        Some([one, two]) => {
            a.take(one).map_err(|wrong| wrong.in_part(0))?;
            b.take(two).map_err(|wrong| wrong.in_part(1))
        }
        Some(parts) => Err(Wrong::new(say::KIND_TWO, say::kind_list_of(&parts.len()))),
        None => Err(Wrong::new(say::KIND_TWO, kind(json))),
    }
}

/// The JSON that a text is.
///
/// # Errors
///
/// When it is none, holds a field twice, or is nested too deeply.
pub(crate) fn parse(text: &str) -> Result<Value, serde_json::Error> {
    serde_json::from_str(text).map(|Single(value)| value)
}

/// The JSON that a text begins with, whatever follows.
pub(crate) fn parse_first(text: &str) -> Option<Value> {
    let mut reader = serde_json::Deserializer::from_str(text);
    Single::deserialize(&mut reader).ok().map(|Single(value)| value)
}

/// A value no part of which has a field twice; a [`Value`] would take the last in silence.
struct Single(Value);

impl<'de> Deserialize<'de> for Single {
    fn deserialize<D: Deserializer<'de>>(from: D) -> Result<Self, D::Error> {
        from.deserialize_any(Parts).map(Self)
    }
}

struct Parts;

impl<'de> Visitor<'de> for Parts {
    type Value = Value;

    fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("JSON")
    }

    fn visit_unit<E>(self) -> Result<Value, E> {
        Ok(Value::Null)
    }

    fn visit_bool<E>(self, given: bool) -> Result<Value, E> {
        Ok(given.into())
    }

    fn visit_u64<E>(self, number: u64) -> Result<Value, E> {
        Ok(number.into())
    }

    fn visit_i64<E>(self, number: i64) -> Result<Value, E> {
        Ok(number.into())
    }

    fn visit_f64<E>(self, number: f64) -> Result<Value, E> {
        Ok(number.into())
    }

    fn visit_str<E>(self, text: &str) -> Result<Value, E> {
        Ok(text.into())
    }

    fn visit_seq<A: SeqAccess<'de>>(self, mut given: A) -> Result<Value, A::Error> {
        let mut parts = Vec::new();
        while let Some(Single(part)) = given.next_element()? {
            parts.push(part);
        }
        Ok(Value::Array(parts))
    }

    fn visit_map<A: MapAccess<'de>>(self, mut given: A) -> Result<Value, A::Error> {
        let mut fields = Map::new();
        while let Some(name) = given.next_key::<String>()? {
            if fields.contains_key(&name) {
                return Err(A::Error::custom(say::THERE_TWICE));
            }
            let Single(value) = given.next_value()?;
            fields.insert(name, value);
        }
        Ok(Value::Object(fields))
    }
}
