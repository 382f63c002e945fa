// Bundles the page's script once into the package. Run by `make page`; users need no Node.
import { build } from "esbuild";
import { readFileSync, readdirSync, writeFileSync, mkdirSync } from "node:fs";

const target = new URL("../seamcheck/report/html/", import.meta.url);
mkdirSync(target, { recursive: true });
const result = await build({
  entryPoints: ["src/main.ts"], bundle: true, minify: true, format: "iife", target: "es2022", legalComments: "none",
  write: false, metafile: true, charset: "utf8",
});
writeFileSync(new URL("page.js", target), result.outputFiles[0].text);

// Every text that the script asks for, for the catalogues of other languages.
const sources = (folder) => readdirSync(folder, { withFileTypes: true }).flatMap((entry) =>
  entry.isDirectory() ? sources(`${folder}/${entry.name}`) : entry.name.endsWith(".ts") ? [`${folder}/${entry.name}`] : []);
const asked = sources("src").sort().flatMap((file) =>
  [...readFileSync(file, "utf8").matchAll(/\btr\(\s*("(?:[^"\\]|\\.)*")/g)].map((found) => JSON.parse(found[1])));
writeFileSync(new URL("page.texts.json", target), JSON.stringify([...new Set(asked)], null, 1) + "\n");

const compare = new URL("../seamcheck/comparison/html/", import.meta.url);
const second = await build({
  entryPoints: ["src/compare.ts"], bundle: true, minify: true, format: "iife", target: "es2022", legalComments: "none",
  write: false, charset: "utf8",
});
writeFileSync(new URL("compare.js", compare), second.outputFiles[0].text);

const read = (path) => readFileSync(new URL(path, import.meta.url), "utf8");
mkdirSync(new URL("fonts/", target), { recursive: true });
for (const [name, weight] of [["barlow", 400], ["barlow", 600], ["barlow-semi-condensed", 500], ["barlow-semi-condensed", 600]]) {
  const file = new URL(`node_modules/@fontsource/${name}/files/${name}-latin-${weight}-normal.woff2`, import.meta.url);
  writeFileSync(new URL(`fonts/${name}-${weight}.woff2`, target), readFileSync(file));
}
writeFileSync(new URL("chart.css", target), read("node_modules/uplot/dist/uPlot.min.css"));

const licences = [
  ["three", "node_modules/three/LICENSE"], ["uplot", "node_modules/uplot/LICENSE"],
  ["Barlow and Barlow Semi Condensed (fonts)", "node_modules/@fontsource/barlow/LICENSE"],
].map(([name, path]) => `${name}\n${"=".repeat(name.length)}\n\n${read(path).trim()}\n`);
writeFileSync(new URL("LICENCES.txt", target), licences.join("\n\n"));

const sizes = Object.values(result.metafile.outputs)[0];
console.log(`page.js ${(sizes.bytes / 1024).toFixed(0)} KiB`);
