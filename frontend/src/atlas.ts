/** The page's data at hand: payload, words, sections and meshes (unpacked when first asked for). */

import type { Payload } from "./types";
import { Sections, unpackMesh, type Mesh } from "./unpack";
import { Words } from "./words";

export class Atlas {
  readonly words: Words;
  private readonly sections = new Map<string, Sections | null>();
  private unpacked: Mesh[] | null = null;

  constructor(readonly payload: Payload) {
    this.words = new Words(payload);
  }

  sectionsOf(joint: string, contour: string): Sections | null {
    const key = `${joint}/${contour}`;
    if (!this.sections.has(key)) {
      const packed = this.payload.view?.sections.find((s) => s.joint === joint && s.contour === contour);
      this.sections.set(key, packed ? new Sections(packed) : null);
    }
    return this.sections.get(key)!;
  }

  get meshes(): Mesh[] {
    this.unpacked ??= (this.payload.view?.meshes ?? []).map(unpackMesh);
    return this.unpacked;
  }
}
