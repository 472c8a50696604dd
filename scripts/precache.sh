#!/bin/sh
# For whoever builds with trunk, which runs this after each build: the page in one module, without parts.
# In a release build it writes sw.js, the service worker, with the list of the files just built, and lets boot.js start
# it. A debug build has no worker, so nothing old is shown. scripts/builder does the same in scripts/serve and scripts/test.
set -eu
shell=$TRUNK_SOURCE_DIR/src/shell
cd "$TRUNK_STAGING_DIR"

# What starts the program also opens what is kept.
cat "$shell/keep.js" "$shell/boot.js" >boot.js
[ "$TRUNK_PROFILE" = release ] || exit 0

# Trunk's minifier cannot read what wasm-bindgen writes ("Failed to minify JS"): here go comments and indents.
for file in stringloft-*.js; do
    sed -E '/^ *\/\*\*/,/\*\//d; /^ *\/\//d; s/^ +//' "$file" >"$file.small"
    mv "$file.small" "$file"
done

cat "$shell/offline.js" >>boot.js

# The version is the sum of all files, so that any change makes a new one; the page knows it too.
files=$(find . -type f ! -name sw.js ! -name '.*' | LC_ALL=C sort)
# shellcheck disable=SC2086 # the names that trunk gives hold no blank
version=$(cat $files "$shell/sw.js" | sha256sum | cut -c1-16)
sed "s| data-fault=| data-build=\"$version\"&|" index.html >index.html.new
mv index.html.new index.html
sum() { printf 'sha256-%s' "$(openssl dgst -sha256 -binary "$1" | base64)"; }
{
    printf 'const VERSION = "%s";\nconst FILES = {\n  "./": "%s",\n' "$version" "$(sum index.html)"
    for file in $files; do
        [ "$file" = ./index.html ] || printf '  "%s": "%s",\n' "$file" "$(sum "$file")"
    done
    printf '};\nconst PARTS = {};\n'
    cat "$shell/sw.js"
} >sw.js
