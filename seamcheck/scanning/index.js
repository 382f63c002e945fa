// Shows the rows of the list. All text goes in as text nodes; no markup is ever made from a string.
"use strict";
(() => {
  const PATH = 0, SUPPLIER = 1, VERDICT = 2, COUNTS = 3, TITLE = 4, MESSAGE = 5, REMEDY = 6, PAGE = 7, PICTURE = 8,
    SEAM = 9, VALUES = 10, RULES = 11, KINDS = 13, CONFIDENCE = 14;
  const AT_ONCE = 100;
  const byId = (id) => document.getElementById(id);
  const body = document.querySelector("#list tbody");
  const state = { verdicts: new Set(), supplier: null, rule: "", kind: "", find: "", sort: "", down: false, count: AT_ONCE };
  let head, rows = [], shown = [];

  const make = (name, kind, text) => {
    const element = document.createElement(name);
    if (kind) element.className = kind;
    if (text !== undefined) element.append(text);
    return element;
  };

  const drawSeam = (text) => {
    const [width, height, ...states] = head.picture;
    const name = "http://www.w3.org/2000/svg";
    const svg = document.createElementNS(name, "svg");
    svg.setAttribute("viewBox", `0 0 ${width} ${height}`);
    svg.setAttribute("aria-hidden", "true");
    for (const line of text.split(";")) {
      const blank = line.indexOf(" ");
      const drawn = document.createElementNS(name, "polyline");
      drawn.setAttribute("class", `p-${states[Number(line.slice(0, blank))]}`);
      drawn.setAttribute("points", line.slice(blank + 1));
      svg.append(drawn);
    }
    return svg;
  };

  const number = (value, i) => (value === null ? "" : value.toFixed(head.decimals[i]));

  const drawRow = (row) => {
    const line = make("tr");
    const [verdict, mark] = head.verdicts[row[VERDICT]];
    line.dataset.verdict = verdict;
    const picture = make("td", "pic");
    if (row[PICTURE]) picture.append(drawSeam(row[PICTURE]));
    const model = make("td", "model");
    if (row[PAGE]) {
      const link = make("a", "", row[PATH]);
      link.href = `pages/${encodeURIComponent(row[PAGE])}`;
      model.append(link);
    } else model.append(make("b", "", row[PATH]));
    if (row[SUPPLIER]) model.append(make("span", "", row[SUPPLIER]));
    const counts = make("td", "counts");
    const marks = [["◆", "bad", "must-fix"], ["▲", "near", "attention"], ["○", "", "notes"], ["✕", "", "waived"]];
    row[COUNTS].forEach((count, i) => {
      if (!count) return;
      const entry = make("span", marks[i][1], `${marks[i][0]} ${count}`);
      entry.title = `${count} ${marks[i][2]}`;
      counts.append(entry);
    });
    const what = make("td", "what");
    if (row[TITLE]) what.append(make("b", "", row[TITLE]), ". ");
    what.append(row[MESSAGE]);
    if (row[REMEDY]) what.append(make("span", "", row[REMEDY]));
    const joint = make("td", "joint", row[KINDS].join(", "));
    if (row[CONFIDENCE] !== null) joint.append(make("span", "", `confidence ${row[CONFIDENCE].toFixed(2)}`));
    const v = row[VALUES].map(number);
    const rib = v[0] && v[0] !== v[1] ? `${v[0]} to ${v[1]}` : v[0];
    line.append(picture, model, make("td", `said is-${verdict}`, `${mark} ${verdict}`), counts, what, joint);
    for (const text of [rib, v[2], v[3], v[4]]) line.append(make("td", "num", text));
    line.append(make("td", "num material", v[5]), make("td", "num", row[SEAM] === null ? "" : row[SEAM].toFixed(1)));
    return line;
  };

  const key = {
    path: (row) => row[PATH].toLowerCase(),
    verdict: (row) => row[VERDICT],
    findings: (row) => -(row[COUNTS][0] * 1e8 + row[COUNTS][1] * 1e4 + row[COUNTS][2]),
    seam: (row) => row[SEAM],
    confidence: (row) => row[CONFIDENCE],
    v0: (row) => row[VALUES][0], v2: (row) => row[VALUES][2], v3: (row) => row[VALUES][3],
    v4: (row) => row[VALUES][4], v5: (row) => row[VALUES][5],
  };

  const choose = () => {
    const words = state.find.toLowerCase().split(/\s+/).filter(Boolean);
    const rule = state.rule === "" ? -1 : head.rules.findIndex(([name]) => name === state.rule);
    shown = rows.filter((row) =>
      (!state.verdicts.size || state.verdicts.has(head.verdicts[row[VERDICT]][0])) &&
      (state.supplier === null || row[SUPPLIER] === state.supplier) &&
      (!state.kind || row[KINDS].includes(state.kind)) &&
      (rule < 0 || row[RULES].includes(rule)) &&
      (!words.length || words.every((word) =>
        `${row[PATH]}\n${row[SUPPLIER]}\n${row[TITLE]}\n${row[MESSAGE]}`.toLowerCase().includes(word))));
    if (state.sort) {
      const of = key[state.sort], sign = state.down ? -1 : 1;
      shown.sort((a, b) => {
        const x = of(a), y = of(b);
        if (x === null || y === null) return (x === null) - (y === null); // not measured: last, either way
        return x < y ? -sign : x > y ? sign : 0;
      });
    }
    draw();
  };

  const draw = () => {
    body.replaceChildren(...shown.slice(0, state.count).map(drawRow));
    const visible = Math.min(state.count, shown.length);
    byId("shown").textContent = shown.length === rows.length && visible === shown.length
      ? `${rows.length} models` : `${visible} of ${shown.length} shown; ${rows.length} models in all`;
    byId("more").hidden = visible === shown.length;
    byId("models-head").textContent = state.sort ? "Models" : "Models, worst first";
    for (const button of document.querySelectorAll("[data-verdict][aria-pressed]"))
      button.setAttribute("aria-pressed", String(state.verdicts.has(button.dataset.verdict)));
    for (const button of document.querySelectorAll("[data-sort]")) {
      const cell = button.closest("th");
      if (button.dataset.sort === state.sort) cell.setAttribute("aria-sort", state.down ? "descending" : "ascending");
      else cell.removeAttribute("aria-sort");
    }
    byId("supplier").value = state.supplier === null ? "" : `=${state.supplier}`;
    byId("rule").value = state.rule;
    byId("kind").value = state.kind;
    byId("find").value = state.find;
  };

  const change = (values) => { Object.assign(state, { count: AT_ONCE }, values); choose(); };

  const listen = () => {
    for (const button of document.querySelectorAll("[data-verdict][aria-pressed]"))
      button.addEventListener("click", () => {
        const { verdict } = button.dataset;
        if (!state.verdicts.delete(verdict)) state.verdicts.add(verdict);
        change({});
      });
    for (const button of document.querySelectorAll("[data-supplier]"))
      button.addEventListener("click", () => { change({ supplier: button.dataset.supplier }); byId("models").scrollIntoView(); });
    for (const button of document.querySelectorAll("[data-rule]"))
      button.addEventListener("click", () => { change({ rule: button.dataset.rule }); byId("models").scrollIntoView(); });
    for (const button of document.querySelectorAll("[data-sort]"))
      button.addEventListener("click", () => {
        const { sort } = button.dataset;
        if (state.sort !== sort) change({ sort, down: false });
        else if (!state.down) change({ down: true });
        else { change({ sort: "", down: false }); }
      });
    byId("find").addEventListener("input", (event) => change({ find: event.target.value }));
    byId("supplier").addEventListener("change", (event) =>
      change({ supplier: event.target.value ? event.target.value.slice(1) : null }));
    byId("rule").addEventListener("change", (event) => change({ rule: event.target.value }));
    byId("kind").addEventListener("change", (event) => change({ kind: event.target.value }));
    byId("reset").addEventListener("click", () => {
      state.verdicts.clear();
      change({ supplier: null, rule: "", kind: "", find: "", sort: "", down: false });
    });
    byId("more").addEventListener("click", () => { state.count += AT_ONCE; draw(); });
  };

  const unpack = async () => {
    const packed = Uint8Array.from(atob(byId("rows").textContent.trim()), (c) => c.charCodeAt(0));
    const stream = new Blob([packed]).stream().pipeThrough(new DecompressionStream("gzip"));
    const lines = (await new Response(stream).text()).split("\n").filter(Boolean).map((line) => JSON.parse(line));
    head = lines[0];
    rows = lines.slice(1);
  };

  const start = async () => {
    await unpack();
    for (const name of [...new Set(rows.map((row) => row[SUPPLIER]))].sort()) {
      const option = make("option", "", name || "(no folder)");
      option.value = `=${name}`;
      byId("supplier").append(option);
    }
    for (const [name, title] of head.rules) {
      const option = make("option", "", title);
      option.value = name;
      byId("rule").append(option);
    }
    for (const name of [...new Set(rows.flatMap((row) => row[KINDS]))].sort()) {
      const option = make("option", "", name);
      option.value = name;
      byId("kind").append(option);
    }
    listen();
    choose();
    document.documentElement.dataset.ready = "yes";
  };

  start().catch((error) => {
    byId("trouble").textContent = `The list can't be shown (${error.message}). It is in index.csv, too.`;
    byId("trouble").hidden = false;
  });
})();
