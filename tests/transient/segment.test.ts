import fc from "fast-check";
import { coolingSegment, type SegmentInput, temperatureAfter, transientSegment } from "gelwright/transient";
import { expect, test } from "vitest";
import { between } from "../support/between.js";
import { march } from "../support/ode.js";

const off = (actual: number, expected: number) => Math.abs(actual / expected - 1);

const newton = fc.record({
  temperatureStart: between(40, 120),
  temperatureAmbient: between(5, 30),
  heatCapacity: between(500, 1e6),
  conductance: between(0.1, 50),
  /** How much of the way to the room is gone. */
  share: between(0.001, 0.999),
});

test("with a constant conductance the segment is the exponential, to 1e-12, in both directions of the question", () => {
  fc.assert(
    fc.property(newton, ({ conductance, share, ...vessel }) => {
      const heatLoss = { law: "newton", conductance } as const;
      const gap = vessel.temperatureStart - vessel.temperatureAmbient;
      const temperatureEnd = vessel.temperatureAmbient + gap * (1 - share);
      const exact = (vessel.heatCapacity / conductance) * Math.log(gap / (temperatureEnd - vessel.temperatureAmbient));
      expect(off(coolingSegment({ ...vessel, heatLoss, temperatureEnd }).duration, exact)).toBeLessThan(1e-12);
      const reached = coolingSegment({ ...vessel, heatLoss, duration: exact }).temperatureEnd;
      expect(Math.abs(reached - temperatureEnd)).toBeLessThan(1e-11);
    }),
  );
});

test("the heat that has left is the heat that the content has lost, whatever the law of loss", () => {
  fc.assert(
    fc.property(newton, between(1, 1.6), ({ conductance, share, heatCapacity, ...way }, power) => {
      const loss = (at: number) => conductance * (at - way.temperatureAmbient) ** power;
      const capacity = (at: number) => heatCapacity * (1 + at / 400);
      const end = way.temperatureStart - share * (way.temperatureStart - way.temperatureAmbient);
      const { totals } = transientSegment({
        temperatureStart: way.temperatureStart,
        temperatureLimit: way.temperatureAmbient,
        temperatureEnd: end,
        heatCapacity: capacity,
        heatFlow: (at) => -loss(at),
        rates: { lost: loss },
      });
      const content = (at: number) => heatCapacity * (at + at ** 2 / 800);
      expect(Math.abs(totals.lost - (content(way.temperatureStart) - content(end)))).toBeLessThan(
        1e-12 * content(way.temperatureStart),
      );
    }),
  );
});

const vessel: SegmentInput<"age" | "time"> = {
  temperatureStart: 85,
  temperatureLimit: 20,
  heatCapacity: (at) => 2e5 * (1 + at / 500),
  heatFlow: (at) => -3 * (at - 20) ** 1.25,
  rates: { age: (at) => Math.exp((at - 20) / 14), time: () => 1 },
};

test("a segment is the sum of its stretches, and its time is the total of one", () => {
  fc.assert(
    fc.property(between(31, 84), (at) => {
      const whole = transientSegment({ ...vessel, temperatureEnd: 30 });
      const first = transientSegment({ ...vessel, temperatureEnd: at });
      const second = transientSegment({ ...vessel, temperatureStart: at, temperatureEnd: 30 });
      expect(off(first.duration + second.duration, whole.duration)).toBeLessThan(1e-13);
      expect(off(first.totals.age + second.totals.age, whole.totals.age)).toBeLessThan(1e-13);
      expect(off(whole.totals.time, whole.duration)).toBeLessThan(1e-14);
    }),
  );
});

test("the temperature after the time to a temperature is that temperature", () => {
  fc.assert(
    fc.property(between(20.01, 84.9), (temperatureEnd) => {
      const { duration } = transientSegment({ ...vessel, temperatureEnd });
      expect(Math.abs(temperatureAfter({ ...vessel, duration }) - temperatureEnd)).toBeLessThan(1e-9);
      expect(
        off(
          transientSegment({ ...vessel, duration }).totals.age,
          transientSegment({ ...vessel, temperatureEnd }).totals.age,
        ),
      ).toBeLessThan(1e-9);
    }),
  );
});

test("segments of one after another come to where one long segment comes to", () => {
  fc.assert(
    fc.property(between(0, 2e5), between(0, 2e5), (first, second) => {
      const halfway = temperatureAfter({ ...vessel, duration: first });
      const both = temperatureAfter({ ...vessel, temperatureStart: halfway, duration: second });
      expect(Math.abs(both - temperatureAfter({ ...vessel, duration: first + second }))).toBeLessThan(1e-9);
    }),
  );
});

test("odex, marching in time, comes to the same temperature and the same age (1e-9: what it reaches at 1e-11)", () => {
  const { duration, totals } = transientSegment({ ...vessel, temperatureEnd: 40 });
  const capacity = (at: number) => 2e5 * (1 + at / 500);
  const [temperature = Number.NaN, age = Number.NaN] = march(
    (_time, [at = Number.NaN]) => [(-3 * (at - 20) ** 1.25) / capacity(at), Math.exp((at - 20) / 14)],
    [85, 0],
    duration,
  );
  expect(Math.abs(temperature - 40)).toBeLessThan(1e-7);
  expect(off(totals.age, age)).toBeLessThan(1e-9);
});

// A lumped vessel with a vertical wall after Churchill and Chu (1975) and grey radiation; times and temperatures by
// scipy 1.17.1, integrate.quad of C/q over temperature, which solve_ivp confirms within 1e-6; nine digits are given.
test.each([
  {
    start: 85,
    end: 45,
    ambient: 20,
    capacity: 210000,
    height: 0.6,
    area: 1.2,
    emissivity: 0.3,
    flow: 615.505097,
    duration: 24172.7091,
    afterAnHour: 75.4626016,
  },
  {
    start: 80,
    end: 50,
    ambient: 22,
    capacity: 1640,
    height: 0.12,
    area: 0.05,
    emissivity: 0.9,
    flow: 38.8410218,
    duration: 1950.28283,
    afterAnHour: 38.292534,
  },
])("a vessel of $area m² that loses heat by convection and radiation", (given) => {
  const { ambient, height, area, emissivity } = given;
  const kelvin = 273.15;
  const loss = (at: number) => {
    const film = (at + ambient) / 2 + kelvin;
    const rayleigh = ((9.80665 / film) * (at - ambient) * height ** 3 * 0.705) / 1.75e-5 ** 2;
    const nusselt = (0.825 + (0.387 * rayleigh ** (1 / 6)) / (1 + (0.492 / 0.705) ** (9 / 16)) ** (8 / 27)) ** 2;
    const radiated = emissivity * 5.670374419e-8 * ((at + kelvin) ** 4 - (ambient + kelvin) ** 4);
    return area * (((nusselt * 0.0272) / height) * (at - ambient) + radiated);
  };
  const cooling = {
    temperatureStart: given.start,
    temperatureLimit: ambient,
    heatCapacity: given.capacity,
    heatFlow: (at: number) => -loss(at),
  };
  expect(off(loss(given.start), given.flow)).toBeLessThan(2e-9);
  expect(off(transientSegment({ ...cooling, temperatureEnd: given.end }).duration, given.duration)).toBeLessThan(5e-9);
  expect(off(temperatureAfter({ ...cooling, duration: 3600 }), given.afterAnHour)).toBeLessThan(5e-9);
});

test("heating without a loss is a straight line, and needs no limit", () => {
  const heating = { temperatureStart: 20, heatCapacity: 1000, heatFlow: () => 100 };
  expect(transientSegment({ ...heating, temperatureEnd: 80 }).duration).toBeCloseTo(600, 9);
  expect(transientSegment({ ...heating, duration: 600 }).temperatureEnd).toBeCloseTo(80, 10);
});

test("heating against a loss approaches its steady temperature", () => {
  const heating = {
    temperatureStart: 20,
    temperatureLimit: 120,
    heatCapacity: 1000,
    heatFlow: (at: number) => 300 - 3 * (at - 20),
  };
  expect(off(transientSegment({ ...heating, temperatureEnd: 100 }).duration, (1000 / 3) * Math.log(5))).toBeLessThan(
    1e-12,
  );
  expect(() => transientSegment({ ...heating, temperatureEnd: 125 })).toThrow(
    "a temperature short of the limit, 120 °C",
  );
  expect(() => transientSegment({ ...heating, temperatureLimit: undefined, temperatureEnd: 125 })).toThrow(
    "expected a flow that warms to the end",
  );
});

test("a melting range takes its heat, named or not", () => {
  const latent = (at: number) => (at > 60 && at < 64 ? 51000 : 1000);
  const heating = { temperatureStart: 20, temperatureEnd: 90, heatCapacity: latent, heatFlow: () => 100 };
  expect(transientSegment({ ...heating, breakpoints: [64, 60] }).duration).toBeCloseTo(2700, 8);
  expect(off(transientSegment(heating).duration, 2700)).toBeLessThan(1e-4);
});

test("after weeks the vessel has its room's temperature, and what accumulates goes on at that of the room", () => {
  const idle = {
    temperatureStart: 85,
    temperatureAmbient: 20,
    heatCapacity: 210000,
    heatLoss: { law: "newton", conductance: 15 },
    rates: { time: () => 1, degrees: (at: number) => at },
  } as const;
  const weeks = coolingSegment({ ...idle, duration: 5e6 });
  expect(weeks.temperatureEnd).toBe(20);
  expect(off(weeks.totals.time, 5e6)).toBeLessThan(1e-12);
  // From 1e-6 K above the room on, the way that is left to the room counts as gone.
  expect(off(weeks.totals.degrees, 20 * 5e6 + 65 * 14000)).toBeLessThan(1e-9);
  const still = coolingSegment({ ...idle, temperatureStart: 20, duration: 60 });
  expect(still).toEqual({ temperatureEnd: 20, duration: 60, totals: { time: 60, degrees: 1200 } });
});

test("a cold vessel warms to its room", () => {
  const cold = {
    temperatureStart: 5,
    temperatureAmbient: 20,
    heatCapacity: 1000,
    heatLoss: { law: "newton", conductance: 2 },
  } as const;
  expect(off(coolingSegment({ ...cold, temperatureEnd: 15 }).duration, 500 * Math.log(3))).toBeLessThan(1e-12);
});

test("a segment to its own start takes no time", () => {
  expect(transientSegment({ ...vessel, temperatureEnd: 85 })).toEqual({
    temperatureEnd: 85,
    duration: 0,
    totals: { age: 0, time: 0 },
  });
  expect(transientSegment({ ...vessel, duration: 0 })).toMatchObject({ duration: 0, totals: { age: 0, time: 0 } });
});

test.each([
  ["an end beyond the room", { temperatureEnd: 19 }, "unreachable"],
  ["the room itself", { temperatureEnd: 20 }, "unreachable"],
  ["an end that would need heat", { temperatureEnd: 90 }, "unreachable"],
  ["neither an end nor a time", {}, "input"],
  ["both an end and a time", { temperatureEnd: 40, duration: 60 }, "input"],
  ["a flow that gives no number", { temperatureEnd: 40, heatFlow: () => Number.NaN }, "input"],
  ["a flow that is no function", { temperatureEnd: 40, heatFlow: 5 }, "input"],
  ["a rate that gives no number", { temperatureEnd: 40, rates: { age: () => Number.NaN } }, "input"],
  ["a heat capacity of nothing", { temperatureEnd: 40, heatCapacity: () => 0 }, "input"],
  [
    "a flow that stops on the way",
    { temperatureEnd: 40, heatFlow: (at: number) => (at > 60 ? -100 : 0) },
    "unreachable",
  ],
  [
    "a rate that swings wildly",
    { temperatureEnd: 40, rates: { age: (at: number) => Math.sin(1e7 * at) } },
    "not-converged",
  ],
])("%s is refused", (_name, change, code) => {
  expect(() => transientSegment({ ...vessel, ...change } as never)).toThrow(expect.objectContaining({ code }));
});
