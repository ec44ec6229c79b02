import type { Check } from "../../formula/index.js";
import { batchTemperatureAtWall, jacketTemperatureAtWall } from "../../heat/index.js";
import { attempt } from "../attempt.js";
import { doseTemperature } from "../dose.js";
import { type ColdWall, coldWall } from "../jacket-wall.js";
import type { Job } from "../job.js";
import { doseOf, type Moment } from "../moment.js";
import { say } from "../say.js";

/** A jacket that is colder than need be sets a skin on its wall, which insulates, and comes off as lumps. */
export function checkSkin(moments: readonly Moment[], job: Job): readonly Check[] {
  return moments.flatMap(({ step, before, after }, i): readonly Check[] => {
    const { contents, temperature } = after;
    if (step.do !== "cool" || !step.jacket || doseOf(contents) === 0) return [];
    const sets = doseTemperature(job, contents, "temperatureSetting");
    const min = sets === undefined ? undefined : sets + job.process.settingMargin;
    const wall =
      min === undefined
        ? `no setting temperature was measured at a dose of ${say.percent(doseOf(contents))}`
        : temperature === undefined
          ? "how cool the charge gets is not known"
          : coldWall(job, contents, temperature);
    const check = {
      id: `skin-on-the-wall:${i + 1}`,
      limit:
        min === undefined
          ? "not measured"
          : `at least ${say.celsius(min)}, ${say.kelvins(job.process.settingMargin)} above setting`,
    };
    if (typeof wall === "string" || min === undefined || temperature === undefined)
      return [
        {
          ...check,
          verdict: "not known",
          statement: `Whether a skin sets on the cooled wall in step ${i + 1} is not known: ${wall}.`,
          value: "not known",
          source: job.bench.source,
        },
      ];
    const met = wall.temperature >= min;
    const remedies = remediesOf(wall, min, temperature, before.temperature ?? temperature, job);
    return [
      {
        ...check,
        verdict: met ? "met" : "not met",
        statement: met
          ? `No skin sets on the cooled wall in step ${i + 1}.`
          : `A skin sets on the cooled wall in step ${i + 1}: ${remedies.join(", or ")}.`,
        value: `${say.celsius(wall.temperature)} by the coolant's inlet, at the end of the step`,
        source: `${wall.inside.stated === undefined ? "three quarters of the " : ""}${wall.inside.from}; setting from ${job.bench.source}`,
      },
    ];
  });
}

/** The coolest coolant that sets no skin, and how far this one may cool. */
function remediesOf(
  { inside, outside }: ColdWall,
  min: number,
  end: number,
  start: number,
  { vessel }: Job,
): readonly string[] {
  const coolant = vessel.jacket?.temperature;
  const found: string[] = [];
  if (end > min) {
    const warmer = jacketTemperatureAtWall({
      temperatureBulk: end,
      temperatureWall: min,
      heatTransferCoefficient: inside.judgedAt(end, min),
      heatTransferCoefficientJacket: outside,
    });
    found.push(`take coolant of ${say.celsius(warmer)} or warmer`);
  }
  const off = coolant === undefined ? undefined : turnedOffAt(inside, outside, min, coolant);
  found.push(
    off !== undefined && off < start
      ? `turn the jacket off at ${say.celsius(off)} and let it cool by itself`
      : "let it cool by itself",
  );
  return found;
}

function turnedOffAt(
  { stated, judgedAt }: ColdWall["inside"],
  heatTransferCoefficientJacket: number,
  temperatureWall: number,
  temperatureJacket: number,
): number | undefined {
  return attempt(
    () => {
      return batchTemperatureAtWall({
        temperatureWall,
        temperatureJacket,
        heatTransferCoefficient: stated ?? ((bulk) => judgedAt(bulk, temperatureWall)),
        heatTransferCoefficientJacket,
      });
    },
    () => undefined,
  );
}
