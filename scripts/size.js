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
  drawing: 85_000, // layers and metal of the neck, and woods of one's own with the form for their bars; fingers that pinch
  choosing: 113_000, // what is on the harp counts beside the stock, lengths without gain, and what the frame bears
  stock: 75_000, // earlier states are listed beside the versions
  numbers: 102_000, // the details of a string; pages on giving, the years, boards and layers
  windows: 119_000, // the sheet in which fingers type; the curves in words and as a table; earlier states and the order of the list of designs; the list of what a String cell could hold is in it, and the bin and the backup
  papers: 122_500, // the harp strung one string at a time; the tuning sheet with its keys
  files: 27_000, // what the menus hold, what changes the chart, pasting
  wood: 123_500, // layers that cross, what of the frame is over, what holds the soundbox on the base, and how far; what a maker must be told of tenons, pins, bolts and grain; the harp part by part: drawn, in space, listed, with sizes and prices, a bent back, and grips in the drawing; templates, guides for the drill, cutting list and order of building; the way to what is missing and the usual soundbox
  hearing: 118_000, // sound, tuner, settling; 50 of it the module that renders sound and listens in a worker, built to be quick, with its scripts; the tuner leads by the plan, notes into the log, and has single levers
  help: 20_000, // the questions beside findings and below the chart; About, with the list of licences
  "words-de": 90_000, // all sentences, fetched by whoever reads them in this language
  "words-fr": 90_000,
  licences: 40_000, // of all packages in the page, fetched by the window that shows them
  shared: 124_000, // what the frame bears is asked for the parts too, and no longer lies between; what the joints are called is said of the parts too; an edit is copied here, and no longer in the first screen; answers to what figures and findings make one ask; names of notes and materials in three languages; the order of stringing, for the bench, the drawing and settling
  between: 180_500, // the foot of the pillar as it stands; in four files; templates and papers go into the parts of the harp too; laminates, metal, own woods, the board with its bars, edges and thickness from place to place, how far all of it is from breaking; the drawing, its loads and their words go into the papers too
  fault: 3_000,
  "keep-more": 3_200, // earlier states are noted here, where the first screen does not wait
  later: 10_500, // what fingers need, colours of the system, and the bar over papers; what papers, windows and later views look like, asked for when the first screen stands
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
  const isPart = /\.(wasms?|js|css|txt)$/.test(name) && nameOf(name) in sums;
  const part = name.endsWith(".png") ? "icons" : nameOf(name) === "ear" ? "hearing" : isPart ? nameOf(name) : "first screen";
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
