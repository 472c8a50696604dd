//! The folder that is served: `index.html` and every file it asks for.

use std::fs;
use std::path::{Path, PathBuf};

use base64::Engine;
use base64::prelude::BASE64_STANDARD;
use sha2::{Digest, Sha256};

use crate::markup::{lean_script, lean_style, links};
use crate::{Failure, How, licences, module};

const KEEP: &str = "src/shell/keep.js";
const BOOT: &str = "src/shell/boot.js";
const KEEP_MORE: &str = "src/shell/keep-more.js";
const EAR: &str = "src/shell/ear.js";
const OFFLINE: &str = "src/shell/offline.js";
const FAULT: &str = "src/shell/fault.js";
const HEARING: &str = "src/shell/hearing.js";
/// How it names its module.
const HEARING_MODULE: &str = "{hearing.wasm}";
/// What is asked for when the first screen stands, in one file.
const LATER: [&str; 2] = ["style/later.css", "style/print.css"];
/// The catalogues, a folder for each language.
const WORDS: &str = "src/words";
/// The languages beside English that the page offers, if they lack nothing.
const LANGUAGES: &[&str] = &["de", "fr"];
/// What stands in the page for the version until all files are known.
const BUILD: &str = "{build}";

/// Builds the page into a folder. What stood there goes only when all is done.
///
/// # Errors
///
/// When a source is missing or the program cannot be built.
pub fn build(folder: &Path, how: How) -> Result<(), Failure> {
    let How { debug, named } = how;
    let module = module::make(debug, named)?;
    let staging = folder.with_extension("new");
    let _ = fs::remove_dir_all(&staging);
    fs::create_dir_all(&staging)?;
    let mut out = Out { folder: staging.clone(), first: Vec::new(), later: Vec::new() };

    let mut script = module.script;
    for part in &module.parts {
        let name = out.put_later(&part.name, extension(&part.placeholder), &part.bytes)?;
        script = script.replace(&format!("\"{}\"", part.placeholder), &format!("\"./{name}\""));
    }
    let script = if debug { script } else { lean_script(&script) };
    let js = out.put("stringloft", "js", script.as_bytes())?;
    let wasm = out.put("stringloft", "wasm", &module.first)?;

    let mut reader = Vec::new();
    for (name, _) in &out.later {
        if name.starts_with("files-") || name.starts_with("shared-") {
            reader.push(format!("./{name}"));
        }
    }
    let reader = reader.join(" ");
    let sums = [&js, &wasm].map(|name| out.sum_of(name)).join(" ");
    // What starts the program also opens what is kept, and in a release build it starts the service worker.
    let boot = read(KEEP)? + &read(BOOT)? + &if debug { String::new() } else { read(OFFLINE)? };
    let boot = out.put("boot", "js", lean(boot, debug).as_bytes())?;
    let fault = out.put_later("fault", "js", lean(read(FAULT)?, debug).as_bytes())?;

    let more = out.put_later("keep-more", "js", lean(read(KEEP_MORE)?, debug).as_bytes())?;

    let styles = LATER.map(|file| style(file, debug)).into_iter().collect::<Result<Vec<_>, _>>()?;
    let later = out.put_later("later", "css", &styles.concat())?;

    let mut packs = Vec::new();
    let english = catalogue::read(&Path::new(WORDS).join("en"))?;
    for code in LANGUAGES {
        let other = catalogue::read(&Path::new(WORDS).join(code))?;
        // One that lacks a message is not offered.
        if let Ok(pack) = catalogue::pack(&english, &other, true) {
            packs.push(format!(
                "{code}=./{}",
                out.put_later(&format!("words-{code}"), "txt", pack.as_bytes())?
            ));
        }
    }
    // Fetched in the same way, by the window that shows them.
    let name = out.put_later("licences", "txt", licences::collect()?.as_bytes())?;
    packs.push(format!("licences=./{name}"));
    // What plays sound and its worker, one script, whose address the program takes from there.
    let (binding, module) = module::make_hearing(debug)?;
    let name = out.put_later("hearing", "wasm", &module)?;
    let hearing = binding + "\n" + &read(HEARING)?.replace(HEARING_MODULE, &format!("./{name}"));
    let name = out.put_later("hearing", "js", lean(hearing, debug).as_bytes())?;
    packs.push(format!("hearing=./{name}"));
    // What hears the microphone.
    let name = out.put_later("ear", "js", lean(read(EAR)?, debug).as_bytes())?;
    packs.push(format!("ear=./{name}"));
    let packs = packs.join(" ");
    // Where the messages of the scripts stand in a pack, behind its first line.
    let told = 1 + catalogue::place_of(&english, "shell");

    let html = read("index.html")?;
    let mut page = html.clone();
    for link in links(&html)? {
        let tag = match link.kind {
            "rust" => format!(
                "<link rel=\"modulepreload\" href=\"./{js}\">\
                 <link rel=\"preload\" href=\"./{wasm}\" as=\"fetch\" type=\"application/wasm\" crossorigin=\"anonymous\">\
                 <script type=\"module\" src=\"./{boot}\" data-build=\"{BUILD}\" data-js=\"./{js}\" data-wasm=\"./{wasm}\" data-sums=\"{sums}\" data-link=\"{reader}\" data-fault=\"./{fault}\" data-more=\"./{more}\" data-later=\"./{later}\" data-words=\"{packs}\" data-first=\"{told}\"></script>"
            ),
            // It has been written above, and boot.js asks for it when the first screen stands.
            "css" if LATER.contains(&link.file) => String::new(),
            "css" => {
                let name = out.put(stem(link.file), "css", &style(link.file, debug)?)?;
                format!("<link rel=\"stylesheet\" href=\"./{name}\">")
            }
            "icon" => {
                let name = out.put(stem(link.file), extension(link.file), &fs::read(link.file)?)?;
                format!("<link rel=\"icon\" href=\"./{name}\">")
            }
            // They have got names of their own above.
            "copy-file" if [BOOT, FAULT, KEEP_MORE].contains(&link.file) => String::new(),
            "copy-file" => {
                out.copy(link.file)?;
                String::new()
            }
            other => {
                return Err(
                    format!("index.html asks for a {other}, which is not known here").into()
                );
            }
        };
        page = page.replace(link.tag, &tag);
    }
    let worker = lean(read("src/shell/sw.js")?, debug);
    let build = out.version(&page, &worker);
    let page = page.replace(BUILD, &build);
    fs::write(staging.join("index.html"), &page)?;
    if !debug {
        out.first.push(("".to_owned(), sum(page.as_bytes())));
        let (first, later) = (list("FILES", &out.first), list("PARTS", &out.later));
        let worker = format!("const VERSION = \"{build}\";\n{first}{later}{worker}");
        fs::write(staging.join("sw.js"), worker)?;
    }
    let _ = fs::remove_dir_all(folder);
    fs::rename(&staging, folder)?;
    Ok(())
}

/// The files of a build with their sums, as the service worker reads them: a star stands for the sum's begin, as the name
/// of most files holds it.
fn list(name: &str, files: &[(String, String)]) -> String {
    let line = |(file, sum): &(String, String)| {
        let sum = sum.strip_prefix(SUM_OF).unwrap_or(sum);
        let begin = BASE64_STANDARD.decode(sum).map(|bytes| hex(&bytes)).unwrap_or_default();
        let file = if begin.is_empty() { file.clone() } else { file.replace(&begin, "*") };
        format!("{sum}{file}")
    };
    let lines: Vec<String> = files.iter().map(line).collect();
    format!("const {name} = listed(\"{}\");\n", lines.join(" "))
}

fn read(file: &str) -> Result<String, Failure> {
    fs::read_to_string(file).map_err(|why| format!("{file}: {why}").into())
}

/// A style sheet, in a release build without what carries nothing.
fn style(file: &str, debug: bool) -> Result<Vec<u8>, Failure> {
    let style = read(file)?;
    Ok(if debug { style } else { lean_style(&style) }.into_bytes())
}

/// A script without what carries nothing, in a release build.
fn lean(script: String, debug: bool) -> String {
    if debug { script } else { lean_script(&script) }
}

/// The files of the page as they are written.
struct Out {
    folder: PathBuf,
    /// Those of the first screen, each with its sum.
    first: Vec<(String, String)>,
    /// Those of the parts.
    later: Vec<(String, String)>,
}

impl Out {
    /// Writes a file of the first screen under a name that holds the sum of its bytes.
    fn put(&mut self, stem: &str, extension: &str, bytes: &[u8]) -> Result<String, Failure> {
        let name = self.write(stem, extension, bytes)?;
        self.first.push((name.clone(), sum(bytes)));
        Ok(name)
    }

    /// Writes a file of a part in the same way.
    fn put_later(&mut self, stem: &str, extension: &str, bytes: &[u8]) -> Result<String, Failure> {
        let name = self.write(stem, extension, bytes)?;
        self.later.push((name.clone(), sum(bytes)));
        Ok(name)
    }

    fn write(&self, stem: &str, extension: &str, bytes: &[u8]) -> Result<String, Failure> {
        let name = format!("{stem}-{}.{extension}", hex(&Sha256::digest(bytes)));
        fs::write(self.folder.join(&name), bytes)?;
        Ok(name)
    }

    /// Copies a file under its own name.
    fn copy(&mut self, file: &str) -> Result<(), Failure> {
        let name = Path::new(file).file_name().and_then(|name| name.to_str()).unwrap_or_default();
        let bytes = fs::read(file).map_err(|why| format!("{file}: {why}"))?;
        fs::write(self.folder.join(name), &bytes)?;
        // Pictures of icons are for whoever installs the page; a tab shows the drawn one.
        let list = if name.ends_with(".png") { &mut self.later } else { &mut self.first };
        list.push((name.to_owned(), sum(&bytes)));
        Ok(())
    }

    fn sum_of(&self, name: &str) -> String {
        let found = self.first.iter().find(|(file, _)| file == name);
        found.map(|(_, sum)| sum.clone()).unwrap_or_default()
    }

    /// The sum of all: any change makes a new version.
    fn version(&self, page: &str, worker: &str) -> String {
        let mut all = Sha256::new();
        all.update(page);
        all.update(worker);
        for (name, sum) in self.first.iter().chain(&self.later) {
            all.update(name);
            all.update(sum);
        }
        hex(&all.finalize())
    }
}

/// How the browser knows what kind of sum it is.
const SUM_OF: &str = "sha256-";

/// The sum of a file as the browser checks it.
fn sum(bytes: &[u8]) -> String {
    format!("{SUM_OF}{}", BASE64_STANDARD.encode(Sha256::digest(bytes)))
}

/// The first 16 digits of a sum.
fn hex(sum: &[u8]) -> String {
    sum[..8].iter().map(|byte| format!("{byte:02x}")).collect()
}

fn stem(file: &str) -> &str {
    Path::new(file).file_stem().and_then(|stem| stem.to_str()).unwrap_or_default()
}

fn extension(file: &str) -> &str {
    Path::new(file).extension().and_then(|extension| extension.to_str()).unwrap_or_default()
}
