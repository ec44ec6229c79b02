import { mixingTemperature } from "../../heat/index.js";
import { attempt } from "../attempt.js";
import type { Job, Step } from "../job.js";
import type { Content, State } from "../moment.js";
import { partsOf } from "../parts.js";
import { speedIn } from "../stirring.js";
import type { Outcome } from "./outcome.js";
import { wait } from "./wait.js";

type Charge = Extract<Step, { do: "charge" }>;

/** Stirs a phase in: the mix comes to one temperature at once, and then stands for as long as the charging takes. */
export function chargeInto(state: State, step: Charge, added: readonly Content[], job: Job): Outcome {
  const contents = [...state.contents, ...added];
  const met = meet(state, added, step.temperature, job);
  if (met.temperature === undefined) return { ...met, contents, duration: step.duration };
  const stood = wait({ ...state, contents, temperature: met.temperature }, step.duration, job, speedIn(step, job));
  return {
    ...stood,
    contents,
    law: step.duration > 0 ? `${met.law}; then ${stood.law}` : met.law,
    obstacle: met.obstacle ?? stood.obstacle,
  };
}

/** The temperature at which an addition and what is in the vessel meet, with whatever melts as they do. */
export function meet(
  { contents, temperature, molten }: State,
  added: readonly Content[],
  temperatureAdded: number,
  { process, vessel }: Job,
): Pick<Outcome, "temperature" | "law" | "obstacle"> {
  const inside = contents.length === 0 ? process.temperatureRoom : temperature;
  if (inside === undefined) return { law: "not known: the temperature before is not known" };
  if (inside === temperatureAdded) return { temperature: inside, law: "all at one temperature" };
  const before = partsOf(contents, molten, vessel.wall);
  const more = partsOf(added, molten);
  if (typeof before === "string" || typeof more === "string")
    return { law: `not known: ${typeof before === "string" ? before : more}` };
  const charges = [
    ...before.map((part) => ({ ...part, temperature: inside })),
    ...more.map((part) => ({ ...part, temperature: temperatureAdded })),
  ];
  return attempt(
    () => {
      return {
        temperature: mixingTemperature({ charges }),
        law: `mixing temperature, ${vessel.wall ? "vessel wall included" : "vessel wall left out"}, no loss while pouring`,
      };
    },
    (refusal) => ({ law: "not known: a specific heat ends on the way", obstacle: refusal.message }),
  );
}
