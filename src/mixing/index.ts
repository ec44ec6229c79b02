export { impellerReynolds, type Stirring } from "./reynolds.js";
export { tipSpeed } from "./tip-speed.js";
