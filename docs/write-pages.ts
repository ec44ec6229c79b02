// Run before typedoc: writes the pages and figures that are made from data, so that what they claim is what was run.
import { mkdirSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { draw } from "./plots/figure.js";
import { figures } from "./plots/figures.js";
import { bibliography } from "./proof/bibliography.js";
import { runChecks } from "./proof/checks.js";
import { glossary } from "./proof/glossary.js";
import { mutantsPage } from "./proof/mutants.js";
import { planQuestions } from "./proof/plan-questions.js";
import { runtimesPage } from "./proof/runtimes.js";
import { constantsPage, provedRooms, roomVerification, verification } from "./proof/verification.js";
import { weightPage } from "./proof/weight.js";

const pages = fileURLToPath(new URL("./pages/", import.meta.url));
const checks = runChecks();
mkdirSync(pages, { recursive: true });
writeFileSync(`${pages}verification.md`, `${verification(checks)}\n`);
for (const room of provedRooms) writeFileSync(`${pages}verification-${room}.md`, `${roomVerification(room, checks)}\n`);
writeFileSync(`${pages}constants.md`, `${constantsPage()}\n`);
writeFileSync(`${pages}mutants.md`, `${mutantsPage()}\n`);
writeFileSync(`${pages}glossary.md`, `${glossary()}\n`);
writeFileSync(`${pages}weight.md`, `${await weightPage()}\n`);
writeFileSync(`${pages}runtimes.md`, `${runtimesPage()}\n`);
writeFileSync(`${pages}plan-questions.md`, `${planQuestions()}\n`);
writeFileSync(`${pages}bibliography.md`, `${bibliography(checks)}\n`);
for (const figure of figures()) writeFileSync(`${pages}${figure.name}.svg`, draw(figure));
