import type { WeighedLot } from "../../batch/index.js";
import type { Material, MaterialFunction } from "../../formula/index.js";
import { increment, multiple } from "../../numeric/decimal.js";
import { massOf } from "../contents.js";
import { stepsBetween } from "../portions.js";
import type { Run } from "../state.js";
import { stated, unknown, where } from "../unknown.js";
import { type PartWeighing, weighedApart, weighedOn } from "./part-weighing.js";

/** One line to weigh. Masses in kg, shares 0 to 1. */
export interface WeighingLine {
  readonly phase: string;
  /** Key of the material. */
  readonly material: string;
  readonly listingName?: string;
  readonly function: MaterialFunction;
  /** Share of the finished product. */
  readonly massFraction: number;
  /** Mass before rounding. */
  readonly massExact: number;
  /** Mass to weigh: a whole number of the balance's increments. */
  readonly mass: number;
  readonly balance: string;
  /** Of the balance [kg]. */
  readonly increment: number;
  /** The mass in portions that the balance can carry; they add up to it. */
  readonly portions: readonly number[];
  /** Between which readings the weighing counts as right. */
  readonly tolerance: { readonly min: number; readonly max: number };
  /** What of it is weighed for the vessel, where some goes into premixes and it is not weighed in portions. */
  readonly left?: PartWeighing;
}

/** What is weighed for one lot. */
export interface Weighing {
  readonly lines: readonly WeighingLine[];
  /** What the lines add up to as weighed [kg]. */
  readonly total: number;
  /** The total that was planned [kg]; `onGrid` says whether the balances can reach it exactly. */
  readonly totalTarget: number;
  readonly onGrid: boolean;
  /** What each step charges of a phase that goes in in parts, in the order of the steps; the parts of a line add up to it. */
  readonly parts: readonly WeighingPart[];
  /** What is mixed beforehand, in the order in which it can be made: of the lines, what goes into each. */
  readonly premixes: readonly WeighingPremix[];
}

/** A premix of one lot, named and weighed as such. Masses in kg. */
export interface WeighingPremix {
  /** Key of the premix in the formula. */
  readonly premix: string;
  readonly name: string;
  /** The phase that it goes into. */
  readonly phase: string;
  /** Materials that are weighed into it: of the phase's line of each, in steps of its balance; how, where that line is not weighed in portions. */
  readonly lines: readonly { readonly material: string; readonly mass: number; readonly weighing?: PartWeighing }[];
  /** Premixes that are weighed into it, made before. */
  readonly premixes: readonly { readonly premix: string; readonly mass: number }[];
  /** What it comes to. */
  readonly total: number;
}

/** A part of a phase: what of each of its lines goes in at a step. Masses in kg. */
export interface WeighingPart {
  /** Number of the step, from 1. */
  readonly step: number;
  readonly phase: string;
  /** Which part of the phase it is, from 1. */
  readonly number: number;
  /** How many parts the phase is charged in. */
  readonly count: number;
  /** Mass of each material in this part [kg]. */
  readonly lines: readonly { readonly material: string; readonly mass: number }[];
  /** Mass of this part [kg]. */
  readonly total: number;
}

/** How many equal lots there are, and what one of them holds. */
export interface Lots {
  /** Equal lots: as many as were asked for, else the fewest that fit the vessel with their packs whole. */
  readonly count: number;
  /** Finished product of one lot as asked for [kg]. */
  readonly deliveredTarget: number;
  /** The same as the weighed charge will bring it [kg]. */
  readonly delivered: number;
  /** Packs of one lot, if packs were asked for. */
  readonly packs?: number;
  /** Charge of one lot [kg]. */
  readonly charge: number;
  /** Its volume at 20 °C [m³], if that is known. */
  readonly volume?: number;
}

/** Cost of the materials of all lots [currency]. */
export interface Cost {
  readonly currency: string;
  readonly batch: number;
  /** Of what is delivered. */
  readonly perKilogram: number;
  readonly perPack?: number;
}

/** The lots of the batch. */
export function lotsOf(run: Run): Lots {
  const { lot, lots, massOfLot, packsOfLot } = run.scaled;
  return {
    count: lots,
    deliveredTarget: massOfLot,
    delivered: lot.delivered,
    ...(packsOfLot !== undefined && { packs: packsOfLot }),
    charge: lot.total,
    ...where("volume", () => volumeOfLot(run)),
  };
}

/** Volume of a lot at 20 °C [m³], by the density of the batch document, else by those of the materials. */
export function volumeOfLot({ scaled: { lot, density } }: Run): number {
  return lot.total / stated(density, "material-density");
}

/** The lines to weigh for one lot. */
export function weighingOf({ job, scaled, moments }: Run): Weighing {
  const { formula } = job;
  const { lot, charge } = scaled;
  const lines = lot.lines.map((line): WeighingLine => {
    const { phase, material: key, massExact, mass, balance, increment, portions, tolerance } = line;
    const { listingName, function: purpose = "other" } = formula.materials[key] as Material;
    const massFraction = formula.lines
      .filter((one) => one.phase === phase && one.material === key)
      .reduce((sum, one) => sum + one.massFraction, 0);
    return {
      phase,
      material: key,
      ...(listingName !== undefined && { listingName }),
      function: purpose,
      massFraction,
      massExact,
      mass,
      balance,
      increment,
      portions,
      tolerance: { min: tolerance.min, max: tolerance.max },
    };
  });
  const parts = moments.flatMap(({ number: step, portion }): readonly WeighingPart[] =>
    portion && portion.count > 1 ? [{ step, ...portion, total: massOf(portion.lines) }] : [],
  );
  const premixes = premixesIn(job, lines);
  return {
    lines: lines.map((line) => besidePremixes(job, line, premixes)),
    total: lot.total,
    totalTarget: charge.total,
    onGrid: lot.onGrid,
    parts,
    premixes,
  };
}

/** What goes into each premix: of a line that several share, each gets whole steps, and all of them together no more than the line. */
function premixesIn(job: Run["job"], weighed: readonly WeighingLine[]): readonly WeighingPremix[] {
  const { premixes = [] } = job.formula;
  const taken = new Map<WeighingLine, number>();
  const made: WeighingPremix[] = [];
  for (const { key, name, phase, lines, premixes: inside } of premixes) {
    const own = lines.flatMap(({ material, shareOfLine }) => {
      const line = weighed.find((one) => one.phase === phase && one.material === material);
      if (!line) return [];
      const before = taken.get(line) ?? 0;
      taken.set(line, before + shareOfLine);
      const mass = stepsBetween(line, before, before + shareOfLine);
      const weighing = partOf(job, line, mass);
      return [{ material, mass, ...(weighing && { weighing }) }];
    });
    const held = inside.flatMap(({ premix, shareOfPremix }) => {
      const whole = made.find((one) => one.premix === premix && one.phase === phase);
      return whole ? [{ premix, mass: shareOfPremix * whole.total }] : [];
    });
    made.push({ premix: key, name, phase, lines: own, premixes: held, total: massOf([...own, ...held]) });
  }
  return made;
}

/** How a part of a line is weighed: on a balance of its own if one suits it better, else on that of the line. */
function partOf(job: Run["job"], line: WeighingLine, mass: number): PartWeighing | undefined {
  if (line.portions.length > 1) return undefined;
  return weighedApart(job, line.material, mass, line) ?? weighedOn(job, mass, line);
}

/** A line with what of it goes into the vessel by itself, where premixes take some. */
function besidePremixes(job: Run["job"], line: WeighingLine, premixes: readonly WeighingPremix[]): WeighingLine {
  const held = premixes.flatMap(({ phase, lines }) =>
    lines.filter(({ material }) => phase === line.phase && material === line.material),
  );
  const steps = Math.round((line.mass - massOf(held)) / line.increment);
  if (held.length === 0 || steps === 0) return line;
  const left = partOf(job, line, multiple(steps, increment(line.increment, "increment"), line.material));
  return left ? { ...line, left } : line;
}

/** What the process takes from one lot as it is weighed [kg], in its order, by the caller's names. */
export function allowancesOf({ scaled: { lot } }: Run): WeighedLot["allowances"] {
  return lot.allowances;
}

/** What the materials cost. A missing price is never guessed, and currencies are never converted. */
export function costOfBatch({ job: { formula }, scaled: { lot, cost } }: Run): Cost {
  const prices = lot.lines.map(({ material: key }) =>
    stated(formula.materials[key]?.price, "material-price", { of: key }),
  );
  const [first] = prices;
  const another = prices.findIndex(({ currency }) => currency !== first?.currency);
  if (another >= 0)
    unknown("contradiction", {
      field: "material-price",
      of: (lot.lines[another] as (typeof lot.lines)[number]).material,
    });
  if ("notKnown" in cost) return unknown("not-stated", { field: "material-price" });
  const { currency, batch, perKilogram, perPack } = cost;
  return { currency, batch, perKilogram, ...(perPack !== undefined && { perPack }) };
}
