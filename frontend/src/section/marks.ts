/** Findings at one station: which of them, what they say in the drawing's head, and where they are pinned. */

import { px, svg } from "../dom";
import type { Contour, Finding, Joint } from "../types";
import { mm, tr } from "../voice";
import { MARK } from "../words";

export const toneOf = (finding: Finding): string => (finding.waived ? "waived" : finding.severity);

/** A finding in one line: number, title, value, limit. */
export function markLine(finding: Finding, value: string): string {
  const limit = finding.limit ? ` (${finding.limit})` : "";
  return `${MARK[finding.severity]} ${finding.n}  ${finding.title}${value && value !== "–" ? `: ${value}` : ""}${limit}`;
}

/** A numbered circle beside a place, tied to it by a short line. */
export function pin(finding: Finding, x: number, y: number, shift: number, bounds: { left: number; right: number; top: number; bottom: number }): SVGElement {
  const right = x + 30 + shift * 22 < bounds.right ? 1 : -1;
  const cx = x + right * (20 + shift * 22), cy = Math.max(bounds.top + 10, Math.min(bounds.bottom - 10, y - 18));
  return svg("g", { class: `pin ${toneOf(finding)}`, "data-finding": finding.n },
    svg("path", { d: `M${px(x)} ${px(y)}L${px(cx)} ${px(cy)}` }),
    svg("circle", { class: "pin-dot", cx: px(x), cy: px(y), r: 2.6 }),
    svg("circle", { class: "pin-head", cx: px(cx), cy: px(cy), r: 9 }),
    svg("text", { x: px(cx), y: px(cy + 4), "text-anchor": "middle" }, String(finding.n)));
}

/** Where a finding lies from a station of the seam, mm: outward, against the light, along the seam; null without a place. */
export function offsetOf(finding: Finding, joint: Joint, contour: Contour, station: number): [number, number, number] | null {
  if (!finding.at) return null;
  const { x, y, z, u } = contour.stations;
  const away = [finding.at[0] - x[station], finding.at[1] - y[station], finding.at[2] - z[station]];
  const dot = (a: number[], b: number[]) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
  const across = u[station], beam = joint.beam;
  const across2 = dot(away, across), height = -dot(away, beam);
  return [across2, height, Math.sqrt(Math.max(dot(away, away) - across2 * across2 - height * height, 0))];
}

/** Place of a finding in the section's plane, mm; null where it lies before or behind it, or has none. */
export function placeIn(finding: Finding, joint: Joint, contour: Contour, station: number): [number, number] | null {
  const offset = offsetOf(finding, joint, contour, station);
  return offset && offset[2] <= 0.6 ? [offset[0], offset[1]] : null;
}

/** Where the own place of a finding about the whole interface lies beside its stretch, mm; null where it has none. */
export function besideRib(finding: Finding, joint: Joint, contour: Contour): [number, number] | null {
  if (!finding.at || finding.station === null || finding.from_s === null || (finding.column && contour.stations[finding.column])) return null;
  const offset = offsetOf(finding, joint, contour, finding.station);
  return offset && offset[2] <= 0.6 && Math.hypot(offset[0], offset[1]) > 0.3 ? [offset[0], offset[1]] : null;
}

/** '3.0 mm inward, 5.0 mm below': where to look for a finding that lies away from the seam; '' where it is at the rib. */
export function whereabouts([across, height, along]: [number, number, number]): string {
  const told: [number, string][] = [
    [across, across > 0 ? tr("outward") : tr("inward")], [height, height > 0 ? tr("above") : tr("below")], [along, tr("along the seam")],
  ];
  return told.filter(([by]) => Math.abs(by) >= 0.5).map(([by, word]) => `${mm(Math.abs(by), 1)} ${word}`).join(", ");
}
