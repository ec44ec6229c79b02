import { aboveZero, type Draft, type Findings, join } from "../formula/document.js";
import { fitConductance } from "../heat/index.js";
import type { LayersLoss, SurfaceLoss } from "../laws/index.js";
import type { Vessel } from "./job.js";
import { readShape } from "./read-shape.js";
import { readStirrer } from "./read-stirrer.js";
import { readWalls } from "./read-walls.js";
import { say } from "./say.js";
import type { CoolingCurveDocument, SurfacesDocument, VesselDocument } from "./vessel-document.js";

/** Second pass over a vessel. */
export function readVessel(draft: Draft<VesselDocument>, findings: Findings): Vessel {
  const at = (...keys: string[]): string => keys.reduce(join, "vessel");
  const { workingVolume } = draft;
  const volumeMin = findings.quantity(workingVolume?.min, "volume", at("workingVolume", "min"), 0);
  const volumeMax = findings.quantity(workingVolume?.max, "volume", at("workingVolume", "max"), aboveZero);
  if (volumeMin > volumeMax)
    findings.note(at("workingVolume", "min"), workingVolume?.min, `no more than ${workingVolume?.max}, the greatest`);
  const diameter = findings.quantity(draft.diameter, "length", at("diameter"), aboveZero);
  const wall = draft.wall && {
    mass: findings.quantity(draft.wall.mass, "mass", at("wall", "mass"), aboveZero),
    specificHeat: findings.quantity(draft.wall.specificHeat, "specificHeat", at("wall", "specificHeat"), aboveZero),
  };
  const shape = readShape(draft, diameter, findings);
  const stirrer = draft.stirrer && readStirrer(draft.stirrer, { diameter, ...shape }, "vessel.stirrer", findings);
  return {
    name: draft.name ?? "",
    volumeMin,
    volumeMax,
    diameter,
    ...shape,
    heater: draft.heater && {
      power: findings.quantity(draft.heater.power, "power", at("heater", "power"), aboveZero),
      temperatureMax: findings.optional(draft.heater.temperatureMax, "temperature", at("heater", "temperatureMax")),
    },
    loss: readLoss(draft, diameter, wall, findings),
    wall,
    stirrer,
    ...readWalls(draft, findings),
  };
}

function readLoss(
  draft: Draft<VesselDocument>,
  diameter: number,
  wall: Vessel["wall"],
  findings: Findings,
): Vessel["loss"] {
  const { heatLoss, coolingCurve, surfaces } = draft;
  const stated = ["heatLoss", "coolingCurve", "surfaces"].filter(
    (key) => draft[key as keyof typeof draft] !== undefined,
  );
  if (stated.length > 1) findings.note("vessel", stated.join(" and "), "one of heatLoss, coolingCurve and surfaces");
  if (surfaces) return lossOfSurfaces(surfaces, diameter, findings);
  if (coolingCurve) return lossOfCurve(coolingCurve, wall, findings);
  if (heatLoss === undefined) return undefined;
  const conductance = findings.quantity(heatLoss, "thermalConductance", "vessel.heatLoss", aboveZero);
  return { law: { law: "newton", conductance }, from: `stated loss of ${heatLoss}` };
}

function lossOfCurve(draft: Draft<CoolingCurveDocument>, wall: Vessel["wall"], findings: Findings): Vessel["loss"] {
  const at = (...keys: (string | number)[]): string => keys.reduce<string>(join, "vessel.coolingCurve");
  const before = findings.faults.length;
  const mass = findings.quantity(draft.content?.mass, "mass", at("content", "mass"), aboveZero);
  const specificHeat = findings.quantity(
    draft.content?.specificHeat,
    "specificHeat",
    at("content", "specificHeat"),
    aboveZero,
  );
  const temperatureAmbient = findings.quantity(draft.room, "temperature", at("room"));
  const readings = (draft.readings ?? []).map((reading, i) => ({
    time: findings.quantity(reading?.after, "time", at("readings", i, "after"), 0),
    temperature: findings.quantity(reading?.temperature, "temperature", at("readings", i, "temperature")),
  }));
  if (findings.faults.length > before || readings.length < 2) return undefined;
  const heatCapacity = mass * specificHeat + (wall ? wall.mass * wall.specificHeat : 0);
  const fit = findings.attempt(() => fitConductance({ readings, temperatureAmbient, heatCapacity }), at("readings"));
  if (!fit) return undefined;
  const { conductance, interval } = fit;
  const between = interval
    ? `, ${say.wattsPerKelvin(interval.min)} to ${say.wattsPerKelvin(interval.max)} at 95 %`
    : ", without an interval";
  return {
    law: { law: "newton", conductance },
    from: `loss of ${say.wattsPerKelvin(conductance)} fitted to ${readings.length} readings${between}`,
  };
}

/** Side and top in air at rest: natural convection and radiation. What stands on a plate loses nothing through the bottom. */
function lossOfSurfaces(draft: Draft<SurfacesDocument>, diameter: number, findings: Findings): Vessel["loss"] {
  const at = (...keys: string[]): string => keys.reduce(join, "vessel.surfaces");
  const height = findings.quantity(draft.height, "length", at("height"), aboveZero);
  const emissivity = draft.emissivity ?? Number.NaN;
  const area = Math.PI * diameter * height;
  const side: readonly SurfaceLoss[] = [
    { law: "natural convection", surface: "vertical", area, height, diameter, beyond: "extend" },
    { law: "radiation", area, emissivity },
  ];
  const lid = (Math.PI / 4) * diameter * diameter;
  const top: readonly SurfaceLoss[] = [
    { law: "natural convection", surface: "facing up", area: lid, perimeter: Math.PI * diameter, beyond: "extend" },
    { law: "radiation", area: lid, emissivity },
  ];
  const insulation = draft.insulation && {
    thickness: findings.quantity(draft.insulation.thickness, "length", at("insulation", "thickness"), aboveZero),
    conductivity: findings.quantity(
      draft.insulation.conductivity,
      "conductivity",
      at("insulation", "conductivity"),
      aboveZero,
    ),
  };
  const parts: readonly (SurfaceLoss | LayersLoss)[] = insulation
    ? [{ law: "layers", area, layers: [insulation], outside: side }, ...top]
    : [...side, ...top];
  return {
    law: { law: "sum", parts },
    from: `natural convection and radiation from side and top${insulation ? ", through the insulation" : ""}`,
  };
}
