import { list, notNegative, positive, record, refuse, result, show, temperature, wholeNumber } from "../guards.js";
import { maxOf } from "../numeric/extremes.js";
import { type EquivalentStorage, equivalentStorage } from "./equivalent-storage.js";
import type { AgeingKinetics } from "./kinetics.js";
import * as known from "./known.js";
import type { Transition } from "./transition.js";

const day = 86_400;

/** One storage of a stability test. */
export interface StorageCondition {
  /** What it is called: `"40 °C"`, `"window"`, `"freeze-thaw"`. */
  readonly name: string;
  /** Its temperature [°C]; left out where there is no single one, as of cycles. */
  readonly temperature?: number;
  /** Days after the start on which packs are taken out: whole numbers from 0, each once, in any order. */
  readonly pullDays: readonly number[];
  /** Packs that one pull uses up, 1 or more. */
  readonly packsPerPull: number;
  /** Packs kept beside, for a pull that has to be repeated; default 0. */
  readonly packsReserve?: number;
}

/** One visit to the store. */
export interface Pull {
  /** Days after the start. */
  readonly day: number;
  readonly condition: string;
  /** Packs to take out. */
  readonly packs: number;
}

/** What a condition needs and, where it has a temperature and kinetics were given, what it stands for. */
export interface ConditionNeeds {
  readonly condition: string;
  /** Packs to put in at the start, with the reserve. */
  readonly packs: number;
  /** Product in these packs [kg]. */
  readonly mass: number;
  /** Day of the last pull. */
  readonly dayLast: number;
  /** What the time up to the last pull stands for at the reference temperature; left out without kinetics. */
  readonly equivalent?: EquivalentStorage;
}

/** A stability test as data. */
export interface TestPlan {
  /** All pulls, by day, and on one day in the order of the conditions. */
  readonly pulls: readonly Pull[];
  readonly conditions: readonly ConditionNeeds[];
  /** Packs for the whole test: what the batch has to deliver beyond those for sale. */
  readonly packs: number;
  /** Product in these packs [kg]: the sample allowance of the batch. */
  readonly mass: number;
  /** Day of the last pull of all. */
  readonly dayLast: number;
}

/**
 * A stability test as data: when to pull how many packs from which storage, and how much product that takes out of the batch.
 *
 * $$n = \sum_c \left(p_c\,n_c + r_c\right) \qquad m = n\,m_\mathrm{pack}$$
 *
 * Days count from the start, since a kernel has no calendar. Conditions and days are the caller's: the trade stores at 4,
 * 25, 40 and 45 °C and in a window for some weeks to months, which is common practice and no standard. What each of them
 * stands for at the reference temperature is told beside, or that it is not known.
 *
 * @param input.conditions - Name, days of the pulls, packs a pull and in reserve, and temperature [°C] of each; at least one.
 * @param input.massPack - Product in a pack [kg], above 0.
 * @param input.temperatureReference - Where the time is wanted [°C]; given together with `kinetics`, or neither.
 * @param input.kinetics - How much faster chemical change goes where it is warmer.
 * @param input.transitions - Gel points and melting ranges of the product [°C], if it has any.
 * @returns Pulls, needs of each condition, and packs and mass [kg] in all.
 * @throws CalculationError `input` where an argument is out of range, a name or a day stands twice, or one of reference
 *   temperature and kinetics is missing.
 * @source definition; the storage temperatures of the trade are common practice, no source
 * @example
 * ```ts
 * import { testPlan } from "gelwright/stability";
 * const plan = testPlan({
 *   conditions: [
 *     { name: "25 °C", temperature: 25, pullDays: [0, 28, 84, 365], packsPerPull: 2, packsReserve: 2 },
 *     { name: "40 °C", temperature: 40, pullDays: [28, 84], packsPerPull: 2 },
 *   ],
 *   massPack: 0.05,
 * });
 * plan.packs; // => 14
 * plan.mass.toFixed(2); // => "0.70"
 * plan.pulls[1]; // => { day: 28, condition: "25 °C", packs: 2 }
 * ```
 */
export function testPlan(input: {
  readonly conditions: readonly StorageCondition[];
  readonly massPack: number;
  readonly temperatureReference?: number;
  readonly kinetics?: AgeingKinetics;
  readonly transitions?: readonly Transition[];
}): TestPlan {
  const { conditions, massPack, temperatureReference, kinetics, transitions } = record(input, "input", known.testPlan);
  const mass = positive(massPack, "massPack");
  if ((temperatureReference === undefined) !== (kinetics === undefined))
    refuse("input", "kinetics", show(kinetics), "kinetics and temperatureReference together, or neither");
  const names = new Set<string>();
  const checked = list(conditions, "conditions", 1).map((condition, i) => {
    const at = `conditions[${i}]`;
    const {
      name,
      temperature: warmth,
      pullDays,
      packsPerPull,
      packsReserve = 0,
    } = record(condition, at, known.storageCondition);
    if (typeof name !== "string" || name === "" || names.has(name))
      refuse("input", `${at}.name`, show(name), "a name of its own");
    names.add(name);
    const days = list(pullDays, `${at}.pullDays`, 1).map((own, k) =>
      wholeNumber(own, `${at}.pullDays[${k}]`, 0, 100_000),
    );
    if (new Set(days).size < days.length) refuse("input", `${at}.pullDays`, "a day twice", "each day once");
    const each = wholeNumber(packsPerPull, `${at}.packsPerPull`, 1, 1e9);
    const packs = days.length * each + wholeNumber(packsReserve, `${at}.packsReserve`, 0, 1e9);
    const dayLast = maxOf(days);
    const needs = { condition: name, packs, mass: result(packs * mass, `${at} mass`), dayLast };
    const warm = warmth === undefined ? undefined : temperature(warmth, `${at}.temperature`);
    const stands = (): EquivalentStorage | undefined =>
      warm === undefined || kinetics === undefined || temperatureReference === undefined || dayLast === 0
        ? undefined
        : equivalentStorage({
            temperature: warm,
            duration: dayLast * day,
            temperatureReference,
            kinetics,
            ...(transitions === undefined ? {} : { transitions }),
          });
    const equivalent = stands();
    return {
      pulls: days.map((own) => ({ day: own, condition: name, packs: each })),
      needs: equivalent === undefined ? needs : { ...needs, equivalent },
    };
  });
  const packs = checked.reduce((sum, { needs }) => sum + needs.packs, 0);
  return {
    // Sorting is stable: on one day the order of the conditions stays.
    pulls: checked.flatMap(({ pulls }) => pulls).sort((one, other) => one.day - other.day),
    conditions: checked.map(({ needs }) => needs),
    packs,
    mass: result(notNegative(packs * mass, "mass"), "mass"),
    dayLast: maxOf(checked.map(({ needs }) => needs.dayLast)),
  };
}
