/** A shaded relief of the parts seen along the beam, painted without a graphics card: depth per pixel, then shade. */

import type { Plane } from "./project";
import type { Mesh } from "./unpack";

export interface Raster { width: number; height: number; depth: Float32Array; face: Int32Array; normal: Float32Array }

/** Paints triangles; of two on one pixel the one nearer to the light stays. `toPixel` is (x, y) -> pixel. */
export function raster(
  meshes: Mesh[], plane: Plane, width: number, height: number, scale: number, originX: number, originY: number,
): Raster {
  const depth = new Float32Array(width * height).fill(-Infinity);
  const face = new Int32Array(width * height).fill(-1);
  const normal = new Float32Array(width * height * 3);
  const { right, up, toward } = plane;
  let partOffset = 0;
  for (const mesh of meshes) {
    const { positions: p, triangles: t } = mesh;
    const count = p.length / 3;
    const px = new Float32Array(count), py = new Float32Array(count), pz = new Float32Array(count);
    for (let i = 0; i < count; i++) {
      const [x, y, z] = [p[3 * i], p[3 * i + 1], p[3 * i + 2]];
      px[i] = (right[0] * x + right[1] * y + right[2] * z - originX) * scale;
      py[i] = (originY - (up[0] * x + up[1] * y + up[2] * z)) * scale;
      pz[i] = toward[0] * x + toward[1] * y + toward[2] * z;
    }
    for (let k = 0; k < t.length; k += 3) {
      const [a, b, c] = [t[k], t[k + 1], t[k + 2]];
      const area = (px[b] - px[a]) * (py[c] - py[a]) - (py[b] - py[a]) * (px[c] - px[a]);
      if (Math.abs(area) < 1e-9) continue;
      const nx = -((pz[b] - pz[a]) * (py[c] - py[a]) - (pz[c] - pz[a]) * (py[b] - py[a])) / area;
      const ny = -((pz[c] - pz[a]) * (px[b] - px[a]) - (pz[b] - pz[a]) * (px[c] - px[a])) / area;
      const x0 = Math.max(0, Math.ceil(Math.min(px[a], px[b], px[c]) - 0.5));
      const x1 = Math.min(width - 1, Math.floor(Math.max(px[a], px[b], px[c]) - 0.5));
      const y0 = Math.max(0, Math.ceil(Math.min(py[a], py[b], py[c]) - 0.5));
      const y1 = Math.min(height - 1, Math.floor(Math.max(py[a], py[b], py[c]) - 0.5));
      const size = Math.hypot(nx / scale, ny / scale, 1 / scale / scale) || 1;
      const unit = [nx * scale, -ny * scale, 1];
      const length = Math.hypot(unit[0], unit[1], unit[2]) || size;
      const id = partOffset + (mesh.face.length ? mesh.face[k / 3] : 0);
      for (let y = y0; y <= y1; y++) {
        for (let x = x0; x <= x1; x++) {
          const w1 = ((x + 0.5 - px[a]) * (py[c] - py[a]) - (y + 0.5 - py[a]) * (px[c] - px[a])) / area;
          const w2 = ((y + 0.5 - py[a]) * (px[b] - px[a]) - (x + 0.5 - px[a]) * (py[b] - py[a])) / area;
          if (w1 < -1e-6 || w2 < -1e-6 || w1 + w2 > 1 + 1e-6) continue;
          const z = pz[a] + w1 * (pz[b] - pz[a]) + w2 * (pz[c] - pz[a]);
          const at = y * width + x;
          if (z <= depth[at]) continue;
          depth[at] = z;
          face[at] = id;
          normal[3 * at] = unit[0] / length;
          normal[3 * at + 1] = unit[1] / length;
          normal[3 * at + 2] = unit[2] / length;
        }
      }
    }
    partOffset += 1_000_000;
  }
  return { width, height, depth, face, normal };
}

type Colour = [number, number, number];

/** Lays a relief over the picture: surface tone by slope, then the edges where one face ends before another. */
export function paint(picture: ImageData, relief: Raster, tone: Colour, ink: Colour, cover: number, edge: number): void {
  const { width, height, depth, face, normal } = relief;
  const data = picture.data;
  const blend = (at: number, colour: Colour, alpha: number) => {
    for (let k = 0; k < 3; k++) data[4 * at + k] += (colour[k] - data[4 * at + k]) * alpha;
  };
  let [low, high] = [Infinity, -Infinity];
  for (const z of depth) if (z > -Infinity) { if (z < low) low = z; if (z > high) high = z; }
  const span = Math.max(1e-6, high - low);
  for (let at = 0; at < width * height; at++) {
    if (face[at] < 0) continue;
    // Light from the upper left, as drawings have it, and the deeper the dimmer.
    const slope = -0.5 * normal[3 * at] + 0.5 * normal[3 * at + 1];
    const shade = 0.12 * (1 - (depth[at] - low) / span) + Math.max(0, -slope) * 0.3 + (1 - normal[3 * at + 2]) * 0.1;
    blend(at, tone, cover);
    blend(at, ink, Math.min(0.5, shade) * cover);
  }
  for (let y = 0; y < height - 1; y++) {
    for (let x = 0; x < width - 1; x++) {
      const at = y * width + x;
      let strength = 0;
      for (const other of [at + 1, at + width]) {
        if (face[at] === face[other]) continue;
        if (face[at] < 0 || face[other] < 0) { strength = 1; continue; }
        const turn = normal[3 * at] * normal[3 * other] + normal[3 * at + 1] * normal[3 * other + 1] + normal[3 * at + 2] * normal[3 * other + 2];
        if (turn < 0.97) strength = Math.max(strength, 0.6);
        if (Math.abs(depth[at] - depth[other]) > 0.15) strength = Math.max(strength, 0.85);
      }
      if (strength) blend(at, ink, strength * edge);
    }
  }
}
