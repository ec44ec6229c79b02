// The lines of a formula as one list: phase, material, what it is, amount. What may stand in each field says the schema.

import { button, made } from "../in-page/made.js";
import { at, join, put } from "../in-page/paths.js";
import type { Context } from "./form-context.js";
import { fieldAt } from "./form-field.js";
import { opening } from "./form-opening.js";
import { keyOf, phaseFields, referencesTo, withKey } from "./references.js";
import { begun, saidOf, schemaAt } from "./schema.js";

interface Line {
  readonly material: string;
  readonly [field: string]: unknown;
}

interface Phase {
  readonly name: string;
  readonly lines: readonly Line[];
}

interface Formula {
  readonly materials: Readonly<Record<string, Readonly<Record<string, unknown>>>>;
  readonly premixes?: Readonly<Record<string, Readonly<Record<string, unknown>>>>;
  readonly phases: readonly Phase[];
  readonly [field: string]: unknown;
}

const formulaAt = "formula";

/** Whether the formula of a document has the shape that its lines are drawn from; else the form shows its parts one by one. */
export function hasLines(document: unknown): boolean {
  const phases = at(document, "formula.phases");
  const isNamed = (value: unknown): boolean => typeof value === "object" && value !== null;
  return (
    Array.isArray(phases) &&
    isNamed(at(document, "formula.materials")) &&
    phases.every(
      (phase) => isNamed(phase) && Array.isArray((phase as Phase).lines) && (phase as Phase).lines.every(isNamed),
    )
  );
}

/** As it stands when a button is pressed: fields are edited without drawing the lines anew. */
const formulaOf = (context: Context) => at(context.document(), formulaAt) as Formula;

/** The lines of all phases, one row each, and a button for another; the names of the phases. */
export function linesOf(context: Context): HTMLElement[] {
  const formula = formulaOf(context);
  const rows = formula.phases.flatMap((phase, i) => phase.lines.map((line, j) => row(context, formula, i, line, j)));
  const amount = schemaAt(context.schema, context.document(), "formula.phases[0].lines[0].amount");
  const said = made("p", "hint", `Amount: ${saidOf(amount ?? {}).hint}`);
  const names = opening(context, "formula.phases", {
    title: "Names of the phases",
    gist: formula.phases.map(({ name }) => name).join(", "),
    isAside: true,
    draw: () =>
      formula.phases.map((_, i) => {
        const path = `formula.phases[${i}].name`;
        return fieldAt(context, schemaAt(context.schema, context.document(), path) ?? {}, path, {
          label: `Phase ${i + 1}`,
          settle: (to) => callPhase(context, path, to),
        });
      }),
  });
  return [said, ...rows, button("Add a line", () => add(context)), names];
}

const partOf = ({ materials }: Formula, key: string) => (key in materials ? "materials" : "premixes");

/** Where the material or the premix of a line stands. */
function thingAt(context: Context, path: string): string {
  const key = String(at(context.document(), join(path, "material")));
  return join(`formula.${partOf(formulaOf(context), key)}`, key);
}

/** What the material or the premix of a line is called. */
function nameAt(context: Context, path: string): string {
  const { name = at(context.document(), join(path, "material")) } = (at(context.document(), thingAt(context, path)) ??
    {}) as { readonly name?: unknown };
  return String(name);
}

function row(context: Context, formula: Formula, i: number, line: Line, j: number): HTMLElement {
  const path = `formula.phases[${i}].lines[${j}]`;
  const part = partOf(formula, line.material);
  const thing = thingAt(context, path);
  const name = nameAt(context, path);
  const number = formula.phases.slice(0, i).reduce((count, { lines }) => count + lines.length, j) + 1;
  const field = (at: string, options: Parameters<typeof fieldAt>[3]) =>
    fieldAt(context, schemaAt(context.schema, context.document(), at) ?? {}, at, { hinted: false, ...options });
  const group = made("div", "line");
  group.role = "group";
  group.setAttribute("aria-label", `Line ${number}: ${name}`);
  const fault = made("p", "fault");
  context.hold(path, { fault });
  const others = Object.entries({ ...formula.materials, ...formula.premixes }).filter(([key]) => key !== line.material);
  const phase = fieldAt(
    context,
    { type: "string", enum: [...formula.phases.map(({ name: one }) => one), newPhase] },
    `formula.phases[${i}].name`,
    { label: "Phase", hinted: false, settle: (to) => moveTo(context, i, j, to) },
  );
  const fields = [
    phase,
    field(join(path, "material"), {
      label: "Material",
      value: name,
      names: others.map(([, other]) => String(other["name"])),
      settle: (to) => {
        call(context, path, to);
        group.setAttribute("aria-label", `Line ${number}: ${nameAt(context, path)}`);
      },
    }),
    ...(part === "materials"
      ? [
          field(join(thing, "function"), {
            label: "What it is",
            goesTo: () => join(thingAt(context, path), "function"),
          }),
        ]
      : []),
    field(join(path, "amount"), {}),
    ...("as" in line || at(context.document(), join(thing, "strength")) !== undefined
      ? [field(join(path, "as"), { label: "Amount as", optional: true })]
      : []),
  ];
  // What is wrong has the width of the line.
  const faults = fields.flatMap((one) => [...one.querySelectorAll(".fault")]);
  group.append(
    ...fields,
    button("×", () => remove(context, i, j), `Remove line ${number}`),
    fault,
    ...faults,
  );
  return group;
}

/** A name that the formula has means that material; any other renames the one of this line. */
function call(context: Context, path: string, name: string): void {
  const { materials, premixes = {} } = formulaOf(context);
  const key = String(at(context.document(), join(path, "material")));
  const all = { ...materials, ...premixes };
  const [known] =
    Object.entries(all).find(([one, { name: its }]) => one !== key && (its === name || one === name)) ?? [];
  if (known !== undefined) {
    context.edit(join(path, "material"), known);
    context.redrawSoon();
    return;
  }
  const part = partOf(formulaOf(context), key);
  const before = nameAt(context, path);
  context.edit(join(thingAt(context, path), "name"), name);
  const to = keyOf(name);
  // A key that was made of the name follows it; one that an author chose stays.
  const isMade = key === keyOf(before) || /^material\d+$/.test(key);
  if (!isMade || to === "" || to === key || to in all) return;
  const isSeen = [...context.opened].some((one) => !one.startsWith("formula.phases"));
  context.replace(withKey(context.document(), part, key, to));
  // What is open may show the key. The lines themselves do not, and whoever types on is not to be disturbed.
  if (isSeen) context.redrawSoon();
}

/** Another name for a phase, here and wherever the job refers to it; an empty one is not taken. */
function callPhase(context: Context, path: string, to: string): void {
  const before = String(at(context.document(), path));
  const names = formulaOf(context).phases.map(({ name }) => name);
  const isOnly = names.filter((name) => name === before).length === 1 && !names.includes(to);
  if (to.trim() !== "")
    for (const one of isOnly ? referencesTo(context.document(), phaseFields, before) : [path]) context.edit(one, to);
  context.redrawSoon();
}

const newPhase = "another phase";

/** Puts a line into another phase, or begins one with it; a phase without lines goes. */
function moveTo(context: Context, i: number, j: number, to: string): void {
  const { phases } = formulaOf(context);
  const moved = phases[i]?.lines[j];
  if (!moved) return;
  const left = phases.map((phase, at) => (at === i ? { ...phase, lines: without(phase.lines, j) } : phase));
  const name = to === newPhase ? freeName(phases.map((phase) => phase.name)) : to;
  const all = to === newPhase ? [...left, { name, lines: [] }] : left;
  const index = all.findIndex((phase) => phase.name === name);
  const changed = all
    .map((phase, at) => (at === index ? { ...phase, lines: [...phase.lines, moved] } : phase))
    .filter(({ lines }) => lines.length > 0);
  const at = changed.findIndex((phase) => phase.name === name);
  const focus = `formula.phases[${at}].lines[${(changed[at]?.lines.length ?? 1) - 1}].material`;
  context.rebuild(put(context.document(), "formula.phases", changed), focus);
}

/** The first letter that no phase has. */
function freeName(taken: readonly string[]): string {
  const letters = Array.from({ length: 26 }, (_, i) => String.fromCharCode(65 + i));
  return letters.find((letter) => !taken.includes(letter)) ?? `phase ${taken.length + 1}`;
}

/** Another line at the end, of a material of its own until it is given the name of another. */
function add(context: Context): void {
  const formula = formulaOf(context);
  const taken = { ...formula.materials, ...formula.premixes };
  let number = Object.keys(taken).length + 1;
  while (`material${number}` in taken) number++;
  const key = `material${number}`;
  const begin = (path: string) => begun(schemaAt(context.schema, {}, path) ?? {}) as object;
  const material = { ...begin("formula.materials.any"), name: `material ${number}`, function: "oil" };
  const line = { ...begin("formula.phases[0].lines[0]"), material: key } as unknown as Line;
  const phases = formula.phases.length === 0 ? [{ name: "A", lines: [] }] : formula.phases;
  const last = phases.length - 1;
  const changed = {
    ...formula,
    materials: { ...formula.materials, [key]: material },
    phases: phases.map((phase, i) => (i === last ? { ...phase, lines: [...phase.lines, line] } : phase)),
  };
  const place = `formula.phases[${last}].lines[${phases[last]?.lines.length ?? 0}].material`;
  context.rebuild(put(context.document(), formulaAt, changed), place);
}

/** Takes a line away, with its phase if it was the last; the material stays among the materials. */
function remove(context: Context, i: number, j: number): void {
  const phases = formulaOf(context)
    .phases.map((phase, at) => (at === i ? { ...phase, lines: without(phase.lines, j) } : phase))
    .filter(({ lines }) => lines.length > 0);
  context.rebuild(put(context.document(), "formula.phases", phases), "formula.phases[0].lines[0].material");
}

const without = <T>(all: readonly T[], index: number): readonly T[] => all.filter((_, i) => i !== index);
