import { type BladedCurve, powerNumber } from "gelwright/mixing";
import { type BottomDocument, type JobDocument, type Plan, runPlan, type StirrerDocument } from "gelwright/plan";
import { describe, expect, test } from "vitest";
import { answerOf, answersOf, known } from "../support/answers.js";
import { changed, exampleJob, readOnTheWayDown } from "../support/example.js";
import { jobsByName } from "./jobs/jobs.js";

const job = exampleJob();
const withBottom = (bottom: BottomDocument) => changed(job, (draft) => Object.assign(draft.vessel, { bottom }));
const withStirrer = (stirrer: Partial<StirrerDocument>, baffles?: JobDocument["vessel"]["baffles"]) =>
  changed(job, (draft) => {
    Object.assign(draft.vessel.stirrer, stirrer);
    if (baffles) Object.assign(draft.vessel, { baffles });
  });
/** Of the melt when it begins to cool [m]. */
const depthIn = (document: JobDocument) => runPlan(document).air?.segments[0]?.depth ?? Number.NaN;

describe("the bottom of the vessel", () => {
  /** Half the width at a height above the lowest point, as drawn with compass and ruler [m]. */
  const shapes: readonly [BottomDocument, (height: number) => number][] = [
    [{ shape: "cone", depth: "120 mm" }, (height) => (0.19 * Math.min(height, 0.12)) / 0.12],
    [
      { shape: "ellipsoidal", depth: "95 mm" },
      (height) => 0.19 * Math.sqrt(1 - (1 - Math.min(height, 0.095) / 0.095) ** 2),
    ],
    [
      { shape: "dished" },
      (height) => {
        // A sphere of 380 mm, rounded into the wall with 38 mm; its centre lies on the axis.
        const [centre, fromAxis] = [0.38, 0.19 - 0.038];
        const middle = centre - Math.sqrt((0.38 - 0.038) ** 2 - fromAxis ** 2);
        const touch = centre - ((centre - middle) * 0.38) / (0.38 - 0.038);
        if (height <= touch) return Math.sqrt(0.38 ** 2 - (centre - height) ** 2);
        return height < middle ? fromAxis + Math.sqrt(0.038 ** 2 - (middle - height) ** 2) : 0.19;
      },
    ],
  ];

  test.each(shapes)("%o holds the charge at the level that slices of it add up to", (bottom, halfWidth) => {
    // Without a film, which would be another on each bottom, the charge is the same in all.
    const noFilm = (document: JobDocument) => changed(document, (draft) => draft.batch.allowances.splice(2, 1));
    const volume = depthIn(noFilm(job)) * Math.PI * 0.19 ** 2;
    const depth = depthIn(noFilm(withBottom(bottom)));
    const slices = 200_000;
    let held = 0;
    for (let i = 0; i < slices; i++) held += (Math.PI * halfWidth(((i + 0.5) / slices) * depth) ** 2 * depth) / slices;
    expect(held / volume).toBeCloseTo(1, 8);
  });

  test("stands beside the level, and a flat one is the same as none but for what is taken for granted", () => {
    const levelOf = (document: JobDocument) => answerOf(document, "stirrer-covered").figure;
    expect(levelOf(withBottom({ shape: "dished" })).assumptions).toBeUndefined();
    expect(levelOf(job).assumptions).toEqual(["bottom-taken-as-flat"]);
    // The fingerprint is that of the documents, which do differ.
    const withoutAssumption = ({ fingerprint: _, ...plan }: Plan): unknown =>
      JSON.parse(JSON.stringify(plan).replaceAll(',"assumptions":["bottom-taken-as-flat"]', ""));
    const flat = runPlan(withBottom({ shape: "flat" }));
    expect(JSON.stringify(flat)).not.toContain("bottom-taken-as-flat");
    // What rises may have further to go, and what settles is another bottom's.
    const others = ({ answers, ...plan }: Plan): unknown =>
      withoutAssumption({ ...plan, answers: answers.filter(({ id }) => id !== "air-leaves") });
    expect(others(flat)).toEqual(others(runPlan(job)));
  });

  test("that nobody stated may be a bowl, which what rises has to come through too", () => {
    // An ellipsoid a quarter of the diameter deep holds two thirds of what a cylinder of its depth does.
    const bowl = 0.38 / 12;
    const read = readOnTheWayDown(job);
    const flat = changed(read, ({ vessel }) => Object.assign(vessel, { bottom: { shape: "flat" } }));
    const through = (document: JobDocument, bubbleDiameter = 0.0002) =>
      answerOf(
        changed(document, ({ process }) => Object.assign(process.air, { bubbleDiameter: `${bubbleDiameter} m` })),
        "air-leaves",
      );
    const { min, max } = known(through(read).limit.min);
    expect(known(max) - known(min)).toBeCloseTo(bowl, 12);
    expect(known(through(flat).limit.min)).toMatchObject({ min, max: min, value: min });
    // Bubbles of Stokes rise by the square of their diameter.
    const { figure } = through(read);
    const diameterFor = (depth: number) => 0.0002 * Math.sqrt(depth / known(figure.value));
    const verdicts = (document: JobDocument) =>
      [known(max) + 1e-4, known(max) - 1e-4, known(min) + 1e-4, known(min) - 1e-4].map(
        (depth) => through(document, diameterFor(depth)).verdict,
      );
    expect(verdicts(read)).toEqual(["met", "not-known", "not-known", "not-met"]);
    expect(verdicts(flat)).toEqual(["met", "met", "met", "not-met"]);
  });

  test("that nobody stated leaves open how high a foam stands, and how long air takes out of a gel", () => {
    const foams = known(jobsByName()["vacuum-foams-over"]);
    const under = (rim: number, bottom?: BottomDocument) =>
      answerOf(
        changed(foams, ({ vessel, process }) => {
          Object.assign(process.air.vacuum, { rim: `${rim} m` });
          if (bottom) vessel.bottom = bottom;
        }),
        "vacuum-foam",
      );
    const { min, max } = under(0.52).figure;
    expect(known(max)).toBeGreaterThan(known(min));
    expect([known(max) + 1e-6, known(max) - 1e-6, known(min) - 1e-6].map((rim) => under(rim).verdict)).toEqual([
      "met",
      "not-known",
      "not-met",
    ]);
    expect(under(known(min) + 1e-6, { shape: "flat" }).verdict).toBe("met");
    const still = known(jobsByName()["air-held-for-good"]);
    const cleared = (bottom?: BottomDocument) =>
      answerOf(
        changed(still, ({ vessel }) => Object.assign(vessel, bottom && { bottom })),
        "air-has-time",
      );
    const depth = known(cleared().beside?.["depth"]) as number;
    const diameter = Number.parseFloat(still.vessel.diameter) / 1000;
    // Under one pressure bubbles rise evenly.
    expect(known(cleared().figure.max) / known(cleared().figure.min)).toBeCloseTo(1 + diameter / 12 / depth, 9);
    expect(cleared({ shape: "flat" }).figure).toMatchObject({ value: known(cleared().figure.min) });
  });

  test("decides how much film stays on it, and how much surface the charge has", () => {
    const [flat, cone] = [runPlan(job), runPlan(withBottom({ shape: "cone", depth: "120 mm" }))];
    const onBottom = ({ allowances }: Plan) => allowances.find(({ part }) => part === "bottom")?.mass ?? Number.NaN;
    // The cone's face, less the wall of a flat-bottomed vessel that what lies in it would wet.
    const area = Math.PI * 0.19 * Math.hypot(0.19, 0.12) - (4 * Math.PI * 0.19 ** 2 * 0.04) / 0.38;
    expect(onBottom(cone) / onBottom(flat)).toBeCloseTo(area / (Math.PI * 0.19 ** 2), 9);
    expect(cone.scale.surfaceToVolume).toBeLessThan(flat.scale.surfaceToVolume ?? 0);
  });

  test("says whether the least working volume that is stated covers the stirrer", () => {
    // π/4 · 0.38² · 0.15 m is 17 L, and a cone of 120 mm holds two thirds of its height less.
    const least = (min: string, bottom?: BottomDocument) =>
      answerOf(
        changed(bottom ? withBottom(bottom) : job, (draft) => {
          draft.vessel.workingVolume.min = min;
          draft.vessel.stirrer.cover = "0 mm";
        }),
        "minimum-volume",
      );
    const cone = { shape: "cone", depth: "120 mm" } as const;
    const area = Math.PI * 0.19 ** 2;
    for (const bottom of [undefined, { shape: "flat" } as const]) {
      expect(least("12 L", bottom)).toMatchObject({ verdict: "not-met", side: "below", figure: { value: 0.012 } });
      expect(known(least("12 L", bottom).limit.min?.value)).toBeCloseTo(0.15 * area, 12);
    }
    expect(least("12 L", cone).verdict).toBe("met");
    expect(known(least("12 L", cone).limit.min?.value)).toBeCloseTo((0.15 - (2 / 3) * 0.12) * area, 12);
    // Nobody asks for a cover of what follows the wall.
    const uncovered = changed(job, (draft) => delete draft.vessel.stirrer.cover);
    expect(answersOf(runPlan(uncovered), "minimum-volume")).toEqual([]);
  });

  test("is refused at its place where it is none", () => {
    expect(() => runPlan(withBottom({ shape: "cone", depth: "0 mm" }))).toThrow('vessel.bottom.depth: found "0 mm"');
    expect(() => runPlan(withBottom({ shape: "dished", knuckleToDiameter: 0.5 }))).toThrow(
      "vessel.bottom.knuckleToDiameter",
    );
    expect(() => runPlan(withBottom({ shape: "dished", crownToDiameter: 3 }))).toThrow("vessel.bottom.crownToDiameter");
    expect(() => runPlan(withBottom({ shape: "round" } as unknown as BottomDocument))).toThrow("vessel.bottom.shape");
  });
});

describe("the shape of the stirrer", () => {
  /** What it draws at the end of step 9, in which the particles are stirred in, and what else is known of the charge then. */
  const stirredIn = (document: JobDocument) => {
    const { stirring, viscosity, mass = Number.NaN, notKnown } = runPlan(document).timeline[8] ?? {};
    if (!stirring || !viscosity) throw new Error(JSON.stringify(notKnown));
    const diameter = Number.parseFloat(document.vessel.stirrer?.diameter ?? "") / 1000;
    const { speed, reynolds, power } = stirring;
    const density = (reynolds * viscosity.viscosity) / (speed * diameter ** 2);
    return { power, reynolds, jet: density * speed ** 3 * diameter ** 5, volume: mass / density };
  };
  const blades = { diameterToVessel: 200 / 380, widthToDiameter: 0.25 };
  const wide = { blades: 2, bladeAngle: 90, diameterToVessel: 340 / 380, widthToDiameter: 0.75 };

  test.each<[string, JobDocument, Omit<BladedCurve, "law" | "levelToVessel">]>([
    [
      "pitched blades with baffles",
      withStirrer(
        { kind: "pitched-blade turbine", diameter: "200 mm", blades: 6, bladeAngle: 30, bladeWidth: "50 mm" },
        { count: 4, width: "35 mm" },
      ),
      { ...blades, blades: 6, bladeAngle: 30, baffles: 4, baffleToVessel: 35 / 380 },
    ],
    [
      "a turbine of six flat blades",
      withStirrer({ kind: "flat-blade turbine", diameter: "200 mm", blades: 6, bladeWidth: "50 mm" }),
      { ...blades, blades: 6, bladeAngle: 90 },
    ],
    [
      "a paddle",
      withStirrer({ kind: "paddle", diameter: "200 mm", blades: 2, bladeWidth: "50 mm" }),
      { ...blades, blades: 2, bladeAngle: 90 },
    ],
    ["an anchor of which the arms are known", withStirrer({ armHeight: "255 mm" }), wide],
  ])("%s draws what the correlation for its blades says, in the vessel as full as it is", (_, document, curve) => {
    const { power, reynolds, jet, volume } = stirredIn(document);
    const levelToVessel = volume / (Math.PI * 0.19 ** 2) / 0.38;
    expect(
      power / jet / powerNumber({ power: { law: "kamei-hiraoka", levelToVessel, ...curve }, reynolds }),
    ).toBeCloseTo(1, 9);
  });

  test("counts for less than a power that somebody measured", () => {
    const { power, reynolds, jet } = stirredIn(
      withStirrer({ armHeight: "255 mm", laminarPowerConstant: 300, powerNumber: 0.4 }),
    );
    expect(power / jet).toBeCloseTo(300 / reynolds + 0.4, 9);
  });

  test("a kind of which nothing is known is named, with the field that would help", () => {
    const whyNot = (stirrer: Partial<StirrerDocument>) => {
      const plan = runPlan(withStirrer(stirrer));
      expect(plan.timeline[8]).not.toHaveProperty("stirring");
      return answerOf(plan, "motor-power").notKnown;
    };
    for (const kind of ["hydrofoil", "disc turbine", "other"] as const)
      expect(whyNot({ kind, diameter: "200 mm" })).toContainEqual(
        expect.objectContaining({ code: "not-stated", field: "stirrer-power", of: kind }),
      );
    // Of these blades and their width would do as well as a power.
    for (const kind of ["paddle", "flat-blade turbine"] as const)
      expect(whyNot({ kind, diameter: "200 mm", blades: 2 })).toContainEqual(
        expect.objectContaining({ code: "not-stated", field: "stirrer-power", of: kind }),
      );
  });

  test("that a kind does not have, or that does not fit, is refused at its place", () => {
    expect(() => runPlan(withStirrer({ blades: 2 }))).toThrow(
      "vessel.stirrer.blades: found 2, expected no such field for anchor",
    );
    expect(() => runPlan(withStirrer({ kind: "paddle", bladeAngle: 45 }))).toThrow("vessel.stirrer.bladeAngle");
    expect(() => runPlan(withStirrer({ armHeight: "0 mm" }))).toThrow('vessel.stirrer.armHeight: found "0 mm"');
    expect(() => runPlan(withStirrer({}, { count: 4, width: "30 mm" }))).toThrow("the room between the baffles");
    expect(() => runPlan(withStirrer({ diameter: "50 mm" }, { count: 2, width: "190 mm" }))).toThrow(
      "vessel.baffles.width",
    );
  });
});

describe("baffles and air", () => {
  const turbine = { kind: "pitched-blade turbine", diameter: "160 mm", speed: "90 rpm" } as const;
  const baffles = { count: 4, width: "35 mm" } as const;

  test("no bound for a vortex holds between baffles, and nothing is promised in its place", () => {
    const vortex = (document: JobDocument) => answerOf(document, "no-air-down-the-vortex");
    expect(vortex(withStirrer(turbine)).verdict).toBe("met");
    // Between none and the deepest that there could be.
    expect(vortex(withStirrer(turbine)).figure.min).toBe(0);
    const found = vortex(withStirrer(turbine, baffles));
    expect(found).toMatchObject({
      verdict: "not-known",
      figure: { min: null, max: null },
      notKnown: [{ code: "no-method", law: "vortex" }],
    });
  });

  test("what stirrer and baffles take up is left out of the level", () => {
    const level = (document: JobDocument) => answerOf(document, "stirrer-covered").figure.value;
    expect(level(withStirrer(turbine, baffles))).toBe(level(withStirrer(turbine)));
  });
});
