// How long a built page takes, in a headless Chromium, from the browser's own record of the page's main thread.
//   scripts/bench [FOLDER] [--quick] [--only PART,...] [--profile FILE]
// FOLDER is a built page (target/e2e-dist unless said). The parts are keys, drag, open, start and leaks. Everything is
// measured with 47 strings and with 150; beside it stands a bare canvas page with the same marks (bench-bare.html),
// measured in the same run, as times of one machine and day mean little by themselves. No figure fails anything.
// --profile also writes where the time of the last drag went, as the browser's tools for developers read it; a page of
// `builder build FOLDER --names` has the names of the functions.
import { readFileSync, writeFileSync } from "node:fs";
import path from "node:path";
import { fileURLToPath } from "node:url";
import { Chromium, serve } from "./bench-chromium.mjs";
import { Record, quantile, row } from "./bench-trace.mjs";

const HERE = path.dirname(fileURLToPath(import.meta.url));
const after = (flag) => (process.argv.includes(flag) ? process.argv[process.argv.indexOf(flag) + 1] : undefined);
const folder = process.argv.slice(2).find((word, n, all) => !word.startsWith("--") && !["--only", "--profile"].includes(all[n - 1])) ?? "target/e2e-dist";
const quick = process.argv.includes("--quick");
const only = after("--only")?.split(",");
const profile = after("--profile");
const wanted = (part) => !only || only.includes(part);
const TIMES = quick ? 12 : 40;
const ROUNDS = quick ? 6 : 30;

/** The 47 strings of a sample, or more strings on the same curve: every string as its neighbour of the sample, by pitch. */
function harp(count) {
  const design = JSON.parse(readFileSync(path.join(HERE, "../examples/harps/pedal-47.json")));
  if (count === design.strings.length) return JSON.stringify(design);
  const sample = design.strings;
  const strings = Array.from({ length: count }, (_, n) => {
    const share = (n / (count - 1)) * (sample.length - 1);
    const at = Math.min(Math.floor(share), sample.length - 2);
    const [above, below] = [sample[at], sample[at + 1]];
    const length = Number(above.length) * (below.length / above.length) ** (share - at);
    const hz = 2960 * (31 / 2960) ** (n / (count - 1));
    return { ...sample[Math.round(share)], note: `${hz.toFixed(2)} Hz`, length: length.toFixed(1) };
  });
  design.geometry.spacing.gaps = { zones_mm: [[1, 6], [count - 1, 5]] };
  return JSON.stringify({ ...design, title: `Harp of ${count} strings`, strings });
}

const browser = await Chromium.start();
const site = await serve(folder, { "/bare.html": path.join(HERE, "bench-bare.html") });
const opened = "!document.querySelector('#shell') && !!document.querySelector('#chart')";

async function goto(page, address) {
  const loaded = browser.next("Page.loadEventFired");
  await page.send("Page.navigate", { url: address });
  await loaded;
}

/** A page with a harp of so many strings open in it. */
async function pageWith(count) {
  const page = await browser.page();
  await goto(page, `${site.origin}/`);
  await page.until(opened);
  await page.until(`!!document.querySelector("#file")`); // it comes with what the menus hold
  await page.giveFile("#file", "harp.json", harp(count));
  await page.until(`document.querySelectorAll("#chart tbody tr").length === ${count}`);
  await page.rest(1_000);
  return page;
}

const press = (page, id) => page.value(`document.querySelector(${JSON.stringify(id)}).click()`);
const mark = (page, name) => page.value(`performance.mark(${JSON.stringify(name)})`);

/** Types other lengths down the chart; each Enter is measured up to the frame that shows it. */
async function keys(page, count) {
  const events = await page.traced(async () => {
    for (let n = 0; n < TIMES; n++) {
      const line = n % Math.min(count, 20);
      const cell = `document.querySelector("#cell-${line}-1")`;
      if (line === 0) {
        const [x, y] = await page.value(`(() => { ${cell}.scrollIntoView({ block: "nearest" }); const r = ${cell}.getBoundingClientRect(); return [r.x + 20, r.y + 8]; })()`);
        await page.mouse("mousePressed", x, y, 1);
        await page.mouse("mouseReleased", x, y);
        await page.mouse("mouseMoved", 2, 2);
      }
      const length = Number((await page.value(`${cell}.textContent`)).replace(/[^\d.]/g, ""));
      const text = (length * (n % 2 ? 1.01 : 0.99)).toFixed(1);
      await page.key(text[0]);
      await page.send("Input.insertText", { text: text.slice(1) });
      await page.rest(30);
      await mark(page, "enter");
      await page.key("Enter");
      await page.rest(450);
    }
  });
  return new Record(events).frames("enter", "keydown");
}

/** The same on the bare page, on canvases of the sizes that the page has now. */
async function bareKeys(page, count) {
  const [width, curves, band] = await page.value('["curves", "band"].map((id) => document.getElementById(id)).flatMap((c, n) => n ? [c.height] : [c.width, c.height])');
  const bare = await browser.page();
  await goto(bare, `${site.origin}/bare.html?count=${count}&width=${width}&curves=${curves}&band=${band}`);
  await bare.rest(300);
  const events = await bare.traced(async () => {
    for (let n = 0; n < TIMES; n++) {
      await mark(bare, "enter");
      await bare.key("Enter");
      await bare.rest(200);
    }
  });
  await bare.close();
  return new Record(events).frames("enter", "keydown");
}

/**
 * Drags the bridge pin of a string up and down, two pixels a step, with a group beside the drawing open; or holds it still,
 * which says what marks and frames take by themselves.
 */
async function drag(page, group = "shape", moves = true) {
  await press(page, "#drawing");
  if (!(await page.value(`document.querySelector("#group-${group}").ariaExpanded === "true"`))) await press(page, `#group-${group}`);
  await page.until('!!document.querySelector("#loft g.marks .ring")');
  // A string of the middle: the shortest would be pulled away to nothing, and a step that changes nothing takes nothing.
  await page.value('document.querySelector("#loft").focus()');
  for (let n = 0; n < 20; n++) await page.key("PageDown");
  await page.rest(500);
  const [x, y] = await page.value('(() => { const g = document.querySelector("#loft g.marks .ring").getBoundingClientRect(); return [g.x + g.width / 2, g.y + g.height / 2]; })()');
  if (profile) {
    await page.send("Profiler.enable");
    await page.send("Profiler.setSamplingInterval", { interval: 200 });
    await page.send("Profiler.start");
  }
  const events = await page.traced(async () => {
    await page.mouse("mouseMoved", x, y);
    await page.mouse("mousePressed", x, y, 1);
    for (let n = 0; n < TIMES + 4; n++) {
      if (n >= 4) await mark(page, "step"); // the first steps only begin the drag
      if (moves || n < 4) await page.mouse("mouseMoved", x, y + 4 + 2 * (n % 20), 1);
      await page.rest();
      await page.rest();
      await mark(page, "drawn");
    }
    await page.mouse("mouseReleased", x, y);
    await page.rest(300);
  });
  if (profile) writeFileSync(profile, JSON.stringify((await page.send("Profiler.stop")).profile));
  await press(page, "#undo");
  await press(page, "#chart-view");
  await page.rest(500);
  return new Record(events).spans("step", "drawn");
}

const closeWindow = (page) => page.value('document.querySelector("dialog .window-head button")?.click(); document.querySelector("#close-card")?.click()');
const onChart = (page) => page.value('document.querySelector("#chart").focus()');
const view = (name, id) => ({ name, open: (page) => press(page, id), close: (page) => press(page, "#chart-view") });
const windowOf = (name, id) => ({ name, open: (page) => press(page, id), close: closeWindow });
const byKey = (name, key, modifiers, close) => ({ name, before: onChart, open: (page) => page.key(key, modifiers), close });
const inDrawing = (name, title) => ({
  name,
  before: async (page) => {
    await press(page, "#drawing");
    if (!(await page.value('document.querySelector("#group-files").ariaExpanded === "true"'))) await press(page, "#group-files");
    await page.rest(500);
  },
  open: (page) => page.value(`[...document.querySelectorAll(".drawing-side button")].find((b) => b.textContent.trim() === ${JSON.stringify(title)}).click()`),
  close: (page) => press(page, "#chart-view"),
});
const inChoose = (name, group, id) => ({
  name,
  before: async (page) => {
    await press(page, "#choose-view");
    await page.rest(300);
    if (!(await page.value(`!!document.querySelector(${JSON.stringify(id)})`))) await press(page, group);
    await page.rest(500);
  },
  open: (page) => press(page, id),
  settle: 4_000,
  close: (page) => press(page, "#chart-view"),
});

/** What is opened or asked for, with the back to the chart measured too. */
const OPENED = [
  view("Drawing", "#drawing"), view("Choose strings", "#choose-view"), view("Order", "#order-view"), view("Versions", "#versions-view"),
  windowOf("New", "#new"), windowOf("Designs", "#shelf"), windowOf("Instrument", "#instrument"), windowOf("Materials", "#materials"),
  windowOf("Stock", "#stock"), windowOf("Numbers", "#numbers"), windowOf("Card", "#card"),
  byKey("Make-up", "Enter", 2, closeWindow), byKey("Details", "Enter", 1, closeWindow),
  byKey("insert a string", "Insert", 0, (page) => press(page, "#undo")),
  { ...byKey("delete a string", "Delete", 2, (page) => press(page, "#undo")) },
  inDrawing("PDF on A4", "PDF on A4"),
  inChoose("best set", "#choose-points", "#find-set"), inChoose("other lengths", "#choose-reshape", "#find-lengths"),
];

/** How long the longest task is at each opening and at the way back, and how long until the first frame. */
async function openings(page) {
  const found = [];
  for (const { name, before, open, close, settle } of OPENED) {
    const [there, back] = [[], []];
    for (let n = 0; n < (quick ? 1 : 3); n++) {
      await before?.(page);
      const events = await page.traced(async () => {
        await mark(page, "open");
        await open(page);
        await page.rest(settle ?? 900);
        await mark(page, "close");
        await close(page);
        await page.rest(700);
      });
      const record = new Record(events);
      there.push(record.longestBetween("open", "close"));
      back.push(record.longestBetween("close"));
    }
    found.push({ name, there: quantile(there, 0.5), back: quantile(back, 0.5) });
  }
  return found;
}

/** Opens the page again with its harp: how long until it stands, and the longest task. */
async function start(page) {
  const runs = [];
  for (let n = 0; n < (quick ? 2 : 5); n++) {
    let stands;
    const events = await page.traced(async () => {
      await mark(page, "start");
      await goto(page, `${site.origin}/?${n}`);
      await page.until(opened);
      await page.rest(1_200);
      stands = await page.value('performance.getEntriesByType("paint").find((p) => p.name === "first-contentful-paint")?.startTime ?? 0');
    });
    const record = new Record(events);
    runs.push({ longest: record.longestBetween("start"), long: record.longBetween("start"), paint: stands });
  }
  const pick = (field) => quantile(runs.map((run) => run[field]), 0.5);
  return { longest: pick("longest"), long: pick("long"), paint: pick("paint") };
}

/** What is left behind by going through all views and some windows again and again. */
async function leaks(page) {
  const VIEWS = ["#drawing", "#choose-view", "#order-view", "#versions-view", "#chart-view"];
  const counted = async () => {
    for (let n = 0; n < 3; n++) await page.send("HeapProfiler.collectGarbage");
    await page.rest(100);
    const counters = await page.send("Memory.getDOMCounters");
    const heap = await page.send("Runtime.getHeapUsage");
    return { ...counters, heap: heap.usedSize, buffers: heap.backingStorageSize };
  };
  const rounds = async (steps, times) => {
    for (let n = 0; n < times; n++) for (const step of steps) { await step(); await page.rest(60); }
  };
  const views = VIEWS.map((id) => () => press(page, id));
  const windows = ["#instrument", "#stock", "#numbers", "#card"].flatMap((id) => [() => press(page, id), () => closeWindow(page)]);
  const found = [];
  for (const [name, steps] of [...VIEWS.slice(0, 4).map((id, n) => [`chart and ${OPENED[n].name}`, [views[n], views[4]]]), ["all views", views], ["windows", windows]]) {
    await rounds(steps, 3);
    const before = await counted();
    await rounds(steps, ROUNDS);
    const after = await counted();
    const grown = (field) => after[field] - before[field];
    found.push({ name, nodes: grown("nodes"), listeners: grown("jsEventListeners"), heap: grown("heap"), buffers: grown("buffers"), now: after });
  }
  return found;
}

console.log(`${folder}, ${TIMES} times each; milliseconds of the page's main thread: median / 95 of 100 / worst`);
const HEADS = ["script", "style", "layout", "paint", "all", "until the frame"];
for (const count of [47, 150]) {
  const page = await pageWith(count);
  console.log(`\n${count} strings`);
  if (wanted("keys")) {
    const [ours, bare] = [await keys(page, count), await bareKeys(page, count)];
    console.log(row("", HEADS));
    console.log(row("Enter in a cell", ours.table()));
    console.log(row("the bare page", bare.table()));
    console.log(row("times the bare page", ["script", "", "", "", "all", "wall"].map((field) => field && (ours.median(field) / bare.median(field)).toFixed(2))));
  }
  if (wanted("drag")) {
    console.log(row("", HEADS.slice(0, 5)));
    console.log(row("held still", (await drag(page, "shape", false)).table().slice(0, 5)));
    console.log(row("a step of a pin", (await drag(page)).table().slice(0, 5)));
    console.log(row("with its loads", (await drag(page, "loads")).table().slice(0, 5)));
  }
  if (wanted("open")) {
    console.log(row("longest task at", ["opening", "back"]));
    for (const { name, there, back } of await openings(page)) console.log(row(name, [there.toFixed(0), back.toFixed(0)]));
  }
  if (wanted("start")) {
    const { longest, long, paint } = await start(page);
    console.log(`start: longest task ${longest.toFixed(0)}, beyond 50 ms each ${long.toFixed(0)} in all, first paint ${paint.toFixed(0)}`);
  }
  if (wanted("leaks")) {
    const kb = (bytes) => `${(bytes / 1024).toFixed(0)} kB`;
    console.log(row(`left after ${ROUNDS} rounds`, ["nodes", "listeners", "heap", "buffers"]));
    for (const left of await leaks(page)) {
      console.log(row(left.name, [left.nodes, left.listeners, kb(left.heap), kb(left.buffers)].map(String)));
      if (left.name === "windows") console.log(`in all: ${left.now.nodes} nodes, heap ${kb(left.now.heap)}, buffers ${kb(left.now.buffers)}`);
    }
  }
  await page.close();
}
browser.close();
site.close();
