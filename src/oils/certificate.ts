import { CalculationError, type Fault } from "../error.js";
import type { Check } from "../formula/check.js";
import { finite, list, notNegative, record, refuse, show, temperature } from "../guards.js";
import { entriesOf, type Profile, type ProfileRanges, type Range, range } from "./profile.js";
import type { Provenance, RangeAtTemperature, StandardOil } from "./standard-oil.js";

/** A figure that means nothing without its temperature. */
export interface ValueAtTemperature {
  /** The figure, in the unit of the field that holds it. */
  readonly value: number;
  /** The temperature at which it was measured [°C]. */
  readonly temperature: number;
}

/** What a certificate of analysis states; what it leaves out stays unknown. */
export interface Certificate {
  /** Each acid by its shorthand [% of the fatty acids]; isomers are added up (18:1 n-9 and 18:1 n-7 are 18:1). */
  readonly profile?: Profile;
  /** Iodine value [g/100 g]. */
  readonly iodineValue?: number;
  /** Saponification value [mg KOH/g]. */
  readonly saponificationValue?: number;
  /** Relative density against water, and the oil's temperature. */
  readonly relativeDensity?: ValueAtTemperature;
  /** Refractive index at the sodium D line, and its temperature. */
  readonly refractiveIndex?: ValueAtTemperature;
  /** Tocopherols and tocotrienols together [mg/kg]. */
  readonly tocols?: number;
}

/**
 * Asks of each figure of a certificate of analysis whether it lies in the range of the standard.
 *
 * A lot that fits may still be another oil, or a blend: ranges overlap. A figure that the certificate does not state, or
 * states at another temperature than the standard, is `not known`, and so is an acid that the standard does not limit.
 *
 * @param input.oil - The standard's ranges, such as `sunflowerOil`.
 * @param input.certificate - The figures of the lot.
 * @returns One check for each fatty acid of either and for each other figure that the standard limits.
 * @throws CalculationError `input` where a figure is no number or out of range.
 * @source codex-210-1999, codex-33-1981, ph-eur-mct: the standard named by the oil
 * @example
 * ```ts
 * import { checkCertificate, sunflowerOil } from "gelwright/oils";
 * const checks = checkCertificate({ oil: sunflowerOil, certificate: { iodineValue: 112 } });
 * checks.find((check) => check.id === "iodine-value")?.verdict; // => "not met"
 * ```
 */
export function checkCertificate(input: {
  readonly oil: StandardOil;
  readonly certificate: Certificate;
}): readonly Check[] {
  const { oil, certificate } = record(input, "input");
  const { profile: limits, read, standard } = record(oil, "oil");
  const {
    profile = {},
    iodineValue,
    saponificationValue,
    relativeDensity,
    refractiveIndex,
    tocols,
  } = record(certificate, "certificate");
  const trust = record(read, "oil.read");
  if (typeof standard !== "string") refuse("input", "oil.standard", standard, "a text");
  const against = (id: string, name: string, unit: string, path: keyof StandardOil["read"]) => ({
    id,
    name,
    unit,
    path,
    source: `${standard} (${trusted(trust[path], `oil.read.${path}`)})`,
  });
  const acids = against("", "", " %", "profile");
  return [
    ...acidsOf(limits, profile).map(([kind, within, found]) =>
      held({ ...acids, id: `fatty-acid-${kind}`, name: kind }, found, within),
    ),
    held(against("iodine-value", "Iodine value", " g/100 g", "iodineValue"), iodineValue, oil.iodineValue),
    held(
      against("saponification-value", "Saponification value", " mg KOH/g", "saponificationValue"),
      saponificationValue,
      oil.saponificationValue,
    ),
    heldAt(
      against("relative-density", "Relative density", "", "relativeDensity"),
      relativeDensity,
      oil.relativeDensity,
    ),
    heldAt(
      against("refractive-index", "Refractive index", "", "refractiveIndex"),
      refractiveIndex,
      oil.refractiveIndex,
    ),
    ...(oil.tocols
      ? [held(against("tocols", "Tocopherols and tocotrienols", " mg/kg", "tocols"), tocols, oil.tocols)]
      : []),
  ];
}

interface Question {
  readonly id: string;
  readonly name: string;
  readonly unit: string;
  readonly path: string;
  readonly source: string;
}

/** Every acid of either side, by carbons and double bonds: its limits, and what was found of all its isomers. */
function acidsOf(
  limits: ProfileRanges,
  profile: Profile,
): readonly (readonly [kind: string, within: Range | undefined, found: number | undefined])[] {
  const faults: Fault[] = [];
  const within = entriesOf(Object.entries(record(limits, "oil.profile")), "oil.profile", faults, () => undefined);
  const found = entriesOf(
    Object.entries(record(profile, "certificate.profile")),
    "certificate.profile",
    faults,
    (value) => (typeof value === "number" && value >= 0 && value <= 100 ? undefined : "a percentage from 0 to 100"),
  );
  if (faults.length) throw new CalculationError("input", faults);
  const kinds = new Set([...within, ...found].map(({ acid }) => acid.kind));
  return [...kinds].map((kind) => {
    const isomers = found.filter(({ acid }) => acid.kind === kind);
    const sum = isomers.length ? isomers.reduce((all, { value }) => all + value, 0) : undefined;
    return [kind, within.find(({ acid }) => acid.kind === kind)?.value, sum];
  });
}

function held(question: Question, found: number | undefined, limits: Range | undefined): Check {
  const { id, name, unit, path, source } = question;
  if (found !== undefined) notNegative(found, `certificate.${path}`);
  const limit = limits ? `${range(limits, `oil.${path}`).join(" to ")}${unit}` : "not stated";
  const value = found === undefined ? "not stated" : `${Number(found.toPrecision(12))}${unit}`;
  if (found === undefined || !limits)
    return {
      id,
      verdict: "not known",
      statement: `${name}: ${limits ? "the certificate does not state it" : "the standard has no range for it"}.`,
      value,
      limit,
      source,
    };
  // The rounding of a sum of isomers decides nothing.
  const slack = 1e-12 * found;
  const met = found >= limits[0] - slack && found <= limits[1] + slack;
  const statement = `${name} lies ${met ? "in" : "outside"} the range of the standard.`;
  return { id, verdict: met ? "met" : "not met", statement, value, limit, source };
}

function heldAt(
  question: Question,
  found: ValueAtTemperature | undefined,
  limits: readonly RangeAtTemperature[],
): Check {
  const path = `certificate.${question.path}`;
  const all = list(limits, `oil.${question.path}`).map((each, i) => {
    const at = `oil.${question.path}[${i}]`;
    const { range: within, temperature: warmth } = record(each, at);
    if (warmth !== undefined) temperature(warmth, `${at}.temperature`);
    return { range: range(within, `${at}.range`), temperature: warmth };
  });
  if (found === undefined) return held(question, undefined, all[0]?.range);
  const { value, temperature: warmth } = record(found, path);
  temperature(warmth, `${path}.temperature`);
  const same = all.find((each) => each.temperature === warmth);
  if (same) return held(question, finite(value, `${path}.value`), same.range);
  const { id, name, source } = question;
  return {
    id,
    verdict: "not known",
    statement: `${name}: the standard has no range at ${warmth} °C.`,
    value: `${finite(value, `${path}.value`)} at ${warmth} °C`,
    limit: all.map((each) => `${each.range.join(" to ")} at ${each.temperature ?? "an unstated"} °C`).join(", "),
    source,
  };
}

function trusted(trust: Provenance | undefined, path: string): Provenance {
  return trust === "first-hand" || trust === "second-hand" || trust === "from memory"
    ? trust
    : refuse("input", path, show(trust), '"first-hand", "second-hand" or "from memory"');
}
