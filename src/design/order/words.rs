//! The order list in words, and as a table.

use super::{NoPacks, OrderLine, OrderList, sums};
use crate::design::cells;
use crate::design::display::{decimals, trimmed};
use crate::design::document::StockItem;
use crate::design::stock::{NoItem, bundle_of, table::pack_kind};
use crate::words::papers::titled;
use crate::words::{Language, in_language, stock as say};

/// The headings of the order list.
pub const COLUMNS: [&str; 16] = [
    "supplier",
    "order_code",
    "make_up",
    "strings",
    "count",
    "spares",
    "total_length_mm",
    "pack",
    "pack_length_mm",
    "packs",
    "packs_at_least",
    "pack_price",
    "price",
    "currency",
    "remark",
    "cut_lengths_mm",
];

/// The order list as a table: [`COLUMNS`], a line for each item, then for what the stock does not have, then for strings that are nothing yet.
/// In English with decimal points, whatever the language.
pub fn csv(list: &OrderList) -> String {
    in_language(Language::English, || table(list))
}

fn table(list: &OrderList) -> String {
    let mut out = COLUMNS.join(",");
    out.push('\n');
    let text = |text: &str| cells::guarded(text.trim());
    let number = |number: Option<f64>| number.map(|number| number.to_string()).unwrap_or_default();
    for line in &list.lines {
        let item = &line.item;
        let packs = line.packs.as_ref().ok();
        let length =
            if line.without_length == 0 { line.length_mm.to_string() } else { String::new() };
        let mut notes = remarks(line);
        if line.outside.is_some() && notes.is_empty() {
            notes.push(say::OUTSIDE.into());
        }
        if !item.remark.trim().is_empty() {
            notes.push(item.remark.trim().to_owned());
        }
        push(
            &mut out,
            &[
                text(&item.supplier),
                text(&item.code),
                text(&item.make_up),
                numbers_words(&line.strings),
                line.count().to_string(),
                line.spares_mm.len().to_string(),
                length,
                if line.outside.is_none() { pack_kind(item) } else { String::new() },
                number(item.pack_mm),
                packs.map(|packs| packs.count.to_string()).unwrap_or_default(),
                packs.map(|packs| packs.at_least.to_string()).unwrap_or_default(),
                number(item.price),
                number(line.price),
                text(&item.currency),
                text(&notes.join("; ")),
                cut_words(line),
            ],
        );
    }
    if !list.unknown.is_empty() {
        let mut row: [String; COLUMNS.len()] = Default::default();
        row[3] = numbers_words(&list.unknown);
        row[4] = list.unknown.len().to_string();
        row[14] = text(&NoItem::NoMakeUp.to_string());
        push(&mut out, &row);
    }
    out
}

fn push(out: &mut String, row: &[String]) {
    for (index, cell) in row.iter().enumerate() {
        if index > 0 {
            out.push(',');
        }
        cells::push(out, cell, ',');
    }
    out.push('\n');
}

/// What the maker is to know of a line besides its figures, each without a full stop. Nothing of it is for the
/// supplier.
pub fn remarks(line: &OrderLine) -> Vec<String> {
    let mut notes = Vec::new();
    match &line.outside {
        Some(why @ NoItem::OtherMakeUp { .. }) => return vec![why.to_string()],
        Some(_) => return notes,
        None => {}
    }
    if line.item.sold_out {
        notes.push(say::SOLD_OUT.into());
    }
    let of = |numbers: &[usize]| say::strings(&numbers.len(), &numbers_words(numbers));
    if !line.out_of_range.is_empty() {
        notes.push(say::not_for_note(&of(&line.out_of_range)));
    }
    if !line.nearest.is_empty() {
        notes.push(say::not_exact(&of(&line.nearest)));
    }
    match &line.packs {
        Err(why) => notes.push(why.to_string()),
        Ok(packs) if packs.at_least < packs.count => {
            notes.push(say::coils_unsettled(&packs.count, &packs.at_least));
        }
        Ok(_) => {}
    }
    if line.item.price.is_none() {
        notes.push(say::PRICE_MISSING.into());
    }
    notes
}

/// Numbers in order as runs: `1–3, 7`.
pub fn numbers_words(numbers: &[usize]) -> String {
    let mut runs: Vec<(usize, usize)> = Vec::new();
    for number in numbers {
        match runs.last_mut() {
            Some((_, last)) if *last + 1 == *number => *last = *number,
            _ => runs.push((*number, *number)),
        }
    }
    let run = |(first, last): &(usize, usize)| match last - first {
        0 => first.to_string(),
        1 => format!("{first}, {last}"),
        _ => format!("{first}–{last}"),
    };
    runs.iter().map(run).collect::<Vec<_>>().join(", ")
}

/// The strings of a line and the whole millimetres that each is cut to, spares last: `1: 400, 2: 450, spare: 450`.
pub fn cut_words(line: &OrderLine) -> String {
    let cut = |mm: &Option<u32>| mm.map_or("—".to_owned(), |mm| mm.to_string());
    let strings = line.strings.iter().zip(&line.cuts_mm);
    let strings = strings.map(|(number, mm)| titled(&number, &cut(mm)));
    let mut words: Vec<String> = strings.collect();
    let mut spares: &[Option<u32>] = &line.spares_mm;
    while let Some(first) = spares.first() {
        let count = spares.iter().take_while(|mm| *mm == first).count();
        let times = if count == 1 { String::new() } else { format!("{count} × ") };
        words.push(say::spare(&format!("{times}{}", cut(first))));
        spares = &spares[count..];
    }
    words.join(", ")
}

/// What lines cost together, and how many of them are not in it, without a full stop:
/// `12 lines, 3 without a price: at least 84.20 EUR`. Several currencies are not added up. Lines whose price is known
/// and whose pack length is not are told apart.
pub fn sum_words(lines: &[&OrderLine]) -> String {
    let without = lines.iter().filter(|line| line.price.is_none()).count();
    let sums = sums(lines);
    let sums = sums.iter().map(|(name, sum)| money_words(*sum, name));
    let sums = sums.reduce(|sums, next| say::both(&sums, &next)).unwrap_or_default();
    let is_unmeasured =
        |line: &&&OrderLine| line.item.price.is_some() && line.packs == Err(NoPacks::PackLength);
    let unmeasured = match lines.iter().filter(is_unmeasured).count() {
        0 => None,
        count => Some(say::lack_length(&count)),
    };
    let all = say::lines(&lines.len());
    match (without, unmeasured) {
        (0, _) => say::sum(&all, &sums),
        (without, None) if without == lines.len() => say::sum_no_price(&all),
        (without, Some(why)) if without == lines.len() => say::sum_none(&all, &why),
        (without, None) => say::sum_at_least(&all, &sums, &without),
        (without, Some(why)) => say::sum_at_least_why(&all, &sums, &why, &without),
    }
}

/// How a line is sold, as [`pack_words`] has it; nothing for what the stock does not have.
pub fn sold_as(line: &OrderLine) -> String {
    if line.outside.is_none() { pack_words(&line.item) } else { String::new() }
}

/// What a pack is: `coil of 5 m`, `single, 1.5 m`, `bundle of 12`, `coil`.
pub fn pack_words(item: &StockItem) -> String {
    let metres = item.pack_mm.map(|mm| trimmed(decimals(mm / 1_000.0, 3), 0));
    match (item.single, metres) {
        (_, None) => pack_kind(item),
        (true, Some(metres)) if bundle_of(item) > 1 => say::bundle_of(&bundle_of(item), &metres),
        (true, Some(metres)) => say::single_of(&metres),
        (false, Some(metres)) => say::coil_of(&metres),
    }
}

/// A price with two decimals and its currency: `12.50 EUR`.
pub fn money_words(price: f64, currency: &str) -> String {
    format!("{} {}", decimals(price, 2), currency.trim()).trim_end().to_owned()
}
