import { CalculationError, type Fault } from "../error.js";
import { finite, list, notNegative, record, refuse, show, temperature } from "../guards.js";
import * as known from "./known.js";
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

/** How one figure of a certificate answers to the standard: codes, with the numbers from which the verdict follows. */
export interface CertificateAnswer {
  /** What was asked. */
  readonly id:
    | "fatty-acid"
    | "iodine-value"
    | "saponification-value"
    | "relative-density"
    | "refractive-index"
    | "tocols";
  /** Of a fatty acid, its carbons and double bonds: `18:1`. */
  readonly acid?: string;
  readonly verdict: "met" | "not-met" | "not-known";
  /** On which side of the range a figure lies that is not met. */
  readonly side: "below" | "above" | "none";
  /** Why the answer is not known: the certificate states no figure, or no range of the standard was read, or none at the figure's temperature. */
  readonly reason?: "no-figure" | "range-not-read" | "no-range-at-temperature";
  /** The figure of the certificate, in the unit of its field. */
  readonly figure?: number;
  /** Temperature of the figure [°C]; without a figure, that of the range. */
  readonly temperature?: number;
  /** The range of the standard, in the same unit. */
  readonly limit?: { readonly min: number; readonly max: number };
  readonly standard: string;
  /** How the standard's figures were read; absent if it states none of this kind. */
  readonly provenance?: Provenance;
}

/**
 * Asks of each figure of a certificate of analysis whether it lies in the range of the standard.
 *
 * A lot that fits may still be another oil, or a blend: ranges overlap. A figure that the certificate does not state, or
 * states at another temperature than the standard, is `not-known`, and so is an acid whose range was not read: the
 * standard may well have one. Which standard a lot is held against is yours: a cosmetic oil may follow a pharmacopoeia
 * where an edible one follows the Codex (`almondOilPharmacopoeia` beside `almondOil`).
 *
 * @param input.oil - The standard's ranges, such as `sunflowerOil`.
 * @param input.certificate - The figures of the lot.
 * @returns An answer for each fatty acid of either, and for each other figure that the standard limits or the certificate states.
 * @throws CalculationError `input` where a figure is no number or out of range.
 * @source codex-210-1999, codex-33-1981, ph-eur-mct, bp-2025: the standard named by the oil
 * @example
 * ```ts
 * import { checkCertificate, sunflowerOil } from "gelwright/oils";
 * const answers = checkCertificate({ oil: sunflowerOil, certificate: { iodineValue: 112 } });
 * answers.find(({ id }) => id === "iodine-value")?.verdict; // => "not-met"
 * ```
 */
export function checkCertificate(input: {
  readonly oil: StandardOil;
  readonly certificate: Certificate;
}): readonly CertificateAnswer[] {
  const { oil, certificate } = record(input, "input", known.checkCertificate);
  const { profile: limits, read, standard } = record(oil, "oil");
  const {
    profile = {},
    iodineValue,
    saponificationValue,
    relativeDensity,
    refractiveIndex,
    tocols,
  } = record(certificate, "certificate", known.certificate);
  const provenances = record(read, "oil.read");
  if (typeof standard !== "string") refuse("input", "oil.standard", standard, "a text");
  const against = (id: CertificateAnswer["id"], path: Exclude<keyof StandardOil["read"], "acids">): Question => ({
    id,
    path,
    standard,
    ...(oil[path] && { provenance: provenanceOf(provenances[path], `oil.read.${path}`) }),
  });
  const acids = against("fatty-acid", "profile");
  return [
    ...acidsOf(limits, profile).map(([acid, within, found]) => {
      const own = provenances.acids?.[acid];
      const read = own === undefined ? {} : { provenance: provenanceOf(own, `oil.read.acids.${acid}`) };
      return held({ ...acids, ...read, acid }, found, within);
    }),
    held(against("iodine-value", "iodineValue"), iodineValue, oil.iodineValue),
    held(against("saponification-value", "saponificationValue"), saponificationValue, oil.saponificationValue),
    heldAt(against("relative-density", "relativeDensity"), relativeDensity, oil.relativeDensity),
    heldAt(against("refractive-index", "refractiveIndex"), refractiveIndex, oil.refractiveIndex),
    ...(oil.tocols || tocols !== undefined ? [held(against("tocols", "tocols"), tocols, oil.tocols)] : []),
  ];
}

interface Question extends Pick<CertificateAnswer, "id" | "acid" | "temperature" | "standard" | "provenance"> {
  readonly path: string;
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

function held(
  { path, ...question }: Question,
  found: number | undefined,
  limits: Range | undefined,
): CertificateAnswer {
  if (found !== undefined) notNegative(found, `certificate.${path}`);
  const [min, max] = limits ? range(limits, `oil.${path}`) : [];
  const answer = {
    ...question,
    ...(found !== undefined && { figure: found }),
    ...(min !== undefined && max !== undefined && { limit: { min, max } }),
  };
  if (min === undefined || max === undefined)
    return { ...answer, verdict: "not-known", side: "none", reason: "range-not-read" };
  if (found === undefined) return { ...answer, verdict: "not-known", side: "none", reason: "no-figure" };
  // The rounding of a sum of isomers decides nothing.
  const slack = 1e-12 * found;
  const isBelow = found < min - slack;
  const isAbove = found > max + slack;
  return {
    ...answer,
    verdict: isBelow || isAbove ? "not-met" : "met",
    side: isBelow ? "below" : isAbove ? "above" : "none",
  };
}

function heldAt(
  question: Question,
  found: ValueAtTemperature | undefined,
  limits: readonly RangeAtTemperature[],
): CertificateAnswer {
  const path = `certificate.${question.path}`;
  const all = list(limits, `oil.${question.path}`).map((each, i) => {
    const at = `oil.${question.path}[${i}]`;
    const { range: within, temperature: warmth } = record(each, at);
    if (warmth !== undefined) temperature(warmth, `${at}.temperature`);
    return { range: range(within, `${at}.range`), temperature: warmth };
  });
  const [first] = all;
  if (found === undefined) {
    const shown = first?.temperature === undefined ? question : { ...question, temperature: first.temperature };
    return held(shown, undefined, first?.range);
  }
  const { value, temperature: warmth } = record(found, path);
  const there = { ...question, temperature: temperature(warmth, `${path}.temperature`) };
  const figure = finite(value, `${path}.value`);
  const same = all.find((each) => each.temperature === warmth);
  if (same || !first) return held(there, figure, same?.range);
  const { path: _, ...answer } = there;
  return { ...answer, figure, verdict: "not-known", side: "none", reason: "no-range-at-temperature" };
}

function provenanceOf(provenance: Provenance | undefined, path: string): Provenance {
  return provenance === "first-hand" || provenance === "second-hand" || provenance === "from memory"
    ? provenance
    : refuse("input", path, show(provenance), '"first-hand", "second-hand" or "from memory"');
}
