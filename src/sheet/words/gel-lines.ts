import type { PlanFlow } from "../../plan/index.js";
import type { Say } from "./types.js";

interface Estimated {
  readonly min: number;
  readonly value: number;
  readonly max: number;
}

type FlowByPoints = Exclude<PlanFlow, { readonly notKnown: unknown }>;

/** Sentences about particles and the set gel. Temperatures in °C, times in s, stresses in Pa, lengths in m, doses 0 to 1. */
export const gelLines = {
  heldDimensions: { diameter: "diameter", thickness: "thickness" },
  gelPointKinds: { sets: "sets", dissolves: "dissolves" },
  gelPointWays: {
    measured: "at this dose",
    between: "between doses, along the line of Eldridge and Ferry",
    ideal: "from its heat of fusion",
  },
  strengthKinds: {
    "yield stress": "yield stress",
    modulus: "modulus",
  },
  models: {
    newton: "Newton",
    "power-law": "power law",
    bingham: "Bingham",
    casson: "Casson",
    "herschel-bulkley": "Herschel and Bulkley",
    carreau: "Carreau",
    "carreau-yasuda": "Carreau and Yasuda",
  },
  conventions: {
    "herschel-bulkley": "intercept by Herschel and Bulkley",
    bingham: "intercept by Bingham",
    casson: "intercept by Casson",
    "casson-regression": "Casson's line through the roots",
    "lowest-rate": "stress at the lowest rate read",
    "viscosity-maximum": "stress at the largest viscosity",
  },
  /** Parameters of flow curves, with the unit behind the number. */
  parameters: {
    yieldStress: { name: "yield stress", unit: " Pa" },
    plasticViscosity: { name: "plastic viscosity", unit: " Pa·s" },
    viscosity: { name: "viscosity", unit: " Pa·s" },
    consistency: { name: "consistency", unit: " Pa·sⁿ" },
    flowIndex: { name: "flow index", unit: "" },
    viscosityZero: { name: "viscosity at rest", unit: " Pa·s" },
    viscosityInfinite: { name: "viscosity at high shear", unit: " Pa·s" },
    timeConstant: { name: "time constant", unit: " s" },
    transition: { name: "transition", unit: "" },
  } as Readonly<Record<string, { readonly name: string; readonly unit: string }>>,
  about: ({ material, sentences }: { readonly material: string; readonly sentences: readonly string[] }): string =>
    `${material}: ${sentences.join(" ")}`,
  flake: (
    { width, thickness, diameter }: { readonly width: number; readonly thickness: number; readonly diameter: number },
    say: Say,
  ): string =>
    `Flakes ${say.micrometres(width, 2)} wide and ${say.micrometres(thickness, 2)} thick (volume of a sphere of ${say.micrometres(diameter, 2)}).`,
  windowPackNotKnown: ({ reason }: { readonly reason: string }): string =>
    `The upper end may be lower: how far it settles in the pack is not known, because ${reason}.`,
  windowNotKnown: ({ reason }: { readonly reason: string }): string =>
    `When to stir it in is not known, because ${reason}.`,
  windowClosed: (of: { readonly temperatureMax: number; readonly temperatureMin: number }, say: Say): string =>
    `No temperature suits it: above ${say.celsius(of.temperatureMax)} the melt is too thin to carry it, below ${say.celsius(of.temperatureMin)} too thick to stir it in.`,
  window: (
    { temperatureMax, temperatureMin }: { readonly temperatureMax: number; readonly temperatureMin: number },
    say: Say,
  ): string => `Stir it in between ${say.celsius(temperatureMax)} and ${say.celsius(temperatureMin)}.`,
  windowTimes: ({ timeMin, timeMax }: { readonly timeMin: number; readonly timeMax: number }, say: Say): string =>
    `That is ${say.range(say.duration(timeMin), say.duration(timeMax))} after the heat is off.`,
  windowOpenBy: ({ field }: { readonly field: string }): string =>
    `The lower end may be higher: ${field} is not known.`,
  goesIn: ({ temperature }: { readonly temperature: number }, say: Say): string =>
    `This plan adds it at ${say.celsius(temperature)}.`,
  goesInAfter: ({ temperature, time }: { readonly temperature: number; readonly time: number }, say: Say): string =>
    `This plan adds it at ${say.celsius(temperature)}, ${say.duration(time)} after the heat is off.`,
  settles: ({ inVessel }: { readonly inVessel: number }, say: Say): string =>
    `Its largest particles settle ${say.millimetres(inVessel, 2)} in the vessel.`,
  settlesInBoth: ({ inVessel, inPack }: { readonly inVessel: number; readonly inPack: number }, say: Say): string =>
    `Its largest particles settle ${say.millimetres(inVessel, 2)} in the vessel and ${say.millimetres(inPack, 2)} in a pack before the gel sets.`,
  settlesFurther: ({ share }: { readonly share: number }, say: Say): string =>
    `Of its mass ${say.percent(share, 2)} settles further than allowed.`,
  held: ({ length, dimension }: { readonly length: number; readonly dimension: string }, say: Say): string =>
    `The set gel will hold particles of this kind up to ${say.millimetres(length, 2)} in ${dimension}.`,
  wet: ({ mass }: { readonly mass: number }, say: Say): string =>
    `Wet it with at least ${say.kilograms(mass, 3)} of the oil weighed for this lot.`,
  wetAndThicken: ({ mass, factor }: { readonly mass: number; readonly factor: number }, say: Say): string =>
    `Wet it with at least ${say.kilograms(mass, 3)} of the oil weighed for this lot. Its oil absorption suggests that it makes the melt ${say.number(factor)} times as thick.`,
  gelPoint: ({ what, temperature }: { readonly what: string; readonly temperature: number }, say: Say): string =>
    `${what} at ${say.celsius(temperature)}`,
  gelPointOnLine: (
    {
      what,
      temperature,
      min,
      max,
    }: { readonly what: string; readonly temperature: number; readonly min: number; readonly max: number },
    say: Say,
  ): string => `${what} at ${say.celsius(temperature)} (${say.range(say.celsius(min), say.celsius(max))} at 95 %)`,
  gelPoints: (
    { dose, points, basis }: { readonly dose: number; readonly points: readonly string[]; readonly basis: string },
    say: Say,
  ): string => `At ${say.percent(dose, 3)} of gel former it ${say.list(points)}: ${basis}.`,
  yieldStress: ({ value, basis }: { readonly value: number; readonly basis: string }, say: Say): string =>
    `Yield stress ${say.pascals(value, 3)}: ${basis}.`,
  yieldStressBetween: ({ value, min, max, basis }: Estimated & { readonly basis: string }, say: Say): string =>
    `Yield stress ${say.estimate({ value, min, max }, "stress", 3)} (95 %): ${basis}.`,
  yieldStressOfPoints: (
    { value, convention }: { readonly value: number; readonly convention: string },
    say: Say,
  ): string => `Flow curve: yield stress ${say.pascals(value, 3)} (${convention}).`,
  yieldStressBeside: (
    {
      value,
      convention,
      min,
      max,
    }: { readonly value: number; readonly convention: string; readonly min: number; readonly max: number },
    say: Say,
  ): string =>
    `Flow curve: yield stress ${say.pascals(value, 3)} (${convention}, other conventions ${say.range(say.pascals(min, 2), say.pascals(max, 2))}).`,
  expected: (
    { kind, dose, value, min, max }: Estimated & { readonly kind: string; readonly dose: number },
    say: Say,
  ): string =>
    `Predicted from trials at ${say.percent(dose, 3)} of gel former: ${kind} ${say.estimate({ value, min, max }, "stress", 3)} (95 %).`,
  expectedNotKnown: ({ kind, reason }: { readonly kind: string; readonly reason: string }): string =>
    `The ${kind} to expect from the dose is not known: ${reason}.`,
  doseForTarget: ({ target, value, min, max }: Estimated & { readonly target: number }, say: Say): string =>
    `Gel former for ${say.pascals(target, 3)}, predicted from trials: ${say.estimate({ value, min, max }, "mass-fraction", 3)} (95 %).`,
  doseNotKnown: ({ target, reason }: { readonly target: number; readonly reason: string }, say: Say): string =>
    `What dose gives ${say.pascals(target, 3)} is not known: ${reason}.`,
  flow: ({ temperature, model }: { readonly temperature: number; readonly model: string }, say: Say): string =>
    `Flow at ${say.celsius(temperature)}: ${model} (± standard error).`,
  flowNotKnown: ({ reason }: { readonly reason: string }): string => `How it flows is not known: ${reason}.`,
  model: ({ model, parameters: fitted }: { readonly model: string; readonly parameters: readonly string[] }): string =>
    `${model}: ${fitted.join(", ")}`,
  modelOfSeveral: (
    of: { readonly model: string; readonly candidates: number; readonly parameters: readonly string[] },
    say: Say,
  ): string => `${of.model}, the best of ${say.count(of.candidates)} by AICc: ${of.parameters.join(", ")}`,
  parameter: (
    of: { readonly name: string; readonly value: FlowByPoints["parameters"][string]; readonly unit: string },
    say: Say,
  ): string => `${of.name} ${say.number(of.value.value)} ± ${say.number(of.value.standardError, 2)}${of.unit}`,
  nozzle: ({ pressureGradient }: { readonly pressureGradient: number }, say: Say): string =>
    `The nozzle of the pack needs ${say.millibars(pressureGradient / 1000, 2)} for each millimetre of its length.`,
  filmThatStays: ({ thickness }: { readonly thickness: number }, say: Say): string =>
    `At rest, a film of up to ${say.millimetres(thickness, 2)} does not run down an upright wall.`,
  viscosityBeyond: ({ viscosity }: { readonly viscosity: number }, say: Say): string =>
    `${say.pascalSeconds(viscosity, 2)}, beyond the points`,
};
