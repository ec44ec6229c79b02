import { fitConductance } from "../heat/index.js";
import type { HeatLossLaw, LayersLoss, SurfaceLoss } from "../laws/index.js";
import type { Vessel } from "./documents/vessel.js";
import type { Basis } from "./figure.js";
import { remembered } from "./unknown.js";

/** How a vessel loses heat to the room. */
export interface Loss {
  readonly law: HeatLossLaw;
  readonly basis: Basis;
  /** Of a loss that was fitted: conductance [W/K], its 95 % interval, and from how many readings. */
  readonly fit?: { readonly value: number; readonly min?: number; readonly max?: number; readonly readings: number };
}

/** The loss of a vessel, if the documents state or imply one. */
export const lossOf: (vessel: Vessel) => Loss | undefined = remembered((vessel: Vessel): Loss | undefined => {
  const { heatLoss, coolingCurve, surfaces, wall, diameter } = vessel;
  if (surfaces)
    return { law: lossOfSurfaces(surfaces, diameter), basis: { kind: "law", key: "convection-and-radiation" } };
  if (coolingCurve) {
    const { content, room, readings } = coolingCurve;
    const { conductance, interval } = fitConductance({
      readings: readings.map(({ after, temperature }) => ({ time: after, temperature })),
      temperatureAmbient: room,
      heatCapacity: content.mass * content.specificHeat + (wall ? wall.mass * wall.specificHeat : 0),
    });
    return {
      law: { law: "newton", conductance },
      basis: { kind: "reading", key: "vessel-heat-loss", of: vessel.name },
      fit: {
        value: conductance,
        ...(interval && { min: interval.min, max: interval.max }),
        readings: readings.length,
      },
    };
  }
  if (heatLoss === undefined) return undefined;
  return {
    law: { law: "newton", conductance: heatLoss },
    basis: { kind: "stated", key: "vessel-heat-loss", of: vessel.name },
  };
});

/** Side and top in still air: natural convection and radiation. What stands on a plate loses nothing through the bottom. */
function lossOfSurfaces(
  { height, emissivity, insulation }: NonNullable<Vessel["surfaces"]>,
  diameter: number,
): HeatLossLaw {
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
  const parts: readonly (SurfaceLoss | LayersLoss)[] = insulation
    ? [{ law: "layers", area, layers: [insulation], outside: side }, ...top]
    : [...side, ...top];
  return { law: "sum", parts };
}
