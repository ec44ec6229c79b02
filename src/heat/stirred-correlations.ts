/** One range of a correlation for the wall of a stirred vessel, Nu = C Reᵃ Prᵇ (μ/μ_wall)ᵐ. */
export interface StirredRange {
  /** Least Reynolds number of the impeller, from which the range runs up to the next range. */
  readonly reynoldsMin: number;
  /** Largest Reynolds number; left out for a last range that has no known end. */
  readonly reynoldsMax?: number;
  /** C, above 0. */
  readonly coefficient: number;
  /** a, the power of the Reynolds number. */
  readonly exponentReynolds: number;
  /** b, the power of the Prandtl number. */
  readonly exponentPrandtl: number;
  /** m, the power of the ratio of viscosities. */
  readonly exponentViscosity: number;
}

/** Ranges of Reynolds number, rising; a caller's own measurements take the same form. */
export type StirredCorrelation = readonly StirredRange[];

/** Reynolds number from which turbines, hydrofoil and propeller have a correlation. */
const reynoldsBlades = 400;

const range = (coefficient: number, exponentReynolds: number, reynoldsMin: number): StirredRange => ({
  coefficient,
  exponentReynolds,
  reynoldsMin,
  exponentPrandtl: 1 / 3,
  exponentViscosity: 0.14,
});

/**
 * Correlations for the jacketed wall by impeller, for a filling as high as the vessel is wide and blades of standard height.
 *
 * Constants from penney-2004, chapter 14.4, and for the paddle from coker-2001, table 7-14, each second-hand. Turbines,
 * hydrofoil and propeller begin at Re 400, which coker-2001 gives for six flat blades (0.74, here the disc turbine); that
 * it holds for the others is from memory. The source's factors of blade height and level are left out (0.2 and 0.15 as free-fluids restates them). The propeller has a pitch of one diameter. Neither source gives limits of Prandtl number.
 */
export const stirredCorrelations: Readonly<
  Record<
    | "disc turbine"
    | "flat-blade turbine"
    | "pitched-blade turbine"
    | "hydrofoil"
    | "propeller"
    | "anchor"
    | "helical ribbon"
    | "paddle",
    StirredCorrelation
  >
> = {
  "disc turbine": [range(0.74, 2 / 3, reynoldsBlades)],
  "flat-blade turbine": [range(0.66, 2 / 3, reynoldsBlades)],
  "pitched-blade turbine": [range(0.45, 2 / 3, reynoldsBlades)],
  hydrofoil: [range(0.31, 2 / 3, reynoldsBlades)],
  propeller: [range(0.5, 2 / 3, reynoldsBlades)],
  anchor: [range(0.69, 1 / 2, 12), range(0.32, 2 / 3, 100)],
  "helical ribbon": [range(0.94, 1 / 3, 0), range(0.61, 1 / 2, 13), range(0.25, 2 / 3, 210)],
  paddle: [range(0.415, 0.67, 20), range(0.36, 0.67, 4000)],
};
