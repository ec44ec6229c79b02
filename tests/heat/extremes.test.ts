import { coolingTime, heatingTime, relativeTemperature } from "gelwright/heat";
import { logMean } from "../../src/heat/log-mean.js";
import { keepsDigits } from "../support/extremes.js";

type Heating = Parameters<typeof heatingTime>[0];

keepsDigits("heat", {
  coolingTime,
  "heatingTime.duration": (input: Heating) => heatingTime(input).duration,
  "heatingTime.energyLost": (input: Heating) => heatingTime(input).energyLost,
  relativeTemperature,
  logMean: ({ one, other }: { readonly one: number; readonly other: number }) => logMean(one, other),
});
