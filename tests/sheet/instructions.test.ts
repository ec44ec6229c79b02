import fc from "fast-check";
import { type Plan, type PlanStep, runPlan } from "gelwright/plan";
import { toMarkdown } from "gelwright/sheet";
import { describe, expect, test } from "vitest";
import { instructionOf } from "../../src/sheet/doing.js";
import { withPastes } from "../../src/sheet/pastes.js";
import { isPremixed } from "../../src/sheet/premixes.js";
import type { Sheet } from "../../src/sheet/render.js";
import { plansByName } from "../plan/jobs/plans.js";
import { changed, coldJob, exampleJob } from "../support/example.js";
import { sheetOf } from "./sheet-of.js";

const plans = plansByName().map(([name, { plan }]) => [name, plan] as const);

/** What an instruction has to name, so that somebody who has only the sheet can do the step. */
function namesOf({ plan, say }: Sheet, step: PlanStep): readonly string[] {
  const document = step.step as PlanStep["step"] & Readonly<Record<string, unknown>>;
  const stated = <T>(value: unknown, write: (value: T) => string): readonly string[] =>
    value === undefined ? [] : [write(value as T)];
  const lines =
    step.massCharged === undefined ? [] : plan.weighing.lines.filter(({ phase }) => phase === document["phase"]);
  return [
    ...stated<number>(document["to"], (to) => say.celsius(to)),
    ...stated<number>(document["at"], (at) => say.celsius(at)),
    ...stated<number>(document["for"], say.duration),
    ...stated<number>(document["within"], say.duration),
    ...stated<number>(document["pressure"], (pressure) => say.millibars(pressure)),
    ...stated<number>(document["toViscosity"], (viscosity) => say.pascalSeconds(viscosity)),
    ...stated<number>(document["jacketAt"], (at) => say.celsius(at)),
    ...stated<number>(document["packsPerMinute"], (rate) => say.number(rate)),
    ...(document["with"] === "jacket" ? ["jacket", say.celsius(step.temperatureCoolant)] : []),
    // A speed that follows the oil is named with the oil from which each counts.
    ...(step.speed === undefined || "speeds" in document ? [] : [say.rpm(step.speed)]),
    ...lines
      .filter(({ phase, material }) => !isPremixed(plan, phase, material))
      .map(({ material }) => say.material(material)),
    ...(step.part === undefined ? plan.weighing.premixes : [])
      .filter(({ phase, premix: key }) => phase === document["phase"] && !isInAnother(plan, key))
      .map(({ name }) => `premix ${name}`),
    ...(step.massCharged === undefined ? [] : [say.kilograms(withPastes(plan, step).massCharged)]),
    ...(document.do === "heat" ? ["heater full on"] : []),
    ...(document.note === undefined ? [] : [document.note]),
  ];
}

/** Whether a premix goes into another one. */
function isInAnother({ weighing }: Plan, key: string): boolean {
  return weighing.premixes.some(({ premixes }) => premixes.some(({ premix }) => premix === key));
}

/** A verb at its beginning, which somebody can do. */
const verbs: { readonly [Do in PlanStep["step"]["do"]]: RegExp } = {
  charge: /^(Charge|Stir in) /,
  heat: /^Heat to /,
  hold: /^(Turn the heat down and hold at \d+ °C|Hold ((on|off) the heat|with the jacket)) /,
  "take off the heat": /^Take the vessel off the heat/,
  cool: /^(Let cool|Cool through the jacket)/,
  check: /^Check /,
  stir: /^Stir for /,
  add: /^Stir in /,
  "match clarity": /^Look through a sample /,
  "de-aerate": /^De-aerate for /,
  fill: /^Fill the packs/,
  rest: /^(Let the packs rest|Stop the stirrer and let the charge rest) for /,
};

describe.each(plans)("every instruction of %s", (_name, plan) => {
  const sheet = sheetOf(plan);
  const isStirred = plan.timeline.some(({ speed }) => speed !== undefined);

  test("begins with what to do, and names all that it takes", () => {
    for (const step of plan.timeline) {
      const text = instructionOf(sheet, step);
      expect(text).toMatch(verbs[step.step.do]);
      for (const name of namesOf(sheet, step)) expect(text, `step ${step.number}`).toContain(name);
      expect(text).not.toMatch(/not known|undefined|NaN/);
    }
  });

  test("charges in all what the step takes, whether alone, as a paste or as a premix", () => {
    for (const step of plan.timeline) {
      if (step.massCharged === undefined) continue;
      const [, materials = ""] = instructionOf(sheet, step).split(/(?<=\)[^:]*|additions\)): /);
      const masses = [...materials.matchAll(/(?:^|\+ )(\d[\d.]*) (k?g) /g)].map(
        ([, mass, unit]) => Number(mass) / (unit === "g" ? 1000 : 1),
      );
      expect(masses.length, `step ${step.number}: ${materials}`).toBeGreaterThan(0);
      const sum = masses.reduce((all, mass) => all + mass, 0);
      const coarsest = Math.max(...plan.weighing.lines.map(({ increment }) => increment));
      expect(Math.abs(sum - (withPastes(plan, step).massCharged ?? 0)), `step ${step.number}`).toBeLessThan(
        coarsest * masses.length,
      );
    }
  });

  test("says whether the stirrer turns, where it could be doubted", () => {
    for (const step of plan.timeline) {
      const isDoubtful = ["hold", "fill", "heat", "cool", "de-aerate"].includes(step.step.do);
      if (!isStirred || !isDoubtful) continue;
      expect(instructionOf(sheet, step), `step ${step.number}`).toMatch(/ rpm|stirrer off|without stirring/);
    }
  });
});

test("masses of the materials in the steps of a phase add up to what is weighed of it", () => {
  for (const [name, plan] of plans) {
    const phases = [...new Set(plan.weighing.lines.map(({ phase }) => phase))];
    for (const phase of phases) {
      const steps = plan.timeline.filter(
        ({ step, massCharged }) => massCharged !== undefined && "phase" in step && step.phase === phase,
      );
      const charged = steps.reduce((sum, { massCharged = 0 }) => sum + massCharged, 0);
      const weighed = plan.weighing.lines
        .filter((line) => line.phase === phase)
        .reduce((sum, { mass }) => sum + mass, 0);
      if (steps.length > 0) expect(Math.abs(charged - weighed), `${name}, phase ${phase}`).toBeLessThan(1e-9 * weighed);
    }
  }
});

test("a premix and the parts of a phase are weighed as the plan has them", () => {
  const job = changed(exampleJob(), ({ formula, process }) => {
    formula.premixes = {
      slurry: {
        name: "pearl slurry",
        lines: [
          { material: "pearl", amount: "40 %" },
          { material: "almond", amount: "q.s." },
        ],
      },
    };
    const c = formula.phases.find(({ name }: { name: string }) => name === "C");
    c.lines = [
      ...c.lines.filter(({ material }: { material: string }) => material !== "pearl"),
      { material: "slurry", amount: "2 %" },
    ];
    const at = process.steps.findIndex(({ phase }: { phase?: string }) => phase === "B");
    process.steps.splice(at, 1, { ...process.steps[at], mass: "2.5 kg" }, process.steps[at]);
  });
  const plan = runPlan(job);
  const sheet = toMarkdown({ plan });
  const [premix] = plan.weighing.premixes;
  expect(premix?.lines).toHaveLength(2);
  const almond = premix?.lines.find(({ material }) => material === "almond");
  const written = sheet.split("\n").find((line) => line.includes("Make the premix pearl slurry for phase C"));
  expect(written).toMatch(/Mask and extraction on\.$/);
  const rows = sheet.split("\n").filter((line) => line.startsWith("| C |"));
  expect(rows.slice(0, 3).map((row) => row.split(" | ")[1])).toEqual([
    "fragrance",
    "pearl pigment (mica), 10 to 60 µm (dust: mask and extraction on), for the premix pearl slurry",
    "sweet almond oil, for the premix pearl slurry",
  ]);
  const charged = sheet.split("\n").find((line) => /^\| \d+ \| Stir in phase C/.test(line));
  expect(charged).toContain("g premix pearl slurry");
  expect(charged).not.toContain("mica");
  expect(charged).not.toContain("Mask");
  expect(written).toContain("sweet almond oil");
  expect(written).toContain(`${((almond?.mass ?? 0) * 1000).toFixed(2)} g`);
  const parts = plan.timeline.filter(({ part }) => part !== undefined);
  expect(parts).toHaveLength(2);
  expect(instructionOf(sheetOf(plan), parts[0] as PlanStep)).toContain("2.500 kg sweet almond oil");
});

/** Grams of a mass as it is written. */
function grams(text: string): number {
  const [, number, unit] = /^(-?[\d.]+) (kg|g)$/.exec(text) ?? [];
  expect(unit, text).toBeDefined();
  return Number(number) * (unit === "kg" ? 1000 : 1);
}

/** The masses of the reconciliation as the sheet of a plan has them [g]: what was weighed in, then where it is found. */
function reconciled(plan: Plan): readonly [number, ...number[]] {
  const [, after = ""] = toMarkdown({ plan }).split("## Yield and reconciliation");
  const rows = [...(after.split("\n\n")[1]?.matchAll(/^\| ([^|]+) \| ([^|]+) \|/gm) ?? [])].slice(1);
  const [weighed = Number.NaN, ...found] = rows
    .filter(([, where]) => !where?.startsWith("Yield"))
    .map(([, , mass = ""]) => grams(mass));
  return [weighed, ...found];
}

describe("mass from stock to packs", () => {
  /** In whole numbers of the finest increment of the balances, so that nothing is lost to doubles. */
  const whole = (mass: number, increment: number): number => Math.round(mass / increment);

  const jobs = fc.record({
    isCold: fc.boolean(),
    packs: fc.integer({ min: 3, max: 4000 }),
    lots: fc.integer({ min: 1, max: 4 }),
    capacity: fc.constantFrom("1.2 kg", "6 kg", "16 kg", "300 kg"),
  });

  test("balances to the last digit of the balance, in portions, lines and lots, and with the losses", () => {
    const counts = new Set<number>();
    fc.assert(
      fc.property(jobs, ({ isCold, packs, lots: times, capacity }) => {
        const job = changed(isCold ? coldJob() : exampleJob(), (draft) => {
          const { packs: asked } = draft.batch.target;
          draft.batch.target.packs = Math.round(times * (0.55 * asked + (packs / 4000) * asked));
          draft.batch.balances.at(-1).capacity = capacity;
        });
        const plan = planOrNothing(job);
        if (!plan) return;
        const { weighing, lots, allowances } = plan;
        const finest = Math.min(...weighing.lines.map(({ increment }) => increment));
        for (const { mass, increment, portions } of weighing.lines) {
          expect(portions.reduce((sum, portion) => sum + whole(portion, increment), 0)).toBe(whole(mass, increment));
          expect(Math.abs(whole(mass, increment) * increment - mass)).toBeLessThan(1e-9 * mass);
        }
        const sum = weighing.lines.reduce((all, { mass }) => all + whole(mass, finest), 0);
        expect(sum).toBe(whole(weighing.total, finest));
        expect(whole(lots.charge, finest)).toBe(sum);
        const lost = allowances.reduce((all, { mass }) => all + mass, 0);
        // Losses are those of what is weighed: what is left of it is delivered.
        expect(Math.abs(lost + lots.delivered - lots.charge)).toBeLessThan(1e-12 * lots.charge);
        // The packs asked for are whole in each lot, and what a lot delivers fills them.
        const { packs: inLot = Number.NaN } = lots;
        const { packs: asked } = job.batch.target as { readonly packs: number };
        counts.add(lots.count);
        expect(Number.isInteger(inLot)).toBe(true);
        expect(lots.count * inLot).toBeGreaterThanOrEqual(asked);
        expect(lots.count * (inLot - 1)).toBeLessThan(asked);
        expect(lots.delivered).toBeGreaterThanOrEqual(lots.deliveredTarget - 1e-9);
        // As the sheet writes them they add up, too, to the last digit of the coarsest balance.
        const [weighed, ...found] = reconciled(plan);
        const coarsest = Math.max(...weighing.lines.map(({ increment }) => increment));
        const digits = (mass: number): number => whole(mass / 1000, coarsest);
        expect(digits(weighed)).toBe(whole(weighing.total, coarsest));
        expect(found.reduce((all, mass) => all + digits(mass), 0)).toBe(digits(weighed));
        const { massAimed = 0, packs: filled } = plan.packs ?? {};
        if (!filled) return;
        const inPacks = filled.count * massAimed + filled.massLeft;
        expect(Math.abs(inPacks - lots.count * lots.delivered)).toBeLessThan(1e-9 * inPacks);
      }),
      { numRuns: 25 },
    );
    expect(counts.size).toBeGreaterThan(2);
  });
});

describe("on the sheet of every job", () => {
  test.each(plans)("the masses of the reconciliation of %s add up to what was weighed in", (_name, plan) => {
    const [weighed, ...found] = reconciled(plan);
    expect(found.length).toBeGreaterThanOrEqual(2);
    expect(found.reduce((sum, mass) => sum + mass, 0)).toBeCloseTo(weighed, 4);
    const coarsest = Math.max(...plan.weighing.lines.map(({ increment }) => increment));
    expect(Math.abs(weighed / 1000 - plan.lots.charge)).toBeLessThan(0.500_001 * coarsest);
  });

  test.each(plans)(
    "the packs of %s are no more than its charge fills, and full in time at the rate that is asked",
    (_name, plan) => {
      const sheet = toMarkdown({ plan });
      const [, packs, mass = ""] = /Fill (\d+) packs[^,\n]*, (\S+ k?g) net/.exec(sheet) ?? [];
      if (packs === undefined) return;
      const count = Number(packs);
      expect((count * grams(mass)) / 1000).toBeLessThan(plan.lots.delivered * (1 + 2e-4));
      expect(count).toBeLessThanOrEqual(plan.lots.packs ?? count);
      const [, rate, minutes] =
        /Planned rate: at least ([\d.]+) packs a minute, so that all are full within (\d+) min\./.exec(sheet) ?? [];
      if (rate !== undefined) expect(Number(rate) * Number(minutes)).toBeGreaterThanOrEqual(count);
    },
  );
});

/** The plan of a job; nothing if its balances cannot weigh it. */
function planOrNothing(job: unknown): Plan | undefined {
  try {
    return runPlan(job);
  } catch (error) {
    expect(String(error)).toMatch(/balance/);
    return undefined;
  }
}
