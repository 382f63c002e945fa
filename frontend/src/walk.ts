/** Where the reader stands on the seam; everything that moves in step listens here. */

import type { Contour, Finding, Joint, JointFacts, Payload, Spot } from "./types";

export interface Place { joint: number; contour: number; station: number }

/** One path laid out along the unrolled seam: its arc length starts at `start` mm. */
export interface Stretch { contour: number; start: number; length: number }

type Listener = (place: Place, cause: string) => void;

export class Walk {
  place: Place = { joint: 0, contour: 0, station: 0 };
  private readonly listeners: Listener[] = [];

  constructor(readonly payload: Payload) {}

  get joint(): Joint { return this.payload.joints[this.place.joint]; }
  get facts(): JointFacts { return this.payload.facts[this.place.joint]; }
  get contour(): Contour { return this.joint.contours[this.place.contour]; }
  get s(): number { return this.contour.stations.s[this.place.station]; }

  listen(listener: Listener): void { this.listeners.push(listener); }

  go(place: Partial<Place>, cause = ""): void {
    const joint = place.joint ?? this.place.joint;
    const contours = this.payload.joints[joint].contours;
    const contour = Math.min(place.contour ?? (place.joint === undefined ? this.place.contour : 0), contours.length - 1);
    const count = contours[contour].stations.s.length;
    const station = Math.max(0, Math.min(count - 1, place.station ?? 0));
    this.place = { joint, contour, station };
    for (const listener of this.listeners) listener(this.place, cause);
  }

  /** Steps along the path; a closed one goes round, an open one goes on into the next path. */
  step(by: number, cause = "keys"): void {
    const count = this.contour.stations.s.length;
    let station = this.place.station + by;
    let contour = this.place.contour;
    if (this.contour.closed) station = ((station % count) + count) % count;
    else if (station < 0 && contour > 0) {
      contour -= 1;
      station = this.joint.contours[contour].stations.s.length - 1;
    } else if (station >= count && contour < this.joint.contours.length - 1) {
      contour += 1;
      station = 0;
    }
    this.go({ contour, station }, cause);
  }

  stretches(jointIndex = this.place.joint): { stretches: Stretch[]; length: number } {
    const contours = this.payload.joints[jointIndex].contours;
    const total = contours.reduce((sum, c) => sum + c.length_mm, 0);
    const gap = contours.length > 1 ? total * 0.03 : 0;
    let start = 0;
    const stretches = contours.map((c, contour) => {
      const stretch = { contour, start, length: c.length_mm };
      start += c.length_mm + gap;
      return stretch;
    });
    return { stretches, length: start - gap };
  }

  /** Position on the unrolled seam, mm. */
  get unrolled(): number {
    return this.stretches().stretches[this.place.contour].start + this.s;
  }

  /** The station nearest to a position on the unrolled seam. */
  at(position: number): Pick<Place, "contour" | "station"> {
    const { stretches } = this.stretches();
    let best = { contour: 0, station: 0 }, least = Infinity;
    for (const stretch of stretches) {
      const inside = Math.max(0, Math.min(stretch.length, position - stretch.start));
      const away = Math.abs(position - stretch.start - inside);
      if (away >= least) continue;
      least = away;
      best = { contour: stretch.contour, station: nearest(this.joint.contours[stretch.contour].stations.s, inside) };
    }
    return best;
  }

  showFinding(finding: Finding, cause = "finding", spot: Spot | undefined = spotsOf(finding)[0]): void {
    if (!spot) return;
    const joint = this.payload.joints.findIndex((j) => j.id === finding.joint);
    const contour = this.payload.joints[joint].contours.findIndex((c) => c.id === spot.contour);
    this.go({ joint, contour, station: spot.station }, cause);
  }

  /** The next or previous finding along the unrolled seam of this joint. */
  neighbourFinding(direction: 1 | -1): { finding: Finding; spot: Spot } | null {
    const { stretches } = this.stretches();
    const here = this.unrolled;
    const placed = this.payload.findings
      .filter((f) => f.joint === this.joint.id && f.station !== null)
      .flatMap((finding) => spotsOf(finding).map((spot) => {
        const contour = this.joint.contours.findIndex((c) => c.id === spot.contour);
        return { finding, spot, at: stretches[contour].start + this.joint.contours[contour].stations.s[spot.station] };
      }))
      .sort((a, b) => a.at - b.at || a.finding.n - b.finding.n);
    if (!placed.length) return null;
    const ahead = placed.filter((p) => (direction > 0 ? p.at > here + 1e-6 : p.at < here - 1e-6));
    const chosen = direction > 0 ? (ahead[0] ?? placed[0]) : (ahead.at(-1) ?? placed.at(-1)!);
    return chosen;
  }

  /** Findings that hold where the reader stands. */
  findingsHere(place: Place = this.place): Finding[] {
    const joint = this.payload.joints[place.joint];
    return findingsAt(this.payload.findings, joint, joint.contours[place.contour], place.station);
  }
}

const NEAR = 1.0; // mm along the seam to a finding that is a place, not a stretch

/** Findings that hold at a station, gravest first: their stretch covers it, or their place is here. */
export function findingsAt(findings: Finding[], joint: Joint, contour: Contour, station: number): Finding[] {
  const s = contour.stations.s;
  return findings.filter((f) => {
    if (f.joint !== joint.id || f.station === null) return false;
    if (f.places.some((p) => p.contour === contour.id && (covers(p, s[station]) || p.station === station))) return true;
    if (f.contour !== contour.id) return false;
    if (f.from_s !== null && f.to_s !== null) return covers(f, s[station]);
    return f.everywhere || station === f.station || Math.abs(s[station] - s[f.station]) <= NEAR;
  });
}

/** Notes about stretches are drawn as such and get no mark of their own; notes about a place do. */
export const isStretchOfNote = (finding: Finding): boolean => finding.severity === "note" && (finding.from_s !== null || finding.everywhere);

/** All places of a finding, its own first; none where it has no station. */
export const spotsOf = (f: Finding): Spot[] =>
  f.contour === null || f.station === null ? [] : [{ contour: f.contour, station: f.station, from_s: f.from_s, to_s: f.to_s }, ...f.places];

export function covers(finding: Pick<Spot, "from_s" | "to_s">, s: number): boolean {
  const { from_s: from, to_s: to } = finding;
  if (from === null || to === null) return false;
  return from <= to ? s >= from - 1e-6 && s <= to + 1e-6 : s >= from - 1e-6 || s <= to + 1e-6;
}

export function nearest(sorted: number[], value: number): number {
  let low = 0, high = sorted.length - 1;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (sorted[middle] < value) low = middle + 1;
    else high = middle;
  }
  return low > 0 && value - sorted[low - 1] < sorted[low] - value ? low - 1 : low;
}
