/** The dimensioned drawing of one section, to scale. It draws the document's numbers and measures none. */

import { px, svg } from "../dom";
import type { Band, Contour, Finding, Joint, JointFacts } from "../types";
import type { Sections } from "../unpack";
import { covers } from "../walk";
import { MARK, type Words } from "../words";
import { chain, isClosed, trapColumns, type Loop, type Solid, type TrapColumn } from "./outline";

export interface Frame { left: number; right: number; bottom: number; top: number }

export interface SectionRequest {
  joint: Joint; facts: JointFacts; contour: Contour; station: number; sections: Sections | null;
  findings: Finding[]; words: Words; frame: Frame; width: number; height: number; compact: boolean; key: string;
}

const MARGIN = { left: 104, right: 112, top: 82, bottom: 34 };
const NARROW = { left: 100, right: 104, top: 78, bottom: 34 };

/** The window, mm, that shows every section of a path alike, so that nothing jumps while walking. */
export function frameOf(joint: Joint, contour: Contour, margin: number): Frame {
  const most = (column: string, otherwise: number) => contour.summary[column]?.max ?? otherwise;
  const width = most("rib_width", 1.5), height = most("rib_height", 1.2), cover = most("cover_thickness_max", 2);
  const near = Math.max(width / 2 + 2.2, width * 1.9);
  const far = Math.max(near, Math.min(width / 2 + margin + most("clamp_land", 2) + 0.7, width / 2 + 6));
  const side = landSide(contour);
  const top = cover + 0.35;
  const sides = { left: side > 0 ? -near : -far, right: side < 0 ? near : far };
  return joint.rib_on === "cover"
    ? { ...sides, bottom: -Math.max(1.6, height), top: Math.max(top, height + 1.2) }
    : { ...sides, bottom: -(Math.min(height, 3) + 1.4), top };
}

/** +1 where the clamp land lies outward, -1 inward, 0 where the path has none. */
const landSide = (contour: Contour): 1 | -1 | 0 => (contour.clamp_side === "outer" ? 1 : contour.clamp_side === "inner" ? -1 : 0);

const number = (contour: Contour, column: string, station: number): number | null =>
  ((contour.stations[column] as (number | null)[] | undefined)?.[station] ?? null);

export function drawSection(request: SectionRequest): SVGSVGElement {
  const { joint, facts, contour, station, words, width, height, key } = request;
  const s = contour.stations.s[station];
  const margin = width < 560 ? NARROW : MARGIN;
  const plot = { x: margin.left, y: margin.top, w: width - margin.left - margin.right, h: height - margin.top - margin.bottom };
  const { frame } = request;
  const scale = Math.min(plot.w / (frame.right - frame.left), plot.h / (frame.top - frame.bottom));
  const spareU = plot.w / scale - (frame.right - frame.left), spareV = plot.h / scale - (frame.top - frame.bottom);
  const left = frame.left - spareU / 2, top = frame.top + spareV * 0.15;
  const X = (u: number) => plot.x + (u - left) * scale;
  const Y = (v: number) => plot.y + (top - v) * scale;
  const up: 1 | -1 = joint.rib_on === "cover" ? -1 : 1;
  const broken = new Map<string, Finding>();
  for (const finding of request.findings) {
    if (finding.joint === joint.id && finding.contour === contour.id && finding.severity !== "note" && covers(finding, s) && !broken.has(finding.quantity)) {
      broken.set(finding.quantity, finding);
    }
  }
  const get = (column: string) => number(contour, column, station);

  const root = svg("svg", {
    class: "section-drawing", viewBox: `0 0 ${px(width)} ${px(height)}`, width: px(width), height: px(height), role: "img",
    "aria-label": `Section across the seam at s = ${s.toFixed(2)} mm`,
  });
  root.append(svg("defs", null,
    hatch(`${key}-base`, "hatch-base", 6, 45), hatch(`${key}-cover`, "hatch-cover", 15, -45),
    hatch(`${key}-other`, "hatch-other", 5, 90), hatch(`${key}-trap`, "hatch-trap", 4, 90),
    svg("clipPath", { id: `${key}-window` }, svg("rect", { x: plot.x, y: plot.y - 24, width: plot.w, height: plot.h + 24 })),
    svg("marker", { id: `${key}-arrow`, viewBox: "0 0 10 6", refX: 9.5, refY: 3, markerWidth: 9, markerHeight: 6, orient: "auto-start-reverse" },
      svg("path", { d: "M0 0.6 L10 3 L0 5.4 Z", class: "arrow-head" })),
  ));

  const outline = request.sections?.at(station) ?? null;
  const solid: Solid = outline ? chain(outline) : new Map();
  const scene = svg("g", { "clip-path": `url(#${key}-window)` });
  root.append(scene);
  const half = (get("rib_width_top") ?? get("rib_width")) === null ? null : (get("rib_width_top") ?? get("rib_width"))! / 2;
  const drop = facts.drop;

  if (half !== null) scene.append(...drawLight(get, half, up, facts, X, Y, plot.y - 24, key));

  const ribOwner = up > 0 ? 0 : 1;
  // Columns are those of the part with the rib; with the rib on the cover that part comes down.
  const sunk = up > 0 ? 0 : -(drop ?? 0);
  const sides: { side: 1 | -1; name: "inner" | "outer"; columns: TrapColumn[] }[] = [
    { side: -1, name: "inner", columns: [] }, { side: 1, name: "outer", columns: [] },
  ];
  for (const entry of sides) {
    const area = get(`trap_area_${entry.name}`);
    if (area === null || drop === null || !solid.size) continue;
    entry.columns = trapColumns(solid.get(ribOwner), solid.get(1 - ribOwner), up, entry.side, drop, area);
    if (entry.columns.length < 2) continue;
    const room = band(entry.columns, (c) => c.low * up + sunk, (c) => c.high * up + sunk, X, Y);
    const lost = up > 0
      ? band(entry.columns, (c) => c.high, (c) => c.drawn, X, Y)
      : band(entry.columns, (c) => sunk - c.low, (c) => -c.low, X, Y);
    scene.append(
      svg("path", { class: "trap-lost", d: lost }),
      svg("path", { class: "trap", d: room }),
      svg("path", { fill: `url(#${key}-trap)`, d: room }),
    );
  }

  const owners = [...solid.keys()].sort((a, b) => rank(a) - rank(b));
  for (const owner of owners) {
    const kind = owner === 0 ? "base" : owner === 1 ? "cover" : "other";
    const d = solid.get(owner)!.map((loop) => path(loop, X, Y)).join("");
    scene.append(
      svg("path", { class: `body ${kind}`, d, "fill-rule": "evenodd" }),
      svg("path", { class: "hatching", d, "fill-rule": "evenodd", fill: `url(#${key}-${kind})` }),
      svg("path", { class: `outline ${kind}`, d }),
    );
  }

  // What melts: the rib above the planned collapse.
  if (half !== null && facts.collapse !== null && solid.get(ribOwner)) {
    const id = `${key}-melt`;
    root.querySelector("defs")!.append(svg("clipPath", { id },
      svg("path", { d: solid.get(ribOwner)!.map((loop) => path(loop, X, Y)).join(""), "clip-rule": "evenodd" })));
    const [y0, y1] = [Y(0), Y(-facts.collapse * up)];
    scene.append(svg("rect", {
      class: "melt", "clip-path": `url(#${id})`, x: px(X(-half * 1.6)), width: px(half * 3.2 * scale),
      y: px(Math.min(y0, y1)), height: px(Math.abs(y1 - y0)),
    }));
  }
  // The moving part where it comes to rest after the collapse: a thin line of long and double short dashes.
  if (drop !== null && solid.get(1)) {
    const lowered = solid.get(1)!.map((loop) => path(loop, X, (v) => Y(v - drop))).join("");
    scene.append(svg("path", { class: "moved", d: lowered }));
  }
  if (!solid.size) {
    root.append(svg("text", { class: "empty", x: width / 2, y: height - 40, "text-anchor": "middle" },
      request.sections ? "No section was kept at this station." : "The document carries no section outlines."));
  } else if (request.sections?.isNeighbour(station)) {
    root.append(svg("text", { class: "empty", x: width / 2, y: height - 11, "text-anchor": "middle" }, "outline of the next station; values of this one"));
  }

  const dimension = new Dimensions(root, words, facts.bands, broken, key, s, joint, contour, station, width);
  const coverTop = Y(Math.max(get("cover_thickness") ?? 0, 0) + (get("gap") ?? 0) * (up > 0 ? 1 : 0));
  const rowLand = plot.y - 8, rowWidth = plot.y - 44;
  if (half !== null) {
    dimension.across(X(-half), X(half), rowWidth, Y(0), "rib_width", "rib width");
    const land = get("clamp_land");
    if (land !== null) {
      const side = landSide(contour);
      if (side) dimension.across(X(side * (half + facts.margin)), X(side * (half + facts.margin + land)), rowLand, coverTop, "clamp_land", "land", side);
      else dimension.note(width - margin.right + 16, rowLand, "clamp_land", "clamp land", "start", null);
    }
  }
  const leftEdge = plot.x - 12, rightEdge = plot.x + plot.w + 12;
  const leftStack = new Stack(plot.y - 10), rightStack = new Stack(plot.y - 10);
  const gap = get("gap") ?? 0;
  if (up > 0) dimension.along(Y(gap + (get("cover_thickness") ?? 0)), Y(gap), rightEdge, "cover_thickness", "cover", "start", rightStack, X(half ?? 0));
  else dimension.along(Y(get("cover_thickness") ?? 0), Y(0), rightEdge, "cover_thickness", "cover", "start", rightStack, X(half ?? 0));
  dimension.leader(leftEdge, Y(0) - 30, half === null ? X(0) : X(-half * 0.7), Y(gap / 2 * up), "gap", "gap", "end", leftStack);
  for (const { side, name, columns } of sides) {
    const stack = side < 0 ? leftStack : rightStack, edge = side < 0 ? leftEdge : rightEdge;
    const anchor = side < 0 ? "end" : "start";
    const tall = get(`rib_height_${name}`);
    const from = half === null ? X(0) : X(side * half);
    dimension.along(Y(0), tall === null ? Y(0) : Y(-tall * up), edge, `rib_height_${name}`, "rib height", anchor, stack, from);
    const middle = columns[Math.floor(columns.length / 2)];
    const at: [number, number] = middle ? [X(middle.u), Y(((middle.low + middle.high) / 2) * up + sunk)] : [X(side * (half ?? 0.5) * 2), Y(-0.5 * up)];
    dimension.leader(edge, at[1] + 36, at[0], at[1], `trap_area_${name}`, "trap, collapsed", anchor, stack);
    const last = columns[columns.length - 1];
    const exit: [number, number] = last ? [X(last.u), Y(last.high * up + sunk)] : at;
    if (!request.compact) dimension.leader(edge, exit[1] + 60, exit[0], exit[1], `lip_gap_${name}`, "lip gap", anchor, stack);
  }

  root.append(...scaleBar(plot.x + 4, height - 16, scale));
  root.append(
    svg("text", { class: "side", x: 12, y: px(height - 11) }, "◂ inner"),
    svg("text", { class: "side", x: px(width - 12), y: px(height - 11), "text-anchor": "end" }, "outer ▸"),
  );
  return root;
}

/** The light on its way to the rib: straight down, or as a given scanner sends it, refracted at the cover's top. */
function drawLight(
  get: (column: string) => number | null, half: number, up: 1 | -1, facts: JointFacts,
  X: (u: number) => number, Y: (v: number) => number, ceiling: number, key: string,
): SVGElement[] {
  const top = (get("cover_thickness") ?? 0) + (up > 0 ? Math.max(get("gap") ?? 0, 0) : 0);
  const lean = get("light_lean"), inner = get("light_enters_inner"), outer = get("light_enters_outer");
  const given = lean !== null && inner !== null && outer !== null;
  const [low, high] = given ? [inner - facts.margin, outer + facts.margin] : [-half - facts.margin, half + facts.margin];
  const scale = X(1) - X(0);
  const rise = (Y(top) - ceiling) / scale;  // mm from the cover's top to the edge of the drawing
  const slope = (degrees: number) => Math.tan((degrees * Math.PI) / 180) * rise;
  const [above, beyond] = given ? [low + slope(lean - facts.cone), high + slope(lean + facts.cone)] : [low, high];
  const foot = half + facts.margin;
  const corners = [[above, null], [low, top], [-foot, 0], [foot, 0], [high, top], [beyond, null]] as const;
  const at = (u: number, v: number | null) => `${px(X(u))} ${px(v === null ? ceiling : Y(v))}`;
  const parts: SVGElement[] = [svg("path", { class: "light", d: `M${corners.map(([u, v]) => at(u, v)).join("L")}Z` })];
  const count = Math.max(1, Math.min(4, Math.round((2 * foot * scale) / 26)));
  for (let i = 0; i < count; i++) {
    const share = (i + 0.5) / count, mix = (a: number, b: number) => a + share * (b - a);
    const foot0 = mix(-foot, foot), enters = mix(low, high), tip = 6 / scale;
    const short = top > 0 ? foot0 + ((enters - foot0) * tip) / top : foot0;
    parts.push(svg("path", {
      class: "ray", "marker-end": `url(#${key}-arrow)`,
      d: `M${px(X(mix(above, beyond)))} ${px(ceiling + 2)}L${at(enters, top)}L${at(short, tip)}`,
    }));
  }
  return parts;
}

const rank = (owner: number) => (owner === 0 ? 1 : owner === 1 ? 2 : 0);

function path(loop: Loop, X: (u: number) => number, Y: (v: number) => number): string {
  return "M" + loop.map(([u, v]) => `${px(X(u))} ${px(Y(v))}`).join("L") + (isClosed(loop) ? "Z" : "");
}

function band(
  columns: TrapColumn[], low: (c: TrapColumn) => number, high: (c: TrapColumn) => number,
  X: (u: number) => number, Y: (v: number) => number,
): string {
  const there = columns.map((c) => `${px(X(c.u))} ${px(Y(low(c)))}`);
  const back = [...columns].reverse().map((c) => `${px(X(c.u))} ${px(Y(high(c)))}`);
  return `M${[...there, ...back].join("L")}Z`;
}

function hatch(id: string, name: string, gap: number, angle: number): SVGElement {
  return svg("pattern", { id, width: gap, height: gap, patternUnits: "userSpaceOnUse", patternTransform: `rotate(${angle})` },
    svg("line", { class: name, x1: 0, y1: 0, x2: 0, y2: gap }));
}

function scaleBar(x: number, y: number, scale: number): SVGElement[] {
  const length = scale * 4 > 140 ? 1 : scale * 4 > 40 ? 2 : 5;
  const result: SVGElement[] = [];
  for (let i = 0; i < 4; i++) {
    result.push(svg("rect", { class: i % 2 ? "scale-light" : "scale-dark", x: px(x + (i * length * scale) / 4), y, width: px((length * scale) / 4), height: 4 }));
  }
  result.push(svg("text", { class: "side", x: px(x + length * scale + 6), y: y + 5 }, `${length} mm`));
  return result;
}

/** Keeps labels of one margin apart: each takes the wanted height or the next free one below. */
class Stack {
  constructor(private free: number) {}
  take(wanted: number, height: number): number {
    const y = Math.max(wanted, this.free);
    this.free = y + height;
    return y;
  }
}

class Dimensions {
  constructor(
    private readonly root: SVGSVGElement, private readonly words: Words, private readonly bands: Band[],
    private readonly broken: Map<string, Finding>, private readonly key: string, private readonly s: number,
    private readonly joint: Joint, private readonly contour: Contour, private readonly station: number,
    private readonly width: number,
  ) {}

  private value(column: string): number | null { return number(this.contour, column, this.station); }

  private state(column: string): Finding | null {
    const judged = column.startsWith("rib_height") ? "rib_height" : column.startsWith("trap_area") ? "trap_room" : column;
    return this.broken.get(column) ?? this.broken.get(judged) ?? (column.startsWith("trap_area") ? this.broken.get(column.replace("area", "room")) : null) ?? null;
  }

  private limit(column: string): string {
    return this.bands.find((b) => b.columns.includes(column) && b.words)?.words ?? "";
  }

  /** Three lines: what it is, the value, its limit (or why there is no value). */
  private label(x: number, y: number, column: string, title: string, anchor: string): SVGElement {
    const finding = this.state(column);
    const value = this.value(column);
    const group = svg("g", { class: `dim-label ${finding ? (finding.waived ? "waived" : finding.severity) : ""}`, "data-column": column });
    const mark = finding ? `${MARK[finding.severity]} ` : "";
    const text = value === null ? "not measured" : this.words.value(value, column);
    const why = value === null ? this.words.reason(this.joint.id, this.contour.id, column, this.s) : "";
    const limit = why || this.limit(column);
    const lines: [string, string][] = [["dim-title", title], ["dim-value", anchor === "end" && finding ? `${text} ${MARK[finding.severity]}` : mark + text]];
    const room = Math.floor(((anchor === "end" ? x : this.width - x) - 2) / 5.1);
    if (limit) lines.push(["dim-limit", limit.length > room ? `${limit.slice(0, room - 1)}…` : limit]);
    lines.forEach(([cls, content], i) => {
      const line = svg("text", { class: cls, x: px(x), y: px(y + i * 13), "text-anchor": anchor }, content);
      if (cls === "dim-limit" && limit !== content) line.append(svg("title", null, limit));
      group.append(line);
    });
    return group;
  }

  private line(x0: number, y0: number, x1: number, y1: number): void {
    const long = Math.hypot(x1 - x0, y1 - y0) >= 22;
    const arrow = `url(#${this.key}-arrow)`;
    if (long) {
      this.root.append(svg("path", { class: "dim", d: `M${px(x0)} ${px(y0)}L${px(x1)} ${px(y1)}`, "marker-start": arrow, "marker-end": arrow }));
      return;
    }
    // Too short for arrows inside: they point inward from outside, as drawings do.
    const length = Math.hypot(x1 - x0, y1 - y0) || 1;
    const [dx, dy] = length > 0.01 && (x1 !== x0 || y1 !== y0) ? [(x1 - x0) / length, (y1 - y0) / length] : [0, 1];
    this.root.append(
      svg("path", { class: "dim", d: `M${px(x0 - dx * 16)} ${px(y0 - dy * 16)}L${px(x0)} ${px(y0)}`, "marker-end": arrow }),
      svg("path", { class: "dim", d: `M${px(x1 + dx * 16)} ${px(y1 + dy * 16)}L${px(x1)} ${px(y1)}`, "marker-end": arrow }),
    );
  }

  /** `from`: 0 puts the label over the middle, else it begins where the dimension begins and runs that way. */
  across(x0: number, x1: number, row: number, foot: number, column: string, title: string, from: 1 | -1 | 0 = 0): void {
    const [a, b] = [Math.min(x0, x1), Math.max(x0, x1)];
    for (const x of [a, b]) this.root.append(svg("path", { class: "extension", d: `M${px(x)} ${px(foot)}V${px(row - 4)}` }));
    this.line(a, row, b, row);
    const value = this.value(column), finding = this.state(column);
    const limit = this.limit(column);
    const group = svg("g", { class: `dim-label ${finding ? (finding.waived ? "waived" : finding.severity) : ""}`, "data-column": column });
    const y = row - 6;
    const x = from === 0 ? (a + b) / 2 : from > 0 ? a + 4 : b - 4;
    const anchor = from === 0 ? "middle" : from > 0 ? "start" : "end";
    const mark = finding ? `${MARK[finding.severity]} ` : "";
    group.append(svg("text", { class: "dim-value", x: px(x), y: px(y), "text-anchor": anchor },
      svg("tspan", { class: "dim-title" }, `${title}  `), svg("tspan", { class: "dim-value" }, mark + this.words.value(value, column))));
    if (limit) group.append(svg("text", { class: "dim-limit", x: px(x), y: px(y - 13), "text-anchor": anchor }, limit));
    this.root.append(group);
  }

  along(y0: number, y1: number, edge: number, column: string, title: string, anchor: "start" | "end", stack: Stack, from: number): void {
    const out = anchor === "start" ? 1 : -1;
    const lines = this.limit(column) || this.value(column) === null ? 3 : 2;
    const wanted = (y0 + y1) / 2 - (lines * 13) / 2 + 10;
    const y = stack.take(wanted, lines * 13 + 8);
    if (this.value(column) !== null) {
      for (const v of [y0, y1]) this.root.append(svg("path", { class: "extension", d: `M${px(from)} ${px(v)}H${px(edge + out * 4)}` }));
      this.line(edge, y0, edge, y1);
    }
    this.root.append(this.label(edge + out * 10, y, column, title, anchor));
  }

  leader(edge: number, wanted: number, x: number, yAt: number, column: string, title: string, anchor: "start" | "end", stack: Stack): void {
    const out = anchor === "start" ? 1 : -1;
    const lines = this.limit(column) || this.value(column) === null ? 3 : 2;
    const y = stack.take(wanted, lines * 13 + 8);
    const knee = edge + out * 4;
    this.root.append(
      svg("path", { class: "leader", d: `M${px(knee + out * 4)} ${px(y - 3)}H${px(knee - out * 6)}L${px(x)} ${px(yAt)}` }),
      svg("circle", { class: "leader-dot", cx: px(x), cy: px(yAt), r: 2 }),
      this.label(edge + out * 10, y, column, title, anchor),
    );
  }

  note(x: number, y: number, column: string, title: string, anchor: string, _: null): void {
    this.root.append(this.label(x, y, column, title, anchor));
  }
}
