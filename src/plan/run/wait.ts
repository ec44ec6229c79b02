import type { ScaledBatch } from "../../batch/index.js";
import { type HeatedVessel, vesselSegment } from "../../heat/index.js";
import { attempt } from "../attempt.js";
import type { Job } from "../job.js";
import type { State } from "../moment.js";
import { packCooling, temperatureInPack } from "../pack.js";
import { held, noHeatSource, type Outcome, vesselOf } from "./outcome.js";
import { withStirring } from "./stirred.js";

/** The vessel stands or is stirred for a while: on the heat it is held, off it it cools, against what stirring gives. */
export function wait(state: State, duration: number, job: Job, speed?: number): Outcome {
  const { temperature } = state;
  const atRoom = temperature === job.process.temperatureRoom;
  if (state.onHeat)
    return {
      duration,
      temperature,
      law: "held by the heater; duration as written",
      segments: held(temperature, duration),
    };
  if (temperature === undefined) return { duration, law: "not known: the temperature before is not known" };
  const asWritten = (said = ""): Outcome => ({
    duration,
    temperature,
    law: `duration as written${said}`,
    segments: held(temperature, duration),
  });
  if (duration === 0 || (atRoom && speed === undefined)) return asWritten();
  const vessel = vesselOf(state, job, noHeatSource);
  if (typeof vessel === "string")
    return atRoom
      ? asWritten(`; heat of stirring left out, ${vessel}`)
      : { duration, law: `temperature not known: ${vessel}` };
  return attempt(
    () => {
      // Left to itself it would get this cool: no cooler with what stirring gives.
      const still = atRoom ? temperature : vesselSegment({ ...vessel, duration }).temperatureEnd;
      const { heatSource, breakpoints, said } = withStirring(state, job, speed, noHeatSource, [temperature, still]);
      if (atRoom && heatSource === noHeatSource) return asWritten(said);
      const stirred = { ...vessel, heatSource, breakpoints: [...vessel.breakpoints, ...breakpoints] };
      const segment = { ...stirred, duration };
      const temperatureEnd = heatSource === noHeatSource ? still : vesselSegment(segment).temperatureEnd;
      return {
        duration,
        temperature: temperatureEnd,
        law: `cooling by ${job.vessel.loss?.from}${said}; duration as written`,
        // What is stirred comes to rest above the room, where no temperature tells the time.
        segments: [
          {
            kind: "vessel",
            ...stirred,
            ...(heatSource === noHeatSource ? endOf(segment, temperatureEnd) : { duration }),
          },
        ],
      };
    },
    (refusal) => ({ duration, law: "temperature not known: a law ends on the way", obstacle: refusal.message }),
  );
}

/** A segment by the temperature it came to, so that it need not be looked for again; by its time where it all but came to the room's. */
function endOf(
  { duration, temperatureStart, temperatureAmbient }: HeatedVessel & { readonly duration: number },
  temperatureEnd: number,
): { readonly duration: number } | { readonly temperatureEnd: number } {
  const isNear = Math.abs(temperatureEnd - temperatureAmbient) < 0.1;
  return isNear || temperatureEnd === temperatureStart ? { duration } : { temperatureEnd };
}

/** The filled packs stand and cool by conduction, or as the lump that a cooling curve of theirs speaks of. */
export function rest(state: State, duration: number, job: Job, scaled: ScaledBatch): Outcome {
  const cooling = packCooling(state.contents, state.temperature, job, scaled);
  if (typeof cooling === "string") return { duration, law: `temperature not known: ${cooling}` };
  return attempt(
    () => {
      return {
        duration,
        temperature: temperatureInPack(cooling, duration),
        law: `${cooling.from}; duration as written`,
      };
    },
    (refusal) => ({ duration, law: "temperature not known: a law ends on the way", obstacle: refusal.message }),
  );
}
