// Runs in the browser, bundled into one file: what is typed is read, run and shown, and nothing leaves the page.
import { CalculationError, type Fault } from "gelwright/error";
import { type Plan, runPlan } from "gelwright/plan";
import { examples } from "./examples.js";
import { forms } from "./forms.js";
import { type Place, placeOf } from "./place.js";

const element = <T extends HTMLElement>(id: string, kind: new () => T): T => {
  const found = document.getElementById(id);
  if (found instanceof kind) return found;
  throw new Error(`the page has no ${id}`);
};
const example = element("example", HTMLSelectElement);
const job = element("job", HTMLTextAreaElement);
const form = element("form", HTMLSelectElement);
const status = element("status", HTMLElement);
const result = element("result", HTMLElement);
const faults = element("faults", HTMLElement);
const faultList = element("fault-list", HTMLElement);

/** The last plan that came out; it stays in sight, faded, while the text has faults. */
let plan: Plan | undefined;

/** What is wider than its place scrolls by itself, and then a keyboard must reach it. */
const fit = new ResizeObserver((entries) => {
  for (const { target } of entries)
    if (target.scrollWidth > target.clientWidth) target.setAttribute("tabindex", "0");
    else target.removeAttribute("tabindex");
});

const chosen = () => forms[form.selectedIndex] ?? forms[0];

function showFaults(all: readonly (Fault & { readonly place: Place })[]): void {
  faults.hidden = all.length === 0;
  faultList.replaceChildren(
    ...all.map(({ path, found, expected, place }) => {
      const item = document.createElement("li");
      const go = document.createElement("button");
      go.type = "button";
      go.textContent = path;
      go.addEventListener("click", () => {
        job.focus();
        job.setSelectionRange(place.start, place.end);
        const line = job.value.slice(0, place.start).split("\n").length;
        job.scrollTop = (line - 4) * (job.scrollHeight / job.value.split("\n").length);
      });
      item.append(go, `: found ${found}, expected ${expected}`);
      return item;
    }),
  );
}

function showPlan(): void {
  const { write, show } = chosen() ?? {};
  if (!plan || !write) return;
  const text = write(plan);
  if (show) result.innerHTML = show(text);
  else {
    const pre = document.createElement("pre");
    pre.textContent = text;
    result.replaceChildren(pre);
  }
  for (const wide of result.querySelectorAll(".wide, pre")) fit.observe(wide);
}

function countOf(answers: Plan["answers"]): string {
  const verdicts = ["met", "not-met", "not-known"] as const;
  const count = (one: (typeof verdicts)[number]) => answers.filter(({ verdict }) => verdict === one).length;
  return verdicts.map((one) => `${count(one)} ${one.replace("-", " ")}`).join(", ");
}

/** Where JSON itself is broken, as engines say it. */
function brokenAt(text: string, message: string): Place {
  const [, offset] = /position (\d+)/.exec(message) ?? [];
  const start = Math.min(Number(offset ?? text.length), text.length);
  return { start, end: Math.min(start + 1, text.length) };
}

function read(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch (error) {
    const { message } = error as SyntaxError;
    const place = brokenAt(text, message);
    const line = text.slice(0, place.start).split("\n").length;
    showFaults([{ path: `line ${line}`, found: message, expected: "JSON", place }]);
    return undefined;
  }
}

function run(): void {
  const document = read(job.value);
  if (document !== undefined) {
    try {
      plan = runPlan(document);
      showFaults([]);
      showPlan();
    } catch (error) {
      if (!(error instanceof CalculationError)) throw error;
      showFaults(error.faults.map((fault) => ({ ...fault, place: placeOf(job.value, fault.path) })));
    }
  }
  const count = faultList.childElementCount;
  result.classList.toggle("old", !faults.hidden);
  status.textContent = faults.hidden
    ? `Answers: ${countOf(plan?.answers ?? [])}.`
    : `${count} ${count === 1 ? "fault" : "faults"}; below stands the last job that could be run.`;
}

function restore(): void {
  job.value = examples[example.value] ?? "";
  run();
}

function download(): void {
  const { write, type = "", file = "" } = chosen() ?? {};
  if (!plan || !write) return;
  const link = document.createElement("a");
  link.href = URL.createObjectURL(new Blob([write(plan)], { type }));
  link.download = file;
  link.click();
  URL.revokeObjectURL(link.href);
}

let waiting: ReturnType<typeof setTimeout> | undefined;
example.append(...Object.keys(examples).map((name) => new Option(name)));
form.append(...forms.map(({ name }) => new Option(name)));
// The scheme that was chosen on the other pages, where the browser lets a page remember.
try {
  document.documentElement.dataset["theme"] = localStorage.getItem("tsd-theme") ?? "os";
} catch {
  // A page that may remember nothing follows the system.
}
job.addEventListener("input", () => {
  clearTimeout(waiting);
  waiting = setTimeout(run, 300);
});
example.addEventListener("change", restore);
form.addEventListener("change", showPlan);
element("restore", HTMLButtonElement).addEventListener("click", restore);
element("download", HTMLButtonElement).addEventListener("click", download);
restore();
