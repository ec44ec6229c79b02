import {
  acceptSample,
  allPacksTest,
  type BatchTest,
  batchTestFor,
  batchTestsEec1976,
  batchTestsEec1976Destructive,
  batchTestsHandbook133,
  batchTestsNewZealand1999,
  batchTestsOimlR87,
  batchTestsUk2006,
  fillLimits,
  headSpace,
  overfillCost,
  packsFromBatch,
  shareRejected,
  spreadOfFill,
  targetByRules,
  targetFill,
  tolerableError,
  tolerableErrorsEec1976,
  tolerableErrorsOimlR87,
  topUp,
} from "gelwright/packing";
import { expect, test } from "vitest";

const code = (is: string) => expect.objectContaining({ code: is });
const pack = { nominal: 0.05, tolerableError: 0.0045 };
const plan: BatchTest = {
  sampleSize: 3,
  defectivesMax: 1,
  mean: { sampleSize: 3, factor: 0 },
  noneBeyondTwo: false,
};

test("the international recommendation alone rejects for a pack short by two errors, in each of its rows", () => {
  const tables = [batchTestsEec1976, batchTestsEec1976Destructive, batchTestsUk2006, batchTestsNewZealand1999];
  const strict = [...tables, batchTestsOimlR87, batchTestsHandbook133].map(
    ({ rows }) => new Set(rows.map(({ test: own }) => own.noneBeyondTwo)),
  );
  expect(strict.map((found) => [...found])).toEqual([[false], [false], [false], [false], [true], [false]]);
});

test("a row holds from its first to its last number of packs", () => {
  const size = (packs: number) => batchTestFor({ table: batchTestsUk2006, packs }).sampleSize;
  expect([100, 500, 501, 3200, 3201].map(size)).toEqual([50, 50, 80, 80, 125]);
  const ends = { ...batchTestsUk2006, rows: batchTestsUk2006.rows.slice(0, 1) };
  expect(() => batchTestFor({ table: ends, packs: 501 })).toThrow(code("range"));
});

test("a test of counts that cannot be is refused at the count", () => {
  const read = (change: object) => () =>
    acceptSample({ ...pack, test: { ...plan, ...change } as never, contents: [0.05, 0.05, 0.05] });
  expect(read({ defectivesMax: 3 })()).toMatchObject({ verdict: "accepted" });
  expect(read({ defectivesMax: 4 })).toThrow("test.defectivesMax");
  expect(read({ sampleSize: 1001 })).toThrow("test.sampleSize");
  expect(read({ mean: { sampleSize: 4, factor: 0 } })).toThrow("test.mean.sampleSize");
  expect(read({ mean: { sampleSize: 1, factor: 0 } })()).toMatchObject({ verdict: "accepted" });
  expect(read({ mean: { sampleSize: 1, factor: 0.1 } })).toThrow("test.mean.sampleSize");
  expect(read({ mean: { sampleSize: 2, factor: 1e6 } })()).toMatchObject({ verdict: "accepted" });
  expect(read({ mean: { sampleSize: 2, factor: 1.1e6 } })).toThrow("test.mean.factor");
  expect(read({ noneBeyondTwo: "no" })).toThrow("test.noneBeyondTwo");
  const second = { rejectedFrom: 2, sampleSize: 3, defectivesMax: 1 };
  expect(read({ second })()).toMatchObject({ verdict: "accepted" });
  expect(read({ second: { ...second, rejectedFrom: 4 } })()).toMatchObject({ verdict: "accepted" });
  expect(read({ second: { ...second, rejectedFrom: 5 } })).toThrow("test.second.rejectedFrom");
  expect(read({ second: { ...second, rejectedFrom: 1 } })).toThrow("test.second.rejectedFrom");
  expect(read({ second: { ...second, sampleSize: 0 } })).toThrow("test.second.sampleSize");
  expect(read({ second: { ...second, defectivesMax: 0 } })).toThrow("test.second.defectivesMax");
  expect(() => allPacksTest({ packs: 20, shareDefectiveMax: 0.05, noneBeyondTwo: 1 as never })).toThrow(
    "noneBeyondTwo",
  );
  expect(allPacksTest({ packs: 20, shareDefectiveMax: 0.05, noneBeyondTwo: true }).noneBeyondTwo).toBe(true);
});

test("the first packs alone count for the mean, and all of them for the single packs", () => {
  const own = { ...plan, mean: { sampleSize: 2, factor: 0 } };
  const { mean, spread, defectives, verdict } = acceptSample({ ...pack, test: own, contents: [0.05, 0.052, 0.04] });
  expect(mean).toEqual({ value: expect.closeTo(0.051, 12), min: 0.05, holds: true });
  expect(spread).toBeCloseTo(0.002 / Math.SQRT2, 12);
  expect([defectives.count, verdict]).toEqual([1, "accepted"]);
});

test("as many short packs as are allowed accept, one more asks for a second sample, and from the last on it is too late", () => {
  const own: BatchTest = {
    ...{ sampleSize: 6, defectivesMax: 1, mean: { sampleSize: 6, factor: 0 }, noneBeyondTwo: true },
    second: { rejectedFrom: 3, sampleSize: 2, defectivesMax: 3 },
  };
  const contents = (short: number) => Array.from({ length: 6 }, (_, i) => (i < short ? 0.045 : 0.06));
  const verdict = (short: number, contentsSecond?: readonly number[]) =>
    acceptSample({ ...pack, test: own, contents: contents(short), ...(contentsSecond && { contentsSecond }) });
  expect([0, 1, 2, 3].map((short) => verdict(short).verdict)).toEqual([
    ...["accepted", "accepted", "second sample needed", "rejected"],
  ]);
  expect(verdict(2, [0.045, 0.05])).toMatchObject({ verdict: "accepted", defectives: { count: 3, max: 3 } });
  expect(verdict(2, [0.045, 0.045])).toMatchObject({ verdict: "rejected", defectives: { count: 4, max: 3 } });
  // The second sample's packs may not be short by two errors either.
  expect(verdict(2, [0.04, 0.05])).toMatchObject({ verdict: "rejected", beyondTwo: { count: 1, holds: false } });
  expect(() => verdict(3, [0.05, 0.05])).toThrow("the first one decides");
  expect(() => verdict(1, [0.05, 0.05])).toThrow("the first one decides");
  expect(() => verdict(2, [0.05])).toThrow("found 1 packs, expected 2");
});

test("packs that are all short for certain reject every batch, and packs of which none is short none of them", () => {
  const own = { ...plan, defectivesMax: 3, mean: { sampleSize: 3, factor: 0 } };
  for (const test of [own, { ...own, defectivesMax: 0 }]) {
    expect(shareRejected({ ...pack, test, massFill: 0.04, spread: 1e-5 })).toBe(1);
    expect(shareRejected({ ...pack, test, massFill: 0.05 + 1e-4, spread: 1e-5 })).toBeCloseTo(0, 12);
  }
});

test("where all packs may be short and the mean may lie anywhere, a batch of short packs passes; one short pack too many fails", () => {
  const share = (defectivesMax: number) =>
    shareRejected({
      ...{ ...pack, massFill: 0.04, spread: 1e-5 },
      test: { ...plan, defectivesMax, mean: { sampleSize: 3, factor: 1e6 } },
    });
  // Three packs that are a million times closer to one another than usual are all that could fail.
  expect(share(3)).toBeCloseTo(0, 4);
  expect(share(2)).toBe(1);
});

/** Of a normal distribution: the share below z, as tables print it. */
const below = { "-0.5": 0.308537538725987, "-1": 0.158655253931457, "-1.5": 0.0668072012688581 } as const;

test("a mean without an allowance fails as often as a mean of normal packs lies below the nominal quantity", () => {
  for (const [size, deviations, share] of [
    [1, 0.5, below["-0.5"]],
    [4, 0.5, below["-1"]],
    [9, 0.5, below["-1.5"]],
  ] as const) {
    const own = { sampleSize: size, defectivesMax: size, mean: { sampleSize: size, factor: 0 }, noneBeyondTwo: false };
    const found = shareRejected({ ...pack, test: own, massFill: 0.05 + deviations * 0.001, spread: 0.001 });
    expect(found).toBeCloseTo(share, 9);
    const target = targetFill({ ...pack, test: own, spread: 0.001, shareRejectedMax: share });
    expect(target.overfill).toBeCloseTo(deviations * 0.001, 11);
    expect(target.limitedBy).toBe("mean");
  }
});

test("at the nominal quantity a mean less k deviations fails as Student's t of the sample does", () => {
  // t of n − 1 degrees at a tail of 0.5 % and of 5 %, as tables print it: k is t/√n.
  for (const [size, t, tail] of [
    [2, 63.6567411628, 0.005],
    [2, 6.3137515147, 0.05],
    [3, 9.9248432009, 0.005],
    [3, 2.9199855804, 0.05],
    [6, 4.0321429836, 0.005],
    [31, 2.7499956536, 0.005],
  ] as const) {
    const mean = { sampleSize: size, factor: t / Math.sqrt(size) };
    const own = { sampleSize: size, defectivesMax: size, mean, noneBeyondTwo: false };
    const found = shareRejected({ ...pack, test: own, massFill: 0.05, spread: 0.0001 });
    expect(found / tail).toBeCloseTo(1, 5);
  }
});

test("where no mean can fail, packs are short by chance: the share is the binomial one, of one sample or of two", () => {
  // 1.5 deviations below the nominal quantity is short, 3 and more are short by two errors.
  const [error, spread] = [0.0015, 0.001];
  const [p, twice] = [below["-1.5"], 0.00134989803163009];
  const q = 1 - p;
  const free = (size: number) => ({ sampleSize: size, factor: 1e6 });
  const share = (own: BatchTest) =>
    shareRejected({ nominal: 0.05, tolerableError: error, massFill: 0.05, spread, test: own });
  const single = { sampleSize: 3, mean: free(3), noneBeyondTwo: false };
  expect(share({ ...single, defectivesMax: 0 })).toBeCloseTo(1 - q ** 3, 9);
  expect(share({ ...single, defectivesMax: 1 })).toBeCloseTo(1 - q ** 3 - 3 * p * q ** 2, 9);
  expect(share({ ...single, defectivesMax: 2 })).toBeCloseTo(p ** 3, 9);
  // Packs that do not count for the mean count all the same.
  expect(share({ ...single, defectivesMax: 1, mean: free(2) })).toBeCloseTo(1 - q ** 3 - 3 * p * q ** 2, 9);
  // Of the short ones none may be short by two errors.
  const once = p - twice;
  expect(share({ ...single, defectivesMax: 1, noneBeyondTwo: true })).toBeCloseTo(1 - q ** 3 - 3 * once * q ** 2, 9);
  // Two short of three ask for two more, of which none may be short; one short accepts, three reject.
  const second = { rejectedFrom: 3, sampleSize: 2, defectivesMax: 2 };
  const both = 1 - q ** 3 - 3 * p * q ** 2 - 3 * p ** 2 * q * q ** 2;
  expect(share({ ...single, defectivesMax: 1, second })).toBeCloseTo(both, 9);
  const one = both - 3 * p ** 2 * q * 2 * p * q;
  expect(share({ ...single, defectivesMax: 1, second: { ...second, defectivesMax: 3 } })).toBeCloseTo(one, 9);
  const target = targetFill({
    ...{ nominal: 0.05, tolerableError: error, spread, test: { ...single, defectivesMax: 0 } },
    shareRejectedMax: 1 - (1 - 0.00620966532577614) ** 3,
  });
  // The normal distribution leaves 0.62 % below −2.5.
  expect(target.overfill).toBeCloseTo(0.001, 10);
  expect(target.limitedBy).toBe("single packs");
});

test("a share is a number from the smallest that is computed to below a half, both of the target's and of the rules'", () => {
  const target = (shareRejectedMax: unknown) => () =>
    targetFill({ ...pack, test: plan, spread: 0.001, shareRejectedMax: shareRejectedMax as number });
  const rules = (shareBeyondOneMax: unknown, shareBeyondTwoMax: unknown) => () =>
    targetByRules({ ...pack, spread: 0.001, shareBeyondOneMax, shareBeyondTwoMax } as never);
  expect(target(1e-9)().mass).toBeGreaterThan(0.05);
  expect(rules(1e-12, 1e-12)()).toBeGreaterThan(0.05);
  for (const wrong of [9e-10, 0.5, "0.1", Number.NaN, -0.1]) expect(target(wrong)).toThrow("shareRejectedMax");
  for (const wrong of [9e-13, 0.5, "0.1", Number.NaN]) {
    expect(rules(wrong, 0.1)).toThrow("shareBeyondOneMax");
    expect(rules(0.1, wrong)).toThrow("shareBeyondTwoMax");
  }
});

test("each of the packers' rules sets the target where it asks for most", () => {
  // Quantiles of the normal distribution: 1.2815515655 of 10 %, 3.0902323062 of 0.1 %.
  const rules = (spread: number, shareBeyondOneMax: number, shareBeyondTwoMax: number) =>
    targetByRules({ ...pack, spread, shareBeyondOneMax, shareBeyondTwoMax });
  expect(rules(0.001, 0.1, 0.1)).toBe(0.05);
  expect(rules(0.005, 0.1, 0.1)).toBeCloseTo(0.05 - 0.0045 + 1.2815515655 * 0.005, 10);
  expect(rules(0.005, 0.1, 0.001)).toBeCloseTo(0.05 - 0.009 + 3.0902323062 * 0.005, 10);
});

test("an act, its grade and the measure are stated as they are known", () => {
  const asked = (table: object, by: unknown = "mass") =>
    tolerableError({ table: { ...tolerableErrorsEec1976, ...table } as never, nominal: 0.05, by: by as "mass" });
  expect(asked({}).error).toBe(0.0045);
  expect(() => asked({}, "weight")).toThrow('"mass" or "volume"');
  expect(() => asked({ act: "" })).toThrow("table.act");
  expect(() => asked({ act: 76 })).toThrow("table.act");
  expect(() => asked({ grade: "sure" })).toThrow("table.grade");
  for (const grade of ["first-hand", "second-hand", "from memory"]) expect(asked({ grade }).grade).toBe(grade);
  expect(() => asked({ rows: [{ nominalMax: null }] })).toThrow("errorRelative or error");
});

test("a table holds from its first quantity to its last, and rounds up to its step and no further", () => {
  const error = (nominal: number, table = tolerableErrorsEec1976) =>
    tolerableError({ table, nominal, by: "mass" }).error;
  expect(error(0.005)).toBe(0.0005);
  expect(error(10)).toBe(0.15);
  expect(() => error(0.00499)).toThrow(code("range"));
  expect(() => error(10.01)).toThrow(code("range"));
  // 4.5 % of 110 g is 4.95 g, of 200 g is 9 g.
  expect([error(0.11), error(0.2)]).toEqual([0.005, 0.009]);
  expect(error(2, tolerableErrorsOimlR87)).toBe(0.03);
  expect(error(2.01, tolerableErrorsOimlR87)).toBe(0.031);
});

test("packs that hold no more than they are worth leave nothing, and a batch kept whole fills none", () => {
  expect(packsFromBatch({ massBatch: 2, massFill: 0.5, massKept: 2 })).toEqual({
    ...{ packs: 0, packsForSale: 0, massLeft: 0 },
  });
  expect(() => packsFromBatch({ massBatch: 2, massFill: 0.5, massKept: 2.01 })).toThrow("massKept");
  expect(packsFromBatch({ massBatch: 2, massFill: 0.5, shareRejected: 1 }).packsForSale).toBe(0);
  expect(() => packsFromBatch({ massBatch: 1e10, massFill: 1e-9 })).toThrow(code("range"));
  expect(overfillCost({ massFill: 0.052, nominal: 0.05, price: 30, packs: 100 })).toEqual({
    massPerPack: expect.closeTo(0.002, 12),
    costPerPack: expect.closeTo(0.06, 12),
    mass: expect.closeTo(0.2, 12),
    cost: expect.closeTo(6, 12),
  });
});

test("full packs that vary as the empty ones do were filled alike, and as heavy as those they were not filled", () => {
  expect(spreadOfFill({ gross: [4, 6, 8], tare: [1, 3, 5] })).toEqual({
    ...{ mean: 3, spread: 0, spreadGross: 2, spreadTare: 2 },
  });
  expect(() => spreadOfFill({ gross: [1, 3, 5], tare: [1, 3, 5] })).toThrow(code("range"));
});

test("a chart of fills stands three deviations to each side of the gross mass, or as many as are asked for", () => {
  const fill = { massFill: 0.05, spread: 0.003, sampleSize: 4 };
  expect(fillLimits(fill)).toEqual({
    single: { min: expect.closeTo(0.041, 12), max: expect.closeTo(0.059, 12) },
    mean: { min: expect.closeTo(0.0455, 12), max: expect.closeTo(0.0545, 12) },
  });
  expect(fillLimits({ ...fill, massTare: 0.02, spreadTare: 0.004, deviations: 2 }).single).toEqual({
    min: expect.closeTo(0.06, 12),
    max: expect.closeTo(0.08, 12),
  });
});

test("a pack that is full to the last drop has no head space left to close or to warm", () => {
  const constant = { law: "constant", density: 1000 } as const;
  const jar = { volumePack: 1, density: constant, temperatureClosing: 20, temperatureMax: 20 };
  expect(() => headSpace({ ...jar, mass: 1000 })).toThrow("a fill that fits");
  const half = headSpace({ ...jar, mass: 500 });
  expect(half).toEqual({
    ...{ volumeClosing: 0.5, volumeHot: 0.5, volumeFractionClosing: 0.5, volumeFractionHot: 0.5 },
    ...{ pressureHot: 101325, overpressureHot: 0 },
  });
  expect(headSpace({ ...jar, volumePack: 2, mass: 500 })).toMatchObject({
    ...{ volumeClosing: 1.5, volumeHot: 1.5, volumeFractionClosing: 0.75, volumeFractionHot: 0.75 },
  });
  expect(() => headSpace({ ...jar, mass: 500, temperatureMax: 19 })).toThrow("temperatureMax");
  // All of the closing pressure may be vapour; then none of it is left to be warmed.
  const boiling = { ...jar, mass: 500, pressureClosing: 5000, vapourPressureClosing: 5000, vapourPressureMax: 7000 };
  expect(headSpace(boiling).pressureHot).toBe(7000);
  expect(() => headSpace({ ...boiling, vapourPressureClosing: 5001 })).toThrow("vapourPressureClosing");
  // 1000 kg/m³ at 20 °C falls by 1 a kelvin: 950 kg fill the cubic metre at 70 °C.
  const linear = { law: "linear", density: 1000, temperatureReference: 20, slope: 1 } as const;
  const warm = headSpace({ ...jar, density: linear, mass: 950, temperatureMax: 70 });
  expect(warm).toMatchObject({ pressureHot: null, overpressureHot: null, volumeHot: 0 });
  expect(warm.temperatureFull).toBeCloseTo(70, 9);
});

test("two pours fill up to the mark to the last gram, and one is enough where it holds all", () => {
  const density = { law: "linear", density: 1000, temperatureReference: 20, slope: 2 } as const;
  const pours = { volumeMark: 1, density, temperatureFill: 70, temperatureTopUp: 20 };
  // 900 kg hot sink to 0.9 m³, in which there is room for 90 kg more.
  expect(topUp({ ...pours, massFill: 950 })).toEqual({
    massFirst: 900,
    massTopUp: 50,
    volumeSunk: expect.closeTo(0.1, 12),
    volumeLeft: expect.closeTo(1 - 0.9 - 50 / 900, 12),
  });
  expect(topUp({ ...pours, massFill: 900 })).toMatchObject({ massFirst: 900, massTopUp: 0 });
  expect(topUp({ ...pours, massFill: 989.999 }).volumeLeft).toBeGreaterThan(0);
  expect(() => topUp({ ...pours, massFill: 990.001 })).toThrow("two pours");
  // Half of the first pour's room is free when it is cold, and filled to the last drop.
  const halved = { law: "linear", density: 1024, temperatureReference: 20, slope: 8 } as const;
  const full = { massFill: 768, volumeMark: 1, density: halved, temperatureFill: 84, temperatureTopUp: 20 };
  expect(topUp(full)).toEqual({ massFirst: 512, massTopUp: 256, volumeSunk: 0.5, volumeLeft: 0 });
  // A pour that stands at the mark when it is cold as when it is hot leaves no room, and needs none.
  expect(topUp({ ...pours, massFill: 1000, temperatureFill: 20 })).toMatchObject({ massTopUp: 0, volumeLeft: 0 });
});
