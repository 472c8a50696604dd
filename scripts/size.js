// What the whole page weighs on its way to the reader: every file of a build, packed with brotli.
//   node scripts/size.js FOLDER
// Fails above the budget. Servers that pack send about this much; the first visit fetches all of it.
const fs = require("node:fs");
const path = require("node:path");
const zlib = require("node:zlib");

const BUDGET_BYTES = 250_000;

const folder = process.argv[2];
const files = fs.readdirSync(folder, { recursive: true }).filter((name) => fs.statSync(path.join(folder, name)).isFile());
const rows = files.map((name) => {
  const bytes = fs.readFileSync(path.join(folder, name));
  return { name, plain: bytes.length, packed: zlib.brotliCompressSync(bytes).length };
});
rows.sort((a, b) => b.packed - a.packed);

const sum = (field) => rows.reduce((total, row) => total + row[field], 0);
const print = (plain, packed, name) => console.log(`${String(plain).padStart(10)} ${String(packed).padStart(10)}  ${name}`);
print("plain", "brotli", "file");
for (const { name, plain, packed } of rows) print(plain, packed, name);
print(sum("plain"), sum("packed"), `all; the budget is ${BUDGET_BYTES} bytes of brotli`);
if (sum("packed") > BUDGET_BYTES) {
  console.error(`The page is ${sum("packed") - BUDGET_BYTES} bytes above its budget. Find what grew: is it worth it?`);
  process.exit(1);
}
