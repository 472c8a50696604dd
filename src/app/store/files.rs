//! Files and links, in and out. Only the parts that open files, open links and make links name these.

use leptos::prelude::*;

use super::super::{browser, shelf};
use super::{Done, Not, Origin, Outcome, Pasted, Store, Window};
use crate::design::document::Design;
use crate::design::letters::capital;
use crate::design::table::some_of;
use crate::design::{link, persist, table};
use crate::words::page as say;

impl Store {
    /// Opens a file, a design or a table of strings, and tells how that went.
    pub fn open_text(self, name: &str, text: &str) {
        let is_table = !text.trim_start().starts_with('{');
        // What each column of anyone's table is, is looked at first.
        if is_table && text.len() <= table::MOST_BYTES && !table::is_ours(text) {
            self.pasted.set(Pasted { text: text.to_owned(), ..Pasted::default() });
            self.new_harp.way.set("measured");
            self.window.set(Some(Window::New));
            return;
        }
        let mut words = String::new();
        let opened = self.in_its_place(|| {
            let (outcome, told) = match is_table {
                true => self.begin_table(name, text),
                false => self.begin_file(name, text),
            };
            words = told;
            outcome
        });
        self.tell(opened, &words);
    }

    /// Opens the design that the address carries, and tells what was in the way.
    /// Whoever has no design of his own sees the harp as its client first.
    pub fn open_link_and_tell(self) {
        let is_sent = !browser::fragment().is_empty();
        let opened = self.open_link();
        if is_sent && opened.is_ok() && shelf::is_empty() {
            self.window.set(Some(Window::Client));
        }
        self.tell(opened, "");
    }

    /// Opens the design that the address carries, if it carries one. The address does not keep a link that
    /// was not opened.
    ///
    /// # Errors
    ///
    /// When it cannot be read, or the user does not want it: what is open stays.
    pub fn open_link(self) -> Outcome {
        let fragment = browser::fragment();
        if fragment.is_empty() {
            return Ok(Done::plain());
        }
        let opened = match link::read(&fragment) {
            Ok(design) => self.in_its_place(|| self.open(design, Origin::Link)),
            Err(error) => Err(Not::Refused(say::link_not_opened(&error))),
        };
        if opened.is_err() {
            browser::drop_fragment();
        }
        opened
    }

    /// Begins with a design from a file; the words are for when that is done.
    fn begin_file(self, name: &str, text: &str) -> (Outcome, String) {
        let opened = match persist::read(text) {
            Ok(design) => self.begin(design),
            Err(error) => Err(Not::Refused(say::not_opened(&name, &error))),
        };
        (opened, say::opened(&name))
    }

    /// Begins with a table of strings; the words are for when that is done.
    fn begin_table(self, name: &str, text: &str) -> (Outcome, String) {
        let read = match table::read(text) {
            Ok(read) => read,
            Err(errors) => {
                let first: Vec<String> =
                    errors.iter().take(3).map(|error| format!("{error}.")).collect();
                let mut why = say::not_read(&first.join(" "), &name);
                if let more @ 1.. = errors.len().saturating_sub(3) {
                    why = format!("{why} {}", say::and_more(&more));
                }
                return (Err(Not::Refused(why)), String::new());
            }
        };
        let ignored = match read.ignored.as_slice() {
            [] => String::new(),
            columns => format!(" {}", say::columns_left_out(&some_of(columns))),
        };
        let told: String = read.told.iter().map(|line| format!(" {}.", capital(line))).collect();
        let stem = name.rsplit_once('.').map_or(name, |(stem, _)| stem);
        let design = read.into_design(&Design { title: stem.to_owned(), ..Design::default() });
        let count = design.strings.len();
        (self.begin(design), format!("{}{ignored}{told}", say::read_strings(&count, &name)))
    }

    /// The address that opens this very design.
    ///
    /// # Errors
    ///
    /// A sentence, when the design does not fit a link.
    pub fn address(self) -> Result<String, String> {
        self.address_with(None)
    }

    /// The address that opens this very design and one of its versions beside it.
    ///
    /// # Errors
    ///
    /// A sentence, when they do not fit a link.
    pub fn address_with(self, version: Option<usize>) -> Result<String, String> {
        let fragment = self.design.with(|design| match version {
            Some(version) => link::write_with_version(design, version),
            None => link::write(design),
        });
        let fragment = fragment.map_err(|error| error.to_string())?;
        Ok(format!("{}#{fragment}", browser::address()))
    }
}
