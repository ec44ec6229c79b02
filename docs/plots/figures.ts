import { bandsOfFactors } from "./bands.js";
import { coldRouteAdditions } from "./cold-route-additions.js";
import { coolingAtScales } from "./cooling-at-scales.js";
import { courseOfAJob } from "./course-of-a-job.js";
import { doseAndStrength } from "./dose-and-strength.js";
import type { Figure } from "./figure.js";
import { filmByVessel } from "./film-by-vessel.js";
import { flowCurveBand } from "./flow-curve-band.js";
import { formulaAsRead } from "./formula-as-read.js";
import { fragranceShares } from "./fragrance-shares.js";
import { marginsOfSafety } from "./margins-of-safety.js";
import { measuredDeviations } from "./measured-deviations.js";
import { naturalOriginShare } from "./natural-origin-share.js";
import { powerNumbers } from "./power-numbers.js";
import { rinseOff } from "./rinse-off.js";
import { settingViscosity } from "./setting-viscosity.js";
import { shelfLifeByRegression } from "./shelf-life.js";
import { suspendedSizes } from "./suspended-sizes.js";
import { targetFills } from "./target-fills.js";
import { temperatureAndDifference } from "./temperature-and-difference.js";
import { tenderOil } from "./tender-oil.js";
import { windowForAdding } from "./window-for-adding.js";

/** Every figure of the site, computed from the library as it is. */
export function figures(): readonly Figure[] {
  return [
    bandsOfFactors(),
    coldRouteAdditions(),
    coolingAtScales(),
    courseOfAJob(),
    doseAndStrength(),
    filmByVessel(),
    flowCurveBand(),
    formulaAsRead(),
    fragranceShares(),
    marginsOfSafety(),
    measuredDeviations(),
    suspendedSizes(),
    naturalOriginShare(),
    powerNumbers(),
    rinseOff(),
    settingViscosity(),
    shelfLifeByRegression(),
    targetFills(),
    temperatureAndDifference(),
    tenderOil(),
    windowForAdding(),
  ];
}
