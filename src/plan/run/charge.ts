import { mixingTemperature } from "../../heat/index.js";
import type { Job, Step } from "../job.js";
import { type Content, heatCapacityOf, type State } from "../moment.js";
import type { Outcome } from "./outcome.js";
import { wait } from "./wait.js";

type Charge = Extract<Step, { do: "charge" }>;

export function chargeInto(state: State, step: Charge, added: readonly Content[], job: Job): Outcome {
  const contents = [...state.contents, ...added];
  const met = meet(state, added, step.temperature, job);
  if (step.duration === 0 || state.onHeat || met.temperature === undefined)
    return { ...met, contents, duration: step.duration };
  const stood = wait({ ...state, contents, temperature: met.temperature }, step.duration, job);
  return { ...stood, contents, law: `${met.law}; then ${stood.law}` };
}

/** The temperature at which an addition and what is in the vessel meet. */
function meet(
  state: State,
  added: readonly Content[],
  temperature: number,
  job: Job,
): Pick<Outcome, "temperature" | "law"> {
  const empty = state.contents.length === 0;
  const inside = empty ? job.process.temperatureRoom : state.temperature;
  if (inside === undefined) return { law: "not known: the temperature before is not known" };
  if (inside === temperature) return { temperature, law: "all at one temperature" };
  const melts = added.find(
    ({ material }) =>
      material.melting && material.melting.temperature < inside && temperature < material.melting.temperature,
  );
  if (melts) return { law: `not known: ${melts.material.name} melts as it is stirred in` };
  const all = [...state.contents, ...added];
  const known = heatCapacityOf(all);
  if (typeof known === "object") return { law: `not known: ${known.missing}` };
  const charges = all.map(({ material, mass }, i) => ({
    mass,
    specificHeat: material.specificHeat ?? Number.NaN,
    temperature: i < state.contents.length ? inside : temperature,
  }));
  const { wall } = job.vessel;
  return {
    temperature: mixingTemperature({ charges: wall ? [...charges, { ...wall, temperature: inside }] : charges }),
    law: `mixing temperature, ${wall ? "vessel wall included" : "vessel wall left out"}, no loss while pouring`,
  };
}
