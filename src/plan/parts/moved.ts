import { between, exactly, type Figure } from "../figure.js";
import type { Stirrer } from "../job.js";
import type { Run, Turn } from "../state.js";
import { movedBy, shearRateOf, stirredIn, stirredWith, stirrerOf, temperatureOfStirring } from "../stirred.js";
import { either, otherwise, stated, unknown } from "../unknown.js";
import { yieldStressFigure } from "./yield-stress.js";
import { hasSet } from "./turning.js";

/** How wide the stirrer moves a gel with a yield stress [m]. */
export function movedIn(turn: Turn, run: Run): Figure {
  const { job } = run;
  const stirrer = stirrerOf(job);
  const wide = job.vessel.diameter;
  const { charge } = turn.state;
  const basis = [{ kind: "law", key: "cavern" } as const];
  if (charge.isEmulsion()) {
    const curve = charge.emulsionCurve();
    const read = (job.bench.emulsion?.thickness?.readings ?? []).some(({ yieldStress }) => yieldStress !== undefined);
    if (!("yieldStress" in curve)) {
      if (!read) return stated<Figure>(undefined, "emulsion-thickness-yield-stress");
      // Below the first yield stress that was read it has none yet: all of it moves.
      return between(wide, null, basis);
    }
    const stirred = stirredIn(turn);
    return exactly(movedBy(job, stirrer, { ...stirred, yieldStress: curve.yieldStress }).diameter, basis);
  }
  // Whether it has set may not be known; then nothing is known of how it moves.
  if (!hasSet(turn.state)) return between(wide, null, basis);
  const stress = yieldStressFigure(run);
  const weak = stress.min ?? unknown("not-stated", { field: "bench-yield-stress" });
  const strong = stress.max ?? unknown("not-stated", { field: "bench-yield-stress" });
  const moved = (yieldStress: number): number => {
    if (yieldStress === 0) return wide;
    const stirred = either(
      () => stirredIn(turn),
      () => atYield(turn, stirrer, yieldStress),
    );
    return movedBy(job, stirrer, { ...stirred, yieldStress }).diameter;
  };
  const alone = otherwise(
    () => stirredIn(turn).speed !== turn.speed(),
    () => true,
  );
  const assumptions = alone ? (["yield-stress-alone"] as const) : [];
  return { min: moved(strong), max: moved(weak), basis: [...basis, ...(stress.basis ?? [])], assumptions };
}

/** A set gel of which nothing but the yield stress is known, at the mean shear rate of the stirrer: with its viscosity it is moved further. */
function atYield(turn: Turn, stirrer: Stirrer, yieldStress: number): ReturnType<typeof stirredIn> {
  const { state } = turn;
  const speed = turn.speed();
  const viscosity = yieldStress / shearRateOf(stirrer, speed);
  return stirredWith(state.charge, temperatureOfStirring(state), { law: "newton", viscosity }, speed);
}
