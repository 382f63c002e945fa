/** Outlines of one section: the unordered segments chained to closed loops, and what a vertical line meets. */

import type { Outline } from "../unpack";

export type Loop = [number, number][];
export type Solid = Map<number, Loop[]>;

const GRID = 1e-3; // mm: segment ends closer than this are one point
const REACH = 0.05; // mm: ends of open chains closer than this are joined

/** Chains the segments of every owner to loops. Chains that stay open are kept as they are. */
export function chain(outline: Outline): Solid {
  const byOwner = new Map<number, number[]>();
  outline.owner.forEach((owner, i) => {
    if (!byOwner.has(owner)) byOwner.set(owner, []);
    byOwner.get(owner)!.push(i);
  });
  const solid: Solid = new Map();
  for (const [owner, ids] of byOwner) solid.set(owner, loopsOf(outline.segments, ids));
  return solid;
}

function loopsOf(segments: Float32Array, ids: number[]): Loop[] {
  const points: Loop = [];
  const index = new Map<string, number>();
  const pointAt = (u: number, v: number): number => {
    const [i, j] = [Math.round(u / GRID), Math.round(v / GRID)];
    for (const [a, b] of [[i, j], [i + 1, j], [i - 1, j], [i, j + 1], [i, j - 1]]) {
      const known = index.get(`${a},${b}`);
      if (known !== undefined && Math.hypot(points[known][0] - u, points[known][1] - v) <= GRID) return known;
    }
    points.push([u, v]);
    index.set(`${i},${j}`, points.length - 1);
    return points.length - 1;
  };
  const ends = new Map<number, [number, number][]>(); // point -> (segment, other point)
  const note = (from: number, id: number, to: number) => {
    if (!ends.has(from)) ends.set(from, []);
    ends.get(from)!.push([id, to]);
  };
  for (const id of ids) {
    const a = pointAt(segments[4 * id], segments[4 * id + 1]);
    const b = pointAt(segments[4 * id + 2], segments[4 * id + 3]);
    if (a === b) continue;
    note(a, id, b);
    note(b, id, a);
  }
  const used = new Set<number>();
  const walk = (start: number): number[] => {
    const path = [start];
    for (let here = start; ;) {
      const next = ends.get(here)?.find(([id]) => !used.has(id));
      if (!next) return path;
      used.add(next[0]);
      here = next[1];
      path.push(here);
      if (here === start) return path;
    }
  };
  const chains: Loop[] = [];
  const starts = [...ends.keys()].sort((a, b) => (ends.get(a)!.length % 2 ? 0 : 1) - (ends.get(b)!.length % 2 ? 0 : 1));
  for (const start of starts) {
    while (ends.get(start)!.some(([id]) => !used.has(id))) chains.push(walk(start).map((p) => points[p]));
  }
  return join(chains);
}

function join(chains: Loop[]): Loop[] {
  const closed = chains.filter((c) => isClosed(c));
  const open = chains.filter((c) => !isClosed(c));
  while (open.length) {
    let path = open.pop()!;
    for (let found = true; found && !isClosed(path);) {
      found = false;
      const tail = path[path.length - 1];
      for (let k = 0; k < open.length; k++) {
        const other = open[k];
        if (near(tail, other[0])) path = [...path, ...other];
        else if (near(tail, other[other.length - 1])) path = [...path, ...[...other].reverse()];
        else continue;
        open.splice(k, 1);
        found = true;
        break;
      }
    }
    closed.push(path);
  }
  return closed;
}

const near = (a: [number, number], b: [number, number]) => Math.hypot(a[0] - b[0], a[1] - b[1]) <= REACH;

export const isClosed = (loop: Loop): boolean => loop.length > 2 && near(loop[0], loop[loop.length - 1]);

/** Loops with heights measured from a line through P that rises by `slope` mm for each mm outward. */
export function levelled(loops: Loop[] | undefined, slope: number): Loop[] | undefined {
  return slope === 0 ? loops : loops?.map((loop) => loop.map(([u, v]) => [u, v - slope * u] as [number, number]));
}

/** Intervals [low, high] of material on the vertical line at u, by even-odd pairing of the crossings. */
export function material(loops: Loop[] | undefined, u: number): [number, number][] {
  const hits: number[] = [];
  for (const loop of loops ?? []) {
    for (let i = 0; i < loop.length; i++) {
      const a = loop[i], b = loop[(i + 1) % loop.length];
      if (a[0] <= u === b[0] <= u) continue;
      hits.push(a[1] + ((u - a[0]) / (b[0] - a[0])) * (b[1] - a[1]));
    }
  }
  hits.sort((a, b) => a - b);
  const result: [number, number][] = [];
  for (let i = 0; i + 1 < hits.length; i += 2) result.push([hits[i], hits[i + 1]]);
  return result;
}

/** One column of a flash trap, mm: from `low` to `high` free after the collapse, to `drawn` free as drawn. */
export interface TrapColumn { u: number; low: number; high: number; drawn: number }

const STEP = 0.01; // mm, width of a column

/**
 * The free room beside the rib, outward from the rib until it holds the area that the document states. The
 * number decides where the drawn trap ends, so drawing and number can't disagree.
 *
 * `side` is +1 for outer, -1 for inner. `rib` and `counter` are the loops of the part with the rib and of the
 * part opposite it; `up` is +1 with the rib on the base and -1 with the rib on the cover.
 */
export function trapColumns(
  rib: Loop[] | undefined, counter: Loop[] | undefined, up: 1 | -1, side: 1 | -1, drop: number, area: number,
): TrapColumn[] {
  const columns: TrapColumn[] = [];
  let sum = 0;
  for (let k = 0; sum < area && k < 2000; k++) {
    const u = side * (k + 0.5) * STEP;
    const roof = flip(material(counter, u), up).map(([low]) => low);
    const ground = flip(material(rib, u), up);
    // The roof next above the ground: with the counterpart lowered, both may overlap on the rib.
    const top = ground.filter(([low]) => low < 0.5).map(([, high]) => high);
    if (!roof.length || !top.length) {
      if (sum > 0) break;
      continue;
    }
    const low = Math.max(...top.filter((v) => v < Math.min(...roof) + 0.5));
    const drawn = Math.min(...roof.filter((v) => v > low - 0.5));
    if (!Number.isFinite(low) || !Number.isFinite(drawn)) {
      if (sum > 0) break;
      continue;
    }
    const high = drawn - drop;
    if (high > low) {
      columns.push({ u, low, high, drawn });
      sum += (high - low) * STEP;
    } else if (sum > 0.02) break;
  }
  return columns;
}

function flip(intervals: [number, number][], up: 1 | -1): [number, number][] {
  return up > 0 ? intervals : intervals.map(([low, high]) => [-high, -low] as [number, number]).reverse();
}
