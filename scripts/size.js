// What the whole page weighs on its way to the reader: every file of a build, packed with brotli.
//   node scripts/size.js FOLDER
// Says how far it is from the goal, and fails above the ceiling. A commit that raises it says what for. Servers that
// pack send about this much; the first visit fetches all of it.
const fs = require("node:fs");
const path = require("node:path");
const zlib = require("node:zlib");

const GOAL_BYTES = 250_000;
const CEILING_BYTES = 790_000;

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
print(sum("plain"), sum("packed"), `all; the goal is ${GOAL_BYTES} bytes of brotli, the ceiling ${CEILING_BYTES}`);
if (sum("packed") > CEILING_BYTES) {
  console.error(`The page is ${sum("packed") - CEILING_BYTES} bytes above its ceiling. Find what grew: is it worth it?`);
  process.exit(1);
}
