import { stirredCorrelations } from "gelwright/heat";
import { vapourPressures } from "gelwright/laws";
import type { ValidInputs } from "../support/fuzz.js";

const heatLoss = { law: "newton", conductance: 1.1 };
const heater = { kind: "power", power: 300 };
const plate = { kind: "medium", temperature: 150, conductance: 5, powerMax: 300 };
const chiller = { kind: "medium", temperature: 10, conductance: 6 };
const beaker = { temperatureStart: 20, heatCapacity: 2040, heatLoss, temperatureAmbient: 20 };
const stirred = {
  correlation: stirredCorrelations.anchor,
  vessel: { diameter: 0.4 },
  impeller: { diameter: 0.36 },
  speed: 1,
  density: 900,
  specificHeat: 2100,
  conductivity: 0.16,
};
const way = { duration: 3000, temperatureStart: 85, temperatureEnd: 45 };
const segments = [
  { kind: "ramp", temperatureStart: 65, temperatureEnd: 65, duration: 1800 },
  { kind: "ramp", temperatureStart: 65, temperatureEnd: 35, duration: 3600 },
  { kind: "vessel", ...beaker, temperatureStart: 35, temperatureEnd: 60, heatSource: plate, breakpoints: [50] },
];
const surface = { temperature: 65, vapourPressure: 30, molarMass: 0.136234 };
const melt = { melt: [{ mass: 0.75, specificHeat: 2200 }], temperatureMelt: 75 };

const oil = { law: "polynomial", coefficients: [1984.2, 1.4733, -0.0048008] };
const wax = {
  law: "melting",
  solid: { law: "constant", specificHeat: 2100 },
  liquid: { law: "constant", specificHeat: 2350 },
  latentHeat: 185000,
  temperatureOnset: 56,
  temperatureEnd: 68,
};
const charges = [
  { mass: 60, specificHeat: oil, temperature: 82 },
  { mass: 10, specificHeat: wax, temperature: 82 },
];
const cold = { mass: 40, specificHeat: oil, temperature: 21 };
const hot = { mass: 70, specificHeat: 2150, temperature: 82 };
const cool = { mass: 30, specificHeat: 1980, temperature: 21 };

export const processInputs: ValidInputs = {
  insideCoefficient: [[{ ...stirred, viscosity: 0.2, viscosityWall: 0.1, beyond: "throw" }]],
  stirredWall: [
    [
      {
        ...stirred,
        viscosity: { law: "andrade", factor: 1.3e-6, activationEnergy: 32000 },
        temperatureBulk: 70,
        temperatureJacket: 15,
        heatTransferCoefficientJacket: 400,
        beyond: "extend",
      },
    ],
  ],
  insideCoefficientFunction: [[{ ...stirred, viscosity: (at: number) => 0.3 * Math.exp(-at / 40), beyond: "extend" }]],
  jacketedWall: [
    [{ temperatureBulk: 70, temperatureJacket: 15, heatTransferCoefficient: 100, heatTransferCoefficientJacket: 400 }],
    [
      {
        temperatureBulk: 70,
        temperatureJacket: 15,
        heatTransferCoefficient: (wall: number) => 60 + wall,
        heatTransferCoefficientJacket: 400,
      },
    ],
  ],
  jacketCoefficient: [[{ conductance: 40, area: 0.5, heatTransferCoefficient: 100 }]],
  batchTemperatureAtWall: [
    [
      {
        temperatureWall: 60,
        temperatureJacket: 57.5,
        heatTransferCoefficient: 100,
        heatTransferCoefficientJacket: 400,
      },
    ],
    [
      {
        temperatureWall: 60,
        temperatureJacket: 40,
        heatTransferCoefficient: (bulk: number) => 60 + bulk,
        heatTransferCoefficientJacket: 400,
      },
    ],
  ],
  meltTemperatureMin: [
    [{ melt: [{ mass: 70, specificHeat: 2150 }], addition: cool, temperatureMin: 58 }],
    [{ melt: charges, addition: cold, temperatureMin: 55 }],
  ],
  fewestAdditions: [
    [{ ...melt, addition: { mass: 1.2, specificHeat: 2000, temperature: 23 }, temperatureMin: 55 }],
    [{ ...melt, addition: { mass: 0.2, specificHeat: 2000, temperature: 23 }, temperatureMin: 55 }],
    [{ ...melt, addition: { mass: 1.2, specificHeat: oil, temperature: 23 }, temperatureMin: 55 }],
    [{ melt: charges, temperatureMelt: 82, addition: cold, temperatureMin: 72 }],
    [{ melt: charges, temperatureMelt: 82, addition: cold, temperatureMin: (added: number) => 75 - added / 10 }],
  ],
  heatFlowAtWall: [[{ temperatureBulk: 75, temperatureWall: 115, heatTransferCoefficient: 150, area: 0.5 }]],
  jacketTemperatureAtWall: [
    [{ temperatureBulk: 70, temperatureWall: 60, heatTransferCoefficient: 100, heatTransferCoefficientJacket: 400 }],
  ],
  steadyTemperature: [
    [{ heatSource: 300, heatLoss: 1.1, temperatureAmbient: 21 }],
    [{ heatSource: plate, heatLoss: 1.1, temperatureAmbient: 21 }],
    [{ heatSource: heater, heatLoss, temperatureAmbient: 20 }],
    [{ heatSource: plate, heatLoss, temperatureAmbient: 20 }],
    [{ heatSource: { kind: "stirrer", power: 20, beside: plate }, heatLoss, temperatureAmbient: 20 }],
  ],
  vesselTimes: [
    [{ ...beaker, temperatureStart: 35, temperatures: [35, 50, 60], heatSource: plate, breakpoints: [50] }],
    [{ ...beaker, heatSource: { kind: "power", power: 0 }, temperatureStart: 60, temperatures: [50, 40] }],
  ],
  vesselSegment: [
    [{ ...beaker, heatSource: heater, temperatureEnd: 85 }],
    [{ ...beaker, heatSource: heater, duration: 600, rateMax: 0.05 }],
    [{ ...beaker, heatSource: plate, temperatureEnd: 85, rateMax: 0.1, breakpoints: [40], rates: { above: () => 1 } }],
    [
      {
        ...beaker,
        heatSource: { ...plate, conductance: (at: number) => 4 + at / 50 },
        temperatureEnd: 85,
      },
    ],
    [{ ...beaker, heatSource: { kind: "stirrer", power: 20, beside: plate }, temperatureEnd: 85 }],
    [{ ...beaker, heatSource: { kind: "stirrer", power: (at: number) => 20 - at / 10 }, duration: 600 }],
    [{ ...beaker, temperatureStart: 80, heatSource: chiller, duration: 900, heatCapacity: (at: number) => 2000 + at }],
  ],
  holdTemperature: [[{ temperature: 75, duration: 1800, heatSource: heater, heatLoss, temperatureAmbient: 20 }]],
  powerForDuration: [
    [{ ...beaker, duration: 600, temperatureEnd: 80 }],
    [{ ...beaker, duration: 600, temperatureEnd: 80, breakpoints: [50], powerMax: 400 }],
  ],
  plateHeatingTime: [
    [
      {
        temperatureHeater: 150,
        conductanceHeater: 5,
        powerMax: 300,
        conductance: 1.1,
        temperatureAmbient: 20,
        temperatureStart: 20,
        temperatureEnd: 85,
        heatCapacity: 2040,
      },
    ],
  ],
  jacketConductance: [[{ conductance: 360, capacityFlow: 1672 }]],
  jacketTime: [
    [{ heatCapacity: 1050000, conductance: 360, temperatureInlet: 15, temperatureStart: 85, temperatureEnd: 45 }],
    [
      {
        heatCapacity: 105000,
        conductance: 54,
        capacityFlow: 209,
        temperatureInlet: 12,
        temperatureStart: 80,
        temperatureEnd: 55,
      },
    ],
  ],
  mediumTemperatureForDuration: [
    [{ ...way, heatCapacity: 1050000, conductance: 360, temperatureMin: 10, temperatureMax: 120 }],
  ],
  batchMassForDuration: [
    [{ ...way, conductance: 360, temperatureMedium: 15, specificHeat: 2100, heatCapacityVessel: 30000 }],
  ],
  capacityFlowForDuration: [[{ ...way, heatCapacity: 1050000, conductance: 360, temperatureInlet: 15 }]],
  mixingTemperature: [[{ charges: [hot, cool] }], [{ charges: [...charges, cold] }], [{ charges: [hot, cold] }]],
  largestAddition: [
    [{ melt: [hot], addition: { specificHeat: 1980, temperature: 21 }, temperatureMin: 58 }],
    [{ melt: charges, addition: { specificHeat: oil, temperature: 21 }, temperatureMin: 60 }],
  ],
  additionTemperatureMin: [
    [{ melt: [hot], addition: { mass: 30, specificHeat: 1980 }, temperatureMin: 58 }],
    [{ melt: [hot], addition: { mass: 30, specificHeat: 1980 }, temperatureStored: 21, temperatureMin: 58 }],
    [{ melt: charges, addition: { mass: 40, specificHeat: oil }, temperatureStored: 21, temperatureMin: 66 }],
  ],
  heatCapacityFunction: [
    [{ parts: [hot, { mass: 12, specificHeat: wax }] }],
    [{ parts: charges.map(({ mass, specificHeat }) => ({ mass, specificHeat })), beyond: "throw" }],
  ],
  heatCapacityBreakpoints: [[{ parts: charges.map(({ mass, specificHeat }) => ({ mass, specificHeat })) }]],
  stagedAdditions: [
    [
      {
        melt: charges.map(({ mass, specificHeat }) => ({ mass, specificHeat })),
        temperatureStart: 85,
        heatCapacityVessel: 20000,
        heatLoss: { law: "newton", conductance: 15 },
        temperatureAmbient: 20,
        stages: [
          { temperatureEnd: 80, addition: { ...cold, mass: 5 } },
          { duration: 600, addition: { ...cold, mass: 5 }, heatSource: chiller },
        ],
      },
    ],
  ],
  relativeRateFunction: [
    [{ law: "q10", q10: 2, temperatureReference: 25 }],
    [{ law: "arrhenius", activationEnergy: 83144, temperatureReference: 25 }],
  ],
  thermalExposure: [
    [{ segments, ageingKinetics: { law: "q10", q10: 2, temperatureReference: 25 }, temperatureAbove: 45 }],
    [{ segments, ageingKinetics: { law: "arrhenius", activationEnergy: 83144, temperatureReference: 25 } }],
  ],
  moleFraction: [[{ massFraction: 0.02, molarMass: 0.136234, molarMassRest: 0.88 }]],
  evaporationCoefficient: [[{ airVelocity: 0.2, length: 0.5, kinematicViscosity: 1.9e-5, diffusivity: 7.5e-6 }]],
  evaporationFlux: [[{ ...surface, vapourPressureRoom: 2, coefficient: 0.000985 }]],
  evaporationFluxMax: [[{ ...surface, vapourPressureRoom: 2, accommodation: 0.5 }]],
  evaporationOverRun: [
    [
      {
        volatile: { mass: 0.4, molarMass: 0.136234, vapourPressure: vapourPressures.limonene },
        rest: { mass: 39.6, molarMass: 0.88 },
        area: 0.2,
        coefficient: 0.000985,
        segments,
        lossMeasured: 0.01,
        beyond: "throw",
      },
    ],
  ],
  coolingAtScales: [
    [
      {
        masses: [0.25, 40, 400],
        density: 900,
        specificHeat: 2100,
        heightToDiameter: 1,
        heatTransferCoefficient: 8,
        temperatureAmbient: 20,
        temperatureStart: 85,
        temperatureAddition: 65,
        temperatureSetting: 58,
      },
    ],
  ],
};
