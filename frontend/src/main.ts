/** Puts the page together: reads the data, draws the figures, keeps them in step. */

import { wireAnswers } from "./answers";
import { Atlas } from "./atlas";
import { Charts } from "./charts";
import { append, byId, clear, h, whenNear } from "./dom";
import { Plan } from "./plan";
import { proposedOf } from "./proposed";
import { Scene } from "./scene";
import { caption, SectionFigure, sectionSvg } from "./section/figure";
import { keys, Strip, WalkBar } from "./strip";
import { readPayload } from "./unpack";
import { nearest, Walk } from "./walk";
import { speak, tr } from "./voice";

async function start(): Promise<void> {
  const block = byId("seamcheck-data");
  wireTheme(() => undefined);
  if (!block) return;
  const payload = await readPayload(block);
  speak(payload.voice);
  document.documentElement.classList.add("alive");
  if (!payload.joints.length || !payload.joints.some((j) => j.contours.length)) {
    document.documentElement.dataset.ready = "yes";
    return;
  }
  const atlas = new Atlas(payload);
  const walk = new Walk(payload);

  const section = new SectionFigure(byId("section-figure")!, atlas);
  const beside = new SectionFigure(byId("section-beside")!, atlas, true);
  const plan = new Plan(byId("plan-figure")!, atlas, walk);
  const strip = new Strip(byId("strip")!, atlas, walk);
  const bar = new WalkBar(walk);
  const charts = new Charts(byId("charts-judged")!, byId("charts-within")!, byId("charts-further")!, atlas, walk);
  const space = new Space(atlas, walk);

  let besideIsNear = false;
  whenNear(byId("section-beside")!, () => { besideIsNear = true; beside.show(walk.place); });

  walk.listen((place, cause) => {
    section.show(place);
    if (besideIsNear) beside.show(place);
    plan.show(place);
    strip.show(place);
    bar.show(place);
    charts.show(place);
    space.show(place, cause === "finding" || cause === "keys-finding");
    for (const id of ["section-caption", "beside-caption"]) {
      const host = byId(id)!;
      clear(host);
      host.append(caption(atlas, place));
    }
    showAll(atlas, walk);
    markList(walk);
  });

  for (const id of ["section-figure", "plan-figure", "strip", "section-beside"]) {
    byId(id)!.addEventListener("keydown", (event) => { if (keys(event, walk)) event.preventDefault(); });
  }
  for (const link of document.querySelectorAll<HTMLElement>("[data-go]")) {
    link.addEventListener("click", (event) => {
      const finding = payload.findings.find((f) => String(f.n) === link.dataset.go);
      if (!finding) return;
      if (finding.station !== null) {
        event.preventDefault();
        walk.showFinding(finding);
        if (link.dataset.top !== undefined) byId("desk")!.scrollIntoView({ block: "start" });
      }
    });
  }
  for (const link of document.querySelectorAll<HTMLElement>("[data-place]")) {
    link.addEventListener("click", (event) => {
      const [jointId, contourId, station] = link.dataset.place!.split(" ");
      const joint = payload.joints.findIndex((j) => j.id === jointId);
      const contour = payload.joints[joint]?.contours.findIndex((c) => c.id === contourId) ?? -1;
      if (contour < 0) return;
      event.preventDefault();
      walk.go({ joint, contour, station: Number(station) }, "finding");
    });
  }
  const choice = byId<HTMLSelectElement>("joint-choice");
  choice?.addEventListener("change", () => walk.go({ joint: Number(choice.value), contour: 0, station: 0 }, "joint"));
  walk.listen((place) => { if (choice) choice.value = String(place.joint); });

  proposedOf(atlas).wire(() => { section.show(walk.place); if (besideIsNear) beside.show(walk.place); });
  wireList();
  wireFolds();
  byId<HTMLInputElement>("show-spread")?.addEventListener("change", (event) => {
    byId("charts")!.classList.toggle("with-spread", (event.target as HTMLInputElement).checked);
  });
  wireAnswers(payload);
  const sheets = drawSheets(atlas);
  wireTheme(() => { plan.draw(); charts.retheme(); space.retheme(); });
  addEventListener("beforeprint", () => {
    document.documentElement.dataset.print = "yes";
    for (const fold of document.querySelectorAll<HTMLDetailsElement>("details.fold:not([open])")) { fold.open = true; fold.dataset.wasShut = ""; }
    for (const day of document.querySelectorAll<HTMLInputElement>("input[type=date]")) day.classList.toggle("unset", !day.value);
    for (const sheet of sheets) sheet.forPrint();
    charts.forPrint(byId("charts")?.classList.contains("with-spread") ? 245 : 318);
  });
  addEventListener("afterprint", () => {
    delete document.documentElement.dataset.print;
    for (const fold of document.querySelectorAll<HTMLDetailsElement>("[data-was-shut]")) { fold.open = false; delete fold.dataset.wasShut; }
    for (const sheet of sheets) sheet.forScreen();
    charts.forScreen();
  });

  await document.fonts.ready;
  addEventListener("hashchange", () => follow(walk));
  if (follow(walk)) {
    document.documentElement.dataset.ready = "yes";
    return;
  }
  const first = payload.findings.find((f) => f.station !== null);
  if (first) walk.showFinding(first, "start");
  else walk.go({ joint: 0, contour: 0, station: 0 }, "start");
  document.documentElement.dataset.ready = "yes";
}

/** Goes where the address points: #f2 to a finding, #s=124.9 (or #j1/c2/s=124.9) to a place; whether it did. */
function follow(walk: Walk): boolean {
  const hash = decodeURIComponent(location.hash.slice(1));
  const finding = /^f(\d+)$/.exec(hash);
  if (finding) {
    const found = walk.payload.findings.find((f) => f.n === Number(finding[1]) && f.station !== null);
    if (found) walk.showFinding(found);
    return found !== undefined;
  }
  const place = /^(?:([^/]+)\/([^/]+)\/)?s=(-?[\d.]+)$/.exec(hash);
  if (!place) return false;
  const joint = place[1] ? walk.payload.joints.findIndex((j) => j.id === place[1]) : 0;
  const contour = place[2] ? walk.payload.joints[joint]?.contours.findIndex((c) => c.id === place[2]) ?? -1 : 0;
  if (joint < 0 || contour < 0) return false;
  walk.go({ joint, contour, station: nearest(walk.payload.joints[joint].contours[contour].stations.s, Number(place[3])) }, "finding");
  return true;
}

/** A sheet that a link leads to opens. */
function wireFolds(): void {
  const open = () => {
    const fold = document.querySelector<HTMLDetailsElement>(`${/^#finding-\d+$/.test(location.hash) ? location.hash : "#none"} .sheet-fold`);
    if (fold) fold.open = true;
  };
  addEventListener("hashchange", open);
  open();
}

/** Filter and order of the list of findings. */
function wireList(): void {
  const filter = byId<HTMLSelectElement>("list-filter"), order = byId<HTMLSelectElement>("list-order");
  const body = document.querySelector("#finding-list tbody");
  if (!filter || !order || !body) return;
  const rows = [...body.querySelectorAll<HTMLElement>("[data-row]")];
  const apply = () => {
    const wanted = filter.value;
    const isShown = (row: HTMLElement) => !wanted || row.dataset.severity === wanted || `rule:${row.dataset.rule}` === wanted;
    for (const row of rows) row.hidden = !isShown(row);
    const shown = rows.filter(isShown).length;
    byId("list-count")!.textContent = shown === rows.length ? `(${rows.length})` : tr("({shown} of {all})", { shown, all: rows.length });
    for (const old of body.querySelectorAll(".group-head")) old.remove();
    const key = (row: HTMLElement): [string, number] => order.value === "rule" ? [row.dataset.rule ?? "", 0] : ["", order.value === "s" ? Number(row.dataset.s || 1e9) : 0];
    const sorted = [...rows].sort((a, b) => key(a)[0].localeCompare(key(b)[0]) || key(a)[1] - key(b)[1] || Number(a.dataset.row) - Number(b.dataset.row));
    body.append(...sorted);
    if (order.value !== "rule") return;
    const open = sorted.filter(isShown);
    for (const row of open) {
      const own = open.filter((other) => other.dataset.rule === row.dataset.rule);
      if (own[0] === row) row.before(h("tr", { class: "group-head" }, h("th", { colspan: 3, scope: "rowgroup" }, `${row.dataset.title} (${own.length})`)));
    }
  };
  filter.addEventListener("change", apply);
  order.addEventListener("change", apply);
}

/** The pane beside the section: the plan, or the 3-D view (made when it is first asked for). */
class Space {
  private scene: Scene | null = null;

  constructor(private readonly atlas: Atlas, private readonly walk: Walk) {
    const tabs = [...document.querySelectorAll<HTMLButtonElement>("[data-pane]")];
    const choose = (name: string) => {
      for (const tab of tabs) tab.setAttribute("aria-selected", String(tab.dataset.pane === name));
      for (const tab of tabs) tab.tabIndex = tab.dataset.pane === name ? 0 : -1;
      byId("pane-plan")!.hidden = name !== "plan";
      byId("pane-space")!.hidden = name !== "space";
      if (name === "space") this.open();
    };
    for (const tab of tabs) {
      tab.addEventListener("click", () => choose(tab.dataset.pane!));
      tab.addEventListener("keydown", (event) => {
        if (event.key !== "ArrowLeft" && event.key !== "ArrowRight") return;
        const other = tabs[(tabs.indexOf(tab) + 1) % tabs.length];
        choose(other.dataset.pane!);
        other.focus();
      });
    }
  }

  private open(): void {
    if (this.scene) return;
    const host = byId("space-figure")!;
    if (!this.atlas.meshes.length) {
      host.append(h("p", { class: "empty" }, tr("The document carries no meshes of the parts; the seam is shown alone.")));
    }
    try {
      this.scene = new Scene(host, this.atlas, this.walk);
    } catch {
      clear(host);
      host.append(h("p", { class: "empty" }, tr("This browser offers no 3-D drawing (WebGL). The plan and the sections show the same places.")));
      return;
    }
    this.tools(this.scene);
    this.scene.aslant(false);
    this.scene.flyToMarker();
    host.addEventListener("keydown", (event) => {
      if (event.key.startsWith("Page") && keys(event, this.walk)) event.preventDefault();
    });
  }

  private tools(scene: Scene): void {
    const bar = byId("space-tools")!;
    const left = this.atlas.meshes.reduce((sum, mesh) => sum + mesh.leftOut, 0);
    if (left) byId("space-note")!.textContent = tr("{count} small faces are left out of this picture; all were measured.", { count: left });
    const button = (text: string, act: () => void) => {
      const made = h("button", { type: "button" }, text);
      made.addEventListener("click", act);
      return made;
    };
    const toggle = (text: string, checked: boolean, act: (on: boolean) => void) => {
      const box = h("input", { type: "checkbox" });
      box.checked = checked;
      box.addEventListener("change", () => act(box.checked));
      return h("label", null, box, ` ${text}`);
    };
    append(bar, [
      this.larger(),
      button(tr("Along the beam"), () => scene.alongLight()), button(tr("Oblique"), () => scene.aslant()), button(tr("To the section"), () => scene.flyToMarker()),
      toggle(tr("cut open here"), false, (on) => scene.setCut(on)),
      ...scene.partIds.slice(0, 12).map((id) => toggle(this.atlas.words.part(id), true, (on) => scene.setVisible(id, on))),
    ]);
    if (scene.partIds.length > 12) {
      append(bar, [toggle(tr("{count} further parts", { count: scene.partIds.length - 12 }), true, (on) => scene.partIds.slice(12).forEach((id) => scene.setVisible(id, on)))]);
    }
  }

  /** Gives the 3-D view the place of the section too, and back. */
  private larger(): HTMLButtonElement {
    const desk = byId("desk")!, made = h("button", { type: "button", id: "space-larger", "aria-pressed": "false" }, tr("Larger"));
    const set = (on: boolean) => {
      desk.classList.toggle("large-space", on);
      made.setAttribute("aria-pressed", String(on));
      made.textContent = on ? tr("Smaller") : tr("Larger");
    };
    made.addEventListener("click", () => set(!desk.classList.contains("large-space")));
    byId("tab-plan")?.addEventListener("click", () => set(false));
    return made;
  }

  show(place: Walk["place"], fly: boolean): void { this.scene?.show(place, fly); }
  retheme(): void { this.scene?.retheme(); }
}

/** Every quantity at the station where the reader stands. */
function showAll(atlas: Atlas, walk: Walk): void {
  const host = byId("all-values");
  if (!host) return;
  const { contour, joint, place, s } = walk;
  const rows = Object.keys(atlas.payload.quantities)
    .filter((column) => Array.isArray(contour.stations[column]))
    .map((column) => {
      const value = (contour.stations[column] as (number | null)[])[place.station];
      const why = value === null ? atlas.words.reason(joint.id, contour.id, column, s) : "";
      return h("tr", null, h("th", { scope: "row" }, atlas.words.title(column)), h("td", { "data-column": column, "data-value": String(value) }, atlas.words.value(value, column)), h("td", null, why));
    });
  clear(host);
  host.append(...rows);
}

function markList(walk: Walk): void {
  const here = new Set(walk.findingsHere().map((f) => String(f.n)));
  for (const row of document.querySelectorAll<HTMLElement>("#finding-list [data-row]")) {
    if (here.has(row.dataset.row!)) row.setAttribute("aria-current", "true");
    else row.removeAttribute("aria-current");
  }
}

interface Sheet { draw: () => void; forPrint: () => void; forScreen: () => void }

/** The section drawing of every finding, drawn when it comes near the window or before printing. */
function drawSheets(atlas: Atlas): Sheet[] {
  return [...document.querySelectorAll<HTMLElement>("[data-sheet]")].flatMap((host, k) => {
    const finding = atlas.payload.findings.find((f) => String(f.n) === host.dataset.sheet)!;
    if (finding.station === null) return [];
    const joint = atlas.payload.joints.findIndex((j) => j.id === finding.joint);
    const contour = atlas.payload.joints[joint].contours.findIndex((c) => c.id === finding.contour);
    const place = { joint, contour, station: finding.station };
    const put = (width: number, height: number) => {
      clear(host);
      host.append(sectionSvg(atlas, place, width, height, `sheet${k}`, true), h("figcaption", null, caption(atlas, place)));
    };
    const screen = () => put(Math.max(340, Math.min(760, host.getBoundingClientRect().width || 660)), 400);
    const draw = whenNear(host, screen);
    return [{ draw, forPrint: () => { draw(); put(450, 330); }, forScreen: screen }];
  });
}

let themeWired = false;
const rethemers: (() => void)[] = [];

/** Light, dark, or as the system has it. */
function wireTheme(retheme: () => void): void {
  rethemers.push(retheme);
  if (themeWired) return;
  themeWired = true;
  const root = document.documentElement;
  const run = () => { for (const each of rethemers) each(); };
  byId("theme-switch")?.addEventListener("click", () => {
    const dark = root.dataset.theme ? root.dataset.theme === "dark" : matchMedia("(prefers-color-scheme: dark)").matches;
    root.dataset.theme = dark ? "light" : "dark";
    run();
  });
  matchMedia("(prefers-color-scheme: dark)").addEventListener("change", run);
}

start().catch((error: unknown) => {
  console.error(error);
  const note = byId("trouble");
  if (note) {
    note.hidden = false;
    note.textContent = tr("The figures could not be drawn: {error}. All texts and tables below are complete.", { error: error instanceof Error ? error.message : String(error) });
  }
});
