/** A section drawing that follows the walk and fits its place on the page. */

import { clear, h } from "../dom";
import type { Atlas } from "../atlas";
import type { Contour, Finding, Joint } from "../types";
import type { Outline } from "../unpack";
import { findingsAt, type Place } from "../walk";
import { proposedOf } from "../proposed";
import { drawSection } from "./draw";
import { frameOf, type Frame } from "./layout";
import { besideRib } from "./marks";
import { chain, material } from "./outline";
import { bareMm, mm, mmUnit, tr } from "../voice";

let figures = 0;
const frames = new WeakMap<Contour, Frame>();

export class SectionFigure {
  private readonly key = `sec${figures++}`;
  private place: Place | null = null;
  private size = { width: 0, height: 0 };

  constructor(private readonly host: HTMLElement, private readonly atlas: Atlas, private readonly compact = false) {
    new ResizeObserver(() => {
      const box = host.getBoundingClientRect();
      if (Math.abs(box.width - this.size.width) < 1 && Math.abs(box.height - this.size.height) < 1) return;
      this.size = { width: box.width, height: box.height };
      if (this.place) this.show(this.place);
    }).observe(host);
  }

  show(place: Place): void {
    this.place = place;
    if (!this.size.width) {
      const box = this.host.getBoundingClientRect();
      this.size = { width: box.width, height: box.height };
    }
    const width = Math.max(320, this.size.width), height = Math.max(280, this.size.height);
    const drawing = sectionSvg(this.atlas, place, width, height, this.key, this.compact);
    clear(this.host);
    this.host.append(drawing);
  }
}

export function sectionSvg(atlas: Atlas, place: Place, width: number, height: number, key: string, compact: boolean): SVGSVGElement {
  const joint = atlas.payload.joints[place.joint];
  const contour = joint.contours[place.contour];
  const own = atlas.sectionsOf(joint.id, contour.id);
  if (!frames.has(contour)) frames.set(contour, frameOf(joint, contour, atlas.payload.facts[place.joint].margin, own));
  const shown = proposedOf(atlas).shown(joint.id, { facts: atlas.payload.facts[place.joint], contour, sections: own, findings: atlas.payload.findings });
  return drawSection({
    joint, station: place.station, ...shown, words: atlas.words, width, height, compact, key,
    frame: withPlaces(frames.get(contour)!, findingsAt(shown.findings, joint, contour, place.station), joint, contour, shown.sections?.at(place.station) ?? null),
  });
}

const DEEPEST = 16, UNDER = 0.8; // mm below the rib to which a section reaches for a finding, and how far beyond it

/** The window, so deep that it shows what the findings of a station are about: down to where an opening ends. */
function withPlaces(frame: Frame, here: Finding[], joint: Joint, contour: Contour, outline: Outline | null): Frame {
  let bottom = frame.bottom;
  for (const finding of here) {
    const at = besideRib(finding, joint, contour);
    if (!at || at[0] < frame.left || at[0] > frame.right || at[1] > 0 || at[1] < -DEEPEST) continue;
    const ends = outline ? [...chain(outline).values()].flatMap((loops) => material(loops, at[0])).map(([, high]) => high).filter((high) => high < at[1]) : [];
    bottom = Math.min(bottom, Math.max(ends.length ? Math.max(...ends) : at[1], at[1] - DEEPEST) - UNDER);
  }
  return { ...frame, bottom };
}

export function caption(atlas: Atlas, place: Place): HTMLElement {
  const joint = atlas.payload.joints[place.joint];
  const contour = joint.contours[place.contour];
  const { s, x, y, z } = contour.stations;
  const i = place.station;
  return h("span", null,
    h("b", { "data-s": s[i] }, `s = ${mm(s[i], 2)}`),
    ` · ${tr("station {number} of {count}", { number: i + 1, count: s.length })}`, joint.contours.length > 1 ? ` · ${tr("path")} ${contour.id}` : "",
    ` · x ${bareMm(x[i], 2)}  y ${bareMm(y[i], 2)}  z ${bareMm(z[i], 2)} ${mmUnit()}`);
}
