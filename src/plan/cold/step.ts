import { aboveZero, type Draft, type Findings, join } from "../../formula/document.js";
import type { IncorporationTimeScale, ScheduleForm } from "../../mixing/index.js";
import type { Step } from "../job.js";
import type { StepDocument } from "../types.js";
import type { ColdStepDocument } from "./types.js";

/** How oil is added, in the units of the kernels. */
export interface AddStep {
  readonly do: "add";
  readonly phase: string;
  /** Left out, the bench decides. */
  readonly additions?: ScheduleForm | "as at the bench" | "stream" | undefined;
  readonly keeps: IncorporationTimeScale["keeps"];
  /** Speed of the stirrer [rev/s]. */
  readonly speed?: number | undefined;
  /** The most that the pump delivers [kg/s]. */
  readonly rateMax?: number | undefined;
  /** Smallest step of an addition [kg]. */
  readonly increment?: number | undefined;
  /** What is seen before the next addition. */
  readonly proceedWhen: string;
  readonly note?: string | undefined;
}

/** A step of the cold route: durations [s], pressure [Pa], speed [rev/s]. */
export type ColdStep =
  | Extract<Step, { do: "charge" | "stir" | "fill" | "rest" }>
  | AddStep
  | { readonly do: "match clarity"; readonly note?: string | undefined }
  | {
      readonly do: "de-aerate";
      readonly duration: number;
      readonly pressure?: number | undefined;
      readonly speed?: number | undefined;
      readonly note?: string | undefined;
    };

/** What tells the operator that an addition is taken up: common practice, no source. */
const taken = "uniform and glossy, no free oil";

/** Second pass over a step that only the cold route has. */
export function readColdStep(draft: Draft<ColdStepDocument>, path: string, findings: Findings): ColdStep | undefined {
  const { note } = draft;
  const speed = (text: string | undefined): number | undefined =>
    findings.optional(text, "rotationalSpeed", join(path, "speed"), aboveZero);
  switch (draft.do) {
    case "add": {
      const { phase = "", additions, keeps = "time", pump, proceedWhen = taken } = draft;
      const mass = findings.optional(pump?.mass, "mass", join(join(path, "pump"), "mass"), aboveZero);
      const duration = findings.optional(pump?.in, "time", join(join(path, "pump"), "in"), aboveZero);
      return {
        do: "add",
        note,
        phase,
        additions,
        keeps,
        proceedWhen,
        speed: speed(draft.speed),
        rateMax: mass === undefined || duration === undefined ? undefined : mass / duration,
        increment: findings.optional(draft.increment, "mass", join(path, "increment"), aboveZero),
      };
    }
    case "match clarity":
      return { do: "match clarity", note };
    case "de-aerate":
      return {
        do: "de-aerate",
        note,
        duration: findings.quantity(draft.for, "time", join(path, "for"), aboveZero),
        pressure: findings.optional(draft.pressure, "pressure", join(path, "pressure"), aboveZero),
        speed: speed(draft.speed),
      };
    case undefined:
      return undefined;
  }
}

/** Whether a step belongs to the cold route alone. */
export function isColdStep(draft: Draft<StepDocument>): draft is Draft<ColdStepDocument> {
  return draft.do === "add" || draft.do === "match clarity" || draft.do === "de-aerate";
}

/** Whether a step needs heat, which the cold route has none of. */
export function needsHeat(draft: Draft<StepDocument>): boolean {
  return draft.do === "heat" || draft.do === "hold" || draft.do === "take off the heat" || draft.do === "cool";
}
