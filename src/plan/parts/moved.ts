import type { FlowCurve } from "../../laws/index.js";
import { type Cavern, cavernHeightToDiameter } from "../../mixing/index.js";
import type { Charge } from "../charge.js";
import { toleranceOf } from "../composition.js";
import { exactly, type Figure } from "../figure.js";
import { oilLawsOf, thickenedBy } from "../oil-laws.js";
import type { Run, Turn } from "../state.js";
import { levelsIn, movedBy, stirredIn, stirredWith, temperatureOfStirring } from "../stirred.js";
import { everyEnd, stirredEnds } from "../stirred-ends.js";
import { shearRateOf, stirrerOf } from "../stirrer.js";
import { along, otherwise, remembered, stated, unknown } from "../unknown.js";
import { hasSet } from "./turning.js";
import { yieldStressFigure } from "./yield-stress.js";

/** Below this share of the volume droplets of one size do not touch, and have no yield stress: random packing, common practice, no source. */
const touching = 0.64;

/** The yield stress of what is turned [Pa]; 0 where there is none. */
type Yield = Figure & { readonly min: number };

/** How wide the stirrer moves a gel with a yield stress [m]. */
export function widthMoved(turn: Turn, run: Run): Figure {
  const { diameter } = run.job.vessel;
  return extent(turn, run, {
    all: diameter,
    narrowest: ({ diameter: moved }) => moved,
    widest: ({ diameter: moved }) => moved,
  });
}

/** How high the stirrer moves a gel with a yield stress [m]: an end at the free surface carries no stress, and an arm moves the gel along all of its height. */
export function heightMoved(turn: Turn, run: Run): Figure {
  const { diameter } = run.job.vessel;
  const { kind, topEdge } = stirrerOf(run.job);
  const { max: level } = levelsIn(turn);
  const figure = extent(turn, run, {
    all: level,
    narrowest: ({ height }) => height,
    widest: ({ height, reachesWall }) => height + (reachesWall ? diameter / 6 : 0),
  });
  if (kind !== "anchor" && kind !== "helical ribbon") return figure;
  // What follows the wall reaches up to its upper edge.
  const { min, max, ...others } = figure;
  if (min !== null && min >= level) return figure;
  const swept = stated(topEdge, "stirrer-top-edge", { of: kind });
  return { ...others, min: Math.max(min ?? 0, swept), max: max === null ? null : Math.max(max, swept) };
}

/** What is asked of a cavern; of the shapes that were seen the one decides that is on the unfavourable side. */
interface Extent {
  /** Where all of it moves. */
  readonly all: number;
  readonly narrowest: (cavern: Cavern) => number;
  readonly widest: (cavern: Cavern) => number;
}

/** How far the gel is moved with the strongest yield stress that it may have, and with the weakest. */
function extent(turn: Turn, run: Run, { all, narrowest, widest }: Extent): Figure {
  const law = { kind: "law", key: "cavern" } as const;
  const { min: weak, max: strong, basis = [], assumptions = [] } = yieldIn(turn, run);
  const max = weak === 0 ? null : Math.max(...cavernsAt(turn, weak).map(widest));
  // How much stronger it may be was not measured: only the weakest decides what moves.
  if (strong === null && (max === null || max >= all))
    unknown("not-read", { field: "emulsion-thickness-yield-stress" });
  const min = strong === null ? null : strong === 0 ? all : Math.min(...cavernsAt(turn, strong).map(narrowest));
  return { min, max, basis: [law, ...basis], ...(assumptions.length > 0 && { assumptions }) };
}

/** The yield stress of what a stirrer turns. Whether a melt has set may not be known; then nothing is known of how it moves. */
function yieldIn(turn: Turn, run: Run): Yield {
  const { charge } = turn.state;
  if (charge.isEmulsion()) return yieldOfEmulsion(charge);
  if (!hasSet(turn.state)) return { ...exactly(0), min: 0 };
  const { min, max, basis } = yieldStressFigure(run);
  return { min, max, basis, ...(!isRead(turn) && { assumptions: ["yield-stress-alone"] as const }) };
}

/** Whether it is read how thick a set gel is at the shear rate of the stirrer: every gel thins, so that takes a flow index. */
function isRead(turn: Turn): boolean {
  return otherwise(
    () => stirredIn(turn).speed > 0 && turn.state.charge.readings("cooling").flowIndex !== undefined,
    () => false,
  );
}

/**
 * The yield stress of an emulsion: between the readings along its oil. One reading is a reading: with as much oil it
 * holds, with more the gel is stronger, with less weaker, and where droplets do not touch there is none.
 */
function yieldOfEmulsion(charge: Charge): Yield {
  const curve = charge.emulsionCurve();
  if ("yieldStress" in curve) return { ...exactly(curve.yieldStress), min: curve.yieldStress };
  const { bench } = charge.job;
  const readings = oilLawsOf(bench).yieldStress;
  const { value, volumeFractionOil } = stated(readings[0], "emulsion-thickness-yield-stress");
  const oil = charge.oilFraction();
  if (oil < Math.min(touching, volumeFractionOil)) return { ...exactly(0), min: 0 };
  const basis = [{ kind: "reading", key: "emulsion-thickness-yield-stress", source: bench.source }] as const;
  const apart = oil - volumeFractionOil;
  // Particles make it stronger.
  const thickened = value * thickenedBy(charge.grains());
  if (Math.abs(apart) <= toleranceOf(bench)) return { min: value, max: thickened, basis };
  return apart > 0 ? { min: value, max: null, basis } : { min: 0, max: thickened, basis };
}

/** The caverns of a gel with a yield stress, at every end of what is published of stirrer and cavern. */
function cavernsAt(turn: Turn, yieldStress: number): readonly Cavern[] {
  return cavernsAlong(turn)(yieldStress);
}

const cavernsAlong = remembered((turn: Turn) => along((yieldStress) => cavernsOf(turn, yieldStress)));

function cavernsOf(turn: Turn, yieldStress: number): readonly Cavern[] {
  const { charge } = turn.state;
  const { job } = charge;
  const curve = (stirrer: ReturnType<typeof stirrerOf>): FlowCurve => {
    if (charge.isEmulsion()) return withYield(charge, yieldStress);
    // A set gel of which the yield stress alone counts, at the mean shear rate of the stirrer: with its viscosity it is moved further.
    return { law: "newton", viscosity: yieldStress / shearRateOf(stirrer, turn.speed()) };
  };
  const temperature = temperatureOfStirring(turn.state);
  const stirredAs = (stirrer: ReturnType<typeof stirrerOf>, level: number) =>
    stirredWith(charge, temperature, curve(stirrer), turn.speed(), stirrer, level);
  const ends = !charge.isEmulsion() && isRead(turn) ? stirredEnds(turn) : everyEnd(charge, temperature, stirredAs);
  const { min, max } = cavernHeightToDiameter;
  return ends.flatMap((stirred) =>
    [max, min].map((heightToDiameter) => movedBy(job, stirrerOf(job), { ...stirred, yieldStress, heightToDiameter })),
  );
}

/** The flow curve of an emulsion with another yield stress, through the same stress at the shear rate of the readings. */
function withYield(charge: Charge, yieldStress: number): FlowCurve {
  const curve = charge.emulsionCurve();
  if (curve.law !== "power-law") return curve;
  const shearRate = stated(charge.job.bench.emulsion?.thickness?.shearRate, "emulsion-thickness-shear-rate");
  const consistency = curve.consistency - yieldStress / shearRate ** curve.flowIndex;
  if (!(consistency > 0)) unknown("contradiction", { field: "emulsion-thickness-yield-stress" });
  return { law: "herschel-bulkley", yieldStress, consistency, flowIndex: curve.flowIndex };
}

/** Whether a stirrer surely moves all of the gel: to the wall, and to the surface. */
export function movesAll(turn: Turn, run: Run): boolean {
  const [width, height] = [widthMoved(turn, run).min ?? 0, heightMoved(turn, run).min ?? 0];
  return width >= run.job.vessel.diameter && height >= levelsIn(turn).max;
}
