import { readFileSync } from "node:fs";
import { compareAnswers, type RecomputedJobs } from "../../tests/plan/independent/compare.js";
import { tolerances } from "../../tests/plan/independent/tolerances.js";
import { plansByName } from "../../tests/plan/jobs/plans.js";
import { root } from "../../tests/support/rooms.js";
import { table } from "./markdown.js";

/** Whole plans, recomputed by a script that shares no code with the library: how far off every question is. */
export function independentSection(): readonly string[] {
  const { jobs, versions } = JSON.parse(
    readFileSync(`${root}tests/plan/independent/recomputed.json`, "utf8"),
  ) as RecomputedJobs;
  const all = plansByName().flatMap(([name, { plan }]) => compareAnswers(plan.answers, jobs[name] ?? {}));
  const rows = [...new Set(all.map(({ id }) => id))].sort().map((id) => {
    const of = all.filter((one) => one.id === id);
    const worst = Math.max(...of.map(({ deviation }) => deviation));
    const { relative, because } = tolerances[id] ?? tolerances["every other"];
    const why = id in tolerances ? because : "";
    return [
      `\`${id}\``,
      String(of.length),
      worst === 0 ? "exact" : worst.toExponential(0),
      relative.toExponential(0),
      why,
    ];
  });
  return [
    "## Whole plans, recomputed",
    "",
    `Both examples at both scales and four jobs of the tests (hot and cold, a jacket by its conductance and by coefficients, packs, stability; three of them fail in many answers) were recomputed by a script in Python (SciPy ${versions["scipy"]}) that was written from the equations in these pages and shares no code with the library. It reads the same documents by itself. The fill targets, tolerable errors, storage times, labels and exposures of the examples, shelf lives by ICH Q1E and Welch's test are held against it as well. The heat balance is stepped in time by an ODE solver in place of a quadrature over temperature, packs are cooled by spectral collocation in place of a series, masses are rounded by trying every choice, fits and fills go through SciPy. All ${all.length} answers have the same verdict, side, deciding state and count of states; figures and limits are off by this much at most, as a share.`,
    "",
    ...table(["question", "answers", "off by", "allowed", "what is done differently on purpose"], rows, 1),
    "",
    `Where nothing is said, ${tolerances["every other"].because.replace(/^The s/, "the s").replace(/\.$/, "")}. An equation that both have from the same page is not proved by this: it shows that the plan applies it to the right state, and computes it right. The script takes tables and correlations from the same sources.`,
  ];
}
