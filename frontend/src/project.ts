/** Seen along the beam: the plane normal to the beam, with the light coming from the reader. */

export type Vec = [number, number, number];

export interface Plane { right: Vec; up: Vec; toward: Vec }

const dot = (a: Vec, b: Vec) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const cross = (a: Vec, b: Vec): Vec => [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]];
const unit = (a: Vec): Vec => {
  const length = Math.hypot(...a);
  return [a[0] / length, a[1] / length, a[2] / length];
};

/** X of the model runs to the right where it can; else the next axis that does. */
export function planeOf(beam: Vec): Plane {
  const toward = unit([-beam[0], -beam[1], -beam[2]]);
  const axes: Vec[] = [[1, 0, 0], [0, 1, 0], [0, 0, 1]];
  const axis = axes.find((a) => Math.abs(dot(a, toward)) < 0.8) ?? axes[1];
  const along = dot(axis, toward);
  const right = unit([axis[0] - along * toward[0], axis[1] - along * toward[1], axis[2] - along * toward[2]]);
  return { right, up: cross(toward, right), toward };
}

export const flat = (plane: Plane, p: Vec): [number, number] => [dot(plane.right, p), dot(plane.up, p)];
export const depth = (plane: Plane, p: Vec): number => dot(plane.toward, p);
