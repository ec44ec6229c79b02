// Records what the plan makes of every job: `npx tsx tests/plan/jobs/record.ts`, then `npx biome format --write
// tests/plan/jobs`. It overwrites before.json and figures-before.json and prints which verdicts were reached. The records
// hold the results of one state of the code, with which later ones are compared: write them anew only on purpose.
import { writeFileSync } from "node:fs";
import { type Plan, runPlan } from "gelwright/plan";
import { exampleJobsByName, jobsByName } from "./jobs.js";

const verdicts = ["met", "not met", "not known"] as const;

/** Parts of a plan whose numbers are compared; the rest is words or the verdicts, which are recorded apart. */
const compared = [
  "timeline",
  "lots",
  "weighing",
  "allowances",
  "scale",
  "lotOrder",
  "afterFilling",
  "cold",
  "naturalOrigin",
  "particles",
  "films",
  "air",
  "evaporation",
  "thermalExposures",
  "oxidationRanking",
  "gelPoints",
  "strength",
  "yieldStress",
  "flow",
  "cost",
] as const satisfies readonly (keyof Plan)[];

/** Texts that are kept because they name a row or the thing that a number belongs to. */
const naming: readonly string[] = [
  "name",
  "material",
  "phase",
  "form",
  "of",
  "use",
  "what",
  "law",
  "currency",
  "stage",
];

/** The same value with its numbers, truth values and names, and without any other text. */
function numbersOf(value: unknown, key = ""): unknown {
  if (typeof value === "number") return Number.isFinite(value) ? value : String(value);
  if (typeof value === "boolean") return value;
  if (typeof value === "string") return naming.includes(key) ? value : undefined;
  if (Array.isArray(value))
    return value.map((member) => numbersOf(member, key)).filter((member) => member !== undefined);
  if (typeof value !== "object" || value === null) return undefined;
  return Object.fromEntries(
    Object.entries(value)
      .map(([name, member]) => [name, numbersOf(member, name)] as const)
      .filter(([, member]) => member !== undefined),
  );
}

function figuresOf(plan: Plan): unknown {
  return Object.fromEntries(
    compared.flatMap((part) => {
      // The basis of a step is a sentence; the law of a flow curve is a name.
      const value = part === "timeline" ? plan.timeline.map(({ basis: _basis, ...step }) => step) : plan[part];
      const found = numbersOf(value);
      return found === undefined ? [] : [[part, found]];
    }),
  );
}

function write(name: string, value: unknown): void {
  writeFileSync(new URL(name, import.meta.url), `${JSON.stringify(value, null, 2)}\n`);
}

const documents = { ...jobsByName(), ...exampleJobsByName() };
const plans = Object.entries(documents).map(([name, job]) => [name, runPlan(job)] as const);
const answers = plans.map(
  ([name, { checks }]) =>
    [name, checks.map(({ id, verdict, value, limit }) => ({ id, verdict, value, limit }))] as const,
);
write("before.json", Object.fromEntries(answers));
write("figures-before.json", Object.fromEntries(plans.map(([name, plan]) => [name, figuresOf(plan)])));

for (const [name, checks] of answers) {
  const count = verdicts.map((verdict) => `${checks.filter((check) => check.verdict === verdict).length} ${verdict}`);
  console.log(`${name}: ${count.join(", ")}`);
}

// A check id may end in the step, phase or material it is asked of: `even:7`.
const all = answers.flatMap(([name, checks]) =>
  checks.map(({ id, verdict }) => ({
    route: documents[name]?.process.route ?? "hot",
    name,
    id: id.replace(/:.*$/, ":"),
    verdict,
  })),
);
console.log("\nNumber of jobs by check, verdict and route (met, not met, not known)");
for (const id of [...new Set(all.map((one) => one.id))].sort()) {
  const reached = ["hot", "cold"].map((route) => {
    const counts = verdicts.map((verdict) => {
      const found = all.filter((one) => one.id === id && one.verdict === verdict && one.route === route);
      return String(new Set(found.map(({ name }) => name)).size).padStart(3);
    });
    return `${route} ${counts.join("")}`;
  });
  const missing = verdicts.filter((verdict) => !all.some((one) => one.id === id && one.verdict === verdict));
  console.log(
    `${id.padEnd(28)} ${reached.join("   ")}${missing.length > 0 ? `   not reached: ${missing.join(", ")}` : ""}`,
  );
}
