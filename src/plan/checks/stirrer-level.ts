import type { Check } from "../../formula/index.js";
import { vortexDepthMax } from "../../mixing/index.js";
import type { Job, Stirrer, Vessel } from "../job.js";
import { levelFrom } from "../level.js";
import { say } from "../say.js";
import type { Turn } from "../turning.js";

/** Below this Reynolds number no vortex forms: Ludwig 1995, after Rushton. */
const vortexReynoldsMin = 300;

const noHeight = "the height of the stirrer's upper edge is not stated";

/** What is stirred stands above the stirrer, in every step in which it turns. */
export function checkCovered(
  turning: readonly Turn[],
  { kind, topEdge, cover }: Stirrer,
  { vessel }: Job,
): readonly Check[] {
  // What follows the wall may stand out of the charge; where it may not, its edge is stated.
  if (topEdge === undefined && (kind === "anchor" || kind === "helical ribbon")) return [];
  const check = {
    id: "stirrer-covered",
    limit: topEdge === undefined ? "not stated" : `at least ${say.millimetres(topEdge + cover)}`,
    source: levelFrom(vessel),
  };
  const unknown = turning.find(({ level }) => typeof level === "string")?.level;
  const lowest = turning.reduce<{ readonly level: number; readonly where: string } | undefined>(
    (min, { level, where }) => (typeof level === "number" && !(min && min.level <= level) ? { level, where } : min),
    undefined,
  );
  const value = lowest ? `${say.millimetres(lowest.level)} in ${lowest.where}` : "not known";
  const short = topEdge !== undefined && lowest !== undefined && lowest.level < topEdge + cover;
  const why = topEdge === undefined ? noHeight : unknown;
  if (!short && why !== undefined)
    return [
      {
        ...check,
        verdict: "not known",
        statement: `Whether the charge covers the stirrer is not known: ${why}.`,
        value,
      },
    ];
  return [
    {
      ...check,
      verdict: short ? "not met" : "met",
      statement: short
        ? `The charge does not cover the stirrer in ${lowest.where}: it beats air in. Stir by hand until there is more, or set it lower.`
        : "The charge covers the stirrer wherever it turns.",
      value,
    },
  ];
}

/**
 * With baffles the charge does not turn as one piece, so that the bound of such a vortex says nothing: as a rule there
 * is then none down the middle, but how deep the surface is drawn in behind the baffles nobody says.
 */
function withBaffles(
  whirls: readonly Turn[],
  { count, width }: NonNullable<Vessel["baffles"]>,
): Pick<Check, "verdict" | "statement" | "value" | "source"> {
  const steps = say.places(whirls.map(({ where }) => where));
  return {
    verdict: "not known",
    statement: `Whether air is drawn down to the stirrer in ${steps} is not known: baffles keep the charge from whirling as one, and for what the surface draws in behind them there is no bound. Watch the surface, and stir more slowly if it dips.`,
    value: `${count} ${count === 1 ? "baffle" : "baffles"} of ${say.millimetres(width)}`,
    source:
      "no vortex below Re 300 (Ludwig 1995); that baffles keep one from forming down the middle is common practice, no source",
  };
}

/** No vortex reaches the stirrer. The deepest that there could be is known, the one that there is, is not. */
export function checkVortex(turning: readonly Turn[], stirrer: Stirrer, { vessel }: Job): readonly Check[] {
  const { topEdge } = stirrer;
  const check = {
    id: "no-air-down-the-vortex",
    limit: "above the upper edge of the stirrer",
    source: "bound from a forced vortex within a free one, no baffles; no vortex below Re 300 (Ludwig 1995)",
  };
  const whirls = turning.filter(({ stirred }) => typeof stirred === "string" || stirred.reynolds >= vortexReynoldsMin);
  if (vessel.baffles && whirls.length > 0) return [{ ...check, ...withBaffles(whirls, vessel.baffles) }];
  const worst = whirls
    .map(({ level, speed, where }) => ({
      where,
      depth: vortexDepthMax({ speed, impeller: stirrer, vessel }),
      above: typeof level === "number" && topEdge !== undefined ? level - topEdge : undefined,
    }))
    .reduce<{ where: string; depth: number; above: number | undefined } | undefined>((max, one) => {
      const room = ({ above, depth }: typeof one): number => (above ?? Number.NEGATIVE_INFINITY) - depth;
      return max && room(max) <= room(one) ? max : one;
    }, undefined);
  if (!worst)
    return [
      {
        ...check,
        verdict: "met",
        statement: "The charge is too thick for a vortex wherever it is stirred.",
        value: "Re below 300",
      },
    ];
  const { where, depth, above } = worst;
  const met = above !== undefined && depth <= above;
  return [
    {
      ...check,
      verdict: met ? "met" : "not known",
      statement: met
        ? "No vortex reaches the stirrer. Air that is folded in or poured in is not judged."
        : `Whether a vortex draws air down to the stirrer in ${where} is not known: ${
            above === undefined
              ? topEdge === undefined
                ? noHeight
                : "the level of the charge is not known"
              : above <= 0
                ? "the charge does not cover it."
                : "the deepest possible would reach it. Watch the surface, and stir more slowly if it dips."
          }${above === undefined ? "." : ""}`,
      value: `a dip of ${say.millimetres(depth)} at most${above === undefined || above <= 0 ? "" : `, ${say.millimetres(above)} of charge above it`}, in ${where}`,
    },
  ];
}
