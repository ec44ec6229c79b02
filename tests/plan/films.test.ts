import { type JobDocument, runPlan } from "gelwright/plan";
import { describe, expect, test } from "vitest";
import { known } from "../support/answers.js";
import { changed, coldJob, type Draft, exampleJob } from "../support/example.js";

const film = { kind: "film", name: "film in the kettle" };

/** The hot route's example with a film and with other changes. */
function hot(more: object, change: (draft: Draft) => void = () => {}): JobDocument {
  return changed(exampleJob(), (draft) => {
    delete draft.stability;
    draft.batch.allowances = [{ ...film, ...more }];
    change(draft);
  });
}

/** Fills so much later that the melt is that much cooler by the end of filling. */
function filledAt(by: number): (draft: Draft) => void {
  const plan = runPlan(exampleJob());
  const sets = known(plan.gelPoints.find(({ what }) => what === "sets")).temperature;
  return (draft) => {
    for (const step of draft.process.steps) if (step.do === "fill") delete step.for;
    const last = draft.process.steps.findIndex((step: Draft) => step.do === "fill");
    draft.process.steps.splice(last, 0, { do: "cool", to: `${sets + by} °C` });
    draft.process.steps[last + 1].for = "1 s";
  };
}

describe("the film in a vessel", () => {
  test("that is emptied hot is what has not drained of the melt", () => {
    const { films, allowances } = runPlan(hot({}));
    expect(films.allowed).toMatchObject({ isStated: false, by: "drained-film" });
    expect(known(films.allowed).thickness).toBe(films.thicknessOnWall);
    expect(known(films.allowed).thickness).toBeLessThan(known(films.thicknessMax) / 3);
    const stated = runPlan(hot({ thickness: `${1000 * known(films.allowed).thickness} mm` }));
    // The masses were found with the film of a first run.
    for (const [i, { mass }] of allowances.entries()) expect(mass / known(stated.allowances[i]).mass).toBeCloseTo(1, 2);
  });

  test("is that of the melt just above its setting temperature, and of the set gel just below", () => {
    expect(runPlan(hot({}, filledAt(0.5))).films.allowed?.by).toBe("drained-film");
    const set = runPlan(hot({}, filledAt(-0.5)));
    expect(set.films.allowed).toMatchObject({ by: "film-that-stays" });
    expect(known(set.films.allowed).thickness).toBeGreaterThanOrEqual(known(set.films.thicknessMax));
  });

  test("that is stated stands, beside the one to be expected", () => {
    const { films } = runPlan(hot({ thickness: "0.8 mm" }));
    expect(films.allowed).toEqual({
      thickness: 0.0008,
      isStated: true,
      predicted: known(films.thicknessOnWall),
      by: "drained-film",
    });
  });

  test("of an emulsion is what its yield stress holds", () => {
    expect(runPlan(coldJob()).films.allowed).toMatchObject({ thickness: 0.002, by: "film-that-stays" });
  });

  test("that is not known counts as the set gel's, and that is told", () => {
    const { films, notes } = runPlan(hot({}, (draft) => delete draft.bench.viscosities));
    expect(known(films.allowed).thickness).toBeGreaterThanOrEqual(known(films.thicknessMax));
    expect(notes.map(({ code }) => code)).toContain("film-of-the-set-gel");
    expect(runPlan(hot({})).notes.map(({ code }) => code)).not.toContain("film-of-the-set-gel");
  });
});

describe("a loss", () => {
  /** The notes on losses where so much of the product is lost as well. */
  const lost = (share: number) =>
    runPlan(
      changed(exampleJob(), (draft) => {
        delete draft.stability;
        draft.batch.allowances = [{ kind: "share", name: "left in the kettle", share: `${100 * share} %` }];
      }),
    ).notes.filter(({ code }) => code === "loss-out-of-the-ordinary");

  test("of a tenth and more is told, just above", () => {
    const [note] = lost(0.101);
    expect(note).toMatchObject({ of: "left in the kettle", shareMax: 0.1 });
    expect(note?.share).toBeCloseTo(0.101, 3);
  });

  test("of less is not, just below", () => {
    expect(lost(0.099)).toEqual([]);
  });

  /** The beaker with a film of a thickness [mm]: what it keeps of the charge, and what is told of it. */
  const kept = (thickness: number) => {
    const { allowances, lots, notes } = runPlan(
      changed(exampleJob("beaker"), ({ batch }: Draft) => {
        batch.allowances.find(({ kind }: Draft) => kind === "film").thickness = `${thickness} mm`;
      }),
    );
    const film = allowances.filter(({ name }) => name.startsWith("film")).reduce((sum, { mass }) => sum + mass, 0);
    return { share: film / lots.charge, told: notes.find(({ code }) => code === "loss-out-of-the-ordinary") };
  };

  test("as a film is counted over wall and bottom of a bench batch, just below and just above, and a third is told", () => {
    let [thin, thick] = [0.5, 4];
    expect(kept(thick).told).toMatchObject({ of: "film in the beaker", share: expect.closeTo(0.33, 2) });
    while (thick - thin > 1e-3) {
      const middle = (thin + thick) / 2;
      if (kept(middle).told) thick = middle;
      else thin = middle;
    }
    expect(kept(thin).share).toBeLessThan(0.1);
    expect(kept(thin).share).toBeCloseTo(0.1, 3);
    expect(known(kept(thick).told).share).toBeCloseTo(0.1, 3);
  });
});

test("if no thickness of a film is stated, more rheometer points are asked for if there are some, and a flow curve if there are none", () => {
  const open = (points: number): JobDocument =>
    changed(exampleJob(), ({ batch, bench }: Draft) => {
      delete batch.allowances.find(({ kind }: Draft) => kind === "film").thickness;
      for (const key of ["yieldStress", "strengthTrials", "viscosities"]) delete bench[key];
      if (points === 0) delete bench.flowCurve;
      else bench.flowCurve.points.splice(points);
    });
  expect(() => runPlan(open(4))).toThrow(/bench\.flowCurve with more points or its yieldStressBy, or/);
  expect(() => runPlan(open(0))).toThrow(/bench\.flowCurve or bench\.strengthTrials/);
  expect(() => runPlan(open(8))).not.toThrow();
});
