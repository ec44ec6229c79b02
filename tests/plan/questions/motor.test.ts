import type { JobDocument } from "gelwright/plan";
import { describe, expect, test } from "vitest";
import { answered, leversOf } from "../../support/asked.js";
import { changed, coldJob, type Draft } from "../../support/example.js";
import { allJobsByName } from "../jobs/jobs.js";

const vessel = (change: (draft: Draft) => void): JobDocument => changed(coldJob(), change);

describe("the motor", () => {
  test("is slowed in the step that asks most of it, down to a twentieth, if that step has a speed of its own", () => {
    for (const id of ["motor-power", "motor-torque"] as const) {
      const { at } = answered(coldJob(), id);
      expect(at).toMatchObject({ step: 3, place: "vessel" });
      expect(leversOf(coldJob(), id)).toEqual([["slower-stirring", 1, 1 / 20, { step: 3, field: "speed" }]]);
      const weak = allJobsByName()["motor-too-weak"] as JobDocument;
      expect(leversOf(weak, id)).toEqual([]);
    }
  });

  test("keeps a fifth in hand of the torque that its drive gives at each end", () => {
    const limit = (drive?: string) =>
      answered(
        vessel((draft) => Object.assign(draft.vessel.stirrer.motor, drive && { drive })),
        "motor-torque",
      ).limit.max;
    const [unstated, geared, constant] = [limit(), limit("gear"), limit("constant torque")];
    // Step 3 turns faster than the usual speed: there both drives give the same.
    const torque = (0.55e3 * 0.7) / (2 * Math.PI);
    for (const one of [unstated, geared, constant]) expect(Number(one?.max) / (0.8 * torque)).toBeCloseTo(1, 6);
    expect(geared?.min).toBeCloseTo(geared?.max ?? Number.NaN, 9);
    expect(constant?.min).toBeCloseTo(constant?.max ?? Number.NaN, 9);
  });

  test("below its usual speed gives its usual torque or its power's, by its drive, and between the two where that is not stated", () => {
    const limit = (drive?: string) =>
      answered(
        vessel((draft) => {
          Object.assign(draft.vessel.stirrer, { speed: "120 rpm" });
          Object.assign(draft.vessel.stirrer.motor, drive && { drive });
        }),
        "motor-torque",
      ).limit.max;
    const ends = (drive?: string) => [limit(drive)?.min, limit(drive)?.max].map(Number);
    const [min, max] = ends() as [number, number];
    // At half its usual speed a gear gives twice the torque.
    expect(max / min).toBeCloseTo(2, 9);
    expect(ends("gear")).toEqual([expect.closeTo(max, 9), expect.closeTo(max, 9)]);
    expect(ends("constant torque")).toEqual([expect.closeTo(min, 9), expect.closeTo(min, 9)]);
  });
});
