// Written from the types by `npm run known`: which arguments an object needs, then which it may be given.
import type { Known } from "../guards.js";

export const aggregateExposure: Known = [["products"], ["study"]];
export const dailyExposure: Known = [["productType"], ["table"]];
export const exposureRow: Known = [
  ["amountPerDay", "retention", "exposurePerDay", "exposurePerBodyWeight", "grade"],
  ["amountPerBodyWeight"],
];
export const ingredientLimits: Known = [["ingredients", "productType", "table"], []];
export const marginOfSafety: Known = [["pointOfDeparture", "bioavailability", "systemicExposure"], []];
export const massFractionForMargin: Known = [
  ["pointOfDeparture", "bioavailability", "exposurePerBodyWeight", "dermalAbsorption", "margin"],
  [],
];
export const systemicExposure: Known = [["exposurePerBodyWeight", "massFraction", "dermalAbsorption"], []];
export const systemicExposureByArea: Known = [["absorbedPerArea", "area", "applicationsPerDay", "bodyWeight"], []];
