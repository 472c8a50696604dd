# shellcheck shell=bash
# What scripts/serve, scripts/dev and scripts/test have in common: finding the tools, or installing them.
# It is sourced, not run. Each function may be called again at no cost: what is there is kept.
#
# Tools are kept outside the clone, in the user's cache folder, each in a folder named after its version.
# So clones share them, and a clone of another version does no harm.

AXE_VERSION=4.14.1      # axe-core, which looks for barriers in the page
GECKODRIVER_VERSION=0.36.0 # drives Firefox
TARGET=wasm32-unknown-unknown

CACHE=${XDG_CACHE_HOME:-${HOME:?is not set, so there is no place for the tools}/.cache}/stringloft

say() { printf '\n== %s\n' "$*"; }
have() { command -v "$1" >/dev/null 2>&1; }
die() {
    printf '\n%s: %s\n' "$(basename "$0")" "$*" >&2
    exit 1
}

# debian PACKAGE...: installs those that are missing.
debian() {
    local package missing=() as_root=()
    have apt-get || die "this needs $*, and only Debian and Ubuntu are known here. Install it by hand, then run this again."
    for package; do
        [ "$(dpkg-query -W -f '${db:Status-Status}' "$package" 2>/dev/null)" = installed ] || missing+=("$package")
    done
    [ ${#missing[@]} -gt 0 ] || return 0
    if [ "$(id -u)" != 0 ]; then
        have sudo || die "missing: ${missing[*]}. Install them as root, then run this again."
        as_root=(sudo)
    fi
    say "Installing ${missing[*]} with apt-get"
    { "${as_root[@]}" apt-get update -q && "${as_root[@]}" env DEBIAN_FRONTEND=noninteractive \
        apt-get install -qy --no-install-recommends "${missing[@]}"; } </dev/null ||
        die "apt-get could not install ${missing[*]}; its own message is above."
}

# crate NAME VERSION PROGRAM: a tool built from source, unless PROGRAM has that version already.
# Quick to build matters more than quick to run: each works for seconds only.
crate() {
    local root=$CACHE/$1-$2
    PATH=$root/bin:$PATH
    case " $("$3" --version 2>/dev/null | tr '\n' ' ') " in *" $2 "*) return ;; esac
    say "Building $1 $2 (some minutes, once)"
    CARGO_PROFILE_RELEASE_OPT_LEVEL=1 CARGO_PROFILE_RELEASE_LTO=off CARGO_PROFILE_RELEASE_CODEGEN_UNITS=16 \
        cargo install --quiet --locked --root "$root" --version "$2" "$1" </dev/null ||
        die "cargo could not build $1 $2; its own message is above."
}

# node_package NAME VERSION: a package of npm. Its folder is $CACHE/NAME-VERSION/node_modules/NAME.
node_package() {
    local root=$CACHE/$1-$2
    PATH=$PATH:$root/node_modules/.bin
    [ -e "$root/complete" ] && return
    have npm || debian nodejs npm
    say "Fetching $1 $2 with npm"
    mkdir -p "$root"
    npm install --prefix "$root" --no-audit --no-fund --ignore-scripts --loglevel=error "$1@$2" </dev/null ||
        die "npm could not install $1 $2; its own message is above."
    touch "$root/complete"
}

# True if the compiler in use has the standard library for wasm. The files are the only proof:
# rustup can answer yes for another toolchain.
has_std() {
    local file folder
    folder=$(rustc --print target-libdir --target "$TARGET" 2>/dev/null) || return 1
    for file in "$folder"/libstd-*.rlib; do [ -e "$file" ] && return 0; done
    return 1
}

# Finds a way to compile for wasm. The ordinary one is rustup's target. Where rustup cannot have it,
# Debian's compiler for the web builds the standard library from source; then WASM_LINKER is set.
WASM_LINKER=
setup_rust() {
    local host
    have cargo || PATH=${CARGO_HOME:-$HOME/.cargo}/bin:$PATH
    have cargo || die "there is no cargo here. Install Rust's stable toolchain with rustup, then run this again."
    have cc || debian gcc libc6-dev
    if ! has_std && have rustup && [ ! -e "$CACHE/debian-rust" ]; then
        say "Adding $TARGET with rustup"
        rustup target add "$TARGET" </dev/null || echo "rustup could not; its own message is above."
    fi
    if has_std; then
        echo "Compiling for wasm: rustup's $TARGET of $(rustc --version)."
        return
    fi
    debian rustc-web cargo-web rust-web-src
    [ -f /usr/lib/rustlib/src/rust/library/std/Cargo.toml ] ||
        die "Debian's rust-web-src brought no source of the standard library, and rustup no $TARGET."
    host=$(rustc -vV | sed -n 's/^host: //p')
    WASM_LINKER=$(rustc --print sysroot)/lib/rustlib/$host/bin/rust-lld
    [ -x "$WASM_LINKER" ] || die "this toolchain has no rust-lld; rustup's stable toolchain has one."
    mkdir -p "$CACHE"
    touch "$CACHE/debian-rust" # rustup is not asked a second time; delete this file to ask it again
    echo "Compiling for wasm: Debian's $(/usr/bin/rustc --version), as rustup has no $TARGET here ($CACHE/debian-rust)."
}

# wasm COMMAND...: runs it with the compiler that setup_rust found.
wasm() {
    if [ -z "$WASM_LINKER" ]; then
        "$@"
    else
        RUSTUP_TOOLCHAIN=/usr RUSTC_BOOTSTRAP=1 CARGO_UNSTABLE_BUILD_STD=std,panic_abort,test \
            CARGO_TARGET_WASM32_UNKNOWN_UNKNOWN_LINKER=$WASM_LINKER "$@"
    fi
}

# All it takes to build the page: the builder is a package of the workspace, which cargo compiles when it is called.
setup_build() {
    setup_rust
    export PATH
}

# builder WORD...: builds the page, or serves it (see scripts/builder). What it is made of is kept with the tools, so
# that it is compiled once for all clones.
builder() {
    local target=$CACHE/builder
    cargo build --quiet --locked --profile builder --package builder --target-dir "$target" </dev/null ||
        die "the builder could not be compiled; the compiler's own message is above."
    wasm "$target/builder/builder" "$@"
}

# A Chromium and its driver. Debian has them as packages; Ubuntu has them as one snap.
setup_browser() {
    if ! grep -qs '^ID=ubuntu' /etc/os-release; then
        debian chromium chromium-driver
    elif [ -x /snap/bin/chromium.chromedriver ]; then
        CHROMEDRIVER=/snap/bin/chromium.chromedriver
    elif have snap; then
        say "Installing Chromium with snap"
        if [ "$(id -u)" = 0 ]; then snap install chromium; else sudo snap install chromium; fi </dev/null ||
            die "snap could not install chromium; its own message is above."
        CHROMEDRIVER=/snap/bin/chromium.chromedriver
    else
        die "Ubuntu has Chromium as a snap, and there is no snap here. Install a Chromium or Chrome with its chromedriver, put the driver's path into CHROMEDRIVER, then run this again."
    fi
}

# Firefox with its driver, which Debian does not have.
setup_firefox() {
    have firefox-esr || have firefox || debian firefox-esr
    crate geckodriver "$GECKODRIVER_VERSION" geckodriver
    FIREFOX_DRIVER=$(command -v geckodriver)
    export PATH FIREFOX_DRIVER
}

# WebKit's small browser with its driver, and a screen for it, as it has no mode without one.
setup_webkit() {
    local file
    have WebKitWebDriver || debian webkit2gtk-driver
    have xvfb-run || debian xvfb xauth
    WEBKIT_DRIVER=$(command -v WebKitWebDriver)
    for file in /usr/lib/*/webkit2gtk-4.*/MiniBrowser /usr/libexec/webkit2gtk-4.*/MiniBrowser; do
        [ -x "$file" ] && WEBKIT_BROWSER=$file
    done
    [ -n "${WEBKIT_BROWSER-}" ] || die "there is no MiniBrowser of WebKit here, which its driver starts."
    export WEBKIT_DRIVER WEBKIT_BROWSER
}

# All it takes to test it, beside setup_build.
setup_test() {
    local bindgen
    # The program that runs tests in a browser must be of the very version that the crate has.
    bindgen=$(awk '/^name = "wasm-bindgen"$/ { getline; gsub(/"/, "", $3); print $3; exit }' Cargo.lock)
    [ -n "$bindgen" ] || die "Cargo.lock names no wasm-bindgen."
    crate wasm-bindgen-cli "$bindgen" wasm-bindgen-test-runner
    cargo fmt --version >/dev/null 2>&1 || rustup component add rustfmt </dev/null || die "cargo fmt is missing."
    cargo clippy --version >/dev/null 2>&1 || rustup component add clippy </dev/null || die "cargo clippy is missing."
    have node || debian nodejs
    have chromedriver || [ -n "${CHROMEDRIVER-}" ] || setup_browser
    have pdftotext || debian poppler-utils # it brings pdftoppm too
    node_package axe-core "$AXE_VERSION"
    CHROMEDRIVER=${CHROMEDRIVER:-$(command -v chromedriver)}
    AXE_JS=$CACHE/axe-core-$AXE_VERSION/node_modules/axe-core/axe.min.js
    export PATH CHROMEDRIVER AXE_JS
}

# True if something answers at this port of 127.0.0.1.
answers() { (exec 3<>"/dev/tcp/127.0.0.1/$1") 2>/dev/null; }

# serve_app PORT FOLDER [OPTION...]: builds the app into FOLDER and serves it until it is ended.
serve_app() {
    local port=$1 folder=$2
    shift 2
    case $port in *[!0-9]* | '') die "PORT must be a number, got \"$port\"." ;; esac
    { [ ${#port} -le 5 ] && [ "$port" -ge 1 ] && [ "$port" -le 65535 ]; } || die "PORT must be 1 to 65535, got $port."
    ! answers "$port" || die "port $port is taken by another program. End that one, or choose another port: PORT=$((port % 65535 + 1)) $0"
    setup_build
    say "Building the app"
    builder serve "$folder" "$port" "$@"
}
