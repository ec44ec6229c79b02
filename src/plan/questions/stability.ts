import type { BatchAllowance } from "../../batch/index.js";
import { atMost, exactly, type Limit } from "../figure.js";
import { settingMarginOf } from "../job.js";
import { makesMelt } from "../parts/moments.js";
import { massOfSamples, stabilityIn, transitionsOf } from "../parts/stability.js";
import { samplesOf } from "../samples.js";
import type { Run } from "../state.js";
import { stated, unknown } from "../unknown.js";
import { asks, type Question } from "./question.js";

type Condition = NonNullable<Run["job"]["stability"]>["conditions"][number];

function ofBatch(): Record<string, never> {
  return {};
}

/** The allowance that gives the samples of the test, and how much it gives [kg]: the one that the test names, else one for its samples. */
function samplesFrom(run: Run): { readonly name: string; readonly mass: number } {
  const { allowance: named } = stabilityIn(run);
  const isForTest = (one: BatchAllowance): boolean => one.kind === "samples" && one.stabilityTest === true;
  const given = run.job.batch.allowances.find((one) => (named === undefined ? isForTest(one) : one.name === named));
  if (given?.kind === "mass") return { name: given.name, mass: given.mass };
  // An allowance for the samples of the test is as large as they are.
  if (given && isForTest(given)) return { name: given.name, mass: massOfSamples(run) };
  return unknown("not-stated", { field: "stability-allowance" });
}

/** Whether the product changes its state at some temperature: a melt that sets does. */
function changesState(run: Run): boolean {
  return makesMelt(run) || Boolean(run.job.stability?.transitions?.length);
}

/** Storages that have a temperature of their own. */
function storagesWithTemperature({ job: { stability } }: Run): readonly Condition[] {
  return (stability?.conditions ?? []).filter(({ at }) => at !== undefined);
}

/** The transitions around the temperature of use: up to the one above it, and down to the one below. */
function aroundUse(run: Run): Limit {
  const use = stabilityIn(run).ageing?.reference ?? run.job.process.room;
  const transitions = transitionsOf(run);
  if (transitions.length === 0) unknown("nothing-there", { field: "bench-doses" });
  const above = transitions.filter(({ temperatureMax }) => temperatureMax >= use);
  const below = transitions.filter(({ temperatureMax }) => temperatureMax < use);
  return {
    ...(below.length > 0 && { min: exactly(Math.max(...below.map(({ temperatureMax }) => temperatureMax))) }),
    ...(above.length > 0 && { max: exactly(Math.min(...above.map(({ temperatureMin }) => temperatureMin))) }),
  };
}

/** Questions about the stability test. */
export const stabilityQuestions: readonly Question[] = [
  asks<Run, Run>({
    id: "samples-within-allowance",
    quantity: "mass",
    quantifier: "every",
    subjects: (run) => (run.job.stability ? [run] : []),
    of: ofBatch,
    states: (run) => [run],
    figure: (run) => exactly(massOfSamples(run), [{ kind: "law", key: "test-plan" }]),
    limit: (run) => {
      const { name, mass } = samplesFrom(run);
      return atMost(mass, [{ kind: "stated", key: "stability-allowance", of: name }]);
    },
    beside: (run) => ({ samples: samplesOf(stabilityIn(run)) }),
  }),
  asks<Run, Condition>({
    id: "stored-below-transition",
    quantity: "temperature",
    quantifier: "every",
    subjects: (run) => (changesState(run) && storagesWithTemperature(run).length > 0 ? [run] : []),
    of: ofBatch,
    states: storagesWithTemperature,
    figure: ({ at }) => exactly(stated(at, "stability")),
    limit: (_condition, run) => aroundUse(run),
    margin: ({ job }) => ({ min: settingMarginOf(job), max: settingMarginOf(job) }),
    beside: ({ name }) => ({ condition: name }),
  }),
];
