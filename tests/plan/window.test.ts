import { viscosityAt } from "gelwright/laws";
import { type Plan, type PlanParticle, runPlan } from "gelwright/plan";
import { describe, expect, test } from "vitest";
import { type Answer, answerOf, known } from "../support/answers.js";
import { changed, type Draft, exampleJob } from "../support/example.js";
import { march } from "../support/ode.js";

const readings = [
  [75, 0.03],
  [66, 0.09],
  [62, 0.5],
  [59, 2.6],
  [57, 8.5],
  [54, 34],
] as const;
const viscosity = {
  law: "readings",
  points: readings.map(([temperature, viscosity]) => ({ temperature, viscosity })),
} as const;
const scrub = { diameter: 120e-6, density: 1400 };

/** The example with plain numbers throughout: what every material shares can be integrated by hand. */
const plain = (change: (draft: Draft) => unknown = () => undefined): Plan =>
  runPlan(
    changed(exampleJob(), (draft) => {
      for (const material of Object.values<Draft>(draft.formula.materials)) {
        delete material.propertiesOf;
        delete material.melting;
        material.specificHeat = "2000 J/(kg·K)";
        material.conductivity = "0.17 W/(m·K)";
        material.density = { value: "920 kg/m³", at: "20 °C" };
      }
      Object.assign(draft.formula.materials.pearl, { particle: { diameter: "120 µm", density: "1400 kg/m³" } });
      draft.vessel.heatLoss = "3.5 W/K";
      delete draft.vessel.coolingCurve;
      // The way down is integrated without the heat of stirring, which tests/plan/stirring.test.ts looks at.
      delete draft.vessel.stirrer;
      for (const step of draft.process.steps) delete step.speed;
      draft.bench.settlingAllowed = "1 mm";
      for (const of of draft.bench.viscosities)
        of.readings = readings.map(([at, viscosity]) => ({ at: `${at} °C`, viscosity: `${viscosity} Pa·s` }));
      change(draft);
    }),
  );
const pearl = ({ weighing }: Plan): number =>
  weighing.lines.find(({ material }) => material === "pearl")?.mass ?? Number.NaN;
const particle = ({ particles }: Plan): PlanParticle => particles[0] as PlanParticle;
const windowOf = (plan: Plan) => {
  const { window } = particle(plan);
  if (window?.timeMin === undefined || window.timeMax === undefined)
    throw new Error(`no window: ${JSON.stringify(particle(plan))}`);
  return { ...window, timeMin: window.timeMin, timeMax: window.timeMax };
};

describe("the window", () => {
  const plan = plain();
  const room = 21;
  const conductance = 3.5;
  const wall = 12 * 500;
  const off = plan.timeline[3]?.timeEnd ?? Number.NaN;
  const added = plan.timeline[5];
  const before = plan.timeline[6];
  const after = plan.timeline[7];
  const cooled = (before?.temperatureEnd ?? Number.NaN) - (after?.temperatureEnd ?? Number.NaN);

  test("opens and closes when odex, marching the cooling of the melt in time, comes to those temperatures (1e-8)", () => {
    const capacity = (before?.mass ?? Number.NaN) * 2000 + wall;
    const { temperatureMax, temperatureMin, timeMin, timeMax } = windowOf(plan);
    for (const [temperature, time] of [
      [temperatureMax, timeMin],
      [temperatureMin, timeMax],
    ] as const) {
      const duration = time + off - (added?.timeEnd ?? Number.NaN);
      const [reached = Number.NaN] = march(
        (_, [at = Number.NaN]) => [(-conductance * (at - room) * duration) / capacity],
        [added?.temperatureEnd ?? Number.NaN],
        1,
        1e-13,
      );
      expect(Math.abs(reached - temperature) / temperature).toBeLessThan(1e-8);
    }
  });

  test("opens where odex, integrating the way of a grain until the gel sets, finds what is allowed (1e-8)", () => {
    // It goes in too hot, and the kettle is left to itself until the gel has set: the way is the kettle's alone.
    const plan = plain((draft) => {
      draft.process.steps[6] = { do: "cool", to: "66 °C" };
      draft.process.steps[8] = { do: "cool", to: "45 °C" };
    });
    const [before, after] = [plan.timeline[6], plan.timeline[7]];
    const cooled = (before?.temperatureEnd ?? Number.NaN) - (after?.temperatureEnd ?? Number.NaN);
    const mass = after?.mass ?? Number.NaN;
    const capacity = mass * 2000 + wall;
    const share = pearl(plan) / plan.weighing.total;
    const volumeFraction = share / 1400 / (share / 1400 + (1 - share) / 920);
    // Cheng's drag at these Reynolds numbers, below 1e-3: solved for the velocity by a few rounds.
    const velocity = (at: number) => {
      const thick = viscosityAt({ law: viscosity, temperature: at, beyond: "extend" });
      const stokes = (9.80665 * scrub.diameter ** 2 * (scrub.density - 920)) / (18 * thick);
      let own = stokes;
      for (let round = 0; round < 30; round += 1) {
        const reynolds = (920 * own * scrub.diameter) / thick;
        const drag =
          (1 + 0.27 * reynolds) ** 0.43 + ((0.47 * reynolds) / 24) * (1 - Math.exp(-0.04 * reynolds ** 0.38));
        own = stokes / drag;
      }
      return own * (1 - volumeFraction) ** 4.65;
    };
    const sets = plan.gelPoints[0]?.temperature ?? Number.NaN;
    const warmest = known(particle(plan).window).temperatureMax - cooled;
    // From one reading to the next, since the curve through them has a breakpoint in its second slope there.
    const edges = [sets, ...readings.map(([at]) => at).filter((at) => at > sets && at < warmest), warmest].sort(
      (one, other) => one - other,
    );
    let way = 0;
    for (const [i, low] of edges.slice(0, -1).entries()) {
      const span = (edges[i + 1] as number) - low;
      const rate = (along: number) => {
        const at = low + along * span;
        return (1e4 * velocity(at) * capacity * span) / (conductance * (at - room));
      };
      way += (march((along) => [rate(along)], [0], 1, 1e-13)[0] ?? Number.NaN) / 1e4;
    }
    expect(Math.abs(way / 0.001 - 1)).toBeLessThan(1e-8);
  });

  test("closes at the viscosity that can still be stirred, less what the addition cools", () => {
    const { temperatureMin } = windowOf(plan);
    expect(viscosityAt({ law: viscosity, temperature: temperatureMin - cooled })).toBeCloseTo(10, 9);
  });

  test("a lighter, finer grain or more settling opens it sooner; a slower kettle has it later", () => {
    const opens = (change: (draft: Draft) => unknown) => windowOf(plain(change)).timeMin;
    const { timeMin, timeMax } = windowOf(plan);
    const grain = (of: object) => (draft: Draft) => Object.assign(draft.formula.materials.pearl.particle, of);
    expect(opens(grain({ diameter: "80 µm" }))).toBeLessThan(timeMin);
    expect(opens(grain({ density: "1100 kg/m³" }))).toBeLessThan(timeMin);
    expect(opens((draft) => Object.assign(draft.bench, { settlingAllowed: "2 mm" }))).toBeLessThan(timeMin);
    const lagged = windowOf(plain((draft) => Object.assign(draft.vessel, { heatLoss: "2 W/K" })));
    expect(lagged.timeMax).toBeGreaterThan(timeMax);
    expect(lagged.temperatureMax).toBeLessThan(windowOf(plan).temperatureMax);
  });

  test("is told in °C and in time after the heat is off, at both scales, and what goes in lies in it", () => {
    for (const scale of ["beaker", "kettle"] as const) {
      const own = runPlan(exampleJob(scale));
      const { temperatureMin, temperatureMax, timeMin, timeMax, isOpen } = windowOf(own);
      expect(isOpen).toBe(true);
      expect(temperatureMin).toBeLessThan(temperatureMax);
      expect(timeMin).toBeGreaterThan(0);
      expect(timeMin).toBeLessThan(timeMax);
      const { goesIn } = particle(own);
      expect(known(goesIn).temperature).toBeGreaterThan(temperatureMin);
      expect(known(goesIn).temperature).toBeLessThan(temperatureMax);
      expect(known(goesIn?.time)).toBeGreaterThan(timeMin);
      expect(known(goesIn?.time)).toBeLessThan(timeMax);
    }
  });

  test("a grain too heavy for any time says so: an empty limit lets nothing in", () => {
    const heavy = plain((draft) =>
      Object.assign(draft.formula.materials.pearl.particle, { diameter: "800 µm", density: "4000 kg/m³" }),
    );
    expect(particle(heavy).window?.isOpen).toBe(false);
    const { verdict, limit } = answerOf(heavy, "particles-go-in", { material: "pearl" });
    expect(verdict).toBe("not-met");
    expect(known(limit.min?.value)).toBeGreaterThan(known(limit.max?.value));
  });
});

describe("shape and sizes", () => {
  const inVessel = (of: object) =>
    known(particle(plain((draft) => Object.assign(draft.formula.materials.pearl.particle, of))).settles?.inVessel);

  test("a grain sinks slower than the sphere of its volume by Ganser's K₁ in creeping flow, a flake edge on slower still", () => {
    const sphere = inVessel({});
    const slow = 1 / (1 / 3 + 2 / 3 / Math.sqrt(0.6));
    expect(inVessel({ sphericity: 0.6 }) / sphere).toBeCloseTo(slow, 2);
    // A flake of 5 µm: 480 µm wide; 9πd/(16D) for a disc edge on.
    const width = Math.sqrt((2 * 120 ** 3) / (3 * 5));
    expect(inVessel({ thickness: "5 µm" }) / sphere).toBeCloseTo((9 * Math.PI * 120) / (16 * width), 2);
    // Nearly round and edge on, a spheroid has even a little less drag than the sphere of its volume.
    expect(inVessel({ thickness: "60 µm" }) / sphere).toBeCloseTo(1.01, 2);
    expect(inVessel({ thickness: "100 µm" })).toBe(sphere);
  });

  test("a flake is held by the shear on both its faces, whatever its width", () => {
    const plan = plain((draft) => Object.assign(draft.formula.materials.pearl.particle, { thickness: "5 µm" }));
    expect(particle(plan).yieldStressNeeded?.max).toBeCloseTo(((1400 - 920) * 9.80665 * 5e-6) / 2, 12);
    expect(particle(plan).largestSuspended).toMatchObject({ of: "thickness" });
  });

  test("of a size analysis the share that settles too far is told, and decides", () => {
    const with120 = (coarse: number) =>
      plain((draft) => {
        draft.formula.materials.pearl.particle.sizes = [
          { diameter: "30 µm", share: `${100 - coarse} %` },
          { diameter: "400 µm", share: `${coarse} %` },
        ];
      });
    expect(particle(with120(20)).massFractionBeyond).toBeCloseTo(0.2, 12);
    const settles = (plan: Plan): Answer => answerOf(plan, "particles-settle", { material: "pearl" });
    expect(settles(with120(20))).toMatchObject({ verdict: "not-met", side: "above" });
    expect(settles(with120(20)).beside?.["massFractionBeyond"]).toBeCloseTo(0.2, 12);
    expect(particle(with120(0)).massFractionBeyond).toBe(0);
    expect(settles(with120(0)).verdict).toBe("met");
  });
});

test("a pigment takes the oil of its oil absorption, and thickens the melt by Krieger and Dougherty's law up to there", () => {
  const plan = plain((draft) => Object.assign(draft.formula.materials.pearl.particle, { oilAbsorption: "60 %" }));
  const { wettingOil, thickening } = particle(plan);
  expect(wettingOil).toBeCloseTo(0.6 * pearl(plan), 12);
  const packed = 1 / (1 + (0.6 * 1400) / 930);
  const share = 0.008 / 1400 / (0.008 / 1400 + 0.992 / 920);
  expect(thickening).toBeCloseTo((1 - share / packed) ** (-2.5 * packed), 4);
});
