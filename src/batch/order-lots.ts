import { list, notNegative, positive, record, refuse, result, show, wholeNumber } from "../guards.js";
import * as known from "./known.js";

/** One stretch of what is done with a lot, from its first charge to its last rest. */
export interface LotStage {
  /** What is done, in words for the list. */
  readonly name: string;
  /** [s], 0 or more. */
  readonly duration: number;
  /** What it occupies meanwhile: keys of `resources`. */
  readonly needs?: readonly string[];
  /** True where nobody and nothing is needed, so that it may run on after the working day: packs at rest. */
  readonly alone?: boolean;
}

/** One line of the order. */
export interface LotEntry {
  /** From 1. */
  readonly lot: number;
  /** Name of the stage. */
  readonly stage: string;
  /** From 1. */
  readonly day: number;
  /** Since that day's work began [s]. */
  readonly start: number;
  /** Since that day's work began [s]; beyond the working day for what runs on alone. */
  readonly end: number;
}

/** The order of the lots. */
export interface LotOrder {
  /** By lot, and within it by time. */
  readonly entries: readonly LotEntry[];
  /** Working days from the first charge to the last stage at which somebody has to be there. */
  readonly days: number;
  /** Lots that fit no working day, with the reason; they have no entries. */
  readonly notFitting: readonly { readonly lot: number; readonly reason: string }[];
}

/** A stage with its place within the lot [s after its begin]. */
interface Placed {
  readonly name: string;
  readonly from: number;
  readonly to: number;
  readonly needs: readonly string[];
  readonly alone: boolean;
}

/** Rounding in sums of durations is no overlap. */
const hair = 1e-6;

/**
 * When each of several like lots begins and ends, one stage right after the other, so that nothing is needed twice at
 * once and each lot is done within a working day.
 *
 * Lots go in order, each as early as it can. A lot is not interrupted: hot melt does not stand overnight, nor a cold
 * gel with half of its oil. So a lot that cannot be finished today begins tomorrow; one that is longer than the day is
 * reported as not fitting. Stages that need nobody (packs at rest) may go on after hours. Days are counted from the
 * first; nights and holidays between them are up to the caller.
 *
 * If lots compete for several resources, starting each as early as possible is not always the shortest order; for one
 * vessel, or several alike, it is.
 *
 * @param input.lots - Number of like lots, a whole number from 1 to 1000.
 * @param input.stages - What is done with each, in order; at least one.
 * @param input.resources - How many there are of each thing that stages need, whole numbers of 1 or more.
 * @param input.workingDay - Length of the working day [s], above 0 and at least 60; left out for work round the clock.
 * @param input.turnover - How long a thing stays occupied after a lot, by its key [s], 0 or more: cleaning a vessel.
 * @returns Entries with their day and times [s], number of days, and the lots that fit no day.
 * @throws CalculationError `input` where an argument is out of range or a stage needs what there is none of.
 * @source definition
 * @example
 * ```ts
 * import { orderLots } from "gelwright/batch";
 * const stages = [
 *   { name: "heat, charge, cool", duration: 9000, needs: ["kettle"] },
 *   { name: "fill", duration: 1800, needs: ["kettle", "filler"] },
 *   { name: "rest", duration: 43200, alone: true },
 * ];
 * const resources = { kettle: 1, filler: 1 };
 * const order = orderLots({ lots: 3, stages, resources, workingDay: 8 * 3600, turnover: { kettle: 1800 } });
 * const begins = order.entries.filter(({ stage }) => stage.startsWith("heat"));
 * begins.map(({ day, start }) => `day ${day}, ${start / 3600} h`); // => ["day 1, 0 h", "day 1, 3.5 h", "day 2, 0 h"]
 * ```
 */
export function orderLots(input: {
  readonly lots: number;
  readonly stages: readonly LotStage[];
  readonly resources?: Readonly<Record<string, number>>;
  readonly workingDay?: number;
  readonly turnover?: Readonly<Record<string, number>>;
}): LotOrder {
  const { lots, stages, resources = {}, workingDay, turnover = {} } = record(input, "input", known.orderLots);
  wholeNumber(lots, "lots", 1, 1000);
  const counts = countsOf(record(resources, "resources"));
  const placed = placedOf(list(stages, "stages", 1), counts);
  const day = workingDay === undefined ? Number.POSITIVE_INFINITY : positive(workingDay, "workingDay");
  if (day < 60) refuse("input", "workingDay", day, "at least 60 s");
  const after = turnoversOf(record(turnover, "turnover"), counts);
  const attended = Math.max(0, ...placed.map(({ alone, to }) => (alone ? 0 : to)));
  const frees: Frees = new Map([...counts.keys()].map((key) => [key, []]));
  if (attended > day + hair) {
    const reason = `${attended} s of work on a lot do not fit a working day of ${day} s`;
    return { entries: [], days: 0, notFitting: Array.from({ length: lots }, (_, i) => ({ lot: i + 1, reason })) };
  }
  const holds = holdsOf(placed, after);
  const entries: LotEntry[] = [];
  let earliest = 0;
  let days = 1;
  for (let lot = 1; lot <= lots; lot += 1) {
    const begin = firstFit(holds, frees, counts, { earliest, day, attended });
    earliest = begin;
    const number = Number.isFinite(day) ? Math.floor((begin + hair) / day) : 0;
    const morning = number === 0 ? 0 : number * day;
    days = number + 1;
    for (const { name, from, to } of placed)
      entries.push({
        lot,
        stage: name,
        day: days,
        start: result(Math.max(0, begin + from - morning), "start"),
        end: result(begin + to - morning, "end"),
      });
    for (const { key, to } of holds) (frees.get(key) as number[]).push(begin + to);
  }
  return { entries, days, notFitting: [] };
}

function countsOf(resources: Readonly<Record<string, number>>): ReadonlyMap<string, number> {
  return new Map(Object.entries(resources).map(([key, count]) => [key, wholeNumber(count, `resources.${key}`, 1)]));
}

function turnoversOf(
  turnover: Readonly<Record<string, number>>,
  counts: ReadonlyMap<string, number>,
): ReadonlyMap<string, number> {
  return new Map(
    Object.entries(turnover).map(([key, duration]) => {
      if (!counts.has(key)) refuse("input", `turnover.${key}`, "no such thing", "a key of resources");
      return [key, notNegative(duration, `turnover.${key}`)];
    }),
  );
}

function placedOf(stages: readonly LotStage[], counts: ReadonlyMap<string, number>): readonly Placed[] {
  let from = 0;
  return stages.map((stage, i) => {
    const at = `stages[${i}]`;
    const { name, duration, needs = [], alone = false } = record(stage, at, known.lotStage);
    if (typeof name !== "string") refuse("input", `${at}.name`, show(name), "a name");
    if (typeof alone !== "boolean") refuse("input", `${at}.alone`, show(alone), "true or false");
    list(needs, `${at}.needs`).forEach((key, k) => {
      if (!counts.has(key)) refuse("input", `${at}.needs[${k}]`, show(key), "a key of resources");
    });
    if (alone && needs.length > 0)
      refuse("input", `${at}.needs`, `a list of ${needs.length}`, "none, for what runs on alone");
    const to = result(from + notNegative(duration, `${at}.duration`), `${at}.duration`);
    const placed = { name, from, to, needs, alone };
    from = to;
    return placed;
  });
}

/** What a lot occupies, and for how long: from its first stage that needs it to its last, and the turnover. */
function holdsOf(placed: readonly Placed[], after: ReadonlyMap<string, number>) {
  const keys = new Set(placed.flatMap(({ needs }) => needs));
  return [...keys].map((key) => {
    const using = placed.filter(({ needs }) => needs.includes(key));
    const [first, last] = [using[0], using.at(-1)] as [Placed, Placed];
    return { key, from: first.from, to: last.to + (after.get(key) ?? 0) };
  });
}

/** When each of what the lots so far needed is free again [s since the first day's work began]. */
type Frees = ReadonlyMap<string, number[]>;

/** The first begin, not before `earliest`, at which a lot fits its day and finds all that it needs. */
function firstFit(
  holds: ReturnType<typeof holdsOf>,
  frees: Frees,
  counts: ReadonlyMap<string, number>,
  { earliest, day, attended }: { readonly earliest: number; readonly day: number; readonly attended: number },
): number {
  const freesOf = (key: string): readonly number[] => frees.get(key) as readonly number[];
  // Lots are alike and begin one after another: what one of them holds as this one comes to it, it took before this one does.
  const isFree = (begin: number): boolean =>
    holds.every(
      ({ key, from }) => freesOf(key).filter((time) => time > begin + from + hair).length < (counts.get(key) as number),
    );
  const inDay = (begin: number): number => {
    if (!Number.isFinite(day)) return begin;
    const morning = Math.floor((begin + hair) / day) * day;
    return Math.max(begin, begin + attended <= morning + day + hair ? morning : morning + day);
  };
  // As early as it can go, a lot begins as something that it needs becomes free, or on the first morning after that.
  let begin = inDay(earliest);
  while (!isFree(begin)) {
    const now = begin;
    const next = holds
      .flatMap(({ key, from }) => freesOf(key).map((time) => time - from))
      .filter((time) => time > now + hair)
      .reduce((min, time) => Math.min(min, time), Number.POSITIVE_INFINITY);
    begin = inDay(next);
    if (!Number.isFinite(begin))
      refuse("range", "stages", `${holds.length} uses of resources`, "durations that can be told apart");
  }
  return begin;
}
