// Runs in the browser, bundled into one file: what is typed is read, run and shown, and nothing leaves the page.
import type { Fault } from "gelwright/error";
import schema from "gelwright/schema/job.json";
import { element } from "../in-page/element.js";
import { watchWidths } from "../in-page/fit.js";
import { copyWith, download, fileName } from "../in-page/hand-over.js";
import { inWords } from "../in-page/in-words.js";
import { hashOf, textOf } from "../in-page/link.js";
import { loadScript } from "../in-page/load-script.js";
import { followScheme } from "../in-page/scheme.js";
import { brokenAt, lineAndColumn } from "./broken.js";
import { ask } from "./client.js";
import { ownJob } from "./examples.js";
import { formIn } from "./form.js";
import { formNames } from "./form-names.js";
import { jobs } from "./jobs.js";
import type { Result } from "./messages.js";
import { type Place, placeOf } from "./place.js";
import { sideBySide } from "./side-by-side.js";
import { textView } from "./text-view.js";
import { whose } from "./whose.js";

const choice = element("example", HTMLSelectElement);
const job = element("job", HTMLTextAreaElement);
const shownAs = element("form", HTMLSelectElement);
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

/** The document that the text last held while it was sound JSON. */
let document_: unknown;
const form = formIn(element("fields-view", HTMLElement), schema, (written) => {
  text.set(written);
  changed();
});
const text = textView(
  job,
  { place: element("text-view", HTMLElement), labelledBy: "job-label", schema, document: () => document_ },
  changed,
);
const beside = sideBySide(all);

const views = [...document.querySelectorAll<HTMLInputElement>("#views input")];
const halves = element("halves", HTMLElement);
/** Where form and JSON have room beside one another, as the style sheet has it. */
const wide = matchMedia("(min-width: 70rem)");

/** The view that was chosen; both at once only where there is room. */
function viewed(): string {
  const chosen = views.find(({ checked }) => checked)?.value ?? "fields";
  return chosen === "both" && !wide.matches ? "fields" : chosen;
}
const isForm = () => viewed() !== "text";
const isText = () => viewed() !== "fields";

/** Shows the job as a form, as its JSON, or as both: views of one text. */
function showView(): void {
  element("fields-view", HTMLElement).hidden = !isForm();
  element("text-view", HTMLElement).hidden = !isText();
  halves.classList.toggle("both", isForm() && isText());
  if (isText()) void text.open();
  if (isForm()) form.draw(job.value);
}

function turnTo(which: "fields" | "text"): void {
  if (which === "fields" ? isForm() : isText()) return;
  for (const view of views) view.checked = view.value === which;
  showView();
}

type Located = Fault & { readonly place: Place };

function goTo({ path, place }: Located): void {
  // A place of broken JSON has a line and no path.
  if (path.startsWith("line ")) turnTo("text");
  if (isForm() && !path.startsWith("line ")) form.goTo(path);
  else text.goTo(place);
}

function showFaults(found: readonly Located[]): void {
  faults.hidden = found.length === 0;
  form.mark(found);
  text.mark(found.map((fault) => ({ place: fault.place, message: inWords(fault) })));
  faultList.replaceChildren(
    ...found.map((fault) => {
      const item = document.createElement("li");
      const go = document.createElement("button");
      go.type = "button";
      go.textContent = fault.path;
      go.addEventListener("click", () => goTo(fault));
      const name = whose(document_, fault.path);
      item.append(go, `${name === undefined ? "" : ` (${name})`}: ${inWords(fault)}`);
      return item;
    }),
  );
}

function showPlan(): void {
  const { text, html } = plan?.shown[shownAs.selectedIndex] ?? {};
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

/** What went wrong with a link: it stays before what is said of the job that is there instead, until there is another. */
let ofLink = "";

/** Shows whether the plan on the page is that of the text, and what is said of it. */
function settle(current: boolean, words: string): void {
  output.classList.toggle("old", !current);
  plots.classList.toggle("old", !current);
  for (const button of handOver) button.disabled = !current;
  status.textContent = ofLink + words;
}

/** Where the text is no JSON. */
function showBroken(written: string): boolean {
  const broken = brokenAt(written);
  if (!broken) return false;
  const { line, column } = lineAndColumn(written, broken.place.start);
  showFaults([{ ...broken, path: `line ${line}, column ${column}` }]);
  return true;
}

async function run(): Promise<void> {
  clearTimeout(waiting);
  waiting = undefined;
  const mine = ++turn;
  const written = job.value;
  void beside.update();
  if (isForm()) form.draw(written);
  if (!showBroken(written)) {
    document_ = JSON.parse(written);
    const result = await ask({ document: document_ });
    if (mine !== turn) return;
    showFaults((result.faults ?? []).map((fault) => ({ ...fault, place: placeOf(written, fault.path) })));
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
  const below = plan ? "; the result below is that of the last job that could be run" : "";
  settle(false, `${count} ${count === 1 ? "fault" : "faults"}${below}.`);
}

let waiting: ReturnType<typeof setTimeout> | undefined;

function changed(): void {
  ofLink = "";
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
  ofLink = "";
  all.use(name);
  list(name);
  restore.textContent = all.isExample(name) ? "Put it back as it was" : "Remove this job";
  text.set(all.text(name));
  if (isForm()) form.draw(job.value, true);
  void run();
}

/** A job that came from outside, beside those that are there. */
function add(name: string, written: string): void {
  show(all.add(name, written));
}

/** Opens the job that the address holds, and clears the address: what is typed from then on is another text. */
async function openLink(): Promise<void> {
  if (!location.hash.startsWith("#job=")) return;
  const written = await textOf(location.hash);
  history.replaceState(null, "", location.pathname + location.search);
  if (written !== undefined) return add("From a link", written);
  ofLink = "The link was cut off on its way: it holds no whole job. ";
  if (!status.textContent.startsWith(ofLink)) status.textContent = ofLink + status.textContent;
}

const chosen = () => formNames[shownAs.selectedIndex] ?? formNames[0];
const textShown = () => plan?.shown[shownAs.selectedIndex]?.text ?? "";
const on = (id: string, act: (button: HTMLButtonElement) => void) => {
  const button = element(id, HTMLButtonElement);
  button.addEventListener("click", () => act(button));
};

shownAs.append(...formNames.map(({ name }) => new Option(name)));
followScheme();
choice.addEventListener("change", () => show(choice.value));
shownAs.addEventListener("change", showPlan);
for (const view of views) view.addEventListener("change", showView);
wide.addEventListener("change", showView);
on("own", () => {
  add("My job", ownJob);
  turnTo("fields");
  form.goTo("formula.name");
});
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
