import { fuzzed, targets } from "./calls.js";
import { mistold, soundDocuments } from "./documents.js";

/**
 * `npm run fuzz -- 1000000 100000 1`: the number of calls of all public functions, with two or three damages each, the
 * number of documents with planted faults, and the seed. Each finding is printed with the seed and the number that bring it back.
 */
const [calls = 1_000_000, documents = 100_000, seed = 1] = process.argv.slice(2).map(Number);

const round = 20;
const findingsMax = 5;
const found = new Map<string, number>();
const print = (name: string, what: string): void => {
  const count = (found.get(name) ?? 0) + 1;
  found.set(name, count);
  if (count <= findingsMax) console.log(what);
};

const sound = soundDocuments();
for (let number = 0; number < documents; number++) {
  const one = sound[number % sound.length] as (typeof sound)[number];
  const what = mistold(one, seed, number);
  if (number > 0 && number % 5000 === 0) console.error(`${number} documents`);
  if (what !== undefined) print(what.replace(/^.*?faults at /, "").replace(/\d+/g, ""), what);
}
const wrongDocuments = [...found.values()].reduce((sum, count) => sum + count, 0);
console.log(`${documents} documents, seed ${seed}: ${wrongDocuments} with findings`);

const all = await targets();
const state = all.map((target) => ({ target, made: 0, seconds: 0, slowest: 0 }));
let made = 0;
let answered = 0;
// A function that has had its share of the time waits until all have: plans take a thousand times as long as kernels.
for (let share = 0.25; made < calls; share *= 2)
  for (let any = true; any && made < calls; ) {
    any = false;
    for (const one of state) {
      if (made >= calls || (one.seconds > share && one.made > 0)) continue;
      any = one.made < 4000 * share * 4 || any;
      const start = performance.now();
      const { answered: some, broken } = fuzzed(one.target, one.made, round, seed);
      answered += some;
      for (const what of broken) print(one.target.name, what);
      const taken = (performance.now() - start) / 1000;
      one.seconds += taken;
      one.slowest = Math.max(one.slowest, taken / round);
      one.made += round;
      made += round;
      if (made % 50_000 === 0) console.error(`${made} calls, ${answered} answered`);
    }
  }
const broken = [...found.values()].reduce((sum, count) => sum + count, 0) - wrongDocuments;
const fewest = Math.min(...state.map((one) => one.made));
console.log(
  `${made} calls of ${all.length} functions, ${fewest} or more of each, seed ${seed}: ${answered} answered, the others refused, ${broken} with findings`,
);
for (const one of [...state].sort((a, b) => b.slowest - a.slowest).slice(0, 10))
  console.log(
    `${one.target.name}: ${one.made} calls, ${((1000 * one.seconds) / one.made).toFixed(2)} ms a call, slowest twenty ${(1000 * one.slowest).toFixed(1)} ms a call`,
  );
if (found.size > 0) process.exitCode = 1;
