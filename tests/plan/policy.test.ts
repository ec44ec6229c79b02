import { type JobDocument, runPlan } from "gelwright/plan";
import { describe, expect, it } from "vitest";
import { temperatureByDose } from "../../src/plan/by-dose.js";
import { densityOf } from "../../src/plan/contents.js";
import { thickenedBy } from "../../src/plan/oil-laws.js";
import { isBeyondShares } from "../../src/plan/parts/bench-additions.js";
import { readJob } from "../../src/plan/read.js";
import { otherwise } from "../../src/plan/unknown.js";
import { answerOf, figureOf, known } from "../support/answers.js";
import { changed, coldJob, type Draft, exampleJob } from "../support/example.js";

/** Whether a figure is known. */
const isKnown = (find: () => unknown): boolean =>
  otherwise(
    () => {
      find();
      return true;
    },
    () => false,
  );

describe("a preservative without an index in the gel former of the cold route", () => {
  /** The cold route with a share of preservative in its outer phase. */
  const holding = (share: number): JobDocument =>
    changed(coldJob(), ({ formula }: Draft) => {
      const { lines } = formula.phases[0];
      const others = lines.slice(0, 3).reduce((sum: number, { amount }: Draft) => sum + Number.parseFloat(amount), 0);
      lines[3].amount = `${(share * others) / (1 - share)} %`;
    });

  it.each([
    [0.0199, true],
    [0.0201, false],
  ])("counts as traces up to a fiftieth of the phase: at %s of it the index is known: %s", (share, isThere) => {
    const job = holding(share);
    expect((job.formula.materials["preservative"] as Draft).refractiveIndex).toBeUndefined();
    expect(answerOf(job, "clarity-match").figure.value !== undefined).toBe(isThere);
  });
});

describe("a gel that is nearly as warm as the room", () => {
  /** By a stirrer with such a constant in creeping flow, and its power number with it. */
  const stirred = (laminarPowerConstant: number): { readonly gel: number; readonly looked: number } => {
    const plan = runPlan(
      changed(coldJob(), ({ vessel }: Draft) =>
        Object.assign(vessel.stirrer, { laminarPowerConstant, powerNumber: laminarPowerConstant / 800 }),
      ),
    );
    const step = known(plan.timeline.find(({ step: { do: kind } }) => kind === "match clarity"));
    const { beside } = answerOf(plan, "clarity-while-warm");
    return { gel: known(step.temperatureEnd), looked: Number(beside?.["temperature"]) };
  };

  it("is looked at as in the room within half a kelvin, and as warm as it is from there on", () => {
    // Halved until the two are nearer to each other than any thermometer reads.
    let [weak, strong] = [1, 4000];
    for (let i = 0; i < 18; i++) {
      const middle = (weak + strong) / 2;
      if (stirred(middle).gel < 21.5) weak = middle;
      else strong = middle;
    }
    const [within, beyond] = [stirred(weak), stirred(strong)];
    expect(within.gel).toBeCloseTo(21.5, 2);
    expect(beyond.gel).toBeCloseTo(21.5, 2);
    expect(within.looked).toBe(21);
    expect(beyond.looked).toBe(beyond.gel);
  });
});

describe("an oil that is to be spared", () => {
  const heated = (to: string) =>
    runPlan(
      changed(exampleJob(), ({ formula, process }: Draft) => {
        formula.materials.triglyceride.heatSensitive = true;
        process.steps[1].to = to;
        process.steps.splice(4, 1);
      }),
    ).thermalExposures.find(({ material }) => material === "triglyceride");

  it.each([
    ["59.9 °C", false],
    ["60.1 °C", true],
  ])("counts as warm from 60 °C on: heated to %s it was warm: %s", (to, wasWarm) => {
    const { durationAbove } = heated(to) as { readonly durationAbove: number };
    expect(durationAbove > 0).toBe(wasWarm);
  });
});

describe("droplets by their breakup in shear", () => {
  const code = "droplets-packed-closer-than-seen";
  /** The cold route with an amount of glycerin [%], its droplets by shear. */
  const gel = (glycerin: number) => {
    const plan = runPlan(
      changed(coldJob(), ({ formula, bench }: Draft) => {
        formula.phases[0].lines[0].amount = `${glycerin} %`;
        delete bench.emulsion.dropletDiameter;
        bench.emulsion.shear = { rate: "500 1/s", viscosityOil: "0.05 Pa·s", viscosityEmulsion: "1 Pa·s" };
      }),
    );
    return {
      oil: Number(answerOf(plan, "maximum-oil-fraction").beside?.["planned"]),
      assumed: JSON.stringify(plan.emulsion?.gel).includes(code),
    };
  };

  it("were seen up to an oil fraction of 0.7, just below and just above", () => {
    const [dry, wet] = [gel(26).oil, gel(28).oil];
    const amountAt = (oil: number): number => 26 + (2 * (oil - dry)) / (wet - dry);
    const found = [0.699, 0.701].map((oil) => gel(amountAt(oil)));
    expect(found.map(({ oil }) => oil > 0.698 && oil < 0.7)).toEqual([true, false]);
    expect(found.map(({ oil }) => oil > 0.7 && oil < 0.702)).toEqual([false, true]);
    expect(found.map(({ assumed }) => assumed)).toEqual([false, true]);
  });
});

describe("particles in an emulsion", () => {
  it("thicken it up to where they are packed, at 0.64 of the volume, and no method goes further", () => {
    expect(isKnown(() => thickenedBy(0.639))).toBe(true);
    expect(isKnown(() => thickenedBy(0.641))).toBe(false);
  });
});

describe("a dose of gel former just outside those that were measured", () => {
  const { job } = readJob(exampleJob());
  // Measured from 9 to 15 %.
  it.each([
    [0.09 / 1.0199, true],
    [0.09 / 1.0201, false],
    [0.15 / 0.9801, true],
    [0.15 / 0.9799, false],
  ])("counts as measured within a fiftieth of a dose: %s: %s", (dose, isThere) => {
    expect(isKnown(() => temperatureByDose(job.bench, dose, "setsAt"))).toBe(isThere);
  });
});

describe("the oil fraction of an emulsion", () => {
  const planned = figureOf(answerOf(coldJob(), "maximum-oil-fraction"));
  it.each([
    [0.01005, "met"],
    [0.00995, "not-met"],
  ])("keeps 1 % by volume from the maximum where the process states no margin: with %s it is %s", (margin, verdict) => {
    const job = changed(coldJob(), ({ bench, process }: Draft) => {
      delete process.oilFractionMargin;
      bench.emulsion.volumeFractionOilMax = `${100 * (planned + margin)} % v/v`;
    });
    expect(answerOf(job, "maximum-oil-fraction").verdict).toBe(verdict);
  });
});

describe("the water activity of the gel former", () => {
  it.each([
    [0.7499, "met"],
    [0.75, "not-met"],
    [0.7501, "not-met"],
  ])("has to lie below 0.75: %s is %s", (waterActivity, verdict) => {
    const job = changed(coldJob(), ({ bench }: Draft) => Object.assign(bench.emulsion, { waterActivity }));
    expect(answerOf(job, "water-activity").verdict).toBe(verdict);
  });
});

describe("what lacks a density", () => {
  const { job } = readJob(exampleJob());
  const { triglyceride } = job.formula.materials;
  const { density: _, ...without } = known(triglyceride);
  const mixed = (share: number) => [
    { phase: "A", material: known(triglyceride), mass: 1 - share },
    { phase: "A", material: { ...without, key: "pigment" } as never, mass: share },
  ];
  it.each([
    [0.0499, true],
    [0.0501, false],
  ])("may be a twentieth of the mass: at %s the density of the whole is known: %s", (share, isThere) => {
    expect(isKnown(() => densityOf(mixed(share), 20))).toBe(isThere);
  });
});

describe("an addition of the bench", () => {
  const { job } = readJob(coldJob());
  // Without oil the gel former took up 4 % at once.
  it.each([
    [0.04 * 1.0099, false],
    [0.04 * 1.0101, true],
  ])("agrees with its shares within a hundredth of them: %s is beyond: %s", (share, isBeyond) => {
    expect(isBeyondShares(job, 0, share)).toBe(isBeyond);
  });
});
