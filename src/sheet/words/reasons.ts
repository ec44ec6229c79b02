import type { Answer, Reason } from "../../plan/index.js";
import { reasonsOf } from "../../plan/measure-next.js";
import { fieldOf } from "./fields.js";
import { amountOf, nameOf, unfitnessOf } from "./quantities.js";
import type { Say, Words } from "./types.js";

type Codes = Pick<Words, "fields" | "lawNames">;

/** What a reason is about, in brackets. */
function about({ of }: Reason, say: Say): string {
  return say.given(of, (name) => ` (${say.material(name)})`);
}

function inStep({ step }: Reason, say: Say): string {
  return say.given(step, (number) => ` in ${say.step(number)}`);
}

/** The law that refused, with what it is about. */
function byLaw({ law, of }: Reason, say: Say, words: Codes): string {
  const parts = [say.given(law, (code) => words.lawNames[code]), say.given(of, say.material)].filter(
    (part) => part !== "",
  );
  return parts.length === 0 ? "" : ` (${parts.join(", ")})`;
}

/** The charge for which a reading is missing. */
function ofCharge({ phases, dose }: Reason, say: Say): string {
  return [
    say.given(phases, (names) => ` for ${say.list(names.map((name) => `phase ${name}`))}`),
    say.given(dose, (share) => ` at ${say.percent(share, 3)} of gel former`),
  ].join("");
}

/** The figure that a law refused, and what its range is. */
function refused({ quantity, value, min, max }: Reason, say: Say): string {
  return say.given(quantity, (code) => {
    const unfit = unfitnessOf(code);
    if (unfit !== undefined) return unfit;
    const amount = say.given(value, (number) => ` (${amountOf(number, code, say)})`);
    const from = say.given(min, (end) => ` from ${amountOf(end, code, say)}`);
    const to = say.given(max, (end) => ` up to ${amountOf(end, code, say)}`);
    return `${nameOf(code)}${amount} is outside the range${from}${to}`;
  });
}

/** Why a figure is not known, as a clause. */
export const reasons: Words["reasons"] = {
  "not-stated": (reason, say, words) =>
    `${say.given(reason.at, () => "the bench does not state") || "the documents do not state"} ${fieldOf(reason, say, words)}${say.given(reason.step, (number) => `, which ${say.step(number)} needs`)}`,
  "not-read": (reason, say, words) =>
    `the bench did not measure ${fieldOf(reason, say, words)}${say.given(reason.direction, (direction) => ` on ${direction}`)}${ofCharge(reason, say)}${say.given(reason.quantity, (code) => `, ${nameOf(code)} being ${amountOf(reason.value, code, say)}`)}`,
  "outside-range": (reason, say, words) =>
    `${refused(reason, say) || "a figure is outside the range"}${inStep(reason, say)}${byLaw(reason, say, words)}`,
  "no-correlation": (reason, say, words) =>
    `no correlation is known for this kind of stirrer${byLaw(reason, say, words)}`,
  "nothing-there": (reason, say, words) =>
    `there is nothing to calculate it from${say.given(reason.field, () => ` (${fieldOf(reason, say, words)})`) || about(reason, say)}${inStep(reason, say)}`,
  "not-done": (reason, say) => `no step of the process settles it${about(reason, say)}${inStep(reason, say)}`,
  contradiction: (reason, say, words) => `${fieldOf(reason, say, words)} contradicts another figure that is stated`,
  "no-method": (reason, say, words) =>
    `no method gives a number for it${inStep(reason, say)}${byLaw(reason, say, words)}`,
};

/** So many reasons stand on the sheet in full. */
const reasonsMax = 3;

/** Each reason once: of a law that refused the same quantity several times, the first value stands for all. */
function withoutRepeats(reasons: readonly Reason[]): readonly Reason[] {
  const keys = reasons.map(({ value: _value, step: _step, ...same }) => JSON.stringify(same));
  return reasons.filter((_reason, i) => keys.indexOf(keys[i] as string) === i);
}

/** The end of a sentence about an answer that is not known: why, or what leaves it open on which side of its limit it lies. */
export function why(answer: Answer, say: Say, words: Words): string {
  const all = withoutRepeats(reasonsOf(answer));
  const texts = [...new Set(all.map((reason) => words.reasons[reason.code](reason, say, words)))];
  const shown = texts.slice(0, reasonsMax);
  const others = texts.length - shown.length;
  if (shown.length > 0) return `${shown.join("; ")}${others > 0 ? `; and ${say.count(others)} more` : ""}.`;
  // What is assumed in it stands among what the checks rest on, once for all.
  return "the value may be on either side of the limit.";
}
