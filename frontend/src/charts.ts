/** Charts over the unrolled seam: one for each quantity, with its limits, its findings and its distribution. */

import uPlot from "uplot";

import type { Atlas } from "./atlas";
import { clear, h, px, svg, theme, whenNear } from "./dom";
import type { Band, Edge, Finding, Side, Spot } from "./types";
import { spotsOf, type Place, type Stretch, type Walk } from "./walk";
import { numbersOf } from "./words";
import { inVoice, num, oneLength, tr } from "./voice";

const HEIGHT = 132;
const BINS = 24;

export class Charts {
  private charts: Chart[] = [];
  private shownJoint = -1;

  constructor(private readonly judged: HTMLElement, private readonly within: HTMLElement, private readonly further: HTMLElement, private readonly atlas: Atlas, private readonly walk: Walk) {}

  private build(): void {
    this.shownJoint = this.walk.place.joint;
    for (const chart of this.charts) chart.remove();
    clear(this.judged);
    clear(this.within);
    clear(this.further);
    this.charts = [];
    const columns = [...new Set(this.walk.facts.bands.flatMap((b) => b.columns))].filter((c) => this.isThere(c));
    // Open are the charts of what breaks a limit; what is within everywhere is folded.
    const rules = new Set(this.atlas.payload.findings.filter((f) => f.joint === this.walk.joint.id).map((f) => f.rule));
    const broken = columns.filter((c) => this.walk.facts.bands.some((b) => rules.has(b.rule) && b.columns.includes(c)));
    const rest = Object.keys(this.atlas.payload.quantities).filter((c) => !columns.includes(c) && this.isThere(c));
    const ranges = this.ranges([...columns, ...rest]);
    this.judged.classList.toggle("small-multiples", broken.length > 2);
    for (const [host, list] of [[this.judged, broken], [this.within, columns.filter((c) => !broken.includes(c))], [this.further, rest]] as const) {
      for (const column of list) {
        const chart = new Chart(column, this.atlas, this.walk, ranges.get(this.scale(column))!);
        this.charts.push(chart);
        host.append(chart.root);
        chart.later();
      }
    }
    const fold = this.within.closest("details");
    if (fold) fold.hidden = broken.length === columns.length;
    if (columns.length && !broken.length) this.judged.append(h("p", null, rules.size ? tr("What was found has no chart: it is not a value along the seam. Every value along the seam is within its limits.") : tr("Every judged quantity is within its limits everywhere.")));
    if (!columns.length) this.judged.append(h("p", null, tr("No judged quantity was measured along this seam.")));
  }

  private scale(column: string): string { return this.atlas.payload.quantities[column]?.scale ?? column; }

  /** The range of every scale: where all its quantities and their limits have room. */
  private ranges(columns: string[]): Map<string, [number, number]> {
    const result = new Map<string, [number, number]>();
    for (const column of columns) {
      const own = rangeOf(column, this.walk), scale = this.scale(column), other = result.get(scale) ?? own;
      result.set(scale, [Math.min(own[0], other[0]), Math.max(own[1], other[1])]);
    }
    return result;
  }

  private isThere(column: string): boolean {
    return this.walk.joint.contours.some((c) => (c.stations[column] as (number | null)[] | undefined)?.some((v) => v !== null));
  }

  show(place: Place): void {
    if (place.joint !== this.shownJoint) this.build();
    for (const chart of this.charts) chart.show();
  }

  retheme(): void { for (const chart of this.charts) chart.redraw(); }
  forPrint(width: number): void { for (const chart of this.charts) if (!this.further.contains(chart.root)) chart.forPrint(width); }
  forScreen(): void { for (const chart of this.charts) chart.forScreen(); }
}

class Chart {
  readonly root: HTMLElement;
  private readonly plotHost = h("div", { class: "chart-plot" });
  private readonly spread = h("div", { class: "chart-spread" });
  private readonly here = h("b", { class: "chart-here" });
  private readonly cursor = h("div", { class: "chart-cursor", "aria-hidden": true });
  private plot: uPlot | null = null;
  private drawNow: () => void = () => undefined;
  private readonly edges: Edge[];
  private readonly findings: Finding[];

  constructor(private readonly column: string, private readonly atlas: Atlas, private readonly walk: Walk, private readonly range: [number, number]) {
    const bands: Band[] = walk.facts.bands.filter((b) => b.columns.includes(column));
    this.edges = edgesOf(column, walk);
    const rules = new Set(bands.map((b) => b.rule));
    this.findings = atlas.payload.findings.filter((f) => f.joint === walk.joint.id && (f.quantity === column || (rules.has(f.rule) && !bands.some((b) => b.columns.length > 1))));
    const words = atlas.words;
    const title = words.title(column);
    const half = walk.facts.tolerances[column];
    const limits = bands.filter((b) => b.words).map((b) => `${b.title.toLowerCase()}: ${b.words}`);
    const unit = words.unit(column);
    this.root = h("figure", { class: "chart", "data-column": column },
      h("figcaption", null,
        h("span", { class: "chart-title" }, title, unit ? ` / ${unit}` : ""),
        this.here,
        h("span", { class: "chart-limits" }, [...limits, ...(half ? [tr("tolerance ±{value}", { value: words.value(half, column) })] : [])].join(" · "))),
      h("div", { class: "chart-row" }, this.plotHost, this.spread), this.summary());
  }

  private summary(): HTMLElement {
    const rows = this.walk.joint.contours.map((contour) => {
      const own = contour.summary[this.column];
      const words = this.atlas.words;
      const name = this.walk.joint.contours.length > 1 ? `${contour.id}: ` : "";
      if (!own) return `${name}${tr("not measured")}`;
      const tail = (title: string, value: number | null | undefined) => (value === null || value === undefined ? "" : `, ${title} ${words.value(value, this.column)}`);
      return `${name}${tr("least")} ${words.value(own.min, this.column)}${tail("p05", own.p05)}, ${tr("median")} ${words.value(own.median, this.column)}${tail("p95", own.p95)}, ${tr("most")} ${words.value(own.max, this.column)}`;
    });
    const outside = this.walk.joint.summary[this.column]?.outside;
    if (outside !== undefined) rows.push(tr("outside a limit: {share} % of the length", { share: num(100 * outside, outside > 0 && outside < 0.1 ? 1 : 0) }));
    return h("p", { class: "chart-summary" }, rows.join(" · "));
  }

  later(): void { this.drawNow = whenNear(this.root, () => this.draw()); }

  private data(): [number[], (number | null)[]] {
    const xs: number[] = [], ys: (number | null)[] = [];
    const { stretches } = this.walk.stretches();
    for (const { contour, start } of stretches) {
      const path = this.walk.joint.contours[contour];
      const values = path.stations[this.column] as (number | null)[] | undefined;
      if (xs.length) { xs.push(start - 1e-3); ys.push(null); }
      path.stations.s.forEach((s, i) => { xs.push(start + s); ys.push(values?.[i] ?? null); });
      if (path.closed && values) { xs.push(start + path.length_mm); ys.push(values[0]); }
    }
    return [xs, ys];
  }

  /** A bound as pixel points along the chart; a straight line where it is the same everywhere. */
  private line(u: uPlot, side: Side): [number, number][] {
    const { left, width } = u.bbox;
    if (side === null) return [];
    if (typeof side === "number") {
      const y = u.valToPos(side, "y", true);
      return [[left, y], [left + width, y]];
    }
    const result: [number, number][] = [];
    const { stretches } = this.walk.stretches();
    for (const { contour, start } of stretches) {
      const path = this.walk.joint.contours[contour];
      side[path.id]?.forEach((value, i) => {
        if (value !== null) result.push([u.valToPos(start + path.stations.s[i], "x", true), u.valToPos(value, "y", true)]);
      });
    }
    return result;
  }

  private draw(): void {
    const data = this.data();
    const [low, high] = this.range;
    const width = Math.max(200, this.plotHost.getBoundingClientRect().width || 600);
    const decimals = this.atlas.payload.quantities[this.column]?.decimals ?? 3, own = this.atlas.payload.quantities[this.column]?.unit ?? "";
    const options: uPlot.Options = {
      width, height: HEIGHT, pxAlign: 0, legend: { show: false },
      cursor: { sync: { key: "seam" }, drag: { x: true, y: false, setScale: true }, points: { show: false }, y: false },
      scales: { x: { time: false, range: (_, a, b) => [a, b] }, y: { range: () => [low, high] } },
      padding: [8, 14, 0, 0],
      axes: [
        { stroke: () => theme("soft"), grid: { show: false }, ticks: { stroke: () => theme("line"), size: 4 }, size: 22, font: FONT, gap: 3,
          values: (_, ticks) => labels(ticks.map((t) => t / oneLength()), 2) },
        { stroke: () => theme("soft"), grid: { stroke: () => theme("line"), width: 1 }, ticks: { show: false }, size: 52, font: FONT, space: 26,
          values: (_, ticks) => labels(ticks.map((t) => inVoice(t, own, 0)[0]), inVoice(0, own, decimals)[2]) },
      ],
      series: [{}, { stroke: () => theme("ink"), width: 1.6, points: { show: false }, spanGaps: false }],
      hooks: { drawAxes: [(u) => { this.drawBands(u); this.drawTolerance(u, data); }], draw: [(u) => { this.drawFindings(u); this.show(); }], ready: [(u) => this.listen(u)] },
    };
    this.plot = new uPlot(options, data as uPlot.AlignedData, this.plotHost);
    this.plot.over.append(this.cursor);
    this.drawSpread(data[1], low, high);
    this.show();
    new ResizeObserver(() => {
      const now = this.plotHost.getBoundingClientRect().width;
      if (this.plot && now > 50 && Math.abs(now - this.plot.width) > 1 && !this.printing) this.plot.setSize({ width: now, height: HEIGHT });
    }).observe(this.plotHost);
  }

  private printing = false;

  private listen(u: uPlot): void {
    let down = 0;
    u.over.addEventListener("mousedown", (event) => { down = event.clientX; });
    u.over.addEventListener("click", (event) => {
      if (Math.abs(event.clientX - down) > 4) return;
      const x = u.posToVal(event.clientX - u.over.getBoundingClientRect().left, "x");
      this.walk.go(this.walk.at(x), "chart");
    });
    u.over.addEventListener("touchmove", (event) => {
      const x = u.posToVal(event.touches[0].clientX - u.over.getBoundingClientRect().left, "x");
      this.walk.go(this.walk.at(x), "chart");
    }, { passive: true });
  }

  /** What lies outside the limits is shaded and hatched, so that it shows without colour. */
  private drawBands(u: uPlot): void {
    const { ctx } = u;
    const { left, top, width, height } = u.bbox;
    ctx.save();
    ctx.beginPath();
    ctx.rect(left, top, width, height);
    ctx.clip();
    for (const edge of this.edges) {
      for (const [side, below] of [[edge.low, true], [edge.high, false]] as const) {
        const line = this.line(u, side);
        if (line.length < 2) continue;
        const far = below ? top + height : top;
        ctx.save();
        ctx.beginPath();
        line.forEach(([x, y], i) => (i ? ctx.lineTo(x, y) : ctx.moveTo(x, y)));
        ctx.lineTo(line[line.length - 1][0], far);
        ctx.lineTo(line[0][0], far);
        ctx.closePath();
        ctx.clip();
        ctx.globalAlpha = 0.5;
        ctx.fillStyle = theme("outside");
        ctx.fillRect(left, top, width, height);
        ctx.globalAlpha = 0.55;
        ctx.strokeStyle = theme("outside-line");
        ctx.lineWidth = devicePixelRatio * 0.7;
        ctx.beginPath();
        const gap = 7 * devicePixelRatio;
        for (let x = left - height; x < left + width; x += gap) { ctx.moveTo(x, top + height); ctx.lineTo(x + height, top); }
        ctx.stroke();
        ctx.restore();
        ctx.strokeStyle = theme("limit");
        ctx.lineWidth = 1.3 * devicePixelRatio;
        ctx.setLineDash([6 * devicePixelRatio, 3 * devicePixelRatio]);
        ctx.beginPath();
        line.forEach(([x, y], i) => (i ? ctx.lineTo(x, y) : ctx.moveTo(x, y)));
        ctx.stroke();
        ctx.setLineDash([]);
      }
    }
    ctx.restore();
  }

  /** Where the true values may lie: the tolerance that the settings give to this quantity. */
  private drawTolerance(u: uPlot, [xs, ys]: [number[], (number | null)[]]): void {
    const { tolerances } = this.walk.facts;
    const half = tolerances[this.column] ?? this.edges.map((e) => tolerances[e.column]).find((t) => t !== undefined);
    if (!half) return;
    const { ctx } = u;
    ctx.save();
    ctx.beginPath();
    ctx.rect(u.bbox.left, u.bbox.top, u.bbox.width, u.bbox.height);
    ctx.clip();
    ctx.globalAlpha = 0.22;
    ctx.fillStyle = theme("walker");
    for (let i = 0; i < xs.length; i++) {
      if (ys[i] === null) continue;
      let j = i;
      while (j + 1 < xs.length && ys[j + 1] !== null) j++;
      ctx.beginPath();
      for (let k = i; k <= j; k++) ctx.lineTo(u.valToPos(xs[k], "x", true), u.valToPos(ys[k]! + half, "y", true));
      for (let k = j; k >= i; k--) ctx.lineTo(u.valToPos(xs[k], "x", true), u.valToPos(ys[k]! - half, "y", true));
      ctx.closePath();
      ctx.fill();
      i = j;
    }
    ctx.restore();
  }

  private drawFindings(u: uPlot): void {
    const { ctx } = u;
    const { top, height } = u.bbox;
    const { stretches } = this.walk.stretches();
    const sharp = devicePixelRatio;
    ctx.save();
    ctx.font = `600 ${11 * sharp}px ${FAMILY}`;
    const labels: { x: number; findings: Finding[]; colour: string }[] = [];
    for (const finding of this.findings) {
      if (finding.severity === "note") continue;
      for (const [from, to] of spotsOf(finding).flatMap((spot) => this.unrolled(spot, stretches))) {
        const x0 = u.valToPos(from, "x", true), x1 = Math.max(u.valToPos(to, "x", true), x0 + 3 * sharp);
        if (x1 < u.bbox.left || x0 > u.bbox.left + u.bbox.width) continue;
        ctx.fillStyle = theme(finding.waived ? "waived" : finding.severity === "must-fix" ? "broken" : "near");
        ctx.fillRect(x0, top + height - 4 * sharp, x1 - x0, 4 * sharp);
        const x = (x0 + x1) / 2;
        const same = labels.find((label) => Math.abs(label.x - x) < 14 * sharp);
        if (same) same.findings.push(finding);
        else labels.push({ x, findings: [finding], colour: String(ctx.fillStyle) });
      }
    }
    ctx.textAlign = "center";
    for (const { x, findings, colour } of labels) {
      ctx.fillStyle = colour;
      ctx.fillText(numbersOf(findings), x, top + 11 * sharp);
    }
    ctx.restore();
  }

  /** Where a place of a finding lies on the unrolled seam: one stretch, two where it passes the start of the path. */
  private unrolled({ contour, from_s: from, to_s: to }: Spot, stretches: Stretch[]): [number, number][] {
    const k = this.walk.joint.contours.findIndex((c) => c.id === contour);
    if (k < 0) return [];
    const { start, length } = stretches[k];
    if (from === null || to === null) return [];
    return from <= to ? [[start + from, start + to]] : [[start + from, start + length], [start, start + to]];
  }

  private drawSpread(ys: (number | null)[], low: number, high: number): void {
    clear(this.spread);
    const counts = new Array<number>(BINS).fill(0);
    for (const y of ys) if (y !== null) counts[Math.min(BINS - 1, Math.max(0, Math.floor(((y - low) / (high - low)) * BINS)))]++;
    const most = Math.max(1, ...counts);
    const inner = HEIGHT - 30, bin = inner / BINS;
    const root = svg("svg", { viewBox: `0 0 74 ${HEIGHT}`, width: 74, height: HEIGHT, role: "img", "aria-label": tr("Distribution of the values") });
    counts.forEach((count, i) => {
      if (!count) return;
      // The square root keeps rare values in sight beside the common one.
      root.append(svg("rect", { class: "bin", x: 4, y: px(8 + inner - (i + 1) * bin), width: px(Math.max(2, 60 * Math.sqrt(count / most))), height: px(bin - 0.7) }));
    });
    for (const edge of this.edges) for (const bound of [edge.low, edge.high]) {
      if (typeof bound !== "number" || bound < low || bound > high) continue;
      const y = 8 + inner * (1 - (bound - low) / (high - low));
      root.append(svg("line", { class: "bin-limit", x1: 0, x2: 74, y1: px(y), y2: px(y) }));
    }
    root.append(svg("text", { class: "side", x: 4, y: HEIGHT - 8 }, tr("spread √n")));
    this.spread.append(root);
  }

  show(): void {
    const { contour, place } = this.walk;
    const value = (contour.stations[this.column] as (number | null)[] | undefined)?.[place.station] ?? null;
    this.here.textContent = this.atlas.words.value(value, this.column);
    this.here.dataset.value = String(value);
    if (!this.plot) return;
    const x = this.plot.valToPos(this.walk.unrolled, "x");
    const shown = x >= -1 && x <= this.plot.bbox.width / uPlot.pxRatio + 1;
    this.cursor.hidden = !shown;
    this.cursor.style.transform = `translateX(${px(x)}px)`;
    this.cursor.dataset.s = this.walk.unrolled.toFixed(4);
  }

  redraw(): void { this.plot?.redraw(false, true); }

  forPrint(width: number): void {
    this.drawNow();
    this.printing = true;
    this.plot?.setSize({ width, height: HEIGHT });
  }

  forScreen(): void {
    if (!this.printing) return;
    this.printing = false;
    this.plot?.setSize({ width: Math.max(200, this.plotHost.getBoundingClientRect().width), height: HEIGHT });
  }

  remove(): void { this.plot?.destroy(); }
}

const edgesOf = (column: string, walk: Walk): Edge[] =>
  walk.facts.bands.filter((b) => b.columns.includes(column)).flatMap((b) => b.edges).filter((e) => e.judged === column);

/** From where to where a quantity is drawn: its values and the limits that lie near them. */
function rangeOf(column: string, walk: Walk): [number, number] {
  const edges = edgesOf(column, walk);
  let low = Infinity, high = -Infinity;
  for (const contour of walk.joint.contours) {
    for (const value of (contour.stations[column] as (number | null)[] | undefined) ?? []) {
      if (value === null) continue;
      low = Math.min(low, value);
      high = Math.max(high, value);
    }
  }
  for (const edge of edges) {
    const floor = least(edge.low), roof = most(edge.high);
    if (floor !== null) { low = Math.min(low, floor); high = Math.max(high, floor); }
    if (roof !== null && roof - high < 2 * Math.max(high - low, Math.abs(high) * 0.3)) { high = Math.max(high, roof); low = Math.min(low, roof); }
  }
  // Where there is no upper limit, values far above the lower one (a turn that is nearly straight) leave the chart.
  const floors = edges.map((e) => most(e.low)).filter((v): v is number => v !== null && v > 0);
  if (floors.length && edges.every((e) => e.high === null)) high = Math.min(high, Math.max(12 * Math.max(...floors), 2 * low));
  const half = walk.facts.tolerances[column] ?? 0;
  low -= half;
  high += half;
  const pad = Math.max((high - low) * 0.12, Math.abs(high) * 0.02, 0.01);
  return [low - pad, high + pad];
}

/** What stands at the ticks: no '-0', and no number twice where the quantity has too few decimals for them. */
function labels(ticks: number[], decimals: number): string[] {
  const d = digits(ticks, decimals);
  const all = ticks.map((t) => (Math.abs(t) < 0.5 * 10 ** -d ? 0 : t).toFixed(d));
  return all.map((text, i) => (ticks.some((t, k) => all[k] === text && Math.abs(t - Number(text)) < Math.abs(ticks[i] - Number(text)) - 1e-12) ? "" : num(Number(text), d)));
}

/** As few decimals as tell the ticks apart truly. */
function digits(ticks: number[], most: number): number {
  for (let d = 0; d < most; d++) if (ticks.every((t) => Math.abs(Number(t.toFixed(d)) - t) < 1e-9)) return d;
  return most;
}

const values = (side: Side): number[] => (side === null ? [] : typeof side === "number" ? [side] : Object.values(side).flat().filter((v): v is number => v !== null));
const least = (side: Side): number | null => values(side).reduce<number | null>((a, v) => (a === null || v < a ? v : a), null);
const most = (side: Side): number | null => values(side).reduce<number | null>((a, v) => (a === null || v > a ? v : a), null);

const FAMILY = '"Barlow Semi Condensed", "Arial Narrow", sans-serif';
const FONT = `500 12px ${FAMILY}`;
