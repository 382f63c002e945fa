/** Arrays of the document's part "view" as the page carries them (report/html/packing.py): base64 text of bytes. */

import type { PackedMesh, PackedSections, Payload } from "./types";

const isLittleEndian = new Uint8Array(new Uint32Array([1]).buffer)[0] === 1;

function bytes(text: string): ArrayBuffer {
  const raw = atob(text);
  const result = new Uint8Array(raw.length);
  for (let i = 0; i < raw.length; i++) result[i] = raw.charCodeAt(i);
  return result.buffer;
}

function words(text: string): ArrayBuffer {
  const buffer = bytes(text);
  if (!isLittleEndian) {
    const view = new DataView(buffer);
    for (let i = 0; i + 4 <= buffer.byteLength; i += 4) view.setUint32(i, view.getUint32(i, true), false);
  }
  return buffer;
}

/** Integers of three bytes each, the least first, with their sign. */
function wholeNumbers(text: string): Int32Array {
  const raw = new Uint8Array(bytes(text)), count = raw.length / 3;
  const result = new Int32Array(count);
  for (let i = 0; i < count; i++) result[i] = ((raw[3 * i] | (raw[3 * i + 1] << 8) | (raw[3 * i + 2] << 16)) << 8) >> 8;
  return result;
}

/** Sums of differences, `wide` columns beside each other; as whole numbers of three bytes they wrap round. */
function summed(differences: Int32Array, wide: number): Int32Array {
  for (let i = wide; i < differences.length; i++) differences[i] = ((differences[i - wide] + differences[i]) << 8) >> 8;
  return differences;
}

const lengths = (steps: Int32Array, step: number): Float32Array => Float32Array.from(steps, (n) => n * step);

/** A strip of the rib top that not all of the light reaches, mm; u, v, along: where the first ray is stopped. */
export interface Strip {
  station: number; low: number; high: number; share: number;
  u: number | null; v: number | null; along: number | null; part: string; leans: boolean;
}

const KEPT = 8.9; // mm beside the mid-line up to which outlines are kept at least

export interface Outline { segments: Float32Array; owner: Uint8Array }

/** Sections of one path, by station. */
export class Sections {
  private readonly offsets: Uint32Array;
  private readonly segments: Float32Array;
  private readonly owner: Uint8Array;
  /** Rise of the rib top for each mm outward, by row. */
  readonly slopes: number[];
  readonly shade: Strip[];
  private readonly others: string[];
  private readonly row = new Map<number, number>();
  private readonly step: number;

  constructor(packed: PackedSections) {
    this.offsets = new Uint32Array(words(packed.offsets));
    this.segments = lengths(wholeNumbers(packed.segments), packed.step);
    this.owner = new Uint8Array(bytes(packed.owner));
    this.slopes = packed.slope ? [...new Float32Array(words(packed.slope))] : packed.stations.map(() => 0);
    this.shade = (packed.shade ?? []).map(([station, low, high, share, u, v, along, part, leans]) => ({ station, low, high, share, u, v, along, part, leans }));
    this.others = packed.others ?? [];
    packed.stations.forEach((station, row) => this.row.set(station, row));
    this.step = packed.stations.slice(1).reduce((most, station, i) => Math.max(most, Math.min(20, station - packed.stations[i])), 1);
  }

  /** The outline at a station; long seams keep one for every few stations, then the nearest is given. */
  at(station: number): Outline | null {
    for (let away = 0; away <= this.step; away++) {
      const row = this.row.get(station - away) ?? this.row.get(station + away);
      if (row !== undefined) return this.outline(row);
    }
    return null;
  }

  slope(station: number): number {
    for (let away = 0; away <= this.step; away++) {
      const row = this.row.get(station - away) ?? this.row.get(station + away);
      if (row !== undefined) return this.slopes[row];
    }
    return 0;
  }

  /** How far the cover reaches to one side, mm from the mid-line; 0 where it goes on beyond what was kept. */
  edgeOfCover(side: 1 | -1): number {
    let far = 0;
    this.owner.forEach((owner, i) => {
      if (owner === 1) far = Math.max(far, side * this.segments[4 * i], side * this.segments[4 * i + 2]);
    });
    return far < KEPT ? far : 0;
  }

  shadeAt(station: number): Strip[] { return this.shade.filter((strip) => strip.station === station); }

  /** The number in the outline of a further part. */
  ownerOf(part: string): number | undefined {
    const place = this.others.indexOf(part);
    return place < 0 ? undefined : place + 2;
  }

  partOf(owner: number): string | null { return this.others[owner - 2] ?? null; }

  /** Whether the outline given for a station is a neighbour's. */
  isNeighbour(station: number): boolean { return !this.row.has(station); }

  private outline(row: number): Outline {
    const [from, to] = [this.offsets[row], this.offsets[row + 1]];
    return { segments: this.segments.subarray(4 * from, 4 * to), owner: this.owner.subarray(from, to) };
  }
}

export interface Mesh { part: string; positions: Float32Array; triangles: Uint32Array; face: Int32Array; leftOut: number }

export function unpackMesh(packed: PackedMesh): Mesh {
  return {
    part: packed.part,
    positions: lengths(summed(wholeNumbers(packed.positions), 3), packed.step),
    triangles: new Uint32Array(summed(wholeNumbers(packed.triangles), 1)),
    face: summed(wholeNumbers(packed.face), 1),
    leftOut: packed.left_out ?? 0,
  };
}

export const readPayload = (block: HTMLElement): Promise<Payload> => inflate<Payload>(block);

/** The page's data: gzip, then base64, in a block of the page that is never run. */
export async function inflate<T>(block: HTMLElement): Promise<T> {
  const stream = new Blob([bytes(block.textContent!.trim())]).stream().pipeThrough(new DecompressionStream("gzip"));
  return JSON.parse(await new Response(stream).text()) as T;
}
