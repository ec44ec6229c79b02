import type { CalculationError } from "../error.js";
import { type FlowCurve, viscosityBreakpoints } from "../laws/index.js";
import { type Cavern, cavern, type StirredState, stirring, stirringPowerFunction } from "../mixing/index.js";
import { attempt } from "./attempt.js";
import { densityThen } from "./bulk-properties.js";
import { flowCurveOf } from "./cold/flow.js";
import type { ColdStep } from "./cold/step.js";
import { impellerOf, noShear, powerWanted, vesselAround } from "./impeller.js";
import type { Job, Readings, Step, Stirrer, Vessel } from "./job.js";
import { levelOf } from "./level.js";
import { type Content, massOf, phasesOf } from "./moment.js";
import { readingsFor, viscosityAtStirrer } from "./viscosity.js";

/** A charge that is stirred, and what it was found from. */
export interface Stirred extends StirredState {
  /** [rev/s]. */
  readonly speed: number;
  /** Density of the charge [kg/m³]. */
  readonly density: number;
  /** Of the charge above the bottom of the vessel [m]. */
  readonly level: number;
  /** Of its flow curve [Pa]; undefined for one without. */
  readonly yieldStress?: number | undefined;
}

/** How far a stirrer moves a gel that has a yield stress. */
export function movedBy(
  stirrer: Stirrer,
  { powerNumber, speed, density, yieldStress }: Stirred & { readonly yieldStress: number },
  vessel: Vessel,
): Cavern {
  return cavern({ powerNumber, speed, density, yieldStress, impeller: stirrer, vessel });
}

/** Power that the stirrer puts into a volume of the charge [W/m³]. */
export function powerPerVolumeOf({ power, density }: Stirred, contents: readonly Content[]): number {
  return (power * density) / massOf(contents);
}

/** The speed of the stirrer in a step [rev/s]; undefined where nothing says that it turns. */
export function speedIn(step: Step | ColdStep, { vessel: { stirrer } }: Job): number | undefined {
  switch (step.do) {
    case "charge":
    case "stir":
    case "add":
      return step.speed ?? stirrer?.speed;
    case "de-aerate":
      return step.speed;
    case "heat":
    case "cool":
      return stirrer?.speed;
    default:
      return undefined;
  }
}

/** A charge in its vessel: density [kg/m³] and level above the bottom [m], or what is missing. */
export function fillingThen(
  { vessel }: Job,
  contents: readonly Content[],
  temperature: number,
): { readonly density: number; readonly level: number } | string {
  const density = densityThen(contents, temperature);
  return typeof density === "string" ? density : { density, level: levelOf(massOf(contents) / density, vessel) };
}

/** Impeller, vessel and density at one temperature as the kernels take them, or what is missing. */
function batchOf(job: Job, contents: readonly Content[], temperature: number) {
  const { stirrer } = job.vessel;
  if (!stirrer) return "no stirrer is described";
  const filling = fillingThen(job, contents, temperature);
  if (typeof filling === "string") return filling;
  const { density, level } = filling;
  return { level, batch: { impeller: impellerOf(stirrer), vessel: vesselAround(job.vessel, level), density } };
}

/** What a kernel refused, in words for the sheet. */
function inWords({ code, faults, message }: CalculationError, { vessel: { stirrer } }: Job): string {
  if (faults.some(({ path }) => path.endsWith("levelToVessel")))
    return "the level of the charge is outside the power curve of the stirrer, 0.1 to 10 times the vessel's diameter";
  if (code !== "unreachable") return message;
  if (faults.some(({ path }) => path.endsWith("metznerOttoConstant"))) return noShear(stirrer);
  return `nothing is known of the power of this kind of stirrer (${stirrer?.kind}): ${powerWanted(stirrer)}`;
}

/** What stirring comes to at a temperature and with a flow curve, or what is missing to know it. */
export function stirredWith(
  job: Job,
  contents: readonly Content[],
  temperature: number,
  curve: FlowCurve,
  speed: number,
): Stirred | string {
  const known = batchOf(job, contents, temperature);
  if (typeof known === "string") return known;
  const { level, batch } = known;
  return attempt(
    () => ({
      ...stirring({ ...batch, curve, speed }),
      speed,
      level,
      density: batch.density,
      yieldStress: "yieldStress" in curve ? curve.yieldStress : undefined,
    }),
    (refusal) => inWords(refusal, job),
  );
}

/** The charge as it is stirred at a temperature, as thick as readings of just this composition know it. */
export function stirredAt(
  job: Job,
  contents: readonly Content[],
  temperature: number,
  speed: number,
  direction: Readings["direction"],
): Stirred | string {
  const curve = curveAt(job, contents, temperature, speed, direction);
  return typeof curve === "string" ? curve : stirredWith(job, contents, temperature, curve, speed);
}

/** How the charge flows: on the hot route by its temperature, on the cold one by the oil in it. */
function curveAt(
  job: Job,
  contents: readonly Content[],
  temperature: number,
  speed: number,
  direction: Readings["direction"],
): FlowCurve | string {
  if (job.process.route === "cold") return flowCurveOf(job, contents);
  const viscosity = stirredViscosity(job, contents, temperature, speed, direction);
  return typeof viscosity === "string" ? viscosity : { law: "newton", viscosity: viscosity.at(temperature) };
}

/** The viscosity [Pa·s] by temperature at the stirrer, down to a temperature, and where it bends; or what is missing to know it. */
function stirredViscosity(
  job: Job,
  contents: readonly Content[],
  coolest: number,
  speed: number,
  direction: Readings["direction"],
): { readonly at: (temperature: number) => number; readonly breakpoints: readonly number[] } | string {
  const { stirrer } = job.vessel;
  const readings = readingsFor(job.bench.viscosities, contents, direction);
  if (!stirrer) return "no stirrer is described";
  if (!readings) return `no viscosity readings on ${direction} of phases ${phasesOf(contents).join(" + ")} together`;
  // Thinner than its readings it gives next to no heat; thicker, it might give any.
  if (coolest < readings.temperatureMin) return "the viscosity readings end above this temperature";
  const at = viscosityAtStirrer(readings, stirrer, speed);
  return typeof at === "string" ? at : { at, breakpoints: viscosityBreakpoints(readings.law) };
}

/** The power of the stirrer [W] as a function of temperature [°C], from the coolest to the warmest; or what is missing. */
export function stirringPower(
  job: Job,
  contents: readonly Content[],
  [coolest, warmest]: readonly [number, number],
  speed: number,
  direction: Readings["direction"],
): { readonly at: (temperature: number) => number; readonly breakpoints: readonly number[] } | string {
  if (job.process.route === "cold") {
    // The bench's readings know the room's temperature alone: a gel that warms is thinner, and takes less.
    const stirred = stirredAt(job, contents, job.process.temperatureRoom, speed, direction);
    return typeof stirred === "string" ? stirred : { at: () => stirred.power, breakpoints: [] };
  }
  const viscosity = stirredViscosity(job, contents, coolest, speed, direction);
  if (typeof viscosity === "string") return viscosity;
  const known = batchOf(job, contents, (coolest + warmest) / 2);
  if (typeof known === "string") return known;
  return attempt(
    () => {
      const powerAt = stirringPowerFunction({ ...known.batch, speed });
      const at = (temperature: number): number => powerAt(viscosity.at(temperature));
      // What holds at both ends holds between them.
      at(coolest);
      at(warmest);
      return { at, breakpoints: viscosity.breakpoints };
    },
    (refusal) => inWords(refusal, job),
  );
}
