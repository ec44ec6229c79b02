import { aboveZero, type Draft, type Findings, join } from "../formula/document.js";
import type { Stirrer, Vessel } from "./job.js";
import type { StirrerDocument, StirrerKind } from "./vessel-document.js";

/** Lengths of its shape, and which kinds of stirrer have them: of the others the power is no matter of shape that we know. */
const shapeOf: { readonly [Kind in StirrerKind]?: readonly (keyof StirrerDocument)[] } = {
  anchor: ["armHeight"],
  paddle: ["blades", "bladeWidth"],
  "flat-blade turbine": ["blades", "bladeWidth"],
  "pitched-blade turbine": ["blades", "bladeAngle", "bladeWidth"],
};

/** The stirrer, which has to fit into its vessel as far as that is stated. */
export function readStirrer(
  draft: Draft<StirrerDocument>,
  { diameter: diameterVessel, baffles }: Partial<Pick<Vessel, "diameter" | "baffles">>,
  path: string,
  findings: Findings,
): Stirrer {
  const at = (...keys: readonly string[]): string => keys.reduce<string>(join, path);
  const diameter = findings.quantity(draft.diameter, "length", at("diameter"), aboveZero);
  if (diameterVessel !== undefined && diameter > diameterVessel)
    findings.note(at("diameter"), draft.diameter, "no more than the diameter of the vessel");
  else if (diameterVessel !== undefined && baffles && diameter > diameterVessel - 2 * baffles.width)
    findings.note(at("diameter"), draft.diameter, "no more than the room between the baffles");
  const constant = (key: "laminarPowerConstant" | "powerNumber" | "metznerOttoConstant" | "revolutionsToBlend") => {
    const value = draft[key];
    if (value === 0) findings.note(at(key), "0", "a number above 0");
    return value;
  };
  const { motor } = draft;
  if (motor?.efficiency === 0) findings.note(at("motor", "efficiency"), "0", "a number above 0 and no more than 1");
  return {
    kind: draft.kind ?? "other",
    diameter,
    ...readBlades(draft, path, findings),
    speed: findings.optional(draft.speed, "rotationalSpeed", at("speed"), aboveZero),
    laminarPowerConstant: constant("laminarPowerConstant"),
    powerNumber: constant("powerNumber"),
    metznerOttoConstant: constant("metznerOttoConstant"),
    revolutionsToBlend: constant("revolutionsToBlend"),
    topEdge: findings.optional(draft.topEdge, "length", at("topEdge"), aboveZero),
    cover: findings.optional(draft.cover, "length", at("cover"), 0) ?? 0,
    byHand: draft.byHand ?? false,
    powerMotor:
      motor && findings.quantity(motor.power, "power", at("motor", "power"), aboveZero) * (motor.efficiency ?? 1),
  };
}

/** What of its shape decides its power. */
function readBlades(
  draft: Draft<StirrerDocument>,
  path: string,
  findings: Findings,
): Pick<Stirrer, "blades" | "bladeAngle" | "bladeWidth" | "armHeight"> {
  const at = (key: string): string => join(path, key);
  const { kind, blades, bladeAngle, bladeWidth, armHeight } = draft;
  const has = kind && (shapeOf[kind] ?? []);
  for (const key of ["blades", "bladeAngle", "bladeWidth", "armHeight"] as const)
    if (draft[key] !== undefined && has && !has.includes(key))
      findings.note(
        at(key),
        draft[key],
        `no such field for ${kind}: state its power as laminarPowerConstant and powerNumber`,
      );
  return {
    blades,
    bladeAngle,
    bladeWidth: findings.optional(bladeWidth, "length", at("bladeWidth"), aboveZero),
    armHeight: findings.optional(armHeight, "length", at("armHeight"), aboveZero),
  };
}
