import { type LotOrder, orderLots } from "../batch/index.js";
import type { Check } from "../formula/index.js";
import type { Job } from "./job.js";
import type { PlanLotOrder, TimelineStep } from "./plan.js";
import { say } from "./say.js";

/** No list is longer than this. */
const lotsMax = 1000;

/** When each lot is made, from how long each step of one takes; left out for a single lot with no day to fit. */
export function lotOrderOf(
  { process }: Job,
  lots: number,
  timeline: readonly TimelineStep[],
): PlanLotOrder | undefined {
  const { workingDay } = process;
  if (lots === 1 && !workingDay) return undefined;
  const order = orderOf(process, lots, timeline);
  if (typeof order === "string") return { notKnown: order };
  const [refused] = order.notFitting;
  if (refused) return { notKnown: refused.reason };
  return { entries: order.entries, days: order.days, workingDay: workingDay?.length };
}

function orderOf(
  { steps, workingDay }: Job["process"],
  lots: number,
  timeline: readonly TimelineStep[],
): LotOrder | string {
  const unknown = timeline.find(({ timeStart, timeEnd }) => timeStart === undefined || timeEnd === undefined);
  if (lots > lotsMax) return `more than ${lotsMax} lots are no list`;
  if (unknown) return `how long step ${unknown.number} takes is not known`;
  const stages = timeline.flatMap(({ number, timeStart = 0, timeEnd = 0, inPacks }) => {
    const verb = steps[number - 1]?.do ?? "";
    const duration = timeEnd - timeStart;
    if (duration === 0) return [];
    const needs = inPacks ? (verb === "fill" ? ["vessel", "filler"] : []) : ["vessel"];
    return [{ name: `${number} ${verb}`, duration, needs, alone: inPacks && verb === "rest" }];
  });
  if (stages.length === 0) return "no step takes any time";
  return orderLots({
    lots,
    stages,
    resources: { vessel: workingDay?.vessels ?? 1, filler: 1 },
    turnover: { vessel: workingDay?.cleaning ?? 0 },
    ...(workingDay ? { workingDay: workingDay.length } : {}),
  });
}

/** A lot is done within the working day, where one is stated. */
export function checkWorkingDay({ process }: Job, timeline: readonly TimelineStep[]): readonly Check[] {
  const { workingDay } = process;
  if (!workingDay) return [];
  const check = {
    id: "lot-fits-the-day",
    limit: `a working day of ${say.minutes(workingDay.length)}`,
    source: "durations of the steps; packs at rest need nobody",
  };
  const attended = timeline.filter(({ inPacks }, i) => !(inPacks && process.steps[i]?.do === "rest"));
  const unknown = attended.find(({ timeEnd }) => timeEnd === undefined);
  const end = attended.at(-1)?.timeEnd;
  if (unknown || end === undefined)
    return [
      {
        ...check,
        verdict: "not known",
        statement: `Whether a lot is done within the working day is not known: step ${unknown?.number ?? 1} has no end.`,
        value: "not known",
      },
    ];
  const met = end <= workingDay.length;
  return [
    {
      ...check,
      verdict: met ? "met" : "not met",
      statement: met
        ? "A lot is done within a working day, handling left out."
        : "A lot is not done within a working day: make it smaller, warm or cool it faster, or work in shifts.",
      value: say.minutes(end),
    },
  ];
}
