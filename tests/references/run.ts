// Recomputes the checks by reference libraries with what is installed, and says in words what it could not run.
// Debian has the libraries in the versions that the checks name: apt install units python3-scipy python3-statsmodels
// python3-periodictable python3-iapws python3-fluids. The variable PYTHON names another interpreter. Then it computes
// the checks by independent methods again (`independent/`).
import { spawnSync } from "node:child_process";
import { type Check, compare, isRefusal } from "../support/check.js";
import { root } from "../support/rooms.js";
import { readChecks } from "../support/run-check.js";

interface Outcome {
  readonly value?: unknown;
  /** Why there is no value. */
  readonly none?: string;
}

const checks = readChecks()
  .flatMap((file) => file.checks)
  // A call that must be refused has no figure to compute.
  .filter((check) => check.kind === "reference library" && !isRefusal(check));

const isUnits = ({ source }: Check) => source.startsWith("GNU Units");

/** Runs GNU Units as the source of the check prints the call. */
function byUnits({ source, expected }: Check): Outcome {
  const [, from = "", to = ""] = /'([^']+)' '([^']+)'/.exec(source) ?? [];
  const { stdout, error } = spawnSync("units", ["-t", "-o", "%.17g", from, to], { encoding: "utf8" });
  if (error) return { none: "GNU Units is not installed" };
  const [field] = typeof expected === "object" && expected !== null ? Object.keys(expected) : [];
  return { value: field === undefined ? Number(stdout) : { [field]: Number(stdout) } };
}

/** Runs the recipes in Python, all at once. */
function byPython(some: readonly Check[]): Readonly<Record<string, Outcome>> {
  const python = process.env["PYTHON"] ?? "/usr/bin/python3";
  const input = JSON.stringify(some.map(({ id, source, inputs }) => ({ id, source, inputs })));
  const { stdout, stderr, status, error } = spawnSync(python, [`${root}tests/references/recompute.py`], {
    input,
    encoding: "utf8",
  });
  if (error || status !== 0)
    return Object.fromEntries(some.map(({ id }) => [id, { none: `Python: ${error ?? stderr}` }]));
  const { versions, results } = JSON.parse(stdout) as {
    readonly versions: Readonly<Record<string, string | null>>;
    readonly results: Readonly<Record<string, Outcome>>;
  };
  console.log(
    Object.entries(versions)
      .map(([name, version]) => `${name} ${version ?? "not installed"}`)
      .join(", "),
  );
  return results;
}

/** The part of what is expected that the library gives as well. */
function given(expected: unknown, value: unknown): unknown {
  if (typeof expected !== "object" || expected === null) return expected;
  const fields = value as Readonly<Record<string, unknown>> | undefined;
  if (Array.isArray(expected)) return expected.map((one, index) => given(one, fields?.[index]));
  return Object.fromEntries(
    Object.entries(expected)
      .filter(([key]) => fields?.[key] !== undefined)
      .map(([key, one]) => [key, given(one, fields?.[key])]),
  );
}

/** The library that a check names, without its version. */
const libraryOf = ({ source }: Check) =>
  /^(The constants and the function|1 less|[A-Za-z]+(?: Units)?)/.exec(source)?.[0] ?? "";

/** Libraries that neither Debian nor the registry of npm has, by how their sources begin. */
const elsewhere: readonly (readonly [RegExp, string])[] = [
  [/^fluids 1\.3/, "fluids 1.3"],
  [/^ht /, "ht"],
  [/^chemicals|^The constants and the function/, "chemicals"],
  [/^CoolProp/, "CoolProp"],
  [/^polykin/, "polykin"],
  [/^pychemengg|^1 less/, "pychemengg"],
  [/^miepython/, "miepython"],
  [/^aquasol/, "aquasol"],
  [/^FreeFluids/, "FreeFluids"],
  [/^agitcalc/, "agitcalc"],
  [/^OpenFOAM/, "OpenFOAM's own lines"],
  [/^MFiX/, "MFiX's own lines"],
  [/^Kratos/, "Kratos Multiphysics's own lines"],
  [/^A public script/, "a public script of viscosities"],
];

const python = byPython(checks.filter((check) => !isUnits(check)));
const missing = new Map<string, number>();
let agreed = 0;
let differed = 0;
for (const check of checks) {
  const { value, none } = isUnits(check) ? byUnits(check) : (python[check.id] ?? { none: "no answer" });
  if (none !== undefined) {
    const library = elsewhere.find(([start]) => start.test(check.source))?.[1];
    const why = library
      ? `${library} is in no registry that this script uses (Debian, npm)`
      : `${libraryOf(check)}: ${none}`;
    missing.set(why, (missing.get(why) ?? 0) + 1);
    continue;
  }
  // What a library prints again may differ in its last digits with its version; the check's own tolerance counts.
  const { relative = 0, absolute = 0 } = check.tolerance;
  const tolerance = { relative: Math.max(relative, 1e-9), absolute };
  const deviations = compare(value, { expected: given(check.expected, value), tolerance });
  const off = deviations.filter(({ holds }) => !holds);
  if (off.length === 0 && deviations.length > 0) agreed += 1;
  else {
    differed += 1;
    console.log(`${check.id}: ${JSON.stringify(off)}`);
  }
}
console.log(`${checks.length} checks by reference libraries: ${agreed} recomputed and agree, ${differed} differ`);
for (const [why, count] of missing) console.log(`${count} not run: ${why}`);

const others = readChecks()
  .flatMap((file) => file.checks)
  .filter(({ kind }) => kind === "independent method");
const { found, lost } = byIndependentMethods(others.map(({ id }) => id));
const off = others.filter((check) => found[check.id] !== undefined && !agrees(check, found[check.id]));
for (const { id, expected } of off) console.log(`${id}: ${JSON.stringify(found[id])} for ${JSON.stringify(expected)}`);
for (const id of lost) console.log(`${id}: no check has this id`);
console.log(
  `${others.length} checks by independent methods: ${Object.keys(found).length} computed again, ${off.length} differ`,
);
process.exitCode = differed + off.length + lost.length > 0 ? 1 : 0;

/** What the independent methods give by the id of their check, and the ids that no check has. */
function byIndependentMethods(ids: readonly string[]): {
  readonly found: Readonly<Record<string, unknown>>;
  readonly lost: readonly string[];
} {
  const python = process.env["PYTHON"] ?? "/usr/bin/python3";
  const { stdout, stderr, status } = spawnSync(python, [`${root}tests/references/independent/run.py`], {
    input: JSON.stringify(ids),
    encoding: "utf8",
  });
  if (status === 0) return JSON.parse(stdout) as ReturnType<typeof byIndependentMethods>;
  console.log(`the independent methods did not run: ${stderr}`);
  return { found: {}, lost: [] };
}

function agrees(check: Check, value: unknown): boolean {
  return compare(value, { expected: given(check.expected, value), tolerance: check.tolerance }).every(
    ({ holds }) => holds,
  );
}
