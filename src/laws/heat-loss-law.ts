import type { AirProperties } from "./air.js";
import type { Beyond } from "./beyond.js";

/** Natural convection at a wall or a horizontal surface, in air at rest. */
export type ConvectionLoss = {
  readonly law: "natural convection";
  /** Surface that loses heat [m²], above 0. */
  readonly area: number;
  /** The air as it is at the surface; left out: dry air at 101325 Pa and the temperature of the film. */
  readonly air?: AirProperties;
  /** Outside the range of the correlation: `"throw"` (default) or `"extend"`. */
  readonly beyond?: Beyond;
} & (
  | {
      /** A wall, flat or round. */
      readonly surface: "vertical";
      /** Height of the wall [m], above 0. */
      readonly height: number;
      /** Diameter [m] of a vertical cylinder, above 0; left out: a flat wall, or so wide that it counts as one. */
      readonly diameter?: number;
    }
  | {
      /** Which way the horizontal surface looks. */
      readonly surface: "facing up" | "facing down";
      /** Length of its edge [m], above 0. */
      readonly perimeter: number;
    }
);

/** Heat lost from a surface to the room, with nothing between. */
export type SurfaceLoss =
  | {
      /** In proportion to the difference of temperature. */
      readonly law: "newton";
      /** Heat-transfer coefficient times area, over all walls [W/K], 0 or more. */
      readonly conductance: number;
    }
  | ConvectionLoss
  | {
      /** Grey radiation to surroundings at the temperature of the room. */
      readonly law: "radiation";
      /** Surface that radiates [m²], above 0. */
      readonly area: number;
      /** Emissivity of the surface, 0 to 1. */
      readonly emissivity: number;
    };

/** Layers of wall and insulation, whose outer surface loses heat to the room. */
export interface LayersLoss {
  /** Conduction through layers in series. */
  readonly law: "layers";
  /** Area through which heat passes [m²], above 0; for thick layers on a cylinder its logarithmic mean. */
  readonly area: number;
  /** From the inside out; at least one. */
  readonly layers: readonly {
    /** [m], above 0. */
    readonly thickness: number;
    /** Thermal conductivity [W/(m·K)], above 0. */
    readonly conductivity: number;
  }[];
  /** Between content and wall [W/(m²·K)], above 0; left out: the wall is as warm as the content. */
  readonly heatTransferCoefficientInside?: number;
  /** What leaves from the outer surface; at least one. */
  readonly outside: readonly SurfaceLoss[];
}

/** How fast a vessel loses heat to the room, as plain data. */
export type HeatLossLaw =
  | SurfaceLoss
  | LayersLoss
  | {
      /** Several at once: side, lid and bottom, or convection and radiation. */
      readonly law: "sum";
      /** At least one. */
      readonly parts: readonly (SurfaceLoss | LayersLoss)[];
    };
