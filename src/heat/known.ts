// Written from the types by `npm run known`: which arguments an object needs, then which it may be given.
import type { Known } from "../guards.js";

export const additionTemperatureMin: Known = [["melt", "addition", "temperatureMin"], ["temperatureStored"]];
export const ageingKinetics: Readonly<Record<string, Known>> = {
  arrhenius: [["law", "activationEnergy", "temperatureReference"], []],
  q10: [["law", "q10", "temperatureReference"], []],
};
export const batchMassForDuration: Known = [
  ["duration", "temperatureStart", "temperatureEnd", "conductance", "temperatureMedium", "specificHeat"],
  ["heatCapacityVessel"],
];
export const batchTemperatureAtWall: Known = [
  ["temperatureWall", "temperatureJacket", "heatTransferCoefficient", "heatTransferCoefficientJacket"],
  [],
];
export const capacityFlowForDuration: Known = [
  ["duration", "temperatureStart", "temperatureEnd", "heatCapacity", "conductance", "temperatureInlet"],
  [],
];
export const chargeForEvaporation: Known = [["delivered", "lossFraction"], []];
export const conductionRoot: Known = [["shape", "biot"], ["order"]];
export const coolingAtScales: Known = [
  [
    "masses",
    "density",
    "specificHeat",
    "heightToDiameter",
    "heatTransferCoefficient",
    "temperatureAmbient",
    "temperatureStart",
    "temperatureAddition",
    "temperatureSetting",
  ],
  [],
];
export const coolingTime: Known = [
  ["heatCapacity", "conductance", "temperatureAmbient", "temperatureStart", "temperatureEnd"],
  [],
];
export const coolingTimeAtScale: Known = [["duration", "volume", "volumeAtScale", "limitedBy"], []];
export const evaporationCoefficient: Known = [["airVelocity", "length", "kinematicViscosity", "diffusivity"], []];
export const evaporationFlux: Known = [
  ["temperature", "vapourPressure", "molarMass", "coefficient"],
  ["vapourPressureRoom"],
];
export const evaporationFluxMax: Known = [
  ["temperature", "vapourPressure", "molarMass"],
  ["vapourPressureRoom", "accommodation"],
];
export const evaporationOverRun: Known = [
  ["volatile", "rest", "area", "coefficient", "segments"],
  ["lossMeasured", "beyond"],
];
export const fewestAdditions: Known = [["melt", "temperatureMelt", "addition", "temperatureMin"], []];
export const fitConductance: Known = [["readings", "temperatureAmbient", "heatCapacity"], ["confidence"]];
export const heatCapacityBreakpoints: Known = [["parts"], []];
export const heatCapacityFunction: Known = [["parts"], ["beyond"]];
export const heatFlowAtWall: Known = [["temperatureBulk", "temperatureWall", "heatTransferCoefficient", "area"], []];
export const heatSource: Readonly<Record<string, Known>> = {
  power: [["kind", "power"], []],
  medium: [["kind", "temperature", "conductance"], ["powerMax"]],
  stirrer: [["kind", "power"], ["beside"]],
};
export const heatToWarm: Known = [["parts", "temperatureStart", "temperatureEnd"], []];
export const heatingTime: Known = [
  ["power", "conductance", "temperatureAmbient", "temperatureStart", "temperatureEnd", "heatCapacity"],
  ["melting"],
];
export const holdTemperature: Known = [["heatSource", "heatLoss", "temperatureAmbient", "temperature", "duration"], []];
export const insideCoefficient: Known = [
  [
    "correlation",
    "vessel",
    "impeller",
    "speed",
    "density",
    "specificHeat",
    "conductivity",
    "viscosity",
    "viscosityWall",
  ],
  ["beyond"],
];
export const insideCoefficientFunction: Known = [
  ["correlation", "vessel", "impeller", "speed", "density", "specificHeat", "conductivity", "viscosity"],
  ["beyond"],
];
export const jacketCoefficient: Known = [["conductance", "area", "heatTransferCoefficient"], []];
export const jacketConductance: Known = [["conductance", "capacityFlow"], []];
export const jacketTemperatureAtWall: Known = [
  ["temperatureBulk", "temperatureWall", "heatTransferCoefficient", "heatTransferCoefficientJacket"],
  [],
];
export const jacketTime: Known = [
  ["heatCapacity", "conductance", "temperatureInlet", "temperatureStart", "temperatureEnd"],
  ["capacityFlow"],
];
export const jacketedWall: Known = [
  ["temperatureBulk", "temperatureJacket", "heatTransferCoefficient", "heatTransferCoefficientJacket"],
  [],
];
export const largestAddition: Known = [["melt", "addition", "temperatureMin"], []];
export const lossFraction: Known = [["massBefore", "massAfter"], []];
export const massAfterEvaporation: Known = [["charge", "lossFraction"], []];
export const meanRelativeTemperature: Known = [["shape", "biot", "fourier"], []];
export const mediumTemperatureForDuration: Known = [
  ["duration", "temperatureStart", "temperatureEnd", "heatCapacity", "conductance"],
  ["temperatureMin", "temperatureMax"],
];
export const meltTemperatureMin: Known = [["melt", "addition", "temperatureMin"], []];
export const meltingPart: Known = [["mass", "specificHeat"], ["melting"]];
export const mixingTemperature: Known = [["charges"], []];
export const moleFraction: Known = [["massFraction", "molarMass", "molarMassRest"], []];
export const pack: Readonly<Record<string, Known>> = {
  slab: [["shape", "thickness"], []],
  cylinder: [["shape", "diameter"], ["height"]],
  sphere: [["shape", "diameter"], []],
};
export const packCoolingCurve: Known = [
  [
    "pack",
    "conductivity",
    "density",
    "specificHeat",
    "heatTransferCoefficient",
    "temperatureStart",
    "temperatureAmbient",
  ],
  ["where", "temperatureEnd", "duration", "segments"],
];
export const packCoolingTime: Known = [
  [
    "pack",
    "conductivity",
    "density",
    "specificHeat",
    "heatTransferCoefficient",
    "temperatureStart",
    "temperatureAmbient",
    "temperatureEnd",
  ],
  ["where"],
];
export const packTemperature: Known = [
  [
    "pack",
    "conductivity",
    "density",
    "specificHeat",
    "heatTransferCoefficient",
    "temperatureStart",
    "temperatureAmbient",
    "duration",
  ],
  ["where"],
];
export const placeInPack: Known = [[], ["radial", "axial"]];
export const plateHeatingTime: Known = [
  [
    "temperatureHeater",
    "conductanceHeater",
    "conductance",
    "temperatureAmbient",
    "temperatureStart",
    "temperatureEnd",
    "heatCapacity",
  ],
  ["powerMax"],
];
export const powerForDuration: Known = [
  ["temperatureStart", "heatCapacity", "heatLoss", "temperatureAmbient", "duration", "temperatureEnd"],
  ["breakpoints", "powerMax"],
];
export const relativeTemperature: Known = [["shape", "biot", "fourier"], ["position"]];
export const shrinkage: Known = [["density", "volume", "areaCrossSection", "temperatureFill", "temperatureEnd"], []];
export const stagedAdditions: Known = [
  ["melt", "temperatureStart", "heatLoss", "temperatureAmbient", "stages"],
  ["heatCapacityVessel"],
];
export const steadyTemperature: Known = [["heatSource", "heatLoss", "temperatureAmbient"], []];
export const stirredRange: Known = [
  ["reynoldsMin", "coefficient", "exponentReynolds", "exponentPrandtl", "exponentViscosity"],
  ["reynoldsMax"],
];
export const stirredWall: Known = [
  [
    "correlation",
    "vessel",
    "impeller",
    "speed",
    "density",
    "specificHeat",
    "conductivity",
    "viscosity",
    "temperatureBulk",
    "temperatureJacket",
    "heatTransferCoefficientJacket",
  ],
  ["beyond"],
];
export const temperatureAfterCooling: Known = [
  ["heatCapacity", "conductance", "temperatureAmbient", "temperatureStart", "duration"],
  [],
];
export const thermalExposure: Known = [["segments", "ageingKinetics"], ["temperatureAbove"]];
export const vesselSegment: Known = [
  ["temperatureStart", "heatCapacity", "heatSource", "heatLoss", "temperatureAmbient"],
  ["rateMax", "rates", "breakpoints", "temperatureEnd", "duration", "kind"],
];
export const vesselTimes: Known = [
  ["temperatureStart", "heatCapacity", "heatSource", "heatLoss", "temperatureAmbient", "temperatures"],
  ["rateMax", "breakpoints"],
];
export const wallTemperature: Known = [["temperatureBulk", "heatFlow", "area", "heatTransferCoefficient"], []];
