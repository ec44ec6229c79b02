import { type Draft, type Findings, join } from "../formula/document.js";
import type { Stirrer, Vessel } from "./documents/vessel.js";

/** Lengths of its shape, and which kinds of stirrer have them. */
const shapeFields: { readonly [Kind in Stirrer["kind"]]?: readonly string[] } = {
  anchor: ["armHeight"],
  paddle: ["blades", "bladeWidth"],
  "flat-blade turbine": ["blades", "bladeWidth"],
  "pitched-blade turbine": ["blades", "bladeAngle", "bladeWidth"],
};

/** The stirrer has to fit into its vessel, as far as that is stated. */
export function checkStirrer(
  draft: Draft<Stirrer>,
  { diameter, baffles }: Draft<Pick<Vessel, "diameter" | "baffles">>,
  path: string,
  findings: Findings,
): void {
  const { kind, diameter: swept } = draft;
  if (swept !== undefined && diameter !== undefined) {
    const wide = `${swept} m`;
    if (swept > diameter) findings.note(join(path, "diameter"), wide, "no more than the diameter of the vessel");
    else if (baffles?.width !== undefined && swept > diameter - 2 * baffles.width)
      findings.note(join(path, "diameter"), wide, "no more than the room between the baffles");
  }
  if (kind === undefined) return;
  for (const key of ["blades", "bladeAngle", "bladeWidth", "armHeight"] as const)
    if (draft[key] !== undefined && !(shapeFields[kind] ?? []).includes(key))
      findings.note(
        join(path, key),
        `${draft[key]}`,
        `no such field for ${kind}: state its power as laminarPowerConstant and powerNumber`,
        "unknown-field",
        { name: key },
      );
}
