/** Decisions about findings, answers to questions and the sign-off, saved as a file that the next review reads. */

import { byId } from "./dom";
import type { Payload } from "./types";
import { tr } from "./voice";

type Row = Record<string, string>;

/** What stands in the fields of one block. */
function typed(block: Element): Row {
  const row: Row = {};
  for (const input of block.querySelectorAll<HTMLInputElement | HTMLSelectElement>("[data-key]")) row[input.dataset.key!] = input.value.trim();
  return row;
}

const isFilled = (row: Row): boolean => Object.values(row).some((value) => value !== "");

/** Everything typed into the page, as the file holds it. */
export function collect(payload: Payload): object {
  const findings = [...document.querySelectorAll<HTMLElement>("[data-answer]")].flatMap((block) => {
    const finding = payload.findings.find((f) => String(f.n) === block.dataset.answer)!;
    const row = typed(block);
    return isFilled(row) ? [{ id: finding.id, rule: finding.rule, place: finding.place ?? {}, ...row }] : [];
  });
  const questions = [...document.querySelectorAll<HTMLElement>("[data-question]")].map((block) => ({ key: block.dataset.question!, ...typed(block) }));
  const approval = [...document.querySelectorAll<HTMLElement>("[data-role]")].map((block) => ({ role: block.dataset.role!, ...typed(block) }));
  return {
    document: "seamcheck-answers", schema_version: 1, model: payload.model, findings,
    questions: questions.filter((q) => (q as Row).answer), approval: approval.filter((a) => (a as Row).name || (a as Row).decision),
  };
}

export function wireAnswers(payload: Payload): void {
  byId("save-answers")?.addEventListener("click", () => {
    const text = JSON.stringify(collect(payload), null, 1);
    const link = document.createElement("a");
    link.href = URL.createObjectURL(new Blob([text], { type: "application/json" }));
    link.download = `${payload.model.file.replace(/\.[^.]*$/, "").replace(/[^A-Za-z0-9._-]+/g, "-") || "review"}-answers.json`;
    link.click();
    URL.revokeObjectURL(link.href);
    byId("saved")!.textContent = tr("Saved as {file}.", { file: link.download });
  });
}
