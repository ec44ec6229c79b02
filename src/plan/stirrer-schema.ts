import {
  boolean,
  exactOptional,
  type GenericSchema,
  integer,
  maxValue,
  minValue,
  number,
  picklist,
  pipe,
  strictObject,
} from "valibot";
import { quantity } from "../formula/quantity-field.js";
import type { StirrerDocument } from "./vessel-document.js";

const ratio = pipe(number(), minValue(0));

/** The shape of a stirrer, in the vessel or at the bench. */
export const stirrerSchema: GenericSchema<unknown, StirrerDocument> = strictObject({
  kind: picklist([
    "anchor",
    "helical ribbon",
    "paddle",
    "propeller",
    "disc turbine",
    "flat-blade turbine",
    "pitched-blade turbine",
    "hydrofoil",
    "disperser disc",
    "rotor-stator",
    "other",
  ]),
  diameter: quantity("length", "340 mm"),
  blades: exactOptional(pipe(number(), integer(), minValue(2))),
  bladeAngle: exactOptional(pipe(number(), minValue(1), maxValue(90))),
  bladeWidth: exactOptional(quantity("length", "60 mm")),
  armHeight: exactOptional(quantity("length", "200 mm")),
  speed: exactOptional(quantity("rotationalSpeed", "60 rpm")),
  laminarPowerConstant: exactOptional(ratio),
  powerNumber: exactOptional(ratio),
  metznerOttoConstant: exactOptional(ratio),
  revolutionsToBlend: exactOptional(ratio),
  topEdge: exactOptional(quantity("length", "180 mm")),
  cover: exactOptional(quantity("length", "60 mm")),
  byHand: exactOptional(boolean()),
  motor: exactOptional(
    strictObject({
      power: quantity("power", "0.37 kW"),
      efficiency: exactOptional(pipe(number(), minValue(0), maxValue(1))),
    }),
  ),
});
