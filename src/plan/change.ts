import type { Formula } from "../formula/index.js";
import { finite, fraction, notNegative, positive, record, refuse, show, temperature, wholeNumber } from "../guards.js";
import type { ReadJob } from "./job.js";
import type { Step } from "./step-documents.js";

/** Figures of a step that a change may set. */
export type StepField =
  | "to"
  | "at"
  | "for"
  | "within"
  | "speed"
  | "toViscosity"
  | "pressure"
  | "packsPerMinute"
  | "jacketAt"
  | "equalAdditions";

/** Properties of a material that a change may set, with their unit. */
export type MaterialField = "temperatureFlash" | "temperatureMax" | "massFractionMax";

/** One change of a job that was prepared: numbers in the units of the kernels. */
export type Change =
  | {
      /** Share of a material in the product [0 to 1]; the carrier gives way. */
      readonly change: "dose";
      readonly material: string;
      /** [0 to 1]. */
      readonly value: number;
    }
  | {
      /** Finished product asked for [kg]. */
      readonly change: "delivered";
      /** [kg], above 0. */
      readonly value: number;
    }
  | {
      /** Number of equal lots. */
      readonly change: "lots";
      /** A whole number from 1. */
      readonly value: number;
    }
  | {
      /** Temperature of the room [°C]. */
      readonly change: "room";
      /** [°C]. */
      readonly value: number;
    }
  | {
      /** A figure of a step, by its number from 1. */
      readonly change: "step";
      /** From 1. */
      readonly step: number;
      readonly field: StepField;
      /** In the base unit of the field: °C, s, rev/s, Pa·s or Pa; packs in a minute; a whole number of additions. */
      readonly value: number;
    }
  | {
      /** A property of a material, by its key. */
      readonly change: "material";
      readonly material: string;
      readonly field: MaterialField;
      /** [°C], or a share from 0 to 1. */
      readonly value: number;
    }
  | {
      /** Inlet temperature of the jacket's coolant [°C]. */
      readonly change: "coolant";
      /** [°C]. */
      readonly value: number;
    }
  | {
      /** Power of the heater [W]. */
      readonly change: "heater";
      /** [W], above 0. */
      readonly value: number;
    };

/** The job with some changes. What they do not touch stays the same object, so that nothing of it is computed anew. */
export function changed(job: ReadJob, changes: readonly Change[]): ReadJob {
  return changes.reduce((now, change, i) => changedBy(now, change, `changes[${i}]`), job);
}

function changedBy({ job, steps }: ReadJob, change: Change, path: string): ReadJob {
  const { value } = record(change, path);
  finite(value, `${path}.value`);
  switch (change.change) {
    case "dose":
      return { steps, job: { ...job, formula: dosed(job.formula, change.material, value, path) } };
    case "delivered":
      positive(value, `${path}.value`);
      return { steps, job: { ...job, batch: { ...job.batch, target: { mass: value }, packs: undefined } } };
    case "lots":
      wholeNumber(value, `${path}.value`, 1);
      return { steps, job: { ...job, batch: { ...job.batch, lots: value } } };
    case "room":
      temperature(value, `${path}.value`);
      return { steps, job: { ...job, process: { ...job.process, room: value } } };
    case "coolant": {
      const { jacket } = job.vessel;
      if (!jacket) return refuse("input", path, "no jacket", "a vessel with a jacket");
      temperature(value, `${path}.value`);
      return { steps, job: { ...job, vessel: { ...job.vessel, jacket: { ...jacket, coolant: value } } } };
    }
    case "heater": {
      const { heater } = job.vessel;
      if (!heater) return refuse("input", path, "no heater", "a vessel with a heater");
      positive(value, `${path}.value`);
      return { steps, job: { ...job, vessel: { ...job.vessel, heater: { ...heater, power: value } } } };
    }
    case "step": {
      const { step, field } = change;
      const one = steps[finite(step, `${path}.step`) - 1];
      if (!one || !mayHave(one, field))
        return refuse("input", path, `${show(field)} of step ${step}`, "a figure of this step");
      boundOf(field)(value, `${path}.value`);
      return { job, steps: steps.map((old) => (old === one ? ({ ...one, [field]: value } as Step) : old)) };
    }
    case "material": {
      const { material, field } = change;
      const one = job.formula.materials[material];
      if (!one) return refuse("input", `${path}.material`, show(material), "the key of a material of the formula");
      if (!limits.includes(field)) return refuse("input", `${path}.field`, show(field), `one of ${limits.join(", ")}`);
      (field === "massFractionMax" ? fraction : temperature)(value, `${path}.value`);
      const materials = { ...job.formula.materials, [material]: { ...one, [field]: value } };
      return { steps, job: { ...job, formula: { ...job.formula, materials } } };
    }
    default:
      return refuse(
        "input",
        `${path}.change`,
        show((change as { readonly change: unknown }).change),
        "a kind of change",
      );
  }
}

/** A strength is not among them: amounts of an active part were divided by it when the formula was read. */
const limits: readonly MaterialField[] = ["temperatureFlash", "temperatureMax", "massFractionMax"];

/** What holds a figure of a step to its bounds, as the documents do; a step may take no time. */
function boundOf(field: StepField): (value: number, path: string) => number {
  if (field === "to" || field === "at" || field === "jacketAt") return temperature;
  if (field === "equalAdditions") return (value, path) => wholeNumber(value, path, 1);
  return field === "for" ? notNegative : positive;
}

/** Whether a step has a figure, or may have it. */
export function mayHave(step: Step, field: StepField): boolean {
  const optional: Readonly<Record<string, readonly StepField[]>> = {
    charge: ["at", "for", "speed", "equalAdditions"],
    stir: ["speed"],
    add: ["speed"],
    fill: ["for", "speed"],
    "de-aerate": ["speed", "pressure"],
    heat: ["within"],
    cool: ["within"],
  };
  // What the packs a minute set takes no other time.
  if (field === "for" && "packsPerMinute" in step) return false;
  // Nor has what follows the oil fraction a speed of its own.
  if (field === "speed" && "speeds" in step) return false;
  return field in step || (optional[step.do] ?? []).includes(field);
}

/** The formula with another share of a material; the carrier gives way. */
function dosed(formula: Formula, material: string, value: number, path: string): Formula {
  const { lines } = formula;
  const own = lines.filter((line) => line.material === material);
  const carrier = lines.find((line) => line.carrier);
  const [only] = own;
  if (!only || own.length > 1 || !carrier || carrier.material === material)
    return refuse("input", `${path}.material`, show(material), "the key of a material in one line, not the carrier's");
  const whole = carrier.massFraction + only.massFraction;
  const rest = whole - value;
  // More than the carrier can give way to leaves it less than nothing to weigh.
  if (!(value >= 0) || !(rest >= 0))
    return refuse(
      value >= 0 && value <= 1 ? "unreachable" : "input",
      `${path}.value`,
      value,
      `a share from 0 to ${whole}`,
    );
  return {
    ...formula,
    lines: lines.map((line) => {
      if (line === only) return { ...line, massFraction: value };
      return line === carrier ? { ...line, massFraction: rest } : line;
    }),
  };
}
