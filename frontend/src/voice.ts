/** The language and the unit of length of the page. English and mm, unless the payload says otherwise. */

export interface Voice { decimal: string; inch: boolean; texts: Record<string, string> }

let voice: Voice = { decimal: ".", inch: false, texts: {} };

/** Unit -> how much of it makes one of the other, that one, and how many more decimals it takes; as in catalogue/voice.py. */
const INCH: Record<string, [number, string, number]> = {
  "mm": [25.4, "in", 2], "mm²": [25.4 ** 2, "in²", 3], "mm³": [25.4 ** 3, "in³", 4], "mm/s": [25.4, "in/s", 1],
};

export function speak(given: Voice | null | undefined): void {
  if (given) voice = given;
}

/** A text of the page in its language, its {places} filled in. The build lists every first argument. */
export function tr(english: string, values: Record<string, string | number> = {}): string {
  return (voice.texts[english] ?? english).replace(/\{(\w+)\}/g, (all, name: string) => (name in values ? String(values[name]) : all));
}

/** A value, its unit and its decimals as the page writes them. */
export function inVoice(value: number, unit: string, decimals: number): [number, string, number] {
  const other = voice.inch ? INCH[unit] : undefined;
  return other ? [value / other[0], other[1], Math.min(decimals + other[2], Math.max(4, other[2]))] : [value, unit, decimals];
}

/** A number with the decimal sign of the language, never '-0'. */
export function num(value: number, decimals: number): string {
  const text = value.toFixed(decimals);
  return (Number(text) === 0 ? text.replace("-", "") : text).replace(".", voice.decimal);
}

/** A length given in mm, without its unit. */
export function bareMm(value: number, decimals: number): string {
  const [told, , more] = inVoice(value, "mm", decimals);
  return num(told, more);
}

export const mmUnit = (): string => inVoice(0, "mm", 0)[1];

/** A length given in mm, with the unit of the page. */
export const mm = (value: number, decimals: number): string => `${bareMm(value, decimals)} ${mmUnit()}`;

/** Millimetres in the unit of the page's lengths. */
export const oneLength = (): number => (voice.inch ? 25.4 : 1);

/** An area given in mm², with the unit of the page. */
export function squareMm(value: number, decimals: number): string {
  const [told, unit, more] = inVoice(value, "mm²", decimals);
  return `${num(told, more)} ${unit}`;
}
