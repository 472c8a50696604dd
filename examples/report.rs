//! Prints the string table of a design file or of a plain table, for scripts and checks:
//! `cargo run --release --example report -- FILE`.

use std::fs::File;
use std::io::{Read, Write, stderr, stdout};
use std::process::ExitCode;

use stringloft::design::advice::caution;
use stringloft::design::table::report::{aged, cut, cut_told, falls, frame, report};
use stringloft::design::table::{INPUT_COLUMNS, MOST_BYTES};

const HELP: &str = "\
Prints the string table of a harp as CSV, with every figure of every string.

usage: report [--findings] [--frame | --giving | --years | --parts] [--likely] FILE

FILE        a design that Stringloft saved (JSON), or a table of measurements: any columns in any
            order, with headings or without; the error output says what each was taken for
--likely    takes numbers without a unit for what they look like, such as lengths in inches; else
            such a column is left out
--frame     prints instead what the frame carries, cut by cut, and the share of its allowable
            stress that each part takes
--giving    prints instead how far each string falls as the frame flexes during stringing, in three
            orders of stringing
--years     prints instead what the years and the seasons do to each string, and to the harp
--parts     prints instead the parts of the harp for the saw: rough and finished sizes, how they lie on
            boards and sheets, what is counted, weight and balance
--findings  also prints the findings on the strings, on the error output
--help      prints this
";

/// What is printed instead of the string table.
type Instead = fn(&str, bool) -> Result<String, Vec<String>>;

/// What the exit code says.
const UNREADABLE: u8 = 2;

fn main() -> ExitCode {
    let (mut findings, mut likely) = (false, false);
    let mut instead: Option<Instead> = None;
    let mut of_parts = false;
    let mut files = Vec::new();
    for argument in std::env::args_os().skip(1) {
        match argument.to_str() {
            Some("--help" | "-h") => return help(),
            Some("--findings") => findings = true,
            Some("--frame") => instead = Some(frame),
            Some("--giving") => instead = Some(falls),
            Some("--years") => instead = Some(aged),
            Some("--parts") => {
                instead = Some(cut);
                of_parts = true;
            }
            Some("--likely") => likely = true,
            Some(option) if option.starts_with("--") => {
                return fail(&[format!("there is no option {option} (--help tells the options)")]);
            }
            _ => files.push(argument),
        }
    }
    let [file] = &files[..] else {
        return fail(&[format!("one file must be given, got {} (--help tells how)", files.len())]);
    };
    let name = file.to_string_lossy();
    let at_file = |what: String| format!("{name}: {what}");
    let text = match text_of(file) {
        Ok(text) => text,
        Err(error) => return fail(&[at_file(error)]),
    };
    if let Some(instead) = instead {
        return match instead(&text, likely) {
            Ok(csv) => {
                let told = if of_parts { cut_told(&text, likely) } else { Ok(Vec::new()) };
                say(&told.unwrap_or_default());
                say(&[caution().to_owned()]);
                print(&csv)
            }
            Err(errors) => fail(&errors.into_iter().map(at_file).collect::<Vec<_>>()),
        };
    }
    match report(&text, likely) {
        Ok(report) => {
            let ignored =
                report.ignored.iter().map(|heading| format!("column \"{heading}\" is not used"));
            let said = if findings { report.findings } else { Vec::new() };
            let mut notes: Vec<String> =
                report.told.into_iter().chain(ignored).chain(said).map(at_file).collect();
            if findings {
                notes.push(caution().to_owned());
            }
            say(&notes);
            print(&report.csv)
        }
        Err(errors) => fail(&errors.into_iter().map(at_file).collect::<Vec<_>>()),
    }
}

/// The text of a file, read no further than a table may be long.
fn text_of(file: &std::ffi::OsStr) -> Result<String, String> {
    let file = File::open(file).map_err(|error| format!("the file cannot be opened: {error}"))?;
    let mut bytes = Vec::new();
    let most = MOST_BYTES as u64 + 1;
    file.take(most)
        .read_to_end(&mut bytes)
        .map_err(|error| format!("the file cannot be read: {error}"))?;
    String::from_utf8(bytes)
        .map_err(|_| "the file must be text in UTF-8 (save it as CSV UTF-8 or as JSON)".to_owned())
}

fn help() -> ExitCode {
    let columns = INPUT_COLUMNS.join(", ");
    print(&format!(
        "{HELP}\nheadings that are read to the letter: {columns}, and wrap1_material, wrap1_mm, \
         wrap1_width_mm, wrap1_packing_percent to wrap3_…; any order, not all are needed\n\n{}\n",
        caution()
    ))
}

fn print(text: &str) -> ExitCode {
    match stdout().write_all(text.as_bytes()) {
        Ok(()) => ExitCode::SUCCESS,
        Err(_) => ExitCode::FAILURE,
    }
}

/// Tells the person at the terminal; what cannot be told is no failure of the table.
fn say(lines: &[String]) {
    for line in lines {
        let _ = writeln!(stderr(), "{line}");
    }
}

fn fail(lines: &[String]) -> ExitCode {
    say(lines);
    ExitCode::from(UNREADABLE)
}
