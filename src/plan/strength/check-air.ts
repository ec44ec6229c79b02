import type { Check } from "../../formula/index.js";
import type { Job } from "../job.js";
import { say } from "../say.js";
import type { PlanAir } from "./plan.js";

/** The melt stands thin and long enough for its air to leave; a vacuum neither lifts it over the rim nor boils it. */
export function checkAir(job: Job, air: PlanAir | undefined): readonly Check[] {
  if (!air) return [];
  const { segments, diameter } = air;
  const clear = segments.find(({ durationToClear }) => durationToClear !== undefined);
  const longest = clear ?? [...segments].sort((one, other) => other.distance - one.distance)[0];
  const last = segments.at(-1);
  const later =
    clear && last && last !== clear && last.durationToClear === undefined
      ? ` From step ${last.fromStep} on draw in none: it would stay. ${inTheGel(air)}`
      : "";
  const bubbles = `bubbles of ${say.millimetres(diameter)}`;
  return [
    {
      id: "air-leaves",
      verdict: clear ? "met" : longest ? "not met" : "not known",
      statement: clear
        ? `What air the melt holds after step ${clear.fromStep} leaves it, ${bubbles} or larger.${later}`
        : longest
          ? `At no time does the melt stand thin and long enough for ${bubbles} to leave. ${inTheGel(air)} Let it stand while it is thin, or draw in no air.`
          : `Whether ${bubbles} leave is not known: ${air.notKnown ?? "the melt does not cool on the way"}.`,
      value: longest ? `${say.millimetres(longest.distance)} of rise` : "not known",
      limit: longest ? `${say.millimetres(longest.depth)} of melt` : "not known",
      source: `Stokes for a bubble whose surface is ${job.process.air?.surface ?? "immobile"}, over the cooling`,
    },
    ...checkVacuum(job, air),
  ];
}

function inTheGel({ diameter, suspended }: PlanAir): string {
  if (!suspended) return "Whether the set gel holds it is not known.";
  if (diameter <= suspended.min) return "The set gel holds it for ever.";
  return diameter > suspended.max
    ? "It goes on rising in the set gel."
    : "Published experiments leave it open whether the set gel holds it.";
}

function checkVacuum({ process }: Job, { vacuum }: PlanAir): readonly Check[] {
  const asked = process.air?.vacuum;
  if (!asked || !vacuum) return [];
  const { foam, boiling, pressure } = vacuum;
  const high = foam > asked.rim;
  const boils = boiling !== undefined && boiling.pressure >= pressure;
  return [
    {
      id: "vacuum-foam",
      verdict: high ? "not met" : "met",
      statement: high
        ? "Under this vacuum the foam comes over the rim: draw it more slowly, or less of it."
        : "Under this vacuum the foam stays below the rim.",
      value: say.millimetres(foam),
      limit: `at most ${say.millimetres(asked.rim)}`,
      source: "Boyle's law for the air stated in the process, none of it burst",
    },
    ...(boiling
      ? [
          {
            id: "vacuum-boils",
            verdict: boils ? ("not met" as const) : ("met" as const),
            statement: boils
              ? `Under this vacuum ${boiling.material} boils out of the melt.`
              : `This vacuum is not strong enough to boil out ${boiling.material}.`,
            value: say.pascals(pressure),
            limit: `above ${say.pascals(boiling.pressure)}`,
            source: "vapour pressure of the pure substance, mole fraction in an ideal solution",
          },
        ]
      : []),
  ];
}
