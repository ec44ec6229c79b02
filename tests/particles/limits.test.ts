import { viscosityAt } from "gelwright/laws";
import {
  additionTemperature,
  additionWindow,
  boilingTemperature,
  bubbleRise,
  clearingOverCooling,
  dragCoefficient,
  flakeOfVolume,
  flakeShape,
  hinderedFactor,
  pressureForFoamHead,
  pressureToClear,
  riseOverCooling,
  settlingBySize,
  settlingOverCooling,
  settlingOverCurve,
  temperatureToClear,
  terminalVelocity,
  viscosityToClear,
} from "gelwright/particles";
import { expect, test } from "vitest";
import { without } from "../support/without.js";

const melt = { law: "vogel-fulcher-tammann", lnFactor: -9.5, coefficient: 900, temperatureVogel: -110 } as const;
const points = [
  { temperature: 90, viscosity: 0.008 },
  { temperature: 70, viscosity: 0.05 },
  { temperature: 50, viscosity: 2 },
  { temperature: 30, viscosity: 400 },
];
const readings = { law: "readings", points } as const;

const liquid = {
  densityFluid: { law: "linear", density: 915, temperatureReference: 20, slope: 0.64 },
  viscosity: { law: "setting", melt, temperatureSetting: 62, steepness: 0.4 },
} as const;
const vessel = {
  heatCapacity: 90000,
  heatLoss: { law: "newton", conductance: 12 },
  temperatureAmbient: 20,
  temperatureStart: 85,
} as const;
const cooling = { ...vessel, temperatureEnd: 30 } as const;
const glitter = { ...liquid, ...cooling, diameter: 100e-6, densityParticle: 1400, settlingAllowed: 0.005 } as const;
const bubble = { ...liquid, ...cooling, diameter: 20e-6 } as const;

const code = (is: string) => expect.objectContaining({ code: is });

test("each drag law holds below its Reynolds number and no longer at it", () => {
  const sphericity = 0.5;
  // Ganser: up to 1e5 in Re K1 K2.
  const ganser = 1e5 / (10 ** (1.8148 * Math.log10(1 / sphericity) ** 0.5743) / (1 / 3 + (2 / 3) * sphericity ** -0.5));
  const edges = [
    [{ law: "stokes" }, 0.1],
    [{ law: "disc", aspectRatio: 0.05, orientation: "edgewise" }, 0.1],
    [{ law: "spheroid", aspectRatio: 0.5, orientation: "random" }, 0.1],
    [{ law: "schiller-naumann" }, 1000],
    [{ law: "cheng" }, 2e5],
    [{ law: "haider-levenspiel" }, 2e5],
    [{ law: "haider-levenspiel", sphericity }, 2.6e4],
    [{ law: "ganser", sphericity: 1 }, 1e5],
  ] as const;
  for (const [drag, limit] of edges) {
    expect(dragCoefficient({ reynolds: limit * (1 - 1e-12), drag })).toBeGreaterThan(0);
    expect(() => dragCoefficient({ reynolds: limit, drag })).toThrow(code("range"));
  }
  const drag = { law: "ganser", sphericity } as const;
  expect(dragCoefficient({ reynolds: ganser * 0.999, drag })).toBeGreaterThan(0);
  expect(() => dragCoefficient({ reynolds: ganser * 1.001, drag })).toThrow(code("range"));
});

test("a shape is taken up to the ends of what its law was fitted to", () => {
  const at = (drag: object) => () => dragCoefficient({ reynolds: 0.01, drag: drag as never });
  expect(at({ law: "ganser", sphericity: 0.09 })()).toBeGreaterThan(0);
  expect(at({ law: "haider-levenspiel", sphericity: 0.026 })()).toBeGreaterThan(0);
  expect(at({ law: "ganser", sphericity: 0.0899 })).toThrow(code("range"));
  expect(at({ law: "haider-levenspiel", sphericity: 0.0259 })).toThrow(code("range"));
  expect(at({ law: "disc", aspectRatio: 0.1, orientation: "broadside" })()).toBeGreaterThan(0);
  expect(at({ law: "disc", aspectRatio: 0.101, orientation: "broadside" })).toThrow(code("range"));
  expect(at({ law: "disc", aspectRatio: 0.05, orientation: "sideways" })).toThrow('"edgewise"');
});

test("Richardson and Zaki's exponent changes at Re 0.2, 1 and 500, which belong to the faster side", () => {
  const exponent = (reynolds: number) => Math.log(hinderedFactor({ volumeFraction: 0.1, reynolds })) / Math.log(0.9);
  expect(exponent(0.2)).toBeCloseTo(4.35 * 0.2 ** -0.03, 9);
  expect(exponent(1)).toBeCloseTo(4.45, 9);
  expect(exponent(500)).toBeCloseTo(2.39, 9);
  expect(hinderedFactor({ volumeFraction: 0.5 })).toBeCloseTo(2 ** -4.65, 12);
  expect(() => hinderedFactor({ volumeFraction: 0.501 })).toThrow(code("range"));
});

test("among others a particle moves at its own velocity times the hindrance at its own Reynolds number", () => {
  const grain = { diameter: 2e-3, densityParticle: 2650, drag: { law: "cheng" } } as const;
  const [densityFluid, viscosity] = [870, 0.02];
  const alone = terminalVelocity({ ...grain, densityFluid, viscosity });
  const { velocityStart } = settlingOverCooling({
    ...vessel,
    ...grain,
    ...{ densityFluid: { law: "constant", density: densityFluid }, viscosity: { law: "constant", viscosity } },
    ...{ volumeFraction: 0.2, duration: 1 },
  });
  const hindered = hinderedFactor({ volumeFraction: 0.2, reynolds: alone.reynolds });
  expect(alone.reynolds).toBeGreaterThan(1);
  expect(velocityStart / (alone.velocity * hindered)).toBeCloseTo(1, 12);
});

test("gas as dense as its liquid does not rise, and a surface is stiff or clean", () => {
  const of = { diameter: 1e-4, densityFluid: 900, viscosity: 1 };
  expect(() => bubbleRise({ ...of, densityGas: 900 })).toThrow(code("input"));
  expect(() => bubbleRise({ ...of, surface: "dirty" as never })).toThrow('"immobile" or "mobile"');
});

test("a layer that clears at once needs next to no vacuum, and one that takes longer than the bound is refused at it", () => {
  const layer = { diameter: 2e-3, densityFluid: 910, viscosity: 0.5, depth: 1e-9, beyond: "extend" } as const;
  // Without weight above them bubbles clear in a time that goes as the pressure to two thirds.
  const unchanged = (18 * 0.5 * 1e-9) / (910 * 9.80665 * 2e-3 ** 2);
  for (const times of [0.5, 1, 100])
    expect(pressureToClear({ ...layer, duration: times * unchanged }) / (101325 * times ** 1.5)).toBeCloseTo(1, 9);
  // A deep layer of 20 kPa by its own weight, under no more than that.
  const head = 910 * 9.80665 * 2;
  const bound = ((18 * 0.5 * 2) / (910 * 9.80665 * 2e-3 ** 2)) * (head / 101325) ** (2 / 3) * 0.6;
  const deep = { ...layer, depth: 2 };
  expect(() => pressureToClear({ ...deep, duration: bound * (1 - 1e-9) })).toThrow(code("unreachable"));
  expect(pressureToClear({ ...deep, duration: bound * (1 + 1e-6) })).toBeLessThan(head / 10);
  let stated = Number.NaN;
  try {
    pressureToClear({ ...deep, duration: bound / 2 });
  } catch (error) {
    stated = Number(/more than (\S+) s/.exec(String(error))?.[1]);
  }
  expect(stated / bound).toBeCloseTo(1, 12);
  expect(() => pressureToClear({ ...deep, duration: stated })).toThrow(code("unreachable"));
});

test("a flake is at most as thick as it is wide, and the refusal says how thick that is", () => {
  expect(flakeShape({ diameter: 3e-5, thickness: 3e-5 })).toMatchObject({ aspectRatio: 1 });
  // (3/2)^(1/3) is the sphere of a disc as thick as wide.
  const { diameter } = flakeShape({ diameter: 1, thickness: 1 });
  expect(diameter).toBeCloseTo(1.1447142425533319, 14);
  expect(() => flakeOfVolume({ diameter: 1, thickness: 2 })).toThrow("at most 0.87358046");
});

test("foam does not come to rest at the level of the liquid alone", () => {
  const foam = { level: 1, volumeFractionGas: 0.25 };
  expect(() => pressureForFoamHead({ ...foam, levelMax: 0.75 })).toThrow(code("input"));
});

test("a liquid boils at no temperature from the pressure on that its constants end at", () => {
  const natural = { law: "antoine", logarithm: "natural", constantB: 3800, constantC: -45 } as const;
  const vapourPressure = { ...natural, constantA: Math.log(5000), temperatureMin: 0, temperatureMax: 1e6 };
  expect(boilingTemperature({ vapourPressure, pressure: 4000 })).toBeGreaterThan(0);
  for (const pressure of [5000, 6000])
    expect(() => boilingTemperature({ vapourPressure, pressure })).toThrow(code("unreachable"));
});

test("bubbles of which the last leaves as the gel sets clear at the end, not before", () => {
  const { distance, duration } = riseOverCooling(bubble);
  expect(clearingOverCooling({ ...bubble, depth: distance })).toEqual({ temperature: 30, duration });
  expect(() => clearingOverCooling({ ...bubble, depth: distance * (1 + 1e-9) })).toThrow(code("unreachable"));
  for (const temperatureEnd of [85, 90])
    expect(() => clearingOverCooling({ ...bubble, depth: 1e-3, temperatureEnd })).toThrow("less than temperatureStart");
});

test("a bubble in a cooling melt is refused where it rises too fast for Stokes' law", () => {
  // At 85 °C the melt has 0.0075 Pa·s: Re is 0.1 at about 0.1 mm.
  const [thin, density] = [viscosityAt({ law: liquid.viscosity, temperature: 85 }), 915 - 0.64 * 65];
  const diameter = Math.cbrt((0.1 * 18 * thin ** 2) / (density ** 2 * 9.80665));
  const short = { ...bubble, temperatureEnd: 80 };
  expect(riseOverCooling({ ...short, diameter: diameter * 0.999 }).distance).toBeGreaterThan(0);
  expect(() => riseOverCooling({ ...short, diameter: diameter * 1.01 })).toThrow(code("range"));
});

test("the window is shut where it opens and closes at the start", () => {
  const fine = { ...glitter, diameter: 1e-6 };
  const window = additionWindow({ ...fine, stirrableViscosityMax: 1e-3 });
  expect(window).toMatchObject({ isOpen: false, temperatureMax: 85, temperatureMin: 85 });
});

test("a melt that is just as thick as can be stirred is stirred no more, at the start or at the end", () => {
  const viscosity = { law: "constant", viscosity: 3 } as const;
  const at = (stirrableViscosityMax: number) => additionWindow({ ...glitter, viscosity, stirrableViscosityMax });
  expect(at(3)).toMatchObject({ isOpen: false, temperatureMin: 85, durationUntilClosed: 0 });
  expect(at(3.001)).toMatchObject({ temperatureMin: 30 });
  for (const temperatureEnd of [30, 31.7, 42.3]) {
    const stirrableViscosityMax = viscosityAt({ law: liquid.viscosity, temperature: temperatureEnd });
    expect(additionWindow({ ...glitter, temperatureEnd, stirrableViscosityMax }).temperatureMin).toBe(temperatureEnd);
  }
});

test("beyond the readings a temperature is found if they may be extended, and else refused", () => {
  const window = { ...glitter, viscosity: readings, temperatureEnd: 25, stirrableViscosityMax: 600 };
  expect(() => additionWindow(window)).toThrow(code("range"));
  const { temperatureMin } = additionWindow({ ...window, beyond: "extend" });
  expect(temperatureMin).toBeGreaterThan(25);
  expect(temperatureMin).toBeLessThan(30);
  const layer = { diameter: 1e-4, densityFluid: 900, depth: 0.3 };
  const thick = viscosityAt({ law: readings, temperature: 28, beyond: "extend" });
  // The viscosity that clears in time is proportional to the time.
  const duration = (1e6 * thick) / viscosityToClear({ ...layer, duration: 1e6 });
  expect(() => temperatureToClear({ ...layer, duration, viscosity: readings })).toThrow(code("range"));
  const clear = temperatureToClear({ ...layer, duration, viscosity: readings, beyond: "extend" });
  expect(clear).toBeCloseTo(28, 6);
});

test("a reading above the start is none of the ways: particles that may go in at the start do so", () => {
  const job = { ...glitter, viscosity: readings, temperatureStart: 60 };
  const { distance } = settlingOverCooling({ ...without(job, "settlingAllowed") });
  const found = additionTemperature({ ...job, settlingAllowed: distance * 1.001 });
  expect(found).toMatchObject({ temperature: 60, durationUntil: 0 });
  expect(found.distance / distance).toBeCloseTo(1, 12);
  expect(additionTemperature({ ...job, settlingAllowed: distance * 0.999 }).temperature).toBeLessThan(60);
  for (const temperatureEnd of [60, 61])
    expect(() => additionTemperature({ ...job, temperatureEnd })).toThrow("less than temperatureStart");
});

test("a way just as long as allowed is not beyond it, and all of the mass is a whole though its shares miss it", () => {
  const { settlingAllowed: _, diameter, ...job } = { ...glitter, temperatureStart: 50 };
  const { distance } = settlingOverCooling({ ...job, diameter });
  const sizes = [
    { diameter, massFraction: 0.5000004 },
    { diameter, massFraction: 0.5000004 },
  ];
  const beyond = (settlingAllowed: number) => settlingBySize({ ...job, sizes, settlingAllowed }).massFractionBeyond;
  expect(beyond(distance)).toBe(0);
  expect(beyond(distance * 0.999)).toBe(1);
});

test("a breakpoint within a step of a curve costs no digits, and neither do several", () => {
  const grain = without({ ...glitter, diameter: 60e-6 }, "settlingAllowed", ...(Object.keys(cooling) as never[]));
  const along = (times: readonly number[], temperatures: readonly number[], viscosity: object = liquid.viscosity) =>
    settlingOverCurve({ ...(grain as typeof glitter), viscosity, times, temperatures } as never).distance;
  // Straight lines: split at 62 °C, where the melt begins to set.
  expect(along([0, 3600], [92, 32]) / along([0, 1800, 3600], [92, 62, 32])).toBeCloseTo(1, 14);
  expect(along([0, 3600], [32, 92]) / along([0, 1800, 3600], [32, 62, 92])).toBeCloseTo(1, 14);
  // And at the readings at 70 and 50 °C.
  expect(along([0, 60], [90, 30], readings) / along([0, 20, 40, 60], [90, 70, 50, 30], readings)).toBeCloseTo(1, 14);
});

test("a curve counts from its own first time, and a rising one may not fall", () => {
  const grain = without(glitter, "settlingAllowed", ...(Object.keys(cooling) as never[])) as typeof glitter;
  const along = (times: readonly number[], temperatures: readonly number[]) =>
    settlingOverCurve({ ...grain, diameter: 60e-6, times, temperatures });
  const [zero, later] = [along([0, 1800, 3600], [80, 60, 40]), along([600, 2400, 4200], [80, 60, 40])];
  expect(later.duration).toBe(3600);
  expect(later.distance / zero.distance).toBeCloseTo(1, 12);
  expect(() => along([0, 60, 120], [40, 39, 60])).toThrow("on a curve that rises from end to end");
  expect(() => along([0, 60, 120], [60, 61, 40])).toThrow("on a curve that falls from end to end");
});
