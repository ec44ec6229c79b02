import type { ScaledBatch } from "../batch/index.js";
import { type Check, densityOfMixture } from "../formula/index.js";
import { shrinkage } from "../heat/index.js";
import { densityAt } from "../laws/index.js";
import { attempt } from "./attempt.js";
import { doseTemperature } from "./dose.js";
import type { AfterFilling } from "./heat-plan.js";
import type { Job } from "./job.js";
import type { Content, Moment } from "./moment.js";
import { packCooling, timeInPack } from "./pack.js";
import { say } from "./say.js";

/** What happens in the pack: when its centre has set, and how far the content sinks as it cools. */
export function afterFilling(job: Job, moments: readonly Moment[], scaled: ScaledBatch): AfterFilling {
  const filled = moments.find((moment) => moment.step.do === "fill");
  if (!filled) return {};
  const { contents, temperature } = filled.after;
  const sets = doseTemperature(job, contents, "temperatureSetting");
  const cooling = packCooling(contents, temperature, job, scaled);
  if (typeof cooling === "string") return { notKnown: cooling };
  if (sets === undefined || temperature === undefined)
    return { notKnown: "no setting temperature at this dose of gel former" };
  return {
    durationToSet: attempt(
      () => (temperature <= sets ? 0 : timeInPack(cooling, sets)),
      () => undefined,
    ),
    basis: cooling.from,
    ...sinking(job, contents, temperature),
  };
}

/** The packs are at rest until their centre has set. */
export function checkSetThrough(job: Job, moments: readonly Moment[], found: AfterFilling): readonly Check[] {
  const rests = moments.flatMap(({ step }) => (step.do === "rest" ? [step.duration] : []));
  if (rests.length === 0) return [];
  const rest = rests.reduce((sum, duration) => sum + duration, 0);
  const { durationToSet } = found;
  const met = durationToSet === undefined ? undefined : durationToSet <= rest;
  return [
    {
      id: "set-at-centre",
      verdict: met === undefined ? "not known" : met ? "met" : "not met",
      statement:
        met === undefined
          ? `When the packs have set through is not known: ${found.notKnown ?? "the room is too warm"}.`
          : met
            ? "The packs are at rest until their centre has passed the setting temperature."
            : "The packs are moved before their centre has passed the setting temperature: let them rest longer.",
      value: durationToSet === undefined ? "not known" : `${say.minutes(durationToSet)} after filling`,
      limit: `within the rest of ${say.minutes(rest)}`,
      source: found.basis ?? job.bench.source,
    },
  ];
}

/** Shrinkage between filling and the room, where every density and the pack's section are known. */
function sinking(
  { pack, process }: Job,
  contents: readonly Content[],
  temperature: number,
): Pick<AfterFilling, "sinkDepth" | "topUp"> {
  const hot = densityOf(contents, temperature);
  const cold = densityOf(contents, process.temperatureRoom);
  if (!pack?.content || hot === undefined || cold === undefined || temperature === process.temperatureRoom) return {};
  const areaCrossSection = (Math.PI / 4) * pack.content.diameter ** 2;
  const { sinkDepth, topUpMass } = shrinkage({
    density: {
      law: "linear",
      density: cold,
      temperatureReference: process.temperatureRoom,
      slope: (cold - hot) / (temperature - process.temperatureRoom),
    },
    volume: areaCrossSection * pack.content.height,
    areaCrossSection,
    temperatureFill: temperature,
    temperatureEnd: process.temperatureRoom,
  });
  return { sinkDepth, topUp: topUpMass };
}

function densityOf(contents: readonly Content[], temperature: number): number | undefined {
  const parts = contents.flatMap(({ material, mass }) =>
    material.density ? [{ mass, density: densityAt({ law: material.density, temperature, beyond: "extend" }) }] : [],
  );
  return parts.length === contents.length && parts.length > 0 ? densityOfMixture({ parts }) : undefined;
}
