import { existsSync, readFileSync } from "node:fs";
import { pathToFileURL } from "node:url";
import {
  answerQuestions,
  type Change,
  type PreparedJob,
  planSeries,
  prepareJob,
  runPlan,
  runPrepared,
} from "gelwright/plan";
import { toMarkdown } from "gelwright/sheet";
import { medians, readable } from "./speed.js";
import { table } from "./table.js";

const examples = [
  { name: "cuticle-gel", scale: "beaker" },
  { name: "cuticle-gel", scale: "kettle" },
  { name: "scrub-gel", scale: "beaker" },
  { name: "scrub-gel", scale: "vessel" },
];

/** One example's job, as a checkout writes it; the benches run from the root of ours. */
function jobDocument(name: string, scale: string, checkout = "."): unknown {
  const read = (file: string): object =>
    JSON.parse(readFileSync(`${checkout}/docs/examples/${name}/${file}.json`, "utf8"));
  return { version: 1, formula: read("formula"), bench: read("bench"), ...read(scale) };
}

/** What an earlier build exports of its plan, and how its examples are read: its documents may have had other names. */
interface Earlier {
  readonly runPlan: (document: unknown) => unknown;
}

/** The checkout of an earlier version with its build, to be timed in the same process; none unless named. */
const earlierCheckout = process.env["GELWRIGHT_EARLIER"];

/** Another duration for the last step that states one. */
function lastDuration({ steps }: PreparedJob): Change {
  const step = Math.max(...steps.map((one, i) => ("for" in one && one.for !== undefined ? i + 1 : 0)));
  return { change: "step", step, field: "for", value: 660 };
}

/** What a plan takes from text, prepared, with one change, and of it only the answers; beside an earlier build's whole plan. */
export async function planTable(): Promise<string> {
  const entry = earlierCheckout && `${earlierCheckout}/dist/node/plan.js`;
  const earlier = entry && existsSync(entry) ? ((await import(pathToFileURL(entry).href)) as Earlier) : undefined;
  const rows: (readonly string[])[] = [];
  for (const { name, scale } of examples) {
    const document = jobDocument(name, scale);
    const prepared = prepareJob(document);
    const plan = runPrepared({ prepared });
    const parts: Record<string, () => unknown> = {
      "from text": () => runPlan(document),
      "read and prepared": () => prepareJob(document),
      "from a prepared job, again": () => runPrepared({ prepared }),
      "with the room changed": () => runPrepared({ prepared, changes: [{ change: "room", value: 23 }] }),
      "with the last duration of a step changed": () => runPrepared({ prepared, changes: [lastDuration(prepared)] }),
      "one answer, with the room changed": () =>
        answerQuestions({ prepared, questions: ["delivered"], changes: [{ change: "room", value: 23 }] }),
      "answers alone": () => answerQuestions({ prepared }),
      "one answer": () => answerQuestions({ prepared, questions: ["delivered"] }),
      series: () => planSeries({ prepared }),
      "batch sheet": () => toMarkdown({ plan }),
    };
    if (earlier) {
      const before = jobDocument(name, scale, earlierCheckout);
      parts["earlier build, from text"] = () => earlier.runPlan(before);
    }
    const times = await medians(Object.entries(parts).map(([part, run]) => ({ name: part, run, answers: 1 })));
    const [whole = Number.NaN] = times;
    Object.keys(parts).forEach((part, i) => {
      const time = times[i] ?? Number.NaN;
      rows.push([`${name}, ${scale}: ${part}`, readable(time), (time / whole).toFixed(2)]);
    });
  }
  return table(["plans of the examples", "one", "of the plan from text"], rows);
}
