//! What each door begins with: good inputs, and what once went wrong.

use base64::Engine as _;
use base64::engine::general_purpose::URL_SAFE_NO_PAD;
use miniz_oxide::inflate::decompress_to_vec;
use stringloft::design::document::Design;
use stringloft::design::presets::SAMPLES;
use stringloft::design::resolve::resolve;
use stringloft::design::stock::{self, table as stock_table};
use stringloft::design::{link, persist, table};
use stringloft::engine::analysis::analyse;

use super::files;
use super::made::{Begun, TOKENS};

/// So many strings, items or lines have what is short.
const FEW: usize = 6;
/// What has fewer bytes is short as it is.
const SHORT_BYTES: usize = 6_000;

/// What inputs for a door begin with.
pub fn begun_with(door: &str) -> Begun {
    let all = || SAMPLES.iter().map(|sample| sample.design());
    let (mut short, mut whole) = match door {
        "cell" | "chart" => {
            (TOKENS.iter().map(|token| token.as_bytes().to_vec()).collect(), Vec::new())
        }
        "measured" => tables(),
        "stock" => ([FEW, 40].map(stock_of).concat(), stock_of(usize::MAX)),
        "table" => {
            let (mut short, mut whole) = tables();
            short.extend(all().map(|design| written(&few(design))));
            whole.extend(all().map(|design| written(&design)));
            (short, whole)
        }
        "link" => {
            let link = |design: Design| link::write(&design).unwrap().into_bytes();
            let older = files("tests/designs").into_iter().filter(|bytes| bytes[0] != b'{');
            let older = older.flat_map(|bytes| lines(&bytes)).filter(|line| !line.is_empty());
            let short = all().map(|design| link(few(design))).chain(older).collect();
            (short, all().map(link).collect())
        }
        "packed" => {
            let older = files("tests/designs").into_iter().filter(|bytes| bytes[0] != b'{');
            let older = older.flat_map(|bytes| lines(&bytes)).filter_map(|line| unpacked(&line));
            let (short, whole) = (all().map(few), all());
            (
                short.map(|design| text(&design)).chain(older).collect(),
                whole.map(|design| text(&design)).collect(),
            )
        }
        _ => {
            let (mut short, mut whole) =
                if door == "whole" { tables() } else { Default::default() };
            let old = files("tests/designs");
            let read = |bytes: &Vec<u8>| persist::read(std::str::from_utf8(bytes).ok()?).ok();
            short.extend(old.iter().filter_map(read).chain(all()).map(|design| text(&few(design))));
            short.extend(old.iter().filter(|bytes| bytes.len() < SHORT_BYTES).cloned());
            whole.extend(old.into_iter().chain(all().map(|design| text(&design))));
            (short, whole)
        }
    };
    let once = files(&format!("fuzz/corpus/{door}"));
    whole.extend(once.iter().cloned());
    short.extend(once.into_iter().filter(|bytes| bytes.len() < SHORT_BYTES));
    if whole.is_empty() {
        whole.clone_from(&short);
    }
    Begun { short, whole }
}

/// The tables of `tests/tables`: their first lines, and whole.
fn tables() -> (Vec<Vec<u8>>, Vec<Vec<u8>>) {
    let whole = files("tests/tables");
    let first =
        |bytes: &Vec<u8>| lines(bytes).into_iter().take(FEW).collect::<Vec<_>>().join(&b'\n');
    (whole.iter().map(first).collect(), whole)
}

fn lines(bytes: &[u8]) -> Vec<Vec<u8>> {
    bytes.split(|byte| *byte == b'\n').map(<[u8]>::to_vec).collect()
}

/// The first strings of a design.
fn few(mut design: Design) -> Design {
    design.strings.truncate(FEW);
    design
}

fn text(design: &Design) -> Vec<u8> {
    persist::write(design).into_bytes()
}

/// The text in a link of the oldest form.
fn unpacked(link: &[u8]) -> Option<Vec<u8>> {
    let bytes = URL_SAFE_NO_PAD.decode(link.strip_prefix(b"1.")?).ok()?;
    decompress_to_vec(bytes.get(4..)?).ok()
}

fn written(design: &Design) -> Vec<u8> {
    table::write(design, &analyse(&resolve(design).harp)).into_bytes()
}

/// The first items of the list that a new user has, as a file and as a table.
fn stock_of(most: usize) -> Vec<Vec<u8>> {
    let mut list = stock::starting_list();
    list.items.truncate(most);
    vec![stock::write(&list).into_bytes(), stock_table::export(&list.items).into_bytes()]
}
