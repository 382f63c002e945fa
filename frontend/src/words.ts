/** Values as people read them; the same rules as in seamcheck/report/facts.py. */

import type { Payload } from "./types";
import { inVoice, num, tr } from "./voice";

export class Words {
  constructor(private readonly payload: Payload) {}

  unit(column: string): string {
    const unit = this.payload.quantities[column]?.unit ?? "";
    return unit === "1" ? "" : inVoice(0, unit, 0)[1];
  }

  title(column: string): string {
    return this.payload.quantities[column]?.title ?? column;
  }

  /** A number with the quantity's decimals, without unit. */
  bare(value: number, column: string): string {
    const quantity = this.payload.quantities[column];
    const [told, , decimals] = inVoice(value, quantity?.unit ?? "", quantity?.decimals ?? 3);
    return num(told, decimals);
  }

  value(value: number | null | undefined, column: string): string {
    if (value === null || value === undefined || !Number.isFinite(value)) return tr("not measured");
    if (column.startsWith("trap_open")) return value ? tr("open") : tr("closed");
    const unit = this.unit(column);
    return unit ? `${this.bare(value, column)} ${unit}` : this.bare(value, column);
  }

  /** Why a column was not measured at s, as a sentence; '' where the document says nothing. */
  reason(jointId: string, contourId: string, column: string, s: number): string {
    const contour = this.payload.joints.find((j) => j.id === jointId)?.contours.find((c) => c.id === contourId);
    for (const stretch of contour?.unmeasured ?? []) {
      if (stretch.column !== column) continue;
      const { from_s: from, to_s: to } = stretch;
      const inside = from <= to ? s >= from - 1e-6 && s <= to + 1e-6 : s >= from - 1e-6 || s <= to + 1e-6;
      if (inside) return this.payload.reasons[stretch.why] ?? stretch.why;
    }
    return "";
  }

  part(id: string): string {
    return this.payload.parts.find((p) => p.id === id)?.name || id;
  }
}

export const MARK = { "must-fix": "◆", attention: "▲", note: "○" } as const;

/** '4', or '4+2' where two more stand at one place: as short as it gets. */
export const shortNumbersOf = (findings: { n: number }[]): string => (findings.length > 1 ? `${findings[0].n}+${findings.length - 1}` : String(findings[0].n));

/** '1·3·6', or '1·3·6 +4' where more findings stand at one place. */
export function numbersOf(findings: { n: number }[]): string {
  const numbers = findings.map((f) => f.n);
  return numbers.slice(0, 3).join("·") + (numbers.length > 3 ? ` +${numbers.length - 3}` : "");
}
