import { readFileSync } from "node:fs";
import { prepareJob } from "../../src/plan/prepare.js";
import { runOf } from "../../src/plan/prepared-run.js";
import { questions } from "../../src/plan/questions/index.js";
import { answersTo, erringEitherWay, opens, type Question } from "../../src/plan/questions/question.js";
import { english } from "../../src/sheet/index.js";
import { allJobsByName } from "../../tests/plan/jobs/jobs.js";
import { root } from "../../tests/support/rooms.js";

/** What the line above an id says: each part under its word. */
export interface QuestionDoc {
  readonly raisedBy: string;
  readonly states: string;
  readonly figure: string;
  readonly limit: string;
  readonly margin?: string;
}

const form =
  /^Raised by: (?<raisedBy>.+?)\. States: (?<states>.+?)\. Figure: (?<figure>.+?)\. Limit: (?<limit>.+?)\.(?: Margin: (?<margin>.+?)\.)?$/;

/** The lines above the ids of questions, by id. */
export function questionDocs(): ReadonlyMap<string, QuestionDoc> {
  const source = readFileSync(`${root}src/plan/codes/questions.ts`, "utf8");
  const [, list = ""] = /export const questionIds = \[(.*?)\] as const/s.exec(source) ?? [];
  return new Map(
    [...list.matchAll(/\/\*\*((?:(?!\*\/).)*)\*\/\s*"([a-z-]+)"/gs)].flatMap(([, text = "", id = ""]) => {
      const { groups } = form.exec(text.replace(/\s*\n\s*\*?\s*/g, " ").trim()) ?? {};
      return groups ? [[id, groups as unknown as QuestionDoc] as const] : [];
    }),
  );
}

/** What of a question shows in the 24 jobs of the tests: its levers, by their id. */
function leversInJobs(): ReadonlyMap<string, readonly string[]> {
  const found = new Map<string, Set<string>>();
  for (const job of Object.values(allJobsByName())) {
    const run = runOf(prepareJob(job));
    for (const question of questions.filter(({ levers }) => levers)) {
      const answers = answersTo(question, run);
      const ids = question
        .subjects(run)
        .flatMap((subject, i) => question.levers?.(subject, run, answers[i]?.at ?? {}) ?? [])
        .map(({ id }) => id);
      found.set(question.id, new Set([...(found.get(question.id) ?? []), ...ids]));
    }
  }
  return new Map([...found].map(([id, levers]) => [id, [...levers].sort()]));
}

/** Assumptions that open an end of the figure, by its quantity. */
function openedBy({ quantity }: Question): readonly string[] {
  return Object.entries(opens).flatMap(([assumption, ends]) => {
    const end = ends?.[quantity];
    return end ? [`\`${assumption}\` opens the ${end === "min" ? "lower" : "upper"} end`] : [];
  });
}

function sectionOf(question: Question, doc: QuestionDoc | undefined, levers: readonly string[]): readonly string[] {
  const { id, quantity, quantifier } = question;
  const row = (what: string, text: string): string => `| ${what} | ${text.replaceAll("|", "\\|")} |`;
  const opened = openedBy(question);
  return [
    "",
    `## ${id}`,
    "",
    english.answers[id].question,
    "",
    "| part | what it is |",
    "| --- | --- |",
    row("raised by", doc?.raisedBy ?? ""),
    row(
      "states",
      `${doc?.states ?? ""} (${quantifier === "every" ? "every one has to meet the limit" : "one that meets the limit is enough"})`,
    ),
    row("figure", `${doc?.figure ?? ""} (\`${quantity}\`)`),
    row("limit", doc?.limit ?? ""),
    row("margin", doc?.margin ?? "none"),
    row(
      "opens an end",
      opened.length > 0 ? opened.join("; ") : "no assumption; a figure or limit of which one end is not known",
    ),
    row("remedies", levers.length > 0 ? levers.map((lever) => `\`${lever}\``).join(", ") : "none"),
  ];
}

/** The page *Questions of a plan*: every question that a plan may raise, from its record and the line above its id. */
export function planQuestions(): string {
  const docs = questionDocs();
  const levers = leversInJobs();
  return [
    "# Questions of a plan",
    "",
    "Every question that a plan may raise, taken from the records of the questions when this page was built. A question is raised by what the process contains or by a stated wish, never by a reading: if a reading is missing, the answer is *not known*. An answer is *met* if the whole figure lies within the limit, moved inwards by the margin; *not met* if all of it lies outside; else *not known*. The remedies listed are the levers of the questions in the twenty-four test jobs.",
    "",
    `An assumption that may err either way (${erringEitherWay.map((code) => `\`${code}\``).join(", ")}) opens, in every question, the end of the figure that faces the limit and the end of the limit that faces the figure, so no answer that rests on it is *met*.`,
    ...questions.flatMap((question) => sectionOf(question, docs.get(question.id), levers.get(question.id) ?? [])),
  ].join("\n");
}
