export { additionTemperatureLeast, largestAddition, meltTemperatureLeast } from "./additions.js";
export { coolingTime, coolingTimeAtScale, temperatureAfterCooling } from "./cooling.js";
export { chargeForEvaporation, lossFraction, massAfterEvaporation } from "./evaporation.js";
export { type HeatToWarm, heatToWarm, type Melting, type Part } from "./heat-to-warm.js";
export { type HeatingTime, heatingTime, type MeltingOnTheWay } from "./heating-time.js";
export { type Charge, mixingTemperature } from "./mixing-temperature.js";
export { steadyTemperature } from "./steady-temperature.js";
export { wallTemperature } from "./wall-temperature.js";
