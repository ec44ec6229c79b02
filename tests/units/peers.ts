import configureMeasurements from "convert-units";
import allMeasures from "convert-units/definitions/all";
import { baseUnit, convert, type Dimension, type Unit } from "gelwright/units";
import Qty from "js-quantities/esm";

/** One of our units, against the base unit of its dimension, in another library's spelling. */
interface Peer {
  readonly base: string;
  /** Ours to theirs; a name that both spell alike stands as itself. */
  readonly units: Readonly<Partial<Record<Unit, string>>>;
}

const convertUnits: Readonly<Partial<Record<Dimension, Peer>>> = {
  length: {
    base: "m",
    units: { cm: "cm", mm: "mm", µm: "μm", nm: "nm", in: "in", ft: "ft", yd: "yd", mil: "mil" },
  },
  area: { base: "m2", units: { "cm²": "cm2", "mm²": "mm2", "in²": "in2", "ft²": "ft2" } },
  volume: {
    base: "m3",
    units: { L: "l", mL: "ml", "cm³": "cm3", "US gal": "gal", "US fl oz": "fl-oz", "in³": "in3", "ft³": "ft3" },
  },
  time: { base: "s", units: { ms: "ms", min: "min", h: "h", d: "d", week: "week" } },
  rotationalSpeed: { base: "Hz", units: { rpm: "rpm" } },
  velocity: { base: "m/s", units: { "mm/h": "mm/h", "km/h": "km/h", "ft/s": "ft/s", "ft/min": "ft/min" } },
  mass: { base: "kg", units: { g: "g", mg: "mg", µg: "mcg", t: "mt", lb: "lb", oz: "oz", "US ton": "t" } },
  pressure: {
    base: "Pa",
    units: {
      hPa: "hPa",
      kPa: "kPa",
      MPa: "MPa",
      bar: "bar",
      mbar: "mbar",
      Torr: "torr",
      mmHg: "mmHg",
      inHg: "inHg",
      psi: "psi",
    },
  },
  energy: { base: "J", units: { kJ: "kJ", MJ: "MJ", Wh: "Wh", kWh: "kWh", cal_th: "cal", kcal_th: "kcal" } },
  power: { base: "W", units: { mW: "mW", kW: "kW", MW: "MW", hp: "hp" } },
};

const jsQuantities: Readonly<Partial<Record<Dimension, Peer>>> = {
  length: {
    base: "m",
    units: { cm: "cm", mm: "mm", µm: "um", nm: "nm", in: "in", ft: "ft", yd: "yd", mil: "mil" },
  },
  area: { base: "m2", units: { "cm²": "cm2", "mm²": "mm2", "in²": "in2", "ft²": "ft2" } },
  volume: {
    base: "m3",
    units: {
      L: "l",
      mL: "ml",
      "cm³": "cm3",
      µL: "ul",
      "US gal": "gal",
      "US fl oz": "floz",
      "imp gal": "galimp",
      "imp fl oz": "flozimp",
      "in³": "in3",
      "ft³": "ft3",
    },
  },
  time: { base: "s", units: { ms: "ms", min: "min", h: "h", d: "day", week: "week" } },
  velocity: {
    base: "m/s",
    units: { "mm/s": "mm/s", "mm/h": "mm/h", "mm/d": "mm/day", "km/h": "km/h", "ft/s": "ft/s", "ft/min": "ft/min" },
  },
  mass: { base: "kg", units: { g: "g", mg: "mg", µg: "ug", t: "tonne", lb: "lb", oz: "oz", "US ton": "short-ton" } },
  molarMass: { base: "kg/mol", units: { "g/mol": "g/mol", "kg/kmol": "kg/kmol" } },
  density: {
    base: "kg/m3",
    units: {
      "g/cm³": "g/cm3",
      "g/mL": "g/ml",
      "kg/L": "kg/l",
      "g/L": "g/l",
      "lb/ft³": "lb/ft3",
      "lb/US gal": "lb/gal",
      "lb/imp gal": "lb/galimp",
    },
  },
  pressure: {
    base: "Pa",
    units: {
      hPa: "hPa",
      kPa: "kPa",
      MPa: "MPa",
      bar: "bar",
      mbar: "mbar",
      atm: "atm",
      Torr: "torr",
      mmHg: "mmHg",
      inHg: "inHg",
      psi: "psi",
      "dyn/cm²": "dyn/cm2",
    },
  },
  dynamicViscosity: { base: "Pa*s", units: { mPa·s: "mPa*s", P: "P", cP: "cP", "lb/(ft·s)": "lb/ft*s" } },
  kinematicViscosity: { base: "m2/s", units: { "mm²/s": "mm2/s", St: "St", cSt: "cSt", "ft²/s": "ft2/s" } },
  surfaceTension: { base: "N/m", units: { "mN/m": "mN/m", "dyn/cm": "dyn/cm" } },
  temperatureDifference: { base: "degK", units: { "Δ°C": "degC", "Δ°F": "degF" } },
  energy: {
    base: "J",
    units: { kJ: "kJ", MJ: "MJ", Wh: "Wh", kWh: "kWh", cal_th: "cal", kcal_th: "kcal", Btu: "BTU" },
  },
  power: { base: "W", units: { mW: "mW", kW: "kW", MW: "MW", hp: "hp", "Btu/h": "BTU/h" } },
  specificEnergy: { base: "J/kg", units: { "kJ/kg": "kJ/kg", "J/g": "J/g", "cal_th/g": "cal/g", "Btu/lb": "BTU/lb" } },
  specificHeat: {
    base: "J/kg*degK",
    units: { "kJ/(kg·K)": "kJ/kg*degK", "cal_th/(g·K)": "cal/g*degK", "Btu/(lb·°F)": "BTU/lb*degF" },
  },
  conductivity: {
    base: "W/m*degK",
    units: { "mW/(m·K)": "mW/m*degK", "Btu/(h·ft·°F)": "BTU/h*ft*degF" },
  },
  heatTransferCoefficient: {
    base: "W/m2*degK",
    units: { "kW/(m²·K)": "kW/m2*degK", "Btu/(h·ft²·°F)": "BTU/h*ft2*degF" },
  },
  thermalConductance: { base: "W/degK", units: { "kW/K": "kW/degK", "Btu/(h·°F)": "BTU/h*degF" } },
};

const engine = configureMeasurements(allMeasures);

/** A unit that another library holds too, and how far that library's factor is off ours, relative. */
export interface Deviation {
  readonly library: "convert-units" | "js-quantities";
  readonly unit: string;
  readonly off: number;
}

/** Every unit of ours that a general-purpose library holds too, with the library's deviation. */
export function deviations(): readonly Deviation[] {
  return [
    ...against(convertUnits).map(
      ({ unit, theirs, base, ours }): Deviation => ({
        library: "convert-units",
        unit,
        off: Math.abs(engine(1).from(theirs).to(base) / ours - 1),
      }),
    ),
    ...against(jsQuantities).map(
      ({ unit, theirs, base, ours }): Deviation => ({
        library: "js-quantities",
        unit,
        off: Math.abs(Qty(`1 ${theirs}`).to(base).scalar / ours - 1),
      }),
    ),
  ];
}

function against(peers: Readonly<Partial<Record<Dimension, Peer>>>) {
  return Object.entries(peers).flatMap(([dimension, { base, units }]) =>
    Object.entries(units).map(([unit, theirs]) => ({
      unit,
      theirs,
      base,
      ours: convert(1, unit as Unit, baseUnit(dimension as Dimension)),
    })),
  );
}
