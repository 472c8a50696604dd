// How long a built page takes to stand, over lines of several speeds, packed with brotli as servers send it.
//   node scripts/bench-line.mjs [FOLDER...]
// For each folder and line: milliseconds from the start of the navigation to the first paint and to the chart, median
// and worst; "again" is a second visit from the service worker; "link" opens a link (the first visit, at 10 Mbit/s).
import { readFileSync } from "node:fs";
import http from "node:http";
import path from "node:path";
import zlib from "node:zlib";
import { Chromium, TYPES } from "./bench-chromium.mjs";

const RUNS = 5;
const LINES = [["at once", 0, -1], ["10 Mbit/s, 40 ms", 40, 10e6 / 8], ["1.6 Mbit/s, 150 ms", 150, 1.6e6 / 8]];
const folders = process.argv.slice(2);
if (!folders.length) folders.push("target/e2e-dist");

/** Serves a folder, every file packed once. */
async function serve(folder) {
  const packed = new Map();
  const server = http.createServer((request, response) => {
    const name = new URL(request.url, "http://host").pathname;
    const file = path.join(folder, path.normalize(name === "/" ? "/index.html" : name));
    try {
      if (!packed.has(file)) packed.set(file, zlib.brotliCompressSync(readFileSync(file)));
      const type = TYPES[path.extname(file)] ?? "application/octet-stream";
      response.writeHead(200, { "content-type": type, "content-encoding": "br" }).end(packed.get(file));
    } catch {
      response.writeHead(404).end();
    }
  });
  await new Promise((done) => server.listen(0, "127.0.0.1", done));
  return { origin: `http://127.0.0.1:${server.address().port}`, close: () => server.close() };
}

const CHART = `new Promise((done) => {
  const look = () => document.querySelector("#chart [role=row], #chart tr") ? requestAnimationFrame(() => done(performance.now())) : setTimeout(look, 4);
  look();
})`;
const PAINT = `performance.getEntriesByType("paint").find((entry) => entry.name === "first-contentful-paint")?.startTime ?? NaN`;

async function opened(page, url) {
  await page.send("Page.navigate", { url });
  // The old document may still answer.
  for (;;) {
    try {
      if (await page.value(`location.href.startsWith(${JSON.stringify(url.split("#")[0])})`)) break;
    } catch { /* it was just replaced */ }
  }
  return { chart: await page.value(CHART), paint: await page.value(PAINT) };
}

const middle = (all) => [...all].sort((a, b) => a - b)[Math.floor(all.length / 2)];
const told = (all) => `${middle(all).toFixed(0).padStart(6)} ${Math.max(...all).toFixed(0).padStart(6)}`;
const browser = await Chromium.start();
const sites = [];
for (const folder of folders) sites.push([folder, await serve(folder)]);
console.log(`${"".padEnd(44)}  first paint        the chart`);

/** Visits each site in turn, so that a busy spell of the machine meets all of them. */
async function measure(what, latency, downloadThroughput, visit) {
  const found = new Map(sites.map(([folder]) => [folder, { paint: [], chart: [] }]));
  for (let run = 0; run < RUNS; run += 1) {
    for (const [folder, site] of sites) {
      const page = await browser.page();
      await page.send("Network.enable");
      await page.send("Network.emulateNetworkConditions", { offline: false, latency, downloadThroughput, uploadThroughput: downloadThroughput });
      const { paint, chart } = await visit(page, site);
      found.get(folder).paint.push(paint);
      found.get(folder).chart.push(chart);
      await page.close();
    }
  }
  for (const [folder, { paint, chart }] of found) {
    console.log(`${path.basename(folder).padEnd(20)} ${what.padEnd(22)}  ${told(paint)}    ${told(chart)}`);
  }
}

for (const [what, latency, speed] of LINES) {
  await measure(what, latency, speed, (page, site) => opened(page, `${site.origin}/`));
}
await measure("again", 0, -1, async (page, site) => {
  await opened(page, `${site.origin}/`);
  await page.value("navigator.serviceWorker.ready.then(() => new Promise((done) => setTimeout(done, 1000)))");
  await page.send("Page.navigate", { url: "about:blank" });
  return opened(page, `${site.origin}/`);
});
if (process.env.LINK) {
  await measure("link, 10 Mbit/s", 40, 10e6 / 8, (page, site) => opened(page, `${site.origin}/#${process.env.LINK}`));
}
for (const [, site] of sites) site.close();
browser.close();
process.exit(0);
