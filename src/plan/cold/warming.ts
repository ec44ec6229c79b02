import type { Job } from "../job.js";
import { partsOf } from "../parts.js";
import type { Turning } from "../turning.js";
import type { ColdWarming } from "./plan.js";
import type { ColdMoment } from "./run.js";

/** How warm the gel gets by being stirred, and of which steps the heat is not known. */
export function warmingOf(moments: readonly ColdMoment[], turns: readonly Turning[], job: Job): ColdWarming {
  // Each addition of oil cools what is there: the warmest may lie between two of them.
  const filled = moments.findIndex(({ step }) => step.do === "fill");
  const temperatures = moments
    .slice(0, filled === -1 ? undefined : filled)
    .flatMap(({ after, added }) => [after.temperature, ...(added?.rows ?? []).map(({ temperature }) => temperature)]);
  const leftOut = moments.flatMap(({ after }, i) => {
    const unknown = turns.find(({ number, stirred }) => number === i + 1 && typeof stirred === "string")?.stirred;
    const parts = turns.some(({ number }) => number === i + 1) ? partsOf(after.contents, after.molten) : undefined;
    const reason = typeof parts === "string" ? parts : unknown;
    return typeof reason === "string" ? [{ step: i + 1, reason }] : [];
  });
  return {
    ...(temperatures.every((temperature) => temperature !== undefined) && {
      temperatureMax: Math.max(job.process.temperatureRoom, ...(temperatures as readonly number[])),
    }),
    leftOut,
    loss: job.vessel.loss?.from ?? "",
  };
}
