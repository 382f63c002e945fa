/** Where millimetres of a section lie on the sheet, and labels of its margins kept apart. */

import type { Contour, Joint } from "../types";
import type { Sections } from "../unpack";

export interface Frame { left: number; right: number; bottom: number; top: number }

const MORE = 3; // mm by which the window grows to show the cover's free edge
const HIGHEST = 5; // mm above the cover's top up to which what stops the light is drawn where it stands

/** The window, mm, that shows every section of a path alike, so that nothing jumps while walking. */
export function frameOf(joint: Joint, contour: Contour, margin: number, sections: Sections | null): Frame {
  const most = (column: string, otherwise: number) => contour.summary[column]?.max ?? otherwise;
  const width = most("rib_width", 1.5), height = Math.min(most("rib_height", 1.2), 4), cover = most("cover_thickness_max", 2);
  const near = Math.max(width / 2 + 2.2, width * 1.9);
  const side = landSide(contour);
  const wanted = Math.max(near, Math.min(width / 2 + margin + most("clamp_land", 2) + 0.7, width / 2 + 6));
  const edge = (side && sections?.edgeOfCover(side)) || 0;
  const far = edge > 0 && edge + 0.4 <= wanted + MORE ? Math.max(wanted, edge + 0.4) : wanted;
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

/** A label of a margin; `end` is where its leader goes to, if it has one. */
export interface Slot { wanted: number; height: number; end?: [number, number]; put: (y: number) => void }

/**
 * Puts labels of one margin as near to their wanted middles as they get without touching: in the order of these, but
 * neighbours change places where their leaders, which all start at x = `knee`, would cross otherwise.
 */
export function pack(slots: Slot[], ceiling: number, floor: number, knee: number, between = 7): void {
  const order = [...slots].sort((a, b) => a.wanted - b.wanted);
  let tops = stack(order, ceiling, floor, between);
  for (let round = 0, crossed = crossings(order, tops, knee); crossed > 0 && round < order.length; round++) {
    let better = false;
    for (let i = 0; i < order.length; i++) {
      for (let k = i + 1; k < order.length; k++) {
        const tried = [...order];
        [tried[i], tried[k]] = [tried[k], tried[i]];
        const places = stack(tried, ceiling, floor, between), left = crossings(tried, places, knee);
        if (left >= crossed) continue;
        order.splice(0, order.length, ...tried);
        [tops, crossed, better] = [places, left, true];
      }
    }
    if (!better) break;
  }
  order.forEach((slot, i) => slot.put(tops[i]));
}

/** How many pairs of leaders cross. */
function crossings(order: Slot[], tops: number[], knee: number): number {
  const lines = order.flatMap((slot, i) => (slot.end ? [[[knee, tops[i] + 8], slot.end] as [[number, number], [number, number]]] : []));
  let count = 0;
  lines.forEach((a, i) => lines.slice(i + 1).forEach((b) => { if (cross(a, b)) count++; }));
  return count;
}

function cross([a, b]: [[number, number], [number, number]], [c, d]: [[number, number], [number, number]]): boolean {
  const side = (p: [number, number], q: [number, number], r: [number, number]) => Math.sign((q[0] - p[0]) * (r[1] - p[1]) - (q[1] - p[1]) * (r[0] - p[0]));
  return side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0;
}

/** Tops of labels one below the other in this order. */
function stack(order: Slot[], ceiling: number, floor: number, between: number): number[] {
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
  return tops;
}

let pen: CanvasRenderingContext2D | null = null;

/** Width of a text in the drawing's own font, pixels. */
export function wideness(text: string, size = 12, weight = 500): number {
  pen ??= document.createElement("canvas").getContext("2d");
  if (!pen) return text.length * size * 0.47;
  pen.font = `${weight} ${size}px "Barlow Semi Condensed", "Arial Narrow", sans-serif`;
  return pen.measureText(text).width;
}

/** Text in lines of at most so many pixels, at most so many lines; what does not fit is cut and says so. */
export function wrap(text: string, room: number, most = 6, size = 12, weight = 500): string[] {
  const fits = (line: string) => wideness(line, size, weight) <= room;
  const lines: string[] = [];
  for (const word of text.split(/ +/)) {
    const last = lines[lines.length - 1];
    if (last !== undefined && fits(`${last} ${word}`)) lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  const cut = (line: string, more: boolean) => {
    if (!more && fits(line)) return line;
    let shown = line;
    while (shown.length > 1 && !fits(`${shown}…`)) shown = shown.slice(0, -1);
    return `${shown}…`;
  };
  return lines.slice(0, most).map((line, i) => cut(line, i === most - 1 && lines.length > most));
}
