//! A text as rows of cells, whatever stands between them: tabs, semicolons, bars, commas, dashes or runs of
//! blanks. Without any of these a row is a line as people write it: note, length, string.

use super::cells::{self, Row};
use super::headings;
use super::measured_cell::is_missing;
use super::notes::Name;
use crate::design::heading::bare;
use crate::design::letters::small;
use crate::design::typed;

/// How many lines are looked at for what stands between cells.
const LOOKED_AT: usize = 200;
/// The most words that one length may have: `2 ft 3 1/4 in`.
const LENGTH_WORDS: usize = 6;
/// The most ways in which the commas of a line are tried.
const MOST_WAYS: usize = 64;

/// The most cells of a row that are looked at: more than the strings of a harp, which may stand side by side.
pub(super) const MOST_CELLS: usize = 200;

/// The rows of a text that are not empty.
pub(super) struct Sheet {
    pub(super) rows: Vec<Row>,
    /// Whether a row had more cells than [`MOST_CELLS`].
    pub(super) is_cut: bool,
    /// Whether its lines were cut as people write them: number, note, length and string, in this order.
    pub(super) is_lines: bool,
}

impl Sheet {
    pub(super) fn of(text: &str) -> Self {
        let text = text.trim_start_matches('\u{feff}');
        let Some(between) = between(text) else {
            return Self { rows: lines(text), is_cut: false, is_lines: true };
        };
        let mut rows = cut(text, between);
        let is_cut = rows.iter().any(|row| row.cells.len() > MOST_CELLS);
        for row in &mut rows {
            row.cells.truncate(MOST_CELLS);
            let is_bar = between == '|' && row.cells.first().is_some_and(String::is_empty);
            row.cells.drain(..usize::from(is_bar));
            for cell in &mut row.cells {
                *cell = cells::unguarded(cell.trim()).trim().to_owned();
            }
        }
        // A row with nothing, or nothing but lines drawn with signs.
        let is_drawn = |cell: &String| cell.chars().all(|c| "-=_:+".contains(c)) && cell.len() != 1;
        rows.retain(|row| !row.cells.iter().all(is_drawn));
        if between == ',' {
            join_decimals(&mut rows);
        }
        Self { rows: standing(stacked(rows)), is_cut, is_lines: false }
    }
}

/// What stands between cells; two blanks stand for a run of them, a dash for one between blanks.
fn between(text: &str) -> Option<char> {
    let lines =
        || text.lines().map(str::trim_end).filter(|line| !line.trim().is_empty()).take(LOOKED_AT);
    let count = lines().count();
    let is_cut = |between: char| {
        let cut = lines().filter(|line| match between {
            ',' => is_cut_by_comma(line),
            ' ' => line.trim().contains("  "),
            '–' => line.contains(" – ") || line.contains(" — "),
            _ => line.contains(between),
        });
        2 * cut.count() > count
    };
    ['\t', ';', '|', ',', '–', ' '].into_iter().find(|between| is_cut(*between))
}

/// Whether the commas of a line stand between cells; a single one may be that of a decimal.
fn is_cut_by_comma(line: &str) -> bool {
    let mut parts = line.split(',');
    let (Some(first), Some(second)) = (parts.next(), parts.next()) else { return false };
    if parts.next().is_some() {
        return true;
    }
    let digits = |c: char| c.is_ascii_digit();
    let last = first.rsplit(|c: char| c.is_whitespace()).next().unwrap_or_default();
    let is_decimal = second.starts_with(digits) && !last.is_empty() && last.chars().all(digits);
    !is_decimal && !second.trim().is_empty()
}

fn cut(text: &str, between: char) -> Vec<Row> {
    let by = |split: fn(&str) -> Vec<String>| {
        let numbered = text.lines().zip(1..);
        numbered.map(|(line, number)| Row { line: number, cells: split(line) }).collect()
    };
    match between {
        ' ' => by(|line| {
            let cells = line.trim().split("  ").map(str::trim).filter(|cell| !cell.is_empty());
            cells.map(str::to_owned).collect()
        }),
        '–' => by(|line| {
            let cells = line.split(" – ").flat_map(|part| part.split(" — "));
            cells.map(str::to_owned).collect()
        }),
        _ => match cells::rows(text, between) {
            // A quote that closes on another line was an inch mark or a ditto.
            Ok(rows)
                if rows.iter().all(|row| row.cells.iter().all(|cell| !cell.contains('\n'))) =>
            {
                rows
            }
            _ => {
                let numbered = text.lines().zip(1..);
                let cells = |line: &str| line.split(between).map(str::to_owned).collect();
                numbered.map(|(line, number)| Row { line: number, cells: cells(line) }).collect()
            }
        },
    }
}

/// Puts decimals together whose commas were taken for those between cells, where that can be done in one way.
fn join_decimals(rows: &mut [Row]) {
    let wide = |row: &Row| row.cells.iter().filter(|cell| !cell.is_empty()).count();
    let Some(width) = rows.iter().find(|row| headings::known(&row.cells) > 1).map(wide) else {
        return;
    };
    for row in rows.iter_mut().filter(|row| row.cells.len() > width) {
        let mut ways = Vec::new();
        ways_to_join(&row.cells, width, &mut Vec::new(), &mut ways);
        if let [way] = &mut ways[..] {
            row.cells = std::mem::take(way);
        }
    }
}

fn digits(cell: &str) -> bool {
    !cell.is_empty() && cell.bytes().all(|byte| byte.is_ascii_digit())
}

/// How many pairs of cells can be joined at most.
fn most_joined(rest: &[String]) -> usize {
    let (mut count, mut at) = (0, 1);
    while at < rest.len() {
        let is_pair = digits(&rest[at - 1]) && digits(&rest[at]);
        count += usize::from(is_pair);
        at += 1 + usize::from(is_pair);
    }
    count
}

fn ways_to_join(
    rest: &[String],
    width: usize,
    done: &mut Vec<String>,
    ways: &mut Vec<Vec<String>>,
) {
    let over = rest.len() + done.len();
    // So every step leads to a way, and a line of digits alone is not tried for ever.
    if over < width || over - width > most_joined(rest) || ways.len() > MOST_WAYS {
        return;
    }
    match rest {
        [] => ways.extend((done.len() == width).then(|| done.clone())),
        _ if over == width => {
            ways.push(done.iter().chain(rest).cloned().collect());
        }
        [first, second, after @ ..] if digits(first) && digits(second) => {
            done.push(format!("{first},{second}"));
            ways_to_join(after, width, done, ways);
            done.pop();
            done.push(first.clone());
            ways_to_join(&rest[1..], width, done, ways);
            done.pop();
        }
        [first, after @ ..] => {
            done.push(first.clone());
            ways_to_join(after, width, done, ways);
            done.pop();
        }
    }
}

/// A table whose headings stand twice beside each other, with its right half below the left one.
fn stacked(rows: Vec<Row>) -> Vec<Row> {
    let filled = |cells: &[String]| -> Vec<String> {
        cells.iter().filter(|cell| !cell.is_empty()).map(|cell| small(cell)).collect()
    };
    let half = rows.iter().find_map(|row| {
        let all = filled(&row.cells);
        let (left, right) = all.split_at(all.len() / 2);
        if left.len() < 2 || left != right || headings::known(&row.cells) < 2 {
            return None;
        }
        (1..row.cells.len())
            .find(|at| filled(&row.cells[*at..]) == right && !row.cells[*at].is_empty())
    });
    let Some(half) = half else { return rows };
    let part = |row: &Row, from: usize, to: usize| Row {
        line: row.line,
        cells: row.cells.iter().skip(from).take(to - from).cloned().collect(),
    };
    let left: Vec<Row> = rows.iter().map(|row| part(row, 0, half)).collect();
    let right = rows.iter().map(|row| part(row, half, usize::MAX));
    left.into_iter().chain(right).filter(|row| row.cells.iter().any(|c| !c.is_empty())).collect()
}

/// A table that lies on its side, its headings below each other, stood up.
fn standing(rows: Vec<Row>) -> Vec<Row> {
    let width = rows.iter().map(|row| row.cells.len()).max().unwrap_or(0);
    let first: Vec<String> = rows.iter().filter_map(|row| row.cells.first().cloned()).collect();
    let lies = width > rows.len()
        && headings::known(&first) >= 2
        && rows.first().is_some_and(|row| headings::known(&row.cells) <= 1);
    if !lies {
        return rows;
    }
    let column = |at: usize| Row {
        line: at + 1,
        cells: rows.iter().map(|row| row.cells.get(at).cloned().unwrap_or_default()).collect(),
    };
    (0..width).map(column).collect()
}

/// What a line of words holds.
fn lines(text: &str) -> Vec<Row> {
    let filled = text.lines().zip(1..).filter(|(line, _)| !line.trim().is_empty());
    let words: Vec<(usize, Vec<&str>)> =
        filled.map(|(line, number)| (number, line.split_whitespace().collect())).collect();
    // A number before everything else, rising or falling by one.
    let number = |words: &[&str]| words.first().and_then(|word| word.parse::<i32>().ok());
    let steps = words.windows(2).filter(|pair| {
        let (one, other) = (number(&pair[0].1), number(&pair[1].1));
        one.zip(other).is_some_and(|(one, other)| (one - other).abs() == 1)
    });
    let mostly = 2 * steps.count() > words.len() && words.len() > 3;
    let enough = |words: &[&str]| words.len() > 1;
    words
        .iter()
        .map(|(line, words)| {
            let counted = mostly && enough(words) && number(words).is_some();
            Row { line: *line, cells: cells_of(words, counted).to_vec() }
        })
        .collect()
}

/// `7. A4 24 1/8 in gut 0.90`: number, note, length, string.
fn cells_of(words: &[&str], counted: bool) -> [String; 4] {
    let mut cells: [String; 4] = Default::default();
    let mut words = words;
    let is_counted = |word: &str| {
        let digits = word.trim_end_matches(['.', ')', ':']);
        digits.len() < word.len() && digits.parse::<u16>().is_ok()
    };
    if words.len() > 1 && (counted || is_counted(words[0])) {
        words[0].trim_end_matches(['.', ')', ':']).clone_into(&mut cells[0]);
        words = &words[1..];
    }
    let is_hz =
        words.len() > 1 && typed::pitch(&words[..2].join(" ")).is_ok() && small(words[1]) == "hz";
    let noted = if is_hz {
        2
    } else {
        // `5th octave E` has three words.
        let reads = |count: &usize| Name::read(&words[..*count].join(" ")).is_some();
        (1..=words.len().min(3))
            .rev()
            .find(|count| words[*count - 1] != "b" && reads(count))
            .unwrap_or(0)
    };
    cells[1] = words[..noted].join(" ");
    words = &words[noted..];
    let length = |count: &usize| {
        let text = words[..*count].join(" ");
        is_missing(&text) || typed::length(&text).is_ok() || bare(&text).is_some()
    };
    let taken = (1..=words.len().min(LENGTH_WORDS)).rev().find(length).unwrap_or_else(|| {
        // Kept where the sentence about it will stand.
        usize::from(
            words.first().is_some_and(|word| word.starts_with(|c: char| c.is_ascii_digit())),
        )
    });
    cells[2] = words[..taken].join(" ");
    cells[3] = words[taken..].join(" ");
    cells
}
