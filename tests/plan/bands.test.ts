import type { JobDocument } from "gelwright/plan";
import { describe, expect, test } from "vitest";
import { type Answer, answerOf, figureOf, known } from "../support/answers.js";
import { changed, coldJob, type Draft } from "../support/example.js";
import { jobsByName } from "./jobs/jobs.js";

// A question widens its figure by how sure its own laws are: met above all of it, not met below all of it.

const cold = coldJob();

/** The cold job with the expansion of every material stated: one that is not would widen figures too. */
const expanding = changed(cold, ({ formula }) => {
  for (const { density } of Object.values<Draft>(formula.materials)) if (density) density.fallPerKelvin ??= "0.6 kg/m³";
});

const endsOf = ({ figure: { min, max } }: Answer): readonly [number, number] => [known(min), known(max)];

/** The cold job with its stirrer described further. */
const stirredBy = (stirrer: object): JobDocument =>
  changed(cold, (draft) => Object.assign(draft.vessel.stirrer, stirrer));

describe("a motor is asked at every end of what is published of its stirrer", () => {
  // The anchor's range: 140 to 375 in creeping flow, 0.25 to 0.5 in turbulent, a shear constant of 12 to 30.
  const lightest = { laminarPowerConstant: 140, powerNumber: 0.25, metznerOttoConstant: 30 };
  const heaviest = { laminarPowerConstant: 375, powerNumber: 0.5, metznerOttoConstant: 12 };

  test.each(["motor-power", "motor-torque"] as const)("%s lies between its lightest and its heaviest", (id) => {
    const [min, max] = endsOf(answerOf(cold, id));
    expect(min).toBeLessThan(0.6 * figureOf(answerOf(cold, id)));
    expect(answerOf(stirredBy(heaviest), id).figure).toMatchObject({ max: expect.closeTo(max, 9) });
    expect(answerOf(stirredBy(lightest), id).figure).toMatchObject({ min: expect.closeTo(min, 9) });
  });

  test("one that was measured on the stirrer has no band of ours", () => {
    const [min, max] = endsOf(answerOf(stirredBy(heaviest), "motor-power"));
    expect(min).toBe(max);
  });

  test("the motor does just above the upper end and a quarter, and does not just below the lower one", () => {
    const [min, max] = endsOf(answerOf(cold, "motor-power"));
    const verdictOf = (power: number) =>
      answerOf(stirredBy({ motor: { power: `${1.25 * power} W`, efficiency: 1 } }), "motor-power").verdict;
    expect([1.001 * max, 0.999 * max, 1.001 * min, 0.999 * min].map(verdictOf)).toEqual([
      "met",
      "not-known",
      "not-known",
      "not-met",
    ]);
  });
});

test("a cavern is asked at every end of what is published of stirrer and cavern", () => {
  const propelled = (constants: object) =>
    answerOf(
      changed(cold, (draft) => {
        draft.vessel.stirrer = {
          kind: "propeller",
          diameter: "200 mm",
          speed: "60 rpm",
          topEdge: "60 mm",
          ...constants,
        };
        draft.process.steps.splice(3, 0, { do: "stir", for: "10 min", speed: "300 rpm" });
      }),
      "gel-moves-at-wall",
      { step: 4 },
    );
  const [min, max] = endsOf(propelled({}));
  const weak = { laminarPowerConstant: 37, powerNumber: 0.3, metznerOttoConstant: 12 };
  const strong = { laminarPowerConstant: 45, powerNumber: 0.37, metznerOttoConstant: 8 };
  expect(endsOf(propelled(weak))[0]).toBeCloseTo(min, 12);
  expect(endsOf(propelled(strong))[1]).toBeCloseTo(max, 12);
  // With the power as it is, from a cavern of 0.75 of its width to one of 0.4 (Elson).
  const [high, low] = endsOf(propelled(weak));
  expect(low / high).toBeCloseTo(Math.cbrt((0.75 + 1 / 3) / (0.4 + 1 / 3)), 9);
});

test("a blend time is met above its band, and not met below it", () => {
  const job = known(jobsByName()["jacket-with-skin"]);
  const stirredFor = (time: number) =>
    answerOf(
      changed(job, (draft) => Object.assign(draft.process.steps[5], { for: `${time} s` })),
      "blended",
      { step: 6 },
    );
  const { figure } = stirredFor(180);
  // In the transition two standard deviations are 35 %, and the power of its blades, of which a fifth is open, counts to -2/3.
  expect(known(figure.min) / known(figure.value)).toBeCloseTo(0.65 * 1.2 ** (-2 / 3), 6);
  expect(known(figure.max) / known(figure.value)).toBeCloseTo(1.35 * 0.8 ** (-2 / 3), 6);
  // A step of another length ends at another temperature, and with another viscosity.
  const at = (end: "min" | "max"): number =>
    [1, 2, 3, 4].reduce((time) => known(stirredFor(time).figure[end]), known(figure[end]));
  const verdictOf = (time: number) => stirredFor(time).verdict;
  const [low, high] = [at("min"), at("max")];
  expect([1.001 * high, 0.999 * high, 1.001 * low, 0.999 * low].map(verdictOf)).toEqual([
    "met",
    "not-known",
    "not-known",
    "not-met",
  ]);
});

describe("clarity is asked with what the index of glycerin and water may be off", () => {
  const allowing = (mismatchAllowed: number, change: (draft: Draft) => void = () => {}) =>
    answerOf(
      changed(expanding, (draft) => {
        draft.bench.emulsion.mismatchAllowed = mismatchAllowed;
        draft.formula.phases[0].lines[0].amount = "15 %";
        draft.formula.phases[0].lines[1].amount = "3.7 %";
        change(draft);
      }),
      "clarity-match",
    );

  test("by 0.0006: met just above, and not met just below", () => {
    const value = figureOf(allowing(0.001));
    expect(value).toBeGreaterThan(0.0006);
    const ends = [value + 0.0006001, value + 0.0005999, value - 0.0005999, value - 0.0006001];
    expect(ends.map((end) => allowing(end).verdict)).toEqual(["met", "not-known", "not-known", "not-met"]);
  });

  test("and one that was measured is off by nothing", () => {
    const { figure } = allowing(0.001, (draft) => {
      draft.bench.emulsion.gelFormerIndex = { value: 1.45, at: "21 °C" };
    });
    expect(figure.min).toBe(figure.max);
  });
});

test("surfactant covers the smallest droplets that shear may have made", () => {
  const sheared = (areaPerGram: number) =>
    answerOf(
      changed(expanding, (draft) => {
        delete draft.bench.emulsion.dropletDiameter;
        draft.bench.emulsion.shear = { rate: "200 1/s", viscosityOil: "30 mPa·s", viscosityEmulsion: "1 Pa·s" };
        draft.bench.emulsion.surfactant.areaPerGram = `${areaPerGram} m²`;
      }),
      "surfactant-covers-droplets",
    );
  const { limit, figure } = sheared(500);
  expect(known(limit.min?.max) / known(limit.min?.value)).toBeCloseTo(1 / 0.85, 9);
  expect(known(limit.min?.min) / known(limit.min?.value)).toBeCloseTo(1 / 1.15, 9);
  const covering = (end: "min" | "max") => (500 * known(limit.min?.[end])) / known(figure.value);
  const areas = [1.001 * covering("max"), 0.999 * covering("max"), 1.001 * covering("min"), 0.999 * covering("min")];
  expect(areas.map((area) => sheared(area).verdict)).toEqual(["met", "not-known", "not-known", "not-met"]);
});

test("what the theory of packed droplets lets a gel hold is held at its lower end", () => {
  const grains = (diameter: number) =>
    answerOf(
      changed(cold, (draft) => {
        delete draft.bench.yieldStress;
        for (const reading of draft.bench.emulsion.thickness.readings) delete reading.yieldStress;
        draft.formula.materials.grains.particle.diameter = `${diameter} µm`;
        delete draft.formula.materials.grains.particle.sizes;
      }),
      "particles-stay-suspended",
      { material: "grains" },
    );
  const { figure, limit } = grains(200);
  expect(known(figure.min) / known(figure.value)).toBeCloseTo(0.7, 9);
  expect(known(figure.max) / known(figure.value)).toBeCloseTo(1.7, 9);
  // What holds a grain goes as its diameter, and has ends of its own.
  const heldAt = (end: "min" | "max") => (200 * known(figure[end])) / known(limit.min?.[end === "min" ? "max" : "min"]);
  const sizes = [0.999 * heldAt("min"), 1.001 * heldAt("min"), 0.999 * heldAt("max"), 1.001 * heldAt("max")];
  expect(sizes.map((size) => grains(size).verdict)).toEqual(["met", "not-known", "not-known", "not-met"]);
});

test("a vortex is left out only where the flow creeps at every end", () => {
  const answered = (speed: number, metznerOttoConstant?: number) =>
    answerOf(
      changed(cold, (draft) => {
        draft.vessel.stirrer = {
          kind: "propeller",
          diameter: "200 mm",
          speed: `${speed} rpm`,
          topEdge: "60 mm",
          ...(metznerOttoConstant && { metznerOttoConstant }),
        };
        for (const step of draft.process.steps) if (step.speed) step.speed = `${speed} rpm`;
      }),
      "no-air-down-the-vortex",
    );
  const whirled = (...of: Parameters<typeof answered>) => answered(...of).figure.max;
  let [slow, fast] = [1, 3000];
  while (fast / slow > 1.001) {
    const middle = Math.sqrt(slow * fast);
    if (whirled(middle) === 0) slow = middle;
    else fast = middle;
  }
  // The gel is thinnest at the largest constant; with the usual one it would still creep.
  expect([whirled(slow, 12), whirled(fast, 12), whirled(fast, 10)].map((depth) => depth === 0)).toEqual([
    true,
    false,
    true,
  ]);
  // It creeps below a Reynolds number of 300.
  expect(Number(answered(fast, 12).beside?.["reynolds"]) / 300).toBeCloseTo(1.0005, 2);
});

test("a charge in a cone counts as deep as it is and as high as on a plate, and outside the power curve it is not known", () => {
  const pitched = (diameter: string, bottom?: object) =>
    answerOf(
      changed(cold, (draft) => {
        delete draft.vessel.bottom;
        draft.vessel.stirrer = {
          kind: "pitched-blade turbine",
          diameter,
          speed: "60 rpm",
          topEdge: "60 mm",
          motor: { power: "5 kW" },
        };
        if (bottom) draft.vessel.bottom = bottom;
      }),
      "motor-power",
    );
  const [flat, cone] = [{ shape: "flat" }, { shape: "cone", depth: "300 mm" }].map((one) => pitched("200 mm", one));
  const [low, high] = [endsOf(known(flat)), endsOf(known(cone))];
  // The deeper charge takes more, so that its ends are those of a plate and of the cone; the film on it is another, too.
  expect(Math.abs(high[0] / low[0] - 1)).toBeLessThan(2e-3);
  expect(high[1] / low[1]).toBeGreaterThan(1.008);
  // The curve was found from 0.2 to 0.95 of the vessel's diameter of 520 mm.
  expect([103, 105, 493, 495].map((diameter) => pitched(`${diameter} mm`, { shape: "flat" }).verdict)).toEqual([
    "not-known",
    "met",
    "met",
    "not-known",
  ]);
});

test("a charge that stands lower than the power curve was found for leaves the motor not known, and as high does not", () => {
  const inVessel = (diameter: number) =>
    answerOf(
      changed(cold, ({ vessel }) => {
        vessel.stirrer = {
          kind: "pitched-blade turbine",
          diameter: "200 mm",
          speed: "60 rpm",
          topEdge: "10 mm",
          motor: { power: "5 kW" },
        };
        vessel.workingVolume.min = "0.5 L";
        vessel.diameter = `${diameter} mm`;
      }),
      "motor-power",
    );
  // The curve begins at a tenth of the vessel's diameter, and the gel former of step 2 alone stands so high in 636.4 mm.
  expect(inVessel(636).verdict).toBe("met");
  const beyond = inVessel(637);
  expect(beyond).toMatchObject({ verdict: "not-known", at: { step: 2 } });
  expect(beyond.notKnown).toContainEqual(
    expect.objectContaining({ code: "outside-range", field: "stirrer-power", quantity: "level-to-vessel" }),
  );
  const { value } = known(beyond.notKnown.find(({ quantity }) => quantity === "level-to-vessel"));
  expect(value).toBeLessThan(0.1);
  expect(value).toBeGreaterThan(0.0995);
});
