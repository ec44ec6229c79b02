import fc from "fast-check";
import {
  additionTemperatureMin,
  coolingTime,
  fewestAdditions,
  heatCapacityBreakpoints,
  heatCapacityFunction,
  heatToWarm,
  largestAddition,
  meltTemperatureMin,
  mixingTemperature,
  stagedAdditions,
  vesselSegment,
} from "gelwright/heat";
import { choiOkosFat, enthalpyBetween } from "gelwright/laws";
import { expect, test } from "vitest";
import { between } from "../support/between.js";

const near = (actual: number, expected: number, within = 1e-9) =>
  expect(Math.abs(actual / expected - 1)).toBeLessThanOrEqual(within);
const constant = (specificHeat: number) => ({ law: "constant", specificHeat }) as const;
const oil = choiOkosFat.specificHeat;
const wax = {
  law: "melting",
  solid: constant(2100),
  liquid: constant(2350),
  latentHeat: 185000,
  temperatureOnset: 56,
  temperatureEnd: 68,
} as const;
const unreachable = (message: string) =>
  expect.objectContaining({ code: "unreachable", message: expect.stringContaining(message) });

const meltOf = (mass: number, share: number, temperature: number) => [
  { mass: mass * (1 - share), specificHeat: oil, temperature },
  { mass: mass * share, specificHeat: wax, temperature },
];
const mixes = fc.record({
  mass: between(0.1, 100),
  share: between(0.02, 0.5),
  hot: between(70, 120),
  cold: between(0, 30),
  added: between(0.01, 100),
});

test("with constant specific heats the laws say what the plain forms say", () => {
  const melt = { mass: 70, temperature: 82 };
  const addition = { mass: 30, temperature: 21 };
  const plain = { melt: [{ ...melt, specificHeat: 2150 }], addition: { ...addition, specificHeat: 1980 } };
  const law = {
    melt: [{ ...melt, specificHeat: constant(2150) }],
    addition: { ...addition, specificHeat: constant(1980) },
  };
  near(
    mixingTemperature({ charges: [...law.melt, law.addition] }),
    mixingTemperature({ charges: [...plain.melt, plain.addition] }),
    1e-13,
  );
  near(largestAddition({ ...law, temperatureMin: 58 }), largestAddition({ ...plain, temperatureMin: 58 }));
  near(
    additionTemperatureMin({ ...law, temperatureStored: 21, temperatureMin: 72 }),
    additionTemperatureMin({ ...plain, temperatureMin: 72 }),
  );
});

test("what one charge gives the others take, to 1e-10, with wax that sets on the way", () => {
  fc.assert(
    fc.property(mixes, ({ mass, share, hot, cold, added }) => {
      const charges = [...meltOf(mass, share, hot), { mass: added, specificHeat: oil, temperature: cold }];
      const common = mixingTemperature({ charges });
      const gained = charges.map((charge) => {
        const each = { law: charge.specificHeat, temperatureStart: charge.temperature, temperatureEnd: common };
        return charge.mass * enthalpyBetween(each);
      });
      const moved = gained.reduce((sum, heat) => sum + Math.abs(heat), 0);
      expect(Math.abs(gained.reduce((sum, heat) => sum + heat, 0))).toBeLessThanOrEqual(
        1e-10 * moved + 1e-8 * (mass + added),
      );
      expect(common).toBeGreaterThanOrEqual(cold);
      expect(common).toBeLessThanOrEqual(hot);
    }),
  );
});

test("the largest addition and the temperature to warm one to bring the mix just to the least temperature", () => {
  fc.assert(
    fc.property(mixes, between(50, 66), ({ mass, share, hot, cold, added }, min) => {
      const melt = meltOf(mass, share, hot);
      const addition = { specificHeat: oil, temperature: cold };
      const max = largestAddition({ melt, addition, temperatureMin: min });
      near(mixingTemperature({ charges: [...melt, { ...addition, mass: max }] }), min);
      const warmed = additionTemperatureMin({
        melt,
        addition: { ...addition, mass: added },
        temperatureStored: cold,
        temperatureMin: min,
      });
      const mixed = mixingTemperature({
        charges: [...melt, { specificHeat: oil, mass: added, temperature: warmed }],
      });
      if (added > max * (1 + 1e-9)) near(mixed, min);
      else expect(warmed).toBe(cold);
      expect(mixed).toBeGreaterThanOrEqual(min - 1e-9);
    }),
  );
});

test("wax that sets holds the mix up: it takes more cold oil than a melt that does not", () => {
  const addition = { specificHeat: oil, temperature: 22 };
  const max = (latentHeat: number) =>
    largestAddition({
      melt: [
        { mass: 0.8, specificHeat: oil, temperature: 80 },
        { mass: 0.2, specificHeat: { ...wax, latentHeat }, temperature: 80 },
      ],
      addition,
      temperatureMin: 60,
    });
  expect(max(185000)).toBeGreaterThan(1.5 * max(0));
});

test("a melt that is too cool asks for an addition hotter than the least temperature, as hot as that may be", () => {
  const melt = [{ mass: 1, specificHeat: constant(2000), temperature: 50 }];
  const addition = { mass: 1, specificHeat: constant(2000), temperature: 20 };
  expect(additionTemperatureMin({ melt, addition, temperatureStored: 20, temperatureMin: 60 })).toBeCloseTo(70, 9);
  expect(() => largestAddition({ melt, addition, temperatureMin: 60 })).toThrow(unreachable("20000 J short"));
  expect(() => largestAddition({ melt, addition: { ...addition, temperature: 45 }, temperatureMin: 45 })).toThrow(
    unreachable("any amount of it may go in"),
  );
  const drop = { ...addition, mass: 1e-4 };
  expect(() => additionTemperatureMin({ melt, addition: drop, temperatureStored: 20, temperatureMin: 60 })).toThrow(
    unreachable("an addition of 1060 °C or less"),
  );
});

test("a law that ends before the mix is refused there, though the other charge lies beyond it", () => {
  const narrow = { ...oil, temperatureMin: 10, temperatureMax: 50 };
  const mix = (mass: number) =>
    mixingTemperature({
      charges: [
        { mass, specificHeat: oil, temperature: 80 },
        { mass: 1, specificHeat: narrow, temperature: 20 },
      ],
    });
  expect(mix(0.5)).toBeLessThan(50);
  expect(() => mix(2)).toThrow(expect.objectContaining({ code: "range" }));
});

test("a segment that melts wax takes the heat that a phase takes, however narrow the melting range", () => {
  const parts = [
    { mass: 80, specificHeat: constant(2050) },
    { mass: 12, specificHeat: { ...wax, temperatureOnset: 62.9, temperatureEnd: 63.1 } },
  ];
  const { totals } = vesselSegment({
    temperatureStart: 20,
    temperatureEnd: 85,
    heatCapacity: heatCapacityFunction({ parts }),
    breakpoints: heatCapacityBreakpoints({ parts }),
    heatSource: { kind: "power", power: 6000 },
    heatLoss: { law: "newton", conductance: 18 },
    temperatureAmbient: 20,
  });
  const stored = totals.energySupplied - totals.energyLost;
  const melting = { temperature: 63, latentHeat: 185000, specificHeatMelt: 2350 };
  const { heat } = heatToWarm({
    parts: [
      { mass: 80, specificHeat: 2050 },
      { mass: 12, specificHeat: 2100, melting },
    ],
    temperatureStart: 20,
    temperatureEnd: 85,
  });
  near(stored, heat, 1e-10);
  expect(heatCapacityBreakpoints({ parts })).toEqual([62.9, 63.1]);
});

test("over stages energy is conserved to 1e-10: what went in is there or was lost to the room", () => {
  fc.assert(
    fc.property(
      fc.array(fc.record({ wait: between(0, 3000), mass: between(0.1, 20), cold: between(15, 60) }), {
        minLength: 1,
        maxLength: 4,
      }),
      between(0, 40000),
      (steps, heatCapacityVessel) => {
        const melt = meltOf(60, 0.2, 85).map(({ mass, specificHeat }) => ({ mass, specificHeat }));
        const stages = steps.map(({ wait, mass, cold }) => ({
          duration: wait,
          addition: { mass, specificHeat: oil, temperature: cold },
        }));
        const run = stagedAdditions({
          melt,
          temperatureStart: 85,
          heatCapacityVessel,
          heatLoss: { law: "newton", conductance: 12 },
          temperatureAmbient: 20,
          stages,
        });
        const last = run.stages[run.stages.length - 1];
        if (!last) throw new Error("no stage");
        const gained = (law: typeof oil | typeof wax, temperatureStart: number) =>
          enthalpyBetween({ law, temperatureStart, temperatureEnd: last.temperatureMixed });
        const heats = [
          ...melt.map((part) => part.mass * gained(part.specificHeat, 85)),
          ...stages.map(({ addition }) => addition.mass * gained(oil, addition.temperature)),
          heatCapacityVessel * (last.temperatureMixed - 85),
          run.energyLost,
        ];
        const moved = heats.reduce((sum, heat) => sum + Math.abs(heat), 0);
        expect(Math.abs(heats.reduce((sum, heat) => sum + heat, 0))).toBeLessThanOrEqual(1e-10 * moved + 1e-6);
        near(last.mass, 60 + steps.reduce((sum, { mass }) => sum + mass, 0), 1e-12);
        expect(run.temperatureMin).toBeLessThanOrEqual(last.temperatureMixed);
      },
    ),
  );
});

test("stages wait by Newton's law, or until a temperature, and a heat source may hold the vessel up", () => {
  const melt = [{ mass: 50, specificHeat: constant(2000) }];
  const addition = { mass: 10, specificHeat: constant(2000), temperature: 25 };
  const vessel = {
    melt,
    temperatureStart: 85,
    heatLoss: { law: "newton", conductance: 20 },
    temperatureAmbient: 20,
  } as const;
  const cooled = stagedAdditions({ ...vessel, stages: [{ temperatureEnd: 73, addition }] });
  near(
    cooled.duration,
    coolingTime({
      heatCapacity: 1e5,
      conductance: 20,
      temperatureAmbient: 20,
      temperatureStart: 85,
      temperatureEnd: 73,
    }),
    1e-12,
  );
  near(cooled.temperatureMin, (5 * 73 + 25) / 6, 1e-12);
  const held = stagedAdditions({
    ...vessel,
    stages: [
      { duration: 0, addition },
      { temperatureEnd: 80, heatSource: { kind: "power", power: 4000 }, addition },
    ],
  });
  near(held.stages[1]?.temperatureBefore ?? 0, 80, 1e-14);
  expect(held.stages[0]?.duration).toBe(0);
  expect(() => stagedAdditions({ ...vessel, stages: [{ temperatureEnd: 15, addition }] })).toThrow(
    expect.objectContaining({ code: "unreachable" }),
  );
});

test("the least melt with laws is that of constant specific heats, and undoes the mixing temperature", () => {
  fc.assert(
    fc.property(between(1, 50), between(0.1, 10), between(0, 40), between(45, 70), (hot, share, stored, min) => {
      const mass = share * hot;
      const melt = { mass: hot, specificHeat: 2200 };
      const addition = { mass, specificHeat: 2000, temperature: stored };
      const found = meltTemperatureMin({
        melt: [{ mass: hot, specificHeat: constant(2200) }],
        addition: { mass, specificHeat: constant(2000), temperature: stored },
        temperatureMin: min,
      });
      near(found, meltTemperatureMin({ melt: [melt], addition, temperatureMin: min }), 1e-9);
    }),
  );
  const warm = { mass: 1, specificHeat: constant(2000), temperature: 60 };
  expect(
    meltTemperatureMin({
      melt: [{ mass: 1, specificHeat: constant(2000) }],
      addition: warm,
      temperatureMin: 55,
    }),
  ).toBe(55);
});

test("parts with laws are as many as with constant specific heats, and no fewer would do", () => {
  fc.assert(
    fc.property(between(1, 50), between(0.1, 100), between(0, 40), between(62, 90), (hot, mass, stored, warm) => {
      const melt = [{ mass: hot, specificHeat: 2200 }];
      const addition = { mass, specificHeat: 2000, temperature: stored };
      const expected = fewestAdditions({ melt, temperatureMelt: warm, addition, temperatureMin: 60 }).number;
      fc.pre(expected < 100);
      const found = fewestAdditions({
        melt: [{ mass: hot, specificHeat: constant(2200) }],
        temperatureMelt: warm,
        addition: { ...addition, specificHeat: constant(2000) },
        temperatureMin: 60,
      });
      expect(Math.abs(found.number - expected)).toBeLessThanOrEqual(1);
      expect(found.temperatureMin).toBeGreaterThanOrEqual(60);
      near(found.number * found.mass, mass, 1e-12);
    }),
  );
});

test("a setting temperature that is higher before all is in asks for no fewer parts, and a cold melt has none", () => {
  const input = {
    melt: [{ mass: 10, specificHeat: constant(2000) }],
    temperatureMelt: 80,
    addition: { mass: 10, specificHeat: constant(2000), temperature: 20 },
  };
  const fixed = fewestAdditions({ ...input, temperatureMin: 60 }).number;
  const falling = fewestAdditions({ ...input, temperatureMin: (added) => 70 - added }).number;
  expect(fixed).toBe(2);
  expect(falling).toBeGreaterThan(fixed);
  expect(() => fewestAdditions({ ...input, temperatureMin: 80 })).toThrow(
    expect.objectContaining({ code: "unreachable" }),
  );
});

test("a number and the same number as a law may stand side by side", () => {
  const charges = [
    { mass: 60, specificHeat: 2150, temperature: 82 },
    { mass: 10, specificHeat: constant(2350), temperature: 82 },
    { mass: 30, specificHeat: 1980, temperature: 21 },
  ];
  const numbers = charges.map((charge) => ({
    ...charge,
    specificHeat: typeof charge.specificHeat === "number" ? charge.specificHeat : charge.specificHeat.specificHeat,
  }));
  near(mixingTemperature({ charges }), mixingTemperature({ charges: numbers }), 1e-13);
  const capacity = (parts: typeof charges) => heatCapacityFunction({ parts })(50);
  near(capacity(charges), 60 * 2150 + 10 * 2350 + 30 * 1980, 1e-15);
  expect(heatCapacityBreakpoints({ parts: [...charges, { mass: 1, specificHeat: wax }] })).toEqual([56, 68]);
  const way = (melt: typeof charges | typeof numbers) => ({ melt, temperatureMin: 60 });
  const cold = { mass: 90, specificHeat: 1980, temperature: 21 };
  const hot = charges.slice(0, 2);
  const plain = numbers.slice(0, 2);
  near(largestAddition({ ...way(hot), addition: cold }), largestAddition({ ...way(plain), addition: cold }));
  near(
    additionTemperatureMin({ ...way(hot), addition: cold, temperatureStored: 21 }),
    additionTemperatureMin({ ...way(plain), addition: cold, temperatureStored: 21 }),
  );
  near(meltTemperatureMin({ ...way(hot), addition: cold }), meltTemperatureMin({ ...way(plain), addition: cold }));
  const parts = (melt: typeof charges | typeof numbers) =>
    fewestAdditions({ ...way(melt), temperatureMelt: 82, addition: cold }).number;
  expect(parts(hot)).toBe(parts(plain));
  expect(parts(plain)).toBe(3);
});

test("with a law the temperature of the store has to be said", () => {
  const melt = [{ mass: 1, specificHeat: oil, temperature: 80 }];
  expect(() => additionTemperatureMin({ melt, addition: { mass: 1, specificHeat: 2000 }, temperatureMin: 60 })).toThrow(
    "temperatureStored: found undefined",
  );
});
