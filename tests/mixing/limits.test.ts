import {
  additionSchedule,
  bladePowerBand,
  blendTime,
  cavern,
  circulation,
  exponentialFeed,
  feedAt,
  feedDuration,
  flowCurveAtOil,
  gelAlongAdditions,
  interpolateAtOilFraction,
  powerBandOf,
  ribbonPowerConstant,
  scheduleAtScale,
  speedToMoveGelAtWall,
  wideBladePowerBand,
} from "gelwright/mixing";
import { expect, test } from "vitest";
import { portionsOf } from "../../src/mixing/portions.js";

const code = (is: string) => expect.objectContaining({ code: is });
const points = (...rows: readonly (readonly [number, number])[]) =>
  rows.map(([volumeFractionOil, value]) => ({ volumeFractionOil, value }));

test("a table of oil goes from its first point to its last by way of all between, each with more oil than the one before", () => {
  const at = (volumeFractionOil: number, rows = points([0, 1], [0.5, 3], [0.8, 9])) =>
    interpolateAtOilFraction({ law: { law: "table", points: rows }, volumeFractionOil });
  expect([0, 0.25, 0.5, 0.65, 0.8].map((oil) => at(oil))).toEqual([1, 2, 3, expect.closeTo(6, 12), 9]);
  expect(() => at(0.81)).toThrow(code("range"));
  expect(() => at(0.2, points([0.3, 1], [0.5, 3]))).toThrow(code("range"));
  // A volume that is a bit past the last point is the last point.
  expect(at(0.8 + 1e-14)).toBeCloseTo(9, 9);
  for (const rows of [points([0.5, 1], [0.4, 2]), points([0.5, 1], [0.5, 2]), points([0, 1], [0.5, 2], [0.4, 3])])
    expect(() => at(0.5, rows)).toThrow("more oil than the point before");
  const linear = { law: "linear", atNoOil: 1, perVolumeFraction: -2 } as const;
  expect(interpolateAtOilFraction({ law: linear, volumeFractionOil: 0.4 })).toBeCloseTo(0.2, 12);
  expect(() => interpolateAtOilFraction({ law: linear, volumeFractionOil: 0.5 })).toThrow("stays above 0");
  expect(() => interpolateAtOilFraction({ law: { law: "cubic" } as never, volumeFractionOil: 0.5 })).toThrow(
    '"linear"',
  );
});

const feed = {
  massGelFormer: 10,
  massOil: 1,
  massToAdd: 30,
  densityOil: 915,
  densityGelFormer: 1250,
  share: { law: "constant", value: 0.1 },
  volumeFractionOilMax: 0.9,
  incorporationTime: { law: "constant", value: 90 },
} as const;

test("a feed in proportion to what is in the vessel takes the logarithm of its growth, and a pump's limit a straight line", () => {
  // 0.1/90 a second of 11 kg that grow to 41 kg.
  const duration = 900 * Math.log(41 / 11);
  expect(feedDuration(feed)).toBeCloseTo(duration, 9);
  const at = (time: number, of: object = {}) => feedAt({ ...feed, ...of, time });
  expect(at(0)).toMatchObject({ massInVessel: 11, rate: expect.closeTo(11 / 900, 12) });
  expect(at(duration / 2).massInVessel).toBeCloseTo(Math.sqrt(11 * 41), 9);
  expect(at(duration).massInVessel).toBe(41);
  expect(() => at(duration * 1.001)).toThrow(code("range"));
  // A pump of 0.02 kg/s holds it back from 18 kg on.
  const pumped = 900 * Math.log(18 / 11) + 23 / 0.02;
  expect(feedDuration({ ...feed, rateMax: 0.02 })).toBeCloseTo(pumped, 5);
  expect(at(pumped - 50, { rateMax: 0.02 }).massInVessel).toBeCloseTo(40, 6);
});

test("a table of shares is followed from corner to corner", () => {
  // Twice the share above half of oil by volume: the growth there takes half the time.
  const half = (10 / 1250) * 915;
  const share = { law: "table", points: points([0, 0.1], [0.5, 0.1], [0.5 + 1e-9, 0.2], [1, 0.2]) } as const;
  const inVessel = 10 + half;
  const duration = 900 * Math.log(inVessel / 11) + 450 * Math.log(41 / inVessel);
  expect(feedDuration({ ...feed, share }) / duration).toBeCloseTo(1, 7);
  expect(feedAt({ ...feed, share, time: duration - 450 * Math.log(41 / 30) }).massInVessel).toBeCloseTo(30, 5);
});

test("an exponential feed begins and ends with its masses and is at their geometric mean half-way", () => {
  const at = (time?: number) =>
    exponentialFeed({ massStart: 10, massEnd: 160, duration: 400, ...(time !== undefined && { time }) });
  expect(at()).toMatchObject({ massInVessel: 160, specificRate: expect.closeTo(Math.log(16) / 400, 15) });
  expect(at(400).massInVessel).toBe(160);
  expect(at(0)).toMatchObject({ massInVessel: 10, rate: expect.closeTo(at().rateStart, 15) });
  expect(at(200).massInVessel).toBeCloseTo(40, 12);
  expect(() => at(400.1)).toThrow("0 to the duration");
  expect(() => exponentialFeed({ massStart: 10, massEnd: 10, duration: 400 })).toThrow("massEnd");
  // Both ways to take the growth meet where it is twofold.
  const growth = (massEnd: number) => exponentialFeed({ massStart: 1, massEnd, duration: 1 }).specificRate;
  expect(growth(2)).toBeCloseTo(Math.LN2, 15);
  expect(growth(2 - 1e-12)).toBeCloseTo(Math.LN2, 11);
  expect(growth(1 + 1e-12) / 1e-12).toBeCloseTo(1, 3);
  // A small growth keeps its digits, and one that no double can hold as a ratio has a logarithm all the same.
  const slow = exponentialFeed({ massStart: 1000, massEnd: 1000 + 2 ** -20, duration: 1 }).specificRate;
  expect(slow / (2 ** -20 / 1000)).toBeCloseTo(1, 8);
  const fast = exponentialFeed({ massStart: 1e-200, massEnd: 1e200, duration: 1 }).specificRate;
  expect(fast / (400 * Math.LN10)).toBeCloseTo(1, 14);
});

test("a table of shares and one of times are followed exactly on both sides of each of their corners, whichever comes first", () => {
  // At the oil fraction x the masses are 10 kg and 7.32·x/(1 − x) kg, of which a trapezoidal sum makes the time.
  const even = (10 / 1250) * 915;
  const share = { law: "table", points: points([0, 0.1], [0.3, 0.3], [0.6, 0.1], [1, 0.2]) } as const;
  const incorporationTime = { law: "table", points: points([0, 60], [0.45, 90], [0.7, 30], [1, 120]) } as const;
  const of = { ...feed, share, incorporationTime };
  const paceAt = (oil: number): number => {
    const volumeFractionOil = oil / (oil + even);
    const [own, taken] = [share, incorporationTime].map((law) => interpolateAtOilFraction({ law, volumeFractionOil }));
    return (taken as number) / ((own as number) * (10 + oil));
  };
  const count = 20_000;
  let sum = 0;
  for (let i = 0; i < count; i++) sum += paceAt(1 + (30 * (i + 0.5)) / count);
  expect(feedDuration(of) / ((sum * 30) / count)).toBeCloseTo(1, 7);
  // To the last digits it is the sum of the feeds from corner to corner.
  const corners = [1, ...[0.3, 0.45, 0.6, 0.7].map((oil) => (even * oil) / (1 - oil)), 31];
  const parts = corners.slice(1).map((massEnd, i) => {
    const massOil = corners[i] as number;
    return feedDuration({ ...of, massOil, massToAdd: massEnd - massOil });
  });
  expect(parts.reduce((all, part) => all + part) / feedDuration(of)).toBeCloseTo(1, 13);
});

test("a flow curve is read between readings along the oil, and its yield stress counts from its first reading on", () => {
  const readings = {
    shearRate: 10,
    viscosity: points([0.6, 1], [0.7, 4], [0.8, 16]),
    flowIndex: points([0.6, 0.6], [0.7, 0.5], [0.8, 0.4]),
    yieldStress: points([0.65, 2], [0.7, 4], [0.75, 8]),
  };
  const at = (volumeFractionOil: number) => flowCurveAtOil({ volumeFractionOil, readings });
  expect(at(0.6)).toEqual({ law: "power-law", consistency: expect.closeTo(10 / 10 ** 0.6, 12), flowIndex: 0.6 });
  expect(at(0.64).law).toBe("power-law");
  expect(at(0.7)).toEqual({
    ...{ law: "herschel-bulkley", yieldStress: expect.closeTo(4, 12), flowIndex: expect.closeTo(0.5, 12) },
    consistency: expect.closeTo(36 / Math.sqrt(10), 12),
  });
  expect(at(0.75)).toMatchObject({ yieldStress: expect.closeTo(8, 9) });
  for (const oil of [0.76, 0.59, 0.81]) expect(() => at(oil)).toThrow(code("range"));
  const stiff = { ...readings, yieldStress: points([0.6, 10], [0.8, 11]) };
  expect(() => flowCurveAtOil({ volumeFractionOil: 0.6, readings: stiff })).toThrow("readings.yieldStress");
});

test("a cavern that just comes to the wall is as wide as the vessel, and then grows upwards alone", () => {
  const stirred = {
    powerNumber: 2,
    impeller: { diameter: 0.1 },
    density: 1000,
    yieldStress: 50,
    heightToDiameter: 0.5,
  };
  // (D_c/D)³ = 2·1000·N²·0.01/(π²·50·(0.5 + 1/3)).
  const speedFor = (ratio: number) => Math.sqrt((ratio ** 3 * Math.PI ** 2 * 50 * (5 / 6)) / 20);
  const at = (ratio: number, diameter = 0.3) => cavern({ ...stirred, speed: speedFor(ratio), vessel: { diameter } });
  expect(at(2)).toEqual({
    ...{ diameter: expect.closeTo(0.2, 12), diameterRatio: expect.closeTo(2, 12), reachesWall: false },
    height: expect.closeTo(0.1, 12),
  });
  expect(at(2.9999).reachesWall).toBe(false);
  expect(at(3.0001)).toMatchObject({ reachesWall: true, height: expect.closeTo(0.15, 4) });
  // Twice the torque at the wall: (0.5 + 1/3)·2 − 1/3 vessel diameters high.
  expect(at(3 * Math.cbrt(2)).height).toBeCloseTo(0.3 * (5 / 3 - 1 / 3), 9);
});

test("the speed that moves a gel at the wall is that at which the cavern is as wide as the vessel", () => {
  const curve = { law: "herschel-bulkley", yieldStress: 30, consistency: 12, flowIndex: 0.5 } as const;
  const power = { law: "sum", laminarPowerConstant: 44, powerNumber: 1.37 } as const;
  const impeller = { kind: "other", diameter: 0.2, power, metznerOttoConstant: 11 } as const;
  const speed = speedToMoveGelAtWall({ impeller, density: 915, curve, vessel: { diameter: 0.6 } });
  expect(speed).toBeGreaterThan(0.1);
  expect(speedToMoveGelAtWall({ impeller, density: 915, curve, vessel: { diameter: 0.7 } })).toBeGreaterThan(speed);
  const weak = { ...curve, yieldStress: 3 };
  expect(speedToMoveGelAtWall({ impeller, density: 915, curve: weak, vessel: { diameter: 0.6 } })).toBeLessThan(speed);
  expect(() =>
    speedToMoveGelAtWall({ impeller, density: 915, curve: { law: "newton", viscosity: 1 }, vessel: { diameter: 0.6 } }),
  ).toThrow("a flow curve with a yield stress");
  // Po ρN²D² comes to 440/11 yield stresses at rest: a cavern of 1.66 blade diameters, however slowly it turns.
  const wide = { ...impeller, power: { ...power, laminarPowerConstant: 440 } } as const;
  const turning = (diameter: number) =>
    speedToMoveGelAtWall({ impeller: wide, density: 915, curve, vessel: { diameter } });
  expect(() => turning(0.33)).toThrow(code("unreachable"));
  expect(turning(0.34)).toBeGreaterThan(0);
});

test("circulation and blend times hold from their Reynolds numbers on", () => {
  const impeller = { kind: "other", diameter: 0.2, flowNumber: 0.75 } as never;
  const flow = (reynolds: number, beyond?: "extend") =>
    circulation({ impeller, speed: 2, volume: 0.12, reynolds, ...(beyond && { beyond }) });
  expect(flow(10_000)).toEqual({
    ...{
      flowRate: expect.closeTo(0.012, 12),
      duration: expect.closeTo(10, 9),
      turnoversPerMinute: expect.closeTo(6, 9),
    },
  });
  expect(() => flow(9999)).toThrow(code("range"));
  expect(flow(9999, "extend").flowRate).toBeCloseTo(0.012, 12);
  const blended = (viscosity: number, uniformity?: number) =>
    blendTime({
      ...{ speed: 1, impeller: { diameter: 0.1 }, density: 1000, viscosity, powerNumber: 1 },
      ...{ vessel: { diameter: 0.3, level: 0.3 }, ...(uniformity !== undefined && { uniformity }) },
    });
  expect(blended(0.05)).toMatchObject({ regime: "transitional", fourier: expect.closeTo((183 / 200) ** 2, 12) });
  expect(() => blended(0.05001)).toThrow(code("range"));
  expect(blended(0.05, 0.95)).toEqual(blended(0.05));
  // 99.75 % is 95 % of what 95 % leaves.
  expect(blended(0.05, 0.9975).duration / blended(0.05).duration).toBeCloseTo(2, 12);
  for (const uniformity of [0, 1, 1.1]) expect(() => blended(0.05, uniformity)).toThrow("above 0 and below 1");
  expect(blended(0.001)).toMatchObject({ regime: "turbulent", fourier: expect.closeTo(5.2 / 10_000, 15) });
});

test("a ribbon is known from 0.8 to 0.99 of its vessel, with one start or two", () => {
  const ribbon = (share: number, starts = 1) =>
    ribbonPowerConstant({ impeller: { diameter: share, starts }, vessel: { diameter: 1 } });
  for (const share of [0.8, 0.99]) expect(ribbon(share)).toBeGreaterThan(0);
  for (const share of [0.799, 0.991]) expect(() => ribbon(share)).toThrow(code("range"));
  expect(ribbon(0.9, 2) / ribbon(0.9)).toBeCloseTo(2 ** 0.78, 12);
  for (const starts of [0, 3, 1.5]) expect(() => ribbon(0.9, starts)).toThrow("starts");
});

test("portions are whole increments, and a mass that is a bit off one lies on it", () => {
  const { total, step, mass, down, of } = portionsOf(1, 0.025);
  expect([total, step, of(0.1)]).toEqual([1000, 25, expect.closeTo(100, 9)]);
  expect([down(99), down(100), down(100 - 1e-11), down(124.9)]).toEqual([75, 100, 100, 100]);
  expect(mass(75)).toBe(0.075);
  const free = portionsOf(1, undefined);
  expect([free.total, free.step, free.mass(0.3), free.down(0.3), free.of(0.3)]).toEqual([1, 0, 0.3, 0.3, 0.3]);
});

const doubling = {
  massGelFormer: 1,
  densityOil: 915,
  densityGelFormer: 1250,
  share: { law: "constant", value: 1 },
} as const;

test("additions of all that is in the vessel double it; equal ones are as large as the first may be", () => {
  const masses = (of: object) =>
    additionSchedule({ ...doubling, massToAdd: 7, ...of } as never).map(({ mass }) => mass);
  expect(masses({})).toEqual([1, 2, 4]);
  expect(masses({ massToAdd: 6 })).toEqual([1, 2, 3]);
  expect(masses({ massToAdd: 7.5 })).toEqual([1, 2, 4, 0.5]);
  expect(masses({ form: "geometric" })).toEqual([1, 2, 4].map((mass) => expect.closeTo(mass, 12)));
  expect(masses({ form: "equal" })).toEqual(Array.from({ length: 7 }, () => expect.closeTo(1, 12)));
  expect(masses({ increment: 0.4 })).toEqual([0.8, 1.6, 3.2, 1.4]);
  expect(masses({ massOil: 1 })).toEqual([2, 4, 1]);
  expect(() => masses({ increment: 1.5 })).toThrow("less than one step");
  expect(() => masses({ share: { law: "constant", value: 1e-5 } })).toThrow("more than 10000 additions");
  expect(() => masses({ form: "halved" })).toThrow('"geometric"');
  const [first] = additionSchedule({ ...doubling, massToAdd: 7 });
  expect(first).toMatchObject({ share: 1, shareMax: 1, massInVessel: 2, massOil: 1 });
});

test("oil may come to its limit by volume and no further", () => {
  // A kilogram of 1250 kg/m³ has the volume of 0.732 kg of 915 kg/m³: with that it is half oil.
  const asked = (massToAdd: number, more: object = {}) =>
    additionSchedule({ ...doubling, massToAdd, volumeFractionOilMax: 0.5, ...more });
  expect(asked(0.732).at(-1)?.volumeFractionOil).toBeCloseTo(0.5, 12);
  expect(() => asked(0.7321)).toThrow(code("unreachable"));
  expect(() => asked(0.7, { massOil: 0.1 })).toThrow("at most 0.632 kg more");
  for (const volumeFractionOilMax of [0, 1])
    expect(() => asked(0.1, { volumeFractionOilMax })).toThrow("volumeFractionOilMax");
});

test("a plant repeats the bench by its shares, to one per cent more than was tried", () => {
  const bench = { massGelFormer: 1, additions: [1, 2] };
  const masses = (more: object = {}) =>
    scheduleAtScale({ bench, massGelFormer: 10, densityOil: 915, densityGelFormer: 1250, ...more }).map(
      ({ mass }) => mass,
    );
  expect(masses()).toEqual([10, 20]);
  expect(masses({ massToAdd: 15 })).toEqual([10, 5]);
  expect(masses({ massToAdd: 30.3 })).toEqual([10, 20, expect.closeTo(0.3, 9)]);
  expect(() => masses({ massToAdd: 30.31 })).toThrow(code("unreachable"));
  expect(masses({ increment: 0.7 })).toEqual([9.8, 19.6, expect.closeTo(0.6, 9)]);
  expect(() => masses({ increment: 11 })).toThrow("an addition of less than");
});

test("what is known of a gel is given with each addition, and what is not is left out", () => {
  const readings = points([0.6, 1], [0.8, 16]);
  const along = (more: object) =>
    gelAlongAdditions({ additions: [0.5, 0.7, 0.8].map((volumeFractionOil) => ({ volumeFractionOil })), ...more });
  expect(along({})).toEqual([{}, {}, {}]);
  expect(along({ viscosity: readings })).toEqual([
    {},
    { viscosity: expect.closeTo(4, 12) },
    { viscosity: expect.closeTo(16, 9) },
  ]);
  expect(along({ viscosity: readings, torquePerViscosity: 0.5 })[1]).toEqual({
    ...{ viscosity: expect.closeTo(4, 12), torque: expect.closeTo(2, 12) },
  });
  expect(along({ yieldStress: readings })[1]).toEqual({ yieldStress: expect.closeTo(4, 12) });
  expect(along({ torquePerViscosity: 0.5 })).toEqual([{}, {}, {}]);
  for (const rows of [points([0.6, 1], [0.6, 2]), points([0.6, 1], [0.8, 2], [0.7, 3])])
    expect(() => along({ viscosity: rows })).toThrow("more oil than the reading before");
  expect(along({ viscosity: points([0, 1], [0.5, 2]) })[0]).toEqual({ viscosity: expect.closeTo(2, 12) });
});

test("a blade of nine tenths of its vessel is a wide one", () => {
  const vessel = { diameter: 1, level: 1, baffles: 0, baffleWidth: 0.1 } as const;
  const band = (diameter: number) =>
    powerBandOf({
      impeller: { kind: "flat-blade", diameter, blades: 2, bladeWidth: 0.3 },
      vessel,
      reynolds: 100,
    } as never);
  expect(band(0.899)).toEqual(bladePowerBand);
  expect(band(0.9)).toEqual(wideBladePowerBand);
});
