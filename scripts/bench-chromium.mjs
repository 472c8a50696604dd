// A headless Chromium driven over a pipe in the DevTools protocol, and a file server for it. Only what scripts/bench.mjs needs.
import { spawn } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import http from "node:http";
import { tmpdir } from "node:os";
import path from "node:path";

export const TYPES = {
  ".html": "text/html; charset=utf-8", ".js": "text/javascript", ".mjs": "text/javascript", ".css": "text/css",
  ".wasm": "application/wasm", ".svg": "image/svg+xml", ".png": "image/png", ".webmanifest": "application/manifest+json",
};

/** Serves a folder, and single files beside it, on a free port; gives the origin. */
export async function serve(folder, extra = {}) {
  const server = http.createServer((request, response) => {
    const name = decodeURIComponent(new URL(request.url, "http://host").pathname);
    const inside = path.join(folder, path.normalize(name === "/" ? "/index.html" : name));
    try {
      const file = extra[name] ?? inside;
      const body = readFileSync(file);
      response.writeHead(200, { "content-type": TYPES[path.extname(file)] ?? "application/octet-stream" }).end(body);
    } catch {
      response.writeHead(404).end();
    }
  });
  await new Promise((done) => server.listen(0, "127.0.0.1", done));
  return { origin: `http://127.0.0.1:${server.address().port}`, close: () => server.close() };
}

export class Chromium {
  static async start() {
    const browser = new Chromium();
    browser.profile = mkdtempSync(path.join(tmpdir(), "bench-"));
    browser.child = spawn(process.env.CHROMIUM ?? "chromium", [
      "--headless", "--no-sandbox", "--disable-gpu", "--disable-dev-shm-usage", "--disable-background-networking",
      "--disable-component-update", "--disable-sync", "--no-first-run", "--window-size=1366,768",
      "--remote-debugging-pipe", `--user-data-dir=${browser.profile}`, "about:blank",
    ], { stdio: ["ignore", "ignore", "ignore", "pipe", "pipe"] });
    browser.last = 0;
    browser.waiting = new Map();
    browser.listeners = new Set();
    let rest = Buffer.alloc(0);
    browser.child.stdio[4].on("data", (chunk) => {
      rest = Buffer.concat([rest, chunk]);
      for (let end; (end = rest.indexOf(0)) >= 0; rest = rest.subarray(end + 1)) {
        browser.heard(JSON.parse(rest.subarray(0, end).toString()));
      }
    });
    return browser;
  }

  heard(message) {
    const asked = this.waiting.get(message.id);
    if (asked) {
      this.waiting.delete(message.id);
      if (message.error) asked.reject(new Error(`${asked.method}: ${message.error.message}`));
      else asked.resolve(message.result);
    } else {
      for (const listener of this.listeners) listener(message);
    }
  }

  /** Asks one thing of the browser, or of one of its pages. */
  send(method, params = {}, sessionId = undefined) {
    const id = ++this.last;
    this.child.stdio[3].write(`${JSON.stringify({ id, method, params, sessionId })}\0`);
    return new Promise((resolve, reject) => this.waiting.set(id, { resolve, reject, method }));
  }

  /** The next message of this name that `fits`. */
  next(name, fits = () => true) {
    return new Promise((resolve) => {
      const listener = (message) => {
        if (message.method === name && fits(message)) {
          this.listeners.delete(listener);
          resolve(message.params);
        }
      };
      this.listeners.add(listener);
    });
  }

  /** A page of its own profile, so that nothing is kept from the one before. */
  async page() {
    const { browserContextId } = await this.send("Target.createBrowserContext");
    const { targetId } = await this.send("Target.createTarget", { url: "about:blank", browserContextId });
    const { sessionId } = await this.send("Target.attachToTarget", { targetId, flatten: true });
    const page = new Page(this, sessionId, browserContextId);
    await page.send("Page.enable");
    await page.send("Emulation.setDeviceMetricsOverride", { width: 1366, height: 768, deviceScaleFactor: 1, mobile: false });
    return page;
  }

  close() {
    this.child.kill("SIGKILL");
    try {
      rmSync(this.profile, { recursive: true, force: true, maxRetries: 5, retryDelay: 200 });
    } catch {
      // A part of the browser may still be leaving; its profile lies in the folder of temporary files.
    }
  }
}

/** Virtual key codes of the keys that are pressed here. */
const CODES = { Enter: 13, Escape: 27, Insert: 45, Delete: 46, PageDown: 34, ArrowDown: 40, ArrowUp: 38, z: 90 };

export class Page {
  constructor(browser, session, context) {
    Object.assign(this, { browser, session, context });
  }

  send(method, params) {
    return this.browser.send(method, params, this.session);
  }

  /** The value of an expression in the page; of a promise, what comes of it. */
  async value(expression) {
    const { result, exceptionDetails } = await this.send("Runtime.evaluate", { expression, awaitPromise: true, returnByValue: true });
    if (exceptionDetails) throw new Error(`${expression}: ${exceptionDetails.exception?.description ?? exceptionDetails.text}`);
    return result.value;
  }

  async until(expression, patience = 20_000) {
    const end = Date.now() + patience;
    while (!(await this.value(expression))) {
      if (Date.now() > end) throw new Error(`waited in vain for ${expression}`);
      await wait(20);
    }
  }

  /** Waits until two frames have been drawn, and for as long as is said. */
  async rest(ms = 0) {
    await this.value("new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(() => done(true))))");
    if (ms) await wait(ms);
  }

  async key(key, modifiers = 0) {
    const text = key.length === 1 && modifiers === 0 ? key : key === "Enter" && modifiers === 0 ? "\r" : undefined;
    const code = CODES[key] ?? key.toUpperCase().charCodeAt(0);
    const common = { key, code: key.length === 1 ? undefined : key, windowsVirtualKeyCode: code, modifiers };
    await this.send("Input.dispatchKeyEvent", { type: text ? "keyDown" : "rawKeyDown", text, ...common });
    await this.send("Input.dispatchKeyEvent", { type: "keyUp", ...common });
  }

  async mouse(type, x, y, buttons = 0) {
    await this.send("Input.dispatchMouseEvent", { type, x, y, button: type === "mouseMoved" && !buttons ? "none" : "left", buttons, clickCount: type === "mouseMoved" ? 0 : 1 });
  }

  /** Gives a file to a field, as the browser's dialog would. */
  async giveFile(css, name, text) {
    const made = `(() => {
      const data = new DataTransfer();
      data.items.add(new File([${JSON.stringify(text)}], ${JSON.stringify(name)}));
      const input = document.querySelector(${JSON.stringify(css)});
      input.files = data.files;
      input.dispatchEvent(new Event("change", { bubbles: true }));
    })()`;
    await this.value(made);
  }

  /** Records what the page's main thread does while `work` runs; gives the events. */
  async traced(work) {
    const events = [];
    const listener = (message) => {
      if (message.method === "Tracing.dataCollected") events.push(...message.params.value);
    };
    this.browser.listeners.add(listener);
    const includedCategories = ["devtools.timeline", "disabled-by-default-devtools.timeline", "blink.user_timing", "loading"];
    const traceConfig = { includedCategories, excludedCategories: ["*"], recordMode: "recordAsMuchAsPossible" };
    await this.browser.send("Tracing.start", { transferMode: "ReportEvents", traceConfig });
    await this.value('performance.mark("bench-page")'); // tells which of the threads is the page's
    try {
      await work();
    } finally {
      const ended = this.browser.next("Tracing.tracingComplete");
      await this.browser.send("Tracing.end");
      await ended;
      this.browser.listeners.delete(listener);
    }
    return events;
  }

  async close() {
    await this.browser.send("Target.disposeBrowserContext", { browserContextId: this.context });
  }
}

export const wait = (ms) => new Promise((done) => setTimeout(done, ms));
