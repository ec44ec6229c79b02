import { type JobDocument, runPlan } from "gelwright/plan";
import { describe, expect, it } from "vitest";
import { answerOf, answersOf, known } from "../support/answers.js";
import { changed, coldJob, type Draft } from "../support/example.js";

describe("a gel former that is made warm before the cold route", () => {
  /** The vessel of the cold route, its gel former heated, held and cooled again before the oil. */
  const warm = (change: (draft: Draft) => void = () => {}): JobDocument =>
    changed(coldJob(), (draft) => {
      const { process, vessel } = draft;
      vessel.heater = { power: "3 kW" };
      vessel.jacket = { coolant: "15 °C", conductance: "90 W/K" };
      process.steps.splice(
        1,
        1,
        { do: "heat", to: "70 °C" },
        { do: "hold", for: "20 min" },
        { do: "take off the heat" },
        { do: "cool", to: "25 °C", with: "jacket" },
        { do: "rest", for: "1 h" },
      );
      change(draft);
    });

  it("heats, holds and cools, with its times and temperatures", () => {
    const { timeline } = runPlan(warm());
    expect(timeline.slice(1, 5).map(({ temperatureEnd }) => temperatureEnd)).toEqual([70, 70, 70, 25]);
    for (const { timeEnd } of timeline) expect(timeEnd).toBeGreaterThanOrEqual(0);
    const heating = known(timeline[1]);
    expect(known(heating.timeEnd) - known(heating.timeStart)).toBeGreaterThan(0);
  });

  it("is asked about flash points on the heat, and about its oil all the same", () => {
    const plan = runPlan(warm());
    const preservative = answersOf(plan, "flash-point", { material: "preservative" });
    expect(preservative.map(({ of, verdict }) => [of.place, verdict])).toEqual([
      ["charge", "met"],
      // Without a heated wall nobody knows how hot that is.
      ["heated-wall", "not-known"],
    ]);
    for (const id of ["maximum-oil-fraction", "clarity-match", "surfactant-covers-droplets"] as const)
      expect(answerOf(plan, id).verdict).toBe(answerOf(coldJob(), id).verdict);
    expect(answerOf(plan, "additions-within-share").verdict).toBe("met");
  });

  it("meets the oil as warm as it is left: oil from the room cools it further", () => {
    const { emulsion, timeline } = runPlan(warm());
    const [schedule] = known(emulsion).schedules;
    if (!schedule || "notKnown" in schedule) throw new Error("no schedule");
    const before = known(timeline[5]?.temperatureEnd);
    const rows = schedule.rows.map(({ temperature }) => known(temperature));
    expect(before).toBeGreaterThan(21.5);
    expect(rows.at(-1)).toBeLessThan(before);
  });

  it("is not met where it is stirred with oil while a heat-sensitive oil is on the heat", () => {
    const hot = warm(({ process, formula }) => {
      process.steps.splice(2, 4);
      formula.materials.sunflower.heatSensitive = true;
      process.steps.splice(3, 0, { do: "take off the heat" });
    });
    expect(answerOf(hot, "heat-sensitive-off-the-heat", { material: "sunflower" }).verdict).toBe("not-met");
  });

  it("that nobody knows the loss of, or the heater, has no temperature, and nothing turns met for that", () => {
    const known = new Map(runPlan(warm()).answers.map((answer) => [JSON.stringify([answer.id, answer.of]), answer]));
    for (const field of ["heatLoss", "heater", "stirrer"]) {
      const without = runPlan(warm(({ vessel }) => delete vessel[field]));
      for (const answer of without.answers) {
        const before = known.get(JSON.stringify([answer.id, answer.of]));
        if (before && before.verdict !== "met" && field !== "stirrer") expect(answer.verdict).not.toBe("met");
      }
    }
  });
});

describe("a specific heat that is read from a little above the room on", () => {
  const reaches = (room: string) => {
    const { timeline } = runPlan(
      changed(coldJob(), ({ process, vessel }) => {
        process.room = room;
        vessel.heater = { power: "3 kW" };
        process.steps.splice(1, 1, { do: "heat", to: "70 °C" }, { do: "take off the heat" });
      }),
    );
    return timeline[1]?.timeEnd !== undefined;
  };

  // That of glycerin begins at 25 °C, and is continued over 10 K.
  it.each([
    ["15.1 °C", true],
    ["14.9 °C", false],
  ])("is continued to a room of %s: %s", (room, known) => {
    expect(reaches(room)).toBe(known);
  });
});
