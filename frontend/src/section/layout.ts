/** Where millimetres of a section lie on the sheet, and labels of its margins kept apart. */

import type { Contour, Joint } from "../types";
import type { Sections } from "../unpack";

export interface Frame { left: number; right: number; bottom: number; top: number }

const HIGHEST = 5; // mm above the cover's top up to which what stops the light is drawn where it stands

/** The window, mm, that shows every section of a path alike, so that nothing jumps while walking. */
export function frameOf(joint: Joint, contour: Contour, margin: number, sections: Sections | null): Frame {
  const most = (column: string, otherwise: number) => contour.summary[column]?.max ?? otherwise;
  const width = most("rib_width", 1.5), height = Math.min(most("rib_height", 1.2), 4), cover = most("cover_thickness_max", 2);
  const near = Math.max(width / 2 + 2.2, width * 1.9);
  const far = Math.max(near, Math.min(width / 2 + margin + most("clamp_land", 2) + 0.7, width / 2 + 6));
  const side = landSide(contour);
  let top = cover + Math.max(0, Math.min(most("gap", 0), 1)) + 0.35;
  const steep = Math.max(...(sections?.slopes ?? [0]).map(Math.abs));
  top += Math.min(steep, 1) * near * 0.5;
  for (const strip of sections?.shade ?? []) {
    if (strip.v !== null && strip.v < cover + HIGHEST) top = Math.max(top, strip.v + 1.2);
  }
  const low = Math.min(steep, 1) * near * 0.5;
  const sides = { left: side > 0 ? -near : -far, right: side < 0 ? near : far };
  return joint.rib_on === "cover"
    ? { ...sides, bottom: -Math.max(1.6, height) - low, top: Math.max(top, height + 1.2) }
    : { ...sides, bottom: -(height + 1.4) - low, top };
}

/** +1 where the clamp land lies outward, -1 inward, 0 where the path has none. */
export const landSide = (contour: Contour): 1 | -1 | 0 => (contour.clamp_side === "outer" ? 1 : contour.clamp_side === "inner" ? -1 : 0);

export interface Slot { wanted: number; height: number; put: (y: number) => void }

/** Puts labels of one margin as near to their wanted middles as they get without touching, in the order of these. */
export function pack(slots: Slot[], ceiling: number, floor: number, between = 7): void {
  const order = [...slots].sort((a, b) => a.wanted - b.wanted);
  const tops: number[] = [];
  let free = ceiling;
  for (const slot of order) {
    const top = Math.max(free, slot.wanted - slot.height / 2);
    tops.push(top);
    free = top + slot.height + between;
  }
  let limit = floor;
  for (let i = order.length - 1; i >= 0; i--) {
    tops[i] = Math.min(tops[i], limit - order[i].height);
    limit = tops[i] - between;
  }
  order.forEach((slot, i) => slot.put(tops[i]));
}

/** Text in lines of at most so many signs, at most so many lines; a word longer than a line is cut. */
export function wrap(text: string, signs: number, most = 2): string[] {
  const lines: string[] = [];
  for (const word of text.split(/\s+/)) {
    const last = lines[lines.length - 1];
    if (last !== undefined && last.length + 1 + word.length <= signs) lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  if (lines.length <= most) return lines.map((line) => (line.length > signs ? `${line.slice(0, signs - 1)}…` : line));
  const kept = lines.slice(0, most);
  kept[most - 1] = `${kept[most - 1].slice(0, signs - 1)}…`;
  return kept;
}
