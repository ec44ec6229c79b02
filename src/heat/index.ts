export { type Charge, mixingTemperature } from "./mixing-temperature.js";
