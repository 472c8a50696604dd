// What the page weighs on its way to the reader, packed with brotli: the first screen, each part that is fetched
// later, and what parts share, which comes with the first of them.
//   node scripts/size.js FOLDER
// Fails above a ceiling. A commit that raises one says what for.
const fs = require("node:fs");
const path = require("node:path");
const zlib = require("node:zlib");

const GOAL_BYTES = 250_000;
const CEILINGS = {
  "first screen": 300_000,
  drawing: 80_500, // layers and metal of the neck, and woods of one's own with the form for their bars
  choosing: 112_000, // what is on the harp counts beside the stock, lengths without gain, and what the frame bears
  stock: 75_000, // earlier states are listed beside the versions
  numbers: 88_000, // pages on giving, the years, boards and layers
  windows: 120_000, // the list of what a String cell could hold is in it, and the bin and the backup
  papers: 102_000,
  files: 18_000,
  shared: 90_000,
  between: 117_000, // laminates, metal, own woods, the board with its bars and edges; the drawing, its loads and their words go into the papers too
  fault: 3_000,
  "keep-more": 3_200, // earlier states are noted here, where the first screen does not wait
  later: 6_500, // what papers, windows and later views look like, asked for when the first screen stands
  icons: 4_000, // asked for by whoever installs the page
};

const folder = process.argv[2];
const packed = (name) => zlib.brotliCompressSync(fs.readFileSync(path.join(folder, name))).length;
const names = fs.readdirSync(folder).filter((name) => fs.statSync(path.join(folder, name)).isFile());

const nameOf = (file) => file.slice(0, file.lastIndexOf("-"));
const sums = Object.fromEntries(Object.keys(CEILINGS).map((part) => [part, 0]));
let all = 0;
console.log(`${"plain".padStart(10)} ${"brotli".padStart(10)}  file`);
for (const [bytes, name] of names.map((name) => [packed(name), name]).sort((a, b) => b[0] - a[0])) {
  const plain = fs.statSync(path.join(folder, name)).size;
  console.log(`${String(plain).padStart(10)} ${String(bytes).padStart(10)}  ${name}`);
  all += bytes;
  const isPart = /\.(wasms?|js|css)$/.test(name) && nameOf(name) in sums;
  const part = name.endsWith(".png") ? "icons" : isPart ? nameOf(name) : "first screen";
  sums[part] += bytes;
}

console.log(`\n${"brotli".padStart(10)} ${"ceiling".padStart(10)}  part`);
let over = [];
for (const [part, bytes] of Object.entries(sums)) {
  console.log(`${String(bytes).padStart(10)} ${String(CEILINGS[part]).padStart(10)}  ${part}`);
  if (bytes > CEILINGS[part]) over.push(`${part} by ${bytes - CEILINGS[part]} bytes`);
}
console.log(`${String(all).padStart(10)}             all of it; the goal for the first screen is ${GOAL_BYTES}`);
if (over.length) {
  console.error(`Above the ceiling: ${over.join(", ")}. Find what grew: is it worth it?`);
  process.exit(1);
}
