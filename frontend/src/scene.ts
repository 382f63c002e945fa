/** The 3-D view: both parts, the seam, the findings and the section plane where the reader stands. Drawn on demand. */

import {
  AmbientLight, BackSide, BufferAttribute, BufferGeometry, Color, DirectionalLight, DoubleSide, FrontSide, Group, LineBasicMaterial,
  LineLoop, LineSegments, type Material, Mesh as Body, MeshBasicMaterial, MeshLambertMaterial, PerspectiveCamera, Plane, PlaneGeometry, Scene as Stage,
  SphereGeometry, Vector3, WebGLRenderer,
} from "three";
import { OrbitControls } from "three/examples/jsm/controls/OrbitControls.js";

import type { Atlas } from "./atlas";
import { clear, h, motionIsReduced, theme } from "./dom";
import { turnAboutUp, turnByKey } from "./orbit";
import { points } from "./plan";
import { planeOf } from "./project";
import { BROKEN, LOOK, NEAR, WAIVED, type Finding } from "./types";
import type { Mesh } from "./unpack";
import type { Place, Walk } from "./walk";
import { numbersOf } from "./words";
import { tr } from "./voice";

const STATE_COLOUR = ["quiet", "within", "near", "broken", "waived", "near", "within"];

export class Scene {
  private readonly renderer: WebGLRenderer;
  private readonly stage = new Stage();
  private readonly camera = new PerspectiveCamera(32, 1, 0.1, 10000);
  private readonly controls: OrbitControls;
  private readonly parts = new Map<string, Group>();
  private readonly seam = new Group();
  private readonly marker = new Group();
  private readonly labels: { element: HTMLElement; at: Vector3 }[] = [];
  private readonly labelLayer = h("div", { class: "scene-labels" });
  private readonly cutPlane = new Plane(new Vector3(1, 0, 0), 0);
  private readonly centre = new Vector3();
  private radius = 50;
  private cut = false;
  private shownJoint = -1;
  private flight = 0;
  private waiting = false;
  private readonly soft: boolean;

  constructor(private readonly host: HTMLElement, private readonly atlas: Atlas, private readonly walk: Walk) {
    this.renderer = new WebGLRenderer({ antialias: true, alpha: true });
    this.soft = isSoftware(this.renderer);
    this.renderer.setPixelRatio(this.soft ? 1 : Math.min(2, devicePixelRatio));
    this.renderer.localClippingEnabled = true;
    host.append(this.renderer.domElement, this.labelLayer);
    this.renderer.domElement.setAttribute("aria-hidden", "true"); // the pane around it has the name and the keys
    this.controls = new OrbitControls(this.camera, this.renderer.domElement);
    this.controls.enableDamping = false;
    this.controls.addEventListener("change", () => this.ask());
    this.controls.addEventListener("start", () => { this.flight++; });
    host.addEventListener("keydown", (event) => {
      if (event.target !== host) return;
      if (event.key === "Home") this.alongLight();
      else if (turnByKey(event, this.camera, this.controls)) this.flight++;
      else return;
      event.preventDefault();
      this.ask();
    });
    const lamp = new DirectionalLight(0xffffff, 1.9);
    lamp.position.set(-0.4, 0.7, 1);
    this.camera.add(lamp);
    this.stage.add(this.camera, new AmbientLight(0xffffff, 1.35), this.seam, this.marker);
    for (const mesh of atlas.meshes) this.addPart(mesh);
    this.measure();
    this.buildSeam();
    this.alongLight(false);
    new ResizeObserver(() => this.fit()).observe(host);
    this.fit();
    this.show(walk.place);
  }

  private addPart(mesh: Mesh): void {
    const role = this.roleOf(mesh.part);
    const group = new Group();
    const geometry = shadedGeometry(mesh);
    const isCover = role === "cover";
    const colour = new Color(theme(isCover ? "cover-solid" : role === "base" ? "base-solid" : "other-solid"));
    const front = new MeshLambertMaterial({
      color: colour, side: isCover ? DoubleSide : FrontSide, transparent: isCover, opacity: isCover ? 0.3 : 1, depthWrite: !isCover,
      polygonOffset: true, polygonOffsetFactor: 1, polygonOffsetUnits: 1,
    });
    // Seen through a cut, the inside of a body is its cut face: one flat tone.
    const inside = hatched(new Color(theme(isCover ? "cover-cut" : "base-cut")), new Color(theme("ink")), isCover ? -1 : 1);
    const inner = new Body(geometry, inside);
    inner.visible = false;
    inner.name = "inside";
    const outer = new Body(geometry, front);
    outer.renderOrder = isCover ? 2 : 0;
    const lines = new LineSegments(edgeGeometry(mesh), new LineBasicMaterial({ color: new Color(theme("ink")), transparent: true, opacity: isCover ? 0.5 : 0.4 }));
    lines.renderOrder = isCover ? 3 : 1;
    group.add(outer, inner, lines);
    group.userData = { role };
    this.parts.set(mesh.part, group);
    this.stage.add(group);
  }

  private roleOf(part: string): string {
    const joint = this.walk.joint;
    return joint.cover.includes(part) ? "cover" : joint.base.includes(part) ? "base" : "other";
  }

  private measure(): void {
    const low = new Vector3(Infinity, Infinity, Infinity), high = new Vector3(-Infinity, -Infinity, -Infinity);
    for (const mesh of this.atlas.meshes) {
      for (let i = 0; i < mesh.positions.length; i += 3) {
        const p = new Vector3(mesh.positions[i], mesh.positions[i + 1], mesh.positions[i + 2]);
        low.min(p);
        high.max(p);
      }
    }
    for (const contour of this.walk.joint.contours) for (const p of points(contour)) { low.min(new Vector3(...p)); high.max(new Vector3(...p)); }
    this.centre.addVectors(low, high).multiplyScalar(0.5);
    this.radius = Math.max(1, low.distanceTo(high) / 2);
    this.camera.near = this.radius / 500;
    this.camera.far = this.radius * 40;
    this.controls.minDistance = this.radius / 60;
    this.controls.maxDistance = this.radius * 12;
  }

  private buildSeam(): void {
    this.shownJoint = this.walk.place.joint;
    this.seam.clear();
    this.labels.length = 0;
    clear(this.labelLayer);
    const { joint, facts } = this.walk;
    const toward = new Vector3(...planeOf(joint.beam).toward);
    for (const contour of joint.contours) {
      const at = points(contour);
      const width = (contour.summary.rib_width?.median ?? 1.5) * 0.36;
      const states = new Uint8Array(at.length);
      for (const [from, to, state] of facts.worst[contour.id] ?? []) states.fill(state, from, to + 1);
      this.seam.add(tube(at.map((p) => new Vector3(...p)), contour.stations.u.map((u) => new Vector3(...u)), toward, width, states, contour.closed));
    }
    const taken: { at: Vector3; numbers: HTMLElement; findings: Finding[] }[] = [];
    for (const finding of this.atlas.payload.findings) {
      if (finding.joint !== joint.id || finding.station === null || finding.severity === "note") continue;
      const contour = joint.contours.find((c) => c.id === finding.contour);
      if (!contour) continue;
      const p = new Vector3(...points(contour)[finding.station]);
      const u = new Vector3(...contour.stations.u[finding.station]);
      const known = taken.find((t) => t.at.distanceTo(p) < this.radius / 60);
      if (known) {
        known.findings.push(finding);
        known.numbers.textContent = numbersOf(known.findings);
        known.numbers.setAttribute("aria-label", `${known.numbers.textContent}: ${tr("go to these findings")}`);
        continue;
      }
      const colour = new Color(theme(finding.waived ? "waived" : finding.severity === "must-fix" ? "broken" : "near"));
      const bar = new BufferGeometry().setFromPoints([p.clone().addScaledVector(u, -this.radius / 22), p.clone().addScaledVector(u, this.radius / 22)]);
      const mark = new LineSegments(bar, new LineBasicMaterial({ color: colour, depthTest: false }));
      mark.renderOrder = 6;
      this.seam.add(mark);
      const button = h("button", { type: "button", class: `scene-label ${finding.waived ? "waived" : finding.severity}`, "data-finding": finding.n, "aria-label": `${finding.n}: ${tr("go to {title}", { title: finding.title })}` }, String(finding.n));
      button.addEventListener("click", () => this.walk.showFinding(finding));
      this.labelLayer.append(button);
      const foot = p.clone().addScaledVector(u, this.radius / 16);
      this.labels.push({ element: button, at: foot });
      taken.push({ at: p, numbers: button, findings: [finding] });
    }
  }

  show(place: Place, fly = false): void {
    if (place.joint !== this.shownJoint) { this.buildSeam(); }
    const { contour, joint } = this.walk;
    const p = new Vector3(...points(contour)[place.station]);
    const u = new Vector3(...contour.stations.u[place.station]);
    const toward = new Vector3(...planeOf(joint.beam).toward);
    const along = new Vector3().crossVectors(toward, u).normalize();
    this.buildMarker(p, u, toward, along);
    this.cutPlane.setFromNormalAndCoplanarPoint(along.clone().negate(), p);
    if (fly) {
      const eye = p.clone().addScaledVector(u, this.radius * 0.22).addScaledVector(toward, this.radius * 0.2).addScaledVector(along, this.radius * 0.34);
      this.fly(eye, p, toward);
    }
    this.ask();
  }

  private buildMarker(p: Vector3, u: Vector3, v: Vector3, along: Vector3): void {
    for (const child of [...this.marker.children]) dispose(child);
    this.marker.clear();
    const size = Math.max(4, (this.walk.contour.summary.rib_width?.median ?? 1.5) * 3.2);
    const corner = (a: number, b: number) => p.clone().addScaledVector(u, a * size).addScaledVector(v, b * size);
    const ink = new Color(theme("walker"));
    const frame = new LineLoop(new BufferGeometry().setFromPoints([corner(-1, -1), corner(1, -1), corner(1, 1), corner(-1, 1)]), new LineBasicMaterial({ color: ink, depthTest: false }));
    frame.renderOrder = 8;
    const pane = new Body(new PlaneGeometry(2 * size, 2 * size), new MeshBasicMaterial({ color: ink, transparent: true, opacity: this.cut ? 0 : 0.12, side: DoubleSide, depthWrite: false }));
    pane.position.copy(p);
    pane.up.copy(v);
    pane.lookAt(p.clone().add(along));
    pane.renderOrder = 7;
    const spot = new Body(new SphereGeometry(size * 0.08, 16, 12), new MeshBasicMaterial({ color: ink, depthTest: false }));
    spot.position.copy(p);
    spot.renderOrder = 9;
    this.marker.add(frame, pane, spot);
    this.host.dataset.marker = [p.x, p.y, p.z].map((c) => c.toFixed(3)).join(" ");
  }

  /** Moves the eye in half a second, or at once where the reader asks for less motion. */
  private fly(eye: Vector3, target: Vector3, up: Vector3): void {
    const flight = ++this.flight;
    const from = this.camera.position.clone(), aim = this.controls.target.clone(), tilt = this.camera.up.clone();
    const duration = motionIsReduced() || this.soft ? 0 : 550;
    const start = performance.now();
    const tick = (now: number) => {
      if (flight !== this.flight) return;
      const share = duration ? Math.min(1, (now - start) / duration) : 1;
      const eased = share * share * (3 - 2 * share);
      this.camera.position.lerpVectors(from, eye, eased);
      this.controls.target.lerpVectors(aim, target, eased);
      this.camera.up.lerpVectors(tilt, up, eased).normalize();
      turnAboutUp(this.camera, this.controls);
      this.controls.update();
      this.ask();
      if (share < 1) requestAnimationFrame(tick);
    };
    tick(start);
  }

  private distance(): number {
    const half = Math.tan((this.camera.fov * Math.PI) / 360);
    return (this.radius * 1.02) / Math.min(half, half * Math.max(0.3, this.camera.aspect));
  }

  alongLight(fly = true): void {
    const plane = planeOf(this.walk.joint.beam);
    const eye = this.centre.clone().addScaledVector(new Vector3(...plane.toward), this.distance());
    this.go(eye, new Vector3(...plane.up), fly);
  }

  aslant(fly = true): void {
    const plane = planeOf(this.walk.joint.beam);
    const way = new Vector3(...plane.toward).multiplyScalar(0.75).addScaledVector(new Vector3(...plane.right), 0.45).addScaledVector(new Vector3(...plane.up), -0.75).normalize();
    this.go(this.centre.clone().addScaledVector(way, this.distance()), new Vector3(...plane.toward), fly);
  }

  private go(eye: Vector3, up: Vector3, fly: boolean): void {
    if (fly) { this.fly(eye, this.centre.clone(), up); return; }
    this.camera.up.copy(up);
    this.camera.position.copy(eye);
    this.controls.target.copy(this.centre);
    turnAboutUp(this.camera, this.controls);
    this.controls.update();
    this.ask();
  }

  flyToMarker(): void { this.show(this.walk.place, true); }

  setCut(cut: boolean): void {
    this.cut = cut;
    const planes = cut ? [this.cutPlane] : [];
    for (const group of this.parts.values()) {
      group.traverse((child) => {
        const material = (child as Body).material as Material | undefined;
        if (!material) return;
        material.clippingPlanes = planes;
        if (child.name === "inside") child.visible = cut;
        else if (child instanceof Body && group.userData.role === "cover") {
          const lambert = material as MeshLambertMaterial;
          lambert.opacity = cut ? 1 : 0.3;
          lambert.transparent = !cut;
          lambert.depthWrite = cut;
          lambert.side = cut ? FrontSide : DoubleSide;
        }
        material.needsUpdate = true;
      });
    }
    this.seam.traverse((child) => {
      const material = (child as Body).material as Material | undefined;
      if (material && child instanceof Body) material.clippingPlanes = planes;
    });
    this.show(this.walk.place);
  }

  setVisible(part: string, visible: boolean): void {
    const group = this.parts.get(part);
    if (group) group.visible = visible;
    this.ask();
  }

  get partIds(): string[] { return [...this.parts.keys()]; }

  /** Colours anew after the theme changed. */
  retheme(): void {
    for (const [id, group] of this.parts) {
      this.stage.remove(group);
      group.traverse(dispose);
      this.parts.delete(id);
    }
    for (const mesh of this.atlas.meshes) this.addPart(mesh);
    this.buildSeam();
    this.setCut(this.cut);
  }

  private fit(): void {
    const box = this.host.getBoundingClientRect();
    if (box.width < 10 || box.height < 10) return;
    this.renderer.setSize(box.width, box.height);
    this.camera.aspect = box.width / box.height;
    this.camera.updateProjectionMatrix();
    this.ask();
  }

  /** Draws before the next picture of the screen, once, however often it is asked for. */
  ask(): void {
    if (this.waiting) return;
    this.waiting = true;
    requestAnimationFrame(() => {
      this.waiting = false;
      this.renderer.render(this.stage, this.camera);
      const box = this.host.getBoundingClientRect();
      for (const { element, at } of this.labels) {
        const p = at.clone().project(this.camera);
        const shown = p.z < 1 && Math.abs(p.x) < 1 && Math.abs(p.y) < 1;
        element.hidden = !shown;
        if (shown) element.style.transform = `translate(${((p.x + 1) / 2) * box.width}px, ${((1 - p.y) / 2) * box.height}px) translate(-50%, -50%)`;
      }
      this.host.dataset.eye = this.camera.position.toArray().map((c) => c.toFixed(3)).join(" ");
      this.host.dataset.target = this.controls.target.toArray().map((c) => c.toFixed(3)).join(" ");
      this.host.dataset.drawn = String(Number(this.host.dataset.drawn ?? 0) + 1);
    });
  }
}

/** A flat tone with the strokes of a cut face, as in the section: they keep their distance on the screen. */
function hatched(tone: Color, ink: Color, way: 1 | -1): MeshBasicMaterial {
  const made = new MeshBasicMaterial({ color: tone, side: BackSide });
  made.onBeforeCompile = (shader) => {
    shader.uniforms.strokes = { value: ink };
    shader.fragmentShader = `uniform vec3 strokes;\n${shader.fragmentShader}`.replace(
      "#include <opaque_fragment>",
      `#include <opaque_fragment>\nif (mod(gl_FragCoord.x + ${way.toFixed(1)} * gl_FragCoord.y, 9.0) < 1.4) gl_FragColor.rgb = mix(gl_FragColor.rgb, strokes, 0.62);`,
    );
  };
  made.customProgramCacheKey = () => `hatched${way}`;
  return made;
}

function isSoftware(renderer: WebGLRenderer): boolean {
  const gl = renderer.getContext();
  const info = gl.getExtension("WEBGL_debug_renderer_info");
  const name = info ? String(gl.getParameter(info.UNMASKED_RENDERER_WEBGL)) : "";
  return /swiftshader|llvmpipe|software/i.test(name);
}

function dispose(child: unknown): void {
  const body = child as Partial<Body>;
  body.geometry?.dispose();
  if (body.material) (body.material as Material).dispose();
}

/** Vertex -> number of its place; vertices closer than about 1e-4 mm have the same number. */
function weld(p: Float32Array): Uint32Array {
  const count = p.length / 3;
  let size = 1024;
  while (size < count * 2) size *= 2;
  const slots = new Int32Array(size).fill(-1);
  const place = new Uint32Array(count);
  const cell = (i: number) => Math.round(p[i] * 1e4);
  for (let i = 0; i < count; i++) {
    const [x, y, z] = [cell(3 * i), cell(3 * i + 1), cell(3 * i + 2)];
    let slot = (Math.imul(x, 73856093) ^ Math.imul(y, 19349663) ^ Math.imul(z, 83492791)) & (size - 1);
    for (; ; slot = (slot + 1) & (size - 1)) {
      const other = slots[slot];
      if (other < 0) { slots[slot] = i; place[i] = i; break; }
      if (cell(3 * other) === x && cell(3 * other + 1) === y && cell(3 * other + 2) === z) { place[i] = other; break; }
    }
  }
  return place;
}

/** Vertices are shared within a face of the part and apart between faces: smooth faces, sharp edges. */
function shadedGeometry(mesh: Mesh): BufferGeometry {
  const { positions, triangles, face } = mesh;
  const place = weld(positions), count = positions.length / 3;
  const index = new Map<number, number>();
  const corner = new Uint32Array(triangles.length);
  const xyz: number[] = [];
  for (let k = 0; k < triangles.length; k++) {
    const v = place[triangles[k]];
    const key = (face[Math.floor(k / 3)] + 1) * count + v;
    let known = index.get(key);
    if (known === undefined) {
      known = xyz.length / 3;
      index.set(key, known);
      xyz.push(positions[3 * v], positions[3 * v + 1], positions[3 * v + 2]);
    }
    corner[k] = known;
  }
  const geometry = new BufferGeometry();
  geometry.setAttribute("position", new BufferAttribute(new Float32Array(xyz), 3));
  geometry.setIndex(new BufferAttribute(corner, 1));
  geometry.computeVertexNormals();
  return geometry;
}

/** Edges between two faces of the part, and free edges. */
function edgeGeometry(mesh: Mesh): BufferGeometry {
  const { positions: p, triangles: t, face } = mesh;
  const place = weld(p), count = p.length / 3;
  const first = new Map<number, number>(); // edge -> face met first, -2 once a second triangle of that face was met
  for (let k = 0; k < t.length; k++) {
    const [a, b] = [place[t[k]], place[t[k % 3 === 2 ? k - 2 : k + 1]]];
    const key = a < b ? a * count + b : b * count + a;
    const owner = face[Math.floor(k / 3)];
    const known = first.get(key);
    if (known === undefined) first.set(key, owner);
    else if (known === owner) first.set(key, -2);
  }
  const xyz: number[] = [];
  for (const [key, owner] of first) {
    if (owner === -2) continue;
    const a = Math.floor(key / count), b = key % count;
    xyz.push(p[3 * a], p[3 * a + 1], p[3 * a + 2], p[3 * b], p[3 * b + 1], p[3 * b + 2]);
  }
  const geometry = new BufferGeometry();
  geometry.setAttribute("position", new BufferAttribute(new Float32Array(xyz), 3));
  return geometry;
}

/** A band round the mid-line, coloured by the worst state of every station; broken stretches are thicker. */
function tube(at: Vector3[], u: Vector3[], v: Vector3, radius: number, states: Uint8Array, closed: boolean): Body {
  const ring = 8, xyz: number[] = [], colours: number[] = [], index: number[] = [];
  const palette = STATE_COLOUR.map((name) => new Color(theme(name)));
  at.forEach((p, i) => {
    const thick = states[i] === BROKEN || states[i] === WAIVED ? 1.5 : states[i] === LOOK ? 1.3 : states[i] === NEAR ? 1.1 : 0.85;
    const colour = palette[states[i]];
    for (let k = 0; k < ring; k++) {
      const angle = (k / ring) * 2 * Math.PI;
      const q = p.clone().addScaledVector(u[i], Math.cos(angle) * radius * thick).addScaledVector(v, Math.sin(angle) * radius * thick);
      xyz.push(q.x, q.y, q.z);
      colours.push(colour.r, colour.g, colour.b);
    }
  });
  const last = closed ? at.length : at.length - 1;
  for (let i = 0; i < last; i++) {
    const j = (i + 1) % at.length;
    for (let k = 0; k < ring; k++) {
      const l = (k + 1) % ring;
      index.push(i * ring + k, j * ring + k, j * ring + l, i * ring + k, j * ring + l, i * ring + l);
    }
  }
  const geometry = new BufferGeometry();
  geometry.setAttribute("position", new BufferAttribute(new Float32Array(xyz), 3));
  geometry.setAttribute("color", new BufferAttribute(new Float32Array(colours), 3));
  geometry.setIndex(index);
  const body = new Body(geometry, new MeshBasicMaterial({ vertexColors: true, side: DoubleSide }));
  body.renderOrder = 4;
  return body;
}
