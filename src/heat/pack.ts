import { notNegative, positive, record, refuse, show, temperature, variant } from "../guards.js";
import { history } from "./conduction-history.js";
import * as known from "./known.js";

/** What is inside a pack, by its shape. */
export type Pack =
  | {
      /** Flat, and cooled from both faces; for one that is cooled from one face only, give twice the thickness. */
      readonly shape: "slab";
      /** [m], above 0. */
      readonly thickness: number;
    }
  | {
      /** A jar, a stick or a drum, cooled all round; on an insulating base, give twice the height. */
      readonly shape: "cylinder";
      /** [m], above 0. */
      readonly diameter: number;
      /** [m], above 0; left out for one so long that its ends do not matter. */
      readonly height?: number;
    }
  | {
      /** A ball. */
      readonly shape: "sphere";
      /** [m], above 0. */
      readonly diameter: number;
    };

/** Where in a pack: its centre, the mean over its volume, or a place. */
export type PlaceInPack =
  | "centre"
  | "mean"
  | {
      /** Distance from the axis of a cylinder, or from the centre of a sphere [m]; default 0. */
      readonly radial?: number;
      /** Distance from the middle plane of a slab or cylinder [m]; default 0. */
      readonly axial?: number;
    };

/** A pack that was filled at one temperature and cools at rest. */
export interface CoolingPack {
  /** Shape and dimensions of the content. */
  readonly pack: Pack;
  /** Thermal conductivity of the content [W/(m·K)], above 0. */
  readonly conductivity: number;
  /** Density of the content [kg/m³], above 0. */
  readonly density: number;
  /** Specific heat of the content [J/(kg·K)], above 0. */
  readonly specificHeat: number;
  /**
   * From the content's surface to the surroundings [W/(m²·K)], above 0: wall of the pack and air (5 to 15 in still air)
   * in series. `"infinite"` where the surface is held at the ambient temperature.
   */
  readonly heatTransferCoefficient: number | "infinite";
  /** Temperature of all the content at the start [°C]. */
  readonly temperatureStart: number;
  /** Temperature of the surroundings [°C]. */
  readonly temperatureAmbient: number;
  /** Where: `"centre"` (default), `"mean"` over the volume, or a place. */
  readonly where?: PlaceInPack;
}

/** A pack that has been checked. */
export interface CompiledPack {
  readonly start: number;
  readonly ambient: number;
  /** A time in which conduction crosses the pack's smallest half dimension [s]. */
  readonly unit: number;
  /** Relative temperature at the place, after a time [s]. */
  readonly leftAt: (duration: number) => number;
}

/** One way in which heat flows: how the surface bends, half the dimension [m], and the distance from the centre [m]. */
interface Way {
  readonly bend: number;
  readonly reach: number;
  readonly place: number | undefined;
}

function half(value: number | undefined, path: string): number {
  return positive(value, `pack.${path}`) / 2;
}

function waysOf(pack: Pack, radial: number | undefined, axial: number | undefined): readonly Way[] {
  variant(pack, "pack", "shape", known.pack);
  switch (pack.shape) {
    case "slab":
      if (radial !== undefined) refuse("input", "where.radial", show(radial), "nothing: a slab has no radius");
      return [{ bend: 0, reach: half(pack.thickness, "thickness"), place: axial }];
    case "cylinder": {
      const round = { bend: 1, reach: half(pack.diameter, "diameter"), place: radial };
      if (pack.height !== undefined) return [round, { bend: 0, reach: half(pack.height, "height"), place: axial }];
      if (axial !== undefined) refuse("input", "where.axial", show(axial), "nothing, or a height of the cylinder");
      return [round];
    }
    case "sphere":
      if (axial !== undefined) refuse("input", "where.axial", show(axial), "nothing: a sphere has no axis");
      return [{ bend: 2, reach: half(pack.diameter, "diameter"), place: radial }];
    default:
      return refuse("input", "pack.shape", show((pack as Pack).shape), '"slab", "cylinder" or "sphere"');
  }
}

/** Where along a way, as a share of its reach. */
function shareOf({ bend, reach, place = 0 }: Way): number {
  const path = bend === 0 ? "where.axial" : "where.radial";
  const distance = notNegative(place, path);
  return distance <= reach ? distance / reach : refuse("input", path, distance, `at most ${reach} m, the surface`);
}

/** Checks a pack; the relative temperatures of its ways multiply, and so do their means. */
export function compilePack(input: CoolingPack): CompiledPack {
  const {
    pack,
    conductivity,
    density,
    specificHeat,
    heatTransferCoefficient,
    where = "centre",
  } = record(input, "input");
  const conducted = positive(conductivity, "conductivity");
  const diffusivity = conducted / (positive(density, "density") * positive(specificHeat, "specificHeat"));
  const held = heatTransferCoefficient === "infinite";
  const outside = held ? 0 : positive(heatTransferCoefficient, 'heatTransferCoefficient (or "infinite")');
  const named = where === "centre" || where === "mean";
  const { radial, axial } = named ? {} : record(where as Exclude<PlaceInPack, string>, "where", known.placeInPack);
  const ways = waysOf(pack, radial, axial).map((way) => {
    const biot = held ? Number.POSITIVE_INFINITY : positive((outside / conducted) * way.reach, "Biot number");
    const rate = positive(diffusivity / way.reach / way.reach, "diffusivity over half dimension squared");
    return { rate, left: history(way.bend, biot, where === "mean" ? where : shareOf(way)) };
  });
  return {
    start: temperature(input.temperatureStart, "temperatureStart"),
    ambient: temperature(input.temperatureAmbient, "temperatureAmbient"),
    unit: 1 / Math.max(...ways.map(({ rate }) => rate)),
    leftAt: (duration) => ways.reduce((all, { rate, left }) => all * left(duration * rate), 1),
  };
}
