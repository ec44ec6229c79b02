import type { ScaledBatch } from "../batch/index.js";
import { type Draft, type Findings, join } from "../formula/document.js";
import { refuse } from "../guards.js";
import { increment, multiple } from "../numeric/decimal.js";
import { massOf } from "./contents.js";

/** How much of its phase a step charges. */
export interface PortionDocument {
  /** Of the phase, where it goes in in parts; default all of it, or what earlier parts leave. */
  readonly share?: number;
  /** The same as a mass of one lot [kg]. */
  readonly mass?: number;
}

/** A step as far as it charges something. */
interface Charging extends PortionDocument {
  readonly do: string;
  readonly phase?: string;
}

/** What one step charges of a phase: masses in kg, in steps of the balances. */
export interface Portion {
  readonly phase: string;
  /** Which part of the phase it is, from 1, and of how many. */
  readonly number: number;
  readonly count: number;
  readonly lines: readonly { readonly material: string; readonly mass: number }[];
}

/** A step that charges a phase, and its place among the steps. */
interface Placed {
  readonly step: Charging & { readonly phase: string };
  readonly place: number;
}

/** Sums of shares are a few bits off. */
const slack = 1e-9;

/** The steps that charge, phase by phase. */
function chargesByPhase(steps: readonly (Draft<Charging> | undefined)[]): ReadonlyMap<string, readonly Placed[]> {
  const found = new Map<string, Placed[]>();
  steps.forEach((step, place) => {
    const { phase } = step ?? {};
    if (phase === undefined) return;
    found.set(phase, [...(found.get(phase) ?? []), { step: step as Placed["step"], place }]);
  });
  return found;
}

function takesRest({ step: { share, mass } }: Placed): boolean {
  return share === undefined && mass === undefined;
}

/** The parts of a phase have to make up the whole of it: by their shares, or with a last one that takes the rest. */
export function checkPortions(steps: readonly (Draft<Charging> | undefined)[], findings: Findings): void {
  const at = (place: number, field: string): string => join(join("process.steps", place), field);
  for (const [phase, parts] of chargesByPhase(steps)) {
    // A part that could not be read says nothing about the others.
    if (parts.some(({ place }) => findings.holds(join("process.steps", place)))) continue;
    const whole = parts.findIndex(takesRest);
    const after = whole < 0 ? undefined : parts[whole + 1];
    if (after) {
      findings.note(
        at(after.place, "phase"),
        phase,
        "a phase that was not charged before, or all its parts but the last with a share or a mass",
        "duplicate",
      );
      continue;
    }
    const last = parts.at(-1);
    const shares = parts.reduce((sum, { step: { share = 0 } }) => sum + share, 0);
    if (!last) continue;
    if (takesRest(last)) {
      if (shares > 1 - slack)
        findings.note(at(last.place, "phase"), phase, "a phase of which earlier parts leave something");
    } else if (parts.some(({ step }) => step.mass !== undefined))
      findings.note(
        at(last.place, last.step.mass === undefined ? "share" : "mass"),
        `a last part of ${phase} with an amount`,
        "a last part without share and mass, which takes the rest",
      );
    else if (Math.abs(shares - 1) > slack)
      findings.note(
        at(last.place, "share"),
        `shares of ${phase} that add up to ${Number((100 * shares).toPrecision(12))} %`,
        "shares that add up to 100 %, or a last part without one, which takes the rest",
      );
  }
}

/** The parts that are stated as masses have to leave something of the phase as it is weighed. */
export function fitPortions(steps: readonly Charging[], { lot }: ScaledBatch): void {
  for (const [phase, parts] of chargesByPhase(steps)) {
    const weighed = massOf(lot.lines.filter((line) => line.phase === phase));
    const stated = parts.filter(({ step }) => step.mass !== undefined).at(-1);
    const sum = parts.reduce((total, { step: { share = 0, mass = 0 } }) => total + share * weighed + mass, 0);
    if (stated && !(sum < weighed))
      refuse(
        "unreachable",
        `process.steps[${stated.place}].mass`,
        `parts of ${phase} that add up to ${sum} kg`,
        `less than a lot holds of it, ${weighed} kg`,
      );
  }
}

/** What each step charges, by its place; nothing where a step charges nothing. The parts of a line add up to it to the balance's last digit. */
export function portionsOf(steps: readonly Charging[], { lot }: ScaledBatch): readonly (Portion | undefined)[] {
  const found: (Portion | undefined)[] = steps.map(() => undefined);
  for (const [phase, parts] of chargesByPhase(steps)) {
    const lines = lot.lines.filter((line) => line.phase === phase);
    const weighed = massOf(lines);
    const stated = parts.map(({ step: { share, mass } }) => share ?? (mass === undefined ? undefined : mass / weighed));
    const rest = 1 - stated.reduce<number>((sum, share = 0) => sum + share, 0);
    let before = 0;
    parts.forEach(({ place }, i) => {
      const after = i === parts.length - 1 ? 1 : before + (stated[i] ?? rest);
      found[place] = {
        phase,
        number: i + 1,
        count: parts.length,
        lines: lines.map((line) => ({
          material: line.material,
          mass: parts.length === 1 ? line.mass : stepsBetween(line, before, after),
        })),
      };
      before = after;
    });
  }
  return found;
}

/** What of a weighed line lies between two shares of it, in whole steps of its balance [kg]. */
export function stepsBetween(
  { mass, increment: step }: { readonly mass: number; readonly increment: number },
  from: number,
  to: number,
): number {
  const steps = Math.round(mass / step);
  const upTo = (share: number): number => Math.round(steps * Math.min(1, share));
  return multiple(upTo(to) - upTo(from), increment(step, "increment"), "portion");
}
