import { coolingAtScales } from "./cooling-at-scales.js";
import { doseAndStrength } from "./dose-and-strength.js";
import type { Figure } from "./figure.js";
import { flowCurveBand } from "./flow-curve-band.js";
import { fragranceShares } from "./fragrance-shares.js";
import { marginsOfSafety } from "./margins-of-safety.js";
import { measuredDeviations } from "./measured-deviations.js";
import { powerNumbers } from "./power-numbers.js";
import { rinseOff } from "./rinse-off.js";
import { shelfLifeByRegression } from "./shelf-life.js";
import { suspendedSizes } from "./suspended-sizes.js";
import { targetFills } from "./target-fills.js";
import { windowForAdding } from "./window-for-adding.js";

/** Every figure of the site, computed from the library as it is. */
export function figures(): readonly Figure[] {
  return [
    coolingAtScales(),
    doseAndStrength(),
    flowCurveBand(),
    fragranceShares(),
    marginsOfSafety(),
    measuredDeviations(),
    suspendedSizes(),
    powerNumbers(),
    rinseOff(),
    shelfLifeByRegression(),
    targetFills(),
    windowForAdding(),
  ];
}
