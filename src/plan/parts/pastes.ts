import { increment as decimal, multiple, stepsUp } from "../../numeric/decimal.js";
import { wettingOil } from "../../rheology/index.js";
import { massOf } from "../contents.js";
import type { Moment, Run } from "../state.js";
import { by, otherwise } from "../unknown.js";
import { type Entering, enteringIn } from "./entering.js";
import { type PartWeighing, weighedApart, weighedOn } from "./part-weighing.js";

type LotLine = Run["scaled"]["lot"]["lines"][number];

/** A paste of particles and oil that is weighed for this lot, made before the particles go in. */
export interface WeighingPaste {
  /** Key of the particles. */
  readonly material: string;
  /** Their phase. */
  readonly phase: string;
  /** Number of the step in which the paste goes in, from 1. */
  readonly step: number;
  /** The line from which oil is kept back. */
  readonly oil: { readonly phase: string; readonly material: string };
  /** What is kept back: the oil that wets the particles, rounded up to a step of the balance of its line. */
  readonly keptBack: PartWeighing;
  /** What is left of the line for the vessel. */
  readonly left: PartWeighing;
  /** Particles and oil together [kg]. */
  readonly total: number;
}

/**
 * The pastes of one lot. Oil is taken of the particles' own phase if there is enough in it, else of the last phase
 * charged before them. Nothing where no single oil will do: a phase that goes in by parts or by a schedule has each of its
 * masses fixed.
 */
export function pastesOf(run: Run): readonly WeighingPaste[] {
  const made: WeighingPaste[] = [];
  for (const entering of enteringIn(run))
    made.push(
      ...otherwise(
        () => pasteOf(run, entering, made),
        () => [],
      ),
    );
  return made;
}

/** Oil that wets a pigment, by its oil absorption [kg]. */
export function wettingOilOf({ material, after }: Entering, oilAbsorption: number): number {
  const massPigment = massOf(after.charge.contents.filter((content) => content.material === material));
  return by("suspension-viscosity", () => wettingOil({ massPigment, oilAbsorption }), { of: material.key });
}

/** The paste of one kind of particle, if it is made into one. */
function pasteOf(run: Run, entering: Entering, made: readonly WeighingPaste[]): readonly WeighingPaste[] {
  const { material, particle, number: step, place } = entering;
  const { oilAbsorption } = particle;
  const phase = phaseOf(run.moments[place]);
  const particles = run.scaled.lot.lines.find((line) => line.phase === phase && line.material === material.key);
  if (oilAbsorption === undefined || step === undefined || !particles || isPremixed(run.job.formula, particles))
    return [];
  const wetting = wettingOilOf(entering, 100 * oilAbsorption);
  const isTaken = ({ phase: own, material: key }: LotLine): boolean =>
    made.some(({ oil }) => oil.phase === own && oil.material === key);
  for (const line of oilsBefore(run, place)) {
    const split = isTaken(line) ? undefined : splitOf(run, line, wetting);
    if (!split) continue;
    const total = particles.mass + split.keptBack.mass;
    const oil = { phase: line.phase, material: line.material };
    return [{ material: material.key, phase: particles.phase, step, oil, ...split, total }];
  }
  return [];
}

/** The phase that a moment charges whole, in one go. */
function phaseOf(moment: Moment | undefined): string | undefined {
  const { step, portion } = moment ?? {};
  if (step?.do !== "charge" || portion?.count !== 1 || "equalAdditions" in step) return undefined;
  return portion.phase;
}

/** Lines of oil that could give some, those charged last first, the largest of a phase first. */
function oilsBefore({ job: { formula }, moments, scaled: { lot } }: Run, place: number): readonly LotLine[] {
  const phases = moments.slice(0, place + 1).flatMap((moment) => phaseOf(moment) ?? []);
  return phases
    .reverse()
    .flatMap((phase) =>
      lot.lines
        .filter(
          (line) =>
            line.phase === phase && formula.materials[line.material]?.function === "oil" && !isPremixed(formula, line),
        )
        .sort((one, other) => other.mass - one.mass),
    );
}

/** Whether some of a line goes into a premix. */
function isPremixed({ premixes = [] }: Run["job"]["formula"], { phase, material: key }: LotLine): boolean {
  return premixes.some((premix) => premix.phase === phase && premix.lines.some(({ material }) => material === key));
}

/** A line in two weighings, which add up to it; nothing if there is too little of it, or if it is weighed in portions. */
function splitOf(
  { job }: Run,
  { material: name, mass, balance, increment, portions }: LotLine,
  wetting: number,
): Pick<WeighingPaste, "keptBack" | "left"> | undefined {
  const step = decimal(increment, "increment");
  const [steps, all] = [stepsUp(wetting / increment), Math.round(mass / increment)];
  const minimum = job.batch.balances.find((one) => one.name === balance)?.minimumWeight ?? 0;
  if (portions.length > 1 || steps < 2 || (all - steps) * increment < Math.max(minimum, 2 * increment))
    return undefined;
  const line = { balance, increment };
  const keptBack = weighedApart(job, name, multiple(steps, step, "oil"), line);
  return keptBack && { keptBack, left: weighedOn(job, multiple(all - steps, step, "oil"), line) };
}
