import { answerQuestions, type JobDocument, prepareJob, remedies, runPlan } from "gelwright/plan";
import { describe, expect, test } from "vitest";
import { answerOf, figureOf } from "../support/answers.js";
import { changed, exampleJob } from "../support/example.js";

/** The hot route's example in a vessel of so many litres. */
function inVessel(litres: number, lots?: number): JobDocument {
  return changed(exampleJob(), (draft) => {
    draft.vessel.workingVolume = { min: "2 L", max: `${litres} L` };
    if (lots !== undefined) draft.batch.lots = lots;
    // What states no expansion has a volume between two ends.
    for (const one of Object.values<{ density?: { fallPerKelvin?: string } }>(draft.formula.materials))
      if (one.density) one.density.fallPerKelvin ??= "0.6 kg/m³";
  });
}

/** What the example takes at its fullest, hot [L], and cold. */
const hottest = 1000 * figureOf(answerOf(inVessel(30, 1), "working-volume"));
const cold = 1000 * (runPlan(inVessel(200, 1)).lots.volume ?? 0);

describe("the working volume", () => {
  test("is held by a lot that is hot, not only at 20 °C", () => {
    expect(hottest).toBeGreaterThan(cold);
    expect(answerOf(inVessel(hottest + 1e-6, 1), "working-volume").verdict).toBe("met");
    const full = answerOf(inVessel(hottest - 1e-6, 1), "working-volume");
    expect(full).toMatchObject({ verdict: "not-met", side: "above", at: { place: "vessel" } });
    expect(full.at.step).toBeGreaterThan(1);
  });

  test("is asked of a lot at 20 °C by its lower end, as it is least there", () => {
    const least = (litres: number) =>
      answerOf(
        changed(inVessel(200, 1), ({ vessel }) => (vessel.workingVolume.min = `${litres} L`)),
        "working-volume",
      );
    expect(least(cold - 1e-6).verdict).toBe("met");
    expect(least(cold + 1e-6)).toMatchObject({ verdict: "not-met", side: "below" });
  });

  test("that a hot lot passes is mended by more lots", () => {
    // Cold it is one lot; hot it is too much.
    const prepared = prepareJob(inVessel((hottest + cold) / 2));
    const [answer] = answerQuestions({ prepared, questions: ["working-volume"] });
    expect(answer?.verdict).toBe("not-met");
    const [remedy, another] = remedies({ prepared, answer: { id: "working-volume", of: {} } });
    expect(another).toBeUndefined();
    expect(remedy).toMatchObject({ lever: "more-lots", change: { change: "lots", value: 2 } });
    expect(remedy?.answer.verdict).toBe("met");
  });
});

describe("a number of lots", () => {
  test("may be asked for, and each holds whole packs", () => {
    const { lots } = runPlan(inVessel(200, 7));
    expect(lots).toMatchObject({ count: 7, packs: 172 });
    expect(runPlan(inVessel(200, 1)).lots).toMatchObject({ count: 1, packs: 1200 });
  });
});
