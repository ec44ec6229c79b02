import { fraction, list, positive, record, refuse } from "../guards.js";
import * as known from "./known.js";
import type { Formula, FormulaLine, Material } from "./types.js";

/**
 * The lines of a formula with one material replaced by another, everywhere it stands.
 *
 * At equal share the new material takes the old one's share. At equal active it takes the share that brings the same
 * active part, and the carrier makes up the difference:
 *
 * $$w_\mathrm{new} = w_\mathrm{old}\,\frac{s_\mathrm{old}}{s_\mathrm{new}}$$
 *
 * @param input.formula - A formula as `readFormula` gives it.
 * @param input.material - Key of the material to be replaced; it must stand in a line.
 * @param input.by - Key of the material that takes its place: one of the formula's materials, not yet in the same phase.
 * @param input.at - `"equal share"` or `"equal active"`.
 * @returns New lines whose shares sum to 1; `{ ...formula, lines }` is the new formula.
 * @throws CalculationError `input` for an unknown material or a replacement that is already there; `unreachable` where
 *   the carrier cannot make up the difference.
 * @source definition
 * @example
 * ```ts
 * import { readFormula, replaceMaterial } from "gelwright/formula";
 * const formula = readFormula({
 *   version: 1,
 *   name: "bench trial",
 *   materials: {
 *     weak: { name: "antioxidant 50 %", function: "antioxidant", strength: "50 %" },
 *     strong: { name: "antioxidant 80 %", function: "antioxidant", strength: "80 %" },
 *     oil: { name: "sunflower oil", function: "oil" },
 *   },
 *   phases: [{ name: "A", lines: [{ material: "weak", amount: "0.8 %" }, { material: "oil", amount: "q.s." }] }],
 * });
 * const lines = replaceMaterial({ formula, material: "weak", by: "strong", at: "equal active" });
 * lines.map((line) => line.massFraction); // => [0.005, 0.995]
 * ```
 */
export function replaceMaterial(input: {
  readonly formula: Formula;
  readonly material: string;
  readonly by: string;
  readonly at: "equal share" | "equal active";
}): readonly FormulaLine[] {
  const { formula, material, by, at } = record(input, "input", known.replaceMaterial);
  const { lines, materials } = record(formula, "formula");
  if (at !== "equal share" && at !== "equal active") refuse("input", "at", at, '"equal share" or "equal active"');
  const strengths = strengthOf(materials, material, "material") / strengthOf(materials, by, "by");
  const ratio = at === "equal share" ? 1 : strengths;
  const taken = new Set<string>();
  let surplus = 0;
  const replaced = list(lines, "formula.lines").map((line, i): FormulaLine => {
    const { material: name, phase, massFraction, carrier } = checked(line, `formula.lines[${i}]`);
    if (name === by) taken.add(phase);
    if (name !== material) return { material: name, phase, massFraction, carrier };
    surplus += massFraction * ratio - massFraction;
    return { material: by, phase, massFraction: massFraction * ratio, carrier };
  });
  const places = lines.filter((line) => line.material === material);
  if (places.length === 0) refuse("input", "material", material, "a material that stands in a line of the formula");
  for (const { phase } of places)
    if (taken.has(phase)) refuse("input", "by", by, `a material that does not stand in phase ${phase} already`);
  if (surplus === 0) return replaced;
  if (!replaced.some((line) => line.carrier && line.material !== by))
    refuse(
      "unreachable",
      "formula.lines",
      "no carrier beside the material",
      "a q.s. line that makes up the difference",
    );
  return replaced.map((line) => (line.carrier ? takeUp(line, surplus) : line));
}

function checked(line: FormulaLine, path: string): FormulaLine {
  const { material, phase, massFraction, carrier } = record(line, path);
  if (typeof material !== "string" || typeof phase !== "string" || typeof carrier !== "boolean")
    refuse("input", path, line, "a line with material, phase, massFraction and carrier");
  return { material, phase, massFraction: fraction(massFraction, `${path}.massFraction`), carrier };
}

function strengthOf(materials: Readonly<Record<string, Material>>, key: string, path: string): number {
  const isKey = typeof key === "string" && Object.hasOwn(record(materials, "formula.materials"), key);
  const material = isKey ? materials[key] : undefined;
  if (!material) return refuse("input", path, key, "the key of a material of the formula");
  return fraction(
    positive(material.strength, `formula.materials.${key}.strength`),
    `formula.materials.${key}.strength`,
  );
}

function takeUp(line: FormulaLine, surplus: number): FormulaLine {
  const massFraction = line.massFraction - surplus;
  if (massFraction < 0)
    refuse(
      "unreachable",
      "formula.lines",
      `a carrier of ${line.massFraction}`,
      `a carrier of ${surplus} at least, to make up the difference`,
    );
  return { ...line, massFraction };
}
