/** Turning, moving and zooming the 3-D view by keys. */

import { Quaternion, Vector3, type PerspectiveCamera } from "three";
import type { OrbitControls } from "three/examples/jsm/controls/OrbitControls.js";

const TURN = Math.PI / 36, MOVE = 0.06, ZOOM = 1.15;
const POLE = 0.02; // radians kept between the line of sight and the axis that the view turns about

/** Arrows turn, with Shift they move, plus and minus zoom. Whether the key was one of these. */
export function turnByKey(event: KeyboardEvent, camera: PerspectiveCamera, controls: OrbitControls): boolean {
  if (event.altKey || event.ctrlKey || event.metaKey) return false;
  const { target } = controls;
  const offset = camera.position.clone().sub(target);
  const along = ({ ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, 1], ArrowDown: [0, -1] } as Record<string, [number, number]>)[event.key];
  if (along) {
    const [x, y] = along;
    const right = new Vector3().setFromMatrixColumn(camera.matrix, 0);
    if (event.shiftKey) {
      const up = new Vector3().setFromMatrixColumn(camera.matrix, 1);
      const step = right.multiplyScalar(x).addScaledVector(up, y).multiplyScalar(MOVE * offset.length());
      target.add(step);
    } else {
      offset.applyAxisAngle(camera.up, x * TURN);
      const tilt = Math.min(Math.PI - POLE, Math.max(POLE, offset.angleTo(camera.up) - y * TURN));
      offset.applyAxisAngle(right.applyAxisAngle(camera.up, x * TURN), tilt - offset.angleTo(camera.up));
    }
  } else if (event.key === "+" || event.key === "=" || event.key === "-") {
    const length = offset.length() * (event.key === "-" ? ZOOM : 1 / ZOOM);
    offset.setLength(Math.min(controls.maxDistance, Math.max(controls.minDistance, length)));
  } else return false;
  camera.position.copy(target).add(offset);
  controls.update();
  return true;
}

/** Lets the mouse turn the view about the camera's present "up": the controls only look at it when they are made. */
export function turnAboutUp(camera: PerspectiveCamera, controls: OrbitControls): void {
  const inner = controls as unknown as { _quat?: Quaternion; _quatInverse?: Quaternion };
  inner._quat?.setFromUnitVectors(camera.up, new Vector3(0, 1, 0));
  if (inner._quat) inner._quatInverse?.copy(inner._quat).invert();
}
