/** The dimensioned drawing of one section, to scale. It draws the document's numbers and measures none. */

import { px, svg } from "../dom";
import type { Contour, Finding, Joint, JointFacts } from "../types";
import type { Sections } from "../unpack";
import type { Words } from "../words";
import { Dimensions, saidHere } from "./dimensions";
import { landSide, wrap, type Frame } from "./layout";
import { drawLight, type Sheet } from "./light";
import { findingsAt } from "../walk";
import { besideRib, markLine, offsetOf, pin, placeIn, toneOf, whereabouts } from "./marks";
import { chain, isClosed, levelled, material, trapColumns, type Loop, type Solid, type TrapColumn } from "./outline";
import { mm, mmUnit, num, oneLength, squareMm, tr } from "../voice";

export interface SectionRequest {
  joint: Joint; facts: JointFacts; contour: Contour; station: number; sections: Sections | null;
  findings: Finding[]; words: Words; frame: Frame; width: number; height: number; compact: boolean; key: string;
}

type Point = [number, number];
interface Side { side: 1 | -1; name: "inner" | "outer"; columns: TrapColumn[] }

const MOST_MARKS = 3;

export function drawSection(request: SectionRequest): SVGSVGElement {
  const { joint, facts, contour, station, words, width, height, key, frame } = request;
  const s = contour.stations.s[station];
  const get = (column: string): number | null => (contour.stations[column] as (number | null)[] | undefined)?.[station] ?? null;
  const here = findingsAt(request.findings, joint, contour, station);
  const ribless = joint.rib_on === "none" || here.some((f) => f.rule === "rib-missing" && !f.waived);

  const side = width < 560 ? 100 : 112;
  const marks = here.slice(0, MOST_MARKS).map((finding) => markRows(finding, contour, station, words, width));
  const told = marks.reduce((sum, rows) => sum + rows.length, 0) + (here.length > MOST_MARKS ? 1 : 0);
  const head = 74 + (told ? told * 16 : 0);
  const plot = { x: side, y: head, w: width - 2 * side, h: height - head - 34 };
  const scale = Math.min(plot.w / (frame.right - frame.left), plot.h / (frame.top - frame.bottom));
  const left = frame.left - (plot.w / scale - (frame.right - frame.left)) / 2;
  const top = frame.top + (plot.h / scale - (frame.top - frame.bottom)) * 0.15;
  const X = (u: number) => plot.x + (u - left) * scale;
  const Y = (v: number) => plot.y + (top - v) * scale;
  // Heights are measured from the rib's top, which leans where the seam climbs: h = v - slope u.
  const slope = request.sections?.slope(station) ?? 0;
  const at = (u: number, h: number): Point => [X(u), Y(h + slope * u)];
  const sheet: Sheet = { at, scale, ceiling: plot.y - 24, left: plot.x };
  const up: 1 | -1 = joint.rib_on === "cover" ? -1 : 1;

  const root = svg("svg", {
    class: "section-drawing", viewBox: `0 0 ${px(width)} ${px(height)}`, width: px(width), height: px(height), role: "img",
    "aria-label": tr("Section across the seam at s = {place}", { place: mm(s, 2) }), "data-slope": slope,
  });
  root.append(svg("defs", null,
    hatch(`${key}-base`, "hatch-base", 6, 45), hatch(`${key}-cover`, "hatch-cover", 15, -45),
    hatch(`${key}-other`, "hatch-other", 5, 90), hatch(`${key}-trap`, "hatch-trap", 4, 90),
    svg("clipPath", { id: `${key}-window` }, svg("rect", { x: plot.x, y: plot.y - 24, width: plot.w, height: plot.h + 24 })),
    svg("marker", { id: `${key}-arrow`, viewBox: "0 0 10 6", refX: 9.5, refY: 3, markerWidth: 9, markerHeight: 6, orient: "auto-start-reverse" },
      svg("path", { d: "M0 0.6 L10 3 L0 5.4 Z", class: "arrow-head" })),
    svg("marker", { id: `${key}-to`, viewBox: "0 0 10 10", refX: 8, refY: 5, markerWidth: 4.5, markerHeight: 4.5, orient: "auto" },
      svg("path", { d: "M0 0 L10 5 L0 10 Z", fill: "context-stroke" })),
  ));

  const outline = request.sections?.at(station) ?? null;
  const solid: Solid = outline ? chain(outline) : new Map();
  const scene = svg("g", { "clip-path": `url(#${key}-window)` });
  root.append(scene);
  const half = (get("rib_width_top") ?? get("rib_width")) === null ? null : (get("rib_width_top") ?? get("rib_width"))! / 2;
  const drop = facts.drop;
  const strips = request.sections?.shadeAt(station) ?? [];
  const light = half === null ? null : drawLight(get, half, up, facts, sheet, strips, key, (part) => words.part(part));
  if (light) scene.append(...light.drawn);

  const sides: Side[] = [{ side: -1, name: "inner", columns: [] }, { side: 1, name: "outer", columns: [] }];
  const ribOwner = up > 0 ? 0 : 1;
  // Columns are those of the part with the rib; with the rib on the cover that part comes down.
  const sunk = up > 0 ? 0 : -(drop ?? 0);
  if (!ribless && drop !== null) {
    const level = (owner: number) => levelled(solid.get(owner), slope);
    for (const entry of sides) {
      const area = get(`trap_area_${entry.name}`);
      if (area === null || !solid.size) continue;
      entry.columns = trapColumns(level(ribOwner), level(1 - ribOwner), up, entry.side, drop, area);
      if (entry.columns.length >= 2) scene.append(...drawTrap(entry.columns, up, sunk, at, key));
    }
  }

  const casters = new Set(strips.map((strip) => request.sections?.ownerOf(strip.part)).filter((owner) => owner !== undefined));
  for (const owner of [...solid.keys()].sort((a, b) => rank(a) - rank(b))) {
    const kind = owner === 0 ? "base" : owner === 1 ? "cover" : "other";
    const d = solid.get(owner)!.map((loop) => path(loop, X, Y)).join("");
    scene.append(
      svg("path", { class: `body ${kind}`, d, "fill-rule": "evenodd" }),
      svg("path", { class: "hatching", d, "fill-rule": "evenodd", fill: `url(#${key}-${kind})` }),
      svg("path", { class: `outline ${kind}${casters.has(owner) ? " casts" : ""}`, d, "data-part": kind === "other" ? request.sections?.partOf(owner) : null }),
    );
  }

  // What melts: the rib above the planned collapse, along its own top.
  const melts = !ribless && half !== null && facts.collapse !== null && solid.get(ribOwner) !== undefined;
  if (melts) {
    const id = `${key}-melt`, wide = half * 1.6, low = -facts.collapse! * up;
    root.querySelector("defs")!.append(svg("clipPath", { id }, svg("path", { d: solid.get(ribOwner)!.map((loop) => path(loop, X, Y)).join(""), "clip-rule": "evenodd" })));
    // No further than the cover comes down: over a pocket in it the rib stays.
    const pressed = up > 0 ? solid.get(1) : undefined, within = svg("g", pressed ? { "clip-path": `url(#${id}-pressed)` } : {});
    if (pressed) root.querySelector("defs")!.append(svg("clipPath", { id: `${id}-pressed` }, svg("path", { d: pressed.map((loop) => path(loop, X, (v) => Y(v - drop!))).join(""), "clip-rule": "evenodd" })));
    const corners = [at(-wide, 0), at(wide, 0), at(wide, low), at(-wide, low)];
    within.append(svg("path", { class: "melt", "clip-path": `url(#${id})`, d: `M${corners.map(([x, y]) => `${px(x)} ${px(y)}`).join("L")}Z` }));
    scene.append(within);
  }
  // The moving part where it comes to rest after the collapse: a thin line of long and double short dashes.
  if (!ribless && drop !== null && solid.get(1)) {
    scene.append(svg("path", { class: "moved", d: solid.get(1)!.map((loop) => path(loop, X, (v) => Y(v - drop))).join("") }));
  }
  const [right, low] = [left + plot.w / scale, top - plot.h / scale];
  for (const loops of solid.values()) {
    for (const u of [left, right]) for (const [a, b] of material(loops, u)) scene.append(...torn([X(u), Y(a)], [X(u), Y(b)]));
    for (const [a, b] of material(turned(loops), low)) scene.append(...torn([X(a), Y(low)], [X(b), Y(low)]));
  }
  root.append(...(light?.told ?? []));
  if (!solid.size) {
    root.append(svg("text", { class: "empty", x: width / 2, y: height - 40, "text-anchor": "middle" },
      request.sections ? tr("No section was kept at this station.") : tr("The document carries no section outlines.")));
  } else if (request.sections?.isNeighbour(station)) {
    root.append(svg("text", { class: "empty", x: width / 2, y: height - 11, "text-anchor": "middle" }, tr("outline of the next station; values of this one")));
  }

  const dims = new Dimensions(root, words, facts.bands, here, key, contour, station, plot, width);
  const anchors = dimension(request, dims, { half, at, plot, sides, up, sunk, ribless, melts, slope, X, Y });
  dims.settle(plot.y - 26, height - 24);
  drawMarks(root, here, dims, request, anchors, plot, X, Y, marks);

  root.append(...scaleBar(plot.x + 4, height - 16, scale));
  root.append(
    svg("text", { class: "side", x: 12, y: px(height - 8) }, `◂ ${tr("inner")}`),
    svg("text", { class: "side", x: px(width - 12), y: px(height - 8), "text-anchor": "end" }, `${tr("outer")} ▸`),
  );
  return root;
}

interface Place {
  half: number | null; at: (u: number, h: number) => Point; plot: { x: number; y: number; w: number; h: number };
  sides: Side[]; up: 1 | -1; sunk: number; ribless: boolean; melts: boolean; slope: number;
  X: (u: number) => number; Y: (v: number) => number;
}

/** Every dimension that exists at this station; returns where findings without one of their own are pinned. */
function dimension(request: SectionRequest, dims: Dimensions, place: Place): Record<string, Point> {
  const { contour, facts, compact, width } = request;
  const { half, at, plot, sides, up, ribless, Y } = place;
  const get = (column: string) => dims.value(column);
  const gap = get("gap") ?? 0, thick = get("cover_thickness");
  const roof = (thick ?? 0) + (up > 0 ? gap : 0);
  const rowLand = plot.y - 8, rowWidth = plot.y - 36;
  const wide = half ?? 0.5, tall = Math.min(get("rib_height") ?? 0.6, 4);
  const anchors: Record<string, Point> = {
    rib: at(0, -0.35 * tall * up), flank_inner: at(-wide, -0.5 * tall * up), flank_outer: at(wide, -0.5 * tall * up),
    cover: at(wide * 0.4, roof * 0.6), gap: at(-wide * 0.7, (gap / 2) * up), light: [at(0, roof)[0], at(0, roof)[1] - 14],
    below: at(0, -(tall + 0.7) * up), land: at(wide + facts.margin + 0.5, roof), other: at(0, 0),
  };
  if (half !== null && !ribless) {
    dims.across(at(-half, 0)[0], at(half, 0)[0], rowWidth, [at(-half, 0)[1], at(half, 0)[1]], { column: "rib_width", title: tr("rib width"), judged: ["rib_width_top"] });
    ghost(dims, "rib_width", (limit) => [[at(-limit / 2, 0), at(-limit / 2, -tall * up)], [at(limit / 2, 0), at(limit / 2, -tall * up)]],
      (limit) => ([-1, 1] as const).map((way) => [at(way * half, -tall * up * 0.75), at((way * limit) / 2, -tall * up * 0.75)]));
  }
  const land = get("clamp_land"), to = landSide(contour);
  if (half !== null && land !== null && to) {
    const edge = (get(to > 0 ? "light_enters_outer" : "light_enters_inner") ?? to * half) + to * facts.margin;
    const from = at(edge, roof), end = at(edge + to * land, roof);
    anchors.land = [(from[0] + end[0]) / 2, (from[1] + end[1]) / 2];
    const feet: [number, number] = to > 0 ? [from[1], end[1]] : [end[1], from[1]];
    const tilted = get("clamp_tilt") !== null && dims.finding({ column: "clamp_tilt", title: "" }) !== null;
    dims.across(from[0], end[0], rowLand, feet, { column: "clamp_land", title: width < 560 ? tr("land") : tr("land from the beam's edge") }, to);
    if (facts.margin > 0) {
      const foot = at(edge - to * facts.margin, roof);
      dims.margin(foot, from, rowLand, to, width < 560 ? mm(facts.margin, 2) : `${tr("beam margin")} ${mm(facts.margin, 2)}`);
    }
    ghost(dims, "clamp_land", (limit) => [[at(edge + to * limit, roof - 0.7), at(edge + to * limit, roof + 0.25)]],
      (limit) => [[at(edge + to * land, roof), at(edge + to * limit, roof)]]);
    if (tilted) {
      // A line square to the light, from which the land departs.
      const level: Point = [end[0], from[1]];
      dims.sketch("reference", [from, level]);
      dims.change(dims.finding({ column: "clamp_tilt", title: "" })!, end, level);
      dims.leader(to, [(end[0] + level[0]) / 2, (end[1] + level[1]) / 2], { column: "clamp_tilt", title: tr("tilt of the land") });
    }
  }
  if (thick !== null) {
    const low = up > 0 ? gap : 0, x = half ?? 0;
    dims.along(1, at(x, low + thick), at(x, low), { column: "cover_thickness", title: tr("cover"), judged: ["cover_thickness_min", "cover_thickness_max"] });
    ghost(dims, "cover_thickness", (limit) => [[at(-x * 1.6, low + limit), at(x * 1.6, low + limit)]],
      (limit) => [[at(x * 0.6, low + thick), at(x * 0.6, low + limit)]]);
  }
  const dim = dims.finding({ column: "transmission", title: "" });
  if (dim?.change && thick !== null) {
    const low = up > 0 ? gap : 0, x = half ?? 0.6, high = low + thick - dim.change;
    dims.sketch(`ghost ${toneOf(dim)}`, [at(-x * 1.6, high), at(x * 1.6, high)]);
    dims.change(dim, at(x * 0.6, low + thick), at(x * 0.6, high));
  }
  ghost(dims, "gap", (limit) => [[at(-wide * 1.5, limit * up), at(wide * 1.5, limit * up)]], (limit) => [[at(wide * 0.5, gap * up), at(wide * 0.5, limit * up)]]);
  travel(request, dims, place);
  outOfLight(request, dims, place);
  if (get("gap") !== null) dims.leader(-1, anchors.gap, { column: "gap", title: tr("gap"), judged: ["gap_min", "gap_max"] });
  // Over a pocket less melts than the planned collapse makes of the rib.
  const inContact = gap - (facts.drop ?? 0) + (facts.collapse ?? 0) < 0.02;
  if (place.melts && thick !== null && inContact && get("melt_area") !== null && !compact) dims.leader(-1, at(-half! * 0.5, -facts.collapse! * 0.5 * up), { column: "melt_area", title: tr("melts") });
  const depth = get("support_depth");
  if (depth !== null && request.findings.some((f) => f.quantity === "support_open" && findingsAt([f], request.joint, contour, request.station).length)) {
    dims.along(-1, at(0, 0), [at(0, 0)[0], Y(-depth)], { column: "support_depth", title: request.words.title("support_depth") });
  }
  if (ribless) return anchors;
  for (const { side, name, columns } of sides) {
    const height = get(`rib_height_${name}`);
    const foot = half === null ? 0 : side * half;
    if (height !== null && height < 6) {
      // Judged is the lower side; the other one has its own height.
      const judged = height === get("rib_height");
      dims.along(side, at(foot, 0), at(foot, -height * up), { column: `rib_height_${name}`, title: tr("rib height"), judged: judged ? ["rib_height"] : [] });
      if (judged) ghost(dims, "rib_height", (limit) => [[at(foot, -limit * up), at(foot + side * 1.2, -limit * up)]],
        (limit) => [[at(foot + side * 0.6, -height * up), at(foot + side * 0.6, -limit * up)]], [`rib_height_${name}`]);
      const middle = get("rib_width_mid");
      if (middle !== null && judged) {
        ghost(dims, "slenderness", (limit) => [[at(foot, -limit * middle * up), at(foot + side * 1.2, -limit * middle * up)]],
          (limit) => [[at(foot + side * 0.6, -height * up), at(foot + side * 0.6, -limit * middle * up)]]);
      }
      const lean = get(`draft_${name}`);
      if (lean !== null && half !== null) {
        const base = (degrees: number) => at(foot + side * height * Math.tan((degrees * Math.PI) / 180), -height * up);
        ghost(dims, `draft_${name}`, (limit) => [[at(foot, 0), base(limit)]], (limit) => [[base(lean), base(limit)]]);
      }
    }
    const area = get(`trap_area_${name}`);
    const middle = columns[Math.floor(columns.length / 2)], last = columns[columns.length - 1];
    const centre: Point = middle ? at(middle.u, ((middle.low + middle.high) / 2) * up + place.sunk) : at(side * wide * 2, -0.5 * tall * up);
    anchors[`trap_${name}`] = centre;
    anchors[`exit_${name}`] = last ? at(last.u, last.high * up + place.sunk) : centre;
    if (area !== null) {
      const share = get(`trap_room_${name}`), melt = get("melt_area");
      const label = { column: `trap_area_${name}`, title: tr("trap, collapsed"), judged: [`trap_room_${name}`, `trap_corner_${name}`, "trap_room"] };
      const found = dims.finding(label);
      const limit = facts.bands.find((b) => b.rule === "trap-side")?.words ?? "";
      dims.leader(side, centre, { ...label, also: [
        ...(share === null || found ? [] : [`${num(share, 2)} × ${tr("½ melt")}${limit ? `, ${limit}` : ""}`]),
        ...(melt === null ? [] : [`${tr("½ melt")} ${squareMm(melt / 2, 2)}`]),
        ...(found?.wide && found.change ? [tr("width {now} → {wanted}", { now: mm(found.wide, 2), wanted: mm(found.wide + found.change, 2) })] : []),
      ] });
      // The wall of the trap where it has to go, at its present depth.
      if (found?.change && last && columns.length > 2) {
        const wall = last.u + side * found.change, floor = columns[Math.floor(columns.length / 2)].low * up + place.sunk, high = last.high * up + place.sunk;
        dims.sketch(`ghost ${toneOf(found)}`, [at(wall, floor), at(wall, high)]);
        dims.change(found, at(last.u, (floor + high) / 2), at(wall, (floor + high) / 2));
        if (found.wide) dims.arrows(...at(last.u - side * found.wide, floor + 0.15 * (high - floor)), ...at(last.u, floor + 0.15 * (high - floor)), toneOf(found));
      }
    }
    const open = dims.finding({ column: `trap_open_${name}`, title: "" });
    if (open && last) {
      // The lip that is missing: as far from the part opposite as the limits of a lip's gap have it, in the middle.
      const edges = facts.bands.find((b) => b.rule === "lip-gap")?.edges.find((e) => e.column === `lip_gap_${name}`);
      const leaves = open.leaves ?? (typeof edges?.low === "number" && typeof edges.high === "number" ? (edges.low + edges.high) / 2 : 0.2);
      const floor = columns[Math.floor(columns.length / 2)].low * up + place.sunk, top = last.high * up + place.sunk - leaves * up, far = last.u - side * Math.min(0.8, 0.35 * Math.abs(last.u - columns[0].u));
      dims.sketch(`ghost ${toneOf(open)}`, [at(last.u, floor), at(last.u, top)]);
      dims.sketch(`ghost ${toneOf(open)}`, [at(last.u, top), at(far, top)]);
      dims.sketch(`ghost ${toneOf(open)}`, [at(far, top), at(far, floor)]);
    }
    const lip = get(`lip_gap_${name}`);
    if (lip !== null && (!compact || dims.finding({ column: `lip_gap_${name}`, title: "" }))) {
      const label = { column: `lip_gap_${name}`, title: tr("lip gap") };
      if (!last) dims.leader(side, anchors[`exit_${name}`], label);
      else {
        const found = dims.finding(label), x = last.u + side * 0.12, roofed = last.high * up + place.sunk, open = roofed - lip * up;
        dims.arrows(...at(x, roofed), ...at(x, open), found ? toneOf(found) : "");
        dims.leader(side, at(x, (roofed + open) / 2), label);
        ghost(dims, `lip_gap_${name}`, (limit) => [[at(last.u, roofed - limit * up), at(last.u + side * 0.9, roofed - limit * up)]],
          (limit) => [[at(x + side * 0.35, open), at(x + side * 0.35, roofed - limit * up)]]);
      }
    }
  }
  return anchors;
}

/** What to change of a broken dimension: dashed lines where its edges should be, and arrows to there. */
function ghost(
  dims: Dimensions, column: string, lines: (limit: number) => [Point, Point][], moves: (limit: number) => [Point, Point][], more: string[] = [],
): void {
  const finding = dims.finding({ column, title: "", judged: [`${column}_top`, `${column}_min`, `${column}_max`, ...more] });
  if (!finding || finding.goal === null) return;
  for (const line of lines(finding.goal)) dims.sketch(`ghost ${toneOf(finding)}`, line);
  for (const [from, to] of moves(finding.goal)) dims.change(finding, from, to);
}

/** How far the cover can sink, dimensioned where the finding says that it meets something, and how far it should. */
function travel(request: SectionRequest, dims: Dimensions, { at, X, Y, plot, up }: Place): void {
  const label = { column: "free_travel", title: tr("free travel"), judged: ["free_travel"] };
  const finding = dims.finding(label), value = dims.value("free_travel");
  if (!finding || finding.goal === null) return;
  const free = finding.station === request.station || value === null ? finding.number : value;
  // Beside the rib, where the cover meets it; the finding's own place is on the rib.
  const met = finding.met && offsetOf({ ...finding, at: finding.met }, request.joint, request.contour, request.station);
  const placed = met ? null : placeIn(finding, request.joint, request.contour, request.station);
  const [u, v] = placed ?? [met?.[0] ?? 0, up > 0 ? dims.value("gap") ?? 0 : 0];
  const from: Point = placed ? [X(u), Y(v)] : at(u, v);
  if (free === null || from[0] < plot.x || from[0] > plot.x + plot.w) return;
  const scale = Math.abs(Y(1) - Y(0)), down = (mm: number): Point => [from[0], from[1] + mm * scale];
  dims.sketch(`ghost ${toneOf(finding)}`, [[from[0] - 26, down(finding.goal)[1]], [from[0] + 26, down(finding.goal)[1]]]);
  dims.change(finding, down(free), down(finding.goal));
  dims.along(from[0] > plot.x + plot.w / 2 ? 1 : -1, from, down(free), label);
}

/** Which way and how far what stands in the light has to go, where that was measured. */
function outOfLight(request: SectionRequest, dims: Dimensions, { X, Y, plot }: Place): void {
  const finding = dims.finding({ column: "beam_clear", title: "", judged: ["light_clear"] });
  if (!finding?.way || !finding.change) return;
  const strips = (request.sections?.shadeAt(request.station) ?? []).filter((strip) => strip.v !== null && strip.part);
  if (!strips.length) return;
  const way = finding.way === "outward" ? 1 : -1, tall = Math.min(...strips.map((strip) => strip.v!));
  const ends = strips.map((strip): [number, number] => (strip.leans && strip.u !== null ? [strip.u, strip.u] : [strip.low, strip.high]));
  const edge = way < 0 ? Math.max(...ends.map((end) => end[1])) : Math.min(...ends.map((end) => end[0]));
  if (Y(tall) < plot.y || X(edge) < plot.x || X(edge) > plot.x + plot.w) return; // it stands outside the picture
  const to = edge + way * finding.change, y = Math.max(Y(tall) - 32, plot.y + 6);
  dims.sketch(`ghost ${toneOf(finding)}`, [[X(to), y - 12], [X(to), y + 26]]);
  dims.change(finding, [X(edge), y], [X(to), y]);
  dims.word(finding, [X(edge) + (way < 0 ? 8 : -8), y + 5], way < 0 ? "start" : "end", mm(finding.change, 2));
}

/** Quantity of a finding -> the place of the section at which it is pinned. */
function anchorOf(finding: Finding, anchors: Record<string, Point>): Point {
  const q = finding.column || finding.quantity;
  const side = q.endsWith("_inner") ? "inner" : q.endsWith("_outer") ? "outer" : "";
  const named =
    q.startsWith("draft") ? `flank_${side}` :
    q.startsWith("trap_open") || q.startsWith("lip") ? `exit_${side}` :
    q.startsWith("trap") ? `trap_${side || "outer"}` :
    q.startsWith("clamp") ? "land" :
    /^(beam|light|spot|path_in_cover)/.test(q) ? "light" :
    /^(cover|transmission|mean_path)/.test(q) ? "cover" :
    /^(gap|free_travel|stop|local_collapse|collapse)/.test(q) ? "gap" :
    /^(support|overhang|wall|nest)/.test(q) ? "below" :
    /^(rib|slenderness|melt)/.test(q) ? "rib" : "other";
  return anchors[named] ?? anchors.other;
}

/** Every finding of this station in the drawing's head, and a pin where no dimension shows it. */
function drawMarks(
  root: SVGSVGElement, here: Finding[], dims: Dimensions, request: SectionRequest, anchors: Record<string, Point>,
  plot: Place["plot"], X: Place["X"], Y: Place["Y"], marks: string[][],
): void {
  const bounds = { left: plot.x, right: plot.x + plot.w, top: plot.y - 24, bottom: plot.y + plot.h };
  const inside = ([x, y]: Point) => x >= bounds.left && x <= bounds.right && y >= bounds.top && y <= bounds.bottom;
  const taken = new Map<string, number>();
  for (const finding of here) {
    if (dims.shown.has(finding)) continue;
    // A value of the whole interface has its own place, which may lie far from the rib: there, or at the window's edge.
    const beside = besideRib(finding, request.joint, request.contour);
    const own: [number, number, number] | null = beside ? [...beside, 0] :
      finding.column && request.contour.stations[finding.column] ? null : offsetOf(finding, request.joint, request.contour, request.station);
    const away = own ? whereabouts(own) : "";
    const spot: Point | null = own && away ? [X(own[0]), Y(own[1])] : null;
    const within = (low: number, value: number, high: number) => Math.max(low, Math.min(high, value));
    const [x, y] = spot ? [within(bounds.left + 6, spot[0], bounds.right - 6), within(bounds.top + 30, spot[1], bounds.bottom - 6)] : anchorOf(finding, anchors);
    const cell = `${Math.round(x / 8)},${Math.round(y / 8)}`;
    const shift = taken.get(cell) ?? 0;
    taken.set(cell, shift + 1);
    root.append(pin(finding, x, y, shift, bounds));
    if (spot && (!inside(spot) || own![2] > 0.6)) {
      const right = x < (bounds.left + bounds.right) / 2;
      root.append(
        svg("path", { class: `change ${toneOf(finding)}`, d: `M${px(x - Math.sign(spot[0] - x) * 18)} ${px(y - Math.sign(spot[1] - y) * 18)}L${px(x)} ${px(y)}`, "marker-end": `url(#${request.key}-to)` }),
        svg("text", { class: "pin-where", x: px(right ? x + 36 : x - 12), y: px(y - 2), "text-anchor": right ? "start" : "end" }, away),
      );
    }
  }
  const rest = here.slice(MOST_MARKS).length;
  let row = 0;
  here.slice(0, MOST_MARKS).forEach((finding, i) => {
    for (const line of marks[i]) root.append(svg("text", { class: `mark-line ${toneOf(finding)}`, x: 12, y: px(15 + row++ * 16), "data-mark": finding.n }, line));
  });
  if (rest) root.append(svg("text", { class: "mark-line", x: 12, y: px(15 + row * 16) }, tr("and {count} more here", { count: rest })));
}

/** What a finding says in the drawing's head, in as many lines as it takes. */
function markRows(finding: Finding, contour: Contour, station: number, words: Words, width: number): string[] {
  return wrap(markLine(finding, saidHere(finding, contour, station, words)), width - 28, 3, 13, 600);
}

function drawTrap(columns: TrapColumn[], up: 1 | -1, sunk: number, at: Place["at"], key: string): SVGElement[] {
  const room = band(columns, (c) => c.low * up + sunk, (c) => c.high * up + sunk, at);
  const lost = up > 0 ? band(columns, (c) => c.high, (c) => c.drawn, at) : band(columns, (c) => sunk - c.low, (c) => -c.low, at);
  return [svg("path", { class: "trap-lost", d: lost }), svg("path", { class: "trap", d: room }), svg("path", { fill: `url(#${key}-trap)`, d: room })];
}

const turned = (loops: Loop[]): Loop[] => loops.map((loop) => loop.map(([u, v]) => [v, u] as [number, number]));

/** A break line: the part goes on beyond the window. */
function torn([x0, y0]: Point, [x1, y1]: Point): SVGElement[] {
  const long = Math.hypot(x1 - x0, y1 - y0), count = Math.max(2, Math.round(long / 9));
  const [ax, ay] = [(x1 - x0) / count, (y1 - y0) / count], [nx, ny] = [-ay / Math.hypot(ax, ay), ax / Math.hypot(ax, ay)];
  let d = `M${px(x0)} ${px(y0)}`;
  for (let i = 1; i <= count; i++) {
    const off = i === count ? 0 : i % 2 ? 5 : -5;
    d += `L${px(x0 + i * ax + off * nx)} ${px(y0 + i * ay + off * ny)}`;
  }
  return [svg("path", { class: "torn gap", d }), svg("path", { class: "torn", d })];
}

const rank = (owner: number) => (owner === 0 ? 1 : owner === 1 ? 2 : 0);

function path(loop: Loop, X: (u: number) => number, Y: (v: number) => number): string {
  return "M" + loop.map(([u, v]) => `${px(X(u))} ${px(Y(v))}`).join("L") + (isClosed(loop) ? "Z" : "");
}

function band(columns: TrapColumn[], low: (c: TrapColumn) => number, high: (c: TrapColumn) => number, at: Place["at"]): string {
  const pixel = (u: number, h: number) => at(u, h).map(px).join(" ");
  const there = columns.map((c) => pixel(c.u, low(c)));
  const back = [...columns].reverse().map((c) => pixel(c.u, high(c)));
  return `M${[...there, ...back].join("L")}Z`;
}

function hatch(id: string, name: string, gap: number, angle: number): SVGElement {
  return svg("pattern", { id, width: gap, height: gap, patternUnits: "userSpaceOnUse", patternTransform: `rotate(${angle})` },
    svg("line", { class: name, x1: 0, y1: 0, x2: 0, y2: gap }));
}

/** A bar of a round length, in the unit of the page. */
function scaleBar(x: number, y: number, scale: number): SVGElement[] {
  const unit = oneLength() * scale, rounds = oneLength() === 1 ? [1, 2, 5, 10] : [0.02, 0.05, 0.1, 0.2, 0.5];
  const length = rounds.find((round) => round * unit > 35) ?? rounds[rounds.length - 1];
  const result: SVGElement[] = [];
  for (let i = 0; i < 4; i++) {
    result.push(svg("rect", { class: i % 2 ? "scale-light" : "scale-dark", x: px(x + (i * length * unit) / 4), y, width: px((length * unit) / 4), height: 4 }));
  }
  result.push(svg("text", { class: "side scale-length", x: px(x + length * unit + 6), y: y + 5 }, `${num(length, length < 1 ? (length < 0.1 ? 2 : 1) : 0)} ${mmUnit()}`));
  return result;
}
