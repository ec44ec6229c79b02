import { volumeFractionOfOil } from "../../gel/index.js";
import {
  type Addition,
  additionTimes,
  feedAt,
  feedDuration,
  gelAlongAdditions,
  incorporationTimeScale,
  interpolateAtOilFraction,
  type OilFeed,
  type OilLaw,
  type OilPoint,
} from "../../mixing/index.js";
import { Charge } from "../charge.js";
import { holdsForEmulsion, ofEmulsion } from "../composition.js";
import { massOf, portionOf } from "../contents.js";
import type { Job } from "../job.js";
import { oilLawsOf } from "../oil-laws.js";
import type { AdditionRow, Schedule } from "../state.js";
import { powerPerVolumeOf, stirredAt } from "../stirred.js";
import { shearRateOf, stirrerOf } from "../stirrer.js";
import { by, type Cell, cell, otherwise, stated, unknown } from "../unknown.js";

/** What is in the vessel at some oil fraction on the way. */
interface OnTheWay {
  readonly volumeFractionOil: number;
  readonly charge: Charge;
  /** Of the stirrer then [rev/s]. */
  readonly speed: Cell<number> | undefined;
}

/** The vessel at an oil fraction, so much of the phase being in [kg], of which the last met the vessel at another oil fraction. */
export type Way = (volumeFractionOil: number, mass: number, meets: number) => OnTheWay;

/** How a phase is stirred in. */
interface How {
  readonly keeps: Schedule["keeps"];
  /** Oil fraction of the vessel before. */
  readonly meets: number;
  /** Oil fractions from which on the stirrer has another speed. */
  readonly speedFrom: readonly number[];
  readonly rateMax: number | undefined;
  readonly way: Way;
  readonly job: Job;
}

/** Additions with their times, as far as those are known. */
export interface Timed {
  readonly rows: readonly AdditionRow[];
  readonly factor: Schedule["factor"];
  /** Time that the whole takes [s]. */
  readonly duration: Cell<number>;
}

/** So much less oil by volume is just before the stirrer is turned up. */
const justBefore = 1e-6;

/** Rows of a stream: the pump is raised evenly from one to the next. */
const rowsOfStream = 10;

/** How long incorporation takes on this way. */
function incorporationOn(way: readonly OnTheWay[], how: How) {
  const { incorporation } = oilLawsOf(how.job.bench);
  const incorporationTime = ofEmulsion(how.job, incorporation, "emulsion-incorporation-time");
  const law = factorOf(way, how);
  const at = (one: OnTheWay | undefined): number =>
    by("incorporation-time", () => interpolateAtOilFraction({ law, volumeFractionOil: one?.volumeFractionOil ?? 0 }));
  const { rateMax } = how;
  return {
    factor: { first: at(way[0]), last: at(way.at(-1)) },
    taken: { incorporationTime, incorporationTimeFactor: law, ...(rateMax !== undefined && { rateMax }) },
  };
}

/** When the additions of a schedule go in, and how thick the gel is then. */
export function timed(additions: readonly Addition[], how: How): Timed {
  const thickness = along(additions, how.job);
  const [first] = additions;
  const start = first ? first.massOil - first.mass : 0;
  const way = additions.map(({ volumeFractionOil, massOil }, i) =>
    how.way(volumeFractionOil, massOil - start, additions[i - 1]?.volumeFractionOil ?? how.meets),
  );
  const taken = cell(() => incorporationOn(way, how));
  const times = cell(() => by("incorporation-time", () => additionTimes({ additions, ...taken().taken })));
  const rows = otherwise(times, () => []);
  return {
    rows: additions.map((addition, i) => ({ ...addition, ...rows[i], ...thickness[i] })),
    factor: cell(() => taken().factor),
    duration: cell(() => times().at(-1)?.timeEnd ?? unknown("nothing-there")),
  };
}

/** The rows of a stream: how fast to pump, and how thick the gel is then. */
export function streamed(oil: Omit<OilFeed, "incorporationTime">, how: How): Timed {
  const start = oil.massOil ?? 0;
  const { massGelFormer, densityOil, densityGelFormer, massToAdd } = oil;
  const even = Array.from({ length: rowsOfStream + 1 }, (_, i) => (massToAdd * i) / rowsOfStream);
  // Before and after the stirrer is turned up.
  const turns = how.speedFrom
    .flatMap((oilThen) => [oilThen - justBefore, oilThen])
    .map((oilThen) => ((massGelFormer * densityOil) / densityGelFormer) * (oilThen / (1 - oilThen)) - start)
    .filter((mass) => mass > 0 && mass < massToAdd && !even.includes(mass));
  const way = [...even, ...turns]
    .sort((one, other) => one - other)
    .map((mass) => {
      const massFractionOil = (start + mass) / (start + mass + massGelFormer);
      const volumeFractionOil = volumeFractionOfOil({ massFractionOil, densityOil, densityGelFormer });
      return how.way(volumeFractionOil, mass, volumeFractionOil);
    });
  const taken = cell(() => incorporationOn(way, how));
  const feed = cell((): OilFeed => ({ ...oil, ...taken().taken }));
  const duration = cell(() => by("incorporation-time", () => feedDuration(feed())));
  const rows = otherwise(
    () => {
      const moments = Array.from({ length: rowsOfStream + 1 }, (_, i) => {
        const timeStart = (duration() * i) / rowsOfStream;
        return { timeStart, ...feedAt({ ...feed(), time: timeStart }) };
      });
      const thickness = along(moments, how.job);
      return moments.map(({ timeStart, rate, massOil, massInVessel, volumeFractionOil }, i): AdditionRow => {
        const mass = massOil - (moments[i - 1]?.massOil ?? start);
        return { mass, massOil, massInVessel, volumeFractionOil, timeStart, rate, ...thickness[i] };
      });
    },
    () => [],
  );
  return { rows, factor: cell(() => taken().factor), duration };
}

/** Viscosity and yield stress within the bench's readings; one reading is a point and no line. */
function along(additions: readonly { readonly volumeFractionOil: number }[], job: Job) {
  // Readings of another gel former or another oil do not hold for this emulsion.
  const { viscosity, yieldStress } = holdsForEmulsion(job) ? oilLawsOf(job.bench) : { viscosity: [], yieldStress: [] };
  return gelAlongAdditions({
    additions,
    ...(viscosity.length > 1 && { viscosity }),
    ...(yieldStress.length > 1 && { yieldStress }),
  });
}

/** The factor on the bench's times by what is kept from it, against the oil fraction. */
function factorOf(way: readonly OnTheWay[], { keeps, speedFrom, job }: How): OilLaw {
  if (keeps === "time") return { law: "constant", value: incorporationTimeScale({ keeps }) };
  const factor = factorBy(keeps, job);
  // Power per volume changes as the gel thickens, and not alike at both scales: a factor for each oil fraction.
  const varies = speedFrom.length > 0 || keeps === "energy per volume";
  const points = (varies ? way : way.slice(0, 1)).map(
    (one): OilPoint => ({ volumeFractionOil: one.volumeFractionOil, value: factor(one) }),
  );
  const value = points[0]?.value ?? unknown("nothing-there");
  return points.length > 1 ? { law: "table", points } : { law: "constant", value };
}

/** The factor at one place on the way. */
function factorBy(keeps: Exclude<Schedule["keeps"], "time">, job: Job): (one: OnTheWay) => number {
  const stirring = stated(job.bench.emulsion?.stirring, "emulsion-stirring");
  const speedBench = stated(stirring.stirrer.speed, "emulsion-stirring", { of: stirring.stirrer.kind });
  const speedOf = ({ speed }: OnTheWay): number => stated(speed, "vessel-stirrer")();
  if (keeps === "revolutions") return (one) => incorporationTimeScale({ keeps, speedBench, speedPlant: speedOf(one) });
  const stirrer = stirrerOf(job);
  if (keeps === "tip travel")
    // The tip goes π N D in a second; π falls out of the quotient.
    return (one) =>
      incorporationTimeScale({
        keeps,
        tipSpeedBench: speedBench * stirring.stirrer.diameter,
        tipSpeedPlant: speedOf(one) * stirrer.diameter,
      });
  if (keeps === "strain")
    return (one) =>
      incorporationTimeScale({
        keeps,
        shearRateBench: shearRateOf(stirring.stirrer, speedBench),
        shearRatePlant: shearRateOf(stirrer, speedOf(one)),
      });
  const bench = benchJob(job);
  return (one) =>
    incorporationTimeScale({
      keeps,
      powerPerVolumeBench: powerPerVolume(atBench(one.charge, bench), speedBench),
      powerPerVolumePlant: powerPerVolume(one.charge, speedOf(one)),
    });
}

function powerPerVolume(charge: Charge, speed: number): number {
  return powerPerVolumeOf(stirredAt(charge, charge.job.process.room, speed, "cooling"), charge);
}

/** The job as the bench stirred it: its stirrer in its vessel. */
export function benchJob(job: Job): Job {
  const { stirrer, diameter } = stated(job.bench.emulsion?.stirring, "emulsion-stirring");
  const { bottom: _, baffles: __, ...vessel } = job.vessel;
  const wide = stated(diameter, "emulsion-stirring-diameter");
  return { ...job, vessel: { ...vessel, diameter: wide, stirrer } };
}

/** What is in the vessel at the bench's scale: as much less of all as its gel former was. */
export function atBench(charge: Charge, bench: Job): Charge {
  const mass = stated(bench.bench.emulsion?.stirring?.gelFormer, "emulsion-stirring-gel-former");
  return new Charge(bench, portionOf(charge.contents, (mass * charge.mass) / massOf(charge.outer())));
}
