import { type HeatSource, jacketConductance, vesselSegment } from "../../heat/index.js";
import { type HeatLossLaw, temperatureAtViscosity } from "../../laws/index.js";
import { attempt } from "../attempt.js";
import { jacketConducts } from "../jacket-wall.js";
import type { Job, Step } from "../job.js";
import { phasesOf, type State } from "../moment.js";
import { speedIn } from "../stirring.js";
import { readingsFor } from "../viscosity.js";
import { noHeatSource, type Outcome, vesselOf } from "./outcome.js";
import { withStirring } from "./stirred.js";

type Cool = Extract<Step, { do: "cool" }>;

/** Lets the charge cool to a temperature or a viscosity, by itself or through the jacket. */
export function cool(state: State, step: Cool, job: Job): Outcome {
  const { law, temperature, obstacle } =
    step.temperature === undefined
      ? aim(state, step.viscosity, job)
      : { law: "", temperature: step.temperature, obstacle: undefined };
  if (temperature === undefined) return { law, obstacle };
  const prefix = law && `${law}; `;
  if (state.temperature !== undefined && state.temperature <= temperature)
    return { temperature: state.temperature, duration: 0, law: `${prefix}already that cool`, segments: [] };
  const given = step.jacket
    ? throughJacket(state, temperature, job)
    : { heatSource: noHeatSource, heatLoss: undefined, by: `cooling by ${job.vessel.loss?.from}` };
  if (typeof given === "string") return { temperature, law: `${prefix}duration not known: ${given}` };
  const { heatSource, heatLoss, by } = given;
  const vessel = vesselOf(state, job, heatSource, heatLoss);
  if (typeof vessel === "string") return { temperature, law: `${prefix}duration not known: ${vessel}` };
  const between = [vessel.temperatureStart, temperature] as const;
  const stirred = withStirring(state, job, speedIn(step, job), heatSource, between);
  const segment = {
    ...vessel,
    heatSource: stirred.heatSource,
    breakpoints: [...vessel.breakpoints, ...stirred.breakpoints],
    temperatureEnd: temperature,
  };
  return attempt(
    () => {
      return {
        temperature,
        duration: vesselSegment(segment).duration,
        law: prefix + by + stirred.said,
        segments: [{ kind: "vessel", ...segment }],
      };
    },
    (refusal) => ({
      law: `${prefix}not known: what cools it is too warm, or a law ends before`,
      obstacle: refusal.message,
    }),
  );
}

/** A jacket is a heat source like a heater's, colder than the charge; a loss to the room that is not known helps nobody and is left out. */
function throughJacket(
  { contents, temperature }: State,
  temperatureEnd: number,
  job: Job,
): { readonly heatSource: HeatSource; readonly heatLoss: HeatLossLaw; readonly by: string } | string {
  const { jacket, loss } = job.vessel;
  if (!jacket) return "no jacket is described";
  if (temperature === undefined) return "the temperature before is not known";
  const conducts = jacketConducts(job, contents, [temperature, temperatureEnd]);
  if (typeof conducts === "string") return conducts;
  const { capacityFlow } = jacket;
  const toInlet = (conductance: number): number =>
    capacityFlow === undefined ? conductance : jacketConductance({ conductance, capacityFlow });
  const { conductance, from } = conducts;
  const room = loss ? `and ${loss.from}` : "the loss to the room left out";
  return {
    heatSource: {
      kind: "medium",
      temperature: jacket.temperature,
      conductance: typeof conductance === "number" ? toInlet(conductance) : (at) => toInlet(conductance(at)),
    },
    heatLoss: loss?.law ?? { law: "newton", conductance: 0 },
    by: `cooling through the jacket, ${capacityFlow === undefined ? "coolant at one temperature" : "coolant warming on its way"}${from}, ${room}`,
  };
}

/** The temperature at which the charge has a wanted viscosity, from readings of just this composition. */
function aim(state: State, viscosity: number, job: Job): Pick<Outcome, "law" | "temperature" | "obstacle"> {
  const readings = readingsFor(job.bench.viscosities, state.contents, "cooling");
  if (!readings)
    return {
      law: `not known: no viscosity readings on cooling of phases ${phasesOf(state.contents).join(" + ")} together`,
    };
  return attempt(
    () => {
      return {
        temperature: temperatureAtViscosity({ law: readings.law, viscosity }),
        law: `viscosity readings at ${readings.shearRate}`,
      };
    },
    (refusal) => ({ law: "not known: the viscosity lies outside the readings", obstacle: refusal.message }),
  );
}
