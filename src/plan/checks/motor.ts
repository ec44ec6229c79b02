import type { Check } from "../../formula/index.js";
import type { Stirrer } from "../job.js";
import { say } from "../say.js";
import type { Turn } from "../turning.js";

/** What the motor keeps in hand: common practice, no source. */
const spare = 1.25;

/** The motor turns the stirrer where the charge is thickest, with a quarter in hand. */
export function checkMotor(turning: readonly Turn[], { powerMotor }: Stirrer): readonly Check[] {
  const known = turning.flatMap(({ where, stirred }) => (typeof stirred === "string" ? [] : [{ where, ...stirred }]));
  const hardest = known.reduce<(typeof known)[number] | undefined>(
    (most, one) => (most && most.power >= one.power ? most : one),
    undefined,
  );
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
  return [
    {
      ...check,
      verdict: met ? "met" : "not met",
      statement: met
        ? "The motor turns the stirrer wherever the viscosity of the charge is known."
        : `The motor is too weak for the charge in ${hardest.where}: stir more slowly.`,
      value: `${say.watts(hardest.power)} and ${hardest.torque.toPrecision(2)} N·m in ${hardest.where}${unseen.length > 0 ? `; not known in ${unseen.join(", ")}` : ""}`,
    },
  ];
}
