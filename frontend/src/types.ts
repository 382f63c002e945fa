/** The data that the page is drawn from. Lengths in mm; null: not measured. */

export type Column = (number | null)[];

export interface Stations {
  s: number[]; x: number[]; y: number[]; z: number[];
  u: [number, number, number][];
  [column: string]: Column | number[] | [number, number, number][];
}

export interface Contour {
  id: string; closed: boolean; length_mm: number; junctions: string[];
  stations: Stations;
  unmeasured: { column: string; from_s: number; to_s: number; why: string }[];
  summary: Record<string, { min: number; median: number; max: number } | null>;
}

export interface Joint {
  id: string; cover: string[]; base: string[]; rib_on: string; beam: [number, number, number];
  contours: Contour[];
}

export interface Quantity { title: string; unit: string; decimals: number }

/** One limit as the interval in which a column must lie. */
export interface Band {
  rule: string; title: string; column: string; low: number | null; high: number | null; words: string;
}

export interface Finding {
  n: number; id: string; title: string; severity: "must-fix" | "attention" | "note"; waived: boolean;
  rule: string; quantity: string; joint: string; contour: string | null; station: number | null;
  from_s: number | null; to_s: number | null; at: [number, number, number] | null;
}

/** State of a station under a rule: runs of [first, last, state]. */
export type Runs = [number, number, number][];
export const UNKNOWN = 0, WITHIN = 1, NEAR = 2, BROKEN = 3, WAIVED = 4;

export interface JointFacts {
  id: string;
  bands: Band[];
  /** contour id -> one list of runs for each band */
  tracks: Record<string, Runs[]>;
  /** contour id -> runs of the worst state over all rules */
  worst: Record<string, Runs>;
  collapse: number | null;
  /** how far the cover is lowered from where it is drawn: first rest plus collapse */
  drop: number | null;
}

export interface PackedSections {
  joint: string; contour: string; stations: number[];
  offsets: string; segments: string; owner: string; face: string;
}
export interface PackedMesh { part: string; positions: string; triangles: string; face: string }

export interface Payload {
  joints: Joint[];
  parts: { id: string; name: string; role: string }[];
  quantities: Record<string, Quantity>;
  reasons: Record<string, string>;
  findings: Finding[];
  facts: JointFacts[];
  view: { sections: PackedSections[]; meshes: PackedMesh[] } | null;
}
