import type { Material } from "../../formula/index.js";
import { steadyTemperature } from "../../heat/index.js";
import type { CautionCode } from "../codes/notes.js";
import { lossOf } from "../loss.js";
import type { Run } from "../state.js";
import { by, stated, where } from "../unknown.js";
import { isHeated, untilFilled, warmestIn } from "./in-vessel.js";
import { momentsOf } from "./moments.js";

/** A usual caution for what a job does. It warns; neither it nor any figure says that anything is safe. */
export interface Caution {
  readonly code: CautionCode;
  /** Keys of the materials that raise it. */
  readonly materials?: readonly string[];
  /** The warmest that the charge gets, if that is known all the way [°C]. */
  readonly temperatureMax?: number;
  /** Where a heater that is forgotten would take the charge, if that is known [°C]. */
  readonly temperatureLeftOn?: number;
  /** The lowest flash point that the documents state [°C], and the material that has it. */
  readonly flashPoint?: { readonly material: string; readonly temperature: number };
  /** Of a restriction: the caller's own words. */
  readonly text?: string;
}

/** Of the air [Pa]: a lower one is a vacuum. */
const airPressure = 100_000;

/** The usual cautions for what the process holds, those of an emulsion first. */
export function cautionsOf(run: Run): readonly Caution[] {
  const { formula, bench, vessel, pack } = run.job;
  const used = [...new Set(formula.lines.map(({ material }) => material))].flatMap(
    (key) => formula.materials[key] as Material,
  );
  const those = (holds: (material: Material) => unknown): readonly string[] => used.filter(holds).map(({ key }) => key);
  const dusts = those(
    ({ function: purpose, particle }) => particle || purpose === "particle" || purpose === "colourant",
  );
  const scented = those(({ function: purpose, allergens }) => purpose === "fragrance" || allergens.length > 0);
  const wet = those(({ function: purpose, formulationWater }) => formulationWater || purpose === "water");
  const preserved = used.some((material) => material.function === "preservative");
  const isSprayed = pack?.nozzle?.spray !== undefined;
  return [
    ...raised(bench.emulsion, { code: "additions-not-hurried" }),
    ...raised(bench.emulsion && wet.length > 0 && !preserved, { code: "no-preservative", materials: wet }),
    ...raised(isEvacuated(run), { code: "vacuum" }),
    ...raised(bench.emulsion, { code: "water-kept-out" }),
    ...raised(isHot(run), { code: "hot-oil", ...temperaturesOf(run), ...lowestFlashPoint(used) }),
    ...raised(vessel.stirrer && !vessel.stirrer.byHand, { code: "stirrer" }),
    ...raised(dusts.length > 0, { code: "dust", materials: dusts }),
    ...raised(dusts.length > 0 && isSprayed, { code: "spray-inhaled", materials: dusts }),
    ...raised(scented.length > 0, { code: "sensitisers", materials: scented }),
    ...raised(wet.length > 0, { code: "preservation", materials: wet }),
    ...used.flatMap(({ key, restrictions }) =>
      restrictions.map((text): Caution => ({ code: "restriction", materials: [key], text })),
    ),
    { code: "arithmetic-only" },
  ];
}

function raised(by: unknown, caution: Caution): readonly Caution[] {
  return by ? [caution] : [];
}

/** The lowest flash point of the materials that state one. */
function lowestFlashPoint(used: readonly Material[]): Pick<Caution, "flashPoint"> {
  const [flashPoint] = used
    .flatMap(({ key: material, temperatureFlash: temperature }) =>
      temperature === undefined ? [] : [{ material, temperature }],
    )
    .sort((one, other) => one.temperature - other.temperature);
  return flashPoint ? { flashPoint } : {};
}

/** Whether the vessel is on the heat, or something is charged warmer than the room. */
function isHot(run: Run): boolean {
  return (
    isHeated(run) ||
    momentsOf(run, "charge").some(({ step: { at = run.job.process.room } }) => at > run.job.process.room)
  );
}

/** Whether a vacuum is drawn on the vessel. */
function isEvacuated(run: Run): boolean {
  return (
    run.job.process.air?.vacuum !== undefined ||
    momentsOf(run, "de-aerate").some(({ step: { pressure = airPressure } }) => pressure < airPressure)
  );
}

/** How warm the charge gets, and would get if the heater were left on: until the loss takes all that it gives, and no warmer than the heater. */
function temperaturesOf(run: Run): Pick<Caution, "temperatureMax" | "temperatureLeftOn"> {
  const { vessel, process } = run.job;
  return {
    ...where("temperatureMax", () => Math.max(...untilFilled(run).map(warmestIn))),
    ...where("temperatureLeftOn", () => {
      const { power, temperatureMax = Number.MAX_VALUE } = stated(vessel.heater, "vessel-heater", { of: vessel.name });
      const { law: heatLoss } = stated(lossOf(vessel), "vessel-heat-loss", { of: vessel.name });
      const steady = by("heat-balance", () =>
        steadyTemperature({ heatSource: { kind: "power", power }, heatLoss, temperatureAmbient: process.room }),
      );
      return Math.min(temperatureMax, steady);
    }),
  };
}
