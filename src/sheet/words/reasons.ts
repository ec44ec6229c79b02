import { fieldCodes, reasonCodes } from "../../plan/codes.js";
import type { Answer, Reason } from "../../plan/index.js";
import { assumptions } from "./assumptions.js";
import { fieldOf, fields } from "./fields.js";
import { lawNames } from "./laws.js";
import { amountOf, nameOf } from "./quantities.js";
import type { Say, Words } from "./types.js";

type Codes = Pick<Words, "fields" | "lawNames">;

/** What a reason is about, in brackets. */
function about({ of }: Reason, say: Say): string {
  return say.given(of, (name) => ` (${say.material(name)})`);
}

function inStep({ step }: Reason, say: Say): string {
  return say.given(step, (number) => ` in ${say.step(number)}`);
}

function byLaw({ law }: Reason, say: Say, words: Codes): string {
  return say.given(law, (code) => ` (${words.lawNames[code]})`);
}

/** The charge for which a reading is missing. */
function ofCharge({ phases, dose }: Reason, say: Say): string {
  return [
    say.given(phases, (names) => ` for ${say.list(names.map((name) => `phase ${name}`))}`),
    say.given(dose, (share) => ` at ${say.percent(share)} of gel former`),
  ].join("");
}

/** The figure that a law refused, and what its range is. */
function refused({ quantity, value, min, max }: Reason, say: Say): string {
  return say.given(quantity, (code) => {
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
    `${refused(reason, say) || "a figure is outside the range"}${about(reason, say)}${inStep(reason, say)}${byLaw(reason, say, words)}`,
  "no-correlation": (reason, say, words) =>
    `no correlation is known for this kind of stirrer${about(reason, say)}${byLaw(reason, say, words)}`,
  "nothing-there": (reason, say, words) =>
    `there is nothing to compute it from${say.given(reason.field, () => ` (${fieldOf(reason, say, words)})`) || about(reason, say)}${inStep(reason, say)}`,
  "not-done": (reason, say) => `no step of the process settles it${about(reason, say)}${inStep(reason, say)}`,
  contradiction: (reason, say, words) => `${fieldOf(reason, say, words)} contradicts another that is stated`,
  "no-method": (reason, say, words) =>
    `no method gives a number for it${about(reason, say)}${inStep(reason, say)}${byLaw(reason, say, words)}`,
};

/** A reason in words. */
function reasonText(reason: Reason, say: Say): string {
  return reasons[reason.code](reason, say, { fields, lawNames });
}

/** The reason that stands beside an answer whose figure has one end that is not known. */
function reasonBeside({ beside = {} }: Answer): readonly Reason[] {
  const found = [beside["code"], beside["field"], beside["lacks"]];
  const field = fieldCodes.find((code) => found.includes(code));
  const code = reasonCodes.find((one) => found.includes(one)) ?? (field && "not-stated");
  return code ? [{ code, ...(field && { field }) }] : [];
}

/** So many reasons stand on the sheet in full. */
const reasonsMax = 3;

/** The end of a sentence about an answer that is not known: why, or between which ends it lies and what is assumed in it. */
export function why(answer: Answer, say: Say): string {
  const { notKnown, figure, limit, quantity } = answer;
  const all = notKnown.length > 0 ? notKnown : reasonBeside(answer);
  const texts = [...new Set(all.map((reason) => reasonText(reason, say)))];
  const shown = texts.slice(0, reasonsMax);
  const others = texts.length - shown.length;
  if (shown.length > 0) return `${shown.join("; ")}${others > 0 ? `; and ${say.count(others)} more` : ""}.`;
  const assumed = (figure.assumptions ?? []).map((code) => `; ${assumptions[code]}`).join("");
  return `the figure is ${say.interval(figure, quantity)}, the limit ${say.limit(limit, quantity)}${assumed}.`;
}
