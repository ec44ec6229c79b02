import type { ColdAdditions, ColdSpeeds, ColdWarming, ExpectedGel, Plan } from "../plan/index.js";
import { convert } from "../units/index.js";
import { additionTable, speedTable, streamTable } from "./cold-tables.js";
import { celsius, massRate, percent } from "./figures.js";
import { markdownList, markdownTable, markdownText } from "./table.js";

/** The additions of oil, each schedule with how to follow it. */
export function additionsOf({ cold, timeline }: Plan): readonly string[] {
  return (cold?.additions ?? []).flatMap((of) => [
    `## Additions of phase ${markdownText(of.phase)} (step ${of.step})`,
    markdownList(howTo(of)),
    ...(of.rows.length > 0
      ? [markdownTable(of.form === "stream" ? streamTable(of, timeline) : additionTable(of, timeline))]
      : []),
  ]);
}

function howTo(of: ColdAdditions): readonly string[] {
  const { form, proceedWhen } = of;
  const ifItTurns =
    "If it turns thin, greasy or grainy: add nothing more, write down the number and the time, keep all of it, and ask whoever owns the formula.";
  return form === "stream"
    ? [
        "Mix the phase beforehand.",
        "Set the pump to the first row and raise it evenly to the next.",
        `At each row look in: the gel is ${proceedWhen}. If it is not, stop the pump, stir on, and look again.`,
        ifItTurns,
        ...onTheDrive(of),
        timesOf(of),
      ]
    : [
        "Mix the phase beforehand, and take each addition from that mix.",
        `Pour one addition in a thin stream where the stirrer draws it in${noFasterThan(of)}; then stir on and wait.`,
        `Tick the box when the gel is ${proceedWhen}. Only then comes the next. If it takes longer than the table says, wait longer; never make up for it with a larger addition.`,
        "If an addition came out smaller, leave it so: the last one takes what is left, but no more than the one before it at a time. If one came out larger, wait until it is taken up, and take so much less for the next.",
        ifItTurns,
        ...onTheDrive(of),
        timesOf(of),
      ];
}

/** What pump or hand delivers at most. */
function noFasterThan({ rateMax }: ColdAdditions): string {
  return rateMax === undefined ? "" : `, no faster than ${massRate(rateMax)}`;
}

/** What to make of thickness and torque: from thinning to torque common practice, no source. */
function onTheDrive({ rows, shearRate, speed }: ColdAdditions): readonly string[] {
  const isThick = rows.some(({ viscosity, yieldStress }) => viscosity !== undefined || yieldStress !== undefined);
  const turned = rows.some(({ torque }) => torque !== undefined);
  const read = shearRate === undefined ? "" : ` at ${Number(shearRate.toPrecision(2))} 1/s`;
  const turning = speed === undefined ? "" : ` at ${Math.round(convert(speed, "rev/s", "rpm"))} rpm`;
  return [
    ...(turned
      ? [
          `Torque is what the shaft asks for${turning} at the end of a row, the friction of gear and seal left out. A drive that shows watts, amperes or per cent goes up and down with it. Where the table stays or rises and the drive falls off, the gel may be breaking: stop adding and look.`,
        ]
      : []),
    ...(isThick
      ? [
          `Thickness is for whoever has a rheometer: what it reads${read}, and the stress from which the gel flows. Without one, go by look and drive.`,
        ]
      : []),
  ];
}

/** What the times are worth. */
function timesOf({ keeps, incorporationTimeFactor, timesNotKnown }: ColdAdditions): string {
  if (timesNotKnown) return `Times are not known: ${timesNotKnown}. Go by the look of the gel.`;
  const kept = {
    time: "",
    revolutions: ", so that the stirrer turns as often as it did there",
    "tip travel": ", so that the stirrer's tip goes as far as it did there",
    "energy per volume": ", so that each litre takes as much energy from the stirrer as it did there",
    strain: ", so that the gel is sheared as much in all as it was there",
  }[keeps];
  return `Times are an estimate for the day, no permission to go on: the bench's${factor(incorporationTimeFactor)}${kept}.`;
}

function factor(of: ColdAdditions["incorporationTimeFactor"]): string {
  const [first, last] = [of?.first ?? 1, of?.last ?? 1].map((one) => Number(one.toPrecision(3)));
  if (first === last) return first === 1 ? "" : `, times ${first}`;
  return `, times ${first} at first and ${last} in the end`;
}

/** The bench's stirrer beside this one. */
export function speedsOf(speeds: ColdSpeeds | undefined): readonly string[] {
  if (!speeds) return [];
  const head = "## The stirrer, beside the bench's";
  if ("notKnown" in speeds) return [head, `Not known: ${markdownText(speeds.notKnown)}.`];
  return [
    head,
    "In the gel with all of its oil in. Each speed below the plan's keeps one thing of the bench's and changes the others; which of them the gel goes by, no law says.",
    markdownTable(speedTable(speeds.rows)),
  ];
}

/** How warm stirring makes it. */
export function warmingOf({ temperatureMax, leftOut, loss }: ColdWarming, temperatureRoom: number): readonly string[] {
  const steps = [...new Set(leftOut.map(({ step }) => step))].join(", ");
  const left =
    leftOut.length === 0
      ? ""
      : ` The heat of stirring in step ${steps} is not known: ${[...new Set(leftOut.map(({ reason }) => reason))].join("; ")}.`;
  if (temperatureMax === undefined) return [`How warm stirring makes it is not known.${left}`];
  if (temperatureMax - temperatureRoom < 0.05) return left ? [left.trim()] : [];
  return [`Stirring warms it to ${celsius(temperatureMax)} at most, cooling by ${loss}.${left}`];
}

/** What the bench's figures make of the gel. */
export function expectedOf(gel: ExpectedGel, isToldElsewhere: boolean): readonly string[] {
  const digits = (value: number): number => Number(value.toPrecision(2));
  const { volumeFractionOil, diameter, diameterFrom, modulus, yieldStress, yieldStressByTheory } = gel;
  return [
    ...(volumeFractionOil === undefined ? [] : [`Oil: ${percent(volumeFractionOil)} by volume of oil and gel former.`]),
    ...(diameter === undefined ? [] : [`Droplets: ${digits(1e6 * diameter)} µm across, ${diameterFrom}.`]),
    ...(yieldStress === undefined || isToldElsewhere ? [] : [`Yield stress: ${digits(yieldStress)} Pa, by the bench.`]),
    ...(yieldStressByTheory === undefined
      ? []
      : [
          `Yield stress by theory: ${digits(yieldStressByTheory)} Pa (Princen and Kiss, from droplet size and interfacial tension).`,
        ]),
    ...(modulus === undefined ? [] : [`Shear modulus by theory: ${digits(modulus)} Pa (Princen and Kiss).`]),
    ...gel.notKnown.map((text) => `Not known: ${text}.`),
  ];
}
