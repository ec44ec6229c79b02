import { oilSpecificHeat, type Typical } from "./typical.js";

/**
 * A calculator: which function answers, and where its fields start. What the fields are called, their units, ranges and
 * defaults are read from the docstring.
 */
export interface Listed {
  /** `room.name`. */
  readonly name: string;
  /** Figures to start from, in the units of the kernels; those of the docstring's example unless given. */
  readonly start?: readonly unknown[];
  /** Arguments of the example that the form leaves out. */
  readonly without?: readonly string[];
  /** Starts that have a reason of their own, by path. */
  readonly typical?: Readonly<Record<string, Typical>>;
  /** The input that the plot goes along. */
  readonly plot?: string;
  /** The result that counts; the first unless given. */
  readonly main?: string;
  /** Lists that a reader may lengthen and shorten. */
  readonly lists?: readonly string[];
  /** Bands of the results, by their names in `gelwright`: what is called, and where its band stands. */
  readonly bands?: Readonly<Record<string, string>>;
}

/** Hot oil in a vessel, into which cold oil goes. */
const hotOil = [{ mass: 26, specificHeat: 2060, temperature: 66 }];
const specificHeats = { "melt[0].specificHeat": oilSpecificHeat(66), "addition.specificHeat": oilSpecificHeat(40) };

/** The commonest questions of the trade, in the order of the page of questions. */
export const list: readonly Listed[] = [
  {
    name: "gel.gelFormerForOil",
    plot: "ratio",
  },
  {
    name: "gel.temperatureAtDose",
    plot: "dose",
    lists: ["points"],
  },
  {
    name: "gel.volumeFractionOfOil",
    plot: "massFractionOil",
  },
  {
    name: "gel.glycerinForIndexMatch",
    plot: "oil.refractiveIndex",
    main: "massFractionGlycerin",
  },
  {
    name: "mixing.additionSchedule",
    start: [
      {
        massGelFormer: 10,
        massToAdd: 90,
        densityOil: 915,
        densityGelFormer: 1250,
        share: { law: "constant", value: 0.1 },
        increment: 0.02,
      },
    ],
  },
  {
    name: "mixing.motorMargin",
    plot: "power",
    main: "margin",
  },
  {
    name: "natural-origin.productContent",
    lists: ["ingredients"],
    main: "naturalOrigin.withFormulationWater.min",
  },
  {
    name: "oils.profileValues",
    start: [{ profile: { "16:0": 6.5, "18:0": 2, "18:1": 66, "18:2": 25, "18:3": 0.5 } }],
    main: "iodineValue",
    bands: { iodineValue: "oils.iodineValueBand" },
  },
  {
    name: "oils.antioxidantDose",
    plot: "massFractionTarget",
    main: "mass",
  },
  {
    name: "batch.filmThickness",
    plot: "yieldStress",
  },
  {
    name: "heat.heatingTime",
    without: ["melting"],
    plot: "power",
    main: "duration",
  },
  {
    name: "heat.coolingTime",
    plot: "temperatureEnd",
  },
  {
    name: "heat.additionTemperatureMin",
    start: [
      {
        melt: hotOil,
        addition: { mass: 8, specificHeat: 2055 },
        temperatureMin: 57,
      },
    ],
    typical: specificHeats,
    plot: "addition.mass",
    lists: ["melt"],
  },
  {
    name: "heat.largestAddition",
    start: [
      {
        melt: hotOil,
        addition: { specificHeat: 2055, temperature: 21 },
        temperatureMin: 57,
      },
    ],
    typical: specificHeats,
    plot: "addition.temperature",
    lists: ["melt"],
  },
  {
    name: "heat.mixingTemperature",
    typical: { "charges[0].specificHeat": oilSpecificHeat(75), "charges[1].specificHeat": oilSpecificHeat(40) },
    plot: "charges[1].mass",
    lists: ["charges"],
  },
  {
    name: "heat.packCoolingTime",
    start: [
      {
        pack: { shape: "cylinder", diameter: 0.042, height: 0.022 },
        conductivity: 0.17,
        density: 910,
        specificHeat: 2050,
        heatTransferCoefficient: 9,
        temperatureStart: 60,
        temperatureAmbient: 20,
        temperatureEnd: 30,
      },
    ],
    typical: { specificHeat: oilSpecificHeat(45) },
    plot: "pack.diameter",
  },
  {
    name: "particles.additionWindow",
    main: "temperatureMax",
    plot: "diameter",
  },
  {
    name: "particles.stokesVelocity",
    start: [{ diameter: 100e-6, densityParticle: 1400, densityFluid: 910, viscosity: 1 }],
    plot: "viscosity",
    main: "velocity",
    bands: { velocity: "particles.sphereDragBand" },
  },
  {
    name: "particles.yieldStressToSuspend",
    plot: "diameter",
    main: "max",
  },
  {
    name: "particles.clearingTime",
    plot: "viscosity",
  },
  {
    name: "units.convert",
    start: [250, "cP", "Pa·s"],
  },
  {
    name: "stability.equivalentStorage",
    plot: "temperature",
    main: "duration.value",
  },
  {
    name: "packing.fillMass",
    plot: "volume",
  },
];
