import { CalculationError } from "../../error.js";
import { dropletDiameterInShear, modulusOfDroplets, yieldStressOfDroplets } from "../../gel/index.js";
import { gelAlongAdditions } from "../../mixing/index.js";
import type { Job } from "../job.js";
import type { Content } from "../moment.js";
import type { Plan } from "../plan.js";
import { oilFractionOf, phasesOfGel } from "./phases.js";
import type { ExpectedGel } from "./plan.js";

/** Up to where droplets were seen to break as in the whole emulsion (Jansen and others 2001). */
const seenUpTo = 0.7;

/** What the bench's figures make of the finished gel. A figure that is left out is not known, and `notKnown` says why. */
export function expectedGel(job: Job, contents: readonly Content[], held: Plan["yieldStress"]): ExpectedGel {
  const phases = phasesOfGel(job, contents);
  const oil = oilFractionOf(phases, job.process.temperatureRoom);
  if (typeof oil === "string") return { notKnown: [`oil by volume: ${oil}`] };
  const notKnown: string[] = [];
  const droplets = dropletsOf(job, oil, notKnown);
  const { interfacialTension } = job.bench.emulsion ?? {};
  const figures = { volumeFractionOil: oil, ...droplets };
  if (!droplets || interfacialTension === undefined) {
    notKnown.push(`strength by theory: ${droplets ? "no interfacial tension" : "no size of the droplets"}`);
    return { ...figures, ...measured(job, oil, held), notKnown };
  }
  const packed = { volumeFractionOil: oil, diameter: droplets.diameter, interfacialTension };
  const modulus = attempt(() => modulusOfDroplets(packed), "modulus by theory", notKnown);
  const yieldStress = attempt(() => yieldStressOfDroplets(packed), "yield stress by theory", notKnown);
  return {
    ...figures,
    ...(modulus !== undefined && { modulus }),
    ...(yieldStress !== undefined && { yieldStressByTheory: yieldStress }),
    ...measured(job, oil, held),
    notKnown,
  };
}

/** Size of the droplets as measured, or from shear with the whole gel around them. */
function dropletsOf(
  { bench }: Job,
  oil: number,
  notKnown: string[],
): Pick<Required<ExpectedGel>, "diameter" | "diameterFrom"> | undefined {
  const { diameterDroplets, shear, interfacialTension } = bench.emulsion ?? {};
  if (diameterDroplets !== undefined) return { diameter: diameterDroplets, diameterFrom: "measured at the bench" };
  if (!shear || interfacialTension === undefined) {
    notKnown.push(`droplets: ${shear ? "no interfacial tension" : "neither measured, nor a shear stated"}`);
    return undefined;
  }
  const { shearRate, viscosityOil, viscosityGel } = shear;
  const diameter = attempt(
    () =>
      dropletDiameterInShear({
        viscosityOil,
        viscosityGelFormer: viscosityGel,
        viscosityEmulsion: viscosityGel,
        shearRate,
        interfacialTension,
      }).byEmulsion,
    "droplets",
    notKnown,
  );
  const beyond = oil > seenUpTo ? ", which was seen up to 70 % by volume only" : "";
  if (diameter === undefined) return undefined;
  return { diameter, diameterFrom: `estimated from shear with the whole gel around them${beyond}` };
}

/** The yield stress as measured on this gel, or between readings at other oil fractions. */
function measured({ bench }: Job, oil: number, held: Plan["yieldStress"]): Pick<ExpectedGel, "yieldStress"> {
  const readings = bench.emulsion?.thickness.yieldStress ?? [];
  const [between] =
    readings.length > 1 ? gelAlongAdditions({ additions: [{ volumeFractionOil: oil }], yieldStress: readings }) : [];
  const yieldStress = held?.value ?? between?.yieldStress;
  return yieldStress === undefined ? {} : { yieldStress };
}

function attempt<T>(find: () => T, what: string, notKnown: string[]): T | undefined {
  try {
    return find();
  } catch (error) {
    if (!(error instanceof CalculationError)) throw error;
    notKnown.push(
      `${what}: ${error.faults.map(({ found, expected }) => `${found}, where ${expected} is needed`).join("; ")}`,
    );
    return undefined;
  }
}
