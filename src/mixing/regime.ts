/** How a stirred batch flows: it creeps, it whirls, or something between the two. */
export type Regime = "laminar" | "transitional" | "turbulent";

/** Below this Reynolds number the flow creeps and the power is proportional to the viscosity (steffe-1996, page 188). */
export const reynoldsLaminar = 10;

/** Above this Reynolds number the power no longer depends on the viscosity (steffe-1996, page 188). */
export const reynoldsTurbulent = 10_000;

/** The regime at a Reynolds number. */
export function regimeAt(reynolds: number): Regime {
  if (reynolds < reynoldsLaminar) return "laminar";
  return reynolds > reynoldsTurbulent ? "turbulent" : "transitional";
}
