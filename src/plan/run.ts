import type { ScaledBatch } from "../batch/index.js";
import { Charge } from "./charge.js";
import { type Content, massOf } from "./contents.js";
import type { Job } from "./job.js";
import { type Portion, portionsOf } from "./portions.js";
import type { Moment, Outcome, Run, State, Turn } from "./state.js";
import type { Step } from "./step-documents.js";
import { kindOf } from "./steps/index.js";
import { cell, known, otherwise, stated, withAssumed } from "./unknown.js";

/** What was weighed of every line. */
export function weighedOf({ formula }: Job, { lot }: ScaledBatch): readonly Content[] {
  return lot.lines.flatMap(({ phase, material: key, mass }): readonly Content[] => {
    const material = formula.materials[key];
    return material ? [{ phase, material, mass }] : [];
  });
}

/** What a step charges of what was weighed. What is not of the lot goes in parts like the rest of its phase. */
function chargedOf({ phase, lines }: Portion, weighed: readonly Content[], { lot }: ScaledBatch): readonly Content[] {
  const whole = lot.lines.filter((line) => line.phase === phase);
  const ofPhase = lines.length > 0 ? massOf(lines) / massOf(whole) : 1;
  return weighed.flatMap((content): readonly Content[] => {
    if (content.phase !== phase) return [];
    const { key } = content.material;
    const line = whole.find(({ material }) => material === key);
    const own = lines.find(({ material }) => material === key);
    const share = line && own ? own.mass / line.mass : ofPhase;
    return share > 0 ? [{ ...content, mass: content.mass * share }] : [];
  });
}

/** The empty vessel. */
function emptyVessel(job: Job): State {
  return {
    charge: new Charge(job, []),
    onHeat: false,
    inPacks: false,
    time: known(0),
    temperature: known(job.process.room),
  };
}

/** A weighed lot, and the steps that it has been through. */
export interface Begun extends Pick<Run, "scaled" | "weighed"> {
  readonly moments: readonly Moment[];
}

/** Runs the steps of a process over one weighed lot, from an empty vessel or from the end of those that were run before, and keeps every moment. */
export function runSteps(job: Job, steps: readonly Step[], { scaled, weighed, moments: begun }: Begun): Run {
  let state = begun.at(-1)?.after ?? emptyVessel(job);
  const { stirrer } = job.vessel;
  const portions = portionsOf(steps, scaled);
  const usual = stirrer && (() => stated(stirrer.speed, "stirrer-speed", { of: stirrer.kind }));
  const added = steps.slice(begun.length).map((step, i): Moment => {
    const before = state;
    const kind = kindOf(step);
    const speed = kind.speed(step, usual);
    const number = begun.length + i + 1;
    const portion = portions[number - 1];
    const charged = portion ? chargedOf(portion, weighed, scaled) : [];
    const outcome = kind.run(step, before, { job, charged, scaled, number, speed });
    const ends = outcome.speed ?? speed;
    const { charge = before.charge, onHeat = before.onHeat, inPacks = before.inPacks, duration, temperature } = outcome;
    state = {
      charge: settled(charge, temperature),
      onHeat,
      inPacks,
      time: cell(() => before.time() + duration()),
      temperature,
    };
    return {
      ...outcome,
      ...told(outcome),
      ...(portion && { portion }),
      step,
      number,
      before,
      after: state,
      ...(ends && { speed: ends }),
    };
  });
  const moments = [...begun, ...added];
  // What a turn takes for granted is no part of a figure that first asks for all of them.
  const turns = cell(() => withAssumed(() => moments.flatMap(turnsIn)).value);
  return {
    job,
    scaled,
    weighed,
    moments,
    get turns() {
      return turns();
    },
    again: (others, own) => runSteps(job, others, { scaled, weighed: own, moments: [] }),
  };
}

/** What a step rests on, told without resting on it. */
function told({ basis, assumptions }: Outcome): Pick<Outcome, "basis" | "assumptions"> {
  return {
    ...(basis && { basis: () => withAssumed(basis).value }),
    ...(assumptions && { assumptions: () => withAssumed(assumptions).value }),
  };
}

/** What has melted or dissolved stays so until the gel sets. */
function settled(charge: Charge, temperature: () => number): Charge {
  // If nothing in it can melt, its temperature does not matter here.
  if (charge.molten.size === 0 && !charge.contents.some(({ material }) => material.melting)) return charge;
  return otherwise(
    () => {
      const now = temperature();
      const hasSet =
        charge.dose() > 0 &&
        otherwise(
          () => now <= charge.setting().temperature,
          () => false,
        );
      const melted = charge.contents.filter(({ material }) => {
        const melting = charge.meltingOf(material);
        return melting && melting.temperatureEnd <= now;
      });
      const kept = hasSet ? [] : [...charge.molten];
      const molten = new Set([...kept, ...melted.map(({ material }) => material.key)]);
      return same(molten, charge.molten) ? charge : charge.as(molten);
    },
    () => charge,
  );
}

function same(one: ReadonlySet<string>, other: ReadonlySet<string>): boolean {
  return one.size === other.size && [...one].every((key) => other.has(key));
}

/** The stirred states of a step: the end of every addition, or the end of the step. */
function turnsIn({ turns, schedule, number, speed, before, after, duration }: Moment): readonly Turn[] {
  const own = otherwise(turns ?? (() => []), () => []);
  if (own.length > 0) return own;
  // What goes in all at once is stirred by the next step.
  const takesTime = otherwise(
    () => duration() > 0,
    () => true,
  );
  if (!speed || !takesTime || after.charge.contents.length === 0) return [];
  // In what portions it goes in is not known: it is stirred from what was there to what is there in the end.
  const states = schedule ? [before, after] : [after];
  return states.map((state) => ({ step: number, speed, state }));
}
