import { fields, listOf, maybe, quantity, text, word } from "../../formula/entry.js";
import { additionSchedule, scheduleAtScale } from "../../mixing/index.js";
import { type Content, massOf, portionOf } from "../contents.js";
import { oilLawsOf } from "../oil-laws.js";
import type { Schedule, State, Work } from "../state.js";
import type { AddDocument } from "../step-documents.js";
import { by, cell, stated, unknown, where } from "../unknown.js";
import { streamed, type Timed, timed, type Way } from "./incorporation.js";
import { atItsSpeed, type StepKind } from "./kind.js";
import { type SpeedAt, speedFrom, speedsBy } from "./oil-speeds.js";
import { stirIn } from "./stirred-in.js";

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
      speeds: maybe("process", listOf(speedFrom, 1)),
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
  check: ({ speeds }, note) => {
    speeds?.forEach(({ fromOil }, i) => {
      if (fromOil <= (speeds[i - 1]?.fromOil ?? -1))
        note(`speeds[${i}].fromOil`, "no more oil than the one before it", "speeds in rising order of oil");
    });
  },
  speed: atItsSpeed,
  run: (step, state, work) => {
    const { charged: oil } = work;
    const speedAt = speedsBy(step, work);
    const planned = cell(() => scheduleOf(step, state, oil, work, speedAt));
    const stirred = cell(() => stirIn(planned().rows, state, oil, work, speedAt, step.speeds !== undefined));
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
      turns: () => stirred().turns,
    };
  },
};

type Step = Parameters<(typeof add)["run"]>[0];

interface Planned extends Omit<Schedule, "rows"> {
  readonly rows: Timed["rows"];
  readonly duration: () => number;
}

/** In what portions the phase goes in, when, and what is in the vessel after each. */
function scheduleOf(step: Step, state: State, oil: readonly Content[], work: Work, speedAt: SpeedAt): Planned {
  const { job, scaled, speed } = work;
  const { charge } = state;
  const from = (step.speeds ?? []).map(({ fromOil }) => fromOil);
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
  const how = { keeps: step.keeps ?? "time", meets: charge.oilFraction(), speedFrom: from, rateMax, way, job } as const;
  const common = {
    phase: step.phase,
    form,
    keeps: how.keeps,
    increment,
    ...(proceedWhen !== undefined && { proceedWhen }),
    ...(speed && from.length === 0 && where("speed", speed)),
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
