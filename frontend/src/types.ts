import type { ContourRecord, JointRecord, PackedMesh as Mesh, PackedSections as Packed } from "./document";

/** As report/html/packing.py packs them: `step` is mm for each unit of lengths. */
export type PackedMesh = Mesh & { step: number };

/** Rows of the shade: station, low, high, share, u, v, along, part, leans. */
export type PackedSections = Omit<Packed, "shade" | "face"> & {
  step: number;
  shade?: [number, number, number, number, number | null, number | null, number | null, string, boolean][];
};

/** The data that the page is drawn from. Lengths in mm; null: not measured. */

import type { Voice } from "./voice";

export type Column = (number | null)[];

export type Stations = ContourRecord["stations"];

/** A path of the seam as it stands in the document, less what is not drawn. */
export type Contour =
  Pick<ContourRecord, "id" | "closed" | "length_mm" | "junctions" | "clamp_side" | "stations" | "unmeasured" | "summary">;

export type Joint =
  Pick<JointRecord, "id" | "cover" | "base" | "rib_on" | "beam" | "summary"> & { contours: Contour[] };

/** `scale`: quantities of one scale are drawn to one scale. */
export interface Quantity { title: string; unit: string; decimals: number; scale: string }

/** One number for the whole seam, a list for every path where it changes by place, or none. */
export type Side = number | Record<string, (number | null)[]> | null;

/** Bounds of one column; `judged` is the quantity that a finding names. */
export interface Edge { column: string; judged: string; low: Side; high: Side }

/** One rule for one joint. */
export interface Band {
  rule: string; title: string; severity: string; columns: string[]; words: string; edges: Edge[];
}

export interface Finding {
  n: number; id: string; title: string; severity: "must-fix" | "attention" | "note"; waived: boolean;
  rule: string; quantity: string; column: string | null; value: string; limit: string; limit_short: string; goal: number | null; way: string | null; wide: number | null; leaves: number | null;
  /** rules whose breach has the same cause and is told with this finding */
  also: string[];
  /** the value as a number, in the quantity's unit */
  number: number | null;
  /** how much to change, mm, as the remedy says; what it should become, as number and in words; way out of the light; present width, mm */
  change: number | null; target: string;
  /** holds along its whole path, though it has no stretch */
  everywhere: boolean;
  /** that a waiver of it names */
  place: Record<string, unknown> | null;
  joint: string; contour: string | null; station: number | null;
  from_s: number | null; to_s: number | null; at: [number, number, number] | null;
  /** where the cover meets what stops it */
  met: [number, number, number] | null;
  /** further places of the same finding */
  places: Spot[];
}

/** One place of a finding: a stretch of a path with its worst station. */
export interface Spot { contour: string; station: number; from_s: number | null; to_s: number | null }

/** State of a station under a rule: runs of [first, last, state]. */
export type Runs = [number, number, number][];
export const UNKNOWN = 0, WITHIN = 1, NEAR = 2, BROKEN = 3, WAIVED = 4, LOOK = 5, NOTED = 6;
export const STATE_NAME = ["unknown", "within", "near", "broken", "waived", "look", "noted"] as const;

export interface JointFacts {
  id: string;
  bands: Band[];
  /** contour id -> one list of runs for each band */
  tracks: Record<string, Runs[]>;
  /** contour id -> runs of the worst state over all rules */
  worst: Record<string, Runs>;
  /** column -> how far (+-) it may differ from the drawing */
  tolerances: Record<string, number>;
  collapse: number | null;
  /** how far the cover is lowered from where it is drawn: initial contact plus collapse */
  drop: number | null;
  /** beside the rib that the light may reach; the clamp land begins beyond it */
  margin: number;
  /** degrees, of the scanner's cone to each side */
  cone: number;
}

export interface Payload {
  /** null: English and mm */
  voice?: Voice | null;
  model: { file: string; sha256: string };
  joints: Joint[];
  parts: { id: string; name: string; role: string }[];
  quantities: Record<string, Quantity>;
  reasons: Record<string, string>;
  findings: Finding[];
  facts: JointFacts[];
  /** of a proposal: the parts as drawn, cut at the same stations */
  as_drawn?: { sections: PackedSections[] } | null;
  view: { sections: PackedSections[]; meshes: PackedMesh[] } | null;
}
