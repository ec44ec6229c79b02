import type { LeverCode } from "../codes/answers.js";
import type { Moment, Run } from "../state.js";
import type { Lever } from "./question.js";

/** A remedy that moves a step further than this is not offered [K]. */
const furthest = 60;

/** The last step up to another that heats or cools to a temperature, and where to. */
function lastTo({ moments }: Run, upTo: number): { readonly step: number; readonly to: number } | undefined {
  return moments
    .flatMap(({ number, step }) => {
      const { to } = step as { readonly to?: number };
      return number <= upTo && to !== undefined ? [{ step: number, to }] : [];
    })
    .at(-1);
}

/** Another end of the last step up to another that heats or cools to a temperature: warmer, or cooler down to the room. */
function another(run: Run, upTo: number, id: LeverCode, way: "warmer" | "cooler"): readonly Lever[] {
  const found = lastTo(run, upTo);
  if (!found) return [];
  const { step, to } = found;
  const far = way === "warmer" ? to + furthest : Math.min(to, run.job.process.room);
  return [{ id, change: (value) => ({ change: "step", step, field: "to", value }), bracket: [to, far] }];
}

/** A melt that is warmer when a step begins. */
export function warmerMelt(run: Run, before: number): readonly Lever[] {
  return another(run, before - 1, "hotter-melt", "warmer");
}

/** A melt that has cooled further when a step begins. */
export function coolerMelt(run: Run, before: number): readonly Lever[] {
  return another(run, before - 1, "cooler-melt", "cooler");
}

/** More heat in the step that decides, or in the last one up to it that heats or cools. */
export function moreHeat(run: Run, upTo: number): readonly Lever[] {
  return another(run, upTo, "hotter-melt", "warmer");
}

/** An end that the step can reach: less hot where it heats, less cool where it cools. */
export function nearerEnd(run: Run, { number, reaches }: Moment): readonly Lever[] {
  return reaches?.direction === "heating"
    ? another(run, number, "less-heat", "cooler")
    : another(run, number, "less-cooling", "warmer");
}

/** The last rest of the packs, longer. */
export function longerRest({ moments }: Run): readonly Lever[] {
  const rest = moments.filter(({ step }) => step.do === "rest").at(-1);
  return rest ? longer(rest, "longer-rest") : [];
}

/** A step that goes on for longer. */
export function longer({ number, step }: Moment, id: LeverCode): readonly Lever[] {
  const { for: duration } = step as unknown as { readonly for: number };
  return [
    {
      id,
      change: (value) => ({ change: "step", step: number, field: "for", value }),
      bracket: [duration, 100 * duration],
    },
  ];
}

/** Another dose of a material that stands in one line, for which the carrier can give way. */
function doseOf(
  { job: { formula } }: Run,
  material: string | undefined,
  id: LeverCode,
  far: (share: number, carrier: number) => number,
): readonly Lever[] {
  const own = formula.lines.filter((line) => line.material === material);
  const carrier = formula.lines.find((line) => line.carrier);
  const [line, second] = own;
  if (material === undefined || !line || second || !carrier || carrier === line) return [];
  const { massFraction } = line;
  return [
    {
      id,
      change: (value) => ({ change: "dose", material, value }),
      bracket: [massFraction, far(massFraction, carrier.massFraction)],
    },
  ];
}

/** More of a material, as far as the carrier can give way. */
export function moreOf(run: Run, material: string | undefined, id: LeverCode): readonly Lever[] {
  return doseOf(run, material, id, (share, carrier) => share + carrier);
}

/** Less of a material, down to none. */
export function lessOf(run: Run, material: string | undefined, id: LeverCode): readonly Lever[] {
  return doseOf(run, material, id, () => 0);
}

/** More of the gel former, if it is one material. */
export function moreGelFormer(run: Run): readonly Lever[] {
  const { formula } = run.job;
  const [former, another] = formula.lines.filter(
    ({ material }) => formula.materials[material]?.function === "gel former",
  );
  return another ? [] : moreOf(run, former?.material, "more-gel-former");
}
