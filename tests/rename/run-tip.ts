// Runs one checkout by its own sources and writes every result down, leaf by leaf:
// `tsx run-tip.ts CHECKOUT OUTPUT`.
import { createWriteStream, existsSync, readdirSync, readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { pathToFileURL } from "node:url";
import { writeExampleModules } from "./examples.js";
import { damagedResults, planResults, type Tools } from "./jobs.js";
import { leavesOf, outcomeOf, type Result } from "./leaves.js";

const [root = "", output = ""] = process.argv.slice(2);
type Rooms = Record<string, Record<string, unknown>>;
type Call = (...args: unknown[]) => unknown;

const load = async <T>(file: string): Promise<T> => (await import(pathToFileURL(join(root, file)).href)) as T;
const json = (file: string): unknown => JSON.parse(readFileSync(join(root, file), "utf8"));
const rooms = await load<Rooms>("src/index.ts");
const out = createWriteStream(output);

async function write(result: Omit<Result, "leaves">, call: () => unknown): Promise<void> {
  out.write(`${JSON.stringify({ ...result, leaves: leavesOf(await outcomeOf(call)) })}\n`);
}

function find(call: string): Call {
  const [room = "", name = ""] = call.split(".");
  const found = rooms[room]?.[name];
  if (typeof found !== "function") throw new Error(`no public function ${call}`);
  return found as Call;
}

async function checks(): Promise<void> {
  interface Check {
    readonly id: string;
    readonly call: string;
    readonly inputs: unknown;
  }
  for (const file of readdirSync(join(root, "tests/checks")).sort())
    for (const { id, call, inputs } of json(`tests/checks/${file}`) as Check[])
      await write({ group: "checks", id, call }, () => find(call)(...(Array.isArray(inputs) ? inputs : [inputs])));
}

/** Whatever is public and no function: tables, lists, correlations. */
async function constants(): Promise<void> {
  for (const [room, members] of Object.entries(rooms))
    for (const [name, value] of Object.entries(typeof members === "object" ? members : {}))
      if (typeof value !== "function")
        await write({ group: "constants", id: `${room}.${name}`, call: `${room}.${name}` }, () => value);
}

/** Every public function with the arguments that its tests know to be valid. */
async function validInputs(): Promise<void> {
  for (const [room, members] of Object.entries(rooms)) {
    const file = `tests/${room.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`)}/valid-inputs.ts`;
    if (typeof members !== "object" || !existsSync(join(root, file))) continue;
    const { validInputs } = await load<{ validInputs: Record<string, readonly (readonly unknown[])[]> }>(file);
    for (const [name, cases] of Object.entries(validInputs))
      for (const [i, args] of cases.entries()) {
        const call = `${room}.${name}`;
        await write({ group: "valid inputs", id: `${call} ${i}`, call }, async () => {
          const result = find(call)(...args);
          return typeof result === "function" ? { at: [1, 36.6, 1e-3].map((x) => (result as Call)(x)) } : result;
        });
      }
  }
}

async function examples(): Promise<void> {
  const { allBlocks } = await load<{ allBlocks: () => Parameters<typeof writeExampleModules>[1] }>(
    "tests/examples/write.ts",
  );
  const text = (file: string) => readFileSync(join(root, file), "utf8");
  const folder = join(dirname(output), "examples");
  const count = new Map<string, number>();
  for (const { place, module } of writeExampleModules(root, allBlocks(), folder, text))
    for (const value of await recordedBy(module)) {
      const number = count.get(place) ?? 0;
      count.set(place, number + 1);
      await write({ group: "examples", id: `${place} ${number}`, block: module }, () => value);
    }
}

/** What each statement of an example gives, whole, and what they print. */
async function recordedBy(module: string): Promise<unknown[]> {
  const { run } = (await import(pathToFileURL(module).href)) as {
    run: (record: (value: unknown) => unknown, attempt: typeof outcomeOf) => Promise<void>;
  };
  const values: unknown[] = [];
  const printed: string[] = [];
  const { log } = console;
  console.log = (...words) => void printed.push(words.join(" "));
  const outcome = await outcomeOf(() =>
    run((value) => {
      values.push(structured(value));
      return value;
    }, outcomeOf),
  );
  console.log = log;
  return [...values, ...(outcome === undefined ? [] : [outcome]), ...(printed.length > 0 ? [printed] : [])];
}

/** As the value was then: an example may change it afterwards. */
function structured(value: unknown): unknown {
  try {
    return structuredClone(value);
  } catch {
    return value;
  }
}

const tools: Tools = { root, find, write };
await checks();
await constants();
await validInputs();
await examples();
await planResults(tools);
await damagedResults(tools);
out.end();
