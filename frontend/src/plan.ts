/** The part seen along the beam: relief, the seam by its worst state, section marks of the findings, the walker. */

import type { Atlas } from "./atlas";
import { clear, h, px, svg, theme } from "./dom";
import { flat, planeOf, type Plane, type Vec } from "./project";
import { paint, raster } from "./relief";
import { BROKEN, STATE_NAME, type Contour, type Finding, type Spot } from "./types";
import { covers, isStretchOfNote, spotsOf, type Place, type Walk } from "./walk";
import { numbersOf, shortNumbersOf } from "./words";
import { tr } from "./voice";

interface View { scale: number; x: number; y: number; width: number; height: number; plane: Plane }

export class Plan {
  private readonly canvas = h("canvas", { "aria-hidden": true });
  private readonly overlay = svg("svg", { role: "group" });
  private readonly cursor = svg("g", { class: "plan-cursor" });
  private view: View | null = null;
  private shownJoint = -1;

  constructor(private readonly host: HTMLElement, private readonly atlas: Atlas, private readonly walk: Walk) {
    clear(host);
    host.append(this.canvas, this.overlay);
    new ResizeObserver(() => this.draw()).observe(host);
    const pick = (event: PointerEvent) => {
      const box = this.overlay.getBoundingClientRect();
      this.pick((event.clientX - box.left) * (this.view!.width / box.width), (event.clientY - box.top) * (this.view!.height / box.height));
    };
    this.overlay.addEventListener("pointerdown", (event) => {
      if (!this.view) return;
      this.overlay.setPointerCapture(event.pointerId);
      pick(event);
    });
    this.overlay.addEventListener("pointermove", (event) => {
      if (this.view && event.buttons) pick(event);
    });
  }

  /** Draws anew: the window or the theme changed, or paper of a given size asks for it. */
  draw(paper?: { width: number; height: number }): void {
    const box = paper ?? this.host.getBoundingClientRect();
    if (box.width < 40 || box.height < 40) return;
    const plane = planeOf(this.walk.joint.beam);
    let [x0, x1, y0, y1] = [Infinity, -Infinity, Infinity, -Infinity];
    const grow = (x: number, y: number) => { x0 = Math.min(x0, x); x1 = Math.max(x1, x); y0 = Math.min(y0, y); y1 = Math.max(y1, y); };
    for (const contour of this.walk.joint.contours) points(contour).forEach((p) => grow(...flat(plane, p)));
    const shown = new Set([...this.walk.joint.cover, ...this.walk.joint.base]);
    const meshes = this.atlas.meshes.filter((m) => shown.has(m.part));
    for (const mesh of meshes) {
      for (let i = 0; i < mesh.positions.length; i += 3) grow(...flat(plane, [mesh.positions[i], mesh.positions[i + 1], mesh.positions[i + 2]]));
    }
    const pad = paper ? 34 : 40;
    const scale = Math.min((box.width - 2 * pad) / Math.max(1e-6, x1 - x0), (box.height - 2 * pad) / Math.max(1e-6, y1 - y0));
    const view: View = {
      scale, width: box.width, height: box.height, plane,
      x: (x0 + x1) / 2 - box.width / 2 / scale, y: (y0 + y1) / 2 + box.height / 2 / scale,
    };
    this.view = view;
    this.shownJoint = this.walk.place.joint;
    this.paintRelief(meshes, view);
    this.drawSeam(view);
    this.show(this.walk.place);
  }

  private paintRelief(meshes: ReturnType<() => Atlas["meshes"]>, view: View): void {
    const sharp = Math.min(2, Math.max(1, devicePixelRatio));
    const [width, height] = [Math.round(view.width * sharp), Math.round(view.height * sharp)];
    this.canvas.width = width;
    this.canvas.height = height;
    const context = this.canvas.getContext("2d");
    if (!context || !meshes.length) return;
    const colour = (name: string): Vec => hex(theme(name));
    const picture = context.createImageData(width, height);
    const paper = colour("sheet");
    for (let i = 0; i < width * height; i++) picture.data.set([...paper, 255], 4 * i);
    const covers = new Set(this.walk.joint.cover);
    for (const isCover of [false, true]) {
      const some = meshes.filter((m) => covers.has(m.part) === isCover);
      if (!some.length) continue;
      const relief = raster(some, view.plane, width, height, view.scale * sharp, view.x, view.y);
      paint(picture, relief, colour(isCover ? "cover-fill" : "base-fill"), colour("ink"), isCover ? 0.6 : 0.9, isCover ? 0.55 : 0.25);
    }
    context.putImageData(picture, 0, 0);
  }

  private at(p: Vec): [number, number] {
    const [x, y] = flat(this.view!.plane, p);
    return [(x - this.view!.x) * this.view!.scale, (this.view!.y - y) * this.view!.scale];
  }

  private drawSeam(view: View): void {
    clear(this.overlay);
    this.overlay.setAttribute("viewBox", `0 0 ${px(view.width)} ${px(view.height)}`);
    this.overlay.setAttribute("aria-label", tr("The seam seen along the beam, with the findings as numbered section marks"));
    const facts = this.walk.facts;
    for (const contour of this.walk.joint.contours) {
      const all = points(contour).map((p) => this.at(p));
      this.overlay.append(svg("path", { class: "seam casing", d: line(all, contour.closed) }));
      for (const [from, to, state] of facts.worst[contour.id] ?? []) {
        const last = to + 1 < all.length ? to + 1 : to;
        const run = all.slice(from, last + 1);
        if (contour.closed && to === all.length - 1) run.push(all[0]);
        this.overlay.append(svg("path", { class: `seam ${STATE_NAME[state]}`, d: line(run, false) }));
        if (state === BROKEN) this.overlay.append(svg("path", { class: "seam broken-core", d: line(run, false) }));
      }
    }
    this.drawStarts();
    this.drawPlaces();
    this.drawMarks();
    this.drawAxes(view);
    this.overlay.append(this.cursor);
  }

  /** Where s begins on every path, and which way it runs. */
  private drawStarts(): void {
    for (const contour of this.walk.joint.contours) {
      const all = points(contour).map((p) => this.at(p));
      if (all.length < 3) continue;
      const [x, y] = all[0], [nx, ny] = this.normal(contour, 0);
      const ahead = all.find(([a, b]) => Math.hypot(a - x, b - y) > 6) ?? all[1], long = Math.hypot(ahead[0] - x, ahead[1] - y) || 1;
      const [tx, ty] = [(ahead[0] - x) / long, (ahead[1] - y) / long];
      // On the inner side, where no number of a finding stands.
      const [ax, ay] = [x - nx * 13, y - ny * 13], [bx, by] = [ax + tx * 20, ay + ty * 20];
      const name = this.walk.joint.contours.length > 1 ? `${contour.id}: s = 0` : "s = 0";
      this.overlay.append(svg("g", { class: "start-mark", "data-start": contour.id },
        svg("path", { d: `M${px(x + nx * 7)} ${px(y + ny * 7)}L${px(x - nx * 13)} ${px(y - ny * 13)}L${px(bx)} ${px(by)}` }),
        svg("path", { class: "cut-arrow", d: arrow(bx, by, tx, ty) }),
        svg("text", { x: px(x - nx * 24), y: px(y - ny * 24), "text-anchor": Math.abs(nx) < 0.5 ? "middle" : nx > 0 ? "end" : "start", "dominant-baseline": "central" }, name)));
    }
  }

  private drawMarks(): void {
    const groups: { x: number; y: number; nx: number; ny: number; findings: Finding[]; spot: Spot }[] = [];
    for (const finding of this.atlas.payload.findings) {
      if (finding.joint !== this.walk.joint.id || finding.station === null || isStretchOfNote(finding)) continue;
      for (const spot of spotsOf(finding)) {
        const contour = this.walk.joint.contours.find((c) => c.id === spot.contour);
        if (!contour) continue;
        const [x, y] = this.at(points(contour)[spot.station]);
        const [nx, ny] = this.normal(contour, spot.station);
        const group = groups.find((g) => Math.hypot(g.x - x, g.y - y) < 18);
        if (!group) groups.push({ x, y, nx, ny, findings: [finding], spot });
        else if (!group.findings.includes(finding)) group.findings.push(finding);
      }
    }
    // Numbers that would print over each other stand as one group.
    const label = groups.length > 8 ? shortNumbersOf : numbersOf;
    const half = (g: { findings: Finding[] }) => label(g.findings).length * 4 + 2;
    for (let i = 0; i < groups.length; i++) {
      for (let k = i + 1; k < groups.length; k++) {
        const [a, b] = [groups[i], groups[k]];
        const [dx, dy] = [Math.abs(a.x + a.nx * 31 - b.x - b.nx * 31), Math.abs(a.y + a.ny * 31 - b.y - b.ny * 31)];
        if (dx > half(a) + half(b) || dy > 17) continue;
        a.findings = [...new Set([...a.findings, ...b.findings])].sort((p, q) => p.n - q.n);
        groups.splice(k, 1);
        k = i;
      }
    }
    for (const { x, y, nx, ny, findings, spot } of groups) {
      const first = findings[0];
      const kind = first.waived ? "waived" : first.severity;
      const mark = svg("g", { class: `section-mark ${kind}`, tabindex: 0, role: "button", "data-finding": first.n,
        "aria-label": `${tr("Finding")} ${findings.map((f) => f.n).join(", ")}: ${first.title}` });
      for (const side of [1, -1]) {
        const [ax, ay] = [x + side * nx * 8, y + side * ny * 8], [bx, by] = [x + side * nx * 19, y + side * ny * 19];
        mark.append(
          svg("path", { class: "cut", d: `M${px(ax)} ${px(ay)}L${px(bx)} ${px(by)}` }),
          svg("path", { class: "cut-arrow", d: arrow(bx, by, -ny, nx) }),
        );
      }
      const [tx, ty] = [x + nx * 31, y + ny * 31];
      mark.append(svg("circle", { class: "target", cx: px(x), cy: px(y), r: 13 }), svg("text", { x: px(tx), y: px(ty), "text-anchor": "middle", "dominant-baseline": "central" }, label(findings)));
      const go = (event: Event) => { event.stopPropagation(); this.walk.showFinding(first, "finding", spot); };
      mark.addEventListener("click", go);
      mark.addEventListener("pointerdown", (event) => event.stopPropagation());
      mark.addEventListener("keydown", (event) => { if (event.key === "Enter" || event.key === " ") { event.preventDefault(); go(event); } });
      this.overlay.append(mark);
    }
  }

  /** Where findings lie that have a place beside the seam: a part that stands near, another stretch of the seam. */
  private drawPlaces(): void {
    for (const finding of this.atlas.payload.findings) {
      const contour = this.walk.joint.contours.find((c) => c.id === finding.contour);
      if (finding.joint !== this.walk.joint.id || !finding.at || !contour || finding.station === null || (finding.from_s !== null && !finding.met)) continue;
      const [x, y] = this.at(finding.at), [sx, sy] = this.at(points(contour)[finding.station]);
      const mark = svg("g", { class: `place-mark ${finding.waived ? "waived" : finding.severity}`, "data-place-of": finding.n },
        svg("title", null, `${tr("Finding")} ${finding.n}: ${finding.title}${finding.value === "–" ? "" : `, ${finding.value}`}`),
        svg("path", { d: `M${px(x - 5)} ${px(y - 5)}L${px(x + 5)} ${px(y + 5)}M${px(x - 5)} ${px(y + 5)}L${px(x + 5)} ${px(y - 5)}` }));
      if (Math.hypot(x - sx, y - sy) > 4) mark.append(svg("path", { class: "reach", d: `M${px(sx)} ${px(sy)}L${px(x)} ${px(y)}` }));
      this.overlay.append(mark);
    }
  }

  private normal(contour: Contour, station: number): [number, number] {
    const [x, y] = flat(this.view!.plane, contour.stations.u[station]);
    const length = Math.hypot(x, y) || 1;
    return [x / length, -y / length];
  }

  private drawAxes(view: View): void {
    const origin: [number, number] = [26, view.height - 26];
    const group = svg("g", { class: "axes", "aria-hidden": true });
    (["X", "Y", "Z"] as const).forEach((name, i) => {
      const axis: Vec = [0, 0, 0];
      axis[i] = 1;
      const [x, y] = flat(view.plane, axis);
      if (Math.hypot(x, y) < 0.3) return;
      const end: [number, number] = [origin[0] + x * 20, origin[1] - y * 20];
      group.append(
        svg("path", { d: `M${px(origin[0])} ${px(origin[1])}L${px(end[0])} ${px(end[1])}` }),
        svg("text", { x: px(end[0] + x * 7), y: px(end[1] - y * 7), "text-anchor": "middle", "dominant-baseline": "central" }, name),
      );
    });
    this.overlay.append(group);
  }

  show(place: Place): void {
    if (!this.view) return;
    if (place.joint !== this.shownJoint) { this.draw(); return; }
    const contour = this.walk.contour;
    const [x, y] = this.at(points(contour)[place.station]);
    const [nx, ny] = this.normal(contour, place.station);
    clear(this.cursor);
    this.cursor.append(
      // Two strokes beside the seam, so that what it shows here stays in sight.
      ...[1, -1].flatMap((side) => ["casing", ""].map((name) => svg("path", { class: name, d: `M${px(x + side * nx * 6)} ${px(y + side * ny * 6)}L${px(x + side * nx * 17)} ${px(y + side * ny * 17)}` }))),
    );
    this.lens(place);
    this.cursor.setAttribute("data-x", px(x));
    this.cursor.setAttribute("data-y", px(y));
  }

  /** A short stretch of a finding, enlarged in the middle of the part where nothing else is drawn. */
  private lens(place: Place): void {
    const view = this.view!, { joint, contour, facts } = this.walk;
    const here = this.walk.findingsHere().find((f) => f.from_s !== null && f.severity !== "note");
    if (!here) return;
    const { s } = contour.stations, all = points(contour).map((p) => this.at(p));
    const spot = spotsOf(here).find((p) => p.contour === contour.id && covers(p, s[place.station])) ?? here;
    const own = s.flatMap((at, i) => (covers(spot, at) ? [i] : []));
    const ends = own.map((i) => all[i]);
    const long = Math.max(...ends.map((p) => Math.hypot(p[0] - ends[0][0], p[1] - ends[0][1])));
    if (!own.length || long > 26) return;
    const radius = Math.max(30, Math.min(58, Math.min(view.width, view.height) * 0.15)), [x, y] = all[place.station];
    const free = joint.contours.flatMap((c) => points(c).map((p) => this.at(p)));
    const room = (cx: number, cy: number) => Math.min(...free.map((p) => Math.hypot(p[0] - cx, p[1] - cy)), cx, cy, view.width - cx, view.height - cy) - radius;
    const spots: [number, number][] = [];
    for (let i = 1; i < 8; i++) for (let k = 1; k < 8; k++) spots.push([(view.width * i) / 8, (view.height * k) / 8]);
    const fits = spots.filter(([cx, cy]) => room(cx, cy) > 4);
    if (!fits.length) return;
    const [cx, cy] = fits.reduce((a, b) => (Math.hypot(a[0] - x, a[1] - y) <= Math.hypot(b[0] - x, b[1] - y) ? a : b));
    const times = Math.max(2, Math.min(8, (radius * 0.9) / Math.max(long, 4)));
    const enlarged = (p: [number, number]): [number, number] => [cx + (p[0] - x) * times, cy + (p[1] - y) * times];
    const away = Math.hypot(cx - x, cy - y);
    const group = svg("g", { class: "plan-lens", "data-finding": here.n },
      svg("path", { class: "tie", d: `M${px(x)} ${px(y)}L${px(cx - ((cx - x) / away) * radius)} ${px(cy - ((cy - y) / away) * radius)}` }),
      svg("circle", { class: "rim", cx: px(cx), cy: px(cy), r: px(radius) }));
    const inside = svg("g", { "clip-path": "url(#plan-lens-rim)" });
    group.append(svg("clipPath", { id: "plan-lens-rim" }, svg("circle", { cx: px(cx), cy: px(cy), r: px(radius - 1) })), inside);
    for (const [from, to, state] of facts.worst[contour.id] ?? []) {
      const run = all.slice(from, (to + 1 < all.length ? to + 1 : to) + 1);
      if (contour.closed && to === all.length - 1) run.push(all[0]);
      inside.append(svg("path", { class: `seam ${STATE_NAME[state]}`, d: line(run.map(enlarged), false) }));
      if (state === BROKEN) inside.append(svg("path", { class: "seam broken-core", d: line(run.map(enlarged), false) }));
    }
    group.append(svg("text", { x: px(cx), y: px(y > cy ? cy - radius - 6 : cy + radius + 13), "text-anchor": "middle" }, tr("{count} times larger", { count: Math.round(times) })));
    this.cursor.append(group);
  }

  private pick(x: number, y: number): void {
    let best = { contour: 0, station: 0 }, least = Infinity;
    this.walk.joint.contours.forEach((contour, k) => points(contour).forEach((p, station) => {
      const [a, b] = this.at(p);
      const away = Math.hypot(a - x, b - y);
      if (away < least) { least = away; best = { contour: k, station }; }
    }));
    this.walk.go(best, "plan");
  }
}

const cache = new WeakMap<Contour, Vec[]>();

export function points(contour: Contour): Vec[] {
  let known = cache.get(contour);
  if (!known) {
    const { x, y, z } = contour.stations;
    known = x.map((_, i) => [x[i], y[i], z[i]] as Vec);
    cache.set(contour, known);
  }
  return known;
}

function line(run: [number, number][], closed: boolean): string {
  return "M" + run.map(([x, y]) => `${px(x)} ${px(y)}`).join("L") + (closed ? "Z" : "");
}

/** A filled arrow head with its foot at (x, y), pointing along (dx, dy). */
function arrow(x: number, y: number, dx: number, dy: number): string {
  return `M${px(x + dx * 9)} ${px(y + dy * 9)}L${px(x - dy * 3.4)} ${px(y + dx * 3.4)}L${px(x + dy * 3.4)} ${px(y - dx * 3.4)}Z`;
}

export function hex(text: string): Vec {
  const digits = text.replace("#", "");
  const value = Number.parseInt(digits.length === 3 ? [...digits].map((d) => d + d).join("") : digits, 16);
  return [(value >> 16) & 255, (value >> 8) & 255, value & 255];
}
