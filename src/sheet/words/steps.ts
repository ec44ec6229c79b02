import type { PlanStep, Step } from "../../plan/index.js";
import type { Say, Words } from "./types.js";

/** The step as the document states it. The entries of the table are found by its kind, so it is of that kind. */
function read<Do extends Step["do"]>({ step }: PlanStep, _kind: Do): Extract<Step, { readonly do: Do }> {
  return step as Extract<Step, { readonly do: Do }>;
}

/** The speed that the plan counts on: an operator who has only the sheet knows no usual speed. */
function atSpeed({ speed }: PlanStep, say: Say): string {
  return say.given(speed, (turns) => ` at ${say.rpm(turns)}`);
}

function stirring({ speed }: PlanStep, say: Say): string {
  return say.given(speed, (turns) => `, stirring at ${say.rpm(turns)}`);
}

function over(duration: number | undefined, say: Say): string {
  return say.given(duration, (time) => ` over ${say.duration(time)}`);
}

function onJacket(medium: number | undefined, say: Say): string {
  return say.given(medium, (warm) => ` with the jacket at ${say.celsius(warm)}`);
}

function within(duration: number | undefined, say: Say): string {
  return say.given(duration, (time) => ` within ${say.duration(time)}`);
}

/** What a phase is charged into. */
const charging = { empty: "Charge", filled: "Stir in" } as const;

function chargingInto({ mass, massCharged }: PlanStep): keyof typeof charging {
  return massCharged === mass ? "empty" : "filled";
}

/** Which part of a phase goes in. */
function partOf({ part }: PlanStep, say: Say): string {
  return say.given(part, ({ number, count }) => `part ${say.count(number)} of ${say.count(count)} of `);
}

/** In how many equal additions a phase is charged, and how much each is. */
function inAdditions({ massCharged }: PlanStep, count: number | undefined, say: Say): string {
  if (count === undefined || count === 1) return "";
  const each = say.given(massCharged, (mass) => ` of ${say.kilograms(mass / count)}`);
  return ` in ${say.count(count)} equal additions${each}, each stirred in before the next`;
}

/** Speeds that follow the oil in the vessel. */
function turningUp(speeds: readonly { readonly fromOil: number; readonly speed: number }[], say: Say): string {
  return say.list(
    speeds.map(({ fromOil, speed }) => `at ${say.rpm(speed)} from ${say.percent(fromOil)} oil by volume on`),
  );
}

/** How a phase is added to the gel, by the form of its additions. */
const adding = {
  portions: "by the table of additions",
  stream: "as a stream, at the rates of the table of additions",
} as const;

/** What rests. */
const resting = { packs: "Let the packs rest", vessel: "Stop the stirrer and let the charge rest" } as const;

/** The instruction to the operator, without the note of the document. */
export const steps: Words["steps"] = {
  charge: (step, say) => {
    const { phase, at, for: duration, equalAdditions } = read(step, "charge");
    const temperature = say.given(at, (warm) => say.celsius(warm)) || "room temperature";
    return `${charging[chargingInto(step)]} ${partOf(step, say)}phase ${phase} (${say.kilograms(step.massCharged)}, at ${temperature})${inAdditions(step, equalAdditions, say)}${over(duration, say)}${atSpeed(step, say)}`;
  },
  heat: (step, say) => {
    const { to, within: time } = read(step, "heat");
    return `Heat to ${say.celsius(to)} with the heater full on${within(time, say)}${stirring(step, say)}`;
  },
  hold: (step, say) => {
    const { for: duration, at, jacketAt } = read(step, "hold");
    const how =
      say.given(at, (warm) => `Hold off the heat at ${say.celsius(warm)}`) ||
      say.given(jacketAt, (warm) => `Hold${onJacket(warm, say)}`) ||
      say.given(step.temperatureEnd, (warm) => `Turn the heat down and hold at ${say.celsius(warm)}`) ||
      "Hold on the heat";
    return `${how} for ${say.duration(duration)}${stirring(step, say)}`;
  },
  "take off the heat": () => "Take the vessel off the heat, or switch the heater off",
  cool: (step, say) => {
    const cooling = read(step, "cool");
    const coolant = say.given(step.temperatureCoolant, (inlet) => ` with coolant of ${say.celsius(inlet)}`);
    const how = { jacket: `Cool through the jacket${coolant}`, itself: "Let cool" }[cooling.with ?? "itself"];
    if ("toViscosity" in cooling)
      return `${how} until it has thickened to ${say.pascalSeconds(cooling.toViscosity)}${say.given(step.temperatureEnd, (end) => `, predicted at ${say.celsius(end)}`)}${within(cooling.within, say)}${stirring(step, say)}${say.given(step.stirring, ({ power, torque }) => ` (the stirrer then takes about ${say.watts(power, 2)}, ${say.newtonMetres(torque)})`)}`;
    return `${how} to ${say.celsius(cooling.to)}${within(cooling.within, say)}${stirring(step, say)}`;
  },
  stir: (step, say) => `Stir for ${say.duration(read(step, "stir").for)}${atSpeed(step, say)}`,
  add: (step, say) => {
    const { phase, additions, speeds } = read(step, "add");
    const turning = say.given(speeds, (steps) => `, ${turningUp(steps, say)}`) || atSpeed(step, say);
    return `Stir in ${partOf(step, say)}phase ${phase} (${say.kilograms(step.massCharged)})${turning}, ${adding[additions === "stream" ? "stream" : "portions"]}`;
  },
  "match clarity": () =>
    "Look through a sample in a jar like the bench's, at room temperature and once its air is drawn or spun out: it must be as clear as the bench's (☐ clear ☐ not clear). If it is not, ask the owner of the formula before you go on",
  check: (step, say) => {
    const { what, expect } = read(step, "check");
    const wanted = say.given(expect, (right) => ` It must be ${right}.`);
    return `Check ${what}.${wanted} (☐ right ☐ not right) If it is not right, ask the owner of the formula before you go on`;
  },
  "de-aerate": (step, say) => {
    const { for: duration, pressure, speed } = read(step, "de-aerate");
    const stirred = say.given(speed, (turns) => `, stirring slowly at ${say.rpm(turns)}`) || ", without stirring";
    return `De-aerate for ${say.duration(duration)}${say.given(pressure, (low) => ` at ${say.millibars(low)} absolute`)}${stirred}`;
  },
  fill: (step, say) => {
    const { for: duration, packsPerMinute, held, jacketAt } = read(step, "fill");
    const rate = say.given(packsPerMinute, (rate) => `, ${say.number(rate)} a minute`);
    const how = say.given(held, () => ", the vessel on the heat") || onJacket(jacketAt, say);
    return `Fill the packs${within(duration, say)}${rate}${how}${stirring(step, say)}`;
  },
  rest: (step, say) => `${resting[step.inPacks ? "packs" : "vessel"]} for ${say.duration(read(step, "rest").for)}`,
};
