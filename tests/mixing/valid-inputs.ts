import type { ValidInputs } from "../support/fuzz.js";
import { additionInputs } from "./valid-inputs-additions.js";

const stirring = { speed: 3, impeller: { diameter: 0.25 }, density: 910, viscosity: 0.05 };
const gel = { law: "herschel-bulkley", yieldStress: 30, consistency: 12, flowIndex: 0.5 };
const oil = { law: "newton", viscosity: 0.05 };
const vessel = { diameter: 0.6, level: 0.6, baffles: 4, baffleWidth: 0.06 };
const blades = { law: "kamei-hiraoka", blades: 4, bladeAngle: 45, widthToDiameter: 0.2 };
const powers = [
  { law: "laminar", laminarPowerConstant: 44 },
  { law: "sum", laminarPowerConstant: 44, powerNumber: 1.37 },
  {
    law: "points",
    points: [
      { reynolds: 0.1, powerNumber: 440 },
      { reynolds: 10, powerNumber: 5 },
    ],
  },
  { ...blades, diameterToVessel: 0.33, levelToVessel: 1 },
  { ...blades, bladeAngle: 90, diameterToVessel: 0.5, levelToVessel: 1, baffles: 4, baffleToVessel: 0.1 },
];
const pitched = { kind: "pitched-blade turbine", diameter: 0.2 };
const head = { kind: "rotor-stator", diameter: 0.1, power: powers[1], metznerOttoConstant: 60, flowNumber: 0.2 };
const kettles = [
  { diameter: 0.6 },
  { diameter: 0.6, bottom: { shape: "cone", depth: 0.2 } },
  { diameter: 0.6, bottom: { shape: "ellipsoidal", depth: 0.15 } },
  { diameter: 0.6, bottom: { shape: "dished", crownToDiameter: 1, knuckleToDiameter: 0.1 } },
];
const moved = { density: 915, yieldStress: 30, impeller: { diameter: 0.05 }, vessel: { diameter: 0.12 } };

export const validInputs: ValidInputs = {
  ...additionInputs,
  tipSpeed: [[{ speed: 5, impeller: { diameter: 0.1 } }]],
  impellerReynolds: [[stirring]],
  powerNumber: [
    ...powers.map((power) => [{ power, reynolds: 2, beyond: "throw" }]),
    [{ power: { law: "turbulent", powerNumber: 1.3 }, reynolds: 20_000 }],
  ],
  powerCurveOf: [
    [{ impeller: { kind: "propeller", diameter: 0.2 } }],
    [{ impeller: { kind: "disperser disc", diameter: 0.2 } }],
    [{ impeller: head }],
    [{ impeller: { ...pitched, blades: 6, bladeAngle: 60, bladeWidth: 0.05 }, vessel }],
    [{ impeller: { kind: "anchor", diameter: 0.55, armHeight: 0.4 }, vessel: { diameter: 0.6, level: 0.5 } }],
    [{ impeller: { kind: "flat-blade", diameter: 0.3, blades: 2, bladeWidth: 0.06 }, vessel }],
    [{ impeller: { kind: "other", diameter: 0.3, power: powers[0] } }],
    [{ impeller: { kind: "helical ribbon", diameter: 0.3, starts: 1, pitch: 0.3 } }],
  ],
  powerBandOf: [
    [{ impeller: { kind: "propeller", diameter: 0.2 }, reynolds: 50 }],
    [{ impeller: pitched, vessel, reynolds: 50 }],
    [
      {
        impeller: { kind: "anchor", diameter: 0.55, armHeight: 0.4 },
        vessel: { diameter: 0.6, level: 0.5 },
        reynolds: 3,
      },
    ],
    [
      {
        impeller: { kind: "helical ribbon", diameter: 0.55, starts: 2 },
        vessel: { diameter: 0.6, level: 0.5 },
        reynolds: 3,
      },
    ],
    [{ impeller: head, reynolds: 50 }],
  ],
  ribbonPowerConstant: [
    [{ impeller: { diameter: 0.55, starts: 1 }, vessel: { diameter: 0.6 } }],
    [
      {
        impeller: { diameter: 0.55, starts: 2, height: 0.6, pitch: 0.4, ribbonWidth: 0.07 },
        vessel: { diameter: 0.6 },
      },
    ],
  ],
  stirringShearRate: [[{ impeller: pitched, speed: 2 }]],
  stirring: [
    [{ impeller: pitched, vessel, density: 915, curve: gel, speed: 2 }],
    [{ impeller: head, density: 915, curve: oil, speed: 20, beyond: "extend" }],
  ],
  stirringPowerFunction: [[{ impeller: pitched, vessel, density: 915, speed: 2, beyond: "throw" }]],
  heatOfStirring: [[{ power: 200, duration: 900, mass: 100, specificHeat: 2000 }]],
  blendTime: [[{ ...stirring, powerNumber: 0.35, vessel: { diameter: 0.6, level: 0.6 }, uniformity: 0.99 }]],
  blendTimeByRevolutions: [[{ revolutions: 60, speed: 0.5 }]],
  ribbonRevolutions: [[{ laminarPowerConstant: 357.4 }]],
  cavern: [[{ ...moved, powerNumber: 1.8, speed: 12, heightToDiameter: 0.5 }]],
  speedToMoveGelAtWall: [
    [{ impeller: pitched, density: 915, curve: gel, vessel: { diameter: 0.6 }, beyond: "throw" }],
    [{ impeller: pitched, density: 915, curve: gel, vessel }],
  ],
  circulation: [[{ impeller: pitched, speed: 2, volume: 0.15, reynolds: 20_000, beyond: "extend" }]],
  impellerFroude: [[{ speed: 5, impeller: { diameter: 0.1 } }]],
  vortexDepthMax: [[{ speed: 2, impeller: { diameter: 0.2 }, vessel: { diameter: 0.4 } }]],
  motorMargin: [[{ power: 200, speed: 2, powerMotor: 370, efficiency: 0.8, torqueMax: 40 }]],
  scaleUp: [
    [
      {
        impeller: pitched,
        vessel,
        density: 915,
        curve: oil,
        speed: 5,
        volume: 0.16,
        plant: { impeller: { diameter: 0.8 } },
      },
    ],
    [
      {
        impeller: { kind: "anchor", diameter: 0.1 },
        density: 915,
        curve: gel,
        speed: 1,
        volume: 0.001,
        plant: { impeller: { diameter: 0.8 } },
        criteria: ["tip-speed", "reynolds"],
        beyond: "throw",
      },
    ],
    [
      {
        impeller: pitched,
        vessel,
        density: 915,
        curve: gel,
        speed: 5,
        volume: 0.16,
        plant: { impeller: { kind: "anchor", diameter: 1.1 }, vessel: { diameter: 1.2, level: 1.2 }, volume: 1.3 },
        criteria: ["shear-rate", "power-per-volume"],
      },
    ],
  ],
  bottomGeometry: kettles.map((kettle) => [{ vessel: kettle }]),
  vesselFilling: kettles.map((kettle) => [{ vessel: kettle, volume: 0.1 }]),
  volumeAtLevel: kettles.map((kettle) => [{ vessel: kettle, level: 0.1 }]),
  levelOfVolume: kettles.map((kettle) => [{ vessel: kettle, volume: 0.01 }]),
  minimumWorkingVolume: kettles.map((kettle) => [{ vessel: kettle, heightTop: 0.15, cover: 0.1 }]),
};
