// The jobs of docs/examples: their plans and sheets, then the plans of the jobs with one field taken away.
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import type { Result } from "./leaves.js";

/** What the run of a tip lends. */
export interface Tools {
  readonly root: string;
  readonly find: (call: string) => (...args: unknown[]) => unknown;
  readonly write: (result: Omit<Result, "leaves">, call: () => unknown) => Promise<void>;
}

type Draft = ReturnType<typeof JSON.parse>;
interface Job {
  readonly name: string;
  readonly example: string;
  readonly document: Draft;
}

/** Every scale of every example with every bench that it has. */
function jobsOf(root: string): Job[] {
  const folder = join(root, "docs/examples");
  const read = (example: string, file: string): Draft => JSON.parse(readFileSync(join(folder, example, file), "utf8"));
  return readdirSync(folder)
    .filter((example) => existsSync(join(folder, example, "formula.json")))
    .sort()
    .flatMap((example) => {
      const files = readdirSync(join(folder, example))
        .filter((file) => file.endsWith(".json"))
        .sort();
      const benches = files.filter((file) => file.startsWith("bench"));
      return files
        .filter((file) => file !== "formula.json" && !benches.includes(file))
        .flatMap((scale) =>
          benches.map((bench) => ({
            name: [example, scale, ...(bench === "bench.json" ? [] : [bench])].join(" ").replaceAll(".json", ""),
            example,
            document: {
              version: 1,
              formula: read(example, "formula.json"),
              bench: read(example, bench),
              ...read(example, scale),
            },
          })),
        );
    });
}

export async function planResults({ root, find, write }: Tools): Promise<void> {
  const plans = new Map<string, unknown[]>();
  for (const { name, example, document } of jobsOf(root)) {
    const plan = find("plan.runPlan")(document);
    plans.set(example, [...(plans.get(example) ?? []), plan]);
    await write({ group: "plans", id: name, call: "plan.runPlan" }, () => plan);
    await write({ group: "sheets", id: `${name} markdown` }, () => lines(find("sheet.toMarkdown")({ plan })));
    for (const table of ["weighing", "timeline", "checks", "additions"])
      await write({ group: "sheets", id: `${name} csv ${table}` }, () => lines(find("sheet.toCsv")({ plan, table })));
    await write({ group: "sheets", id: `${name} json`, call: "sheet.toJson" }, () =>
      JSON.parse(find("sheet.toJson")({ plan }) as string),
    );
  }
  for (const [example, of] of plans) {
    await write({ group: "sheets", id: `${example} scales` }, () =>
      lines(find("sheet.scalesToMarkdown")({ plans: of })),
    );
    await write({ group: "plans", id: `${example} compared`, call: "plan.comparePlans" }, () =>
      find("plan.comparePlans")({ plans: of }),
    );
  }
}

/** A line a leaf. */
function lines(text: unknown): string[] {
  return (text as string).split(/\r?\n/);
}

/** Each job without each of its fields: some lack an answer, some are refused. Fields are counted, not named. */
export async function damagedResults({ root, find, write }: Tools): Promise<void> {
  for (const { name, document } of jobsOf(root))
    for (const [i, path] of placesIn(document).entries())
      await write({ group: "damaged jobs", id: `${name} without field ${i}`, call: "plan.runPlan" }, () => {
        const draft = structuredClone(document);
        delete path.slice(0, -1).reduce((at, key) => at[key], draft)[path.at(-1) ?? ""];
        return find("plan.runPlan")(draft);
      });
}

function placesIn(at: unknown, path: readonly string[] = []): (readonly string[])[] {
  if (typeof at !== "object" || at === null) return [];
  return Object.entries(at).flatMap(([key, inner]) => [
    ...(Array.isArray(at) ? [] : [[...path, key]]),
    ...placesIn(inner, [...path, key]),
  ]);
}
