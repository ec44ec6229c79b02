import {
  cassonRegression,
  fitAndrade,
  fitFlowCurve,
  letDown,
  nozzleFlow,
  relativeReading,
  sweepYieldStresses,
  yieldStresses,
} from "gelwright/rheology";
import { expect, test } from "vitest";
import { refuseUnseen } from "../../src/rheology/unseen.js";

test("the plug of a nozzle is the yield stress over that of the wall, and there is none without a yield stress", () => {
  const at = { diameter: 0.004, flowRate: 2e-6 };
  const gel = nozzleFlow({
    ...at,
    curve: { law: "herschel-bulkley", yieldStress: 20, consistency: 5, flowIndex: 0.5 },
  });
  expect(gel.plug * gel.stressWall).toBeCloseTo(20, 9);
  expect(gel.stressWall).toBeCloseTo(20 + 5 * Math.sqrt(gel.shearRateWall), 9);
  expect(gel.plug).toBeLessThan(1);
  expect(nozzleFlow({ ...at, curve: { law: "newton", viscosity: 3 } }).plug).toBe(0);
});

test("a power law flows through a nozzle as Rabinowitsch has it, and a Newtonian liquid as Poiseuille", () => {
  for (const flowIndex of [0.3, 0.5, 1]) {
    const curve = { law: "power-law", consistency: 4, flowIndex } as const;
    expect(nozzleFlow({ curve, diameter: 0.004, flowRate: 2e-6 }).correction).toBeCloseTo((3 + 1 / flowIndex) / 4, 9);
  }
  const { pressureGradient } = nozzleFlow({ curve: { law: "newton", viscosity: 3 }, diameter: 0.004, flowRate: 2e-6 });
  expect(pressureGradient / ((8 * 3 * 2e-6) / (Math.PI * 0.002 ** 4))).toBeCloseTo(1, 9);
});

const names = ["viscosityZero", "timeConstant", "flowIndex", "viscosityInfinite"];
const unseen = (change: Readonly<Record<string, number>> = {}) => {
  const bend = { viscosityZero: 10, timeConstant: 1, flowIndex: 0.5, viscosityInfinite: 0.1, ...change };
  return () =>
    refuseUnseen(
      "carreau",
      names,
      names.map((name) => bend[name as keyof typeof bend]),
      [0.125, 1, 64],
    );
};

test("a bend is only told of if it lies within the readings, and thins from one plateau to a lower one", () => {
  expect(unseen()).not.toThrow();
  expect(unseen({ timeConstant: 8 })).not.toThrow();
  expect(unseen({ timeConstant: 8.01 })).toThrow("no plateau at rest");
  expect(unseen({ timeConstant: 1 / 64 })).not.toThrow();
  expect(unseen({ timeConstant: 0.99 / 64 })).toThrow("no thinning");
  expect(unseen({ flowIndex: 0.999 })).not.toThrow();
  expect(unseen({ flowIndex: 1 })).toThrow("no thinning");
  expect(unseen({ viscosityInfinite: 10 })).toThrow("no thinning");
  expect(unseen({ viscosityInfinite: 11 })).toThrow("thickening");
  expect(unseen({ viscosityInfinite: 0 })).toThrow("no plateau at high rates");
  expect(unseen({ viscosityZero: -1 })).toThrow("viscosityZero -1");
  expect(() => refuseUnseen("carreau", names, undefined, [0.1, 1])).not.toThrow();
});

test("a yield stress, a consistency or an index of nothing or less is told with the readings that would show one", () => {
  const of = (yieldStress: number, consistency: number, flowIndex: number) => () =>
    refuseUnseen(
      "herschel-bulkley",
      ["yieldStress", "consistency", "flowIndex"],
      [yieldStress, consistency, flowIndex],
      [0.5, 2],
    );
  expect(of(1, 2, 0.5)).not.toThrow();
  // Without a time constant an index above 1 is a thickening gel, which the model may be.
  expect(of(1, 2, 1.2)).not.toThrow();
  expect(of(0, 2, 0.5)).toThrow("readings below 0.5 1/s");
  expect(of(1, -2, 0.5)).toThrow("consistency -2");
  expect(of(1, 2, 0)).toThrow("flowIndex 0");
});

test("conventions of a yield stress are the fits and figures that they name", () => {
  const points = [0.1, 0.5, 1, 5, 20, 100].map((shearRate) => ({
    shearRate,
    stress: (3 + Math.sqrt(0.8 * shearRate)) ** 2,
  }));
  const found = Object.fromEntries(
    yieldStresses({ points }).map((one) => [one.convention, "yieldStress" in one ? one.yieldStress : undefined]),
  );
  expect(found["casson-regression"]).toBe(cassonRegression({ points }).yieldStress);
  expect(found["casson"]).toBeCloseTo(9, 9);
  expect(found["casson-regression"]).toBeCloseTo(9, 9);
  expect(found["lowest-rate"]).toBe(points[0]?.stress);
});

test("the largest viscosity has to lie between two readings, else the readings have to go on beyond it", () => {
  const of = (...rows: readonly (readonly [shearRate: number, stress: number])[]) =>
    yieldStresses({ points: rows.map(([shearRate, stress]) => ({ shearRate, stress })) }).find(
      ({ convention }) => convention === "viscosity-maximum",
    );
  expect(of([0.01, 1], [0.011, 5], [1, 8], [10, 12])).toMatchObject({ yieldStress: 5 });
  expect(of([0.001, 1], [0.011, 5], [1, 8], [10, 12])).toMatchObject({
    reason: expect.stringContaining("in creep"),
  });
  expect(of([1, 1], [1.5, 5], [2, 8], [2.5, 12])).toMatchObject({
    reason: expect.stringContaining("readings at higher stresses"),
  });
});

test("a let-down takes paste and base by the balance of the pigment, and none that lies outside of both", () => {
  const of = (pigment: number) => letDown({ mass: 10, pigment, pigmentInPaste: 0.5, pigmentInBase: 0.1 });
  expect(of(0.1)).toEqual({ paste: 0, base: 10 });
  expect(of(0.5)).toEqual({ paste: 10, base: 0 });
  expect(of(0.2)).toEqual({ paste: expect.closeTo(2.5, 12), base: expect.closeTo(7.5, 12) });
  for (const pigment of [0.099, 0.501]) expect(() => of(pigment)).toThrow("from 0.1 to 0.5");
});

test("the drop at the end of a plateau lies between nothing and all of it", () => {
  const points = [1, 2, 4, 8].map((stress) => ({
    stress,
    ...{ storageModulus: 1000 / (1 + (stress / 4) ** 4), lossModulus: 100 },
  }));
  expect(sweepYieldStresses({ points, drop: 0.5 }).yieldPoint).toBeCloseTo(4, 1);
  for (const drop of [0, 1]) expect(() => sweepYieldStresses({ points, drop })).toThrow("between 0 and 1");
  const soft = points.map((point) => ({ ...point, lossModulus: 1 }));
  expect(() => sweepYieldStresses({ points: soft })).toThrow("readings at higher stresses");
  const liquid = points.map((point) => ({ ...point, lossModulus: 2000 }));
  expect(() => sweepYieldStresses({ points: liquid })).toThrow("readings at lower stresses");
});

test("what no fit can be is refused at its place", () => {
  const points = [1, 2, 5, 10].map((shearRate) => ({ shearRate, stress: 2 * shearRate }));
  expect(() => fitFlowCurve({ model: "newton", points, viscosityInfinite: -0.1 })).toThrow("viscosityInfinite");
  const steep = [20, 21, 22].map((temperature, i) => ({ temperature, viscosity: [1e300, 1, 1e-300][i] as number }));
  expect(() => fitAndrade({ points: steep })).toThrow("factor");
  const reading = { spindle: " ", speed: 1, reading: 50 };
  expect(() => relativeReading({ reading, reference: reading })).toThrow("a name");
});
