import type { Material } from "../../formula/index.js";
import { isWater } from "../contents.js";
import { atMost, exactly } from "../figure.js";
import { durationFigure } from "../parts/durations.js";
import {
  beyond,
  type HeatPlace,
  hotPlaceOf,
  type Met,
  materialsIn,
  metAt,
  warmthAt,
  whyUnknown,
} from "../parts/hot-places.js";
import { isHeated, massOfMaterial } from "../parts/in-vessel.js";
import { type MomentOf, momentsOf } from "../parts/moments.js";
import type { Moment, Run } from "../state.js";
import { stated } from "../unknown.js";
import { asks, type Lever, type Place, type Question, type Subject } from "./question.js";

/** Margin below each flash point [K], if the process states none: common practice, no source. */
const usualFlashPointMargin = 30;

/** A material that can burn, at one place. */
interface Burnable {
  readonly material: Material;
  readonly place: HeatPlace;
}

/** Heating less in the step that decides, or in the last one before it that heats. */
function lessHeat(run: Run, { step: deciding = 0 }: Place): readonly Lever[] {
  const heating = momentsOf(run, "heat")
    .filter(({ number }) => number <= deciding)
    .at(-1);
  if (!heating) return [];
  const { number: step } = heating;
  return [
    {
      id: "less-heat",
      change: (value) => ({ change: "step", step, field: "to", value }),
      bracket: [heating.step.to, run.job.process.room],
    },
  ];
}

/** What can burn: everything but water and particles, whether its flash point is stated or not. */
function isBurnable(material: Material): boolean {
  return !material.particle && !isWater({ material });
}

function flashPointMarginOf({ job }: Run): number {
  return job.process.flashPointMargin ?? usualFlashPointMargin;
}

/** A step that heats or cools to a temperature, for which the process states a time. */
type Timed = MomentOf<"heat"> | MomentOf<"cool">;

function withinOf({ step }: Timed): number | undefined {
  return "within" in step ? step.within : undefined;
}

/** A more powerful heater, or a colder coolant. By itself the vessel cools no faster. */
function fasterHeat({ step }: Timed, { job: { vessel } }: Run): readonly Lever[] {
  const { heater, jacket } = vessel;
  if (step.do === "heat" && heater)
    return [
      {
        id: "stronger-heater",
        change: (value) => ({ change: "heater", value }),
        bracket: [heater.power, 20 * heater.power],
      },
    ];
  if (step.do === "cool" && "with" in step && step.with && jacket)
    return [
      {
        id: "colder-coolant",
        change: (value) => ({ change: "coolant", value }),
        bracket: [jacket.coolant, Math.min(jacket.coolant, coolantMin)],
      },
    ];
  return [];
}

/** Down to here a coolant is looked for [°C]: brine; common practice, no source. */
const coolantMin = -20;

/** Questions about what heat does to the materials, and how long it takes. */
export const heatQuestions: readonly Question[] = [
  asks<Material, Moment>({
    id: "heat-sensitive-off-the-heat",
    quantity: "count",
    quantifier: "every",
    // An antioxidant that is charged early is right.
    subjects: (run) =>
      isHeated(run)
        ? materialsIn(run).filter(({ heatSensitive, function: purpose }) => heatSensitive && purpose !== "antioxidant")
        : [],
    of: ({ key }) => ({ material: key }),
    states: ({ key }, { moments }) => moments.filter((moment) => massOfMaterial(moment, key) > 0),
    at: ({ number }) => ({ step: number }),
    // Each step counts as one in which it is on the heat, or as none.
    figure: ({ after }) => exactly(after.onHeat ? 1 : 0),
    limit: () => atMost(0),
  }),
  asks<Material, Met>({
    id: "maximum-temperature",
    quantity: "temperature",
    quantifier: "every",
    subjects: (run) => materialsIn(run).filter(({ temperatureMax }) => temperatureMax !== undefined),
    of: ({ key }) => ({ material: key }),
    states: (material, run) => [...metAt(run, material, "charge"), ...metAt(run, material, "heated-wall")],
    at: hotPlaceOf,
    figure: (met, _material, run) => warmthAt(met, run),
    limit: (_met, { key, temperatureMax, sources }) => {
      const { limits: source } = sources;
      const basis = {
        kind: "stated",
        key: "material-temperature-max",
        of: key,
        ...(source !== undefined && { source }),
      } as const;
      return atMost(stated(temperatureMax, "material-temperature-max", { of: key }), [basis]);
    },
    levers: (_material, run, at) => lessHeat(run, at),
    beside: (met, { temperatureMax }, run) => ({
      ...whyUnknown(met),
      ...(temperatureMax !== undefined && beyond(met, run, temperatureMax)),
    }),
  }),
  asks<Burnable, Met>({
    id: "flash-point",
    quantity: "temperature",
    quantifier: "every",
    subjects: (run) =>
      materialsIn(run)
        .filter(isBurnable)
        .flatMap((material) =>
          (["charge", "heated-wall"] as const)
            .filter((place) => metAt(run, material, place).length > 0)
            .map((place) => ({ material, place })),
        ),
    of: ({ material, place }): Subject & { readonly place: HeatPlace } => ({ material: material.key, place }),
    states: ({ material, place }, run) => metAt(run, material, place),
    at: hotPlaceOf,
    figure: (met, _burnable, run) => warmthAt(met, run),
    limit: (_met, { material: { key, temperatureFlash, sources } }) => {
      const { limits: source } = sources;
      const basis = {
        kind: "stated",
        key: "material-flash-point",
        of: key,
        ...(source !== undefined && { source }),
      } as const;
      return atMost(stated(temperatureFlash, "material-flash-point", { of: key }), [basis]);
    },
    margin: (run) => ({ max: flashPointMarginOf(run) }),
    levers: (_burnable, run, at) => lessHeat(run, at),
    beside: (met, { material: { temperatureFlash } }, run) => ({
      ...whyUnknown(met),
      ...(temperatureFlash !== undefined && beyond(met, run, temperatureFlash - flashPointMarginOf(run))),
    }),
  }),
  asks<Timed, Timed>({
    id: "done-in-time",
    quantity: "duration",
    quantifier: "every",
    subjects: (run) =>
      [...momentsOf(run, "heat"), ...momentsOf(run, "cool")]
        .filter((moment) => withinOf(moment) !== undefined)
        .sort((one, other) => one.number - other.number),
    of: ({ number }) => ({ step: number }),
    states: (moment) => [moment],
    at: ({ number }) => ({ step: number }),
    figure: durationFigure,
    limit: (moment) => atMost(stated(withinOf(moment), "step-within"), [{ kind: "stated", key: "step-within" }]),
    levers: fasterHeat,
    beside: ({ step }) => ({ direction: step.do === "heat" ? "heating" : "cooling" }),
  }),
];
