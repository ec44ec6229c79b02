import type { Check } from "../../formula/index.js";
import type { Stirrer } from "../job.js";
import { say } from "../say.js";
import { hardestOf, type Turn } from "../turning.js";

/** What the motor keeps in hand: common practice, no source. */
const spare = 1.25;

const newtonMetres = (torque: number): string => `${torque.toPrecision(2)} N·m`;

/** The motor turns the stirrer where the charge is thickest, with a quarter in hand. */
export function checkMotor(turning: readonly Turn[], { powerMotor, speed }: Stirrer): readonly Check[] {
  const hardest = hardestOf(turning, "power");
  const check = {
    id: "motor",
    limit: powerMotor === undefined ? "not stated" : `at most ${say.watts(powerMotor / spare)}`,
    source: "power number of the stirrer; a quarter in hand is common practice, no source",
  };
  if (!hardest || powerMotor === undefined)
    return [
      {
        ...check,
        verdict: "not known",
        statement: `Whether the motor turns the stirrer is not known: ${
          powerMotor === undefined
            ? "its power is not stated"
            : [...new Set(turning.map(({ stirred }) => stirred))].join("; ")
        }.`,
        value: hardest ? `${say.watts(hardest.power)} in ${hardest.where}` : "not known",
      },
    ];
  const met = hardest.power * spare <= powerMotor;
  const unseen = turning.filter(({ stirred }) => typeof stirred === "string").map(({ where }) => where);
  const notKnown = unseen.length > 0 ? `; not known in ${say.places(unseen)}` : "";
  const heaviest = hardestOf(turning, "torque");
  const torqueMotor = speed === undefined ? undefined : powerMotor / (2 * Math.PI * speed);
  // Its power is stated for one speed: below that, only a gear makes more torque of it.
  if (met && heaviest && torqueMotor !== undefined && heaviest.torque * spare > torqueMotor)
    return [
      {
        ...check,
        verdict: "not known",
        statement: `Whether the motor turns the stirrer in ${heaviest.where} is not known: through a gear it does, turned down by its supply alone it lacks the torque.`,
        value: `${newtonMetres(heaviest.torque)} in ${heaviest.where}${notKnown}`,
        limit: `at most ${newtonMetres(torqueMotor / spare)}, by the motor's power at the usual speed`,
      },
    ];
  return [
    {
      ...check,
      verdict: met ? "met" : "not met",
      statement: met
        ? "The motor turns the stirrer wherever the viscosity of the charge is known."
        : `The motor is too weak for the charge in ${hardest.where}: stir more slowly.`,
      value: `${say.watts(hardest.power)} and ${newtonMetres(hardest.torque)} in ${hardest.where}${notKnown}`,
    },
  ];
}
