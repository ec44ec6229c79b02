import { type JobDocument, runPlan } from "gelwright/plan";
import { describe, expect, test } from "vitest";
import { answered, asked, leversOf } from "../../support/asked.js";
import { changed, coldJob, type Draft, exampleJob } from "../../support/example.js";

const vessel = (change: (draft: Draft) => void): JobDocument => changed(coldJob(), change);

describe("the largest oil fraction", () => {
  const id = "maximum-oil-fraction";

  test("is asked of each step that changes how much is in a gel with oil in it", () => {
    // The oil, the grains, and the packs that take it out; what rests, is looked through or de-aerated holds what it held.
    const { states, at } = answered(coldJob(), id);
    expect(states).toEqual({ met: 3, notMet: 0, notKnown: 0 });
    expect(at.step).toBe(3);
  });

  test("is of whoever weighs the oil heavy and the gel former light: above what is planned, and with wider tolerances more so", () => {
    const share = (tolerance: string) => {
      const { figure, beside } = answered(
        vessel(({ batch }) => (batch.weighingTolerance = tolerance)),
        id,
      );
      return (figure.value ?? Number.NaN) - Number(beside?.["planned"]);
    };
    const [narrow, wide] = [share("0.5 %"), share("2 %")];
    expect(narrow).toBeGreaterThan(0);
    expect(wide).toBeGreaterThan(2 * narrow);
    // Of oil and gel former by volume: φ (1 + t)/(φ (1 + t) + (1 − φ)(1 − t)).
    const planned = Number(answered(coldJob(), id).beside?.["planned"]);
    const [more, less] = [planned * 1.02, (1 - planned) * 0.98];
    expect(wide).toBeCloseTo(more / (more + less) - planned, 3);
  });
});

test("the largest oil fraction takes each line at its own tolerance", () => {
  // Both oils on a scale that shows half a kilogram: of the smaller one that is a larger share.
  const job = vessel(({ batch, formula, process }) => {
    Object.assign(batch.balances[2], { increment: "500 g", minimumWeight: "8 kg" });
    process.steps[2].increment = "500 g";
    for (const { density } of Object.values<Draft>(formula.materials)) if (density) density.fallPerKelvin = "0.6 kg/m³";
  });
  const densities: Readonly<Record<string, number>> = {
    ...{ triglyceride: 944.4, sunflower: 917.4, tocopherols: 934.4 },
    ...{ glycerin: 1260, water: 998, surfactant: 1249.4, preservative: 1099.4 },
  };
  const { lines } = runPlan(job).weighing;
  /** Volume of a phase with its lines by some of their masses. */
  const volume = (name: string, massOf: (line: (typeof lines)[number]) => number): number =>
    lines
      .filter(({ phase }) => phase === name)
      .reduce((sum, line) => sum + massOf(line) / (densities[line.material] ?? Number.NaN), 0);
  const { figure, beside } = answered(job, "maximum-oil-fraction");
  const planned = Number(beside?.["planned"]);
  const [oil, more] = [volume("B", ({ mass }) => mass), volume("B", ({ tolerance }) => tolerance.max)];
  const less = (oil * (1 - planned)) / planned - volume("A", ({ mass, tolerance }) => mass - tolerance.min);
  expect(Math.abs(Number(figure.value) - more / (more + less))).toBeLessThan(2e-5);
});

describe("the gel former", () => {
  test("has to cover the impeller once, in the first step that leaves it alone in the vessel", () => {
    // Charged in step 1 and stirred in step 2.
    const found = asked(coldJob(), "gel-former-covers-impeller");
    expect(found.map(({ of, at }) => [of, at])).toEqual([[{ step: 1 }, { step: 1, place: "vessel" }]]);
    const { weighing } = runPlan(coldJob());
    const mass = weighing.lines.filter(({ phase }) => phase === "A").reduce((sum, line) => sum + line.mass, 0);
    const density = mass / (found[0]?.figure.value ?? Number.NaN);
    expect(density).toBeGreaterThan(1200);
    expect(density).toBeLessThan(1260);
  });

  test("is not asked to cover an impeller that is not there, nor where oil lies in the vessel first", () => {
    expect(
      asked(
        vessel((draft) => delete draft.vessel.stirrer),
        "gel-former-covers-impeller",
      ),
    ).toEqual([]);
    const oilFirst = vessel(({ process }) => {
      process.steps = [
        { do: "charge", phase: "B" },
        { do: "charge", phase: "A" },
        { do: "charge", phase: "C" },
        { do: "fill" },
      ];
    });
    expect(asked(oilFirst, "gel-former-covers-impeller")).toEqual([]);
    expect(asked(exampleJob(), "gel-former-covers-impeller")).toEqual([]);
  });
});

test("more surfactant can be taken as far as the carrier gives way", () => {
  const { formula } = coldJob();
  expect(Object.keys(formula.materials)).toContain("surfactant");
  const [lever] = leversOf(coldJob(), "surfactant-covers-droplets");
  // 20.2 % of gel former, 30 % of the other oil, 0.1 % at 70 % of antioxidant and 3 % of grains stay.
  const carrier = 1 - 0.202 - 0.3 - 0.001 / 0.7 - 0.03;
  expect(lever).toEqual(["more-surfactant", 0.012, expect.closeTo(0.012 + carrier, 9), { material: "surfactant" }]);
  const none = vessel(({ bench }) => delete bench.emulsion.surfactant);
  expect(leversOf(none, "surfactant-covers-droplets")).toEqual([]);
});

test("the water activity is that below which microbiological risk is low only if it lies below, not on it", () => {
  expect(answered(coldJob(), "water-activity")).toMatchObject({
    limit: { max: { value: 0.75 } },
    margin: { max: 1e-9 },
  });
});
