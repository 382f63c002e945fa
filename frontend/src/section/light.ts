/** The light over one station as it was measured: where it enters, what of it arrives, and what stops the rest. */

import { px, svg } from "../dom";
import { wideness } from "./layout";
import type { JointFacts } from "../types";
import type { Strip } from "../unpack";
import { mm, tr } from "../voice";

export interface Sheet {
  /** mm in the section's own plane -> pixels; h is measured from the rib's top, which may lean */
  at: (u: number, h: number) => [number, number];
  scale: number;
  ceiling: number;
  left: number;
}

/** One ray: where it leaves the drawing's upper edge, enters the cover and meets the rib top, mm. */
interface Ray { above: number; enters: number; foot: number }

export function drawLight(
  get: (column: string) => number | null, half: number, up: 1 | -1, facts: JointFacts, sheet: Sheet,
  strips: Strip[], key: string, name: (part: string) => string,
): { drawn: SVGElement[]; told: SVGElement[] } {
  const top = (get("cover_thickness") ?? 0) + (up > 0 ? Math.max(get("gap") ?? 0, 0) : 0);
  const lean = get("light_lean"), inner = get("light_enters_inner"), outer = get("light_enters_outer");
  const given = inner !== null && outer !== null;
  const foot = (get("light_width") ?? 2 * half) / 2 + facts.margin;
  const [low, high] = given ? [inner - facts.margin, outer + facts.margin] : [-foot, foot];
  const rise = Math.max((sheet.at(0, top)[1] - sheet.ceiling) / sheet.scale, 0); // mm from the cover's top to the edge
  const slope = (degrees: number) => Math.tan((degrees * Math.PI) / 180) * rise;
  const [above, beyond] = given ? [low + slope((lean ?? 0) - facts.cone), high + slope((lean ?? 0) + facts.cone)] : [low, high];
  const ray = (at: number): Ray => {
    const share = (at + foot) / (2 * foot), mix = (a: number, b: number) => a + share * (b - a);
    return { above: mix(above, beyond), enters: mix(low, high), foot: at };
  };
  const pixel = (u: number, h: number | null): string => {
    const [x, y] = sheet.at(u, h ?? top + rise);
    return `${px(x)} ${px(h === null ? sheet.ceiling : y)}`;
  };
  /** Where a ray is at the height h above the rib's top. */
  const along = (r: Ray, h: number) => (h >= top ? r.enters + ((r.above - r.enters) * (h - top)) / Math.max(rise, 1e-9) : r.foot + ((r.enters - r.foot) * h) / Math.max(top, 1e-9));
  const area = (a: Ray, b: Ray, from: number | null) => {
    const start = from === null ? [pixel(a.above, null), pixel(a.enters, top)] : from > top ? [pixel(along(a, from), from), pixel(a.enters, top)] : [pixel(along(a, from), from)];
    const end = from === null ? [pixel(b.enters, top), pixel(b.above, null)] : from > top ? [pixel(b.enters, top), pixel(along(b, from), from)] : [pixel(along(b, from), from)];
    return `M${[...start, pixel(a.foot, 0), pixel(b.foot, 0), ...end].join("L")}Z`;
  };
  const parts: SVGElement[] = [svg("path", { class: "light", d: area(ray(-foot), ray(foot), null) })];
  const mine = strips.filter((strip) => strip.leans === (lean !== null) || strips.every((s) => s.leans === strip.leans));
  // The margin beside the light lies in the shade of the light's edge.
  const rim = (u: number) => (Math.abs(u) >= foot - facts.margin - 1e-3 ? Math.sign(u) * foot : u);
  for (const strip of mine) {
    const stop = strip.v !== null && strip.v < top + rise ? strip.v : null;
    parts.push(svg("path", {
      class: strip.share > 0 ? "shade part" : "shade", d: area(ray(rim(strip.low)), ray(rim(strip.high)), stop),
      "data-low": strip.low, "data-high": strip.high, "data-share": strip.share,
    }));
  }
  const count = Math.max(mine.length ? 4 : 1, Math.min(mine.length ? 6 : 4, Math.round((2 * foot * sheet.scale) / 26)));
  for (let i = 0; i < count; i++) {
    const r = ray(-foot + facts.margin + ((i + 0.5) / count) * 2 * (foot - facts.margin));
    const strip = mine.find((s) => r.foot >= s.low - 1e-6 && r.foot <= s.high + 1e-6);
    const tip = Math.min(6 / sheet.scale, top > 0 ? top : 0.1);
    if (!strip) {
      parts.push(svg("path", { class: "ray", "marker-end": `url(#${key}-arrow)`, d: `M${pixel(r.above, null)}L${pixel(r.enters, top)}L${pixel(along(r, tip), tip)}` }));
      continue;
    }
    const stop = strip.v !== null && strip.v < top + rise ? strip.v : top + rise * 0.8;
    const [x, y] = sheet.at(along(r, stop), stop);
    parts.push(
      svg("path", { class: "ray lost", d: `M${pixel(along(r, stop), stop)}L${stop > top ? `${pixel(r.enters, top)}L` : ""}${pixel(along(r, tip), tip)}` }),
      svg("path", { class: "ray", d: `M${pixel(r.above, null)}L${pixel(along(r, stop), stop)}` }),
      svg("path", { class: strip.share > 0 ? "stop part" : "stop", d: `M${px(x - 5)} ${px(y - 5)}L${px(x + 5)} ${px(y + 5)}M${px(x - 5)} ${px(y + 5)}L${px(x + 5)} ${px(y - 5)}` }),
    );
  }
  const told: SVGElement[] = [];
  const caster = mine.find((strip) => strip.part);
  if (caster) {
    const far = caster.v !== null && caster.v >= top + rise;
    const where = [caster.v !== null ? tr("{height} above the rib", { height: mm(caster.v, 1) }) : "", Math.abs(caster.along ?? 0) > 0.5 ? `${mm(Math.abs(caster.along!), 1)} ${caster.along! > 0 ? tr("ahead") : tr("back")}` : ""].filter(Boolean).join(", ");
    const r = ray(-foot);
    const height = caster.v !== null && !far ? caster.v : top + rise;
    const [x, y] = sheet.at(Math.min(r.above, r.enters, r.foot), height);
    const text = `${name(caster.part)}${where ? `, ${where}` : ""}`;
    told.push(svg("text", { class: "caster", "text-anchor": "end", x: px(Math.max(x - 8, sheet.left + wideness(text, 12, 600) + 2)), y: px(Math.max(sheet.ceiling + 12, y - 4)), "data-part": caster.part }, text));
  }
  return { drawn: parts, told };
}
