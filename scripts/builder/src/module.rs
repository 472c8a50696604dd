//! The program itself: compiled, split into parts, and bound to the browser.

use std::fs;
use std::path::{Path, PathBuf};
use std::process::Command;

use wasm_bindgen_cli_support::Bindgen;
use wasm_split_cli_support::{Options, transform};

use crate::Failure;

/// The name that the linker's output and all files made from it go by.
const NAME: &str = "stringloft";
const TARGET: &str = "wasm32-unknown-unknown";
/// What the program imports the loaders of its parts from.
const LOADERS: &str = "./parts.js";

/// The program as it goes to the browser.
pub struct Module {
    /// The script that starts it, and that fetches its parts. It names each part's file as [`Part::placeholder`].
    pub script: String,
    /// The module of the first screen.
    pub first: Vec<u8>,
    /// The modules that are fetched later.
    pub parts: Vec<Part>,
}

/// A module that is fetched later.
pub struct Part {
    /// The part's name, or those of all parts that need what it holds, with a `+` between them.
    pub name: String,
    /// How the script names its file.
    pub placeholder: String,
    pub bytes: Vec<u8>,
}

/// Compiles the program.
///
/// # Errors
///
/// When cargo, the splitting or the binding fails.
pub fn make(debug: bool) -> Result<Module, Failure> {
    let compiled = compile(debug)?;
    if debug {
        let (script, first) = bind(&compiled)?;
        return Ok(Module { script, first, parts: Vec::new() });
    }
    let folder = compiled.with_file_name("parts");
    // What an earlier run left there would be taken for a part.
    let _ = fs::remove_dir_all(&folder);
    fs::create_dir_all(&folder)?;
    let bytes = fs::read(&compiled)?;
    let first = folder.join(format!("{NAME}.wasm"));
    let mut options = Options::new(&bytes);
    options.output_dir = &folder;
    options.main_out_path = &first;
    options.link_name = LOADERS;
    let main_module = format!("./{NAME}.js");
    options.main_module = &main_module;
    let split =
        transform(options).map_err(|why| format!("the module could not be split: {why:?}"))?;
    let loaders = fs::read_to_string(folder.join(LOADERS))?;
    let (script, first) = bind(&first)?;
    let mut parts = Vec::new();
    for path in split.split_modules {
        let stem = path.file_stem().and_then(|stem| stem.to_str()).unwrap_or_default().to_owned();
        let placeholder = format!("./{stem}.wasm");
        // One that holds nothing is not named.
        if loaders.contains(&placeholder) {
            let name = needed_by(&loaders, &stem);
            parts.push(Part { name, placeholder, bytes: fs::read(&path)? });
        }
    }
    Ok(Module { script: with_loaders(&script, &loaders)?, first, parts })
}

/// Calls cargo; where it left the module.
fn compile(debug: bool) -> Result<PathBuf, Failure> {
    let mut cargo = Command::new(std::env::var_os("CARGO").unwrap_or_else(|| "cargo".into()));
    cargo.args(["rustc", "--locked", "--target", TARGET, "--bin", NAME]);
    if debug {
        cargo.args(["--features", "web"]);
    } else {
        // The splitting follows the linker's relocations.
        cargo.args(["--release", "--features", "web,parts", "--", "-Clink-arg=--emit-relocs"]);
    }
    if !cargo.status()?.success() {
        return Err("the program could not be compiled; the compiler's own message is above".into());
    }
    let target =
        std::env::var_os("CARGO_TARGET_DIR").map_or_else(|| PathBuf::from("target"), PathBuf::from);
    let profile = if debug { "debug" } else { "release" };
    Ok(target.join(TARGET).join(profile).join(format!("{NAME}.wasm")))
}

/// Makes the script that ties a module to the browser, and the module that it ties.
fn bind(module: &Path) -> Result<(String, Vec<u8>), Failure> {
    let mut bindgen = Bindgen::new();
    bindgen
        .input_path(module)
        .web(true)?
        .typescript(false)
        .omit_default_module_path(true)
        // The parts import memory and table from the first module.
        .keep_lld_exports(true)
        .remove_name_section(true)
        .remove_producers_section(true);
    let mut bound = bindgen.generate_output()?;
    let module = bound.wasm_mut().emit_wasm();
    Ok((bound.js().to_owned(), module))
}

/// The parts that need a shared module, from the remark that stands above its loader.
fn needed_by(loaders: &str, stem: &str) -> String {
    let Some(name) = stem.strip_prefix("split_") else {
        let before = loaders.split(&format!("\"./{stem}.wasm\"")).next().unwrap_or_default();
        let remark = before.rsplit("/* ").next().and_then(|rest| rest.split(" */").next());
        return remark.unwrap_or(stem).replace(", ", "+");
    };
    name.to_owned()
}

/// Puts the loaders of the parts into the script, which saves a file and a way to the server and back.
fn with_loaders(script: &str, loaders: &str) -> Result<String, Failure> {
    let import = format!("import {{ initSync }} from \"./{NAME}.js\";");
    if !loaders.contains(&import) {
        return Err("the loaders of the parts do not begin as expected".into());
    }
    // A server may not know what a module is; the browser then compiles it from its bytes.
    let streaming = "WebAssembly.instantiateStreaming(src, imports)";
    let loaders = loaders
        .replace(&import, "")
        .replace(streaming, "instantiated(await src, imports)")
        .replace("export const ", "const ");
    let mut names: Vec<&str> = Vec::new();
    for line in loaders.lines() {
        let name = line.strip_prefix("const ").and_then(|rest| rest.split(' ').next());
        names.extend(name.filter(|name| name.starts_with("__wasm_split_load_")));
    }
    let mut out = String::new();
    let mut placed = false;
    for line in script.lines() {
        let import = line.strip_prefix("import * as ").and_then(|rest| rest.split_once(" from "));
        match import {
            Some((name, from)) if from.contains(LOADERS) => {
                let names = names.join(", ");
                out.push_str(INSTANTIATED);
                out.push_str(&loaders);
                out.push_str(&format!("\nconst {name} = {{ {names} }};\n"));
                placed = true;
            }
            _ => {
                out.push_str(line);
                out.push('\n');
            }
        }
    }
    if placed {
        Ok(out)
    } else {
        Err("the script does not ask for the loaders of the parts".into())
    }
}

const INSTANTIATED: &str = r#"
async function instantiated(answer, imports) {
    if (!answer.ok) throw new Error(`${answer.url}: ${answer.status}`);
    if (answer.headers.get("Content-Type")?.startsWith("application/wasm")) {
        return WebAssembly.instantiateStreaming(answer, imports);
    }
    return WebAssembly.instantiate(await answer.arrayBuffer(), imports);
}
"#;
