import type { ClarityCorrection, Ends } from "../../plan/index.js";
import type { Say } from "./types.js";

/** Sentences about oil that is added to an emulsion, and about its gel. Masses in kg, rates in kg/s, speeds in rev/s. */
export const emulsionLines = {
  /** What is kept of the bench while an addition is taken up, behind the factor. */
  keeps: {
    time: " (nothing is added for the size of the vessel)",
    revolutions: " (the stirrer makes as many turns as at the bench)",
    "tip travel": " (the tip of the stirrer travels as far as at the bench)",
    "energy per volume": " (each litre takes as much energy as at the bench)",
    strain: " (the total strain is that of the bench)",
  },
  speedsOf: {
    bench: "at the bench",
    plan: "in this plan",
    "tip-speed": "the same tip speed",
    "shear-rate": "the same shear rate",
    "power-per-volume": "the same power per volume",
    reynolds: "the same Reynolds number",
    "blend-time": "the same blend time",
    froude: "the same Froude number",
  },
  additionsOf: ({ phase, step }: { readonly phase: string; readonly step: number }, say: Say): string =>
    `Additions of phase ${phase} (step ${say.count(step)})`,
  asFor: ({ phase }: { readonly phase: string }): string => `Add as described under phase ${phase}.`,
  additionsOfStep: ({ step }: { readonly step: number }, say: Say): string => `Additions (step ${say.count(step)})`,
  pour: (): string => "Pour each addition in a thin stream where the stirrer draws it in. Then keep stirring and wait.",
  pourNoFaster: ({ rate }: { readonly rate: number }, say: Say): string =>
    `Pour each addition in a thin stream where the stirrer draws it in, no faster than ${say.massRate(rate)}. Then keep stirring and wait.`,
  lookIn: ({ when }: { readonly when: string }): string =>
    `Look at the gel at each row: it must be ${when}. If it is not, stop the pump, keep stirring, and look again.`,
  tick: ({ when }: { readonly when: string }): string =>
    `Tick the box when the gel is ${when}; only then make the next addition. If that takes longer than planned, wait. Never catch up with a larger addition.`,
  // From thinning to torque: common practice, no source.
  torque: ({ speed }: { readonly speed: number | undefined }, say: Say): string =>
    `Torque: at the shaft${say.given(speed, (turns) => ` at ${say.rpm(turns)}`)} at the end of each row, without friction in gear and seal. Power and current of the drive rise and fall with it. If they fall while the torque in the table does not, the gel may be breaking: stop adding and look.`,
  scaleAtStart: ({ phase }: { readonly phase: string }): string =>
    `The scale under phase ${phase} reads at the start: ______________`,
  times: ({ kept }: { readonly kept: string }): string =>
    `Times are for planning only; go by the look of the gel. They are the bench's times${kept}.`,
  timesBy: ({ factor, kept }: { readonly factor: number; readonly kept: string }, say: Say): string =>
    `Times are for planning only; go by the look of the gel. They are the bench's times, multiplied by ${say.number(factor)}${kept}.`,
  timesAlong: (
    { first, last, kept }: { readonly first: number; readonly last: number; readonly kept: string },
    say: Say,
  ): string =>
    `Times are for planning only; go by the look of the gel. They are the bench's times, multiplied by ${say.number(first)} at first and by ${say.number(last)} at the end${kept}.`,
  timesNotKnown: ({ reason }: { readonly reason: string }): string =>
    `Times are not known: ${reason}. Go by the look of the gel.`,
  whatIsLeft: ({ mass }: { readonly mass: string }): string => `the rest, ${mass}`,
  oil: ({ fraction }: { readonly fraction: number }, say: Say): string =>
    `Oil: ${say.percent(fraction, 3)} of the volume of oil and gel former.`,
  droplets: ({ diameter, basis }: { readonly diameter: number; readonly basis: string }, say: Say): string =>
    `Droplets ${say.micrometres(diameter, 2)} across: ${basis}.`,
  yieldStressByTheory: ({ yieldStress }: { readonly yieldStress: number }, say: Say): string =>
    `Yield stress predicted from droplet size and interfacial tension: ${say.pascals(yieldStress, 2)} (Princen and Kiss).`,
  modulusByTheory: ({ modulus }: { readonly modulus: number }, say: Say): string =>
    `Shear modulus predicted likewise: ${say.pascals(modulus, 2)} (Princen and Kiss).`,
  oilNotKnown: ({ reason }: { readonly reason: string }): string =>
    `The oil fraction by volume is not known: ${reason}.`,
  dropletsNotKnown: ({ reason }: { readonly reason: string }): string =>
    `The size of the droplets is not known: ${reason}.`,
  mismatchAt: (
    { temperature, mismatch, max }: { readonly temperature: number; readonly mismatch: number; readonly max?: number },
    say: Say,
  ): string =>
    `At ${say.celsius(temperature)} the refractive indices differ by ${say.number(Math.abs(mismatch), 3)}${say.given(max, (allowed) => `; the bench allows ${say.number(allowed, 3)}`)}.`,
  hazeAt: ({ temperature, path, min, max }: Record<"temperature" | "path" | "min" | "max", number>, say: Say): string =>
    `At ${say.celsius(temperature)}, ${say.percent(min, 2)} to ${say.percent(max, 2)} of the light is scattered over ${say.millimetres(path, 2)} of gel (predicted, without air). Use it to rank gels only.`,
  correctWith: (
    { add, mass, within, volumeFractionOil }: Omit<ClarityCorrection, "within"> & { readonly within?: Ends },
    say: Say,
  ): string =>
    `The indices match at room temperature with ${say.kilograms(mass, 3)} more ${add} in the gel former of a lot${say.given(within, ({ min, max }) => ` (${say.kilograms(min, 3)} to ${say.kilograms(max, 3)} keep within what the bench allows)`)}. Oil is then ${say.percent(volumeFractionOil)} by volume; water activity and preservation change too.`,
  hlb: ({ required, surfactants }: { readonly required: string; readonly surfactants: string }): string =>
    `HLB: the oil asks for ${required}, the surfactants have ${surfactants}. Indicative only: droplets packed in glycerin are no oil in water.`,
  allergen: ({ name, share }: { readonly name: string; readonly share: number }, say: Say): string =>
    `${name} ${say.percent(share, 2)}`,
  allergens: ({ list }: { readonly list: string }): string => `Fragrance allergens in the product: ${list}.`,
  allergensOfSome: ({ list, without }: { readonly list: string; readonly without: string }): string =>
    `Fragrance allergens in the product: ${list}. Those of ${without} are not stated.`,
  induction: (
    { material, temperature, min, max }: Record<"temperature" | "min" | "max", number> & { readonly material: string },
    say: Say,
  ): string =>
    `${material}: by its induction times it would last ${say.duration(min)} to ${say.duration(max)} in the dark at ${say.celsius(temperature)}, by two rules that need not hold so far from the test.`,
  theoryNotKnown: ({ reason }: { readonly reason: string }): string =>
    `Yield stress and shear modulus cannot be predicted: ${reason}.`,
};
