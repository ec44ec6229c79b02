// Changes the sources one place at a time and asks whether a test fails: `npm run mutants -- src/plan/judge.ts 5`.
import { parseArgs } from "node:util";
import { filesIn, testsOf } from "./files.js";
import { instrument, type Mutant } from "./instrumented.js";
import { keysOf, readReasons, readScores, type Score, shareOf, writeScores } from "./records.js";
import { shuffled } from "./shuffled.js";
import { prepareTrial } from "./trial.js";

const {
  positionals: [target = "", minutes = "10"],
  values,
} = parseArgs({
  allowPositionals: true,
  options: {
    seed: { type: "string", default: "1" },
    again: { type: "boolean", default: false },
    each: { type: "string", default: "60" },
    test: { type: "string", default: "30" },
    tests: { type: "string" },
    mutators: { type: "string" },
    first: { type: "string", default: "" },
    look: { type: "boolean", default: false },
    texts: { type: "boolean", default: false },
  },
});
const say = (line: string): void => console.error(line);
const end = performance.now() + Number(minutes) * 60_000;

const library = await instrument(filesIn(target));
const keys = keysOf(library.mutants);
const keyOf = (index: number): string => keys.get(index) as string;
const reasons = readReasons();
const scores = readScores();
const trial = await prepareTrial(testsOf(target, values.tests), library, 1000 * Number(values.test), say);
for (const name of trial.leftOut) say(`left out: ${name}`);

const found = new Map<string, Score>();
const scoreOf = (file: string): Score => {
  const before = scores[file];
  const fresh = { mutants: 0, tried: 0, killed: 0, stringsTried: 0, stringsKilled: 0, left: [] };
  const score = found.get(file) ?? (values.again && before ? { ...before, left: [...before.left] } : fresh);
  found.set(file, score);
  return score;
};
const mutators = values.mutators?.split(",");
const wanted = library.mutants.filter(({ index, file, mutator }) => {
  if (values.again) return scores[file]?.left.includes(keyOf(index));
  return mutators?.includes(mutator) ?? (values.texts || mutator !== "StringLiteral");
});
if (!values.again)
  for (const { file, mutator } of library.mutants) if (mutator !== "StringLiteral") scoreOf(file).mutants += 1;
say(`${library.mutants.length} mutants, ${wanted.length} to try on ${trial.tests} tests`);
const first = values.first.split(",");
const isFirst = ({ mutator }: Mutant): boolean => first.includes(mutator);
const order = [...shuffled(wanted, Number(values.seed))].sort((a, b) => Number(isFirst(b)) - Number(isFirst(a)));
const byMutator = new Map<string, { tried: number; killed: number }>();
let tried = 0;
for (const mutant of order) {
  if (performance.now() > end) break;
  const score = scoreOf(mutant.file);
  const key = keyOf(mutant.index);
  const outcome = await trial.try(mutant, 1000 * Number(values.each));
  tried += 1;
  if (tried % 100 === 0) say(`${tried} tried`);
  const isKilled = typeof outcome === "object";
  const counts = byMutator.get(mutant.mutator) ?? { tried: 0, killed: 0 };
  byMutator.set(mutant.mutator, { tried: counts.tried + 1, killed: counts.killed + Number(isKilled) });
  const isText = mutant.mutator === "StringLiteral";
  if (!values.again) score[isText ? "stringsTried" : "tried"] += 1;
  if (isKilled) {
    score[isText ? "stringsKilled" : "killed"] += 1;
    score.left = score.left.filter((one) => one !== key);
  } else {
    if (!score.left.includes(key)) score.left.push(key);
    console.log(`${mutant.file}:${mutant.line} ${outcome}${reasons[key] ? " (explained)" : ""} ${key}`);
  }
}
for (const score of found.values()) score.left.sort();
const broken = await trial.broken();
if (broken.length > 0) throw new Error(`these fail without a mutant by now, so nothing is kept: ${broken.join(", ")}`);
if (!values.look) writeScores({ ...readScores(), ...Object.fromEntries(found) });
const { value, min, line } = shareOf(target, { ...scores, ...Object.fromEntries(found) }, reasons);
for (const [mutator, counts] of byMutator) console.log(`${mutator}: ${counts.killed} of ${counts.tried} killed`);
console.log(`${tried} tried. ${line}`);
if (value < min) {
  console.log(`below the ${100 * min} % that is asked for`);
  process.exitCode = 1;
}
