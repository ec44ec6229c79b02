// Written from the types by `npm run known`: which arguments an object needs, then which it may be given.
import type { Known } from "../guards.js";

export const additionSchedule: Known = [
  ["massGelFormer", "massToAdd", "densityOil", "densityGelFormer", "share"],
  ["massOil", "volumeFractionOilMax", "form", "increment"],
];
export const additionTimes: Known = [
  ["incorporationTime", "additions"],
  ["incorporationTimeFactor", "rateMax"],
];
export const blendTime: Known = [
  ["speed", "impeller", "density", "viscosity", "powerNumber", "vessel"],
  ["uniformity"],
];
export const blendTimeByRevolutions: Known = [["revolutions", "speed"], []];
export const bottomGeometry: Known = [["vessel"], []];
export const cavern: Known = [
  ["powerNumber", "speed", "impeller", "density", "yieldStress", "vessel"],
  ["heightToDiameter"],
];
export const circulation: Known = [["impeller", "speed", "volume", "reynolds"], ["beyond"]];
export const exponentialFeed: Known = [["massStart", "massEnd", "duration"], ["time"]];
export const feedAt: Known = [
  ["massGelFormer", "massToAdd", "densityOil", "densityGelFormer", "share", "incorporationTime", "time"],
  ["massOil", "volumeFractionOilMax", "incorporationTimeFactor", "rateMax"],
];
export const feedDuration: Known = [
  ["massGelFormer", "massToAdd", "densityOil", "densityGelFormer", "share", "incorporationTime"],
  ["massOil", "volumeFractionOilMax", "incorporationTimeFactor", "rateMax"],
];
export const flowCurveAtOil: Known = [["volumeFractionOil", "readings"], []];
export const gelAlongAdditions: Known = [["additions"], ["viscosity", "yieldStress", "torquePerViscosity"]];
export const gelReadings: Known = [["shearRate", "viscosity", "flowIndex"], ["yieldStress"]];
export const heatOfStirring: Known = [["power", "duration", "mass", "specificHeat"], []];
export const impeller: Readonly<Record<string, Known>> = {
  propeller: [
    ["kind", "diameter"],
    ["power", "metznerOttoConstant", "flowNumber"],
  ],
  "pitched-blade turbine": [
    ["kind", "diameter"],
    ["power", "metznerOttoConstant", "flowNumber", "blades", "bladeAngle", "bladeWidth"],
  ],
  "flat-blade": [
    ["kind", "diameter", "blades", "bladeWidth"],
    ["power", "metznerOttoConstant", "flowNumber"],
  ],
  "disperser disc": [
    ["kind", "diameter"],
    ["power", "metznerOttoConstant", "flowNumber"],
  ],
  anchor: [
    ["kind", "diameter"],
    ["power", "metznerOttoConstant", "flowNumber", "armHeight"],
  ],
  "helical ribbon": [
    ["kind", "diameter"],
    ["power", "metznerOttoConstant", "flowNumber", "starts", "height", "pitch", "ribbonWidth"],
  ],
  "rotor-stator": [
    ["kind", "diameter"],
    ["power", "metznerOttoConstant", "flowNumber"],
  ],
  other: [
    ["kind", "diameter"],
    ["power", "metznerOttoConstant", "flowNumber"],
  ],
};
export const impellerFroude: Known = [["speed", "impeller"], []];
export const impellerReynolds: Known = [["speed", "impeller", "density", "viscosity"], []];
export const incorporationTimeScale: Known = [
  ["keeps"],
  [
    "speedBench",
    "speedPlant",
    "tipSpeedBench",
    "tipSpeedPlant",
    "powerPerVolumeBench",
    "powerPerVolumePlant",
    "shearRateBench",
    "shearRatePlant",
  ],
];
export const interpolateAtOilFraction: Known = [["law", "volumeFractionOil"], []];
export const levelOfVolume: Known = [["vessel", "volume"], []];
export const minimumWorkingVolume: Known = [["vessel", "heightTop", "cover"], []];
export const motorMargin: Known = [
  ["power", "speed", "powerMotor"],
  ["efficiency", "torqueMax"],
];
export const plantOfScaleUp: Known = [["impeller"], ["vessel", "volume"]];
export const powerBandOf: Known = [["impeller", "reynolds"], ["vessel"]];
export const powerCurve: Readonly<Record<string, Known>> = {
  laminar: [["law", "laminarPowerConstant"], []],
  turbulent: [["law", "powerNumber"], []],
  sum: [["law", "laminarPowerConstant", "powerNumber"], []],
  points: [["law", "points"], []],
  "kamei-hiraoka": [
    ["law", "blades", "bladeAngle", "widthToDiameter", "diameterToVessel", "levelToVessel"],
    ["baffles", "baffleToVessel"],
  ],
};
export const powerCurveOf: Known = [["impeller"], ["vessel"]];
export const powerNumber: Known = [["power", "reynolds"], ["beyond"]];
export const restartAfterOvershoot: Known = [
  ["failed", "massFresh", "oilPerGelFormer", "densityOil", "densityGelFormer", "share"],
  ["increment", "volumeFractionOilMax"],
];
export const ribbonPowerConstant: Known = [["impeller", "vessel"], []];
export const ribbonRevolutions: Known = [["laminarPowerConstant"], []];
export const scaleUp: Known = [
  ["impeller", "density", "curve", "plant", "speed", "volume"],
  ["vessel", "criteria", "beyond"],
];
export const scheduleAtScale: Known = [
  ["bench", "massGelFormer", "densityOil", "densityGelFormer"],
  ["massToAdd", "increment", "volumeFractionOilMax"],
];
export const speedToMoveGelAtWall: Known = [
  ["impeller", "density", "curve", "vessel"],
  ["heightToDiameter", "beyond"],
];
export const stirring: Known = [
  ["impeller", "density", "curve", "speed"],
  ["vessel", "beyond"],
];
export const stirringPowerFunction: Known = [
  ["impeller", "density", "speed"],
  ["vessel", "beyond"],
];
export const stirringShearRate: Known = [["impeller", "speed"], []];
export const tipSpeed: Known = [["speed", "impeller"], []];
export const vesselBottom: Readonly<Record<string, Known>> = {
  flat: [["shape"], []],
  cone: [["shape", "depth"], []],
  ellipsoidal: [["shape", "depth"], []],
  dished: [["shape"], ["crownToDiameter", "knuckleToDiameter"]],
};
export const vesselFilling: Known = [["vessel", "volume"], []];
export const volumeAtLevel: Known = [["vessel", "level"], []];
export const vortexDepthMax: Known = [["speed", "impeller", "vessel"], []];
