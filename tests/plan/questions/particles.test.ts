import type { JobDocument } from "gelwright/plan";
import { describe, expect, test } from "vitest";
import { answered, asked, leversOf } from "../../support/asked.js";
import { changed, coldJob, type Draft, exampleJob } from "../../support/example.js";

const kettle = (change: (draft: Draft) => void): JobDocument => changed(exampleJob(), change);

describe("particles in a melt", () => {
  test("go in once for each time that they are charged, and are asked about by material", () => {
    const twice = kettle(({ formula }) => {
      formula.materials.scrub = { ...formula.materials.pearl, name: "another pigment" };
      formula.phases[1].lines.push({ material: "pearl", amount: "0.2 %" });
      formula.phases[2].lines.push({ material: "scrub", amount: "0.2 %" });
    });
    const found = asked(twice, "particles-go-in").map(({ of, states }) => [
      of.material,
      states.met + states.notMet + states.notKnown,
    ]);
    expect(found).toEqual([
      ["pearl", 2],
      ["scrub", 1],
    ]);
    const settle = asked(twice, "particles-settle").map(({ of, states }) => [
      of.material,
      states.met + states.notMet + states.notKnown,
    ]);
    expect(settle).toEqual([
      ["pearl", 4],
      ["scrub", 2],
    ]);
  });

  test("can go into a cooler or a hotter melt, and settle less in a cooler one", () => {
    const [cooler, hotter] = [
      ["cooler-melt", 80, 21, { step: 5, field: "to" }],
      ["hotter-melt", 80, 140, { step: 5, field: "to" }],
    ];
    expect(leversOf(exampleJob(), "particles-go-in")).toEqual([cooler, hotter]);
    expect(leversOf(exampleJob(), "particles-settle")).toEqual([cooler]);
  });

  test("are not asked when they go in or how far they settle in an emulsion, and whether they stay up in both", () => {
    for (const id of ["particles-go-in", "particles-settle"] as const) expect(asked(coldJob(), id)).toEqual([]);
    for (const job of [exampleJob(), coldJob()]) expect(asked(job, "particles-stay-suspended")).toHaveLength(1);
  });

  test("are stirred in up to a temperature that is known, or at least known to be no higher where the pack lacks something", () => {
    const limit = (job: JobDocument) => answered(job, "particles-go-in").limit;
    expect(limit(exampleJob()).max?.value).toBeGreaterThan(limit(exampleJob()).min?.value ?? Number.NaN);
    const unread = kettle(({ pack }) => delete pack.content);
    expect(limit(unread).max?.min).toBeNull();
    expect(limit(unread).max?.max).toBeGreaterThan(0);
    expect(answered(unread, "particles-go-in").beside?.["lacks"]).toBe("pack-cooling");
    const thick = kettle(({ bench }) => delete bench.stirrableViscosityMax);
    expect(limit(thick).min?.max).toBeNull();
    expect(answered(thick, "particles-go-in").beside?.["lacks"]).toBe("bench-stirrable-viscosity-max");
  });

  test("are held by more gel former, where one material in one line is gel former", () => {
    const [lever] = leversOf(exampleJob(), "particles-stay-suspended");
    expect(lever?.slice(0, 2)).toEqual(["more-gel-former", 0.09]);
    expect(leversOf(exampleJob(), "gel-strength")).toEqual([lever]);
    // Glycerin and surfactant are both gel former.
    expect(leversOf(coldJob(), "particles-stay-suspended")).toEqual([]);
  });
});
