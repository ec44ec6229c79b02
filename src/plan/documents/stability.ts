import type { Batch } from "../../batch/index.js";
import { readDate } from "../../formula/dated-table.js";
import { type Draft, type Findings, join } from "../../formula/document.js";
import { type Entry, fields, kinds, listOf, maybe, plain, quantity, text, whole, word } from "../../formula/entry.js";
import type { Read } from "../../formula/read-type.js";
import type { Quantity } from "../../units/index.js";

/** A stability test of the product: what is stored where, and when it is looked at. */
export interface StabilityDocument {
  /** Day on which the samples go into storage, as `"2027-03-01"`: the pulls then have dates. */
  readonly start?: string;
  /** Product in one sample; default the fill of a pack. */
  readonly sample?: Quantity<"mass">;
  /** Name of the allowance of the batch that gives the samples. */
  readonly allowance?: string;
  readonly conditions: readonly ConditionDocument[];
  /** Samples that go through cycles of temperature. */
  readonly cycles?: CyclesDocument;
  /** What the time in storage is to stand for. */
  readonly ageing?: AgeingDocument;
  /** What else changes its state, beside setting and dissolving of a melt: an oil that clouds, a wax that melts. */
  readonly transitions?: readonly {
    readonly name: string;
    readonly from: Quantity<"temperature">;
    readonly to: Quantity<"temperature">;
  }[];
}

/** One storage. */
export interface ConditionDocument {
  /** What it is called: `"40 °C"`, `"window"`. */
  readonly name: string;
  /** Its temperature; left out if it has none of its own. */
  readonly at?: Quantity<"temperature">;
  /** Days after the start on which samples are taken out. */
  readonly pullDays: readonly number[];
  /** Samples that one pull uses up. */
  readonly samplesPerPull: number;
  /** Samples kept beside; default none. */
  readonly reserve?: number;
}

/** Cycles of temperature, freezing and thawing among them. */
export interface CyclesDocument {
  /** The stays of one cycle in order; the way to a temperature counts as part of its stay. */
  readonly stays: readonly { readonly at: Quantity<"temperature">; readonly for: Quantity<"time"> }[];
  /** How many cycles. */
  readonly count: number;
  /** Samples that go through them. */
  readonly samples: number;
}

/** How much faster chemical change goes where it is warmer: state the bounds that you can defend. */
export type AgeingDocument =
  | {
      readonly law: "q10";
      /** Factor for 10 K more. */
      readonly q10: { readonly min: number; readonly value: number; readonly max: number };
      /** Temperature at which the product is kept in use. */
      readonly reference: Quantity<"temperature">;
    }
  | {
      readonly law: "arrhenius";
      readonly activationEnergy: {
        readonly min: Quantity<"molarEnergy">;
        readonly value: Quantity<"molarEnergy">;
        readonly max: Quantity<"molarEnergy">;
      };
      /** Temperature at which the product is kept in use. */
      readonly reference: Quantity<"temperature">;
    };

const above = { above: 0 } as const;
const temperature = quantity("temperature");
const energy = quantity("molarEnergy", above);
const factor = plain(above);

type ByFactor = Extract<AgeingDocument, { law: "q10" }>;
type ByEnergy = Extract<AgeingDocument, { law: "arrhenius" }>;

const ageing = kinds<AgeingDocument>("law", [
  fields<ByFactor>({
    law: word("q10"),
    q10: fields<ByFactor["q10"]>({ min: factor, value: factor, max: factor }),
    reference: temperature,
  }),
  fields<ByEnergy>({
    law: word("arrhenius"),
    activationEnergy: fields<ByEnergy["activationEnergy"]>({ min: energy, value: energy, max: energy }),
    reference: temperature,
  }),
]);

/** Reads a stability test. */
export const stability: Entry<StabilityDocument> = fields<StabilityDocument>({
  start: maybe("identity", text),
  sample: maybe("wish", quantity("mass", above)),
  allowance: maybe("identity", text),
  conditions: listOf(
    fields<ConditionDocument>({
      name: text,
      at: maybe("process", temperature),
      pullDays: listOf(whole(0), 1),
      samplesPerPull: whole(1),
      reserve: maybe("wish", whole(0)),
    }),
    1,
  ),
  cycles: maybe(
    "wish",
    fields<CyclesDocument>({
      stays: listOf(fields<CyclesDocument["stays"][number]>({ at: temperature, for: quantity("time", above) }), 2),
      count: whole(1),
      samples: whole(1),
    }),
  ),
  ageing: maybe("property", ageing),
  transitions: maybe(
    "identity",
    listOf(
      fields<NonNullable<StabilityDocument["transitions"]>[number]>({ name: text, from: temperature, to: temperature }),
    ),
  ),
});

/** What of a test needs several fields. */
export function checkStability(
  draft: Draft<Read<StabilityDocument>>,
  allowances: Batch["allowances"],
  findings: Findings,
): void {
  const at = (...keys: (string | number)[]): string => keys.reduce<string>(join, "stability");
  const givesSamples = (one: Batch["allowances"][number]): boolean =>
    one.kind === "mass" || (one.kind === "samples" && one.stabilityTest === true);
  const givers = allowances.filter(givesSamples).map(({ name }) => name);
  const { start, allowance, conditions = [], transitions = [], ageing: kinetics } = draft;
  if (start !== undefined) findings.attempt(() => readDate(start, at("start")), at("start"));
  if (allowance !== undefined && !findings.holds(join("batch", "allowances")) && !givers.includes(allowance))
    findings.unknownName(
      at("allowance"),
      allowance,
      givers,
      "the name of an allowance of the batch by mass, or for samples of the stability test",
      ["batch.allowances"],
    );
  conditions.forEach((condition, i) => {
    const { name, pullDays = [] } = condition ?? {};
    if (name !== undefined && conditions.findIndex((other) => other?.name === name) < i)
      findings.note(at("conditions", i, "name"), name, "a name that no other condition has", "duplicate");
    const days = pullDays.filter((day) => day !== undefined);
    if (new Set(days).size < days.length)
      findings.note(at("conditions", i, "pullDays"), "a day twice", "each day once", "duplicate");
  });
  transitions.forEach((transition, i) => {
    const { from, to } = transition ?? {};
    if (from !== undefined && to !== undefined && from > to)
      findings.note(at("transitions", i), `${from} to ${to} °C`, "from no warmer than to");
  });
  const ends = kinetics && ("q10" in kinetics ? kinetics.q10 : (kinetics as Draft<Read<ByEnergy>>).activationEnergy);
  const { min, value, max } = ends ?? {};
  if (min !== undefined && value !== undefined && max !== undefined && !(min <= value && value <= max))
    findings.note(at("ageing"), `${min}, ${value}, ${max}`, "min, value and max in rising order");
}
