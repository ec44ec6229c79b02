import { type Plan, runPlan } from "gelwright/plan";
import { toMarkdown } from "gelwright/sheet";
import { describe, expect, test } from "vitest";
import { instructionOf } from "../../src/sheet/doing.js";
import { withPastes } from "../../src/sheet/pastes.js";
import { chargingBetween, fillingMin, neverAbove } from "../../src/sheet/step-limits.js";
import { plansByName } from "../plan/jobs/plans.js";
import { changed, coldJob, type Draft, exampleJob } from "../support/example.js";
import { sheetOf } from "./sheet-of.js";

const plans = plansByName().map(([name, { plan }]) => [name, plan] as const);

/** The instruction of a step as it stands on the sheet. */
function instruction(plan: Plan, number: number): string {
  const step = plan.timeline[number - 1];
  return step ? instructionOf(sheetOf(plan), step) : "";
}

describe("a paste", () => {
  const made = plans.filter(([, { pastes }]) => pastes);

  test("moves oil from its phase to the step of the paste: no mass comes or goes", () => {
    expect(made.length).toBeGreaterThanOrEqual(3);
    for (const [name, plan] of made) {
      for (const { oil, keptBack, left, material, phase, total } of plan.pastes ?? []) {
        const lineOf = (of: string, key: string) =>
          plan.weighing.lines.find((line) => line.phase === of && line.material === key);
        const line = lineOf(oil.phase, oil.material);
        expect(Math.round(left.mass / 1e-6) + Math.round(keptBack.mass / 1e-6), name).toBe(
          Math.round((line?.mass ?? 0) / 1e-6),
        );
        expect(keptBack.mass).toBeGreaterThanOrEqual(
          (plan.particles.find((one) => one.material === material)?.wettingOil ?? Number.NaN) - 1e-12,
        );
        expect(total).toBeCloseTo(keptBack.mass + (lineOf(phase, material)?.mass ?? Number.NaN), 12);
      }
      const sum = (masses: readonly (number | undefined)[]): number =>
        masses.reduce<number>((all, one = 0) => all + one, 0);
      const done = plan.timeline.map((step) => withPastes(plan, step).massCharged);
      expect(sum(done), name).toBeCloseTo(sum(plan.timeline.map(({ massCharged }) => massCharged)), 12);
    }
  });

  test("has a row of its own before the step that it goes in at, with the mask at the powder", () => {
    const rows = toMarkdown({ plan: runPlan(exampleJob()) }).split("\n");
    const at = rows.findIndex((row) => row.startsWith("|  | Make the paste: "));
    expect(rows[at]).toContain("Mask and extraction on | before 2:54 |");
    expect(rows[at + 1]).toMatch(/^\| 8 \| Stir in phase C/);
    expect(rows[at + 1]).not.toContain("Mask");
    expect(rows.find((row) => row.startsWith("| C | pearl"))).toContain("(dust: mask and extraction on)");
  });

  test("is left to the operator where no single line of oil can give it", () => {
    const inParts = runPlan(
      changed(exampleJob(), ({ process }) => {
        const at = process.steps.findIndex(({ phase }: { phase?: string }) => phase === "B");
        process.steps.splice(at, 1, { ...process.steps[at], mass: "2.5 kg" }, process.steps[at]);
        process.steps[0].equalAdditions = 2;
      }),
    );
    expect(inParts.pastes).toBeUndefined();
    expect(toMarkdown({ plan: inParts })).toContain("- Keep back at least 153 g of the oil");
  });
});

describe("limits in the step", () => {
  const hot = runPlan(exampleJob());

  test("name the temperatures between which particles and fragrance go in", () => {
    const [, , , , , , , charge] = hot.timeline;
    const { min = Number.NaN, max } = charge ? chargingBetween(hot, charge) : {};
    const [particle] = hot.particles;
    expect(min).toBeGreaterThanOrEqual(particle?.window?.temperatureMin ?? Number.NaN);
    expect(min).toBeLessThan((particle?.window?.temperatureMin ?? Number.NaN) + 0.1);
    // The window closes at 62.8 °C, the fragrance stands 62 °C.
    expect(max).toBe(62);
    expect(instruction(hot, 8)).toContain("only between 57.1 °C and 62 °C");
    expect(instruction(hot, 6)).not.toContain("only");
  });

  test("name the end of filling, and where the heater has to stop", () => {
    expect(fillingMin(hot)).toBe(57);
    expect(instruction(hot, 10)).toContain("Stop when the vessel is cooler than 57 °C, and set the rest aside");
    // At 85 °C the wall is up to 104.2 °C: at 100.8 °C it would reach 30 K below the flash point of 150 °C.
    const heating = hot.timeline[1];
    expect(heating && neverAbove(hot, heating)).toBe(100);
    expect(instruction(hot, 2)).toMatch(/^Heat to 85 °C .*, never above 100 °C/);
    const noWall = runPlan(changed(exampleJob(), ({ vessel }) => delete vessel.heatedWall));
    expect(instruction(noWall, 2)).not.toContain("never above");
  });

  test("stand there only if they are certain: without a pack it is not known how far particles settle in it", () => {
    const limitsOf = (change: (draft: Draft) => void) =>
      runPlan(changed(exampleJob(), change)).stepLimits.find(({ step }) => step === 8) ?? {};
    const cool = ({ formula }: Draft) => delete formula.materials.fragrance.limits.temperatureMax;
    expect(limitsOf(cool)).toMatchObject({
      temperatureMin: expect.closeTo(57, 0),
      temperatureMax: expect.closeTo(62.8, 1),
    });
    const open = limitsOf((draft) => {
      cool(draft);
      delete draft.pack;
    });
    expect(open).toHaveProperty("temperatureMin");
    expect(open).not.toHaveProperty("temperatureMax");
  });

  test("stop the filling no warmer than it can still be poured", () => {
    const stiff = runPlan(
      changed(exampleJob(), ({ bench }) => Object.assign(bench, { pourableViscosityMax: "5 Pa·s" })),
    );
    expect(stiff.fillingLimits?.temperatureMin).toBeGreaterThan(57.5);
    const cold = runPlan(coldJob());
    expect(cold).not.toHaveProperty("fillingLimits");
    expect(instruction(cold, 8)).not.toContain("Stop when");
  });

  test("have the air let back in, the stirrer locked out and the second sign of thickness where they are needed", () => {
    const cold = runPlan(coldJob());
    expect(instruction(cold, 7)).toContain("let the air back in slowly, and open only when");
    expect(instruction(cold, 4)).toContain("Lock the stirrer out before anyone reaches in");
    expect(instruction(hot, 7)).toContain("the stirrer then takes about 14 W, 3.2 N·m");
    expect(instruction(hot, 3)).toContain("stirrer off (the process plans no stirring here)");
  });

  test("have a box for what a look shows", () => {
    expect(instruction(runPlan(coldJob()), 5)).toContain(
      "as clear as the bench's (☐ clear ☐ not clear). If it is not, ask",
    );
    const looked = changed(exampleJob(), ({ process }) =>
      process.steps.splice(3, 0, { do: "check", what: "the melt", expect: "clear" }),
    );
    expect(instruction(runPlan(looked), 4)).toContain(
      "It must be clear. (☐ right ☐ not right) If it is not right, ask",
    );
  });

  test("have the heater turned down for a hold, a decision where something is open, and the rules of a second oil", () => {
    expect(instruction(hot, 3)).toContain("Turn the heat down and hold at 85 °C for 15 min");
    const decision = "Owner of the formula: ☐ may start ☐ do not start, name:";
    expect(toMarkdown({ plan: hot })).toContain(decision);
    const settled = { ...hot, answers: hot.answers.filter(({ verdict }) => verdict === "met"), notes: [] };
    expect(toMarkdown({ plan: settled })).not.toContain(decision);
    const [, two] = plans.find(([name]) => name === "two-oils-in-three-lots") ?? [];
    expect(two && toMarkdown({ plan: two })).toContain("Add as described under phase B.");
    expect(toMarkdown({ plan: hot })).not.toContain("as described under");
  });

  test("have a row for what stays in the vessel where no loss is planned", () => {
    const row = "Left in the vessel and the filler";
    expect(toMarkdown({ plan: hot })).not.toContain(row);
    expect(toMarkdown({ plan: { ...hot, allowances: [] } })).toContain(row);
  });

  test("the lowest flash point stands in the caution", () => {
    expect(toMarkdown({ plan: hot })).toContain(
      "below the flash point of everything in it (the lowest stated: 92 °C, fragrance)",
    );
  });
});
