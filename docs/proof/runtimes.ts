import { readFileSync } from "node:fs";
import { neverRun, type RuntimesRecord } from "../../tests/runtimes/record.js";
import { root } from "../../tests/support/rooms.js";
import { table } from "./markdown.js";

/** Below this a difference is one of the last digits of a double. */
const lastDigits = 1e-14;

const inWords = (deviation: number): string =>
  deviation
    .toExponential(0)
    .replace("e-", " · 10⁻")
    .replace(/⁻(\d+)$/, (_, power: string) => `⁻${[...power].map((digit) => "⁰¹²³⁴⁵⁶⁷⁸⁹"[Number(digit)]).join("")}`);

/** The page *Runtimes*: what the inputs of all checks give in each, as `npm run runtimes` last found it. */
export function runtimesPage(): string {
  const { bound, runtimes } = JSON.parse(readFileSync(`${root}docs/proof/runtimes.json`, "utf8")) as RuntimesRecord;
  const notRun = neverRun(runtimes);
  const wrong = runtimes.filter(({ differing }) => Object.values(differing).some((off) => off > bound));
  if (wrong.length > 0)
    throw new Error(`${wrong.map(({ name }) => name).join(" and ")}: a result is off by more than ${bound}`);
  const beyond = [...new Set(runtimes.flatMap(({ differing }) => Object.keys(differing)))]
    .map((call) => ({ call, off: runtimes.map(({ differing }) => differing[call] ?? 0) }))
    .filter(({ off }) => Math.max(...off) > lastDigits)
    .sort((one, other) => Math.max(...other.off) - Math.max(...one.off));
  const names = runtimes.map(({ name, version }) => `${name} ${version}`);
  return [
    "# Runtimes",
    "",
    `The same inputs give the same figures everywhere, except for the last digits, because each engine has its own powers, logarithms and sines. The inputs of all checks and the two examples' plans were run in each runtime below, on the built package, and every number and word compared with those of Node (\`npm run runtimes\`); a runtime that was not installed at a later run keeps its last result. No word differed; a number may differ by at most ${inWords(bound)} of itself. A residual that is nothing but rounding counts as 0.`,
    "",
    ...table(
      ["runtime", "run on", "compared with", "results", "functions that differ", "largest difference"],
      runtimes.map(({ name, version, date, node, results, differing }) => [
        `${name} ${version}`,
        date,
        `Node ${node}`,
        String(results),
        String(Object.keys(differing).length),
        Object.keys(differing).length > 0 ? inWords(Math.max(...Object.values(differing))) : "none",
      ]),
      3,
    ),
    "",
    "## Functions that differ",
    "",
    "By more than 10⁻¹⁴, relative to the figure. Fits search for the smallest sum of squares, which is flat at its minimum, so they amplify differences in the last digit.",
    "",
    ...table(
      ["function", ...names],
      beyond.map(({ call, off }) => [
        `\`${call.replace(/^.*\./, "")}\``,
        ...off.map((one) => (one > 0 ? inWords(one) : "none")),
      ]),
      1,
    ),
    ...(notRun.length > 0 ? ["", `Never run: ${notRun.join(", ")}.`] : []),
  ].join("\n");
}
