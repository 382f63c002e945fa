/** Of a proposed joint: switches the section between the parts as they were drawn and as they are proposed. */

import type { Atlas } from "./atlas";
import { byId, h } from "./dom";
import type { Contour, Finding, JointFacts, PackedSections, Payload, Stations } from "./types";
import { Sections } from "./unpack";
import { tr } from "./voice";

/** What a section is drawn from. */
export interface Shown { facts: JointFacts; contour: Contour; sections: Sections | null; findings: Finding[] }

export class Proposed {
  isDrawn = false;
  private readonly packed: PackedSections[];
  private readonly sections = new Map<string, Sections | null>();
  private readonly bare = new Map<Contour, Contour>();

  constructor(payload: Payload) {
    this.packed = payload.as_drawn?.sections ?? [];
  }

  /** What the section shows: in the state as drawn outlines only, since nothing was measured there. */
  shown(joint: string, shown: Shown): Shown {
    if (!this.isDrawn) return shown;
    const key = `${joint}/${shown.contour.id}`;
    if (!this.sections.has(key)) {
      const packed = this.packed.find((s) => s.joint === joint && s.contour === shown.contour.id);
      this.sections.set(key, packed ? new Sections(packed) : null);
    }
    if (!this.bare.has(shown.contour)) this.bare.set(shown.contour, unmeasured(shown.contour));
    return { facts: { ...shown.facts, drop: null }, contour: this.bare.get(shown.contour)!, sections: this.sections.get(key)!, findings: [] };
  }

  /** Puts the switch over the section where the page holds the model as drawn. */
  wire(redraw: () => void): void {
    const host = byId("proposed-switch");
    if (!host || !this.packed.length) return;
    host.hidden = false;
    const choices = [[tr("as proposed"), false], [tr("as drawn"), true]] as const;
    const buttons = choices.map(([text, isDrawn]) => {
      const button = h("button", { type: "button", "aria-pressed": String(!isDrawn) }, text);
      button.addEventListener("click", () => {
        this.isDrawn = isDrawn;
        buttons.forEach((other, i) => other.setAttribute("aria-pressed", String(choices[i][1] === isDrawn)));
        redraw();
      });
      return button;
    });
    host.append(...buttons);
  }
}

/** A path with its places and nothing measured at them. */
function unmeasured(contour: Contour): Contour {
  const { s, x, y, z, u } = contour.stations;
  const none = s.map(() => null);
  const columns = Object.keys(contour.stations).filter((key) => !["s", "x", "y", "z", "u"].includes(key));
  const stations: Stations = { s, x, y, z, u };
  for (const column of columns) stations[column] = none;
  return { ...contour, stations };
}

export const proposedOf = (atlas: Atlas): Proposed => {
  if (!known.has(atlas)) known.set(atlas, new Proposed(atlas.payload));
  return known.get(atlas)!;
};
const known = new WeakMap<Atlas, Proposed>();
