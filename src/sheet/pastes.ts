import type { Plan, PlanStep } from "../plan/index.js";
import type { Sheet } from "./render.js";

/** A paste of a plan. */
export type Paste = NonNullable<Plan["pastes"]>[number];

/** The pastes that go in at a step. */
export function pastesIn({ pastes = [] }: Plan, { number }: PlanStep): readonly Paste[] {
  return pastes.filter(({ step }) => step === number);
}

/** Whether a material goes in as a paste. */
export function isInPaste({ pastes = [] }: Plan, phase: string, material: string): boolean {
  return pastes.some((paste) => paste.phase === phase && paste.material === material);
}

/** The paste that takes some of a line, if one does. */
export function takenFrom({ pastes = [] }: Plan, phase: string, material: string): Paste | undefined {
  return pastes.find(({ oil }) => oil.phase === phase && oil.material === material);
}

/** A step as it is done: the oil of a paste goes in with the paste, and not with its phase. */
export function withPastes({ pastes = [] }: Plan, step: PlanStep): PlanStep {
  const { number, massCharged, mass, step: document } = step;
  if (massCharged === undefined || !("phase" in document)) return step;
  const more = pastes.reduce((sum, { step: at, phase, oil, keptBack }) => {
    if (oil.phase === phase) return sum;
    return sum + (at === number ? keptBack.mass : oil.phase === document.phase ? -keptBack.mass : 0);
  }, 0);
  return more === 0 ? step : { ...step, massCharged: massCharged + more, mass: mass + more };
}

/** How a paste is made. */
export function makingOf({ plan, words, say }: Sheet, { material, phase, oil, keptBack, total }: Paste): string {
  const particles = plan.weighing.lines.find((line) => line.phase === phase && line.material === material);
  const { mass = 0, increment = keptBack.increment } = particles ?? {};
  return words.lines.kettle.makePaste({
    material: say.material(material),
    mass: say.weighed(mass, increment),
    oil: say.material(oil.material),
    massOil: say.weighed(keptBack.mass, keptBack.increment),
    total: say.weighed(total, Math.min(increment, keptBack.increment)),
  });
}
