/**
 * How the shear stress of a fluid depends on shear rate, as plain data: at one temperature and one composition, in
 * steady shear, and of a fluid that has been sheared long enough to forget its rest.
 */
export type FlowCurve =
  | {
      /** Stress = viscosity · rate. */
      readonly law: "newton";
      /** [Pa·s], above 0. */
      readonly viscosity: number;
    }
  | {
      /** Stress = consistency · rate^flowIndex. */
      readonly law: "power-law";
      /** Stress at 1 1/s [Pa·s^flowIndex], above 0. */
      readonly consistency: number;
      /** Below 1 for a fluid that thins under shear [-], above 0. */
      readonly flowIndex: number;
    }
  | {
      /** Stress = yieldStress + plasticViscosity · rate. */
      readonly law: "bingham";
      /** [Pa], 0 or more. */
      readonly yieldStress: number;
      /** [Pa·s], above 0. */
      readonly plasticViscosity: number;
    }
  | {
      /** √stress = √yieldStress + √(plasticViscosity · rate). */
      readonly law: "casson";
      /** [Pa], 0 or more. */
      readonly yieldStress: number;
      /** [Pa·s], above 0. */
      readonly plasticViscosity: number;
    }
  | {
      /** Stress = yieldStress + consistency · rate^flowIndex. */
      readonly law: "herschel-bulkley";
      /** [Pa], 0 or more. */
      readonly yieldStress: number;
      /** [Pa·s^flowIndex], above 0. */
      readonly consistency: number;
      /** [-], above 0. */
      readonly flowIndex: number;
    }
  | {
      /** Viscosity between two plateaus: see `shearStressAt`. */
      readonly law: "carreau-yasuda";
      /** Viscosity at rest [Pa·s], above 0. */
      readonly viscosityZero: number;
      /** Viscosity that no shear brings it below [Pa·s], from 0 to `viscosityZero`. */
      readonly viscosityInfinite: number;
      /** One over the shear rate at which it begins to thin [s], above 0. */
      readonly timeConstant: number;
      /** Slope of stress against rate between the plateaus, on logarithmic axes [-], above 0. */
      readonly flowIndex: number;
      /** Sharpness of the bend [-], above 0: 2 is the law of Carreau. */
      readonly transition: number;
    };

/** The name of a flow-curve law. */
export type FlowLaw = FlowCurve["law"];
