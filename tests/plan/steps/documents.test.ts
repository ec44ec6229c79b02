import type { JobDocument } from "gelwright/plan";
import { describe, expect, test } from "vitest";
import { stepsOf } from "../../support/asked.js";
import { changed, coldJob, type Draft, exampleJob } from "../../support/example.js";

/** A step of a job with something in it that no step may have. */
function withStep(job: JobDocument, number: number, fields: Draft): () => unknown {
  return () =>
    stepsOf(
      changed(job, ({ process }) => {
        process.steps[number - 1] = { ...process.steps[number - 1], ...fields };
      }),
    );
}

describe("a step of the hot route", () => {
  test.each([
    [1, { share: "0 %" }, "share"],
    [1, { share: "101 %" }, "share"],
    [1, { mass: "0 kg" }, "mass"],
    [1, { share: "50 %", mass: "1 kg" }, "mass"],
    [1, { equalAdditions: 0 }, "equalAdditions"],
    [1, { equalAdditions: 1.5 }, "equalAdditions"],
    [1, { speed: "0 rpm" }, "speed"],
    [2, { within: "0 min" }, "within"],
    [2, { to: "85 kg" }, "to"],
    [3, { for: "0 min" }, "for"],
    [5, { within: "0 min" }, "within"],
    [5, { with: "ice" }, "with"],
    [6, { for: "0 min" }, "for"],
    [7, { toViscosity: "0 Pa·s" }, "toViscosity"],
    [9, { for: "0 min" }, "for"],
    [9, { speed: "0 rpm" }, "speed"],
    [10, { for: "0 min" }, "for"],
    [10, { packsPerMinute: 30 }, "packsPerMinute"],
    [10, { held: "on the heat", jacketAt: "70 °C" }, "jacketAt"],
    [11, { for: "0 h" }, "for"],
    [11, { note: 7 }, "note"],
  ])("%i with %o is refused by its place", (number, fields, field) => {
    expect(withStep(exampleJob(), number, fields)).toThrow(`process.steps[${number - 1}].${field}`);
  });
});

describe("a step of the cold route", () => {
  test.each([
    [3, { share: "0 %" }, "share"],
    [3, { mass: "0 kg" }, "mass"],
    [3, { share: "50 %", mass: "1 kg" }, "mass"],
    [3, { additions: "by feel" }, "additions"],
    [3, { keeps: "temper" }, "keeps"],
    [3, { speed: "0 rpm" }, "speed"],
    [3, { speeds: [{ fromOil: "0 % v/v", speed: "30 rpm" }] }, "speed"],
    [3, { pump: { mass: "0 kg", in: "1 min" } }, "pump.mass"],
    [3, { pump: { mass: "1 kg", in: "0 min" } }, "pump.in"],
    [3, { increment: "0 g" }, "increment"],
    [3, { proceedWhen: 7 }, "proceedWhen"],
    [7, { for: "0 h" }, "for"],
    [7, { pressure: "0 mbar" }, "pressure"],
    [7, { speed: "0 rpm" }, "speed"],
  ])("%i with %o is refused by its place", (number, fields, field) => {
    expect(withStep(coldJob(), number, fields)).toThrow(`process.steps[${number - 1}].${field}`);
  });
});

describe("the order of the steps", () => {
  const ordered = (job: JobDocument, change: (steps: Draft[]) => void) => () =>
    stepsOf(changed(job, ({ process }) => change(process.steps)));

  test.each(["heat", "cool", "hold", "stir", "match clarity", "de-aerate", "check", "rest"])(
    "has nothing to %s before something is charged",
    (kind) => {
      const fields = { heat: { to: "60 °C" }, cool: { to: "20 °C" }, "match clarity": {}, check: { what: "its look" } };
      const own = fields[kind as keyof typeof fields] ?? { for: "5 min" };
      expect(ordered(exampleJob(), (steps) => steps.unshift({ do: kind, ...own }))).toThrow(/process\.steps\[0\]/);
    },
  );

  test.each(["heat", "stir", "match clarity", "check", "charge", "de-aerate"])(
    "has nothing to %s once packs are filled",
    (kind) => {
      const fields = {
        heat: { to: "60 °C" },
        "match clarity": {},
        check: { what: "its look" },
        charge: { phase: "C" },
      };
      const own = fields[kind as keyof typeof fields] ?? { for: "5 min" };
      expect(ordered(exampleJob(), (steps) => steps.push({ do: kind, ...own }))).toThrow(/process\.steps\[11\]/);
    },
  );

  test("cools and takes off the heat only what is where it has to be for that", () => {
    expect(ordered(exampleJob(), (steps) => steps.splice(3, 1))).toThrow(/heat/);
    expect(ordered(exampleJob(), (steps) => steps.splice(4, 0, { do: "take off the heat" }))).toThrow(/heat/);
    expect(ordered(exampleJob(), (steps) => (steps[4].with = "jacket"))).toThrow(/jacket/);
  });

  test("charges something in each part of a phase", () => {
    const parted = (fields: Draft) =>
      ordered(exampleJob(), (steps) => steps.unshift({ do: "charge", phase: "A", ...fields }));
    for (const share of ["0 %", "-10 %"]) expect(parted({ share })).toThrow("process.steps[0].share");
    for (const mass of ["0 kg", "-1 kg"]) expect(parted({ mass })).toThrow("process.steps[0].mass");
    expect(parted({ share: "10 %", mass: "1 kg" })).toThrow("process.steps[0].mass");
    // What takes the rest has to be left some.
    expect(parted({ share: "100 %" })).toThrow("process.steps[1].phase");
    // The last part is named by what it states: its rest would have no amount.
    const last = (fields: Draft) =>
      ordered(exampleJob(), (steps) => {
        steps.unshift({ do: "charge", phase: "A", mass: "1 kg" });
        Object.assign(steps[1], fields);
      });
    expect(last({ share: "50 %" })).toThrow("process.steps[1].share");
    expect(last({ mass: "2 kg" })).toThrow("process.steps[1].mass");
    for (const fields of [{ share: "1 %" }, { share: "99 %" }, { mass: "1 g" }]) expect(parted(fields)).not.toThrow();
  });

  test("adds oil by a schedule to what is charged, and to nothing that is in packs", () => {
    expect(ordered(coldJob(), (steps) => steps.unshift(...steps.splice(2, 1)))).toThrow(/process\.steps\[0\]/);
    expect(ordered(coldJob(), (steps) => steps.push({ ...steps[2], share: "10 %" }))).toThrow(/process\.steps\[8\]/);
  });

  test("holds at a temperature or on a jacket, not both", () => {
    const both = { do: "hold", for: "5 min", at: "80 °C", jacketAt: "80 °C" };
    expect(ordered(exampleJob(), (steps) => steps.splice(4, 0, both))).toThrow(/process\.steps\[4\]\.jacketAt/);
  });

  test("lets a check take its time, or none", () => {
    const checked = (fields: Draft) =>
      ordered(exampleJob(), (steps) => steps.splice(4, 0, { do: "check", what: "its look", ...fields }));
    for (const fields of [{}, { for: "5 min" }, { expect: "clear", note: "in daylight" }])
      expect(checked(fields)).not.toThrow();
    expect(checked({ for: "0 min" })).toThrow(/for/);
  });
});
