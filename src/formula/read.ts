import { maxOf } from "../numeric/extremes.js";
import { type Draft, Findings, join } from "./document.js";
import { checkMaterial, materialOf } from "./material.js";
import type { MaterialDocument } from "./material-document.js";
import { endlessWay, open, type Premix, premixesOf } from "./premix.js";
import type { Read } from "./read-type.js";
import { formula as entry } from "./schema.js";
import { type Placed, shares } from "./shares.js";
import type { Formula, FormulaDocument, LineDocument, Material } from "./types.js";

/**
 * Reads a formula document: checks its structure and its content, corrects strengths, fills the q.s. line and opens
 * premixes.
 *
 * Lines in % and ppm are shares of the product; lines in parts or in masses divide what the shares leave; one q.s. line
 * takes the rest. An amount of the active part is divided by the strength of its material:
 *
 * $$w_\mathrm{supplied} = \frac{w_\mathrm{active}}{s}$$
 *
 * @param document - JSON or a `FormulaDocument`; quantities as text with their unit.
 * @returns The formula in the units of the kernels, its shares summing to 1.
 * @throws CalculationError `document`, naming every fault with its path at once: wrong shape, unknown material, line
 *   written twice, two q.s. lines, a negative q.s., a sum other than 100 %, mixed bases that leave the whole open,
 *   a premix that contains itself.
 * @source definition
 * @example
 * ```ts
 * import { readFormula } from "gelwright/formula";
 * const formula = readFormula({
 *   version: 1,
 *   name: "bench trial",
 *   materials: {
 *     former: { name: "gel former", function: "gel former" },
 *     oil: { name: "sunflower oil", function: "oil" },
 *     tocopherol: { name: "tocopherol in oil", function: "antioxidant", strength: "50 %" },
 *   },
 *   phases: [
 *     {
 *       name: "A",
 *       lines: [
 *         { material: "former", amount: "9 %" },
 *         { material: "tocopherol", amount: "0.2 %", as: "active" },
 *         { material: "oil", amount: "q.s." },
 *       ],
 *     },
 *   ],
 * });
 * formula.lines.map((line) => line.massFraction); // => [0.09, 0.004, 0.906]
 * ```
 */
export function readFormula(document: unknown): Formula {
  const findings = new Findings();
  const draft = findings.read(entry, document);
  const formula = draft && formulaFrom(draft, "", findings);
  findings.settle();
  return formula as Formula;
}

/** A formula of what was read: notes the faults of what needs several fields, and goes on. */
export function formulaFrom(draft: Draft<Read<FormulaDocument>>, at: string, findings: Findings): Formula {
  const materials: Record<string, Material> = {};
  for (const [key, material] of Object.entries(draft.materials ?? {}))
    if (material) {
      const path = join(join(at, "materials"), key);
      checkMaterial(material, path, findings);
      // Laws are made of what is sound. Of the rest nothing but its name is used until the faults are thrown.
      const { name = key, strength = 1 } = material;
      const sound = findings.holds(path) ? { name, strength, function: "other" } : material;
      materials[key] = materialOf(key, sound as Read<MaterialDocument>);
    }

  const known = new Set([...Object.keys(draft.materials ?? {}), ...Object.keys(draft.premixes ?? {})]);
  const strengthOf = ({ as, material = "" }: Draft<LineDocument>): number =>
    as === "active" && Object.hasOwn(materials, material) ? (materials[material] as Material).strength : 1;
  const premixes = new Map<string, Premix>();
  for (const [key, premix] of Object.entries(draft.premixes ?? {})) {
    const path = join(join(at, "premixes"), key);
    if (Object.hasOwn(draft.materials ?? {}, key))
      findings.note(path, `the name ${key}`, "a name that no material has", "duplicate");
    const entries = entriesOf(premix?.lines, path);
    checkNames(entries, known, at, findings);
    const { massFractions } = shares(entries, join(path, "lines"), strengthOf, findings);
    premixes.set(key, {
      name: premix?.name ?? key,
      lines: entries.map(({ line }, i) => ({
        material: line?.material ?? "",
        massFraction: massFractions[i] as number,
      })),
    });
  }
  const endless = endlessWay(premixes);
  if (endless && endless.length > 1)
    findings.note(join(at, "premixes"), endless.join(" → "), "premixes that do not contain themselves");
  else if (endless)
    findings.note(join(at, "premixes"), "premixes in premixes, more than 100 deep", "premixes at most 100 deep");

  // All phases share one whole, so their lines are summed together; each line keeps the path of its phase.
  const phases = (draft.phases ?? []).map((phase, i) => {
    const path = join(join(at, "phases"), i);
    const entries = entriesOf(phase?.lines, path);
    checkNames(entries, known, at, findings);
    return { name: phase?.name ?? "", path, entries };
  });
  const named = new Set<string>();
  for (const { name, path } of phases)
    if (named.size === named.add(name).size)
      findings.note(join(path, "name"), name, "a name that no other phase has", "duplicate");
  const entries = phases.flatMap((phase) => phase.entries.map((entry) => ({ ...entry, phase: phase.name })));
  const { massFractions, rest } = shares(entries, join(at, "phases"), strengthOf, findings);
  const carrier = rest >= 0 ? rest : massFractions.indexOf(maxOf(massFractions));
  const lines = entries.map(({ line, phase }, i) => ({
    material: line?.material ?? "",
    phase,
    massFraction: massFractions[i] as number,
    carrier: i === carrier,
  }));
  const opened = endless ? [] : open(lines, premixes);
  return {
    name: draft.name ?? "",
    materials,
    phases: phases.map((phase) => phase.name),
    lines: opened,
    ...(premixes.size > 0 && !endless && { premixes: premixesOf(lines, opened, premixes) }),
    claimNaturalOrigin: draft.claims?.naturalOrigin,
  };
}

function entriesOf(lines: Draft<readonly LineDocument[]> | undefined, path: string): readonly Placed[] {
  return (lines ?? []).map((line, i) => ({ line, path: join(join(path, "lines"), i) }));
}

function checkNames(entries: readonly Placed[], known: ReadonlySet<string>, at: string, findings: Findings): void {
  const homes = [join(at, "materials"), join(at, "premixes")];
  const seen = new Map<string, string>();
  for (const { line, path } of entries) {
    const name = line?.material;
    if (name === undefined) continue;
    if (!known.has(name))
      findings.unknownName(
        join(path, "material"),
        name,
        known,
        "the key of a material or a premix of this formula",
        homes,
      );
    const first = seen.get(name);
    if (first) findings.note(path, `${name} a second time`, `one line a material (the first is ${first})`, "duplicate");
    else seen.set(name, path);
  }
}
