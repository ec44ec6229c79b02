import {
  array,
  exactOptional,
  type GenericSchema,
  integer,
  literal,
  minLength,
  minValue,
  number,
  pipe,
  strictObject,
  string,
  variant,
} from "valibot";
import { quantity } from "../formula/quantity-field.js";
import type { AllowanceDocument, BatchDocument, TargetDocument } from "./types.js";

const mass = quantity("mass", "60 kg");
const volume = quantity("volume", "15 mL");
const share = quantity("massFraction", "0.5 %");
const names = exactOptional(pipe(array(string()), minLength(1)));

/** One field of each kind at most: which go together is settled when the meaning is read, with a better message. */
const target = strictObject({
  mass: exactOptional(mass),
  volume: exactOptional(volume),
  packs: exactOptional(pipe(number(), integer(), minValue(1))),
  fillMass: exactOptional(mass),
  fillVolume: exactOptional(volume),
}) as unknown as GenericSchema<unknown, TargetDocument>;

const takesFrom = { materials: names, phases: names, source: exactOptional(string()) };

const allowance: GenericSchema<unknown, AllowanceDocument> = variant("kind", [
  strictObject({ kind: literal("share"), name: string(), share, ...takesFrom }),
  strictObject({ kind: literal("mass"), name: string(), mass, ...takesFrom }),
  strictObject({
    kind: literal("film"),
    name: string(),
    thickness: exactOptional(quantity("length", "1.2 mm")),
    source: exactOptional(string()),
  }),
]);

/** The shape of a batch document, from which its JSON Schema is made. */
export const batchSchema: GenericSchema<unknown, BatchDocument> = strictObject({
  version: literal(1),
  target,
  density: exactOptional(quantity("density", "915 kg/m³")),
  allowances: exactOptional(array(allowance)),
  balances: pipe(
    array(strictObject({ name: string(), increment: mass, capacity: mass, minimumWeight: mass })),
    minLength(1),
  ),
  tare: exactOptional(mass),
  weighingTolerance: exactOptional(share),
});
