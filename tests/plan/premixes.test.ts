import fc from "fast-check";
import { readFormula } from "gelwright/formula";
import { type JobDocument, prepareJob, runPlan, runPrepared } from "gelwright/plan";
import { describe, expect, it, test } from "vitest";
import { known } from "../support/answers.js";
import { between } from "../support/between.js";
import { changed, type Draft, exampleJob } from "../support/example.js";
import { jobsByName } from "./jobs/jobs.js";

/** The kettle of the example with its pearl wetted in almond oil beforehand; of phase B some almond oil goes in by itself. */
function wetted(share = 40, change: (draft: Draft) => void = () => {}): JobDocument {
  return changed(exampleJob(), (draft) => {
    const { formula } = draft;
    const c = formula.phases.find(({ name }: Draft) => name === "C");
    const pearl = c.lines.find(({ material }: Draft) => material === "pearl");
    formula.premixes = {
      wetted: {
        name: "pearl, wetted",
        lines: [
          { material: "pearl", amount: `${share} %` },
          { material: "almond", amount: "q.s." },
        ],
      },
    };
    c.lines = [
      ...c.lines.filter((line: Draft) => line !== pearl),
      { material: "wetted", amount: "2 %" },
      { material: "almond", amount: "1 %" },
    ];
    change(draft);
  });
}

const sum = (masses: readonly number[]): number => masses.reduce((total, mass) => total + mass, 0);

describe("a premix that is made beforehand", () => {
  it("is named, with what goes into it", () => {
    const { weighing } = runPlan(wetted());
    const [premix] = weighing.premixes;
    expect([premix?.premix, premix?.name, premix?.phase]).toEqual(["wetted", "pearl, wetted", "C"]);
    const line = (material: string) =>
      known(weighing.lines.find((one) => one.phase === "C" && one.material === material)).mass;
    const part = (material: string) => known(premix?.lines.find((one) => one.material === material)).mass;
    // All pearl goes into it; of the almond oil of phase C 1.2 of 2.2.
    expect(part("pearl")).toBe(line("pearl"));
    expect(part("almond") / line("almond")).toBeCloseTo(1.2 / 2.2, 3);
    expect(premix?.total).toBeCloseTo(part("pearl") + part("almond"), 12);
    expect(runPlan(exampleJob()).weighing.premixes).toEqual([]);
  });

  it("never takes more of a line than is weighed, in whole steps of its balance", () => {
    const prepared = (share: number) =>
      prepareJob(
        wetted(share, ({ formula }) => {
          // Two premixes share the almond oil of the phase, and a third is made of them.
          formula.premixes.oily = { name: "oily", lines: [{ material: "almond", amount: "100 %" }] };
          formula.premixes.both = {
            name: "both",
            lines: [
              { material: "wetted", amount: "60 %" },
              { material: "oily", amount: "q.s." },
            ],
          };
          const c = formula.phases.find(({ name }: Draft) => name === "C");
          c.lines.find(({ material }: Draft) => material === "wetted").material = "both";
        }),
      );
    fc.assert(
      fc.property(between(5, 95), between(20, 30), (share, value) => {
        const changes = [{ change: "delivered", value }] as const;
        const { weighing } = runPrepared({ prepared: prepared(share), changes });
        expect(weighing.premixes.map(({ premix }) => premix)).toEqual(["wetted", "oily", "both"]);
        for (const line of weighing.lines.filter(({ phase }) => phase === "C")) {
          const steps = weighing.premixes.flatMap(({ lines }) =>
            lines.filter(({ material }) => material === line.material).map(({ mass }) => mass / line.increment),
          );
          for (const one of steps) expect(one).toBeCloseTo(Math.round(one), 6);
          expect(sum(steps)).toBeLessThanOrEqual(line.mass / line.increment + 1e-6);
        }
        const [first, second, third] = weighing.premixes;
        // What is made of premixes alone is as heavy as they are.
        expect(known(third).premixes.map(({ premix }) => premix)).toEqual(["wetted", "oily"]);
        expect(known(third).total).toBeCloseTo(known(first).total + known(second).total, 9);
      }),
      { numRuns: 10 },
    );
  });

  it("is weighed by itself, on the balance that suits it, and what is left of a line is weighed for the vessel", () => {
    const lots = runPlan(jobsByName()["several-lots-in-a-day"]).weighing;
    const oil = known(lots.lines.find(({ phase, material }) => phase === "A" && material === "triglyceride"));
    const inStock = known(lots.premixes[0]?.lines.find(({ material }) => material === "triglyceride"));
    // The floor scale shows 10 g and weighs nothing below 4 kg; the bench scale shows 1 g.
    expect([oil.balance, oil.left?.balance, inStock.weighing?.balance]).toEqual([
      "floor scale",
      "floor scale",
      "bench scale",
    ]);
    const job = wetted();
    const { balances } = job.batch;
    fc.assert(
      fc.property(between(5, 95), between(20, 30), (share, value) => {
        const changes = [{ change: "delivered", value }] as const;
        const { weighing } = runPrepared({ prepared: prepareJob(wetted(share)), changes });
        for (const line of weighing.lines) {
          const apart = weighing.premixes.flatMap(({ phase, lines }) =>
            lines.filter(({ material }) => phase === line.phase && material === line.material),
          );
          const weighings = [...apart.map((one) => known(one.weighing)), ...(line.left ? [line.left] : [])];
          if (apart.length === 0) expect(line.left).toBeUndefined();
          else expect(sum(weighings.map(({ mass }) => mass))).toBeCloseTo(line.mass, 9);
          for (const one of weighings) {
            expect(one.tolerance.min).toBeLessThanOrEqual(one.mass);
            expect(one.tolerance.max).toBeGreaterThanOrEqual(one.mass);
            const balance = known(balances.find(({ name }) => name === one.balance));
            expect(one.increment).toBeLessThanOrEqual(line.increment);
            expect(balance.increment).toBeDefined();
          }
        }
      }),
      { numRuns: 10 },
    );
  });

  it("is weighed with the whole line where that goes in portions", () => {
    const portions = changed(wetted(), ({ batch }) => {
      for (const balance of batch.balances) balance.capacity = "200 g";
      batch.balances.length = 1;
    });
    const { lines, premixes } = runPlan(portions).weighing;
    const line = known(lines.find(({ phase, material }) => phase === "C" && material === "almond"));
    expect(line.portions.length).toBeGreaterThan(1);
    expect(line.left).toBeUndefined();
    expect(premixes[0]?.lines.every(({ weighing }) => weighing === undefined)).toBe(true);
  });

  it("is that of one lot", () => {
    const { weighing, lots } = runPlan(wetted(40, ({ batch }) => (batch.lots = 2)));
    const whole = runPlan(wetted()).weighing;
    expect(lots.count).toBe(2);
    const inTwo = 2 * known(weighing.premixes[0]).total;
    // Each lot makes up for its own losses.
    expect(inTwo / known(whole.premixes[0]).total).toBeGreaterThan(1);
    expect(inTwo / known(whole.premixes[0]).total).toBeLessThan(1.02);
  });

  it("stays with what is weighed where another dose is asked for", () => {
    const prepared = prepareJob(
      changed(exampleJob(), ({ formula }) => {
        const a = formula.phases[0];
        const [first] = a.lines.filter(({ amount }: Draft) => amount !== "q.s.");
        formula.premixes = { stock: { name: "stock", lines: [{ material: first.material, amount: "100 %" }] } };
        first.material = "stock";
      }),
    );
    const { premixes, lines } = runPrepared({ prepared }).weighing;
    const [premix] = premixes;
    const material = known(premix?.lines[0]).material;
    expect(premix?.total).toBe(lines.find((line) => line.material === material)?.mass);
    const changes = [{ change: "dose", material, value: 0.05 }] as const;
    const other = runPrepared({ prepared, changes }).weighing;
    expect(other.premixes[0]?.total).toBe(other.lines.find((line) => line.material === material)?.mass);
  });

  test("the formula has them phase by phase, without those that nothing uses", () => {
    const { premixes } = readFormula({
      version: 1,
      name: "two phases",
      materials: { oil: { name: "oil", function: "oil" }, wax: { name: "wax", function: "gel former" } },
      premixes: {
        stock: {
          name: "stock",
          lines: [
            { material: "oil", amount: "1 part" },
            { material: "wax", amount: "1 part" },
          ],
        },
        idle: { name: "idle", lines: [{ material: "oil", amount: "100 %" }] },
      },
      phases: [
        {
          name: "A",
          lines: [
            { material: "stock", amount: "20 %" },
            { material: "oil", amount: "q.s." },
          ],
        },
        { name: "B", lines: [{ material: "stock", amount: "10 %" }] },
      ],
    });
    expect(premixes?.map(({ key, phase }) => [key, phase])).toEqual([
      ["stock", "A"],
      ["stock", "B"],
    ]);
    const [a, b] = known(premixes);
    // In A 10 of 80 parts of oil and all of the wax; in B all of both.
    expect(a?.lines.map(({ shareOfLine }) => shareOfLine)).toEqual([expect.closeTo(0.125, 12), 1]);
    expect(b?.lines.map(({ shareOfLine }) => shareOfLine)).toEqual([1, 1]);
  });
});
