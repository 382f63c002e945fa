/** Elements are only made here: text goes in as text nodes, so no name from a model can become markup. */

type Attributes = Record<string, string | number | boolean | null | undefined>;
type Child = Node | string | number | null | undefined | Child[];

const SVG = "http://www.w3.org/2000/svg";

function fill<T extends Element>(element: T, attributes: Attributes | null, children: Child[]): T {
  for (const [name, value] of Object.entries(attributes ?? {})) {
    if (value === null || value === undefined || value === false) continue;
    if (name === "style" || name.startsWith("on")) throw new Error(`attribute ${name} is not set from here`);
    element.setAttribute(name, value === true ? "" : String(value));
  }
  append(element, children);
  return element;
}

export function append(parent: Element, children: Child[]): void {
  for (const child of children) {
    if (child === null || child === undefined) continue;
    if (Array.isArray(child)) append(parent, child);
    else parent.append(child instanceof Node ? child : String(child));
  }
}

export function h<K extends keyof HTMLElementTagNameMap>(
  tag: K, attributes: Attributes | null = null, ...children: Child[]
): HTMLElementTagNameMap[K] {
  return fill(document.createElement(tag), attributes, children);
}

export function svg<K extends keyof SVGElementTagNameMap>(
  tag: K, attributes: Attributes | null = null, ...children: Child[]
): SVGElementTagNameMap[K] {
  return fill(document.createElementNS(SVG, tag) as SVGElementTagNameMap[K], attributes, children);
}

export function byId<T extends HTMLElement = HTMLElement>(id: string): T | null {
  return document.getElementById(id) as T | null;
}

export function clear(element: Element): void {
  while (element.lastChild) element.lastChild.remove();
}

/** Coordinates in SVG paths: two decimals are a hundredth of a pixel. */
export const px = (value: number): string => String(Math.round(value * 100) / 100);

/** A colour of the page's theme, for canvases. */
export function theme(name: string): string {
  return getComputedStyle(document.documentElement).getPropertyValue(`--${name}`).trim();
}

/** Calls `draw` now for what is seen and for the rest as soon as it comes near the window, once each. */
export function whenNear(element: Element, draw: () => void): () => void {
  let done = false;
  const once = () => {
    if (done) return;
    done = true;
    observer.disconnect();
    draw();
  };
  const observer = new IntersectionObserver((entries) => {
    if (entries.some((entry) => entry.isIntersecting)) once();
  }, { rootMargin: "400px" });
  observer.observe(element);
  return once;
}

export const motionIsReduced = (): boolean => matchMedia("(prefers-reduced-motion: reduce)").matches;
