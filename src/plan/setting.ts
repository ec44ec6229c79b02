import { type ScaledBatch, scaleFormula } from "../batch/index.js";
import { fitConductance } from "../heat/index.js";
import {
  type HeatLossLaw,
  type LayersLoss,
  type SurfaceLoss,
  type ViscosityLaw,
  viscosityBreakpoints,
  viscosityFunction,
} from "../laws/index.js";
import type { OilLaw, OilPoint, VesselShape } from "../mixing/index.js";
import { maxOf, minOf } from "../numeric/extremes.js";
import { densityOf, isGlycerin, isWater } from "./contents.js";
import type { Basis } from "./figure.js";
import type { Bench, Job, Vessel } from "./job.js";
import { withSamples } from "./samples.js";
import { cylinderReadings, shearRateTaken } from "./taken.js";
import { remembered } from "./unknown.js";

/** How a vessel loses heat to the room. */
export interface Loss {
  readonly law: HeatLossLaw;
  readonly basis: Basis;
  /** Of a loss that was fitted: conductance [W/K], its 95 % interval, and from how many readings. */
  readonly fit?: { readonly value: number; readonly min?: number; readonly max?: number; readonly readings: number };
}

/** Viscosity readings of one composition in one direction. */
export interface Readings {
  readonly direction: "heating" | "cooling";
  /** Shear rate at which they were read [1/s]. */
  readonly shearRate: number;
  readonly flowIndex?: number | undefined;
  readonly law: ViscosityLaw;
  readonly breakpoints: readonly number[];
  /** Where they end [°C]; infinite for a law. */
  readonly temperatureMin: number;
  readonly temperatureMax: number;
  /** Viscosity [Pa·s] at a temperature [°C], the law continued beyond its ends. */
  readonly at: (temperature: number) => number;
  /** What was in the beaker: share of each material, by its key. */
  readonly shares: ReadonlyMap<string, number>;
}

/** What the bench found of an emulsion, as laws along the oil fraction. */
export interface OilLaws {
  readonly share: OilLaw | undefined;
  readonly incorporation: OilLaw | undefined;
  readonly viscosity: readonly OilPoint[];
  readonly flowIndex: readonly OilPoint[];
  readonly yieldStress: readonly OilPoint[];
}

/** Distance that the mix keeps above its setting temperature [K], where the process names none: common practice, no source. */
const usualSettingMargin = 2;

/** How far a melt, or a store, keeps away from where the gel sets [K]. */
export function settingMarginOf({ process }: Job): number {
  return process.settingMargin ?? usualSettingMargin;
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

type ViscosityReadings = NonNullable<Bench["viscosities"]>[number];

/** The law of viscosity readings. */
export const viscosityLawOf: (readings: ViscosityReadings) => ViscosityLaw = remembered(
  ({ readings, law, taken }: ViscosityReadings): ViscosityLaw => {
    if (taken) return { law: "readings", points: cylinderReadings(taken) };
    if (!law)
      return {
        law: "readings",
        points: (readings as NonNullable<typeof readings>).map(({ at, viscosity }) => ({ temperature: at, viscosity })),
      };
    if (law.law === "andrade") return law;
    const { factor, coefficient, temperatureVogel } = law;
    return { law: "vogel-fulcher-tammann", lnFactor: Math.log(factor), coefficient, temperatureVogel };
  },
);

/** All viscosity readings of the bench, ready to be asked. */
export function readingsOf({ bench, benchLines }: Job): readonly Readings[] {
  return (bench.viscosities ?? []).map((reading) => compiledOf(reading)(benchLines));
}

/** One set of readings, ready to be asked: compiled once, whatever the formula of the run. */
const compiledOf: (reading: ViscosityReadings) => (lines: Job["benchLines"]) => Readings = remembered(
  (reading: ViscosityReadings) =>
    remembered((benchLines: Job["benchLines"]): Readings => {
      const { direction, taken, flowIndex } = reading;
      const shearRate = taken ? shearRateTaken(taken) : (reading.shearRate as number);
      const shares = sharesOf(reading, benchLines);
      return { direction, shearRate, flowIndex, shares, ...alongLaw(viscosityLawOf(reading)) };
    }),
);

/** What follows from the law of some readings. */
export function alongLaw(
  law: ViscosityLaw,
): Pick<Readings, "law" | "breakpoints" | "temperatureMin" | "temperatureMax" | "at"> {
  const temperatures = law.law === "readings" ? law.points.map((point) => point.temperature) : [];
  return {
    law,
    breakpoints: viscosityBreakpoints(law),
    temperatureMin: temperatures.length > 0 ? minOf(temperatures) : Number.NEGATIVE_INFINITY,
    temperatureMax: temperatures.length > 0 ? maxOf(temperatures) : Number.POSITIVE_INFINITY,
    at: viscosityFunction(law, { beyond: "extend" }),
  };
}

/** What was in the beaker of a reading: the lines of its phases, and another dose of gel former if it states one. */
function sharesOf({ phases, gelFormer }: ViscosityReadings, lines: Job["benchLines"]): ReadonlyMap<string, number> {
  const inside = lines.filter(({ phase }) => phases.includes(phase));
  const whole = inside.reduce((sum, line) => sum + line.massFraction, 0);
  const shares = new Map<string, number>();
  for (const { material, massFraction } of inside)
    shares.set(material, (shares.get(material) ?? 0) + massFraction / whole);
  // The dose that a reading states goes by material when it is compared with a charge.
  if (gelFormer !== undefined) shares.set(doseKey, gelFormer);
  return shares;
}

/** Stands among the shares of a reading for the gel former that it states, whichever material that is. */
export const doseKey = "\u0000dose";

/** What the bench found of an emulsion, along the oil fraction. */
export const oilLawsOf: (bench: Bench) => OilLaws = remembered(({ emulsion }: Bench): OilLaws => {
  const readings = emulsion?.thickness?.readings ?? [];
  type Reading = (typeof readings)[number];
  const along = (key: "viscosity" | "flowIndex" | "yieldStress"): readonly OilPoint[] =>
    readings.flatMap((reading: Reading) => {
      const { [key]: value } = reading;
      return value === undefined ? [] : [{ volumeFractionOil: reading.oil, value }];
    });
  const lawOf = (points: readonly OilPoint[]): OilLaw | undefined => {
    const [first, second] = points;
    return second ? { law: "table", points } : first && { law: "constant", value: first.value };
  };
  return {
    share: lawOf(
      (emulsion?.additionShareMax ?? []).map(({ oil, share }) => ({ volumeFractionOil: oil, value: share })),
    ),
    incorporation: lawOf(
      (emulsion?.incorporationTime ?? []).map(({ oil, time }) => ({ volumeFractionOil: oil, value: time })),
    ),
    viscosity: along("viscosity"),
    flowIndex: along("flowIndex"),
    yieldStress: along("yieldStress"),
  };
});

/** The inside of the vessel as the kernels take it. */
export function shapeOf({ diameter, bottom }: Pick<Vessel, "diameter" | "bottom">): VesselShape {
  return { diameter, ...(bottom && { bottom }) };
}

/** The batch that the formula is scaled to, with the vessel it is made in. */
export function scaledBatch(job: Job, yieldStress: number | undefined): ScaledBatch {
  return scaleFormula(scalingInput(job, yieldStress));
}

/** What the batch of a job is scaled by. */
export function scalingInput(job: Job, yieldStress: number | undefined): Parameters<typeof scaleFormula>[0] {
  const { formula, vessel } = job;
  const batch = withSamples(job);
  const { name, workingVolume, diameter, bottom } = vessel;
  const density = batch.density ?? contractedDensity(formula);
  return {
    formula,
    batch: density === undefined ? batch : { ...batch, density },
    vessel: { name, volumeMin: workingVolume.min, volumeMax: workingVolume.max, diameter, bottom },
    ...(yieldStress !== undefined && { yieldStress }),
  };
}

/** Density of a product at 20 °C in which glycerin and water contract [kg/m³]; of another its materials' volumes add up in the batch. */
const contractedDensity: (formula: Job["formula"]) => number | undefined = remembered(({ lines, materials }) => {
  const contents = lines.flatMap(({ material: key, massFraction: mass, phase }) => {
    const material = materials[key];
    return material && mass > 0 ? [{ material, mass, phase }] : [];
  });
  const contracts = contents.some(isGlycerin) && contents.some(isWater);
  return contracts && contents.every(({ material }) => material.density) ? densityOf(contents, 20) : undefined;
});
