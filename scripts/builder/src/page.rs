//! The folder that is served: `index.html` and every file it asks for.

use std::fs;
use std::path::{Path, PathBuf};

use sha2::{Digest, Sha256};

use crate::markup::{lean_script, lean_style, links};
use crate::{Failure, module};

/// Builds the page into a folder. What stood there goes only when all is done.
///
/// # Errors
///
/// When a source is missing or the program cannot be built.
pub fn build(folder: &Path, debug: bool) -> Result<(), Failure> {
    let module = module::make(debug)?;
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
    for name in &out.later {
        if name.starts_with("files-") || name.starts_with("shared-") {
            reader.push(format!("./{name}"));
        }
    }
    let reader = reader.join(" ");

    let html = fs::read_to_string("index.html")?;
    let mut page = html.clone();
    for link in links(&html)? {
        let tag = match link.kind {
            "rust" => format!(
                "<link rel=\"modulepreload\" href=\"./{js}\">\
                 <link rel=\"preload\" href=\"./{wasm}\" as=\"fetch\" type=\"application/wasm\" crossorigin=\"anonymous\">\
                 <script type=\"module\" src=\"./boot.js\" data-js=\"./{js}\" data-wasm=\"./{wasm}\" data-link=\"{reader}\"></script>"
            ),
            "css" => {
                let style = fs::read_to_string(link.file)?;
                let style = if debug { style } else { lean_style(&style) };
                let name = out.put(stem(link.file), "css", style.as_bytes())?;
                format!("<link rel=\"stylesheet\" href=\"./{name}\">")
            }
            "icon" => {
                let name = out.put(stem(link.file), extension(link.file), &fs::read(link.file)?)?;
                format!("<link rel=\"icon\" href=\"./{name}\">")
            }
            "copy-file" => {
                out.copy(link.file, debug)?;
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
    fs::write(staging.join("index.html"), &page)?;
    if !debug {
        fs::write(staging.join("sw.js"), worker(&out, &page)?)?;
    }
    let _ = fs::remove_dir_all(folder);
    fs::rename(&staging, folder)?;
    Ok(())
}

/// The service worker, with the files that it keeps and a version that is the sum of them all.
fn worker(out: &Out, page: &str) -> Result<String, Failure> {
    let source = fs::read_to_string("src/shell/sw.js")?;
    let mut sum = Sha256::new();
    sum.update(page);
    sum.update(&source);
    for name in out.first.iter().chain(&out.later) {
        sum.update(fs::read(out.folder.join(name))?);
    }
    let list = |name: &str, files: &[String], home: &str| {
        let lines: String = files.iter().map(|file| format!("  \"./{file}\",\n")).collect();
        format!("const {name} = [\n{home}{lines}];\n")
    };
    let version = hex(&sum.finalize());
    let first = list("FILES", &out.first, "  \"./\",\n");
    let later = list("PARTS", &out.later, "");
    Ok(format!("const VERSION = \"{version}\";\n{first}{later}{source}"))
}

/// The files of the page as they are written.
struct Out {
    folder: PathBuf,
    /// Those of the first screen.
    first: Vec<String>,
    /// Those of the parts.
    later: Vec<String>,
}

impl Out {
    /// Writes a file of the first screen under a name that holds the sum of its bytes.
    fn put(&mut self, stem: &str, extension: &str, bytes: &[u8]) -> Result<String, Failure> {
        let name = self.write(stem, extension, bytes)?;
        self.first.push(name.clone());
        Ok(name)
    }

    /// Writes a file of a part in the same way.
    fn put_later(&mut self, stem: &str, extension: &str, bytes: &[u8]) -> Result<String, Failure> {
        let name = self.write(stem, extension, bytes)?;
        self.later.push(name.clone());
        Ok(name)
    }

    fn write(&self, stem: &str, extension: &str, bytes: &[u8]) -> Result<String, Failure> {
        let name = format!("{stem}-{}.{extension}", hex(&Sha256::digest(bytes)));
        fs::write(self.folder.join(&name), bytes)?;
        Ok(name)
    }

    /// Copies a file under its own name. In a release build the script that starts the program also starts the
    /// service worker.
    fn copy(&mut self, file: &str, debug: bool) -> Result<(), Failure> {
        let name = Path::new(file).file_name().and_then(|name| name.to_str()).unwrap_or_default();
        let mut bytes = fs::read(file).map_err(|why| format!("{file}: {why}"))?;
        if name == "boot.js" && !debug {
            bytes.extend(fs::read("src/shell/offline.js")?);
        }
        fs::write(self.folder.join(name), &bytes)?;
        self.first.push(name.to_owned());
        Ok(())
    }
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
