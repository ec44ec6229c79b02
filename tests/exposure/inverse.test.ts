import fc from "fast-check";
import { marginOfSafety, massFractionForMargin, systemicExposure } from "gelwright/exposure";
import { between } from "../support/between.js";
import { undoes } from "../support/undoes.js";

undoes(
  "massFractionForMargin",
  "marginOfSafety",
  fc.record({
    ...{ exposurePerBodyWeight: between(1, 300), dermalAbsorption: between(0.01, 1), massFraction: between(1e-4, 0.9) },
    study: fc.record({ pointOfDeparture: between(1, 1000), bioavailability: between(0.1, 1) }),
  }),
  ({ study, massFraction, ...use }) => {
    const { dose } = systemicExposure({ ...use, massFraction });
    const { margin } = marginOfSafety({ ...study, systemicExposure: dose });
    return [massFractionForMargin({ ...study, ...use, margin }).massFractionMax, massFraction];
  },
);
