import { readFileSync } from "node:fs";
import { type Plan, runPlan } from "gelwright/plan";
import { toHtml, toMarkdown } from "gelwright/sheet";
import { describe, expect, test } from "vitest";
import { jobsByName } from "../plan/jobs/jobs.js";
import { answerOf } from "../support/answers.js";
import { changed, coldJob, exampleJob } from "../support/example.js";

const hot = runPlan(exampleJob());
const cold = runPlan(coldJob());

/** A tinted gel in tubes whose melt sets long before the last of them is full; every material and figure is invented. */
const lip = runPlan(JSON.parse(readFileSync(new URL("jobs/lip-balm-gel.json", import.meta.url), "utf8")));

/** A section of the sheet. */
function section(plan: Plan, title: string): string {
  const [, after = ""] = toMarkdown({ plan }).split(`## ${title}\n`);
  return after.split("\n## ")[0] ?? "";
}

describe("the end of filling", () => {
  test("is stated with a remedy, and at the rate that it names every pack is warm enough", () => {
    const text = section(hot, "Fill");
    expect(text).toContain("predicted to cool below 57 °C 11 min after the first pack");
    expect(text).toContain("At the planned rate 650 of 1200 packs are full by then.");
    const [, rate] =
      /To be sure that all are filled in time: fill at least ([\d.]+) packs a minute, or keep the vessel between 57 °C and 62 °C/.exec(
        text,
      ) ?? [];
    const faster = runPlan(
      changed(exampleJob(), ({ process }) => Object.assign(process.steps[9], { for: `${1200 / Number(rate)} min` })),
    );
    expect(answerOf(hot, "filled-before-it-sets").verdict).toBe("not-met");
    expect(answerOf(faster, "filled-before-it-sets").verdict).toBe("met");
    expect(section(faster, "Fill")).not.toContain("To be sure that all");
    const hardly = runPlan(changed(exampleJob(), ({ process }) => Object.assign(process.steps[9], { for: "9 min" })));
    expect(answerOf(hardly, "filled-before-it-sets").verdict).toBe("not-known");
    expect(section(hardly, "Fill")).toContain("it may be cooler than 57 °C before the last pack is full");
  });

  test("names the time there is where no time of filling is stated, and stops what is too cool at the first pack", () => {
    const atOnce = runPlan(changed(exampleJob(), ({ process }) => delete process.steps[9].for));
    expect(section(atOnce, "Fill")).toContain("From the first pack on there are about 11 min");
    const late = runPlan(changed(exampleJob(), ({ process }) => Object.assign(process.steps[8], { for: "40 min" })));
    expect(section(late, "Fill")).toContain(
      "which is too cool. Fill nothing until the vessel is warm enough, and keep it between 57 °C",
    );
  });
});

test("a gel that sets before its packs are full is stopped in the list, in the step and at the filling", () => {
  const [, first = ""] = toMarkdown({ plan: lip }).split("## Before you start\n\n")[1]?.split("\n\n") ?? [];
  expect(first).toMatch(/^- NOT MET: The mix comes too near to its setting temperature before the last pack is full/);
  expect(section(lip, "Do")).toContain(
    "Fill the packs, 40 a minute, stirrer off. Stop when the vessel is cooler than 59.6 °C, and set the rest aside: the owner of the formula decides what becomes of it",
  );
  const text = section(lip, "Fill");
  expect(text).toContain(
    "The first pack is planned at 58.6 °C, which is too cool. Fill nothing until the vessel is warm enough, and keep it between 59.6 °C",
  );
  expect(text).toContain("- Net content control not planned: the documents do not state");
  // Room and 5 K, though when a tube has cooled to that is not known.
  expect(text).toContain("| Close | no warmer than 27 °C | not known | not known |");
  // Dust that goes in dry.
  expect(section(lip, "Do")).toMatch(/\| 9 \| Stir in phase C .*\. Mask and extraction on \|/);
});

describe("control of the content", () => {
  test("has a box for every pack of a sample, at the start, in between and at the end", () => {
    const rows = section(hot, "Fill").split("\n");
    const head = rows.indexOf("| Time | 1 | 2 | 3 | 4 | 5 | Mean | By |");
    expect(rows.slice(head + 2, head + 5)).toEqual([
      "| at the start |  |  |  |  |  |  |  |",
      "|  |  |  |  |  |  |  |  |",
      "| at the end |  |  |  |  |  |  |  |",
    ]);
  });

  test("is said not to be planned where the documents give no limits", () => {
    const none = runPlan(changed(exampleJob(), ({ pack }) => delete pack.tare));
    expect(section(none, "Fill")).toContain("- Net content control not planned: the documents do not state");
    expect(section(hot, "Fill")).not.toContain("not planned");
  });

  test("each sort of samples has one row, with a box", () => {
    expect(section(hot, "Fill")).toMatch(
      /\| Samples, to take at the filler .*\n.*\n\| Keep 8 samples of 15 g for the stability test, 120 g in all\. \| {2}\| {2}\|/,
    );
    for (const [name, job] of Object.entries(jobsByName())) {
      const plan = runPlan(job);
      const rows = section(plan, "Fill").split("| Samples, to take")[1]?.split("\n\n")[0]?.split("\n").slice(2) ?? [];
      const tests = (plan.samples ?? []).filter(({ stabilityTest }) => stabilityTest !== undefined).length;
      const sorts = (plan.samples ?? []).length + (plan.stability && tests === 0 ? 1 : 0);
      expect(rows.length, name).toBe(plan.timeline.some(({ step }) => step.do === "fill") ? sorts : 0);
    }
  });
});

describe("after filling", () => {
  test("one table says when packs are closed and moved, and when their rest ends", () => {
    const text = section(hot, "Fill");
    expect(text).toContain(
      "| Close | no warmer than 26 °C | 54 min after it is full | 53 min after it is full |  |  |",
    );
    expect(text).toContain("| Move, not before | set: its centre no warmer than 53 °C | 9 min after it is full |");
    expect(text).toContain("| End of the rest (step 11) |  |  | 12 h after it is full |  |  |");
    expect(section(cold, "Fill")).not.toContain("After filling");
  });

  test("names the temperature to close at where the time is not known", () => {
    const noPack = runPlan(changed(exampleJob(), (draft) => delete draft.pack.content));
    expect(section(noPack, "Fill")).toContain("| Close | no warmer than 26 °C | not known | not known |");
    expect(section(noPack, "Fill")).toContain("- Some of these times are not known: the documents do not state");
  });
});

/** What the line of a check has as its limit. */
function limitOf(plan: Plan, question: string): string | undefined {
  const line = section(plan, "Checks")
    .split("\n")
    .find((row) => row.startsWith(`| ${question}`));
  return line?.split(" | ").at(-2);
}

describe("where an operator would stumble", () => {
  test("the job to start from says to stir by hand, and to go on once the gel former is gone", () => {
    const job = JSON.parse(readFileSync(new URL("../../docs/examples/starter/job.json", import.meta.url), "utf8"));
    const text = section(runPlan(job), "Do");
    expect(text).toMatch(/\| 2 \| Heat to 80 °C .*\. No stirrer is stated: stir by hand meanwhile/);
    expect(text).toMatch(
      /\| 3 \| Take the vessel off the heat.*\. Do so only once no lump or speck of gel former is left/,
    );
    expect(section(hot, "Do")).not.toContain("stir by hand");
    expect(section(hot, "Do")).toContain("Do so only once no lump or speck");
    const unmelted = changed(exampleJob(), ({ formula }) =>
      Object.assign(formula.materials.gelFormer, { function: "oil" }),
    );
    expect(section(runPlan(unmelted), "Do")).not.toContain("Do so only once no lump");
  });

  test("a film that is predicted thicker than it is stated says what it would keep of the batch, a thinner one nothing", () => {
    // 290 g on the wall at 1 mm, and 2.4 mm would stay.
    expect(section(lip, "Yield and reconciliation")).toMatch(
      /planned 1 mm thick, as stated; 2\.4 mm is predicted, with which 4[0-9]0 g more would stay in the vessel and not be filled/,
    );
    expect(section(hot, "Yield and reconciliation")).not.toContain("film on the wall is planned");
    expect(section(cold, "Yield and reconciliation")).not.toContain("film on the wall is planned");
  });

  test("additions that keep the bench's times say that the vessel's size adds nothing to them", () => {
    const two = toMarkdown({ plan: runPlan(jobsByName()["two-oils-in-three-lots"]) });
    expect(two).toContain("multiplied by 4 (the total strain is that of the bench)");
    expect(two).toContain("They are the bench's times (nothing is added for the size of the vessel).");
  });

  test("the sheet says that a limit moves with the oil, that no bubble is held, or that a limit is not known", () => {
    expect(limitOf(cold, "Is every addition within")).toBe("at most 11.37 % with the oil that is in by then");
    expect(limitOf(cold, "Does the gel let its bubbles go")).toBe("no bubble is held");
    expect(limitOf(cold, "Does the vortex stay")).toBe("depth of charge above the stirrer: not known");
    expect(limitOf(hot, "Does the vortex stay")).toBe("depth of charge above the stirrer: 102 mm");
    expect(limitOf(cold, "Does a lot deliver")).toBe("at least 120 kg (800 packs of 150 g)");
  });
});

describe("the record of the batch", () => {
  test("has a column for what was added and what the scale reads, and says what several schedules share once", () => {
    const two = runPlan(jobsByName()["two-oils-in-three-lots"]);
    const text = toMarkdown({ plan: two });
    expect(text.match(/\| Added \| Scale reads \| Taken up \| By \|/g)).toHaveLength(2);
    expect(text.match(/Tick the box when/g)).toHaveLength(1);
    expect(text.match(/The scale under phase B2? reads at the start/g)).toHaveLength(2);
  });

  test("gives masses found as the coarsest balance shows them, and the tolerance in figures", () => {
    const text = section(hot, "Yield and reconciliation");
    expect(text).toContain("| Weighed in | 34.72 kg |");
    expect(text).toContain("| film in the kettle (weigh or estimate) | 0.38 kg |");
    expect(text).toContain("| In rejected packs | 0.00 kg |");
    expect(text).toContain("If it is more than 0.17 kg either way");
  });

  test("has boxes for the start, deviations and the release, wide enough to write in", () => {
    const text = toMarkdown({ plan: hot });
    expect(text).toContain("| Step 1 started at |");
    expect(text).toContain(
      "| Deviations from this sheet: step, what, why, initials | Released: name, signature, date |",
    );
    const html = toHtml({ plan: hot });
    expect(html).toMatch(/\.form td\.empty div\{width:12mm\}/);
    expect(html).not.toContain('<td class="empty"></td>');
  });
});
