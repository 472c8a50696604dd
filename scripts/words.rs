//! Makes Rust of the English messages in `src/words/en`, and packs of those in the other languages.

use std::path::Path;
use std::{env, fs};

use catalogue::{pack, read, rust};

/// Languages beside English, whose catalogues stand in `src/words/NAME`.
const OTHERS: [&str; 2] = ["de", "fr"];

#[allow(clippy::print_stdout, reason = "it is how a build script speaks to cargo")]
fn main() {
    println!("cargo:rerun-if-changed=src/words");
    println!("cargo:rerun-if-changed=scripts/words.rs");
    if let Err(why) = make() {
        for line in why.lines() {
            println!("cargo::error={line}");
        }
    }
}

fn make() -> Result<(), String> {
    let out = env::var("OUT_DIR").map_err(|why| why.to_string())?;
    let out = Path::new(&out);
    let english = read(Path::new("src/words/en"))?;
    write(&out.join("messages.rs"), &rust(&english)?)?;
    for name in OTHERS {
        let other = read(&Path::new("src/words").join(name))?;
        let pack = pack(&english, &other, false).map_err(|why| format!("{name}: {why}"))?;
        write(&out.join(format!("{name}.txt")), &pack)?;
    }
    Ok(())
}

fn write(path: &Path, text: &str) -> Result<(), String> {
    fs::write(path, text).map_err(|why| format!("{}: {why}", path.display()))
}
