// Run before typedoc: writes the pages and figures that are made from data, so that what they claim is what was run.
import { mkdirSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { draw } from "./plots/figure.js";
import { figures } from "./plots/figures.js";
import { bibliography } from "./proof/bibliography.js";
import { runChecks } from "./proof/checks.js";
import { planQuestions } from "./proof/plan-questions.js";
import { verification } from "./proof/verification.js";

const pages = fileURLToPath(new URL("./pages/", import.meta.url));
const checks = runChecks();
mkdirSync(pages, { recursive: true });
writeFileSync(`${pages}verification.md`, `${verification(checks)}\n`);
writeFileSync(`${pages}plan-questions.md`, `${planQuestions()}\n`);
writeFileSync(`${pages}bibliography.md`, `${bibliography(checks)}\n`);
for (const figure of figures()) writeFileSync(`${pages}${figure.name}.svg`, draw(figure));
