// What a record of the browser says of the page's main thread: what each frame took, and the longest tasks. Times are
// those that the thread had a processor, so that other programs on the machine count little; only "until the frame" is
// by the clock.

/** The value that so large a share of all lies at or below. */
export function quantile(values, share) {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted.length ? sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))] : NaN;
}

/** A line of a table. */
export const row = (name, cells) => `${name.padEnd(22)}${cells.map((cell) => cell.padStart(21)).join("")}`;

/** Which events count as what; what is nested in another kind is taken off the outer one. */
const KINDS = {
  script: ["EventDispatch", "FunctionCall", "EvaluateScript", "FireAnimationFrame", "TimerFire", "RunMicrotasks", "FireIdleCallback", "v8.run", "MinorGC", "MajorGC"],
  style: ["UpdateLayoutTree"],
  layout: ["Layout"],
  paint: ["PrePaint", "Paint", "Layerize", "Commit", "UpdateLayer"],
};
const kindOf = new Map(Object.entries(KINDS).flatMap(([kind, names]) => names.map((name) => [name, kind])));

/** The frames that followed a number of marks. */
class Frames {
  constructor(frames) {
    this.frames = frames;
  }

  of(field) {
    return this.frames.map((frame) => frame[field]);
  }

  median(field) {
    return quantile(this.of(field), 0.5);
  }

  table() {
    const cell = (field) => [0.5, 0.95, 1].map((share) => quantile(this.of(field), share).toFixed(1)).join(" / ");
    return ["script", "style", "layout", "paint", "all", "wall"].map(cell);
  }
}

/** Microseconds of an event in which its thread had a processor. */
const took = (event) => event.tdur ?? event.dur;

export class Record {
  constructor(events) {
    const page = events.find((event) => event.name === "bench-page");
    // A page that is loaded again may go on in another process; then the marks of the old one say nothing.
    this.events = events.filter((event) => event.pid === page.pid && event.tid === page.tid && event.ts >= page.ts);
    this.events.sort((a, b) => a.ts - b.ts || (b.dur ?? 0) - (a.dur ?? 0));
    this.tasks = this.events.filter((event) => event.name === "RunTask" && event.ph === "X");
  }

  marks(name) {
    return this.events.filter((event) => event.cat?.includes("blink.user_timing") && event.name === name && event.ph !== "e").map((event) => event.ts);
  }

  /** For each mark: from the first `type` event after it to the end of the first frame that was handed on after that. */
  frames(name, type) {
    const frames = this.marks(name).map((at) => {
      const first = this.events.find((event) => event.ts >= at && event.name === "EventDispatch" && event.args?.data?.type === type);
      if (!first) return undefined;
      const begun = this.tasks.findLast((task) => task.ts <= first.ts)?.ts ?? first.ts;
      const commit = this.events.find((event) => event.name === "Commit" && event.ts >= first.ts + (first.dur ?? 0));
      if (!commit) return undefined;
      const last = this.tasks.findLast((task) => task.ts <= commit.ts);
      const end = Math.max(commit.ts + commit.dur, last ? last.ts + last.dur : 0);
      return { ...this.spent(begun, end), wall: (end - first.ts) / 1_000 };
    });
    return new Frames(frames.filter(Boolean));
  }

  /** What the thread did between each mark and the next `until`. */
  spans(name, until) {
    const ends = this.marks(until);
    const spans = this.marks(name).map((at) => {
      const end = ends.find((end) => end > at);
      return end && { ...this.spent(at, end), wall: NaN };
    });
    return new Frames(spans.filter(Boolean));
  }

  /** What the thread did between two moments, by kind, and in all. */
  spent(from, to) {
    const spent = { script: 0, style: 0, layout: 0, paint: 0, all: 0 };
    const open = []; // the events around the current one, from the outermost in
    const add = (kind, ms) => kind && (spent[kind] += ms / 1_000);
    for (const event of this.events) {
      if (event.ph !== "X" || event.ts < from || event.ts >= to) continue;
      const end = event.ts + event.dur;
      if (event.name === "RunTask") add("all", took(event));
      const kind = kindOf.get(event.name);
      if (!kind) continue;
      while (open.length && open.at(-1).end <= event.ts) open.pop();
      add(open.at(-1)?.kind, -took(event));
      add(kind, took(event));
      open.push({ end, kind });
    }
    return spent;
  }

  between(from, to) {
    const begun = this.marks(from)[0] ?? 0;
    const end = (to && this.marks(to)[0]) ?? Infinity;
    return this.tasks.filter((task) => task.ts >= begun - 1_000 && task.ts < end).map((task) => took(task) / 1_000);
  }

  longestBetween(from, to) {
    return Math.max(0, ...this.between(from, to));
  }

  /** What all tasks take beyond 50 ms each: how long the page does not answer. */
  longBetween(from, to) {
    return this.between(from, to).reduce((sum, ms) => sum + Math.max(0, ms - 50), 0);
  }
}
