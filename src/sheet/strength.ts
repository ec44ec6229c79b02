import type { Plan, PlanAir, PlanFlow, PlanGelPoint, PlanParticle } from "../plan/index.js";
import { celsius, percent, span } from "./figures.js";
import { markdownList, markdownTable, type Table } from "./table.js";

/** When to add, what the gel will be like, and its air: only what the documents say something about. */
export function strengthSections(plan: Plan): readonly string[] {
  const { particles, flow, air } = plan;
  const gel = [...gelPointsOf(plan.gelPoints), ...yieldStressOf(plan), ...flowOf(flow), ...filmOf(plan)];
  return [
    ...section("## When to add particles", particles.flatMap(particleOf)),
    ...section("## The gel", gel),
    ...(flow && flow.uses.length > 0 ? [markdownTable(useTable(flow))] : []),
    ...section("## Air", air ? airOf(air) : []),
  ];
}

function section(title: string, lines: readonly string[]): readonly string[] {
  return lines.length === 0 ? [] : [title, markdownList(lines)];
}

function digits(value: number, count = 2): number {
  return Number(value.toPrecision(count));
}

function millimetres(length: number): string {
  return `${digits(length * 1000)} mm`;
}

function shortPercent(fraction: number): string {
  return `${digits(100 * fraction, 3)} %`;
}

function minutes(time: number): number {
  return Math.round(time / 60);
}

function particleOf(of: PlanParticle): readonly string[] {
  const { material, window, notKnown } = of;
  const more = keptUp(of);
  if (!window) return [`${material}: when to stir it in is not known, ${notKnown}.${more}`];
  const { isOpen, temperatureFrom, temperatureTo } = window;
  return [
    isOpen
      ? `${material}: stir it in while the melt shows ${temperatureFrom.toFixed(1)} to ${celsius(temperatureTo)}${whenOf(of)}.${more}`
      : `${material}: there is no time for it. The melt is too thin down to ${celsius(temperatureFrom)} and too thick from ${celsius(temperatureTo)}.${more}`,
  ];
}

function whenOf({ window, goesIn }: PlanParticle): string {
  const { timeFrom, timeTo } = window ?? {};
  const open =
    timeFrom === undefined || timeTo === undefined
      ? ""
      : `, ${minutes(timeFrom)} to ${minutes(timeTo)} min after the heat is off`;
  if (!goesIn) return open;
  return `${open}; by this plan at ${celsius(goesIn.temperature)}${goesIn.time === undefined ? "" : `, after ${minutes(goesIn.time)} min`}`;
}

function keptUp({ massFractionBeyond, largestSuspended, wettingOil, thickening }: PlanParticle): string {
  const lines: string[] = [];
  if (massFractionBeyond !== undefined)
    lines.push(`${percent(massFractionBeyond)} of its mass settles further than allowed.`);
  if (largestSuspended)
    lines.push(
      `The set gel holds its like for certain up to ${millimetres(largestSuspended.length)} in ${largestSuspended.of}.`,
    );
  if (wettingOil !== undefined)
    lines.push(
      `Wet it with ${digits(wettingOil * 1000, 3)} g or more of the batch's own oil, none on top${thickening === undefined ? "" : `; by its oil absorption it thickens the melt ${digits(thickening, 3)} times`}.`,
    );
  return lines.map((line) => ` ${line}`).join("");
}

/** Setting and dissolving in one sentence, where they rest on the same. */
function gelPointsOf(points: readonly PlanGelPoint[]): readonly string[] {
  const [first, second] = points;
  if (!first) return [];
  const dose = `At ${shortPercent(first.dose)} of gel former it`;
  if (second && second.basis === first.basis) return [`${dose} ${told(first)} and ${told(second)}, ${first.basis}.`];
  return points.map((point) => `${dose} ${told(point)}, ${point.basis}.`);
}

function told({ what, temperature, line }: PlanGelPoint): string {
  return `${what} at ${celsius(temperature)}${line ? ` (${line.min.toFixed(1)} to ${celsius(line.max)} at 95 %)` : ""}`;
}

/** The yield stress by all that says it, the one that counts first, and the dose for another. */
function yieldStressOf({ yieldStress, strength, flow }: Plan): readonly string[] {
  const lines: string[] = [];
  const read = flow?.yieldStress;
  const expected = strength?.expected;
  const others = flow?.otherConventions
    ? `, other conventions ${digits(flow.otherConventions.min)} to ${digits(flow.otherConventions.max)} Pa`
    : "";
  if (yieldStress) lines.push(`Yield stress ${digits(yieldStress.value, 3)} Pa: ${yieldStress.from}.`);
  if (read) lines.push(`Flow curve: yield stress ${digits(read.value, 3)} Pa (${read.by}${others}).`);
  if (strength && expected)
    lines.push(
      `Trials: a ${strength.of} of ${digits(expected.value, 3)} Pa (${digits(expected.min, 3)} to ${digits(expected.max, 3)} at 95 %) is expected at ${shortPercent(strength.dose)} of gel former.`,
    );
  if (strength?.target !== undefined && strength.doseTarget)
    lines.push(
      `For ${digits(strength.target, 3)} Pa it takes ${shortPercent(strength.doseTarget.value)} of gel former (${shortPercent(strength.doseTarget.min)} to ${shortPercent(strength.doseTarget.max)} at 95 %).`,
    );
  if (strength?.notKnown !== undefined)
    lines.push(`What dose gives which ${strength.of} is not known: ${strength.notKnown}.`);
  return lines;
}

function flowOf(flow: PlanFlow | undefined): readonly string[] {
  if (!flow) return [];
  const { temperature, model, nozzle, notKnown } = flow;
  if (model === undefined) return [`How it flows is not known: ${notKnown}.`];
  return [
    `Flow at ${celsius(temperature)}: ${model}.`,
    ...(nozzle ? [`Its nozzle takes ${digits(nozzle.pressureGradient / 1e5)} bar on each metre of length.`] : []),
  ];
}

function filmOf({ films }: Plan): readonly string[] {
  return films.thicknessMax === undefined
    ? []
    : [`At rest, a film of up to ${millimetres(films.thicknessMax)} does not run down an upright wall.`];
}

/** What has not drained from the vessel, beside the allowance that was made for it. */
export function filmOnWall({ films }: Plan): string {
  return films.thicknessOnWall === undefined
    ? ""
    : ` By the viscosity at the end of filling, ${millimetres(films.thicknessOnWall)} in the mean have not drained from the wall.`;
}

function useTable({ uses }: PlanFlow): Table {
  return {
    columns: ["In use", "Shear rate", "Viscosity"],
    rows: uses.map(({ use, shearRate, viscosity, beyondReadings }) => [
      use,
      `${digits(shearRate)} 1/s`,
      `${digits(viscosity)} Pa·s${beyondReadings ? ", beyond the points" : ""}`,
    ]),
  };
}

function airOf({ diameter, segments, inPack, suspended, toClear, vacuum, notKnown }: PlanAir): readonly string[] {
  const lines = segments.map(({ fromStep, toStep, depth, distance, durationToClear }) => {
    const rise = `Bubbles of ${millimetres(diameter)} after step ${fromStep}`;
    return durationToClear === undefined
      ? `${rise} rise ${millimetres(distance)} of ${millimetres(depth)} by the end of step ${toStep}: they do not leave.`
      : `${rise} have left the ${millimetres(depth)} of melt after ${span(durationToClear)}, if nothing stirs in more.`;
  });
  if (inPack)
    lines.push(
      `In a pack they rise ${millimetres(inPack.distance)} of ${millimetres(inPack.depth)} before it has set.`,
    );
  if (suspended)
    lines.push(
      `The set gel holds bubbles up to ${millimetres(suspended.min)} for ever, and none above ${millimetres(suspended.max)}; between them it is not known.`,
    );
  if (toClear) lines.push(clearingOf(toClear));
  if (vacuum)
    lines.push(
      `Under ${digits(vacuum.pressure / 1000, 3)} kPa the foam stands ${millimetres(vacuum.foam)} high${vacuum.duration === undefined ? "" : `, and the melt is clear after ${span(vacuum.duration)}`}.`,
    );
  if (notKnown !== undefined) lines.push(`Not known: ${notKnown}.`);
  return lines;
}

function clearingOf({ fromStep, within, temperature, pressure }: NonNullable<PlanAir["toClear"]>): string {
  const start = `To be clear ${span(within)} after step ${fromStep}`;
  const ways = [
    ...(temperature === undefined ? [] : [`kept at ${celsius(temperature)} or warmer`]),
    // Above the pressure of the room no vacuum is needed.
    ...(pressure === undefined ? [] : [`under ${digits(Math.min(pressure, 101_325) / 1000, 3)} kPa or less`]),
  ];
  return ways.length === 0
    ? `${start} is out of reach by warmth or vacuum.`
    : `${start} the melt would have to be ${ways.join(", or ")}.`;
}
