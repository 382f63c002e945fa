/** Dimensions and labels of a section: only of what was measured here, in the severity of what they break. */

import { px, svg } from "../dom";
import type { Band, Contour, Finding } from "../types";
import { MARK, type Words } from "../words";
import { pack, wideness, wrap, type Slot } from "./layout";
import { toneOf } from "./marks";
import { tr } from "../voice";

const LINE = 14;

export interface Label { column: string; title: string; judged?: string[]; also?: string[] }

/** What a finding says at a station: its own value at its worst place, else the value measured here. */
export function saidHere(finding: Finding, contour: Contour, station: number, words: Words): string {
  const values = finding.column === null ? undefined : contour.stations[finding.column] as (number | null)[] | undefined;
  return values && finding.station !== station ? words.value(values[station] ?? null, finding.column!) : finding.value;
}

export class Dimensions {
  private readonly margins = { left: [] as Slot[], right: [] as Slot[] };
  /** Findings that a label shows already. */
  readonly shown = new Set<Finding>();

  constructor(
    private readonly root: SVGSVGElement, private readonly words: Words, private readonly bands: Band[],
    private readonly here: Finding[], private readonly key: string, private readonly contour: Contour,
    private readonly station: number, private readonly plot: { x: number; y: number; w: number; h: number },
    private readonly width: number,
  ) {}

  value(column: string): number | null {
    return (this.contour.stations[column] as (number | null)[] | undefined)?.[this.station] ?? null;
  }

  /** The gravest finding here about a column. */
  finding(label: Label): Finding | null {
    const names = [label.column, ...(label.judged ?? [])];
    return this.here.find((f) => names.includes(f.column ?? "") || names.includes(f.quantity)) ?? null;
  }

  text(finding: Finding): string { return saidHere(finding, this.contour, this.station, this.words); }

  private lines(label: Label, finding: Finding | null, room: number): [string, string][] {
    const own = finding !== null && finding.column !== null && finding.column !== label.column;
    const value = finding && finding.value !== "–" && (own || finding.column === label.column) ? this.text(finding) : this.words.value(this.value(label.column), label.column);
    const limit = finding?.limit || this.bands.find((b) => b.columns.includes(label.column) && b.words)?.words || "";
    const target = finding?.target && value !== tr("not measured") ? ` → ${finding.target}` : "";
    const rows: [string, string][] = wrap(label.title, room).map((line) => ["dim-title", line]);
    const told = finding ? `${MARK[finding.severity]}${finding.n}: ${value}` : value;
    const apart = target && wideness(told + target, 14, 600) > room ? [told, target.trim()] : [told + target];
    rows.push(...apart.flatMap((line) => wrap(line, room, 3, 14, 600)).map((line) => ["dim-value", line] as [string, string]));
    if (own && this.words.unit(finding!.column!) !== this.words.unit(label.column)) rows.push(["dim-limit", this.words.value(this.value(label.column), label.column)]);
    for (const line of limit ? wrap(limit, room) : []) rows.push(["dim-limit", line]);
    for (const line of label.also ?? []) rows.push(...wrap(line, room).map((part) => ["dim-limit", part] as [string, string]));
    return rows;
  }

  private group(label: Label, finding: Finding | null): SVGGElement {
    if (finding) this.shown.add(finding);
    return svg("g", { class: `dim-label ${finding ? toneOf(finding) : ""}`, "data-column": label.column, "data-finding": finding?.n });
  }

  arrows(x0: number, y0: number, x1: number, y1: number, tone = ""): void {
    const length = Math.hypot(x1 - x0, y1 - y0);
    const arrow = `url(#${this.key}-arrow)`, cls = `dim ${tone}`;
    if (length >= 22) {
      this.root.append(svg("path", { class: cls, d: `M${px(x0)} ${px(y0)}L${px(x1)} ${px(y1)}`, "marker-start": arrow, "marker-end": arrow }));
      return;
    }
    // Too short for arrows inside: they point inward from outside, as drawings do.
    const [dx, dy] = length > 0.01 ? [(x1 - x0) / length, (y1 - y0) / length] : [0, 1];
    this.root.append(
      svg("path", { class: cls, d: `M${px(x0 - dx * 16)} ${px(y0 - dy * 16)}L${px(x0)} ${px(y0)}`, "marker-end": arrow }),
      svg("path", { class: cls, d: `M${px(x1 + dx * 16)} ${px(y1 + dy * 16)}L${px(x1)} ${px(y1)}`, "marker-end": arrow }),
    );
  }

  /** What to change: an arrow from where an edge is to where it should be, in the finding's severity. */
  change(finding: Finding, [x0, y0]: [number, number], [x1, y1]: [number, number]): void {
    if (Math.hypot(x1 - x0, y1 - y0) < 3) return;
    this.root.append(svg("path", { class: `change ${toneOf(finding)}`, d: `M${px(x0)} ${px(y0)}L${px(x1)} ${px(y1)}`, "marker-end": `url(#${this.key}-to)`, "data-finding": finding.n }));
  }

  /** A thin line of a class of its own: a reference, or where a limit lies. */
  sketch(name: string, [a, b]: [number, number][]): void {
    this.root.append(svg("path", { class: name, d: `M${px(a[0])} ${px(a[1])}L${px(b[0])} ${px(b[1])}` }));
  }

  /** Words beside an arrow, in the tone of a finding. */
  word(finding: Finding, [x, y]: [number, number], anchor: string, text: string): void {
    this.root.append(svg("g", { class: `dim-label ${toneOf(finding)}` }, svg("text", { class: "dim-value", x: px(x), y: px(y), "text-anchor": anchor }, text)));
  }

  /** The margin of the light beside the rib, which the land leaves free. */
  margin(from: [number, number], to: [number, number], row: number, side: 1 | -1, text: string): void {
    for (const [x, y] of [from, to]) this.root.append(svg("path", { class: "extension", d: `M${px(x)} ${px(y)}V${px(row - 4)}` }));
    this.arrows(Math.min(from[0], to[0]), row, Math.max(from[0], to[0]), row);
    this.root.append(svg("g", { class: "dim-label" }, svg("text", { class: "dim-limit", x: px(from[0] - side * 20), y: px(row + 4), "text-anchor": side > 0 ? "end" : "start" }, text)));
  }

  /** A width over the section, at the height `row`; `feet` are the heights where its extension lines begin. */
  across(x0: number, x1: number, row: number, feet: [number, number], label: Label, from: 1 | -1 | 0 = 0): void {
    const [a, b] = [Math.min(x0, x1), Math.max(x0, x1)];
    const finding = this.finding(label), tone = finding ? toneOf(finding) : "";
    [a, b].forEach((x, i) => this.root.append(svg("path", { class: "extension", d: `M${px(x)} ${px(feet[i])}V${px(row - 4)}` })));
    this.arrows(a, row, b, row, tone);
    const group = this.group(label, finding);
    const x = from === 0 ? (a + b) / 2 : from > 0 ? a + 4 : b - 4;
    const anchor = from === 0 ? "middle" : from > 0 ? "start" : "end";
    const rows = this.lines(label, finding, 260);
    const titles = rows.filter(([cls]) => cls === "dim-title"), values = rows.filter(([cls]) => cls === "dim-value"), limits = rows.filter(([cls]) => cls === "dim-limit");
    const title = titles.map(([, text]) => text).join(" "), value = values.map(([, text]) => text).join(" ");
    const room = from === 0 ? 2 * Math.min(x, this.width - x) : from > 0 ? this.width - x : x;
    // Where both do not fit beside each other, the title stands over the value.
    const both = wideness(`${title}  `, 12, 500) + wideness(value, 14, 600) <= room - 6;
    const text = svg("text", { class: "dim-value", x: px(x), y: px(row - 6), "text-anchor": anchor });
    if (both) text.append(svg("tspan", { class: "dim-title" }, `${title}  `));
    text.append(svg("tspan", { class: "dim-value" }, value));
    group.append(text);
    const rest = both ? limits : [...(titles.length ? wrap(title, room - 6).map((line) => ["dim-title", line] as [string, string]) : []), ...limits];
    rest.reverse().forEach(([cls, text], i) => group.append(svg("text", { class: cls, x: px(x), y: px(row - 19 - i * 13), "text-anchor": anchor }, text)));
    this.root.append(group);
  }

  /** A height, dimensioned in the margin; (x, y0) and (x1, y1) are the two places that it lies between. */
  along(side: 1 | -1, from: [number, number], to: [number, number], label: Label): void {
    const edge = this.edge(side);
    const tone = this.finding(label);
    for (const [x, y] of [from, to]) this.root.append(svg("path", { class: "extension", d: `M${px(x)} ${px(y)}H${px(edge + side * 4)}` }));
    this.arrows(edge, from[1], edge, to[1], tone ? toneOf(tone) : "");
    this.slot(side, (from[1] + to[1]) / 2, label);
  }

  /** A label in the margin, tied to a place by a line. */
  leader(side: 1 | -1, at: [number, number], label: Label): void {
    const edge = this.edge(side), knee = edge + side * 4;
    this.slot(side, at[1], label, (y) => this.root.append(
      svg("path", { class: "leader", d: `M${px(knee + side * 4)} ${px(y)}H${px(knee - side * 6)}L${px(at[0])} ${px(at[1])}` }),
      svg("circle", { class: "leader-dot", cx: px(at[0]), cy: px(at[1]), r: 2 }),
    ), at);
  }

  private edge(side: 1 | -1): number { return side < 0 ? this.plot.x - 12 : this.plot.x + this.plot.w + 12; }

  private slot(side: 1 | -1, wanted: number, label: Label, tie: (y: number) => void = () => undefined, end?: [number, number]): void {
    const x = this.edge(side) + side * 10, anchor = side < 0 ? "end" : "start";
    const finding = this.finding(label);
    const room = (side < 0 ? x : this.width - x) - 5;
    const rows = this.lines(label, finding, room);
    const group = this.group(label, finding);
    this.root.append(group);
    this.margins[side < 0 ? "left" : "right"].push({
      wanted, height: rows.length * LINE, end,
      put: (top) => {
        rows.forEach(([cls, text], i) => group.append(svg("text", { class: cls, x: px(x), y: px(top + 11 + i * LINE), "text-anchor": anchor }, text)));
        tie(top + 8);
      },
    });
  }

  /** Places the labels of both margins. */
  settle(ceiling: number, floor: number): void {
    pack(this.margins.left, ceiling, floor, this.edge(-1) + 2);
    pack(this.margins.right, ceiling, floor, this.edge(1) - 2);
  }
}
