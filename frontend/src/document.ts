/** Records of the review document. Made by `python -m seamcheck.document.page_types`; never edited by hand. */

/** A number in a sentence: its value, its unit, and to how many decimals people read it. */
export interface Amount {
  value: number;
  unit: string;
  decimals: number;
}

/** What a rule compares along a contour: one number, or one for every station. */
export interface Bounds {
  rule: string;
  column: string;
  quantity: string;
  severity: "must-fix" | "attention" | "note" | "off";
  low: number | (number | null)[] | null;
  high: number | (number | null)[] | null;
}

/** One path of a seam. */
export interface ContourRecord {
  id: string;
  closed: boolean;
  length_mm: number;
  clamp_side: "inner" | "outer" | null;
  ends: string[];
  junctions: string[];
  stations: { s: number[]; x: number[]; y: number[]; z: number[]; u: [number, number, number][]; [name: string]: unknown[] | number[] | [number, number, number][]; };
  unmeasured: Unmeasured[];
  summary: Record<string, Summary | null>;
  bounds: Bounds[];
}

/** A face of a part, with its place in the STEP file where that is known. */
export interface Face {
  part: string;
  face: number;
  step_entity: string | null;
  line: number | null;
}

/** A face of a part. */
export interface FaceOf {
  part: string;
  face: number;
}

/** One value of the whole interface, its place, and what was seen there. */
export interface InterfaceValue {
  value: number | null;
  at?: [number, number, number] | null;
  why?: string | null;
  said?: Message;
  faces?: FaceOf[];
  places?: InterfaceValue[];
  length?: number | null;
  direction?: [number, number, number] | null;
  move?: number | null;
  initial_contact?: number | null;
  lateral_play?: number | null;
  lowest?: [number, number, number] | null;
  outlines?: [number, number, number][][];
}

/** One seam between a cover and a base. */
export interface JointRecord {
  id: string;
  cover: string[];
  base: string[];
  kind: "weld-rib" | "plain-wall" | "flat-lap" | "stepped-lap" | "tongue-groove" | "ledge";
  confidence: number | null;
  rib_on: "base" | "cover" | "none";
  rib_part: string;
  beam: [number, number, number];
  modelled_state: "gap" | "mixed" | "overlap" | "touching";
  why: Message[];
  length_mm: number | null;
  initial_contact_mm: number | null;
  summary: Record<string, Summary | null>;
  junctions: Record<string, [number, number, number]>;
  interruptions: Missing[];
  seam_faces: SeamFaces;
  contours: ContourRecord[];
  interface: Record<string, InterfaceValue>;
  tolerances: ToleranceState[];
  parts_outside: PartsOutside | null;
}

/** One sentence: its key, what goes into it, and its English text. */
export interface Message {
  key: string;
  args: Record<string, string | Amount>;
  text: string;
  parts?: Record<string, Message[]>;
}

/** A stretch where the rib is missing. */
export interface Missing {
  length_mm: number | null;
  at: [number, number, number];
  contours: string[];
}

/** Display mesh of a part (document/view.py). */
export interface PackedMesh {
  part: string;
  positions: string;
  triangles: string;
  face: string;
  left_out?: number;
}

/** Section outlines of a contour (document/view.py); arrays as base64 of their little-endian bytes. */
export interface PackedSections {
  joint: string;
  contour: string;
  stations: number[];
  offsets: string;
  segments: string;
  owner: string;
  face: string;
  slope?: string;
  shade?: unknown[][];
  others?: string[];
}

/** Parts in which something breaks that holds as drawn: a record of the review document. */
export interface PartsOutside {
  ppm: number | null;
  spread: string;
  rules: string[];
}

/** Faces that the stations lie on. */
export interface SeamFaces {
  rib: Face[];
  opposite: Face[];
}

/** Of one quantity; every station counts as long as its part of the seam. */
export interface Summary {
  min: number | null;
  median: number | null;
  max: number | null;
  p05?: number | null;
  p95?: number | null;
  outside?: number;
}

/** State of one limit of a quantity with a tolerance at its worst place: a record of the review document. */
export interface ToleranceState {
  rule: string;
  quantity: string;
  side: "high" | "low";
  severity: string;
  state: "at risk" | "inside" | "outside";
  value: number | null;
  tolerance: number | null;
  worst_case: number | null;
  limit: number | null;
  outside_ppm: number | null;
  unit: string;
  from: "default" | "file" | "option";
}

/** A run of stations where a column has no value. */
export interface Unmeasured {
  column: string;
  from_s: number;
  to_s: number;
  why: string;
}

/** Section outlines and display meshes. */
export interface View {
  sections: PackedSections[];
  meshes: PackedMesh[];
}
