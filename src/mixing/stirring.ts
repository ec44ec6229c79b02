import { positive, record, result } from "../guards.js";
import { type Beyond, extending } from "../laws/beyond.js";
import { type CompiledFlowCurve, compileFlowCurve, viscosityAtRate } from "../laws/compile-flow-curve.js";
import type { FlowCurve } from "../laws/flow-curve.js";
import type { Impeller, StirredVessel } from "./impeller.js";
import { constantOf, impellerConstants } from "./impeller-constants.js";
import { curveOf } from "./impeller-curve.js";
import * as known from "./known.js";
import { type CompiledPowerCurve, compilePower } from "./power-number.js";
import { type Regime, regimeAt } from "./regime.js";

/** What stirring comes to at one speed. */
export interface StirredState {
  /** Mean shear rate in the batch [1/s]; left out for a Newtonian batch stirred by an impeller of no known constant. */
  readonly shearRate?: number;
  /** Viscosity at that shear rate [Pa·s]. */
  readonly viscosity: number;
  /** Of the impeller, with that viscosity. */
  readonly reynolds: number;
  /** How it flows. */
  readonly regime: Regime;
  /** P/(ρ N³ D⁵). */
  readonly powerNumber: number;
  /** What the impeller gives to the batch, all of which becomes heat [W]. */
  readonly power: number;
  /** At the shaft [N·m]. */
  readonly torque: number;
}

/** An impeller in its batch, checked once, to be asked at any speed. */
export interface CompiledStirring {
  readonly diameter: number;
  readonly density: number;
  readonly flow: CompiledFlowCurve;
  readonly at: (speed: number) => StirredState;
}

/** What is stirred with what, whatever the speed. */
export interface StirredBatch {
  /** The impeller, as plain data. */
  readonly impeller: Impeller;
  /** The vessel, from which blades and anchors have their power curve; left out, the constants of the kind hold. */
  readonly vessel?: StirredVessel;
  /** Density of the batch [kg/m³], above 0. */
  readonly density: number;
  /** Its flow curve at its temperature and composition. */
  readonly curve: FlowCurve;
}

/** Checks impeller and batch once; where they stand within something else, faults name that first. */
export function compileStirring(batch: StirredBatch, beyond: Beyond | undefined, at = ""): CompiledStirring {
  const { impeller, vessel, density, curve } = batch;
  const extended = extending(beyond);
  const numberAt: CompiledPowerCurve = compilePower(curveOf(impeller, vessel, at), `${at}impeller.power`, extended);
  const { diameter } = impeller;
  const heavy = positive(density, "density");
  const flow = compileFlowCurve(curve, "curve");
  // A Newtonian batch has one viscosity, so that its shear rate may stay unknown.
  const newton = curve.law === "newton" && impeller.metznerOttoConstant === undefined;
  const rateOf = newton
    ? impellerConstants[impeller.kind].metznerOttoConstant?.value
    : constantOf(impeller, "metznerOttoConstant", `${at}impeller`);
  return {
    diameter,
    density: heavy,
    flow,
    at: (speed) => {
      const shearRate = rateOf === undefined ? undefined : result(rateOf * speed, "shear rate");
      const viscosity = viscosityAtRate(flow, shearRate ?? 0);
      const reynolds = result((heavy * speed * diameter * diameter) / viscosity, "Reynolds number");
      const powerNumber = result(numberAt(positive(reynolds, "Reynolds number")), "power number");
      const power = result(powerNumber * heavy * speed ** 3 * diameter ** 5, "power");
      return {
        ...(shearRate === undefined ? {} : { shearRate }),
        viscosity,
        reynolds,
        regime: regimeAt(reynolds),
        powerNumber,
        power,
        torque: result(power / (2 * Math.PI * speed), "torque"),
      };
    },
  };
}

/**
 * What an impeller does in a gel at one speed: shear rate, effective viscosity, Reynolds number, power and torque.
 *
 * $$\dot\gamma = k_s N \qquad \mu = \frac{\tau(\dot\gamma)}{\dot\gamma} \qquad \mathrm{Re} = \frac{\rho N D^2}{\mu} \qquad P = \mathrm{Po}(\mathrm{Re})\,\rho N^3 D^5 \qquad M = \frac{P}{2\pi N}$$
 *
 * For a power-law gel this Reynolds number is $\rho N^{2-n} D^2 / (K k_s^{n-1})$.
 * The gel is taken as sheared long enough to forget its rest; starting from rest asks for more torque.
 *
 * @param input.impeller - The impeller, as plain data.
 * @param input.vessel - The vessel [m], from which blades and anchors have their power curve.
 * @param input.density - Density of the batch [kg/m³], above 0.
 * @param input.curve - Its flow curve; `{ law: "newton", viscosity }` for an oil or a melt.
 * @param input.speed - Speed [rev/s], above 0.
 * @param input.beyond - Outside the Reynolds numbers of the power curve: `"throw"` (default) or `"extend"` it.
 * @returns Shear rate [1/s], viscosity [Pa·s], Reynolds number, regime, power number, power [W], torque [N·m].
 * @throws CalculationError `input` where an argument is out of range; `unreachable` if a constant of the impeller is not
 *   known; `range` outside its power curve.
 * @source metzner-otto-1957 from memory, restated in viscosity-sheet; otherwise definition
 * @example
 * ```ts
 * import { stirring } from "gelwright/mixing";
 * const gel = { law: "herschel-bulkley", yieldStress: 10, consistency: 12, flowIndex: 0.45 } as const;
 * const impeller = { kind: "propeller", diameter: 0.08 } as const;
 * stirring({ impeller, density: 915, curve: gel, speed: 2 }).viscosity; // => 2.8100147258340202
 * ```
 */
export function stirring(input: StirredBatch & { readonly speed: number; readonly beyond?: Beyond }): StirredState {
  const { speed, beyond } = record(input, "input", known.stirring);
  return compileStirring(input, beyond).at(positive(speed, "speed"));
}
