import { fields, listOf, maybe, quantity, text, word } from "../../formula/entry.js";
import { vesselSegment } from "../../heat/index.js";
import { additionSchedule, scheduleAtScale } from "../../mixing/index.js";
import type { Quantity } from "../../units/index.js";
import { type Balance, balanceOf } from "../balance.js";
import type { AssumptionCode } from "../codes/assumptions.js";
import { type Content, massOf, portionOf } from "../contents.js";
import { oilLawsOf } from "../setting.js";
import type { AdditionRow, Schedule, State, Turn, Work } from "../state.js";
import { stirredIn, torqueBand } from "../stirred.js";
import { by, type Cell, cell, known, otherwise, stated, unknown, where } from "../unknown.js";
import { meet } from "./charge.js";
import { streamed, type Timed, timed, type Way } from "./incorporation.js";
import { atItsSpeed, type StepKind } from "./kind.js";

/** Stirs a phase of oil into the gel former by a schedule. */
export interface AddDocument {
  readonly do: "add";
  readonly phase: string;
  /** Of the phase, if it goes in in parts; default all of it, or what earlier parts leave. */
  readonly share?: Quantity<"massFraction">;
  /** The same as a mass of one lot. */
  readonly mass?: Quantity<"mass">;
  /** How the additions grow; `"as at the bench"` takes the bench's own. Default `"largest"` if the bench states shares. */
  readonly additions?: "largest" | "equal" | "geometric" | "as at the bench" | "stream";
  /** What is kept from the bench while an addition is incorporated; default `"time"`. */
  readonly keeps?: "time" | "revolutions" | "tip travel" | "energy per volume" | "strain";
  /** Default the stirrer's usual speed. */
  readonly speed?: Quantity<"rotationalSpeed">;
  /** Speeds from an oil fraction in the vessel on, rising in oil, for a start that is slow; before the first the usual speed counts. */
  readonly speeds?: readonly SpeedFrom[];
  /** The most that pump or hand delivers. */
  readonly pump?: { readonly mass: Quantity<"mass">; readonly in: Quantity<"time"> };
  /** Smallest step to which an addition can be read; default that of the balance for the phase. */
  readonly increment?: Quantity<"mass">;
  /** What the operator sees before the next addition goes in. */
  readonly proceedWhen?: string;
  readonly note?: string;
}

/** A speed of the stirrer, for every addition that meets so much oil or more. */
export interface SpeedFrom {
  readonly fromOil: Quantity<"volumeFraction">;
  readonly speed: Quantity<"rotationalSpeed">;
}

/** Oil goes in by the schedule of the bench, and each addition is stirred in before the next. */
export const add: StepKind<AddDocument> = {
  entries: [
    fields<AddDocument>({
      do: word("add"),
      phase: text,
      share: maybe("process", quantity("massFraction", { above: 0, max: 1 })),
      mass: maybe("process", quantity("mass", { above: 0 })),
      additions: maybe("process", word("largest", "equal", "geometric", "as at the bench", "stream")),
      keeps: maybe("process", word("time", "revolutions", "tip travel", "energy per volume", "strain")),
      speed: maybe("process", quantity("rotationalSpeed", { above: 0 })),
      speeds: maybe(
        "process",
        listOf(
          fields<SpeedFrom>({
            fromOil: quantity("volumeFraction", { min: 0, below: 1 }),
            speed: quantity("rotationalSpeed", { above: 0 }),
          }),
          1,
        ),
      ),
      pump: maybe(
        "process",
        fields<NonNullable<AddDocument["pump"]>>({
          mass: quantity("mass", { above: 0 }),
          in: quantity("time", { above: 0 }),
        }),
      ),
      increment: maybe("process", quantity("mass", { above: 0 })),
      proceedWhen: maybe("identity", text),
      note: maybe("identity", text),
    }),
  ],
  needs: ["charged", "not-filled"],
  oneOf: [
    ["share", "mass"],
    ["speed", "speeds"],
  ],
  check: ({ speeds = [] }, note) => {
    const falls = speeds.findIndex(({ fromOil }, i) => i > 0 && fromOil <= (speeds[i - 1]?.fromOil ?? 0));
    if (falls > 0)
      note(`speeds[${falls}].fromOil`, "no more oil than the one before it", "speeds in rising order of oil");
  },
  speed: atItsSpeed,
  run: (step, state, work) => {
    const { charged: oil } = work;
    const speedAt = speedsBy(step, work);
    const planned = cell(() => scheduleOf(step, state, oil, work, speedAt));
    const stirred = cell(() => stirIn(planned(), state, oil, work, speedAt, step.speeds !== undefined));
    const schedule = cell((): Schedule => {
      const { duration: _, ...rest } = planned();
      return { ...rest, rows: stirred().rows };
    });
    const charge = state.charge.with(oil);
    const last = step.speeds && cell(() => stated(stirred().rows.at(-1)?.speed, "emulsion-incorporation-time"));
    const duration = cell(() => {
      // Without times there is no duration, for the reason that there are no times.
      planned().factor();
      return planned().duration();
    });
    return {
      charge,
      duration,
      temperature: cell(() => stirred().temperature()),
      segments: () => unknown("no-method", { step: work.number }),
      schedule,
      ...(last && work.speed && { speed: last }),
      basis: () => [
        { kind: "law", key: "addition-schedule" },
        { kind: "reading", key: "bench-emulsion", source: work.job.bench.source },
      ],
      assumptions: () => stirred().assumptions,
      turns: otherwise(
        () => stirred().turns,
        () => [],
      ),
    };
  },
};

type Step = Parameters<(typeof add)["run"]>[0];

/** The speed at which what meets so much oil is stirred in; undefined where nothing stirs. */
type SpeedAt = (volumeFractionOil: number) => Cell<number> | undefined;

/** The step's speed, or the one of its speeds that holds from so much oil on. */
function speedsBy({ speeds }: Step, { speed }: Work): SpeedAt {
  if (!speeds || !speed) return () => speed;
  return (oil) => {
    const from = speeds.filter(({ fromOil }) => fromOil <= oil * (1 + slack)).at(-1);
    return from ? known(from.speed) : speed;
  };
}

/** Volume fraction of oil in oil and gel former of a state, none of which may be in yet. */
function oilIn({ charge }: State): number {
  return charge.oil().length > 0 ? charge.oilFraction() : 0;
}

/** Oil fractions carry the noise of doubles. */
const slack = 1e-12;

interface Planned extends Omit<Schedule, "rows"> {
  readonly rows: Timed["rows"];
  readonly duration: () => number;
}

/** In what portions the phase goes in, when, and what is in the vessel after each. */
function scheduleOf(step: Step, state: State, oil: readonly Content[], work: Work, speedAt: SpeedAt): Planned {
  const { job, scaled, speed } = work;
  const { charge } = state;
  const speedFrom = speed ? (step.speeds ?? []).map(({ fromOil }) => fromOil) : [];
  const emulsion = stated(job.bench.emulsion, "bench-emulsion");
  const { share } = oilLawsOf(job.bench);
  const form = step.additions ?? (share ? "largest" : "as at the bench");
  const densities = charge.with(oil).phaseDensities();
  const coarsest = Math.max(
    ...scaled.lot.lines.filter(({ phase }) => phase === step.phase).map((line) => line.increment),
  );
  const { increment = coarsest, pump, proceedWhen } = step;
  const { volumeFractionOilMax } = emulsion;
  const toAdd = {
    massGelFormer: massOf(charge.outer()),
    ...densities,
    massToAdd: massOf(oil),
    ...(volumeFractionOilMax !== undefined && { volumeFractionOilMax }),
  };
  const rateMax = pump && pump.mass / pump.in;
  const way: Way = (volumeFractionOil, mass, meets) => ({
    volumeFractionOil,
    charge: charge.with(portionOf(oil, mass)),
    speed: speedAt(meets),
  });
  const how = { keeps: step.keeps ?? "time", meets: oilIn(state), speedFrom, rateMax, way, job } as const;
  const common = {
    phase: step.phase,
    form,
    keeps: how.keeps,
    increment,
    ...(proceedWhen !== undefined && { proceedWhen }),
    ...(speed && speedFrom.length === 0 && where("speed", speed)),
    ...(rateMax !== undefined && { rateMax }),
  };
  if (form === "as at the bench") {
    const additions = stated(emulsion.additions, "emulsion-additions");
    // The bench's additions begin without oil in the vessel.
    if (charge.oil().length > 0) unknown("not-read", { field: "emulsion-additions" });
    const bench = { massGelFormer: additions.gelFormer, additions: additions.oil };
    return {
      ...common,
      ...timed(
        by("addition-schedule", () => scheduleAtScale({ ...toAdd, increment, bench })),
        how,
      ),
    };
  }
  const asked = { ...toAdd, massOil: massOf(charge.oil()), share: stated(share, "emulsion-share-max") };
  if (form === "stream") return { ...common, ...streamed(asked, how) };
  return {
    ...common,
    ...timed(
      by("addition-schedule", () => additionSchedule({ ...asked, increment, form })),
      how,
    ),
  };
}

/** A schedule that was stirred in. */
interface Stirred {
  readonly rows: readonly AdditionRow[];
  readonly turns: readonly Turn[];
  readonly temperature: () => number;
  readonly assumptions: readonly AssumptionCode[];
}

/** Stirs additions in one by one, each from the room into what stirring has warmed by then. The gel counts as thick as it is at the end of each. */
function stirIn(
  { rows: additions }: Planned,
  before: State,
  oil: readonly Content[],
  { job, number }: Work,
  speedAt: SpeedAt,
  follows: boolean,
): Stirred {
  const room = job.process.room;
  const turns: Turn[] = [];
  const rows: AdditionRow[] = [];
  const assumptions = new Set<AssumptionCode>();
  let state = before;
  let mass = 0;
  for (const [i, row] of additions.entries()) {
    const met = meet(state, portionOf(oil, row.mass), room);
    mass += row.mass;
    const charge = before.charge.with(portionOf(oil, mass));
    const mixed: State = { ...state, charge, temperature: met };
    // What goes in portion by portion meets the oil of those before it, a stream what is in by then.
    const isStream = row.rate !== undefined;
    const speed = speedAt(isStream ? row.volumeFractionOil : (additions[i - 1]?.volumeFractionOil ?? oilIn(before)));
    const turn: Turn | undefined = speed && { step: number, addition: i + 1, speed, state: mixed };
    if (turn) turns.push(turn);
    const stirred =
      turn &&
      otherwise(
        () => stirredIn(turn),
        () => undefined,
      );
    const { power = 0 } = stirred ?? {};
    const balance = otherwise(
      () => balanceOf(mixed, { kind: "power", power }),
      () => undefined,
    );
    for (const code of (stirred && balance?.assumptions) ?? ["heat-of-stirring-left-out"]) assumptions.add(code);
    const temperature = cell(() => warmed(row, additions[i - 1], mixed, power, balance));
    state = { ...mixed, temperature };
    rows.push({
      ...row,
      ...(follows && speed && where("speed", speed)),
      ...(stirred && { torque: stirred.torque, power: stirred.power }),
      ...(stirred &&
        otherwise(
          () => {
            const { min, max } = torqueBand(stirred, job);
            return { torqueMin: min, torqueMax: max };
          },
          () => ({}),
        )),
      ...otherwise(
        () => ({ temperature: temperature() }),
        () => ({}),
      ),
    });
  }
  // A stream of which no row is known went in all the same, and warmed by nobody knows how much.
  const isUnseen = (): boolean => rows.length === 0 && (speedAt(0) !== undefined || before.temperature() !== room);
  const { temperature } = state;
  return {
    rows,
    turns,
    assumptions: [...assumptions],
    temperature: () => (isUnseen() ? unknown("not-stated", { field: "emulsion-incorporation-time" }) : temperature()),
  };
}

/** How warm the vessel is after a while at one power of the stirrer [°C]: as warm as before if a specific heat is missing. */
function warmed(
  row: AdditionRow,
  before: AdditionRow | undefined,
  state: State,
  power: number,
  balance: Balance | undefined,
): number {
  const temperature = state.temperature();
  if (power === 0 && temperature === state.charge.job.process.room) return temperature;
  const duration = durationOf(row, before);
  if (duration === 0) return temperature;
  return balance
    ? by("heat-balance", () => vesselSegment({ ...balance.vessel, duration }).temperatureEnd)
    : temperature;
}

/** A row of a schedule lasts until its oil is incorporated, one of a stream since the row before [s]. */
function durationOf({ timeStart, timeEnd }: AdditionRow, before: AdditionRow | undefined): number {
  const start = stated(timeStart, "emulsion-incorporation-time");
  return timeEnd === undefined ? start - (before?.timeStart ?? 0) : timeEnd - start;
}
