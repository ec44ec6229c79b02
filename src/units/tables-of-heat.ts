/**
 * Factors to the base unit, which stands first. Exact by definition: the thermochemical calorie is
 * 4.184 J, the International Table calorie 4.1868 J, and `Btu` is the International Table one, for
 * which 1 Btu/(lb·°F) = 4186.8 J/(kg·K). A plain `cal` could be either and is no unit here.
 *
 * `a - b` is a scale with another zero: base = a·value − b.
 */
export const heat = {
  // The difference stands first: a bare K to K is then never refused for lying below absolute zero.
  temperatureDifference: {
    K: "1",
    "Δ°C": "1",
    "Δ°F": "5/9",
  },
  temperature: {
    "°C": "1",
    K: "1 - 273.15",
    "°F": "5/9 - 160/9",
    "°R": "5/9 - 273.15",
  },
  energy: {
    J: "1",
    kJ: "1e3",
    MJ: "1e6",
    Wh: "3600",
    kWh: "3.6e6",
    cal_th: "4.184",
    kcal_th: "4184",
    cal_IT: "4.1868",
    kcal_IT: "4186.8",
    Btu: "0.45359237*4186.8*5/9",
  },
  power: {
    W: "1",
    mW: "1e-3",
    kW: "1e3",
    MW: "1e6",
    hp: "550*0.3048*0.45359237*9.80665",
    "Btu/h": "0.45359237*4186.8*5/9/3600",
  },
  specificEnergy: {
    "J/kg": "1",
    "kJ/kg": "1e3",
    "J/g": "1e3",
    "MJ/kg": "1e6",
    "kWh/kg": "3.6e6",
    "cal_th/g": "4184",
    "cal_IT/g": "4186.8",
    "Btu/lb": "4186.8*5/9",
  },
  specificHeat: {
    "J/(kg·K)": "1",
    "kJ/(kg·K)": "1e3",
    "J/(g·K)": "1e3",
    "cal_th/(g·K)": "4184",
    "cal_IT/(g·K)": "4186.8",
    "Btu/(lb·°F)": "4186.8",
  },
  conductivity: {
    "W/(m·K)": "1",
    "mW/(m·K)": "1e-3",
    "Btu/(h·ft·°F)": "0.45359237*4186.8/3600/0.3048",
    "Btu·in/(h·ft²·°F)": "0.45359237*4186.8/3600/0.3048/12",
  },
  heatTransferCoefficient: {
    "W/(m²·K)": "1",
    "kW/(m²·K)": "1e3",
    "kcal_IT/(h·m²·K)": "4186.8/3600",
    "Btu/(h·ft²·°F)": "0.45359237*4186.8/3600/0.3048/0.3048",
  },
  molarEnergy: {
    "J/mol": "1",
    "kJ/mol": "1e3",
    "kcal_th/mol": "4184",
  },
  thermalConductance: {
    "W/K": "1",
    "kW/K": "1e3",
    "Btu/(h·°F)": "0.45359237*4186.8/3600",
  },
} as const;
