import { type JobDocument, runPlan } from "gelwright/plan";
import { describe, expect, it } from "vitest";
import { answerOf, figureOf, known } from "../support/answers.js";
import { changed, coldJob, type Draft, exampleJob } from "../support/example.js";

/** The kettle, whose packs are filled at once, so that all of them are as warm. */
const kettle = (change: (draft: Draft) => void = () => {}): JobDocument =>
  changed(exampleJob(), (draft) => {
    delete draft.process.steps.find(({ do: kind }: Draft) => kind === "fill").for;
    change(draft);
  });

/** The same with packs that cool as one lump each. */
const lumps = (change: (draft: Draft) => void = () => {}): JobDocument =>
  kettle((draft) => {
    delete draft.pack.content;
    draft.pack.heatLoss = "0.05 W/K";
    change(draft);
  });

const resting = (seconds: number, job: JobDocument): JobDocument =>
  changed(job, ({ process }) => Object.assign(process.steps.at(-1), { for: `${seconds} s` }));

describe("the heat that a pack gives off as it sets", () => {
  it.each([
    ["by conduction", kettle()],
    ["as a lump", lumps()],
  ])("lengthens the time until its centre has set, %s: met beyond the longest alone", (_how, job) => {
    const { figure } = answerOf(job, "set-at-centre");
    const [value, max] = [known(figure.value), known(figure.max)];
    expect(figure.min).toBe(value);
    expect(figure.assumptions).toContain("latent-heat-of-setting-left-out");
    const at = (seconds: number): string => answerOf(resting(seconds, job), "set-at-centre").verdict;
    expect([0.999 * value, 1.001 * value, 0.999 * max, 1.001 * max].map(at)).toEqual([
      "not-met",
      "not-known",
      "not-known",
      "met",
    ]);
  });

  it("never lengthens it beyond that, wherever above the setting temperature it is given off", () => {
    const { figure } = answerOf(lumps(), "set-at-centre");
    const [value, max] = [known(figure.value), known(figure.max)];
    const plan = runPlan(lumps());
    const sets = known(plan.gelPoints.find(({ what }) => what === "sets")).temperature;
    const fill = known(plan.timeline.find(({ step }) => step.do === "fill"));
    const filled = known(fill.temperatureEnd);
    // 9 % of gel former gives off 110 kJ/kg over 6 K; a gram of the melt takes up 2.03 J/K in the middle of its fall.
    const [heat, width, room] = [(0.09 * 110) / 2.03, 6, 21];
    const lasting = value / Math.log((filled - room) / (sets - room));
    const cooled = (onset: number): number => {
      const step = (filled - sets) / 20_000;
      let time = 0;
      for (let temperature = filled - step / 2; temperature > sets; temperature -= step) {
        const x = (temperature - onset) / width;
        const slope = x > 0 && x < 1 ? (30 * x ** 2 * (1 - x) ** 2) / width : 0;
        time += (lasting * (1 + heat * slope) * step) / (temperature - room);
      }
      return time;
    };
    expect(cooled(filled) / value).toBeCloseTo(1, 3);
    for (const below of [-6, -4, -3, -2, -1, 0]) {
      const time = cooled(sets + below);
      expect(time).toBeGreaterThanOrEqual(0.9999 * value);
      expect(time).toBeLessThan(max);
    }
    expect(max / value).toBeCloseTo(1 + ((15 / 8) * heat) / width, 2);
  });

  it("has no end where it is not stated how a gel former melts", () => {
    const answer = answerOf(
      kettle(({ formula }) => delete formula.materials.gelFormer.melting),
      "set-at-centre",
    );
    expect(answer).toMatchObject({ verdict: "not-known", figure: { max: null } });
    expect(figureOf(answer)).toBeGreaterThan(0);
  });

  it("is none of an emulsion, in which nothing sets", () => {
    const rested = changed(coldJob(), ({ process, pack }) => {
      process.steps.push({ do: "rest", for: "1 h" });
      pack.heatLoss = "0.05 W/K";
      delete pack.content;
    });
    expect(JSON.stringify(runPlan(rested).timeline)).not.toContain("latent-heat-of-setting");
  });
});
