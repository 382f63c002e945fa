/** Walks through the old and the new section at once. What stands in the page without a script is the first place. */

import { append, byId, clear, h } from "./dom";
import { inflate } from "./unpack";

interface Place { s: number; old_s: number; where: string; rows: [string, string, string][]; [outline: string]: unknown }
interface Walked { joint: string; contour: string; worst: number; places: Place[] }

const PARTS = ["old_base", "old_cover", "old_other", "new_base", "new_cover", "new_other"];

function wire(walk: Walked, k: number, same: string): void {
  const figure = byId(`walk-${k}`), slider = byId<HTMLInputElement>(`walk-${k}-slider`);
  if (!figure || !slider) return;
  const caption = figure.querySelector(".walk-caption")!, body = figure.querySelector("tbody")!;
  const show = (i: number) => {
    const at = Math.max(0, Math.min(walk.places.length - 1, i)), place = walk.places[at];
    slider.value = String(at);
    slider.setAttribute("aria-valuetext", place.where);
    for (const part of PARTS) figure.querySelector(`[data-part="${part}"]`)?.setAttribute("d", String(place[part] ?? ""));
    caption.textContent = place.where;
    clear(body);
    append(body, place.rows.map(([title, old, now]) => h("tr", null, h("th", { scope: "row" }, title), h("td", { class: "num" }, old), h("td", { class: "num" }, now))));
    if (!place.rows.length) body.append(h("tr", null, h("td", { colspan: 3 }, same)));
  };
  slider.max = String(walk.places.length - 1);
  slider.addEventListener("input", () => show(Number(slider.value)));
  const changed = walk.places.map((place, i) => (place.rows.length ? i : -1)).filter((i) => i >= 0);
  const jump = (way: 1 | -1) => {
    const here = Number(slider.value), ahead = changed.filter((i) => (way > 0 ? i > here : i < here));
    if (changed.length) show(way > 0 ? ahead[0] ?? changed[0] : ahead.at(-1) ?? changed.at(-1)!);
  };
  for (const button of figure.querySelectorAll<HTMLButtonElement>("[data-step]")) {
    const step = button.dataset.step!;
    button.addEventListener("click", () => (step === "back" ? show(Number(slider.value) - 1) : step === "on" ? show(Number(slider.value) + 1) : jump(step === "next" ? 1 : -1)));
  }
  for (const box of figure.querySelectorAll<HTMLInputElement>("[data-show]")) {
    box.addEventListener("change", () => figure.querySelector(`.layer.${box.dataset.show}`)?.classList.toggle("off", !box.checked));
  }
  show(walk.worst);
}

async function start(): Promise<void> {
  const block = byId("walks");
  if (!block) return;
  const { walks, same } = await inflate<{ walks: Walked[]; same: string }>(block);
  walks.forEach((walk, k) => wire(walk, k, same));
  document.documentElement.classList.add("alive");
  document.documentElement.dataset.ready = "yes";
}

start().catch((error: unknown) => console.error(error));
