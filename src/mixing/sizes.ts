import { positive, record, refuse } from "../guards.js";

/** An impeller where nothing but its size is asked: a whole `Impeller` may stand in its place. */
export interface ImpellerSize {
  /** [m], above 0. */
  readonly diameter: number;
}

/** A vessel where nothing but its width is asked: a whole `StirredVessel` may stand in its place. */
export interface VesselSize {
  /** Inner diameter [m], above 0. */
  readonly diameter: number;
}

/** The diameter of an impeller, checked. */
export function impellerDiameter(impeller: ImpellerSize, path = "impeller"): number {
  return positive(record(impeller, path).diameter, `${path}.diameter`);
}

/** The inner diameter of a vessel, checked. */
export function vesselDiameter(vessel: VesselSize): number {
  return positive(record(vessel, "vessel").diameter, "vessel.diameter");
}

/** The inner diameter of a vessel around an impeller of a diameter that has been checked. */
export function diameterAround(vessel: VesselSize, impeller: number): number {
  const diameter = vesselDiameter(vessel);
  if (diameter < impeller)
    refuse("input", "vessel.diameter", diameter, `at least the diameter of the impeller, ${impeller} m`);
  return diameter;
}
