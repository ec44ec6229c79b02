import type { Change } from "../../plan/index.js";
import type { Say, Words } from "./types.js";

/** The step that a change is made in, if it is one of a step. */
function inStep(change: Change, say: Say): string {
  return "step" in change ? ` in ${say.step(change.step)}` : "";
}

/** The material whose dose is changed. */
function ofWhat(change: Change, say: Say): string {
  return "material" in change ? ` of ${say.material(change.material)}` : "";
}

/** What to change so that an answer is met, as an instruction. */
export const levers: Words["levers"] = {
  "warmer-addition": (change, say) =>
    `Warm the phase to ${say.celsius(change.value)} before it is charged${inStep(change, say)}.`,
  "hotter-melt": (change, say) => `Bring the melt to ${say.celsius(change.value)}${inStep(change, say)}.`,
  "shorter-filling": (change, say) => `Fill within ${say.duration(change.value)}${inStep(change, say)}.`,
  "faster-filling": (change, say) => `Fill at least ${say.number(change.value)} packs a minute${inStep(change, say)}.`,
  "warmer-coolant": (change, say) => `Use coolant of ${say.celsius(change.value)} or warmer.`,
  "colder-coolant": (change, say) => `Use coolant of ${say.celsius(change.value)} or colder.`,
  "stronger-heater": (change, say) =>
    `Use a heater that gives at least ${say.watts(change.value)}, or make a smaller lot.`,
  "less-heat": (change, say) => `Heat to no more than ${say.celsius(change.value)}${inStep(change, say)}.`,
  "slower-stirring": (change, say) => `Stir at no more than ${say.rpm(change.value)}${inStep(change, say)}.`,
  "longer-stirring": (change, say) => `Stir for at least ${say.duration(change.value)}${inStep(change, say)}.`,
  "longer-rest": (change, say) => `Let it rest for at least ${say.duration(change.value)}${inStep(change, say)}.`,
  "longer-de-aeration": (change, say) => `De-aerate for at least ${say.duration(change.value)}${inStep(change, say)}.`,
  "more-gel-former": (change, say) => `Raise the dose${ofWhat(change, say)} to ${say.percent(change.value)}.`,
  "cooler-melt": (change, say) => `Let the melt cool to ${say.celsius(change.value)}${inStep(change, say)}.`,
  "less-cooling": (change, say) => `Cool to no lower than ${say.celsius(change.value)}${inStep(change, say)}.`,
  "more-surfactant": (change, say) => `Raise the dose${ofWhat(change, say)} to ${say.percent(change.value)}.`,
  "lower-share": (change, say) => `Lower the dose${ofWhat(change, say)} to ${say.percent(change.value)}.`,
  "less-gel-former": (change, say) => `Lower the dose${ofWhat(change, say)} to ${say.percent(change.value)}.`,
  "more-lots": (change, say) => `Make ${say.count(change.value)} equal lots of it.`,
  "more-additions": (change, say) =>
    `Add it in ${say.count(change.value)} equal additions${inStep(change, say)}, and stir each in before the next.`,
};
