import { densityGlycerinWater, refractiveIndexGlycerinWater, turbidity, turbidityBand } from "../../gel/index.js";
import { bandAround } from "../../laws/index.js";
import { root } from "../../numeric/root.js";
import type { Charge } from "../charge.js";
import type { correctionCodes } from "../codes/words.js";
import { type Content, type Ends, isGlycerin, massOf } from "../contents.js";
import type { NotKnown } from "../figure.js";
import type { Run } from "../state.js";
import { by, orNotKnown, stated, unknown, where } from "../unknown.js";
import { indexOfGelFormer, indicesAt, mismatchSeen, mixed, pairIn, partsOf, temperaturesOfUse } from "./clarity.js";
import { dropletsOf, gelOf } from "./droplets.js";
import { doubtOfTable } from "./gel-of-kilogram.js";

/** How clear the gel is at one temperature. */
export interface ClarityAt {
  /** [°C]. */
  readonly temperature: number;
  /** Index of the oil less that of the gel former. */
  readonly mismatch: number | NotKnown;
  /** Between two pictures of the droplets, the ends of the mismatch, and an order of magnitude either way [1/m]. Air is left out. */
  readonly turbidity: Ends | NotKnown;
  /** Share of the light that does not pass straight through the pack [0 to 1]. */
  readonly haze: Ends | NotKnown;
}

/** What is put into the gel former of one lot so that it matches the oil in the room. */
export interface ClarityCorrection {
  readonly add: (typeof correctionCodes)[number];
  /** [kg]. */
  readonly mass: number;
  /** From how much to how much the mismatch is no more than the bench allows [kg]; left out where it states none. */
  readonly within?: Ends;
  /** Of oil in oil and outer phase, once it is in. */
  readonly volumeFractionOil: number;
}

/** How clear the finished gel is: no promise, and no verdict. */
export interface PlanClarity {
  /** Difference of the indices that was clear enough at the bench. */
  readonly mismatchMax?: number;
  /** Way of the light: through the content of the pack [m]. */
  readonly path?: number;
  /** In the room, and at both ends of the temperatures at which it is used. */
  readonly at: readonly ClarityAt[];
  readonly correction: ClarityCorrection | NotKnown;
}

/** The way through the widest part of the pack [m]. */
function pathOf({ job: { pack } }: Run): number {
  return stated(stated(pack, "pack").content, "pack-content").diameter;
}

/** Turbidity between all that is not sure of it [1/m]. */
function turbidityAt(charge: Charge, temperature: number): Ends {
  const { oil, gelFormer } = indicesAt(charge, temperature);
  const { diameter } = dropletsOf(charge);
  const apart = Math.abs(oil - gelFormer);
  const side = oil < gelFormer ? -1 : 1;
  const found = [Math.max(0, apart - doubtOfTable), apart + doubtOfTable].flatMap((mismatch) => {
    const { independent, twoPhase } = by("turbidity", () =>
      turbidity({
        volumeFractionOil: charge.oilFraction(),
        diameter,
        refractiveIndexDroplet: gelFormer + side * mismatch,
        refractiveIndexOuter: gelFormer,
      }),
    );
    return [independent, twoPhase];
  });
  const end = (value: number, which: "min" | "max"): number => bandAround({ value, band: turbidityBand })[which];
  return { min: end(Math.min(...found), "min"), max: end(Math.max(...found), "max") };
}

/** Light that is scattered out of the straight beam on its way [0 to 1]. */
function hazeThrough(path: number, { min, max }: Ends): Ends {
  return { min: -Math.expm1(-min * path), max: -Math.expm1(-max * path) };
}

// The correction

/** A correction by more than this multiple of what is there is not offered. */
const timesAtMost = 20;

/** The index of an outer phase with more water or glycerin in it. */
function indexWith(outer: readonly Content[], temperature: number): (glycerin: number, water: number) => number {
  const { pair, mass, rest } = pairIn(outer);
  const there = massOf(pair.filter(isGlycerin));
  const parts = partsOf(rest, temperature, massOf(outer));
  const off = indexOfGelFormer(outer, temperature) - indexOf(0, 0);
  return (glycerin, water) => indexOf(glycerin, water) + off;

  function indexOf(glycerin: number, water: number): number {
    const whole = mass + glycerin + water;
    const at = { massFractionGlycerin: (there + glycerin) / whole, temperature, beyond: "extend" } as const;
    return by("refractive-index", () =>
      mixed(
        [
          { mass: whole, density: densityGlycerinWater(at), refractiveIndex: refractiveIndexGlycerinWater(at) },
          ...parts,
        ],
        temperature,
      ),
    );
  }
}

/** Water or glycerin that brings the index of the outer phase to the oil's in the room. */
function correctionOf(run: Run): ClarityCorrection {
  const { charge } = gelOf(run);
  const temperature = run.job.process.room;
  const { gelFormer, oil } = indicesAt(charge, temperature);
  const outer = charge.outer();
  const computed = indexWith(outer, temperature);
  // What was measured is what it is now; the table says how it changes.
  const off = gelFormer - computed(0, 0);
  const add = gelFormer > oil ? "water" : "glycerin";
  const index = (mass: number): number => off + (add === "water" ? computed(0, mass) : computed(mass, 0));
  const whole = massOf(outer);
  const untilAt = (target: number): number => {
    const towards = Math.sign(target - gelFormer);
    if (towards === 0) return 0;
    const far = timesAtMost * whole;
    if (towards * (index(far) - target) < 0)
      unknown("outside-range", { law: "glycerin-for-index-match", quantity: "refractive-index", value: oil });
    return by("glycerin-for-index-match", () => root((mass) => index(mass) - target, 0, far, "mass"));
  };
  const mass = untilAt(oil);
  const inside = massOf(charge.oil()) / charge.phaseDensities().densityOil;
  const outside = massOf(outer) / charge.phaseDensities().densityGelFormer;
  const more =
    mass / densityGlycerinWater({ massFractionGlycerin: add === "water" ? 0 : 1, temperature, beyond: "extend" });
  return {
    add,
    mass,
    ...where("within", (): Ends => {
      const allowed = mismatchSeen(run.job);
      const way = add === "water" ? -1 : 1;
      // Where the mismatch is allowed as it is, nothing has to go in.
      const min = Math.abs(gelFormer - oil) <= allowed ? 0 : untilAt(oil - way * allowed);
      return { min, max: untilAt(oil + way * allowed) };
    }),
    volumeFractionOil: inside / (inside + outside + more),
  };
}

/** How clear the finished gel of a run is. */
export function clarityOf(run: Run): PlanClarity {
  const { charge } = gelOf(run);
  return {
    ...where("mismatchMax", () => mismatchSeen(run.job)),
    ...where("path", () => pathOf(run)),
    at: temperaturesOfUse(run).map(
      (temperature): ClarityAt => ({
        temperature,
        mismatch: orNotKnown(() => {
          const { oil, gelFormer } = indicesAt(charge, temperature);
          return oil - gelFormer;
        }),
        turbidity: orNotKnown(() => turbidityAt(charge, temperature)),
        haze: orNotKnown(() => hazeThrough(pathOf(run), turbidityAt(charge, temperature))),
      }),
    ),
    correction: orNotKnown(() => correctionOf(run)),
  };
}
