/** The unrolled seam: one row for each rule with its state along the path, and its value where the reader stands. */

import type { Atlas } from "./atlas";
import { byId, clear, h, px, svg } from "./dom";
import { NEAR, STATE_NAME, WITHIN, type Finding, type Runs, type Spot } from "./types";
import { isStretchOfNote, spotsOf, type Place, type Walk } from "./walk";
import { MARK, numbersOf, shortNumbersOf } from "./words";
import { bareMm, mm, mmUnit, num, oneLength, tr } from "./voice";

const word = (state: number): string => [tr("not measured"), tr("within"), tr("close to the limit"), tr("limit broken"), tr("broken, waived"), tr("to be looked at"), tr("noted")][state];
/** State -> top and height of its mark in a row 14 high: the graver, the taller. */
const TALL = [[6.5, 1.5], [5.5, 3], [4, 6], [0, 14], [1.5, 11], [2, 10], [4.5, 5]];
const MOST_ROWS = 10; // shown without asking, unless more have a finding
const WIDE = 1000; // units of the tracks' own drawing width

export class Strip {
  private values: HTMLElement[] = [];
  private readonly cursor = h("div", { class: "strip-cursor", "aria-hidden": true });
  private shownJoint = -1;
  private board: HTMLElement | null = null;

  constructor(private readonly host: HTMLElement, private readonly atlas: Atlas, private readonly walk: Walk) {
    const move = (event: PointerEvent) => {
      const box = this.trackBox();
      if (!box) return;
      const share = Math.max(0, Math.min(1, (event.clientX - box.left) / box.width));
      this.walk.go(this.walk.at(share * this.walk.stretches().length), "strip");
    };
    host.addEventListener("pointerdown", (event) => {
      const track = (event.target as Element).closest(".track");
      if (!track || (event.target as Element).closest("button")) return;
      host.setPointerCapture(event.pointerId);
      move(event);
    });
    host.addEventListener("pointermove", (event) => { if (event.buttons && host.hasPointerCapture(event.pointerId)) move(event); });
    new ResizeObserver(() => this.moveCursor()).observe(host);
  }

  private trackBox(): DOMRect | null {
    return this.host.querySelector(".track")?.getBoundingClientRect() ?? null;
  }

  private build(): void {
    this.shownJoint = this.walk.place.joint;
    clear(this.host);
    this.values = [];
    const { stretches, length } = this.walk.stretches();
    const { joint, facts } = this.walk;
    const X = (position: number) => (position / length) * WIDE;
    const board = h("div", { class: "strip-board" });
    this.board = board;

    // Ruler: millimetres, turns of the path, and the findings where they are worst.
    const ruler = svg("svg", { class: "ruler", viewBox: `0 0 ${WIDE} 30`, preserveAspectRatio: "none", "aria-hidden": true });
    const numbers = h("div", { class: "ruler-numbers", "aria-hidden": true });
    const across = this.host.clientWidth || 1000, track = across > 820 ? across * 0.62 : across - 200;
    const step = oneLength() * niceStep(length / oneLength() / Math.max(2, Math.min(8, track / 50)));
    for (const { start, length: own, contour } of stretches) {
      ruler.append(svg("line", { class: "ruler-line", x1: X(start), x2: X(start + own), y1: 29, y2: 29 }));
      for (let s = 0; s <= own + 1e-6; s += step / 5) {
        const major = Math.abs(s / step - Math.round(s / step)) < 1e-6;
        ruler.append(svg("line", { class: "ruler-line", x1: px(X(start + s)), x2: px(X(start + s)), y1: major ? 20 : 25, y2: 29 }));
        if (major && own - s > Math.max(step * 0.45, length * 0.075)) numbers.append(at(h("span", null, oneLength() === 1 ? `${Math.round(s)}` : num(s / oneLength(), step / oneLength() < 1 ? 1 : 0)), X(start + s)));
      }
      if (length > 0 && own > step) numbers.append(at(h("span", { class: "end" }, bareMm(own, 1)), X(start + own)));
      if (stretches.length > 1) numbers.append(at(h("b", null, joint.contours[contour].id), X(start + own / 2)));
      this.turns(ruler, contour, start, X);
    }
    board.append(h("div", { class: "strip-head" }, tr("unrolled seam, {unit}", { unit: mmUnit() })), h("div", { class: "track ruler-track" }, ruler, numbers, this.marks(X)), h("div", { class: "strip-head end" }, tr("here · limit")));

    const isFirst = (k: number) => facts.bands[k].severity === "must-fix" || this.atlas.payload.findings.some((f) => f.rule === facts.bands[k].rule && f.joint === joint.id && f.severity !== "note");
    // Rules with a finding first, then must-fix rules, then the others.
    const weight = (k: number) => {
      const own = this.atlas.payload.findings.filter((f) => f.rule === facts.bands[k].rule && f.joint === joint.id && f.severity !== "note");
      return own.some((f) => f.severity === "must-fix" && !f.waived) ? 0 : own.length ? 1 : isFirst(k) ? 2 : 3;
    };
    const order = facts.bands.map((_, k) => k).sort((a, b) => weight(a) - weight(b));
    const shown = new Set(order.filter((k, place) => isFirst(k) && (place < MOST_ROWS || weight(k) < 2)));
    for (const k of order) {
      const band = facts.bands[k];
      const more = shown.has(k) ? "" : " more";
      const track = svg("svg", { viewBox: `0 0 ${WIDE} 14`, preserveAspectRatio: "none", role: "img", "aria-label": this.spoken(k) });
      for (const { contour, start } of stretches) {
        const path = joint.contours[contour];
        const runs: Runs = facts.tracks[path.id]?.[k] ?? [];
        for (const [from, to, state] of runs) {
          const x0 = X(start + middle(path.stations.s, from, 0, path.length_mm));
          const x1 = X(start + middle(path.stations.s, to, 1, path.length_mm));
          // A stretch of a few mm stays wider than the line that marks where the reader stands.
          const width = state > NEAR ? Math.max(7, x1 - x0) : x1 - x0;
          track.append(svg("rect", { class: `cell ${STATE_NAME[state]}`, x: px((x0 + x1 - width) / 2), y: TALL[state][0], width: px(width), height: TALL[state][1] }));
        }
      }
      const value = h("div", { class: `strip-value${more}`, "data-rule": band.rule });
      this.values[k] = value;
      board.append(
        h("div", { class: `strip-label${more}`, title: band.title }, band.title),
        h("div", { class: `track${more}` }, track), value,
      );
    }
    const rest = order.length - shown.size;
    this.host.append(this.cursor, board);
    document.documentElement.style.setProperty("--strip", `${Math.ceil(board.getBoundingClientRect().height) + (rest ? 38 : 18)}px`);
    if (rest) {
      const button = h("button", { type: "button", class: "strip-more screen", "aria-expanded": false }, tr("{count} further rules", { count: rest }));
      button.addEventListener("click", () => {
        const open = board.classList.toggle("open");
        button.setAttribute("aria-expanded", String(open));
        button.textContent = open ? tr("fewer rules") : tr("{count} further rules", { count: rest });
        this.moveCursor();
      });
      this.host.append(button);
    }
  }

  private turns(ruler: SVGElement, contour: number, start: number, X: (p: number) => number): void {
    const { stations, length_mm } = this.walk.joint.contours[contour];
    const radius = stations.corner_radius as (number | null)[] | undefined;
    if (!radius) return;
    for (let i = 0; i < radius.length; i++) {
      if (radius[i] === null || radius[i]! > 60) continue;
      let j = i;
      while (j + 1 < radius.length && radius[j + 1] !== null && radius[j + 1]! <= 60) j++;
      const [a, b] = [middle(stations.s, i, 0, length_mm), middle(stations.s, j, 1, length_mm)];
      ruler.append(svg("rect", { class: "turn", x: px(X(start + a)), width: px(X(b) - X(a)), y: 20, height: 9 },
        svg("title", null, tr("bend of the seam"))));
      i = j;
    }
  }

  private marks(X: (p: number) => number): HTMLElement {
    const all: Finding[] = this.atlas.payload.findings;
    const holder = h("div", { class: "strip-marks" });
    const { stretches } = this.walk.stretches();
    const placed: { x: number; findings: Finding[]; spot: Spot }[] = [];
    for (const finding of all) {
      if (finding.joint !== this.walk.joint.id || finding.station === null || isStretchOfNote(finding)) continue;
      for (const spot of spotsOf(finding)) {
        const contour = this.walk.joint.contours.findIndex((c) => c.id === spot.contour);
        placed.push({ x: X(stretches[contour].start + this.walk.joint.contours[contour].stations.s[spot.station]), findings: [finding], spot });
      }
    }
    // Numbers that would print over each other stand as one group.
    const across = this.host.clientWidth || 1000, wide = across > 820 ? across * 0.62 : across - 200;
    const label = placed.length > 8 ? shortNumbersOf : numbersOf;
    const reach = (p: { findings: Finding[] }) => Math.max(24, label(p.findings).length * 7.5 + 6) / 2;
    placed.sort((a, b) => a.x - b.x);
    for (let i = 0; i + 1 < placed.length;) {
      const [a, b] = [placed[i], placed[i + 1]];
      if (((b.x - a.x) * wide) / WIDE >= reach(a) + reach(b) + 3) { i++; continue; }
      const findings = [...new Set([...a.findings, ...b.findings])].sort((p, q) => p.n - q.n);
      placed.splice(i, 2, { spot: findings[0] === a.findings[0] ? a.spot : b.spot, x: (a.x * a.findings.length + b.x * b.findings.length) / (a.findings.length + b.findings.length), findings });
      i = Math.max(0, i - 1);
    }
    for (const { x, findings, spot } of placed) {
      const first = findings[0];
      const button = h("button", { type: "button", class: `strip-mark ${first.waived ? "waived" : first.severity}`, "data-finding": first.n,
        "aria-label": tr("Go to finding {numbers}: {title}", { numbers: findings.map((f) => f.n).join(", "), title: first.title }) }, label(findings));
      button.addEventListener("click", () => this.walk.showFinding(first, "finding", spot));
      holder.append(at(button, x));
    }
    return holder;
  }

  /** The row in words, for readers who don't see it. */
  private spoken(k: number): string {
    const { joint, facts } = this.walk;
    const told: string[] = [];
    for (const contour of joint.contours) {
      for (const [from, to, state] of facts.tracks[contour.id]?.[k] ?? []) {
        if (state === WITHIN) continue;
        told.push(tr("{state} from {low} to {high}", { state: word(state), low: bareMm(contour.stations.s[from], 1), high: mm(contour.stations.s[to], 1) }));
      }
    }
    const band = facts.bands[k];
    return `${band.title}, ${band.words}: ${told.length ? told.slice(0, 6).join("; ") : tr("within everywhere")}`;
  }

  show(place: Place): void {
    if (place.joint !== this.shownJoint) this.build();
    const { contour, facts, s, joint } = this.walk;
    const words = this.atlas.words;
    const here = this.walk.findingsHere();
    facts.bands.forEach((band, k) => {
      const finding = here.find((f) => f.rule === band.rule);
      const host = this.values[k];
      clear(host);
      for (const name of ["must-fix", "attention", "note", "waived"]) host.classList.remove(name);
      if (finding) host.classList.add(finding.waived ? "waived" : finding.severity);
      const holder = h("span", { class: "values" }, finding ? `${MARK[finding.severity]} ` : "");
      const cells = band.columns.filter((column) => Array.isArray(contour.stations[column])).map((column) => {
        const value = (contour.stations[column] as (number | null)[])[place.station] ?? null;
        const why = value === null ? words.reason(joint.id, contour.id, column, s) : "";
        const text = value === null ? "–" : band.columns.length > 1 && words.unit(column) ? words.bare(value, column) : words.value(value, column);
        return h("b", { "data-column": column, "data-value": String(value), title: why || words.title(column) }, text);
      });
      if (!cells.length && finding) cells.push(h("b", { "data-finding": finding.n }, finding.value));
      cells.forEach((cell, i) => holder.append(i ? " / " : "", cell));
      host.dataset.state = finding ? (finding.waived ? "waived" : finding.severity) : "";
      const cause = finding ? undefined : here.find((f) => f.also.includes(band.rule));
      const limit = cause ? tr("see finding {number}", { number: cause.n }) : finding?.limit_short || band.words || "";
      host.append(holder, h("span", { class: "limit", title: finding?.limit || limit }, limit));
    });
    this.moveCursor();
  }

  private moveCursor(): void {
    const box = this.trackBox();
    if (!box || !this.board) return;
    const own = this.host.getBoundingClientRect();
    const share = this.walk.unrolled / this.walk.stretches().length;
    this.cursor.style.transform = `translateX(${px(box.left - own.left + share * box.width)}px)`;
    this.cursor.style.height = `${px(this.board.getBoundingClientRect().height)}px`;
    this.cursor.dataset.share = share.toFixed(5);
  }
}

function at<T extends HTMLElement>(element: T, x: number): T {
  element.style.left = `${(x / WIDE) * 100}%`;
  return element;
}

/** Halfway to the neighbour station before (side 0) or behind (side 1). */
export function middle(s: number[], i: number, side: 0 | 1, length: number): number {
  if (side === 0) return i === 0 ? 0 : (s[i - 1] + s[i]) / 2;
  return i === s.length - 1 ? Math.max(length, s[i]) : (s[i] + s[i + 1]) / 2;
}

export function niceStep(rough: number): number {
  const power = 10 ** Math.floor(Math.log10(rough));
  return [1, 2, 5, 10].map((k) => k * power).find((step) => step >= rough * 0.75) ?? 10 * power;
}

/** The bar that stays in sight: slider, steps, findings. */
export class WalkBar {
  private readonly slider = byId<HTMLInputElement>("walk-slider")!;
  private readonly where = byId("walk-where")!;

  constructor(private readonly walk: Walk) {
    this.slider.addEventListener("input", () => {
      this.walk.go(this.walk.at(Number(this.slider.value)), "slider");
    });
    const on = (id: string, act: () => void) => byId(id)?.addEventListener("click", act);
    on("walk-back", () => this.walk.step(-1));
    on("walk-on", () => this.walk.step(1));
    const jump = (way: 1 | -1) => {
      const next = this.walk.neighbourFinding(way);
      if (next) this.walk.showFinding(next.finding, "finding", next.spot);
    };
    on("finding-back", () => jump(-1));
    on("finding-on", () => jump(1));
    this.slider.addEventListener("keydown", (event) => { if (keys(event, this.walk)) event.preventDefault(); });
  }

  show(place: Place): void {
    const { length } = this.walk.stretches();
    this.slider.max = String(length);
    this.slider.step = "any";
    this.slider.value = String(this.walk.unrolled);
    const here = this.walk.findingsHere();
    const s = this.walk.s;
    const text = `s = ${mm(s, 2)}`;
    this.slider.setAttribute("aria-valuetext", text + (here.length ? `, ${tr("Finding")} ${here.map((f) => `${f.n} ${f.title}`).join(", ")}` : ""));
    clear(this.where);
    const contour = this.walk.contour;
    this.where.append(h("b", { "data-station": place.station }, text), h("span", null, `${place.station + 1} / ${contour.stations.s.length}${this.walk.joint.contours.length > 1 ? ` · ${contour.id}` : ""}`));
    const live = byId("walk-live");
    const spoken = here.map((f) => `${tr("Finding")} ${f.n}: ${f.title}`).join(". ");
    if (live && live.textContent !== spoken) live.textContent = spoken;
  }
}

/** Arrow keys walk; with Shift ten stations; Home and End to the path's ends; Page keys to the next finding. */
export function keys(event: KeyboardEvent, walk: Walk): boolean {
  if (event.altKey || event.ctrlKey || event.metaKey) return false;
  const by = event.shiftKey ? 10 : 1;
  switch (event.key) {
    case "ArrowRight": case "ArrowUp": walk.step(by); return true;
    case "ArrowLeft": case "ArrowDown": walk.step(-by); return true;
    case "Home": walk.go({ station: 0 }, "keys"); return true;
    case "End": walk.go({ station: walk.contour.stations.s.length - 1 }, "keys"); return true;
    case "PageDown": case "PageUp": {
      const next = walk.neighbourFinding(event.key === "PageDown" ? 1 : -1);
      if (next) walk.showFinding(next.finding, "keys", next.spot);
      return true;
    }
  }
  return false;
}
