import { type MeasuredCase, measuredCases } from "../../tests/measured/cases.js";
import { inUncertainties } from "../../tests/measured/measured.js";
import { measuredDeviations } from "../plots/measured-deviations.js";
import { table } from "./markdown.js";

const within = (one: MeasuredCase) => one.points.filter((point) => Math.abs(inUncertainties(point, one)) <= 2).length;

const share = (found: number, of: number) => `${found} of ${of}, ${Math.round((100 * found) / of)} %`;

function percents({ points }: MeasuredCase): { readonly mean: string; readonly rms: string } {
  const off = points.map(({ measured, ours }) => 100 * (ours / measured - 1));
  const mean = off.reduce((sum, one) => sum + one, 0) / off.length;
  const rms = Math.sqrt(off.reduce((sum, one) => sum + one * one, 0) / off.length);
  const digits = rms < 0.1 ? 3 : 1;
  return { mean: `${mean > 0 ? "+" : ""}${mean.toFixed(digits)} %`, rms: `${rms.toFixed(digits)} %` };
}

function rowOf(one: MeasuredCase): string[] {
  const { title, source, read, ours, uncertainty, tells, bibliography } = one;
  const { mean, rms } = percents(one);
  return [
    `**${title}**<br>${tells}<br><small>Measured: ${source} (${read}, [${bibliography}](bibliography.md)).<br>Ours: ${ours}.<br>Uncertainty: ${uncertainty.from} (${uncertainty.kind}).</small>`,
    mean,
    rms,
    share(within(one), one.points.length),
  ];
}

/** How many points of the cases of one kind lie within two standard uncertainties. */
function sum(cases: readonly MeasuredCase[], kind: "stated" | "judged"): string {
  const some = cases.filter(({ uncertainty }) => uncertainty.kind === kind);
  return share(
    some.reduce((total, one) => total + within(one), 0),
    some.reduce((total, one) => total + one.points.length, 0),
  );
}

/** The section on measured cases: what others measured, and our figure without any tuning. */
export function measuredSection(): readonly string[] {
  const cases = measuredCases();
  const { name, title } = measuredDeviations();
  return [
    "## Measured cases",
    "",
    "Published measurements on a liquid, a vessel or a particle, each point beside our figure. Nothing is tuned to the points that are compared; if a law is fitted, it is fitted to other points of the same series, and the case says which.",
    "",
    `![${title}](${name}.svg)`,
    "",
    `Nine points in ten should lie within two standard uncertainties. Where the uncertainty was stated without these points in view it is ${sum(cases, "stated")}: glycerin and water, spheres and cooling hold what is said of them, the density of fats by Choi and Okos does not hold for oils that are hot. Where we judged it ourselves with the points known it is ${sum(cases, "judged")}: rules that blend viscosities without a measured blend are not to be trusted to 5 %.`,
    "",
    '<div class="proof">',
    "",
    ...table(["case", "mean", "root mean square", "within two uncertainties"], cases.map(rowOf), 1),
    "",
    "</div>",
    "",
    "Searched for and not found as points: a torque or power curve of an anchor in a shear-thinning liquid, turbidity of an emulsion against its composition, water activity of glycerin and water from 0.27 to 0.5, rates of evaporation from a liquid with its wind and size, a series of peroxide values, a yield stress of packed droplets, a stirred vessel that cools. Abstracts of such work were found, tables were not.",
  ];
}
