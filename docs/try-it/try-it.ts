// Runs in the browser, bundled into one file: what is typed is read, run and shown, and nothing leaves the page.
import type { Fault } from "gelwright/error";
import { element } from "../in-page/element.js";
import { watchWidths } from "../in-page/fit.js";
import { copyWith, download, fileName } from "../in-page/hand-over.js";
import { hashOf, textOf } from "../in-page/link.js";
import { loadScript } from "../in-page/load-script.js";
import { followScheme } from "../in-page/scheme.js";
import { brokenAt, lineAndColumn } from "./broken.js";
import { resultOf } from "./client.js";
import { formNames } from "./form-names.js";
import { jobs } from "./jobs.js";
import type { Result } from "./messages.js";
import { type Place, placeOf } from "./place.js";

const choice = element("example", HTMLSelectElement);
const job = element("job", HTMLTextAreaElement);
const form = element("form", HTMLSelectElement);
const status = element("status", HTMLElement);
const output = element("result", HTMLElement);
const faults = element("faults", HTMLElement);
const faultList = element("fault-list", HTMLElement);
const plots = element("plots", HTMLElement);
const panels = element("panels", HTMLElement);
const restore = element("restore", HTMLButtonElement);
const file = element("file", HTMLInputElement);
/** What hands over the plan: of no use while none belongs to the text. */
const handOver = ["download", "copy", "print"].map((id) => element(id, HTMLButtonElement));

const all = jobs();

type Plan = Extract<Result, { readonly name: string }>;
/** The last plan that came out; it stays in sight, faded, while the text has faults. */
let plan: Plan | undefined;
/** Counts what was started, so that a late answer to an earlier text is dropped. */
let turn = 0;

function goTo({ start, end }: Place): void {
  job.focus();
  job.setSelectionRange(start, end);
  const line = job.value.slice(0, start).split("\n").length;
  job.scrollTop = (line - 4) * (job.scrollHeight / job.value.split("\n").length);
}

function showFaults(found: readonly (Fault & { readonly place: Place })[]): void {
  faults.hidden = found.length === 0;
  faultList.replaceChildren(
    ...found.map(({ path, found: what, expected, place }) => {
      const item = document.createElement("li");
      const go = document.createElement("button");
      go.type = "button";
      go.textContent = path;
      go.addEventListener("click", () => goTo(place));
      item.append(go, `: found ${what}, expected ${expected}`);
      return item;
    }),
  );
}

function showPlan(): void {
  const { text, html } = plan?.shown[form.selectedIndex] ?? {};
  if (text === undefined) return;
  if (html !== undefined) output.innerHTML = html;
  else {
    const pre = document.createElement("pre");
    pre.textContent = text;
    output.replaceChildren(pre);
  }
  watchWidths(output);
}

async function showPanels(): Promise<void> {
  const drawn = plan;
  plots.hidden = !drawn || drawn.panels.length === 0;
  if (!drawn || plots.hidden) return;
  await loadScript("../plots.js");
  if (drawn !== plan) return;
  panels.replaceChildren(...drawn.panels.map((panel) => globalThis.gelwrightPlots.drawPanel(panel)));
}

/** Whether the plan that is shown is that of the text. */
function settle(current: boolean, words: string): void {
  output.classList.toggle("old", !current);
  plots.classList.toggle("old", !current);
  for (const button of handOver) button.disabled = !current;
  status.textContent = words;
}

/** Where the text is no JSON. */
function showBroken(text: string): boolean {
  const broken = brokenAt(text);
  if (!broken) return false;
  const { line, column } = lineAndColumn(text, broken.place.start);
  showFaults([{ ...broken, path: `line ${line}, column ${column}` }]);
  return true;
}

async function run(): Promise<void> {
  clearTimeout(waiting);
  waiting = undefined;
  const mine = ++turn;
  const text = job.value;
  if (!showBroken(text)) {
    const result = await resultOf(JSON.parse(text));
    if (mine !== turn) return;
    showFaults((result.faults ?? []).map((fault) => ({ ...fault, place: placeOf(text, fault.path) })));
    if (!result.faults) {
      plan = result;
      showPlan();
      await showPanels();
      if (mine !== turn) return;
      settle(true, `Answers: ${plan.answers}.`);
      return;
    }
  }
  const count = faultList.childElementCount;
  const below = plan ? "; what comes out is that of the last job that could be run" : "";
  settle(false, `${count} ${count === 1 ? "fault" : "faults"}${below}.`);
}

let waiting: ReturnType<typeof setTimeout> | undefined;

function changed(): void {
  all.change(choice.value, job.value);
  for (const button of handOver) button.disabled = true;
  clearTimeout(waiting);
  waiting = setTimeout(run, 300);
}

function list(current: string): void {
  choice.replaceChildren(...all.names().map((name) => new Option(name)));
  choice.value = current;
}

function show(name: string): void {
  all.use(name);
  list(name);
  restore.textContent = all.isExample(name) ? "Put it back as it was" : "Remove this job";
  job.value = all.text(name);
  void run();
}

/** A job that came from outside, beside those that are there. */
function add(name: string, text: string): void {
  show(all.add(name, text));
}

/** Opens the job that the address holds, and clears the address: what is typed from then on is another text. */
async function openLink(): Promise<void> {
  if (!location.hash.startsWith("#job=")) return;
  const text = await textOf(location.hash);
  history.replaceState(null, "", location.pathname + location.search);
  if (text === undefined) status.textContent = "The link was cut off on its way: it holds no whole job.";
  else add("From a link", text);
}

const chosen = () => formNames[form.selectedIndex] ?? formNames[0];
const textShown = () => plan?.shown[form.selectedIndex]?.text ?? "";
const on = (id: string, act: (button: HTMLButtonElement) => void) => {
  const button = element(id, HTMLButtonElement);
  button.addEventListener("click", () => act(button));
};

form.append(...formNames.map(({ name }) => new Option(name)));
followScheme();
job.addEventListener("input", changed);
choice.addEventListener("change", () => show(choice.value));
form.addEventListener("change", showPlan);
on("restore", () => {
  const name = choice.value;
  all.forget(name);
  show(all.isExample(name) ? name : (all.names()[0] ?? ""));
});
on("open", () => file.click());
file.addEventListener("change", async () => {
  const [one] = file.files ?? [];
  if (one) add(one.name.replace(/\.json$/i, ""), await one.text());
  file.value = "";
});
on("download-job", () => download(`${fileName(choice.value)}.json`, "application/json", job.value));
on("copy-job", (button) => void copyWith(button, job.value));
on("copy-link", async (button) => {
  const address = new URL(await hashOf(job.value), location.href).href;
  await copyWith(button, address);
});
on("download", () => download(chosen().file, chosen().type, textShown()));
on("copy", (button) => void copyWith(button, textShown()));
on("print", () => print());
addEventListener("hashchange", () => void openLink());
show(all.current());
void openLink();
