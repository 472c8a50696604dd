//! The program itself: compiled, split into parts, and bound to the browser.

use std::cmp::Reverse;
use std::env;
use std::fs;
use std::path::{Path, PathBuf};
use std::process::Command;

use wasm_bindgen_cli_support::Bindgen;
use wasm_split_cli_support::{Options, transform};

use crate::Failure;
use crate::order::ordered;

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

/// A file that is fetched later.
pub struct Part {
    pub name: String,
    /// How the script names it.
    pub placeholder: String,
    pub bytes: Vec<u8>,
}

/// Compiles the program. `named`, the functions keep their names, and what goes between script and module its long ones.
///
/// # Errors
///
/// When cargo, the splitting or the binding fails.
pub fn make(debug: bool, named: bool) -> Result<Module, Failure> {
    let compiled = compile(debug)?;
    if debug {
        let (script, first) = bind(&compiled, false, named)?;
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
    let (script, first) = bind(&first, !named, named)?;
    let mut parts = Vec::new();
    let mut common = Vec::new();
    for path in split.split_modules {
        let stem = path.file_stem().and_then(|stem| stem.to_str()).unwrap_or_default().to_owned();
        let placeholder = format!("./{stem}.wasm");
        // One that holds nothing is not named.
        if !loaders.contains(&placeholder) {
            continue;
        }
        let bytes = fs::read(&path)?;
        let bytes = if named { bytes } else { ordered(&bytes)? };
        match stem.strip_prefix("split_") {
            Some(name) => parts.push(Part { name: name.to_owned(), placeholder, bytes }),
            None => common.push((stem, placeholder, bytes)),
        }
    }
    // What several parts share comes in many small modules, one for each set of parts. They go in one file, since
    // a way to the server and back takes longer than their bytes; the largest first, which packs best. One that is
    // large by itself is a file of its own, so that only who needs it fetches it.
    common.sort_by_key(|(_, _, bytes)| Reverse(bytes.len()));
    let mut shared = Part { name: "shared".into(), placeholder: SHARED.into(), bytes: Vec::new() };
    let mut lies = Vec::new();
    for (stem, placeholder, bytes) in common {
        if bytes.len() > LARGE_BYTES {
            parts.push(Part { name: "between".into(), placeholder, bytes });
            continue;
        }
        lies.push((format!("__{stem}"), bytes.len()));
        shared.bytes.extend(bytes);
    }
    let script = with_loaders(&script, &condensed(&loaders, &lies)?)?;
    parts.push(shared);
    Ok(Module { script, first, parts })
}

/// The name of the module that renders sound in a worker, of its package and of its profile.
const HEARING: &str = "hearing";

/// Compiles the module of the worker: the script that binds it, and the module.
///
/// # Errors
///
/// When cargo or the binding fails.
pub fn make_hearing(debug: bool) -> Result<(String, Vec<u8>), Failure> {
    let mut cargo = Command::new(env::var_os("CARGO").unwrap_or_else(|| "cargo".into()));
    cargo.args(["build", "--locked", "--target", TARGET, "--package", HEARING]);
    if !debug {
        // Two numbers at a time, which every browser of today can.
        let side_by_side = format!("target.{TARGET}.rustflags=['-Ctarget-feature=+simd128']");
        cargo.args([
            "--profile",
            HEARING,
            "--config",
            &without_places(),
            "--config",
            &side_by_side,
        ]);
    }
    let module = compiled(&mut cargo, if debug { "debug" } else { HEARING }, HEARING)?;
    let mut bindgen = Bindgen::new();
    bindgen
        .input_path(module)
        .no_modules(true)?
        .typescript(false)
        .omit_default_module_path(true)
        .remove_name_section(true)
        .remove_producers_section(true);
    let mut bound = bindgen.generate_output()?;
    Ok((bound.js().to_owned(), bound.wasm_mut().emit_wasm()))
}

/// Calls cargo; where it left the module.
fn compile(debug: bool) -> Result<PathBuf, Failure> {
    let mut cargo = Command::new(env::var_os("CARGO").unwrap_or_else(|| "cargo".into()));
    cargo.args(["rustc", "--locked", "--target", TARGET, "--bin", NAME]);
    if debug {
        cargo.args(["--features", "web"]);
    } else {
        // The splitting follows the linker's relocations.
        let short = without_places();
        cargo.args(["--release", "--features", "web,parts", "--config", &short]);
        cargo.args(["--", "-Clink-arg=--emit-relocs"]);
    }
    compiled(&mut cargo, if debug { "debug" } else { "release" }, NAME)
}

/// Runs cargo; where it leaves a module of this name.
fn compiled(cargo: &mut Command, profile: &str, name: &str) -> Result<PathBuf, Failure> {
    if !cargo.status()?.success() {
        return Err("the program could not be compiled; the compiler's own message is above".into());
    }
    let target =
        env::var_os("CARGO_TARGET_DIR").map_or_else(|| PathBuf::from("target"), PathBuf::from);
    Ok(target.join(TARGET).join(profile).join(format!("{name}.wasm")))
}

/// A setting of cargo that leaves out of the program where its libraries lie on this machine, which messages of
/// panics would else hold.
fn without_places() -> String {
    let home = env::var_os("CARGO_HOME").map_or_else(
        || PathBuf::from(env::var_os("HOME").unwrap_or_default()).join(".cargo"),
        PathBuf::from,
    );
    let mut flags = Vec::new();
    for folder in fs::read_dir(home.join("registry/src")).into_iter().flatten().flatten() {
        flags.push(format!("'--remap-path-prefix={}='", folder.path().display()));
    }
    format!("target.{TARGET}.rustflags=[{}]", flags.join(","))
}

/// Makes the script that ties a module to the browser, and the module that it ties.
fn bind(module: &Path, short_names: bool, named: bool) -> Result<(String, Vec<u8>), Failure> {
    let mut bindgen = Bindgen::new();
    bindgen
        .input_path(module)
        .web(true)?
        .typescript(false)
        .omit_default_module_path(true)
        // The parts import memory and table from the first module.
        .keep_lld_exports(true)
        .remove_name_section(!named)
        .remove_producers_section(true);
    let mut bound = bindgen.generate_output()?;
    let mut script = bound.js().to_owned();
    if short_names {
        let module = bound.wasm_mut();
        let imports = module.imports.iter_mut().map(|import| &mut import.name);
        let exports = module.exports.iter_mut().map(|export| &mut export.name);
        shorten(imports.chain(exports).collect(), &mut script)?;
    }
    let bytes = bound.wasm_mut().emit_wasm();
    Ok((script, if short_names { ordered(&bytes)? } else { bytes }))
}

/// Gives short names to what script and module name for each other alone. Each such name ends in a sum, or is a type
/// written out, and stands in both files: shortened, they pack to 5 kB less.
fn shorten(names: Vec<&mut String>, script: &mut String) -> Result<(), Failure> {
    let of_binding = ["__wbg_", "__wbindgen_cast_", "wasm_bindgen_"];
    let mut names: Vec<&mut String> = names
        .into_iter()
        .filter(|name| of_binding.iter().any(|start| name.starts_with(start)))
        .collect();
    // The longest first, as one may begin with another.
    names.sort_by(|one, other| other.len().cmp(&one.len()).then_with(|| one.cmp(other)));
    let mut last = (String::new(), String::new());
    for (number, name) in names.into_iter().enumerate() {
        if *name != last.0 {
            let short = format!("${number}");
            if script.contains(&short) || !script.contains(name.as_str()) {
                return Err(format!("the script has no name {name}, or has {short}").into());
            }
            *script = script.replace(name.as_str(), &short);
            last = (name.clone(), short);
        }
        name.clone_from(&last.1);
    }
    Ok(())
}

/// The loaders with those of what parts share as one table, in place of a function for each and a list of them for each
/// part: a row has the length of the module and, as bits, which parts need it. `lies` are their names and lengths, in the
/// order in which they lie in their file.
fn condensed(loaders: &str, lies: &[(String, usize)]) -> Result<String, Failure> {
    let mut needed: Vec<u64> = vec![0; lies.len()];
    let mut bit: u64 = 1;
    let mut out = String::new();
    let mut is_left_out = false;
    for line in loaders.lines() {
        let name = line.strip_prefix("const ").and_then(|rest| rest.split(' ').next());
        is_left_out |= name.is_some_and(|name| lies.iter().any(|one| one.0 == name));
        if !is_left_out {
            match line.strip_prefix(", [").and_then(|rest| rest.split_once(']')) {
                Some((list, end)) if !list.is_empty() => {
                    let mut others = format!("...sharedFor({bit})");
                    for name in list.split(", ") {
                        match lies.iter().position(|one| one.0 == name) {
                            Some(at) => needed[at] |= bit,
                            None => others.push_str(&format!(", {name}")),
                        }
                    }
                    out.push_str(&format!(", [{others}]{end}\n"));
                    bit <<= 1;
                }
                _ => out.push_str(&format!("{line}\n")),
            }
        }
        is_left_out &= line != ", []);";
    }
    if needed.contains(&0) {
        return Err("the loaders of what parts share do not look as expected".into());
    }
    let rows = lies.iter().zip(needed).map(|((_, length), parts)| format!("{length},{parts}"));
    let table = SHARING.replace("ROWS", &rows.collect::<Vec<String>>().join(" "));
    // Before the first that uses it, and after what it uses.
    let uses = "function makeLoad(";
    let (before, after) =
        out.split_once(uses).ok_or("the loaders of the parts are not made as expected")?;
    let (made, rest) =
        after.split_once("\n}\n").ok_or("the loaders of the parts do not end as expected")?;
    Ok(format!("{before}{uses}{made}\n}}\n{table}{rest}"))
}

/// Puts the loaders of the parts into the script, which saves a file and a way to the server and back.
fn with_loaders(script: &str, loaders: &str) -> Result<String, Failure> {
    let import = format!("import {{ initSync }} from \"./{NAME}.js\";");
    if !loaders.contains(&import) {
        return Err("the loaders of the parts do not begin as expected".into());
    }
    // A server may not know what a module is; the browser then compiles it from its bytes.
    let streaming = "WebAssembly.instantiateStreaming(src, imports)";
    if !loaders.contains(streaming) {
        return Err("the parts are not started as expected".into());
    }
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
            // There is such a line for each loader.
            Some((name, from)) if from.contains(LOADERS) => {
                if !placed {
                    out.push_str(INSTANTIATED);
                    out.push_str(&loaders);
                    placed = true;
                }
                out.push_str(&format!("\nconst {name} = {{ {} }};\n", names.join(", ")));
            }
            _ => {
                out.push_str(line);
                out.push('\n');
            }
        }
    }
    if !placed {
        return Err("the script does not ask for the loaders of the parts".into());
    }
    for (begins, ends, now) in SHORTER {
        let (before, rest) = out.split_once(begins).ok_or(format!("there is no {begins}"))?;
        let (_, after) = rest.split_once(ends).ok_or(format!("{begins} does not end"))?;
        out = format!("{before}{now}{ends}{after}");
    }
    Ok(out)
}

/// What stands in the script in place of functions that can do more than is asked of them here: from where to where, and what
/// takes its place. The module is started in one way, by its address, and its parts when it runs; and of values of the
/// browser only its errors are told.
const SHORTER: [(&str, &str, &str); 2] = [
    (
        "function debugString(",
        "\nfunction ",
        "function debugString(val) { return val instanceof Error ? `${val.name}: ${val.message}\n${val.stack}` : `${val}`; }",
    ),
    (
        "async function __wbg_load(",
        "export {",
        "function initSync() { return wasm; }
async function __wbg_init({ module_or_path }) {
    const { instance, module } = await instantiated(await fetch(module_or_path), __wbg_get_imports());
    return __wbg_finalize_init(instance, module);
}
",
    ),
];

/// From this size on, what a set of parts shares is a file of its own.
const LARGE_BYTES: usize = 60_000;

/// How the script names the file of what parts share.
const SHARED: &str = "./shared.wasms";

/// What the loaders of the parts call.
const INSTANTIATED: &str = r#"
async function instantiated(source, imports) {
    if (source instanceof Uint8Array) return WebAssembly.instantiate(source, imports);
    if (!source.ok) throw new Error(`${source.url}: ${source.status}`);
    if (source.headers.get("Content-Type")?.startsWith("application/wasm")) {
        return WebAssembly.instantiateStreaming(source, imports);
    }
    return WebAssembly.instantiate(await source.arrayBuffer(), imports);
}
let sharedBytes;
async function sharedModule(start, end) {
    sharedBytes ??= (async () => {
        const answer = await fetch(new URL("./shared.wasms", import.meta.url));
        if (!answer.ok) throw new Error(`${answer.url}: ${answer.status}`);
        return new Uint8Array(await answer.arrayBuffer());
    })();
    try {
        return (await sharedBytes).subarray(start, end);
    } catch (error) {
        sharedBytes = undefined; // the next try asks again
        throw error;
    }
}
"#;

/// The table of what parts share, after the functions that the loaders call.
const SHARING: &str = r#"
let sharedEnd = 0;
const sharedRows = "ROWS".split(" ").map((row) => {
    const [length, parts] = row.split(",").map(Number);
    const start = sharedEnd;
    sharedEnd += length;
    const load = makeLoad(() => {
        const src = sharedModule(start, start + length);
        src.catch(() => {});
        return async (imports) => instantiated(await src, imports);
    }, []);
    return { parts, load };
});
const sharedFor = (part) => sharedRows.filter(({ parts }) => parts & part).map(({ load }) => load);
"#;
